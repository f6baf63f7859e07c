/** The settled front of a build as a picture: what is shown, in which units. Start at {@link hotday.study.face.FacePicture}. */
package hotday.study.face;
