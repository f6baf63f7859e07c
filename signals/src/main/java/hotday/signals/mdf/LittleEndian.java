package hotday.signals.mdf;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Whole numbers in bytes, the lowest byte first. */
final class LittleEndian {
    private static final VarHandle INT = MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);

    private LittleEndian() {}

    static int i32(byte[] b, int at) {
        return (int) INT.get(b, at);
    }
}
