package hotday.signals.channel;

import hotday.signals.log.DelimitedText;
import hotday.signals.log.ReaderOptions;
import hotday.signals.log.Table;
import hotday.signals.mdf.MdfLog;
import hotday.signals.mdf.MdfTable;
import hotday.signals.parquet.ParquetTable;
import java.nio.file.Path;

/** A recording of any kind, told by its content. */
final class TableFile {
    private TableFile() {}

    /** @param options what is known about text; of no meaning to other kinds */
    static Table open(Path path, ReaderOptions options) {
        if (MdfLog.isMdf(path)) {
            return MdfTable.open(path);
        }
        return ParquetTable.isParquet(path) ? ParquetTable.open(path) : DelimitedText.open(path, options);
    }
}
