package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Wording;
import hotday.signals.channel.ChannelMap;
import hotday.study.prove.TestStep;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same facts in the words of the map's file and in those of the page's controls. */
class PageWordingTest {
    private static final String LOG = """
            Time,ECT,RPM,RPM,fan
            0,81.0,700,700,10
            1,81.4,720,720,10
            2,82.0,900,900,mid
            """;

    @TempDir
    private Path folder;

    private List<Finding> faults(String map) throws IOException {
        Path log = Files.writeString(folder.resolve("run.csv"), LOG);
        try {
            return ChannelMap.of("run.channels.yaml", map).recording(log).findings();
        } catch (InputException wrong) {
            return wrong.findings();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
        "{column: Time}" | "{}" | the time column 'Time' has no unit: choose 's' under 'Its unit' (or ms, min, h), or choose 'time of day, or date and time' under 'Its unit' | time.unit
        "{column: Time, unit: s}" | "{coolant_temperature: {column: ECT}}" | column 'ECT' for coolant temperature has no unit: choose one under 'in', such as degF | channels.coolant_temperature.unit
        "{column: Time, unit: s}" | "{coolant_temperature: {column: ECT, unit: mph}}" | the unit of coolant temperature, under 'in': | channels.coolant_temperature.unit
        "{column: Time, unit: s}" | "{coolant_temperature: {constant: 900 degC}}" | 'One value for the whole run' of coolant temperature is 900 degC; it must lie between | channels.coolant_temperature.constant
        "{column: Time, unit: s}" | "{engine_speed: {column: RPM}}" | say which one is engine speed with the column that 'is taken for' it | channels.engine_speed.position
        "{column: Time, unit: s}" | "{fan_demand: {column: fan, unit: '%'}}" | 'reader.text: skip' in the file of the map (the page has no control for it) | channels.fan_demand
        "{column: Time, unit: furlong}" | "{}" | 'Its unit': | time.unit
        """)
    void aFaultOfAMapNamesTheControlThatMendsIt(String time, String channels, String words, String control)
            throws IOException {
        List<Finding> found = faults("time: " + time + "\nchannels: " + channels + "\n");
        Finding fault = found.get(0);
        String said = fault.sentence().said(PageWording.PAGE);
        assertThat(said).contains(words);
        assertThat(said).doesNotContain("channels.", "coolant_temperature", "engine_speed", "'unit:", "'clock:");
        assertThat(PageWording.control(fault)).contains(control);
        assertThat(fault.message()).isEqualTo(fault.sentence().said(Wording.FILE));
    }

    @Test
    void whatToDriveNextNamesTheFactAsThePageDoes() {
        TestStep step = TestStep.of("open-100");
        assertThat(step.caution().said(Wording.FILE))
                .contains("say 'thermostat_blocked_open: on' for the run in the channel map; a second person");
        assertThat(step.caution().said(PageWording.PAGE))
                .contains("set 'Thermostat held open' in the columns of the recording to on; a second person");
    }
}
