<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
    <context>
        <name>plateau::app::FirstRun</name>
        <message>
            <source>Another notebook</source>
            <translation>Un autre cahier</translation>
        </message>
        <message>
            <source>It could not be kept that the program is to start with %1; the next start opens the same notebook as before.</source>
            <translation>Le programme n’a pas pu retenir qu’il doit démarrer avec %1 ; le prochain démarrage ouvre le même cahier qu’auparavant.</translation>
        </message>
        <message>
            <source>No other window could be opened. Close this one and open the notebook by itself: %1</source>
            <translation>Aucune autre fenêtre n’a pu être ouverte. Fermez celle-ci, puis ouvrez ce cahier : %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Main</name>
        <message>
            <source>plateau: the window needs a display, and there is none to be reached; start it from a desktop session, or use a command (plateau --help lists them)</source>
            <translation>plateau : la fenêtre a besoin d’un affichage, et aucun n’est accessible ; lancez-la depuis une session de bureau, ou employez une commande (plateau --help les énumère)</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::SampleNotebook</name>
        <message>
            <source>The sample data of this installation cannot be used (%1); nothing was made. Reinstall the program.</source>
            <translation>Les données d’exemple de cette installation sont inutilisables (%1) ; rien n’a été créé. Réinstallez le programme.</translation>
        </message>
        <message>
            <source>the limits of the house</source>
            <translation>les limites de la maison</translation>
        </message>
        <message>
            <source>unknown account</source>
            <translation>compte inconnu</translation>
        </message>
    </context>
    <context>
        <name>plateau::app::Window</name>
        <message>
            <source>Notebook</source>
            <translation>Cahier</translation>
        </message>
        <message>
            <source>Months of an invented laboratory are being made …</source>
            <translation>Création de plusieurs mois d’un laboratoire inventé …</translation>
        </message>
        <message>
            <source>sample notebook, a copy that is thrown away; everybody in it signs with the passphrase %1</source>
            <translation>cahier d’exemple, copie jetée ensuite ; tous y signent avec la phrase de passe %1</translation>
        </message>
        <message>
            <source>--notebook needs the name of a file</source>
            <translation>--notebook demande le nom d’un fichier</translation>
        </message>
        <message>
            <source>--demo and --notebook exclude each other</source>
            <translation>--demo et --notebook s’excluent</translation>
        </message>
        <message>
            <source>%1 is neither a command nor an option nor a file; plateau --help lists them</source>
            <translation>%1 n’est ni une commande, ni une option, ni un fichier ; plateau --help énumère les commandes et les options</translation>
        </message>
        <message>
            <source>the window takes one file at a start, not %1 as well</source>
            <translation>la fenêtre prend un seul fichier au démarrage, pas aussi %1</translation>
        </message>
        <message>
            <source>%1 is a notebook, and another one is named beside it</source>
            <translation>%1 est un cahier, et un autre est nommé à côté</translation>
        </message>
        <message>
            <source>--person needs a name</source>
            <translation>--person demande un nom</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Background</name>
        <message>
            <source>the measurand</source>
            <translation>le mesurande</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>l’id de la méthode</translation>
        </message>
        <message>
            <source>must be a measurand of this method, and %1 is none; name the other method it belongs to, or one of this method's</source>
            <translation>doit être un mesurande de cette méthode, et %1 n’en est pas un ; nommez l’autre méthode à laquelle il appartient, ou un mesurande de celle-ci</translation>
        </message>
        <message>
            <source>must be a number other than 0, not %1; leave out a term that does not count</source>
            <translation>doit être un nombre autre que 0, pas %1 ; omettez un terme qui ne compte pas</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>l’id</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>le nom</translation>
        </message>
        <message>
            <source>the id %1 is taken by a measurand or an earlier derived result; give each its own</source>
            <translation>l’id %1 est pris par un mesurande ou un résultat dérivé précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>a derived result needs at least one term</source>
            <translation>un résultat dérivé demande au moins un terme</translation>
        </message>
        <message>
            <source>must be a fraction per hour from 0 to below 1, not %1</source>
            <translation>doit être une fraction par heure de 0 à moins de 1, pas %1</translation>
        </message>
        <message>
            <source>%1 is blank; write it out or leave it out</source>
            <translation>%1 est vide ; écrivez-le ou omettez-le</translation>
        </message>
        <message>
            <source>the preparation</source>
            <translation>la préparation</translation>
        </message>
        <message>
            <source>%1 has its preparation already; say all of it in one text</source>
            <translation>%1 a déjà sa préparation ; dites tout en un seul texte</translation>
        </message>
        <message>
            <source>the reaction</source>
            <translation>la réaction</translation>
        </message>
        <message>
            <source>the interference</source>
            <translation>l’interférence</translation>
        </message>
        <message>
            <source>the caution</source>
            <translation>la précaution</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Label</name>
        <message>
            <source>it holds the character %1, which reorders the line; write it without</source>
            <translation>il contient le signe %1, qui change l’ordre de la ligne ; écrivez-le sans</translation>
        </message>
        <message>
            <source>it holds the control character %1; write it without</source>
            <translation>il contient le caractère de commande %1 ; écrivez-le sans</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>il compte %1 caractères ; %2 au plus sont permis</translation>
        </message>
        <message>
            <source>it is blank; give it at least one letter or digit</source>
            <translation>il est vide ; donnez au moins une lettre ou un chiffre</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Limits</name>
        <message>
            <source>must be greater than %1 and at most %2, not %3</source>
            <translation>doit être supérieur à %1 et au plus égal à %2, pas %3</translation>
        </message>
        <message>
            <source>must lie between %1 and %2, not %3</source>
            <translation>doit être compris entre %1 et %2, pas %3</translation>
        </message>
        <message>
            <source>the smaller number comes first: %1 is larger than %2</source>
            <translation>le plus petit nombre vient en premier : %1 est plus grand que %2</translation>
        </message>
        <message>
            <source>%1 cannot be used: %2</source>
            <translation>%1 ne peut pas être employé : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Plausibility</name>
        <message>
            <source>takes %1 with no wait since the last addition; say how long to wait, even where it is short</source>
            <translation>fait la lecture %1 sans attente depuis le dernier ajout ; indiquez combien attendre, même si c’est court</translation>
        </message>
        <message>
            <source>starts the reaction before anything is read; read the tube first</source>
            <translation>démarre la réaction avant toute lecture ; lisez d’abord le tube</translation>
        </message>
        <message>
            <source>starts the reaction after the last reading; read the tube afterwards</source>
            <translation>démarre la réaction après la dernière lecture ; lisez le tube ensuite</translation>
        </message>
        <message>
            <source>nothing is read after this step; add a reading or leave the step out</source>
            <translation>rien n’est lu après cette étape ; ajoutez une lecture ou omettez l’étape</translation>
        </message>
        <message>
            <source>the reading %1 is taken before the sample is in the tube; name one taken afterwards</source>
            <translation>la lecture %1 est faite avant que l’échantillon soit dans le tube ; nommez-en une faite après</translation>
        </message>
        <message>
            <source>nothing is added between %1 and %2, so nothing starts between them</source>
            <translation>rien n’est ajouté entre %1 et %2, donc rien ne démarre entre les deux</translation>
        </message>
        <message>
            <source>%1 is never added, so nothing makes up for another sample volume: the tube's volume changes with it</source>
            <translation>%1 n’est jamais ajouté, donc rien ne compense un autre volume d’échantillon : le volume du tube change avec lui</translation>
        </message>
        <message>
            <source>%1 mL of sample is more than %2 mL of %3 make up for: the tube's volume changes above %4 mL</source>
            <translation>%1 mL d’échantillon, c’est plus que ce que %2 mL de %3 compensent : le volume du tube change au-dessus de %4 mL</translation>
        </message>
        <message>
            <source>a signal of %1 is more than the photometer may show (%2)</source>
            <translation>un signal de %1 est plus que ce que le photomètre peut indiquer (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Procedure</name>
        <message>
            <source>adds %1, which is none of the components</source>
            <translation>ajoute %1, qui n’est aucun des constituants</translation>
        </message>
        <message>
            <source>adds %1 a second time; list a second portion as a component of its own</source>
            <translation>ajoute %1 une seconde fois ; faites d’une seconde portion un constituant à part</translation>
        </message>
        <message>
            <source>the reading's name</source>
            <translation>le nom de la lecture</translation>
        </message>
        <message>
            <source>reads %1 before anything is in the tube; add something first</source>
            <translation>fait la lecture %1 avant que le tube contienne quelque chose ; ajoutez d’abord quelque chose</translation>
        </message>
        <message>
            <source>takes the reading %1 a second time; give each reading its own name</source>
            <translation>fait la lecture %1 une seconde fois ; donnez à chaque lecture son nom</translation>
        </message>
        <message>
            <source>no component plays this part; say which one does</source>
            <translation>aucun constituant ne tient ce rôle ; indiquez lequel le tient</translation>
        </message>
        <message>
            <source>must be the id of a component, and %1 is none</source>
            <translation>doit être l’id d’un constituant, et %1 n’en est pas un</translation>
        </message>
        <message>
            <source>the sample is never added; give it a step</source>
            <translation>l’échantillon n’est jamais ajouté ; donnez-lui une étape</translation>
        </message>
        <message>
            <source>the starter is never added; give it a step</source>
            <translation>le réactif de démarrage n’est jamais ajouté ; donnez-lui une étape</translation>
        </message>
        <message>
            <source>the sample cannot be its own diluent</source>
            <translation>l’échantillon ne peut pas être son propre diluant</translation>
        </message>
        <message>
            <source>the starter must be a component of its own, neither sample nor diluent</source>
            <translation>le réactif de démarrage doit être un constituant à part, ni échantillon ni diluant</translation>
        </message>
        <message>
            <source>%1 is never added</source>
            <translation>%1 n’est jamais ajouté</translation>
        </message>
        <message>
            <source>the reading %1 is never taken; name one of the steps' readings</source>
            <translation>la lecture %1 n’est jamais faite ; nommez une des lectures des étapes</translation>
        </message>
        <message>
            <source>must be read after %1 (%2), and %3 is not</source>
            <translation>doit être lu après %1 (%2), et %3 ne l’est pas</translation>
        </message>
        <message>
            <source>a method needs at least one step that reads</source>
            <translation>une méthode demande au moins une étape de lecture</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>le tube contient %1 mL à la fin ; %2 mL au plus sont permis</translation>
        </message>
        <message>
            <source>a straight line needs at least 2 readings, not %1</source>
            <translation>une droite demande au moins 2 lectures, pas %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Soundness</name>
        <message>
            <source>the id</source>
            <translation>l’id</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>le nom</translation>
        </message>
        <message>
            <source>versions count from 1, not %1</source>
            <translation>les versions se comptent à partir de 1, pas %1</translation>
        </message>
        <message>
            <source>says nothing: name the document and its section, or say that there is none</source>
            <translation>ne dit rien : nommez le document et son paragraphe, ou dites qu’il n’y en a pas</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la source</translation>
        </message>
        <message>
            <source>the principle</source>
            <translation>le principe</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) is very small; is it meant in L/(mmol cm), a thousand times as much?</source>
            <translation>%1 L/(mol cm) est très petit ; s’agit-il de L/(mmol cm), mille fois plus ?</translation>
        </message>
        <message>
            <source>the chromophore's name</source>
            <translation>le nom du chromophore</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; add it to the table of absorptivities (only NADH and NADPH at 340 nm need none)</source>
            <translation>la méthode n’a pas d’absorptivité à %1 nm ; ajoutez-la au tableau des absorptivités (seuls NADH et NADPH à 340 nm n’en ont pas besoin)</translation>
        </message>
        <message>
            <source>must include the usual volume of %1 mL</source>
            <translation>doit comprendre le volume usuel de %1 mL</translation>
        </message>
        <message>
            <source>a method needs at least one component</source>
            <translation>une méthode demande au moins un constituant</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier component; give each its own</source>
            <translation>l’id %1 est pris par un constituant précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>a method needs at least one measurand</source>
            <translation>une méthode demande au moins un mesurande</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier measurand; give each its own</source>
            <translation>l’id %1 est pris par un mesurande précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>must be smaller than maxSignal: %1 is not smaller than %2</source>
            <translation>doit être inférieur à maxSignal : %1 n’est pas inférieur à %2</translation>
        </message>
        <message>
            <source>must be smaller than maxAbsorbance: %1 is not smaller than %2</source>
            <translation>doit être inférieur à maxAbsorbance : %1 n’est pas inférieur à %2</translation>
        </message>
        <message>
            <source>no duplicates can meet a limit of 0; give a constant part, a proportional part, or leave repeatability out</source>
            <translation>aucun double ne respecte une limite de 0 ; donnez une partie constante, une partie proportionnelle, ou omettez la répétabilité</translation>
        </message>
    </context>
    <context>
        <name>plateau::assay::Template</name>
        <message>
            <source>still begins with "%1"; begin it with where the volumes used here come from (document, section, date). Until then its results are marked as those of a template</source>
            <translation>commence encore par « %1 » ; commencez par l’origine des volumes employés ici (document, paragraphe, date). Jusque-là, ses résultats sont marqués comme ceux d’un modèle</translation>
        </message>
        <message>
            <source>still says "%1"; take that out once the volumes are yours</source>
            <translation>porte encore « %1 » ; enlevez cette mention une fois que les volumes sont les vôtres</translation>
        </message>
    </context>
    <context>
        <name>plateau::charts</name>
        <message>
            <source>recovery of standards</source>
            <translation>taux de récupération des étalons</translation>
        </message>
        <message>
            <source>found strength of standards</source>
            <translation>titre trouvé des étalons</translation>
        </message>
        <message>
            <source>control material</source>
            <translation>matériau de contrôle</translation>
        </message>
        <message>
            <source>signal of the blanks</source>
            <translation>signal des blancs</translation>
        </message>
        <message>
            <source>range of duplicates</source>
            <translation>étendue des doubles</translation>
        </message>
        <message>
            <source>range of duplicates in % of their mean</source>
            <translation>étendue des doubles en % de leur moyenne</translation>
        </message>
        <message>
            <source>results of a sample</source>
            <translation>résultats d’un échantillon</translation>
        </message>
        <message>
            <source>results of a product</source>
            <translation>résultats d’un produit</translation>
        </message>
        <message>
            <source>individuals with moving range</source>
            <translation>valeurs individuelles avec étendue mobile</translation>
        </message>
        <message>
            <source>means with range</source>
            <translation>moyennes avec étendue</translation>
        </message>
        <message>
            <source>ranges</source>
            <translation>étendues</translation>
        </message>
        <message>
            <source>weighted moving average (EWMA)</source>
            <translation>moyenne mobile à pondération exponentielle (EWMA)</translation>
        </message>
        <message>
            <source>cumulative sums (CUSUM)</source>
            <translation>sommes cumulées (CUSUM)</translation>
        </message>
        <message>
            <source>results with their limits</source>
            <translation>résultats avec leurs limites</translation>
        </message>
        <message>
            <source>one beyond 3 s</source>
            <translation>un point au-delà de 3 s</translation>
        </message>
        <message>
            <source>two of three beyond 2 s on one side</source>
            <translation>deux points sur trois au-delà de 2 s du même côté</translation>
        </message>
        <message>
            <source>four of five beyond 1 s on one side</source>
            <translation>quatre points sur cinq au-delà de 1 s du même côté</translation>
        </message>
        <message>
            <source>nine in a row on one side</source>
            <translation>neuf points de suite du même côté</translation>
        </message>
        <message>
            <source>six in a row rising or falling</source>
            <translation>six points de suite en hausse ou en baisse</translation>
        </message>
        <message>
            <source>fourteen in a row alternating up and down</source>
            <translation>quatorze points de suite montant et descendant tour à tour</translation>
        </message>
        <message>
            <source>fifteen in a row within 1 s</source>
            <translation>quinze points de suite à moins de 1 s</translation>
        </message>
        <message>
            <source>eight in a row beyond 1 s, on both sides</source>
            <translation>huit points de suite au-delà de 1 s, des deux côtés</translation>
        </message>
        <message>
            <source>eight in a row on one side</source>
            <translation>huit points de suite du même côté</translation>
        </message>
        <message>
            <source>seven in a row on one side</source>
            <translation>sept points de suite du même côté</translation>
        </message>
        <message>
            <source>ten in a row on one side</source>
            <translation>dix points de suite du même côté</translation>
        </message>
        <message>
            <source>one beyond 2 s (a warning)</source>
            <translation>un point au-delà de 2 s (avertissement)</translation>
        </message>
        <message>
            <source>two in a row beyond 2 s on one side</source>
            <translation>deux points de suite au-delà de 2 s du même côté</translation>
        </message>
        <message>
            <source>two in a row, beyond 2 s on opposite sides</source>
            <translation>deux points de suite, au-delà de 2 s de côtés opposés</translation>
        </message>
        <message>
            <source>four in a row beyond 1 s on one side</source>
            <translation>quatre points de suite au-delà de 1 s du même côté</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valeur</translation>
        </message>
        <message>
            <source>moving range</source>
            <translation>étendue mobile</translation>
        </message>
        <message>
            <source>mean of %1</source>
            <translation>moyenne de %1</translation>
        </message>
        <message>
            <source>range of %1</source>
            <translation>étendue de %1</translation>
        </message>
        <message>
            <source>range of two</source>
            <translation>étendue de deux</translation>
        </message>
        <message>
            <source>weighted average</source>
            <translation>moyenne pondérée</translation>
        </message>
        <message>
            <source>cumulative sum</source>
            <translation>somme cumulée</translation>
        </message>
        <message>
            <source>result</source>
            <translation>résultat</translation>
        </message>
        <message>
            <source>run %1 (%2, %3)</source>
            <translation>série %1 (%2, %3)</translation>
        </message>
        <message>
            <source>There are too few values for limits so far. Accept more runs, or enter limits that the laboratory has fixed.</source>
            <translation>Il y a encore trop peu de valeurs pour des limites. Acceptez d’autres séries, ou saisissez des limites que le laboratoire a fixées.</translation>
        </message>
        <message>
            <source>centre %1, standard deviation of a single value %2</source>
            <translation>ligne centrale %1, écart-type d’une valeur individuelle %2</translation>
        </message>
        <message>
            <source>Limits fixed by the laboratory: %1 (%2, %3).</source>
            <translation>Limites fixées par le laboratoire : %1 (%2, %3).</translation>
        </message>
        <message>
            <source>Limits from %1 values, run %2 to run %3: %4.</source>
            <translation>Limites tirées de %1 valeurs, de la série %2 à la série %3 : %4.</translation>
        </message>
        <message>
            <source>Look for a pipetting error, a bubble or a mixed-up tube, and measure again before results of that run are reported.</source>
            <translation>Recherchez une erreur de pipetage, une bulle ou une inversion de tubes, et mesurez à nouveau avant de rapporter des résultats de cette série.</translation>
        </message>
        <message>
            <source>Report no results of that run before the cause is known: look at the standard and its age, the dilution, the lots and the photometer, then measure again.</source>
            <translation>Ne rapportez aucun résultat de cette série avant d’en connaître la cause : examinez l’étalon et son âge, la dilution, les lots et le photomètre, puis mesurez à nouveau.</translation>
        </message>
        <message>
            <source>A single one is to be expected now and then; watch the next run.</source>
            <translation>Un point isolé est attendu de temps à autre ; surveillez la série suivante.</translation>
        </message>
        <message>
            <source>The scatter has grown: look at pipettes, mixing and temperature.</source>
            <translation>La dispersion a augmenté : examinez les pipettes, le mélange et la température.</translation>
        </message>
        <message>
            <source>Something drifts: look at a standard or reagent that ages, and at the lamp.</source>
            <translation>Quelque chose dérive : examinez si un étalon ou un réactif vieillit, ainsi que la lampe.</translation>
        </message>
        <message>
            <source>Two conditions alternate: compare people, pipettes and racks.</source>
            <translation>Deux situations alternent : comparez personnes, pipettes et portoirs.</translation>
        </message>
        <message>
            <source>The scatter is smaller than the limits say: set them again from these runs, or see whether values of two kinds are mixed in one chart.</source>
            <translation>La dispersion est plus faible que ne le disent les limites : refixez-les à partir de ces séries, ou voyez si des valeurs de deux sortes figurent sur la même carte.</translation>
        </message>
        <message>
            <source>Values of two kinds are mixed in one chart: separate them by lot, person or standard.</source>
            <translation>Des valeurs de deux sortes figurent sur la même carte : séparez-les par lot, personne ou étalon.</translation>
        </message>
        <message>
            <source>Something has shifted: compare lots, standard and photometer before and after the first of them.</source>
            <translation>Quelque chose s’est décalé : comparez les lots, l’étalon et le photomètre avant et après le premier de ces points.</translation>
        </message>
        <message>
            <source>above the centre</source>
            <translation>au-dessus de la ligne centrale</translation>
        </message>
        <message>
            <source>below the centre</source>
            <translation>au-dessous de la ligne centrale</translation>
        </message>
        <message>
            <source>weighted average above its upper limit</source>
            <translation>moyenne pondérée au-dessus de sa limite supérieure</translation>
        </message>
        <message>
            <source>weighted average below its lower limit</source>
            <translation>moyenne pondérée au-dessous de sa limite inférieure</translation>
        </message>
        <message>
            <source>upper cumulative sum beyond its decision limit</source>
            <translation>somme cumulée supérieure au-delà de sa limite de décision</translation>
        </message>
        <message>
            <source>lower cumulative sum beyond its decision limit</source>
            <translation>somme cumulée inférieure au-delà de sa limite de décision</translation>
        </message>
        <message>
            <source>above a limit of the product</source>
            <translation>au-dessus d’une limite du produit</translation>
        </message>
        <message>
            <source>below a limit of the product</source>
            <translation>au-dessous d’une limite du produit</translation>
        </message>
        <message>
            <source>six in a row rising</source>
            <translation>six points de suite en hausse</translation>
        </message>
        <message>
            <source>six in a row falling</source>
            <translation>six points de suite en baisse</translation>
        </message>
        <message>
            <source>one beyond 2 s, %1</source>
            <translation>un point au-delà de 2 s, %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>, begun with run %1</source>
            <translation>, à partir de la série %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>sums %1 above and %2 below</source>
            <translation>sommes : %1 au-dessus et %2 au-dessous</translation>
        </message>
        <message>
            <source>%1 s below the centre</source>
            <translation>%1 s au-dessous de la ligne centrale</translation>
        </message>
        <message>
            <source>%1 s above the centre</source>
            <translation>%1 s au-dessus de la ligne centrale</translation>
        </message>
        <message>
            <source>The record of the run says what was decided at its uncertainty.</source>
            <translation>Le dossier de la série dit ce qui a été décidé avec son incertitude.</translation>
        </message>
        <message>
            <source>Something has shifted a little and stays so: compare lots, standard and photometer before and after.</source>
            <translation>Quelque chose s’est décalé un peu et le reste : comparez les lots, l’étalon et le photomètre avant et après.</translation>
        </message>
        <message>
            <source> (%1)</source>
            <translation> (%1)</translation>
        </message>
        <message>
            <source>%1%2: %3%4. %5</source>
            <translation>%1%2 : %3%4. %5</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejetée</translation>
        </message>
        <message>
            <source>left out by %1: %2</source>
            <translation>écartée par %1 : %2</translation>
        </message>
        <message>
            <source>%1: lot %2 after %3</source>
            <translation>%1 : lot %2 après %3</translation>
        </message>
        <message>
            <source>%1 after %2</source>
            <translation>%1 après %2</translation>
        </message>
        <message>
            <source>The centre has to be a number.</source>
            <translation>La ligne centrale doit être un nombre.</translation>
        </message>
        <message>
            <source>The standard deviation has to be greater than 0.</source>
            <translation>L’écart-type doit être supérieur à 0.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a source: say where centre and standard deviation come from.</source>
            <translation>Des limites fixées demandent une source : indiquez d’où viennent la ligne centrale et l’écart-type.</translation>
        </message>
        <message>
            <source>Limits that are fixed need a date: say as of when they hold.</source>
            <translation>Des limites fixées demandent une date : indiquez à partir de quand elles valent.</translation>
        </message>
        <message>
            <source>A subgroup has 2 to %1 values.</source>
            <translation>Un sous-groupe compte 2 à %1 valeurs.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: it takes three recoveries or more whose standard's age is known.</source>
            <translation>La perte par heure ne peut pas encore être établie : il faut trois taux de récupération ou plus dont l’âge de l’étalon est connu.</translation>
        </message>
        <message>
            <source>The loss per hour cannot be told yet: all these standards were used at one age.</source>
            <translation>La perte par heure ne peut pas encore être établie : tous ces étalons ont été employés au même âge.</translation>
        </message>
        <message>
            <source>which agrees with the %1 stated</source>
            <translation>ce qui concorde avec la perte indiquée de %1</translation>
        </message>
        <message>
            <source>so the standard loses its strength faster than the %1 stated</source>
            <translation>l’étalon perd donc son titre plus vite que la perte indiquée de %1</translation>
        </message>
        <message>
            <source>so the standard loses its strength more slowly than the %1 stated</source>
            <translation>l’étalon perd donc son titre plus lentement que la perte indiquée de %1</translation>
        </message>
        <message>
            <source>and no loss is stated to hold it against</source>
            <translation>et aucune perte n’est indiquée à quoi la comparer</translation>
        </message>
        <message>
            <source>%1 recoveries at ages of %2 to %3 show a loss of %4 an hour (95 % interval %5 to %6), %7.</source>
            <translation>%1 taux de récupération à des âges de %2 à %3 montrent une perte de %4 par heure (intervalle à 95 % : %5 à %6), %7.</translation>
        </message>
        <message>
            <source>The weight of the newest value must be above 0 and at most 1.</source>
            <translation>Le poids de la valeur la plus récente doit être supérieur à 0 et au plus égal à 1.</translation>
        </message>
        <message>
            <source>The width of the limits must be above 0 s and at most 10 s.</source>
            <translation>La largeur des limites doit être supérieure à 0 s et au plus égale à 10 s.</translation>
        </message>
        <message>
            <source>The reference value must lie between 0 s and 10 s.</source>
            <translation>La valeur de référence doit être comprise entre 0 s et 10 s.</translation>
        </message>
        <message>
            <source>The decision limit must be above 0 s and at most 100 s.</source>
            <translation>La limite de décision doit être supérieure à 0 s et au plus égale à 100 s.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>which is too wide to tell whether the %1 stated are right: it takes standards of more different ages</source>
            <translation>ce qui est trop large pour dire si les %1 indiqués sont justes : il faut des étalons d’âges plus différents</translation>
        </message>
        <message>
            <source>which agrees with a standard that keeps its strength</source>
            <translation>ce qui s’accorde avec un étalon qui garde son titre</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on. Under Limits and rules, raise the number of values to %1.</source>
            <translation>Elles sont provisoires : ce n’est qu’à partir de %1 valeurs qu’il est dit si rien n’est hors maîtrise. Sous Limites et règles, portez le nombre de valeurs à %1.</translation>
        </message>
        <message>
            <source>They are provisional: whether nothing is out of control is said from %1 values on.</source>
            <translation>Elles sont provisoires : ce n’est qu’à partir de %1 valeurs qu’il est dit si rien n’est hors maîtrise.</translation>
        </message>
        <message>
            <source>Values of several materials stand in this chart, so it has no limits: a control chart is of one material. Choose one above.</source>
            <translation>Cette carte réunit des valeurs de plusieurs matériaux, elle n’a donc pas de limites : une carte de contrôle porte sur un seul matériau. Choisissez-en un ci-dessus.</translation>
        </message>
        <message>
            <source>Limits need %1 values.</source>
            <translation>Des limites demandent %1 valeurs.</translation>
        </message>
        <message>
            <source>The ranges are of many samples: the limits hold where these have similar amounts.</source>
            <translation>Les étendues portent sur de nombreux échantillons : les limites valent là où leurs teneurs sont voisines.</translation>
        </message>
        <message>
            <source>Limits from earlier runs need %1 to %2 values.</source>
            <translation>Des limites tirées de séries antérieures demandent %1 à %2 valeurs.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Item</name>
        <message>
            <source>photometer</source>
            <translation>photomètre</translation>
        </message>
        <message>
            <source>piston pipette</source>
            <translation>pipette à piston</translation>
        </message>
        <message>
            <source>bulb pipette</source>
            <translation>pipette jaugée</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>fiole</translation>
        </message>
        <message>
            <source>balance</source>
            <translation>balance</translation>
        </message>
        <message>
            <source>thermometer</source>
            <translation>thermomètre</translation>
        </message>
        <message>
            <source>set of cuvettes</source>
            <translation>jeu de cuves</translation>
        </message>
        <message>
            <source>wavelength scale</source>
            <translation>échelle des longueurs d’onde</translation>
        </message>
        <message>
            <source>absorbance scale</source>
            <translation>échelle des absorbances</translation>
        </message>
        <message>
            <source>zero and noise</source>
            <translation>zéro et bruit</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volume</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>pesée</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>température</translation>
        </message>
        <message>
            <source>match of the cuvettes</source>
            <translation>appariement des cuves</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>the number</source>
            <translation>le numéro</translation>
        </message>
        <message>
            <source>names nothing to be checked; give at least one number of days</source>
            <translation>n’indique rien qui soit vérifié ; donnez au moins un nombre de jours</translation>
        </message>
        <message>
            <source>is not checked on a %1; leave it out</source>
            <translation>ne se vérifie pas pour cet équipement (%1) ; omettez-le</translation>
        </message>
        <message>
            <source>is every %1 days; it must be every 1 to %2 days</source>
            <translation>indique tous les %1 jours ; ce doit être tous les 1 à %2 jours</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Outcome</name>
        <message>
            <source>keyed with the check</source>
            <translation>saisi avec la vérification</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>usage courant, sans source</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>à %1</translation>
        </message>
        <message>
            <source>European Pharmacopoeia 2.2.25</source>
            <translation>Pharmacopée européenne 2.2.25</translation>
        </message>
        <message>
            <source>A(1 %, 1 cm) at %1</source>
            <translation>A(1 %, 1 cm) à %1</translation>
        </message>
        <message>
            <source>pharmacopoeia, control of absorbances</source>
            <translation>pharmacopée, contrôle des absorbances</translation>
        </message>
        <message>
            <source>standard deviation of the zero</source>
            <translation>écart-type du zéro</translation>
        </message>
        <message>
            <source>mean of the zero</source>
            <translation>moyenne du zéro</translation>
        </message>
        <message>
            <source>standard deviation of the coloured cuvette</source>
            <translation>écart-type de la cuve colorée</translation>
        </message>
        <message>
            <source>standard deviation of one load</source>
            <translation>écart-type d’une même charge</translation>
        </message>
        <message>
            <source>deviation from the weight of %1</source>
            <translation>écart à la masse de %1</translation>
        </message>
        <message>
            <source>largest minus smallest of %1 cuvettes</source>
            <translation>plus grande moins plus petite de %1 cuves</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>au plus %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>au moins %1</translation>
        </message>
        <message>
            <source>systematic error at %1</source>
            <translation>erreur systématique à %1</translation>
        </message>
        <message>
            <source>random error at %1</source>
            <translation>erreur aléatoire à %1</translation>
        </message>
        <message>
            <source>class A, ISO 1042:1998</source>
            <translation>classe A, ISO 1042:1998</translation>
        </message>
        <message>
            <source>class A, ISO 648:2008</source>
            <translation>classe A, ISO 648:2008</translation>
        </message>
        <message>
            <source>mean minus the nominal volume, at 20 °C</source>
            <translation>moyenne moins volume nominal, à 20 °C</translation>
        </message>
        <message>
            <source>standard deviation of the fillings</source>
            <translation>écart-type des remplissages</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Protocol</name>
        <message>
            <source>is missing; key a number</source>
            <translation>manque ; saisissez un nombre</translation>
        </message>
        <message>
            <source>is not a number of this check</source>
            <translation>n’est pas un nombre de cette vérification</translation>
        </message>
        <message>
            <source>are not the rows of this check</source>
            <translation>ne sont pas les lignes de cette vérification</translation>
        </message>
        <message>
            <source>is given and cannot be another</source>
            <translation>est fixé et ne peut pas être autre</translation>
        </message>
        <message>
            <source>hold no weighing of the largest volume; ten are needed</source>
            <translation>ne contiennent aucune pesée du plus grand volume ; il en faut dix</translation>
        </message>
        <message>
            <source>hold %1 of %2 weighings of %3 µL; key the others, or leave this volume out</source>
            <translation>contiennent %1 pesées sur %2 pour %3 µL ; saisissez les autres ou omettez ce volume</translation>
        </message>
        <message>
            <source>is missing, though that solution was read; key it</source>
            <translation>manque, alors que cette solution a été lue ; saisissez-le</translation>
        </message>
        <message>
            <source>hold no absorbance; key at least %1 (found: %2)</source>
            <translation>ne contiennent aucune absorbance ; saisissez-en au moins %1 (trouvé : %2)</translation>
        </message>
        <message>
            <source>is missing; key both numbers of the line, or neither</source>
            <translation>manque ; saisissez les deux nombres de la ligne, ou aucun</translation>
        </message>
        <message>
            <source>need at least %1 weighings; there are %2</source>
            <translation>demandent au moins %1 pesées ; il y en a %2</translation>
        </message>
        <message>
            <source>hold no wavelength found; key at least %1 (found: %2)</source>
            <translation>ne contiennent aucune longueur d’onde trouvée ; saisissez-en au moins %1 (trouvé : %2)</translation>
        </message>
        <message>
            <source>need at least %1 readings of the zero; there are %2</source>
            <translation>demandent au moins %1 lectures du zéro ; il y en a %2</translation>
        </message>
        <message>
            <source>need at least %1 readings of the coloured cuvette, or none; there are %2</source>
            <translation>demandent au moins %1 lectures de la cuve colorée, ou aucune ; il y en a %2</translation>
        </message>
        <message>
            <source>need at least %1 weighings of the one load; there are %2</source>
            <translation>demandent au moins %1 pesées de la même charge ; il y en a %2</translation>
        </message>
        <message>
            <source>need at least %1 weight with what was shown; there are %2</source>
            <translation>demandent au moins %1 masse étalon avec ce qui a été affiché ; il y en a %2</translation>
        </message>
        <message>
            <source>need at least %1 temperature with what was shown; there are %2</source>
            <translation>demandent au moins %1 température avec ce qui a été affiché ; il y en a %2</translation>
        </message>
        <message>
            <source>need at least %1 cuvettes; there are %2</source>
            <translation>demandent au moins %1 cuves ; il y en a %2</translation>
        </message>
        <message>
            <source>Common practice, no source.</source>
            <translation>Usage courant, sans source.</translation>
        </message>
        <message>
            <source>Water at</source>
            <translation>Eau à</translation>
        </message>
        <message>
            <source>Of the water, mean of the series.</source>
            <translation>De l’eau, moyenne de la suite.</translation>
        </message>
        <message>
            <source>Air pressure</source>
            <translation>Pression de l’air</translation>
        </message>
        <message>
            <source>As it is in the room, not reduced to sea level. 1 kPa is 10 mbar.</source>
            <translation>Telle qu’elle est dans la pièce, non ramenée au niveau de la mer. 1 kPa vaut 10 mbar.</translation>
        </message>
        <message>
            <source>Humidity of the air</source>
            <translation>Humidité de l’air</translation>
        </message>
        <message>
            <source>Its effect is small; 50 % where nobody measured it.</source>
            <translation>Son effet est faible ; 50 % si personne ne l’a mesurée.</translation>
        </message>
        <message>
            <source>Water, balance and pipette stand in the room for two hours. Ten deliveries of each volume into the closed vessel, a new tip for each volume, each mass noted in mg.</source>
            <translation>L’eau, la balance et la pipette restent deux heures dans la pièce. Dix distributions de chaque volume dans le récipient fermé, un cône neuf pour chaque volume, chaque masse notée en mg.</translation>
        </message>
        <message>
            <source>Evaporation per delivery</source>
            <translation>Évaporation par distribution</translation>
        </message>
        <message>
            <source>Mean loss of one cycle without a delivery; it is added to each mass.</source>
            <translation>Perte moyenne d’un cycle sans distribution ; elle est ajoutée à chaque masse.</translation>
        </message>
        <message>
            <source>Suggested: ISO 8655-2:2002 for %1, type A, taken from the data of a university's software package and not from the standard. Its edition of 2022 has other limits: enter those that your laboratory works to.</source>
            <translation>Proposé : ISO 8655-2:2002 pour %1, type A, tiré des données d’un progiciel universitaire et non de la norme. Son édition de 2022 a d’autres limites : saisissez celles que votre laboratoire applique.</translation>
        </message>
        <message>
            <source>Enter what your laboratory works to, and say where it comes from.</source>
            <translation>Saisissez ce que votre laboratoire applique, et indiquez d’où cela vient.</translation>
        </message>
        <message>
            <source>Systematic error at most</source>
            <translation>Erreur systématique au plus</translation>
        </message>
        <message>
            <source>Random error at most</source>
            <translation>Erreur aléatoire au plus</translation>
        </message>
        <message>
            <source>Volume set</source>
            <translation>Volume réglé</translation>
        </message>
        <message>
            <source>Mass</source>
            <translation>Masse</translation>
        </message>
        <message>
            <source>The dry flask is weighed empty and filled to the mark with water; the mass of the water is noted in g, at least three times.</source>
            <translation>La fiole sèche est pesée vide puis remplie d’eau jusqu’au trait ; la masse de l’eau est notée en g, au moins trois fois.</translation>
        </message>
        <message>
            <source>The pipette is drained against the wall of the weighed vessel, with its waiting time; the mass of the water is noted in g, at least three times.</source>
            <translation>La pipette est vidée contre la paroi du récipient pesé, avec son temps d’attente ; la masse de l’eau est notée en g, au moins trois fois.</translation>
        </message>
        <message>
            <source>Permissible error</source>
            <translation>Erreur maximale tolérée</translation>
        </message>
        <message>
            <source>Suggested: class A of %1, taken from the data of a university's software package and not from the standard.</source>
            <translation>Proposé : classe A de %1, tirée des données d’un progiciel universitaire et non de la norme.</translation>
        </message>
        <message>
            <source>Enter what is marked on the glass or stated in its certificate.</source>
            <translation>Saisissez ce qui est inscrit sur le verre ou indiqué dans son certificat.</translation>
        </message>
        <message>
            <source>Cubic expansion of the glass</source>
            <translation>Dilatation cubique du verre</translation>
        </message>
        <message>
            <source>Mass of the water</source>
            <translation>Masse de l’eau</translation>
        </message>
        <message>
            <source>holmium perchlorate</source>
            <translation>perchlorate d’holmium</translation>
        </message>
        <message>
            <source>deuterium lamp</source>
            <translation>lampe au deutérium</translation>
        </message>
        <message>
            <source>mercury lamp</source>
            <translation>lampe au mercure</translation>
        </message>
        <message>
            <source>The maxima of a holmium perchlorate solution, or the lines of a lamp: where the photometer shows them. Those that lie near the wavelengths you work at; the others may be left out.</source>
            <translation>Les maxima d’une solution de perchlorate d’holmium, ou les raies d’une lampe : là où le photomètre les indique. Ceux qui sont proches des longueurs d’onde employées ; les autres peuvent être omis.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Holmium perchlorate solution is made with perchloric acid: it is oxidising and burns the skin, and dried out with anything organic it can explode. A sealed cuvette spares you from handling it. The light of a mercury lamp contains ultraviolet: do not look into it.</source>
            <translation>Suivez d’abord vos règles locales et les instructions du fournisseur. La solution de perchlorate d’holmium est préparée avec de l’acide perchlorique : il est comburant et brûle la peau et, séché avec une matière organique, il peut exploser. Une cuve scellée évite de le manipuler. La lumière d’une lampe au mercure contient de l’ultraviolet : ne la regardez pas.</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Attendu</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Trouvé</translation>
        </message>
        <message>
            <source>Potassium dichromate, dried, in 0.005 mol/L sulphuric acid, against the same acid at 25 °C. Weigh 57.0 to 63.0 mg for 1000 mL; for 430 nm 57.0 to 63.0 mg for 100 mL. Wavelengths your photometer does not have are left out.</source>
            <translation>Dichromate de potassium, séché, dans l’acide sulfurique à 0,005 mol/L, contre le même acide à 25 °C. Pesez 57,0 à 63,0 mg pour 1000 mL ; pour 430 nm, 57,0 à 63,0 mg pour 100 mL. Les longueurs d’onde que votre photomètre n’a pas sont omises.</translation>
        </message>
        <message>
            <source>Follow your local rules and the supplier's instructions first. Potassium dichromate is toxic, may cause cancer and allergy, may damage fertility, is very toxic to aquatic life, and intensifies fire: do not breathe the dust, wear gloves, weigh in a fume hood, and dispose of the solution as hazardous waste. Sealed cuvettes with a certificate spare you from weighing it; then key the concentration that the certificate states.</source>
            <translation>Suivez d’abord vos règles locales et les instructions du fournisseur. Le dichromate de potassium est toxique, peut provoquer cancer et allergie, peut nuire à la fertilité, est très toxique pour les organismes aquatiques et est comburant : ne respirez pas la poussière, portez des gants, pesez sous une hotte et éliminez la solution comme déchet dangereux. Des cuves scellées avec certificat évitent de le peser ; saisissez alors la concentration que le certificat indique.</translation>
        </message>
        <message>
            <source>Dichromate, weak</source>
            <translation>Dichromate, faible</translation>
        </message>
        <message>
            <source>In the solution for 235 to 350 nm: the mass weighed for one litre.</source>
            <translation>Dans la solution pour 235 à 350 nm : la masse pesée pour un litre.</translation>
        </message>
        <message>
            <source>Dichromate, strong</source>
            <translation>Dichromate, fort</translation>
        </message>
        <message>
            <source>In the solution for 430 nm: ten times the mass weighed for 100 mL.</source>
            <translation>Dans la solution pour 430 nm : dix fois la masse pesée pour 100 mL.</translation>
        </message>
        <message>
            <source>Path of the cuvette</source>
            <translation>Trajet optique de la cuve</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>Absorbance less the acid's</source>
            <translation>Absorbance moins celle de l’acide</translation>
        </message>
        <message>
            <source>strong solution</source>
            <translation>solution forte</translation>
        </message>
        <message>
            <source>weak solution</source>
            <translation>solution faible</translation>
        </message>
        <message>
            <source>At the wavelength you work at: the zero, with a cuvette of water set to zero once, read repeatedly; and one coloured cuvette (absorbance 0.5 to 1) taken out and put back each time.</source>
            <translation>À la longueur d’onde employée : le zéro, réglé une seule fois sur une cuve d’eau, puis lu à plusieurs reprises ; et une même cuve colorée (absorbance de 0,5 à 1) retirée et remise à chaque fois.</translation>
        </message>
        <message>
            <source>Standard deviation at most</source>
            <translation>Écart-type au plus</translation>
        </message>
        <message>
            <source>Mean of the zero, deviation at most</source>
            <translation>Moyenne du zéro, écart au plus</translation>
        </message>
        <message>
            <source>Last digit that it shows</source>
            <translation>Dernier chiffre affiché</translation>
        </message>
        <message>
            <source>The step of the display.</source>
            <translation>L’échelon de l’affichage.</translation>
        </message>
        <message>
            <source>Zero</source>
            <translation>Zéro</translation>
        </message>
        <message>
            <source>Coloured cuvette</source>
            <translation>Cuve colorée</translation>
        </message>
        <message>
            <source>One load, near what you weigh most, put on and taken off repeatedly; and weights with a certificate, each once.</source>
            <translation>Une même charge, proche de ce que vous pesez le plus, posée et retirée à plusieurs reprises ; et des masses étalons avec certificat, une fois chacune.</translation>
        </message>
        <message>
            <source>Deviation from a weight at most</source>
            <translation>Écart à une masse étalon au plus</translation>
        </message>
        <message>
            <source>One load, indication</source>
            <translation>Même charge, indication</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Masse étalon</translation>
        </message>
        <message>
            <source>Indication</source>
            <translation>Indication</translation>
        </message>
        <message>
            <source>Beside a thermometer with a certificate, in a stirred bath, at the temperatures you work at.</source>
            <translation>À côté d’un thermomètre avec certificat, dans un bain agité, aux températures employées.</translation>
        </message>
        <message>
            <source>Deviation at most</source>
            <translation>Écart au plus</translation>
        </message>
        <message>
            <source>Reference</source>
            <translation>Référence</translation>
        </message>
        <message>
            <source>Every cuvette of the set, clean and filled with water, read at the wavelength you work at, marks facing the same way.</source>
            <translation>Chaque cuve du jeu, propre et remplie d’eau, lue à la longueur d’onde employée, les repères du même côté.</translation>
        </message>
        <message>
            <source>Largest minus smallest at most</source>
            <translation>Plus grande moins plus petite au plus</translation>
        </message>
        <message>
            <source>Path length tolerance</source>
            <translation>Tolérance du trajet optique</translation>
        </message>
        <message>
            <source>From the certificate of the cuvettes: half the width. Suggested: 10.00 ± 0.01 mm (common practice, no source).</source>
            <translation>D’après le certificat des cuves : la demi-largeur. Proposé : 10,00 ± 0,01 mm (usage courant, sans source).</translation>
        </message>
        <message>
            <source>Absorbance with water</source>
            <translation>Absorbance avec de l’eau</translation>
        </message>
        <message>
            <source>cuvette %1</source>
            <translation>cuve %1</translation>
        </message>
        <message>
            <source>is not something checked on a %1</source>
            <translation>n’est pas un point à vérifier pour cet équipement (%1)</translation>
        </message>
        <message>
            <source>must be a real date that is not in the future</source>
            <translation>doit être un jour qui existe et qui n’est pas à venir</translation>
        </message>
        <message>
            <source>the note</source>
            <translation>la note</translation>
        </message>
        <message>
            <source>Suggested: borosilicate glass 3.3, as it is usually taken; not looked up in ISO 4787.</source>
            <translation>Proposé : verre borosilicaté 3.3, tel qu’on le prend d’ordinaire ; non vérifié dans l’ISO 4787.</translation>
        </message>
    </context>
    <context>
        <name>plateau::equipment::Standing</name>
        <message>
            <source>out of use</source>
            <translation>hors service</translation>
        </message>
        <message>
            <source>in date until %1</source>
            <translation>valable jusqu’au %1</translation>
        </message>
        <message>
            <source>due today</source>
            <translation>à faire aujourd’hui</translation>
        </message>
        <message>
            <source>due in 1 day</source>
            <translation>à faire dans 1 jour</translation>
        </message>
        <message>
            <source>due in %1 days</source>
            <translation>à faire dans %1 jours</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>overdue since %1: %2</source>
            <translation>en retard depuis le %1 : %2</translation>
        </message>
        <message>
            <source>failed on %1: %2</source>
            <translation>échec le %1 : %2</translation>
        </message>
        <message>
            <source>never checked: %1</source>
            <translation>jamais vérifié : %1</translation>
        </message>
        <message>
            <source>check %1 of %2</source>
            <translation>vérification %1 du %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Appraisal</name>
        <message>
            <source>the window starts at %1, below the smallest difference in absorbance that can be resolved (%2)</source>
            <translation>la fenêtre commence à %1, au-dessous de la plus petite différence d’absorbance que l’on puisse distinguer (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Budget</name>
        <message>
            <source>repeatability</source>
            <translation>répétabilité</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>droite d’étalonnage</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>étalon</translation>
        </message>
        <message>
            <source>dilution step %1 (%2 mL to %3 mL)</source>
            <translation>étape de dilution %1 (%2 mL à %3 mL)</translation>
        </message>
        <message>
            <source>concentration of the standard</source>
            <translation>concentration de l’étalon</translation>
        </message>
        <message>
            <source>concentration of the standard (%1)</source>
            <translation>concentration de l’étalon (%1)</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanc</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanc échantillon</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Checks</name>
        <message>
            <source>The replicates agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Les réplicats concordent : écart de %1, jusqu’à %2 permis (%3).</translation>
        </message>
        <message>
            <source>The sample volumes agree: %1 apart, up to %2 allowed (%3).</source>
            <translation>Les volumes d’échantillon concordent : écart de %1, jusqu’à %2 permis (%3).</translation>
        </message>
        <message>
            <source>the method's repeatability limit</source>
            <translation>la limite de répétabilité de la méthode</translation>
        </message>
        <message>
            <source>the noise of the readings</source>
            <translation>le bruit des lectures</translation>
        </message>
        <message>
            <source>%1, common practice</source>
            <translation>%1, usage courant</translation>
        </message>
        <message>
            <source>the laboratory's rule of %1</source>
            <translation>la règle du laboratoire de %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>au plus %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>%1, %2 left</source>
            <translation>%1, reste %2</translation>
        </message>
        <message>
            <source>up to %1, %2 left</source>
            <translation>jusqu’à %1, reste ≥ %2</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>au moins %1</translation>
        </message>
        <message>
            <source>none</source>
            <translation>aucun tube</translation>
        </message>
        <message>
            <source>%1 from %2</source>
            <translation>%1 à partir de %2</translation>
        </message>
        <message>
            <source>%1 up to %2</source>
            <translation>%1 jusqu’à %2</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>jusqu’au %1</translation>
        </message>
        <message>
            <source>absorbance rises</source>
            <translation>l’absorbance monte</translation>
        </message>
        <message>
            <source>absorbance falls</source>
            <translation>l’absorbance baisse</translation>
        </message>
        <message>
            <source>change within the noise</source>
            <translation>variation dans le bruit</translation>
        </message>
        <message>
            <source>Recovery of the control</source>
            <translation>Taux de récupération du contrôle</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 places</source>
            <translation>%1 endroits</translation>
        </message>
        <message>
            <source>some</source>
            <translation>certains</translation>
        </message>
        <message>
            <source>nearest of %1</source>
            <translation>le plus critique sur %1</translation>
        </message>
        <message>
            <source>laboratory's rule</source>
            <translation>règle du laboratoire</translation>
        </message>
        <message>
            <source>common practice</source>
            <translation>usage courant</translation>
        </message>
        <message>
            <source>noise of the readings</source>
            <translation>bruit des lectures</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>a reading is missing</source>
            <translation>une lecture manque</translation>
        </message>
        <message>
            <source>a reading cannot be right</source>
            <translation>une lecture ne peut pas être exacte</translation>
        </message>
        <message>
            <source>a signal runs in the wrong direction</source>
            <translation>un signal va dans le mauvais sens</translation>
        </message>
        <message>
            <source>the absorbance is too high</source>
            <translation>l’absorbance est trop forte</translation>
        </message>
        <message>
            <source>the reagent was used up</source>
            <translation>le réactif a été épuisé</translation>
        </message>
        <message>
            <source>the blank is missing</source>
            <translation>le blanc manque</translation>
        </message>
        <message>
            <source>the blank is too high</source>
            <translation>le blanc est trop fort</translation>
        </message>
        <message>
            <source>the blanks are too far apart</source>
            <translation>les blancs sont trop écartés</translation>
        </message>
        <message>
            <source>the replicates are too far apart</source>
            <translation>les réplicats sont trop écartés</translation>
        </message>
        <message>
            <source>the standard is too old</source>
            <translation>l’étalon est trop vieux</translation>
        </message>
        <message>
            <source>two sample volumes disagree</source>
            <translation>deux volumes d’échantillon ne concordent pas</translation>
        </message>
        <message>
            <source>the reaction has not ended</source>
            <translation>la réaction n’est pas terminée</translation>
        </message>
        <message>
            <source>a reading was taken too early</source>
            <translation>une lecture a été faite trop tôt</translation>
        </message>
        <message>
            <source>a reading was taken too late</source>
            <translation>une lecture a été faite trop tard</translation>
        </message>
        <message>
            <source>a lot is out of date</source>
            <translation>un lot est périmé</translation>
        </message>
        <message>
            <source>the sample volume is outside its range</source>
            <translation>le volume d’échantillon est hors de son domaine</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>tube %1</translation>
        </message>
        <message>
            <source>tubes %1 and %2</source>
            <translation>tubes %1 et %2</translation>
        </message>
        <message>
            <source>%1 of sample</source>
            <translation>%1 d’échantillon</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>non dilué</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, puis </translation>
        </message>
        <message>
            <source>diluted at least %1-fold in all (%2)</source>
            <translation>dilué au total au moins %1 fois (%2)</translation>
        </message>
        <message>
            <source>diluted %1-fold in all (%2)</source>
            <translation>dilué au total %1 fois (%2)</translation>
        </message>
        <message>
            <source>Readings missing</source>
            <translation>Lectures manquantes</translation>
        </message>
        <message>
            <source>Readings no photometer can show</source>
            <translation>Lectures qu’aucun photomètre ne peut indiquer</translation>
        </message>
        <message>
            <source>Signals in the wrong direction</source>
            <translation>Signaux dans le mauvais sens</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Plus grande absorbance</translation>
        </message>
        <message>
            <source>Reagent left</source>
            <translation>Réactif restant</translation>
        </message>
        <message>
            <source>Blanks read</source>
            <translation>Blancs lus</translation>
        </message>
        <message>
            <source>Blank signal</source>
            <translation>Signal du blanc</translation>
        </message>
        <message>
            <source>Difference between blanks</source>
            <translation>Écart des blancs</translation>
        </message>
        <message>
            <source>Difference between replicates</source>
            <translation>Écart des réplicats</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Taux de récupération de l’étalon</translation>
        </message>
        <message>
            <source>Age of the standard</source>
            <translation>Âge de l’étalon</translation>
        </message>
        <message>
            <source>Recovery of the spike</source>
            <translation>Taux de récupération de l’ajout dosé</translation>
        </message>
        <message>
            <source>Difference between sample volumes</source>
            <translation>Écart entre volumes d’échantillon</translation>
        </message>
        <message>
            <source>Reactions not ended</source>
            <translation>Réactions non terminées</translation>
        </message>
        <message>
            <source>Readings too early</source>
            <translation>Lectures trop tôt</translation>
        </message>
        <message>
            <source>Readings too late</source>
            <translation>Lectures trop tard</translation>
        </message>
        <message>
            <source>Lot in date</source>
            <translation>Lot non périmé</translation>
        </message>
        <message>
            <source>Volumes outside their range</source>
            <translation>Volumes hors de leur domaine</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2</source>
            <translation>%1 n’est pas calculé : %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>method %1, version %2, has no measurand %3. Evaluate the sample by a version that has it.</source>
            <translation>la méthode %1, version %2, n’a pas de mesurande %3. Évaluez l’échantillon avec une version qui l’a.</translation>
        </message>
        <message>
            <source>%1 is in %2 and %3 in %4. Enter the sample in the same form in both runs.</source>
            <translation>%1 est en %2 et %3 en %4. Saisissez l’échantillon sous la même forme dans les deux séries.</translation>
        </message>
        <message>
            <source>%1 has no value.</source>
            <translation>%1 n’a pas de valeur.</translation>
        </message>
        <message>
            <source>%1 is not calculated: %2 is only known to be larger, which leaves no limit for it. Repeat as advised.</source>
            <translation>%1 n’est pas calculé : de %2 on sait seulement que la valeur est plus grande, ce qui n’en laisse aucune limite. Répétez comme conseillé.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> et </translation>
        </message>
        <message>
            <source>%1; see there.</source>
            <translation>%1 ; voir à cet endroit.</translation>
        </message>
        <message>
            <source>%1 with the same contents read</source>
            <translation>%1 de même contenu</translation>
        </message>
        <message>
            <source>the other tubes with the same reagents read about</source>
            <translation>les autres tubes de mêmes réactifs (environ)</translation>
        </message>
        <message>
            <source>%1 blanks and standards read about</source>
            <translation>%1 blancs et étalons (environ)</translation>
        </message>
        <message>
            <source>%1 other samples read about</source>
            <translation>%1 autres échantillons (environ)</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1 : %2 vaut %3, contre %5 pour %4. Recherchez un séparateur décimal déplacé ou une inversion de tubes.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but %4 %5, and the same reagents scatter by %6 at most. Look for a reagent left out or added twice, bubbles, or a coloured sample.</source>
            <translation>%1 : %2 vaut %3, contre %5 pour %4, et à mêmes réactifs la dispersion est de %6 au plus. Recherchez un réactif oublié ou ajouté deux fois, des bulles ou un échantillon coloré.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, above the photometer's limit of %4. An absorbance that high is not proportional to concentration.</source>
            <translation>%1 : %2 vaut %3, au-dessus de la limite du photomètre de %4. Une absorbance aussi forte n’est pas proportionnelle à la concentration.</translation>
        </message>
        <message>
            <source>%1: with this the blank's signal is %2, and the method allows %3. Look for a slipped decimal point or the wrong tube.</source>
            <translation>%1 : avec cela le signal du blanc est %2, et la méthode permet %3. Recherchez un séparateur décimal déplacé ou une inversion de tubes.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain: the reagent is nearly used up.</source>
            <translation>%1 : %2 vaut %3, et il doit rester %4 : le réactif est presque épuisé.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, to the last digit what %4 shows, which was read just before and holds something else. Make sure that the cuvette was changed.</source>
            <translation>%1 : %2 vaut %3, au dernier chiffre près ce qu’indique %4, qui a été lu juste avant et contient autre chose. Assurez-vous que la cuve a été changée.</translation>
        </message>
        <message>
            <source>with %1</source>
            <translation>avec %1</translation>
        </message>
        <message>
            <source>The run has a blank.</source>
            <translation>La série a un blanc.</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is within %2.</source>
            <translation>Le signal moyen des blancs %1 est dans %2.</translation>
        </message>
        <message>
            <source>The blanks agree: %1 apart, up to %2 allowed.</source>
            <translation>Les blancs concordent : écart de %1, jusqu’à %2 permis.</translation>
        </message>
        <message>
            <source>%1, lot %2, is in date until %3.</source>
            <translation>%1, lot %2, est valable jusqu’au %3.</translation>
        </message>
        <message>
            <source>%1 found, %2 at use</source>
            <translation>%1 trouvé, %2 à l’emploi</translation>
        </message>
        <message>
            <source>This standard calibrates the run and cannot judge itself; a second standard or a control would.</source>
            <translation>Cet étalon étalonne la série et ne peut pas se juger lui-même ; un second étalon ou un contrôle le pourrait.</translation>
        </message>
        <message>
            <source>Recovery %1 is within %2 (%3).</source>
            <translation>Le taux de récupération %1 est dans %2 (%3).</translation>
        </message>
        <message>
            <source>The standard was fresh enough: %1.</source>
            <translation>L’étalon était assez frais : %1.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is within %2.</source>
            <translation>Le taux de récupération de l’ajout dosé %1 est dans %2.</translation>
        </message>
        <message>
            <source>%1 old, %2 of its strength left</source>
            <translation>âge %1, reste %2 de son titre</translation>
        </message>
        <message>
            <source>%1 is marked %2 before what precedes it (the method waits %3)</source>
            <translation>%1 est marqué %2 avant ce qui le précède (la méthode attend %3)</translation>
        </message>
        <message>
            <source>%1 was read %2 early (after %3, the method waits %4)</source>
            <translation>%1 a été lu %2 trop tôt (après %3, la méthode attend %4)</translation>
        </message>
        <message>
            <source>%1 was read %2 late (after %3, the method waits %4)</source>
            <translation>%1 a été lu %2 trop tard (après %3, la méthode attend %4)</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too early.</source>
            <translation>Aucune lecture dont l’heure est connue n’a été faite trop tôt.</translation>
        </message>
        <message>
            <source>No reading whose time is known was taken too late.</source>
            <translation>Aucune lecture dont l’heure est connue n’a été faite trop tard.</translation>
        </message>
        <message>
            <source>No reading was taken too early.</source>
            <translation>Aucune lecture n’a été faite trop tôt.</translation>
        </message>
        <message>
            <source>No reading was taken too late.</source>
            <translation>Aucune lecture n’a été faite trop tard.</translation>
        </message>
        <message>
            <source>Read again when the wait is over.</source>
            <translation>Relisez quand l’attente est terminée.</translation>
        </message>
        <message>
            <source>A slow side reaction may have added to the signal.</source>
            <translation>Une réaction secondaire lente a pu s’ajouter au signal.</translation>
        </message>
        <message>
            <source>Every reading is there.</source>
            <translation>Toutes les lectures sont présentes.</translation>
        </message>
        <message>
            <source>Every reading that counts is there: without %1, spoilt.</source>
            <translation>Toutes les lectures qui comptent sont présentes : sans %1, inutilisable.</translation>
        </message>
        <message>
            <source>%1 is missing</source>
            <translation>%1 manque</translation>
        </message>
        <message>
            <source>spoilt (%1)</source>
            <translation>inutilisable (%1)</translation>
        </message>
        <message>
            <source>Read and key what is missing.</source>
            <translation>Lisez et saisissez ce qui manque.</translation>
        </message>
        <message>
            <source>No other tube stands in for it: pipette it again.</source>
            <translation>Aucun autre tube ne le remplace : pipetez-le à nouveau.</translation>
        </message>
        <message>
            <source>Every reading is one that a photometer can show.</source>
            <translation>Chaque lecture est de celles qu’un photomètre peut indiquer.</translation>
        </message>
        <message>
            <source>%1 is %2, outside %3 to %4</source>
            <translation>%1 vaut %2, hors de %3 à %4</translation>
        </message>
        <message>
            <source>Read the tube again; look for a slipped decimal point.</source>
            <translation>Relisez le tube ; recherchez un séparateur décimal déplacé.</translation>
        </message>
        <message>
            <source>No reading is above the photometer's limit of %1.</source>
            <translation>Aucune lecture n’est au-dessus de la limite du photomètre de %1.</translation>
        </message>
        <message>
            <source>%1 is %2, above the photometer's limit of %3</source>
            <translation>%1 vaut %2, au-dessus de la limite du photomètre de %3</translation>
        </message>
        <message>
            <source>An absorbance that high is not proportional to concentration.</source>
            <translation>Une absorbance aussi forte n’est pas proportionnelle à la concentration.</translation>
        </message>
        <message>
            <source>Enough of the falling reagent is left (%1 or more).</source>
            <translation>Il reste assez du réactif dont l’absorbance baisse (%1 ou plus).</translation>
        </message>
        <message>
            <source>%1 is %2, less than the %3 that must remain</source>
            <translation>%1 vaut %2, moins que les %3 qui doivent rester</translation>
        </message>
        <message>
            <source>The reagent was used up: the true value is only known to be larger.</source>
            <translation>Le réactif a été épuisé : on sait seulement que la valeur vraie est plus grande.</translation>
        </message>
        <message>
            <source>Every sample volume is one the method allows.</source>
            <translation>Chaque volume d’échantillon est permis par la méthode.</translation>
        </message>
        <message>
            <source>%1 of sample, outside %2 to %3</source>
            <translation>%1 d’échantillon, hors de %2 à %3</translation>
        </message>
        <message>
            <source>Pipette a volume within the method's range.</source>
            <translation>Pipetez un volume dans le domaine de la méthode.</translation>
        </message>
        <message>
            <source>Every reaction followed as a series has ended.</source>
            <translation>Chaque réaction suivie par une suite de lectures est terminée.</translation>
        </message>
        <message>
            <source>%1 still changes (%2 per minute over the last %3 readings)</source>
            <translation>%1 varie encore (%2 par minute sur les %3 dernières lectures)</translation>
        </message>
        <message>
            <source>Read on until the change from reading to reading is constant.</source>
            <translation>Continuez à lire jusqu’à ce que la variation d’une lecture à l’autre soit constante.</translation>
        </message>
        <message>
            <source>Absorbance rose, as it should.</source>
            <translation>L’absorbance a monté, comme il se doit.</translation>
        </message>
        <message>
            <source>Absorbance fell, as it should.</source>
            <translation>L’absorbance a baissé, comme il se doit.</translation>
        </message>
        <message>
            <source>absorbance fell by %1 where it should rise</source>
            <translation>l’absorbance a baissé de %1 alors qu’elle devrait monter</translation>
        </message>
        <message>
            <source>absorbance rose by %1 where it should fall</source>
            <translation>l’absorbance a monté de %1 alors qu’elle devrait baisser</translation>
        </message>
        <message>
            <source>Look for swapped readings, a wrong tube or a missing addition.</source>
            <translation>Recherchez des lectures interverties, un mauvais tube ou un ajout oublié.</translation>
        </message>
        <message>
            <source>Net signal is at least %1.</source>
            <translation>Le signal net est au moins de %1.</translation>
        </message>
        <message>
            <source>Net signal is at most %1.</source>
            <translation>Le signal net est au plus de %1.</translation>
        </message>
        <message>
            <source>net signal %1 is below %2</source>
            <translation>le signal net %1 est au-dessous de %2</translation>
        </message>
        <message>
            <source>net signal %1 is above %2</source>
            <translation>le signal net %1 est au-dessus de %2</translation>
        </message>
        <message>
            <source>Too little to be measured well.</source>
            <translation>Trop peu pour être bien mesuré.</translation>
        </message>
        <message>
            <source>More than the assay measures in proportion.</source>
            <translation>Plus que ce que le dosage mesure proportionnellement.</translation>
        </message>
        <message>
            <source>The standard %1 is too old: %2. Make a fresh one.</source>
            <translation>L’étalon %1 est trop vieux : %2. Préparez-en un neuf.</translation>
        </message>
        <message>
            <source>no standard</source>
            <translation>pas d’étalon</translation>
        </message>
        <message>
            <source>The method judges the recovery of a standard (%1), and no tube of this run held one or a control: nothing in the run shows what the assay recovered. Say in the reason why it may stand, or repeat it with a standard.</source>
            <translation>La méthode juge le taux de récupération d’un étalon (%1), et aucun tube de cette série ne contenait ni étalon ni contrôle : rien dans la série ne montre ce que le dosage récupère. Dites dans le motif pourquoi elle peut être admise, ou répétez-la avec un étalon.</translation>
        </message>
        <message>
            <source>the net signal is too low</source>
            <translation>le signal net est trop faible</translation>
        </message>
        <message>
            <source>the net signal is too high</source>
            <translation>le signal net est trop fort</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>le taux de récupération de l’étalon est hors de ses limites</translation>
        </message>
        <message>
            <source>the recovery of the spike is outside its limits</source>
            <translation>le taux de récupération de l’ajout dosé est hors de ses limites</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Plus petit signal net</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Plus grand signal net</translation>
        </message>
        <message>
            <source>This run has no standard, and the method judges the recovery of one (%1). Add a standard or a control; without one the review cannot tell whether the assay finds what is there.</source>
            <translation>Cette série n’a pas d’étalon, et la méthode en juge le taux de récupération (%1). Ajoutez un étalon ou un contrôle ; sans lui, la revue ne peut pas dire si le dosage trouve ce qui est présent.</translation>
        </message>
        <message>
            <source>No standard of this run holds %1, and the method judges its recovery (%2). Add a standard or a control that does.</source>
            <translation>Aucun étalon de cette série ne contient %1, et la méthode en juge le taux de récupération (%2). Ajoutez un étalon ou un contrôle qui en contient.</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>échantillon %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>étalon %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>série</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>rapportable</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>à investiguer</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>contrôle %1</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 must remain when the reaction is over. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1 : %2 vaut %3, et il doit rester %4 quand la réaction est terminée. Recherchez un séparateur décimal déplacé ou un réactif oublié.</translation>
        </message>
        <message>
            <source>The control was fresh enough: %1.</source>
            <translation>Le contrôle était assez frais : %1.</translation>
        </message>
        <message>
            <source>%1: with this its net signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1 : avec cela son signal net est %2, mais %3 de même contenu a donné %4, et %6 au plus est permis entre les deux (%5). Recherchez une faute de frappe, une inversion de tubes ou une erreur de pipetage.</translation>
        </message>
        <message>
            <source>%1: with this its signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed between them (%5). Look for a typing error, the wrong tube or a pipetting error.</source>
            <translation>%1 : avec cela son signal est %2, mais %3 de même contenu a donné %4, et %6 au plus est permis entre les deux (%5). Recherchez une faute de frappe, une inversion de tubes ou une erreur de pipetage.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, but blanks of earlier runs by this method read about %4. Look for a slipped decimal point, and that the photometer was set to zero as always.</source>
            <translation>%1 : %2 vaut %3, mais les blancs des séries précédentes par cette méthode donnaient environ %4. Recherchez un séparateur décimal déplacé, et vérifiez que le photomètre a été mis à zéro comme toujours.</translation>
        </message>
        <message>
            <source>The replicates in %1 are %2 apart, more than %3 (%4).</source>
            <translation>Les réplicats dans %1 sont écartés de %2, plus que %3 (%4).</translation>
        </message>
        <message>
            <source>Read them again while they stand in the rack; if they still disagree, one of them was pipetted wrongly: repeat the sample.</source>
            <translation>Relisez-les tant qu’ils sont dans le portoir ; s’ils ne concordent toujours pas, l’un d’eux a été mal pipeté : répétez l’échantillon.</translation>
        </message>
        <message>
            <source>Different sample volumes give results %1 apart, more than %2 (%3).</source>
            <translation>Des volumes d’échantillon différents donnent des résultats écartés de %1, plus que %2 (%3).</translation>
        </message>
        <message>
            <source>Suspect an interference: dilute further, or check by a spike.</source>
            <translation>Soupçonnez une interférence : diluez davantage, ou vérifiez par un ajout dosé.</translation>
        </message>
        <message>
            <source>What the reagents show by themselves is taken off the result, and is more than usual.</source>
            <translation>Ce que les réactifs donnent par eux-mêmes est déduit du résultat, et dépasse l’habituel.</translation>
        </message>
        <message>
            <source>Their mean is taken off the result, which is less well known by that.</source>
            <translation>Leur moyenne est déduite du résultat, qui en est moins bien connu.</translation>
        </message>
        <message>
            <source>The result is their mean, which is less well known than usual.</source>
            <translation>Le résultat est leur moyenne, qui est moins bien connue que d’habitude.</translation>
        </message>
        <message>
            <source>The results of the run may be off in the same proportion.</source>
            <translation>Les résultats de la série peuvent s’écarter dans la même proportion.</translation>
        </message>
        <message>
            <source>What it held at its use is less well known, and so is what rests on it.</source>
            <translation>Ce qu’il contenait à son emploi est moins bien connu, de même que ce qui en dépend.</translation>
        </message>
        <message>
            <source>Whether something in the sample disturbs the measurement is open.</source>
            <translation>Il reste à savoir si quelque chose dans l’échantillon perturbe la mesure.</translation>
        </message>
        <message>
            <source>Something in the sample may disturb the measurement.</source>
            <translation>Quelque chose dans l’échantillon perturbe peut-être la mesure.</translation>
        </message>
        <message>
            <source>The result may be that of an incomplete reaction.</source>
            <translation>Le résultat est peut-être celui d’une réaction incomplète.</translation>
        </message>
        <message>
            <source>It may have worked less well than one in date.</source>
            <translation>Il a pu agir moins bien qu’un lot non périmé.</translation>
        </message>
        <message>
            <source>The method does not say how well it works with such a volume.</source>
            <translation>La méthode ne dit pas ce qu’elle vaut avec un tel volume.</translation>
        </message>
        <message>
            <source>No result rests on such a signal.</source>
            <translation>Aucun résultat ne repose sur un tel signal.</translation>
        </message>
        <message>
            <source>No result rests on such a reading.</source>
            <translation>Aucun résultat ne repose sur une telle lecture.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and %4 has to be there at the start for the largest signal and what must remain. Look for a slipped decimal point or a reagent left out.</source>
            <translation>%1 : %2 vaut %3, et il faut %4 au départ pour le plus grand signal et ce qui doit rester. Recherchez un séparateur décimal déplacé ou un réactif oublié.</translation>
        </message>
        <message>
            <source>%1: %2 is %3, and more than %4 at the start leaves no room for the largest signal. Look for a slipped decimal point, and that the photometer was set to zero.</source>
            <translation>%1 : %2 vaut %3, et plus de %4 au départ ne laisse pas de place au plus grand signal. Recherchez un séparateur décimal déplacé, et vérifiez que le photomètre a été mis à zéro.</translation>
        </message>
        <message>
            <source>%1 Or the decimal point slipped: %2 would be plausible here.</source>
            <translation>%1 Ou bien le séparateur décimal s’est déplacé : %2 serait plausible ici.</translation>
        </message>
        <message>
            <source>Repeat %1.</source>
            <translation>À répéter : %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification, %1.</source>
            <translation>Rapportez comme inférieur à la limite de quantification, %1.</translation>
        </message>
        <message>
            <source>Report as below the limit of quantification.</source>
            <translation>Rapportez comme inférieur à la limite de quantification.</translation>
        </message>
        <message>
            <source>Another tube of the sample is not: look for a missing addition.</source>
            <translation>Un autre tube de l’échantillon ne l’est pas : recherchez un ajout oublié.</translation>
        </message>
        <message>
            <source>No blank has been read: the results are not corrected for what the reagents themselves do.</source>
            <translation>Aucun blanc n’a été lu : les résultats ne sont pas corrigés de l’effet propre des réactifs.</translation>
        </message>
        <message>
            <source>Run a blank with diluent in place of sample.</source>
            <translation>Passez un blanc avec du diluant à la place de l’échantillon.</translation>
        </message>
        <message>
            <source>Mean blank signal %1 is beyond the method's %2.</source>
            <translation>Le signal moyen des blancs %1 dépasse la limite de la méthode, %2.</translation>
        </message>
        <message>
            <source>Look for a contaminated reagent or cuvette and repeat the blank.</source>
            <translation>Recherchez un réactif ou une cuve contaminés et répétez le blanc.</translation>
        </message>
        <message>
            <source>The blanks (%1) are %2 apart, more than %3 (%4).</source>
            <translation>Les blancs (%1) sont écartés de %2, plus que %3 (%4).</translation>
        </message>
        <message>
            <source>One of them was pipetted or read wrongly: read them again.</source>
            <translation>L’un d’eux a été mal pipeté ou mal lu : relisez-les.</translation>
        </message>
        <message>
            <source>%1, lot %2, expired on %3.</source>
            <translation>%1, lot %2, est périmé depuis le %3.</translation>
        </message>
        <message>
            <source>Repeat with a lot in date, or say why it may stand.</source>
            <translation>Répétez avec un lot non périmé, ou indiquez pourquoi il peut être maintenu.</translation>
        </message>
        <message>
            <source>Recovery %1 is outside %2 (%3).</source>
            <translation>Le taux de récupération %1 est hors de %2 (%3).</translation>
        </message>
        <message>
            <source>Check the control's value and its date, the pipette and the reagents before any result of this run is used.</source>
            <translation>Vérifiez la valeur et la date du contrôle, la pipette et les réactifs avant d’utiliser un résultat de cette série.</translation>
        </message>
        <message>
            <source>Check the preparation and age of the standard, the pipette and the reagents before any result of this run is used.</source>
            <translation>Vérifiez la préparation et l’âge de l’étalon, la pipette et les réactifs avant d’utiliser un résultat de cette série.</translation>
        </message>
        <message>
            <source>The control was too old: %1.</source>
            <translation>Le contrôle était trop vieux : %1.</translation>
        </message>
        <message>
            <source>Take a fresh one.</source>
            <translation>Prenez-en un neuf.</translation>
        </message>
        <message>
            <source>The standard was too old: %1.</source>
            <translation>L’étalon était trop vieux : %1.</translation>
        </message>
        <message>
            <source>Make a fresh one.</source>
            <translation>Préparez-en un neuf.</translation>
        </message>
        <message>
            <source>The spiked tube lies above what the assay measures; its recovery of %1 says nothing.</source>
            <translation>Le tube avec ajout dépasse ce que le dosage mesure ; son taux de récupération de %1 ne dit rien.</translation>
        </message>
        <message>
            <source>Repeat it with less spike or a higher dilution.</source>
            <translation>Répétez-le avec moins d’ajout ou une dilution plus forte.</translation>
        </message>
        <message>
            <source>Recovery of the spike %1 is outside %2.</source>
            <translation>Le taux de récupération de l’ajout dosé %1 est hors de %2.</translation>
        </message>
        <message>
            <source>Suspect an interference or a pipetting error.</source>
            <translation>Soupçonnez une interférence ou une erreur de pipetage.</translation>
        </message>
        <message>
            <source>lot's last good day</source>
            <translation>dernier jour de validité du lot</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Compliance</name>
        <message>
            <source>%1; the result states no uncertainty</source>
            <translation>%1 ; le résultat n’indique pas d’incertitude</translation>
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
            <translation>indécidable, car la règle demande une incertitude et une borne n’en a pas</translation>
        </message>
        <message>
            <source>cannot be decided, because the rule needs an uncertainty and the result states none</source>
            <translation>indécidable, car la règle demande une incertitude et le résultat n’en indique pas</translation>
        </message>
        <message>
            <source>cannot be decided, because only a bound is known</source>
            <translation>indécidable, car seule une borne est connue</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty, which leaves nothing between the limits</source>
            <translation>indécidable avec cette incertitude, qui ne laisse rien entre les limites</translation>
        </message>
        <message>
            <source>cannot be decided at this uncertainty</source>
            <translation>indécidable avec cette incertitude</translation>
        </message>
        <message>
            <source>cannot be decided against %1: %2</source>
            <translation>indécidable par rapport à %1 : %2</translation>
        </message>
        <message>
            <source>below the threshold</source>
            <translation>au-dessous du seuil</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>dans les limites</translation>
        </message>
        <message>
            <source>at or above the threshold</source>
            <translation>au seuil ou au-dessus</translation>
        </message>
        <message>
            <source>outside</source>
            <translation>hors des limites</translation>
        </message>
        <message>
            <source>cannot be decided</source>
            <translation>indécidable</translation>
        </message>
        <message>
            <source>less than %1</source>
            <translation>moins de %1</translation>
        </message>
        <message>
            <source>more than %1</source>
            <translation>plus de %1</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is normally distributed about the result</source>
            <translation>probabilité %1 que la valeur vraie soit au-delà de la limite, si elle suit une loi normale autour du résultat</translation>
        </message>
        <message>
            <source>probability %1 that the true value lies beyond the limit, if it is distributed about the result as Student's t with %2 degrees of freedom</source>
            <translation>probabilité %1 que la valeur vraie soit au-delà de la limite, si elle suit autour du résultat une loi de Student à %2 degrés de liberté</translation>
        </message>
        <message>
            <source>the result is given in %1</source>
            <translation>le résultat est donné en %1</translation>
        </message>
        <message>
            <source>the result has no value</source>
            <translation>le résultat n’a pas de valeur</translation>
        </message>
        <message>
            <source>%1: %2 against %3 (%4)</source>
            <translation>%1 : %2 pour %3 (%4)</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::ReportUnit</name>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per volume</source>
            <translation>un résultat en %1 ne peut pas être donné en %2 sans la masse volumique, que personne n’a indiquée ; choisissez une unité par volume</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2 without the density, which nobody stated; choose a unit per mass</source>
            <translation>un résultat en %1 ne peut pas être donné en %2 sans la masse volumique, que personne n’a indiquée ; choisissez une unité par masse</translation>
        </message>
        <message>
            <source>no value</source>
            <translation>pas de valeur</translation>
        </message>
        <message>
            <source>a result in %1 cannot be given in %2, because what is measured has no molar mass of its own; choose a unit of mass</source>
            <translation>un résultat en %1 ne peut pas être donné en %2, car ce qui est mesuré n’a pas de masse molaire propre ; choisissez une unité de masse</translation>
        </message>
        <message>
            <source>there is no value to report yet; complete the readings first</source>
            <translation>il n’y a pas encore de valeur à rapporter ; complétez d’abord les lectures</translation>
        </message>
        <message>
            <source>a result in "%1" cannot be given in %2</source>
            <translation>un résultat en « %1 » ne peut pas être donné en %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Specification</name>
        <message>
            <source>simple acceptance</source>
            <translation>acceptation simple</translation>
        </message>
        <message>
            <source>guard band for acceptance</source>
            <translation>bande de garde pour l’acceptation</translation>
        </message>
        <message>
            <source>guard band for rejection</source>
            <translation>bande de garde pour le rejet</translation>
        </message>
        <message>
            <source>guard band for acceptance and rejection</source>
            <translation>bande de garde pour l’acceptation et le rejet</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>au plus %1</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>au moins %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>a label threshold of %1</source>
            <translation>un seuil d’étiquetage de %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::SpecificationSoundness</name>
        <message>
            <source>is missing; a limit of this kind needs it</source>
            <translation>manque ; une limite de ce genre en a besoin</translation>
        </message>
        <message>
            <source>has no meaning for a limit of this kind; leave it out</source>
            <translation>n’a pas de sens pour une limite de ce genre ; omettez-le</translation>
        </message>
        <message>
            <source>must be greater than lower: %1 is not greater than %2</source>
            <translation>doit être supérieur à lower : %1 n’est pas supérieur à %2</translation>
        </message>
        <message>
            <source>leaves nothing inside the limits; must be less than %1, not %2</source>
            <translation>ne laisse rien entre les limites ; doit être inférieur à %1, pas %2</translation>
        </message>
        <message>
            <source>is missing; this decision rule needs a guard band</source>
            <translation>manque ; cette règle de décision demande une bande de garde</translation>
        </message>
        <message>
            <source>has no meaning with simple acceptance; leave it out</source>
            <translation>n’a pas de sens avec l’acceptation simple ; omettez-le</translation>
        </message>
        <message>
            <source>has no meaning with a one-sided guard band of 95 %; leave it out</source>
            <translation>n’a pas de sens avec une bande de garde unilatérale à 95 % ; omettez-le</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>le produit</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>le mesurande</translation>
        </message>
        <message>
            <source>is blank; say where the limit stands</source>
            <translation>est vide ; indiquez où figure la limite</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la source</translation>
        </message>
        <message>
            <source>is not a date; say when the source was read</source>
            <translation>n’est pas une date ; indiquez à quelle date la source a été lue</translation>
        </message>
        <message>
            <source>lists %1 limits; at most %2 are allowed</source>
            <translation>énumère %1 limites ; %2 au plus sont permises</translation>
        </message>
        <message>
            <source>is the same limit from the same source as entry %1; keep one of them</source>
            <translation>est la même limite de la même source que l’entrée %1 ; gardez-en une</translation>
        </message>
    </context>
    <context>
        <name>plateau::evaluation::Working</name>
        <message>
            <source>%1 at the addition of the starter</source>
            <translation>%1 à l’ajout du réactif de démarrage</translation>
        </message>
        <message>
            <source>%1 at the final volume</source>
            <translation>%1 au volume final</translation>
        </message>
        <message>
            <source>%1 x V(%1) / V</source>
            <translation>%1 × V(%1) / V</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blanc</translation>
        </message>
        <message>
            <source>signal of %1</source>
            <translation>signal de %1</translation>
        </message>
        <message>
            <source>mean blank</source>
            <translation>blanc moyen</translation>
        </message>
        <message>
            <source>mean of the blanks' signals</source>
            <translation>moyenne des signaux des blancs</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Étalonnage</translation>
        </message>
        <message>
            <source>standard in %1</source>
            <translation>étalon dans %1</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal</source>
            <translation>titre à l’emploi × volume ; signal net</translation>
        </message>
        <message>
            <source>strength at use x volume; net signal at the usual volume</source>
            <translation>titre à l’emploi × volume ; signal net au volume usuel</translation>
        </message>
        <message>
            <source>line</source>
            <translation>droite</translation>
        </message>
        <message>
            <source>net signal = a + b x mg in the tube</source>
            <translation>signal net = a + b × mg dans le tube</translation>
        </message>
        <message>
            <source>a = %1, b = %2 per mg</source>
            <translation>a = %1, b = %2 par mg</translation>
        </message>
        <message>
            <source>response</source>
            <translation>réponse</translation>
        </message>
        <message>
            <source>mean of net signal / mg in the tube</source>
            <translation>moyenne de signal net / mg dans le tube</translation>
        </message>
        <message>
            <source>%1 per mg</source>
            <translation>%1 par mg</translation>
        </message>
        <message>
            <source>signal - mean blank</source>
            <translation>signal − blanc moyen</translation>
        </message>
        <message>
            <source>signal - mean blank - sample blank</source>
            <translation>signal − blanc moyen − blanc échantillon</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>signal net dA</translation>
        </message>
        <message>
            <source>net signal dA at the usual volume</source>
            <translation>signal net dA au volume usuel</translation>
        </message>
        <message>
            <source>net signal x volume of the tube / usual volume</source>
            <translation>signal net × volume du tube / volume usuel</translation>
        </message>
        <message>
            <source>concentration c in the sample as pipetted</source>
            <translation>concentration c dans l’échantillon tel que pipeté</translation>
        </message>
        <message>
            <source>dA x V x M / (e x d x v x n)</source>
            <translation>dA × V × M / (e × d × v × n)</translation>
        </message>
        <message>
            <source>dA / response / v</source>
            <translation>dA / réponse / v</translation>
        </message>
        <message>
            <source>(dA - a) / b / v</source>
            <translation>(dA − a) / b / v</translation>
        </message>
        <message>
            <source>Sample %1, %2</source>
            <translation>Échantillon %1, %2</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>signal</translation>
        </message>
        <message>
            <source>sample blank, %1</source>
            <translation>blanc échantillon, %1</translation>
        </message>
        <message>
            <source>in the sample as received</source>
            <translation>dans l’échantillon tel que reçu</translation>
        </message>
        <message>
            <source>c x F</source>
            <translation>c × F</translation>
        </message>
        <message>
            <source>content</source>
            <translation>teneur</translation>
        </message>
        <message>
            <source>c x F x extract (L) / mass (g) x 100</source>
            <translation>c × F × extrait (L) / masse (g) × 100</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
        <message>
            <source>mean, N = %1</source>
            <translation>moyenne, N = %1</translation>
        </message>
        <message>
            <source>sum / N</source>
            <translation>somme / N</translation>
        </message>
        <message>
            <source>spread</source>
            <translation>étendue</translation>
        </message>
        <message>
            <source>largest - smallest</source>
            <translation>plus grand − plus petit</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Incertitude</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>incertitude-type</translation>
        </message>
        <message>
            <source>expanded uncertainty U</source>
            <translation>incertitude élargie U</translation>
        </message>
        <message>
            <source>k x root of the sum of squares</source>
            <translation>k × racine de la somme des carrés</translation>
        </message>
        <message>
            <source>Symbols</source>
            <translation>Symboles</translation>
        </message>
        <message>
            <source>no unit</source>
            <translation>sans unité</translation>
        </message>
        <message>
            <source>net signal, a difference of absorbances</source>
            <translation>signal net, une différence d’absorbances</translation>
        </message>
        <message>
            <source>sample volume in the tube</source>
            <translation>volume d’échantillon dans le tube</translation>
        </message>
        <message>
            <source>volume of the tube at the later reading</source>
            <translation>volume du tube à la lecture ultérieure</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masse molaire</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>absorptivité molaire</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>chromophore molecules formed or used per molecule</source>
            <translation>molécules de chromophore formées ou consommées par molécule</translation>
        </message>
        <message>
            <source>dilution factor, made up to / taken</source>
            <translation>facteur de dilution, complété à / prélevé</translation>
        </message>
        <message>
            <source>number of tubes in the mean</source>
            <translation>nombre de tubes dans la moyenne</translation>
        </message>
        <message>
            <source>coverage factor</source>
            <translation>facteur d’élargissement</translation>
        </message>
        <message>
            <source>to be reported</source>
            <translation>à rapporter</translation>
        </message>
        <message>
            <source>less than</source>
            <translation>inférieur à</translation>
        </message>
        <message>
            <source>more than: a reagent was used up</source>
            <translation>supérieur à : un réactif a été épuisé</translation>
        </message>
        <message>
            <source>volume of %1 in %2</source>
            <translation>volume (%1) dans %2</translation>
        </message>
        <message>
            <source>as pipetted, planned %1</source>
            <translation>tel que pipeté, prévu %1</translation>
        </message>
        <message>
            <source>Results it comes from</source>
            <translation>Résultats dont il est issu</translation>
        </message>
        <message>
            <source>method %1, version %2</source>
            <translation>méthode %1, version %2</translation>
        </message>
        <message>
            <source>%1 at %2 min</source>
            <translation>%1 à %2 min</translation>
        </message>
        <message>
            <source>%1 as read</source>
            <translation>%1 comme lu</translation>
        </message>
        <message>
            <source>the last %1 readings, t in min after the starter</source>
            <translation>les %1 dernières lectures, t en min après le réactif de démarrage</translation>
        </message>
        <message>
            <source>slope b of %1</source>
            <translation>pente b de %1</translation>
        </message>
        <message>
            <source>straight line by least squares: sum of (t - mean t) (A - mean A) / sum of (t - mean t)²</source>
            <translation>droite par les moindres carrés : somme de (t − moyenne t) (A − moyenne A) / somme de (t − moyenne t)²</translation>
        </message>
        <message>
            <source>per min</source>
            <translation>par min</translation>
        </message>
        <message>
            <source>the line at 0 min: mean A - b x mean t</source>
            <translation>la droite à 0 min : moyenne A − b × moyenne t</translation>
        </message>
        <message>
            <source>coverage factor k</source>
            <translation>facteur d’élargissement k</translation>
        </message>
        <message>
            <source>2, for 30 or more effective degrees of freedom</source>
            <translation>2, pour 30 degrés de liberté effectifs ou plus</translation>
        </message>
        <message>
            <source>t at 95.45 % for %1 effective degrees of freedom</source>
            <translation>t à 95,45 % pour %1 degrés de liberté effectifs</translation>
        </message>
        <message>
            <source>t(95.45 %, ν)</source>
            <translation>t(95,45 %, ν)</translation>
        </message>
        <message>
            <source>effective degrees of freedom (Welch-Satterthwaite)</source>
            <translation>degrés de liberté effectifs (Welch-Satterthwaite)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::BackgroundReader</name>
        <message>
            <source>expected the id of a method; leave it out to mean this one</source>
            <translation>attendu : l’id d’une méthode ; omettez-le pour désigner celle-ci</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::CellLines</name>
        <message>
            <source>The line has more than %1 columns.</source>
            <translation>La ligne a plus de %1 colonnes.</translation>
        </message>
        <message>
            <source>A quotation mark has no partner in the line.</source>
            <translation>Un guillemet de la ligne n’a pas son pendant.</translation>
        </message>
        <message>
            <source>The cell is longer than %1 characters.</source>
            <translation>La cellule dépasse %1 caractères.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Decimal</name>
        <message>
            <source>Enter a number, as 0.512 or 0,512.</source>
            <translation>Saisissez un nombre, par exemple 0.512 ou 0,512.</translation>
        </message>
        <message>
            <source>There is more than one decimal mark; a number has one, as 0.512 or 0,512.</source>
            <translation>Il y a plus d’un séparateur décimal ; un nombre en a un seul, par exemple 0.512 ou 0,512.</translation>
        </message>
        <message>
            <source>Write the number without thousands marks or blanks, as 1500.2 or 1500,2.</source>
            <translation>Écrivez le nombre sans séparateur de milliers ni espace, par exemple 1500.2 ou 1500,2.</translation>
        </message>
        <message>
            <source>Only digits, one decimal mark and a sign make a number; no letters, no exponent.</source>
            <translation>Seuls des chiffres, un séparateur décimal et un signe font un nombre ; ni lettres ni exposant.</translation>
        </message>
        <message>
            <source>Write the number with the digits 0 to 9.</source>
            <translation>Écrivez le nombre avec les chiffres 0 à 9.</translation>
        </message>
        <message>
            <source>There is no digit in it; enter a number, as 0.512 or 0,512.</source>
            <translation>Il ne contient aucun chiffre ; saisissez un nombre, par exemple 0.512 ou 0,512.</translation>
        </message>
        <message>
            <source>That is more than %1 digits; enter one reading at a time.</source>
            <translation>Cela fait plus de %1 chiffres ; saisissez une lecture à la fois.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationComparison</name>
        <message>
            <source>nothing</source>
            <translation>rien</translation>
        </message>
        <message>
            <source>a list of %1</source>
            <translation>une liste de %1</translation>
        </message>
        <message>
            <source>an object of %1 fields</source>
            <translation>un objet de %1 champs</translation>
        </message>
        <message>
            <source>an evaluation</source>
            <translation>une évaluation</translation>
        </message>
        <message>
            <source>no evaluation that can be read</source>
            <translation>aucune évaluation lisible</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::EvaluationReader</name>
        <message>
            <source>is missing</source>
            <translation>manque</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Fields</name>
        <message>
            <source>expected %1, found %2</source>
            <translation>attendu : %1, trouvé : %2</translation>
        </message>
        <message>
            <source>null</source>
            <translation>null</translation>
        </message>
        <message>
            <source>true or false</source>
            <translation>vrai ou faux</translation>
        </message>
        <message>
            <source>a number</source>
            <translation>un nombre</translation>
        </message>
        <message>
            <source>text</source>
            <translation>un texte</translation>
        </message>
        <message>
            <source>a list</source>
            <translation>une liste</translation>
        </message>
        <message>
            <source>an object</source>
            <translation>un objet</translation>
        </message>
        <message>
            <source>expected a whole number, found %1</source>
            <translation>attendu : un nombre entier, trouvé : %1</translation>
        </message>
        <message>
            <source>expected a list of two numbers, from and to</source>
            <translation>attendu : une liste de deux nombres, de et à</translation>
        </message>
        <message>
            <source>expected a time with its offset, as 2026-03-02T09:10:00+01:00 or ending in Z, found %1</source>
            <translation>attendu : une heure avec son décalage, par exemple 2026-03-02T09:10:00+01:00 ou terminée par Z, trouvé : %1</translation>
        </message>
        <message>
            <source>expected a date, as 2026-03-02, found %1</source>
            <translation>attendu : une date, par exemple 2026-03-02, trouvé : %1</translation>
        </message>
        <message>
            <source>expected one of %1, found %2</source>
            <translation>attendu : l’un de %1, trouvé : %2</translation>
        </message>
        <message>
            <source>the field %1 is not known here; leave it out</source>
            <translation>le champ %1 n’est pas connu ici ; omettez-le</translation>
        </message>
        <message>
            <source>the field %1 is not known here; did you mean %2?</source>
            <translation>le champ %1 n’est pas connu ici ; vouliez-vous dire %2 ?</translation>
        </message>
        <message>
            <source>is missing, and it is needed</source>
            <translation>manque, alors qu’il est nécessaire</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::FileReader</name>
        <message>
            <source>there is no such file</source>
            <translation>ce fichier n’existe pas</translation>
        </message>
        <message>
            <source>the file may not be read; check its permissions</source>
            <translation>le fichier ne peut pas être lu ; vérifiez ses droits d’accès</translation>
        </message>
        <message>
            <source>the file cannot be read: %1</source>
            <translation>le fichier ne peut pas être lu : %1</translation>
        </message>
        <message>
            <source>this is a directory; name a file in it</source>
            <translation>c’est un dossier ; nommez un fichier de ce dossier</translation>
        </message>
        <message>
            <source>this is a pipe, a socket or a device; name a regular file</source>
            <translation>c’est un tube nommé, un socket ou un périphérique ; nommez un fichier ordinaire</translation>
        </message>
        <message>
            <source>the file is larger than %1 MiB, the most that is read</source>
            <translation>le fichier dépasse %1 MiB, la plus grande taille lue</translation>
        </message>
        <message>
            <source>the file cannot be read; name a regular file</source>
            <translation>le fichier ne peut pas être lu ; nommez un fichier ordinaire</translation>
        </message>
        <message>
            <source>this names no file</source>
            <translation>cela ne nomme aucun fichier</translation>
        </message>
        <message>
            <source>warning: </source>
            <translation>avertissement : </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Findings</name>
        <message>
            <source>there is more wrong than the %1 problems listed</source>
            <translation>il y a plus d’erreurs que les %1 problèmes énumérés</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::Json</name>
        <message>
            <source>the field %1 stands here twice; keep one</source>
            <translation>le champ %1 figure ici deux fois ; gardez-en un</translation>
        </message>
        <message>
            <source>%1: the number is too large to be used</source>
            <translation>%1 : le nombre est trop grand pour être employé</translation>
        </message>
        <message>
            <source>%1: NaN and Infinity are not numbers; leave the field out</source>
            <translation>%1 : NaN et Infinity ne sont pas des nombres ; omettez le champ</translation>
        </message>
        <message>
            <source>%1: not valid JSON: %2</source>
            <translation>%1 : JSON non valide : %2</translation>
        </message>
        <message>
            <source>the document holds more than %1 values</source>
            <translation>le document contient plus de %1 valeurs</translation>
        </message>
        <message>
            <source>nested more than %1 levels deep</source>
            <translation>imbriqué à plus de %1 niveaux</translation>
        </message>
        <message>
            <source>%1: not UTF-8; save the file as UTF-8</source>
            <translation>%1 : pas de l’UTF-8 ; enregistrez le fichier en UTF-8</translation>
        </message>
        <message>
            <source>the document is empty</source>
            <translation>le document est vide</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::KeyedMoment</name>
        <message>
            <source>There is no such time: write hours up to 23 and minutes up to 59, of a day that exists.</source>
            <translation>Cette heure n’existe pas : écrivez des heures jusqu’à 23 et des minutes jusqu’à 59, d’un jour qui existe.</translation>
        </message>
        <message>
            <source>That time is still to come; give the time when it was done.</source>
            <translation>Cette heure est encore à venir ; donnez l’heure à laquelle cela a été fait.</translation>
        </message>
        <message>
            <source>Enter a time, as 8:10, or with its day, as %1 8:10.</source>
            <translation>Saisissez une heure, par exemple 8:10, ou avec son jour, par exemple %1 8:10.</translation>
        </message>
        <message>
            <source>That is not a time: write it as 8:10, or with its day, as %1 8:10.</source>
            <translation>Ce n’est pas une heure : écrivez-la comme 8:10, ou avec son jour, comme %1 8:10.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::LaboratoryReader</name>
        <message>
            <source>is blank; give the laboratory's name, or leave the field out</source>
            <translation>est vide ; donnez le nom du laboratoire, ou omettez le champ</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MeasuringParts</name>
        <message>
            <source>is blank; say which record the numbers come from, or leave the field out</source>
            <translation>est vide ; indiquez de quel enregistrement viennent les nombres, ou omettez le champ</translation>
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
            <translation> dans </translation>
        </message>
        <message>
            <source>Absorptivity at %1 nm</source>
            <translation>Absorptivité à %1 nm</translation>
        </message>
        <message>
            <source>Order of: %1</source>
            <translation>Ordre de : %1</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 et %2 de plus</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <translation>%1 et %2</translation>
        </message>
        <message>
            <source>Format</source>
            <translation>Format</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principe</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophore</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absorptivité</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Trajet optique</translation>
        </message>
        <message>
            <source>Direction</source>
            <translation>Sens</translation>
        </message>
        <message>
            <source>Volume correction</source>
            <translation>Correction de volume</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Constituants</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volume</translation>
        </message>
        <message>
            <source>Allowed volumes</source>
            <translation>Volumes permis</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspension</translation>
        </message>
        <message>
            <source>Component that is the sample</source>
            <translation>Constituant qui est l’échantillon</translation>
        </message>
        <message>
            <source>Component that is the diluent</source>
            <translation>Constituant qui est le diluant</translation>
        </message>
        <message>
            <source>Component that is the starter</source>
            <translation>Constituant qui est le réactif de démarrage</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Étapes</translation>
        </message>
        <message>
            <source>Measurands</source>
            <translation>Mesurandes</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Masse molaire</translation>
        </message>
        <message>
            <source>Chromophore molecules per molecule</source>
            <translation>Molécules de chromophore par molécule</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Type</translation>
        </message>
        <message>
            <source>From</source>
            <translation>De</translation>
        </message>
        <message>
            <source>To</source>
            <translation>À</translation>
        </message>
        <message>
            <source>Base reading</source>
            <translation>Lecture de base</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Lecture intermédiaire</translation>
        </message>
        <message>
            <source>Final reading</source>
            <translation>Lecture finale</translation>
        </message>
        <message>
            <source>Typical range</source>
            <translation>Domaine habituel</translation>
        </message>
        <message>
            <source>Measuring window</source>
            <translation>Fenêtre de mesure</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Plus petit signal net</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Plus grand signal net</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Plus grande absorbance</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Absorbance qui doit rester</translation>
        </message>
        <message>
            <source>Acceptance</source>
            <translation>Acceptation</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Plus grand signal du blanc</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Taux de récupération d’un étalon</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Taux de récupération d’un ajout dosé</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Répétabilité</translation>
        </message>
        <message>
            <source>Repeatability, constant part</source>
            <translation>Répétabilité, partie constante</translation>
        </message>
        <message>
            <source>Repeatability, proportional part</source>
            <translation>Répétabilité, partie proportionnelle</translation>
        </message>
        <message>
            <source>Extrapolation</source>
            <translation>Extrapolation</translation>
        </message>
        <message>
            <source>Reading that is extrapolated</source>
            <translation>Lecture extrapolée</translation>
        </message>
        <message>
            <source>Readings the line goes through</source>
            <translation>Lectures par lesquelles passe la droite</translation>
        </message>
        <message>
            <source>Derived results</source>
            <translation>Résultats dérivés</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Parties</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Facteur</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Étalon usuel</translation>
        </message>
        <message>
            <source>Concentration of the usual standard</source>
            <translation>Concentration de l’étalon usuel</translation>
        </message>
        <message>
            <source>Loss of the usual standard per hour</source>
            <translation>Perte de l’étalon usuel par heure</translation>
        </message>
        <message>
            <source>Usual tubes</source>
            <translation>Tubes usuels</translation>
        </message>
        <message>
            <source>Blanks of a rack</source>
            <translation>Blancs d’un portoir</translation>
        </message>
        <message>
            <source>Tubes of each sample</source>
            <translation>Tubes de chaque échantillon</translation>
        </message>
        <message>
            <source>Tubes of standards of a rack</source>
            <translation>Tubes d’étalons d’un portoir</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Réactions</translation>
        </message>
        <message>
            <source>Interferences</source>
            <translation>Interférences</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Préparation des échantillons</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrice</translation>
        </message>
        <message>
            <source>Preparation</source>
            <translation>Préparation</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Précautions</translation>
        </message>
        <message>
            <source>add</source>
            <translation>ajouter</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mélanger</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>attendre</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>température</translation>
        </message>
        <message>
            <source>read</source>
            <translation>lire</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Constituant</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Étape</translation>
        </message>
        <message>
            <source>Derived result</source>
            <translation>Résultat dérivé</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Partie</translation>
        </message>
        <message>
            <source>Reaction</source>
            <translation>Réaction</translation>
        </message>
        <message>
            <source>Interference</source>
            <translation>Interférence</translation>
        </message>
        <message>
            <source>Preparation of</source>
            <translation>Préparation de</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Précaution</translation>
        </message>
        <message>
            <source>to the final volume</source>
            <translation>au volume final</translation>
        </message>
        <message>
            <source>coupled indicator</source>
            <translation>indicateur couplé</translation>
        </message>
        <message>
            <source>protein-rich</source>
            <translation>riche en protéines</translation>
        </message>
        <message>
            <source>%1 samples</source>
            <translation>échantillons (%1)</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source> to </source>
            <translation> à </translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodLibrary</name>
        <message>
            <source>version %1 of %2 is installed already; give a changed method a new version</source>
            <translation>la version %1 de %2 est déjà installée ; donnez une nouvelle version à une méthode modifiée</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::MethodReader</name>
        <message>
            <source>expected an object of wavelengths in nm, as {"340": 6300}</source>
            <translation>attendu : un objet de longueurs d’onde en nm, comme {"340": 6300}</translation>
        </message>
        <message>
            <source>expected a wavelength in whole nm as the field's name, as "340", found %1</source>
            <translation>attendu : une longueur d’onde en nm entiers comme nom du champ, comme "340", trouvé : %1</translation>
        </message>
        <message>
            <source>expected the format %1, found %2; this file is of another kind or for another version of the program</source>
            <translation>attendu : le format %1, trouvé : %2 ; ce fichier est d’une autre sorte ou pour une autre version du programme</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::NumberWords</name>
        <message>
            <source>It has an exponent; set the photometer to plain decimals.</source>
            <translation>Il a un exposant ; réglez le photomètre sur des décimales simples.</translation>
        </message>
        <message>
            <source>A minus stands apart from it, so that its sign is not certain.</source>
            <translation>Un signe moins en est séparé, son signe n’est donc pas certain.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingColumn</name>
        <message>
            <source>Heading</source>
            <translation>En-tête</translation>
        </message>
        <message>
            <source>Left out: empty</source>
            <translation>Écartée : vide</translation>
        </message>
        <message>
            <source>The line is empty; fill it in or leave out empty lines.</source>
            <translation>La ligne est vide ; remplissez-la ou écartez les lignes vides.</translation>
        </message>
        <message>
            <source>line %1, column %2: %3</source>
            <translation>ligne %1, colonne %2 : %3</translation>
        </message>
        <message>
            <source>line %1: %2</source>
            <translation>ligne %1 : %2</translation>
        </message>
        <message>
            <source>The line ends with column %1.</source>
            <translation>La ligne se termine à la colonne %1.</translation>
        </message>
        <message>
            <source>The cell is empty.</source>
            <translation>La cellule est vide.</translation>
        </message>
        <message>
            <source>The column of the absorbance must be from 1 to %1.</source>
            <translation>La colonne de l’absorbance est l’une de 1 à %1.</translation>
        </message>
        <message>
            <source>The column of the tube must be from 1 to %1, or none.</source>
            <translation>La colonne du tube est l’une de 1 à %1, ou aucune.</translation>
        </message>
        <message>
            <source>Tube and absorbance cannot be in the same column.</source>
            <translation>Le tube et l’absorbance ne peuvent pas figurer dans la même colonne.</translation>
        </message>
        <message>
            <source>A heading has 0 to %1 lines.</source>
            <translation>Un en-tête compte 0 à %1 lignes.</translation>
        </message>
        <message>
            <source>Where commas separate the columns, the decimal sign has to be the point.</source>
            <translation>Là où des virgules séparent les colonnes, le séparateur décimal doit être le point.</translation>
        </message>
        <message>
            <source>The text is longer than %1 million characters, the most that is read.</source>
            <translation>Le texte dépasse %1 millions de caractères, la plus grande longueur lue.</translation>
        </message>
        <message>
            <source>There is nothing in the text.</source>
            <translation>Le texte ne contient rien.</translation>
        </message>
        <message>
            <source>The text has %1 lines; at most %2 readings are taken at a time.</source>
            <translation>Le texte a %1 lignes ; %2 lectures au plus sont prises à la fois.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingLines</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>There is no number after %1.</source>
            <translation>Il n’y a pas de nombre après %1.</translation>
        </message>
        <message>
            <source>There is no number in the line.</source>
            <translation>Il n’y a pas de nombre dans la ligne.</translation>
        </message>
        <message>
            <source>Numbers in the line: %1; number %2 is needed.</source>
            <translation>Nombres dans la ligne : %1 ; le nombre %2 est demandé.</translation>
        </message>
        <message>
            <source>The line has %1 numbers; say which of them is the absorbance.</source>
            <translation>La ligne a %1 nombres ; indiquez lequel est l’absorbance.</translation>
        </message>
        <message>
            <source>Passed over: it has %1.</source>
            <translation>Passée : elle contient %1.</translation>
        </message>
        <message>
            <source>Passed over: it has no %1.</source>
            <translation>Passée : elle ne contient pas %1.</translation>
        </message>
        <message>
            <source>There is no %1 in the line.</source>
            <translation>Il n’y a pas %1 dans la ligne.</translation>
        </message>
        <message>
            <source>%1 is in the line more than once; use a longer text.</source>
            <translation>%1 figure plus d’une fois dans la ligne ; prenez un texte plus long.</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1 : %2.</translation>
        </message>
        <message>
            <source>The number that counts must be from 1 to %1.</source>
            <translation>Le nombre qui compte est l’un de 1 à %1.</translation>
        </message>
        <message>
            <source>Type the text that stands before the absorbance, as ABS.</source>
            <translation>Tapez le texte qui précède l’absorbance, par exemple ABS.</translation>
        </message>
        <message>
            <source>Text before the absorbance</source>
            <translation>Texte avant l’absorbance</translation>
        </message>
        <message>
            <source>Text that a line must have</source>
            <translation>Texte qu’une ligne doit contenir</translation>
        </message>
        <message>
            <source>Text of lines to leave out</source>
            <translation>Texte des lignes à écarter</translation>
        </message>
        <message>
            <source>There is no line end within %1 bytes; check speed and format of the connection.</source>
            <translation>Il n’y a pas de fin de ligne dans %1 octets ; vérifiez la vitesse et le format de la liaison.</translation>
        </message>
        <message>
            <source>The line is empty.</source>
            <translation>La ligne est vide.</translation>
        </message>
        <message>
            <source>The line contains characters that are not text; check speed, format and encoding of the connection.</source>
            <translation>La ligne contient des signes qui ne sont pas du texte ; vérifiez la vitesse, le format et l’encodage de la liaison.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReadingText</name>
        <message>
            <source>The text has a NUL in %1; it is not a text file of readings.</source>
            <translation>Le texte contient un NUL en %1 ; ce n’est pas un fichier texte de lectures.</translation>
        </message>
        <message>
            <source>The text says it is UTF-16, but is broken; save it as UTF-8.</source>
            <translation>Le texte se dit en UTF-16, mais il est défectueux ; enregistrez-le en UTF-8.</translation>
        </message>
        <message>
            <source>The text is not UTF-8 in %1; choose the other encoding if it is Latin-1.</source>
            <translation>Le texte n’est pas de l’UTF-8 en %1 ; choisissez l’autre encodage si c’est du Latin-1.</translation>
        </message>
        <message>
            <source>It is written with a comma, but the decimal sign is set to the point.</source>
            <translation>Il est écrit avec une virgule, mais le séparateur décimal est réglé sur le point.</translation>
        </message>
        <message>
            <source>It is written with a point, but the decimal sign is set to the comma.</source>
            <translation>Il est écrit avec un point, mais le séparateur décimal est réglé sur la virgule.</translation>
        </message>
        <message>
            <source>It is a limit and not a reading; dilute and read again, or key what the display shows.</source>
            <translation>C’est une limite et non une lecture ; diluez et relisez, ou saisissez ce que montre l’affichage.</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RecipeReader</name>
        <message>
            <source>a step has exactly one of "add", "mix", "wait_min" and "read"</source>
            <translation>une étape a exactement un de "add", "mix", "wait_min" et "read"</translation>
        </message>
        <message>
            <source>a temperature goes with "wait_min" only</source>
            <translation>une température ne va qu’avec "wait_min"</translation>
        </message>
        <message>
            <source>must be true; leave the step out where nothing is mixed</source>
            <translation>doit être true ; omettez l’étape là où rien n’est mélangé</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ReportingParts</name>
        <message>
            <source>is not base64 text; take it from a file the program wrote</source>
            <translation>n’est pas du texte base64 ; prenez-le d’un fichier que le programme a écrit</translation>
        </message>
        <message>
            <source>is blank; fill it in, or leave the field out</source>
            <translation>est vide ; remplissez-le, ou omettez le champ</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::RunReader</name>
        <message>
            <source>is blank; give the id, or leave the field out</source>
            <translation>est vide ; donnez l’id, ou omettez le champ</translation>
        </message>
        <message>
            <source>expected a number or a list of timed readings, found %1; leave a reading out that is not taken yet</source>
            <translation>attendu : un nombre ou une liste de lectures avec leur temps, trouvé : %1 ; omettez une lecture qui n’est pas encore faite</translation>
        </message>
        <message>
            <source>expected an object of readings, as {"A1": 0.102}, found %1</source>
            <translation>attendu : un objet de lectures, comme {"A1": 0.102}, trouvé : %1</translation>
        </message>
        <message>
            <source>expected an object of volumes in mL by component, as {"nadh": 0.1}; leave it out where the tube was pipetted as planned</source>
            <translation>attendu : un objet de volumes en mL par constituant, comme {"nadh": 0.1} ; omettez-le si le tube a été pipeté comme prévu</translation>
        </message>
        <message>
            <source>expected an object of minutes by component, as {"starter": 12.5}; leave it out where nobody marked the time</source>
            <translation>attendu : un objet de minutes par constituant, comme {"starter": 12.5} ; omettez-le si personne n’a marqué l’heure</translation>
        </message>
        <message>
            <source>expected an object of minutes by reading, as {"A1": 5}; leave it out where nobody marked the time</source>
            <translation>attendu : un objet de minutes par lecture, comme {"A1": 5} ; omettez-le si personne n’a marqué l’heure</translation>
        </message>
        <message>
            <source>is blank; say what spoilt the tube, or leave the field out</source>
            <translation>est vide ; indiquez ce qui a rendu le tube inutilisable, ou omettez le champ</translation>
        </message>
        <message>
            <source>expected the id of an installed method or a whole method, found %1</source>
            <translation>attendu : l’id d’une méthode installée ou une méthode entière, trouvé : %1</translation>
        </message>
        <message>
            <source>no method %1 is installed; correct the id, or put the whole method here</source>
            <translation>aucune méthode %1 n’est installée ; corrigez l’id, ou mettez ici la méthode entière</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::ShippedMethods</name>
        <message>
            <source>The supplier's instructions, the local safety rules and licensed practice come first.</source>
            <translation>Les instructions du fournisseur, les règles de sécurité locales et les règles de la profession priment.</translation>
        </message>
        <message>
            <source>Volatile: keep samples, dilutions and cuvettes closed and cool, pipette below the surface, and take every tube to its reading without delay.</source>
            <translation>Volatil : gardez échantillons, dilutions et cuves fermés et au frais, pipetez sous la surface, et lisez chaque tube sans délai.</translation>
        </message>
        <message>
            <source>Acetaldehyde boils at about 20 °C, burns easily and may cause cancer: open the cold bottle under a hood, away from flames.</source>
            <translation>L’acétaldéhyde bout vers 20 °C, s’enflamme facilement et peut provoquer le cancer : ouvrez le flacon froid sous une hotte, loin des flammes.</translation>
        </message>
        <message>
            <source>Perchloric acid burns skin and eyes and is a strong oxidiser that can set organic matter alight: wear goggles and gloves, rinse spills with much water, and never let it dry in.</source>
            <translation>L’acide perchlorique brûle la peau et les yeux, et c’est un oxydant fort qui peut enflammer les matières organiques : portez lunettes et gants, rincez les éclaboussures à grande eau, et ne le laissez jamais sécher.</translation>
        </message>
        <message>
            <source>Sodium and potassium hydroxide solutions burn skin and eyes: wear goggles and gloves.</source>
            <translation>Les solutions d’hydroxyde de sodium et de potassium brûlent la peau et les yeux : portez lunettes et gants.</translation>
        </message>
        <message>
            <source>Enzyme solutions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Les solutions d’enzymes sont parfois conservées à l’azide de sodium : toxique par ingestion et par contact avec la peau, il dégage avec les acides un gaz très toxique, et forme des sels explosifs avec les canalisations en cuivre ou en plomb. Portez des gants et collectez les déchets selon vos règles locales.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 400 nm it gives off ultraviolet radiation.</source>
            <translation>Ne regardez pas la lampe d’un photomètre ouvert : au-dessous de 400 nm, elle émet un rayonnement ultraviolet.</translation>
        </message>
        <message>
            <source>Keep the bench free of acetic acid and its vapour: the blank shows it.</source>
            <translation>Gardez la paillasse exempte d’acide acétique et de ses vapeurs : le blanc s’en ressent.</translation>
        </message>
        <message>
            <source>A closed flask that is warmed builds up pressure: leave a third of it empty, hold the stopper down with a cloth, and open it cold.</source>
            <translation>Une fiole fermée que l’on chauffe monte en pression : laissez-en un tiers vide, maintenez le bouchon avec un chiffon, et ouvrez-la froide.</translation>
        </message>
        <message>
            <source>Enzyme suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Les suspensions d’enzymes sont parfois conservées à l’azide de sodium : toxique par ingestion et par contact avec la peau, il dégage avec les acides un gaz très toxique, et forme des sels explosifs avec les canalisations en cuivre ou en plomb. Portez des gants et collectez les déchets selon vos règles locales.</translation>
        </message>
        <message>
            <source>Swirl enzyme suspensions before every series; don't shake them to a foam.</source>
            <translation>Agitez doucement les suspensions d’enzymes avant chaque série ; ne les faites pas mousser.</translation>
        </message>
        <message>
            <source>Potassium hexacyanoferrate(II) must not meet strong acid: hydrogen cyanide may form. Keep this clarification and acid deproteinisation apart, in the flask and in the waste.</source>
            <translation>L’hexacyanoferrate(II) de potassium ne doit pas rencontrer d’acide fort : du cyanure d’hydrogène peut se former. Séparez cette clarification de la déprotéinisation acide, dans la fiole et dans les déchets.</translation>
        </message>
        <message>
            <source>Keep ammonia and ammonium salts away from the bench while you pipette.</source>
            <translation>Tenez l’ammoniac et les sels d’ammonium loin de la paillasse pendant le pipetage.</translation>
        </message>
        <message>
            <source>Treat red wine with about 0.2 g of PVPP for 10 mL and filter it first (Regulation (EEC) No 2676/90, Annex).</source>
            <translation>Traitez d’abord le vin rouge avec environ 0,2 g de PVPP pour 10 mL et filtrez-le (règlement (CEE) n° 2676/90, annexe).</translation>
        </message>
        <message>
            <source>The buffer of pH 10 irritates skin and eyes: wear goggles and gloves.</source>
            <translation>Le tampon de pH 10 irrite la peau et les yeux : portez lunettes et gants.</translation>
        </message>
        <message>
            <source>Enzyme solutions and suspensions may be preserved with sodium azide: toxic if swallowed or through the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead drains. Wear gloves and collect the waste as your local rules say.</source>
            <translation>Les solutions et suspensions d’enzymes sont parfois conservées à l’azide de sodium : toxique par ingestion et par contact avec la peau, il dégage avec les acides un gaz très toxique, et forme des sels explosifs avec les canalisations en cuivre ou en plomb. Portez des gants et collectez les déchets selon vos règles locales.</translation>
        </message>
        <message>
            <source>Read at 2 min and again at 4 min before the enzyme: a drift of more than 0.002 asks for a wait, not for the enzyme. Keep the tubes in the dark after it, read at 45 and at 60 min, and enter the larger value (French order of 7 October 1987, annex X).</source>
            <translation>Lisez à 2 min puis à 4 min avant l’enzyme : une dérive de plus de 0,002 demande d’attendre, non d’ajouter l’enzyme. Gardez ensuite les tubes à l’obscurité, lisez à 45 et à 60 min, et saisissez la plus grande valeur (arrêté français du 7 octobre 1987, annexe X).</translation>
        </message>
        <message>
            <source>INT is a tetrazolium salt that stains and may irritate: wear gloves.</source>
            <translation>L’INT est un sel de tétrazolium qui tache et peut irriter : portez des gants.</translation>
        </message>
        <message>
            <source>Ethanol burns easily: keep it from flames.</source>
            <translation>L’éthanol s’enflamme facilement : tenez-le loin des flammes.</translation>
        </message>
        <message>
            <source>Acidified sulphite gives off sulphur dioxide, which irritates the airways and can bring on an attack of asthma: work under a hood, and never acidify a sample.</source>
            <translation>Le sulfite acidifié dégage du dioxyde de soufre, qui irrite les voies respiratoires et peut déclencher une crise d’asthme : travaillez sous une hotte, et n’acidifiez jamais un échantillon.</translation>
        </message>
        <message>
            <source>A sulphite standard loses strength by the hour: make it fresh and note the time. The loss of 2 % an hour that a run of this method begins with is common practice, no source; find your own.</source>
            <translation>Un étalon de sulfite perd son titre d’heure en heure : préparez-le juste avant l’emploi et notez l’heure. La perte de 2 % par heure au départ d’une série par cette méthode est d’usage courant, sans source ; établissez la vôtre.</translation>
        </message>
        <message>
            <source>If the reaction has not ended after 15 min, read every 5 min until the rise is steady and enter all readings: the result is extrapolated to the addition (same Regulation).</source>
            <translation>Si la réaction n’est pas terminée après 15 min, lisez toutes les 5 min jusqu’à une hausse régulière et saisissez toutes les lectures : le résultat est extrapolé à l’ajout (même règlement).</translation>
        </message>
        <message>
            <source>Metaphosphoric acid burns skin and eyes: wear goggles and gloves.</source>
            <translation>L’acide métaphosphorique brûle la peau et les yeux : portez lunettes et gants.</translation>
        </message>
        <message>
            <source>The buffer has to neutralise the acid that comes with the sample: check that the tube stays near pH 6.</source>
            <translation>Le tampon doit neutraliser l’acide apporté par l’échantillon : vérifiez que le tube reste proche de pH 6.</translation>
        </message>
        <message>
            <source>A standard of L-ascorbic acid loses strength by the hour, in water far faster than in metaphosphoric acid: make it fresh and note the time.</source>
            <translation>Un étalon d’acide L-ascorbique perd son titre d’heure en heure, bien plus vite dans l’eau que dans l’acide métaphosphorique : préparez-le juste avant l’emploi et notez l’heure.</translation>
        </message>
        <message>
            <source>Don't look into the lamp of an open photometer: below 300 nm its ultraviolet radiation burns eyes and skin within minutes.</source>
            <translation>Ne regardez pas la lampe d’un photomètre ouvert : au-dessous de 300 nm, son rayonnement ultraviolet brûle les yeux et la peau en quelques minutes.</translation>
        </message>
        <message>
            <source>Keep the tubes in the dark after the enzyme.</source>
            <translation>Gardez les tubes à l’obscurité après l’ajout de l’enzyme.</translation>
        </message>
        <message>
            <source>Hydrogen peroxide and alkali burn skin and eyes: wear goggles and gloves.</source>
            <translation>Le peroxyde d’hydrogène et les bases brûlent la peau et les yeux : portez lunettes et gants.</translation>
        </message>
        <message>
            <source>Acetaldehyde (template)</source>
            <translation>Acétaldéhyde (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase oxidises acetaldehyde to acetate; the reaction runs to its end in the alkaline buffer, which also frees acetaldehyde bound to sulphite. One NADH for each acetaldehyde; the absorbance rises.</source>
            <translation>L’aldéhyde déshydrogénase oxyde l’acétaldéhyde en acétate ; la réaction va à son terme dans le tampon alcalin, qui libère aussi l’acétaldéhyde combiné au sulfite. Un NADH par molécule d’acétaldéhyde ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with potassium</source>
            <translation>Tampon pH 9 au potassium</translation>
        </message>
        <message>
            <source>NAD solution</source>
            <translation>Solution de NAD</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Eau</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Aldehyde dehydrogenase solution</source>
            <translation>Aldéhyde déshydrogénase en solution</translation>
        </message>
        <message>
            <source>Acetaldehyde</source>
            <translation>Acétaldéhyde</translation>
        </message>
        <message>
            <source>One NADH formed for each acetaldehyde.</source>
            <translation>Un NADH formé par molécule d’acétaldéhyde.</translation>
        </message>
        <message>
            <source>Other aldehydes, such as propionaldehyde and benzaldehyde, react too, some of them slowly.</source>
            <translation>D’autres aldéhydes, tels que le propionaldéhyde et le benzaldéhyde, réagissent aussi, certains lentement.</translation>
        </message>
        <message>
            <source>Traces of alcohol dehydrogenase in the enzyme let ethanol creep: read at the same time in every tube and compare with a sample blank.</source>
            <translation>Des traces d’alcool déshydrogénase dans l’enzyme font réagir lentement l’éthanol : lisez tous les tubes après le même temps et comparez avec un blanc échantillon.</translation>
        </message>
        <message>
            <source>Keep closed and cool. Dilute with cold water in a full flask right before pipetting.</source>
            <translation>Gardez fermé et au frais. Diluez à l’eau froide dans une fiole pleine, juste avant de pipeter.</translation>
        </message>
        <message>
            <source>Dilute with cold water and give the sample a blank of its own; treat with PVPP only in a closed vessel in the cold.</source>
            <translation>Diluez à l’eau froide et prévoyez un blanc échantillon ; ne traitez à la PVPP qu’en récipient fermé et à froid.</translation>
        </message>
        <message>
            <source>Centrifuge in a full, closed, cooled tube; don't filter under suction.</source>
            <translation>Centrifugez en tube plein, fermé et refroidi ; ne filtrez pas sous vide.</translation>
        </message>
        <message>
            <source>Don't degas by warming or stirring: acetaldehyde goes with the gas. Cool to 4 °C, bring to pH 9 with sodium hydroxide in a closed vessel, which binds the carbon dioxide, use at once, and note the dilution.</source>
            <translation>Ne dégazez ni en chauffant ni en agitant : l’acétaldéhyde part avec le gaz. Refroidissez à 4 °C, amenez à pH 9 avec de l’hydroxyde de sodium en récipient fermé, ce qui fixe le dioxyde de carbone, employez aussitôt et notez la dilution.</translation>
        </message>
        <message>
            <source>Distil or extract closed and cold with water, chill and filter cold; check the recovery with a spiked sample.</source>
            <translation>Distillez ou extrayez à l’eau en récipient fermé et à froid, refroidissez dans la glace et filtrez à froid ; vérifiez la récupération par un ajout dosé.</translation>
        </message>
        <message>
            <source>Cool to 4 °C; precipitate with perchloric acid, 1 mol/L, in a closed tube, centrifuge cold, bring to pH 8 to 9 with potassium hydroxide, use at once. Check the recovery with a spiked sample.</source>
            <translation>Refroidissez à 4 °C ; précipitez par l’acide perchlorique à 1 mol/L en tube fermé, centrifugez à froid, amenez à un pH de 8 à 9 avec de l’hydroxyde de potassium, employez aussitôt. Vérifiez la récupération par un ajout dosé.</translation>
        </message>
        <message>
            <source>Homogenise frozen with ice-cold water in a closed vessel, centrifuge cold, use at once. Enter mass and extract volume with the sample; check the recovery with a spiked sample.</source>
            <translation>Homogénéisez l’échantillon congelé dans de l’eau glacée, en récipient fermé, centrifugez à froid, employez aussitôt. Saisissez avec l’échantillon la masse et le volume d’extrait ; vérifiez la récupération par un ajout dosé.</translation>
        </message>
        <message>
            <source>Acetic acid (template)</source>
            <translation>Acide acétique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes: MEBAK B-590.31.112, acetic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Enzymes : MEBAK B-590.31.112, acide acétique. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase turns acetate into acetyl-CoA, citrate synthase joins it to oxaloacetate, and malate dehydrogenase makes that oxaloacetate anew from L-malate with one NADH for each acetate. The malate dehydrogenase equilibrium stands before the measured reaction and gives NADH of its own, so the signal is (A2 - A0) - (A1 - A0)^2 / (A2 - A0).</source>
            <translation>L’acétyl-CoA synthétase transforme l’acétate en acétyl-CoA, la citrate synthase unit celui-ci à l’oxaloacétate, et la malate déshydrogénase reforme cet oxaloacétate à partir du L-malate, avec un NADH par molécule d’acétate. L’équilibre de la malate déshydrogénase précède la réaction mesurée et fournit lui-même du NADH ; le signal est donc (A2 − A0) − (A1 − A0)² / (A2 − A0).</translation>
        </message>
        <message>
            <source>Buffer pH 8.4 with L-malate</source>
            <translation>Tampon pH 8,4 au L-malate</translation>
        </message>
        <message>
            <source>ATP, CoA and NAD solution</source>
            <translation>Solution d’ATP, CoA et NAD</translation>
        </message>
        <message>
            <source>Malate dehydrogenase and citrate synthase suspension</source>
            <translation>Malate déshydrogénase et citrate synthase en suspension</translation>
        </message>
        <message>
            <source>Acetyl-CoA synthetase suspension</source>
            <translation>Acétyl-CoA synthétase en suspension</translation>
        </message>
        <message>
            <source>Acetic acid</source>
            <translation>Acide acétique</translation>
        </message>
        <message>
            <source>Acetate + ATP + CoA → acetyl-CoA + AMP + diphosphate (acetyl-CoA synthetase)</source>
            <translation>Acétate + ATP + CoA → acétyl-CoA + AMP + diphosphate (acétyl-CoA synthétase)</translation>
        </message>
        <message>
            <source>One NADH formed for each acetate, less what the malate equilibrium had formed before.</source>
            <translation>Un NADH formé par molécule d’acétate, moins ce que l’équilibre du malate avait formé auparavant.</translation>
        </message>
        <message>
            <source>Propionate is taken slowly. Free acetate in reagents and water shows in the blank.</source>
            <translation>Le propionate réagit lentement. L’acétate libre des réactifs et de l’eau se voit dans le blanc.</translation>
        </message>
        <message>
            <source>The result is that of free acetate; esters and acetylated polymers do not react unless they were split before.</source>
            <translation>Le résultat est celui de l’acétate libre ; les esters et les polymères acétylés ne réagissent que s’ils ont été hydrolysés auparavant.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method.</source>
            <translation>Pipetez tel quel, ou dilué à l’eau pour entrer dans le domaine de la méthode.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows; colour alone adds the same to A0, A1 and A2. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>Diluez autant que le domaine le permet ; la couleur à elle seule ajoute autant à A0, A1 et A2. Fortement coloré : agitez 10 mL avec 0,2 g de polyvinylpolypyrrolidone (PVPP) ou de polyamide pendant une minute, puis filtrez.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a fluted filter or a membrane of 0.45 µm; throw the first millilitres away.</source>
            <translation>Centrifugez, ou filtrez sur filtre plissé ou sur membrane de 0,45 µm ; rejetez les premiers millilitres.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled, loosely closed flask until no more gas comes; don't warm: acetic acid is volatile. Filter.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie, bouchée sans serrer, jusqu’à ce qu’il ne se dégage plus de gaz ; ne chauffez pas : l’acide acétique est volatil. Filtrez.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, fiole bouchée, refroidissez, complétez au trait avec de l’eau, laissez 20 min dans la glace et filtrez à froid : la matière grasse est retenue.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter.</source>
            <translation>Prenez 1 à 10 g : introduisez-les dans une fiole jaugée de 100 mL avec environ 60 mL d’eau, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, agitez, filtrez.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min with the stopper on, cool, make up with water and filter. Enter mass and extract volume with the sample. Vinegar and pickles: dilute 1 to 100 or more.</source>
            <translation>Hachez et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, fiole bouchée, refroidissez, complétez au trait avec de l’eau et filtrez. Saisissez avec l’échantillon la masse et le volume d’extrait. Vinaigre et conserves au vinaigre : diluez au 1/100 ou davantage.</translation>
        </message>
        <message>
            <source>Ammonia and urea (template)</source>
            <translation>Ammoniac et urée (modèle)</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase joins ammonia to 2-oxoglutarate with one NADH for each ammonia (A1 to A2). Urease then splits urea into two ammonia and carbon dioxide, and two NADH are used for each urea (A2 to A3). The equilibrium lies on the side of glutamate. The absorbance falls; the NADH has to last for both.</source>
            <translation>La glutamate déshydrogénase unit l’ammoniac au 2-oxoglutarate, avec un NADH par molécule d’ammoniac (A1 à A2). L’uréase scinde ensuite l’urée en deux molécules d’ammoniac et du dioxyde de carbone, et deux NADH sont consommés par molécule d’urée (A2 à A3). L’équilibre est en faveur du glutamate. L’absorbance baisse ; le NADH doit suffire pour les deux.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with 2-oxoglutarate and ADP</source>
            <translation>Tampon pH 8 au 2-oxoglutarate et ADP</translation>
        </message>
        <message>
            <source>NADH solution</source>
            <translation>Solution de NADH</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase in glycerol</source>
            <translation>Glutamate déshydrogénase dans le glycérol</translation>
        </message>
        <message>
            <source>Urease solution</source>
            <translation>Uréase en solution</translation>
        </message>
        <message>
            <source>Ammonia as NH3</source>
            <translation>Ammoniac en NH3</translation>
        </message>
        <message>
            <source>Urea</source>
            <translation>Urée</translation>
        </message>
        <message>
            <source>Urea + H2O → 2 NH3 + CO2 (urease)</source>
            <translation>Urée + H2O → 2 NH3 + CO2 (uréase)</translation>
        </message>
        <message>
            <source>One NADH used for each ammonia, two for each urea.</source>
            <translation>Un NADH consommé par molécule d’ammoniac, deux par molécule d’urée.</translation>
        </message>
        <message>
            <source>Enzymes kept in ammonium sulphate bring ammonia with them: take glutamate dehydrogenase and urease free of ammonium.</source>
            <translation>Les enzymes conservées dans le sulfate d’ammonium apportent de l’ammoniac : prenez une glutamate déshydrogénase et une uréase exemptes d’ammonium.</translation>
        </message>
        <message>
            <source>Ammonia in the air, from cleaning agents and smoke, dissolves in every open vessel: the blank shows it.</source>
            <translation>L’ammoniac de l’air, venant de produits de nettoyage ou de fumée, se dissout dans tout récipient ouvert : le blanc s’en ressent.</translation>
        </message>
        <message>
            <source>Much tannin stops both enzymes: treat with PVPP.</source>
            <translation>Une forte teneur en tanins bloque les deux enzymes : traitez à la PVPP.</translation>
        </message>
        <message>
            <source>Fluoride and heavy metals stop urease.</source>
            <translation>Le fluorure et les métaux lourds bloquent l’uréase.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) or polyamide for a minute, then filter.</source>
            <translation>Diluez autant que le domaine le permet et prévoyez un blanc échantillon. Fortement coloré : agitez 10 mL avec 0,2 g de polyvinylpolypyrrolidone (PVPP) ou de polyamide pendant une minute, puis filtrez.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold ammonium. Throw the first millilitres away.</source>
            <translation>Centrifugez, ou filtrez sur un filtre lavé : le papier peut contenir de l’ammonium. Rejetez les premiers millilitres.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, at its own pH: an alkaline sample loses ammonia. Filter.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie jusqu’à ce qu’il ne se dégage plus de gaz, sans modifier le pH : un échantillon alcalin perd de l’ammoniac. Filtrez.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 40 °C pendant 15 min, refroidissez, complétez au trait, laissez 20 min dans la glace et filtrez à froid : la matière grasse est retenue.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: precipitate with 10 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 7 to 8 with potassium hydroxide, make up to 50 mL, stand in ice for 20 min, filter. Alkaline clarification loses ammonia and hot acid splits amides.</source>
            <translation>Lait et produits laitiers, 1 à 10 g : précipitez par 10 mL d’acide perchlorique à 1 mol/L, centrifugez, amenez à un pH de 7 à 8 avec de l’hydroxyde de potassium, complétez à 50 mL, laissez 20 min dans la glace, filtrez. La clarification alcaline fait perdre de l’ammoniac, et l’acide chaud scinde les amides.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 40 °C for 15 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Hachez à froid et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 40 °C pendant 15 min, refroidissez, complétez au trait avec de l’eau et filtrez. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Citric acid in wine</source>
            <translation>Acide citrique dans le vin</translation>
        </message>
        <message>
            <source>Commission Regulation (EEC) No 2676/90, Annex, citric acid (consolidated text of 13.08.2005, Italian): volumes of sample, water and the solutions 2.1 to 2.4, 340 nm and 10 mm, readings about 5 min after mixing and about 5 min after solution 2.4, range of 20 to 400 mg/L in the pipetted solution. Molar mass and absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8. From memory: what the solutions 2.1 to 2.4 hold and the difference A1 - A2 less that of the blank. The signal window is the range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the reserve, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Règlement (CEE) n° 2676/90 de la Commission, annexe, acide citrique (texte consolidé du 13.08.2005, en italien) : volumes d’échantillon, d’eau et des solutions 2.1 à 2.4, 340 nm et 10 mm, lectures environ 5 min après le mélange et environ 5 min après la solution 2.4, domaine de 20 à 400 mg/L dans la solution pipetée. Masse molaire et absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8. De mémoire : ce que contiennent les solutions 2.1 à 2.4, et la différence A1 − A2 diminuée de celle du blanc. La fenêtre de mesure est ce domaine exprimé en absorbance à 340 nm, par notre propre calcul. Usage courant, sans source : les limites des attentes autour des temps indiqués, la limite d’absorbance, l’absorbance qui doit rester, les limites d’acceptation, la perte de l’étalon, le nombre usuel de tubes, le domaine habituel, les interférences, la préparation des échantillons et les précautions, lorsqu’elles ne nomment pas de source.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate; malate and lactate dehydrogenase use one NADH for each oxaloacetate or the pyruvate that comes of it. The absorbance falls.</source>
            <translation>La citrate lyase scinde le citrate en oxaloacétate et acétate ; la malate déshydrogénase et la lactate déshydrogénase consomment un NADH par molécule d’oxaloacétate, ou du pyruvate qui en provient. L’absorbance baisse.</translation>
        </message>
        <message>
            <source>Solution 2.1 (buffer)</source>
            <translation>Solution 2.1 (tampon)</translation>
        </message>
        <message>
            <source>Solution 2.2 (NADH)</source>
            <translation>Solution 2.2 (NADH)</translation>
        </message>
        <message>
            <source>Solution 2.3 (malate and lactate dehydrogenase suspension)</source>
            <translation>Solution 2.3 (malate et lactate déshydrogénases en suspension)</translation>
        </message>
        <message>
            <source>Solution 2.4 (citrate lyase)</source>
            <translation>Solution 2.4 (citrate lyase)</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Acide citrique</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase)</source>
            <translation>Citrate → oxaloacétate + acétate (citrate lyase)</translation>
        </message>
        <message>
            <source>One NADH used for each citrate.</source>
            <translation>Un NADH consommé par molécule de citrate.</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the wine are used up before A1 and do not count.</source>
            <translation>L’oxaloacétate et le pyruvate du vin sont consommés avant A1 et ne comptent pas.</translation>
        </message>
        <message>
            <source>Malate, tartrate and isocitrate do not react.</source>
            <translation>Le malate, le tartrate et l’isocitrate ne réagissent pas.</translation>
        </message>
        <message>
            <source>Much tannin slows the lyase: treat with PVPP.</source>
            <translation>Une forte teneur en tanins ralentit la lyase : traitez à la PVPP.</translation>
        </message>
        <message>
            <source>Below 400 mg/L pipette as it is; otherwise dilute with water to 20 to 400 mg/L (same Regulation).</source>
            <translation>Au-dessous de 400 mg/L, pipetez tel quel ; sinon, diluez à l’eau jusqu’à 20 à 400 mg/L (même règlement).</translation>
        </message>
        <message>
            <source>Red wine: about 0.2 g of PVPP with 10 mL of wine, then filter (same Regulation).</source>
            <translation>Vin rouge : environ 0,2 g de PVPP pour 10 mL de vin, puis filtrez (même règlement).</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie jusqu’à ce qu’il ne se dégage plus de gaz, puis filtrez.</translation>
        </message>
        <message>
            <source>Citric acid (template)</source>
            <translation>Acide citrique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry, molar mass: Russian standard for citric acid in juices, document 1200102279, section 8. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Principe et stœchiométrie, masse molaire : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>Citrate lyase splits citrate into oxaloacetate and acetate. L-malate dehydrogenase, and L-lactate dehydrogenase for the oxaloacetate that has turned into pyruvate, use one NADH for each. Both reductions go to their end by themselves. The absorbance falls by one NADH for each citrate.</source>
            <translation>La citrate lyase scinde le citrate en oxaloacétate et acétate. La L-malate déshydrogénase, et la L-lactate déshydrogénase pour l’oxaloacétate devenu pyruvate, consomment chaque fois un NADH. Les deux réductions vont d’elles-mêmes à leur terme. L’absorbance baisse d’un NADH par molécule de citrate.</translation>
        </message>
        <message>
            <source>Buffer pH 7.8 with zinc</source>
            <translation>Tampon pH 7,8 au zinc</translation>
        </message>
        <message>
            <source>Malate and lactate dehydrogenase suspension</source>
            <translation>Malate et lactate déshydrogénases en suspension</translation>
        </message>
        <message>
            <source>Citrate lyase solution</source>
            <translation>Citrate lyase en solution</translation>
        </message>
        <message>
            <source>Citrate → oxaloacetate + acetate (citrate lyase, zinc)</source>
            <translation>Citrate → oxaloacétate + acétate (citrate lyase, zinc)</translation>
        </message>
        <message>
            <source>Oxaloacetate and pyruvate of the sample are used up before A1 and do not count.</source>
            <translation>L’oxaloacétate et le pyruvate de l’échantillon sont consommés avant A1 et ne comptent pas.</translation>
        </message>
        <message>
            <source>Isocitrate, malate and tartrate do not react.</source>
            <translation>L’isocitrate, le malate et le tartrate ne réagissent pas.</translation>
        </message>
        <message>
            <source>Much tannin or a strongly acid sample slows the lyase: treat with PVPP, bring to pH 8.</source>
            <translation>Une forte teneur en tanins ou un échantillon très acide ralentissent la lyase : traitez à la PVPP, amenez à pH 8.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method. Bring lemon juice and other strongly acid samples to about pH 8 with sodium hydroxide first.</source>
            <translation>Pipetez tel quel, ou dilué à l’eau pour entrer dans le domaine de la méthode. Amenez d’abord le jus de citron et les autres échantillons très acides à un pH d’environ 8 avec de l’hydroxyde de sodium.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Red wine and red juice: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter.</source>
            <translation>Diluez autant que le domaine le permet et prévoyez un blanc échantillon. Vin rouge et jus rouge : agitez 10 mL avec 0,2 g de polyvinylpolypyrrolidone (PVPP) pendant une minute, puis filtrez.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, warm to 30 °C if need be, then filter.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie jusqu’à ce qu’il ne se dégage plus de gaz, chauffez à 30 °C s’il le faut, puis filtrez.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, refroidissez, complétez au trait avec de l’eau, laissez 20 min dans la glace et filtrez à froid : la matière grasse est retenue.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Hachez et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, refroidissez, complétez au trait avec de l’eau et filtrez. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>D-gluconic acid (template)</source>
            <translation>Acide D-gluconique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Absorptivités : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9 ; d’autres tables donnent 3500 à 365 nm pour le NADPH (de mémoire).</translation>
        </message>
        <message>
            <source>Gluconate kinase phosphorylates D-gluconate with ATP; 6-phosphogluconate dehydrogenase turns that into ribulose-5-phosphate, carbon dioxide and NADPH. The loss of carbon dioxide takes the reaction to its end. One NADPH for each D-gluconate; the absorbance rises.</source>
            <translation>La gluconate kinase phosphoryle le D-gluconate par l’ATP ; la 6-phosphogluconate déshydrogénase en fait du ribulose-5-phosphate, du dioxyde de carbone et du NADPH. La perte du dioxyde de carbone mène la réaction à son terme. Un NADPH par molécule de D-gluconate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer pH 8 with magnesium</source>
            <translation>Tampon pH 8 au magnésium</translation>
        </message>
        <message>
            <source>NADP solution</source>
            <translation>Solution de NADP</translation>
        </message>
        <message>
            <source>ATP solution</source>
            <translation>Solution d’ATP</translation>
        </message>
        <message>
            <source>6-Phosphogluconate dehydrogenase suspension</source>
            <translation>6-phosphogluconate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>Gluconate kinase suspension</source>
            <translation>Gluconate kinase en suspension</translation>
        </message>
        <message>
            <source>D-gluconic acid</source>
            <translation>Acide D-gluconique</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-gluconate.</source>
            <translation>Un NADPH formé par molécule de D-gluconate.</translation>
        </message>
        <message>
            <source>D-glucono-lactone does not react as it is: for the total, hold the sample at pH 10 to 11 for 10 min first, then bring it to pH 8.</source>
            <translation>La D-gluconolactone ne réagit pas telle quelle : pour le total, maintenez d’abord l’échantillon à un pH de 10 à 11 pendant 10 min, puis amenez-le à pH 8.</translation>
        </message>
        <message>
            <source>6-Phosphogluconate of the sample is used up before A1 and does not count.</source>
            <translation>Le 6-phosphogluconate de l’échantillon est consommé avant A1 et ne compte pas.</translation>
        </message>
        <message>
            <source>D-lactic acid (template)</source>
            <translation>Acide D-lactique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle, stoichiometry and the buffer of pH 10 with L-glutamate: OIV-MA-AS313-07, lactic acid. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Principe, stœchiométrie et tampon de pH 10 au L-glutamate : OIV-MA-AS313-07, acide lactique. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase turns D-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each D-lactate; the absorbance rises.</source>
            <translation>La D-lactate déshydrogénase transforme le D-lactate et le NAD en pyruvate et NADH. Cet équilibre est en faveur du lactate ; le tampon alcalin et la transaminase, qui enlève le pyruvate avec le L-glutamate, le déplacent. Un NADH par molécule de D-lactate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer pH 10 with L-glutamate</source>
            <translation>Tampon pH 10 au L-glutamate</translation>
        </message>
        <message>
            <source>Glutamate-pyruvate transaminase suspension</source>
            <translation>Glutamate-pyruvate transaminase en suspension</translation>
        </message>
        <message>
            <source>D-lactate dehydrogenase suspension</source>
            <translation>D-lactate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>D-lactic acid</source>
            <translation>Acide D-lactique</translation>
        </message>
        <message>
            <source>Pyruvate + L-glutamate → L-alanine + 2-oxoglutarate (glutamate-pyruvate transaminase)</source>
            <translation>Pyruvate + L-glutamate → L-alanine + 2-oxoglutarate (glutamate-pyruvate transaminase)</translation>
        </message>
        <message>
            <source>One NADH formed for each D-lactate.</source>
            <translation>Un NADH formé par molécule de D-lactate.</translation>
        </message>
        <message>
            <source>L-lactate does not react. D-2-hydroxybutyrate is taken slowly.</source>
            <translation>Le L-lactate ne réagit pas. Le D-2-hydroxybutyrate réagit lentement.</translation>
        </message>
        <message>
            <source>Sweat holds lactate: touch neither pipette tips nor the inside of cuvettes.</source>
            <translation>La sueur contient du lactate : ne touchez ni les cônes de pipette ni l’intérieur des cuves.</translation>
        </message>
        <message>
            <source>A small creep after the end is usual: read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>Une légère dérive après la fin est habituelle : lisez tous les tubes après le même temps, ou lisez une suite et extrapolez.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Meat, 5 g: homogenise in the cold with 20 mL of perchloric acid, 1 mol/L, centrifuge, bring to pH 10 with potassium hydroxide, make up to 100 mL with water, stand in ice for 20 min, filter. A sample treated with acid never goes into the waste of the hexacyanoferrate clarification.</source>
            <translation>Lait et produits laitiers, 1 à 10 g : introduisez-les dans une fiole jaugée de 100 mL avec environ 60 mL d’eau, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, agitez, filtrez. Viande, 5 g : homogénéisez à froid avec 20 mL d’acide perchlorique à 1 mol/L, centrifugez, amenez à pH 10 avec de l’hydroxyde de potassium, complétez à 100 mL avec de l’eau, laissez 20 min dans la glace, filtrez. Un échantillon traité à l’acide ne va jamais dans les déchets de la clarification à l’hexacyanoferrate.</translation>
        </message>
        <message>
            <source>D-malic acid (template)</source>
            <translation>Acide D-malique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: OIV resolution OENO 6/98. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Principe et stœchiométrie : résolution OIV OENO 6/98. Masse molaire : résolution OIV OENO 30/2004. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase oxidises D-malate and splits carbon dioxide off: pyruvate, carbon dioxide and NADH. The loss of carbon dioxide and the alkaline buffer pull the reaction to its end. One NADH for each D-malate; the absorbance rises.</source>
            <translation>La D-malate déshydrogénase oxyde le D-malate et en détache du dioxyde de carbone : pyruvate, dioxyde de carbone et NADH. La perte du dioxyde de carbone et le tampon alcalin mènent la réaction à son terme. Un NADH par molécule de D-malate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer pH 9 with magnesium and potassium</source>
            <translation>Tampon pH 9 au magnésium et potassium</translation>
        </message>
        <message>
            <source>D-malate dehydrogenase solution</source>
            <translation>D-malate déshydrogénase en solution</translation>
        </message>
        <message>
            <source>D-malic acid</source>
            <translation>Acide D-malique</translation>
        </message>
        <message>
            <source>One NADH formed for each D-malate.</source>
            <translation>Un NADH formé par molécule de D-malate.</translation>
        </message>
        <message>
            <source>L-tartrate is taken slowly: the absorbance goes on creeping after the end. Read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>Le L-tartrate réagit lentement : l’absorbance continue de dériver après la fin. Lisez tous les tubes après le même temps, ou lisez une suite et extrapolez.</translation>
        </message>
        <message>
            <source>Fifty times as much L-malate or more slows the reaction.</source>
            <translation>Un excès de L-malate de cinquante fois ou plus ralentit la réaction.</translation>
        </message>
        <message>
            <source>D-sorbitol in foods</source>
            <translation>D-sorbitol dans les aliments</translation>
        </message>
        <message>
            <source>French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol: volumes of the three solutions, water, sample and sorbitol dehydrogenase, 492 nm, 10 mm, 19.9 L/(mmol cm), molar mass 182.17 g/mol, about 3 g of sample in 100 mL, readings at 2 min and 2 min later, then 45 min in the dark and 15 min more. From memory: what the three solutions hold. Our own: one reading A1 (the second of the first two), one reading A2 (the larger of the last two). The signal window is the stated optimum of 20 to 350 mg/100 g with 3 g in 100 mL, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>Arrêté français du 7 octobre 1987 (ECOC8700071A), annexe X, D-sorbitol : volumes des trois solutions, de l’eau, de l’échantillon et de la sorbitol déshydrogénase, 492 nm, 10 mm, 19,9 L/(mmol cm), masse molaire 182,17 g/mol, environ 3 g d’échantillon dans 100 mL, lectures à 2 min et 2 min plus tard, puis après 45 min à l’obscurité et 15 min de plus. De mémoire : ce que contiennent les trois solutions. De notre choix : une seule lecture A1 (la seconde des deux premières), une seule lecture A2 (la plus grande des deux dernières). La fenêtre de mesure est l’optimum indiqué de 20 à 350 mg/100 g avec 3 g dans 100 mL, par notre propre calcul. Usage courant, sans source : les limites des attentes autour des temps indiqués, les limites d’acceptation, la perte de l’étalon, le nombre usuel de tubes, le domaine habituel, les interférences, la préparation des échantillons et les précautions, lorsqu’elles ne nomment pas de source.</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase turns D-sorbitol and NAD into fructose and NADH; diaphorase passes the hydrogen on to the tetrazolium salt INT, one formazan for each D-sorbitol. The absorbance at 492 nm rises. Xylitol is measured as well.</source>
            <translation>La sorbitol déshydrogénase transforme le D-sorbitol et le NAD en fructose et NADH ; la diaphorase transmet l’hydrogène au sel de tétrazolium INT, un formazan par molécule de D-sorbitol. L’absorbance à 492 nm monte. Le xylitol est également dosé.</translation>
        </message>
        <message>
            <source>First solution (buffer)</source>
            <translation>Première solution (tampon)</translation>
        </message>
        <message>
            <source>Second solution (NAD and diaphorase)</source>
            <translation>Deuxième solution (NAD et diaphorase)</translation>
        </message>
        <message>
            <source>Third solution (INT)</source>
            <translation>Troisième solution (INT)</translation>
        </message>
        <message>
            <source>Sample extract</source>
            <translation>Extrait d’échantillon</translation>
        </message>
        <message>
            <source>Sorbitol dehydrogenase solution</source>
            <translation>Sorbitol déshydrogénase en solution</translation>
        </message>
        <message>
            <source>D-sorbitol</source>
            <translation>D-sorbitol</translation>
        </message>
        <message>
            <source>One formazan formed for each D-sorbitol.</source>
            <translation>Un formazan formé par molécule de D-sorbitol.</translation>
        </message>
        <message>
            <source>Xylitol is measured as well (same order).</source>
            <translation>Le xylitol est également dosé (même arrêté).</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite and other reducing substances reduce INT: wait until A1 stands.</source>
            <translation>L’acide ascorbique, le sulfite et d’autres substances réductrices réduisent l’INT : attendez que A1 soit stable.</translation>
        </message>
        <message>
            <source>Dilute with water until the pipetted solution holds 0.006 to 0.105 g/L.</source>
            <translation>Diluez à l’eau jusqu’à ce que la solution pipetée contienne 0,006 à 0,105 g/L.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, then filter and dilute.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie jusqu’à ce qu’il ne se dégage plus de gaz, puis filtrez et diluez.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, extract with 60 mL of water at 60 °C for 1 h, cool, make up to 100 mL, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Pesez environ 3 g à 0,01 g près, extrayez avec 60 mL d’eau à 60 °C pendant 1 h, refroidissez, complétez à 100 mL, laissez 20 min dans la glace et filtrez à froid : la matière grasse est retenue.</translation>
        </message>
        <message>
            <source>Weigh about 3 g to 0.01 g, leave with 60 mL of water for 1 h, make up to 100 mL, filter (same order). Enter mass and extract volume with the sample.</source>
            <translation>Pesez environ 3 g à 0,01 g près, laissez 1 h dans 60 mL d’eau, complétez à 100 mL, filtrez (même arrêté). Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Ethanol (template)</source>
            <translation>Éthanol (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Principle and stoichiometry: MEBAK B-590.11.112, ethanol (alcohol and aldehyde dehydrogenase). Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Principe et stœchiométrie : MEBAK B-590.11.112, éthanol (alcool déshydrogénase et aldéhyde déshydrogénase). Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase turns ethanol into acetaldehyde. That equilibrium lies on the side of ethanol; the alkaline buffer and aldehyde dehydrogenase, which oxidises the acetaldehyde on to acetate, pull it over. Two NADH for each ethanol; the absorbance rises.</source>
            <translation>L’alcool déshydrogénase transforme l’éthanol en acétaldéhyde. Cet équilibre est en faveur de l’éthanol ; le tampon alcalin et l’aldéhyde déshydrogénase, qui oxyde ensuite l’acétaldéhyde en acétate, le déplacent. Deux NADH par molécule d’éthanol ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer pH 9</source>
            <translation>Tampon pH 9</translation>
        </message>
        <message>
            <source>Alcohol dehydrogenase suspension</source>
            <translation>Alcool déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>Ethanol</source>
            <translation>Éthanol</translation>
        </message>
        <message>
            <source>Two NADH formed for each ethanol.</source>
            <translation>Deux NADH formés par molécule d’éthanol.</translation>
        </message>
        <message>
            <source>Acetaldehyde of the sample is used up before A1 and does not count.</source>
            <translation>L’acétaldéhyde de l’échantillon est consommé avant A1 et ne compte pas.</translation>
        </message>
        <message>
            <source>1-Propanol, 1-butanol and other primary alcohols react, more slowly the longer they are; methanol does not.</source>
            <translation>Le 1-propanol, le 1-butanol et d’autres alcools primaires réagissent, d’autant plus lentement que leur chaîne est longue ; le méthanol ne réagit pas.</translation>
        </message>
        <message>
            <source>Ethanol in the air of the room, from disinfectants and squeeze bottles, shows in the blank.</source>
            <translation>L’éthanol de l’air de la pièce, venant de désinfectants ou de pissettes, se voit dans le blanc.</translation>
        </message>
        <message>
            <source>Keep closed. Dilute with cold water into the range: wine 1 to 1000 and more, beer and cider 1 to 500, juice as it is.</source>
            <translation>Gardez fermé. Diluez à l’eau froide pour entrer dans le domaine : vin au 1/1000 et davantage, bière et cidre au 1/500, jus tel quel.</translation>
        </message>
        <message>
            <source>The dilution takes care of the colour. Low-alcohol samples: give the sample a blank of its own, or stir with PVPP in a closed vessel and filter covered.</source>
            <translation>La dilution suffit contre la couleur. Échantillons peu alcoolisés : prévoyez un blanc échantillon, ou agitez avec de la PVPP en récipient fermé et filtrez à couvert.</translation>
        </message>
        <message>
            <source>Centrifuge in a closed tube, or filter through a covered funnel; no suction.</source>
            <translation>Centrifugez en tube fermé, ou filtrez sur un entonnoir couvert ; ne filtrez pas sous vide.</translation>
        </message>
        <message>
            <source>Stir gently at room temperature in a covered flask, or filter through a covered fluted filter; don't warm: ethanol goes with the gas.</source>
            <translation>Agitez doucement à température ambiante en fiole couverte, ou filtrez sur un filtre plissé couvert ; ne chauffez pas : l’éthanol part avec le gaz.</translation>
        </message>
        <message>
            <source>Weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up, stand in ice for 20 min and filter cold through a covered funnel.</source>
            <translation>Pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 40 °C pendant 20 min, fiole bouchée, refroidissez sans déboucher, complétez au trait, laissez 20 min dans la glace et filtrez à froid sur un entonnoir couvert.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g, keep closed: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter through a covered funnel.</source>
            <translation>Prenez 1 à 10 g, gardez fermé : introduisez-les dans une fiole jaugée de 100 mL avec environ 60 mL d’eau, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, agitez, filtrez sur un entonnoir couvert.</translation>
        </message>
        <message>
            <source>Mince cold and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract closed with 60 mL of water at 40 °C for 20 min, cool closed, make up and filter through a covered funnel. Enter mass and extract volume with the sample.</source>
            <translation>Hachez à froid et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 40 °C pendant 20 min, fiole bouchée, refroidissez sans déboucher, complétez au trait et filtrez sur un entonnoir couvert. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Free sulphite (template)</source>
            <translation>Sulfite libre (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Interferences: EN 1988-2:1998, scope. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Interférences : EN 1988-2:1998, domaine d’application. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>The same two reactions as for total sulphite, in a weakly acid buffer, in the cold and with a short wait, so that sulphite bound to acetaldehyde stays bound. Weakly bound sulphite is set free while the free is used up: what is found depends on the waiting time. Keep it the same for standard and samples. One NADH used for each sulphite; the absorbance falls.</source>
            <translation>Les deux mêmes réactions que pour le sulfite total, dans un tampon faiblement acide, à froid et avec une attente courte, afin que le sulfite combiné à l’acétaldéhyde le reste. Le sulfite faiblement combiné se libère à mesure que le libre est consommé : ce qui est trouvé dépend du temps d’attente. Gardez-le identique pour l’étalon et les échantillons. Un NADH consommé par molécule de sulfite ; l’absorbance baisse.</translation>
        </message>
        <message>
            <source>Buffer pH 6</source>
            <translation>Tampon pH 6</translation>
        </message>
        <message>
            <source>NADH and NADH peroxidase solution</source>
            <translation>Solution de NADH et de NADH peroxydase</translation>
        </message>
        <message>
            <source>Sulphite oxidase suspension</source>
            <translation>Sulfite oxydase en suspension</translation>
        </message>
        <message>
            <source>Free sulphite as SO2</source>
            <translation>Sulfite libre en SO2</translation>
        </message>
        <message>
            <source>Sulphite + O2 + H2O → sulphate + H2O2 (sulphite oxidase)</source>
            <translation>Sulfite + O2 + H2O → sulfate + H2O2 (sulfite oxydase)</translation>
        </message>
        <message>
            <source>One NADH used for each sulphite.</source>
            <translation>Un NADH consommé par molécule de sulfite.</translation>
        </message>
        <message>
            <source>Sulphite bound to sugars, pyruvate and pigments comes free during the reaction and counts in part: the result is an upper bound of what is free.</source>
            <translation>Le sulfite combiné aux sucres, au pyruvate et aux pigments se libère pendant la réaction et compte en partie : le résultat est une borne supérieure de ce qui est libre.</translation>
        </message>
        <message>
            <source>Sulphate, sulphide and thiosulphate do not interfere; isothiocyanates do. Not for cabbage, dried garlic, dried onion, ginger, leek and soy protein (EN 1988-2:1998, scope).</source>
            <translation>Le sulfate, le sulfure et le thiosulfate n’interfèrent pas ; les isothiocyanates, si. Ne convient pas au chou, à l’ail séché, à l’oignon séché, au gingembre, au poireau ni à la protéine de soja (EN 1988-2:1998, domaine d’application).</translation>
        </message>
        <message>
            <source>Ascorbic acid above about 0.1 g/L slows the reaction and uses NADH: treat the sample with ascorbate oxidase first.</source>
            <translation>L’acide ascorbique au-dessus d’environ 0,1 g/L ralentit la réaction et consomme du NADH : traitez d’abord l’échantillon à l’ascorbate oxydase.</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Pipetez d’un récipient plein et fermé, sans y faire entrer d’air. Travaillez à froid et sans attendre : ce qui est libre change avec la température, la dilution et l’air.</translation>
        </message>
        <message>
            <source>Give the sample a blank of its own and dilute as far as the range allows. Don't treat it with charcoal or long with PVPP: sulphite is lost and oxidised.</source>
            <translation>Prévoyez un blanc échantillon et diluez autant que le domaine le permet. Ne traitez ni au charbon, ni longtemps à la PVPP : du sulfite se perd et s’oxyde.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off. Work cold and at once: what is free changes with temperature, dilution and air.</source>
            <translation>Laissez décanter, ou centrifugez en tube plein et fermé ; la filtration sous vide entraîne du dioxyde de soufre. Travaillez à froid et sans attendre : ce qui est libre change avec la température, la dilution et l’air.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few; don't make it alkaline, which sets bound sulphite free.</source>
            <translation>Ne chauffez pas, n’acidifiez pas et ne secouez pas : le dioxyde de soufre part avec le gaz. Versez lentement dans un bécher et agitez doucement à froid jusqu’à ce que les bulles soient rares ; n’alcalinisez pas, ce qui libérerait le sulfite combiné.</translation>
        </message>
        <message>
            <source>D-glucose after starch digestion</source>
            <translation>D-glucose après hydrolyse de l’amidon</translation>
        </message>
        <message>
            <source>Commission Regulation (EC) No 900/2008, Annex I, sections 5.1 and 5.2: volumes of buffer, NADP, ATP, test solution, water and enzymes, the first reading after about 3 min, the second after about 15 min, readings every 5 min until the rise is steady and the extrapolation to the addition where the reaction has not ended, masses and flasks by starch content. Molar mass and absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. From memory: the wavelength of 340 nm and the path length of 10 mm in this text, what the solutions hold. Our own: four readings for the extrapolation. Common practice, no source: the waiting limits around the stated times, the signal window, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range (of the digest as made up), interferences and cautions where they name no source.</source>
            <translation>Règlement (CE) n° 900/2008 de la Commission, annexe I, sections 5.1 et 5.2 : volumes de tampon, de NADP, d’ATP, de solution d’essai, d’eau et d’enzymes, première lecture après environ 3 min, seconde après environ 15 min, lectures toutes les 5 min jusqu’à une hausse régulière et extrapolation à l’ajout si la réaction n’est pas terminée, masses et fioles selon la teneur en amidon. Masse molaire et absorptivités : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9. De mémoire : la longueur d’onde de 340 nm et le trajet optique de 10 mm dans ce texte, ce que contiennent les solutions. De notre choix : quatre lectures pour l’extrapolation. Usage courant, sans source : les limites des attentes autour des temps indiqués, la fenêtre de mesure, la limite d’absorbance, les limites d’acceptation, la perte de l’étalon, le nombre usuel de tubes, le domaine habituel (de l’hydrolysat complété), les interférences et les précautions, lorsqu’elles ne nomment pas de source.</translation>
        </message>
        <message>
            <source>Amyloglucosidase has turned starch and its breakdown products into D-glucose. Hexokinase phosphorylates it with ATP, and glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose; both go to their end. The absorbance rises.</source>
            <translation>L’amyloglucosidase a transformé l’amidon et ses produits de dégradation en D-glucose. L’hexokinase le phosphoryle par l’ATP, et la glucose-6-phosphate déshydrogénase forme un NADPH par molécule de D-glucose ; les deux réactions vont à leur terme. L’absorbance monte.</translation>
        </message>
        <message>
            <source>Buffer</source>
            <translation>Tampon</translation>
        </message>
        <message>
            <source>Test solution</source>
            <translation>Solution d’essai</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase suspension</source>
            <translation>Hexokinase et glucose-6-phosphate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>D-glucose</source>
            <translation>D-glucose</translation>
        </message>
        <message>
            <source>Starch + n H2O → n D-glucose (amyloglucosidase), before the test</source>
            <translation>Amidon + n H2O → n D-glucose (amyloglucosidase), avant le dosage</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose.</source>
            <translation>Un NADPH formé par molécule de D-glucose.</translation>
        </message>
        <message>
            <source>Free D-glucose, and that of sucrose where the digestion splits it, counts too; the conversion to starch takes it off (Regulation (EEC) No 4154/87).</source>
            <translation>Le D-glucose libre, et celui du saccharose si l’hydrolyse le scinde, comptent aussi ; la conversion en amidon les déduit (règlement (CEE) n° 4154/87).</translation>
        </message>
        <message>
            <source>Amyloglucosidase holds some D-glucose of its own: digest a blank with every series.</source>
            <translation>L’amyloglucosidase contient elle-même un peu de D-glucose : hydrolysez un blanc avec chaque série.</translation>
        </message>
        <message>
            <source>By the starch, or its breakdown products, expected: above 70 % weigh 0.35 to 0.4 g, 20 to 70 % at most 0.5 g, 5 to 20 % at most 1 g, below 5 % at most 2 g; make up to 500, 500, 250 and 200 mL (same Regulation). Digest as the Regulation says. Enter mass and flask volume with the sample.</source>
            <translation>Selon l’amidon, ou ses produits de dégradation, attendus : au-dessus de 70 %, pesez 0,35 à 0,4 g, de 20 à 70 % au plus 0,5 g, de 5 à 20 % au plus 1 g, au-dessous de 5 % au plus 2 g ; complétez à 500, 500, 250 et 200 mL (même règlement). Hydrolysez comme l’indique le règlement. Saisissez avec l’échantillon la masse et le volume de la fiole.</translation>
        </message>
        <message>
            <source>D-glucose and D-fructose (template)</source>
            <translation>D-glucose et D-fructose (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.18.112, glucose, fructose and sucrose. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Enzymes et stœchiométrie : MEBAK B-590.18.112, glucose, fructose et saccharose. Masses molaires : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9. Absorptivités : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9 ; d’autres tables donnent 3500 à 365 nm pour le NADPH (de mémoire).</translation>
        </message>
        <message>
            <source>Hexokinase phosphorylates both sugars; glucose-6-phosphate dehydrogenase forms one NADPH for each D-glucose (A1 to A2). Phosphoglucose isomerase then turns fructose-6-phosphate over, and one NADPH is formed for each D-fructose (A2 to A3).</source>
            <translation>L’hexokinase phosphoryle les deux sucres ; la glucose-6-phosphate déshydrogénase forme un NADPH par molécule de D-glucose (A1 à A2). La phosphoglucose isomérase convertit ensuite le fructose-6-phosphate, et un NADPH est formé par molécule de D-fructose (A2 à A3).</translation>
        </message>
        <message>
            <source>Buffer pH 7.6</source>
            <translation>Tampon pH 7,6</translation>
        </message>
        <message>
            <source>NADP and ATP solution</source>
            <translation>Solution de NADP et d’ATP</translation>
        </message>
        <message>
            <source>Phosphoglucose isomerase suspension</source>
            <translation>Phosphoglucose isomérase en suspension</translation>
        </message>
        <message>
            <source>D-fructose</source>
            <translation>D-fructose</translation>
        </message>
        <message>
            <source>Fructose-6-phosphate → glucose-6-phosphate (phosphoglucose isomerase)</source>
            <translation>Fructose-6-phosphate → glucose-6-phosphate (phosphoglucose isomérase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose, and one for each D-fructose.</source>
            <translation>Un NADPH formé par molécule de D-glucose, et un par molécule de D-fructose.</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate of the sample counts as D-glucose, fructose-6-phosphate as D-fructose.</source>
            <translation>Le glucose-6-phosphate de l’échantillon compte comme D-glucose, le fructose-6-phosphate comme D-fructose.</translation>
        </message>
        <message>
            <source>A small creep after the end comes from other sugars and enzymes: read at the same time in every tube.</source>
            <translation>Une légère dérive après la fin vient d’autres sucres et d’autres enzymes : lisez tous les tubes après le même temps.</translation>
        </message>
        <message>
            <source>Yeast and its enzymes go on working in an unfiltered sample: filter at once, or heat to 80 °C for 10 min, loosely stoppered.</source>
            <translation>Les levures et leurs enzymes continuent d’agir dans un échantillon non filtré : filtrez aussitôt, ou chauffez à 80 °C pendant 10 min, bouché sans serrer.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, make up with water and filter. Dried fruit and honey: dilute the extract 10 to 50 times. Enter mass and extract volume with the sample.</source>
            <translation>Hachez et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, refroidissez, complétez au trait avec de l’eau et filtrez. Fruits secs et miel : diluez l’extrait 10 à 50 fois. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Glycerol (template)</source>
            <translation>Glycérol (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: MEBAK B-590.58.112, glycerol in beverages. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Enzymes et stœchiométrie : MEBAK B-590.58.112, glycérol dans les boissons. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>Glycerol kinase phosphorylates glycerol with ATP; pyruvate kinase makes the ATP anew from ADP and phosphoenolpyruvate and sets pyruvate free, and lactate dehydrogenase uses one NADH for each. All three go to their end by themselves. The absorbance falls by one NADH for each glycerol.</source>
            <translation>La glycérol kinase phosphoryle le glycérol par l’ATP ; la pyruvate kinase reforme l’ATP à partir d’ADP et de phosphoénolpyruvate et libère du pyruvate, et la lactate déshydrogénase consomme un NADH par molécule de pyruvate. Les trois réactions vont d’elles-mêmes à leur terme. L’absorbance baisse d’un NADH par molécule de glycérol.</translation>
        </message>
        <message>
            <source>Buffer with NADH, ATP and phosphoenolpyruvate</source>
            <translation>Tampon au NADH, ATP et phosphoénolpyruvate</translation>
        </message>
        <message>
            <source>Pyruvate kinase and lactate dehydrogenase suspension</source>
            <translation>Pyruvate kinase et lactate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>Glycerol kinase suspension</source>
            <translation>Glycérol kinase en suspension</translation>
        </message>
        <message>
            <source>Glycerol</source>
            <translation>Glycérol</translation>
        </message>
        <message>
            <source>One NADH used for each glycerol.</source>
            <translation>Un NADH consommé par molécule de glycérol.</translation>
        </message>
        <message>
            <source>Dihydroxyacetone and glyceraldehyde are phosphorylated too.</source>
            <translation>La dihydroxyacétone et le glycéraldéhyde sont phosphorylés aussi.</translation>
        </message>
        <message>
            <source>ADP and pyruvate of the sample and of the reagents are used up before A1 and do not count.</source>
            <translation>L’ADP et le pyruvate de l’échantillon et des réactifs sont consommés avant A1 et ne comptent pas.</translation>
        </message>
        <message>
            <source>Traces of ATPase let the absorbance creep: read at the same time in every tube.</source>
            <translation>Des traces d’ATPase font dériver l’absorbance : lisez tous les tubes après le même temps.</translation>
        </message>
        <message>
            <source>Some enzymes are kept in glycerol: take ammonium sulphate suspensions.</source>
            <translation>Certaines enzymes sont conservées dans le glycérol : prenez des suspensions dans le sulfate d’ammonium.</translation>
        </message>
        <message>
            <source>Take 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Or precipitate with perchloric acid, 1 mol/L, centrifuge and bring to pH 8 with potassium hydroxide; never both in one flask.</source>
            <translation>Prenez 1 à 10 g : introduisez-les dans une fiole jaugée de 100 mL avec environ 60 mL d’eau, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, agitez, filtrez. Ou précipitez par l’acide perchlorique à 1 mol/L, centrifugez et amenez à pH 8 avec de l’hydroxyde de potassium ; jamais les deux dans une même fiole.</translation>
        </message>
        <message>
            <source>L-ascorbic acid at 265 nm (template)</source>
            <translation>Acide L-ascorbique à 265 nm (modèle)</translation>
        </message>
        <message>
            <source>L-ascorbate itself absorbs at 265 nm, dehydroascorbate does not. Ascorbate oxidase takes all of it to dehydroascorbate with the oxygen dissolved in the tube; the reaction goes to its end by itself. The absorbance falls by one L-ascorbate for each L-ascorbic acid. Needs quartz cuvettes or plastic ones for the ultraviolet.</source>
            <translation>Le L-ascorbate absorbe lui-même à 265 nm, le déshydroascorbate non. L’ascorbate oxydase le transforme entièrement en déshydroascorbate avec l’oxygène dissous dans le tube ; la réaction va d’elle-même à son terme. L’absorbance baisse d’un L-ascorbate par molécule d’acide L-ascorbique. Demande des cuves en quartz, ou en plastique pour l’ultraviolet.</translation>
        </message>
        <message>
            <source>Buffer pH 6 with EDTA</source>
            <translation>Tampon pH 6 à l’EDTA</translation>
        </message>
        <message>
            <source>Ascorbate oxidase solution</source>
            <translation>Ascorbate oxydase en solution</translation>
        </message>
        <message>
            <source>L-ascorbic acid</source>
            <translation>Acide L-ascorbique</translation>
        </message>
        <message>
            <source>2 L-ascorbic acid + O2 → 2 dehydroascorbic acid + 2 H2O (ascorbate oxidase)</source>
            <translation>2 acide L-ascorbique + O2 → 2 acide déshydroascorbique + 2 H2O (ascorbate oxydase)</translation>
        </message>
        <message>
            <source>One L-ascorbate lost for each L-ascorbic acid.</source>
            <translation>Un L-ascorbate perdu par molécule d’acide L-ascorbique.</translation>
        </message>
        <message>
            <source>D-Isoascorbic acid (erythorbic acid) reacts too, more slowly.</source>
            <translation>L’acide D-isoascorbique (acide érythorbique) réagit aussi, plus lentement.</translation>
        </message>
        <message>
            <source>Polyphenols, proteins and preservatives absorb at 265 nm: dilute until A1 stays below 2.</source>
            <translation>Les polyphénols, les protéines et les conservateurs absorbent à 265 nm : diluez jusqu’à ce que A1 reste au-dessous de 2.</translation>
        </message>
        <message>
            <source>The enzyme absorbs at 265 nm itself: every series needs blanks.</source>
            <translation>L’enzyme absorbe elle-même à 265 nm : chaque série demande des blancs.</translation>
        </message>
        <message>
            <source>Dehydroascorbic acid does not count unless it was reduced before.</source>
            <translation>L’acide déshydroascorbique ne compte que s’il a été réduit auparavant.</translation>
        </message>
        <message>
            <source>L-ascorbic acid oxidises in minutes in a dilute neutral solution: dilute with metaphosphoric acid, 15 g/L, keep dark and cold, and pipette within the hour.</source>
            <translation>L’acide L-ascorbique s’oxyde en quelques minutes en solution neutre diluée : diluez avec de l’acide métaphosphorique à 15 g/L, gardez à l’obscurité et au froid, et pipetez dans l’heure.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, as far as the range allows; give the sample a blank of its own. PVPP takes some of the ascorbic acid away: check with a spiked sample.</source>
            <translation>Diluez avec de l’acide métaphosphorique à 15 g/L autant que le domaine le permet ; prévoyez un blanc échantillon. La PVPP enlève une partie de l’acide ascorbique : vérifiez par un ajout dosé.</translation>
        </message>
        <message>
            <source>Dilute with metaphosphoric acid, 15 g/L, then centrifuge or filter at once.</source>
            <translation>Diluez avec de l’acide métaphosphorique à 15 g/L, puis centrifugez ou filtrez aussitôt.</translation>
        </message>
        <message>
            <source>Stir in the cold under cover until no more gas comes, then dilute with metaphosphoric acid, 15 g/L.</source>
            <translation>Agitez à froid et à couvert jusqu’à ce qu’il ne se dégage plus de gaz, puis diluez avec de l’acide métaphosphorique à 15 g/L.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL, stand in ice for 20 min and filter cold. Don't extract hot.</source>
            <translation>Homogénéisez 5 g à froid avec de l’acide métaphosphorique à 15 g/L, complétez à 100 mL, laissez 20 min dans la glace et filtrez à froid. N’extrayez pas à chaud.</translation>
        </message>
        <message>
            <source>Homogenise 5 g in the cold with metaphosphoric acid, 50 g/L, which precipitates protein too, make up to 100 mL, filter and dilute.</source>
            <translation>Homogénéisez 5 g à froid avec de l’acide métaphosphorique à 50 g/L, qui précipite aussi les protéines, complétez à 100 mL, filtrez et diluez.</translation>
        </message>
        <message>
            <source>Mince frozen, homogenise 5 g in the cold with metaphosphoric acid, 15 g/L, make up to 100 mL and filter at once; don't extract hot. Enter mass and extract volume with the sample.</source>
            <translation>Hachez l’échantillon congelé, homogénéisez-en 5 g à froid avec de l’acide métaphosphorique à 15 g/L, complétez à 100 mL et filtrez aussitôt ; n’extrayez pas à chaud. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>L-glutamic acid at 492 nm (template)</source>
            <translation>Acide L-glutamique à 492 nm (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Absorptivity of the formazan of INT: French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Absorptivité du formazan de l’INT : arrêté français du 7 octobre 1987 (ECOC8700071A), annexe X, D-sorbitol.</translation>
        </message>
        <message>
            <source>Glutamate dehydrogenase turns L-glutamate and NAD into 2-oxoglutarate, ammonium and NADH. That equilibrium lies on the side of glutamate; diaphorase pulls it over by passing the hydrogen on to the tetrazolium salt INT, one formazan for each L-glutamate. The absorbance at 492 nm rises.</source>
            <translation>La glutamate déshydrogénase transforme le L-glutamate et le NAD en 2-oxoglutarate, ammonium et NADH. Cet équilibre est en faveur du glutamate ; la diaphorase le déplace en transmettant l’hydrogène au sel de tétrazolium INT, un formazan par molécule de L-glutamate. L’absorbance à 492 nm monte.</translation>
        </message>
        <message>
            <source>Buffer pH 8.6 with detergent</source>
            <translation>Tampon pH 8,6 au détergent</translation>
        </message>
        <message>
            <source>NAD and diaphorase solution</source>
            <translation>Solution de NAD et de diaphorase</translation>
        </message>
        <message>
            <source>INT solution</source>
            <translation>Solution d’INT</translation>
        </message>
        <message>
            <source>L-glutamic acid</source>
            <translation>Acide L-glutamique</translation>
        </message>
        <message>
            <source>One formazan formed for each L-glutamate.</source>
            <translation>Un formazan formé par molécule de L-glutamate.</translation>
        </message>
        <message>
            <source>Ascorbic acid, sulphite, thiols and other reducing substances reduce INT: wait until A1 stands, or oxidise them first with hydrogen peroxide in alkali and destroy the rest with catalase.</source>
            <translation>L’acide ascorbique, le sulfite, les thiols et d’autres substances réductrices réduisent l’INT : attendez que A1 soit stable, ou oxydez-les d’abord par le peroxyde d’hydrogène en milieu alcalin et détruisez l’excès par la catalase.</translation>
        </message>
        <message>
            <source>L-Glutamine and L-aspartate do not react.</source>
            <translation>La L-glutamine et le L-aspartate ne réagissent pas.</translation>
        </message>
        <message>
            <source>Light reduces INT: keep the tubes in the dark.</source>
            <translation>La lumière réduit l’INT : gardez les tubes à l’obscurité.</translation>
        </message>
        <message>
            <source>Dilute as far as the range allows and give the sample a blank of its own. Strongly coloured: stir 10 mL with 0.2 g of polyvinylpolypyrrolidone (PVPP) for a minute, then filter; no charcoal.</source>
            <translation>Diluez autant que le domaine le permet et prévoyez un blanc échantillon. Fortement coloré : agitez 10 mL avec 0,2 g de polyvinylpolypyrrolidone (PVPP) pendant une minute, puis filtrez ; pas de charbon.</translation>
        </message>
        <message>
            <source>L-lactic acid (template)</source>
            <translation>Acide L-lactique (modèle)</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase turns L-lactate and NAD into pyruvate and NADH. That equilibrium lies on the side of lactate; the alkaline buffer and the transaminase, which takes the pyruvate away with L-glutamate, pull it over. One NADH for each L-lactate; the absorbance rises.</source>
            <translation>La L-lactate déshydrogénase transforme le L-lactate et le NAD en pyruvate et NADH. Cet équilibre est en faveur du lactate ; le tampon alcalin et la transaminase, qui enlève le pyruvate avec le L-glutamate, le déplacent. Un NADH par molécule de L-lactate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>L-lactate dehydrogenase suspension</source>
            <translation>L-lactate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>L-lactic acid</source>
            <translation>Acide L-lactique</translation>
        </message>
        <message>
            <source>One NADH formed for each L-lactate.</source>
            <translation>Un NADH formé par molécule de L-lactate.</translation>
        </message>
        <message>
            <source>D-lactate does not react. L-2-hydroxybutyrate is taken slowly.</source>
            <translation>Le D-lactate ne réagit pas. Le L-2-hydroxybutyrate réagit lentement.</translation>
        </message>
        <message>
            <source>L-malic acid (template)</source>
            <translation>Acide L-malique (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Stoichiometry: OIV-MA-AS313-11, L-malic acid. Molar mass: OIV resolution OENO 30/2004. Absorptivities: Russian standard for citric acid in juices, document 1200102279, section 8.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Stœchiométrie : OIV-MA-AS313-11, acide L-malique. Masse molaire : résolution OIV OENO 30/2004. Absorptivités : norme russe pour l’acide citrique dans les jus, document 1200102279, section 8.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the alkaline buffer and the transaminase, which takes the oxaloacetate away with L-glutamate, pull it over. One NADH for each L-malate; the absorbance rises.</source>
            <translation>La L-malate déshydrogénase transforme le L-malate et le NAD en oxaloacétate et NADH. Cet équilibre est en faveur du malate ; le tampon alcalin et la transaminase, qui enlève l’oxaloacétate avec le L-glutamate, le déplacent. Un NADH par molécule de L-malate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>Glutamate-oxaloacetate transaminase suspension</source>
            <translation>Glutamate-oxaloacétate transaminase en suspension</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase suspension</source>
            <translation>L-malate déshydrogénase en suspension</translation>
        </message>
        <message>
            <source>L-malic acid</source>
            <translation>Acide L-malique</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (glutamate-oxaloacetate transaminase)</source>
            <translation>Oxaloacétate + L-glutamate → L-aspartate + 2-oxoglutarate (glutamate-oxaloacétate transaminase)</translation>
        </message>
        <message>
            <source>One NADH formed for each L-malate.</source>
            <translation>Un NADH formé par molécule de L-malate.</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate, citrate and aspartate do not react.</source>
            <translation>L’enzyme ne prend que le L-malate : le D-malate, le lactate, le tartrate, le citrate et l’aspartate ne réagissent pas.</translation>
        </message>
        <message>
            <source>Much tannin slows the enzymes; treat the sample with PVPP and wait until the absorbance stands.</source>
            <translation>Une forte teneur en tanins ralentit les enzymes ; traitez l’échantillon à la PVPP et attendez que l’absorbance soit stable.</translation>
        </message>
        <message>
            <source>L-malic acid in wine</source>
            <translation>Acide L-malique dans le vin</translation>
        </message>
        <message>
            <source>OIV-MA-AS313-11 (R2009), L-malic acid, enzymatic method, sections 3.3 to 5 (French text): volumes of buffer, NAD, water, GOT and sample, the first reading after about 3 min, and the range of 30 to 350 mg/L in the pipetted solution, below it up to 1 mL of sample. Molar mass: OIV resolution OENO 30/2004. From memory: the 0.01 mL of L-malate dehydrogenase, the second reading after 5 to 10 min, the difference A2 - A1 less that of the blank, the identity of the absorptivities (6180, 6300 and 3400 L/(mol cm), as in the Russian standard for citric acid in juices, document 1200102279, section 8). The signal window is that range in absorbance at 340 nm, by our own arithmetic. Common practice, no source: the waiting limits around the stated times, the absorbance limit, the acceptance limits, the loss of the standard, the usual number of tubes, the typical range, interferences, sample preparation and cautions where they name no source.</source>
            <translation>OIV-MA-AS313-11 (R2009), acide L-malique, méthode enzymatique, sections 3.3 à 5 (texte français) : volumes de tampon, de NAD, d’eau, de GOT et d’échantillon, première lecture après environ 3 min, et domaine de 30 à 350 mg/L dans la solution pipetée et, en dessous, jusqu’à 1 mL d’échantillon. Masse molaire : résolution OIV OENO 30/2004. De mémoire : les 0,01 mL de L-malate déshydrogénase, la seconde lecture après 5 à 10 min, la différence A2 − A1 diminuée de celle du blanc, l’identité des absorptivités (6180, 6300 et 3400 L/(mol cm), comme dans la norme russe pour l’acide citrique dans les jus, document 1200102279, section 8). La fenêtre de mesure est ce domaine exprimé en absorbance à 340 nm, par notre propre calcul. Usage courant, sans source : les limites des attentes autour des temps indiqués, la limite d’absorbance, les limites d’acceptation, la perte de l’étalon, le nombre usuel de tubes, le domaine habituel, les interférences, la préparation des échantillons et les précautions, lorsqu’elles ne nomment pas de source.</translation>
        </message>
        <message>
            <source>L-malate dehydrogenase turns L-malate and NAD into oxaloacetate and NADH. That equilibrium lies on the side of malate; the transaminase GOT pulls it over by taking the oxaloacetate away with L-glutamate. One NADH for each L-malate; the absorbance rises.</source>
            <translation>La L-malate déshydrogénase transforme le L-malate et le NAD en oxaloacétate et NADH. Cet équilibre est en faveur du malate ; la transaminase GOT le déplace en enlevant l’oxaloacétate avec le L-glutamate. Un NADH par molécule de L-malate ; l’absorbance monte.</translation>
        </message>
        <message>
            <source>GOT suspension</source>
            <translation>GOT en suspension</translation>
        </message>
        <message>
            <source>Oxaloacetate + L-glutamate → L-aspartate + 2-oxoglutarate (GOT)</source>
            <translation>Oxaloacétate + L-glutamate → L-aspartate + 2-oxoglutarate (GOT)</translation>
        </message>
        <message>
            <source>The enzyme takes L-malate alone: D-malate, lactate, tartrate and citrate do not react.</source>
            <translation>L’enzyme ne prend que le L-malate : le D-malate, le lactate, le tartrate et le citrate ne réagissent pas.</translation>
        </message>
        <message>
            <source>Lactose (template)</source>
            <translation>Lactose (modèle)</translation>
        </message>
        <message>
            <source>Hexokinase and glucose-6-phosphate dehydrogenase first use up the free D-glucose (before A1). Beta-galactosidase then splits lactose, and one NADPH is formed for each D-glucose set free, one for each lactose. The phosphorylation takes the reaction to its end. The absorbance rises. Results are anhydrous lactose; times 360.31 / 342.30 gives the monohydrate.</source>
            <translation>L’hexokinase et la glucose-6-phosphate déshydrogénase consomment d’abord le D-glucose libre (avant A1). La bêta-galactosidase scinde ensuite le lactose, et un NADPH est formé par molécule de D-glucose libérée, soit un par molécule de lactose. La phosphorylation mène la réaction à son terme. L’absorbance monte. Les résultats sont en lactose anhydre ; multipliés par 360,31 / 342,30, ils donnent le monohydrate.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with magnesium</source>
            <translation>Tampon pH 7,5 au magnésium</translation>
        </message>
        <message>
            <source>Beta-galactosidase suspension</source>
            <translation>Bêta-galactosidase en suspension</translation>
        </message>
        <message>
            <source>Lactose, anhydrous</source>
            <translation>Lactose anhydre</translation>
        </message>
        <message>
            <source>Lactose + H2O → D-galactose + D-glucose (beta-galactosidase)</source>
            <translation>Lactose + H2O → D-galactose + D-glucose (bêta-galactosidase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each lactose.</source>
            <translation>Un NADPH formé par molécule de lactose.</translation>
        </message>
        <message>
            <source>Lactulose gives fructose instead of glucose and does not count; other beta-galactosides with glucose are taken slowly.</source>
            <translation>Le lactulose donne du fructose au lieu de glucose et ne compte pas ; d’autres bêta-galactosides du glucose réagissent lentement.</translation>
        </message>
        <message>
            <source>Much free D-glucose raises A1 and uses NADP up: dilute until A1 stays below 1, or remove the glucose first.</source>
            <translation>Beaucoup de D-glucose libre élève A1 et épuise le NADP : diluez jusqu’à ce que A1 reste au-dessous de 1, ou éliminez d’abord le glucose.</translation>
        </message>
        <message>
            <source>The enzyme splits a little sucrose or maltose where it is impure: try a solution of either.</source>
            <translation>Une enzyme impure scinde un peu de saccharose ou de maltose : essayez une solution de l’un ou de l’autre.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; whey is diluted 50 to 100 times.</source>
            <translation>Pipetez tel quel, ou dilué à l’eau pour entrer dans le domaine de la méthode ; le lactosérum se dilue 50 à 100 fois.</translation>
        </message>
        <message>
            <source>Cream, cheese, chocolate: weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min, cool, clarify as a protein-rich sample, make up, stand in ice for 20 min and filter cold: the fat stays behind.</source>
            <translation>Crème, fromage, chocolat : pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min, refroidissez, clarifiez comme un échantillon riche en protéines, complétez au trait, laissez 20 min dans la glace et filtrez à froid : la matière grasse est retenue.</translation>
        </message>
        <message>
            <source>Milk and milk products, 1 to 10 g: bring it into a 100 mL volumetric flask with about 60 mL of water, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, shake, filter. Dilute the filtrate into the range.</source>
            <translation>Lait et produits laitiers, 1 à 10 g : introduisez-les dans une fiole jaugée de 100 mL avec environ 60 mL d’eau, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, agitez, filtrez. Diluez le filtrat pour entrer dans le domaine.</translation>
        </message>
        <message>
            <source>Nitrate (template)</source>
            <translation>Nitrate (modèle)</translation>
        </message>
        <message>
            <source>Nitrate reductase reduces nitrate to nitrite with one NADPH for each nitrate; FAD helps. The reaction goes to its end by itself. The absorbance falls.</source>
            <translation>La nitrate réductase réduit le nitrate en nitrite, avec un NADPH par molécule de nitrate ; le FAD y aide. La réaction va d’elle-même à son terme. L’absorbance baisse.</translation>
        </message>
        <message>
            <source>Buffer pH 7.5 with FAD</source>
            <translation>Tampon pH 7,5 au FAD</translation>
        </message>
        <message>
            <source>NADPH solution</source>
            <translation>Solution de NADPH</translation>
        </message>
        <message>
            <source>Nitrate reductase solution</source>
            <translation>Nitrate réductase en solution</translation>
        </message>
        <message>
            <source>Nitrate</source>
            <translation>Nitrate</translation>
        </message>
        <message>
            <source>One NADPH used for each nitrate.</source>
            <translation>Un NADPH consommé par molécule de nitrate.</translation>
        </message>
        <message>
            <source>Nitrite does not react. Chlorate is reduced too.</source>
            <translation>Le nitrite ne réagit pas. Le chlorate est réduit aussi.</translation>
        </message>
        <message>
            <source>The enzyme uses NADPH slowly without nitrate: run blanks in every series, read at the same time in every tube, or read a series and extrapolate.</source>
            <translation>L’enzyme consomme lentement du NADPH même sans nitrate : passez des blancs dans chaque série, lisez tous les tubes après le même temps, ou lisez une suite et extrapolez.</translation>
        </message>
        <message>
            <source>Glassware and filters rinsed with nitric acid or tap water hold nitrate.</source>
            <translation>La verrerie et les filtres rincés à l’acide nitrique ou à l’eau du robinet retiennent du nitrate.</translation>
        </message>
        <message>
            <source>Centrifuge, or filter through a washed filter: paper may hold nitrate. Throw the first millilitres away.</source>
            <translation>Centrifugez, ou filtrez sur un filtre lavé : le papier peut contenir du nitrate. Rejetez les premiers millilitres.</translation>
        </message>
        <message>
            <source>Vegetables, meat: mince, weigh 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 80 °C for 15 min, which also stops the sample's own enzymes, cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Légumes, viande : hachez, pesez 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 80 °C pendant 15 min, ce qui arrête aussi les enzymes de l’échantillon, refroidissez, complétez au trait avec de l’eau et filtrez. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Sucrose by difference after inversion (template)</source>
            <translation>Saccharose par différence après inversion (modèle)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory except those named here. Enzymes and stoichiometry: TCVN 10697:2015 (EN 12146:1996), sucrose in juices. Molar masses: Russian standard for sucrose and glucose in foods, document 1200111376, section 9. Absorptivities: Russian standard for sucrose and glucose in foods, document 1200111376, section 9; other lists give 3500 at 365 nm for NADPH (from memory).</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire, sauf celles nommées ici. Enzymes et stœchiométrie : TCVN 10697:2015 (EN 12146:1996), saccharose dans les jus. Masses molaires : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9. Absorptivités : norme russe pour le saccharose et le glucose dans les aliments, document 1200111376, section 9 ; d’autres tables donnent 3500 à 365 nm pour le NADPH (de mémoire).</translation>
        </message>
        <message>
            <source>Beta-fructosidase splits sucrose into D-glucose and D-fructose at pH 4.6. The buffer of pH 7.6 then ends the inversion, and hexokinase and glucose-6-phosphate dehydrogenase form one NADPH for each D-glucose, that of the sucrose and that which was free. Sucrose is the difference from the free D-glucose, which the method D-glucose and D-fructose measures in the same sample, times 342.3 / 180.16. The absorbance rises.</source>
            <translation>La bêta-fructosidase scinde le saccharose en D-glucose et D-fructose à pH 4,6. Le tampon de pH 7,6 arrête ensuite l’inversion, et l’hexokinase et la glucose-6-phosphate déshydrogénase forment un NADPH par molécule de D-glucose, celui du saccharose et celui qui était libre. Le saccharose est la différence avec le D-glucose libre, que la méthode D-glucose et D-fructose mesure dans le même échantillon, multipliée par 342,3 / 180,16. L’absorbance monte.</translation>
        </message>
        <message>
            <source>Beta-fructosidase in buffer pH 4.6</source>
            <translation>Bêta-fructosidase en tampon pH 4,6</translation>
        </message>
        <message>
            <source>D-glucose after inversion</source>
            <translation>D-glucose après inversion</translation>
        </message>
        <message>
            <source>Sucrose</source>
            <translation>Saccharose</translation>
        </message>
        <message>
            <source>Sucrose + H2O → D-glucose + D-fructose (beta-fructosidase)</source>
            <translation>Saccharose + H2O → D-glucose + D-fructose (bêta-fructosidase)</translation>
        </message>
        <message>
            <source>One NADPH formed for each D-glucose: one for each sucrose.</source>
            <translation>Un NADPH formé par molécule de D-glucose : un par molécule de saccharose.</translation>
        </message>
        <message>
            <source>Beta-fructosidase also splits raffinose, kestoses and short inulins; of these, kestoses and inulins that end in glucose set glucose free.</source>
            <translation>La bêta-fructosidase scinde aussi le raffinose, les kestoses et les inulines courtes ; parmi eux, les kestoses et les inulines terminés par un glucose en libèrent.</translation>
        </message>
        <message>
            <source>Much free D-glucose makes the difference uncertain: sucrose below 5 g/L beside much glucose cannot be measured accurately (EN 12146:1996).</source>
            <translation>Beaucoup de D-glucose libre rend la différence incertaine : au-dessous de 5 g/L à côté de beaucoup de glucose, le saccharose ne peut pas être mesuré avec exactitude (EN 12146:1996).</translation>
        </message>
        <message>
            <source>A sample of its own acid or buffer holds the pH away from 4.6: dilute or neutralise.</source>
            <translation>L’acide ou le tampon propres à l’échantillon écartent le pH de 4,6 : diluez ou neutralisez.</translation>
        </message>
        <message>
            <source>Pipette as it is, or diluted with water into the range of the method; take the same dilution for the free D-glucose where both fit. Bring strongly acid juices to pH 4 to 7 at once: sucrose inverts in acid.</source>
            <translation>Pipetez tel quel, ou dilué à l’eau pour entrer dans le domaine de la méthode ; prenez la même dilution pour le D-glucose libre si elle convient aux deux. Amenez aussitôt les jus très acides à un pH de 4 à 7 : le saccharose s’hydrolyse en milieu acide.</translation>
        </message>
        <message>
            <source>Stir or shake in a half-filled flask until no more gas comes, without warming: sucrose inverts in warm acid. Filter.</source>
            <translation>Agitez ou secouez dans une fiole à moitié remplie jusqu’à ce qu’il ne se dégage plus de gaz, sans chauffer : le saccharose s’hydrolyse en milieu acide chaud. Filtrez.</translation>
        </message>
        <message>
            <source>Mince and mix, weigh 1 to 5 g into a 100 mL volumetric flask, extract with 60 mL of water at 60 °C for 20 min (acid fruit: neutralise first), cool, make up with water and filter. Enter mass and extract volume with the sample.</source>
            <translation>Hachez et mélangez, pesez 1 à 5 g dans une fiole jaugée de 100 mL, extrayez avec 60 mL d’eau à 60 °C pendant 20 min (fruits acides : neutralisez d’abord), refroidissez, complétez au trait avec de l’eau et filtrez. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Total sulphite (template)</source>
            <translation>Sulfite total (modèle)</translation>
        </message>
        <message>
            <source>Sulphite oxidase turns sulphite into sulphate and hydrogen peroxide; NADH peroxidase uses the peroxide up together with one NADH for each sulphite. The absorbance falls. Bound sulphite is set free by the alkaline buffer. The oxidation needs the oxygen dissolved in the tube, and both steps go to their end by themselves.</source>
            <translation>La sulfite oxydase transforme le sulfite en sulfate et peroxyde d’hydrogène ; la NADH peroxydase consomme ce peroxyde avec un NADH par molécule de sulfite. L’absorbance baisse. Le sulfite combiné est libéré par le tampon alcalin. L’oxydation demande l’oxygène dissous dans le tube, et les deux étapes vont d’elles-mêmes à leur terme.</translation>
        </message>
        <message>
            <source>Buffer pH 8</source>
            <translation>Tampon pH 8</translation>
        </message>
        <message>
            <source>Total sulphite as SO2</source>
            <translation>Sulfite total en SO2</translation>
        </message>
        <message>
            <source>Bound sulphite as SO2</source>
            <translation>Sulfite combiné en SO2</translation>
        </message>
        <message>
            <source>Sulphite bound to carbonyl compounds reacts and counts (EN 1988-2:1998, scope).</source>
            <translation>Le sulfite combiné aux composés carbonylés réagit et compte (EN 1988-2:1998, domaine d’application).</translation>
        </message>
        <message>
            <source>Pipette from a full, closed vessel, without shaking air in. Dilute with water right before pipetting.</source>
            <translation>Pipetez d’un récipient plein et fermé, sans y faire entrer d’air. Diluez à l’eau juste avant de pipeter.</translation>
        </message>
        <message>
            <source>Let it settle, or centrifuge in a full, closed tube; suction filtration draws sulphur dioxide off.</source>
            <translation>Laissez décanter, ou centrifugez en tube plein et fermé ; la filtration sous vide entraîne du dioxyde de soufre.</translation>
        </message>
        <message>
            <source>Neither heat nor acidify, and don't shake: sulphur dioxide goes with the gas. Pour slowly into a beaker and stir gently in the cold until the bubbles are few, or bring to pH 8 with sodium hydroxide first, then degas.</source>
            <translation>Ne chauffez pas, n’acidifiez pas et ne secouez pas : le dioxyde de soufre part avec le gaz. Versez lentement dans un bécher et agitez doucement à froid jusqu’à ce que les bulles soient rares, ou amenez d’abord à pH 8 avec de l’hydroxyde de sodium, puis dégazez.</translation>
        </message>
        <message>
            <source>Shake 5 g with water at pH 8 in a closed 100 mL flask at 60 °C for 5 min, cool closed, make up, chill in ice and filter cold.</source>
            <translation>Agitez 5 g avec de l’eau à pH 8 en fiole fermée de 100 mL à 60 °C pendant 5 min, refroidissez sans déboucher, complétez au trait, refroidissez dans la glace et filtrez à froid.</translation>
        </message>
        <message>
            <source>Take 5 to 10 g: bring into a 100 mL volumetric flask with 60 mL of water, bring to pH 8, then add, mixing after each, 5 mL of potassium hexacyanoferrate(II) solution (3.6 g of the trihydrate in 100 mL), 5 mL of zinc sulphate solution (7.2 g of the heptahydrate in 100 mL) and 10 mL of sodium hydroxide, 0.1 mol/L; make up, filter, use at once. Acid deproteinisation drives sulphur dioxide off.</source>
            <translation>Prenez 5 à 10 g : introduisez-les dans une fiole jaugée de 100 mL avec 60 mL d’eau, amenez à pH 8, puis ajoutez, en mélangeant après chaque ajout, 5 mL de solution d’hexacyanoferrate(II) de potassium (3,6 g du trihydrate dans 100 mL), 5 mL de solution de sulfate de zinc (7,2 g de l’heptahydrate dans 100 mL) et 10 mL d’hydroxyde de sodium à 0,1 mol/L ; complétez au trait, filtrez, employez aussitôt. La déprotéinisation acide chasse le dioxyde de soufre.</translation>
        </message>
        <message>
            <source>Dried fruit, potato products, 1 to 5 g: mince in the cold, shake with 60 mL of water of pH 8 in a closed 100 mL flask at 60 °C for 15 min, cool closed, make up with water and filter through a covered funnel; use at once. Enter mass and extract volume with the sample.</source>
            <translation>Fruits secs, produits de pomme de terre, 1 à 5 g : hachez à froid, agitez avec 60 mL d’eau à pH 8 en fiole fermée de 100 mL à 60 °C pendant 15 min, refroidissez sans déboucher, complétez au trait avec de l’eau et filtrez sur un entonnoir couvert ; employez aussitôt. Saisissez avec l’échantillon la masse et le volume d’extrait.</translation>
        </message>
        <message>
            <source>Acetaldehyde + NAD⁺ + H2O → acetate + NADH + 2 H⁺ (aldehyde dehydrogenase)</source>
            <translation>Acétaldéhyde + NAD⁺ + H2O → acétate + NADH + 2 H⁺ (aldéhyde déshydrogénase)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ ⇌ oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-malate + NAD⁺ ⇌ oxaloacétate + NADH + H⁺ (L-malate déshydrogénase)</translation>
        </message>
        <message>
            <source>Acetyl-CoA + oxaloacetate + H2O → citrate + CoA + H⁺ (citrate synthase)</source>
            <translation>Acétyl-CoA + oxaloacétate + H2O → citrate + CoA + H⁺ (citrate synthase)</translation>
        </message>
        <message>
            <source>NH4⁺ + 2-oxoglutarate + NADH + H⁺ → L-glutamate + NAD⁺ + H2O (glutamate dehydrogenase)</source>
            <translation>NH4⁺ + 2-oxoglutarate + NADH + H⁺ → L-glutamate + NAD⁺ + H2O (glutamate déshydrogénase)</translation>
        </message>
        <message>
            <source>Oxaloacetate + NADH + H⁺ → L-malate + NAD⁺ (L-malate dehydrogenase)</source>
            <translation>Oxaloacétate + NADH + H⁺ → L-malate + NAD⁺ (L-malate déshydrogénase)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase), for oxaloacetate that has lost carbon dioxide</source>
            <translation>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate déshydrogénase), pour l’oxaloacétate qui a perdu du dioxyde de carbone</translation>
        </message>
        <message>
            <source>D-gluconate + ATP → 6-phosphogluconate + ADP + H⁺ (gluconate kinase)</source>
            <translation>D-gluconate + ATP → 6-phosphogluconate + ADP + H⁺ (gluconate kinase)</translation>
        </message>
        <message>
            <source>6-Phosphogluconate + NADP⁺ → ribulose-5-phosphate + CO2 + NADPH (6-phosphogluconate dehydrogenase)</source>
            <translation>6-phosphogluconate + NADP⁺ → ribulose-5-phosphate + CO2 + NADPH (6-phosphogluconate déshydrogénase)</translation>
        </message>
        <message>
            <source>D-lactate + NAD⁺ → pyruvate + NADH + H⁺ (D-lactate dehydrogenase)</source>
            <translation>D-lactate + NAD⁺ → pyruvate + NADH + H⁺ (D-lactate déshydrogénase)</translation>
        </message>
        <message>
            <source>D-malate + NAD⁺ → pyruvate + CO2 + NADH (D-malate dehydrogenase, decarboxylating)</source>
            <translation>D-malate + NAD⁺ → pyruvate + CO2 + NADH (D-malate déshydrogénase décarboxylante)</translation>
        </message>
        <message>
            <source>D-sorbitol + NAD⁺ → D-fructose + NADH + H⁺ (sorbitol dehydrogenase)</source>
            <translation>D-sorbitol + NAD⁺ → D-fructose + NADH + H⁺ (sorbitol déshydrogénase)</translation>
        </message>
        <message>
            <source>NADH + INT⁺ → NAD⁺ + formazan (diaphorase)</source>
            <translation>NADH + INT⁺ → NAD⁺ + formazan (diaphorase)</translation>
        </message>
        <message>
            <source>Ethanol + NAD⁺ → acetaldehyde + NADH + H⁺ (alcohol dehydrogenase)</source>
            <translation>Éthanol + NAD⁺ → acétaldéhyde + NADH + H⁺ (alcool déshydrogénase)</translation>
        </message>
        <message>
            <source>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH peroxidase)</source>
            <translation>H2O2 + NADH + H⁺ → 2 H2O + NAD⁺ (NADH peroxydase)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺ (hexokinase)</translation>
        </message>
        <message>
            <source>Glucose-6-phosphate + NADP⁺ + H2O → 6-phosphogluconate + NADPH + 2 H⁺ (glucose-6-phosphate dehydrogenase)</source>
            <translation>Glucose-6-phosphate + NADP⁺ + H2O → 6-phosphogluconate + NADPH + 2 H⁺ (glucose-6-phosphate déshydrogénase)</translation>
        </message>
        <message>
            <source>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺; D-fructose + ATP → fructose-6-phosphate + ADP + H⁺ (hexokinase)</source>
            <translation>D-glucose + ATP → glucose-6-phosphate + ADP + H⁺ ; D-fructose + ATP → fructose-6-phosphate + ADP + H⁺ (hexokinase)</translation>
        </message>
        <message>
            <source>Glycerol + ATP → glycerol-3-phosphate + ADP + H⁺ (glycerol kinase)</source>
            <translation>Glycérol + ATP → glycérol-3-phosphate + ADP + H⁺ (glycérol kinase)</translation>
        </message>
        <message>
            <source>ADP + phosphoenolpyruvate + H⁺ → ATP + pyruvate (pyruvate kinase)</source>
            <translation>ADP + phosphoénolpyruvate + H⁺ → ATP + pyruvate (pyruvate kinase)</translation>
        </message>
        <message>
            <source>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate dehydrogenase)</source>
            <translation>Pyruvate + NADH + H⁺ → L-lactate + NAD⁺ (L-lactate déshydrogénase)</translation>
        </message>
        <message>
            <source>Template: set the volumes of your reagent supplier. Common practice, no published source; all values from memory.</source>
            <translation>Modèle : mettez les volumes de votre fournisseur de réactifs. Usage courant, sans source publiée ; toutes les valeurs sont de mémoire.</translation>
        </message>
        <message>
            <source>The absorptivity of L-ascorbate at 265 nm and pH 6 to 7 stands in lists from 14000 to 16500 L/(mol cm): calibrate against a standard of the day.</source>
            <translation>L’absorptivité du L-ascorbate à 265 nm et à un pH de 6 à 7 va, selon les tables, de 14000 à 16500 L/(mol cm) : étalonnez avec un étalon du jour.</translation>
        </message>
        <message>
            <source>L-glutamate + NAD⁺ + H2O → 2-oxoglutarate + NH4⁺ + NADH + H⁺ (glutamate dehydrogenase)</source>
            <translation>L-glutamate + NAD⁺ + H2O → 2-oxoglutarate + NH4⁺ + NADH + H⁺ (glutamate déshydrogénase)</translation>
        </message>
        <message>
            <source>L-lactate + NAD⁺ → pyruvate + NADH + H⁺ (L-lactate dehydrogenase)</source>
            <translation>L-lactate + NAD⁺ → pyruvate + NADH + H⁺ (L-lactate déshydrogénase)</translation>
        </message>
        <message>
            <source>L-malate + NAD⁺ → oxaloacetate + NADH + H⁺ (L-malate dehydrogenase)</source>
            <translation>L-malate + NAD⁺ → oxaloacétate + NADH + H⁺ (L-malate déshydrogénase)</translation>
        </message>
        <message>
            <source>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (nitrate reductase)</source>
            <translation>NO3⁻ + NADPH + H⁺ → NO2⁻ + NADP⁺ + H2O (nitrate réductase)</translation>
        </message>
    </context>
    <context>
        <name>plateau::exchange::TextPlace</name>
        <message>
            <source>line %1, column %2</source>
            <translation>ligne %1, colonne %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::notebook</name>
        <message>
            <source>The tubes were not added, since one of them comes with readings or marks: add it as it is planned, and do the rest at the bench.</source>
            <translation>Les tubes n’ont pas été ajoutés, car l’un d’eux a déjà des lectures ou des marques : ajoutez-le tel qu’il est prévu, et faites le reste à la paillasse.</translation>
        </message>
        <message>
            <source>The tubes were not added: the plan tells of sample %1, which is not among the new ones.</source>
            <translation>Les tubes n’ont pas été ajoutés : le plan parle de l’échantillon %1, qui n’est pas parmi les nouveaux.</translation>
        </message>
        <message>
            <source>The tubes were not added: %1: %2.</source>
            <translation>Les tubes n’ont pas été ajoutés : %1 : %2.</translation>
        </message>
        <message>
            <source>tubes %1</source>
            <translation>tubes %1</translation>
        </message>
        <message>
            <source>; samples %1</source>
            <translation> ; échantillons %1</translation>
        </message>
        <message>
            <source>Nothing was stored, since no tube is named: choose at least one.</source>
            <translation>Rien n’a été enregistré, car aucun tube n’est nommé : choisissez-en au moins un.</translation>
        </message>
        <message>
            <source>The notebook has nothing of %1, so no archive of it was made; choose a year in which something was done.</source>
            <translation>Le cahier n’a rien de %1, aucune archive n’en a donc été faite ; choisissez une année où quelque chose a été fait.</translation>
        </message>
        <message>
            <source>The archive did not come out whole and was taken away again; nothing was changed in the notebook %1: verify it, and see that the disk has room.</source>
            <translation>L’archive n’est pas sortie intacte et a été supprimée ; rien n’a été changé dans le cahier %1 : vérifiez-le, et veillez à ce que le disque ait de la place.</translation>
        </message>
        <message>
            <source>The disk failed at the end of the last step in the notebook %1, so it is not sure that it is kept: see that the disk is sound, open the notebook again, and look before doing the step again.</source>
            <translation>Le disque a échoué à la fin de la dernière opération dans le cahier %1, il n’est donc pas sûr qu’elle soit gardée : assurez-vous que le disque est en bon état, rouvrez le cahier, et regardez avant de refaire l’opération.</translation>
        </message>
        <message>
            <source>tube %1, %2</source>
            <translation>tube %1, %2</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>acceptée</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejetée</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>la série</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>à la paillasse</translation>
        </message>
        <message>
            <source>audit entry %1</source>
            <translation>entrée d’audit %1</translation>
        </message>
        <message>
            <source>is missing, but what it covers is there</source>
            <translation>manque, alors que ce qu’elle couvre est là</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>manque</translation>
        </message>
        <message>
            <source>does not continue the entry before it</source>
            <translation>ne prolonge pas l’entrée qui la précède</translation>
        </message>
        <message>
            <source>is not as it was written</source>
            <translation>n’est pas telle qu’elle a été écrite</translation>
        </message>
        <message>
            <source>covers a record it did not cover when it was written</source>
            <translation>couvre un enregistrement qu’elle ne couvrait pas lorsqu’elle a été écrite</translation>
        </message>
        <message>
            <source>is gone, but audit entry %1 covers it</source>
            <translation>a disparu, alors que l’entrée d’audit %1 le couvre</translation>
        </message>
        <message>
            <source>is covered by no audit entry</source>
            <translation>n’est couvert par aucune entrée d’audit</translation>
        </message>
        <message>
            <source>was changed since audit entry %1</source>
            <translation>a été modifié depuis l’entrée d’audit %1</translation>
        </message>
        <message>
            <source>the audit trail</source>
            <translation>la piste d’audit</translation>
        </message>
        <message>
            <source>Kept are the newest %1 backups, and the last one of each of the latest %2 days and %3 months that have one, and of every year.</source>
            <translation>Sont gardées les %1 sauvegardes les plus récentes, et la dernière de chacun des %2 derniers jours et des %3 derniers mois qui en ont une, ainsi que de chaque année.</translation>
        </message>
        <message>
            <source>No backup was made in %1; the notebook itself is whole and nothing of it is lost: see that the folder is there, may be written to and has room.</source>
            <translation>Aucune sauvegarde n’a été faite dans %1 ; le cahier lui-même est intact et rien n’en est perdu : veillez à ce que le dossier existe, soit ouvert en écriture et ait de la place.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; nothing was made from it.</source>
            <translation>Le fichier %1 n’est pas un cahier Plateau ; rien n’en a été fait.</translation>
        </message>
        <message>
            <source>The backup %1 was written by a newer Plateau; nothing was made from it: use the newer program.</source>
            <translation>La sauvegarde %1 a été écrite par un Plateau plus récent ; rien n’en a été fait : employez le programme plus récent.</translation>
        </message>
        <message>
            <source>The folder could not be made.</source>
            <translation>Le dossier n’a pas pu être créé.</translation>
        </message>
        <message>
            <source>Run %1 has no revision %2: choose one of 1 to %3.</source>
            <translation>La série %1 n’a pas de révision %2 : choisissez-en une de 1 à %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: there is no run %1.</source>
            <translation>Rien n’a été enregistré : il n’y a pas de série %1.</translation>
        </message>
        <message>
            <source>%1, %2 %3: %4</source>
            <translation>%1, %2 %3 : %4</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: %1</source>
            <translation>Les réglages de la carte n’ont pas été enregistrés : %1</translation>
        </message>
        <message>
            <source>The settings of the chart were not stored: there is no run %1.</source>
            <translation>Les réglages de la carte n’ont pas été enregistrés : il n’y a pas de série %1.</translation>
        </message>
        <message>
            <source>The value was not left out, since that needs a reason: say why.</source>
            <translation>La valeur n’a pas été écartée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is left out already.</source>
            <translation>Rien n’a été enregistré : la valeur de la série %1 est déjà écartée.</translation>
        </message>
        <message>
            <source>The value was not taken back, since that needs a reason: say why.</source>
            <translation>La valeur n’a pas été reprise, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>Nothing was stored: the value of run %1 is not left out.</source>
            <translation>Rien n’a été enregistré : la valeur de la série %1 n’est pas écartée.</translation>
        </message>
        <message>
            <source>The settings of a chart in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Les réglages d’une carte dans le cahier sont endommagés ; revenez à la dernière sauvegarde, ou enregistrez-les à nouveau.</translation>
        </message>
        <message>
            <source>the file</source>
            <translation>le fichier</translation>
        </message>
        <message>
            <source>names a row of %1 that is not there</source>
            <translation>nomme une ligne de %1 qui n’existe pas</translation>
        </message>
        <message>
            <source>is missing from the schema</source>
            <translation>manque dans le schéma</translation>
        </message>
        <message>
            <source>is not as this program makes it</source>
            <translation>n’est pas tel que ce programme le crée</translation>
        </message>
        <message>
            <source>does not belong in a notebook</source>
            <translation>n’a pas sa place dans un cahier</translation>
        </message>
        <message>
            <source>the schema</source>
            <translation>le schéma</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 did not come out whole and was taken away again; see that the disk is sound and has room.</source>
            <translation>La copie du cahier %1 n’est pas sortie intacte et a été supprimée ; veillez à ce que le disque soit en bon état et ait de la place.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing was made from it: choose another backup.</source>
            <translation>Le cahier %1 est endommagé (%2 : %3) ; rien n’en a été fait : choisissez une autre sauvegarde.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened in the way that keeps its records safe; nothing was stored: see that the program's SQLite is the one it was built with.</source>
            <translation>Le cahier %1 n’a pas pu être ouvert de la manière qui protège ses enregistrements ; rien n’a été enregistré : veillez à ce que le SQLite du programme soit celui avec lequel il a été construit.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>Aucune décision n’a été prise sur la série %1 : un réviseur ou un responsable statue ici, et %2 est analyste.</translation>
        </message>
        <message>
            <source>Run %1 was not decided on: nobody reviews their own run here, and %2 worked on it; ask somebody else.</source>
            <translation>Aucune décision n’a été prise sur la série %1 : personne ne revoit ici sa propre série, et %2 y a travaillé ; demandez à quelqu’un d’autre.</translation>
        </message>
        <message>
            <source>The run was not rejected, since that needs a reason: say why.</source>
            <translation>La série n’a pas été rejetée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The run was not accepted: not everything in it passed, so accepting it needs a reason.</source>
            <translation>La série n’a pas été acceptée : tout n’y a pas été satisfaisant, l’accepter demande donc un motif.</translation>
        </message>
        <message>
            <source>The run was not accepted: its reason is blank; leave it out or say why.</source>
            <translation>La série n’a pas été acceptée : son motif est vide ; omettez-le ou indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The run was not reopened, since that needs a reason: say why.</source>
            <translation>La série n’a pas été rouverte, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>Run %1 is on the bench already; nothing was stored.</source>
            <translation>La série %1 est déjà à la paillasse ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Run %1 was not reopened: a reviewer or a head decides here, and %2 is an analyst.</source>
            <translation>La série %1 n’a pas été rouverte : un réviseur ou un responsable statue ici, et %2 est analyste.</translation>
        </message>
        <message>
            <source>Run %1 is accepted and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>La série %1 est acceptée et ne prend aucune modification ; rien n’a été enregistré : rouvrez-la d’abord avec un motif.</translation>
        </message>
        <message>
            <source>Run %1 is rejected and takes no change; nothing was stored: reopen it with a reason first.</source>
            <translation>La série %1 est rejetée et ne prend aucune modification ; rien n’a été enregistré : rouvrez-la d’abord avec un motif.</translation>
        </message>
        <message>
            <source>There is no room left for the notebook %1; nothing of this step was stored: make room on the disk and do it again.</source>
            <translation>Il n’y a plus de place pour le cahier %1 ; rien de cette opération n’a été enregistré : faites de la place sur le disque et refaites-la.</translation>
        </message>
        <message>
            <source>The notebook %1 was left in the middle of a step and has to be opened for writing once, so that the half step is taken back.</source>
            <translation>Le cahier %1 a été quitté au milieu d’une opération et doit être ouvert une fois en écriture, afin que la demi-opération soit annulée.</translation>
        </message>
        <message>
            <source>The notebook %1 may only be read; nothing was stored: allow writing to the file and its folder, or work on a copy.</source>
            <translation>Le cahier %1 ne peut qu’être lu ; rien n’a été enregistré : autorisez l’écriture du fichier et de son dossier, ou travaillez sur une copie.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be opened; nothing was stored: see that its folder is there and may be written to.</source>
            <translation>Le cahier %1 n’a pas pu être ouvert ; rien n’a été enregistré : veillez à ce que son dossier existe et soit ouvert en écriture.</translation>
        </message>
        <message>
            <source>The computer has no memory left to work on the notebook %1; nothing of this step was stored: close other programs and do it again.</source>
            <translation>L’ordinateur n’a plus de mémoire pour travailler sur le cahier %1 ; rien de cette opération n’a été enregistré : fermez d’autres programmes et refaites-la.</translation>
        </message>
        <message>
            <source>The disk did not take what was written to the notebook %1; nothing of this step was stored: see that the disk is there, sound and not full.</source>
            <translation>Le disque n’a pas pris ce qui a été écrit dans le cahier %1 ; rien de cette opération n’a été enregistré : veillez à ce que le disque soit présent, en bon état et non plein.</translation>
        </message>
        <message>
            <source>The notebook %1 is in use by another program; nothing was stored: close it there first.</source>
            <translation>Le cahier %1 est employé par un autre programme ; rien n’a été enregistré : fermez-le d’abord là-bas.</translation>
        </message>
        <message>
            <source>A rule of the notebook %1 forbids this; nothing was stored.</source>
            <translation>Une règle du cahier %1 interdit cela ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The file %1 is not a Plateau notebook; it was left as it is.</source>
            <translation>Le fichier %1 n’est pas un cahier Plateau ; il a été laissé tel quel.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged; nothing was stored: go back to the latest backup and keep this file for a closer look.</source>
            <translation>Le cahier %1 est endommagé ; rien n’a été enregistré : revenez à la dernière sauvegarde et gardez ce fichier pour un examen plus approfondi.</translation>
        </message>
        <message>
            <source>The item was not stored: %1 %2.</source>
            <translation>L’équipement n’a pas été enregistré : %1 %2.</translation>
        </message>
        <message>
            <source>The item was not stored: there is a %1 of the name %2 already; give this one another.</source>
            <translation>L’équipement n’a pas été enregistré : il existe déjà un équipement (%1) du nom %2 ; donnez-en un autre à celui-ci.</translation>
        </message>
        <message>
            <source>The notebook holds no item number %1; nothing was stored: choose one from its list of equipment.</source>
            <translation>Le cahier ne contient pas d’équipement numéro %1 ; rien n’a été enregistré : choisissez-en un dans sa liste d’équipement.</translation>
        </message>
        <message>
            <source>The item stays as it was, since a change needs a reason: say why.</source>
            <translation>L’équipement reste tel qu’il était, car une modification demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The item %1 reads like this already; nothing was stored.</source>
            <translation>L’équipement %1 est déjà ainsi ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The item %1 stays a %2; add another one for what is not.</source>
            <translation>L’équipement %1 reste ce qu’il est (%2) ; ajoutez-en un autre pour ce qui est d’un autre type.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 is out of use; take it into use first.</source>
            <translation>La vérification n’a pas été enregistrée : %1 est hors service ; remettez-le d’abord en service.</translation>
        </message>
        <message>
            <source>The check was not stored: %1 %2.</source>
            <translation>La vérification n’a pas été enregistrée : %1 %2.</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1 : %2, %3</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>échec</translation>
        </message>
        <message>
            <source>The check counts as before, since taking it back needs a reason: say why.</source>
            <translation>La vérification compte comme avant, car son annulation demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The check %1 was taken back already; nothing was stored.</source>
            <translation>La vérification %1 est déjà annulée ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>The notebook holds no check number %1; nothing was stored: choose one from the item's list.</source>
            <translation>Le cahier ne contient pas de vérification numéro %1 ; rien n’a été enregistré : choisissez-en une dans la liste de l’équipement.</translation>
        </message>
        <message>
            <source>The notebook is damaged: its book of equipment does not hold together; go back to the latest backup.</source>
            <translation>Le cahier est endommagé : son registre d’équipement est incohérent ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>The evaluation of run %1 cannot be read, so nothing was exported; have plateau verify list what is wrong with the notebook.</source>
            <translation>L’évaluation de la série %1 ne peut pas être lue, rien n’a donc été exporté ; faites énumérer par plateau verify ce qui ne va pas dans le cahier.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was exported: see that its folder may be written to and has room.</source>
            <translation>Le fichier %1 n’a pas pu être écrit ; rien n’a été exporté : veillez à ce que son dossier soit ouvert en écriture et ait de la place.</translation>
        </message>
        <message>
            <source>The file %1 of the export cannot be read; nothing was imported: see that the folder is whole.</source>
            <translation>Le fichier %1 de l’export ne peut pas être lu ; rien n’a été importé : veillez à ce que le dossier soit intact.</translation>
        </message>
        <message>
            <source>There is something in %1 already and it was left as it is; nothing was exported: choose the name of a new folder.</source>
            <translation>Il y a déjà quelque chose dans %1, laissé tel quel ; rien n’a été exporté : choisissez le nom d’un nouveau dossier.</translation>
        </message>
        <message>
            <source>The folder %1 cannot be made, since the one it is to be in is not there; nothing was exported: make that one or choose another.</source>
            <translation>Le dossier %1 ne peut pas être créé, car celui qui doit le contenir n’existe pas ; rien n’a été exporté : créez-le ou choisissez-en un autre.</translation>
        </message>
        <message>
            <source>The folder %1 could not be made.</source>
            <translation>Le dossier %1 n’a pas pu être créé.</translation>
        </message>
        <message>
            <source>Nothing was exported to %1; the notebook itself is whole and nothing of it is lost: see that the folder may be written to and has room.</source>
            <translation>Rien n’a été exporté vers %1 ; le cahier lui-même est intact et rien n’en est perdu : veillez à ce que le dossier soit ouvert en écriture et ait de la place.</translation>
        </message>
        <message>
            <source>The file %1 is not the manifest of an export of a notebook; nothing was imported: choose the folder that the export made.</source>
            <translation>Le fichier %1 n’est pas le manifeste de l’export d’un cahier ; rien n’a été importé : choisissez le dossier que l’export a créé.</translation>
        </message>
        <message>
            <source>The file %1 could not be written; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>Le fichier %1 n’a pas pu être écrit ; rien n’a été enregistré : veillez à ce que son dossier existe, soit ouvert en écriture et ait de la place.</translation>
        </message>
        <message>
            <source>The file %1 could not be made; nothing was stored: see that its folder is there, may be written to and has room.</source>
            <translation>Le fichier %1 n’a pas pu être créé ; rien n’a été enregistré : veillez à ce que son dossier existe, soit ouvert en écriture et ait de la place.</translation>
        </message>
        <message>
            <source>There is a file %1 already and it was left as it is: choose another name.</source>
            <translation>Il y a déjà un fichier %1, laissé tel quel : choisissez un autre nom.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be made, since its folder is not there: make the folder or choose another.</source>
            <translation>Le cahier %1 ne peut pas être créé, car son dossier n’existe pas : créez le dossier ou choisissez-en un autre.</translation>
        </message>
        <message>
            <source>The file %1 is left over from another notebook of that name; move it away or choose another name.</source>
            <translation>Le fichier %1 reste d’un autre cahier du même nom ; déplacez-le ou choisissez un autre nom.</translation>
        </message>
        <message>
            <source>The file %1 is not as the export wrote it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>Le fichier %1 n’est pas tel que l’export l’a écrit ; rien n’a été importé : prenez l’export là où il a été gardé inchangé.</translation>
        </message>
        <message>
            <source>There is no export of a notebook in %1; nothing was imported: choose the folder that the export made.</source>
            <translation>Il n’y a pas d’export d’un cahier dans %1 ; rien n’a été importé : choisissez le dossier que l’export a créé.</translation>
        </message>
        <message>
            <source>The export %1 is from a newer Plateau (its schema is number %2, this program knows up to %3); nothing was imported: use the newer program.</source>
            <translation>L’export %1 vient d’un Plateau plus récent (son schéma porte le numéro %2, ce programme connaît jusqu’à %3) ; rien n’a été importé : employez le programme plus récent.</translation>
        </message>
        <message>
            <source>the head of its audit trail differs</source>
            <translation>la tête de sa piste d’audit est autre</translation>
        </message>
        <message>
            <source>The export %1 does not give a sound notebook (%2); nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>L’export %1 ne donne pas un cahier intègre (%2) ; rien n’a été importé : prenez l’export là où il a été gardé inchangé.</translation>
        </message>
        <message>
            <source>The file %1 is not a table as an export writes it; nothing was imported: take the export from where it was kept unchanged.</source>
            <translation>Le fichier %1 n’est pas un tableau tel qu’un export l’écrit ; rien n’a été importé : prenez l’export là où il a été gardé inchangé.</translation>
        </message>
        <message>
            <source>Run %1 was changed from outside the program (%2 %3); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>La série %1 a été modifiée de l’extérieur du programme (%2 %3) ; rien n’a été enregistré : faites vérifier le cahier et revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lot %2</translation>
        </message>
        <message>
            <source>the reagent</source>
            <translation>le réactif</translation>
        </message>
        <message>
            <source>the lot</source>
            <translation>le lot</translation>
        </message>
        <message>
            <source>The lot was not stored: %1.</source>
            <translation>Le lot n’a pas été enregistré : %1.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its last good day is not a real date.</source>
            <translation>Le lot %1 n’a pas été enregistré : son dernier jour de validité n’est pas un jour qui existe.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: once opened it keeps for 1 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>Le lot %1 n’a pas été enregistré : une fois ouvert, il se conserve 1 à %2 jours, pas %3 ; omettez-le si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a volume is more than 0 and at most %2 mL, not %3.</source>
            <translation>Rien n’a été enregistré du lot %1 : un volume est supérieur à 0 et au plus de %2 mL, pas %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 has %2 mL left, less than the %3 mL taken; correct what is left first, if that is wrong.</source>
            <translation>Rien n’a été enregistré : il reste %2 mL du lot %1, moins que les %3 mL pris ; corrigez d’abord le reste, s’il est faux.</translation>
        </message>
        <message>
            <source>The lot keeps its label, since another needs a reason: say why.</source>
            <translation>Le lot garde son étiquette, car une autre demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The lot %1 has this label already; nothing was stored.</source>
            <translation>Le lot %1 a déjà cette étiquette ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The lot %1 was opened on %2 already; nothing was stored.</source>
            <translation>Le lot %1 a déjà été ouvert le %2 ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The lot %1 is not noted as opened: the day must be a real date that is not in the future.</source>
            <translation>Le lot %1 n’est pas noté comme ouvert : le jour ne doit être ni à venir, ni inexistant.</translation>
        </message>
        <message>
            <source>Nothing was stored: the note is blank; leave it out or say what for.</source>
            <translation>Rien n’a été enregistré : la note est vide ; omettez-la ou indiquez pour quoi.</translation>
        </message>
        <message>
            <source>Nothing was discarded, since that needs a reason: say why.</source>
            <translation>Rien n’a été éliminé, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The lot was not corrected, since that needs a reason: say why.</source>
            <translation>Le lot n’a pas été corrigé, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The lot %1 was not corrected: what is found in it must lie between 0 and %2 mL, not %3.</source>
            <translation>Le lot %1 n’a pas été corrigé : ce qui s’y trouve doit être compris entre 0 et %2 mL, pas %3.</translation>
        </message>
        <message>
            <source>The lot %1 has %2 mL left already; nothing was stored.</source>
            <translation>Il reste déjà %2 mL du lot %1 ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The notebook holds no lot number %1; nothing was stored: choose one from its list of lots.</source>
            <translation>Le cahier ne contient pas de lot numéro %1 ; rien n’a été enregistré : choisissez-en un dans sa liste de lots.</translation>
        </message>
        <message>
            <source>version %1, %2</source>
            <translation>version %1, %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 methods with the id %2 are in use: %3. Put the whole method here in place of its id, or retire all but one of them</source>
            <translation>%1 méthodes portant l’id %2 sont en usage : %3. Mettez ici la méthode entière à la place de son id, ou désactivez-les toutes sauf une</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>there is no method %1, neither shipped nor in the notebook; correct the id, put the whole method here in place of it, or import the method first</source>
            <translation>il n’y a pas de méthode %1, ni fournie ni dans le cahier ; corrigez l’id, mettez ici la méthode entière à sa place, ou importez d’abord la méthode</translation>
        </message>
        <message>
            <source>the method %1 is not in use; put the whole method here in place of its id, or bring the method into use again</source>
            <translation>la méthode %1 n’est pas en usage ; mettez ici la méthode entière à la place de son id, ou réactivez la méthode</translation>
        </message>
        <message>
            <source>shipped with the program</source>
            <translation>fournie avec le programme</translation>
        </message>
        <message>
            <source>saved by %1 on %2</source>
            <translation>enregistrée par %1 le %2</translation>
        </message>
        <message>
            <source>imported from %1 on %2</source>
            <translation>importée par %1 le %2</translation>
        </message>
        <message>
            <source>on record with its runs</source>
            <translation>conservée avec ses séries</translation>
        </message>
        <message>
            <source>shipped with an earlier program</source>
            <translation>fournie avec un programme antérieur</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>version %1</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already and is retired; reinstate it to use it.</source>
            <translation>Rien n’a été enregistré : %1 a déjà ce contenu et est désactivée ; réactivez-la pour l’employer.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already; a newer version is used for new runs.</source>
            <translation>Rien n’a été enregistré : %1 a déjà ce contenu ; une version plus récente est employée pour les nouvelles séries.</translation>
        </message>
        <message>
            <source>Nothing was stored: %1, has this content already.</source>
            <translation>Rien n’a été enregistré : %1 a déjà ce contenu.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from the one of that id and version that is %2: they differ in %3.</source>
            <translation>%1 : méthode enregistrée et gardée à part de celle de même id et version qui est %2 : elles diffèrent par %3.</translation>
        </message>
        <message>
            <source>%1, is stored and kept apart from %2 others of that id and version: from the one that is %3 it differs in %4.</source>
            <translation>%1 : méthode enregistrée et gardée à part de %2 autres de même id et version : de celle qui est %3, elle diffère par %4.</translation>
        </message>
        <message>
            <source>%1, is stored.</source>
            <translation>%1 : méthode enregistrée.</translation>
        </message>
        <message>
            <source>%1, is stored; a newer version is used for new runs.</source>
            <translation>%1 : méthode enregistrée ; une version plus récente est employée pour les nouvelles séries.</translation>
        </message>
        <message>
            <source>%1 has no version left to give; nothing was stored: give the method another id.</source>
            <translation>%1 n’a plus de version à donner ; rien n’a été enregistré : donnez à la méthode un autre id.</translation>
        </message>
        <message>
            <source>%1, is saved.</source>
            <translation>%1 : méthode enregistrée.</translation>
        </message>
        <message>
            <source>%1, is retired already; nothing was stored.</source>
            <translation>%1 : méthode déjà désactivée ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>%1, is not retired; nothing was stored.</source>
            <translation>%1 : méthode non désactivée ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The method in row %1 of the notebook is damaged, so its runs cannot be worked out; go back to the latest backup.</source>
            <translation>La méthode de la ligne %1 du cahier est endommagée, ses séries ne peuvent donc pas être calculées ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>It would not have been sound afterwards.</source>
            <translation>Il n’aurait plus été intègre ensuite.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be brought to schema %2 (%3) and is as it was before that step; see that the disk has room, and keep the copy made before.</source>
            <translation>Le cahier %1 n’a pas pu être porté au schéma %2 (%3) et est tel qu’il était avant cette étape ; veillez à ce que le disque ait de la place, et gardez la copie faite auparavant.</translation>
        </message>
        <message>
            <source>Nothing was stored: a time in it is not one that exists (in the hour the clocks go forward, say); give a time with its offset from UTC.</source>
            <translation>Rien n’a été enregistré : une heure qui y figure n’existe pas (pendant l’heure où l’on avance les horloges, par exemple) ; donnez une heure avec son décalage sur UTC.</translation>
        </message>
        <message>
            <source>The correction was not stored, since it needs a reason: say why the reading is replaced.</source>
            <translation>La correction n’a pas été enregistrée, car elle demande un motif : indiquez pourquoi la lecture est remplacée.</translation>
        </message>
        <message>
            <source>The method was not stored: %1: %2.</source>
            <translation>La méthode n’a pas été enregistrée : %1 : %2.</translation>
        </message>
        <message>
            <source>The run was not stored: %1: %2.</source>
            <translation>La série n’a pas été enregistrée : %1 : %2.</translation>
        </message>
        <message>
            <source>The plan was not stored: %1: %2.</source>
            <translation>Le plan n’a pas été enregistré : %1 : %2.</translation>
        </message>
        <message>
            <source>Nothing was stored: a clock that was set by 0 s was not set.</source>
            <translation>Rien n’a été enregistré : une horloge réglée de 0 s n’a pas été réglée.</translation>
        </message>
        <message>
            <source>The limits were not stored: %1: %2.</source>
            <translation>Les limites n’ont pas été enregistrées : %1 : %2.</translation>
        </message>
        <message>
            <source>The limits were not stored, since that needs a reason: say why.</source>
            <translation>Les limites n’ont pas été enregistrées, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The laboratory's settings were not stored: %1: %2.</source>
            <translation>Les réglages du laboratoire n’ont pas été enregistrés : %1 : %2.</translation>
        </message>
        <message>
            <source>The method was not stored: its note is blank; leave it out or say what changed.</source>
            <translation>La méthode n’a pas été enregistrée : sa note est vide ; omettez-la ou indiquez ce qui a changé.</translation>
        </message>
        <message>
            <source>The method was not retired: %1: %2.</source>
            <translation>La méthode n’a pas été désactivée : %1 : %2.</translation>
        </message>
        <message>
            <source>The method was not retired, since that needs a reason: say why.</source>
            <translation>La méthode n’a pas été désactivée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The method was not reinstated, since that needs a reason: say why.</source>
            <translation>La méthode n’a pas été réactivée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>There is no notebook %1; see that the name is right.</source>
            <translation>Il n’y a pas de cahier %1 ; assurez-vous que le nom est exact.</translation>
        </message>
        <message>
            <source>%1 is not a file, so it cannot be a notebook.</source>
            <translation>%1 n’est pas un fichier, ce ne peut donc pas être un cahier.</translation>
        </message>
        <message>
            <source>The notebook %1 was written by a newer Plateau (its schema is number %2, this program knows up to %3); it was left as it is: open it with the newer program.</source>
            <translation>Le cahier %1 a été écrit par un Plateau plus récent (son schéma porte le numéro %2, ce programme connaît jusqu’à %3) ; il a été laissé tel quel : ouvrez-le avec le programme plus récent.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged: it states no schema; go back to the latest backup.</source>
            <translation>Le cahier %1 est endommagé : il n’indique pas de schéma ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>The notebook %1 is damaged (%2: %3); nothing is written to it: go back to the latest backup, and have plateau verify list all that is wrong with this file.</source>
            <translation>Le cahier %1 est endommagé (%2 : %3) ; rien n’y est écrit : revenez à la dernière sauvegarde, et faites énumérer par plateau verify tout ce qui ne va pas dans ce fichier.</translation>
        </message>
        <message>
            <source>The notebook %1 is of an older schema: open it in the window once, which brings it up to date after making a copy.</source>
            <translation>Le cahier %1 est d’un schéma plus ancien : ouvrez-le une fois dans la fenêtre, ce qui le met à jour après en avoir fait une copie.</translation>
        </message>
        <message>
            <source>The notebook %1 could not be made; nothing was stored: see that the disk is sound and has room.</source>
            <translation>Le cahier %1 n’a pas pu être créé ; rien n’a été enregistré : veillez à ce que le disque soit en bon état et ait de la place.</translation>
        </message>
        <message>
            <source>The notebook %1 is open for reading only; nothing was stored.</source>
            <translation>Le cahier %1 est ouvert en lecture seule ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Passphrases cannot be used, since the library for them does not start; nothing was stored: reinstall libsodium.</source>
            <translation>Les phrases de passe sont inutilisables, car la bibliothèque qui les gère ne démarre pas ; rien n’a été enregistré : réinstallez libsodium.</translation>
        </message>
        <message>
            <source>The passphrase was not stored, since there is not enough memory: close other programs and try again.</source>
            <translation>La phrase de passe n’a pas été enregistrée, car la mémoire ne suffit pas : fermez d’autres programmes et réessayez.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the passphrase cannot be used: %1.</source>
            <translation>Rien n’a été enregistré, car la phrase de passe ne peut pas être employée : %1.</translation>
        </message>
        <message>
            <source>Nothing was stored, since somebody has or had the name %1: give this person another one, with a second given name, say.</source>
            <translation>Rien n’a été enregistré, car quelqu’un porte ou a porté le nom %1 : donnez-en un autre à cette personne, avec un second prénom, par exemple.</translation>
        </message>
        <message>
            <source>The list of people was changed from outside the program (%1); nothing was stored: have the notebook verified and go back to the latest backup.</source>
            <translation>La liste des personnes a été modifiée de l’extérieur du programme (%1) ; rien n’a été enregistré : faites vérifier le cahier et revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>it is blank; several words that only you would put together make a good one</source>
            <translation>elle est vide ; plusieurs mots que vous seul réuniriez en font une bonne</translation>
        </message>
        <message>
            <source>it has %1 characters; at least %2 are needed, such as several words make</source>
            <translation>elle compte %1 caractères ; il en faut au moins %2, comme en donnent plusieurs mots</translation>
        </message>
        <message>
            <source>it has %1 characters; at most %2 are allowed</source>
            <translation>elle compte %1 caractères ; %2 au plus sont permis</translation>
        </message>
        <message>
            <source>People are set up already; nothing was stored: a head adds further ones.</source>
            <translation>Les personnes sont déjà définies ; rien n’a été enregistré : un responsable en ajoute d’autres.</translation>
        </message>
        <message>
            <source>%1 has this name and this role already; nothing was stored.</source>
            <translation>%1 a déjà ce nom et ce rôle ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>%1 stays head, since there is no other one; nothing was stored: make somebody else a head first.</source>
            <translation>%1 reste responsable, car il n’y en a pas d’autre ; rien n’a été enregistré : nommez d’abord quelqu’un d’autre responsable.</translation>
        </message>
        <message>
            <source>The passphrase was not changed: only its owner or a head may, and %1 is neither.</source>
            <translation>La phrase de passe n’a pas été changée : seuls son titulaire ou un responsable le peuvent, et %1 n’est ni l’un ni l’autre.</translation>
        </message>
        <message>
            <source>The person was not retired, since that needs a reason: say why.</source>
            <translation>La personne n’a pas été désactivée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>%1 is retired already; nothing was stored.</source>
            <translation>%1 : personne déjà désactivée ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>%1 was not retired, since there is no other head; nothing was stored: make somebody else a head first.</source>
            <translation>%1 n’a pas été désactivé, car il n’y a pas d’autre responsable ; rien n’a été enregistré : nommez d’abord quelqu’un d’autre responsable.</translation>
        </message>
        <message>
            <source>The person was not reinstated, since that needs a reason: say why.</source>
            <translation>La personne n’a pas été réactivée, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>%1 is not retired; nothing was stored.</source>
            <translation>%1 : personne non désactivée ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Nobody by the name of %1 is set up; nothing was stored: choose somebody from the list, or have a head add them.</source>
            <translation>Aucune personne du nom %1 n’est définie ; rien n’a été enregistré : choisissez-en une dans la liste, ou faites-la ajouter par un responsable.</translation>
        </message>
        <message>
            <source>%1 is retired and signs nothing; nothing was stored: choose another person, or have a head reinstate them.</source>
            <translation>%1 : personne désactivée, qui ne signe rien ; rien n’a été enregistré : choisissez une autre personne, ou faites-la réactiver par un responsable.</translation>
        </message>
        <message>
            <source>Nothing was stored, since it needs the passphrase of %1: type it.</source>
            <translation>Rien n’a été enregistré, car il faut la phrase de passe de %1 : tapez-la.</translation>
        </message>
        <message>
            <source>This is not the passphrase of %1; nothing was stored except the attempt: type it again.</source>
            <translation>Ce n’est pas la phrase de passe de %1 ; rien n’a été enregistré, sauf l’essai : tapez-la à nouveau.</translation>
        </message>
        <message>
            <source>The passphrase was not tried, since the last %1 were wrong: wait %2 s, then type it again, or ask a head for another one.</source>
            <translation>La phrase de passe n’a pas été essayée, car les %1 dernières étaient fausses : attendez %2 s, puis tapez-la à nouveau, ou demandez-en une autre à un responsable.</translation>
        </message>
        <message>
            <source>Nothing was stored: only a head keeps the list of people, and %1 is not one.</source>
            <translation>Rien n’a été enregistré : seul un responsable tient la liste des personnes, et %1 ne l’est pas.</translation>
        </message>
        <message>
            <source>The notebook holds no person number %1; nothing was stored: choose one from its list.</source>
            <translation>Le cahier ne contient pas de personne numéro %1 ; rien n’a été enregistré : choisissez-en une dans sa liste.</translation>
        </message>
        <message>
            <source>%1: tubes %2</source>
            <translation>%1 : tubes %2</translation>
        </message>
        <message>
            <source>%1 of tube %2 is not ticked; nothing was stored.</source>
            <translation>%1 du tube %2 n’est pas coché ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Tube %1 gets no %2%3; nothing was stored.</source>
            <translation>Le tube %1 ne reçoit pas %2%3 ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source> for a spike</source>
            <translation> pour un ajout dosé</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the volume that went in must lie between 0 and %2 mL, not %3.</source>
            <translation>Le tube %1 n’a pas été coché : le volume introduit doit être compris entre 0 et %2 mL, pas %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the pipette %2 cannot be used: %3.</source>
            <translation>Le tube %1 n’a pas été coché, car la pipette %2 ne peut pas être employée : %3.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked, since the note cannot be used: %2.</source>
            <translation>Le tube %1 n’a pas été coché, car la note ne peut pas être employée : %2.</translation>
        </message>
        <message>
            <source>%1 of tube %2 is ticked already; nothing was stored.</source>
            <translation>%1 du tube %2 est déjà coché ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: what it gets there is a sample or a standard, which comes from no lot; leave the lot out.</source>
            <translation>Le tube %1 n’a pas été coché : ce qu’il y reçoit est un échantillon ou un étalon, qui ne vient d’aucun lot ; omettez le lot.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: the lot %2 is of %3, not of %4; choose a lot of that reagent.</source>
            <translation>Le tube %1 n’a pas été coché : le lot %2 est du réactif %3, pas du réactif %4 ; choisissez un lot de ce réactif.</translation>
        </message>
        <message>
            <source>Tube %1 was not ticked: %2.</source>
            <translation>Le tube %1 n’a pas été coché : %2.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt already; nothing was stored.</source>
            <translation>Le tube %1 est déjà marqué comme inutilisable ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Tube %1 is not marked as spoilt; nothing was stored.</source>
            <translation>Le tube %1 n’est pas marqué comme inutilisable ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>tube %1</source>
            <translation>tube %1</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since that needs a reason: say why.</source>
            <translation>Le tube n’a pas été marqué comme inutilisable, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The tube was not marked as spoilt, since the reason cannot be used: %1.</source>
            <translation>Le tube n’a pas été marqué comme inutilisable, car le motif ne peut pas être employé : %1.</translation>
        </message>
        <message>
            <source>The tube still counts as spoilt, since taking that back needs a reason: say why.</source>
            <translation>Le tube compte toujours comme inutilisable, car revenir là-dessus demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The plan was not stored: run %1, which it says to repeat, holds no sample %2; choose the run that does.</source>
            <translation>Le plan n’a pas été enregistré : la série %1, qu’il dit répéter, ne contient pas d’échantillon %2 ; choisissez la série qui le contient.</translation>
        </message>
        <message>
            <source>The reading was not stored: a keyed reading has no line it came in; name another origin or leave the line out.</source>
            <translation>La lecture n’a pas été enregistrée : ce qui est saisi n’a pas de ligne d’origine ; nommez une autre provenance ou omettez la ligne.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the name of its source cannot be used: %1.</source>
            <translation>La lecture n’a pas été enregistrée, car le nom de sa source ne peut pas être employé : %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in cannot be kept: %1.</source>
            <translation>La lecture n’a pas été enregistrée, car sa ligne d’origine ne peut pas être gardée : %1.</translation>
        </message>
        <message>
            <source>The reading was not stored, since the line it came in has more than %1 characters: shorten it.</source>
            <translation>La lecture n’a pas été enregistrée, car sa ligne d’origine dépasse %1 caractères : raccourcissez-la.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 to correct; nothing was stored: add it instead.</source>
            <translation>Le tube %1 n’a pas de lecture %2 à corriger ; rien n’a été enregistré : ajoutez-la plutôt.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3 is ticked there already, so what is read now is no longer part of that series.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée : %3 y est déjà coché, ce qui est lu maintenant n’appartient donc plus à cette suite.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when %3 went in, and a series counts its minutes from there.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée comme lecture supplémentaire : on ne sait pas quand %3 a été introduit, et une suite compte ses minutes à partir de là.</translation>
        </message>
        <message>
            <source>Reading %1 was not stored as one more: tick %3 of tube %2 first, since a series counts its minutes from there.</source>
            <translation>La lecture %1 n’a pas été enregistrée comme lecture supplémentaire : cochez d’abord %3 du tube %2, car une suite compte ses minutes à partir de là.</translation>
        </message>
        <message>
            <source>Tube %1 has a reading %2 already; nothing was stored: correct it, with a reason.</source>
            <translation>Le tube %1 a déjà une lecture %2 ; rien n’a été enregistré : corrigez-la, avec un motif.</translation>
        </message>
        <message>
            <source>Tube %1 has no reading %2 yet; nothing was stored: add it first.</source>
            <translation>Le tube %1 n’a pas encore de lecture %2 ; rien n’a été enregistré : ajoutez-la d’abord.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: %3.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée : %3.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since it needs a reason: say why.</source>
            <translation>Le résultat à rapporter n’a pas été enregistré, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored, since none is named: choose one.</source>
            <translation>Le résultat à rapporter n’a pas été enregistré, car aucun n’est nommé : choisissez-en un.</translation>
        </message>
        <message>
            <source>The choice of the reported result was not stored: a reviewer or a head decides here, and %1 is an analyst.</source>
            <translation>Le résultat à rapporter n’a pas été enregistré : un réviseur ou un responsable statue ici, et %1 est analyste.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since one of them is only known to be below or above a bound: choose another rule.</source>
            <translation>Il n’y a pas de moyenne des résultats acceptés, car de l’un d’eux on sait seulement qu’il est au-dessous ou au-dessus d’une borne : choisissez une autre règle.</translation>
        </message>
        <message>
            <source>There is no mean of the accepted results, since they are not all in one unit: choose another rule.</source>
            <translation>Il n’y a pas de moyenne des résultats acceptés, car ils ne sont pas tous dans la même unité : choisissez une autre règle.</translation>
        </message>
        <message>
            <source>The result that was named, of run %1 at revision %2, is no longer accepted: choose again.</source>
            <translation>Le résultat qui avait été nommé, de la série %1 à la révision %2, n’est plus accepté : choisissez à nouveau.</translation>
        </message>
        <message>
            <source>No result of this sample is accepted yet.</source>
            <translation>Aucun résultat de cet échantillon n’est encore accepté.</translation>
        </message>
        <message>
            <source>The evaluation that run %1 was decided on is damaged: have the notebook verified and go back to the latest backup.</source>
            <translation>L’évaluation qui a servi à la décision sur la série %1 est endommagée : faites vérifier le cahier et revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>The notebook holds no run %1: choose one from its list of runs.</source>
            <translation>Le cahier ne contient pas de série %1 : choisissez-en une dans sa liste de séries.</translation>
        </message>
        <message>
            <source>Run %1 has no tube %2; nothing was stored.</source>
            <translation>La série %1 n’a pas de tube %2 ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 of a rejected run cannot be accepted; accept the run and reject the other samples.</source>
            <translation>Aucune décision n’a été prise sur la série : l’échantillon %1 d’une série rejetée ne peut pas être accepté ; acceptez la série et rejetez les autres échantillons.</translation>
        </message>
        <message>
            <source>The run was not decided on, since rejecting the sample %1 needs a reason: say why.</source>
            <translation>Aucune décision n’a été prise sur la série, car rejeter l’échantillon %1 demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The run was not decided on: the reason for the sample %1 is blank; leave it out or say why.</source>
            <translation>Aucune décision n’a été prise sur la série : le motif pour l’échantillon %1 est vide ; omettez-le ou indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The run was not decided on: there is advice on repeating the sample %1, but it is not to be repeated; leave the advice out.</source>
            <translation>Aucune décision n’a été prise sur la série : la façon de répéter l’échantillon %1 est conseillée, alors qu’il n’est pas à répéter ; omettez le conseil.</translation>
        </message>
        <message>
            <source>The run was not decided on: the sample %1 cannot be repeated as advised; give dilution steps from less to more volume, or how much sample to take.</source>
            <translation>Aucune décision n’a été prise sur la série : l’échantillon %1 ne peut pas être répété comme conseillé ; donnez des étapes de dilution d’un volume moindre à un volume plus grand, ou la prise d’échantillon.</translation>
        </message>
        <message>
            <source>The run was not decided on: it holds no sample %1; remove its decision.</source>
            <translation>Aucune décision n’a été prise sur la série : elle ne contient pas d’échantillon %1 ; enlevez sa décision.</translation>
        </message>
        <message>
            <source>The run was not decided on: there are two decisions on the sample %1; remove one.</source>
            <translation>Aucune décision n’a été prise sur la série : l’échantillon %1 a deux décisions ; enlevez-en une.</translation>
        </message>
        <message>
            <source>the search</source>
            <translation>la recherche</translation>
        </message>
        <message>
            <source>The sample %1 was not stored: %2: %3.</source>
            <translation>L’échantillon %1 n’a pas été enregistré : %2 : %3.</translation>
        </message>
        <message>
            <source>The sample %1 was withdrawn; nothing was stored: register it again.</source>
            <translation>L’échantillon %1 a été retiré ; rien n’a été enregistré : inscrivez-le à nouveau.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no sample is named: name at least one.</source>
            <translation>Rien n’a été enregistré, car aucun échantillon n’est nommé : nommez-en au moins un.</translation>
        </message>
        <message>
            <source>The sample %1 keeps its id, since a run holds it by that; nothing was stored.</source>
            <translation>L’échantillon %1 garde son id, car une série le contient sous cet id ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The sample was not withdrawn, since that needs a reason: say why.</source>
            <translation>L’échantillon n’a pas été retiré, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The repeat still waits, since doing without it needs a reason: say why.</source>
            <translation>La répétition attend toujours, car y renoncer demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>Run %1 has no repeat of the sample %2 waiting; nothing was stored.</source>
            <translation>La série %1 n’a pas de répétition de l’échantillon %2 en attente ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The limits in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Les limites dans le cahier sont endommagées ; revenez à la dernière sauvegarde, ou enregistrez-les à nouveau.</translation>
        </message>
        <message>
            <source>The substance was not stored: %1 %2.</source>
            <translation>La substance n’a pas été enregistrée : %1 %2.</translation>
        </message>
        <message>
            <source>The notebook holds no substance number %1; nothing was stored: choose one from its list.</source>
            <translation>Le cahier ne contient pas de substance numéro %1 ; rien n’a été enregistré : choisissez-en une dans sa liste.</translation>
        </message>
        <message>
            <source>The notebook holds no preparation number %1; nothing was stored: choose one from its list of standards.</source>
            <translation>Le cahier ne contient pas de préparation numéro %1 ; rien n’a été enregistré : choisissez-en une dans sa liste d’étalons.</translation>
        </message>
        <message>
            <source>The substance stays as it was, since a change needs a reason: say why.</source>
            <translation>La substance reste telle qu’elle était, car une modification demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The substance %1 reads like this already; nothing was stored.</source>
            <translation>La substance %1 est déjà ainsi ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The standard was not stored: %1 %2.</source>
            <translation>L’étalon n’a pas été enregistré : %1 %2.</translation>
        </message>
        <message>
            <source>The standard was not stored: the name %1 is taken by one made on %2; give this one another, since runs tell them apart by it.</source>
            <translation>L’étalon n’a pas été enregistré : le nom %1 est pris par un étalon préparé le %2 ; donnez-en un autre à celui-ci, car les séries les distinguent par là.</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>The standard was not thrown away, since that needs a reason: say why.</source>
            <translation>L’étalon n’a pas été jeté, car cela demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>The standard %1 was thrown away already; nothing was stored.</source>
            <translation>L’étalon %1 a déjà été jeté ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The notebook is damaged: a standard was made of a substance it does not hold; go back to the latest backup.</source>
            <translation>Le cahier est endommagé : un étalon a été préparé d’une substance qu’il ne contient pas ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>Nothing was stored: one of the numbers is not finite; give a number.</source>
            <translation>Rien n’a été enregistré : l’un des nombres n’est pas fini ; donnez un nombre.</translation>
        </message>
        <message>
            <source>A text holds the character U+%1, which cannot be kept; nothing was stored: type the text again without it.</source>
            <translation>Un texte contient le caractère U+%1, qui ne peut pas être gardé ; rien n’a été enregistré : tapez le texte à nouveau sans lui.</translation>
        </message>
        <message>
            <source>Nothing was stored, since no person is named: say who does this.</source>
            <translation>Rien n’a été enregistré, car aucune personne n’est nommée : indiquez qui fait cela.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the name %1 cannot be used: %2.</source>
            <translation>Rien n’a été enregistré, car le nom %1 ne peut pas être employé : %2.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the reason cannot be used: %1.</source>
            <translation>Rien n’a été enregistré, car le motif ne peut pas être employé : %1.</translation>
        </message>
        <message>
            <source>decision %1 on run %2</source>
            <translation>décision %1 sur la série %2</translation>
        </message>
        <message>
            <source>run %1</source>
            <translation>série %1</translation>
        </message>
        <message>
            <source>what was reviewed is not what is stored now</source>
            <translation>ce qui a été revu n’est pas ce qui est enregistré maintenant</translation>
        </message>
        <message>
            <source>evaluated again, it gives another result: %1 was %2, is %3</source>
            <translation>évaluée à nouveau, elle donne un autre résultat : %1 était %2, est %3</translation>
        </message>
        <message>
            <source>the document</source>
            <translation>le document</translation>
        </message>
        <message>
            <source>evaluated again, it gives another answer to whether it is acceptable</source>
            <translation>évaluée à nouveau, elle donne une autre réponse à la question de savoir si elle est acceptable</translation>
        </message>
        <message>
            <source> (decided with version %1, verified with %2)</source>
            <translation> (décidé avec la version %1, vérifié avec %2)</translation>
        </message>
        <message>
            <source>the list of runs</source>
            <translation>la liste des séries</translation>
        </message>
        <message>
            <source>The notebook is damaged: it holds the word "%1" where none of its own words is; go back to the latest backup.</source>
            <translation>Le cahier est endommagé : il contient le mot « %1 » là où aucun de ses propres mots ne figure ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>The notebook is damaged: details of a sample are gone; go back to the latest backup.</source>
            <translation>Le cahier est endommagé : ce qui était indiqué d’un échantillon est perdu ; revenez à la dernière sauvegarde.</translation>
        </message>
        <message>
            <source>The laboratory's settings in the notebook are damaged; go back to the latest backup, or save them again.</source>
            <translation>Les réglages du laboratoire dans le cahier sont endommagés ; revenez à la dernière sauvegarde ou enregistrez-les à nouveau.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: it is not known when the one before was read, so the two make no series.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée comme lecture supplémentaire : on ne sait pas quand la précédente a été faite, les deux ne forment donc pas une suite.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored as one more: the one before was read before %3 was ticked, so the two make no series.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée comme lecture supplémentaire : la précédente a été faite avant que %3 soit coché, les deux ne forment donc pas une suite.</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 was not stored: nothing was added before it, from which the minutes of a series could count.</source>
            <translation>La lecture %1 du tube %2 n’a pas été enregistrée : rien n’a été ajouté avant elle à partir de quoi compter les minutes d’une suite.</translation>
        </message>
        <message>
            <source>The notebook %1 was removed, moved or replaced while it was open; nothing of this step was stored: put the file back where it was, or close the program and open the notebook where it is now.</source>
            <translation>Le cahier %1 a été retiré, déplacé ou remplacé pendant qu’il était ouvert ; rien de cette opération n’a été enregistré : remettez le fichier où il était, ou fermez le programme et ouvrez le cahier là où il est maintenant.</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1 ; %2</translation>
        </message>
        <message>
            <source>on %1</source>
            <translation>le %1</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>dans %1</translation>
        </message>
        <message>
            <source>aliquots: %1, of %2 each</source>
            <translation>aliquotes : %1, de %2 chacune</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>de %1</translation>
        </message>
        <message>
            <source>from %1, keeps as stored: %2 days</source>
            <translation>de %1, conservation ainsi : %2 jours</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was opened on %2, so that this cannot have been on %3.</source>
            <translation>Rien n’a été enregistré : le lot %1 a été ouvert le %2, cela ne peut donc pas avoir été le %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 was dissolved on %2 already; correct what is left, if the volume is wrong.</source>
            <translation>Rien n’a été enregistré : le lot %1 a déjà été dissous le %2 ; corrigez le reste si le volume est faux.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not in the book as dry; receive it as dry to note how it is dissolved.</source>
            <translation>Rien n’a été enregistré : le lot %1 n’est pas noté comme sec ; réceptionnez-le sec pour noter comment il est dissous.</translation>
        </message>
        <message>
            <source>%1, aliquot %2</source>
            <translation>%1, aliquote %2</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is divided into 1 to %2 aliquots, not %3.</source>
            <translation>Rien n’a été enregistré : le lot %1 se divise en 1 à %2 aliquotes, pas %3.</translation>
        </message>
        <message>
            <source>Nothing was stored: say in what the lot %1 is dissolved.</source>
            <translation>Rien n’a été enregistré : indiquez dans quoi le lot %1 est dissous.</translation>
        </message>
        <message>
            <source>as it was dissolved</source>
            <translation>tel que dissous</translation>
        </message>
        <message>
            <source>Nothing was stored: %1 is an aliquot itself and is not divided further.</source>
            <translation>Rien n’a été enregistré : %1 est déjà une aliquote et ne se divise plus.</translation>
        </message>
        <message>
            <source>%1: %2 aliquots</source>
            <translation>%1 : %2 aliquotes</translation>
        </message>
        <message>
            <source>The lot %1 is there already (%2); nothing was stored.</source>
            <translation>Le lot %1 y est déjà (%2) ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Nothing was stored, since the note is blank: say what is to be kept.</source>
            <translation>Rien n’a été enregistré, car la note est vide : indiquez ce qu’il faut garder.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: it keeps for 0 to %2 days, not %3; leave it out where none is stated.</source>
            <translation>Rien n’a été enregistré du lot %1 : il se conserve 0 à %2 jours, pas %3 ; omettez-le si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the day must be a real date that is not in the future.</source>
            <translation>Rien n’a été enregistré du lot %1 : le jour ne doit être ni à venir, ni inexistant.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is dry; note first in how much it was dissolved.</source>
            <translation>Rien n’a été enregistré : le lot %1 est sec ; notez d’abord dans combien il a été dissous.</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>l’emplacement</translation>
        </message>
        <message>
            <source>Nothing was stored: %1.</source>
            <translation>Rien n’a été enregistré : %1.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: a place has %2 to %3 °C, not %4.</source>
            <translation>Rien n’a été enregistré pour le lot %1 : un emplacement a %2 à %3 °C, pas %4.</translation>
        </message>
        <message>
            <source>Nothing was stored for the lot %1: the place cannot be at least %2 and at most %3 °C; give the lower one first.</source>
            <translation>Rien n’a été enregistré pour le lot %1 : l’emplacement ne peut pas avoir au moins %2 et au plus %3 °C ; donnez d’abord la température la plus basse.</translation>
        </message>
        <message>
            <source>The lot %1 was not stored: its mass is more than 0 and at most %2 mg, not %3; leave it out where the label says none.</source>
            <translation>Le lot %1 n’a pas été enregistré : sa masse est supérieure à 0 et d’au plus %2 mg, pas %3 ; omettez-la si l’étiquette n’en dit rien.</translation>
        </message>
        <message>
            <source>The copy of the notebook %1 is damaged (%2: %3), so the notebook itself may be as well; the copy was taken away: have plateau verify list all that is wrong, and keep the backups there are.</source>
            <translation>La copie du cahier %1 est endommagée (%2 : %3), le cahier lui-même l’est donc peut-être aussi ; la copie a été supprimée : faites énumérer par plateau verify tout ce qui ne va pas, et gardez les sauvegardes existantes.</translation>
        </message>
        <message>
            <source>its outcome cannot be worked out again from its numbers</source>
            <translation>son résultat ne peut pas être recalculé à partir de ses nombres</translation>
        </message>
        <message>
            <source>it is stored as failed; worked out again from its numbers it is passed</source>
            <translation>elle est enregistrée comme échec ; recalculée à partir de ses nombres, c’est une réussite</translation>
        </message>
        <message>
            <source>it is stored as passed; worked out again from its numbers it is failed: %1</source>
            <translation>elle est enregistrée comme réussite ; recalculée à partir de ses nombres, c’est un échec : %1</translation>
        </message>
        <message>
            <source>%1 (stored with version %2, verified with %3)</source>
            <translation>%1 (enregistré avec la version %2, vérifié avec %3)</translation>
        </message>
        <message>
            <source>the book of equipment</source>
            <translation>le registre d’équipement</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>valeur écartée des cartes de contrôle</translation>
        </message>
        <message>
            <source>settings of a control chart</source>
            <translation>réglages d’une carte de contrôle</translation>
        </message>
        <message>
            <source>clock that was set</source>
            <translation>horloge réglée</translation>
        </message>
        <message>
            <source>decision</source>
            <translation>décision</translation>
        </message>
        <message>
            <source>settings and limits of a decision</source>
            <translation>réglages et limites d’une décision</translation>
        </message>
        <message>
            <source>other run that a decision rests on</source>
            <translation>autre série sur laquelle repose une décision</translation>
        </message>
        <message>
            <source>decision of a sample</source>
            <translation>décision sur un échantillon</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>signature</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>étape de dilution</translation>
        </message>
        <message>
            <source>uncertainty of a dilution step</source>
            <translation>incertitude d’une étape de dilution</translation>
        </message>
        <message>
            <source>check of equipment</source>
            <translation>vérification d’équipement</translation>
        </message>
        <message>
            <source>condition of a check</source>
            <translation>condition d’une vérification</translation>
        </message>
        <message>
            <source>what is checked, and how often</source>
            <translation>ce qui est vérifié, et à quelle fréquence</translation>
        </message>
        <message>
            <source>number of values of a check</source>
            <translation>nombre de valeurs d’une vérification</translation>
        </message>
        <message>
            <source>equipment</source>
            <translation>équipement</translation>
        </message>
        <message>
            <source>value of a check</source>
            <translation>valeur d’une vérification</translation>
        </message>
        <message>
            <source>particulars of equipment</source>
            <translation>caractéristiques d’un équipement</translation>
        </message>
        <message>
            <source>check that was taken back</source>
            <translation>vérification annulée</translation>
        </message>
        <message>
            <source>settings of the laboratory</source>
            <translation>réglages du laboratoire</translation>
        </message>
        <message>
            <source>container</source>
            <translation>flacon</translation>
        </message>
        <message>
            <source>aliquot</source>
            <translation>aliquote</translation>
        </message>
        <message>
            <source>dissolving of a container</source>
            <translation>dissolution d’un flacon</translation>
        </message>
        <message>
            <source>division into aliquots</source>
            <translation>division en aliquotes</translation>
        </message>
        <message>
            <source>how long a container keeps</source>
            <translation>durée de conservation d’un flacon</translation>
        </message>
        <message>
            <source>volume in or out of a container</source>
            <translation>volume entré ou sorti d’un flacon</translation>
        </message>
        <message>
            <source>note on a container</source>
            <translation>note sur un flacon</translation>
        </message>
        <message>
            <source>opening of a container</source>
            <translation>ouverture d’un flacon</translation>
        </message>
        <message>
            <source>place of a container</source>
            <translation>emplacement d’un flacon</translation>
        </message>
        <message>
            <source>lot of the run</source>
            <translation>lot de la série</translation>
        </message>
        <message>
            <source>label of a container</source>
            <translation>étiquette d’un flacon</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>what was done with a method</source>
            <translation>ce qui a été fait d’une méthode</translation>
        </message>
        <message>
            <source>person</source>
            <translation>personne</translation>
        </message>
        <message>
            <source>passphrase of a person</source>
            <translation>phrase de passe d’une personne</translation>
        </message>
        <message>
            <source>whether a person signs</source>
            <translation>si une personne signe</translation>
        </message>
        <message>
            <source>name and role of a person</source>
            <translation>nom et rôle d’une personne</translation>
        </message>
        <message>
            <source>mark at the bench</source>
            <translation>marque à la paillasse</translation>
        </message>
        <message>
            <source>plan of the rack</source>
            <translation>plan du portoir</translation>
        </message>
        <message>
            <source>owner of an uncertainty</source>
            <translation>responsable d’une incertitude</translation>
        </message>
        <message>
            <source>planned sample</source>
            <translation>échantillon prévu</translation>
        </message>
        <message>
            <source>glassware of a dilution step</source>
            <translation>verrerie d’une étape de dilution</translation>
        </message>
        <message>
            <source>standard as prepared</source>
            <translation>étalon préparé</translation>
        </message>
        <message>
            <source>standard thrown away</source>
            <translation>étalon jeté</translation>
        </message>
        <message>
            <source>weighing</source>
            <translation>pesée</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>where a reading came from</source>
            <translation>origine d’une lecture</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>série remise à la paillasse</translation>
        </message>
        <message>
            <source>repeat that was waived</source>
            <translation>répétition abandonnée</translation>
        </message>
        <message>
            <source>result chosen for the report</source>
            <translation>résultat choisi pour le rapport</translation>
        </message>
        <message>
            <source>run</source>
            <translation>série</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>particulars of a sample</source>
            <translation>caractéristiques d’un échantillon</translation>
        </message>
        <message>
            <source>what is expected of a sample</source>
            <translation>ce qui est attendu d’un échantillon</translation>
        </message>
        <message>
            <source>repeat in the rack</source>
            <translation>répétition dans le portoir</translation>
        </message>
        <message>
            <source>registered sample</source>
            <translation>échantillon inscrit</translation>
        </message>
        <message>
            <source>registration of a sample</source>
            <translation>inscription d’un échantillon</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>échantillon retiré</translation>
        </message>
        <message>
            <source>limits of products</source>
            <translation>limites des produits</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>étalon</translation>
        </message>
        <message>
            <source>uncertainty of a standard</source>
            <translation>incertitude d’un étalon</translation>
        </message>
        <message>
            <source>substance</source>
            <translation>substance</translation>
        </message>
        <message>
            <source>particulars of a substance</source>
            <translation>caractéristiques d’une substance</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tube</translation>
        </message>
        <message>
            <source>time of a tube</source>
            <translation>temps d’un tube</translation>
        </message>
        <message>
            <source>uncertainties of the run</source>
            <translation>incertitudes de la série</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbance</translation>
        </message>
        <message>
            <source>age (h)</source>
            <translation>âge (h)</translation>
        </message>
        <message>
            <source>amount</source>
            <translation>quantité</translation>
        </message>
        <message>
            <source>certificate</source>
            <translation>certificat</translation>
        </message>
        <message>
            <source>component</source>
            <translation>constituant</translation>
        </message>
        <message>
            <source>concentration (g/L)</source>
            <translation>concentration (g/L)</translation>
        </message>
        <message>
            <source>day</source>
            <translation>jour</translation>
        </message>
        <message>
            <source>keeps dissolved (days)</source>
            <translation>se conserve dissous (jours)</translation>
        </message>
        <message>
            <source>interval (days)</source>
            <translation>intervalle (jours)</translation>
        </message>
        <message>
            <source>last good day</source>
            <translation>dernier jour de validité</translation>
        </message>
        <message>
            <source>extract (mL)</source>
            <translation>extrait (mL)</translation>
        </message>
        <message>
            <source>flask (mL)</source>
            <translation>fiole (mL)</translation>
        </message>
        <message>
            <source>form</source>
            <translation>forme</translation>
        </message>
        <message>
            <source>uncertainty of</source>
            <translation>incertitude de</translation>
        </message>
        <message>
            <source>start interval (s)</source>
            <translation>intervalle de départ (s)</translation>
        </message>
        <message>
            <source>keeps (days)</source>
            <translation>se conserve (jours)</translation>
        </message>
        <message>
            <source>keeps opened (days)</source>
            <translation>se conserve ouvert (jours)</translation>
        </message>
        <message>
            <source>kind</source>
            <translation>type</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lot</translation>
        </message>
        <message>
            <source>made up to (mL)</source>
            <translation>complété à (mL)</translation>
        </message>
        <message>
            <source>mass (g)</source>
            <translation>masse (g)</translation>
        </message>
        <message>
            <source>mass (mg)</source>
            <translation>masse (mg)</translation>
        </message>
        <message>
            <source>matrix</source>
            <translation>matrice</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masse molaire</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>nominal volume (mL)</source>
            <translation>volume nominal (mL)</translation>
        </message>
        <message>
            <source>number</source>
            <translation>numéro</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>qui en répond</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>pipette</translation>
        </message>
        <message>
            <source>place</source>
            <translation>emplacement</translation>
        </message>
        <message>
            <source>planned (mL)</source>
            <translation>prévu (mL)</translation>
        </message>
        <message>
            <source>product</source>
            <translation>produit</translation>
        </message>
        <message>
            <source>columns of the rack</source>
            <translation>colonnes du portoir</translation>
        </message>
        <message>
            <source>rows of the rack</source>
            <translation>rangs du portoir</translation>
        </message>
        <message>
            <source>reagent</source>
            <translation>réactif</translation>
        </message>
        <message>
            <source>received from</source>
            <translation>reçu de</translation>
        </message>
        <message>
            <source>role</source>
            <translation>rôle</translation>
        </message>
        <message>
            <source>sample volume (mL)</source>
            <translation>volume d’échantillon (mL)</translation>
        </message>
        <message>
            <source>smallest volume (mL)</source>
            <translation>plus petit volume (mL)</translation>
        </message>
        <message>
            <source>source</source>
            <translation>source</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>fournisseur</translation>
        </message>
        <message>
            <source>taken (mL)</source>
            <translation>prélevé (mL)</translation>
        </message>
        <message>
            <source>title</source>
            <translation>intitulé</translation>
        </message>
        <message>
            <source>as typed</source>
            <translation>tel que saisi</translation>
        </message>
        <message>
            <source>volume (mL)</source>
            <translation>volume (mL)</translation>
        </message>
        <message>
            <source>wavelength (nm)</source>
            <translation>longueur d’onde (nm)</translation>
        </message>
        <message>
            <source>path length (mm)</source>
            <translation>trajet optique (mm)</translation>
        </message>
        <message>
            <source>Nothing was stored: the sample %1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>Rien n’a été enregistré : l’échantillon %1 est déjà parmi les échantillons en attente ; modifiez-le là, ou donnez un autre id à celui-ci.</translation>
        </message>
        <message>
            <source>The sample %1 is registered like this already; nothing was stored.</source>
            <translation>L’échantillon %1 est déjà inscrit ainsi ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>No sample number %1 waits; nothing was stored: choose one from the list.</source>
            <translation>Aucun échantillon numéro %1 n’est en attente ; rien n’a été enregistré : choisissez-en un dans la liste.</translation>
        </message>
        <message>
            <source>The notebook %1 cannot be reached, since its folder may not be entered; see that you have the right to, or choose another notebook.</source>
            <translation>Le cahier %1 est inaccessible, car l’accès à son dossier est refusé ; vérifiez vos droits d’accès, ou choisissez un autre cahier.</translation>
        </message>
        <message>
            <source>is not as the records say, so that what waits to be repeated may not be shown</source>
            <translation>n’est pas tel que le disent les enregistrements ; ce qui attend d’être répété n’est peut-être pas montré</translation>
        </message>
        <message>
            <source>rack on the bench when a clock was set</source>
            <translation>portoir à la paillasse quand une horloge a été réglée</translation>
        </message>
        <message>
            <source>dilution advised for a repeat</source>
            <translation>dilution conseillée pour une répétition</translation>
        </message>
        <message>
            <source>dry substance in a container</source>
            <translation>substance sèche dans un flacon</translation>
        </message>
        <message>
            <source>dry substance thrown away</source>
            <translation>substance sèche jetée</translation>
        </message>
        <message>
            <source>tubes added to the rack</source>
            <translation>tubes ajoutés au portoir</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>phrase de passe fausse</translation>
        </message>
        <message>
            <source>Reading %1 of tube %2 has that value already; nothing was stored: a correction gives another value.</source>
            <translation>La lecture %1 du tube %2 a déjà cette valeur ; rien n’a été enregistré : une correction donne une autre valeur.</translation>
        </message>
        <message>
            <source>What did not pass is decided sample by sample; everything else passed.</source>
            <translation>Ce qui n’a pas été conforme est décidé échantillon par échantillon ; tout le reste est conforme.</translation>
        </message>
        <message>
            <source>highest (°C)</source>
            <translation>la plus haute (°C)</translation>
        </message>
        <message>
            <source>lowest (°C)</source>
            <translation>la plus basse (°C)</translation>
        </message>
        <message>
            <source>a picture</source>
            <translation>une image</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>non ouvert</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>ouvert le %1</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>lot %1</translation>
        </message>
        <message>
            <source>%1: something was taken from it</source>
            <translation>%1 : quelque chose y a été prélevé</translation>
        </message>
        <message>
            <source>The opening stays as it was noted, since a correction needs a reason: say why.</source>
            <translation>L’ouverture reste telle qu’elle a été notée, car une correction demande un motif : indiquez pourquoi.</translation>
        </message>
        <message>
            <source>Nothing was stored: the lot %1 is not noted as opened.</source>
            <translation>Rien n’a été enregistré : le lot %1 n’est pas noté comme ouvert.</translation>
        </message>
        <message>
            <source>Nothing was stored: something was taken from the lot %1 on %2, so that it was open by then; give that day or an earlier one, or take back first what was ticked with it by mistake.</source>
            <translation>Rien n’a été enregistré : quelque chose a été prélevé sur le lot %1 le %2, il était donc ouvert à cette date ; donnez ce jour ou un jour antérieur, ou annulez d’abord ce qui a été coché avec lui par erreur.</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fixe, dans l’unité de la limite</translation>
        </message>
        <message>
            <source>added</source>
            <translation>ajouté</translation>
        </message>
        <message>
            <source>corrected</source>
            <translation>corrigé</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>jeté</translation>
        </message>
        <message>
            <source>done</source>
            <translation>fait</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty</source>
            <translation>un multiple de l’incertitude élargie</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>d’un fichier</translation>
        </message>
        <message>
            <source>imported</source>
            <translation>importée</translation>
        </message>
        <message>
            <source>label threshold</source>
            <translation>seuil d’étiquetage</translation>
        </message>
        <message>
            <source>maximum</source>
            <translation>maximum</translation>
        </message>
        <message>
            <source>minimum</source>
            <translation>minimum</translation>
        </message>
        <message>
            <source>from the network</source>
            <translation>par le réseau</translation>
        </message>
        <message>
            <source>one-sided 95 %</source>
            <translation>unilatérale à 95 %</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>collée</translation>
        </message>
        <message>
            <source>range</source>
            <translation>intervalle</translation>
        </message>
        <message>
            <source>read</source>
            <translation>lu</translation>
        </message>
        <message>
            <source>received</source>
            <translation>reçu</translation>
        </message>
        <message>
            <source>in use again</source>
            <translation>réactivée</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>out of use</source>
            <translation>désactivée</translation>
        </message>
        <message>
            <source>saved</source>
            <translation>enregistrée</translation>
        </message>
        <message>
            <source>from the serial line</source>
            <translation>par la ligne série</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>inutilisable</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>annulé</translation>
        </message>
        <message>
            <source>counts again</source>
            <translation>compte à nouveau</translation>
        </message>
        <message>
            <source>used</source>
            <translation>employé</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>analyste</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanc</translation>
        </message>
        <message>
            <source>control</source>
            <translation>contrôle</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>responsable du laboratoire</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>réviseur</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanc échantillon</translation>
        </message>
        <message>
            <source>spiked sample</source>
            <translation>échantillon avec ajout</translation>
        </message>
        <message>
            <source>by the absorptivity</source>
            <translation>par l’absorptivité</translation>
        </message>
        <message>
            <source>by a line through the standards</source>
            <translation>par une droite par les étalons</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>par l’étalon de la série</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>liquide</translation>
        </message>
        <message>
            <source>solid</source>
            <translation>solide</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>le dernier résultat accepté</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>la moyenne des résultats acceptés</translation>
        </message>
        <message>
            <source>a result that was named</source>
            <translation>un résultat nommé</translation>
        </message>
        <message>
            <source>the moving range</source>
            <translation>l’étendue mobile</translation>
        </message>
        <message>
            <source>the standard deviation</source>
            <translation>l’écart-type</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>calculées</translation>
        </message>
        <message>
            <source>from the printed table</source>
            <translation>de la table imprimée</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>carbonated</source>
            <translation>gazéifié</translation>
        </message>
        <message>
            <source>clear and colourless</source>
            <translation>limpide et incolore</translation>
        </message>
        <message>
            <source>coloured</source>
            <translation>coloré</translation>
        </message>
        <message>
            <source>fatty</source>
            <translation>gras</translation>
        </message>
        <message>
            <source>rich in protein</source>
            <translation>riche en protéines</translation>
        </message>
        <message>
            <source>turbid</source>
            <translation>trouble</translation>
        </message>
        <message>
            <source>pipette %1</source>
            <translation>pipette %1</translation>
        </message>
        <message>
            <source>flask %1</source>
            <translation>fiole %1</translation>
        </message>
        <message>
            <source>uncertainties of a method, row %1</source>
            <translation>incertitudes d’une méthode, ligne %1</translation>
        </message>
        <message>
            <source>unit of a product, row %1</source>
            <translation>unité d’un produit, ligne %1</translation>
        </message>
        <message>
            <source>reason to reject %1</source>
            <translation>motif de rejet %1</translation>
        </message>
        <message>
            <source>address, line %1</source>
            <translation>adresse, ligne %1</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>limite %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>correction of when a container was opened</source>
            <translation>correction de l’ouverture d’un flacon</translation>
        </message>
        <message>
            <source>absorptivity (%)</source>
            <translation>absorptivité (%)</translation>
        </message>
        <message>
            <source>nothing speaks against it</source>
            <translation>rien ne s’y oppose</translation>
        </message>
        <message>
            <source>time for an addition (s)</source>
            <translation>temps pour un ajout (s)</translation>
        </message>
        <message>
            <source>address</source>
            <translation>adresse</translation>
        </message>
        <message>
            <source>aliquots</source>
            <translation>aliquotes</translation>
        </message>
        <message>
            <source>molar mass of the analyte (g/mol)</source>
            <translation>masse molaire de l’analyte (g/mol)</translation>
        </message>
        <message>
            <source>analyte molecules per molecule</source>
            <translation>molécules d’analyte par molécule</translation>
        </message>
        <message>
            <source>what was checked</source>
            <translation>ce qui a été vérifié</translation>
        </message>
        <message>
            <source>time (min)</source>
            <translation>temps (min)</translation>
        </message>
        <message>
            <source>picture</source>
            <translation>image</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>étalonnage</translation>
        </message>
        <message>
            <source>centre line</source>
            <translation>ligne centrale</translation>
        </message>
        <message>
            <source>change (mL)</source>
            <translation>variation (mL)</translation>
        </message>
        <message>
            <source>checked on</source>
            <translation>vérifié le</translation>
        </message>
        <message>
            <source>columns</source>
            <translation>colonnes</translation>
        </message>
        <message>
            <source>column</source>
            <translation>colonne</translation>
        </message>
        <message>
            <source>constants of the chart</source>
            <translation>constantes de la carte</translation>
        </message>
        <message>
            <source>contact</source>
            <translation>contact</translation>
        </message>
        <message>
            <source>corrects</source>
            <translation>corrige</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>mise à la paillasse</translation>
        </message>
        <message>
            <source>date</source>
            <translation>date</translation>
        </message>
        <message>
            <source>density (g/mL)</source>
            <translation>masse volumique (g/mL)</translation>
        </message>
        <message>
            <source>standard deviation</source>
            <translation>écart-type</translation>
        </message>
        <message>
            <source>dilution step (%)</source>
            <translation>étape de dilution (%)</translation>
        </message>
        <message>
            <source>values of earlier runs</source>
            <translation>valeurs de séries antérieures</translation>
        </message>
        <message>
            <source>extract (%)</source>
            <translation>extrait (%)</translation>
        </message>
        <message>
            <source>file</source>
            <translation>fichier</translation>
        </message>
        <message>
            <source>beginning with</source>
            <translation>à partir de</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>fiole</translation>
        </message>
        <message>
            <source>uncertainty of the flask (mL)</source>
            <translation>incertitude de la fiole (mL)</translation>
        </message>
        <message>
            <source>guard band</source>
            <translation>bande de garde</translation>
        </message>
        <message>
            <source>decision limit h</source>
            <translation>limite de décision h</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en service</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>écartée</translation>
        </message>
        <message>
            <source>only the usual value</source>
            <translation>seulement la valeur usuelle</translation>
        </message>
        <message>
            <source>reference value k</source>
            <translation>valeur de référence k</translation>
        </message>
        <message>
            <source>weight of the newest value</source>
            <translation>poids de la valeur la plus récente</translation>
        </message>
        <message>
            <source>largest volume (mL)</source>
            <translation>plus grand volume (mL)</translation>
        </message>
        <message>
            <source>line of the photometer</source>
            <translation>ligne du photomètre</translation>
        </message>
        <message>
            <source>logo</source>
            <translation>logo</translation>
        </message>
        <message>
            <source>lower limit</source>
            <translation>limite inférieure</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>préparé le</translation>
        </message>
        <message>
            <source>uncertainty of the weighing (mg)</source>
            <translation>incertitude de la pesée (mg)</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mesurande</translation>
        </message>
        <message>
            <source>time to mix (s)</source>
            <translation>temps pour mélanger (s)</translation>
        </message>
        <message>
            <source>result of</source>
            <translation>résultat de</translation>
        </message>
        <message>
            <source>check</source>
            <translation>vérification</translation>
        </message>
        <message>
            <source>reagent beyond the need (%)</source>
            <translation>réactif au-delà du besoin (%)</translation>
        </message>
        <message>
            <source>path length (%)</source>
            <translation>trajet optique (%)</translation>
        </message>
        <message>
            <source>uncertainty (%)</source>
            <translation>incertitude (%)</translation>
        </message>
        <message>
            <source>signed by</source>
            <translation>signé par</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>photomètre</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>readings of the series</source>
            <translation>lectures de la suite</translation>
        </message>
        <message>
            <source>place in the order</source>
            <translation>place dans l’ordre</translation>
        </message>
        <message>
            <source>program</source>
            <translation>programme</translation>
        </message>
        <message>
            <source>what is watched</source>
            <translation>ce qui est suivi</translation>
        </message>
        <message>
            <source>time for a reading (s)</source>
            <translation>temps pour une lecture (s)</translation>
        </message>
        <message>
            <source>put back on the bench</source>
            <translation>remise à la paillasse</translation>
        </message>
        <message>
            <source>repeat of</source>
            <translation>répétition de</translation>
        </message>
        <message>
            <source>only a reviewer decides</source>
            <translation>seul un réviseur statue</translation>
        </message>
        <message>
            <source>rows</source>
            <translation>lignes</translation>
        </message>
        <message>
            <source>rule</source>
            <translation>règle</translation>
        </message>
        <message>
            <source>rules</source>
            <translation>règles</translation>
        </message>
        <message>
            <source>sample volume (%)</source>
            <translation>volume d’échantillon (%)</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>échantillons</translation>
        </message>
        <message>
            <source>samples before</source>
            <translation>échantillons auparavant</translation>
        </message>
        <message>
            <source>somebody else than the analyst decides</source>
            <translation>une autre personne que l’analyste statue</translation>
        </message>
        <message>
            <source>clock moved by (s)</source>
            <translation>horloge décalée de (s)</translation>
        </message>
        <message>
            <source>size</source>
            <translation>largeur</translation>
        </message>
        <message>
            <source>solvent</source>
            <translation>solvant</translation>
        </message>
        <message>
            <source>lot of the solvent</source>
            <translation>lot du solvant</translation>
        </message>
        <message>
            <source>day of the source</source>
            <translation>jour de la source</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>ajout dosé</translation>
        </message>
        <message>
            <source>standard of the spike</source>
            <translation>étalon de l’ajout dosé</translation>
        </message>
        <message>
            <source>volume of the spike (mL)</source>
            <translation>volume de l’ajout dosé (mL)</translation>
        </message>
        <message>
            <source>scatter from</source>
            <translation>dispersion d’après</translation>
        </message>
        <message>
            <source>begun</source>
            <translation>commencée</translation>
        </message>
        <message>
            <source>step (mL)</source>
            <translation>pas (mL)</translation>
        </message>
        <message>
            <source>values in a subgroup</source>
            <translation>valeurs d’un sous-groupe</translation>
        </message>
        <message>
            <source>total volume (%)</source>
            <translation>volume total (%)</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubes</translation>
        </message>
        <message>
            <source>tubes before</source>
            <translation>tubes auparavant</translation>
        </message>
        <message>
            <source>kind of picture</source>
            <translation>type d’image</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unité</translation>
        </message>
        <message>
            <source>upper limit</source>
            <translation>limite supérieure</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valeur</translation>
        </message>
        <message>
            <source>version</source>
            <translation>version</translation>
        </message>
        <message>
            <source>width of the limits</source>
            <translation>largeur des limites</translation>
        </message>
        <message>
            <source>good until</source>
            <translation>utilisable jusqu’au</translation>
        </message>
        <message>
            <source>with entries 2 to %1, which made the tables of the file</source>
            <translation>avec les entrées 2 à %1, qui ont créé les tables du fichier</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes by %1</source>
            <translation>
                <numerusform>%n tube selon %1</numerusform>
                <numerusform>%n tubes selon %1</numerusform>
            </translation>
        </message>
        <message>
            <source>standards</source>
            <translation>étalons</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lectures</translation>
        </message>
        <message>
            <source>%1: tube %2</source>
            <translation>%1 : tube %2</translation>
        </message>
        <message>
            <source>loss per hour (%)</source>
            <translation>perte par heure (%)</translation>
        </message>
        <message>
            <source>purity (%)</source>
            <translation>pureté (%)</translation>
        </message>
        <message>
            <source>purity, plus or minus (%)</source>
            <translation>pureté, plus ou moins (%)</translation>
        </message>
        <message>
            <source>use by, by its own rule</source>
            <translation>utilisable jusqu’au, selon la règle propre</translation>
        </message>
        <message>
            <source>water (%)</source>
            <translation>teneur en eau (%)</translation>
        </message>
        <message>
            <source>water, plus or minus (%)</source>
            <translation>teneur en eau, plus ou moins (%)</translation>
        </message>
        <message>
            <source>%1, made from %2</source>
            <translation>%1, préparé à partir de %2</translation>
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
            <translation>échelle des absorbances par %1</translation>
        </message>
        <message>
            <source>cuvettes: common practice, no source</source>
            <translation>cuves : usage courant, sans source</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1 : %2.</translation>
        </message>
        <message>
            <source>%1: passed before this run, but failed afterwards, on %2: %3.</source>
            <translation>%1 : réussite avant cette série, mais échec ensuite, le %2 : %3.</translation>
        </message>
        <message>
            <source>%1: not in the book of equipment yet on that day; its next check, on %2, failed: %3.</source>
            <translation>%1 : pas encore au registre de l’équipement ce jour-là ; sa vérification suivante, le %2, a échoué : %3.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::DilutionPlan</name>
        <message>
            <source>Say how much the sample is expected to hold: a dilution is planned from that.</source>
            <translation>Indiquez combien l’échantillon devrait contenir : une dilution est prévue à partir de là.</translation>
        </message>
        <message>
            <source>The method has no absorptivity at %1, so no signal can be predicted.</source>
            <translation>La méthode n’a pas d’absorptivité à %1, aucun signal ne peut donc être prévu.</translation>
        </message>
        <message>
            <source>The sample has to be diluted, but no pipette and flask of the laboratory make a dilution.</source>
            <translation>L’échantillon doit être dilué, mais aucune pipette ni fiole du laboratoire ne permet une dilution.</translation>
        </message>
        <message>
            <source>With %1 of sample it has to be diluted %2- to %3-fold; no chain of up to %4 steps with the laboratory's pipettes and flasks does that.</source>
            <translation>Avec %1 d’échantillon, il doit être dilué %2 à %3 fois ; aucune chaîne de %4 étapes au plus avec les pipettes et fioles du laboratoire ne le permet.</translation>
        </message>
        <message>
            <source>The net signals of %1 and %2 are expected %3-fold apart, more than the %4-fold that one dilution can serve: plan a dilution for each.</source>
            <translation>Les signaux nets de %1 et %2 sont attendus dans un rapport de %3, plus que le rapport de %4 qu’une seule dilution peut couvrir : prévoyez une dilution pour chacun.</translation>
        </message>
        <message>
            <source>%1 of the undiluted sample would give a net signal of %2 for %3, less than the %4 that can be measured well.</source>
            <translation>%1 de l’échantillon non dilué donnerait un signal net de %2 pour %3, moins que les %4 qui se mesurent bien.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Expectation</name>
        <message>
            <source>From what is expected of it, %1 would be about %2, below the window's %3: dilute it less, or take more of it.</source>
            <translation>D’après ce qui en est attendu, %1 serait d’environ %2, au-dessous des %3 de la fenêtre : diluez moins, ou prélevez davantage.</translation>
        </message>
        <message>
            <source>From what is expected of it, %1 would be about %2, above the window's %3: dilute it more, or take less of it.</source>
            <translation>D’après ce qui en est attendu, %1 serait d’environ %2, au-dessus des %3 de la fenêtre : diluez davantage, ou prélevez moins.</translation>
        </message>
        <message>
            <source>its net signal</source>
            <translation>son signal net</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputOwner</name>
        <message>
            <source>absorbance of a reading</source>
            <translation>absorbance d’une lecture</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>étape de dilution</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentration</translation>
        </message>
        <message>
            <source>repeatability</source>
            <translation>répétabilité</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::InputSources</name>
        <message>
            <source>the laboratory's list of glassware</source>
            <translation>la liste de verrerie du laboratoire</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>usage courant, sans source</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1 ; %2</translation>
        </message>
        <message>
            <source>no pipette of the list makes %1</source>
            <translation>aucune pipette de la liste ne délivre %1</translation>
        </message>
        <message>
            <source>until its check records say otherwise</source>
            <translation>tant que ses vérifications n’indiquent pas autre chose</translation>
        </message>
        <message>
            <source>absorptivity of %1 at %2</source>
            <translation>absorptivité de %1 à %2</translation>
        </message>
        <message>
            <source>cuvette of the %1</source>
            <translation>cuve du %1</translation>
        </message>
        <message>
            <source>cuvette</source>
            <translation>cuve</translation>
        </message>
        <message>
            <source>pipettes</source>
            <translation>pipettes</translation>
        </message>
        <message>
            <source>pipette of the sample</source>
            <translation>pipette de l’échantillon</translation>
        </message>
        <message>
            <source>pipette and flask of a dilution step</source>
            <translation>pipette et fiole d’une étape de dilution</translation>
        </message>
        <message>
            <source>no glass of the list makes %1 up to %2</source>
            <translation>aucune verrerie de la liste ne complète %1 à %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 avec %2</translation>
        </message>
        <message>
            <source>no step of this run rests on it</source>
            <translation>aucune étape de cette série n’en dépend</translation>
        </message>
        <message>
            <source>flask of the extract</source>
            <translation>fiole de l’extrait</translation>
        </message>
        <message>
            <source>no flask of the list holds %1</source>
            <translation>aucune fiole de la liste ne contient %1</translation>
        </message>
        <message>
            <source>no sample of this run rests on it</source>
            <translation>aucun échantillon de cette série n’en dépend</translation>
        </message>
        <message>
            <source>laboratory, for %1</source>
            <translation>laboratoire, pour %1</translation>
        </message>
        <message>
            <source>photometer %1</source>
            <translation>photomètre %1</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>photomètre</translation>
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
            <translation>pipette jaugée %1 mL</translation>
        </message>
        <message>
            <source>flask %1 mL</source>
            <translation>fiole %1 mL</translation>
        </message>
        <message>
            <source>piston pipette 10 to 100 µL</source>
            <translation>pipette à piston 10 à 100 µL</translation>
        </message>
        <message>
            <source>piston pipette 100 to 1000 µL</source>
            <translation>pipette à piston 100 à 1000 µL</translation>
        </message>
        <message>
            <source>piston pipette 0.5 to 5 mL</source>
            <translation>pipette à piston 0,5 à 5 mL</translation>
        </message>
        <message>
            <source>a mistake in pipetting</source>
            <translation>une erreur de pipetage</translation>
        </message>
        <message>
            <source>the blank is out of its limits</source>
            <translation>le blanc est hors de ses limites</translation>
        </message>
        <message>
            <source>the control is out of its limits</source>
            <translation>le contrôle est hors de ses limites</translation>
        </message>
        <message>
            <source>duplicates lie too far apart</source>
            <translation>les doubles sont trop écartés</translation>
        </message>
        <message>
            <source>the wrong sample was taken</source>
            <translation>le mauvais échantillon a été pris</translation>
        </message>
        <message>
            <source>the recovery of the standard is outside its limits</source>
            <translation>le taux de récupération de l’étalon est hors de ses limites</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LaboratorySoundness</name>
        <message>
            <source>makes a rack of %1 places with %2 rows; at most %3 are allowed</source>
            <translation>fait un portoir de %1 places avec %2 rangs ; %3 au plus sont permises</translation>
        </message>
        <message>
            <source>must not be smaller than smallest_mL: %1 is less than %2</source>
            <translation>ne doit pas être inférieur à smallest_mL : %1 est inférieur à %2</translation>
        </message>
        <message>
            <source>must be 0 for a fixed-volume pipette, not %1</source>
            <translation>doit être 0 pour une pipette à volume fixe, pas %1</translation>
        </message>
        <message>
            <source>must be greater than 0 and at most %1 mL, the width of the pipette's range, not %2</source>
            <translation>doit être supérieur à 0 et au plus de %1 mL, la largeur du domaine de la pipette, pas %2</translation>
        </message>
        <message>
            <source>makes more than %1 settings; give a coarser step</source>
            <translation>fait plus de %1 réglages ; donnez un pas plus grand</translation>
        </message>
        <message>
            <source>must go a whole number of times into the %1 mL between smallest_mL and largest_mL</source>
            <translation>doit aller un nombre entier de fois dans les %1 mL entre smallest_mL et largest_mL</translation>
        </message>
        <message>
            <source>the name</source>
            <translation>le nom</translation>
        </message>
        <message>
            <source>the name %1 is taken by an earlier one; give each its own</source>
            <translation>le nom %1 est pris par un précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>lists %1 pieces; at most %2 are allowed</source>
            <translation>énumère %1 pièces ; %2 au plus sont permises</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotOutlook</name>
        <message>
            <source>in use, dissolved</source>
            <translation>en usage, dissous</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en usage</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>non ouvert</translation>
        </message>
        <message>
            <source>open too long, was good until %1</source>
            <translation>ouvert trop longtemps, était bon jusqu’au %1</translation>
        </message>
        <message>
            <source>dissolved too long ago, was good until %1</source>
            <translation>dissous il y a trop longtemps, était bon jusqu’au %1</translation>
        </message>
        <message>
            <source>stored too long, was good until %1</source>
            <translation>stocké trop longtemps, était bon jusqu’au %1</translation>
        </message>
        <message>
            <source>what it was filled from was good until %1</source>
            <translation>ce dont il a été rempli était bon jusqu’au %1</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>périmé le %1</translation>
        </message>
        <message>
            <source>%1 (opened)</source>
            <translation>%1 (ouvert)</translation>
        </message>
        <message>
            <source>%1 (dissolved)</source>
            <translation>%1 (dissous)</translation>
        </message>
        <message>
            <source>%1 (as stored)</source>
            <translation>%1 (ainsi stocké)</translation>
        </message>
        <message>
            <source>%1 (its source)</source>
            <translation>%1 (son origine)</translation>
        </message>
        <message>
            <source>used up</source>
            <translation>épuisé</translation>
        </message>
        <message>
            <source>dry, not dissolved yet</source>
            <translation>sec, pas encore dissous</translation>
        </message>
        <message>
            <source>more taken than it held</source>
            <translation>prélevé plus qu’il ne contenait</translation>
        </message>
        <message>
            <source>good until tonight</source>
            <translation>bon jusqu’à ce soir</translation>
        </message>
        <message>
            <source>good until %1</source>
            <translation>bon jusqu’au %1</translation>
        </message>
        <message>
            <source>too little for a tube</source>
            <translation>trop peu pour un tube</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lot %2</translation>
        </message>
        <message>
            <source>%1: %2, and this run took from it on %3.</source>
            <translation>%1 : %2, et cette série y a puisé le %3.</translation>
        </message>
        <message>
            <source>%1: good until %2; a repeat after that takes another.</source>
            <translation>%1 : bon jusqu’au %2 ; une répétition après cela en prend un autre.</translation>
        </message>
        <message numerus="yes">
            <source>low, enough for %n tubes</source>
            <translation>
                <numerusform>presque vide, assez pour %n tube</numerusform>
                <numerusform>presque vide, assez pour %n tubes</numerusform>
            </translation>
        </message>
        <message>
            <source>expired</source>
            <translation>périmé</translation>
        </message>
        <message>
            <source>open too long</source>
            <translation>ouvert trop longtemps</translation>
        </message>
        <message>
            <source>dissolved too long ago</source>
            <translation>dissous il y a trop longtemps</translation>
        </message>
        <message>
            <source>stored too long</source>
            <translation>stocké trop longtemps</translation>
        </message>
        <message>
            <source>what it was filled from is too old</source>
            <translation>ce dont il a été rempli est trop vieux</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>dissous</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>ouvert</translation>
        </message>
        <message numerus="yes">
            <source>good for %n more days</source>
            <translation>
                <numerusform>bon encore %n jour</numerusform>
                <numerusform>bon encore %n jours</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::LotPlace</name>
        <message>
            <source>%1, %2 to %3</source>
            <translation>%1, %2 à %3</translation>
        </message>
        <message>
            <source>%1, at most %2</source>
            <translation>%1, au plus %2</translation>
        </message>
        <message>
            <source>%1, at least %2</source>
            <translation>%1, au moins %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Measuring</name>
        <message>
            <source>the source</source>
            <translation>la source</translation>
        </message>
        <message>
            <source>is blank; say which record or certificate the numbers come from</source>
            <translation>est vide ; indiquez de quel enregistrement ou certificat viennent les nombres</translation>
        </message>
        <message>
            <source>the photometer's name</source>
            <translation>le nom du photomètre</translation>
        </message>
        <message>
            <source>the method's id</source>
            <translation>l’id de la méthode</translation>
        </message>
        <message>
            <source>states no uncertainty; give at least one, or take the entry away</source>
            <translation>n’indique aucune incertitude ; donnez-en au moins une, ou enlevez l’entrée</translation>
        </message>
        <message>
            <source>lists %1 methods; at most %2 are allowed</source>
            <translation>énumère %1 méthodes ; %2 au plus sont permises</translation>
        </message>
        <message>
            <source>the method %1 has an entry already; put both in one</source>
            <translation>la méthode %1 a déjà une entrée ; réunissez les deux en une</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::PlanRecord</name>
        <message>
            <source>names the glass of %1 dilution steps, but the sample has %2; name it for each step or for none</source>
            <translation>nomme la verrerie de %1 étapes de dilution, mais l’échantillon en a %2 ; nommez-la pour chaque étape ou pour aucune</translation>
        </message>
        <message>
            <source>the pipette</source>
            <translation>la pipette</translation>
        </message>
        <message>
            <source>the flask</source>
            <translation>la fiole</translation>
        </message>
        <message>
            <source>the run has no sample %1</source>
            <translation>la série n’a pas d’échantillon %1</translation>
        </message>
        <message>
            <source>is not the form that the run gives the sample %1</source>
            <translation>n’est pas la forme que la série donne à l’échantillon %1</translation>
        </message>
        <message>
            <source>runs are numbered from 1 on</source>
            <translation>les séries sont numérotées à partir de 1</translation>
        </message>
        <message>
            <source>a rack has 1 to %1 positions, not %2 x %3</source>
            <translation>un portoir a 1 à %1 positions, pas %2 × %3</translation>
        </message>
        <message>
            <source>a rack of %1 x %2 does not hold the run's %3 tubes</source>
            <translation>un portoir de %1 × %2 ne contient pas les %3 tubes de la série</translation>
        </message>
        <message>
            <source>nobody but the run answers for its replicates</source>
            <translation>seule la série répond de ses réplicats</translation>
        </message>
        <message>
            <source>the run states no uncertainty</source>
            <translation>la série n’indique pas d’incertitude</translation>
        </message>
        <message>
            <source>the run has no standard %1 that this could be said of</source>
            <translation>la série n’a pas d’étalon %1 dont cela puisse être dit</translation>
        </message>
        <message>
            <source>names an owner for this a second time</source>
            <translation>nomme une seconde fois ce qui en répond</translation>
        </message>
        <message>
            <source>the owner</source>
            <translation>ce qui en répond</translation>
        </message>
        <message>
            <source>the source</source>
            <translation>la source</translation>
        </message>
        <message>
            <source>is blank</source>
            <translation>est vide</translation>
        </message>
        <message>
            <source>the sample %1 is planned twice</source>
            <translation>l’échantillon %1 est prévu deux fois</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::RackRepeat</name>
        <message>
            <source>%1-fold</source>
            <translation>%1 fois</translation>
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
            <translation>ce n’est pas une image PNG</translation>
        </message>
        <message>
            <source>it measures %1 by %2 pixels; 1 to %3 each way are allowed</source>
            <translation>elle mesure %1 sur %2 pixels ; 1 à %3 dans chaque sens sont permis</translation>
        </message>
        <message>
            <source>it holds a document type declaration; save it without</source>
            <translation>elle contient une déclaration de type de document ; enregistrez-la sans</translation>
        </message>
        <message>
            <source>it is not an SVG picture</source>
            <translation>ce n’est pas une image SVG</translation>
        </message>
        <message>
            <source>it takes in a file from outside; put everything into the picture itself</source>
            <translation>elle fait appel à un fichier extérieur ; mettez tout dans l’image elle-même</translation>
        </message>
        <message>
            <source>lists %1 reasons; at most %2 are allowed</source>
            <translation>énumère %1 motifs ; %2 au plus sont permis</translation>
        </message>
        <message>
            <source>the reason</source>
            <translation>le motif</translation>
        </message>
        <message>
            <source>the reason %1 stands in the list already; take one away</source>
            <translation>le motif %1 figure déjà dans la liste ; enlevez-en un</translation>
        </message>
        <message>
            <source>has %1 lines; at most %2 are allowed</source>
            <translation>a %1 lignes ; %2 au plus sont permises</translation>
        </message>
        <message>
            <source>the line</source>
            <translation>la ligne</translation>
        </message>
        <message>
            <source>the contact</source>
            <translation>le contact</translation>
        </message>
        <message>
            <source>the logo cannot be used: %1</source>
            <translation>le logo ne peut pas être employé : %1</translation>
        </message>
        <message>
            <source>lists %1 units; at most %2 are allowed</source>
            <translation>énumère %1 unités ; %2 au plus sont permises</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>le produit</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>le mesurande</translation>
        </message>
        <message>
            <source>has a unit for this already; take one away</source>
            <translation>a déjà une unité pour cela ; enlevez-en une</translation>
        </message>
        <message>
            <source>it has %1 kB; at most %2 kB are allowed</source>
            <translation>elle fait %1 ko ; %2 ko au plus sont permis</translation>
        </message>
        <message>
            <source>is a unit of neither a product nor a measurand; name one of them</source>
            <translation>n’est l’unité ni d’un produit ni d’un mesurande ; nommez l’un des deux</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Round</name>
        <message>
            <source>Diluent</source>
            <translation>Diluant</translation>
        </message>
        <message>
            <source>Spike</source>
            <translation>Ajout dosé</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::Schedule</name>
        <message>
            <source>mixing</source>
            <translation>mélange</translation>
        </message>
        <message>
            <source>reading %1</source>
            <translation>lecture %1</translation>
        </message>
        <message>
            <source>adding %1</source>
            <translation>ajout (%1)</translation>
        </message>
        <message>
            <source>Tube %1: %2 has %3, it needs %4.</source>
            <translation>Tube %1 : %2 dispose de %3, il en faut %4.</translation>
        </message>
        <message>
            <source>At %1 there is a task for tube %2, step %3, which this rack does not have.</source>
            <translation>À %1, il y a une tâche pour le tube %2, étape %3, que ce portoir n’a pas.</translation>
        </message>
        <message>
            <source>Tube %1 and tube %2 both need the hands at %3.</source>
            <translation>Le tube %1 et le tube %2 sont tous deux en main à %3.</translation>
        </message>
        <message>
            <source>Tube %1 needs the hands at %2, when the other rack does too.</source>
            <translation>Le tube %1 est en main à %2, quand l’autre portoir l’est.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is missing.</source>
            <translation>Tube %1 : %2 manque.</translation>
        </message>
        <message>
            <source>Tube %1: %2 is there twice.</source>
            <translation>Tube %1 : %2 y est deux fois.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at least %5 is needed.</source>
            <translation>Tube %1 : %2 vient %3 après %4, il faut au moins %5.</translation>
        </message>
        <message>
            <source>Tube %1: %2 comes %3 after %4, at most %5 is allowed.</source>
            <translation>Tube %1 : %2 vient %3 après %4, au plus %5 est permis.</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::ShelfSample</name>
        <message>
            <source>the id</source>
            <translation>l’id</translation>
        </message>
        <message>
            <source>the product</source>
            <translation>le produit</translation>
        </message>
        <message>
            <source>who it came from</source>
            <translation>la provenance</translation>
        </message>
        <message>
            <source>is not a real time; give a time with its offset from UTC</source>
            <translation>n’est pas une heure qui existe ; donnez une heure avec son décalage sur UTC</translation>
        </message>
        <message>
            <source>the measurand</source>
            <translation>le mesurande</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardRecipe</name>
        <message>
            <source>mass</source>
            <translation>masse</translation>
        </message>
        <message>
            <source>purity</source>
            <translation>pureté</translation>
        </message>
        <message>
            <source>flask</source>
            <translation>fiole</translation>
        </message>
        <message>
            <source>filling to the mark</source>
            <translation>remplissage au trait</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>température</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::StandardStock</name>
        <message>
            <source>is not a time; say when it was made</source>
            <translation>n’est pas une heure ; indiquez quand il a été préparé</translation>
        </message>
        <message>
            <source>is in the future; it must be in the past</source>
            <translation>est à venir ; elle doit être passée</translation>
        </message>
        <message>
            <source>is not after the time it was made; leave it out, or correct it</source>
            <translation>n’est pas postérieure à l’heure de préparation ; omettez-la, ou corrigez-la</translation>
        </message>
        <message>
            <source>the supplier</source>
            <translation>le fournisseur</translation>
        </message>
        <message>
            <source>the certificate</source>
            <translation>le certificat</translation>
        </message>
        <message>
            <source>is not a real date</source>
            <translation>n’est pas un jour qui existe</translation>
        </message>
        <message>
            <source>must be 1 to %1 masses</source>
            <translation>doit compter 1 à %1 masses</translation>
        </message>
        <message>
            <source>must be 0 % or more and less than 100 %</source>
            <translation>doit être de 0 % ou plus et inférieur à 100 %</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::UncertaintyOwners</name>
        <message>
            <source>not on record</source>
            <translation>non consigné</translation>
        </message>
        <message>
            <source>the run came with this number</source>
            <translation>ce nombre est arrivé avec la série</translation>
        </message>
        <message>
            <source>dilution step %1 to %2</source>
            <translation>étape de dilution %1 à %2</translation>
        </message>
        <message>
            <source>%1 with %2</source>
            <translation>%1 avec %2</translation>
        </message>
        <message>
            <source>the laboratory's list of glassware when the run was planned</source>
            <translation>la liste de verrerie du laboratoire lorsque la série a été prévue</translation>
        </message>
    </context>
    <context>
        <name>plateau::planning::UncertaintySources</name>
        <message>
            <source>%1: %2 (%3)</source>
            <translation>%1 : %2 (%3)</translation>
        </message>
        <message>
            <source>%1: %2 %3 (%4)</source>
            <translation>%1 : %2 %3 (%4)</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>étalon %1</translation>
        </message>
        <message>
            <source>stated with the standard</source>
            <translation>indiqué avec l’étalon</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known; enter what its recipe or its certificate says</source>
            <translation>non indiqué, compte donc comme exactement connu ; mettez ce que dit sa recette ou son certificat</translation>
        </message>
        <message>
            <source>replicates</source>
            <translation>réplicats</translation>
        </message>
        <message>
            <source>the run's own tubes: their scatter, or the readings' uncertainty where that is larger</source>
            <translation>les propres tubes de la série : leur dispersion, ou l’incertitude des lectures si elle est plus grande</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Fit</name>
        <message>
            <source>the run is made for %1, not for %2</source>
            <translation>la série est faite pour %1, pas pour %2</translation>
        </message>
        <message>
            <source>the method has no absorptivity for %1 nm; it has one for %2 nm</source>
            <translation>la méthode n’a pas d’absorptivité à %1 nm ; elle en a une à %2 nm</translation>
        </message>
        <message>
            <source>the method takes no reading %1; it takes %2</source>
            <translation>la méthode ne fait pas de lecture %1 ; elle fait %2</translation>
        </message>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>la méthode n’a pas de constituant %1 ; corrigez-le</translation>
        </message>
        <message>
            <source>the tube holds %1 mL in the end; at most %2 mL are allowed</source>
            <translation>le tube contient %1 mL à la fin ; %2 mL au plus sont permis</translation>
        </message>
        <message>
            <source>the method has no measurand %1; leave it out or correct it</source>
            <translation>la méthode n’a pas de mesurande %1 ; omettez-le ou corrigez-le</translation>
        </message>
        <message>
            <source>calibration by the run's own standard needs a tube with a standard of %1</source>
            <translation>l’étalonnage par l’étalon de la série demande un tube avec un étalon de %1</translation>
        </message>
        <message>
            <source>a calibration line needs at least three different standard amounts of %1, not %2</source>
            <translation>une droite d’étalonnage demande au moins trois quantités d’étalon différentes de %1, pas %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::Soundness</name>
        <message>
            <source>the title</source>
            <translation>l’intitulé</translation>
        </message>
        <message>
            <source>the id</source>
            <translation>l’id</translation>
        </message>
        <message>
            <source>must not be larger than makeUpTo_mL: %1 mL cannot be made up to %2 mL</source>
            <translation>ne doit pas être supérieur à makeUpTo_mL : %1 mL ne peuvent pas être complétés à %2 mL</translation>
        </message>
        <message>
            <source>dilutes more than %1 times; check the volumes</source>
            <translation>dilue plus de %1 fois ; vérifiez les volumes</translation>
        </message>
        <message>
            <source>is missing: a solid needs the mass that was weighed, in g</source>
            <translation>manque : un solide demande la masse pesée, en g</translation>
        </message>
        <message>
            <source>is missing: a solid needs the volume it was extracted into, in mL</source>
            <translation>manque : un solide demande le volume dans lequel il a été extrait, en mL</translation>
        </message>
        <message>
            <source>a liquid has no %1; leave it out or set the form to "solid"</source>
            <translation>un liquide n’a pas de %1 ; omettez-le ou mettez la forme à "solid"</translation>
        </message>
        <message>
            <source>the run has no sample %1; name the one that is repeated, or leave it out</source>
            <translation>la série n’a pas d’échantillon %1 ; nommez celui qui est répété, ou omettez-le</translation>
        </message>
        <message>
            <source>a sample cannot repeat itself; name the one that is repeated</source>
            <translation>un échantillon ne peut pas se répéter lui-même ; nommez celui qui est répété</translation>
        </message>
        <message>
            <source>the sample %1 is a repeat itself; name the one that it repeats</source>
            <translation>l’échantillon %1 est lui-même une répétition ; nommez celui qu’il répète</translation>
        </message>
        <message>
            <source>the sample %1 has another form; a repeat has the form of what it repeats</source>
            <translation>l’échantillon %1 a une autre forme ; une répétition a la forme de ce qu’elle répète</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier sample; give each its own</source>
            <translation>l’id %1 est pris par un échantillon précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>is missing: with usedAt goes the time it was made</source>
            <translation>manque : avec usedAt va l’heure de préparation</translation>
        </message>
        <message>
            <source>is without effect, since no preparedAt is given: the stated concentration counts</source>
            <translation>est sans effet, car aucun preparedAt n’est donné : la concentration indiquée compte</translation>
        </message>
        <message>
            <source>must not lie before preparedAt; check dates and offsets</source>
            <translation>ne doit pas précéder preparedAt ; vérifiez les dates et les décalages</translation>
        </message>
        <message>
            <source>is missing: give it, or startedAt in the run to stand in for it</source>
            <translation>manque : donnez-le, ou startedAt dans la série à sa place</translation>
        </message>
        <message>
            <source>is missing, and the run's startedAt, which stands in for it, lies before preparedAt</source>
            <translation>manque, et le startedAt de la série, qui en tient lieu, précède preparedAt</translation>
        </message>
        <message>
            <source>the id %1 is taken by an earlier standard; give each its own</source>
            <translation>l’id %1 est pris par un étalon précédent ; donnez à chacun le sien</translation>
        </message>
        <message>
            <source>must be a fraction from 0 to below 1 (0.02 for 2 % an hour), not %1</source>
            <translation>doit être une fraction de 0 à moins de 1 (0.02 pour 2 % par heure), pas %1</translation>
        </message>
        <message>
            <source>the component's id</source>
            <translation>l’id du constituant</translation>
        </message>
        <message>
            <source>the lot's number</source>
            <translation>le numéro du lot</translation>
        </message>
        <message>
            <source>lot %1 of %2 stands in the list already; name it once</source>
            <translation>le lot %1 de %2 figure déjà dans la liste ; nommez-le une seule fois</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TimeFit</name>
        <message>
            <source>the method has no component %1; correct it</source>
            <translation>la méthode n’a pas de constituant %1 ; corrigez-le</translation>
        </message>
        <message>
            <source>the method takes no reading %1; correct it</source>
            <translation>la méthode ne fait pas de lecture %1 ; corrigez-la</translation>
        </message>
        <message>
            <source>%1 min lies before %2 (%3 min), which comes first in the method; one of the two was marked at the wrong time</source>
            <translation>%1 min précède %2 (%3 min), que la méthode place avant ; l’un des deux a été marqué à une mauvaise heure</translation>
        </message>
    </context>
    <context>
        <name>plateau::run::TubeSoundness</name>
        <message>
            <source>the reason</source>
            <translation>le motif</translation>
        </message>
        <message>
            <source>the id of the standard in it</source>
            <translation>l’id de l’étalon qu’il contient</translation>
        </message>
        <message>
            <source>a control names either a sample or a standard, exactly one of them</source>
            <translation>un contrôle nomme soit un échantillon, soit un étalon, exactement l’un des deux</translation>
        </message>
        <message>
            <source>the id of the sample in it</source>
            <translation>l’id de l’échantillon qu’il contient</translation>
        </message>
        <message>
            <source>the standard added and its volume</source>
            <translation>l’étalon ajouté et son volume</translation>
        </message>
        <message>
            <source>is missing: a tube with the role %1 needs %2</source>
            <translation>manque : un tube de rôle %1 demande %2</translation>
        </message>
        <message>
            <source>does not go with the role %1; leave it out or correct the role</source>
            <translation>ne va pas avec le rôle %1 ; omettez-le ou corrigez le rôle</translation>
        </message>
        <message>
            <source>the run has no sample %1; add it to samples or correct the id</source>
            <translation>la série n’a pas d’échantillon %1 ; ajoutez-le à samples ou corrigez l’id</translation>
        </message>
        <message>
            <source>the run has no standard %1; add it to standards or correct the id</source>
            <translation>la série n’a pas d’étalon %1 ; ajoutez-le à standards ou corrigez l’id</translation>
        </message>
        <message>
            <source>a series needs at least one reading; leave out what is not read yet</source>
            <translation>une suite demande au moins une lecture ; omettez ce qui n’est pas encore lu</translation>
        </message>
        <message>
            <source>must be later than the reading before: %1 min is not later than %2 min</source>
            <translation>doit être postérieur à la lecture précédente : %1 min n’est pas postérieur à %2 min</translation>
        </message>
        <message>
            <source>no tube holds the sample %1</source>
            <translation>aucun tube ne contient l’échantillon %1</translation>
        </message>
        <message>
            <source>a run needs at least one tube</source>
            <translation>une série demande au moins un tube</translation>
        </message>
        <message>
            <source>a rack holds at most %1 tubes, not %2; split the run</source>
            <translation>un portoir contient au plus %1 tubes, pas %2 ; scindez la série</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::About</name>
        <message>
            <source>%1 %2: %3</source>
            <translation>%1 %2 : %3</translation>
        </message>
        <message>
            <source>LGPL-3.0 or GPL; its charts GPL-3.0</source>
            <translation>LGPL-3.0 ou GPL ; ses graphiques GPL-3.0</translation>
        </message>
        <message>
            <source>public domain</source>
            <translation>domaine public</translation>
        </message>
        <message>
            <source>ISC licence</source>
            <translation>licence ISC</translation>
        </message>
        <message>
            <source>LGPL-2.1 or later</source>
            <translation>LGPL-2.1 ou ultérieure</translation>
        </message>
        <message>
            <source>MIT licence</source>
            <translation>licence MIT</translation>
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
Programme de paillasse pour les dosages enzymatiques en point final lus au photomètre.

Logiciel libre : GNU General Public License, version 3, sans aucune garantie. Ses dessins et ses icônes lui sont propres.

Fonctionne avec :
%2
Couleurs d’état : Okabe et Ito, Color Universal Design, 2008.

Les instructions du fournisseur, vos règles de sécurité locales et les règles de la profession priment. Le nom de la personne sur un enregistrement est ce qui a été tapé, non une preuve d’identité.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AbsorbanceChart</name>
        <message>
            <source>No reading of this series yet.</source>
            <translation>Pas encore de lecture de cette suite.</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>slope %1 per min</source>
            <translation>pente %1 par min</translation>
        </message>
        <message>
            <source>slope %1 per min, standard error %2</source>
            <translation>pente %1 par min, erreur-type %2</translation>
        </message>
        <message>
            <source>Too few readings to say whether it has ended.</source>
            <translation>Trop peu de lectures pour dire si elle est terminée.</translation>
        </message>
        <message>
            <source>Ended: it changes steadily.</source>
            <translation>Terminée : elle varie régulièrement.</translation>
        </message>
        <message>
            <source>Not ended yet: it still changes, or not steadily.</source>
            <translation>Pas encore terminée : elle varie encore, ou pas régulièrement.</translation>
        </message>
        <message>
            <source>%1: %2, in the line</source>
            <translation>%1 : %2, dans la droite</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1 at 0 min by the line through the last %2 points, %3.</source>
            <translation>%1 à 0 min par la droite passant par les %2 derniers points, %3.</translation>
        </message>
        <message>
            <source>%1 at the addition of %2 by the line through the last %3 points, %4.</source>
            <translation>%1 à l’ajout de %2 par la droite passant par les %3 derniers points, %4.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ActionWords</name>
        <message>
            <source>Rack %1, tube %2: key %3 again</source>
            <translation>Portoir %1, tube %2 : saisir à nouveau %3</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: key %3</source>
            <translation>Portoir %1, tube %2 : saisir %3</translation>
        </message>
        <message>
            <source>Rack %1: review and decide</source>
            <translation>Portoir %1 : revoir et statuer</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Appraisal</name>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tube</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1 mL, not made up</source>
            <translation>%1 mL, non complété</translation>
        </message>
        <message>
            <source>%1 – %2</source>
            <translation>%1 – %2</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Detection</source>
            <translation>Détection</translation>
        </message>
        <message>
            <source>Quantification</source>
            <translation>Quantification</translation>
        </message>
        <message>
            <source>Detection: a difference of %1 in the largest sample volume, undiluted.</source>
            <translation>Détection : une différence de %1 dans le plus grand volume d’échantillon, non dilué.</translation>
        </message>
        <message>
            <source>That difference is common practice, no source; enter your photometer's instead.</source>
            <translation>Cette différence est d’usage courant, sans source ; mettez-y celle de votre photomètre.</translation>
        </message>
        <message>
            <source>Quantification: the window's smallest net signal, %1.</source>
            <translation>Quantification : le plus petit signal net de la fenêtre, %1.</translation>
        </message>
        <message>
            <source>Quantification: 10/3.3 of that difference, %1 (common practice, no source), as the window names no smallest net signal.</source>
            <translation>Quantification : 10/3,3 de cette différence, %1 (usage courant, sans source), car la fenêtre ne nomme pas de plus petit signal net.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::AppraisalPanel</name>
        <message>
            <source>Component</source>
            <translation>Constituant</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>In each tube (mL)</source>
            <translation>Dans chaque tube (mL)</translation>
        </message>
        <message>
            <source>Bottle, mL</source>
            <translation>Flacon, mL</translation>
        </message>
        <message>
            <source>Contents of the bottle (mL)</source>
            <translation>Contenu du flacon (mL)</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>Window, undiluted, in g/L</source>
            <translation>Fenêtre, non dilué, en g/L</translation>
        </message>
        <message>
            <source>Factor: g/L for a net signal of 1</source>
            <translation>Facteur : g/L pour un signal net de 1</translation>
        </message>
        <message>
            <source>Smallest that can be determined, in g/L</source>
            <translation>Plus petite valeur déterminable, en g/L</translation>
        </message>
        <message>
            <source>Smallest difference in absorbance that can be resolved</source>
            <translation>Plus petite différence d’absorbance que l’on puisse distinguer</translation>
        </message>
        <message>
            <source>Tubes that a bottle serves</source>
            <translation>Tubes réalisables avec un flacon</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BackupLine</name>
        <message>
            <source>Backing up: %1 %</source>
            <translation>Sauvegarde en cours : %1 %</translation>
        </message>
        <message>
            <source>No backup yet</source>
            <translation>Pas encore de sauvegarde</translation>
        </message>
        <message>
            <source>Backed up %1</source>
            <translation>Sauvegardé %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BarChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Il n’y a encore rien à tracer.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSession</name>
        <message>
            <source>the program</source>
            <translation>le programme</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BenchSettingsDialog</name>
        <message>
            <source>&amp;Sound when something is due</source>
            <translation>&amp;Son quand une tâche arrive à échéance</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>&amp;Digits alone are thousandths: 512 is 0.512</source>
            <translation>Les &amp;chiffres seuls sont des millièmes : 512 vaut 0,512</translation>
        </message>
        <message>
            <source>&amp;Keep</source>
            <translation>&amp;Garder</translation>
        </message>
        <message>
            <source>Sound, lead time and keying</source>
            <translation>Son, préavis et saisie</translation>
        </message>
        <message>
            <source>S&amp;oon</source>
            <translation>&amp;Bientôt</translation>
        </message>
        <message>
            <source>&amp;Now</source>
            <translation>&amp;Maintenant</translation>
        </message>
        <message>
            <source>La&amp;te</source>
            <translation>&amp;En retard</translation>
        </message>
        <message>
            <source>&amp;Volume</source>
            <translation>&amp;Volume</translation>
        </message>
        <message>
            <source>Listen</source>
            <translation>Écouter</translation>
        </message>
        <message>
            <source>Lead ti&amp;me, before it is due</source>
            <translation>&amp;Préavis, avant l’échéance</translation>
        </message>
        <message>
            <source>Soon is one low tone, now two, late three high ones.</source>
            <translation>Bientôt : un son grave ; maintenant : deux ; en retard : trois sons aigus.</translation>
        </message>
        <message>
            <source>The lead time has to be a whole number of seconds from 0 to %1.</source>
            <translation>Le préavis doit être un nombre entier de secondes de 0 à %1.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>A&amp;nnuler</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BookEntry</name>
        <message>
            <source>Today</source>
            <translation>Aujourd’hui</translation>
        </message>
        <message>
            <source>Toda&amp;y</source>
            <translation>Au&amp;jourd’hui</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cahier</translation>
        </message>
        <message>
            <source>&amp;Notebook</source>
            <translation>Ca&amp;hier</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Cartes de contrôle</translation>
        </message>
        <message>
            <source>&amp;Control charts</source>
            <translation>Cartes de co&amp;ntrôle</translation>
        </message>
        <message>
            <source>Methods</source>
            <translation>Méthodes</translation>
        </message>
        <message>
            <source>&amp;Methods</source>
            <translation>Métho&amp;des</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Échantillons</translation>
        </message>
        <message>
            <source>&amp;Samples</source>
            <translation>Échant&amp;illons</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>&amp;Lots</source>
            <translation>&amp;Lots</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Étalons</translation>
        </message>
        <message>
            <source>St&amp;andards</source>
            <translation>É&amp;talons</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Équipement</translation>
        </message>
        <message>
            <source>E&amp;quipment</source>
            <translation>É&amp;quipement</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Laboratoire</translation>
        </message>
        <message>
            <source>Labora&amp;tory</source>
            <translation>La&amp;boratoire</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personnes</translation>
        </message>
        <message>
            <source>P&amp;eople</source>
            <translation>P&amp;ersonnes</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Limites</translation>
        </message>
        <message>
            <source>Limits of pro&amp;ducts</source>
            <translation>Limites des p&amp;roduits</translation>
        </message>
        <message>
            <source>Records</source>
            <translation>Enregistrements</translation>
        </message>
        <message>
            <source>Records and bac&amp;kups</source>
            <translation>Enregistre&amp;ments et sauvegardes</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::BudgetOwners</name>
        <message>
            <source>A part that begins with a method's name comes from the run by that method; its own review says whose it is.</source>
            <translation>Une partie qui commence par le nom d’une méthode vient de la série faite par cette méthode ; sa propre revue indique ce qui en répond.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellDelegate</name>
        <message>
            <source>new row</source>
            <translation>nouvelle ligne</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsModel</name>
        <message>
            <source>new row</source>
            <translation>nouvelle ligne</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CellsTable</name>
        <message>
            <source>Type to fill a cell, Enter goes on, F2 changes what is there. Insert adds a row, Ctrl+Delete takes it away, Alt+Up and Alt+Down move it, Ctrl+Z takes back.</source>
            <translation>Tapez pour remplir une cellule, Entrée passe à la suivante, F2 modifie ce qui s’y trouve. Inser ajoute une ligne, Ctrl+Suppr l’enlève, Alt+Haut et Alt+Bas la déplacent, Ctrl+Z annule.</translation>
        </message>
        <message>
            <source>Insert row</source>
            <translation>Insérer une ligne</translation>
        </message>
        <message>
            <source>Remove row</source>
            <translation>Enlever la ligne</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Monter</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Descendre</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartExport</name>
        <message>
            <source>The chart was not saved as %1: see that the folder is there, may be written to and has room.</source>
            <translation>La carte n’a pas été enregistrée comme %1 : veillez à ce que le dossier existe, soit ouvert en écriture et ait de la place.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartView</name>
        <message>
            <source>Visible part of the chart</source>
            <translation>Partie visible de la carte</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChartsPage</name>
        <message>
            <source>Control chart</source>
            <translation>Carte de contrôle</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Ce qui est hors maîtrise</translation>
        </message>
        <message>
            <source>First choose the point at which the limits are to begin.</source>
            <translation>Choisissez d’abord le point par lequel les limites doivent commencer.</translation>
        </message>
        <message>
            <source>settings of a control chart that are not saved yet</source>
            <translation>des réglages d’une carte de contrôle qui ne sont pas encore enregistrés</translation>
        </message>
        <message>
            <source>a reason at a point of a control chart</source>
            <translation>un motif à un point d’une carte de contrôle</translation>
        </message>
        <message>
            <source> and </source>
            <translation> et </translation>
        </message>
        <message>
            <source>Nothing of %1 has been decided yet; another chart is shown.</source>
            <translation>Aucune décision n’a encore été prise sur %1 ; une autre carte est affichée.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Version %1, enregistrée par %2, %3.</translation>
        </message>
        <message>
            <source>Not saved yet: these are the usual settings.</source>
            <translation>Pas encore enregistré : ce sont les réglages usuels.</translation>
        </message>
        <message>
            <source>limit %1</source>
            <translation>limite %1</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>seuil %1</translation>
        </message>
        <message>
            <source>No run matches what is chosen above. Clear the lot, the person or a day to see more.</source>
            <translation>Ce qui est choisi ci-dessus ne laisse aucune série. Enlevez le lot, la personne ou un jour pour en voir davantage.</translation>
        </message>
        <message>
            <source>No limits are kept for this product. Bars are expanded uncertainties.</source>
            <translation>Aucune limite n’est gardée pour ce produit. Les barres sont des incertitudes élargies.</translation>
        </message>
        <message>
            <source>Limits of the product: %1. Bars are expanded uncertainties.</source>
            <translation>Limites du produit : %1. Les barres sont des incertitudes élargies.</translation>
        </message>
        <message>
            <source>And %1 more before these; choose days above to see them.</source>
            <translation>Et %1 de plus avant ceux-ci ; choisissez des jours ci-dessus pour les voir.</translation>
        </message>
        <message>
            <source>Nothing lies beyond a limit.</source>
            <translation>Rien ne se trouve au-delà d’une limite.</translation>
        </message>
        <message>
            <source>Nothing is out of control.</source>
            <translation>Rien n’est hors maîtrise.</translation>
        </message>
        <message>
            <source>The settings of this chart are saved; those before stay on record.</source>
            <translation>Les réglages de cette carte sont enregistrés ; les précédents restent consignés.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>Il n’y a rien à enregistrer : c’était déjà enregistré ainsi.</translation>
        </message>
        <message>
            <source>Save the chart</source>
            <translation>Enregistrer la carte</translation>
        </message>
        <message>
            <source>%1.png</source>
            <translation>%1.png</translation>
        </message>
        <message>
            <source>Picture (*.png);;Drawing (*.svg);;Table (*.csv)</source>
            <translation>Image (*.png);;Dessin (*.svg);;Tableau (*.csv)</translation>
        </message>
        <message>
            <source>The chart is saved as %1.</source>
            <translation>La carte est enregistrée comme %1.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Cartes de contrôle</translation>
        </message>
        <message>
            <source>Save the &amp;chart as…</source>
            <translation>Enre&amp;gistrer la carte sous…</translation>
        </message>
        <message>
            <source>Limits and rules, and the loss of the standard</source>
            <translation>Limites et règles, et perte de l’étalon</translation>
        </message>
        <message>
            <source>Limits and rules</source>
            <translation>Limites et règles</translation>
        </message>
        <message>
            <source>Loss per hour</source>
            <translation>Perte par heure</translation>
        </message>
        <message>
            <source>Nothing of this kind has been decided yet. Accept runs with standards, controls, blanks or duplicates in Review; they appear here by themselves.</source>
            <translation>Aucune décision de ce genre n’a encore été prise. Acceptez dans la Revue des séries comportant des étalons, des contrôles, des blancs ou des doubles ; ils arrivent ici d’eux-mêmes.</translation>
        </message>
        <message>
            <source>Nothing stands out against the provisional limits. That is no verdict yet.</source>
            <translation>Rien ne se remarque face aux limites provisoires. Ce n’est pas encore un verdict.</translation>
        </message>
        <message>
            <source>No verdict: this chart has no limits.</source>
            <translation>Pas de verdict : cette carte n’a pas de limites.</translation>
        </message>
        <message>
            <source>Version %1 for all materials together, saved by %2, %3. It holds for this one until its own settings are saved.</source>
            <translation>Version %1 pour tous les matériaux ensemble, enregistrée par %2, %3. Elle vaut pour celui-ci jusqu’à ce que ses propres réglages soient enregistrés.</translation>
        </message>
        <message>
            <source>It was saved with fewer values than limits need; here their number is raised.</source>
            <translation>Elle a été enregistrée avec moins de valeurs que n’en demandent des limites ; ici leur nombre est relevé.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::CheckForm</name>
        <message>
            <source>&amp;What is checked</source>
            <translation>&amp;Ce qui est vérifié</translation>
        </message>
        <message>
            <source>&amp;Day</source>
            <translation>&amp;Jour</translation>
        </message>
        <message>
            <source>A certificate or an instruction: for limits other than those suggested, and for what it was checked with.</source>
            <translation>Un certificat, une instruction ; des limites qui ne sont pas celles proposées, et ce qui a servi à la vérification.</translation>
        </message>
        <message>
            <source>Limits and standards fro&amp;m</source>
            <translation>Li&amp;mites et étalons d’après</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>&amp;Note (peut rester vide)</translation>
        </message>
        <message>
            <source>&amp;Store the check</source>
            <translation>&amp;Enregistrer la vérification</translation>
        </message>
        <message>
            <source>How it is done, and cautions</source>
            <translation>Mode opératoire et précautions</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Ce qui en résulte</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Check of %1</source>
            <translation>Vérification : %1</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Ligne</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
        <message>
            <source>Lines of the check</source>
            <translation>Lignes de la vérification</translation>
        </message>
        <message>
            <source>Cannot be judged yet. %1</source>
            <translation>Pas encore jugeable. %1</translation>
        </message>
        <message>
            <source>Passed: everything lies within its limits.</source>
            <translation>Réussite : tout est dans ses limites.</translation>
        </message>
        <message>
            <source>Failed. Once it is stored, runs that use it carry a warning. Take it out of use, or have it put right and check it again.</source>
            <translation>Échec. Une fois la vérification enregistrée, les séries qui l’emploient reçoivent un avertissement. Mettez l’équipement hors service, ou faites-le remettre en état et vérifiez-le à nouveau.</translation>
        </message>
        <message>
            <source>Standard uncertainty for the budgets (k = 1): %1.</source>
            <translation>Incertitude-type pour les bilans (k = 1) : %1.</translation>
        </message>
        <message>
            <source>Back to the item  Esc</source>
            <translation>Retour à l’équipement  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ChecksModel</name>
        <message>
            <source>fail</source>
            <translation>échec</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>en attente</translation>
        </message>
        <message>
            <source>not judged</source>
            <translation>non jugé</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>noté</translation>
        </message>
        <message>
            <source>pass</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Vérification</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Issue</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Trouvé</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Limite</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Limite d’après</translation>
        </message>
        <message>
            <source>not made</source>
            <translation>pas faite</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Choices</name>
        <message>
            <source>point or comma</source>
            <translation>point ou virgule</translation>
        </message>
        <message>
            <source>point, as 0.512</source>
            <translation>point, comme 0.512</translation>
        </message>
        <message>
            <source>comma, as 0,512</source>
            <translation>virgule, comme 0,512</translation>
        </message>
        <message>
            <source>ASCII or Unicode</source>
            <translation>ASCII ou Unicode</translation>
        </message>
        <message>
            <source>Latin-1 (Western European)</source>
            <translation>Latin-1 (Europe occidentale)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Colours</name>
        <message>
            <source>C&amp;olours</source>
            <translation>&amp;Couleurs</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <translation>Comme le &amp;bureau</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>C&amp;lair</translation>
        </message>
        <message>
            <source>D&amp;ark</source>
            <translation>&amp;Sombre</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnDialog</name>
        <message>
            <source>The lines and what is understood</source>
            <translation>Les lignes et ce qui en est compris</translation>
        </message>
        <message>
            <source>&amp;Paste</source>
            <translation>&amp;Coller</translation>
        </message>
        <message>
            <source>Another &amp;file…</source>
            <translation>Autre &amp;fichier…</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>&amp;Oublier</translation>
        </message>
        <message>
            <source>Ta&amp;ke the readings</source>
            <translation>Prendre les lec&amp;tures</translation>
        </message>
        <message>
            <source>Paste a column of readings</source>
            <translation>Coller une colonne de lectures</translation>
        </message>
        <message>
            <source>Readings from a file</source>
            <translation>Lectures d’un fichier</translation>
        </message>
        <message>
            <source>not remembered</source>
            <translation>non mémorisé</translation>
        </message>
        <message>
            <source>Remem&amp;bered</source>
            <translation>&amp;Mémorisé</translation>
        </message>
        <message>
            <source>Re&amp;member as</source>
            <translation>Mémo&amp;riser sous</translation>
        </message>
        <message>
            <source>&amp;Text with the readings</source>
            <translation>Te&amp;xte avec les lectures</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>none</source>
            <translation>aucun</translation>
        </message>
        <message>
            <source>Text and CSV (*.txt *.csv *.tsv *.dat);;All files (*)</source>
            <translation>Texte et CSV (*.txt *.csv *.tsv *.dat);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1 : %2.</translation>
        </message>
        <message>
            <source>Copy the column where it stands and paste it here.</source>
            <translation>Copiez la colonne là où elle se trouve et collez-la ici.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1</source>
            <translation>Rien ne peut encore être pris : %1</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: %1 lines are not readings; the first is %2</source>
            <translation>Rien ne peut encore être pris : %1 lignes ne sont pas des lectures ; la première est %2</translation>
        </message>
        <message>
            <source>1 reading.</source>
            <translation>1 lecture.</translation>
        </message>
        <message>
            <source>There is no reading in it; look at the lines of heading.</source>
            <translation>Il ne s’y trouve aucune lecture ; regardez les lignes d’en-tête.</translation>
        </message>
        <message>
            <source>%1 readings.</source>
            <translation>%1 lectures.</translation>
        </message>
        <message>
            <source>Nothing can be taken yet: the column counts the tubes. Choose the one of the absorbance, and this one for the tube.</source>
            <translation>Rien ne peut encore être pris : la colonne compte les tubes. Choisissez celle de l’absorbance, et celle-ci pour le tube.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ColumnModel</name>
        <message>
            <source>Line</source>
            <translation>Ligne</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Texte</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tube</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbance</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparedRunsModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>differs</source>
            <translation>diffère</translation>
        </message>
        <message>
            <source>the same</source>
            <translation>identique</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparedRunsView</name>
        <message>
            <source>Only &amp;what differs</source>
            <translation>Seulement ce qui &amp;diffère</translation>
        </message>
        <message>
            <source>Two runs side by side</source>
            <translation>Deux séries côte à côte</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Retour &amp;à la liste</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>The two are the same in everything that is compared here.</source>
            <translation>Les deux sont identiques en tout ce qui est comparé ici.</translation>
        </message>
        <message>
            <source>%1 of %2 lines differ and stand first.</source>
            <translation>%1 lignes sur %2 diffèrent et figurent en premier.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonModel</name>
        <message>
            <source>Field</source>
            <translation>Champ</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ComparisonView</name>
        <message>
            <source>Versions</source>
            <translation>Versions</translation>
        </message>
        <message>
            <source>What differs</source>
            <translation>Ce qui diffère</translation>
        </message>
        <message>
            <source>This is the version on show. Choose another one to see what differs.</source>
            <translation>Ceci est la version affichée. Choisissez-en une autre pour voir ce qui diffère.</translation>
        </message>
        <message>
            <source>There is no other version of this method.</source>
            <translation>Il n’y a pas d’autre version de cette méthode.</translation>
        </message>
        <message>
            <source>version %1</source>
            <translation>version %1</translation>
        </message>
        <message>
            <source>Fields that differ between %1 and %2: %3. Enter on a version opens it.</source>
            <translation>Champs qui diffèrent entre %1 et %2 : %3. Entrée sur une version l’ouvre.</translation>
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
            <translation>Cahiers (*.plateau)</translation>
        </message>
        <message>
            <source>%1 kB</source>
            <translation>%1 ko</translation>
        </message>
        <message>
            <source>Stopped; nothing was made, and nothing is known of the rest.</source>
            <translation>Arrêté ; rien n’a été fait, et l’on ne sait rien du reste.</translation>
        </message>
        <message>
            <source>Are the records intact?</source>
            <translation>Les enregistrements sont-ils intacts ?</translation>
        </message>
        <message>
            <source>Verif&amp;y now</source>
            <translation>V&amp;érifier maintenant</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Arrêter</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Avancement</translation>
        </message>
        <message>
            <source>Backups</source>
            <translation>Sauvegardes</translation>
        </message>
        <message>
            <source>There is no backup of this notebook yet: make one now.</source>
            <translation>Il n’y a pas encore de sauvegarde de ce cahier : faites-en une maintenant.</translation>
        </message>
        <message>
            <source>Backups, the newest first</source>
            <translation>Sauvegardes, de la plus récente à la plus ancienne</translation>
        </message>
        <message>
            <source>Restore &amp;into a new notebook…</source>
            <translation>Res&amp;taurer dans un nouveau cahier…</translation>
        </message>
        <message>
            <source>&amp;Keep them elsewhere…</source>
            <translation>Les &amp;garder ailleurs…</translation>
        </message>
        <message>
            <source>For keeping elsewhere</source>
            <translation>À garder ailleurs</translation>
        </message>
        <message>
            <source>An archive is a notebook of everything up to the end of a year, read-only; nothing is taken out of this one. An export is everything as JSON and CSV, with a page that says how to read it without the program; imported, it is the same notebook again.</source>
            <translation>Une archive est un cahier de tout ce qui précède la fin d’une année, en lecture seule ; rien n’est retiré de celui-ci. Un export est l’ensemble en JSON et CSV, avec une page qui explique comment le lire sans le programme ; importé, c’est à nouveau le même cahier.</translation>
        </message>
        <message>
            <source>&amp;Archive of the year…</source>
            <translation>Archi&amp;ve de l’année…</translation>
        </message>
        <message>
            <source>Year to archive</source>
            <translation>Année à archiver</translation>
        </message>
        <message>
            <source>E&amp;xport everything…</source>
            <translation>E&amp;xporter tout…</translation>
        </message>
        <message>
            <source>Notebook o&amp;ut of an export…</source>
            <translation>&amp;Cahier à partir d’un export…</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Faite</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Taille</translation>
        </message>
        <message>
            <source>File</source>
            <translation>Fichier</translation>
        </message>
        <message>
            <source>Verifying</source>
            <translation>Vérification</translation>
        </message>
        <message numerus="yes">
            <source>%n findings. The first: %1: %2. plateau verify lists them all.</source>
            <translation>
                <numerusform>%n constat : %1 : %2.</numerusform>
                <numerusform>%n constats. Le premier : %1 : %2. plateau verify les énumère tous.</numerusform>
            </translation>
        </message>
        <message>
            <source>Made and checked: %1</source>
            <translation>Faite et vérifiée : %1</translation>
        </message>
        <message>
            <source>Restore into a new notebook</source>
            <translation>Restaurer dans un nouveau cahier</translation>
        </message>
        <message>
            <source>restored.plateau</source>
            <comment>a file name</comment>
            <translation>restaure.plateau</translation>
        </message>
        <message>
            <source>Folder for backups</source>
            <translation>Dossier des sauvegardes</translation>
        </message>
        <message>
            <source>Archive of %1</source>
            <translation>Archive de %1</translation>
        </message>
        <message>
            <source>notebook-%1.plateau</source>
            <comment>a file name</comment>
            <translation>cahier-%1.plateau</translation>
        </message>
        <message>
            <source>Making the archive</source>
            <translation>Création de l’archive</translation>
        </message>
        <message>
            <source>Export everything into a new folder in</source>
            <translation>Exporter tout dans un nouveau dossier de</translation>
        </message>
        <message>
            <source>Exporting</source>
            <translation>Exportation</translation>
        </message>
        <message>
            <source>The folder that an export made</source>
            <translation>Le dossier qu’un export a créé</translation>
        </message>
        <message>
            <source>Import into a new notebook</source>
            <translation>Importer dans un nouveau cahier</translation>
        </message>
        <message>
            <source>imported.plateau</source>
            <comment>a file name</comment>
            <translation>importe.plateau</translation>
        </message>
        <message>
            <source>Importing</source>
            <translation>Importation</translation>
        </message>
        <message>
            <source>Stopped; no backup was made.</source>
            <translation>Arrêté ; aucune sauvegarde n’a été faite.</translation>
        </message>
        <message>
            <source>They go to %1, if the notebook has changed since the last one: when the program starts, every hour, and when it ends, alongside the work. Each is opened and checked. %2</source>
            <translation>Elles vont dans %1, si le cahier a changé depuis la dernière : au démarrage du programme, toutes les heures, et à sa fermeture, sans interrompre le travail. Chacune est ouverte et vérifiée. %2</translation>
        </message>
        <message>
            <source>Intact: %1 audit entries, %2 runs, %3 decisions evaluated and %4 checks of equipment worked out again with the same result. Audit head %5.</source>
            <translation>Intact : %1 entrées d’audit, %2 séries, %3 décisions réévaluées et %4 vérifications d’équipement recalculées, avec le même résultat. Tête de la piste d’audit %5.</translation>
        </message>
        <message>
            <source>Restoring</source>
            <translation>Restauration</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Avancement de la sauvegarde</translation>
        </message>
        <message>
            <source>Stop the ba&amp;ckup</source>
            <translation>Arrêter la sauvegar&amp;de</translation>
        </message>
        <message>
            <source>%1 is the notebook as it was then; this one is kept as it is. Open it by File, Another notebook.</source>
            <translation>%1 est le cahier tel qu’il était alors ; celui-ci est conservé tel quel. Ouvrez-le par Fichier, Un autre cahier.</translation>
        </message>
        <message>
            <source>Back up no&amp;w</source>
            <translation>Sauvegarder &amp;maintenant</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DayExample</name>
        <message>
            <source>as %1</source>
            <comment>a day, in an empty field</comment>
            <translation>comme %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DecisionPanel</name>
        <message>
            <source>&amp;Decided by</source>
            <translation>&amp;Décision par</translation>
        </message>
        <message>
            <source>Pa&amp;ssphrase</source>
            <translation>Phr&amp;ase de passe</translation>
        </message>
        <message>
            <source>Sa&amp;mple by sample</source>
            <translation>Échantillon &amp;par échantillon</translation>
        </message>
        <message>
            <source>&amp;Accept</source>
            <translation>A&amp;ccepter</translation>
        </message>
        <message>
            <source>Re&amp;ject</source>
            <translation>Re&amp;jeter</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mo&amp;tif</translation>
        </message>
        <message>
            <source>by %1</source>
            <translation>par %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>motif : %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>the decision, not taken yet: %1</source>
            <translation>la décision, pas encore prise : %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>This becomes revision %1. %2</source>
            <translation>Ceci devient la révision %1. %2</translation>
        </message>
        <message>
            <source>The run was not accepted: first decide on %1, which must be investigated.</source>
            <translation>La série n’a pas été acceptée : statuez d’abord sur %1, qui est à investiguer.</translation>
        </message>
        <message>
            <source>The run was not decided on: how %1 is to be repeated cannot be read: %2.</source>
            <translation>Aucune décision n’a été prise sur la série : la façon de répéter %1 ne peut pas être lue : %2.</translation>
        </message>
        <message>
            <source>Say who decides: type a name.</source>
            <translation>Indiquez qui statue : tapez un nom.</translation>
        </message>
        <message>
            <source>The passphrase was taken out, since nobody did anything for a minute: type it again.</source>
            <translation>La phrase de passe a été effacée, car rien ne s’est passé pendant une minute : tapez-la à nouveau.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DecisionText</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>analyste</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>réviseur</translation>
        </message>
        <message>
            <source>head</source>
            <translation>responsable</translation>
        </message>
        <message>
            <source>to be repeated, %1</source>
            <translation>à répéter, %1</translation>
        </message>
        <message>
            <source>to be repeated</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>Sample %1: %2</source>
            <translation>Échantillon %1 : %2</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejet</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>acceptation</translation>
        </message>
        <message>
            <source>Sample %1: to be repeated, as the evaluation advises</source>
            <translation>Échantillon %1 : à répéter, comme le conseille l’évaluation</translation>
        </message>
        <message>
            <source>Accepted by %1, %2</source>
            <translation>Acceptée par %1, %2</translation>
        </message>
        <message>
            <source>Rejected by %1, %2</source>
            <translation>Rejetée par %1, %2</translation>
        </message>
        <message>
            <source>revision %1, signed as %2</source>
            <translation>révision %1, signée en tant que %2</translation>
        </message>
        <message>
            <source>revision %1, unsigned</source>
            <translation>révision %1, non signée</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>signed as %1</source>
            <translation>signée en tant que %1</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>non signée</translation>
        </message>
        <message>
            <source>Put back on the bench by %1, %2 (%3); revision %4 begins</source>
            <translation>Remise à la paillasse par %1, %2 (%3) ; la révision %4 commence</translation>
        </message>
        <message>
            <source>%1: %2 %3 by %4</source>
            <translation>%1 : %2 %3 par %4</translation>
        </message>
        <message>
            <source>%1 (stands)</source>
            <translation>%1 (en vigueur)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DestinationsModel</name>
        <message>
            <source>On the bench</source>
            <translation>À la paillasse</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Portoir %1</translation>
        </message>
        <message>
            <source>Books</source>
            <translation>Registres</translation>
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
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Nothing was ticked: %1 of tube %2 in rack %3 is not read yet, and after %4 it cannot be. Read it first, or tick the tube on the Pipette page.</source>
            <translation>Rien n’a été coché : %1 du tube %2 dans le portoir %3 n’est pas encore lu, et après %4 il ne pourra plus l’être. Lisez-le d’abord, ou cochez le tube à la page Pipetage.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftFields</name>
        <message>
            <source>%1, from</source>
            <translation>%1, de</translation>
        </message>
        <message>
            <source>to</source>
            <translation>à</translation>
        </message>
        <message>
            <source>%1, to</source>
            <translation>%1, à</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftTables</name>
        <message>
            <source>Wavelength (nm)</source>
            <translation>Longueur d’onde (nm)</translation>
        </message>
        <message>
            <source>Absorptivity (L/(mol cm))</source>
            <translation>Absorptivité (L/(mol cm))</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Constituant</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Volume (mL)</source>
            <translation>Volume (mL)</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Rôle</translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Réactif</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Diluent</source>
            <translation>Diluant</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Réactif de démarrage</translation>
        </message>
        <message>
            <source>from</source>
            <translation>de</translation>
        </message>
        <message>
            <source>Smallest volume allowed (mL)</source>
            <translation>Plus petit volume permis (mL)</translation>
        </message>
        <message>
            <source>to</source>
            <translation>à</translation>
        </message>
        <message>
            <source>Largest volume allowed (mL)</source>
            <translation>Plus grand volume permis (mL)</translation>
        </message>
        <message>
            <source>Suspension</source>
            <translation>Suspension</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Étape</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Ajouter</translation>
        </message>
        <message>
            <source>Mix</source>
            <translation>Mélanger</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Attendre</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Lire</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>Shortest wait (min)</source>
            <translation>Attente la plus courte (min)</translation>
        </message>
        <message>
            <source>Longest wait (min)</source>
            <translation>Attente la plus longue (min)</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>Lowest temperature (°C)</source>
            <translation>Température la plus basse (°C)</translation>
        </message>
        <message>
            <source>Highest temperature (°C)</source>
            <translation>Température la plus haute (°C)</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>In the tube afterwards (mL)</source>
            <translation>Ensuite dans le tube (mL)</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>M (g/mol)</source>
            <translation>M (g/mol)</translation>
        </message>
        <message>
            <source>Molar mass (g/mol)</source>
            <translation>Masse molaire (g/mol)</translation>
        </message>
        <message>
            <source>n</source>
            <translation>n</translation>
        </message>
        <message>
            <source>Chromophore molecules for each molecule</source>
            <translation>Molécules de chromophore par molécule</translation>
        </message>
        <message>
            <source>From (g/L)</source>
            <translation>De (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold from (g/L)</source>
            <translation>Les échantillons contiennent d’habitude à partir de (g/L)</translation>
        </message>
        <message>
            <source>To (g/L)</source>
            <translation>À (g/L)</translation>
        </message>
        <message>
            <source>Samples usually hold up to (g/L)</source>
            <translation>Les échantillons contiennent d’habitude jusqu’à (g/L)</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Différence</translation>
        </message>
        <message>
            <source>Coupled indicator</source>
            <translation>Indicateur couplé</translation>
        </message>
        <message>
            <source>From</source>
            <translation>De</translation>
        </message>
        <message>
            <source>From reading</source>
            <translation>De la lecture</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Intermédiaire</translation>
        </message>
        <message>
            <source>Middle reading</source>
            <translation>Lecture intermédiaire</translation>
        </message>
        <message>
            <source>To</source>
            <translation>À</translation>
        </message>
        <message>
            <source>To reading</source>
            <translation>À la lecture</translation>
        </message>
        <message>
            <source>Quantity</source>
            <translation>Grandeur</translation>
        </message>
        <message>
            <source>From the method</source>
            <translation>De la méthode</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Fois</translation>
        </message>
        <message>
            <source>this method</source>
            <translation>cette méthode</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::DraftedUncertainty</name>
        <message>
            <source>typed for this run, in place of %1 (%2)</source>
            <translation>tapée pour cette série, à la place de %1 (%2)</translation>
        </message>
        <message>
            <source>whoever plans the run</source>
            <translation>qui prévoit la série</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EntryPanel</name>
        <message>
            <source>&amp;Store</source>
            <translation>Enre&amp;gistrer</translation>
        </message>
        <message>
            <source>Ret&amp;ype  Esc</source>
            <translation>Re&amp;taper  Échap</translation>
        </message>
        <message>
            <source>Read aga&amp;in</source>
            <translation>Rel&amp;ire</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>Re&amp;voir ce portoir</translation>
        </message>
        <message>
            <source>Absorbance of %1</source>
            <translation>Absorbance, %1</translation>
        </message>
        <message>
            <source>Type the absorbance as the photometer shows it, then press Enter.</source>
            <translation>Tapez l’absorbance telle que le photomètre l’indique, puis appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Say why the stored reading is corrected; it stays readable beside the new one.</source>
            <translation>Indiquez pourquoi la lecture enregistrée est corrigée ; elle reste lisible à côté de la nouvelle.</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Indiquez pourquoi le tube compte malgré tout, puis appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Indiquez ce qui est arrivé au tube, puis appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbance</translation>
        </message>
        <message>
            <source>R&amp;eason for the correction</source>
            <translation>&amp;Motif de la correction</translation>
        </message>
        <message>
            <source>Why th&amp;e tube counts after all</source>
            <translation>&amp;Pourquoi le tube compte malgré tout</translation>
        </message>
        <message>
            <source>What happ&amp;ened to the tube</source>
            <translation>Ce qui est a&amp;rrivé au tube</translation>
        </message>
        <message>
            <source>It &amp;counts</source>
            <translation>Il &amp;compte</translation>
        </message>
        <message>
            <source>It does not &amp;count</source>
            <translation>Il ne &amp;compte pas</translation>
        </message>
        <message>
            <source>&amp;Keep as read  Enter</source>
            <translation>&amp;Garder tel que lu  Entrée</translation>
        </message>
        <message>
            <source>&amp;Store the correction</source>
            <translation>&amp;Enregistrer la correction</translation>
        </message>
        <message>
            <source>&amp;Store as a further reading</source>
            <translation>&amp;Enregistrer comme lecture supplémentaire</translation>
        </message>
        <message>
            <source>Correct the last one &amp;instead</source>
            <translation>C&amp;orriger plutôt la dernière</translation>
        </message>
        <message>
            <source>Tube not spoilt  /</source>
            <translation>Tube utilisable  /</translation>
        </message>
        <message>
            <source>Tube spoilt  /</source>
            <translation>Tube inutilisable  /</translation>
        </message>
        <message>
            <source>Not stored yet: the table and the results show what the correction would do. Enter goes to the reason, Enter there stores it, Esc leaves the reading as it is.</source>
            <translation>Pas encore enregistré : le tableau et les résultats montrent ce que ferait la correction. Entrée va au motif, où Entrée l’enregistre, Échap laisse la lecture telle quelle.</translation>
        </message>
        <message>
            <source>Keep the stored va&amp;lue</source>
            <translation>&amp;Garder la valeur enregistrée</translation>
        </message>
        <message>
            <source>Cance&amp;l  Esc</source>
            <translation>A&amp;nnuler  Esc</translation>
        </message>
        <message>
            <source>Read again: what was read before stays, and the result rests on the series. Esc cancels.</source>
            <translation>Lire à nouveau : ce qui a été lu reste, et le résultat repose sur la suite de lectures. Échap annule.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Equipment</name>
        <message>
            <source>Day</source>
            <translation>Jour</translation>
        </message>
        <message>
            <source>Line %1</source>
            <translation>Ligne %1</translation>
        </message>
        <message>
            <source>The lines</source>
            <translation>Les lignes</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Note</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>%1 every %2 days</source>
            <translation>%1 tous les %2 jours</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>one reading:</source>
            <translation>une lecture :</translation>
        </message>
        <message>
            <source>absorbance scale:</source>
            <translation>échelle des absorbances :</translation>
        </message>
        <message>
            <source>path length:</source>
            <translation>trajet optique :</translation>
        </message>
        <message>
            <source>a volume:</source>
            <translation>un volume :</translation>
        </message>
        <message>
            <source>one weighing:</source>
            <translation>une pesée :</translation>
        </message>
        <message>
            <source>temperature:</source>
            <translation>température :</translation>
        </message>
        <message>
            <source>The name</source>
            <translation>Le nom</translation>
        </message>
        <message>
            <source>The serial number</source>
            <translation>Le numéro de série</translation>
        </message>
        <message>
            <source>The volume</source>
            <translation>Le volume</translation>
        </message>
        <message>
            <source>The smallest volume</source>
            <translation>Le plus petit volume</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Ce qui est vérifié</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Trouvé</translation>
        </message>
        <message>
            <source>Allowed</source>
            <translation>Permis</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Limit from</source>
            <translation>Limite d’après</translation>
        </message>
        <message>
            <source>no limit</source>
            <translation>pas de limite</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>échec</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentModel</name>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Type</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>Checked until</source>
            <translation>Vérifié jusqu’au</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volume</translation>
        </message>
        <message>
            <source>Serial number</source>
            <translation>Numéro de série</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::EquipmentPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Équipement</translation>
        </message>
        <message>
            <source>What is checked</source>
            <translation>Ce qui est vérifié</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, kind or state</source>
            <translation>&amp;Trouver nom, type ou état</translation>
        </message>
        <message>
            <source>Nothing is in the book yet. Add the photometer, pipettes, flasks, balance, thermometers and cuvettes that are checked; their checks then say what is due, warn of what failed, and give the budgets their figures.</source>
            <translation>Le registre est encore vide. Ajoutez le photomètre, les pipettes, fioles, balance, thermomètres et cuves qui sont vérifiés ; leurs vérifications indiquent alors ce qui est à faire, avertissent de ce qui a échoué et donnent leurs chiffres aux bilans.</translation>
        </message>
        <message>
            <source>No item contains all of these words. Remove one to find more.</source>
            <translation>Aucun équipement ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>Out of &amp;use too</source>
            <translation>Hors s&amp;ervice compris</translation>
        </message>
        <message>
            <source>&amp;Add an item…</source>
            <translation>&amp;Ajouter un équipement…</translation>
        </message>
        <message>
            <source>An item of equipment or a check, not stored yet</source>
            <translation>Un équipement ou une vérification, pas encore enregistrés</translation>
        </message>
        <message>
            <source>In the book: %1. Key its first check.</source>
            <translation>Dans le registre : %1. Saisissez sa première vérification.</translation>
        </message>
        <message>
            <source>%1 is changed; its checks keep what held then.</source>
            <translation>%1 est modifié ; ses vérifications gardent ce qui valait alors.</translation>
        </message>
        <message>
            <source>The check is in the book.</source>
            <translation>La vérification est dans le registre.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Example</name>
        <message>
            <source>%1: %2 %3</source>
            <translation>%1 : %2 %3</translation>
        </message>
        <message>
            <source>%1: %2 ± %3 %4 (k = %5)</source>
            <translation>%1 : %2 ± %3 %4 (k = %5)</translation>
        </message>
        <message>
            <source>The method cannot be tried yet: first put right what the list of problems names.</source>
            <translation>La méthode ne peut pas encore être essayée : corrigez d’abord ce que nomme la liste des problèmes.</translation>
        </message>
        <message>
            <source>Type the readings of the blank and of the sample.</source>
            <translation>Tapez les lectures du blanc et de l’échantillon.</translation>
        </message>
        <message>
            <source>example</source>
            <translation>exemple</translation>
        </message>
        <message>
            <source>dilution, take</source>
            <translation>dilution, prélever</translation>
        </message>
        <message>
            <source>dilution, make up to</source>
            <translation>dilution, compléter à</translation>
        </message>
        <message>
            <source>volume of the sample</source>
            <translation>volume de l’échantillon</translation>
        </message>
        <message>
            <source>%1 of the blank</source>
            <translation>%1 du blanc</translation>
        </message>
        <message>
            <source>%1 of the sample</source>
            <translation>%1 de l’échantillon</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ExampleSection</name>
        <message>
            <source>Reading</source>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>Blank</source>
            <translation>Blanc</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Ce qui en résulte</translation>
        </message>
        <message>
            <source>The calculation written out</source>
            <translation>Le calcul détaillé</translation>
        </message>
        <message>
            <source>Try the method with numbers of your own</source>
            <translation>Essayer la méthode avec vos propres nombres</translation>
        </message>
        <message>
            <source>One blank and one sample. Nothing of it is kept.</source>
            <translation>Un blanc et un échantillon. Rien n’en est gardé.</translation>
        </message>
        <message>
            <source>Readings of the example</source>
            <translation>Lectures de l’exemple</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>With its uncertainty, from the usual standard uncertainties</source>
            <translation>Avec son incertitude, d’après les incertitudes-types usuelles</translation>
        </message>
        <message>
            <source>Sample in the tube, if not as usual</source>
            <translation>Échantillon dans le tube, si différent de l’usuel</translation>
        </message>
        <message>
            <source>Dilution, if any: take</source>
            <translation>Dilution éventuelle : prélever</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>compléter à</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Feasibility</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>The hands are never free for a minute until the last reading.</source>
            <translation>Les mains ne sont jamais libres une minute jusqu’à la dernière lecture.</translation>
        </message>
        <message>
            <source>Hands free, counted from the first start: %1.</source>
            <translation>Mains libres, comptées à partir du premier démarrage : %1.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Start a tube every %1: then every tube is read within its waiting times.</source>
            <translation>Démarrez un tube tous les %1 : chaque tube est alors lu dans ses délais.</translation>
        </message>
        <message>
            <source>The tube can be read within its waiting times.</source>
            <translation>Le tube peut être lu dans ses délais.</translation>
        </message>
        <message>
            <source>Pipetting before the first start takes about %1.</source>
            <translation>Le pipetage avant le premier démarrage prend environ %1.</translation>
        </message>
        <message>
            <source>First reading %1 after the first start, last one done after %2.</source>
            <translation>Première lecture %1 après le premier démarrage, la dernière terminée après %2.</translation>
        </message>
        <message>
            <source>Not even one tube is done within %1: this method takes longer. Allow more time.</source>
            <translation>Pas même un tube n’est terminé en %1 : cette méthode dure plus longtemps. Accordez plus de temps.</translation>
        </message>
        <message>
            <source>One person cannot read %1 tubes within their waiting times in %2: at most %3.</source>
            <translation>Une seule personne ne peut pas lire %1 tubes dans leurs délais en %2 : %3 au plus.</translation>
        </message>
        <message>
            <source>Blanks and standards alone fill such a rack; fewer of them, or more time, leave room for samples.</source>
            <translation>Les blancs et les étalons seuls remplissent un tel portoir ; en mettre moins, ou accorder plus de temps, laisse de la place aux échantillons.</translation>
        </message>
        <message>
            <source>Allow more time, or split it into %1 racks of %2 tubes, each with its own blanks and standards.</source>
            <translation>Accordez plus de temps, ou répartissez-le en %1 portoirs de %2 tubes, chacun avec ses propres blancs et étalons.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> et </translation>
        </message>
        <message>
            <source>second rack (%1, tubes: %2)</source>
            <translation>second portoir (%1, tubes : %2)</translation>
        </message>
        <message>
            <source>A %1 cannot be done beside this one in the time allowed; start it afterwards.</source>
            <translation>Un %1 ne peut pas être fait à côté de celui-ci dans le temps accordé ; démarrez-le ensuite.</translation>
        </message>
        <message>
            <source>A %1 does not fit into the waiting times of this one: it can start at %2, when this one is done.</source>
            <translation>Un %1 ne trouve pas de place dans les délais de celui-ci : il peut démarrer à %2, quand celui-ci est terminé.</translation>
        </message>
        <message>
            <source>A %1 can start at %2, a tube every %3; both racks keep their waiting times, and the last reading is done at %4.</source>
            <translation>Un %1 peut démarrer à %2, un tube tous les %3 ; les deux portoirs respectent leurs délais, et la dernière lecture est terminée à %4.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FieldNote</name>
        <message>
            <source>and %1 more</source>
            <translation>et %1 de plus</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::FirstStart</name>
        <message>
            <source>&amp;Make a notebook for your laboratory</source>
            <translation>&amp;Créer un cahier pour votre laboratoire</translation>
        </message>
        <message>
            <source>&amp;Use a notebook that is there already</source>
            <translation>&amp;Utiliser un cahier qui existe déjà</translation>
        </message>
        <message>
            <source>&amp;Try the sample notebook</source>
            <translation>&amp;Essayer le cahier d’exemple</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <translation>Comme&amp;ncer</translation>
        </message>
        <message>
            <source>Plateau: the first start</source>
            <translation>Plateau : le premier démarrage</translation>
        </message>
        <message>
            <source>Where is the notebook?</source>
            <translation>Où est le cahier ?</translation>
        </message>
        <message>
            <source>Plateau keeps runs, readings, lots and decisions in one file, the notebook. It is only ever added to, and backed up automatically.</source>
            <translation>Plateau garde les séries, les lectures, les lots et les décisions dans un seul fichier, le cahier. On ne fait qu’y ajouter, et il est sauvegardé automatiquement.</translation>
        </message>
        <message>
            <source>The bench, the books and the control charts of an invented company that makes cider and packs dried fruit. It is a copy, thrown away when the window closes.</source>
            <translation>La paillasse, les registres et les cartes de contrôle d’une entreprise inventée qui fait du cidre et conditionne des fruits secs. C’est une copie, jetée à la fermeture de la fenêtre.</translation>
        </message>
        <message>
            <source>The notebook %1 is not there. See that its disk is connected and begin again, or choose where it is now.</source>
            <translation>Le cahier %1 n’est pas là. Vérifiez que son disque est connecté et recommencez, ou choisissez où il est maintenant.</translation>
        </message>
        <message>
            <source>Notebooks (*.plateau);;All files (*)</source>
            <translation>Cahiers (*.plateau);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Make a notebook</source>
            <translation>Créer un cahier</translation>
        </message>
        <message>
            <source>Use a notebook</source>
            <translation>Utiliser un cahier</translation>
        </message>
        <message>
            <source>Laborator&amp;y's name</source>
            <translation>Nom du &amp;laboratoire</translation>
        </message>
        <message>
            <source>Your &amp;name, as it stands on records</source>
            <translation>Votre nom, tel &amp;qu’il figure sur les enregistrements</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>&amp;Fichier</translation>
        </message>
        <message>
            <source>&amp;Elsewhere…</source>
            <translation>&amp;Ailleurs…</translation>
        </message>
        <message>
            <source>F&amp;ile</source>
            <translation>F&amp;ichier</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <translation>Ch&amp;oisir…</translation>
        </message>
        <message>
            <source>The laboratory's name is still missing; it heads every report.</source>
            <translation>Le nom du laboratoire manque encore ; il figure en tête de chaque rapport.</translation>
        </message>
        <message>
            <source>Your name is still missing; it stands on whatever you record.</source>
            <translation>Votre nom manque encore ; il figure sur tout ce que vous enregistrez.</translation>
        </message>
        <message>
            <source>The file is still missing: its whole path, such as %1.</source>
            <translation>Le fichier manque encore : son chemin complet, par exemple %1.</translation>
        </message>
        <message>
            <source>There is no file %1; see that the name is right.</source>
            <translation>Il n’y a pas de fichier %1 ; vérifiez que le nom est juste.</translation>
        </message>
        <message>
            <source>There is a file %1 already; use that notebook, or give the new one another name.</source>
            <translation>Il y a déjà un fichier %1 ; utilisez ce cahier, ou donnez un autre nom au nouveau.</translation>
        </message>
        <message>
            <source>A first rac&amp;k in ten minutes</source>
            <translation>Un premier &amp;portoir en dix minutes</translation>
        </message>
        <message>
            <source>The help for the first minutes with the sample notebook; F1 opens it as well</source>
            <translation>L’aide pour les premières minutes avec le cahier d’exemple ; F1 l’ouvre aussi</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <translation>Fer&amp;mer</translation>
        </message>
        <message>
            <source>Plateau: another notebook</source>
            <translation>Plateau : un autre cahier</translation>
        </message>
        <message>
            <source>Which notebook?</source>
            <translation>Quel cahier ?</translation>
        </message>
        <message>
            <source>It opens in a window of its own; the one that is open now stays as it is.</source>
            <translation>Il s’ouvre dans sa propre fenêtre ; celui qui est ouvert maintenant reste tel quel.</translation>
        </message>
        <message>
            <source>&amp;Open this notebook whenever the program starts</source>
            <translation>Ouvrir &amp;désormais ce cahier au démarrage du programme</translation>
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
            <translation>de mL</translation>
        </message>
        <message>
            <source>Smallest volume (mL)</source>
            <translation>Plus petit volume (mL)</translation>
        </message>
        <message>
            <source>to mL</source>
            <translation>à mL</translation>
        </message>
        <message>
            <source>Largest volume (mL)</source>
            <translation>Plus grand volume (mL)</translation>
        </message>
        <message>
            <source>in steps of mL</source>
            <translation>par pas de mL</translation>
        </message>
        <message>
            <source>Setting increment (mL); empty for a fixed-volume pipette</source>
            <translation>Pas de réglage (mL) ; vide pour une pipette à volume fixe</translation>
        </message>
        <message>
            <source>u %</source>
            <translation>u %</translation>
        </message>
        <message>
            <source>Relative standard uncertainty of a volume (k = 1), in %</source>
            <translation>Incertitude-type relative d’un volume (k = 1), en %</translation>
        </message>
        <message>
            <source>Volumetric flask</source>
            <translation>Fiole jaugée</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Volume (mL)</source>
            <translation>Volume (mL)</translation>
        </message>
        <message>
            <source>Relative standard uncertainty of the volume (k = 1), in %</source>
            <translation>Incertitude-type relative du volume (k = 1), en %</translation>
        </message>
        <message>
            <source>Pipettes and flasks</source>
            <translation>Pipettes et fioles</translation>
        </message>
        <message>
            <source>Dilutions are planned with these, and their uncertainties go into the budgets. u: relative standard uncertainty (k = 1) of a volume. %1</source>
            <translation>Les dilutions sont prévues avec elles, et leurs incertitudes entrent dans les bilans. u : incertitude-type relative (k = 1) d’un volume. %1</translation>
        </message>
        <message>
            <source>Pipettes</source>
            <translation>Pipettes</translation>
        </message>
        <message>
            <source>Volumetric flasks</source>
            <translation>Fioles jaugées</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpDesk</name>
        <message>
            <source>en</source>
            <comment>the folder of the help in this language; en where there is none</comment>
            <translation>fr</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpListModel</name>
        <message>
            <source>%1, in %2: %3</source>
            <comment>a section of the help, its page, a line of it</comment>
            <translation>%1, dans %2 : %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HelpWindow</name>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Précédent</translation>
        </message>
        <message>
            <source>&amp;Forward</source>
            <translation>&amp;Suivant</translation>
        </message>
        <message>
            <source>&amp;Search the help</source>
            <translation>&amp;Chercher dans l’aide</translation>
        </message>
        <message>
            <source>To what was read before (Alt+Left)</source>
            <translation>Vers ce qui a été lu avant (Alt+Gauche)</translation>
        </message>
        <message>
            <source>To what was read after it (Alt+Right)</source>
            <translation>Vers ce qui a été lu après (Alt+Droite)</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Précédent</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Suivant</translation>
        </message>
        <message>
            <source>Search</source>
            <translation>Chercher</translation>
        </message>
        <message>
            <source>Leave the search, then the help</source>
            <translation>Quitter la recherche, puis l’aide</translation>
        </message>
        <message>
            <source>Close the help</source>
            <translation>Fermer l’aide</translation>
        </message>
        <message>
            <source>No section contains all of these words. Try fewer of them, or only their first letters.</source>
            <translation>Aucune section ne contient tous ces mots. Essayez avec moins de mots, ou seulement leur début.</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Sommaire</translation>
        </message>
        <message>
            <source>Sections found</source>
            <translation>Sections trouvées</translation>
        </message>
        <message>
            <source>%1 lies outside the help and is not opened from here.</source>
            <translation>%1 se trouve hors de l’aide et n’est pas ouvert d’ici.</translation>
        </message>
        <message>
            <source>The help has no page “%1” yet.</source>
            <translation>L’aide n’a pas encore de page « %1 ».</translation>
        </message>
        <message>
            <source>This page exists in English only.</source>
            <translation>Cette page n’existe qu’en anglais.</translation>
        </message>
        <message>
            <source>No page of the help is part of this program.</source>
            <translation>Ce programme ne contient aucune page d’aide.</translation>
        </message>
        <message>
            <source>Help of Plateau</source>
            <translation>Aide de Plateau</translation>
        </message>
        <message>
            <source>%1 – Help of Plateau</source>
            <translation>%1 – Aide de Plateau</translation>
        </message>
        <message>
            <source>Page of the help</source>
            <translation>Page de l’aide</translation>
        </message>
        <message>
            <source>Sections found: %1</source>
            <translation>Sections trouvées : %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::HistoryModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1, corrected</source>
            <translation>%1, corrigée</translation>
        </message>
        <message>
            <source>from a file</source>
            <translation>d’un fichier</translation>
        </message>
        <message>
            <source>%1 of the line “%2”</source>
            <translation>%1 de la ligne « %2 »</translation>
        </message>
        <message>
            <source>read again</source>
            <translation>relue</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Tube</translation>
        </message>
        <message>
            <source>Point</source>
            <translation>Point</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbance</translation>
        </message>
        <message>
            <source>As keyed</source>
            <translation>Comme saisi</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Heure</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentIntake</name>
        <message>
            <source>Not remembered</source>
            <translation>Non mémorisé</translation>
        </message>
        <message>
            <source>What was set is used now, but not remembered for the next time: %1 can't be written.</source>
            <translation>Ce qui a été réglé est employé maintenant, mais non mémorisé pour la prochaine fois : %1 ne peut pas être écrit.</translation>
        </message>
        <message>
            <source>Not listening to a photometer.</source>
            <translation>Aucun photomètre n’est écouté.</translation>
        </message>
        <message>
            <source>Listening to %1: %2</source>
            <translation>À l’écoute de %1 : %2</translation>
        </message>
        <message>
            <source>Waiting for %1: %2</source>
            <translation>En attente de %1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::InstrumentRoute</name>
        <message>
            <source>The photometer sent “%1”: %2</source>
            <translation>Le photomètre a envoyé « %1 » : %2</translation>
        </message>
        <message>
            <source>A reading has come in that waits for an answer: go to Read of rack %1.</source>
            <translation>Une lecture est arrivée qui attend une réponse : allez à Lecture du portoir %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemForm</name>
        <message>
            <source>It &amp;is in use</source>
            <translation>En ser&amp;vice</translation>
        </message>
        <message>
            <source>&amp;What it is</source>
            <translation>&amp;Type d’équipement</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>Serial or inventory n&amp;umber</source>
            <translation>N&amp;uméro de série ou d’inventaire</translation>
        </message>
        <message>
            <source>Volume, or the &amp;largest (mL)</source>
            <translation>Volume, ou le plus &amp;grand (mL)</translation>
        </message>
        <message>
            <source>S&amp;mallest volume it is used for (mL)</source>
            <translation>&amp;Plus petit volume employé (mL)</translation>
        </message>
        <message>
            <source>Whole days; empty where this is not checked.</source>
            <translation>Jours entiers ; vide si cela n’est pas vérifié.</translation>
        </message>
        <message>
            <source>Check %1 every (days)</source>
            <translation>Intervalle en jours : %1</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>&amp;Motif de la modification</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Enre&amp;gistrer dans le registre</translation>
        </message>
        <message>
            <source>Add an item</source>
            <translation>Ajouter un équipement</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>Modifier %1</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Indiquez pourquoi il est modifié ; le registre le garde.</translation>
        </message>
        <message>
            <source>Give pipettes, flasks and the photometer the names they have in Laboratory: what a check finds then replaces the list's uncertainty, and a run that used one which failed or was overdue says so.</source>
            <translation>Donnez aux pipettes, aux fioles et au photomètre les noms qu’ils ont dans Laboratoire : ce que trouve une vérification remplace alors l’incertitude de la liste, et une série le dit si l’un d’eux avait échoué ou était en retard de vérification.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ItemView</name>
        <message>
            <source>Day</source>
            <translation>Jour</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Vérification</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>annulée</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>échec</translation>
        </message>
        <message>
            <source>How it stands</source>
            <translation>Situation</translation>
        </message>
        <message>
            <source>&amp;Key a check…</source>
            <translation>Saisir une vérifica&amp;tion…</translation>
        </message>
        <message>
            <source>&amp;Change the item…</source>
            <translation>Modifier l’é&amp;quipement…</translation>
        </message>
        <message>
            <source>Checks of the item</source>
            <translation>Vérifications de l’équipement</translation>
        </message>
        <message>
            <source>No check is in the book yet. Key the first one; until then budgets use what the laboratory's list says.</source>
            <translation>Aucune vérification n’est encore dans le registre. Saisissez la première ; jusque-là les bilans prennent ce que dit la liste du laboratoire.</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Vérifications</translation>
        </message>
        <message>
            <source>Findings of the check</source>
            <translation>Constats de la vérification</translation>
        </message>
        <message>
            <source>Keyed &amp;wrongly, because</source>
            <translation>&amp;Mal saisie, motif</translation>
        </message>
        <message>
            <source>Keyed wrongly, because</source>
            <translation>Mal saisie, motif</translation>
        </message>
        <message>
            <source>&amp;Take it back</source>
            <translation>&amp;Annuler la vérification</translation>
        </message>
        <message>
            <source>The chosen check</source>
            <translation>La vérification choisie</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>Out of use: nothing is due, and no budget rests on it.</source>
            <translation>Hors service : rien n’est à faire, et aucun bilan n’en dépend.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Choose a check to see what was found.</source>
            <translation>Choisissez une vérification pour voir ce qui a été trouvé.</translation>
        </message>
        <message>
            <source>Check %1 of %2: %3.</source>
            <translation>Vérification %1 du %2 : %3.</translation>
        </message>
        <message>
            <source>Standard uncertainty (k = 1): %1.</source>
            <translation>Incertitude-type (k = 1) : %1.</translation>
        </message>
        <message>
            <source>Source: %1.</source>
            <translation>Source : %1.</translation>
        </message>
        <message>
            <source>Note: %1</source>
            <translation>Note : %1</translation>
        </message>
        <message>
            <source>Say why it does not count; the book keeps it.</source>
            <translation>Indiquez pourquoi elle ne compte pas ; le registre le garde.</translation>
        </message>
        <message>
            <source>Taken back: the check stays in the book and does not count.</source>
            <translation>Annulée : la vérification reste dans le registre et ne compte pas.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Keys</name>
        <message>
            <source>Everywhere</source>
            <translation>Partout</translation>
        </message>
        <message>
            <source>Tab, Shift+Tab</source>
            <translation>Tab, Maj+Tab</translation>
        </message>
        <message>
            <source>To the next field or button, to the one before</source>
            <translation>Au champ ou au bouton suivant, au précédent</translation>
        </message>
        <message>
            <source>Alt and the underlined letter</source>
            <translation>Alt et la lettre soulignée</translation>
        </message>
        <message>
            <source>To the field, button or tab with that letter</source>
            <translation>Au champ, au bouton ou à l’onglet portant cette lettre</translation>
        </message>
        <message>
            <source>F10</source>
            <translation>F10</translation>
        </message>
        <message>
            <source>Into the menus; arrow keys, Enter and Esc from there</source>
            <translation>Dans les menus ; de là, touches fléchées, Entrée et Échap</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Entrée</translation>
        </message>
        <message>
            <source>In a list: open; on a button: press; in a form: what its main button does</source>
            <translation>Dans une liste : ouvrir ; sur un bouton : l’actionner ; dans un formulaire : ce que fait son bouton principal</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Échap</translation>
        </message>
        <message>
            <source>Back to the list, or leave what was begun; what is not stored is asked about</source>
            <translation>Retour à la liste, ou abandon de ce qui est commencé ; ce qui n’est pas enregistré fait l’objet d’une question</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Bas</translation>
        </message>
        <message>
            <source>In a field with an arrow: what is offered; in a search: into the list</source>
            <translation>Dans un champ avec une flèche : ce qui est proposé ; dans une recherche : dans la liste</translation>
        </message>
        <message>
            <source>New run</source>
            <translation>Nouvelle série</translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipetage</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Tubes selon le temps</translation>
        </message>
        <message>
            <source>Review, sample by sample</source>
            <translation>Revue, échantillon par échantillon</translation>
        </message>
        <message>
            <source>Ctrl and an arrow key</source>
            <translation>Ctrl et une touche fléchée</translation>
        </message>
        <message>
            <source>In the rack: move the tube</source>
            <translation>Dans le portoir : déplacer le tube</translation>
        </message>
        <message>
            <source>Space</source>
            <translation>Espace</translation>
        </message>
        <message>
            <source>Tick the tube; the next one waits</source>
            <translation>Cocher le tube ; le suivant attend</translation>
        </message>
        <message>
            <source>Tick the row</source>
            <translation>Cocher le rang</translation>
        </message>
        <message>
            <source>-, Backspace</source>
            <translation>-, Retour arrière</translation>
        </message>
        <message>
            <source>Take back the last tick</source>
            <translation>Annuler la dernière coche</translation>
        </message>
        <message>
            <source>The tube is spoilt; asks why</source>
            <translation>Le tube est inutilisable ; demande pourquoi</translation>
        </message>
        <message>
            <source>Store the reading, or ask about it where it cannot be right</source>
            <translation>Enregistrer la lecture, ou interroger là où elle ne peut pas être juste</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Haut, Bas</translation>
        </message>
        <message>
            <source>The tube before, the next one</source>
            <translation>Le tube précédent, le suivant</translation>
        </message>
        <message>
            <source>Space, in an empty entry</source>
            <translation>Espace, dans une saisie vide</translation>
        </message>
        <message>
            <source>What is next is done now</source>
            <translation>Marquer la suite comme faite</translation>
        </message>
        <message>
            <source>Type the reading again; leave it as it was</source>
            <translation>Saisir la lecture à nouveau ; la laisser telle qu’elle était</translation>
        </message>
        <message>
            <source>Up, Down, Page Up, Page Down, Home, End</source>
            <translation>Haut, Bas, Page préc., Page suiv., Origine, Fin</translation>
        </message>
        <message>
            <source>From tube to tube</source>
            <translation>De tube en tube</translation>
        </message>
        <message>
            <source>To that tube</source>
            <translation>À ce tube</translation>
        </message>
        <message>
            <source>Accept the sample</source>
            <translation>Accepter l’échantillon</translation>
        </message>
        <message>
            <source>Reject the sample</source>
            <translation>Rejeter l’échantillon</translation>
        </message>
        <message>
            <source>Delete, Backspace</source>
            <translation>Suppr, Retour arrière</translation>
        </message>
        <message>
            <source>Undecided again</source>
            <translation>À nouveau non décidé</translation>
        </message>
        <message>
            <source>Enter, F2</source>
            <translation>Entrée, F2</translation>
        </message>
        <message>
            <source>Change the cell</source>
            <translation>Modifier la cellule</translation>
        </message>
        <message>
            <source>Control charts</source>
            <translation>Cartes de contrôle</translation>
        </message>
        <message>
            <source>Tables that are typed in</source>
            <translation>Tableaux à saisir</translation>
        </message>
        <message>
            <source>Methods, Laboratory, Limits, Samples</source>
            <translation>Méthodes, Laboratoire, Limites, Échantillons</translation>
        </message>
        <message>
            <source>Left, Right</source>
            <translation>Gauche, Droite</translation>
        </message>
        <message>
            <source>From point to point</source>
            <translation>De point en point</translation>
        </message>
        <message>
            <source>Ctrl+Left, Ctrl+Right</source>
            <translation>Ctrl+Gauche, Ctrl+Droite</translation>
        </message>
        <message>
            <source>From one point out of control to the next</source>
            <translation>D’un point hors maîtrise au suivant</translation>
        </message>
        <message>
            <source>Page Up, Page Down</source>
            <translation>Page préc., Page suiv.</translation>
        </message>
        <message>
            <source>Ten points on</source>
            <translation>Dix points plus loin</translation>
        </message>
        <message>
            <source>Home, End</source>
            <translation>Origine, Fin</translation>
        </message>
        <message>
            <source>The first point, the last one</source>
            <translation>Le premier point, le dernier</translation>
        </message>
        <message>
            <source>Fewer points in view, more of them</source>
            <translation>Moins de points en vue, davantage de points</translation>
        </message>
        <message>
            <source>All points</source>
            <translation>Tous les points</translation>
        </message>
        <message>
            <source>Open the run of the point</source>
            <translation>Ouvrir la série du point</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Suppr</translation>
        </message>
        <message>
            <source>Empty the cell</source>
            <translation>Vider la cellule</translation>
        </message>
        <message>
            <source>Insert, Ctrl+Delete</source>
            <translation>Inser, Ctrl+Suppr</translation>
        </message>
        <message>
            <source>New row, remove the row</source>
            <translation>Nouvelle ligne, enlever la ligne</translation>
        </message>
        <message>
            <source>Alt+Up, Alt+Down</source>
            <translation>Alt+Haut, Alt+Bas</translation>
        </message>
        <message>
            <source>Move the row</source>
            <translation>Déplacer la ligne</translation>
        </message>
        <message>
            <source>Ctrl+Z</source>
            <translation>Ctrl+Z</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Ctrl+V</source>
            <translation>Ctrl+V</translation>
        </message>
        <message>
            <source>Paste a column of names into the table of samples</source>
            <translation>Coller une colonne de noms dans le tableau des échantillons</translation>
        </message>
        <message>
            <source>Ctrl+S</source>
            <translation>Ctrl+S</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Enregistrer</translation>
        </message>
        <message>
            <source>Alt+1, Alt+2 …</source>
            <translation>Alt+1, Alt+2 …</translation>
        </message>
        <message>
            <source>To the sections of a method or of the laboratory</source>
            <translation>Aux sections d’une méthode ou du laboratoire</translation>
        </message>
        <message>
            <source>Menu %1</source>
            <translation>Menu %1</translation>
        </message>
        <message>
            <source>Keys of Plateau</source>
            <translation>Touches de Plateau</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>Everything can be done without the mouse.</source>
            <translation>Tout peut se faire sans la souris.</translation>
        </message>
        <message>
            <source>where</source>
            <translation>où</translation>
        </message>
        <message>
            <source>keys</source>
            <translation>touches</translation>
        </message>
        <message>
            <source>what they do</source>
            <translation>ce qu’elles font</translation>
        </message>
        <message>
            <source>F1</source>
            <translation>F1</translation>
        </message>
        <message>
            <source>The help for what is in front, in dialogs too</source>
            <translation>L’aide sur ce qui est affiché, dans les dialogues aussi</translation>
        </message>
        <message>
            <source>Window of the help</source>
            <translation>Fenêtre de l’aide</translation>
        </message>
        <message>
            <source>Alt+Left, Alt+Right</source>
            <translation>Alt+Gauche, Alt+Droite</translation>
        </message>
        <message>
            <source>To the page read before, to the one after it</source>
            <translation>Vers la page lue avant, vers celle lue après</translation>
        </message>
        <message>
            <source>Ctrl+F</source>
            <translation>Ctrl+F</translation>
        </message>
        <message>
            <source>To the search</source>
            <translation>Vers la recherche</translation>
        </message>
        <message>
            <source>In the search: the first section found; on a link: follow it</source>
            <translation>Dans la recherche : la première section trouvée ; sur un lien : le suivre</translation>
        </message>
        <message>
            <source>In the page: to the next link, to the one before</source>
            <translation>Dans la page : vers le lien suivant, vers le précédent</translation>
        </message>
        <message>
            <source>Empty the search; close the help where nothing is searched</source>
            <translation>Vider la recherche ; fermer l’aide si rien n’est cherché</translation>
        </message>
        <message>
            <source>Send it back to the samples that wait, to be repeated</source>
            <translation>La remettre parmi les échantillons en attente, pour être répétée</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>Sort by the column the keys are in, falling or rising; once more: as it was</source>
            <translation>Trier selon la colonne où se trouve le clavier, en descendant ou en montant ; encore une fois : comme avant</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::KeysDialog</name>
        <message>
            <source>Where</source>
            <translation>Où</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Touches</translation>
        </message>
        <message>
            <source>What they do</source>
            <translation>Ce qu’elles font</translation>
        </message>
        <message>
            <source>&amp;Save as PDF, to print…</source>
            <translation>&amp;Enregistrer en PDF, pour imprimer…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Fermer</translation>
        </message>
        <message>
            <source>Keys of Plateau.pdf</source>
            <translation>Touches de Plateau.pdf</translation>
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
            <translation> ; </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LabelSheetDialog</name>
        <message>
            <source>&amp;Usual sheet</source>
            <translation>&amp;Planche usuelle</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>&amp;Enregistrer en PDF…</translation>
        </message>
        <message>
            <source>Labels as PDF</source>
            <translation>Étiquettes en PDF</translation>
        </message>
        <message>
            <source>A4, 210 × 297 mm</source>
            <translation>A4, 210 × 297 mm</translation>
        </message>
        <message>
            <source>Letter, 8.5 × 11 inch</source>
            <translation>Letter, 8,5 × 11 pouces</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>P&amp;apier</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>&amp;Columns</source>
            <translation>&amp;Colonnes</translation>
        </message>
        <message>
            <source>&amp;Rows</source>
            <translation>&amp;Rangs</translation>
        </message>
        <message>
            <source>&amp;Width of a label</source>
            <translation>&amp;Largeur d’une étiquette</translation>
        </message>
        <message>
            <source>&amp;Height of a label</source>
            <translation>&amp;Hauteur d’une étiquette</translation>
        </message>
        <message>
            <source>&amp;Left margin</source>
            <translation>Marge &amp;gauche</translation>
        </message>
        <message>
            <source>&amp;Top margin</source>
            <translation>&amp;Marge supérieure</translation>
        </message>
        <message>
            <source>Gap &amp;between columns</source>
            <translation>Écart e&amp;ntre colonnes</translation>
        </message>
        <message>
            <source>&amp;Gap between rows</source>
            <translation>Écart entre rang&amp;s</translation>
        </message>
        <message>
            <source>&amp;First free label</source>
            <translation>Première é&amp;tiquette libre</translation>
        </message>
        <message>
            <source>&amp;Made by</source>
            <translation>&amp;Fait par</translation>
        </message>
        <message>
            <source>a line to write on</source>
            <translation>une ligne à remplir</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>%1: type a number.</source>
            <translation>%1 : tapez un nombre.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1: type a whole number from 1 to %2.</source>
            <translation>%1 : tapez un nombre entier de 1 à %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LabelSheetPicture</name>
        <message>
            <source>The sheet of labels</source>
            <translation>La planche d’étiquettes</translation>
        </message>
        <message>
            <source>The sheet is drawn once its numbers are right.</source>
            <translation>La planche est tracée dès que ses nombres sont corrects.</translation>
        </message>
        <message>
            <source>Labels to print: %1, from label %2 of %3 on (row %4, column %5). Sheets needed: %6. Hatched: gone.</source>
            <translation>Étiquettes à imprimer : %1, à partir de l’étiquette %2 sur %3 (rang %4, colonne %5). Planches nécessaires : %6. Hachuré : déjà prises.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Labels</name>
        <message>
            <source>The first free label is %1, but the sheet has labels 1 to %2.</source>
            <translation>La première étiquette libre est %1, mais la planche a les étiquettes 1 à %2.</translation>
        </message>
        <message>
            <source>extract: %1 in %2</source>
            <translation>extrait : %1 dans %2</translation>
        </message>
        <message>
            <source>1 in %1: %2</source>
            <translation>1/%1 : %2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>made</source>
            <translation>préparé</translation>
        </message>
        <message>
            <source>use by</source>
            <translation>utiliser jusqu’au</translation>
        </message>
        <message>
            <source>by</source>
            <translation>par</translation>
        </message>
        <message>
            <source>A sheet has at least one column and one row of labels.</source>
            <translation>Une planche a au moins une colonne et un rang d’étiquettes.</translation>
        </message>
        <message>
            <source>A label of %1 by %2 can't be read; it needs at least %3 by %4.</source>
            <translation>Une étiquette de %1 sur %2 est illisible ; il faut au moins %3 sur %4.</translation>
        </message>
        <message>
            <source>Margins and gaps of a sheet of labels are 0 mm or more.</source>
            <translation>Les marges et écarts d’une planche d’étiquettes sont de 0 mm ou plus.</translation>
        </message>
        <message>
            <source>The labels take %1 by %2, but the paper has only %3 by %4.</source>
            <translation>Les étiquettes prennent %1 sur %2, mais le papier n’a que %3 sur %4.</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Étiquettes</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryDraft</name>
        <message>
            <source>name and report head</source>
            <translation>nom et en-tête des rapports</translation>
        </message>
        <message>
            <source>rack and times</source>
            <translation>portoir et temps</translation>
        </message>
        <message>
            <source>pipettes and flasks</source>
            <translation>pipettes et fioles</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>photomètre</translation>
        </message>
        <message>
            <source>uncertainties by method</source>
            <translation>incertitudes par méthode</translation>
        </message>
        <message>
            <source>units of products</source>
            <translation>unités des produits</translation>
        </message>
        <message>
            <source>review</source>
            <translation>revue</translation>
        </message>
        <message>
            <source>is not chosen yet; choose one</source>
            <translation>n’est pas encore choisi ; choisissez-en un</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Changes to the laboratory that are not saved yet</source>
            <translation>Modifications du laboratoire qui ne sont pas encore enregistrées</translation>
        </message>
        <message>
            <source>Common practice, no source: replace it with your own. Nobody has saved this laboratory yet; until then plans go by what stands here.</source>
            <translation>Usage courant, sans source : mettez le vôtre à la place. Personne n’a encore enregistré ce laboratoire ; jusque-là les plans suivent ce qui figure ici.</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3.</source>
            <translation>Version %1, enregistrée par %2, %3.</translation>
        </message>
        <message>
            <source>Plans made from now on go by it; racks on the bench keep theirs.</source>
            <translation>Les plans faits à partir de maintenant la suivent ; les portoirs à la paillasse gardent la leur.</translation>
        </message>
        <message>
            <source>%1 Stored: %2. %3</source>
            <translation>%1 Enregistré : %2. %3</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Encore à corriger (%1), Entrée y mène :</translation>
        </message>
        <message>
            <source>Changed, and not saved yet.</source>
            <translation>Modifié, et pas encore enregistré.</translation>
        </message>
        <message>
            <source>%1, to be put right: %2</source>
            <translation>%1, à corriger : %2</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Rien n’est encore enregistré : corrigez d’abord ce que nomme la liste.</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>Il n’y a rien à enregistrer : la version %1 dit exactement cela.</translation>
        </message>
        <message>
            <source>everything as it stood here</source>
            <translation>tout ce qui figurait ici</translation>
        </message>
        <message>
            <source>Laboratory</source>
            <translation>Laboratoire</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Enre&amp;gistrer</translation>
        </message>
        <message>
            <source>&amp;Drop the changes</source>
            <translation>&amp;Abandonner les modifications</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the laboratory</source>
            <translation>Sections du laboratoire</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt avec le numéro de la section y mène de partout.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LaboratoryPlaces</name>
        <message>
            <source>Pipettes</source>
            <translation>Pipettes</translation>
        </message>
        <message>
            <source>Pipette %1</source>
            <translation>Pipette %1</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>smallest volume</source>
            <translation>plus petit volume</translation>
        </message>
        <message>
            <source>largest volume</source>
            <translation>plus grand volume</translation>
        </message>
        <message>
            <source>step</source>
            <translation>pas</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <translation>incertitude</translation>
        </message>
        <message>
            <source>Flasks</source>
            <translation>Fioles</translation>
        </message>
        <message>
            <source>Flask %1</source>
            <translation>Fiole %1</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volume</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Incertitudes par méthode</translation>
        </message>
        <message>
            <source>Row %1</source>
            <translation>Ligne %1</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>dilution step</source>
            <translation>étape de dilution</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>source</source>
            <translation>source</translation>
        </message>
        <message>
            <source>Units of products</source>
            <translation>Unités des produits</translation>
        </message>
        <message>
            <source>product</source>
            <translation>produit</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mesurande</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unité</translation>
        </message>
        <message>
            <source>Reasons</source>
            <translation>Motifs</translation>
        </message>
        <message>
            <source>Reason %1</source>
            <translation>Motif %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Address</source>
            <translation>Adresse</translation>
        </message>
        <message>
            <source>Contact</source>
            <translation>Contact</translation>
        </message>
        <message>
            <source>Logo</source>
            <translation>Logo</translation>
        </message>
        <message>
            <source>Rows of a rack</source>
            <translation>Rangs d’un portoir</translation>
        </message>
        <message>
            <source>Columns of a rack</source>
            <translation>Colonnes d’un portoir</translation>
        </message>
        <message>
            <source>Time for an addition</source>
            <translation>Temps pour un ajout</translation>
        </message>
        <message>
            <source>Time to mix</source>
            <translation>Temps pour mélanger</translation>
        </message>
        <message>
            <source>Time for a reading</source>
            <translation>Temps pour une lecture</translation>
        </message>
        <message>
            <source>Reagent beyond the need</source>
            <translation>Réactif au-delà du besoin</translation>
        </message>
        <message>
            <source>Photometer, name</source>
            <translation>Photomètre, nom</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of a reading</source>
            <translation>Photomètre, incertitude d’une lecture</translation>
        </message>
        <message>
            <source>Photometer, uncertainty of the path length</source>
            <translation>Photomètre, incertitude du trajet optique</translation>
        </message>
        <message>
            <source>Photometer, check record</source>
            <translation>Photomètre, enregistrement de vérification</translation>
        </message>
        <message>
            <source>Photometer, checked on</source>
            <translation>Photomètre, vérifié le</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LastBackup</name>
        <message>
            <source>%1 Close the window once more to leave without a backup.</source>
            <translation>%1 Fermez la fenêtre encore une fois pour quitter sans sauvegarde.</translation>
        </message>
        <message>
            <source>A last backup is being made; after it the window closes by itself.</source>
            <translation>Une dernière sauvegarde est en cours ; la fenêtre se fermera ensuite d’elle-même.</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>&amp;Fermer sans elle</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Sauvegarde</translation>
        </message>
        <message>
            <source>Progress of the backup</source>
            <translation>Avancement de la sauvegarde</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LedgerModel</name>
        <message>
            <source>When</source>
            <translation>Quand</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volume</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Note</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsDraft</name>
        <message>
            <source>this limit from this source is in the list already; change that one</source>
            <translation>cette limite de cette source est déjà dans la liste ; modifiez celle-là</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Lower limit</source>
            <translation>Limite inférieure</translation>
        </message>
        <message>
            <source>Threshold</source>
            <translation>Seuil</translation>
        </message>
        <message>
            <source>Upper limit</source>
            <translation>Limite supérieure</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>À la date du</translation>
        </message>
        <message>
            <source>Guard band</source>
            <translation>Bande de garde</translation>
        </message>
        <message>
            <source>is empty; say what it is a limit of</source>
            <translation>est vide ; indiquez à quoi s’applique la limite</translation>
        </message>
        <message>
            <source>is empty; say what is measured</source>
            <translation>est vide ; indiquez ce qui est mesuré</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsModel</name>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Type</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Limite</translation>
        </message>
        <message>
            <source>Decision rule</source>
            <translation>Règle de décision</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>À la date du</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Limits of products</source>
            <translation>Limites des produits</translation>
        </message>
        <message>
            <source>Fin&amp;d by product, measurand or source</source>
            <translation>&amp;Trouver produit, mesurande ou source</translation>
        </message>
        <message>
            <source>No limits yet. Add the limits of your products, each with the source it stands in and its date; Review then says of every result whether it lies inside, outside, or cannot be decided at its uncertainty.</source>
            <translation>Pas encore de limites. Ajoutez les limites de vos produits, chacune avec la source où elle figure et sa date ; la Revue dit alors de chaque résultat s’il est dans les limites, hors des limites ou indécidable avec son incertitude.</translation>
        </message>
        <message>
            <source>No limit contains all of these words. Remove one to find more.</source>
            <translation>Aucune limite ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>&amp;Add a limit…</source>
            <translation>&amp;Ajouter une limite…</translation>
        </message>
        <message>
            <source>Version %1, saved by %2, %3. The versions before it stay on record.</source>
            <translation>Version %1, enregistrée par %2, %3. Les versions antérieures restent consignées.</translation>
        </message>
        <message>
            <source>A limit of a product that is not saved yet</source>
            <translation>Une limite d’un produit qui n’est pas encore enregistrée</translation>
        </message>
        <message>
            <source>Saved: %1, %2, %3.</source>
            <translation>Enregistré : %1, %2, %3.</translation>
        </message>
        <message>
            <source>The limit is removed; the versions that had it stay on record.</source>
            <translation>La limite est enlevée ; les versions qui l’avaient restent consignées.</translation>
        </message>
        <message>
            <source>There is nothing to save: it was saved like this already.</source>
            <translation>Il n’y a rien à enregistrer : c’était déjà enregistré ainsi.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsSection</name>
        <message>
            <source>Measuring window</source>
            <translation>Fenêtre de mesure</translation>
        </message>
        <message>
            <source>The last two may stay empty: then they are not judged.</source>
            <translation>Les deux dernières peuvent rester vides : elles ne sont alors pas jugées.</translation>
        </message>
        <message>
            <source>Smallest net signal</source>
            <translation>Plus petit signal net</translation>
        </message>
        <message>
            <source>Largest net signal</source>
            <translation>Plus grand signal net</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Plus grande absorbance</translation>
        </message>
        <message>
            <source>What must remain of a falling reagent</source>
            <translation>Ce qui doit rester d’un réactif dont l’absorbance baisse</translation>
        </message>
        <message>
            <source>What a run has to keep</source>
            <translation>Ce qu’une série doit respecter</translation>
        </message>
        <message>
            <source>Leave empty what is not judged.</source>
            <translation>Laissez vide ce qui n’est pas jugé.</translation>
        </message>
        <message>
            <source>Largest signal of a blank</source>
            <translation>Plus grand signal d’un blanc</translation>
        </message>
        <message>
            <source>Recovery of the standard</source>
            <translation>Taux de récupération de l’étalon</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Taux de récupération d’un ajout dosé</translation>
        </message>
        <message>
            <source>Duplicates differ by at most</source>
            <translation>Les doubles diffèrent au plus de</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>plus this share of the mean</source>
            <translation>plus cette part de la moyenne</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Étalon usuel</translation>
        </message>
        <message>
            <source>What a new run starts from.</source>
            <translation>Point de départ d’une nouvelle série.</translation>
        </message>
        <message>
            <source>Concentration</source>
            <translation>Concentration</translation>
        </message>
        <message>
            <source>Loses</source>
            <translation>Perd</translation>
        </message>
        <message>
            <source>% of its strength an hour</source>
            <translation>% de son titre par heure</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Tubes d’un portoir</translation>
        </message>
        <message>
            <source>How many a new run starts from. All empty: the method has no rule.</source>
            <translation>Combien au départ d’une nouvelle série. Tout vide : la méthode n’a pas de règle.</translation>
        </message>
        <message>
            <source>Blanks</source>
            <translation>Blancs</translation>
        </message>
        <message>
            <source>Of each sample</source>
            <translation>De chaque échantillon</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Étalons</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsView</name>
        <message>
            <source>A limit of a product</source>
            <translation>Une limite d’un produit</translation>
        </message>
        <message>
            <source>Change a limit</source>
            <translation>Modifier une limite</translation>
        </message>
        <message>
            <source>Thresho&amp;ld</source>
            <translation>Seui&amp;l</translation>
        </message>
        <message>
            <source>&amp;Upper limit</source>
            <translation>Limite s&amp;upérieure</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Encore à corriger (%1), Entrée y mène :</translation>
        </message>
        <message>
            <source>Nothing is saved yet: say why the list changes; the reason stands in the record.</source>
            <translation>Rien n’est encore enregistré : indiquez pourquoi la liste change ; le motif figure dans l’enregistrement.</translation>
        </message>
        <message>
            <source>Nothing is saved yet: first put right what the list names.</source>
            <translation>Rien n’est encore enregistré : corrigez d’abord ce que nomme la liste.</translation>
        </message>
        <message>
            <source>This is not saved: save it, or go back once more to drop what was typed.</source>
            <translation>Ceci n’est pas enregistré : enregistrez-le, ou revenez encore une fois pour abandonner ce qui a été tapé.</translation>
        </message>
        <message>
            <source>Produc&amp;t</source>
            <translation>&amp;Produit</translation>
        </message>
        <message>
            <source>&amp;Measurand</source>
            <translation>&amp;Mesurande</translation>
        </message>
        <message>
            <source>&amp;Kind</source>
            <translation>&amp;Type</translation>
        </message>
        <message>
            <source>&amp;Lower limit</source>
            <translation>Limite &amp;inférieure</translation>
        </message>
        <message>
            <source>Un&amp;it</source>
            <translation>Unit&amp;é</translation>
        </message>
        <message>
            <source>Sour&amp;ce</source>
            <translation>Sour&amp;ce</translation>
        </message>
        <message>
            <source>Where the limit stands: specification, contract, regulation with its article.</source>
            <translation>Où figure la limite : spécification, contrat, règlement avec son article.</translation>
        </message>
        <message>
            <source>&amp;As of</source>
            <translation>À la d&amp;ate du</translation>
        </message>
        <message>
            <source>Decision rul&amp;e</source>
            <translation>Règle de &amp;décision</translation>
        </message>
        <message>
            <source>Guar&amp;d band</source>
            <translation>&amp;Bande de garde</translation>
        </message>
        <message>
            <source>Its si&amp;ze</source>
            <translation>Sa lar&amp;geur</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Motif de la modificatio&amp;n</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>Enre&amp;gistrer</translation>
        </message>
        <message>
            <source>Take it awa&amp;y</source>
            <translation>Enle&amp;ver</translation>
        </message>
        <message>
            <source>As it is called where samples are registered.</source>
            <translation>Comme il est nommé à l’inscription des échantillons.</translation>
        </message>
        <message>
            <source>A result is judged as: %1, %2 in %3.</source>
            <translation>Un résultat est jugé ainsi : %1, %2 (%3).</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
        <message>
            <source>The date of the source, or the day it was read, as %1.</source>
            <translation>Le jour dont date la source, ou auquel elle a été lue, comme %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LimitsWords</name>
        <message>
            <source>Maximum</source>
            <translation>Maximum</translation>
        </message>
        <message>
            <source>Minimum</source>
            <translation>Minimum</translation>
        </message>
        <message>
            <source>Range</source>
            <translation>Intervalle</translation>
        </message>
        <message>
            <source>Label threshold</source>
            <translation>Seuil d’étiquetage</translation>
        </message>
        <message>
            <source>one-sided 95 % (1.64 u, more for few readings)</source>
            <translation>unilatérale à 95 % (1,64 u, plus s’il y a peu de lectures)</translation>
        </message>
        <message>
            <source>a multiple of the expanded uncertainty U</source>
            <translation>un multiple de l’incertitude élargie U</translation>
        </message>
        <message>
            <source>fixed, in the unit of the limit</source>
            <translation>fixe, dans l’unité de la limite</translation>
        </message>
        <message>
            <source>%1, one-sided 95 %</source>
            <translation>%1, unilatérale à 95 %</translation>
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
            <translation>Dans les limites jusqu’à la limite elle-même, hors des limites au-delà ; l’incertitude ne déplace pas la ligne.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside beyond the limit; between the two it cannot be decided.</source>
            <translation>Dans les limites seulement jusqu’à la bande de garde en deçà de la limite, hors des limites au-delà de la limite ; entre les deux, indécidable.</translation>
        </message>
        <message>
            <source>Inside up to the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Dans les limites jusqu’à la limite, hors des limites seulement à partir de la bande de garde au-delà ; entre les deux, indécidable.</translation>
        </message>
        <message>
            <source>Inside only up to the guard band before the limit, outside only from the guard band beyond it; between the two it cannot be decided.</source>
            <translation>Dans les limites seulement jusqu’à la bande de garde en deçà de la limite, hors des limites seulement à partir de la bande de garde au-delà ; entre les deux, indécidable.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LineSource</name>
        <message>
            <source>Not connected.</source>
            <translation>Non connecté.</translation>
        </message>
        <message>
            <source>Connecting to %1.</source>
            <translation>Connexion à %1.</translation>
        </message>
        <message>
            <source>Connected to %1.</source>
            <translation>Connecté à %1.</translation>
        </message>
        <message>
            <source>The connection to %1 has ended: %2. Trying again until it is back.</source>
            <translation>La connexion à %1 a pris fin : %2. Nouvelles tentatives jusqu’à son retour.</translation>
        </message>
        <message>
            <source>No connection to %1: %2. Trying again until it is there.</source>
            <translation>Pas de connexion à %1 : %2. Nouvelles tentatives jusqu’à ce qu’elle soit là.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinesModel</name>
        <message>
            <source>Line</source>
            <translation>Ligne</translation>
        </message>
        <message>
            <source>Absorbance</source>
            <translation>Absorbance</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Link</name>
        <message>
            <source>Choose or type the serial port, as ttyUSB0.</source>
            <translation>Choisissez ou tapez le port série, par exemple ttyUSB0.</translation>
        </message>
        <message>
            <source>Serial port: %1.</source>
            <translation>Port série : %1.</translation>
        </message>
        <message>
            <source>The speed is a whole number from %1 to %2 baud.</source>
            <translation>La vitesse est un nombre entier de %1 à %2 bauds.</translation>
        </message>
        <message>
            <source>A character has 7 or 8 data bits and 1 or 2 stop bits.</source>
            <translation>Un signe a 7 ou 8 bits de données et 1 ou 2 bits d’arrêt.</translation>
        </message>
        <message>
            <source>Type the photometer's name or address in the network.</source>
            <translation>Tapez le nom ou l’adresse du photomètre sur le réseau.</translation>
        </message>
        <message>
            <source>Host: %1.</source>
            <translation>Hôte : %1.</translation>
        </message>
        <message>
            <source>The port number is a whole number from 1 to 65535.</source>
            <translation>Le numéro de port est un nombre entier de 1 à 65535.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LinkForm</name>
        <message>
            <source>serial port</source>
            <translation>port série</translation>
        </message>
        <message>
            <source>network (TCP)</source>
            <translation>réseau (TCP)</translation>
        </message>
        <message>
            <source>Connected b&amp;y</source>
            <translation>&amp;Liaison</translation>
        </message>
        <message>
            <source>no parity</source>
            <translation>sans parité</translation>
        </message>
        <message>
            <source>even parity</source>
            <translation>parité paire</translation>
        </message>
        <message>
            <source>odd parity</source>
            <translation>parité impaire</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 1 stop bit</source>
            <translation>%1%2%3 : %1 bits de données, %4, 1 bit d’arrêt</translation>
        </message>
        <message>
            <source>%1%2%3: %1 data bits, %4, 2 stop bits</source>
            <translation>%1%2%3 : %1 bits de données, %4, 2 bits d’arrêt</translation>
        </message>
        <message>
            <source>none</source>
            <translation>aucun</translation>
        </message>
        <message>
            <source>hardware (RTS/CTS)</source>
            <translation>matériel (RTS/CTS)</translation>
        </message>
        <message>
            <source>software (XON/XOFF)</source>
            <translation>logiciel (XON/XOFF)</translation>
        </message>
        <message>
            <source>Po&amp;rt</source>
            <translation>Po&amp;rt</translation>
        </message>
        <message>
            <source>&amp;Speed (baud)</source>
            <translation>Vitesse (&amp;bauds)</translation>
        </message>
        <message>
            <source>&amp;Format</source>
            <translation>&amp;Format</translation>
        </message>
        <message>
            <source>F&amp;low control</source>
            <translation>Contrôle de flu&amp;x</translation>
        </message>
        <message>
            <source>name or address</source>
            <translation>nom ou adresse</translation>
        </message>
        <message>
            <source>1 to 65535</source>
            <translation>1 à 65535</translation>
        </message>
        <message>
            <source>&amp;Host</source>
            <translation>&amp;Hôte</translation>
        </message>
        <message>
            <source>Port num&amp;ber</source>
            <translation>N&amp;uméro de port</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ListenDialog</name>
        <message>
            <source>What the sample lines give</source>
            <translation>Ce que donnent les lignes d’exemple</translation>
        </message>
        <message>
            <source>Lines that came in, the last one on top</source>
            <translation>Lignes arrivées, la dernière en haut</translation>
        </message>
        <message>
            <source>&amp;Connect</source>
            <translation>&amp;Connecter</translation>
        </message>
        <message>
            <source>For&amp;get</source>
            <translation>&amp;Oublier</translation>
        </message>
        <message>
            <source>&amp;Use the lines that came in</source>
            <translation>&amp;Employer les lignes arrivées</translation>
        </message>
        <message>
            <source>Stop lis&amp;tening</source>
            <translation>Arrêter l’éc&amp;oute</translation>
        </message>
        <message>
            <source>Take readings</source>
            <translation>Recevoir des lectures</translation>
        </message>
        <message>
            <source>Listen to a photometer</source>
            <translation>Écouter un photomètre</translation>
        </message>
        <message>
            <source>another one</source>
            <translation>un autre</translation>
        </message>
        <message>
            <source>Give the photometer a name to remember it by.</source>
            <translation>Donnez au photomètre un nom sous lequel le mémoriser.</translation>
        </message>
        <message>
            <source>Connect before readings are taken.</source>
            <translation>Connectez avant de recevoir des lectures.</translation>
        </message>
        <message>
            <source>%1 Nothing is taken while this window is open.</source>
            <translation>%1 Rien n’est pris tant que cette fenêtre est ouverte.</translation>
        </message>
        <message>
            <source>Dis&amp;connect</source>
            <translation>&amp;Déconnecter</translation>
        </message>
        <message>
            <source>Connection</source>
            <translation>Connexion</translation>
        </message>
        <message>
            <source>&amp;Photometer</source>
            <translation>&amp;Photomètre</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>to remember it by</source>
            <translation>sous lequel le mémoriser</translation>
        </message>
        <message>
            <source>How a line is read</source>
            <translation>Comment une ligne est lue</translation>
        </message>
        <message>
            <source>Paste some lines of the photometer here, or use those that came in.</source>
            <translation>Collez ici quelques lignes du photomètre, ou employez celles qui sont arrivées.</translation>
        </message>
        <message>
            <source>Try it &amp;out on sample lines</source>
            <translation>Es&amp;sayer sur des lignes d’exemple</translation>
        </message>
        <message>
            <source>What came in, the last line on top</source>
            <translation>Ce qui est arrivé, la dernière ligne en haut</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Listener</name>
        <message>
            <source>Not connected.</source>
            <translation>Non connecté.</translation>
        </message>
        <message>
            <source>The connection ended in the middle of this line, so it is not a reading.</source>
            <translation>La connexion a pris fin au milieu de cette ligne, ce n’est donc pas une lecture.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoField</name>
        <message>
            <source>&amp;Load a picture…</source>
            <translation>&amp;Charger une image…</translation>
        </message>
        <message>
            <source>Remove &amp;it</source>
            <translation>Enle&amp;ver</translation>
        </message>
        <message>
            <source>Load the logo</source>
            <translation>Charger le logo</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg);;All files (*)</source>
            <translation>Images (*.png *.svg);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>cannot be drawn</source>
            <translation>ne peut pas être dessiné</translation>
        </message>
        <message>
            <source>no logo</source>
            <translation>pas de logo</translation>
        </message>
        <message>
            <source>%1. On a report it is at most 48 mm wide and 20 mm high.</source>
            <translation>%1. Sur un rapport, il fait au plus 48 mm de large et 20 mm de haut.</translation>
        </message>
        <message>
            <source>A PNG or SVG picture; reports without one begin with the name alone.</source>
            <translation>Une image PNG ou SVG ; les rapports qui n’en ont pas commencent par le nom seul.</translation>
        </message>
        <message>
            <source>Rep&amp;lace it…</source>
            <translation>Rem&amp;placer…</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LogoFile</name>
        <message>
            <source>it cannot be drawn</source>
            <translation>elle ne peut pas être dessinée</translation>
        </message>
        <message>
            <source>%1 was not taken: %2. Choose a PNG or SVG picture of at most %3 kB.</source>
            <translation>%1 n’a pas été pris : %2. Choisissez une image PNG ou SVG d’au plus %3 ko.</translation>
        </message>
        <message>
            <source>it cannot be opened (%1)</source>
            <translation>elle ne peut pas être ouverte (%1)</translation>
        </message>
        <message>
            <source>it has %1 kB</source>
            <translation>elle fait %1 ko</translation>
        </message>
        <message>
            <source>it is neither a PNG nor an SVG picture</source>
            <translation>ce n’est ni une image PNG ni une image SVG</translation>
        </message>
        <message>
            <source>SVG, %1 kB</source>
            <translation>SVG, %1 ko</translation>
        </message>
        <message>
            <source>PNG, %1 × %2 pixels, %3 kB</source>
            <translation>PNG, %1 × %2 pixels, %3 ko</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LossPicture</name>
        <message>
            <source>What was left of the standard, against its age</source>
            <translation>Ce qui restait de l’étalon, selon son âge</translation>
        </message>
        <message>
            <source>age at use in h</source>
            <translation>âge à l’emploi en h</translation>
        </message>
        <message>
            <source>found, in % of what was weighed</source>
            <translation>trouvé en % de ce qui a été pesé</translation>
        </message>
        <message>
            <source>found</source>
            <translation>trouvé</translation>
        </message>
        <message>
            <source>fitted</source>
            <translation>ajusté</translation>
        </message>
        <message>
            <source>as stated</source>
            <translation>comme indiqué</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotKeepingForm</name>
        <message>
            <source>%1: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>%1 : donnez des jours entiers, 0 pour ce seul jour, ou rien si personne ne l’indique.</translation>
        </message>
        <message>
            <source>&amp;In what</source>
            <translation>Dans &amp;quoi</translation>
        </message>
        <message>
            <source>Number of ali&amp;quots</source>
            <translation>&amp;Nombre d’aliquotes</translation>
        </message>
        <message>
            <source>&amp;Keeps dissolved (days)</source>
            <translation>&amp;Conservation dissous (jours)</translation>
        </message>
        <message>
            <source>Once &amp;thawed (days)</source>
            <translation>Une fois &amp;décongelé (jours)</translation>
        </message>
        <message>
            <source>&amp;Where it is kept</source>
            <translation>&amp;Lieu de stockage</translation>
        </message>
        <message>
            <source>Co&amp;ldest there (°C)</source>
            <translation>Mi&amp;nimum là (°C)</translation>
        </message>
        <message>
            <source>War&amp;mest there (°C)</source>
            <translation>Ma&amp;ximum là (°C)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Vide si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Empty where only the warmest counts, as in a freezer below −10 °C.</source>
            <translation>Vide si seul le maximum compte, comme dans un congélateur sous −10 °C.</translation>
        </message>
        <message>
            <source>%1, lot %2 (%3 left)</source>
            <translation>%1, lot %2 (reste %3)</translation>
        </message>
        <message>
            <source>&amp;Keep as stored (days)</source>
            <translation>&amp;Conservation ainsi stocké (jours)</translation>
        </message>
        <message>
            <source>Say in what it was dissolved: choose a container, or key it, as water.</source>
            <translation>Indiquez dans quoi il a été dissous : choisissez un flacon, ou saisissez-le, par exemple eau.</translation>
        </message>
        <message>
            <source>Keeps dissolved</source>
            <translation>Conservation dissous</translation>
        </message>
        <message>
            <source>Say how many aliquots there are: a whole number, 1 or more.</source>
            <translation>Indiquez combien d’aliquotes il y a : un nombre entier, 1 ou plus.</translation>
        </message>
        <message>
            <source>Keep as stored</source>
            <translation>Conservation ainsi stocké</translation>
        </message>
        <message>
            <source>Once thawed</source>
            <translation>Une fois décongelé</translation>
        </message>
        <message>
            <source>Once thawed: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Une fois décongelé : donnez des jours entiers, 1 ou plus, ou rien si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Say where it is kept, as freezer 2, upper drawer.</source>
            <translation>Indiquez où il est gardé, par exemple congélateur 2, tiroir du haut.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotLabelForm</name>
        <message>
            <source>&amp;Reagent</source>
            <translation>R&amp;éactif</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>Lo&amp;t</translation>
        </message>
        <message>
            <source>Last good &amp;day</source>
            <translation>Dernier &amp;jour de validité</translation>
        </message>
        <message>
            <source>&amp;Keeps once opened (days)</source>
            <translation>&amp;Conservation après ouverture (jours)</translation>
        </message>
        <message>
            <source>Empty where none is stated.</source>
            <translation>Vide si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Say which reagent it is, by the name that the methods use.</source>
            <translation>Indiquez de quel réactif il s’agit, par le nom que les méthodes emploient.</translation>
        </message>
        <message>
            <source>Say which lot it is, as it stands on the label; for water or a buffer of your own the day it was made will do.</source>
            <translation>Indiquez de quel lot il s’agit, comme sur l’étiquette ; pour de l’eau ou un tampon maison, le jour de préparation suffit.</translation>
        </message>
        <message>
            <source>Last good day: %1</source>
            <translation>Dernier jour de validité : %1</translation>
        </message>
        <message>
            <source>Keeps once opened: give whole days, 1 or more, or nothing where none is stated.</source>
            <translation>Conservation après ouverture : donnez des jours entiers, 1 ou plus, ou rien si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Keeps once d&amp;issolved (days)</source>
            <translation>Conservation d&amp;issous (jours)</translation>
        </message>
        <message>
            <source>For what comes dry; 0: on that day only. Empty where none is stated.</source>
            <translation>Pour ce qui arrive sec ; 0 : ce seul jour. Vide si personne ne l’indique.</translation>
        </message>
        <message>
            <source>Keeps once dissolved: give whole days, 0 for that day only, or nothing where none is stated.</source>
            <translation>Conservation dissous : donnez des jours entiers, 0 pour ce seul jour, ou rien si personne ne l’indique.</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Comme %1, ou un mois comme %2. Vide si rien n’est indiqué.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotView</name>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lot %2</translation>
        </message>
        <message>
            <source>left: %1</source>
            <translation>reste : %1</translation>
        </message>
        <message>
            <source>keeps once opened: %1 days</source>
            <translation>conservation après ouverture : %1 jours</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>According to the ledger %1, of which runs took %2; left: %3.</source>
            <translation>D’après le journal %1, dont %2 pris par des séries ; reste : %3.</translation>
        </message>
        <message>
            <source>It was opened</source>
            <translation>Il a été ouvert</translation>
        </message>
        <message>
            <source>Some was taken outside a run</source>
            <translation>Une partie a été prise hors d’une série</translation>
        </message>
        <message>
            <source>Some was spilt or thrown away</source>
            <translation>Une partie a été renversée ou jetée</translation>
        </message>
        <message>
            <source>Another volume was found in it</source>
            <translation>Un autre volume y a été trouvé</translation>
        </message>
        <message>
            <source>Its label was noted wrongly</source>
            <translation>Son étiquette a été mal notée</translation>
        </message>
        <message>
            <source>Vol&amp;ume found (mL)</source>
            <translation>&amp;Volume trouvé (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume (mL)</source>
            <translation>&amp;Volume (mL)</translation>
        </message>
        <message>
            <source>What for (may b&amp;e empty)</source>
            <translation>Po&amp;ur quoi (peut rester vide)</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mo&amp;tif</translation>
        </message>
        <message>
            <source>Say how much it is, in mL.</source>
            <translation>Indiquez la quantité, en mL.</translation>
        </message>
        <message>
            <source>Say why; the ledger keeps it.</source>
            <translation>Indiquez pourquoi ; le journal le garde.</translation>
        </message>
        <message>
            <source>Ledger of the container</source>
            <translation>Journal du flacon</translation>
        </message>
        <message>
            <source>Runs that took from it</source>
            <translation>Séries qui y ont puisé</translation>
        </message>
        <message>
            <source>Ledger</source>
            <translation>Journal</translation>
        </message>
        <message>
            <source>What it touched as &amp;CSV…</source>
            <translation>Ce qu’il a touché en &amp;CSV…</translation>
        </message>
        <message>
            <source>Every run that took from it and every result: for the day when the supplier recalls it.</source>
            <translation>Chaque série qui y a puisé et chaque résultat : pour le jour où le fournisseur le rappelle.</translation>
        </message>
        <message>
            <source>What happened to it</source>
            <translation>Ce qui lui est arrivé</translation>
        </message>
        <message>
            <source>Wh&amp;at</source>
            <translation>O&amp;bjet</translation>
        </message>
        <message>
            <source>Da&amp;y</source>
            <translation>&amp;Jour</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Enre&amp;gistrer</translation>
        </message>
        <message>
            <source>dry: %1</source>
            <translation>sec : %1</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>use by: %1</source>
            <translation>à utiliser jusqu’au : %1</translation>
        </message>
        <message>
            <source>the label says: %1</source>
            <translation>l’étiquette dit : %1</translation>
        </message>
        <message>
            <source>dissolved: %1, in %2</source>
            <translation>dissous : %1, dans %2</translation>
        </message>
        <message>
            <source>keeps once dissolved: %1 days</source>
            <translation>conservation dissous : %1 jours</translation>
        </message>
        <message>
            <source>filled: %1</source>
            <translation>rempli : %1</translation>
        </message>
        <message>
            <source>keeps as stored: %1 days</source>
            <translation>conservation ainsi stocké : %1 jours</translation>
        </message>
        <message>
            <source>kept: %1</source>
            <translation>gardé : %1</translation>
        </message>
        <message>
            <source>It is dry: its volume begins when it is dissolved.</source>
            <translation>Il est sec : son volume commence quand il est dissous.</translation>
        </message>
        <message>
            <source>It was dissolved</source>
            <translation>Il a été dissous</translation>
        </message>
        <message>
            <source>It was opened or thawed</source>
            <translation>Il a été ouvert ou décongelé</translation>
        </message>
        <message>
            <source>It was thrown away</source>
            <translation>Il a été jeté</translation>
        </message>
        <message>
            <source>It was divided into aliquots</source>
            <translation>Il a été divisé en aliquotes</translation>
        </message>
        <message>
            <source>There is something to note about it</source>
            <translation>Il y a quelque chose à noter</translation>
        </message>
        <message>
            <source>Sol&amp;ution (mL)</source>
            <translation>Sol&amp;ution (mL)</translation>
        </message>
        <message>
            <source>Vol&amp;ume of each (mL)</source>
            <translation>Vol&amp;ume de chacune (mL)</translation>
        </message>
        <message>
            <source>Not&amp;e (may be empty)</source>
            <translation>Not&amp;e (peut rester vide)</translation>
        </message>
        <message>
            <source>Not&amp;e</source>
            <translation>Not&amp;e</translation>
        </message>
        <message>
            <source>It was moved</source>
            <translation>Il a été déplacé</translation>
        </message>
        <message>
            <source>No dose of a run was ticked with this lot yet. What was taken otherwise stands in the ledger.</source>
            <translation>Aucun ajout d’une série n’a encore été coché avec ce lot. Ce qui a été pris autrement figure au journal.</translation>
        </message>
        <message>
            <source>Left according to the ledger: %1; runs took nothing from it.</source>
            <translation>Reste d’après le journal : %1 ; les séries n’en ont rien pris.</translation>
        </message>
        <message>
            <source>opened on %1</source>
            <translation>ouvert le %1</translation>
        </message>
        <message>
            <source>It was opened on another day</source>
            <translation>Il a été ouvert un autre jour</translation>
        </message>
        <message>
            <source>It was not opened after all</source>
            <translation>Il n’a finalement pas été ouvert</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotWords</name>
        <message>
            <source>received</source>
            <translation>reçu</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>jeté</translation>
        </message>
        <message>
            <source>corrected to what was found</source>
            <translation>corrigé selon ce qui a été trouvé</translation>
        </message>
        <message>
            <source>received dry</source>
            <translation>réceptionné sec</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>ouvert</translation>
        </message>
        <message>
            <source>dissolved</source>
            <translation>dissous</translation>
        </message>
        <message>
            <source>taken to dissolve</source>
            <translation>pris pour dissoudre</translation>
        </message>
        <message>
            <source>divided</source>
            <translation>divisé</translation>
        </message>
        <message>
            <source>filled</source>
            <translation>rempli</translation>
        </message>
        <message>
            <source>put where it is kept</source>
            <translation>mis à sa place</translation>
        </message>
        <message>
            <source>noted</source>
            <translation>noté</translation>
        </message>
        <message>
            <source>taken, keyed by hand</source>
            <translation>pris, saisi à la main</translation>
        </message>
        <message>
            <source>Key the day as %1.</source>
            <translation>Saisissez le jour comme %1.</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its last day.</source>
            <translation>Ce n’est pas un jour. Saisissez-le comme %1 ; un mois seul, comme %2, désigne son dernier jour.</translation>
        </message>
        <message>
            <source>opening corrected</source>
            <translation>ouverture corrigée</translation>
        </message>
        <message>
            <source>This is not a day. Key it as %1; a month alone, as %2, means its first day.</source>
            <translation>Ce n’est pas un jour. Saisissez-le comme %1 ; un mois seul, comme %2, désigne son premier jour.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsModel</name>
        <message>
            <source>Reagent</source>
            <translation>Réactif</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lot</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Reste</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>Use by</source>
            <translation>Utiliser jusqu’au</translation>
        </message>
        <message>
            <source>Kept</source>
            <translation>Lieu</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::LotsPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>Containers of reagents</source>
            <translation>Flacons de réactifs</translation>
        </message>
        <message>
            <source>Fin&amp;d by reagent, lot or state</source>
            <translation>&amp;Trouver réactif, lot ou état</translation>
        </message>
        <message>
            <source>No container is in hand. Receive the reagents, water and buffers there are; plans then say whether they are enough.</source>
            <translation>Aucun flacon n’est disponible. Réceptionnez les réactifs, l’eau et les tampons présents ; les plans disent alors s’ils suffisent.</translation>
        </message>
        <message>
            <source>No container contains all of these words. Remove one to find more.</source>
            <translation>Aucun flacon ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>Used &amp;up too</source>
            <translation>Ép&amp;uisés compris</translation>
        </message>
        <message>
            <source>&amp;Receive a container…</source>
            <translation>Réc&amp;eptionner un flacon…</translation>
        </message>
        <message>
            <source>Noted as opened on %1.</source>
            <translation>Noté comme ouvert le %1.</translation>
        </message>
        <message>
            <source>%1 taken.</source>
            <translation>%1 pris.</translation>
        </message>
        <message>
            <source>%1 thrown away.</source>
            <translation>%1 jeté.</translation>
        </message>
        <message>
            <source>Corrected: %1 are left in it.</source>
            <translation>Corrigé : il y reste %1.</translation>
        </message>
        <message>
            <source>The label is corrected; what was decided on the old one keeps it.</source>
            <translation>L’étiquette est corrigée ; ce qui a été décidé avec l’ancienne la garde.</translation>
        </message>
        <message>
            <source>What happened to a lot, not stored yet</source>
            <translation>Ce qui est arrivé à un lot, pas encore enregistré</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3. The label stays here for the next container of it.</source>
            <translation>Dans le registre : %1, lot %2, %3. L’étiquette reste ici pour le prochain flacon de ce lot.</translation>
        </message>
        <message>
            <source>%1 Its last good day, %2, is past already.</source>
            <translation>%1 Son dernier jour de validité, le %2, est déjà passé.</translation>
        </message>
        <message>
            <source>Save what the container touched</source>
            <translation>Enregistrer ce que le flacon a touché</translation>
        </message>
        <message>
            <source>lot %1.csv</source>
            <translation>lot %1.csv</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>Fichiers CSV (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written: every run that took from it, a row for each result.</source>
            <translation>%1 a été écrit : chaque série qui y a puisé, une ligne par résultat.</translation>
        </message>
        <message>
            <source>Dissolved: now %1 of it.</source>
            <translation>Dissous : il y en a maintenant %1.</translation>
        </message>
        <message>
            <source>Divided. Its aliquots are containers of their own in the list: %1, of %2 each.</source>
            <translation>Divisé. Ses aliquotes sont des flacons à part dans la liste : %1, de %2 chacune.</translation>
        </message>
        <message>
            <source>Noted: it is kept in %1.</source>
            <translation>Noté : il est gardé dans %1.</translation>
        </message>
        <message>
            <source>Noted; the ledger keeps it.</source>
            <translation>Noté ; le journal le garde.</translation>
        </message>
        <message>
            <source>Thrown away.</source>
            <translation>Jeté.</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>Noted as not opened.</source>
            <translation>Noté comme non ouvert.</translation>
        </message>
        <message>
            <source>In the book: %1, lot %2, %3, good until %4 by its label. The label stays here for the next container of it.</source>
            <translation>Dans le registre : %1, lot %2, %3, bon jusqu’au %4 d’après l’étiquette. L’étiquette reste ici pour le prochain flacon de ce lot.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MainWindow</name>
        <message>
            <source>About Plateau</source>
            <translation>À propos de Plateau</translation>
        </message>
        <message>
            <source>These method files cannot be used and are left out:
%1</source>
            <translation>Ces fichiers de méthode sont inutilisables et sont écartés :
%1</translation>
        </message>
        <message>
            <source>The computer's clock was set: %1. The timers go on by a clock that nobody can set, so nothing is due earlier or later; the notebook has a record of it.</source>
            <translation>L’horloge de l’ordinateur a été réglée : %1. Les minuteries suivent une horloge que personne ne peut régler, rien n’arrive donc à échéance plus tôt ou plus tard ; le cahier en garde une trace.</translation>
        </message>
        <message>
            <source>The settings hold until the program ends; they could not be kept for the next time.</source>
            <translation>Les réglages valent jusqu’à la fin du programme ; ils n’ont pas pu être gardés pour la prochaine fois.</translation>
        </message>
        <message>
            <source>Open run file</source>
            <translation>Ouvrir un fichier de série</translation>
        </message>
        <message>
            <source>Run files (*.json);;All files (*)</source>
            <translation>Fichiers de série (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Rack %1, %2</source>
            <translation>Portoir %1, %2</translation>
        </message>
        <message>
            <source>Plateau</source>
            <translation>Plateau</translation>
        </message>
        <message>
            <source>Rack %1: typed and not stored, but kept where it was typed: %2.</source>
            <translation>Portoir %1 : tapé et non enregistré, mais gardé là où cela a été tapé : %2.</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>A new run that is not on the bench yet</source>
            <translation>Une nouvelle série qui n’est pas encore à la paillasse</translation>
        </message>
        <message>
            <source>Not stored yet</source>
            <translation>Pas encore enregistré</translation>
        </message>
        <message>
            <source>This was typed and is not stored; it is lost when the window closes:

%1</source>
            <translation>Ceci a été tapé et n’est pas enregistré ; c’est perdu à la fermeture de la fenêtre :

%1</translation>
        </message>
        <message>
            <source>&amp;Close without it</source>
            <translation>&amp;Fermer sans cela</translation>
        </message>
        <message>
            <source>&amp;Stay</source>
            <translation>&amp;Rester</translation>
        </message>
        <message>
            <source>There was no notebook %1; a new one was made. If yours was expected here, close the window and see that the name is right.</source>
            <translation>Il n’y avait pas de cahier %1 ; un nouveau a été créé. Si vous attendiez le vôtre ici, fermez la fenêtre et vérifiez le nom.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MappingForm</name>
        <message>
            <source>Leave out empty &amp;lines</source>
            <translation>Écarter les &amp;lignes vides</translation>
        </message>
        <message>
            <source>tabs</source>
            <translation>tabulations</translation>
        </message>
        <message>
            <source>semicolons</source>
            <translation>points-virgules</translation>
        </message>
        <message>
            <source>commas</source>
            <translation>virgules</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>espaces</translation>
        </message>
        <message>
            <source>as it stands</source>
            <translation>tel quel</translation>
        </message>
        <message>
            <source>last line first</source>
            <translation>dernière ligne en premier</translation>
        </message>
        <message>
            <source>none, the order tells</source>
            <translation>aucune, l’ordre en tient lieu</translation>
        </message>
        <message>
            <source>&amp;Columns separated by</source>
            <translation>Colonnes séparées &amp;par</translation>
        </message>
        <message>
            <source>&amp;Decimal sign</source>
            <translation>Séparate&amp;ur décimal</translation>
        </message>
        <message>
            <source>&amp;Absorbance in column</source>
            <translation>&amp;Absorbance en colonne</translation>
        </message>
        <message>
            <source>T&amp;ube in column</source>
            <translation>Tu&amp;be en colonne</translation>
        </message>
        <message>
            <source>Lines of &amp;heading</source>
            <translation>Li&amp;gnes d’en-tête</translation>
        </message>
        <message>
            <source>&amp;Order</source>
            <translation>Or&amp;dre</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>Enco&amp;dage</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MatrixText</name>
        <message>
            <source>Clear and colourless</source>
            <translation>Limpide et incolore</translation>
        </message>
        <message>
            <source>Coloured</source>
            <translation>Coloré</translation>
        </message>
        <message>
            <source>Turbid</source>
            <translation>Trouble</translation>
        </message>
        <message>
            <source>Carbonated</source>
            <translation>Gazéifié</translation>
        </message>
        <message>
            <source>Fatty</source>
            <translation>Gras</translation>
        </message>
        <message>
            <source>Rich in protein</source>
            <translation>Riche en protéines</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Solide</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MeasuresSection</name>
        <message>
            <source>Measurands</source>
            <translation>Mesurandes</translation>
        </message>
        <message>
            <source>M: molar mass. n: molecules of the chromophore formed or used for each molecule. From, to: what samples usually hold. </source>
            <translation>M : masse molaire. n : molécules de chromophore formées ou consommées par molécule. De, à : ce que les échantillons contiennent d’habitude. </translation>
        </message>
        <message>
            <source>Quantities that come from others</source>
            <translation>Grandeurs calculées à partir d’autres</translation>
        </message>
        <message>
            <source>One row for each part: its result times a number, −1 to subtract. Rows of one name are added up.</source>
            <translation>Une ligne par partie : son résultat fois un nombre, −1 pour soustraire. Les lignes d’un même nom sont additionnées.</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Short name</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>formé à partir du nom</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodActWords</name>
        <message>
            <source>%1, saved by %2</source>
            <translation>%1, enregistrée par %2</translation>
        </message>
        <message>
            <source>%1, saved by %2: %3</source>
            <translation>%1, enregistrée par %2 : %3</translation>
        </message>
        <message>
            <source>%1, imported from %3 by %2</source>
            <translation>%1, importée de %3 par %2</translation>
        </message>
        <message>
            <source>%1, retired by %2: %3</source>
            <translation>%1, désactivée par %2 : %3</translation>
        </message>
        <message>
            <source>%1, reinstated by %2: %3</source>
            <translation>%1, réactivée par %2 : %3</translation>
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
            <translation>doit être compris entre 0 et 100 %, pas %1</translation>
        </message>
        <message>
            <source>say which component is added</source>
            <translation>indiquez quel constituant est ajouté</translation>
        </message>
        <message>
            <source>this wavelength is in the table already; keep one of the two</source>
            <translation>cette longueur d’onde est déjà dans le tableau ; gardez l’une des deux</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Eau</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Réactif de démarrage</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodEditor</name>
        <message>
            <source>%1 (stays: runs and files know the method by it)</source>
            <translation>%1 (fixe : séries et fichiers connaissent la méthode par là)</translation>
        </message>
        <message>
            <source>Still to be put right (%1), Enter goes there:</source>
            <translation>Encore à corriger (%1), Entrée y mène :</translation>
        </message>
        <message>
            <source>%1 Worth a look:</source>
            <translation>%1 À vérifier :</translation>
        </message>
        <message>
            <source>Nothing stands in the way of saving.</source>
            <translation>Rien n’empêche l’enregistrement.</translation>
        </message>
        <message>
            <source>It can be saved. Worth a look:</source>
            <translation>Elle peut être enregistrée. À vérifier :</translation>
        </message>
        <message>
            <source>%1, copy</source>
            <translation>%1, copie</translation>
        </message>
        <message>
            <source>will be saved as the next version, after version %1</source>
            <translation>sera enregistrée comme version suivante, après la version %1</translation>
        </message>
        <message>
            <source>will be saved as version 1</source>
            <translation>sera enregistrée comme version 1</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>A method without a name yet</source>
            <translation>Une méthode encore sans nom</translation>
        </message>
        <message>
            <source>made from the name: %1</source>
            <translation>formé à partir du nom : %1</translation>
        </message>
        <message>
            <source>made from the name</source>
            <translation>formé à partir du nom</translation>
        </message>
        <message>
            <source>%1 is the short name of the method %2; choose another, or open that method and make its next version</source>
            <translation>%1 est l’id de la méthode %2 ; choisissez-en un autre, ou ouvrez cette méthode et faites-en la version suivante</translation>
        </message>
        <message>
            <source>There is nothing to save: version %1 says exactly this.</source>
            <translation>Il n’y a rien à enregistrer : la version %1 dit exactement cela.</translation>
        </message>
        <message>
            <source>%1 It is retired; reinstate it to use it.</source>
            <translation>%1 Elle est désactivée ; réactivez-la pour l’employer.</translation>
        </message>
        <message>
            <source>The method is not saved yet: first put right what the list names.</source>
            <translation>La méthode n’est pas encore enregistrée : corrigez d’abord ce que nomme la liste.</translation>
        </message>
        <message>
            <source>Say in the line above what was changed and why, then press Enter; the method's history keeps it.</source>
            <translation>Indiquez dans la ligne ci-dessus ce qui a changé et pourquoi, puis appuyez sur Entrée ; l’historique de la méthode le garde.</translation>
        </message>
        <message>
            <source>&amp;Save method</source>
            <translation>&amp;Enregistrer la méthode</translation>
        </message>
        <message>
            <source>&amp;What was changed and why</source>
            <translation>&amp;Ce qui a changé et pourquoi</translation>
        </message>
        <message>
            <source>%1  %2</source>
            <translation>%1  %2</translation>
        </message>
        <message>
            <source>Sections of the method</source>
            <translation>Sections de la méthode</translation>
        </message>
        <message>
            <source>Alt with the section's number goes there from anywhere.</source>
            <translation>Alt avec le numéro de la section y mène de partout.</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Ce qu’elle mesure</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Recette</translation>
        </message>
        <message>
            <source>Readings and signal</source>
            <translation>Lectures et signal</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Limites</translation>
        </message>
        <message>
            <source>Text and cautions</source>
            <translation>Texte et précautions</translation>
        </message>
        <message>
            <source>Try it</source>
            <translation>Essayer</translation>
        </message>
        <message>
            <source>There are changes that are not saved. Press it once more to drop them, or save first.</source>
            <translation>Des modifications ne sont pas enregistrées. Appuyez encore une fois pour les abandonner, ou enregistrez d’abord.</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Retour &amp;à la liste</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodFiles</name>
        <message>
            <source>Nothing was imported, since the file cannot be used:</source>
            <translation>Rien n’a été importé, car le fichier est inutilisable :</translation>
        </message>
        <message>
            <source>and %1 more</source>
            <translation>et %1 de plus</translation>
        </message>
        <message>
            <source>The method could not be written to %1: %2. Choose another place; nothing else changed.</source>
            <translation>La méthode n’a pas pu être écrite dans %1 : %2. Choisissez un autre emplacement ; rien d’autre n’a changé.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodPlaces</name>
        <message>
            <source>short name</source>
            <translation>id</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>source</source>
            <translation>source</translation>
        </message>
        <message>
            <source>principle</source>
            <translation>principe</translation>
        </message>
        <message>
            <source>chromophore</source>
            <translation>chromophore</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longueur d’onde</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>components</source>
            <translation>constituants</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volume</translation>
        </message>
        <message>
            <source>allowed volumes</source>
            <translation>volumes permis</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluant</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>réactif de démarrage</translation>
        </message>
        <message>
            <source>steps</source>
            <translation>étapes</translation>
        </message>
        <message>
            <source>time</source>
            <translation>temps</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>température</translation>
        </message>
        <message>
            <source>measurands</source>
            <translation>mesurandes</translation>
        </message>
        <message>
            <source>molar mass</source>
            <translation>masse molaire</translation>
        </message>
        <message>
            <source>chromophore per molecule</source>
            <translation>chromophore par molécule</translation>
        </message>
        <message>
            <source>usual concentrations</source>
            <translation>concentrations habituelles</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>signal</translation>
        </message>
        <message>
            <source>from reading</source>
            <translation>de la lecture</translation>
        </message>
        <message>
            <source>to reading</source>
            <translation>à la lecture</translation>
        </message>
        <message>
            <source>middle reading</source>
            <translation>lecture intermédiaire</translation>
        </message>
        <message>
            <source>quantities that come from others</source>
            <translation>grandeurs calculées à partir d’autres</translation>
        </message>
        <message>
            <source>measurand</source>
            <translation>mesurande</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>times</source>
            <translation>fois</translation>
        </message>
        <message>
            <source>measuring window</source>
            <translation>fenêtre de mesure</translation>
        </message>
        <message>
            <source>smallest net signal</source>
            <translation>plus petit signal net</translation>
        </message>
        <message>
            <source>largest net signal</source>
            <translation>plus grand signal net</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>plus grande absorbance</translation>
        </message>
        <message>
            <source>absorbance that must remain</source>
            <translation>absorbance qui doit rester</translation>
        </message>
        <message>
            <source>what a run has to keep</source>
            <translation>ce qu’une série doit respecter</translation>
        </message>
        <message>
            <source>largest signal of a blank</source>
            <translation>plus grand signal d’un blanc</translation>
        </message>
        <message>
            <source>recovery of the standard</source>
            <translation>taux de récupération de l’étalon</translation>
        </message>
        <message>
            <source>recovery of a spike</source>
            <translation>taux de récupération d’un ajout dosé</translation>
        </message>
        <message>
            <source>duplicates</source>
            <translation>doubles</translation>
        </message>
        <message>
            <source>differ by at most</source>
            <translation>diffèrent au plus de</translation>
        </message>
        <message>
            <source>share of the mean</source>
            <translation>part de la moyenne</translation>
        </message>
        <message>
            <source>usual standard</source>
            <translation>étalon usuel</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentration</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>perte par heure</translation>
        </message>
        <message>
            <source>tubes of a rack</source>
            <translation>tubes d’un portoir</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>blancs</translation>
        </message>
        <message>
            <source>of each sample</source>
            <translation>de chaque échantillon</translation>
        </message>
        <message>
            <source>standards</source>
            <translation>étalons</translation>
        </message>
        <message>
            <source>reading taken as a series</source>
            <translation>lecture faite en suite</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>readings on the line</source>
            <translation>lectures sur la droite</translation>
        </message>
        <message>
            <source>component</source>
            <translation>constituant</translation>
        </message>
        <message>
            <source>step %1</source>
            <translation>étape %1</translation>
        </message>
        <message>
            <source>part %1</source>
            <translation>partie %1</translation>
        </message>
        <message>
            <source>caution %1</source>
            <translation>précaution %1</translation>
        </message>
        <message>
            <source>reaction %1</source>
            <translation>réaction %1</translation>
        </message>
        <message>
            <source>what interferes, line %1</source>
            <translation>ce qui interfère, ligne %1</translation>
        </message>
        <message>
            <source>preparation of the sample</source>
            <translation>préparation de l’échantillon</translation>
        </message>
        <message>
            <source>from</source>
            <translation>de</translation>
        </message>
        <message>
            <source>to</source>
            <translation>à</translation>
        </message>
        <message>
            <source>the %1</source>
            <translation>« %1 »</translation>
        </message>
        <message>
            <source>absorptivity at %1 nm</source>
            <translation>absorptivité à %1 nm</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodStandings</name>
        <message>
            <source>earlier version</source>
            <translation>version antérieure</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>retired</source>
            <translation>désactivée</translation>
        </message>
        <message>
            <source>in use, kept apart</source>
            <translation>en usage, gardée à part</translation>
        </message>
        <message>
            <source>in use</source>
            <translation>en usage</translation>
        </message>
        <message>
            <source>on record</source>
            <translation>consignée</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodText</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Fait avec un modèle dont personne n’a confirmé les volumes : %1.</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodUncertaintiesForm</name>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>Absorbance of one reading</source>
            <translation>Absorbance d’une lecture</translation>
        </message>
        <message>
            <source>ε %</source>
            <translation>ε %</translation>
        </message>
        <message>
            <source>Absorptivity, in %</source>
            <translation>Absorptivité, en %</translation>
        </message>
        <message>
            <source>path %</source>
            <translation>trajet %</translation>
        </message>
        <message>
            <source>Path length, in %</source>
            <translation>Trajet optique, en %</translation>
        </message>
        <message>
            <source>V %</source>
            <translation>V %</translation>
        </message>
        <message>
            <source>Total volume of the tube, in %</source>
            <translation>Volume total du tube, en %</translation>
        </message>
        <message>
            <source>sample %</source>
            <translation>échantillon %</translation>
        </message>
        <message>
            <source>Sample volume, in %</source>
            <translation>Volume d’échantillon, en %</translation>
        </message>
        <message>
            <source>dilution %</source>
            <translation>dilution %</translation>
        </message>
        <message>
            <source>Each dilution step, in %</source>
            <translation>Chaque étape de dilution, en %</translation>
        </message>
        <message>
            <source>extract %</source>
            <translation>extrait %</translation>
        </message>
        <message>
            <source>Extract of a solid, in %</source>
            <translation>Extrait d’un solide, en %</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>Uncertainties by method</source>
            <translation>Incertitudes par méthode</translation>
        </message>
        <message>
            <source>What your laboratory knows of one method, from its validation say. A number here comes before the photometer's and the glassware's, in every run by that method that is planned from now on; an empty cell leaves it to them. Standard uncertainties (k = 1); the source is needed. %1</source>
            <translation>Ce que votre laboratoire sait d’une méthode, par sa validation par exemple. Un nombre ici passe avant ceux du photomètre et de la verrerie, dans chaque série par cette méthode prévue à partir de maintenant ; une cellule vide s’en remet à eux. Incertitudes-types (k = 1) ; la source est nécessaire. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodView</name>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>What was done with it</source>
            <translation>Ce qui en a été fait</translation>
        </message>
        <message>
            <source>About the method</source>
            <translation>À propos de la méthode</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>&amp;Méthode</translation>
        </message>
        <message>
            <source>Ver&amp;sions</source>
            <translation>&amp;Versions</translation>
        </message>
        <message>
            <source>Histor&amp;y</source>
            <translation>Histori&amp;que</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>Modifi&amp;er…</translation>
        </message>
        <message>
            <source>New from &amp;this…</source>
            <translation>&amp;Nouvelle d’après celle-ci…</translation>
        </message>
        <message>
            <source>E&amp;xport to a file…</source>
            <translation>E&amp;xporter dans un fichier…</translation>
        </message>
        <message>
            <source>Version %1, %2, %3; runs: %4</source>
            <translation>Version %1, %2, %3 ; séries : %4</translation>
        </message>
        <message>
            <source>&amp;Reason to use it again</source>
            <translation>Mo&amp;tif de la réactivation</translation>
        </message>
        <message>
            <source>&amp;Reason to retire it</source>
            <translation>Mo&amp;tif de la désactivation</translation>
        </message>
        <message>
            <source>Re&amp;instate</source>
            <translation>Ré&amp;activer</translation>
        </message>
        <message>
            <source>Ret&amp;ire</source>
            <translation>&amp;Désactiver</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodViewText</name>
        <message>
            <source>%1 to %2 %3</source>
            <translation>%1 à %2 %3</translation>
        </message>
        <message>
            <source>add %1 mL %2</source>
            <translation>ajouter %2 (%1 mL)</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>ajouter %1</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mélanger</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>wait %1 at %2</source>
            <translation>attendre %1 à %2</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>attendre %1</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>lire %1</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Précautions</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principe</translation>
        </message>
        <message>
            <source>Reactions</source>
            <translation>Réactions</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 par %2</translation>
        </message>
        <message>
            <source>What it measures</source>
            <translation>Ce qu’elle mesure</translation>
        </message>
        <message>
            <source>%1 g/mol</source>
            <translation>%1 g/mol</translation>
        </message>
        <message>
            <source>%1 %2 per molecule</source>
            <translation>%1 %2 par molécule</translation>
        </message>
        <message>
            <source>usually %1</source>
            <translation>d’habitude %1</translation>
        </message>
        <message>
            <source>What comes from other results</source>
            <translation>Ce qui vient d’autres résultats</translation>
        </message>
        <message>
            <source>Photometer</source>
            <translation>Photomètre</translation>
        </message>
        <message>
            <source>%1 L/(mol cm) at %2 nm</source>
            <translation>%1 L/(mol cm) à %2 nm</translation>
        </message>
        <message>
            <source>that of the chromophore</source>
            <translation>celle du chromophore</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophore</translation>
        </message>
        <message>
            <source>%1, made by the reaction</source>
            <translation>%1, formé par la réaction</translation>
        </message>
        <message>
            <source>%1, used up by the reaction</source>
            <translation>%1, consommé par la réaction</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Trajet optique</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absorptivité</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lectures</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>telles que lues</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>ramenées au volume final</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluant</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>réactif de démarrage</translation>
        </message>
        <message>
            <source>%1 allowed</source>
            <translation>%1 permis</translation>
        </message>
        <message>
            <source>suspension: swirl before use</source>
            <translation>suspension : agiter doucement avant emploi</translation>
        </message>
        <message>
            <source>Components</source>
            <translation>Constituants</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Étapes</translation>
        </message>
        <message>
            <source>%1 is a series; a line through its last %2 readings is taken back to the moment %3 was added.</source>
            <translation>%1 est une suite ; une droite par ses %2 dernières lectures est ramenée au moment de l’ajout (%3).</translation>
        </message>
        <message>
            <source>Measuring window and acceptance</source>
            <translation>Fenêtre de mesure et acceptation</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Signal net</translation>
        </message>
        <message>
            <source>Largest absorbance</source>
            <translation>Plus grande absorbance</translation>
        </message>
        <message>
            <source>Absorbance that must remain</source>
            <translation>Absorbance qui doit rester</translation>
        </message>
        <message>
            <source>Largest blank signal</source>
            <translation>Plus grand signal du blanc</translation>
        </message>
        <message>
            <source>Recovery of a standard</source>
            <translation>Taux de récupération d’un étalon</translation>
        </message>
        <message>
            <source>Recovery of a spike</source>
            <translation>Taux de récupération d’un ajout dosé</translation>
        </message>
        <message>
            <source>Repeatability</source>
            <translation>Répétabilité</translation>
        </message>
        <message>
            <source>r = %1 g/L + %2 % of the mean</source>
            <translation>r = %1 g/L + %2 % de la moyenne</translation>
        </message>
        <message>
            <source>Usual standard</source>
            <translation>Étalon usuel</translation>
        </message>
        <message>
            <source>%1 g/L</source>
            <translation>%1 g/L</translation>
        </message>
        <message>
            <source>The standard loses</source>
            <translation>L’étalon perd</translation>
        </message>
        <message>
            <source>%1 % in an hour</source>
            <translation>%1 % en une heure</translation>
        </message>
        <message>
            <source>Tubes of a rack</source>
            <translation>Tubes d’un portoir</translation>
        </message>
        <message>
            <source>blanks: %1, of each sample: %2, standards: %3</source>
            <translation>blancs : %1, de chaque échantillon : %2, étalons : %3</translation>
        </message>
        <message>
            <source>Preparation of samples</source>
            <translation>Préparation des échantillons</translation>
        </message>
        <message>
            <source>What interferes</source>
            <translation>Ce qui interfère</translation>
        </message>
        <message>
            <source>What is from memory was set down by whoever wrote the method, for a shipped one by the makers of the program, without a published source.</source>
            <translation>Ce qui est de mémoire a été noté par l’auteur de la méthode, pour une méthode fournie par les auteurs du programme, sans source publiée.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsModel</name>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>Where it comes from</source>
            <translation>Provenance</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Séries</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Id</translation>
        </message>
        <message>
            <source>What was changed and why</source>
            <translation>Ce qui a changé et pourquoi</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MethodsPage</name>
        <message>
            <source>Methods</source>
            <translation>Méthodes</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, state or origin</source>
            <translation>&amp;Trouver nom, état ou provenance</translation>
        </message>
        <message>
            <source>There is no method yet. Import one from a file, or write a new one.</source>
            <translation>Il n’y a pas encore de méthode. Importez-en une d’un fichier, ou écrivez-en une nouvelle.</translation>
        </message>
        <message>
            <source>No method contains all of these words. Remove one to find more.</source>
            <translation>Aucune méthode ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>Ne&amp;w method…</source>
            <translation>&amp;Nouvelle méthode…</translation>
        </message>
        <message>
            <source>&amp;Import from a file…</source>
            <translation>Im&amp;porter d’un fichier…</translation>
        </message>
        <message>
            <source>A method that is not saved yet</source>
            <translation>Une méthode qui n’est pas encore enregistrée</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Import a method</source>
            <translation>Importer une méthode</translation>
        </message>
        <message>
            <source>Method files (*.json);;All files (*)</source>
            <translation>Fichiers de méthode (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Export the method</source>
            <translation>Exporter la méthode</translation>
        </message>
        <message>
            <source>Method files (*.json)</source>
            <translation>Fichiers de méthode (*.json)</translation>
        </message>
        <message>
            <source>The method was written to %1.</source>
            <translation>La méthode a été écrite dans %1.</translation>
        </message>
        <message>
            <source>The method is in use again.</source>
            <translation>La méthode est à nouveau en usage.</translation>
        </message>
        <message>
            <source>The method is retired: new runs are not offered it, its runs keep it.</source>
            <translation>La méthode est désactivée : elle n’est plus proposée aux nouvelles séries, ses séries la gardent.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::MomentField</name>
        <message>
            <source>%1 min ago</source>
            <translation>il y a %1 min</translation>
        </message>
        <message>
            <source>%1 h %2 min ago</source>
            <translation>il y a %1 h %2 min</translation>
        </message>
        <message>
            <source>%1 days ago</source>
            <translation>il y a %1 jours</translation>
        </message>
        <message>
            <source>as 8:10, or with its day</source>
            <translation>comme 8:10, ou avec son jour</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NameDoubts</name>
        <message>
            <source>A name with a figure in it: was a reading meant?</source>
            <translation>Un nom qui contient un chiffre : vouliez-vous saisir une lecture ?</translation>
        </message>
        <message>
            <source>Nobody of that name is set up: they can work, but not sign.</source>
            <translation>Personne de ce nom n’est enregistré : on peut travailler sous ce nom, mais pas signer.</translation>
        </message>
        <message>
            <source>This name is retired: they can work, but not sign.</source>
            <translation>Ce nom est désactivé : on peut travailler sous ce nom, mais pas signer.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NetworkSource</name>
        <message>
            <source>there is no answer; check name, port number and network</source>
            <translation>pas de réponse ; vérifiez le nom, le numéro de port et le réseau</translation>
        </message>
        <message>
            <source>there is no such host; check the name</source>
            <translation>cet hôte n’existe pas ; vérifiez le nom</translation>
        </message>
        <message>
            <source>nothing answers on this port number</source>
            <translation>rien ne répond sur ce numéro de port</translation>
        </message>
        <message>
            <source>the other side closed it</source>
            <translation>l’autre côté l’a fermée</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NextStrip</name>
        <message>
            <source>Next</source>
            <translation>Suite</translation>
        </message>
        <message>
            <source>Done now  F9</source>
            <translation>Fait maintenant  F9</translation>
        </message>
        <message>
            <source>&amp;Go to it</source>
            <translation>&amp;Y aller</translation>
        </message>
        <message>
            <source>Sound is off</source>
            <translation>Le son est coupé</translation>
        </message>
        <message>
            <source>Sound is on</source>
            <translation>Le son est actif</translation>
        </message>
        <message>
            <source>Press to hear when something is due</source>
            <translation>Appuyer pour entendre quand une tâche arrive à échéance</translation>
        </message>
        <message>
            <source>Press to silence it</source>
            <translation>Appuyer pour couper le son</translation>
        </message>
        <message>
            <source>Nothing due</source>
            <translation>Rien à faire</translation>
        </message>
        <message>
            <source>Rack %1: %2</source>
            <translation>Portoir %1 : %2</translation>
        </message>
        <message>
            <source>Rack %1: %2 of %3 read</source>
            <translation>Portoir %1 : %2 sur %3 lus</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberEntry</name>
        <message>
            <source>Not a number</source>
            <translation>Pas un nombre</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::NumberReader</name>
        <message>
            <source>is empty; a number is needed</source>
            <translation>est vide ; un nombre est nécessaire</translation>
        </message>
        <message>
            <source>"%1" is not a number. %2</source>
            <translation>« %1 » n’est pas un nombre. %2</translation>
        </message>
        <message>
            <source>must be a whole number, not %1</source>
            <translation>doit être un nombre entier, pas %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::OfferField</name>
        <message>
            <source>↓ for a list</source>
            <translation>↓ pour une liste</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PanelPicture</name>
        <message>
            <source>centre</source>
            <translation>ligne centrale</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbance</translation>
        </message>
        <message>
            <source>recovery</source>
            <translation>taux de récupération</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 en %2</translation>
        </message>
        <message>
            <source>%1; limits provisional</source>
            <translation>%1 ; limites provisoires</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PatternForm</name>
        <message>
            <source>the only number of the line</source>
            <translation>le seul nombre de la ligne</translation>
        </message>
        <message>
            <source>a number counted from the left</source>
            <translation>un nombre compté depuis la gauche</translation>
        </message>
        <message>
            <source>the number after a text</source>
            <translation>le nombre après un texte</translation>
        </message>
        <message>
            <source>such as ABS</source>
            <translation>par exemple ABS</translation>
        </message>
        <message>
            <source>every line</source>
            <translation>toutes les lignes</translation>
        </message>
        <message>
            <source>none</source>
            <translation>aucune</translation>
        </message>
        <message>
            <source>&amp;Absorbance is</source>
            <translation>L’&amp;absorbance est</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Beh&amp;ind</source>
            <translation>A&amp;près</translation>
        </message>
        <message>
            <source>&amp;Decimal sign</source>
            <translation>Séparate&amp;ur décimal</translation>
        </message>
        <message>
            <source>Only lines &amp;with</source>
            <translation>Seulement les lignes a&amp;vec</translation>
        </message>
        <message>
            <source>S&amp;kip lines with</source>
            <translation>I&amp;gnorer les lignes avec</translation>
        </message>
        <message>
            <source>&amp;Encoding</source>
            <translation>Enco&amp;dage</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Pdf</name>
        <message>
            <source>%1 was not written: the pages could not be drawn.</source>
            <translation>%1 n’a pas été écrit : les pages n’ont pas pu être dessinées.</translation>
        </message>
        <message>
            <source>%1 was not written: %2. Name a file in a folder that you may write to.</source>
            <translation>%1 n’a pas été écrit : %2. Nommez un fichier dans un dossier où vous pouvez écrire.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsForm</name>
        <message>
            <source>Wh&amp;at</source>
            <translation>&amp;Action</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>Ro&amp;le</source>
            <translation>Rôl&amp;e</translation>
        </message>
        <message>
            <source>N&amp;ew passphrase</source>
            <translation>Nou&amp;velle phrase de passe</translation>
        </message>
        <message>
            <source>The same aga&amp;in</source>
            <translation>La &amp;même à nouveau</translation>
        </message>
        <message>
            <source>At least 8 characters; several words that only its owner would put together make a good one. Its owner types it.</source>
            <translation>Au moins 8 caractères ; plusieurs mots que seul son titulaire réunirait en font une bonne. C’est son titulaire qui la tape.</translation>
        </message>
        <message>
            <source>&amp;Reason</source>
            <translation>Moti&amp;f</translation>
        </message>
        <message>
            <source>Signed b&amp;y</source>
            <translation>Sign&amp;é par</translation>
        </message>
        <message>
            <source>Passphrase of &amp;the one above</source>
            <translation>&amp;Phrase de passe de cette personne</translation>
        </message>
        <message>
            <source>&amp;Store it</source>
            <translation>Enre&amp;gistrer</translation>
        </message>
        <message>
            <source>Add a person</source>
            <translation>Ajouter une personne</translation>
        </message>
        <message>
            <source>Reinstate</source>
            <translation>Réactiver</translation>
        </message>
        <message>
            <source>Change name or role</source>
            <translation>Changer le nom ou le rôle</translation>
        </message>
        <message>
            <source>Set another passphrase</source>
            <translation>Définir une autre phrase de passe</translation>
        </message>
        <message>
            <source>Retire</source>
            <translation>Désactiver</translation>
        </message>
        <message>
            <source>The first person</source>
            <translation>La première personne</translation>
        </message>
        <message>
            <source>Change the list</source>
            <translation>Modifier la liste</translation>
        </message>
        <message>
            <source>&amp;Set up people</source>
            <translation>&amp;Définir les personnes</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Is the head, who signs decisions and keeps this list.</source>
            <translation>Est le responsable, qui signe les décisions et tient cette liste.</translation>
        </message>
        <message>
            <source>This passphrase cannot be used: %1.</source>
            <translation>Cette phrase de passe ne peut pas être employée : %1.</translation>
        </message>
        <message>
            <source>The two new passphrases differ: type the new one again, and once more below it.</source>
            <translation>Les deux nouvelles phrases de passe diffèrent : tapez à nouveau la nouvelle, et encore une fois au-dessous.</translation>
        </message>
        <message>
            <source>Say who it is: the name that stands beside what is signed.</source>
            <translation>Indiquez qui c’est : le nom qui figure à côté de ce qui est signé.</translation>
        </message>
        <message>
            <source>Say why: the reason stands in the record.</source>
            <translation>Indiquez pourquoi : le motif figure dans l’enregistrement.</translation>
        </message>
        <message>
            <source>It needs the passphrase of %1: type it.</source>
            <translation>Il faut la phrase de passe de %1 : tapez-la.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsModel</name>
        <message>
            <source>retired, signs nothing</source>
            <translation>désactivée, ne signe rien</translation>
        </message>
        <message>
            <source>signs</source>
            <translation>signe</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Role</source>
            <translation>Rôle</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Depuis</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsPage</name>
        <message>
            <source>People are set up: from now on decisions are signed. Add a second head, so that a lost passphrase can be replaced.</source>
            <translation>Les personnes sont définies : dorénavant les décisions sont signées. Ajoutez un second responsable, afin qu’une phrase de passe perdue puisse être remplacée.</translation>
        </message>
        <message>
            <source>%1 is on the list.</source>
            <translation>%1 est sur la liste.</translation>
        </message>
        <message>
            <source>%1 is changed; what was signed keeps the name and role of its time.</source>
            <translation>%1 : modification faite ; ce qui a été signé garde le nom et le rôle d’alors.</translation>
        </message>
        <message>
            <source>The new passphrase holds from now on.</source>
            <translation>La nouvelle phrase de passe vaut dorénavant.</translation>
        </message>
        <message>
            <source>Retired; what was signed stays.</source>
            <translation>Désactivée ; ce qui a été signé reste.</translation>
        </message>
        <message>
            <source>Reinstated, with the passphrase as it was.</source>
            <translation>Réactivée, avec la phrase de passe d’avant.</translation>
        </message>
        <message>
            <source>Decisions are signed by these people, each with a passphrase. Choose one to change; every change is signed.</source>
            <translation>Les décisions sont signées par ces personnes, chacune avec une phrase de passe. Choisissez-en une à modifier ; chaque modification est signée.</translation>
        </message>
        <message>
            <source>Nobody is set up yet.

Until then a decision carries the name that was typed and is unsigned, and reports say so. From the first person on, every decision on a run, and every choice of the result that is reported, is signed with a passphrase; there is no way back to unsigned decisions.

The first person is the head, who adds the others. Passphrases are kept only as a hash: nobody can look one up, and a head replaces one that is lost.</source>
            <translation>Aucune personne n’est encore définie.

Jusque-là, une décision porte le nom qui a été tapé et n’est pas signée, et les rapports le disent. À partir de la première personne, chaque décision sur une série, et chaque choix du résultat rapporté, est signé avec une phrase de passe ; il n’y a pas de retour à des décisions non signées.

La première personne est le responsable, qui ajoute les autres. Les phrases de passe ne sont gardées que sous forme d’empreinte : personne ne peut les consulter, et un responsable remplace celle qui est perdue.</translation>
        </message>
        <message>
            <source>People</source>
            <translation>Personnes</translation>
        </message>
        <message>
            <source>A change to the list of people, not stored yet</source>
            <translation>Une modification de la liste des personnes, pas encore enregistrée</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PersonsWords</name>
        <message>
            <source>Analyst</source>
            <translation>Analyste</translation>
        </message>
        <message>
            <source>Reviewer</source>
            <translation>Réviseur</translation>
        </message>
        <message>
            <source>Head</source>
            <translation>Responsable</translation>
        </message>
        <message>
            <source>Signs decisions, unless the laboratory wants a reviewer's signature.</source>
            <translation>Signe les décisions, sauf si le laboratoire veut la signature d’un réviseur.</translation>
        </message>
        <message>
            <source>Signs decisions.</source>
            <translation>Signe les décisions.</translation>
        </message>
        <message>
            <source>Signs decisions and keeps this list.</source>
            <translation>Signe les décisions et tient cette liste.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerForm</name>
        <message>
            <source>Photometer</source>
            <translation>Photomètre</translation>
        </message>
        <message>
            <source>The photometer that the runs are read in. What its check records say of a reading and of the path length goes into the budgets; until then common practice does, and is said to. With all fields empty no photometer is kept.</source>
            <translation>Le photomètre dans lequel les séries sont lues. Ce que ses enregistrements de vérification disent d’une lecture et du trajet optique entre dans les bilans ; jusque-là c’est l’usage courant, et c’est signalé. Si tous les champs sont vides, aucun photomètre n’est gardé.</translation>
        </message>
        <message>
            <source>Name or number</source>
            <translation>Nom ou numéro</translation>
        </message>
        <message>
            <source>u of one reading (k = 1)</source>
            <translation>u d’une lecture (k = 1)</translation>
        </message>
        <message>
            <source>u of the path length (k = 1)</source>
            <translation>u du trajet optique (k = 1)</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Check record that says so</source>
            <translation>Enregistrement de vérification qui le dit</translation>
        </message>
        <message>
            <source>Checked on</source>
            <translation>Vérifié le</translation>
        </message>
        <message>
            <source>%1; may stay empty</source>
            <translation>%1 ; peut rester vide</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PhotometerStore</name>
        <message>
            <source>Name: %1.</source>
            <translation>Nom : %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteGrid</name>
        <message>
            <source>Tubes of the rack</source>
            <translation>Tubes du portoir</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteKeys</name>
        <message>
            <source>&amp;Tick  Space</source>
            <translation>&amp;Cocher  Espace</translation>
        </message>
        <message>
            <source>Ro&amp;w  +</source>
            <translation>Ran&amp;g  +</translation>
        </message>
        <message>
            <source>&amp;All tubes  *</source>
            <translation>To&amp;us les tubes  *</translation>
        </message>
        <message>
            <source>&amp;Undo  −</source>
            <translation>&amp;Annuler  −</translation>
        </message>
        <message>
            <source>Other volum&amp;e  0–9</source>
            <translation>Autre &amp;volume  0–9</translation>
        </message>
        <message>
            <source>&amp;Spoilt  /</source>
            <translation>Inutilisa&amp;ble  /</translation>
        </message>
        <message>
            <source>Pipette&amp;d from paper</source>
            <translation>&amp;Pipeté sur papier</translation>
        </message>
        <message>
            <source>Not &amp;spoilt  /</source>
            <translation>Ut&amp;ilisable  /</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteModel</name>
        <message>
            <source>Tube %1</source>
            <translation>Tube %1</translation>
        </message>
        <message>
            <source>to do</source>
            <translation>à faire</translation>
        </message>
        <message>
            <source>done</source>
            <translation>fait</translation>
        </message>
        <message>
            <source>not ticked, but read since</source>
            <translation>non coché, mais lu depuis</translation>
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
            <translation>&amp;Garder</translation>
        </message>
        <message>
            <source>Volume in %1</source>
            <translation>Volume en %1</translation>
        </message>
        <message>
            <source>No&amp;te</source>
            <translation>&amp;Note</translation>
        </message>
        <message>
            <source>Volume that went in, in %1</source>
            <translation>Volume introduit, en %1</translation>
        </message>
        <message>
            <source>R&amp;eason</source>
            <translation>Mo&amp;tif</translation>
        </message>
        <message>
            <source>&amp;Cancel  Esc</source>
            <translation>A&amp;nnuler  Esc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePage</name>
        <message>
            <source>%1 of tube %2 is not read yet, and after %3 it cannot be. Read it first, or press the key again to tick all the same.</source>
            <translation>%1 du tube %2 n’est pas encore lu, et après %3 il ne pourra plus l’être. Lisez-le d’abord, ou appuyez à nouveau sur la touche pour cocher quand même.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>taken back at once</source>
            <translation>aussitôt annulé</translation>
        </message>
        <message>
            <source>Go to the tube with the arrow keys and press / there.</source>
            <translation>Allez au tube avec les touches fléchées et appuyez-y sur /.</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>tube %1 : %2</translation>
        </message>
        <message>
            <source>Say why the tube counts after all, then press Enter.</source>
            <translation>Indiquez pourquoi le tube compte malgré tout, puis appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Say what happened to the tube, then press Enter.</source>
            <translation>Indiquez ce qui est arrivé au tube, puis appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt: %2. Undo (−) takes that back.</source>
            <translation>Le tube %1 est marqué comme inutilisable : %2. Annuler (−) revient là-dessus.</translation>
        </message>
        <message>
            <source>Steps of the method</source>
            <translation>Étapes de la méthode</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. What you did here waits for it.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée. Ce que vous avez fait ici l’attend.</translation>
        </message>
        <message>
            <source>Ticked together, %1 tubes count as started at this moment, and their waits are timed from it. Tick each tube as %2 goes in, or press the key again if all of them got it at once.</source>
            <translation>Cochés ensemble, %1 tubes comptent comme démarrés à cet instant, et leurs attentes partent de là. Cochez chaque tube au moment où %2 y entre, ou appuyez de nouveau sur la touche si tous l’ont reçu à la fois.</translation>
        </message>
        <message numerus="yes">
            <source>Lot %1 is noted as opened today; it keeps %n days from now.</source>
            <translation>
                <numerusform>Le lot %1 est noté comme ouvert aujourd’hui ; il se conserve %n jour à partir de maintenant.</numerusform>
                <numerusform>Le lot %1 est noté comme ouvert aujourd’hui ; il se conserve %n jours à partir de maintenant.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipettePanel</name>
        <message>
            <source>&amp;Lot</source>
            <translation>Lo&amp;t</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>Pip&amp;ette</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSheet</name>
        <message>
            <source>Mix</source>
            <translation>Mélanger</translation>
        </message>
        <message>
            <source>Read %1</source>
            <translation>Lire %1</translation>
        </message>
        <message>
            <source>Dilute %1: %2</source>
            <translation>Diluer %1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSource</name>
        <message>
            <source>%1, good until %2</source>
            <translation>%1, bon jusqu’au %2</translation>
        </message>
        <message>
            <source>not noted</source>
            <translation>non noté</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteStepsModel</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Étape</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volume</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteSubject</name>
        <message>
            <source>Tube %1: nothing in this round</source>
            <translation>Tube %1 : rien dans ce tour</translation>
        </message>
        <message>
            <source>Tube %1: spoilt</source>
            <translation>Tube %1 : inutilisable</translation>
        </message>
        <message>
            <source>Tube %1: %2 %3 is in</source>
            <translation>Tube %1 : %3 (%2), fait</translation>
        </message>
        <message>
            <source>Tube %1: read since</source>
            <translation>Tube %1 : lu depuis</translation>
        </message>
        <message>
            <source>First: %1.</source>
            <translation>D’abord : %1.</translation>
        </message>
        <message>
            <source>Swirl before use.</source>
            <translation>Agiter doucement avant emploi.</translation>
        </message>
        <message>
            <source>Mix afterwards.</source>
            <translation>Mélanger ensuite.</translation>
        </message>
        <message>
            <source>Addition %1 of %2
%3</source>
            <translation>Ajout %1 sur %2
%3</translation>
        </message>
        <message>
            <source>Everything is pipetted and read</source>
            <translation>Tout est pipeté et lu</translation>
        </message>
        <message>
            <source>Enter opens the review.</source>
            <translation>Entrée ouvre la revue.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>&amp;Revoir ce portoir</translation>
        </message>
        <message>
            <source>Pipetted from paper</source>
            <translation>Pipeté sur papier</translation>
        </message>
        <message>
            <source>Nothing was ticked on this worksheet. Enter goes on to the readings; to tick all the same, choose an addition among the steps.</source>
            <translation>Rien n’a été coché sur cette feuille de paillasse. Entrée passe aux lectures ; pour cocher quand même, choisissez un ajout parmi les étapes.</translation>
        </message>
        <message>
            <source>&amp;Key readings</source>
            <translation>&amp;Saisir les lectures</translation>
        </message>
        <message>
            <source>read %1 of every tube</source>
            <translation>lire %1 de chaque tube</translation>
        </message>
        <message>
            <source>%1, then %2</source>
            <translation>%1, puis %2</translation>
        </message>
        <message>
            <source>Now read %1</source>
            <translation>Lire maintenant %1</translation>
        </message>
        <message>
            <source>%1. Read so far: %2.</source>
            <translation>%1. Lus jusqu’ici : %2.</translation>
        </message>
        <message>
            <source>&amp;Key %1</source>
            <translation>&amp;Saisir %1</translation>
        </message>
        <message>
            <source>Tube %1: how much %2 actually went in? The worksheet says %3.</source>
            <translation>Tube %1 : quel volume a réellement été introduit (%2) ? La feuille de paillasse dit %3.</translation>
        </message>
        <message>
            <source>Tube %1 is spoilt and will not count. What happened to it?</source>
            <translation>Le tube %1 est inutilisable et ne comptera pas. Que lui est-il arrivé ?</translation>
        </message>
        <message>
            <source>Tube %1 is marked as spoilt (%2). Why does it count after all?</source>
            <translation>Le tube %1 est marqué comme inutilisable (%2). Pourquoi compte-t-il malgré tout ?</translation>
        </message>
        <message>
            <source>Tube %1 does not count. Press / to let it count again.</source>
            <translation>Le tube %1 ne compte pas. Appuyez sur / pour qu’il compte à nouveau.</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is marked as spoilt again (%2).</source>
            <translation>Annulé : le tube %1 est à nouveau marqué comme inutilisable (%2).</translation>
        </message>
        <message>
            <source>Taken back: tube %1 is not marked as spoilt any more (%2).</source>
            <translation>Annulé : le tube %1 n’est plus marqué comme inutilisable (%2).</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2; %3 counts again.</source>
            <translation>Annulé : %1 dans le tube %2 ; %3 compte à nouveau.</translation>
        </message>
        <message>
            <source>Ticked again: %1 in tube %2.</source>
            <translation>Coché à nouveau : %1 dans le tube %2.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Taken back: %1 in tube %2.</source>
            <translation>Annulé : %1 dans le tube %2.</translation>
        </message>
        <message>
            <source>Taken back: %1 in tubes %2.</source>
            <translation>Annulé : %1 dans les tubes %2.</translation>
        </message>
        <message>
            <source>%1 is far from %2. Check unit and decimal mark; Enter again keeps it.</source>
            <translation>%1 est loin de %2. Vérifiez l’unité et le séparateur décimal ; Entrée à nouveau le garde.</translation>
        </message>
        <message>
            <source>First make the dilutions that head the steps.</source>
            <translation>Faites d’abord les dilutions en tête des étapes.</translation>
        </message>
        <message>
            <source>Wait, then read %1</source>
            <translation>Attendre, puis lire %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PipetteWords</name>
        <message>
            <source>%1, not %2</source>
            <translation>%1, et non %2</translation>
        </message>
        <message>
            <source>Tube %1: add %2 %3</source>
            <translation>Tube %1 : ajouter %3 (%2)</translation>
        </message>
        <message>
            <source>Rack %1, tube %2: add %3 %4</source>
            <translation>Portoir %1, tube %2 : ajouter %4 (%3)</translation>
        </message>
        <message>
            <source>%1, diluted %2</source>
            <translation>%1, dilué %2</translation>
        </message>
        <message>
            <source>%1, where most tubes get %2</source>
            <translation>%1, alors que la plupart des tubes reçoivent %2</translation>
        </message>
        <message>
            <source>%1 in place of %2</source>
            <translation>%1 (remplace %2)</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>rien</translation>
        </message>
        <message>
            <source>spoilt: %1</source>
            <translation>inutilisable : %1</translation>
        </message>
        <message>
            <source>noted, not %1</source>
            <translation>noté, et non %1</translation>
        </message>
        <message>
            <source>as planned</source>
            <translation>comme prévu</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>to read</source>
            <translation>à lire</translation>
        </message>
        <message>
            <source>tubes %1 of %2</source>
            <translation>tubes : %1 sur %2</translation>
        </message>
        <message>
            <source>diluted %1-fold</source>
            <translation>dilué %1 fois</translation>
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
            <translation>intitulé</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longueur d’onde</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>étalonnage</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>mass</source>
            <translation>masse</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>take</source>
            <translation>prélever</translation>
        </message>
        <message>
            <source>make up to</source>
            <translation>compléter à</translation>
        </message>
        <message>
            <source>volume in the tube</source>
            <translation>volume dans le tube</translation>
        </message>
        <message>
            <source>concentration</source>
            <translation>concentration</translation>
        </message>
        <message>
            <source>prepared at</source>
            <translation>préparé à</translation>
        </message>
        <message>
            <source>used at</source>
            <translation>employé à</translation>
        </message>
        <message>
            <source>loss per hour</source>
            <translation>perte par heure</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubes</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>ajout dosé</translation>
        </message>
        <message>
            <source>expected</source>
            <translation>attendu</translation>
        </message>
        <message>
            <source>received</source>
            <translation>reçu</translation>
        </message>
        <message>
            <source>standard uncertainties</source>
            <translation>incertitudes-types</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbance</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>each dilution step</source>
            <translation>chaque étape de dilution</translation>
        </message>
        <message>
            <source>standard uncertainty</source>
            <translation>incertitude-type</translation>
        </message>
        <message>
            <source>extract of a solid</source>
            <translation>extrait d’un solide</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>échantillons</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>étalon</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>échantillon %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>étalon %1</translation>
        </message>
        <message>
            <source>tube %1 (%2)</source>
            <translation>tube %1 (%2)</translation>
        </message>
        <message>
            <source>dilution step %1</source>
            <translation>étape de dilution %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>contrôle %1</translation>
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
            <translation>P&amp;asser un étalon</translation>
        </message>
        <message>
            <source>Run a control of ke&amp;yed value</source>
            <translation>Passer un &amp;contrôle de valeur saisie</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Liquide</translation>
        </message>
        <message>
            <source>Solid, weighed and extracted</source>
            <translation>Solide, pesé et extrait</translation>
        </message>
        <message>
            <source>By absorptivity</source>
            <translation>Par l’absorptivité</translation>
        </message>
        <message>
            <source>By the run's standard</source>
            <translation>Par l’étalon de la série</translation>
        </message>
        <message>
            <source>By a line through its standards</source>
            <translation>Par une droite par ses étalons</translation>
        </message>
        <message>
            <source>Plan a run</source>
            <translation>Planifier une série</translation>
        </message>
        <message>
            <source>&amp;Method</source>
            <translation>&amp;Méthode</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <translation>In&amp;titulé</translation>
        </message>
        <message>
            <source>&amp;Samples, one per line</source>
            <translation>Échantillons, un par li&amp;gne</translation>
        </message>
        <message>
            <source>Tubes for &amp;each sample</source>
            <translation>Tu&amp;bes par échantillon</translation>
        </message>
        <message>
            <source>Samples &amp;are</source>
            <translation>Nature des &amp;échantillons</translation>
        </message>
        <message>
            <source>&amp;Wavelength</source>
            <translation>Long&amp;ueur d’onde</translation>
        </message>
        <message>
            <source>Path &amp;length</source>
            <translation>Trajet opti&amp;que</translation>
        </message>
        <message>
            <source>&amp;Calibration</source>
            <translation>Étalo&amp;nnage</translation>
        </message>
        <message>
            <source>%1 nm</source>
            <translation>%1 nm</translation>
        </message>
        <message>
            <source>Blank tubes</source>
            <translation>Tubes de blanc</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PlanPage</name>
        <message>
            <source>Method and cautions</source>
            <translation>Méthode et précautions</translation>
        </message>
        <message>
            <source>What the plan gives</source>
            <translation>Ce qui ressort du plan</translation>
        </message>
        <message>
            <source>Rack</source>
            <translation>Portoir</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Temps</translation>
        </message>
        <message>
            <source>Reagents</source>
            <translation>Réactifs</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>File d’attente</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>Mettre &amp;à la paillasse</translation>
        </message>
        <message>
            <source>Drag a tube, or move it with Ctrl and an arrow key.</source>
            <translation>Faites glisser un tube, ou déplacez-le avec Ctrl et une touche fléchée.</translation>
        </message>
        <message>
            <source>The lot to use up first is chosen; choose another in its cell. Lots are kept under Books, Lots.</source>
            <translation>Le lot à épuiser d’abord est choisi ; choisissez-en un autre dans sa cellule. Les lots sont tenus sous Registres, Lots.</translation>
        </message>
        <message>
            <source>Samples that wait</source>
            <translation>Échantillons en attente</translation>
        </message>
        <message>
            <source>Take the ticked ones</source>
            <translation>Prendre ceux qui sont cochés</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Books, Samples; repeats that decided runs advise come by themselves.</source>
            <translation>Aucun échantillon n’attend. Les échantillons sont inscrits sous Registres, Échantillons ; les répétitions conseillées par les séries décidées arrivent d’elles-mêmes.</translation>
        </message>
        <message>
            <source>Tick with the space bar what goes into this run.</source>
            <translation>Cochez avec la barre d’espace ce qui entre dans cette série.</translation>
        </message>
        <message>
            <source>No method is installed, so no run can be put together here.</source>
            <translation>Aucune méthode n’est installée, aucune série ne peut donc être composée ici.</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>le registre des étalons, préparé %1</translation>
        </message>
        <message>
            <source>Equipment</source>
            <translation>Équipement</translation>
        </message>
        <message>
            <source>At its first reading it is worth about %1, of %2 when made.</source>
            <translation>À sa première lecture, il vaut environ %1, de %2 à la préparation.</translation>
        </message>
        <message>
            <source>That is too old (%1): make a fresh one below.</source>
            <translation>C’est trop vieux (%1) : préparez-en un neuf ci-dessous.</translation>
        </message>
        <message>
            <source>Tubes: %1</source>
            <translation>Tubes : %1</translation>
        </message>
        <message>
            <source>%1. Still to be put right:</source>
            <translation>%1. Encore à corriger :</translation>
        </message>
        <message>
            <source>%1. One person cannot read them all in time: see Time.</source>
            <translation>%1. Une seule personne ne peut pas les lire tous à temps : voir Temps.</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way, but look at this:</source>
            <translation>%1. Rien ne s’y oppose, mais regardez ceci :</translation>
        </message>
        <message>
            <source>%1. Nothing stands in the way.</source>
            <translation>%1. Rien ne s’y oppose.</translation>
        </message>
        <message>
            <source>First tick the samples to take with the space bar.</source>
            <translation>Cochez d’abord avec la barre d’espace les échantillons à prendre.</translation>
        </message>
        <message>
            <source>The run is not on the bench yet: first put right what the list names.</source>
            <translation>La série n’est pas encore à la paillasse : corrigez d’abord ce que nomme la liste.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>Explain this warning</source>
            <translation>Expliquer cet avertissement</translation>
        </message>
        <message>
            <source>What the warning means, and what to do about it; F1 does the same</source>
            <translation>De quoi il est averti, et que faire ; F1 fait de même</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointChart</name>
        <message>
            <source>There is no history yet.</source>
            <translation>Il n’y a pas encore d’historique.</translation>
        </message>
        <message>
            <source>limits %1 to %2</source>
            <translation>limites %1 à %2</translation>
        </message>
        <message>
            <source>lower limit %1</source>
            <translation>limite inférieure %1</translation>
        </message>
        <message>
            <source>upper limit %1</source>
            <translation>limite supérieure %1</translation>
        </message>
        <message>
            <source>no limits</source>
            <translation>pas de limites</translation>
        </message>
        <message>
            <source>below the limit</source>
            <translation>au-dessous de la limite</translation>
        </message>
        <message>
            <source>above the limit</source>
            <translation>au-dessus de la limite</translation>
        </message>
        <message>
            <source>within the limits</source>
            <translation>dans les limites</translation>
        </message>
        <message>
            <source>%1 on %2</source>
            <translation>%1 le %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Newest %1; %2.</source>
            <translation>Dernier : %1 ; %2.</translation>
        </message>
        <message>
            <source>Outside: %1 of %2.</source>
            <translation>En dehors : %1 sur %2.</translation>
        </message>
        <message>
            <source>The newest %1 of %2:</source>
            <translation>Les %1 derniers sur %2 :</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PointPanel</name>
        <message>
            <source>Open the r&amp;un</source>
            <translation>Ou&amp;vrir la série</translation>
        </message>
        <message>
            <source>&amp;Leave it out</source>
            <translation>É&amp;carter</translation>
        </message>
        <message>
            <source>Reason for leaving the point out or taking it back</source>
            <translation>Motif pour écarter le point ou le reprendre</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
        <message>
            <source>Choose a point with the arrow keys or a click; Enter or a second click opens its run.</source>
            <translation>Choisissez un point avec les touches fléchées ou d’un clic ; Entrée ou un second clic ouvre sa série.</translation>
        </message>
        <message>
            <source>&amp;Let it count again</source>
            <translation>&amp;Reprendre</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationForm</name>
        <message>
            <source>Prepare a standard</source>
            <translation>Préparer un étalon</translation>
        </message>
        <message>
            <source>What it gives</source>
            <translation>Ce qui en résulte</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Enre&amp;gistrer dans le registre</translation>
        </message>
        <message>
            <source>S&amp;ubstance</source>
            <translation>Su&amp;bstance</translation>
        </message>
        <message>
            <source>&amp;Add a substance…</source>
            <translation>A&amp;jouter une substance…</translation>
        </message>
        <message>
            <source>&amp;Change it…</source>
            <translation>Mo&amp;difier…</translation>
        </message>
        <message>
            <source>Fo&amp;r</source>
            <translation>Po&amp;ur</translation>
        </message>
        <message>
            <source>Analyte &amp;molecules in one of the substance</source>
            <translation>&amp;Molécules d’analyte par molécule de substance</translation>
        </message>
        <message>
            <source>F&amp;lask</source>
            <translation>Fiol&amp;e</translation>
        </message>
        <message>
            <source>W&amp;eighed (mg)</source>
            <translation>Pes&amp;é (mg)</translation>
        </message>
        <message>
            <source>several portions as 50.3; 49.8</source>
            <translation>plusieurs portions comme 50,3; 49,8</translation>
        </message>
        <message>
            <source>Name on the flas&amp;k</source>
            <translation>&amp;Nom sur la fiole</translation>
        </message>
        <message>
            <source>Ma&amp;de at</source>
            <translation>Heure de prép&amp;aration</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% par heure</translation>
        </message>
        <message>
            <source>Empty where there is no rule beside the loss.</source>
            <translation>Vide s’il n’y a pas de règle en plus de la perte.</translation>
        </message>
        <message>
            <source>No&amp;te (may be empty)</source>
            <translation>Note (&amp;peut rester vide)</translation>
        </message>
        <message>
            <source>%1, lot %2</source>
            <translation>%1, lot %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>another flask</source>
            <translation>une autre fiole</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>usage courant, sans source</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>is missing or not a time: %1</source>
            <translation>manque ou n’est pas une heure : %1</translation>
        </message>
        <message>
            <source>Add the substance first: its purity and its molar mass make the strength.</source>
            <translation>Ajoutez d’abord la substance : sa pureté et sa masse molaire déterminent le titre.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>Pesez %1 et complétez à %2.</translation>
        </message>
        <message>
            <source>That is about %1 of the liquid.</source>
            <translation>Cela fait environ %1 du liquide.</translation>
        </message>
        <message>
            <source>Made: %1 (k = 2).</source>
            <translation>Préparé : %1 (k = 2).</translation>
        </message>
        <message>
            <source>Largest contribution to its uncertainty: %1, %2 of the variance.</source>
            <translation>La plus grande part de son incertitude vient de : %1, %2 de la variance.</translation>
        </message>
        <message>
            <source>Good until %1.</source>
            <translation>Bon jusqu’au %1.</translation>
        </message>
        <message>
            <source>A weighing: %1. u is a standard uncertainty (k = 1).</source>
            <translation>Une pesée : %1. u est une incertitude-type (k = 1).</translation>
        </message>
        <message>
            <source>The last good day of %1, %2, is past.</source>
            <translation>Le dernier jour de validité de %1, le %2, est passé.</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Portez ce que demandent vos règles de sécurité locales et la fiche du fournisseur ; elles priment.</translation>
        </message>
        <message>
            <source>Add the substance first: it says purity and molar mass.</source>
            <translation>Ajoutez d’abord la substance : elle indique la pureté et la masse molaire.</translation>
        </message>
        <message>
            <source>Strength &amp;wanted</source>
            <translation>&amp;Titre souhaité</translation>
        </message>
        <message>
            <source>&amp;Its volume</source>
            <translation>Son &amp;volume</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u de la fiole et du remplissage</translation>
        </message>
        <message>
            <source>u of one weighing</source>
            <translation>u d’une pesée</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Perte de titre</translation>
        </message>
        <message>
            <source>Keeps by &amp;your own rule</source>
            <translation>Conservation selon votre propre r&amp;ègle</translation>
        </message>
        <message>
            <source>One molecule of %1 is %2 times as heavy as one of the analyte: make sure that it holds just one of it.</source>
            <translation>Une molécule de %1 est %2 fois plus lourde qu’une de l’analyte : assurez-vous qu’elle n’en contient qu’une.</translation>
        </message>
        <message>
            <source>That is %1 of the strength wanted: look at the mass, the flask and the number of molecules.</source>
            <translation>C’est %1 du titre souhaité : vérifiez la masse, la fiole et le nombre de molécules.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::PreparationView</name>
        <message>
            <source>Strength when made (k = 2)</source>
            <translation>Titre à la préparation (k = 2)</translation>
        </message>
        <message>
            <source>Share of the variance: %1</source>
            <translation>Part de la variance : %1</translation>
        </message>
        <message>
            <source>Weighed (u of each)</source>
            <translation>Pesée (u de chacune)</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Flask (u)</source>
            <translation>Fiole (u)</translation>
        </message>
        <message>
            <source>Made at, by</source>
            <translation>Préparé le, par</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Perte de titre</translation>
        </message>
        <message>
            <source>% per hour</source>
            <translation>% par heure</translation>
        </message>
        <message>
            <source>none is stated</source>
            <translation>aucune n’est indiquée</translation>
        </message>
        <message>
            <source>Good until</source>
            <translation>Utilisable jusqu’au</translation>
        </message>
        <message>
            <source>Substance</source>
            <translation>Substance</translation>
        </message>
        <message>
            <source>Supplier, lot</source>
            <translation>Fournisseur, lot</translation>
        </message>
        <message>
            <source>Certificate</source>
            <translation>Certificat</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Pureté</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Eau</translation>
        </message>
        <message>
            <source>Molar mass</source>
            <translation>Masse molaire</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Note</translation>
        </message>
        <message>
            <source>Thrown away, because</source>
            <translation>Jeté, motif</translation>
        </message>
        <message>
            <source>How it was made</source>
            <translation>Mode de préparation</translation>
        </message>
        <message>
            <source>Runs that used it</source>
            <translation>Séries qui l’ont employé</translation>
        </message>
        <message>
            <source>No run has used it yet. New run offers it while it can be used.</source>
            <translation>Aucune série ne l’a encore employé. Nouvelle série le propose tant qu’il est utilisable.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Objet</translation>
        </message>
        <message>
            <source>How</source>
            <translation>Valeur</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Série</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Commencée</translation>
        </message>
        <message>
            <source>Age at use</source>
            <translation>Âge à l’emploi</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Taux de récupération</translation>
        </message>
        <message>
            <source>&amp;Throw it away</source>
            <translation>&amp;Jeter</translation>
        </message>
        <message>
            <source>&amp;Label as PDF…</source>
            <translation>É&amp;tiquette en PDF…</translation>
        </message>
        <message>
            <source>Ba&amp;ck to the list</source>
            <translation>Retour &amp;à la liste</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Now %1; %2.</source>
            <translation>Maintenant %1 ; %2.</translation>
        </message>
        <message>
            <source>Say why; the book keeps it.</source>
            <translation>Indiquez pourquoi ; le registre le garde.</translation>
        </message>
        <message>
            <source>Thrown away: it is not offered any more; the runs that used it keep it.</source>
            <translation>Jeté : il n’est plus proposé ; les séries qui l’ont employé le gardent.</translation>
        </message>
        <message>
            <source>Recovery over its life, for all of this substance</source>
            <translation>Taux de récupération au cours de sa vie, pour tout ce qui vient de cette substance</translation>
        </message>
        <message>
            <source>Analyte molecules in one of the substance</source>
            <translation>Molécules d’analyte par molécule</translation>
        </message>
        <message>
            <source>Thrown away, b&amp;ecause</source>
            <translation>Jeté, &amp;motif</translation>
        </message>
        <message>
            <source>Keeps by your own rule</source>
            <translation>Conservation selon votre propre règle</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Printing</name>
        <message>
            <source>There is nothing to label: the run has no standard, and no sample of it is diluted or extracted.</source>
            <translation>Il n’y a rien à étiqueter : la série n’a pas d’étalon, et aucun de ses échantillons n’est dilué ou extrait.</translation>
        </message>
        <message>
            <source>labels.pdf</source>
            <translation>etiquettes.pdf</translation>
        </message>
        <message>
            <source>%1 The sheet is not kept for the next time: %2 can't be written.</source>
            <translation>%1 La planche n’est pas gardée pour la prochaine fois : %2 ne peut pas être écrit.</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Enregistrer en PDF</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Fichiers PDF (*.pdf)</translation>
        </message>
        <message>
            <source>%1 was written; open it to look at it or to print it.</source>
            <translation>%1 a été écrit ; ouvrez-le pour le regarder ou l’imprimer.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ProblemList</name>
        <message>
            <source>Problems</source>
            <translation>Problèmes</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackForm</name>
        <message>
            <source>Rack and times</source>
            <translation>Portoir et temps</translation>
        </message>
        <message>
            <source>Plans go by these: how many tubes a rack holds, how long one person's hands need, and how much reagent is set out.</source>
            <translation>Les plans suivent ceci : combien de tubes contient un portoir, de combien de temps une personne a besoin, et combien de réactif est préparé.</translation>
        </message>
        <message>
            <source>&amp;Rows of a rack</source>
            <translation>&amp;Rangs d’un portoir</translation>
        </message>
        <message>
            <source>&amp;Columns of a rack</source>
            <translation>&amp;Colonnes d’un portoir</translation>
        </message>
        <message>
            <source>Time for an add&amp;ition, each tube</source>
            <translation>Temps pour un &amp;ajout, par tube</translation>
        </message>
        <message>
            <source>Time to &amp;mix, each tube</source>
            <translation>Temps pour &amp;mélanger, par tube</translation>
        </message>
        <message>
            <source>Time for a r&amp;eading, each tube</source>
            <translation>Temps pour une &amp;lecture, par tube</translation>
        </message>
        <message>
            <source>Reagent be&amp;yond the need</source>
            <translation>Réactif au-delà du &amp;besoin</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackGrid</name>
        <message>
            <source>Rack from above</source>
            <translation>Portoir vu de dessus</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackModel</name>
        <message>
            <source>blank</source>
            <translation>blanc</translation>
        </message>
        <message>
            <source>%1 blank</source>
            <translation>%1 blanc</translation>
        </message>
        <message>
            <source>%1 spiked</source>
            <translation>%1 avec ajout</translation>
        </message>
        <message>
            <source>empty place</source>
            <translation>place vide</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Tube %1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPage</name>
        <message>
            <source>&amp;1  Pipette</source>
            <translation>&amp;1  Pipetage</translation>
        </message>
        <message>
            <source>&amp;2  Read</source>
            <translation>&amp;2  Lecture</translation>
        </message>
        <message>
            <source>&amp;3  Review</source>
            <translation>&amp;3  Revue</translation>
        </message>
        <message>
            <source>Rack %1</source>
            <translation>Portoir %1</translation>
        </message>
        <message>
            <source>%1, version %2, tubes: %3</source>
            <translation>%1, version %2, tubes : %3</translation>
        </message>
        <message>
            <source>Typed and not stored, so not in the results: %1. Go to it under %2 and store it, or leave it with Esc.</source>
            <translation>Tapé et non enregistré, donc absent des résultats : %1. Allez-y sous %2 et enregistrez, ou quittez avec Échap.</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>Pipette</source>
            <translation>Pipetage</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>This rack %1: %2</source>
            <translation>Ce portoir, %1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RackPicture</name>
        <message>
            <source>%1 early by %2</source>
            <translation>%1 trop tôt de %2</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 trop tard de %2</translation>
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
            <translation>Tubes selon le temps</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter. %1</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée. %1</translation>
        </message>
        <message>
            <source>The reading waits for it, and is then stored unless there is something against it.</source>
            <translation>La lecture l’attend, et est ensuite enregistrée à moins que quelque chose ne s’y oppose.</translation>
        </message>
        <message>
            <source>%1 Press Enter again to store it as read.</source>
            <translation>%1 Appuyez à nouveau sur Entrée pour l’enregistrer telle que lue.</translation>
        </message>
        <message>
            <source>The tube waits for it.</source>
            <translation>Le tube l’attend.</translation>
        </message>
        <message>
            <source>Tube %1 counts again.</source>
            <translation>Le tube %1 compte à nouveau.</translation>
        </message>
        <message>
            <source>Tube %1 does not count: %2. To take that back, go to it in the table and press /.</source>
            <translation>Le tube %1 ne compte pas : %2. Pour revenir là-dessus, allez-y dans le tableau et appuyez sur /.</translation>
        </message>
        <message>
            <source>The repeat waits for it.</source>
            <translation>La répétition l’attend.</translation>
        </message>
        <message>
            <source>%1 is in the rack now, from tube %2 on: pipette it as the strip says.</source>
            <translation>%1 est maintenant dans le portoir, à partir du tube %2 : pipetez-le comme le dit le bandeau.</translation>
        </message>
        <message>
            <source>%1 came from the photometer and waits until what stands here is stored or left with Esc (waiting in all: %2).</source>
            <translation>%1 est arrivé du photomètre et attend que ce qui figure ici soit enregistré ou quitté avec Échap (en attente au total : %2).</translation>
        </message>
        <message>
            <source>No tube waits for the readings that came in (%1 in all, the first of them %2); none of them was stored. Go to the tube in the table first.</source>
            <translation>Aucun tube n’attend les lectures arrivées (%1 au total, la première %2) ; rien n’en a été enregistré. Allez d’abord au tube dans le tableau.</translation>
        </message>
        <message>
            <source>%1 came for tube “%2”, which is not in this rack; it was not stored.</source>
            <translation>%1 est arrivé pour le tube « %2 », qui n’est pas dans ce portoir ; rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>Absorbance against time</source>
            <translation>Absorbance en fonction du temps</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lectures</translation>
        </message>
        <message>
            <source>Results so far</source>
            <translation>Résultats jusqu’ici</translation>
        </message>
        <message>
            <source>Checks so far</source>
            <translation>Vérifications jusqu’ici</translation>
        </message>
        <message>
            <source>%1 to %2 after what came before</source>
            <translation>%1 à %2 après ce qui précède</translation>
        </message>
        <message>
            <source>Read it at once: %1 (%2)</source>
            <translation>Lisez tout de suite : %1 (%2)</translation>
        </message>
        <message>
            <source>Read it %1 (%2)</source>
            <translation>Lisez %1 (%2)</translation>
        </message>
        <message>
            <source>Read it again %1 (every %2)</source>
            <translation>Relisez %1 (toutes les %2)</translation>
        </message>
        <message>
            <source>Next is to pipette</source>
            <translation>La suite est à pipeter</translation>
        </message>
        <message>
            <source>%1. Enter leads there.</source>
            <translation>%1. Entrée y mène.</translation>
        </message>
        <message>
            <source>Pipett&amp;e</source>
            <translation>&amp;Pipeter</translation>
        </message>
        <message>
            <source>All readings are in</source>
            <translation>Toutes les lectures sont là</translation>
        </message>
        <message>
            <source>Enter opens the review. To correct a reading, go to it in the table with the arrow keys and press Enter there.</source>
            <translation>Entrée ouvre la revue. Pour corriger une lecture, allez-y dans le tableau avec les touches fléchées et appuyez-y sur Entrée.</translation>
        </message>
        <message>
            <source>&amp;Review this rack</source>
            <translation>&amp;Revoir ce portoir</translation>
        </message>
        <message>
            <source>Tube %1: %2</source>
            <translation>Tube %1 : %2</translation>
        </message>
        <message>
            <source>Stored: %1 (%2, %3)</source>
            <translation>Enregistré : %1 (%2, %3)</translation>
        </message>
        <message>
            <source>tube %1, %2: %3</source>
            <translation>tube %1, %2 : %3</translation>
        </message>
        <message>
            <source>With %1 for tube %2, %3, which is not stored yet:</source>
            <translation>Avec %1 pour le tube %2, %3, pas encore enregistré :</translation>
        </message>
        <message>
            <source>From what is stored:</source>
            <translation>D’après ce qui est enregistré :</translation>
        </message>
        <message>
            <source>Tube %1: it is too early for %2. The method waits %3, of which %4 are left: read it after that.</source>
            <translation>Tube %1 : il est trop tôt pour %2. La méthode attend %3, dont il reste %4 : lisez-le ensuite.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReadingsModel</name>
        <message>
            <source>Tube</source>
            <translation>Tube</translation>
        </message>
        <message>
            <source>Contents</source>
            <translation>Contenu</translation>
        </message>
        <message>
            <source>Net, %1</source>
            <translation>Net, %1</translation>
        </message>
        <message>
            <source>Net signal</source>
            <translation>Signal net</translation>
        </message>
        <message>
            <source>%1 (%2×)</source>
            <translation>%1 (%2×)</translation>
        </message>
        <message>
            <source>%1 (was %2)</source>
            <translation>%1 (était %2)</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, spoilt: %2</source>
            <translation>%1, inutilisable : %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Concentration (%1)</source>
            <translation>Concentration (%1)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReagentsModel</name>
        <message>
            <source>empty</source>
            <translation>vide</translation>
        </message>
        <message>
            <source>expired on %1</source>
            <translation>périmé le %1</translation>
        </message>
        <message>
            <source>expires before the run ends</source>
            <translation>périmé avant la fin de la série</translation>
        </message>
        <message numerus="yes">
            <source>opened on %1, keeps %n day(s)</source>
            <translation>
                <numerusform>ouvert le %1, se conserve %n jour</numerusform>
                <numerusform>ouvert le %1, se conserve %n jours</numerusform>
            </translation>
        </message>
        <message>
            <source>none noted</source>
            <translation>aucun noté</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>no lot noted</source>
            <translation>aucun lot noté</translation>
        </message>
        <message>
            <source>no lot in the book</source>
            <translation>aucun lot dans le registre</translation>
        </message>
        <message>
            <source>no fit lot: %1 %2</source>
            <translation>aucun lot utilisable : %1 %2</translation>
        </message>
        <message>
            <source>no fit lot</source>
            <translation>aucun lot utilisable</translation>
        </message>
        <message>
            <source>enough: %1 tubes</source>
            <translation>assez pour %1 tubes</translation>
        </message>
        <message>
            <source>short by %1: in hand %2, for tubes: %3</source>
            <translation>manque %1 : disponible %2, pour tubes : %3</translation>
        </message>
        <message>
            <source>then from lot %1</source>
            <translation>puis du lot %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Reagent</source>
            <translation>Réactif</translation>
        </message>
        <message>
            <source>Needed</source>
            <translation>Nécessaire</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lot</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>; good until %1</source>
            <translation> ; bon jusqu’au %1</translation>
        </message>
        <message>
            <source>%1 more in lot %2</source>
            <translation>%1 de plus dans le lot %2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1 ; %2</translation>
        </message>
        <message>
            <source>; opened on %1, good until %2</source>
            <translation> ; ouvert le %1, bon jusqu’au %2</translation>
        </message>
        <message>
            <source>; opened on %1</source>
            <translation> ; ouvert le %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReceiveView</name>
        <message>
            <source>Receive a container</source>
            <translation>Réceptionner un flacon</translation>
        </message>
        <message>
            <source>Each bottle has a line of its own in the book; water and buffers count too. Name the reagent as the methods do, so that plans find it.</source>
            <translation>Chaque flacon a sa propre ligne dans le registre ; l’eau et les tampons comptent aussi. Nommez le réactif comme le font les méthodes, pour que les plans le trouvent.</translation>
        </message>
        <message>
            <source>Vol&amp;ume in it (mL)</source>
            <translation>&amp;Volume contenu (mL)</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Enre&amp;gistrer dans le registre</translation>
        </message>
        <message>
            <source>Say how much is in it, in mL.</source>
            <translation>Indiquez combien il contient, en mL.</translation>
        </message>
        <message>
            <source>It is dr&amp;y and will be dissolved</source>
            <translation>Produit sec, &amp;à dissoudre</translation>
        </message>
        <message>
            <source>&amp;Mass in it (mg, may be empty)</source>
            <translation>&amp;Masse contenue (mg, peut rester vide)</translation>
        </message>
        <message>
            <source>Kept at (may be empty)</source>
            <translation>Conservé dans (peut rester vide)</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecipeSection</name>
        <message>
            <source>Components</source>
            <translation>Constituants</translation>
        </message>
        <message>
            <source>Steps, in their order</source>
            <translation>Étapes, dans leur ordre</translation>
        </message>
        <message>
            <source>In the table the letters A, M, W and R put a step below the cursor; a step can be dragged too.</source>
            <translation>Dans le tableau, les lettres A, M, T et L placent une étape sous le curseur ; une étape peut aussi être glissée.</translation>
        </message>
        <message>
            <source>Lay out the &amp;usual order</source>
            <translation>Disposer dans l’ordre &amp;usuel</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Étapes</translation>
        </message>
        <message>
            <source>&amp;Add</source>
            <translation>&amp;Ajouter</translation>
        </message>
        <message>
            <source>&amp;Mix</source>
            <translation>&amp;Mélanger</translation>
        </message>
        <message>
            <source>&amp;Wait</source>
            <translation>A&amp;ttendre</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>&amp;Lire</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordView</name>
        <message>
            <source>To its rac&amp;k</source>
            <translation>Vers son &amp;portoir</translation>
        </message>
        <message>
            <source>Reported resu&amp;lts</source>
            <translation>R&amp;ésultats rapportés</translation>
        </message>
        <message>
            <source>Tren&amp;d</source>
            <translation>Ten&amp;dance</translation>
        </message>
        <message>
            <source>What was found of this measurand in the product, or in the sample, over all runs, with its limits</source>
            <translation>Ce qui a été trouvé de ce mesurande dans le produit, ou dans l’échantillon, sur toutes les séries, avec ses limites</translation>
        </message>
        <message>
            <source>Revi&amp;sion</source>
            <translation>Révi&amp;sion</translation>
        </message>
        <message>
            <source>B&amp;y</source>
            <translation>P&amp;ar</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>&amp;Phrase de passe</translation>
        </message>
        <message>
            <source>Put bac&amp;k on the bench</source>
            <translation>Remettre &amp;à la paillasse</translation>
        </message>
        <message>
            <source>%1, version %2, begun %3, %4, revision %5</source>
            <translation>%1, version %2, commencée %3, %4, révision %5</translation>
        </message>
        <message>
            <source>Locked. R&amp;eason to put it back on the bench, where revision %1 begins</source>
            <translation>&amp;Verrouillée. Motif de la remise à la paillasse, où commence la révision %1</translation>
        </message>
        <message>
            <source>%1: on the bench now</source>
            <translation>%1 : maintenant à la paillasse</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; the run is on the bench again, and no revision stands.</source>
            <translation>Ceci est la révision %1 telle qu’elle a été décidée ; la série est de nouveau à la paillasse, et aucune révision n’est en vigueur.</translation>
        </message>
        <message>
            <source>This is revision %1 as it was decided; revision %2 stands.</source>
            <translation>Ceci est la révision %1 telle qu’elle a été décidée ; la révision %2 est en vigueur.</translation>
        </message>
        <message>
            <source>Choose a result in the table first; its trend is shown.</source>
            <translation>Choisissez d’abord un résultat dans le tableau ; sa tendance est affichée.</translation>
        </message>
        <message>
            <source>This program calculates other numbers from the stored readings than version %1 did when the run was decided on. The new ones are shown.</source>
            <translation>Ce programme calcule à partir des lectures enregistrées d’autres nombres que la version %1 lors de la décision sur la série. Les nouveaux sont affichés.</translation>
        </message>
        <message>
            <source>Say who puts it back: type a name.</source>
            <translation>Indiquez qui la remet : tapez un nom.</translation>
        </message>
        <message>
            <source>Back to the list  Esc</source>
            <translation>Retour à la liste  Échap</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecordsPage</name>
        <message>
            <source>Records</source>
            <translation>Enregistrements</translation>
        </message>
        <message>
            <source>Parts of the records</source>
            <translation>Parties des enregistrements</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Qui a fait quoi</translation>
        </message>
        <message>
            <source>Intact, and kept</source>
            <translation>Intégrité et sauvegardes</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecoveriesModel</name>
        <message>
            <source>Standard %1</source>
            <translation>Étalon %1</translation>
        </message>
        <message>
            <source>Spike on %1</source>
            <translation>Ajout dosé sur %1</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Recovery (%)</source>
            <translation>Récupération (%)</translation>
        </message>
        <message>
            <source>Control %1</source>
            <translation>Contrôle %1</translation>
        </message>
        <message>
            <source>Standard, control or spike</source>
            <translation>Étalon, contrôle ou ajout dosé</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Attendu (%1)</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Attendu</translation>
        </message>
        <message>
            <source>Found (%1)</source>
            <translation>Trouvé (%1)</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Trouvé</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RecoveryHistory</name>
        <message>
            <source>Recovery (%)</source>
            <translation>Taux (%)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RegisterView</name>
        <message>
            <source>Samples to register</source>
            <translation>Échantillons à inscrire</translation>
        </message>
        <message>
            <source>Problems</source>
            <translation>Problèmes</translation>
        </message>
        <message>
            <source>Expected, in g/L; for a solid g/100 g</source>
            <translation>Attendu, en g/L ; d’un solide g/100 g</translation>
        </message>
        <message>
            <source>Pas&amp;te from the clipboard</source>
            <translation>&amp;Coller depuis le presse-papiers</translation>
        </message>
        <message>
            <source>Register samples</source>
            <translation>Inscrire des échantillons</translation>
        </message>
        <message>
            <source>Key a line for each sample, or copy one or more columns from a spreadsheet and paste them here (Ctrl+V). The first line may name the columns, a measurand too; otherwise they are, in this order: %1.</source>
            <translation>Saisissez une ligne par échantillon, ou copiez une ou plusieurs colonnes d’un tableur et collez-les ici (Ctrl+V). La première ligne peut nommer les colonnes, un mesurande aussi ; sinon elles sont, dans cet ordre : %1.</translation>
        </message>
        <message>
            <source>What was stated before stays in the notebook's history.</source>
            <translation>Ce qui était indiqué auparavant reste dans l’historique du cahier.</translation>
        </message>
        <message>
            <source>&amp;Store the change</source>
            <translation>&amp;Enregistrer la modification</translation>
        </message>
        <message>
            <source>Line %1, %2: %3</source>
            <translation>Ligne %1, %2 : %3</translation>
        </message>
        <message>
            <source>Line %1: a repeat of %2 waits already; it takes over what is stated here.</source>
            <translation>Ligne %1 : une répétition de %2 attend déjà ; elle reprend ce qui est indiqué ici.</translation>
        </message>
        <message>
            <source>No sample yet.</source>
            <translation>Pas encore d’échantillon.</translation>
        </message>
        <message>
            <source>Samples: %1. Nothing stands in the way.</source>
            <translation>Échantillons : %1. Rien ne s’y oppose.</translation>
        </message>
        <message>
            <source>Samples: %1. Still to be put right (%2), Enter goes there:</source>
            <translation>Échantillons : %1. Encore à corriger (%2), Entrée y mène :</translation>
        </message>
        <message>
            <source>There is no sample to store: key or paste one first.</source>
            <translation>Il n’y a pas d’échantillon à enregistrer : saisissez-en ou collez-en un d’abord.</translation>
        </message>
        <message>
            <source>Nothing is stored yet: first put right what the list names.</source>
            <translation>Rien n’est encore enregistré : corrigez d’abord ce que nomme la liste.</translation>
        </message>
        <message>
            <source>Back to the &amp;list</source>
            <translation>Retour &amp;à la liste</translation>
        </message>
        <message>
            <source>Regi&amp;ster them</source>
            <translation>Inscrir&amp;e</translation>
        </message>
        <message>
            <source>Change a sample that waits</source>
            <translation>Modifier un échantillon en attente</translation>
        </message>
        <message>
            <source>%1 is among the samples that wait already; change it there, or give this one another id.</source>
            <translation>%1 est déjà parmi les échantillons en attente ; modifiez-le là, ou donnez un autre id à celui-ci.</translation>
        </message>
        <message>
            <source>There are samples that are not stored. Press it once more to drop them, or register them first.</source>
            <translation>Des échantillons ne sont pas enregistrés. Appuyez encore une fois pour les abandonner, ou inscrivez-les d’abord.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RepeatHow</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>type a dilution as 20, its steps as 5 to 100, or the sample volume as 0.5 mL</source>
            <translation>tapez une dilution comme 20, ses étapes comme 5 à 100, ou le volume d’échantillon comme 0,5 mL</translation>
        </message>
        <message>
            <source>a dilution is by more than 1; for more sample type its volume, as 0.5 mL</source>
            <translation>une dilution est de plus de 1 ; pour plus d’échantillon, tapez son volume, comme 0,5 mL</translation>
        </message>
        <message>
            <source>usual pipettes and flasks make no dilution of %1; type its steps, as 5 to 100</source>
            <translation>les pipettes et fioles usuelles ne font pas de dilution de %1 ; tapez ses étapes, comme 5 à 100</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, puis </translation>
        </message>
        <message>
            <source>a step goes from less to more, as 5 to 100</source>
            <translation>une étape va du moins au plus, comme 5 à 100</translation>
        </message>
        <message>
            <source>no tube takes that volume of sample; type it in mL, as 0.5 mL</source>
            <translation>aucun tube ne reçoit ce volume d’échantillon ; tapez-le en mL, comme 0,5 mL</translation>
        </message>
        <message>
            <source>fold|times</source>
            <comment>words that may be typed behind a factor of dilution, parted by |</comment>
            <translation>fois</translation>
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
            <translation>%1 mL à %2 mL</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>non dilué</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, puis </translation>
        </message>
        <message>
            <source>%1, %2 mL in the tube</source>
            <translation>%1, %2 mL dans le tube</translation>
        </message>
        <message>
            <source>A&amp;dd it to this rack</source>
            <translation>A&amp;jouter à ce portoir</translation>
        </message>
        <message>
            <source>%1 has to be repeated: %2. The rack still stands here; tubes to add: %3.</source>
            <translation>%1 doit être répété : %2. Le portoir est encore ici ; tubes à ajouter : %3.</translation>
        </message>
        <message>
            <source>%1 The rack has %2 places, so they need another stand.</source>
            <translation>%1 Le portoir a %2 places, il leur faut donc un autre support.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Report</name>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>%1 times %2 (method %3)</source>
            <translation>%1 fois %2 (méthode %3)</translation>
        </message>
        <message>
            <source>%1 is calculated: the sum of %2. Its uncertainty takes account of what the parts have in common.</source>
            <translation>%1 est calculé : la somme de %2. Son incertitude tient compte de ce que les parties ont en commun.</translation>
        </message>
        <message>
            <source>Further information</source>
            <translation>Informations complémentaires</translation>
        </message>
        <message>
            <source>additions to, deviations or exclusions from the method</source>
            <translation>ajouts à la méthode, écarts ou exclusions</translation>
        </message>
        <message>
            <source>sampling: plan and method, place and conditions, where it was ours</source>
            <translation>échantillonnage : plan et méthode, lieu et conditions, s’il était le nôtre</translation>
        </message>
        <message>
            <source>conditions of the tests, where they matter</source>
            <translation>conditions des essais, si elles importent</translation>
        </message>
        <message>
            <source>results from external providers</source>
            <translation>résultats de prestataires externes</translation>
        </message>
        <message>
            <source>opinions and interpretations, whose and on what basis</source>
            <translation>avis et interprétations, de qui et sur quelle base</translation>
        </message>
        <message>
            <source>whatever else was asked for</source>
            <translation>toute autre demande</translation>
        </message>
        <message>
            <source>Tube %1 was pipetted differently from what the method says, and is calculated as pipetted.</source>
            <translation>Le tube %1 a été pipeté autrement que la méthode ne le dit, et il est calculé tel que pipeté.</translation>
        </message>
        <message>
            <source>This is revision %1 and replaces revision %2. It was opened again on %3 by %4: %5.</source>
            <translation>Ceci est la révision %1 et remplace la révision %2. Elle a été rouverte le %3 par %4 : %5.</translation>
        </message>
        <message>
            <source>The results relate only to the items tested, as they were received. What the customer says about the samples is given as stated. This report is not to be reproduced except in full without the laboratory's approval.</source>
            <translation>Les résultats ne concernent que les objets soumis à l’essai, tels qu’ils ont été reçus. Ce que le client indique des échantillons est donné tel qu’il a été communiqué. Ce rapport ne doit pas être reproduit, sinon en entier, sans l’accord du laboratoire.</translation>
        </message>
        <message>
            <source>Content, SHA-256: %1.</source>
            <translation>Contenu, SHA-256 : %1.</translation>
        </message>
        <message numerus="yes">
            <source>Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.</source>
            <translation>
                <numerusform>Enregistrement : série %1 de %2 ; contenu, SHA-256 : %3 ; piste d’audit : %n entrée, tête %4.</numerusform>
                <numerusform>Enregistrement : série %1 de %2 ; contenu, SHA-256 : %3 ; piste d’audit : %n entrées, tête %4.</numerusform>
            </translation>
        </message>
        <message>
            <source>authorised by</source>
            <translation>autorisé par</translation>
        </message>
        <message>
            <source>signature</source>
            <translation>signature</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>page %1 sur %2</translation>
        </message>
        <message>
            <source>laboratory: name, address, contact</source>
            <translation>laboratoire : nom, adresse, contact</translation>
        </message>
        <message>
            <source>address of the laboratory</source>
            <translation>adresse du laboratoire</translation>
        </message>
        <message>
            <source>%1 (%2), version %3</source>
            <translation>%1 (%2), version %3</translation>
        </message>
        <message>
            <source>Made with a template whose volumes nobody confirmed: %1.</source>
            <translation>Fait avec un modèle dont personne n’a confirmé les volumes : %1.</translation>
        </message>
        <message>
            <source>REJECTED</source>
            <translation>REJETÉ</translation>
        </message>
        <message>
            <source>REPLACED</source>
            <translation>REMPLACÉ</translation>
        </message>
        <message>
            <source>DRAFT</source>
            <translation>PROJET</translation>
        </message>
        <message>
            <source>The run was rejected; its results are not to be used.</source>
            <translation>La série a été rejetée ; ses résultats ne doivent pas être employés.</translation>
        </message>
        <message>
            <source>This revision was taken back; what counts is the latest one in the notebook.</source>
            <translation>Cette révision a été retirée ; c’est la dernière du cahier qui compte.</translation>
        </message>
        <message>
            <source>Nobody has accepted this run; its results may change.</source>
            <translation>Personne n’a accepté cette série ; ses résultats peuvent changer.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>minutes, absorbance</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1, signed with a passphrase</source>
            <translation>%1, signé avec une phrase de passe</translation>
        </message>
        <message>
            <source>%1, a typed name, unsigned</source>
            <translation>%1, nom tapé, non signé</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>Report of results</source>
            <translation>Rapport de résultats</translation>
        </message>
        <message>
            <source>End of report %1</source>
            <translation>Fin du rapport %1</translation>
        </message>
        <message>
            <source>Report %1, revision %2</source>
            <translation>Rapport %1, révision %2</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>client</translation>
        </message>
        <message>
            <source>customer's address or contact</source>
            <translation>adresse ou contact du client</translation>
        </message>
        <message>
            <source>order or reference</source>
            <translation>commande ou référence</translation>
        </message>
        <message>
            <source>date of the tests</source>
            <translation>date des essais</translation>
        </message>
        <message>
            <source>place of the tests, if elsewhere</source>
            <translation>lieu des essais, si ailleurs</translation>
        </message>
        <message>
            <source>date of issue</source>
            <translation>date d’émission</translation>
        </message>
        <message>
            <source>Items tested</source>
            <translation>Objets soumis à l’essai</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>ce que c’est</translation>
        </message>
        <message>
            <source>state on arrival</source>
            <translation>état à la réception</translation>
        </message>
        <message>
            <source>received</source>
            <translation>reçu</translation>
        </message>
        <message>
            <source>sampled</source>
            <translation>prélevé</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Résultats</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>grandeur</translation>
        </message>
        <message>
            <source>result</source>
            <translation>résultat</translation>
        </message>
        <message>
            <source>± U</source>
            <translation>± U</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unité</translation>
        </message>
        <message>
            <source>k</source>
            <translation>k</translation>
        </message>
        <message>
            <source>note</source>
            <translation>note</translation>
        </message>
        <message>
            <source>%1) %2</source>
            <translation>%1) %2</translation>
        </message>
        <message>
            <source>No uncertainty is stated: the run states none for its inputs.</source>
            <translation>Aucune incertitude n’est indiquée : la série n’en indique pas pour ses données d’entrée.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>non rapporté</translation>
        </message>
        <message>
            <source>U is the expanded uncertainty of the result, in its unit: the standard uncertainty multiplied by the coverage factor k of its line, for a level of confidence of about 95 % (95.45 %). A result with &lt; or &gt; is a bound and has no U.</source>
            <translation>U est l’incertitude élargie du résultat, dans son unité : l’incertitude-type multipliée par le facteur d’élargissement k de sa ligne, pour un niveau de confiance d’environ 95 % (95,45 %). Un résultat avec &lt; ou &gt; est une borne et n’a pas de U.</translation>
        </message>
        <message>
            <source>Comparison with specifications</source>
            <translation>Comparaison aux spécifications</translation>
        </message>
        <message>
            <source>specification</source>
            <translation>spécification</translation>
        </message>
        <message>
            <source>statement</source>
            <translation>déclaration</translation>
        </message>
        <message>
            <source>decision rule</source>
            <translation>règle de décision</translation>
        </message>
        <message>
            <source>Report of results %1</source>
            <translation>Rapport de résultats %1</translation>
        </message>
        <message>
            <source>report %1, revision %2</source>
            <translation>rapport %1, révision %2</translation>
        </message>
        <message>
            <source>Report %1, revision %2, made %3 with Plateau %4</source>
            <translation>Rapport %1, révision %2, établi %3 avec Plateau %4</translation>
        </message>
        <message>
            <source>The method names no published source.</source>
            <translation>La méthode ne nomme aucune source publiée.</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Source : %1</translation>
        </message>
        <message>
            <source>Accepted by %1: %2</source>
            <translation>Accepté par %1 : %2</translation>
        </message>
        <message>
            <source>Accepted by %1.</source>
            <translation>Accepté par %1.</translation>
        </message>
        <message>
            <source>Accepted by %1: %2 (one reason for the whole run)</source>
            <translation>Accepté par %1 : %2 (un seul motif pour toute la série)</translation>
        </message>
        <message>
            <source>Report %1</source>
            <comment>a file name</comment>
            <translation>Rapport %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportDialog</name>
        <message>
            <source>Number of the report</source>
            <translation>Numéro du rapport</translation>
        </message>
        <message>
            <source>Issued on</source>
            <translation>Émis le</translation>
        </message>
        <message>
            <source>Customer</source>
            <translation>Client</translation>
        </message>
        <message>
            <source>Customer's contact</source>
            <translation>Contact du client</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Commande</translation>
        </message>
        <message>
            <source>Tested at</source>
            <translation>Lieu des essais</translation>
        </message>
        <message>
            <source>Tested on</source>
            <translation>Date des essais</translation>
        </message>
        <message>
            <source>Authorised by</source>
            <translation>Autorisé par</translation>
        </message>
        <message>
            <source>Sampling: plan, method, by whom</source>
            <translation>Échantillonnage : plan, méthode, par qui</translation>
        </message>
        <message>
            <source>Conditions of the tests</source>
            <translation>Conditions des essais</translation>
        </message>
        <message>
            <source>Deviations from the method</source>
            <translation>Écarts par rapport à la méthode</translation>
        </message>
        <message>
            <source>Results from elsewhere</source>
            <translation>Résultats de prestataires externes</translation>
        </message>
        <message>
            <source>Opinions and interpretations</source>
            <translation>Avis et interprétations</translation>
        </message>
        <message>
            <source>Whatever else was asked for</source>
            <translation>Toute autre demande</translation>
        </message>
        <message>
            <source>What the samples are</source>
            <translation>Ce que sont les échantillons</translation>
        </message>
        <message>
            <source>Their condition</source>
            <translation>Leur état</translation>
        </message>
        <message>
            <source>Received on</source>
            <translation>Reçu le</translation>
        </message>
        <message>
            <source>Sampled on</source>
            <translation>Prélevé le</translation>
        </message>
        <message>
            <source>What the report says besides</source>
            <translation>Ce que dit encore le rapport</translation>
        </message>
        <message>
            <source>Choose the &amp;file…</source>
            <translation>Choisir le &amp;fichier…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1 : %2.</translation>
        </message>
        <message>
            <source>Cance&amp;l</source>
            <translation>A&amp;nnuler</translation>
        </message>
        <message>
            <source>Where something stands in grey, the report says that unless you type over it. Whatever else is left empty becomes a line to write on.</source>
            <translation>Là où un texte figure en gris, le rapport le reprend si vous ne tapez rien d’autre. Tout autre champ resté vide devient une ligne à remplir.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportFields</name>
        <message>
            <source>%1 is not a field: expected its name, an equals sign and its value, as in customer=Threnholt Cider</source>
            <translation>%1 n’est pas un champ : attendu son nom, un signe égal et sa valeur, comme dans customer=Threnholt Cider</translation>
        </message>
        <message>
            <source>there is no field %1; known are %2</source>
            <translation>il n’y a pas de champ %1 ; sont connus %2</translation>
        </message>
        <message>
            <source>the field %1 is for the whole report and takes no sample; fields of a sample are %2</source>
            <translation>le champ %1 vaut pour tout le rapport et ne prend pas d’échantillon ; les champs d’un échantillon sont %2</translation>
        </message>
        <message>
            <source>the field %1 has no value; leave it out for a line to write on</source>
            <translation>le champ %1 n’a pas de valeur ; omettez-le pour avoir une ligne à remplir</translation>
        </message>
        <message>
            <source>the value of the field %1 is longer than %2 characters; shorten it</source>
            <translation>la valeur du champ %1 dépasse %2 signes ; raccourcissez-la</translation>
        </message>
        <message>
            <source>the field %1 was given twice; give it once</source>
            <translation>le champ %1 a été donné deux fois ; donnez-le une seule fois</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportHeadForm</name>
        <message>
            <source>Name and report head</source>
            <translation>Nom et en-tête des rapports</translation>
        </message>
        <message>
            <source>These stand at the head of every report. What is left empty becomes a line to write on.</source>
            <translation>Ces données figurent en tête de chaque rapport. Ce qui reste vide devient une ligne à remplir.</translation>
        </message>
        <message>
            <source>telephone, e-mail, a person</source>
            <translation>téléphone, courriel, une personne</translation>
        </message>
        <message>
            <source>N&amp;ame of the laboratory</source>
            <translation>&amp;Nom du laboratoire</translation>
        </message>
        <message>
            <source>Address, line by line</source>
            <translation>Adresse, ligne par ligne</translation>
        </message>
        <message>
            <source>Contact, one line</source>
            <translation>Contact, une ligne</translation>
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
            <translation>Enregistrer les résultats en CSV</translation>
        </message>
        <message>
            <source>CSV files (*.csv)</source>
            <translation>Fichiers CSV (*.csv)</translation>
        </message>
        <message>
            <source>%1 was written, one row for each result.</source>
            <translation>%1 a été écrit, une ligne par résultat.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportSource</name>
        <message>
            <source>run %1, revision %2, as %3</source>
            <translation>série %1, révision %2, comme %3</translation>
        </message>
        <message numerus="yes">
            <source>the mean of %n accepted results</source>
            <translation>
                <numerusform>le seul résultat accepté</numerusform>
                <numerusform>la moyenne de %n résultats acceptés</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the one named by the reviewer, of %n accepted results</source>
            <translation>
                <numerusform>celui nommé par le réviseur, seul résultat accepté</numerusform>
                <numerusform>celui nommé par le réviseur, parmi %n résultats acceptés</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the last of %n accepted results</source>
            <translation>
                <numerusform>le seul résultat accepté</numerusform>
                <numerusform>le dernier de %n résultats acceptés</numerusform>
            </translation>
        </message>
        <message>
            <source>chosen by %1 on %2</source>
            <translation>choisi par %1 le %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Reported is %1: %2</source>
            <translation>Est rapporté %1 (%2)</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1: %2 (%3, %4)</source>
            <translation>%1 : %2 (%3, %4)</translation>
        </message>
        <message>
            <source>%1, guard band %2</source>
            <translation>%1, bande de garde %2</translation>
        </message>
        <message>
            <source>reviewer</source>
            <translation>réviseur</translation>
        </message>
        <message>
            <source>head of the laboratory</source>
            <translation>responsable du laboratoire</translation>
        </message>
        <message>
            <source>analyst</source>
            <translation>analyste</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>acceptée</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejetée</translation>
        </message>
        <message>
            <source>%1: accepted</source>
            <translation>%1 : accepté</translation>
        </message>
        <message>
            <source>%1: rejected</source>
            <translation>%1 : rejeté</translation>
        </message>
        <message>
            <source>%1: to be repeated</source>
            <translation>%1 : à répéter</translation>
        </message>
        <message>
            <source>spike</source>
            <translation>ajout dosé</translation>
        </message>
        <message>
            <source>pasted</source>
            <translation>collée</translation>
        </message>
        <message>
            <source>from the file %1</source>
            <translation>du fichier %1</translation>
        </message>
        <message>
            <source>sent over the serial line %1</source>
            <translation>envoyée par la ligne série %1</translation>
        </message>
        <message>
            <source>sent over the network, %1</source>
            <translation>envoyée par le réseau, %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportUnitsForm</name>
        <message>
            <source>Units of products</source>
            <translation>Unités des produits</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>every measurand</source>
            <translation>tous les mesurandes</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>Unité</translation>
        </message>
        <message>
            <source>The unit in which results are shown and reported. A row without a product holds for every product. A row that names both comes first, then one that names the measurand, then one that names the product. What stands in no row is reported in g/L, for a solid in g/100 g. %1</source>
            <translation>L’unité dans laquelle les résultats sont montrés et rapportés. Une ligne sans produit vaut pour tous les produits. Une ligne qui nomme les deux passe d’abord, puis celle qui nomme le mesurande, puis celle qui nomme le produit. Ce qui ne figure dans aucune ligne est rapporté en g/L, pour un solide en g/100 g. %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedModel</name>
        <message>
            <source>%1, signed</source>
            <translation>%1, signé</translation>
        </message>
        <message>
            <source>%1, unsigned</source>
            <translation>%1, non signé</translation>
        </message>
        <message>
            <source>%1-fold</source>
            <translation>%1 fois</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Série</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Decided</source>
            <translation>Décidé</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Par</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Dilution</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
        <message>
            <source>Reported</source>
            <translation>Rapporté</translation>
        </message>
        <message>
            <source>undiluted</source>
            <translation>non dilué</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedResult</name>
        <message>
            <source>run %1, revision %2</source>
            <translation>série %1, révision %2</translation>
        </message>
        <message>
            <source>in the mean</source>
            <translation>dans la moyenne</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>rapporté</translation>
        </message>
        <message>
            <source>the last accepted result</source>
            <translation>le dernier résultat accepté</translation>
        </message>
        <message>
            <source>the mean of the accepted results</source>
            <translation>la moyenne des résultats acceptés</translation>
        </message>
        <message>
            <source>the result that is named</source>
            <translation>le résultat nommé</translation>
        </message>
        <message>
            <source>Reported: %1, %2 (%3).</source>
            <translation>Rapporté : %1, %2 (%3).</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>Nobody has chosen: until somebody does, the last accepted one counts.</source>
            <translation>Personne n’a choisi : jusque-là, le dernier accepté compte.</translation>
        </message>
        <message>
            <source>signed</source>
            <translation>signé</translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>non signé</translation>
        </message>
        <message>
            <source>Chosen by %1, %2 (%3): %4</source>
            <translation>Choisi par %1, %2 (%3) : %4</translation>
        </message>
        <message>
            <source>A result was accepted since: see whether the choice still holds.</source>
            <translation>Un résultat a été accepté depuis : voyez si le choix vaut encore.</translation>
        </message>
        <message>
            <source>On the report: %1.</source>
            <translation>Sur le rapport : %1.</translation>
        </message>
        <message numerus="yes">
            <source>These results were accepted over %n days. Should they be of two samples of one name, give each its day of receipt in the plan: a name received on another day is another sample.</source>
            <translation>
                <numerusform>Ces résultats ont été acceptés en l’espace de %n jour. S’il s’agit de deux échantillons de même nom, donnez à chacun son jour de réception dans le plan : un nom reçu un autre jour est un autre échantillon.</numerusform>
                <numerusform>Ces résultats ont été acceptés en l’espace de %n jours. S’il s’agit de deux échantillons de même nom, donnez à chacun son jour de réception dans le plan : un nom reçu un autre jour est un autre échantillon.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReportedView</name>
        <message>
            <source>Reported result</source>
            <translation>Résultat rapporté</translation>
        </message>
        <message>
            <source>Accepted results</source>
            <translation>Résultats acceptés</translation>
        </message>
        <message>
            <source>&amp;Chosen by</source>
            <translation>&amp;Choisi par</translation>
        </message>
        <message>
            <source>P&amp;assphrase</source>
            <translation>Phr&amp;ase de passe</translation>
        </message>
        <message>
            <source>Reported result of sample and &amp;measurand</source>
            <translation>Résultat rapporté de l’échantillon et du &amp;mesurande</translation>
        </message>
        <message>
            <source>the last accepted</source>
            <translation>le dernier accepté</translation>
        </message>
        <message>
            <source>the mean of all accepted</source>
            <translation>la moyenne de tous les acceptés</translation>
        </message>
        <message>
            <source>the one marked in the table</source>
            <translation>celui marqué dans le tableau</translation>
        </message>
        <message>
            <source>R&amp;ule</source>
            <translation>R&amp;ègle</translation>
        </message>
        <message>
            <source>Wh&amp;y</source>
            <translation>Po&amp;urquoi</translation>
        </message>
        <message>
            <source>S&amp;tore the choice</source>
            <translation>&amp;Enregistrer le choix</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Say who chooses: type a name.</source>
            <translation>Indiquez qui choisit : tapez un nom.</translation>
        </message>
        <message>
            <source>The choice is stored.</source>
            <translation>Le choix est enregistré.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultDetails</name>
        <message>
            <source>Calculation</source>
            <translation>Calcul</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <translation>Bilan d’incertitude</translation>
        </message>
        <message>
            <source>Whose numbers the budget is made of</source>
            <translation>Ce qui répond des nombres du bilan</translation>
        </message>
        <message>
            <source>Details of the chosen result</source>
            <translation>Détails du résultat choisi</translation>
        </message>
        <message>
            <source>Overvie&amp;w</source>
            <translation>Aper&amp;çu</translation>
        </message>
        <message>
            <source>&amp;Calculation</source>
            <translation>Calc&amp;ul</translation>
        </message>
        <message>
            <source>&amp;Uncertainty</source>
            <translation>I&amp;ncertitude</translation>
        </message>
        <message>
            <source>%1 % %2</source>
            <translation>%1 % %2</translation>
        </message>
        <message>
            <source>Share of the variance of %1 (%)</source>
            <translation>Part de la variance de %1 (%)</translation>
        </message>
        <message>
            <source>k = %1: %2.</source>
            <translation>k = %1 : %2.</translation>
        </message>
        <message>
            <source>As the laboratory reports it</source>
            <translation>Comme le laboratoire le rapporte</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>en %1</translation>
        </message>
        <message>
            <source>the result in %1 in that unit</source>
            <translation>le résultat en %1 dans cette unité</translation>
        </message>
        <message>
            <source>Recovery of %1: %2 expected at use</source>
            <translation>Taux de récupération de %1 : %2 attendu à l’emploi</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultOverview</name>
        <message>
            <source>About the chosen result</source>
            <translation>À propos du résultat choisi</translation>
        </message>
        <message>
            <source>Recovery and its history</source>
            <translation>Taux de récupération et son historique</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultView</name>
        <message>
            <source>Decisions</source>
            <translation>Décisions</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Résultats</translation>
        </message>
        <message>
            <source>Rejected</source>
            <translation>Rejetée</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsCsv</name>
        <message>
            <source>Results %1</source>
            <comment>a file name</comment>
            <translation>Résultats %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ResultsModel</name>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Measurand</source>
            <translation>Mesurande</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
        <message>
            <source>k</source>
            <comment>coverage factor of the uncertainty</comment>
            <translation>k</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Étendue</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Dilution</source>
            <translation>Dilution</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Limites</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewPage</name>
        <message>
            <source>Equipment and lots that the run was made with</source>
            <translation>Équipement et lots avec lesquels la série a été faite</translation>
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
            <translation>Un réviseur ou un responsable statue ici, et %1 est analyste.</translation>
        </message>
        <message>
            <source>A reviewer or a head decides here, and %1 are analysts.</source>
            <translation>Un réviseur ou un responsable statue ici, et %1 sont analystes.</translation>
        </message>
        <message>
            <source>Who may: %1.</source>
            <translation>Qui peut décider : %1.</translation>
        </message>
        <message>
            <source>accepted: read again, and the reading is right</source>
            <translation>accepté : relu, et la lecture est juste</translation>
        </message>
        <message>
            <source>accepted: the control is within its limits</source>
            <translation>accepté : le contrôle est dans ses limites</translation>
        </message>
        <message>
            <source>accepted: the tube concerned is left out</source>
            <translation>accepté : le tube concerné est écarté</translation>
        </message>
        <message>
            <source>accepted: for orientation only, not for a report</source>
            <translation>accepté : à titre indicatif seulement, pas pour un rapport</translation>
        </message>
        <message>
            <source>Nobody who is set up may decide it.</source>
            <translation>Aucune personne enregistrée n’a le droit d’en décider.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 worked on this one.</source>
            <translation>Personne ne revoit sa propre série : %1 a travaillé à celle-ci.</translation>
        </message>
        <message>
            <source>Nobody reviews their own run: %1 have worked on this one.</source>
            <translation>Personne ne revoit sa propre série : %1 ont travaillé à celle-ci.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ReviewRulesForm</name>
        <message>
            <source>Review</source>
            <translation>Revue</translation>
        </message>
        <message>
            <source>Who may decide on a run. The first rule holds once people are set up under Books, People; the second one for typed names, too.</source>
            <translation>Qui peut statuer sur une série. La première règle vaut une fois les personnes définies sous Registres, Personnes ; la seconde aussi pour les noms tapés.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
        <message>
            <source>A reviewer or the head decides; an analyst's signature does not</source>
            <translation>Un réviseur ou le responsable statue ; la signature d’un analyste ne suffit pas</translation>
        </message>
        <message>
            <source>A second person reviews: nobody decides on a run that they worked on</source>
            <translation>Une seconde personne revoit : nul ne statue sur une série à laquelle il a travaillé</translation>
        </message>
        <message>
            <source>Reasons offered where a sample or a run is rejected; another may be typed</source>
            <translation>Motifs proposés au rejet d’un échantillon ou d’une série ; un autre peut être tapé</translation>
        </message>
        <message>
            <source>Reasons for a rejection</source>
            <translation>Motifs de rejet</translation>
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
            <translation>%1 fois</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1 ; %2</translation>
        </message>
        <message>
            <source>%1. The limit: %2, %3.</source>
            <translation>%1. La limite : %2, %3.</translation>
        </message>
        <message>
            <source>It stands in %1 and not in %2: %3.</source>
            <translation>Il est en %1 et non en %2 : %3.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1: %2 and %3 more</source>
            <translation>%1 : %2 et %3 de plus</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Against the limits of the products: %1.</source>
            <translation>Par rapport aux limites des produits : %1.</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>There is nothing against this result.</source>
            <translation>Rien ne s’oppose à ce résultat.</translation>
        </message>
        <message>
            <source>No standard was measured in this run: nothing in it shows what the assay recovers.</source>
            <translation>Aucun étalon n’a été mesuré dans cette série : rien n’y montre ce que le dosage récupère.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RhythmRow</name>
        <message>
            <source>Keep a &amp;rhythm: a tube every</source>
            <translation>Garder un &amp;rythme : un tube tous les</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>Seconds from tube to tube</source>
            <translation>Secondes d’un tube à l’autre</translation>
        </message>
        <message>
            <source>Enter seconds from %1 to %2: no rhythm is kept.</source>
            <translation>Indiquez %1 à %2 secondes : aucun rythme n’est gardé.</translation>
        </message>
        <message>
            <source>Tube %1 %2</source>
            <translation>Tube %1 %2</translation>
        </message>
        <message>
            <source>It begins with the first tube that is ticked.</source>
            <translation>Il commence avec le premier tube coché.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunComparison</name>
        <message>
            <source>the run's own standard</source>
            <translation>l’étalon de la série</translation>
        </message>
        <message>
            <source>a line of standards</source>
            <translation>une droite d’étalons</translation>
        </message>
        <message>
            <source>molar absorptivity</source>
            <translation>absorptivité molaire</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Trajet optique</translation>
        </message>
        <message>
            <source>Calibrated by</source>
            <translation>Étalonnage par</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Commencée</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Décidée par</translation>
        </message>
        <message>
            <source>%1, made %2</source>
            <translation>%1, préparé %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, jusqu’au %2</translation>
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
            <translation>Taux de récupération : %1, %2</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>échec : %1</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Conditions</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Étalons</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Signaux</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Résultats</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Vérifications</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDetails</name>
        <message>
            <source>Recoveries</source>
            <translation>Taux de récupération</translation>
        </message>
        <message>
            <source>Readings with their history</source>
            <translation>Lectures avec leur historique</translation>
        </message>
        <message>
            <source>Method and cautions</source>
            <translation>Méthode et précautions</translation>
        </message>
        <message>
            <source>Details of the run</source>
            <translation>Détails de la série</translation>
        </message>
        <message>
            <source>&amp;Quality checks</source>
            <translation>Vérifications de &amp;qualité</translation>
        </message>
        <message>
            <source>Recover&amp;ies</source>
            <translation>Tau&amp;x de récupération</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <translation>L&amp;ectures</translation>
        </message>
        <message>
            <source>Me&amp;thod</source>
            <translation>&amp;Méthode</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Vérifications</translation>
        </message>
        <message>
            <source>E&amp;xplain this check</source>
            <translation>Expliquer cette &amp;vérification</translation>
        </message>
        <message>
            <source>What is checked, why, and what to do about it; F1 does the same</source>
            <translation>Ce qui est vérifié, pourquoi, et que faire ; F1 fait de même</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunDraft</name>
        <message>
            <source>Between 1 and 12 tubes per sample, as a whole number.</source>
            <translation>Entre 1 et 12 tubes par échantillon, en nombre entier.</translation>
        </message>
        <message>
            <source>A spike is a volume of the run's standard: run one.</source>
            <translation>Un ajout dosé est un volume de l’étalon de la série : passez-en un.</translation>
        </message>
        <message>
            <source>The rack has %1 places and this run %2 tubes: take fewer, or split it.</source>
            <translation>Le portoir a %1 places et cette série %2 tubes : prenez-en moins, ou scindez-la.</translation>
        </message>
        <message>
            <source>Give the run a title, by which it is found again.</source>
            <translation>Donnez à la série un intitulé, par lequel on la retrouve.</translation>
        </message>
        <message>
            <source>Name at least one sample, one per line.</source>
            <translation>Nommez au moins un échantillon, un par ligne.</translation>
        </message>
        <message>
            <source>Say how much of its strength it loses in an hour; 0 if it keeps its strength for the day.</source>
            <translation>Indiquez quelle part de son titre il perd en une heure ; 0 s’il garde son titre toute la journée.</translation>
        </message>
        <message>
            <source>With 0 it counts at full strength all day; the method expects a loss of %1 % an hour.</source>
            <translation>Avec 0, il compte à plein titre toute la journée ; la méthode prévoit une perte de %1 % par heure.</translation>
        </message>
        <message>
            <source>Say when it was made, as 8:10, so that its strength at use can be worked out.</source>
            <translation>Indiquez quand il a été préparé, par exemple 8:10, pour que son titre à l’emploi puisse être calculé.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilePage</name>
        <message>
            <source>P&amp;ut on the bench</source>
            <translation>Mettre &amp;à la paillasse</translation>
        </message>
        <message>
            <source>Open &amp;another file…</source>
            <translation>Ouvrir un &amp;autre fichier…</translation>
        </message>
        <message>
            <source>The file can be put on the bench.</source>
            <translation>Le fichier peut être mis à la paillasse.</translation>
        </message>
        <message>
            <source>The file can be used. Worth knowing first:</source>
            <translation>Le fichier est utilisable. À savoir d’abord :</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée.</translation>
        </message>
        <message>
            <source>It is rack %1.</source>
            <translation>C’est le portoir %1.</translation>
        </message>
        <message>
            <source>It is decided on and stands under Notebook.</source>
            <translation>Elle est décidée et figure sous Cahier.</translation>
        </message>
        <message>
            <source>Nothing was stored.</source>
            <translation>Rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The notebook already has this very run, with the same readings: run %1, "%2", put on the bench on %3. %4</source>
            <translation>Le cahier a déjà cette même série, avec les mêmes lectures : série %1, « %2 », mise à la paillasse le %3. %4</translation>
        </message>
        <message>
            <source>The file cannot be used, and nothing was taken from it:</source>
            <translation>Le fichier ne peut pas être utilisé, et rien n’en a été repris :</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunFilterFields</name>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lot</translation>
        </message>
        <message>
            <source>Standard</source>
            <translation>Étalon</translation>
        </message>
        <message>
            <source>From day</source>
            <translation>Du jour</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Au jour</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>any</source>
            <translation>tous</translation>
        </message>
        <message>
            <source>Failed check</source>
            <translation>Vérification en échec</translation>
        </message>
        <message>
            <source>any or none</source>
            <translation>avec ou sans</translation>
        </message>
        <message>
            <source>Result of</source>
            <translation>Résultat de</translation>
        </message>
        <message>
            <source>at least</source>
            <translation>au moins</translation>
        </message>
        <message>
            <source>at most</source>
            <translation>au plus</translation>
        </message>
        <message>
            <source>Result at least</source>
            <translation>Résultat au moins</translation>
        </message>
        <message>
            <source>Result at most</source>
            <translation>Résultat au plus</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 en %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>The first day is after the last, so no run can be found: exchange them.</source>
            <translation>Le premier jour est après le dernier, aucune série ne peut donc être trouvée : échangez-les.</translation>
        </message>
        <message>
            <source>Choose what the result is for, so that its value counts.</source>
            <translation>Choisissez de quoi est le résultat, pour que sa valeur compte.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunListView</name>
        <message>
            <source>&amp;More filters</source>
            <translation>&amp;Plus de filtres</translation>
        </message>
        <message>
            <source>&amp;Keep filter</source>
            <translation>&amp;Garder le filtre</translation>
        </message>
        <message>
            <source>Forget it</source>
            <translation>L’oublier</translation>
        </message>
        <message>
            <source>&amp;Compare the two</source>
            <translation>&amp;Comparer les deux</translation>
        </message>
        <message>
            <source>Runs</source>
            <translation>Séries</translation>
        </message>
        <message>
            <source>Order of the runs</source>
            <translation>Ordre des séries</translation>
        </message>
        <message>
            <source>newest in the notebook first</source>
            <translation>les plus récentes du cahier d’abord</translation>
        </message>
        <message>
            <source>oldest in the notebook first</source>
            <translation>les plus anciennes du cahier d’abord</translation>
        </message>
        <message>
            <source>latest day first</source>
            <translation>dernier jour d’abord</translation>
        </message>
        <message>
            <source>latest decision first</source>
            <translation>dernière décision d’abord</translation>
        </message>
        <message>
            <source>by title</source>
            <translation>par intitulé</translation>
        </message>
        <message>
            <source>by method</source>
            <translation>par méthode</translation>
        </message>
        <message>
            <source>Kept filters</source>
            <translation>Filtres gardés</translation>
        </message>
        <message>
            <source>name of a filter</source>
            <translation>nom d’un filtre</translation>
        </message>
        <message>
            <source>Name of a kept filter</source>
            <translation>Nom d’un filtre gardé</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cahier</translation>
        </message>
        <message>
            <source>Fin&amp;d by title, sample, person, note … or printed code</source>
            <translation>&amp;Trouver intitulé, échantillon, personne, note … ou code imprimé</translation>
        </message>
        <message>
            <source>Kept filter</source>
            <translation>Filtre gardé</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Ordre</translation>
        </message>
        <message>
            <source>No run in the notebook matches all of this. Remove a word or a field to find more; Escape clears everything.</source>
            <translation>Aucune série du cahier ne réunit tout cela. Enlevez un mot ou un champ pour en trouver davantage ; Échap enlève tout.</translation>
        </message>
        <message>
            <source>No run is in the notebook yet. Start one with New run, or open a run file.</source>
            <translation>Le cahier ne contient encore aucune série. Commencez-en une avec Nouvelle série, ou ouvrez un fichier de série.</translation>
        </message>
        <message numerus="yes">
            <source>%n run(s)</source>
            <translation>
                <numerusform>%n série</numerusform>
                <numerusform>%n séries</numerusform>
            </translation>
        </message>
        <message>
            <source>more than %1 of %2 runs</source>
            <translation>plus de %1 séries sur %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n run(s)</source>
            <translation>
                <numerusform>%1 sur %n série</numerusform>
                <numerusform>%1 sur %n séries</numerusform>
            </translation>
        </message>
        <message>
            <source>Choose two runs: the second with Control held down.</source>
            <translation>Choisissez deux séries : la seconde en maintenant Ctrl.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunPapers</name>
        <message>
            <source>Save a copy of the run</source>
            <translation>Enregistrer une copie de la série</translation>
        </message>
        <message>
            <source>run.json</source>
            <translation>serie.json</translation>
        </message>
        <message>
            <source>Run files (*.json)</source>
            <translation>Fichiers de série (*.json)</translation>
        </message>
        <message>
            <source>The copy could not be written to %1: %2. Choose another place; the run itself is in the notebook as before.</source>
            <translation>La copie n’a pas pu être écrite dans %1 : %2. Choisissez un autre emplacement ; la série elle-même est dans le cahier comme avant.</translation>
        </message>
        <message>
            <source>A copy of the run was written to %1.</source>
            <translation>Une copie de la série a été écrite dans %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunRecord</name>
        <message>
            <source>%1: %2</source>
            <comment>a tube's role and what is in it</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>does not count: %1</source>
            <translation>ne compte pas : %1</translation>
        </message>
        <message>
            <source>spiked with %1 of %2</source>
            <translation>avec ajout de %1 (%2)</translation>
        </message>
        <message>
            <source>%1: %2 pipetted</source>
            <translation>%1 : %2 pipeté</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tube</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>contenu</translation>
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
            <translation>note</translation>
        </message>
        <message>
            <source>%1) tube %2, %3: was %4, corrected to %5 by %6 on %7. Reason: %8</source>
            <translation>%1) tube %2, %3 : était %4, corrigé en %5 par %6 le %7. Motif : %8</translation>
        </message>
        <message>
            <source>with its run, from a file</source>
            <translation>avec sa série, d’un fichier</translation>
        </message>
        <message>
            <source>keyed</source>
            <translation>saisie</translation>
        </message>
        <message>
            <source>nothing, read once more</source>
            <translation>rien, lu une fois de plus</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valeur</translation>
        </message>
        <message>
            <source>as typed or sent</source>
            <translation>comme tapé ou envoyé</translation>
        </message>
        <message>
            <source>how it came</source>
            <translation>comment elle est arrivée</translation>
        </message>
        <message>
            <source>by</source>
            <translation>par</translation>
        </message>
        <message>
            <source>at</source>
            <translation>à</translation>
        </message>
        <message>
            <source>replaces</source>
            <translation>remplace</translation>
        </message>
        <message>
            <source>Readings as they came, oldest first</source>
            <translation>Lectures telles qu’arrivées, de la plus ancienne à la plus récente</translation>
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
            <translation>L’horloge de l’ordinateur a été réglée pendant que la série était à la paillasse</translation>
        </message>
        <message>
            <source>%1 by %2, to %3; noted with the name of %4. Times above are as the clock showed them, minutes on the run's own clock do not change with it.</source>
            <translation>%1 de %2, jusqu’à %3 ; noté au nom de %4. Les heures ci-dessus sont celles que l’horloge indiquait, les minutes de l’horloge propre à la série n’en sont pas changées.</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Avance</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Recul</translation>
        </message>
        <message>
            <source>component</source>
            <translation>constituant</translation>
        </message>
        <message>
            <source>tubes</source>
            <translation>tubes</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lot</translation>
        </message>
        <message>
            <source>last good day</source>
            <translation>dernier jour de validité</translation>
        </message>
        <message>
            <source>pipette</source>
            <translation>pipette</translation>
        </message>
        <message>
            <source>first at</source>
            <translation>premier à</translation>
        </message>
        <message>
            <source>last at</source>
            <translation>dernier à</translation>
        </message>
        <message>
            <source>Pipetting as it was ticked</source>
            <translation>Pipetage tel qu’il a été coché</translation>
        </message>
        <message>
            <source>added, minutes on the run's clock</source>
            <translation>ajouté, minutes de l’horloge de la série</translation>
        </message>
        <message>
            <source>read, minutes on the run's clock</source>
            <translation>lu, minutes de l’horloge de la série</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>When it was done</source>
            <translation>Quand cela a été fait</translation>
        </message>
        <message>
            <source>Tubes and readings</source>
            <translation>Tubes et lectures</translation>
        </message>
        <message>
            <source>At the bench</source>
            <translation>À la paillasse</translation>
        </message>
        <message>
            <source>% of it</source>
            <translation>% de sa valeur</translation>
        </message>
        <message>
            <source>each absorbance</source>
            <translation>chaque absorbance</translation>
        </message>
        <message>
            <source>absorbance</source>
            <translation>absorbance</translation>
        </message>
        <message>
            <source>absorptivity</source>
            <translation>absorptivité</translation>
        </message>
        <message>
            <source>path length</source>
            <translation>trajet optique</translation>
        </message>
        <message>
            <source>total volume</source>
            <translation>volume total</translation>
        </message>
        <message>
            <source>sample volume</source>
            <translation>volume d’échantillon</translation>
        </message>
        <message>
            <source>each dilution step, unless it has its own</source>
            <translation>chaque étape de dilution, sauf si elle a la sienne</translation>
        </message>
        <message>
            <source>extract</source>
            <translation>extrait</translation>
        </message>
        <message>
            <source>the run</source>
            <translation>la série</translation>
        </message>
        <message>
            <source>its file does not say where it comes from</source>
            <translation>son fichier ne dit pas d’où elle vient</translation>
        </message>
        <message>
            <source>stated with it; the laboratory has %1 now, from %2 (%3)</source>
            <translation>indiquée avec elle ; le laboratoire a maintenant %1, de %2 (%3)</translation>
        </message>
        <message>
            <source>stated with it</source>
            <translation>indiquée avec elle</translation>
        </message>
        <message>
            <source>concentration of the standard %1</source>
            <translation>concentration de l’étalon %1</translation>
        </message>
        <message>
            <source>the standard</source>
            <translation>l’étalon</translation>
        </message>
        <message>
            <source>not stated, so it counts as exactly known</source>
            <translation>non indiquée, compte donc comme exactement connue</translation>
        </message>
        <message>
            <source>The run states no uncertainties of its inputs.</source>
            <translation>La série n’indique pas d’incertitudes de ses données d’entrée.</translation>
        </message>
        <message>
            <source>standard uncertainty (k = 1) of</source>
            <translation>incertitude-type (k = 1) de</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unité</translation>
        </message>
        <message>
            <source>who answers for it</source>
            <translation>ce qui en répond</translation>
        </message>
        <message>
            <source>where it comes from</source>
            <translation>origine</translation>
        </message>
        <message>
            <source>add %1</source>
            <translation>ajouter %1</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>attendre %1</translation>
        </message>
        <message>
            <source>read %1</source>
            <translation>lire %1</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mélanger</translation>
        </message>
        <message>
            <source>A series of %1 counts as the straight line through its last %2 readings gives it at 0 min, the addition of the starter.</source>
            <translation>Une suite de %1 compte telle que la donne la droite par ses %2 dernières lectures à 0 min, l’ajout du réactif de démarrage.</translation>
        </message>
        <message>
            <source>coupled indicator of %1</source>
            <translation>indicateur couplé (%1)</translation>
        </message>
        <message>
            <source>volume, mL</source>
            <translation>volume, mL</translation>
        </message>
        <message>
            <source>may be, mL</source>
            <translation>permis, mL</translation>
        </message>
        <message>
            <source>part</source>
            <translation>rôle</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>diluent, makes up for the sample</source>
            <translation>diluant, compense l’échantillon</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>réactif de démarrage</translation>
        </message>
        <message>
            <source>suspension</source>
            <translation>suspension</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>signal</source>
            <translation>signal</translation>
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
            <translation>facteur, g/L pour une unité de signal</translation>
        </message>
        <message>
            <source>by the run's own standard</source>
            <translation>par l’étalon de la série</translation>
        </message>
        <message>
            <source>by a line through the run's standards</source>
            <translation>par une droite par les étalons de la série</translation>
        </message>
        <message>
            <source>by the molar absorptivity</source>
            <translation>par l’absorptivité molaire</translation>
        </message>
        <message>
            <source>%1 (u = %2)</source>
            <translation>%1 (u = %2)</translation>
        </message>
        <message>
            <source>weighed, g</source>
            <translation>pesé, g</translation>
        </message>
        <message>
            <source>extract, mL</source>
            <translation>extrait, mL</translation>
        </message>
        <message>
            <source>dilution</source>
            <translation>dilution</translation>
        </message>
        <message>
            <source>factor F</source>
            <translation>facteur F</translation>
        </message>
        <message>
            <source>as it is</source>
            <translation>tel quel</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Échantillons</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>étalon</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>contient</translation>
        </message>
        <message>
            <source>made, g/L</source>
            <translation>préparé, g/L</translation>
        </message>
        <message>
            <source>prepared</source>
            <translation>préparé</translation>
        </message>
        <message>
            <source>used</source>
            <translation>employé</translation>
        </message>
        <message>
            <source>lost in an hour, %</source>
            <translation>perdu en une heure, %</translation>
        </message>
        <message>
            <source>at use, g/L</source>
            <translation>à l’emploi, g/L</translation>
        </message>
        <message>
            <source>all measured</source>
            <translation>tous les mesurandes</translation>
        </message>
        <message>
            <source>Standards</source>
            <translation>Étalons</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>The run names no lots.</source>
            <translation>La série ne nomme aucun lot.</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Source : %1</translation>
        </message>
        <message>
            <source>Steps: %1.</source>
            <translation>Étapes : %1.</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Conditions</translation>
        </message>
        <message>
            <source>wavelength</source>
            <translation>longueur d’onde</translation>
        </message>
        <message>
            <source>path length d</source>
            <translation>trajet optique d</translation>
        </message>
        <message>
            <source>molar absorptivity e</source>
            <translation>absorptivité molaire e</translation>
        </message>
        <message>
            <source>calibration</source>
            <translation>étalonnage</translation>
        </message>
        <message>
            <source>direction</source>
            <translation>sens</translation>
        </message>
        <message>
            <source>rising</source>
            <translation>montant</translation>
        </message>
        <message>
            <source>falling</source>
            <translation>descendant</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lectures</translation>
        </message>
        <message>
            <source>brought to the final volume</source>
            <translation>ramenées au volume final</translation>
        </message>
        <message>
            <source>as read, no correction for volume</source>
            <translation>telles que lues, sans correction de volume</translation>
        </message>
        <message>
            <source>net signal to be reported</source>
            <translation>signal net à rapporter</translation>
        </message>
        <message>
            <source>largest absorbance</source>
            <translation>plus grande absorbance</translation>
        </message>
        <message>
            <source>absorbance that has to remain</source>
            <translation>absorbance qui doit rester</translation>
        </message>
        <message>
            <source>Samples, standards, lots</source>
            <translation>Échantillons, étalons, lots</translation>
        </message>
        <message>
            <source>net signal dA</source>
            <translation>signal net dA</translation>
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
            <translation>%1 : signaux et concentrations</translation>
        </message>
        <message numerus="yes">
            <source>Mean blank: %1 of %n tubes.</source>
            <translation>
                <numerusform>Blanc moyen : %1 de %n tube.</numerusform>
                <numerusform>Blanc moyen : %1 de %n tubes.</numerusform>
            </translation>
        </message>
        <message>
            <source>recovered</source>
            <translation>récupéré</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>grandeur</translation>
        </message>
        <message>
            <source>expected, g/L</source>
            <translation>attendu, g/L</translation>
        </message>
        <message>
            <source>found, g/L</source>
            <translation>trouvé, g/L</translation>
        </message>
        <message>
            <source>recovery, %</source>
            <translation>récupération, %</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>étalon %1</translation>
        </message>
        <message>
            <source>spike of %1</source>
            <translation>ajout dosé sur %1</translation>
        </message>
        <message>
            <source>Recoveries</source>
            <translation>Taux de récupération</translation>
        </message>
        <message>
            <source>points</source>
            <translation>points</translation>
        </message>
        <message>
            <source>at 0 min</source>
            <translation>à 0 min</translation>
        </message>
        <message>
            <source>slope per min</source>
            <translation>pente par min</translation>
        </message>
        <message>
            <source>its standard error</source>
            <translation>son erreur-type</translation>
        </message>
        <message>
            <source>reaction</source>
            <translation>réaction</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>terminée</translation>
        </message>
        <message>
            <source>not ended</source>
            <translation>non terminée</translation>
        </message>
        <message>
            <source>Lines through series of readings</source>
            <translation>Droites par les suites de lectures</translation>
        </message>
        <message>
            <source>calibration line</source>
            <translation>droite d’étalonnage</translation>
        </message>
        <message>
            <source>a</source>
            <translation>a</translation>
        </message>
        <message>
            <source>b, per mg</source>
            <translation>b, par mg</translation>
        </message>
        <message>
            <source>residual</source>
            <translation>résidu</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Étalonnage</translation>
        </message>
        <message>
            <source>symbol</source>
            <translation>symbole</translation>
        </message>
        <message>
            <source>what it is</source>
            <translation>signification</translation>
        </message>
        <message>
            <source>source of uncertainty</source>
            <translation>source d’incertitude</translation>
        </message>
        <message>
            <source>standard uncertainty, %1</source>
            <translation>incertitude-type, %1</translation>
        </message>
        <message>
            <source>share of the variance, %</source>
            <translation>part de la variance, %</translation>
        </message>
        <message>
            <source>Calculation: %1, %2</source>
            <translation>Calcul : %1, %2</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>There is no value; the checks say why.</source>
            <translation>Il n’y a pas de valeur ; les vérifications disent pourquoi.</translation>
        </message>
        <message>
            <source>That is the result below, in %1, times %2.</source>
            <translation>C’est le résultat ci-dessous, en %1, multiplié par %2.</translation>
        </message>
        <message>
            <source>Signals</source>
            <translation>Signaux</translation>
        </message>
        <message>
            <source>Calculations</source>
            <translation>Calculs</translation>
        </message>
        <message>
            <source>Calculation: for every result of %1</source>
            <translation>Calcul : pour chaque résultat (%1)</translation>
        </message>
        <message>
            <source>from a run file, in no notebook</source>
            <translation>d’un fichier de série, dans aucun cahier</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>acceptée</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejetée</translation>
        </message>
        <message>
            <source>taken back since</source>
            <translation>retirée depuis</translation>
        </message>
        <message>
            <source>on the bench, not decided</source>
            <translation>à la paillasse, sans décision</translation>
        </message>
        <message numerus="yes">
            <source>%n samples</source>
            <translation>
                <numerusform>%n échantillon</numerusform>
                <numerusform>%n échantillons</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record</source>
            <translation>Dossier de la série</translation>
        </message>
        <message>
            <source>End of the run record %1</source>
            <translation>Fin du dossier de la série %1</translation>
        </message>
        <message>
            <source>run</source>
            <translation>série</translation>
        </message>
        <message>
            <source>state</source>
            <translation>état</translation>
        </message>
        <message>
            <source>revision</source>
            <translation>révision</translation>
        </message>
        <message>
            <source>method</source>
            <translation>méthode</translation>
        </message>
        <message>
            <source>started</source>
            <translation>commencée</translation>
        </message>
        <message>
            <source>laboratory</source>
            <translation>laboratoire</translation>
        </message>
        <message>
            <source>notebook</source>
            <translation>cahier</translation>
        </message>
        <message>
            <source>%1, run %2</source>
            <translation>%1, série %2</translation>
        </message>
        <message>
            <source>put on the bench</source>
            <translation>mise à la paillasse</translation>
        </message>
        <message>
            <source>evaluated by</source>
            <translation>évaluée par</translation>
        </message>
        <message>
            <source>Plateau %1</source>
            <translation>Plateau %1</translation>
        </message>
        <message>
            <source>%1 by %2</source>
            <translation>%1 par %2</translation>
        </message>
        <message>
            <source>this copy made</source>
            <translation>cette copie établie</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Décision</translation>
        </message>
        <message>
            <source>Nobody has decided on this run.</source>
            <translation>Personne n’a statué sur cette série.</translation>
        </message>
        <message>
            <source>decided</source>
            <translation>décidé</translation>
        </message>
        <message>
            <source>reason</source>
            <translation>motif</translation>
        </message>
        <message>
            <source>program</source>
            <translation>programme</translation>
        </message>
        <message>
            <source>taken back, on the bench again</source>
            <translation>retirée, de nouveau à la paillasse</translation>
        </message>
        <message>
            <source>Results</source>
            <translation>Résultats</translation>
        </message>
        <message>
            <source>result</source>
            <translation>résultat</translation>
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
            <translation>étendue</translation>
        </message>
        <message>
            <source>verdict</source>
            <translation>verdict</translation>
        </message>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2 : %3</translation>
        </message>
        <message>
            <source>%1, %2: %3. Specification: %4. Decision rule: %5.</source>
            <translation>%1, %2 : %3. Spécification : %4. Règle de décision : %5.</translation>
        </message>
        <message>
            <source>%1, %2, rests on this run and on %3.</source>
            <translation>%1, %2, repose sur cette série et sur %3.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> et </translation>
        </message>
        <message>
            <source>run %1 of the notebook ("%2", %3)</source>
            <translation>la série %1 du cahier (« %2 », %3)</translation>
        </message>
        <message>
            <source>the run "%1" (%2)</source>
            <translation>la série « %1 » (%2)</translation>
        </message>
        <message>
            <source>Checks</source>
            <translation>Vérifications</translation>
        </message>
        <message>
            <source>check</source>
            <translation>vérification</translation>
        </message>
        <message>
            <source>of</source>
            <translation>portant sur</translation>
        </message>
        <message>
            <source>what was found</source>
            <translation>ce qui a été trouvé</translation>
        </message>
        <message>
            <source>passed</source>
            <translation>réussite</translation>
        </message>
        <message>
            <source>failed</source>
            <translation>échec</translation>
        </message>
        <message>
            <source>Run that results are taken from: %1</source>
            <translation>Série d’où sont tirés des résultats : %1</translation>
        </message>
        <message>
            <source>Run %1 of the same notebook, %2.</source>
            <translation>Série %1 du même cahier, %2.</translation>
        </message>
        <message>
            <source>Run %1.</source>
            <translation>Série %1.</translation>
        </message>
        <message>
            <source>What plateau verify confirms</source>
            <translation>Ce que plateau verify confirme</translation>
        </message>
        <message>
            <source>SHA-256 of the run and its method as printed here: %1</source>
            <translation>SHA-256 de la série et de sa méthode telles qu’imprimées ici : %1</translation>
        </message>
        <message>
            <source>The run stands in no notebook: the hash is that of its file's content, written as plateau-run/1 with its method.</source>
            <translation>La série ne figure dans aucun cahier : l’empreinte est celle du contenu de son fichier, écrit comme plateau-run/1 avec sa méthode.</translation>
        </message>
        <message>
            <source>Reviewed on %1: %2%3</source>
            <translation>Revu le %1 : %2%3</translation>
        </message>
        <message>
            <source> (the same)</source>
            <translation> (le même)</translation>
        </message>
        <message>
            <source> (another: it was changed since)</source>
            <translation> (un autre : modifié depuis)</translation>
        </message>
        <message numerus="yes">
            <source>Audit: %n entries, head %1</source>
            <translation>
                <numerusform>Piste d’audit : %n entrée, tête %1</numerusform>
                <numerusform>Piste d’audit : %n entrées, tête %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Run record %1</source>
            <translation>Dossier de la série %1</translation>
        </message>
        <message>
            <source>run record %1, revision %2</source>
            <translation>dossier de la série %1, révision %2</translation>
        </message>
        <message>
            <source>COPY</source>
            <translation>COPIE</translation>
        </message>
        <message>
            <source>Run record %1, revision %2, made %3 with Plateau %4; content %5</source>
            <translation>Dossier de la série %1, révision %2, établi %3 avec Plateau %4 ; contenu %5</translation>
        </message>
        <message>
            <source>Result: %1.</source>
            <translation>Résultat : %1.</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>non rapporté</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>contrôle %1</translation>
        </message>
        <message>
            <source>Run record %1</source>
            <comment>a file name</comment>
            <translation>Dossier de la série %1</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunStates</name>
        <message>
            <source>accepted</source>
            <translation>acceptée</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejetée</translation>
        </message>
        <message>
            <source>on the bench</source>
            <translation>à la paillasse</translation>
        </message>
        <message>
            <source>%1, and %2 more</source>
            <translation>%1 et %2 de plus</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::RunsModel</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>Started</source>
            <translation>Commencée</translation>
        </message>
        <message>
            <source>Title</source>
            <translation>Intitulé</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Méthode</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Échantillons</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lectures</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>Decided by</source>
            <translation>Décidée par</translation>
        </message>
        <message>
            <source>Checks that failed</source>
            <translation>Vérifications en échec</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoices</name>
        <message>
            <source>no result</source>
            <translation>pas de résultat</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>1 sample</source>
            <translation>1 échantillon</translation>
        </message>
        <message>
            <source>%1 samples</source>
            <translation>%1 échantillons</translation>
        </message>
        <message>
            <source>repeated in this rack as %1</source>
            <translation>répété dans ce portoir comme %1</translation>
        </message>
        <message>
            <source>undecided</source>
            <translation>non décidé</translation>
        </message>
        <message>
            <source>as the run</source>
            <translation>comme la série</translation>
        </message>
        <message>
            <source>accepted</source>
            <translation>accepté</translation>
        </message>
        <message>
            <source>rejected</source>
            <translation>rejeté</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>read it, then decide</source>
            <translation>à lire, puis statuer</translation>
        </message>
        <message>
            <source>look into its checks, then decide</source>
            <translation>examiner ses vérifications, puis statuer</translation>
        </message>
        <message>
            <source>not reported</source>
            <translation>non rapporté</translation>
        </message>
        <message>
            <source>reported</source>
            <translation>rapporté</translation>
        </message>
        <message>
            <source>repeats %1 (%2)</source>
            <translation>répète %1 (%2)</translation>
        </message>
        <message>
            <source>rejects %1</source>
            <translation>rejette %1</translation>
        </message>
        <message>
            <source>There is no sample in this run.</source>
            <translation>Il n’y a pas d’échantillon dans cette série.</translation>
        </message>
        <message>
            <source>back to the samples that wait</source>
            <translation>de retour parmi les échantillons en attente</translation>
        </message>
        <message>
            <source>back to the samples that wait: %1</source>
            <translation>de retour parmi les échantillons en attente : %1</translation>
        </message>
        <message>
            <source>reports %1</source>
            <translation>rapporte %1</translation>
        </message>
        <message>
            <source>leaves %1 undecided</source>
            <translation>laisse %1 en suspens</translation>
        </message>
        <message>
            <source>If accepted: %1.</source>
            <translation>Si la série est acceptée : %1.</translation>
        </message>
        <message>
            <source>If rejected: %1.</source>
            <translation>Si la série est rejetée : %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesModel</name>
        <message>
            <source>as advised</source>
            <translation>comme conseillé</translation>
        </message>
        <message>
            <source>say why</source>
            <translation>indiquer pourquoi</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Verdict</translation>
        </message>
        <message>
            <source>Decision</source>
            <translation>Décision</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
        <message>
            <source>Repeat how</source>
            <translation>Mode de répétition</translation>
        </message>
        <message>
            <source>If the run is accepted</source>
            <translation>Si la série est acceptée</translation>
        </message>
        <message>
            <source>as in this run</source>
            <translation>comme dans cette série</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleChoicesTable</name>
        <message>
            <source>20, 5 to 100, or 0.5 mL</source>
            <translation>20, 5 à 100, ou 0,5 mL</translation>
        </message>
        <message>
            <source>Decisions of single samples</source>
            <translation>Décisions sur chaque échantillon</translation>
        </message>
        <message>
            <source>A accepts, R rejects, W repeats the chosen samples, Delete leaves them to the run; Enter edits, Ctrl+A chooses all. For a repeat, type another dilution (20), its steps (5 to 100) or another sample volume (0.5 mL).</source>
            <translation>A accepte, R rejette, W répète les échantillons choisis, Suppr les laisse à la série ; Entrée modifie, Ctrl+A choisit tout. Pour une répétition, tapez une autre dilution (20), ses étapes (5 à 100) ou un autre volume d’échantillon (0,5 mL).</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSection</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Ce qui est prévu pour chaque échantillon</translation>
        </message>
        <message>
            <source>Take from the &amp;queue…</source>
            <translation>&amp;Prendre dans la file…</translation>
        </message>
        <message>
            <source>P&amp;ropose dilutions</source>
            <translation>Propos&amp;er des dilutions</translation>
        </message>
        <message>
            <source>Add a d&amp;ilution step</source>
            <translation>A&amp;jouter une étape de dilution</translation>
        </message>
        <message>
            <source>Ta&amp;ke the last step away</source>
            <translation>Enlever la derni&amp;ère étape</translation>
        </message>
        <message>
            <source>Type what is expected, Enter goes down, and let the dilutions be proposed, or type them. Left empty: undiluted, and the method's own volume in the tube.</source>
            <translation>Tapez la teneur attendue (Entrée descend), puis faites proposer les dilutions ou tapez-les. Laissé vide : non dilué, et le volume propre à la méthode dans le tube.</translation>
        </message>
        <message>
            <source>First type what is expected of at least one sample, or a product that was run before: the dilution follows from it.</source>
            <translation>Tapez d’abord ce qui est attendu d’au moins un échantillon, ou un produit déjà passé : la dilution en découle.</translation>
        </message>
        <message>
            <source>Dilutions proposed: %1, to be run undiluted: %2. They can be overwritten.</source>
            <translation>Dilutions proposées : %1, à passer non dilués : %2. Elles peuvent être remplacées à la frappe.</translation>
        </message>
        <message>
            <source>%1 Expected from the last results of the same product: %2.</source>
            <translation>%1 Attendu d’après les derniers résultats du même produit : %2.</translation>
        </message>
        <message>
            <source>%1 Volume of sample in the tube set as well: %2.</source>
            <translation>%1 Le volume d’échantillon dans le tube est réglé aussi : %2.</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>%1 %2 mL</source>
            <translation>%1 %2 mL</translation>
        </message>
        <message>
            <source>%1 %2 mL, the method's</source>
            <translation>%1 %2 mL, celui de la méthode</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SampleSignals</name>
        <message>
            <source>%1 weak</source>
            <translation>%1 faible</translation>
        </message>
        <message>
            <source>%1 strong</source>
            <translation>%1 fort</translation>
        </message>
        <message>
            <source>%1: enter its mass and extract first.</source>
            <translation>%1 : indiquez d’abord sa masse et son extrait.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesModel</name>
        <message>
            <source>%1 (method)</source>
            <translation>%1 (méthode)</translation>
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
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>%1 expected (%2)</source>
            <translation>%1 attendu (%2)</translation>
        </message>
        <message>
            <source>Expected (%1)</source>
            <translation>Attendu (%1)</translation>
        </message>
        <message>
            <source>Mass (g)</source>
            <translation>Masse (g)</translation>
        </message>
        <message>
            <source>Extract (mL)</source>
            <translation>Extrait (mL)</translation>
        </message>
        <message>
            <source>In the tube (mL)</source>
            <translation>Dans le tube (mL)</translation>
        </message>
        <message>
            <source>%1 signal</source>
            <translation>Signal %1</translation>
        </message>
        <message>
            <source>Signal</source>
            <translation>Signal</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>Sample blank</source>
            <translation>Blanc échantillon</translation>
        </message>
        <message>
            <source>Spike of the standard (mL)</source>
            <translation>Ajout dosé de l’étalon (mL)</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrice</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Reçu le</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Provenance</translation>
        </message>
        <message>
            <source>%1: take (mL)</source>
            <translation>%1 : prélever (mL)</translation>
        </message>
        <message>
            <source>Take (mL)</source>
            <translation>Prélever (mL)</translation>
        </message>
        <message>
            <source>%1: make up to (mL)</source>
            <translation>%1 : compléter à (mL)</translation>
        </message>
        <message>
            <source>Make up to (mL)</source>
            <translation>Compléter à (mL)</translation>
        </message>
        <message>
            <source>Factor</source>
            <translation>Facteur</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesPage</name>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
        <message>
            <source>Samples that wait</source>
            <translation>Échantillons en attente</translation>
        </message>
        <message>
            <source>Fin&amp;d by sample, product, reason or sender</source>
            <translation>Trou&amp;ver échantillon, produit, motif ou expéditeur</translation>
        </message>
        <message>
            <source>No sample waits. Register what came in; a repeat that a run advises comes here by itself.</source>
            <translation>Aucun échantillon n’attend. Inscrivez ce qui est arrivé ; une répétition conseillée par une série arrive ici d’elle-même.</translation>
        </message>
        <message>
            <source>No sample contains all of these words. Remove one to find more.</source>
            <translation>Aucun échantillon ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>&amp;Register samples…</source>
            <translation>Inscrire des échan&amp;tillons…</translation>
        </message>
        <message>
            <source>&amp;Change…</source>
            <translation>Mo&amp;difier…</translation>
        </message>
        <message>
            <source>R&amp;eason not to run it</source>
            <translation>&amp;Motif pour ne pas le passer</translation>
        </message>
        <message>
            <source>&amp;Withdraw</source>
            <translation>R&amp;etirer</translation>
        </message>
        <message>
            <source>Wa&amp;ive the repeat</source>
            <translation>Reno&amp;ncer à la répétition</translation>
        </message>
        <message>
            <source>Choose what is meant: withdraw what was registered, or waive the repeat.</source>
            <translation>Choisissez ce qui est voulu : retirer ce qui était inscrit, ou renoncer à la répétition.</translation>
        </message>
        <message>
            <source>&amp;Complete what is known…</source>
            <translation>&amp;Compléter ce qui est connu…</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1 : %2.</translation>
        </message>
        <message>
            <source>Choose a sample to change it or to take it off the list.</source>
            <translation>Choisissez un échantillon pour le modifier ou l’ôter de la liste.</translation>
        </message>
        <message>
            <source>There are samples that are not stored yet: register or leave them first.</source>
            <translation>Il y a des échantillons pas encore enregistrés : inscrivez-les ou quittez-les d’abord.</translation>
        </message>
        <message>
            <source>Say in the line below why it will not be run; the notebook's history keeps it.</source>
            <translation>Indiquez dans la ligne ci-dessous pourquoi il ne sera pas passé ; l’historique du cahier le garde.</translation>
        </message>
        <message>
            <source>%1 was withdrawn.</source>
            <translation>%1 a été retiré.</translation>
        </message>
        <message>
            <source>The repeat of %1 that run %2 advises will not be made.</source>
            <translation>La répétition de %1 que conseille la série %2 ne sera pas faite.</translation>
        </message>
        <message>
            <source>The change of %1 is stored.</source>
            <translation>La modification de %1 est enregistrée.</translation>
        </message>
        <message>
            <source>Samples that are not registered yet</source>
            <translation>Échantillons pas encore inscrits</translation>
        </message>
        <message>
            <source>Registered: %1.</source>
            <translation>Inscrits : %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SamplesTable</name>
        <message>
            <source>What is planned for each sample</source>
            <translation>Ce qui est prévu pour chaque échantillon</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SchedulePicture</name>
        <message>
            <source>mix</source>
            <translation>mélanger</translation>
        </message>
        <message>
            <source>This rack</source>
            <translation>Ce portoir</translation>
        </message>
        <message>
            <source>Second rack</source>
            <translation>Second portoir</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SerialSource</name>
        <message>
            <source>serial port %1</source>
            <translation>port série %1</translation>
        </message>
        <message>
            <source>there is no such port; check cable and name</source>
            <translation>ce port n’existe pas ; vérifiez le câble et le nom</translation>
        </message>
        <message>
            <source>another program has it, or your account may not use serial ports (on Debian the group dialout may)</source>
            <translation>un autre programme l’occupe, ou votre compte ne peut pas employer les ports série (sous Debian, le groupe dialout le peut)</translation>
        </message>
        <message>
            <source>it can't be set to this speed and format</source>
            <translation>il ne peut pas être réglé à cette vitesse et à ce format</translation>
        </message>
        <message>
            <source>the cable or the adapter was unplugged, or the photometer is off</source>
            <translation>le câble ou l’adaptateur a été débranché, ou le photomètre est éteint</translation>
        </message>
        <message>
            <source>the adapter was unplugged</source>
            <translation>l’adaptateur a été débranché</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SettingsForm</name>
        <message>
            <source>Earlier runs</source>
            <translation>Séries antérieures</translation>
        </message>
        <message>
            <source>values</source>
            <translation>valeurs</translation>
        </message>
        <message>
            <source>Begin at the chosen point</source>
            <translation>Commencer au point choisi</translation>
        </message>
        <message>
            <source>Begin at the first run</source>
            <translation>Commencer à la première série</translation>
        </message>
        <message>
            <source>Fixed by the laboratory</source>
            <translation>Fixées par le laboratoire</translation>
        </message>
        <message>
            <source>Out of control if</source>
            <translation>Hors maîtrise si</translation>
        </message>
        <message>
            <source>Save these settings</source>
            <translation>Enregistrer ces réglages</translation>
        </message>
        <message>
            <source>&amp;Kind of chart</source>
            <translation>&amp;Type de carte</translation>
        </message>
        <message>
            <source>Limit&amp;s</source>
            <translation>Limit&amp;es</translation>
        </message>
        <message>
            <source>from earlier runs</source>
            <translation>tirées de séries antérieures</translation>
        </message>
        <message>
            <source>fixed by the laboratory</source>
            <translation>fixées par le laboratoire</translation>
        </message>
        <message>
            <source>Values of a subgroup</source>
            <translation>Valeurs d’un sous-groupe</translation>
        </message>
        <message>
            <source>Weight of the newest value</source>
            <translation>Poids de la valeur la plus récente</translation>
        </message>
        <message>
            <source>Width of the limits</source>
            <translation>Largeur des limites</translation>
        </message>
        <message>
            <source>Reference value k</source>
            <translation>Valeur de référence k</translation>
        </message>
        <message>
            <source>Decision limit h</source>
            <translation>Limite de décision h</translation>
        </message>
        <message>
            <source>computed</source>
            <translation>calculés</translation>
        </message>
        <message>
            <source>from the printed table (three decimals)</source>
            <translation>de la table imprimée (trois décimales)</translation>
        </message>
        <message>
            <source>Factors</source>
            <translation>Facteurs</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>from the moving range</source>
            <translation>d’après l’étendue mobile</translation>
        </message>
        <message>
            <source>from all values</source>
            <translation>d’après toutes les valeurs</translation>
        </message>
        <message>
            <source>Scatter</source>
            <translation>Dispersion</translation>
        </message>
        <message>
            <source>Centre</source>
            <translation>Ligne centrale</translation>
        </message>
        <message>
            <source>Standard deviation</source>
            <translation>Écart-type</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Source</translation>
        </message>
        <message>
            <source>As of</source>
            <translation>À la date du</translation>
        </message>
        <message>
            <source>What is out of control</source>
            <translation>Ce qui est hors maîtrise</translation>
        </message>
        <message>
            <source>From the first run of the series onwards.</source>
            <translation>À partir de la première série.</translation>
        </message>
        <message>
            <source>From run %1 onwards.</source>
            <translation>À partir de la série %1.</translation>
        </message>
        <message>
            <source>%1: a number is missing or cannot be read.</source>
            <translation>%1 : un nombre manque ou est illisible.</translation>
        </message>
        <message>
            <source>%1: a whole number is needed.</source>
            <translation>%1 : un nombre entier est demandé.</translation>
        </message>
        <message>
            <source>At least %1. With fewer than %2 the limits are provisional.</source>
            <translation>Au moins %1. Avec moins de %2, les limites sont provisoires.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfDraft</name>
        <message>
            <source>%1 is not a matrix; choose one of: %2.</source>
            <translation>%1 n’est pas une matrice ; choisissez parmi : %2.</translation>
        </message>
        <message>
            <source>%1 is not a form; a sample is liquid or solid.</source>
            <translation>%1 n’est pas une forme ; un échantillon est liquide ou solide.</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>%1 is still to come; give the time when it came in.</source>
            <translation>%1 est encore à venir ; donnez l’heure de réception.</translation>
        </message>
        <message>
            <source>%1 does not end in a number; write the measurand and the amount in g/L, for a solid in g/100 g, as in %2.</source>
            <translation>%1 ne se termine pas par un nombre ; écrivez le mesurande et la quantité en g/L, pour un solide en g/100 g, comme dans %2.</translation>
        </message>
        <message>
            <source>Say what %1 is expected of, as in %2.</source>
            <translation>Indiquez de quoi %1 est la valeur attendue, comme dans %2.</translation>
        </message>
        <message>
            <source>No method measures %1; there are: %2.</source>
            <translation>Aucune méthode ne mesure %1 ; il y a : %2.</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 et %2 de plus</translation>
        </message>
        <message>
            <source>glucose</source>
            <translation>glucose</translation>
        </message>
        <message>
            <source>%1 stands in line %2 already; each sample needs an id of its own.</source>
            <translation>%1 figure déjà à la ligne %2 ; chaque échantillon doit avoir son propre id.</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrice</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Forme</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Reçu le</translation>
        </message>
        <message>
            <source>Received from</source>
            <translation>Reçu de</translation>
        </message>
        <message>
            <source>Expected</source>
            <translation>Attendu</translation>
        </message>
        <message>
            <source>Solid</source>
            <translation>Solide</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Liquide</translation>
        </message>
        <message>
            <source>clear</source>
            <translation>limpide</translation>
        </message>
        <message>
            <source>protein</source>
            <translation>protéines</translation>
        </message>
        <message>
            <source>%1 is not a time; write the day as %2, with the time as %2 8:10, or the time alone for the last day.</source>
            <translation>%1 n’est pas une heure ; écrivez le jour comme %2, avec l’heure comme %2 8:10, ou l’heure seule pour le dernier jour.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::ShelfModel</name>
        <message>
            <source>Why it waits</source>
            <translation>Pourquoi il attend</translation>
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
            <translation>id échantillon</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>échantillons</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>received</source>
            <translation>reçu</translation>
        </message>
        <message>
            <source>received on</source>
            <translation>reçu le</translation>
        </message>
        <message>
            <source>date</source>
            <translation>date</translation>
        </message>
        <message>
            <source>from</source>
            <translation>de</translation>
        </message>
        <message>
            <source>sender</source>
            <translation>expéditeur</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>fournisseur</translation>
        </message>
        <message>
            <source>%1 expected</source>
            <translation>%1 attendu</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Lines pasted: %1</source>
            <translation>Lignes collées : %1</translation>
        </message>
        <message>
            <source>Not understood and left out: column %1.</source>
            <translation>Non comprise et écartée : colonne %1.</translation>
        </message>
        <message>
            <source>There is no text to paste. Copy the cells in the spreadsheet first.</source>
            <translation>Il n’y a pas de texte à coller. Copiez d’abord les cellules dans le tableur.</translation>
        </message>
        <message>
            <source>%1 lines are more than are taken at once; paste at most %2.</source>
            <translation>%1 lignes, c’est plus qu’il n’en est pris à la fois ; collez-en au plus %2.</translation>
        </message>
        <message>
            <source>%1. Columns by their heads: %2.</source>
            <translation>%1. Colonnes d’après les en-têtes : %2.</translation>
        </message>
        <message>
            <source>%1. Columns by their order: %2.</source>
            <translation>%1. Colonnes d’après leur ordre : %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SideBar</name>
        <message>
            <source>Racks and books</source>
            <translation>Portoirs et registres</translation>
        </message>
        <message>
            <source>&amp;Person at the bench</source>
            <translation>Pers&amp;onne à la paillasse</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>Nouvelle sé&amp;rie</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>Ouvrir un fichier de &amp;série…</translation>
        </message>
        <message>
            <source>%1 is a number and no name: was a reading meant?</source>
            <translation>%1 est un nombre, pas un nom : s’agissait-il d’une lecture ?</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignalSection</name>
        <message>
            <source>What each measurand takes from the readings</source>
            <translation>Ce que chaque mesurande prend aux lectures</translation>
        </message>
        <message>
            <source>Difference: to less from where the absorbance rises, from less to where it falls. Coupled indicator: an equilibrium before the reaction takes part of the coenzyme.</source>
            <translation>Différence : « à » moins « de » quand l’absorbance monte, « de » moins « à » quand elle baisse. Indicateur couplé : un équilibre avant la réaction prend une partie de la coenzyme.</translation>
        </message>
        <message>
            <source>Absorptivities of the chromophore</source>
            <translation>Absorptivités du chromophore</translation>
        </message>
        <message>
            <source>One row for each wavelength that may be read at.</source>
            <translation>Une ligne pour chaque longueur d’onde de lecture possible.</translation>
        </message>
        <message>
            <source>Chromophore</source>
            <translation>Chromophore</translation>
        </message>
        <message>
            <source>The reaction</source>
            <translation>La réaction</translation>
        </message>
        <message>
            <source>makes the chromophore (absorbance rises)</source>
            <translation>forme le chromophore (l’absorbance monte)</translation>
        </message>
        <message>
            <source>uses it up (absorbance falls)</source>
            <translation>le consomme (l’absorbance baisse)</translation>
        </message>
        <message>
            <source>Wavelength</source>
            <translation>Longueur d’onde</translation>
        </message>
        <message>
            <source>nm</source>
            <translation>nm</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Trajet optique</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Readings count</source>
            <translation>Les lectures comptent</translation>
        </message>
        <message>
            <source>as read</source>
            <translation>telles que lues</translation>
        </message>
        <message>
            <source>brought to the volume of the later reading</source>
            <translation>ramenées au volume de la lecture ultérieure</translation>
        </message>
        <message>
            <source>A reading taken as a series</source>
            <translation>Une lecture faite en suite</translation>
        </message>
        <message>
            <source>Where the absorbance keeps creeping: a straight line through the last readings of a series, read at the moment the starter was added. Leave both empty for none.</source>
            <translation>Quand l’absorbance continue de dériver : une droite par les dernières lectures d’une suite, lue au moment de l’ajout du réactif de démarrage. Laissez les deux vides s’il n’y en a pas.</translation>
        </message>
        <message>
            <source>Reading</source>
            <translation>Lecture</translation>
        </message>
        <message>
            <source>Readings on the line</source>
            <translation>Lectures sur la droite</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SignatureFields</name>
        <message>
            <source>unsigned: nobody is set up</source>
            <translation>non signé : aucune personne n’est définie</translation>
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
            <translation>% par heure</translation>
        </message>
        <message>
            <source>From the book</source>
            <translation>Du registre</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Concentration when made</source>
            <translation>Concentration à la préparation</translation>
        </message>
        <message>
            <source>u of the strength</source>
            <translation>u du titre</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>inconnu</translation>
        </message>
        <message>
            <source>Relative standard uncertainty (k = 1), from its recipe or its certificate. It counts where the run is calibrated by its standard.</source>
            <translation>Incertitude-type relative (k = 1), d’après sa recette ou son certificat. Elle compte quand la série est étalonnée par son étalon.</translation>
        </message>
        <message>
            <source>Loss of strength</source>
            <translation>Perte de titre</translation>
        </message>
        <message>
            <source>Prepared at</source>
            <translation>Préparé à</translation>
        </message>
        <message>
            <source>Used</source>
            <translation>Employé</translation>
        </message>
        <message>
            <source>Used at</source>
            <translation>Employé à</translation>
        </message>
        <message>
            <source>Tubes with it</source>
            <translation>Tubes qui le contiennent</translation>
        </message>
        <message>
            <source>the method's; several make a line: 0.05; 0.1; 0.2</source>
            <translation>celui de la méthode ; plusieurs font une droite : 0,05; 0,1; 0,2</translation>
        </message>
        <message>
            <source>Volumes in the tube (mL)</source>
            <translation>Volumes dans le tube (mL)</translation>
        </message>
        <message>
            <source>another one, keyed below</source>
            <translation>un autre, saisi ci-dessous</translation>
        </message>
        <message>
            <source>%1, %2, made %3</source>
            <translation>%1, %2, préparé %3</translation>
        </message>
        <message>
            <source>the book of standards, made %1</source>
            <translation>le registre des étalons, préparé %1</translation>
        </message>
        <message>
            <source>when it goes into its first tube</source>
            <translation>quand il entre dans son premier tube</translation>
        </message>
        <message>
            <source>Used when it goes into its first tube</source>
            <translation>Utilisé quand il entre dans son premier tube</translation>
        </message>
        <message>
            <source>Known value</source>
            <translation>Valeur connue</translation>
        </message>
        <message>
            <source>Taken from the book, where it is the only one in date; choose or key another if this is not it.</source>
            <translation>Repris du registre, où c’est le seul non périmé ; choisissez-en ou saisissez-en un autre si ce n’est pas celui-ci.</translation>
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
            <translation>%1 jours</translation>
        </message>
        <message>
            <source>thrown away</source>
            <translation>jeté</translation>
        </message>
        <message>
            <source>keeps its strength</source>
            <translation>garde son titre</translation>
        </message>
        <message>
            <source>past its time since %1</source>
            <translation>périmé depuis le %1</translation>
        </message>
        <message>
            <source>good for %1, until %2</source>
            <translation>bon pour %1, jusqu’au %2</translation>
        </message>
        <message>
            <source>%1 ± %2</source>
            <translation>%1 ± %2</translation>
        </message>
        <message>
            <source>The purity</source>
            <translation>La pureté</translation>
        </message>
        <message>
            <source>The uncertainty of the purity</source>
            <translation>L’incertitude de la pureté</translation>
        </message>
        <message>
            <source>The water content</source>
            <translation>La teneur en eau</translation>
        </message>
        <message>
            <source>The uncertainty of the water</source>
            <translation>L’incertitude de l’eau</translation>
        </message>
        <message>
            <source>The molar mass</source>
            <translation>La masse molaire</translation>
        </message>
        <message>
            <source>The density</source>
            <translation>La masse volumique</translation>
        </message>
        <message>
            <source>The last good day</source>
            <translation>Le dernier jour de validité</translation>
        </message>
        <message>
            <source>What it is for</source>
            <translation>Sa destination</translation>
        </message>
        <message>
            <source>Analyte molecules in one</source>
            <translation>Molécules d’analyte par molécule</translation>
        </message>
        <message>
            <source>Weighed</source>
            <translation>Pesé</translation>
        </message>
        <message>
            <source>The uncertainty of a weighing</source>
            <translation>L’incertitude d’une pesée</translation>
        </message>
        <message>
            <source>The flask's volume</source>
            <translation>Le volume de la fiole</translation>
        </message>
        <message>
            <source>The uncertainty of the flask</source>
            <translation>L’incertitude de la fiole</translation>
        </message>
        <message>
            <source>The time it was made</source>
            <translation>L’heure de préparation</translation>
        </message>
        <message>
            <source>The loss of strength</source>
            <translation>La perte de titre</translation>
        </message>
        <message>
            <source>The rule for its use</source>
            <translation>La règle d’emploi</translation>
        </message>
        <message>
            <source>That is your own rule, %1 after it was made.</source>
            <translation>C’est votre propre règle, %1 après la préparation.</translation>
        </message>
        <message>
            <source>Then its loss leaves %1 of its strength, the least that may be used.</source>
            <translation>La perte laisse alors %1 du titre, le minimum utilisable.</translation>
        </message>
        <message>
            <source>That is %1 after it was made, the oldest that may be used.</source>
            <translation>C’est %1 après la préparation, l’âge maximal utilisable.</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, jusqu’au %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsModel</name>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Strength now</source>
            <translation>Titre actuel</translation>
        </message>
        <message>
            <source>State</source>
            <translation>État</translation>
        </message>
        <message>
            <source>When made (k = 2)</source>
            <translation>À la préparation (k = 2)</translation>
        </message>
        <message>
            <source>Made at</source>
            <translation>Préparé le</translation>
        </message>
        <message>
            <source>Made of</source>
            <translation>Préparé à partir de</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Par</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::StandardsPage</name>
        <message>
            <source>Standards</source>
            <translation>Étalons</translation>
        </message>
        <message>
            <source>Standards that were made</source>
            <translation>Étalons préparés</translation>
        </message>
        <message>
            <source>Fin&amp;d by name, substance or state</source>
            <translation>&amp;Trouver nom, substance ou état</translation>
        </message>
        <message>
            <source>No standard is in the book yet. Prepare one: its strength then counts down here, and a new run takes it with its uncertainty.</source>
            <translation>Aucun étalon n’est encore dans le registre. Préparez-en un : son titre décroît alors ici, et une nouvelle série le prend avec son incertitude.</translation>
        </message>
        <message>
            <source>No standard contains all of these words. Remove one to find more.</source>
            <translation>Aucun étalon ne contient tous ces mots. Enlevez-en un pour en trouver davantage.</translation>
        </message>
        <message>
            <source>P&amp;repare a standard…</source>
            <translation>&amp;Préparer un étalon…</translation>
        </message>
        <message>
            <source>A standard or a substance, not stored yet</source>
            <translation>Un étalon ou une substance, pas encore enregistrés</translation>
        </message>
        <message>
            <source>In the book: %1.</source>
            <translation>Dans le registre : %1.</translation>
        </message>
        <message>
            <source>In the book. Print its label; a new run takes it by its name.</source>
            <translation>Dans le registre. Imprimez son étiquette ; une nouvelle série le prend par son nom.</translation>
        </message>
        <message>
            <source>First say who is at the bench: type your name on the left and press Enter, then do it again.</source>
            <translation>Indiquez d’abord qui est à la paillasse : tapez votre nom à gauche et appuyez sur Entrée, puis recommencez.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubjectForm</name>
        <message>
            <source>what was re&amp;jected too</source>
            <translation>aussi ce qui a été re&amp;jeté</translation>
        </message>
        <message>
            <source>Ch&amp;art of</source>
            <translation>Carte &amp;de</translation>
        </message>
        <message>
            <source>b&amp;y</source>
            <translation>p&amp;ar</translation>
        </message>
        <message>
            <source>&amp;measured</source>
            <translation>mesur&amp;é</translation>
        </message>
        <message>
            <source>&amp;in</source>
            <translation>e&amp;n</translation>
        </message>
        <message>
            <source>Only lo&amp;t</source>
            <translation>Seule&amp;ment le lot</translation>
        </message>
        <message>
            <source>by p&amp;erson</source>
            <translation>&amp;par personne</translation>
        </message>
        <message>
            <source>on photometer</source>
            <translation>sur photomètre</translation>
        </message>
        <message>
            <source>f&amp;rom</source>
            <translation>d&amp;u</translation>
        </message>
        <message>
            <source>to</source>
            <translation>au</translation>
        </message>
        <message>
            <source>all of them</source>
            <translation>tous</translation>
        </message>
        <message>
            <source>any</source>
            <translation>tous</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>anybody</source>
            <translation>toute personne</translation>
        </message>
        <message>
            <source>%1 (all standards of it)</source>
            <translation>%1 (tous ses étalons)</translation>
        </message>
        <message>
            <source>all of them, without limits</source>
            <translation>tous, sans limites</translation>
        </message>
        <message>
            <source>%1 is not a date yet: write it as %2.</source>
            <translation>%1 n’est pas encore un jour : écrivez-le comme %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::SubstanceForm</name>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>S&amp;upplier</source>
            <translation>Fo&amp;urnisseur</translation>
        </message>
        <message>
            <source>&amp;Lot</source>
            <translation>Lo&amp;t</translation>
        </message>
        <message>
            <source>&amp;Certificate</source>
            <translation>&amp;Certificat</translation>
        </message>
        <message>
            <source>Pur&amp;ity (%)</source>
            <translation>&amp;Pureté (%)</translation>
        </message>
        <message>
            <source>&amp;Water beyond the formula (%)</source>
            <translation>&amp;Eau au-delà de la formule (%)</translation>
        </message>
        <message>
            <source>&amp;Molar mass, crystal water included (g/mol)</source>
            <translation>&amp;Masse molaire, eau de cristallisation comprise (g/mol)</translation>
        </message>
        <message>
            <source>Densit&amp;y of a liquid (g/mL)</source>
            <translation>Masse &amp;volumique d’un liquide (g/mL)</translation>
        </message>
        <message>
            <source>Last good &amp;day</source>
            <translation>Dernier &amp;jour de validité</translation>
        </message>
        <message>
            <source>&amp;Reason for the change</source>
            <translation>Mot&amp;if de la modification</translation>
        </message>
        <message>
            <source>Of the substance without the water below.</source>
            <translation>De la substance sans l’eau ci-dessous.</translation>
        </message>
        <message>
            <source>&amp;Store it in the book</source>
            <translation>Enre&amp;gistrer dans le registre</translation>
        </message>
        <message>
            <source>Add a substance</source>
            <translation>Ajouter une substance</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>Modifier %1</translation>
        </message>
        <message>
            <source>Say why it is changed; the book keeps it.</source>
            <translation>Indiquez pourquoi elle est modifiée ; le registre le garde.</translation>
        </message>
        <message>
            <source>Purity, half-width ± (%)</source>
            <translation>Pureté, demi-largeur ± (%)</translation>
        </message>
        <message>
            <source>Water, half-width ± (%)</source>
            <translation>Eau, demi-largeur ± (%)</translation>
        </message>
        <message>
            <source>Half of the width in which the value lies for certain, as a certificate states it; taken as a rectangular distribution.</source>
            <translation>La moitié de la largeur dans laquelle la valeur se trouve à coup sûr, telle qu’un certificat la donne ; prise comme loi rectangulaire.</translation>
        </message>
        <message>
            <source>Back  Esc</source>
            <translation>Retour  Échap</translation>
        </message>
        <message>
            <source>As %1, or a month as %2. Empty where none is stated.</source>
            <translation>Comme %1, ou un mois comme %2. Vide si rien n’est indiqué.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TakingsModel</name>
        <message>
            <source>Begun</source>
            <translation>Commencée</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Série</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volume</translation>
        </message>
        <message>
            <source>Tubes</source>
            <translation>Tubes</translation>
        </message>
        <message>
            <source>By way of</source>
            <translation>Par le flacon</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TextSection</name>
        <message>
            <source>Preparation of the sample, by what it is like</source>
            <translation>Préparation de l’échantillon, selon sa nature</translation>
        </message>
        <message>
            <source>Cautions, one per line</source>
            <translation>Précautions, une par ligne</translation>
        </message>
        <message>
            <source>Principle</source>
            <translation>Principe</translation>
        </message>
        <message>
            <source>Reactions, one per line</source>
            <translation>Réactions, une par ligne</translation>
        </message>
        <message>
            <source>What interferes, one per line</source>
            <translation>Ce qui interfère, un par ligne</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeChart</name>
        <message>
            <source>There is nothing to draw yet.</source>
            <translation>Il n’y a encore rien à tracer.</translation>
        </message>
        <message>
            <source>Row %1 of %2, %3</source>
            <translation>Rang %1 sur %2, %3</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>add</source>
            <translation>ajouter</translation>
        </message>
        <message>
            <source>wait</source>
            <translation>attendre</translation>
        </message>
        <message>
            <source>read</source>
            <translation>lire</translation>
        </message>
        <message>
            <source>time for it</source>
            <translation>temps prévu</translation>
        </message>
        <message>
            <source>due</source>
            <translation>à faire</translation>
        </message>
        <message>
            <source>late</source>
            <translation>en retard</translation>
        </message>
        <message>
            <source>now</source>
            <translation>maintenant</translation>
        </message>
        <message>
            <source>free %1</source>
            <translation>libre %1</translation>
        </message>
        <message>
            <source>hands</source>
            <translation>mains</translation>
        </message>
        <message>
            <source>addition</source>
            <translation>ajout</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>next step</source>
            <translation>étape suivante</translation>
        </message>
        <message>
            <source>%1 late since %2</source>
            <translation>%1 en retard depuis %2</translation>
        </message>
        <message>
            <source>%1 due now</source>
            <translation>%1 à faire maintenant</translation>
        </message>
        <message>
            <source>%1 due now, until %2</source>
            <translation>%1 à faire maintenant, jusqu’à %2</translation>
        </message>
        <message>
            <source>%1 due from %2</source>
            <translation>%1 à faire à partir de %2</translation>
        </message>
        <message>
            <source>%1 due %2 to %3</source>
            <translation>%1 à faire de %2 à %3</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>Hands free from %1 to %2</source>
            <translation>Mains libres de %1 à %2</translation>
        </message>
        <message>
            <source>As of %1</source>
            <translation>État à %1</translation>
        </message>
        <message>
            <source>Now %1</source>
            <translation>Maintenant %1</translation>
        </message>
        <message>
            <source>%1 read early by %2</source>
            <translation>%1 lu trop tôt de %2</translation>
        </message>
        <message>
            <source>%1 read late by %2</source>
            <translation>%1 lu trop tard de %2</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>inutilisable</translation>
        </message>
        <message>
            <source>%1 late by %2</source>
            <translation>%1 en retard de %2</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
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
            <translation>Juger un second portoir &amp;dans ses délais</translation>
        </message>
        <message>
            <source>Time at the bench</source>
            <translation>Temps à la paillasse</translation>
        </message>
        <message>
            <source>Tubes against time</source>
            <translation>Tubes selon le temps</translation>
        </message>
        <message>
            <source>Max. time at the bench</source>
            <translation>Temps max. à la paillasse</translation>
        </message>
        <message>
            <source>Its method</source>
            <translation>Sa méthode</translation>
        </message>
        <message>
            <source>Its tubes</source>
            <translation>Ses tubes</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TimeWords</name>
        <message>
            <source>in %1</source>
            <translation>dans %1</translation>
        </message>
        <message>
            <source>now</source>
            <translation>maintenant</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>depuis %1</translation>
        </message>
        <message>
            <source>now, %1 left</source>
            <translation>maintenant, reste %1</translation>
        </message>
        <message>
            <source>late by %1</source>
            <translation>en retard de %1</translation>
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
            <translation>%1 en arrière</translation>
        </message>
        <message>
            <source>%1 forward</source>
            <translation>%1 en avant</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayLines</name>
        <message>
            <source>%1: %2 of %3 read.</source>
            <translation>%1 : %2 sur %3 lus.</translation>
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
            <translation>révision %1</translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) to repeat</source>
            <translation>
                <numerusform>%n échantillon à répéter</numerusform>
                <numerusform>%n échantillons à répéter</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sample(s) rejected</source>
            <translation>
                <numerusform>%n échantillon rejeté</numerusform>
                <numerusform>%n échantillons rejetés</numerusform>
            </translation>
        </message>
        <message>
            <source>unsigned</source>
            <translation>non signée</translation>
        </message>
        <message>
            <source>Run %1, %2: accepted by %3, %4</source>
            <translation>Série %1, %2 : acceptée par %3, %4</translation>
        </message>
        <message>
            <source>Run %1, %2: rejected by %3, %4</source>
            <translation>Série %1, %2 : rejetée par %3, %4</translation>
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
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1: %2 now, %3</source>
            <translation>%1 : maintenant %2, %3</translation>
        </message>
        <message>
            <source>%1, lot %2: %3</source>
            <translation>%1, lot %2 : %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TodayPage</name>
        <message>
            <source>On the bench</source>
            <translation>À la paillasse</translation>
        </message>
        <message>
            <source>Nothing is on the bench. Start with New run, or open a run file.</source>
            <translation>Rien n’est à la paillasse. Commencez avec Nouvelle série, ou ouvrez un fichier de série.</translation>
        </message>
        <message>
            <source>Waiting to be run</source>
            <translation>En attente de passage</translation>
        </message>
        <message>
            <source>No sample waits. Samples are registered under Samples; repeats that decided runs advise come by themselves.</source>
            <translation>Aucun échantillon n’attend. Les échantillons sont inscrits sous Échantillons ; les répétitions conseillées par les séries décidées arrivent d’elles-mêmes.</translation>
        </message>
        <message>
            <source>Standards that can be used</source>
            <translation>Étalons utilisables</translation>
        </message>
        <message>
            <source>No standard can be used. Fresh ones are entered under Standards.</source>
            <translation>Aucun étalon n’est utilisable. Les étalons neufs se notent sous Étalons.</translation>
        </message>
        <message>
            <source>Falling due</source>
            <translation>Échéances proches</translation>
        </message>
        <message>
            <source>No check of equipment falls due, and no lot runs out, in the next days.</source>
            <translation>Aucune vérification d’équipement n’arrive à échéance, et aucun lot à son terme, dans les prochains jours.</translation>
        </message>
        <message>
            <source>Decided last</source>
            <translation>Dernières décisions</translation>
        </message>
        <message>
            <source>No run has been decided on yet. Decided runs are kept in the Notebook.</source>
            <translation>Aucune décision n’a encore été prise sur une série. Les séries décidées sont gardées dans le Cahier.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailModel</name>
        <message>
            <source>When</source>
            <translation>Quand</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Qui</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Ce qui a été fait</translation>
        </message>
        <message>
            <source>Run</source>
            <translation>Série</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Sur</translation>
        </message>
        <message>
            <source>Before</source>
            <translation>Avant</translation>
        </message>
        <message>
            <source>After</source>
            <translation>Après</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailView</name>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2 : %3</translation>
        </message>
        <message>
            <source>before: %1</source>
            <translation>avant : %1</translation>
        </message>
        <message>
            <source>after: %1</source>
            <translation>après : %1</translation>
        </message>
        <message>
            <source>reason: %1</source>
            <translation>motif : %1</translation>
        </message>
        <message>
            <source>Entry %1, account %2 on %3, program %4</source>
            <translation>Entrée %1, compte %2 sur %3, programme %4</translation>
        </message>
        <message>
            <source>Nothing on record matches the search: empty a field above.</source>
            <translation>Rien de consigné ne correspond à ce qui est cherché : videz un champ ci-dessus.</translation>
        </message>
        <message>
            <source>Acts, the newest first</source>
            <translation>Actes, du plus récent au plus ancien</translation>
        </message>
        <message>
            <source>Old&amp;er ones too</source>
            <translation>Afficher aussi les &amp;plus anciens</translation>
        </message>
        <message>
            <source>To its ra&amp;ck or record</source>
            <translation>Vers son por&amp;toir ou dossier</translation>
        </message>
        <message>
            <source>The chosen act in full</source>
            <translation>L’acte choisi en entier</translation>
        </message>
        <message>
            <source>Fin&amp;d</source>
            <translation>Trou&amp;ver</translation>
        </message>
        <message>
            <source>&amp;Who</source>
            <translation>Q&amp;ui</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <translation>&amp;Quoi</translation>
        </message>
        <message>
            <source>Fro&amp;m</source>
            <translation>&amp;Du</translation>
        </message>
        <message>
            <source>unti&amp;l</source>
            <translation>&amp;au</translation>
        </message>
        <message>
            <source>&amp;Run number</source>
            <translation>&amp;Numéro de la série</translation>
        </message>
        <message>
            <source>everybody</source>
            <translation>tout le monde</translation>
        </message>
        <message>
            <source>everything</source>
            <translation>tout</translation>
        </message>
        <message>
            <source>"%1" is not a run number; the notebook counts runs from 1.</source>
            <translation>« %1 » n’est pas le numéro d’une série ; le cahier les compte à partir de 1.</translation>
        </message>
        <message>
            <source>"%1" is not a day; write it as %2, or leave the field empty.</source>
            <translation>« %1 » n’est pas un jour ; écrivez-le comme %2, ou laissez le champ vide.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TrailWords</name>
        <message>
            <source>notebook made</source>
            <translation>cahier créé</translation>
        </message>
        <message>
            <source>file brought up to a newer program</source>
            <translation>fichier porté à un programme plus récent</translation>
        </message>
        <message>
            <source>run put on the bench</source>
            <translation>série mise à la paillasse</translation>
        </message>
        <message>
            <source>run put back on the bench</source>
            <translation>série remise à la paillasse</translation>
        </message>
        <message>
            <source>reading stored</source>
            <translation>lecture enregistrée</translation>
        </message>
        <message>
            <source>read once more</source>
            <translation>lu une fois de plus</translation>
        </message>
        <message>
            <source>additions ticked</source>
            <translation>ajouts cochés</translation>
        </message>
        <message>
            <source>ticks taken back</source>
            <translation>coches annulées</translation>
        </message>
        <message>
            <source>tube counts again</source>
            <translation>le tube compte à nouveau</translation>
        </message>
        <message>
            <source>computer's clock was set</source>
            <translation>horloge de l’ordinateur réglée</translation>
        </message>
        <message>
            <source>done without a repeat</source>
            <translation>répétition abandonnée</translation>
        </message>
        <message>
            <source>laboratory's settings saved</source>
            <translation>réglages du laboratoire enregistrés</translation>
        </message>
        <message>
            <source>limits saved</source>
            <translation>limites enregistrées</translation>
        </message>
        <message>
            <source>wrong passphrase</source>
            <translation>phrase de passe fausse</translation>
        </message>
        <message>
            <source>reported result chosen</source>
            <translation>résultat rapporté choisi</translation>
        </message>
        <message>
            <source>settings of a control chart saved</source>
            <translation>réglages d’une carte de contrôle enregistrés</translation>
        </message>
        <message>
            <source>value left out of control charts</source>
            <translation>valeur écartée des cartes de contrôle</translation>
        </message>
        <message>
            <source>value counts in control charts again</source>
            <translation>valeur comptant à nouveau dans les cartes de contrôle</translation>
        </message>
        <message>
            <source>reading corrected</source>
            <translation>lecture corrigée</translation>
        </message>
        <message>
            <source>tube spoilt</source>
            <translation>tube inutilisable</translation>
        </message>
        <message>
            <source>tubes added</source>
            <translation>tubes ajoutés</translation>
        </message>
        <message>
            <source>run accepted</source>
            <translation>série acceptée</translation>
        </message>
        <message>
            <source>run rejected</source>
            <translation>série rejetée</translation>
        </message>
        <message>
            <source>sample registered</source>
            <translation>échantillon inscrit</translation>
        </message>
        <message>
            <source>sample changed</source>
            <translation>échantillon modifié</translation>
        </message>
        <message>
            <source>sample withdrawn</source>
            <translation>échantillon retiré</translation>
        </message>
        <message>
            <source>lot received</source>
            <translation>lot reçu</translation>
        </message>
        <message>
            <source>lot put in its place</source>
            <translation>lot rangé à sa place</translation>
        </message>
        <message>
            <source>lot opened</source>
            <translation>lot ouvert</translation>
        </message>
        <message>
            <source>lot dissolved</source>
            <translation>lot dissous</translation>
        </message>
        <message>
            <source>lot divided into aliquots</source>
            <translation>lot réparti en aliquotes</translation>
        </message>
        <message>
            <source>taken from a lot</source>
            <translation>prélevé sur un lot</translation>
        </message>
        <message>
            <source>note on a lot</source>
            <translation>note sur un lot</translation>
        </message>
        <message>
            <source>amount of a lot corrected</source>
            <translation>quantité d’un lot corrigée</translation>
        </message>
        <message>
            <source>label of a lot changed</source>
            <translation>étiquette d’un lot modifiée</translation>
        </message>
        <message>
            <source>lot thrown away</source>
            <translation>lot jeté</translation>
        </message>
        <message>
            <source>substance added</source>
            <translation>substance ajoutée</translation>
        </message>
        <message>
            <source>substance changed</source>
            <translation>substance modifiée</translation>
        </message>
        <message>
            <source>standard prepared</source>
            <translation>étalon préparé</translation>
        </message>
        <message>
            <source>standard thrown away</source>
            <translation>étalon jeté</translation>
        </message>
        <message>
            <source>equipment added</source>
            <translation>équipement ajouté</translation>
        </message>
        <message>
            <source>equipment changed</source>
            <translation>équipement modifié</translation>
        </message>
        <message>
            <source>equipment checked</source>
            <translation>équipement vérifié</translation>
        </message>
        <message>
            <source>check of equipment taken back</source>
            <translation>vérification d’équipement annulée</translation>
        </message>
        <message>
            <source>method saved</source>
            <translation>méthode enregistrée</translation>
        </message>
        <message>
            <source>method imported</source>
            <translation>méthode importée</translation>
        </message>
        <message>
            <source>method out of use</source>
            <translation>méthode désactivée</translation>
        </message>
        <message>
            <source>method in use again</source>
            <translation>méthode réactivée</translation>
        </message>
        <message>
            <source>person added</source>
            <translation>personne ajoutée</translation>
        </message>
        <message>
            <source>person changed</source>
            <translation>personne modifiée</translation>
        </message>
        <message>
            <source>person out of use</source>
            <translation>personne désactivée</translation>
        </message>
        <message>
            <source>person in use again</source>
            <translation>personne réactivée</translation>
        </message>
        <message>
            <source>passphrase changed</source>
            <translation>phrase de passe modifiée</translation>
        </message>
        <message>
            <source>opening of a lot corrected</source>
            <translation>ouverture d’un lot corrigée</translation>
        </message>
        <message>
            <source>form %1 of the file</source>
            <translation>schéma %1 du fichier</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TubeDrawing</name>
        <message>
            <source>The tube</source>
            <translation>Le tube</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::TubePicture</name>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>diluent</source>
            <translation>diluant</translation>
        </message>
        <message>
            <source>starter</source>
            <translation>réactif de démarrage</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>agiter</translation>
        </message>
        <message>
            <source>Nothing is in the tube yet.</source>
            <translation>Il n’y a encore rien dans le tube.</translation>
        </message>
        <message>
            <source>From the bottom: %1.</source>
            <translation>À partir du fond : %1.</translation>
        </message>
        <message>
            <source>Together %1.</source>
            <translation>Au total %1.</translation>
        </message>
        <message>
            <source>%1 is read at %2.</source>
            <translation>%1 est lu à %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UncertaintyForm</name>
        <message>
            <source>Standard uncertainties (k = 1)</source>
            <translation>Incertitudes-types (k = 1)</translation>
        </message>
        <message>
            <source>Absorbance, each reading</source>
            <translation>Absorbance, chaque lecture</translation>
        </message>
        <message>
            <source>Absorptivity</source>
            <translation>Absorptivité</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>Path length</source>
            <translation>Trajet optique</translation>
        </message>
        <message>
            <source>Total volume</source>
            <translation>Volume total</translation>
        </message>
        <message>
            <source>Sample volume</source>
            <translation>Volume d’échantillon</translation>
        </message>
        <message>
            <source>Each dilution step</source>
            <translation>Chaque étape de dilution</translation>
        </message>
        <message>
            <source>Extract of a solid</source>
            <translation>Extrait d’un solide</translation>
        </message>
        <message>
            <source>Below each number stands whose it is. Type over one to take another for this run alone; empty it to go back.</source>
            <translation>Sous chaque nombre figure ce qui en répond. Tapez par-dessus pour en prendre un autre pour cette seule série ; videz-le pour revenir.</translation>
        </message>
        <message>
            <source>Common practice, until the laboratory says its own under Books, Laboratory: %1 of %2.</source>
            <translation>Usage courant, tant que le laboratoire n’indique pas les siennes sous Registres, Laboratoire : %1 sur %2.</translation>
        </message>
        <message>
            <source>Typed for this run: %1.</source>
            <translation>Tapé pour cette série : %1.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::UpdateDialog</name>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Arrêter</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Cahier</translation>
        </message>
        <message>
            <source>The notebook %1 was last used with an older Plateau and is being brought up to date; a copy of it as it is now stays beside it.</source>
            <translation>Le cahier %1 a été utilisé en dernier avec un Plateau plus ancien et est en train d’être mis à jour ; une copie dans son état actuel reste à côté.</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Avancement</translation>
        </message>
        <message>
            <source>Looking through it</source>
            <translation>Examen du cahier</translation>
        </message>
        <message>
            <source>Making the copy</source>
            <translation>Copie en cours</translation>
        </message>
        <message>
            <source>Bringing its tables up to date, step %1 of %2</source>
            <translation>Mise à jour des tables, étape %1 sur %2</translation>
        </message>
        <message>
            <source>Rebuilding the index of the runs</source>
            <translation>Reconstruction de l’index des séries</translation>
        </message>
        <message>
            <source>Stopping …</source>
            <translation>Arrêt en cours…</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Verdicts</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>waiting</source>
            <translation>en attente</translation>
        </message>
        <message>
            <source>reportable</source>
            <translation>rapportable</translation>
        </message>
        <message>
            <source>repeat</source>
            <translation>à répéter</translation>
        </message>
        <message>
            <source>investigate</source>
            <translation>à investiguer</translation>
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
            <translation>Incomplet : des lectures manquent</translation>
        </message>
        <message>
            <source>All results are reportable</source>
            <translation>Tous les résultats sont rapportables</translation>
        </message>
        <message>
            <source>The run itself failed a check</source>
            <translation>La série elle-même a une vérification en échec</translation>
        </message>
        <message>
            <source>%1 of %2 to repeat</source>
            <translation>%1 sur %2 à répéter</translation>
        </message>
        <message>
            <source>%1 of %2 to investigate</source>
            <translation>%1 sur %2 à investiguer</translation>
        </message>
        <message>
            <source>%1 to investigate and %2 to repeat, of %3</source>
            <translation>%1 à investiguer et %2 à répéter, sur %3</translation>
        </message>
        <message>
            <source>No check has failed so far.</source>
            <translation>Aucune vérification n’a échoué jusqu’ici.</translation>
        </message>
        <message>
            <source>Every check passed.</source>
            <translation>Toutes les vérifications sont réussies.</translation>
        </message>
        <message>
            <source>%1 (%2 times)</source>
            <translation>%1 (%2 fois)</translation>
        </message>
        <message>
            <source>; </source>
            <translation> ; </translation>
        </message>
        <message>
            <source>1 check failed: %1.</source>
            <translation>1 vérification en échec : %1.</translation>
        </message>
        <message>
            <source>%1 checks failed: %2.</source>
            <translation>%1 vérifications en échec : %2.</translation>
        </message>
        <message>
            <source>%1 is worked out as soon as a run by %2 with the same samples, of the same week, is accepted.</source>
            <translation>%1 est calculé dès qu’une série par %2 avec les mêmes échantillons, de la même semaine, est acceptée.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> et </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>No check failed.</source>
            <translation>Aucune vérification n’a échoué.</translation>
        </message>
        <message>
            <source>repeated</source>
            <translation>répété</translation>
        </message>
        <message>
            <source>Not every check could be made</source>
            <translation>Certaines vérifications n’ont pas pu être faites</translation>
        </message>
        <message>
            <source>All are reportable, %1 by a repeat in the rack</source>
            <translation>Tous sont rapportables, %1 par une répétition dans le portoir</translation>
        </message>
        <message>
            <source>%1 Not made, though the method asks for it: %2.</source>
            <translation>%1 Pas faite, bien que la méthode la demande : %2.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::VolumeWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>Wait %1 at %2</source>
            <translation>Attendre %1 à %2</translation>
        </message>
        <message>
            <source>Wait %1</source>
            <translation>Attendre %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>a dilution step: a volume made up to another</comment>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>, then </source>
            <translation>, puis </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingModel</name>
        <message>
            <source>Sample</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Product</source>
            <translation>Produit</translation>
        </message>
        <message>
            <source>Why it waits</source>
            <translation>Pourquoi il attend</translation>
        </message>
        <message>
            <source>Received at</source>
            <translation>Reçu le</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WaitingWords</name>
        <message>
            <source>repeat of run %1</source>
            <translation>répétition de la série %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>take %1 of it</source>
            <translation>en prélever %1</translation>
        </message>
        <message>
            <source>dilute at least %1 times</source>
            <translation>diluer au moins %1 fois</translation>
        </message>
        <message>
            <source>dilute %1 times</source>
            <translation>diluer %1 fois</translation>
        </message>
        <message>
            <source>registered, not run yet</source>
            <translation>inscrit, pas encore passé</translation>
        </message>
        <message>
            <source>%1; registered again</source>
            <translation>%1 ; inscrit à nouveau</translation>
        </message>
        <message>
            <source>failed: %1</source>
            <translation>échec : %1</translation>
        </message>
        <message>
            <source>repeat of run %1 (%2)</source>
            <translation>répétition de la série %1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WeighingForm</name>
        <message>
            <source>Weigh a fresh standard e&amp;xactly</source>
            <translation>Peser e&amp;xactement un étalon neuf</translation>
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
            <translation>Le prendre comme étalon de la série</translation>
        </message>
        <message>
            <source>Standard of</source>
            <translation>Étalon de</translation>
        </message>
        <message>
            <source>Strength wanted</source>
            <translation>Titre souhaité</translation>
        </message>
        <message>
            <source>Flask</source>
            <translation>Fiole</translation>
        </message>
        <message>
            <source>Molar mass of the substance</source>
            <translation>Masse molaire de la substance</translation>
        </message>
        <message>
            <source>Analyte molecules in one of it</source>
            <translation>Molécules d’analyte par molécule</translation>
        </message>
        <message>
            <source>Purity</source>
            <translation>Pureté</translation>
        </message>
        <message>
            <source>Actually weighed</source>
            <translation>Réellement pesé</translation>
        </message>
        <message>
            <source>u of the mass</source>
            <translation>u de la masse</translation>
        </message>
        <message>
            <source>u of the purity</source>
            <translation>u de la pureté</translation>
        </message>
        <message>
            <source>u of flask and filling</source>
            <translation>u de la fiole et du remplissage</translation>
        </message>
        <message>
            <source>Molar mass as weighed: a monohydrate with its water. u: standard uncertainty (k = 1).</source>
            <translation>Masse molaire telle que pesée : un monohydrate avec son eau. u : incertitude-type (k = 1).</translation>
        </message>
        <message>
            <source>Wear what your local safety rules and the supplier's sheet ask for; they come first.</source>
            <translation>Portez ce que demandent vos règles de sécurité locales et la fiche du fournisseur ; elles priment.</translation>
        </message>
        <message>
            <source>Enter the strength wanted, the flask, the substance's molar mass, and a purity of more than 0 and at most 100 %: then the mass to weigh stands here.</source>
            <translation>Indiquez le titre souhaité, la fiole, la masse molaire de la substance, et une pureté supérieure à 0 et d’au plus 100 % : la masse à peser figure alors ici.</translation>
        </message>
        <message>
            <source>Weigh %1 and make up to %2.</source>
            <translation>Pesez %1 et complétez à %2.</translation>
        </message>
        <message>
            <source>Type the mass actually weighed: then the strength actually made stands here.</source>
            <translation>Tapez la masse réellement pesée : le titre réellement préparé figure alors ici.</translation>
        </message>
        <message>
            <source>Made: %1 ± %2 (k = 2), a standard uncertainty of %3.</source>
            <translation>Préparé : %1 ± %2 (k = 2), soit une incertitude-type de %3.</translation>
        </message>
        <message>
            <source>Largest contribution to it: %1, %2 of the variance.</source>
            <translation>La plus grande part vient de : %1, %2 de la variance.</translation>
        </message>
        <message>
            <source>weighed %1: %2 made up to %3</source>
            <translation>pesé %1 : %2 complété à %3</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WindowActions</name>
        <message>
            <source>&amp;File</source>
            <translation>&amp;Fichier</translation>
        </message>
        <message>
            <source>&amp;New run</source>
            <translation>&amp;Nouvelle série</translation>
        </message>
        <message>
            <source>&amp;Open run file…</source>
            <translation>Ouvrir un fichier de &amp;série…</translation>
        </message>
        <message>
            <source>&amp;Save a copy of the run as file…</source>
            <translation>Enregistrer une &amp;copie de la série en fichier…</translation>
        </message>
        <message>
            <source>&amp;Worksheet as PDF…</source>
            <translation>Feuille de &amp;paillasse en PDF…</translation>
        </message>
        <message>
            <source>&amp;Labels as PDF…</source>
            <translation>É&amp;tiquettes en PDF…</translation>
        </message>
        <message>
            <source>&amp;Report of results as PDF…</source>
            <translation>&amp;Rapport de résultats en PDF…</translation>
        </message>
        <message>
            <source>R&amp;un record as PDF…</source>
            <translation>&amp;Dossier de la série en PDF…</translation>
        </message>
        <message>
            <source>Results as &amp;CSV…</source>
            <translation>Résu&amp;ltats en CSV…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Quitter</translation>
        </message>
        <message>
            <source>What is next is &amp;done now</source>
            <translation>La suite est &amp;faite maintenant</translation>
        </message>
        <message>
            <source>&amp;Take back the last mark</source>
            <translation>&amp;Annuler la dernière marque</translation>
        </message>
        <message>
            <source>&amp;Paste readings…</source>
            <translation>&amp;Coller des lectures…</translation>
        </message>
        <message>
            <source>Readings from a &amp;file…</source>
            <translation>Lectures d’un fic&amp;hier…</translation>
        </message>
        <message>
            <source>&amp;Listen to the photometer…</source>
            <translation>Éco&amp;uter le photomètre…</translation>
        </message>
        <message>
            <source>St&amp;op listening</source>
            <translation>A&amp;rrêter l’écoute</translation>
        </message>
        <message>
            <source>&amp;Sound, lead time and keying…</source>
            <translation>&amp;Son, préavis et saisie…</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>Affic&amp;hage</translation>
        </message>
        <message>
            <source>&amp;Go to what is next</source>
            <translation>Aller &amp;à la suite</translation>
        </message>
        <message>
            <source>P&amp;ipette</source>
            <translation>Pipeta&amp;ge</translation>
        </message>
        <message>
            <source>&amp;Read</source>
            <translation>Lect&amp;ure</translation>
        </message>
        <message>
            <source>Re&amp;view</source>
            <translation>Re&amp;vue</translation>
        </message>
        <message>
            <source>Ne&amp;xt rack</source>
            <translation>&amp;Portoir suivant</translation>
        </message>
        <message>
            <source>&amp;Previous rack</source>
            <translation>P&amp;ortoir précédent</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>A&amp;ide</translation>
        </message>
        <message>
            <source>&amp;About Plateau</source>
            <translation>À &amp;propos de Plateau</translation>
        </message>
        <message>
            <source>&amp;Keys…</source>
            <translation>&amp;Touches…</translation>
        </message>
        <message>
            <source>&amp;Help for what is in front</source>
            <translation>&amp;Aide sur ce qui est affiché</translation>
        </message>
        <message>
            <source>A &amp;first rack in ten minutes</source>
            <translation>Un premier p&amp;ortoir en dix minutes</translation>
        </message>
        <message>
            <source>&amp;What to do about a check</source>
            <translation>&amp;Que faire d’une vérification</translation>
        </message>
        <message>
            <source>Another note&amp;book…</source>
            <translation>Un &amp;autre cahier…</translation>
        </message>
        <message>
            <source>&amp;Bench</source>
            <translation>Pai&amp;llasse</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Words</name>
        <message>
            <source>blank</source>
            <translation>blanc</translation>
        </message>
        <message>
            <source>sample blank of %1</source>
            <translation>blanc échantillon %1</translation>
        </message>
        <message>
            <source>standard %1</source>
            <translation>étalon %1</translation>
        </message>
        <message>
            <source>control %1</source>
            <translation>contrôle %1</translation>
        </message>
        <message>
            <source>spiked sample %1</source>
            <translation>échantillon avec ajout %1</translation>
        </message>
        <message>
            <source>sample %1</source>
            <translation>échantillon %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message numerus="yes">
            <source>%n readings, last %1</source>
            <translation>
                <numerusform>%n lecture, dernière %1</numerusform>
                <numerusform>%n lectures, dernière %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::WorkingCopy</name>
        <message>
            <source>There is no place for a copy to work on in %1; nothing was made: see that the folder is there and has room.</source>
            <translation>Il n’y a pas de place pour une copie de travail dans %1 ; rien n’a été fait : veillez à ce que le dossier existe et ait de la place.</translation>
        </message>
    </context>
    <context>
        <name>plateau::ui::Worksheet</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 dans %2</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>blanc</translation>
        </message>
        <message>
            <source>sample blank</source>
            <translation>blanc échantillon</translation>
        </message>
        <message>
            <source>standard</source>
            <translation>étalon</translation>
        </message>
        <message>
            <source>control</source>
            <translation>contrôle</translation>
        </message>
        <message>
            <source>spiked</source>
            <translation>avec ajout</translation>
        </message>
        <message>
            <source>sample</source>
            <translation>échantillon</translation>
        </message>
        <message>
            <source>%1 → %2</source>
            <comment>millilitres taken, made up to</comment>
            <translation>%1 → %2</translation>
        </message>
        <message>
            <source>%1 at %2</source>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>version %1, %2, cuvette of %3</source>
            <translation>version %1, %2, cuve de %3</translation>
        </message>
        <message numerus="yes">
            <source>%n tubes</source>
            <translation>
                <numerusform>%n tube</numerusform>
                <numerusform>%n tubes</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1: start the next one every %2</source>
            <translation>%1 : démarrer le suivant tous les %2</translation>
        </message>
        <message>
            <source>date</source>
            <translation>date</translation>
        </message>
        <message>
            <source>started at</source>
            <translation>commencé à</translation>
        </message>
        <message>
            <source>by</source>
            <translation>par</translation>
        </message>
        <message>
            <source>photometer</source>
            <translation>photomètre</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>lot</source>
            <translation>lot</translation>
        </message>
        <message>
            <source>until %1</source>
            <comment>the last good day of a lot</comment>
            <translation>jusqu’au %1</translation>
        </message>
        <message>
            <source>swirl</source>
            <translation>agiter</translation>
        </message>
        <message>
            <source>Plateau, run %1</source>
            <translation>Plateau, série %1</translation>
        </message>
        <message>
            <source>page %1 of %2</source>
            <translation>page %1 sur %2</translation>
        </message>
        <message>
            <source>Worksheet: %1</source>
            <translation>Feuille de paillasse : %1</translation>
        </message>
        <message>
            <source>tube</source>
            <translation>tube</translation>
        </message>
        <message>
            <source>contents, taken → made up to</source>
            <translation>contenu, prélevé → complété à</translation>
        </message>
        <message>
            <source>reads</source>
            <translation>lu</translation>
        </message>
        <message>
            <source>time</source>
            <translation>heure</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mélanger</translation>
        </message>
        <message>
            <source>wait %1</source>
            <translation>attendre %1</translation>
        </message>
        <message>
            <source>Tubes that do not count</source>
            <translation>Tubes qui ne comptent pas</translation>
        </message>
        <message>
            <source>tube %1: %2</source>
            <translation>tube %1 : %2</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Précautions</translation>
        </message>
        <message>
            <source>Names in full</source>
            <translation>Noms complets</translation>
        </message>
        <message>
            <source>notes</source>
            <translation>notes</translation>
        </message>
        <message>
            <source>Worksheet %1</source>
            <comment>a file name</comment>
            <translation>Feuille de paillasse %1</translation>
        </message>
        <message>
            <source>Dilute %1:</source>
            <comment>millilitres taken, made up to</comment>
            <translation>Diluer %1 :</translation>
        </message>
    </context>
</TS>
