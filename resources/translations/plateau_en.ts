<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en">
    <context>
        <name>plateau::planning::LotOutlook</name>
        <message numerus="yes">
            <source>low, enough for %n tubes</source>
            <translation>
                <numerusform>low, enough for %n tube</numerusform>
                <numerusform>low, enough for %n tubes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>good for %n more days</source>
            <translation>
                <numerusform>good for %n more day</numerusform>
                <numerusform>good for %n more days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CopiesView</name>
        <message numerus="yes">
            <source>%n findings. The first: %1: %2. plateau verify lists them all.</source>
            <translation>
                <numerusform>%n finding: %1: %2.</numerusform>
                <numerusform>%n findings. The first: %1: %2. plateau verify lists them all.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePage</name>
        <message numerus="yes">
            <source>Lot %1 is noted as opened today; it keeps %n days from now.</source>
            <translation>
                <numerusform>Lot %1 is noted as opened today; it keeps %n day from now.</numerusform>
                <numerusform>Lot %1 is noted as opened today; it keeps %n days from now.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSource</name>
        <message numerus="yes">
            <source>Lot %1 is enough for %n tubes more; then take lot %2.</source>
            <translation>
                <numerusform>Lot %1 is enough for %n tube more; then take lot %2.</numerusform>
                <numerusform>Lot %1 is enough for %n tubes more; then take lot %2.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is enough for %n tubes more, and no other lot is fit.</source>
            <translation>
                <numerusform>Lot %1 is enough for %n tube more, and no other lot is fit.</numerusform>
                <numerusform>Lot %1 is enough for %n tubes more, and no other lot is fit.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReagentsModel</name>
        <message numerus="yes">
            <source>opened on %1, keeps %n day(s)</source>
            <translation>
                <numerusform>opened on %1, keeps %n day</numerusform>
                <numerusform>opened on %1, keeps %n days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Report</name>
        <message numerus="yes">
            <source>Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.</source>
            <translation>
                <numerusform>Record: run %1 of %2; content, SHA-256: %3; audit: %n entry, head %4.</numerusform>
                <numerusform>Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSource</name>
        <message numerus="yes">
            <source>the mean of %n accepted results</source>
            <translation>
                <numerusform>the only accepted result</numerusform>
                <numerusform>the mean of %n accepted results</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the one named by the reviewer, of %n accepted results</source>
            <translation>
                <numerusform>the one named by the reviewer, the only accepted result</numerusform>
                <numerusform>the one named by the reviewer, of %n accepted results</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the last of %n accepted results</source>
            <translation>
                <numerusform>the only accepted result</numerusform>
                <numerusform>the last of %n accepted results</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedResult</name>
        <message numerus="yes">
            <source>These results were accepted over %n days. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</source>
            <translation>
                <numerusform>These results were accepted over %n day. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</numerusform>
                <numerusform>These results were accepted over %n days. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunListView</name>
        <message numerus="yes">
            <source>%n run(s)</source>
            <translation>
                <numerusform>%n run</numerusform>
                <numerusform>%n runs</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n run(s)</source>
            <translation>
                <numerusform>%1 of %n run</numerusform>
                <numerusform>%1 of %n runs</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunRecord</name>
        <message numerus="yes">
            <source>Mean blank: %1 of %n tubes.</source>
            <translation>
                <numerusform>Mean blank: %1 of %n tube.</numerusform>
                <numerusform>Mean blank: %1 of %n tubes.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n samples</source>
            <translation>
                <numerusform>%n sample</numerusform>
                <numerusform>%n samples</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Audit: %n entries, head %1</source>
            <translation>
                <numerusform>Audit: %n entry, head %1</numerusform>
                <numerusform>Audit: %n entries, head %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoices</name>
        <message numerus="yes">
            <source>%n sample(s) will be reported.</source>
            <translation>
                <numerusform>%n sample will be reported.</numerusform>
                <numerusform>%n samples will be reported.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will go back to those that wait, to be repeated.</source>
            <translation>
                <numerusform>%n sample will go back to those that wait, to be repeated.</numerusform>
                <numerusform>%n samples will go back to those that wait, to be repeated.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will go back to those that wait, to be repeated: %1.</source>
            <translation>
                <numerusform>%n sample will go back to those that wait, to be repeated: %1.</numerusform>
                <numerusform>%n samples will go back to those that wait, to be repeated: %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will be rejected.</source>
            <translation>
                <numerusform>%n sample will be rejected.</numerusform>
                <numerusform>%n samples will be rejected.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will stay undecided.</source>
            <translation>
                <numerusform>%n sample will stay undecided.</numerusform>
                <numerusform>%n samples will stay undecided.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayLines</name>
        <message numerus="yes">
            <source>%n sample(s) to repeat</source>
            <translation>
                <numerusform>%n sample to repeat</numerusform>
                <numerusform>%n samples to repeat</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) rejected</source>
            <translation>
                <numerusform>%n sample rejected</numerusform>
                <numerusform>%n samples rejected</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Words</name>
        <message numerus="yes">
            <source>%n readings, last %1</source>
            <translation>
                <numerusform>%n reading, last %1</numerusform>
                <numerusform>%n readings, last %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Worksheet</name>
        <message numerus="yes">
            <source>%n tubes</source>
            <translation>
                <numerusform>%n tube</numerusform>
                <numerusform>%n tubes</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::notebook</name>
        <message numerus="yes">
            <source>%n tubes by %1</source>
            <translation>
                <numerusform>%n tube by %1</numerusform>
                <numerusform>%n tubes by %1</numerusform>
            </translation>
        </message>
    </context>
</TS>
