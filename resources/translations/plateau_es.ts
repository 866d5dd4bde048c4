<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
    <context>
        <name>QShortcut</name>
        <message>
            <source>Ctrl</source>
            <translation>Ctrl</translation>
        </message>
        <message>
            <source>Shift</source>
            <translation>Mayús</translation>
        </message>
        <message>
            <source>Del</source>
            <translation>Supr</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Ins</source>
            <translation>Insert</translation>
        </message>
        <message>
            <source>Tab</source>
            <translation>Tab</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Intro</translation>
        </message>
        <message>
            <source>Return</source>
            <translation>Intro</translation>
        </message>
        <message>
            <source>PgUp</source>
            <translation>Re Pág</translation>
        </message>
        <message>
            <source>PgDown</source>
            <translation>Av Pág</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Arriba</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Abajo</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Derecha</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::FirstRun</name>
        <message>
            <source>Another notebook</source>
            <translation>Otro cuaderno</translation>
        </message>
        <message>
            <source>It could not be kept that the program is to start with %1; the next start opens the same notebook as before.</source>
            <translation>No se pudo guardar que el programa se inicie con %1; el próximo inicio abre el mismo cuaderno que hasta ahora.</translation>
        </message>
        <message>
            <source>No other window could be opened. Close this one and open the notebook by itself: %1</source>
            <translation>No se pudo abrir otra ventana. Cierre esta y abra ese cuaderno por separado: %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Main</name>
        <message>
            <source>plateau: the window needs a display, and there is none to be reached; start it from a desktop session, or use a command (plateau --help lists them)</source>
            <translation>plateau: la ventana necesita una pantalla y no hay ninguna accesible; inicie el programa desde una sesión de escritorio o use una orden (plateau --help las enumera)</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::SampleNotebook</name>
        <message>
            <source>The sample data of this installation cannot be used (%1); nothing was made. Reinstall the program.</source>
            <translation>Los datos de ejemplo de esta instalación no se pueden usar (%1); no se ha creado nada. Instale el programa de nuevo.</translation>
        </message>
        <message>
            <source>the limits of the house</source>
            <translation>los límites de la casa</translation>
        </message>
        <message>
            <source>unknown account</source>
            <translation>cuenta desconocida</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Window</name>
        <message>
            <source>Notebook</source>
            <translation>Cuaderno</translation>
        </message>
        <message>
            <source>Months of an invented laboratory are being made …</source>
            <translation>Se están creando meses de un laboratorio inventado …</translation>
        </message>
        <message>
            <source>sample notebook, a copy that is thrown away; everybody in it signs with the passphrase %1</source>
            <translation>cuaderno de ejemplo, una copia que se desecha; todos firman en él con la frase de contraseña %1</translation>
        </message>
        <message>
            <source>--notebook needs the name of a file</source>
            <translation>--notebook necesita el nombre de un archivo</translation>
        </message>
        <message>
            <source>--demo and --notebook exclude each other</source>
            <translation>--demo y --notebook se excluyen entre sí</translation>
        </message>
        <message>
            <source>%1 is neither a command nor an option nor a file; plateau --help lists them</source>
            <translation>%1 no es ni una orden ni una opción ni un archivo; plateau --help enumera las órdenes y las opciones</translation>
        </message>
        <message>
            <source>the window takes one file at a start, not %1 as well</source>
            <translation>la ventana admite un solo archivo por inicio, no además %1</translation>
        </message>
        <message>
            <source>%1 is a notebook, and another one is named beside it</source>
            <translation>%1 es un cuaderno, y a su lado se indica otro</translation>
        </message>
        <message>
            <source>--person needs a name</source>
            <translation>--person necesita un nombre</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Background</name>
        <message>
            <source>the measurand</source>
            <translation>el mensurando</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>el id del método</translation>
        </message>
        <message>
            <source>must be a measurand of this method, and %1 is none; name the other method it belongs to, or one of this method's</source>
            <translation>debe ser un mensurando de este método, y %1 no lo es; indique el otro método al que pertenece, o uno de este método</translation>
        </message>
        <message>
            <source>must be a number other than 0, not %1; leave out a term that does not count</source>
            <translation>debe ser un número distinto de 0, no %1; omita un término que no cuenta</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>el id</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>el nombre</translation>
        </message>
        <message>
            <source>the id %1 is taken by a measurand or an earlier derived result; give each its own</source>
            <translation>el id %1 ya lo tiene un mensurando o un resultado derivado anterior; dé a cada uno el suyo</translation>
        </message>
        <message>
            <source>a derived result needs at least one term</source>
            <translation>un resultado derivado necesita al menos un término</translation>
        </message>
        <message>
            <source>must be a fraction per hour from 0 to below 1, not %1</source>
            <translation>debe ser una fracción por hora desde 0 hasta menos de 1, no %1</translation>
        </message>
        <message>
            <source>%1 is blank; write it out or leave it out</source>
            <translation>%1 está en blanco; complételo u omítalo</translation>
        </message>
        <message>
            <source>the preparation</source>
            <translation>la preparación</translation>
        </message>
        <message>
            <source>%1 has its preparation already; say all of it in one text</source>
            <translation>%1 ya tiene su preparación; descríbala entera en un solo texto</translation>
        </message>
        <message>
            <source>the reaction</source>
            <translation>la reacción</translation>
        </message>
        <message>
            <source>the interference</source>
            <translation>la interferencia</translation>
        </message>
        <message>
            <source>the caution</source>
            <translation>la precaución</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Label</name>
        <message>
            <source>it holds the character %1, which reorders the line; write it without</source>
            <translation>contiene el carácter %1, que reordena la línea; escríbalo sin él</translation>
        </message>
        <message>
            <source>it holds the control character %1; write it without</source>
            <translation>contiene el carácter de control %1; escríbalo sin él</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>tiene %1 caracteres; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>it is blank; give it at least one letter or digit</source>
            <translation>está en blanco; ponga al menos una letra o una cifra</translation>
        </message>
        <message>
            <source>"%1"</source>
            <comment>a name in quotation marks</comment>
            <translation>«%1»</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Limits</name>
        <message>
            <source>must be greater than %1 and at most %2, not %3</source>
            <translation>debe ser mayor que %1 y como máximo %2, no %3</translation>
        </message>
        <message>
            <source>must lie between %1 and %2, not %3</source>
            <translation>debe estar entre %1 y %2, no %3</translation>
        </message>
        <message>
            <source>the smaller number comes first: %1 is larger than %2</source>
            <translation>el número menor va primero: %1 es mayor que %2</translation>
        </message>
        <message>
            <source>%1 cannot be used: %2</source>
            <translation>%1 no se puede usar: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Listed</name>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Plausibility</name>
        <message>
            <source>takes %1 with no wait since the last addition; say how long to wait, even where it is short</source>
            <translation>toma %1 sin espera desde la última adición; indique cuánto hay que esperar, aunque sea poco</translation>
        </message>
        <message>
            <source>starts the reaction before anything is read; read the tube first</source>
            <translation>inicia la reacción antes de leer nada; lea primero el tubo</translation>
        </message>
        <message>
            <source>starts the reaction after the last reading; read the tube afterwards</source>
            <translation>inicia la reacción después de la última lectura; lea el tubo después</translation>
        </message>
        <message>
            <source>nothing is read after this step; add a reading or leave the step out</source>
            <translation>después de este paso no se lee nada; añada una lectura u omita el paso</translation>
        </message>
        <message>
            <source>the reading %1 is taken before the sample is in the tube; name one taken afterwards</source>
            <translation>la lectura %1 se toma antes de que la muestra esté en el tubo; indique una que se tome después</translation>
        </message>
        <message>
            <source>nothing is added between %1 and %2, so nothing starts between them</source>
            <translation>no se añade nada entre %1 y %2, así que nada empieza entre ellas</translation>
        </message>
        <message>
            <source>%1 is never added, so nothing makes up for another sample volume: the tube's volume changes with it</source>
            <translation>%1 no se añade nunca, así que nada compensa otro volumen de muestra: el volumen del tubo cambia con él</translation>
        </message>
        <message>
            <source>%1 mL of sample is more than %2 mL of %3 make up for: the tube's volume changes above %4 mL</source>
            <translation>%1 mL de muestra es más de lo que compensan %2 mL de %3: el volumen del tubo cambia por encima de %4 mL</translation>
        </message>
        <message>
            <source>a signal of %1 is more than the photometer may show (%2)</source>
            <translation>una señal de %1 es más de lo que puede mostrar el fotómetro (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Procedure</name>
        <message>
            <source>adds %1, which is none of the components</source>
            <translation>añade %1, que no es ninguno de los componentes</translation>
        </message>
        <message>
            <source>adds %1 a second time; list a second portion as a component of its own</source>
            <translation>añade %1 por segunda vez; ponga una segunda porción como componente propio</translation>
        </message>
        <message>
            <source>the reading's name</source>
            <translation>el nombre de la lectura</translation>
        </message>
        <message>
            <source>reads %1 before anything is in the tube; add something first</source>
            <translation>lee %1 antes de que haya algo en el tubo; añada primero algo</translation>
        </message>
        <message>
            <source>takes the reading %1 a second time; give each reading its own name</source>
            <translation>toma la lectura %1 por segunda vez; dé a cada lectura su propio nombre</translation>
        </message>
        <message>
            <source>no component plays this part; say which one does</source>
            <translation>ningún componente hace este papel; indique cuál</translation>
        </message>
        <message>
            <source>must be the id of a component, and %1 is none</source>
            <translation>debe ser el id de un componente, y %1 no lo es</translation>
        </message>
        <message>
            <source>the sample is never added; give it a step</source>
            <translation>la muestra no se añade nunca; dele un paso</translation>
        </message>
        <message>
            <source>the starter is never added; give it a step</source>
            <translation>el iniciador no se añade nunca; dele un paso</translation>
        </message>
        <message>
            <source>the sample cannot be its own diluent</source>
            <translation>la muestra no puede ser su propio diluyente</translation>
        </message>
        <message>
            <source>the starter must be a component of its own, neither sample nor diluent</source>
            <translation>el iniciador debe ser un componente propio, ni muestra ni diluyente</translation>
        </message>
        <message>
            <source>%1 is never added</source>
            <translation>%1 no se añade nunca</translation>
        </message>
        <message>
            <source>the reading %1 is never taken; name one of the steps' readings</source>
            <translation>la lectura %1 no se toma nunca; indique una de las lecturas de los pasos</translation>
        </message>
        <message>
            <source>must be read after %1 (%2), and %3 is not</source>
            <translation>debe leerse después de %1 (%2), y %3 no lo es</translation>
        </message>
        <message>
            <source>a method needs at least one step that reads</source>
            <translation>un método necesita al menos un paso en el que se lea</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>el tubo contiene al final %1 mL; se admiten como máximo %2 mL</translation>
        </message>
        <message>
            <source>a straight line needs at least 2 readings, not %1</source>
            <translation>una recta necesita al menos 2 lecturas, no %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Soundness</name>
        <message>
            <source>the id</source>
            <translation>el id</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>el nombre</translation>
        </message>
        <message>
            <source>versions count from 1, not %1</source>
            <translation>las versiones cuentan desde 1, no %1</translation>
        </message>
        <message>
            <source>says nothing: name the document and its section, or say that there is none</source>
            <translation>no dice nada: indique el documento y su apartado, o que no hay ninguno</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la fuente</translation>
        </message>
        <message>
            <source>the principle</source>
            <translation>el principio</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) is very small; is it meant in L/(mmol cm), a thousand times as much?</source>
            <translation>%1 L/(mol cm) es muy pequeño; ¿se quiere decir en L/(mmol cm), mil veces más?</translation>
        </message>
        <message>
            <source>the chromophore's name</source>
            <translation>el nombre del cromóforo</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; add it to the table of absorptivities (only NADH and NADPH at 340 nm need none)</source>
            <translation>el método no tiene absortividad para %1 nm; añádala a la tabla de absortividades (solo NADH y NADPH a 340 nm no la necesitan)</translation>
        </message>
        <message>
            <source>must include the usual volume of %1 mL</source>
            <translation>debe incluir el volumen habitual de %1 mL</translation>
        </message>
        <message>
            <source>a method needs at least one component</source>
            <translation>un método necesita al menos un componente</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier component; give each its own</source>
            <translation>el id %1 ya lo tiene un componente anterior; dé a cada uno el suyo</translation>
        </message>
        <message>
            <source>a method needs at least one measurand</source>
            <translation>un método necesita al menos un mensurando</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier measurand; give each its own</source>
            <translation>el id %1 ya lo tiene un mensurando anterior; dé a cada uno el suyo</translation>
        </message>
        <message>
            <source>must be smaller than maxSignal: %1 is not smaller than %2</source>
            <translation>debe ser menor que maxSignal: %1 no es menor que %2</translation>
        </message>
        <message>
            <source>must be smaller than maxAbsorbance: %1 is not smaller than %2</source>
            <translation>debe ser menor que maxAbsorbance: %1 no es menor que %2</translation>
        </message>
        <message>
            <source>no duplicates can meet a limit of 0; give a constant part, a proportional part, or leave repeatability out</source>
            <translation>ningún duplicado cumple un límite de 0; dé una constante, una parte proporcional u omita la repetibilidad</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Template</name>
        <message>
            <source>still begins with "%1"; begin it with where the volumes used here come from (document, section, date). Until then its results are marked as those of a template</source>
            <translation>aún empieza por «%1»; empiécelo por la procedencia de los volúmenes que se usan aquí (documento, apartado, fecha). Hasta entonces sus resultados se señalan como los de una plantilla</translation>
        </message>
        <message>
            <source>still says "%1"; take that out once the volumes are yours</source>
            <translation>aún dice «%1»; quítelo cuando los volúmenes sean los suyos</translation>
        </message>
    </context>
    <context>
        <name>plateau::charts</name>
        <message>
            <source>recovery of standards</source>
            <translation>recuperación de patrones</translation>
        </message>
        <message>
            <source>found strength of standards</source>
            <translation>concentración hallada de patrones</translation>
        </message>
        <message>
            <source>control material</source>
            <translation>material de control</translation>
        </message>
        <message>
            <source>signal of the blanks</source>
            <translation>señal de los blancos</translation>
        </message>
        <message>
            <source>range of duplicates</source>
            <translation>recorrido de duplicados</translation>
        </message>
        <message>
            <source>range of duplicates in % of their mean</source>
            <translation>recorrido de duplicados en % de su media</translation>
        </message>
        <message>
            <source>results of a sample</source>
            <translation>resultados de una muestra</translation>
        </message>
        <message>
            <source>results of a product</source>
            <translation>resultados de un producto</translation>
        </message>
        <message>
            <source>individuals with moving range</source>
            <translation>individuales con recorrido móvil</translation>
        </message>
        <message>
            <source>means with range</source>
            <translation>medias con recorrido</translation>
        </message>
        <message>
            <source>ranges</source>
            <translation>recorridos</translation>
        </message>
        <message>
            <source>weighted moving average (EWMA)</source>
            <translation>media móvil ponderada exponencialmente (EWMA)</translation>
        </message>
        <message>
            <source>cumulative sums (CUSUM)</source>
            <translation>sumas acumuladas (CUSUM)</translation>
        </message>
        <message>
            <source>results with their limits</source>
            <translation>resultados con sus límites</translation>
        </message>
        <message>
            <source>one beyond 3 s</source>
            <translation>uno más allá de 3 s</translation>
        </message>
        <message>
            <source>two of three beyond 2 s on one side</source>
            <translation>dos de tres más allá de 2 s del mismo lado</translation>
        </message>
        <message>
            <source>four of five beyond 1 s on one side</source>
            <translation>cuatro de cinco más allá de 1 s del mismo lado</translation>
        </message>
        <message>
            <source>nine in a row on one side</source>
            <translation>nueve seguidos del mismo lado</translation>
        </message>
        <message>
            <source>six in a row rising or falling</source>
            <translation>seis seguidos que suben o bajan</translation>
        </message>
        <message>
            <source>fourteen in a row alternating up and down</source>
            <translation>catorce seguidos que suben y bajan alternadamente</translation>
        </message>
        <message>
            <source>fifteen in a row within 1 s</source>
            <translation>quince seguidos dentro de 1 s</translation>
        </message>
        <message>
            <source>eight in a row beyond 1 s, on both sides</source>
            <translation>ocho seguidos más allá de 1 s, a ambos lados</translation>
        </message>
        <message>
            <source>eight in a row on one side</source>
            <translation>ocho seguidos del mismo lado</translation>
        </message>
        <message>
            <source>seven in a row on one side</source>
            <translation>siete seguidos del mismo lado</translation>
        </message>
        <message>
            <source>ten in a row on one side</source>
            <translation>diez seguidos del mismo lado</translation>
        </message>
        <message>
            <source>one beyond 2 s (a warning)</source>
            <translation>uno más allá de 2 s (una advertencia)</translation>
        </message>
        <message>
            <source>two in a row beyond 2 s on one side</source>
            <translation>dos seguidos más allá de 2 s del mismo lado</translation>
        </message>
        <message>
            <source>two in a row, beyond 2 s on opposite sides</source>
            <translation>dos seguidos, más allá de 2 s a lados opuestos</translation>
        </message>
        <message>
            <source>four in a row beyond 1 s on one side</source>
            <translation>cuatro seguidos más allá de 1 s del mismo lado</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valor</translation>
        </message>
        <message>
            <source>moving range</source>
            <translation>recorrido móvil</translation>
        </message>
        <message>
            <source>mean of %1</source>
            <translation>media de %1</translation>
        </message>
        <message>
            <source>range of %1</source>
            <translation>recorrido de %1</translation>
        </message>
        <message>
            <source>range of two</source>
            <translation>recorrido de dos</translation>
        </message>
        <message>
            <source>weighted average</source>
            <translation>media ponderada</translation>
        </message>
        <message>
            <source>cumulative sum</source>
            <translation>suma acumulada</translation>
        </message>
        <message>
            <source>result</source>
            <translation>resultado</translation>
        </message>
        <message>
            <source>run %1 (%2, %3)</source>
            <translation>tanda %1 (%2, %3)</translation>
        </message>
        <message>
            <source>There are too few values for limits so far. Accept more runs, or enter limits that the laboratory has fixed.</source>
            <translation>Aún hay muy pocos valores para los límites. Acepte más tandas o introduzca límites que el laboratorio haya fijado.</translation>
        </message>
        <message>
            <source>centre %1, standard deviation of a single value %2</source>
            <translation>línea central %1, desviación típica de un valor individual %2</translation>
        </message>
        <message>
            <source>Limits fixed by the laboratory: %1 (%2, %3).</source>
            <translation>Límites fijados por el laboratorio: %1 (%2, %3).</translation>
        </message>
        <message>
            <source>Limits from %1 values, run %2 to run %3: %4.</source>
            <translation>Límites a partir de %1 valores, de la tanda %2 a la tanda %3: %4.</translation>
        </message>
        <message>
            <source>Look for a pipetting error, a bubble or a mixed-up tube, and measure again before results of that run are reported.</source>
            <translation>Busque un error de pipeteo, una burbuja o un tubo confundido, y mida de nuevo antes de informar resultados de esa tanda.</translation>
        </message>
        <message>
            <source>Report no results of that run before the cause is known: look at the standard and its age, the dilution, the lots and the photometer, then measure again.</source>
            <translation>No informe ningún resultado de esa tanda antes de conocer la causa: mire el patrón y su antigüedad, la dilución, los lotes y el fotómetro, y mida de nuevo.</translation>
        </message>
        <message>
            <source>A single one is to be expected now and then; watch the next run.</source>
            <translation>Uno aislado es de esperar de vez en cuando; vigile la próxima tanda.</translation>
        </message>
        <message>
            <source>The scatter has grown: look at pipettes, mixing and temperature.</source>
            <translation>La dispersión ha crecido: mire las pipetas, la mezcla y la temperatura.</translation>
        </message>
        <message>
            <source>Something drifts: look at a standard or reagent that ages, and at the lamp.</source>
            <translation>Algo deriva: mire un patrón o un reactivo que envejece, y la lámpara.</translation>
        </message>
        <message>
            <source>Two conditions alternate: compare people, pipettes and racks.</source>
            <translation>Dos condiciones se alternan: compare personas, pipetas y gradillas.</translation>
        </message>
        <message>
            <source>The scatter is smaller than the limits say: set them again from these runs, or see whether values of two kinds are mixed in one chart.</source>
            <translation>La dispersión es menor de lo que dicen los límites: fíjelos de nuevo con estas tandas, o mire si hay valores de dos clases en un mismo gráfico.</translation>
        </message>
        <message>
            <source>Values of two kinds are mixed in one chart: separate them by lot, person or standard.</source>
            <translation>Hay valores de dos clases en un mismo gráfico: sepárelos por lote, persona o patrón.</translation>
        </message>
        <message>
            <source>Something has shifted: compare lots, standard and photometer before and after the first of them.</source>
            <translation>Algo se ha desplazado: compare lotes, patrón y fotómetro antes y después del primero de ellos.</translation>
        </message>
        <message>
            <source>above the centre</source>
            <translation>por encima de la línea central</translation>
        </message>
        <message>
            <source>below the centre</source>
            <translation>por debajo de la línea central</translation>
        </message>
        <message>
            <source>weighted average above its upper limit</source>
            <translation>media ponderada por encima de su límite superior</translation>
        </message>
        <message>
            <source>weighted average below its lower limit</source>
            <translation>media ponderada por debajo de su límite inferior</translation>
        </message>
        <message>
            <source>upper cumulative sum beyond its decision limit</source>
            <translation>suma acumulada superior más allá de su límite de decisión</translation>
        </message>
        <message>
            <source>lower cumulative sum beyond its decision limit</source>
            <translation>suma acumulada inferior más allá de su límite de decisión</translation>
        </message>
        <message>
            <source>above a limit of the product</source>
            <translation>por encima de un límite del producto</translation>
        </message>
        <message>
            <source>below a limit of the product</source>
            <translation>por debajo de un límite del producto</translation>
        </message>
        <message>
            <source>six in a row rising</source>
            <translation>seis seguidos que suben</translation>
        </message>
        <message>
            <source>six in a row falling</source>
            <translation>seis seguidos que bajan</translation>
        </message>
        <message>
            <source>one beyond 2 s, %1</source>
            <translation>uno más allá de 2 s, %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>, begun with run %1</source>
            <translation>, en una serie que empieza en la tanda %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>sums %1 above and %2 below</source>
            <translation>sumas %1 por encima y %2 por debajo</translation>
        </message>
        <message>
            <source>%1 s below the centre</source>
            <translation>%1 s por debajo de la línea central</translation>
        </message>
        <message>
            <source>%1 s above the centre</source>
            <translation>%1 s por encima de la línea central</translation>
        </message>
        <message>
            <source>The record of the run says what was decided at its uncertainty.</source>
            <translation>El registro de la tanda dice qué se decidió con su incertidumbre.</translation>
        </message>
        <message>
            <source>Something has shifted a little and stays so: compare lots, standard and photometer before and after.</source>
            <translation>Algo se ha desplazado un poco y sigue así: compare lotes, patrón y fotómetro antes y después.</translation>
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
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazado</translation>
        </message>
        <message>
            <source>left out by %1: %2</source>
            <translation>excluido por %1: %2</translation>
        </message>
        <message>
            <source>%1: lot %2 after %3</source>
            <translation>%1: lote %2 después de %3</translation>
        </message>
        <message>
            <source>%1 after %2</source>
            <translation>%1 después de %2</translation>
        </message>
        <message>
            <source>The centre has to be a number.</source>
            <translation>La línea central tiene que ser un número.</translation>
        </message>
        <message>
            <source>The standard deviation has to be greater than 0.</source>
            <translation>La desviación típica tiene que ser mayor que 0.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a source: say where centre and standard deviation come from.</source>
            <translation>Los límites fijados necesitan una fuente: indique de dónde vienen la línea central y la desviación típica.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a date: say as of when they hold.</source>
            <translation>Los límites fijados necesitan una fecha: indique desde cuándo valen.</translation>
        </message>
        <message>
            <source>A subgroup has 2 to %1 values.</source>
            <translation>Un subgrupo tiene de 2 a %1 valores.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: it takes three recoveries or more whose standard's age is known.</source>
            <translation>Aún no se puede decir la pérdida por hora: hacen falta tres o más recuperaciones de patrones cuya antigüedad se conozca.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: all these standards were used at one age.</source>
            <translation>Aún no se puede decir la pérdida por hora: todos estos patrones se usaron con la misma antigüedad.</translation>
        </message>
        <message>
            <source>which agrees with the %1 stated</source>
            <translation>lo que concuerda con el %1 indicado</translation>
        </message>
        <message>
            <source>so the standard loses its strength faster than the %1 stated</source>
            <translation>así que el patrón pierde su concentración más deprisa que el %1 indicado</translation>
        </message>
        <message>
            <source>so the standard loses its strength more slowly than the %1 stated</source>
            <translation>así que el patrón pierde su concentración más despacio que el %1 indicado</translation>
        </message>
        <message>
            <source>and no loss is stated to hold it against</source>
            <translation>y no se indica ninguna pérdida con la que compararla</translation>
        </message>
        <message>
            <source>%1 recoveries at ages of %2 to %3 show a loss of %4 an hour (95 % interval %5 to %6), %7.</source>
            <translation>%1 recuperaciones con antigüedades de %2 a %3 muestran una pérdida de %4 por hora (intervalo del 95 %: de %5 a %6), %7.</translation>
        </message>
        <message>
            <source>The weight of the newest value must be above 0 and at most 1.</source>
            <translation>El peso del valor más reciente debe ser mayor que 0 y como máximo 1.</translation>
        </message>
        <message>
            <source>The width of the limits must be above 0 s and at most 10 s.</source>
            <translation>La anchura de los límites debe ser mayor que 0 s y como máximo 10 s.</translation>
        </message>
        <message>
            <source>The reference value must lie between 0 s and 10 s.</source>
            <translation>El valor de referencia debe estar entre 0 s y 10 s.</translation>
        </message>
        <message>
            <source>The decision limit must be above 0 s and at most 100 s.</source>
            <translation>El límite de decisión debe ser mayor que 0 s y como máximo 100 s.</translation>
        </message>
        <message>
            <source>which is too wide to tell whether the %1 stated are right: it takes standards of more different ages</source>
            <translation>lo que es demasiado ancho para saber si el %1 indicado es correcto: hacen falta patrones de antigüedades más distintas</translation>
        </message>
        <message>
            <source>which agrees with a standard that keeps its strength</source>
            <translation>lo que concuerda con un patrón que conserva su concentración</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on. Under Limits and rules, raise the number of values to %1.</source>
            <translation>Son provisionales: solo a partir de %1 valores se dice que nada está fuera de control. En Límites y reglas, aumente a %1 el número de valores.</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on.</source>
            <translation>Son provisionales: solo a partir de %1 valores se dice que nada está fuera de control.</translation>
        </message>
        <message>
            <source>Values of several materials stand in this chart, so it has no limits: a control chart is of one material. Choose one above.</source>
            <translation>En este gráfico hay valores de varios materiales, así que no tiene límites: un gráfico de control es de un solo material. Elija uno arriba.</translation>
        </message>
        <message>
            <source>Limits need %1 values.</source>
            <translation>Los límites necesitan %1 valores.</translation>
        </message>
        <message>
            <source>The ranges are of many samples: the limits hold where these have similar amounts.</source>
            <translation>Los recorridos son de muchas muestras: los límites valen si estas tienen contenidos parecidos.</translation>
        </message>
        <message>
            <source>Limits from earlier runs need %1 to %2 values.</source>
            <translation>Los límites a partir de tandas anteriores necesitan de %1 a %2 valores.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Item</name>
        <message>
            <source>photometer</source>
            <translation>fotómetro</translation>
        </message>
        <message>
            <source>piston pipette</source>
            <translation>pipeta de pistón</translation>
        </message>
        <message>
            <source>bulb pipette</source>
            <translation>pipeta aforada</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>matraz</translation>
        </message>
        <message>
            <source>balance</source>
            <translation>balanza</translation>
        </message>
        <message>
            <source>thermometer</source>
            <translation>termómetro</translation>
        </message>
        <message>
            <source>set of cuvettes</source>
            <translation>juego de cubetas</translation>
        </message>
        <message>
            <source>wavelength scale</source>
            <translation>escala de longitudes de onda</translation>
        </message>
        <message>
            <source>absorbance scale</source>
            <translation>escala de absorbancia</translation>
        </message>
        <message>
            <source>zero and noise</source>
            <translation>cero y ruido</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volumen</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>pesada</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>match of the cuvettes</source>
            <translation>concordancia de las cubetas</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>the number</source>
            <translation>el número</translation>
        </message>
        <message>
            <source>names nothing to be checked; give at least one number of days</source>
            <translation>no indica nada que comprobar; indique al menos un número de días</translation>
        </message>
        <message>
            <source>is not checked on a %1; leave it out</source>
            <translation>no se comprueba en este equipo (%1); omítalo</translation>
        </message>
        <message>
            <source>is every %1 days; it must be every 1 to %2 days</source>
            <translation>es cada %1 días; debe ser cada 1 a %2 días</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Outcome</name>
        <message>
            <source>keyed with the check</source>
            <translation>introducido con la comprobación</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>práctica habitual, sin fuente</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>a %1</translation>
        </message>
        <message>
            <source>European Pharmacopoeia 2.2.25</source>
            <translation>Farmacopea Europea 2.2.25</translation>
        </message>
        <message>
            <source>A(1 %, 1 cm) at %1</source>
            <translation>A(1 %, 1 cm) a %1</translation>
        </message>
        <message>
            <source>pharmacopoeia, control of absorbances</source>
            <translation>farmacopea, control de las absorbancias</translation>
        </message>
        <message>
            <source>standard deviation of the zero</source>
            <translation>desviación típica del cero</translation>
        </message>
        <message>
            <source>mean of the zero</source>
            <translation>media del cero</translation>
        </message>
        <message>
            <source>standard deviation of the coloured cuvette</source>
            <translation>desviación típica de la cubeta coloreada</translation>
        </message>
        <message>
            <source>standard deviation of one load</source>
            <translation>desviación típica de una carga</translation>
        </message>
        <message>
            <source>deviation from the weight of %1</source>
            <translation>desviación respecto a la pesa de %1</translation>
        </message>
        <message>
            <source>largest minus smallest of %1 cuvettes</source>
            <translation>mayor menos menor de %1 cubetas</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>como máximo %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>como mínimo %1</translation>
        </message>
        <message>
            <source>systematic error at %1</source>
            <translation>error sistemático a %1</translation>
        </message>
        <message>
            <source>random error at %1</source>
            <translation>error aleatorio a %1</translation>
        </message>
        <message>
            <source>class A, ISO 1042:1998</source>
            <translation>clase A, ISO 1042:1998</translation>
        </message>
        <message>
            <source>class A, ISO 648:2008</source>
            <translation>clase A, ISO 648:2008</translation>
        </message>
        <message>
            <source>mean minus the nominal volume, at 20 °C</source>
            <translation>media menos el volumen nominal, a 20 °C</translation>
        </message>
        <message>
            <source>standard deviation of the fillings</source>
            <translation>desviación típica de los llenados</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Protocol</name>
        <message>
            <source>is missing; key a number</source>
            <translation>falta; introduzca un número</translation>
        </message>
        <message>
            <source>is not a number of this check</source>
            <translation>no es ningún número de esta comprobación</translation>
        </message>
        <message>
            <source>are not the rows of this check</source>
            <translation>no son las filas de esta comprobación</translation>
        </message>
        <message>
            <source>is given and cannot be another</source>
            <translation>está fijado y no puede ser otro</translation>
        </message>
        <message>
            <source>hold no weighing of the largest volume; ten are needed</source>
            <translation>no contienen ninguna pesada del volumen mayor; hacen falta diez</translation>
        </message>
        <message>
            <source>hold %1 of %2 weighings of %3 µL; key the others, or leave this volume out</source>
            <translation>contienen %1 de %2 pesadas de %3 µL; introduzca las demás u omita este volumen</translation>
        </message>
        <message>
            <source>is missing, though that solution was read; key it</source>
            <translation>falta, aunque esa disolución se leyó; introdúzcalo</translation>
        </message>
        <message>
            <source>hold no absorbance; key at least %1 (found: %2)</source>
            <translation>no contienen ninguna absorbancia; introduzca al menos %1 (halladas: %2)</translation>
        </message>
        <message>
            <source>is missing; key both numbers of the line, or neither</source>
            <translation>falta; introduzca los dos números de la línea, o ninguno</translation>
        </message>
        <message>
            <source>need at least %1 weighings; there are %2</source>
            <translation>necesitan al menos %1 pesadas; hay %2</translation>
        </message>
        <message>
            <source>hold no wavelength found; key at least %1 (found: %2)</source>
            <translation>no contienen ninguna longitud de onda hallada; introduzca al menos %1 (halladas: %2)</translation>
        </message>
        <message>
            <source>need at least %1 readings of the zero; there are %2</source>
            <translation>necesitan al menos %1 lecturas del cero; hay %2</translation>
        </message>
        <message>
            <source>need at least %1 readings of the coloured cuvette, or none; there are %2</source>
            <translation>necesitan al menos %1 lecturas de la cubeta coloreada, o ninguna; hay %2</translation>
        </message>
        <message>
            <source>need at least %1 weighings of the one load; there are %2</source>
            <translation>necesitan al menos %1 pesadas de la misma carga; hay %2</translation>
        </message>
        <message>
            <source>need at least %1 weight with what was shown; there are %2</source>
            <translation>necesitan al menos %1 pesa con lo que se mostró; hay %2</translation>
        </message>
        <message>
            <source>need at least %1 temperature with what was shown; there are %2</source>
            <translation>necesitan al menos %1 temperatura con lo que se mostró; hay %2</translation>
        </message>
        <message>
            <source>need at least %1 cuvettes; there are %2</source>
            <translation>necesitan al menos %1 cubetas; hay %2</translation>
        </message>
        <message>
            <source>Common practice, no source.</source>
            <translation>Práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>Water at</source>
            <translation>Agua a</translation>
        </message>
        <message>
            <source>Of the water, mean of the series.</source>
            <translation>La del agua, media de la serie.</translation>
        </message>
        <message>
            <source>Air pressure</source>
            <translation>Presión del aire</translation>
        </message>
        <message>
            <source>As it is in the room, not reduced to sea level. 1 kPa is 10 mbar.</source>
            <translation>Tal como es en la sala, sin reducir al nivel del mar. 1 kPa son 10 mbar.</translation>
        </message>
        <message>
            <source>Humidity of the air</source>
            <translation>Humedad del aire</translation>
        </message>
        <message>
            <source>Its effect is small; 50 % where nobody measured it.</source>
            <translation>Su efecto es pequeño; 50 % si nadie la midió.</translation>
        </message>
        <message>
            <source>Water, balance and pipette stand in the room for two hours. Ten deliveries of each volume into the closed vessel, a new tip for each volume, each mass noted in mg.</source>
            <translation>Agua, balanza y pipeta permanecen dos horas en la sala. Diez dispensaciones de cada volumen en el recipiente cerrado, una punta nueva para cada volumen, cada masa anotada en mg.</translation>
        </message>
        <message>
            <source>Evaporation per delivery</source>
            <translation>Evaporación por dispensación</translation>
        </message>
        <message>
            <source>Mean loss of one cycle without a delivery; it is added to each mass.</source>
            <translation>Pérdida media de un ciclo sin dispensación; se suma a cada masa.</translation>
        </message>
        <message>
            <source>Suggested: ISO 8655-2:2002 for %1, type A, taken from the data of a university's software package and not from the standard. Its edition of 2022 has other limits: enter those that your laboratory works to.</source>
            <translation>Se propone: ISO 8655-2:2002 para %1, tipo A, tomada de los datos de un paquete de software de una universidad y no de la norma. Su edición de 2022 tiene otros límites: introduzca aquellos con los que trabaja su laboratorio.</translation>
        </message>
        <message>
            <source>Enter what your laboratory works to, and say where it comes from.</source>
            <translation>Introduzca aquello con lo que trabaja su laboratorio e indique de dónde viene.</translation>
        </message>
        <message>
            <source>Systematic error at most</source>
            <translation>Error sistemático como máximo</translation>
        </message>
        <message>
            <source>Random error at most</source>
            <translation>Error aleatorio como máximo</translation>
        </message>
        <message>
            <source>Volume set</source>
            <translation>Volumen ajustado</translation>
        </message>
        <message>
            <source>Mass</source>
            <translation>Masa</translation>
        </message>
        <message>
            <source>The dry flask is weighed empty and filled to the mark with water; the mass of the water is noted in g, at least three times.</source>
            <translation>El matraz seco se pesa vacío y se llena con agua hasta el enrase; la masa del agua se anota en g, al menos tres veces.</translation>
        </message>
        <message>
            <source>The pipette is drained against the wall of the weighed vessel, with its waiting time; the mass of the water is noted in g, at least three times.</source>
            <translation>La pipeta se vacía contra la pared del recipiente pesado, con su tiempo de espera; la masa del agua se anota en g, al menos tres veces.</translation>
        </message>
        <message>
            <source>Permissible error</source>
            <translation>Error máximo permitido</translation>
        </message>
        <message>
            <source>Suggested: class A of %1, taken from the data of a university's software package and not from the standard.</source>
            <translation>Se propone: clase A de %1, tomada de los datos de un paquete de software de una universidad y no de la norma.</translation>
        </message>
        <message>
            <source>Enter what is marked on the glass or stated in its certificate.</source>
            <translation>Introduzca lo que figura en el vidrio o en su certificado.</translation>
        </message>
        <message>
            <source>Cubic expansion of the glass</source>
            <translation>Dilatación cúbica del vidrio</translation>
        </message>
        <message>
            <source>Mass of the water</source>
            <translation>Masa del agua</translation>
        </message>
        <message>
            <source>holmium perchlorate</source>
            <translation>perclorato de holmio</translation>
        </message>
        <message>
            <source>deuterium lamp</source>
            <translation>lámpara de deuterio</translation>
        </message>
        <message>
            <source>mercury lamp</source>
            <translation>lámpara de mercurio</translation>
        </message>
        <message>
            <source>The maxima of a holmium perchlorate solution, or the lines of a lamp: where the photometer shows them. Those that lie near the wavelengths you work at; the others may be left out.</source>
            <translation>Los máximos de una disolución de perclorato de holmio, o las líneas de una lámpara: dónde los muestra el fotómetro. Los que están cerca de las longitudes de onda con las que trabaja; los demás se pueden omitir.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Holmium perchlorate solution is made with perchloric acid: it is oxidising and burns the skin, and dried out with anything organic it can explode. A sealed cuvette spares you from handling it. The light of a mercury lamp contains ultraviolet: do not look into it.</source>
            <translation>Siga primero sus normas locales y las instrucciones del proveedor. La disolución de perclorato de holmio se prepara con ácido perclórico: es comburente y quema la piel, y seco junto con algo orgánico puede explotar. Una cubeta sellada le ahorra manejarlo. La luz de una lámpara de mercurio contiene ultravioleta: no mire hacia ella.</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Esperado</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Hallado</translation>
        </message>
        <message>
            <source>Potassium dichromate, dried, in 0.005 mol/L sulphuric acid, against the same acid at 25 °C. Weigh 57.0 to 63.0 mg for 1000 mL; for 430 nm 57.0 to 63.0 mg for 100 mL. Wavelengths your photometer does not have are left out.</source>
            <translation>Dicromato de potasio, seco, en ácido sulfúrico 0,005 mol/L, frente al mismo ácido a 25 °C. Pese de 57,0 a 63,0 mg para 1000 mL; para 430 nm, de 57,0 a 63,0 mg para 100 mL. Las longitudes de onda que su fotómetro no tiene se omiten.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Potassium dichromate is toxic, may cause cancer and allergy, may damage fertility, is very toxic to aquatic life, and intensifies fire: do not breathe the dust, wear gloves, weigh in a fume hood, and dispose of the solution as hazardous waste. Sealed cuvettes with a certificate spare you from weighing it; then key the concentration that the certificate states.</source>
            <translation>Siga primero sus normas locales y las instrucciones del proveedor. El dicromato de potasio es tóxico, puede provocar cáncer y alergia, puede perjudicar la fertilidad, es muy tóxico para los organismos acuáticos y es comburente: no respire el polvo, lleve guantes, pese en campana y elimine la disolución como residuo peligroso. Las cubetas selladas con certificado le ahorran pesarlo; introduzca entonces la concentración que indica el certificado.</translation>
        </message>
        <message>
            <source>Dichromate, weak</source>
            <translation>Dicromato, diluido</translation>
        </message>
        <message>
            <source>In the solution for 235 to 350 nm: the mass weighed for one litre.</source>
            <translation>En la disolución para 235 a 350 nm: la masa pesada para un litro.</translation>
        </message>
        <message>
            <source>Dichromate, strong</source>
            <translation>Dicromato, concentrado</translation>
        </message>
        <message>
            <source>In the solution for 430 nm: ten times the mass weighed for 100 mL.</source>
            <translation>En la disolución para 430 nm: diez veces la masa pesada para 100 mL.</translation>
        </message>
        <message>
            <source>Path of the cuvette</source>
            <translation>Camino óptico de la cubeta</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>Absorbance less the acid's</source>
            <translation>Absorbancia menos la del ácido</translation>
        </message>
        <message>
            <source>strong solution</source>
            <translation>disolución concentrada</translation>
        </message>
        <message>
            <source>weak solution</source>
            <translation>disolución diluida</translation>
        </message>
        <message>
            <source>At the wavelength you work at: the zero, with a cuvette of water set to zero once, read repeatedly; and one coloured cuvette (absorbance 0.5 to 1) taken out and put back each time.</source>
            <translation>A la longitud de onda con la que trabaja: el cero, con una cubeta de agua ajustada a cero una vez y leída repetidas veces; y una cubeta coloreada (absorbancia de 0,5 a 1) que se saca y se vuelve a poner cada vez.</translation>
        </message>
        <message>
            <source>Standard deviation at most</source>
            <translation>Desviación típica como máximo</translation>
        </message>
        <message>
            <source>Mean of the zero, deviation at most</source>
            <translation>Media del cero, desviación como máximo</translation>
        </message>
        <message>
            <source>Resolution of the display</source>
            <translation>Resolución de la pantalla</translation>
        </message>
        <message>
            <source>The step of the display.</source>
            <translation>El escalón de la pantalla.</translation>
        </message>
        <message>
            <source>Zero</source>
            <translation>Cero</translation>
        </message>
        <message>
            <source>Coloured cuvette</source>
            <translation>Cubeta coloreada</translation>
        </message>
        <message>
            <source>One load, near what you weigh most, put on and taken off repeatedly; and weights with a certificate, each once.</source>
            <translation>Una carga, próxima a lo que más pesa, puesta y quitada una y otra vez; y pesas con certificado, cada una una vez.</translation>
        </message>
        <message>
            <source>Deviation from a weight at most</source>
            <translation>Desviación respecto a una pesa como máximo</translation>
        </message>
        <message>
            <source>One load, indication</source>
            <translation>Una carga, indicación</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Pesa</translation>
        </message>
        <message>
            <source>Indication</source>
            <translation>Indicación</translation>
        </message>
        <message>
            <source>Beside a thermometer with a certificate, in a stirred bath, at the temperatures you work at.</source>
            <translation>Junto a un termómetro con certificado, en un baño agitado, a las temperaturas con las que trabaja.</translation>
        </message>
        <message>
            <source>Deviation at most</source>
            <translation>Desviación como máximo</translation>
        </message>
        <message>
            <source>Reference</source>
            <translation>Referencia</translation>
        </message>
        <message>
            <source>Every cuvette of the set, clean and filled with water, read at the wavelength you work at, marks facing the same way.</source>
            <translation>Cada cubeta del juego, limpia y llena de agua, leída a la longitud de onda con la que trabaja, con las marcas hacia el mismo lado.</translation>
        </message>
        <message>
            <source>Largest minus smallest at most</source>
            <translation>Mayor menos menor como máximo</translation>
        </message>
        <message>
            <source>Path length tolerance</source>
            <translation>Tolerancia del camino óptico</translation>
        </message>
        <message>
            <source>From the certificate of the cuvettes: half the width. Suggested: 10.00 ± 0.01 mm (common practice, no source).</source>
            <translation>Del certificado de las cubetas: la mitad de la anchura. Se propone: 10,00 ± 0,01 mm (práctica habitual, sin fuente).</translation>
        </message>
        <message>
            <source>Absorbance with water</source>
            <translation>Absorbancia con agua</translation>
        </message>
        <message>
            <source>cuvette %1</source>
            <translation>cubeta %1</translation>
        </message>
        <message>
            <source>is not something checked on a %1</source>
            <translation>no es nada que se compruebe en este equipo (%1)</translation>
        </message>
        <message>
            <source>must be a real date that is not in the future</source>
            <translation>debe ser un día que exista y no sea futuro</translation>
        </message>
        <message>
            <source>the note</source>
            <translation>la nota</translation>
        </message>
        <message>
            <source>Suggested: borosilicate glass 3.3, as it is usually taken; not looked up in ISO 4787.</source>
            <translation>Se propone: vidrio de borosilicato 3.3, como se toma habitualmente; no consultado en ISO 4787.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Standing</name>
        <message>
            <source>out of use</source>
            <translation>fuera de uso</translation>
        </message>
        <message>
            <source>in date until %1</source>
            <translation>al día hasta el %1</translation>
        </message>
        <message>
            <source>due today</source>
            <translation>vence hoy</translation>
        </message>
        <message>
            <source>due in 1 day</source>
            <translation>vence en 1 día</translation>
        </message>
        <message>
            <source>due in %1 days</source>
            <translation>vence en %1 días</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>overdue since %1: %2</source>
            <translation>comprobación vencida desde el %1: %2</translation>
        </message>
        <message>
            <source>failed on %1: %2</source>
            <translation>comprobación no superada el %1: %2</translation>
        </message>
        <message>
            <source>never checked: %1</source>
            <translation>nunca comprobado: %1</translation>
        </message>
        <message>
            <source>check %1 of %2</source>
            <translation>comprobación %1 del %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Appraisal</name>
        <message>
            <source>the window starts at %1, below the smallest difference in absorbance that can be resolved (%2)</source>
            <translation>el intervalo de medida empieza en %1, por debajo de la menor diferencia de absorbancias que se puede distinguir (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Budget</name>
        <message>
            <source>repeatability</source>
            <translation>repetibilidad</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>recta de calibración</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>patrón</translation>
        </message>
        <message>
            <source>dilution step %1 (%2 mL to %3 mL)</source>
            <translation>paso de dilución %1 (%2 mL a %3 mL)</translation>
        </message>
        <message>
            <source>concentration of the standard</source>
            <translation>concentración del patrón</translation>
        </message>
        <message>
            <source>concentration of the standard (%1)</source>
            <translation>concentración del patrón (%1)</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanco</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanco de muestra</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Checks</name>
        <message>
            <source>The replicates agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Las réplicas concuerdan: difieren en %1, se admite hasta %2 (%3).</translation>
        </message>
        <message>
            <source>The sample volumes agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Los volúmenes de muestra concuerdan: difieren en %1, se admite hasta %2 (%3).</translation>
        </message>
        <message>
            <source>the method's repeatability limit</source>
            <translation>el límite de repetibilidad del método</translation>
        </message>
        <message>
            <source>the noise of the readings</source>
            <translation>el ruido de las lecturas</translation>
        </message>
        <message>
            <source>%1, common practice</source>
            <translation>%1, práctica habitual</translation>
        </message>
        <message>
            <source>the laboratory's rule of %1</source>
            <translation>la regla del laboratorio de %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>como máximo %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>%1, %2 left</source>
            <translation>%1, queda el %2</translation>
        </message>
        <message>
            <source>at most %1, at least %2 left</source>
            <translation>hasta %1, con al menos el %2</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>como mínimo %1</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ningún tubo</translation>
        </message>
        <message>
            <source>%1 from %2</source>
            <translation>%1 desde %2</translation>
        </message>
        <message>
            <source>%1 up to %2</source>
            <translation>%1 hasta %2</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>hasta %1</translation>
        </message>
        <message>
            <source>absorbance rises</source>
            <translation>la absorbancia sube</translation>
        </message>
        <message>
            <source>absorbance falls</source>
            <translation>la absorbancia baja</translation>
        </message>
        <message>
            <source>change within the noise</source>
            <translation>cambio dentro del ruido</translation>
        </message>
        <message>
            <source>Recovery of the control</source>
            <translation>Recuperación del control</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 places</source>
            <translation>%1 lugares</translation>
        </message>
        <message>
            <source>some</source>
            <translation>algunas</translation>
        </message>
        <message>
            <source>worst of %1</source>
            <translation>caso más cercano al límite, de %1</translation>
        </message>
        <message>
            <source>laboratory's rule</source>
            <translation>regla del laboratorio</translation>
        </message>
        <message>
            <source>common practice</source>
            <translation>práctica habitual</translation>
        </message>
        <message>
            <source>noise of the readings</source>
            <translation>ruido de las lecturas</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>a reading is missing</source>
            <translation>falta una lectura</translation>
        </message>
        <message>
            <source>a reading cannot be right</source>
            <translation>una lectura no puede ser correcta</translation>
        </message>
        <message>
            <source>a signal runs in the wrong direction</source>
            <translation>una señal va en el sentido equivocado</translation>
        </message>
        <message>
            <source>the absorbance is too high</source>
            <translation>la absorbancia es demasiado alta</translation>
        </message>
        <message>
            <source>the reagent was used up</source>
            <translation>el reactivo se ha agotado</translation>
        </message>
        <message>
            <source>the blank is missing</source>
            <translation>falta el blanco</translation>
        </message>
        <message>
            <source>the blank is too high</source>
            <translation>el blanco es demasiado alto</translation>
        </message>
        <message>
            <source>the blanks are too far apart</source>
            <translation>los blancos difieren demasiado</translation>
        </message>
        <message>
            <source>the replicates are too far apart</source>
            <translation>las réplicas difieren demasiado</translation>
        </message>
        <message>
            <source>the standard is too old</source>
            <translation>el patrón es demasiado antiguo</translation>
        </message>
        <message>
            <source>two sample volumes disagree</source>
            <translation>dos volúmenes de muestra no concuerdan</translation>
        </message>
        <message>
            <source>the reaction has not ended</source>
            <translation>la reacción no ha terminado</translation>
        </message>
        <message>
            <source>a reading was taken too early</source>
            <translation>una lectura se tomó demasiado pronto</translation>
        </message>
        <message>
            <source>a reading was taken too late</source>
            <translation>una lectura se tomó demasiado tarde</translation>
        </message>
        <message>
            <source>a lot is out of date</source>
            <translation>un lote está caducado</translation>
        </message>
        <message>
            <source>the sample volume is outside its range</source>
            <translation>el volumen de muestra está fuera de su intervalo</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>tubo %1</translation>
        </message>
        <message>
            <source>tubes %1 and %2</source>
            <translation>tubos %1 y %2</translation>
        </message>
        <message>
            <source>%1 of sample</source>
            <translation>%1 de muestra</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>sin diluir</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, después </translation>
        </message>
        <message>
            <source>diluted at least %1-fold in all (%2)</source>
            <translation>diluida al menos %1 veces en total (%2)</translation>
        </message>
        <message>
            <source>diluted %1-fold in all (%2)</source>
            <translation>diluida %1 veces en total (%2)</translation>
        </message>
        <message>
            <source>Readings missing</source>
            <translation>Lecturas que faltan</translation>
        </message>
        <message>
            <source>Readings no photometer can show</source>
            <translation>Lecturas que ningún fotómetro puede mostrar</translation>
        </message>
        <message>
            <source>Signals in the wrong direction</source>
            <translation>Señales en el sentido equivocado</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Absorbancia máxima</translation>
        </message>
        <message>
            <source>Reagent left</source>
            <translation>Reactivo restante</translation>
        </message>
        <message>
            <source>Blanks read</source>
            <translation>Blancos leídos</translation>
        </message>
        <message>
            <source>Blank signal</source>
            <translation>Señal del blanco</translation>
        </message>
        <message>
            <source>Difference between blanks</source>
            <translation>Diferencia entre blancos</translation>
        </message>
        <message>
            <source>Difference between replicates</source>
            <translation>Diferencia entre réplicas</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Recuperación del patrón</translation>
        </message>
        <message>
            <source>Age of the standard</source>
            <translation>Antigüedad del patrón</translation>
        </message>
        <message>
            <source>Recovery of the spike</source>
            <translation>Recuperación de la fortificación</translation>
        </message>
        <message>
            <source>Difference between sample volumes</source>
            <translation>Diferencia entre volúmenes de muestra</translation>
        </message>
        <message>
            <source>Reactions not ended</source>
            <translation>Reacciones sin terminar</translation>
        </message>
        <message>
            <source>Readings too early</source>
            <translation>Lecturas demasiado tempranas</translation>
        </message>
        <message>
            <source>Readings too late</source>
            <translation>Lecturas demasiado tardías</translation>
        </message>
        <message>
            <source>Lot in date</source>
            <translation>Lote sin caducar</translation>
        </message>
        <message>
            <source>Volumes outside their range</source>
            <translation>Volúmenes fuera de su intervalo</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2</source>
            <translation>%1 no se calcula: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>method %1, version %2, has no measurand %3. Evaluate the sample by a version that has it.</source>
            <translation>el método %1, versión %2, no tiene ningún mensurando %3. Evalúe la muestra con una versión que lo tenga.</translation>
        </message>
        <message>
            <source>%1 is in %2 and %3 in %4. Enter the sample in the same form in both runs.</source>
            <translation>%1 está en %2 y %3 en %4. Introduzca la muestra en la misma forma en las dos tandas.</translation>
        </message>
        <message>
            <source>%1 has no value.</source>
            <translation>%1 no tiene valor.</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2 is only known to be larger, which leaves no limit for it. Repeat as advised.</source>
            <translation>%1 no se calcula: de %2 solo se sabe que es mayor, lo que no deja ningún límite para él. Repita como se aconseja.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>%1; see there.</source>
            <translation>%1; véase allí.</translation>
        </message>
        <message>
            <source>%1 with the same contents read</source>
            <translation>en %1 con el mismo contenido se leyó</translation>
        </message>
        <message>
            <source>the other tubes with the same reagents read about</source>
            <translation>en los demás tubos con los mismos reactivos se leyó alrededor de</translation>
        </message>
        <message>
            <source>%1 blanks and standards read about</source>
            <translation>en %1 blancos y patrones se leyó alrededor de</translation>
        </message>
        <message>
            <source>%1 other samples read about</source>
            <translation>en otras %1 muestras se leyó alrededor de</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1: %2 es %3, pero %4 %5. Busque un signo decimal desplazado o un tubo confundido.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5, and the same reagents scatter by %6 at most. Look for a reagent left out or added twice, bubbles, or a coloured sample.</source>
            <translation>%1: %2 es %3, pero %4 %5, y los mismos reactivos se dispersan en %6 como máximo. Busque un reactivo olvidado o añadido dos veces, burbujas o una muestra coloreada.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, above the photometer's limit of %4. An absorbance that high is not proportional to concentration.</source>
            <translation>%1: %2 es %3, por encima del límite del fotómetro de %4. Una absorbancia tan alta no es proporcional a la concentración.</translation>
        </message>
        <message>
            <source>%1: with this the blank's signal is %2, and the method allows %3. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1: con esto la señal del blanco es %2, y el método admite %3. Busque un signo decimal desplazado o un tubo confundido.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain: the reagent is nearly used up.</source>
            <translation>%1: %2 es %3, y debe quedar %4: el reactivo está casi agotado.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, to the last digit what %4 shows, which was read just before and holds something else. Make sure that the cuvette was changed.</source>
            <translation>%1: %2 es %3, hasta la última cifra lo que muestra %4, que se leyó justo antes y contiene otra cosa. Asegúrese de que se cambió la cubeta.</translation>
        </message>
        <message>
            <source>with %1</source>
            <translation>con %1</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is within %2.</source>
            <translation>La señal media del blanco (%1) está dentro del límite de %2.</translation>
        </message>
        <message>
            <source>The blanks agree: %1 apart, up to %2 allowed.</source>
            <translation>Los blancos concuerdan: difieren en %1, se admite hasta %2.</translation>
        </message>
        <message>
            <source>%1, lot %2, is in date until %3.</source>
            <translation>%1, lote %2, no caduca hasta el %3.</translation>
        </message>
        <message>
            <source>%1 found, %2 at use</source>
            <translation>hallado %1; esperado al usarlo %2</translation>
        </message>
        <message>
            <source>This standard calibrates the run and cannot judge itself; a second standard or a control would.</source>
            <translation>Este patrón calibra la tanda y no puede juzgarse a sí mismo; un segundo patrón o un control sí podría.</translation>
        </message>
        <message>
            <source>Recovery %1 is within %2 (%3).</source>
            <translation>La recuperación, %1, está dentro del intervalo de %2 (%3).</translation>
        </message>
        <message>
            <source>The standard was fresh enough: %1.</source>
            <translation>El patrón era lo bastante reciente: %1.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is within %2.</source>
            <translation>La recuperación de la fortificación, %1, está dentro del intervalo de %2.</translation>
        </message>
        <message>
            <source>%1 old, %2 of its strength left</source>
            <translation>antigüedad %1, queda el %2 de su concentración</translation>
        </message>
        <message>
            <source>%1 is marked %2 before what precedes it (the method waits %3)</source>
            <translation>%1 está marcado %2 antes de lo que le precede (el método espera %3)</translation>
        </message>
        <message>
            <source>%1 was read %2 early (after %3, the method waits %4)</source>
            <translation>%1 se leyó %2 antes de tiempo (después de %3, el método espera %4)</translation>
        </message>
        <message>
            <source>%1 was read %2 late (after %3, the method waits %4)</source>
            <translation>%1 se leyó %2 con retraso (después de %3, el método espera %4)</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too early.</source>
            <translation>Ninguna lectura cuya hora se conozca se tomó demasiado pronto.</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too late.</source>
            <translation>Ninguna lectura cuya hora se conozca se tomó demasiado tarde.</translation>
        </message>
        <message>
            <source>No reading was taken too early.</source>
            <translation>Ninguna lectura se tomó demasiado pronto.</translation>
        </message>
        <message>
            <source>No reading was taken too late.</source>
            <translation>Ninguna lectura se tomó demasiado tarde.</translation>
        </message>
        <message>
            <source>Read again when the wait is over.</source>
            <translation>Lea de nuevo cuando termine la espera.</translation>
        </message>
        <message>
            <source>A slow side reaction may have added to the signal.</source>
            <translation>Una reacción secundaria lenta puede haber aumentado la señal.</translation>
        </message>
        <message>
            <source>Every reading is there.</source>
            <translation>Están todas las lecturas.</translation>
        </message>
        <message>
            <source>Every reading that counts is there: without %1, spoilt.</source>
            <translation>Están todas las lecturas que cuentan: sin %1, malogrado.</translation>
        </message>
        <message>
            <source>%1 is missing</source>
            <translation>falta %1</translation>
        </message>
        <message>
            <source>spoilt (%1)</source>
            <translation>malogrado (%1)</translation>
        </message>
        <message>
            <source>Read and key what is missing.</source>
            <translation>Lea e introduzca lo que falta.</translation>
        </message>
        <message>
            <source>No other tube stands in for it: pipette it again.</source>
            <translation>Ningún otro tubo lo sustituye: pipetéelo de nuevo.</translation>
        </message>
        <message>
            <source>Every reading is one that a photometer can show.</source>
            <translation>Todas las lecturas son de las que un fotómetro puede mostrar.</translation>
        </message>
        <message>
            <source>%1 is %2, outside %3 to %4</source>
            <translation>%1 es %2, fuera del intervalo de %3 a %4</translation>
        </message>
        <message>
            <source>Read the tube again; look for a slipped decimal point.</source>
            <translation>Lea el tubo de nuevo; busque un signo decimal desplazado.</translation>
        </message>
        <message>
            <source>No reading is above the photometer's limit of %1.</source>
            <translation>Ninguna lectura está por encima del límite del fotómetro de %1.</translation>
        </message>
        <message>
            <source>%1 is %2, above the photometer's limit of %3</source>
            <translation>%1 es %2, por encima del límite del fotómetro de %3</translation>
        </message>
        <message>
            <source>An absorbance that high is not proportional to concentration.</source>
            <translation>Una absorbancia tan alta no es proporcional a la concentración.</translation>
        </message>
        <message>
            <source>Enough of the falling reagent is left (%1 or more).</source>
            <translation>Queda bastante del reactivo que disminuye (%1 o más).</translation>
        </message>
        <message>
            <source>%1 is %2, less than the %3 that must remain</source>
            <translation>%1 es %2, menos que los %3 que deben quedar</translation>
        </message>
        <message>
            <source>The reagent was used up: the true value is only known to be larger.</source>
            <translation>El reactivo se ha agotado: del valor verdadero solo se sabe que es mayor.</translation>
        </message>
        <message>
            <source>Every sample volume is one the method allows.</source>
            <translation>Todos los volúmenes de muestra son de los que admite el método.</translation>
        </message>
        <message>
            <source>%1 of sample, outside %2 to %3</source>
            <translation>%1 de muestra, fuera del intervalo de %2 a %3</translation>
        </message>
        <message>
            <source>Pipette a volume within the method's range.</source>
            <translation>Pipetee un volumen dentro del intervalo del método.</translation>
        </message>
        <message>
            <source>Every reaction followed as a series has ended.</source>
            <translation>Todas las reacciones seguidas en serie han terminado.</translation>
        </message>
        <message>
            <source>%1 still changes (%2 per minute over the last %3 readings)</source>
            <translation>%1 sigue cambiando (%2 por minuto en las últimas %3 lecturas)</translation>
        </message>
        <message>
            <source>Read on until the change from reading to reading is constant.</source>
            <translation>Siga leyendo hasta que el cambio de lectura a lectura sea constante.</translation>
        </message>
        <message>
            <source>Absorbance rose, as it should.</source>
            <translation>La absorbancia subió, como debe.</translation>
        </message>
        <message>
            <source>Absorbance fell, as it should.</source>
            <translation>La absorbancia bajó, como debe.</translation>
        </message>
        <message>
            <source>absorbance fell by %1 where it should rise</source>
            <translation>la absorbancia bajó en %1 donde debe subir</translation>
        </message>
        <message>
            <source>absorbance rose by %1 where it should fall</source>
            <translation>la absorbancia subió en %1 donde debe bajar</translation>
        </message>
        <message>
            <source>Look for swapped readings, a wrong tube or a missing addition.</source>
            <translation>Busque lecturas intercambiadas, un tubo equivocado o una adición que falta.</translation>
        </message>
        <message>
            <source>Net signal is at least %1.</source>
            <translation>La señal neta es como mínimo %1.</translation>
        </message>
        <message>
            <source>Net signal is at most %1.</source>
            <translation>La señal neta es como máximo %1.</translation>
        </message>
        <message>
            <source>net signal %1 is below %2</source>
            <translation>la señal neta (%1) está por debajo de %2</translation>
        </message>
        <message>
            <source>net signal %1 is above %2</source>
            <translation>la señal neta (%1) está por encima de %2</translation>
        </message>
        <message>
            <source>Too little to be measured well.</source>
            <translation>Demasiado poco para medirlo bien.</translation>
        </message>
        <message>
            <source>More than the assay measures in proportion.</source>
            <translation>Más de lo que el ensayo mide de forma proporcional.</translation>
        </message>
        <message>
            <source>The standard %1 is too old: %2. Make a fresh one.</source>
            <translation>El patrón %1 es demasiado antiguo: %2. Prepare uno nuevo.</translation>
        </message>
        <message>
            <source>no standard</source>
            <translation>sin patrón</translation>
        </message>
        <message>
            <source>The method judges the recovery of a standard (%1), and no tube of this run held one or a control: nothing in the run shows what the assay recovered. Say in the reason why it may stand, or repeat it with a standard.</source>
            <translation>El método juzga la recuperación de un patrón (%1), y ningún tubo de esta tanda contenía uno ni un control: nada en la tanda muestra cuánto recuperó el ensayo. Diga en el motivo por qué puede admitirse, o repítala con un patrón.</translation>
        </message>
        <message>
            <source>the net signal is too low</source>
            <translation>la señal neta es demasiado baja</translation>
        </message>
        <message>
            <source>the net signal is too high</source>
            <translation>la señal neta es demasiado alta</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>la recuperación del patrón está fuera de sus límites</translation>
        </message>
        <message>
            <source>the recovery of the spike is outside its limits</source>
            <translation>la recuperación de la fortificación está fuera de sus límites</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Señal neta mínima</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Señal neta máxima</translation>
        </message>
        <message>
            <source>This run has no standard, and the method judges the recovery of one (%1). Add a standard or a control; without one the review cannot tell whether the assay finds what is there.</source>
            <translation>Esta tanda no tiene patrón, y el método juzga la recuperación de uno (%1). Añada un patrón o un control; sin él la revisión no puede decir si el ensayo halla lo que hay.</translation>
        </message>
        <message>
            <source>No standard of this run holds %1, and the method judges its recovery (%2). Add a standard or a control that does.</source>
            <translation>Ningún patrón de esta tanda contiene %1, y el método juzga su recuperación (%2). Añada un patrón o un control que lo contenga.</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>muestra %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>patrón %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>tanda</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>válido</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>repetir</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>investigar</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>control %1</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain when the reaction is over. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1: %2 es %3, y deben quedar %4 al terminar la reacción. Busque un signo decimal desplazado o un reactivo olvidado.</translation>
        </message>
        <message>
            <source>The control was fresh enough: %1.</source>
            <translation>El control era lo bastante reciente: %1.</translation>
        </message>
        <message>
            <source>%1: with this its net signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1: con esto su señal neta es %2, pero en %3 con el mismo contenido fue %4, y se admite como máximo %6 entre ellos (%5). Busque un error de tecleo, un tubo confundido o un error de pipeteo.</translation>
        </message>
        <message>
            <source>%1: with this its signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1: con esto su señal es %2, pero en %3 con el mismo contenido fue %4, y se admite como máximo %6 entre ellos (%5). Busque un error de tecleo, un tubo confundido o un error de pipeteo.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but blanks of earlier runs by this method read about %4. Look for a slipped decimal point, and that the photometer was set to zero as always.</source>
            <translation>%1: %2 es %3, pero los blancos de tandas anteriores con este método dieron alrededor de %4. Busque un signo decimal desplazado y compruebe que el fotómetro se puso a cero como siempre.</translation>
        </message>
        <message>
            <source>The replicates in %1 are %2 apart, more than %3 (%4).</source>
            <translation>Las réplicas en %1 difieren en %2, más de %3 (%4).</translation>
        </message>
        <message>
            <source>Read them again while they stand in the rack; if they still disagree, one of them was pipetted wrongly: repeat the sample.</source>
            <translation>Léalas de nuevo mientras están en la gradilla; si siguen sin concordar, una de ellas se pipeteó mal: repita la muestra.</translation>
        </message>
        <message>
            <source>Different sample volumes give results %1 apart, more than %2 (%3).</source>
            <translation>Volúmenes de muestra distintos dan resultados que difieren en %1, más de %2 (%3).</translation>
        </message>
        <message>
            <source>Suspect an interference: dilute further, or check by a spike.</source>
            <translation>Sospeche una interferencia: diluya más o compruébelo con una fortificación.</translation>
        </message>
        <message>
            <source>What the reagents show by themselves is taken off the result, and is more than usual.</source>
            <translation>Lo que muestran los reactivos por sí solos se descuenta del resultado, y es más de lo habitual.</translation>
        </message>
        <message>
            <source>Their mean is taken off the result, which is less well known by that.</source>
            <translation>Su media se descuenta del resultado, que por eso se conoce con menos certeza.</translation>
        </message>
        <message>
            <source>The result is their mean, which is less well known than usual.</source>
            <translation>El resultado es su media, que se conoce con menos certeza de lo habitual.</translation>
        </message>
        <message>
            <source>The results of the run may be off in the same proportion.</source>
            <translation>Los resultados de la tanda pueden estar desviados en la misma proporción.</translation>
        </message>
        <message>
            <source>What it held at its use is less well known, and so is what rests on it.</source>
            <translation>Lo que contenía al usarlo se conoce con menos certeza, y también lo que se apoya en ello.</translation>
        </message>
        <message>
            <source>Whether something in the sample disturbs the measurement is open.</source>
            <translation>No se sabe si algo en la muestra interfiere en la medición.</translation>
        </message>
        <message>
            <source>Something in the sample may disturb the measurement.</source>
            <translation>Algo en la muestra puede interferir en la medición.</translation>
        </message>
        <message>
            <source>The result may be that of an incomplete reaction.</source>
            <translation>El resultado puede ser el de una reacción incompleta.</translation>
        </message>
        <message>
            <source>It may have worked less well than one in date.</source>
            <translation>Puede haber funcionado peor que uno sin caducar.</translation>
        </message>
        <message>
            <source>The method does not say how well it works with such a volume.</source>
            <translation>El método no dice hasta qué punto funciona bien con un volumen así.</translation>
        </message>
        <message>
            <source>No result rests on such a signal.</source>
            <translation>Ningún resultado se apoya en una señal así.</translation>
        </message>
        <message>
            <source>No result rests on such a reading.</source>
            <translation>Ningún resultado se apoya en una lectura así.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 has to be there at the start for the largest signal and what must remain. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1: %2 es %3, y al principio hace falta %4 para la señal máxima y lo que debe quedar. Busque un signo decimal desplazado o un reactivo olvidado.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and more than %4 at the start leaves no room for the largest signal. Look for a slipped decimal point, and that the photometer was set to zero.</source>
            <translation>%1: %2 es %3, y más de %4 al principio no deja margen para la señal máxima. Busque un signo decimal desplazado y compruebe que el fotómetro se puso a cero.</translation>
        </message>
        <message>
            <source>%1 Or the decimal point slipped: %2 would be plausible here.</source>
            <translation>%1 O el signo decimal está desplazado: %2 sería verosímil aquí.</translation>
        </message>
        <message>
            <source>Repeat %1.</source>
            <translation>Repita %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification, %1.</source>
            <translation>Informe como inferior al límite de cuantificación, %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification.</source>
            <translation>Informe como inferior al límite de cuantificación.</translation>
        </message>
        <message>
            <source>Another tube of the sample is not: look for a missing addition.</source>
            <translation>Otro tubo de la muestra no lo está: busque una adición que falta.</translation>
        </message>
        <message>
            <source>No blank has been read: the results are not corrected for what the reagents themselves do.</source>
            <translation>No se ha leído ningún blanco: los resultados no están corregidos de lo que hacen los propios reactivos.</translation>
        </message>
        <message>
            <source>Run a blank with diluent in place of sample.</source>
            <translation>Lea un blanco con diluyente en lugar de muestra.</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is beyond the method's %2.</source>
            <translation>La señal media del blanco (%1) está más allá del límite del método, %2.</translation>
        </message>
        <message>
            <source>Look for a contaminated reagent or cuvette and repeat the blank.</source>
            <translation>Busque un reactivo o una cubeta contaminados y repita el blanco.</translation>
        </message>
        <message>
            <source>The blanks (%1) are %2 apart, more than %3 (%4).</source>
            <translation>Los blancos (%1) difieren en %2, más de %3 (%4).</translation>
        </message>
        <message>
            <source>One of them was pipetted or read wrongly: read them again.</source>
            <translation>Uno de ellos se pipeteó o se leyó mal: léalos de nuevo.</translation>
        </message>
        <message>
            <source>%1, lot %2, expired on %3.</source>
            <translation>%1, lote %2, caducó el %3.</translation>
        </message>
        <message>
            <source>Repeat with a lot in date, or say why it may stand.</source>
            <translation>Repita con un lote sin caducar o indique por qué puede quedar así.</translation>
        </message>
        <message>
            <source>Recovery %1 is outside %2 (%3).</source>
            <translation>La recuperación, %1, está fuera del intervalo de %2 (%3).</translation>
        </message>
        <message>
            <source>Check the control's value and its date, the pipette and the reagents before any result of this run is used.</source>
            <translation>Compruebe el valor y la fecha del control, la pipeta y los reactivos antes de usar ningún resultado de esta tanda.</translation>
        </message>
        <message>
            <source>Check the preparation and age of the standard, the pipette and the reagents before any result of this run is used.</source>
            <translation>Compruebe la preparación y la antigüedad del patrón, la pipeta y los reactivos antes de usar ningún resultado de esta tanda.</translation>
        </message>
        <message>
            <source>The control was too old: %1.</source>
            <translation>El control era demasiado antiguo: %1.</translation>
        </message>
        <message>
            <source>Take a fresh one.</source>
            <translation>Tome uno nuevo.</translation>
        </message>
        <message>
            <source>The standard was too old: %1.</source>
            <translation>El patrón era demasiado antiguo: %1.</translation>
        </message>
        <message>
            <source>Make a fresh one.</source>
            <translation>Prepare uno nuevo.</translation>
        </message>
        <message>
            <source>The spiked tube lies above what the assay measures; its recovery of %1 says nothing.</source>
            <translation>El tubo fortificado está por encima de lo que mide el ensayo; su recuperación de %1 no dice nada.</translation>
        </message>
        <message>
            <source>Repeat it with less spike or a higher dilution.</source>
            <translation>Repítalo con menos fortificación o una dilución mayor.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is outside %2.</source>
            <translation>La recuperación de la fortificación, %1, está fuera del intervalo de %2.</translation>
        </message>
        <message>
            <source>Suspect an interference or a pipetting error.</source>
            <translation>Sospeche una interferencia o un error de pipeteo.</translation>
        </message>
        <message>
            <source>lot's use-by date</source>
            <translation>caducidad del lote</translation>
        </message>
        <message>
            <source>Blanks read: %1.</source>
            <translation>Blancos leídos: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Compliance</name>
        <message>
            <source>%1; the result states no uncertainty</source>
            <translation>%1; el resultado no indica ninguna incertidumbre</translation>
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
            <translation>no se puede decidir, porque la regla necesita una incertidumbre y una cota no tiene ninguna</translation>
        </message>
        <message>
            <source>cannot be decided, because the rule needs an uncertainty and the result states none</source>
            <translation>no se puede decidir, porque la regla necesita una incertidumbre y el resultado no indica ninguna</translation>
        </message>
        <message>
            <source>cannot be decided, because only a bound is known</source>
            <translation>no se puede decidir, porque solo se conoce una cota</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty, which leaves nothing between the limits</source>
            <translation>no se puede decidir con esta incertidumbre, que no deja nada entre los límites</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty</source>
            <translation>no se puede decidir con esta incertidumbre</translation>
        </message>
        <message>
            <source>cannot be decided against %1: %2</source>
            <translation>no se puede decidir frente a %1: %2</translation>
        </message>
        <message>
            <source>below the threshold</source>
            <translation>por debajo del umbral</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>dentro</translation>
        </message>
        <message>
            <source>at or above the threshold</source>
            <translation>en el umbral o por encima</translation>
        </message>
        <message>
            <source>outside</source>
            <translation>fuera</translation>
        </message>
        <message>
            <source>cannot be decided</source>
            <translation>no se puede decidir</translation>
        </message>
        <message>
            <source>less than %1</source>
            <translation>menos de %1</translation>
        </message>
        <message>
            <source>more than %1</source>
            <translation>más de %1</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is normally distributed about the result</source>
            <translation>probabilidad %1 de que el valor verdadero esté más allá del límite, si se distribuye normalmente en torno al resultado</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is distributed about the result as Student's t with %2 degrees of freedom</source>
            <translation>probabilidad %1 de que el valor verdadero esté más allá del límite, si se distribuye en torno al resultado como la t de Student con %2 grados de libertad</translation>
        </message>
        <message>
            <source>the result is given in %1</source>
            <translation>el resultado se da en %1</translation>
        </message>
        <message>
            <source>the result has no value</source>
            <translation>el resultado no tiene valor</translation>
        </message>
        <message>
            <source>%1: %2 against %3 (%4)</source>
            <translation>%1: %2 frente a %3 (%4)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::ReportUnit</name>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per volume</source>
            <translation>un resultado en %1 no se puede dar en %2 sin la densidad, que nadie ha indicado; elija una unidad por volumen</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per mass</source>
            <translation>un resultado en %1 no se puede dar en %2 sin la densidad, que nadie ha indicado; elija una unidad por masa</translation>
        </message>
        <message>
            <source>no value</source>
            <translation>ningún valor</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2, because what is measured has no molar mass of its own; choose a unit of mass</source>
            <translation>un resultado en %1 no se puede dar en %2, porque lo que se mide no tiene masa molar propia; elija una unidad de masa</translation>
        </message>
        <message>
            <source>there is no value to report yet; complete the readings first</source>
            <translation>aún no hay ningún valor que informar; complete primero las lecturas</translation>
        </message>
        <message>
            <source>a result in "%1" cannot be given in %2</source>
            <translation>un resultado en «%1» no se puede dar en %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Specification</name>
        <message>
            <source>simple acceptance</source>
            <translation>aceptación simple</translation>
        </message>
        <message>
            <source>guard band for acceptance</source>
            <translation>aceptación con banda de guarda</translation>
        </message>
        <message>
            <source>guard band for rejection</source>
            <translation>rechazo con banda de guarda</translation>
        </message>
        <message>
            <source>guard band for acceptance and rejection</source>
            <translation>aceptación y rechazo con banda de guarda</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>como máximo %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>como mínimo %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>a label threshold of %1</source>
            <translation>un umbral de etiquetado de %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::SpecificationSoundness</name>
        <message>
            <source>is missing; a limit of this kind needs it</source>
            <translation>falta; un límite de esta clase lo necesita</translation>
        </message>
        <message>
            <source>has no meaning for a limit of this kind; leave it out</source>
            <translation>no tiene sentido para un límite de esta clase; omítalo</translation>
        </message>
        <message>
            <source>must be greater than lower: %1 is not greater than %2</source>
            <translation>debe ser mayor que lower: %1 no es mayor que %2</translation>
        </message>
        <message>
            <source>leaves nothing inside the limits; must be less than %1, not %2</source>
            <translation>no deja nada dentro de los límites; debe ser menor que %1, no %2</translation>
        </message>
        <message>
            <source>is missing; this decision rule needs a guard band</source>
            <translation>falta; esta regla de decisión necesita una banda de guarda</translation>
        </message>
        <message>
            <source>has no meaning with simple acceptance; leave it out</source>
            <translation>no tiene sentido con la aceptación simple; omítalo</translation>
        </message>
        <message>
            <source>has no meaning with a one-sided guard band of 95 %; leave it out</source>
            <translation>no tiene sentido con una banda de guarda unilateral del 95 %; omítalo</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>el producto</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>el mensurando</translation>
        </message>
        <message>
            <source>is blank; say where the limit stands</source>
            <translation>está en blanco; indique dónde figura el límite</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la fuente</translation>
        </message>
        <message>
            <source>is not a date; say when the source was read</source>
            <translation>no es una fecha; indique de qué fecha es la fuente leída</translation>
        </message>
        <message>
            <source>lists %1 limits; at most %2 are allowed</source>
            <translation>enumera %1 límites; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>is the same limit from the same source as entry %1; keep one of them</source>
            <translation>es el mismo límite de la misma fuente que la entrada %1; deje uno de los dos</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::WideUncertainty</name>
        <message>
            <source>The uncertainty is wide because it rests on the scatter of only %1 tubes: so few degrees of freedom make a large coverage factor k.</source>
            <translation>La incertidumbre es grande porque se basa en la dispersión de solo %1 tubos: tan pocos grados de libertad dan un factor de cobertura k grande.</translation>
        </message>
        <message>
            <source>The uncertainty is wide because its largest part (%1) rests on the scatter of few tubes: so few degrees of freedom make a large coverage factor k.</source>
            <translation>La incertidumbre es grande porque su mayor parte (%1) se basa en la dispersión de pocos tubos: tan pocos grados de libertad dan un factor de cobertura k grande.</translation>
        </message>
        <message>
            <source>A repeat of the sample with more tubes would narrow it.</source>
            <translation>Repetir la muestra con más tubos la reduciría.</translation>
        </message>
        <message>
            <source>More tubes of what that part comes from would narrow it.</source>
            <translation>Más tubos de aquello de donde procede esa parte la reducirían.</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Working</name>
        <message>
            <source>%1 at the addition of the starter</source>
            <translation>%1 en la adición del iniciador</translation>
        </message>
        <message>
            <source>%1 at the final volume</source>
            <translation>%1 al volumen final</translation>
        </message>
        <message>
            <source>%1 x V(%1) / V</source>
            <translation>%1 × V(%1) / V</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blanco</translation>
        </message>
        <message>
            <source>signal of %1</source>
            <translation>señal de %1</translation>
        </message>
        <message>
            <source>mean blank</source>
            <translation>blanco medio</translation>
        </message>
        <message>
            <source>mean of the blanks' signals</source>
            <translation>media de las señales de los blancos</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Calibración</translation>
        </message>
        <message>
            <source>standard in %1</source>
            <translation>patrón en %1</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal</source>
            <translation>concentración al usarlo × volumen; señal neta</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal at the usual volume</source>
            <translation>concentración al usarlo × volumen; señal neta al volumen habitual</translation>
        </message>
        <message>
            <source>line</source>
            <translation>recta</translation>
        </message>
        <message>
            <source>net signal = a + b x mg in the tube</source>
            <translation>señal neta = a + b × mg en el tubo</translation>
        </message>
        <message>
            <source>a = %1, b = %2 per mg</source>
            <translation>a = %1, b = %2 por mg</translation>
        </message>
        <message>
            <source>response</source>
            <translation>respuesta</translation>
        </message>
        <message>
            <source>mean of net signal / mg in the tube</source>
            <translation>media de señal neta / mg en el tubo</translation>
        </message>
        <message>
            <source>%1 per mg</source>
            <translation>%1 por mg</translation>
        </message>
        <message>
            <source>signal - mean blank</source>
            <translation>señal − blanco medio</translation>
        </message>
        <message>
            <source>signal - mean blank - sample blank</source>
            <translation>señal − blanco medio − blanco de muestra</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>señal neta dA</translation>
        </message>
        <message>
            <source>net signal dA at the usual volume</source>
            <translation>señal neta dA al volumen habitual</translation>
        </message>
        <message>
            <source>net signal x volume of the tube / usual volume</source>
            <translation>señal neta × volumen del tubo / volumen habitual</translation>
        </message>
        <message>
            <source>concentration c in the sample as pipetted</source>
            <translation>concentración c en la muestra tal como se pipetea</translation>
        </message>
        <message>
            <source>dA x V x M / (e x d x v x n)</source>
            <translation>dA × V × M / (e × d × v × n)</translation>
        </message>
        <message>
            <source>dA / response / v</source>
            <translation>dA / respuesta / v</translation>
        </message>
        <message>
            <source>(dA - a) / b / v</source>
            <translation>(dA − a) / b / v</translation>
        </message>
        <message>
            <source>Sample %1, %2</source>
            <translation>Muestra %1, %2</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>señal</translation>
        </message>
        <message>
            <source>sample blank, %1</source>
            <translation>blanco de muestra, %1</translation>
        </message>
        <message>
            <source>in the sample as received</source>
            <translation>en la muestra tal como se recibió</translation>
        </message>
        <message>
            <source>c x F</source>
            <translation>c × F</translation>
        </message>
        <message>
            <source>content</source>
            <translation>contenido</translation>
        </message>
        <message>
            <source>c x F x extract (L) / mass (g) x 100</source>
            <translation>c × F × extracto (L) / masa (g) × 100</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>mean, N = %1</source>
            <translation>media, N = %1</translation>
        </message>
        <message>
            <source>sum / N</source>
            <translation>suma / N</translation>
        </message>
        <message>
            <source>spread</source>
            <translation>recorrido</translation>
        </message>
        <message>
            <source>largest - smallest</source>
            <translation>mayor − menor</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Incertidumbre</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>incertidumbre típica</translation>
        </message>
        <message>
            <source>expanded uncertainty U</source>
            <translation>incertidumbre expandida U</translation>
        </message>
        <message>
            <source>k x root of the sum of squares</source>
            <translation>k × raíz de la suma de cuadrados</translation>
        </message>
        <message>
            <source>Symbols</source>
            <translation>Símbolos</translation>
        </message>
        <message>
            <source>no unit</source>
            <translation>sin unidad</translation>
        </message>
        <message>
            <source>net signal, a difference of absorbances</source>
            <translation>señal neta, una diferencia de absorbancias</translation>
        </message>
        <message>
            <source>sample volume in the tube</source>
            <translation>volumen de muestra en el tubo</translation>
        </message>
        <message>
            <source>volume of the tube at the later reading</source>
            <translation>volumen del tubo en la lectura posterior</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masa molar</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>absortividad molar</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>chromophore molecules formed or used per molecule</source>
            <translation>moléculas de cromóforo formadas o consumidas por molécula</translation>
        </message>
        <message>
            <source>dilution factor, made up to / taken</source>
            <translation>factor de dilución, enrasado a / tomado</translation>
        </message>
        <message>
            <source>number of tubes in the mean</source>
            <translation>número de tubos en la media</translation>
        </message>
        <message>
            <source>coverage factor</source>
            <translation>factor de cobertura</translation>
        </message>
        <message>
            <source>to be reported</source>
            <translation>que se informa</translation>
        </message>
        <message>
            <source>less than</source>
            <translation>menos de</translation>
        </message>
        <message>
            <source>more than: a reagent was used up</source>
            <translation>más de: se ha agotado un reactivo</translation>
        </message>
        <message>
            <source>volume of %1 in %2</source>
            <translation>volumen de %1 en %2</translation>
        </message>
        <message>
            <source>as pipetted, planned %1</source>
            <translation>como se pipeteó, previsto %1</translation>
        </message>
        <message>
            <source>Results it comes from</source>
            <translation>Resultados de los que procede</translation>
        </message>
        <message>
            <source>method %1, version %2</source>
            <translation>método %1, versión %2</translation>
        </message>
        <message>
            <source>%1 at %2 min</source>
            <translation>%1 a los %2 min</translation>
        </message>
        <message>
            <source>%1 as read</source>
            <translation>%1 según se leyó</translation>
        </message>
        <message>
            <source>the last %1 readings, t in min after the starter</source>
            <translation>las últimas %1 lecturas, t en min tras el iniciador</translation>
        </message>
        <message>
            <source>slope b of %1</source>
            <translation>pendiente b de %1</translation>
        </message>
        <message>
            <source>straight line by least squares: sum of (t - mean t) (A - mean A) / sum of (t - mean t)²</source>
            <translation>recta por mínimos cuadrados: suma de (t − media t) (A − media A) / suma de (t − media t)²</translation>
        </message>
        <message>
            <source>per min</source>
            <translation>por min</translation>
        </message>
        <message>
            <source>the line at 0 min: mean A - b x mean t</source>
            <translation>la recta a 0 min: media A − b × media t</translation>
        </message>
        <message>
            <source>coverage factor k</source>
            <translation>factor de cobertura k</translation>
        </message>
        <message>
            <source>2, for 30 or more effective degrees of freedom</source>
            <translation>2, para 30 o más grados de libertad efectivos</translation>
        </message>
        <message>
            <source>t at 95.45 % for %1 effective degrees of freedom</source>
            <translation>t al 95,45 % para %1 grados de libertad efectivos</translation>
        </message>
        <message>
            <source>t(95.45 %, ν)</source>
            <translation>t(95,45 %; ν)</translation>
        </message>
        <message>
            <source>effective degrees of freedom (Welch-Satterthwaite)</source>
            <translation>grados de libertad efectivos (Welch-Satterthwaite)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::BackgroundReader</name>
        <message>
            <source>expected the id of a method; leave it out to mean this one</source>
            <translation>se esperaba el id de un método; omítalo para referirse a este</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::CellLines</name>
        <message>
            <source>The line has more than %1 columns.</source>
            <translation>La línea tiene más de %1 columnas.</translation>
        </message>
        <message>
            <source>A quotation mark has no partner in the line.</source>
            <translation>Unas comillas no tienen pareja en la línea.</translation>
        </message>
        <message>
            <source>The cell is longer than %1 characters.</source>
            <translation>La celda tiene más de %1 caracteres.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Decimal</name>
        <message>
            <source>Enter a number, such as 0.512 or 0,512.</source>
            <translation>Introduzca un número, como 0.512 o 0,512.</translation>
        </message>
        <message>
            <source>There is more than one decimal mark; a number has one, as in 0.512 or 0,512.</source>
            <translation>Hay más de un signo decimal; un número tiene uno, como 0.512 o 0,512.</translation>
        </message>
        <message>
            <source>Write the number without thousands marks or blanks, e.g. 1500.2 or 1500,2.</source>
            <translation>Escriba el número sin separadores de millares ni espacios, como 1500.2 o 1500,2.</translation>
        </message>
        <message>
            <source>Only digits, one decimal mark and a sign make a number; no letters, no exponent.</source>
            <translation>Un número solo consta de cifras, un signo decimal y un signo; sin letras ni exponente.</translation>
        </message>
        <message>
            <source>Write the number with the digits 0 to 9.</source>
            <translation>Escriba el número con las cifras 0 a 9.</translation>
        </message>
        <message>
            <source>There is no digit in it; enter a number, such as 0.512 or 0,512.</source>
            <translation>No hay ninguna cifra; introduzca un número, como 0.512 o 0,512.</translation>
        </message>
        <message>
            <source>That is more than %1 digits; enter one reading at a time.</source>
            <translation>Son más de %1 cifras; introduzca las lecturas de una en una.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationComparison</name>
        <message>
            <source>nothing</source>
            <translation>nada</translation>
        </message>
        <message>
            <source>a list of %1</source>
            <translation>una lista de %1</translation>
        </message>
        <message>
            <source>an object of %1 fields</source>
            <translation>un objeto de %1 campos</translation>
        </message>
        <message>
            <source>an evaluation</source>
            <translation>una evaluación</translation>
        </message>
        <message>
            <source>no evaluation that can be read</source>
            <translation>ninguna evaluación que se pueda leer</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationReader</name>
        <message>
            <source>is missing</source>
            <translation>falta</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Fields</name>
        <message>
            <source>expected %1, found %2</source>
            <translation>se esperaba %1, se encontró %2</translation>
        </message>
        <message>
            <source>null</source>
            <translation>null</translation>
        </message>
        <message>
            <source>true or false</source>
            <translation>true o false</translation>
        </message>
        <message>
            <source>a number</source>
            <translation>un número</translation>
        </message>
        <message>
            <source>text</source>
            <translation>texto</translation>
        </message>
        <message>
            <source>a list</source>
            <translation>una lista</translation>
        </message>
        <message>
            <source>an object</source>
            <translation>un objeto</translation>
        </message>
        <message>
            <source>expected a whole number, found %1</source>
            <translation>se esperaba un número entero, se encontró %1</translation>
        </message>
        <message>
            <source>expected a list of two numbers, from and to</source>
            <translation>se esperaba una lista de dos números, desde y hasta</translation>
        </message>
        <message>
            <source>expected a time with its offset, such as 2026-03-02T09:10:00+01:00 or ending in Z, found %1</source>
            <translation>se esperaba una hora con su desfase, como 2026-03-02T09:10:00+01:00 o terminada en Z, se encontró %1</translation>
        </message>
        <message>
            <source>expected a date, such as 2026-03-02, found %1</source>
            <translation>se esperaba una fecha, como 2026-03-02, se encontró %1</translation>
        </message>
        <message>
            <source>expected one of %1, found %2</source>
            <translation>se esperaba uno de %1, se encontró %2</translation>
        </message>
        <message>
            <source>the field %1 is not known here; leave it out</source>
            <translation>el campo %1 no se conoce aquí; omítalo</translation>
        </message>
        <message>
            <source>the field %1 is not known here; did you mean %2?</source>
            <translation>el campo %1 no se conoce aquí; ¿quería decir %2?</translation>
        </message>
        <message>
            <source>is missing, and it is needed</source>
            <translation>falta, y es necesario</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::FileReader</name>
        <message>
            <source>there is no such file</source>
            <translation>el archivo no existe</translation>
        </message>
        <message>
            <source>the file may not be read; check its permissions</source>
            <translation>el archivo no se puede leer; compruebe sus permisos</translation>
        </message>
        <message>
            <source>the file cannot be read: %1</source>
            <translation>el archivo no se puede leer: %1</translation>
        </message>
        <message>
            <source>this is a directory; name a file in it</source>
            <translation>esto es un directorio; indique uno de sus archivos</translation>
        </message>
        <message>
            <source>this is a pipe, a socket or a device; name a regular file</source>
            <translation>esto es una tubería, un socket o un dispositivo; indique un archivo normal</translation>
        </message>
        <message>
            <source>the file is larger than %1 MiB, the most that is read</source>
            <translation>el archivo es mayor de %1 MiB, lo máximo que se lee</translation>
        </message>
        <message>
            <source>the file cannot be read; name a regular file</source>
            <translation>el archivo no se puede leer; indique un archivo normal</translation>
        </message>
        <message>
            <source>this names no file</source>
            <translation>esto no nombra ningún archivo</translation>
        </message>
        <message>
            <source>warning: </source>
            <translation>advertencia: </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Findings</name>
        <message>
            <source>there is more wrong than the %1 problems listed</source>
            <translation>hay más errores que los %1 problemas enumerados</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Json</name>
        <message>
            <source>the field %1 stands here twice; keep one</source>
            <translation>el campo %1 está aquí dos veces; deje uno</translation>
        </message>
        <message>
            <source>%1: the number is too large to be used</source>
            <translation>%1: el número es demasiado grande para usarlo</translation>
        </message>
        <message>
            <source>%1: NaN and Infinity are not numbers; leave the field out</source>
            <translation>%1: NaN e Infinity no son números; omita el campo</translation>
        </message>
        <message>
            <source>%1: not valid JSON: %2</source>
            <translation>%1: no es JSON válido: %2</translation>
        </message>
        <message>
            <source>the document holds more than %1 values</source>
            <translation>el documento contiene más de %1 valores</translation>
        </message>
        <message>
            <source>nested more than %1 levels deep</source>
            <translation>anidado a más de %1 niveles</translation>
        </message>
        <message>
            <source>%1: not UTF-8; save the file as UTF-8</source>
            <translation>%1: no es UTF-8; guarde el archivo como UTF-8</translation>
        </message>
        <message>
            <source>the document is empty</source>
            <translation>el documento está vacío</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::KeyedMoment</name>
        <message>
            <source>There is no such time: write hours up to 23 and minutes up to 59, of a day that exists.</source>
            <translation>Esa hora no existe: escriba horas hasta 23 y minutos hasta 59, de un día que exista.</translation>
        </message>
        <message>
            <source>That time is still to come; give the time when it was done.</source>
            <translation>Esa hora aún está por llegar; indique la hora en que se hizo.</translation>
        </message>
        <message>
            <source>Enter a time, such as 8:10, or with the date, such as %1 8:10.</source>
            <translation>Introduzca una hora, p. ej. 8:10, o con la fecha, p. ej. %1 8:10.</translation>
        </message>
        <message>
            <source>That is not a time: write it as 8:10, or with the date, as %1 8:10.</source>
            <translation>Eso no es una hora: escríbala como 8:10, o con la fecha, como %1 8:10.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::LaboratoryReader</name>
        <message>
            <source>is blank; give the laboratory's name, or leave the field out</source>
            <translation>está en blanco; indique el nombre del laboratorio u omita el campo</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MeasuringParts</name>
        <message>
            <source>is blank; say which record the numbers come from, or leave the field out</source>
            <translation>está en blanco; indique de qué registro vienen los números u omita el campo</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodComparison</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source> in </source>
            <translation> en </translation>
        </message>
        <message>
            <source>Absorptivity at %1 nm</source>
            <translation>Absortividad a %1 nm</translation>
        </message>
        <message>
            <source>Order of: %1</source>
            <translation>Orden de: %1</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 y %2 más</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <translation>%1 y %2</translation>
        </message>
        <message>
            <source>Format</source>
            <translation>Formato</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Versión</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principio</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Cromóforo</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absortividad</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Camino óptico</translation>
        </message>
        <message>
            <source>Direction</source>
            <translation>Sentido</translation>
        </message>
        <message>
            <source>Volume correction</source>
            <translation>Corrección de volumen</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Componentes</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Allowed volumes</source>
            <translation>Volúmenes admitidos</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspensión</translation>
        </message>
        <message>
            <source>Component that is the sample</source>
            <translation>Componente que es la muestra</translation>
        </message>
        <message>
            <source>Component that is the diluent</source>
            <translation>Componente que es el diluyente</translation>
        </message>
        <message>
            <source>Component that is the starter</source>
            <translation>Componente que es el iniciador</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>Measurands</source>
            <translation>Mensurandos</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Masa molar</translation>
        </message>
        <message>
            <source>Chromophore molecules per molecule</source>
            <translation>Moléculas de cromóforo por molécula</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Señal</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Clase</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>Base reading</source>
            <translation>Lectura base</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Lectura intermedia</translation>
        </message>
        <message>
            <source>Final reading</source>
            <translation>Lectura final</translation>
        </message>
        <message>
            <source>Typical range</source>
            <translation>Intervalo típico</translation>
        </message>
        <message>
            <source>Measuring window</source>
            <translation>Intervalo de medida</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Señal neta mínima</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Señal neta máxima</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Absorbancia máxima</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Absorbancia que debe quedar</translation>
        </message>
        <message>
            <source>Acceptance</source>
            <translation>Aceptación</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Señal máxima del blanco</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Recuperación de un patrón</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Recuperación de una fortificación</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Repetibilidad</translation>
        </message>
        <message>
            <source>Repeatability, constant part</source>
            <translation>Repetibilidad, parte constante</translation>
        </message>
        <message>
            <source>Repeatability, proportional part</source>
            <translation>Repetibilidad, parte proporcional</translation>
        </message>
        <message>
            <source>Extrapolation</source>
            <translation>Extrapolación</translation>
        </message>
        <message>
            <source>Reading that is extrapolated</source>
            <translation>Lectura que se extrapola</translation>
        </message>
        <message>
            <source>Readings the line goes through</source>
            <translation>Lecturas por las que pasa la recta</translation>
        </message>
        <message>
            <source>Derived results</source>
            <translation>Resultados derivados</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Partes</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Factor</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Patrón habitual</translation>
        </message>
        <message>
            <source>Concentration of the usual standard</source>
            <translation>Concentración del patrón habitual</translation>
        </message>
        <message>
            <source>Loss of the usual standard per hour</source>
            <translation>Pérdida del patrón habitual por hora</translation>
        </message>
        <message>
            <source>Usual tubes</source>
            <translation>Tubos habituales</translation>
        </message>
        <message>
            <source>Blanks of a rack</source>
            <translation>Blancos de una gradilla</translation>
        </message>
        <message>
            <source>Tubes of each sample</source>
            <translation>Tubos de cada muestra</translation>
        </message>
        <message>
            <source>Tubes of standards of a rack</source>
            <translation>Tubos de patrones de una gradilla</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Reacciones</translation>
        </message>
        <message>
            <source>Interferences</source>
            <translation>Interferencias</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Preparación de las muestras</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matriz</translation>
        </message>
        <message>
            <source>Preparation</source>
            <translation>Preparación</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Precauciones</translation>
        </message>
        <message>
            <source>add</source>
            <translation>añadir</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>esperar</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>read</source>
            <translation>leer</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Componente</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Paso</translation>
        </message>
        <message>
            <source>Derived result</source>
            <translation>Resultado derivado</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Parte</translation>
        </message>
        <message>
            <source>Reaction</source>
            <translation>Reacción</translation>
        </message>
        <message>
            <source>Interference</source>
            <translation>Interferencia</translation>
        </message>
        <message>
            <source>Preparation of</source>
            <translation>Preparación de</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Precaución</translation>
        </message>
        <message>
            <source>to the final volume</source>
            <translation>al volumen final</translation>
        </message>
        <message>
            <source>coupled indicator</source>
            <translation>indicador acoplado</translation>
        </message>
        <message>
            <source>protein-rich</source>
            <translation>rica en proteína</translation>
        </message>
        <message>
            <source>%1 samples</source>
            <translation>muestras (%1)</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source> to </source>
            <translation> a </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodLibrary</name>
        <message>
            <source>version %1 of %2 is installed already; give a changed method a new version</source>
            <translation>la versión %1 de %2 ya está instalada; dé a un método modificado una versión nueva</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodReader</name>
        <message>
            <source>expected an object of wavelengths in nm, as {"340": 6300}</source>
            <translation>se esperaba un objeto de longitudes de onda en nm, como {"340": 6300}</translation>
        </message>
        <message>
            <source>expected a wavelength in whole nm as the field's name, as "340", found %1</source>
            <translation>se esperaba una longitud de onda en nm enteros como nombre del campo, como "340", se encontró %1</translation>
        </message>
        <message>
            <source>expected the format %1, found %2; this file is of another kind or for another version of the program</source>
            <translation>se esperaba el formato %1, se encontró %2; este archivo es de otra clase o para otra versión del programa</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::NumberWords</name>
        <message>
            <source>It has an exponent; set the photometer to plain decimals.</source>
            <translation>Tiene un exponente; ajuste el fotómetro a decimales simples.</translation>
        </message>
        <message>
            <source>A minus stands apart from it, so that its sign is not certain.</source>
            <translation>Hay un menos separado de él, así que su signo no es seguro.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingColumn</name>
        <message>
            <source>Heading</source>
            <translation>Encabezado</translation>
        </message>
        <message>
            <source>Left out: empty</source>
            <translation>Omitida: vacía</translation>
        </message>
        <message>
            <source>The line is empty; fill it in or leave out empty lines.</source>
            <translation>La línea está vacía; rellénela u omita las líneas vacías.</translation>
        </message>
        <message>
            <source>line %1, column %2: %3</source>
            <translation>línea %1, columna %2: %3</translation>
        </message>
        <message>
            <source>line %1: %2</source>
            <translation>línea %1: %2</translation>
        </message>
        <message>
            <source>The line ends with column %1.</source>
            <translation>La línea termina en la columna %1.</translation>
        </message>
        <message>
            <source>The cell is empty.</source>
            <translation>La celda está vacía.</translation>
        </message>
        <message>
            <source>The column of the absorbance must be from 1 to %1.</source>
            <translation>La columna de la absorbancia debe ser de la 1 a la %1.</translation>
        </message>
        <message>
            <source>The column of the tube must be from 1 to %1, or none.</source>
            <translation>La columna del tubo debe ser de la 1 a la %1, o ninguna.</translation>
        </message>
        <message>
            <source>Tube and absorbance cannot be in the same column.</source>
            <translation>El tubo y la absorbancia no pueden estar en la misma columna.</translation>
        </message>
        <message>
            <source>A heading has 0 to %1 lines.</source>
            <translation>Un encabezado tiene de 0 a %1 líneas.</translation>
        </message>
        <message>
            <source>Where commas separate the columns, the decimal mark has to be the point.</source>
            <translation>Si las columnas se separan con comas, el signo decimal tiene que ser el punto.</translation>
        </message>
        <message>
            <source>The text is longer than %1 million characters, the most that is read.</source>
            <translation>El texto tiene más de %1 millones de caracteres, lo máximo que se lee.</translation>
        </message>
        <message>
            <source>There is nothing in the text.</source>
            <translation>No hay nada en el texto.</translation>
        </message>
        <message>
            <source>The text has %1 lines; at most %2 readings are taken at a time.</source>
            <translation>El texto tiene %1 líneas; se toman como máximo %2 lecturas de una vez.</translation>
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
            <translation>No hay ningún número detrás de %1.</translation>
        </message>
        <message>
            <source>There is no number in the line.</source>
            <translation>No hay ningún número en la línea.</translation>
        </message>
        <message>
            <source>Numbers in the line: %1; number %2 is needed.</source>
            <translation>Números en la línea: %1; se pide el número %2.</translation>
        </message>
        <message>
            <source>The line has %1 numbers; say which of them is the absorbance.</source>
            <translation>La línea tiene %1 números; indique cuál de ellos es la absorbancia.</translation>
        </message>
        <message>
            <source>Passed over: it has %1.</source>
            <translation>Pasada por alto: contiene %1.</translation>
        </message>
        <message>
            <source>Passed over: it has no %1.</source>
            <translation>Pasada por alto: no contiene %1.</translation>
        </message>
        <message>
            <source>There is no %1 in the line.</source>
            <translation>No hay ningún %1 en la línea.</translation>
        </message>
        <message>
            <source>%1 is in the line more than once; use a longer text.</source>
            <translation>%1 está más de una vez en la línea; tome un texto más largo.</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>The number that counts must be from 1 to %1.</source>
            <translation>El número que cuenta debe ser del 1 al %1.</translation>
        </message>
        <message>
            <source>Type the text that stands before the absorbance, as ABS.</source>
            <translation>Escriba el texto que está delante de la absorbancia, como ABS.</translation>
        </message>
        <message>
            <source>Text before the absorbance</source>
            <translation>Texto delante de la absorbancia</translation>
        </message>
        <message>
            <source>Text that a line must have</source>
            <translation>Texto que una línea debe tener</translation>
        </message>
        <message>
            <source>Text of lines to leave out</source>
            <translation>Texto de las líneas que se omiten</translation>
        </message>
        <message>
            <source>There is no line end within %1 bytes; check speed and format of the connection.</source>
            <translation>No hay fin de línea en %1 bytes; compruebe la velocidad y el formato de la conexión.</translation>
        </message>
        <message>
            <source>The line is empty.</source>
            <translation>La línea está vacía.</translation>
        </message>
        <message>
            <source>The line contains characters that are not text; check speed, format and encoding of the connection.</source>
            <translation>La línea contiene caracteres que no son texto; compruebe la velocidad, el formato y la codificación de la conexión.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingText</name>
        <message>
            <source>The text has a NUL in %1; it is not a text file of readings.</source>
            <translation>El texto tiene un NUL en %1; no es un archivo de texto con lecturas.</translation>
        </message>
        <message>
            <source>The text says it is UTF-16, but is broken; save it as UTF-8.</source>
            <translation>El texto dice ser UTF-16, pero está defectuoso; guárdelo como UTF-8.</translation>
        </message>
        <message>
            <source>The text is not UTF-8 in %1; choose the other encoding if it is Latin-1.</source>
            <translation>El texto no es UTF-8 en %1; elija la otra codificación si es Latin-1.</translation>
        </message>
        <message>
            <source>It is written with a comma, but the decimal mark is set to the point.</source>
            <translation>Está escrito con coma, pero el signo decimal está ajustado al punto.</translation>
        </message>
        <message>
            <source>It is written with a point, but the decimal mark is set to the comma.</source>
            <translation>Está escrito con punto, pero el signo decimal está ajustado a la coma.</translation>
        </message>
        <message>
            <source>It is a limit and not a reading; dilute and read again, or key what the display shows.</source>
            <translation>Es un límite y no una lectura; diluya y lea de nuevo, o introduzca lo que muestra la pantalla.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RecipeReader</name>
        <message>
            <source>a step has exactly one of "add", "mix", "wait_min" and "read"</source>
            <translation>un paso tiene exactamente uno de "add", "mix", "wait_min" y "read"</translation>
        </message>
        <message>
            <source>a temperature goes with "wait_min" only</source>
            <translation>una temperatura solo va con "wait_min"</translation>
        </message>
        <message>
            <source>must be true; leave the step out where nothing is mixed</source>
            <translation>debe ser true; omita el paso donde no se mezcla nada</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReportingParts</name>
        <message>
            <source>is not base64 text; take it from a file the program wrote</source>
            <translation>no es texto base64; tómelo de un archivo escrito por el programa</translation>
        </message>
        <message>
            <source>is blank; fill it in, or leave the field out</source>
            <translation>está en blanco; rellénelo u omita el campo</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RunReader</name>
        <message>
            <source>is blank; give the id, or leave the field out</source>
            <translation>está en blanco; indique el id u omita el campo</translation>
        </message>
        <message>
            <source>expected a number or a list of timed readings, found %1; leave out a reading that has not been taken yet</source>
            <translation>se esperaba un número o una lista de lecturas con hora, se encontró %1; omita una lectura que aún no se ha tomado</translation>
        </message>
        <message>
            <source>expected an object of readings, as {"A1": 0.102}, found %1</source>
            <translation>se esperaba un objeto de lecturas, como {"A1": 0.102}, se encontró %1</translation>
        </message>
        <message>
            <source>expected an object of volumes in mL by component, as {"nadh": 0.1}; leave it out where the tube was pipetted as planned</source>
            <translation>se esperaba un objeto de volúmenes en mL por componente, como {"nadh": 0.1}; omítalo si el tubo se pipeteó como estaba previsto</translation>
        </message>
        <message>
            <source>expected an object of minutes by component, as {"starter": 12.5}; leave it out where nobody marked the time</source>
            <translation>se esperaba un objeto de minutos por componente, como {"starter": 12.5}; omítalo si nadie marcó la hora</translation>
        </message>
        <message>
            <source>expected an object of minutes by reading, as {"A1": 5}; leave it out where nobody marked the time</source>
            <translation>se esperaba un objeto de minutos por lectura, como {"A1": 5}; omítalo si nadie marcó la hora</translation>
        </message>
        <message>
            <source>is blank; say what spoilt the tube, or leave the field out</source>
            <translation>está en blanco; indique qué malogró el tubo u omita el campo</translation>
        </message>
        <message>
            <source>expected the id of an installed method or a whole method, found %1</source>
            <translation>se esperaba el id de un método instalado o un método entero, se encontró %1</translation>
        </message>
        <message>
            <source>no method %1 is installed; correct the id, or put the whole method here</source>
            <translation>no hay ningún método %1 instalado; corrija el id o ponga aquí el método entero</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ShippedMethods</name>
        <message>
            <source>The supplier's instructions, the local safety rules and licensed practice come first.</source>
            <translation>Las instrucciones del proveedor, las normas locales de seguridad y las normas de la profesión van primero.</translation>
        </message>
        <message>
            <source>Volatile: keep samples, dilutions and cuvettes closed and cool, pipette below the surface, and take every tube to its reading without delay.</source>
            <translation>Volátil: mantenga muestras, diluciones y cubetas cerradas y frías, pipetee bajo la superficie y lea cada tubo sin demora.</translation>
        </message>
        <message>
            <source>Acetaldehyde boils at about 20 °C, burns easily and may cause cancer: open the cold bottle under a hood, away from flames.</source>
            <translation>El acetaldehído hierve a unos 20 °C, se inflama con facilidad y puede provocar cáncer: abra el frasco frío en campana, lejos de llamas.</translation>
        </message>
        <message>
            <source>Perchloric acid burns skin and eyes and is a strong oxidiser that can set organic matter alight: wear goggles and gloves, rinse spills with much water, and never let it dry in.</source>
            <translation>El ácido perclórico quema la piel y los ojos y es un oxidante fuerte que puede inflamar la materia orgánica: lleve gafas y guantes, enjuague los derrames con mucha agua y no lo deje secar nunca.</translation>
        </message>
        <message>
            <source>Sodium and potassium hydroxide solutions burn skin and eyes: wear goggles and gloves.</source>
            <translation>Las disoluciones de hidróxido de sodio y de potasio queman la piel y los ojos: lleve gafas y guantes.</translation>
        </message>
        <message>
            <source>Enzyme solutions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Las disoluciones de enzimas pueden estar conservadas con azida de sodio: tóxica por ingestión o en contacto con la piel, desprende con ácidos un gas muy tóxico y forma sales explosivas con desagües de cobre y plomo. Lleve guantes y recoja los residuos según sus normas locales.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 400 nm it gives off ultraviolet radiation.</source>
            <translation>No mire la lámpara de un fotómetro abierto: por debajo de 400 nm emite radiación ultravioleta.</translation>
        </message>
        <message>
            <source>Keep the bench free of acetic acid and its vapour: the blank shows it.</source>
            <translation>Mantenga la mesa libre de ácido acético y de su vapor: se nota en el blanco.</translation>
        </message>
        <message>
            <source>A closed flask that is warmed builds up pressure: leave a third of it empty, hold the stopper down with a cloth, and open it cold.</source>
            <translation>Un matraz cerrado que se calienta acumula presión: deje vacío un tercio, sujete el tapón con un paño y ábralo en frío.</translation>
        </message>
        <message>
            <source>Enzyme suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Las suspensiones de enzimas pueden estar conservadas con azida de sodio: tóxica por ingestión o en contacto con la piel, desprende con ácidos un gas muy tóxico y forma sales explosivas con desagües de cobre y plomo. Lleve guantes y recoja los residuos según sus normas locales.</translation>
        </message>
        <message>
            <source>Swirl enzyme suspensions before every series; don't shake them to a foam.</source>
            <translation>Agite suavemente las suspensiones de enzimas antes de cada serie; no las agite hasta hacer espuma.</translation>
        </message>
        <message>
            <source>Potassium hexacyanoferrate(II) must not meet strong acid: hydrogen cyanide may form. Keep this clarification and acid deproteinisation apart, in the flask and in the waste.</source>
            <translation>El hexacianoferrato(II) de potasio no debe entrar en contacto con ácido fuerte: puede formarse cianuro de hidrógeno. Mantenga separadas esta clarificación y la desproteinización con ácido, en el matraz y en los residuos.</translation>
        </message>
        <message>
            <source>Keep ammonia and ammonium salts away from the bench while you pipette.</source>
            <translation>Mantenga el amoníaco y las sales de amonio lejos de la mesa mientras pipetea.</translation>
        </message>
        <message>
            <source>Treat red wine with about 0.2 g of PVPP for 10 mL and filter it first (Regulation (EEC) No 2676/90, Annex).</source>
            <translation>Trate primero el vino tinto con unos 0,2 g de PVPP por 10 mL y fíltrelo (Reglamento (CEE) n.º 2676/90, anexo).</translation>
        </message>
        <message>
            <source>The buffer of pH 10 irritates skin and eyes: wear goggles and gloves.</source>
            <translation>El tampón de pH 10 irrita la piel y los ojos: lleve gafas y guantes.</translation>
        </message>
        <message>
            <source>Enzyme solutions and suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Las disoluciones y suspensiones de enzimas pueden estar conservadas con azida de sodio: tóxica por ingestión o en contacto con la piel, desprende con ácidos un gas muy tóxico y forma sales explosivas con desagües de cobre y plomo. Lleve guantes y recoja los residuos según sus normas locales.</translation>
        </message>
        <message>
            <source>Read at 2 min and again at 4 min before the enzyme: a drift of more than 0.002 asks for a wait, not for the enzyme. Keep the tubes in the dark after it, read at 45 and at 60 min, and enter the larger value (French order of 7 October 1987, annex X).</source>
            <translation>Lea a los 2 min y de nuevo a los 4 min antes de la enzima: una deriva de más de 0,002 pide esperar, no añadir la enzima. Mantenga después los tubos en la oscuridad, lea a los 45 y a los 60 min e introduzca el valor mayor (orden francesa del 7 de octubre de 1987, anexo X).</translation>
        </message>
        <message>
            <source>INT is a tetrazolium salt that stains and may irritate: wear gloves.</source>
            <translation>El INT es una sal de tetrazolio que mancha y puede irritar: lleve guantes.</translation>
        </message>
        <message>
            <source>Ethanol burns easily: keep it from flames.</source>
            <translation>El etanol se inflama con facilidad: manténgalo lejos de llamas.</translation>
        </message>
        <message>
            <source>Acidified sulphite gives off sulphur dioxide, which irritates the airways and can bring on an attack of asthma: work under a hood, and never acidify a sample.</source>
            <translation>El sulfito acidificado desprende dióxido de azufre, que irrita las vías respiratorias y puede provocar un ataque de asma: trabaje en campana y no acidifique nunca una muestra.</translation>
        </message>
        <message>
            <source>A sulphite standard loses strength by the hour: make it fresh and note the time. The loss of 2 % an hour that a run of this method begins with is common practice, no source; find your own.</source>
            <translation>Un patrón de sulfito pierde concentración de hora en hora: prepárelo en el momento y anote la hora. La pérdida del 2 % por hora con la que empieza una tanda con este método es práctica habitual, sin fuente; determine la suya.</translation>
        </message>
        <message>
            <source>If the reaction has not ended after 15 min, read every 5 min until the rise is steady and enter all readings: the result is extrapolated to the addition (same Regulation).</source>
            <translation>Si la reacción no ha terminado a los 15 min, lea cada 5 min hasta que el aumento sea constante e introduzca todas las lecturas: el resultado se extrapola a la adición (mismo Reglamento).</translation>
        </message>
        <message>
            <source>Metaphosphoric acid burns skin and eyes: wear goggles and gloves.</source>
            <translation>El ácido metafosfórico quema la piel y los ojos: lleve gafas y guantes.</translation>
        </message>
        <message>
            <source>The buffer has to neutralise the acid that comes with the sample: check that the tube stays near pH 6.</source>
            <translation>El tampón tiene que neutralizar el ácido que llega con la muestra: compruebe que el tubo se mantiene cerca de pH 6.</translation>
        </message>
        <message>
            <source>A standard of L-ascorbic acid loses strength by the hour, in water far faster than in metaphosphoric acid: make it fresh and note the time.</source>
            <translation>Un patrón de ácido L-ascórbico pierde concentración de hora en hora, en agua mucho más deprisa que en ácido metafosfórico: prepárelo en el momento y anote la hora.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 300 nm its ultraviolet radiation burns eyes and skin within minutes.</source>
            <translation>No mire la lámpara de un fotómetro abierto: por debajo de 300 nm su radiación ultravioleta quema los ojos y la piel en minutos.</translation>
        </message>
        <message>
            <source>Keep the tubes in the dark after the enzyme.</source>
            <translation>Mantenga los tubos en la oscuridad después de añadir la enzima.</translation>
        </message>
        <message>
            <source>Hydrogen peroxide and alkali burn skin and eyes: wear goggles and gloves.</source>
            <translation>El peróxido de hidrógeno y los álcalis queman la piel y los ojos: lleve gafas y guantes.</translation>
        </message>
        <message>
            <source>Acetaldehyde (template)</source>
            <translation>Acetaldehído (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase oxidises acetaldehyde to acetate; the reaction runs to its end in the alkaline buffer, which also frees acetaldehyde bound to sulphite. One NADH for each acetaldehyde; the absorbance rises.</source>
            <translation>La aldehído deshidrogenasa oxida el acetaldehído a acetato; la reacción llega a su final en el tampón alcalino, que libera además el acetaldehído combinado con sulfito. Un NADH por cada acetaldehído; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with potassium</source>
            <translation>Tampón pH 9 con potasio</translation>
        </message>
        <message>
            <source>NAD solution</source>
            <translation>Disolución de NAD</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Agua</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase solution</source>
            <translation>Disolución de aldehído deshidrogenasa</translation>
        </message>
        <message>
            <source>Acetaldehyde</source>
            <translation>Acetaldehído</translation>
        </message>
        <message>
            <source>One NADH formed for each acetaldehyde.</source>
            <translation>Se forma un NADH por cada acetaldehído.</translation>
        </message>
        <message>
            <source>Other aldehydes, such as propionaldehyde and benzaldehyde, react too, some of them slowly.</source>
            <translation>Otros aldehídos, como el propionaldehído y el benzaldehído, también reaccionan, algunos lentamente.</translation>
        </message>
        <message>
            <source>Traces of alcohol dehydrogenase in the enzyme let ethanol creep: read at the same time in every tube and compare with a sample blank.</source>
            <translation>Con trazas de alcohol deshidrogenasa en la enzima, el etanol causa una deriva lenta: lea todos los tubos tras el mismo tiempo y compare con un blanco de muestra.</translation>
        </message>
        <message>
            <source>Keep closed and cool. Dilute with cold water in a full flask right before pipetting.</source>
            <translation>Mantenga la muestra cerrada y fría. Diluya con agua fría en un matraz lleno justo antes de pipetear.</translation>
        </message>
        <message>
            <source>Dilute with cold water and give the sample a blank of its own; treat with PVPP only in a closed vessel in the cold.</source>
            <translation>Diluya con agua fría y lea un blanco de muestra propio; trate con PVPP solo en recipiente cerrado y en frío.</translation>
        </message>
        <message>
            <source>Centrifuge in a full, closed, cooled tube; don't filter under suction.</source>
            <translation>Centrifugue en un tubo lleno, cerrado y refrigerado; no filtre a vacío.</translation>
        </message>
        <message>
            <source>Don't degas by warming or stirring: acetaldehyde goes with the gas. Cool to 4 °C, bring to pH 9 with sodium hydroxide in a closed vessel, which binds the carbon dioxide, use at once, and note the dilution.</source>
            <translation>No desgasifique calentando ni agitando: el acetaldehído se va con el gas. Enfríe a 4 °C, lleve a pH 9 con hidróxido de sodio en recipiente cerrado, lo que fija el dióxido de carbono, use la muestra enseguida y anote la dilución.</translation>
        </message>
        <message>
            <source>Distil or extract closed and cold with water, chill and filter cold; check the recovery with a spiked sample.</source>
            <translation>Destile o extraiga con agua en frío y en recipiente cerrado, enfríe y filtre en frío; compruebe la recuperación con una muestra fortificada.</translation>
        </message>
        <message>
            <source>Cool to 4 °C; precipitate with perchloric acid, 1 mol/L, in a closed tube, centrifuge cold, bring to pH 8 to 9 with potassium hydroxide, use at once. Check the recovery with a spiked sample.</source>
            <translation>Enfríe a 4 °C; precipite con ácido perclórico 1 mol/L en un tubo cerrado, centrifugue en frío, lleve a un pH de 8 a 9 con hidróxido de potasio y use la disolución enseguida. Compruebe la recuperación con una muestra fortificada.</translation>
        </message>
        <message>
            <source>Homogenise frozen with ice-cold water in a closed vessel, centrifuge cold, use at once. Enter mass and extract volume with the sample; check the recovery with a spiked sample.</source>
            <translation>Homogeneice la muestra congelada con agua helada en recipiente cerrado, centrifugue en frío y use el extracto enseguida. Introduzca la masa y el volumen de extracto con la muestra; compruebe la recuperación con una muestra fortificada.</translation>
        </message>
        <message>
            <source>Acetic acid (template)</source>
            <translation>Ácido acético (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes: MEBAK B-590.31.112, acetic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Enzimas: MEBAK B-590.31.112, ácido acético. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase turns acetate into acetyl-CoA, citrate synthase joins it to oxaloacetate, and malate dehydrogenase makes that oxaloacetate anew from L-malate with one NADH for each acetate. The malate dehydrogenase equilibrium stands before the measured reaction and gives NADH of its own, so the signal is (A2 - A0) - (A1 - A0)^2 / (A2 - A0).</source>
            <translation>La acetil-CoA sintetasa transforma el acetato en acetil-CoA, la citrato sintasa lo une al oxalacetato, y la malato deshidrogenasa vuelve a formar ese oxalacetato a partir de L-malato con un NADH por cada acetato. El equilibrio de la malato deshidrogenasa precede a la reacción medida y da NADH por sí mismo, así que la señal es (A2 − A0) − (A1 − A0)² / (A2 − A0).</translation>
        </message>
        <message>
            <source>Buffer pH 8.4 with L-malate</source>
            <translation>Tampón pH 8,4 con L-malato</translation>
        </message>
        <message>
            <source>ATP, CoA and NAD solution</source>
            <translation>Disolución de ATP, CoA y NAD</translation>
        </message>
        <message>
            <source>Malate dehydrogenase and citrate synthase suspension</source>
            <translation>Suspensión de malato deshidrogenasa y citrato sintasa</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase suspension</source>
            <translation>Suspensión de acetil-CoA sintetasa</translation>
        </message>
        <message>
            <source>Acetic acid</source>
            <translation>Ácido acético</translation>
        </message>
        <message>
            <source>Acetate + ATP + CoA → acetyl-CoA + AMP + diphosphate (acetyl-CoA synthetase)</source>
            <translation>Acetato + ATP + CoA → acetil-CoA + AMP + difosfato (acetil-CoA sintetasa)</translation>
        </message>
        <message>
            <source>One NADH formed for each acetate, less what the malate equilibrium had formed before.</source>
            <translation>Se forma un NADH por cada acetato, menos lo que había formado antes el equilibrio del malato.</translation>
        </message>
        <message>
            <source>Propionate is taken slowly. Free acetate in reagents and water shows in the blank.</source>
            <translation>El propionato reacciona lentamente. El acetato libre de los reactivos y del agua se nota en el blanco.</translation>
        </message>
        <message>
            <source>The result is that of free acetate; esters and acetylated polymers do not react unless they were split before.</source>
            <translation>El resultado es el del acetato libre; los ésteres y los polímeros acetilados no reaccionan si no se hidrolizan antes.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method.</source>
            <translation>Pipetee la muestra tal cual, o diluida con agua hasta el intervalo del método.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows; colour alone adds the same to A0, A1 and A2. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>Diluya cuanto permita el intervalo; el color por sí solo suma lo mismo a A0, A1 y A2. Muy coloreada: agite 10 mL con 0,2 g de polivinilpolipirrolidona (PVPP) o poliamida durante un minuto y filtre.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a fluted filter or a membrane of 0.45 µm; throw the first millilitres away.</source>
            <translation>Centrifugue, o filtre con filtro de pliegues o membrana de 0,45 µm; deseche los primeros mililitros.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled, loosely closed flask until no more gas comes; don't warm: acetic acid is volatile. Filter.</source>
            <translation>Remueva o agite en un matraz medio lleno y poco tapado hasta que no se desprenda más gas; no caliente: el ácido acético es volátil. Filtre.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min con el tapón puesto, enfríe, enrase con agua, deje 20 min en hielo y filtre en frío: la grasa queda retenida.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter.</source>
            <translation>Tome de 1 a 10 g: páselos a un matraz aforado de 100 mL con unos 60 mL de agua y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, agite y filtre.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water and filter. Enter mass and extract volume with the sample. Vinegar and pickles: dilute 1 to 100 or more.</source>
            <translation>Triture y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min con el tapón puesto, enfríe, enrase con agua y filtre. Introduzca la masa y el volumen de extracto con la muestra. Vinagre y encurtidos: diluya 1 a 100 o más.</translation>
        </message>
        <message>
            <source>Ammonia and urea (template)</source>
            <translation>Amoníaco y urea (plantilla)</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase joins ammonia to 2-oxoglutarate with one NADH for each ammonia (A1 to A2). Urease then splits urea into two ammonia and carbon dioxide, and two NADH are used for each urea (A2 to A3). The equilibrium lies on the side of glutamate. The absorbance falls; the NADH has to last for both.</source>
            <translation>La glutamato deshidrogenasa une el amoníaco al 2-oxoglutarato con un NADH por cada amoníaco (de A1 a A2). Después la ureasa descompone la urea en dos moléculas de amoníaco y dióxido de carbono, y se consumen dos NADH por cada urea (de A2 a A3). El equilibrio está del lado del glutamato. La absorbancia baja; el NADH tiene que alcanzar para ambos.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with 2-oxoglutarate and ADP</source>
            <translation>Tampón pH 8 con 2-oxoglutarato y ADP</translation>
        </message>
        <message>
            <source>NADH solution</source>
            <translation>Disolución de NADH</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase in glycerol</source>
            <translation>Glutamato deshidrogenasa en glicerol</translation>
        </message>
        <message>
            <source>Urease solution</source>
            <translation>Disolución de ureasa</translation>
        </message>
        <message>
            <source>Ammonia as NH3</source>
            <translation>Amoníaco como NH3</translation>
        </message>
        <message>
            <source>Urea</source>
            <translation>Urea</translation>
        </message>
        <message>
            <source>Urea + H2O → 2 NH3 + CO2 (urease)</source>
            <translation>Urea + H2O → 2 NH3 + CO2 (ureasa)</translation>
        </message>
        <message>
            <source>One NADH used for each ammonia, two for each urea.</source>
            <translation>Se consume un NADH por cada amoníaco y dos por cada urea.</translation>
        </message>
        <message>
            <source>Enzymes kept in ammonium sulphate bring ammonia with them: take glutamate dehydrogenase and urease free of ammonium.</source>
            <translation>Las enzimas conservadas en sulfato de amonio aportan amoníaco: tome glutamato deshidrogenasa y ureasa sin amonio.</translation>
        </message>
        <message>
            <source>Ammonia in the air, from cleaning agents and smoke, dissolves in every open vessel: the blank shows it.</source>
            <translation>El amoníaco del aire, de los productos de limpieza y del humo se disuelve en cualquier recipiente abierto: se nota en el blanco.</translation>
        </message>
        <message>
            <source>Much tannin stops both enzymes: treat with PVPP.</source>
            <translation>Mucho tanino inhibe ambas enzimas: trate con PVPP.</translation>
        </message>
        <message>
            <source>Fluoride and heavy metals stop urease.</source>
            <translation>El fluoruro y los metales pesados inhiben la ureasa.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>Diluya cuanto permita el intervalo y lea un blanco de muestra propio. Muy coloreada: agite 10 mL con 0,2 g de polivinilpolipirrolidona (PVPP) o poliamida durante un minuto y filtre.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold ammonium. Throw the first millilitres away.</source>
            <translation>Centrifugue, o filtre por un filtro lavado: el papel puede contener amonio. Deseche los primeros mililitros.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, at its own pH: an alkaline sample loses ammonia. Filter.</source>
            <translation>Remueva o agite en un matraz medio lleno hasta que no se desprenda más gas, a su propio pH: una muestra alcalina pierde amoníaco. Filtre.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 40 °C durante 15 min, enfríe, enrase, deje 20 min en hielo y filtre en frío: la grasa queda retenida.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: precipitate with 10 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 7 to 8 with potassium hydroxide, make up to 50 mL, stand in ice for 20 min, filter. Alkaline clarification loses ammonia and hot acid splits amides.</source>
            <translation>Leche y productos lácteos, de 1 a 10 g: precipite con 10 mL de ácido perclórico 1 mol/L, centrifugue, lleve a un pH de 7 a 8 con hidróxido de potasio, enrase a 50 mL, deje 20 min en hielo y filtre. Con la clarificación alcalina se pierde amoníaco, y el ácido caliente hidroliza las amidas.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Triture en frío y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 40 °C durante 15 min, enfríe, enrase con agua y filtre. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Citric acid in wine</source>
            <translation>Ácido cítrico en vino</translation>
        </message>
        <message>
            <source>Commission Regulation (EEC) No 2676/90, Annex, citric acid (consolidated text of 13.08.2005, Italian): volumes of sample, water and the solutions 2.1 to 2.4, 340 nm and 10 mm, readings about 5 min after mixing and about 5 min after solution 2.4, range of 20 to 400 mg/L in the pipetted solution. Molar mass and absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8. From memory: what the solutions 2.1 to 2.4 hold and the difference A1 - A2 less that of the blank. The signal window is the range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the reserve, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Reglamento (CEE) n.º 2676/90 de la Comisión, anexo, ácido cítrico (texto consolidado de 13.08.2005, en italiano): volúmenes de muestra, agua y las disoluciones 2.1 a 2.4, 340 nm y 10 mm, lecturas unos 5 min después de mezclar y unos 5 min después de la disolución 2.4, intervalo de 20 a 400 mg/L en la disolución pipeteada. Masa molar y absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8. De memoria: lo que contienen las disoluciones 2.1 a 2.4 y la diferencia A1 − A2 menos la del blanco. El intervalo de medida es ese intervalo en absorbancia a 340 nm, según cálculo propio. Práctica habitual, sin fuente: los límites de las esperas en torno a los tiempos indicados, la absorbancia máxima, el reactivo que debe quedar, los límites de aceptación, la pérdida del patrón, el número habitual de tubos, el intervalo típico, interferencias, preparación de la muestra y precauciones cuando no indican ninguna fuente.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate; malate and lactate dehydrogenase use one NADH for each oxaloacetate or the pyruvate that comes of it. The absorbance falls.</source>
            <translation>La citrato liasa descompone el citrato en oxalacetato y acetato; la malato y la lactato deshidrogenasa consumen un NADH por cada oxalacetato o por el piruvato que se forma de él. La absorbancia baja.</translation>
        </message>
        <message>
            <source>Solution 2.1 (buffer)</source>
            <translation>Disolución 2.1 (tampón)</translation>
        </message>
        <message>
            <source>Solution 2.2 (NADH)</source>
            <translation>Disolución 2.2 (NADH)</translation>
        </message>
        <message>
            <source>Solution 2.3 (malate and lactate dehydrogenase suspension)</source>
            <translation>Disolución 2.3 (suspensión de malato y lactato deshidrogenasa)</translation>
        </message>
        <message>
            <source>Solution 2.4 (citrate lyase)</source>
            <translation>Disolución 2.4 (citrato liasa)</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Ácido cítrico</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase)</source>
            <translation>Citrato → oxalacetato + acetato (citrato liasa)</translation>
        </message>
        <message>
            <source>One NADH used for each citrate.</source>
            <translation>Se consume un NADH por cada citrato.</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the wine are used up before A1 and do not count.</source>
            <translation>El oxalacetato y el piruvato del vino se consumen antes de A1 y no cuentan.</translation>
        </message>
        <message>
            <source>Malate, tartrate and isocitrate do not react.</source>
            <translation>El malato, el tartrato y el isocitrato no reaccionan.</translation>
        </message>
        <message>
            <source>Much tannin slows the lyase: treat with PVPP.</source>
            <translation>Mucho tanino frena la liasa: trate con PVPP.</translation>
        </message>
        <message>
            <source>Below 400 mg/L pipette as it is; otherwise dilute with water to 20 to 400 mg/L (same Regulation).</source>
            <translation>Por debajo de 400 mg/L, pipetee la muestra tal cual; si no, diluya con agua hasta una concentración de 20 a 400 mg/L (mismo Reglamento).</translation>
        </message>
        <message>
            <source>Red wine: about 0.2 g of PVPP with 10 mL of wine, then filter (same Regulation).</source>
            <translation>Vino tinto: unos 0,2 g de PVPP con 10 mL de vino, y filtre (mismo Reglamento).</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter.</source>
            <translation>Remueva o agite en un matraz medio lleno hasta que no se desprenda más gas y filtre.</translation>
        </message>
        <message>
            <source>Citric acid (template)</source>
            <translation>Ácido cítrico (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry, molar mass: Russian standard for citric acid in juices, document 1200102279, section 8. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Principio y estequiometría, masa molar: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate. L-malate dehydrogenase, and L-lactate dehydrogenase for the oxaloacetate that has turned into pyruvate, use one NADH for each. Both reductions go to their end by themselves. The absorbance falls by one NADH for each citrate.</source>
            <translation>La citrato liasa descompone el citrato en oxalacetato y acetato. La L-malato deshidrogenasa, y la L-lactato deshidrogenasa para el oxalacetato que se ha convertido en piruvato, consumen un NADH por cada uno. Ambas reducciones llegan por sí solas a su final. La absorbancia baja en un NADH por cada citrato.</translation>
        </message>
        <message>
            <source>Buffer pH 7.8 with zinc</source>
            <translation>Tampón pH 7,8 con zinc</translation>
        </message>
        <message>
            <source>Malate and lactate dehydrogenase suspension</source>
            <translation>Suspensión de malato y lactato deshidrogenasa</translation>
        </message>
        <message>
            <source>Citrate lyase solution</source>
            <translation>Disolución de citrato liasa</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase, zinc)</source>
            <translation>Citrato → oxalacetato + acetato (citrato liasa, zinc)</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the sample are used up before A1 and do not count.</source>
            <translation>El oxalacetato y el piruvato de la muestra se consumen antes de A1 y no cuentan.</translation>
        </message>
        <message>
            <source>Isocitrate, malate and tartrate do not react.</source>
            <translation>El isocitrato, el malato y el tartrato no reaccionan.</translation>
        </message>
        <message>
            <source>Much tannin or a strongly acid sample slows the lyase: treat with PVPP, bring to pH 8.</source>
            <translation>Mucho tanino o una muestra muy ácida frenan la liasa: trate con PVPP, lleve a pH 8.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method. Bring lemon juice and other strongly acid samples to about pH 8 with sodium hydroxide first.</source>
            <translation>Pipetee la muestra tal cual, o diluida con agua hasta el intervalo del método. Lleve antes el zumo de limón y otras muestras muy ácidas a pH 8, aproximadamente, con hidróxido de sodio.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Red wine and red juice: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter.</source>
            <translation>Diluya cuanto permita el intervalo y lea un blanco de muestra propio. Vino tinto y zumos rojos: agite 10 mL con 0,2 g de polivinilpolipirrolidona (PVPP) durante un minuto y filtre.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, warm to 30 °C if need be, then filter.</source>
            <translation>Remueva o agite en un matraz medio lleno hasta que no se desprenda más gas, caliente a 30 °C si hace falta y filtre.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min, enfríe, enrase con agua, deje 20 min en hielo y filtre en frío: la grasa queda retenida.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Triture y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min, enfríe, enrase con agua y filtre. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>D-gluconic acid (template)</source>
            <translation>Ácido D-glucónico (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Absortividades: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9; otras listas dan 3500 a 365 nm para el NADPH (de memoria).</translation>
        </message>
        <message>
            <source>Gluconate kinase phosphorylates D-gluconate with ATP; 6-phosphogluconate dehydrogenase turns that into ribulose-5-phosphate, carbon dioxide and NADPH. The loss of carbon dioxide takes the reaction to its end. One NADPH for each D-gluconate; the absorbance rises.</source>
            <translation>La gluconato quinasa fosforila el D-gluconato con ATP; la 6-fosfogluconato deshidrogenasa convierte el producto en ribulosa-5-fosfato, dióxido de carbono y NADPH. La pérdida de dióxido de carbono lleva la reacción a su final. Un NADPH por cada D-gluconato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with magnesium</source>
            <translation>Tampón pH 8 con magnesio</translation>
        </message>
        <message>
            <source>NADP solution</source>
            <translation>Disolución de NADP</translation>
        </message>
        <message>
            <source>ATP solution</source>
            <translation>Disolución de ATP</translation>
        </message>
        <message>
            <source>6-Phosphogluconate dehydrogenase suspension</source>
            <translation>Suspensión de 6-fosfogluconato deshidrogenasa</translation>
        </message>
        <message>
            <source>Gluconate kinase suspension</source>
            <translation>Suspensión de gluconato quinasa</translation>
        </message>
        <message>
            <source>D-gluconic acid</source>
            <translation>Ácido D-glucónico</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-gluconate.</source>
            <translation>Se forma un NADPH por cada D-gluconato.</translation>
        </message>
        <message>
            <source>D-glucono-lactone does not react as it is: for the total, hold the sample at pH 10 to 11 for 10 min first, then bring it to pH 8.</source>
            <translation>La D-gluconolactona no reacciona como tal: para el total, mantenga antes la muestra a un pH de 10 a 11 durante 10 min y llévela después a pH 8.</translation>
        </message>
        <message>
            <source>6-Phosphogluconate of the sample is used up before A1 and does not count.</source>
            <translation>El 6-fosfogluconato de la muestra se consume antes de A1 y no cuenta.</translation>
        </message>
        <message>
            <source>D-lactic acid (template)</source>
            <translation>Ácido D-láctico (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle, stoichiometry and the buffer of pH 10 with L-glutamate: OIV-MA-AS313-07, lactic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Principio, estequiometría y el tampón de pH 10 con L-glutamato: OIV-MA-AS313-07, ácido láctico. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase turns D-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each D-lactate; the absorbance rises.</source>
            <translation>La D-lactato deshidrogenasa transforma el D-lactato y el NAD en piruvato y NADH. Ese equilibrio está del lado del lactato; lo desplazan el tampón alcalino y la transaminasa, que retira el piruvato con L-glutamato. Un NADH por cada D-lactato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer pH 10 with L-glutamate</source>
            <translation>Tampón pH 10 con L-glutamato</translation>
        </message>
        <message>
            <source>Glutamate-pyruvate transaminase suspension</source>
            <translation>Suspensión de glutamato-piruvato transaminasa</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase suspension</source>
            <translation>Suspensión de D-lactato deshidrogenasa</translation>
        </message>
        <message>
            <source>D-lactic acid</source>
            <translation>Ácido D-láctico</translation>
        </message>
        <message>
            <source>Pyruvate + L-glutamate → L-alanine + 2-oxoglutarate (glutamate-pyruvate transaminase)</source>
            <translation>Piruvato + L-glutamato → L-alanina + 2-oxoglutarato (glutamato-piruvato transaminasa)</translation>
        </message>
        <message>
            <source>One NADH formed for each D-lactate.</source>
            <translation>Se forma un NADH por cada D-lactato.</translation>
        </message>
        <message>
            <source>L-lactate does not react. D-2-hydroxybutyrate is taken slowly.</source>
            <translation>El L-lactato no reacciona. El D-2-hidroxibutirato reacciona lentamente.</translation>
        </message>
        <message>
            <source>Sweat holds lactate: touch neither pipette tips nor the inside of cuvettes.</source>
            <translation>El sudor contiene lactato: no toque las puntas de pipeta ni el interior de las cubetas.</translation>
        </message>
        <message>
            <source>A small creep after the end is usual: read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>Una pequeña deriva después del final es habitual: lea todos los tubos tras el mismo tiempo, o lea una serie y extrapole.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Meat, 5 g: homogenise in the cold with 20 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 10 with potassium hydroxide, make up to 100 mL with water, stand in ice for 20 min, filter. A sample treated with acid never goes into the waste of the hexacyanoferrate clarification.</source>
            <translation>Leche y productos lácteos, de 1 a 10 g: páselos a un matraz aforado de 100 mL con unos 60 mL de agua y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, agite y filtre. Carne, 5 g: homogeneice en frío con 20 mL de ácido perclórico 1 mol/L, centrifugue, lleve a pH 10 con hidróxido de potasio, enrase a 100 mL con agua, deje 20 min en hielo y filtre. Una muestra tratada con ácido no va nunca a los residuos de la clarificación con hexacianoferrato.</translation>
        </message>
        <message>
            <source>D-malic acid (template)</source>
            <translation>Ácido D-málico (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: OIV resolution OENO 6/98. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Principio y estequiometría: resolución OENO 6/98 de la OIV. Masa molar: resolución OENO 30/2004 de la OIV. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase oxidises D-malate and splits carbon dioxide off: pyruvate, carbon dioxide and NADH. The loss of carbon dioxide and the alkaline buffer pull the reaction to its end. One NADH for each D-malate; the absorbance rises.</source>
            <translation>La D-malato deshidrogenasa oxida el D-malato y separa dióxido de carbono: piruvato, dióxido de carbono y NADH. La pérdida de dióxido de carbono y el tampón alcalino llevan la reacción a su final. Un NADH por cada D-malato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with magnesium and potassium</source>
            <translation>Tampón pH 9 con magnesio y potasio</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase solution</source>
            <translation>Disolución de D-malato deshidrogenasa</translation>
        </message>
        <message>
            <source>D-malic acid</source>
            <translation>Ácido D-málico</translation>
        </message>
        <message>
            <source>One NADH formed for each D-malate.</source>
            <translation>Se forma un NADH por cada D-malato.</translation>
        </message>
        <message>
            <source>L-tartrate is taken slowly: the absorbance goes on creeping after the end. Read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>El L-tartrato reacciona lentamente: la absorbancia sigue derivando después del final. Lea todos los tubos tras el mismo tiempo, o lea una serie y extrapole.</translation>
        </message>
        <message>
            <source>Fifty times as much L-malate or more slows the reaction.</source>
            <translation>Una cantidad de L-malato cincuenta veces mayor, o más, frena la reacción.</translation>
        </message>
        <message>
            <source>D-sorbitol in foods</source>
            <translation>D-sorbitol en alimentos</translation>
        </message>
        <message>
            <source>French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol: volumes of the three solutions, water, sample and sorbitol dehydrogenase, 492 nm, 10 mm, 19.9 L/(mmol cm), molar mass 182.17 g/mol, about 3 g of sample in 100 mL, readings at 2 min and 2 min later, then 45 min in the dark and 15 min more. From memory: what the three solutions hold. Our own: one reading A1 (the second of the first two), one reading A2 (the larger of the last two). The signal window is the stated optimum of 20 to 350 mg/100 g with 3 g in 100 mL, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Orden francesa del 7 de octubre de 1987 (ECOC8700071A), anexo X, D-sorbitol: volúmenes de las tres disoluciones, agua, muestra y sorbitol deshidrogenasa, 492 nm, 10 mm, 19,9 L/(mmol cm), masa molar 182,17 g/mol, unos 3 g de muestra en 100 mL, lecturas a los 2 min y 2 min después, luego 45 min en la oscuridad y 15 min más. De memoria: lo que contienen las tres disoluciones. Decisión propia: una lectura A1 (la segunda de las dos primeras), una lectura A2 (la mayor de las dos últimas). El intervalo de medida es el óptimo indicado de 20 a 350 mg/100 g con 3 g en 100 mL, según cálculo propio. Práctica habitual, sin fuente: los límites de las esperas en torno a los tiempos indicados, los límites de aceptación, la pérdida del patrón, el número habitual de tubos, el intervalo típico, interferencias, preparación de la muestra y precauciones cuando no indican ninguna fuente.</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase turns D-sorbitol and NAD into fructose and NADH; diaphorase passes the hydrogen on to the tetrazolium salt INT, one formazan for each D-sorbitol. The absorbance at 492 nm rises. Xylitol is measured as well.</source>
            <translation>La sorbitol deshidrogenasa transforma el D-sorbitol y el NAD en fructosa y NADH; la diaforasa cede el hidrógeno a la sal de tetrazolio INT, un formazán por cada D-sorbitol. La absorbancia a 492 nm sube. El xilitol también se mide.</translation>
        </message>
        <message>
            <source>First solution (buffer)</source>
            <translation>Primera disolución (tampón)</translation>
        </message>
        <message>
            <source>Second solution (NAD and diaphorase)</source>
            <translation>Segunda disolución (NAD y diaforasa)</translation>
        </message>
        <message>
            <source>Third solution (INT)</source>
            <translation>Tercera disolución (INT)</translation>
        </message>
        <message>
            <source>Sample extract</source>
            <translation>Extracto de la muestra</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase solution</source>
            <translation>Disolución de sorbitol deshidrogenasa</translation>
        </message>
        <message>
            <source>D-sorbitol</source>
            <translation>D-sorbitol</translation>
        </message>
        <message>
            <source>One formazan formed for each D-sorbitol.</source>
            <translation>Se forma un formazán por cada D-sorbitol.</translation>
        </message>
        <message>
            <source>Xylitol is measured as well (same order).</source>
            <translation>El xilitol también se mide (misma orden).</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite and other reducing substances reduce INT: wait until A1 stands.</source>
            <translation>El ácido ascórbico, el sulfito y otras sustancias reductoras reducen el INT: espere hasta que A1 sea estable.</translation>
        </message>
        <message>
            <source>Dilute with water until the pipetted solution holds 0.006 to 0.105 g/L.</source>
            <translation>Diluya con agua hasta que la disolución pipeteada contenga de 0,006 a 0,105 g/L.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter and dilute.</source>
            <translation>Remueva o agite en un matraz medio lleno hasta que no se desprenda más gas, filtre y diluya.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, extract with 60 mL of water at 60 °C for 1 h, cool, make up to 100 mL, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pese unos 3 g con una precisión de 0,01 g, extraiga con 60 mL de agua a 60 °C durante 1 h, enfríe, enrase a 100 mL, deje 20 min en hielo y filtre en frío: la grasa queda retenida.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, leave with 60 mL of water for 1 h, make up to 100 mL, filter (same order). Enter mass and extract volume with the sample.</source>
            <translation>Pese unos 3 g con una precisión de 0,01 g, deje 1 h con 60 mL de agua, enrase a 100 mL y filtre (misma orden). Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Ethanol (template)</source>
            <translation>Etanol (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: MEBAK B-590.11.112, ethanol (alcohol and aldehyde dehydrogenase). Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Principio y estequiometría: MEBAK B-590.11.112, etanol (alcohol y aldehído deshidrogenasa). Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase turns ethanol into acetaldehyde. That equilibrium lies on the side of ethanol; the alkaline buffer and aldehyde dehydrogenase, which oxidises the acetaldehyde on to acetate, pull it over. Two NADH for each ethanol; the absorbance rises.</source>
            <translation>La alcohol deshidrogenasa transforma el etanol en acetaldehído. Ese equilibrio está del lado del etanol; lo desplazan el tampón alcalino y la aldehído deshidrogenasa, que sigue oxidando el acetaldehído a acetato. Dos NADH por cada etanol; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer pH 9</source>
            <translation>Tampón pH 9</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase suspension</source>
            <translation>Suspensión de alcohol deshidrogenasa</translation>
        </message>
        <message>
            <source>Ethanol</source>
            <translation>Etanol</translation>
        </message>
        <message>
            <source>Two NADH formed for each ethanol.</source>
            <translation>Se forman dos NADH por cada etanol.</translation>
        </message>
        <message>
            <source>Acetaldehyde of the sample is used up before A1 and does not count.</source>
            <translation>El acetaldehído de la muestra se consume antes de A1 y no cuenta.</translation>
        </message>
        <message>
            <source>1-Propanol, 1-butanol and other primary alcohols react, more slowly the longer they are; methanol does not.</source>
            <translation>El 1-propanol, el 1-butanol y otros alcoholes primarios también reaccionan, más despacio cuanto más larga es su cadena; el metanol no.</translation>
        </message>
        <message>
            <source>Ethanol in the air of the room, from disinfectants and squeeze bottles, shows in the blank.</source>
            <translation>El etanol del aire del local, de desinfectantes y frascos lavadores, se nota en el blanco.</translation>
        </message>
        <message>
            <source>Keep closed. Dilute with cold water into the range: wine 1 to 1000 and more, beer and cider 1 to 500, juice as it is.</source>
            <translation>Mantenga la muestra cerrada. Diluya con agua fría hasta el intervalo: vino 1 a 1000 y más, cerveza y sidra 1 a 500, zumo tal cual.</translation>
        </message>
        <message>
            <source>The dilution takes care of the colour. Low-alcohol samples: give the sample a blank of its own, or stir with PVPP in a closed vessel and filter covered.</source>
            <translation>La dilución resuelve el color. Muestras de bajo contenido alcohólico: lea un blanco de muestra propio, o agite con PVPP en recipiente cerrado y filtre tapado.</translation>
        </message>
        <message>
            <source>Centrifuge in a closed tube, or filter through a covered funnel; no suction.</source>
            <translation>Centrifugue en un tubo cerrado, o filtre por un embudo tapado; sin vacío.</translation>
        </message>
        <message>
            <source>Stir gently at room temperature in a covered flask, or filter through a covered fluted filter; don't warm: ethanol goes with the gas.</source>
            <translation>Remueva suavemente a temperatura ambiente en un matraz tapado, o filtre con filtro de pliegues tapado; no caliente: el etanol se va con el gas.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up, stand in ice for 20 min and filter cold through a covered funnel.</source>
            <translation>Pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga tapado con 60 mL de agua a 40 °C durante 20 min, enfríe tapado, enrase, deje 20 min en hielo y filtre en frío por un embudo tapado.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g, keep closed: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter through a covered funnel.</source>
            <translation>Tome de 1 a 10 g, siempre tapado: páselos a un matraz aforado de 100 mL con unos 60 mL de agua y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, agite y filtre por un embudo tapado.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up and filter through a covered funnel. Enter mass and extract volume with the sample.</source>
            <translation>Triture en frío y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga tapado con 60 mL de agua a 40 °C durante 20 min, enfríe tapado, enrase y filtre por un embudo tapado. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Free sulphite (template)</source>
            <translation>Sulfito libre (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Interferences: EN 1988-2:1998, scope. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Interferencias: EN 1988-2:1998, campo de aplicación. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>The same two reactions as for total sulphite, in a weakly acid buffer, in the cold and with a short wait, so that sulphite bound to acetaldehyde stays bound. Weakly bound sulphite is set free while the free is used up: what is found depends on the waiting time. Keep it the same for standard and samples. One NADH used for each sulphite; the absorbance falls.</source>
            <translation>Las mismas dos reacciones que para el sulfito total, en un tampón débilmente ácido, en frío y con una espera corta, para que el sulfito combinado con acetaldehído siga combinado. El sulfito débilmente combinado se libera a medida que se consume el libre: lo que se halla depende del tiempo de espera. Manténgalo igual para el patrón y las muestras. Se consume un NADH por cada sulfito; la absorbancia baja.</translation>
        </message>
        <message>
            <source>Buffer pH 6</source>
            <translation>Tampón pH 6</translation>
        </message>
        <message>
            <source>NADH and NADH peroxidase solution</source>
            <translation>Disolución de NADH y NADH peroxidasa</translation>
        </message>
        <message>
            <source>Sulphite oxidase suspension</source>
            <translation>Suspensión de sulfito oxidasa</translation>
        </message>
        <message>
            <source>Free sulphite as SO2</source>
            <translation>Sulfito libre como SO2</translation>
        </message>
        <message>
            <source>Sulphite + O2 + H2O → sulphate + H2O2 (sulphite oxidase)</source>
            <translation>Sulfito + O2 + H2O → sulfato + H2O2 (sulfito oxidasa)</translation>
        </message>
        <message>
            <source>One NADH used for each sulphite.</source>
            <translation>Se consume un NADH por cada sulfito.</translation>
        </message>
        <message>
            <source>Sulphite bound to sugars, pyruvate and pigments comes free during the reaction and counts in part: the result is an upper bound of what is free.</source>
            <translation>El sulfito combinado con azúcares, piruvato y pigmentos se libera durante la reacción y cuenta en parte: el resultado es una cota superior del sulfito libre.</translation>
        </message>
        <message>
            <source>Sulphate, sulphide and thiosulphate do not interfere; isothiocyanates do. Not for cabbage, dried garlic, dried onion, ginger, leek and soy protein (EN 1988-2:1998, scope).</source>
            <translation>El sulfato, el sulfuro y el tiosulfato no interfieren; los isotiocianatos sí. No sirve para col, ajo desecado, cebolla desecada, jengibre, puerro y proteína de soja (EN 1988-2:1998, campo de aplicación).</translation>
        </message>
        <message>
            <source>Ascorbic acid above about 0.1 g/L slows the reaction and uses NADH: treat the sample with ascorbate oxidase first.</source>
            <translation>El ácido ascórbico por encima de unos 0,1 g/L frena la reacción y consume NADH: trate antes la muestra con ascorbato oxidasa.</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Pipetee de un recipiente lleno y cerrado, sin que entre aire al agitar. Trabaje en frío y enseguida: lo que está libre cambia con la temperatura, la dilución y el aire.</translation>
        </message>
        <message>
            <source>Give the sample a blank of its own and dilute as far as the range allows. Don't treat it with charcoal or long with PVPP: sulphite is lost and oxidised.</source>
            <translation>Lea un blanco de muestra propio y diluya cuanto permita el intervalo. No la trate con carbón ni mucho tiempo con PVPP: se pierde y se oxida sulfito.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Deje sedimentar, o centrifugue en un tubo lleno y cerrado; la filtración a vacío arrastra el dióxido de azufre. Trabaje en frío y enseguida: lo que está libre cambia con la temperatura, la dilución y el aire.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few; don't make it alkaline, which sets bound sulphite free.</source>
            <translation>No caliente ni acidifique, y no agite: el dióxido de azufre se va con el gas. Vierta despacio en un vaso de precipitados y remueva suavemente en frío hasta que queden pocas burbujas; no alcalinice, porque se libera el sulfito combinado.</translation>
        </message>
        <message>
            <source>D-glucose after starch digestion</source>
            <translation>D-glucosa tras digestión del almidón</translation>
        </message>
        <message>
            <source>Commission Regulation (EC) No 900/2008, Annex I, sections 5.1 and 5.2: volumes of buffer, NADP, ATP, test solution, water and enzymes, the first reading after about 3 min, the second after about 15 min, readings every 5 min until the rise is steady and the extrapolation to the addition where the reaction has not ended, masses and flasks by starch content. Molar mass and absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. From memory: the wavelength of 340 nm and the path length of 10 mm in this text, what the solutions hold. Our own: four readings for the extrapolation. Common practice, no source: the waiting limits around the stated times, the signal window, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range (of the digest as made up), interferences and cautions where they name no source.</source>
            <translation>Reglamento (CE) n.º 900/2008 de la Comisión, anexo I, apartados 5.1 y 5.2: volúmenes de tampón, NADP, ATP, disolución de ensayo, agua y enzimas, la primera lectura a los 3 min aproximadamente, la segunda a los 15 min aproximadamente, lecturas cada 5 min hasta que el aumento sea constante y la extrapolación a la adición cuando la reacción no ha terminado, masas y matraces según el contenido de almidón. Masa molar y absortividades: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9. De memoria: la longitud de onda de 340 nm y el camino óptico de 10 mm en este texto, lo que contienen las disoluciones. Decisión propia: cuatro lecturas para la extrapolación. Práctica habitual, sin fuente: los límites de las esperas en torno a los tiempos indicados, el intervalo de medida, la absorbancia máxima, los límites de aceptación, la pérdida del patrón, el número habitual de tubos, el intervalo típico (del digerido ya enrasado), interferencias y precauciones cuando no indican ninguna fuente.</translation>
        </message>
        <message>
            <source>Amyloglucosidase has turned starch and its breakdown products into D-glucose. Hexokinase phosphorylates it with ATP, and glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose; both go to their end. The absorbance rises.</source>
            <translation>La amiloglucosidasa ha convertido el almidón y sus productos de degradación en D-glucosa. La hexoquinasa la fosforila con ATP, y la glucosa-6-fosfato deshidrogenasa forma un NADPH por cada D-glucosa; ambas reacciones llegan a su final. La absorbancia sube.</translation>
        </message>
        <message>
            <source>Buffer</source>
            <translation>Tampón</translation>
        </message>
        <message>
            <source>Test solution</source>
            <translation>Disolución de ensayo</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase suspension</source>
            <translation>Suspensión de hexoquinasa y glucosa-6-fosfato deshidrogenasa</translation>
        </message>
        <message>
            <source>D-glucose</source>
            <translation>D-glucosa</translation>
        </message>
        <message>
            <source>Starch + n H2O → n D-glucose (amyloglucosidase), before the test</source>
            <translation>Almidón + n H2O → n D-glucosa (amiloglucosidasa), antes del ensayo</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose.</source>
            <translation>Se forma un NADPH por cada D-glucosa.</translation>
        </message>
        <message>
            <source>Free D-glucose, and that of sucrose where the digestion splits it, counts too; the conversion to starch takes it off (Regulation (EEC) No 4154/87).</source>
            <translation>La D-glucosa libre, y la de la sacarosa cuando la digestión la hidroliza, también cuenta; la conversión a almidón la descuenta (Reglamento (CEE) n.º 4154/87).</translation>
        </message>
        <message>
            <source>Amyloglucosidase holds some D-glucose of its own: digest a blank with every series.</source>
            <translation>La amiloglucosidasa contiene algo de D-glucosa propia: digiera un blanco con cada serie.</translation>
        </message>
        <message>
            <source>By the starch, or its breakdown products, expected: above 70 % weigh 0.35 to 0.4 g, 20 to 70 % at most 0.5 g, 5 to 20 % at most 1 g, below 5 % at most 2 g; make up to 500, 500, 250 and 200 mL (same Regulation). Digest as the Regulation says. Enter mass and flask volume with the sample.</source>
            <translation>Según el almidón, o sus productos de degradación, que se espera: por encima del 70 % pese de 0,35 a 0,4 g, del 20 al 70 % como máximo 0,5 g, del 5 al 20 % como máximo 1 g, por debajo del 5 % como máximo 2 g; enrase a 500, 500, 250 y 200 mL (mismo Reglamento). Digiera como dice el Reglamento. Introduzca la masa y el volumen del matraz con la muestra.</translation>
        </message>
        <message>
            <source>D-glucose and D-fructose (template)</source>
            <translation>D-glucosa y D-fructosa (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.18.112, glucose, fructose and sucrose. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Enzimas y estequiometría: MEBAK B-590.18.112, glucosa, fructosa y sacarosa. Masas molares: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9. Absortividades: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9; otras listas dan 3500 a 365 nm para el NADPH (de memoria).</translation>
        </message>
        <message>
            <source>Hexokinase phosphorylates both sugars; glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose (A1 to A2). Phosphoglucose isomerase then turns fructose-6-phosphate over, and one NADPH is formed for each D-fructose (A2 to A3).</source>
            <translation>La hexoquinasa fosforila ambos azúcares; la glucosa-6-fosfato deshidrogenasa forma un NADPH por cada D-glucosa (de A1 a A2). Después la fosfoglucosa isomerasa convierte la fructosa-6-fosfato, y se forma un NADPH por cada D-fructosa (de A2 a A3).</translation>
        </message>
        <message>
            <source>Buffer pH 7.6</source>
            <translation>Tampón pH 7,6</translation>
        </message>
        <message>
            <source>NADP and ATP solution</source>
            <translation>Disolución de NADP y ATP</translation>
        </message>
        <message>
            <source>Phosphoglucose isomerase suspension</source>
            <translation>Suspensión de fosfoglucosa isomerasa</translation>
        </message>
        <message>
            <source>D-fructose</source>
            <translation>D-fructosa</translation>
        </message>
        <message>
            <source>Fructose-6-phosphate → glucose-6-phosphate (phosphoglucose isomerase)</source>
            <translation>Fructosa-6-fosfato → glucosa-6-fosfato (fosfoglucosa isomerasa)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose, and one for each D-fructose.</source>
            <translation>Se forma un NADPH por cada D-glucosa, y uno por cada D-fructosa.</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate of the sample counts as D-glucose, fructose-6-phosphate as D-fructose.</source>
            <translation>La glucosa-6-fosfato de la muestra cuenta como D-glucosa; la fructosa-6-fosfato, como D-fructosa.</translation>
        </message>
        <message>
            <source>A small creep after the end comes from other sugars and enzymes: read at the same time in every tube.</source>
            <translation>Una pequeña deriva después del final viene de otros azúcares y enzimas: lea todos los tubos tras el mismo tiempo.</translation>
        </message>
        <message>
            <source>Yeast and its enzymes go on working in an unfiltered sample: filter at once, or heat to 80 °C for 10 min, loosely stoppered.</source>
            <translation>La levadura y sus enzimas siguen actuando en una muestra sin filtrar: filtre enseguida, o caliente a 80 °C durante 10 min con el tapón flojo.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Dried fruit and honey: dilute the extract 10 to 50 times. Enter mass and extract volume with the sample.</source>
            <translation>Triture y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min, enfríe, enrase con agua y filtre. Frutas desecadas y miel: diluya el extracto de 10 a 50 veces. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Glycerol (template)</source>
            <translation>Glicerol (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.58.112, glycerol in beverages. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Enzimas y estequiometría: MEBAK B-590.58.112, glicerol en bebidas. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>Glycerol kinase phosphorylates glycerol with ATP; pyruvate kinase makes the ATP anew from ADP and phosphoenolpyruvate and sets pyruvate free, and lactate dehydrogenase uses one NADH for each. All three go to their end by themselves. The absorbance falls by one NADH for each glycerol.</source>
            <translation>La glicerol quinasa fosforila el glicerol con ATP; la piruvato quinasa regenera el ATP a partir de ADP y fosfoenolpiruvato y libera piruvato, y la lactato deshidrogenasa consume un NADH por cada uno. Las tres reacciones llegan por sí solas a su final. La absorbancia baja en un NADH por cada glicerol.</translation>
        </message>
        <message>
            <source>Buffer with NADH, ATP and phosphoenolpyruvate</source>
            <translation>Tampón con NADH, ATP y fosfoenolpiruvato</translation>
        </message>
        <message>
            <source>Pyruvate kinase and lactate dehydrogenase suspension</source>
            <translation>Suspensión de piruvato quinasa y lactato deshidrogenasa</translation>
        </message>
        <message>
            <source>Glycerol kinase suspension</source>
            <translation>Suspensión de glicerol quinasa</translation>
        </message>
        <message>
            <source>Glycerol</source>
            <translation>Glicerol</translation>
        </message>
        <message>
            <source>One NADH used for each glycerol.</source>
            <translation>Se consume un NADH por cada glicerol.</translation>
        </message>
        <message>
            <source>Dihydroxyacetone and glyceraldehyde are phosphorylated too.</source>
            <translation>La dihidroxiacetona y el gliceraldehído también se fosforilan.</translation>
        </message>
        <message>
            <source>ADP and pyruvate of the sample and of the reagents are used up before A1 and do not count.</source>
            <translation>El ADP y el piruvato de la muestra y de los reactivos se consumen antes de A1 y no cuentan.</translation>
        </message>
        <message>
            <source>Traces of ATPase let the absorbance creep: read at the same time in every tube.</source>
            <translation>Con trazas de ATPasa la absorbancia deriva lentamente: lea todos los tubos tras el mismo tiempo.</translation>
        </message>
        <message>
            <source>Some enzymes are kept in glycerol: take ammonium sulphate suspensions.</source>
            <translation>Algunas enzimas se conservan en glicerol: tome suspensiones en sulfato de amonio.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Or precipitate with perchloric acid, 1 mol/L, centrifuge and bring to pH 8 with potassium hydroxide; never both in one flask.</source>
            <translation>Tome de 1 a 10 g: páselos a un matraz aforado de 100 mL con unos 60 mL de agua y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, agite y filtre. O precipite con ácido perclórico 1 mol/L, centrifugue y lleve a pH 8 con hidróxido de potasio; nunca ambas cosas en un mismo matraz.</translation>
        </message>
        <message>
            <source>L-ascorbic acid at 265 nm (template)</source>
            <translation>Ácido L-ascórbico a 265 nm (plantilla)</translation>
        </message>
        <message>
            <source>L-ascorbate itself absorbs at 265 nm, dehydroascorbate does not. Ascorbate oxidase takes all of it to dehydroascorbate with the oxygen dissolved in the tube; the reaction goes to its end by itself. The absorbance falls by one L-ascorbate for each L-ascorbic acid. Needs quartz cuvettes or plastic ones for the ultraviolet.</source>
            <translation>El propio L-ascorbato absorbe a 265 nm; el deshidroascorbato no. La ascorbato oxidasa lo convierte todo en deshidroascorbato con el oxígeno disuelto en el tubo; la reacción llega por sí sola a su final. La absorbancia baja en un L-ascorbato por cada ácido L-ascórbico. Necesita cubetas de cuarzo o de plástico para el ultravioleta.</translation>
        </message>
        <message>
            <source>Buffer pH 6 with EDTA</source>
            <translation>Tampón pH 6 con EDTA</translation>
        </message>
        <message>
            <source>Ascorbate oxidase solution</source>
            <translation>Disolución de ascorbato oxidasa</translation>
        </message>
        <message>
            <source>L-ascorbic acid</source>
            <translation>Ácido L-ascórbico</translation>
        </message>
        <message>
            <source>2 L-ascorbic acid + O2 → 2 dehydroascorbic acid + 2 H2O (ascorbate oxidase)</source>
            <translation>2 ácido L-ascórbico + O2 → 2 ácido deshidroascórbico + 2 H2O (ascorbato oxidasa)</translation>
        </message>
        <message>
            <source>One L-ascorbate lost for each L-ascorbic acid.</source>
            <translation>Se pierde un L-ascorbato por cada ácido L-ascórbico.</translation>
        </message>
        <message>
            <source>D-Isoascorbic acid (erythorbic acid) reacts too, more slowly.</source>
            <translation>El ácido D-isoascórbico (ácido eritórbico) también reacciona, más despacio.</translation>
        </message>
        <message>
            <source>Polyphenols, proteins and preservatives absorb at 265 nm: dilute until A1 stays below 2.</source>
            <translation>Los polifenoles, las proteínas y los conservantes absorben a 265 nm: diluya hasta que A1 quede por debajo de 2.</translation>
        </message>
        <message>
            <source>The enzyme absorbs at 265 nm itself: every series needs blanks.</source>
            <translation>La propia enzima absorbe a 265 nm: cada serie necesita blancos.</translation>
        </message>
        <message>
            <source>Dehydroascorbic acid does not count unless it was reduced before.</source>
            <translation>El ácido deshidroascórbico no cuenta si no se reduce antes.</translation>
        </message>
        <message>
            <source>L-ascorbic acid oxidises in minutes in a dilute neutral solution: dilute with metaphosphoric acid, 15 g/L, keep dark and cold, and pipette within the hour.</source>
            <translation>El ácido L-ascórbico se oxida en minutos en una disolución neutra diluida: diluya con ácido metafosfórico, 15 g/L, mantenga en frío y en la oscuridad y pipetee antes de una hora.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, as far as the range allows; give the sample a blank of its own. PVPP takes some of the ascorbic acid away: check with a spiked sample.</source>
            <translation>Diluya con ácido metafosfórico, 15 g/L, cuanto permita el intervalo; lea un blanco de muestra propio. La PVPP retiene algo de ácido ascórbico: compruébelo con una muestra fortificada.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, then centrifuge or filter at once.</source>
            <translation>Diluya con ácido metafosfórico, 15 g/L, y centrifugue o filtre enseguida.</translation>
        </message>
        <message>
            <source>Stir in the cold under cover until no more gas comes, then dilute with metaphosphoric acid, 15 g/L.</source>
            <translation>Remueva tapado y en frío hasta que no se desprenda más gas y diluya con ácido metafosfórico, 15 g/L.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL, stand in ice for 20 min and filter cold. Don't extract hot.</source>
            <translation>Homogeneice 5 g en frío con ácido metafosfórico, 15 g/L, enrase a 100 mL, deje 20 min en hielo y filtre en frío. No extraiga en caliente.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 50 g/L, which precipitates protein too, make up to 100 mL, filter and dilute.</source>
            <translation>Homogeneice 5 g en frío con ácido metafosfórico, 50 g/L, que también precipita la proteína, enrase a 100 mL, filtre y diluya.</translation>
        </message>
        <message>
            <source>Mince frozen, homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL and filter at once; don't extract hot. Enter mass and extract volume with the sample.</source>
            <translation>Triture la muestra congelada, homogeneice 5 g en frío con ácido metafosfórico, 15 g/L, enrase a 100 mL y filtre enseguida; no extraiga en caliente. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>L-glutamic acid at 492 nm (template)</source>
            <translation>Ácido L-glutámico a 492 nm (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivity of the formazan of INT: French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Absortividad del formazán del INT: orden francesa del 7 de octubre de 1987 (ECOC8700071A), anexo X, D-sorbitol.</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase turns L-glutamate and NAD into 2-oxoglutarate, ammonium and NADH. That equilibrium lies on the side of glutamate; diaphorase pulls it over by passing the hydrogen on to the tetrazolium salt INT, one formazan for each L-glutamate. The absorbance at 492 nm rises.</source>
            <translation>La glutamato deshidrogenasa transforma el L-glutamato y el NAD en 2-oxoglutarato, amonio y NADH. Ese equilibrio está del lado del glutamato; lo desplaza la diaforasa al ceder el hidrógeno a la sal de tetrazolio INT, un formazán por cada L-glutamato. La absorbancia a 492 nm sube.</translation>
        </message>
        <message>
            <source>Buffer pH 8.6 with detergent</source>
            <translation>Tampón pH 8,6 con detergente</translation>
        </message>
        <message>
            <source>NAD and diaphorase solution</source>
            <translation>Disolución de NAD y diaforasa</translation>
        </message>
        <message>
            <source>INT solution</source>
            <translation>Disolución de INT</translation>
        </message>
        <message>
            <source>L-glutamic acid</source>
            <translation>Ácido L-glutámico</translation>
        </message>
        <message>
            <source>One formazan formed for each L-glutamate.</source>
            <translation>Se forma un formazán por cada L-glutamato.</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite, thiols and other reducing substances reduce INT: wait until A1 stands, or oxidise them first with hydrogen peroxide in alkali and destroy the rest with catalase.</source>
            <translation>El ácido ascórbico, el sulfito, los tioles y otras sustancias reductoras reducen el INT: espere hasta que A1 sea estable, u oxídelas antes con peróxido de hidrógeno en medio alcalino y destruya el resto con catalasa.</translation>
        </message>
        <message>
            <source>L-Glutamine and L-aspartate do not react.</source>
            <translation>La L-glutamina y el L-aspartato no reaccionan.</translation>
        </message>
        <message>
            <source>Light reduces INT: keep the tubes in the dark.</source>
            <translation>La luz reduce el INT: mantenga los tubos en la oscuridad.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter; no charcoal.</source>
            <translation>Diluya cuanto permita el intervalo y lea un blanco de muestra propio. Muy coloreada: agite 10 mL con 0,2 g de polivinilpolipirrolidona (PVPP) durante un minuto y filtre; sin carbón.</translation>
        </message>
        <message>
            <source>L-lactic acid (template)</source>
            <translation>Ácido L-láctico (plantilla)</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase turns L-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each L-lactate; the absorbance rises.</source>
            <translation>La L-lactato deshidrogenasa transforma el L-lactato y el NAD en piruvato y NADH. Ese equilibrio está del lado del lactato; lo desplazan el tampón alcalino y la transaminasa, que retira el piruvato con L-glutamato. Un NADH por cada L-lactato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase suspension</source>
            <translation>Suspensión de L-lactato deshidrogenasa</translation>
        </message>
        <message>
            <source>L-lactic acid</source>
            <translation>Ácido L-láctico</translation>
        </message>
        <message>
            <source>One NADH formed for each L-lactate.</source>
            <translation>Se forma un NADH por cada L-lactato.</translation>
        </message>
        <message>
            <source>D-lactate does not react. L-2-hydroxybutyrate is taken slowly.</source>
            <translation>El D-lactato no reacciona. El L-2-hidroxibutirato reacciona lentamente.</translation>
        </message>
        <message>
            <source>L-malic acid (template)</source>
            <translation>Ácido L-málico (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Stoichiometry: OIV-MA-AS313-11, L-malic acid. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Estequiometría: OIV-MA-AS313-11, ácido L-málico. Masa molar: resolución OENO 30/2004 de la OIV. Absortividades: norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the alkaline buffer and the transaminase, which takes the oxaloacetate away with L-glutamate, pull it over. One NADH for each L-malate; the absorbance rises.</source>
            <translation>La L-malato deshidrogenasa transforma el L-malato y el NAD en oxalacetato y NADH. Ese equilibrio está del lado del malato; lo desplazan el tampón alcalino y la transaminasa, que retira el oxalacetato con L-glutamato. Un NADH por cada L-malato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>Glutamate-oxaloacetate transaminase suspension</source>
            <translation>Suspensión de glutamato-oxalacetato transaminasa</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase suspension</source>
            <translation>Suspensión de L-malato deshidrogenasa</translation>
        </message>
        <message>
            <source>L-malic acid</source>
            <translation>Ácido L-málico</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (glutamate-oxaloacetate transaminase)</source>
            <translation>Oxalacetato + L-glutamato → L-aspartato + 2-oxoglutarato (glutamato-oxalacetato transaminasa)</translation>
        </message>
        <message>
            <source>One NADH formed for each L-malate.</source>
            <translation>Se forma un NADH por cada L-malato.</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate, citrate and aspartate do not react.</source>
            <translation>La enzima solo transforma el L-malato: el D-malato, el lactato, el tartrato, el citrato y el aspartato no reaccionan.</translation>
        </message>
        <message>
            <source>Much tannin slows the enzymes; treat the sample with PVPP and wait until the absorbance stands.</source>
            <translation>Mucho tanino frena las enzimas; trate la muestra con PVPP y espere hasta que la absorbancia sea estable.</translation>
        </message>
        <message>
            <source>L-malic acid in wine</source>
            <translation>Ácido L-málico en vino</translation>
        </message>
        <message>
            <source>OIV-MA-AS313-11 (R2009), L-malic acid, enzymatic method, sections 3.3 to 5 (French text): volumes of buffer, NAD, water, GOT and sample, the first reading after about 3 min, and the range of 30 to 350 mg/L in the pipetted solution, below it up to 1 mL of sample. Molar mass: OIV resolution OENO 30/2004. From memory: the 0.01 mL of L-malate dehydrogenase, the second reading after 5 to 10 min, the difference A2 - A1 less that of the blank, the identity of the absorptivities (6180, 6300 and 3400 L/(mol cm), as in the Russian standard for citric acid in juices, document 1200102279, section 8). The signal window is that range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>OIV-MA-AS313-11 (R2009), ácido L-málico, método enzimático, apartados 3.3 a 5 (texto francés): volúmenes de tampón, NAD, agua, GOT y muestra, la primera lectura a los 3 min aproximadamente y el intervalo de 30 a 350 mg/L en la disolución pipeteada (por debajo de él, hasta 1 mL de muestra). Masa molar: resolución OENO 30/2004 de la OIV. De memoria: los 0,01 mL de L-malato deshidrogenasa, la segunda lectura después de 5 a 10 min, la diferencia A2 − A1 menos la del blanco, la identidad de las absortividades (6180, 6300 y 3400 L/(mol cm), como en la norma rusa para ácido cítrico en zumos, documento 1200102279, apartado 8). El intervalo de medida es ese intervalo en absorbancia a 340 nm, según cálculo propio. Práctica habitual, sin fuente: los límites de las esperas en torno a los tiempos indicados, la absorbancia máxima, los límites de aceptación, la pérdida del patrón, el número habitual de tubos, el intervalo típico, interferencias, preparación de la muestra y precauciones cuando no indican ninguna fuente.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the transaminase GOT pulls it over by taking the oxaloacetate away with L-glutamate. One NADH for each L-malate; the absorbance rises.</source>
            <translation>La L-malato deshidrogenasa transforma el L-malato y el NAD en oxalacetato y NADH. Ese equilibrio está del lado del malato; lo desplaza la transaminasa GOT al retirar el oxalacetato con L-glutamato. Un NADH por cada L-malato; la absorbancia sube.</translation>
        </message>
        <message>
            <source>GOT suspension</source>
            <translation>Suspensión de GOT</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (GOT)</source>
            <translation>Oxalacetato + L-glutamato → L-aspartato + 2-oxoglutarato (GOT)</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate and citrate do not react.</source>
            <translation>La enzima solo transforma el L-malato: el D-malato, el lactato, el tartrato y el citrato no reaccionan.</translation>
        </message>
        <message>
            <source>Lactose (template)</source>
            <translation>Lactosa (plantilla)</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase first use up the free D-glucose (before A1). Beta-galactosidase then splits lactose, and one NADPH is formed for each D-glucose set free, one for each lactose. The phosphorylation takes the reaction to its end. The absorbance rises. Results are anhydrous lactose; times 360.31 / 342.30 gives the monohydrate.</source>
            <translation>La hexoquinasa y la glucosa-6-fosfato deshidrogenasa consumen primero la D-glucosa libre (antes de A1). Después la beta-galactosidasa hidroliza la lactosa, y se forma un NADPH por cada D-glucosa liberada, uno por cada lactosa. La fosforilación lleva la reacción a su final. La absorbancia sube. Los resultados son lactosa anhidra; multiplicados por 360,31 / 342,30 dan el monohidrato.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with magnesium</source>
            <translation>Tampón pH 7,5 con magnesio</translation>
        </message>
        <message>
            <source>Beta-galactosidase suspension</source>
            <translation>Suspensión de beta-galactosidasa</translation>
        </message>
        <message>
            <source>Lactose, anhydrous</source>
            <translation>Lactosa anhidra</translation>
        </message>
        <message>
            <source>Lactose + H2O → D-galactose + D-glucose (beta-galactosidase)</source>
            <translation>Lactosa + H2O → D-galactosa + D-glucosa (beta-galactosidasa)</translation>
        </message>
        <message>
            <source>One NADPH formed for each lactose.</source>
            <translation>Se forma un NADPH por cada lactosa.</translation>
        </message>
        <message>
            <source>Lactulose gives fructose instead of glucose and does not count; other beta-galactosides with glucose are taken slowly.</source>
            <translation>La lactulosa da fructosa en lugar de glucosa y no cuenta; otros beta-galactósidos con glucosa reaccionan lentamente.</translation>
        </message>
        <message>
            <source>Much free D-glucose raises A1 and uses NADP up: dilute until A1 stays below 1, or remove the glucose first.</source>
            <translation>Mucha D-glucosa libre eleva A1 y consume NADP: diluya hasta que A1 quede por debajo de 1, o elimine antes la glucosa.</translation>
        </message>
        <message>
            <source>The enzyme splits a little sucrose or maltose where it is impure: try a solution of either.</source>
            <translation>Si la enzima es impura, hidroliza algo de sacarosa o maltosa: ensaye una disolución de cada una.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; whey is diluted 50 to 100 times.</source>
            <translation>Pipetee la muestra tal cual, o diluida con agua hasta el intervalo del método; el suero lácteo se diluye de 50 a 100 veces.</translation>
        </message>
        <message>
            <source>Cream, cheese, chocolate: weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, clarify as a protein-rich sample, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Nata, queso, chocolate: pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min, enfríe, clarifique como una muestra rica en proteína, enrase, deje 20 min en hielo y filtre en frío: la grasa queda retenida.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Dilute the filtrate into the range.</source>
            <translation>Leche y productos lácteos, de 1 a 10 g: páselos a un matraz aforado de 100 mL con unos 60 mL de agua y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, agite y filtre. Diluya el filtrado hasta el intervalo.</translation>
        </message>
        <message>
            <source>Nitrate (template)</source>
            <translation>Nitrato (plantilla)</translation>
        </message>
        <message>
            <source>Nitrate reductase reduces nitrate to nitrite with one NADPH for each nitrate; FAD helps. The reaction goes to its end by itself. The absorbance falls.</source>
            <translation>La nitrato reductasa reduce el nitrato a nitrito con un NADPH por cada nitrato y con ayuda del FAD. La reacción llega por sí sola a su final. La absorbancia baja.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with FAD</source>
            <translation>Tampón pH 7,5 con FAD</translation>
        </message>
        <message>
            <source>NADPH solution</source>
            <translation>Disolución de NADPH</translation>
        </message>
        <message>
            <source>Nitrate reductase solution</source>
            <translation>Disolución de nitrato reductasa</translation>
        </message>
        <message>
            <source>Nitrate</source>
            <translation>Nitrato</translation>
        </message>
        <message>
            <source>One NADPH used for each nitrate.</source>
            <translation>Se consume un NADPH por cada nitrato.</translation>
        </message>
        <message>
            <source>Nitrite does not react. Chlorate is reduced too.</source>
            <translation>El nitrito no reacciona. El clorato también se reduce.</translation>
        </message>
        <message>
            <source>The enzyme uses NADPH slowly without nitrate: run blanks in every series, read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>La enzima consume NADPH lentamente aun sin nitrato: incluya blancos en cada serie, lea todos los tubos tras el mismo tiempo, o lea una serie y extrapole.</translation>
        </message>
        <message>
            <source>Glassware and filters rinsed with nitric acid or tap water hold nitrate.</source>
            <translation>El material de vidrio y los filtros enjuagados con ácido nítrico o agua del grifo contienen nitrato.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold nitrate. Throw the first millilitres away.</source>
            <translation>Centrifugue, o filtre por un filtro lavado: el papel puede contener nitrato. Deseche los primeros mililitros.</translation>
        </message>
        <message>
            <source>Vegetables, meat: mince, weigh 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 80 °C for 15 min, which also stops the sample's own enzymes, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Hortalizas, carne: triture, pese 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 80 °C durante 15 min, lo que detiene además las enzimas propias de la muestra, enfríe, enrase con agua y filtre. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Sucrose by difference after inversion (template)</source>
            <translation>Sacarosa por diferencia tras inversión (plantilla)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: TCVN 10697:2015 (EN 12146:1996), sucrose in juices. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria salvo los que se indican aquí. Enzimas y estequiometría: TCVN 10697:2015 (EN 12146:1996), sacarosa en zumos. Masas molares: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9. Absortividades: norma rusa para sacarosa y glucosa en alimentos, documento 1200111376, apartado 9; otras listas dan 3500 a 365 nm para el NADPH (de memoria).</translation>
        </message>
        <message>
            <source>Beta-fructosidase splits sucrose into D-glucose and D-fructose at pH 4.6. The buffer of pH 7.6 then ends the inversion, and hexokinase and glucose-6-phosphate dehydrogenase form one NADPH for each D-glucose, that of the sucrose and that which was free. Sucrose is the difference from the free D-glucose, which the method D-glucose and D-fructose measures in the same sample, times 342.3 / 180.16. The absorbance rises.</source>
            <translation>La beta-fructosidasa hidroliza la sacarosa en D-glucosa y D-fructosa a pH 4,6. Después el tampón de pH 7,6 detiene la inversión, y la hexoquinasa y la glucosa-6-fosfato deshidrogenasa forman un NADPH por cada D-glucosa, la de la sacarosa y la que estaba libre. La sacarosa es la diferencia con la D-glucosa libre, que el método D-glucosa y D-fructosa mide en la misma muestra, multiplicada por 342,3 / 180,16. La absorbancia sube.</translation>
        </message>
        <message>
            <source>Beta-fructosidase in buffer pH 4.6</source>
            <translation>Beta-fructosidasa en tampón pH 4,6</translation>
        </message>
        <message>
            <source>D-glucose after inversion</source>
            <translation>D-glucosa tras inversión</translation>
        </message>
        <message>
            <source>Sucrose</source>
            <translation>Sacarosa</translation>
        </message>
        <message>
            <source>Sucrose + H2O → D-glucose + D-fructose (beta-fructosidase)</source>
            <translation>Sacarosa + H2O → D-glucosa + D-fructosa (beta-fructosidasa)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose: one for each sucrose.</source>
            <translation>Se forma un NADPH por cada D-glucosa: uno por cada sacarosa.</translation>
        </message>
        <message>
            <source>Beta-fructosidase also splits raffinose, kestoses and short inulins; of these, kestoses and inulins that end in glucose set glucose free.</source>
            <translation>La beta-fructosidasa también hidroliza la rafinosa, las kestosas y las inulinas cortas; de estas, las kestosas y las inulinas que terminan en glucosa liberan glucosa.</translation>
        </message>
        <message>
            <source>Much free D-glucose makes the difference uncertain: sucrose below 5 g/L beside much glucose cannot be measured accurately (EN 12146:1996).</source>
            <translation>Mucha D-glucosa libre hace incierta la diferencia: la sacarosa por debajo de 5 g/L junto a mucha glucosa no se puede medir con exactitud (EN 12146:1996).</translation>
        </message>
        <message>
            <source>A sample of its own acid or buffer holds the pH away from 4.6: dilute or neutralise.</source>
            <translation>Una muestra con ácido o tampón propios mantiene el pH lejos de 4,6: diluya o neutralice.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; take the same dilution for the free D-glucose where both fit. Bring strongly acid juices to pH 4 to 7 at once: sucrose inverts in acid.</source>
            <translation>Pipetee la muestra tal cual, o diluida con agua hasta el intervalo del método; tome la misma dilución para la D-glucosa libre si ambas caben en él. Lleve enseguida los zumos muy ácidos a un pH de 4 a 7: la sacarosa se invierte en medio ácido.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, without warming: sucrose inverts in warm acid. Filter.</source>
            <translation>Remueva o agite en un matraz medio lleno hasta que no se desprenda más gas, sin calentar: la sacarosa se invierte en medio ácido caliente. Filtre.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min (acid fruit: neutralise first), cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Triture y mezcle, pese de 1 a 5 g en un matraz aforado de 100 mL, extraiga con 60 mL de agua a 60 °C durante 20 min (frutas ácidas: neutralice antes), enfríe, enrase con agua y filtre. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Total sulphite (template)</source>
            <translation>Sulfito total (plantilla)</translation>
        </message>
        <message>
            <source>Sulphite oxidase turns sulphite into sulphate and hydrogen peroxide; NADH peroxidase uses the peroxide up together with one NADH for each sulphite. The absorbance falls. Bound sulphite is set free by the alkaline buffer. The oxidation needs the oxygen dissolved in the tube, and both steps go to their end by themselves.</source>
            <translation>La sulfito oxidasa transforma el sulfito en sulfato y peróxido de hidrógeno; la NADH peroxidasa consume el peróxido junto con un NADH por cada sulfito. La absorbancia baja. El tampón alcalino libera el sulfito combinado. La oxidación necesita el oxígeno disuelto en el tubo, y ambas reacciones llegan por sí solas a su final.</translation>
        </message>
        <message>
            <source>Buffer pH 8</source>
            <translation>Tampón pH 8</translation>
        </message>
        <message>
            <source>Total sulphite as SO2</source>
            <translation>Sulfito total como SO2</translation>
        </message>
        <message>
            <source>Bound sulphite as SO2</source>
            <translation>Sulfito combinado como SO2</translation>
        </message>
        <message>
            <source>Sulphite bound to carbonyl compounds reacts and counts (EN 1988-2:1998, scope).</source>
            <translation>El sulfito combinado con compuestos carbonílicos reacciona y cuenta (EN 1988-2:1998, campo de aplicación).</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Dilute with water right before pipetting.</source>
            <translation>Pipetee de un recipiente lleno y cerrado, sin que entre aire al agitar. Diluya con agua justo antes de pipetear.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off.</source>
            <translation>Deje sedimentar, o centrifugue en un tubo lleno y cerrado; la filtración a vacío arrastra el dióxido de azufre.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few, or bring to pH 8 with sodium hydroxide first, then degas.</source>
            <translation>No caliente ni acidifique, y no agite: el dióxido de azufre se va con el gas. Vierta despacio en un vaso de precipitados y remueva suavemente en frío hasta que queden pocas burbujas, o lleve antes a pH 8 con hidróxido de sodio y desgasifique después.</translation>
        </message>
        <message>
            <source>Shake 5 g with water at pH 8 in a closed 100 mL flask at 60 °C for 5 min, cool closed, make up, chill in ice and filter cold.</source>
            <translation>Agite 5 g con agua a pH 8 en un matraz cerrado de 100 mL a 60 °C durante 5 min, enfríe cerrado, enrase, enfríe en hielo y filtre en frío.</translation>
        </message>
        <message>
            <source>Take 5 to 10 g: bring into a 100 mL volumetric flask with 60 mL of water, bring to pH 8, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, filter, use at once. Acid deproteinisation drives sulphur dioxide off.</source>
            <translation>Tome de 5 a 10 g: páselos a un matraz aforado de 100 mL con 60 mL de agua, lleve a pH 8 y añada, mezclando después de cada adición, 5 mL de disolución de hexacianoferrato(II) de potasio (3,6 g del trihidrato en 100 mL), 5 mL de disolución de sulfato de zinc (7,2 g del heptahidrato en 100 mL) y 10 mL de hidróxido de sodio 0,1 mol/L; enrase, filtre y use el filtrado enseguida. La desproteinización con ácido expulsa el dióxido de azufre.</translation>
        </message>
        <message>
            <source>Dried fruit, potato products, 1 to 5 g: mince in the cold, shake with 60 mL of water of pH 8 in a closed 100 mL flask at 60 °C for 15 min, cool closed, make up with water and filter through a covered funnel; use at once. Enter mass and extract volume with the sample.</source>
            <translation>Frutas desecadas, productos de patata, de 1 a 5 g: triture en frío, agite con 60 mL de agua de pH 8 en un matraz cerrado de 100 mL a 60 °C durante 15 min, enfríe cerrado, enrase con agua y filtre por un embudo tapado; use el filtrado enseguida. Introduzca la masa y el volumen de extracto con la muestra.</translation>
        </message>
        <message>
            <source>Acetaldehyde + NAD⁺ + H2O → acetate + NADH + 2 H⁺ (aldehyde dehydrogenase)</source>
            <translation>Acetaldehído + NAD⁺ + H2O → acetato + NADH + 2 H⁺ (aldehído deshidrogenasa)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ ⇌ oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-malato + NAD⁺ ⇌ oxalacetato + NADH + H⁺ (L-malato deshidrogenasa)</translation>
        </message>
        <message>
            <source>Acetyl-CoA + oxaloacetate + H2O → citrate + CoA + H⁺ (citrate synthase)</source>
            <translation>Acetil-CoA + oxalacetato + H2O → citrato + CoA + H⁺ (citrato sintasa)</translation>
        </message>
        <message>
            <source>NH4⁺ + 2-oxoglutarate + NADH + H⁺ → L-glutamate + NAD⁺ + H2O (glutamate dehydrogenase)</source>
            <translation>NH4⁺ + 2-oxoglutarato + NADH + H⁺ → L-glutamato + NAD⁺ + H2O (glutamato deshidrogenasa)</translation>
        </message>
        <message>
            <source>Oxaloacetate + NADH + H⁺ → L-malate + NAD⁺ (L-malate dehydrogenase)</source>
            <translation>Oxalacetato + NADH + H⁺ → L-malato + NAD⁺ (L-malato deshidrogenasa)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase), for oxaloacetate that has lost carbon dioxide</source>
            <translation>Piruvato + NADH + H⁺ → L-lactato + NAD⁺ (L-lactato deshidrogenasa), para el oxalacetato que ha perdido dióxido de carbono</translation>
        </message>
        <message>
            <source>D-gluconate + ATP → 6-phosphogluconate + ADP + H⁺ (gluconate kinase)</source>
            <translation>D-gluconato + ATP → 6-fosfogluconato + ADP + H⁺ (gluconato quinasa)</translation>
        </message>
        <message>
            <source>6-Phosphogluconate + NADP⁺ → ribulose-5-phosphate + CO2 + NADPH (6-phosphogluconate dehydrogenase)</source>
            <translation>6-Fosfogluconato + NADP⁺ → ribulosa-5-fosfato + CO2 + NADPH (6-fosfogluconato deshidrogenasa)</translation>
        </message>
        <message>
            <source>D-lactate + NAD⁺ → pyruvate + NADH + H⁺ (D-lactate dehydrogenase)</source>
            <translation>D-lactato + NAD⁺ → piruvato + NADH + H⁺ (D-lactato deshidrogenasa)</translation>
        </message>
        <message>
            <source>D-malate + NAD⁺ → pyruvate + CO2 + NADH (D-malate dehydrogenase, decarboxylating)</source>
            <translation>D-malato + NAD⁺ → piruvato + CO2 + NADH (D-malato deshidrogenasa descarboxilante)</translation>
        </message>
        <message>
            <source>D-sorbitol + NAD⁺ → D-fructose + NADH + H⁺ (sorbitol dehydrogenase)</source>
            <translation>D-sorbitol + NAD⁺ → D-fructosa + NADH + H⁺ (sorbitol deshidrogenasa)</translation>
        </message>
        <message>
            <source>NADH + INT⁺ → NAD⁺ + formazan (diaphorase)</source>
            <translation>NADH + INT⁺ → NAD⁺ + formazán (diaforasa)</translation>
        </message>
        <message>
            <source>Ethanol + NAD⁺ → acetaldehyde + NADH + H⁺ (alcohol dehydrogenase)</source>
            <translation>Etanol + NAD⁺ → acetaldehído + NADH + H⁺ (alcohol deshidrogenasa)</translation>
        </message>
        <message>
            <source>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH peroxidase)</source>
            <translation>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH peroxidasa)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-glucosa + ATP → glucosa-6-fosfato + ADP + H⁺ (hexoquinasa)</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate + NADP⁺ + H2O → 6-phosphogluconate + NADPH + 2 H⁺ (glucose-6-phosphate dehydrogenase)</source>
            <translation>Glucosa-6-fosfato + NADP⁺ + H2O → 6-fosfogluconato + NADPH + 2 H⁺ (glucosa-6-fosfato deshidrogenasa)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺; D-fructose + ATP → fructose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-glucosa + ATP → glucosa-6-fosfato + ADP + H⁺; D-fructosa + ATP → fructosa-6-fosfato + ADP + H⁺ (hexoquinasa)</translation>
        </message>
        <message>
            <source>Glycerol + ATP → glycerol-3-phosphate + ADP + H⁺ (glycerol kinase)</source>
            <translation>Glicerol + ATP → glicerol-3-fosfato + ADP + H⁺ (glicerol quinasa)</translation>
        </message>
        <message>
            <source>ADP + phosphoenolpyruvate + H⁺ → ATP + pyruvate (pyruvate kinase)</source>
            <translation>ADP + fosfoenolpiruvato + H⁺ → ATP + piruvato (piruvato quinasa)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase)</source>
            <translation>Piruvato + NADH + H⁺ → L-lactato + NAD⁺ (L-lactato deshidrogenasa)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory.</source>
            <translation>Plantilla: ponga los volúmenes de su proveedor de reactivos. Práctica habitual, sin fuente publicada; todos los valores de memoria.</translation>
        </message>
        <message>
            <source>The absorptivity of L-ascorbate at 265 nm and pH 6 to 7 stands in lists from 14000 to 16500 L/(mol cm): calibrate against a standard of the day.</source>
            <translation>La absortividad del L-ascorbato a 265 nm y pH 6 a 7 figura en las listas entre 14000 y 16500 L/(mol cm): calibre frente a un patrón del día.</translation>
        </message>
        <message>
            <source>L-glutamate + NAD⁺ + H2O → 2-oxoglutarate + NH4⁺ + NADH + H⁺ (glutamate dehydrogenase)</source>
            <translation>L-glutamato + NAD⁺ + H2O → 2-oxoglutarato + NH4⁺ + NADH + H⁺ (glutamato deshidrogenasa)</translation>
        </message>
        <message>
            <source>L-lactate + NAD⁺ → pyruvate + NADH + H⁺ (L-lactate dehydrogenase)</source>
            <translation>L-lactato + NAD⁺ → piruvato + NADH + H⁺ (L-lactato deshidrogenasa)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ → oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-malato + NAD⁺ → oxalacetato + NADH + H⁺ (L-malato deshidrogenasa)</translation>
        </message>
        <message>
            <source>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (nitrate reductase)</source>
            <translation>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (nitrato reductasa)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::TextPlace</name>
        <message>
            <source>line %1, column %2</source>
            <translation>línea %1, columna %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::notebook</name>
        <message>
            <source>The tubes were not added, since one of them comes with readings or marks: add it as it is planned, and do the rest at the bench.</source>
            <translation>Los tubos no se han añadido, porque uno de ellos viene con lecturas o marcas: añádalo tal como está previsto y haga el resto en la mesa.</translation>
        </message>
        <message>
            <source>The tubes were not added: the plan tells of sample %1, which is not among the new ones.</source>
            <translation>Los tubos no se han añadido: el plan habla de la muestra %1, que no está entre las nuevas.</translation>
        </message>
        <message>
            <source>The tubes were not added: %1: %2.</source>
            <translation>Los tubos no se han añadido: %1: %2.</translation>
        </message>
        <message>
            <source>tubes %1</source>
            <translation>tubos %1</translation>
        </message>
        <message>
            <source>; samples %1</source>
            <translation>; muestras %1</translation>
        </message>
        <message>
            <source>Nothing was stored, since no tube is named: choose at least one.</source>
            <translation>No se ha guardado nada, porque no se indica ningún tubo: elija al menos uno.</translation>
        </message>
        <message>
            <source>The notebook has nothing of %1, so no archive of it was made; choose a year in which something was done.</source>
            <translation>El cuaderno no tiene nada de %1, así que no se ha hecho ningún archivo histórico; elija un año en el que se hiciera algo.</translation>
        </message>
        <message>
            <source>The archive did not come out whole and was taken away again; nothing was changed in the notebook %1: verify it, and see that the disk has room.</source>
            <translation>El archivo histórico no salió íntegro y se ha eliminado; no se ha cambiado nada en el cuaderno %1: verifíquelo y compruebe que el disco tenga espacio.</translation>
        </message>
        <message>
            <source>The disk failed at the end of the last step in the notebook %1, so it is not sure that it is kept: see that the disk is sound, open the notebook again, and look before doing the step again.</source>
            <translation>El disco falló al final del último paso en el cuaderno %1, así que no es seguro que se conserve: compruebe que el disco esté en buen estado, abra el cuaderno de nuevo y mire antes de repetir el paso.</translation>
        </message>
        <message>
            <source>tube %1, %2</source>
            <translation>tubo %1, %2</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>la tanda</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>en la mesa</translation>
        </message>
        <message>
            <source>audit entry %1</source>
            <translation>entrada de auditoría %1</translation>
        </message>
        <message>
            <source>is missing, but what it covers is there</source>
            <translation>falta, pero lo que cubre está ahí</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>falta</translation>
        </message>
        <message>
            <source>does not continue the entry before it</source>
            <translation>no continúa la entrada anterior</translation>
        </message>
        <message>
            <source>is not as it was written</source>
            <translation>no es como se escribió</translation>
        </message>
        <message>
            <source>covers a record it did not cover when it was written</source>
            <translation>cubre un registro que no cubría cuando se escribió</translation>
        </message>
        <message>
            <source>is gone, but audit entry %1 covers it</source>
            <translation>ha desaparecido, pero la entrada de auditoría %1 lo cubre</translation>
        </message>
        <message>
            <source>is covered by no audit entry</source>
            <translation>no lo cubre ninguna entrada de auditoría</translation>
        </message>
        <message>
            <source>was changed since audit entry %1</source>
            <translation>se ha cambiado desde la entrada de auditoría %1</translation>
        </message>
        <message>
            <source>the audit trail</source>
            <translation>el registro de auditoría</translation>
        </message>
        <message>
            <source>The newest %1 backups are kept, and the last of each of the latest %2 days and %3 months that have one, and of every year.</source>
            <translation>Se conservan las %1 copias de seguridad más recientes, y la última de cada uno de los %2 días y los %3 meses más recientes que tengan una, y de cada año.</translation>
        </message>
        <message>
            <source>No backup was made in %1; the notebook itself is whole and nothing of it is lost: see that the folder is there, may be written to and has room.</source>
            <translation>No se ha hecho ninguna copia de seguridad en %1; el propio cuaderno está íntegro y no se ha perdido nada de él: compruebe que la carpeta exista, se pueda escribir en ella y tenga espacio.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; nothing was made from it.</source>
            <translation>El archivo %1 no es un cuaderno de Plateau; no se ha hecho nada con él.</translation>
        </message>
        <message>
            <source>The backup %1 was written by a newer Plateau; nothing was made from it: use the newer program.</source>
            <translation>La copia de seguridad %1 la escribió un Plateau más nuevo; no se ha hecho nada con ella: use el programa más nuevo.</translation>
        </message>
        <message>
            <source>The folder could not be made.</source>
            <translation>No se pudo crear la carpeta.</translation>
        </message>
        <message>
            <source>Run %1 has no revision %2: choose one of 1 to %3.</source>
            <translation>La tanda %1 no tiene ninguna edición %2: elija una de 1 a %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: there is no run %1.</source>
            <translation>No se ha guardado nada: no hay ninguna tanda %1.</translation>
        </message>
        <message>
            <source>%1, %2 %3: %4</source>
            <translation>%1, %2 %3: %4</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: %1</source>
            <translation>Los ajustes del gráfico no se han guardado: %1</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: there is no run %1.</source>
            <translation>Los ajustes del gráfico no se han guardado: no hay ninguna tanda %1.</translation>
        </message>
        <message>
            <source>The value was not left out, since that needs a reason: say why.</source>
            <translation>El valor no se ha excluido, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is left out already.</source>
            <translation>No se ha guardado nada: el valor de la tanda %1 ya está excluido.</translation>
        </message>
        <message>
            <source>The value was not taken back, since that needs a reason: say why.</source>
            <translation>El valor no se ha readmitido, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is not left out.</source>
            <translation>No se ha guardado nada: el valor de la tanda %1 no está excluido.</translation>
        </message>
        <message>
            <source>The settings of a chart in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Los ajustes de un gráfico del cuaderno están dañados; vuelva a la última copia de seguridad o guárdelos de nuevo.</translation>
        </message>
        <message>
            <source>the file</source>
            <translation>el archivo</translation>
        </message>
        <message>
            <source>names a row of %1 that is not there</source>
            <translation>nombra una fila de %1 que no está</translation>
        </message>
        <message>
            <source>is missing from the schema</source>
            <translation>falta en el esquema</translation>
        </message>
        <message>
            <source>is not as this program makes it</source>
            <translation>no es como este programa lo crea</translation>
        </message>
        <message>
            <source>does not belong in a notebook</source>
            <translation>no debe estar en un cuaderno</translation>
        </message>
        <message>
            <source>the schema</source>
            <translation>el esquema</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 did not come out whole and was taken away again; see that the disk is sound and has room.</source>
            <translation>La copia del cuaderno %1 no salió íntegra y se ha eliminado; compruebe que el disco esté en buen estado y tenga espacio.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing was made from it: choose another backup.</source>
            <translation>El cuaderno %1 está dañado (%2: %3); no se ha hecho nada con él: elija otra copia de seguridad.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened in the way that keeps its records safe; nothing was stored: see that the program's SQLite is the one it was built with.</source>
            <translation>El cuaderno %1 no se pudo abrir del modo que protege sus registros; no se ha guardado nada: compruebe que el SQLite del programa sea aquel con el que se compiló.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>La tanda %1 no se ha decidido: aquí decide un revisor o un jefe, y %2 es analista.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: nobody reviews their own run here, and %2 worked on it; ask somebody else.</source>
            <translation>La tanda %1 no se ha decidido: aquí nadie revisa su propia tanda, y %2 trabajó en ella; pídaselo a otra persona.</translation>
        </message>
        <message>
            <source>The run was not rejected, since that needs a reason: say why.</source>
            <translation>La tanda no se ha rechazado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The run was not accepted: not everything in it passed, so accepting it needs a reason.</source>
            <translation>La tanda no se ha aceptado: no se ha superado todo en ella, así que aceptarla necesita un motivo.</translation>
        </message>
        <message>
            <source>The run was not accepted: its reason is blank; leave it out or say why.</source>
            <translation>La tanda no se ha aceptado: su motivo está en blanco; omítalo o indique por qué.</translation>
        </message>
        <message>
            <source>The run was not reopened, since that needs a reason: say why.</source>
            <translation>La tanda no se ha reabierto, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>Run %1 is on the bench already; nothing was stored.</source>
            <translation>La tanda %1 ya está en la mesa; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Run %1 was not reopened: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>La tanda %1 no se ha reabierto: aquí decide un revisor o un jefe, y %2 es analista.</translation>
        </message>
        <message>
            <source>Run %1 is accepted and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>La tanda %1 está aceptada y no admite cambios; no se ha guardado nada: reábrala primero con un motivo.</translation>
        </message>
        <message>
            <source>Run %1 is rejected and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>La tanda %1 está rechazada y no admite cambios; no se ha guardado nada: reábrala primero con un motivo.</translation>
        </message>
        <message>
            <source>There is no room left for the notebook %1; nothing of this step was stored: make room on the disk and do it again.</source>
            <translation>No queda espacio para el cuaderno %1; no se ha guardado nada de este paso: libere espacio en el disco y hágalo de nuevo.</translation>
        </message>
        <message>
            <source>The notebook %1 was left in the middle of a step and has to be opened for writing once, so that the half step is taken back.</source>
            <translation>El cuaderno %1 quedó en medio de un paso y hay que abrirlo una vez para escritura, para deshacer el paso a medias.</translation>
        </message>
        <message>
            <source>The notebook %1 may only be read; nothing was stored: allow writing to the file and its folder, or work on a copy.</source>
            <translation>El cuaderno %1 solo se puede leer; no se ha guardado nada: permita escribir en el archivo y su carpeta, o trabaje con una copia.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened; nothing was stored: see that its folder is there and may be written to.</source>
            <translation>El cuaderno %1 no se pudo abrir; no se ha guardado nada: compruebe que su carpeta exista y se pueda escribir en ella.</translation>
        </message>
        <message>
            <source>The computer has no memory left to work on the notebook %1; nothing of this step was stored: close other programs and do it again.</source>
            <translation>Al ordenador no le queda memoria para trabajar con el cuaderno %1; no se ha guardado nada de este paso: cierre otros programas y hágalo de nuevo.</translation>
        </message>
        <message>
            <source>The disk did not take what was written to the notebook %1; nothing of this step was stored: see that the disk is there, sound and not full.</source>
            <translation>El disco no admitió lo que se escribía en el cuaderno %1; no se ha guardado nada de este paso: compruebe que el disco esté ahí, en buen estado y no lleno.</translation>
        </message>
        <message>
            <source>The notebook %1 is in use by another program; nothing was stored: close it there first.</source>
            <translation>El cuaderno %1 lo está usando otro programa; no se ha guardado nada: ciérrelo allí primero.</translation>
        </message>
        <message>
            <source>A rule of the notebook %1 forbids this; nothing was stored.</source>
            <translation>Una regla del cuaderno %1 lo prohíbe; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; it was left as it is.</source>
            <translation>El archivo %1 no es un cuaderno de Plateau; se ha dejado como estaba.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged; nothing was stored: go back to the latest backup and keep this file for a closer look.</source>
            <translation>El cuaderno %1 está dañado; no se ha guardado nada: vuelva a la última copia de seguridad y conserve este archivo para examinarlo.</translation>
        </message>
        <message>
            <source>The item was not stored: %1 %2.</source>
            <translation>El equipo no se ha guardado: %1 %2.</translation>
        </message>
        <message>
            <source>The item was not stored: there is a %1 of the name %2 already; give this one another.</source>
            <translation>El equipo no se ha guardado: ya hay uno de la misma clase (%1) con el nombre %2; dé otro a este.</translation>
        </message>
        <message>
            <source>The notebook holds no item number %1; nothing was stored: choose one from its list of equipment.</source>
            <translation>El cuaderno no contiene ningún equipo número %1; no se ha guardado nada: elija uno de su lista de equipos.</translation>
        </message>
        <message>
            <source>The item stays as it was, since a change needs a reason: say why.</source>
            <translation>El equipo queda como estaba, porque un cambio necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The item %1 reads like this already; nothing was stored.</source>
            <translation>El equipo %1 ya está así; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The item %1 stays a %2; add another one for what is not.</source>
            <translation>El equipo %1 sigue siendo de su clase (%2); añada otro para lo que no lo sea.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 is out of use; take it into use first.</source>
            <translation>La comprobación no se ha guardado: %1 está fuera de uso; póngalo primero en uso.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 %2.</source>
            <translation>La comprobación no se ha guardado: %1 %2.</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1: %2, %3</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>no superada</translation>
        </message>
        <message>
            <source>The check counts as before, since taking it back needs a reason: say why.</source>
            <translation>La comprobación cuenta como antes, porque anularla necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The check %1 was taken back already; nothing was stored.</source>
            <translation>La comprobación %1 ya se había anulado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The notebook holds no check number %1; nothing was stored: choose one from the item's list.</source>
            <translation>El cuaderno no contiene ninguna comprobación número %1; no se ha guardado nada: elija una de la lista del equipo.</translation>
        </message>
        <message>
            <source>The notebook is damaged: its book of equipment does not hold together; go back to the latest backup.</source>
            <translation>El cuaderno está dañado: su libro de equipos no es coherente; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The evaluation of run %1 cannot be read, so nothing was exported; have plateau verify list what is wrong with the notebook.</source>
            <translation>La evaluación de la tanda %1 no se puede leer, así que no se ha exportado nada; haga que plateau verify enumere lo que está mal en el cuaderno.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was exported: see that its folder may be written to and has room.</source>
            <translation>El archivo %1 no se pudo escribir; no se ha exportado nada: compruebe que se pueda escribir en su carpeta y que tenga espacio.</translation>
        </message>
        <message>
            <source>The file %1 of the export cannot be read; nothing was imported: see that the folder is whole.</source>
            <translation>El archivo %1 de la exportación no se puede leer; no se ha importado nada: compruebe que la carpeta esté íntegra.</translation>
        </message>
        <message>
            <source>There is something in %1 already and it was left as it is; nothing was exported: choose the name of a new folder.</source>
            <translation>Ya hay algo en %1 y se ha dejado como estaba; no se ha exportado nada: elija el nombre de una carpeta nueva.</translation>
        </message>
        <message>
            <source>The folder %1 cannot be made, since the one it is to be in is not there; nothing was exported: make that one or choose another.</source>
            <translation>La carpeta %1 no se puede crear, porque aquella en la que debe estar no existe; no se ha exportado nada: créela o elija otra.</translation>
        </message>
        <message>
            <source>The folder %1 could not be made.</source>
            <translation>La carpeta %1 no se pudo crear.</translation>
        </message>
        <message>
            <source>Nothing was exported to %1; the notebook itself is whole and nothing of it is lost: see that the folder may be written to and has room.</source>
            <translation>No se ha exportado nada a %1; el propio cuaderno está íntegro y no se ha perdido nada de él: compruebe que se pueda escribir en la carpeta y que tenga espacio.</translation>
        </message>
        <message>
            <source>The file %1 is not the manifest of an export of a notebook; nothing was imported: choose the folder that the export made.</source>
            <translation>El archivo %1 no es el manifiesto de una exportación de un cuaderno; no se ha importado nada: elija la carpeta que creó la exportación.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>El archivo %1 no se pudo escribir; no se ha guardado nada: compruebe que su carpeta exista, se pueda escribir en ella y tenga espacio.</translation>
        </message>
        <message>
            <source>The file %1 could not be made; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>El archivo %1 no se pudo crear; no se ha guardado nada: compruebe que su carpeta exista, se pueda escribir en ella y tenga espacio.</translation>
        </message>
        <message>
            <source>There is a file %1 already and it was left as it is: choose another name.</source>
            <translation>Ya hay un archivo %1 y se ha dejado como estaba: elija otro nombre.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be made, since its folder is not there: make the folder or choose another.</source>
            <translation>El cuaderno %1 no se puede crear, porque su carpeta no existe: cree la carpeta o elija otra.</translation>
        </message>
        <message>
            <source>The file %1 is left over from another notebook of that name; move it away or choose another name.</source>
            <translation>El archivo %1 quedó de otro cuaderno con ese nombre; quítelo de ahí o elija otro nombre.</translation>
        </message>
        <message>
            <source>The file %1 is not as the export wrote it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>El archivo %1 no es como lo escribió la exportación; no se ha importado nada: tome la exportación de donde se conservó sin cambios.</translation>
        </message>
        <message>
            <source>There is no export of a notebook in %1; nothing was imported: choose the folder that the export made.</source>
            <translation>No hay ninguna exportación de un cuaderno en %1; no se ha importado nada: elija la carpeta que creó la exportación.</translation>
        </message>
        <message>
            <source>The export %1 is from a newer Plateau (its schema is number %2, this program knows up to %3); nothing was imported: use the newer program.</source>
            <translation>La exportación %1 es de un Plateau más nuevo (su esquema es el número %2, este programa conoce hasta %3); no se ha importado nada: use el programa más nuevo.</translation>
        </message>
        <message>
            <source>the head of its audit trail differs</source>
            <translation>su último hash de auditoría es otro</translation>
        </message>
        <message>
            <source>The export %1 does not give a sound notebook (%2); nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>La exportación %1 no da un cuaderno íntegro (%2); no se ha importado nada: tome la exportación de donde se conservó sin cambios.</translation>
        </message>
        <message>
            <source>The file %1 is not a table as an export writes it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>El archivo %1 no es una tabla como la escribe una exportación; no se ha importado nada: tome la exportación de donde se conservó sin cambios.</translation>
        </message>
        <message>
            <source>Run %1 was changed from outside the program (%2 %3); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>La tanda %1 se cambió desde fuera del programa (%2 %3); no se ha guardado nada: haga verificar el cuaderno y vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lote %2</translation>
        </message>
        <message>
            <source>the reagent</source>
            <translation>el reactivo</translation>
        </message>
        <message>
            <source>the lot</source>
            <translation>el lote</translation>
        </message>
        <message>
            <source>The lot was not stored: %1.</source>
            <translation>El lote no se ha guardado: %1.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its use-by date is not a real date.</source>
            <translation>El lote %1 no se ha guardado: su fecha de caducidad no es un día que exista.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: once opened it keeps for 1 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>El lote %1 no se ha guardado: una vez abierto se conserva de 1 a %2 días, no %3; omítalo si nadie lo dice.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a volume is more than 0 and at most %2 mL, not %3.</source>
            <translation>No se ha guardado nada del lote %1: un volumen es mayor que 0 y como máximo %2 mL, no %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 has %2 mL left, less than the %3 mL taken; correct what is left first, if that is wrong.</source>
            <translation>No se ha guardado nada: al lote %1 le quedan %2 mL, menos que los %3 mL tomados; corrija primero lo que queda, si eso está mal.</translation>
        </message>
        <message>
            <source>The lot keeps its label, since another needs a reason: say why.</source>
            <translation>El lote conserva su etiqueta, porque otra necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The lot %1 has this label already; nothing was stored.</source>
            <translation>El lote %1 ya tiene esta etiqueta; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The lot %1 was opened on %2 already; nothing was stored.</source>
            <translation>El lote %1 ya se abrió el %2; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The lot %1 is not noted as opened: the day must be a real date that is not in the future.</source>
            <translation>El lote %1 no se ha anotado como abierto: el día no debe ser futuro ni inexistente.</translation>
        </message>
        <message>
            <source>Nothing was stored: the note is blank; leave it out or say what for.</source>
            <translation>No se ha guardado nada: la nota está en blanco; omítala o indique para qué.</translation>
        </message>
        <message>
            <source>Nothing was discarded, since that needs a reason: say why.</source>
            <translation>No se ha desechado nada, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The lot was not corrected, since that needs a reason: say why.</source>
            <translation>El lote no se ha corregido, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The lot %1 was not corrected: what is found in it must lie between 0 and %2 mL, not %3.</source>
            <translation>El lote %1 no se ha corregido: lo que se halle en él debe estar entre 0 y %2 mL, no %3.</translation>
        </message>
        <message>
            <source>The lot %1 has %2 mL left already; nothing was stored.</source>
            <translation>Al lote %1 ya le quedan %2 mL; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The notebook holds no lot number %1; nothing was stored: choose one from its list of lots.</source>
            <translation>El cuaderno no contiene ningún lote número %1; no se ha guardado nada: elija uno de su lista de lotes.</translation>
        </message>
        <message>
            <source>version %1, %2</source>
            <translation>versión %1, %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 methods with the id %2 are in use: %3. Put the whole method here in place of its id, or retire all but one of them</source>
            <translation>%1 métodos con el id %2 están en uso: %3. Ponga aquí el método entero en lugar de su id o dé de baja todos menos uno</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>there is no method %1, neither shipped nor in the notebook; correct the id, put the whole method here in place of it, or import the method first</source>
            <translation>no hay ningún método %1, ni suministrado ni en el cuaderno; corrija el id, ponga aquí el método entero en su lugar o importe primero el método</translation>
        </message>
        <message>
            <source>the method %1 is not in use; put the whole method here in place of its id, or bring the method into use again</source>
            <translation>el método %1 no está en uso; ponga aquí el método entero en lugar de su id o vuelva a poner el método en uso</translation>
        </message>
        <message>
            <source>shipped with the program</source>
            <translation>suministrado con el programa</translation>
        </message>
        <message>
            <source>saved by %1 on %2</source>
            <translation>guardado por %1 el %2</translation>
        </message>
        <message>
            <source>imported from %1 on %2</source>
            <translation>importado de %1 el %2</translation>
        </message>
        <message>
            <source>from its runs</source>
            <translation>de sus tandas</translation>
        </message>
        <message>
            <source>shipped with an earlier program</source>
            <translation>suministrado con un programa anterior</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>versión %1</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already and is retired; reinstate it to use it.</source>
            <translation>No se ha guardado nada: %1, ya tiene este contenido y está de baja; reactívelo para usarlo.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already; a newer version is used for new runs.</source>
            <translation>No se ha guardado nada: %1, ya tiene este contenido; para las tandas nuevas se usa una versión más reciente.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already.</source>
            <translation>No se ha guardado nada: %1, ya tiene este contenido.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from the one of that id and version that is %2: they differ in %3.</source>
            <translation>%1, está guardado y se mantiene separado del que tiene ese id y esa versión y está %2: difieren en %3.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from %2 others of that id and version: from the one that is %3 it differs in %4.</source>
            <translation>%1, está guardado y se mantiene separado de otros %2 con ese id y esa versión: del que está %3 difiere en %4.</translation>
        </message>
        <message>
            <source>%1, is stored.</source>
            <translation>%1, está guardado.</translation>
        </message>
        <message>
            <source>%1, is stored; a newer version is used for new runs.</source>
            <translation>%1, está guardado; para las tandas nuevas se usa una versión más reciente.</translation>
        </message>
        <message>
            <source>%1 has no version left to give; nothing was stored: give the method another id.</source>
            <translation>A %1 no le queda ninguna versión que dar; no se ha guardado nada: dé otro id al método.</translation>
        </message>
        <message>
            <source>%1, is saved.</source>
            <translation>%1, está guardado.</translation>
        </message>
        <message>
            <source>%1, is retired already; nothing was stored.</source>
            <translation>%1, ya está de baja; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>%1, is not retired; nothing was stored.</source>
            <translation>%1, no está de baja; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The method in row %1 of the notebook is damaged, so its runs cannot be worked out; go back to the latest backup.</source>
            <translation>El método de la fila %1 del cuaderno está dañado, así que sus tandas no se pueden calcular; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>It would not have been sound afterwards.</source>
            <translation>Después no habría estado íntegro.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be brought to schema %2 (%3) and is as it was before that step; see that the disk has room, and keep the copy made before.</source>
            <translation>El cuaderno %1 no se pudo llevar al esquema %2 (%3) y está como estaba antes de ese paso; compruebe que el disco tenga espacio y conserve la copia hecha antes.</translation>
        </message>
        <message>
            <source>Nothing was stored: a time in it is not one that exists (in the hour the clocks go forward, say); give a time with its offset from UTC.</source>
            <translation>No se ha guardado nada: contiene una hora que no existe (en la hora en que se adelantan los relojes, por ejemplo); dé una hora con su desfase respecto a UTC.</translation>
        </message>
        <message>
            <source>The correction was not stored, since it needs a reason: say why the reading is replaced.</source>
            <translation>La corrección no se ha guardado, porque necesita un motivo: indique por qué se sustituye la lectura.</translation>
        </message>
        <message>
            <source>The method was not stored: %1: %2.</source>
            <translation>El método no se ha guardado: %1: %2.</translation>
        </message>
        <message>
            <source>The run was not stored: %1: %2.</source>
            <translation>La tanda no se ha guardado: %1: %2.</translation>
        </message>
        <message>
            <source>The plan was not stored: %1: %2.</source>
            <translation>El plan no se ha guardado: %1: %2.</translation>
        </message>
        <message>
            <source>Nothing was stored: a clock that was set by 0 s was not set.</source>
            <translation>No se ha guardado nada: un reloj ajustado en 0 s no se ha ajustado.</translation>
        </message>
        <message>
            <source>The limits were not stored: %1: %2.</source>
            <translation>Los límites no se han guardado: %1: %2.</translation>
        </message>
        <message>
            <source>The limits were not stored, since that needs a reason: say why.</source>
            <translation>Los límites no se han guardado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The laboratory's settings were not stored: %1: %2.</source>
            <translation>Los ajustes del laboratorio no se han guardado: %1: %2.</translation>
        </message>
        <message>
            <source>The method was not stored: its note is blank; leave it out or say what changed.</source>
            <translation>El método no se ha guardado: su nota está en blanco; omítala o indique qué cambió.</translation>
        </message>
        <message>
            <source>The method was not retired: %1: %2.</source>
            <translation>El método no se ha dado de baja: %1: %2.</translation>
        </message>
        <message>
            <source>The method was not retired, since that needs a reason: say why.</source>
            <translation>El método no se ha dado de baja, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The method was not reinstated, since that needs a reason: say why.</source>
            <translation>El método no se ha reactivado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>There is no notebook %1; see that the name is right.</source>
            <translation>No hay ningún cuaderno %1; compruebe que el nombre sea correcto.</translation>
        </message>
        <message>
            <source>%1 is not a file, so it cannot be a notebook.</source>
            <translation>%1 no es un archivo, así que no puede ser un cuaderno.</translation>
        </message>
        <message>
            <source>The notebook %1 was written by a newer Plateau (its schema is number %2, this program knows up to %3); it was left as it is: open it with the newer program.</source>
            <translation>El cuaderno %1 lo escribió un Plateau más nuevo (su esquema es el número %2, este programa conoce hasta %3); se ha dejado como estaba: ábralo con el programa más nuevo.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged: it states no schema; go back to the latest backup.</source>
            <translation>El cuaderno %1 está dañado: no indica ningún esquema; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing is written to it: go back to the latest backup, and have plateau verify list all that is wrong with this file.</source>
            <translation>El cuaderno %1 está dañado (%2: %3); no se escribe nada en él: vuelva a la última copia de seguridad y haga que plateau verify enumere todo lo que está mal en este archivo.</translation>
        </message>
        <message>
            <source>The notebook %1 is of an older schema: open it in the window once, which brings it up to date after making a copy.</source>
            <translation>El cuaderno %1 es de un esquema anterior: ábralo una vez en la ventana, que lo pone al día después de hacer una copia.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be made; nothing was stored: see that the disk is sound and has room.</source>
            <translation>El cuaderno %1 no se pudo crear; no se ha guardado nada: compruebe que el disco esté en buen estado y tenga espacio.</translation>
        </message>
        <message>
            <source>The notebook %1 is open for reading only; nothing was stored.</source>
            <translation>El cuaderno %1 está abierto solo para lectura; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Passphrases cannot be used, since the library for them does not start; nothing was stored: reinstall libsodium.</source>
            <translation>No se pueden usar frases de contraseña, porque su biblioteca no arranca; no se ha guardado nada: instale libsodium de nuevo.</translation>
        </message>
        <message>
            <source>The passphrase was not stored, since there is not enough memory: close other programs and try again.</source>
            <translation>La frase de contraseña no se ha guardado, porque no hay bastante memoria: cierre otros programas e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the passphrase cannot be used: %1.</source>
            <translation>No se ha guardado nada, porque la frase de contraseña no se puede usar: %1.</translation>
        </message>
        <message>
            <source>Nothing was stored, since somebody has or had the name %1: give this person another one, with a second given name, say.</source>
            <translation>No se ha guardado nada, porque alguien tiene o tuvo el nombre %1: dé otro a esta persona, con un segundo nombre de pila, por ejemplo.</translation>
        </message>
        <message>
            <source>The list of people was changed from outside the program (%1); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>La lista de personas se cambió desde fuera del programa (%1); no se ha guardado nada: haga verificar el cuaderno y vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>it is blank; several words that only you would put together make a good one</source>
            <translation>está en blanco; varias palabras que solo usted juntaría dan una buena frase</translation>
        </message>
        <message>
            <source>it has %1 characters; at least %2 are needed, such as several words make</source>
            <translation>tiene %1 caracteres; hacen falta al menos %2, como los que dan varias palabras</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>tiene %1 caracteres; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>People are set up already; nothing was stored: a head adds further ones.</source>
            <translation>Ya hay personas dadas de alta; no se ha guardado nada: un jefe añade otras.</translation>
        </message>
        <message>
            <source>%1 has this name and this role already; nothing was stored.</source>
            <translation>%1 ya tiene este nombre y esta función; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>%1 stays head, since there is no other one; nothing was stored: make somebody else a head first.</source>
            <translation>%1 sigue siendo jefe, porque no hay otro; no se ha guardado nada: nombre primero jefe a otra persona.</translation>
        </message>
        <message>
            <source>The passphrase was not changed: only its owner or a head may, and %1 is neither.</source>
            <translation>La frase de contraseña no se ha cambiado: solo puede hacerlo su titular o un jefe, y %1 no es ni lo uno ni lo otro.</translation>
        </message>
        <message>
            <source>The person was not retired, since that needs a reason: say why.</source>
            <translation>La persona no se ha dado de baja, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>%1 is retired already; nothing was stored.</source>
            <translation>%1 ya está de baja; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>%1 was not retired, since there is no other head; nothing was stored: make somebody else a head first.</source>
            <translation>%1 no se ha dado de baja, porque no hay otro jefe; no se ha guardado nada: nombre primero jefe a otra persona.</translation>
        </message>
        <message>
            <source>The person was not reinstated, since that needs a reason: say why.</source>
            <translation>La persona no se ha reactivado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>%1 is not retired; nothing was stored.</source>
            <translation>%1 no está de baja; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>%1 is retired and signs nothing; nothing was stored: choose another person, or have a head reinstate them.</source>
            <translation>%1 está de baja y no firma nada; no se ha guardado nada: elija otra persona o pida a un jefe que la reactive.</translation>
        </message>
        <message>
            <source>Nothing was stored, since it needs the passphrase of %1: type it.</source>
            <translation>No se ha guardado nada, porque hace falta la frase de contraseña de %1: escríbala.</translation>
        </message>
        <message>
            <source>This is not the passphrase of %1; nothing was stored except the attempt: type it again.</source>
            <translation>Esta no es la frase de contraseña de %1; no se ha guardado nada salvo el intento: escríbala de nuevo.</translation>
        </message>
        <message>
            <source>The passphrase was not tried, since the last %1 were wrong: wait %2 s, then type it again, or ask a head for another one.</source>
            <translation>La frase de contraseña no se ha probado, porque las últimas %1 eran erróneas: espere %2 s y escríbala de nuevo, o pida otra a un jefe.</translation>
        </message>
        <message>
            <source>Nothing was stored: only a head keeps the list of people, and %1 is not one.</source>
            <translation>No se ha guardado nada: solo un jefe lleva la lista de personas, y %1 no lo es.</translation>
        </message>
        <message>
            <source>The notebook holds no person number %1; nothing was stored: choose one from its list.</source>
            <translation>El cuaderno no contiene ninguna persona número %1; no se ha guardado nada: elija una de su lista.</translation>
        </message>
        <message>
            <source>%1: tubes %2</source>
            <translation>%1: tubos %2</translation>
        </message>
        <message>
            <source>%1 of tube %2 is not ticked; nothing was stored.</source>
            <translation>%1 del tubo %2 no está marcado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Tube %1 gets no %2%3; nothing was stored.</source>
            <translation>El tubo %1 no recibe %2%3; no se ha guardado nada.</translation>
        </message>
        <message>
            <source> for a spike</source>
            <translation> para una fortificación</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the volume that went in must lie between 0 and %2 mL, not %3.</source>
            <translation>El tubo %1 no se ha marcado: el volumen que entró debe estar entre 0 y %2 mL, no %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the pipette %2 cannot be used: %3.</source>
            <translation>El tubo %1 no se ha marcado, porque la pipeta %2 no se puede usar: %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the note cannot be used: %2.</source>
            <translation>El tubo %1 no se ha marcado, porque la nota no se puede usar: %2.</translation>
        </message>
        <message>
            <source>%1 of tube %2 is ticked already; nothing was stored.</source>
            <translation>%1 del tubo %2 ya está marcado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: what it gets there is a sample or a standard, which comes from no lot; leave the lot out.</source>
            <translation>El tubo %1 no se ha marcado: lo que recibe ahí es una muestra o un patrón, que no viene de ningún lote; omita el lote.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the lot %2 is of %3, not of %4; choose a lot of that reagent.</source>
            <translation>El tubo %1 no se ha marcado: el lote %2 es de %3, no de %4; elija un lote de ese reactivo.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: %2.</source>
            <translation>El tubo %1 no se ha marcado: %2.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt already; nothing was stored.</source>
            <translation>El tubo %1 ya está marcado como malogrado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Tube %1 is not marked as spoilt; nothing was stored.</source>
            <translation>El tubo %1 no está marcado como malogrado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>tubo %1</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since that needs a reason: say why.</source>
            <translation>El tubo no se ha marcado como malogrado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since the reason cannot be used: %1.</source>
            <translation>El tubo no se ha marcado como malogrado, porque el motivo no se puede usar: %1.</translation>
        </message>
        <message>
            <source>The tube still counts as spoilt, since taking that back needs a reason: say why.</source>
            <translation>El tubo sigue contando como malogrado, porque anularlo necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The plan was not stored: run %1, which it says to repeat, holds no sample %2; choose the run that does.</source>
            <translation>El plan no se ha guardado: la tanda %1, que según él se repite, no contiene ninguna muestra %2; elija la tanda que la contiene.</translation>
        </message>
        <message>
            <source>The reading was not stored: a keyed reading has no line it came in; name another origin or leave the line out.</source>
            <translation>La lectura no se ha guardado: lo que se introduce a mano no tiene línea en la que llegara; indique otro origen u omita la línea.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the name of its source cannot be used: %1.</source>
            <translation>La lectura no se ha guardado, porque el nombre de su fuente no se puede usar: %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in cannot be kept: %1.</source>
            <translation>La lectura no se ha guardado, porque la línea en la que llegó no se puede conservar: %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in has more than %1 characters: shorten it.</source>
            <translation>La lectura no se ha guardado, porque la línea en la que llegó tiene más de %1 caracteres: acórtela.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 to correct; nothing was stored: add it instead.</source>
            <translation>El tubo %1 no tiene ninguna lectura %2 que corregir; no se ha guardado nada: añádala en su lugar.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3 is ticked there already, so what is read now is no longer part of that series.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado: %3 ya está marcado ahí, así que lo que se lee ahora ya no es de esa serie.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when %3 went in, and a series counts its minutes from there.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado como una más: no se sabe cuándo entró %3, y una serie cuenta sus minutos desde ahí.</translation>
        </message>
        <message>
            <source>Reading %1 was not stored as one more: tick %3 of tube %2 first, since a series counts its minutes from there.</source>
            <translation>La lectura %1 no se ha guardado como una más: marque primero %3 del tubo %2, porque una serie cuenta sus minutos desde ahí.</translation>
        </message>
        <message>
            <source>Tube %1 has a reading %2 already; nothing was stored: correct it, with a reason.</source>
            <translation>El tubo %1 ya tiene una lectura %2; no se ha guardado nada: corríjala, con un motivo.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 yet; nothing was stored: add it first.</source>
            <translation>El tubo %1 aún no tiene ninguna lectura %2; no se ha guardado nada: añádala primero.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado: %3.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since it needs a reason: say why.</source>
            <translation>No se ha guardado qué resultado se informa, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since none is named: choose one.</source>
            <translation>No se ha guardado qué resultado se informa, porque no se indica ninguno: elija uno.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored: a reviewer or a head decides here, and %1 is an analyst.</source>
            <translation>No se ha guardado qué resultado se informa: aquí decide un revisor o un jefe, y %1 es analista.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since one of them is only known to be below or above a bound: choose another rule.</source>
            <translation>No hay media de los resultados aceptados, porque de uno de ellos solo se sabe que está por debajo o por encima de una cota: elija otra regla.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since they are not all in one unit: choose another rule.</source>
            <translation>No hay media de los resultados aceptados, porque no están todos en la misma unidad: elija otra regla.</translation>
        </message>
        <message>
            <source>The result that was named, of run %1 at revision %2, is no longer accepted: choose again.</source>
            <translation>El resultado indicado, de la tanda %1 en la edición %2, ya no está aceptado: elija de nuevo.</translation>
        </message>
        <message>
            <source>No result of this sample is accepted yet.</source>
            <translation>Aún no hay ningún resultado aceptado de esta muestra.</translation>
        </message>
        <message>
            <source>The evaluation that run %1 was decided on is damaged: have the notebook verified and go back to the latest backup.</source>
            <translation>La evaluación con la que se decidió la tanda %1 está dañada: haga verificar el cuaderno y vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The notebook holds no run %1: choose one from its list of runs.</source>
            <translation>El cuaderno no contiene ninguna tanda %1: elija una de su lista de tandas.</translation>
        </message>
        <message>
            <source>Run %1 has no tube %2; nothing was stored.</source>
            <translation>La tanda %1 no tiene ningún tubo %2; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 of a rejected run cannot be accepted; accept the run and reject the other samples.</source>
            <translation>La tanda no se ha decidido: la muestra %1 de una tanda rechazada no se puede aceptar; acepte la tanda y rechace las demás muestras.</translation>
        </message>
        <message>
            <source>The run was not decided on, since rejecting the sample %1 needs a reason: say why.</source>
            <translation>La tanda no se ha decidido, porque rechazar la muestra %1 necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The run was not decided on: the reason for the sample %1 is blank; leave it out or say why.</source>
            <translation>La tanda no se ha decidido: el motivo de la muestra %1 está en blanco; omítalo o indique por qué.</translation>
        </message>
        <message>
            <source>The run was not decided on: there is advice on repeating the sample %1, but it is not to be repeated; leave the advice out.</source>
            <translation>La tanda no se ha decidido: se aconseja cómo repetir la muestra %1, pero no se va a repetir; omita el consejo.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 cannot be repeated as advised; give dilution steps from less to more volume, or how much sample to take.</source>
            <translation>La tanda no se ha decidido: la muestra %1 no se puede repetir como se aconseja; indique pasos de dilución de menos a más volumen, o cuánta muestra tomar.</translation>
        </message>
        <message>
            <source>The run was not decided on: it holds no sample %1; remove its decision.</source>
            <translation>La tanda no se ha decidido: no contiene ninguna muestra %1; quite su decisión.</translation>
        </message>
        <message>
            <source>The run was not decided on: there are two decisions on the sample %1; remove one.</source>
            <translation>La tanda no se ha decidido: la muestra %1 está decidida dos veces; quite una.</translation>
        </message>
        <message>
            <source>the search</source>
            <translation>la búsqueda</translation>
        </message>
        <message>
            <source>The sample %1 was not stored: %2: %3.</source>
            <translation>La muestra %1 no se ha guardado: %2: %3.</translation>
        </message>
        <message>
            <source>The sample %1 was withdrawn; nothing was stored: register it again.</source>
            <translation>La muestra %1 se retiró; no se ha guardado nada: regístrela de nuevo.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no sample is named: name at least one.</source>
            <translation>No se ha guardado nada, porque no se indica ninguna muestra: indique al menos una.</translation>
        </message>
        <message>
            <source>The sample %1 keeps its id, since a run holds it by that; nothing was stored.</source>
            <translation>La muestra %1 conserva su id, porque una tanda la contiene con él; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The sample was not withdrawn, since that needs a reason: say why.</source>
            <translation>La muestra no se ha retirado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The repeat still waits, since doing without it needs a reason: say why.</source>
            <translation>La repetición sigue en espera, porque prescindir de ella necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>Run %1 has no repeat of the sample %2 waiting; nothing was stored.</source>
            <translation>La tanda %1 no tiene en espera ninguna repetición de la muestra %2; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The limits in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Los límites del cuaderno están dañados; vuelva a la última copia de seguridad o guárdelos de nuevo.</translation>
        </message>
        <message>
            <source>The substance was not stored: %1 %2.</source>
            <translation>La sustancia no se ha guardado: %1 %2.</translation>
        </message>
        <message>
            <source>The notebook holds no substance number %1; nothing was stored: choose one from its list.</source>
            <translation>El cuaderno no contiene ninguna sustancia número %1; no se ha guardado nada: elija una de su lista.</translation>
        </message>
        <message>
            <source>The notebook holds no preparation number %1; nothing was stored: choose one from its list of standards.</source>
            <translation>El cuaderno no contiene ninguna preparación número %1; no se ha guardado nada: elija una de su lista de patrones.</translation>
        </message>
        <message>
            <source>The substance stays as it was, since a change needs a reason: say why.</source>
            <translation>La sustancia queda como estaba, porque un cambio necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The substance %1 reads like this already; nothing was stored.</source>
            <translation>La sustancia %1 ya está así; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The standard was not stored: %1 %2.</source>
            <translation>El patrón no se ha guardado: %1 %2.</translation>
        </message>
        <message>
            <source>The standard was not stored: the name %1 is taken by one made on %2; give this one another, since runs tell them apart by it.</source>
            <translation>El patrón no se ha guardado: el nombre %1 ya lo tiene uno preparado el %2; dé otro a este, porque las tandas los distinguen por él.</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>The standard was not discarded, since that needs a reason: say why.</source>
            <translation>El patrón no se ha desechado, porque eso necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>The standard %1 was discarded already; nothing was stored.</source>
            <translation>El patrón %1 ya se había desechado; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>The notebook is damaged: a standard was made of a substance it does not hold; go back to the latest backup.</source>
            <translation>El cuaderno está dañado: un patrón se preparó de una sustancia que no contiene; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>Nothing was stored: one of the numbers is not finite; give a number.</source>
            <translation>No se ha guardado nada: uno de los números no es finito; indique un número.</translation>
        </message>
        <message>
            <source>A text holds the character U+%1, which cannot be kept; nothing was stored: type the text again without it.</source>
            <translation>Un texto contiene el carácter U+%1, que no se puede conservar; no se ha guardado nada: escriba el texto de nuevo sin él.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no person is named: say who does this.</source>
            <translation>No se ha guardado nada, porque no se indica ninguna persona: indique quién hace esto.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the name %1 cannot be used: %2.</source>
            <translation>No se ha guardado nada, porque el nombre %1 no se puede usar: %2.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the reason cannot be used: %1.</source>
            <translation>No se ha guardado nada, porque el motivo no se puede usar: %1.</translation>
        </message>
        <message>
            <source>decision %1 on run %2</source>
            <translation>decisión %1 sobre la tanda %2</translation>
        </message>
        <message>
            <source>run %1</source>
            <translation>tanda %1</translation>
        </message>
        <message>
            <source>what was reviewed is not what is stored now</source>
            <translation>lo que se revisó no es lo que está guardado ahora</translation>
        </message>
        <message>
            <source>evaluated again, it gives another result: %1 was %2, is %3</source>
            <translation>evaluada de nuevo, da otro resultado: %1 era %2, es %3</translation>
        </message>
        <message>
            <source>the document</source>
            <translation>el documento</translation>
        </message>
        <message>
            <source>evaluated again, it gives another answer to whether it is acceptable</source>
            <translation>evaluada de nuevo, da otra respuesta a si es aceptable</translation>
        </message>
        <message>
            <source> (decided with version %1, verified with %2)</source>
            <translation> (decidida con la versión %1, verificada con %2)</translation>
        </message>
        <message>
            <source>the list of runs</source>
            <translation>la lista de tandas</translation>
        </message>
        <message>
            <source>The notebook is damaged: it holds the word "%1" where none of its own words is; go back to the latest backup.</source>
            <translation>El cuaderno está dañado: contiene la palabra «%1» donde no está ninguna de las suyas; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The notebook is damaged: details of a sample are gone; go back to the latest backup.</source>
            <translation>El cuaderno está dañado: se ha perdido lo que se indicó de una muestra; vuelva a la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The laboratory's settings in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Los ajustes del laboratorio en el cuaderno están dañados; vuelva a la última copia de seguridad o guárdelos de nuevo.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when the one before was read, so the two make no series.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado como una más: no se sabe cuándo se tomó la anterior, así que las dos no forman una serie.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: the one before was read before %3 was ticked, so the two make no series.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado como una más: la anterior se tomó antes de marcar %3, así que las dos no forman una serie.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: nothing was added before it, from which the minutes of a series could count.</source>
            <translation>La lectura %1 del tubo %2 no se ha guardado: antes de ella no se añadió nada desde lo que puedan contar los minutos de una serie.</translation>
        </message>
        <message>
            <source>The notebook %1 was removed, moved or replaced while it was open; nothing of this step was stored: put the file back where it was, or close the program and open the notebook where it is now.</source>
            <translation>El cuaderno %1 se quitó, se movió o se sustituyó mientras estaba abierto; no se ha guardado nada de este paso: devuelva el archivo a su lugar, o cierre el programa y abra el cuaderno donde está ahora.</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>on %1</source>
            <translation>el %1</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>en %1</translation>
        </message>
        <message>
            <source>aliquots: %1, of %2 each</source>
            <translation>alícuotas: %1, de %2 cada una</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>de %1</translation>
        </message>
        <message>
            <source>from %1, keeps as stored: %2 days</source>
            <translation>de %1, así guardado se conserva: %2 días</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was opened on %2, so that this cannot have been on %3.</source>
            <translation>No se ha guardado nada: el lote %1 se abrió el %2, así que esto no pudo ser el %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was dissolved on %2 already; correct what is left, if the volume is wrong.</source>
            <translation>No se ha guardado nada: el lote %1 ya se disolvió el %2; corrija lo que queda si el volumen está mal.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not in the book as dry; receive it as dry to note how it is dissolved.</source>
            <translation>No se ha guardado nada: el lote %1 no consta como seco; recíbalo como seco para anotar cómo se disuelve.</translation>
        </message>
        <message>
            <source>%1, aliquot %2</source>
            <translation>%1, alícuota %2</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is divided into 1 to %2 aliquots, not %3.</source>
            <translation>No se ha guardado nada: el lote %1 se divide en 1 a %2 alícuotas, no en %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: say in what the lot %1 is dissolved.</source>
            <translation>No se ha guardado nada: indique en qué se disuelve el lote %1.</translation>
        </message>
        <message>
            <source>as it was dissolved</source>
            <translation>tal como se disolvió</translation>
        </message>
        <message>
            <source>Nothing was stored: %1 is an aliquot itself and is not divided further.</source>
            <translation>No se ha guardado nada: %1 ya es una alícuota y no se divide más.</translation>
        </message>
        <message>
            <source>%1: %2 aliquots</source>
            <translation>%1: %2 alícuotas</translation>
        </message>
        <message>
            <source>The lot %1 is there already (%2); nothing was stored.</source>
            <translation>El lote %1 ya está ahí (%2); no se ha guardado nada.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the note is blank: say what is to be kept.</source>
            <translation>No se ha guardado nada, porque la nota está en blanco: indique qué debe conservarse.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: it keeps for 0 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>No se ha guardado nada del lote %1: se conserva de 0 a %2 días, no %3; omítalo si nadie lo dice.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the day must be a real date that is not in the future.</source>
            <translation>No se ha guardado nada del lote %1: el día no debe ser futuro ni inexistente.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is dry; note first in how much it was dissolved.</source>
            <translation>No se ha guardado nada: el lote %1 está seco; anote primero en cuánto se disolvió.</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>el lugar</translation>
        </message>
        <message>
            <source>Nothing was stored: %1.</source>
            <translation>No se ha guardado nada: %1.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a place has %2 to %3 °C, not %4.</source>
            <translation>No se ha guardado nada del lote %1: un lugar tiene de %2 a %3 °C, no %4.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the place cannot be at least %2 and at most %3 °C; give the lower one first.</source>
            <translation>No se ha guardado nada del lote %1: el lugar no puede tener al menos %2 y como máximo %3 °C; indique primero la más baja.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its mass is more than 0 and at most %2 mg, not %3; leave it out where the label says none.</source>
            <translation>El lote %1 no se ha guardado: su masa es mayor que 0 y como máximo %2 mg, no %3; omítala si la etiqueta no la dice.</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 is damaged (%2: %3), so the notebook itself may be as well; the copy was taken away: have plateau verify list all that is wrong, and keep the backups there are.</source>
            <translation>La copia del cuaderno %1 está dañada (%2: %3), así que quizá también lo esté el propio cuaderno; la copia se ha eliminado: haga que plateau verify enumere todo lo que está mal y conserve las copias de seguridad que haya.</translation>
        </message>
        <message>
            <source>its outcome cannot be worked out again from its numbers</source>
            <translation>su resultado no se puede volver a calcular a partir de sus números</translation>
        </message>
        <message>
            <source>it is stored as failed; worked out again from its numbers it is passed</source>
            <translation>está guardada como no superada; calculada de nuevo a partir de sus números está superada</translation>
        </message>
        <message>
            <source>it is stored as passed; worked out again from its numbers it is failed: %1</source>
            <translation>está guardada como superada; calculada de nuevo a partir de sus números no está superada: %1</translation>
        </message>
        <message>
            <source>%1 (stored with version %2, verified with %3)</source>
            <translation>%1 (guardado con la versión %2, verificado con %3)</translation>
        </message>
        <message>
            <source>the book of equipment</source>
            <translation>el libro de equipos</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>valor excluido de los gráficos de control</translation>
        </message>
        <message>
            <source>settings of a control chart</source>
            <translation>ajustes de un gráfico de control</translation>
        </message>
        <message>
            <source>clock that was set</source>
            <translation>reloj que se ajustó</translation>
        </message>
        <message>
            <source>decision</source>
            <translation>decisión</translation>
        </message>
        <message>
            <source>settings and limits of a decision</source>
            <translation>ajustes y límites de una decisión</translation>
        </message>
        <message>
            <source>other run that a decision rests on</source>
            <translation>otra tanda en que se apoya una decisión</translation>
        </message>
        <message>
            <source>decision of a sample</source>
            <translation>decisión sobre una muestra</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>firma</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>paso de dilución</translation>
        </message>
        <message>
            <source>uncertainty of a dilution step</source>
            <translation>incertidumbre de un paso de dilución</translation>
        </message>
        <message>
            <source>check of equipment</source>
            <translation>comprobación de un equipo</translation>
        </message>
        <message>
            <source>condition of a check</source>
            <translation>condición de una comprobación</translation>
        </message>
        <message>
            <source>what is checked, and how often</source>
            <translation>qué se comprueba y cada cuánto</translation>
        </message>
        <message>
            <source>number of values of a check</source>
            <translation>número de valores de una comprobación</translation>
        </message>
        <message>
            <source>equipment</source>
            <translation>equipo</translation>
        </message>
        <message>
            <source>value of a check</source>
            <translation>valor de una comprobación</translation>
        </message>
        <message>
            <source>particulars of equipment</source>
            <translation>datos de un equipo</translation>
        </message>
        <message>
            <source>check that was taken back</source>
            <translation>comprobación anulada</translation>
        </message>
        <message>
            <source>settings of the laboratory</source>
            <translation>ajustes del laboratorio</translation>
        </message>
        <message>
            <source>container</source>
            <translation>envase</translation>
        </message>
        <message>
            <source>aliquot</source>
            <translation>alícuota</translation>
        </message>
        <message>
            <source>dissolving of a container</source>
            <translation>disolución de un envase</translation>
        </message>
        <message>
            <source>division into aliquots</source>
            <translation>división en alícuotas</translation>
        </message>
        <message>
            <source>how long a container keeps</source>
            <translation>cuánto se conserva un envase</translation>
        </message>
        <message>
            <source>volume in or out of a container</source>
            <translation>volumen que entra o sale de un envase</translation>
        </message>
        <message>
            <source>note on a container</source>
            <translation>nota sobre un envase</translation>
        </message>
        <message>
            <source>opening of a container</source>
            <translation>apertura de un envase</translation>
        </message>
        <message>
            <source>place of a container</source>
            <translation>lugar de un envase</translation>
        </message>
        <message>
            <source>lot of the run</source>
            <translation>lote de la tanda</translation>
        </message>
        <message>
            <source>label of a container</source>
            <translation>etiqueta de un envase</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>what was done with a method</source>
            <translation>lo que se hizo con un método</translation>
        </message>
        <message>
            <source>person</source>
            <translation>persona</translation>
        </message>
        <message>
            <source>passphrase of a person</source>
            <translation>frase de contraseña de una persona</translation>
        </message>
        <message>
            <source>whether a person signs</source>
            <translation>si una persona firma</translation>
        </message>
        <message>
            <source>name and role of a person</source>
            <translation>nombre y función de una persona</translation>
        </message>
        <message>
            <source>mark at the bench</source>
            <translation>marca en la mesa</translation>
        </message>
        <message>
            <source>plan of the rack</source>
            <translation>plan de la gradilla</translation>
        </message>
        <message>
            <source>owner of an uncertainty</source>
            <translation>responsable de una incertidumbre</translation>
        </message>
        <message>
            <source>planned sample</source>
            <translation>muestra planificada</translation>
        </message>
        <message>
            <source>glassware of a dilution step</source>
            <translation>material de vidrio de un paso de dilución</translation>
        </message>
        <message>
            <source>standard as prepared</source>
            <translation>patrón preparado</translation>
        </message>
        <message>
            <source>standard discarded</source>
            <translation>patrón desechado</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>pesada</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>where a reading came from</source>
            <translation>procedencia de una lectura</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>tanda devuelta a la mesa</translation>
        </message>
        <message>
            <source>repeat that was waived</source>
            <translation>repetición a la que se renunció</translation>
        </message>
        <message>
            <source>result chosen for the report</source>
            <translation>resultado elegido para el informe</translation>
        </message>
        <message>
            <source>run</source>
            <translation>tanda</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>particulars of a sample</source>
            <translation>datos de una muestra</translation>
        </message>
        <message>
            <source>what is expected of a sample</source>
            <translation>lo que se espera de una muestra</translation>
        </message>
        <message>
            <source>repeat in the rack</source>
            <translation>repetición en la gradilla</translation>
        </message>
        <message>
            <source>registered sample</source>
            <translation>muestra registrada</translation>
        </message>
        <message>
            <source>registration of a sample</source>
            <translation>registro de una muestra</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>muestra retirada</translation>
        </message>
        <message>
            <source>limits of products</source>
            <translation>límites de los productos</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>patrón</translation>
        </message>
        <message>
            <source>uncertainty of a standard</source>
            <translation>incertidumbre de un patrón</translation>
        </message>
        <message>
            <source>substance</source>
            <translation>sustancia</translation>
        </message>
        <message>
            <source>particulars of a substance</source>
            <translation>datos de una sustancia</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tubo</translation>
        </message>
        <message>
            <source>time of a tube</source>
            <translation>tiempo de un tubo</translation>
        </message>
        <message>
            <source>uncertainties of the run</source>
            <translation>incertidumbres de la tanda</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbancia</translation>
        </message>
        <message>
            <source>age (h)</source>
            <translation>antigüedad (h)</translation>
        </message>
        <message>
            <source>amount</source>
            <translation>cantidad</translation>
        </message>
        <message>
            <source>certificate</source>
            <translation>certificado</translation>
        </message>
        <message>
            <source>component</source>
            <translation>componente</translation>
        </message>
        <message>
            <source>concentration (g/L)</source>
            <translation>concentración (g/L)</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>keeps dissolved (days)</source>
            <translation>se conserva disuelto (días)</translation>
        </message>
        <message>
            <source>interval (days)</source>
            <translation>intervalo (días)</translation>
        </message>
        <message>
            <source>use-by date</source>
            <translation>caducidad</translation>
        </message>
        <message>
            <source>extract (mL)</source>
            <translation>extracto (mL)</translation>
        </message>
        <message>
            <source>flask (mL)</source>
            <translation>matraz (mL)</translation>
        </message>
        <message>
            <source>form</source>
            <translation>forma</translation>
        </message>
        <message>
            <source>uncertainty of</source>
            <translation>incertidumbre de</translation>
        </message>
        <message>
            <source>start interval (s)</source>
            <translation>intervalo de inicio (s)</translation>
        </message>
        <message>
            <source>keeps (days)</source>
            <translation>se conserva (días)</translation>
        </message>
        <message>
            <source>keeps opened (days)</source>
            <translation>se conserva abierto (días)</translation>
        </message>
        <message>
            <source>kind</source>
            <translation>clase</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lote</translation>
        </message>
        <message>
            <source>made up to (mL)</source>
            <translation>enrasado a (mL)</translation>
        </message>
        <message>
            <source>mass (g)</source>
            <translation>masa (g)</translation>
        </message>
        <message>
            <source>mass (mg)</source>
            <translation>masa (mg)</translation>
        </message>
        <message>
            <source>matrix</source>
            <translation>matriz</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masa molar</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>nominal volume (mL)</source>
            <translation>volumen nominal (mL)</translation>
        </message>
        <message>
            <source>number</source>
            <translation>número</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>quién responde de ello</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>pipeta</translation>
        </message>
        <message>
            <source>place</source>
            <translation>lugar</translation>
        </message>
        <message>
            <source>planned (mL)</source>
            <translation>previsto (mL)</translation>
        </message>
        <message>
            <source>product</source>
            <translation>producto</translation>
        </message>
        <message>
            <source>columns of the rack</source>
            <translation>columnas de la gradilla</translation>
        </message>
        <message>
            <source>rows of the rack</source>
            <translation>filas de la gradilla</translation>
        </message>
        <message>
            <source>reagent</source>
            <translation>reactivo</translation>
        </message>
        <message>
            <source>received from</source>
            <translation>recibido de</translation>
        </message>
        <message>
            <source>role</source>
            <translation>función</translation>
        </message>
        <message>
            <source>sample volume (mL)</source>
            <translation>volumen de muestra (mL)</translation>
        </message>
        <message>
            <source>smallest volume (mL)</source>
            <translation>volumen mínimo (mL)</translation>
        </message>
        <message>
            <source>source</source>
            <translation>fuente</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>taken (mL)</source>
            <translation>tomado (mL)</translation>
        </message>
        <message>
            <source>title</source>
            <translation>título</translation>
        </message>
        <message>
            <source>as typed</source>
            <translation>tal como se tecleó</translation>
        </message>
        <message>
            <source>volume (mL)</source>
            <translation>volumen (mL)</translation>
        </message>
        <message>
            <source>wavelength (nm)</source>
            <translation>longitud de onda (nm)</translation>
        </message>
        <message>
            <source>path length (mm)</source>
            <translation>camino óptico (mm)</translation>
        </message>
        <message>
            <source>Nothing was stored: the sample %1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>No se ha guardado nada: la muestra %1 ya está entre las muestras en espera; cámbiela allí, o dé otro id a esta.</translation>
        </message>
        <message>
            <source>The sample %1 is registered like this already; nothing was stored.</source>
            <translation>La muestra %1 ya está registrada así; no se ha guardado nada.</translation>
        </message>
        <message>
            <source>No sample number %1 waits; nothing was stored: choose one from the list.</source>
            <translation>Ninguna muestra con el número %1 espera; no se ha guardado nada: elija una de la lista.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be reached, since its folder may not be entered; see that you have the right to, or choose another notebook.</source>
            <translation>No se puede acceder al cuaderno %1, porque el acceso a su carpeta está denegado; compruebe sus permisos o elija otro cuaderno.</translation>
        </message>
        <message>
            <source>is not as the records say, so that what waits to be repeated may not be shown</source>
            <translation>no es como dicen los registros, de modo que quizá no se muestre lo que espera ser repetido</translation>
        </message>
        <message>
            <source>rack on the bench when a clock was set</source>
            <translation>gradilla en la mesa cuando se ajustó un reloj</translation>
        </message>
        <message>
            <source>dilution advised for a repeat</source>
            <translation>dilución aconsejada para una repetición</translation>
        </message>
        <message>
            <source>dry substance in a container</source>
            <translation>sustancia seca en un envase</translation>
        </message>
        <message>
            <source>dry substance discarded</source>
            <translation>sustancia seca desechada</translation>
        </message>
        <message>
            <source>tubes added to the rack</source>
            <translation>tubos añadidos a la gradilla</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>frase de contraseña errónea</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 has that value already; nothing was stored: a correction gives another value.</source>
            <translation>La lectura %1 del tubo %2 ya tiene ese valor; no se ha guardado nada: una corrección da otro valor.</translation>
        </message>
        <message>
            <source>What did not pass is decided sample by sample; everything else passed.</source>
            <translation>Lo no superado se decide muestra a muestra; todo lo demás se ha superado.</translation>
        </message>
        <message>
            <source>highest (°C)</source>
            <translation>temperatura más alta (°C)</translation>
        </message>
        <message>
            <source>lowest (°C)</source>
            <translation>temperatura más baja (°C)</translation>
        </message>
        <message>
            <source>a picture</source>
            <translation>una imagen</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>sin abrir</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>abierto el %1</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>lote %1</translation>
        </message>
        <message>
            <source>%1: something was taken from it</source>
            <translation>%1: se tomó algo de él</translation>
        </message>
        <message>
            <source>The opening stays as it was noted, since a correction needs a reason: say why.</source>
            <translation>La apertura queda como se anotó, porque una corrección necesita un motivo: indique por qué.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not noted as opened.</source>
            <translation>No se ha guardado nada: el lote %1 no está anotado como abierto.</translation>
        </message>
        <message>
            <source>Nothing was stored: something was taken from the lot %1 on %2, so that it was open by then; give that day or an earlier one, or take back first what was ticked with it by mistake.</source>
            <translation>No se ha guardado nada: el %2 se tomó algo del lote %1, así que entonces ya estaba abierto; indique ese día o uno anterior, o anule primero lo que se marcó con él por error.</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fija, en la unidad del límite</translation>
        </message>
        <message>
            <source>added</source>
            <translation>añadido</translation>
        </message>
        <message>
            <source>corrected</source>
            <translation>corregido</translation>
        </message>
        <message>
            <source>discarded</source>
            <translation>desechado</translation>
        </message>
        <message>
            <source>done</source>
            <translation>hecho</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty</source>
            <translation>un múltiplo de la incertidumbre expandida</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>de un archivo</translation>
        </message>
        <message>
            <source>imported</source>
            <translation>importado</translation>
        </message>
        <message>
            <source>label threshold</source>
            <translation>umbral de etiquetado</translation>
        </message>
        <message>
            <source>maximum</source>
            <translation>máximo</translation>
        </message>
        <message>
            <source>minimum</source>
            <translation>mínimo</translation>
        </message>
        <message>
            <source>from the network</source>
            <translation>por la red</translation>
        </message>
        <message>
            <source>one-sided 95 %</source>
            <translation>unilateral 95 %</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>pegada</translation>
        </message>
        <message>
            <source>range</source>
            <translation>intervalo</translation>
        </message>
        <message>
            <source>read</source>
            <translation>leído</translation>
        </message>
        <message>
            <source>received</source>
            <translation>recibido</translation>
        </message>
        <message>
            <source>in use again</source>
            <translation>reactivado</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>por repetir</translation>
        </message>
        <message>
            <source>out of use</source>
            <translation>dado de baja</translation>
        </message>
        <message>
            <source>saved</source>
            <translation>guardado</translation>
        </message>
        <message>
            <source>from the serial line</source>
            <translation>por la línea serie</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>malogrado</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>anulado</translation>
        </message>
        <message>
            <source>counts again</source>
            <translation>vuelve a contar</translation>
        </message>
        <message>
            <source>used</source>
            <translation>usado</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>analista</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanco</translation>
        </message>
        <message>
            <source>control</source>
            <translation>control</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>jefe del laboratorio</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>revisor</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanco de muestra</translation>
        </message>
        <message>
            <source>spiked sample</source>
            <translation>muestra fortificada</translation>
        </message>
        <message>
            <source>by the absorptivity</source>
            <translation>por la absortividad</translation>
        </message>
        <message>
            <source>by a line through the standards</source>
            <translation>por una recta por los patrones</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>por el patrón propio de la tanda</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>líquida</translation>
        </message>
        <message>
            <source>solid</source>
            <translation>sólida</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>el último resultado aceptado</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>la media de los resultados aceptados</translation>
        </message>
        <message>
            <source>a result that was named</source>
            <translation>un resultado que se indicó</translation>
        </message>
        <message>
            <source>the moving range</source>
            <translation>el recorrido móvil</translation>
        </message>
        <message>
            <source>the standard deviation</source>
            <translation>la desviación típica</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>calculados</translation>
        </message>
        <message>
            <source>from the printed table</source>
            <translation>de la tabla impresa</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>carbonated</source>
            <translation>carbonatada</translation>
        </message>
        <message>
            <source>clear and colourless</source>
            <translation>transparente e incolora</translation>
        </message>
        <message>
            <source>coloured</source>
            <translation>coloreada</translation>
        </message>
        <message>
            <source>fatty</source>
            <translation>grasa</translation>
        </message>
        <message>
            <source>rich in protein</source>
            <translation>rica en proteína</translation>
        </message>
        <message>
            <source>turbid</source>
            <translation>turbia</translation>
        </message>
        <message>
            <source>pipette %1</source>
            <translation>pipeta %1</translation>
        </message>
        <message>
            <source>flask %1</source>
            <translation>matraz %1</translation>
        </message>
        <message>
            <source>uncertainties of a method, row %1</source>
            <translation>incertidumbres de un método, fila %1</translation>
        </message>
        <message>
            <source>unit of a product, row %1</source>
            <translation>unidad de un producto, fila %1</translation>
        </message>
        <message>
            <source>reason to reject %1</source>
            <translation>motivo de rechazo %1</translation>
        </message>
        <message>
            <source>address, line %1</source>
            <translation>dirección, línea %1</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>límite %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>correction of when a container was opened</source>
            <translation>corrección de cuándo se abrió un envase</translation>
        </message>
        <message>
            <source>absorptivity (%)</source>
            <translation>absortividad (%)</translation>
        </message>
        <message>
            <source>nothing speaks against it</source>
            <translation>nada se opone a ello</translation>
        </message>
        <message>
            <source>time for an addition (s)</source>
            <translation>tiempo para una adición (s)</translation>
        </message>
        <message>
            <source>address</source>
            <translation>dirección</translation>
        </message>
        <message>
            <source>aliquots</source>
            <translation>alícuotas</translation>
        </message>
        <message>
            <source>molar mass of the analyte (g/mol)</source>
            <translation>masa molar del analito (g/mol)</translation>
        </message>
        <message>
            <source>analyte molecules per molecule</source>
            <translation>moléculas de analito por molécula</translation>
        </message>
        <message>
            <source>what was checked</source>
            <translation>qué se comprobó</translation>
        </message>
        <message>
            <source>time (min)</source>
            <translation>tiempo (min)</translation>
        </message>
        <message>
            <source>picture</source>
            <translation>imagen</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>calibración</translation>
        </message>
        <message>
            <source>centre line</source>
            <translation>línea central</translation>
        </message>
        <message>
            <source>change (mL)</source>
            <translation>cambio (mL)</translation>
        </message>
        <message>
            <source>checked on</source>
            <translation>comprobado el</translation>
        </message>
        <message>
            <source>columns</source>
            <translation>columnas</translation>
        </message>
        <message>
            <source>column</source>
            <translation>columna</translation>
        </message>
        <message>
            <source>constants of the chart</source>
            <translation>factores del gráfico</translation>
        </message>
        <message>
            <source>contact</source>
            <translation>contacto</translation>
        </message>
        <message>
            <source>corrects</source>
            <translation>corrige</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>puesta en la mesa</translation>
        </message>
        <message>
            <source>date</source>
            <translation>fecha</translation>
        </message>
        <message>
            <source>density (g/mL)</source>
            <translation>densidad (g/mL)</translation>
        </message>
        <message>
            <source>standard deviation</source>
            <translation>desviación típica</translation>
        </message>
        <message>
            <source>dilution step (%)</source>
            <translation>paso de dilución (%)</translation>
        </message>
        <message>
            <source>values of earlier runs</source>
            <translation>valores de tandas anteriores</translation>
        </message>
        <message>
            <source>extract (%)</source>
            <translation>extracto (%)</translation>
        </message>
        <message>
            <source>file</source>
            <translation>archivo</translation>
        </message>
        <message>
            <source>beginning with</source>
            <translation>empieza en</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>matraz</translation>
        </message>
        <message>
            <source>uncertainty of the flask (mL)</source>
            <translation>incertidumbre del matraz (mL)</translation>
        </message>
        <message>
            <source>guard band</source>
            <translation>banda de guarda</translation>
        </message>
        <message>
            <source>decision limit h</source>
            <translation>límite de decisión h</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en uso</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>excluido</translation>
        </message>
        <message>
            <source>only the usual value</source>
            <translation>solo el valor habitual</translation>
        </message>
        <message>
            <source>reference value k</source>
            <translation>valor de referencia k</translation>
        </message>
        <message>
            <source>weight of the newest value</source>
            <translation>peso del valor más reciente</translation>
        </message>
        <message>
            <source>largest volume (mL)</source>
            <translation>volumen máximo (mL)</translation>
        </message>
        <message>
            <source>line of the photometer</source>
            <translation>línea del fotómetro</translation>
        </message>
        <message>
            <source>logo</source>
            <translation>logotipo</translation>
        </message>
        <message>
            <source>lower limit</source>
            <translation>límite inferior</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>preparado</translation>
        </message>
        <message>
            <source>uncertainty of the weighing (mg)</source>
            <translation>incertidumbre de la pesada (mg)</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mensurando</translation>
        </message>
        <message>
            <source>time to mix (s)</source>
            <translation>tiempo para mezclar (s)</translation>
        </message>
        <message>
            <source>result of</source>
            <translation>resultado de</translation>
        </message>
        <message>
            <source>check</source>
            <translation>comprobación</translation>
        </message>
        <message>
            <source>reagent beyond the need (%)</source>
            <translation>reactivo por encima de lo necesario (%)</translation>
        </message>
        <message>
            <source>path length (%)</source>
            <translation>camino óptico (%)</translation>
        </message>
        <message>
            <source>uncertainty (%)</source>
            <translation>incertidumbre (%)</translation>
        </message>
        <message>
            <source>signed by</source>
            <translation>firmado por</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>fotómetro</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>readings of the series</source>
            <translation>lecturas de la serie</translation>
        </message>
        <message>
            <source>place in the order</source>
            <translation>lugar en el orden</translation>
        </message>
        <message>
            <source>program</source>
            <translation>programa</translation>
        </message>
        <message>
            <source>what is watched</source>
            <translation>qué se vigila</translation>
        </message>
        <message>
            <source>time for a reading (s)</source>
            <translation>tiempo para una lectura (s)</translation>
        </message>
        <message>
            <source>put back on the bench</source>
            <translation>devuelta a la mesa</translation>
        </message>
        <message>
            <source>repeat of</source>
            <translation>repetición de</translation>
        </message>
        <message>
            <source>only a reviewer decides</source>
            <translation>solo decide un revisor</translation>
        </message>
        <message>
            <source>rows</source>
            <translation>filas</translation>
        </message>
        <message>
            <source>rule</source>
            <translation>regla</translation>
        </message>
        <message>
            <source>rules</source>
            <translation>reglas</translation>
        </message>
        <message>
            <source>sample volume (%)</source>
            <translation>volumen de muestra (%)</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>muestras</translation>
        </message>
        <message>
            <source>samples before</source>
            <translation>muestras antes</translation>
        </message>
        <message>
            <source>somebody else than the analyst decides</source>
            <translation>decide una persona distinta del analista</translation>
        </message>
        <message>
            <source>clock moved by (s)</source>
            <translation>reloj ajustado en (s)</translation>
        </message>
        <message>
            <source>size</source>
            <translation>tamaño</translation>
        </message>
        <message>
            <source>solvent</source>
            <translation>disolvente</translation>
        </message>
        <message>
            <source>lot of the solvent</source>
            <translation>lote del disolvente</translation>
        </message>
        <message>
            <source>day of the source</source>
            <translation>día de la fuente</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>fortificación</translation>
        </message>
        <message>
            <source>standard of the spike</source>
            <translation>patrón de la fortificación</translation>
        </message>
        <message>
            <source>volume of the spike (mL)</source>
            <translation>volumen de la fortificación (mL)</translation>
        </message>
        <message>
            <source>scatter from</source>
            <translation>dispersión según</translation>
        </message>
        <message>
            <source>started</source>
            <translation>comenzada</translation>
        </message>
        <message>
            <source>step (mL)</source>
            <translation>paso (mL)</translation>
        </message>
        <message>
            <source>values in a subgroup</source>
            <translation>valores de un subgrupo</translation>
        </message>
        <message>
            <source>total volume (%)</source>
            <translation>volumen total (%)</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubos</translation>
        </message>
        <message>
            <source>tubes before</source>
            <translation>tubos antes</translation>
        </message>
        <message>
            <source>kind of picture</source>
            <translation>tipo de imagen</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unidad</translation>
        </message>
        <message>
            <source>upper limit</source>
            <translation>límite superior</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valor</translation>
        </message>
        <message>
            <source>version</source>
            <translation>versión</translation>
        </message>
        <message>
            <source>width of the limits</source>
            <translation>anchura de los límites</translation>
        </message>
        <message>
            <source>use by</source>
            <translation>válido hasta</translation>
        </message>
        <message>
            <source>with entries 2 to %1, which made the tables of the file</source>
            <translation>con las entradas 2 a %1, que crearon las tablas del archivo</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes by %1</source>
            <translation>
                <numerusform>%n tubo según %1</numerusform>
                <numerusform>%n tubos según %1</numerusform>
            </translation>
        </message>
        <message>
            <source>standards</source>
            <translation>patrones</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lecturas</translation>
        </message>
        <message>
            <source>%1: tube %2</source>
            <translation>%1: tubo %2</translation>
        </message>
        <message>
            <source>loss per hour (%)</source>
            <translation>pérdida por hora (%)</translation>
        </message>
        <message>
            <source>purity (%)</source>
            <translation>pureza (%)</translation>
        </message>
        <message>
            <source>purity, plus or minus (%)</source>
            <translation>pureza, más o menos (%)</translation>
        </message>
        <message>
            <source>use by, by its own rule</source>
            <translation>válido hasta según regla propia</translation>
        </message>
        <message>
            <source>water (%)</source>
            <translation>agua (%)</translation>
        </message>
        <message>
            <source>water, plus or minus (%)</source>
            <translation>agua, más o menos (%)</translation>
        </message>
        <message>
            <source>%1, made from %2</source>
            <translation>%1, preparado a partir de %2</translation>
        </message>
        <message>
            <source>Nobody who is set up is called so; nothing was stored: choose somebody from the list (↓), or have a head add them.</source>
            <translation>Ninguna de las personas dadas de alta se llama así; no se ha guardado nada: elija una de la lista (↓) o pida a un jefe que la añada.</translation>
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
            <translation>escala de absorbancia mediante %1</translation>
        </message>
        <message>
            <source>cuvettes: common practice, no source</source>
            <translation>cubetas: práctica habitual, sin fuente</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>%1: passed before this run, but failed afterwards, on %2: %3.</source>
            <translation>%1: superada antes de esta tanda, pero no superada después, el %2: %3.</translation>
        </message>
        <message>
            <source>%1: not in the book of equipment yet on that day; its next check, on %2, failed: %3.</source>
            <translation>%1: ese día aún no estaba en el libro de equipos; su comprobación siguiente, el %2, no superada: %3.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::DilutionPlan</name>
        <message>
            <source>Say how much the sample is expected to hold: a dilution is planned from that.</source>
            <translation>Indique cuánto se espera que contenga la muestra: con eso se planifica una dilución.</translation>
        </message>
        <message>
            <source>The method has no absorptivity at %1, so no signal can be predicted.</source>
            <translation>El método no tiene absortividad a %1, así que no se puede predecir ninguna señal.</translation>
        </message>
        <message>
            <source>The sample has to be diluted, but no pipette and flask of the laboratory make a dilution.</source>
            <translation>Hay que diluir la muestra, pero ninguna pipeta y ningún matraz del laboratorio dan una dilución.</translation>
        </message>
        <message>
            <source>With %1 of sample it has to be diluted %2- to %3-fold; no chain of up to %4 steps with the laboratory's pipettes and flasks does that.</source>
            <translation>Con %1 de muestra hay que diluirla de %2 a %3 veces; ninguna cadena de hasta %4 pasos con las pipetas y los matraces del laboratorio lo consigue.</translation>
        </message>
        <message>
            <source>The net signals of %1 and %2 are expected %3-fold apart, more than the %4-fold that one dilution can serve: plan a dilution for each.</source>
            <translation>Se espera que las señales netas de %1 y %2 difieran en un factor de %3, más que el factor de %4 al que puede servir una sola dilución: planifique una dilución para cada uno.</translation>
        </message>
        <message>
            <source>%1 of the undiluted sample would give a net signal of %2 for %3, less than the %4 that can be measured well.</source>
            <translation>%1 de la muestra sin diluir darían una señal neta de %2 para %3, menos que el %4 que se puede medir bien.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Expectation</name>
        <message>
            <source>From what is expected of it, %1 would be about %2, below the window's %3: dilute it less, or take more of it.</source>
            <translation>Con lo que se espera de ella, %1 sería alrededor de %2, por debajo del %3 del intervalo de medida: dilúyala menos o tome más de ella.</translation>
        </message>
        <message>
            <source>From what is expected of it, %1 would be about %2, above the window's %3: dilute it more, or take less of it.</source>
            <translation>Con lo que se espera de ella, %1 sería alrededor de %2, por encima del %3 del intervalo de medida: dilúyala más o tome menos de ella.</translation>
        </message>
        <message>
            <source>its net signal</source>
            <translation>su señal neta</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputOwner</name>
        <message>
            <source>absorbance of a reading</source>
            <translation>absorbancia de una lectura</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>paso de dilución</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentración</translation>
        </message>
        <message>
            <source>repeatability</source>
            <translation>repetibilidad</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputSources</name>
        <message>
            <source>the laboratory's list of glassware</source>
            <translation>la lista de material volumétrico del laboratorio</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>práctica habitual, sin fuente</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>no pipette of the list makes %1</source>
            <translation>ninguna pipeta de la lista da %1</translation>
        </message>
        <message>
            <source>until its check records say otherwise</source>
            <translation>hasta que sus registros de comprobación digan otra cosa</translation>
        </message>
        <message>
            <source>absorptivity of %1 at %2</source>
            <translation>absortividad de %1 a %2</translation>
        </message>
        <message>
            <source>cuvette of the %1</source>
            <translation>cubeta del %1</translation>
        </message>
        <message>
            <source>cuvette</source>
            <translation>cubeta</translation>
        </message>
        <message>
            <source>pipettes</source>
            <translation>pipetas</translation>
        </message>
        <message>
            <source>pipette of the sample</source>
            <translation>pipeta de la muestra</translation>
        </message>
        <message>
            <source>pipette and flask of a dilution step</source>
            <translation>pipeta y matraz de un paso de dilución</translation>
        </message>
        <message>
            <source>no glass of the list makes %1 up to %2</source>
            <translation>ningún material de la lista lleva %1 a %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 con %2</translation>
        </message>
        <message>
            <source>no step of this run rests on it</source>
            <translation>ningún paso de esta tanda se apoya en ello</translation>
        </message>
        <message>
            <source>flask of the extract</source>
            <translation>matraz del extracto</translation>
        </message>
        <message>
            <source>no flask of the list holds %1</source>
            <translation>ningún matraz de la lista contiene %1</translation>
        </message>
        <message>
            <source>no sample of this run rests on it</source>
            <translation>ninguna muestra de esta tanda se apoya en ello</translation>
        </message>
        <message>
            <source>laboratory, for %1</source>
            <translation>laboratorio, para %1</translation>
        </message>
        <message>
            <source>photometer %1</source>
            <translation>fotómetro %1</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>fotómetro</translation>
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
            <translation>pipeta aforada de %1 mL</translation>
        </message>
        <message>
            <source>flask %1 mL</source>
            <translation>matraz de %1 mL</translation>
        </message>
        <message>
            <source>piston pipette 10 to 100 µL</source>
            <translation>pipeta de pistón de 10 a 100 µL</translation>
        </message>
        <message>
            <source>piston pipette 100 to 1000 µL</source>
            <translation>pipeta de pistón de 100 a 1000 µL</translation>
        </message>
        <message>
            <source>piston pipette 0.5 to 5 mL</source>
            <translation>pipeta de pistón de 0,5 a 5 mL</translation>
        </message>
        <message>
            <source>a mistake in pipetting</source>
            <translation>un error de pipeteo</translation>
        </message>
        <message>
            <source>the blank is out of its limits</source>
            <translation>el blanco está fuera de sus límites</translation>
        </message>
        <message>
            <source>the control is out of its limits</source>
            <translation>el control está fuera de sus límites</translation>
        </message>
        <message>
            <source>duplicates lie too far apart</source>
            <translation>los duplicados difieren demasiado</translation>
        </message>
        <message>
            <source>the wrong sample was taken</source>
            <translation>se tomó la muestra equivocada</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>la recuperación del patrón está fuera de sus límites</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LaboratorySoundness</name>
        <message>
            <source>makes a rack of %1 places with %2 rows; at most %3 are allowed</source>
            <translation>da una gradilla de %1 lugares con %2 filas; se admiten como máximo %3</translation>
        </message>
        <message>
            <source>must not be smaller than smallest_mL: %1 is less than %2</source>
            <translation>no debe ser menor que smallest_mL: %1 es menos que %2</translation>
        </message>
        <message>
            <source>must be 0 for a fixed-volume pipette, not %1</source>
            <translation>debe ser 0 para una pipeta de volumen fijo, no %1</translation>
        </message>
        <message>
            <source>must be greater than 0 and at most %1 mL, the width of the pipette's range, not %2</source>
            <translation>debe ser mayor que 0 y como máximo %1 mL, la anchura del intervalo de la pipeta, no %2</translation>
        </message>
        <message>
            <source>makes more than %1 settings; give a coarser step</source>
            <translation>da más de %1 ajustes; indique un paso más grueso</translation>
        </message>
        <message>
            <source>must go a whole number of times into the %1 mL between smallest_mL and largest_mL</source>
            <translation>debe caber un número entero de veces en los %1 mL entre smallest_mL y largest_mL</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>el nombre</translation>
        </message>
        <message>
            <source>the name %1 is taken by an earlier one; give each its own</source>
            <translation>el nombre %1 ya lo tiene uno anterior; dé a cada uno el suyo</translation>
        </message>
        <message>
            <source>lists %1 pieces; at most %2 are allowed</source>
            <translation>enumera %1 piezas; se admiten como máximo %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotOutlook</name>
        <message>
            <source>in use, dissolved</source>
            <translation>en uso, disuelto</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en uso</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>sin abrir</translation>
        </message>
        <message>
            <source>open too long, was to be used by %1</source>
            <translation>abierto demasiado tiempo, era válido hasta %1</translation>
        </message>
        <message>
            <source>dissolved too long ago, was to be used by %1</source>
            <translation>disuelto hace demasiado, era válido hasta %1</translation>
        </message>
        <message>
            <source>stored too long, was to be used by %1</source>
            <translation>guardado demasiado tiempo, era válido hasta %1</translation>
        </message>
        <message>
            <source>what it was filled from was to be used by %1</source>
            <translation>aquello de lo que se llenó era válido hasta %1</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>caducó el %1</translation>
        </message>
        <message>
            <source>%1 (opened)</source>
            <translation>%1 (abierto)</translation>
        </message>
        <message>
            <source>%1 (dissolved)</source>
            <translation>%1 (disuelto)</translation>
        </message>
        <message>
            <source>%1 (as stored)</source>
            <translation>%1 (según se guarda)</translation>
        </message>
        <message>
            <source>%1 (its source)</source>
            <translation>%1 (su origen)</translation>
        </message>
        <message>
            <source>used up</source>
            <translation>agotado</translation>
        </message>
        <message>
            <source>dry, not dissolved yet</source>
            <translation>seco, aún sin disolver</translation>
        </message>
        <message>
            <source>more taken than it held</source>
            <translation>tomado más de lo que contenía</translation>
        </message>
        <message>
            <source>use by tonight</source>
            <translation>válido hasta esta noche</translation>
        </message>
        <message>
            <source>use by %1</source>
            <translation>válido hasta %1</translation>
        </message>
        <message>
            <source>too little for a tube</source>
            <translation>demasiado poco para un tubo</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lote %2</translation>
        </message>
        <message>
            <source>%1: %2, and this run took from it on %3.</source>
            <translation>%1: %2, y esta tanda tomó de él el %3.</translation>
        </message>
        <message>
            <source>%1: use by %2; a repeat after that takes another.</source>
            <translation>%1: válido hasta %2; una repetición posterior toma otro.</translation>
        </message>
        <message numerus="yes">
            <source>low, enough for %n tubes</source>
            <translation>
                <numerusform>queda poco, alcanza para %n tubo</numerusform>
                <numerusform>queda poco, alcanza para %n tubos</numerusform>
            </translation>
        </message>
        <message>
            <source>expired</source>
            <translation>caducado</translation>
        </message>
        <message>
            <source>open too long</source>
            <translation>abierto demasiado tiempo</translation>
        </message>
        <message>
            <source>dissolved too long ago</source>
            <translation>disuelto hace demasiado</translation>
        </message>
        <message>
            <source>stored too long</source>
            <translation>guardado demasiado tiempo</translation>
        </message>
        <message>
            <source>what it was filled from is too old</source>
            <translation>aquello de lo que se llenó es demasiado viejo</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>disuelto</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>abierto</translation>
        </message>
        <message numerus="yes">
            <source>good for %n more days</source>
            <translation>
                <numerusform>válido %n día más</numerusform>
                <numerusform>válido %n días más</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotPlace</name>
        <message>
            <source>%1, %2 to %3</source>
            <translation>%1, %2 a %3</translation>
        </message>
        <message>
            <source>%1, at most %2</source>
            <translation>%1, como máximo %2</translation>
        </message>
        <message>
            <source>%1, at least %2</source>
            <translation>%1, al menos %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Measuring</name>
        <message>
            <source>the source</source>
            <translation>la fuente</translation>
        </message>
        <message>
            <source>is blank; say which record or certificate the numbers come from</source>
            <translation>está en blanco; indique de qué registro o certificado vienen los números</translation>
        </message>
        <message>
            <source>the photometer's name</source>
            <translation>el nombre del fotómetro</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>el id del método</translation>
        </message>
        <message>
            <source>states no uncertainty; give at least one, or take the entry away</source>
            <translation>no indica ninguna incertidumbre; indique al menos una o quite la entrada</translation>
        </message>
        <message>
            <source>lists %1 methods; at most %2 are allowed</source>
            <translation>enumera %1 métodos; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>the method %1 has an entry already; put both in one</source>
            <translation>el método %1 ya tiene una entrada; ponga ambas en una</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::PlanRecord</name>
        <message>
            <source>names the glass of %1 dilution steps, but the sample has %2; name it for each step or for none</source>
            <translation>nombra el material de %1 pasos de dilución, pero la muestra tiene %2; nómbrelo para cada paso o para ninguno</translation>
        </message>
        <message>
            <source>the pipette</source>
            <translation>la pipeta</translation>
        </message>
        <message>
            <source>the flask</source>
            <translation>el matraz</translation>
        </message>
        <message>
            <source>the run has no sample %1</source>
            <translation>la tanda no tiene ninguna muestra %1</translation>
        </message>
        <message>
            <source>is not the form that the run gives the sample %1</source>
            <translation>no es la forma que la tanda da a la muestra %1</translation>
        </message>
        <message>
            <source>runs are numbered from 1 on</source>
            <translation>las tandas se numeran desde 1</translation>
        </message>
        <message>
            <source>a rack has 1 to %1 positions, not %2 x %3</source>
            <translation>una gradilla tiene de 1 a %1 posiciones, no %2 × %3</translation>
        </message>
        <message>
            <source>a rack of %1 x %2 does not hold the run's %3 tubes</source>
            <translation>una gradilla de %1 × %2 no da cabida a los %3 tubos de la tanda</translation>
        </message>
        <message>
            <source>nobody but the run answers for its replicates</source>
            <translation>nadie salvo la propia tanda responde de sus réplicas</translation>
        </message>
        <message>
            <source>the run states no uncertainty</source>
            <translation>la tanda no indica ninguna incertidumbre</translation>
        </message>
        <message>
            <source>the run has no standard %1 that this could be said of</source>
            <translation>la tanda no tiene ningún patrón %1 del que se pudiera decir esto</translation>
        </message>
        <message>
            <source>names an owner for this a second time</source>
            <translation>nombra un responsable de esto por segunda vez</translation>
        </message>
        <message>
            <source>the owner</source>
            <translation>el responsable</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la fuente</translation>
        </message>
        <message>
            <source>is blank</source>
            <translation>está en blanco</translation>
        </message>
        <message>
            <source>the sample %1 is planned twice</source>
            <translation>la muestra %1 está planificada dos veces</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::RackRepeat</name>
        <message>
            <source>%1-fold</source>
            <translation>%1 veces</translation>
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
            <translation>no es una imagen PNG</translation>
        </message>
        <message>
            <source>it measures %1 by %2 pixels; 1 to %3 each way are allowed</source>
            <translation>mide %1 por %2 píxeles; se admiten de 1 a %3 en cada sentido</translation>
        </message>
        <message>
            <source>it holds a document type declaration; save it without</source>
            <translation>contiene una declaración de tipo de documento; guárdela sin ella</translation>
        </message>
        <message>
            <source>it is not an SVG picture</source>
            <translation>no es una imagen SVG</translation>
        </message>
        <message>
            <source>it takes in a file from outside; put everything into the picture itself</source>
            <translation>incorpora un archivo de fuera; ponga todo en la propia imagen</translation>
        </message>
        <message>
            <source>lists %1 reasons; at most %2 are allowed</source>
            <translation>enumera %1 motivos; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>the reason</source>
            <translation>el motivo</translation>
        </message>
        <message>
            <source>the reason %1 stands in the list already; take one away</source>
            <translation>el motivo %1 ya está en la lista; quite uno</translation>
        </message>
        <message>
            <source>has %1 lines; at most %2 are allowed</source>
            <translation>tiene %1 líneas; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>the line</source>
            <translation>la línea</translation>
        </message>
        <message>
            <source>the contact</source>
            <translation>el contacto</translation>
        </message>
        <message>
            <source>the logo cannot be used: %1</source>
            <translation>el logotipo no se puede usar: %1</translation>
        </message>
        <message>
            <source>lists %1 units; at most %2 are allowed</source>
            <translation>enumera %1 unidades; se admiten como máximo %2</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>el producto</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>el mensurando</translation>
        </message>
        <message>
            <source>has a unit for this already; take one away</source>
            <translation>ya tiene una unidad para esto; quite una</translation>
        </message>
        <message>
            <source>it has %1 kB; at most %2 kB are allowed</source>
            <translation>tiene %1 kB; se admiten como máximo %2 kB</translation>
        </message>
        <message>
            <source>is a unit of neither a product nor a measurand; name one of them</source>
            <translation>no es unidad de un producto ni de un mensurando; indique uno de los dos</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Round</name>
        <message>
            <source>Diluent</source>
            <translation>Diluyente</translation>
        </message>
        <message>
            <source>Spike</source>
            <translation>Fortificación</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Schedule</name>
        <message>
            <source>mixing</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>reading %1</source>
            <translation>leer %1</translation>
        </message>
        <message>
            <source>adding %1</source>
            <translation>añadir %1</translation>
        </message>
        <message>
            <source>Tube %1: %2 has %3, it needs %4.</source>
            <translation>Tubo %1: %2 tiene %3, necesita %4.</translation>
        </message>
        <message>
            <source>At %1 there is a task for tube %2, step %3, which this rack does not have.</source>
            <translation>En el minuto %1 hay una tarea para el tubo %2, paso %3, que esta gradilla no tiene.</translation>
        </message>
        <message>
            <source>Tube %1 and tube %2 both need the hands at %3.</source>
            <translation>El tubo %1 y el tubo %2 necesitan las manos a la vez, en el minuto %3.</translation>
        </message>
        <message>
            <source>Tube %1 needs the hands at %2, when the other rack does too.</source>
            <translation>El tubo %1 necesita las manos en el minuto %2, cuando también las necesita la otra gradilla.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is missing.</source>
            <translation>Tubo %1: falta %2.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is there twice.</source>
            <translation>Tubo %1: %2 está dos veces.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at least %5 is needed.</source>
            <translation>Tubo %1: %2 llega %3 después de %4, hace falta al menos %5.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at most %5 is allowed.</source>
            <translation>Tubo %1: %2 llega %3 después de %4, se admite como máximo %5.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::ShelfSample</name>
        <message>
            <source>the id</source>
            <translation>el id</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>el producto</translation>
        </message>
        <message>
            <source>who it came from</source>
            <translation>de quién vino</translation>
        </message>
        <message>
            <source>is not a real time; give a time with its offset from UTC</source>
            <translation>no es una hora que exista; dé una hora con su desfase respecto a UTC</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>el mensurando</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardRecipe</name>
        <message>
            <source>mass</source>
            <translation>masa</translation>
        </message>
        <message>
            <source>purity</source>
            <translation>pureza</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>matraz</translation>
        </message>
        <message>
            <source>filling to the mark</source>
            <translation>enrase</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardStock</name>
        <message>
            <source>is not a time; say when it was made</source>
            <translation>no es una hora; indique cuándo se preparó</translation>
        </message>
        <message>
            <source>is in the future; it must be in the past</source>
            <translation>está por llegar; debe ser pasado</translation>
        </message>
        <message>
            <source>is not after the time it was made; leave it out, or correct it</source>
            <translation>no es posterior a la hora en que se preparó; omítalo o corríjalo</translation>
        </message>
        <message>
            <source>the supplier</source>
            <translation>el proveedor</translation>
        </message>
        <message>
            <source>the certificate</source>
            <translation>el certificado</translation>
        </message>
        <message>
            <source>is not a real date</source>
            <translation>no es un día que exista</translation>
        </message>
        <message>
            <source>must be 1 to %1 masses</source>
            <translation>debe ser de 1 a %1 masas</translation>
        </message>
        <message>
            <source>must be 0 % or more and less than 100 %</source>
            <translation>debe ser 0 % o más y menos de 100 %</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::UncertaintyOwners</name>
        <message>
            <source>not on record</source>
            <translation>no consta</translation>
        </message>
        <message>
            <source>the run came with this number</source>
            <translation>este número llegó con la tanda</translation>
        </message>
        <message>
            <source>dilution step %1 to %2</source>
            <translation>paso de dilución %1 a %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 con %2</translation>
        </message>
        <message>
            <source>the laboratory's list of glassware when the run was planned</source>
            <translation>la lista de material volumétrico del laboratorio cuando se planificó la tanda</translation>
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
            <translation>patrón %1</translation>
        </message>
        <message>
            <source>stated with the standard</source>
            <translation>indicado con el patrón</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known; enter what its recipe or its certificate says</source>
            <translation>no indicado, así que cuenta como conocido exactamente; ponga lo que dice su receta o su certificado</translation>
        </message>
        <message>
            <source>replicates</source>
            <translation>réplicas</translation>
        </message>
        <message>
            <source>the run's own tubes: their scatter, or the readings' uncertainty where that is larger</source>
            <translation>los propios tubos de la tanda: su dispersión, o la incertidumbre de las lecturas si es mayor</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Fit</name>
        <message>
            <source>the run is made for %1, not for %2</source>
            <translation>la tanda está hecha para %1, no para %2</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; it has one for %2 nm</source>
            <translation>el método no tiene absortividad para %1 nm; tiene una para %2 nm</translation>
        </message>
        <message>
            <source>the method takes no reading %1; it takes %2</source>
            <translation>el método no toma ninguna lectura %1; toma %2</translation>
        </message>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>el método no tiene ningún componente %1; corríjalo</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>el tubo contiene al final %1 mL; se admiten como máximo %2 mL</translation>
        </message>
        <message>
            <source>the method has no measurand %1; leave it out or correct it</source>
            <translation>el método no tiene ningún mensurando %1; omítalo o corríjalo</translation>
        </message>
        <message>
            <source>calibration by the run's own standard needs a tube with a standard of %1</source>
            <translation>la calibración con el patrón propio de la tanda necesita un tubo con un patrón de %1</translation>
        </message>
        <message>
            <source>a calibration line needs at least three different standard amounts of %1, not %2</source>
            <translation>una recta de calibración necesita al menos tres cantidades distintas de patrón de %1, no %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Soundness</name>
        <message>
            <source>the title</source>
            <translation>el título</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>el id</translation>
        </message>
        <message>
            <source>must not be larger than makeUpTo_mL: %1 mL cannot be made up to %2 mL</source>
            <translation>no debe ser mayor que makeUpTo_mL: %1 mL no se pueden enrasar a %2 mL</translation>
        </message>
        <message>
            <source>dilutes more than %1-fold; check the volumes</source>
            <translation>diluye más de %1 veces; compruebe los volúmenes</translation>
        </message>
        <message>
            <source>is missing: a solid needs the mass that was weighed, in g</source>
            <translation>falta: un sólido necesita la masa que se pesó, en g</translation>
        </message>
        <message>
            <source>is missing: a solid needs the volume it was extracted into, in mL</source>
            <translation>falta: un sólido necesita el volumen en el que se extrajo, en mL</translation>
        </message>
        <message>
            <source>a liquid has no %1; leave it out or set the form to "solid"</source>
            <translation>un líquido no tiene %1; omítalo o ponga la forma "solid"</translation>
        </message>
        <message>
            <source>the run has no sample %1; name the one that is repeated, or leave it out</source>
            <translation>la tanda no tiene ninguna muestra %1; indique la que se repite u omítalo</translation>
        </message>
        <message>
            <source>a sample cannot repeat itself; name the one that is repeated</source>
            <translation>una muestra no puede repetirse a sí misma; indique la que se repite</translation>
        </message>
        <message>
            <source>the sample %1 is a repeat itself; name the one that it repeats</source>
            <translation>la muestra %1 es ella misma una repetición; indique la que repite</translation>
        </message>
        <message>
            <source>the sample %1 has another form; a repeat has the form of what it repeats</source>
            <translation>la muestra %1 tiene otra forma; una repetición tiene la forma de lo que repite</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier sample; give each its own</source>
            <translation>el id %1 ya lo tiene una muestra anterior; dé a cada una el suyo</translation>
        </message>
        <message>
            <source>is missing: with usedAt goes the time it was made</source>
            <translation>falta: con usedAt va la hora en que se preparó</translation>
        </message>
        <message>
            <source>is without effect, since no preparedAt is given: the stated concentration counts</source>
            <translation>no tiene efecto, porque no se da preparedAt: cuenta la concentración indicada</translation>
        </message>
        <message>
            <source>must not lie before preparedAt; check dates and offsets</source>
            <translation>no debe ser anterior a preparedAt; compruebe fechas y desfases</translation>
        </message>
        <message>
            <source>is missing: give it, or startedAt in the run to stand in for it</source>
            <translation>falta: indíquelo, o startedAt en la tanda para que lo sustituya</translation>
        </message>
        <message>
            <source>is missing, and the run's startedAt, which stands in for it, lies before preparedAt</source>
            <translation>falta, y el startedAt de la tanda, que lo sustituye, es anterior a preparedAt</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier standard; give each its own</source>
            <translation>el id %1 ya lo tiene un patrón anterior; dé a cada uno el suyo</translation>
        </message>
        <message>
            <source>must be a fraction from 0 to below 1 (0.02 for 2 % an hour), not %1</source>
            <translation>debe ser una fracción desde 0 hasta menos de 1 (0.02 para 2 % por hora), no %1</translation>
        </message>
        <message>
            <source>the component's id</source>
            <translation>el id del componente</translation>
        </message>
        <message>
            <source>the lot's number</source>
            <translation>el número del lote</translation>
        </message>
        <message>
            <source>lot %1 of %2 stands in the list already; name it once</source>
            <translation>el lote %1 de %2 ya está en la lista; indíquelo una vez</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TimeFit</name>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>el método no tiene ningún componente %1; corríjalo</translation>
        </message>
        <message>
            <source>the method takes no reading %1; correct it</source>
            <translation>el método no toma ninguna lectura %1; corríjala</translation>
        </message>
        <message>
            <source>%1 min lies before %2 (%3 min), which comes first in the method; one of the two was marked at the wrong time</source>
            <translation>%1 min es anterior a %2 (%3 min), que en el método va antes; una de las dos se marcó a una hora equivocada</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TubeSoundness</name>
        <message>
            <source>the reason</source>
            <translation>el motivo</translation>
        </message>
        <message>
            <source>the id of the standard in it</source>
            <translation>el id del patrón que contiene</translation>
        </message>
        <message>
            <source>a control names either a sample or a standard, exactly one of them</source>
            <translation>un control nombra o bien una muestra o bien un patrón, exactamente uno de los dos</translation>
        </message>
        <message>
            <source>the id of the sample in it</source>
            <translation>el id de la muestra que contiene</translation>
        </message>
        <message>
            <source>the standard added and its volume</source>
            <translation>el patrón añadido y su volumen</translation>
        </message>
        <message>
            <source>is missing: a tube with the role %1 needs %2</source>
            <translation>falta: un tubo con la función %1 necesita %2</translation>
        </message>
        <message>
            <source>does not go with the role %1; leave it out or correct the role</source>
            <translation>no va con la función %1; omítalo o corrija la función</translation>
        </message>
        <message>
            <source>the run has no sample %1; add it to samples or correct the id</source>
            <translation>la tanda no tiene ninguna muestra %1; añádala a samples o corrija el id</translation>
        </message>
        <message>
            <source>the run has no standard %1; add it to standards or correct the id</source>
            <translation>la tanda no tiene ningún patrón %1; añádalo a standards o corrija el id</translation>
        </message>
        <message>
            <source>a series needs at least one reading; leave out what is not read yet</source>
            <translation>una serie necesita al menos una lectura; omita lo que aún no se ha leído</translation>
        </message>
        <message>
            <source>must be later than the reading before: %1 min is not later than %2 min</source>
            <translation>debe ser posterior a la lectura anterior: %1 min no es posterior a %2 min</translation>
        </message>
        <message>
            <source>no tube holds the sample %1</source>
            <translation>ningún tubo contiene la muestra %1</translation>
        </message>
        <message>
            <source>a run needs at least one tube</source>
            <translation>una tanda necesita al menos un tubo</translation>
        </message>
        <message>
            <source>a rack holds at most %1 tubes, not %2; split the run</source>
            <translation>una gradilla contiene como máximo %1 tubos, no %2; divida la tanda</translation>
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
            <translation>LGPL-3.0 o GPL; sus gráficos GPL-3.0</translation>
        </message>
        <message>
            <source>public domain</source>
            <translation>dominio público</translation>
        </message>
        <message>
            <source>ISC licence</source>
            <translation>licencia ISC</translation>
        </message>
        <message>
            <source>LGPL-2.1 or later</source>
            <translation>LGPL-2.1 o posterior</translation>
        </message>
        <message>
            <source>MIT licence</source>
            <translation>licencia MIT</translation>
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
Programa de mesa para ensayos enzimáticos de punto final leídos en un fotómetro.

Software libre: GNU General Public License, versión 3, sin garantía alguna. Los dibujos y los iconos son propios.

Funciona con:
%2
Colores de estado: Okabe e Ito, Color Universal Design, 2008.

Las instrucciones del proveedor, sus normas locales de seguridad y las normas de la profesión van primero. El nombre de la persona en un registro es lo que se escribió, no una prueba de identidad.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AbsorbanceChart</name>
        <message>
            <source>No reading of this series yet.</source>
            <translation>Aún no hay ninguna lectura de esta serie.</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>slope %1 per min</source>
            <translation>pendiente %1 por min</translation>
        </message>
        <message>
            <source>slope %1 per min, standard error %2</source>
            <translation>pendiente %1 por min, error típico %2</translation>
        </message>
        <message>
            <source>Too few readings to say whether it has ended.</source>
            <translation>Muy pocas lecturas para decir si ha terminado.</translation>
        </message>
        <message>
            <source>Ended: it changes steadily.</source>
            <translation>Terminada: cambia de manera constante.</translation>
        </message>
        <message>
            <source>Not ended yet: it still changes, or not steadily.</source>
            <translation>Aún no ha terminado: sigue cambiando, o no de manera constante.</translation>
        </message>
        <message>
            <source>%1: %2, in the line</source>
            <translation>%1: %2, en la recta</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 at 0 min by the line through the last %2 points, %3.</source>
            <translation>%1 a los 0 min por la recta por los últimos %2 puntos, %3.</translation>
        </message>
        <message>
            <source>%1 at the addition of %2 by the line through the last %3 points, %4.</source>
            <translation>%1 en la adición de %2 por la recta por los últimos %3 puntos, %4.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ActionWords</name>
        <message>
            <source>Rack %1, tube %2: key %3 again</source>
            <translation>Gradilla %1, tubo %2: introducir %3 de nuevo</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: key %3</source>
            <translation>Gradilla %1, tubo %2: introducir %3</translation>
        </message>
        <message>
            <source>Rack %1: review and decide</source>
            <translation>Gradilla %1: revisar y decidir</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Appraisal</name>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tubo</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1 mL, not made up</source>
            <translation>%1 mL, sin compensar</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Detection</source>
            <translation>Detección</translation>
        </message>
        <message>
            <source>Quantification</source>
            <translation>Cuantificación</translation>
        </message>
        <message>
            <source>Detection: a difference of %1 in the largest sample volume, undiluted.</source>
            <translation>Detección: una diferencia de %1 en el mayor volumen de muestra, sin diluir.</translation>
        </message>
        <message>
            <source>That difference is common practice, no source; enter your photometer's instead.</source>
            <translation>Esa diferencia es práctica habitual, sin fuente; ponga ahí la de su fotómetro.</translation>
        </message>
        <message>
            <source>Quantification: the window's smallest net signal, %1.</source>
            <translation>Cuantificación: la señal neta mínima del intervalo de medida, %1.</translation>
        </message>
        <message>
            <source>Quantification: 10/3.3 of that difference, %1 (common practice, no source), as the window names no smallest net signal.</source>
            <translation>Cuantificación: 10/3,3 de esa diferencia, %1 (práctica habitual, sin fuente), porque el intervalo de medida no indica ninguna señal neta mínima.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AppraisalPanel</name>
        <message>
            <source>Component</source>
            <translation>Componente</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>In each tube (mL)</source>
            <translation>En cada tubo (mL)</translation>
        </message>
        <message>
            <source>Bottle, mL</source>
            <translation>Envase, mL</translation>
        </message>
        <message>
            <source>Contents of the bottle (mL)</source>
            <translation>Contenido del envase (mL)</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>Window, undiluted, in g/L</source>
            <translation>Intervalo de medida, sin diluir, en g/L</translation>
        </message>
        <message>
            <source>Factor: g/L for a net signal of 1</source>
            <translation>Factor: g/L para una señal neta de 1</translation>
        </message>
        <message>
            <source>Smallest that can be determined, in g/L</source>
            <translation>Límites de detección y cuantificación, en g/L</translation>
        </message>
        <message>
            <source>Smallest difference in absorbance that can be resolved</source>
            <translation>Menor diferencia de absorbancias que se puede distinguir</translation>
        </message>
        <message>
            <source>Tubes that a bottle serves</source>
            <translation>Tubos para los que alcanza un envase</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BackupLine</name>
        <message>
            <source>Backing up: %1 %</source>
            <translation>Copia en curso: %1 %</translation>
        </message>
        <message>
            <source>No backup yet</source>
            <translation>Aún sin copia de seguridad</translation>
        </message>
        <message>
            <source>Backed up %1</source>
            <translation>Copia del %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BarChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Aún no hay nada que dibujar.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSession</name>
        <message>
            <source>the program</source>
            <translation>el programa</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSettingsDialog</name>
        <message>
            <source>&amp;Sound when something is due</source>
            <translation>Avi&amp;sar con sonido cuando haya algo que hacer</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>&amp;Digits alone are thousandths: 512 is 0.512</source>
            <translation>Las ci&amp;fras sin signo decimal son milésimas: 512 es 0,512</translation>
        </message>
        <message>
            <source>S&amp;ave</source>
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>Sound, lead time and keying</source>
            <translation>Sonido, antelación e introducción</translation>
        </message>
        <message>
            <source>S&amp;oon</source>
            <translation>&amp;Pronto</translation>
        </message>
        <message>
            <source>&amp;Now</source>
            <translation>A&amp;hora</translation>
        </message>
        <message>
            <source>La&amp;te</source>
            <translation>&amp;Tarde</translation>
        </message>
        <message>
            <source>&amp;Volume</source>
            <translation>&amp;Volumen</translation>
        </message>
        <message>
            <source>Listen</source>
            <translation>Escuchar</translation>
        </message>
        <message>
            <source>Lead ti&amp;me, before it is due</source>
            <translation>Antelació&amp;n del aviso</translation>
        </message>
        <message>
            <source>Soon: one low tone. Now: two tones. Late: three high tones.</source>
            <translation>«Pronto» es un tono grave; «ahora», dos; «tarde», tres agudos.</translation>
        </message>
        <message>
            <source>The lead time has to be a whole number of seconds from 0 to %1.</source>
            <translation>La antelación tiene que ser un número entero de segundos de 0 a %1.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>Cance&amp;lar</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BookEntry</name>
        <message>
            <source>Today</source>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>Toda&amp;y</source>
            <translation>&amp;Hoy</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cuaderno</translation>
        </message>
        <message>
            <source>&amp;Notebook</source>
            <translation>&amp;Cuaderno</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Gráficos de control</translation>
        </message>
        <message>
            <source>&amp;Control charts</source>
            <translation>Grá&amp;ficos de control</translation>
        </message>
        <message>
            <source>Methods</source>
            <translation>Métodos</translation>
        </message>
        <message>
            <source>&amp;Methods</source>
            <translation>&amp;Métodos</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Muestras</translation>
        </message>
        <message>
            <source>&amp;Samples</source>
            <translation>M&amp;uestras</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>&amp;Lots</source>
            <translation>&amp;Lotes</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Patrones</translation>
        </message>
        <message>
            <source>St&amp;andards</source>
            <translation>P&amp;atrones</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Equipos</translation>
        </message>
        <message>
            <source>E&amp;quipment</source>
            <translation>E&amp;quipos</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Laboratorio</translation>
        </message>
        <message>
            <source>Labora&amp;tory</source>
            <translation>La&amp;boratorio</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personas</translation>
        </message>
        <message>
            <source>P&amp;eople</source>
            <translation>&amp;Personas</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Límites</translation>
        </message>
        <message>
            <source>Limits of pro&amp;ducts</source>
            <translation>Límites &amp;de productos</translation>
        </message>
        <message>
            <source>Records</source>
            <translation>Registros</translation>
        </message>
        <message>
            <source>Records and bac&amp;kups</source>
            <translation>Registros &amp;y copias de seguridad</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BudgetOwners</name>
        <message>
            <source>A part that begins with a method's name comes from the run by that method; its own review says whose it is.</source>
            <translation>Una parte que empieza por el nombre de un método viene de la tanda con ese método; su propia revisión dice quién responde de ella.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellDelegate</name>
        <message>
            <source>new row</source>
            <translation>fila nueva</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsModel</name>
        <message>
            <source>new row</source>
            <translation>fila nueva</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsTable</name>
        <message>
            <source>Type to fill a cell, Enter goes on, F2 changes what is there. Insert adds a row, Ctrl+Delete removes it, Alt+Up and Alt+Down move it, Ctrl+Z undoes.</source>
            <translation>Escriba para rellenar una celda, Intro avanza, F2 cambia lo que hay. Insert añade una fila, Ctrl+Supr la quita, Alt+Arriba y Alt+Abajo la mueven, Ctrl+Z deshace.</translation>
        </message>
        <message>
            <source>Insert row</source>
            <translation>Insertar fila</translation>
        </message>
        <message>
            <source>Remove row</source>
            <translation>Quitar fila</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Arriba</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Abajo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartExport</name>
        <message>
            <source>The chart was not saved as %1: see that the folder is there, may be written to and has room.</source>
            <translation>El gráfico no se ha guardado como %1: compruebe que la carpeta exista, se pueda escribir en ella y tenga espacio.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartKey</name>
        <message>
            <source>outside a limit</source>
            <translation>fuera de un límite</translation>
        </message>
        <message>
            <source>out of control</source>
            <translation>fuera de control</translation>
        </message>
        <message>
            <source>warning</source>
            <translation>advertencia</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>excluido</translation>
        </message>
        <message>
            <source>decision limit</source>
            <translation>límite de decisión</translation>
        </message>
        <message>
            <source>action limit</source>
            <translation>límite de acción</translation>
        </message>
        <message>
            <source>warning limit</source>
            <translation>límite de advertencia</translation>
        </message>
        <message>
            <source>change of lot, standard or control</source>
            <translation>cambio de lote, patrón o control</translation>
        </message>
        <message>
            <source>Key of the chart</source>
            <translation>Leyenda de la carta</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartView</name>
        <message>
            <source>Visible part of the chart</source>
            <translation>Parte visible del gráfico</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartsPage</name>
        <message>
            <source>Control chart</source>
            <translation>Gráfico de control</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Qué está fuera de control</translation>
        </message>
        <message>
            <source>First choose the point at which the limits are to begin.</source>
            <translation>Elija primero el punto en el que deben empezar los límites.</translation>
        </message>
        <message>
            <source>settings of a control chart that are not saved yet</source>
            <translation>ajustes de un gráfico de control que aún no están guardados</translation>
        </message>
        <message>
            <source>a reason at a point of a control chart</source>
            <translation>un motivo en un punto de un gráfico de control</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>Nothing of %1 has been decided yet; another chart is shown.</source>
            <translation>Aún no se ha decidido nada de %1; se muestra otro gráfico.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Versión %1, guardada por %2, %3.</translation>
        </message>
        <message>
            <source>Not saved yet: these are the usual settings.</source>
            <translation>Aún sin guardar: estos son los ajustes habituales.</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>límite %1</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>umbral %1</translation>
        </message>
        <message>
            <source>No run matches what is chosen above. Clear the lot, the person or a day to see more.</source>
            <translation>Lo elegido arriba no deja ninguna tanda. Quite el lote, la persona o un día para ver más.</translation>
        </message>
        <message>
            <source>No limits are kept for this product. Bars are expanded uncertainties.</source>
            <translation>No hay límites guardados para este producto. Las barras son incertidumbres expandidas.</translation>
        </message>
        <message>
            <source>Limits of the product: %1. Bars are expanded uncertainties.</source>
            <translation>Límites del producto: %1. Las barras son incertidumbres expandidas.</translation>
        </message>
        <message>
            <source>And %1 more before these; choose days above to see them.</source>
            <translation>Y %1 más antes de estos; elija días arriba para verlos.</translation>
        </message>
        <message>
            <source>Nothing lies beyond a limit.</source>
            <translation>Nada está más allá de un límite.</translation>
        </message>
        <message>
            <source>Nothing is out of control.</source>
            <translation>Nada está fuera de control.</translation>
        </message>
        <message>
            <source>The settings of this chart are saved; those before stay on record.</source>
            <translation>Los ajustes de este gráfico están guardados; los anteriores siguen registrados.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>No hay nada que guardar: ya estaba guardado así.</translation>
        </message>
        <message>
            <source>Save the chart</source>
            <translation>Guardar el gráfico</translation>
        </message>
        <message>
            <source>%1.png</source>
            <translation>%1.png</translation>
        </message>
        <message>
            <source>Picture (*.png);;Drawing (*.svg);;Table (*.csv)</source>
            <translation>Imagen (*.png);;Dibujo (*.svg);;Tabla (*.csv)</translation>
        </message>
        <message>
            <source>The chart is saved as %1.</source>
            <translation>El gráfico está guardado como %1.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Gráficos de control</translation>
        </message>
        <message>
            <source>Save the &amp;chart as…</source>
            <translation>&amp;Guardar el gráfico como…</translation>
        </message>
        <message>
            <source>Limits and rules, and the loss of the standard</source>
            <translation>Límites y reglas, y la pérdida del patrón</translation>
        </message>
        <message>
            <source>Limits and rules</source>
            <translation>Límites y reglas</translation>
        </message>
        <message>
            <source>Loss per hour</source>
            <translation>Pérdida por hora</translation>
        </message>
        <message>
            <source>Nothing of this kind has been decided yet. Accept runs with standards, controls, blanks or duplicates in Review; they appear here by themselves.</source>
            <translation>Aún no se ha decidido nada de esta clase. Acepte en Revisar tandas con patrones, controles, blancos o duplicados; llegan aquí por sí solos.</translation>
        </message>
        <message>
            <source>Nothing stands out against the provisional limits. That is no verdict yet.</source>
            <translation>Nada llama la atención frente a los límites provisionales. Eso aún no es un dictamen.</translation>
        </message>
        <message>
            <source>No verdict: this chart has no limits.</source>
            <translation>Sin dictamen: este gráfico no tiene límites.</translation>
        </message>
        <message>
            <source>Version %1 for all materials together, saved by %2, %3. It holds for this one until its own settings are saved.</source>
            <translation>Versión %1 para todos los materiales juntos, guardada por %2, %3. Vale para este hasta que se guarden sus propios ajustes.</translation>
        </message>
        <message>
            <source>It was saved with fewer values than limits need; here their number is raised.</source>
            <translation>Se guardó con menos valores de los que necesitan los límites; aquí se ha aumentado su número.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CheckForm</name>
        <message>
            <source>&amp;What is checked</source>
            <translation>&amp;Qué se comprueba</translation>
        </message>
        <message>
            <source>&amp;Day</source>
            <translation>&amp;Día</translation>
        </message>
        <message>
            <source>A certificate or an instruction: for limits other than those suggested, and for what it was checked with.</source>
            <translation>Un certificado o una instrucción: para límites distintos de los propuestos y para aquello con lo que se comprobó.</translation>
        </message>
        <message>
            <source>Source of li&amp;mits and standards</source>
            <translation>Lím&amp;ites y patrones según</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>N&amp;ota (puede quedar vacía)</translation>
        </message>
        <message>
            <source>&amp;Store the check</source>
            <translation>&amp;Guardar la comprobación</translation>
        </message>
        <message>
            <source>How it is done, and cautions</source>
            <translation>Cómo se hace, y precauciones</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Check of %1</source>
            <translation>Comprobación: %1</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Lines of the check</source>
            <translation>Líneas de la comprobación</translation>
        </message>
        <message>
            <source>Cannot be judged yet. %1</source>
            <translation>Aún no se puede juzgar. %1</translation>
        </message>
        <message>
            <source>Passed: everything lies within its limits.</source>
            <translation>Superada: todo está dentro de sus límites.</translation>
        </message>
        <message>
            <source>Failed. Once it is stored, runs that use it carry a warning. Take it out of use, or have it put right and check it again.</source>
            <translation>No superada. Una vez guardada, las tandas que lo usen llevan una advertencia. Póngalo fuera de uso, o haga que lo reparen y compruébelo de nuevo.</translation>
        </message>
        <message>
            <source>For the budgets: standard uncertainty (k = 1) of %1.</source>
            <translation>Incertidumbre típica para los balances (k = 1): %1.</translation>
        </message>
        <message>
            <source>Back to the item  Esc</source>
            <translation>Volver al equipo  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChecksModel</name>
        <message>
            <source>failed</source>
            <translation>no superada</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>repetir</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>en espera</translation>
        </message>
        <message>
            <source>not judged</source>
            <translation>sin juzgar</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>anotada</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Comprobación</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Hallado</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Límite</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Límite según</translation>
        </message>
        <message>
            <source>not made</source>
            <translation>sin hacer</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Choices</name>
        <message>
            <source>point or comma</source>
            <translation>punto o coma</translation>
        </message>
        <message>
            <source>point, as in 0.512</source>
            <translation>punto, como 0.512</translation>
        </message>
        <message>
            <source>comma, as in 0,512</source>
            <translation>coma, como 0,512</translation>
        </message>
        <message>
            <source>ASCII or Unicode</source>
            <translation>ASCII o Unicode</translation>
        </message>
        <message>
            <source>Latin-1 (Western European)</source>
            <translation>Latin-1 (Europa occidental)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Colours</name>
        <message>
            <source>C&amp;olours</source>
            <translation>C&amp;olores</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <translation>Como el s&amp;istema</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Claro</translation>
        </message>
        <message>
            <source>D&amp;ark</source>
            <translation>O&amp;scuro</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnDialog</name>
        <message>
            <source>The lines and what is understood</source>
            <translation>Las líneas y lo que se entiende</translation>
        </message>
        <message>
            <source>&amp;Paste</source>
            <translation>&amp;Pegar</translation>
        </message>
        <message>
            <source>Another &amp;file…</source>
            <translation>Otro &amp;archivo…</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>&amp;Olvidar</translation>
        </message>
        <message>
            <source>Ta&amp;ke the readings</source>
            <translation>&amp;Tomar las lecturas</translation>
        </message>
        <message>
            <source>Paste a column of readings</source>
            <translation>Pegar una columna de lecturas</translation>
        </message>
        <message>
            <source>Readings from a file</source>
            <translation>Lecturas de un archivo</translation>
        </message>
        <message>
            <source>not remembered</source>
            <translation>no recordado</translation>
        </message>
        <message>
            <source>Remem&amp;bered</source>
            <translation>&amp;Recordados</translation>
        </message>
        <message>
            <source>Re&amp;member as</source>
            <translation>Recor&amp;dar como</translation>
        </message>
        <message>
            <source>&amp;Text with the readings</source>
            <translation>Te&amp;xto con las lecturas</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>Text and CSV (*.txt *.csv *.tsv *.dat);;All files (*)</source>
            <translation>Texto y CSV (*.txt *.csv *.tsv *.dat);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Copy the column where it stands and paste it here.</source>
            <translation>Copie la columna donde está y péguela aquí.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1</source>
            <translation>Aún no se puede tomar nada: %1</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1 lines are not readings; the first is %2</source>
            <translation>Aún no se puede tomar nada: %1 líneas no son lecturas; la primera es %2</translation>
        </message>
        <message>
            <source>1 reading.</source>
            <translation>1 lectura.</translation>
        </message>
        <message>
            <source>There is no reading in it; look at the lines of heading.</source>
            <translation>No contiene ninguna lectura; mire las líneas de encabezado.</translation>
        </message>
        <message>
            <source>%1 readings.</source>
            <translation>%1 lecturas.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: the column counts the tubes. Choose the one of the absorbance, and this one for the tube.</source>
            <translation>Aún no se puede tomar nada: la columna cuenta los tubos. Elija la de la absorbancia, y esta para el tubo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnModel</name>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Texto</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tubo</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbancia</translation>
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
            <translation>difiere</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>igual</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparedRunsView</name>
        <message>
            <source>Only &amp;what differs</source>
            <translation>&amp;Solo lo que difiere</translation>
        </message>
        <message>
            <source>Two runs side by side</source>
            <translation>Dos tandas una junto a otra</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>The two are the same in everything that is compared here.</source>
            <translation>Las dos son iguales en todo lo que se compara aquí.</translation>
        </message>
        <message>
            <source>%1 of %2 lines differ and stand first.</source>
            <translation>%1 de %2 líneas difieren y van primero.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonModel</name>
        <message>
            <source>Field</source>
            <translation>Campo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonView</name>
        <message>
            <source>Versions</source>
            <translation>Versiones</translation>
        </message>
        <message>
            <source>What differs</source>
            <translation>Qué difiere</translation>
        </message>
        <message>
            <source>This is the version on show. Choose another one to see what differs.</source>
            <translation>Esta es la versión que se muestra. Elija otra para ver qué difiere.</translation>
        </message>
        <message>
            <source>There is no other version of this method.</source>
            <translation>No hay otra versión de este método.</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>versión %1</translation>
        </message>
        <message>
            <source>Fields that differ between %1 and %2: %3. Enter on a version opens it.</source>
            <translation>Campos que difieren entre %1 y %2: %3. Intro en una versión la abre.</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Versión %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CopiesView</name>
        <message>
            <source>Notebooks (*.plateau)</source>
            <translation>Cuadernos (*.plateau)</translation>
        </message>
        <message>
            <source>%1 kB</source>
            <translation>%1 kB</translation>
        </message>
        <message>
            <source>Stopped; nothing was made, and nothing is known of the rest.</source>
            <translation>Detenido; no se ha hecho nada, y no se sabe nada del resto.</translation>
        </message>
        <message>
            <source>Are the records intact?</source>
            <translation>¿Están íntegros los registros?</translation>
        </message>
        <message>
            <source>Verif&amp;y now</source>
            <translation>Veri&amp;ficar ahora</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Detener</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Progreso</translation>
        </message>
        <message>
            <source>Backups</source>
            <translation>Copias de seguridad</translation>
        </message>
        <message>
            <source>There is no backup of this notebook yet: make one now.</source>
            <translation>Aún no hay ninguna copia de seguridad de este cuaderno: haga una ahora.</translation>
        </message>
        <message>
            <source>Backups, the newest first</source>
            <translation>Copias de seguridad, la más reciente primero</translation>
        </message>
        <message>
            <source>Restore &amp;into a new notebook…</source>
            <translation>Re&amp;staurar en un cuaderno nuevo…</translation>
        </message>
        <message>
            <source>&amp;Keep them elsewhere…</source>
            <translation>&amp;Guardarlas en otro lugar…</translation>
        </message>
        <message>
            <source>For keeping elsewhere</source>
            <translation>Para guardar en otro lugar</translation>
        </message>
        <message>
            <source>An archive is a notebook of everything up to the end of a year, read-only; nothing is taken out of this one. An export is everything as JSON and CSV, with a page that says how to read it without the program; imported, it is the same notebook again.</source>
            <translation>Un archivo histórico es un cuaderno con todo hasta el final de un año, solo para leer; de este no se quita nada. Una exportación es todo en JSON y CSV, con una página que dice cómo leerlo sin el programa; importada, vuelve a ser el mismo cuaderno.</translation>
        </message>
        <message>
            <source>&amp;Archive of the year…</source>
            <translation>Archivo histórico del a&amp;ño…</translation>
        </message>
        <message>
            <source>Year to archive</source>
            <translation>Año que se archiva</translation>
        </message>
        <message>
            <source>E&amp;xport everything…</source>
            <translation>E&amp;xportar todo…</translation>
        </message>
        <message>
            <source>No&amp;tebook from an export…</source>
            <translation>C&amp;uaderno a partir de una exportación…</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Hecha</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Tamaño</translation>
        </message>
        <message>
            <source>File</source>
            <translation>Archivo</translation>
        </message>
        <message>
            <source>Verifying</source>
            <translation>Verificando</translation>
        </message>
        <message numerus="yes">
            <source>%n findings. The first: %1: %2. plateau verify lists them all.</source>
            <translation>
                <numerusform>%n hallazgo: %1: %2.</numerusform>
                <numerusform>%n hallazgos. El primero: %1: %2. plateau verify los enumera todos.</numerusform>
            </translation>
        </message>
        <message>
            <source>Made and checked: %1</source>
            <translation>Hecho y comprobado: %1</translation>
        </message>
        <message>
            <source>Restore into a new notebook</source>
            <translation>Restaurar en un cuaderno nuevo</translation>
        </message>
        <message>
            <source>restored.plateau</source>
            <comment>a file name</comment>
            <translation>restaurado.plateau</translation>
        </message>
        <message>
            <source>Folder for backups</source>
            <translation>Carpeta para las copias de seguridad</translation>
        </message>
        <message>
            <source>Archive of %1</source>
            <translation>Archivo histórico de %1</translation>
        </message>
        <message>
            <source>notebook-%1.plateau</source>
            <comment>a file name</comment>
            <translation>cuaderno-%1.plateau</translation>
        </message>
        <message>
            <source>Making the archive</source>
            <translation>Haciendo el archivo histórico</translation>
        </message>
        <message>
            <source>Export everything into a new folder in</source>
            <translation>Exportar todo a una carpeta nueva en</translation>
        </message>
        <message>
            <source>Exporting</source>
            <translation>Exportando</translation>
        </message>
        <message>
            <source>The folder that an export made</source>
            <translation>La carpeta que creó una exportación</translation>
        </message>
        <message>
            <source>Import into a new notebook</source>
            <translation>Importar en un cuaderno nuevo</translation>
        </message>
        <message>
            <source>imported.plateau</source>
            <comment>a file name</comment>
            <translation>importado.plateau</translation>
        </message>
        <message>
            <source>Importing</source>
            <translation>Importando</translation>
        </message>
        <message>
            <source>Stopped; no backup was made.</source>
            <translation>Detenido; no se ha hecho ninguna copia de seguridad.</translation>
        </message>
        <message>
            <source>They are written to %1 when the program starts, every hour and when it ends, if the notebook has changed; work goes on meanwhile. Each is opened and checked. %2</source>
            <translation>Van a %1, si el cuaderno ha cambiado desde la última: al iniciar el programa, cada hora y al terminar, sin interrumpir el trabajo. Cada una se abre y se comprueba. %2</translation>
        </message>
        <message>
            <source>Intact: %1 audit entries, %2 runs, %3 decisions evaluated and %4 checks of equipment worked out again with the same result. Audit head %5.</source>
            <translation>Íntegro: %1 entradas de auditoría, %2 tandas, %3 decisiones evaluadas y %4 comprobaciones de equipos calculadas de nuevo con el mismo resultado. Último hash de auditoría %5.</translation>
        </message>
        <message>
            <source>Restoring</source>
            <translation>Restauración</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Progreso de la copia</translation>
        </message>
        <message>
            <source>Stop the ba&amp;ckup</source>
            <translation>Detener la co&amp;pia</translation>
        </message>
        <message>
            <source>%1 is the notebook as it was then; this one is kept as it is. Open it by File, Another notebook.</source>
            <translation>%1 es el cuaderno tal como era entonces; este se conserva tal como está. Ábralo con Archivo, Otro cuaderno.</translation>
        </message>
        <message>
            <source>Back up no&amp;w</source>
            <translation>Hacer &amp;copia ahora</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DayExample</name>
        <message>
            <source>e.g. %1</source>
            <comment>a day, in an empty field</comment>
            <translation>p. ej. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DecisionPanel</name>
        <message>
            <source>&amp;Decided by</source>
            <translation>&amp;Decidido por</translation>
        </message>
        <message>
            <source>Pa&amp;ssphrase</source>
            <translation>Frase de contrase&amp;ña</translation>
        </message>
        <message>
            <source>Sa&amp;mple by sample</source>
            <translation>Muestra &amp;a muestra</translation>
        </message>
        <message>
            <source>&amp;Accept</source>
            <translation>Ace&amp;ptar</translation>
        </message>
        <message>
            <source>Re&amp;ject</source>
            <translation>Recha&amp;zar</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mot&amp;ivo</translation>
        </message>
        <message>
            <source>by %1</source>
            <translation>por %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>motivo: %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>the decision, not taken yet: %1</source>
            <translation>la decisión, aún no tomada: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>This becomes revision %1. %2</source>
            <translation>Esto será la edición %1. %2</translation>
        </message>
        <message>
            <source>The run was not accepted: first decide on %1, which must be investigated.</source>
            <translation>La tanda no se ha aceptado: decida primero sobre %1, que se debe investigar.</translation>
        </message>
        <message>
            <source>The run was not decided on: how %1 is to be repeated cannot be read: %2.</source>
            <translation>La tanda no se ha decidido: no se puede leer cómo se ha de repetir %1: %2.</translation>
        </message>
        <message>
            <source>Say who decides: type a name.</source>
            <translation>Indique quién decide: escriba un nombre.</translation>
        </message>
        <message>
            <source>The passphrase was taken out, since nobody did anything for a minute: type it again.</source>
            <translation>Se borró la frase de contraseña, porque nadie hizo nada durante un minuto: escríbala de nuevo.</translation>
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
            <translation>analista</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>revisor</translation>
        </message>
        <message>
            <source>head</source>
            <translation>jefe</translation>
        </message>
        <message>
            <source>to be repeated, %1</source>
            <translation>por repetir, %1</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>por repetir</translation>
        </message>
        <message>
            <source>Sample %1: %2</source>
            <translation>Muestra %1: %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>Sample %1: to be repeated, as the evaluation advises</source>
            <translation>Muestra %1: por repetir, como aconseja la evaluación</translation>
        </message>
        <message>
            <source>Accepted by %1, %2</source>
            <translation>Aceptada por %1, %2</translation>
        </message>
        <message>
            <source>Rejected by %1, %2</source>
            <translation>Rechazada por %1, %2</translation>
        </message>
        <message>
            <source>revision %1, signed as %2</source>
            <translation>edición %1, firmada como %2</translation>
        </message>
        <message>
            <source>revision %1, unsigned</source>
            <translation>edición %1, sin firmar</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>signed as %1</source>
            <translation>firmada como %1</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>sin firmar</translation>
        </message>
        <message>
            <source>Put back on the bench by %1, %2 (%3); revision %4 begins</source>
            <translation>Devuelta a la mesa por %1, %2 (%3); empieza la edición %4</translation>
        </message>
        <message>
            <source>%1: %2 %3 by %4</source>
            <translation>%1: %2 %3 por %4</translation>
        </message>
        <message>
            <source>%1 (stands)</source>
            <translation>%1 (vigente)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DestinationsModel</name>
        <message>
            <source>On the bench</source>
            <translation>En la mesa</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Gradilla %1</translation>
        </message>
        <message>
            <source>Books</source>
            <translation>Libros</translation>
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
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro.</translation>
        </message>
        <message>
            <source>Nothing was ticked: %1 of tube %2 in rack %3 is not read yet, and after %4 it cannot be. Read it first, or tick the tube on the Pipette page.</source>
            <translation>No se ha marcado nada: %1 del tubo %2 de la gradilla %3 aún no se ha leído, y después de %4 ya no se podrá. Léalo primero o marque el tubo en la página Pipetear.</translation>
        </message>
        <message>
            <source>Nothing was ticked: by the book the lot does not hold another tube of this. The Pipette page says which lot comes next.</source>
            <translation>No se ha marcado nada: según las existencias, el lote no alcanza para otro tubo. La página Pipetear dice qué lote sigue.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftFields</name>
        <message>
            <source>%1, from</source>
            <translation>%1, desde</translation>
        </message>
        <message>
            <source>to</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>%1, to</source>
            <translation>%1, hasta</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftTables</name>
        <message>
            <source>Wavelength (nm)</source>
            <translation>Longitud de onda (nm)</translation>
        </message>
        <message>
            <source>Absorptivity (L/(mol cm))</source>
            <translation>Absortividad (L/(mol cm))</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Componente</translation>
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
            <translation>Papel</translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Reactivo</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Diluent</source>
            <translation>Diluyente</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Iniciador</translation>
        </message>
        <message>
            <source>from</source>
            <translation>desde</translation>
        </message>
        <message>
            <source>Smallest volume allowed (mL)</source>
            <translation>Volumen mínimo admitido (mL)</translation>
        </message>
        <message>
            <source>to</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>Largest volume allowed (mL)</source>
            <translation>Volumen máximo admitido (mL)</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspensión</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Paso</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Añadir</translation>
        </message>
        <message>
            <source>Mix</source>
            <translation>Mezclar</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Esperar</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Leer</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>Shortest wait (min)</source>
            <translation>Espera mínima (min)</translation>
        </message>
        <message>
            <source>Longest wait (min)</source>
            <translation>Espera máxima (min)</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>Lowest temperature (°C)</source>
            <translation>Temperatura mínima (°C)</translation>
        </message>
        <message>
            <source>Highest temperature (°C)</source>
            <translation>Temperatura máxima (°C)</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>In the tube afterwards (mL)</source>
            <translation>En el tubo después (mL)</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>M (g/mol)</source>
            <translation>M (g/mol)</translation>
        </message>
        <message>
            <source>Molar mass (g/mol)</source>
            <translation>Masa molar (g/mol)</translation>
        </message>
        <message>
            <source>n</source>
            <translation>n</translation>
        </message>
        <message>
            <source>Chromophore molecules for each molecule</source>
            <translation>Moléculas de cromóforo por cada molécula</translation>
        </message>
        <message>
            <source>From (g/L)</source>
            <translation>Desde (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold from (g/L)</source>
            <translation>Las muestras suelen contener desde (g/L)</translation>
        </message>
        <message>
            <source>To (g/L)</source>
            <translation>Hasta (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold up to (g/L)</source>
            <translation>Las muestras suelen contener hasta (g/L)</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Señal</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Diferencia</translation>
        </message>
        <message>
            <source>Coupled indicator</source>
            <translation>Indicador acoplado</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>From reading</source>
            <translation>Lectura desde</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Intermedia</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Lectura intermedia</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>To reading</source>
            <translation>Lectura hasta</translation>
        </message>
        <message>
            <source>Quantity</source>
            <translation>Magnitud</translation>
        </message>
        <message>
            <source>From the method</source>
            <translation>Del método</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Veces</translation>
        </message>
        <message>
            <source>this method</source>
            <translation>este método</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftedUncertainty</name>
        <message>
            <source>typed for this run, in place of %1 (%2)</source>
            <translation>escrito para esta tanda, en lugar de %1 (%2)</translation>
        </message>
        <message>
            <source>whoever plans the run</source>
            <translation>quien planifica la tanda</translation>
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
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>Ret&amp;ype  Esc</source>
            <translation>&amp;Reescribir  Esc</translation>
        </message>
        <message>
            <source>Read aga&amp;in</source>
            <translation>&amp;Leer de nuevo</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>Re&amp;visar esta gradilla</translation>
        </message>
        <message>
            <source>Absorbance of %1</source>
            <translation>Absorbancia de %1</translation>
        </message>
        <message>
            <source>Type the absorbance as the photometer shows it, then press Enter.</source>
            <translation>Escriba la absorbancia como la muestra el fotómetro y pulse Intro.</translation>
        </message>
        <message>
            <source>Say why the stored reading is corrected; it stays readable beside the new one.</source>
            <translation>Indique por qué se corrige la lectura guardada; sigue legible junto a la nueva.</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Indique por qué el tubo sí cuenta y pulse Intro.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Indique qué le pasó al tubo y pulse Intro.</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbancia</translation>
        </message>
        <message>
            <source>R&amp;eason for the correction</source>
            <translation>&amp;Motivo de la corrección</translation>
        </message>
        <message>
            <source>Why th&amp;e tube counts after all</source>
            <translation>&amp;Por qué el tubo sí cuenta</translation>
        </message>
        <message>
            <source>What happ&amp;ened to the tube</source>
            <translation>&amp;Qué le pasó al tubo</translation>
        </message>
        <message>
            <source>It &amp;counts</source>
            <translation>&amp;Cuenta</translation>
        </message>
        <message>
            <source>It does not &amp;count</source>
            <translation>No c&amp;uenta</translation>
        </message>
        <message>
            <source>&amp;Keep as read  Enter</source>
            <translation>C&amp;onservar lo leído  Intro</translation>
        </message>
        <message>
            <source>&amp;Store the correction</source>
            <translation>&amp;Guardar la corrección</translation>
        </message>
        <message>
            <source>&amp;Store as a further reading</source>
            <translation>&amp;Guardar como una lectura más</translation>
        </message>
        <message>
            <source>Correct the last one &amp;instead</source>
            <translation>Correg&amp;ir en su lugar la última</translation>
        </message>
        <message>
            <source>Tube not spoilt  /</source>
            <translation>Tubo no malogrado  /</translation>
        </message>
        <message>
            <source>Tube spoilt  /</source>
            <translation>Tubo malogrado  /</translation>
        </message>
        <message>
            <source>Not stored yet: the table and the results show what the correction would do. Enter goes to the reason, Enter there stores it, Esc leaves the reading as it is.</source>
            <translation>Aún sin guardar: la tabla y los resultados muestran lo que haría la corrección. Intro pasa al motivo, Intro ahí la guarda, Esc deja la lectura como está.</translation>
        </message>
        <message>
            <source>Keep the stored va&amp;lue</source>
            <translation>Conservar e&amp;l valor guardado</translation>
        </message>
        <message>
            <source>Cance&amp;l  Esc</source>
            <translation>Cance&amp;lar  Esc</translation>
        </message>
        <message>
            <source>Read again: what was read before stays, and the result rests on the series. Esc cancels.</source>
            <translation>Leer de nuevo: lo leído antes queda, y el resultado se apoya en la serie. Esc cancela.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Equipment</name>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Line %1</source>
            <translation>Línea %1</translation>
        </message>
        <message>
            <source>The lines</source>
            <translation>Las líneas</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1 every %2 days</source>
            <translation>%1 cada %2 días</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>one reading:</source>
            <translation>una lectura:</translation>
        </message>
        <message>
            <source>absorbance scale:</source>
            <translation>escala de absorbancia:</translation>
        </message>
        <message>
            <source>path length:</source>
            <translation>camino óptico:</translation>
        </message>
        <message>
            <source>a volume:</source>
            <translation>un volumen:</translation>
        </message>
        <message>
            <source>one weighing:</source>
            <translation>una pesada:</translation>
        </message>
        <message>
            <source>temperature:</source>
            <translation>temperatura:</translation>
        </message>
        <message>
            <source>The name</source>
            <translation>El nombre</translation>
        </message>
        <message>
            <source>The serial number</source>
            <translation>El número de serie</translation>
        </message>
        <message>
            <source>The volume</source>
            <translation>El volumen</translation>
        </message>
        <message>
            <source>The smallest volume</source>
            <translation>El volumen mínimo</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Qué se comprueba</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Hallado</translation>
        </message>
        <message>
            <source>Allowed</source>
            <translation>Admitido</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Límite según</translation>
        </message>
        <message>
            <source>no limit</source>
            <translation>sin límite</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>no superada</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentModel</name>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Qué es</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Next check due</source>
            <translation>Próxima verificación</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Serial number</source>
            <translation>Número de serie</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Equipos</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Qué se comprueba</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, kind or state</source>
            <translation>&amp;Buscar nombre, clase o estado</translation>
        </message>
        <message>
            <source>Nothing is in the book yet. Add the photometer, pipettes, flasks, balance, thermometers and cuvettes that are checked; their checks then say what is due, warn of what failed, and give the budgets their figures.</source>
            <translation>Aún no hay nada en el libro. Añada el fotómetro, las pipetas, los matraces, la balanza, los termómetros y las cubetas que se comprueban; sus comprobaciones dicen entonces qué vence, advierten de lo no superado y dan sus cifras a los balances.</translation>
        </message>
        <message>
            <source>No item contains all of these words. Remove one to find more.</source>
            <translation>Ningún equipo tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>Out of &amp;use too</source>
            <translation>También fuera de &amp;uso</translation>
        </message>
        <message>
            <source>&amp;Add an item…</source>
            <translation>&amp;Añadir un equipo…</translation>
        </message>
        <message>
            <source>An item of equipment or a check, not stored yet</source>
            <translation>Un equipo o una comprobación, aún sin guardar</translation>
        </message>
        <message>
            <source>In the book: %1. Key its first check.</source>
            <translation>En el libro: %1. Introduzca su primera comprobación.</translation>
        </message>
        <message>
            <source>%1 is changed; its checks keep what held then.</source>
            <translation>%1 está cambiado; sus comprobaciones conservan lo que valía entonces.</translation>
        </message>
        <message>
            <source>The check is in the book.</source>
            <translation>La comprobación está en el libro.</translation>
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
            <translation>El método aún no se puede probar: corrija primero lo que nombra la lista de problemas.</translation>
        </message>
        <message>
            <source>Type the readings of the blank and of the sample.</source>
            <translation>Escriba las lecturas del blanco y de la muestra.</translation>
        </message>
        <message>
            <source>example</source>
            <translation>ejemplo</translation>
        </message>
        <message>
            <source>dilution, take</source>
            <translation>dilución, tomar</translation>
        </message>
        <message>
            <source>dilution, make up to</source>
            <translation>dilución, enrasar a</translation>
        </message>
        <message>
            <source>volume of the sample</source>
            <translation>volumen de la muestra</translation>
        </message>
        <message>
            <source>%1 of the blank</source>
            <translation>%1 del blanco</translation>
        </message>
        <message>
            <source>%1 of the sample</source>
            <translation>%1 de la muestra</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ExampleSection</name>
        <message>
            <source>Reading</source>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blanco</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>The calculation written out</source>
            <translation>El cálculo desarrollado</translation>
        </message>
        <message>
            <source>Try the method with numbers of your own</source>
            <translation>Probar el método con números propios</translation>
        </message>
        <message>
            <source>One blank and one sample. Nothing of it is kept.</source>
            <translation>Un blanco y una muestra. No se conserva nada de ello.</translation>
        </message>
        <message>
            <source>Readings of the example</source>
            <translation>Lecturas del ejemplo</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>With its uncertainty, from the usual standard uncertainties</source>
            <translation>Con su incertidumbre, a partir de las incertidumbres típicas habituales</translation>
        </message>
        <message>
            <source>Sample in the tube, if not as usual</source>
            <translation>Muestra en el tubo, si no es la habitual</translation>
        </message>
        <message>
            <source>Dilution, if any: take</source>
            <translation>Dilución, si la hay: tomar</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>enrasar a</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Feasibility</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>The hands are never free for a minute until the last reading.</source>
            <translation>Las manos no quedan libres ni un minuto hasta la última lectura.</translation>
        </message>
        <message>
            <source>Hands free, counted from the first start: %1.</source>
            <translation>Manos libres, contando desde el primer inicio: %1.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Start a tube every %1: then every tube is read within its waiting times.</source>
            <translation>Inicie un tubo cada %1: así cada tubo se lee dentro de sus tiempos de espera.</translation>
        </message>
        <message>
            <source>The tube can be read within its waiting times.</source>
            <translation>El tubo se puede leer dentro de sus tiempos de espera.</translation>
        </message>
        <message>
            <source>Pipetting before the first start takes about %1.</source>
            <translation>El pipeteo antes del primer inicio lleva alrededor de %1.</translation>
        </message>
        <message>
            <source>First reading %1 after the first start, last one done after %2.</source>
            <translation>Primera lectura %1 después del primer inicio; la última queda hecha al cabo de %2.</translation>
        </message>
        <message>
            <source>Not even one tube is done within %1: this method takes longer. Allow more time.</source>
            <translation>Ni siquiera un tubo queda hecho en %1: este método lleva más. Conceda más tiempo.</translation>
        </message>
        <message>
            <source>One person cannot read %1 tubes within their waiting times in %2: at most %3.</source>
            <translation>Una persona no puede leer %1 tubos dentro de sus tiempos de espera en %2: como máximo %3.</translation>
        </message>
        <message>
            <source>Blanks and standards alone fill such a rack; fewer of them, or more time, leave room for samples.</source>
            <translation>Los blancos y los patrones solos ya llenan una gradilla así; menos de ellos, o más tiempo, dejan sitio para muestras.</translation>
        </message>
        <message>
            <source>Allow more time, or split it into %1 racks of %2 tubes, each with its own blanks and standards.</source>
            <translation>Conceda más tiempo o divídala en %1 gradillas de %2 tubos, cada una con sus propios blancos y patrones.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>second rack (%1, tubes: %2)</source>
            <translation>segunda gradilla (%1, tubos: %2)</translation>
        </message>
        <message>
            <source>A %1 cannot be done beside this one in the time allowed; start it afterwards.</source>
            <translation>Una %1 no se puede hacer junto a esta en el tiempo concedido; empiécela después.</translation>
        </message>
        <message>
            <source>A %1 does not fit into the waiting times of this one: it can start at %2, when this one is done.</source>
            <translation>Una %1 no encuentra sitio en las esperas de esta: puede empezar a los %2, cuando esta esté hecha.</translation>
        </message>
        <message>
            <source>A %1 can start at %2, a tube every %3; both racks keep their waiting times, and the last reading is done at %4.</source>
            <translation>Una %1 puede empezar a los %2, un tubo cada %3; las dos gradillas se mantienen dentro de sus esperas, y la última lectura está hecha a los %4.</translation>
        </message>
        <message>
            <source>It is pipetted before either starts, too: about %1 more.</source>
            <translation>También se pipetea antes de que empiece ninguna de las dos: unos %1 más.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FieldNote</name>
        <message>
            <source>and %1 more</source>
            <translation>y %1 más</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FirstStart</name>
        <message>
            <source>&amp;Make a notebook for your laboratory</source>
            <translation>&amp;Crear un cuaderno para su laboratorio</translation>
        </message>
        <message>
            <source>&amp;Use a notebook that is there already</source>
            <translation>&amp;Usar un cuaderno que ya existe</translation>
        </message>
        <message>
            <source>&amp;Try the sample notebook</source>
            <translation>&amp;Probar el cuaderno de ejemplo</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <translation>&amp;Empezar</translation>
        </message>
        <message>
            <source>Plateau: the first start</source>
            <translation>Plateau: el primer inicio</translation>
        </message>
        <message>
            <source>Where is the notebook?</source>
            <translation>¿Dónde está el cuaderno?</translation>
        </message>
        <message>
            <source>Plateau keeps runs, readings, lots and decisions in one file, the notebook. It is only ever added to, and backed up automatically.</source>
            <translation>Plateau guarda tandas, lecturas, lotes y decisiones en un solo archivo, el cuaderno. A este solo se le añaden datos, y sus copias de seguridad se hacen automáticamente.</translation>
        </message>
        <message>
            <source>The bench, the books and the control charts of an invented company that makes cider and packs dried fruit. It is a copy, thrown away when the window closes.</source>
            <translation>La mesa, los libros y los gráficos de control de una empresa inventada que elabora sidra y envasa frutas desecadas. Es una copia, que se desecha al cerrar la ventana.</translation>
        </message>
        <message>
            <source>The notebook %1 is not there. See that its disk is connected and begin again, or choose where it is now.</source>
            <translation>El cuaderno %1 no está ahí. Compruebe que su disco está conectado y empiece de nuevo, o elija dónde está ahora.</translation>
        </message>
        <message>
            <source>Notebooks (*.plateau);;All files (*)</source>
            <translation>Cuadernos (*.plateau);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Make a notebook</source>
            <translation>Crear un cuaderno</translation>
        </message>
        <message>
            <source>Use a notebook</source>
            <translation>Usar un cuaderno</translation>
        </message>
        <message>
            <source>Laborator&amp;y's name</source>
            <translation>Nombre del &amp;laboratorio</translation>
        </message>
        <message>
            <source>Your &amp;name, as it stands on records</source>
            <translation>Su &amp;nombre, tal como figura en los registros</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>Arc&amp;hivo</translation>
        </message>
        <message>
            <source>&amp;Elsewhere…</source>
            <translation>En &amp;otro lugar…</translation>
        </message>
        <message>
            <source>F&amp;ile</source>
            <translation>Arch&amp;ivo</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <translation>Ele&amp;gir…</translation>
        </message>
        <message>
            <source>The laboratory's name is still missing; it heads every report.</source>
            <translation>Aún falta el nombre del laboratorio; encabeza cada informe.</translation>
        </message>
        <message>
            <source>Your name is still missing; it stands on whatever you record.</source>
            <translation>Aún falta su nombre; figura en todo lo que usted registra.</translation>
        </message>
        <message>
            <source>The file is still missing: its whole path, such as %1.</source>
            <translation>Aún falta el archivo: su ruta completa, como %1.</translation>
        </message>
        <message>
            <source>There is no file %1; see that the name is right.</source>
            <translation>No hay ningún archivo %1; compruebe que el nombre es correcto.</translation>
        </message>
        <message>
            <source>There is a file %1 already; use that notebook, or give the new one another name.</source>
            <translation>Ya hay un archivo %1; use ese cuaderno, o dé otro nombre al nuevo.</translation>
        </message>
        <message>
            <source>A first rac&amp;k in ten minutes</source>
            <translation>Una primera gra&amp;dilla en diez minutos</translation>
        </message>
        <message>
            <source>The help for the first minutes with the sample notebook; F1 opens it as well</source>
            <translation>La ayuda para los primeros minutos con el cuaderno de ejemplo; F1 también la abre</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <translation>Cer&amp;rar</translation>
        </message>
        <message>
            <source>Plateau: another notebook</source>
            <translation>Plateau: otro cuaderno</translation>
        </message>
        <message>
            <source>Which notebook?</source>
            <translation>¿Qué cuaderno?</translation>
        </message>
        <message>
            <source>It opens in a window of its own; the one that is open now stays as it is.</source>
            <translation>Se abre en una ventana propia; el que está abierto ahora sigue como está.</translation>
        </message>
        <message>
            <source>&amp;Open this notebook whenever the program starts</source>
            <translation>Abrir &amp;siempre este cuaderno al iniciar el programa</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::GlassForm</name>
        <message>
            <source>Pipette</source>
            <translation>Pipeta</translation>
        </message>
        <message>
            <source>from mL</source>
            <translation>desde mL</translation>
        </message>
        <message>
            <source>Smallest volume (mL)</source>
            <translation>Volumen mínimo (mL)</translation>
        </message>
        <message>
            <source>to mL</source>
            <translation>hasta mL</translation>
        </message>
        <message>
            <source>Largest volume (mL)</source>
            <translation>Volumen máximo (mL)</translation>
        </message>
        <message>
            <source>in steps of mL</source>
            <translation>en pasos de mL</translation>
        </message>
        <message>
            <source>Setting increment (mL); empty for a fixed-volume pipette</source>
            <translation>Paso con el que se puede ajustar (mL); vacío para una pipeta de volumen fijo</translation>
        </message>
        <message>
            <source>u %</source>
            <translation>u %</translation>
        </message>
        <message>
            <source>Relative standard uncertainty of a volume (k = 1), in %</source>
            <translation>Incertidumbre típica relativa de un volumen (k = 1), en %</translation>
        </message>
        <message>
            <source>Volumetric flask</source>
            <translation>Matraz aforado</translation>
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
            <translation>Incertidumbre típica relativa del volumen (k = 1), en %</translation>
        </message>
        <message>
            <source>Pipettes and flasks</source>
            <translation>Pipetas y matraces</translation>
        </message>
        <message>
            <source>Dilutions are planned with these, and their uncertainties go into the budgets. u: relative standard uncertainty (k = 1) of a volume. %1</source>
            <translation>Con ellos se planifican las diluciones, y sus incertidumbres entran en los balances. u: incertidumbre típica relativa (k = 1) de un volumen. %1</translation>
        </message>
        <message>
            <source>Pipettes</source>
            <translation>Pipetas</translation>
        </message>
        <message>
            <source>Volumetric flasks</source>
            <translation>Matraces aforados</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpDesk</name>
        <message>
            <source>en</source>
            <comment>the folder of the help in this language; en where there is none</comment>
            <translation>es</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpListModel</name>
        <message>
            <source>%1, in %2: %3</source>
            <comment>a section of the help, its page, a line of it</comment>
            <translation>%1, en %2: %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpWindow</name>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Atrás</translation>
        </message>
        <message>
            <source>&amp;Forward</source>
            <translation>A&amp;delante</translation>
        </message>
        <message>
            <source>&amp;Search the help</source>
            <translation>&amp;Buscar en la ayuda</translation>
        </message>
        <message>
            <source>To what was read before (Alt+Left)</source>
            <translation>A lo que se leyó antes (Alt+Izquierda)</translation>
        </message>
        <message>
            <source>To what was read after it (Alt+Right)</source>
            <translation>A lo que se leyó después (Alt+Derecha)</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Adelante</translation>
        </message>
        <message>
            <source>Search</source>
            <translation>Buscar</translation>
        </message>
        <message>
            <source>Leave the search, then the help</source>
            <translation>Dejar la búsqueda y después la ayuda</translation>
        </message>
        <message>
            <source>Close the help</source>
            <translation>Cerrar la ayuda</translation>
        </message>
        <message>
            <source>No section contains all of these words. Try fewer of them, or only their first letters.</source>
            <translation>Ninguna sección contiene todas estas palabras. Pruebe con menos palabras o solo con su comienzo.</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Contenido</translation>
        </message>
        <message>
            <source>Sections found</source>
            <translation>Secciones encontradas</translation>
        </message>
        <message>
            <source>%1 lies outside the help and is not opened from here.</source>
            <translation>%1 está fuera de la ayuda y no se abre desde aquí.</translation>
        </message>
        <message>
            <source>The help has no page “%1” yet.</source>
            <translation>La ayuda todavía no tiene la página «%1».</translation>
        </message>
        <message>
            <source>This page exists in English only.</source>
            <translation>Esta página solo está en inglés.</translation>
        </message>
        <message>
            <source>No page of the help is part of this program.</source>
            <translation>Este programa no contiene ninguna página de ayuda.</translation>
        </message>
        <message>
            <source>Help of Plateau</source>
            <translation>Ayuda de Plateau</translation>
        </message>
        <message>
            <source>%1 – Help of Plateau</source>
            <translation>%1 – Ayuda de Plateau</translation>
        </message>
        <message>
            <source>Page of the help</source>
            <translation>Página de la ayuda</translation>
        </message>
        <message>
            <source>Sections found: %1</source>
            <translation>Secciones encontradas: %1</translation>
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
            <translation>%1, corregida</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>de un archivo</translation>
        </message>
        <message>
            <source>%1 of the line “%2”</source>
            <translation>%1 de la línea «%2»</translation>
        </message>
        <message>
            <source>read again</source>
            <translation>leída de nuevo</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tubo</translation>
        </message>
        <message>
            <source>Point</source>
            <translation>Punto</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbancia</translation>
        </message>
        <message>
            <source>As keyed</source>
            <translation>Tal como se introdujo</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Hora</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentIntake</name>
        <message>
            <source>Not remembered</source>
            <translation>No recordado</translation>
        </message>
        <message>
            <source>What was set is used now, but not remembered for the next time: %1 can't be written.</source>
            <translation>Lo ajustado se usa ahora, pero no se recuerda para la próxima vez: no se puede escribir en %1.</translation>
        </message>
        <message>
            <source>Not listening to a photometer.</source>
            <translation>No se escucha a ningún fotómetro.</translation>
        </message>
        <message>
            <source>Listening to %1: %2</source>
            <translation>Escuchando a %1: %2</translation>
        </message>
        <message>
            <source>Waiting for %1: %2</source>
            <translation>Esperando a %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentRoute</name>
        <message>
            <source>The photometer sent “%1”: %2</source>
            <translation>El fotómetro envió «%1»: %2</translation>
        </message>
        <message>
            <source>A reading has come in that waits for an answer: go to Read of rack %1.</source>
            <translation>Llegó una lectura que espera respuesta: vaya a Leer de la gradilla %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemForm</name>
        <message>
            <source>It &amp;is in use</source>
            <translation>&amp;Está en uso</translation>
        </message>
        <message>
            <source>&amp;What it is</source>
            <translation>&amp;Qué es</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>Nom&amp;bre</translation>
        </message>
        <message>
            <source>Serial or inventory n&amp;umber</source>
            <translation>Número &amp;de serie o de inventario</translation>
        </message>
        <message>
            <source>Volume, or the &amp;largest (mL)</source>
            <translation>Volumen, o el ma&amp;yor (mL)</translation>
        </message>
        <message>
            <source>S&amp;mallest volume it is used for (mL)</source>
            <translation>Volumen más &amp;pequeño con el que se usa (mL)</translation>
        </message>
        <message>
            <source>Whole days; empty where this is not checked.</source>
            <translation>Días enteros; vacío si esto no se comprueba.</translation>
        </message>
        <message>
            <source>Check %1 every (days)</source>
            <translation>Comprobar %1 cada (días)</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Motivo del &amp;cambio</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Gua&amp;rdar en el libro</translation>
        </message>
        <message>
            <source>Add an item</source>
            <translation>Añadir un equipo</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>Cambiar %1</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Indique por qué se cambia; el libro lo conserva.</translation>
        </message>
        <message>
            <source>Give pipettes, flasks and the photometer the names they have in Laboratory: what a check finds then replaces the list's uncertainty, and a run that used one which failed or was overdue says so.</source>
            <translation>Dé a las pipetas, los matraces y el fotómetro los nombres que tienen en Laboratorio: lo que halla una comprobación ocupa entonces el lugar de la incertidumbre de la lista, y una tanda lo dice si alguno había fallado o tenía la comprobación vencida.</translation>
        </message>
        <message>
            <source>Back  Esc</source>
            <translation>Volver  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemView</name>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Comprobación</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>anulada</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>no superada</translation>
        </message>
        <message>
            <source>How it stands</source>
            <translation>Cómo está</translation>
        </message>
        <message>
            <source>&amp;Key a check…</source>
            <translation>&amp;Introducir una comprobación…</translation>
        </message>
        <message>
            <source>&amp;Change the item…</source>
            <translation>&amp;Cambiar el equipo…</translation>
        </message>
        <message>
            <source>Checks of the item</source>
            <translation>Comprobaciones del equipo</translation>
        </message>
        <message>
            <source>No check is in the book yet. Key the first one; until then budgets use what the laboratory's list says.</source>
            <translation>Aún no hay ninguna comprobación en el libro. Introduzca la primera; hasta entonces los balances toman lo que dice la lista del laboratorio.</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Comprobaciones</translation>
        </message>
        <message>
            <source>Findings of the check</source>
            <translation>Hallazgos de la comprobación</translation>
        </message>
        <message>
            <source>Keyed &amp;wrongly, because</source>
            <translation>Introducida por &amp;error, porque</translation>
        </message>
        <message>
            <source>Keyed wrongly, because</source>
            <translation>Introducida por error, porque</translation>
        </message>
        <message>
            <source>&amp;Take it back</source>
            <translation>&amp;Anular</translation>
        </message>
        <message>
            <source>The chosen check</source>
            <translation>La comprobación elegida</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Out of use: nothing is due, and no budget rests on it.</source>
            <translation>Fuera de uso: no vence nada, y ningún balance se apoya en él.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Choose a check to see what was found.</source>
            <translation>Elija una comprobación para ver qué se halló.</translation>
        </message>
        <message>
            <source>Check %1 of %2: %3.</source>
            <translation>Comprobación %1 del %2: %3.</translation>
        </message>
        <message>
            <source>Standard uncertainty (k = 1) of %1.</source>
            <translation>Incertidumbre típica (k = 1): %1.</translation>
        </message>
        <message>
            <source>Source: %1.</source>
            <translation>Fuente: %1.</translation>
        </message>
        <message>
            <source>Note: %1</source>
            <translation>Nota: %1</translation>
        </message>
        <message>
            <source>Say why it does not count; the book keeps it.</source>
            <translation>Indique por qué no cuenta; el libro lo conserva.</translation>
        </message>
        <message>
            <source>Taken back: the check stays in the book and does not count.</source>
            <translation>Anulada: la comprobación se queda en el libro y no cuenta.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Keys</name>
        <message>
            <source>Everywhere</source>
            <translation>En todas partes</translation>
        </message>
        <message>
            <source>Tab, Shift+Tab</source>
            <translation>Tab, Mayús+Tab</translation>
        </message>
        <message>
            <source>To the next field or button, to the one before</source>
            <translation>Al campo o botón siguiente, al anterior</translation>
        </message>
        <message>
            <source>Alt and the underlined letter</source>
            <translation>Alt y la letra subrayada</translation>
        </message>
        <message>
            <source>To the field, button or tab with that letter</source>
            <translation>Al campo, botón o pestaña con esa letra</translation>
        </message>
        <message>
            <source>F10</source>
            <translation>F10</translation>
        </message>
        <message>
            <source>Into the menus; arrow keys, Enter and Esc from there</source>
            <translation>A los menús; desde ahí, flechas, Intro y Esc</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Intro</translation>
        </message>
        <message>
            <source>In a list: open; on a button: press; in a form: what its main button does</source>
            <translation>En una lista: abrir; en un botón: pulsarlo; en un formulario: lo que hace su botón principal</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Back to the list, or leave what was begun; asks about anything not stored</source>
            <translation>Volver a la lista, o dejar lo empezado; se pregunta por lo que no está guardado</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Flecha abajo</translation>
        </message>
        <message>
            <source>In a field with an arrow: what is offered; in a search: into the list</source>
            <translation>En un campo con flecha: lo que se ofrece; en una búsqueda: a la lista</translation>
        </message>
        <message>
            <source>New run</source>
            <translation>Nueva tanda</translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipetear</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Leer</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Tubos frente al tiempo</translation>
        </message>
        <message>
            <source>Review, sample by sample</source>
            <translation>Revisión, muestra a muestra</translation>
        </message>
        <message>
            <source>Ctrl and an arrow key</source>
            <translation>Ctrl y una flecha</translation>
        </message>
        <message>
            <source>In the rack: move the tube</source>
            <translation>En la gradilla: mover el tubo</translation>
        </message>
        <message>
            <source>Space</source>
            <translation>Espacio</translation>
        </message>
        <message>
            <source>Tick the tube; the next one waits</source>
            <translation>Marcar el tubo; el siguiente espera</translation>
        </message>
        <message>
            <source>Tick the row</source>
            <translation>Marcar la fila</translation>
        </message>
        <message>
            <source>-, Backspace</source>
            <translation>-, Retroceso</translation>
        </message>
        <message>
            <source>Take back the last tick</source>
            <translation>Deshacer la última marca</translation>
        </message>
        <message>
            <source>The tube is spoilt; asks why</source>
            <translation>El tubo está malogrado; pregunta por qué</translation>
        </message>
        <message>
            <source>Store the reading, or ask about it where it cannot be right</source>
            <translation>Guardar la lectura, o preguntar por ella donde no puede ser correcta</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Arriba, Abajo</translation>
        </message>
        <message>
            <source>The tube before, the next one</source>
            <translation>El tubo anterior, el siguiente</translation>
        </message>
        <message>
            <source>Space, in an empty entry</source>
            <translation>Espacio, en una entrada vacía</translation>
        </message>
        <message>
            <source>What is next is done now</source>
            <translation>Marcar lo siguiente como hecho</translation>
        </message>
        <message>
            <source>Type the reading again; leave it as it was</source>
            <translation>Introducir la lectura de nuevo; dejarla como estaba</translation>
        </message>
        <message>
            <source>Up, Down, Page Up, Page Down, Home, End</source>
            <translation>Arriba, Abajo, Re Pág, Av Pág, Inicio, Fin</translation>
        </message>
        <message>
            <source>From tube to tube</source>
            <translation>De tubo en tubo</translation>
        </message>
        <message>
            <source>To that tube</source>
            <translation>A ese tubo</translation>
        </message>
        <message>
            <source>Accept the sample</source>
            <translation>Aceptar la muestra</translation>
        </message>
        <message>
            <source>Reject the sample</source>
            <translation>Rechazar la muestra</translation>
        </message>
        <message>
            <source>Delete, Backspace</source>
            <translation>Supr, Retroceso</translation>
        </message>
        <message>
            <source>Undecided again</source>
            <translation>De nuevo sin decidir</translation>
        </message>
        <message>
            <source>Enter, F2</source>
            <translation>Intro, F2</translation>
        </message>
        <message>
            <source>Change the cell</source>
            <translation>Cambiar la celda</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Gráficos de control</translation>
        </message>
        <message>
            <source>Tables that are typed in</source>
            <translation>Tablas en las que se escribe</translation>
        </message>
        <message>
            <source>Methods, Laboratory, Limits, Samples</source>
            <translation>Métodos, Laboratorio, Límites, Muestras</translation>
        </message>
        <message>
            <source>Left, Right</source>
            <translation>Izquierda, Derecha</translation>
        </message>
        <message>
            <source>From point to point</source>
            <translation>De punto en punto</translation>
        </message>
        <message>
            <source>Ctrl+Left, Ctrl+Right</source>
            <translation>Ctrl+Izquierda, Ctrl+Derecha</translation>
        </message>
        <message>
            <source>From one point out of control to the next</source>
            <translation>De un punto fuera de control al siguiente</translation>
        </message>
        <message>
            <source>Page Up, Page Down</source>
            <translation>Re Pág, Av Pág</translation>
        </message>
        <message>
            <source>Ten points on</source>
            <translation>Diez puntos más allá</translation>
        </message>
        <message>
            <source>Home, End</source>
            <translation>Inicio, Fin</translation>
        </message>
        <message>
            <source>The first point, the last one</source>
            <translation>El primer punto, el último</translation>
        </message>
        <message>
            <source>Fewer points in view, more of them</source>
            <translation>Menos puntos a la vista, más puntos</translation>
        </message>
        <message>
            <source>All points</source>
            <translation>Todos los puntos</translation>
        </message>
        <message>
            <source>Open the run of the point</source>
            <translation>Abrir la tanda del punto</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Supr</translation>
        </message>
        <message>
            <source>Empty the cell</source>
            <translation>Vaciar la celda</translation>
        </message>
        <message>
            <source>Insert, Ctrl+Delete</source>
            <translation>Insert, Ctrl+Supr</translation>
        </message>
        <message>
            <source>New row, remove the row</source>
            <translation>Fila nueva, quitar la fila</translation>
        </message>
        <message>
            <source>Alt+Up, Alt+Down</source>
            <translation>Alt+Arriba, Alt+Abajo</translation>
        </message>
        <message>
            <source>Move the row</source>
            <translation>Mover la fila</translation>
        </message>
        <message>
            <source>Ctrl+Z</source>
            <translation>Ctrl+Z</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Ctrl+V</source>
            <translation>Ctrl+V</translation>
        </message>
        <message>
            <source>Paste a column of names into the table of samples</source>
            <translation>Pegar una columna de nombres en la tabla de muestras</translation>
        </message>
        <message>
            <source>Ctrl+S</source>
            <translation>Ctrl+S</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Alt+1, Alt+2 …</source>
            <translation>Alt+1, Alt+2 …</translation>
        </message>
        <message>
            <source>To the sections of a method or of the laboratory</source>
            <translation>A las secciones de un método o del laboratorio</translation>
        </message>
        <message>
            <source>%1 menu</source>
            <translation>Menú %1</translation>
        </message>
        <message>
            <source>Keys of Plateau</source>
            <translation>Teclas de Plateau</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>Everything can be done without the mouse.</source>
            <translation>Todo se puede hacer sin el ratón.</translation>
        </message>
        <message>
            <source>where</source>
            <translation>dónde</translation>
        </message>
        <message>
            <source>keys</source>
            <translation>teclas</translation>
        </message>
        <message>
            <source>what they do</source>
            <translation>qué hacen</translation>
        </message>
        <message>
            <source>F1</source>
            <translation>F1</translation>
        </message>
        <message>
            <source>The help for what is in front, in dialogs too</source>
            <translation>La ayuda sobre lo que está a la vista, también en los diálogos</translation>
        </message>
        <message>
            <source>Window of the help</source>
            <translation>Ventana de la ayuda</translation>
        </message>
        <message>
            <source>Alt+Left, Alt+Right</source>
            <translation>Alt+Izquierda, Alt+Derecha</translation>
        </message>
        <message>
            <source>To the page read before, to the one after it</source>
            <translation>A la página leída antes, a la leída después</translation>
        </message>
        <message>
            <source>Ctrl+F</source>
            <translation>Ctrl+F</translation>
        </message>
        <message>
            <source>To the search</source>
            <translation>A la búsqueda</translation>
        </message>
        <message>
            <source>In the search: the first section found; on a link: follow it</source>
            <translation>En la búsqueda: la primera sección encontrada; en un enlace: seguirlo</translation>
        </message>
        <message>
            <source>In the page: to the next link, to the one before</source>
            <translation>En la página: al enlace siguiente, al anterior</translation>
        </message>
        <message>
            <source>Empty the search; close the help where nothing is searched</source>
            <translation>Vaciar la búsqueda; cerrar la ayuda si no se busca nada</translation>
        </message>
        <message>
            <source>Send it back to the samples that wait, to be repeated</source>
            <translation>Devolverla a las muestras en espera, para repetirla</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Sort by the column the keys are in, falling or rising; once more: as it was</source>
            <translation>Ordenar por la columna donde está el teclado, descendente o ascendente; otra vez: como estaba</translation>
        </message>
        <message>
            <source>Tick the addition in every tube</source>
            <translation>Marcar la adición en todos los tubos</translation>
        </message>
        <message>
            <source>Another volume went in</source>
            <translation>Entró otro volumen</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::KeysDialog</name>
        <message>
            <source>Where</source>
            <translation>Dónde</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Teclas</translation>
        </message>
        <message>
            <source>What they do</source>
            <translation>Qué hacen</translation>
        </message>
        <message>
            <source>&amp;Save as PDF, to print…</source>
            <translation>&amp;Guardar como PDF, para imprimir…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>Keys of Plateau.pdf</source>
            <translation>Teclas de Plateau.pdf</translation>
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
            <translation>&amp;Hoja habitual</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>&amp;Guardar como PDF…</translation>
        </message>
        <message>
            <source>Labels as PDF</source>
            <translation>Etiquetas en PDF</translation>
        </message>
        <message>
            <source>A4, 210 × 297 mm</source>
            <translation>A4, 210 × 297 mm</translation>
        </message>
        <message>
            <source>Letter, 8.5 × 11 inch</source>
            <translation>Carta, 8,5 × 11 pulgadas</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>&amp;Papel</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>&amp;Columns</source>
            <translation>&amp;Columnas</translation>
        </message>
        <message>
            <source>&amp;Rows</source>
            <translation>&amp;Filas</translation>
        </message>
        <message>
            <source>&amp;Width of a label</source>
            <translation>&amp;Ancho de una etiqueta</translation>
        </message>
        <message>
            <source>&amp;Height of a label</source>
            <translation>A&amp;lto de una etiqueta</translation>
        </message>
        <message>
            <source>&amp;Left margin</source>
            <translation>Margen &amp;izquierdo</translation>
        </message>
        <message>
            <source>&amp;Top margin</source>
            <translation>Margen &amp;superior</translation>
        </message>
        <message>
            <source>Gap &amp;between columns</source>
            <translation>Separación &amp;entre columnas</translation>
        </message>
        <message>
            <source>&amp;Gap between rows</source>
            <translation>Separación en&amp;tre filas</translation>
        </message>
        <message>
            <source>&amp;First free label</source>
            <translation>Primera eti&amp;queta libre</translation>
        </message>
        <message>
            <source>&amp;Made by</source>
            <translation>Hecho p&amp;or</translation>
        </message>
        <message>
            <source>a line to write on</source>
            <translation>una línea para rellenar a mano</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>%1: type a number.</source>
            <translation>%1: escriba un número.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: type a whole number from 1 to %2.</source>
            <translation>%1: escriba un número entero de 1 a %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LabelSheetPicture</name>
        <message>
            <source>The sheet of labels</source>
            <translation>La hoja de etiquetas</translation>
        </message>
        <message>
            <source>The sheet is drawn once its numbers are right.</source>
            <translation>La hoja se dibuja cuando sus números son correctos.</translation>
        </message>
        <message>
            <source>Labels to print: %1, from label %2 of %3 on (row %4, column %5). Sheets needed: %6. Hatched: used.</source>
            <translation>Etiquetas por imprimir: %1, desde la %2 de %3 (fila %4, columna %5). Hojas necesarias: %6. Rayadas: ya gastadas.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Labels</name>
        <message>
            <source>The first free label is %1, but the sheet has labels 1 to %2.</source>
            <translation>La primera etiqueta libre es %1, pero la hoja tiene las etiquetas 1 a %2.</translation>
        </message>
        <message>
            <source>extract: %1 in %2</source>
            <translation>extracto: %1 en %2</translation>
        </message>
        <message>
            <source>1 in %1: %2</source>
            <translation>1 en %1: %2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>made</source>
            <translation>preparado</translation>
        </message>
        <message>
            <source>use by</source>
            <translation>usar hasta</translation>
        </message>
        <message>
            <source>by</source>
            <translation>por</translation>
        </message>
        <message>
            <source>A sheet has at least one column and one row of labels.</source>
            <translation>Una hoja tiene al menos una columna y una fila de etiquetas.</translation>
        </message>
        <message>
            <source>A label of %1 by %2 can't be read; it needs at least %3 by %4.</source>
            <translation>Una etiqueta de %1 por %2 no se puede leer; necesita al menos %3 por %4.</translation>
        </message>
        <message>
            <source>Margins and gaps of a sheet of labels are 0 mm or more.</source>
            <translation>Los márgenes y las separaciones de una hoja de etiquetas son 0 mm o más.</translation>
        </message>
        <message>
            <source>The labels take %1 by %2, but the paper has only %3 by %4.</source>
            <translation>Las etiquetas ocupan %1 por %2, pero el papel solo tiene %3 por %4.</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiquetas</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryDraft</name>
        <message>
            <source>name and report head</source>
            <translation>nombre y encabezado del informe</translation>
        </message>
        <message>
            <source>rack and times</source>
            <translation>gradilla y tiempos</translation>
        </message>
        <message>
            <source>pipettes and flasks</source>
            <translation>pipetas y matraces</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>fotómetro</translation>
        </message>
        <message>
            <source>uncertainties by method</source>
            <translation>incertidumbres por método</translation>
        </message>
        <message>
            <source>units of products</source>
            <translation>unidades de productos</translation>
        </message>
        <message>
            <source>review</source>
            <translation>revisión</translation>
        </message>
        <message>
            <source>is not chosen yet; choose one</source>
            <translation>aún no está elegido; elija uno</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Changes to the laboratory that are not saved yet</source>
            <translation>Cambios del laboratorio que aún no están guardados</translation>
        </message>
        <message>
            <source>Common practice, no source: replace it with your own. Nobody has saved this laboratory yet; until then plans go by what stands here.</source>
            <translation>Práctica habitual, sin fuente: ponga la suya en su lugar. Nadie ha guardado aún este laboratorio; hasta entonces los planes se rigen por lo que figura aquí.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Versión %1, guardada por %2, %3.</translation>
        </message>
        <message>
            <source>Plans made from now on go by it; racks on the bench keep theirs.</source>
            <translation>Los planes hechos desde ahora se rigen por ella; las gradillas en la mesa conservan la suya.</translation>
        </message>
        <message>
            <source>%1 Stored: %2. %3</source>
            <translation>%1 Guardado: %2. %3</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Aún por corregir (%1), Intro lleva allí:</translation>
        </message>
        <message>
            <source>Changed, and not saved yet.</source>
            <translation>Cambiado y aún sin guardar.</translation>
        </message>
        <message>
            <source>%1, to be put right: %2</source>
            <translation>%1, por corregir: %2</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Aún no se ha guardado nada: corrija primero lo que nombra la lista.</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>No hay nada que guardar: la versión %1 dice exactamente esto.</translation>
        </message>
        <message>
            <source>everything as it stood here</source>
            <translation>todo tal como figuraba aquí</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Laboratorio</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>&amp;Drop the changes</source>
            <translation>De&amp;scartar los cambios</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the laboratory</source>
            <translation>Secciones del laboratorio</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt con el número de la sección lleva allí desde cualquier lugar.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPlaces</name>
        <message>
            <source>Pipettes</source>
            <translation>Pipetas</translation>
        </message>
        <message>
            <source>Pipette %1</source>
            <translation>Pipeta %1</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>smallest volume</source>
            <translation>volumen mínimo</translation>
        </message>
        <message>
            <source>largest volume</source>
            <translation>volumen máximo</translation>
        </message>
        <message>
            <source>step</source>
            <translation>paso</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <translation>incertidumbre</translation>
        </message>
        <message>
            <source>Flasks</source>
            <translation>Matraces</translation>
        </message>
        <message>
            <source>Flask %1</source>
            <translation>Matraz %1</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volumen</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Incertidumbres por método</translation>
        </message>
        <message>
            <source>Row %1</source>
            <translation>Fila %1</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>paso de dilución</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>source</source>
            <translation>fuente</translation>
        </message>
        <message>
            <source>Units of products</source>
            <translation>Unidades de productos</translation>
        </message>
        <message>
            <source>product</source>
            <translation>producto</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mensurando</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unidad</translation>
        </message>
        <message>
            <source>Reasons</source>
            <translation>Motivos</translation>
        </message>
        <message>
            <source>Reason %1</source>
            <translation>Motivo %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Address</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Contact</source>
            <translation>Contacto</translation>
        </message>
        <message>
            <source>Logo</source>
            <translation>Logotipo</translation>
        </message>
        <message>
            <source>Rows of a rack</source>
            <translation>Filas de una gradilla</translation>
        </message>
        <message>
            <source>Columns of a rack</source>
            <translation>Columnas de una gradilla</translation>
        </message>
        <message>
            <source>Time for an addition</source>
            <translation>Tiempo para una adición</translation>
        </message>
        <message>
            <source>Time to mix</source>
            <translation>Tiempo para mezclar</translation>
        </message>
        <message>
            <source>Time for a reading</source>
            <translation>Tiempo para una lectura</translation>
        </message>
        <message>
            <source>Reagent beyond the need</source>
            <translation>Reactivo por encima de lo necesario</translation>
        </message>
        <message>
            <source>Photometer, name</source>
            <translation>Fotómetro, nombre</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of a reading</source>
            <translation>Fotómetro, incertidumbre de una lectura</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of the path length</source>
            <translation>Fotómetro, incertidumbre del camino óptico</translation>
        </message>
        <message>
            <source>Photometer, check record</source>
            <translation>Fotómetro, registro de comprobación</translation>
        </message>
        <message>
            <source>Photometer, checked on</source>
            <translation>Fotómetro, comprobado el</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LastBackup</name>
        <message>
            <source>%1 Close the window once more to leave without a backup.</source>
            <translation>%1 Cierre la ventana otra vez para salir sin copia de seguridad.</translation>
        </message>
        <message>
            <source>A last backup is being made; after it the window closes by itself.</source>
            <translation>Se está haciendo una última copia de seguridad; después la ventana se cierra sola.</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>&amp;Cerrar sin ella</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Copia de seguridad</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Progreso de la copia</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LedgerModel</name>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsDraft</name>
        <message>
            <source>this limit from this source is in the list already; change that one</source>
            <translation>este límite de esta fuente ya está en la lista; cambie ese</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Lower limit</source>
            <translation>Límite inferior</translation>
        </message>
        <message>
            <source>Threshold</source>
            <translation>Umbral</translation>
        </message>
        <message>
            <source>Upper limit</source>
            <translation>Límite superior</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>A fecha de</translation>
        </message>
        <message>
            <source>Guard band</source>
            <translation>Banda de guarda</translation>
        </message>
        <message>
            <source>is empty; say what it is a limit of</source>
            <translation>está vacío; indique de qué es el límite</translation>
        </message>
        <message>
            <source>is empty; say what is measured</source>
            <translation>está vacío; indique qué se mide</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsModel</name>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Clase</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Límite</translation>
        </message>
        <message>
            <source>Decision rule</source>
            <translation>Regla de decisión</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>A fecha de</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Limits of products</source>
            <translation>Límites de productos</translation>
        </message>
        <message>
            <source>Fin&amp;d by product, measurand or source</source>
            <translation>&amp;Buscar producto, mensurando o fuente</translation>
        </message>
        <message>
            <source>No limits yet. Add the limits of your products, each with the source it stands in and its date; Review then says of every result whether it lies inside, outside, or cannot be decided at its uncertainty.</source>
            <translation>Aún no hay límites. Añada los límites de sus productos, cada uno con la fuente en la que figura y su fecha; Revisar dice entonces de cada resultado si está dentro, fuera o no se puede decidir con su incertidumbre.</translation>
        </message>
        <message>
            <source>No limit contains all of these words. Remove one to find more.</source>
            <translation>Ningún límite tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>&amp;Add a limit…</source>
            <translation>&amp;Añadir un límite…</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3. The versions before it stay on record.</source>
            <translation>Versión %1, guardada por %2, %3. Las versiones anteriores siguen registradas.</translation>
        </message>
        <message>
            <source>A limit of a product that is not saved yet</source>
            <translation>Un límite de un producto que aún no está guardado</translation>
        </message>
        <message>
            <source>Saved: %1, %2, %3.</source>
            <translation>Guardado: %1, %2, %3.</translation>
        </message>
        <message>
            <source>The limit is removed; the versions that had it stay on record.</source>
            <translation>El límite se ha quitado; las versiones que lo tenían siguen registradas.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>No hay nada que guardar: ya estaba guardado así.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Versión %1, guardada por %2, %3.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsSection</name>
        <message>
            <source>Measuring window</source>
            <translation>Intervalo de medida</translation>
        </message>
        <message>
            <source>The last two may stay empty: then they are not judged.</source>
            <translation>Los dos últimos pueden quedar vacíos: entonces no se juzgan.</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Señal neta mínima</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Señal neta máxima</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Absorbancia máxima</translation>
        </message>
        <message>
            <source>What must remain of a falling reagent</source>
            <translation>Lo que debe quedar de un reactivo que disminuye</translation>
        </message>
        <message>
            <source>What a run has to keep</source>
            <translation>Lo que una tanda tiene que cumplir</translation>
        </message>
        <message>
            <source>Leave empty what is not judged.</source>
            <translation>Deje vacío lo que no se juzga.</translation>
        </message>
        <message>
            <source>Largest signal of a blank</source>
            <translation>Señal máxima de un blanco</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Recuperación del patrón</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Recuperación de una fortificación</translation>
        </message>
        <message>
            <source>Duplicates differ by at most</source>
            <translation>Los duplicados difieren como máximo en</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>plus this share of the mean</source>
            <translation>más esta parte de la media</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Patrón habitual</translation>
        </message>
        <message>
            <source>What a new run starts from.</source>
            <translation>De lo que parte una tanda nueva.</translation>
        </message>
        <message>
            <source>Concentration</source>
            <translation>Concentración</translation>
        </message>
        <message>
            <source>Loses</source>
            <translation>Pierde</translation>
        </message>
        <message>
            <source>% of its strength an hour</source>
            <translation>% de su concentración por hora</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Tubos de una gradilla</translation>
        </message>
        <message>
            <source>How many a new run starts from. All empty: the method has no rule.</source>
            <translation>De cuántos parte una tanda nueva. Todo vacío: el método no tiene regla.</translation>
        </message>
        <message>
            <source>Blanks</source>
            <translation>Blancos</translation>
        </message>
        <message>
            <source>Of each sample</source>
            <translation>De cada muestra</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Patrones</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsView</name>
        <message>
            <source>A limit of a product</source>
            <translation>Un límite de un producto</translation>
        </message>
        <message>
            <source>Change a limit</source>
            <translation>Cambiar un límite</translation>
        </message>
        <message>
            <source>Thresho&amp;ld</source>
            <translation>Um&amp;bral</translation>
        </message>
        <message>
            <source>&amp;Upper limit</source>
            <translation>Límite su&amp;perior</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Aún por corregir (%1), Intro lleva allí:</translation>
        </message>
        <message>
            <source>Nothing is saved yet: say why the list changes; the reason stands in the record.</source>
            <translation>Aún no se ha guardado nada: indique por qué cambia la lista; el motivo figura en el registro.</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Aún no se ha guardado nada: corrija primero lo que nombra la lista.</translation>
        </message>
        <message>
            <source>This is not saved: save it, or go back once more to drop what was typed.</source>
            <translation>Esto no está guardado: guárdelo o vuelva atrás una vez más para descartar lo escrito.</translation>
        </message>
        <message>
            <source>Produc&amp;t</source>
            <translation>Pr&amp;oducto</translation>
        </message>
        <message>
            <source>&amp;Measurand</source>
            <translation>Men&amp;surando</translation>
        </message>
        <message>
            <source>&amp;Kind</source>
            <translation>&amp;Clase</translation>
        </message>
        <message>
            <source>&amp;Lower limit</source>
            <translation>Límite &amp;inferior</translation>
        </message>
        <message>
            <source>Un&amp;it</source>
            <translation>Uni&amp;dad</translation>
        </message>
        <message>
            <source>Sour&amp;ce</source>
            <translation>&amp;Fuente</translation>
        </message>
        <message>
            <source>Where the limit stands: specification, contract, regulation with its article.</source>
            <translation>Dónde figura el límite: especificación, contrato, reglamento con su artículo.</translation>
        </message>
        <message>
            <source>&amp;As of</source>
            <translation>A f&amp;echa de</translation>
        </message>
        <message>
            <source>D&amp;ecision rule</source>
            <translation>&amp;Regla de decisión</translation>
        </message>
        <message>
            <source>Guar&amp;d band</source>
            <translation>Banda de &amp;guarda</translation>
        </message>
        <message>
            <source>Its si&amp;ze</source>
            <translation>Su &amp;tamaño</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Motivo del cam&amp;bio</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>As it is called where samples are registered.</source>
            <translation>Como se llama donde se registran las muestras.</translation>
        </message>
        <message>
            <source>A result is judged as: %1, %2 in %3.</source>
            <translation>Un resultado se juzga así: %1, %2 en %3.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
        <message>
            <source>The date of the source, or the day it was read, as %1.</source>
            <translation>La fecha de la fuente, o el día en que se leyó, p. ej. %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsWords</name>
        <message>
            <source>Maximum</source>
            <translation>Máximo</translation>
        </message>
        <message>
            <source>Minimum</source>
            <translation>Mínimo</translation>
        </message>
        <message>
            <source>Range</source>
            <translation>Intervalo</translation>
        </message>
        <message>
            <source>Label threshold</source>
            <translation>Umbral de etiquetado</translation>
        </message>
        <message>
            <source>one-sided 95 % (1.64 u, more for few readings)</source>
            <translation>unilateral 95 % (1,64 u, más con pocas lecturas)</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty U</source>
            <translation>un múltiplo de la incertidumbre expandida U</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fija, en la unidad del límite</translation>
        </message>
        <message>
            <source>%1, one-sided 95 %</source>
            <translation>%1, unilateral 95 %</translation>
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
            <translation>Dentro hasta el propio límite, fuera más allá de él; la incertidumbre no mueve la línea.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside beyond the limit; between the two it cannot be decided.</source>
            <translation>Dentro solo hasta la banda de guarda anterior al límite, fuera más allá del límite; en la banda no se puede decidir.</translation>
        </message>
        <message>
            <source>Inside up to the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Dentro hasta el límite, fuera solo más allá de la banda de guarda posterior a él; en la banda no se puede decidir.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Dentro solo hasta la banda de guarda anterior al límite, fuera solo más allá de la posterior; en las bandas no se puede decidir.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LineSource</name>
        <message>
            <source>Not connected.</source>
            <translation>No conectado.</translation>
        </message>
        <message>
            <source>Connecting to %1.</source>
            <translation>Conectando con %1.</translation>
        </message>
        <message>
            <source>Connected to %1.</source>
            <translation>Conectado con %1.</translation>
        </message>
        <message>
            <source>The connection to %1 has ended: %2. Trying again until it is back.</source>
            <translation>La conexión con %1 ha terminado: %2. Se intenta de nuevo hasta que vuelva.</translation>
        </message>
        <message>
            <source>No connection to %1: %2. Trying again until it is there.</source>
            <translation>No hay conexión con %1: %2. Se intenta de nuevo hasta que la haya.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinesModel</name>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbancia</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Link</name>
        <message>
            <source>Choose or type the serial port, such as ttyUSB0.</source>
            <translation>Elija o escriba el puerto serie, como ttyUSB0.</translation>
        </message>
        <message>
            <source>Serial port: %1.</source>
            <translation>Puerto serie: %1.</translation>
        </message>
        <message>
            <source>The speed is a whole number from %1 to %2 baud.</source>
            <translation>La velocidad es un número entero de %1 a %2 baudios.</translation>
        </message>
        <message>
            <source>A character has 7 or 8 data bits and 1 or 2 stop bits.</source>
            <translation>Un carácter tiene 7 u 8 bits de datos y 1 o 2 bits de parada.</translation>
        </message>
        <message>
            <source>Type the photometer's name or address in the network.</source>
            <translation>Escriba el nombre o la dirección del fotómetro en la red.</translation>
        </message>
        <message>
            <source>Host: %1.</source>
            <translation>Host: %1.</translation>
        </message>
        <message>
            <source>The port number is a whole number from 1 to 65535.</source>
            <translation>El número de puerto es un número entero de 1 a 65535.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinkForm</name>
        <message>
            <source>serial port</source>
            <translation>puerto serie</translation>
        </message>
        <message>
            <source>network (TCP)</source>
            <translation>red (TCP)</translation>
        </message>
        <message>
            <source>Connected b&amp;y</source>
            <translation>&amp;Conectado por</translation>
        </message>
        <message>
            <source>no parity</source>
            <translation>sin paridad</translation>
        </message>
        <message>
            <source>even parity</source>
            <translation>paridad par</translation>
        </message>
        <message>
            <source>odd parity</source>
            <translation>paridad impar</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 1 stop bit</source>
            <translation>%1%2%3: %1 bits de datos, %4, 1 bit de parada</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 2 stop bits</source>
            <translation>%1%2%3: %1 bits de datos, %4, 2 bits de parada</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>hardware (RTS/CTS)</source>
            <translation>hardware (RTS/CTS)</translation>
        </message>
        <message>
            <source>software (XON/XOFF)</source>
            <translation>software (XON/XOFF)</translation>
        </message>
        <message>
            <source>Po&amp;rt</source>
            <translation>&amp;Puerto</translation>
        </message>
        <message>
            <source>&amp;Speed (baud)</source>
            <translation>&amp;Velocidad (baudios)</translation>
        </message>
        <message>
            <source>&amp;Format</source>
            <translation>&amp;Formato</translation>
        </message>
        <message>
            <source>F&amp;low control</source>
            <translation>Control de fl&amp;ujo</translation>
        </message>
        <message>
            <source>name or address</source>
            <translation>nombre o dirección</translation>
        </message>
        <message>
            <source>1 to 65535</source>
            <translation>1 a 65535</translation>
        </message>
        <message>
            <source>&amp;Host</source>
            <translation>&amp;Host</translation>
        </message>
        <message>
            <source>Port num&amp;ber</source>
            <translation>&amp;Número de puerto</translation>
        </message>
        <message>
            <source>name of the port</source>
            <translation>nombre del puerto</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ListenDialog</name>
        <message>
            <source>What the sample lines give</source>
            <translation>Qué dan las líneas de ejemplo</translation>
        </message>
        <message>
            <source>Lines that came in, the last one on top</source>
            <translation>Líneas que llegaron, la última arriba</translation>
        </message>
        <message>
            <source>&amp;Connect</source>
            <translation>Conec&amp;tar</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>&amp;Olvidar</translation>
        </message>
        <message>
            <source>&amp;Use the lines that came in</source>
            <translation>Usar las líneas &amp;que llegaron</translation>
        </message>
        <message>
            <source>Stop lis&amp;tening</source>
            <translation>&amp;Dejar de escuchar</translation>
        </message>
        <message>
            <source>Take readings</source>
            <translation>Tomar las lecturas</translation>
        </message>
        <message>
            <source>Listen to a photometer</source>
            <translation>Escuchar a un fotómetro</translation>
        </message>
        <message>
            <source>another one</source>
            <translation>otro</translation>
        </message>
        <message>
            <source>Give the photometer a name to remember it by.</source>
            <translation>Dé al fotómetro un nombre para recordarlo.</translation>
        </message>
        <message>
            <source>Connect before readings are taken.</source>
            <translation>Conecte antes de tomar lecturas.</translation>
        </message>
        <message>
            <source>%1 Nothing is taken while this window is open.</source>
            <translation>%1 No se toma nada mientras esta ventana está abierta.</translation>
        </message>
        <message>
            <source>Dis&amp;connect</source>
            <translation>Desc&amp;onectar</translation>
        </message>
        <message>
            <source>Connection</source>
            <translation>Conexión</translation>
        </message>
        <message>
            <source>&amp;Photometer</source>
            <translation>Fotóm&amp;etro</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>to remember it by</source>
            <translation>para recordarlo</translation>
        </message>
        <message>
            <source>How a line is read</source>
            <translation>Cómo se lee una línea</translation>
        </message>
        <message>
            <source>Paste some lines of the photometer here, or use those that came in.</source>
            <translation>Pegue aquí algunas líneas del fotómetro o use las que llegaron.</translation>
        </message>
        <message>
            <source>Try it &amp;out on sample lines</source>
            <translation>Probarlo con líneas de e&amp;jemplo</translation>
        </message>
        <message>
            <source>What came in, the last line on top</source>
            <translation>Lo que llegó, la última línea arriba</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Nothing has come in yet.</source>
            <translation>Todavía no ha llegado nada.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Listener</name>
        <message>
            <source>Not connected.</source>
            <translation>No conectado.</translation>
        </message>
        <message>
            <source>The connection ended in the middle of this line, so it is not a reading.</source>
            <translation>La conexión terminó en medio de esta línea, así que no es una lectura.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoField</name>
        <message>
            <source>&amp;Load a picture…</source>
            <translation>&amp;Cargar una imagen…</translation>
        </message>
        <message>
            <source>Remove &amp;it</source>
            <translation>&amp;Quitarlo</translation>
        </message>
        <message>
            <source>Load the logo</source>
            <translation>Cargar el logotipo</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg);;All files (*)</source>
            <translation>Imágenes (*.png *.svg);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>cannot be drawn</source>
            <translation>no se puede dibujar</translation>
        </message>
        <message>
            <source>no logo</source>
            <translation>sin logotipo</translation>
        </message>
        <message>
            <source>%1. On a report it is at most 48 mm wide and 20 mm high.</source>
            <translation>%1. En un informe tiene como máximo 48 mm de ancho y 20 mm de alto.</translation>
        </message>
        <message>
            <source>A PNG or SVG picture; reports without one begin with the name alone.</source>
            <translation>Una imagen PNG o SVG; los informes sin ella empiezan solo con el nombre.</translation>
        </message>
        <message>
            <source>Rep&amp;lace it…</source>
            <translation>S&amp;ustituirlo…</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoFile</name>
        <message>
            <source>it cannot be drawn</source>
            <translation>no se puede dibujar</translation>
        </message>
        <message>
            <source>%1 was not taken: %2. Choose a PNG or SVG picture of at most %3 kB.</source>
            <translation>%1 no se ha tomado: %2. Elija una imagen PNG o SVG de como máximo %3 kB.</translation>
        </message>
        <message>
            <source>it cannot be opened (%1)</source>
            <translation>no se puede abrir (%1)</translation>
        </message>
        <message>
            <source>it has %1 kB</source>
            <translation>tiene %1 kB</translation>
        </message>
        <message>
            <source>it is neither a PNG nor an SVG picture</source>
            <translation>no es una imagen PNG ni SVG</translation>
        </message>
        <message>
            <source>SVG, %1 kB</source>
            <translation>SVG, %1 kB</translation>
        </message>
        <message>
            <source>PNG, %1 × %2 pixels, %3 kB</source>
            <translation>PNG, %1 × %2 píxeles, %3 kB</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LossPicture</name>
        <message>
            <source>What was left of the standard, against its age</source>
            <translation>Lo que quedaba del patrón, frente a su antigüedad</translation>
        </message>
        <message>
            <source>age at use in h</source>
            <translation>antigüedad al usarlo en h</translation>
        </message>
        <message>
            <source>found</source>
            <translation>hallado</translation>
        </message>
        <message>
            <source>fitted</source>
            <translation>ajustado</translation>
        </message>
        <message>
            <source>as stated</source>
            <translation>según lo indicado</translation>
        </message>
        <message>
            <source>% of weighed mass</source>
            <translation>% de lo pesado</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotKeepingForm</name>
        <message>
            <source>%1: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>%1: indique días enteros, 0 para ese único día, o nada si nadie lo dice.</translation>
        </message>
        <message>
            <source>&amp;In what</source>
            <translation>&amp;En qué</translation>
        </message>
        <message>
            <source>Number of ali&amp;quots</source>
            <translation>&amp;Número de alícuotas</translation>
        </message>
        <message>
            <source>&amp;Keeps dissolved (days)</source>
            <translation>Se &amp;conserva disuelto (días)</translation>
        </message>
        <message>
            <source>Once &amp;thawed (days)</source>
            <translation>Una vez &amp;descongelado (días)</translation>
        </message>
        <message>
            <source>&amp;Where it is stored</source>
            <translation>&amp;Lugar donde se guarda</translation>
        </message>
        <message>
            <source>Co&amp;ldest there (°C)</source>
            <translation>Mí&amp;nima allí (°C)</translation>
        </message>
        <message>
            <source>War&amp;mest there (°C)</source>
            <translation>Má&amp;xima allí (°C)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Vacío si nadie lo dice.</translation>
        </message>
        <message>
            <source>Empty where only the warmest counts, as in a freezer below −10 °C.</source>
            <translation>Vacío si solo cuenta la máxima, como en un congelador por debajo de −10 °C.</translation>
        </message>
        <message>
            <source>%1, lot %2 (%3 left)</source>
            <translation>%1, lote %2 (quedan %3)</translation>
        </message>
        <message>
            <source>&amp;Keep as stored (days)</source>
            <translation>Así guardado se &amp;conserva (días)</translation>
        </message>
        <message>
            <source>Say in what it was dissolved: choose a container, or key it, such as water.</source>
            <translation>Indique en qué se disolvió: elija un envase o escríbalo, por ejemplo agua.</translation>
        </message>
        <message>
            <source>Keeps dissolved</source>
            <translation>Se conserva disuelto</translation>
        </message>
        <message>
            <source>Say how many aliquots there are: a whole number, 1 or more.</source>
            <translation>Indique cuántas alícuotas hay: un número entero, 1 o más.</translation>
        </message>
        <message>
            <source>Keep as stored</source>
            <translation>Así guardado se conserva</translation>
        </message>
        <message>
            <source>Once thawed</source>
            <translation>Una vez descongelado</translation>
        </message>
        <message>
            <source>Once thawed: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Una vez descongelado: indique días enteros, 1 o más, o nada si nadie lo dice.</translation>
        </message>
        <message>
            <source>Say where it is kept, as freezer 2, upper drawer.</source>
            <translation>Indique dónde se guarda, por ejemplo congelador 2, cajón superior.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotLabelForm</name>
        <message>
            <source>&amp;Reagent</source>
            <translation>Re&amp;activo</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>L&amp;ote</translation>
        </message>
        <message>
            <source>Use-by &amp;date</source>
            <translation>Ca&amp;ducidad</translation>
        </message>
        <message>
            <source>&amp;Keeps once opened (days)</source>
            <translation>Se conserva una ve&amp;z abierto (días)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Vacío si nadie lo dice.</translation>
        </message>
        <message>
            <source>Say which reagent it is, by the name that the methods use.</source>
            <translation>Indique qué reactivo es, con el nombre que usan los métodos.</translation>
        </message>
        <message>
            <source>Say which lot it is, as it stands on the label; for water or a buffer of your own the day it was made will do.</source>
            <translation>Indique qué lote es, tal como figura en la etiqueta; para el agua o un tampón propio basta el día en que se preparó.</translation>
        </message>
        <message>
            <source>Use-by date: %1</source>
            <translation>Caducidad: %1</translation>
        </message>
        <message>
            <source>Keeps once opened: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Se conserva una vez abierto: indique días enteros, 1 o más, o nada si nadie lo dice.</translation>
        </message>
        <message>
            <source>Keeps once d&amp;issolved (days)</source>
            <translation>Se conserva d&amp;isuelto (días)</translation>
        </message>
        <message>
            <source>For what comes dry; 0: on that day only. Empty where none is stated.</source>
            <translation>Para lo que llega seco; 0: solo ese día. Vacío si nadie lo dice.</translation>
        </message>
        <message>
            <source>Keeps once dissolved: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>Se conserva disuelto: indique días enteros, 0 para ese único día, o nada si nadie lo dice.</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Por ejemplo %1, o solo el mes, como %2. Vacío si no se indica ninguna.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotView</name>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lote %2</translation>
        </message>
        <message>
            <source>left: %1</source>
            <translation>quedan: %1</translation>
        </message>
        <message>
            <source>keeps once opened: %1 days</source>
            <translation>se conserva una vez abierto: %1 días</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>According to the ledger: %1; ticked in runs: %2; left: %3.</source>
            <translation>Según los movimientos: %1; marcado en tandas: %2; quedan: %3.</translation>
        </message>
        <message>
            <source>It was opened</source>
            <translation>Se abrió</translation>
        </message>
        <message>
            <source>Some was taken, keyed by hand</source>
            <translation>Se tomó algo (anotado a mano)</translation>
        </message>
        <message>
            <source>Some was spilt or discarded</source>
            <translation>Se derramó o se desechó algo</translation>
        </message>
        <message>
            <source>Another volume was found in it</source>
            <translation>Se halló otro volumen en él</translation>
        </message>
        <message>
            <source>Its label was noted wrongly</source>
            <translation>Su etiqueta se anotó mal</translation>
        </message>
        <message>
            <source>Vol&amp;ume found (mL)</source>
            <translation>Vol&amp;umen hallado (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume (mL)</source>
            <translation>Vol&amp;umen (mL)</translation>
        </message>
        <message>
            <source>What for (may b&amp;e empty)</source>
            <translation>Para qué (&amp;puede quedar vacío)</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mot&amp;ivo</translation>
        </message>
        <message>
            <source>Say how much it is, in mL.</source>
            <translation>Indique cuánto es, en mL.</translation>
        </message>
        <message>
            <source>Say why; the ledger keeps it.</source>
            <translation>Indique por qué; los movimientos lo conservan.</translation>
        </message>
        <message>
            <source>Ledger of the container</source>
            <translation>Movimientos del envase</translation>
        </message>
        <message>
            <source>Runs that took from it</source>
            <translation>Tandas que tomaron de él</translation>
        </message>
        <message>
            <source>Ledger</source>
            <translation>Movimientos</translation>
        </message>
        <message>
            <source>What it touched as &amp;CSV…</source>
            <translation>Dónde se usó, en &amp;CSV…</translation>
        </message>
        <message>
            <source>Every run that took from it and every result: for the day when the supplier recalls it.</source>
            <translation>Cada tanda que tomó de él y cada resultado: para el día en que el proveedor lo retire del mercado.</translation>
        </message>
        <message>
            <source>What happened to it</source>
            <translation>Qué le pasó</translation>
        </message>
        <message>
            <source>Wh&amp;at</source>
            <translation>&amp;Qué</translation>
        </message>
        <message>
            <source>Da&amp;y</source>
            <translation>&amp;Día</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>dry: %1</source>
            <translation>seco: %1</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>seco</translation>
        </message>
        <message>
            <source>use by: %1</source>
            <translation>usar hasta: %1</translation>
        </message>
        <message>
            <source>the label says: %1</source>
            <translation>la etiqueta dice: %1</translation>
        </message>
        <message>
            <source>dissolved: %1, in %2</source>
            <translation>disuelto: %1, en %2</translation>
        </message>
        <message>
            <source>keeps once dissolved: %1 days</source>
            <translation>se conserva disuelto: %1 días</translation>
        </message>
        <message>
            <source>filled: %1</source>
            <translation>llenado: %1</translation>
        </message>
        <message>
            <source>keeps as stored: %1 days</source>
            <translation>así guardado se conserva: %1 días</translation>
        </message>
        <message>
            <source>storage: %1</source>
            <translation>guardado: %1</translation>
        </message>
        <message>
            <source>It is dry: its volume begins when it is dissolved.</source>
            <translation>Está seco: su volumen empieza cuando se disuelve.</translation>
        </message>
        <message>
            <source>It was dissolved</source>
            <translation>Se disolvió</translation>
        </message>
        <message>
            <source>It was opened or thawed</source>
            <translation>Se abrió o se descongeló</translation>
        </message>
        <message>
            <source>It was discarded</source>
            <translation>Se desechó</translation>
        </message>
        <message>
            <source>It was divided into aliquots</source>
            <translation>Se dividió en alícuotas</translation>
        </message>
        <message>
            <source>There is something to note about it</source>
            <translation>Hay algo que anotar</translation>
        </message>
        <message>
            <source>Sol&amp;ution (mL)</source>
            <translation>Disol&amp;ución (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume of each (mL)</source>
            <translation>Vol&amp;umen de cada una (mL)</translation>
        </message>
        <message>
            <source>Not&amp;e (may be empty)</source>
            <translation>N&amp;ota (puede quedar vacía)</translation>
        </message>
        <message>
            <source>Not&amp;e</source>
            <translation>N&amp;ota</translation>
        </message>
        <message>
            <source>It was moved</source>
            <translation>Se ha cambiado de lugar</translation>
        </message>
        <message>
            <source>No dose of a run was ticked with this lot yet. What was taken otherwise stands in the ledger.</source>
            <translation>Todavía no se ha marcado ninguna adición de una tanda con este lote. Lo que se tomó de otro modo figura en los movimientos.</translation>
        </message>
        <message>
            <source>Left according to the ledger: %1; ticked in runs: none.</source>
            <translation>Quedan según los movimientos: %1; marcado en tandas: nada.</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>abierto el %1</translation>
        </message>
        <message>
            <source>It was opened on another day</source>
            <translation>Se abrió otro día</translation>
        </message>
        <message>
            <source>It was not opened after all</source>
            <translation>Al final no se abrió</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
        <message>
            <source>Left according to the ledger: %1; taken, keyed by hand: %2; ticked in runs: none.</source>
            <translation>Quedan según los movimientos: %1; tomado y anotado a mano: %2; marcado en tandas: nada.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotWords</name>
        <message>
            <source>received</source>
            <translation>recibido</translation>
        </message>
        <message>
            <source>discarded</source>
            <translation>desechado</translation>
        </message>
        <message>
            <source>corrected to what was found</source>
            <translation>corregido a lo hallado</translation>
        </message>
        <message>
            <source>received dry</source>
            <translation>recibido seco</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>abierto</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>disuelto</translation>
        </message>
        <message>
            <source>taken to dissolve</source>
            <translation>tomado para disolver</translation>
        </message>
        <message>
            <source>divided</source>
            <translation>dividido</translation>
        </message>
        <message>
            <source>filled</source>
            <translation>llenado</translation>
        </message>
        <message>
            <source>put where it is kept</source>
            <translation>colocado en su lugar</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>anotado</translation>
        </message>
        <message>
            <source>taken, keyed by hand</source>
            <translation>tomado, anotado a mano</translation>
        </message>
        <message>
            <source>Key the day as %1.</source>
            <translation>Introduzca el día como %1.</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its last day.</source>
            <translation>Esto no es un día. Introdúzcalo como %1; un mes solo, como %2, es su último día.</translation>
        </message>
        <message>
            <source>opening corrected</source>
            <translation>apertura corregida</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its first day.</source>
            <translation>Esto no es un día. Introdúzcalo como %1; un mes solo, como %2, es su primer día.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsModel</name>
        <message>
            <source>Reagent</source>
            <translation>Reactivo</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Queda</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>seco</translation>
        </message>
        <message>
            <source>Use by</source>
            <translation>Usar hasta</translation>
        </message>
        <message>
            <source>Storage</source>
            <translation>Lugar</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Containers of reagents</source>
            <translation>Envases de reactivos</translation>
        </message>
        <message>
            <source>Fin&amp;d by reagent, lot or state</source>
            <translation>&amp;Buscar reactivo, lote o estado</translation>
        </message>
        <message>
            <source>No container is in hand. Receive the reagents, water and buffers there are; plans then say whether they are enough.</source>
            <translation>No hay ningún envase disponible. Reciba los reactivos, el agua y los tampones que haya; los planes dicen entonces si alcanzan.</translation>
        </message>
        <message>
            <source>No container contains all of these words. Remove one to find more.</source>
            <translation>Ningún envase tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>Used &amp;up too</source>
            <translation>También agota&amp;dos</translation>
        </message>
        <message>
            <source>&amp;Receive a container…</source>
            <translation>&amp;Recibir un envase…</translation>
        </message>
        <message>
            <source>Noted as opened on %1.</source>
            <translation>Anotado como abierto el %1.</translation>
        </message>
        <message>
            <source>%1 taken.</source>
            <translation>%1 tomados.</translation>
        </message>
        <message>
            <source>%1 discarded.</source>
            <translation>%1 desechados.</translation>
        </message>
        <message>
            <source>Corrected: %1 are left in it.</source>
            <translation>Corregido: quedan %1 en él.</translation>
        </message>
        <message>
            <source>The label is corrected; what was decided on the old one keeps it.</source>
            <translation>La etiqueta está corregida; lo decidido con la antigua la conserva.</translation>
        </message>
        <message>
            <source>What happened to a lot, not stored yet</source>
            <translation>Lo que le pasó a un lote, aún sin guardar</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3. The label stays here for the next container of it.</source>
            <translation>En el libro: %1, lote %2, %3. La etiqueta se queda aquí para el próximo envase de lo mismo.</translation>
        </message>
        <message>
            <source>%1 Its use-by date, %2, is past already.</source>
            <translation>%1 Su fecha de caducidad, %2, ya ha pasado.</translation>
        </message>
        <message>
            <source>Save what the container touched</source>
            <translation>Guardar dónde se usó el envase</translation>
        </message>
        <message>
            <source>lot %1.csv</source>
            <translation>lote %1.csv</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>Archivos CSV (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written: every run that took from it, a row for each result.</source>
            <translation>%1 se ha escrito: cada tanda que tomó de él, una fila por resultado.</translation>
        </message>
        <message>
            <source>Dissolved: now %1 of it.</source>
            <translation>Disuelto: ahora hay %1.</translation>
        </message>
        <message>
            <source>Divided. Its aliquots are containers of their own in the list: %1, of %2 each.</source>
            <translation>Dividido. Sus alícuotas son envases propios de la lista: %1, de %2 cada una.</translation>
        </message>
        <message>
            <source>Noted: it is kept in %1.</source>
            <translation>Anotado: se guarda en %1.</translation>
        </message>
        <message>
            <source>Noted; the ledger keeps it.</source>
            <translation>Anotado; los movimientos lo conservan.</translation>
        </message>
        <message>
            <source>Discarded.</source>
            <translation>Desechado.</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>seco</translation>
        </message>
        <message>
            <source>Noted as not opened.</source>
            <translation>Anotado como sin abrir.</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3, use by %4 by its label. The label stays here for the next container of it.</source>
            <translation>En el libro: %1, lote %2, %3, válido hasta %4 según la etiqueta. La etiqueta se queda aquí para el próximo envase de lo mismo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MainWindow</name>
        <message>
            <source>About Plateau</source>
            <translation>Acerca de Plateau</translation>
        </message>
        <message>
            <source>These method files cannot be used and are left out:
%1</source>
            <translation>Estos archivos de métodos no se pueden usar y se omiten:
%1</translation>
        </message>
        <message>
            <source>The computer's clock was set: %1. The timers go on by a clock that nobody can set, so nothing is due earlier or later; the notebook has a record of it.</source>
            <translation>Se ajustó el reloj del ordenador: %1. Los temporizadores siguen con un reloj que nadie puede ajustar, así que nada se adelanta ni se retrasa; el cuaderno lo tiene registrado.</translation>
        </message>
        <message>
            <source>The settings hold until the program ends; they could not be kept for the next time.</source>
            <translation>Los ajustes valen hasta que termine el programa; no se pudieron conservar para la próxima vez.</translation>
        </message>
        <message>
            <source>Open run file</source>
            <translation>Abrir archivo de tanda</translation>
        </message>
        <message>
            <source>Run files (*.json);;All files (*)</source>
            <translation>Archivos de tanda (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Rack %1, %2</source>
            <translation>Gradilla %1, %2</translation>
        </message>
        <message>
            <source>Plateau</source>
            <translation>Plateau</translation>
        </message>
        <message>
            <source>Rack %1: typed and not stored, but kept where it was typed: %2.</source>
            <translation>Gradilla %1: escrito y no guardado, pero conservado donde se escribió: %2.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>A new run that is not on the bench yet</source>
            <translation>Una tanda nueva que aún no está en la mesa</translation>
        </message>
        <message>
            <source>Not stored yet</source>
            <translation>Aún sin guardar</translation>
        </message>
        <message>
            <source>This was typed and is not stored; it is lost when the window closes:

%1</source>
            <translation>Esto se escribió y no está guardado; se pierde al cerrar la ventana:

%1</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>&amp;Cerrar sin guardarlo</translation>
        </message>
        <message>
            <source>&amp;Stay</source>
            <translation>&amp;Quedarse</translation>
        </message>
        <message>
            <source>There was no notebook %1; a new one was made. If yours was expected here, close the window and see that the name is right.</source>
            <translation>No había ningún cuaderno %1; se creó uno nuevo. Si esperaba aquí el suyo, cierre la ventana y compruebe el nombre.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MappingForm</name>
        <message>
            <source>Leave out empty &amp;lines</source>
            <translation>Omitir las &amp;líneas vacías</translation>
        </message>
        <message>
            <source>tabs</source>
            <translation>tabuladores</translation>
        </message>
        <message>
            <source>semicolons</source>
            <translation>puntos y coma</translation>
        </message>
        <message>
            <source>commas</source>
            <translation>comas</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>espacios</translation>
        </message>
        <message>
            <source>as it stands</source>
            <translation>tal como está</translation>
        </message>
        <message>
            <source>last line first</source>
            <translation>última línea primero</translation>
        </message>
        <message>
            <source>none, the order tells</source>
            <translation>ninguna, lo dice el orden</translation>
        </message>
        <message>
            <source>&amp;Columns separated by</source>
            <translation>&amp;Columnas separadas por</translation>
        </message>
        <message>
            <source>&amp;Decimal mark</source>
            <translation>Si&amp;gno decimal</translation>
        </message>
        <message>
            <source>&amp;Absorbance in column</source>
            <translation>&amp;Absorbancia en la columna</translation>
        </message>
        <message>
            <source>T&amp;ube in column</source>
            <translation>Tu&amp;bo en la columna</translation>
        </message>
        <message>
            <source>Lines of &amp;heading</source>
            <translation>Líneas de encabe&amp;zado</translation>
        </message>
        <message>
            <source>&amp;Order</source>
            <translation>Ord&amp;en</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>Co&amp;dificación</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MatrixText</name>
        <message>
            <source>Clear and colourless</source>
            <translation>Transparente e incolora</translation>
        </message>
        <message>
            <source>Coloured</source>
            <translation>Coloreada</translation>
        </message>
        <message>
            <source>Turbid</source>
            <translation>Turbia</translation>
        </message>
        <message>
            <source>Carbonated</source>
            <translation>Carbonatada</translation>
        </message>
        <message>
            <source>Fatty</source>
            <translation>Grasa</translation>
        </message>
        <message>
            <source>Rich in protein</source>
            <translation>Rica en proteína</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Sólida</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MeasuresSection</name>
        <message>
            <source>Measurands</source>
            <translation>Mensurandos</translation>
        </message>
        <message>
            <source>M: molar mass. n: molecules of the chromophore formed or used for each molecule. From, to: what samples usually hold. </source>
            <translation>M: masa molar. n: moléculas del cromóforo formadas o consumidas por cada molécula. Desde, hasta: lo que suelen contener las muestras. </translation>
        </message>
        <message>
            <source>Quantities that come from others</source>
            <translation>Magnitudes calculadas a partir de otras</translation>
        </message>
        <message>
            <source>One row for each part: its result times a number, −1 to subtract. Rows of one name are added up.</source>
            <translation>Una fila por cada parte: su resultado por un número, −1 para restar. Las filas con el mismo nombre se suman.</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>formado a partir del nombre</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodActWords</name>
        <message>
            <source>%1, saved by %2</source>
            <translation>%1, guardado por %2</translation>
        </message>
        <message>
            <source>%1, saved by %2: %3</source>
            <translation>%1, guardado por %2: %3</translation>
        </message>
        <message>
            <source>%1, imported from %3 by %2</source>
            <translation>%1, importado de %3 por %2</translation>
        </message>
        <message>
            <source>%1, retired by %2: %3</source>
            <translation>%1, dado de baja por %2: %3</translation>
        </message>
        <message>
            <source>%1, reinstated by %2: %3</source>
            <translation>%1, reactivado por %2: %3</translation>
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
            <translation>debe estar entre 0 y 100 %, no %1</translation>
        </message>
        <message>
            <source>say which component is added</source>
            <translation>indique qué componente se añade</translation>
        </message>
        <message>
            <source>this wavelength is in the table already; keep one of the two</source>
            <translation>esta longitud de onda ya está en la tabla; deje una de las dos</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Agua</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Iniciador</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodEditor</name>
        <message>
            <source>%1 (stays: runs and files know the method by it)</source>
            <translation>%1 (se queda: las tandas y los archivos conocen el método por él)</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Aún por corregir (%1), Intro lleva allí:</translation>
        </message>
        <message>
            <source>%1 Worth a look:</source>
            <translation>%1 Conviene mirar:</translation>
        </message>
        <message>
            <source>Nothing stands in the way of saving.</source>
            <translation>Nada impide guardarlo.</translation>
        </message>
        <message>
            <source>It can be saved. Worth a look:</source>
            <translation>Se puede guardar. Conviene mirar:</translation>
        </message>
        <message>
            <source>%1, copy</source>
            <translation>%1, copia</translation>
        </message>
        <message>
            <source>will be saved as the next version, after version %1</source>
            <translation>se guardará como la versión siguiente, después de la versión %1</translation>
        </message>
        <message>
            <source>will be saved as version 1</source>
            <translation>se guardará como versión 1</translation>
        </message>
        <message>
            <source>A method without a name yet</source>
            <translation>Un método aún sin nombre</translation>
        </message>
        <message>
            <source>made from the name: %1</source>
            <translation>formado a partir del nombre: %1</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>formado a partir del nombre</translation>
        </message>
        <message>
            <source>%1 is the id of the method %2; choose another, or open that method and make its next version</source>
            <translation>%1 es el id del método %2; elija otro o abra ese método y haga su versión siguiente</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>No hay nada que guardar: la versión %1 dice exactamente esto.</translation>
        </message>
        <message>
            <source>%1 It is retired; reinstate it to use it.</source>
            <translation>%1 Está de baja; reactívelo para usarlo.</translation>
        </message>
        <message>
            <source>The method is not saved yet: first put right what the list names.</source>
            <translation>El método aún no está guardado: corrija primero lo que nombra la lista.</translation>
        </message>
        <message>
            <source>Say in the line above what was changed and why, then press Enter; the method's history keeps it.</source>
            <translation>Indique en la línea de arriba qué se cambió y por qué y pulse Intro; el historial del método lo conserva.</translation>
        </message>
        <message>
            <source>&amp;Save method</source>
            <translation>&amp;Guardar el método</translation>
        </message>
        <message>
            <source>&amp;What was changed and why</source>
            <translation>&amp;Qué se cambió y por qué</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the method</source>
            <translation>Secciones del método</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt con el número de la sección lleva allí desde cualquier lugar.</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Qué mide</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Receta</translation>
        </message>
        <message>
            <source>Readings and signal</source>
            <translation>Lecturas y señal</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Límites</translation>
        </message>
        <message>
            <source>Text and cautions</source>
            <translation>Texto y precauciones</translation>
        </message>
        <message>
            <source>Try it</source>
            <translation>Probarlo</translation>
        </message>
        <message>
            <source>There are changes that are not saved. Press it once more to drop them, or save first.</source>
            <translation>Hay cambios sin guardar. Púlselo otra vez para descartarlos, o guarde primero.</translation>
        </message>
        <message>
            <source>Back  Esc</source>
            <translation>Volver  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodFiles</name>
        <message>
            <source>Nothing was imported, since the file cannot be used:</source>
            <translation>No se ha importado nada, porque el archivo no se puede usar:</translation>
        </message>
        <message>
            <source>and %1 more</source>
            <translation>y %1 más</translation>
        </message>
        <message>
            <source>The method could not be written to %1: %2. Choose another place; nothing else changed.</source>
            <translation>El método no se pudo escribir en %1: %2. Elija otro lugar; no ha cambiado nada más.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodPlaces</name>
        <message>
            <source>id</source>
            <translation>id</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>source</source>
            <translation>fuente</translation>
        </message>
        <message>
            <source>principle</source>
            <translation>principio</translation>
        </message>
        <message>
            <source>chromophore</source>
            <translation>cromóforo</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longitud de onda</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>components</source>
            <translation>componentes</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volumen</translation>
        </message>
        <message>
            <source>allowed volumes</source>
            <translation>volúmenes admitidos</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluyente</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>iniciador</translation>
        </message>
        <message>
            <source>steps</source>
            <translation>pasos</translation>
        </message>
        <message>
            <source>time</source>
            <translation>tiempo</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>measurands</source>
            <translation>mensurandos</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masa molar</translation>
        </message>
        <message>
            <source>chromophore per molecule</source>
            <translation>cromóforo por molécula</translation>
        </message>
        <message>
            <source>usual concentrations</source>
            <translation>concentraciones habituales</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>señal</translation>
        </message>
        <message>
            <source>from reading</source>
            <translation>lectura desde</translation>
        </message>
        <message>
            <source>to reading</source>
            <translation>lectura hasta</translation>
        </message>
        <message>
            <source>middle reading</source>
            <translation>lectura intermedia</translation>
        </message>
        <message>
            <source>quantities that come from others</source>
            <translation>magnitudes calculadas a partir de otras</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mensurando</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>times</source>
            <translation>veces</translation>
        </message>
        <message>
            <source>measuring window</source>
            <translation>intervalo de medida</translation>
        </message>
        <message>
            <source>smallest net signal</source>
            <translation>señal neta mínima</translation>
        </message>
        <message>
            <source>largest net signal</source>
            <translation>señal neta máxima</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>absorbancia máxima</translation>
        </message>
        <message>
            <source>absorbance that must remain</source>
            <translation>absorbancia que debe quedar</translation>
        </message>
        <message>
            <source>what a run has to keep</source>
            <translation>lo que una tanda tiene que cumplir</translation>
        </message>
        <message>
            <source>largest signal of a blank</source>
            <translation>señal máxima de un blanco</translation>
        </message>
        <message>
            <source>recovery of the standard</source>
            <translation>recuperación del patrón</translation>
        </message>
        <message>
            <source>recovery of a spike</source>
            <translation>recuperación de una fortificación</translation>
        </message>
        <message>
            <source>duplicates</source>
            <translation>duplicados</translation>
        </message>
        <message>
            <source>differ by at most</source>
            <translation>difieren como máximo en</translation>
        </message>
        <message>
            <source>share of the mean</source>
            <translation>parte de la media</translation>
        </message>
        <message>
            <source>usual standard</source>
            <translation>patrón habitual</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentración</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>pérdida por hora</translation>
        </message>
        <message>
            <source>tubes of a rack</source>
            <translation>tubos de una gradilla</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>blancos</translation>
        </message>
        <message>
            <source>of each sample</source>
            <translation>de cada muestra</translation>
        </message>
        <message>
            <source>standards</source>
            <translation>patrones</translation>
        </message>
        <message>
            <source>reading taken as a series</source>
            <translation>lectura tomada en serie</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>readings on the line</source>
            <translation>lecturas de la recta</translation>
        </message>
        <message>
            <source>component</source>
            <translation>componente</translation>
        </message>
        <message>
            <source>step %1</source>
            <translation>paso %1</translation>
        </message>
        <message>
            <source>part %1</source>
            <translation>parte %1</translation>
        </message>
        <message>
            <source>caution %1</source>
            <translation>precaución %1</translation>
        </message>
        <message>
            <source>reaction %1</source>
            <translation>reacción %1</translation>
        </message>
        <message>
            <source>what interferes, line %1</source>
            <translation>qué interfiere, línea %1</translation>
        </message>
        <message>
            <source>preparation of the sample</source>
            <translation>preparación de la muestra</translation>
        </message>
        <message>
            <source>from</source>
            <translation>desde</translation>
        </message>
        <message>
            <source>to</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>the %1</source>
            <translation>la %1</translation>
        </message>
        <message>
            <source>absorptivity at %1 nm</source>
            <translation>absortividad a %1 nm</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodStandings</name>
        <message>
            <source>earlier version</source>
            <translation>versión anterior</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>retired</source>
            <translation>de baja</translation>
        </message>
        <message>
            <source>in use, kept apart</source>
            <translation>en uso, mantenido aparte</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en uso</translation>
        </message>
        <message>
            <source>on record</source>
            <translation>registrado</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodText</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Hecho con una plantilla cuyos volúmenes nadie ha confirmado: %1.</translation>
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
            <translation>Método</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>Absorbance of one reading</source>
            <translation>Absorbancia de una lectura</translation>
        </message>
        <message>
            <source>ε %</source>
            <translation>ε %</translation>
        </message>
        <message>
            <source>Absorptivity, in %</source>
            <translation>Absortividad, en %</translation>
        </message>
        <message>
            <source>path %</source>
            <translation>camino %</translation>
        </message>
        <message>
            <source>Path length, in %</source>
            <translation>Camino óptico, en %</translation>
        </message>
        <message>
            <source>V %</source>
            <translation>V %</translation>
        </message>
        <message>
            <source>Total volume of the tube, in %</source>
            <translation>Volumen total del tubo, en %</translation>
        </message>
        <message>
            <source>sample %</source>
            <translation>muestra %</translation>
        </message>
        <message>
            <source>Sample volume, in %</source>
            <translation>Volumen de muestra, en %</translation>
        </message>
        <message>
            <source>dilution %</source>
            <translation>dilución %</translation>
        </message>
        <message>
            <source>Each dilution step, in %</source>
            <translation>Cada paso de dilución, en %</translation>
        </message>
        <message>
            <source>extract %</source>
            <translation>extracto %</translation>
        </message>
        <message>
            <source>Extract of a solid, in %</source>
            <translation>Extracto de un sólido, en %</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Incertidumbres por método</translation>
        </message>
        <message>
            <source>What your laboratory knows of one method, from its validation say. A number here comes before the photometer's and the glassware's, in every run by that method that is planned from now on; an empty cell leaves it to them. Standard uncertainties (k = 1); the source is needed. %1</source>
            <translation>Lo que su laboratorio sabe de un método, por su validación, por ejemplo. Un número de aquí va antes que el del fotómetro y el del material volumétrico, en cada tanda con ese método que se planifique desde ahora; una celda vacía se lo deja a ellos. Incertidumbres típicas (k = 1); la fuente es necesaria. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodView</name>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>What was done with it</source>
            <translation>Qué se hizo con él</translation>
        </message>
        <message>
            <source>About the method</source>
            <translation>Sobre el método</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>Mét&amp;odo</translation>
        </message>
        <message>
            <source>Ver&amp;sions</source>
            <translation>Ver&amp;siones</translation>
        </message>
        <message>
            <source>Histor&amp;y</source>
            <translation>H&amp;istorial</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>&amp;Cambiar…</translation>
        </message>
        <message>
            <source>New from &amp;this…</source>
            <translation>N&amp;uevo a partir de este…</translation>
        </message>
        <message>
            <source>E&amp;xport to a file…</source>
            <translation>E&amp;xportar a un archivo…</translation>
        </message>
        <message>
            <source>Version %1, %2, %3; runs: %4</source>
            <translation>Versión %1, %2, %3; tandas: %4</translation>
        </message>
        <message>
            <source>&amp;Reason to use it again</source>
            <translation>Motivo para &amp;usarlo de nuevo</translation>
        </message>
        <message>
            <source>&amp;Reason to retire it</source>
            <translation>Motivo para darlo de &amp;baja</translation>
        </message>
        <message>
            <source>Re&amp;instate</source>
            <translation>&amp;Reactivar</translation>
        </message>
        <message>
            <source>Ret&amp;ire</source>
            <translation>&amp;Dar de baja</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodViewText</name>
        <message>
            <source>%1 to %2 %3</source>
            <translation>%1 a %2 %3</translation>
        </message>
        <message>
            <source>add %1 mL %2</source>
            <translation>añadir %1 mL de %2</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>añadir %1</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>wait %1 at %2</source>
            <translation>esperar %1 a %2</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>esperar %1</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>leer %1</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Precauciones</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principio</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Reacciones</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 con %2</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Qué mide</translation>
        </message>
        <message>
            <source>%1 g/mol</source>
            <translation>%1 g/mol</translation>
        </message>
        <message>
            <source>%1 %2 per molecule</source>
            <translation>%1 %2 por molécula</translation>
        </message>
        <message>
            <source>usually %1</source>
            <translation>normalmente %1</translation>
        </message>
        <message>
            <source>What comes from other results</source>
            <translation>Qué procede de otros resultados</translation>
        </message>
        <message>
            <source>Photometer</source>
            <translation>Fotómetro</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) at %2 nm</source>
            <translation>%1 L/(mol cm) a %2 nm</translation>
        </message>
        <message>
            <source>that of the chromophore</source>
            <translation>la del cromóforo</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Cromóforo</translation>
        </message>
        <message>
            <source>%1, made by the reaction</source>
            <translation>%1, formado por la reacción</translation>
        </message>
        <message>
            <source>%1, used up by the reaction</source>
            <translation>%1, consumido por la reacción</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Camino óptico</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absortividad</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>tal como se leen</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>llevadas al volumen final</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluyente</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>iniciador</translation>
        </message>
        <message>
            <source>%1 allowed</source>
            <translation>se admite %1</translation>
        </message>
        <message>
            <source>suspension: swirl before use</source>
            <translation>suspensión: agitar antes de usar</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Componentes</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>%1 is a series; a line through its last %2 readings is taken back to the moment %3 was added.</source>
            <translation>%1 es una serie; una recta por sus últimas %2 lecturas se lleva al momento en que se añadió %3.</translation>
        </message>
        <message>
            <source>Measuring window and acceptance</source>
            <translation>Intervalo de medida y aceptación</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Señal neta</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Absorbancia máxima</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Absorbancia que debe quedar</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Señal máxima del blanco</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Recuperación de un patrón</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Recuperación de una fortificación</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Repetibilidad</translation>
        </message>
        <message>
            <source>r = %1 g/L + %2 % of the mean</source>
            <translation>r = %1 g/L + %2 % de la media</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Patrón habitual</translation>
        </message>
        <message>
            <source>%1 g/L</source>
            <translation>%1 g/L</translation>
        </message>
        <message>
            <source>The standard loses</source>
            <translation>El patrón pierde</translation>
        </message>
        <message>
            <source>%1 % in an hour</source>
            <translation>%1 % por hora</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Tubos de una gradilla</translation>
        </message>
        <message>
            <source>blanks: %1, of each sample: %2, standards: %3</source>
            <translation>blancos: %1, de cada muestra: %2, patrones: %3</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Preparación de las muestras</translation>
        </message>
        <message>
            <source>What interferes</source>
            <translation>Qué interfiere</translation>
        </message>
        <message>
            <source>What is from memory was set down by whoever wrote the method, for a shipped one by the makers of the program, without a published source.</source>
            <translation>Lo que es de memoria lo anotó quien redactó el método, en los suministrados los autores del programa, sin fuente publicada.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsModel</name>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Versión</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Origin</source>
            <translation>Procedencia</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Tandas</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>What was changed and why</source>
            <translation>Qué se cambió y por qué</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsPage</name>
        <message>
            <source>Methods</source>
            <translation>Métodos</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, state or origin</source>
            <translation>&amp;Buscar nombre, estado o procedencia</translation>
        </message>
        <message>
            <source>There is no method yet. Import one from a file, or write a new one.</source>
            <translation>Aún no hay ningún método. Importe uno de un archivo o escriba uno nuevo.</translation>
        </message>
        <message>
            <source>No method contains all of these words. Remove one to find more.</source>
            <translation>Ningún método tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>Ne&amp;w method…</source>
            <translation>Méto&amp;do nuevo…</translation>
        </message>
        <message>
            <source>&amp;Import from a file…</source>
            <translation>&amp;Importar de un archivo…</translation>
        </message>
        <message>
            <source>A method that is not saved yet</source>
            <translation>Un método que aún no está guardado</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Import a method</source>
            <translation>Importar un método</translation>
        </message>
        <message>
            <source>Method files (*.json);;All files (*)</source>
            <translation>Archivos de método (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Export the method</source>
            <translation>Exportar el método</translation>
        </message>
        <message>
            <source>Method files (*.json)</source>
            <translation>Archivos de método (*.json)</translation>
        </message>
        <message>
            <source>The method was written to %1.</source>
            <translation>El método se ha escrito en %1.</translation>
        </message>
        <message>
            <source>The method is in use again.</source>
            <translation>El método está de nuevo en uso.</translation>
        </message>
        <message>
            <source>The method is retired: new runs are not offered it, its runs keep it.</source>
            <translation>El método está de baja: no se propone a las tandas nuevas, sus tandas lo conservan.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MomentField</name>
        <message>
            <source>%1 min ago</source>
            <translation>hace %1 min</translation>
        </message>
        <message>
            <source>%1 h %2 min ago</source>
            <translation>hace %1 h %2 min</translation>
        </message>
        <message>
            <source>%1 days ago</source>
            <translation>hace %1 días</translation>
        </message>
        <message>
            <source>e.g. 8:10, or with the date</source>
            <translation>p. ej. 8:10, o con la fecha</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NameDoubts</name>
        <message>
            <source>A name with a figure in it: was a reading meant?</source>
            <translation>Un nombre con una cifra: ¿quería escribir una lectura?</translation>
        </message>
        <message>
            <source>Nobody of that name is set up: they can work, but not sign.</source>
            <translation>Nadie con ese nombre está dado de alta: esta persona puede trabajar, pero no firmar.</translation>
        </message>
        <message>
            <source>This name is retired: they can work, but not sign.</source>
            <translation>Este nombre está dado de baja: esta persona puede trabajar, pero no firmar.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NetworkSource</name>
        <message>
            <source>there is no answer; check name, port number and network</source>
            <translation>no hay respuesta; compruebe el nombre, el número de puerto y la red</translation>
        </message>
        <message>
            <source>there is no such host; check the name</source>
            <translation>el host no existe; compruebe el nombre</translation>
        </message>
        <message>
            <source>nothing answers on this port number</source>
            <translation>nada responde en este número de puerto</translation>
        </message>
        <message>
            <source>the other side closed it</source>
            <translation>el otro lado la cerró</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NextStrip</name>
        <message>
            <source>Next</source>
            <translation>Siguiente</translation>
        </message>
        <message>
            <source>Done now  F9</source>
            <translation>Hecho ahora  F9</translation>
        </message>
        <message>
            <source>&amp;Go to it</source>
            <translation>Ir a&amp;llí</translation>
        </message>
        <message>
            <source>Sound is off</source>
            <translation>Sonido desactivado</translation>
        </message>
        <message>
            <source>Sound is on</source>
            <translation>Sonido activado</translation>
        </message>
        <message>
            <source>Press to hear when something is due</source>
            <translation>Pulse para oír cuándo hay algo que hacer</translation>
        </message>
        <message>
            <source>Press to silence it</source>
            <translation>Pulse para silenciarlo</translation>
        </message>
        <message>
            <source>Nothing due</source>
            <translation>Nada que hacer ahora</translation>
        </message>
        <message>
            <source>Rack %1: %2</source>
            <translation>Gradilla %1: %2</translation>
        </message>
        <message>
            <source>Rack %1: %2 of %3 read</source>
            <translation>Gradilla %1: %2 de %3 leídas</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberEntry</name>
        <message>
            <source>Not a number</source>
            <translation>No es un número</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberReader</name>
        <message>
            <source>is empty; a number is needed</source>
            <translation>está vacío; hace falta un número</translation>
        </message>
        <message>
            <source>"%1" is not a number. %2</source>
            <translation>«%1» no es un número. %2</translation>
        </message>
        <message>
            <source>must be a whole number, not %1</source>
            <translation>debe ser un número entero, no %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::OfferField</name>
        <message>
            <source>↓ for a list</source>
            <translation>↓ para una lista</translation>
        </message>
        <message>
            <source>What is offered</source>
            <translation>Lo que se ofrece</translation>
        </message>
        <message>
            <source>↓ takes %1</source>
            <translation>↓ toma %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PanelPicture</name>
        <message>
            <source>centre</source>
            <translation>línea central</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbancia</translation>
        </message>
        <message>
            <source>recovery</source>
            <translation>recuperación</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 en %2</translation>
        </message>
        <message>
            <source>%1; limits provisional</source>
            <translation>%1; límites provisionales</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PatternForm</name>
        <message>
            <source>the only number of the line</source>
            <translation>el único número de la línea</translation>
        </message>
        <message>
            <source>a number counted from the left</source>
            <translation>un número contado desde la izquierda</translation>
        </message>
        <message>
            <source>the number after a text</source>
            <translation>el número detrás de un texto</translation>
        </message>
        <message>
            <source>such as ABS</source>
            <translation>como ABS</translation>
        </message>
        <message>
            <source>every line</source>
            <translation>todas las líneas</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguna</translation>
        </message>
        <message>
            <source>&amp;Absorbance is</source>
            <translation>&amp;Absorbancia es</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <translation>&amp;Número</translation>
        </message>
        <message>
            <source>Beh&amp;ind</source>
            <translation>De&amp;trás de</translation>
        </message>
        <message>
            <source>&amp;Decimal mark</source>
            <translation>Si&amp;gno decimal</translation>
        </message>
        <message>
            <source>Only lines &amp;with</source>
            <translation>&amp;Solo líneas con</translation>
        </message>
        <message>
            <source>S&amp;kip lines with</source>
            <translation>O&amp;mitir líneas con</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>Co&amp;dificación</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Pdf</name>
        <message>
            <source>%1 was not written: the pages could not be drawn.</source>
            <translation>%1 no se ha escrito: no se pudieron dibujar las páginas.</translation>
        </message>
        <message>
            <source>%1 was not written: %2. Name a file in a folder that you may write to.</source>
            <translation>%1 no se ha escrito: %2. Indique un archivo en una carpeta en la que pueda escribir.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsForm</name>
        <message>
            <source>Wh&amp;at</source>
            <translation>&amp;Qué</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>Nom&amp;bre</translation>
        </message>
        <message>
            <source>Ro&amp;le</source>
            <translation>&amp;Función</translation>
        </message>
        <message>
            <source>N&amp;ew passphrase</source>
            <translation>Frase de contrase&amp;ña nueva</translation>
        </message>
        <message>
            <source>Repea&amp;t passphrase</source>
            <translation>La misma de n&amp;uevo</translation>
        </message>
        <message>
            <source>At least 8 characters; several words that only its owner would put together make a good one. Its owner types it.</source>
            <translation>Al menos 8 caracteres; varias palabras que solo su titular juntaría dan una buena frase. La escribe su titular.</translation>
        </message>
        <message>
            <source>&amp;Reason</source>
            <translation>Mot&amp;ivo</translation>
        </message>
        <message>
            <source>Signed b&amp;y</source>
            <translation>Firmado &amp;por</translation>
        </message>
        <message>
            <source>S&amp;igner's passphrase</source>
            <translation>Frase de contraseña de qui&amp;en firma</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Gu&amp;ardar</translation>
        </message>
        <message>
            <source>Add a person</source>
            <translation>Añadir una persona</translation>
        </message>
        <message>
            <source>Reinstate</source>
            <translation>Reactivar</translation>
        </message>
        <message>
            <source>Change name or role</source>
            <translation>Cambiar nombre o función</translation>
        </message>
        <message>
            <source>Set another passphrase</source>
            <translation>Poner otra frase de contraseña</translation>
        </message>
        <message>
            <source>Retire</source>
            <translation>Dar de baja</translation>
        </message>
        <message>
            <source>The first person</source>
            <translation>La primera persona</translation>
        </message>
        <message>
            <source>Change the list</source>
            <translation>Cambiar la lista</translation>
        </message>
        <message>
            <source>&amp;Set up people</source>
            <translation>Dar de &amp;alta personas</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Is the head, who signs decisions and keeps this list.</source>
            <translation>Es el jefe, que firma decisiones y lleva esta lista.</translation>
        </message>
        <message>
            <source>This passphrase cannot be used: %1.</source>
            <translation>Esta frase de contraseña no se puede usar: %1.</translation>
        </message>
        <message>
            <source>The two new passphrases differ: type the new one again, and once more below it.</source>
            <translation>Las dos frases de contraseña nuevas difieren: escriba la nueva de nuevo, y otra vez debajo.</translation>
        </message>
        <message>
            <source>Say who it is: the name that stands beside what is signed.</source>
            <translation>Indique quién es: el nombre que figura junto a lo firmado.</translation>
        </message>
        <message>
            <source>Say why: the reason stands in the record.</source>
            <translation>Indique por qué: el motivo figura en el registro.</translation>
        </message>
        <message>
            <source>It needs the passphrase of %1: type it.</source>
            <translation>Hace falta la frase de contraseña de %1: escríbala.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsModel</name>
        <message>
            <source>retired, may not sign</source>
            <translation>de baja, no firma nada</translation>
        </message>
        <message>
            <source>may sign</source>
            <translation>puede firmar</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Role</source>
            <translation>Función</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsPage</name>
        <message>
            <source>People are set up: from now on decisions are signed. Add a second head, so that a lost passphrase can be replaced.</source>
            <translation>Hay personas dadas de alta: desde ahora las decisiones se firman. Añada un segundo jefe, para que se pueda sustituir una frase de contraseña perdida.</translation>
        </message>
        <message>
            <source>%1 is on the list.</source>
            <translation>%1 está en la lista.</translation>
        </message>
        <message>
            <source>%1 is changed; what was signed keeps the name and role of its time.</source>
            <translation>%1 está cambiado; lo firmado conserva el nombre y la función de su momento.</translation>
        </message>
        <message>
            <source>The new passphrase holds from now on.</source>
            <translation>La nueva frase de contraseña vale desde ahora.</translation>
        </message>
        <message>
            <source>Retired; what was signed stays.</source>
            <translation>De baja; lo firmado se queda.</translation>
        </message>
        <message>
            <source>Reinstated, with the passphrase as it was.</source>
            <translation>Reactivado, con la frase de contraseña como estaba.</translation>
        </message>
        <message>
            <source>Decisions are signed by these people, each with a passphrase. Choose one to change; every change is signed.</source>
            <translation>Estas personas firman las decisiones, cada una con una frase de contraseña. Elija una para cambiarla; cada cambio se firma.</translation>
        </message>
        <message>
            <source>Nobody is set up yet.

Until then a decision carries the name that was typed and is unsigned, and reports say so. From the first person on, every decision on a run, and every choice of the result that is reported, is signed with a passphrase; there is no way back to unsigned decisions.

The first person is the head, who adds the others. Passphrases are kept only as a hash: nobody can look one up, and a head replaces one that is lost.</source>
            <translation>Aún no hay personas dadas de alta.

Hasta entonces una decisión lleva el nombre que se escribió y está sin firmar, y los informes lo dicen. Desde la primera persona, cada decisión sobre una tanda, y cada elección del resultado que se informa, se firma con una frase de contraseña; no hay vuelta a las decisiones sin firmar.

La primera persona es el jefe, que añade a las demás. Las frases de contraseña se guardan solo como hash: nadie puede consultar una, y un jefe sustituye la que se pierda.</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personas</translation>
        </message>
        <message>
            <source>A change to the list of people, not stored yet</source>
            <translation>Un cambio de la lista de personas, aún sin guardar</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsWords</name>
        <message>
            <source>Analyst</source>
            <translation>Analista</translation>
        </message>
        <message>
            <source>Reviewer</source>
            <translation>Revisor</translation>
        </message>
        <message>
            <source>Head</source>
            <translation>Jefe</translation>
        </message>
        <message>
            <source>Signs decisions, unless the laboratory wants a reviewer's signature.</source>
            <translation>Firma decisiones, salvo que el laboratorio exija la firma de un revisor.</translation>
        </message>
        <message>
            <source>Signs decisions.</source>
            <translation>Firma decisiones.</translation>
        </message>
        <message>
            <source>Signs decisions and keeps this list.</source>
            <translation>Firma decisiones y lleva esta lista.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerForm</name>
        <message>
            <source>Photometer</source>
            <translation>Fotómetro</translation>
        </message>
        <message>
            <source>The photometer that the runs are read in. What its check records say of a reading and of the path length goes into the budgets; until then common practice does, and is said to. With all fields empty no photometer is kept.</source>
            <translation>El fotómetro en el que se leen las tandas. Lo que sus registros de comprobación dicen de una lectura y del camino óptico entra en los balances; hasta entonces lo hace la práctica habitual, y se dice que lo es. Con todos los campos vacíos no se guarda ningún fotómetro.</translation>
        </message>
        <message>
            <source>Name or number</source>
            <translation>Nombre o número</translation>
        </message>
        <message>
            <source>u of one reading (k = 1)</source>
            <translation>u de una lectura (k = 1)</translation>
        </message>
        <message>
            <source>u of the path length (k = 1)</source>
            <translation>u del camino óptico (k = 1)</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Check record that says so</source>
            <translation>Registro de comprobación que lo dice</translation>
        </message>
        <message>
            <source>Checked on</source>
            <translation>Comprobado el</translation>
        </message>
        <message>
            <source>%1; may stay empty</source>
            <translation>%1; puede quedar vacío</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerStore</name>
        <message>
            <source>Name: %1.</source>
            <translation>Nombre: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteGrid</name>
        <message>
            <source>Tubes of the rack</source>
            <translation>Tubos de la gradilla</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteKeys</name>
        <message>
            <source>&amp;Tick  Space</source>
            <translation>M&amp;arcar  Espacio</translation>
        </message>
        <message>
            <source>Ro&amp;w  +</source>
            <translation>&amp;Fila  +</translation>
        </message>
        <message>
            <source>&amp;All tubes  *</source>
            <translation>Todo&amp;s los tubos  *</translation>
        </message>
        <message>
            <source>&amp;Undo  −</source>
            <translation>&amp;Deshacer  −</translation>
        </message>
        <message>
            <source>Other volum&amp;e  0–9</source>
            <translation>Otro vol&amp;umen  0–9</translation>
        </message>
        <message>
            <source>&amp;Spoilt  /</source>
            <translation>Malo&amp;grado  /</translation>
        </message>
        <message>
            <source>Pipette&amp;d from paper</source>
            <translation>&amp;Pipeteado según papel</translation>
        </message>
        <message>
            <source>Not &amp;spoilt  /</source>
            <translation>No ma&amp;logrado  /</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteModel</name>
        <message>
            <source>Tube %1</source>
            <translation>Tubo %1</translation>
        </message>
        <message>
            <source>to do</source>
            <translation>por hacer</translation>
        </message>
        <message>
            <source>done</source>
            <translation>hecho</translation>
        </message>
        <message>
            <source>not ticked, but read since</source>
            <translation>no marcado, pero leído desde entonces</translation>
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
            <translation>&amp;Conservar</translation>
        </message>
        <message>
            <source>Volume in %1</source>
            <translation>Volumen en %1</translation>
        </message>
        <message>
            <source>No&amp;te</source>
            <translation>&amp;Nota</translation>
        </message>
        <message>
            <source>Volume that went in, in %1</source>
            <translation>Volumen que entró, en %1</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mot&amp;ivo</translation>
        </message>
        <message>
            <source>&amp;Cancel  Esc</source>
            <translation>&amp;Cancelar  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePage</name>
        <message>
            <source>%1 of tube %2 is not read yet, and after %3 it cannot be. Read it first, or press the key again to tick all the same.</source>
            <translation>%1 del tubo %2 aún no se ha leído, y después de %3 ya no se podrá. Léalo primero o pulse la tecla de nuevo para marcar de todos modos.</translation>
        </message>
        <message>
            <source>taken back at once</source>
            <translation>deshecho enseguida</translation>
        </message>
        <message>
            <source>Go to the tube with the arrow keys and press / there.</source>
            <translation>Vaya al tubo con las flechas y pulse / ahí.</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>tubo %1: %2</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Indique por qué el tubo sí cuenta y pulse Intro.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Indique qué le pasó al tubo y pulse Intro.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt: %2. Undo (−) takes that back.</source>
            <translation>El tubo %1 está marcado como malogrado: %2. Deshacer (−) lo anula.</translation>
        </message>
        <message>
            <source>Steps of the method</source>
            <translation>Pasos del método</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. What you did here waits for it.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro. Lo que hizo aquí lo espera.</translation>
        </message>
        <message>
            <source>Ticked together, %1 tubes count as started at this moment, and their waits are timed from it. Tick each tube as %2 goes in, or press the key again if all of them got it at once.</source>
            <translation>Marcados juntos, %1 tubos cuentan como iniciados en este momento, y sus esperas se cuentan desde él. Marque cada tubo cuando entra %2, o pulse de nuevo la tecla si todos lo recibieron a la vez.</translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is noted as opened today; it keeps %n days from now.</source>
            <translation>
                <numerusform>El lote %1 queda anotado como abierto hoy; se conserva %n día desde ahora.</numerusform>
                <numerusform>El lote %1 queda anotado como abierto hoy; se conserva %n días desde ahora.</numerusform>
            </translation>
        </message>
        <message>
            <source>By the book lot %1 does not hold another tube of this, and no other lot is fit. Choose or receive one, or press the key again to take more of it all the same.</source>
            <translation>Según las existencias, el lote %1 no alcanza para otro tubo, y ningún otro lote es apto. Elija o reciba otro, o pulse la tecla otra vez para tomar más de él de todos modos.</translation>
        </message>
        <message>
            <source>By the book lot %1 is used up: what comes now is noted on lot %2. Take that one.</source>
            <translation>Según las existencias, el lote %1 está agotado: lo que sigue se anota en el lote %2. Tome ese.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePanel</name>
        <message>
            <source>&amp;Lot</source>
            <translation>L&amp;ote</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>P&amp;ipeta</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSheet</name>
        <message>
            <source>Mix</source>
            <translation>Mezclar</translation>
        </message>
        <message>
            <source>Read %1</source>
            <translation>Leer %1</translation>
        </message>
        <message>
            <source>Dilute %1: %2</source>
            <translation>Diluir %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSource</name>
        <message>
            <source>%1, use by %2</source>
            <translation>%1, válido hasta %2</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>no anotado</translation>
        </message>
        <message>
            <source>By the book lot %1 does not hold what this tube takes.</source>
            <translation>Según las existencias, el lote %1 no contiene lo que necesita este tubo.</translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is enough for %n tubes more; then take lot %2.</source>
            <translation>
                <numerusform>El lote %1 alcanza para %n tubo más; después tome el lote %2.</numerusform>
                <numerusform>El lote %1 alcanza para %n tubos más; después tome el lote %2.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is enough for %n tubes more, and no other lot is fit.</source>
            <translation>
                <numerusform>El lote %1 alcanza para %n tubo más, y ningún otro lote es apto.</numerusform>
                <numerusform>El lote %1 alcanza para %n tubos más, y ningún otro lote es apto.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteStepsModel</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Paso</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSubject</name>
        <message>
            <source>Tube %1: nothing in this round</source>
            <translation>Tubo %1: nada en esta ronda</translation>
        </message>
        <message>
            <source>Tube %1: spoilt</source>
            <translation>Tubo %1: malogrado</translation>
        </message>
        <message>
            <source>Tube %1: %2 %3 is in</source>
            <translation>Tubo %1: %2 de %3 ya dentro</translation>
        </message>
        <message>
            <source>Tube %1: read since</source>
            <translation>Tubo %1: leído desde entonces</translation>
        </message>
        <message>
            <source>First: %1.</source>
            <translation>Primero: %1.</translation>
        </message>
        <message>
            <source>Swirl before use.</source>
            <translation>Agitar antes de usar.</translation>
        </message>
        <message>
            <source>Mix afterwards.</source>
            <translation>Mezclar después.</translation>
        </message>
        <message>
            <source>Addition %1 of %2
%3</source>
            <translation>Adición %1 de %2
%3</translation>
        </message>
        <message>
            <source>Everything is pipetted and read</source>
            <translation>Todo está pipeteado y leído</translation>
        </message>
        <message>
            <source>Enter opens the review.</source>
            <translation>Intro abre la revisión.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>&amp;Revisar esta gradilla</translation>
        </message>
        <message>
            <source>Pipetted from paper</source>
            <translation>Pipeteado según papel</translation>
        </message>
        <message>
            <source>Nothing was ticked on this worksheet. Enter goes on to the readings; to tick all the same, choose an addition among the steps.</source>
            <translation>No se marcó nada en esta hoja de trabajo. Intro pasa a las lecturas; para marcar de todos modos, elija una adición entre los pasos.</translation>
        </message>
        <message>
            <source>&amp;Key readings</source>
            <translation>&amp;Introducir lecturas</translation>
        </message>
        <message>
            <source>read %1 of every tube</source>
            <translation>leer %1 de cada tubo</translation>
        </message>
        <message>
            <source>%1, then %2</source>
            <translation>%1, después %2</translation>
        </message>
        <message>
            <source>Now read %1</source>
            <translation>Ahora leer %1</translation>
        </message>
        <message>
            <source>%1. Read so far: %2.</source>
            <translation>%1. Leídos hasta ahora: %2.</translation>
        </message>
        <message>
            <source>&amp;Key %1</source>
            <translation>&amp;Introducir %1</translation>
        </message>
        <message>
            <source>Tube %1: how much %2 actually went in? The worksheet says %3.</source>
            <translation>Tubo %1: ¿cuánto %2 entró realmente? La hoja de trabajo dice %3.</translation>
        </message>
        <message>
            <source>Tube %1 is spoilt and will not count. What happened to it?</source>
            <translation>El tubo %1 está malogrado y no contará. ¿Qué le pasó?</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt (%2). Why does it count after all?</source>
            <translation>El tubo %1 está marcado como malogrado (%2). ¿Por qué sí cuenta?</translation>
        </message>
        <message>
            <source>Tube %1 does not count. Press / to let it count again.</source>
            <translation>El tubo %1 no cuenta. Pulse / para que vuelva a contar.</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is marked as spoilt again (%2).</source>
            <translation>Deshecho: el tubo %1 vuelve a estar marcado como malogrado (%2).</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is not marked as spoilt any more (%2).</source>
            <translation>Deshecho: el tubo %1 ya no está marcado como malogrado (%2).</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2; %3 counts again.</source>
            <translation>Deshecho: %1 en el tubo %2; %3 vuelve a contar.</translation>
        </message>
        <message>
            <source>Ticked again: %1 in tube %2.</source>
            <translation>Marcado de nuevo: %1 en el tubo %2.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2.</source>
            <translation>Deshecho: %1 en el tubo %2.</translation>
        </message>
        <message>
            <source>Taken back: %1 in tubes %2.</source>
            <translation>Deshecho: %1 en los tubos %2.</translation>
        </message>
        <message>
            <source>%1 is far from %2. Check unit and decimal mark; Enter again keeps it.</source>
            <translation>%1 está lejos de %2. Compruebe la unidad y el signo decimal; Intro otra vez lo conserva.</translation>
        </message>
        <message>
            <source>First make the dilutions that head the steps.</source>
            <translation>Primero haga las diluciones que encabezan los pasos.</translation>
        </message>
        <message>
            <source>Wait, then read %1</source>
            <translation>Esperar, luego leer %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteWords</name>
        <message>
            <source>%1, not %2</source>
            <translation>%1, no %2</translation>
        </message>
        <message>
            <source>Tube %1: add %2 %3</source>
            <translation>Tubo %1: añadir %2 de %3</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: add %3 %4</source>
            <translation>Gradilla %1, tubo %2: añadir %3 de %4</translation>
        </message>
        <message>
            <source>%1, diluted %2</source>
            <translation>%1, diluida %2</translation>
        </message>
        <message>
            <source>%1, where most tubes get %2</source>
            <translation>%1, donde la mayoría de los tubos recibe %2</translation>
        </message>
        <message>
            <source>%1 in place of %2</source>
            <translation>%1 en lugar de %2</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nada</translation>
        </message>
        <message>
            <source>spoilt: %1</source>
            <translation>malogrado: %1</translation>
        </message>
        <message>
            <source>noted, not %1</source>
            <translation>anotado, no %1</translation>
        </message>
        <message>
            <source>as planned</source>
            <translation>como estaba previsto</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>to read</source>
            <translation>por leer</translation>
        </message>
        <message>
            <source>tubes %1 of %2</source>
            <translation>tubos %1 de %2</translation>
        </message>
        <message>
            <source>diluted %1-fold</source>
            <translation>diluida %1 veces</translation>
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
            <translation>título</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longitud de onda</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>calibración</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>mass</source>
            <translation>masa</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>take</source>
            <translation>tomar</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>enrasar a</translation>
        </message>
        <message>
            <source>volume in the tube</source>
            <translation>volumen en el tubo</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentración</translation>
        </message>
        <message>
            <source>prepared at</source>
            <translation>preparado el</translation>
        </message>
        <message>
            <source>used at</source>
            <translation>usado el</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>pérdida por hora</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubos</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>fortificación</translation>
        </message>
        <message>
            <source>expected</source>
            <translation>esperado</translation>
        </message>
        <message>
            <source>received</source>
            <translation>recibido</translation>
        </message>
        <message>
            <source>standard uncertainties</source>
            <translation>incertidumbres típicas</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbancia</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>each dilution step</source>
            <translation>cada paso de dilución</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>incertidumbre típica</translation>
        </message>
        <message>
            <source>extract of a solid</source>
            <translation>extracto de un sólido</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>muestras</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>patrón</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>muestra %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>patrón %1</translation>
        </message>
        <message>
            <source>tube %1 (%2)</source>
            <translation>tubo %1 (%2)</translation>
        </message>
        <message>
            <source>dilution step %1</source>
            <translation>paso de dilución %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>control %1</translation>
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
            <translation>Utili&amp;zar un patrón</translation>
        </message>
        <message>
            <source>Run a control of &amp;known value</source>
            <translation>U&amp;sar un control de valor conocido</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Líquido</translation>
        </message>
        <message>
            <source>Solid, weighed and extracted</source>
            <translation>Sólido, pesado y extraído</translation>
        </message>
        <message>
            <source>By absorptivity</source>
            <translation>Por la absortividad</translation>
        </message>
        <message>
            <source>By the run's standard</source>
            <translation>Por el patrón de la tanda</translation>
        </message>
        <message>
            <source>By a line through its standards</source>
            <translation>Por una recta por sus patrones</translation>
        </message>
        <message>
            <source>Plan a run</source>
            <translation>Planificar una tanda</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>Mét&amp;odo</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <translation>Tít&amp;ulo</translation>
        </message>
        <message>
            <source>&amp;Samples, one per line</source>
            <translation>Mu&amp;estras, una por línea</translation>
        </message>
        <message>
            <source>Tubes for &amp;each sample</source>
            <translation>Tu&amp;bos por cada muestra</translation>
        </message>
        <message>
            <source>Samples &amp;are</source>
            <translation>&amp;Forma de las muestras</translation>
        </message>
        <message>
            <source>&amp;Wavelength</source>
            <translation>Lon&amp;gitud de onda</translation>
        </message>
        <message>
            <source>Path &amp;length</source>
            <translation>&amp;Camino óptico</translation>
        </message>
        <message>
            <source>&amp;Calibration</source>
            <translation>C&amp;alibración</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Blank tubes</source>
            <translation>Tubos de blanco</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PlanPage</name>
        <message>
            <source>Method and cautions</source>
            <translation>Método y precauciones</translation>
        </message>
        <message>
            <source>What the plan gives</source>
            <translation>En qué queda el plan</translation>
        </message>
        <message>
            <source>Rack</source>
            <translation>Gradilla</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Tiempo</translation>
        </message>
        <message>
            <source>Reagents</source>
            <translation>Reactivos</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>Cola</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>&amp;Poner en la mesa</translation>
        </message>
        <message>
            <source>Drag a tube, or move it with Ctrl and an arrow key.</source>
            <translation>Arrastre un tubo, o muévalo con Ctrl y una flecha.</translation>
        </message>
        <message>
            <source>The lot to use up first is chosen; choose another in its cell. Lots are kept under Books, Lots.</source>
            <translation>Está elegido el lote que se debe agotar primero; elija otro en su celda. Los lotes se llevan en Libros, Lotes.</translation>
        </message>
        <message>
            <source>Samples waiting</source>
            <translation>Muestras en espera</translation>
        </message>
        <message>
            <source>Take the ticked ones</source>
            <translation>Tomar las marcadas</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Books, Samples; repeats that decided runs advise come by themselves.</source>
            <translation>No espera ninguna muestra. Las muestras se registran en Libros, Muestras; las repeticiones que aconsejan las tandas decididas llegan por sí solas.</translation>
        </message>
        <message>
            <source>Tick with the space bar what goes into this run.</source>
            <translation>Marque con la barra espaciadora lo que entra en esta tanda.</translation>
        </message>
        <message>
            <source>No method is installed, so no run can be put together here.</source>
            <translation>No hay ningún método instalado, así que aquí no se puede componer ninguna tanda.</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>el libro de patrones, preparado el %1</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Equipos</translation>
        </message>
        <message>
            <source>That is too old (%1): make a fresh one below.</source>
            <translation>Eso es demasiado antiguo (%1): prepare uno nuevo abajo.</translation>
        </message>
        <message>
            <source>Tubes: %1</source>
            <translation>Tubos: %1</translation>
        </message>
        <message>
            <source>%1. Still to be put right:</source>
            <translation>%1. Aún por corregir:</translation>
        </message>
        <message>
            <source>%1. One person cannot read them all in time: see Time.</source>
            <translation>%1. Una persona no puede leerlos todos a tiempo: véase Tiempo.</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way, but look at this:</source>
            <translation>%1. Nada lo impide, pero mire esto:</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way.</source>
            <translation>%1. Nada lo impide.</translation>
        </message>
        <message>
            <source>First tick the samples to take with the space bar.</source>
            <translation>Marque primero con la barra espaciadora las muestras que se toman.</translation>
        </message>
        <message>
            <source>The run is not on the bench yet: first put right what the list names.</source>
            <translation>La tanda aún no está en la mesa: corrija primero lo que nombra la lista.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro.</translation>
        </message>
        <message>
            <source>Explain this warning</source>
            <translation>Explicar esta advertencia</translation>
        </message>
        <message>
            <source>What the warning means, and what to do about it; F1 does the same</source>
            <translation>De qué se advierte y qué hacer; F1 hace lo mismo</translation>
        </message>
        <message>
            <source>When it goes into its first tube it is worth about %1, of %2 when made.</source>
            <translation>Cuando entra en su primer tubo vale alrededor de %1, de %2 al prepararlo.</translation>
        </message>
        <message>
            <source>When it is used (%1) it is worth about %2, of %3 when made.</source>
            <translation>Cuando se usa (%1) vale alrededor de %2, de %3 al prepararlo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointChart</name>
        <message>
            <source>There is no history yet.</source>
            <translation>Aún no hay historial.</translation>
        </message>
        <message>
            <source>limits %1 to %2</source>
            <translation>límites %1 a %2</translation>
        </message>
        <message>
            <source>lower limit %1</source>
            <translation>límite inferior %1</translation>
        </message>
        <message>
            <source>upper limit %1</source>
            <translation>límite superior %1</translation>
        </message>
        <message>
            <source>no limits</source>
            <translation>sin límites</translation>
        </message>
        <message>
            <source>below the limit</source>
            <translation>por debajo del límite</translation>
        </message>
        <message>
            <source>above the limit</source>
            <translation>por encima del límite</translation>
        </message>
        <message>
            <source>within the limits</source>
            <translation>dentro de los límites</translation>
        </message>
        <message>
            <source>%1 on %2</source>
            <translation>%1 el %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Newest %1; %2.</source>
            <translation>El más reciente: %1; %2.</translation>
        </message>
        <message>
            <source>Outside: %1 of %2.</source>
            <translation>Fuera: %1 de %2.</translation>
        </message>
        <message>
            <source>The newest %1 of %2:</source>
            <translation>Los %1 más recientes de %2:</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointPanel</name>
        <message>
            <source>Open the r&amp;un</source>
            <translation>A&amp;brir la tanda</translation>
        </message>
        <message>
            <source>&amp;Leave it out</source>
            <translation>E&amp;xcluirlo</translation>
        </message>
        <message>
            <source>Reason for leaving the point out or taking it back</source>
            <translation>Motivo para excluir el punto o readmitirlo</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Choose a point with the arrow keys or a click; Enter or a second click opens its run.</source>
            <translation>Elija un punto con las flechas o con un clic; Intro o un segundo clic abre su tanda.</translation>
        </message>
        <message>
            <source>&amp;Let it count again</source>
            <translation>&amp;Readmitirlo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationForm</name>
        <message>
            <source>Prepare a standard</source>
            <translation>Preparar un patrón</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Gua&amp;rdar en el libro</translation>
        </message>
        <message>
            <source>S&amp;ubstance</source>
            <translation>&amp;Sustancia</translation>
        </message>
        <message>
            <source>&amp;Add a substance…</source>
            <translation>A&amp;ñadir una sustancia…</translation>
        </message>
        <message>
            <source>&amp;Change it…</source>
            <translation>Camb&amp;iarla…</translation>
        </message>
        <message>
            <source>Fo&amp;r</source>
            <translation>&amp;Para</translation>
        </message>
        <message>
            <source>Analyte &amp;molecules per molecule of substance</source>
            <translation>Moléculas d&amp;e analito por molécula de sustancia</translation>
        </message>
        <message>
            <source>F&amp;lask</source>
            <translation>Matra&amp;z</translation>
        </message>
        <message>
            <source>W&amp;eighed (mg)</source>
            <translation>M&amp;asa pesada (mg)</translation>
        </message>
        <message>
            <source>several portions, e.g. 50.3; 49.8</source>
            <translation>varias porciones como 50,3; 49,8</translation>
        </message>
        <message>
            <source>Name on the flas&amp;k</source>
            <translation>Nom&amp;bre en el matraz</translation>
        </message>
        <message>
            <source>Ma&amp;de</source>
            <translation>Hora &amp;de preparación</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% por hora</translation>
        </message>
        <message>
            <source>Empty where there is no rule beside the loss.</source>
            <translation>Vacío si no hay ninguna regla aparte de la pérdida.</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>N&amp;ota (puede quedar vacía)</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lote %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>another flask</source>
            <translation>otro matraz</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>práctica habitual, sin fuente</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>is missing or not a time: %1</source>
            <translation>falta o no es una hora: %1</translation>
        </message>
        <message>
            <source>Add the substance first: its purity and its molar mass make the strength.</source>
            <translation>Añada primero la sustancia: su pureza y su masa molar dan la concentración.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>Pese %1 y enrase a %2.</translation>
        </message>
        <message>
            <source>That is about %1 of the liquid.</source>
            <translation>Son alrededor de %1 de líquido.</translation>
        </message>
        <message>
            <source>Made: %1 (k = 2).</source>
            <translation>Preparado: %1 (k = 2).</translation>
        </message>
        <message>
            <source>Largest contribution to its uncertainty: %1, %2 of the variance.</source>
            <translation>La mayor parte de su incertidumbre procede de: %1, %2 de la varianza.</translation>
        </message>
        <message>
            <source>Use by %1.</source>
            <translation>Válido hasta %1.</translation>
        </message>
        <message>
            <source>A weighing: %1. u is a standard uncertainty (k = 1).</source>
            <translation>Una pesada: %1. u es una incertidumbre típica (k = 1).</translation>
        </message>
        <message>
            <source>The use-by date of %1, %2, is past.</source>
            <translation>La fecha de caducidad de %1, %2, ya ha pasado.</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Lleve la protección que piden sus normas locales de seguridad y la ficha del proveedor; estas van primero.</translation>
        </message>
        <message>
            <source>Add the substance first: it says purity and molar mass.</source>
            <translation>Añada primero la sustancia: ella indica la pureza y la masa molar.</translation>
        </message>
        <message>
            <source>Strength &amp;wanted</source>
            <translation>&amp;Concentración deseada</translation>
        </message>
        <message>
            <source>&amp;Its volume</source>
            <translation>S&amp;u volumen</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u del matraz y del enrase</translation>
        </message>
        <message>
            <source>u of one weighing</source>
            <translation>u de una pesada</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Pérdida de concentración</translation>
        </message>
        <message>
            <source>Keeps by &amp;your own rule</source>
            <translation>Se conserva se&amp;gún regla propia</translation>
        </message>
        <message>
            <source>One molecule of %1 is %2 times as heavy as one of the analyte: make sure that it holds just one of it.</source>
            <translation>Una molécula de %1 pesa %2 veces lo que una del analito: asegúrese de que contiene solo una.</translation>
        </message>
        <message>
            <source>That is %1 of the strength wanted: look at the mass, the flask and the number of molecules.</source>
            <translation>Eso es el %1 de la concentración deseada: revise la masa, el matraz y el número de moléculas.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationView</name>
        <message>
            <source>Strength when made (k = 2)</source>
            <translation>Concentración al prepararlo (k = 2)</translation>
        </message>
        <message>
            <source>Share of the variance: %1</source>
            <translation>Parte de la varianza: %1</translation>
        </message>
        <message>
            <source>Weighed (u of each)</source>
            <translation>Masa pesada (u de cada pesada)</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Flask (u)</source>
            <translation>Matraz (u)</translation>
        </message>
        <message>
            <source>Made, by</source>
            <translation>Preparado el, por</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Pérdida de concentración</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% por hora</translation>
        </message>
        <message>
            <source>none is stated</source>
            <translation>no se indica ninguna</translation>
        </message>
        <message>
            <source>Use by</source>
            <translation>Válido hasta</translation>
        </message>
        <message>
            <source>Substance</source>
            <translation>Sustancia</translation>
        </message>
        <message>
            <source>Supplier, lot</source>
            <translation>Proveedor, lote</translation>
        </message>
        <message>
            <source>Certificate</source>
            <translation>Certificado</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Pureza</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Agua</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Masa molar</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Discarded because</source>
            <translation>Desechado, porque</translation>
        </message>
        <message>
            <source>How it was made</source>
            <translation>Cómo se preparó</translation>
        </message>
        <message>
            <source>Runs that used it</source>
            <translation>Tandas que lo usaron</translation>
        </message>
        <message>
            <source>No run has used it yet. New run offers it while it can be used.</source>
            <translation>Aún no lo ha usado ninguna tanda. Nueva tanda lo propone mientras está vigente.</translation>
        </message>
        <message>
            <source>Item</source>
            <translation>Dato</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valor</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Tanda</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Comienzo</translation>
        </message>
        <message>
            <source>Age at use</source>
            <translation>Antigüedad al usarlo</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Recuperación</translation>
        </message>
        <message>
            <source>D&amp;iscard</source>
            <translation>&amp;Desecharlo</translation>
        </message>
        <message>
            <source>&amp;Label as PDF…</source>
            <translation>&amp;Etiqueta en PDF…</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>Now %1; %2.</source>
            <translation>Ahora %1; %2.</translation>
        </message>
        <message>
            <source>Say why; the book keeps it.</source>
            <translation>Indique por qué; el libro lo conserva.</translation>
        </message>
        <message>
            <source>Discarded: it is not offered any more; the runs that used it keep it.</source>
            <translation>Desechado: ya no se propone; las tandas que lo usaron lo conservan.</translation>
        </message>
        <message>
            <source>Recovery over its life, for all of this substance</source>
            <translation>Recuperación según la antigüedad, de todos los patrones de esta sustancia</translation>
        </message>
        <message>
            <source>Analyte molecules per molecule of substance</source>
            <translation>Moléculas de analito por molécula</translation>
        </message>
        <message>
            <source>Discarded b&amp;ecause</source>
            <translation>Desechado, &amp;porque</translation>
        </message>
        <message>
            <source>Keeps by your own rule</source>
            <translation>Se conserva según regla propia</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Printing</name>
        <message>
            <source>There is nothing to label: the run has no standard, and no sample of it is diluted or extracted.</source>
            <translation>No hay nada que etiquetar: la tanda no tiene patrón, y ninguna de sus muestras se diluye ni se extrae.</translation>
        </message>
        <message>
            <source>labels.pdf</source>
            <translation>etiquetas.pdf</translation>
        </message>
        <message>
            <source>%1 The sheet is not kept for the next time: %2 can't be written.</source>
            <translation>%1 La hoja no se conserva para la próxima vez: no se puede escribir en %2.</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Guardar como PDF</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Archivos PDF (*.pdf)</translation>
        </message>
        <message>
            <source>%1 was written; open it to look at it or to print it.</source>
            <translation>%1 se ha escrito; ábralo para verlo o imprimirlo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ProblemList</name>
        <message>
            <source>Problems</source>
            <translation>Problemas</translation>
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
            <translation>Gradilla y tiempos</translation>
        </message>
        <message>
            <source>Plans go by these: how many tubes a rack holds, how long one person's hands need, and how much reagent is set out.</source>
            <translation>Los planes se rigen por esto: cuántos tubos contiene una gradilla, cuánto tardan las manos de una persona y cuánto reactivo se prepara.</translation>
        </message>
        <message>
            <source>&amp;Rows of a rack</source>
            <translation>&amp;Filas de una gradilla</translation>
        </message>
        <message>
            <source>&amp;Columns of a rack</source>
            <translation>&amp;Columnas de una gradilla</translation>
        </message>
        <message>
            <source>Time for an add&amp;ition, each tube</source>
            <translation>Tiempo para una &amp;adición, cada tubo</translation>
        </message>
        <message>
            <source>Time to &amp;mix, each tube</source>
            <translation>Tiempo para &amp;mezclar, cada tubo</translation>
        </message>
        <message>
            <source>Time for a r&amp;eading, each tube</source>
            <translation>Tiempo para una &amp;lectura, cada tubo</translation>
        </message>
        <message>
            <source>Reagent be&amp;yond the need</source>
            <translation>Reactivo por &amp;encima de lo necesario</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackGrid</name>
        <message>
            <source>Rack from above</source>
            <translation>Gradilla vista desde arriba</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackModel</name>
        <message>
            <source>blank</source>
            <translation>blanco</translation>
        </message>
        <message>
            <source>%1 blank</source>
            <translation>%1 blanco</translation>
        </message>
        <message>
            <source>%1 spiked</source>
            <translation>%1 fortificada</translation>
        </message>
        <message>
            <source>empty place</source>
            <translation>lugar vacío</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Tubo %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPage</name>
        <message>
            <source>&amp;1  Pipette</source>
            <translation>&amp;1  Pipetear</translation>
        </message>
        <message>
            <source>&amp;2  Read</source>
            <translation>&amp;2  Leer</translation>
        </message>
        <message>
            <source>&amp;3  Review</source>
            <translation>&amp;3  Revisar</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Gradilla %1</translation>
        </message>
        <message>
            <source>%1, version %2, tubes: %3</source>
            <translation>%1, versión %2, tubos: %3</translation>
        </message>
        <message>
            <source>Typed and not stored, so not in the results: %1. Go to it under %2 and store it, or leave it with Esc.</source>
            <translation>Escrito y no guardado, así que no está en los resultados: %1. Vaya allí en %2 y guárdelo, o déjelo con Esc.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipetear</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Leer</translation>
        </message>
        <message>
            <source>This rack %1: %2</source>
            <translation>Esta gradilla %1: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPicture</name>
        <message>
            <source>%1 early by %2</source>
            <translation>%1 %2 antes de tiempo</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 con %2 de retraso</translation>
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
            <translation>Tubos frente al tiempo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. %1</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro. %1</translation>
        </message>
        <message>
            <source>The reading waits for it, and is then stored unless there is something against it.</source>
            <translation>La lectura lo espera, y después se guarda salvo que haya algo en contra.</translation>
        </message>
        <message>
            <source>%1 Press Enter again to store it as read.</source>
            <translation>%1 Pulse Intro otra vez para guardarla tal como se leyó.</translation>
        </message>
        <message>
            <source>The tube waits for it.</source>
            <translation>El tubo lo espera.</translation>
        </message>
        <message>
            <source>Tube %1 counts again.</source>
            <translation>El tubo %1 vuelve a contar.</translation>
        </message>
        <message>
            <source>Tube %1 does not count: %2. To take that back, go to it in the table and press /.</source>
            <translation>El tubo %1 no cuenta: %2. Para anularlo, vaya a él en la tabla y pulse /.</translation>
        </message>
        <message>
            <source>The repeat waits for it.</source>
            <translation>La repetición lo espera.</translation>
        </message>
        <message>
            <source>%1 is in the rack now, from tube %2 on: pipette it as the strip says.</source>
            <translation>%1 está ahora en la gradilla, desde el tubo %2: pipetéela como dice la franja.</translation>
        </message>
        <message>
            <source>%1 came from the photometer and waits until what stands here is stored or left with Esc (waiting in all: %2).</source>
            <translation>%1 llegó del fotómetro y espera hasta que lo que hay aquí se guarde o se deje con Esc (en espera en total: %2).</translation>
        </message>
        <message>
            <source>No tube waits for the readings that came in (%1 in all, the first of them %2); none of them was stored. Go to the tube in the table first.</source>
            <translation>Ningún tubo espera las lecturas que llegaron (%1 en total, la primera de ellas %2); no se ha guardado nada de ellas. Vaya primero al tubo en la tabla.</translation>
        </message>
        <message>
            <source>%1 came for tube “%2”, which is not in this rack; it was not stored.</source>
            <translation>%1 llegó para el tubo «%2», que no está en esta gradilla; no se ha guardado.</translation>
        </message>
        <message>
            <source>Absorbance against time</source>
            <translation>Absorbancia frente al tiempo</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Results so far</source>
            <translation>Resultados hasta ahora</translation>
        </message>
        <message>
            <source>Checks so far</source>
            <translation>Comprobaciones hasta ahora</translation>
        </message>
        <message>
            <source>%1 to %2 after what came before</source>
            <translation>%1 a %2 después de lo anterior</translation>
        </message>
        <message>
            <source>Read it at once: %1 (%2)</source>
            <translation>Léalo enseguida: %1 (%2)</translation>
        </message>
        <message>
            <source>Read it %1 (%2)</source>
            <translation>Léalo %1 (%2)</translation>
        </message>
        <message>
            <source>Read it again %1 (every %2)</source>
            <translation>Léalo de nuevo %1 (cada %2)</translation>
        </message>
        <message>
            <source>Next is to pipette</source>
            <translation>Lo siguiente es pipetear</translation>
        </message>
        <message>
            <source>%1. Enter leads there.</source>
            <translation>%1. Intro lleva allí.</translation>
        </message>
        <message>
            <source>Pipett&amp;e</source>
            <translation>Pip&amp;etear</translation>
        </message>
        <message>
            <source>All readings are in</source>
            <translation>Todas las lecturas están introducidas</translation>
        </message>
        <message>
            <source>Enter opens the review. To correct a reading, go to it in the table with the arrow keys and press Enter there.</source>
            <translation>Intro abre la revisión. Para corregir una lectura, vaya a ella en la tabla con las flechas y pulse Intro ahí.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>&amp;Revisar esta gradilla</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Tubo %1: %2</translation>
        </message>
        <message>
            <source>Stored: %1 (%2, %3)</source>
            <translation>Guardado: %1 (%2, %3)</translation>
        </message>
        <message>
            <source>tube %1, %2: %3</source>
            <translation>tubo %1, %2: %3</translation>
        </message>
        <message>
            <source>With %1 for tube %2, %3, which is not stored yet:</source>
            <translation>Con %1 para el tubo %2, %3, que aún no está guardado:</translation>
        </message>
        <message>
            <source>From what is stored:</source>
            <translation>A partir de lo guardado:</translation>
        </message>
        <message>
            <source>Tube %1: it is too early for %2. The method waits %3, of which %4 are left: read it after that.</source>
            <translation>Tubo %1: es demasiado pronto para %2. El método espera %3, de los que quedan %4: léalo cuando hayan pasado.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadingsModel</name>
        <message>
            <source>Tube</source>
            <translation>Tubo</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Contenido</translation>
        </message>
        <message>
            <source>Net, %1</source>
            <translation>Neta, %1</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Señal neta</translation>
        </message>
        <message>
            <source>%1 (%2×)</source>
            <translation>%1 (%2×)</translation>
        </message>
        <message>
            <source>%1 (was %2)</source>
            <translation>%1 (antes %2)</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, spoilt: %2</source>
            <translation>%1, malogrado: %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Concentration (%1)</source>
            <translation>Concentración (%1)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReagentsModel</name>
        <message>
            <source>empty</source>
            <translation>vacío</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>caducó el %1</translation>
        </message>
        <message>
            <source>expires before the run ends</source>
            <translation>caduca antes de que termine la tanda</translation>
        </message>
        <message numerus="yes">
            <source>opened on %1, keeps %n day(s)</source>
            <translation>
                <numerusform>abierto el %1, se conserva %n día</numerusform>
                <numerusform>abierto el %1, se conserva %n días</numerusform>
            </translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>ninguno anotado</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>no lot noted</source>
            <translation>ningún lote anotado</translation>
        </message>
        <message>
            <source>no lot in the book</source>
            <translation>ningún lote en el libro</translation>
        </message>
        <message>
            <source>no fit lot: %1 %2</source>
            <translation>ningún lote apto: %1 %2</translation>
        </message>
        <message>
            <source>no fit lot</source>
            <translation>ningún lote apto</translation>
        </message>
        <message>
            <source>enough: %1 tubes</source>
            <translation>suficiente para %1 tubos</translation>
        </message>
        <message>
            <source>short by %1: in hand %2, for tubes: %3</source>
            <translation>faltan %1: disponibles %2, para tubos: %3</translation>
        </message>
        <message>
            <source>then from lot %1</source>
            <translation>luego, del lote %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Reactivo</translation>
        </message>
        <message>
            <source>Needed</source>
            <translation>Necesario</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>; use by %1</source>
            <translation>; válido hasta %1</translation>
        </message>
        <message>
            <source>%1 more in lot %2</source>
            <translation>%1 más en el lote %2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>; opened on %1, use by %2</source>
            <translation>; abierto el %1, válido hasta %2</translation>
        </message>
        <message>
            <source>; opened on %1</source>
            <translation>; abierto el %1</translation>
        </message>
        <message>
            <source>; until %1</source>
            <translation>; hasta %1</translation>
        </message>
        <message>
            <source>short by %1, for tubes: %2</source>
            <translation>faltan %1, para tubos: %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReceiveView</name>
        <message>
            <source>Receive a container</source>
            <translation>Recibir un envase</translation>
        </message>
        <message>
            <source>Each bottle has a line of its own in the book; water and buffers count too. Name the reagent as the methods do, so that plans find it.</source>
            <translation>Cada envase tiene su propia línea en el libro; el agua y los tampones también cuentan. Escriba el nombre del reactivo tal como figura en los métodos, para que los planes lo encuentren.</translation>
        </message>
        <message>
            <source>Vol&amp;ume in it (mL)</source>
            <translation>Vol&amp;umen que contiene (mL)</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Gua&amp;rdar en el libro</translation>
        </message>
        <message>
            <source>Say how much is in it, in mL.</source>
            <translation>Indique cuánto contiene, en mL.</translation>
        </message>
        <message>
            <source>It is dr&amp;y and will be dissolved</source>
            <translation>Está se&amp;co y se disolverá</translation>
        </message>
        <message>
            <source>&amp;Mass in it (mg, may be empty)</source>
            <translation>&amp;Masa que contiene (mg, puede quedar vacía)</translation>
        </message>
        <message>
            <source>Storage place (may be empty)</source>
            <translation>Guardado en (puede quedar vacío)</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecipeSection</name>
        <message>
            <source>Components</source>
            <translation>Componentes</translation>
        </message>
        <message>
            <source>Steps, in their order</source>
            <translation>Pasos, en su orden</translation>
        </message>
        <message>
            <source>In the table the letters A, M, W and R put a step below the cursor; a step can be dragged too.</source>
            <translation>En la tabla las letras A, M, E y R ponen un paso debajo del cursor; un paso también se puede arrastrar.</translation>
        </message>
        <message>
            <source>Lay out the &amp;usual order</source>
            <translation>Disponer el orden ha&amp;bitual</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>&amp;Add</source>
            <translation>&amp;Añadir</translation>
        </message>
        <message>
            <source>&amp;Mix</source>
            <translation>&amp;Mezclar</translation>
        </message>
        <message>
            <source>&amp;Wait</source>
            <translation>&amp;Esperar</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>Lee&amp;r</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordView</name>
        <message>
            <source>To its rac&amp;k</source>
            <translation>A su gradi&amp;lla</translation>
        </message>
        <message>
            <source>Reported resu&amp;lts</source>
            <translation>Resultados in&amp;formados</translation>
        </message>
        <message>
            <source>Tren&amp;d</source>
            <translation>Ten&amp;dencia</translation>
        </message>
        <message>
            <source>What was found of this measurand in the product, or in the sample, over all runs, with its limits</source>
            <translation>Lo hallado de este mensurando en el producto, o en la muestra, en todas las tandas, con sus límites</translation>
        </message>
        <message>
            <source>Revi&amp;sion</source>
            <translation>E&amp;dición</translation>
        </message>
        <message>
            <source>B&amp;y</source>
            <translation>&amp;Por</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>Frase de contrase&amp;ña</translation>
        </message>
        <message>
            <source>Put bac&amp;k on the bench</source>
            <translation>Devolver &amp;a la mesa</translation>
        </message>
        <message>
            <source>%1, version %2, started %3, %4, revision %5</source>
            <translation>%1, versión %2, comenzada %3, %4, edición %5</translation>
        </message>
        <message>
            <source>Locked. R&amp;eason to put it back on the bench, where revision %1 begins</source>
            <translation>Tanda blo&amp;queada. Motivo para devolverla a la mesa, donde empieza la edición %1</translation>
        </message>
        <message>
            <source>%1: on the bench now</source>
            <translation>%1: ahora en la mesa</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; the run is on the bench again, and no revision stands.</source>
            <translation>Esta es la edición %1 tal como se decidió; la tanda está de nuevo en la mesa, y no hay ninguna edición vigente.</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; revision %2 stands.</source>
            <translation>Esta es la edición %1 tal como se decidió; la edición %2 está vigente.</translation>
        </message>
        <message>
            <source>Choose a result in the table first; its trend is shown.</source>
            <translation>Elija primero un resultado en la tabla; se muestra su tendencia.</translation>
        </message>
        <message>
            <source>This program calculates other numbers from the stored readings than version %1 did when the run was decided on. The new ones are shown.</source>
            <translation>Este programa calcula de las lecturas guardadas otros números que la versión %1 cuando se decidió la tanda. Se muestran los nuevos.</translation>
        </message>
        <message>
            <source>Say who puts it back: type a name.</source>
            <translation>Indique quién la devuelve: escriba un nombre.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
        <message>
            <source>Back to the run  Esc</source>
            <translation>Volver a la tanda  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordsPage</name>
        <message>
            <source>Records</source>
            <translation>Registros</translation>
        </message>
        <message>
            <source>Parts of the records</source>
            <translation>Partes de los registros</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Quién hizo qué</translation>
        </message>
        <message>
            <source>Intact, and kept</source>
            <translation>Integridad y conservación</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecoveriesModel</name>
        <message>
            <source>Standard %1</source>
            <translation>Patrón %1</translation>
        </message>
        <message>
            <source>Spike on %1</source>
            <translation>Fortificación de %1</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Recovery (%)</source>
            <translation>Recuperación (%)</translation>
        </message>
        <message>
            <source>Control %1</source>
            <translation>Control %1</translation>
        </message>
        <message>
            <source>Standard, control or spike</source>
            <translation>Patrón, control o fortificación</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Esperado (%1)</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Esperado</translation>
        </message>
        <message>
            <source>Found (%1)</source>
            <translation>Hallado (%1)</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Hallado</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RegisterView</name>
        <message>
            <source>Samples to register</source>
            <translation>Muestras por registrar</translation>
        </message>
        <message>
            <source>Problems</source>
            <translation>Problemas</translation>
        </message>
        <message>
            <source>Expected, in g/L; for a solid g/100 g</source>
            <translation>Esperado, en g/L; de un sólido, g/100 g</translation>
        </message>
        <message>
            <source>Pas&amp;te from the clipboard</source>
            <translation>&amp;Pegar del portapapeles</translation>
        </message>
        <message>
            <source>Register samples</source>
            <translation>Registrar muestras</translation>
        </message>
        <message>
            <source>Key a line for each sample, or copy one or more columns from a spreadsheet and paste them here (Ctrl+V). The first line may hold column names, measurands included; otherwise the columns are, in this order: %1.</source>
            <translation>Introduzca una línea por cada muestra, o copie una columna o varias de una hoja de cálculo y péguelas aquí (Ctrl+V). La primera línea puede llevar los nombres de las columnas, también el de un mensurando; si no, son, en este orden: %1.</translation>
        </message>
        <message>
            <source>What was stated before stays in the notebook's history.</source>
            <translation>Lo indicado antes se queda en el historial del cuaderno.</translation>
        </message>
        <message>
            <source>&amp;Store the change</source>
            <translation>&amp;Guardar el cambio</translation>
        </message>
        <message>
            <source>Line %1, %2: %3</source>
            <translation>Línea %1, %2: %3</translation>
        </message>
        <message>
            <source>Line %1: a repeat of %2 waits already; it takes over what is stated here.</source>
            <translation>Línea %1: ya espera una repetición de %2; esta toma lo que se indica aquí.</translation>
        </message>
        <message>
            <source>No sample yet.</source>
            <translation>Aún no hay ninguna muestra.</translation>
        </message>
        <message>
            <source>Samples: %1. Nothing stands in the way.</source>
            <translation>Muestras: %1. Nada lo impide.</translation>
        </message>
        <message>
            <source>Samples: %1. Still to be put right (%2), Enter goes there:</source>
            <translation>Muestras: %1. Aún por corregir (%2), Intro lleva allí:</translation>
        </message>
        <message>
            <source>There is no sample to store: key or paste one first.</source>
            <translation>No hay ninguna muestra que guardar: introduzca o pegue una primero.</translation>
        </message>
        <message>
            <source>Nothing is stored yet: first put right what the list names.</source>
            <translation>Aún no se ha guardado nada: corrija primero lo que nombra la lista.</translation>
        </message>
        <message>
            <source>Regi&amp;ster them</source>
            <translation>Regi&amp;strarlas</translation>
        </message>
        <message>
            <source>Change a sample that waits</source>
            <translation>Cambiar una muestra en espera</translation>
        </message>
        <message>
            <source>%1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>%1 ya está entre las muestras en espera; cámbiela allí, o dé otro id a esta.</translation>
        </message>
        <message>
            <source>There are samples that are not stored. Press it once more to drop them, or register them first.</source>
            <translation>Hay muestras sin guardar. Púlselo otra vez para descartarlas, o regístrelas primero.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Volver a la lista  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RepeatHow</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>type a dilution, e.g. 20, its steps, e.g. 5 to 100, or the sample volume, e.g. 0.5 mL</source>
            <translation>escriba una dilución como 20, sus pasos como 5 a 100 o el volumen de muestra como 0,5 mL</translation>
        </message>
        <message>
            <source>a dilution is by more than 1; for more sample type its volume, e.g. 0.5 mL</source>
            <translation>una dilución es de más de 1; para más muestra escriba su volumen, como 0,5 mL</translation>
        </message>
        <message>
            <source>usual pipettes and flasks make no dilution of %1; type its steps, e.g. 5 to 100</source>
            <translation>las pipetas y los matraces habituales no dan una dilución de %1; escriba sus pasos, como 5 a 100</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, después </translation>
        </message>
        <message>
            <source>a step goes from less to more, e.g. 5 to 100</source>
            <translation>un paso va de menos a más, como 5 a 100</translation>
        </message>
        <message>
            <source>no tube takes that volume of sample; type it in mL, e.g. 0.5 mL</source>
            <translation>ningún tubo admite ese volumen de muestra; escríbalo en mL, como 0,5 mL</translation>
        </message>
        <message>
            <source>fold|times</source>
            <comment>words that may be typed behind a factor of dilution, parted by |</comment>
            <translation>veces</translation>
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
            <translation>%1 mL a %2 mL</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>sin diluir</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, después </translation>
        </message>
        <message>
            <source>%1, %2 mL in the tube</source>
            <translation>%1, %2 mL en el tubo</translation>
        </message>
        <message>
            <source>A&amp;dd it to this rack</source>
            <translation>Aña&amp;dirla a esta gradilla</translation>
        </message>
        <message>
            <source>%1 has to be repeated: %2. The rack still stands here; tubes to add: %3.</source>
            <translation>%1 se tiene que repetir: %2. La gradilla aún está aquí; tubos que se añaden: %3.</translation>
        </message>
        <message>
            <source>%1 The rack has %2 places, so they need another stand.</source>
            <translation>%1 La gradilla tiene %2 lugares, así que necesitan otro soporte.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Report</name>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>%1 times %2 (method %3)</source>
            <translation>%1 por %2 (método %3)</translation>
        </message>
        <message>
            <source>%1 is calculated: the sum of %2. Its uncertainty takes account of what the parts have in common.</source>
            <translation>%1 se calcula: la suma de %2. Su incertidumbre tiene en cuenta lo que las partes tienen en común.</translation>
        </message>
        <message>
            <source>Further information</source>
            <translation>Otra información</translation>
        </message>
        <message>
            <source>additions to, deviations or exclusions from the method</source>
            <translation>adiciones, desviaciones o exclusiones respecto al método</translation>
        </message>
        <message>
            <source>sampling: plan and method, place and conditions, where it was ours</source>
            <translation>muestreo: plan y método, lugar y condiciones, si fue nuestro</translation>
        </message>
        <message>
            <source>conditions of the tests, where they matter</source>
            <translation>condiciones de los ensayos, si son relevantes</translation>
        </message>
        <message>
            <source>results from external providers</source>
            <translation>resultados de proveedores externos</translation>
        </message>
        <message>
            <source>opinions and interpretations, whose and on what basis</source>
            <translation>opiniones e interpretaciones, de quién y con qué fundamento</translation>
        </message>
        <message>
            <source>whatever else was asked for</source>
            <translation>otra información solicitada</translation>
        </message>
        <message>
            <source>Tube %1 was pipetted differently from what the method says, and is calculated as pipetted.</source>
            <translation>El tubo %1 se pipeteó de otro modo que el que dice el método, y se calcula como se pipeteó.</translation>
        </message>
        <message>
            <source>This is revision %1 and replaces revision %2. It was opened again on %3 by %4: %5.</source>
            <translation>Esta es la edición %1 y sustituye a la edición %2. La reabrió el %3 %4: %5.</translation>
        </message>
        <message>
            <source>The results relate only to the items tested, as they were received. What the customer says about the samples is given as stated. This report is not to be reproduced except in full without the laboratory's approval.</source>
            <translation>Los resultados se relacionan solamente con los ítems sometidos a ensayo, tal como se recibieron. Lo que el cliente dice de las muestras se da tal como lo comunicó. Este informe no se debe reproducir salvo en su totalidad sin la aprobación del laboratorio.</translation>
        </message>
        <message>
            <source>Content, SHA-256: %1.</source>
            <translation>Contenido, SHA-256: %1.</translation>
        </message>
        <message numerus="yes">
            <source>Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.</source>
            <translation>
                <numerusform>Registro: tanda %1 de %2; contenido, SHA-256: %3; auditoría: %n entrada, último hash %4.</numerusform>
                <numerusform>Registro: tanda %1 de %2; contenido, SHA-256: %3; auditoría: %n entradas, último hash %4.</numerusform>
            </translation>
        </message>
        <message>
            <source>authorised by</source>
            <translation>autorizado por</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>firma</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>página %1 de %2</translation>
        </message>
        <message>
            <source>laboratory: name, address, contact</source>
            <translation>laboratorio: nombre, dirección, contacto</translation>
        </message>
        <message>
            <source>address of the laboratory</source>
            <translation>dirección del laboratorio</translation>
        </message>
        <message>
            <source>%1 (%2), version %3</source>
            <translation>%1 (%2), versión %3</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Hecho con una plantilla cuyos volúmenes nadie ha confirmado: %1.</translation>
        </message>
        <message>
            <source>REJECTED</source>
            <translation>RECHAZADO</translation>
        </message>
        <message>
            <source>REPLACED</source>
            <translation>SUSTITUIDO</translation>
        </message>
        <message>
            <source>DRAFT</source>
            <translation>BORRADOR</translation>
        </message>
        <message>
            <source>The run was rejected; its results are not to be used.</source>
            <translation>La tanda se rechazó; sus resultados no se deben usar.</translation>
        </message>
        <message>
            <source>This revision was taken back; what counts is the latest one in the notebook.</source>
            <translation>Esta edición se anuló; cuenta la última del cuaderno.</translation>
        </message>
        <message>
            <source>Nobody has accepted this run; its results may change.</source>
            <translation>Nadie ha aceptado esta tanda; sus resultados pueden cambiar.</translation>
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
            <translation>%1, firmado con una frase de contraseña</translation>
        </message>
        <message>
            <source>%1, a typed name, unsigned</source>
            <translation>%1, un nombre escrito, sin firmar</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>Report of results</source>
            <translation>Informe de resultados</translation>
        </message>
        <message>
            <source>End of report %1</source>
            <translation>Fin del informe %1</translation>
        </message>
        <message>
            <source>Report %1, revision %2</source>
            <translation>Informe %1, edición %2</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>cliente</translation>
        </message>
        <message>
            <source>customer's address or contact</source>
            <translation>dirección o contacto del cliente</translation>
        </message>
        <message>
            <source>order or reference</source>
            <translation>pedido o referencia</translation>
        </message>
        <message>
            <source>date of the tests</source>
            <translation>fecha de los ensayos</translation>
        </message>
        <message>
            <source>place of the tests, if elsewhere</source>
            <translation>lugar de los ensayos, si es otro</translation>
        </message>
        <message>
            <source>date of issue</source>
            <translation>fecha de emisión</translation>
        </message>
        <message>
            <source>Items tested</source>
            <translation>Ítems sometidos a ensayo</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>qué es</translation>
        </message>
        <message>
            <source>state on arrival</source>
            <translation>estado a la llegada</translation>
        </message>
        <message>
            <source>received</source>
            <translation>recibida</translation>
        </message>
        <message>
            <source>sampled</source>
            <translation>tomada</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>magnitud</translation>
        </message>
        <message>
            <source>result</source>
            <translation>resultado</translation>
        </message>
        <message>
            <source>± U</source>
            <translation>± U</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unidad</translation>
        </message>
        <message>
            <source>k</source>
            <translation>k</translation>
        </message>
        <message>
            <source>note</source>
            <translation>nota</translation>
        </message>
        <message>
            <source>%1) %2</source>
            <translation>%1) %2</translation>
        </message>
        <message>
            <source>No uncertainty is stated: the run states none for its inputs.</source>
            <translation>No se indica ninguna incertidumbre: la tanda no indica ninguna para sus magnitudes de entrada.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>no informado</translation>
        </message>
        <message>
            <source>U is the expanded uncertainty of the result, in its unit: the standard uncertainty multiplied by the coverage factor k of its line, for a level of confidence of about 95 % (95.45 %). A result with &lt; or &gt; is a bound and has no U.</source>
            <translation>U es la incertidumbre expandida del resultado, en su unidad: la incertidumbre típica multiplicada por el factor de cobertura k de su línea, para un nivel de confianza de aproximadamente el 95 % (95,45 %). Un resultado con &lt; o &gt; es una cota y no tiene U.</translation>
        </message>
        <message>
            <source>Comparison with specifications</source>
            <translation>Comparación con especificaciones</translation>
        </message>
        <message>
            <source>specification</source>
            <translation>especificación</translation>
        </message>
        <message>
            <source>statement</source>
            <translation>declaración</translation>
        </message>
        <message>
            <source>decision rule</source>
            <translation>regla de decisión</translation>
        </message>
        <message>
            <source>Report of results %1</source>
            <translation>Informe de resultados %1</translation>
        </message>
        <message>
            <source>report %1, revision %2</source>
            <translation>informe %1, edición %2</translation>
        </message>
        <message>
            <source>Report %1, revision %2, made %3 with Plateau %4</source>
            <translation>Informe %1, edición %2, hecho el %3 con Plateau %4</translation>
        </message>
        <message>
            <source>The method names no published source.</source>
            <translation>El método no indica ninguna fuente publicada.</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Fuente: %1</translation>
        </message>
        <message>
            <source>Accepted by %1: %2</source>
            <translation>Aceptado por %1: %2</translation>
        </message>
        <message>
            <source>Accepted by %1.</source>
            <translation>Aceptado por %1.</translation>
        </message>
        <message>
            <source>Accepted by %1: %2 (one reason for the whole run)</source>
            <translation>Aceptado por %1: %2 (un solo motivo para toda la tanda)</translation>
        </message>
        <message>
            <source>Report %1</source>
            <comment>a file name</comment>
            <translation>Informe %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportDialog</name>
        <message>
            <source>Report number</source>
            <translation>Número del informe</translation>
        </message>
        <message>
            <source>Issued on</source>
            <translation>Fecha de emisión</translation>
        </message>
        <message>
            <source>Customer</source>
            <translation>Cliente</translation>
        </message>
        <message>
            <source>Customer's contact</source>
            <translation>Contacto del cliente</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Tested at</source>
            <translation>Lugar del ensayo</translation>
        </message>
        <message>
            <source>Tested on</source>
            <translation>Fecha del ensayo</translation>
        </message>
        <message>
            <source>Authorised by</source>
            <translation>Autorizado por</translation>
        </message>
        <message>
            <source>Sampling: plan, method, by whom</source>
            <translation>Muestreo: plan, método, por quién</translation>
        </message>
        <message>
            <source>Conditions of the tests</source>
            <translation>Condiciones de los ensayos</translation>
        </message>
        <message>
            <source>Deviations from the method</source>
            <translation>Desviaciones del método</translation>
        </message>
        <message>
            <source>Results from external providers</source>
            <translation>Resultados externos</translation>
        </message>
        <message>
            <source>Opinions and interpretations</source>
            <translation>Opiniones e interpretaciones</translation>
        </message>
        <message>
            <source>Additional information requested</source>
            <translation>Otra información solicitada</translation>
        </message>
        <message>
            <source>What the samples are</source>
            <translation>Descripción de las muestras</translation>
        </message>
        <message>
            <source>Their condition</source>
            <translation>Estado de las muestras</translation>
        </message>
        <message>
            <source>Received on</source>
            <translation>Recibidas el</translation>
        </message>
        <message>
            <source>Sampled on</source>
            <translation>Tomadas el</translation>
        </message>
        <message>
            <source>What the report says besides</source>
            <translation>Qué más dice el informe</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>&amp;Guardar como PDF…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>Cance&amp;lar</translation>
        </message>
        <message>
            <source>Where something stands in grey, the report says that unless you type over it. Whatever else is left empty becomes a line to write on.</source>
            <translation>Donde hay un texto en gris, el informe lleva ese texto si no escribe otro. Lo demás que quede vacío será una línea para rellenar a mano.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportFields</name>
        <message>
            <source>%1 is not a field: expected its name, an equals sign and its value, as in customer=Threnholt Cider</source>
            <translation>%1 no es un campo: se esperaba su nombre, un signo igual y su valor, como en customer=Threnholt Cider</translation>
        </message>
        <message>
            <source>there is no field %1; known are %2</source>
            <translation>no hay ningún campo %1; se conocen %2</translation>
        </message>
        <message>
            <source>the field %1 is for the whole report and takes no sample; fields of a sample are %2</source>
            <translation>el campo %1 es para todo el informe y no admite muestra; los campos de una muestra son %2</translation>
        </message>
        <message>
            <source>the field %1 has no value; leave it out for a line to write on</source>
            <translation>el campo %1 no tiene valor; omítalo para dejar una línea para rellenar a mano</translation>
        </message>
        <message>
            <source>the value of the field %1 is longer than %2 characters; shorten it</source>
            <translation>el valor del campo %1 tiene más de %2 caracteres; acórtelo</translation>
        </message>
        <message>
            <source>the field %1 was given twice; give it once</source>
            <translation>el campo %1 se dio dos veces; delo una vez</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportHeadForm</name>
        <message>
            <source>Name and report head</source>
            <translation>Nombre y encabezado del informe</translation>
        </message>
        <message>
            <source>These stand at the head of every report. What is left empty becomes a line to write on.</source>
            <translation>Esto figura en el encabezado de cada informe. Lo que quede vacío será una línea para rellenar a mano.</translation>
        </message>
        <message>
            <source>telephone, e-mail, a person</source>
            <translation>teléfono, correo electrónico, una persona</translation>
        </message>
        <message>
            <source>N&amp;ame of the laboratory</source>
            <translation>Nombre &amp;del laboratorio</translation>
        </message>
        <message>
            <source>Address, line by line</source>
            <translation>Dirección, línea a línea</translation>
        </message>
        <message>
            <source>Contact, one line</source>
            <translation>Contacto, una línea</translation>
        </message>
        <message>
            <source>Logo</source>
            <translation>Logotipo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSaving</name>
        <message>
            <source>Save the results as CSV</source>
            <translation>Guardar los resultados como CSV</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>Archivos CSV (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written, one row for each result.</source>
            <translation>%1 se ha escrito, una fila por resultado.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSource</name>
        <message>
            <source>run %1, revision %2, as %3</source>
            <translation>tanda %1, edición %2, como %3</translation>
        </message>
        <message numerus="yes">
            <source>the mean of %n accepted results</source>
            <translation>
                <numerusform>el único resultado aceptado</numerusform>
                <numerusform>la media de %n resultados aceptados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the one named by the reviewer, of %n accepted results</source>
            <translation>
                <numerusform>el indicado por el revisor, único resultado aceptado</numerusform>
                <numerusform>el indicado por el revisor, de %n resultados aceptados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the last of %n accepted results</source>
            <translation>
                <numerusform>el único resultado aceptado</numerusform>
                <numerusform>el último de %n resultados aceptados</numerusform>
            </translation>
        </message>
        <message>
            <source>chosen by %1 on %2</source>
            <translation>elegido por %1 el %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Reported is %1: %2</source>
            <translation>Se informa %1: %2</translation>
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
            <translation>%1, banda de guarda %2</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>revisor</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>jefe del laboratorio</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>analista</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>%1: accepted</source>
            <translation>%1: aceptada</translation>
        </message>
        <message>
            <source>%1: rejected</source>
            <translation>%1: rechazada</translation>
        </message>
        <message>
            <source>%1: to be repeated</source>
            <translation>%1: por repetir</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>fortificación</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>pegada</translation>
        </message>
        <message>
            <source>from the file %1</source>
            <translation>del archivo %1</translation>
        </message>
        <message>
            <source>sent over the serial line %1</source>
            <translation>enviada por la línea serie %1</translation>
        </message>
        <message>
            <source>sent over the network, %1</source>
            <translation>enviada por la red, %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportUnitsForm</name>
        <message>
            <source>Units of products</source>
            <translation>Unidades de productos</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>every measurand</source>
            <translation>todos los mensurandos</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>Unidad</translation>
        </message>
        <message>
            <source>The unit in which results are shown and reported. A row without a product holds for every product. A row that names both comes first, then one that names the measurand, then one that names the product. What stands in no row is reported in g/L, for a solid in g/100 g. %1</source>
            <translation>La unidad en que se muestran y se informan los resultados. Una fila sin producto vale para todos los productos. Primero va la fila que nombra ambos; después, la que nombra el mensurando; después, la que nombra el producto. Lo que no está en ninguna fila se informa en g/L, y de un sólido en g/100 g. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedModel</name>
        <message>
            <source>%1, signed</source>
            <translation>%1, firmado</translation>
        </message>
        <message>
            <source>%1, unsigned</source>
            <translation>%1, sin firmar</translation>
        </message>
        <message>
            <source>%1-fold</source>
            <translation>factor %1</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Tanda</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Decided</source>
            <translation>Decidido</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Por</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Dilución</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Reported</source>
            <translation>Informado</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>sin diluir</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedResult</name>
        <message>
            <source>run %1, revision %2</source>
            <translation>tanda %1, edición %2</translation>
        </message>
        <message>
            <source>in the mean</source>
            <translation>en la media</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>informado</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>el último resultado aceptado</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>la media de los resultados aceptados</translation>
        </message>
        <message>
            <source>the result that is named</source>
            <translation>el resultado indicado</translation>
        </message>
        <message>
            <source>Reported: %1, %2 (%3).</source>
            <translation>Informado: %1, %2 (%3).</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>Nobody has chosen: until somebody does, the last accepted one counts.</source>
            <translation>Nadie ha elegido: hasta que alguien lo haga, cuenta el último aceptado.</translation>
        </message>
        <message>
            <source>signed</source>
            <translation>firmado</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>sin firmar</translation>
        </message>
        <message>
            <source>Chosen by %1, %2 (%3): %4</source>
            <translation>Elegido por %1, %2 (%3): %4</translation>
        </message>
        <message>
            <source>A result was accepted since: see whether the choice still holds.</source>
            <translation>Desde entonces se ha aceptado un resultado: vea si la elección sigue valiendo.</translation>
        </message>
        <message>
            <source>On the report: %1.</source>
            <translation>En el informe: %1.</translation>
        </message>
        <message numerus="yes">
            <source>These results were accepted over %n days. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</source>
            <translation>
                <numerusform>Estos resultados se aceptaron a lo largo de %n día. Si son de dos muestras con el mismo nombre, indique en el plan el día de recepción de cada una: el mismo nombre recibido otro día es otra muestra.</numerusform>
                <numerusform>Estos resultados se aceptaron a lo largo de %n días. Si son de dos muestras con el mismo nombre, indique en el plan el día de recepción de cada una: el mismo nombre recibido otro día es otra muestra.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedView</name>
        <message>
            <source>Reported result</source>
            <translation>Resultado informado</translation>
        </message>
        <message>
            <source>Accepted results</source>
            <translation>Resultados aceptados</translation>
        </message>
        <message>
            <source>&amp;Chosen by</source>
            <translation>&amp;Elegido por</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>Frase de contrase&amp;ña</translation>
        </message>
        <message>
            <source>Reported result of sample and &amp;measurand</source>
            <translation>Re&amp;sultado informado de muestra y mensurando</translation>
        </message>
        <message>
            <source>the last accepted</source>
            <translation>el último aceptado</translation>
        </message>
        <message>
            <source>the mean of all accepted</source>
            <translation>la media de todos los aceptados</translation>
        </message>
        <message>
            <source>the one marked in the table</source>
            <translation>el señalado en la tabla</translation>
        </message>
        <message>
            <source>R&amp;ule</source>
            <translation>&amp;Regla</translation>
        </message>
        <message>
            <source>Wh&amp;y</source>
            <translation>&amp;Por qué</translation>
        </message>
        <message>
            <source>S&amp;tore the choice</source>
            <translation>&amp;Guardar la elección</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Say who chooses: type a name.</source>
            <translation>Indique quién elige: escriba un nombre.</translation>
        </message>
        <message>
            <source>The choice is stored.</source>
            <translation>La elección está guardada.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultDetails</name>
        <message>
            <source>Calculation</source>
            <translation>Cálculo</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <translation>Balance de incertidumbre</translation>
        </message>
        <message>
            <source>Whose numbers the budget is made of</source>
            <translation>De quién son los números del balance</translation>
        </message>
        <message>
            <source>Details of the chosen result</source>
            <translation>Detalles del resultado elegido</translation>
        </message>
        <message>
            <source>Overvie&amp;w</source>
            <translation>&amp;Resumen</translation>
        </message>
        <message>
            <source>&amp;Calculation</source>
            <translation>&amp;Cálculo</translation>
        </message>
        <message>
            <source>&amp;Uncertainty</source>
            <translation>Incertidum&amp;bre</translation>
        </message>
        <message>
            <source>%1 % %2</source>
            <translation>%1 % %2</translation>
        </message>
        <message>
            <source>Share of the variance of %1 (%)</source>
            <translation>Parte de la varianza de %1 (%)</translation>
        </message>
        <message>
            <source>k = %1: %2.</source>
            <translation>k = %1: %2.</translation>
        </message>
        <message>
            <source>As the laboratory reports it</source>
            <translation>Como lo informa el laboratorio</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>en %1</translation>
        </message>
        <message>
            <source>the result in %1 in that unit</source>
            <translation>el resultado en %1 en esa unidad</translation>
        </message>
        <message>
            <source>Recovery (%) of %1: %2 expected at use</source>
            <translation>Recuperación (%) de %1: %2 esperados al usarlo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultOverview</name>
        <message>
            <source>About the chosen result</source>
            <translation>Sobre el resultado elegido</translation>
        </message>
        <message>
            <source>Recovery and its history</source>
            <translation>La recuperación y su historial</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultView</name>
        <message>
            <source>Decisions</source>
            <translation>Decisiones</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>Rejected</source>
            <translation>Rechazadas</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsCsv</name>
        <message>
            <source>Results %1</source>
            <comment>a file name</comment>
            <translation>Resultados %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsModel</name>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mensurando</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>k</source>
            <comment>coverage factor of the uncertainty</comment>
            <translation>k</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Recorrido</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Dilución</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Límites</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewPage</name>
        <message>
            <source>Equipment and lots that the run was made with</source>
            <translation>Equipos y lotes con los que se hizo la tanda</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewRuleWords</name>
        <message>
            <source>A reviewer or a head decides here; %1 is an analyst.</source>
            <translation>Aquí decide un revisor o un jefe, pero %1 es analista.</translation>
        </message>
        <message>
            <source>A reviewer or a head decides here; %1 are analysts.</source>
            <translation>Aquí decide un revisor o un jefe, pero %1 son analistas.</translation>
        </message>
        <message>
            <source>May decide: %1.</source>
            <translation>Quién puede decidirla: %1.</translation>
        </message>
        <message>
            <source>accepted: read again, and the reading is right</source>
            <translation>aceptado: leído de nuevo, y la lectura es correcta</translation>
        </message>
        <message>
            <source>accepted: the control is within its limits</source>
            <translation>aceptado: el control está dentro de sus límites</translation>
        </message>
        <message>
            <source>accepted: the tube concerned is left out</source>
            <translation>aceptado: el tubo afectado queda excluido</translation>
        </message>
        <message>
            <source>accepted: for orientation only, not for a report</source>
            <translation>aceptado: solo orientativo, no para un informe</translation>
        </message>
        <message>
            <source>Nobody who is set up may decide it.</source>
            <translation>Ninguna de las personas dadas de alta puede decidirla.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 worked on this one.</source>
            <translation>Nadie revisa su propia tanda: %1 trabajó en esta.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 have worked on this one.</source>
            <translation>Nadie revisa su propia tanda: %1 trabajaron en esta.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewRulesForm</name>
        <message>
            <source>Review</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Who may decide on a run. The first rule holds once people are set up under Books, People; the second one for typed names, too.</source>
            <translation>Quién puede decidir una tanda. La primera regla vale cuando hay personas dadas de alta en Libros, Personas; la segunda, también para nombres escritos.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>A reviewer or the head decides; an analyst's signature does not</source>
            <translation>Decide un revisor o el jefe; la firma de un analista no</translation>
        </message>
        <message>
            <source>A second person reviews: nobody decides on a run that they worked on</source>
            <translation>Revisa una segunda persona: nadie decide una tanda en la que trabajó</translation>
        </message>
        <message>
            <source>Reasons offered where a sample or a run is rejected; another may be typed</source>
            <translation>Motivos que se proponen donde se rechaza una muestra o una tanda; se puede escribir otro</translation>
        </message>
        <message>
            <source>Reasons for a rejection</source>
            <translation>Motivos de rechazo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewedResult</name>
        <message>
            <source>%1-fold</source>
            <translation>factor %1</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>%1. The limit: %2, %3.</source>
            <translation>%1. El límite: %2, %3.</translation>
        </message>
        <message>
            <source>It stands in %1 and not in %2: %3.</source>
            <translation>Está en %1 y no en %2: %3.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1: %2 and %3 more</source>
            <translation>%1: %2 y %3 más</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Against the limits of the products: %1.</source>
            <translation>Frente a los límites de los productos: %1.</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>No standard was measured in this run: nothing in it shows what the assay recovers.</source>
            <translation>En esta tanda no se midió ningún patrón: nada en ella muestra qué recupera el ensayo.</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>sin diluir</translation>
        </message>
        <message>
            <source>No check failed for this result.</source>
            <translation>Ninguna comprobación ha fallado para este resultado.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RhythmRow</name>
        <message>
            <source>Keep a &amp;rhythm: a tube every</source>
            <translation>Llevar un &amp;ritmo: un tubo cada</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>Seconds from tube to tube</source>
            <translation>Segundos de tubo a tubo</translation>
        </message>
        <message>
            <source>Enter seconds from %1 to %2: no rhythm is kept.</source>
            <translation>Indique segundos de %1 a %2: no se lleva ningún ritmo.</translation>
        </message>
        <message>
            <source>Tube %1 %2</source>
            <translation>Tubo %1 %2</translation>
        </message>
        <message>
            <source>It begins with the first tube that is ticked.</source>
            <translation>Empieza con el primer tubo que se marque.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunComparison</name>
        <message>
            <source>the run's own standard</source>
            <translation>el patrón propio de la tanda</translation>
        </message>
        <message>
            <source>a line of standards</source>
            <translation>una recta de patrones</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>absortividad molar</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Camino óptico</translation>
        </message>
        <message>
            <source>Calibrated by</source>
            <translation>Calibrada por</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Comienzo</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Decidida por</translation>
        </message>
        <message>
            <source>%1, made %2</source>
            <translation>%1, preparado el %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, hasta %2</translation>
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
            <translation>Recuperación de %1, %2</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>no superada: %1</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Condiciones</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Patrones</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Señales</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Comprobaciones</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDetails</name>
        <message>
            <source>Recoveries</source>
            <translation>Recuperaciones</translation>
        </message>
        <message>
            <source>Readings with their history</source>
            <translation>Lecturas con su historial</translation>
        </message>
        <message>
            <source>Method and cautions</source>
            <translation>Método y precauciones</translation>
        </message>
        <message>
            <source>Details of the run</source>
            <translation>Detalles de la tanda</translation>
        </message>
        <message>
            <source>&amp;Quality checks</source>
            <translation>Comprobacione&amp;s de calidad</translation>
        </message>
        <message>
            <source>Recover&amp;ies</source>
            <translation>Rec&amp;uperaciones</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <translation>L&amp;ecturas</translation>
        </message>
        <message>
            <source>Me&amp;thod</source>
            <translation>Mét&amp;odo</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Comprobaciones</translation>
        </message>
        <message>
            <source>E&amp;xplain this check</source>
            <translation>E&amp;xplicar esta comprobación</translation>
        </message>
        <message>
            <source>What is checked, why, and what to do about it; F1 does the same</source>
            <translation>Qué se comprueba, por qué y qué hacer; F1 hace lo mismo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDraft</name>
        <message>
            <source>Between 1 and 12 tubes per sample, as a whole number.</source>
            <translation>Entre 1 y 12 tubos por muestra, en número entero.</translation>
        </message>
        <message>
            <source>A spike is a volume of the run's standard: run one.</source>
            <translation>Una fortificación es un volumen del patrón de la tanda: use uno.</translation>
        </message>
        <message>
            <source>The rack has %1 places and this run %2 tubes: take fewer, or split it.</source>
            <translation>La gradilla tiene %1 lugares y esta tanda %2 tubos: tome menos o divídala.</translation>
        </message>
        <message>
            <source>Give the run a title, by which it is found again.</source>
            <translation>Dé a la tanda un título con el que se pueda encontrar.</translation>
        </message>
        <message>
            <source>Name at least one sample, one per line.</source>
            <translation>Nombre al menos una muestra, una por línea.</translation>
        </message>
        <message>
            <source>Say how much of its strength it loses in an hour; 0 if it keeps its strength for the day.</source>
            <translation>Indique cuánto de su concentración pierde en una hora; 0 si la conserva durante el día.</translation>
        </message>
        <message>
            <source>With 0 it counts at full strength all day; the method expects a loss of %1 % an hour.</source>
            <translation>Con 0 cuenta todo el día con su concentración entera; el método cuenta con una pérdida de %1 % por hora.</translation>
        </message>
        <message>
            <source>Say when it was made, such as 8:10, so that its strength at use can be worked out.</source>
            <translation>Indique cuándo se preparó, como 8:10, para poder calcular su concentración al usarlo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilePage</name>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>&amp;Poner en la mesa</translation>
        </message>
        <message>
            <source>Open &amp;another file…</source>
            <translation>Abrir &amp;otro archivo…</translation>
        </message>
        <message>
            <source>The file can be put on the bench.</source>
            <translation>El archivo se puede poner en la mesa.</translation>
        </message>
        <message>
            <source>The file can be used. Worth knowing first:</source>
            <translation>El archivo se puede usar. Conviene saber antes:</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro.</translation>
        </message>
        <message>
            <source>It is rack %1.</source>
            <translation>Es la gradilla %1.</translation>
        </message>
        <message>
            <source>It is decided on and stands under Notebook.</source>
            <translation>Está decidida y figura en Cuaderno.</translation>
        </message>
        <message>
            <source>Nothing was stored.</source>
            <translation>No se ha guardado nada.</translation>
        </message>
        <message>
            <source>The notebook already has this very run, with the same readings: run %1, "%2", put on the bench on %3. %4</source>
            <translation>El cuaderno ya tiene esta misma tanda, con las mismas lecturas: tanda %1, «%2», puesta en la mesa el %3. %4</translation>
        </message>
        <message>
            <source>The file cannot be used, and nothing was taken from it:</source>
            <translation>El archivo no se puede usar, y no se tomó nada de él:</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilterFields</name>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Standard</source>
            <translation>Patrón</translation>
        </message>
        <message>
            <source>From day</source>
            <translation>Desde el día</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Hasta el día</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>any</source>
            <translation>cualquiera</translation>
        </message>
        <message>
            <source>Failed check</source>
            <translation>Comprobación no superada</translation>
        </message>
        <message>
            <source>any or none</source>
            <translation>alguna o ninguna</translation>
        </message>
        <message>
            <source>Result of</source>
            <translation>Resultado de</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>como mínimo</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>como máximo</translation>
        </message>
        <message>
            <source>Result at least</source>
            <translation>Resultado como mínimo</translation>
        </message>
        <message>
            <source>Result at most</source>
            <translation>Resultado como máximo</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 en %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The first day is after the last, so no run can be found: exchange them.</source>
            <translation>El primer día es posterior al último, así que no se puede encontrar ninguna tanda: intercámbielos.</translation>
        </message>
        <message>
            <source>Choose what the result is for, so that its value counts.</source>
            <translation>Elija de qué es el resultado, para que cuente su valor.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunListView</name>
        <message>
            <source>&amp;More filters</source>
            <translation>Más &amp;filtros</translation>
        </message>
        <message>
            <source>&amp;Save filter</source>
            <translation>&amp;Guardar filtro</translation>
        </message>
        <message>
            <source>Delete filter</source>
            <translation>Eliminar filtro</translation>
        </message>
        <message>
            <source>&amp;Compare the two</source>
            <translation>C&amp;omparar las dos</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Tandas</translation>
        </message>
        <message>
            <source>Order of the runs</source>
            <translation>Orden de las tandas</translation>
        </message>
        <message>
            <source>newest in the notebook first</source>
            <translation>primero las más nuevas del cuaderno</translation>
        </message>
        <message>
            <source>oldest in the notebook first</source>
            <translation>primero las más antiguas del cuaderno</translation>
        </message>
        <message>
            <source>latest day first</source>
            <translation>primero el último día</translation>
        </message>
        <message>
            <source>latest decision first</source>
            <translation>primero la última decisión</translation>
        </message>
        <message>
            <source>by title</source>
            <translation>por título</translation>
        </message>
        <message>
            <source>by method</source>
            <translation>por método</translation>
        </message>
        <message>
            <source>Saved filters</source>
            <translation>Filtros guardados</translation>
        </message>
        <message>
            <source>name of a filter</source>
            <translation>nombre de un filtro</translation>
        </message>
        <message>
            <source>Name of a saved filter</source>
            <translation>Nombre de un filtro guardado</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cuaderno</translation>
        </message>
        <message>
            <source>Fin&amp;d by title, sample, person, note … or printed code</source>
            <translation>&amp;Buscar título, muestra, persona, nota … o código impreso</translation>
        </message>
        <message>
            <source>Saved filter</source>
            <translation>Filtro guardado</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Orden</translation>
        </message>
        <message>
            <source>No run in the notebook matches all of this. Remove a word or a field to find more; Escape clears everything.</source>
            <translation>Ninguna tanda del cuaderno cumple todo esto. Quite una palabra o un campo para encontrar más; Esc lo quita todo.</translation>
        </message>
        <message>
            <source>No run is in the notebook yet. Start one with New run, or open a run file.</source>
            <translation>Aún no hay ninguna tanda en el cuaderno. Empiece una con Nueva tanda o abra un archivo de tanda.</translation>
        </message>
        <message numerus="yes">
            <source>%n run(s)</source>
            <translation>
                <numerusform>%n tanda</numerusform>
                <numerusform>%n tandas</numerusform>
            </translation>
        </message>
        <message>
            <source>more than %1 of %2 runs</source>
            <translation>más de %1 de %2 tandas</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n run(s)</source>
            <translation>
                <numerusform>%1 de %n tanda</numerusform>
                <numerusform>%1 de %n tandas</numerusform>
            </translation>
        </message>
        <message>
            <source>Choose two runs: the second with Control held down.</source>
            <translation>Elija dos tandas: la segunda con Ctrl pulsado.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunPapers</name>
        <message>
            <source>Save a copy of the run</source>
            <translation>Guardar una copia de la tanda</translation>
        </message>
        <message>
            <source>run.json</source>
            <translation>tanda.json</translation>
        </message>
        <message>
            <source>Run files (*.json)</source>
            <translation>Archivos de tanda (*.json)</translation>
        </message>
        <message>
            <source>The copy could not be written to %1: %2. Choose another place; the run itself is in the notebook as before.</source>
            <translation>La copia no se pudo escribir en %1: %2. Elija otro lugar; la propia tanda está en el cuaderno como antes.</translation>
        </message>
        <message>
            <source>A copy of the run was written to %1.</source>
            <translation>Se ha escrito una copia de la tanda en %1.</translation>
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
            <translation>no cuenta: %1</translation>
        </message>
        <message>
            <source>spiked with %1 of %2</source>
            <translation>fortificado con %1 de %2</translation>
        </message>
        <message>
            <source>%1: %2 pipetted</source>
            <translation>%1: %2 pipeteados</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tubo</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>contenido</translation>
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
            <translation>nota</translation>
        </message>
        <message>
            <source>%1) tube %2, %3: was %4, corrected to %5 by %6 on %7. Reason: %8</source>
            <translation>%1) tubo %2, %3: era %4, corregido a %5 por %6 el %7. Motivo: %8</translation>
        </message>
        <message>
            <source>with its run, from a file</source>
            <translation>con su tanda, de un archivo</translation>
        </message>
        <message>
            <source>keyed</source>
            <translation>introducida</translation>
        </message>
        <message>
            <source>nothing, read once more</source>
            <translation>nada, leída una vez más</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valor</translation>
        </message>
        <message>
            <source>as typed or sent</source>
            <translation>como se escribió o envió</translation>
        </message>
        <message>
            <source>how it came</source>
            <translation>cómo llegó</translation>
        </message>
        <message>
            <source>by</source>
            <translation>por</translation>
        </message>
        <message>
            <source>at</source>
            <translation>cuándo</translation>
        </message>
        <message>
            <source>replaces</source>
            <translation>sustituye a</translation>
        </message>
        <message>
            <source>Readings as they came, oldest first</source>
            <translation>Lecturas tal como llegaron, la más antigua primero</translation>
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
            <translation>El reloj del ordenador se ajustó mientras la tanda estaba en la mesa</translation>
        </message>
        <message>
            <source>%1 by %2, to %3; noted with the name of %4. Times above are as the clock showed them, minutes on the run's own clock do not change with it.</source>
            <translation>%1 en %2, a %3; anotado con el nombre de %4. Las horas de arriba son como las mostraba el reloj; los minutos del reloj propio de la tanda no cambian con él.</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Adelantado</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Atrasado</translation>
        </message>
        <message>
            <source>component</source>
            <translation>componente</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubos</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lote</translation>
        </message>
        <message>
            <source>use-by date</source>
            <translation>caducidad</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>pipeta</translation>
        </message>
        <message>
            <source>first at</source>
            <translation>primera vez</translation>
        </message>
        <message>
            <source>last at</source>
            <translation>última vez</translation>
        </message>
        <message>
            <source>Pipetting as it was ticked</source>
            <translation>Pipeteo tal como se marcó</translation>
        </message>
        <message>
            <source>added, minutes on the run's clock</source>
            <translation>añadido, minutos del reloj de la tanda</translation>
        </message>
        <message>
            <source>read, minutes on the run's clock</source>
            <translation>leído, minutos del reloj de la tanda</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>When it was done</source>
            <translation>Cuándo se hizo</translation>
        </message>
        <message>
            <source>Tubes and readings</source>
            <translation>Tubos y lecturas</translation>
        </message>
        <message>
            <source>At the bench</source>
            <translation>En la mesa</translation>
        </message>
        <message>
            <source>% of it</source>
            <translation>% de ello</translation>
        </message>
        <message>
            <source>each absorbance</source>
            <translation>cada absorbancia</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbancia</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absortividad</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>camino óptico</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volumen total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volumen de muestra</translation>
        </message>
        <message>
            <source>each dilution step, unless it has its own</source>
            <translation>cada paso de dilución, salvo que tenga la suya</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extracto</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>la tanda</translation>
        </message>
        <message>
            <source>its file does not say where it comes from</source>
            <translation>su archivo no dice de dónde viene</translation>
        </message>
        <message>
            <source>stated with it; the laboratory has %1 now, from %2 (%3)</source>
            <translation>indicada con ella; el laboratorio tiene ahora %1, de %2 (%3)</translation>
        </message>
        <message>
            <source>stated with it</source>
            <translation>indicada con ella</translation>
        </message>
        <message>
            <source>concentration of the standard %1</source>
            <translation>concentración del patrón %1</translation>
        </message>
        <message>
            <source>the standard</source>
            <translation>el patrón</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known</source>
            <translation>no indicada, así que cuenta como conocida exactamente</translation>
        </message>
        <message>
            <source>The run states no uncertainties of its inputs.</source>
            <translation>La tanda no indica ninguna incertidumbre de sus magnitudes de entrada.</translation>
        </message>
        <message>
            <source>standard uncertainty (k = 1) of</source>
            <translation>incertidumbre típica (k = 1) de</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unidad</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>quién responde de ella</translation>
        </message>
        <message>
            <source>where it comes from</source>
            <translation>de dónde viene</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>añadir %1</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>esperar %1</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>leer %1</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>A series of %1 counts as the straight line through its last %2 readings gives it at 0 min, the addition of the starter.</source>
            <translation>Una serie de %1 cuenta como la da la recta por sus últimas %2 lecturas a 0 min, la adición del iniciador.</translation>
        </message>
        <message>
            <source>coupled indicator of %1</source>
            <translation>indicador acoplado de %1</translation>
        </message>
        <message>
            <source>volume, mL</source>
            <translation>volumen, mL</translation>
        </message>
        <message>
            <source>may be, mL</source>
            <translation>puede ser, mL</translation>
        </message>
        <message>
            <source>part</source>
            <translation>papel</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>diluent, makes up for the sample</source>
            <translation>diluyente, compensa la muestra</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>iniciador</translation>
        </message>
        <message>
            <source>suspension</source>
            <translation>suspensión</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>medido</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>señal</translation>
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
            <translation>factor, g/L para una unidad de señal</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>por el patrón propio de la tanda</translation>
        </message>
        <message>
            <source>by a line through the run's standards</source>
            <translation>por una recta por los patrones de la tanda</translation>
        </message>
        <message>
            <source>by the molar absorptivity</source>
            <translation>por la absortividad molar</translation>
        </message>
        <message>
            <source>%1 (u = %2)</source>
            <translation>%1 (u = %2)</translation>
        </message>
        <message>
            <source>weighed, g</source>
            <translation>pesado, g</translation>
        </message>
        <message>
            <source>extract, mL</source>
            <translation>extracto, mL</translation>
        </message>
        <message>
            <source>dilution</source>
            <translation>dilución</translation>
        </message>
        <message>
            <source>factor F</source>
            <translation>factor F</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Muestras</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>patrón</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>contiene</translation>
        </message>
        <message>
            <source>made, g/L</source>
            <translation>preparado, g/L</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>preparado</translation>
        </message>
        <message>
            <source>used</source>
            <translation>usado</translation>
        </message>
        <message>
            <source>lost in an hour, %</source>
            <translation>perdido por hora, %</translation>
        </message>
        <message>
            <source>at use, g/L</source>
            <translation>al usarlo, g/L</translation>
        </message>
        <message>
            <source>all measured</source>
            <translation>todo lo medido</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Patrones</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>The run names no lots.</source>
            <translation>La tanda no nombra ningún lote.</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Fuente: %1</translation>
        </message>
        <message>
            <source>Steps: %1.</source>
            <translation>Pasos: %1.</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Condiciones</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longitud de onda</translation>
        </message>
        <message>
            <source>path length d</source>
            <translation>camino óptico d</translation>
        </message>
        <message>
            <source>molar absorptivity e</source>
            <translation>absortividad molar e</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>calibración</translation>
        </message>
        <message>
            <source>direction</source>
            <translation>sentido</translation>
        </message>
        <message>
            <source>rising</source>
            <translation>ascendente</translation>
        </message>
        <message>
            <source>falling</source>
            <translation>descendente</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lecturas</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>llevadas al volumen final</translation>
        </message>
        <message>
            <source>as read, no correction for volume</source>
            <translation>tal como se leen, sin corrección de volumen</translation>
        </message>
        <message>
            <source>net signal to be reported</source>
            <translation>señal neta que se informa</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>absorbancia máxima</translation>
        </message>
        <message>
            <source>absorbance that has to remain</source>
            <translation>absorbancia que tiene que quedar</translation>
        </message>
        <message>
            <source>Samples, standards, lots</source>
            <translation>Muestras, patrones, lotes</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>señal neta dA</translation>
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
            <translation>%1: señales y concentraciones</translation>
        </message>
        <message numerus="yes">
            <source>Mean blank: %1 of %n tubes.</source>
            <translation>
                <numerusform>Blanco medio: %1 de %n tubo.</numerusform>
                <numerusform>Blanco medio: %1 de %n tubos.</numerusform>
            </translation>
        </message>
        <message>
            <source>recovered</source>
            <translation>recuperado</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>magnitud</translation>
        </message>
        <message>
            <source>expected, g/L</source>
            <translation>esperado, g/L</translation>
        </message>
        <message>
            <source>found, g/L</source>
            <translation>hallado, g/L</translation>
        </message>
        <message>
            <source>recovery, %</source>
            <translation>recuperación, %</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>patrón %1</translation>
        </message>
        <message>
            <source>spike of %1</source>
            <translation>fortificación de %1</translation>
        </message>
        <message>
            <source>Recoveries</source>
            <translation>Recuperaciones</translation>
        </message>
        <message>
            <source>points</source>
            <translation>puntos</translation>
        </message>
        <message>
            <source>at 0 min</source>
            <translation>a 0 min</translation>
        </message>
        <message>
            <source>slope per min</source>
            <translation>pendiente por min</translation>
        </message>
        <message>
            <source>its standard error</source>
            <translation>su error típico</translation>
        </message>
        <message>
            <source>reaction</source>
            <translation>reacción</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>terminada</translation>
        </message>
        <message>
            <source>not ended</source>
            <translation>sin terminar</translation>
        </message>
        <message>
            <source>Lines through series of readings</source>
            <translation>Rectas por series de lecturas</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>recta de calibración</translation>
        </message>
        <message>
            <source>a</source>
            <translation>a</translation>
        </message>
        <message>
            <source>b, per mg</source>
            <translation>b, por mg</translation>
        </message>
        <message>
            <source>residual</source>
            <translation>residuo</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Calibración</translation>
        </message>
        <message>
            <source>symbol</source>
            <translation>símbolo</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>qué es</translation>
        </message>
        <message>
            <source>source of uncertainty</source>
            <translation>fuente de incertidumbre</translation>
        </message>
        <message>
            <source>standard uncertainty, %1</source>
            <translation>incertidumbre típica, %1</translation>
        </message>
        <message>
            <source>share of the variance, %</source>
            <translation>parte de la varianza, %</translation>
        </message>
        <message>
            <source>Calculation: %1, %2</source>
            <translation>Cálculo: %1, %2</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>There is no value; the checks say why.</source>
            <translation>No hay ningún valor; las comprobaciones dicen por qué.</translation>
        </message>
        <message>
            <source>That is the result below, in %1, times %2.</source>
            <translation>Es el resultado de abajo, en %1, por %2.</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Señales</translation>
        </message>
        <message>
            <source>Calculations</source>
            <translation>Cálculos</translation>
        </message>
        <message>
            <source>Calculation: for every result of %1</source>
            <translation>Cálculo: para cada resultado de %1</translation>
        </message>
        <message>
            <source>from a run file, in no notebook</source>
            <translation>de un archivo de tanda, en ningún cuaderno</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>taken back since</source>
            <translation>anulada desde entonces</translation>
        </message>
        <message>
            <source>on the bench, not decided</source>
            <translation>en la mesa, sin decidir</translation>
        </message>
        <message numerus="yes">
            <source>%n samples</source>
            <translation>
                <numerusform>%n muestra</numerusform>
                <numerusform>%n muestras</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record</source>
            <translation>Registro de la tanda</translation>
        </message>
        <message>
            <source>End of the run record %1</source>
            <translation>Fin del registro de la tanda %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>tanda</translation>
        </message>
        <message>
            <source>state</source>
            <translation>estado</translation>
        </message>
        <message>
            <source>revision</source>
            <translation>edición</translation>
        </message>
        <message>
            <source>method</source>
            <translation>método</translation>
        </message>
        <message>
            <source>started</source>
            <translation>comenzada</translation>
        </message>
        <message>
            <source>laboratory</source>
            <translation>laboratorio</translation>
        </message>
        <message>
            <source>notebook</source>
            <translation>cuaderno</translation>
        </message>
        <message>
            <source>%1, run %2</source>
            <translation>%1, tanda %2</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>puesta en la mesa</translation>
        </message>
        <message>
            <source>evaluated by</source>
            <translation>evaluada por</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 por %2</translation>
        </message>
        <message>
            <source>this copy made</source>
            <translation>esta copia hecha</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Decisión</translation>
        </message>
        <message>
            <source>Nobody has decided on this run.</source>
            <translation>Nadie ha decidido sobre esta tanda.</translation>
        </message>
        <message>
            <source>decided</source>
            <translation>decidido</translation>
        </message>
        <message>
            <source>reason</source>
            <translation>motivo</translation>
        </message>
        <message>
            <source>program</source>
            <translation>programa</translation>
        </message>
        <message>
            <source>taken back, on the bench again</source>
            <translation>anulada, de nuevo en la mesa</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>result</source>
            <translation>resultado</translation>
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
            <translation>recorrido</translation>
        </message>
        <message>
            <source>verdict</source>
            <translation>dictamen</translation>
        </message>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2: %3</translation>
        </message>
        <message>
            <source>%1, %2: %3. Specification: %4. Decision rule: %5.</source>
            <translation>%1, %2: %3. Especificación: %4. Regla de decisión: %5.</translation>
        </message>
        <message>
            <source>%1, %2, rests on this run and on %3.</source>
            <translation>%1, %2, se apoya en esta tanda y en %3.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>run %1 of the notebook ("%2", %3)</source>
            <translation>tanda %1 del cuaderno («%2», %3)</translation>
        </message>
        <message>
            <source>the run "%1" (%2)</source>
            <translation>la tanda «%1» (%2)</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Comprobaciones</translation>
        </message>
        <message>
            <source>check</source>
            <translation>comprobación</translation>
        </message>
        <message>
            <source>of</source>
            <translation>de</translation>
        </message>
        <message>
            <source>what was found</source>
            <translation>qué se halló</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>superada</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>no superada</translation>
        </message>
        <message>
            <source>Run that results are taken from: %1</source>
            <translation>Tanda de la que se toman resultados: %1</translation>
        </message>
        <message>
            <source>Run %1 of the same notebook, %2.</source>
            <translation>Tanda %1 del mismo cuaderno, %2.</translation>
        </message>
        <message>
            <source>Run %1.</source>
            <translation>Tanda %1.</translation>
        </message>
        <message>
            <source>What plateau verify confirms</source>
            <translation>Qué confirma plateau verify</translation>
        </message>
        <message>
            <source>SHA-256 of the run and its method as printed here: %1</source>
            <translation>SHA-256 de la tanda y su método tal como se imprimen aquí: %1</translation>
        </message>
        <message>
            <source>The run stands in no notebook: the hash is that of its file's content, written as plateau-run/1 with its method.</source>
            <translation>La tanda no está en ningún cuaderno: el hash es el del contenido de su archivo, escrito como plateau-run/1 con su método.</translation>
        </message>
        <message>
            <source>Reviewed on %1: %2%3</source>
            <translation>Revisada el %1: %2%3</translation>
        </message>
        <message>
            <source> (the same)</source>
            <translation> (el mismo)</translation>
        </message>
        <message>
            <source> (another: it was changed since)</source>
            <translation> (otro: se ha cambiado desde entonces)</translation>
        </message>
        <message numerus="yes">
            <source>Audit: %n entries, head %1</source>
            <translation>
                <numerusform>Auditoría: %n entrada, último hash %1</numerusform>
                <numerusform>Auditoría: %n entradas, último hash %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record %1</source>
            <translation>Registro de la tanda %1</translation>
        </message>
        <message>
            <source>run record %1, revision %2</source>
            <translation>registro de la tanda %1, edición %2</translation>
        </message>
        <message>
            <source>COPY</source>
            <translation>COPIA</translation>
        </message>
        <message>
            <source>Run record %1, revision %2, made %3 with Plateau %4; content %5</source>
            <translation>Registro de la tanda %1, edición %2, hecho el %3 con Plateau %4; contenido %5</translation>
        </message>
        <message>
            <source>Result: %1.</source>
            <translation>Resultado: %1.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>no informado</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>control %1</translation>
        </message>
        <message>
            <source>Run record %1</source>
            <comment>a file name</comment>
            <translation>Registro de la tanda %1</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>sin diluir</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunStates</name>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>en la mesa</translation>
        </message>
        <message>
            <source>%1, and %2 more</source>
            <translation>%1 y %2 más</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunsModel</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Comienzo</translation>
        </message>
        <message>
            <source>Title</source>
            <translation>Título</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Método</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Muestras</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Decidida por</translation>
        </message>
        <message>
            <source>Checks that failed</source>
            <translation>Comprobaciones no superadas</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoices</name>
        <message>
            <source>no result</source>
            <translation>ningún resultado</translation>
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
            <source>repeated in this rack as %1</source>
            <translation>repetida en esta gradilla como %1</translation>
        </message>
        <message>
            <source>undecided</source>
            <translation>sin decidir</translation>
        </message>
        <message>
            <source>as the run</source>
            <translation>como la tanda</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>aceptada</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rechazada</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>repetir</translation>
        </message>
        <message>
            <source>read it, then decide</source>
            <translation>léala y decida</translation>
        </message>
        <message>
            <source>look into its checks, then decide</source>
            <translation>mire sus comprobaciones y decida</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>no informado</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>informado</translation>
        </message>
        <message>
            <source>There is no sample in this run.</source>
            <translation>No hay ninguna muestra en esta tanda.</translation>
        </message>
        <message>
            <source>back to the samples that wait</source>
            <translation>de vuelta a las muestras en espera</translation>
        </message>
        <message>
            <source>back to the samples that wait: %1</source>
            <translation>de vuelta a las muestras en espera: %1</translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will go back to those that wait, to be repeated.</source>
            <translation>
                <numerusform>%n muestra volverá a las que esperan, para repetirla.</numerusform>
                <numerusform>%n muestras volverán a las que esperan, para repetirlas.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will go back to those that wait, to be repeated: %1.</source>
            <translation>
                <numerusform>%n muestra volverá a las que esperan, para repetirla: %1.</numerusform>
                <numerusform>%n muestras volverán a las que esperan, para repetirlas: %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will be reported.</source>
            <translation>
                <numerusform>%n muestra se informará.</numerusform>
                <numerusform>%n muestras se informarán.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will be rejected.</source>
            <translation>
                <numerusform>%n muestra se rechazará.</numerusform>
                <numerusform>%n muestras se rechazarán.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) will stay undecided.</source>
            <translation>
                <numerusform>%n muestra quedará sin decidir.</numerusform>
                <numerusform>%n muestras quedarán sin decidir.</numerusform>
            </translation>
        </message>
        <message>
            <source>If the run is accepted: %1</source>
            <translation>Si se acepta la tanda: %1</translation>
        </message>
        <message>
            <source>If the run is rejected: %1</source>
            <translation>Si se rechaza la tanda: %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesModel</name>
        <message>
            <source>as advised</source>
            <translation>como se aconseja</translation>
        </message>
        <message>
            <source>say why</source>
            <translation>indique por qué</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Dictamen</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Decisión</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Repeat how</source>
            <translation>Cómo repetir</translation>
        </message>
        <message>
            <source>If the run is accepted</source>
            <translation>Si se acepta la tanda</translation>
        </message>
        <message>
            <source>as in this run</source>
            <translation>como en esta tanda</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesTable</name>
        <message>
            <source>20, 5 to 100, or 0.5 mL</source>
            <translation>20, 5 a 100 o 0,5 mL</translation>
        </message>
        <message>
            <source>Decisions of single samples</source>
            <translation>Decisiones de muestras individuales</translation>
        </message>
        <message>
            <source>A accepts, R rejects, W repeats the chosen samples, Delete leaves them to the run; Enter edits, Ctrl+A chooses all.</source>
            <translation>A acepta, R rechaza, W repite las muestras elegidas, Supr las deja como la tanda; Intro edita, Ctrl+A elige todas.</translation>
        </message>
        <message>
            <source>For a repeat, type another dilution (20), its steps (5 to 100) or another sample volume (0.5 mL).</source>
            <translation>Para una repetición, escriba otra dilución (20), sus pasos (5 a 100) u otro volumen de muestra (0,5 mL).</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSection</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Qué está previsto para cada muestra</translation>
        </message>
        <message>
            <source>Take from the &amp;queue…</source>
            <translation>Tomar &amp;de la cola…</translation>
        </message>
        <message>
            <source>P&amp;ropose dilutions</source>
            <translation>P&amp;roponer diluciones</translation>
        </message>
        <message>
            <source>Add a d&amp;ilution step</source>
            <translation>A&amp;ñadir un paso de dilución</translation>
        </message>
        <message>
            <source>Remove the last step</source>
            <translation>Quitar el último paso</translation>
        </message>
        <message>
            <source>Type what is expected, Enter goes down, and let the dilutions be proposed, or type them. Left empty: undiluted, and the method's own volume in the tube.</source>
            <translation>Escriba lo esperado (Intro pasa a la fila siguiente) y haga que se propongan las diluciones, o escríbalas. Vacío: sin diluir y con el volumen propio del método en el tubo.</translation>
        </message>
        <message>
            <source>First type what is expected of at least one sample, or a product that was run before: the dilution follows from it.</source>
            <translation>Escriba primero lo que se espera de al menos una muestra, o un producto analizado antes: de ahí se sigue la dilución.</translation>
        </message>
        <message>
            <source>Dilutions proposed: %1, to be run undiluted: %2. They can be overwritten.</source>
            <translation>Diluciones propuestas: %1, por analizar sin diluir: %2. Se pueden sobrescribir.</translation>
        </message>
        <message>
            <source>%1 Expected from the last results of the same product: %2.</source>
            <translation>%1 Lo esperado procede de los últimos resultados del mismo producto: %2.</translation>
        </message>
        <message>
            <source>%1 Volume of sample in the tube set as well: %2.</source>
            <translation>%1 También se fijó el volumen de muestra en el tubo: %2.</translation>
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
            <translation>%1 %2 mL, el del método</translation>
        </message>
        <message>
            <source>A product gives the unit of the results and their limits: type it, or choose it with ↓.</source>
            <translation>Un producto da la unidad de los resultados y sus límites: escríbalo o elíjalo con ↓.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSignals</name>
        <message>
            <source>%1 weak</source>
            <translation>%1 baja</translation>
        </message>
        <message>
            <source>%1 strong</source>
            <translation>%1 alta</translation>
        </message>
        <message>
            <source>%1: enter its mass and extract first.</source>
            <translation>%1: indique primero su masa y su extracto.</translation>
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
            <translation>%1 (método)</translation>
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
            <translation>Muestra</translation>
        </message>
        <message>
            <source>%1 expected (%2)</source>
            <translation>%1 esperado (%2)</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Esperado (%1)</translation>
        </message>
        <message>
            <source>Mass (g)</source>
            <translation>Masa (g)</translation>
        </message>
        <message>
            <source>Extract (mL)</source>
            <translation>Extracto (mL)</translation>
        </message>
        <message>
            <source>In the tube (mL)</source>
            <translation>En el tubo (mL)</translation>
        </message>
        <message>
            <source>%1 signal</source>
            <translation>Señal de %1</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Señal</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>Sample blank</source>
            <translation>Blanco de muestra</translation>
        </message>
        <message>
            <source>Spike (mL)</source>
            <translation>Fortificación (mL)</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matriz</translation>
        </message>
        <message>
            <source>Received</source>
            <translation>Recibida el</translation>
        </message>
        <message>
            <source>From</source>
            <translation>De</translation>
        </message>
        <message>
            <source>%1: take (mL)</source>
            <translation>%1: tomar (mL)</translation>
        </message>
        <message>
            <source>Take (mL)</source>
            <translation>Tomar (mL)</translation>
        </message>
        <message>
            <source>%1: make up to (mL)</source>
            <translation>%1: enrasar a (mL)</translation>
        </message>
        <message>
            <source>Make to (mL)</source>
            <translation>Enrasar a (mL)</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Factor</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Samples waiting</source>
            <translation>Muestras en espera</translation>
        </message>
        <message>
            <source>Fin&amp;d by sample, product, reason or sender</source>
            <translation>&amp;Buscar muestra, producto, por qué espera o de quién se recibió</translation>
        </message>
        <message>
            <source>No sample waits. Register what came in; a repeat that a run advises comes here by itself.</source>
            <translation>No espera ninguna muestra. Registre lo que llegó; una repetición que aconseja una tanda llega aquí por sí sola.</translation>
        </message>
        <message>
            <source>No sample contains all of these words. Remove one to find more.</source>
            <translation>Ninguna muestra tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>&amp;Register samples…</source>
            <translation>&amp;Registrar muestras…</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>&amp;Cambiar…</translation>
        </message>
        <message>
            <source>R&amp;eason not to run it</source>
            <translation>Motiv&amp;o para no analizarla</translation>
        </message>
        <message>
            <source>&amp;Withdraw</source>
            <translation>Retir&amp;ar</translation>
        </message>
        <message>
            <source>Wa&amp;ive the repeat</source>
            <translation>Ren&amp;unciar a la repetición</translation>
        </message>
        <message>
            <source>Choose what is meant: withdraw what was registered, or waive the repeat.</source>
            <translation>Elija lo que se quiere: retirar lo registrado o renunciar a la repetición.</translation>
        </message>
        <message>
            <source>&amp;Complete what is known…</source>
            <translation>Completar lo &amp;que se sabe…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Choose a sample to change it or to take it off the list.</source>
            <translation>Elija una muestra para cambiarla o quitarla de la lista.</translation>
        </message>
        <message>
            <source>There are samples that are not stored yet: register or leave them first.</source>
            <translation>Hay muestras que aún no están guardadas: regístrelas o déjelas primero.</translation>
        </message>
        <message>
            <source>Say in the line below why it will not be run; the notebook's history keeps it.</source>
            <translation>Indique en la línea de abajo por qué no se analizará; el historial del cuaderno lo conserva.</translation>
        </message>
        <message>
            <source>%1 was withdrawn.</source>
            <translation>%1 se ha retirado.</translation>
        </message>
        <message>
            <source>The repeat of %1 that run %2 advises will not be made.</source>
            <translation>La repetición de %1 que aconseja la tanda %2 no se hará.</translation>
        </message>
        <message>
            <source>The change of %1 is stored.</source>
            <translation>El cambio de %1 está guardado.</translation>
        </message>
        <message>
            <source>Samples that are not registered yet</source>
            <translation>Muestras aún sin registrar</translation>
        </message>
        <message>
            <source>Registered: %1.</source>
            <translation>Registradas: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesTable</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Qué está previsto para cada muestra</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SchedulePicture</name>
        <message>
            <source>mix</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>This rack</source>
            <translation>Esta gradilla</translation>
        </message>
        <message>
            <source>Second rack</source>
            <translation>Segunda gradilla</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SerialSource</name>
        <message>
            <source>serial port %1</source>
            <translation>puerto serie %1</translation>
        </message>
        <message>
            <source>there is no such port; check cable and name</source>
            <translation>el puerto no existe; compruebe el cable y el nombre</translation>
        </message>
        <message>
            <source>another program has it, or your account may not use serial ports (on Debian the group dialout may)</source>
            <translation>lo tiene otro programa, o su cuenta no puede usar puertos serie (en Debian puede el grupo dialout)</translation>
        </message>
        <message>
            <source>it can't be set to this speed and format</source>
            <translation>no se puede ajustar a esta velocidad y este formato</translation>
        </message>
        <message>
            <source>the cable or the adapter was unplugged, or the photometer is off</source>
            <translation>se desconectó el cable o el adaptador, o el fotómetro está apagado</translation>
        </message>
        <message>
            <source>the adapter was unplugged</source>
            <translation>se desconectó el adaptador</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SettingsForm</name>
        <message>
            <source>Earlier runs</source>
            <translation>Tandas anteriores</translation>
        </message>
        <message>
            <source>values</source>
            <translation>valores</translation>
        </message>
        <message>
            <source>Begin at the chosen point</source>
            <translation>Empezar en el punto elegido</translation>
        </message>
        <message>
            <source>Begin at the first run</source>
            <translation>Empezar en la primera tanda</translation>
        </message>
        <message>
            <source>Fixed by the laboratory</source>
            <translation>Fijados por el laboratorio</translation>
        </message>
        <message>
            <source>Out of control if</source>
            <translation>Fuera de control si</translation>
        </message>
        <message>
            <source>Save these settings</source>
            <translation>Guardar estos ajustes</translation>
        </message>
        <message>
            <source>&amp;Kind of chart</source>
            <translation>&amp;Clase de gráfico</translation>
        </message>
        <message>
            <source>Limit&amp;s</source>
            <translation>Lím&amp;ites</translation>
        </message>
        <message>
            <source>from earlier runs</source>
            <translation>a partir de tandas anteriores</translation>
        </message>
        <message>
            <source>fixed by the laboratory</source>
            <translation>fijados por el laboratorio</translation>
        </message>
        <message>
            <source>Values of a subgroup</source>
            <translation>Valores de un subgrupo</translation>
        </message>
        <message>
            <source>Weight of the newest value</source>
            <translation>Peso del valor más reciente</translation>
        </message>
        <message>
            <source>Width of the limits</source>
            <translation>Anchura de los límites</translation>
        </message>
        <message>
            <source>Reference value k</source>
            <translation>Valor de referencia k</translation>
        </message>
        <message>
            <source>Decision limit h</source>
            <translation>Límite de decisión h</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>calculados</translation>
        </message>
        <message>
            <source>from the printed table (three decimals)</source>
            <translation>de la tabla impresa (tres decimales)</translation>
        </message>
        <message>
            <source>Factors</source>
            <translation>Factores</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>from the moving range</source>
            <translation>del recorrido móvil</translation>
        </message>
        <message>
            <source>from all values</source>
            <translation>de todos los valores</translation>
        </message>
        <message>
            <source>Scatter</source>
            <translation>Dispersión</translation>
        </message>
        <message>
            <source>Centre</source>
            <translation>Línea central</translation>
        </message>
        <message>
            <source>Standard deviation</source>
            <translation>Desviación típica</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>A fecha de</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Qué está fuera de control</translation>
        </message>
        <message>
            <source>From the first run of the series onwards.</source>
            <translation>Desde la primera tanda de la serie.</translation>
        </message>
        <message>
            <source>From run %1 onwards.</source>
            <translation>Desde la tanda %1.</translation>
        </message>
        <message>
            <source>%1: a number is missing or cannot be read.</source>
            <translation>%1: falta un número o no se puede leer.</translation>
        </message>
        <message>
            <source>%1: a whole number is needed.</source>
            <translation>%1: se pide un número entero.</translation>
        </message>
        <message>
            <source>At least %1. With fewer than %2 the limits are provisional.</source>
            <translation>Al menos %1. Con menos de %2 los límites son provisionales.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfDraft</name>
        <message>
            <source>%1 is not a matrix; choose one of: %2.</source>
            <translation>%1 no es una matriz; elija una de: %2.</translation>
        </message>
        <message>
            <source>%1 is not a form; a sample is liquid or solid.</source>
            <translation>%1 no es una forma; escriba líquido o sólido.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 is still to come; give the time when it came in.</source>
            <translation>%1 aún está por llegar; indique la hora en que entró.</translation>
        </message>
        <message>
            <source>%1 does not end in a number; write the measurand and the amount in g/L, for a solid in g/100 g, as in %2.</source>
            <translation>%1 no termina en un número; escriba el mensurando y la cantidad en g/L, o de un sólido en g/100 g, como en %2.</translation>
        </message>
        <message>
            <source>Say what %1 is expected of, as in %2.</source>
            <translation>Indique de qué se espera %1, como en %2.</translation>
        </message>
        <message>
            <source>No method measures %1; there are: %2.</source>
            <translation>Ningún método mide %1; hay: %2.</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 y %2 más</translation>
        </message>
        <message>
            <source>glucose</source>
            <translation>glucosa</translation>
        </message>
        <message>
            <source>%1 stands in line %2 already; each sample needs an id of its own.</source>
            <translation>%1 ya está en la línea %2; cada muestra necesita un id propio.</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matriz</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Forma</translation>
        </message>
        <message>
            <source>Received</source>
            <translation>Recibida el</translation>
        </message>
        <message>
            <source>Received from</source>
            <translation>Recibida de</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Esperado</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Sólido</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Líquido</translation>
        </message>
        <message>
            <source>clear</source>
            <translation>transparente</translation>
        </message>
        <message>
            <source>protein</source>
            <translation>proteína</translation>
        </message>
        <message>
            <source>%1 is not a time; write the day as %2, with the time as %2 8:10, or the time alone for the last day.</source>
            <translation>%1 no es una hora; escriba el día como %2, con la hora como %2 8:10, o la hora sola para el último día.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfModel</name>
        <message>
            <source>Why it waits</source>
            <translation>Por qué espera</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfPaste</name>
        <message>
            <source>id</source>
            <translation>id</translation>
        </message>
        <message>
            <source>sample id</source>
            <translation>id de muestra</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>muestras</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>received at</source>
            <translation>recibida</translation>
        </message>
        <message>
            <source>received on</source>
            <translation>recibida el</translation>
        </message>
        <message>
            <source>date</source>
            <translation>fecha</translation>
        </message>
        <message>
            <source>from</source>
            <translation>de</translation>
        </message>
        <message>
            <source>sender</source>
            <translation>remitente</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>%1 expected</source>
            <translation>%1 esperado</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Lines pasted: %1</source>
            <translation>Líneas pegadas: %1</translation>
        </message>
        <message>
            <source>Not understood and left out: column %1.</source>
            <translation>No entendido y omitido: columna %1.</translation>
        </message>
        <message>
            <source>There is no text to paste. Copy the cells in the spreadsheet first.</source>
            <translation>No hay texto que pegar. Copie primero las celdas en la hoja de cálculo.</translation>
        </message>
        <message>
            <source>%1 lines are more than are taken at once; paste at most %2.</source>
            <translation>%1 líneas son más de las que se toman de una vez; pegue como máximo %2.</translation>
        </message>
        <message>
            <source>%1. Columns by their heads: %2.</source>
            <translation>%1. Columnas según los encabezados: %2.</translation>
        </message>
        <message>
            <source>%1. Columns by their order: %2.</source>
            <translation>%1. Columnas según su orden: %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SideBar</name>
        <message>
            <source>Racks and books</source>
            <translation>Gradillas y libros</translation>
        </message>
        <message>
            <source>&amp;Person at the bench</source>
            <translation>Persona en la &amp;mesa</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>&amp;Nueva tanda</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>Abrir archivo de &amp;tanda…</translation>
        </message>
        <message>
            <source>%1 is a number and no name: was a reading meant?</source>
            <translation>%1 es un número y no un nombre de persona: ¿era una lectura?</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignalSection</name>
        <message>
            <source>What each measurand takes from the readings</source>
            <translation>Qué toma cada mensurando de las lecturas</translation>
        </message>
        <message>
            <source>Difference: to less from where the absorbance rises, from less to where it falls. Coupled indicator: an equilibrium before the reaction takes part of the coenzyme.</source>
            <translation>Diferencia: «hasta» menos «desde» donde la absorbancia sube, «desde» menos «hasta» donde baja. Indicador acoplado: un equilibrio anterior a la reacción se lleva parte de la coenzima.</translation>
        </message>
        <message>
            <source>Absorptivities of the chromophore</source>
            <translation>Absortividades del cromóforo</translation>
        </message>
        <message>
            <source>One row for each wavelength that may be read at.</source>
            <translation>Una fila por cada longitud de onda a la que se puede leer.</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Cromóforo</translation>
        </message>
        <message>
            <source>The reaction</source>
            <translation>La reacción</translation>
        </message>
        <message>
            <source>makes the chromophore (absorbance rises)</source>
            <translation>forma el cromóforo (la absorbancia sube)</translation>
        </message>
        <message>
            <source>uses it up (absorbance falls)</source>
            <translation>lo consume (la absorbancia baja)</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longitud de onda</translation>
        </message>
        <message>
            <source>nm</source>
            <translation>nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Camino óptico</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Readings count</source>
            <translation>Las lecturas cuentan</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>tal como se leen</translation>
        </message>
        <message>
            <source>brought to the volume of the later reading</source>
            <translation>llevadas al volumen de la lectura posterior</translation>
        </message>
        <message>
            <source>A reading taken as a series</source>
            <translation>Una lectura tomada en serie</translation>
        </message>
        <message>
            <source>Where the absorbance keeps creeping: a straight line through the last readings of a series, read at the moment the starter was added. Leave both empty for none.</source>
            <translation>Donde la absorbancia sigue variando lentamente: una recta por las últimas lecturas de una serie, leída en el momento en que se añadió el iniciador. Deje los dos vacíos si no hay ninguna.</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>Readings on the line</source>
            <translation>Lecturas de la recta</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignatureFields</name>
        <message>
            <source>unsigned: nobody is set up</source>
            <translation>sin firmar: no hay personas dadas de alta</translation>
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
            <translation>% por hora</translation>
        </message>
        <message>
            <source>From the book</source>
            <translation>Del libro</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Concentration when made</source>
            <translation>Concentración al prepararlo</translation>
        </message>
        <message>
            <source>u of the strength</source>
            <translation>u de la concentración</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>no conocida</translation>
        </message>
        <message>
            <source>Relative standard uncertainty (k = 1), from its recipe or its certificate. It counts where the run is calibrated by its standard.</source>
            <translation>Incertidumbre típica relativa (k = 1), de su receta o su certificado. Cuenta cuando la tanda se calibra con su patrón.</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Pérdida de concentración</translation>
        </message>
        <message>
            <source>Prepared at</source>
            <translation>Preparado el</translation>
        </message>
        <message>
            <source>Used</source>
            <translation>Usado</translation>
        </message>
        <message>
            <source>Used at</source>
            <translation>Usado el</translation>
        </message>
        <message>
            <source>Tubes with it</source>
            <translation>Tubos con él</translation>
        </message>
        <message>
            <source>the method's; several make a line: 0.05; 0.1; 0.2</source>
            <translation>el del método; varios forman una recta: 0,05; 0,1; 0,2</translation>
        </message>
        <message>
            <source>Volumes in the tube (mL)</source>
            <translation>Volúmenes en el tubo (mL)</translation>
        </message>
        <message>
            <source>another one, keyed below</source>
            <translation>otro, introducido abajo</translation>
        </message>
        <message>
            <source>%1, %2, made %3</source>
            <translation>%1, %2, preparado el %3</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>el libro de patrones, preparado el %1</translation>
        </message>
        <message>
            <source>when it goes into its first tube</source>
            <translation>cuando entra en su primer tubo</translation>
        </message>
        <message>
            <source>Used when it goes into its first tube</source>
            <translation>Usado cuando entra en su primer tubo</translation>
        </message>
        <message>
            <source>Known value</source>
            <translation>Valor conocido</translation>
        </message>
        <message>
            <source>Taken from the book, where it is the only one in date; choose or key another if this is not it.</source>
            <translation>Tomado del libro, donde es el único que aún es válido; elija o introduzca otro si no es este.</translation>
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
            <translation>%1 días</translation>
        </message>
        <message>
            <source>discarded</source>
            <translation>desechado</translation>
        </message>
        <message>
            <source>keeps its strength</source>
            <translation>conserva su concentración</translation>
        </message>
        <message>
            <source>past its time since %1</source>
            <translation>caducado desde el %1</translation>
        </message>
        <message>
            <source>good for %1, until %2</source>
            <translation>válido durante %1, hasta %2</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>The purity</source>
            <translation>La pureza</translation>
        </message>
        <message>
            <source>The uncertainty of the purity</source>
            <translation>La incertidumbre de la pureza</translation>
        </message>
        <message>
            <source>The water content</source>
            <translation>El contenido de agua</translation>
        </message>
        <message>
            <source>The uncertainty of the water</source>
            <translation>La incertidumbre del agua</translation>
        </message>
        <message>
            <source>The molar mass</source>
            <translation>La masa molar</translation>
        </message>
        <message>
            <source>The density</source>
            <translation>La densidad</translation>
        </message>
        <message>
            <source>The use-by date</source>
            <translation>La caducidad</translation>
        </message>
        <message>
            <source>What it is for</source>
            <translation>Para qué es</translation>
        </message>
        <message>
            <source>Analyte molecules per molecule</source>
            <translation>Moléculas de analito por molécula</translation>
        </message>
        <message>
            <source>Weighed</source>
            <translation>Lo pesado</translation>
        </message>
        <message>
            <source>The uncertainty of a weighing</source>
            <translation>La incertidumbre de una pesada</translation>
        </message>
        <message>
            <source>The flask's volume</source>
            <translation>El volumen del matraz</translation>
        </message>
        <message>
            <source>The uncertainty of the flask</source>
            <translation>La incertidumbre del matraz</translation>
        </message>
        <message>
            <source>The time it was made</source>
            <translation>La hora en que se preparó</translation>
        </message>
        <message>
            <source>The loss of strength</source>
            <translation>La pérdida de concentración</translation>
        </message>
        <message>
            <source>The rule for its use</source>
            <translation>La regla para su uso</translation>
        </message>
        <message>
            <source>That is your own rule, %1 after it was made.</source>
            <translation>Es su regla propia, %1 después de la preparación.</translation>
        </message>
        <message>
            <source>Then its loss leaves %1 of its strength, the least that may be used.</source>
            <translation>Entonces la pérdida deja un %1 de la concentración, lo mínimo que puede usarse.</translation>
        </message>
        <message>
            <source>That is %1 after it was made, the oldest that may be used.</source>
            <translation>Son %1 después de la preparación, la antigüedad máxima de uso.</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, hasta %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsModel</name>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Strength now</source>
            <translation>Concentración ahora</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Strength when made (k = 2)</source>
            <translation>Al prepararlo (k = 2)</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Preparado el</translation>
        </message>
        <message>
            <source>Made of</source>
            <translation>Preparado de</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Por</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsPage</name>
        <message>
            <source>Standards</source>
            <translation>Patrones</translation>
        </message>
        <message>
            <source>Standards that were made</source>
            <translation>Patrones que se prepararon</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, substance or state</source>
            <translation>&amp;Buscar nombre, sustancia o estado</translation>
        </message>
        <message>
            <source>No standard is in the book yet. Prepare one: its strength then counts down here, and a new run takes it with its uncertainty.</source>
            <translation>Aún no hay ningún patrón en el libro. Prepare uno: aquí se ve entonces disminuir su concentración, y una tanda nueva lo toma con su incertidumbre.</translation>
        </message>
        <message>
            <source>No standard contains all of these words. Remove one to find more.</source>
            <translation>Ningún patrón tiene todas estas palabras. Quite una para encontrar más.</translation>
        </message>
        <message>
            <source>P&amp;repare a standard…</source>
            <translation>Prepa&amp;rar un patrón…</translation>
        </message>
        <message>
            <source>A standard or a substance, not stored yet</source>
            <translation>Un patrón o una sustancia, aún sin guardar</translation>
        </message>
        <message>
            <source>In the book: %1.</source>
            <translation>En el libro: %1.</translation>
        </message>
        <message>
            <source>In the book. Print its label; a new run takes it by its name.</source>
            <translation>En el libro. Imprima su etiqueta; una tanda nueva lo toma por su nombre.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indique primero quién está en la mesa: escriba su nombre a la izquierda y pulse Intro; después, hágalo de nuevo.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubjectForm</name>
        <message>
            <source>re&amp;jected too</source>
            <translation>también lo recha&amp;zado</translation>
        </message>
        <message>
            <source>Ch&amp;art of</source>
            <translation>Grá&amp;fico de</translation>
        </message>
        <message>
            <source>b&amp;y</source>
            <translation>p&amp;or método</translation>
        </message>
        <message>
            <source>&amp;measured</source>
            <translation>mens&amp;urando</translation>
        </message>
        <message>
            <source>&amp;in</source>
            <translation>&amp;en</translation>
        </message>
        <message>
            <source>lo&amp;t</source>
            <translation>&amp;Solo el lote</translation>
        </message>
        <message>
            <source>by p&amp;erson</source>
            <translation>&amp;por persona</translation>
        </message>
        <message>
            <source>on photometer</source>
            <translation>en el fotómetro</translation>
        </message>
        <message>
            <source>f&amp;rom</source>
            <translation>&amp;desde</translation>
        </message>
        <message>
            <source>to</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>all of them</source>
            <translation>todos</translation>
        </message>
        <message>
            <source>any</source>
            <translation>cualquiera</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>anybody</source>
            <translation>cualquiera</translation>
        </message>
        <message>
            <source>%1 (all standards of it)</source>
            <translation>%1 (todos sus patrones)</translation>
        </message>
        <message>
            <source>all of them, without limits</source>
            <translation>todos, sin límites</translation>
        </message>
        <message>
            <source>%1 is not a date yet: write it as %2.</source>
            <translation>%1 aún no es una fecha: escríbala como %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubstanceForm</name>
        <message>
            <source>N&amp;ame</source>
            <translation>Nom&amp;bre</translation>
        </message>
        <message>
            <source>S&amp;upplier</source>
            <translation>&amp;Proveedor</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>L&amp;ote</translation>
        </message>
        <message>
            <source>&amp;Certificate</source>
            <translation>&amp;Certificado</translation>
        </message>
        <message>
            <source>Pur&amp;ity (%)</source>
            <translation>Pure&amp;za (%)</translation>
        </message>
        <message>
            <source>Mois&amp;ture, not in the formula (%)</source>
            <translation>&amp;Agua no incluida en la fórmula (%)</translation>
        </message>
        <message>
            <source>&amp;Molar mass, incl. water of crystallisation (g/mol)</source>
            <translation>Ma&amp;sa molar, con el agua de cristalización (g/mol)</translation>
        </message>
        <message>
            <source>Densit&amp;y of a liquid (g/mL)</source>
            <translation>Densi&amp;dad de un líquido (g/mL)</translation>
        </message>
        <message>
            <source>Use-by &amp;date</source>
            <translation>Cad&amp;ucidad</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Motiv&amp;o del cambio</translation>
        </message>
        <message>
            <source>Of the substance without the water below.</source>
            <translation>De la sustancia sin el agua de abajo.</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Gua&amp;rdar en el libro</translation>
        </message>
        <message>
            <source>Add a substance</source>
            <translation>Añadir una sustancia</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>Cambiar %1</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Indique por qué se cambia; el libro lo conserva.</translation>
        </message>
        <message>
            <source>Purity, half-width ± (%)</source>
            <translation>Pureza, semiancho ± (%)</translation>
        </message>
        <message>
            <source>Water, half-width ± (%)</source>
            <translation>Agua, semiancho ± (%)</translation>
        </message>
        <message>
            <source>Half of the width in which the value lies for certain, as a certificate states it; taken as a rectangular distribution.</source>
            <translation>La mitad del ancho en el que el valor está con seguridad, como lo da un certificado; se toma como distribución rectangular.</translation>
        </message>
        <message>
            <source>Back  Esc</source>
            <translation>Volver  Esc</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Por ejemplo %1, o solo el mes, como %2. Vacío si no se indica ninguna.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TakingsModel</name>
        <message>
            <source>Started</source>
            <translation>Comienzo</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Tanda</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubos</translation>
        </message>
        <message>
            <source>By way of</source>
            <translation>Del envase</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TextSection</name>
        <message>
            <source>Preparation of the sample, by what it is like</source>
            <translation>Preparación de la muestra, según cómo sea</translation>
        </message>
        <message>
            <source>Cautions, one per line</source>
            <translation>Precauciones, una por línea</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principio</translation>
        </message>
        <message>
            <source>Reactions, one per line</source>
            <translation>Reacciones, una por línea</translation>
        </message>
        <message>
            <source>What interferes, one per line</source>
            <translation>Qué interfiere, una por línea</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Aún no hay nada que dibujar.</translation>
        </message>
        <message>
            <source>Row %1 of %2, %3</source>
            <translation>Fila %1 de %2, %3</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>add</source>
            <translation>añadir</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>esperar</translation>
        </message>
        <message>
            <source>read</source>
            <translation>leer</translation>
        </message>
        <message>
            <source>time for it</source>
            <translation>tiempo para ello</translation>
        </message>
        <message>
            <source>due</source>
            <translation>toca</translation>
        </message>
        <message>
            <source>late</source>
            <translation>con retraso</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>free %1</source>
            <translation>%1 libres</translation>
        </message>
        <message>
            <source>hands</source>
            <translation>manos</translation>
        </message>
        <message>
            <source>addition</source>
            <translation>adición</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>next step</source>
            <translation>paso siguiente</translation>
        </message>
        <message>
            <source>%1 late since %2</source>
            <translation>%1 con retraso desde %2</translation>
        </message>
        <message>
            <source>%1 due now</source>
            <translation>%1 toca ahora</translation>
        </message>
        <message>
            <source>%1 due now, until %2</source>
            <translation>%1 toca ahora, hasta %2</translation>
        </message>
        <message>
            <source>%1 due from %2</source>
            <translation>%1 toca desde %2</translation>
        </message>
        <message>
            <source>%1 due %2 to %3</source>
            <translation>%1 toca de %2 a %3</translation>
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
            <translation>Manos libres de %1 a %2</translation>
        </message>
        <message>
            <source>As of %1</source>
            <translation>Estado en el minuto %1</translation>
        </message>
        <message>
            <source>Now %1</source>
            <translation>Ahora %1</translation>
        </message>
        <message>
            <source>%1 read early by %2</source>
            <translation>%1 leída %2 antes de tiempo</translation>
        </message>
        <message>
            <source>%1 read late by %2</source>
            <translation>%1 leída con %2 de retraso</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>malogrado</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 con %2 de retraso</translation>
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
            <source>&amp;Judge whether a second rack fits in between</source>
            <translation>Ver si cabe una segunda grad&amp;illa en las esperas</translation>
        </message>
        <message>
            <source>Time at the bench</source>
            <translation>Tiempo en la mesa</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Tubos frente al tiempo</translation>
        </message>
        <message>
            <source>Max. time at the bench</source>
            <translation>Tiempo máx. en la mesa</translation>
        </message>
        <message>
            <source>Its method</source>
            <translation>Su método</translation>
        </message>
        <message>
            <source>Its tubes</source>
            <translation>Sus tubos</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeWords</name>
        <message>
            <source>in %1</source>
            <translation>en %1</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>desde hace %1</translation>
        </message>
        <message>
            <source>now, %1 left</source>
            <translation>ahora, quedan %1</translation>
        </message>
        <message>
            <source>late by %1</source>
            <translation>con retraso de %1</translation>
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
            <translation>%1 hacia atrás</translation>
        </message>
        <message>
            <source>%1 forward</source>
            <translation>%1 hacia delante</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayLines</name>
        <message>
            <source>%1: %2 of %3 read.</source>
            <translation>%1: %2 de %3 leídas.</translation>
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
            <translation>edición %1</translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) to repeat</source>
            <translation>
                <numerusform>%n muestra por repetir</numerusform>
                <numerusform>%n muestras por repetir</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) rejected</source>
            <translation>
                <numerusform>%n muestra rechazada</numerusform>
                <numerusform>%n muestras rechazadas</numerusform>
            </translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>sin firmar</translation>
        </message>
        <message>
            <source>Run %1, %2: accepted by %3, %4</source>
            <translation>Tanda %1, %2: aceptada por %3, %4</translation>
        </message>
        <message>
            <source>Run %1, %2: rejected by %3, %4</source>
            <translation>Tanda %1, %2: rechazada por %3, %4</translation>
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
            <translation>%1: %2 ahora, %3</translation>
        </message>
        <message>
            <source>%1, lot %2: %3</source>
            <translation>%1, lote %2: %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayPage</name>
        <message>
            <source>On the bench</source>
            <translation>En la mesa</translation>
        </message>
        <message>
            <source>Nothing is on the bench. Start with New run, or open a run file.</source>
            <translation>No hay nada en la mesa. Empiece con Nueva tanda o abra un archivo de tanda.</translation>
        </message>
        <message>
            <source>Waiting to be run</source>
            <translation>En espera de análisis</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Samples; repeats that decided runs advise come by themselves.</source>
            <translation>No espera ninguna muestra. Las muestras se registran en Muestras; las repeticiones que aconsejan las tandas decididas llegan por sí solas.</translation>
        </message>
        <message>
            <source>Standards that can be used</source>
            <translation>Patrones que se pueden usar</translation>
        </message>
        <message>
            <source>No standard can be used. Fresh ones are entered under Standards.</source>
            <translation>No hay ningún patrón vigente. Los nuevos se anotan en Patrones.</translation>
        </message>
        <message>
            <source>Due or running out</source>
            <translation>Próximos vencimientos</translation>
        </message>
        <message>
            <source>No check of equipment falls due, and no lot runs out, in the next days.</source>
            <translation>En los próximos días no vence ninguna comprobación de equipos ni caduca ningún lote.</translation>
        </message>
        <message>
            <source>Latest decisions</source>
            <translation>Últimas decisiones</translation>
        </message>
        <message>
            <source>No run has been decided on yet. Decided runs are kept in the Notebook.</source>
            <translation>Aún no se ha decidido ninguna tanda. Las tandas decididas se guardan en el Cuaderno.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailModel</name>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Quién</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Qué se hizo</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Tanda</translation>
        </message>
        <message>
            <source>Concerning</source>
            <translation>Sobre</translation>
        </message>
        <message>
            <source>Before</source>
            <translation>Antes</translation>
        </message>
        <message>
            <source>After</source>
            <translation>Después</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
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
            <translation>antes: %1</translation>
        </message>
        <message>
            <source>after: %1</source>
            <translation>después: %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>motivo: %1</translation>
        </message>
        <message>
            <source>Entry %1, account %2 on %3, program %4</source>
            <translation>Entrada %1, cuenta %2 en %3, programa %4</translation>
        </message>
        <message>
            <source>Nothing on record matches the search: empty a field above.</source>
            <translation>Nada de lo registrado corresponde a lo que se busca: vacíe un campo de arriba.</translation>
        </message>
        <message>
            <source>Acts, the newest first</source>
            <translation>Actos, el más reciente primero</translation>
        </message>
        <message>
            <source>Old&amp;er ones too</source>
            <translation>Tam&amp;bién los más antiguos</translation>
        </message>
        <message>
            <source>To its ra&amp;ck or record</source>
            <translation>Ir a su &amp;gradilla o registro</translation>
        </message>
        <message>
            <source>The chosen act in full</source>
            <translation>El acto elegido completo</translation>
        </message>
        <message>
            <source>Fin&amp;d</source>
            <translation>Bus&amp;car</translation>
        </message>
        <message>
            <source>&amp;Who</source>
            <translation>&amp;Quién</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <translation>Q&amp;ué</translation>
        </message>
        <message>
            <source>Fro&amp;m</source>
            <translation>D&amp;esde</translation>
        </message>
        <message>
            <source>unti&amp;l</source>
            <translation>H&amp;asta</translation>
        </message>
        <message>
            <source>&amp;Run number</source>
            <translation>Número &amp;de tanda</translation>
        </message>
        <message>
            <source>everybody</source>
            <translation>todas las personas</translation>
        </message>
        <message>
            <source>everything</source>
            <translation>todo</translation>
        </message>
        <message>
            <source>"%1" is not a run number; the notebook counts runs from 1.</source>
            <translation>«%1» no es el número de una tanda; el cuaderno las cuenta desde 1.</translation>
        </message>
        <message>
            <source>"%1" is not a day; write it as %2, or leave the field empty.</source>
            <translation>«%1» no es un día; escríbalo como %2, o deje el campo vacío.</translation>
        </message>
        <message>
            <source>Looked through what was done since %1; "Older ones too" goes on from there.</source>
            <translation>Se ha buscado en lo hecho desde %1; «También los más antiguos» sigue buscando hacia atrás.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailWords</name>
        <message>
            <source>notebook made</source>
            <translation>cuaderno creado</translation>
        </message>
        <message>
            <source>file brought up to a newer program</source>
            <translation>archivo puesto al día para un programa más nuevo</translation>
        </message>
        <message>
            <source>run put on the bench</source>
            <translation>tanda puesta en la mesa</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>tanda devuelta a la mesa</translation>
        </message>
        <message>
            <source>reading stored</source>
            <translation>lectura guardada</translation>
        </message>
        <message>
            <source>read once more</source>
            <translation>leído una vez más</translation>
        </message>
        <message>
            <source>additions ticked</source>
            <translation>adiciones marcadas</translation>
        </message>
        <message>
            <source>ticks taken back</source>
            <translation>marcas anuladas</translation>
        </message>
        <message>
            <source>tube counts again</source>
            <translation>el tubo vuelve a contar</translation>
        </message>
        <message>
            <source>computer's clock was set</source>
            <translation>reloj del ordenador ajustado</translation>
        </message>
        <message>
            <source>done without a repeat</source>
            <translation>se prescindió de una repetición</translation>
        </message>
        <message>
            <source>laboratory's settings saved</source>
            <translation>ajustes del laboratorio guardados</translation>
        </message>
        <message>
            <source>limits saved</source>
            <translation>límites guardados</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>frase de contraseña errónea</translation>
        </message>
        <message>
            <source>reported result chosen</source>
            <translation>resultado informado elegido</translation>
        </message>
        <message>
            <source>settings of a control chart saved</source>
            <translation>ajustes de un gráfico de control guardados</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>valor excluido de los gráficos de control</translation>
        </message>
        <message>
            <source>value counts in control charts again</source>
            <translation>el valor vuelve a contar en los gráficos de control</translation>
        </message>
        <message>
            <source>reading corrected</source>
            <translation>lectura corregida</translation>
        </message>
        <message>
            <source>tube spoilt</source>
            <translation>tubo malogrado</translation>
        </message>
        <message>
            <source>tubes added</source>
            <translation>tubos añadidos</translation>
        </message>
        <message>
            <source>run accepted</source>
            <translation>tanda aceptada</translation>
        </message>
        <message>
            <source>run rejected</source>
            <translation>tanda rechazada</translation>
        </message>
        <message>
            <source>sample registered</source>
            <translation>muestra registrada</translation>
        </message>
        <message>
            <source>sample changed</source>
            <translation>muestra modificada</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>muestra retirada</translation>
        </message>
        <message>
            <source>lot received</source>
            <translation>lote recibido</translation>
        </message>
        <message>
            <source>lot put in its place</source>
            <translation>lote colocado en su lugar</translation>
        </message>
        <message>
            <source>lot opened</source>
            <translation>lote abierto</translation>
        </message>
        <message>
            <source>lot dissolved</source>
            <translation>lote disuelto</translation>
        </message>
        <message>
            <source>lot divided into aliquots</source>
            <translation>lote repartido en alícuotas</translation>
        </message>
        <message>
            <source>taken from a lot</source>
            <translation>tomado de un lote</translation>
        </message>
        <message>
            <source>note on a lot</source>
            <translation>nota sobre un lote</translation>
        </message>
        <message>
            <source>amount of a lot corrected</source>
            <translation>cantidad de un lote corregida</translation>
        </message>
        <message>
            <source>label of a lot changed</source>
            <translation>etiqueta de un lote modificada</translation>
        </message>
        <message>
            <source>lot discarded</source>
            <translation>lote desechado</translation>
        </message>
        <message>
            <source>substance added</source>
            <translation>sustancia añadida</translation>
        </message>
        <message>
            <source>substance changed</source>
            <translation>sustancia modificada</translation>
        </message>
        <message>
            <source>standard prepared</source>
            <translation>patrón preparado</translation>
        </message>
        <message>
            <source>standard discarded</source>
            <translation>patrón desechado</translation>
        </message>
        <message>
            <source>equipment added</source>
            <translation>equipo añadido</translation>
        </message>
        <message>
            <source>equipment changed</source>
            <translation>equipo modificado</translation>
        </message>
        <message>
            <source>equipment checked</source>
            <translation>equipo comprobado</translation>
        </message>
        <message>
            <source>check of equipment taken back</source>
            <translation>comprobación de un equipo anulada</translation>
        </message>
        <message>
            <source>method saved</source>
            <translation>método guardado</translation>
        </message>
        <message>
            <source>method imported</source>
            <translation>método importado</translation>
        </message>
        <message>
            <source>method out of use</source>
            <translation>método dado de baja</translation>
        </message>
        <message>
            <source>method in use again</source>
            <translation>método reactivado</translation>
        </message>
        <message>
            <source>person added</source>
            <translation>persona añadida</translation>
        </message>
        <message>
            <source>person changed</source>
            <translation>persona modificada</translation>
        </message>
        <message>
            <source>person out of use</source>
            <translation>persona dada de baja</translation>
        </message>
        <message>
            <source>person in use again</source>
            <translation>persona reactivada</translation>
        </message>
        <message>
            <source>passphrase changed</source>
            <translation>frase de contraseña cambiada</translation>
        </message>
        <message>
            <source>opening of a lot corrected</source>
            <translation>apertura de un lote corregida</translation>
        </message>
        <message>
            <source>form %1 of the file</source>
            <translation>esquema %1 del archivo</translation>
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
            <translation>El tubo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TubePicture</name>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluyente</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>iniciador</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>agitar</translation>
        </message>
        <message>
            <source>Nothing is in the tube yet.</source>
            <translation>Aún no hay nada en el tubo.</translation>
        </message>
        <message>
            <source>From the bottom: %1.</source>
            <translation>Desde el fondo: %1.</translation>
        </message>
        <message>
            <source>Together %1.</source>
            <translation>En total %1.</translation>
        </message>
        <message>
            <source>%1 is read at %2.</source>
            <translation>%1 se lee a %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UncertaintyForm</name>
        <message>
            <source>Standard uncertainties (k = 1)</source>
            <translation>Incertidumbres típicas (k = 1)</translation>
        </message>
        <message>
            <source>Absorbance, each reading</source>
            <translation>Absorbancia, cada lectura</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absortividad</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Camino óptico</translation>
        </message>
        <message>
            <source>Total volume</source>
            <translation>Volumen total</translation>
        </message>
        <message>
            <source>Sample volume</source>
            <translation>Volumen de muestra</translation>
        </message>
        <message>
            <source>Each dilution step</source>
            <translation>Cada paso de dilución</translation>
        </message>
        <message>
            <source>Extract of a solid</source>
            <translation>Extracto de un sólido</translation>
        </message>
        <message>
            <source>The source is given below each number. Type over a number to change it for this run only; clear it to restore it.</source>
            <translation>Debajo de cada número figura su procedencia. Sobrescriba uno para tomar otro solo en esta tanda; vacíelo para volver al anterior.</translation>
        </message>
        <message>
            <source>Still common practice: %1 of %2; set your own under Books, Laboratory.</source>
            <translation>Cifras de práctica habitual, hasta que el laboratorio indique las suyas en Libros, Laboratorio: %1 de %2.</translation>
        </message>
        <message>
            <source>Typed for this run: %1.</source>
            <translation>Escrito para esta tanda: %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UpdateDialog</name>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Detener</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cuaderno</translation>
        </message>
        <message>
            <source>The notebook %1 was last used with an older Plateau and is being brought up to date; a copy of it as it is now stays beside it.</source>
            <translation>El cuaderno %1 se usó por última vez con un Plateau más antiguo y se está actualizando; una copia tal como está ahora queda a su lado.</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Progreso</translation>
        </message>
        <message>
            <source>Looking through it</source>
            <translation>Se está revisando</translation>
        </message>
        <message>
            <source>Making the copy</source>
            <translation>Se está haciendo la copia</translation>
        </message>
        <message>
            <source>Bringing its tables up to date, step %1 of %2</source>
            <translation>Se están actualizando las tablas, paso %1 de %2</translation>
        </message>
        <message>
            <source>Rebuilding the index of the runs</source>
            <translation>Se está rehaciendo el índice de las tandas</translation>
        </message>
        <message>
            <source>Stopping …</source>
            <translation>Deteniendo …</translation>
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
            <translation>en espera</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>válido</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>repetir</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>investigar</translation>
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
            <translation>Incompleta: faltan lecturas</translation>
        </message>
        <message>
            <source>All results are reportable</source>
            <translation>Todos los resultados son válidos</translation>
        </message>
        <message>
            <source>The run itself failed a check</source>
            <translation>La propia tanda no superó una comprobación</translation>
        </message>
        <message>
            <source>%1 of %2 to repeat</source>
            <translation>%1 de %2 por repetir</translation>
        </message>
        <message>
            <source>%1 of %2 to investigate</source>
            <translation>%1 de %2 por investigar</translation>
        </message>
        <message>
            <source>%1 to investigate and %2 to repeat, of %3</source>
            <translation>%1 por investigar y %2 por repetir, de %3</translation>
        </message>
        <message>
            <source>No check has failed so far.</source>
            <translation>Hasta ahora se han superado todas las comprobaciones.</translation>
        </message>
        <message>
            <source>Every check passed.</source>
            <translation>Se han superado todas las comprobaciones.</translation>
        </message>
        <message>
            <source>%1 (%2 times)</source>
            <translation>%1 (%2 veces)</translation>
        </message>
        <message>
            <source>; </source>
            <translation>; </translation>
        </message>
        <message>
            <source>1 check failed: %1.</source>
            <translation>1 comprobación no superada: %1.</translation>
        </message>
        <message>
            <source>%1 checks failed: %2.</source>
            <translation>%1 comprobaciones no superadas: %2.</translation>
        </message>
        <message>
            <source>%1 is worked out as soon as a run by %2 with the same samples, of the same week, is accepted.</source>
            <translation>%1: se calcula en cuanto se acepte una tanda con %2 de las mismas muestras, de la misma semana.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>No check failed.</source>
            <translation>Ninguna comprobación ha fallado.</translation>
        </message>
        <message>
            <source>repeated</source>
            <translation>repetida</translation>
        </message>
        <message>
            <source>Not every check could be made</source>
            <translation>No se pudieron hacer todas las comprobaciones</translation>
        </message>
        <message>
            <source>All are reportable, %1 by a repeat in the rack</source>
            <translation>Todos son válidos, %1 por una repetición en la gradilla</translation>
        </message>
        <message>
            <source>%1 Not made, though the method asks for it: %2.</source>
            <translation>%1 Sin hacer, aunque el método lo pide: %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::VolumeWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>Wait %1 at %2</source>
            <translation>Esperar %1 a %2</translation>
        </message>
        <message>
            <source>Wait %1</source>
            <translation>Esperar %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, después </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingModel</name>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Producto</translation>
        </message>
        <message>
            <source>Why it waits</source>
            <translation>Por qué espera</translation>
        </message>
        <message>
            <source>Received</source>
            <translation>Recibida el</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingWords</name>
        <message>
            <source>repeat of run %1</source>
            <translation>repetición de la tanda %1</translation>
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
            <translation>tomar %1 de ella</translation>
        </message>
        <message>
            <source>dilute at least %1-fold</source>
            <translation>diluir al menos %1 veces</translation>
        </message>
        <message>
            <source>dilute %1-fold</source>
            <translation>diluir %1 veces</translation>
        </message>
        <message>
            <source>registered, not run yet</source>
            <translation>registrada, aún sin analizar</translation>
        </message>
        <message>
            <source>%1; registered again</source>
            <translation>%1; registrada de nuevo</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>comprobaciones no superadas: %1</translation>
        </message>
        <message>
            <source>repeat of run %1 (%2)</source>
            <translation>repetición de la tanda %1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WeighingForm</name>
        <message>
            <source>Weigh a fresh standard e&amp;xactly</source>
            <translation>Pesar con e&amp;xactitud un patrón nuevo</translation>
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
            <translation>Tomarlo como patrón de la tanda</translation>
        </message>
        <message>
            <source>Standard of</source>
            <translation>Patrón de</translation>
        </message>
        <message>
            <source>Strength wanted</source>
            <translation>Concentración deseada</translation>
        </message>
        <message>
            <source>Flask</source>
            <translation>Matraz</translation>
        </message>
        <message>
            <source>Molar mass of the substance</source>
            <translation>Masa molar de la sustancia</translation>
        </message>
        <message>
            <source>Analyte molecules per molecule</source>
            <translation>Moléculas de analito por molécula</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Pureza</translation>
        </message>
        <message>
            <source>Actually weighed</source>
            <translation>Realmente pesado</translation>
        </message>
        <message>
            <source>u of the mass</source>
            <translation>u de la masa</translation>
        </message>
        <message>
            <source>u of the purity</source>
            <translation>u de la pureza</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u del matraz y del enrase</translation>
        </message>
        <message>
            <source>Molar mass as weighed: a monohydrate with its water. u: standard uncertainty (k = 1).</source>
            <translation>Masa molar tal como se pesa: un monohidrato con su agua. u: incertidumbre típica (k = 1).</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Lleve la protección que piden sus normas locales de seguridad y la ficha del proveedor; estas van primero.</translation>
        </message>
        <message>
            <source>Enter the strength wanted, the flask, the substance's molar mass, and a purity of more than 0 and at most 100 %: then the mass to weigh stands here.</source>
            <translation>Indique la concentración deseada, el matraz, la masa molar de la sustancia y una pureza de más de 0 y como máximo 100 %: entonces figura aquí la masa que se ha de pesar.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>Pese %1 y enrase a %2.</translation>
        </message>
        <message>
            <source>Type the mass actually weighed: then the strength actually made stands here.</source>
            <translation>Escriba la masa realmente pesada: entonces figura aquí la concentración realmente preparada.</translation>
        </message>
        <message>
            <source>Made: %1 ± %2 (k = 2), a standard uncertainty of %3.</source>
            <translation>Preparado: %1 ± %2 (k = 2), una incertidumbre típica de %3.</translation>
        </message>
        <message>
            <source>Largest contribution to it: %1, %2 of the variance.</source>
            <translation>La mayor parte de ella procede de: %1, %2 de la varianza.</translation>
        </message>
        <message>
            <source>For this run only; prepare it under Standards to keep it for other runs.</source>
            <translation>Solo para esta tanda; prepárelo en Patrones para conservarlo para otras tandas.</translation>
        </message>
        <message>
            <source>weighed: %1 made up to %2</source>
            <translation>pesado: %1 enrasados a %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WindowActions</name>
        <message>
            <source>&amp;File</source>
            <translation>Arc&amp;hivo</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>&amp;Nueva tanda</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>&amp;Abrir archivo de tanda…</translation>
        </message>
        <message>
            <source>&amp;Save a copy of the run as a file…</source>
            <translation>&amp;Guardar una copia de la tanda como archivo…</translation>
        </message>
        <message>
            <source>&amp;Worksheet as PDF…</source>
            <translation>&amp;Hoja de trabajo en PDF…</translation>
        </message>
        <message>
            <source>&amp;Labels as PDF…</source>
            <translation>&amp;Etiquetas en PDF…</translation>
        </message>
        <message>
            <source>&amp;Report of results as PDF…</source>
            <translation>&amp;Informe de resultados en PDF…</translation>
        </message>
        <message>
            <source>R&amp;un record as PDF…</source>
            <translation>&amp;Registro de la tanda en PDF…</translation>
        </message>
        <message>
            <source>Results as &amp;CSV…</source>
            <translation>Resultados en &amp;CSV…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Salir</translation>
        </message>
        <message>
            <source>Mark what is next as &amp;done</source>
            <translation>Marcar lo siguiente como &amp;hecho</translation>
        </message>
        <message>
            <source>&amp;Take back the last mark</source>
            <translation>&amp;Deshacer la última marca</translation>
        </message>
        <message>
            <source>&amp;Paste readings…</source>
            <translation>&amp;Pegar lecturas…</translation>
        </message>
        <message>
            <source>Readings from a &amp;file…</source>
            <translation>Lecturas de un &amp;archivo…</translation>
        </message>
        <message>
            <source>&amp;Listen to the photometer…</source>
            <translation>&amp;Escuchar al fotómetro…</translation>
        </message>
        <message>
            <source>St&amp;op listening</source>
            <translation>De&amp;jar de escuchar</translation>
        </message>
        <message>
            <source>&amp;Sound, lead time and keying…</source>
            <translation>&amp;Sonido, antelación e introducción…</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ver</translation>
        </message>
        <message>
            <source>&amp;Go to what is next</source>
            <translation>Ir a lo &amp;siguiente</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>Pip&amp;etear</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>Lee&amp;r</translation>
        </message>
        <message>
            <source>Re&amp;view</source>
            <translation>Re&amp;visar</translation>
        </message>
        <message>
            <source>Ne&amp;xt rack</source>
            <translation>&amp;Gradilla siguiente</translation>
        </message>
        <message>
            <source>&amp;Previous rack</source>
            <translation>Grad&amp;illa anterior</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>A&amp;yuda</translation>
        </message>
        <message>
            <source>&amp;About Plateau</source>
            <translation>&amp;Acerca de Plateau</translation>
        </message>
        <message>
            <source>&amp;Keys…</source>
            <translation>&amp;Teclas…</translation>
        </message>
        <message>
            <source>&amp;Help for what is in front</source>
            <translation>Ayuda sobre lo que está a la &amp;vista</translation>
        </message>
        <message>
            <source>A &amp;first rack in ten minutes</source>
            <translation>Una primera &amp;gradilla en diez minutos</translation>
        </message>
        <message>
            <source>&amp;What to do about a check</source>
            <translation>&amp;Qué hacer con una comprobación</translation>
        </message>
        <message>
            <source>Another note&amp;book…</source>
            <translation>&amp;Otro cuaderno…</translation>
        </message>
        <message>
            <source>&amp;Bench</source>
            <translation>Mesa de traba&amp;jo</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Words</name>
        <message>
            <source>blank</source>
            <translation>blanco</translation>
        </message>
        <message>
            <source>sample blank of %1</source>
            <translation>blanco de muestra de %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>patrón %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>control %1</translation>
        </message>
        <message>
            <source>spiked sample %1</source>
            <translation>muestra fortificada %1</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>muestra %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message numerus="yes">
            <source>%n readings, last %1</source>
            <translation>
                <numerusform>%n lectura, última %1</numerusform>
                <numerusform>%n lecturas, última %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WorkingCopy</name>
        <message>
            <source>There is no place for a copy to work on in %1; nothing was made: see that the folder is there and has room.</source>
            <translation>No hay sitio para una copia de trabajo en %1; no se ha hecho nada: compruebe que la carpeta exista y tenga espacio.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Worksheet</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 en %2</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanco</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanco de muestra</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>patrón</translation>
        </message>
        <message>
            <source>control</source>
            <translation>control</translation>
        </message>
        <message>
            <source>spiked</source>
            <translation>fortificada</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>muestra</translation>
        </message>
        <message>
            <source>%1 → %2</source>
            <comment>millilitres taken, made up to</comment>
            <translation>%1 → %2</translation>
        </message>
        <message>
            <source>%1 at %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>version %1, %2, cuvette of %3</source>
            <translation>versión %1, %2, cubeta de %3</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes</source>
            <translation>
                <numerusform>%n tubo</numerusform>
                <numerusform>%n tubos</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1: start the next one every %2</source>
            <translation>%1: empezar el siguiente cada %2</translation>
        </message>
        <message>
            <source>date</source>
            <translation>fecha</translation>
        </message>
        <message>
            <source>started at</source>
            <translation>comenzada a las</translation>
        </message>
        <message>
            <source>by</source>
            <translation>por</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>fotómetro</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lote</translation>
        </message>
        <message>
            <source>use by %1</source>
            <comment>the last good day of a lot</comment>
            <translation>hasta %1</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>agitar</translation>
        </message>
        <message>
            <source>Plateau, run %1</source>
            <translation>Plateau, tanda %1</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>página %1 de %2</translation>
        </message>
        <message>
            <source>Worksheet: %1</source>
            <translation>Hoja de trabajo: %1</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tubo</translation>
        </message>
        <message>
            <source>contents, taken → made up to</source>
            <translation>contenido, tomado → enrasado a</translation>
        </message>
        <message>
            <source>reads</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>time</source>
            <translation>hora</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mezclar</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>esperar %1</translation>
        </message>
        <message>
            <source>Tubes that do not count</source>
            <translation>Tubos que no cuentan</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>tubo %1: %2</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Precauciones</translation>
        </message>
        <message>
            <source>Names in full</source>
            <translation>Nombres completos</translation>
        </message>
        <message>
            <source>notes</source>
            <translation>notas</translation>
        </message>
        <message>
            <source>Worksheet %1</source>
            <comment>a file name</comment>
            <translation>Hoja de trabajo %1</translation>
        </message>
        <message>
            <source>Dilute %1:</source>
            <comment>millilitres taken, made up to</comment>
            <translation>Diluir %1:</translation>
        </message>
        <message>
            <source>%1: %2, made %3, loses %4 per hour</source>
            <comment>a standard</comment>
            <translation>%1: %2, preparado el %3, pierde %4 por hora</translation>
        </message>
    </context>
</TS>
