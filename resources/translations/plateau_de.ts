<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
    <context>
        <name>plateau::app::FirstRun</name>
        <message>
            <source>Another notebook</source>
            <translation>Anderes Laborjournal</translation>
        </message>
        <message>
            <source>It could not be kept that the program is to start with %1; the next start opens the same notebook as before.</source>
            <translation>Es ließ sich nicht speichern, dass das Programm mit %1 starten soll; der nächste Start öffnet dasselbe Laborjournal wie bisher.</translation>
        </message>
        <message>
            <source>No other window could be opened. Close this one and open the notebook by itself: %1</source>
            <translation>Es ließ sich kein weiteres Fenster öffnen. Dieses schließen und das Laborjournal gesondert öffnen: %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Main</name>
        <message>
            <source>plateau: the window needs a display, and there is none to be reached; start it from a desktop session, or use a command (plateau --help lists them)</source>
            <translation>plateau: Das Fenster braucht eine Anzeige, und keine ist erreichbar; aus einer Desktop-Sitzung starten oder einen Befehl verwenden (plateau --help listet sie auf)</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::SampleNotebook</name>
        <message>
            <source>The sample data of this installation cannot be used (%1); nothing was made. Reinstall the program.</source>
            <translation>Die Beispieldaten dieser Installation sind nicht verwendbar (%1); nichts wurde erstellt. Das Programm neu installieren.</translation>
        </message>
        <message>
            <source>the limits of the house</source>
            <translation>die Grenzwerte des Hauses</translation>
        </message>
        <message>
            <source>unknown account</source>
            <translation>unbekanntes Konto</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Window</name>
        <message>
            <source>Notebook</source>
            <translation>Laborjournal</translation>
        </message>
        <message>
            <source>Months of an invented laboratory are being made …</source>
            <translation>Monate eines erfundenen Labors werden erstellt …</translation>
        </message>
        <message>
            <source>sample notebook, a copy that is thrown away; everybody in it signs with the passphrase %1</source>
            <translation>Beispiel-Laborjournal, eine Kopie, die gelöscht wird; alle darin signieren mit der Passphrase %1</translation>
        </message>
        <message>
            <source>--notebook needs the name of a file</source>
            <translation>--notebook braucht den Namen einer Datei</translation>
        </message>
        <message>
            <source>--demo and --notebook exclude each other</source>
            <translation>--demo und --notebook schließen einander aus</translation>
        </message>
        <message>
            <source>%1 is neither a command nor an option nor a file; plateau --help lists them</source>
            <translation>%1 ist weder ein Befehl noch eine Option noch eine Datei; plateau --help listet Befehle und Optionen auf</translation>
        </message>
        <message>
            <source>the window takes one file at a start, not %1 as well</source>
            <translation>das Fenster nimmt je Start nur eine Datei, nicht auch noch %1</translation>
        </message>
        <message>
            <source>%1 is a notebook, and another one is named beside it</source>
            <translation>%1 ist ein Laborjournal, und daneben ist ein anderes genannt</translation>
        </message>
        <message>
            <source>--person needs a name</source>
            <translation>--person braucht einen Namen</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Background</name>
        <message>
            <source>the measurand</source>
            <translation>die Messgröße</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>die Kennung der Methode</translation>
        </message>
        <message>
            <source>must be a measurand of this method, and %1 is none; name the other method it belongs to, or one of this method's</source>
            <translation>muss eine Messgröße dieser Methode sein, und %1 ist keine; die andere Methode nennen, zu der sie gehört, oder eine Messgröße dieser Methode</translation>
        </message>
        <message>
            <source>must be a number other than 0, not %1; leave out a term that does not count</source>
            <translation>muss eine andere Zahl als 0 sein, nicht %1; einen Term, der nicht zählt, weglassen</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>die Kennung</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>der Name</translation>
        </message>
        <message>
            <source>the id %1 is taken by a measurand or an earlier derived result; give each its own</source>
            <translation>die Kennung %1 ist durch eine Messgröße oder ein früheres abgeleitetes Ergebnis vergeben; jedem eine eigene geben</translation>
        </message>
        <message>
            <source>a derived result needs at least one term</source>
            <translation>ein abgeleitetes Ergebnis braucht mindestens einen Term</translation>
        </message>
        <message>
            <source>must be a fraction per hour from 0 to below 1, not %1</source>
            <translation>muss ein Anteil pro Stunde von 0 bis unter 1 sein, nicht %1</translation>
        </message>
        <message>
            <source>%1 is blank; write it out or leave it out</source>
            <translation>%1 ist leer; ausfüllen oder weglassen</translation>
        </message>
        <message>
            <source>the preparation</source>
            <translation>die Vorbereitung</translation>
        </message>
        <message>
            <source>%1 has its preparation already; say all of it in one text</source>
            <translation>%1 hat bereits eine Vorbereitung; alles in einem Text angeben</translation>
        </message>
        <message>
            <source>the reaction</source>
            <translation>die Reaktion</translation>
        </message>
        <message>
            <source>the interference</source>
            <translation>die Störung</translation>
        </message>
        <message>
            <source>the caution</source>
            <translation>der Warnhinweis</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Label</name>
        <message>
            <source>it holds the character %1, which reorders the line; write it without</source>
            <translation>enthält das Zeichen %1, das die Zeile umordnet; ohne dieses schreiben</translation>
        </message>
        <message>
            <source>it holds the control character %1; write it without</source>
            <translation>enthält das Steuerzeichen %1; ohne dieses schreiben</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>hat %1 Zeichen; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>it is blank; give it at least one letter or digit</source>
            <translation>ist leer; mindestens einen Buchstaben oder eine Ziffer angeben</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Limits</name>
        <message>
            <source>must be greater than %1 and at most %2, not %3</source>
            <translation>muss größer als %1 und höchstens %2 sein, nicht %3</translation>
        </message>
        <message>
            <source>must lie between %1 and %2, not %3</source>
            <translation>muss zwischen %1 und %2 liegen, nicht %3</translation>
        </message>
        <message>
            <source>the smaller number comes first: %1 is larger than %2</source>
            <translation>die kleinere Zahl kommt zuerst: %1 ist größer als %2</translation>
        </message>
        <message>
            <source>%1 cannot be used: %2</source>
            <translation>%1 ist nicht verwendbar: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Plausibility</name>
        <message>
            <source>takes %1 with no wait since the last addition; say how long to wait, even where it is short</source>
            <translation>nimmt %1 ohne Wartezeit seit der letzten Zugabe; die Wartezeit angeben, auch wenn sie kurz ist</translation>
        </message>
        <message>
            <source>starts the reaction before anything is read; read the tube first</source>
            <translation>startet die Reaktion, bevor etwas abgelesen ist; den Ansatz zuerst ablesen</translation>
        </message>
        <message>
            <source>starts the reaction after the last reading; read the tube afterwards</source>
            <translation>startet die Reaktion nach der letzten Ablesung; den Ansatz danach ablesen</translation>
        </message>
        <message>
            <source>nothing is read after this step; add a reading or leave the step out</source>
            <translation>nach diesem Schritt wird nichts abgelesen; eine Ablesung hinzufügen oder den Schritt weglassen</translation>
        </message>
        <message>
            <source>the reading %1 is taken before the sample is in the tube; name one taken afterwards</source>
            <translation>die Ablesung %1 erfolgt, bevor die Probe im Ansatz ist; eine spätere nennen</translation>
        </message>
        <message>
            <source>nothing is added between %1 and %2, so nothing starts between them</source>
            <translation>zwischen %1 und %2 wird nichts zugegeben, also startet dazwischen nichts</translation>
        </message>
        <message>
            <source>%1 is never added, so nothing makes up for another sample volume: the tube's volume changes with it</source>
            <translation>%1 wird nie zugegeben, ein anderes Probenvolumen wird also durch nichts ausgeglichen: Das Volumen des Ansatzes ändert sich mit ihm</translation>
        </message>
        <message>
            <source>%1 mL of sample is more than %2 mL of %3 make up for: the tube's volume changes above %4 mL</source>
            <translation>%1 mL Probe sind mehr, als %2 mL %3 ausgleichen: Das Volumen des Ansatzes ändert sich über %4 mL</translation>
        </message>
        <message>
            <source>a signal of %1 is more than the photometer may show (%2)</source>
            <translation>ein Signal von %1 ist mehr, als das Photometer anzeigen darf (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Procedure</name>
        <message>
            <source>adds %1, which is none of the components</source>
            <translation>gibt %1 zu, das keine der Komponenten ist</translation>
        </message>
        <message>
            <source>adds %1 a second time; list a second portion as a component of its own</source>
            <translation>gibt %1 ein zweites Mal zu; eine zweite Portion als eigene Komponente aufführen</translation>
        </message>
        <message>
            <source>the reading's name</source>
            <translation>der Name der Ablesung</translation>
        </message>
        <message>
            <source>reads %1 before anything is in the tube; add something first</source>
            <translation>liest %1 ab, bevor etwas im Ansatz ist; zuerst etwas zugeben</translation>
        </message>
        <message>
            <source>takes the reading %1 a second time; give each reading its own name</source>
            <translation>nimmt die Ablesung %1 ein zweites Mal vor; jeder Ablesung einen eigenen Namen geben</translation>
        </message>
        <message>
            <source>no component plays this part; say which one does</source>
            <translation>keine Komponente hat diese Rolle; angeben, welche sie hat</translation>
        </message>
        <message>
            <source>must be the id of a component, and %1 is none</source>
            <translation>muss die Kennung einer Komponente sein, und %1 ist keine</translation>
        </message>
        <message>
            <source>the sample is never added; give it a step</source>
            <translation>die Probe wird nie zugegeben; einen Schritt dafür vorsehen</translation>
        </message>
        <message>
            <source>the starter is never added; give it a step</source>
            <translation>das Startreagenz wird nie zugegeben; einen Schritt dafür vorsehen</translation>
        </message>
        <message>
            <source>the sample cannot be its own diluent</source>
            <translation>die Probe kann nicht ihr eigenes Verdünnungsmittel sein</translation>
        </message>
        <message>
            <source>the starter must be a component of its own, neither sample nor diluent</source>
            <translation>das Startreagenz muss eine eigene Komponente sein, weder Probe noch Verdünnungsmittel</translation>
        </message>
        <message>
            <source>%1 is never added</source>
            <translation>%1 wird nie zugegeben</translation>
        </message>
        <message>
            <source>the reading %1 is never taken; name one of the steps' readings</source>
            <translation>die Ablesung %1 erfolgt nie; eine Ablesung aus den Schritten nennen</translation>
        </message>
        <message>
            <source>must be read after %1 (%2), and %3 is not</source>
            <translation>muss nach %1 (%2) abgelesen werden, und %3 wird es nicht</translation>
        </message>
        <message>
            <source>a method needs at least one step that reads</source>
            <translation>eine Methode braucht mindestens einen Schritt, der abliest</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>der Ansatz enthält am Ende %1 mL; höchstens %2 mL sind zulässig</translation>
        </message>
        <message>
            <source>a straight line needs at least 2 readings, not %1</source>
            <translation>eine Gerade braucht mindestens 2 Ablesungen, nicht %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Soundness</name>
        <message>
            <source>the id</source>
            <translation>die Kennung</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>der Name</translation>
        </message>
        <message>
            <source>versions count from 1, not %1</source>
            <translation>Versionen zählen ab 1, nicht %1</translation>
        </message>
        <message>
            <source>says nothing: name the document and its section, or say that there is none</source>
            <translation>sagt nichts aus: das Dokument und seinen Abschnitt nennen oder angeben, dass es keines gibt</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>die Quelle</translation>
        </message>
        <message>
            <source>the principle</source>
            <translation>das Prinzip</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) is very small; is it meant in L/(mmol cm), a thousand times as much?</source>
            <translation>%1 L/(mol cm) ist sehr klein; ist es in L/(mmol cm) gemeint, dem Tausendfachen?</translation>
        </message>
        <message>
            <source>the chromophore's name</source>
            <translation>der Name des Chromophors</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; add it to the table of absorptivities (only NADH and NADPH at 340 nm need none)</source>
            <translation>die Methode hat keinen Extinktionskoeffizienten für %1 nm; in die Tabelle der Extinktionskoeffizienten aufnehmen (nur NADH und NADPH bei 340 nm brauchen keinen)</translation>
        </message>
        <message>
            <source>must include the usual volume of %1 mL</source>
            <translation>muss das übliche Volumen von %1 mL einschließen</translation>
        </message>
        <message>
            <source>a method needs at least one component</source>
            <translation>eine Methode braucht mindestens eine Komponente</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier component; give each its own</source>
            <translation>die Kennung %1 ist durch eine frühere Komponente vergeben; jeder eine eigene geben</translation>
        </message>
        <message>
            <source>a method needs at least one measurand</source>
            <translation>eine Methode braucht mindestens eine Messgröße</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier measurand; give each its own</source>
            <translation>die Kennung %1 ist durch eine frühere Messgröße vergeben; jeder eine eigene geben</translation>
        </message>
        <message>
            <source>must be smaller than maxSignal: %1 is not smaller than %2</source>
            <translation>muss kleiner als maxSignal sein: %1 ist nicht kleiner als %2</translation>
        </message>
        <message>
            <source>must be smaller than maxAbsorbance: %1 is not smaller than %2</source>
            <translation>muss kleiner als maxAbsorbance sein: %1 ist nicht kleiner als %2</translation>
        </message>
        <message>
            <source>no duplicates can meet a limit of 0; give a constant part, a proportional part, or leave repeatability out</source>
            <translation>keine Doppelbestimmung hält einen Grenzwert von 0 ein; einen konstanten oder einen proportionalen Anteil angeben oder die Wiederholpräzision weglassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Template</name>
        <message>
            <source>still begins with "%1"; begin it with where the volumes used here come from (document, section, date). Until then its results are marked as those of a template</source>
            <translation>beginnt noch mit „%1“; mit der Herkunft der hier verwendeten Volumina beginnen (Dokument, Abschnitt, Datum). Bis dahin sind die Ergebnisse als die einer Vorlage gekennzeichnet</translation>
        </message>
        <message>
            <source>still says "%1"; take that out once the volumes are yours</source>
            <translation>enthält noch „%1“; entfernen, sobald die Volumina die eigenen sind</translation>
        </message>
    </context>
    <context>
        <name>plateau::charts</name>
        <message>
            <source>recovery of standards</source>
            <translation>Wiederfindung von Standards</translation>
        </message>
        <message>
            <source>found strength of standards</source>
            <translation>gefundener Gehalt von Standards</translation>
        </message>
        <message>
            <source>control material</source>
            <translation>Kontrollmaterial</translation>
        </message>
        <message>
            <source>signal of the blanks</source>
            <translation>Signal der Blindwerte</translation>
        </message>
        <message>
            <source>range of duplicates</source>
            <translation>Spannweite der Doppelbestimmungen</translation>
        </message>
        <message>
            <source>range of duplicates in % of their mean</source>
            <translation>Spannweite der Doppelbestimmungen in % ihres Mittelwerts</translation>
        </message>
        <message>
            <source>results of a sample</source>
            <translation>Ergebnisse einer Probe</translation>
        </message>
        <message>
            <source>results of a product</source>
            <translation>Ergebnisse eines Produkts</translation>
        </message>
        <message>
            <source>individuals with moving range</source>
            <translation>Einzelwerte mit gleitender Spannweite</translation>
        </message>
        <message>
            <source>means with range</source>
            <translation>Mittelwerte mit Spannweite</translation>
        </message>
        <message>
            <source>ranges</source>
            <translation>Spannweiten</translation>
        </message>
        <message>
            <source>weighted moving average (EWMA)</source>
            <translation>exponentiell gewichteter gleitender Mittelwert (EWMA)</translation>
        </message>
        <message>
            <source>cumulative sums (CUSUM)</source>
            <translation>kumulierte Summen (CUSUM)</translation>
        </message>
        <message>
            <source>results with their limits</source>
            <translation>Ergebnisse mit ihren Grenzwerten</translation>
        </message>
        <message>
            <source>one beyond 3 s</source>
            <translation>einer jenseits von 3 s</translation>
        </message>
        <message>
            <source>two of three beyond 2 s on one side</source>
            <translation>zwei von drei jenseits von 2 s auf einer Seite</translation>
        </message>
        <message>
            <source>four of five beyond 1 s on one side</source>
            <translation>vier von fünf jenseits von 1 s auf einer Seite</translation>
        </message>
        <message>
            <source>nine in a row on one side</source>
            <translation>neun in Folge auf einer Seite</translation>
        </message>
        <message>
            <source>six in a row rising or falling</source>
            <translation>sechs in Folge steigend oder fallend</translation>
        </message>
        <message>
            <source>fourteen in a row alternating up and down</source>
            <translation>vierzehn in Folge abwechselnd auf und ab</translation>
        </message>
        <message>
            <source>fifteen in a row within 1 s</source>
            <translation>fünfzehn in Folge innerhalb von 1 s</translation>
        </message>
        <message>
            <source>eight in a row beyond 1 s, on both sides</source>
            <translation>acht in Folge jenseits von 1 s, auf beiden Seiten</translation>
        </message>
        <message>
            <source>eight in a row on one side</source>
            <translation>acht in Folge auf einer Seite</translation>
        </message>
        <message>
            <source>seven in a row on one side</source>
            <translation>sieben in Folge auf einer Seite</translation>
        </message>
        <message>
            <source>ten in a row on one side</source>
            <translation>zehn in Folge auf einer Seite</translation>
        </message>
        <message>
            <source>one beyond 2 s (a warning)</source>
            <translation>einer jenseits von 2 s (eine Warnung)</translation>
        </message>
        <message>
            <source>two in a row beyond 2 s on one side</source>
            <translation>zwei in Folge jenseits von 2 s auf einer Seite</translation>
        </message>
        <message>
            <source>two in a row, beyond 2 s on opposite sides</source>
            <translation>zwei in Folge, jenseits von 2 s auf entgegengesetzten Seiten</translation>
        </message>
        <message>
            <source>four in a row beyond 1 s on one side</source>
            <translation>vier in Folge jenseits von 1 s auf einer Seite</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>moving range</source>
            <translation>gleitende Spannweite</translation>
        </message>
        <message>
            <source>mean of %1</source>
            <translation>Mittelwert von %1</translation>
        </message>
        <message>
            <source>range of %1</source>
            <translation>Spannweite von %1</translation>
        </message>
        <message>
            <source>range of two</source>
            <translation>Spannweite von zwei</translation>
        </message>
        <message>
            <source>weighted average</source>
            <translation>gewichteter Mittelwert</translation>
        </message>
        <message>
            <source>cumulative sum</source>
            <translation>kumulierte Summe</translation>
        </message>
        <message>
            <source>result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>run %1 (%2, %3)</source>
            <translation>Lauf %1 (%2, %3)</translation>
        </message>
        <message>
            <source>There are too few values for limits so far. Accept more runs, or enter limits that the laboratory has fixed.</source>
            <translation>Es gibt noch zu wenige Werte für Grenzen. Weitere Läufe annehmen oder Grenzen eingeben, die das Labor festgelegt hat.</translation>
        </message>
        <message>
            <source>centre %1, standard deviation of a single value %2</source>
            <translation>Mittellinie %1, Standardabweichung eines Einzelwerts %2</translation>
        </message>
        <message>
            <source>Limits fixed by the laboratory: %1 (%2, %3).</source>
            <translation>Vom Labor festgelegte Grenzen: %1 (%2, %3).</translation>
        </message>
        <message>
            <source>Limits from %1 values, run %2 to run %3: %4.</source>
            <translation>Grenzen aus %1 Werten, Lauf %2 bis Lauf %3: %4.</translation>
        </message>
        <message>
            <source>Look for a pipetting error, a bubble or a mixed-up tube, and measure again before results of that run are reported.</source>
            <translation>Auf einen Pipettierfehler, eine Luftblase oder einen vertauschten Ansatz achten und erneut messen, bevor Ergebnisse dieses Laufs berichtet werden.</translation>
        </message>
        <message>
            <source>Report no results of that run before the cause is known: look at the standard and its age, the dilution, the lots and the photometer, then measure again.</source>
            <translation>Keine Ergebnisse dieses Laufs berichten, bevor die Ursache bekannt ist: Standard und sein Alter, Verdünnung, Chargen und Photometer ansehen, dann erneut messen.</translation>
        </message>
        <message>
            <source>A single one is to be expected now and then; watch the next run.</source>
            <translation>Ein einzelner ist hin und wieder zu erwarten; den nächsten Lauf beobachten.</translation>
        </message>
        <message>
            <source>The scatter has grown: look at pipettes, mixing and temperature.</source>
            <translation>Die Streuung ist größer geworden: Pipetten, Mischen und Temperatur ansehen.</translation>
        </message>
        <message>
            <source>Something drifts: look at a standard or reagent that ages, and at the lamp.</source>
            <translation>Etwas driftet: auf einen alternden Standard, ein alterndes Reagenz und die Lampe achten.</translation>
        </message>
        <message>
            <source>Two conditions alternate: compare people, pipettes and racks.</source>
            <translation>Zwei Bedingungen wechseln sich ab: Personen, Pipetten und Racks vergleichen.</translation>
        </message>
        <message>
            <source>The scatter is smaller than the limits say: set them again from these runs, or see whether values of two kinds are mixed in one chart.</source>
            <translation>Die Streuung ist kleiner, als die Grenzen sagen: die Grenzen aus diesen Läufen neu festlegen oder nachsehen, ob Werte zweier Arten in einer Karte stehen.</translation>
        </message>
        <message>
            <source>Values of two kinds are mixed in one chart: separate them by lot, person or standard.</source>
            <translation>Werte zweier Arten stehen in einer Karte: nach Charge, Person oder Standard trennen.</translation>
        </message>
        <message>
            <source>Something has shifted: compare lots, standard and photometer before and after the first of them.</source>
            <translation>Etwas hat sich verschoben: Chargen, Standard und Photometer vor und nach dem ersten dieser Werte vergleichen.</translation>
        </message>
        <message>
            <source>above the centre</source>
            <translation>über der Mittellinie</translation>
        </message>
        <message>
            <source>below the centre</source>
            <translation>unter der Mittellinie</translation>
        </message>
        <message>
            <source>weighted average above its upper limit</source>
            <translation>gewichteter Mittelwert über seiner oberen Grenze</translation>
        </message>
        <message>
            <source>weighted average below its lower limit</source>
            <translation>gewichteter Mittelwert unter seiner unteren Grenze</translation>
        </message>
        <message>
            <source>upper cumulative sum beyond its decision limit</source>
            <translation>obere kumulierte Summe jenseits ihrer Entscheidungsgrenze</translation>
        </message>
        <message>
            <source>lower cumulative sum beyond its decision limit</source>
            <translation>untere kumulierte Summe jenseits ihrer Entscheidungsgrenze</translation>
        </message>
        <message>
            <source>above a limit of the product</source>
            <translation>über einem Grenzwert des Produkts</translation>
        </message>
        <message>
            <source>below a limit of the product</source>
            <translation>unter einem Grenzwert des Produkts</translation>
        </message>
        <message>
            <source>six in a row rising</source>
            <translation>sechs in Folge steigend</translation>
        </message>
        <message>
            <source>six in a row falling</source>
            <translation>sechs in Folge fallend</translation>
        </message>
        <message>
            <source>one beyond 2 s, %1</source>
            <translation>einer jenseits von 2 s, %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>, begun with run %1</source>
            <translation>, begonnen mit Lauf %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>sums %1 above and %2 below</source>
            <translation>Summen %1 darüber und %2 darunter</translation>
        </message>
        <message>
            <source>%1 s below the centre</source>
            <translation>%1 s unter der Mittellinie</translation>
        </message>
        <message>
            <source>%1 s above the centre</source>
            <translation>%1 s über der Mittellinie</translation>
        </message>
        <message>
            <source>The record of the run says what was decided at its uncertainty.</source>
            <translation>Die Aufzeichnung des Laufs sagt, wie bei seiner Unsicherheit entschieden wurde.</translation>
        </message>
        <message>
            <source>Something has shifted a little and stays so: compare lots, standard and photometer before and after.</source>
            <translation>Etwas hat sich ein wenig verschoben und bleibt so: Chargen, Standard und Photometer davor und danach vergleichen.</translation>
        </message>
        <message>
            <source> (%1)</source>
            <translation> (%1)</translation>
        </message>
        <message>
            <source>%1%2: %3%4. %5</source>
            <translation>%1%2: %3%4. %5</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>left out by %1: %2</source>
            <translation>ausgenommen von %1: %2</translation>
        </message>
        <message>
            <source>%1: lot %2 after %3</source>
            <translation>%1: Charge %2 nach %3</translation>
        </message>
        <message>
            <source>%1 after %2</source>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>The centre has to be a number.</source>
            <translation>Die Mittellinie muss eine Zahl sein.</translation>
        </message>
        <message>
            <source>The standard deviation has to be greater than 0.</source>
            <translation>Die Standardabweichung muss größer als 0 sein.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a source: say where centre and standard deviation come from.</source>
            <translation>Festgelegte Grenzen brauchen eine Quelle: angeben, woher Mittellinie und Standardabweichung stammen.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a date: say as of when they hold.</source>
            <translation>Festgelegte Grenzen brauchen ein Datum: angeben, ab wann sie gelten.</translation>
        </message>
        <message>
            <source>A subgroup has 2 to %1 values.</source>
            <translation>Eine Untergruppe hat 2 bis %1 Werte.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: it takes three recoveries or more whose standard's age is known.</source>
            <translation>Der Verlust pro Stunde lässt sich noch nicht angeben: Nötig sind drei oder mehr Wiederfindungen mit bekanntem Alter des Standards.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: all these standards were used at one age.</source>
            <translation>Der Verlust pro Stunde lässt sich noch nicht angeben: Alle diese Standards wurden im selben Alter verwendet.</translation>
        </message>
        <message>
            <source>which agrees with the %1 stated</source>
            <translation>was zu den angegebenen %1 passt</translation>
        </message>
        <message>
            <source>so the standard loses its strength faster than the %1 stated</source>
            <translation>der Standard verliert seinen Gehalt also schneller als angegeben (%1)</translation>
        </message>
        <message>
            <source>so the standard loses its strength more slowly than the %1 stated</source>
            <translation>der Standard verliert seinen Gehalt also langsamer als angegeben (%1)</translation>
        </message>
        <message>
            <source>and no loss is stated to hold it against</source>
            <translation>und zum Vergleich ist kein Verlust angegeben</translation>
        </message>
        <message>
            <source>%1 recoveries at ages of %2 to %3 show a loss of %4 an hour (95 % interval %5 to %6), %7.</source>
            <translation>%1 Wiederfindungen im Alter von %2 bis %3 zeigen einen Verlust von %4 pro Stunde (95-%-Intervall %5 bis %6), %7.</translation>
        </message>
        <message>
            <source>The weight of the newest value must be above 0 and at most 1.</source>
            <translation>Das Gewicht des neuesten Werts muss größer als 0 und höchstens 1 sein.</translation>
        </message>
        <message>
            <source>The width of the limits must be above 0 s and at most 10 s.</source>
            <translation>Die Breite der Grenzen muss größer als 0 s und höchstens 10 s sein.</translation>
        </message>
        <message>
            <source>The reference value must lie between 0 s and 10 s.</source>
            <translation>Der Referenzwert muss zwischen 0 s und 10 s liegen.</translation>
        </message>
        <message>
            <source>The decision limit must be above 0 s and at most 100 s.</source>
            <translation>Die Entscheidungsgrenze muss größer als 0 s und höchstens 100 s sein.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>which is too wide to tell whether the %1 stated are right: it takes standards of more different ages</source>
            <translation>was zu breit ist, um zu sagen, ob die angegebenen %1 stimmen: Nötig sind Standards von unterschiedlicherem Alter</translation>
        </message>
        <message>
            <source>which agrees with a standard that keeps its strength</source>
            <translation>was zu einem Standard passt, der seinen Gehalt behält</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on. Under Limits and rules, raise the number of values to %1.</source>
            <translation>Sie sind vorläufig: Ob nichts außer Kontrolle ist, wird ab %1 Werten gesagt. Unter Grenzen und Regeln die Anzahl der Werte auf %1 erhöhen.</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on.</source>
            <translation>Sie sind vorläufig: Ob nichts außer Kontrolle ist, wird ab %1 Werten gesagt.</translation>
        </message>
        <message>
            <source>Values of several materials stand in this chart, so it has no limits: a control chart is of one material. Choose one above.</source>
            <translation>In dieser Karte stehen Werte mehrerer Materialien, also hat sie keine Grenzen: Eine Regelkarte gilt für ein Material. Oben eines wählen.</translation>
        </message>
        <message>
            <source>Limits need %1 values.</source>
            <translation>Grenzen brauchen %1 Werte.</translation>
        </message>
        <message>
            <source>The ranges are of many samples: the limits hold where these have similar amounts.</source>
            <translation>Die Spannweiten stammen von vielen Proben: Die Grenzen gelten, wo diese ähnliche Gehalte haben.</translation>
        </message>
        <message>
            <source>Limits from earlier runs need %1 to %2 values.</source>
            <translation>Grenzen aus früheren Läufen brauchen %1 bis %2 Werte.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Item</name>
        <message>
            <source>photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>piston pipette</source>
            <translation>Kolbenhubpipette</translation>
        </message>
        <message>
            <source>bulb pipette</source>
            <translation>Vollpipette</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>balance</source>
            <translation>Waage</translation>
        </message>
        <message>
            <source>thermometer</source>
            <translation>Thermometer</translation>
        </message>
        <message>
            <source>set of cuvettes</source>
            <translation>Küvettensatz</translation>
        </message>
        <message>
            <source>wavelength scale</source>
            <translation>Wellenlängenskala</translation>
        </message>
        <message>
            <source>absorbance scale</source>
            <translation>Extinktionsskala</translation>
        </message>
        <message>
            <source>zero and noise</source>
            <translation>Nullpunkt und Rauschen</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>Wägung</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>match of the cuvettes</source>
            <translation>Gleichheit der Küvetten</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>the number</source>
            <translation>die Nummer</translation>
        </message>
        <message>
            <source>names nothing to be checked; give at least one number of days</source>
            <translation>enthält keine Prüfung; mindestens eine Anzahl von Tagen angeben</translation>
        </message>
        <message>
            <source>is not checked on a %1; leave it out</source>
            <translation>wird bei „%1“ nicht geprüft; weglassen</translation>
        </message>
        <message>
            <source>is every %1 days; it must be every 1 to %2 days</source>
            <translation>ist alle %1 Tage; muss alle 1 bis %2 Tage sein</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Outcome</name>
        <message>
            <source>keyed with the check</source>
            <translation>mit der Prüfung eingegeben</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>gängige Praxis, ohne Quelle</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>bei %1</translation>
        </message>
        <message>
            <source>European Pharmacopoeia 2.2.25</source>
            <translation>Europäisches Arzneibuch 2.2.25</translation>
        </message>
        <message>
            <source>A(1 %, 1 cm) at %1</source>
            <translation>A(1 %, 1 cm) bei %1</translation>
        </message>
        <message>
            <source>pharmacopoeia, control of absorbances</source>
            <translation>Arzneibuch, Kontrolle der Extinktionen</translation>
        </message>
        <message>
            <source>standard deviation of the zero</source>
            <translation>Standardabweichung des Nullpunkts</translation>
        </message>
        <message>
            <source>mean of the zero</source>
            <translation>Mittelwert des Nullpunkts</translation>
        </message>
        <message>
            <source>standard deviation of the coloured cuvette</source>
            <translation>Standardabweichung der gefärbten Küvette</translation>
        </message>
        <message>
            <source>standard deviation of one load</source>
            <translation>Standardabweichung einer Last</translation>
        </message>
        <message>
            <source>deviation from the weight of %1</source>
            <translation>Abweichung vom Gewichtsstück %1</translation>
        </message>
        <message>
            <source>largest minus smallest of %1 cuvettes</source>
            <translation>größte minus kleinste von %1 Küvetten</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mindestens %1</translation>
        </message>
        <message>
            <source>systematic error at %1</source>
            <translation>systematische Abweichung bei %1</translation>
        </message>
        <message>
            <source>random error at %1</source>
            <translation>zufällige Abweichung bei %1</translation>
        </message>
        <message>
            <source>class A, ISO 1042:1998</source>
            <translation>Klasse A, ISO 1042:1998</translation>
        </message>
        <message>
            <source>class A, ISO 648:2008</source>
            <translation>Klasse A, ISO 648:2008</translation>
        </message>
        <message>
            <source>mean minus the nominal volume, at 20 °C</source>
            <translation>Mittelwert minus Nennvolumen, bei 20 °C</translation>
        </message>
        <message>
            <source>standard deviation of the fillings</source>
            <translation>Standardabweichung der Füllungen</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Protocol</name>
        <message>
            <source>is missing; key a number</source>
            <translation>fehlt; eine Zahl eingeben</translation>
        </message>
        <message>
            <source>is not a number of this check</source>
            <translation>ist keine Zahl dieser Prüfung</translation>
        </message>
        <message>
            <source>are not the rows of this check</source>
            <translation>sind nicht die Zeilen dieser Prüfung</translation>
        </message>
        <message>
            <source>is given and cannot be another</source>
            <translation>ist vorgegeben und kann nicht anders sein</translation>
        </message>
        <message>
            <source>hold no weighing of the largest volume; ten are needed</source>
            <translation>enthalten keine Wägung des größten Volumens; zehn sind nötig</translation>
        </message>
        <message>
            <source>hold %1 of %2 weighings of %3 µL; key the others, or leave this volume out</source>
            <translation>enthalten %1 von %2 Wägungen für %3 µL; die übrigen eingeben oder dieses Volumen weglassen</translation>
        </message>
        <message>
            <source>is missing, though that solution was read; key it</source>
            <translation>fehlt, obwohl diese Lösung abgelesen wurde; eingeben</translation>
        </message>
        <message>
            <source>hold no absorbance; key at least %1 (found: %2)</source>
            <translation>enthalten keine Extinktion; mindestens %1 eingeben (gefunden: %2)</translation>
        </message>
        <message>
            <source>is missing; key both numbers of the line, or neither</source>
            <translation>fehlt; beide Zahlen der Zeile eingeben oder keine</translation>
        </message>
        <message>
            <source>need at least %1 weighings; there are %2</source>
            <translation>brauchen mindestens %1 Wägungen; vorhanden: %2</translation>
        </message>
        <message>
            <source>hold no wavelength found; key at least %1 (found: %2)</source>
            <translation>enthalten keine gefundene Wellenlänge; mindestens %1 eingeben (gefunden: %2)</translation>
        </message>
        <message>
            <source>need at least %1 readings of the zero; there are %2</source>
            <translation>brauchen mindestens %1 Ablesungen des Nullpunkts; vorhanden: %2</translation>
        </message>
        <message>
            <source>need at least %1 readings of the coloured cuvette, or none; there are %2</source>
            <translation>brauchen mindestens %1 Ablesungen der gefärbten Küvette oder keine; vorhanden: %2</translation>
        </message>
        <message>
            <source>need at least %1 weighings of the one load; there are %2</source>
            <translation>brauchen mindestens %1 Wägungen der einen Last; vorhanden: %2</translation>
        </message>
        <message>
            <source>need at least %1 weight with what was shown; there are %2</source>
            <translation>brauchen mindestens %1 Gewichtsstück mit der Anzeige dazu; vorhanden: %2</translation>
        </message>
        <message>
            <source>need at least %1 temperature with what was shown; there are %2</source>
            <translation>brauchen mindestens %1 Temperatur mit der Anzeige dazu; vorhanden: %2</translation>
        </message>
        <message>
            <source>need at least %1 cuvettes; there are %2</source>
            <translation>brauchen mindestens %1 Küvetten; vorhanden: %2</translation>
        </message>
        <message>
            <source>Common practice, no source.</source>
            <translation>Gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>Water at</source>
            <translation>Wasser bei</translation>
        </message>
        <message>
            <source>Of the water, mean of the series.</source>
            <translation>Des Wassers, Mittelwert der Reihe.</translation>
        </message>
        <message>
            <source>Air pressure</source>
            <translation>Luftdruck</translation>
        </message>
        <message>
            <source>As it is in the room, not reduced to sea level. 1 kPa is 10 mbar.</source>
            <translation>Wie er im Raum ist, nicht auf Meereshöhe bezogen. 1 kPa sind 10 mbar.</translation>
        </message>
        <message>
            <source>Humidity of the air</source>
            <translation>Luftfeuchte</translation>
        </message>
        <message>
            <source>Its effect is small; 50 % where nobody measured it.</source>
            <translation>Ihr Einfluss ist klein; 50 %, wenn niemand sie gemessen hat.</translation>
        </message>
        <message>
            <source>Water, balance and pipette stand in the room for two hours. Ten deliveries of each volume into the closed vessel, a new tip for each volume, each mass noted in mg.</source>
            <translation>Wasser, Waage und Pipette stehen zwei Stunden im Raum. Zehn Abgaben jedes Volumens in das verschlossene Gefäß, eine neue Spitze für jedes Volumen, jede Masse in mg notieren.</translation>
        </message>
        <message>
            <source>Evaporation per delivery</source>
            <translation>Verdunstung je Abgabe</translation>
        </message>
        <message>
            <source>Mean loss of one cycle without a delivery; it is added to each mass.</source>
            <translation>Mittlerer Verlust eines Zyklus ohne Abgabe; er wird zu jeder Masse addiert.</translation>
        </message>
        <message>
            <source>Suggested: ISO 8655-2:2002 for %1, type A, taken from the data of a university's software package and not from the standard. Its edition of 2022 has other limits: enter those that your laboratory works to.</source>
            <translation>Vorschlag: ISO 8655-2:2002 für %1, Typ A, entnommen aus den Daten eines Softwarepakets einer Universität, nicht aus der Norm. Die Ausgabe von 2022 hat andere Grenzwerte: die eingeben, nach denen das Labor arbeitet.</translation>
        </message>
        <message>
            <source>Enter what your laboratory works to, and say where it comes from.</source>
            <translation>Eingeben, wonach das Labor arbeitet, und die Herkunft angeben.</translation>
        </message>
        <message>
            <source>Systematic error at most</source>
            <translation>Systematische Abweichung höchstens</translation>
        </message>
        <message>
            <source>Random error at most</source>
            <translation>Zufällige Abweichung höchstens</translation>
        </message>
        <message>
            <source>Volume set</source>
            <translation>Eingestelltes Volumen</translation>
        </message>
        <message>
            <source>Mass</source>
            <translation>Masse</translation>
        </message>
        <message>
            <source>The dry flask is weighed empty and filled to the mark with water; the mass of the water is noted in g, at least three times.</source>
            <translation>Der trockene Messkolben wird leer und bis zur Marke mit Wasser gefüllt gewogen; die Masse des Wassers wird in g notiert, mindestens dreimal.</translation>
        </message>
        <message>
            <source>The pipette is drained against the wall of the weighed vessel, with its waiting time; the mass of the water is noted in g, at least three times.</source>
            <translation>Die Pipette wird an der Wand des gewogenen Gefäßes entleert, mit ihrer Wartezeit; die Masse des Wassers wird in g notiert, mindestens dreimal.</translation>
        </message>
        <message>
            <source>Permissible error</source>
            <translation>Fehlergrenze</translation>
        </message>
        <message>
            <source>Suggested: class A of %1, taken from the data of a university's software package and not from the standard.</source>
            <translation>Vorschlag: Klasse A nach %1, entnommen aus den Daten eines Softwarepakets einer Universität, nicht aus der Norm.</translation>
        </message>
        <message>
            <source>Enter what is marked on the glass or stated in its certificate.</source>
            <translation>Eingeben, was auf dem Glas oder in seinem Zertifikat steht.</translation>
        </message>
        <message>
            <source>Cubic expansion of the glass</source>
            <translation>Kubische Ausdehnung des Glases</translation>
        </message>
        <message>
            <source>Mass of the water</source>
            <translation>Masse des Wassers</translation>
        </message>
        <message>
            <source>holmium perchlorate</source>
            <translation>Holmiumperchlorat</translation>
        </message>
        <message>
            <source>deuterium lamp</source>
            <translation>Deuteriumlampe</translation>
        </message>
        <message>
            <source>mercury lamp</source>
            <translation>Quecksilberlampe</translation>
        </message>
        <message>
            <source>The maxima of a holmium perchlorate solution, or the lines of a lamp: where the photometer shows them. Those that lie near the wavelengths you work at; the others may be left out.</source>
            <translation>Die Maxima einer Holmiumperchlorat-Lösung oder die Linien einer Lampe: wo das Photometer sie anzeigt. Diejenigen in der Nähe der verwendeten Wellenlängen; die anderen können wegbleiben.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Holmium perchlorate solution is made with perchloric acid: it is oxidising and burns the skin, and dried out with anything organic it can explode. A sealed cuvette spares you from handling it. The light of a mercury lamp contains ultraviolet: do not look into it.</source>
            <translation>Vorrang haben die örtlichen Vorschriften und die Anweisungen des Lieferanten. Holmiumperchlorat-Lösung wird mit Perchlorsäure hergestellt: Diese wirkt oxidierend und verätzt die Haut, und mit organischem Material eingetrocknet kann sie explodieren. Eine verschlossene Küvette erspart den Umgang damit. Das Licht einer Quecksilberlampe enthält Ultraviolett: nicht hineinsehen.</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Erwartet</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
        <message>
            <source>Potassium dichromate, dried, in 0.005 mol/L sulphuric acid, against the same acid at 25 °C. Weigh 57.0 to 63.0 mg for 1000 mL; for 430 nm 57.0 to 63.0 mg for 100 mL. Wavelengths your photometer does not have are left out.</source>
            <translation>Kaliumdichromat, getrocknet, in Schwefelsäure 0,005 mol/L, gegen dieselbe Säure bei 25 °C. 57,0 bis 63,0 mg für 1000 mL einwiegen; für 430 nm 57,0 bis 63,0 mg für 100 mL. Wellenlängen, die das Photometer nicht hat, werden weggelassen.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Potassium dichromate is toxic, may cause cancer and allergy, may damage fertility, is very toxic to aquatic life, and intensifies fire: do not breathe the dust, wear gloves, weigh in a fume hood, and dispose of the solution as hazardous waste. Sealed cuvettes with a certificate spare you from weighing it; then key the concentration that the certificate states.</source>
            <translation>Vorrang haben die örtlichen Vorschriften und die Anweisungen des Lieferanten. Kaliumdichromat ist giftig, kann Krebs und Allergien verursachen, kann die Fruchtbarkeit beeinträchtigen, ist sehr giftig für Wasserorganismen und wirkt brandfördernd: Staub nicht einatmen, Handschuhe tragen, unter dem Abzug einwiegen und die Lösung als Sonderabfall entsorgen. Verschlossene Küvetten mit Zertifikat ersparen das Einwiegen; dann die dort angegebene Konzentration eingeben.</translation>
        </message>
        <message>
            <source>Dichromate, weak</source>
            <translation>Dichromat, schwach</translation>
        </message>
        <message>
            <source>In the solution for 235 to 350 nm: the mass weighed for one litre.</source>
            <translation>In der Lösung für 235 bis 350 nm: die für einen Liter eingewogene Masse.</translation>
        </message>
        <message>
            <source>Dichromate, strong</source>
            <translation>Dichromat, stark</translation>
        </message>
        <message>
            <source>In the solution for 430 nm: ten times the mass weighed for 100 mL.</source>
            <translation>In der Lösung für 430 nm: das Zehnfache der für 100 mL eingewogenen Masse.</translation>
        </message>
        <message>
            <source>Path of the cuvette</source>
            <translation>Schichtdicke der Küvette</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>Absorbance less the acid's</source>
            <translation>Extinktion minus die der Säure</translation>
        </message>
        <message>
            <source>strong solution</source>
            <translation>starke Lösung</translation>
        </message>
        <message>
            <source>weak solution</source>
            <translation>schwache Lösung</translation>
        </message>
        <message>
            <source>At the wavelength you work at: the zero, with a cuvette of water set to zero once, read repeatedly; and one coloured cuvette (absorbance 0.5 to 1) taken out and put back each time.</source>
            <translation>Bei der verwendeten Wellenlänge: der Nullpunkt, mit einer einmal auf null gesetzten Küvette mit Wasser, immer wieder abgelesen; und eine gefärbte Küvette (Extinktion 0,5 bis 1), die jedes Mal herausgenommen und wieder eingesetzt wird.</translation>
        </message>
        <message>
            <source>Standard deviation at most</source>
            <translation>Standardabweichung höchstens</translation>
        </message>
        <message>
            <source>Mean of the zero, deviation at most</source>
            <translation>Mittelwert des Nullpunkts, Abweichung höchstens</translation>
        </message>
        <message>
            <source>Last digit that it shows</source>
            <translation>Letzte angezeigte Stelle</translation>
        </message>
        <message>
            <source>The step of the display.</source>
            <translation>Der Ziffernschritt der Anzeige.</translation>
        </message>
        <message>
            <source>Zero</source>
            <translation>Nullpunkt</translation>
        </message>
        <message>
            <source>Coloured cuvette</source>
            <translation>Gefärbte Küvette</translation>
        </message>
        <message>
            <source>One load, near what you weigh most, put on and taken off repeatedly; and weights with a certificate, each once.</source>
            <translation>Eine Last nahe der meistgewogenen, immer wieder aufgelegt und abgenommen; und Gewichtsstücke mit Zertifikat, jedes einmal.</translation>
        </message>
        <message>
            <source>Deviation from a weight at most</source>
            <translation>Abweichung von einem Gewichtsstück höchstens</translation>
        </message>
        <message>
            <source>One load, indication</source>
            <translation>Eine Last, Anzeige</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Gewichtsstück</translation>
        </message>
        <message>
            <source>Indication</source>
            <translation>Anzeige</translation>
        </message>
        <message>
            <source>Beside a thermometer with a certificate, in a stirred bath, at the temperatures you work at.</source>
            <translation>Neben einem Thermometer mit Zertifikat, in einem gerührten Bad, bei den verwendeten Temperaturen.</translation>
        </message>
        <message>
            <source>Deviation at most</source>
            <translation>Abweichung höchstens</translation>
        </message>
        <message>
            <source>Reference</source>
            <translation>Referenz</translation>
        </message>
        <message>
            <source>Every cuvette of the set, clean and filled with water, read at the wavelength you work at, marks facing the same way.</source>
            <translation>Jede Küvette des Satzes, sauber und mit Wasser gefüllt, bei der verwendeten Wellenlänge abgelesen, Markierungen gleich ausgerichtet.</translation>
        </message>
        <message>
            <source>Largest minus smallest at most</source>
            <translation>Größte minus kleinste höchstens</translation>
        </message>
        <message>
            <source>Path length tolerance</source>
            <translation>Toleranz der Schichtdicke</translation>
        </message>
        <message>
            <source>From the certificate of the cuvettes: half the width. Suggested: 10.00 ± 0.01 mm (common practice, no source).</source>
            <translation>Aus dem Zertifikat der Küvetten: die halbe Breite. Vorschlag: 10,00 ± 0,01 mm (gängige Praxis, ohne Quelle).</translation>
        </message>
        <message>
            <source>Absorbance with water</source>
            <translation>Extinktion mit Wasser</translation>
        </message>
        <message>
            <source>cuvette %1</source>
            <translation>Küvette %1</translation>
        </message>
        <message>
            <source>is not something checked on a %1</source>
            <translation>wird bei „%1“ nicht geprüft</translation>
        </message>
        <message>
            <source>must be a real date that is not in the future</source>
            <translation>muss ein gültiges Datum sein, das nicht in der Zukunft liegt</translation>
        </message>
        <message>
            <source>the note</source>
            <translation>die Bemerkung</translation>
        </message>
        <message>
            <source>Suggested: borosilicate glass 3.3, as it is usually taken; not looked up in ISO 4787.</source>
            <translation>Vorschlag: Borosilikatglas 3.3, wie es üblicherweise angesetzt wird; nicht in ISO 4787 nachgeschlagen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Standing</name>
        <message>
            <source>out of use</source>
            <translation>außer Gebrauch</translation>
        </message>
        <message>
            <source>in date until %1</source>
            <translation>Prüfung gültig bis %1</translation>
        </message>
        <message>
            <source>due today</source>
            <translation>heute fällig</translation>
        </message>
        <message>
            <source>due in 1 day</source>
            <translation>fällig in 1 Tag</translation>
        </message>
        <message>
            <source>due in %1 days</source>
            <translation>fällig in %1 Tagen</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>overdue since %1: %2</source>
            <translation>überfällig seit %1: %2</translation>
        </message>
        <message>
            <source>failed on %1: %2</source>
            <translation>nicht bestanden am %1: %2</translation>
        </message>
        <message>
            <source>never checked: %1</source>
            <translation>nie geprüft: %1</translation>
        </message>
        <message>
            <source>check %1 of %2</source>
            <translation>Prüfung %1 vom %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Appraisal</name>
        <message>
            <source>the window starts at %1, below the smallest difference in absorbance that can be resolved (%2)</source>
            <translation>das Fenster beginnt bei %1, unter der kleinsten unterscheidbaren Extinktionsdifferenz (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Budget</name>
        <message>
            <source>repeatability</source>
            <translation>Wiederholpräzision</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>Kalibriergerade</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>dilution step %1 (%2 mL to %3 mL)</source>
            <translation>Verdünnungsschritt %1 (%2 mL auf %3 mL)</translation>
        </message>
        <message>
            <source>concentration of the standard</source>
            <translation>Konzentration des Standards</translation>
        </message>
        <message>
            <source>concentration of the standard (%1)</source>
            <translation>Konzentration des Standards (%1)</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>Probenblindwert</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Checks</name>
        <message>
            <source>The replicates agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Die Parallelansätze stimmen überein: Abstand %1, zulässig bis %2 (%3).</translation>
        </message>
        <message>
            <source>The sample volumes agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Die Probenvolumina stimmen überein: Abstand %1, zulässig bis %2 (%3).</translation>
        </message>
        <message>
            <source>the method's repeatability limit</source>
            <translation>die Wiederholgrenze der Methode</translation>
        </message>
        <message>
            <source>the noise of the readings</source>
            <translation>das Rauschen der Ablesungen</translation>
        </message>
        <message>
            <source>%1, common practice</source>
            <translation>%1, gängige Praxis</translation>
        </message>
        <message>
            <source>the laboratory's rule of %1</source>
            <translation>die Laborvorgabe von %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1, %2 left</source>
            <translation>%1, %2 verblieben</translation>
        </message>
        <message>
            <source>up to %1, %2 left</source>
            <translation>bis %1, %2 verblieben</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mindestens %1</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>%1 from %2</source>
            <translation>%1 ab %2</translation>
        </message>
        <message>
            <source>%1 up to %2</source>
            <translation>%1 bis zu %2</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>bis %1</translation>
        </message>
        <message>
            <source>absorbance rises</source>
            <translation>Extinktion steigt</translation>
        </message>
        <message>
            <source>absorbance falls</source>
            <translation>Extinktion fällt</translation>
        </message>
        <message>
            <source>change within the noise</source>
            <translation>Änderung im Rauschen</translation>
        </message>
        <message>
            <source>Recovery of the control</source>
            <translation>Wiederfindung der Kontrollprobe</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 places</source>
            <translation>%1 Stellen</translation>
        </message>
        <message>
            <source>some</source>
            <translation>einige</translation>
        </message>
        <message>
            <source>nearest of %1</source>
            <translation>knappster Fall von %1</translation>
        </message>
        <message>
            <source>laboratory's rule</source>
            <translation>Laborvorgabe</translation>
        </message>
        <message>
            <source>common practice</source>
            <translation>gängige Praxis</translation>
        </message>
        <message>
            <source>noise of the readings</source>
            <translation>Rauschen der Ablesungen</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>a reading is missing</source>
            <translation>eine Ablesung fehlt</translation>
        </message>
        <message>
            <source>a reading cannot be right</source>
            <translation>eine Ablesung kann nicht stimmen</translation>
        </message>
        <message>
            <source>a signal runs in the wrong direction</source>
            <translation>ein Signal läuft in die falsche Richtung</translation>
        </message>
        <message>
            <source>the absorbance is too high</source>
            <translation>die Extinktion ist zu hoch</translation>
        </message>
        <message>
            <source>the reagent was used up</source>
            <translation>das Reagenz wurde aufgebraucht</translation>
        </message>
        <message>
            <source>the blank is missing</source>
            <translation>der Blindwert fehlt</translation>
        </message>
        <message>
            <source>the blank is too high</source>
            <translation>der Blindwert ist zu hoch</translation>
        </message>
        <message>
            <source>the blanks are too far apart</source>
            <translation>die Blindwerte liegen zu weit auseinander</translation>
        </message>
        <message>
            <source>the replicates are too far apart</source>
            <translation>die Parallelansätze liegen zu weit auseinander</translation>
        </message>
        <message>
            <source>the standard is too old</source>
            <translation>der Standard ist zu alt</translation>
        </message>
        <message>
            <source>two sample volumes disagree</source>
            <translation>zwei Probenvolumina stimmen nicht überein</translation>
        </message>
        <message>
            <source>the reaction has not ended</source>
            <translation>die Reaktion ist nicht beendet</translation>
        </message>
        <message>
            <source>a reading was taken too early</source>
            <translation>eine Ablesung erfolgte zu früh</translation>
        </message>
        <message>
            <source>a reading was taken too late</source>
            <translation>eine Ablesung erfolgte zu spät</translation>
        </message>
        <message>
            <source>a lot is out of date</source>
            <translation>eine Charge ist abgelaufen</translation>
        </message>
        <message>
            <source>the sample volume is outside its range</source>
            <translation>das Probenvolumen liegt außerhalb seines Bereichs</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>Ansatz %1</translation>
        </message>
        <message>
            <source>tubes %1 and %2</source>
            <translation>Ansätze %1 und %2</translation>
        </message>
        <message>
            <source>%1 of sample</source>
            <translation>%1 Probe</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>unverdünnt</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 auf %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, dann </translation>
        </message>
        <message>
            <source>diluted at least %1-fold in all (%2)</source>
            <translation>insgesamt mindestens %1-fach verdünnt (%2)</translation>
        </message>
        <message>
            <source>diluted %1-fold in all (%2)</source>
            <translation>insgesamt %1-fach verdünnt (%2)</translation>
        </message>
        <message>
            <source>Readings missing</source>
            <translation>Fehlende Ablesungen</translation>
        </message>
        <message>
            <source>Readings no photometer can show</source>
            <translation>Ablesungen, die kein Photometer anzeigen kann</translation>
        </message>
        <message>
            <source>Signals in the wrong direction</source>
            <translation>Signale in falscher Richtung</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Größte Extinktion</translation>
        </message>
        <message>
            <source>Reagent left</source>
            <translation>Verbliebenes Reagenz</translation>
        </message>
        <message>
            <source>Blanks read</source>
            <translation>Blindwerte abgelesen</translation>
        </message>
        <message>
            <source>Blank signal</source>
            <translation>Blindwertsignal</translation>
        </message>
        <message>
            <source>Difference between blanks</source>
            <translation>Abstand der Blindwerte</translation>
        </message>
        <message>
            <source>Difference between replicates</source>
            <translation>Abstand der Parallelansätze</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Wiederfindung des Standards</translation>
        </message>
        <message>
            <source>Age of the standard</source>
            <translation>Alter des Standards</translation>
        </message>
        <message>
            <source>Recovery of the spike</source>
            <translation>Wiederfindung der Aufstockung</translation>
        </message>
        <message>
            <source>Difference between sample volumes</source>
            <translation>Abstand der Probenvolumina</translation>
        </message>
        <message>
            <source>Reactions not ended</source>
            <translation>Nicht beendete Reaktionen</translation>
        </message>
        <message>
            <source>Readings too early</source>
            <translation>Zu frühe Ablesungen</translation>
        </message>
        <message>
            <source>Readings too late</source>
            <translation>Zu späte Ablesungen</translation>
        </message>
        <message>
            <source>Lot in date</source>
            <translation>Charge nicht abgelaufen</translation>
        </message>
        <message>
            <source>Volumes outside their range</source>
            <translation>Volumina außerhalb ihres Bereichs</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2</source>
            <translation>%1 wird nicht berechnet: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>method %1, version %2, has no measurand %3. Evaluate the sample by a version that has it.</source>
            <translation>Methode %1, Version %2, hat keine Messgröße %3. Die Probe mit einer Version auswerten, die sie hat.</translation>
        </message>
        <message>
            <source>%1 is in %2 and %3 in %4. Enter the sample in the same form in both runs.</source>
            <translation>%1 ist in %2 und %3 in %4 angegeben. Die Probe in beiden Läufen in derselben Form eingeben.</translation>
        </message>
        <message>
            <source>%1 has no value.</source>
            <translation>%1 hat keinen Wert.</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2 is only known to be larger, which leaves no limit for it. Repeat as advised.</source>
            <translation>%1 wird nicht berechnet: Von %2 ist nur bekannt, dass der Wert größer ist, daraus ergibt sich keine Grenze. Wie empfohlen wiederholen.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>%1; see there.</source>
            <translation>%1; siehe dort.</translation>
        </message>
        <message>
            <source>%1 with the same contents read</source>
            <translation>%1 mit demselben Inhalt:</translation>
        </message>
        <message>
            <source>the other tubes with the same reagents read about</source>
            <translation>die anderen Ansätze mit denselben Reagenzien liegen bei etwa</translation>
        </message>
        <message>
            <source>%1 blanks and standards read about</source>
            <translation>%1 Blindwerte und Standards liegen bei etwa</translation>
        </message>
        <message>
            <source>%1 other samples read about</source>
            <translation>%1 andere Proben liegen bei etwa</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1: %2 ist %3, aber %4 %5. Auf ein verrutschtes Dezimalzeichen oder einen verwechselten Ansatz achten.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5, and the same reagents scatter by %6 at most. Look for a reagent left out or added twice, bubbles, or a coloured sample.</source>
            <translation>%1: %2 ist %3, aber %4 %5, und dieselben Reagenzien streuen um höchstens %6. Auf ein vergessenes oder doppelt zugegebenes Reagenz, Luftblasen oder eine gefärbte Probe achten.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, above the photometer's limit of %4. An absorbance that high is not proportional to concentration.</source>
            <translation>%1: %2 ist %3, über der Grenze des Photometers von %4. Eine so hohe Extinktion ist der Konzentration nicht proportional.</translation>
        </message>
        <message>
            <source>%1: with this the blank's signal is %2, and the method allows %3. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1: Damit beträgt das Signal des Blindwerts %2, und die Methode lässt %3 zu. Auf ein verrutschtes Dezimalzeichen oder einen verwechselten Ansatz achten.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain: the reagent is nearly used up.</source>
            <translation>%1: %2 ist %3, und %4 müssen verbleiben: Das Reagenz ist fast aufgebraucht.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, to the last digit what %4 shows, which was read just before and holds something else. Make sure that the cuvette was changed.</source>
            <translation>%1: %2 ist %3, bis zur letzten Stelle das, was %4 zeigt; dieser Ansatz wurde unmittelbar davor abgelesen und enthält etwas anderes. Sicherstellen, dass die Küvette gewechselt wurde.</translation>
        </message>
        <message>
            <source>with %1</source>
            <translation>mit %1</translation>
        </message>
        <message>
            <source>The run has a blank.</source>
            <translation>Der Lauf hat einen Blindwert.</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is within %2.</source>
            <translation>Das mittlere Blindwertsignal %1 liegt innerhalb von %2.</translation>
        </message>
        <message>
            <source>The blanks agree: %1 apart, up to %2 allowed.</source>
            <translation>Die Blindwerte stimmen überein: Abstand %1, zulässig bis %2.</translation>
        </message>
        <message>
            <source>%1, lot %2, is in date until %3.</source>
            <translation>%1, Charge %2, ist verwendbar bis %3.</translation>
        </message>
        <message>
            <source>%1 found, %2 at use</source>
            <translation>%1 gefunden, %2 bei Verwendung</translation>
        </message>
        <message>
            <source>This standard calibrates the run and cannot judge itself; a second standard or a control would.</source>
            <translation>Dieser Standard kalibriert den Lauf und kann sich nicht selbst beurteilen; ein zweiter Standard oder eine Kontrollprobe könnte es.</translation>
        </message>
        <message>
            <source>Recovery %1 is within %2 (%3).</source>
            <translation>Die Wiederfindung %1 liegt innerhalb von %2 (%3).</translation>
        </message>
        <message>
            <source>The standard was fresh enough: %1.</source>
            <translation>Der Standard war frisch genug: %1.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is within %2.</source>
            <translation>Die Wiederfindung der Aufstockung %1 liegt innerhalb von %2.</translation>
        </message>
        <message>
            <source>%1 old, %2 of its strength left</source>
            <translation>%1 alt, noch %2 des Gehalts</translation>
        </message>
        <message>
            <source>%1 is marked %2 before what precedes it (the method waits %3)</source>
            <translation>%1 ist %2 vor dem vermerkt, was davor kommt (die Methode wartet %3)</translation>
        </message>
        <message>
            <source>%1 was read %2 early (after %3, the method waits %4)</source>
            <translation>%1 wurde %2 zu früh abgelesen (nach %3, die Methode wartet %4)</translation>
        </message>
        <message>
            <source>%1 was read %2 late (after %3, the method waits %4)</source>
            <translation>%1 wurde %2 zu spät abgelesen (nach %3, die Methode wartet %4)</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too early.</source>
            <translation>Keine Ablesung mit bekannter Zeit erfolgte zu früh.</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too late.</source>
            <translation>Keine Ablesung mit bekannter Zeit erfolgte zu spät.</translation>
        </message>
        <message>
            <source>No reading was taken too early.</source>
            <translation>Keine Ablesung erfolgte zu früh.</translation>
        </message>
        <message>
            <source>No reading was taken too late.</source>
            <translation>Keine Ablesung erfolgte zu spät.</translation>
        </message>
        <message>
            <source>Read again when the wait is over.</source>
            <translation>Nach Ablauf der Wartezeit erneut ablesen.</translation>
        </message>
        <message>
            <source>A slow side reaction may have added to the signal.</source>
            <translation>Eine langsame Nebenreaktion kann zum Signal beigetragen haben.</translation>
        </message>
        <message>
            <source>Every reading is there.</source>
            <translation>Alle Ablesungen sind vorhanden.</translation>
        </message>
        <message>
            <source>Every reading that counts is there: without %1, spoilt.</source>
            <translation>Alle zählenden Ablesungen sind vorhanden: ohne %1, unbrauchbar.</translation>
        </message>
        <message>
            <source>%1 is missing</source>
            <translation>%1 fehlt</translation>
        </message>
        <message>
            <source>spoilt (%1)</source>
            <translation>unbrauchbar (%1)</translation>
        </message>
        <message>
            <source>Read and key what is missing.</source>
            <translation>Ablesen und eingeben, was fehlt.</translation>
        </message>
        <message>
            <source>No other tube stands in for it: pipette it again.</source>
            <translation>Kein anderer Ansatz ersetzt ihn: neu pipettieren.</translation>
        </message>
        <message>
            <source>Every reading is one that a photometer can show.</source>
            <translation>Jede Ablesung ist eine, die ein Photometer anzeigen kann.</translation>
        </message>
        <message>
            <source>%1 is %2, outside %3 to %4</source>
            <translation>%1 ist %2, außerhalb von %3 bis %4</translation>
        </message>
        <message>
            <source>Read the tube again; look for a slipped decimal point.</source>
            <translation>Den Ansatz erneut ablesen; auf ein verrutschtes Dezimalzeichen achten.</translation>
        </message>
        <message>
            <source>No reading is above the photometer's limit of %1.</source>
            <translation>Keine Ablesung liegt über der Grenze des Photometers von %1.</translation>
        </message>
        <message>
            <source>%1 is %2, above the photometer's limit of %3</source>
            <translation>%1 ist %2, über der Grenze des Photometers von %3</translation>
        </message>
        <message>
            <source>An absorbance that high is not proportional to concentration.</source>
            <translation>Eine so hohe Extinktion ist der Konzentration nicht proportional.</translation>
        </message>
        <message>
            <source>Enough of the falling reagent is left (%1 or more).</source>
            <translation>Vom abnehmenden Reagenz ist genug übrig (%1 oder mehr).</translation>
        </message>
        <message>
            <source>%1 is %2, less than the %3 that must remain</source>
            <translation>%1 ist %2, weniger als die %3, die verbleiben müssen</translation>
        </message>
        <message>
            <source>The reagent was used up: the true value is only known to be larger.</source>
            <translation>Das Reagenz wurde aufgebraucht: Vom wahren Wert ist nur bekannt, dass er größer ist.</translation>
        </message>
        <message>
            <source>Every sample volume is one the method allows.</source>
            <translation>Jedes Probenvolumen ist eines, das die Methode zulässt.</translation>
        </message>
        <message>
            <source>%1 of sample, outside %2 to %3</source>
            <translation>%1 Probe, außerhalb von %2 bis %3</translation>
        </message>
        <message>
            <source>Pipette a volume within the method's range.</source>
            <translation>Ein Volumen im Bereich der Methode pipettieren.</translation>
        </message>
        <message>
            <source>Every reaction followed as a series has ended.</source>
            <translation>Jede als Ablesereihe verfolgte Reaktion ist beendet.</translation>
        </message>
        <message>
            <source>%1 still changes (%2 per minute over the last %3 readings)</source>
            <translation>%1 ändert sich noch (%2 pro Minute über die letzten %3 Ablesungen)</translation>
        </message>
        <message>
            <source>Read on until the change from reading to reading is constant.</source>
            <translation>Weiter ablesen, bis die Änderung von Ablesung zu Ablesung konstant ist.</translation>
        </message>
        <message>
            <source>Absorbance rose, as it should.</source>
            <translation>Die Extinktion stieg, wie sie soll.</translation>
        </message>
        <message>
            <source>Absorbance fell, as it should.</source>
            <translation>Die Extinktion fiel, wie sie soll.</translation>
        </message>
        <message>
            <source>absorbance fell by %1 where it should rise</source>
            <translation>die Extinktion fiel um %1, wo sie steigen soll</translation>
        </message>
        <message>
            <source>absorbance rose by %1 where it should fall</source>
            <translation>die Extinktion stieg um %1, wo sie fallen soll</translation>
        </message>
        <message>
            <source>Look for swapped readings, a wrong tube or a missing addition.</source>
            <translation>Auf vertauschte Ablesungen, einen falschen Ansatz oder eine fehlende Zugabe achten.</translation>
        </message>
        <message>
            <source>Net signal is at least %1.</source>
            <translation>Das Nettosignal beträgt mindestens %1.</translation>
        </message>
        <message>
            <source>Net signal is at most %1.</source>
            <translation>Das Nettosignal beträgt höchstens %1.</translation>
        </message>
        <message>
            <source>net signal %1 is below %2</source>
            <translation>Nettosignal %1 liegt unter %2</translation>
        </message>
        <message>
            <source>net signal %1 is above %2</source>
            <translation>Nettosignal %1 liegt über %2</translation>
        </message>
        <message>
            <source>Too little to be measured well.</source>
            <translation>Zu wenig, um gut gemessen zu werden.</translation>
        </message>
        <message>
            <source>More than the assay measures in proportion.</source>
            <translation>Mehr, als der Test proportional misst.</translation>
        </message>
        <message>
            <source>The standard %1 is too old: %2. Make a fresh one.</source>
            <translation>Der Standard %1 ist zu alt: %2. Einen frischen herstellen.</translation>
        </message>
        <message>
            <source>no standard</source>
            <translation>kein Standard</translation>
        </message>
        <message>
            <source>The method judges the recovery of a standard (%1), and no tube of this run held one or a control: nothing in the run shows what the assay recovered. Say in the reason why it may stand, or repeat it with a standard.</source>
            <translation>Die Methode beurteilt die Wiederfindung eines Standards (%1), und kein Ansatz dieses Laufs enthielt einen Standard oder eine Kontrollprobe: Nichts im Lauf zeigt, was der Test wiederfindet. In der Begründung angeben, warum er gelten darf, oder ihn mit einem Standard wiederholen.</translation>
        </message>
        <message>
            <source>the net signal is too low</source>
            <translation>das Nettosignal ist zu klein</translation>
        </message>
        <message>
            <source>the net signal is too high</source>
            <translation>das Nettosignal ist zu groß</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>die Wiederfindung des Standards liegt außerhalb der Grenzen</translation>
        </message>
        <message>
            <source>the recovery of the spike is outside its limits</source>
            <translation>die Wiederfindung der Aufstockung liegt außerhalb der Grenzen</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Kleinstes Nettosignal</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Größtes Nettosignal</translation>
        </message>
        <message>
            <source>This run has no standard, and the method judges the recovery of one (%1). Add a standard or a control; without one the review cannot tell whether the assay finds what is there.</source>
            <translation>Dieser Lauf hat keinen Standard, und die Methode beurteilt dessen Wiederfindung (%1). Einen Standard oder eine Kontrollprobe hinzufügen; sonst kann die Bewertung nicht sagen, ob der Test findet, was vorhanden ist.</translation>
        </message>
        <message>
            <source>No standard of this run holds %1, and the method judges its recovery (%2). Add a standard or a control that does.</source>
            <translation>Kein Standard dieses Laufs enthält %1, und die Methode beurteilt dessen Wiederfindung (%2). Einen Standard oder eine Kontrollprobe mit diesem Analyten hinzufügen.</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>Probe %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>gültig</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>wiederholen</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>abklären</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>Kontrollprobe %1</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain when the reaction is over. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1: %2 ist %3, und %4 müssen nach der Reaktion übrig sein. Auf ein verrutschtes Dezimalzeichen oder ein vergessenes Reagenz achten.</translation>
        </message>
        <message>
            <source>The control was fresh enough: %1.</source>
            <translation>Die Kontrollprobe war frisch genug: %1.</translation>
        </message>
        <message>
            <source>%1: with this its net signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1: Damit beträgt das Nettosignal %2, aber %3 mit demselben Inhalt ergab %4, und höchstens %6 ist dazwischen zulässig (%5). Auf einen Tippfehler, einen verwechselten Ansatz oder einen Pipettierfehler achten.</translation>
        </message>
        <message>
            <source>%1: with this its signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1: Damit beträgt das Signal %2, aber %3 mit demselben Inhalt ergab %4, und höchstens %6 ist dazwischen zulässig (%5). Auf einen Tippfehler, einen verwechselten Ansatz oder einen Pipettierfehler achten.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but blanks of earlier runs by this method read about %4. Look for a slipped decimal point, and that the photometer was set to zero as always.</source>
            <translation>%1: %2 ist %3, Blindwerte früherer Läufe mit dieser Methode lagen aber bei etwa %4. Prüfen, ob das Dezimalzeichen verrutscht ist und das Photometer wie immer auf null gesetzt wurde.</translation>
        </message>
        <message>
            <source>The replicates in %1 are %2 apart, more than %3 (%4).</source>
            <translation>Die Parallelansätze in %1 liegen %2 auseinander, mehr als %3 (%4).</translation>
        </message>
        <message>
            <source>Read them again while they stand in the rack; if they still disagree, one of them was pipetted wrongly: repeat the sample.</source>
            <translation>Erneut ablesen, solange sie im Rack stehen; weichen sie weiterhin ab, wurde einer falsch pipettiert: die Probe wiederholen.</translation>
        </message>
        <message>
            <source>Different sample volumes give results %1 apart, more than %2 (%3).</source>
            <translation>Verschiedene Probenvolumina ergeben Ergebnisse mit einem Abstand von %1, mehr als %2 (%3).</translation>
        </message>
        <message>
            <source>Suspect an interference: dilute further, or check by a spike.</source>
            <translation>Verdacht auf eine Störung: stärker verdünnen oder durch Aufstockung prüfen.</translation>
        </message>
        <message>
            <source>What the reagents show by themselves is taken off the result, and is more than usual.</source>
            <translation>Was die Reagenzien selbst zeigen, wird vom Ergebnis abgezogen und ist mehr als üblich.</translation>
        </message>
        <message>
            <source>Their mean is taken off the result, which is less well known by that.</source>
            <translation>Ihr Mittelwert wird vom Ergebnis abgezogen, das dadurch weniger genau bekannt ist.</translation>
        </message>
        <message>
            <source>The result is their mean, which is less well known than usual.</source>
            <translation>Das Ergebnis ist ihr Mittelwert, der weniger genau bekannt ist als üblich.</translation>
        </message>
        <message>
            <source>The results of the run may be off in the same proportion.</source>
            <translation>Die Ergebnisse des Laufs können im selben Verhältnis abweichen.</translation>
        </message>
        <message>
            <source>What it held at its use is less well known, and so is what rests on it.</source>
            <translation>Der Gehalt bei Verwendung ist weniger genau bekannt und damit auch, was darauf beruht.</translation>
        </message>
        <message>
            <source>Whether something in the sample disturbs the measurement is open.</source>
            <translation>Ob etwas in der Probe die Messung stört, ist offen.</translation>
        </message>
        <message>
            <source>Something in the sample may disturb the measurement.</source>
            <translation>Etwas in der Probe stört womöglich die Messung.</translation>
        </message>
        <message>
            <source>The result may be that of an incomplete reaction.</source>
            <translation>Das Ergebnis ist womöglich das einer unvollständigen Reaktion.</translation>
        </message>
        <message>
            <source>It may have worked less well than one in date.</source>
            <translation>Sie hat womöglich weniger gut gewirkt als eine verwendbare.</translation>
        </message>
        <message>
            <source>The method does not say how well it works with such a volume.</source>
            <translation>Die Methode sagt nicht, wie gut sie mit einem solchen Volumen arbeitet.</translation>
        </message>
        <message>
            <source>No result rests on such a signal.</source>
            <translation>Auf einem solchen Signal beruht kein Ergebnis.</translation>
        </message>
        <message>
            <source>No result rests on such a reading.</source>
            <translation>Auf einer solchen Ablesung beruht kein Ergebnis.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 has to be there at the start for the largest signal and what must remain. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1: %2 ist %3, am Anfang braucht es aber %4: für das größte Signal und für das, was übrig bleiben muss. Auf ein verrutschtes Dezimalzeichen oder ein vergessenes Reagenz achten.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and more than %4 at the start leaves no room for the largest signal. Look for a slipped decimal point, and that the photometer was set to zero.</source>
            <translation>%1: %2 ist %3, und mehr als %4 am Anfang lässt keinen Raum für das größte Signal. Prüfen, ob das Dezimalzeichen verrutscht ist und das Photometer auf null gesetzt wurde.</translation>
        </message>
        <message>
            <source>%1 Or the decimal point slipped: %2 would be plausible here.</source>
            <translation>%1 Oder das Dezimalzeichen ist verrutscht: %2 wäre hier plausibel.</translation>
        </message>
        <message>
            <source>Repeat %1.</source>
            <translation>Wiederholen: %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification, %1.</source>
            <translation>Als unter der Bestimmungsgrenze berichten, %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification.</source>
            <translation>Als unter der Bestimmungsgrenze berichten.</translation>
        </message>
        <message>
            <source>Another tube of the sample is not: look for a missing addition.</source>
            <translation>Ein anderer Ansatz der Probe ist es nicht: auf eine fehlende Zugabe achten.</translation>
        </message>
        <message>
            <source>No blank has been read: the results are not corrected for what the reagents themselves do.</source>
            <translation>Kein Blindwert wurde abgelesen: Die Ergebnisse sind nicht um den Beitrag der Reagenzien selbst korrigiert.</translation>
        </message>
        <message>
            <source>Run a blank with diluent in place of sample.</source>
            <translation>Einen Blindwert mit Verdünnungsmittel anstelle der Probe mitführen.</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is beyond the method's %2.</source>
            <translation>Das mittlere Blindwertsignal %1 liegt jenseits der Vorgabe der Methode von %2.</translation>
        </message>
        <message>
            <source>Look for a contaminated reagent or cuvette and repeat the blank.</source>
            <translation>Auf ein verunreinigtes Reagenz oder eine verunreinigte Küvette achten und den Blindwert wiederholen.</translation>
        </message>
        <message>
            <source>The blanks (%1) are %2 apart, more than %3 (%4).</source>
            <translation>Die Blindwerte (%1) liegen %2 auseinander, mehr als %3 (%4).</translation>
        </message>
        <message>
            <source>One of them was pipetted or read wrongly: read them again.</source>
            <translation>Einer wurde falsch pipettiert oder abgelesen: erneut ablesen.</translation>
        </message>
        <message>
            <source>%1, lot %2, expired on %3.</source>
            <translation>%1, Charge %2, ist abgelaufen am %3.</translation>
        </message>
        <message>
            <source>Repeat with a lot in date, or say why it may stand.</source>
            <translation>Mit einer verwendbaren Charge wiederholen oder angeben, warum es so stehen bleiben kann.</translation>
        </message>
        <message>
            <source>Recovery %1 is outside %2 (%3).</source>
            <translation>Die Wiederfindung %1 liegt außerhalb von %2 (%3).</translation>
        </message>
        <message>
            <source>Check the control's value and its date, the pipette and the reagents before any result of this run is used.</source>
            <translation>Sollwert und Datum der Kontrollprobe, die Pipette und die Reagenzien prüfen, bevor ein Ergebnis dieses Laufs verwendet wird.</translation>
        </message>
        <message>
            <source>Check the preparation and age of the standard, the pipette and the reagents before any result of this run is used.</source>
            <translation>Herstellung und Alter des Standards, die Pipette und die Reagenzien prüfen, bevor ein Ergebnis dieses Laufs verwendet wird.</translation>
        </message>
        <message>
            <source>The control was too old: %1.</source>
            <translation>Die Kontrollprobe war zu alt: %1.</translation>
        </message>
        <message>
            <source>Take a fresh one.</source>
            <translation>Eine frische nehmen.</translation>
        </message>
        <message>
            <source>The standard was too old: %1.</source>
            <translation>Der Standard war zu alt: %1.</translation>
        </message>
        <message>
            <source>Make a fresh one.</source>
            <translation>Einen frischen herstellen.</translation>
        </message>
        <message>
            <source>The spiked tube lies above what the assay measures; its recovery of %1 says nothing.</source>
            <translation>Der aufgestockte Ansatz liegt über dem, was der Test misst; seine Wiederfindung von %1 sagt nichts aus.</translation>
        </message>
        <message>
            <source>Repeat it with less spike or a higher dilution.</source>
            <translation>Mit geringerer Aufstockung oder stärkerer Verdünnung wiederholen.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is outside %2.</source>
            <translation>Die Wiederfindung der Aufstockung %1 liegt außerhalb von %2.</translation>
        </message>
        <message>
            <source>Suspect an interference or a pipetting error.</source>
            <translation>Verdacht auf eine Störung oder einen Pipettierfehler.</translation>
        </message>
        <message>
            <source>lot's last good day</source>
            <translation>letzter Verwendungstag der Charge</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Compliance</name>
        <message>
            <source>%1; the result states no uncertainty</source>
            <translation>%1; das Ergebnis gibt keine Unsicherheit an</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, %2 u = %3</source>
            <translation>%1, %2 u = %3</translation>
        </message>
        <message>
            <source>%1, U = %2</source>
            <translation>%1, U = %2</translation>
        </message>
        <message>
            <source>%1, %2 U = %3</source>
            <translation>%1, %2 U = %3</translation>
        </message>
        <message>
            <source>cannot be decided, because the rule needs an uncertainty and a bound has none</source>
            <translation>nicht entscheidbar, weil die Regel eine Unsicherheit braucht und eine Schranke keine hat</translation>
        </message>
        <message>
            <source>cannot be decided, because the rule needs an uncertainty and the result states none</source>
            <translation>nicht entscheidbar, weil die Regel eine Unsicherheit braucht und das Ergebnis keine angibt</translation>
        </message>
        <message>
            <source>cannot be decided, because only a bound is known</source>
            <translation>nicht entscheidbar, weil nur eine Schranke bekannt ist</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty, which leaves nothing between the limits</source>
            <translation>bei dieser Unsicherheit nicht entscheidbar, da sie zwischen den Grenzwerten nichts übrig lässt</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty</source>
            <translation>bei dieser Unsicherheit nicht entscheidbar</translation>
        </message>
        <message>
            <source>cannot be decided against %1: %2</source>
            <translation>nicht entscheidbar gegen %1: %2</translation>
        </message>
        <message>
            <source>below the threshold</source>
            <translation>unter dem Schwellenwert</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>innerhalb</translation>
        </message>
        <message>
            <source>at or above the threshold</source>
            <translation>beim oder über dem Schwellenwert</translation>
        </message>
        <message>
            <source>outside</source>
            <translation>außerhalb</translation>
        </message>
        <message>
            <source>cannot be decided</source>
            <translation>nicht entscheidbar</translation>
        </message>
        <message>
            <source>less than %1</source>
            <translation>kleiner als %1</translation>
        </message>
        <message>
            <source>more than %1</source>
            <translation>größer als %1</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is normally distributed about the result</source>
            <translation>Wahrscheinlichkeit %1, dass der wahre Wert jenseits des Grenzwerts liegt, wenn er normal um das Ergebnis verteilt ist</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is distributed about the result as Student's t with %2 degrees of freedom</source>
            <translation>Wahrscheinlichkeit %1, dass der wahre Wert jenseits des Grenzwerts liegt, wenn er um das Ergebnis nach Students t mit %2 Freiheitsgraden verteilt ist</translation>
        </message>
        <message>
            <source>the result is given in %1</source>
            <translation>das Ergebnis ist in %1 angegeben</translation>
        </message>
        <message>
            <source>the result has no value</source>
            <translation>das Ergebnis hat keinen Wert</translation>
        </message>
        <message>
            <source>%1: %2 against %3 (%4)</source>
            <translation>%1: %2 gegen %3 (%4)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::ReportUnit</name>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per volume</source>
            <translation>ein Ergebnis in %1 lässt sich ohne die Dichte, die niemand angegeben hat, nicht in %2 angeben; eine Einheit je Volumen wählen</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per mass</source>
            <translation>ein Ergebnis in %1 lässt sich ohne die Dichte, die niemand angegeben hat, nicht in %2 angeben; eine Einheit je Masse wählen</translation>
        </message>
        <message>
            <source>no value</source>
            <translation>kein Wert</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2, because what is measured has no molar mass of its own; choose a unit of mass</source>
            <translation>ein Ergebnis in %1 lässt sich nicht in %2 angeben, weil das Gemessene keine eigene molare Masse hat; eine Masseneinheit wählen</translation>
        </message>
        <message>
            <source>there is no value to report yet; complete the readings first</source>
            <translation>es gibt noch keinen Wert zu berichten; zuerst die Ablesungen vervollständigen</translation>
        </message>
        <message>
            <source>a result in "%1" cannot be given in %2</source>
            <translation>ein Ergebnis in „%1“ lässt sich nicht in %2 angeben</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Specification</name>
        <message>
            <source>simple acceptance</source>
            <translation>einfache Annahme</translation>
        </message>
        <message>
            <source>guard band for acceptance</source>
            <translation>Schutzband für Annahme</translation>
        </message>
        <message>
            <source>guard band for rejection</source>
            <translation>Schutzband für Ablehnung</translation>
        </message>
        <message>
            <source>guard band for acceptance and rejection</source>
            <translation>Schutzband für Annahme und Ablehnung</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mindestens %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>a label threshold of %1</source>
            <translation>Kennzeichnungsschwelle %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::SpecificationSoundness</name>
        <message>
            <source>is missing; a limit of this kind needs it</source>
            <translation>fehlt; ein Grenzwert dieser Art braucht es</translation>
        </message>
        <message>
            <source>has no meaning for a limit of this kind; leave it out</source>
            <translation>hat bei einem Grenzwert dieser Art keine Bedeutung; weglassen</translation>
        </message>
        <message>
            <source>must be greater than lower: %1 is not greater than %2</source>
            <translation>muss größer als lower sein: %1 ist nicht größer als %2</translation>
        </message>
        <message>
            <source>leaves nothing inside the limits; must be less than %1, not %2</source>
            <translation>lässt innerhalb der Grenzwerte nichts übrig; muss kleiner als %1 sein, nicht %2</translation>
        </message>
        <message>
            <source>is missing; this decision rule needs a guard band</source>
            <translation>fehlt; diese Entscheidungsregel braucht ein Schutzband</translation>
        </message>
        <message>
            <source>has no meaning with simple acceptance; leave it out</source>
            <translation>hat bei einfacher Annahme keine Bedeutung; weglassen</translation>
        </message>
        <message>
            <source>has no meaning with a one-sided guard band of 95 %; leave it out</source>
            <translation>hat bei einem einseitigen Schutzband von 95 % keine Bedeutung; weglassen</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>das Produkt</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>die Messgröße</translation>
        </message>
        <message>
            <source>is blank; say where the limit stands</source>
            <translation>ist leer; angeben, wo der Grenzwert steht</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>die Quelle</translation>
        </message>
        <message>
            <source>is not a date; say when the source was read</source>
            <translation>ist kein Datum; angeben, wann die Quelle gelesen wurde</translation>
        </message>
        <message>
            <source>lists %1 limits; at most %2 are allowed</source>
            <translation>führt %1 Grenzwerte auf; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>is the same limit from the same source as entry %1; keep one of them</source>
            <translation>ist derselbe Grenzwert aus derselben Quelle wie Eintrag %1; nur einen behalten</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Working</name>
        <message>
            <source>%1 at the addition of the starter</source>
            <translation>%1 bei der Zugabe des Startreagenzes</translation>
        </message>
        <message>
            <source>%1 at the final volume</source>
            <translation>%1 beim Endvolumen</translation>
        </message>
        <message>
            <source>%1 x V(%1) / V</source>
            <translation>%1 × V(%1) / V</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>signal of %1</source>
            <translation>Signal von %1</translation>
        </message>
        <message>
            <source>mean blank</source>
            <translation>mittlerer Blindwert</translation>
        </message>
        <message>
            <source>mean of the blanks' signals</source>
            <translation>Mittelwert der Signale der Blindwerte</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>standard in %1</source>
            <translation>Standard in %1</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal</source>
            <translation>Gehalt bei Verwendung × Volumen; Nettosignal</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal at the usual volume</source>
            <translation>Gehalt bei Verwendung × Volumen; Nettosignal beim üblichen Volumen</translation>
        </message>
        <message>
            <source>line</source>
            <translation>Gerade</translation>
        </message>
        <message>
            <source>net signal = a + b x mg in the tube</source>
            <translation>Nettosignal = a + b × mg im Ansatz</translation>
        </message>
        <message>
            <source>a = %1, b = %2 per mg</source>
            <translation>a = %1, b = %2 je mg</translation>
        </message>
        <message>
            <source>response</source>
            <translation>Empfindlichkeit</translation>
        </message>
        <message>
            <source>mean of net signal / mg in the tube</source>
            <translation>Mittelwert von Nettosignal / mg im Ansatz</translation>
        </message>
        <message>
            <source>%1 per mg</source>
            <translation>%1 je mg</translation>
        </message>
        <message>
            <source>signal - mean blank</source>
            <translation>Signal − mittlerer Blindwert</translation>
        </message>
        <message>
            <source>signal - mean blank - sample blank</source>
            <translation>Signal − mittlerer Blindwert − Probenblindwert</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>Nettosignal dA</translation>
        </message>
        <message>
            <source>net signal dA at the usual volume</source>
            <translation>Nettosignal dA beim üblichen Volumen</translation>
        </message>
        <message>
            <source>net signal x volume of the tube / usual volume</source>
            <translation>Nettosignal × Volumen des Ansatzes / übliches Volumen</translation>
        </message>
        <message>
            <source>concentration c in the sample as pipetted</source>
            <translation>Konzentration c in der Probe wie pipettiert</translation>
        </message>
        <message>
            <source>dA x V x M / (e x d x v x n)</source>
            <translation>dA × V × M / (e × d × v × n)</translation>
        </message>
        <message>
            <source>dA / response / v</source>
            <translation>dA / Empfindlichkeit / v</translation>
        </message>
        <message>
            <source>(dA - a) / b / v</source>
            <translation>(dA − a) / b / v</translation>
        </message>
        <message>
            <source>Sample %1, %2</source>
            <translation>Probe %1, %2</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>sample blank, %1</source>
            <translation>Probenblindwert, %1</translation>
        </message>
        <message>
            <source>in the sample as received</source>
            <translation>in der Probe wie erhalten</translation>
        </message>
        <message>
            <source>c x F</source>
            <translation>c × F</translation>
        </message>
        <message>
            <source>content</source>
            <translation>Gehalt</translation>
        </message>
        <message>
            <source>c x F x extract (L) / mass (g) x 100</source>
            <translation>c × F × Extrakt (L) / Masse (g) × 100</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>mean, N = %1</source>
            <translation>Mittelwert, N = %1</translation>
        </message>
        <message>
            <source>sum / N</source>
            <translation>Summe / N</translation>
        </message>
        <message>
            <source>spread</source>
            <translation>Spannweite</translation>
        </message>
        <message>
            <source>largest - smallest</source>
            <translation>größter − kleinster</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>Standardunsicherheit</translation>
        </message>
        <message>
            <source>expanded uncertainty U</source>
            <translation>erweiterte Unsicherheit U</translation>
        </message>
        <message>
            <source>k x root of the sum of squares</source>
            <translation>k × Wurzel der Summe der Quadrate</translation>
        </message>
        <message>
            <source>Symbols</source>
            <translation>Symbole</translation>
        </message>
        <message>
            <source>no unit</source>
            <translation>ohne Einheit</translation>
        </message>
        <message>
            <source>net signal, a difference of absorbances</source>
            <translation>Nettosignal, eine Differenz von Extinktionen</translation>
        </message>
        <message>
            <source>sample volume in the tube</source>
            <translation>Probenvolumen im Ansatz</translation>
        </message>
        <message>
            <source>volume of the tube at the later reading</source>
            <translation>Volumen des Ansatzes bei der späteren Ablesung</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>molare Masse</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>molarer Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>chromophore molecules formed or used per molecule</source>
            <translation>gebildete oder verbrauchte Chromophormoleküle je Molekül</translation>
        </message>
        <message>
            <source>dilution factor, made up to / taken</source>
            <translation>Verdünnungsfaktor, aufgefüllt auf / entnommen</translation>
        </message>
        <message>
            <source>number of tubes in the mean</source>
            <translation>Anzahl der Ansätze im Mittelwert</translation>
        </message>
        <message>
            <source>coverage factor</source>
            <translation>Erweiterungsfaktor</translation>
        </message>
        <message>
            <source>to be reported</source>
            <translation>zu berichten</translation>
        </message>
        <message>
            <source>less than</source>
            <translation>kleiner als</translation>
        </message>
        <message>
            <source>more than: a reagent was used up</source>
            <translation>größer als: ein Reagenz wurde aufgebraucht</translation>
        </message>
        <message>
            <source>volume of %1 in %2</source>
            <translation>Volumen von %1 in %2</translation>
        </message>
        <message>
            <source>as pipetted, planned %1</source>
            <translation>wie pipettiert, geplant %1</translation>
        </message>
        <message>
            <source>Results it comes from</source>
            <translation>Ergebnisse, aus denen es stammt</translation>
        </message>
        <message>
            <source>method %1, version %2</source>
            <translation>Methode %1, Version %2</translation>
        </message>
        <message>
            <source>%1 at %2 min</source>
            <translation>%1 bei %2 min</translation>
        </message>
        <message>
            <source>%1 as read</source>
            <translation>%1 wie abgelesen</translation>
        </message>
        <message>
            <source>the last %1 readings, t in min after the starter</source>
            <translation>die letzten %1 Ablesungen, t in min nach dem Startreagenz</translation>
        </message>
        <message>
            <source>slope b of %1</source>
            <translation>Steigung b von %1</translation>
        </message>
        <message>
            <source>straight line by least squares: sum of (t - mean t) (A - mean A) / sum of (t - mean t)²</source>
            <translation>Gerade nach kleinsten Quadraten: Summe von (t − Mittel t) (A − Mittel A) / Summe von (t − Mittel t)²</translation>
        </message>
        <message>
            <source>per min</source>
            <translation>je min</translation>
        </message>
        <message>
            <source>the line at 0 min: mean A - b x mean t</source>
            <translation>die Gerade bei 0 min: Mittel A − b × Mittel t</translation>
        </message>
        <message>
            <source>coverage factor k</source>
            <translation>Erweiterungsfaktor k</translation>
        </message>
        <message>
            <source>2, for 30 or more effective degrees of freedom</source>
            <translation>2, bei 30 oder mehr effektiven Freiheitsgraden</translation>
        </message>
        <message>
            <source>t at 95.45 % for %1 effective degrees of freedom</source>
            <translation>t bei 95,45 % für %1 effektive Freiheitsgrade</translation>
        </message>
        <message>
            <source>t(95.45 %, ν)</source>
            <translation>t(95,45 %; ν)</translation>
        </message>
        <message>
            <source>effective degrees of freedom (Welch-Satterthwaite)</source>
            <translation>effektive Freiheitsgrade (Welch-Satterthwaite)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::BackgroundReader</name>
        <message>
            <source>expected the id of a method; leave it out to mean this one</source>
            <translation>Kennung einer Methode erwartet; für diese Methode weglassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::CellLines</name>
        <message>
            <source>The line has more than %1 columns.</source>
            <translation>Die Zeile hat mehr als %1 Spalten.</translation>
        </message>
        <message>
            <source>A quotation mark has no partner in the line.</source>
            <translation>Ein Anführungszeichen in der Zeile hat kein Gegenstück.</translation>
        </message>
        <message>
            <source>The cell is longer than %1 characters.</source>
            <translation>Die Zelle ist länger als %1 Zeichen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Decimal</name>
        <message>
            <source>Enter a number, as 0.512 or 0,512.</source>
            <translation>Eine Zahl eingeben, etwa 0.512 oder 0,512.</translation>
        </message>
        <message>
            <source>There is more than one decimal mark; a number has one, as 0.512 or 0,512.</source>
            <translation>Es gibt mehr als ein Dezimalzeichen; eine Zahl hat eines, etwa 0.512 oder 0,512.</translation>
        </message>
        <message>
            <source>Write the number without thousands marks or blanks, as 1500.2 or 1500,2.</source>
            <translation>Die Zahl ohne Tausendertrennzeichen und Leerzeichen schreiben, etwa 1500.2 oder 1500,2.</translation>
        </message>
        <message>
            <source>Only digits, one decimal mark and a sign make a number; no letters, no exponent.</source>
            <translation>Nur Ziffern, ein Dezimalzeichen und ein Vorzeichen bilden eine Zahl; keine Buchstaben, kein Exponent.</translation>
        </message>
        <message>
            <source>Write the number with the digits 0 to 9.</source>
            <translation>Die Zahl mit den Ziffern 0 bis 9 schreiben.</translation>
        </message>
        <message>
            <source>There is no digit in it; enter a number, as 0.512 or 0,512.</source>
            <translation>Es enthält keine Ziffer; eine Zahl eingeben, etwa 0.512 oder 0,512.</translation>
        </message>
        <message>
            <source>That is more than %1 digits; enter one reading at a time.</source>
            <translation>Das sind mehr als %1 Ziffern; eine Ablesung nach der anderen eingeben.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationComparison</name>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>a list of %1</source>
            <translation>eine Liste von %1</translation>
        </message>
        <message>
            <source>an object of %1 fields</source>
            <translation>ein Objekt mit %1 Feldern</translation>
        </message>
        <message>
            <source>an evaluation</source>
            <translation>eine Auswertung</translation>
        </message>
        <message>
            <source>no evaluation that can be read</source>
            <translation>keine lesbare Auswertung</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationReader</name>
        <message>
            <source>is missing</source>
            <translation>fehlt</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Fields</name>
        <message>
            <source>expected %1, found %2</source>
            <translation>%1 erwartet, %2 gefunden</translation>
        </message>
        <message>
            <source>null</source>
            <translation>null</translation>
        </message>
        <message>
            <source>true or false</source>
            <translation>wahr oder falsch</translation>
        </message>
        <message>
            <source>a number</source>
            <translation>eine Zahl</translation>
        </message>
        <message>
            <source>text</source>
            <translation>Text</translation>
        </message>
        <message>
            <source>a list</source>
            <translation>eine Liste</translation>
        </message>
        <message>
            <source>an object</source>
            <translation>ein Objekt</translation>
        </message>
        <message>
            <source>expected a whole number, found %1</source>
            <translation>ganze Zahl erwartet, %1 gefunden</translation>
        </message>
        <message>
            <source>expected a list of two numbers, from and to</source>
            <translation>Liste aus zwei Zahlen erwartet, von und bis</translation>
        </message>
        <message>
            <source>expected a time with its offset, as 2026-03-02T09:10:00+01:00 or ending in Z, found %1</source>
            <translation>Zeit mit ihrem UTC-Versatz erwartet, etwa 2026-03-02T09:10:00+01:00 oder auf Z endend, %1 gefunden</translation>
        </message>
        <message>
            <source>expected a date, as 2026-03-02, found %1</source>
            <translation>Datum erwartet, etwa 2026-03-02, %1 gefunden</translation>
        </message>
        <message>
            <source>expected one of %1, found %2</source>
            <translation>eines von %1 erwartet, %2 gefunden</translation>
        </message>
        <message>
            <source>the field %1 is not known here; leave it out</source>
            <translation>das Feld %1 ist hier nicht bekannt; weglassen</translation>
        </message>
        <message>
            <source>the field %1 is not known here; did you mean %2?</source>
            <translation>das Feld %1 ist hier nicht bekannt; ist %2 gemeint?</translation>
        </message>
        <message>
            <source>is missing, and it is needed</source>
            <translation>fehlt und ist nötig</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::FileReader</name>
        <message>
            <source>there is no such file</source>
            <translation>die Datei ist nicht vorhanden</translation>
        </message>
        <message>
            <source>the file may not be read; check its permissions</source>
            <translation>die Datei darf nicht gelesen werden; ihre Zugriffsrechte prüfen</translation>
        </message>
        <message>
            <source>the file cannot be read: %1</source>
            <translation>die Datei ist nicht lesbar: %1</translation>
        </message>
        <message>
            <source>this is a directory; name a file in it</source>
            <translation>das ist ein Verzeichnis; eine Datei darin nennen</translation>
        </message>
        <message>
            <source>this is a pipe, a socket or a device; name a regular file</source>
            <translation>das ist eine Pipe, ein Socket oder ein Gerät; eine gewöhnliche Datei nennen</translation>
        </message>
        <message>
            <source>the file is larger than %1 MiB, the most that is read</source>
            <translation>die Datei ist größer als %1 MiB, mehr wird nicht gelesen</translation>
        </message>
        <message>
            <source>the file cannot be read; name a regular file</source>
            <translation>die Datei ist nicht lesbar; eine gewöhnliche Datei nennen</translation>
        </message>
        <message>
            <source>this names no file</source>
            <translation>das nennt keine Datei</translation>
        </message>
        <message>
            <source>warning: </source>
            <translation>Warnung: </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Findings</name>
        <message>
            <source>there is more wrong than the %1 problems listed</source>
            <translation>es ist mehr falsch als die %1 aufgeführten Probleme</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Json</name>
        <message>
            <source>the field %1 stands here twice; keep one</source>
            <translation>das Feld %1 steht hier zweimal; nur eines behalten</translation>
        </message>
        <message>
            <source>%1: the number is too large to be used</source>
            <translation>%1: die Zahl ist zu groß, um verwendet zu werden</translation>
        </message>
        <message>
            <source>%1: NaN and Infinity are not numbers; leave the field out</source>
            <translation>%1: NaN und Infinity sind keine Zahlen; das Feld weglassen</translation>
        </message>
        <message>
            <source>%1: not valid JSON: %2</source>
            <translation>%1: kein gültiges JSON: %2</translation>
        </message>
        <message>
            <source>the document holds more than %1 values</source>
            <translation>das Dokument enthält mehr als %1 Werte</translation>
        </message>
        <message>
            <source>nested more than %1 levels deep</source>
            <translation>mehr als %1 Ebenen tief verschachtelt</translation>
        </message>
        <message>
            <source>%1: not UTF-8; save the file as UTF-8</source>
            <translation>%1: kein UTF-8; die Datei als UTF-8 speichern</translation>
        </message>
        <message>
            <source>the document is empty</source>
            <translation>das Dokument ist leer</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::KeyedMoment</name>
        <message>
            <source>There is no such time: write hours up to 23 and minutes up to 59, of a day that exists.</source>
            <translation>Diese Zeit gibt es nicht: Stunden bis 23 und Minuten bis 59 schreiben, an einem Tag, den es gibt.</translation>
        </message>
        <message>
            <source>That time is still to come; give the time when it was done.</source>
            <translation>Diese Zeit liegt noch in der Zukunft; den Zeitpunkt angeben, zu dem es getan wurde.</translation>
        </message>
        <message>
            <source>Enter a time, as 8:10, or with its day, as %1 8:10.</source>
            <translation>Eine Zeit eingeben, z. B. 8:10, oder mit Tag, z. B. %1 8:10.</translation>
        </message>
        <message>
            <source>That is not a time: write it as 8:10, or with its day, as %1 8:10.</source>
            <translation>Das ist keine Zeit: schreiben wie 8:10, oder mit Tag wie %1 8:10.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::LaboratoryReader</name>
        <message>
            <source>is blank; give the laboratory's name, or leave the field out</source>
            <translation>ist leer; den Namen des Labors angeben oder das Feld weglassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MeasuringParts</name>
        <message>
            <source>is blank; say which record the numbers come from, or leave the field out</source>
            <translation>ist leer; angeben, aus welcher Aufzeichnung die Zahlen stammen, oder das Feld weglassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodComparison</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source> in </source>
            <translation> in </translation>
        </message>
        <message>
            <source>Absorptivity at %1 nm</source>
            <translation>Extinktionskoeffizient bei %1 nm</translation>
        </message>
        <message>
            <source>Order of: %1</source>
            <translation>Reihenfolge: %1</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <translation>%1 und %2</translation>
        </message>
        <message>
            <source>Format</source>
            <translation>Format</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Prinzip</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophor</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>Direction</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>Volume correction</source>
            <translation>Volumenkorrektur</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Komponenten</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Allowed volumes</source>
            <translation>Zulässige Volumina</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspension</translation>
        </message>
        <message>
            <source>Component that is the sample</source>
            <translation>Komponente, die die Probe ist</translation>
        </message>
        <message>
            <source>Component that is the diluent</source>
            <translation>Komponente, die das Verdünnungsmittel ist</translation>
        </message>
        <message>
            <source>Component that is the starter</source>
            <translation>Komponente, die das Startreagenz ist</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Measurands</source>
            <translation>Messgrößen</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Molare Masse</translation>
        </message>
        <message>
            <source>Chromophore molecules per molecule</source>
            <translation>Chromophormoleküle je Molekül</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>Base reading</source>
            <translation>Grundablesung</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Mittlere Ablesung</translation>
        </message>
        <message>
            <source>Final reading</source>
            <translation>Endablesung</translation>
        </message>
        <message>
            <source>Typical range</source>
            <translation>Typischer Bereich</translation>
        </message>
        <message>
            <source>Measuring window</source>
            <translation>Messfenster</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Kleinstes Nettosignal</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Größtes Nettosignal</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Größte Extinktion</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Extinktion, die verbleiben muss</translation>
        </message>
        <message>
            <source>Acceptance</source>
            <translation>Annahme</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Größtes Blindwertsignal</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Wiederfindung eines Standards</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Wiederfindung einer Aufstockung</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Wiederholpräzision</translation>
        </message>
        <message>
            <source>Repeatability, constant part</source>
            <translation>Wiederholpräzision, konstanter Anteil</translation>
        </message>
        <message>
            <source>Repeatability, proportional part</source>
            <translation>Wiederholpräzision, proportionaler Anteil</translation>
        </message>
        <message>
            <source>Extrapolation</source>
            <translation>Extrapolation</translation>
        </message>
        <message>
            <source>Reading that is extrapolated</source>
            <translation>Extrapolierte Ablesung</translation>
        </message>
        <message>
            <source>Readings the line goes through</source>
            <translation>Ablesungen, durch die die Gerade geht</translation>
        </message>
        <message>
            <source>Derived results</source>
            <translation>Abgeleitete Ergebnisse</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Teile</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Faktor</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Üblicher Standard</translation>
        </message>
        <message>
            <source>Concentration of the usual standard</source>
            <translation>Konzentration des üblichen Standards</translation>
        </message>
        <message>
            <source>Loss of the usual standard per hour</source>
            <translation>Verlust des üblichen Standards pro Stunde</translation>
        </message>
        <message>
            <source>Usual tubes</source>
            <translation>Übliche Ansätze</translation>
        </message>
        <message>
            <source>Blanks of a rack</source>
            <translation>Blindwerte eines Racks</translation>
        </message>
        <message>
            <source>Tubes of each sample</source>
            <translation>Ansätze je Probe</translation>
        </message>
        <message>
            <source>Tubes of standards of a rack</source>
            <translation>Ansätze mit Standards eines Racks</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Reaktionen</translation>
        </message>
        <message>
            <source>Interferences</source>
            <translation>Störungen</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Vorbereitung der Proben</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrix</translation>
        </message>
        <message>
            <source>Preparation</source>
            <translation>Vorbereitung</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Warnhinweise</translation>
        </message>
        <message>
            <source>add</source>
            <translation>zugeben</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mischen</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>warten</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>read</source>
            <translation>ablesen</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>Derived result</source>
            <translation>Abgeleitetes Ergebnis</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Reaction</source>
            <translation>Reaktion</translation>
        </message>
        <message>
            <source>Interference</source>
            <translation>Störung</translation>
        </message>
        <message>
            <source>Preparation of</source>
            <translation>Vorbereitung von</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Warnhinweis</translation>
        </message>
        <message>
            <source>to the final volume</source>
            <translation>auf das Endvolumen</translation>
        </message>
        <message>
            <source>coupled indicator</source>
            <translation>gekoppelter Indikator</translation>
        </message>
        <message>
            <source>protein-rich</source>
            <translation>proteinreich</translation>
        </message>
        <message>
            <source>%1 samples</source>
            <translation>Proben, %1</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source> to </source>
            <translation> bis </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodLibrary</name>
        <message>
            <source>version %1 of %2 is installed already; give a changed method a new version</source>
            <translation>Version %1 von %2 ist bereits installiert; einer geänderten Methode eine neue Version geben</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodReader</name>
        <message>
            <source>expected an object of wavelengths in nm, as {"340": 6300}</source>
            <translation>Objekt mit Wellenlängen in nm erwartet, etwa {"340": 6300}</translation>
        </message>
        <message>
            <source>expected a wavelength in whole nm as the field's name, as "340", found %1</source>
            <translation>Wellenlänge in ganzen nm als Name des Feldes erwartet, etwa "340", %1 gefunden</translation>
        </message>
        <message>
            <source>expected the format %1, found %2; this file is of another kind or for another version of the program</source>
            <translation>Format %1 erwartet, %2 gefunden; diese Datei ist von anderer Art oder für eine andere Version des Programms</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::NumberWords</name>
        <message>
            <source>It has an exponent; set the photometer to plain decimals.</source>
            <translation>Es hat einen Exponenten; das Photometer auf einfache Dezimalzahlen einstellen.</translation>
        </message>
        <message>
            <source>A minus stands apart from it, so that its sign is not certain.</source>
            <translation>Ein Minuszeichen steht davon getrennt, das Vorzeichen ist also nicht sicher.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingColumn</name>
        <message>
            <source>Heading</source>
            <translation>Überschrift</translation>
        </message>
        <message>
            <source>Left out: empty</source>
            <translation>Weggelassen: leer</translation>
        </message>
        <message>
            <source>The line is empty; fill it in or leave out empty lines.</source>
            <translation>Die Zeile ist leer; ausfüllen oder leere Zeilen weglassen.</translation>
        </message>
        <message>
            <source>line %1, column %2: %3</source>
            <translation>Zeile %1, Spalte %2: %3</translation>
        </message>
        <message>
            <source>line %1: %2</source>
            <translation>Zeile %1: %2</translation>
        </message>
        <message>
            <source>The line ends with column %1.</source>
            <translation>Die Zeile endet mit Spalte %1.</translation>
        </message>
        <message>
            <source>The cell is empty.</source>
            <translation>Die Zelle ist leer.</translation>
        </message>
        <message>
            <source>The column of the absorbance must be from 1 to %1.</source>
            <translation>Die Spalte der Extinktion ist eine von 1 bis %1.</translation>
        </message>
        <message>
            <source>The column of the tube must be from 1 to %1, or none.</source>
            <translation>Die Spalte des Ansatzes ist eine von 1 bis %1 oder keine.</translation>
        </message>
        <message>
            <source>Tube and absorbance cannot be in the same column.</source>
            <translation>Ansatz und Extinktion können nicht in derselben Spalte stehen.</translation>
        </message>
        <message>
            <source>A heading has 0 to %1 lines.</source>
            <translation>Eine Überschrift hat 0 bis %1 Zeilen.</translation>
        </message>
        <message>
            <source>Where commas separate the columns, the decimal sign has to be the point.</source>
            <translation>Wo Kommas die Spalten trennen, muss das Dezimalzeichen der Punkt sein.</translation>
        </message>
        <message>
            <source>The text is longer than %1 million characters, the most that is read.</source>
            <translation>Der Text ist länger als %1 Millionen Zeichen, mehr wird nicht gelesen.</translation>
        </message>
        <message>
            <source>There is nothing in the text.</source>
            <translation>Im Text steht nichts.</translation>
        </message>
        <message>
            <source>The text has %1 lines; at most %2 readings are taken at a time.</source>
            <translation>Der Text hat %1 Zeilen; höchstens %2 Ablesungen werden auf einmal übernommen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingLines</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>There is no number after %1.</source>
            <translation>Hinter %1 steht keine Zahl.</translation>
        </message>
        <message>
            <source>There is no number in the line.</source>
            <translation>In der Zeile steht keine Zahl.</translation>
        </message>
        <message>
            <source>Numbers in the line: %1; number %2 is needed.</source>
            <translation>Zahlen in der Zeile: %1; gesucht ist Zahl %2.</translation>
        </message>
        <message>
            <source>The line has %1 numbers; say which of them is the absorbance.</source>
            <translation>Die Zeile hat %1 Zahlen; angeben, welche davon die Extinktion ist.</translation>
        </message>
        <message>
            <source>Passed over: it has %1.</source>
            <translation>Übergangen: enthält %1.</translation>
        </message>
        <message>
            <source>Passed over: it has no %1.</source>
            <translation>Übergangen: enthält kein %1.</translation>
        </message>
        <message>
            <source>There is no %1 in the line.</source>
            <translation>In der Zeile steht kein %1.</translation>
        </message>
        <message>
            <source>%1 is in the line more than once; use a longer text.</source>
            <translation>%1 steht mehr als einmal in der Zeile; einen längeren Text nehmen.</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>The number that counts must be from 1 to %1.</source>
            <translation>Die zählende Zahl ist eine von 1 bis %1.</translation>
        </message>
        <message>
            <source>Type the text that stands before the absorbance, as ABS.</source>
            <translation>Den Text eingeben, der vor der Extinktion steht, etwa ABS.</translation>
        </message>
        <message>
            <source>Text before the absorbance</source>
            <translation>Text vor der Extinktion</translation>
        </message>
        <message>
            <source>Text that a line must have</source>
            <translation>Text, den eine Zeile haben muss</translation>
        </message>
        <message>
            <source>Text of lines to leave out</source>
            <translation>Text wegzulassender Zeilen</translation>
        </message>
        <message>
            <source>There is no line end within %1 bytes; check speed and format of the connection.</source>
            <translation>Innerhalb von %1 Bytes kommt kein Zeilenende; Geschwindigkeit und Format der Verbindung prüfen.</translation>
        </message>
        <message>
            <source>The line is empty.</source>
            <translation>Die Zeile ist leer.</translation>
        </message>
        <message>
            <source>The line contains characters that are not text; check speed, format and encoding of the connection.</source>
            <translation>Die Zeile enthält Zeichen, die kein Text sind; Geschwindigkeit, Format und Kodierung der Verbindung prüfen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingText</name>
        <message>
            <source>The text has a NUL in %1; it is not a text file of readings.</source>
            <translation>Der Text hat ein NUL in %1; es ist keine Textdatei mit Ablesungen.</translation>
        </message>
        <message>
            <source>The text says it is UTF-16, but is broken; save it as UTF-8.</source>
            <translation>Der Text gibt sich als UTF-16 aus, ist aber fehlerhaft; als UTF-8 speichern.</translation>
        </message>
        <message>
            <source>The text is not UTF-8 in %1; choose the other encoding if it is Latin-1.</source>
            <translation>Der Text ist in %1 kein UTF-8; die andere Kodierung wählen, falls es Latin-1 ist.</translation>
        </message>
        <message>
            <source>It is written with a comma, but the decimal sign is set to the point.</source>
            <translation>Sie ist mit Komma geschrieben, als Dezimalzeichen ist aber der Punkt eingestellt.</translation>
        </message>
        <message>
            <source>It is written with a point, but the decimal sign is set to the comma.</source>
            <translation>Sie ist mit Punkt geschrieben, als Dezimalzeichen ist aber das Komma eingestellt.</translation>
        </message>
        <message>
            <source>It is a limit and not a reading; dilute and read again, or key what the display shows.</source>
            <translation>Das ist eine Grenze und keine Ablesung; verdünnen und neu ablesen oder eingeben, was die Anzeige zeigt.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RecipeReader</name>
        <message>
            <source>a step has exactly one of "add", "mix", "wait_min" and "read"</source>
            <translation>ein Schritt hat genau eines von "add", "mix", "wait_min" und "read"</translation>
        </message>
        <message>
            <source>a temperature goes with "wait_min" only</source>
            <translation>eine Temperatur gehört nur zu "wait_min"</translation>
        </message>
        <message>
            <source>must be true; leave the step out where nothing is mixed</source>
            <translation>muss true sein; den Schritt weglassen, wo nichts gemischt wird</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReportingParts</name>
        <message>
            <source>is not base64 text; take it from a file the program wrote</source>
            <translation>ist kein base64-Text; aus einer vom Programm geschriebenen Datei nehmen</translation>
        </message>
        <message>
            <source>is blank; fill it in, or leave the field out</source>
            <translation>ist leer; ausfüllen oder das Feld weglassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RunReader</name>
        <message>
            <source>is blank; give the id, or leave the field out</source>
            <translation>ist leer; die Kennung angeben oder das Feld weglassen</translation>
        </message>
        <message>
            <source>expected a number or a list of timed readings, found %1; leave a reading out that is not taken yet</source>
            <translation>Zahl oder Liste zeitlich festgehaltener Ablesungen erwartet, %1 gefunden; eine noch nicht vorgenommene Ablesung weglassen</translation>
        </message>
        <message>
            <source>expected an object of readings, as {"A1": 0.102}, found %1</source>
            <translation>Objekt mit Ablesungen erwartet, etwa {"A1": 0.102}, %1 gefunden</translation>
        </message>
        <message>
            <source>expected an object of volumes in mL by component, as {"nadh": 0.1}; leave it out where the tube was pipetted as planned</source>
            <translation>Objekt mit Volumina in mL je Komponente erwartet, etwa {"nadh": 0.1}; weglassen, wo der Ansatz wie geplant pipettiert wurde</translation>
        </message>
        <message>
            <source>expected an object of minutes by component, as {"starter": 12.5}; leave it out where nobody marked the time</source>
            <translation>Objekt mit Minuten je Komponente erwartet, etwa {"starter": 12.5}; weglassen, wo niemand die Zeit vermerkt hat</translation>
        </message>
        <message>
            <source>expected an object of minutes by reading, as {"A1": 5}; leave it out where nobody marked the time</source>
            <translation>Objekt mit Minuten je Ablesung erwartet, etwa {"A1": 5}; weglassen, wo niemand die Zeit vermerkt hat</translation>
        </message>
        <message>
            <source>is blank; say what spoilt the tube, or leave the field out</source>
            <translation>ist leer; angeben, was den Ansatz unbrauchbar machte, oder das Feld weglassen</translation>
        </message>
        <message>
            <source>expected the id of an installed method or a whole method, found %1</source>
            <translation>Kennung einer installierten Methode oder eine ganze Methode erwartet, %1 gefunden</translation>
        </message>
        <message>
            <source>no method %1 is installed; correct the id, or put the whole method here</source>
            <translation>keine Methode %1 ist installiert; die Kennung berichtigen oder die ganze Methode hier einsetzen</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ShippedMethods</name>
        <message>
            <source>The supplier's instructions, the local safety rules and licensed practice come first.</source>
            <translation>Vorrang haben die Anweisungen des Lieferanten, die örtlichen Sicherheitsvorschriften und die berufsrechtlichen Vorschriften.</translation>
        </message>
        <message>
            <source>Volatile: keep samples, dilutions and cuvettes closed and cool, pipette below the surface, and take every tube to its reading without delay.</source>
            <translation>Flüchtig: Proben, Verdünnungen und Küvetten verschlossen und kühl halten, unter der Oberfläche pipettieren und jeden Ansatz ohne Verzug ablesen.</translation>
        </message>
        <message>
            <source>Acetaldehyde boils at about 20 °C, burns easily and may cause cancer: open the cold bottle under a hood, away from flames.</source>
            <translation>Acetaldehyd siedet bei etwa 20 °C, ist leicht entzündlich und kann Krebs verursachen: die kalte Flasche unter dem Abzug öffnen, fern von Flammen.</translation>
        </message>
        <message>
            <source>Perchloric acid burns skin and eyes and is a strong oxidiser that can set organic matter alight: wear goggles and gloves, rinse spills with much water, and never let it dry in.</source>
            <translation>Perchlorsäure verätzt Haut und Augen und ist ein starkes Oxidationsmittel, das organisches Material in Brand setzen kann: Schutzbrille und Handschuhe tragen, Verschüttetes mit viel Wasser abspülen und nie eintrocknen lassen.</translation>
        </message>
        <message>
            <source>Sodium and potassium hydroxide solutions burn skin and eyes: wear goggles and gloves.</source>
            <translation>Natron- und Kalilauge verätzen Haut und Augen: Schutzbrille und Handschuhe tragen.</translation>
        </message>
        <message>
            <source>Enzyme solutions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Enzymlösungen können mit Natriumazid konserviert sein: giftig beim Verschlucken oder bei Hautkontakt, setzt mit Säuren ein sehr giftiges Gas frei und bildet in Abflussrohren aus Kupfer oder Blei explosive Salze. Handschuhe tragen und den Abfall nach den örtlichen Vorschriften sammeln.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 400 nm it gives off ultraviolet radiation.</source>
            <translation>Nicht in die Lampe eines offenen Photometers sehen: Unter 400 nm gibt sie ultraviolette Strahlung ab.</translation>
        </message>
        <message>
            <source>Keep the bench free of acetic acid and its vapour: the blank shows it.</source>
            <translation>Den Arbeitsplatz frei von Essigsäure und deren Dampf halten: Der Blindwert zeigt sie.</translation>
        </message>
        <message>
            <source>A closed flask that is warmed builds up pressure: leave a third of it empty, hold the stopper down with a cloth, and open it cold.</source>
            <translation>In einem geschlossenen Kolben entsteht beim Erwärmen Druck: ein Drittel leer lassen, den Stopfen mit einem Tuch niederhalten und erst kalt öffnen.</translation>
        </message>
        <message>
            <source>Enzyme suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Enzymsuspensionen können mit Natriumazid konserviert sein: giftig beim Verschlucken oder bei Hautkontakt, setzt mit Säuren ein sehr giftiges Gas frei und bildet in Abflussrohren aus Kupfer oder Blei explosive Salze. Handschuhe tragen und den Abfall nach den örtlichen Vorschriften sammeln.</translation>
        </message>
        <message>
            <source>Swirl enzyme suspensions before every series; don't shake them to a foam.</source>
            <translation>Enzymsuspensionen vor jedem Durchgang umschwenken; nicht zu Schaum schütteln.</translation>
        </message>
        <message>
            <source>Potassium hexacyanoferrate(II) must not meet strong acid: hydrogen cyanide may form. Keep this clarification and acid deproteinisation apart, in the flask and in the waste.</source>
            <translation>Kaliumhexacyanidoferrat(II) darf nicht mit starker Säure zusammenkommen: Cyanwasserstoff kann entstehen. Diese Klärung und die Enteiweißung mit Säure getrennt halten, im Kolben und im Abfall.</translation>
        </message>
        <message>
            <source>Keep ammonia and ammonium salts away from the bench while you pipette.</source>
            <translation>Ammoniak und Ammoniumsalze während des Pipettierens vom Arbeitsplatz fernhalten.</translation>
        </message>
        <message>
            <source>Treat red wine with about 0.2 g of PVPP for 10 mL and filter it first (Regulation (EEC) No 2676/90, Annex).</source>
            <translation>Rotwein zuerst mit etwa 0,2 g PVPP auf 10 mL behandeln und filtrieren (Verordnung (EWG) Nr. 2676/90, Anhang).</translation>
        </message>
        <message>
            <source>The buffer of pH 10 irritates skin and eyes: wear goggles and gloves.</source>
            <translation>Der Puffer mit pH 10 reizt Haut und Augen: Schutzbrille und Handschuhe tragen.</translation>
        </message>
        <message>
            <source>Enzyme solutions and suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Enzymlösungen und -suspensionen können mit Natriumazid konserviert sein: giftig beim Verschlucken oder bei Hautkontakt, setzt mit Säuren ein sehr giftiges Gas frei und bildet in Abflussrohren aus Kupfer oder Blei explosive Salze. Handschuhe tragen und den Abfall nach den örtlichen Vorschriften sammeln.</translation>
        </message>
        <message>
            <source>Read at 2 min and again at 4 min before the enzyme: a drift of more than 0.002 asks for a wait, not for the enzyme. Keep the tubes in the dark after it, read at 45 and at 60 min, and enter the larger value (French order of 7 October 1987, annex X).</source>
            <translation>Vor dem Enzym nach 2 min und erneut nach 4 min ablesen: Eine Drift von mehr als 0,002 verlangt Warten, nicht das Enzym. Danach die Ansätze im Dunkeln halten, nach 45 und nach 60 min ablesen und den größeren Wert eingeben (französische Verordnung vom 7. Oktober 1987, Anhang X).</translation>
        </message>
        <message>
            <source>INT is a tetrazolium salt that stains and may irritate: wear gloves.</source>
            <translation>INT ist ein Tetrazoliumsalz, das färbt und reizen kann: Handschuhe tragen.</translation>
        </message>
        <message>
            <source>Ethanol burns easily: keep it from flames.</source>
            <translation>Ethanol ist leicht entzündlich: von Flammen fernhalten.</translation>
        </message>
        <message>
            <source>Acidified sulphite gives off sulphur dioxide, which irritates the airways and can bring on an attack of asthma: work under a hood, and never acidify a sample.</source>
            <translation>Angesäuertes Sulfit gibt Schwefeldioxid ab, das die Atemwege reizt und einen Asthmaanfall auslösen kann: unter dem Abzug arbeiten und nie eine Probe ansäuern.</translation>
        </message>
        <message>
            <source>A sulphite standard loses strength by the hour: make it fresh and note the time. The loss of 2 % an hour that a run of this method begins with is common practice, no source; find your own.</source>
            <translation>Ein Sulfitstandard verliert stündlich an Gehalt: frisch herstellen und die Zeit notieren. Der Verlust von 2 % pro Stunde, mit dem ein Lauf nach dieser Methode beginnt, ist gängige Praxis, ohne Quelle; den eigenen ermitteln.</translation>
        </message>
        <message>
            <source>If the reaction has not ended after 15 min, read every 5 min until the rise is steady and enter all readings: the result is extrapolated to the addition (same Regulation).</source>
            <translation>Ist die Reaktion nach 15 min nicht beendet, alle 5 min ablesen, bis der Anstieg gleichmäßig ist, und alle Ablesungen eingeben: Das Ergebnis wird auf die Zugabe extrapoliert (dieselbe Verordnung).</translation>
        </message>
        <message>
            <source>Metaphosphoric acid burns skin and eyes: wear goggles and gloves.</source>
            <translation>Metaphosphorsäure verätzt Haut und Augen: Schutzbrille und Handschuhe tragen.</translation>
        </message>
        <message>
            <source>The buffer has to neutralise the acid that comes with the sample: check that the tube stays near pH 6.</source>
            <translation>Der Puffer muss die Säure neutralisieren, die mit der Probe kommt: prüfen, dass der Ansatz nahe pH 6 bleibt.</translation>
        </message>
        <message>
            <source>A standard of L-ascorbic acid loses strength by the hour, in water far faster than in metaphosphoric acid: make it fresh and note the time.</source>
            <translation>Ein Standard aus L-Ascorbinsäure verliert stündlich an Gehalt, in Wasser weit schneller als in Metaphosphorsäure: frisch herstellen und die Zeit notieren.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 300 nm its ultraviolet radiation burns eyes and skin within minutes.</source>
            <translation>Nicht in die Lampe eines offenen Photometers sehen: Unter 300 nm verbrennt ihre ultraviolette Strahlung Augen und Haut binnen Minuten.</translation>
        </message>
        <message>
            <source>Keep the tubes in the dark after the enzyme.</source>
            <translation>Die Ansätze nach Zugabe des Enzyms im Dunkeln halten.</translation>
        </message>
        <message>
            <source>Hydrogen peroxide and alkali burn skin and eyes: wear goggles and gloves.</source>
            <translation>Wasserstoffperoxid und Lauge verätzen Haut und Augen: Schutzbrille und Handschuhe tragen.</translation>
        </message>
        <message>
            <source>Acetaldehyde (template)</source>
            <translation>Acetaldehyd (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase oxidises acetaldehyde to acetate; the reaction runs to its end in the alkaline buffer, which also frees acetaldehyde bound to sulphite. One NADH for each acetaldehyde; the absorbance rises.</source>
            <translation>Aldehyd-Dehydrogenase oxidiert Acetaldehyd zu Acetat; die Reaktion läuft im alkalischen Puffer, der auch an Sulfit gebundenen Acetaldehyd freisetzt, bis zum Ende. Ein NADH je Acetaldehyd; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with potassium</source>
            <translation>Puffer pH 9 mit Kalium</translation>
        </message>
        <message>
            <source>NAD solution</source>
            <translation>NAD-Lösung</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase solution</source>
            <translation>Aldehyd-Dehydrogenase-Lösung</translation>
        </message>
        <message>
            <source>Acetaldehyde</source>
            <translation>Acetaldehyd</translation>
        </message>
        <message>
            <source>One NADH formed for each acetaldehyde.</source>
            <translation>Je Acetaldehyd entsteht ein NADH.</translation>
        </message>
        <message>
            <source>Other aldehydes, such as propionaldehyde and benzaldehyde, react too, some of them slowly.</source>
            <translation>Andere Aldehyde wie Propionaldehyd und Benzaldehyd reagieren ebenfalls, manche davon langsam.</translation>
        </message>
        <message>
            <source>Traces of alcohol dehydrogenase in the enzyme let ethanol creep: read at the same time in every tube and compare with a sample blank.</source>
            <translation>Spuren von Alkohol-Dehydrogenase im Enzym führen bei Ethanol zu einer Schleichreaktion: in jedem Ansatz nach derselben Zeit ablesen und mit einem Probenblindwert vergleichen.</translation>
        </message>
        <message>
            <source>Keep closed and cool. Dilute with cold water in a full flask right before pipetting.</source>
            <translation>Verschlossen und kühl halten. Unmittelbar vor dem Pipettieren in einem vollen Kolben mit kaltem Wasser verdünnen.</translation>
        </message>
        <message>
            <source>Dilute with cold water and give the sample a blank of its own; treat with PVPP only in a closed vessel in the cold.</source>
            <translation>Mit kaltem Wasser verdünnen und einen eigenen Probenblindwert mitführen; mit PVPP nur in der Kälte in einem verschlossenen Gefäß behandeln.</translation>
        </message>
        <message>
            <source>Centrifuge in a full, closed, cooled tube; don't filter under suction.</source>
            <translation>In einem vollen, verschlossenen, gekühlten Röhrchen zentrifugieren; nicht unter Saugen filtrieren.</translation>
        </message>
        <message>
            <source>Don't degas by warming or stirring: acetaldehyde goes with the gas. Cool to 4 °C, bring to pH 9 with sodium hydroxide in a closed vessel, which binds the carbon dioxide, use at once, and note the dilution.</source>
            <translation>Nicht durch Erwärmen oder Rühren entgasen: Acetaldehyd entweicht mit dem Gas. Auf 4 °C kühlen, in einem verschlossenen Gefäß mit Natronlauge auf pH 9 bringen, was das Kohlendioxid bindet, sofort verwenden und die Verdünnung notieren.</translation>
        </message>
        <message>
            <source>Distil or extract closed and cold with water, chill and filter cold; check the recovery with a spiked sample.</source>
            <translation>Geschlossen und kalt destillieren oder mit Wasser extrahieren, kühlen und kalt filtrieren; die Wiederfindung mit einer aufgestockten Probe prüfen.</translation>
        </message>
        <message>
            <source>Cool to 4 °C; precipitate with perchloric acid, 1 mol/L, in a closed tube, centrifuge cold, bring to pH 8 to 9 with potassium hydroxide, use at once. Check the recovery with a spiked sample.</source>
            <translation>Auf 4 °C kühlen; in einem verschlossenen Röhrchen mit Perchlorsäure, 1 mol/L, fällen, kalt zentrifugieren, mit Kalilauge auf pH 8 bis 9 bringen, sofort verwenden. Die Wiederfindung mit einer aufgestockten Probe prüfen.</translation>
        </message>
        <message>
            <source>Homogenise frozen with ice-cold water in a closed vessel, centrifuge cold, use at once. Enter mass and extract volume with the sample; check the recovery with a spiked sample.</source>
            <translation>Gefroren mit eiskaltem Wasser in einem verschlossenen Gefäß homogenisieren, kalt zentrifugieren, sofort verwenden. Masse und Extraktvolumen bei der Probe eingeben; die Wiederfindung mit einer aufgestockten Probe prüfen.</translation>
        </message>
        <message>
            <source>Acetic acid (template)</source>
            <translation>Essigsäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes: MEBAK B-590.31.112, acetic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Enzyme: MEBAK B-590.31.112, Essigsäure. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase turns acetate into acetyl-CoA, citrate synthase joins it to oxaloacetate, and malate dehydrogenase makes that oxaloacetate anew from L-malate with one NADH for each acetate. The malate dehydrogenase equilibrium stands before the measured reaction and gives NADH of its own, so the signal is (A2 - A0) - (A1 - A0)^2 / (A2 - A0).</source>
            <translation>Acetyl-CoA-Synthetase setzt Acetat zu Acetyl-CoA um, Citrat-Synthase verbindet dieses mit Oxalacetat, und Malat-Dehydrogenase bildet das Oxalacetat aus L-Malat neu, mit einem NADH je Acetat. Das Gleichgewicht der Malat-Dehydrogenase ist der gemessenen Reaktion vorgelagert und liefert selbst NADH; das Signal ist daher (A2 − A0) − (A1 − A0)² / (A2 − A0).</translation>
        </message>
        <message>
            <source>Buffer pH 8.4 with L-malate</source>
            <translation>Puffer pH 8,4 mit L-Malat</translation>
        </message>
        <message>
            <source>ATP, CoA and NAD solution</source>
            <translation>ATP/CoA/NAD-Lösung</translation>
        </message>
        <message>
            <source>Malate dehydrogenase and citrate synthase suspension</source>
            <translation>Malat-Dehydrogenase/Citrat-Synthase-Suspension</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase suspension</source>
            <translation>Acetyl-CoA-Synthetase-Suspension</translation>
        </message>
        <message>
            <source>Acetic acid</source>
            <translation>Essigsäure</translation>
        </message>
        <message>
            <source>Acetate + ATP + CoA → acetyl-CoA + AMP + diphosphate (acetyl-CoA synthetase)</source>
            <translation>Acetat + ATP + CoA → Acetyl-CoA + AMP + Diphosphat (Acetyl-CoA-Synthetase)</translation>
        </message>
        <message>
            <source>One NADH formed for each acetate, less what the malate equilibrium had formed before.</source>
            <translation>Je Acetat entsteht ein NADH, abzüglich dessen, was das Malat-Gleichgewicht zuvor gebildet hat.</translation>
        </message>
        <message>
            <source>Propionate is taken slowly. Free acetate in reagents and water shows in the blank.</source>
            <translation>Propionat wird langsam umgesetzt. Freies Acetat in Reagenzien und Wasser zeigt sich im Blindwert.</translation>
        </message>
        <message>
            <source>The result is that of free acetate; esters and acetylated polymers do not react unless they were split before.</source>
            <translation>Das Ergebnis ist das freie Acetat; Ester und acetylierte Polymere reagieren nicht, wenn sie nicht zuvor gespalten wurden.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method.</source>
            <translation>Unverändert pipettieren oder mit Wasser in den Bereich der Methode verdünnen.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows; colour alone adds the same to A0, A1 and A2. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>So weit verdünnen, wie der Bereich es zulässt; Farbe allein trägt zu A0, A1 und A2 dasselbe bei. Stark gefärbt: 10 mL eine Minute mit 0,2 g Polyvinylpolypyrrolidon (PVPP) oder Polyamid rühren, dann filtrieren.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a fluted filter or a membrane of 0.45 µm; throw the first millilitres away.</source>
            <translation>Zentrifugieren oder durch ein Faltenfilter oder eine Membran von 0,45 µm filtrieren; die ersten Milliliter verwerfen.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled, loosely closed flask until no more gas comes; don't warm: acetic acid is volatile. Filter.</source>
            <translation>In einem halb gefüllten, lose verschlossenen Kolben rühren oder schütteln, bis kein Gas mehr kommt; nicht erwärmen: Essigsäure ist flüchtig. Filtrieren.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit aufgesetztem Stopfen mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, mit Wasser auffüllen, 20 min in Eis stellen und kalt filtrieren: Das Fett bleibt zurück.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter.</source>
            <translation>1 bis 10 g nehmen: mit etwa 60 mL Wasser in einen 100-mL-Messkolben überführen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, schütteln, filtrieren.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water and filter. Enter mass and extract volume with the sample. Vinegar and pickles: dilute 1 to 100 or more.</source>
            <translation>Zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit aufgesetztem Stopfen mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, mit Wasser auffüllen und filtrieren. Masse und Extraktvolumen bei der Probe eingeben. Essig und sauer Eingelegtes: 1 auf 100 oder stärker verdünnen.</translation>
        </message>
        <message>
            <source>Ammonia and urea (template)</source>
            <translation>Ammoniak und Harnstoff (Vorlage)</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase joins ammonia to 2-oxoglutarate with one NADH for each ammonia (A1 to A2). Urease then splits urea into two ammonia and carbon dioxide, and two NADH are used for each urea (A2 to A3). The equilibrium lies on the side of glutamate. The absorbance falls; the NADH has to last for both.</source>
            <translation>Glutamat-Dehydrogenase verbindet Ammoniak mit 2-Oxoglutarat, mit einem NADH je Ammoniak (A1 bis A2). Dann spaltet Urease Harnstoff in zwei Ammoniak und Kohlendioxid, und je Harnstoff werden zwei NADH verbraucht (A2 bis A3). Das Gleichgewicht liegt auf der Seite des Glutamats. Die Extinktion fällt; das NADH muss für beide reichen.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with 2-oxoglutarate and ADP</source>
            <translation>Puffer pH 8 mit 2-Oxoglutarat und ADP</translation>
        </message>
        <message>
            <source>NADH solution</source>
            <translation>NADH-Lösung</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase in glycerol</source>
            <translation>Glutamat-Dehydrogenase in Glycerin</translation>
        </message>
        <message>
            <source>Urease solution</source>
            <translation>Urease-Lösung</translation>
        </message>
        <message>
            <source>Ammonia as NH3</source>
            <translation>Ammoniak als NH3</translation>
        </message>
        <message>
            <source>Urea</source>
            <translation>Harnstoff</translation>
        </message>
        <message>
            <source>Urea + H2O → 2 NH3 + CO2 (urease)</source>
            <translation>Harnstoff + H2O → 2 NH3 + CO2 (Urease)</translation>
        </message>
        <message>
            <source>One NADH used for each ammonia, two for each urea.</source>
            <translation>Je Ammoniak wird ein NADH verbraucht, je Harnstoff zwei.</translation>
        </message>
        <message>
            <source>Enzymes kept in ammonium sulphate bring ammonia with them: take glutamate dehydrogenase and urease free of ammonium.</source>
            <translation>In Ammoniumsulfat aufbewahrte Enzyme bringen Ammoniak mit: Glutamat-Dehydrogenase und Urease ohne Ammonium nehmen.</translation>
        </message>
        <message>
            <source>Ammonia in the air, from cleaning agents and smoke, dissolves in every open vessel: the blank shows it.</source>
            <translation>Ammoniak aus der Luft, von Reinigungsmitteln und Rauch, löst sich in jedem offenen Gefäß: Der Blindwert zeigt es.</translation>
        </message>
        <message>
            <source>Much tannin stops both enzymes: treat with PVPP.</source>
            <translation>Viel Gerbstoff hemmt beide Enzyme: mit PVPP behandeln.</translation>
        </message>
        <message>
            <source>Fluoride and heavy metals stop urease.</source>
            <translation>Fluorid und Schwermetalle hemmen Urease.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>So weit verdünnen, wie der Bereich es zulässt, und einen eigenen Probenblindwert mitführen. Stark gefärbt: 10 mL eine Minute mit 0,2 g Polyvinylpolypyrrolidon (PVPP) oder Polyamid rühren, dann filtrieren.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold ammonium. Throw the first millilitres away.</source>
            <translation>Zentrifugieren oder durch ein gewaschenes Filter filtrieren: Papier kann Ammonium enthalten. Die ersten Milliliter verwerfen.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, at its own pH: an alkaline sample loses ammonia. Filter.</source>
            <translation>In einem halb gefüllten Kolben rühren oder schütteln, bis kein Gas mehr kommt, beim eigenen pH-Wert der Probe: Eine alkalische Probe verliert Ammoniak. Filtrieren.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 15 min bei 40 °C extrahieren, abkühlen, auffüllen, 20 min in Eis stellen und kalt filtrieren: Das Fett bleibt zurück.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: precipitate with 10 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 7 to 8 with potassium hydroxide, make up to 50 mL, stand in ice for 20 min, filter. Alkaline clarification loses ammonia and hot acid splits amides.</source>
            <translation>Milch und Milcherzeugnisse, 1 bis 10 g: mit 10 mL Perchlorsäure, 1 mol/L, fällen, zentrifugieren, mit Kalilauge auf pH 7 bis 8 bringen, auf 50 mL auffüllen, 20 min in Eis stellen, filtrieren. Bei alkalischer Klärung geht Ammoniak verloren, und heiße Säure spaltet Amide.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Kalt zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 15 min bei 40 °C extrahieren, abkühlen, mit Wasser auffüllen und filtrieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Citric acid in wine</source>
            <translation>Citronensäure in Wein</translation>
        </message>
        <message>
            <source>Commission Regulation (EEC) No 2676/90, Annex, citric acid (consolidated text of 13.08.2005, Italian): volumes of sample, water and the solutions 2.1 to 2.4, 340 nm and 10 mm, readings about 5 min after mixing and about 5 min after solution 2.4, range of 20 to 400 mg/L in the pipetted solution. Molar mass and absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8. From memory: what the solutions 2.1 to 2.4 hold and the difference A1 - A2 less that of the blank. The signal window is the range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the reserve, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Verordnung (EWG) Nr. 2676/90 der Kommission, Anhang, Citronensäure (konsolidierte Fassung vom 13.08.2005, italienisch): Volumina von Probe, Wasser und den Lösungen 2.1 bis 2.4, 340 nm und 10 mm, Ablesungen etwa 5 min nach dem Mischen und etwa 5 min nach Lösung 2.4, Bereich von 20 bis 400 mg/L in der pipettierten Lösung. Molare Masse und Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8. Aus dem Gedächtnis: was die Lösungen 2.1 bis 2.4 enthalten und die Differenz A1 − A2 abzüglich der des Blindwerts. Das Messfenster ist der Bereich als Extinktion bei 340 nm, nach eigener Rechnung. Gängige Praxis, ohne Quelle: die Grenzen der Wartezeiten um die genannten Zeiten, die größte Extinktion, die Reserve, die Annahmegrenzen, der Verlust des Standards, die übliche Zahl der Ansätze, der typische Bereich, Störungen, Probenvorbereitung und Warnhinweise, wo sie keine Quelle nennen.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate; malate and lactate dehydrogenase use one NADH for each oxaloacetate or the pyruvate that comes of it. The absorbance falls.</source>
            <translation>Citrat-Lyase spaltet Citrat in Oxalacetat und Acetat; Malat- und Lactat-Dehydrogenase verbrauchen je Oxalacetat, oder je Pyruvat, das daraus entsteht, ein NADH. Die Extinktion fällt.</translation>
        </message>
        <message>
            <source>Solution 2.1 (buffer)</source>
            <translation>Lösung 2.1 (Puffer)</translation>
        </message>
        <message>
            <source>Solution 2.2 (NADH)</source>
            <translation>Lösung 2.2 (NADH)</translation>
        </message>
        <message>
            <source>Solution 2.3 (malate and lactate dehydrogenase suspension)</source>
            <translation>Lösung 2.3 (Malat-/Lactat-Dehydrogenase-Suspension)</translation>
        </message>
        <message>
            <source>Solution 2.4 (citrate lyase)</source>
            <translation>Lösung 2.4 (Citrat-Lyase)</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Citronensäure</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase)</source>
            <translation>Citrat → Oxalacetat + Acetat (Citrat-Lyase)</translation>
        </message>
        <message>
            <source>One NADH used for each citrate.</source>
            <translation>Je Citrat wird ein NADH verbraucht.</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the wine are used up before A1 and do not count.</source>
            <translation>Oxalacetat und Pyruvat des Weins werden vor A1 verbraucht und zählen nicht.</translation>
        </message>
        <message>
            <source>Malate, tartrate and isocitrate do not react.</source>
            <translation>Malat, Tartrat und Isocitrat reagieren nicht.</translation>
        </message>
        <message>
            <source>Much tannin slows the lyase: treat with PVPP.</source>
            <translation>Viel Gerbstoff verlangsamt die Lyase: mit PVPP behandeln.</translation>
        </message>
        <message>
            <source>Below 400 mg/L pipette as it is; otherwise dilute with water to 20 to 400 mg/L (same Regulation).</source>
            <translation>Unter 400 mg/L unverändert pipettieren; sonst mit Wasser auf 20 bis 400 mg/L verdünnen (dieselbe Verordnung).</translation>
        </message>
        <message>
            <source>Red wine: about 0.2 g of PVPP with 10 mL of wine, then filter (same Regulation).</source>
            <translation>Rotwein: etwa 0,2 g PVPP auf 10 mL Wein, dann filtrieren (dieselbe Verordnung).</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter.</source>
            <translation>In einem halb gefüllten Kolben rühren oder schütteln, bis kein Gas mehr kommt, dann filtrieren.</translation>
        </message>
        <message>
            <source>Citric acid (template)</source>
            <translation>Citronensäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry, molar mass: Russian standard for citric acid in juices, document 1200102279, section 8. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Prinzip und Stöchiometrie, molare Masse: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate. L-malate dehydrogenase, and L-lactate dehydrogenase for the oxaloacetate that has turned into pyruvate, use one NADH for each. Both reductions go to their end by themselves. The absorbance falls by one NADH for each citrate.</source>
            <translation>Citrat-Lyase spaltet Citrat in Oxalacetat und Acetat. L-Malat-Dehydrogenase und, für das zu Pyruvat gewordene Oxalacetat, L-Lactat-Dehydrogenase verbrauchen jeweils ein NADH. Beide Reduktionen laufen von selbst bis zum Ende. Die Extinktion fällt um ein NADH je Citrat.</translation>
        </message>
        <message>
            <source>Buffer pH 7.8 with zinc</source>
            <translation>Puffer pH 7,8 mit Zink</translation>
        </message>
        <message>
            <source>Malate and lactate dehydrogenase suspension</source>
            <translation>Malat-/Lactat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>Citrate lyase solution</source>
            <translation>Citrat-Lyase-Lösung</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase, zinc)</source>
            <translation>Citrat → Oxalacetat + Acetat (Citrat-Lyase, Zink)</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the sample are used up before A1 and do not count.</source>
            <translation>Oxalacetat und Pyruvat der Probe werden vor A1 verbraucht und zählen nicht.</translation>
        </message>
        <message>
            <source>Isocitrate, malate and tartrate do not react.</source>
            <translation>Isocitrat, Malat und Tartrat reagieren nicht.</translation>
        </message>
        <message>
            <source>Much tannin or a strongly acid sample slows the lyase: treat with PVPP, bring to pH 8.</source>
            <translation>Viel Gerbstoff oder eine stark saure Probe verlangsamt die Lyase: mit PVPP behandeln, auf pH 8 bringen.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method. Bring lemon juice and other strongly acid samples to about pH 8 with sodium hydroxide first.</source>
            <translation>Unverändert pipettieren oder mit Wasser in den Bereich der Methode verdünnen. Zitronensaft und andere stark saure Proben zuerst mit Natronlauge auf etwa pH 8 bringen.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Red wine and red juice: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter.</source>
            <translation>So weit verdünnen, wie der Bereich es zulässt, und einen eigenen Probenblindwert mitführen. Rotwein und roter Saft: 10 mL eine Minute mit 0,2 g Polyvinylpolypyrrolidon (PVPP) rühren, dann filtrieren.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, warm to 30 °C if need be, then filter.</source>
            <translation>In einem halb gefüllten Kolben rühren oder schütteln, bis kein Gas mehr kommt, bei Bedarf auf 30 °C erwärmen, dann filtrieren.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, mit Wasser auffüllen, 20 min in Eis stellen und kalt filtrieren: Das Fett bleibt zurück.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, mit Wasser auffüllen und filtrieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>D-gluconic acid (template)</source>
            <translation>D-Gluconsäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Extinktionskoeffizienten: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9; andere Listen geben 3500 bei 365 nm für NADPH an (aus dem Gedächtnis).</translation>
        </message>
        <message>
            <source>Gluconate kinase phosphorylates D-gluconate with ATP; 6-phosphogluconate dehydrogenase turns that into ribulose-5-phosphate, carbon dioxide and NADPH. The loss of carbon dioxide takes the reaction to its end. One NADPH for each D-gluconate; the absorbance rises.</source>
            <translation>Gluconat-Kinase phosphoryliert D-Gluconat mit ATP; 6-Phosphogluconat-Dehydrogenase setzt das Produkt zu Ribulose-5-phosphat, Kohlendioxid und NADPH um. Der Verlust von Kohlendioxid führt die Reaktion zu Ende. Ein NADPH je D-Gluconat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with magnesium</source>
            <translation>Puffer pH 8 mit Magnesium</translation>
        </message>
        <message>
            <source>NADP solution</source>
            <translation>NADP-Lösung</translation>
        </message>
        <message>
            <source>ATP solution</source>
            <translation>ATP-Lösung</translation>
        </message>
        <message>
            <source>6-Phosphogluconate dehydrogenase suspension</source>
            <translation>6-Phosphogluconat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>Gluconate kinase suspension</source>
            <translation>Gluconat-Kinase-Suspension</translation>
        </message>
        <message>
            <source>D-gluconic acid</source>
            <translation>D-Gluconsäure</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-gluconate.</source>
            <translation>Je D-Gluconat entsteht ein NADPH.</translation>
        </message>
        <message>
            <source>D-glucono-lactone does not react as it is: for the total, hold the sample at pH 10 to 11 for 10 min first, then bring it to pH 8.</source>
            <translation>D-Gluconolacton reagiert nicht unmittelbar: für die Gesamtmenge die Probe zuerst 10 min bei pH 10 bis 11 halten, dann auf pH 8 bringen.</translation>
        </message>
        <message>
            <source>6-Phosphogluconate of the sample is used up before A1 and does not count.</source>
            <translation>6-Phosphogluconat der Probe wird vor A1 verbraucht und zählt nicht.</translation>
        </message>
        <message>
            <source>D-lactic acid (template)</source>
            <translation>D-Milchsäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle, stoichiometry and the buffer of pH 10 with L-glutamate: OIV-MA-AS313-07, lactic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Prinzip, Stöchiometrie und der Puffer pH 10 mit L-Glutamat: OIV-MA-AS313-07, Milchsäure. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase turns D-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each D-lactate; the absorbance rises.</source>
            <translation>D-Lactat-Dehydrogenase setzt D-Lactat und NAD zu Pyruvat und NADH um. Dieses Gleichgewicht liegt auf der Seite des Lactats; der alkalische Puffer und die Transaminase, die das Pyruvat mit L-Glutamat abfängt, verschieben es auf die andere. Ein NADH je D-Lactat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 10 with L-glutamate</source>
            <translation>Puffer pH 10 mit L-Glutamat</translation>
        </message>
        <message>
            <source>Glutamate-pyruvate transaminase suspension</source>
            <translation>Glutamat-Pyruvat-Transaminase-Suspension</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase suspension</source>
            <translation>D-Lactat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>D-lactic acid</source>
            <translation>D-Milchsäure</translation>
        </message>
        <message>
            <source>Pyruvate + L-glutamate → L-alanine + 2-oxoglutarate (glutamate-pyruvate transaminase)</source>
            <translation>Pyruvat + L-Glutamat → L-Alanin + 2-Oxoglutarat (Glutamat-Pyruvat-Transaminase)</translation>
        </message>
        <message>
            <source>One NADH formed for each D-lactate.</source>
            <translation>Je D-Lactat entsteht ein NADH.</translation>
        </message>
        <message>
            <source>L-lactate does not react. D-2-hydroxybutyrate is taken slowly.</source>
            <translation>L-Lactat reagiert nicht. D-2-Hydroxybutyrat wird langsam umgesetzt.</translation>
        </message>
        <message>
            <source>Sweat holds lactate: touch neither pipette tips nor the inside of cuvettes.</source>
            <translation>Schweiß enthält Lactat: weder Pipettenspitzen noch das Innere von Küvetten berühren.</translation>
        </message>
        <message>
            <source>A small creep after the end is usual: read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>Eine kleine Schleichreaktion nach dem Ende ist üblich: in jedem Ansatz nach derselben Zeit ablesen oder als Ablesereihe ablesen und extrapolieren.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Meat, 5 g: homogenise in the cold with 20 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 10 with potassium hydroxide, make up to 100 mL with water, stand in ice for 20 min, filter. A sample treated with acid never goes into the waste of the hexacyanoferrate clarification.</source>
            <translation>Milch und Milcherzeugnisse, 1 bis 10 g: mit etwa 60 mL Wasser in einen 100-mL-Messkolben überführen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, schütteln, filtrieren. Fleisch, 5 g: in der Kälte mit 20 mL Perchlorsäure, 1 mol/L, homogenisieren, zentrifugieren, mit Kalilauge auf pH 10 bringen, mit Wasser auf 100 mL auffüllen, 20 min in Eis stellen, filtrieren. Eine mit Säure behandelte Probe kommt nie in den Abfall der Hexacyanidoferrat-Klärung.</translation>
        </message>
        <message>
            <source>D-malic acid (template)</source>
            <translation>D-Äpfelsäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: OIV resolution OENO 6/98. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Prinzip und Stöchiometrie: OIV-Resolution OENO 6/98. Molare Masse: OIV-Resolution OENO 30/2004. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase oxidises D-malate and splits carbon dioxide off: pyruvate, carbon dioxide and NADH. The loss of carbon dioxide and the alkaline buffer pull the reaction to its end. One NADH for each D-malate; the absorbance rises.</source>
            <translation>D-Malat-Dehydrogenase oxidiert D-Malat und spaltet Kohlendioxid ab: Pyruvat, Kohlendioxid und NADH. Der Verlust von Kohlendioxid und der alkalische Puffer führen die Reaktion zu Ende. Ein NADH je D-Malat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with magnesium and potassium</source>
            <translation>Puffer pH 9 mit Magnesium und Kalium</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase solution</source>
            <translation>D-Malat-Dehydrogenase-Lösung</translation>
        </message>
        <message>
            <source>D-malic acid</source>
            <translation>D-Äpfelsäure</translation>
        </message>
        <message>
            <source>One NADH formed for each D-malate.</source>
            <translation>Je D-Malat entsteht ein NADH.</translation>
        </message>
        <message>
            <source>L-tartrate is taken slowly: the absorbance goes on creeping after the end. Read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>L-Tartrat wird langsam umgesetzt: Die Extinktion kriecht nach dem Ende weiter. In jedem Ansatz nach derselben Zeit ablesen oder als Ablesereihe ablesen und extrapolieren.</translation>
        </message>
        <message>
            <source>Fifty times as much L-malate or more slows the reaction.</source>
            <translation>L-Malat in fünfzigfacher oder größerer Menge verlangsamt die Reaktion.</translation>
        </message>
        <message>
            <source>D-sorbitol in foods</source>
            <translation>D-Sorbit in Lebensmitteln</translation>
        </message>
        <message>
            <source>French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol: volumes of the three solutions, water, sample and sorbitol dehydrogenase, 492 nm, 10 mm, 19.9 L/(mmol cm), molar mass 182.17 g/mol, about 3 g of sample in 100 mL, readings at 2 min and 2 min later, then 45 min in the dark and 15 min more. From memory: what the three solutions hold. Our own: one reading A1 (the second of the first two), one reading A2 (the larger of the last two). The signal window is the stated optimum of 20 to 350 mg/100 g with 3 g in 100 mL, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Französische Verordnung vom 7. Oktober 1987 (ECOC8700071A), Anhang X, D-Sorbit: Volumina der drei Lösungen, von Wasser, Probe und Sorbit-Dehydrogenase, 492 nm, 10 mm, 19,9 L/(mmol cm), molare Masse 182,17 g/mol, etwa 3 g Probe in 100 mL, Ablesungen nach 2 min und 2 min später, dann 45 min im Dunkeln und weitere 15 min. Aus dem Gedächtnis: was die drei Lösungen enthalten. Eigenes: eine Ablesung A1 (die zweite der ersten beiden), eine Ablesung A2 (die größere der letzten beiden). Das Messfenster ist das genannte Optimum von 20 bis 350 mg/100 g mit 3 g in 100 mL, nach eigener Rechnung. Gängige Praxis, ohne Quelle: die Grenzen der Wartezeiten um die genannten Zeiten, die Annahmegrenzen, der Verlust des Standards, die übliche Zahl der Ansätze, der typische Bereich, Störungen, Probenvorbereitung und Warnhinweise, wo sie keine Quelle nennen.</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase turns D-sorbitol and NAD into fructose and NADH; diaphorase passes the hydrogen on to the tetrazolium salt INT, one formazan for each D-sorbitol. The absorbance at 492 nm rises. Xylitol is measured as well.</source>
            <translation>Sorbit-Dehydrogenase setzt D-Sorbit und NAD zu Fructose und NADH um; Diaphorase überträgt den Wasserstoff auf das Tetrazoliumsalz INT, ein Formazan je D-Sorbit. Die Extinktion bei 492 nm steigt. Xylit wird mitgemessen.</translation>
        </message>
        <message>
            <source>First solution (buffer)</source>
            <translation>Erste Lösung (Puffer)</translation>
        </message>
        <message>
            <source>Second solution (NAD and diaphorase)</source>
            <translation>Zweite Lösung (NAD und Diaphorase)</translation>
        </message>
        <message>
            <source>Third solution (INT)</source>
            <translation>Dritte Lösung (INT)</translation>
        </message>
        <message>
            <source>Sample extract</source>
            <translation>Probenextrakt</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase solution</source>
            <translation>Sorbit-Dehydrogenase-Lösung</translation>
        </message>
        <message>
            <source>D-sorbitol</source>
            <translation>D-Sorbit</translation>
        </message>
        <message>
            <source>One formazan formed for each D-sorbitol.</source>
            <translation>Je D-Sorbit entsteht ein Formazan.</translation>
        </message>
        <message>
            <source>Xylitol is measured as well (same order).</source>
            <translation>Xylit wird mitgemessen (dieselbe Verordnung).</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite and other reducing substances reduce INT: wait until A1 stands.</source>
            <translation>Ascorbinsäure, Sulfit und andere reduzierende Stoffe reduzieren INT: warten, bis A1 konstant ist.</translation>
        </message>
        <message>
            <source>Dilute with water until the pipetted solution holds 0.006 to 0.105 g/L.</source>
            <translation>Mit Wasser verdünnen, bis die pipettierte Lösung 0,006 bis 0,105 g/L enthält.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter and dilute.</source>
            <translation>In einem halb gefüllten Kolben rühren oder schütteln, bis kein Gas mehr kommt, dann filtrieren und verdünnen.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, extract with 60 mL of water at 60 °C for 1 h, cool, make up to 100 mL, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Etwa 3 g auf 0,01 g genau einwiegen, mit 60 mL Wasser 1 h bei 60 °C extrahieren, abkühlen, auf 100 mL auffüllen, 20 min in Eis stellen und kalt filtrieren: Das Fett bleibt zurück.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, leave with 60 mL of water for 1 h, make up to 100 mL, filter (same order). Enter mass and extract volume with the sample.</source>
            <translation>Etwa 3 g auf 0,01 g genau einwiegen, 1 h mit 60 mL Wasser stehen lassen, auf 100 mL auffüllen, filtrieren (dieselbe Verordnung). Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Ethanol (template)</source>
            <translation>Ethanol (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: MEBAK B-590.11.112, ethanol (alcohol and aldehyde dehydrogenase). Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Prinzip und Stöchiometrie: MEBAK B-590.11.112, Ethanol (Alkohol- und Aldehyd-Dehydrogenase). Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase turns ethanol into acetaldehyde. That equilibrium lies on the side of ethanol; the alkaline buffer and aldehyde dehydrogenase, which oxidises the acetaldehyde on to acetate, pull it over. Two NADH for each ethanol; the absorbance rises.</source>
            <translation>Alkohol-Dehydrogenase setzt Ethanol zu Acetaldehyd um. Dieses Gleichgewicht liegt auf der Seite des Ethanols; der alkalische Puffer und Aldehyd-Dehydrogenase, die den Acetaldehyd weiter zu Acetat oxidiert, verschieben es auf die andere. Zwei NADH je Ethanol; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 9</source>
            <translation>Puffer pH 9</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase suspension</source>
            <translation>Alkohol-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>Ethanol</source>
            <translation>Ethanol</translation>
        </message>
        <message>
            <source>Two NADH formed for each ethanol.</source>
            <translation>Je Ethanol entstehen zwei NADH.</translation>
        </message>
        <message>
            <source>Acetaldehyde of the sample is used up before A1 and does not count.</source>
            <translation>Acetaldehyd der Probe wird vor A1 verbraucht und zählt nicht.</translation>
        </message>
        <message>
            <source>1-Propanol, 1-butanol and other primary alcohols react, more slowly the longer they are; methanol does not.</source>
            <translation>1-Propanol, 1-Butanol und andere primäre Alkohole reagieren, je länger, desto langsamer; Methanol nicht.</translation>
        </message>
        <message>
            <source>Ethanol in the air of the room, from disinfectants and squeeze bottles, shows in the blank.</source>
            <translation>Ethanol aus der Raumluft, von Desinfektionsmitteln und Spritzflaschen, zeigt sich im Blindwert.</translation>
        </message>
        <message>
            <source>Keep closed. Dilute with cold water into the range: wine 1 to 1000 and more, beer and cider 1 to 500, juice as it is.</source>
            <translation>Verschlossen halten. Mit kaltem Wasser in den Bereich verdünnen: Wein 1 auf 1000 und mehr, Bier und Cidre 1 auf 500, Saft unverändert.</translation>
        </message>
        <message>
            <source>The dilution takes care of the colour. Low-alcohol samples: give the sample a blank of its own, or stir with PVPP in a closed vessel and filter covered.</source>
            <translation>Die Verdünnung beseitigt den Einfluss der Farbe. Alkoholarme Proben: einen eigenen Probenblindwert mitführen oder in einem verschlossenen Gefäß mit PVPP rühren und abgedeckt filtrieren.</translation>
        </message>
        <message>
            <source>Centrifuge in a closed tube, or filter through a covered funnel; no suction.</source>
            <translation>In einem verschlossenen Röhrchen zentrifugieren oder durch einen abgedeckten Trichter filtrieren; nicht absaugen.</translation>
        </message>
        <message>
            <source>Stir gently at room temperature in a covered flask, or filter through a covered fluted filter; don't warm: ethanol goes with the gas.</source>
            <translation>Bei Raumtemperatur in einem abgedeckten Kolben sanft rühren oder durch ein abgedecktes Faltenfilter filtrieren; nicht erwärmen: Ethanol entweicht mit dem Gas.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up, stand in ice for 20 min and filter cold through a covered funnel.</source>
            <translation>1 bis 5 g in einen 100-mL-Messkolben einwiegen, verschlossen mit 60 mL Wasser 20 min bei 40 °C extrahieren, verschlossen abkühlen, auffüllen, 20 min in Eis stellen und kalt durch einen abgedeckten Trichter filtrieren.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g, keep closed: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter through a covered funnel.</source>
            <translation>1 bis 10 g nehmen, verschlossen halten: mit etwa 60 mL Wasser in einen 100-mL-Messkolben überführen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, schütteln, durch einen abgedeckten Trichter filtrieren.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up and filter through a covered funnel. Enter mass and extract volume with the sample.</source>
            <translation>Kalt zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, verschlossen mit 60 mL Wasser 20 min bei 40 °C extrahieren, verschlossen abkühlen, auffüllen und durch einen abgedeckten Trichter filtrieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Free sulphite (template)</source>
            <translation>Freies Sulfit (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Interferences: EN 1988-2:1998, scope. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Störungen: EN 1988-2:1998, Anwendungsbereich. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>The same two reactions as for total sulphite, in a weakly acid buffer, in the cold and with a short wait, so that sulphite bound to acetaldehyde stays bound. Weakly bound sulphite is set free while the free is used up: what is found depends on the waiting time. Keep it the same for standard and samples. One NADH used for each sulphite; the absorbance falls.</source>
            <translation>Dieselben zwei Reaktionen wie beim Gesamtsulfit, in schwach saurem Puffer, in der Kälte und mit kurzer Wartezeit, damit an Acetaldehyd gebundenes Sulfit gebunden bleibt. Schwach gebundenes Sulfit wird frei, während das freie verbraucht wird: Was gefunden wird, hängt von der Wartezeit ab. Sie für Standard und Proben gleich halten. Je Sulfit wird ein NADH verbraucht; die Extinktion fällt.</translation>
        </message>
        <message>
            <source>Buffer pH 6</source>
            <translation>Puffer pH 6</translation>
        </message>
        <message>
            <source>NADH and NADH peroxidase solution</source>
            <translation>NADH/NADH-Peroxidase-Lösung</translation>
        </message>
        <message>
            <source>Sulphite oxidase suspension</source>
            <translation>Sulfit-Oxidase-Suspension</translation>
        </message>
        <message>
            <source>Free sulphite as SO2</source>
            <translation>Freies Sulfit als SO2</translation>
        </message>
        <message>
            <source>Sulphite + O2 + H2O → sulphate + H2O2 (sulphite oxidase)</source>
            <translation>Sulfit + O2 + H2O → Sulfat + H2O2 (Sulfit-Oxidase)</translation>
        </message>
        <message>
            <source>One NADH used for each sulphite.</source>
            <translation>Je Sulfit wird ein NADH verbraucht.</translation>
        </message>
        <message>
            <source>Sulphite bound to sugars, pyruvate and pigments comes free during the reaction and counts in part: the result is an upper bound of what is free.</source>
            <translation>An Zucker, Pyruvat und Farbstoffe gebundenes Sulfit wird während der Reaktion frei und zählt zum Teil mit: Das Ergebnis ist eine obere Schranke für das freie Sulfit.</translation>
        </message>
        <message>
            <source>Sulphate, sulphide and thiosulphate do not interfere; isothiocyanates do. Not for cabbage, dried garlic, dried onion, ginger, leek and soy protein (EN 1988-2:1998, scope).</source>
            <translation>Sulfat, Sulfid und Thiosulfat stören nicht, Isothiocyanate schon. Nicht für Kohl, getrockneten Knoblauch, getrocknete Zwiebeln, Ingwer, Lauch und Sojaprotein (EN 1988-2:1998, Anwendungsbereich).</translation>
        </message>
        <message>
            <source>Ascorbic acid above about 0.1 g/L slows the reaction and uses NADH: treat the sample with ascorbate oxidase first.</source>
            <translation>Ascorbinsäure über etwa 0,1 g/L verlangsamt die Reaktion und verbraucht NADH: die Probe zuerst mit Ascorbat-Oxidase behandeln.</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Aus einem vollen, verschlossenen Gefäß pipettieren, ohne Luft einzuschütteln. Kalt und sofort arbeiten: Was frei ist, ändert sich mit Temperatur, Verdünnung und Luft.</translation>
        </message>
        <message>
            <source>Give the sample a blank of its own and dilute as far as the range allows. Don't treat it with charcoal or long with PVPP: sulphite is lost and oxidised.</source>
            <translation>Einen eigenen Probenblindwert mitführen und so weit verdünnen, wie der Bereich es zulässt. Nicht mit Aktivkohle und nicht lange mit PVPP behandeln: Sulfit geht verloren und wird oxidiert.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Absitzen lassen oder in einem vollen, verschlossenen Röhrchen zentrifugieren; Saugfiltration zieht Schwefeldioxid ab. Kalt und sofort arbeiten: Was frei ist, ändert sich mit Temperatur, Verdünnung und Luft.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few; don't make it alkaline, which sets bound sulphite free.</source>
            <translation>Weder erwärmen noch ansäuern und nicht schütteln: Schwefeldioxid entweicht mit dem Gas. Langsam in ein Becherglas gießen und in der Kälte sanft rühren, bis nur noch wenige Blasen kommen; nicht alkalisch machen, das setzt gebundenes Sulfit frei.</translation>
        </message>
        <message>
            <source>D-glucose after starch digestion</source>
            <translation>D-Glucose nach Stärkeaufschluss</translation>
        </message>
        <message>
            <source>Commission Regulation (EC) No 900/2008, Annex I, sections 5.1 and 5.2: volumes of buffer, NADP, ATP, test solution, water and enzymes, the first reading after about 3 min, the second after about 15 min, readings every 5 min until the rise is steady and the extrapolation to the addition where the reaction has not ended, masses and flasks by starch content. Molar mass and absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. From memory: the wavelength of 340 nm and the path length of 10 mm in this text, what the solutions hold. Our own: four readings for the extrapolation. Common practice, no source: the waiting limits around the stated times, the signal window, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range (of the digest as made up), interferences and cautions where they name no source.</source>
            <translation>Verordnung (EG) Nr. 900/2008 der Kommission, Anhang I, Abschnitte 5.1 und 5.2: Volumina von Puffer, NADP, ATP, Untersuchungslösung, Wasser und Enzymen, die erste Ablesung nach etwa 3 min, die zweite nach etwa 15 min, Ablesungen alle 5 min, bis der Anstieg gleichmäßig ist, und die Extrapolation auf die Zugabe, wo die Reaktion nicht beendet ist, Massen und Kolben nach dem Stärkegehalt. Molare Masse und Extinktionskoeffizienten: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9. Aus dem Gedächtnis: die Wellenlänge von 340 nm und die Schichtdicke von 10 mm in diesem Text, was die Lösungen enthalten. Eigenes: vier Ablesungen für die Extrapolation. Gängige Praxis, ohne Quelle: die Grenzen der Wartezeiten um die genannten Zeiten, das Messfenster, die größte Extinktion, die Annahmegrenzen, der Verlust des Standards, die übliche Zahl der Ansätze, der typische Bereich (des aufgefüllten Aufschlusses), Störungen und Warnhinweise, wo sie keine Quelle nennen.</translation>
        </message>
        <message>
            <source>Amyloglucosidase has turned starch and its breakdown products into D-glucose. Hexokinase phosphorylates it with ATP, and glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose; both go to their end. The absorbance rises.</source>
            <translation>Amyloglucosidase hat Stärke und ihre Abbauprodukte in D-Glucose umgewandelt. Hexokinase phosphoryliert diese mit ATP, und Glucose-6-phosphat-Dehydrogenase bildet ein NADPH je D-Glucose; beide Reaktionen laufen bis zum Ende. Die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Buffer</source>
            <translation>Puffer</translation>
        </message>
        <message>
            <source>Test solution</source>
            <translation>Untersuchungslösung</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase suspension</source>
            <translation>Hexokinase/Glucose-6-phosphat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>D-glucose</source>
            <translation>D-Glucose</translation>
        </message>
        <message>
            <source>Starch + n H2O → n D-glucose (amyloglucosidase), before the test</source>
            <translation>Stärke + n H2O → n D-Glucose (Amyloglucosidase), vor dem Test</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose.</source>
            <translation>Je D-Glucose entsteht ein NADPH.</translation>
        </message>
        <message>
            <source>Free D-glucose, and that of sucrose where the digestion splits it, counts too; the conversion to starch takes it off (Regulation (EEC) No 4154/87).</source>
            <translation>Freie D-Glucose und die der Saccharose, wo der Aufschluss diese spaltet, zählen mit; die Umrechnung auf Stärke zieht sie ab (Verordnung (EWG) Nr. 4154/87).</translation>
        </message>
        <message>
            <source>Amyloglucosidase holds some D-glucose of its own: digest a blank with every series.</source>
            <translation>Amyloglucosidase enthält selbst etwas D-Glucose: in jedem Durchgang einen Blindwert mit aufschließen.</translation>
        </message>
        <message>
            <source>By the starch, or its breakdown products, expected: above 70 % weigh 0.35 to 0.4 g, 20 to 70 % at most 0.5 g, 5 to 20 % at most 1 g, below 5 % at most 2 g; make up to 500, 500, 250 and 200 mL (same Regulation). Digest as the Regulation says. Enter mass and flask volume with the sample.</source>
            <translation>Je nach erwartetem Gehalt an Stärke oder ihren Abbauprodukten: bei über 70 % 0,35 bis 0,4 g einwiegen, bei 20 bis 70 % höchstens 0,5 g, bei 5 bis 20 % höchstens 1 g, bei unter 5 % höchstens 2 g; auf 500, 500, 250 und 200 mL auffüllen (dieselbe Verordnung). Aufschließen, wie die Verordnung es sagt. Masse und Kolbenvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>D-glucose and D-fructose (template)</source>
            <translation>D-Glucose und D-Fructose (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.18.112, glucose, fructose and sucrose. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Enzyme und Stöchiometrie: MEBAK B-590.18.112, Glucose, Fructose und Saccharose. Molare Massen: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9. Extinktionskoeffizienten: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9; andere Listen geben 3500 bei 365 nm für NADPH an (aus dem Gedächtnis).</translation>
        </message>
        <message>
            <source>Hexokinase phosphorylates both sugars; glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose (A1 to A2). Phosphoglucose isomerase then turns fructose-6-phosphate over, and one NADPH is formed for each D-fructose (A2 to A3).</source>
            <translation>Hexokinase phosphoryliert beide Zucker; Glucose-6-phosphat-Dehydrogenase bildet ein NADPH je D-Glucose (A1 bis A2). Dann wandelt Phosphoglucose-Isomerase das Fructose-6-phosphat um, und je D-Fructose entsteht ein NADPH (A2 bis A3).</translation>
        </message>
        <message>
            <source>Buffer pH 7.6</source>
            <translation>Puffer pH 7,6</translation>
        </message>
        <message>
            <source>NADP and ATP solution</source>
            <translation>NADP/ATP-Lösung</translation>
        </message>
        <message>
            <source>Phosphoglucose isomerase suspension</source>
            <translation>Phosphoglucose-Isomerase-Suspension</translation>
        </message>
        <message>
            <source>D-fructose</source>
            <translation>D-Fructose</translation>
        </message>
        <message>
            <source>Fructose-6-phosphate → glucose-6-phosphate (phosphoglucose isomerase)</source>
            <translation>Fructose-6-phosphat → Glucose-6-phosphat (Phosphoglucose-Isomerase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose, and one for each D-fructose.</source>
            <translation>Je D-Glucose und je D-Fructose entsteht ein NADPH.</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate of the sample counts as D-glucose, fructose-6-phosphate as D-fructose.</source>
            <translation>Glucose-6-phosphat der Probe zählt als D-Glucose, Fructose-6-phosphat als D-Fructose.</translation>
        </message>
        <message>
            <source>A small creep after the end comes from other sugars and enzymes: read at the same time in every tube.</source>
            <translation>Eine kleine Schleichreaktion nach dem Ende stammt von anderen Zuckern und Enzymen: in jedem Ansatz nach derselben Zeit ablesen.</translation>
        </message>
        <message>
            <source>Yeast and its enzymes go on working in an unfiltered sample: filter at once, or heat to 80 °C for 10 min, loosely stoppered.</source>
            <translation>Hefe und ihre Enzyme arbeiten in einer unfiltrierten Probe weiter: sofort filtrieren oder lose verschlossen 10 min auf 80 °C erhitzen.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Dried fruit and honey: dilute the extract 10 to 50 times. Enter mass and extract volume with the sample.</source>
            <translation>Zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, mit Wasser auffüllen und filtrieren. Trockenfrüchte und Honig: den Extrakt 10- bis 50-fach verdünnen. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Glycerol (template)</source>
            <translation>Glycerin (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.58.112, glycerol in beverages. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Enzyme und Stöchiometrie: MEBAK B-590.58.112, Glycerin in Getränken. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>Glycerol kinase phosphorylates glycerol with ATP; pyruvate kinase makes the ATP anew from ADP and phosphoenolpyruvate and sets pyruvate free, and lactate dehydrogenase uses one NADH for each. All three go to their end by themselves. The absorbance falls by one NADH for each glycerol.</source>
            <translation>Glycerokinase phosphoryliert Glycerin mit ATP; Pyruvat-Kinase bildet das ATP aus ADP und Phosphoenolpyruvat neu und setzt Pyruvat frei, und Lactat-Dehydrogenase verbraucht je Pyruvat ein NADH. Alle drei Reaktionen laufen von selbst bis zum Ende. Die Extinktion fällt um ein NADH je Glycerin.</translation>
        </message>
        <message>
            <source>Buffer with NADH, ATP and phosphoenolpyruvate</source>
            <translation>Puffer mit NADH, ATP und Phosphoenolpyruvat</translation>
        </message>
        <message>
            <source>Pyruvate kinase and lactate dehydrogenase suspension</source>
            <translation>Pyruvat-Kinase/Lactat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>Glycerol kinase suspension</source>
            <translation>Glycerokinase-Suspension</translation>
        </message>
        <message>
            <source>Glycerol</source>
            <translation>Glycerin</translation>
        </message>
        <message>
            <source>One NADH used for each glycerol.</source>
            <translation>Je Glycerin wird ein NADH verbraucht.</translation>
        </message>
        <message>
            <source>Dihydroxyacetone and glyceraldehyde are phosphorylated too.</source>
            <translation>Dihydroxyaceton und Glycerinaldehyd werden ebenfalls phosphoryliert.</translation>
        </message>
        <message>
            <source>ADP and pyruvate of the sample and of the reagents are used up before A1 and do not count.</source>
            <translation>ADP und Pyruvat der Probe und der Reagenzien werden vor A1 verbraucht und zählen nicht.</translation>
        </message>
        <message>
            <source>Traces of ATPase let the absorbance creep: read at the same time in every tube.</source>
            <translation>Spuren von ATPase lassen die Extinktion weiterkriechen: in jedem Ansatz nach derselben Zeit ablesen.</translation>
        </message>
        <message>
            <source>Some enzymes are kept in glycerol: take ammonium sulphate suspensions.</source>
            <translation>Manche Enzyme werden in Glycerin aufbewahrt: Suspensionen in Ammoniumsulfat nehmen.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Or precipitate with perchloric acid, 1 mol/L, centrifuge and bring to pH 8 with potassium hydroxide; never both in one flask.</source>
            <translation>1 bis 10 g nehmen: mit etwa 60 mL Wasser in einen 100-mL-Messkolben überführen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, schütteln, filtrieren. Oder mit Perchlorsäure, 1 mol/L, fällen, zentrifugieren und mit Kalilauge auf pH 8 bringen; nie beides in einem Kolben.</translation>
        </message>
        <message>
            <source>L-ascorbic acid at 265 nm (template)</source>
            <translation>L-Ascorbinsäure bei 265 nm (Vorlage)</translation>
        </message>
        <message>
            <source>L-ascorbate itself absorbs at 265 nm, dehydroascorbate does not. Ascorbate oxidase takes all of it to dehydroascorbate with the oxygen dissolved in the tube; the reaction goes to its end by itself. The absorbance falls by one L-ascorbate for each L-ascorbic acid. Needs quartz cuvettes or plastic ones for the ultraviolet.</source>
            <translation>L-Ascorbat selbst absorbiert bei 265 nm, Dehydroascorbat nicht. Ascorbat-Oxidase setzt es mit dem im Ansatz gelösten Sauerstoff vollständig zu Dehydroascorbat um; die Reaktion läuft von selbst bis zum Ende. Die Extinktion fällt um ein L-Ascorbat je L-Ascorbinsäure. Nötig sind Küvetten aus Quarz oder aus Kunststoff für das Ultraviolett.</translation>
        </message>
        <message>
            <source>Buffer pH 6 with EDTA</source>
            <translation>Puffer pH 6 mit EDTA</translation>
        </message>
        <message>
            <source>Ascorbate oxidase solution</source>
            <translation>Ascorbat-Oxidase-Lösung</translation>
        </message>
        <message>
            <source>L-ascorbic acid</source>
            <translation>L-Ascorbinsäure</translation>
        </message>
        <message>
            <source>2 L-ascorbic acid + O2 → 2 dehydroascorbic acid + 2 H2O (ascorbate oxidase)</source>
            <translation>2 L-Ascorbinsäure + O2 → 2 Dehydroascorbinsäure + 2 H2O (Ascorbat-Oxidase)</translation>
        </message>
        <message>
            <source>One L-ascorbate lost for each L-ascorbic acid.</source>
            <translation>Je L-Ascorbinsäure verschwindet ein L-Ascorbat.</translation>
        </message>
        <message>
            <source>D-Isoascorbic acid (erythorbic acid) reacts too, more slowly.</source>
            <translation>D-Isoascorbinsäure (Erythorbinsäure) reagiert ebenfalls, langsamer.</translation>
        </message>
        <message>
            <source>Polyphenols, proteins and preservatives absorb at 265 nm: dilute until A1 stays below 2.</source>
            <translation>Polyphenole, Proteine und Konservierungsmittel absorbieren bei 265 nm: verdünnen, bis A1 unter 2 bleibt.</translation>
        </message>
        <message>
            <source>The enzyme absorbs at 265 nm itself: every series needs blanks.</source>
            <translation>Das Enzym absorbiert selbst bei 265 nm: Jeder Durchgang braucht Blindwerte.</translation>
        </message>
        <message>
            <source>Dehydroascorbic acid does not count unless it was reduced before.</source>
            <translation>Dehydroascorbinsäure zählt nicht, wenn sie nicht zuvor reduziert wurde.</translation>
        </message>
        <message>
            <source>L-ascorbic acid oxidises in minutes in a dilute neutral solution: dilute with metaphosphoric acid, 15 g/L, keep dark and cold, and pipette within the hour.</source>
            <translation>L-Ascorbinsäure oxidiert in verdünnter neutraler Lösung binnen Minuten: mit Metaphosphorsäure, 15 g/L, verdünnen, dunkel und kalt halten und innerhalb einer Stunde pipettieren.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, as far as the range allows; give the sample a blank of its own. PVPP takes some of the ascorbic acid away: check with a spiked sample.</source>
            <translation>Mit Metaphosphorsäure, 15 g/L, so weit verdünnen, wie der Bereich es zulässt; einen eigenen Probenblindwert mitführen. PVPP entfernt einen Teil der Ascorbinsäure: mit einer aufgestockten Probe prüfen.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, then centrifuge or filter at once.</source>
            <translation>Mit Metaphosphorsäure, 15 g/L, verdünnen, dann sofort zentrifugieren oder filtrieren.</translation>
        </message>
        <message>
            <source>Stir in the cold under cover until no more gas comes, then dilute with metaphosphoric acid, 15 g/L.</source>
            <translation>In der Kälte abgedeckt rühren, bis kein Gas mehr kommt, dann mit Metaphosphorsäure, 15 g/L, verdünnen.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL, stand in ice for 20 min and filter cold. Don't extract hot.</source>
            <translation>5 g in der Kälte mit Metaphosphorsäure, 15 g/L, homogenisieren, auf 100 mL auffüllen, 20 min in Eis stellen und kalt filtrieren. Nicht heiß extrahieren.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 50 g/L, which precipitates protein too, make up to 100 mL, filter and dilute.</source>
            <translation>5 g in der Kälte mit Metaphosphorsäure, 50 g/L, die auch Protein fällt, homogenisieren, auf 100 mL auffüllen, filtrieren und verdünnen.</translation>
        </message>
        <message>
            <source>Mince frozen, homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL and filter at once; don't extract hot. Enter mass and extract volume with the sample.</source>
            <translation>Gefroren zerkleinern, 5 g in der Kälte mit Metaphosphorsäure, 15 g/L, homogenisieren, auf 100 mL auffüllen und sofort filtrieren; nicht heiß extrahieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>L-glutamic acid at 492 nm (template)</source>
            <translation>L-Glutaminsäure bei 492 nm (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivity of the formazan of INT: French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Extinktionskoeffizient des Formazans von INT: französische Verordnung vom 7. Oktober 1987 (ECOC8700071A), Anhang X, D-Sorbit.</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase turns L-glutamate and NAD into 2-oxoglutarate, ammonium and NADH. That equilibrium lies on the side of glutamate; diaphorase pulls it over by passing the hydrogen on to the tetrazolium salt INT, one formazan for each L-glutamate. The absorbance at 492 nm rises.</source>
            <translation>Glutamat-Dehydrogenase setzt L-Glutamat und NAD zu 2-Oxoglutarat, Ammonium und NADH um. Dieses Gleichgewicht liegt auf der Seite des Glutamats; Diaphorase verschiebt es auf die andere, indem sie den Wasserstoff auf das Tetrazoliumsalz INT überträgt, ein Formazan je L-Glutamat. Die Extinktion bei 492 nm steigt.</translation>
        </message>
        <message>
            <source>Buffer pH 8.6 with detergent</source>
            <translation>Puffer pH 8,6 mit Detergens</translation>
        </message>
        <message>
            <source>NAD and diaphorase solution</source>
            <translation>NAD/Diaphorase-Lösung</translation>
        </message>
        <message>
            <source>INT solution</source>
            <translation>INT-Lösung</translation>
        </message>
        <message>
            <source>L-glutamic acid</source>
            <translation>L-Glutaminsäure</translation>
        </message>
        <message>
            <source>One formazan formed for each L-glutamate.</source>
            <translation>Je L-Glutamat entsteht ein Formazan.</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite, thiols and other reducing substances reduce INT: wait until A1 stands, or oxidise them first with hydrogen peroxide in alkali and destroy the rest with catalase.</source>
            <translation>Ascorbinsäure, Sulfit, Thiole und andere reduzierende Stoffe reduzieren INT: warten, bis A1 konstant ist, oder sie zuerst mit Wasserstoffperoxid in alkalischer Lösung oxidieren und den Rest des Peroxids mit Katalase zerstören.</translation>
        </message>
        <message>
            <source>L-Glutamine and L-aspartate do not react.</source>
            <translation>L-Glutamin und L-Aspartat reagieren nicht.</translation>
        </message>
        <message>
            <source>Light reduces INT: keep the tubes in the dark.</source>
            <translation>Licht reduziert INT: die Ansätze im Dunkeln halten.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter; no charcoal.</source>
            <translation>So weit verdünnen, wie der Bereich es zulässt, und einen eigenen Probenblindwert mitführen. Stark gefärbt: 10 mL eine Minute mit 0,2 g Polyvinylpolypyrrolidon (PVPP) rühren, dann filtrieren; keine Aktivkohle.</translation>
        </message>
        <message>
            <source>L-lactic acid (template)</source>
            <translation>L-Milchsäure (Vorlage)</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase turns L-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each L-lactate; the absorbance rises.</source>
            <translation>L-Lactat-Dehydrogenase setzt L-Lactat und NAD zu Pyruvat und NADH um. Dieses Gleichgewicht liegt auf der Seite des Lactats; der alkalische Puffer und die Transaminase, die das Pyruvat mit L-Glutamat abfängt, verschieben es auf die andere. Ein NADH je L-Lactat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase suspension</source>
            <translation>L-Lactat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>L-lactic acid</source>
            <translation>L-Milchsäure</translation>
        </message>
        <message>
            <source>One NADH formed for each L-lactate.</source>
            <translation>Je L-Lactat entsteht ein NADH.</translation>
        </message>
        <message>
            <source>D-lactate does not react. L-2-hydroxybutyrate is taken slowly.</source>
            <translation>D-Lactat reagiert nicht. L-2-Hydroxybutyrat wird langsam umgesetzt.</translation>
        </message>
        <message>
            <source>L-malic acid (template)</source>
            <translation>L-Äpfelsäure (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Stoichiometry: OIV-MA-AS313-11, L-malic acid. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Stöchiometrie: OIV-MA-AS313-11, L-Äpfelsäure. Molare Masse: OIV-Resolution OENO 30/2004. Extinktionskoeffizienten: russische Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the alkaline buffer and the transaminase, which takes the oxaloacetate away with L-glutamate, pull it over. One NADH for each L-malate; the absorbance rises.</source>
            <translation>L-Malat-Dehydrogenase setzt L-Malat und NAD zu Oxalacetat und NADH um. Dieses Gleichgewicht liegt auf der Seite des Malats; der alkalische Puffer und die Transaminase, die das Oxalacetat mit L-Glutamat abfängt, verschieben es auf die andere. Ein NADH je L-Malat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Glutamate-oxaloacetate transaminase suspension</source>
            <translation>Glutamat-Oxalacetat-Transaminase-Suspension</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase suspension</source>
            <translation>L-Malat-Dehydrogenase-Suspension</translation>
        </message>
        <message>
            <source>L-malic acid</source>
            <translation>L-Äpfelsäure</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (glutamate-oxaloacetate transaminase)</source>
            <translation>Oxalacetat + L-Glutamat → L-Aspartat + 2-Oxoglutarat (Glutamat-Oxalacetat-Transaminase)</translation>
        </message>
        <message>
            <source>One NADH formed for each L-malate.</source>
            <translation>Je L-Malat entsteht ein NADH.</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate, citrate and aspartate do not react.</source>
            <translation>Das Enzym setzt nur L-Malat um: D-Malat, Lactat, Tartrat, Citrat und Aspartat reagieren nicht.</translation>
        </message>
        <message>
            <source>Much tannin slows the enzymes; treat the sample with PVPP and wait until the absorbance stands.</source>
            <translation>Viel Gerbstoff verlangsamt die Enzyme; die Probe mit PVPP behandeln und warten, bis die Extinktion konstant ist.</translation>
        </message>
        <message>
            <source>L-malic acid in wine</source>
            <translation>L-Äpfelsäure in Wein</translation>
        </message>
        <message>
            <source>OIV-MA-AS313-11 (R2009), L-malic acid, enzymatic method, sections 3.3 to 5 (French text): volumes of buffer, NAD, water, GOT and sample, the first reading after about 3 min, and the range of 30 to 350 mg/L in the pipetted solution, below it up to 1 mL of sample. Molar mass: OIV resolution OENO 30/2004. From memory: the 0.01 mL of L-malate dehydrogenase, the second reading after 5 to 10 min, the difference A2 - A1 less that of the blank, the identity of the absorptivities (6180, 6300 and 3400 L/(mol cm), as in the Russian standard for citric acid in juices, document 1200102279, section 8). The signal window is that range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>OIV-MA-AS313-11 (R2009), L-Äpfelsäure, enzymatische Methode, Abschnitte 3.3 bis 5 (französischer Text): Volumina von Puffer, NAD, Wasser, GOT und Probe, die erste Ablesung nach etwa 3 min und der Bereich von 30 bis 350 mg/L in der pipettierten Lösung, darunter bis zu 1 mL Probe. Molare Masse: OIV-Resolution OENO 30/2004. Aus dem Gedächtnis: die 0,01 mL L-Malat-Dehydrogenase, die zweite Ablesung nach 5 bis 10 min, die Differenz A2 − A1 abzüglich der des Blindwerts, dass die Extinktionskoeffizienten dieselben sind (6180, 6300 und 3400 L/(mol cm), wie in der russischen Norm für Citronensäure in Säften, Dokument 1200102279, Abschnitt 8). Das Messfenster ist jener Bereich als Extinktion bei 340 nm, nach eigener Rechnung. Gängige Praxis, ohne Quelle: die Grenzen der Wartezeiten um die genannten Zeiten, die größte Extinktion, die Annahmegrenzen, der Verlust des Standards, die übliche Zahl der Ansätze, der typische Bereich, Störungen, Probenvorbereitung und Warnhinweise, wo sie keine Quelle nennen.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the transaminase GOT pulls it over by taking the oxaloacetate away with L-glutamate. One NADH for each L-malate; the absorbance rises.</source>
            <translation>L-Malat-Dehydrogenase setzt L-Malat und NAD zu Oxalacetat und NADH um. Dieses Gleichgewicht liegt auf der Seite des Malats; die Transaminase GOT verschiebt es auf die andere, indem sie das Oxalacetat mit L-Glutamat abfängt. Ein NADH je L-Malat; die Extinktion steigt.</translation>
        </message>
        <message>
            <source>GOT suspension</source>
            <translation>GOT-Suspension</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (GOT)</source>
            <translation>Oxalacetat + L-Glutamat → L-Aspartat + 2-Oxoglutarat (GOT)</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate and citrate do not react.</source>
            <translation>Das Enzym setzt nur L-Malat um: D-Malat, Lactat, Tartrat und Citrat reagieren nicht.</translation>
        </message>
        <message>
            <source>Lactose (template)</source>
            <translation>Lactose (Vorlage)</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase first use up the free D-glucose (before A1). Beta-galactosidase then splits lactose, and one NADPH is formed for each D-glucose set free, one for each lactose. The phosphorylation takes the reaction to its end. The absorbance rises. Results are anhydrous lactose; times 360.31 / 342.30 gives the monohydrate.</source>
            <translation>Hexokinase und Glucose-6-phosphat-Dehydrogenase verbrauchen zuerst die freie D-Glucose (vor A1). Dann spaltet Beta-Galactosidase Lactose, und je freigesetzter D-Glucose entsteht ein NADPH, eines je Lactose. Die Phosphorylierung führt die Reaktion zu Ende. Die Extinktion steigt. Die Ergebnisse sind wasserfreie Lactose; mal 360,31 / 342,30 ergibt das Monohydrat.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with magnesium</source>
            <translation>Puffer pH 7,5 mit Magnesium</translation>
        </message>
        <message>
            <source>Beta-galactosidase suspension</source>
            <translation>Beta-Galactosidase-Suspension</translation>
        </message>
        <message>
            <source>Lactose, anhydrous</source>
            <translation>Lactose, wasserfrei</translation>
        </message>
        <message>
            <source>Lactose + H2O → D-galactose + D-glucose (beta-galactosidase)</source>
            <translation>Lactose + H2O → D-Galactose + D-Glucose (Beta-Galactosidase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each lactose.</source>
            <translation>Je Lactose entsteht ein NADPH.</translation>
        </message>
        <message>
            <source>Lactulose gives fructose instead of glucose and does not count; other beta-galactosides with glucose are taken slowly.</source>
            <translation>Lactulose liefert Fructose statt Glucose und zählt nicht; andere Beta-Galactoside mit Glucose werden langsam umgesetzt.</translation>
        </message>
        <message>
            <source>Much free D-glucose raises A1 and uses NADP up: dilute until A1 stays below 1, or remove the glucose first.</source>
            <translation>Viel freie D-Glucose erhöht A1 und verbraucht NADP: verdünnen, bis A1 unter 1 bleibt, oder die Glucose zuerst entfernen.</translation>
        </message>
        <message>
            <source>The enzyme splits a little sucrose or maltose where it is impure: try a solution of either.</source>
            <translation>Ist das Enzym unrein, spaltet es etwas Saccharose oder Maltose: mit je einer Lösung davon ausprobieren.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; whey is diluted 50 to 100 times.</source>
            <translation>Unverändert pipettieren oder mit Wasser in den Bereich der Methode verdünnen; Molke wird 50- bis 100-fach verdünnt.</translation>
        </message>
        <message>
            <source>Cream, cheese, chocolate: weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, clarify as a protein-rich sample, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Sahne, Käse, Schokolade: 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 20 min bei 60 °C extrahieren, abkühlen, klären wie eine proteinreiche Probe, auffüllen, 20 min in Eis stellen und kalt filtrieren: Das Fett bleibt zurück.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Dilute the filtrate into the range.</source>
            <translation>Milch und Milcherzeugnisse, 1 bis 10 g: mit etwa 60 mL Wasser in einen 100-mL-Messkolben überführen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, schütteln, filtrieren. Das Filtrat in den Bereich verdünnen.</translation>
        </message>
        <message>
            <source>Nitrate (template)</source>
            <translation>Nitrat (Vorlage)</translation>
        </message>
        <message>
            <source>Nitrate reductase reduces nitrate to nitrite with one NADPH for each nitrate; FAD helps. The reaction goes to its end by itself. The absorbance falls.</source>
            <translation>Nitrat-Reduktase reduziert Nitrat zu Nitrit, mit einem NADPH je Nitrat; FAD hilft dabei. Die Reaktion läuft von selbst bis zum Ende. Die Extinktion fällt.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with FAD</source>
            <translation>Puffer pH 7,5 mit FAD</translation>
        </message>
        <message>
            <source>NADPH solution</source>
            <translation>NADPH-Lösung</translation>
        </message>
        <message>
            <source>Nitrate reductase solution</source>
            <translation>Nitrat-Reduktase-Lösung</translation>
        </message>
        <message>
            <source>Nitrate</source>
            <translation>Nitrat</translation>
        </message>
        <message>
            <source>One NADPH used for each nitrate.</source>
            <translation>Je Nitrat wird ein NADPH verbraucht.</translation>
        </message>
        <message>
            <source>Nitrite does not react. Chlorate is reduced too.</source>
            <translation>Nitrit reagiert nicht. Chlorat wird ebenfalls reduziert.</translation>
        </message>
        <message>
            <source>The enzyme uses NADPH slowly without nitrate: run blanks in every series, read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>Das Enzym verbraucht NADPH langsam auch ohne Nitrat: in jedem Durchgang Blindwerte mitführen, in jedem Ansatz nach derselben Zeit ablesen oder als Ablesereihe ablesen und extrapolieren.</translation>
        </message>
        <message>
            <source>Glassware and filters rinsed with nitric acid or tap water hold nitrate.</source>
            <translation>Mit Salpetersäure oder Leitungswasser gespülte Glasgeräte und Filter enthalten Nitrat.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold nitrate. Throw the first millilitres away.</source>
            <translation>Zentrifugieren oder durch ein gewaschenes Filter filtrieren: Papier kann Nitrat enthalten. Die ersten Milliliter verwerfen.</translation>
        </message>
        <message>
            <source>Vegetables, meat: mince, weigh 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 80 °C for 15 min, which also stops the sample's own enzymes, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Gemüse, Fleisch: zerkleinern, 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 15 min bei 80 °C extrahieren, was auch die eigenen Enzyme der Probe inaktiviert, abkühlen, mit Wasser auffüllen und filtrieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Sucrose by difference after inversion (template)</source>
            <translation>Saccharose als Differenz nach Inversion (Vorlage)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: TCVN 10697:2015 (EN 12146:1996), sucrose in juices. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis außer den hier genannten. Enzyme und Stöchiometrie: TCVN 10697:2015 (EN 12146:1996), Saccharose in Säften. Molare Massen: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9. Extinktionskoeffizienten: russische Norm für Saccharose und Glucose in Lebensmitteln, Dokument 1200111376, Abschnitt 9; andere Listen geben 3500 bei 365 nm für NADPH an (aus dem Gedächtnis).</translation>
        </message>
        <message>
            <source>Beta-fructosidase splits sucrose into D-glucose and D-fructose at pH 4.6. The buffer of pH 7.6 then ends the inversion, and hexokinase and glucose-6-phosphate dehydrogenase form one NADPH for each D-glucose, that of the sucrose and that which was free. Sucrose is the difference from the free D-glucose, which the method D-glucose and D-fructose measures in the same sample, times 342.3 / 180.16. The absorbance rises.</source>
            <translation>Beta-Fructosidase spaltet Saccharose bei pH 4,6 in D-Glucose und D-Fructose. Der Puffer mit pH 7,6 beendet dann die Inversion, und Hexokinase und Glucose-6-phosphat-Dehydrogenase bilden ein NADPH je D-Glucose, der aus der Saccharose und der schon freien. Saccharose ist die Differenz zur freien D-Glucose, die die Methode D-Glucose und D-Fructose in derselben Probe misst, mal 342,3 / 180,16. Die Extinktion steigt.</translation>
        </message>
        <message>
            <source>Beta-fructosidase in buffer pH 4.6</source>
            <translation>Beta-Fructosidase in Puffer pH 4,6</translation>
        </message>
        <message>
            <source>D-glucose after inversion</source>
            <translation>D-Glucose nach Inversion</translation>
        </message>
        <message>
            <source>Sucrose</source>
            <translation>Saccharose</translation>
        </message>
        <message>
            <source>Sucrose + H2O → D-glucose + D-fructose (beta-fructosidase)</source>
            <translation>Saccharose + H2O → D-Glucose + D-Fructose (Beta-Fructosidase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose: one for each sucrose.</source>
            <translation>Je D-Glucose entsteht ein NADPH: eines je Saccharose.</translation>
        </message>
        <message>
            <source>Beta-fructosidase also splits raffinose, kestoses and short inulins; of these, kestoses and inulins that end in glucose set glucose free.</source>
            <translation>Beta-Fructosidase spaltet auch Raffinose, Kestosen und kurze Inuline; davon setzen Kestosen und Inuline, die auf Glucose enden, Glucose frei.</translation>
        </message>
        <message>
            <source>Much free D-glucose makes the difference uncertain: sucrose below 5 g/L beside much glucose cannot be measured accurately (EN 12146:1996).</source>
            <translation>Viel freie D-Glucose macht die Differenz unsicher: Saccharose unter 5 g/L neben viel Glucose lässt sich nicht genau messen (EN 12146:1996).</translation>
        </message>
        <message>
            <source>A sample of its own acid or buffer holds the pH away from 4.6: dilute or neutralise.</source>
            <translation>Eine Probe mit eigener Säure oder eigenem Puffer hält den pH-Wert von 4,6 fern: verdünnen oder neutralisieren.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; take the same dilution for the free D-glucose where both fit. Bring strongly acid juices to pH 4 to 7 at once: sucrose inverts in acid.</source>
            <translation>Unverändert pipettieren oder mit Wasser in den Bereich der Methode verdünnen; für die freie D-Glucose dieselbe Verdünnung nehmen, wo beides passt. Stark saure Säfte sofort auf pH 4 bis 7 bringen: Saccharose wird in Säure invertiert.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, without warming: sucrose inverts in warm acid. Filter.</source>
            <translation>In einem halb gefüllten Kolben rühren oder schütteln, bis kein Gas mehr kommt, ohne zu erwärmen: Saccharose wird in warmer Säure invertiert. Filtrieren.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min (acid fruit: neutralise first), cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Zerkleinern und mischen, 1 bis 5 g in einen 100-mL-Messkolben einwiegen, mit 60 mL Wasser 20 min bei 60 °C extrahieren (saures Obst: zuerst neutralisieren), abkühlen, mit Wasser auffüllen und filtrieren. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Total sulphite (template)</source>
            <translation>Gesamtsulfit (Vorlage)</translation>
        </message>
        <message>
            <source>Sulphite oxidase turns sulphite into sulphate and hydrogen peroxide; NADH peroxidase uses the peroxide up together with one NADH for each sulphite. The absorbance falls. Bound sulphite is set free by the alkaline buffer. The oxidation needs the oxygen dissolved in the tube, and both steps go to their end by themselves.</source>
            <translation>Sulfit-Oxidase setzt Sulfit zu Sulfat und Wasserstoffperoxid um; NADH-Peroxidase verbraucht das Peroxid zusammen mit einem NADH je Sulfit. Die Extinktion fällt. Gebundenes Sulfit wird durch den alkalischen Puffer freigesetzt. Die Oxidation braucht den im Ansatz gelösten Sauerstoff, und beide Schritte laufen von selbst bis zum Ende.</translation>
        </message>
        <message>
            <source>Buffer pH 8</source>
            <translation>Puffer pH 8</translation>
        </message>
        <message>
            <source>Total sulphite as SO2</source>
            <translation>Gesamtsulfit als SO2</translation>
        </message>
        <message>
            <source>Bound sulphite as SO2</source>
            <translation>Gebundenes Sulfit als SO2</translation>
        </message>
        <message>
            <source>Sulphite bound to carbonyl compounds reacts and counts (EN 1988-2:1998, scope).</source>
            <translation>An Carbonylverbindungen gebundenes Sulfit reagiert und zählt mit (EN 1988-2:1998, Anwendungsbereich).</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Dilute with water right before pipetting.</source>
            <translation>Aus einem vollen, verschlossenen Gefäß pipettieren, ohne Luft einzuschütteln. Unmittelbar vor dem Pipettieren mit Wasser verdünnen.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off.</source>
            <translation>Absitzen lassen oder in einem vollen, verschlossenen Röhrchen zentrifugieren; Saugfiltration zieht Schwefeldioxid ab.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few, or bring to pH 8 with sodium hydroxide first, then degas.</source>
            <translation>Weder erwärmen noch ansäuern und nicht schütteln: Schwefeldioxid entweicht mit dem Gas. Langsam in ein Becherglas gießen und in der Kälte sanft rühren, bis nur noch wenige Blasen kommen, oder zuerst mit Natronlauge auf pH 8 bringen, dann entgasen.</translation>
        </message>
        <message>
            <source>Shake 5 g with water at pH 8 in a closed 100 mL flask at 60 °C for 5 min, cool closed, make up, chill in ice and filter cold.</source>
            <translation>5 g mit Wasser bei pH 8 in einem verschlossenen 100-mL-Kolben 5 min bei 60 °C schütteln, verschlossen abkühlen, auffüllen, in Eis kühlen und kalt filtrieren.</translation>
        </message>
        <message>
            <source>Take 5 to 10 g: bring into a 100 mL volumetric flask with 60 mL of water, bring to pH 8, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, filter, use at once. Acid deproteinisation drives sulphur dioxide off.</source>
            <translation>5 bis 10 g nehmen: mit 60 mL Wasser in einen 100-mL-Messkolben überführen, auf pH 8 bringen, dann nacheinander, unter Mischen nach jeder Zugabe, 5 mL Kaliumhexacyanidoferrat(II)-Lösung (3,6 g des Trihydrats in 100 mL), 5 mL Zinksulfat-Lösung (7,2 g des Heptahydrats in 100 mL) und 10 mL Natronlauge, 0,1 mol/L, zugeben; auffüllen, filtrieren, sofort verwenden. Enteiweißung mit Säure treibt Schwefeldioxid aus.</translation>
        </message>
        <message>
            <source>Dried fruit, potato products, 1 to 5 g: mince in the cold, shake with 60 mL of water of pH 8 in a closed 100 mL flask at 60 °C for 15 min, cool closed, make up with water and filter through a covered funnel; use at once. Enter mass and extract volume with the sample.</source>
            <translation>Trockenfrüchte, Kartoffelerzeugnisse, 1 bis 5 g: in der Kälte zerkleinern, mit 60 mL Wasser von pH 8 in einem verschlossenen 100-mL-Kolben 15 min bei 60 °C schütteln, verschlossen abkühlen, mit Wasser auffüllen und durch einen abgedeckten Trichter filtrieren; sofort verwenden. Masse und Extraktvolumen bei der Probe eingeben.</translation>
        </message>
        <message>
            <source>Acetaldehyde + NAD⁺ + H2O → acetate + NADH + 2 H⁺ (aldehyde dehydrogenase)</source>
            <translation>Acetaldehyd + NAD⁺ + H2O → Acetat + NADH + 2 H⁺ (Aldehyd-Dehydrogenase)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ ⇌ oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-Malat + NAD⁺ ⇌ Oxalacetat + NADH + H⁺ (L-Malat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>Acetyl-CoA + oxaloacetate + H2O → citrate + CoA + H⁺ (citrate synthase)</source>
            <translation>Acetyl-CoA + Oxalacetat + H2O → Citrat + CoA + H⁺ (Citrat-Synthase)</translation>
        </message>
        <message>
            <source>NH4⁺ + 2-oxoglutarate + NADH + H⁺ → L-glutamate + NAD⁺ + H2O (glutamate dehydrogenase)</source>
            <translation>NH4⁺ + 2-Oxoglutarat + NADH + H⁺ → L-Glutamat + NAD⁺ + H2O (Glutamat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>Oxaloacetate + NADH + H⁺ → L-malate + NAD⁺ (L-malate dehydrogenase)</source>
            <translation>Oxalacetat + NADH + H⁺ → L-Malat + NAD⁺ (L-Malat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase), for oxaloacetate that has lost carbon dioxide</source>
            <translation>Pyruvat + NADH + H⁺ → L-Lactat + NAD⁺ (L-Lactat-Dehydrogenase), für Oxalacetat, das Kohlendioxid verloren hat</translation>
        </message>
        <message>
            <source>D-gluconate + ATP → 6-phosphogluconate + ADP + H⁺ (gluconate kinase)</source>
            <translation>D-Gluconat + ATP → 6-Phosphogluconat + ADP + H⁺ (Gluconat-Kinase)</translation>
        </message>
        <message>
            <source>6-Phosphogluconate + NADP⁺ → ribulose-5-phosphate + CO2 + NADPH (6-phosphogluconate dehydrogenase)</source>
            <translation>6-Phosphogluconat + NADP⁺ → Ribulose-5-phosphat + CO2 + NADPH (6-Phosphogluconat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>D-lactate + NAD⁺ → pyruvate + NADH + H⁺ (D-lactate dehydrogenase)</source>
            <translation>D-Lactat + NAD⁺ → Pyruvat + NADH + H⁺ (D-Lactat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>D-malate + NAD⁺ → pyruvate + CO2 + NADH (D-malate dehydrogenase, decarboxylating)</source>
            <translation>D-Malat + NAD⁺ → Pyruvat + CO2 + NADH (D-Malat-Dehydrogenase, decarboxylierend)</translation>
        </message>
        <message>
            <source>D-sorbitol + NAD⁺ → D-fructose + NADH + H⁺ (sorbitol dehydrogenase)</source>
            <translation>D-Sorbit + NAD⁺ → D-Fructose + NADH + H⁺ (Sorbit-Dehydrogenase)</translation>
        </message>
        <message>
            <source>NADH + INT⁺ → NAD⁺ + formazan (diaphorase)</source>
            <translation>NADH + INT⁺ → NAD⁺ + Formazan (Diaphorase)</translation>
        </message>
        <message>
            <source>Ethanol + NAD⁺ → acetaldehyde + NADH + H⁺ (alcohol dehydrogenase)</source>
            <translation>Ethanol + NAD⁺ → Acetaldehyd + NADH + H⁺ (Alkohol-Dehydrogenase)</translation>
        </message>
        <message>
            <source>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH peroxidase)</source>
            <translation>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH-Peroxidase)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-Glucose + ATP → Glucose-6-phosphat + ADP + H⁺ (Hexokinase)</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate + NADP⁺ + H2O → 6-phosphogluconate + NADPH + 2 H⁺ (glucose-6-phosphate dehydrogenase)</source>
            <translation>Glucose-6-phosphat + NADP⁺ + H2O → 6-Phosphogluconat + NADPH + 2 H⁺ (Glucose-6-phosphat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺; D-fructose + ATP → fructose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-Glucose + ATP → Glucose-6-phosphat + ADP + H⁺; D-Fructose + ATP → Fructose-6-phosphat + ADP + H⁺ (Hexokinase)</translation>
        </message>
        <message>
            <source>Glycerol + ATP → glycerol-3-phosphate + ADP + H⁺ (glycerol kinase)</source>
            <translation>Glycerin + ATP → Glycerin-3-phosphat + ADP + H⁺ (Glycerokinase)</translation>
        </message>
        <message>
            <source>ADP + phosphoenolpyruvate + H⁺ → ATP + pyruvate (pyruvate kinase)</source>
            <translation>ADP + Phosphoenolpyruvat + H⁺ → ATP + Pyruvat (Pyruvat-Kinase)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase)</source>
            <translation>Pyruvat + NADH + H⁺ → L-Lactat + NAD⁺ (L-Lactat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory.</source>
            <translation>Vorlage: die Volumina des eigenen Reagenzienlieferanten einsetzen. Gängige Praxis, ohne veröffentlichte Quelle; alle Werte aus dem Gedächtnis.</translation>
        </message>
        <message>
            <source>The absorptivity of L-ascorbate at 265 nm and pH 6 to 7 stands in lists from 14000 to 16500 L/(mol cm): calibrate against a standard of the day.</source>
            <translation>Der Extinktionskoeffizient von L-Ascorbat bei 265 nm und pH 6 bis 7 steht in Listen mit 14000 bis 16500 L/(mol cm): mit einem Standard des Tages kalibrieren.</translation>
        </message>
        <message>
            <source>L-glutamate + NAD⁺ + H2O → 2-oxoglutarate + NH4⁺ + NADH + H⁺ (glutamate dehydrogenase)</source>
            <translation>L-Glutamat + NAD⁺ + H2O → 2-Oxoglutarat + NH4⁺ + NADH + H⁺ (Glutamat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>L-lactate + NAD⁺ → pyruvate + NADH + H⁺ (L-lactate dehydrogenase)</source>
            <translation>L-Lactat + NAD⁺ → Pyruvat + NADH + H⁺ (L-Lactat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ → oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-Malat + NAD⁺ → Oxalacetat + NADH + H⁺ (L-Malat-Dehydrogenase)</translation>
        </message>
        <message>
            <source>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (nitrate reductase)</source>
            <translation>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (Nitrat-Reduktase)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::TextPlace</name>
        <message>
            <source>line %1, column %2</source>
            <translation>Zeile %1, Spalte %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::notebook</name>
        <message>
            <source>The tubes were not added, since one of them comes with readings or marks: add it as it is planned, and do the rest at the bench.</source>
            <translation>Die Ansätze wurden nicht hinzugefügt, da einer von ihnen mit Ablesungen oder Vermerken kommt: ihn wie geplant hinzufügen und das Übrige am Arbeitsplatz erledigen.</translation>
        </message>
        <message>
            <source>The tubes were not added: the plan tells of sample %1, which is not among the new ones.</source>
            <translation>Die Ansätze wurden nicht hinzugefügt: Der Plan nennt die Probe %1, die nicht unter den neuen ist.</translation>
        </message>
        <message>
            <source>The tubes were not added: %1: %2.</source>
            <translation>Die Ansätze wurden nicht hinzugefügt: %1: %2.</translation>
        </message>
        <message>
            <source>tubes %1</source>
            <translation>Ansätze %1</translation>
        </message>
        <message>
            <source>; samples %1</source>
            <translation>; Proben %1</translation>
        </message>
        <message>
            <source>Nothing was stored, since no tube is named: choose at least one.</source>
            <translation>Nichts wurde gespeichert, da kein Ansatz genannt ist: mindestens einen wählen.</translation>
        </message>
        <message>
            <source>The notebook has nothing of %1, so no archive of it was made; choose a year in which something was done.</source>
            <translation>Das Laborjournal enthält nichts aus %1, also wurde kein Archiv davon erstellt; ein Jahr wählen, in dem etwas getan wurde.</translation>
        </message>
        <message>
            <source>The archive did not come out whole and was taken away again; nothing was changed in the notebook %1: verify it, and see that the disk has room.</source>
            <translation>Das Archiv ist nicht vollständig geworden und wurde wieder entfernt; im Laborjournal %1 wurde nichts geändert: es verifizieren und für Platz auf dem Datenträger sorgen.</translation>
        </message>
        <message>
            <source>The disk failed at the end of the last step in the notebook %1, so it is not sure that it is kept: see that the disk is sound, open the notebook again, and look before doing the step again.</source>
            <translation>Der Datenträger hat am Ende des letzten Schritts im Laborjournal %1 versagt, es ist also nicht sicher, ob dieser erhalten ist: den Datenträger prüfen, das Laborjournal neu öffnen und nachsehen, bevor der Schritt wiederholt wird.</translation>
        </message>
        <message>
            <source>tube %1, %2</source>
            <translation>Ansatz %1, %2</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>der Lauf</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>in Arbeit</translation>
        </message>
        <message>
            <source>audit entry %1</source>
            <translation>Audit-Eintrag %1</translation>
        </message>
        <message>
            <source>is missing, but what it covers is there</source>
            <translation>fehlt, aber was er abdeckt, ist vorhanden</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>does not continue the entry before it</source>
            <translation>setzt den Eintrag davor nicht fort</translation>
        </message>
        <message>
            <source>is not as it was written</source>
            <translation>ist nicht so, wie er geschrieben wurde</translation>
        </message>
        <message>
            <source>covers a record it did not cover when it was written</source>
            <translation>deckt eine Aufzeichnung ab, die er beim Schreiben nicht abdeckte</translation>
        </message>
        <message>
            <source>is gone, but audit entry %1 covers it</source>
            <translation>ist verschwunden, aber Audit-Eintrag %1 deckt es ab</translation>
        </message>
        <message>
            <source>is covered by no audit entry</source>
            <translation>ist von keinem Audit-Eintrag abgedeckt</translation>
        </message>
        <message>
            <source>was changed since audit entry %1</source>
            <translation>wurde seit Audit-Eintrag %1 geändert</translation>
        </message>
        <message>
            <source>the audit trail</source>
            <translation>der Audit-Trail</translation>
        </message>
        <message>
            <source>Kept are the newest %1 backups, and the last one of each of the latest %2 days and %3 months that have one, and of every year.</source>
            <translation>Aufbewahrt werden die neuesten %1 Sicherungen, dazu die jeweils letzte der jüngsten %2 Tage und %3 Monate mit einer Sicherung und die letzte jedes Jahres.</translation>
        </message>
        <message>
            <source>No backup was made in %1; the notebook itself is whole and nothing of it is lost: see that the folder is there, may be written to and has room.</source>
            <translation>In %1 wurde keine Sicherung erstellt; das Laborjournal selbst ist unversehrt und nichts davon verloren: prüfen, ob der Ordner vorhanden ist, beschrieben werden darf und Platz hat.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; nothing was made from it.</source>
            <translation>Die Datei %1 ist kein Plateau-Laborjournal; nichts wurde daraus erstellt.</translation>
        </message>
        <message>
            <source>The backup %1 was written by a newer Plateau; nothing was made from it: use the newer program.</source>
            <translation>Die Sicherung %1 wurde von einem neueren Plateau geschrieben; nichts wurde daraus erstellt: das neuere Programm verwenden.</translation>
        </message>
        <message>
            <source>The folder could not be made.</source>
            <translation>Der Ordner konnte nicht angelegt werden.</translation>
        </message>
        <message>
            <source>Run %1 has no revision %2: choose one of 1 to %3.</source>
            <translation>Lauf %1 hat keine Revision %2: eine von 1 bis %3 wählen.</translation>
        </message>
        <message>
            <source>Nothing was stored: there is no run %1.</source>
            <translation>Nichts wurde gespeichert: Es gibt keinen Lauf %1.</translation>
        </message>
        <message>
            <source>%1, %2 %3: %4</source>
            <translation>%1, %2 %3: %4</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: %1</source>
            <translation>Die Einstellungen der Karte wurden nicht gespeichert: %1</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: there is no run %1.</source>
            <translation>Die Einstellungen der Karte wurden nicht gespeichert: Es gibt keinen Lauf %1.</translation>
        </message>
        <message>
            <source>The value was not left out, since that needs a reason: say why.</source>
            <translation>Der Wert wurde nicht ausgenommen, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is left out already.</source>
            <translation>Nichts wurde gespeichert: Der Wert von Lauf %1 ist bereits ausgenommen.</translation>
        </message>
        <message>
            <source>The value was not taken back, since that needs a reason: say why.</source>
            <translation>Der Wert wurde nicht wieder aufgenommen, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is not left out.</source>
            <translation>Nichts wurde gespeichert: Der Wert von Lauf %1 ist nicht ausgenommen.</translation>
        </message>
        <message>
            <source>The settings of a chart in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Die Einstellungen einer Karte im Laborjournal sind beschädigt; auf die letzte Sicherung zurückgreifen oder sie neu speichern.</translation>
        </message>
        <message>
            <source>the file</source>
            <translation>die Datei</translation>
        </message>
        <message>
            <source>names a row of %1 that is not there</source>
            <translation>nennt eine Zeile von %1, die nicht vorhanden ist</translation>
        </message>
        <message>
            <source>is missing from the schema</source>
            <translation>fehlt im Schema</translation>
        </message>
        <message>
            <source>is not as this program makes it</source>
            <translation>ist nicht so, wie dieses Programm es anlegt</translation>
        </message>
        <message>
            <source>does not belong in a notebook</source>
            <translation>gehört nicht in ein Laborjournal</translation>
        </message>
        <message>
            <source>the schema</source>
            <translation>das Schema</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 did not come out whole and was taken away again; see that the disk is sound and has room.</source>
            <translation>Die Kopie des Laborjournals %1 ist nicht vollständig geworden und wurde wieder entfernt; prüfen, ob der Datenträger in Ordnung ist und Platz hat.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing was made from it: choose another backup.</source>
            <translation>Das Laborjournal %1 ist beschädigt (%2: %3); nichts wurde daraus erstellt: eine andere Sicherung wählen.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened in the way that keeps its records safe; nothing was stored: see that the program's SQLite is the one it was built with.</source>
            <translation>Das Laborjournal %1 konnte nicht so geöffnet werden, dass seine Aufzeichnungen geschützt bleiben; nichts wurde gespeichert: prüfen, ob SQLite des Programms dasjenige ist, mit dem es gebaut wurde.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>Über Lauf %1 wurde nicht entschieden: Hier entscheidet ein Bewerter oder die Laborleitung, und %2 hat die Rolle Analytiker.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: nobody reviews their own run here, and %2 worked on it; ask somebody else.</source>
            <translation>Über Lauf %1 wurde nicht entschieden: Hier bewertet niemand den eigenen Lauf, und %2 hat daran gearbeitet; jemand anderen darum bitten.</translation>
        </message>
        <message>
            <source>The run was not rejected, since that needs a reason: say why.</source>
            <translation>Der Lauf wurde nicht verworfen, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The run was not accepted: not everything in it passed, so accepting it needs a reason.</source>
            <translation>Der Lauf wurde nicht angenommen: Nicht alles darin ist bestanden, die Annahme braucht also einen Grund.</translation>
        </message>
        <message>
            <source>The run was not accepted: its reason is blank; leave it out or say why.</source>
            <translation>Der Lauf wurde nicht angenommen: Der Grund ist leer; weglassen oder angeben, warum.</translation>
        </message>
        <message>
            <source>The run was not reopened, since that needs a reason: say why.</source>
            <translation>Der Lauf wurde nicht wieder geöffnet, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>Run %1 is on the bench already; nothing was stored.</source>
            <translation>Lauf %1 ist bereits in Arbeit; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Run %1 was not reopened: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>Lauf %1 wurde nicht wieder geöffnet: Hier entscheidet ein Bewerter oder die Laborleitung, und %2 hat die Rolle Analytiker.</translation>
        </message>
        <message>
            <source>Run %1 is accepted and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>Lauf %1 ist angenommen und lässt keine Änderung zu; nichts wurde gespeichert: zuerst mit einem Grund wieder öffnen.</translation>
        </message>
        <message>
            <source>Run %1 is rejected and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>Lauf %1 ist verworfen und lässt keine Änderung zu; nichts wurde gespeichert: zuerst mit einem Grund wieder öffnen.</translation>
        </message>
        <message>
            <source>There is no room left for the notebook %1; nothing of this step was stored: make room on the disk and do it again.</source>
            <translation>Für das Laborjournal %1 ist kein Platz mehr; nichts von diesem Schritt wurde gespeichert: Platz auf dem Datenträger schaffen und den Schritt wiederholen.</translation>
        </message>
        <message>
            <source>The notebook %1 was left in the middle of a step and has to be opened for writing once, so that the half step is taken back.</source>
            <translation>Das Laborjournal %1 blieb mitten in einem Schritt stehen und muss einmal zum Schreiben geöffnet werden, damit der halbe Schritt zurückgenommen wird.</translation>
        </message>
        <message>
            <source>The notebook %1 may only be read; nothing was stored: allow writing to the file and its folder, or work on a copy.</source>
            <translation>Das Laborjournal %1 darf nur gelesen werden; nichts wurde gespeichert: das Schreiben in die Datei und ihren Ordner erlauben oder mit einer Kopie arbeiten.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened; nothing was stored: see that its folder is there and may be written to.</source>
            <translation>Das Laborjournal %1 konnte nicht geöffnet werden; nichts wurde gespeichert: prüfen, ob sein Ordner vorhanden ist und beschrieben werden darf.</translation>
        </message>
        <message>
            <source>The computer has no memory left to work on the notebook %1; nothing of this step was stored: close other programs and do it again.</source>
            <translation>Der Rechner hat keinen Speicher mehr, um am Laborjournal %1 zu arbeiten; nichts von diesem Schritt wurde gespeichert: andere Programme schließen und den Schritt wiederholen.</translation>
        </message>
        <message>
            <source>The disk did not take what was written to the notebook %1; nothing of this step was stored: see that the disk is there, sound and not full.</source>
            <translation>Der Datenträger nahm nicht an, was in das Laborjournal %1 geschrieben wurde; nichts von diesem Schritt wurde gespeichert: prüfen, ob der Datenträger vorhanden, in Ordnung und nicht voll ist.</translation>
        </message>
        <message>
            <source>The notebook %1 is in use by another program; nothing was stored: close it there first.</source>
            <translation>Das Laborjournal %1 wird von einem anderen Programm verwendet; nichts wurde gespeichert: dort zuerst schließen.</translation>
        </message>
        <message>
            <source>A rule of the notebook %1 forbids this; nothing was stored.</source>
            <translation>Eine Regel des Laborjournals %1 verbietet das; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; it was left as it is.</source>
            <translation>Die Datei %1 ist kein Plateau-Laborjournal; sie blieb unverändert.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged; nothing was stored: go back to the latest backup and keep this file for a closer look.</source>
            <translation>Das Laborjournal %1 ist beschädigt; nichts wurde gespeichert: auf die letzte Sicherung zurückgreifen und diese Datei für eine nähere Untersuchung aufbewahren.</translation>
        </message>
        <message>
            <source>The item was not stored: %1 %2.</source>
            <translation>Das Gerät wurde nicht gespeichert: %1 %2.</translation>
        </message>
        <message>
            <source>The item was not stored: there is a %1 of the name %2 already; give this one another.</source>
            <translation>Das Gerät wurde nicht gespeichert: In der Art „%1“ gibt es bereits den Namen %2; diesem einen anderen geben.</translation>
        </message>
        <message>
            <source>The notebook holds no item number %1; nothing was stored: choose one from its list of equipment.</source>
            <translation>Das Laborjournal enthält kein Gerät Nummer %1; nichts wurde gespeichert: eines aus seiner Geräteliste wählen.</translation>
        </message>
        <message>
            <source>The item stays as it was, since a change needs a reason: say why.</source>
            <translation>Das Gerät bleibt, wie es war, da eine Änderung einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The item %1 reads like this already; nothing was stored.</source>
            <translation>Das Gerät %1 ist bereits so eingetragen; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The item %1 stays a %2; add another one for what is not.</source>
            <translation>Das Gerät %1 behält die Art „%2“; für eine andere Art ein weiteres hinzufügen.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 is out of use; take it into use first.</source>
            <translation>Die Prüfung wurde nicht gespeichert: %1 ist außer Gebrauch; zuerst in Gebrauch nehmen.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 %2.</source>
            <translation>Die Prüfung wurde nicht gespeichert: %1 %2.</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1: %2, %3</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>nicht bestanden</translation>
        </message>
        <message>
            <source>The check counts as before, since taking it back needs a reason: say why.</source>
            <translation>Die Prüfung zählt wie bisher, da das Zurücknehmen einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The check %1 was taken back already; nothing was stored.</source>
            <translation>Die Prüfung %1 wurde bereits zurückgenommen; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The notebook holds no check number %1; nothing was stored: choose one from the item's list.</source>
            <translation>Das Laborjournal enthält keine Prüfung Nummer %1; nichts wurde gespeichert: eine aus der Liste des Geräts wählen.</translation>
        </message>
        <message>
            <source>The notebook is damaged: its book of equipment does not hold together; go back to the latest backup.</source>
            <translation>Das Laborjournal ist beschädigt: Sein Gerätebuch ist nicht in sich stimmig; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>The evaluation of run %1 cannot be read, so nothing was exported; have plateau verify list what is wrong with the notebook.</source>
            <translation>Die Auswertung von Lauf %1 ist nicht lesbar, also wurde nichts exportiert; mit plateau verify auflisten lassen, was am Laborjournal falsch ist.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was exported: see that its folder may be written to and has room.</source>
            <translation>Die Datei %1 konnte nicht geschrieben werden; nichts wurde exportiert: prüfen, ob ihr Ordner beschrieben werden darf und Platz hat.</translation>
        </message>
        <message>
            <source>The file %1 of the export cannot be read; nothing was imported: see that the folder is whole.</source>
            <translation>Die Datei %1 des Exports ist nicht lesbar; nichts wurde importiert: prüfen, ob der Ordner vollständig ist.</translation>
        </message>
        <message>
            <source>There is something in %1 already and it was left as it is; nothing was exported: choose the name of a new folder.</source>
            <translation>In %1 ist bereits etwas und blieb unverändert; nichts wurde exportiert: den Namen eines neuen Ordners wählen.</translation>
        </message>
        <message>
            <source>The folder %1 cannot be made, since the one it is to be in is not there; nothing was exported: make that one or choose another.</source>
            <translation>Der Ordner %1 kann nicht angelegt werden, da der übergeordnete fehlt; nichts wurde exportiert: diesen anlegen oder einen anderen wählen.</translation>
        </message>
        <message>
            <source>The folder %1 could not be made.</source>
            <translation>Der Ordner %1 konnte nicht angelegt werden.</translation>
        </message>
        <message>
            <source>Nothing was exported to %1; the notebook itself is whole and nothing of it is lost: see that the folder may be written to and has room.</source>
            <translation>Nichts wurde nach %1 exportiert; das Laborjournal selbst ist unversehrt und nichts davon verloren: prüfen, ob der Ordner beschrieben werden darf und Platz hat.</translation>
        </message>
        <message>
            <source>The file %1 is not the manifest of an export of a notebook; nothing was imported: choose the folder that the export made.</source>
            <translation>Die Datei %1 ist kein Manifest eines Laborjournal-Exports; nichts wurde importiert: den Ordner wählen, den der Export angelegt hat.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>Die Datei %1 konnte nicht geschrieben werden; nichts wurde gespeichert: prüfen, ob ihr Ordner vorhanden ist, beschrieben werden darf und Platz hat.</translation>
        </message>
        <message>
            <source>The file %1 could not be made; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>Die Datei %1 konnte nicht angelegt werden; nichts wurde gespeichert: prüfen, ob ihr Ordner vorhanden ist, beschrieben werden darf und Platz hat.</translation>
        </message>
        <message>
            <source>There is a file %1 already and it was left as it is: choose another name.</source>
            <translation>Es gibt bereits eine Datei %1; sie blieb unverändert: einen anderen Namen wählen.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be made, since its folder is not there: make the folder or choose another.</source>
            <translation>Das Laborjournal %1 kann nicht angelegt werden, da sein Ordner fehlt: den Ordner anlegen oder einen anderen wählen.</translation>
        </message>
        <message>
            <source>The file %1 is left over from another notebook of that name; move it away or choose another name.</source>
            <translation>Die Datei %1 ist von einem anderen Laborjournal dieses Namens übrig; sie verschieben oder einen anderen Namen wählen.</translation>
        </message>
        <message>
            <source>The file %1 is not as the export wrote it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>Die Datei %1 ist nicht so, wie der Export sie schrieb; nichts wurde importiert: den Export von dort nehmen, wo er unverändert aufbewahrt wurde.</translation>
        </message>
        <message>
            <source>There is no export of a notebook in %1; nothing was imported: choose the folder that the export made.</source>
            <translation>In %1 ist kein Export eines Laborjournals; nichts wurde importiert: den Ordner wählen, den der Export angelegt hat.</translation>
        </message>
        <message>
            <source>The export %1 is from a newer Plateau (its schema is number %2, this program knows up to %3); nothing was imported: use the newer program.</source>
            <translation>Der Export %1 stammt von einem neueren Plateau (sein Schema ist Nummer %2, dieses Programm kennt sie bis %3); nichts wurde importiert: das neuere Programm verwenden.</translation>
        </message>
        <message>
            <source>the head of its audit trail differs</source>
            <translation>der Kopf seines Audits ist ein anderer</translation>
        </message>
        <message>
            <source>The export %1 does not give a sound notebook (%2); nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>Der Export %1 ergibt kein unversehrtes Laborjournal (%2); nichts wurde importiert: den Export von dort nehmen, wo er unverändert aufbewahrt wurde.</translation>
        </message>
        <message>
            <source>The file %1 is not a table as an export writes it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>Die Datei %1 ist keine Tabelle, wie ein Export sie schreibt; nichts wurde importiert: den Export von dort nehmen, wo er unverändert aufbewahrt wurde.</translation>
        </message>
        <message>
            <source>Run %1 was changed from outside the program (%2 %3); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>Lauf %1 wurde von außerhalb des Programms geändert (%2 %3); nichts wurde gespeichert: das Laborjournal verifizieren lassen und auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, Charge %2</translation>
        </message>
        <message>
            <source>the reagent</source>
            <translation>das Reagenz</translation>
        </message>
        <message>
            <source>the lot</source>
            <translation>die Charge</translation>
        </message>
        <message>
            <source>The lot was not stored: %1.</source>
            <translation>Die Charge wurde nicht gespeichert: %1.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its last good day is not a real date.</source>
            <translation>Die Charge %1 wurde nicht gespeichert: Ihr letzter Verwendungstag ist kein gültiges Datum.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: once opened it keeps for 1 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>Die Charge %1 wurde nicht gespeichert: Geöffnet hält sie 1 bis %2 Tage, nicht %3; weglassen, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a volume is more than 0 and at most %2 mL, not %3.</source>
            <translation>Für die Charge %1 wurde nichts gespeichert: Ein Volumen ist größer als 0 und höchstens %2 mL, nicht %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 has %2 mL left, less than the %3 mL taken; correct what is left first, if that is wrong.</source>
            <translation>Nichts wurde gespeichert: Von der Charge %1 sind %2 mL übrig, weniger als die entnommenen %3 mL; zuerst den Rest berichtigen, falls er falsch ist.</translation>
        </message>
        <message>
            <source>The lot keeps its label, since another needs a reason: say why.</source>
            <translation>Die Charge behält ihr Etikett, da ein anderes einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The lot %1 has this label already; nothing was stored.</source>
            <translation>Die Charge %1 hat dieses Etikett bereits; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The lot %1 was opened on %2 already; nothing was stored.</source>
            <translation>Die Charge %1 wurde bereits am %2 geöffnet; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The lot %1 is not noted as opened: the day must be a real date that is not in the future.</source>
            <translation>Die Charge %1 ist nicht als geöffnet vermerkt: Der Tag muss ein gültiges Datum sein, das nicht in der Zukunft liegt.</translation>
        </message>
        <message>
            <source>Nothing was stored: the note is blank; leave it out or say what for.</source>
            <translation>Nichts wurde gespeichert: Die Bemerkung ist leer; weglassen oder angeben, wofür.</translation>
        </message>
        <message>
            <source>Nothing was discarded, since that needs a reason: say why.</source>
            <translation>Nichts wurde entsorgt, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The lot was not corrected, since that needs a reason: say why.</source>
            <translation>Die Charge wurde nicht berichtigt, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The lot %1 was not corrected: what is found in it must lie between 0 and %2 mL, not %3.</source>
            <translation>Die Charge %1 wurde nicht berichtigt: Was darin gefunden wird, muss zwischen 0 und %2 mL liegen, nicht %3.</translation>
        </message>
        <message>
            <source>The lot %1 has %2 mL left already; nothing was stored.</source>
            <translation>Von der Charge %1 sind bereits %2 mL übrig; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The notebook holds no lot number %1; nothing was stored: choose one from its list of lots.</source>
            <translation>Das Laborjournal enthält keine Charge Nummer %1; nichts wurde gespeichert: eine aus seiner Chargenliste wählen.</translation>
        </message>
        <message>
            <source>version %1, %2</source>
            <translation>Version %1, %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 methods with the id %2 are in use: %3. Put the whole method here in place of its id, or retire all but one of them</source>
            <translation>%1 Methoden mit der Kennung %2 sind in Gebrauch: %3. Hier die ganze Methode anstelle ihrer Kennung einsetzen oder alle bis auf eine deaktivieren</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>there is no method %1, neither shipped nor in the notebook; correct the id, put the whole method here in place of it, or import the method first</source>
            <translation>es gibt keine Methode %1, weder mitgeliefert noch im Laborjournal; die Kennung berichtigen, hier die ganze Methode an ihrer Stelle einsetzen oder die Methode zuerst importieren</translation>
        </message>
        <message>
            <source>the method %1 is not in use; put the whole method here in place of its id, or bring the method into use again</source>
            <translation>die Methode %1 ist nicht in Gebrauch; hier die ganze Methode anstelle ihrer Kennung einsetzen oder die Methode wieder in Gebrauch nehmen</translation>
        </message>
        <message>
            <source>shipped with the program</source>
            <translation>mit dem Programm geliefert</translation>
        </message>
        <message>
            <source>saved by %1 on %2</source>
            <translation>gespeichert von %1 am %2</translation>
        </message>
        <message>
            <source>imported from %1 on %2</source>
            <translation>importiert aus %1 am %2</translation>
        </message>
        <message>
            <source>on record with its runs</source>
            <translation>mit ihren Läufen verzeichnet</translation>
        </message>
        <message>
            <source>shipped with an earlier program</source>
            <translation>mit einem früheren Programm geliefert</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>Version %1</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already and is retired; reinstate it to use it.</source>
            <translation>Nichts wurde gespeichert: %1 hat diesen Inhalt bereits und ist deaktiviert; zum Verwenden reaktivieren.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already; a newer version is used for new runs.</source>
            <translation>Nichts wurde gespeichert: %1 hat diesen Inhalt bereits; für neue Läufe wird eine neuere Version verwendet.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already.</source>
            <translation>Nichts wurde gespeichert: %1 hat diesen Inhalt bereits.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from the one of that id and version that is %2: they differ in %3.</source>
            <translation>%1 ist gespeichert und wird getrennt geführt von der Methode mit dieser Kennung und Version, die es schon gibt (%2): Sie unterscheiden sich in %3.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from %2 others of that id and version: from the one that is %3 it differs in %4.</source>
            <translation>%1 ist gespeichert und wird getrennt geführt von %2 anderen mit dieser Kennung und Version: Von einer davon (%3) unterscheidet sie sich in %4.</translation>
        </message>
        <message>
            <source>%1, is stored.</source>
            <translation>%1 ist gespeichert.</translation>
        </message>
        <message>
            <source>%1, is stored; a newer version is used for new runs.</source>
            <translation>%1 ist gespeichert; für neue Läufe wird eine neuere Version verwendet.</translation>
        </message>
        <message>
            <source>%1 has no version left to give; nothing was stored: give the method another id.</source>
            <translation>%1 hat keine Version mehr zu vergeben; nichts wurde gespeichert: der Methode eine andere Kennung geben.</translation>
        </message>
        <message>
            <source>%1, is saved.</source>
            <translation>%1 ist gespeichert.</translation>
        </message>
        <message>
            <source>%1, is retired already; nothing was stored.</source>
            <translation>%1 ist bereits deaktiviert; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>%1, is not retired; nothing was stored.</source>
            <translation>%1 ist nicht deaktiviert; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The method in row %1 of the notebook is damaged, so its runs cannot be worked out; go back to the latest backup.</source>
            <translation>Die Methode in Zeile %1 des Laborjournals ist beschädigt, ihre Läufe lassen sich also nicht berechnen; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>It would not have been sound afterwards.</source>
            <translation>Es wäre danach nicht unversehrt gewesen.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be brought to schema %2 (%3) and is as it was before that step; see that the disk has room, and keep the copy made before.</source>
            <translation>Das Laborjournal %1 konnte nicht auf Schema %2 gebracht werden (%3) und ist wie vor diesem Schritt; für Platz auf dem Datenträger sorgen und die zuvor erstellte Kopie aufbewahren.</translation>
        </message>
        <message>
            <source>Nothing was stored: a time in it is not one that exists (in the hour the clocks go forward, say); give a time with its offset from UTC.</source>
            <translation>Nichts wurde gespeichert: Eine Zeit darin gibt es nicht (etwa in der Stunde, in der die Uhren vorgestellt werden); eine Zeit mit ihrem UTC-Versatz angeben.</translation>
        </message>
        <message>
            <source>The correction was not stored, since it needs a reason: say why the reading is replaced.</source>
            <translation>Die Korrektur wurde nicht gespeichert, da sie einen Grund braucht: angeben, warum die Ablesung ersetzt wird.</translation>
        </message>
        <message>
            <source>The method was not stored: %1: %2.</source>
            <translation>Die Methode wurde nicht gespeichert: %1: %2.</translation>
        </message>
        <message>
            <source>The run was not stored: %1: %2.</source>
            <translation>Der Lauf wurde nicht gespeichert: %1: %2.</translation>
        </message>
        <message>
            <source>The plan was not stored: %1: %2.</source>
            <translation>Der Plan wurde nicht gespeichert: %1: %2.</translation>
        </message>
        <message>
            <source>Nothing was stored: a clock that was set by 0 s was not set.</source>
            <translation>Nichts wurde gespeichert: Eine um 0 s gestellte Uhr wurde nicht gestellt.</translation>
        </message>
        <message>
            <source>The limits were not stored: %1: %2.</source>
            <translation>Die Grenzwerte wurden nicht gespeichert: %1: %2.</translation>
        </message>
        <message>
            <source>The limits were not stored, since that needs a reason: say why.</source>
            <translation>Die Grenzwerte wurden nicht gespeichert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The laboratory's settings were not stored: %1: %2.</source>
            <translation>Die Laboreinstellungen wurden nicht gespeichert: %1: %2.</translation>
        </message>
        <message>
            <source>The method was not stored: its note is blank; leave it out or say what changed.</source>
            <translation>Die Methode wurde nicht gespeichert: Ihre Bemerkung ist leer; weglassen oder angeben, was sich geändert hat.</translation>
        </message>
        <message>
            <source>The method was not retired: %1: %2.</source>
            <translation>Die Methode wurde nicht deaktiviert: %1: %2.</translation>
        </message>
        <message>
            <source>The method was not retired, since that needs a reason: say why.</source>
            <translation>Die Methode wurde nicht deaktiviert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The method was not reinstated, since that needs a reason: say why.</source>
            <translation>Die Methode wurde nicht reaktiviert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>There is no notebook %1; see that the name is right.</source>
            <translation>Es gibt kein Laborjournal %1; prüfen, ob der Name stimmt.</translation>
        </message>
        <message>
            <source>%1 is not a file, so it cannot be a notebook.</source>
            <translation>%1 ist keine Datei und kann daher kein Laborjournal sein.</translation>
        </message>
        <message>
            <source>The notebook %1 was written by a newer Plateau (its schema is number %2, this program knows up to %3); it was left as it is: open it with the newer program.</source>
            <translation>Das Laborjournal %1 wurde von einem neueren Plateau geschrieben (sein Schema ist Nummer %2, dieses Programm kennt sie bis %3); es blieb unverändert: mit dem neueren Programm öffnen.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged: it states no schema; go back to the latest backup.</source>
            <translation>Das Laborjournal %1 ist beschädigt: Es gibt kein Schema an; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing is written to it: go back to the latest backup, and have plateau verify list all that is wrong with this file.</source>
            <translation>Das Laborjournal %1 ist beschädigt (%2: %3); nichts wird hineingeschrieben: auf die letzte Sicherung zurückgreifen und mit plateau verify alles auflisten lassen, was an dieser Datei falsch ist.</translation>
        </message>
        <message>
            <source>The notebook %1 is of an older schema: open it in the window once, which brings it up to date after making a copy.</source>
            <translation>Das Laborjournal %1 hat ein älteres Schema: einmal im Fenster öffnen, das bringt es nach dem Erstellen einer Kopie auf den neuesten Stand.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be made; nothing was stored: see that the disk is sound and has room.</source>
            <translation>Das Laborjournal %1 konnte nicht angelegt werden; nichts wurde gespeichert: prüfen, ob der Datenträger in Ordnung ist und Platz hat.</translation>
        </message>
        <message>
            <source>The notebook %1 is open for reading only; nothing was stored.</source>
            <translation>Das Laborjournal %1 ist nur zum Lesen geöffnet; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Passphrases cannot be used, since the library for them does not start; nothing was stored: reinstall libsodium.</source>
            <translation>Passphrasen sind nicht verwendbar, da die Bibliothek dafür nicht startet; nichts wurde gespeichert: libsodium neu installieren.</translation>
        </message>
        <message>
            <source>The passphrase was not stored, since there is not enough memory: close other programs and try again.</source>
            <translation>Die Passphrase wurde nicht gespeichert, da nicht genug Speicher vorhanden ist: andere Programme schließen und erneut versuchen.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the passphrase cannot be used: %1.</source>
            <translation>Nichts wurde gespeichert, da die Passphrase nicht verwendbar ist: %1.</translation>
        </message>
        <message>
            <source>Nothing was stored, since somebody has or had the name %1: give this person another one, with a second given name, say.</source>
            <translation>Nichts wurde gespeichert, da jemand den Namen %1 trägt oder trug: dieser Person einen anderen geben, etwa mit einem zweiten Vornamen.</translation>
        </message>
        <message>
            <source>The list of people was changed from outside the program (%1); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>Die Personenliste wurde von außerhalb des Programms geändert (%1); nichts wurde gespeichert: das Laborjournal verifizieren lassen und auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>it is blank; several words that only you would put together make a good one</source>
            <translation>sie ist leer; mehrere Wörter, die nur eine Person so zusammenstellen würde, ergeben eine gute</translation>
        </message>
        <message>
            <source>it has %1 characters; at least %2 are needed, such as several words make</source>
            <translation>sie hat %1 Zeichen; mindestens %2 sind nötig, wie mehrere Wörter sie ergeben</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>sie hat %1 Zeichen; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>People are set up already; nothing was stored: a head adds further ones.</source>
            <translation>Personen sind bereits eingerichtet; nichts wurde gespeichert: Weitere fügt die Laborleitung hinzu.</translation>
        </message>
        <message>
            <source>%1 has this name and this role already; nothing was stored.</source>
            <translation>%1 hat diesen Namen und diese Rolle bereits; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>%1 stays head, since there is no other one; nothing was stored: make somebody else a head first.</source>
            <translation>%1 behält die Rolle Laborleitung, da niemand sonst sie hat; nichts wurde gespeichert: zuerst jemand anderem diese Rolle geben.</translation>
        </message>
        <message>
            <source>The passphrase was not changed: only its owner or a head may, and %1 is neither.</source>
            <translation>Die Passphrase wurde nicht geändert: Das dürfen nur die Person selbst und die Laborleitung, und %1 ist weder das eine noch das andere.</translation>
        </message>
        <message>
            <source>The person was not retired, since that needs a reason: say why.</source>
            <translation>Die Person wurde nicht deaktiviert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>%1 is retired already; nothing was stored.</source>
            <translation>%1 ist bereits deaktiviert; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>%1 was not retired, since there is no other head; nothing was stored: make somebody else a head first.</source>
            <translation>%1 wurde nicht deaktiviert, da niemand sonst die Rolle Laborleitung hat; nichts wurde gespeichert: zuerst jemand anderem diese Rolle geben.</translation>
        </message>
        <message>
            <source>The person was not reinstated, since that needs a reason: say why.</source>
            <translation>Die Person wurde nicht reaktiviert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>%1 is not retired; nothing was stored.</source>
            <translation>%1 ist nicht deaktiviert; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Nobody by the name of %1 is set up; nothing was stored: choose somebody from the list, or have a head add them.</source>
            <translation>Keine Person mit dem Namen %1 ist eingerichtet; nichts wurde gespeichert: eine aus der Liste wählen oder von der Laborleitung hinzufügen lassen.</translation>
        </message>
        <message>
            <source>%1 is retired and signs nothing; nothing was stored: choose another person, or have a head reinstate them.</source>
            <translation>%1 ist deaktiviert und signiert nichts; nichts wurde gespeichert: eine andere Person wählen oder diese von der Laborleitung reaktivieren lassen.</translation>
        </message>
        <message>
            <source>Nothing was stored, since it needs the passphrase of %1: type it.</source>
            <translation>Nichts wurde gespeichert, da es die Passphrase von %1 braucht: eingeben.</translation>
        </message>
        <message>
            <source>This is not the passphrase of %1; nothing was stored except the attempt: type it again.</source>
            <translation>Das ist nicht die Passphrase von %1; außer dem Versuch wurde nichts gespeichert: erneut eingeben.</translation>
        </message>
        <message>
            <source>The passphrase was not tried, since the last %1 were wrong: wait %2 s, then type it again, or ask a head for another one.</source>
            <translation>Die Passphrase wurde nicht geprüft, da die letzten %1 falsch waren: %2 s warten, dann erneut eingeben oder von der Laborleitung eine andere setzen lassen.</translation>
        </message>
        <message>
            <source>Nothing was stored: only a head keeps the list of people, and %1 is not one.</source>
            <translation>Nichts wurde gespeichert: Nur die Laborleitung führt die Personenliste, und %1 gehört nicht dazu.</translation>
        </message>
        <message>
            <source>The notebook holds no person number %1; nothing was stored: choose one from its list.</source>
            <translation>Das Laborjournal enthält keine Person Nummer %1; nichts wurde gespeichert: eine aus seiner Liste wählen.</translation>
        </message>
        <message>
            <source>%1: tubes %2</source>
            <translation>%1: Ansätze %2</translation>
        </message>
        <message>
            <source>%1 of tube %2 is not ticked; nothing was stored.</source>
            <translation>%1 von Ansatz %2 ist nicht abgehakt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Tube %1 gets no %2%3; nothing was stored.</source>
            <translation>Ansatz %1 bekommt kein %2%3; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source> for a spike</source>
            <translation> als Aufstockung</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the volume that went in must lie between 0 and %2 mL, not %3.</source>
            <translation>Ansatz %1 wurde nicht abgehakt: Das zugegebene Volumen muss zwischen 0 und %2 mL liegen, nicht %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the pipette %2 cannot be used: %3.</source>
            <translation>Ansatz %1 wurde nicht abgehakt, da die Pipette %2 nicht verwendbar ist: %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the note cannot be used: %2.</source>
            <translation>Ansatz %1 wurde nicht abgehakt, da die Bemerkung nicht verwendbar ist: %2.</translation>
        </message>
        <message>
            <source>%1 of tube %2 is ticked already; nothing was stored.</source>
            <translation>%1 von Ansatz %2 ist bereits abgehakt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: what it gets there is a sample or a standard, which comes from no lot; leave the lot out.</source>
            <translation>Ansatz %1 wurde nicht abgehakt: Was er dort bekommt, ist eine Probe oder ein Standard und stammt aus keiner Charge; die Charge weglassen.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the lot %2 is of %3, not of %4; choose a lot of that reagent.</source>
            <translation>Ansatz %1 wurde nicht abgehakt: Die Charge %2 ist von %3, nicht von %4; eine Charge dieses Reagenzes wählen.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: %2.</source>
            <translation>Ansatz %1 wurde nicht abgehakt: %2.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt already; nothing was stored.</source>
            <translation>Ansatz %1 ist bereits als unbrauchbar vermerkt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Tube %1 is not marked as spoilt; nothing was stored.</source>
            <translation>Ansatz %1 ist nicht als unbrauchbar vermerkt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>Ansatz %1</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since that needs a reason: say why.</source>
            <translation>Der Ansatz wurde nicht als unbrauchbar vermerkt, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since the reason cannot be used: %1.</source>
            <translation>Der Ansatz wurde nicht als unbrauchbar vermerkt, da der Grund nicht verwendbar ist: %1.</translation>
        </message>
        <message>
            <source>The tube still counts as spoilt, since taking that back needs a reason: say why.</source>
            <translation>Der Ansatz gilt weiterhin als unbrauchbar, da das Zurücknehmen einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The plan was not stored: run %1, which it says to repeat, holds no sample %2; choose the run that does.</source>
            <translation>Der Plan wurde nicht gespeichert: Lauf %1, den er wiederholen soll, enthält keine Probe %2; den Lauf wählen, der sie enthält.</translation>
        </message>
        <message>
            <source>The reading was not stored: a keyed reading has no line it came in; name another origin or leave the line out.</source>
            <translation>Die Ablesung wurde nicht gespeichert: Eingegebenes hat keine Zeile, in der es kam; eine andere Herkunft nennen oder die Zeile weglassen.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the name of its source cannot be used: %1.</source>
            <translation>Die Ablesung wurde nicht gespeichert, da der Name ihrer Quelle nicht verwendbar ist: %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in cannot be kept: %1.</source>
            <translation>Die Ablesung wurde nicht gespeichert, da die Zeile, in der sie kam, nicht aufbewahrt werden kann: %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in has more than %1 characters: shorten it.</source>
            <translation>Die Ablesung wurde nicht gespeichert, da die Zeile, in der sie kam, mehr als %1 Zeichen hat: kürzen.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 to correct; nothing was stored: add it instead.</source>
            <translation>Ansatz %1 hat keine Ablesung %2, die zu korrigieren wäre; nichts wurde gespeichert: stattdessen hinzufügen.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3 is ticked there already, so what is read now is no longer part of that series.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht gespeichert: %3 ist dort bereits abgehakt, was jetzt abgelesen wird, gehört also nicht mehr zu dieser Ablesereihe.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when %3 went in, and a series counts its minutes from there.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht als weitere gespeichert: Es ist nicht bekannt, wann %3 zugegeben wurde, und eine Ablesereihe zählt ihre Minuten von dort an.</translation>
        </message>
        <message>
            <source>Reading %1 was not stored as one more: tick %3 of tube %2 first, since a series counts its minutes from there.</source>
            <translation>Ablesung %1 wurde nicht als weitere gespeichert: zuerst %3 von Ansatz %2 abhaken, da eine Ablesereihe ihre Minuten von dort an zählt.</translation>
        </message>
        <message>
            <source>Tube %1 has a reading %2 already; nothing was stored: correct it, with a reason.</source>
            <translation>Ansatz %1 hat bereits eine Ablesung %2; nichts wurde gespeichert: mit einem Grund korrigieren.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 yet; nothing was stored: add it first.</source>
            <translation>Ansatz %1 hat noch keine Ablesung %2; nichts wurde gespeichert: zuerst hinzufügen.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht gespeichert: %3.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since it needs a reason: say why.</source>
            <translation>Welches Ergebnis berichtet wird, wurde nicht gespeichert, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since none is named: choose one.</source>
            <translation>Welches Ergebnis berichtet wird, wurde nicht gespeichert, da keines genannt ist: eines wählen.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored: a reviewer or a head decides here, and %1 is an analyst.</source>
            <translation>Welches Ergebnis berichtet wird, wurde nicht gespeichert: Hier entscheidet ein Bewerter oder die Laborleitung, und %1 hat die Rolle Analytiker.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since one of them is only known to be below or above a bound: choose another rule.</source>
            <translation>Es gibt keinen Mittelwert der angenommenen Ergebnisse, da von einem nur bekannt ist, dass es unter oder über einer Schranke liegt: eine andere Regel wählen.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since they are not all in one unit: choose another rule.</source>
            <translation>Es gibt keinen Mittelwert der angenommenen Ergebnisse, da sie nicht alle dieselbe Einheit haben: eine andere Regel wählen.</translation>
        </message>
        <message>
            <source>The result that was named, of run %1 at revision %2, is no longer accepted: choose again.</source>
            <translation>Das genannte Ergebnis, von Lauf %1 in Revision %2, ist nicht mehr angenommen: neu wählen.</translation>
        </message>
        <message>
            <source>No result of this sample is accepted yet.</source>
            <translation>Von dieser Probe ist noch kein Ergebnis angenommen.</translation>
        </message>
        <message>
            <source>The evaluation that run %1 was decided on is damaged: have the notebook verified and go back to the latest backup.</source>
            <translation>Die Auswertung, nach der über Lauf %1 entschieden wurde, ist beschädigt: das Laborjournal verifizieren lassen und auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>The notebook holds no run %1: choose one from its list of runs.</source>
            <translation>Das Laborjournal enthält keinen Lauf %1: einen aus seiner Liste der Läufe wählen.</translation>
        </message>
        <message>
            <source>Run %1 has no tube %2; nothing was stored.</source>
            <translation>Lauf %1 hat keinen Ansatz %2; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 of a rejected run cannot be accepted; accept the run and reject the other samples.</source>
            <translation>Über den Lauf wurde nicht entschieden: Die Probe %1 eines verworfenen Laufs kann nicht angenommen werden; den Lauf annehmen und die anderen Proben verwerfen.</translation>
        </message>
        <message>
            <source>The run was not decided on, since rejecting the sample %1 needs a reason: say why.</source>
            <translation>Über den Lauf wurde nicht entschieden, da das Verwerfen der Probe %1 einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The run was not decided on: the reason for the sample %1 is blank; leave it out or say why.</source>
            <translation>Über den Lauf wurde nicht entschieden: Der Grund für die Probe %1 ist leer; weglassen oder angeben, warum.</translation>
        </message>
        <message>
            <source>The run was not decided on: there is advice on repeating the sample %1, but it is not to be repeated; leave the advice out.</source>
            <translation>Über den Lauf wurde nicht entschieden: Für die Probe %1 ist eine Empfehlung zur Wiederholung angegeben, sie soll aber nicht wiederholt werden; die Empfehlung weglassen.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 cannot be repeated as advised; give dilution steps from less to more volume, or how much sample to take.</source>
            <translation>Über den Lauf wurde nicht entschieden: Die Probe %1 kann nicht wie empfohlen wiederholt werden; Verdünnungsschritte von kleinerem zu größerem Volumen angeben oder das Probenvolumen.</translation>
        </message>
        <message>
            <source>The run was not decided on: it holds no sample %1; remove its decision.</source>
            <translation>Über den Lauf wurde nicht entschieden: Er enthält keine Probe %1; deren Entscheidung entfernen.</translation>
        </message>
        <message>
            <source>The run was not decided on: there are two decisions on the sample %1; remove one.</source>
            <translation>Über den Lauf wurde nicht entschieden: Über die Probe %1 ist zweimal entschieden; eine Entscheidung entfernen.</translation>
        </message>
        <message>
            <source>the search</source>
            <translation>die Suche</translation>
        </message>
        <message>
            <source>The sample %1 was not stored: %2: %3.</source>
            <translation>Die Probe %1 wurde nicht gespeichert: %2: %3.</translation>
        </message>
        <message>
            <source>The sample %1 was withdrawn; nothing was stored: register it again.</source>
            <translation>Die Probe %1 wurde zurückgezogen; nichts wurde gespeichert: neu anmelden.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no sample is named: name at least one.</source>
            <translation>Nichts wurde gespeichert, da keine Probe genannt ist: mindestens eine nennen.</translation>
        </message>
        <message>
            <source>The sample %1 keeps its id, since a run holds it by that; nothing was stored.</source>
            <translation>Die Probe %1 behält ihre Kennung, da ein Lauf sie darunter führt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The sample was not withdrawn, since that needs a reason: say why.</source>
            <translation>Die Probe wurde nicht zurückgezogen, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The repeat still waits, since doing without it needs a reason: say why.</source>
            <translation>Die Wiederholung wartet weiterhin, da der Verzicht darauf einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>Run %1 has no repeat of the sample %2 waiting; nothing was stored.</source>
            <translation>In Lauf %1 wartet keine Wiederholung der Probe %2; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The limits in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Die Grenzwerte im Laborjournal sind beschädigt; auf die letzte Sicherung zurückgreifen oder sie neu speichern.</translation>
        </message>
        <message>
            <source>The substance was not stored: %1 %2.</source>
            <translation>Die Substanz wurde nicht gespeichert: %1 %2.</translation>
        </message>
        <message>
            <source>The notebook holds no substance number %1; nothing was stored: choose one from its list.</source>
            <translation>Das Laborjournal enthält keine Substanz Nummer %1; nichts wurde gespeichert: eine aus seiner Liste wählen.</translation>
        </message>
        <message>
            <source>The notebook holds no preparation number %1; nothing was stored: choose one from its list of standards.</source>
            <translation>Das Laborjournal enthält keine Herstellung Nummer %1; nichts wurde gespeichert: eine aus seiner Liste der Standards wählen.</translation>
        </message>
        <message>
            <source>The substance stays as it was, since a change needs a reason: say why.</source>
            <translation>Die Substanz bleibt, wie sie war, da eine Änderung einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The substance %1 reads like this already; nothing was stored.</source>
            <translation>Die Substanz %1 ist bereits so eingetragen; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The standard was not stored: %1 %2.</source>
            <translation>Der Standard wurde nicht gespeichert: %1 %2.</translation>
        </message>
        <message>
            <source>The standard was not stored: the name %1 is taken by one made on %2; give this one another, since runs tell them apart by it.</source>
            <translation>Der Standard wurde nicht gespeichert: Der Name %1 gehört schon einem am %2 hergestellten; diesem einen anderen geben, da Läufe sie daran unterscheiden.</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>The standard was not thrown away, since that needs a reason: say why.</source>
            <translation>Der Standard wurde nicht entsorgt, da das einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>The standard %1 was thrown away already; nothing was stored.</source>
            <translation>Der Standard %1 wurde bereits entsorgt; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The notebook is damaged: a standard was made of a substance it does not hold; go back to the latest backup.</source>
            <translation>Das Laborjournal ist beschädigt: Ein Standard wurde aus einer Substanz hergestellt, die es nicht enthält; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>Nothing was stored: one of the numbers is not finite; give a number.</source>
            <translation>Nichts wurde gespeichert: Eine der Zahlen ist nicht endlich; eine Zahl angeben.</translation>
        </message>
        <message>
            <source>A text holds the character U+%1, which cannot be kept; nothing was stored: type the text again without it.</source>
            <translation>Ein Text enthält das Zeichen U+%1, das nicht aufbewahrt werden kann; nichts wurde gespeichert: den Text ohne dieses neu eingeben.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no person is named: say who does this.</source>
            <translation>Nichts wurde gespeichert, da keine Person genannt ist: angeben, wer das tut.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the name %1 cannot be used: %2.</source>
            <translation>Nichts wurde gespeichert, da der Name %1 nicht verwendbar ist: %2.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the reason cannot be used: %1.</source>
            <translation>Nichts wurde gespeichert, da der Grund nicht verwendbar ist: %1.</translation>
        </message>
        <message>
            <source>decision %1 on run %2</source>
            <translation>Entscheidung %1 über Lauf %2</translation>
        </message>
        <message>
            <source>run %1</source>
            <translation>Lauf %1</translation>
        </message>
        <message>
            <source>what was reviewed is not what is stored now</source>
            <translation>was bewertet wurde, ist nicht das jetzt Gespeicherte</translation>
        </message>
        <message>
            <source>evaluated again, it gives another result: %1 was %2, is %3</source>
            <translation>erneut ausgewertet, ergibt es ein anderes Ergebnis: %1 war %2, ist %3</translation>
        </message>
        <message>
            <source>the document</source>
            <translation>das Dokument</translation>
        </message>
        <message>
            <source>evaluated again, it gives another answer to whether it is acceptable</source>
            <translation>erneut ausgewertet, ergibt es eine andere Antwort darauf, ob es annehmbar ist</translation>
        </message>
        <message>
            <source> (decided with version %1, verified with %2)</source>
            <translation> (entschieden mit Version %1, verifiziert mit %2)</translation>
        </message>
        <message>
            <source>the list of runs</source>
            <translation>die Liste der Läufe</translation>
        </message>
        <message>
            <source>The notebook is damaged: it holds the word "%1" where none of its own words is; go back to the latest backup.</source>
            <translation>Das Laborjournal ist beschädigt: Es enthält das Wort „%1“, wo keines seiner eigenen Wörter steht; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>The notebook is damaged: details of a sample are gone; go back to the latest backup.</source>
            <translation>Das Laborjournal ist beschädigt: Angaben zu einer Probe sind verloren; auf die letzte Sicherung zurückgreifen.</translation>
        </message>
        <message>
            <source>The laboratory's settings in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Die Laboreinstellungen im Laborjournal sind beschädigt; auf die letzte Sicherung zurückgreifen oder sie neu speichern.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when the one before was read, so the two make no series.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht als weitere gespeichert: Der Zeitpunkt der vorigen ist nicht bekannt, die beiden ergeben also keine Ablesereihe.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: the one before was read before %3 was ticked, so the two make no series.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht als weitere gespeichert: Die vorige erfolgte, bevor %3 abgehakt wurde, die beiden ergeben also keine Ablesereihe.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: nothing was added before it, from which the minutes of a series could count.</source>
            <translation>Ablesung %1 von Ansatz %2 wurde nicht gespeichert: Davor wurde nichts zugegeben, von dem an die Minuten einer Ablesereihe zählen könnten.</translation>
        </message>
        <message>
            <source>The notebook %1 was removed, moved or replaced while it was open; nothing of this step was stored: put the file back where it was, or close the program and open the notebook where it is now.</source>
            <translation>Das Laborjournal %1 wurde entfernt, verschoben oder ersetzt, während es geöffnet war; nichts von diesem Schritt wurde gespeichert: die Datei dorthin zurücklegen, wo sie war, oder das Programm schließen und das Laborjournal dort öffnen, wo es jetzt ist.</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>on %1</source>
            <translation>am %1</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>in %1</translation>
        </message>
        <message>
            <source>aliquots: %1, of %2 each</source>
            <translation>Aliquote: %1, zu je %2</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>aus %1</translation>
        </message>
        <message>
            <source>from %1, keeps as stored: %2 days</source>
            <translation>aus %1, so gelagert haltbar: %2 Tage</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was opened on %2, so that this cannot have been on %3.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 wurde am %2 geöffnet, also kann dies nicht am %3 gewesen sein.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was dissolved on %2 already; correct what is left, if the volume is wrong.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 wurde schon am %2 gelöst; den Rest berichtigen, falls das Volumen falsch ist.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not in the book as dry; receive it as dry to note how it is dissolved.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 steht nicht als trocken im Buch; trocken einbuchen, um zu vermerken, wie sie gelöst wird.</translation>
        </message>
        <message>
            <source>%1, aliquot %2</source>
            <translation>%1, Aliquot %2</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is divided into 1 to %2 aliquots, not %3.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 wird in 1 bis %2 Aliquote geteilt, nicht in %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: say in what the lot %1 is dissolved.</source>
            <translation>Nichts wurde gespeichert: angeben, worin die Charge %1 gelöst wird.</translation>
        </message>
        <message>
            <source>as it was dissolved</source>
            <translation>wie gelöst</translation>
        </message>
        <message>
            <source>Nothing was stored: %1 is an aliquot itself and is not divided further.</source>
            <translation>Nichts wurde gespeichert: %1 ist selbst ein Aliquot und wird nicht weiter geteilt.</translation>
        </message>
        <message>
            <source>%1: %2 aliquots</source>
            <translation>%1: %2 Aliquote</translation>
        </message>
        <message>
            <source>The lot %1 is there already (%2); nothing was stored.</source>
            <translation>Die Charge %1 ist schon dort (%2); nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the note is blank: say what is to be kept.</source>
            <translation>Nichts wurde gespeichert, da die Bemerkung leer ist: angeben, was aufzubewahren ist.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: it keeps for 0 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>Für die Charge %1 wurde nichts gespeichert: Sie ist 0 bis %2 Tage haltbar, nicht %3; weglassen, wo nichts angegeben ist.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the day must be a real date that is not in the future.</source>
            <translation>Für die Charge %1 wurde nichts gespeichert: Der Tag muss ein gültiges Datum sein, das nicht in der Zukunft liegt.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is dry; note first in how much it was dissolved.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 ist trocken; zuerst vermerken, in wie viel sie gelöst wurde.</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>der Ort</translation>
        </message>
        <message>
            <source>Nothing was stored: %1.</source>
            <translation>Nichts wurde gespeichert: %1.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a place has %2 to %3 °C, not %4.</source>
            <translation>Für die Charge %1 wurde nichts gespeichert: Ein Ort hat %2 bis %3 °C, nicht %4.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the place cannot be at least %2 and at most %3 °C; give the lower one first.</source>
            <translation>Für die Charge %1 wurde nichts gespeichert: Der Ort kann nicht mindestens %2 und höchstens %3 °C haben; die niedrigere Temperatur zuerst angeben.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its mass is more than 0 and at most %2 mg, not %3; leave it out where the label says none.</source>
            <translation>Die Charge %1 wurde nicht gespeichert: Ihre Masse ist mehr als 0 und höchstens %2 mg, nicht %3; weglassen, wo das Etikett keine nennt.</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 is damaged (%2: %3), so the notebook itself may be as well; the copy was taken away: have plateau verify list all that is wrong, and keep the backups there are.</source>
            <translation>Die Kopie des Laborjournals %1 ist beschädigt (%2: %3), also womöglich auch das Laborjournal selbst; die Kopie wurde wieder entfernt: mit plateau verify alles auflisten lassen, was falsch ist, und die vorhandenen Sicherungen behalten.</translation>
        </message>
        <message>
            <source>its outcome cannot be worked out again from its numbers</source>
            <translation>ihr Ergebnis lässt sich aus ihren Zahlen nicht neu berechnen</translation>
        </message>
        <message>
            <source>it is stored as failed; worked out again from its numbers it is passed</source>
            <translation>sie ist als nicht bestanden gespeichert; aus ihren Zahlen neu berechnet ist sie bestanden</translation>
        </message>
        <message>
            <source>it is stored as passed; worked out again from its numbers it is failed: %1</source>
            <translation>sie ist als bestanden gespeichert; aus ihren Zahlen neu berechnet ist sie nicht bestanden: %1</translation>
        </message>
        <message>
            <source>%1 (stored with version %2, verified with %3)</source>
            <translation>%1 (gespeichert mit Version %2, verifiziert mit %3)</translation>
        </message>
        <message>
            <source>the book of equipment</source>
            <translation>das Gerätebuch</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>aus den Regelkarten ausgenommener Wert</translation>
        </message>
        <message>
            <source>settings of a control chart</source>
            <translation>Einstellungen einer Regelkarte</translation>
        </message>
        <message>
            <source>clock that was set</source>
            <translation>gestellte Uhr</translation>
        </message>
        <message>
            <source>decision</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>settings and limits of a decision</source>
            <translation>Einstellungen und Grenzwerte einer Entscheidung</translation>
        </message>
        <message>
            <source>other run that a decision rests on</source>
            <translation>anderer Lauf, auf dem eine Entscheidung beruht</translation>
        </message>
        <message>
            <source>decision of a sample</source>
            <translation>Entscheidung über eine Probe</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>Signatur</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>Verdünnungsschritt</translation>
        </message>
        <message>
            <source>uncertainty of a dilution step</source>
            <translation>Unsicherheit eines Verdünnungsschritts</translation>
        </message>
        <message>
            <source>check of equipment</source>
            <translation>Geräteprüfung</translation>
        </message>
        <message>
            <source>condition of a check</source>
            <translation>Bedingung einer Prüfung</translation>
        </message>
        <message>
            <source>what is checked, and how often</source>
            <translation>was geprüft wird und wie oft</translation>
        </message>
        <message>
            <source>number of values of a check</source>
            <translation>Anzahl der Werte einer Prüfung</translation>
        </message>
        <message>
            <source>equipment</source>
            <translation>Gerät</translation>
        </message>
        <message>
            <source>value of a check</source>
            <translation>Wert einer Prüfung</translation>
        </message>
        <message>
            <source>particulars of equipment</source>
            <translation>Angaben zu einem Gerät</translation>
        </message>
        <message>
            <source>check that was taken back</source>
            <translation>zurückgenommene Prüfung</translation>
        </message>
        <message>
            <source>settings of the laboratory</source>
            <translation>Einstellungen des Labors</translation>
        </message>
        <message>
            <source>container</source>
            <translation>Gebinde</translation>
        </message>
        <message>
            <source>aliquot</source>
            <translation>Aliquot</translation>
        </message>
        <message>
            <source>dissolving of a container</source>
            <translation>Lösen eines Gebindes</translation>
        </message>
        <message>
            <source>division into aliquots</source>
            <translation>Teilung in Aliquote</translation>
        </message>
        <message>
            <source>how long a container keeps</source>
            <translation>Haltbarkeit eines Gebindes</translation>
        </message>
        <message>
            <source>volume in or out of a container</source>
            <translation>Zugang oder Entnahme eines Gebindes</translation>
        </message>
        <message>
            <source>note on a container</source>
            <translation>Bemerkung zu einem Gebinde</translation>
        </message>
        <message>
            <source>opening of a container</source>
            <translation>Öffnen eines Gebindes</translation>
        </message>
        <message>
            <source>place of a container</source>
            <translation>Aufbewahrungsort eines Gebindes</translation>
        </message>
        <message>
            <source>lot of the run</source>
            <translation>Charge des Laufs</translation>
        </message>
        <message>
            <source>label of a container</source>
            <translation>Etikett eines Gebindes</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>what was done with a method</source>
            <translation>was mit einer Methode geschah</translation>
        </message>
        <message>
            <source>person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>passphrase of a person</source>
            <translation>Passphrase einer Person</translation>
        </message>
        <message>
            <source>whether a person signs</source>
            <translation>ob eine Person signiert</translation>
        </message>
        <message>
            <source>name and role of a person</source>
            <translation>Name und Rolle einer Person</translation>
        </message>
        <message>
            <source>mark at the bench</source>
            <translation>Vermerk am Arbeitsplatz</translation>
        </message>
        <message>
            <source>plan of the rack</source>
            <translation>Plan des Racks</translation>
        </message>
        <message>
            <source>owner of an uncertainty</source>
            <translation>Verantwortlicher einer Unsicherheit</translation>
        </message>
        <message>
            <source>planned sample</source>
            <translation>geplante Probe</translation>
        </message>
        <message>
            <source>glassware of a dilution step</source>
            <translation>Glasgeräte eines Verdünnungsschritts</translation>
        </message>
        <message>
            <source>standard as prepared</source>
            <translation>hergestellter Standard</translation>
        </message>
        <message>
            <source>standard thrown away</source>
            <translation>entsorgter Standard</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>Einwaage</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>where a reading came from</source>
            <translation>Herkunft einer Ablesung</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>wieder in Arbeit genommener Lauf</translation>
        </message>
        <message>
            <source>repeat that was waived</source>
            <translation>Wiederholung, auf die verzichtet wurde</translation>
        </message>
        <message>
            <source>result chosen for the report</source>
            <translation>für den Bericht gewähltes Ergebnis</translation>
        </message>
        <message>
            <source>run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>particulars of a sample</source>
            <translation>Angaben zu einer Probe</translation>
        </message>
        <message>
            <source>what is expected of a sample</source>
            <translation>was von einer Probe erwartet wird</translation>
        </message>
        <message>
            <source>repeat in the rack</source>
            <translation>Wiederholung im Rack</translation>
        </message>
        <message>
            <source>registered sample</source>
            <translation>angemeldete Probe</translation>
        </message>
        <message>
            <source>registration of a sample</source>
            <translation>Anmeldung einer Probe</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>zurückgezogene Probe</translation>
        </message>
        <message>
            <source>limits of products</source>
            <translation>Grenzwerte der Produkte</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>uncertainty of a standard</source>
            <translation>Unsicherheit eines Standards</translation>
        </message>
        <message>
            <source>substance</source>
            <translation>Substanz</translation>
        </message>
        <message>
            <source>particulars of a substance</source>
            <translation>Angaben zu einer Substanz</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>time of a tube</source>
            <translation>Zeit eines Ansatzes</translation>
        </message>
        <message>
            <source>uncertainties of the run</source>
            <translation>Unsicherheiten des Laufs</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>age (h)</source>
            <translation>Alter (h)</translation>
        </message>
        <message>
            <source>amount</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>certificate</source>
            <translation>Zertifikat</translation>
        </message>
        <message>
            <source>component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>concentration (g/L)</source>
            <translation>Konzentration (g/L)</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>keeps dissolved (days)</source>
            <translation>gelöst haltbar (Tage)</translation>
        </message>
        <message>
            <source>interval (days)</source>
            <translation>Abstand (Tage)</translation>
        </message>
        <message>
            <source>last good day</source>
            <translation>letzter Verwendungstag</translation>
        </message>
        <message>
            <source>extract (mL)</source>
            <translation>Extrakt (mL)</translation>
        </message>
        <message>
            <source>flask (mL)</source>
            <translation>Messkolben (mL)</translation>
        </message>
        <message>
            <source>form</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>uncertainty of</source>
            <translation>Unsicherheit von</translation>
        </message>
        <message>
            <source>start interval (s)</source>
            <translation>Startabstand (s)</translation>
        </message>
        <message>
            <source>keeps (days)</source>
            <translation>haltbar (Tage)</translation>
        </message>
        <message>
            <source>keeps opened (days)</source>
            <translation>geöffnet haltbar (Tage)</translation>
        </message>
        <message>
            <source>kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>made up to (mL)</source>
            <translation>aufgefüllt auf (mL)</translation>
        </message>
        <message>
            <source>mass (g)</source>
            <translation>Masse (g)</translation>
        </message>
        <message>
            <source>mass (mg)</source>
            <translation>Masse (mg)</translation>
        </message>
        <message>
            <source>matrix</source>
            <translation>Matrix</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>molare Masse</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>nominal volume (mL)</source>
            <translation>Nennvolumen (mL)</translation>
        </message>
        <message>
            <source>number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>wer dafür verantwortlich ist</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>Pipette</translation>
        </message>
        <message>
            <source>place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>planned (mL)</source>
            <translation>geplant (mL)</translation>
        </message>
        <message>
            <source>product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>columns of the rack</source>
            <translation>Spalten des Racks</translation>
        </message>
        <message>
            <source>rows of the rack</source>
            <translation>Reihen des Racks</translation>
        </message>
        <message>
            <source>reagent</source>
            <translation>Reagenz</translation>
        </message>
        <message>
            <source>received from</source>
            <translation>erhalten von</translation>
        </message>
        <message>
            <source>role</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>sample volume (mL)</source>
            <translation>Probenvolumen (mL)</translation>
        </message>
        <message>
            <source>smallest volume (mL)</source>
            <translation>kleinstes Volumen (mL)</translation>
        </message>
        <message>
            <source>source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>taken (mL)</source>
            <translation>entnommen (mL)</translation>
        </message>
        <message>
            <source>title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>as typed</source>
            <translation>wie eingegeben</translation>
        </message>
        <message>
            <source>volume (mL)</source>
            <translation>Volumen (mL)</translation>
        </message>
        <message>
            <source>wavelength (nm)</source>
            <translation>Wellenlänge (nm)</translation>
        </message>
        <message>
            <source>path length (mm)</source>
            <translation>Schichtdicke (mm)</translation>
        </message>
        <message>
            <source>Nothing was stored: the sample %1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>Nichts wurde gespeichert: Die Probe %1 ist schon unter den wartenden Proben; dort ändern, oder dieser eine andere Kennung geben.</translation>
        </message>
        <message>
            <source>The sample %1 is registered like this already; nothing was stored.</source>
            <translation>Die Probe %1 ist schon so angemeldet; nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>No sample number %1 waits; nothing was stored: choose one from the list.</source>
            <translation>Keine Probe mit der Nummer %1 wartet; nichts wurde gespeichert: eine aus der Liste wählen.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be reached, since its folder may not be entered; see that you have the right to, or choose another notebook.</source>
            <translation>Das Laborjournal %1 ist nicht zu erreichen, da auf seinen Ordner nicht zugegriffen werden darf; die Zugriffsrechte prüfen oder ein anderes Laborjournal wählen.</translation>
        </message>
        <message>
            <source>is not as the records say, so that what waits to be repeated may not be shown</source>
            <translation>ist nicht so, wie es die Aufzeichnungen sagen; was auf seine Wiederholung wartet, wird vielleicht nicht gezeigt</translation>
        </message>
        <message>
            <source>rack on the bench when a clock was set</source>
            <translation>Rack am Arbeitsplatz, als eine Uhr gestellt wurde</translation>
        </message>
        <message>
            <source>dilution advised for a repeat</source>
            <translation>für eine Wiederholung empfohlene Verdünnung</translation>
        </message>
        <message>
            <source>dry substance in a container</source>
            <translation>trockene Substanz in einem Gebinde</translation>
        </message>
        <message>
            <source>dry substance thrown away</source>
            <translation>entsorgte trockene Substanz</translation>
        </message>
        <message>
            <source>tubes added to the rack</source>
            <translation>zum Rack hinzugefügte Ansätze</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>falsche Passphrase</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 has that value already; nothing was stored: a correction gives another value.</source>
            <translation>Ablesung %1 von Ansatz %2 hat diesen Wert bereits; nichts wurde gespeichert: Eine Korrektur gibt einen anderen Wert an.</translation>
        </message>
        <message>
            <source>What did not pass is decided sample by sample; everything else passed.</source>
            <translation>Was nicht bestanden ist, wird Probe für Probe entschieden; alles andere ist bestanden.</translation>
        </message>
        <message>
            <source>highest (°C)</source>
            <translation>höchste (°C)</translation>
        </message>
        <message>
            <source>lowest (°C)</source>
            <translation>niedrigste (°C)</translation>
        </message>
        <message>
            <source>a picture</source>
            <translation>ein Bild</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>nicht geöffnet</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>geöffnet am %1</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>Charge %1</translation>
        </message>
        <message>
            <source>%1: something was taken from it</source>
            <translation>%1: etwas wurde daraus entnommen</translation>
        </message>
        <message>
            <source>The opening stays as it was noted, since a correction needs a reason: say why.</source>
            <translation>Die Öffnung bleibt, wie sie vermerkt ist, da eine Berichtigung einen Grund braucht: angeben, warum.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not noted as opened.</source>
            <translation>Nichts wurde gespeichert: Die Charge %1 ist nicht als geöffnet vermerkt.</translation>
        </message>
        <message>
            <source>Nothing was stored: something was taken from the lot %1 on %2, so that it was open by then; give that day or an earlier one, or take back first what was ticked with it by mistake.</source>
            <translation>Nichts wurde gespeichert: Aus der Charge %1 wurde am %2 etwas entnommen, sie war da also schon geöffnet; diesen Tag oder einen früheren angeben oder zuerst zurücknehmen, was irrtümlich mit ihr abgehakt wurde.</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fest, in der Einheit des Grenzwerts</translation>
        </message>
        <message>
            <source>added</source>
            <translation>zugegeben</translation>
        </message>
        <message>
            <source>corrected</source>
            <translation>berichtigt</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>entsorgt</translation>
        </message>
        <message>
            <source>done</source>
            <translation>erledigt</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty</source>
            <translation>ein Vielfaches der erweiterten Unsicherheit</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>aus einer Datei</translation>
        </message>
        <message>
            <source>imported</source>
            <translation>importiert</translation>
        </message>
        <message>
            <source>label threshold</source>
            <translation>Kennzeichnungsschwelle</translation>
        </message>
        <message>
            <source>maximum</source>
            <translation>Höchstwert</translation>
        </message>
        <message>
            <source>minimum</source>
            <translation>Mindestwert</translation>
        </message>
        <message>
            <source>from the network</source>
            <translation>über das Netz</translation>
        </message>
        <message>
            <source>one-sided 95 %</source>
            <translation>einseitig 95 %</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>eingefügt</translation>
        </message>
        <message>
            <source>range</source>
            <translation>Bereich</translation>
        </message>
        <message>
            <source>read</source>
            <translation>abgelesen</translation>
        </message>
        <message>
            <source>received</source>
            <translation>eingegangen</translation>
        </message>
        <message>
            <source>in use again</source>
            <translation>reaktiviert</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>zu wiederholen</translation>
        </message>
        <message>
            <source>out of use</source>
            <translation>deaktiviert</translation>
        </message>
        <message>
            <source>saved</source>
            <translation>gespeichert</translation>
        </message>
        <message>
            <source>from the serial line</source>
            <translation>über die serielle Leitung</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>unbrauchbar</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>zurückgenommen</translation>
        </message>
        <message>
            <source>counts again</source>
            <translation>zählt wieder</translation>
        </message>
        <message>
            <source>used</source>
            <translation>verwendet</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>Analytiker</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>control</source>
            <translation>Kontrollprobe</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>Laborleitung</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>Bewerter</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>Probenblindwert</translation>
        </message>
        <message>
            <source>spiked sample</source>
            <translation>aufgestockte Probe</translation>
        </message>
        <message>
            <source>by the absorptivity</source>
            <translation>über den Extinktionskoeffizienten</translation>
        </message>
        <message>
            <source>by a line through the standards</source>
            <translation>über eine Gerade durch die Standards</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>über den eigenen Standard des Laufs</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>flüssig</translation>
        </message>
        <message>
            <source>solid</source>
            <translation>fest</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>das letzte angenommene Ergebnis</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>der Mittelwert der angenommenen Ergebnisse</translation>
        </message>
        <message>
            <source>a result that was named</source>
            <translation>ein genanntes Ergebnis</translation>
        </message>
        <message>
            <source>the moving range</source>
            <translation>der gleitenden Spannweite</translation>
        </message>
        <message>
            <source>the standard deviation</source>
            <translation>der Standardabweichung</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>berechnet</translation>
        </message>
        <message>
            <source>from the printed table</source>
            <translation>aus der gedruckten Tabelle</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>carbonated</source>
            <translation>kohlensäurehaltig</translation>
        </message>
        <message>
            <source>clear and colourless</source>
            <translation>klar und farblos</translation>
        </message>
        <message>
            <source>coloured</source>
            <translation>gefärbt</translation>
        </message>
        <message>
            <source>fatty</source>
            <translation>fetthaltig</translation>
        </message>
        <message>
            <source>rich in protein</source>
            <translation>proteinreich</translation>
        </message>
        <message>
            <source>turbid</source>
            <translation>trüb</translation>
        </message>
        <message>
            <source>pipette %1</source>
            <translation>Pipette %1</translation>
        </message>
        <message>
            <source>flask %1</source>
            <translation>Messkolben %1</translation>
        </message>
        <message>
            <source>uncertainties of a method, row %1</source>
            <translation>Unsicherheiten nach Methode, Zeile %1</translation>
        </message>
        <message>
            <source>unit of a product, row %1</source>
            <translation>Einheiten der Produkte, Zeile %1</translation>
        </message>
        <message>
            <source>reason to reject %1</source>
            <translation>Verwerfungsgrund %1</translation>
        </message>
        <message>
            <source>address, line %1</source>
            <translation>Anschrift, Zeile %1</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>Grenzwert %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>correction of when a container was opened</source>
            <translation>Berichtigung, wann ein Gebinde geöffnet wurde</translation>
        </message>
        <message>
            <source>absorptivity (%)</source>
            <translation>Extinktionskoeffizient (%)</translation>
        </message>
        <message>
            <source>nothing speaks against it</source>
            <translation>nichts spricht dagegen</translation>
        </message>
        <message>
            <source>time for an addition (s)</source>
            <translation>Zeit für eine Zugabe (s)</translation>
        </message>
        <message>
            <source>address</source>
            <translation>Anschrift</translation>
        </message>
        <message>
            <source>aliquots</source>
            <translation>Aliquote</translation>
        </message>
        <message>
            <source>molar mass of the analyte (g/mol)</source>
            <translation>molare Masse des Analyten (g/mol)</translation>
        </message>
        <message>
            <source>analyte molecules per molecule</source>
            <translation>Analytmoleküle je Molekül</translation>
        </message>
        <message>
            <source>what was checked</source>
            <translation>was geprüft wurde</translation>
        </message>
        <message>
            <source>time (min)</source>
            <translation>Zeit (min)</translation>
        </message>
        <message>
            <source>picture</source>
            <translation>Bild</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>centre line</source>
            <translation>Mittellinie</translation>
        </message>
        <message>
            <source>change (mL)</source>
            <translation>Änderung (mL)</translation>
        </message>
        <message>
            <source>checked on</source>
            <translation>geprüft am</translation>
        </message>
        <message>
            <source>columns</source>
            <translation>Spalten</translation>
        </message>
        <message>
            <source>column</source>
            <translation>Spalte</translation>
        </message>
        <message>
            <source>constants of the chart</source>
            <translation>Faktoren der Karte</translation>
        </message>
        <message>
            <source>contact</source>
            <translation>Kontakt</translation>
        </message>
        <message>
            <source>corrects</source>
            <translation>korrigiert</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>in Arbeit genommen</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>density (g/mL)</source>
            <translation>Dichte (g/mL)</translation>
        </message>
        <message>
            <source>standard deviation</source>
            <translation>Standardabweichung</translation>
        </message>
        <message>
            <source>dilution step (%)</source>
            <translation>Verdünnungsschritt (%)</translation>
        </message>
        <message>
            <source>values of earlier runs</source>
            <translation>Werte früherer Läufe</translation>
        </message>
        <message>
            <source>extract (%)</source>
            <translation>Extrakt (%)</translation>
        </message>
        <message>
            <source>file</source>
            <translation>Datei</translation>
        </message>
        <message>
            <source>beginning with</source>
            <translation>beginnend mit</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>uncertainty of the flask (mL)</source>
            <translation>Unsicherheit des Messkolbens (mL)</translation>
        </message>
        <message>
            <source>guard band</source>
            <translation>Schutzband</translation>
        </message>
        <message>
            <source>decision limit h</source>
            <translation>Entscheidungsgrenze h</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>in Gebrauch</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>ausgenommen</translation>
        </message>
        <message>
            <source>only the usual value</source>
            <translation>nur der übliche Wert</translation>
        </message>
        <message>
            <source>reference value k</source>
            <translation>Referenzwert k</translation>
        </message>
        <message>
            <source>weight of the newest value</source>
            <translation>Gewicht des neuesten Werts</translation>
        </message>
        <message>
            <source>largest volume (mL)</source>
            <translation>größtes Volumen (mL)</translation>
        </message>
        <message>
            <source>line of the photometer</source>
            <translation>Zeile des Photometers</translation>
        </message>
        <message>
            <source>logo</source>
            <translation>Logo</translation>
        </message>
        <message>
            <source>lower limit</source>
            <translation>unterer Grenzwert</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>hergestellt am</translation>
        </message>
        <message>
            <source>uncertainty of the weighing (mg)</source>
            <translation>Unsicherheit der Wägung (mg)</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>time to mix (s)</source>
            <translation>Zeit zum Mischen (s)</translation>
        </message>
        <message>
            <source>result of</source>
            <translation>Ergebnis von</translation>
        </message>
        <message>
            <source>check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>reagent beyond the need (%)</source>
            <translation>Reagenz über den Bedarf hinaus (%)</translation>
        </message>
        <message>
            <source>path length (%)</source>
            <translation>Schichtdicke (%)</translation>
        </message>
        <message>
            <source>uncertainty (%)</source>
            <translation>Unsicherheit (%)</translation>
        </message>
        <message>
            <source>signed by</source>
            <translation>signiert von</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>readings of the series</source>
            <translation>Ablesungen der Ablesereihe</translation>
        </message>
        <message>
            <source>place in the order</source>
            <translation>Stelle in der Reihenfolge</translation>
        </message>
        <message>
            <source>program</source>
            <translation>Programm</translation>
        </message>
        <message>
            <source>what is watched</source>
            <translation>was überwacht wird</translation>
        </message>
        <message>
            <source>time for a reading (s)</source>
            <translation>Zeit für eine Ablesung (s)</translation>
        </message>
        <message>
            <source>put back on the bench</source>
            <translation>wieder in Arbeit genommen</translation>
        </message>
        <message>
            <source>repeat of</source>
            <translation>Wiederholung von</translation>
        </message>
        <message>
            <source>only a reviewer decides</source>
            <translation>nur ein Bewerter entscheidet</translation>
        </message>
        <message>
            <source>rows</source>
            <translation>Zeilen</translation>
        </message>
        <message>
            <source>rule</source>
            <translation>Regel</translation>
        </message>
        <message>
            <source>rules</source>
            <translation>Regeln</translation>
        </message>
        <message>
            <source>sample volume (%)</source>
            <translation>Probenvolumen (%)</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>samples before</source>
            <translation>Proben davor</translation>
        </message>
        <message>
            <source>somebody else than the analyst decides</source>
            <translation>eine zweite Person entscheidet, nicht der Analytiker</translation>
        </message>
        <message>
            <source>clock moved by (s)</source>
            <translation>Uhr gestellt um (s)</translation>
        </message>
        <message>
            <source>size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>solvent</source>
            <translation>Lösungsmittel</translation>
        </message>
        <message>
            <source>lot of the solvent</source>
            <translation>Charge des Lösungsmittels</translation>
        </message>
        <message>
            <source>day of the source</source>
            <translation>Tag der Quelle</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>Aufstockung</translation>
        </message>
        <message>
            <source>standard of the spike</source>
            <translation>Standard der Aufstockung</translation>
        </message>
        <message>
            <source>volume of the spike (mL)</source>
            <translation>Volumen der Aufstockung (mL)</translation>
        </message>
        <message>
            <source>scatter from</source>
            <translation>Streuung aus</translation>
        </message>
        <message>
            <source>begun</source>
            <translation>begonnen</translation>
        </message>
        <message>
            <source>step (mL)</source>
            <translation>Schritt (mL)</translation>
        </message>
        <message>
            <source>values in a subgroup</source>
            <translation>Werte einer Untergruppe</translation>
        </message>
        <message>
            <source>total volume (%)</source>
            <translation>Gesamtvolumen (%)</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>tubes before</source>
            <translation>Ansätze davor</translation>
        </message>
        <message>
            <source>kind of picture</source>
            <translation>Art des Bildes</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>upper limit</source>
            <translation>oberer Grenzwert</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>width of the limits</source>
            <translation>Breite der Grenzen</translation>
        </message>
        <message>
            <source>good until</source>
            <translation>verwendbar bis</translation>
        </message>
        <message>
            <source>with entries 2 to %1, which made the tables of the file</source>
            <translation>mit den Einträgen 2 bis %1, die die Tabellen der Datei anlegten</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes by %1</source>
            <translation>
                <numerusform>%n Ansatz nach %1</numerusform>
                <numerusform>%n Ansätze nach %1</numerusform>
            </translation>
        </message>
        <message>
            <source>standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>%1: tube %2</source>
            <translation>%1: Ansatz %2</translation>
        </message>
        <message>
            <source>loss per hour (%)</source>
            <translation>Verlust pro Stunde (%)</translation>
        </message>
        <message>
            <source>purity (%)</source>
            <translation>Reinheit (%)</translation>
        </message>
        <message>
            <source>purity, plus or minus (%)</source>
            <translation>Reinheit, plus oder minus (%)</translation>
        </message>
        <message>
            <source>use by, by its own rule</source>
            <translation>verwendbar bis nach eigener Vorgabe</translation>
        </message>
        <message>
            <source>water (%)</source>
            <translation>Wasser (%)</translation>
        </message>
        <message>
            <source>water, plus or minus (%)</source>
            <translation>Wasser, plus oder minus (%)</translation>
        </message>
        <message>
            <source>%1, made from %2</source>
            <translation>%1 aus %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::CheckedEquipment</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>absorbance scale by %1</source>
            <translation>Extinktionsskala mit %1</translation>
        </message>
        <message>
            <source>cuvettes: common practice, no source</source>
            <translation>Küvetten: gängige Praxis, ohne Quelle</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>%1: passed before this run, but failed afterwards, on %2: %3.</source>
            <translation>%1: vor diesem Lauf bestanden, danach aber nicht bestanden, am %2: %3.</translation>
        </message>
        <message>
            <source>%1: not in the book of equipment yet on that day; its next check, on %2, failed: %3.</source>
            <translation>%1: an diesem Tag noch nicht im Gerätebuch; die nächste Prüfung, am %2, nicht bestanden: %3.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::DilutionPlan</name>
        <message>
            <source>Say how much the sample is expected to hold: a dilution is planned from that.</source>
            <translation>Angeben, wie viel die Probe voraussichtlich enthält: Danach wird eine Verdünnung geplant.</translation>
        </message>
        <message>
            <source>The method has no absorptivity at %1, so no signal can be predicted.</source>
            <translation>Die Methode hat keinen Extinktionskoeffizienten bei %1, ein Signal lässt sich also nicht vorhersagen.</translation>
        </message>
        <message>
            <source>The sample has to be diluted, but no pipette and flask of the laboratory make a dilution.</source>
            <translation>Die Probe muss verdünnt werden, aber keine Pipette mit keinem Messkolben des Labors ergibt eine Verdünnung.</translation>
        </message>
        <message>
            <source>With %1 of sample it has to be diluted %2- to %3-fold; no chain of up to %4 steps with the laboratory's pipettes and flasks does that.</source>
            <translation>Mit %1 Probe muss %2- bis %3-fach verdünnt werden; keine Kette von bis zu %4 Schritten mit den Pipetten und Messkolben des Labors leistet das.</translation>
        </message>
        <message>
            <source>The net signals of %1 and %2 are expected %3-fold apart, more than the %4-fold that one dilution can serve: plan a dilution for each.</source>
            <translation>Die erwarteten Nettosignale von %1 und %2 liegen um den Faktor %3 auseinander, mehr als der Faktor %4, den eine Verdünnung abdecken kann: für jede eine Verdünnung planen.</translation>
        </message>
        <message>
            <source>%1 of the undiluted sample would give a net signal of %2 for %3, less than the %4 that can be measured well.</source>
            <translation>%1 der unverdünnten Probe ergäben ein Nettosignal von %2 für %3, weniger als die %4, die gut messbar sind.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Expectation</name>
        <message>
            <source>From what is expected of it, %1 would be about %2, below the window's %3: dilute it less, or take more of it.</source>
            <translation>Nach der Erwartung betrüge %1 etwa %2, unter den %3 des Fensters: weniger verdünnen oder mehr davon nehmen.</translation>
        </message>
        <message>
            <source>From what is expected of it, %1 would be about %2, above the window's %3: dilute it more, or take less of it.</source>
            <translation>Nach der Erwartung betrüge %1 etwa %2, über den %3 des Fensters: stärker verdünnen oder weniger davon nehmen.</translation>
        </message>
        <message>
            <source>its net signal</source>
            <translation>ihr Nettosignal</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputOwner</name>
        <message>
            <source>absorbance of a reading</source>
            <translation>Extinktion einer Ablesung</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>Verdünnungsschritt</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>Konzentration</translation>
        </message>
        <message>
            <source>repeatability</source>
            <translation>Wiederholpräzision</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputSources</name>
        <message>
            <source>the laboratory's list of glassware</source>
            <translation>die Liste der Volumenmessgeräte des Labors</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>gängige Praxis, ohne Quelle</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>no pipette of the list makes %1</source>
            <translation>keine Pipette der Liste ergibt %1</translation>
        </message>
        <message>
            <source>until its check records say otherwise</source>
            <translation>bis die Prüfaufzeichnungen anderes sagen</translation>
        </message>
        <message>
            <source>absorptivity of %1 at %2</source>
            <translation>Extinktionskoeffizient von %1 bei %2</translation>
        </message>
        <message>
            <source>cuvette of the %1</source>
            <translation>Küvette, %1</translation>
        </message>
        <message>
            <source>cuvette</source>
            <translation>Küvette</translation>
        </message>
        <message>
            <source>pipettes</source>
            <translation>Pipetten</translation>
        </message>
        <message>
            <source>pipette of the sample</source>
            <translation>Pipette der Probe</translation>
        </message>
        <message>
            <source>pipette and flask of a dilution step</source>
            <translation>Pipette und Messkolben eines Verdünnungsschritts</translation>
        </message>
        <message>
            <source>no glass of the list makes %1 up to %2</source>
            <translation>keine Volumenmessgeräte der Liste ergeben %1 auf %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 mit %2</translation>
        </message>
        <message>
            <source>no step of this run rests on it</source>
            <translation>kein Schritt dieses Laufs beruht darauf</translation>
        </message>
        <message>
            <source>flask of the extract</source>
            <translation>Messkolben des Extrakts</translation>
        </message>
        <message>
            <source>no flask of the list holds %1</source>
            <translation>kein Messkolben der Liste fasst %1</translation>
        </message>
        <message>
            <source>no sample of this run rests on it</source>
            <translation>keine Probe dieses Laufs beruht darauf</translation>
        </message>
        <message>
            <source>laboratory, for %1</source>
            <translation>Labor, für %1</translation>
        </message>
        <message>
            <source>photometer %1</source>
            <translation>Photometer %1</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Laboratory</name>
        <message>
            <source>bulb pipette %1 mL</source>
            <translation>Vollpipette %1 mL</translation>
        </message>
        <message>
            <source>flask %1 mL</source>
            <translation>Messkolben %1 mL</translation>
        </message>
        <message>
            <source>piston pipette 10 to 100 µL</source>
            <translation>Kolbenhubpipette 10 bis 100 µL</translation>
        </message>
        <message>
            <source>piston pipette 100 to 1000 µL</source>
            <translation>Kolbenhubpipette 100 bis 1000 µL</translation>
        </message>
        <message>
            <source>piston pipette 0.5 to 5 mL</source>
            <translation>Kolbenhubpipette 0,5 bis 5 mL</translation>
        </message>
        <message>
            <source>a mistake in pipetting</source>
            <translation>ein Pipettierfehler</translation>
        </message>
        <message>
            <source>the blank is out of its limits</source>
            <translation>der Blindwert liegt außerhalb seiner Grenzen</translation>
        </message>
        <message>
            <source>the control is out of its limits</source>
            <translation>die Kontrollprobe liegt außerhalb ihrer Grenzen</translation>
        </message>
        <message>
            <source>duplicates lie too far apart</source>
            <translation>Doppelbestimmungen liegen zu weit auseinander</translation>
        </message>
        <message>
            <source>the wrong sample was taken</source>
            <translation>die falsche Probe wurde genommen</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>die Wiederfindung des Standards liegt außerhalb der Grenzen</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LaboratorySoundness</name>
        <message>
            <source>makes a rack of %1 places with %2 rows; at most %3 are allowed</source>
            <translation>ergibt ein Rack mit %1 Plätzen bei %2 Reihen; höchstens %3 sind zulässig</translation>
        </message>
        <message>
            <source>must not be smaller than smallest_mL: %1 is less than %2</source>
            <translation>darf nicht kleiner als smallest_mL sein: %1 ist kleiner als %2</translation>
        </message>
        <message>
            <source>must be 0 for a fixed-volume pipette, not %1</source>
            <translation>muss bei einer Pipette mit festem Volumen 0 sein, nicht %1</translation>
        </message>
        <message>
            <source>must be greater than 0 and at most %1 mL, the width of the pipette's range, not %2</source>
            <translation>muss größer als 0 und höchstens %1 mL sein, die Breite des Pipettenbereichs, nicht %2</translation>
        </message>
        <message>
            <source>makes more than %1 settings; give a coarser step</source>
            <translation>ergibt mehr als %1 Einstellungen; einen gröberen Schritt angeben</translation>
        </message>
        <message>
            <source>must go a whole number of times into the %1 mL between smallest_mL and largest_mL</source>
            <translation>muss ganzzahlig in die %1 mL zwischen smallest_mL und largest_mL passen</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>der Name</translation>
        </message>
        <message>
            <source>the name %1 is taken by an earlier one; give each its own</source>
            <translation>der Name %1 ist durch ein früheres vergeben; jedem einen eigenen geben</translation>
        </message>
        <message>
            <source>lists %1 pieces; at most %2 are allowed</source>
            <translation>führt %1 Stück auf; höchstens %2 sind zulässig</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotOutlook</name>
        <message>
            <source>in use, dissolved</source>
            <translation>in Gebrauch, gelöst</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>in Gebrauch</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>nicht geöffnet</translation>
        </message>
        <message>
            <source>open too long, was good until %1</source>
            <translation>zu lange geöffnet, war verwendbar bis %1</translation>
        </message>
        <message>
            <source>dissolved too long ago, was good until %1</source>
            <translation>vor zu langer Zeit gelöst, war verwendbar bis %1</translation>
        </message>
        <message>
            <source>stored too long, was good until %1</source>
            <translation>zu lange gelagert, war verwendbar bis %1</translation>
        </message>
        <message>
            <source>what it was filled from was good until %1</source>
            <translation>woraus es gefüllt wurde, war verwendbar bis %1</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>abgelaufen am %1</translation>
        </message>
        <message>
            <source>%1 (opened)</source>
            <translation>%1 (geöffnet)</translation>
        </message>
        <message>
            <source>%1 (dissolved)</source>
            <translation>%1 (gelöst)</translation>
        </message>
        <message>
            <source>%1 (as stored)</source>
            <translation>%1 (so gelagert)</translation>
        </message>
        <message>
            <source>%1 (its source)</source>
            <translation>%1 (seine Herkunft)</translation>
        </message>
        <message>
            <source>used up</source>
            <translation>aufgebraucht</translation>
        </message>
        <message>
            <source>dry, not dissolved yet</source>
            <translation>trocken, noch nicht gelöst</translation>
        </message>
        <message>
            <source>more taken than it held</source>
            <translation>mehr entnommen, als es enthielt</translation>
        </message>
        <message>
            <source>good until tonight</source>
            <translation>verwendbar bis heute Abend</translation>
        </message>
        <message>
            <source>good until %1</source>
            <translation>verwendbar bis %1</translation>
        </message>
        <message>
            <source>too little for a tube</source>
            <translation>zu wenig für einen Ansatz</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, Charge %2</translation>
        </message>
        <message>
            <source>%1: %2, and this run took from it on %3.</source>
            <translation>%1: %2, und dieser Lauf entnahm daraus am %3.</translation>
        </message>
        <message>
            <source>%1: good until %2; a repeat after that takes another.</source>
            <translation>%1: verwendbar bis %2; eine Wiederholung danach braucht eine andere Charge.</translation>
        </message>
        <message numerus="yes">
            <source>low, enough for %n tubes</source>
            <translation>
                <numerusform>knapp, reicht für %n Ansatz</numerusform>
                <numerusform>knapp, reicht für %n Ansätze</numerusform>
            </translation>
        </message>
        <message>
            <source>expired</source>
            <translation>abgelaufen</translation>
        </message>
        <message>
            <source>open too long</source>
            <translation>zu lange geöffnet</translation>
        </message>
        <message>
            <source>dissolved too long ago</source>
            <translation>vor zu langer Zeit gelöst</translation>
        </message>
        <message>
            <source>stored too long</source>
            <translation>zu lange gelagert</translation>
        </message>
        <message>
            <source>what it was filled from is too old</source>
            <translation>woraus es gefüllt wurde, ist zu alt</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>gelöst</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>geöffnet</translation>
        </message>
        <message numerus="yes">
            <source>good for %n more days</source>
            <translation>
                <numerusform>noch %n Tag verwendbar</numerusform>
                <numerusform>noch %n Tage verwendbar</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotPlace</name>
        <message>
            <source>%1, %2 to %3</source>
            <translation>%1, %2 bis %3</translation>
        </message>
        <message>
            <source>%1, at most %2</source>
            <translation>%1, höchstens %2</translation>
        </message>
        <message>
            <source>%1, at least %2</source>
            <translation>%1, mindestens %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Measuring</name>
        <message>
            <source>the source</source>
            <translation>die Quelle</translation>
        </message>
        <message>
            <source>is blank; say which record or certificate the numbers come from</source>
            <translation>ist leer; angeben, aus welcher Aufzeichnung oder welchem Zertifikat die Zahlen stammen</translation>
        </message>
        <message>
            <source>the photometer's name</source>
            <translation>der Name des Photometers</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>die Kennung der Methode</translation>
        </message>
        <message>
            <source>states no uncertainty; give at least one, or take the entry away</source>
            <translation>gibt keine Unsicherheit an; mindestens eine angeben oder den Eintrag entfernen</translation>
        </message>
        <message>
            <source>lists %1 methods; at most %2 are allowed</source>
            <translation>führt %1 Methoden auf; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>the method %1 has an entry already; put both in one</source>
            <translation>die Methode %1 hat bereits einen Eintrag; beide in einem zusammenfassen</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::PlanRecord</name>
        <message>
            <source>names the glass of %1 dilution steps, but the sample has %2; name it for each step or for none</source>
            <translation>nennt das Glas von %1 Verdünnungsschritten, aber die Probe hat %2; für jeden Schritt nennen oder für keinen</translation>
        </message>
        <message>
            <source>the pipette</source>
            <translation>die Pipette</translation>
        </message>
        <message>
            <source>the flask</source>
            <translation>der Messkolben</translation>
        </message>
        <message>
            <source>the run has no sample %1</source>
            <translation>der Lauf hat keine Probe %1</translation>
        </message>
        <message>
            <source>is not the form that the run gives the sample %1</source>
            <translation>ist nicht die Form, die der Lauf der Probe %1 gibt</translation>
        </message>
        <message>
            <source>runs are numbered from 1 on</source>
            <translation>Läufe zählen ab 1</translation>
        </message>
        <message>
            <source>a rack has 1 to %1 positions, not %2 x %3</source>
            <translation>ein Rack hat 1 bis %1 Plätze, nicht %2 × %3</translation>
        </message>
        <message>
            <source>a rack of %1 x %2 does not hold the run's %3 tubes</source>
            <translation>ein Rack mit %1 × %2 fasst die %3 Ansätze des Laufs nicht</translation>
        </message>
        <message>
            <source>nobody but the run answers for its replicates</source>
            <translation>für seine Parallelansätze ist nur der Lauf selbst verantwortlich</translation>
        </message>
        <message>
            <source>the run states no uncertainty</source>
            <translation>der Lauf gibt keine Unsicherheit an</translation>
        </message>
        <message>
            <source>the run has no standard %1 that this could be said of</source>
            <translation>der Lauf hat keinen Standard %1, von dem das gesagt werden könnte</translation>
        </message>
        <message>
            <source>names an owner for this a second time</source>
            <translation>nennt dafür ein zweites Mal einen Verantwortlichen</translation>
        </message>
        <message>
            <source>the owner</source>
            <translation>der Verantwortliche</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>die Quelle</translation>
        </message>
        <message>
            <source>is blank</source>
            <translation>ist leer</translation>
        </message>
        <message>
            <source>the sample %1 is planned twice</source>
            <translation>die Probe %1 ist zweimal geplant</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::RackRepeat</name>
        <message>
            <source>%1-fold</source>
            <translation>%1-fach</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Reporting</name>
        <message>
            <source>it is not a PNG picture</source>
            <translation>es ist kein PNG-Bild</translation>
        </message>
        <message>
            <source>it measures %1 by %2 pixels; 1 to %3 each way are allowed</source>
            <translation>es misst %1 mal %2 Pixel; 1 bis %3 sind je Richtung zulässig</translation>
        </message>
        <message>
            <source>it holds a document type declaration; save it without</source>
            <translation>es enthält eine Dokumenttypdeklaration; ohne diese speichern</translation>
        </message>
        <message>
            <source>it is not an SVG picture</source>
            <translation>es ist kein SVG-Bild</translation>
        </message>
        <message>
            <source>it takes in a file from outside; put everything into the picture itself</source>
            <translation>es bindet eine Datei von außen ein; alles in das Bild selbst aufnehmen</translation>
        </message>
        <message>
            <source>lists %1 reasons; at most %2 are allowed</source>
            <translation>führt %1 Gründe auf; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>the reason</source>
            <translation>der Grund</translation>
        </message>
        <message>
            <source>the reason %1 stands in the list already; take one away</source>
            <translation>der Grund %1 steht bereits in der Liste; einen entfernen</translation>
        </message>
        <message>
            <source>has %1 lines; at most %2 are allowed</source>
            <translation>hat %1 Zeilen; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>the line</source>
            <translation>die Zeile</translation>
        </message>
        <message>
            <source>the contact</source>
            <translation>der Kontakt</translation>
        </message>
        <message>
            <source>the logo cannot be used: %1</source>
            <translation>das Logo ist nicht verwendbar: %1</translation>
        </message>
        <message>
            <source>lists %1 units; at most %2 are allowed</source>
            <translation>führt %1 Einheiten auf; höchstens %2 sind zulässig</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>das Produkt</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>die Messgröße</translation>
        </message>
        <message>
            <source>has a unit for this already; take one away</source>
            <translation>hat dafür bereits eine Einheit; eine entfernen</translation>
        </message>
        <message>
            <source>it has %1 kB; at most %2 kB are allowed</source>
            <translation>es hat %1 kB; höchstens %2 kB sind zulässig</translation>
        </message>
        <message>
            <source>is a unit of neither a product nor a measurand; name one of them</source>
            <translation>gehört weder zu einem Produkt noch zu einer Messgröße; eines davon nennen</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Round</name>
        <message>
            <source>Diluent</source>
            <translation>Verdünnungsmittel</translation>
        </message>
        <message>
            <source>Spike</source>
            <translation>Aufstockung</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Schedule</name>
        <message>
            <source>mixing</source>
            <translation>Mischen</translation>
        </message>
        <message>
            <source>reading %1</source>
            <translation>Ablesung %1</translation>
        </message>
        <message>
            <source>adding %1</source>
            <translation>Zugabe von %1</translation>
        </message>
        <message>
            <source>Tube %1: %2 has %3, it needs %4.</source>
            <translation>Ansatz %1: %2 hat %3, nötig sind %4.</translation>
        </message>
        <message>
            <source>At %1 there is a task for tube %2, step %3, which this rack does not have.</source>
            <translation>Bei %1 gibt es eine Aufgabe für Ansatz %2, Schritt %3, den dieses Rack nicht hat.</translation>
        </message>
        <message>
            <source>Tube %1 and tube %2 both need the hands at %3.</source>
            <translation>Ansatz %1 und Ansatz %2 werden beide bei %3 bearbeitet.</translation>
        </message>
        <message>
            <source>Tube %1 needs the hands at %2, when the other rack does too.</source>
            <translation>Ansatz %1 wird bei %2 bearbeitet, wenn es das andere Rack auch wird.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is missing.</source>
            <translation>Ansatz %1: %2 fehlt.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is there twice.</source>
            <translation>Ansatz %1: %2 ist zweimal vorhanden.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at least %5 is needed.</source>
            <translation>Ansatz %1: %2 kommt %3 nach %4, mindestens %5 sind nötig.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at most %5 is allowed.</source>
            <translation>Ansatz %1: %2 kommt %3 nach %4, höchstens %5 sind zulässig.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::ShelfSample</name>
        <message>
            <source>the id</source>
            <translation>die Kennung</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>das Produkt</translation>
        </message>
        <message>
            <source>who it came from</source>
            <translation>von wem sie kam</translation>
        </message>
        <message>
            <source>is not a real time; give a time with its offset from UTC</source>
            <translation>ist keine gültige Zeit; eine Zeit mit ihrem UTC-Versatz angeben</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>die Messgröße</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardRecipe</name>
        <message>
            <source>mass</source>
            <translation>Masse</translation>
        </message>
        <message>
            <source>purity</source>
            <translation>Reinheit</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>filling to the mark</source>
            <translation>Auffüllen bis zur Marke</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardStock</name>
        <message>
            <source>is not a time; say when it was made</source>
            <translation>ist keine Zeit; angeben, wann er hergestellt wurde</translation>
        </message>
        <message>
            <source>is in the future; it must be in the past</source>
            <translation>liegt in der Zukunft; muss in der Vergangenheit liegen</translation>
        </message>
        <message>
            <source>is not after the time it was made; leave it out, or correct it</source>
            <translation>liegt nicht nach der Herstellungszeit; weglassen oder berichtigen</translation>
        </message>
        <message>
            <source>the supplier</source>
            <translation>der Lieferant</translation>
        </message>
        <message>
            <source>the certificate</source>
            <translation>das Zertifikat</translation>
        </message>
        <message>
            <source>is not a real date</source>
            <translation>ist kein gültiges Datum</translation>
        </message>
        <message>
            <source>must be 1 to %1 masses</source>
            <translation>muss 1 bis %1 Massen umfassen</translation>
        </message>
        <message>
            <source>must be 0 % or more and less than 100 %</source>
            <translation>muss mindestens 0 % und weniger als 100 % betragen</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::UncertaintyOwners</name>
        <message>
            <source>not on record</source>
            <translation>nicht verzeichnet</translation>
        </message>
        <message>
            <source>the run came with this number</source>
            <translation>die Zahl kam mit dem Lauf</translation>
        </message>
        <message>
            <source>dilution step %1 to %2</source>
            <translation>Verdünnungsschritt %1 auf %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 mit %2</translation>
        </message>
        <message>
            <source>the laboratory's list of glassware when the run was planned</source>
            <translation>die Liste der Volumenmessgeräte des Labors, als der Lauf geplant wurde</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::UncertaintySources</name>
        <message>
            <source>%1: %2 (%3)</source>
            <translation>%1: %2 (%3)</translation>
        </message>
        <message>
            <source>%1: %2 %3 (%4)</source>
            <translation>%1: %2 %3 (%4)</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>stated with the standard</source>
            <translation>mit dem Standard angegeben</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known; enter what its recipe or its certificate says</source>
            <translation>nicht angegeben, gilt also als genau bekannt; einsetzen, was die Vorschrift oder das Zertifikat sagt</translation>
        </message>
        <message>
            <source>replicates</source>
            <translation>Parallelansätze</translation>
        </message>
        <message>
            <source>the run's own tubes: their scatter, or the readings' uncertainty where that is larger</source>
            <translation>die eigenen Ansätze des Laufs: ihre Streuung oder die Unsicherheit der Ablesungen, falls diese größer ist</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Fit</name>
        <message>
            <source>the run is made for %1, not for %2</source>
            <translation>der Lauf ist für %1, nicht für %2 angelegt</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; it has one for %2 nm</source>
            <translation>die Methode hat keinen Extinktionskoeffizienten für %1 nm; sie hat einen für %2 nm</translation>
        </message>
        <message>
            <source>the method takes no reading %1; it takes %2</source>
            <translation>die Methode nimmt keine Ablesung %1 vor; sie nimmt %2 vor</translation>
        </message>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>die Methode hat keine Komponente %1; berichtigen</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>der Ansatz enthält am Ende %1 mL; höchstens %2 mL sind zulässig</translation>
        </message>
        <message>
            <source>the method has no measurand %1; leave it out or correct it</source>
            <translation>die Methode hat keine Messgröße %1; weglassen oder berichtigen</translation>
        </message>
        <message>
            <source>calibration by the run's own standard needs a tube with a standard of %1</source>
            <translation>die Kalibrierung mit dem eigenen Standard des Laufs braucht einen Ansatz mit einem Standard für %1</translation>
        </message>
        <message>
            <source>a calibration line needs at least three different standard amounts of %1, not %2</source>
            <translation>eine Kalibriergerade braucht mindestens drei verschiedene Standardmengen für %1, nicht %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Soundness</name>
        <message>
            <source>the title</source>
            <translation>der Titel</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>die Kennung</translation>
        </message>
        <message>
            <source>must not be larger than makeUpTo_mL: %1 mL cannot be made up to %2 mL</source>
            <translation>darf nicht größer als makeUpTo_mL sein: %1 mL lassen sich nicht auf %2 mL auffüllen</translation>
        </message>
        <message>
            <source>dilutes more than %1 times; check the volumes</source>
            <translation>verdünnt mehr als %1-mal; die Volumina prüfen</translation>
        </message>
        <message>
            <source>is missing: a solid needs the mass that was weighed, in g</source>
            <translation>fehlt: ein Feststoff braucht die eingewogene Masse, in g</translation>
        </message>
        <message>
            <source>is missing: a solid needs the volume it was extracted into, in mL</source>
            <translation>fehlt: ein Feststoff braucht das Extraktionsvolumen, in mL</translation>
        </message>
        <message>
            <source>a liquid has no %1; leave it out or set the form to "solid"</source>
            <translation>bei einer Flüssigkeit gibt es kein %1; weglassen oder die Form auf "solid" setzen</translation>
        </message>
        <message>
            <source>the run has no sample %1; name the one that is repeated, or leave it out</source>
            <translation>der Lauf hat keine Probe %1; die wiederholte nennen oder weglassen</translation>
        </message>
        <message>
            <source>a sample cannot repeat itself; name the one that is repeated</source>
            <translation>eine Probe kann nicht sich selbst wiederholen; die wiederholte nennen</translation>
        </message>
        <message>
            <source>the sample %1 is a repeat itself; name the one that it repeats</source>
            <translation>die Probe %1 ist selbst eine Wiederholung; die von ihr wiederholte nennen</translation>
        </message>
        <message>
            <source>the sample %1 has another form; a repeat has the form of what it repeats</source>
            <translation>die Probe %1 hat eine andere Form; eine Wiederholung hat die Form dessen, was sie wiederholt</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier sample; give each its own</source>
            <translation>die Kennung %1 ist durch eine frühere Probe vergeben; jeder eine eigene geben</translation>
        </message>
        <message>
            <source>is missing: with usedAt goes the time it was made</source>
            <translation>fehlt: zu usedAt gehört die Herstellungszeit</translation>
        </message>
        <message>
            <source>is without effect, since no preparedAt is given: the stated concentration counts</source>
            <translation>ist wirkungslos, da preparedAt fehlt: Es zählt die angegebene Konzentration</translation>
        </message>
        <message>
            <source>must not lie before preparedAt; check dates and offsets</source>
            <translation>darf nicht vor preparedAt liegen; Daten und UTC-Versätze prüfen</translation>
        </message>
        <message>
            <source>is missing: give it, or startedAt in the run to stand in for it</source>
            <translation>fehlt: angeben, oder startedAt im Lauf als Ersatz</translation>
        </message>
        <message>
            <source>is missing, and the run's startedAt, which stands in for it, lies before preparedAt</source>
            <translation>fehlt, und startedAt des Laufs, das es ersetzt, liegt vor preparedAt</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier standard; give each its own</source>
            <translation>die Kennung %1 ist durch einen früheren Standard vergeben; jedem eine eigene geben</translation>
        </message>
        <message>
            <source>must be a fraction from 0 to below 1 (0.02 for 2 % an hour), not %1</source>
            <translation>muss ein Anteil von 0 bis unter 1 sein (0.02 für 2 % pro Stunde), nicht %1</translation>
        </message>
        <message>
            <source>the component's id</source>
            <translation>die Kennung der Komponente</translation>
        </message>
        <message>
            <source>the lot's number</source>
            <translation>die Nummer der Charge</translation>
        </message>
        <message>
            <source>lot %1 of %2 stands in the list already; name it once</source>
            <translation>Charge %1 von %2 steht bereits in der Liste; nur einmal nennen</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TimeFit</name>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>die Methode hat keine Komponente %1; berichtigen</translation>
        </message>
        <message>
            <source>the method takes no reading %1; correct it</source>
            <translation>die Methode nimmt keine Ablesung %1 vor; berichtigen</translation>
        </message>
        <message>
            <source>%1 min lies before %2 (%3 min), which comes first in the method; one of the two was marked at the wrong time</source>
            <translation>%1 min liegt vor %2 (%3 min), das in der Methode davor kommt; eines der beiden wurde zur falschen Zeit vermerkt</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TubeSoundness</name>
        <message>
            <source>the reason</source>
            <translation>der Grund</translation>
        </message>
        <message>
            <source>the id of the standard in it</source>
            <translation>die Kennung des Standards darin</translation>
        </message>
        <message>
            <source>a control names either a sample or a standard, exactly one of them</source>
            <translation>eine Kontrollprobe nennt entweder eine Probe oder einen Standard, genau eines davon</translation>
        </message>
        <message>
            <source>the id of the sample in it</source>
            <translation>die Kennung der Probe darin</translation>
        </message>
        <message>
            <source>the standard added and its volume</source>
            <translation>der zugegebene Standard und sein Volumen</translation>
        </message>
        <message>
            <source>is missing: a tube with the role %1 needs %2</source>
            <translation>fehlt: ein Ansatz mit der Rolle %1 braucht %2</translation>
        </message>
        <message>
            <source>does not go with the role %1; leave it out or correct the role</source>
            <translation>passt nicht zur Rolle %1; weglassen oder die Rolle berichtigen</translation>
        </message>
        <message>
            <source>the run has no sample %1; add it to samples or correct the id</source>
            <translation>der Lauf hat keine Probe %1; in samples aufnehmen oder die Kennung berichtigen</translation>
        </message>
        <message>
            <source>the run has no standard %1; add it to standards or correct the id</source>
            <translation>der Lauf hat keinen Standard %1; in standards aufnehmen oder die Kennung berichtigen</translation>
        </message>
        <message>
            <source>a series needs at least one reading; leave out what is not read yet</source>
            <translation>eine Ablesereihe braucht mindestens eine Ablesung; noch nicht Abgelesenes weglassen</translation>
        </message>
        <message>
            <source>must be later than the reading before: %1 min is not later than %2 min</source>
            <translation>muss später als die Ablesung davor sein: %1 min ist nicht später als %2 min</translation>
        </message>
        <message>
            <source>no tube holds the sample %1</source>
            <translation>kein Ansatz enthält die Probe %1</translation>
        </message>
        <message>
            <source>a run needs at least one tube</source>
            <translation>ein Lauf braucht mindestens einen Ansatz</translation>
        </message>
        <message>
            <source>a rack holds at most %1 tubes, not %2; split the run</source>
            <translation>ein Rack fasst höchstens %1 Ansätze, nicht %2; den Lauf teilen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::About</name>
        <message>
            <source>%1 %2: %3</source>
            <translation>%1 %2: %3</translation>
        </message>
        <message>
            <source>LGPL-3.0 or GPL; its charts GPL-3.0</source>
            <translation>LGPL-3.0 oder GPL; dessen Diagramme GPL-3.0</translation>
        </message>
        <message>
            <source>public domain</source>
            <translation>gemeinfrei</translation>
        </message>
        <message>
            <source>ISC licence</source>
            <translation>ISC-Lizenz</translation>
        </message>
        <message>
            <source>LGPL-2.1 or later</source>
            <translation>LGPL-2.1 oder später</translation>
        </message>
        <message>
            <source>MIT licence</source>
            <translation>MIT-Lizenz</translation>
        </message>
        <message>
            <source>Boost Software License 1.0</source>
            <translation>Boost Software License 1.0</translation>
        </message>
        <message>
            <source>Plateau %1
Bench program for enzymatic end-point assays read in a photometer.

Free software: GNU General Public License, version 3, without any warranty. Drawings and icons are its own.

It runs with:
%2
State colours: Okabe and Ito, Color Universal Design, 2008.

The supplier's instructions, your local safety rules and licensed practice come first. The person's name on a record is what was typed, not proof of identity.</source>
            <translation>Plateau %1
Arbeitsplatzprogramm für enzymatische Endpunkttests, die im Photometer abgelesen werden.

Freie Software: GNU General Public License, Version 3, ohne jede Gewährleistung. Zeichnungen und Symbole sind eigene.

Läuft mit:
%2
Statusfarben: Okabe und Ito, Color Universal Design, 2008.

Vorrang haben die Anweisungen des Lieferanten, die örtlichen Sicherheitsvorschriften und die berufsrechtlichen Vorschriften. Der Name der Person auf einer Aufzeichnung ist, was eingegeben wurde, kein Identitätsnachweis.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AbsorbanceChart</name>
        <message>
            <source>No reading of this series yet.</source>
            <translation>Noch keine Ablesung dieser Ablesereihe.</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>slope %1 per min</source>
            <translation>Steigung %1 pro min</translation>
        </message>
        <message>
            <source>slope %1 per min, standard error %2</source>
            <translation>Steigung %1 pro min, Standardfehler %2</translation>
        </message>
        <message>
            <source>Too few readings to say whether it has ended.</source>
            <translation>Zu wenige Ablesungen, um zu sagen, ob sie beendet ist.</translation>
        </message>
        <message>
            <source>Ended: it changes steadily.</source>
            <translation>Beendet: Sie ändert sich gleichmäßig.</translation>
        </message>
        <message>
            <source>Not ended yet: it still changes, or not steadily.</source>
            <translation>Noch nicht beendet: Sie ändert sich noch, oder nicht gleichmäßig.</translation>
        </message>
        <message>
            <source>%1: %2, in the line</source>
            <translation>%1: %2, auf der Geraden</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 at 0 min by the line through the last %2 points, %3.</source>
            <translation>%1 bei 0 min nach der Geraden durch die letzten %2 Punkte, %3.</translation>
        </message>
        <message>
            <source>%1 at the addition of %2 by the line through the last %3 points, %4.</source>
            <translation>%1 bei Zugabe von %2 nach der Geraden durch die letzten %3 Punkte, %4.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ActionWords</name>
        <message>
            <source>Rack %1, tube %2: key %3 again</source>
            <translation>Rack %1, Ansatz %2: %3 erneut eingeben</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: key %3</source>
            <translation>Rack %1, Ansatz %2: %3 eingeben</translation>
        </message>
        <message>
            <source>Rack %1: review and decide</source>
            <translation>Rack %1: bewerten und entscheiden</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Appraisal</name>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1 mL, not made up</source>
            <translation>%1 mL, nicht ausgeglichen</translation>
        </message>
        <message>
            <source>%1 – %2</source>
            <translation>%1 – %2</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Detection</source>
            <translation>Nachweis</translation>
        </message>
        <message>
            <source>Quantification</source>
            <translation>Bestimmung</translation>
        </message>
        <message>
            <source>Detection: a difference of %1 in the largest sample volume, undiluted.</source>
            <translation>Nachweis: eine Differenz von %1 im größten Probenvolumen, unverdünnt.</translation>
        </message>
        <message>
            <source>That difference is common practice, no source; enter your photometer's instead.</source>
            <translation>Diese Differenz ist gängige Praxis, ohne Quelle; die des eigenen Photometers dort einsetzen.</translation>
        </message>
        <message>
            <source>Quantification: the window's smallest net signal, %1.</source>
            <translation>Bestimmung: das kleinste Nettosignal des Fensters, %1.</translation>
        </message>
        <message>
            <source>Quantification: 10/3.3 of that difference, %1 (common practice, no source), as the window names no smallest net signal.</source>
            <translation>Bestimmung: 10/3,3 dieser Differenz, %1 (gängige Praxis, ohne Quelle), da das Fenster kein kleinstes Nettosignal nennt.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AppraisalPanel</name>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>In each tube (mL)</source>
            <translation>In jedem Ansatz (mL)</translation>
        </message>
        <message>
            <source>Bottle, mL</source>
            <translation>Flasche, mL</translation>
        </message>
        <message>
            <source>Contents of the bottle (mL)</source>
            <translation>Inhalt der Flasche (mL)</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Window, undiluted, in g/L</source>
            <translation>Fenster, unverdünnt, in g/L</translation>
        </message>
        <message>
            <source>Factor: g/L for a net signal of 1</source>
            <translation>Faktor: g/L bei einem Nettosignal von 1</translation>
        </message>
        <message>
            <source>Smallest that can be determined, in g/L</source>
            <translation>Kleinster bestimmbarer Wert, in g/L</translation>
        </message>
        <message>
            <source>Smallest difference in absorbance that can be resolved</source>
            <translation>Kleinste unterscheidbare Extinktionsdifferenz</translation>
        </message>
        <message>
            <source>Tubes that a bottle serves</source>
            <translation>Ansätze, für die eine Flasche reicht</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BackupLine</name>
        <message>
            <source>Backing up: %1 %</source>
            <translation>Sicherung läuft: %1 %</translation>
        </message>
        <message>
            <source>No backup yet</source>
            <translation>Noch keine Sicherung</translation>
        </message>
        <message>
            <source>Backed up %1</source>
            <translation>Sicherungskopie vom %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BarChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Es gibt noch nichts darzustellen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSession</name>
        <message>
            <source>the program</source>
            <translation>das Programm</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSettingsDialog</name>
        <message>
            <source>&amp;Sound when something is due</source>
            <translation>&amp;Ton, wenn etwas fällig ist</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>&amp;Digits alone are thousandths: 512 is 0.512</source>
            <translation>&amp;Ziffern allein sind Tausendstel: 512 ist 0,512</translation>
        </message>
        <message>
            <source>&amp;Keep</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>Sound, lead time and keying</source>
            <translation>Ton, Vorlaufzeit und Eingabe</translation>
        </message>
        <message>
            <source>S&amp;oon</source>
            <translation>Bal&amp;d</translation>
        </message>
        <message>
            <source>&amp;Now</source>
            <translation>&amp;Jetzt</translation>
        </message>
        <message>
            <source>La&amp;te</source>
            <translation>&amp;Spät</translation>
        </message>
        <message>
            <source>&amp;Volume</source>
            <translation>&amp;Lautstärke</translation>
        </message>
        <message>
            <source>Listen</source>
            <translation>Anhören</translation>
        </message>
        <message>
            <source>Lead ti&amp;me, before it is due</source>
            <translation>&amp;Vorlaufzeit vor der Fälligkeit</translation>
        </message>
        <message>
            <source>Soon is one low tone, now two, late three high ones.</source>
            <translation>Bald ist ein tiefer Ton, jetzt zwei, spät drei hohe.</translation>
        </message>
        <message>
            <source>The lead time has to be a whole number of seconds from 0 to %1.</source>
            <translation>Die Vorlaufzeit muss eine ganze Zahl von Sekunden von 0 bis %1 sein.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>&amp;Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BookEntry</name>
        <message>
            <source>Today</source>
            <translation>Heute</translation>
        </message>
        <message>
            <source>Toda&amp;y</source>
            <translation>&amp;Heute</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Laborjournal</translation>
        </message>
        <message>
            <source>&amp;Notebook</source>
            <translation>Labor&amp;journal</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Regelkarten</translation>
        </message>
        <message>
            <source>&amp;Control charts</source>
            <translation>&amp;Regelkarten</translation>
        </message>
        <message>
            <source>Methods</source>
            <translation>Methoden</translation>
        </message>
        <message>
            <source>&amp;Methods</source>
            <translation>&amp;Methoden</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>&amp;Samples</source>
            <translation>Pro&amp;ben</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>&amp;Lots</source>
            <translation>&amp;Chargen</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>St&amp;andards</source>
            <translation>&amp;Standards</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Geräte</translation>
        </message>
        <message>
            <source>E&amp;quipment</source>
            <translation>&amp;Geräte</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Labor</translation>
        </message>
        <message>
            <source>Labora&amp;tory</source>
            <translation>&amp;Labor</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personen</translation>
        </message>
        <message>
            <source>P&amp;eople</source>
            <translation>Pers&amp;onen</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Grenzwerte</translation>
        </message>
        <message>
            <source>Limits of pro&amp;ducts</source>
            <translation>Grenzwerte der Pro&amp;dukte</translation>
        </message>
        <message>
            <source>Records</source>
            <translation>Aufzeichnungen</translation>
        </message>
        <message>
            <source>Records and bac&amp;kups</source>
            <translation>Aufzeichnungen und Sicher&amp;ungen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BudgetOwners</name>
        <message>
            <source>A part that begins with a method's name comes from the run by that method; its own review says whose it is.</source>
            <translation>Ein Teil, der mit dem Namen einer Methode beginnt, stammt aus dem Lauf nach dieser Methode; dessen eigene Bewertung nennt den Verantwortlichen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellDelegate</name>
        <message>
            <source>new row</source>
            <translation>neue Zeile</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsModel</name>
        <message>
            <source>new row</source>
            <translation>neue Zeile</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsTable</name>
        <message>
            <source>Type to fill a cell, Enter goes on, F2 changes what is there. Insert adds a row, Ctrl+Delete takes it away, Alt+Up and Alt+Down move it, Ctrl+Z takes back.</source>
            <translation>Tippen füllt eine Zelle, Enter geht weiter, F2 ändert den Inhalt. Einfg fügt eine Zeile ein, Strg+Entf entfernt sie, Alt+Auf und Alt+Ab verschieben sie, Strg+Z macht rückgängig.</translation>
        </message>
        <message>
            <source>Insert row</source>
            <translation>Zeile einfügen</translation>
        </message>
        <message>
            <source>Remove row</source>
            <translation>Zeile entfernen</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Nach oben</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Nach unten</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartExport</name>
        <message>
            <source>The chart was not saved as %1: see that the folder is there, may be written to and has room.</source>
            <translation>Die Karte wurde nicht als %1 gespeichert: prüfen, ob der Ordner vorhanden ist, beschrieben werden darf und Platz hat.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartView</name>
        <message>
            <source>Visible part of the chart</source>
            <translation>Sichtbarer Teil der Karte</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartsPage</name>
        <message>
            <source>Control chart</source>
            <translation>Regelkarte</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Was außer Kontrolle ist</translation>
        </message>
        <message>
            <source>First choose the point at which the limits are to begin.</source>
            <translation>Zuerst den Punkt wählen, mit dem die Grenzen beginnen sollen.</translation>
        </message>
        <message>
            <source>settings of a control chart that are not saved yet</source>
            <translation>noch nicht gespeicherte Einstellungen einer Regelkarte</translation>
        </message>
        <message>
            <source>a reason at a point of a control chart</source>
            <translation>ein Grund an einem Punkt einer Regelkarte</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>Nothing of %1 has been decided yet; another chart is shown.</source>
            <translation>Von %1 ist noch nichts entschieden; eine andere Karte wird gezeigt.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Version %1, gespeichert von %2, %3.</translation>
        </message>
        <message>
            <source>Not saved yet: these are the usual settings.</source>
            <translation>Noch nicht gespeichert: Das sind die üblichen Einstellungen.</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>Grenzwert %1</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>Schwellenwert %1</translation>
        </message>
        <message>
            <source>No run matches what is chosen above. Clear the lot, the person or a day to see more.</source>
            <translation>Die Auswahl oben lässt keinen Lauf übrig. Charge, Person oder einen Tag wegnehmen, um mehr zu sehen.</translation>
        </message>
        <message>
            <source>No limits are kept for this product. Bars are expanded uncertainties.</source>
            <translation>Für dieses Produkt werden keine Grenzwerte geführt. Balken sind erweiterte Unsicherheiten.</translation>
        </message>
        <message>
            <source>Limits of the product: %1. Bars are expanded uncertainties.</source>
            <translation>Grenzwerte des Produkts: %1. Balken sind erweiterte Unsicherheiten.</translation>
        </message>
        <message>
            <source>And %1 more before these; choose days above to see them.</source>
            <translation>Und %1 weitere davor; oben Tage wählen, um sie zu sehen.</translation>
        </message>
        <message>
            <source>Nothing lies beyond a limit.</source>
            <translation>Nichts liegt jenseits eines Grenzwerts.</translation>
        </message>
        <message>
            <source>Nothing is out of control.</source>
            <translation>Nichts ist außer Kontrolle.</translation>
        </message>
        <message>
            <source>The settings of this chart are saved; those before stay on record.</source>
            <translation>Die Einstellungen dieser Karte sind gespeichert; die früheren bleiben verzeichnet.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>Es gibt nichts zu speichern: Es wurde bereits so gespeichert.</translation>
        </message>
        <message>
            <source>Save the chart</source>
            <translation>Karte speichern</translation>
        </message>
        <message>
            <source>%1.png</source>
            <translation>%1.png</translation>
        </message>
        <message>
            <source>Picture (*.png);;Drawing (*.svg);;Table (*.csv)</source>
            <translation>Bild (*.png);;Zeichnung (*.svg);;Tabelle (*.csv)</translation>
        </message>
        <message>
            <source>The chart is saved as %1.</source>
            <translation>Die Karte ist als %1 gespeichert.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Regelkarten</translation>
        </message>
        <message>
            <source>Save the &amp;chart as…</source>
            <translation>Kar&amp;te speichern als…</translation>
        </message>
        <message>
            <source>Limits and rules, and the loss of the standard</source>
            <translation>Grenzen und Regeln, und der Verlust des Standards</translation>
        </message>
        <message>
            <source>Limits and rules</source>
            <translation>Grenzen und Regeln</translation>
        </message>
        <message>
            <source>Loss per hour</source>
            <translation>Verlust pro Stunde</translation>
        </message>
        <message>
            <source>Nothing of this kind has been decided yet. Accept runs with standards, controls, blanks or duplicates in Review; they appear here by themselves.</source>
            <translation>Von dieser Art ist noch nichts entschieden. In der Bewertung Läufe mit Standards, Kontrollproben, Blindwerten oder Doppelbestimmungen annehmen; sie erscheinen hier von selbst.</translation>
        </message>
        <message>
            <source>Nothing stands out against the provisional limits. That is no verdict yet.</source>
            <translation>Gegen die vorläufigen Grenzen fällt nichts auf. Das ist noch kein Urteil.</translation>
        </message>
        <message>
            <source>No verdict: this chart has no limits.</source>
            <translation>Kein Urteil: Diese Karte hat keine Grenzen.</translation>
        </message>
        <message>
            <source>Version %1 for all materials together, saved by %2, %3. It holds for this one until its own settings are saved.</source>
            <translation>Version %1 für alle Materialien zusammen, gespeichert von %2, %3. Sie gilt für dieses, bis seine eigenen Einstellungen gespeichert sind.</translation>
        </message>
        <message>
            <source>It was saved with fewer values than limits need; here their number is raised.</source>
            <translation>Gespeichert wurde sie mit weniger Werten, als Grenzen brauchen; hier ist deren Anzahl erhöht.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CheckForm</name>
        <message>
            <source>&amp;What is checked</source>
            <translation>&amp;Was geprüft wird</translation>
        </message>
        <message>
            <source>&amp;Day</source>
            <translation>&amp;Tag</translation>
        </message>
        <message>
            <source>A certificate or an instruction: for limits other than those suggested, and for what it was checked with.</source>
            <translation>Ein Zertifikat, eine Anweisung; für Grenzwerte, die nicht die vorgeschlagenen sind, und dafür, womit geprüft wurde.</translation>
        </message>
        <message>
            <source>Limits and standards fro&amp;m</source>
            <translation>Her&amp;kunft der Grenzwerte und Referenzen</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>&amp;Bemerkung (darf leer sein)</translation>
        </message>
        <message>
            <source>&amp;Store the check</source>
            <translation>P&amp;rüfung speichern</translation>
        </message>
        <message>
            <source>How it is done, and cautions</source>
            <translation>Durchführung und Warnhinweise</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Was sich ergibt</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Check of %1</source>
            <translation>Prüfung von %1</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Lines of the check</source>
            <translation>Zeilen der Prüfung</translation>
        </message>
        <message>
            <source>Cannot be judged yet. %1</source>
            <translation>Noch nicht zu beurteilen. %1</translation>
        </message>
        <message>
            <source>Passed: everything lies within its limits.</source>
            <translation>Bestanden: Alles liegt innerhalb der Grenzwerte.</translation>
        </message>
        <message>
            <source>Failed. Once it is stored, runs that use it carry a warning. Take it out of use, or have it put right and check it again.</source>
            <translation>Nicht bestanden. Nach dem Speichern werden Läufe, die es verwenden, gewarnt. Außer Gebrauch nehmen oder instand setzen lassen und erneut prüfen.</translation>
        </message>
        <message>
            <source>Standard uncertainty for the budgets (k = 1): %1.</source>
            <translation>Standardunsicherheit für die Budgets (k = 1): %1.</translation>
        </message>
        <message>
            <source>Back to the item  Esc</source>
            <translation>Zurück zum Gerät  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChecksModel</name>
        <message>
            <source>fail</source>
            <translation>nicht bestanden</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>wiederholen</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>ausstehend</translation>
        </message>
        <message>
            <source>not judged</source>
            <translation>nicht beurteilt</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>vermerkt</translation>
        </message>
        <message>
            <source>pass</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenzwert</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Grenzwert aus</translation>
        </message>
        <message>
            <source>not made</source>
            <translation>nicht möglich</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Choices</name>
        <message>
            <source>point or comma</source>
            <translation>Punkt oder Komma</translation>
        </message>
        <message>
            <source>point, as 0.512</source>
            <translation>Punkt, etwa 0.512</translation>
        </message>
        <message>
            <source>comma, as 0,512</source>
            <translation>Komma, etwa 0,512</translation>
        </message>
        <message>
            <source>ASCII or Unicode</source>
            <translation>ASCII oder Unicode</translation>
        </message>
        <message>
            <source>Latin-1 (Western European)</source>
            <translation>Latin-1 (Westeuropa)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Colours</name>
        <message>
            <source>C&amp;olours</source>
            <translation>&amp;Farben</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <translation>Wie der &amp;Desktop</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Hell</translation>
        </message>
        <message>
            <source>D&amp;ark</source>
            <translation>D&amp;unkel</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnDialog</name>
        <message>
            <source>The lines and what is understood</source>
            <translation>Die Zeilen und was verstanden wird</translation>
        </message>
        <message>
            <source>&amp;Paste</source>
            <translation>&amp;Einfügen</translation>
        </message>
        <message>
            <source>Another &amp;file…</source>
            <translation>Andere &amp;Datei…</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>&amp;Vergessen</translation>
        </message>
        <message>
            <source>Ta&amp;ke the readings</source>
            <translation>Ablesungen über&amp;nehmen</translation>
        </message>
        <message>
            <source>Paste a column of readings</source>
            <translation>Spalte mit Ablesungen einfügen</translation>
        </message>
        <message>
            <source>Readings from a file</source>
            <translation>Ablesungen aus einer Datei</translation>
        </message>
        <message>
            <source>not remembered</source>
            <translation>nicht gemerkt</translation>
        </message>
        <message>
            <source>Remem&amp;bered</source>
            <translation>&amp;Gemerkt</translation>
        </message>
        <message>
            <source>Re&amp;member as</source>
            <translation>&amp;Merken als</translation>
        </message>
        <message>
            <source>&amp;Text with the readings</source>
            <translation>&amp;Text mit den Ablesungen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>Text and CSV (*.txt *.csv *.tsv *.dat);;All files (*)</source>
            <translation>Text und CSV (*.txt *.csv *.tsv *.dat);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Copy the column where it stands and paste it here.</source>
            <translation>Die Spalte an ihrem Ort kopieren und hier einfügen.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1</source>
            <translation>Noch kann nichts übernommen werden: %1</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1 lines are not readings; the first is %2</source>
            <translation>Noch kann nichts übernommen werden: %1 Zeilen sind keine Ablesungen; die erste ist %2</translation>
        </message>
        <message>
            <source>1 reading.</source>
            <translation>1 Ablesung.</translation>
        </message>
        <message>
            <source>There is no reading in it; look at the lines of heading.</source>
            <translation>Es ist keine Ablesung darin; die Überschriftzeilen ansehen.</translation>
        </message>
        <message>
            <source>%1 readings.</source>
            <translation>%1 Ablesungen.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: the column counts the tubes. Choose the one of the absorbance, and this one for the tube.</source>
            <translation>Noch kann nichts übernommen werden: Die Spalte zählt die Ansätze. Die Spalte der Extinktion wählen und diese als Spalte des Ansatzes.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnModel</name>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Text</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Extinktion</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparedRunsModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>differs</source>
            <translation>verschieden</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>gleich</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparedRunsView</name>
        <message>
            <source>Only &amp;what differs</source>
            <translation>Nur Unterschie&amp;de</translation>
        </message>
        <message>
            <source>Two runs side by side</source>
            <translation>Zwei Läufe nebeneinander</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Zur&amp;ück zur Liste</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>The two are the same in everything that is compared here.</source>
            <translation>Die beiden sind in allem gleich, was hier verglichen wird.</translation>
        </message>
        <message>
            <source>%1 of %2 lines differ and stand first.</source>
            <translation>%1 von %2 Zeilen unterscheiden sich und stehen zuerst.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonModel</name>
        <message>
            <source>Field</source>
            <translation>Feld</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonView</name>
        <message>
            <source>Versions</source>
            <translation>Versionen</translation>
        </message>
        <message>
            <source>What differs</source>
            <translation>Unterschiede</translation>
        </message>
        <message>
            <source>This is the version on show. Choose another one to see what differs.</source>
            <translation>Das ist die gezeigte Version. Eine andere wählen, um die Unterschiede zu sehen.</translation>
        </message>
        <message>
            <source>There is no other version of this method.</source>
            <translation>Von dieser Methode gibt es keine andere Version.</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>Version %1</translation>
        </message>
        <message>
            <source>Fields that differ between %1 and %2: %3. Enter on a version opens it.</source>
            <translation>Felder, in denen sich %1 und %2 unterscheiden: %3. Enter auf einer Version öffnet sie.</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Version %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CopiesView</name>
        <message>
            <source>Notebooks (*.plateau)</source>
            <translation>Laborjournale (*.plateau)</translation>
        </message>
        <message>
            <source>%1 kB</source>
            <translation>%1 kB</translation>
        </message>
        <message>
            <source>Stopped; nothing was made, and nothing is known of the rest.</source>
            <translation>Angehalten; nichts wurde erstellt, und über den Rest ist nichts bekannt.</translation>
        </message>
        <message>
            <source>Are the records intact?</source>
            <translation>Sind die Aufzeichnungen unversehrt?</translation>
        </message>
        <message>
            <source>Verif&amp;y now</source>
            <translation>Jet&amp;zt verifizieren</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>Anha&amp;lten</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>Backups</source>
            <translation>Sicherungen</translation>
        </message>
        <message>
            <source>There is no backup of this notebook yet: make one now.</source>
            <translation>Von diesem Laborjournal gibt es noch keine Sicherung: jetzt eine erstellen.</translation>
        </message>
        <message>
            <source>Backups, the newest first</source>
            <translation>Sicherungen, die neueste zuerst</translation>
        </message>
        <message>
            <source>Restore &amp;into a new notebook…</source>
            <translation>In ein neues Laborjournal wie&amp;derherstellen…</translation>
        </message>
        <message>
            <source>&amp;Keep them elsewhere…</source>
            <translation>Anders&amp;wo aufbewahren…</translation>
        </message>
        <message>
            <source>For keeping elsewhere</source>
            <translation>Zum Aufbewahren an anderer Stelle</translation>
        </message>
        <message>
            <source>An archive is a notebook of everything up to the end of a year, read-only; nothing is taken out of this one. An export is everything as JSON and CSV, with a page that says how to read it without the program; imported, it is the same notebook again.</source>
            <translation>Ein Archiv ist ein Laborjournal mit allem bis zum Ende eines Jahres, nur zum Lesen; aus diesem wird nichts entfernt. Ein Export ist alles als JSON und CSV, mit einer Seite, die das Lesen ohne das Programm erklärt; importiert ist er wieder dasselbe Laborjournal.</translation>
        </message>
        <message>
            <source>&amp;Archive of the year…</source>
            <translation>Archi&amp;v des Jahres…</translation>
        </message>
        <message>
            <source>Year to archive</source>
            <translation>Zu archivierendes Jahr</translation>
        </message>
        <message>
            <source>E&amp;xport everything…</source>
            <translation>Alles e&amp;xportieren…</translation>
        </message>
        <message>
            <source>Notebook o&amp;ut of an export…</source>
            <translation>La&amp;borjournal aus einem Export…</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Erstellt</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>File</source>
            <translation>Datei</translation>
        </message>
        <message>
            <source>Verifying</source>
            <translation>Verifizierung</translation>
        </message>
        <message numerus="yes">
            <source>%n findings. The first: %1: %2. plateau verify lists them all.</source>
            <translation>
                <numerusform>%n Befund: %1: %2.</numerusform>
                <numerusform>%n Befunde. Der erste: %1: %2. plateau verify listet alle auf.</numerusform>
            </translation>
        </message>
        <message>
            <source>Made and checked: %1</source>
            <translation>Erstellt und geprüft: %1</translation>
        </message>
        <message>
            <source>Restore into a new notebook</source>
            <translation>In ein neues Laborjournal wiederherstellen</translation>
        </message>
        <message>
            <source>restored.plateau</source>
            <comment>a file name</comment>
            <translation>wiederhergestellt.plateau</translation>
        </message>
        <message>
            <source>Folder for backups</source>
            <translation>Ordner für Sicherungen</translation>
        </message>
        <message>
            <source>Archive of %1</source>
            <translation>Archiv von %1</translation>
        </message>
        <message>
            <source>notebook-%1.plateau</source>
            <comment>a file name</comment>
            <translation>laborjournal-%1.plateau</translation>
        </message>
        <message>
            <source>Making the archive</source>
            <translation>Archiv wird erstellt</translation>
        </message>
        <message>
            <source>Export everything into a new folder in</source>
            <translation>Alles in einen neuen Ordner exportieren in</translation>
        </message>
        <message>
            <source>Exporting</source>
            <translation>Export läuft</translation>
        </message>
        <message>
            <source>The folder that an export made</source>
            <translation>Der Ordner, den ein Export angelegt hat</translation>
        </message>
        <message>
            <source>Import into a new notebook</source>
            <translation>In ein neues Laborjournal importieren</translation>
        </message>
        <message>
            <source>imported.plateau</source>
            <comment>a file name</comment>
            <translation>importiert.plateau</translation>
        </message>
        <message>
            <source>Importing</source>
            <translation>Import läuft</translation>
        </message>
        <message>
            <source>Stopped; no backup was made.</source>
            <translation>Angehalten; keine Sicherung wurde erstellt.</translation>
        </message>
        <message>
            <source>They go to %1, if the notebook has changed since the last one: when the program starts, every hour, and when it ends, alongside the work. Each is opened and checked. %2</source>
            <translation>Sie gehen nach %1, wenn sich das Laborjournal seit der letzten geändert hat: beim Programmstart, jede Stunde und beim Beenden, neben der Arbeit her. Jede wird geöffnet und geprüft. %2</translation>
        </message>
        <message>
            <source>Intact: %1 audit entries, %2 runs, %3 decisions evaluated and %4 checks of equipment worked out again with the same result. Audit head %5.</source>
            <translation>Unversehrt: %1 Audit-Einträge, %2 Läufe, %3 Entscheidungen neu ausgewertet und %4 Geräteprüfungen neu berechnet, mit demselben Ergebnis. Audit-Kopf %5.</translation>
        </message>
        <message>
            <source>Restoring</source>
            <translation>Wiederherstellung</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Fortschritt der Sicherung</translation>
        </message>
        <message>
            <source>Stop the ba&amp;ckup</source>
            <translation>Si&amp;cherung anhalten</translation>
        </message>
        <message>
            <source>%1 is the notebook as it was then; this one is kept as it is. Open it by File, Another notebook.</source>
            <translation>%1 ist das Laborjournal, wie es damals war; dieses bleibt, wie es ist. Öffnen mit Datei, Anderes Laborjournal.</translation>
        </message>
        <message>
            <source>Back up no&amp;w</source>
            <translation>Jetzt si&amp;chern</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DayExample</name>
        <message>
            <source>as %1</source>
            <comment>a day, in an empty field</comment>
            <translation>z. B. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DecisionPanel</name>
        <message>
            <source>&amp;Decided by</source>
            <translation>Entschieden &amp;von</translation>
        </message>
        <message>
            <source>Pa&amp;ssphrase</source>
            <translation>Passph&amp;rase</translation>
        </message>
        <message>
            <source>Sa&amp;mple by sample</source>
            <translation>Probe für Pro&amp;be</translation>
        </message>
        <message>
            <source>&amp;Accept</source>
            <translation>Anneh&amp;men</translation>
        </message>
        <message>
            <source>Re&amp;ject</source>
            <translation>Ver&amp;werfen</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Grun&amp;d</translation>
        </message>
        <message>
            <source>by %1</source>
            <translation>von %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>Grund: %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>the decision, not taken yet: %1</source>
            <translation>die noch nicht getroffene Entscheidung: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>This becomes revision %1. %2</source>
            <translation>Das wird Revision %1. %2</translation>
        </message>
        <message>
            <source>The run was not accepted: first decide on %1, which must be investigated.</source>
            <translation>Der Lauf wurde nicht angenommen: zuerst über %1 entscheiden, das abgeklärt werden muss.</translation>
        </message>
        <message>
            <source>The run was not decided on: how %1 is to be repeated cannot be read: %2.</source>
            <translation>Über den Lauf wurde nicht entschieden: Wie %1 zu wiederholen ist, ist nicht lesbar: %2.</translation>
        </message>
        <message>
            <source>Say who decides: type a name.</source>
            <translation>Angeben, wer entscheidet: einen Namen eingeben.</translation>
        </message>
        <message>
            <source>The passphrase was taken out, since nobody did anything for a minute: type it again.</source>
            <translation>Die Passphrase wurde aus dem Feld gelöscht, da eine Minute lang niemand etwas tat: erneut eingeben.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DecisionText</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>Analytiker</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>Bewerter</translation>
        </message>
        <message>
            <source>head</source>
            <translation>Laborleitung</translation>
        </message>
        <message>
            <source>to be repeated, %1</source>
            <translation>zu wiederholen, %1</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>zu wiederholen</translation>
        </message>
        <message>
            <source>Sample %1: %2</source>
            <translation>Probe %1: %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>Sample %1: to be repeated, as the evaluation advises</source>
            <translation>Probe %1: zu wiederholen, wie die Auswertung empfiehlt</translation>
        </message>
        <message>
            <source>Accepted by %1, %2</source>
            <translation>Angenommen von %1, %2</translation>
        </message>
        <message>
            <source>Rejected by %1, %2</source>
            <translation>Verworfen von %1, %2</translation>
        </message>
        <message>
            <source>revision %1, signed as %2</source>
            <translation>Revision %1, signiert als %2</translation>
        </message>
        <message>
            <source>revision %1, unsigned</source>
            <translation>Revision %1, nicht signiert</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>signed as %1</source>
            <translation>signiert als %1</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>nicht signiert</translation>
        </message>
        <message>
            <source>Put back on the bench by %1, %2 (%3); revision %4 begins</source>
            <translation>Wieder in Arbeit genommen von %1, %2 (%3); Revision %4 beginnt</translation>
        </message>
        <message>
            <source>%1: %2 %3 by %4</source>
            <translation>%1: %2 %3 von %4</translation>
        </message>
        <message>
            <source>%1 (stands)</source>
            <translation>%1 (gilt)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DestinationsModel</name>
        <message>
            <source>On the bench</source>
            <translation>In Arbeit</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Rack %1</translation>
        </message>
        <message>
            <source>Books</source>
            <translation>Bücher</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DoseTicker</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken.</translation>
        </message>
        <message>
            <source>Nothing was ticked: %1 of tube %2 in rack %3 is not read yet, and after %4 it cannot be. Read it first, or tick the tube on the Pipette page.</source>
            <translation>Nichts wurde abgehakt: %1 von Ansatz %2 in Rack %3 ist noch nicht abgelesen, und nach %4 ist das nicht mehr möglich. Zuerst ablesen oder den Ansatz auf der Seite Pipettieren abhaken.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftFields</name>
        <message>
            <source>%1, from</source>
            <translation>%1, von</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>%1, to</source>
            <translation>%1, bis</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftTables</name>
        <message>
            <source>Wavelength (nm)</source>
            <translation>Wellenlänge (nm)</translation>
        </message>
        <message>
            <source>Absorptivity (L/(mol cm))</source>
            <translation>Extinktionskoeffizient (L/(mol cm))</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Volume (mL)</source>
            <translation>Volumen (mL)</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Reagenz</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Diluent</source>
            <translation>Verdünnungsmittel</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Startreagenz</translation>
        </message>
        <message>
            <source>from</source>
            <translation>von</translation>
        </message>
        <message>
            <source>Smallest volume allowed (mL)</source>
            <translation>Kleinstes zulässiges Volumen (mL)</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>Largest volume allowed (mL)</source>
            <translation>Größtes zulässiges Volumen (mL)</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspension</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Zugeben</translation>
        </message>
        <message>
            <source>Mix</source>
            <translation>Mischen</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Warten</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>Shortest wait (min)</source>
            <translation>Kürzeste Wartezeit (min)</translation>
        </message>
        <message>
            <source>Longest wait (min)</source>
            <translation>Längste Wartezeit (min)</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>Lowest temperature (°C)</source>
            <translation>Niedrigste Temperatur (°C)</translation>
        </message>
        <message>
            <source>Highest temperature (°C)</source>
            <translation>Höchste Temperatur (°C)</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>In the tube afterwards (mL)</source>
            <translation>Danach im Ansatz (mL)</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>M (g/mol)</source>
            <translation>M (g/mol)</translation>
        </message>
        <message>
            <source>Molar mass (g/mol)</source>
            <translation>Molare Masse (g/mol)</translation>
        </message>
        <message>
            <source>n</source>
            <translation>n</translation>
        </message>
        <message>
            <source>Chromophore molecules for each molecule</source>
            <translation>Chromophormoleküle je Molekül</translation>
        </message>
        <message>
            <source>From (g/L)</source>
            <translation>Von (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold from (g/L)</source>
            <translation>Proben enthalten gewöhnlich ab (g/L)</translation>
        </message>
        <message>
            <source>To (g/L)</source>
            <translation>Bis (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold up to (g/L)</source>
            <translation>Proben enthalten gewöhnlich bis zu (g/L)</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Differenz</translation>
        </message>
        <message>
            <source>Coupled indicator</source>
            <translation>Gekoppelter Indikator</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>From reading</source>
            <translation>Von Ablesung</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Mitte</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Mittlere Ablesung</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>To reading</source>
            <translation>Bis Ablesung</translation>
        </message>
        <message>
            <source>Quantity</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>From the method</source>
            <translation>Aus der Methode</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Mal</translation>
        </message>
        <message>
            <source>this method</source>
            <translation>diese Methode</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftedUncertainty</name>
        <message>
            <source>typed for this run, in place of %1 (%2)</source>
            <translation>für diesen Lauf eingegeben, anstelle von %1 (%2)</translation>
        </message>
        <message>
            <source>whoever plans the run</source>
            <translation>wer den Lauf plant</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EntryPanel</name>
        <message>
            <source>&amp;Store</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>Ret&amp;ype  Esc</source>
            <translation>Neu &amp;eingeben  Esc</translation>
        </message>
        <message>
            <source>Read aga&amp;in</source>
            <translation>Erneut a&amp;blesen</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>Dieses &amp;Rack bewerten</translation>
        </message>
        <message>
            <source>Absorbance of %1</source>
            <translation>Extinktion von %1</translation>
        </message>
        <message>
            <source>Type the absorbance as the photometer shows it, then press Enter.</source>
            <translation>Die Extinktion eingeben, wie das Photometer sie anzeigt, dann Enter drücken.</translation>
        </message>
        <message>
            <source>Say why the stored reading is corrected; it stays readable beside the new one.</source>
            <translation>Angeben, warum die gespeicherte Ablesung korrigiert wird; sie bleibt neben der neuen lesbar.</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Angeben, warum der Ansatz doch zählt, dann Enter drücken.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Angeben, was mit dem Ansatz geschah, dann Enter drücken.</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>R&amp;eason for the correction</source>
            <translation>&amp;Grund der Korrektur</translation>
        </message>
        <message>
            <source>Why th&amp;e tube counts after all</source>
            <translation>&amp;Warum der Ansatz doch zählt</translation>
        </message>
        <message>
            <source>What happ&amp;ened to the tube</source>
            <translation>Was mit dem Ansatz ges&amp;chah</translation>
        </message>
        <message>
            <source>It &amp;counts</source>
            <translation>Er &amp;zählt</translation>
        </message>
        <message>
            <source>It does not &amp;count</source>
            <translation>Er zählt &amp;nicht</translation>
        </message>
        <message>
            <source>&amp;Keep as read  Enter</source>
            <translation>Wie abgelesen be&amp;halten  Enter</translation>
        </message>
        <message>
            <source>&amp;Store the correction</source>
            <translation>&amp;Korrektur speichern</translation>
        </message>
        <message>
            <source>&amp;Store as a further reading</source>
            <translation>&amp;Als weitere Ablesung speichern</translation>
        </message>
        <message>
            <source>Correct the last one &amp;instead</source>
            <translation>Stattdessen die le&amp;tzte korrigieren</translation>
        </message>
        <message>
            <source>Tube not spoilt  /</source>
            <translation>Ansatz nicht unbrauchbar  /</translation>
        </message>
        <message>
            <source>Tube spoilt  /</source>
            <translation>Ansatz unbrauchbar  /</translation>
        </message>
        <message>
            <source>Not stored yet: the table and the results show what the correction would do. Enter goes to the reason, Enter there stores it, Esc leaves the reading as it is.</source>
            <translation>Noch nicht gespeichert: Tabelle und Ergebnisse zeigen, was die Korrektur bewirken würde. Enter geht zum Grund, dort speichert Enter, Esc lässt die Ablesung, wie sie ist.</translation>
        </message>
        <message>
            <source>Keep the stored va&amp;lue</source>
            <translation>Gespeicherten &amp;Wert behalten</translation>
        </message>
        <message>
            <source>Cance&amp;l  Esc</source>
            <translation>&amp;Abbrechen  Esc</translation>
        </message>
        <message>
            <source>Read again: what was read before stays, and the result rests on the series. Esc cancels.</source>
            <translation>Erneut ablesen: Was vorher abgelesen wurde, bleibt, und das Ergebnis beruht auf der Ablesereihe. Esc bricht ab.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Equipment</name>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>The lines</source>
            <translation>Die Zeilen</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>%1 every %2 days</source>
            <translation>%1 alle %2 Tage</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>one reading:</source>
            <translation>eine Ablesung:</translation>
        </message>
        <message>
            <source>absorbance scale:</source>
            <translation>Extinktionsskala:</translation>
        </message>
        <message>
            <source>path length:</source>
            <translation>Schichtdicke:</translation>
        </message>
        <message>
            <source>a volume:</source>
            <translation>ein Volumen:</translation>
        </message>
        <message>
            <source>one weighing:</source>
            <translation>eine Wägung:</translation>
        </message>
        <message>
            <source>temperature:</source>
            <translation>Temperatur:</translation>
        </message>
        <message>
            <source>The name</source>
            <translation>Der Name</translation>
        </message>
        <message>
            <source>The serial number</source>
            <translation>Die Seriennummer</translation>
        </message>
        <message>
            <source>The volume</source>
            <translation>Das Volumen</translation>
        </message>
        <message>
            <source>The smallest volume</source>
            <translation>Das kleinste Volumen</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Was geprüft wird</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
        <message>
            <source>Allowed</source>
            <translation>Zulässig</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Grenzwert aus</translation>
        </message>
        <message>
            <source>no limit</source>
            <translation>kein Grenzwert</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>nicht bestanden</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentModel</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>Checked until</source>
            <translation>Geprüft bis</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Serial number</source>
            <translation>Seriennummer</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Geräte</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Was geprüft wird</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, kind or state</source>
            <translation>Name, Art oder Status &amp;finden</translation>
        </message>
        <message>
            <source>Nothing is in the book yet. Add the photometer, pipettes, flasks, balance, thermometers and cuvettes that are checked; their checks then say what is due, warn of what failed, and give the budgets their figures.</source>
            <translation>Im Buch ist noch nichts. Photometer, Pipetten, Messkolben, Waage, Thermometer und Küvetten hinzufügen, die geprüft werden; ihre Prüfungen sagen dann, was fällig ist, warnen vor nicht Bestandenem und liefern den Budgets ihre Zahlen.</translation>
        </message>
        <message>
            <source>No item contains all of these words. Remove one to find more.</source>
            <translation>Kein Gerät hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>Out of &amp;use too</source>
            <translation>Auch auße&amp;r Gebrauch</translation>
        </message>
        <message>
            <source>&amp;Add an item…</source>
            <translation>Ger&amp;ät hinzufügen…</translation>
        </message>
        <message>
            <source>An item of equipment or a check, not stored yet</source>
            <translation>Ein Gerät oder eine Prüfung, noch nicht gespeichert</translation>
        </message>
        <message>
            <source>In the book: %1. Key its first check.</source>
            <translation>Im Buch: %1. Seine erste Prüfung eingeben.</translation>
        </message>
        <message>
            <source>%1 is changed; its checks keep what held then.</source>
            <translation>%1 ist geändert; die Prüfungen behalten, was damals galt.</translation>
        </message>
        <message>
            <source>The check is in the book.</source>
            <translation>Die Prüfung ist im Buch.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Example</name>
        <message>
            <source>%1: %2 %3</source>
            <translation>%1: %2 %3</translation>
        </message>
        <message>
            <source>%1: %2 ± %3 %4 (k = %5)</source>
            <translation>%1: %2 ± %3 %4 (k = %5)</translation>
        </message>
        <message>
            <source>The method cannot be tried yet: first put right what the list of problems names.</source>
            <translation>Die Methode kann noch nicht ausprobiert werden: zuerst berichtigen, was die Liste der Probleme nennt.</translation>
        </message>
        <message>
            <source>Type the readings of the blank and of the sample.</source>
            <translation>Die Ablesungen des Blindwerts und der Probe eingeben.</translation>
        </message>
        <message>
            <source>example</source>
            <translation>Beispiel</translation>
        </message>
        <message>
            <source>dilution, take</source>
            <translation>Verdünnung, Entnahme</translation>
        </message>
        <message>
            <source>dilution, make up to</source>
            <translation>Verdünnung, auffüllen auf</translation>
        </message>
        <message>
            <source>volume of the sample</source>
            <translation>Volumen der Probe</translation>
        </message>
        <message>
            <source>%1 of the blank</source>
            <translation>%1 des Blindwerts</translation>
        </message>
        <message>
            <source>%1 of the sample</source>
            <translation>%1 der Probe</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ExampleSection</name>
        <message>
            <source>Reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Was sich ergibt</translation>
        </message>
        <message>
            <source>The calculation written out</source>
            <translation>Die ausgeschriebene Berechnung</translation>
        </message>
        <message>
            <source>Try the method with numbers of your own</source>
            <translation>Die Methode mit eigenen Zahlen ausprobieren</translation>
        </message>
        <message>
            <source>One blank and one sample. Nothing of it is kept.</source>
            <translation>Ein Blindwert und eine Probe. Nichts davon wird aufbewahrt.</translation>
        </message>
        <message>
            <source>Readings of the example</source>
            <translation>Ablesungen des Beispiels</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>With its uncertainty, from the usual standard uncertainties</source>
            <translation>Mit Unsicherheit, aus den üblichen Standardunsicherheiten</translation>
        </message>
        <message>
            <source>Sample in the tube, if not as usual</source>
            <translation>Probe im Ansatz, wenn nicht wie üblich</translation>
        </message>
        <message>
            <source>Dilution, if any: take</source>
            <translation>Ggf. Verdünnung: Entnahme</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>auffüllen auf</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Feasibility</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>The hands are never free for a minute until the last reading.</source>
            <translation>Bis zur letzten Ablesung sind die Hände keine Minute frei.</translation>
        </message>
        <message>
            <source>Hands free, counted from the first start: %1.</source>
            <translation>Hände frei, gezählt ab dem ersten Start: %1.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Start a tube every %1: then every tube is read within its waiting times.</source>
            <translation>Alle %1 einen Ansatz starten: Dann wird jeder Ansatz innerhalb seiner Wartezeiten abgelesen.</translation>
        </message>
        <message>
            <source>The tube can be read within its waiting times.</source>
            <translation>Der Ansatz kann innerhalb seiner Wartezeiten abgelesen werden.</translation>
        </message>
        <message>
            <source>Pipetting before the first start takes about %1.</source>
            <translation>Das Pipettieren vor dem ersten Start dauert etwa %1.</translation>
        </message>
        <message>
            <source>First reading %1 after the first start, last one done after %2.</source>
            <translation>Erste Ablesung %1 nach dem ersten Start, letzte erledigt nach %2.</translation>
        </message>
        <message>
            <source>Not even one tube is done within %1: this method takes longer. Allow more time.</source>
            <translation>Nicht einmal ein Ansatz wird innerhalb von %1 fertig: Diese Methode dauert länger. Mehr Zeit zulassen.</translation>
        </message>
        <message>
            <source>One person cannot read %1 tubes within their waiting times in %2: at most %3.</source>
            <translation>Eine Person kann %1 Ansätze nicht innerhalb ihrer Wartezeiten und innerhalb von %2 ablesen: höchstens %3.</translation>
        </message>
        <message>
            <source>Blanks and standards alone fill such a rack; fewer of them, or more time, leave room for samples.</source>
            <translation>Blindwerte und Standards allein füllen ein solches Rack; weniger davon oder mehr Zeit schaffen Platz für Proben.</translation>
        </message>
        <message>
            <source>Allow more time, or split it into %1 racks of %2 tubes, each with its own blanks and standards.</source>
            <translation>Mehr Zeit zulassen oder in %1 Racks mit %2 Ansätzen teilen, jedes mit eigenen Blindwerten und Standards.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>second rack (%1, tubes: %2)</source>
            <translation>zweites Rack (%1, Ansätze: %2)</translation>
        </message>
        <message>
            <source>A %1 cannot be done beside this one in the time allowed; start it afterwards.</source>
            <translation>Daneben ist in der zulässigen Zeit nicht möglich: %1; danach starten.</translation>
        </message>
        <message>
            <source>A %1 does not fit into the waiting times of this one: it can start at %2, when this one is done.</source>
            <translation>In den Wartezeiten dieses Racks findet keinen Platz: %1. Es kann bei %2 starten, wenn dieses fertig ist.</translation>
        </message>
        <message>
            <source>A %1 can start at %2, a tube every %3; both racks keep their waiting times, and the last reading is done at %4.</source>
            <translation>%1: kann bei %2 starten, ein Ansatz alle %3; beide Racks bleiben innerhalb ihrer Wartezeiten, und die letzte Ablesung ist bei %4 erledigt.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FieldNote</name>
        <message>
            <source>and %1 more</source>
            <translation>und %1 weitere</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FirstStart</name>
        <message>
            <source>&amp;Make a notebook for your laboratory</source>
            <translation>&amp;Ein Laborjournal für Ihr Labor anlegen</translation>
        </message>
        <message>
            <source>&amp;Use a notebook that is there already</source>
            <translation>Ein &amp;bestehendes Laborjournal verwenden</translation>
        </message>
        <message>
            <source>&amp;Try the sample notebook</source>
            <translation>Das Beispiel-Laborjournal &amp;ausprobieren</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <translation>Be&amp;ginnen</translation>
        </message>
        <message>
            <source>Plateau: the first start</source>
            <translation>Plateau: der erste Start</translation>
        </message>
        <message>
            <source>Where is the notebook?</source>
            <translation>Wo ist das Laborjournal?</translation>
        </message>
        <message>
            <source>Plateau keeps runs, readings, lots and decisions in one file, the notebook. It is only ever added to, and backed up automatically.</source>
            <translation>Plateau bewahrt Läufe, Ablesungen, Chargen und Entscheidungen in einer Datei auf, dem Laborjournal. Es wird immer nur ergänzt und automatisch gesichert.</translation>
        </message>
        <message>
            <source>The bench, the books and the control charts of an invented company that makes cider and packs dried fruit. It is a copy, thrown away when the window closes.</source>
            <translation>Arbeitsplatz, Bücher und Regelkarten eines erfundenen Betriebs, der Cidre herstellt und Trockenfrüchte verpackt. Es ist eine Kopie, die beim Schließen des Fensters gelöscht wird.</translation>
        </message>
        <message>
            <source>The notebook %1 is not there. See that its disk is connected and begin again, or choose where it is now.</source>
            <translation>Das Laborjournal %1 ist nicht da. Nachsehen, ob sein Datenträger verbunden ist, und neu beginnen, oder wählen, wo es jetzt ist.</translation>
        </message>
        <message>
            <source>Notebooks (*.plateau);;All files (*)</source>
            <translation>Laborjournale (*.plateau);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Make a notebook</source>
            <translation>Ein Laborjournal anlegen</translation>
        </message>
        <message>
            <source>Use a notebook</source>
            <translation>Ein Laborjournal verwenden</translation>
        </message>
        <message>
            <source>Laborator&amp;y's name</source>
            <translation>Name des &amp;Labors</translation>
        </message>
        <message>
            <source>Your &amp;name, as it stands on records</source>
            <translation>Ihr &amp;Name, wie er auf Aufzeichnungen steht</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>Date&amp;i</translation>
        </message>
        <message>
            <source>&amp;Elsewhere…</source>
            <translation>Anderer &amp;Ort…</translation>
        </message>
        <message>
            <source>F&amp;ile</source>
            <translation>Da&amp;tei</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <translation>&amp;Wählen…</translation>
        </message>
        <message>
            <source>The laboratory's name is still missing; it heads every report.</source>
            <translation>Der Name des Labors fehlt noch; er steht über jedem Bericht.</translation>
        </message>
        <message>
            <source>Your name is still missing; it stands on whatever you record.</source>
            <translation>Ihr Name fehlt noch; er steht auf allem, was Sie aufzeichnen.</translation>
        </message>
        <message>
            <source>The file is still missing: its whole path, such as %1.</source>
            <translation>Die Datei fehlt noch: ihr ganzer Pfad, etwa %1.</translation>
        </message>
        <message>
            <source>There is no file %1; see that the name is right.</source>
            <translation>Es gibt keine Datei %1; prüfen, ob der Name stimmt.</translation>
        </message>
        <message>
            <source>There is a file %1 already; use that notebook, or give the new one another name.</source>
            <translation>Es gibt bereits eine Datei %1; dieses Laborjournal verwenden oder dem neuen einen anderen Namen geben.</translation>
        </message>
        <message>
            <source>A first rac&amp;k in ten minutes</source>
            <translation>Ein erstes &amp;Rack in zehn Minuten</translation>
        </message>
        <message>
            <source>The help for the first minutes with the sample notebook; F1 opens it as well</source>
            <translation>Die Hilfe für die ersten Minuten mit dem Beispiel-Laborjournal; F1 öffnet sie ebenfalls</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <translation>&amp;Schließen</translation>
        </message>
        <message>
            <source>Plateau: another notebook</source>
            <translation>Plateau: anderes Laborjournal</translation>
        </message>
        <message>
            <source>Which notebook?</source>
            <translation>Welches Laborjournal?</translation>
        </message>
        <message>
            <source>It opens in a window of its own; the one that is open now stays as it is.</source>
            <translation>Es öffnet sich in einem eigenen Fenster; das jetzt geöffnete bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>&amp;Open this notebook whenever the program starts</source>
            <translation>Beim Start &amp;öffnet das Programm künftig dieses Laborjournal</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::GlassForm</name>
        <message>
            <source>Pipette</source>
            <translation>Pipette</translation>
        </message>
        <message>
            <source>from mL</source>
            <translation>von mL</translation>
        </message>
        <message>
            <source>Smallest volume (mL)</source>
            <translation>Kleinstes Volumen (mL)</translation>
        </message>
        <message>
            <source>to mL</source>
            <translation>bis mL</translation>
        </message>
        <message>
            <source>Largest volume (mL)</source>
            <translation>Größtes Volumen (mL)</translation>
        </message>
        <message>
            <source>in steps of mL</source>
            <translation>in Schritten von mL</translation>
        </message>
        <message>
            <source>Setting increment (mL); empty for a fixed-volume pipette</source>
            <translation>Einstellbarer Schritt (mL); leer bei einer Pipette mit festem Volumen</translation>
        </message>
        <message>
            <source>u %</source>
            <translation>u %</translation>
        </message>
        <message>
            <source>Relative standard uncertainty of a volume (k = 1), in %</source>
            <translation>Relative Standardunsicherheit eines Volumens (k = 1), in %</translation>
        </message>
        <message>
            <source>Volumetric flask</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Volume (mL)</source>
            <translation>Volumen (mL)</translation>
        </message>
        <message>
            <source>Relative standard uncertainty of the volume (k = 1), in %</source>
            <translation>Relative Standardunsicherheit des Volumens (k = 1), in %</translation>
        </message>
        <message>
            <source>Pipettes and flasks</source>
            <translation>Pipetten und Messkolben</translation>
        </message>
        <message>
            <source>Dilutions are planned with these, and their uncertainties go into the budgets. u: relative standard uncertainty (k = 1) of a volume. %1</source>
            <translation>Verdünnungen werden damit geplant, und die Unsicherheiten gehen in die Budgets ein. u: relative Standardunsicherheit (k = 1) eines Volumens. %1</translation>
        </message>
        <message>
            <source>Pipettes</source>
            <translation>Pipetten</translation>
        </message>
        <message>
            <source>Volumetric flasks</source>
            <translation>Messkolben</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpDesk</name>
        <message>
            <source>en</source>
            <comment>the folder of the help in this language; en where there is none</comment>
            <translation>de</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpListModel</name>
        <message>
            <source>%1, in %2: %3</source>
            <comment>a section of the help, its page, a line of it</comment>
            <translation>%1, in %2: %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpWindow</name>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Zurück</translation>
        </message>
        <message>
            <source>&amp;Forward</source>
            <translation>&amp;Vorwärts</translation>
        </message>
        <message>
            <source>&amp;Search the help</source>
            <translation>Hilfe durch&amp;suchen</translation>
        </message>
        <message>
            <source>To what was read before (Alt+Left)</source>
            <translation>Zu dem, was vorher gelesen wurde (Alt+Links)</translation>
        </message>
        <message>
            <source>To what was read after it (Alt+Right)</source>
            <translation>Zu dem, was danach gelesen wurde (Alt+Rechts)</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Vorwärts</translation>
        </message>
        <message>
            <source>Search</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Leave the search, then the help</source>
            <translation>Die Suche verlassen, dann die Hilfe</translation>
        </message>
        <message>
            <source>Close the help</source>
            <translation>Die Hilfe schließen</translation>
        </message>
        <message>
            <source>No section contains all of these words. Try fewer of them, or only their first letters.</source>
            <translation>Kein Abschnitt enthält alle diese Wörter. Mit weniger Wörtern oder nur mit deren Anfang suchen.</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>Sections found</source>
            <translation>Gefundene Abschnitte</translation>
        </message>
        <message>
            <source>%1 lies outside the help and is not opened from here.</source>
            <translation>%1 liegt außerhalb der Hilfe und wird von hier nicht geöffnet.</translation>
        </message>
        <message>
            <source>The help has no page “%1” yet.</source>
            <translation>Die Hilfe hat noch keine Seite „%1“.</translation>
        </message>
        <message>
            <source>This page exists in English only.</source>
            <translation>Diese Seite gibt es nur auf Englisch.</translation>
        </message>
        <message>
            <source>No page of the help is part of this program.</source>
            <translation>Zu diesem Programm gehört keine Seite der Hilfe.</translation>
        </message>
        <message>
            <source>Help of Plateau</source>
            <translation>Hilfe von Plateau</translation>
        </message>
        <message>
            <source>%1 – Help of Plateau</source>
            <translation>%1 – Hilfe von Plateau</translation>
        </message>
        <message>
            <source>Page of the help</source>
            <translation>Seite der Hilfe</translation>
        </message>
        <message>
            <source>Sections found: %1</source>
            <translation>Gefundene Abschnitte: %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HistoryModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1, corrected</source>
            <translation>%1, korrigiert</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>aus einer Datei</translation>
        </message>
        <message>
            <source>%1 of the line “%2”</source>
            <translation>%1 der Zeile „%2“</translation>
        </message>
        <message>
            <source>read again</source>
            <translation>erneut abgelesen</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Point</source>
            <translation>Punkt</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>As keyed</source>
            <translation>Wie eingegeben</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentIntake</name>
        <message>
            <source>Not remembered</source>
            <translation>Nicht gemerkt</translation>
        </message>
        <message>
            <source>What was set is used now, but not remembered for the next time: %1 can't be written.</source>
            <translation>Das Eingestellte gilt jetzt, wird aber nicht für das nächste Mal gemerkt: %1 kann nicht geschrieben werden.</translation>
        </message>
        <message>
            <source>Not listening to a photometer.</source>
            <translation>Kein Empfang von einem Photometer.</translation>
        </message>
        <message>
            <source>Listening to %1: %2</source>
            <translation>Empfang von %1: %2</translation>
        </message>
        <message>
            <source>Waiting for %1: %2</source>
            <translation>Warten auf %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentRoute</name>
        <message>
            <source>The photometer sent “%1”: %2</source>
            <translation>Das Photometer sandte „%1“: %2</translation>
        </message>
        <message>
            <source>A reading has come in that waits for an answer: go to Read of rack %1.</source>
            <translation>Eine Ablesung ist eingegangen, die auf eine Antwort wartet: zu Ablesen von Rack %1 gehen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemForm</name>
        <message>
            <source>It &amp;is in use</source>
            <translation>Es &amp;ist in Gebrauch</translation>
        </message>
        <message>
            <source>&amp;What it is</source>
            <translation>&amp;Was es ist</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Serial or inventory n&amp;umber</source>
            <translation>Se&amp;rien- oder Inventarnummer</translation>
        </message>
        <message>
            <source>Volume, or the &amp;largest (mL)</source>
            <translation>&amp;Volumen oder das größte (mL)</translation>
        </message>
        <message>
            <source>S&amp;mallest volume it is used for (mL)</source>
            <translation>Kleinstes verwendetes Volu&amp;men (mL)</translation>
        </message>
        <message>
            <source>Whole days; empty where this is not checked.</source>
            <translation>Ganze Tage; leer, wo das nicht geprüft wird.</translation>
        </message>
        <message>
            <source>Check %1 every (days)</source>
            <translation>%1 prüfen alle (Tage)</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Grund der &amp;Änderung</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Ins Buch &amp;eintragen</translation>
        </message>
        <message>
            <source>Add an item</source>
            <translation>Gerät hinzufügen</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>%1 ändern</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Angeben, warum geändert wird; das Buch bewahrt es auf.</translation>
        </message>
        <message>
            <source>Give pipettes, flasks and the photometer the names they have in Laboratory: what a check finds then replaces the list's uncertainty, and a run that used one which failed or was overdue says so.</source>
            <translation>Pipetten, Messkolben und dem Photometer die Namen geben, die sie unter Labor haben: Was eine Prüfung findet, ersetzt dann die Unsicherheit der Liste, und ein Lauf sagt es, wenn eines davon nicht bestanden hatte oder überfällig war.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemView</name>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>zurückgenommen</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>nicht bestanden</translation>
        </message>
        <message>
            <source>How it stands</source>
            <translation>Wie es steht</translation>
        </message>
        <message>
            <source>&amp;Key a check…</source>
            <translation>Prüfung &amp;eingeben…</translation>
        </message>
        <message>
            <source>&amp;Change the item…</source>
            <translation>&amp;Gerät ändern…</translation>
        </message>
        <message>
            <source>Checks of the item</source>
            <translation>Prüfungen des Geräts</translation>
        </message>
        <message>
            <source>No check is in the book yet. Key the first one; until then budgets use what the laboratory's list says.</source>
            <translation>Noch keine Prüfung im Buch. Die erste eingeben; bis dahin gilt für Budgets, was die Liste des Labors sagt.</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>Findings of the check</source>
            <translation>Befunde der Prüfung</translation>
        </message>
        <message>
            <source>Keyed &amp;wrongly, because</source>
            <translation>&amp;Falsch eingegeben, weil</translation>
        </message>
        <message>
            <source>Keyed wrongly, because</source>
            <translation>Falsch eingegeben, weil</translation>
        </message>
        <message>
            <source>&amp;Take it back</source>
            <translation>&amp;Zurücknehmen</translation>
        </message>
        <message>
            <source>The chosen check</source>
            <translation>Die gewählte Prüfung</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Out of use: nothing is due, and no budget rests on it.</source>
            <translation>Außer Gebrauch: Nichts ist fällig, und kein Budget beruht darauf.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Choose a check to see what was found.</source>
            <translation>Eine Prüfung wählen, um zu sehen, was gefunden wurde.</translation>
        </message>
        <message>
            <source>Check %1 of %2: %3.</source>
            <translation>Prüfung %1 vom %2: %3.</translation>
        </message>
        <message>
            <source>Standard uncertainty (k = 1): %1.</source>
            <translation>Standardunsicherheit (k = 1): %1.</translation>
        </message>
        <message>
            <source>Source: %1.</source>
            <translation>Quelle: %1.</translation>
        </message>
        <message>
            <source>Note: %1</source>
            <translation>Bemerkung: %1</translation>
        </message>
        <message>
            <source>Say why it does not count; the book keeps it.</source>
            <translation>Angeben, warum sie nicht zählt; das Buch bewahrt es auf.</translation>
        </message>
        <message>
            <source>Taken back: the check stays in the book and does not count.</source>
            <translation>Zurückgenommen: Die Prüfung bleibt im Buch und zählt nicht.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Keys</name>
        <message>
            <source>Everywhere</source>
            <translation>Überall</translation>
        </message>
        <message>
            <source>Tab, Shift+Tab</source>
            <translation>Tab, Umschalt+Tab</translation>
        </message>
        <message>
            <source>To the next field or button, to the one before</source>
            <translation>Zum nächsten Feld oder zur nächsten Schaltfläche, zu der davor</translation>
        </message>
        <message>
            <source>Alt and the underlined letter</source>
            <translation>Alt und der unterstrichene Buchstabe</translation>
        </message>
        <message>
            <source>To the field, button or tab with that letter</source>
            <translation>Zum Feld, zur Schaltfläche oder zum Reiter mit diesem Buchstaben</translation>
        </message>
        <message>
            <source>F10</source>
            <translation>F10</translation>
        </message>
        <message>
            <source>Into the menus; arrow keys, Enter and Esc from there</source>
            <translation>In die Menüs; von dort mit Pfeiltasten, Enter und Esc</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>In a list: open; on a button: press; in a form: what its main button does</source>
            <translation>In einer Liste: öffnen; auf einer Schaltfläche: drücken; in einem Formular: was dessen Hauptschaltfläche tut</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Back to the list, or leave what was begun; what is not stored is asked about</source>
            <translation>Zurück zur Liste, oder das Begonnene verlassen; bei nicht Gespeichertem wird gefragt</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Pfeil ab</translation>
        </message>
        <message>
            <source>In a field with an arrow: what is offered; in a search: into the list</source>
            <translation>In einem Feld mit Pfeil: was angeboten wird; in einer Suche: in die Liste</translation>
        </message>
        <message>
            <source>New run</source>
            <translation>Neuer Lauf</translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipettieren</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Ansätze über der Zeit</translation>
        </message>
        <message>
            <source>Review, sample by sample</source>
            <translation>Bewertung, Probe für Probe</translation>
        </message>
        <message>
            <source>Ctrl and an arrow key</source>
            <translation>Strg und eine Pfeiltaste</translation>
        </message>
        <message>
            <source>In the rack: move the tube</source>
            <translation>Im Rack: den Ansatz verschieben</translation>
        </message>
        <message>
            <source>Space</source>
            <translation>Leertaste</translation>
        </message>
        <message>
            <source>Tick the tube; the next one waits</source>
            <translation>Den Ansatz abhaken; der nächste wartet</translation>
        </message>
        <message>
            <source>Tick the row</source>
            <translation>Die Reihe abhaken</translation>
        </message>
        <message>
            <source>-, Backspace</source>
            <translation>-, Rücktaste</translation>
        </message>
        <message>
            <source>Take back the last tick</source>
            <translation>Das letzte Häkchen zurücknehmen</translation>
        </message>
        <message>
            <source>The tube is spoilt; asks why</source>
            <translation>Der Ansatz ist unbrauchbar; fragt nach dem Grund</translation>
        </message>
        <message>
            <source>Store the reading, or ask about it where it cannot be right</source>
            <translation>Die Ablesung speichern, oder nachfragen, wo sie nicht stimmen kann</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Pfeil auf, Pfeil ab</translation>
        </message>
        <message>
            <source>The tube before, the next one</source>
            <translation>Der Ansatz davor, der nächste</translation>
        </message>
        <message>
            <source>Space, in an empty entry</source>
            <translation>Leertaste, in einer leeren Eingabe</translation>
        </message>
        <message>
            <source>What is next is done now</source>
            <translation>Das Nächste ist jetzt erledigt</translation>
        </message>
        <message>
            <source>Type the reading again; leave it as it was</source>
            <translation>Die Ablesung neu eingeben; sie lassen, wie sie war</translation>
        </message>
        <message>
            <source>Up, Down, Page Up, Page Down, Home, End</source>
            <translation>Pfeil auf, Pfeil ab, Bild auf, Bild ab, Pos1, Ende</translation>
        </message>
        <message>
            <source>From tube to tube</source>
            <translation>Von Ansatz zu Ansatz</translation>
        </message>
        <message>
            <source>To that tube</source>
            <translation>Zu diesem Ansatz</translation>
        </message>
        <message>
            <source>Accept the sample</source>
            <translation>Die Probe annehmen</translation>
        </message>
        <message>
            <source>Reject the sample</source>
            <translation>Die Probe verwerfen</translation>
        </message>
        <message>
            <source>Delete, Backspace</source>
            <translation>Entf, Rücktaste</translation>
        </message>
        <message>
            <source>Undecided again</source>
            <translation>Wieder nicht entschieden</translation>
        </message>
        <message>
            <source>Enter, F2</source>
            <translation>Enter, F2</translation>
        </message>
        <message>
            <source>Change the cell</source>
            <translation>Die Zelle ändern</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Regelkarten</translation>
        </message>
        <message>
            <source>Tables that are typed in</source>
            <translation>Tabellen, in die eingegeben wird</translation>
        </message>
        <message>
            <source>Methods, Laboratory, Limits, Samples</source>
            <translation>Methoden, Labor, Grenzwerte, Proben</translation>
        </message>
        <message>
            <source>Left, Right</source>
            <translation>Links, Rechts</translation>
        </message>
        <message>
            <source>From point to point</source>
            <translation>Von Punkt zu Punkt</translation>
        </message>
        <message>
            <source>Ctrl+Left, Ctrl+Right</source>
            <translation>Strg+Links, Strg+Rechts</translation>
        </message>
        <message>
            <source>From one point out of control to the next</source>
            <translation>Von einem Punkt außer Kontrolle zum nächsten</translation>
        </message>
        <message>
            <source>Page Up, Page Down</source>
            <translation>Bild auf, Bild ab</translation>
        </message>
        <message>
            <source>Ten points on</source>
            <translation>Zehn Punkte weiter</translation>
        </message>
        <message>
            <source>Home, End</source>
            <translation>Pos1, Ende</translation>
        </message>
        <message>
            <source>The first point, the last one</source>
            <translation>Der erste Punkt, der letzte</translation>
        </message>
        <message>
            <source>Fewer points in view, more of them</source>
            <translation>Weniger Punkte im Bild, mehr Punkte</translation>
        </message>
        <message>
            <source>All points</source>
            <translation>Alle Punkte</translation>
        </message>
        <message>
            <source>Open the run of the point</source>
            <translation>Den Lauf des Punktes öffnen</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Entf</translation>
        </message>
        <message>
            <source>Empty the cell</source>
            <translation>Die Zelle leeren</translation>
        </message>
        <message>
            <source>Insert, Ctrl+Delete</source>
            <translation>Einfg, Strg+Entf</translation>
        </message>
        <message>
            <source>New row, remove the row</source>
            <translation>Neue Zeile, Zeile entfernen</translation>
        </message>
        <message>
            <source>Alt+Up, Alt+Down</source>
            <translation>Alt+Auf, Alt+Ab</translation>
        </message>
        <message>
            <source>Move the row</source>
            <translation>Die Zeile verschieben</translation>
        </message>
        <message>
            <source>Ctrl+Z</source>
            <translation>Strg+Z</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Ctrl+V</source>
            <translation>Strg+V</translation>
        </message>
        <message>
            <source>Paste a column of names into the table of samples</source>
            <translation>Eine Spalte mit Namen in die Tabelle der Proben einfügen</translation>
        </message>
        <message>
            <source>Ctrl+S</source>
            <translation>Strg+S</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Alt+1, Alt+2 …</source>
            <translation>Alt+1, Alt+2 …</translation>
        </message>
        <message>
            <source>To the sections of a method or of the laboratory</source>
            <translation>Zu den Abschnitten einer Methode oder des Labors</translation>
        </message>
        <message>
            <source>Menu %1</source>
            <translation>Menü %1</translation>
        </message>
        <message>
            <source>Keys of Plateau</source>
            <translation>Tasten von Plateau</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>Everything can be done without the mouse.</source>
            <translation>Alles lässt sich ohne Maus tun.</translation>
        </message>
        <message>
            <source>where</source>
            <translation>wo</translation>
        </message>
        <message>
            <source>keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>what they do</source>
            <translation>was sie tun</translation>
        </message>
        <message>
            <source>F1</source>
            <translation>F1</translation>
        </message>
        <message>
            <source>The help for what is in front, in dialogs too</source>
            <translation>Die Hilfe zu dem, was gerade offen ist, auch in Dialogen</translation>
        </message>
        <message>
            <source>Window of the help</source>
            <translation>Fenster der Hilfe</translation>
        </message>
        <message>
            <source>Alt+Left, Alt+Right</source>
            <translation>Alt+Links, Alt+Rechts</translation>
        </message>
        <message>
            <source>To the page read before, to the one after it</source>
            <translation>Zur vorher gelesenen Seite, zur danach gelesenen</translation>
        </message>
        <message>
            <source>Ctrl+F</source>
            <translation>Strg+F</translation>
        </message>
        <message>
            <source>To the search</source>
            <translation>Zur Suche</translation>
        </message>
        <message>
            <source>In the search: the first section found; on a link: follow it</source>
            <translation>In der Suche: der erste gefundene Abschnitt; auf einem Verweis: ihm folgen</translation>
        </message>
        <message>
            <source>In the page: to the next link, to the one before</source>
            <translation>In der Seite: zum nächsten Verweis, zum vorigen</translation>
        </message>
        <message>
            <source>Empty the search; close the help where nothing is searched</source>
            <translation>Die Suche leeren; die Hilfe schließen, wenn nichts gesucht wird</translation>
        </message>
        <message>
            <source>Send it back to the samples that wait, to be repeated</source>
            <translation>Zurück zu den wartenden Proben geben, zur Wiederholung</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>Sort by the column the keys are in, falling or rising; once more: as it was</source>
            <translation>Nach der Spalte sortieren, in der die Tasten sind, fallend oder steigend; noch einmal: wie vorher</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::KeysDialog</name>
        <message>
            <source>Where</source>
            <translation>Wo</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>What they do</source>
            <translation>Was sie tun</translation>
        </message>
        <message>
            <source>&amp;Save as PDF, to print…</source>
            <translation>Als PDF &amp;speichern, zum Drucken…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>Keys of Plateau.pdf</source>
            <translation>Tasten von Plateau.pdf</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::KnownFields</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LabelSheetDialog</name>
        <message>
            <source>&amp;Usual sheet</source>
            <translation>&amp;Üblicher Bogen</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>Als PDF &amp;speichern…</translation>
        </message>
        <message>
            <source>Labels as PDF</source>
            <translation>Etiketten als PDF</translation>
        </message>
        <message>
            <source>A4, 210 × 297 mm</source>
            <translation>A4, 210 × 297 mm</translation>
        </message>
        <message>
            <source>Letter, 8.5 × 11 inch</source>
            <translation>Letter, 8,5 × 11 Zoll</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>&amp;Papier</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>&amp;Columns</source>
            <translation>Sp&amp;alten</translation>
        </message>
        <message>
            <source>&amp;Rows</source>
            <translation>&amp;Zeilen</translation>
        </message>
        <message>
            <source>&amp;Width of a label</source>
            <translation>&amp;Breite eines Etiketts</translation>
        </message>
        <message>
            <source>&amp;Height of a label</source>
            <translation>&amp;Höhe eines Etiketts</translation>
        </message>
        <message>
            <source>&amp;Left margin</source>
            <translation>&amp;Linker Rand</translation>
        </message>
        <message>
            <source>&amp;Top margin</source>
            <translation>&amp;Oberer Rand</translation>
        </message>
        <message>
            <source>Gap &amp;between columns</source>
            <translation>Abstand z&amp;wischen Spalten</translation>
        </message>
        <message>
            <source>&amp;Gap between rows</source>
            <translation>Abstan&amp;d zwischen Zeilen</translation>
        </message>
        <message>
            <source>&amp;First free label</source>
            <translation>&amp;Erstes freies Etikett</translation>
        </message>
        <message>
            <source>&amp;Made by</source>
            <translation>Hergestellt &amp;von</translation>
        </message>
        <message>
            <source>a line to write on</source>
            <translation>eine Zeile zum Ausfüllen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>%1: type a number.</source>
            <translation>%1: eine Zahl eingeben.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: type a whole number from 1 to %2.</source>
            <translation>%1: eine ganze Zahl von 1 bis %2 eingeben.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LabelSheetPicture</name>
        <message>
            <source>The sheet of labels</source>
            <translation>Der Etikettenbogen</translation>
        </message>
        <message>
            <source>The sheet is drawn once its numbers are right.</source>
            <translation>Der Bogen wird gezeichnet, sobald seine Zahlen stimmen.</translation>
        </message>
        <message>
            <source>Labels to print: %1, from label %2 of %3 on (row %4, column %5). Sheets needed: %6. Hatched: gone.</source>
            <translation>Zu druckende Etiketten: %1, ab Etikett %2 von %3 (Zeile %4, Spalte %5). Nötige Bögen: %6. Schraffiert: verbraucht.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Labels</name>
        <message>
            <source>The first free label is %1, but the sheet has labels 1 to %2.</source>
            <translation>Das erste freie Etikett ist %1, aber der Bogen hat die Etiketten 1 bis %2.</translation>
        </message>
        <message>
            <source>extract: %1 in %2</source>
            <translation>Extrakt: %1 in %2</translation>
        </message>
        <message>
            <source>1 in %1: %2</source>
            <translation>1 in %1: %2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>made</source>
            <translation>hergestellt</translation>
        </message>
        <message>
            <source>use by</source>
            <translation>verwendbar bis</translation>
        </message>
        <message>
            <source>by</source>
            <translation>von</translation>
        </message>
        <message>
            <source>A sheet has at least one column and one row of labels.</source>
            <translation>Ein Bogen hat mindestens eine Spalte und eine Zeile mit Etiketten.</translation>
        </message>
        <message>
            <source>A label of %1 by %2 can't be read; it needs at least %3 by %4.</source>
            <translation>Ein Etikett von %1 mal %2 ist nicht lesbar; nötig sind mindestens %3 mal %4.</translation>
        </message>
        <message>
            <source>Margins and gaps of a sheet of labels are 0 mm or more.</source>
            <translation>Ränder und Abstände eines Etikettenbogens betragen 0 mm oder mehr.</translation>
        </message>
        <message>
            <source>The labels take %1 by %2, but the paper has only %3 by %4.</source>
            <translation>Die Etiketten brauchen %1 mal %2, aber das Papier hat nur %3 mal %4.</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiketten</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryDraft</name>
        <message>
            <source>name and report head</source>
            <translation>Name und Berichtskopf</translation>
        </message>
        <message>
            <source>rack and times</source>
            <translation>Rack und Zeiten</translation>
        </message>
        <message>
            <source>pipettes and flasks</source>
            <translation>Pipetten und Messkolben</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>uncertainties by method</source>
            <translation>Unsicherheiten nach Methode</translation>
        </message>
        <message>
            <source>units of products</source>
            <translation>Einheiten der Produkte</translation>
        </message>
        <message>
            <source>review</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>is not chosen yet; choose one</source>
            <translation>ist noch nicht gewählt; eine wählen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Changes to the laboratory that are not saved yet</source>
            <translation>Noch nicht gespeicherte Änderungen des Labors</translation>
        </message>
        <message>
            <source>Common practice, no source: replace it with your own. Nobody has saved this laboratory yet; until then plans go by what stands here.</source>
            <translation>Gängige Praxis, ohne Quelle: durch eigene Angaben ersetzen. Noch niemand hat dieses Labor gespeichert; bis dahin richten sich Pläne nach dem, was hier steht.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Version %1, gespeichert von %2, %3.</translation>
        </message>
        <message>
            <source>Plans made from now on go by it; racks on the bench keep theirs.</source>
            <translation>Ab jetzt erstellte Pläne richten sich danach; Racks in Arbeit behalten ihre Angaben.</translation>
        </message>
        <message>
            <source>%1 Stored: %2. %3</source>
            <translation>%1 Gespeichert: %2. %3</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Noch zu berichtigen (%1), Enter führt dorthin:</translation>
        </message>
        <message>
            <source>Changed, and not saved yet.</source>
            <translation>Geändert und noch nicht gespeichert.</translation>
        </message>
        <message>
            <source>%1, to be put right: %2</source>
            <translation>%1, zu berichtigen: %2</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Noch ist nichts gespeichert: zuerst berichtigen, was die Liste nennt.</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>Es gibt nichts zu speichern: Version %1 sagt genau das.</translation>
        </message>
        <message>
            <source>everything as it stood here</source>
            <translation>alles, wie es hier stand</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Labor</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>&amp;Drop the changes</source>
            <translation>Änderungen &amp;verwerfen</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the laboratory</source>
            <translation>Abschnitte des Labors</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt mit der Nummer des Abschnitts führt von überall dorthin.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPlaces</name>
        <message>
            <source>Pipettes</source>
            <translation>Pipetten</translation>
        </message>
        <message>
            <source>Pipette %1</source>
            <translation>Pipette %1</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>smallest volume</source>
            <translation>kleinstes Volumen</translation>
        </message>
        <message>
            <source>largest volume</source>
            <translation>größtes Volumen</translation>
        </message>
        <message>
            <source>step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Flasks</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>Flask %1</source>
            <translation>Messkolben %1</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Unsicherheiten nach Methode</translation>
        </message>
        <message>
            <source>Row %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>Verdünnungsschritt</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Units of products</source>
            <translation>Einheiten der Produkte</translation>
        </message>
        <message>
            <source>product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>Reasons</source>
            <translation>Gründe</translation>
        </message>
        <message>
            <source>Reason %1</source>
            <translation>Grund %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Address</source>
            <translation>Anschrift</translation>
        </message>
        <message>
            <source>Contact</source>
            <translation>Kontakt</translation>
        </message>
        <message>
            <source>Logo</source>
            <translation>Logo</translation>
        </message>
        <message>
            <source>Rows of a rack</source>
            <translation>Reihen eines Racks</translation>
        </message>
        <message>
            <source>Columns of a rack</source>
            <translation>Spalten eines Racks</translation>
        </message>
        <message>
            <source>Time for an addition</source>
            <translation>Zeit für eine Zugabe</translation>
        </message>
        <message>
            <source>Time to mix</source>
            <translation>Zeit zum Mischen</translation>
        </message>
        <message>
            <source>Time for a reading</source>
            <translation>Zeit für eine Ablesung</translation>
        </message>
        <message>
            <source>Reagent beyond the need</source>
            <translation>Reagenz über den Bedarf hinaus</translation>
        </message>
        <message>
            <source>Photometer, name</source>
            <translation>Photometer, Name</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of a reading</source>
            <translation>Photometer, Unsicherheit einer Ablesung</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of the path length</source>
            <translation>Photometer, Unsicherheit der Schichtdicke</translation>
        </message>
        <message>
            <source>Photometer, check record</source>
            <translation>Photometer, Prüfaufzeichnung</translation>
        </message>
        <message>
            <source>Photometer, checked on</source>
            <translation>Photometer, geprüft am</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LastBackup</name>
        <message>
            <source>%1 Close the window once more to leave without a backup.</source>
            <translation>%1 Das Fenster noch einmal schließen, um ohne Sicherung zu beenden.</translation>
        </message>
        <message>
            <source>A last backup is being made; after it the window closes by itself.</source>
            <translation>Eine letzte Sicherung wird erstellt; danach schließt sich das Fenster von selbst.</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>Ohne sie &amp;schließen</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Sicherung</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Fortschritt der Sicherung</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LedgerModel</name>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsDraft</name>
        <message>
            <source>this limit from this source is in the list already; change that one</source>
            <translation>dieser Grenzwert aus dieser Quelle steht bereits in der Liste; jenen ändern</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Lower limit</source>
            <translation>Unterer Grenzwert</translation>
        </message>
        <message>
            <source>Threshold</source>
            <translation>Schwellenwert</translation>
        </message>
        <message>
            <source>Upper limit</source>
            <translation>Oberer Grenzwert</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>Stand</translation>
        </message>
        <message>
            <source>Guard band</source>
            <translation>Schutzband</translation>
        </message>
        <message>
            <source>is empty; say what it is a limit of</source>
            <translation>ist leer; angeben, wofür der Grenzwert gilt</translation>
        </message>
        <message>
            <source>is empty; say what is measured</source>
            <translation>ist leer; angeben, was gemessen wird</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsModel</name>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenzwert</translation>
        </message>
        <message>
            <source>Decision rule</source>
            <translation>Entscheidungsregel</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>Stand</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Limits of products</source>
            <translation>Grenzwerte der Produkte</translation>
        </message>
        <message>
            <source>Fin&amp;d by product, measurand or source</source>
            <translation>Produkt, Messgröße oder Quelle &amp;finden</translation>
        </message>
        <message>
            <source>No limits yet. Add the limits of your products, each with the source it stands in and its date; Review then says of every result whether it lies inside, outside, or cannot be decided at its uncertainty.</source>
            <translation>Noch keine Grenzwerte. Die Grenzwerte der eigenen Produkte hinzufügen, jeden mit der Quelle, in der er steht, und ihrem Datum; die Bewertung sagt dann zu jedem Ergebnis, ob es innerhalb oder außerhalb liegt oder bei seiner Unsicherheit nicht entscheidbar ist.</translation>
        </message>
        <message>
            <source>No limit contains all of these words. Remove one to find more.</source>
            <translation>Kein Grenzwert hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>&amp;Add a limit…</source>
            <translation>Grenz&amp;wert hinzufügen…</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3. The versions before it stay on record.</source>
            <translation>Version %1, gespeichert von %2, %3. Die Versionen davor bleiben verzeichnet.</translation>
        </message>
        <message>
            <source>A limit of a product that is not saved yet</source>
            <translation>Ein noch nicht gespeicherter Grenzwert eines Produkts</translation>
        </message>
        <message>
            <source>Saved: %1, %2, %3.</source>
            <translation>Gespeichert: %1, %2, %3.</translation>
        </message>
        <message>
            <source>The limit is removed; the versions that had it stay on record.</source>
            <translation>Der Grenzwert ist entfernt; die Versionen, die ihn enthielten, bleiben verzeichnet.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>Es gibt nichts zu speichern: Es wurde bereits so gespeichert.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsSection</name>
        <message>
            <source>Measuring window</source>
            <translation>Messfenster</translation>
        </message>
        <message>
            <source>The last two may stay empty: then they are not judged.</source>
            <translation>Die letzten beiden dürfen leer bleiben: Dann werden sie nicht beurteilt.</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Kleinstes Nettosignal</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Größtes Nettosignal</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Größte Extinktion</translation>
        </message>
        <message>
            <source>What must remain of a falling reagent</source>
            <translation>Was von einem abnehmenden Reagenz verbleiben muss</translation>
        </message>
        <message>
            <source>What a run has to keep</source>
            <translation>Was ein Lauf einhalten muss</translation>
        </message>
        <message>
            <source>Leave empty what is not judged.</source>
            <translation>Leer lassen, was nicht beurteilt wird.</translation>
        </message>
        <message>
            <source>Largest signal of a blank</source>
            <translation>Größtes Signal eines Blindwerts</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Wiederfindung des Standards</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Wiederfindung einer Aufstockung</translation>
        </message>
        <message>
            <source>Duplicates differ by at most</source>
            <translation>Doppelbestimmungen, Abweichung höchstens</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>plus this share of the mean</source>
            <translation>plus diesen Anteil des Mittelwerts</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Üblicher Standard</translation>
        </message>
        <message>
            <source>What a new run starts from.</source>
            <translation>Wovon ein neuer Lauf ausgeht.</translation>
        </message>
        <message>
            <source>Concentration</source>
            <translation>Konzentration</translation>
        </message>
        <message>
            <source>Loses</source>
            <translation>Verliert</translation>
        </message>
        <message>
            <source>% of its strength an hour</source>
            <translation>% seines Gehalts pro Stunde</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Ansätze eines Racks</translation>
        </message>
        <message>
            <source>How many a new run starts from. All empty: the method has no rule.</source>
            <translation>Mit wie vielen ein neuer Lauf beginnt. Alle leer: Die Methode hat keine Vorgabe.</translation>
        </message>
        <message>
            <source>Blanks</source>
            <translation>Blindwerte</translation>
        </message>
        <message>
            <source>Of each sample</source>
            <translation>Je Probe</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Standards</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsView</name>
        <message>
            <source>A limit of a product</source>
            <translation>Ein Grenzwert eines Produkts</translation>
        </message>
        <message>
            <source>Change a limit</source>
            <translation>Grenzwert ändern</translation>
        </message>
        <message>
            <source>Thresho&amp;ld</source>
            <translation>S&amp;chwellenwert</translation>
        </message>
        <message>
            <source>&amp;Upper limit</source>
            <translation>&amp;Oberer Grenzwert</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Noch zu berichtigen (%1), Enter führt dorthin:</translation>
        </message>
        <message>
            <source>Nothing is saved yet: say why the list changes; the reason stands in the record.</source>
            <translation>Noch ist nichts gespeichert: angeben, warum sich die Liste ändert; der Grund steht in der Aufzeichnung.</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Noch ist nichts gespeichert: zuerst berichtigen, was die Liste nennt.</translation>
        </message>
        <message>
            <source>This is not saved: save it, or go back once more to drop what was typed.</source>
            <translation>Das ist nicht gespeichert: speichern, oder noch einmal zurückgehen, um die Eingabe zu verwerfen.</translation>
        </message>
        <message>
            <source>Produc&amp;t</source>
            <translation>Produ&amp;kt</translation>
        </message>
        <message>
            <source>&amp;Measurand</source>
            <translation>&amp;Messgröße</translation>
        </message>
        <message>
            <source>&amp;Kind</source>
            <translation>A&amp;rt</translation>
        </message>
        <message>
            <source>&amp;Lower limit</source>
            <translation>&amp;Unterer Grenzwert</translation>
        </message>
        <message>
            <source>Un&amp;it</source>
            <translation>&amp;Einheit</translation>
        </message>
        <message>
            <source>Sour&amp;ce</source>
            <translation>&amp;Quelle</translation>
        </message>
        <message>
            <source>Where the limit stands: specification, contract, regulation with its article.</source>
            <translation>Wo der Grenzwert steht: Spezifikation, Vertrag, Verordnung mit Artikel.</translation>
        </message>
        <message>
            <source>&amp;As of</source>
            <translation>S&amp;tand</translation>
        </message>
        <message>
            <source>Decision rul&amp;e</source>
            <translation>Entscheidun&amp;gsregel</translation>
        </message>
        <message>
            <source>Guar&amp;d band</source>
            <translation>Schutz&amp;band</translation>
        </message>
        <message>
            <source>Its si&amp;ze</source>
            <translation>Se&amp;ine Größe</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Grund der &amp;Änderung</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>Take it awa&amp;y</source>
            <translation>Ent&amp;fernen</translation>
        </message>
        <message>
            <source>As it is called where samples are registered.</source>
            <translation>Wie es bei der Anmeldung der Proben heißt.</translation>
        </message>
        <message>
            <source>A result is judged as: %1, %2 in %3.</source>
            <translation>Ein Ergebnis wird beurteilt als: %1, %2 in %3.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
        <message>
            <source>The date of the source, or the day it was read, as %1.</source>
            <translation>Der Tag, von dem die Quelle ist oder an dem sie gelesen wurde, z. B. %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsWords</name>
        <message>
            <source>Maximum</source>
            <translation>Höchstwert</translation>
        </message>
        <message>
            <source>Minimum</source>
            <translation>Mindestwert</translation>
        </message>
        <message>
            <source>Range</source>
            <translation>Bereich</translation>
        </message>
        <message>
            <source>Label threshold</source>
            <translation>Kennzeichnungsschwelle</translation>
        </message>
        <message>
            <source>one-sided 95 % (1.64 u, more for few readings)</source>
            <translation>einseitig 95 % (1,64 u, bei wenigen Ablesungen mehr)</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty U</source>
            <translation>ein Vielfaches der erweiterten Unsicherheit U</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fest, in der Einheit des Grenzwerts</translation>
        </message>
        <message>
            <source>%1, one-sided 95 %</source>
            <translation>%1, einseitig 95 %</translation>
        </message>
        <message>
            <source>%1, %2 U</source>
            <translation>%1, %2 U</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Inside up to the limit itself, outside beyond it; the uncertainty does not move the line.</source>
            <translation>Innerhalb bis zum Grenzwert selbst, außerhalb jenseits davon; die Unsicherheit verschiebt die Linie nicht.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside beyond the limit; between the two it cannot be decided.</source>
            <translation>Innerhalb nur bis zum Schutzband vor dem Grenzwert, außerhalb jenseits des Grenzwerts; dazwischen nicht entscheidbar.</translation>
        </message>
        <message>
            <source>Inside up to the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Innerhalb bis zum Grenzwert, außerhalb erst ab dem Schutzband dahinter; dazwischen nicht entscheidbar.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Innerhalb nur bis zum Schutzband vor dem Grenzwert, außerhalb erst ab dem Schutzband dahinter; dazwischen nicht entscheidbar.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LineSource</name>
        <message>
            <source>Not connected.</source>
            <translation>Nicht verbunden.</translation>
        </message>
        <message>
            <source>Connecting to %1.</source>
            <translation>Verbinden mit %1.</translation>
        </message>
        <message>
            <source>Connected to %1.</source>
            <translation>Verbunden mit %1.</translation>
        </message>
        <message>
            <source>The connection to %1 has ended: %2. Trying again until it is back.</source>
            <translation>Die Verbindung mit %1 ist beendet: %2. Es wird weiter versucht, bis sie wieder besteht.</translation>
        </message>
        <message>
            <source>No connection to %1: %2. Trying again until it is there.</source>
            <translation>Keine Verbindung mit %1: %2. Es wird weiter versucht, bis sie besteht.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinesModel</name>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Extinktion</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Link</name>
        <message>
            <source>Choose or type the serial port, as ttyUSB0.</source>
            <translation>Die serielle Schnittstelle wählen oder eingeben, etwa ttyUSB0.</translation>
        </message>
        <message>
            <source>Serial port: %1.</source>
            <translation>Serielle Schnittstelle: %1.</translation>
        </message>
        <message>
            <source>The speed is a whole number from %1 to %2 baud.</source>
            <translation>Die Geschwindigkeit ist eine ganze Zahl von %1 bis %2 Baud.</translation>
        </message>
        <message>
            <source>A character has 7 or 8 data bits and 1 or 2 stop bits.</source>
            <translation>Ein Zeichen hat 7 oder 8 Datenbits und 1 oder 2 Stoppbits.</translation>
        </message>
        <message>
            <source>Type the photometer's name or address in the network.</source>
            <translation>Den Namen oder die Adresse des Photometers im Netz eingeben.</translation>
        </message>
        <message>
            <source>Host: %1.</source>
            <translation>Host: %1.</translation>
        </message>
        <message>
            <source>The port number is a whole number from 1 to 65535.</source>
            <translation>Die Portnummer ist eine ganze Zahl von 1 bis 65535.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinkForm</name>
        <message>
            <source>serial port</source>
            <translation>serielle Schnittstelle</translation>
        </message>
        <message>
            <source>network (TCP)</source>
            <translation>Netz (TCP)</translation>
        </message>
        <message>
            <source>Connected b&amp;y</source>
            <translation>Verbunden &amp;über</translation>
        </message>
        <message>
            <source>no parity</source>
            <translation>keine Parität</translation>
        </message>
        <message>
            <source>even parity</source>
            <translation>gerade Parität</translation>
        </message>
        <message>
            <source>odd parity</source>
            <translation>ungerade Parität</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 1 stop bit</source>
            <translation>%1%2%3: %1 Datenbits, %4, 1 Stoppbit</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 2 stop bits</source>
            <translation>%1%2%3: %1 Datenbits, %4, 2 Stoppbits</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>hardware (RTS/CTS)</source>
            <translation>Hardware (RTS/CTS)</translation>
        </message>
        <message>
            <source>software (XON/XOFF)</source>
            <translation>Software (XON/XOFF)</translation>
        </message>
        <message>
            <source>Po&amp;rt</source>
            <translation>S&amp;chnittstelle</translation>
        </message>
        <message>
            <source>&amp;Speed (baud)</source>
            <translation>&amp;Geschwindigkeit (Baud)</translation>
        </message>
        <message>
            <source>&amp;Format</source>
            <translation>Form&amp;at</translation>
        </message>
        <message>
            <source>F&amp;low control</source>
            <translation>&amp;Flusssteuerung</translation>
        </message>
        <message>
            <source>name or address</source>
            <translation>Name oder Adresse</translation>
        </message>
        <message>
            <source>1 to 65535</source>
            <translation>1 bis 65535</translation>
        </message>
        <message>
            <source>&amp;Host</source>
            <translation>&amp;Host</translation>
        </message>
        <message>
            <source>Port num&amp;ber</source>
            <translation>Port&amp;nummer</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ListenDialog</name>
        <message>
            <source>What the sample lines give</source>
            <translation>Was die Probezeilen ergeben</translation>
        </message>
        <message>
            <source>Lines that came in, the last one on top</source>
            <translation>Empfangene Zeilen, die letzte oben</translation>
        </message>
        <message>
            <source>&amp;Connect</source>
            <translation>&amp;Verbinden</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>Verge&amp;ssen</translation>
        </message>
        <message>
            <source>&amp;Use the lines that came in</source>
            <translation>Empfangene &amp;Zeilen verwenden</translation>
        </message>
        <message>
            <source>Stop lis&amp;tening</source>
            <translation>&amp;Empfang beenden</translation>
        </message>
        <message>
            <source>Take readings</source>
            <translation>Ablesungen übernehmen</translation>
        </message>
        <message>
            <source>Listen to a photometer</source>
            <translation>Vom Photometer empfangen</translation>
        </message>
        <message>
            <source>another one</source>
            <translation>ein anderes</translation>
        </message>
        <message>
            <source>Give the photometer a name to remember it by.</source>
            <translation>Dem Photometer einen Namen geben, um es zu merken.</translation>
        </message>
        <message>
            <source>Connect before readings are taken.</source>
            <translation>Vor dem Übernehmen von Ablesungen verbinden.</translation>
        </message>
        <message>
            <source>%1 Nothing is taken while this window is open.</source>
            <translation>%1 Solange dieses Fenster offen ist, wird nichts übernommen.</translation>
        </message>
        <message>
            <source>Dis&amp;connect</source>
            <translation>&amp;Trennen</translation>
        </message>
        <message>
            <source>Connection</source>
            <translation>Verbindung</translation>
        </message>
        <message>
            <source>&amp;Photometer</source>
            <translation>Ph&amp;otometer</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>to remember it by</source>
            <translation>zum Merken</translation>
        </message>
        <message>
            <source>How a line is read</source>
            <translation>Wie eine Zeile gelesen wird</translation>
        </message>
        <message>
            <source>Paste some lines of the photometer here, or use those that came in.</source>
            <translation>Einige Zeilen des Photometers hier einfügen oder die empfangenen verwenden.</translation>
        </message>
        <message>
            <source>Try it &amp;out on sample lines</source>
            <translation>An &amp;Probezeilen ausprobieren</translation>
        </message>
        <message>
            <source>What came in, the last line on top</source>
            <translation>Empfangenes, die letzte Zeile oben</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Listener</name>
        <message>
            <source>Not connected.</source>
            <translation>Nicht verbunden.</translation>
        </message>
        <message>
            <source>The connection ended in the middle of this line, so it is not a reading.</source>
            <translation>Die Verbindung endete mitten in dieser Zeile, sie ist also keine Ablesung.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoField</name>
        <message>
            <source>&amp;Load a picture…</source>
            <translation>Bild &amp;laden…</translation>
        </message>
        <message>
            <source>Remove &amp;it</source>
            <translation>Bild &amp;entfernen</translation>
        </message>
        <message>
            <source>Load the logo</source>
            <translation>Logo laden</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg);;All files (*)</source>
            <translation>Bilder (*.png *.svg);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>cannot be drawn</source>
            <translation>kann nicht gezeichnet werden</translation>
        </message>
        <message>
            <source>no logo</source>
            <translation>kein Logo</translation>
        </message>
        <message>
            <source>%1. On a report it is at most 48 mm wide and 20 mm high.</source>
            <translation>%1. Auf einem Bericht ist es höchstens 48 mm breit und 20 mm hoch.</translation>
        </message>
        <message>
            <source>A PNG or SVG picture; reports without one begin with the name alone.</source>
            <translation>Ein PNG- oder SVG-Bild; Berichte ohne Bild beginnen nur mit dem Namen.</translation>
        </message>
        <message>
            <source>Rep&amp;lace it…</source>
            <translation>Bild e&amp;rsetzen…</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoFile</name>
        <message>
            <source>it cannot be drawn</source>
            <translation>es kann nicht gezeichnet werden</translation>
        </message>
        <message>
            <source>%1 was not taken: %2. Choose a PNG or SVG picture of at most %3 kB.</source>
            <translation>%1 wurde nicht übernommen: %2. Ein PNG- oder SVG-Bild von höchstens %3 kB wählen.</translation>
        </message>
        <message>
            <source>it cannot be opened (%1)</source>
            <translation>es kann nicht geöffnet werden (%1)</translation>
        </message>
        <message>
            <source>it has %1 kB</source>
            <translation>es hat %1 kB</translation>
        </message>
        <message>
            <source>it is neither a PNG nor an SVG picture</source>
            <translation>es ist weder ein PNG- noch ein SVG-Bild</translation>
        </message>
        <message>
            <source>SVG, %1 kB</source>
            <translation>SVG, %1 kB</translation>
        </message>
        <message>
            <source>PNG, %1 × %2 pixels, %3 kB</source>
            <translation>PNG, %1 × %2 Pixel, %3 kB</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LossPicture</name>
        <message>
            <source>What was left of the standard, against its age</source>
            <translation>Was vom Standard übrig war, gegen sein Alter</translation>
        </message>
        <message>
            <source>age at use in h</source>
            <translation>Alter bei Verwendung in h</translation>
        </message>
        <message>
            <source>found, in % of what was weighed</source>
            <translation>gefunden in % der Einwaage</translation>
        </message>
        <message>
            <source>found</source>
            <translation>gefunden</translation>
        </message>
        <message>
            <source>fitted</source>
            <translation>angepasst</translation>
        </message>
        <message>
            <source>as stated</source>
            <translation>wie angegeben</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotKeepingForm</name>
        <message>
            <source>%1: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>%1: ganze Tage angeben, 0 für nur diesen Tag, oder nichts, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>&amp;In what</source>
            <translation>Wori&amp;n</translation>
        </message>
        <message>
            <source>Number of ali&amp;quots</source>
            <translation>Anzahl Ali&amp;quote</translation>
        </message>
        <message>
            <source>&amp;Keeps dissolved (days)</source>
            <translation>Gelöst &amp;haltbar (Tage)</translation>
        </message>
        <message>
            <source>Once &amp;thawed (days)</source>
            <translation>Aufge&amp;taut (Tage)</translation>
        </message>
        <message>
            <source>&amp;Where it is kept</source>
            <translation>W&amp;o es liegt</translation>
        </message>
        <message>
            <source>Co&amp;ldest there (°C)</source>
            <translation>&amp;Kälteste dort (°C)</translation>
        </message>
        <message>
            <source>War&amp;mest there (°C)</source>
            <translation>Wär&amp;mste dort (°C)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Leer, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Empty where only the warmest counts, as in a freezer below −10 °C.</source>
            <translation>Leer, wo nur die wärmste zählt, wie in einem Gefrierschrank unter −10 °C.</translation>
        </message>
        <message>
            <source>%1, lot %2 (%3 left)</source>
            <translation>%1, Charge %2 (%3 übrig)</translation>
        </message>
        <message>
            <source>&amp;Keep as stored (days)</source>
            <translation>So gelagert &amp;haltbar (Tage)</translation>
        </message>
        <message>
            <source>Say in what it was dissolved: choose a container, or key it, as water.</source>
            <translation>Angeben, worin es gelöst wurde: ein Gebinde wählen oder eintippen, etwa Wasser.</translation>
        </message>
        <message>
            <source>Keeps dissolved</source>
            <translation>Gelöst haltbar</translation>
        </message>
        <message>
            <source>Say how many aliquots there are: a whole number, 1 or more.</source>
            <translation>Angeben, wie viele Aliquote es sind: eine ganze Zahl, 1 oder mehr.</translation>
        </message>
        <message>
            <source>Keep as stored</source>
            <translation>So gelagert haltbar</translation>
        </message>
        <message>
            <source>Once thawed</source>
            <translation>Aufgetaut</translation>
        </message>
        <message>
            <source>Once thawed: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Aufgetaut: ganze Tage angeben, 1 oder mehr, oder nichts, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Say where it is kept, as freezer 2, upper drawer.</source>
            <translation>Angeben, wo es liegt, etwa Gefrierschrank 2, obere Schublade.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotLabelForm</name>
        <message>
            <source>&amp;Reagent</source>
            <translation>&amp;Reagenz</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>&amp;Charge</translation>
        </message>
        <message>
            <source>Last good &amp;day</source>
            <translation>Letzter Verwendungs&amp;tag</translation>
        </message>
        <message>
            <source>&amp;Keeps once opened (days)</source>
            <translation>Geöffnet halt&amp;bar (Tage)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Leer, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Say which reagent it is, by the name that the methods use.</source>
            <translation>Angeben, welches Reagenz es ist, mit dem Namen, den die Methoden verwenden.</translation>
        </message>
        <message>
            <source>Say which lot it is, as it stands on the label; for water or a buffer of your own the day it was made will do.</source>
            <translation>Angeben, welche Charge es ist, wie auf dem Etikett; bei Wasser oder eigenem Puffer genügt der Tag der Herstellung.</translation>
        </message>
        <message>
            <source>Last good day: %1</source>
            <translation>Letzter Verwendungstag: %1</translation>
        </message>
        <message>
            <source>Keeps once opened: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Geöffnet haltbar: ganze Tage angeben, 1 oder mehr, oder nichts, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Keeps once d&amp;issolved (days)</source>
            <translation>Ge&amp;löst haltbar (Tage)</translation>
        </message>
        <message>
            <source>For what comes dry; 0: on that day only. Empty where none is stated.</source>
            <translation>Bei trocken Geliefertem; 0: nur an diesem Tag. Leer, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>Keeps once dissolved: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>Gelöst haltbar: ganze Tage angeben, 0 für nur diesen Tag, oder nichts, wo niemand etwas angibt.</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Wie %1, oder ein Monat wie %2. Leer, wo keiner angegeben ist.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotView</name>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, Charge %2</translation>
        </message>
        <message>
            <source>left: %1</source>
            <translation>übrig: %1</translation>
        </message>
        <message>
            <source>keeps once opened: %1 days</source>
            <translation>geöffnet haltbar: %1 Tage</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>According to the ledger %1, of which runs took %2; left: %3.</source>
            <translation>Bestandsliste: %1; davon in Läufen verbraucht: %2; übrig: %3.</translation>
        </message>
        <message>
            <source>It was opened</source>
            <translation>Es wurde geöffnet</translation>
        </message>
        <message>
            <source>Some was taken outside a run</source>
            <translation>Außerhalb eines Laufs entnommen</translation>
        </message>
        <message>
            <source>Some was spilt or thrown away</source>
            <translation>Etwas wurde verschüttet oder entsorgt</translation>
        </message>
        <message>
            <source>Another volume was found in it</source>
            <translation>Ein anderes Volumen wurde darin gefunden</translation>
        </message>
        <message>
            <source>Its label was noted wrongly</source>
            <translation>Das Etikett wurde falsch notiert</translation>
        </message>
        <message>
            <source>Vol&amp;ume found (mL)</source>
            <translation>Gefundenes &amp;Volumen (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume (mL)</source>
            <translation>&amp;Volumen (mL)</translation>
        </message>
        <message>
            <source>What for (may b&amp;e empty)</source>
            <translation>Wo&amp;für (darf leer sein)</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Grun&amp;d</translation>
        </message>
        <message>
            <source>Say how much it is, in mL.</source>
            <translation>Angeben, wie viel es ist, in mL.</translation>
        </message>
        <message>
            <source>Say why; the ledger keeps it.</source>
            <translation>Angeben, warum; die Bestandsliste bewahrt es auf.</translation>
        </message>
        <message>
            <source>Ledger of the container</source>
            <translation>Bestandsliste des Gebindes</translation>
        </message>
        <message>
            <source>Runs that took from it</source>
            <translation>Läufe, die daraus entnahmen</translation>
        </message>
        <message>
            <source>Ledger</source>
            <translation>Bestandsliste</translation>
        </message>
        <message>
            <source>What it touched as &amp;CSV…</source>
            <translation>&amp;Betroffenes als CSV…</translation>
        </message>
        <message>
            <source>Every run that took from it and every result: for the day when the supplier recalls it.</source>
            <translation>Jeder Lauf, der daraus entnahm, und jedes Ergebnis: für den Tag, an dem der Lieferant die Charge zurückruft.</translation>
        </message>
        <message>
            <source>What happened to it</source>
            <translation>Was damit geschah</translation>
        </message>
        <message>
            <source>Wh&amp;at</source>
            <translation>&amp;Was</translation>
        </message>
        <message>
            <source>Da&amp;y</source>
            <translation>&amp;Tag</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>dry: %1</source>
            <translation>trocken: %1</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>use by: %1</source>
            <translation>verwendbar bis: %1</translation>
        </message>
        <message>
            <source>the label says: %1</source>
            <translation>das Etikett sagt: %1</translation>
        </message>
        <message>
            <source>dissolved: %1, in %2</source>
            <translation>gelöst: %1, in %2</translation>
        </message>
        <message>
            <source>keeps once dissolved: %1 days</source>
            <translation>gelöst haltbar: %1 Tage</translation>
        </message>
        <message>
            <source>filled: %1</source>
            <translation>gefüllt: %1</translation>
        </message>
        <message>
            <source>keeps as stored: %1 days</source>
            <translation>so gelagert haltbar: %1 Tage</translation>
        </message>
        <message>
            <source>kept: %1</source>
            <translation>liegt: %1</translation>
        </message>
        <message>
            <source>It is dry: its volume begins when it is dissolved.</source>
            <translation>Es ist trocken: Sein Volumen beginnt, wenn es gelöst wird.</translation>
        </message>
        <message>
            <source>It was dissolved</source>
            <translation>Es wurde gelöst</translation>
        </message>
        <message>
            <source>It was opened or thawed</source>
            <translation>Es wurde geöffnet oder aufgetaut</translation>
        </message>
        <message>
            <source>It was thrown away</source>
            <translation>Es wurde entsorgt</translation>
        </message>
        <message>
            <source>It was divided into aliquots</source>
            <translation>Es wurde in Aliquote geteilt</translation>
        </message>
        <message>
            <source>There is something to note about it</source>
            <translation>Es gibt etwas dazu zu vermerken</translation>
        </message>
        <message>
            <source>Sol&amp;ution (mL)</source>
            <translation>Lös&amp;ung (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume of each (mL)</source>
            <translation>Vol&amp;umen je Aliquot (mL)</translation>
        </message>
        <message>
            <source>Not&amp;e (may be empty)</source>
            <translation>B&amp;emerkung (darf leer sein)</translation>
        </message>
        <message>
            <source>Not&amp;e</source>
            <translation>B&amp;emerkung</translation>
        </message>
        <message>
            <source>It was moved</source>
            <translation>Es wurde umgestellt</translation>
        </message>
        <message>
            <source>No dose of a run was ticked with this lot yet. What was taken otherwise stands in the ledger.</source>
            <translation>Noch keine Zugabe eines Laufs wurde mit dieser Charge abgehakt. Was sonst entnommen wurde, steht in der Bestandsliste.</translation>
        </message>
        <message>
            <source>Left according to the ledger: %1; runs took nothing from it.</source>
            <translation>Laut Bestandsliste übrig: %1; Läufe haben nichts entnommen.</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>geöffnet am %1</translation>
        </message>
        <message>
            <source>It was opened on another day</source>
            <translation>Es wurde an einem anderen Tag geöffnet</translation>
        </message>
        <message>
            <source>It was not opened after all</source>
            <translation>Es wurde doch nicht geöffnet</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotWords</name>
        <message>
            <source>received</source>
            <translation>eingegangen</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>entsorgt</translation>
        </message>
        <message>
            <source>corrected to what was found</source>
            <translation>auf den gefundenen Bestand berichtigt</translation>
        </message>
        <message>
            <source>received dry</source>
            <translation>trocken eingebucht</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>geöffnet</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>gelöst</translation>
        </message>
        <message>
            <source>taken to dissolve</source>
            <translation>zum Lösen entnommen</translation>
        </message>
        <message>
            <source>divided</source>
            <translation>geteilt</translation>
        </message>
        <message>
            <source>filled</source>
            <translation>gefüllt</translation>
        </message>
        <message>
            <source>put where it is kept</source>
            <translation>an seinen Ort gelegt</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>vermerkt</translation>
        </message>
        <message>
            <source>taken, keyed by hand</source>
            <translation>entnommen, von Hand eingetragen</translation>
        </message>
        <message>
            <source>Key the day as %1.</source>
            <translation>Den Tag wie %1 eingeben.</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its last day.</source>
            <translation>Das ist kein Tag. Wie %1 eingeben; ein Monat allein, wie %2, meint seinen letzten Tag.</translation>
        </message>
        <message>
            <source>opening corrected</source>
            <translation>Öffnung berichtigt</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its first day.</source>
            <translation>Das ist kein Tag. Wie %1 eingeben; ein Monat allein, wie %2, meint seinen ersten Tag.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsModel</name>
        <message>
            <source>Reagent</source>
            <translation>Reagenz</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Übrig</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>Use by</source>
            <translation>Verwendbar bis</translation>
        </message>
        <message>
            <source>Kept</source>
            <translation>Ort</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>Containers of reagents</source>
            <translation>Gebinde der Reagenzien</translation>
        </message>
        <message>
            <source>Fin&amp;d by reagent, lot or state</source>
            <translation>Reagenz, Charge oder Status &amp;finden</translation>
        </message>
        <message>
            <source>No container is in hand. Receive the reagents, water and buffers there are; plans then say whether they are enough.</source>
            <translation>Kein Gebinde ist vorhanden. Vorhandene Reagenzien, Wasser und Puffer einbuchen; Pläne sagen dann, ob sie reichen.</translation>
        </message>
        <message>
            <source>No container contains all of these words. Remove one to find more.</source>
            <translation>Kein Gebinde hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>Used &amp;up too</source>
            <translation>Auch aufge&amp;brauchte</translation>
        </message>
        <message>
            <source>&amp;Receive a container…</source>
            <translation>Gebinde &amp;einbuchen…</translation>
        </message>
        <message>
            <source>Noted as opened on %1.</source>
            <translation>Als geöffnet vermerkt am %1.</translation>
        </message>
        <message>
            <source>%1 taken.</source>
            <translation>%1 entnommen.</translation>
        </message>
        <message>
            <source>%1 thrown away.</source>
            <translation>%1 entsorgt.</translation>
        </message>
        <message>
            <source>Corrected: %1 are left in it.</source>
            <translation>Berichtigt: %1 sind darin übrig.</translation>
        </message>
        <message>
            <source>The label is corrected; what was decided on the old one keeps it.</source>
            <translation>Das Etikett ist berichtigt; was nach dem alten entschieden wurde, behält es.</translation>
        </message>
        <message>
            <source>What happened to a lot, not stored yet</source>
            <translation>Was mit einer Charge geschah, noch nicht gespeichert</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3. The label stays here for the next container of it.</source>
            <translation>Im Buch: %1, Charge %2, %3. Das Etikett bleibt hier für das nächste Gebinde davon stehen.</translation>
        </message>
        <message>
            <source>%1 Its last good day, %2, is past already.</source>
            <translation>%1 Der letzte Verwendungstag, %2, ist bereits vorbei.</translation>
        </message>
        <message>
            <source>Save what the container touched</source>
            <translation>Betroffenes des Gebindes speichern</translation>
        </message>
        <message>
            <source>lot %1.csv</source>
            <translation>charge %1.csv</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>CSV-Dateien (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written: every run that took from it, a row for each result.</source>
            <translation>%1 wurde geschrieben: jeder Lauf, der daraus entnahm, eine Zeile je Ergebnis.</translation>
        </message>
        <message>
            <source>Dissolved: now %1 of it.</source>
            <translation>Gelöst: davon jetzt %1.</translation>
        </message>
        <message>
            <source>Divided. Its aliquots are containers of their own in the list: %1, of %2 each.</source>
            <translation>Geteilt. Seine Aliquote sind eigene Gebinde der Liste: %1, zu je %2.</translation>
        </message>
        <message>
            <source>Noted: it is kept in %1.</source>
            <translation>Vermerkt: Es liegt in %1.</translation>
        </message>
        <message>
            <source>Noted; the ledger keeps it.</source>
            <translation>Vermerkt; die Bestandsliste bewahrt es auf.</translation>
        </message>
        <message>
            <source>Thrown away.</source>
            <translation>Entsorgt.</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>Noted as not opened.</source>
            <translation>Als nicht geöffnet vermerkt.</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3, good until %4 by its label. The label stays here for the next container of it.</source>
            <translation>Im Buch: %1, Charge %2, %3, laut Etikett verwendbar bis %4. Das Etikett bleibt hier für das nächste Gebinde davon stehen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MainWindow</name>
        <message>
            <source>About Plateau</source>
            <translation>Über Plateau</translation>
        </message>
        <message>
            <source>These method files cannot be used and are left out:
%1</source>
            <translation>Diese Methodendateien sind nicht verwendbar und bleiben weg:
%1</translation>
        </message>
        <message>
            <source>The computer's clock was set: %1. The timers go on by a clock that nobody can set, so nothing is due earlier or later; the notebook has a record of it.</source>
            <translation>Die Uhr des Rechners wurde gestellt: %1. Die Zeitmesser laufen nach einer Uhr weiter, die niemand stellen kann, nichts wird also früher oder später fällig; das Laborjournal hat eine Aufzeichnung davon.</translation>
        </message>
        <message>
            <source>The settings hold until the program ends; they could not be kept for the next time.</source>
            <translation>Die Einstellungen gelten, bis das Programm endet; für das nächste Mal konnten sie nicht gespeichert werden.</translation>
        </message>
        <message>
            <source>Open run file</source>
            <translation>Laufdatei öffnen</translation>
        </message>
        <message>
            <source>Run files (*.json);;All files (*)</source>
            <translation>Laufdateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Rack %1, %2</source>
            <translation>Rack %1, %2</translation>
        </message>
        <message>
            <source>Plateau</source>
            <translation>Plateau</translation>
        </message>
        <message>
            <source>Rack %1: typed and not stored, but kept where it was typed: %2.</source>
            <translation>Rack %1: eingegeben und nicht gespeichert, aber am Ort der Eingabe behalten: %2.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>A new run that is not on the bench yet</source>
            <translation>Ein neuer Lauf, der noch nicht in Arbeit ist</translation>
        </message>
        <message>
            <source>Not stored yet</source>
            <translation>Noch nicht gespeichert</translation>
        </message>
        <message>
            <source>This was typed and is not stored; it is lost when the window closes:

%1</source>
            <translation>Das wurde eingegeben und ist nicht gespeichert; es geht verloren, wenn das Fenster schließt:

%1</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>Ohne Speichern &amp;schließen</translation>
        </message>
        <message>
            <source>&amp;Stay</source>
            <translation>&amp;Bleiben</translation>
        </message>
        <message>
            <source>There was no notebook %1; a new one was made. If yours was expected here, close the window and see that the name is right.</source>
            <translation>Es gab kein Laborjournal %1; ein neues wurde angelegt. Wenn hier Ihres erwartet wurde, das Fenster schließen und den Namen prüfen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MappingForm</name>
        <message>
            <source>Leave out empty &amp;lines</source>
            <translation>Leere &amp;Zeilen weglassen</translation>
        </message>
        <message>
            <source>tabs</source>
            <translation>Tabulatoren</translation>
        </message>
        <message>
            <source>semicolons</source>
            <translation>Semikolons</translation>
        </message>
        <message>
            <source>commas</source>
            <translation>Kommas</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>Leerzeichen</translation>
        </message>
        <message>
            <source>as it stands</source>
            <translation>wie es steht</translation>
        </message>
        <message>
            <source>last line first</source>
            <translation>letzte Zeile zuerst</translation>
        </message>
        <message>
            <source>none, the order tells</source>
            <translation>keine, nach der Reihenfolge</translation>
        </message>
        <message>
            <source>&amp;Columns separated by</source>
            <translation>&amp;Spalten getrennt durch</translation>
        </message>
        <message>
            <source>&amp;Decimal sign</source>
            <translation>&amp;Dezimalzeichen</translation>
        </message>
        <message>
            <source>&amp;Absorbance in column</source>
            <translation>E&amp;xtinktion in Spalte</translation>
        </message>
        <message>
            <source>T&amp;ube in column</source>
            <translation>&amp;Ansatz in Spalte</translation>
        </message>
        <message>
            <source>Lines of &amp;heading</source>
            <translation>&amp;Überschriftzeilen</translation>
        </message>
        <message>
            <source>&amp;Order</source>
            <translation>&amp;Reihenfolge</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>&amp;Kodierung</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MatrixText</name>
        <message>
            <source>Clear and colourless</source>
            <translation>Klar und farblos</translation>
        </message>
        <message>
            <source>Coloured</source>
            <translation>Gefärbt</translation>
        </message>
        <message>
            <source>Turbid</source>
            <translation>Trüb</translation>
        </message>
        <message>
            <source>Carbonated</source>
            <translation>Kohlensäurehaltig</translation>
        </message>
        <message>
            <source>Fatty</source>
            <translation>Fetthaltig</translation>
        </message>
        <message>
            <source>Rich in protein</source>
            <translation>Proteinreich</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Fest</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MeasuresSection</name>
        <message>
            <source>Measurands</source>
            <translation>Messgrößen</translation>
        </message>
        <message>
            <source>M: molar mass. n: molecules of the chromophore formed or used for each molecule. From, to: what samples usually hold. </source>
            <translation>M: molare Masse. n: gebildete oder verbrauchte Chromophormoleküle je Molekül. Von, bis: was Proben gewöhnlich enthalten. </translation>
        </message>
        <message>
            <source>Quantities that come from others</source>
            <translation>Abgeleitete Größen</translation>
        </message>
        <message>
            <source>One row for each part: its result times a number, −1 to subtract. Rows of one name are added up.</source>
            <translation>Eine Zeile je Teil: sein Ergebnis mal eine Zahl, −1 zum Abziehen. Zeilen mit demselben Namen werden addiert.</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Short name</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>aus dem Namen gebildet</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodActWords</name>
        <message>
            <source>%1, saved by %2</source>
            <translation>%1, gespeichert von %2</translation>
        </message>
        <message>
            <source>%1, saved by %2: %3</source>
            <translation>%1, gespeichert von %2: %3</translation>
        </message>
        <message>
            <source>%1, imported from %3 by %2</source>
            <translation>%1, importiert aus %3 von %2</translation>
        </message>
        <message>
            <source>%1, retired by %2: %3</source>
            <translation>%1, deaktiviert von %2: %3</translation>
        </message>
        <message>
            <source>%1, reinstated by %2: %3</source>
            <translation>%1, reaktiviert von %2: %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodBook</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodDraft</name>
        <message>
            <source>must lie between 0 and 100 %, not %1</source>
            <translation>muss zwischen 0 und 100 % liegen, nicht %1</translation>
        </message>
        <message>
            <source>say which component is added</source>
            <translation>angeben, welche Komponente zugegeben wird</translation>
        </message>
        <message>
            <source>this wavelength is in the table already; keep one of the two</source>
            <translation>diese Wellenlänge steht bereits in der Tabelle; eine der beiden behalten</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Startreagenz</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodEditor</name>
        <message>
            <source>%1 (stays: runs and files know the method by it)</source>
            <translation>%1 (bleibt: Läufe und Dateien kennen die Methode daran)</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Noch zu berichtigen (%1), Enter führt dorthin:</translation>
        </message>
        <message>
            <source>%1 Worth a look:</source>
            <translation>%1 Zu beachten:</translation>
        </message>
        <message>
            <source>Nothing stands in the way of saving.</source>
            <translation>Dem Speichern steht nichts im Weg.</translation>
        </message>
        <message>
            <source>It can be saved. Worth a look:</source>
            <translation>Speichern ist möglich. Zu beachten:</translation>
        </message>
        <message>
            <source>%1, copy</source>
            <translation>%1, Kopie</translation>
        </message>
        <message>
            <source>will be saved as the next version, after version %1</source>
            <translation>wird als nächste Version gespeichert, nach Version %1</translation>
        </message>
        <message>
            <source>will be saved as version 1</source>
            <translation>wird als Version 1 gespeichert</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>A method without a name yet</source>
            <translation>Eine Methode noch ohne Namen</translation>
        </message>
        <message>
            <source>made from the name: %1</source>
            <translation>aus dem Namen gebildet: %1</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>aus dem Namen gebildet</translation>
        </message>
        <message>
            <source>%1 is the short name of the method %2; choose another, or open that method and make its next version</source>
            <translation>%1 ist die Kennung der Methode %2; eine andere wählen oder jene Methode öffnen und ihre nächste Version erstellen</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>Es gibt nichts zu speichern: Version %1 sagt genau das.</translation>
        </message>
        <message>
            <source>%1 It is retired; reinstate it to use it.</source>
            <translation>%1 Sie ist deaktiviert; zum Verwenden reaktivieren.</translation>
        </message>
        <message>
            <source>The method is not saved yet: first put right what the list names.</source>
            <translation>Die Methode ist noch nicht gespeichert: zuerst berichtigen, was die Liste nennt.</translation>
        </message>
        <message>
            <source>Say in the line above what was changed and why, then press Enter; the method's history keeps it.</source>
            <translation>In der Zeile oben angeben, was geändert wurde und warum, dann Enter drücken; der Verlauf der Methode bewahrt es auf.</translation>
        </message>
        <message>
            <source>&amp;Save method</source>
            <translation>&amp;Methode speichern</translation>
        </message>
        <message>
            <source>&amp;What was changed and why</source>
            <translation>&amp;Was geändert wurde und warum</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the method</source>
            <translation>Abschnitte der Methode</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt mit der Nummer des Abschnitts führt von überall dorthin.</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Was sie misst</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Vorschrift</translation>
        </message>
        <message>
            <source>Readings and signal</source>
            <translation>Ablesungen und Signal</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Grenzwerte</translation>
        </message>
        <message>
            <source>Text and cautions</source>
            <translation>Text und Warnhinweise</translation>
        </message>
        <message>
            <source>Try it</source>
            <translation>Ausprobieren</translation>
        </message>
        <message>
            <source>There are changes that are not saved. Press it once more to drop them, or save first.</source>
            <translation>Es gibt Änderungen, die nicht gespeichert sind. Noch einmal drücken, um sie zu verwerfen, oder zuerst speichern.</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Zur&amp;ück zur Liste</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodFiles</name>
        <message>
            <source>Nothing was imported, since the file cannot be used:</source>
            <translation>Nichts wurde importiert, da die Datei nicht verwendbar ist:</translation>
        </message>
        <message>
            <source>and %1 more</source>
            <translation>und %1 weitere</translation>
        </message>
        <message>
            <source>The method could not be written to %1: %2. Choose another place; nothing else changed.</source>
            <translation>Die Methode konnte nicht nach %1 geschrieben werden: %2. Einen anderen Ort wählen; sonst hat sich nichts geändert.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodPlaces</name>
        <message>
            <source>short name</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>principle</source>
            <translation>Prinzip</translation>
        </message>
        <message>
            <source>chromophore</source>
            <translation>Chromophor</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>components</source>
            <translation>Komponenten</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>allowed volumes</source>
            <translation>zulässige Volumina</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>Verdünnungsmittel</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>Startreagenz</translation>
        </message>
        <message>
            <source>steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>measurands</source>
            <translation>Messgrößen</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>molare Masse</translation>
        </message>
        <message>
            <source>chromophore per molecule</source>
            <translation>Chromophor je Molekül</translation>
        </message>
        <message>
            <source>usual concentrations</source>
            <translation>übliche Konzentrationen</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>from reading</source>
            <translation>von Ablesung</translation>
        </message>
        <message>
            <source>to reading</source>
            <translation>bis Ablesung</translation>
        </message>
        <message>
            <source>middle reading</source>
            <translation>mittlere Ablesung</translation>
        </message>
        <message>
            <source>quantities that come from others</source>
            <translation>abgeleitete Größen</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>times</source>
            <translation>mal</translation>
        </message>
        <message>
            <source>measuring window</source>
            <translation>Messfenster</translation>
        </message>
        <message>
            <source>smallest net signal</source>
            <translation>kleinstes Nettosignal</translation>
        </message>
        <message>
            <source>largest net signal</source>
            <translation>größtes Nettosignal</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>größte Extinktion</translation>
        </message>
        <message>
            <source>absorbance that must remain</source>
            <translation>Extinktion, die verbleiben muss</translation>
        </message>
        <message>
            <source>what a run has to keep</source>
            <translation>was ein Lauf einhalten muss</translation>
        </message>
        <message>
            <source>largest signal of a blank</source>
            <translation>größtes Signal eines Blindwerts</translation>
        </message>
        <message>
            <source>recovery of the standard</source>
            <translation>Wiederfindung des Standards</translation>
        </message>
        <message>
            <source>recovery of a spike</source>
            <translation>Wiederfindung einer Aufstockung</translation>
        </message>
        <message>
            <source>duplicates</source>
            <translation>Doppelbestimmungen</translation>
        </message>
        <message>
            <source>differ by at most</source>
            <translation>Abweichung höchstens</translation>
        </message>
        <message>
            <source>share of the mean</source>
            <translation>Anteil des Mittelwerts</translation>
        </message>
        <message>
            <source>usual standard</source>
            <translation>üblicher Standard</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>Konzentration</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>Verlust pro Stunde</translation>
        </message>
        <message>
            <source>tubes of a rack</source>
            <translation>Ansätze eines Racks</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>Blindwerte</translation>
        </message>
        <message>
            <source>of each sample</source>
            <translation>je Probe</translation>
        </message>
        <message>
            <source>standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>reading taken as a series</source>
            <translation>als Ablesereihe vorgenommene Ablesung</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>readings on the line</source>
            <translation>Ablesungen auf der Geraden</translation>
        </message>
        <message>
            <source>component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>step %1</source>
            <translation>Schritt %1</translation>
        </message>
        <message>
            <source>part %1</source>
            <translation>Teil %1</translation>
        </message>
        <message>
            <source>caution %1</source>
            <translation>Warnhinweis %1</translation>
        </message>
        <message>
            <source>reaction %1</source>
            <translation>Reaktion %1</translation>
        </message>
        <message>
            <source>what interferes, line %1</source>
            <translation>was stört, Zeile %1</translation>
        </message>
        <message>
            <source>preparation of the sample</source>
            <translation>Vorbereitung der Probe</translation>
        </message>
        <message>
            <source>from</source>
            <translation>von</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>the %1</source>
            <translation>„%1“</translation>
        </message>
        <message>
            <source>absorptivity at %1 nm</source>
            <translation>Extinktionskoeffizient bei %1 nm</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodStandings</name>
        <message>
            <source>earlier version</source>
            <translation>frühere Version</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>retired</source>
            <translation>deaktiviert</translation>
        </message>
        <message>
            <source>in use, kept apart</source>
            <translation>in Gebrauch, getrennt geführt</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>in Gebrauch</translation>
        </message>
        <message>
            <source>on record</source>
            <translation>verzeichnet</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodText</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Mit einer Vorlage erstellt, deren Volumina niemand bestätigt hat: %1.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodUncertaintiesForm</name>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>Absorbance of one reading</source>
            <translation>Extinktion einer Ablesung</translation>
        </message>
        <message>
            <source>ε %</source>
            <translation>ε %</translation>
        </message>
        <message>
            <source>Absorptivity, in %</source>
            <translation>Extinktionskoeffizient, in %</translation>
        </message>
        <message>
            <source>path %</source>
            <translation>Schicht %</translation>
        </message>
        <message>
            <source>Path length, in %</source>
            <translation>Schichtdicke, in %</translation>
        </message>
        <message>
            <source>V %</source>
            <translation>V %</translation>
        </message>
        <message>
            <source>Total volume of the tube, in %</source>
            <translation>Gesamtvolumen des Ansatzes, in %</translation>
        </message>
        <message>
            <source>sample %</source>
            <translation>Probe %</translation>
        </message>
        <message>
            <source>Sample volume, in %</source>
            <translation>Probenvolumen, in %</translation>
        </message>
        <message>
            <source>dilution %</source>
            <translation>Verdünnung %</translation>
        </message>
        <message>
            <source>Each dilution step, in %</source>
            <translation>Jeder Verdünnungsschritt, in %</translation>
        </message>
        <message>
            <source>extract %</source>
            <translation>Extrakt %</translation>
        </message>
        <message>
            <source>Extract of a solid, in %</source>
            <translation>Extrakt eines Feststoffs, in %</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Unsicherheiten nach Methode</translation>
        </message>
        <message>
            <source>What your laboratory knows of one method, from its validation say. A number here comes before the photometer's and the glassware's, in every run by that method that is planned from now on; an empty cell leaves it to them. Standard uncertainties (k = 1); the source is needed. %1</source>
            <translation>Was das Labor von einer Methode weiß, etwa aus ihrer Validierung. Eine Zahl hier geht denen des Photometers und der Volumenmessgeräte vor, in jedem Lauf nach dieser Methode, der ab jetzt geplant wird; eine leere Zelle überlässt es ihnen. Standardunsicherheiten (k = 1); die Quelle ist nötig. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodView</name>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>What was done with it</source>
            <translation>Was mit ihr getan wurde</translation>
        </message>
        <message>
            <source>About the method</source>
            <translation>Über die Methode</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>M&amp;ethode</translation>
        </message>
        <message>
            <source>Ver&amp;sions</source>
            <translation>&amp;Versionen</translation>
        </message>
        <message>
            <source>Histor&amp;y</source>
            <translation>Verlau&amp;f</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>&amp;Ändern…</translation>
        </message>
        <message>
            <source>New from &amp;this…</source>
            <translation>&amp;Neu aus dieser…</translation>
        </message>
        <message>
            <source>E&amp;xport to a file…</source>
            <translation>In eine Datei e&amp;xportieren…</translation>
        </message>
        <message>
            <source>Version %1, %2, %3; runs: %4</source>
            <translation>Version %1, %2, %3; Läufe: %4</translation>
        </message>
        <message>
            <source>&amp;Reason to use it again</source>
            <translation>&amp;Grund, sie wieder zu verwenden</translation>
        </message>
        <message>
            <source>&amp;Reason to retire it</source>
            <translation>&amp;Grund, sie zu deaktivieren</translation>
        </message>
        <message>
            <source>Re&amp;instate</source>
            <translation>&amp;Reaktivieren</translation>
        </message>
        <message>
            <source>Ret&amp;ire</source>
            <translation>&amp;Deaktivieren</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodViewText</name>
        <message>
            <source>%1 to %2 %3</source>
            <translation>%1 bis %2 %3</translation>
        </message>
        <message>
            <source>add %1 mL %2</source>
            <translation>%1 mL %2 zugeben</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>%1 zugeben</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mischen</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>wait %1 at %2</source>
            <translation>%1 bei %2 warten</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>%1 warten</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>%1 ablesen</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Warnhinweise</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Prinzip</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Reaktionen</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 durch %2</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Was sie misst</translation>
        </message>
        <message>
            <source>%1 g/mol</source>
            <translation>%1 g/mol</translation>
        </message>
        <message>
            <source>%1 %2 per molecule</source>
            <translation>%1 %2 je Molekül</translation>
        </message>
        <message>
            <source>usually %1</source>
            <translation>gewöhnlich %1</translation>
        </message>
        <message>
            <source>What comes from other results</source>
            <translation>Was aus anderen Ergebnissen stammt</translation>
        </message>
        <message>
            <source>Photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) at %2 nm</source>
            <translation>%1 L/(mol cm) bei %2 nm</translation>
        </message>
        <message>
            <source>that of the chromophore</source>
            <translation>der des Chromophors</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophor</translation>
        </message>
        <message>
            <source>%1, made by the reaction</source>
            <translation>%1, durch die Reaktion gebildet</translation>
        </message>
        <message>
            <source>%1, used up by the reaction</source>
            <translation>%1, durch die Reaktion verbraucht</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>wie abgelesen</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>auf das Endvolumen bezogen</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>Verdünnungsmittel</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>Startreagenz</translation>
        </message>
        <message>
            <source>%1 allowed</source>
            <translation>zulässig %1</translation>
        </message>
        <message>
            <source>suspension: swirl before use</source>
            <translation>Suspension: vor Gebrauch umschwenken</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Komponenten</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>%1 is a series; a line through its last %2 readings is taken back to the moment %3 was added.</source>
            <translation>%1 ist eine Ablesereihe; eine Gerade durch die letzten %2 Ablesungen wird auf den Zeitpunkt der Zugabe von %3 zurückgeführt.</translation>
        </message>
        <message>
            <source>Measuring window and acceptance</source>
            <translation>Messfenster und Annahme</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Nettosignal</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Größte Extinktion</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Extinktion, die verbleiben muss</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Größtes Blindwertsignal</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Wiederfindung eines Standards</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Wiederfindung einer Aufstockung</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Wiederholpräzision</translation>
        </message>
        <message>
            <source>r = %1 g/L + %2 % of the mean</source>
            <translation>r = %1 g/L + %2 % des Mittelwerts</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Üblicher Standard</translation>
        </message>
        <message>
            <source>%1 g/L</source>
            <translation>%1 g/L</translation>
        </message>
        <message>
            <source>The standard loses</source>
            <translation>Der Standard verliert</translation>
        </message>
        <message>
            <source>%1 % in an hour</source>
            <translation>%1 % pro Stunde</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Ansätze eines Racks</translation>
        </message>
        <message>
            <source>blanks: %1, of each sample: %2, standards: %3</source>
            <translation>Blindwerte: %1, je Probe: %2, Standards: %3</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Vorbereitung der Proben</translation>
        </message>
        <message>
            <source>What interferes</source>
            <translation>Was stört</translation>
        </message>
        <message>
            <source>What is from memory was set down by whoever wrote the method, for a shipped one by the makers of the program, without a published source.</source>
            <translation>Was aus dem Gedächtnis ist, hat niedergeschrieben, wer die Methode verfasst hat, bei mitgelieferten die Hersteller des Programms, ohne veröffentlichte Quelle.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsModel</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>Where it comes from</source>
            <translation>Woher sie stammt</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Läufe</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>What was changed and why</source>
            <translation>Was geändert wurde und warum</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsPage</name>
        <message>
            <source>Methods</source>
            <translation>Methoden</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, state or origin</source>
            <translation>Name, Status oder Herkunft &amp;finden</translation>
        </message>
        <message>
            <source>There is no method yet. Import one from a file, or write a new one.</source>
            <translation>Es gibt noch keine Methode. Eine aus einer Datei importieren oder eine neue schreiben.</translation>
        </message>
        <message>
            <source>No method contains all of these words. Remove one to find more.</source>
            <translation>Keine Methode hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>Ne&amp;w method…</source>
            <translation>&amp;Neue Methode…</translation>
        </message>
        <message>
            <source>&amp;Import from a file…</source>
            <translation>Aus eine&amp;r Datei importieren…</translation>
        </message>
        <message>
            <source>A method that is not saved yet</source>
            <translation>Eine noch nicht gespeicherte Methode</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Import a method</source>
            <translation>Methode importieren</translation>
        </message>
        <message>
            <source>Method files (*.json);;All files (*)</source>
            <translation>Methodendateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Export the method</source>
            <translation>Methode exportieren</translation>
        </message>
        <message>
            <source>Method files (*.json)</source>
            <translation>Methodendateien (*.json)</translation>
        </message>
        <message>
            <source>The method was written to %1.</source>
            <translation>Die Methode wurde nach %1 geschrieben.</translation>
        </message>
        <message>
            <source>The method is in use again.</source>
            <translation>Die Methode ist wieder in Gebrauch.</translation>
        </message>
        <message>
            <source>The method is retired: new runs are not offered it, its runs keep it.</source>
            <translation>Die Methode ist deaktiviert: Neuen Läufen wird sie nicht angeboten, ihre Läufe behalten sie.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MomentField</name>
        <message>
            <source>%1 min ago</source>
            <translation>vor %1 min</translation>
        </message>
        <message>
            <source>%1 h %2 min ago</source>
            <translation>vor %1 h %2 min</translation>
        </message>
        <message>
            <source>%1 days ago</source>
            <translation>vor %1 Tagen</translation>
        </message>
        <message>
            <source>as 8:10, or with its day</source>
            <translation>z. B. 8:10, auch mit Tag</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NameDoubts</name>
        <message>
            <source>A name with a figure in it: was a reading meant?</source>
            <translation>Ein Name mit einer Ziffer: War eine Ablesung gemeint?</translation>
        </message>
        <message>
            <source>Nobody of that name is set up: they can work, but not sign.</source>
            <translation>Unter diesem Namen ist keine Person eingerichtet: Sie kann arbeiten, aber nicht signieren.</translation>
        </message>
        <message>
            <source>This name is retired: they can work, but not sign.</source>
            <translation>Dieser Name ist deaktiviert: Die Person kann arbeiten, aber nicht signieren.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NetworkSource</name>
        <message>
            <source>there is no answer; check name, port number and network</source>
            <translation>es kommt keine Antwort; Name, Portnummer und Netz prüfen</translation>
        </message>
        <message>
            <source>there is no such host; check the name</source>
            <translation>diesen Host gibt es nicht; den Namen prüfen</translation>
        </message>
        <message>
            <source>nothing answers on this port number</source>
            <translation>an dieser Portnummer antwortet nichts</translation>
        </message>
        <message>
            <source>the other side closed it</source>
            <translation>die Gegenseite hat sie geschlossen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NextStrip</name>
        <message>
            <source>Next</source>
            <translation>Als Nächstes</translation>
        </message>
        <message>
            <source>Done now  F9</source>
            <translation>Jetzt erledigt  F9</translation>
        </message>
        <message>
            <source>&amp;Go to it</source>
            <translation>Dort&amp;hin gehen</translation>
        </message>
        <message>
            <source>Sound is off</source>
            <translation>Der Ton ist aus</translation>
        </message>
        <message>
            <source>Sound is on</source>
            <translation>Der Ton ist an</translation>
        </message>
        <message>
            <source>Press to hear when something is due</source>
            <translation>Drücken, um zu hören, wenn etwas fällig ist</translation>
        </message>
        <message>
            <source>Press to silence it</source>
            <translation>Drücken, um den Ton auszuschalten</translation>
        </message>
        <message>
            <source>Nothing due</source>
            <translation>Nichts fällig</translation>
        </message>
        <message>
            <source>Rack %1: %2</source>
            <translation>Rack %1: %2</translation>
        </message>
        <message>
            <source>Rack %1: %2 of %3 read</source>
            <translation>Rack %1: %2 von %3 abgelesen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberEntry</name>
        <message>
            <source>Not a number</source>
            <translation>Keine Zahl</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberReader</name>
        <message>
            <source>is empty; a number is needed</source>
            <translation>ist leer; eine Zahl ist nötig</translation>
        </message>
        <message>
            <source>"%1" is not a number. %2</source>
            <translation>„%1“ ist keine Zahl. %2</translation>
        </message>
        <message>
            <source>must be a whole number, not %1</source>
            <translation>muss eine ganze Zahl sein, nicht %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::OfferField</name>
        <message>
            <source>↓ for a list</source>
            <translation>↓ für eine Liste</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PanelPicture</name>
        <message>
            <source>centre</source>
            <translation>Mittellinie</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>recovery</source>
            <translation>Wiederfindung</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 in %2</translation>
        </message>
        <message>
            <source>%1; limits provisional</source>
            <translation>%1; Grenzen vorläufig</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PatternForm</name>
        <message>
            <source>the only number of the line</source>
            <translation>die einzige Zahl der Zeile</translation>
        </message>
        <message>
            <source>a number counted from the left</source>
            <translation>eine von links gezählte Zahl</translation>
        </message>
        <message>
            <source>the number after a text</source>
            <translation>die Zahl hinter einem Text</translation>
        </message>
        <message>
            <source>such as ABS</source>
            <translation>z. B. ABS</translation>
        </message>
        <message>
            <source>every line</source>
            <translation>jede Zeile</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>&amp;Absorbance is</source>
            <translation>&amp;Extinktion ist</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <translation>&amp;Nummer</translation>
        </message>
        <message>
            <source>Beh&amp;ind</source>
            <translation>&amp;Hinter</translation>
        </message>
        <message>
            <source>&amp;Decimal sign</source>
            <translation>&amp;Dezimalzeichen</translation>
        </message>
        <message>
            <source>Only lines &amp;with</source>
            <translation>Nur Zeilen &amp;mit</translation>
        </message>
        <message>
            <source>S&amp;kip lines with</source>
            <translation>Zeilen überspringen mi&amp;t</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>&amp;Kodierung</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Pdf</name>
        <message>
            <source>%1 was not written: the pages could not be drawn.</source>
            <translation>%1 wurde nicht geschrieben: Die Seiten konnten nicht gezeichnet werden.</translation>
        </message>
        <message>
            <source>%1 was not written: %2. Name a file in a folder that you may write to.</source>
            <translation>%1 wurde nicht geschrieben: %2. Eine Datei in einem Ordner nennen, der beschrieben werden darf.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsForm</name>
        <message>
            <source>Wh&amp;at</source>
            <translation>&amp;Was</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Ro&amp;le</source>
            <translation>&amp;Rolle</translation>
        </message>
        <message>
            <source>N&amp;ew passphrase</source>
            <translation>N&amp;eue Passphrase</translation>
        </message>
        <message>
            <source>The same aga&amp;in</source>
            <translation>&amp;Dieselbe erneut</translation>
        </message>
        <message>
            <source>At least 8 characters; several words that only its owner would put together make a good one. Its owner types it.</source>
            <translation>Mindestens 8 Zeichen; mehrere Wörter, die nur die Person selbst so zusammenstellen würde, ergeben eine gute. Sie gibt sie selbst ein.</translation>
        </message>
        <message>
            <source>&amp;Reason</source>
            <translation>Grun&amp;d</translation>
        </message>
        <message>
            <source>Signed b&amp;y</source>
            <translation>Signiert &amp;von</translation>
        </message>
        <message>
            <source>Passphrase of &amp;the one above</source>
            <translation>Passphrase der oben &amp;genannten Person</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Spei&amp;chern</translation>
        </message>
        <message>
            <source>Add a person</source>
            <translation>Person hinzufügen</translation>
        </message>
        <message>
            <source>Reinstate</source>
            <translation>Reaktivieren</translation>
        </message>
        <message>
            <source>Change name or role</source>
            <translation>Name oder Rolle ändern</translation>
        </message>
        <message>
            <source>Set another passphrase</source>
            <translation>Andere Passphrase setzen</translation>
        </message>
        <message>
            <source>Retire</source>
            <translation>Deaktivieren</translation>
        </message>
        <message>
            <source>The first person</source>
            <translation>Die erste Person</translation>
        </message>
        <message>
            <source>Change the list</source>
            <translation>Liste ändern</translation>
        </message>
        <message>
            <source>&amp;Set up people</source>
            <translation>Personen einri&amp;chten</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Is the head, who signs decisions and keeps this list.</source>
            <translation>Hat die Rolle Laborleitung, signiert Entscheidungen und führt diese Liste.</translation>
        </message>
        <message>
            <source>This passphrase cannot be used: %1.</source>
            <translation>Diese Passphrase ist nicht verwendbar: %1.</translation>
        </message>
        <message>
            <source>The two new passphrases differ: type the new one again, and once more below it.</source>
            <translation>Die beiden neuen Passphrasen sind verschieden: die neue noch einmal eingeben und darunter ein zweites Mal.</translation>
        </message>
        <message>
            <source>Say who it is: the name that stands beside what is signed.</source>
            <translation>Angeben, wer es ist: der Name, der neben dem Signierten steht.</translation>
        </message>
        <message>
            <source>Say why: the reason stands in the record.</source>
            <translation>Angeben, warum: Der Grund steht in der Aufzeichnung.</translation>
        </message>
        <message>
            <source>It needs the passphrase of %1: type it.</source>
            <translation>Es braucht die Passphrase von %1: eingeben.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsModel</name>
        <message>
            <source>retired, signs nothing</source>
            <translation>deaktiviert, signiert nichts</translation>
        </message>
        <message>
            <source>signs</source>
            <translation>darf signieren</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Role</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Seit</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsPage</name>
        <message>
            <source>People are set up: from now on decisions are signed. Add a second head, so that a lost passphrase can be replaced.</source>
            <translation>Personen sind eingerichtet: Ab jetzt werden Entscheidungen signiert. Eine zweite Person mit der Rolle Laborleitung hinzufügen, damit eine verlorene Passphrase ersetzt werden kann.</translation>
        </message>
        <message>
            <source>%1 is on the list.</source>
            <translation>%1 steht auf der Liste.</translation>
        </message>
        <message>
            <source>%1 is changed; what was signed keeps the name and role of its time.</source>
            <translation>%1 ist geändert; Signiertes behält Namen und Rolle von damals.</translation>
        </message>
        <message>
            <source>The new passphrase holds from now on.</source>
            <translation>Die neue Passphrase gilt ab jetzt.</translation>
        </message>
        <message>
            <source>Retired; what was signed stays.</source>
            <translation>Deaktiviert; Signiertes bleibt.</translation>
        </message>
        <message>
            <source>Reinstated, with the passphrase as it was.</source>
            <translation>Reaktiviert, mit der bisherigen Passphrase.</translation>
        </message>
        <message>
            <source>Decisions are signed by these people, each with a passphrase. Choose one to change; every change is signed.</source>
            <translation>Entscheidungen werden von diesen Personen signiert, jede mit einer Passphrase. Eine zum Ändern wählen; jede Änderung wird signiert.</translation>
        </message>
        <message>
            <source>Nobody is set up yet.

Until then a decision carries the name that was typed and is unsigned, and reports say so. From the first person on, every decision on a run, and every choice of the result that is reported, is signed with a passphrase; there is no way back to unsigned decisions.

The first person is the head, who adds the others. Passphrases are kept only as a hash: nobody can look one up, and a head replaces one that is lost.</source>
            <translation>Noch sind keine Personen eingerichtet.

Bis dahin trägt eine Entscheidung den eingegebenen Namen und ist nicht signiert, und Berichte sagen das. Ab der ersten Person wird jede Entscheidung über einen Lauf und jede Wahl des berichteten Ergebnisses mit einer Passphrase signiert; zu nicht signierten Entscheidungen führt kein Weg zurück.

Die erste Person ist die Laborleitung, die die anderen hinzufügt. Passphrasen werden nur als Hash aufbewahrt: Niemand kann eine nachschlagen, und die Laborleitung ersetzt eine verlorene.</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personen</translation>
        </message>
        <message>
            <source>A change to the list of people, not stored yet</source>
            <translation>Eine Änderung der Personenliste, noch nicht gespeichert</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsWords</name>
        <message>
            <source>Analyst</source>
            <translation>Analytiker</translation>
        </message>
        <message>
            <source>Reviewer</source>
            <translation>Bewerter</translation>
        </message>
        <message>
            <source>Head</source>
            <translation>Laborleitung</translation>
        </message>
        <message>
            <source>Signs decisions, unless the laboratory wants a reviewer's signature.</source>
            <translation>Signiert Entscheidungen, sofern das Labor nicht die Signatur eines Bewerters verlangt.</translation>
        </message>
        <message>
            <source>Signs decisions.</source>
            <translation>Signiert Entscheidungen.</translation>
        </message>
        <message>
            <source>Signs decisions and keeps this list.</source>
            <translation>Signiert Entscheidungen und führt diese Liste.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerForm</name>
        <message>
            <source>Photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>The photometer that the runs are read in. What its check records say of a reading and of the path length goes into the budgets; until then common practice does, and is said to. With all fields empty no photometer is kept.</source>
            <translation>Das Photometer, in dem die Läufe abgelesen werden. Was seine Prüfaufzeichnungen zu einer Ablesung und zur Schichtdicke sagen, geht in die Budgets ein; bis dahin gilt gängige Praxis und wird so benannt. Sind alle Felder leer, wird kein Photometer geführt.</translation>
        </message>
        <message>
            <source>Name or number</source>
            <translation>Name oder Nummer</translation>
        </message>
        <message>
            <source>u of one reading (k = 1)</source>
            <translation>u einer Ablesung (k = 1)</translation>
        </message>
        <message>
            <source>u of the path length (k = 1)</source>
            <translation>u der Schichtdicke (k = 1)</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Check record that says so</source>
            <translation>Prüfaufzeichnung, die das sagt</translation>
        </message>
        <message>
            <source>Checked on</source>
            <translation>Geprüft am</translation>
        </message>
        <message>
            <source>%1; may stay empty</source>
            <translation>%1; darf leer bleiben</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerStore</name>
        <message>
            <source>Name: %1.</source>
            <translation>Name: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteGrid</name>
        <message>
            <source>Tubes of the rack</source>
            <translation>Ansätze des Racks</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteKeys</name>
        <message>
            <source>&amp;Tick  Space</source>
            <translation>Abha&amp;ken  Leertaste</translation>
        </message>
        <message>
            <source>Ro&amp;w  +</source>
            <translation>&amp;Reihe  +</translation>
        </message>
        <message>
            <source>&amp;All tubes  *</source>
            <translation>Alle Ans&amp;ätze  *</translation>
        </message>
        <message>
            <source>&amp;Undo  −</source>
            <translation>Rück&amp;gängig  −</translation>
        </message>
        <message>
            <source>Other volum&amp;e  0–9</source>
            <translation>Anderes &amp;Volumen  0–9</translation>
        </message>
        <message>
            <source>&amp;Spoilt  /</source>
            <translation>Un&amp;brauchbar  /</translation>
        </message>
        <message>
            <source>Pipette&amp;d from paper</source>
            <translation>Nach &amp;Papier pipettiert</translation>
        </message>
        <message>
            <source>Not &amp;spoilt  /</source>
            <translation>Nicht &amp;unbrauchbar  /</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteModel</name>
        <message>
            <source>Tube %1</source>
            <translation>Ansatz %1</translation>
        </message>
        <message>
            <source>to do</source>
            <translation>zu erledigen</translation>
        </message>
        <message>
            <source>done</source>
            <translation>erledigt</translation>
        </message>
        <message>
            <source>not ticked, but read since</source>
            <translation>nicht abgehakt, aber seitdem abgelesen</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteNote</name>
        <message>
            <source>&amp;Keep it</source>
            <translation>&amp;Behalten</translation>
        </message>
        <message>
            <source>Volume in %1</source>
            <translation>Volumen in %1</translation>
        </message>
        <message>
            <source>No&amp;te</source>
            <translation>Be&amp;merkung</translation>
        </message>
        <message>
            <source>Volume that went in, in %1</source>
            <translation>Zugegebenes Volumen, in %1</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Grun&amp;d</translation>
        </message>
        <message>
            <source>&amp;Cancel  Esc</source>
            <translation>&amp;Abbrechen  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePage</name>
        <message>
            <source>%1 of tube %2 is not read yet, and after %3 it cannot be. Read it first, or press the key again to tick all the same.</source>
            <translation>%1 von Ansatz %2 ist noch nicht abgelesen, und nach %3 ist das nicht mehr möglich. Zuerst ablesen, oder die Taste erneut drücken, um trotzdem abzuhaken.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>taken back at once</source>
            <translation>sofort zurückgenommen</translation>
        </message>
        <message>
            <source>Go to the tube with the arrow keys and press / there.</source>
            <translation>Mit den Pfeiltasten zum Ansatz gehen und dort / drücken.</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>Ansatz %1: %2</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Angeben, warum der Ansatz doch zählt, dann Enter drücken.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Angeben, was mit dem Ansatz geschah, dann Enter drücken.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt: %2. Undo (−) takes that back.</source>
            <translation>Ansatz %1 ist als unbrauchbar vermerkt: %2. Rückgängig (−) nimmt das zurück.</translation>
        </message>
        <message>
            <source>Steps of the method</source>
            <translation>Schritte der Methode</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. What you did here waits for it.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken. Die Eingabe hier wartet darauf.</translation>
        </message>
        <message>
            <source>Ticked together, %1 tubes count as started at this moment, and their waits are timed from it. Tick each tube as %2 goes in, or press the key again if all of them got it at once.</source>
            <translation>Gemeinsam abgehakt, gelten %1 Ansätze als in diesem Augenblick gestartet, und ihre Wartezeiten zählen ab jetzt. Jeden Ansatz abhaken, wenn %2 hineinkommt, oder die Taste noch einmal drücken, wenn alle es zugleich erhielten.</translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is noted as opened today; it keeps %n days from now.</source>
            <translation>
                <numerusform>Charge %1 ist als heute geöffnet vermerkt; ab jetzt ist sie %n Tag haltbar.</numerusform>
                <numerusform>Charge %1 ist als heute geöffnet vermerkt; ab jetzt ist sie %n Tage haltbar.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePanel</name>
        <message>
            <source>&amp;Lot</source>
            <translation>&amp;Charge</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>Pipe&amp;tte</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSheet</name>
        <message>
            <source>Mix</source>
            <translation>Mischen</translation>
        </message>
        <message>
            <source>Read %1</source>
            <translation>%1 ablesen</translation>
        </message>
        <message>
            <source>Dilute %1: %2</source>
            <translation>%1 verdünnen: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSource</name>
        <message>
            <source>%1, good until %2</source>
            <translation>%1, verwendbar bis %2</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>nicht notiert</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteStepsModel</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSubject</name>
        <message>
            <source>Tube %1: nothing in this round</source>
            <translation>Ansatz %1: nichts in dieser Runde</translation>
        </message>
        <message>
            <source>Tube %1: spoilt</source>
            <translation>Ansatz %1: unbrauchbar</translation>
        </message>
        <message>
            <source>Tube %1: %2 %3 is in</source>
            <translation>Ansatz %1: %2 %3 zugegeben</translation>
        </message>
        <message>
            <source>Tube %1: read since</source>
            <translation>Ansatz %1: seitdem abgelesen</translation>
        </message>
        <message>
            <source>First: %1.</source>
            <translation>Zuerst: %1.</translation>
        </message>
        <message>
            <source>Swirl before use.</source>
            <translation>Vor Gebrauch umschwenken.</translation>
        </message>
        <message>
            <source>Mix afterwards.</source>
            <translation>Danach mischen.</translation>
        </message>
        <message>
            <source>Addition %1 of %2
%3</source>
            <translation>Zugabe %1 von %2
%3</translation>
        </message>
        <message>
            <source>Everything is pipetted and read</source>
            <translation>Alles ist pipettiert und abgelesen</translation>
        </message>
        <message>
            <source>Enter opens the review.</source>
            <translation>Enter öffnet die Bewertung.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>Dieses &amp;Rack bewerten</translation>
        </message>
        <message>
            <source>Pipetted from paper</source>
            <translation>Nach Papier pipettiert</translation>
        </message>
        <message>
            <source>Nothing was ticked on this worksheet. Enter goes on to the readings; to tick all the same, choose an addition among the steps.</source>
            <translation>Auf diesem Arbeitsblatt wurde nichts abgehakt. Enter geht weiter zu den Ablesungen; um trotzdem abzuhaken, unter den Schritten eine Zugabe wählen.</translation>
        </message>
        <message>
            <source>&amp;Key readings</source>
            <translation>Ablesungen &amp;eingeben</translation>
        </message>
        <message>
            <source>read %1 of every tube</source>
            <translation>%1 jedes Ansatzes ablesen</translation>
        </message>
        <message>
            <source>%1, then %2</source>
            <translation>%1, dann %2</translation>
        </message>
        <message>
            <source>Now read %1</source>
            <translation>Jetzt %1 ablesen</translation>
        </message>
        <message>
            <source>%1. Read so far: %2.</source>
            <translation>%1. Bisher abgelesen: %2.</translation>
        </message>
        <message>
            <source>&amp;Key %1</source>
            <translation>%1 &amp;eingeben</translation>
        </message>
        <message>
            <source>Tube %1: how much %2 actually went in? The worksheet says %3.</source>
            <translation>Ansatz %1: Wie viel %2 wurde tatsächlich zugegeben? Das Arbeitsblatt sagt %3.</translation>
        </message>
        <message>
            <source>Tube %1 is spoilt and will not count. What happened to it?</source>
            <translation>Ansatz %1 ist unbrauchbar und wird nicht zählen. Was ist mit ihm geschehen?</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt (%2). Why does it count after all?</source>
            <translation>Ansatz %1 ist als unbrauchbar vermerkt (%2). Warum zählt er doch?</translation>
        </message>
        <message>
            <source>Tube %1 does not count. Press / to let it count again.</source>
            <translation>Ansatz %1 zählt nicht. / drücken, damit er wieder zählt.</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is marked as spoilt again (%2).</source>
            <translation>Zurückgenommen: Ansatz %1 ist wieder als unbrauchbar vermerkt (%2).</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is not marked as spoilt any more (%2).</source>
            <translation>Zurückgenommen: Ansatz %1 ist nicht mehr als unbrauchbar vermerkt (%2).</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2; %3 counts again.</source>
            <translation>Zurückgenommen: %1 in Ansatz %2; %3 zählt wieder.</translation>
        </message>
        <message>
            <source>Ticked again: %1 in tube %2.</source>
            <translation>Wieder abgehakt: %1 in Ansatz %2.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2.</source>
            <translation>Zurückgenommen: %1 in Ansatz %2.</translation>
        </message>
        <message>
            <source>Taken back: %1 in tubes %2.</source>
            <translation>Zurückgenommen: %1 in den Ansätzen %2.</translation>
        </message>
        <message>
            <source>%1 is far from %2. Check unit and decimal mark; Enter again keeps it.</source>
            <translation>%1 liegt weit von %2. Einheit und Dezimalzeichen prüfen; Enter erneut behält den Wert.</translation>
        </message>
        <message>
            <source>First make the dilutions that head the steps.</source>
            <translation>Zuerst die Verdünnungen herstellen, die über den Schritten stehen.</translation>
        </message>
        <message>
            <source>Wait, then read %1</source>
            <translation>Warten, dann %1 ablesen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteWords</name>
        <message>
            <source>%1, not %2</source>
            <translation>%1, nicht %2</translation>
        </message>
        <message>
            <source>Tube %1: add %2 %3</source>
            <translation>Ansatz %1: %2 %3 zugeben</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: add %3 %4</source>
            <translation>Rack %1, Ansatz %2: %3 %4 zugeben</translation>
        </message>
        <message>
            <source>%1, diluted %2</source>
            <translation>%1, verdünnt %2</translation>
        </message>
        <message>
            <source>%1, where most tubes get %2</source>
            <translation>%1, wo die meisten Ansätze %2 bekommen</translation>
        </message>
        <message>
            <source>%1 in place of %2</source>
            <translation>%1 anstelle von %2</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>spoilt: %1</source>
            <translation>unbrauchbar: %1</translation>
        </message>
        <message>
            <source>noted, not %1</source>
            <translation>notiert, nicht %1</translation>
        </message>
        <message>
            <source>as planned</source>
            <translation>wie geplant</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>to read</source>
            <translation>abzulesen</translation>
        </message>
        <message>
            <source>tubes %1 of %2</source>
            <translation>Ansätze %1 von %2</translation>
        </message>
        <message>
            <source>diluted %1-fold</source>
            <translation>%1-fach verdünnt</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a sample, diluted so many times</comment>
            <translation>%1, %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PlaceWords</name>
        <message>
            <source>title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>mass</source>
            <translation>Masse</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>take</source>
            <translation>Entnahme</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>auffüllen auf</translation>
        </message>
        <message>
            <source>volume in the tube</source>
            <translation>Volumen im Ansatz</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>Konzentration</translation>
        </message>
        <message>
            <source>prepared at</source>
            <translation>hergestellt am</translation>
        </message>
        <message>
            <source>used at</source>
            <translation>verwendet am</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>Verlust pro Stunde</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>Aufstockung</translation>
        </message>
        <message>
            <source>expected</source>
            <translation>erwartet</translation>
        </message>
        <message>
            <source>received</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>standard uncertainties</source>
            <translation>Standardunsicherheiten</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>each dilution step</source>
            <translation>jeder Verdünnungsschritt</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>Standardunsicherheit</translation>
        </message>
        <message>
            <source>extract of a solid</source>
            <translation>Extrakt eines Feststoffs</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>Probe %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>tube %1 (%2)</source>
            <translation>Ansatz %1 (%2)</translation>
        </message>
        <message>
            <source>dilution step %1</source>
            <translation>Verdünnungsschritt %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>Kontrollprobe %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PlanForm</name>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Run a stan&amp;dard</source>
            <translation>Stan&amp;dard mitführen</translation>
        </message>
        <message>
            <source>Run a control of ke&amp;yed value</source>
            <translation>Kontrollprobe mit ein&amp;gegebenem Wert mitführen</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Flüssig</translation>
        </message>
        <message>
            <source>Solid, weighed and extracted</source>
            <translation>Fest, eingewogen und extrahiert</translation>
        </message>
        <message>
            <source>By absorptivity</source>
            <translation>Über den Extinktionskoeffizienten</translation>
        </message>
        <message>
            <source>By the run's standard</source>
            <translation>Über den Standard des Laufs</translation>
        </message>
        <message>
            <source>By a line through its standards</source>
            <translation>Über eine Gerade durch seine Standards</translation>
        </message>
        <message>
            <source>Plan a run</source>
            <translation>Lauf planen</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>M&amp;ethode</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <translation>&amp;Titel</translation>
        </message>
        <message>
            <source>&amp;Samples, one per line</source>
            <translation>Proben, eine &amp;je Zeile</translation>
        </message>
        <message>
            <source>Tubes for &amp;each sample</source>
            <translation>Ansät&amp;ze je Probe</translation>
        </message>
        <message>
            <source>Samples &amp;are</source>
            <translation>Pr&amp;oben sind</translation>
        </message>
        <message>
            <source>&amp;Wavelength</source>
            <translation>Welle&amp;nlänge</translation>
        </message>
        <message>
            <source>Path &amp;length</source>
            <translation>Schi&amp;chtdicke</translation>
        </message>
        <message>
            <source>&amp;Calibration</source>
            <translation>&amp;Kalibrierung</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Blank tubes</source>
            <translation>Blindwerte</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PlanPage</name>
        <message>
            <source>Method and cautions</source>
            <translation>Methode und Warnhinweise</translation>
        </message>
        <message>
            <source>What the plan gives</source>
            <translation>Was der Plan ergibt</translation>
        </message>
        <message>
            <source>Rack</source>
            <translation>Rack</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>Reagents</source>
            <translation>Reagenzien</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>Warteliste</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>In A&amp;rbeit nehmen</translation>
        </message>
        <message>
            <source>Drag a tube, or move it with Ctrl and an arrow key.</source>
            <translation>Einen Ansatz ziehen oder mit Strg und einer Pfeiltaste verschieben.</translation>
        </message>
        <message>
            <source>The lot to use up first is chosen; choose another in its cell. Lots are kept under Books, Lots.</source>
            <translation>Die zuerst aufzubrauchende Charge ist gewählt; in ihrer Zelle lässt sich eine andere wählen. Chargen werden unter Bücher, Chargen geführt.</translation>
        </message>
        <message>
            <source>Samples that wait</source>
            <translation>Wartende Proben</translation>
        </message>
        <message>
            <source>Take the ticked ones</source>
            <translation>Angehakte übernehmen</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Books, Samples; repeats that decided runs advise come by themselves.</source>
            <translation>Keine Probe wartet. Proben werden unter Bücher, Proben angemeldet; Wiederholungen, die entschiedene Läufe empfehlen, kommen von selbst.</translation>
        </message>
        <message>
            <source>Tick with the space bar what goes into this run.</source>
            <translation>Mit der Leertaste anhaken, was in diesen Lauf kommt.</translation>
        </message>
        <message>
            <source>No method is installed, so no run can be put together here.</source>
            <translation>Keine Methode ist installiert, hier lässt sich also kein Lauf zusammenstellen.</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>das Standardbuch, hergestellt %1</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Geräte</translation>
        </message>
        <message>
            <source>At its first reading it is worth about %1, of %2 when made.</source>
            <translation>Bei seiner ersten Ablesung beträgt er etwa %1, von %2 bei Herstellung.</translation>
        </message>
        <message>
            <source>That is too old (%1): make a fresh one below.</source>
            <translation>Das ist zu alt (%1): unten einen frischen herstellen.</translation>
        </message>
        <message>
            <source>Tubes: %1</source>
            <translation>Ansätze: %1</translation>
        </message>
        <message>
            <source>%1. Still to be put right:</source>
            <translation>%1. Noch zu berichtigen:</translation>
        </message>
        <message>
            <source>%1. One person cannot read them all in time: see Time.</source>
            <translation>%1. Eine Person kann nicht alle rechtzeitig ablesen: siehe Zeit.</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way, but look at this:</source>
            <translation>%1. Nichts steht im Weg, aber das ansehen:</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way.</source>
            <translation>%1. Nichts steht im Weg.</translation>
        </message>
        <message>
            <source>First tick the samples to take with the space bar.</source>
            <translation>Zuerst die zu übernehmenden Proben mit der Leertaste anhaken.</translation>
        </message>
        <message>
            <source>The run is not on the bench yet: first put right what the list names.</source>
            <translation>Der Lauf ist noch nicht in Arbeit: zuerst berichtigen, was die Liste nennt.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken.</translation>
        </message>
        <message>
            <source>Explain this warning</source>
            <translation>Diese Warnung erklären</translation>
        </message>
        <message>
            <source>What the warning means, and what to do about it; F1 does the same</source>
            <translation>Wovor gewarnt wird und was zu tun ist; F1 tut dasselbe</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointChart</name>
        <message>
            <source>There is no history yet.</source>
            <translation>Es gibt noch keinen Verlauf.</translation>
        </message>
        <message>
            <source>limits %1 to %2</source>
            <translation>Grenzen %1 bis %2</translation>
        </message>
        <message>
            <source>lower limit %1</source>
            <translation>untere Grenze %1</translation>
        </message>
        <message>
            <source>upper limit %1</source>
            <translation>obere Grenze %1</translation>
        </message>
        <message>
            <source>no limits</source>
            <translation>keine Grenzen</translation>
        </message>
        <message>
            <source>below the limit</source>
            <translation>unter der Grenze</translation>
        </message>
        <message>
            <source>above the limit</source>
            <translation>über der Grenze</translation>
        </message>
        <message>
            <source>within the limits</source>
            <translation>innerhalb der Grenzen</translation>
        </message>
        <message>
            <source>%1 on %2</source>
            <translation>%1 am %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Newest %1; %2.</source>
            <translation>Neuester Wert %1; %2.</translation>
        </message>
        <message>
            <source>Outside: %1 of %2.</source>
            <translation>Außerhalb: %1 von %2.</translation>
        </message>
        <message>
            <source>The newest %1 of %2:</source>
            <translation>Die neuesten %1 von %2:</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointPanel</name>
        <message>
            <source>Open the r&amp;un</source>
            <translation>Lauf ö&amp;ffnen</translation>
        </message>
        <message>
            <source>&amp;Leave it out</source>
            <translation>Ausn&amp;ehmen</translation>
        </message>
        <message>
            <source>Reason for leaving the point out or taking it back</source>
            <translation>Grund, den Punkt auszunehmen oder wieder aufzunehmen</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Choose a point with the arrow keys or a click; Enter or a second click opens its run.</source>
            <translation>Mit den Pfeiltasten oder einem Klick einen Punkt wählen; Enter oder ein zweiter Klick öffnet seinen Lauf.</translation>
        </message>
        <message>
            <source>&amp;Let it count again</source>
            <translation>&amp;Wieder aufnehmen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationForm</name>
        <message>
            <source>Prepare a standard</source>
            <translation>Standard herstellen</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Was sich ergibt</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Ins Bu&amp;ch eintragen</translation>
        </message>
        <message>
            <source>S&amp;ubstance</source>
            <translation>Substan&amp;z</translation>
        </message>
        <message>
            <source>&amp;Add a substance…</source>
            <translation>Subs&amp;tanz hinzufügen…</translation>
        </message>
        <message>
            <source>&amp;Change it…</source>
            <translation>Substanz ä&amp;ndern…</translation>
        </message>
        <message>
            <source>Fo&amp;r</source>
            <translation>&amp;Für</translation>
        </message>
        <message>
            <source>Analyte &amp;molecules in one of the substance</source>
            <translation>Analyt&amp;moleküle je Molekül der Substanz</translation>
        </message>
        <message>
            <source>F&amp;lask</source>
            <translation>Mess&amp;kolben</translation>
        </message>
        <message>
            <source>W&amp;eighed (mg)</source>
            <translation>&amp;Eingewogen (mg)</translation>
        </message>
        <message>
            <source>several portions as 50.3; 49.8</source>
            <translation>mehrere Portionen wie 50,3; 49,8</translation>
        </message>
        <message>
            <source>Name on the flas&amp;k</source>
            <translation>Name auf dem Messkol&amp;ben</translation>
        </message>
        <message>
            <source>Ma&amp;de at</source>
            <translation>Her&amp;gestellt am</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% pro Stunde</translation>
        </message>
        <message>
            <source>Empty where there is no rule beside the loss.</source>
            <translation>Leer, wo es außer dem Verlust keine Vorgabe gibt.</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>Bemerkung (&amp;darf leer sein)</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, Charge %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>another flask</source>
            <translation>ein anderer Messkolben</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>gängige Praxis, ohne Quelle</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>is missing or not a time: %1</source>
            <translation>fehlt oder ist keine Zeit: %1</translation>
        </message>
        <message>
            <source>Add the substance first: its purity and its molar mass make the strength.</source>
            <translation>Zuerst die Substanz hinzufügen: Ihre Reinheit und molare Masse ergeben den Gehalt.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>%1 einwiegen und auf %2 auffüllen.</translation>
        </message>
        <message>
            <source>That is about %1 of the liquid.</source>
            <translation>Das sind etwa %1 der Flüssigkeit.</translation>
        </message>
        <message>
            <source>Made: %1 (k = 2).</source>
            <translation>Hergestellt: %1 (k = 2).</translation>
        </message>
        <message>
            <source>Largest contribution to its uncertainty: %1, %2 of the variance.</source>
            <translation>Größter Beitrag zu seiner Unsicherheit: %1, %2 der Varianz.</translation>
        </message>
        <message>
            <source>Good until %1.</source>
            <translation>Verwendbar bis %1.</translation>
        </message>
        <message>
            <source>A weighing: %1. u is a standard uncertainty (k = 1).</source>
            <translation>Eine Wägung: %1. u ist eine Standardunsicherheit (k = 1).</translation>
        </message>
        <message>
            <source>The last good day of %1, %2, is past.</source>
            <translation>Der letzte Verwendungstag von %1, %2, ist vorbei.</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Tragen, was die örtlichen Sicherheitsvorschriften und das Datenblatt des Lieferanten verlangen; sie haben Vorrang.</translation>
        </message>
        <message>
            <source>Add the substance first: it says purity and molar mass.</source>
            <translation>Zuerst die Substanz hinzufügen: Sie gibt Reinheit und molare Masse an.</translation>
        </message>
        <message>
            <source>Strength &amp;wanted</source>
            <translation>Ge&amp;wünschter Gehalt</translation>
        </message>
        <message>
            <source>&amp;Its volume</source>
            <translation>Sein &amp;Volumen</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u von Messkolben und Auffüllen</translation>
        </message>
        <message>
            <source>u of one weighing</source>
            <translation>u einer Wägung</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Gehaltsverlust</translation>
        </message>
        <message>
            <source>Keeps by &amp;your own rule</source>
            <translation>Haltba&amp;r nach eigener Vorgabe</translation>
        </message>
        <message>
            <source>One molecule of %1 is %2 times as heavy as one of the analyte: make sure that it holds just one of it.</source>
            <translation>Ein Molekül %1 ist %2-mal so schwer wie eines des Analyten: prüfen, ob es wirklich nur eines davon enthält.</translation>
        </message>
        <message>
            <source>That is %1 of the strength wanted: look at the mass, the flask and the number of molecules.</source>
            <translation>Das sind %1 des gewünschten Gehalts: Masse, Messkolben und Zahl der Moleküle prüfen.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationView</name>
        <message>
            <source>Strength when made (k = 2)</source>
            <translation>Gehalt bei Herstellung (k = 2)</translation>
        </message>
        <message>
            <source>Share of the variance: %1</source>
            <translation>Varianzanteil: %1</translation>
        </message>
        <message>
            <source>Weighed (u of each)</source>
            <translation>Eingewogen (u je Wägung)</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Flask (u)</source>
            <translation>Messkolben (u)</translation>
        </message>
        <message>
            <source>Made at, by</source>
            <translation>Hergestellt, von</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Gehaltsverlust</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% pro Stunde</translation>
        </message>
        <message>
            <source>none is stated</source>
            <translation>keine Angabe</translation>
        </message>
        <message>
            <source>Good until</source>
            <translation>Verwendbar bis</translation>
        </message>
        <message>
            <source>Substance</source>
            <translation>Substanz</translation>
        </message>
        <message>
            <source>Supplier, lot</source>
            <translation>Lieferant, Charge</translation>
        </message>
        <message>
            <source>Certificate</source>
            <translation>Zertifikat</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Reinheit</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Molare Masse</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Thrown away, because</source>
            <translation>Entsorgt, weil</translation>
        </message>
        <message>
            <source>How it was made</source>
            <translation>Wie er hergestellt wurde</translation>
        </message>
        <message>
            <source>Runs that used it</source>
            <translation>Läufe, die ihn verwendet haben</translation>
        </message>
        <message>
            <source>No run has used it yet. New run offers it while it can be used.</source>
            <translation>Noch hat ihn kein Lauf verwendet. Neuer Lauf bietet ihn an, solange er verwendbar ist.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>How</source>
            <translation>Wie</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Age at use</source>
            <translation>Alter</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Wiederfindung</translation>
        </message>
        <message>
            <source>&amp;Throw it away</source>
            <translation>En&amp;tsorgen</translation>
        </message>
        <message>
            <source>&amp;Label as PDF…</source>
            <translation>Etikett als P&amp;DF…</translation>
        </message>
        <message>
            <source>Ba&amp;ck to the list</source>
            <translation>Zur&amp;ück zur Liste</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 aus %2</translation>
        </message>
        <message>
            <source>Now %1; %2.</source>
            <translation>Jetzt %1; %2.</translation>
        </message>
        <message>
            <source>Say why; the book keeps it.</source>
            <translation>Angeben, warum; das Buch bewahrt es auf.</translation>
        </message>
        <message>
            <source>Thrown away: it is not offered any more; the runs that used it keep it.</source>
            <translation>Entsorgt: Er wird nicht mehr angeboten; die Läufe, die ihn verwendet haben, behalten ihn.</translation>
        </message>
        <message>
            <source>Recovery over its life, for all of this substance</source>
            <translation>Wiederfindung über die Lebensdauer, von allem aus dieser Substanz</translation>
        </message>
        <message>
            <source>Analyte molecules in one of the substance</source>
            <translation>Analytmoleküle je Substanzmolekül</translation>
        </message>
        <message>
            <source>Thrown away, b&amp;ecause</source>
            <translation>&amp;Entsorgt, weil</translation>
        </message>
        <message>
            <source>Keeps by your own rule</source>
            <translation>Haltbar nach eigener Vorgabe</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Printing</name>
        <message>
            <source>There is nothing to label: the run has no standard, and no sample of it is diluted or extracted.</source>
            <translation>Es gibt nichts zu etikettieren: Der Lauf hat keinen Standard, und keine seiner Proben wird verdünnt oder extrahiert.</translation>
        </message>
        <message>
            <source>labels.pdf</source>
            <translation>etiketten.pdf</translation>
        </message>
        <message>
            <source>%1 The sheet is not kept for the next time: %2 can't be written.</source>
            <translation>%1 Der Bogen wird nicht für das nächste Mal gespeichert: %2 kann nicht geschrieben werden.</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Als PDF speichern</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>PDF-Dateien (*.pdf)</translation>
        </message>
        <message>
            <source>%1 was written; open it to look at it or to print it.</source>
            <translation>%1 wurde geschrieben; zum Ansehen oder Drucken öffnen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ProblemList</name>
        <message>
            <source>Problems</source>
            <translation>Probleme</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackForm</name>
        <message>
            <source>Rack and times</source>
            <translation>Rack und Zeiten</translation>
        </message>
        <message>
            <source>Plans go by these: how many tubes a rack holds, how long one person's hands need, and how much reagent is set out.</source>
            <translation>Pläne richten sich danach: wie viele Ansätze ein Rack fasst, wie lange die Hände einer Person brauchen und wie viel Reagenz bereitgestellt wird.</translation>
        </message>
        <message>
            <source>&amp;Rows of a rack</source>
            <translation>&amp;Reihen eines Racks</translation>
        </message>
        <message>
            <source>&amp;Columns of a rack</source>
            <translation>&amp;Spalten eines Racks</translation>
        </message>
        <message>
            <source>Time for an add&amp;ition, each tube</source>
            <translation>Zeit für eine &amp;Zugabe, je Ansatz</translation>
        </message>
        <message>
            <source>Time to &amp;mix, each tube</source>
            <translation>Zeit zum &amp;Mischen, je Ansatz</translation>
        </message>
        <message>
            <source>Time for a r&amp;eading, each tube</source>
            <translation>Zeit für eine &amp;Ablesung, je Ansatz</translation>
        </message>
        <message>
            <source>Reagent be&amp;yond the need</source>
            <translation>Reagenz über den &amp;Bedarf hinaus</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackGrid</name>
        <message>
            <source>Rack from above</source>
            <translation>Rack von oben</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackModel</name>
        <message>
            <source>blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>%1 blank</source>
            <translation>%1 Blindwert</translation>
        </message>
        <message>
            <source>%1 spiked</source>
            <translation>%1 aufgestockt</translation>
        </message>
        <message>
            <source>empty place</source>
            <translation>leerer Platz</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Ansatz %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPage</name>
        <message>
            <source>&amp;1  Pipette</source>
            <translation>&amp;1  Pipettieren</translation>
        </message>
        <message>
            <source>&amp;2  Read</source>
            <translation>&amp;2  Ablesen</translation>
        </message>
        <message>
            <source>&amp;3  Review</source>
            <translation>&amp;3  Bewerten</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Rack %1</translation>
        </message>
        <message>
            <source>%1, version %2, tubes: %3</source>
            <translation>%1, Version %2, Ansätze: %3</translation>
        </message>
        <message>
            <source>Typed and not stored, so not in the results: %1. Go to it under %2 and store it, or leave it with Esc.</source>
            <translation>Eingegeben und nicht gespeichert, also nicht in den Ergebnissen: %1. Unter %2 hingehen und speichern oder mit Esc lassen.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipettieren</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>This rack %1: %2</source>
            <translation>Dieses Rack %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPicture</name>
        <message>
            <source>%1 early by %2</source>
            <translation>%1 um %2 zu früh</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 um %2 zu spät</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackTimes</name>
        <message>
            <source>Tubes against time</source>
            <translation>Ansätze über der Zeit</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. %1</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken. %1</translation>
        </message>
        <message>
            <source>The reading waits for it, and is then stored unless there is something against it.</source>
            <translation>Die Ablesung wartet darauf und wird dann gespeichert, sofern nichts dagegen spricht.</translation>
        </message>
        <message>
            <source>%1 Press Enter again to store it as read.</source>
            <translation>%1 Erneut Enter drücken, um wie abgelesen zu speichern.</translation>
        </message>
        <message>
            <source>The tube waits for it.</source>
            <translation>Der Ansatz wartet darauf.</translation>
        </message>
        <message>
            <source>Tube %1 counts again.</source>
            <translation>Ansatz %1 zählt wieder.</translation>
        </message>
        <message>
            <source>Tube %1 does not count: %2. To take that back, go to it in the table and press /.</source>
            <translation>Ansatz %1 zählt nicht: %2. Zum Zurücknehmen in der Tabelle dorthin gehen und / drücken.</translation>
        </message>
        <message>
            <source>The repeat waits for it.</source>
            <translation>Die Wiederholung wartet darauf.</translation>
        </message>
        <message>
            <source>%1 is in the rack now, from tube %2 on: pipette it as the strip says.</source>
            <translation>%1 steht jetzt im Rack, ab Ansatz %2: pipettieren, wie die Leiste sagt.</translation>
        </message>
        <message>
            <source>%1 came from the photometer and waits until what stands here is stored or left with Esc (waiting in all: %2).</source>
            <translation>%1 kam vom Photometer und wartet, bis das hier Stehende gespeichert oder mit Esc gelassen ist (wartend insgesamt: %2).</translation>
        </message>
        <message>
            <source>No tube waits for the readings that came in (%1 in all, the first of them %2); none of them was stored. Go to the tube in the table first.</source>
            <translation>Kein Ansatz wartet auf die eingegangenen Ablesungen (insgesamt %1, die erste davon %2); nichts davon wurde gespeichert. Zuerst in der Tabelle zum Ansatz gehen.</translation>
        </message>
        <message>
            <source>%1 came for tube “%2”, which is not in this rack; it was not stored.</source>
            <translation>%1 kam für Ansatz „%2“, der nicht in diesem Rack ist; nicht gespeichert.</translation>
        </message>
        <message>
            <source>Absorbance against time</source>
            <translation>Extinktion über der Zeit</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>Results so far</source>
            <translation>Ergebnisse bisher</translation>
        </message>
        <message>
            <source>Checks so far</source>
            <translation>Prüfungen bisher</translation>
        </message>
        <message>
            <source>%1 to %2 after what came before</source>
            <translation>%1 bis %2 nach dem Vorhergehenden</translation>
        </message>
        <message>
            <source>Read it at once: %1 (%2)</source>
            <translation>Sofort ablesen: %1 (%2)</translation>
        </message>
        <message>
            <source>Read it %1 (%2)</source>
            <translation>Ablesen %1 (%2)</translation>
        </message>
        <message>
            <source>Read it again %1 (every %2)</source>
            <translation>Erneut ablesen %1 (alle %2)</translation>
        </message>
        <message>
            <source>Next is to pipette</source>
            <translation>Als Nächstes ist zu pipettieren</translation>
        </message>
        <message>
            <source>%1. Enter leads there.</source>
            <translation>%1. Enter führt dorthin.</translation>
        </message>
        <message>
            <source>Pipett&amp;e</source>
            <translation>&amp;Pipettieren</translation>
        </message>
        <message>
            <source>All readings are in</source>
            <translation>Alle Ablesungen sind da</translation>
        </message>
        <message>
            <source>Enter opens the review. To correct a reading, go to it in the table with the arrow keys and press Enter there.</source>
            <translation>Enter öffnet die Bewertung. Um eine Ablesung zu korrigieren, in der Tabelle mit den Pfeiltasten hingehen und dort Enter drücken.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>Dieses &amp;Rack bewerten</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Ansatz %1: %2</translation>
        </message>
        <message>
            <source>Stored: %1 (%2, %3)</source>
            <translation>Gespeichert: %1 (%2, %3)</translation>
        </message>
        <message>
            <source>tube %1, %2: %3</source>
            <translation>Ansatz %1, %2: %3</translation>
        </message>
        <message>
            <source>With %1 for tube %2, %3, which is not stored yet:</source>
            <translation>Mit %1 für Ansatz %2, %3, noch nicht gespeichert:</translation>
        </message>
        <message>
            <source>From what is stored:</source>
            <translation>Aus gespeicherten Ablesungen:</translation>
        </message>
        <message>
            <source>Tube %1: it is too early for %2. The method waits %3, of which %4 are left: read it after that.</source>
            <translation>Ansatz %1: Für %2 ist es zu früh. Die Methode wartet %3, und davon bleiben %4: danach ablesen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadingsModel</name>
        <message>
            <source>Tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>Net, %1</source>
            <translation>Netto, %1</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Nettosignal</translation>
        </message>
        <message>
            <source>%1 (%2×)</source>
            <translation>%1 (%2×)</translation>
        </message>
        <message>
            <source>%1 (was %2)</source>
            <translation>%1 (war %2)</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, spoilt: %2</source>
            <translation>%1, unbrauchbar: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Concentration (%1)</source>
            <translation>Konzentration (%1)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReagentsModel</name>
        <message>
            <source>empty</source>
            <translation>leer</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>abgelaufen am %1</translation>
        </message>
        <message>
            <source>expires before the run ends</source>
            <translation>läuft vor dem Ende des Laufs ab</translation>
        </message>
        <message numerus="yes">
            <source>opened on %1, keeps %n day(s)</source>
            <translation>
                <numerusform>geöffnet am %1, haltbar %n Tag</numerusform>
                <numerusform>geöffnet am %1, haltbar %n Tage</numerusform>
            </translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>keine notiert</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>no lot noted</source>
            <translation>keine Charge notiert</translation>
        </message>
        <message>
            <source>no lot in the book</source>
            <translation>keine Charge im Buch</translation>
        </message>
        <message>
            <source>no fit lot: %1 %2</source>
            <translation>keine geeignete Charge: %1 %2</translation>
        </message>
        <message>
            <source>no fit lot</source>
            <translation>keine geeignete Charge</translation>
        </message>
        <message>
            <source>enough: %1 tubes</source>
            <translation>für %1 Ansätze</translation>
        </message>
        <message>
            <source>short by %1: in hand %2, for tubes: %3</source>
            <translation>es fehlen %1: vorhanden %2, für Ansätze: %3</translation>
        </message>
        <message>
            <source>then from lot %1</source>
            <translation>dann aus Charge %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Reagenz</translation>
        </message>
        <message>
            <source>Needed</source>
            <translation>Benötigt</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>; good until %1</source>
            <translation>; verwendbar bis %1</translation>
        </message>
        <message>
            <source>%1 more in lot %2</source>
            <translation>weitere %1 in %2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>; opened on %1, good until %2</source>
            <translation>; geöffnet am %1, verwendbar bis %2</translation>
        </message>
        <message>
            <source>; opened on %1</source>
            <translation>; geöffnet am %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReceiveView</name>
        <message>
            <source>Receive a container</source>
            <translation>Gebinde einbuchen</translation>
        </message>
        <message>
            <source>Each bottle has a line of its own in the book; water and buffers count too. Name the reagent as the methods do, so that plans find it.</source>
            <translation>Jede Flasche hat im Buch eine eigene Zeile; auch Wasser und Puffer zählen. Das Reagenz so nennen wie die Methoden, damit Pläne es finden.</translation>
        </message>
        <message>
            <source>Vol&amp;ume in it (mL)</source>
            <translation>&amp;Volumen im Gebinde (mL)</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Ins Buch &amp;eintragen</translation>
        </message>
        <message>
            <source>Say how much is in it, in mL.</source>
            <translation>Angeben, wie viel darin ist, in mL.</translation>
        </message>
        <message>
            <source>It is dr&amp;y and will be dissolved</source>
            <translation>Es ist troc&amp;ken und wird gelöst</translation>
        </message>
        <message>
            <source>&amp;Mass in it (mg, may be empty)</source>
            <translation>&amp;Masse darin (mg, darf leer sein)</translation>
        </message>
        <message>
            <source>Kept at (may be empty)</source>
            <translation>Aufbewahrt in (darf leer sein)</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecipeSection</name>
        <message>
            <source>Components</source>
            <translation>Komponenten</translation>
        </message>
        <message>
            <source>Steps, in their order</source>
            <translation>Schritte, in ihrer Reihenfolge</translation>
        </message>
        <message>
            <source>In the table the letters A, M, W and R put a step below the cursor; a step can be dragged too.</source>
            <translation>In der Tabelle setzen die Buchstaben Z, M, W und A einen Schritt unter den Cursor; ein Schritt lässt sich auch ziehen.</translation>
        </message>
        <message>
            <source>Lay out the &amp;usual order</source>
            <translation>Ü&amp;bliche Reihenfolge anlegen</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>&amp;Add</source>
            <translation>&amp;Zugeben</translation>
        </message>
        <message>
            <source>&amp;Mix</source>
            <translation>&amp;Mischen</translation>
        </message>
        <message>
            <source>&amp;Wait</source>
            <translation>&amp;Warten</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>&amp;Ablesen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordView</name>
        <message>
            <source>To its rac&amp;k</source>
            <translation>Zum &amp;Rack</translation>
        </message>
        <message>
            <source>Reported resu&amp;lts</source>
            <translation>&amp;Berichtete Ergebnisse</translation>
        </message>
        <message>
            <source>Tren&amp;d</source>
            <translation>Tren&amp;d</translation>
        </message>
        <message>
            <source>What was found of this measurand in the product, or in the sample, over all runs, with its limits</source>
            <translation>Was von dieser Messgröße im Produkt oder in der Probe über alle Läufe gefunden wurde, mit den Grenzwerten</translation>
        </message>
        <message>
            <source>Revi&amp;sion</source>
            <translation>Re&amp;vision</translation>
        </message>
        <message>
            <source>B&amp;y</source>
            <translation>V&amp;on</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>Passph&amp;rase</translation>
        </message>
        <message>
            <source>Put bac&amp;k on the bench</source>
            <translation>&amp;Wieder in Arbeit nehmen</translation>
        </message>
        <message>
            <source>%1, version %2, begun %3, %4, revision %5</source>
            <translation>%1, Version %2, begonnen %3, %4, Revision %5</translation>
        </message>
        <message>
            <source>Locked. R&amp;eason to put it back on the bench, where revision %1 begins</source>
            <translation>Gesperrt. Grund, den Lauf wieder in Arbeit &amp;zu nehmen; damit beginnt Revision %1</translation>
        </message>
        <message>
            <source>%1: on the bench now</source>
            <translation>%1: jetzt in Arbeit</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; the run is on the bench again, and no revision stands.</source>
            <translation>Das ist Revision %1, wie entschieden wurde; der Lauf ist wieder in Arbeit, und keine Revision gilt.</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; revision %2 stands.</source>
            <translation>Das ist Revision %1, wie entschieden wurde; es gilt Revision %2.</translation>
        </message>
        <message>
            <source>Choose a result in the table first; its trend is shown.</source>
            <translation>Zuerst ein Ergebnis in der Tabelle wählen; gezeigt wird sein Trend.</translation>
        </message>
        <message>
            <source>This program calculates other numbers from the stored readings than version %1 did when the run was decided on. The new ones are shown.</source>
            <translation>Dieses Programm berechnet aus den gespeicherten Ablesungen andere Zahlen als Version %1, als über den Lauf entschieden wurde. Gezeigt sind die neuen.</translation>
        </message>
        <message>
            <source>Say who puts it back: type a name.</source>
            <translation>Angeben, wer ihn wieder in Arbeit nimmt: einen Namen eingeben.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Zurück zur Liste  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordsPage</name>
        <message>
            <source>Records</source>
            <translation>Aufzeichnungen</translation>
        </message>
        <message>
            <source>Parts of the records</source>
            <translation>Teile der Aufzeichnungen</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Wer was tat</translation>
        </message>
        <message>
            <source>Intact, and kept</source>
            <translation>Unversehrt und aufbewahrt</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecoveriesModel</name>
        <message>
            <source>Standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>Spike on %1</source>
            <translation>Aufstockung auf %1</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Recovery (%)</source>
            <translation>Wiederfindung (%)</translation>
        </message>
        <message>
            <source>Control %1</source>
            <translation>Kontrollprobe %1</translation>
        </message>
        <message>
            <source>Standard, control or spike</source>
            <translation>Standard, Kontrollprobe oder Aufstockung</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Erwartet (%1)</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Erwartet</translation>
        </message>
        <message>
            <source>Found (%1)</source>
            <translation>Gefunden (%1)</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecoveryHistory</name>
        <message>
            <source>Recovery (%)</source>
            <translation>Wiederfindung (%)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RegisterView</name>
        <message>
            <source>Samples to register</source>
            <translation>Anzumeldende Proben</translation>
        </message>
        <message>
            <source>Problems</source>
            <translation>Probleme</translation>
        </message>
        <message>
            <source>Expected, in g/L; for a solid g/100 g</source>
            <translation>Erwartet, in g/L; bei Feststoffen g/100 g</translation>
        </message>
        <message>
            <source>Pas&amp;te from the clipboard</source>
            <translation>Aus der Zwischenablage &amp;einfügen</translation>
        </message>
        <message>
            <source>Register samples</source>
            <translation>Proben anmelden</translation>
        </message>
        <message>
            <source>Key a line for each sample, or copy one or more columns from a spreadsheet and paste them here (Ctrl+V). The first line may name the columns, a measurand too; otherwise they are, in this order: %1.</source>
            <translation>Für jede Probe eine Zeile eingeben oder eine oder mehrere Spalten aus einer Tabellenkalkulation kopieren und hier einfügen (Strg+V). Die erste Zeile darf die Spalten benennen, auch eine Messgröße; sonst gilt diese Reihenfolge: %1.</translation>
        </message>
        <message>
            <source>What was stated before stays in the notebook's history.</source>
            <translation>Frühere Angaben bleiben im Verlauf des Laborjournals.</translation>
        </message>
        <message>
            <source>&amp;Store the change</source>
            <translation>Änderung &amp;speichern</translation>
        </message>
        <message>
            <source>Line %1, %2: %3</source>
            <translation>Zeile %1, %2: %3</translation>
        </message>
        <message>
            <source>Line %1: a repeat of %2 waits already; it takes over what is stated here.</source>
            <translation>Zeile %1: Eine Wiederholung von %2 wartet bereits; sie übernimmt die Angaben hier.</translation>
        </message>
        <message>
            <source>No sample yet.</source>
            <translation>Noch keine Probe.</translation>
        </message>
        <message>
            <source>Samples: %1. Nothing stands in the way.</source>
            <translation>Proben: %1. Nichts steht im Weg.</translation>
        </message>
        <message>
            <source>Samples: %1. Still to be put right (%2), Enter goes there:</source>
            <translation>Proben: %1. Noch zu berichtigen (%2), Enter führt dorthin:</translation>
        </message>
        <message>
            <source>There is no sample to store: key or paste one first.</source>
            <translation>Es gibt keine Probe zu speichern: zuerst eine eingeben oder einfügen.</translation>
        </message>
        <message>
            <source>Nothing is stored yet: first put right what the list names.</source>
            <translation>Noch ist nichts gespeichert: zuerst berichtigen, was die Liste nennt.</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Zur&amp;ück zur Liste</translation>
        </message>
        <message>
            <source>Regi&amp;ster them</source>
            <translation>An&amp;melden</translation>
        </message>
        <message>
            <source>Change a sample that waits</source>
            <translation>Eine wartende Probe ändern</translation>
        </message>
        <message>
            <source>%1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>%1 ist schon unter den wartenden Proben; dort ändern, oder dieser eine andere Kennung geben.</translation>
        </message>
        <message>
            <source>There are samples that are not stored. Press it once more to drop them, or register them first.</source>
            <translation>Es gibt Proben, die nicht gespeichert sind. Noch einmal drücken, um sie zu verwerfen, oder sie zuerst anmelden.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RepeatHow</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 auf %2</translation>
        </message>
        <message>
            <source>type a dilution as 20, its steps as 5 to 100, or the sample volume as 0.5 mL</source>
            <translation>eine Verdünnung wie 20 eingeben, ihre Schritte wie 5 auf 100 oder das Probenvolumen wie 0,5 mL</translation>
        </message>
        <message>
            <source>a dilution is by more than 1; for more sample type its volume, as 0.5 mL</source>
            <translation>eine Verdünnung ist größer als 1; für mehr Probe ihr Volumen eingeben, etwa 0,5 mL</translation>
        </message>
        <message>
            <source>usual pipettes and flasks make no dilution of %1; type its steps, as 5 to 100</source>
            <translation>übliche Pipetten und Messkolben ergeben keine Verdünnung von %1; die Schritte eingeben, etwa 5 auf 100</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, dann </translation>
        </message>
        <message>
            <source>a step goes from less to more, as 5 to 100</source>
            <translation>ein Schritt geht von weniger zu mehr, etwa 5 auf 100</translation>
        </message>
        <message>
            <source>no tube takes that volume of sample; type it in mL, as 0.5 mL</source>
            <translation>kein Ansatz fasst dieses Probenvolumen; in mL eingeben, etwa 0,5 mL</translation>
        </message>
        <message>
            <source>fold|times</source>
            <comment>words that may be typed behind a factor of dilution, parted by |</comment>
            <translation>fach|mal</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RepeatOffer</name>
        <message>
            <source>%1 mL to %2 mL</source>
            <translation>%1 mL auf %2 mL</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>unverdünnt</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, dann </translation>
        </message>
        <message>
            <source>%1, %2 mL in the tube</source>
            <translation>%1, %2 mL im Ansatz</translation>
        </message>
        <message>
            <source>A&amp;dd it to this rack</source>
            <translation>Zu diesem Rack &amp;hinzufügen</translation>
        </message>
        <message>
            <source>%1 has to be repeated: %2. The rack still stands here; tubes to add: %3.</source>
            <translation>%1 muss wiederholt werden: %2. Das Rack steht noch hier; hinzuzufügende Ansätze: %3.</translation>
        </message>
        <message>
            <source>%1 The rack has %2 places, so they need another stand.</source>
            <translation>%1 Das Rack hat %2 Plätze, es braucht also einen weiteren Ständer.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Report</name>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>%1 times %2 (method %3)</source>
            <translation>%1 mal %2 (Methode %3)</translation>
        </message>
        <message>
            <source>%1 is calculated: the sum of %2. Its uncertainty takes account of what the parts have in common.</source>
            <translation>%1 ist berechnet: die Summe aus %2. Die Unsicherheit berücksichtigt, was die Teile gemeinsam haben.</translation>
        </message>
        <message>
            <source>Further information</source>
            <translation>Weitere Angaben</translation>
        </message>
        <message>
            <source>additions to, deviations or exclusions from the method</source>
            <translation>Ergänzungen, Abweichungen oder Ausschlüsse gegenüber der Methode</translation>
        </message>
        <message>
            <source>sampling: plan and method, place and conditions, where it was ours</source>
            <translation>Probenahme: Plan und Verfahren, Ort und Bedingungen, wo sie durch das Labor erfolgte</translation>
        </message>
        <message>
            <source>conditions of the tests, where they matter</source>
            <translation>Prüfbedingungen, wo sie von Bedeutung sind</translation>
        </message>
        <message>
            <source>results from external providers</source>
            <translation>Ergebnisse externer Anbieter</translation>
        </message>
        <message>
            <source>opinions and interpretations, whose and on what basis</source>
            <translation>Meinungen und Interpretationen, von wem und auf welcher Grundlage</translation>
        </message>
        <message>
            <source>whatever else was asked for</source>
            <translation>was sonst noch verlangt wurde</translation>
        </message>
        <message>
            <source>Tube %1 was pipetted differently from what the method says, and is calculated as pipetted.</source>
            <translation>Ansatz %1 wurde anders pipettiert, als die Methode sagt, und ist wie pipettiert berechnet.</translation>
        </message>
        <message>
            <source>This is revision %1 and replaces revision %2. It was opened again on %3 by %4: %5.</source>
            <translation>Das ist Revision %1 und ersetzt Revision %2. Sie wurde am %3 von %4 wieder geöffnet: %5.</translation>
        </message>
        <message>
            <source>The results relate only to the items tested, as they were received. What the customer says about the samples is given as stated. This report is not to be reproduced except in full without the laboratory's approval.</source>
            <translation>Die Ergebnisse beziehen sich nur auf die Prüfgegenstände, wie sie eingegangen sind. Angaben des Kunden zu den Proben sind so wiedergegeben, wie sie gemacht wurden. Dieser Bericht darf ohne Genehmigung des Labors nur vollständig vervielfältigt werden.</translation>
        </message>
        <message>
            <source>Content, SHA-256: %1.</source>
            <translation>Inhalt, SHA-256: %1.</translation>
        </message>
        <message numerus="yes">
            <source>Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.</source>
            <translation>
                <numerusform>Aufzeichnung: Lauf %1 von %2; Inhalt, SHA-256: %3; Audit: %n Eintrag, Kopf %4.</numerusform>
                <numerusform>Aufzeichnung: Lauf %1 von %2; Inhalt, SHA-256: %3; Audit: %n Einträge, Kopf %4.</numerusform>
            </translation>
        </message>
        <message>
            <source>authorised by</source>
            <translation>freigegeben durch</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>Signatur</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>laboratory: name, address, contact</source>
            <translation>Labor: Name, Anschrift, Kontakt</translation>
        </message>
        <message>
            <source>address of the laboratory</source>
            <translation>Anschrift des Labors</translation>
        </message>
        <message>
            <source>%1 (%2), version %3</source>
            <translation>%1 (%2), Version %3</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Mit einer Vorlage erstellt, deren Volumina niemand bestätigt hat: %1.</translation>
        </message>
        <message>
            <source>REJECTED</source>
            <translation>VERWORFEN</translation>
        </message>
        <message>
            <source>REPLACED</source>
            <translation>ERSETZT</translation>
        </message>
        <message>
            <source>DRAFT</source>
            <translation>ENTWURF</translation>
        </message>
        <message>
            <source>The run was rejected; its results are not to be used.</source>
            <translation>Der Lauf wurde verworfen; seine Ergebnisse sind nicht zu verwenden.</translation>
        </message>
        <message>
            <source>This revision was taken back; what counts is the latest one in the notebook.</source>
            <translation>Diese Revision wurde zurückgenommen; es zählt die neueste im Laborjournal.</translation>
        </message>
        <message>
            <source>Nobody has accepted this run; its results may change.</source>
            <translation>Niemand hat diesen Lauf angenommen; seine Ergebnisse können sich ändern.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>minutes, absorbance</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1, signed with a passphrase</source>
            <translation>%1, signiert mit einer Passphrase</translation>
        </message>
        <message>
            <source>%1, a typed name, unsigned</source>
            <translation>%1, ein eingegebener Name, nicht signiert</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>Report of results</source>
            <translation>Ergebnisbericht</translation>
        </message>
        <message>
            <source>End of report %1</source>
            <translation>Ende des Berichts %1</translation>
        </message>
        <message>
            <source>Report %1, revision %2</source>
            <translation>Bericht %1, Revision %2</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>customer's address or contact</source>
            <translation>Anschrift oder Kontakt des Kunden</translation>
        </message>
        <message>
            <source>order or reference</source>
            <translation>Auftrag oder Referenz</translation>
        </message>
        <message>
            <source>date of the tests</source>
            <translation>Datum der Prüfungen</translation>
        </message>
        <message>
            <source>place of the tests, if elsewhere</source>
            <translation>Ort der Prüfungen, falls anderswo</translation>
        </message>
        <message>
            <source>date of issue</source>
            <translation>Ausstellungsdatum</translation>
        </message>
        <message>
            <source>Items tested</source>
            <translation>Prüfgegenstände</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>was es ist</translation>
        </message>
        <message>
            <source>state on arrival</source>
            <translation>Zustand bei Eingang</translation>
        </message>
        <message>
            <source>received</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>sampled</source>
            <translation>Probenahme</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Ergebnisse</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>± U</source>
            <translation>± U</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>k</source>
            <translation>k</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>%1) %2</source>
            <translation>%1) %2</translation>
        </message>
        <message>
            <source>No uncertainty is stated: the run states none for its inputs.</source>
            <translation>Keine Unsicherheit ist angegeben: Der Lauf gibt für seine Eingangsgrößen keine an.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>nicht berichtet</translation>
        </message>
        <message>
            <source>U is the expanded uncertainty of the result, in its unit: the standard uncertainty multiplied by the coverage factor k of its line, for a level of confidence of about 95 % (95.45 %). A result with &lt; or &gt; is a bound and has no U.</source>
            <translation>U ist die erweiterte Unsicherheit des Ergebnisses, in dessen Einheit: die Standardunsicherheit multipliziert mit dem Erweiterungsfaktor k der jeweiligen Zeile, für einen Grad des Vertrauens von etwa 95 % (95,45 %). Ein Ergebnis mit &lt; oder &gt; ist eine Schranke und hat kein U.</translation>
        </message>
        <message>
            <source>Comparison with specifications</source>
            <translation>Vergleich mit Spezifikationen</translation>
        </message>
        <message>
            <source>specification</source>
            <translation>Spezifikation</translation>
        </message>
        <message>
            <source>statement</source>
            <translation>Aussage</translation>
        </message>
        <message>
            <source>decision rule</source>
            <translation>Entscheidungsregel</translation>
        </message>
        <message>
            <source>Report of results %1</source>
            <translation>Ergebnisbericht %1</translation>
        </message>
        <message>
            <source>report %1, revision %2</source>
            <translation>Bericht %1, Revision %2</translation>
        </message>
        <message>
            <source>Report %1, revision %2, made %3 with Plateau %4</source>
            <translation>Bericht %1, Revision %2, erstellt %3 mit Plateau %4</translation>
        </message>
        <message>
            <source>The method names no published source.</source>
            <translation>Die Methode nennt keine veröffentlichte Quelle.</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Quelle: %1</translation>
        </message>
        <message>
            <source>Accepted by %1: %2</source>
            <translation>Angenommen von %1: %2</translation>
        </message>
        <message>
            <source>Accepted by %1.</source>
            <translation>Angenommen von %1.</translation>
        </message>
        <message>
            <source>Accepted by %1: %2 (one reason for the whole run)</source>
            <translation>Angenommen von %1: %2 (ein Grund für den ganzen Lauf)</translation>
        </message>
        <message>
            <source>Report %1</source>
            <comment>a file name</comment>
            <translation>Bericht %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportDialog</name>
        <message>
            <source>Number of the report</source>
            <translation>Nummer des Berichts</translation>
        </message>
        <message>
            <source>Issued on</source>
            <translation>Ausgestellt am</translation>
        </message>
        <message>
            <source>Customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>Customer's contact</source>
            <translation>Kontakt des Kunden</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Tested at</source>
            <translation>Ort der Prüfung</translation>
        </message>
        <message>
            <source>Tested on</source>
            <translation>Geprüft am</translation>
        </message>
        <message>
            <source>Authorised by</source>
            <translation>Freigegeben durch</translation>
        </message>
        <message>
            <source>Sampling: plan, method, by whom</source>
            <translation>Probenahme: Plan, Verfahren, durch wen</translation>
        </message>
        <message>
            <source>Conditions of the tests</source>
            <translation>Prüfbedingungen</translation>
        </message>
        <message>
            <source>Deviations from the method</source>
            <translation>Abweichungen von der Methode</translation>
        </message>
        <message>
            <source>Results from elsewhere</source>
            <translation>Ergebnisse externer Anbieter</translation>
        </message>
        <message>
            <source>Opinions and interpretations</source>
            <translation>Meinungen und Interpretationen</translation>
        </message>
        <message>
            <source>Whatever else was asked for</source>
            <translation>Weitere verlangte Angaben</translation>
        </message>
        <message>
            <source>What the samples are</source>
            <translation>Beschreibung der Proben</translation>
        </message>
        <message>
            <source>Their condition</source>
            <translation>Zustand der Proben</translation>
        </message>
        <message>
            <source>Received on</source>
            <translation>Eingegangen am</translation>
        </message>
        <message>
            <source>Sampled on</source>
            <translation>Probenahme am</translation>
        </message>
        <message>
            <source>What the report says besides</source>
            <translation>Was der Bericht außerdem sagt</translation>
        </message>
        <message>
            <source>Choose the &amp;file…</source>
            <translation>&amp;Datei wählen…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>&amp;Abbrechen</translation>
        </message>
        <message>
            <source>Where something stands in grey, the report says that unless you type over it. Whatever else is left empty becomes a line to write on.</source>
            <translation>Was grau vorgegeben ist, steht so im Bericht, sofern nichts anderes eingegeben wird. Was sonst leer bleibt, wird zu einer Zeile zum Ausfüllen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportFields</name>
        <message>
            <source>%1 is not a field: expected its name, an equals sign and its value, as in customer=Threnholt Cider</source>
            <translation>%1 ist kein Feld: erwartet werden Name, Gleichheitszeichen und Wert, wie in customer=Threnholt Cider</translation>
        </message>
        <message>
            <source>there is no field %1; known are %2</source>
            <translation>es gibt kein Feld %1; bekannt sind %2</translation>
        </message>
        <message>
            <source>the field %1 is for the whole report and takes no sample; fields of a sample are %2</source>
            <translation>das Feld %1 gilt für den ganzen Bericht und nimmt keine Probe; Felder einer Probe sind %2</translation>
        </message>
        <message>
            <source>the field %1 has no value; leave it out for a line to write on</source>
            <translation>das Feld %1 hat keinen Wert; für eine Zeile zum Ausfüllen weglassen</translation>
        </message>
        <message>
            <source>the value of the field %1 is longer than %2 characters; shorten it</source>
            <translation>der Wert des Feldes %1 ist länger als %2 Zeichen; kürzen</translation>
        </message>
        <message>
            <source>the field %1 was given twice; give it once</source>
            <translation>das Feld %1 wurde zweimal angegeben; nur einmal angeben</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportHeadForm</name>
        <message>
            <source>Name and report head</source>
            <translation>Name und Berichtskopf</translation>
        </message>
        <message>
            <source>These stand at the head of every report. What is left empty becomes a line to write on.</source>
            <translation>Dies steht am Kopf jedes Berichts. Was leer bleibt, wird zu einer Zeile zum Ausfüllen.</translation>
        </message>
        <message>
            <source>telephone, e-mail, a person</source>
            <translation>Telefon, E-Mail, eine Person</translation>
        </message>
        <message>
            <source>N&amp;ame of the laboratory</source>
            <translation>&amp;Name des Labors</translation>
        </message>
        <message>
            <source>Address, line by line</source>
            <translation>Anschrift, Zeile für Zeile</translation>
        </message>
        <message>
            <source>Contact, one line</source>
            <translation>Kontakt, eine Zeile</translation>
        </message>
        <message>
            <source>Logo</source>
            <translation>Logo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSaving</name>
        <message>
            <source>Save the results as CSV</source>
            <translation>Ergebnisse als CSV speichern</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>CSV-Dateien (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written, one row for each result.</source>
            <translation>%1 wurde geschrieben, eine Zeile je Ergebnis.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSource</name>
        <message>
            <source>run %1, revision %2, as %3</source>
            <translation>Lauf %1, Revision %2, als %3</translation>
        </message>
        <message numerus="yes">
            <source>the mean of %n accepted results</source>
            <translation>
                <numerusform>das einzige angenommene Ergebnis</numerusform>
                <numerusform>der Mittelwert aus %n angenommenen Ergebnissen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the one named by the reviewer, of %n accepted results</source>
            <translation>
                <numerusform>das vom Bewerter genannte, einzige angenommene Ergebnis</numerusform>
                <numerusform>das vom Bewerter genannte von %n angenommenen Ergebnissen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the last of %n accepted results</source>
            <translation>
                <numerusform>das einzige angenommene Ergebnis</numerusform>
                <numerusform>das letzte von %n angenommenen Ergebnissen</numerusform>
            </translation>
        </message>
        <message>
            <source>chosen by %1 on %2</source>
            <translation>gewählt von %1 am %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Reported is %1: %2</source>
            <translation>Berichtet wird %1: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1: %2 (%3, %4)</source>
            <translation>%1: %2 (%3, %4)</translation>
        </message>
        <message>
            <source>%1, guard band %2</source>
            <translation>%1, Schutzband %2</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>Bewerter</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>Laborleitung</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>Analytiker</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>%1: accepted</source>
            <translation>%1: angenommen</translation>
        </message>
        <message>
            <source>%1: rejected</source>
            <translation>%1: verworfen</translation>
        </message>
        <message>
            <source>%1: to be repeated</source>
            <translation>%1: zu wiederholen</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>Aufstockung</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>eingefügt</translation>
        </message>
        <message>
            <source>from the file %1</source>
            <translation>aus der Datei %1</translation>
        </message>
        <message>
            <source>sent over the serial line %1</source>
            <translation>über die serielle Leitung %1 gesendet</translation>
        </message>
        <message>
            <source>sent over the network, %1</source>
            <translation>über das Netz gesendet, %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportUnitsForm</name>
        <message>
            <source>Units of products</source>
            <translation>Einheiten der Produkte</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>every measurand</source>
            <translation>jede Messgröße</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>The unit in which results are shown and reported. A row without a product holds for every product. A row that names both comes first, then one that names the measurand, then one that names the product. What stands in no row is reported in g/L, for a solid in g/100 g. %1</source>
            <translation>Die Einheit, in der Ergebnisse gezeigt und berichtet werden. Eine Zeile ohne Produkt gilt für jedes Produkt. Eine Zeile, die beides nennt, geht vor, dann eine, die die Messgröße nennt, dann eine, die das Produkt nennt. Was in keiner Zeile steht, wird in g/L berichtet, bei Feststoffen in g/100 g. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedModel</name>
        <message>
            <source>%1, signed</source>
            <translation>%1, signiert</translation>
        </message>
        <message>
            <source>%1, unsigned</source>
            <translation>%1, nicht signiert</translation>
        </message>
        <message>
            <source>%1-fold</source>
            <translation>%1-fach</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Decided</source>
            <translation>Entschieden</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Verdünnung</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>Reported</source>
            <translation>Berichtet</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>unverdünnt</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedResult</name>
        <message>
            <source>run %1, revision %2</source>
            <translation>Lauf %1, Revision %2</translation>
        </message>
        <message>
            <source>in the mean</source>
            <translation>im Mittelwert</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>berichtet</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>das letzte angenommene Ergebnis</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>der Mittelwert der angenommenen Ergebnisse</translation>
        </message>
        <message>
            <source>the result that is named</source>
            <translation>das genannte Ergebnis</translation>
        </message>
        <message>
            <source>Reported: %1, %2 (%3).</source>
            <translation>Berichtet: %1, %2 (%3).</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Nobody has chosen: until somebody does, the last accepted one counts.</source>
            <translation>Niemand hat gewählt: Bis dahin zählt das letzte angenommene.</translation>
        </message>
        <message>
            <source>signed</source>
            <translation>signiert</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>nicht signiert</translation>
        </message>
        <message>
            <source>Chosen by %1, %2 (%3): %4</source>
            <translation>Gewählt von %1, %2 (%3): %4</translation>
        </message>
        <message>
            <source>A result was accepted since: see whether the choice still holds.</source>
            <translation>Seitdem wurde ein Ergebnis angenommen: prüfen, ob die Wahl noch gilt.</translation>
        </message>
        <message>
            <source>On the report: %1.</source>
            <translation>Im Bericht: %1.</translation>
        </message>
        <message numerus="yes">
            <source>These results were accepted over %n days. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</source>
            <translation>
                <numerusform>Diese Ergebnisse wurden innerhalb von %n Tag angenommen. Falls sie von zwei Proben desselben Namens stammen, im Plan jeder ihren Eingangstag geben: Ein Name, der an einem anderen Tag einging, ist eine andere Probe.</numerusform>
                <numerusform>Diese Ergebnisse wurden über %n Tage verteilt angenommen. Falls sie von zwei Proben desselben Namens stammen, im Plan jeder ihren Eingangstag geben: Ein Name, der an einem anderen Tag einging, ist eine andere Probe.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedView</name>
        <message>
            <source>Reported result</source>
            <translation>Berichtetes Ergebnis</translation>
        </message>
        <message>
            <source>Accepted results</source>
            <translation>Angenommene Ergebnisse</translation>
        </message>
        <message>
            <source>&amp;Chosen by</source>
            <translation>Gew&amp;ählt von</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>Passph&amp;rase</translation>
        </message>
        <message>
            <source>Reported result of sample and &amp;measurand</source>
            <translation>Berichtetes Ergebnis &amp;von Probe und Messgröße</translation>
        </message>
        <message>
            <source>the last accepted</source>
            <translation>das letzte angenommene</translation>
        </message>
        <message>
            <source>the mean of all accepted</source>
            <translation>der Mittelwert aller angenommenen</translation>
        </message>
        <message>
            <source>the one marked in the table</source>
            <translation>das in der Tabelle markierte</translation>
        </message>
        <message>
            <source>R&amp;ule</source>
            <translation>Re&amp;gel</translation>
        </message>
        <message>
            <source>Wh&amp;y</source>
            <translation>Waru&amp;m</translation>
        </message>
        <message>
            <source>S&amp;tore the choice</source>
            <translation>&amp;Wahl speichern</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Say who chooses: type a name.</source>
            <translation>Angeben, wer wählt: einen Namen eingeben.</translation>
        </message>
        <message>
            <source>The choice is stored.</source>
            <translation>Die Wahl ist gespeichert.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultDetails</name>
        <message>
            <source>Calculation</source>
            <translation>Berechnung</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <translation>Unsicherheitsbudget</translation>
        </message>
        <message>
            <source>Whose numbers the budget is made of</source>
            <translation>Wer die Zahlen des Budgets verantwortet</translation>
        </message>
        <message>
            <source>Details of the chosen result</source>
            <translation>Einzelheiten des gewählten Ergebnisses</translation>
        </message>
        <message>
            <source>Overvie&amp;w</source>
            <translation>&amp;Übersicht</translation>
        </message>
        <message>
            <source>&amp;Calculation</source>
            <translation>Bere&amp;chnung</translation>
        </message>
        <message>
            <source>&amp;Uncertainty</source>
            <translation>Unsicherhei&amp;t</translation>
        </message>
        <message>
            <source>%1 % %2</source>
            <translation>%1 % %2</translation>
        </message>
        <message>
            <source>Share of the variance of %1 (%)</source>
            <translation>Anteil an der Varianz von %1 (%)</translation>
        </message>
        <message>
            <source>k = %1: %2.</source>
            <translation>k = %1: %2.</translation>
        </message>
        <message>
            <source>As the laboratory reports it</source>
            <translation>Wie das Labor es angibt</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>in %1</translation>
        </message>
        <message>
            <source>the result in %1 in that unit</source>
            <translation>das Ergebnis in %1 in dieser Einheit</translation>
        </message>
        <message>
            <source>Recovery of %1: %2 expected at use</source>
            <translation>Wiederfindung von %1: %2 bei Verwendung erwartet</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultOverview</name>
        <message>
            <source>About the chosen result</source>
            <translation>Über das gewählte Ergebnis</translation>
        </message>
        <message>
            <source>Recovery and its history</source>
            <translation>Wiederfindung und ihr Verlauf</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultView</name>
        <message>
            <source>Decisions</source>
            <translation>Entscheidungen</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Ergebnisse</translation>
        </message>
        <message>
            <source>Rejected</source>
            <translation>Verworfen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsCsv</name>
        <message>
            <source>Results %1</source>
            <comment>a file name</comment>
            <translation>Ergebnisse %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsModel</name>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Messgröße</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>k</source>
            <comment>coverage factor of the uncertainty</comment>
            <translation>k</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Spannweite</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Verdünnung</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Grenzwerte</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewPage</name>
        <message>
            <source>Equipment and lots that the run was made with</source>
            <translation>Geräte und Chargen, mit denen der Lauf gemacht wurde</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewRuleWords</name>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>A reviewer or a head decides here, and %1 is an analyst.</source>
            <translation>Hier entscheidet ein Bewerter oder die Laborleitung, und %1 hat die Rolle Analytiker.</translation>
        </message>
        <message>
            <source>A reviewer or a head decides here, and %1 are analysts.</source>
            <translation>Hier entscheidet ein Bewerter oder die Laborleitung, und %1 haben die Rolle Analytiker.</translation>
        </message>
        <message>
            <source>Who may: %1.</source>
            <translation>Entscheiden darf: %1.</translation>
        </message>
        <message>
            <source>accepted: read again, and the reading is right</source>
            <translation>angenommen: noch einmal abgelesen, die Ablesung stimmt</translation>
        </message>
        <message>
            <source>accepted: the control is within its limits</source>
            <translation>angenommen: die Kontrollprobe liegt in ihren Grenzen</translation>
        </message>
        <message>
            <source>accepted: the tube concerned is left out</source>
            <translation>angenommen: der betroffene Ansatz zählt nicht mit</translation>
        </message>
        <message>
            <source>accepted: for orientation only, not for a report</source>
            <translation>angenommen: nur zur Orientierung, nicht für einen Bericht</translation>
        </message>
        <message>
            <source>Nobody who is set up may decide it.</source>
            <translation>Niemand, der eingerichtet ist, darf ihn entscheiden.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 worked on this one.</source>
            <translation>Niemand bewertet den eigenen Lauf: %1 hat an diesem gearbeitet.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 have worked on this one.</source>
            <translation>Niemand bewertet den eigenen Lauf: %1 haben an diesem gearbeitet.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewRulesForm</name>
        <message>
            <source>Review</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>Who may decide on a run. The first rule holds once people are set up under Books, People; the second one for typed names, too.</source>
            <translation>Wer über einen Lauf entscheiden darf. Die erste Regel gilt, sobald unter Bücher, Personen Personen eingerichtet sind; die zweite auch für eingegebene Namen.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>A reviewer or the head decides; an analyst's signature does not</source>
            <translation>Ein Bewerter oder die Laborleitung entscheidet; die Signatur eines Analytikers genügt nicht</translation>
        </message>
        <message>
            <source>A second person reviews: nobody decides on a run that they worked on</source>
            <translation>Eine zweite Person bewertet: Niemand entscheidet über einen Lauf, an dem er gearbeitet hat</translation>
        </message>
        <message>
            <source>Reasons offered where a sample or a run is rejected; another may be typed</source>
            <translation>Angebotene Gründe beim Verwerfen einer Probe oder eines Laufs; andere lassen sich eingeben</translation>
        </message>
        <message>
            <source>Reasons for a rejection</source>
            <translation>Gründe für ein Verwerfen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewedResult</name>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1-fold</source>
            <translation>%1-fach</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>%1. The limit: %2, %3.</source>
            <translation>%1. Der Grenzwert: %2, %3.</translation>
        </message>
        <message>
            <source>It stands in %1 and not in %2: %3.</source>
            <translation>Er ist in %1 angegeben und nicht in %2: %3.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1: %2 and %3 more</source>
            <translation>%1: %2 und %3 weitere</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Against the limits of the products: %1.</source>
            <translation>Gegen die Grenzwerte der Produkte: %1.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>There is nothing against this result.</source>
            <translation>Nichts spricht gegen dieses Ergebnis.</translation>
        </message>
        <message>
            <source>No standard was measured in this run: nothing in it shows what the assay recovers.</source>
            <translation>In diesem Lauf wurde kein Standard gemessen: Nichts darin zeigt, was der Test wiederfindet.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RhythmRow</name>
        <message>
            <source>Keep a &amp;rhythm: a tube every</source>
            <translation>&amp;Takt halten: ein Ansatz alle</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>Seconds from tube to tube</source>
            <translation>Sekunden von Ansatz zu Ansatz</translation>
        </message>
        <message>
            <source>Enter seconds from %1 to %2: no rhythm is kept.</source>
            <translation>Sekunden von %1 bis %2 eingeben: Es wird kein Takt gehalten.</translation>
        </message>
        <message>
            <source>Tube %1 %2</source>
            <translation>Ansatz %1 %2</translation>
        </message>
        <message>
            <source>It begins with the first tube that is ticked.</source>
            <translation>Er beginnt mit dem ersten abgehakten Ansatz.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunComparison</name>
        <message>
            <source>the run's own standard</source>
            <translation>der eigene Standard des Laufs</translation>
        </message>
        <message>
            <source>a line of standards</source>
            <translation>eine Gerade durch Standards</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>molarer Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>Calibrated by</source>
            <translation>Kalibriert über</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Entschieden von</translation>
        </message>
        <message>
            <source>%1, made %2</source>
            <translation>%1, hergestellt %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, bis %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Recovery of %1, %2</source>
            <translation>Wiederfindung von %1, %2</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>nicht bestanden: %1</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Bedingungen</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Signale</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Ergebnisse</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Prüfungen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDetails</name>
        <message>
            <source>Recoveries</source>
            <translation>Wiederfindungen</translation>
        </message>
        <message>
            <source>Readings with their history</source>
            <translation>Ablesungen mit ihrem Verlauf</translation>
        </message>
        <message>
            <source>Method and cautions</source>
            <translation>Methode und Warnhinweise</translation>
        </message>
        <message>
            <source>Details of the run</source>
            <translation>Einzelheiten des Laufs</translation>
        </message>
        <message>
            <source>&amp;Quality checks</source>
            <translation>&amp;Qualitätsprüfungen</translation>
        </message>
        <message>
            <source>Recover&amp;ies</source>
            <translation>Wiederfindun&amp;gen</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <translation>Ablesu&amp;ngen</translation>
        </message>
        <message>
            <source>Me&amp;thod</source>
            <translation>M&amp;ethode</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>E&amp;xplain this check</source>
            <translation>Prüfung er&amp;klären</translation>
        </message>
        <message>
            <source>What is checked, why, and what to do about it; F1 does the same</source>
            <translation>Was geprüft wird, warum, und was zu tun ist; F1 bewirkt dasselbe</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDraft</name>
        <message>
            <source>Between 1 and 12 tubes per sample, as a whole number.</source>
            <translation>Zwischen 1 und 12 Ansätze einer Probe, als ganze Zahl.</translation>
        </message>
        <message>
            <source>A spike is a volume of the run's standard: run one.</source>
            <translation>Eine Aufstockung ist ein Volumen des Standards des Laufs: einen mitführen.</translation>
        </message>
        <message>
            <source>The rack has %1 places and this run %2 tubes: take fewer, or split it.</source>
            <translation>Das Rack hat %1 Plätze und dieser Lauf %2 Ansätze: weniger nehmen oder teilen.</translation>
        </message>
        <message>
            <source>Give the run a title, by which it is found again.</source>
            <translation>Dem Lauf einen Titel geben, unter dem er wiederzufinden ist.</translation>
        </message>
        <message>
            <source>Name at least one sample, one per line.</source>
            <translation>Mindestens eine Probe nennen, eine je Zeile.</translation>
        </message>
        <message>
            <source>Say how much of its strength it loses in an hour; 0 if it keeps its strength for the day.</source>
            <translation>Angeben, wie viel seines Gehalts er in einer Stunde verliert; 0, wenn er den Gehalt den Tag über hält.</translation>
        </message>
        <message>
            <source>With 0 it counts at full strength all day; the method expects a loss of %1 % an hour.</source>
            <translation>Mit 0 zählt er den ganzen Tag mit vollem Gehalt; die Methode rechnet mit einem Verlust von %1 % pro Stunde.</translation>
        </message>
        <message>
            <source>Say when it was made, as 8:10, so that its strength at use can be worked out.</source>
            <translation>Angeben, wann er hergestellt wurde, z. B. 8:10, damit sein Gehalt bei Verwendung berechnet werden kann.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilePage</name>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>In A&amp;rbeit nehmen</translation>
        </message>
        <message>
            <source>Open &amp;another file…</source>
            <translation>Ande&amp;re Datei öffnen…</translation>
        </message>
        <message>
            <source>The file can be put on the bench.</source>
            <translation>Die Datei kann in Arbeit genommen werden.</translation>
        </message>
        <message>
            <source>The file can be used. Worth knowing first:</source>
            <translation>Die Datei ist verwendbar. Zuvor zu wissen:</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken.</translation>
        </message>
        <message>
            <source>It is rack %1.</source>
            <translation>Es ist Rack %1.</translation>
        </message>
        <message>
            <source>It is decided on and stands under Notebook.</source>
            <translation>Über ihn ist entschieden, und er steht im Laborjournal.</translation>
        </message>
        <message>
            <source>Nothing was stored.</source>
            <translation>Nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The notebook already has this very run, with the same readings: run %1, "%2", put on the bench on %3. %4</source>
            <translation>Das Laborjournal enthält genau diesen Lauf bereits, mit denselben Ablesungen: Lauf %1, „%2“, in Arbeit genommen am %3. %4</translation>
        </message>
        <message>
            <source>The file cannot be used, and nothing was taken from it:</source>
            <translation>Die Datei kann nicht verwendet werden, und nichts wurde daraus übernommen:</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilterFields</name>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>Standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>From day</source>
            <translation>Von Tag</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Bis Tag</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>any</source>
            <translation>beliebig</translation>
        </message>
        <message>
            <source>Failed check</source>
            <translation>Nicht bestandene Prüfung</translation>
        </message>
        <message>
            <source>any or none</source>
            <translation>beliebig oder keine</translation>
        </message>
        <message>
            <source>Result of</source>
            <translation>Ergebnis von</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>mindestens</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>höchstens</translation>
        </message>
        <message>
            <source>Result at least</source>
            <translation>Ergebnis mindestens</translation>
        </message>
        <message>
            <source>Result at most</source>
            <translation>Ergebnis höchstens</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 in %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The first day is after the last, so no run can be found: exchange them.</source>
            <translation>Der erste Tag liegt nach dem letzten, also lässt sich kein Lauf finden: die beiden tauschen.</translation>
        </message>
        <message>
            <source>Choose what the result is for, so that its value counts.</source>
            <translation>Wählen, wovon das Ergebnis ist, damit der Wert zählt.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunListView</name>
        <message>
            <source>&amp;More filters</source>
            <translation>&amp;Mehr Filter</translation>
        </message>
        <message>
            <source>&amp;Keep filter</source>
            <translation>&amp;Filter speichern</translation>
        </message>
        <message>
            <source>Forget it</source>
            <translation>Vergessen</translation>
        </message>
        <message>
            <source>&amp;Compare the two</source>
            <translation>Die beiden ver&amp;gleichen</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Läufe</translation>
        </message>
        <message>
            <source>Order of the runs</source>
            <translation>Reihenfolge der Läufe</translation>
        </message>
        <message>
            <source>newest in the notebook first</source>
            <translation>neueste im Laborjournal zuerst</translation>
        </message>
        <message>
            <source>oldest in the notebook first</source>
            <translation>älteste im Laborjournal zuerst</translation>
        </message>
        <message>
            <source>latest day first</source>
            <translation>spätester Tag zuerst</translation>
        </message>
        <message>
            <source>latest decision first</source>
            <translation>letzte Entscheidung zuerst</translation>
        </message>
        <message>
            <source>by title</source>
            <translation>nach Titel</translation>
        </message>
        <message>
            <source>by method</source>
            <translation>nach Methode</translation>
        </message>
        <message>
            <source>Kept filters</source>
            <translation>Gespeicherte Filter</translation>
        </message>
        <message>
            <source>name of a filter</source>
            <translation>Name eines Filters</translation>
        </message>
        <message>
            <source>Name of a kept filter</source>
            <translation>Name eines gespeicherten Filters</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Laborjournal</translation>
        </message>
        <message>
            <source>Fin&amp;d by title, sample, person, note … or printed code</source>
            <translation>Titel, Probe, Person, Bemerkung … oder gedruckten Code fin&amp;den</translation>
        </message>
        <message>
            <source>Kept filter</source>
            <translation>Gespeicherter Filter</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Reihenfolge</translation>
        </message>
        <message>
            <source>No run in the notebook matches all of this. Remove a word or a field to find more; Escape clears everything.</source>
            <translation>Kein Lauf des Laborjournals erfüllt das alles. Ein Wort oder ein Feld wegnehmen, um mehr zu finden; Esc nimmt alles weg.</translation>
        </message>
        <message>
            <source>No run is in the notebook yet. Start one with New run, or open a run file.</source>
            <translation>Noch ist kein Lauf im Laborjournal. Mit Neuer Lauf einen beginnen oder eine Laufdatei öffnen.</translation>
        </message>
        <message numerus="yes">
            <source>%n run(s)</source>
            <translation>
                <numerusform>%n Lauf</numerusform>
                <numerusform>%n Läufe</numerusform>
            </translation>
        </message>
        <message>
            <source>more than %1 of %2 runs</source>
            <translation>mehr als %1 von %2 Läufen</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n run(s)</source>
            <translation>
                <numerusform>%1 von %n Lauf</numerusform>
                <numerusform>%1 von %n Läufen</numerusform>
            </translation>
        </message>
        <message>
            <source>Choose two runs: the second with Control held down.</source>
            <translation>Zwei Läufe wählen: den zweiten mit gedrückter Strg-Taste.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunPapers</name>
        <message>
            <source>Save a copy of the run</source>
            <translation>Kopie des Laufs speichern</translation>
        </message>
        <message>
            <source>run.json</source>
            <translation>lauf.json</translation>
        </message>
        <message>
            <source>Run files (*.json)</source>
            <translation>Laufdateien (*.json)</translation>
        </message>
        <message>
            <source>The copy could not be written to %1: %2. Choose another place; the run itself is in the notebook as before.</source>
            <translation>Die Kopie konnte nicht nach %1 geschrieben werden: %2. Einen anderen Ort wählen; der Lauf selbst ist wie zuvor im Laborjournal.</translation>
        </message>
        <message>
            <source>A copy of the run was written to %1.</source>
            <translation>Eine Kopie des Laufs wurde nach %1 geschrieben.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunRecord</name>
        <message>
            <source>%1: %2</source>
            <comment>a tube's role and what is in it</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>does not count: %1</source>
            <translation>zählt nicht: %1</translation>
        </message>
        <message>
            <source>spiked with %1 of %2</source>
            <translation>aufgestockt mit %1 von %2</translation>
        </message>
        <message>
            <source>%1: %2 pipetted</source>
            <translation>%1: %2 pipettiert</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>v, mL</source>
            <translation>v, mL</translation>
        </message>
        <message>
            <source>V, mL</source>
            <translation>V, mL</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>%1) tube %2, %3: was %4, corrected to %5 by %6 on %7. Reason: %8</source>
            <translation>%1) Ansatz %2, %3: war %4, korrigiert auf %5 von %6 am %7. Grund: %8</translation>
        </message>
        <message>
            <source>with its run, from a file</source>
            <translation>mit dem Lauf, aus einer Datei</translation>
        </message>
        <message>
            <source>keyed</source>
            <translation>eingegeben</translation>
        </message>
        <message>
            <source>nothing, read once more</source>
            <translation>nichts, noch einmal abgelesen</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>as typed or sent</source>
            <translation>wie eingegeben oder gesendet</translation>
        </message>
        <message>
            <source>how it came</source>
            <translation>wie sie kam</translation>
        </message>
        <message>
            <source>by</source>
            <translation>von</translation>
        </message>
        <message>
            <source>at</source>
            <translation>Zeitpunkt</translation>
        </message>
        <message>
            <source>replaces</source>
            <translation>ersetzt</translation>
        </message>
        <message>
            <source>Readings as they came, oldest first</source>
            <translation>Ablesungen, wie sie kamen, die älteste zuerst</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 min %2 s</source>
            <translation>%1 min %2 s</translation>
        </message>
        <message>
            <source>%1 h %2 min %3 s</source>
            <translation>%1 h %2 min %3 s</translation>
        </message>
        <message>
            <source>The computer's clock was set while the run was on the bench</source>
            <translation>Die Uhr des Rechners wurde gestellt, während der Lauf in Arbeit war</translation>
        </message>
        <message>
            <source>%1 by %2, to %3; noted with the name of %4. Times above are as the clock showed them, minutes on the run's own clock do not change with it.</source>
            <translation>%1 um %2, auf %3; vermerkt mit dem Namen von %4. Zeiten oben sind, wie die Uhr sie zeigte; Minuten auf der eigenen Uhr des Laufs ändern sich dadurch nicht.</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Vorgestellt</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurückgestellt</translation>
        </message>
        <message>
            <source>component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>last good day</source>
            <translation>letzter Verwendungstag</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>Pipette</translation>
        </message>
        <message>
            <source>first at</source>
            <translation>erste um</translation>
        </message>
        <message>
            <source>last at</source>
            <translation>letzte um</translation>
        </message>
        <message>
            <source>Pipetting as it was ticked</source>
            <translation>Pipettieren, wie abgehakt</translation>
        </message>
        <message>
            <source>added, minutes on the run's clock</source>
            <translation>zugegeben, Minuten auf der Uhr des Laufs</translation>
        </message>
        <message>
            <source>read, minutes on the run's clock</source>
            <translation>abgelesen, Minuten auf der Uhr des Laufs</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>When it was done</source>
            <translation>Wann es getan wurde</translation>
        </message>
        <message>
            <source>Tubes and readings</source>
            <translation>Ansätze und Ablesungen</translation>
        </message>
        <message>
            <source>At the bench</source>
            <translation>Am Arbeitsplatz</translation>
        </message>
        <message>
            <source>% of it</source>
            <translation>% davon</translation>
        </message>
        <message>
            <source>each absorbance</source>
            <translation>jede Extinktion</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>Extinktion</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>each dilution step, unless it has its own</source>
            <translation>jeder Verdünnungsschritt, sofern er keine eigene hat</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>Extrakt</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>der Lauf</translation>
        </message>
        <message>
            <source>its file does not say where it comes from</source>
            <translation>seine Datei sagt nicht, woher sie stammt</translation>
        </message>
        <message>
            <source>stated with it; the laboratory has %1 now, from %2 (%3)</source>
            <translation>damit angegeben; das Labor hat jetzt %1, von %2 (%3)</translation>
        </message>
        <message>
            <source>stated with it</source>
            <translation>damit angegeben</translation>
        </message>
        <message>
            <source>concentration of the standard %1</source>
            <translation>Konzentration des Standards %1</translation>
        </message>
        <message>
            <source>the standard</source>
            <translation>der Standard</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known</source>
            <translation>nicht angegeben, gilt also als genau bekannt</translation>
        </message>
        <message>
            <source>The run states no uncertainties of its inputs.</source>
            <translation>Der Lauf gibt keine Unsicherheiten seiner Eingangsgrößen an.</translation>
        </message>
        <message>
            <source>standard uncertainty (k = 1) of</source>
            <translation>Standardunsicherheit (k = 1) von</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>wer sie verantwortet</translation>
        </message>
        <message>
            <source>where it comes from</source>
            <translation>woher sie stammt</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>%1 zugeben</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>%1 warten</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>%1 ablesen</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mischen</translation>
        </message>
        <message>
            <source>A series of %1 counts as the straight line through its last %2 readings gives it at 0 min, the addition of the starter.</source>
            <translation>Eine Ablesereihe von %1 zählt so, wie die Gerade durch ihre letzten %2 Ablesungen sie bei 0 min ergibt, der Zugabe des Startreagenzes.</translation>
        </message>
        <message>
            <source>coupled indicator of %1</source>
            <translation>gekoppelter Indikator von %1</translation>
        </message>
        <message>
            <source>volume, mL</source>
            <translation>Volumen, mL</translation>
        </message>
        <message>
            <source>may be, mL</source>
            <translation>zulässig, mL</translation>
        </message>
        <message>
            <source>part</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>diluent, makes up for the sample</source>
            <translation>Verdünnungsmittel, gleicht die Probe aus</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>Startreagenz</translation>
        </message>
        <message>
            <source>suspension</source>
            <translation>Suspension</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>M, g/mol</source>
            <translation>M, g/mol</translation>
        </message>
        <message>
            <source>n</source>
            <translation>n</translation>
        </message>
        <message>
            <source>factor, g/L for one unit of signal</source>
            <translation>Faktor, g/L für eine Einheit Signal</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>über den eigenen Standard des Laufs</translation>
        </message>
        <message>
            <source>by a line through the run's standards</source>
            <translation>über eine Gerade durch die Standards des Laufs</translation>
        </message>
        <message>
            <source>by the molar absorptivity</source>
            <translation>über den molaren Extinktionskoeffizienten</translation>
        </message>
        <message>
            <source>%1 (u = %2)</source>
            <translation>%1 (u = %2)</translation>
        </message>
        <message>
            <source>weighed, g</source>
            <translation>eingewogen, g</translation>
        </message>
        <message>
            <source>extract, mL</source>
            <translation>Extrakt, mL</translation>
        </message>
        <message>
            <source>dilution</source>
            <translation>Verdünnung</translation>
        </message>
        <message>
            <source>factor F</source>
            <translation>Faktor F</translation>
        </message>
        <message>
            <source>as it is</source>
            <translation>wie sie ist</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>enthält</translation>
        </message>
        <message>
            <source>made, g/L</source>
            <translation>hergestellt, g/L</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>hergestellt am</translation>
        </message>
        <message>
            <source>used</source>
            <translation>verwendet</translation>
        </message>
        <message>
            <source>lost in an hour, %</source>
            <translation>Verlust pro Stunde, %</translation>
        </message>
        <message>
            <source>at use, g/L</source>
            <translation>bei Verwendung, g/L</translation>
        </message>
        <message>
            <source>all measured</source>
            <translation>alle gemessenen</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>The run names no lots.</source>
            <translation>Der Lauf nennt keine Chargen.</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Quelle: %1</translation>
        </message>
        <message>
            <source>Steps: %1.</source>
            <translation>Schritte: %1.</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Bedingungen</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>path length d</source>
            <translation>Schichtdicke d</translation>
        </message>
        <message>
            <source>molar absorptivity e</source>
            <translation>molarer Extinktionskoeffizient e</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>direction</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>rising</source>
            <translation>steigend</translation>
        </message>
        <message>
            <source>falling</source>
            <translation>fallend</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>auf das Endvolumen bezogen</translation>
        </message>
        <message>
            <source>as read, no correction for volume</source>
            <translation>wie abgelesen, ohne Volumenkorrektur</translation>
        </message>
        <message>
            <source>net signal to be reported</source>
            <translation>zu berichtendes Nettosignal</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>größte Extinktion</translation>
        </message>
        <message>
            <source>absorbance that has to remain</source>
            <translation>Extinktion, die verbleiben muss</translation>
        </message>
        <message>
            <source>Samples, standards, lots</source>
            <translation>Proben, Standards, Chargen</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>Nettosignal dA</translation>
        </message>
        <message>
            <source>c, g/L</source>
            <translation>c, g/L</translation>
        </message>
        <message>
            <source>c x F, g/L</source>
            <translation>c × F, g/L</translation>
        </message>
        <message>
            <source>%1: signals and concentrations</source>
            <translation>%1: Signale und Konzentrationen</translation>
        </message>
        <message numerus="yes">
            <source>Mean blank: %1 of %n tubes.</source>
            <translation>
                <numerusform>Mittlerer Blindwert: %1 aus %n Ansatz.</numerusform>
                <numerusform>Mittlerer Blindwert: %1 aus %n Ansätzen.</numerusform>
            </translation>
        </message>
        <message>
            <source>recovered</source>
            <translation>wiedergefunden</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>expected, g/L</source>
            <translation>erwartet, g/L</translation>
        </message>
        <message>
            <source>found, g/L</source>
            <translation>gefunden, g/L</translation>
        </message>
        <message>
            <source>recovery, %</source>
            <translation>Wiederfindung, %</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>spike of %1</source>
            <translation>Aufstockung von %1</translation>
        </message>
        <message>
            <source>Recoveries</source>
            <translation>Wiederfindungen</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>at 0 min</source>
            <translation>bei 0 min</translation>
        </message>
        <message>
            <source>slope per min</source>
            <translation>Steigung pro min</translation>
        </message>
        <message>
            <source>its standard error</source>
            <translation>ihr Standardfehler</translation>
        </message>
        <message>
            <source>reaction</source>
            <translation>Reaktion</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>beendet</translation>
        </message>
        <message>
            <source>not ended</source>
            <translation>nicht beendet</translation>
        </message>
        <message>
            <source>Lines through series of readings</source>
            <translation>Geraden durch Ablesereihen</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>Kalibriergerade</translation>
        </message>
        <message>
            <source>a</source>
            <translation>a</translation>
        </message>
        <message>
            <source>b, per mg</source>
            <translation>b, je mg</translation>
        </message>
        <message>
            <source>residual</source>
            <translation>Residuum</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>symbol</source>
            <translation>Symbol</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>was es ist</translation>
        </message>
        <message>
            <source>source of uncertainty</source>
            <translation>Quelle der Unsicherheit</translation>
        </message>
        <message>
            <source>standard uncertainty, %1</source>
            <translation>Standardunsicherheit, %1</translation>
        </message>
        <message>
            <source>share of the variance, %</source>
            <translation>Anteil an der Varianz, %</translation>
        </message>
        <message>
            <source>Calculation: %1, %2</source>
            <translation>Berechnung: %1, %2</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>There is no value; the checks say why.</source>
            <translation>Es gibt keinen Wert; die Prüfungen sagen, warum.</translation>
        </message>
        <message>
            <source>That is the result below, in %1, times %2.</source>
            <translation>Das ist das Ergebnis unten, in %1, mal %2.</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Signale</translation>
        </message>
        <message>
            <source>Calculations</source>
            <translation>Berechnungen</translation>
        </message>
        <message>
            <source>Calculation: for every result of %1</source>
            <translation>Berechnung: für jedes Ergebnis von %1</translation>
        </message>
        <message>
            <source>from a run file, in no notebook</source>
            <translation>aus einer Laufdatei, in keinem Laborjournal</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>taken back since</source>
            <translation>seitdem zurückgenommen</translation>
        </message>
        <message>
            <source>on the bench, not decided</source>
            <translation>in Arbeit, nicht entschieden</translation>
        </message>
        <message numerus="yes">
            <source>%n samples</source>
            <translation>
                <numerusform>%n Probe</numerusform>
                <numerusform>%n Proben</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record</source>
            <translation>Laufprotokoll</translation>
        </message>
        <message>
            <source>End of the run record %1</source>
            <translation>Ende des Laufprotokolls %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>state</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>revision</source>
            <translation>Revision</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>started</source>
            <translation>begonnen</translation>
        </message>
        <message>
            <source>laboratory</source>
            <translation>Labor</translation>
        </message>
        <message>
            <source>notebook</source>
            <translation>Laborjournal</translation>
        </message>
        <message>
            <source>%1, run %2</source>
            <translation>%1, Lauf %2</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>in Arbeit genommen</translation>
        </message>
        <message>
            <source>evaluated by</source>
            <translation>ausgewertet von</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>this copy made</source>
            <translation>diese Kopie erstellt</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>Nobody has decided on this run.</source>
            <translation>Niemand hat über diesen Lauf entschieden.</translation>
        </message>
        <message>
            <source>decided</source>
            <translation>entschieden</translation>
        </message>
        <message>
            <source>reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>program</source>
            <translation>Programm</translation>
        </message>
        <message>
            <source>taken back, on the bench again</source>
            <translation>zurückgenommen, wieder in Arbeit</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Ergebnisse</translation>
        </message>
        <message>
            <source>result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>± U</source>
            <translation>± U</translation>
        </message>
        <message>
            <source>k</source>
            <translation>k</translation>
        </message>
        <message>
            <source>spread</source>
            <translation>Spannweite</translation>
        </message>
        <message>
            <source>verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2: %3</translation>
        </message>
        <message>
            <source>%1, %2: %3. Specification: %4. Decision rule: %5.</source>
            <translation>%1, %2: %3. Spezifikation: %4. Entscheidungsregel: %5.</translation>
        </message>
        <message>
            <source>%1, %2, rests on this run and on %3.</source>
            <translation>%1, %2, beruht auf diesem Lauf und auf %3.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>run %1 of the notebook ("%2", %3)</source>
            <translation>Lauf %1 des Laborjournals („%2“, %3)</translation>
        </message>
        <message>
            <source>the run "%1" (%2)</source>
            <translation>der Lauf „%1“ (%2)</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>of</source>
            <translation>von</translation>
        </message>
        <message>
            <source>what was found</source>
            <translation>was gefunden wurde</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>nicht bestanden</translation>
        </message>
        <message>
            <source>Run that results are taken from: %1</source>
            <translation>Lauf, aus dem Ergebnisse übernommen sind: %1</translation>
        </message>
        <message>
            <source>Run %1 of the same notebook, %2.</source>
            <translation>Lauf %1 desselben Laborjournals, %2.</translation>
        </message>
        <message>
            <source>Run %1.</source>
            <translation>Lauf %1.</translation>
        </message>
        <message>
            <source>What plateau verify confirms</source>
            <translation>Was plateau verify bestätigt</translation>
        </message>
        <message>
            <source>SHA-256 of the run and its method as printed here: %1</source>
            <translation>SHA-256 des Laufs und seiner Methode wie hier gedruckt: %1</translation>
        </message>
        <message>
            <source>The run stands in no notebook: the hash is that of its file's content, written as plateau-run/1 with its method.</source>
            <translation>Der Lauf steht in keinem Laborjournal: Der Hash ist der des Inhalts seiner Datei, geschrieben als plateau-run/1 mit seiner Methode.</translation>
        </message>
        <message>
            <source>Reviewed on %1: %2%3</source>
            <translation>Bewertet am %1: %2%3</translation>
        </message>
        <message>
            <source> (the same)</source>
            <translation> (derselbe)</translation>
        </message>
        <message>
            <source> (another: it was changed since)</source>
            <translation> (ein anderer: seitdem geändert)</translation>
        </message>
        <message numerus="yes">
            <source>Audit: %n entries, head %1</source>
            <translation>
                <numerusform>Audit: %n Eintrag, Kopf %1</numerusform>
                <numerusform>Audit: %n Einträge, Kopf %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record %1</source>
            <translation>Laufprotokoll %1</translation>
        </message>
        <message>
            <source>run record %1, revision %2</source>
            <translation>Laufprotokoll %1, Revision %2</translation>
        </message>
        <message>
            <source>COPY</source>
            <translation>KOPIE</translation>
        </message>
        <message>
            <source>Run record %1, revision %2, made %3 with Plateau %4; content %5</source>
            <translation>Laufprotokoll %1, Revision %2, erstellt %3 mit Plateau %4; Inhalt %5</translation>
        </message>
        <message>
            <source>Result: %1.</source>
            <translation>Ergebnis: %1.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>nicht berichtet</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>Kontrollprobe %1</translation>
        </message>
        <message>
            <source>Run record %1</source>
            <comment>a file name</comment>
            <translation>Laufprotokoll %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunStates</name>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>in Arbeit</translation>
        </message>
        <message>
            <source>%1, and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunsModel</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Methode</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Entschieden von</translation>
        </message>
        <message>
            <source>Checks that failed</source>
            <translation>Nicht bestandene Prüfungen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoices</name>
        <message>
            <source>no result</source>
            <translation>kein Ergebnis</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>1 sample</source>
            <translation>1 Probe</translation>
        </message>
        <message>
            <source>%1 samples</source>
            <translation>%1 Proben</translation>
        </message>
        <message>
            <source>repeated in this rack as %1</source>
            <translation>in diesem Rack wiederholt als %1</translation>
        </message>
        <message>
            <source>undecided</source>
            <translation>nicht entschieden</translation>
        </message>
        <message>
            <source>as the run</source>
            <translation>wie der Lauf</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>verworfen</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>wiederholen</translation>
        </message>
        <message>
            <source>read it, then decide</source>
            <translation>ablesen, dann entscheiden</translation>
        </message>
        <message>
            <source>look into its checks, then decide</source>
            <translation>die Prüfungen ansehen, dann entscheiden</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>nicht berichtet</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>berichtet</translation>
        </message>
        <message>
            <source>repeats %1 (%2)</source>
            <translation>%1 wiederholt (%2)</translation>
        </message>
        <message>
            <source>rejects %1</source>
            <translation>%1 verworfen</translation>
        </message>
        <message>
            <source>There is no sample in this run.</source>
            <translation>In diesem Lauf ist keine Probe.</translation>
        </message>
        <message>
            <source>back to the samples that wait</source>
            <translation>zurück zu den wartenden Proben</translation>
        </message>
        <message>
            <source>back to the samples that wait: %1</source>
            <translation>zurück zu den wartenden Proben: %1</translation>
        </message>
        <message>
            <source>reports %1</source>
            <translation>%1 berichtet</translation>
        </message>
        <message>
            <source>leaves %1 undecided</source>
            <translation>%1 offen</translation>
        </message>
        <message>
            <source>If accepted: %1.</source>
            <translation>Bei Annahme: %1.</translation>
        </message>
        <message>
            <source>If rejected: %1.</source>
            <translation>Bei Verwerfen: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesModel</name>
        <message>
            <source>as advised</source>
            <translation>wie empfohlen</translation>
        </message>
        <message>
            <source>say why</source>
            <translation>Grund angeben</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Repeat how</source>
            <translation>Wie wiederholen</translation>
        </message>
        <message>
            <source>If the run is accepted</source>
            <translation>Wenn der Lauf angenommen wird</translation>
        </message>
        <message>
            <source>as in this run</source>
            <translation>wie in diesem Lauf</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesTable</name>
        <message>
            <source>20, 5 to 100, or 0.5 mL</source>
            <translation>20, 5 auf 100 oder 0,5 mL</translation>
        </message>
        <message>
            <source>Decisions of single samples</source>
            <translation>Entscheidungen über einzelne Proben</translation>
        </message>
        <message>
            <source>A accepts, R rejects, W repeats the chosen samples, Delete leaves them to the run; Enter edits, Ctrl+A chooses all. For a repeat, type another dilution (20), its steps (5 to 100) or another sample volume (0.5 mL).</source>
            <translation>A nimmt die gewählten Proben an, R verwirft, W wiederholt sie, Entf überlässt sie dem Lauf; Enter bearbeitet, Strg+A wählt alle. Bei einer Wiederholung lassen sich eine andere Verdünnung (20), ihre Schritte (5 auf 100) oder ein anderes Probenvolumen (0,5 mL) eintippen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSection</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Was für jede Probe geplant ist</translation>
        </message>
        <message>
            <source>Take from the &amp;queue…</source>
            <translation>Aus der &amp;Warteliste übernehmen…</translation>
        </message>
        <message>
            <source>P&amp;ropose dilutions</source>
            <translation>Verdünnungen &amp;vorschlagen</translation>
        </message>
        <message>
            <source>Add a d&amp;ilution step</source>
            <translation>Verd&amp;ünnungsschritt hinzufügen</translation>
        </message>
        <message>
            <source>Ta&amp;ke the last step away</source>
            <translation>Letzten Schritt ent&amp;fernen</translation>
        </message>
        <message>
            <source>Type what is expected, Enter goes down, and let the dilutions be proposed, or type them. Left empty: undiluted, and the method's own volume in the tube.</source>
            <translation>Die Erwartung eingeben, Enter geht nach unten, und die Verdünnungen vorschlagen lassen oder eingeben. Leer gelassen: unverdünnt und das Volumen der Methode im Ansatz.</translation>
        </message>
        <message>
            <source>First type what is expected of at least one sample, or a product that was run before: the dilution follows from it.</source>
            <translation>Zuerst bei mindestens einer Probe die Erwartung eingeben oder ein bereits gemessenes Produkt: Daraus folgt die Verdünnung.</translation>
        </message>
        <message>
            <source>Dilutions proposed: %1, to be run undiluted: %2. They can be overwritten.</source>
            <translation>Vorgeschlagene Verdünnungen: %1, unverdünnt zu messen: %2. Sie lassen sich überschreiben.</translation>
        </message>
        <message>
            <source>%1 Expected from the last results of the same product: %2.</source>
            <translation>%1 Erwartet nach den letzten Ergebnissen desselben Produkts: %2.</translation>
        </message>
        <message>
            <source>%1 Volume of sample in the tube set as well: %2.</source>
            <translation>%1 Auch das Probenvolumen im Ansatz wurde gesetzt: %2.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>%1 %2 mL</source>
            <translation>%1 %2 mL</translation>
        </message>
        <message>
            <source>%1 %2 mL, the method's</source>
            <translation>%1 %2 mL, das der Methode</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSignals</name>
        <message>
            <source>%1 weak</source>
            <translation>%1 schwach</translation>
        </message>
        <message>
            <source>%1 strong</source>
            <translation>%1 stark</translation>
        </message>
        <message>
            <source>%1: enter its mass and extract first.</source>
            <translation>%1: zuerst Masse und Extrakt angeben.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesModel</name>
        <message>
            <source>%1 (method)</source>
            <translation>%1 (Methode)</translation>
        </message>
        <message>
            <source>g/100 g</source>
            <translation>g/100 g</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>%1 expected (%2)</source>
            <translation>%1 erwartet (%2)</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Erwartet (%1)</translation>
        </message>
        <message>
            <source>Mass (g)</source>
            <translation>Masse (g)</translation>
        </message>
        <message>
            <source>Extract (mL)</source>
            <translation>Extrakt (mL)</translation>
        </message>
        <message>
            <source>In the tube (mL)</source>
            <translation>Im Ansatz (mL)</translation>
        </message>
        <message>
            <source>%1 signal</source>
            <translation>%1 Signal</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Sample blank</source>
            <translation>Probenblindwert</translation>
        </message>
        <message>
            <source>Spike of the standard (mL)</source>
            <translation>Aufstockung mit dem Standard (mL)</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrix</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Eingegangen am</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>%1: take (mL)</source>
            <translation>%1: Entnahme (mL)</translation>
        </message>
        <message>
            <source>Take (mL)</source>
            <translation>Entnahme (mL)</translation>
        </message>
        <message>
            <source>%1: make up to (mL)</source>
            <translation>%1: auffüllen auf (mL)</translation>
        </message>
        <message>
            <source>Make up to (mL)</source>
            <translation>Auffüllen auf (mL)</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Faktor</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
        <message>
            <source>Samples that wait</source>
            <translation>Wartende Proben</translation>
        </message>
        <message>
            <source>Fin&amp;d by sample, product, reason or sender</source>
            <translation>Probe, Produkt, Grund oder Einsender &amp;finden</translation>
        </message>
        <message>
            <source>No sample waits. Register what came in; a repeat that a run advises comes here by itself.</source>
            <translation>Keine Probe wartet. Eingegangenes anmelden; eine Wiederholung, die ein Lauf empfiehlt, kommt von selbst hierher.</translation>
        </message>
        <message>
            <source>No sample contains all of these words. Remove one to find more.</source>
            <translation>Keine Probe hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>&amp;Register samples…</source>
            <translation>Proben an&amp;melden…</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>&amp;Ändern…</translation>
        </message>
        <message>
            <source>R&amp;eason not to run it</source>
            <translation>&amp;Grund, sie nicht zu messen</translation>
        </message>
        <message>
            <source>&amp;Withdraw</source>
            <translation>&amp;Zurückziehen</translation>
        </message>
        <message>
            <source>Wa&amp;ive the repeat</source>
            <translation>Auf Wiederholung &amp;verzichten</translation>
        </message>
        <message>
            <source>Choose what is meant: withdraw what was registered, or waive the repeat.</source>
            <translation>Wählen, was gemeint ist: Angemeldetes zurückziehen oder auf die Wiederholung verzichten.</translation>
        </message>
        <message>
            <source>&amp;Complete what is known…</source>
            <translation>Bekanntes &amp;ergänzen…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Choose a sample to change it or to take it off the list.</source>
            <translation>Eine Probe wählen, um sie zu ändern oder von der Liste zu nehmen.</translation>
        </message>
        <message>
            <source>There are samples that are not stored yet: register or leave them first.</source>
            <translation>Es gibt noch nicht gespeicherte Proben: zuerst anmelden oder verlassen.</translation>
        </message>
        <message>
            <source>Say in the line below why it will not be run; the notebook's history keeps it.</source>
            <translation>In der Zeile unten angeben, warum sie nicht gemessen wird; der Verlauf des Laborjournals bewahrt es auf.</translation>
        </message>
        <message>
            <source>%1 was withdrawn.</source>
            <translation>%1 wurde zurückgezogen.</translation>
        </message>
        <message>
            <source>The repeat of %1 that run %2 advises will not be made.</source>
            <translation>Die Wiederholung von %1, die Lauf %2 empfiehlt, wird nicht durchgeführt.</translation>
        </message>
        <message>
            <source>The change of %1 is stored.</source>
            <translation>Die Änderung von %1 ist gespeichert.</translation>
        </message>
        <message>
            <source>Samples that are not registered yet</source>
            <translation>Proben, die noch nicht angemeldet sind</translation>
        </message>
        <message>
            <source>Registered: %1.</source>
            <translation>Angemeldet: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesTable</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Was für jede Probe geplant ist</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SchedulePicture</name>
        <message>
            <source>mix</source>
            <translation>mischen</translation>
        </message>
        <message>
            <source>This rack</source>
            <translation>Dieses Rack</translation>
        </message>
        <message>
            <source>Second rack</source>
            <translation>Zweites Rack</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SerialSource</name>
        <message>
            <source>serial port %1</source>
            <translation>serielle Schnittstelle %1</translation>
        </message>
        <message>
            <source>there is no such port; check cable and name</source>
            <translation>diese Schnittstelle gibt es nicht; Kabel und Namen prüfen</translation>
        </message>
        <message>
            <source>another program has it, or your account may not use serial ports (on Debian the group dialout may)</source>
            <translation>ein anderes Programm belegt sie, oder das Benutzerkonto darf keine seriellen Schnittstellen verwenden (unter Debian darf es die Gruppe dialout)</translation>
        </message>
        <message>
            <source>it can't be set to this speed and format</source>
            <translation>sie lässt sich nicht auf diese Geschwindigkeit und dieses Format einstellen</translation>
        </message>
        <message>
            <source>the cable or the adapter was unplugged, or the photometer is off</source>
            <translation>Kabel oder Adapter wurde abgezogen, oder das Photometer ist ausgeschaltet</translation>
        </message>
        <message>
            <source>the adapter was unplugged</source>
            <translation>der Adapter wurde abgezogen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SettingsForm</name>
        <message>
            <source>Earlier runs</source>
            <translation>Frühere Läufe</translation>
        </message>
        <message>
            <source>values</source>
            <translation>Werte</translation>
        </message>
        <message>
            <source>Begin at the chosen point</source>
            <translation>Mit dem gewählten Punkt beginnen</translation>
        </message>
        <message>
            <source>Begin at the first run</source>
            <translation>Mit dem ersten Lauf beginnen</translation>
        </message>
        <message>
            <source>Fixed by the laboratory</source>
            <translation>Vom Labor festgelegt</translation>
        </message>
        <message>
            <source>Out of control if</source>
            <translation>Außer Kontrolle, wenn</translation>
        </message>
        <message>
            <source>Save these settings</source>
            <translation>Diese Einstellungen speichern</translation>
        </message>
        <message>
            <source>&amp;Kind of chart</source>
            <translation>Art &amp;der Karte</translation>
        </message>
        <message>
            <source>Limit&amp;s</source>
            <translation>Gren&amp;zen</translation>
        </message>
        <message>
            <source>from earlier runs</source>
            <translation>aus früheren Läufen</translation>
        </message>
        <message>
            <source>fixed by the laboratory</source>
            <translation>vom Labor festgelegt</translation>
        </message>
        <message>
            <source>Values of a subgroup</source>
            <translation>Werte einer Untergruppe</translation>
        </message>
        <message>
            <source>Weight of the newest value</source>
            <translation>Gewicht des neuesten Werts</translation>
        </message>
        <message>
            <source>Width of the limits</source>
            <translation>Breite der Grenzen</translation>
        </message>
        <message>
            <source>Reference value k</source>
            <translation>Referenzwert k</translation>
        </message>
        <message>
            <source>Decision limit h</source>
            <translation>Entscheidungsgrenze h</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>berechnet</translation>
        </message>
        <message>
            <source>from the printed table (three decimals)</source>
            <translation>aus der gedruckten Tabelle (drei Dezimalstellen)</translation>
        </message>
        <message>
            <source>Factors</source>
            <translation>Faktoren</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>from the moving range</source>
            <translation>aus der gleitenden Spannweite</translation>
        </message>
        <message>
            <source>from all values</source>
            <translation>aus allen Werten</translation>
        </message>
        <message>
            <source>Scatter</source>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>Centre</source>
            <translation>Mittellinie</translation>
        </message>
        <message>
            <source>Standard deviation</source>
            <translation>Standardabweichung</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>Stand</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Was außer Kontrolle ist</translation>
        </message>
        <message>
            <source>From the first run of the series onwards.</source>
            <translation>Ab dem ersten Lauf der Reihe.</translation>
        </message>
        <message>
            <source>From run %1 onwards.</source>
            <translation>Ab Lauf %1.</translation>
        </message>
        <message>
            <source>%1: a number is missing or cannot be read.</source>
            <translation>%1: Eine Zahl fehlt oder ist nicht lesbar.</translation>
        </message>
        <message>
            <source>%1: a whole number is needed.</source>
            <translation>%1: Eine ganze Zahl ist nötig.</translation>
        </message>
        <message>
            <source>At least %1. With fewer than %2 the limits are provisional.</source>
            <translation>Mindestens %1. Mit weniger als %2 sind die Grenzen vorläufig.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfDraft</name>
        <message>
            <source>%1 is not a matrix; choose one of: %2.</source>
            <translation>%1 ist keine Matrix; eine von diesen wählen: %2.</translation>
        </message>
        <message>
            <source>%1 is not a form; a sample is liquid or solid.</source>
            <translation>%1 ist keine Form; eine Probe ist flüssig oder fest.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 is still to come; give the time when it came in.</source>
            <translation>%1 liegt noch in der Zukunft; die Zeit des Eingangs angeben.</translation>
        </message>
        <message>
            <source>%1 does not end in a number; write the measurand and the amount in g/L, for a solid in g/100 g, as in %2.</source>
            <translation>%1 endet nicht mit einer Zahl; die Messgröße und die Menge in g/L schreiben, bei Feststoffen in g/100 g, wie in %2.</translation>
        </message>
        <message>
            <source>Say what %1 is expected of, as in %2.</source>
            <translation>Angeben, wovon %1 erwartet wird, wie in %2.</translation>
        </message>
        <message>
            <source>No method measures %1; there are: %2.</source>
            <translation>Keine Methode misst %1; es gibt: %2.</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>glucose</source>
            <translation>Glucose</translation>
        </message>
        <message>
            <source>%1 stands in line %2 already; each sample needs an id of its own.</source>
            <translation>%1 steht bereits in Zeile %2; jede Probe braucht eine eigene Kennung.</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrix</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Eingegangen am</translation>
        </message>
        <message>
            <source>Received from</source>
            <translation>Erhalten von</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Erwartet</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Fest</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Flüssig</translation>
        </message>
        <message>
            <source>clear</source>
            <translation>klar</translation>
        </message>
        <message>
            <source>protein</source>
            <translation>Protein</translation>
        </message>
        <message>
            <source>%1 is not a time; write the day as %2, with the time as %2 8:10, or the time alone for the last day.</source>
            <translation>%1 ist keine Zeit; den Tag schreiben wie %2, mit Uhrzeit wie %2 8:10 oder die Uhrzeit allein für den letzten Tag.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfModel</name>
        <message>
            <source>Why it waits</source>
            <translation>Warum sie wartet</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfPaste</name>
        <message>
            <source>id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>sample id</source>
            <translation>Probenkennung</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>received</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>received on</source>
            <translation>eingegangen am</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>from</source>
            <translation>von</translation>
        </message>
        <message>
            <source>sender</source>
            <translation>Einsender</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>%1 expected</source>
            <translation>%1 erwartet</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Lines pasted: %1</source>
            <translation>Eingefügte Zeilen: %1</translation>
        </message>
        <message>
            <source>Not understood and left out: column %1.</source>
            <translation>Nicht verstanden und weggelassen: Spalte %1.</translation>
        </message>
        <message>
            <source>There is no text to paste. Copy the cells in the spreadsheet first.</source>
            <translation>Es gibt keinen Text einzufügen. Zuerst die Zellen in der Tabellenkalkulation kopieren.</translation>
        </message>
        <message>
            <source>%1 lines are more than are taken at once; paste at most %2.</source>
            <translation>%1 Zeilen sind mehr, als auf einmal übernommen werden; höchstens %2 einfügen.</translation>
        </message>
        <message>
            <source>%1. Columns by their heads: %2.</source>
            <translation>%1. Spalten nach den Überschriften: %2.</translation>
        </message>
        <message>
            <source>%1. Columns by their order: %2.</source>
            <translation>%1. Spalten nach ihrer Reihenfolge: %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SideBar</name>
        <message>
            <source>Racks and books</source>
            <translation>Racks und Bücher</translation>
        </message>
        <message>
            <source>&amp;Person at the bench</source>
            <translation>&amp;Person am Arbeitsplatz</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>Ne&amp;uer Lauf</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>Laufdatei &amp;öffnen…</translation>
        </message>
        <message>
            <source>%1 is a number and no name: was a reading meant?</source>
            <translation>%1 ist eine Zahl und kein Name: War eine Ablesung gemeint?</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignalSection</name>
        <message>
            <source>What each measurand takes from the readings</source>
            <translation>Was jede Messgröße aus den Ablesungen nimmt</translation>
        </message>
        <message>
            <source>Difference: to less from where the absorbance rises, from less to where it falls. Coupled indicator: an equilibrium before the reaction takes part of the coenzyme.</source>
            <translation>Differenz: bis minus von, wo die Extinktion steigt, von minus bis, wo sie fällt. Gekoppelter Indikator: Ein Gleichgewicht vor der Reaktion nimmt einen Teil des Coenzyms.</translation>
        </message>
        <message>
            <source>Absorptivities of the chromophore</source>
            <translation>Extinktionskoeffizienten des Chromophors</translation>
        </message>
        <message>
            <source>One row for each wavelength that may be read at.</source>
            <translation>Eine Zeile für jede Wellenlänge, bei der abgelesen werden darf.</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophor</translation>
        </message>
        <message>
            <source>The reaction</source>
            <translation>Die Reaktion</translation>
        </message>
        <message>
            <source>makes the chromophore (absorbance rises)</source>
            <translation>bildet den Chromophor (Extinktion steigt)</translation>
        </message>
        <message>
            <source>uses it up (absorbance falls)</source>
            <translation>verbraucht ihn (Extinktion fällt)</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Wellenlänge</translation>
        </message>
        <message>
            <source>nm</source>
            <translation>nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Readings count</source>
            <translation>Ablesungen zählen</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>wie abgelesen</translation>
        </message>
        <message>
            <source>brought to the volume of the later reading</source>
            <translation>auf das Volumen der späteren Ablesung bezogen</translation>
        </message>
        <message>
            <source>A reading taken as a series</source>
            <translation>Eine als Ablesereihe vorgenommene Ablesung</translation>
        </message>
        <message>
            <source>Where the absorbance keeps creeping: a straight line through the last readings of a series, read at the moment the starter was added. Leave both empty for none.</source>
            <translation>Wo die Extinktion weiterkriecht: eine Gerade durch die letzten Ablesungen einer Ablesereihe, abgelesen im Moment der Zugabe des Startreagenzes. Beides leer lassen für keine.</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>Readings on the line</source>
            <translation>Ablesungen auf der Geraden</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignatureFields</name>
        <message>
            <source>unsigned: nobody is set up</source>
            <translation>nicht signiert: keine Personen sind eingerichtet</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardForm</name>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% pro Stunde</translation>
        </message>
        <message>
            <source>From the book</source>
            <translation>Aus dem Buch</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Concentration when made</source>
            <translation>Konzentration bei Herstellung</translation>
        </message>
        <message>
            <source>u of the strength</source>
            <translation>u des Gehalts</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>Relative standard uncertainty (k = 1), from its recipe or its certificate. It counts where the run is calibrated by its standard.</source>
            <translation>Relative Standardunsicherheit (k = 1), aus Vorschrift oder Zertifikat. Sie zählt, wo der Lauf über seinen Standard kalibriert wird.</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Gehaltsverlust</translation>
        </message>
        <message>
            <source>Prepared at</source>
            <translation>Hergestellt</translation>
        </message>
        <message>
            <source>Used</source>
            <translation>Verwendet</translation>
        </message>
        <message>
            <source>Used at</source>
            <translation>Verwendet am</translation>
        </message>
        <message>
            <source>Tubes with it</source>
            <translation>Ansätze damit</translation>
        </message>
        <message>
            <source>the method's; several make a line: 0.05; 0.1; 0.2</source>
            <translation>das der Methode; mehrere ergeben eine Gerade: 0,05; 0,1; 0,2</translation>
        </message>
        <message>
            <source>Volumes in the tube (mL)</source>
            <translation>Volumina im Ansatz (mL)</translation>
        </message>
        <message>
            <source>another one, keyed below</source>
            <translation>ein anderer, unten eingegeben</translation>
        </message>
        <message>
            <source>%1, %2, made %3</source>
            <translation>%1, %2, hergestellt %3</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>das Standardbuch, hergestellt %1</translation>
        </message>
        <message>
            <source>when it goes into its first tube</source>
            <translation>wenn er in den ersten Ansatz kommt</translation>
        </message>
        <message>
            <source>Used when it goes into its first tube</source>
            <translation>Verwendet, wenn er in den ersten Ansatz kommt</translation>
        </message>
        <message>
            <source>Known value</source>
            <translation>Bekannter Wert</translation>
        </message>
        <message>
            <source>Taken from the book, where it is the only one in date; choose or key another if this is not it.</source>
            <translation>Aus dem Buch genommen, wo er als einziger verwendbar ist; einen anderen wählen oder eingeben, wenn es nicht dieser ist.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Standards</name>
        <message>
            <source>%1 min</source>
            <translation>%1 min</translation>
        </message>
        <message>
            <source>%1 h %2 min</source>
            <translation>%1 h %2 min</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 Tage</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>entsorgt</translation>
        </message>
        <message>
            <source>keeps its strength</source>
            <translation>behält seinen Gehalt</translation>
        </message>
        <message>
            <source>past its time since %1</source>
            <translation>abgelaufen seit %1</translation>
        </message>
        <message>
            <source>good for %1, until %2</source>
            <translation>bis %2 verwendbar, noch %1</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>The purity</source>
            <translation>Die Reinheit</translation>
        </message>
        <message>
            <source>The uncertainty of the purity</source>
            <translation>Die Unsicherheit der Reinheit</translation>
        </message>
        <message>
            <source>The water content</source>
            <translation>Der Wassergehalt</translation>
        </message>
        <message>
            <source>The uncertainty of the water</source>
            <translation>Die Unsicherheit des Wassers</translation>
        </message>
        <message>
            <source>The molar mass</source>
            <translation>Die molare Masse</translation>
        </message>
        <message>
            <source>The density</source>
            <translation>Die Dichte</translation>
        </message>
        <message>
            <source>The last good day</source>
            <translation>Der letzte Verwendungstag</translation>
        </message>
        <message>
            <source>What it is for</source>
            <translation>Wofür sie ist</translation>
        </message>
        <message>
            <source>Analyte molecules in one</source>
            <translation>Analytmoleküle je Molekül</translation>
        </message>
        <message>
            <source>Weighed</source>
            <translation>Eingewogen</translation>
        </message>
        <message>
            <source>The uncertainty of a weighing</source>
            <translation>Die Unsicherheit einer Wägung</translation>
        </message>
        <message>
            <source>The flask's volume</source>
            <translation>Das Volumen des Messkolbens</translation>
        </message>
        <message>
            <source>The uncertainty of the flask</source>
            <translation>Die Unsicherheit des Messkolbens</translation>
        </message>
        <message>
            <source>The time it was made</source>
            <translation>Die Herstellungszeit</translation>
        </message>
        <message>
            <source>The loss of strength</source>
            <translation>Der Gehaltsverlust</translation>
        </message>
        <message>
            <source>The rule for its use</source>
            <translation>Die Vorgabe für die Verwendung</translation>
        </message>
        <message>
            <source>That is your own rule, %1 after it was made.</source>
            <translation>Das ist die eigene Vorgabe, %1 nach der Herstellung.</translation>
        </message>
        <message>
            <source>Then its loss leaves %1 of its strength, the least that may be used.</source>
            <translation>Dann sind durch den Verlust noch %1 des Gehalts übrig, weniger darf nicht verwendet werden.</translation>
        </message>
        <message>
            <source>That is %1 after it was made, the oldest that may be used.</source>
            <translation>Das ist %1 nach der Herstellung, älter darf er nicht verwendet werden.</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, bis %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsModel</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Strength now</source>
            <translation>Gehalt jetzt</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Status</translation>
        </message>
        <message>
            <source>When made (k = 2)</source>
            <translation>Bei Herstellung (k = 2)</translation>
        </message>
        <message>
            <source>Made at</source>
            <translation>Hergestellt</translation>
        </message>
        <message>
            <source>Made of</source>
            <translation>Hergestellt aus</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Von</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsPage</name>
        <message>
            <source>Standards</source>
            <translation>Standards</translation>
        </message>
        <message>
            <source>Standards that were made</source>
            <translation>Hergestellte Standards</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, substance or state</source>
            <translation>Name, Substanz oder Status &amp;finden</translation>
        </message>
        <message>
            <source>No standard is in the book yet. Prepare one: its strength then counts down here, and a new run takes it with its uncertainty.</source>
            <translation>Noch ist kein Standard im Buch. Einen herstellen: Hier ist dann zu sehen, wie sein Gehalt abnimmt, und ein neuer Lauf übernimmt ihn mit seiner Unsicherheit.</translation>
        </message>
        <message>
            <source>No standard contains all of these words. Remove one to find more.</source>
            <translation>Kein Standard hat alle diese Wörter. Eines wegnehmen, um mehr zu finden.</translation>
        </message>
        <message>
            <source>P&amp;repare a standard…</source>
            <translation>Stan&amp;dard herstellen…</translation>
        </message>
        <message>
            <source>A standard or a substance, not stored yet</source>
            <translation>Ein Standard oder eine Substanz, noch nicht gespeichert</translation>
        </message>
        <message>
            <source>In the book: %1.</source>
            <translation>Im Buch: %1.</translation>
        </message>
        <message>
            <source>In the book. Print its label; a new run takes it by its name.</source>
            <translation>Im Buch. Sein Etikett drucken; ein neuer Lauf übernimmt ihn mit seinem Namen.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Zuerst angeben, wer am Arbeitsplatz ist: links den Namen eingeben und Enter drücken, dann den Vorgang wiederholen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubjectForm</name>
        <message>
            <source>what was re&amp;jected too</source>
            <translation>auch ver&amp;worfene</translation>
        </message>
        <message>
            <source>Ch&amp;art of</source>
            <translation>&amp;Karte von</translation>
        </message>
        <message>
            <source>b&amp;y</source>
            <translation>na&amp;ch</translation>
        </message>
        <message>
            <source>&amp;measured</source>
            <translation>&amp;Messgröße</translation>
        </message>
        <message>
            <source>&amp;in</source>
            <translation>i&amp;n</translation>
        </message>
        <message>
            <source>Only lo&amp;t</source>
            <translation>Nur Char&amp;ge</translation>
        </message>
        <message>
            <source>by p&amp;erson</source>
            <translation>&amp;von Person</translation>
        </message>
        <message>
            <source>on photometer</source>
            <translation>am Photometer</translation>
        </message>
        <message>
            <source>f&amp;rom</source>
            <translation>v&amp;on</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>all of them</source>
            <translation>alle</translation>
        </message>
        <message>
            <source>any</source>
            <translation>beliebig</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>anybody</source>
            <translation>alle Personen</translation>
        </message>
        <message>
            <source>%1 (all standards of it)</source>
            <translation>%1 (alle Standards daraus)</translation>
        </message>
        <message>
            <source>all of them, without limits</source>
            <translation>alle zusammen, ohne Grenzen</translation>
        </message>
        <message>
            <source>%1 is not a date yet: write it as %2.</source>
            <translation>%1 ist noch kein Tag: schreiben wie %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubstanceForm</name>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>S&amp;upplier</source>
            <translation>Lie&amp;ferant</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>&amp;Charge</translation>
        </message>
        <message>
            <source>&amp;Certificate</source>
            <translation>Zertifi&amp;kat</translation>
        </message>
        <message>
            <source>Pur&amp;ity (%)</source>
            <translation>&amp;Reinheit (%)</translation>
        </message>
        <message>
            <source>&amp;Water beyond the formula (%)</source>
            <translation>&amp;Wasser über die Formel hinaus (%)</translation>
        </message>
        <message>
            <source>&amp;Molar mass, crystal water included (g/mol)</source>
            <translation>&amp;Molare Masse, mit Kristallwasser (g/mol)</translation>
        </message>
        <message>
            <source>Densit&amp;y of a liquid (g/mL)</source>
            <translation>&amp;Dichte einer Flüssigkeit (g/mL)</translation>
        </message>
        <message>
            <source>Last good &amp;day</source>
            <translation>Letzter Verwendungs&amp;tag</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Grund der &amp;Änderung</translation>
        </message>
        <message>
            <source>Of the substance without the water below.</source>
            <translation>Der Substanz ohne das Wasser unten.</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Ins Buch &amp;eintragen</translation>
        </message>
        <message>
            <source>Add a substance</source>
            <translation>Substanz hinzufügen</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>%1 ändern</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Angeben, warum geändert wird; das Buch bewahrt es auf.</translation>
        </message>
        <message>
            <source>Purity, half-width ± (%)</source>
            <translation>Reinheit, halbe Breite ± (%)</translation>
        </message>
        <message>
            <source>Water, half-width ± (%)</source>
            <translation>Wasser, halbe Breite ± (%)</translation>
        </message>
        <message>
            <source>Half of the width in which the value lies for certain, as a certificate states it; taken as a rectangular distribution.</source>
            <translation>Die halbe Breite des Bereichs, in dem der Wert sicher liegt, wie ein Zertifikat sie nennt; als Rechteckverteilung genommen.</translation>
        </message>
        <message>
            <source>Back  Esc</source>
            <translation>Zurück  Esc</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Wie %1, oder ein Monat wie %2. Leer, wo keiner angegeben ist.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TakingsModel</name>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>By way of</source>
            <translation>Aus Gebinde</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TextSection</name>
        <message>
            <source>Preparation of the sample, by what it is like</source>
            <translation>Vorbereitung der Probe, je nach Beschaffenheit</translation>
        </message>
        <message>
            <source>Cautions, one per line</source>
            <translation>Warnhinweise, einer je Zeile</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Prinzip</translation>
        </message>
        <message>
            <source>Reactions, one per line</source>
            <translation>Reaktionen, eine je Zeile</translation>
        </message>
        <message>
            <source>What interferes, one per line</source>
            <translation>Was stört, eines je Zeile</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Es gibt noch nichts darzustellen.</translation>
        </message>
        <message>
            <source>Row %1 of %2, %3</source>
            <translation>Zeile %1 von %2, %3</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>add</source>
            <translation>zugeben</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>warten</translation>
        </message>
        <message>
            <source>read</source>
            <translation>ablesen</translation>
        </message>
        <message>
            <source>time for it</source>
            <translation>Zeit dafür</translation>
        </message>
        <message>
            <source>due</source>
            <translation>fällig</translation>
        </message>
        <message>
            <source>late</source>
            <translation>spät</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>free %1</source>
            <translation>frei %1</translation>
        </message>
        <message>
            <source>hands</source>
            <translation>Hände</translation>
        </message>
        <message>
            <source>addition</source>
            <translation>Zugabe</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>next step</source>
            <translation>nächster Schritt</translation>
        </message>
        <message>
            <source>%1 late since %2</source>
            <translation>%1 verspätet seit %2</translation>
        </message>
        <message>
            <source>%1 due now</source>
            <translation>%1 jetzt fällig</translation>
        </message>
        <message>
            <source>%1 due now, until %2</source>
            <translation>%1 jetzt fällig, bis %2</translation>
        </message>
        <message>
            <source>%1 due from %2</source>
            <translation>%1 fällig ab %2</translation>
        </message>
        <message>
            <source>%1 due %2 to %3</source>
            <translation>%1 fällig %2 bis %3</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Hands free from %1 to %2</source>
            <translation>Hände frei von %1 bis %2</translation>
        </message>
        <message>
            <source>As of %1</source>
            <translation>Stand %1</translation>
        </message>
        <message>
            <source>Now %1</source>
            <translation>Jetzt %1</translation>
        </message>
        <message>
            <source>%1 read early by %2</source>
            <translation>%1 um %2 zu früh abgelesen</translation>
        </message>
        <message>
            <source>%1 read late by %2</source>
            <translation>%1 um %2 zu spät abgelesen</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>unbrauchbar</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 um %2 verspätet</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimePanel</name>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>&amp;Judge a second rack in its waiting times</source>
            <translation>Zweites Rack in den Wartezeiten &amp;beurteilen</translation>
        </message>
        <message>
            <source>Time at the bench</source>
            <translation>Zeit am Arbeitsplatz</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Ansätze über der Zeit</translation>
        </message>
        <message>
            <source>Max. time at the bench</source>
            <translation>Max. Zeit am Arbeitsplatz</translation>
        </message>
        <message>
            <source>Its method</source>
            <translation>Seine Methode</translation>
        </message>
        <message>
            <source>Its tubes</source>
            <translation>Seine Ansätze</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeWords</name>
        <message>
            <source>in %1</source>
            <translation>in %1</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>seit %1</translation>
        </message>
        <message>
            <source>now, %1 left</source>
            <translation>jetzt, noch %1</translation>
        </message>
        <message>
            <source>late by %1</source>
            <translation>um %1 verspätet</translation>
        </message>
        <message>
            <source>%1 min %2 s</source>
            <translation>%1 min %2 s</translation>
        </message>
        <message>
            <source>%1 h %2 min</source>
            <translation>%1 h %2 min</translation>
        </message>
        <message>
            <source>%1 back</source>
            <translation>%1 zurück</translation>
        </message>
        <message>
            <source>%1 forward</source>
            <translation>%1 vor</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayLines</name>
        <message>
            <source>%1: %2 of %3 read.</source>
            <translation>%1: %2 von %3 abgelesen.</translation>
        </message>
        <message>
            <source>%1 %2, %3.</source>
            <translation>%1 %2, %3.</translation>
        </message>
        <message>
            <source>%1 %2.</source>
            <translation>%1 %2.</translation>
        </message>
        <message>
            <source>revision %1</source>
            <translation>Revision %1</translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) to repeat</source>
            <translation>
                <numerusform>%n Probe zu wiederholen</numerusform>
                <numerusform>%n Proben zu wiederholen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) rejected</source>
            <translation>
                <numerusform>%n Probe verworfen</numerusform>
                <numerusform>%n Proben verworfen</numerusform>
            </translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>nicht signiert</translation>
        </message>
        <message>
            <source>Run %1, %2: accepted by %3, %4</source>
            <translation>Lauf %1, %2: angenommen von %3, %4</translation>
        </message>
        <message>
            <source>Run %1, %2: rejected by %3, %4</source>
            <translation>Lauf %1, %2: verworfen von %3, %4</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 now, %3</source>
            <translation>%1: %2 jetzt, %3</translation>
        </message>
        <message>
            <source>%1, lot %2: %3</source>
            <translation>%1, Charge %2: %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayPage</name>
        <message>
            <source>On the bench</source>
            <translation>In Arbeit</translation>
        </message>
        <message>
            <source>Nothing is on the bench. Start with New run, or open a run file.</source>
            <translation>Nichts ist in Arbeit. Mit Neuer Lauf beginnen oder eine Laufdatei öffnen.</translation>
        </message>
        <message>
            <source>Waiting to be run</source>
            <translation>Warten auf einen Lauf</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Samples; repeats that decided runs advise come by themselves.</source>
            <translation>Keine Probe wartet. Proben werden unter Proben angemeldet; Wiederholungen, die entschiedene Läufe empfehlen, kommen von selbst.</translation>
        </message>
        <message>
            <source>Standards that can be used</source>
            <translation>Verwendbare Standards</translation>
        </message>
        <message>
            <source>No standard can be used. Fresh ones are entered under Standards.</source>
            <translation>Kein Standard ist verwendbar. Ein frischer wird unter Standards eingetragen.</translation>
        </message>
        <message>
            <source>Falling due</source>
            <translation>Fällig oder knapp</translation>
        </message>
        <message>
            <source>No check of equipment falls due, and no lot runs out, in the next days.</source>
            <translation>In den nächsten Tagen wird keine Geräteprüfung fällig, und keine Charge läuft ab.</translation>
        </message>
        <message>
            <source>Decided last</source>
            <translation>Zuletzt entschieden</translation>
        </message>
        <message>
            <source>No run has been decided on yet. Decided runs are kept in the Notebook.</source>
            <translation>Noch ist über keinen Lauf entschieden. Entschiedene Läufe werden im Laborjournal aufbewahrt.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailModel</name>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Wer</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Was getan wurde</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Lauf</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Woran</translation>
        </message>
        <message>
            <source>Before</source>
            <translation>Vorher</translation>
        </message>
        <message>
            <source>After</source>
            <translation>Nachher</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailView</name>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2: %3</translation>
        </message>
        <message>
            <source>before: %1</source>
            <translation>vorher: %1</translation>
        </message>
        <message>
            <source>after: %1</source>
            <translation>nachher: %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>Grund: %1</translation>
        </message>
        <message>
            <source>Entry %1, account %2 on %3, program %4</source>
            <translation>Eintrag %1, Konto %2 auf %3, Programm %4</translation>
        </message>
        <message>
            <source>Nothing on record matches the search: empty a field above.</source>
            <translation>Nichts Verzeichnetes passt zur Suche: oben ein Feld leeren.</translation>
        </message>
        <message>
            <source>Acts, the newest first</source>
            <translation>Vorgänge, der neueste zuerst</translation>
        </message>
        <message>
            <source>Old&amp;er ones too</source>
            <translation>Auch äl&amp;tere</translation>
        </message>
        <message>
            <source>To its ra&amp;ck or record</source>
            <translation>Zum Rac&amp;k oder zur Aufzeichnung</translation>
        </message>
        <message>
            <source>The chosen act in full</source>
            <translation>Der gewählte Vorgang vollständig</translation>
        </message>
        <message>
            <source>Fin&amp;d</source>
            <translation>&amp;Finden</translation>
        </message>
        <message>
            <source>&amp;Who</source>
            <translation>We&amp;r</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <translation>&amp;Was</translation>
        </message>
        <message>
            <source>Fro&amp;m</source>
            <translation>&amp;Von</translation>
        </message>
        <message>
            <source>unti&amp;l</source>
            <translation>&amp;Bis</translation>
        </message>
        <message>
            <source>&amp;Run number</source>
            <translation>Laufnu&amp;mmer</translation>
        </message>
        <message>
            <source>everybody</source>
            <translation>alle Personen</translation>
        </message>
        <message>
            <source>everything</source>
            <translation>alles</translation>
        </message>
        <message>
            <source>"%1" is not a run number; the notebook counts runs from 1.</source>
            <translation>„%1“ ist keine Nummer eines Laufs; das Laborjournal zählt sie ab 1.</translation>
        </message>
        <message>
            <source>"%1" is not a day; write it as %2, or leave the field empty.</source>
            <translation>„%1“ ist kein Tag; schreiben wie %2 oder das Feld leer lassen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailWords</name>
        <message>
            <source>notebook made</source>
            <translation>Laborjournal angelegt</translation>
        </message>
        <message>
            <source>file brought up to a newer program</source>
            <translation>Datei auf den Stand eines neueren Programms gebracht</translation>
        </message>
        <message>
            <source>run put on the bench</source>
            <translation>Lauf in Arbeit genommen</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>Lauf wieder in Arbeit genommen</translation>
        </message>
        <message>
            <source>reading stored</source>
            <translation>Ablesung gespeichert</translation>
        </message>
        <message>
            <source>read once more</source>
            <translation>noch einmal abgelesen</translation>
        </message>
        <message>
            <source>additions ticked</source>
            <translation>Zugaben abgehakt</translation>
        </message>
        <message>
            <source>ticks taken back</source>
            <translation>Haken zurückgenommen</translation>
        </message>
        <message>
            <source>tube counts again</source>
            <translation>Ansatz zählt wieder</translation>
        </message>
        <message>
            <source>computer's clock was set</source>
            <translation>Uhr des Rechners wurde gestellt</translation>
        </message>
        <message>
            <source>done without a repeat</source>
            <translation>auf Wiederholung verzichtet</translation>
        </message>
        <message>
            <source>laboratory's settings saved</source>
            <translation>Laboreinstellungen gespeichert</translation>
        </message>
        <message>
            <source>limits saved</source>
            <translation>Grenzwerte gespeichert</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>falsche Passphrase</translation>
        </message>
        <message>
            <source>reported result chosen</source>
            <translation>berichtetes Ergebnis gewählt</translation>
        </message>
        <message>
            <source>settings of a control chart saved</source>
            <translation>Einstellungen einer Regelkarte gespeichert</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>Wert aus Regelkarten ausgenommen</translation>
        </message>
        <message>
            <source>value counts in control charts again</source>
            <translation>Wert zählt in Regelkarten wieder</translation>
        </message>
        <message>
            <source>reading corrected</source>
            <translation>Ablesung korrigiert</translation>
        </message>
        <message>
            <source>tube spoilt</source>
            <translation>Ansatz unbrauchbar</translation>
        </message>
        <message>
            <source>tubes added</source>
            <translation>Ansätze hinzugefügt</translation>
        </message>
        <message>
            <source>run accepted</source>
            <translation>Lauf angenommen</translation>
        </message>
        <message>
            <source>run rejected</source>
            <translation>Lauf verworfen</translation>
        </message>
        <message>
            <source>sample registered</source>
            <translation>Probe angemeldet</translation>
        </message>
        <message>
            <source>sample changed</source>
            <translation>Probe geändert</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>Probe zurückgezogen</translation>
        </message>
        <message>
            <source>lot received</source>
            <translation>Charge eingegangen</translation>
        </message>
        <message>
            <source>lot put in its place</source>
            <translation>Charge an ihren Platz gestellt</translation>
        </message>
        <message>
            <source>lot opened</source>
            <translation>Charge geöffnet</translation>
        </message>
        <message>
            <source>lot dissolved</source>
            <translation>Charge gelöst</translation>
        </message>
        <message>
            <source>lot divided into aliquots</source>
            <translation>Charge in Aliquote geteilt</translation>
        </message>
        <message>
            <source>taken from a lot</source>
            <translation>aus einer Charge entnommen</translation>
        </message>
        <message>
            <source>note on a lot</source>
            <translation>Bemerkung zu einer Charge</translation>
        </message>
        <message>
            <source>amount of a lot corrected</source>
            <translation>Menge einer Charge berichtigt</translation>
        </message>
        <message>
            <source>label of a lot changed</source>
            <translation>Etikett einer Charge geändert</translation>
        </message>
        <message>
            <source>lot thrown away</source>
            <translation>Charge entsorgt</translation>
        </message>
        <message>
            <source>substance added</source>
            <translation>Substanz hinzugefügt</translation>
        </message>
        <message>
            <source>substance changed</source>
            <translation>Substanz geändert</translation>
        </message>
        <message>
            <source>standard prepared</source>
            <translation>Standard hergestellt</translation>
        </message>
        <message>
            <source>standard thrown away</source>
            <translation>Standard entsorgt</translation>
        </message>
        <message>
            <source>equipment added</source>
            <translation>Gerät hinzugefügt</translation>
        </message>
        <message>
            <source>equipment changed</source>
            <translation>Gerät geändert</translation>
        </message>
        <message>
            <source>equipment checked</source>
            <translation>Gerät geprüft</translation>
        </message>
        <message>
            <source>check of equipment taken back</source>
            <translation>Prüfung eines Geräts zurückgenommen</translation>
        </message>
        <message>
            <source>method saved</source>
            <translation>Methode gespeichert</translation>
        </message>
        <message>
            <source>method imported</source>
            <translation>Methode importiert</translation>
        </message>
        <message>
            <source>method out of use</source>
            <translation>Methode deaktiviert</translation>
        </message>
        <message>
            <source>method in use again</source>
            <translation>Methode reaktiviert</translation>
        </message>
        <message>
            <source>person added</source>
            <translation>Person hinzugefügt</translation>
        </message>
        <message>
            <source>person changed</source>
            <translation>Person geändert</translation>
        </message>
        <message>
            <source>person out of use</source>
            <translation>Person deaktiviert</translation>
        </message>
        <message>
            <source>person in use again</source>
            <translation>Person reaktiviert</translation>
        </message>
        <message>
            <source>passphrase changed</source>
            <translation>Passphrase geändert</translation>
        </message>
        <message>
            <source>opening of a lot corrected</source>
            <translation>Öffnung einer Charge berichtigt</translation>
        </message>
        <message>
            <source>form %1 of the file</source>
            <translation>Schema %1 der Datei</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TubeDrawing</name>
        <message>
            <source>The tube</source>
            <translation>Der Ansatz</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TubePicture</name>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>Verdünnungsmittel</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>Startreagenz</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>umschwenken</translation>
        </message>
        <message>
            <source>Nothing is in the tube yet.</source>
            <translation>Im Ansatz ist noch nichts.</translation>
        </message>
        <message>
            <source>From the bottom: %1.</source>
            <translation>Von unten: %1.</translation>
        </message>
        <message>
            <source>Together %1.</source>
            <translation>Zusammen %1.</translation>
        </message>
        <message>
            <source>%1 is read at %2.</source>
            <translation>%1 wird bei %2 abgelesen.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UncertaintyForm</name>
        <message>
            <source>Standard uncertainties (k = 1)</source>
            <translation>Standardunsicherheiten (k = 1)</translation>
        </message>
        <message>
            <source>Absorbance, each reading</source>
            <translation>Extinktion, jede Ablesung</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Extinktionskoeffizient</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Schichtdicke</translation>
        </message>
        <message>
            <source>Total volume</source>
            <translation>Gesamtvolumen</translation>
        </message>
        <message>
            <source>Sample volume</source>
            <translation>Probenvolumen</translation>
        </message>
        <message>
            <source>Each dilution step</source>
            <translation>Jeder Verdünnungsschritt</translation>
        </message>
        <message>
            <source>Extract of a solid</source>
            <translation>Extrakt eines Feststoffs</translation>
        </message>
        <message>
            <source>Below each number stands whose it is. Type over one to take another for this run alone; empty it to go back.</source>
            <translation>Unter jeder Zahl steht, wer sie verantwortet. Eine überschreiben, um nur für diesen Lauf eine andere zu nehmen; leeren, um zurückzugehen.</translation>
        </message>
        <message>
            <source>Common practice, until the laboratory says its own under Books, Laboratory: %1 of %2.</source>
            <translation>Gängige Praxis, bis das Labor unter Bücher, Labor eigene Werte angibt: %1 von %2.</translation>
        </message>
        <message>
            <source>Typed for this run: %1.</source>
            <translation>Für diesen Lauf eingegeben: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UpdateDialog</name>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Anhalten</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Laborjournal</translation>
        </message>
        <message>
            <source>The notebook %1 was last used with an older Plateau and is being brought up to date; a copy of it as it is now stays beside it.</source>
            <translation>Das Laborjournal %1 wurde zuletzt mit einem älteren Plateau verwendet und wird auf den neuen Stand gebracht; eine Kopie im jetzigen Zustand bleibt daneben liegen.</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>Looking through it</source>
            <translation>Es wird durchgesehen</translation>
        </message>
        <message>
            <source>Making the copy</source>
            <translation>Die Kopie wird erstellt</translation>
        </message>
        <message>
            <source>Bringing its tables up to date, step %1 of %2</source>
            <translation>Die Tabellen werden auf den neuen Stand gebracht, Schritt %1 von %2</translation>
        </message>
        <message>
            <source>Rebuilding the index of the runs</source>
            <translation>Der Suchindex der Läufe wird neu aufgebaut</translation>
        </message>
        <message>
            <source>Stopping …</source>
            <translation>Wird angehalten …</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Verdicts</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>ausstehend</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>gültig</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>wiederholen</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>abklären</translation>
        </message>
        <message>
            <source>&lt; %1 %2</source>
            <translation>&lt; %1 %2</translation>
        </message>
        <message>
            <source>&gt; %1 %2</source>
            <translation>&gt; %1 %2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 ± %2 %3</source>
            <translation>%1 ± %2 %3</translation>
        </message>
        <message>
            <source>Not complete: readings are missing</source>
            <translation>Nicht vollständig: Ablesungen fehlen</translation>
        </message>
        <message>
            <source>All results are reportable</source>
            <translation>Alle Ergebnisse sind gültig</translation>
        </message>
        <message>
            <source>The run itself failed a check</source>
            <translation>Der Lauf selbst hat eine Prüfung nicht bestanden</translation>
        </message>
        <message>
            <source>%1 of %2 to repeat</source>
            <translation>%1 von %2 zu wiederholen</translation>
        </message>
        <message>
            <source>%1 of %2 to investigate</source>
            <translation>%1 von %2 abzuklären</translation>
        </message>
        <message>
            <source>%1 to investigate and %2 to repeat, of %3</source>
            <translation>%1 abzuklären und %2 zu wiederholen, von %3</translation>
        </message>
        <message>
            <source>No check has failed so far.</source>
            <translation>Bisher wurde jede Prüfung bestanden.</translation>
        </message>
        <message>
            <source>Every check passed.</source>
            <translation>Jede Prüfung wurde bestanden.</translation>
        </message>
        <message>
            <source>%1 (%2 times)</source>
            <translation>%1 (%2-mal)</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>1 check failed: %1.</source>
            <translation>1 Prüfung nicht bestanden: %1.</translation>
        </message>
        <message>
            <source>%1 checks failed: %2.</source>
            <translation>%1 Prüfungen nicht bestanden: %2.</translation>
        </message>
        <message>
            <source>%1 is worked out as soon as a run by %2 with the same samples, of the same week, is accepted.</source>
            <translation>%1 wird berechnet, sobald ein Lauf nach %2 mit denselben Proben, aus derselben Woche, angenommen ist.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>No check failed.</source>
            <translation>Jede mögliche Prüfung wurde bestanden.</translation>
        </message>
        <message>
            <source>repeated</source>
            <translation>wiederholt</translation>
        </message>
        <message>
            <source>Not every check could be made</source>
            <translation>Nicht jede Prüfung war möglich</translation>
        </message>
        <message>
            <source>All are reportable, %1 by a repeat in the rack</source>
            <translation>Alle sind gültig, %1 durch eine Wiederholung im Rack</translation>
        </message>
        <message>
            <source>%1 Not made, though the method asks for it: %2.</source>
            <translation>%1 Nicht möglich, obwohl die Methode es verlangt: %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::VolumeWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>Wait %1 at %2</source>
            <translation>%1 bei %2 warten</translation>
        </message>
        <message>
            <source>Wait %1</source>
            <translation>%1 warten</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 auf %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, dann </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingModel</name>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produkt</translation>
        </message>
        <message>
            <source>Why it waits</source>
            <translation>Warum sie wartet</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Eingegangen am</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingWords</name>
        <message>
            <source>repeat of run %1</source>
            <translation>Wiederholung von Lauf %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>take %1 of it</source>
            <translation>davon %1 nehmen</translation>
        </message>
        <message>
            <source>dilute at least %1 times</source>
            <translation>mindestens %1-fach verdünnen</translation>
        </message>
        <message>
            <source>dilute %1 times</source>
            <translation>%1-fach verdünnen</translation>
        </message>
        <message>
            <source>registered, not run yet</source>
            <translation>noch nicht gemessen</translation>
        </message>
        <message>
            <source>%1; registered again</source>
            <translation>%1; neu angemeldet</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>nicht bestanden: %1</translation>
        </message>
        <message>
            <source>repeat of run %1 (%2)</source>
            <translation>Wiederholung von Lauf %1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WeighingForm</name>
        <message>
            <source>Weigh a fresh standard e&amp;xactly</source>
            <translation>Frischen Standard e&amp;xakt einwiegen</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>g/mol</source>
            <translation>g/mol</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>mg</source>
            <translation>mg</translation>
        </message>
        <message>
            <source>Take it as the run's standard</source>
            <translation>Als Standard des Laufs übernehmen</translation>
        </message>
        <message>
            <source>Standard of</source>
            <translation>Standard für</translation>
        </message>
        <message>
            <source>Strength wanted</source>
            <translation>Gewünschter Gehalt</translation>
        </message>
        <message>
            <source>Flask</source>
            <translation>Messkolben</translation>
        </message>
        <message>
            <source>Molar mass of the substance</source>
            <translation>Molare Masse der Substanz</translation>
        </message>
        <message>
            <source>Analyte molecules in one of it</source>
            <translation>Analytmoleküle je Molekül</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Reinheit</translation>
        </message>
        <message>
            <source>Actually weighed</source>
            <translation>Tatsächlich eingewogen</translation>
        </message>
        <message>
            <source>u of the mass</source>
            <translation>u der Masse</translation>
        </message>
        <message>
            <source>u of the purity</source>
            <translation>u der Reinheit</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u von Messkolben und Auffüllen</translation>
        </message>
        <message>
            <source>Molar mass as weighed: a monohydrate with its water. u: standard uncertainty (k = 1).</source>
            <translation>Molare Masse wie eingewogen: ein Monohydrat mit seinem Wasser. u: Standardunsicherheit (k = 1).</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Tragen, was die örtlichen Sicherheitsvorschriften und das Datenblatt des Lieferanten verlangen; sie haben Vorrang.</translation>
        </message>
        <message>
            <source>Enter the strength wanted, the flask, the substance's molar mass, and a purity of more than 0 and at most 100 %: then the mass to weigh stands here.</source>
            <translation>Gewünschten Gehalt, Messkolben, molare Masse der Substanz und eine Reinheit von mehr als 0 und höchstens 100 % angeben: Dann steht hier die einzuwiegende Masse.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>%1 einwiegen und auf %2 auffüllen.</translation>
        </message>
        <message>
            <source>Type the mass actually weighed: then the strength actually made stands here.</source>
            <translation>Die tatsächlich eingewogene Masse eingeben: Dann steht hier der tatsächlich hergestellte Gehalt.</translation>
        </message>
        <message>
            <source>Made: %1 ± %2 (k = 2), a standard uncertainty of %3.</source>
            <translation>Hergestellt: %1 ± %2 (k = 2), eine Standardunsicherheit von %3.</translation>
        </message>
        <message>
            <source>Largest contribution to it: %1, %2 of the variance.</source>
            <translation>Größter Beitrag dazu: %1, %2 der Varianz.</translation>
        </message>
        <message>
            <source>weighed %1: %2 made up to %3</source>
            <translation>%1 eingewogen: %2 aufgefüllt auf %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WindowActions</name>
        <message>
            <source>&amp;File</source>
            <translation>Date&amp;i</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>Ne&amp;uer Lauf</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>Laufdatei &amp;öffnen…</translation>
        </message>
        <message>
            <source>&amp;Save a copy of the run as file…</source>
            <translation>&amp;Kopie des Laufs als Datei speichern…</translation>
        </message>
        <message>
            <source>&amp;Worksheet as PDF…</source>
            <translation>&amp;Arbeitsblatt als PDF…</translation>
        </message>
        <message>
            <source>&amp;Labels as PDF…</source>
            <translation>&amp;Etiketten als PDF…</translation>
        </message>
        <message>
            <source>&amp;Report of results as PDF…</source>
            <translation>E&amp;rgebnisbericht als PDF…</translation>
        </message>
        <message>
            <source>R&amp;un record as PDF…</source>
            <translation>Lauf&amp;protokoll als PDF…</translation>
        </message>
        <message>
            <source>Results as &amp;CSV…</source>
            <translation>Ergebnisse als &amp;CSV…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Beenden</translation>
        </message>
        <message>
            <source>What is next is &amp;done now</source>
            <translation>Das Nächste ist jetzt &amp;erledigt</translation>
        </message>
        <message>
            <source>&amp;Take back the last mark</source>
            <translation>Letzten Vermerk &amp;zurücknehmen</translation>
        </message>
        <message>
            <source>&amp;Paste readings…</source>
            <translation>Ablesungen e&amp;infügen…</translation>
        </message>
        <message>
            <source>Readings from a &amp;file…</source>
            <translation>Ablesungen aus einer &amp;Datei…</translation>
        </message>
        <message>
            <source>&amp;Listen to the photometer…</source>
            <translation>&amp;Vom Photometer empfangen…</translation>
        </message>
        <message>
            <source>St&amp;op listening</source>
            <translation>E&amp;mpfang beenden</translation>
        </message>
        <message>
            <source>&amp;Sound, lead time and keying…</source>
            <translation>&amp;Ton, Vorlaufzeit und Eingabe…</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ansicht</translation>
        </message>
        <message>
            <source>&amp;Go to what is next</source>
            <translation>&amp;Zum Nächsten gehen</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>&amp;Pipettieren</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>&amp;Ablesen</translation>
        </message>
        <message>
            <source>Re&amp;view</source>
            <translation>Be&amp;werten</translation>
        </message>
        <message>
            <source>Ne&amp;xt rack</source>
            <translation>N&amp;ächstes Rack</translation>
        </message>
        <message>
            <source>&amp;Previous rack</source>
            <translation>&amp;Voriges Rack</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>Hi&amp;lfe</translation>
        </message>
        <message>
            <source>&amp;About Plateau</source>
            <translation>&amp;Über Plateau</translation>
        </message>
        <message>
            <source>&amp;Keys…</source>
            <translation>&amp;Tasten…</translation>
        </message>
        <message>
            <source>&amp;Help for what is in front</source>
            <translation>&amp;Hilfe zu dem, was gerade offen ist</translation>
        </message>
        <message>
            <source>A &amp;first rack in ten minutes</source>
            <translation>Ein &amp;erstes Rack in zehn Minuten</translation>
        </message>
        <message>
            <source>&amp;What to do about a check</source>
            <translation>&amp;Was bei einer Prüfung zu tun ist</translation>
        </message>
        <message>
            <source>Another note&amp;book…</source>
            <translation>Anderes Labor&amp;journal…</translation>
        </message>
        <message>
            <source>&amp;Bench</source>
            <translation>Arbeit&amp;splatz</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Words</name>
        <message>
            <source>blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>sample blank of %1</source>
            <translation>Probenblindwert von %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>Standard %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>Kontrollprobe %1</translation>
        </message>
        <message>
            <source>spiked sample %1</source>
            <translation>aufgestockte Probe %1</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>Probe %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message numerus="yes">
            <source>%n readings, last %1</source>
            <translation>
                <numerusform>%n Ablesung, letzte %1</numerusform>
                <numerusform>%n Ablesungen, letzte %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WorkingCopy</name>
        <message>
            <source>There is no place for a copy to work on in %1; nothing was made: see that the folder is there and has room.</source>
            <translation>In %1 ist kein Platz für eine Arbeitskopie; nichts wurde erstellt: prüfen, ob der Ordner vorhanden ist und Platz hat.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Worksheet</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 in %2</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>Blindwert</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>Probenblindwert</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>Standard</translation>
        </message>
        <message>
            <source>control</source>
            <translation>Kontrollprobe</translation>
        </message>
        <message>
            <source>spiked</source>
            <translation>aufgestockt</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>%1 → %2</source>
            <comment>millilitres taken, made up to</comment>
            <translation>%1 → %2</translation>
        </message>
        <message>
            <source>%1 at %2</source>
            <translation>%1 bei %2</translation>
        </message>
        <message>
            <source>version %1, %2, cuvette of %3</source>
            <translation>Version %1, %2, Küvette mit %3</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes</source>
            <translation>
                <numerusform>%n Ansatz</numerusform>
                <numerusform>%n Ansätze</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1: start the next one every %2</source>
            <translation>%1: den nächsten starten alle %2</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>started at</source>
            <translation>begonnen um</translation>
        </message>
        <message>
            <source>by</source>
            <translation>von</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>Photometer</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>until %1</source>
            <comment>the last good day of a lot</comment>
            <translation>bis %1</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>umschwenken</translation>
        </message>
        <message>
            <source>Plateau, run %1</source>
            <translation>Plateau, Lauf %1</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>Worksheet: %1</source>
            <translation>Arbeitsblatt: %1</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>contents, taken → made up to</source>
            <translation>Inhalt, entnommen → aufgefüllt auf</translation>
        </message>
        <message>
            <source>reads</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mischen</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>%1 warten</translation>
        </message>
        <message>
            <source>Tubes that do not count</source>
            <translation>Ansätze, die nicht zählen</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>Ansatz %1: %2</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Warnhinweise</translation>
        </message>
        <message>
            <source>Names in full</source>
            <translation>Volle Namen</translation>
        </message>
        <message>
            <source>notes</source>
            <translation>Bemerkungen</translation>
        </message>
        <message>
            <source>Worksheet %1</source>
            <comment>a file name</comment>
            <translation>Arbeitsblatt %1</translation>
        </message>
        <message>
            <source>Dilute %1:</source>
            <comment>millilitres taken, made up to</comment>
            <translation>%1 verdünnen:</translation>
        </message>
    </context>
</TS>
