/** What a person typed into a field, before the server sees it. */

const BARE = /^[+-]?\d+(?:[.,]\d+)?$/;
const NUMBER_AND_UNIT = /^[+-]?\d+(?:\.\d+)?\s*([^\d\s.,[{][^,[{]*)$/;

export function isBareNumber(text: string): boolean {
  return BARE.test(text.trim());
}

/** Unit of a typed value, "" where it has none. */
export function unitOf(text: string): string {
  return NUMBER_AND_UNIT.exec(text.trim())?.[1]?.trim() ?? '';
}

/**
 * Why a value is not even sent, or null. A bare number is refused where the value before had a unit; shares may be typed
 * either way.
 */
export function refusal(text: string, before: string): string | null {
  const unit = unitOf(before);
  if (text.trim() === '') {
    return 'Nothing typed. Type a value, or press Escape to keep the old one.';
  }
  if (isBareNumber(text) && unit !== '' && unit !== '%') {
    return `Which unit? Type it behind the number, as in "${text.trim()} ${unit}".`;
  }
  return null;
}
