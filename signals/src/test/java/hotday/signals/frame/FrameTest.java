package hotday.signals.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class FrameTest {
    private final byte[] buffer = {9, 1, (byte) 0xFE, 3, 9};

    @Test
    void showsBytesWithoutTakingThem() {
        Frame frame = new Frame().set(1.5, 2, 0x18FEEE00, true, buffer, 1, 3);
        assertThat(frame.at(1)).isEqualTo(0xFE);
        Frame kept = frame.copy();
        buffer[2] = 7;
        assertThat(frame.at(1)).isEqualTo(7);
        assertThat(kept.at(1)).isEqualTo(0xFE);
        assertThat(kept.id()).isEqualTo(0x18FEEE00);
        assertThat(kept.extended()).isTrue();
        assertThat(kept.bus()).isEqualTo(2);
        assertThat(kept.time()).isEqualTo(1.5);
        assertThat(kept.length()).isEqualTo(3);
        assertThatThrownBy(() -> kept.at(3)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void isDataUntilSaidOtherwise() {
        Frame frame = new Frame()
                .set(0, 0, 5, false, buffer, 0, 4)
                .as(Frame.Kind.REMOTE)
                .asFlexible();
        Frame kept = frame.copy();
        frame.set(0, 0, 5, false, buffer, 0, 4);
        assertThat(frame.kind()).isEqualTo(Frame.Kind.DATA);
        assertThat(frame.flexible()).isFalse();
        assertThat(kept.kind()).isEqualTo(Frame.Kind.REMOTE);
        assertThat(kept.flexible()).isTrue();
    }

    @Test
    void refusesWhatNoFrameCanBe() {
        Frame frame = new Frame();
        assertThatThrownBy(() -> frame.set(0, 0, 0x800, false, buffer, 0, 0)).hasMessageContaining("0x7FF");
        assertThatThrownBy(() -> frame.set(0, 0, 0x2000_0000, true, buffer, 0, 0))
                .hasMessageContaining("0x1FFFFFFF");
        assertThatThrownBy(() -> frame.set(0, 0, 1, false, new byte[65], 0, 65)).hasMessageContaining("0 to 64");
        assertThatThrownBy(() -> frame.set(0, 0, 1, false, buffer, 3, 3)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
