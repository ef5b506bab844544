<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>Nylon %1</translation>
    </message>
    <message>
        <source>fluorocarbon %1</source>
        <translation>Fluorocarbon %1</translation>
    </message>
    <message>
        <source>floating %1</source>
        <translation>schwimmend %1</translation>
    </message>
    <message>
        <source>sinking %1</source>
        <translation>sinkend %1</translation>
    </message>
    <message>
        <source>sinking %1, %2</source>
        <translation>sinkend %1, %2</translation>
    </message>
    <message>
        <source>%1, piece %2</source>
        <translation>%1, Stück %2</translation>
    </message>
    <message>
        <source>%1, sinking piece</source>
        <translation>%1, sinkendes Stück</translation>
    </message>
    <message>
        <source>%1, floating piece</source>
        <translation>%1, schwimmendes Stück</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1: no such spool, %2 wanted. Not cut: %3.</source>
        <translation>%1: keine solche Spule, %2 gebraucht. Nicht geschnitten: %3.</translation>
    </message>
    <message>
        <source>%1: %2 short. Not cut: %3.</source>
        <translation>%1: %2 fehlen. Nicht geschnitten: %3.</translation>
    </message>
    <message>
        <source>%1: enough in all, but no spool is long enough. Not cut: %2.</source>
        <translation>%1: insgesamt genug, aber keine Spule ist lang genug. Nicht geschnitten: %2.</translation>
    </message>
    <message>
        <source>far too light: were these grams?</source>
        <translation>viel zu leicht: waren das Gramm?</translation>
    </message>
    <message>
        <source>far too heavy: were these grains?</source>
        <translation>viel zu schwer: waren das Grain?</translation>
    </message>
    <message>
        <source>%1 light, %2</source>
        <translation>%1 zu leicht, %2</translation>
    </message>
    <message>
        <source>%1 heavy, %2</source>
        <translation>%1 zu schwer, %2</translation>
    </message>
    <message>
        <source>as it should be, within %1</source>
        <translation>wie es sein soll, auf %1 genau</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1–%2 lb</source>
        <translation>%1–%2 lb</translation>
    </message>
    <message>
        <source>Weakest: the knot at the fly, about %1</source>
        <translation>Am schwächsten: der Knoten an der Fliege, etwa %1</translation>
    </message>
    <message>
        <source>Weakest: the knot from %1 to %2, about %3</source>
        <translation>Am schwächsten: der Knoten von %1 auf %2, etwa %3</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>%1–%2 %3</source>
        <comment>from, to, unit</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>%1 (%2 %3)</source>
        <comment>what a joint does, its figures, unit</comment>
        <translation>%1 (%2 %3)</translation>
    </message>
    <message>
        <source>rather shallow: %1</source>
        <translation>etwas flach: %1</translation>
    </message>
    <message>
        <source>too shallow: %1</source>
        <translation>zu flach: %1</translation>
    </message>
    <message>
        <source>rather deep: %1</source>
        <translation>etwas tief: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>zu tief: %1</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>liegt auf dem Grund</translation>
    </message>
    <message>
        <source>stays on top</source>
        <translation>bleibt an der Oberfläche</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>gleiche Wurfbewegung</translation>
    </message>
    <message>
        <source>longer sweep</source>
        <translation>längerer Sweep</translation>
    </message>
    <message>
        <source>shorter sweep</source>
        <translation>kürzerer Sweep</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>ein anderer Wurf</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, langsamer anheben</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, schneller anheben</translation>
    </message>
    <message>
        <source>carries the fly</source>
        <translation>trägt die Fliege</translation>
    </message>
    <message>
        <source>only just carries the fly</source>
        <translation>trägt die Fliege nur knapp</translation>
    </message>
    <message>
        <source>does not carry the fly</source>
        <translation>trägt die Fliege nicht</translation>
    </message>
    <message>
        <source>will land in a heap</source>
        <translation>fällt in einem Haufen</translation>
    </message>
    <message>
        <source>probably will not turn over</source>
        <translation>rollt wohl nicht ab</translation>
    </message>
    <message>
        <source>turns over with little speed to spare</source>
        <translation>rollt mit wenig Reserve ab</translation>
    </message>
    <message>
        <source>turns over with speed to spare</source>
        <translation>rollt mit Reserve ab</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a figure: what it means</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 of the head</source>
        <translation>%1 des Kopfes</translation>
    </message>
    <message>
        <source>tip %1 × fly</source>
        <translation>Spitze %1 × Fliege</translation>
    </message>
    <message>
        <source>hinges or collapses at the joint</source>
        <translation>knickt oder fällt am Übergang zusammen</translation>
    </message>
    <message>
        <source>wrong share of the head</source>
        <translation>falscher Anteil am Kopf</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>zu wenig im Wasser</translation>
    </message>
    <message>
        <source>wrong length on this rod</source>
        <translation>falsche Länge für diese Rute</translation>
    </message>
    <message>
        <source>the fly is too heavy for it</source>
        <translation>die Fliege ist zu schwer dafür</translation>
    </message>
    <message>
        <source>will not turn over</source>
        <translation>rollt nicht ab</translation>
    </message>
    <message>
        <source>another stroke</source>
        <translation>andere Wurfbewegung</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>zu flach</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>zu tief</translation>
    </message>
    <message>
        <source>not in the wanted water</source>
        <translation>nicht im gewünschten Wasser</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>keine Spitze</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>auf dem Grund</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 tief</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>an der Oberfläche</translation>
    </message>
    <message>
        <source>No head to put a tip on: start from a rod, or drop a head on the line.</source>
        <translation>Kein Kopf für eine Spitze: von einer Rute aus beginnen oder einen Kopf auf die Schnur ziehen.</translation>
    </message>
    <message>
        <source>No fly, and everything behind it is there to carry it: drop a fly on the line first.</source>
        <translation>Keine Fliege, und alles dahinter ist da, um sie zu tragen: zuerst eine Fliege auf die Schnur ziehen.</translation>
    </message>
    <message>
        <source>The fly has no mass yet: weigh it, or build it from hook, eyes and wire.</source>
        <translation>Die Fliege hat noch keine Masse: wiegen oder aus Haken, Augen und Draht aufbauen.</translation>
    </message>
    <message>
        <source>The shelf has no tip and no coated leader: add some to it.</source>
        <translation>Im Regal liegen weder Spitzen noch beschichtete Vorfächer: einige dazulegen.</translation>
    </message>
    <message>
        <source>No pool yet, so depth is not judged: choose the pool to be fished.</source>
        <translation>Noch kein Pool, die Tiefe wird daher nicht beurteilt: den Pool wählen, der gefischt wird.</translation>
    </message>
    <message>
        <source>This pool does not say where the fly is wanted, so depth is not judged: say so under Pools.</source>
        <translation>Zu diesem Pool steht nicht, wo die Fliege laufen soll; die Tiefe wird daher nicht beurteilt: unter Pools angeben.</translation>
    </message>
    <message>
        <source>Nothing on the shelf will do; what comes nearest stands first. Look under Fixes, or try another fly or head.</source>
        <translation>Nichts im Regal genügt; das Nächstbeste steht zuerst. Unter Abhilfe nachsehen oder eine andere Fliege, einen anderen Kopf versuchen.</translation>
    </message>
    <message>
        <source>about %1 down, where it is wanted</source>
        <translation>etwa %1 tief, wo sie laufen soll</translation>
    </message>
    <message>
        <source>about %1 down, nearer to it</source>
        <translation>etwa %1 tief, näher daran</translation>
    </message>
    <message>
        <source>cast at %1°</source>
        <translation>mit %1° werfen</translation>
    </message>
    <message>
        <source>%1 s of slack</source>
        <translation>%1 s lose Schnur</translation>
    </message>
    <message>
        <source>%1 of line out</source>
        <translation>%1 Schnur draußen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a change on the water: what it does</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing was tried</source>
        <translation>nichts wurde versucht</translation>
    </message>
    <message>
        <source>%1 would do, but for the limits set</source>
        <translation>%1 würde genügen, wären die Grenzen nicht</translation>
    </message>
    <message>
        <source>nearest is %1: %2</source>
        <translation>am nächsten kommt %1: %2</translation>
    </message>
    <message>
        <source>the joint</source>
        <translation>der Übergang</translation>
    </message>
    <message>
        <source>the head on this rod</source>
        <translation>der Kopf zur Rute</translation>
    </message>
    <message>
        <source>the length on this rod</source>
        <translation>die Länge zur Rute</translation>
    </message>
    <message>
        <source>the tip&apos;s share of the head</source>
        <translation>der Anteil der Spitze am Kopf</translation>
    </message>
    <message>
        <source>the line in the water</source>
        <translation>die Schnur im Wasser</translation>
    </message>
    <message>
        <source>the fly against the tip</source>
        <translation>die Fliege zur Spitze</translation>
    </message>
    <message>
        <source>the fly against the leader</source>
        <translation>die Fliege zum Vorfach</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>wie die Schnur die Fliege trägt</translation>
    </message>
    <message>
        <source>the turnover</source>
        <translation>das Abrollen</translation>
    </message>
    <message>
        <source>the depth</source>
        <translation>die Tiefe</translation>
    </message>
    <message>
        <source>trim %1 off the front of %2</source>
        <translation>%1 vorn von %2 abschneiden</translation>
    </message>
    <message>
        <source>trim %1 off the rear of %2</source>
        <translation>%1 hinten von %2 abschneiden</translation>
    </message>
    <message>
        <source>cut %1 off the fly end of %2</source>
        <translation>%1 am Fliegenende von %2 abschneiden</translation>
    </message>
    <message>
        <source>cut %1 off the rod end of %2</source>
        <translation>%1 am Rutenende von %2 abschneiden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is changed: for which part</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>put on a tip: %1</source>
        <translation>eine Spitze anbringen: %1</translation>
    </message>
    <message>
        <source>take off %1</source>
        <translation>abnehmen: %1</translation>
    </message>
    <message>
        <source>cast at %1° instead of %2°</source>
        <translation>mit %1° statt %2° werfen</translation>
    </message>
    <message>
        <source>%1 s of slack instead of %2</source>
        <translation>%1 s lose Schnur statt %2</translation>
    </message>
    <message>
        <source>%1 of line out instead of %2</source>
        <translation>%1 Schnur draußen statt %2</translation>
    </message>
    <message>
        <source>tie %1 shorter by %2</source>
        <translation>%1 um %2 kürzer knüpfen</translation>
    </message>
    <message>
        <source>tie %1 longer by %2</source>
        <translation>%1 um %2 länger knüpfen</translation>
    </message>
    <message>
        <source>put %1 behind the head</source>
        <translation>%1 hinter den Kopf setzen</translation>
    </message>
    <message>
        <source>change the tip</source>
        <translation>Spitze wechseln</translation>
    </message>
    <message>
        <source>take the tip off</source>
        <translation>Spitze abnehmen</translation>
    </message>
    <message>
        <source>change the leader</source>
        <translation>Vorfach wechseln</translation>
    </message>
    <message>
        <source>change the tippet</source>
        <translation>Vorfachspitze wechseln</translation>
    </message>
    <message>
        <source>change the fly</source>
        <translation>Fliege wechseln</translation>
    </message>
    <message>
        <source>change the head</source>
        <translation>Kopf wechseln</translation>
    </message>
    <message>
        <source>change the swing</source>
        <translation>Swing ändern</translation>
    </message>
    <message>
        <source>cut the tip</source>
        <translation>Spitze kürzen</translation>
    </message>
    <message>
        <source>tie the leader anew</source>
        <translation>Vorfach neu knüpfen</translation>
    </message>
    <message>
        <source>change the extension</source>
        <translation>Verlängerung wechseln</translation>
    </message>
    <message>
        <source>trim the head</source>
        <translation>Kopf kürzen</translation>
    </message>
    <message>
        <source>eases %1</source>
        <translation>mildert: %1</translation>
    </message>
    <message>
        <source>repairs %1</source>
        <translation>behebt: %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what a change repairs; what it does to the stroke</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>No pool is chosen: tick the pools of the trip.</source>
        <translation>Kein Pool gewählt: haken Sie die Pools der Reise an.</translation>
    </message>
    <message>
        <source>Nothing on the shelf serves any pool and fly of this trip: try other flies or another head.</source>
        <translation>Nichts im Regal passt zu einem Pool und einer Fliege dieser Reise: andere Fliegen oder einen anderen Kopf versuchen.</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>tip share</source>
        <translation>Spitzenanteil</translation>
    </message>
    <message>
        <source>line in the water</source>
        <translation>Schnur im Wasser</translation>
    </message>
    <message>
        <source>length on the rod</source>
        <translation>Länge zur Rute</translation>
    </message>
    <message>
        <source>fly against tip</source>
        <translation>Fliege zur Spitze</translation>
    </message>
    <message>
        <source>carrying the fly</source>
        <translation>Tragen der Fliege</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>Abrollen</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>stroke</source>
        <translation>Wurfbewegung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is judged: its grade</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>CompareWords</name>
    <message>
        <source>%1 longer</source>
        <translation>%1 länger</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 kürzer</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 schwerer</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 leichter</translation>
    </message>
    <message>
        <source>%1 of it sink instead of %2</source>
        <translation>davon sinken %1 statt %2</translation>
    </message>
    <message>
        <source>sinks at %1 instead of %2</source>
        <translation>sinkt mit %1 statt %2</translation>
    </message>
    <message>
        <source>%1 at the rod end instead of %2</source>
        <translation>%1 am Rutenende statt %2</translation>
    </message>
    <message>
        <source>%1 at the fly end instead of %2</source>
        <translation>%1 am Fliegenende statt %2</translation>
    </message>
    <message>
        <source>%1 at the butt instead of %2</source>
        <translation>%1 am dicken Ende statt %2</translation>
    </message>
    <message>
        <source>%1 at the front instead of %2</source>
        <translation>%1 vorn statt %2</translation>
    </message>
    <message>
        <source>another taper</source>
        <translation>andere Verjüngung</translation>
    </message>
    <message>
        <source>bulkier</source>
        <translation>voluminöser</translation>
    </message>
    <message>
        <source>sparser</source>
        <translation>schlanker</translation>
    </message>
    <message>
        <source>more compact</source>
        <translation>gedrungener</translation>
    </message>
    <message>
        <source>less compact</source>
        <translation>weniger gedrungen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>length %1, now %2</source>
        <translation>Länge %1, jetzt %2</translation>
    </message>
    <message>
        <source>line number %1, now %2</source>
        <translation>Schnurklasse %1, jetzt %2</translation>
    </message>
    <message>
        <source>head from %1, now %2</source>
        <translation>Kopf ab %1, jetzt %2</translation>
    </message>
    <message>
        <source>head up to %1, now %2</source>
        <translation>Kopf bis %1, jetzt %2</translation>
    </message>
    <message>
        <source>surface %1, now %2</source>
        <translation>Oberfläche %1, jetzt %2</translation>
    </message>
    <message>
        <source>%1 deep, now %2</source>
        <translation>%1 tief, jetzt %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, jetzt %2</translation>
    </message>
    <message>
        <source>salt %1 g/kg, now %2</source>
        <translation>Salz %1 g/kg, jetzt %2</translation>
    </message>
    <message>
        <source>line speed %1, now %2</source>
        <translation>Schnurgeschwindigkeit %1, jetzt %2</translation>
    </message>
    <message>
        <source>loop %1, now %2</source>
        <translation>Schlaufe %1, jetzt %2</translation>
    </message>
    <message>
        <source>launched at %1°, now %2°</source>
        <translation>Abwurf mit %1°, jetzt %2°</translation>
    </message>
    <message>
        <source>rod tip at %1, now %2</source>
        <translation>Rutenspitze auf %1, jetzt %2</translation>
    </message>
    <message>
        <source>overhang %1, now %2</source>
        <translation>Überhang %1, jetzt %2</translation>
    </message>
    <message>
        <source>line out %1, now %2</source>
        <translation>Schnur draußen %1, jetzt %2</translation>
    </message>
    <message>
        <source>angle %1°, now %2°</source>
        <translation>Winkel %1°, jetzt %2°</translation>
    </message>
    <message>
        <source>slack %1 s, now %2 s</source>
        <translation>lose Schnur %1 s, jetzt %2 s</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no joint</source>
        <translation>kein Übergang</translation>
    </message>
    <message>
        <source>Now lands in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Fällt jetzt in einem Haufen: mehr Schnurgeschwindigkeit, ein kürzeres Vorfach oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>Now probably does not turn over: more line speed or a smaller fly</source>
        <translation>Rollt jetzt wohl nicht ab: mehr Schnurgeschwindigkeit oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>Now turns over with little speed to spare: a clean stroke</source>
        <translation>Rollt jetzt mit wenig Reserve ab: eine saubere Wurfbewegung</translation>
    </message>
    <message>
        <source>Now turns over with speed to spare</source>
        <translation>Rollt jetzt mit Reserve ab</translation>
    </message>
    <message>
        <source>Nothing to turn over</source>
        <translation>Nichts, was abrollt</translation>
    </message>
    <message>
        <source>Now there is a line to turn over</source>
        <translation>Jetzt ist Schnur da, die abrollt</translation>
    </message>
    <message>
        <source>Turns over more easily</source>
        <translation>Rollt leichter ab</translation>
    </message>
    <message>
        <source>Turns over less easily</source>
        <translation>Rollt schwerer ab</translation>
    </message>
    <message>
        <source>The line now does not carry the fly</source>
        <translation>Die Schnur trägt die Fliege jetzt nicht</translation>
    </message>
    <message>
        <source>The line now only just carries the fly</source>
        <translation>Die Schnur trägt die Fliege jetzt nur knapp</translation>
    </message>
    <message>
        <source>The line now carries the fly</source>
        <translation>Die Schnur trägt jetzt die Fliege</translation>
    </message>
    <message>
        <source>Carries the fly better</source>
        <translation>Trägt die Fliege besser</translation>
    </message>
    <message>
        <source>Carries the fly less well</source>
        <translation>Trägt die Fliege schlechter</translation>
    </message>
    <message>
        <source>Now kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Schlägt jetzt nach: eine schwerere Fliege, ein längeres Vorfach oder eine leichtere Spitze</translation>
    </message>
    <message>
        <source>Now dies before the fly is round</source>
        <translation>Erlahmt jetzt, bevor die Fliege herum ist</translation>
    </message>
    <message>
        <source>The fly comes round faster</source>
        <translation>Die Fliege kommt schneller herum</translation>
    </message>
    <message>
        <source>The fly comes round softer</source>
        <translation>Die Fliege kommt sanfter herum</translation>
    </message>
    <message>
        <source>the joints</source>
        <translation>die Übergänge</translation>
    </message>
    <message>
        <source>the head on the rod</source>
        <translation>der Kopf zur Rute</translation>
    </message>
    <message>
        <source>the length of the line</source>
        <translation>die Länge der Schnur</translation>
    </message>
    <message>
        <source>the share of the tip</source>
        <translation>der Anteil der Spitze</translation>
    </message>
    <message>
        <source>the anchor</source>
        <translation>der Anker</translation>
    </message>
    <message>
        <source>what the fly asks of the line</source>
        <translation>was die Fliege von der Schnur verlangt</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>wie die Schnur die Fliege trägt</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>das Abrollen</translation>
    </message>
    <message>
        <source>how fast the fly comes round</source>
        <translation>wie schnell die Fliege herumkommt</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>die Tiefe</translation>
    </message>
    <message>
        <source>the time of the swing</source>
        <translation>die Dauer des Swings</translation>
    </message>
    <message>
        <source>the stroke</source>
        <translation>die Wurfbewegung</translation>
    </message>
    <message>
        <source>%1, another</source>
        <translation>%1, ein anderer Teil</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Only A has %1</source>
        <translation>Nur A hat %1</translation>
    </message>
    <message>
        <source>Only B has %1</source>
        <translation>Nur B hat %1</translation>
    </message>
    <message>
        <source>Another rod</source>
        <translation>Andere Rute</translation>
    </message>
    <message>
        <source>Another water</source>
        <translation>Anderes Wasser</translation>
    </message>
    <message>
        <source>Another cast</source>
        <translation>Anderer Wurf</translation>
    </message>
    <message>
        <source>Another swing</source>
        <translation>Anderer Swing</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>both on the bottom</source>
        <translation>beide auf dem Grund</translation>
    </message>
    <message>
        <source>B lies on the bottom</source>
        <translation>B liegt auf dem Grund</translation>
    </message>
    <message>
        <source>A lies on the bottom</source>
        <translation>A liegt auf dem Grund</translation>
    </message>
    <message>
        <source>no difference for certain</source>
        <translation>kein sicherer Unterschied</translation>
    </message>
    <message>
        <source>B %1 deeper (%2)</source>
        <translation>B %1 tiefer (%2)</translation>
    </message>
    <message>
        <source>B %1 shallower (%2)</source>
        <translation>B %1 flacher (%2)</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>gleiche Wurfbewegung</translation>
    </message>
    <message>
        <source>a longer sweep</source>
        <translation>ein längerer Sweep</translation>
    </message>
    <message>
        <source>a shorter sweep</source>
        <translation>ein kürzerer Sweep</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>ein anderer Wurf</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, langsamer anheben</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, schneller anheben</translation>
    </message>
    <message>
        <source>Lies on the bottom as before</source>
        <translation>Liegt wie zuvor auf dem Grund</translation>
    </message>
    <message>
        <source>Now lies on the bottom</source>
        <translation>Liegt jetzt auf dem Grund</translation>
    </message>
    <message>
        <source>Now swims clear of the bottom</source>
        <translation>Schwimmt jetzt frei vom Grund</translation>
    </message>
    <message>
        <source>Swims %1 deeper (%2)</source>
        <translation>Läuft %1 tiefer (%2)</translation>
    </message>
    <message>
        <source>Swims %1 shallower (%2)</source>
        <translation>Läuft %1 flacher (%2)</translation>
    </message>
    <message>
        <source>wrong head for this rod</source>
        <translation>falscher Kopf für diese Rute</translation>
    </message>
    <message>
        <source>fits the rod</source>
        <translation>passt zur Rute</translation>
    </message>
    <message>
        <source>a touch light</source>
        <translation>etwas leicht</translation>
    </message>
    <message>
        <source>a touch heavy</source>
        <translation>etwas schwer</translation>
    </message>
    <message>
        <source>Line of %1 rods</source>
        <translation>Schnur von %1 Rutenlängen</translation>
    </message>
    <message>
        <source>Tip %1 of the head</source>
        <translation>Spitze %1 des Kopfes</translation>
    </message>
    <message>
        <source>Anchor of %1 rods</source>
        <translation>Anker von %1 Rutenlängen</translation>
    </message>
    <message>
        <source>Tip %1 × the fly</source>
        <translation>Spitze %1 × Fliege</translation>
    </message>
    <message>
        <source>Leader %1 × the fly</source>
        <translation>Vorfach %1 × Fliege</translation>
    </message>
    <message>
        <source>Now it has a depth</source>
        <translation>Hat jetzt eine Tiefe</translation>
    </message>
    <message>
        <source>Now it has no depth</source>
        <translation>Hat jetzt keine Tiefe</translation>
    </message>
    <message>
        <source>Takes %1 s longer to come round</source>
        <translation>Braucht %1 s länger bis herum</translation>
    </message>
    <message>
        <source>Comes round %1 s sooner</source>
        <translation>Kommt %1 s früher herum</translation>
    </message>
    <message>
        <source>Now it comes round</source>
        <translation>Kommt jetzt herum</translation>
    </message>
    <message>
        <source>Now it never comes round</source>
        <translation>Kommt jetzt nie herum</translation>
    </message>
    <message>
        <source>No more than is known: %1</source>
        <translation>Nicht mehr, als man weiß: %1</translation>
    </message>
    <message>
        <source>Choose it on the lines</source>
        <translation>Auf den Schnüren zeigen</translation>
    </message>
    <message>
        <source>no cast to show</source>
        <translation>kein Wurf zu zeigen</translation>
    </message>
    <message>
        <source>the fly is round after %1 s</source>
        <translation>die Fliege ist nach %1 s herum</translation>
    </message>
    <message>
        <source>does not turn over</source>
        <translation>rollt nicht ab</translation>
    </message>
    <message>
        <source>no swing to show</source>
        <translation>kein Swing zu zeigen</translation>
    </message>
    <message>
        <source>straight below after %1 s</source>
        <translation>nach %1 s gerade unterhalb</translation>
    </message>
    <message>
        <source>never comes straight below</source>
        <translation>kommt nie gerade unterhalb</translation>
    </message>
    <message>
        <source>A is better here</source>
        <translation>A ist hier besser</translation>
    </message>
    <message>
        <source>B is better here</source>
        <translation>B ist hier besser</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>kein Unterschied</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>nicht mehr, als man weiß</translation>
    </message>
    <message>
        <source>both fit</source>
        <translation>beide passen</translation>
    </message>
    <message>
        <source>no better in either</source>
        <translation>keine ist besser</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>auf dem Grund</translation>
    </message>
    <message>
        <source>Joint %1</source>
        <translation>Übergang %1</translation>
    </message>
    <message>
        <source>Head %1</source>
        <translation>Kopf %1</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>card %1: %2</source>
        <translation>Karte %1: %2</translation>
    </message>
    <message>
        <source>This deck has no cards yet.</source>
        <translation>Dieser Kartensatz hat noch keine Karten.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Depths are estimates and no guide to wading.</source>
        <translation>Tiefen sind Schätzungen und kein Maß fürs Waten.</translation>
    </message>
    <message>
        <source>%1, card %2 of %3</source>
        <translation>%1, Karte %2 von %3</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>no fly yet</source>
        <translation>noch keine Fliege</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>no swing</source>
        <translation>kein Swing</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>an der Oberfläche</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Kopf zur Rute</translation>
    </message>
    <message>
        <source>%1 in %2–%3</source>
        <translation>%1 in %2–%3</translation>
    </message>
    <message>
        <source>Working length</source>
        <translation>Arbeitslänge</translation>
    </message>
    <message>
        <source>%1 rods</source>
        <translation>%1 Rutenlängen</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Spitzenanteil</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>no rule for this style of head</source>
        <translation>keine Regel für diese Kopfart</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>Im Wasser</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Fliege zur Spitze</translation>
    </message>
    <message>
        <source>%1 ×: %2 on %3</source>
        <translation>%1 ×: %2 auf %3</translation>
    </message>
    <message>
        <source>Fly against leader</source>
        <translation>Fliege zum Vorfach</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>What each foot weighs: %1, over %2 from the back of the head</source>
        <translation>Was jeder Fuß wiegt: %1, über %2 vom Ende des Kopfes an</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Was es heißt</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Abrollen</translation>
    </message>
    <message>
        <source>Circle: fits. Triangle: watch it. Square: wrong. Limits are common practice or ours.</source>
        <translation>Kreis: passt. Dreieck: Vorsicht. Quadrat: falsch. Die Grenzen sind übliche Praxis oder unsere eigenen.</translation>
    </message>
    <message>
        <source>How deep on the swing, %1, an estimate: four swings in five</source>
        <translation>Wie tief im Swing, %1, geschätzt: vier von fünf Swings</translation>
    </message>
    <message>
        <source>State a pool&apos;s speed and depth to have its depths here.</source>
        <translation>Strömung und Tiefe eines Pools angeben, dann stehen seine Tiefen hier.</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pool</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>Tief</translation>
    </message>
    <message>
        <source>Slower water</source>
        <translation>Langsameres Wasser</translation>
    </message>
    <message>
        <source>As stated</source>
        <translation>Wie angegeben</translation>
    </message>
    <message>
        <source>Faster water</source>
        <translation>Schnelleres Wasser</translation>
    </message>
    <message>
        <source>This water</source>
        <translation>Dieses Wasser</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Wallet: what I pack</source>
        <translation>Etui: was ich mitnehme</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>For which pool</source>
        <translation>Für welchen Pool</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Eingepackt</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>estimate, side %1 of 2</source>
        <translation>Schätzung, Seite %1 von 2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Lehrer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Try in this order</source>
        <translation>In dieser Reihenfolge versuchen</translation>
    </message>
    <message>
        <source>1. Angle and slack: cast squarer, mend a second longer. It costs nothing.</source>
        <translation>1. Winkel und lose Schnur: flacher quer werfen, eine Sekunde länger menden. Es kostet nichts.</translation>
    </message>
    <message>
        <source>2. The fly: the same weight on a slimmer fly sinks further, then a heavier one.</source>
        <translation>2. Die Fliege: dasselbe Gewicht an einer schlankeren Fliege sinkt weiter, dann eine schwerere.</translation>
    </message>
    <message>
        <source>3. The tip: keep its length, let more or less of it sink; then its weight.</source>
        <translation>3. Die Spitze: Länge behalten, mehr oder weniger davon sinken lassen; dann ihr Gewicht.</translation>
    </message>
    <message>
        <source>What I changed, and what happened</source>
        <translation>Was ich geändert habe und was geschah</translation>
    </message>
    <message>
        <source>%1: the name should end in .pdf, .png or .svg</source>
        <translation>%1: der Name soll auf .pdf, .png oder .svg enden</translation>
    </message>
    <message>
        <source>Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Ruten leiten Strom: weg von Stromleitungen, und bei Gewitter aufhören.</translation>
    </message>
    <message>
        <source>Cut sheet: %1</source>
        <translation>Zuschnitt: %1</translation>
    </message>
    <message>
        <source>%1. Marks run from one end of each spool; each spool to its own scale.</source>
        <translation>%1. Die Marken zählen von einem Ende jeder Spule; jede Spule im eigenen Maßstab.</translation>
    </message>
    <message>
        <source>Blades cut and heat burns: cut away from yourself, weld with the window open, wear glasses when you test a knot or loop.</source>
        <translation>Klingen schneiden, Hitze verbrennt: vom Körper weg schneiden, bei offenem Fenster verschweißen, Brille auf, wenn ein Knoten oder eine Schlaufe geprüft wird.</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <translation>%1, Seite %2 von %3</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>the rig %1</source>
        <translation>die Montage %1</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>eine Montage</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>rods of line: %1</source>
        <translation>Rutenlängen Schnur: %1</translation>
    </message>
    <message>
        <source>of the head: %1</source>
        <translation>vom Kopf: %1</translation>
    </message>
    <message>
        <source>in %1–%2: %3</source>
        <translation>in %1–%2: %3</translation>
    </message>
    <message>
        <source>the wet fly</source>
        <translation>die nasse Fliege</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>it lies on the bed</source>
        <translation>sie liegt auf dem Grund</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>an der Oberfläche</translation>
    </message>
    <message>
        <source>nothing pulls it under</source>
        <translation>nichts zieht sie hinab</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1 down, an estimate</source>
        <translation>von %1 Tiefe, geschätzt</translation>
    </message>
    <message>
        <source>%1 on the way across; an estimate, of %2</source>
        <translation>%1 auf dem Weg herum; geschätzt, von %2</translation>
    </message>
    <message>
        <source>%1: the heaviest foot</source>
        <translation>%1: der schwerste Fuß</translation>
    </message>
    <message>
        <source>this card names no rig</source>
        <translation>diese Karte nennt keine Montage</translation>
    </message>
    <message>
        <source>Missing here:</source>
        <translation>Hier fehlt:</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>lands</source>
        <translation>landet</translation>
    </message>
    <message>
        <source>There is no cast to show of this rig.</source>
        <translation>Von dieser Montage gibt es keinen Wurf zu zeigen.</translation>
    </message>
    <message>
        <source>No water stated: give its depth and speed.</source>
        <translation>Kein Wasser angegeben: Tiefe und Strömung eintragen.</translation>
    </message>
    <message>
        <source>No fly of known weight yet.</source>
        <translation>Noch keine Fliege mit bekanntem Gewicht.</translation>
    </message>
    <message>
        <source>Still water: there is no swing.</source>
        <translation>Stehendes Wasser: es gibt keinen Swing.</translation>
    </message>
    <message>
        <source>Everything floats: it fishes on top.</source>
        <translation>Alles schwimmt: sie fischt an der Oberfläche.</translation>
    </message>
    <message>
        <source>The fly floats: it fishes on top.</source>
        <translation>Die Fliege schwimmt: sie fischt an der Oberfläche.</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>No rig.</source>
        <translation>Keine Montage.</translation>
    </message>
    <message>
        <source>not yet under</source>
        <translation>noch nicht unter Wasser</translation>
    </message>
    <message>
        <source>%1 of line under water, an estimate</source>
        <translation>%1 Schnur unter Wasser, eine Schätzung</translation>
    </message>
    <message>
        <source>%1 when the line comes tight; an estimate, of %2</source>
        <translation>%1, wenn die Schnur straff wird; eine Schätzung, von %2</translation>
    </message>
    <message>
        <source>%1 at its deepest; an estimate, of %2</source>
        <translation>%1 an der tiefsten Stelle; eine Schätzung, von %2</translation>
    </message>
    <message>
        <source>this card names no fly</source>
        <translation>diese Karte nennt keine Fliege</translation>
    </message>
    <message>
        <source>this card names no pool</source>
        <translation>diese Karte nennt keinen Pool</translation>
    </message>
    <message>
        <source>this card names no tip</source>
        <translation>diese Karte nennt keine Spitze</translation>
    </message>
    <message>
        <source>wanted, %1</source>
        <translation>gesucht, %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>From the back of the head</source>
        <translation>Vom hinteren Ende des Kopfes</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Wiegt</translation>
    </message>
    <message>
        <source>A foot at its rod end</source>
        <translation>Ein Fuß am Rutenende</translation>
    </message>
    <message>
        <source>A foot at its fly end</source>
        <translation>Ein Fuß am Fliegenende</translation>
    </message>
    <message>
        <source>Joint at</source>
        <translation>Übergang bei</translation>
    </message>
    <message>
        <source>Rod side</source>
        <translation>Rutenseite</translation>
    </message>
    <message>
        <source>Fly side</source>
        <translation>Fliegenseite</translation>
    </message>
    <message>
        <source>Mean of three feet before</source>
        <translation>Mittel der drei Fuß davor</translation>
    </message>
    <message>
        <source>Mean of three feet behind</source>
        <translation>Mittel der drei Fuß dahinter</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was er tut</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>Ein Fuß wiegt</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>Bis hierher</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Was es heißt</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Abrollen</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Wurfbewegung</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Fly ahead of the caster</source>
        <translation>Fliege vor dem Werfer</translation>
    </message>
    <message>
        <source>Fly above the water</source>
        <translation>Fliege über dem Wasser</translation>
    </message>
    <message>
        <source>Still moving</source>
        <translation>Noch in Bewegung</translation>
    </message>
    <message>
        <source>Lost to the air</source>
        <translation>An die Luft verloren</translation>
    </message>
    <message>
        <source>Lost to the fly</source>
        <translation>An die Fliege verloren</translation>
    </message>
    <message>
        <source>Fly downstream of the rod tip</source>
        <translation>Fliege stromab der Rutenspitze</translation>
    </message>
    <message>
        <source>Fly across</source>
        <translation>Fliege querab</translation>
    </message>
    <message>
        <source>Fly below the surface</source>
        <translation>Fliege unter der Oberfläche</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pool</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Schwache Strömung</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Übliche Strömung</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Starke Strömung</translation>
    </message>
    <message>
        <source>%1: fly from</source>
        <translation>%1: Fliege von</translation>
    </message>
    <message>
        <source>%1: to</source>
        <translation>%1: bis</translation>
    </message>
    <message>
        <source>%1: what it does</source>
        <translation>%1: was sie tut</translation>
    </message>
    <message>
        <source>Current on top</source>
        <translation>Strömung an der Oberfläche</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Fly from</source>
        <translation>Fliege von</translation>
    </message>
    <message>
        <source>Fly to</source>
        <translation>Fliege bis</translation>
    </message>
    <message>
        <source>How well it carries the fly (1: just)</source>
        <translation>Wie gut sie die Fliege trägt (1: gerade noch)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>What it repairs</source>
        <translation>Was sie behebt</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>From its end</source>
        <translation>Von ihrem Ende</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Schnur</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>Running lines</source>
        <translation>Runninglines</translation>
    </message>
    <message>
        <source>Extensions</source>
        <translation>Verlängerungen</translation>
    </message>
    <message>
        <source>Short heads</source>
        <translation>Kurze Köpfe</translation>
    </message>
    <message>
        <source>Fine-taper heads</source>
        <translation>Fein verjüngte Köpfe</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Lange Keulen</translation>
    </message>
    <message>
        <source>Intermediate and multi-density heads</source>
        <translation>Intermediate- und Multidensity-Köpfe</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Einhandschnüre</translation>
    </message>
    <message>
        <source>Level tips</source>
        <translation>Gleichmäßige Spitzen</translation>
    </message>
    <message>
        <source>Float/sink tips</source>
        <translation>Schwimm-/Sinkspitzen</translation>
    </message>
    <message>
        <source>Tapered tips</source>
        <translation>Verjüngte Spitzen</translation>
    </message>
    <message>
        <source>Intermediate tips</source>
        <translation>Intermediate-Spitzen</translation>
    </message>
    <message>
        <source>Floating fronts</source>
        <translation>Schwimmende Vorderteile</translation>
    </message>
    <message>
        <source>Coated leaders</source>
        <translation>Beschichtete Vorfächer</translation>
    </message>
    <message>
        <source>Leaders</source>
        <translation>Vorfächer</translation>
    </message>
    <message>
        <source>Tippets</source>
        <translation>Vorfachspitzen</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Fliegen</translation>
    </message>
    <message>
        <source>mono running line %1 in</source>
        <translation>Mono Runningline %1 in</translation>
    </message>
    <message>
        <source>coated running line %1 in</source>
        <translation>Runningline beschichtet %1 in</translation>
    </message>
    <message>
        <source>extension %1 ft, %2 gr/ft</source>
        <translation>Verlängerung %1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>short head %1</source>
        <translation>kurzer Kopf %1</translation>
    </message>
    <message>
        <source>fine-taper head %1</source>
        <translation>fein verjüngter Kopf %1</translation>
    </message>
    <message>
        <source>long belly %1</source>
        <translation>lange Keule %1</translation>
    </message>
    <message>
        <source>short head %1, intermediate</source>
        <translation>kurzer Kopf %1, Intermediate</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate</source>
        <translation>kurzer Kopf %1, schwimmend/Intermediate</translation>
    </message>
    <message>
        <source>short head %1, intermediate/sink</source>
        <translation>kurzer Kopf %1, Intermediate/sinkend</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate/sink</source>
        <translation>kurzer Kopf %1, schwimmend/Intermediate/sinkend</translation>
    </message>
    <message>
        <source>single-hand line #%1</source>
        <translation>Einhandschnur #%1</translation>
    </message>
    <message>
        <source>%1 ft, %2 gr/ft</source>
        <translation>%1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, none sinking, %2 gr/ft</source>
        <translation>%1 ft, schwimmend, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2/%3 sinking, %4 gr/ft</source>
        <translation>%1 ft, %2/%3 sinkend, %4 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, all sinking, %2 gr/ft</source>
        <translation>%1 ft, ganz sinkend, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2 ft sinking, %3 gr/ft</source>
        <translation>%1 ft, %2 ft sinkend, %3 gr/ft</translation>
    </message>
    <message>
        <source>#%1, %2 in/s</source>
        <translation>#%1, %2 in/s</translation>
    </message>
    <message>
        <source>%1 ft, intermediate, %2 gr/ft</source>
        <translation>%1 ft, Intermediate, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft floating front, %2 to %3 gr/ft</source>
        <translation>%1 ft schwimmendes Vorderteil, %2 bis %3 gr/ft</translation>
    </message>
    <message>
        <source>coated leader %1 ft, light, %2 in/s</source>
        <translation>beschichtetes Vorfach %1 ft, leicht, %2 in/s</translation>
    </message>
    <message>
        <source>coated leader %1 ft, heavy, %2 in/s</source>
        <translation>beschichtetes Vorfach %1 ft, schwer, %2 in/s</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 in nylon</source>
        <translation>Vorfach %1 ft, Nylon %2 in</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 to %3 in nylon</source>
        <translation>Vorfach %1 ft, Nylon %2 bis %3 in</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in nylon</source>
        <translation>Vorfachspitze %1 ft, Nylon %2 in</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in fluorocarbon</source>
        <translation>Vorfachspitze %1 ft, Fluorocarbon %2 in</translation>
    </message>
    <message>
        <source>Dry fly #%1</source>
        <translation>Trockenfliege #%1</translation>
    </message>
    <message>
        <source>Bushy dry fly #%1</source>
        <translation>Buschige Trockenfliege #%1</translation>
    </message>
    <message>
        <source>Deer-hair skater #%1</source>
        <translation>Rehhaar-Skater #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1</source>
        <translation>Softhackle #%1</translation>
    </message>
    <message>
        <source>Low hairwing #%1</source>
        <translation>Flache Haarflügelfliege #%1</translation>
    </message>
    <message>
        <source>Small double #%1</source>
        <translation>Kleiner Doppelhaken #%1</translation>
    </message>
    <message>
        <source>Wet fly #%1</source>
        <translation>Nassfliege #%1</translation>
    </message>
    <message>
        <source>Beaded streamer #%1</source>
        <translation>Perlstreamer #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1, big and light</source>
        <translation>Softhackle #%1, groß und leicht</translation>
    </message>
    <message>
        <source>Shrimp #%1, long feelers</source>
        <translation>Garnele #%1, lange Fühler</translation>
    </message>
    <message>
        <source>Plastic tube, long wing</source>
        <translation>Plastiktube, langer Flügel</translation>
    </message>
    <message>
        <source>Winter wet fly %1/%2</source>
        <translation>Winternassfliege %1/%2</translation>
    </message>
    <message>
        <source>Leech, bead-chain eyes</source>
        <translation>Leech, Kettenaugen</translation>
    </message>
    <message>
        <source>Brass tube, sparse wing</source>
        <translation>Messingtube, schlanker Flügel</translation>
    </message>
    <message>
        <source>Leech, lead eyes %1/%2 oz</source>
        <translation>Leech, Bleiaugen %1/%2 oz</translation>
    </message>
    <message>
        <source>Big weighted streamer %1/%2</source>
        <translation>Großer beschwerter Streamer %1/%2</translation>
    </message>
    <message>
        <source>Compact cone-head #%1</source>
        <translation>Kompakter Konuskopf #%1</translation>
    </message>
    <message>
        <source>Fat tube fly %1/%2</source>
        <translation>Dicke Tubenfliege %1/%2</translation>
    </message>
    <message>
        <source>Double tungsten</source>
        <translation>Doppel-Tungsten</translation>
    </message>
</context>
<context>
    <name>StripWords</name>
    <message>
        <source>The running line stands first, behind the head.</source>
        <translation>Die Runningline steht zuerst, hinter dem Kopf.</translation>
    </message>
    <message>
        <source>A head stands between the running line and the tip.</source>
        <translation>Ein Kopf steht zwischen Runningline und Spitze.</translation>
    </message>
    <message>
        <source>A tip stands between the head and the leader.</source>
        <translation>Eine Spitze steht zwischen Kopf und Vorfach.</translation>
    </message>
    <message>
        <source>A leader stands between the tip and the tippet.</source>
        <translation>Ein Vorfach steht zwischen Spitze und Vorfachspitze.</translation>
    </message>
    <message>
        <source>A tippet stands between the leader and the fly.</source>
        <translation>Eine Vorfachspitze steht zwischen Vorfach und Fliege.</translation>
    </message>
    <message>
        <source>The fly stands at the end of the line.</source>
        <translation>Die Fliege steht am Ende der Schnur.</translation>
    </message>
    <message>
        <source>A line carries one fly: drop a new one on it to change it.</source>
        <translation>Eine Schnur trägt eine Fliege: eine neue darauf ziehen wechselt sie.</translation>
    </message>
    <message>
        <source>A line has one running line: drop a new one on it to change it.</source>
        <translation>Eine Schnur hat eine Runningline: eine neue darauf ziehen wechselt sie.</translation>
    </message>
    <message>
        <source>%1 parts are the most that a line can have: take one off first.</source>
        <translation>Mehr als %1 Teile kann eine Schnur nicht haben: zuerst eins abnehmen.</translation>
    </message>
    <message>
        <source>%1 head pieces are the most that a line can have: take one off first.</source>
        <translation>Mehr als %1 Kopfstücke kann eine Schnur nicht haben: zuerst eins abnehmen.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>Change to %1</source>
        <translation>Wechseln zu: %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Verschieben: %1</translation>
    </message>
</context>
<context>
    <name>WalletCard</name>
    <message>
        <source>Wallet: 1 tip</source>
        <translation>Etui: 1 Spitze</translation>
    </message>
    <message>
        <source>Wallet: %1 tips</source>
        <translation>Etui: %1 Spitzen</translation>
    </message>
    <message>
        <source>%1. Depths are estimates.</source>
        <translation>%1. Tiefen sind Schätzungen.</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <comment>slot, tip</comment>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1   (and a spare)</source>
        <comment>slot and tip</comment>
        <translation>%1   (und eine Reserve)</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>Fach %1</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>keine Spitze</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>fly: slot</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>fly and slot, depth</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 (watch)</source>
        <translation>%1 (Vorsicht)</translation>
    </message>
    <message>
        <source>Nothing serves</source>
        <translation>Nichts genügt</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Local rules on weighted lines and flies, lead, barbs and hooks decide, not this card. No guide to wading. Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Örtliche Regeln über beschwerte Schnüre und Fliegen, Blei, Widerhaken und Haken entscheiden, nicht diese Karte. Kein Maß fürs Waten. Ruten leiten Strom: Abstand zu Leitungen, bei Gewitter aufhören.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Etui</translation>
    </message>
    <message>
        <source>Cut out along the outer line and fold along the middle: %1.</source>
        <translation>An der äußeren Linie ausschneiden und in der Mitte falten: %1.</translation>
    </message>
    <message>
        <source>Cut out along the line: %1.</source>
        <translation>An der Linie ausschneiden: %1.</translation>
    </message>
    <message>
        <source>90 x 140 mm, 3.5 x 5.5 in</source>
        <translation>90 x 140 mm, 3,5 x 5,5 in</translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>this is a folder or a device, no file</source>
        <translation>das ist ein Ordner oder Gerät, keine Datei</translation>
    </message>
    <message>
        <source>the disk took only %1 of %2 bytes</source>
        <translation>der Datenträger nahm nur %1 von %2 Byte</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>the drag along the line</source>
        <translation>der Luftwiderstand der Schnur</translation>
    </message>
    <message>
        <source>the drag of the fly</source>
        <translation>der Luftwiderstand der Fliege</translation>
    </message>
    <message>
        <source>the line speed</source>
        <translation>die Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a figure, from, to</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1; the verdict hangs on %2</source>
        <comment>figure with range, an input</comment>
        <translation>%1; ausschlaggebend: %2</translation>
    </message>
    <message>
        <source>Cast: %1 line speed%2, a loop of %3, %4° up, rod tip %5 above the water.</source>
        <translation>Wurf: Schnurgeschwindigkeit %1%2, eine Schlaufe von %3, %4° aufwärts, Rutenspitze %5 über dem Wasser.</translation>
    </message>
    <message>
        <source> (a learner&apos;s, 20 % less)</source>
        <translation> (die eines Lernenden, 20 % weniger)</translation>
    </message>
    <message>
        <source>Reserve %1: line speed against the least that turns over%2.</source>
        <translation>Reserve %1: Schnurgeschwindigkeit gegen die kleinste, die noch abrollt%2.</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>Drive %1, least at %2 in %3.</source>
        <translation>Antrieb %1, am kleinsten bei %2 in: %3.</translation>
    </message>
    <message>
        <source>The last %1 coast on the speed they have.</source>
        <translation>Die letzten %1 laufen mit dem Schwung aus, den sie haben.</translation>
    </message>
    <message>
        <source>The fly stops on the way: no pace.</source>
        <translation>Die Fliege bleibt unterwegs stehen: kein Tempo.</translation>
    </message>
    <message>
        <source>Pace %1: the fly arrives at %2 after %3 s, %4 above the water.</source>
        <translation>Tempo %1: die Fliege kommt mit %2 nach %3 s an, %4 über dem Wasser.</translation>
    </message>
    <message>
        <source>The bare nylon keeps %1 of its speed%2.</source>
        <translation>Das blanke Nylon behält %1 seiner Geschwindigkeit%2.</translation>
    </message>
    <message>
        <source>: the fly is too bulky for this leader</source>
        <translation>: die Fliege ist zu voluminös für dieses Vorfach</translation>
    </message>
    <message>
        <source>Pace: under %1 dies, to %2 soft, to %3 firm, to %4 lively, beyond kicks (after a step up of over %5 from %3 on).</source>
        <translation>Tempo: unter %1 erlahmt es, bis %2 sanft, bis %3 bestimmt, bis %4 lebhaft, darüber schlägt es nach (nach einer Stufe aufwärts von über %5 ab %3).</translation>
    </message>
    <message>
        <source>A loop rolls down the line. Each foot that passes through it pulls with half its mass per foot times the square of the speed at which the legs part.</source>
        <translation>Eine Schlaufe rollt die Schnur entlang. Jeder Fuß, der durch sie läuft, zieht mit seiner halben Masse je Fuß mal dem Quadrat der Geschwindigkeit, mit der sich die Schenkel trennen.</translation>
    </message>
    <message>
        <source>Against that: the drag along the line still flying, the drag of the fly, and weight.</source>
        <translation>Dagegen stehen: der Luftwiderstand der noch fliegenden Schnur, der der Fliege und das Gewicht.</translation>
    </message>
    <message>
        <source>Drive = the least of pull / need over the front %1 of line that is not bare nylon.</source>
        <translation>Antrieb = kleinstes Verhältnis von Zug zu Bedarf auf den vorderen %1 der Schnur, die nicht blankes Nylon sind.</translation>
    </message>
    <message>
        <source>In brackets: drag along the line %1–%2, drag of the fly × or ÷ %3, line speed ± %4, each alone.</source>
        <translation>In Klammern: Luftwiderstand der Schnur %1–%2, Luftwiderstand der Fliege × oder ÷ %3, Schnurgeschwindigkeit ± %4, jedes für sich.</translation>
    </message>
    <message>
        <source>Reserve: under %1 lands in a heap, under %2 probably will not, under %3 marginal.</source>
        <translation>Reserve: unter %1 fällt sie in einem Haufen, unter %2 rollt sie wohl nicht ab, unter %3 knapp.</translation>
    </message>
    <message>
        <source>Drive: %1 and over carries, under %2 does not.</source>
        <translation>Antrieb: ab %1 trägt sie, unter %2 nicht.</translation>
    </message>
    <message>
        <source>Wind, the stroke and the caster are left out. The limits are ours.</source>
        <translation>Wind, Wurfbewegung und Werfer bleiben außen vor. Die Grenzen sind unsere eigenen.</translation>
    </message>
    <message>
        <source>Once it has swung round it hangs at %1: %2.</source>
        <translation>Wenn sie herum ist, hängt sie auf %1: %2.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. From real runs.</source>
        <translation>Vier von fünf Swings liegen in der Spanne; ihre Mitte ist %1. Aus echten Läufen.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. A live estimate.</source>
        <translation>Vier von fünf Swings liegen in der Spanne; ihre Mitte ist %1. Eine laufende Schätzung.</translation>
    </message>
    <message>
        <source>The last %1 of line are under water.</source>
        <translation>Die letzten %1 der Schnur sind unter Wasser.</translation>
    </message>
    <message>
        <source>The floating line ends %1 down.</source>
        <translation>Die schwimmende Schnur endet %1 tief.</translation>
    </message>
    <message>
        <source>No floating line takes up the pull: the rod holds the line, and raising the tip raises the fly.</source>
        <translation>Keine schwimmende Schnur nimmt den Zug auf: die Rute hält die Schnur, und wer die Rutenspitze hebt, hebt die Fliege.</translation>
    </message>
    <message>
        <source>Every piece of line is pushed by the current at its depth and pulled down by its weight in water; the shape is where all of them balance.</source>
        <translation>Jedes Stück Schnur wird von der Strömung in seiner Tiefe geschoben und von seinem Gewicht im Wasser hinabgezogen; die Form ist die, in der alles im Gleichgewicht ist.</translation>
    </message>
    <message>
        <source>A tip hangs far shallower than its sink rate for a fixed time would have it: the water planes it up.</source>
        <translation>Eine Spitze hängt viel flacher, als es ihre Sinkrate über eine feste Zeit erwarten ließe: das Wasser drückt sie nach oben.</translation>
    </message>
    <message>
        <source>The range covers the current ± %1, sink rates ± %2, drag ± %3, the fly&apos;s drag × or ÷ %4, the mend ± %5 s and the angle ± %6°.</source>
        <translation>Die Spanne umfasst Strömung ± %1, Sinkraten ± %2, Widerstand ± %3, Widerstand der Fliege × oder ÷ %4, den Mend ± %5 s und den Winkel ± %6°.</translation>
    </message>
    <message>
        <source>An even current and bed: seams, boulders and back eddies are left out.</source>
        <translation>Gleichmäßige Strömung und ebener Grund: Strömungskanten, Steine und Kehrwasser bleiben außen vor.</translation>
    </message>
    <message>
        <source>No verdict: how deep is right is for the day and you. The estimates are ours.</source>
        <translation>Kein Urteil: welche Tiefe richtig ist, entscheiden der Tag und der Fischer. Die Schätzungen sind unsere eigenen.</translation>
    </message>
    <message>
        <source>The rule is common practice, no source; the limits are ours.</source>
        <translation>Die Regel ist übliche Praxis ohne Quelle; die Grenzen sind unsere eigenen.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of grains, the second with unit</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Not yet: %1.</source>
        <translation>Noch nicht: %1.</translation>
    </message>
    <message>
        <source>%1, %2 into %3: %4. Ratio %5; right at the joint %6 to %7.</source>
        <translation>%1, %2 in %3: %4. Verhältnis %5; direkt am Übergang %6 auf %7.</translation>
    </message>
    <message>
        <source>A small pulse sends back %1 of itself at the joint in the tile. A whole loop loses nothing by that: no verdict follows.</source>
        <translation>Ein kleiner Impuls wirft am Übergang der Kachel %1 seiner selbst zurück. Eine ganze Schlaufe verliert dadurch nichts: daraus folgt kein Urteil.</translation>
    </message>
    <message>
        <source>Ratio = mean weight per foot of the %1 on the fly&apos;s side / that of the %1 on the rod&apos;s side. Where the line is shorter, what there is; loops are not counted.</source>
        <translation>Verhältnis = mittleres Gewicht je Fuß der %1 auf der Fliegenseite / der %1 auf der Rutenseite. Ist die Schnur kürzer, was da ist; Schlaufen zählen nicht.</translation>
    </message>
    <message>
        <source>A loop bends about five feet of line at once, so the last inch of a taper decides nothing.</source>
        <translation>Eine Schlaufe biegt etwa fünf Fuß Schnur auf einmal; der letzte Zoll einer Verjüngung entscheidet daher nichts.</translation>
    </message>
    <message>
        <source>Over %1 it hinges. %2–%1: unless slow and open. %3–%2: steps up, has to be forced.</source>
        <translation>Über %1 knickt es. %2–%1: außer bei langsamem, offenem Wurf. %3–%2: Stufe aufwärts, muss erzwungen werden.</translation>
    </message>
    <message>
        <source>%1–%2 runs level. %3–%1 is a smooth drop. Under %3 the front collapses.</source>
        <translation>%1–%2 läuft gleich durch. %3–%1 ist ein sanfter Abfall. Unter %3 fällt das Vorderteil zusammen.</translation>
    </message>
    <message>
        <source>Into more than %1 of bare nylon: %2 and over is stout enough, under %3 will pile.</source>
        <translation>In mehr als %1 blankes Nylon: ab %2 kräftig genug, unter %3 fällt es in einem Haufen.</translation>
    </message>
    <message>
        <source>Tips and coated leaders, loops included: %1. Head: %2.</source>
        <translation>Spitzen und beschichtete Vorfächer mit Schlaufen: %1. Kopf: %2.</translation>
    </message>
    <message>
        <source>Tip share: %1.</source>
        <translation>Spitzenanteil: %1.</translation>
    </message>
    <message>
        <source>Anchor, all that is between head and fly: %1 on a rod of %2, %3 rods.</source>
        <translation>Anker, alles zwischen Kopf und Fliege: %1 an einer Rute von %2, %3 Rutenlängen.</translation>
    </message>
    <message>
        <source>To lift: %1 of sinking line.</source>
        <translation>Anzuheben: %1 sinkende Schnur.</translation>
    </message>
    <message>
        <source>To lift: nothing sinks.</source>
        <translation>Anzuheben: nichts sinkt.</translation>
    </message>
    <message>
        <source>The trade&apos;s table names a ten-foot tip of %1 for a short head of these grains (common practice, no source). It is this rule with cliffs: a teaching line, not the verdict.</source>
        <translation>Die Tabelle des Handels nennt für einen kurzen Kopf dieses Gewichts eine Zehn-Fuß-Spitze von %1 (übliche Praxis, ohne Quelle). Es ist diese Regel mit Stufen: eine Merkzeile, nicht das Urteil.</translation>
    </message>
    <message>
        <source>Tip share = grains of tips and coated leaders / grains of the head.</source>
        <translation>Spitzenanteil = Grain der Spitzen und beschichteten Vorfächer / Grain des Kopfes.</translation>
    </message>
    <message>
        <source>Anchor = everything between head and fly / length of the rod: what the water can hold.</source>
        <translation>Anker = alles zwischen Kopf und Fliege / Länge der Rute: was das Wasser halten kann.</translation>
    </message>
    <message>
        <source>Tip share, short heads: under %1 no grip, to %2 light, to %3 right, to %4 heavy, beyond too much tip.</source>
        <translation>Spitzenanteil, kurze Köpfe: unter %1 kein Halt, bis %2 leicht, bis %3 richtig, bis %4 schwer, darüber zu viel Spitze.</translation>
    </message>
    <message>
        <source>Fine tapers and long bellies: up to %1, no lower limit.</source>
        <translation>Feine Verjüngungen und lange Keulen: bis %1, keine untere Grenze.</translation>
    </message>
    <message>
        <source>Anchor: under %1 rods too little in the water, %2–%3 good.</source>
        <translation>Anker: unter %1 Rutenlängen zu wenig im Wasser, %2–%3 gut.</translation>
    </message>
    <message>
        <source>The last %1 of line weigh %2, the wet fly %3: %4 times the fly.</source>
        <translation>Die letzten %1 der Schnur wiegen %2, die nasse Fliege %3: das %4-fache der Fliege.</translation>
    </message>
    <message>
        <source>The fly is as heavy as %1 of that line.</source>
        <translation>Die Fliege ist so schwer wie %1 dieser Schnur.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2.</source>
        <translation>Blankes Nylon: %1, %2.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2, %3 times the fly.</source>
        <translation>Blankes Nylon: %1, %2, das %3-fache der Fliege.</translation>
    </message>
    <message>
        <source>Fly = grains of the last %1 of line that is not bare nylon, loops not counted / grains of the wet fly.</source>
        <translation>Fliege = Grain der letzten %1 der Schnur, die nicht blankes Nylon sind, ohne Schlaufen / Grain der nassen Fliege.</translation>
    </message>
    <message>
        <source>A big fly that is light is not heavy; how bulky it is does not count here.</source>
        <translation>Eine große, leichte Fliege ist nicht schwer; wie voluminös sie ist, zählt hier nicht.</translation>
    </message>
    <message>
        <source>%1 and over: the tip carries it. %2–%1: heavy, slow and open stroke. Under %2: too heavy for this tip.</source>
        <translation>Ab %1: die Spitze trägt sie. %2–%1: schwer, langsam und offen werfen. Unter %2: zu schwer für diese Spitze.</translation>
    </message>
    <message>
        <source>With more than %1 of nylon, its grains against the fly too: %2 and over is fine, under %3 too heavy for this leader.</source>
        <translation>Bei mehr als %1 Nylon auch dessen Grain gegen die Fliege: ab %2 ist es gut, unter %3 zu schwer für dieses Vorfach.</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), one hand #%1: %2 over the first 30 ft, aim %3.</source>
        <translation>Zum Vergleich die Tabelle des Fachverbands (AFFTA), Einhand #%1: %2 auf den ersten 30 ft, Ziel %3.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>grains, at which length of line</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), two hands #%1: %2. No tolerance is published and no verdict follows.</source>
        <translation>Zum Vergleich die Tabelle des Fachverbands (AFFTA), Zweihand #%1: %2. Eine Toleranz ist nicht veröffentlicht, ein Urteil folgt nicht.</translation>
    </message>
    <message>
        <source>Window %1: ours, from the line number alone, since the rod states none.</source>
        <translation>Fenster %1: unseres, allein aus der Schnurklasse, da die Rute keines nennt.</translation>
    </message>
    <message>
        <source>Window %1: the rod&apos;s own.</source>
        <translation>Fenster %1: das der Rute.</translation>
    </message>
    <message>
        <source>Head, all its pieces: %1. With the tip: %2, of which the window does not speak.</source>
        <translation>Kopf, alle Stücke: %1. Mit der Spitze: %2, wovon das Fenster nicht spricht.</translation>
    </message>
    <message>
        <source>Working length: %1, %2 rods.</source>
        <translation>Arbeitslänge: %1, %2 Rutenlängen.</translation>
    </message>
    <message>
        <source>The 30 ft of head nearest the fly: %1.</source>
        <translation>Die 30 ft Kopf, die der Fliege am nächsten sind: %1.</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, by the style of head.</source>
        <translation>Die Grain auf einer Rute gelten allein für den Kopf, je nach Kopfart.</translation>
    </message>
    <message>
        <source>Working length = back of the head to the end of the tip, for a fine taper the head alone / length of the rod.</source>
        <translation>Arbeitslänge = Ende des Kopfes bis Ende der Spitze, bei feiner Verjüngung der Kopf allein / Länge der Rute.</translation>
    </message>
    <message>
        <source>Within %1 of the window it fits; to %2 a touch light or heavy; beyond, the wrong head for this rod.</source>
        <translation>Bis %1 neben dem Fenster passt er; bis %2 etwas leicht oder schwer; darüber der falsche Kopf für diese Rute.</translation>
    </message>
    <message>
        <source>Working length for this head: usual %1–%2 rods, limits %3–%4.</source>
        <translation>Arbeitslänge für diesen Kopf: üblich %1–%2 Rutenlängen, Grenzen %3–%4.</translation>
    </message>
    <message>
        <source>The rod maker&apos;s own figure comes first.</source>
        <translation>Die Angabe des Rutenherstellers geht vor.</translation>
    </message>
    <message>
        <source>%1 as timed</source>
        <translation>%1 wie gestoppt</translation>
    </message>
    <message>
        <source>%1, or %2 as timed,</source>
        <translation>%1, oder %2 wie gestoppt,</translation>
    </message>
    <message>
        <source>Round in %1 s, the mend included.</source>
        <translation>Herum in %1 s, der Mend eingerechnet.</translation>
    </message>
    <message>
        <source>On the bottom for %1 of the way across.</source>
        <translation>Auf %1 des Weges am Grund.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot at both ends of a tip, the second with unit</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>schwimmend</translation>
    </message>
    <message>
        <source>1/4 sinking</source>
        <translation>1/4 sinkend</translation>
    </message>
    <message>
        <source>1/2 sinking</source>
        <translation>1/2 sinkend</translation>
    </message>
    <message>
        <source>3/4 sinking</source>
        <translation>3/4 sinkend</translation>
    </message>
    <message>
        <source>%1 sinking</source>
        <comment>per cent of a tip</comment>
        <translation>%1 sinkend</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>style of a head, its grains: short head 525</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>mono %1</source>
        <comment>a nylon running line, its diameter</comment>
        <translation>Mono %1</translation>
    </message>
    <message>
        <source>running line %1</source>
        <comment>its diameter</comment>
        <translation>Runningline %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a fly, its mass with unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a fly, its grains: leech 33</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>kind of part, its length: leader 4 ft</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>short heads %1–%2</source>
        <translation>kurze Köpfe %1–%2</translation>
    </message>
    <message>
        <source>fine tapers %1–%2</source>
        <translation>feine Verjüngungen %1–%2</translation>
    </message>
    <message>
        <source>long bellies %1–%2</source>
        <translation>lange Keulen %1–%2</translation>
    </message>
    <message>
        <source>lines %1–%2</source>
        <translation>Schnüre %1–%2</translation>
    </message>
    <message>
        <source>heads %1–%2</source>
        <translation>Köpfe %1–%2</translation>
    </message>
    <message>
        <source>running line</source>
        <translation>Runningline</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>leader</source>
        <translation>Vorfach</translation>
    </message>
    <message>
        <source>tippet</source>
        <translation>Vorfachspitze</translation>
    </message>
    <message>
        <source>fly</source>
        <translation>Fliege</translation>
    </message>
    <message>
        <source>short head</source>
        <translation>kurzer Kopf</translation>
    </message>
    <message>
        <source>fine-taper head</source>
        <translation>fein verjüngter Kopf</translation>
    </message>
    <message>
        <source>long belly</source>
        <translation>lange Keule</translation>
    </message>
    <message>
        <source>one-hand line</source>
        <translation>Einhandschnur</translation>
    </message>
    <message>
        <source>extension</source>
        <translation>Verlängerung</translation>
    </message>
    <message>
        <source>level tip</source>
        <translation>gleichmäßige Spitze</translation>
    </message>
    <message>
        <source>float/sink tip</source>
        <translation>Schwimm-/Sinkspitze</translation>
    </message>
    <message>
        <source>tapered tip</source>
        <translation>verjüngte Spitze</translation>
    </message>
    <message>
        <source>plain leader</source>
        <translation>einfaches Vorfach</translation>
    </message>
    <message>
        <source>coated leader</source>
        <translation>beschichtetes Vorfach</translation>
    </message>
    <message>
        <source>fly, mass not known</source>
        <translation>Fliege, Masse nicht bekannt</translation>
    </message>
    <message>
        <source>fly, %1 grams</source>
        <translation>Fliege, %1 Gramm</translation>
    </message>
    <message>
        <source>fly, %1 grains</source>
        <translation>Fliege, %1 Grain</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>kind of part, its length, its mass per length, for the ear</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 metres</source>
        <translation>%1 Meter</translation>
    </message>
    <message>
        <source>%1 feet</source>
        <translation>%1 Fuß</translation>
    </message>
    <message>
        <source>%1 grams a metre</source>
        <translation>%1 Gramm je Meter</translation>
    </message>
    <message>
        <source>%1 grains a foot</source>
        <translation>%1 Grain je Fuß</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>Rute</translation>
    </message>
    <message>
        <source>#%1</source>
        <comment>line number</comment>
        <translation>#%1</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>Einhand</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 tief</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a pool, its water</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <comment>so many times</comment>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a length of line, the rod&apos;s length with unit</comment>
        <translation>%1 zu %2</translation>
    </message>
    <message>
        <source>no joint yet: add a tip or leader</source>
        <translation>noch kein Übergang: Spitze oder Vorfach anfügen</translation>
    </message>
    <message>
        <source>no rule for a one-hand line</source>
        <translation>keine Regel für eine Einhandschnur</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>grains of the tip, of the head with unit</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>no rule for this head</source>
        <translation>keine Regel für diesen Kopf</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>grains of line, of the fly with unit</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>no line to carry it yet</source>
        <translation>noch keine Schnur, die sie trägt</translation>
    </message>
    <message>
        <source>in %1–%2</source>
        <comment>a head&apos;s grains in the rod&apos;s window</comment>
        <translation>in %1–%2</translation>
    </message>
    <message>
        <source>for %1–%2</source>
        <comment>a head&apos;s grains outside the window</comment>
        <translation>für %1–%2</translation>
    </message>
    <message>
        <source>no line in the water yet</source>
        <translation>noch keine Schnur im Wasser</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of depth</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>the depth of the water with unit</comment>
        <translation>von %1</translation>
    </message>
    <message>
        <source>the coated leader</source>
        <translation>das beschichtete Vorfach</translation>
    </message>
    <message>
        <source>the head</source>
        <translation>der Kopf</translation>
    </message>
    <message>
        <source>the tip</source>
        <translation>die Spitze</translation>
    </message>
    <message>
        <source>the leader</source>
        <translation>das Vorfach</translation>
    </message>
    <message>
        <source>the tippet</source>
        <translation>die Vorfachspitze</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>die Schnur</translation>
    </message>
    <message>
        <source>%1 does not carry the fly: more mass per foot there, or a smaller fly</source>
        <translation>%1 trägt die Fliege nicht: mehr Masse je Fuß dort oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>%1 only just carries the fly: a smaller fly, or more mass per foot there</source>
        <translation>%1 trägt die Fliege nur knapp: eine kleinere Fliege oder mehr Masse je Fuß dort</translation>
    </message>
    <message>
        <source>The fly is too heavy for this tip: a denser tip or a lighter fly</source>
        <translation>Die Fliege ist zu schwer für diese Spitze: eine dichtere Spitze oder eine leichtere Fliege</translation>
    </message>
    <message>
        <source>The fly is heavy for this tip: a slow, open stroke</source>
        <translation>Die Fliege ist schwer für diese Spitze: langsam und offen werfen</translation>
    </message>
    <message>
        <source>Will land in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Fällt in einem Haufen: mehr Schnurgeschwindigkeit, ein kürzeres Vorfach oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>Probably will not turn over: more line speed, a shorter leader or a smaller fly</source>
        <translation>Rollt wohl nicht ab: mehr Schnurgeschwindigkeit, ein kürzeres Vorfach oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>Turns over with little speed to spare: a clean stroke, or a shorter leader</source>
        <translation>Rollt mit wenig Reserve ab: eine saubere Wurfbewegung oder ein kürzeres Vorfach</translation>
    </message>
    <message>
        <source>Turns over with speed to spare</source>
        <translation>Rollt mit Reserve ab</translation>
    </message>
    <message>
        <source>Turnover is read once there is a head</source>
        <translation>Das Abrollen wird gelesen, sobald ein Kopf da ist</translation>
    </message>
    <message>
        <source>Turnover is read once there is a fly</source>
        <translation>Das Abrollen wird gelesen, sobald eine Fliege da ist</translation>
    </message>
    <message>
        <source>Turnover is read once the fly has a mass</source>
        <translation>Das Abrollen wird gelesen, sobald die Fliege eine Masse hat</translation>
    </message>
    <message>
        <source>Too little line in front of the loop to read a turnover</source>
        <translation>Zu wenig Schnur vor der Schlaufe, um ein Abrollen zu lesen</translation>
    </message>
    <message>
        <source>Over 300 ft from the rod tip: no turnover is read</source>
        <translation>Über 300 ft von der Rutenspitze: kein Abrollen wird gelesen</translation>
    </message>
    <message>
        <source>The line is too slow for a loop: give the cast more line speed</source>
        <translation>Die Schnur ist zu langsam für eine Schlaufe: dem Wurf mehr Schnurgeschwindigkeit geben</translation>
    </message>
    <message>
        <source>Turns over and kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Rollt ab und schlägt nach: eine schwerere Fliege, ein längeres Vorfach oder eine leichtere Spitze</translation>
    </message>
    <message>
        <source>%1 carries the fly, and it turns over with speed to spare</source>
        <translation>%1 trägt die Fliege, und sie rollt mit Reserve ab</translation>
    </message>
    <message>
        <source>swings clear of the bottom</source>
        <translation>schwingt frei über dem Grund</translation>
    </message>
    <message>
        <source>near the bottom</source>
        <translation>nah am Grund</translation>
    </message>
    <message>
        <source>touches the bottom</source>
        <translation>streift den Grund</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>liegt auf dem Grund</translation>
    </message>
    <message>
        <source>still water: no swing</source>
        <translation>stehendes Wasser: kein Swing</translation>
    </message>
    <message>
        <source>all floats: it fishes on top</source>
        <translation>alles schwimmt: fischt an der Oberfläche</translation>
    </message>
    <message>
        <source>the fly floats: it fishes on top</source>
        <translation>die Fliege schwimmt: fischt an der Oberfläche</translation>
    </message>
    <message>
        <source>Touches the bottom for %1 of the swing.</source>
        <translation>Streift den Grund auf %1 des Swings.</translation>
    </message>
    <message>
        <source>Swings at %1, %2 deep after the mend.</source>
        <translation>Schwingt auf %1, %2 tief nach dem Mend.</translation>
    </message>
    <message>
        <source>Comes to rest on the bottom before it is round.</source>
        <translation>Bleibt auf dem Grund liegen, bevor sie herum ist.</translation>
    </message>
    <message>
        <source>Still not round at the end of the run.</source>
        <translation>Am Ende des Laufs noch nicht herum.</translation>
    </message>
    <message>
        <source>The run broke off: this line cannot be followed to the end.</source>
        <translation>Der Lauf brach ab: dieser Schnur lässt sich nicht bis zum Ende folgen.</translation>
    </message>
    <message>
        <source>Hangs at %1.</source>
        <translation>Hängt auf %1.</translation>
    </message>
    <message>
        <source>Round in %1 s.</source>
        <translation>Herum in %1 s.</translation>
    </message>
    <message>
        <source>hinges here: the %1 is heavier than the line behind it</source>
        <translation>knickt hier: %1 schwerer als die Schnur dahinter</translation>
    </message>
    <message>
        <source>hinges here unless the stroke is slow and open</source>
        <translation>knickt hier, außer bei langsamem, offenem Wurf</translation>
    </message>
    <message>
        <source>big drop here: the front collapses</source>
        <translation>großer Abfall hier: das Vorderteil fällt zusammen</translation>
    </message>
    <message>
        <source>into a short leader, no rule</source>
        <translation>in ein kurzes Vorfach, keine Regel</translation>
    </message>
    <message>
        <source>the butt of the leader is stout enough</source>
        <translation>das dicke Ende des Vorfachs ist kräftig genug</translation>
    </message>
    <message>
        <source>the butt of the leader is thin: a stouter one turns over better</source>
        <translation>das dicke Ende des Vorfachs ist dünn: ein kräftigeres rollt besser ab</translation>
    </message>
    <message>
        <source>fits, just under the window</source>
        <translation>passt, knapp unter dem Fenster</translation>
    </message>
    <message>
        <source>fits, just over the window</source>
        <translation>passt, knapp über dem Fenster</translation>
    </message>
    <message>
        <source>fits, at the light end</source>
        <translation>passt, am leichten Ende</translation>
    </message>
    <message>
        <source>fits, at the heavy end</source>
        <translation>passt, am schweren Ende</translation>
    </message>
    <message>
        <source>fits this rod</source>
        <translation>passt zu dieser Rute</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Knick</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Kopf zur Rute</translation>
    </message>
    <message>
        <source>Length on rod</source>
        <translation>Länge zur Rute</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Spitzenanteil</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anker</translation>
    </message>
    <message>
        <source>Fly</source>
        <translation>Fliege</translation>
    </message>
    <message>
        <source>Fly on leader</source>
        <translation>Fliege am Vorfach</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Abrollen</translation>
    </message>
    <message>
        <source>Depth, estimate</source>
        <translation>Tiefe, geschätzt</translation>
    </message>
    <message>
        <source>hinges here</source>
        <translation>knickt hier</translation>
    </message>
    <message>
        <source>hinges unless slow and open</source>
        <translation>knickt, außer langsam und offen</translation>
    </message>
    <message>
        <source>steps up: has to be forced</source>
        <translation>Stufe aufwärts: erzwingen</translation>
    </message>
    <message>
        <source>runs level</source>
        <translation>läuft gleich durch</translation>
    </message>
    <message>
        <source>smooth drop</source>
        <translation>sanfter Abfall</translation>
    </message>
    <message>
        <source>big drop: front collapses</source>
        <translation>großer Abfall: fällt zusammen</translation>
    </message>
    <message>
        <source>into the leader</source>
        <translation>in das Vorfach</translation>
    </message>
    <message>
        <source>stout enough butt</source>
        <translation>dickes Ende kräftig genug</translation>
    </message>
    <message>
        <source>thin butt</source>
        <translation>dickes Ende dünn</translation>
    </message>
    <message>
        <source>butt too thin: will pile</source>
        <translation>zu dünn: fällt in Haufen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot either side of a joint</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>figures of a joint: what they mean</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <comment>figures of a joint, their unit: what they mean</comment>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>steps up from the %1 by %2: %3</source>
        <comment>kind of part, ratio, verdict</comment>
        <translation>Stufe aufwärts um %2 nach: %1; %3</translation>
    </message>
    <message>
        <source>steps down from the %1 by %2: %3</source>
        <comment>kind of part, ratio, verdict</comment>
        <translation>Stufe abwärts um %2 nach: %1; %3</translation>
    </message>
    <message>
        <source>a touch light for this rod</source>
        <translation>etwas leicht für diese Rute</translation>
    </message>
    <message>
        <source>a touch heavy for this rod</source>
        <translation>etwas schwer für diese Rute</translation>
    </message>
    <message>
        <source>too light a head for this rod</source>
        <translation>zu leichter Kopf für diese Rute</translation>
    </message>
    <message>
        <source>too heavy a head for this rod</source>
        <translation>zu schwerer Kopf für diese Rute</translation>
    </message>
    <message>
        <source>usual for this rod</source>
        <translation>üblich für diese Rute</translation>
    </message>
    <message>
        <source>on the short side</source>
        <translation>eher kurz</translation>
    </message>
    <message>
        <source>on the long side</source>
        <translation>eher lang</translation>
    </message>
    <message>
        <source>too short for this rod</source>
        <translation>zu kurz für diese Rute</translation>
    </message>
    <message>
        <source>too long for this rod</source>
        <translation>zu lang für diese Rute</translation>
    </message>
    <message>
        <source>no grip: a heavier tip</source>
        <translation>kein Halt: schwerere Spitze</translation>
    </message>
    <message>
        <source>light: small flies</source>
        <translation>leicht: kleine Fliegen</translation>
    </message>
    <message>
        <source>right for this head</source>
        <translation>richtig für diesen Kopf</translation>
    </message>
    <message>
        <source>heavy: roll it up first</source>
        <translation>schwer: erst hochrollen</translation>
    </message>
    <message>
        <source>too much tip for this head</source>
        <translation>zu viel Spitze für den Kopf</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>zu wenig im Wasser</translation>
    </message>
    <message>
        <source>a short anchor</source>
        <translation>ein kurzer Anker</translation>
    </message>
    <message>
        <source>enough in the water</source>
        <translation>genug im Wasser</translation>
    </message>
    <message>
        <source>a long anchor</source>
        <translation>ein langer Anker</translation>
    </message>
    <message>
        <source>the tip carries it</source>
        <translation>die Spitze trägt sie</translation>
    </message>
    <message>
        <source>heavy: slow, open stroke</source>
        <translation>schwer: langsam, offen</translation>
    </message>
    <message>
        <source>too heavy for this tip</source>
        <translation>zu schwer für diese Spitze</translation>
    </message>
    <message>
        <source>the leader carries it</source>
        <translation>das Vorfach trägt sie</translation>
    </message>
    <message>
        <source>heavy for this leader</source>
        <translation>schwer für dieses Vorfach</translation>
    </message>
    <message>
        <source>too heavy for this leader</source>
        <translation>zu schwer für dieses Vorfach</translation>
    </message>
    <message>
        <source>drop a head on the line</source>
        <translation>Kopf auf die Schnur ziehen</translation>
    </message>
    <message>
        <source>drop a fly on the line</source>
        <translation>Fliege auf die Schnur ziehen</translation>
    </message>
    <message>
        <source>no rod yet: choose one</source>
        <translation>noch keine Rute: eine wählen</translation>
    </message>
    <message>
        <source>no rod length yet: type it</source>
        <translation>noch keine Rutenlänge: eintippen</translation>
    </message>
    <message>
        <source>say what style of head it is</source>
        <translation>Kopfart angeben</translation>
    </message>
    <message>
        <source>no water yet: choose a pool</source>
        <translation>noch kein Wasser: Pool wählen</translation>
    </message>
    <message>
        <source>give the rod a grain window</source>
        <translation>der Rute ein Fenster geben</translation>
    </message>
    <message>
        <source>weigh the fly and type it</source>
        <translation>Fliege wiegen und eintippen</translation>
    </message>
    <message>
        <source>drop a tip on the line</source>
        <translation>Spitze auf die Schnur ziehen</translation>
    </message>
    <message>
        <source>too little line to cast a loop</source>
        <translation>zu wenig Schnur für eine Schlaufe</translation>
    </message>
    <message>
        <source>over 300 ft of line: nobody casts that</source>
        <translation>über 300 ft Schnur: die wirft niemand</translation>
    </message>
    <message>
        <source>too slow for a loop: give more line speed</source>
        <translation>zu langsam für eine Schlaufe: mehr Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>Same stroke as the rig you opened</source>
        <translation>Wurfbewegung wie mit der geöffneten Montage</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, slower lift</source>
        <translation>Zeitmaß wie mit der geöffneten Montage, langsamer anheben</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, quicker lift</source>
        <translation>Zeitmaß wie mit der geöffneten Montage, schneller anheben</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened</source>
        <translation>Ein längerer Sweep als mit der geöffneten Montage</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, slower lift</source>
        <translation>Ein längerer Sweep als mit der geöffneten Montage, langsamer anheben</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, quicker lift</source>
        <translation>Ein längerer Sweep als mit der geöffneten Montage, schneller anheben</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened</source>
        <translation>Ein kürzerer Sweep als mit der geöffneten Montage</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, slower lift</source>
        <translation>Ein kürzerer Sweep als mit der geöffneten Montage, langsamer anheben</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, quicker lift</source>
        <translation>Ein kürzerer Sweep als mit der geöffneten Montage, schneller anheben</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened</source>
        <translation>Ein anderer Wurf als mit der geöffneten Montage</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, slower lift</source>
        <translation>Ein anderer Wurf als mit der geöffneten Montage, langsamer anheben</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, quicker lift</source>
        <translation>Ein anderer Wurf als mit der geöffneten Montage, schneller anheben</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>one fact, the next</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Measured: %1, give or take %2</source>
        <translation>Gemessen: %1, plus/minus %2</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Gemessen: %1</translation>
    </message>
    <message>
        <source>stated %1</source>
        <translation>angegeben %1</translation>
    </message>
    <message>
        <source>Timed: %1, give or take %2</source>
        <translation>Gestoppt: %1, plus/minus %2</translation>
    </message>
    <message>
        <source>Timed: %1</source>
        <translation>Gestoppt: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>Nennwert %1</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>touches the bottom for %1</source>
        <translation>berührt zu %1 den Grund</translation>
    </message>
    <message>
        <source>may touch the bottom</source>
        <translation>kann den Grund berühren</translation>
    </message>
    <message>
        <source>Turns over, but the fly arrives without life: more line speed or a smaller fly</source>
        <translation>Rollt ab, aber die Fliege kommt kraftlos an: mehr Schnurgeschwindigkeit oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>The fly is too bulky for this nylon: thicker or shorter nylon, or a smaller fly</source>
        <translation>Die Fliege ist zu voluminös für dieses Nylon: dickeres oder kürzeres Nylon oder eine kleinere Fliege</translation>
    </message>
    <message>
        <source>the line carries it</source>
        <translation>die Schnur trägt sie</translation>
    </message>
    <message>
        <source>too heavy for this line</source>
        <translation>zu schwer für diese Schnur</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Actions</name>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Open recent</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleich</translation>
    </message>
    <message>
        <source>C&amp;linic</source>
        <translation>&amp;Kurs</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Sample rigs</source>
        <translation>Beispielmontagen</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Über Grainwise</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>New, empty line</source>
        <translation>Neu, leere Schnur</translation>
    </message>
    <message>
        <source>Start from a rod…</source>
        <translation>Von einer Rute aus beginnen…</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Handout on paper…</source>
        <translation>Handout auf Papier…</translation>
    </message>
    <message>
        <source>Handout as PDF or picture…</source>
        <translation>Handout als PDF oder Bild…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Edit the part</source>
        <translation>Teil bearbeiten</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Move towards the rod</source>
        <translation>Zur Rute hin schieben</translation>
    </message>
    <message>
        <source>Alt+Left</source>
        <translation>Alt+Links</translation>
    </message>
    <message>
        <source>Move towards the fly</source>
        <translation>Zur Fliege hin schieben</translation>
    </message>
    <message>
        <source>Alt+Right</source>
        <translation>Alt+Rechts</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Name and notes…</source>
        <translation>Name und Notizen…</translation>
    </message>
    <message>
        <source>Rod…</source>
        <translation>Rute…</translation>
    </message>
    <message>
        <source>Water…</source>
        <translation>Wasser…</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Bauen</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pools</translation>
    </message>
    <message>
        <source>Pack a wallet…</source>
        <translation>Ein Etui packen…</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurf</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Fluss</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Tiefen in allen Pools</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Projektor</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Reduce motion</source>
        <translation>Weniger Bewegung</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>Copy this rig to the other</source>
        <translation>Diese Montage zur anderen kopieren</translation>
    </message>
    <message>
        <source>Fly to fly, or rear to rear</source>
        <translation>Fliege an Fliege oder Ende an Ende</translation>
    </message>
    <message>
        <source>One water, or each its own</source>
        <translation>Ein Wasser oder jede ihr eigenes</translation>
    </message>
    <message>
        <source>Card from this picture</source>
        <translation>Karte von diesem Bild</translation>
    </message>
    <message>
        <source>Show the deck</source>
        <translation>Kartensatz zeigen</translation>
    </message>
    <message>
        <source>Show from the chosen card</source>
        <translation>Ab der gewählten Karte zeigen</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Fuß und Zoll</translation>
    </message>
    <message>
        <source>Metres and millimetres</source>
        <translation>Meter und Millimeter</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Grain</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>Fahrenheit</source>
        <translation>Fahrenheit</translation>
    </message>
    <message>
        <source>Celsius</source>
        <translation>Celsius</translation>
    </message>
    <message>
        <source>Four cards a page on paper…</source>
        <translation>Vier Karten je Seite auf Papier…</translation>
    </message>
    <message>
        <source>Pictures and tables</source>
        <translation>Bilder und Tabellen</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Bild kopieren</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Autosave</name>
    <message>
        <source>the folder %1 could not be made</source>
        <translation>der Ordner %1 ließ sich nicht anlegen</translation>
    </message>
    <message>
        <source>nothing can be written in %1</source>
        <translation>in %1 lässt sich nichts schreiben</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BenchFace</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurf</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Fluss</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Tiefen in allen Pools</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Rute</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Name and notes</source>
        <translation>Name und Notizen</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pools</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Warum: %1</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Bauen</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Die Schnur</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Übergänge</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Was jeder Fuß wiegt</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Anzeigen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Block</name>
    <message>
        <source>Opens the part for editing</source>
        <translation>Öffnet das Teil zum Bearbeiten</translation>
    </message>
    <message>
        <source>Moves the part towards the fly</source>
        <translation>Schiebt das Teil zur Fliege hin</translation>
    </message>
    <message>
        <source>Moves the part towards the rod</source>
        <translation>Schiebt das Teil zur Rute hin</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardForm</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 (in the deck)</source>
        <translation>%1 (im Kartensatz)</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>unbenannte Montage</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Die Schnur</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Was jeder Fuß wiegt</translation>
    </message>
    <message>
        <source>The cast</source>
        <translation>Der Wurf</translation>
    </message>
    <message>
        <source>The river</source>
        <translation>Der Fluss</translation>
    </message>
    <message>
        <source>Two rigs compared</source>
        <translation>Zwei Montagen im Vergleich</translation>
    </message>
    <message>
        <source>Words alone</source>
        <translation>Nur Worte</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>The one line</source>
        <translation>Die eine Zeile</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Answer, on the next press</source>
        <translation>Antwort, beim nächsten Druck</translation>
    </message>
    <message>
        <source>Notes, for your screen only</source>
        <translation>Notizen, nur für den eigenen Bildschirm</translation>
    </message>
    <message>
        <source>What the card shows</source>
        <translation>Was die Karte zeigt</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Rig B</source>
        <translation>Montage B</translation>
    </message>
    <message>
        <source>Change title</source>
        <translation>Titel ändern</translation>
    </message>
    <message>
        <source>Change line</source>
        <translation>Zeile ändern</translation>
    </message>
    <message>
        <source>Change question</source>
        <translation>Frage ändern</translation>
    </message>
    <message>
        <source>Change answer</source>
        <translation>Antwort ändern</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Notizen ändern</translation>
    </message>
    <message>
        <source>Change picture</source>
        <translation>Bild ändern</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>File…</source>
        <translation>Datei…</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Take the bench&apos;s rig</source>
        <translation>Montage der Werkbank nehmen</translation>
    </message>
    <message>
        <source>Name a rig file</source>
        <translation>Montagedatei nennen</translation>
    </message>
    <message>
        <source>Take the rig out</source>
        <translation>Montage herausnehmen</translation>
    </message>
    <message>
        <source>Flies side by side</source>
        <translation>Fliegen nebeneinander</translation>
    </message>
    <message>
        <source>One rig in several pools</source>
        <translation>Eine Montage in mehreren Pools</translation>
    </message>
    <message>
        <source>Several tips on one rig</source>
        <translation>Mehrere Spitzen an einer Montage</translation>
    </message>
    <message>
        <source>Figures: where the rigs differ</source>
        <translation>Zahlen: worin sich die Montagen unterscheiden</translation>
    </message>
    <message>
        <source>No figures</source>
        <translation>Keine Zahlen</translation>
    </message>
    <message>
        <source>The wet fly&apos;s weight</source>
        <translation>Gewicht der nassen Fliege</translation>
    </message>
    <message>
        <source>The heaviest foot</source>
        <translation>Der schwerste Fuß</translation>
    </message>
    <message>
        <source>The worst joint</source>
        <translation>Der schlechteste Übergang</translation>
    </message>
    <message>
        <source>Tip share of the head</source>
        <translation>Spitzenanteil am Kopf</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Fliege zur Spitze</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Kopf zur Rute</translation>
    </message>
    <message>
        <source>Rods of line</source>
        <translation>Schnur in Rutenlängen</translation>
    </message>
    <message>
        <source>Range of the depth</source>
        <translation>Bereich der Tiefe</translation>
    </message>
    <message>
        <source>Depth when the line comes tight</source>
        <translation>Tiefe, wenn die Schnur straff wird</translation>
    </message>
    <message>
        <source>Greatest depth of the swing</source>
        <translation>Größte Tiefe des Swings</translation>
    </message>
    <message>
        <source>Depth on the way across</source>
        <translation>Tiefe auf dem Weg hinüber</translation>
    </message>
    <message>
        <source>Line under water</source>
        <translation>Schnur unter Wasser</translation>
    </message>
    <message>
        <source>Figures with the answer</source>
        <translation>Zahlen zur Antwort</translation>
    </message>
    <message>
        <source>Flies or tips</source>
        <translation>Fliegen oder Spitzen</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pools</translation>
    </message>
    <message>
        <source>Change figures</source>
        <translation>Zahlen ändern</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, where it comes from</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Add the fly or the tip that is on the bench</source>
        <translation>Die Fliege oder Spitze der Werkbank hinzufügen</translation>
    </message>
    <message>
        <source>Take the pools of the bench</source>
        <translation>Die Pools der Werkbank nehmen</translation>
    </message>
    <message>
        <source>Add the bench&apos;s part</source>
        <translation>Teil der Werkbank hinzufügen</translation>
    </message>
    <message>
        <source>Take the parts out</source>
        <translation>Die Teile herausnehmen</translation>
    </message>
    <message>
        <source>Take the bench&apos;s pools</source>
        <translation>Pools der Werkbank nehmen</translation>
    </message>
    <message>
        <source>Take the pools out</source>
        <translation>Die Pools herausnehmen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, its name</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardView</name>
    <message>
        <source>The card as the class sees it</source>
        <translation>Die Karte, wie die Klasse sie sieht</translation>
    </message>
    <message>
        <source>On the card</source>
        <translation>Auf der Karte</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Weighs (%1)</source>
        <translation>Wiegt (%1)</translation>
    </message>
    <message>
        <source>How deep the fly is</source>
        <translation>Wie tief die Fliege ist</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Schnur</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pool</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pool, how deep</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastFeed</name>
    <message>
        <source>The figures of this rig are too far out to follow its loop</source>
        <translation>Die Zahlen dieser Montage liegen zu weit außerhalb, um ihrer Schlaufe zu folgen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastPanel</name>
    <message>
        <source>real time</source>
        <translation>Echtzeit</translation>
    </message>
    <message>
        <source>1/2</source>
        <translation>1/2</translation>
    </message>
    <message>
        <source>1/4</source>
        <translation>1/4</translation>
    </message>
    <message>
        <source>1/10</source>
        <translation>1/10</translation>
    </message>
    <message>
        <source>Where you cast for real: eyes covered, hooks and power lines far from people and rod.</source>
        <translation>Wo wirklich geworfen wird: Augen geschützt, Haken und Stromleitungen weit weg von Menschen und Rute.</translation>
    </message>
    <message>
        <source>A learner: 20 % less speed</source>
        <translation>Ein Lernender: 20 % langsamer</translation>
    </message>
    <message>
        <source>Line speed</source>
        <translation>Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Schlaufe</translation>
    </message>
    <message>
        <source>Upwards</source>
        <translation>Aufwärts</translation>
    </message>
    <message>
        <source>Rod tip</source>
        <translation>Rutenspitze</translation>
    </message>
    <message>
        <source>Air at</source>
        <translation>Luft mit</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Abwurfwinkel</translation>
    </message>
    <message>
        <source>The fly never comes round: the loop dies on the way.</source>
        <translation>Die Fliege kommt nie herum: die Schlaufe erlahmt unterwegs.</translation>
    </message>
    <message>
        <source>The line is on the water before it is out: more line speed, or aim higher.</source>
        <translation>Die Schnur liegt auf dem Wasser, bevor sie gestreckt ist: mehr Schnurgeschwindigkeit oder höher zielen.</translation>
    </message>
    <message>
        <source>Turns over after %1 s, %2 above the water.</source>
        <translation>Rollt nach %1 s ab, %2 über dem Wasser.</translation>
    </message>
    <message>
        <source>Usual cast and air</source>
        <translation>Üblicher Wurf, übliche Luft</translation>
    </message>
    <message>
        <source>Usual cast</source>
        <translation>Üblicher Wurf</translation>
    </message>
    <message>
        <source>Speed, loop, angle and rod tip as usual for this head, the air of %1</source>
        <translation>Geschwindigkeit, Schlaufe, Winkel und Rutenspitze wie für diesen Kopf üblich, die Luft von %1</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurf</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastView</name>
    <message>
        <source>The cast, seen from the side</source>
        <translation>Der Wurf, von der Seite gesehen</translation>
    </message>
    <message>
        <source>still moving</source>
        <translation>noch in Bewegung</translation>
    </message>
    <message>
        <source>lost to the air</source>
        <translation>an die Luft verloren</translation>
    </message>
    <message>
        <source>lost to the fly</source>
        <translation>an die Fliege verloren</translation>
    </message>
    <message>
        <source>An unrolling loop of %1 seconds.</source>
        <translation>Eine abrollende Schlaufe von %1 Sekunden.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>wird neu berechnet</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChoiceList</name>
    <message>
        <source>%1 (on)</source>
        <comment>a tip that is fitted</comment>
        <translation>%1 (dran)</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>tip, verdict: sentence</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Grades: %1</source>
        <translation>Noten: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChooserPanel</name>
    <message>
        <source>Looking through the shelf: %1</source>
        <translation>Sieht das Regal durch: %1</translation>
    </message>
    <message>
        <source>Pool to choose for</source>
        <translation>Pool, für den gewählt wird</translation>
    </message>
    <message>
        <source>Kind of tip</source>
        <translation>Art der Spitze</translation>
    </message>
    <message>
        <source>tips and coated leaders</source>
        <translation>Spitzen und beschichtete Vorfächer</translation>
    </message>
    <message>
        <source>tips only</source>
        <translation>nur Spitzen</translation>
    </message>
    <message>
        <source>coated leaders only</source>
        <translation>nur beschichtete Vorfächer</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>gleiche Wurfbewegung</translation>
    </message>
    <message>
        <source>hide refused</source>
        <translation>Verworfene verbergen</translation>
    </message>
    <message>
        <source>in the wallet</source>
        <translation>im Etui</translation>
    </message>
    <message>
        <source>Tips, the best first</source>
        <translation>Spitzen, die beste zuerst</translation>
    </message>
    <message>
        <source>the rig&apos;s own water, nothing wanted</source>
        <translation>das eigene Wasser der Montage, nichts gewünscht</translation>
    </message>
    <message>
        <source>Leave the pool</source>
        <translation>Den Pool verlassen</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Weiter zu %1</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Gewünscht %1.</translation>
    </message>
    <message>
        <source>Before another tip:</source>
        <translation>Vor einer anderen Spitze:</translation>
    </message>
    <message>
        <source>Put on %1</source>
        <translation>Anbringen: %1</translation>
    </message>
    <message>
        <source>Take the tip off</source>
        <translation>Spitze abnehmen</translation>
    </message>
    <message>
        <source>Fly to choose for</source>
        <translation>Fliege, für die gewählt wird</translation>
    </message>
    <message>
        <source>Only tips that keep the stroke of the rig as it stands</source>
        <translation>Nur Spitzen, die die Wurfbewegung der Montage lassen, wie sie ist</translation>
    </message>
    <message>
        <source>No wallet is packed yet</source>
        <translation>Noch ist kein Etui gepackt</translation>
    </message>
    <message>
        <source>no fly yet: pick one</source>
        <translation>noch keine Fliege: eine wählen</translation>
    </message>
    <message>
        <source>build a fly…</source>
        <translation>Fliege zusammenstellen…</translation>
    </message>
    <message>
        <source>Tie on %1</source>
        <translation>Anknoten: %1</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Map of the tips</source>
        <translation>Karte der Spitzen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ClinicFace</name>
    <message>
        <source>Decks (*.deck.json);;All files (*)</source>
        <translation>Kartensätze (*.deck.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>Die Änderungen an &quot;%1&quot; zuerst speichern?</translation>
    </message>
    <message>
        <source>Open a deck</source>
        <translation>Kartensatz öffnen</translation>
    </message>
    <message>
        <source>Save the deck</source>
        <translation>Kartensatz speichern</translation>
    </message>
    <message>
        <source>A rig in the deck&apos;s folder</source>
        <translation>Eine Montage im Ordner des Kartensatzes</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json)</source>
        <translation>Montagen (*.rig.json)</translation>
    </message>
    <message>
        <source>Title of the deck</source>
        <translation>Titel des Kartensatzes</translation>
    </message>
    <message>
        <source>Cards of the deck</source>
        <translation>Karten des Kartensatzes</translation>
    </message>
    <message>
        <source>With its answer</source>
        <translation>Mit ihrer Antwort</translation>
    </message>
    <message>
        <source>Screen for the class</source>
        <translation>Bildschirm für die Klasse</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Card from the bench</source>
        <translation>Karte von der Werkbank</translation>
    </message>
    <message>
        <source>Blank card</source>
        <translation>Leere Karte</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hinauf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Hinab</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Show (F5)</source>
        <translation>Zeigen (F5)</translation>
    </message>
    <message>
        <source>From this card (Shift+F5)</source>
        <translation>Ab dieser Karte (Umschalt+F5)</translation>
    </message>
    <message>
        <source>Duplicate card</source>
        <translation>Karte verdoppeln</translation>
    </message>
    <message>
        <source>Delete card</source>
        <translation>Karte löschen</translation>
    </message>
    <message>
        <source>Move card</source>
        <translation>Karte verschieben</translation>
    </message>
    <message>
        <source>Add card</source>
        <translation>Karte hinzufügen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>no title yet</source>
        <translation>noch kein Titel</translation>
    </message>
    <message>
        <source>Card %1: %2</source>
        <translation>Karte %1: %2</translation>
    </message>
    <message>
        <source>Save the deck first: rig files are named from its folder on.</source>
        <translation>Zuerst den Kartensatz speichern: Montagedateien werden von seinem Ordner aus benannt.</translation>
    </message>
    <message>
        <source>%1 lies outside the deck&apos;s folder: copy it there, or take it from the bench into the deck.</source>
        <translation>%1 liegt außerhalb des Ordners des Kartensatzes: dorthin kopieren oder von der Werkbank in den Kartensatz nehmen.</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>%1, %2 × %3</source>
        <translation>%1, %2 × %3</translation>
    </message>
    <message>
        <source>A deck is being shown</source>
        <translation>Ein Kartensatz wird gezeigt</translation>
    </message>
    <message>
        <source>A card a page, with its answer and the notes…</source>
        <translation>Eine Karte je Seite, mit Antwort und Notizen…</translation>
    </message>
    <message>
        <source>Four cards a page, with lines to write on…</source>
        <translation>Vier Karten je Seite, mit Zeilen zum Schreiben…</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ClinicHost</name>
    <message>
        <source>Clinic</source>
        <translation>Kurs</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareChart</name>
    <message>
        <source>What each foot weighs, of A and of B</source>
        <translation>Was jeder Fuß von A und von B wiegt</translation>
    </message>
    <message>
        <source>Left and Right move the cursor by half a foot, with Shift by a tenth</source>
        <translation>Links und Rechts bewegen den Zeiger um einen halben Fuß, mit Umschalt um ein Zehntel</translation>
    </message>
    <message>
        <source>%1 %2 to the fly</source>
        <translation>%1 %2 bis zur Fliege</translation>
    </message>
    <message>
        <source>both alike</source>
        <translation>beide gleich</translation>
    </message>
    <message>
        <source>B %1 heavier</source>
        <translation>B %1 schwerer</translation>
    </message>
    <message>
        <source>B %1 lighter</source>
        <translation>B %1 leichter</translation>
    </message>
    <message>
        <source>%1: A %2, B %3 %4, %5</source>
        <translation>%1: A %2, B %3 %4, %5</translation>
    </message>
    <message>
        <source>%1: no line of either here</source>
        <translation>%1: hier liegt von beiden keine Schnur</translation>
    </message>
    <message>
        <source>%1: B %2 %3, A has no line here</source>
        <translation>%1: B %2 %3, A hat hier keine Schnur</translation>
    </message>
    <message>
        <source>%1: A %2 %3, B has no line here</source>
        <translation>%1: A %2 %3, B hat hier keine Schnur</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareFace</name>
    <message>
        <source>Copy %1 to %2</source>
        <translation>%1 nach %2 kopieren</translation>
    </message>
    <message>
        <source>Take the water of %1</source>
        <translation>Wasser von %1 nehmen</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurf</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Fluss</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A (X)</source>
        <translation>A wird B und B wird A (X)</translation>
    </message>
    <message>
        <source>Fly to fly</source>
        <translation>Fliege an Fliege</translation>
    </message>
    <message>
        <source>Lay the flies under each other instead of the rears of the heads</source>
        <translation>Die Fliegen untereinander legen statt der hinteren Enden der Köpfe</translation>
    </message>
    <message>
        <source>One water</source>
        <translation>Ein Wasser</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other</source>
        <translation>Beide fischen dasselbe Wasser: eine Änderung für eine gilt auch für die andere</translation>
    </message>
    <message>
        <source>Shelf, for %1</source>
        <translation>Regal, für %1</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>Teil von %1</translation>
    </message>
    <message>
        <source>Rod of %1</source>
        <translation>Rute von %1</translation>
    </message>
    <message>
        <source>Water of %1</source>
        <translation>Wasser von %1</translation>
    </message>
    <message>
        <source>Name and notes of %1</source>
        <translation>Name und Notizen von %1</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Versuchen: %1</translation>
    </message>
    <message>
        <source>What if %1 had this? Enter keeps it, Escape does not.</source>
        <translation>Was, wenn %1 das hätte? Eingabe behält es, Esc nicht.</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>Time (s)</source>
        <translation>Zeit (s)</translation>
    </message>
    <message>
        <source>Fly away from the rod (%1)</source>
        <translation>Fliege von der Rute entfernt (%1)</translation>
    </message>
    <message>
        <source>Fly above the water (%1)</source>
        <translation>Fliege über dem Wasser (%1)</translation>
    </message>
    <message>
        <source>The line of A</source>
        <translation>Die Schnur von A</translation>
    </message>
    <message>
        <source>The line of B</source>
        <translation>Die Schnur von B</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Übergänge</translation>
    </message>
    <message>
        <source>What each foot weighs, of A and of B</source>
        <translation>Was jeder Fuß wiegt, von A und von B</translation>
    </message>
    <message>
        <source>Readings of A and B</source>
        <translation>Anzeigen von A und B</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareHost</name>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 wurde nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CutDrawing</name>
    <message>
        <source>%1, %2 on the spool</source>
        <translation>%1, %2 auf der Spule</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>Short: %1</source>
        <translation>Es fehlen: %1</translation>
    </message>
    <message>
        <source>%1: %2 spools opened; by the lengths alone none opens fewer than %3</source>
        <translation>%1: %2 Spulen angebrochen; nach den Längen allein kommt nichts mit weniger als %3 aus</translation>
    </message>
    <message>
        <source>%1: tapered, bought whole</source>
        <translation>%1: verjüngt, wird im Ganzen gekauft</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>Labels. Rings: a long one counts 5 grains a foot, a short one 1; behind the gap, quarters that sink.</source>
        <translation>Etiketten. Ringe: ein langer zählt 5 Grain je Fuß, ein kurzer 1; hinter der Lücke die sinkenden Viertel.</translation>
    </message>
    <message>
        <source>all of it floats</source>
        <translation>schwimmt ganz</translation>
    </message>
    <message>
        <source>all of it sinks</source>
        <translation>sinkt ganz</translation>
    </message>
    <message>
        <source>%1 of it sink</source>
        <translation>%1 davon sinken</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what sinks; date</comment>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CutPage</name>
    <message>
        <source>Add a rig or shelf…</source>
        <translation>Montage oder Regal dazunehmen…</translation>
    </message>
    <message>
        <source>Only this rig</source>
        <translation>Nur diese Montage</translation>
    </message>
    <message>
        <source>Sheet and labels as PDF…</source>
        <translation>Plan und Etiketten als PDF…</translation>
    </message>
    <message>
        <source>Cut away from yourself; weld with the window open, hot coatings give off fumes; glasses on when you test a loop or knot.</source>
        <translation>Vom Körper weg schneiden; bei offenem Fenster verschweißen, heiße Beschichtung dampft; Brille auf, wenn eine Schlaufe oder ein Knoten geprüft wird.</translation>
    </message>
    <message>
        <source>Add a rig or shelf</source>
        <translation>Montage oder Regal dazunehmen</translation>
    </message>
    <message>
        <source>Rigs and shelves (*.rig.json *.shelf.json)</source>
        <translation>Montagen und Regale (*.rig.json *.shelf.json)</translation>
    </message>
    <message>
        <source>Cut sheet as PDF</source>
        <translation>Zuschnitt als PDF</translation>
    </message>
    <message>
        <source>cut-sheet.pdf</source>
        <translation>zuschnitt.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Dazugenommen: %1</translation>
    </message>
    <message>
        <source>No spools yet: read a list of spools, or write them down, on the Spools page.</source>
        <translation>Noch keine Spulen: auf der Seite Spulen eine Liste einlesen oder sie aufschreiben.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>Put loops on the tips</source>
        <translation>Spitzen mit Schlaufen versehen</translation>
    </message>
    <message>
        <source>Loops and knots</source>
        <translation>Schlaufen und Knoten</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Take the cuts off the spools</source>
        <translation>Schnitte von den Spulen abziehen</translation>
    </message>
    <message>
        <source>%1, without the open rig.</source>
        <translation>%1, ohne die offene Montage.</translation>
    </message>
    <message>
        <source>Nothing to cut: no tip, leader or tippet of level line is here.</source>
        <translation>Nichts zu schneiden: Hier ist keine Spitze, kein Vorfach und keine Vorfachspitze aus gleichmäßiger Schnur.</translation>
    </message>
    <message>
        <source>Taken off the spools; Undo on the Spools page puts it back.</source>
        <translation>Von den Spulen abgezogen; Rückgängig auf der Seite Spulen stellt es wieder her.</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Zuschnitt</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DeckDocument</name>
    <message>
        <source>not saved: %1</source>
        <translation>nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>the file that was there is kept; make room, or save elsewhere</source>
        <translation>die Datei, die dort war, bleibt; Platz schaffen oder anderswo speichern</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DepthMap</name>
    <message>
        <source>Map of the tips: depth against how well they carry the fly</source>
        <translation>Karte der Spitzen: Tiefe gegen die Frage, wie gut sie die Fliege tragen</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>carries the fly better →</source>
        <translation>trägt die Fliege besser →</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>one tip in words, all of them in words</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nothing to show yet.</source>
        <translation>Noch nichts zu zeigen.</translation>
    </message>
    <message>
        <source>%1 fit, %2 to be watched, %3 refused.</source>
        <comment>numbers of tips</comment>
        <translation>%1 passen, %2 mit Vorsicht, %3 verworfen.</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Gewünscht %1.</translation>
    </message>
    <message>
        <source>Best: %1, %2.</source>
        <comment>a tip, why</comment>
        <translation>Am besten: %1, %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tip: sentence</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DepthTablePanel</name>
    <message>
        <source>Depths of this rig in all pools</source>
        <translation>Tiefen dieser Montage in allen Pools</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of depth</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pool</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Schwache Strömung</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Übliche Strömung</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Starke Strömung</translation>
    </message>
    <message>
        <source>No pools yet: add one under Pools.</source>
        <translation>Noch keine Pools: unter Pools einen anlegen.</translation>
    </message>
    <message>
        <source>Live estimates. Low and high: %1 slower and faster than the pool states.</source>
        <translation>Laufende Schätzungen. Schwach und stark: %1 langsamer und schneller, als der Pool angibt.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Tiefen in allen Pools</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DifferenceList</name>
    <message>
        <source>In what B differs from A</source>
        <translation>Worin sich B von A unterscheidet</translation>
    </message>
    <message>
        <source>A and B are the same line. Change one of them, drag a part across, or try a part from the Shelf.</source>
        <translation>A und B sind dieselbe Schnur. Eine davon ändern, ein Teil hinüberziehen oder ein Teil aus dem Regal versuchen.</translation>
    </message>
    <message>
        <source>Changes no reading by itself</source>
        <translation>Ändert für sich keinen Wert</translation>
    </message>
    <message>
        <source>By itself no more than is known</source>
        <translation>Für sich nicht mehr, als man weiß</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Facts</source>
        <translation>Fakten</translation>
    </message>
    <message>
        <source>What it does by itself</source>
        <translation>Was er für sich tut</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditDesk</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditPanel</name>
    <message>
        <source>Changed for the class only: it is put back when you leave.</source>
        <translation>Nur für die Klasse geändert: beim Verlassen wird es zurückgestellt.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>A or B</comment>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FamilyRow</name>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>More tips of this length</source>
        <translation>Weitere Spitzen dieser Länge</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>an der Oberfläche</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <comment>how a tip differs → its depth</comment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>a tip, its stroke</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>on now</source>
        <translation>jetzt dran</translation>
    </message>
    <message>
        <source>slower lift</source>
        <translation>langsamer anheben</translation>
    </message>
    <message>
        <source>quicker lift</source>
        <translation>schneller anheben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tip: sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Same length:</source>
        <translation>Gleiche Länge:</translation>
    </message>
    <message>
        <source>Same length, sinking:</source>
        <translation>Gleiche Länge, sinkend:</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>or:</source>
        <translation>oder:</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FixesPanel</name>
    <message>
        <source>From the wallet, now</source>
        <translation>Aus dem Etui, sofort</translation>
    </message>
    <message>
        <source>At the bench, later</source>
        <translation>An der Werkbank, später</translation>
    </message>
    <message>
        <source>Wrong: %1. One change, and what it repairs:</source>
        <translation>Falsch: %1. Eine Änderung und was sie behebt:</translation>
    </message>
    <message>
        <source>Nothing is wrong. To be watched: %1.</source>
        <translation>Nichts ist falsch. Im Auge behalten: %1.</translation>
    </message>
    <message>
        <source>Nothing is wrong, and nothing is to be watched.</source>
        <translation>Nichts ist falsch, und auf nichts ist zu achten.</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>a change, what it repairs</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>nothing to do</source>
        <translation>nichts zu tun</translation>
    </message>
    <message>
        <source>no single change mends it</source>
        <translation>keine einzelne Änderung behebt es</translation>
    </message>
    <message>
        <source>To be watched: %1.</source>
        <translation>Zu beachten: %1.</translation>
    </message>
    <message>
        <source>nothing to try yet</source>
        <translation>noch nichts zu versuchen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FlyDrawing</name>
    <message>
        <source>10 mm</source>
        <translation>10 mm</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FlyPage</name>
    <message>
        <source>tungsten bead</source>
        <translation>Tungsten-Perle</translation>
    </message>
    <message>
        <source>solid tungsten</source>
        <translation>Tungsten, massiv</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>brass</source>
        <translation>Messing</translation>
    </message>
    <message>
        <source>tin</source>
        <translation>Zinn</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>New fly</source>
        <translation>Neue Fliege</translation>
    </message>
    <message>
        <source>Name of the fly</source>
        <translation>Name der Fliege</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Hakengröße</translation>
    </message>
    <message>
        <source>Metal of the beads</source>
        <translation>Metall der Perlen</translation>
    </message>
    <message>
        <source>Metal of the eyes</source>
        <translation>Metall der Augen</translation>
    </message>
    <message>
        <source>Metal of the wire</source>
        <translation>Metall des Drahts</translation>
    </message>
    <message>
        <source>sparse</source>
        <translation>schlank</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>bulky</source>
        <translation>voluminös</translation>
    </message>
    <message>
        <source>How bulky it is wet</source>
        <translation>Wie voluminös sie nass ist</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Beads</source>
        <translation>Perlen</translation>
    </message>
    <message>
        <source>Bead, mm</source>
        <translation>Perle, mm</translation>
    </message>
    <message>
        <source>Its hole, mm</source>
        <translation>Bohrung, mm</translation>
    </message>
    <message>
        <source>of</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>Eyes, gr</source>
        <translation>Augen, gr</translation>
    </message>
    <message>
        <source>Turns of wire</source>
        <translation>Drahtwindungen</translation>
    </message>
    <message>
        <source>Wire, mm</source>
        <translation>Draht, mm</translation>
    </message>
    <message>
        <source>Dressing, gr</source>
        <translation>Bindematerial, gr</translation>
    </message>
    <message>
        <source>Water, times dressing</source>
        <translation>Wasser, mal Material</translation>
    </message>
    <message>
        <source>Wet it is</source>
        <translation>Nass ist sie</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Auf die Schnur setzen</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Bei meinen Teilen aufheben</translation>
    </message>
    <message>
        <source>No fly</source>
        <translation>Keine Fliege</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet; %3</source>
        <translation>%1 trocken, %2 nass; %3</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>sinkt kopfüber</translation>
    </message>
    <message>
        <source>sinks level</source>
        <translation>sinkt waagerecht</translation>
    </message>
    <message>
        <source>Mind the point. An estimate: the scale knows better.</source>
        <translation>Vorsicht, die Hakenspitze. Eine Schätzung: die Waage weiß es besser.</translation>
    </message>
    <message>
        <source>Lead: gloves, away from food and children; where it is forbidden, tungsten or tin instead. </source>
        <translation>Blei: Handschuhe, fern von Lebensmitteln und Kindern; wo es verboten ist, Tungsten oder Zinn. </translation>
    </message>
    <message>
        <source>Tie on a new fly</source>
        <translation>Neue Fliege anknoten</translation>
    </message>
    <message>
        <source>My flies</source>
        <translation>Meine Fliegen</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <comment>a mass, its range</comment>
        <translation>%1 (%2–%3)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::HelpWindow</name>
    <message>
        <source>Help - Grainwise</source>
        <translation>Hilfe - Grainwise</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>In der Hilfe suchen</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Seiten der Hilfe</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>No page speaks of that.</source>
        <translation>Davon spricht keine Seite.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::JunctionTag</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LeaderPage</name>
    <message>
        <source>two-hand line</source>
        <translation>Zweihandschnur</translation>
    </message>
    <message>
        <source>single-hand line</source>
        <translation>Einhandschnur</translation>
    </message>
    <message>
        <source>sink tip</source>
        <translation>Sinkspitze</translation>
    </message>
    <message>
        <source>What the leader is tied to</source>
        <translation>Woran das Vorfach geknüpft wird</translation>
    </message>
    <message>
        <source>Tippet</source>
        <translation>Vorfachspitze</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>ein Stück</translation>
    </message>
    <message>
        <source>two pieces</source>
        <translation>zwei Stücke</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Line&apos;s tip, diameter</source>
        <translation>Schnurende, Durchmesser</translation>
    </message>
    <message>
        <source>Tippet&apos;s packet, lb</source>
        <translation>Tragkraft der Spitze, lb</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Auf die Schnur setzen</translation>
    </message>
    <message>
        <source>%1, %2X</source>
        <translation>%1, %2X</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>Nylon %1</translation>
    </message>
    <message>
        <source>fluoro %1</source>
        <translation>Fluoro %1</translation>
    </message>
    <message>
        <source>No leader</source>
        <translation>Kein Vorfach</translation>
    </message>
    <message>
        <source>No nylon or fluorocarbon on the spools: read or write down your spools on the Spools page.</source>
        <translation>Weder Nylon noch Fluorocarbon auf den Spulen: auf der Seite Spulen einlesen oder aufschreiben.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 pieces, %2, %3. %4.</source>
        <translation>%1 Stücke, %2, %3. %4.</translation>
    </message>
    <message>
        <source>Long behind a sink tip: the fly rides up.</source>
        <translation>Lang hinter einer Sinkspitze: die Fliege steigt auf.</translation>
    </message>
    <message>
        <source>Short: the fly follows the tip closely.</source>
        <translation>Kurz: die Fliege folgt der Spitze dicht.</translation>
    </message>
    <message>
        <source>A spool holds less than this takes.</source>
        <translation>Eine Spule gibt weniger her, als gebraucht wird.</translation>
    </message>
    <message>
        <source>Usual for the trade, not a rule. Glasses on when you test a knot.</source>
        <translation>Üblich, keine Regel. Brille auf, wenn ein Knoten geprüft wird.</translation>
    </message>
    <message>
        <source>%1X to %2X</source>
        <translation>%1X bis %2X</translation>
    </message>
    <message>
        <source>%1 to %2 lb</source>
        <translation>%1 bis %2 lb</translation>
    </message>
    <message>
        <source>For a hook of size %1 usually %2 of tippet. %3</source>
        <translation>Für einen Haken der Größe %1 üblich: Vorfachspitze %2. %3</translation>
    </message>
    <message>
        <source>Tie a new leader</source>
        <translation>Neues Vorfach knüpfen</translation>
    </message>
    <message>
        <source>cut %1, %2</source>
        <translation>Zuschnitt %1, %2</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a range with its unit</comment>
        <translation>%1–%2 %3</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Lens</name>
    <message>
        <source>The last six feet, magnified</source>
        <translation>Die letzten sechs Fuß, vergrößert</translation>
    </message>
    <message>
        <source>The last six feet, magnified: press or drag a part here as on the line</source>
        <translation>Die letzten sechs Fuß, vergrößert: hier klicken oder ein Teil ziehen wie auf der Schnur</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ListPage</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>mass, gr</source>
        <translation>Masse, gr</translation>
    </message>
    <message>
        <source>mass, g</source>
        <translation>Masse, g</translation>
    </message>
    <message>
        <source>mass with its unit</source>
        <translation>Masse mit Einheit</translation>
    </message>
    <message>
        <source>length, ft</source>
        <translation>Länge, ft</translation>
    </message>
    <message>
        <source>length, m</source>
        <translation>Länge, m</translation>
    </message>
    <message>
        <source>length with its unit</source>
        <translation>Länge mit Einheit</translation>
    </message>
    <message>
        <source>gr/ft</source>
        <translation>gr/ft</translation>
    </message>
    <message>
        <source>sinks, in/s</source>
        <translation>sinkt, in/s</translation>
    </message>
    <message>
        <source>sinking ft</source>
        <translation>sinkende ft</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Die Liste</translation>
    </message>
    <message>
        <source>Paste a list of tips or what the scale said, a line each:
name, mass gr, length ft
winter tip, 113.5, 10</source>
        <translation>Hier eine Liste von Spitzen einfügen oder was die Waage zeigte, je eine Zeile:
Name, Masse gr, Länge ft
Winterspitze, 113.5, 10</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>Aus einer Datei…</translation>
    </message>
    <message>
        <source>Keep them among my parts</source>
        <translation>Bei meinen Teilen aufheben</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Liste einlesen</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Listen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>This file is over 4 MB; a list is shorter.</source>
        <translation>Diese Datei ist über 4 MB groß; eine Liste ist kürzer.</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1 tips read.</source>
        <translation>%1 Spitzen gelesen.</translation>
    </message>
    <message>
        <source>%1 without a sink rate take the usual one of their class.</source>
        <translation>%1 ohne Sinkrate bekommen die übliche ihrer Klasse.</translation>
    </message>
    <message>
        <source>My tips</source>
        <translation>Meine Spitzen</translation>
    </message>
    <message>
        <source>%1 kept among my parts.</source>
        <translation>%1 bei meinen Teilen aufgehoben.</translation>
    </message>
    <message>
        <source>The lines as they will be read</source>
        <translation>Die Zeilen, wie sie gelesen werden</translation>
    </message>
    <message>
        <source>parted by commas</source>
        <translation>durch Kommas getrennt</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>durch Semikolons getrennt</translation>
    </message>
    <message>
        <source>parted by tabs</source>
        <translation>durch Tabulatoren getrennt</translation>
    </message>
    <message>
        <source>What parts the columns</source>
        <translation>Was die Spalten trennt</translation>
    </message>
    <message>
        <source>the first line names them</source>
        <translation>die erste Zeile benennt sie</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Lines left out: %1.</source>
        <translation>Ausgelassene Zeilen: %1.</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>wird zu</translation>
    </message>
    <message>
        <source>names</source>
        <translation>Namen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LoopHabits</name>
    <message>
        <source>no loops</source>
        <translation>keine Schlaufen</translation>
    </message>
    <message>
        <source>welded loops</source>
        <translation>geschweißte Schlaufen</translation>
    </message>
    <message>
        <source>sleeved loops</source>
        <translation>Schlaufen mit Hülse</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>geknotete Schlaufen</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Schlaufen der Spitzen</translation>
    </message>
    <message>
        <source>A loop takes</source>
        <translation>Eine Schlaufe braucht</translation>
    </message>
    <message>
        <source>A splice, each side</source>
        <translation>Ein Spleiß, je Seite</translation>
    </message>
    <message>
        <source>A knot, each side</source>
        <translation>Ein Knoten, je Seite</translation>
    </message>
    <message>
        <source>The knot at the fly</source>
        <translation>Der Knoten an der Fliege</translation>
    </message>
    <message>
        <source>Put the loops on the line</source>
        <translation>Schlaufen auf die Schnur setzen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MainWindow</name>
    <message>
        <source>Rigs and decks (*.rig.json *.deck.json);;All files (*)</source>
        <translation>Montagen und Kartensätze (*.rig.json *.deck.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>Die Änderungen an &quot;%1&quot; zuerst speichern?</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Montage speichern</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>A−</source>
        <translation>A−</translation>
    </message>
    <message>
        <source>A+</source>
        <translation>A+</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Open a rig</source>
        <translation>Montage öffnen</translation>
    </message>
    <message>
        <source>Handout into a file</source>
        <translation>Handout in eine Datei</translation>
    </message>
    <message>
        <source>Paper or picture (*.pdf *.png *.svg)</source>
        <translation>Papier oder Bild (*.pdf *.png *.svg)</translation>
    </message>
    <message>
        <source>No copy of unsaved work could be kept: %1</source>
        <translation>Von der ungespeicherten Arbeit ließ sich keine Kopie aufheben: %1</translation>
    </message>
    <message>
        <source>Own parts or spools that could not be read; the file stays as it is</source>
        <translation>Eigene Teile oder Spulen ließen sich nicht lesen; die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>Grainwise speaks the chosen language from its next start.</source>
        <translation>Grainwise spricht die gewählte Sprache ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>%1[*] (%2) - Grainwise</source>
        <translation>%1[*] (%2) - Grainwise</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>unbenannte Montage</translation>
    </message>
    <message>
        <source>Undo in %1</source>
        <translation>Rückgängig in %1</translation>
    </message>
    <message>
        <source>Redo in %1</source>
        <translation>Wiederholen in %1</translation>
    </message>
    <message>
        <source>Clear the list</source>
        <translation>Liste leeren</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>%1 is there already; choose it by its full name, or another one.</source>
        <translation>%1 gibt es dort schon; mit vollem Namen wählen oder einen anderen nehmen.</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Unsaved work on &quot;%1&quot; of %2 was kept.</source>
        <translation>Ungespeicherte Arbeit an &quot;%1&quot; vom %2 wurde aufgehoben.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>%1 is no longer there; saving puts it back.</source>
        <translation>%1 ist nicht mehr da; Speichern legt die Datei wieder an.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>%1 wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Open what it holds now</source>
        <translation>Öffnen, was sie jetzt enthält</translation>
    </message>
    <message>
        <source>Drop one rig file that is on this machine, or two to compare them.</source>
        <translation>Eine Montagedatei von diesem Rechner hierher ziehen, oder zwei, um sie zu vergleichen.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Über Grainwise</translation>
    </message>
    <message>
        <source>Grainwise %1: a workbench for building and balancing two-handed fly rigs.

Limits and verdicts are common practice or ours, never a rod maker&apos;s. Rod makers&apos; limits and a qualified instructor&apos;s advice come first.

Free software under the GNU GPL, version 3 or later. Uses Qt %2, Qt Charts, nlohmann/json and tl::expected.</source>
        <translation>Grainwise %1: eine Werkbank zum Bauen und Abstimmen von Montagen für die Zweihandrute.

Grenzen und Urteile sind übliche Praxis oder unsere eigenen, nie die eines Rutenherstellers. Die Grenzen der Rutenhersteller und der Rat eines ausgebildeten Wurflehrers gehen vor.

Freie Software unter der GNU GPL, Version 3 oder später. Verwendet Qt %2, Qt Charts, nlohmann/json und tl::expected.</translation>
    </message>
    <message>
        <source>Two rigs are compared at a time, one deck is shown: the other files were not opened.</source>
        <translation>Zwei Montagen werden verglichen, ein Kartensatz gezeigt: die anderen Dateien wurden nicht geöffnet.</translation>
    </message>
    <message>
        <source>The packed wallet</source>
        <translation>Das gepackte Etui</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MakePanel</name>
    <message>
        <source>Tasks at the bench</source>
        <translation>Arbeiten an der Werkbank</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>Spools</source>
        <translation>Spulen</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Tie a leader</source>
        <translation>Vorfach knüpfen</translation>
    </message>
    <message>
        <source>Dress a fly</source>
        <translation>Fliege binden</translation>
    </message>
    <message>
        <source>Trim, divide, name</source>
        <translation>Kürzen, teilen, bestimmen</translation>
    </message>
    <message>
        <source>Tub and river</source>
        <translation>Wanne und Fluss</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Meine Teile</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Liste einlesen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MeasurePage</name>
    <message>
        <source>In a tub: let a level piece sink and time it</source>
        <translation>In der Wanne: ein gleichmäßiges Stück sinken lassen und die Zeit nehmen</translation>
    </message>
    <message>
        <source>Piece that sinks</source>
        <translation>Sinkendes Stück</translation>
    </message>
    <message>
        <source>It falls</source>
        <translation>Es fällt</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Seconds, one or more: 3.2 3.3</source>
        <translation>Sekunden, eine oder mehrere: 3,2 3,3</translation>
    </message>
    <message>
        <source>Times in seconds</source>
        <translation>Zeiten in Sekunden</translation>
    </message>
    <message>
        <source>Take this rate</source>
        <translation>Diese Rate nehmen</translation>
    </message>
    <message>
        <source>Back to the rated one</source>
        <translation>Zurück zur angegebenen</translation>
    </message>
    <message>
        <source>Back to the rated sink</source>
        <translation>Zurück zur angegebenen Sinkrate</translation>
    </message>
    <message>
        <source>In the river: how deep was the fly?</source>
        <translation>Im Fluss: wie tief war die Fliege?</translation>
    </message>
    <message>
        <source>hanging below the rod</source>
        <translation>hängend unter der Rute</translation>
    </message>
    <message>
        <source>on the swing</source>
        <translation>im Swing</translation>
    </message>
    <message>
        <source>Where it was measured</source>
        <translation>Wo gemessen wurde</translation>
    </message>
    <message>
        <source>Depth of the fly</source>
        <translation>Tiefe der Fliege</translation>
    </message>
    <message>
        <source>Take this current</source>
        <translation>Diese Strömung nehmen</translation>
    </message>
    <message>
        <source>Back to the stated one</source>
        <translation>Zurück zur angegebenen</translation>
    </message>
    <message>
        <source>Measure where you stand safely; a snagged tip comes back fast.</source>
        <translation>Nur messen, wo man sicher steht; eine Spitze, die sich vom Hänger löst, kommt schnell zurück.</translation>
    </message>
    <message>
        <source>Back to the stated current</source>
        <translation>Zurück zur angegebenen Strömung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing on the line sinks by a rate.</source>
        <translation>Nichts auf der Schnur sinkt mit einer Rate.</translation>
    </message>
    <message>
        <source>Rated %1. Several falls make it surer.</source>
        <translation>Angegeben %1. Mehrere Fallzeiten machen es sicherer.</translation>
    </message>
    <message>
        <source>%1 at %4, give or take %2 (4 times in 5); rated %3.</source>
        <translation>%1 bei %4, auf %2 genau (in 4 von 5 Fällen); angegeben %3.</translation>
    </message>
    <message>
        <source> A deeper tub would say more.</source>
        <translation> Eine tiefere Wanne würde mehr sagen.</translation>
    </message>
    <message>
        <source>Take a timed sink rate</source>
        <translation>Gemessene Sinkrate nehmen</translation>
    </message>
    <message>
        <source>Fits a current of %1 at the surface, give or take %2; stated %3.</source>
        <translation>Passt zu einer Strömung von %1 an der Oberfläche, auf %2 genau; angegeben %3.</translation>
    </message>
    <message>
        <source>Take a measured current</source>
        <translation>Gemessene Strömung nehmen</translation>
    </message>
    <message>
        <source>The current that explains the depth is kept with the water and its pool, and narrows the range.</source>
        <translation>Die Strömung, die die Tiefe erklärt, bleibt beim Wasser und seinem Pool und engt die Spanne ein.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NamePanel</name>
    <message>
        <source>Name of the rig</source>
        <translation>Name der Montage</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Rename the rig</source>
        <translation>Montage umbenennen</translation>
    </message>
    <message>
        <source>Change the notes</source>
        <translation>Notizen ändern</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NoticeBar</name>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NumberField</name>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>über %1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>This is no number here; give %1.</source>
        <translation>Das ist hier keine Zahl; gebraucht wird: %1.</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1.</source>
        <translation>Außerhalb des Möglichen; gebraucht wird: %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a field, what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OutMenu</name>
    <message>
        <source>No picture or table is on screen</source>
        <translation>Kein Bild und keine Tabelle ist zu sehen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnPartsPage</name>
    <message>
        <source>Search my parts</source>
        <translation>In meinen Teilen suchen</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Meine Teile</translation>
    </message>
    <message>
        <source>Part of the line</source>
        <translation>Teil der Schnur</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Aufheben</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Auf die Schnur setzen</translation>
    </message>
    <message>
        <source>Copy it</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Read a shelf…</source>
        <translation>Regal einlesen…</translation>
    </message>
    <message>
        <source>Write them to a file…</source>
        <translation>In eine Datei schreiben…</translation>
    </message>
    <message>
        <source>From the line</source>
        <translation>Von der Schnur</translation>
    </message>
    <message>
        <source>Read a shelf</source>
        <translation>Regal einlesen</translation>
    </message>
    <message>
        <source>Shelves (*.shelf.json)</source>
        <translation>Regale (*.shelf.json)</translation>
    </message>
    <message>
        <source>Write my parts</source>
        <translation>Meine Teile schreiben</translation>
    </message>
    <message>
        <source>my-parts.shelf.json</source>
        <translation>meine-teile.shelf.json</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>None yet. Keep a part of the line, and it stands on the Shelf from now on.</source>
        <translation>Noch keine. Ein Teil der Schnur aufheben, und es steht von da an im Regal.</translation>
    </message>
    <message>
        <source>Kept in place of the old one.</source>
        <translation>Anstelle des alten aufgehoben.</translation>
    </message>
    <message>
        <source>Kept. It stands on the Shelf.</source>
        <translation>Aufgehoben. Es steht im Regal.</translation>
    </message>
    <message>
        <source>Removed %1; Undo brings it back.</source>
        <translation>%1 entfernt; Rückgängig holt es zurück.</translation>
    </message>
    <message>
        <source>There is no room for another one on the line.</source>
        <translation>Auf der Schnur ist kein Platz für ein weiteres.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>%1 added, %2 there already</source>
        <translation>%1 dazugelegt, %2 schon da</translation>
    </message>
    <message>
        <source>Written.</source>
        <translation>Geschrieben.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>The one on the line keeps the figures that it has.</source>
        <translation>Das Teil an der Schnur behält seine Werte.</translation>
    </message>
    <message>
        <source>Put this one in</source>
        <translation>Dieses einsetzen</translation>
    </message>
    <message>
        <source>Put the new %1 in</source>
        <translation>%1 neu einsetzen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnStore</name>
    <message>
        <source>%1 could not be written; it stays as it was. %2</source>
        <translation>%1 ließ sich nicht schreiben; die Datei bleibt, wie sie war. %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PairPanel</name>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Lets both go together, at a quarter of real time</source>
        <translation>Lässt beide zugleich los, in einem Viertel der Echtzeit</translation>
    </message>
    <message>
        <source>Both swing together, four times as fast as on the water</source>
        <translation>Beide schwingen zugleich, viermal so schnell wie auf dem Wasser</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>A model of the loop, without stroke, wind or stretch. Keep everyone out of the space behind you.</source>
        <translation>Ein Modell der Schlaufe, ohne Wurfbewegung, Wind und Dehnung. Den Raum hinter dem Werfer freihalten.</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Zahlen für die Schnur, kein Maß fürs Waten.</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PairView</name>
    <message>
        <source>The casts of A and B</source>
        <translation>Die Würfe von A und B</translation>
    </message>
    <message>
        <source>The swings of A and B</source>
        <translation>Die Swings von A und B</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>rechnet…</translation>
    </message>
    <message>
        <source>A: %1. B: %2</source>
        <translation>A: %1. B: %2</translation>
    </message>
    <message>
        <source>%1 (of before the change: working…)</source>
        <translation>%1 (vor der Änderung: rechnet…)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartDrawing</name>
    <message>
        <source>Drag it up onto the line, or press Enter</source>
        <translation>Hinauf auf die Schnur ziehen oder Eingabe drücken</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartEditor</name>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the part</source>
        <translation>Name des Teils</translation>
    </message>
    <message>
        <source>no style</source>
        <translation>keine Kopfart</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Kopfart</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Loop, rod end</source>
        <translation>Schlaufe, Rutenende</translation>
    </message>
    <message>
        <source>Loop, fly end</source>
        <translation>Schlaufe, Fliegenende</translation>
    </message>
    <message>
        <source>Weighed on</source>
        <translation>Gewogen am</translation>
    </message>
    <message>
        <source>Weighed on, year-month-day</source>
        <translation>Gewogen am, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Give the weighed mass first</source>
        <translation>Zuerst die gewogene Masse eingeben</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Nass</translation>
    </message>
    <message>
        <source>Bulk, cm²</source>
        <translation>Fläche, cm²</translation>
    </message>
    <message>
        <source>Density, g/cm³</source>
        <translation>Dichte, g/cm³</translation>
    </message>
    <message>
        <source>Hook</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Hakengröße</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>sinkt kopfüber</translation>
    </message>
    <message>
        <source>Add a section</source>
        <translation>Abschnitt anfügen</translation>
    </message>
    <message>
        <source>Choose a part on the line: click it, or use the arrow keys there.</source>
        <translation>Ein Teil der Schnur wählen: anklicken oder dort die Pfeiltasten nehmen.</translation>
    </message>
    <message>
        <source>Casts at %1 wet. Bulk and density count in the air and in the water; left empty they are taken as 1.5.</source>
        <translation>Wirft sich nass mit %1. Fläche und Dichte zählen in Luft und Wasser; bleiben sie leer, gilt 1,5.</translation>
    </message>
    <message>
        <source>%1, %2 to %3: weighs %4</source>
        <translation>%1, %2 bis %3: wiegt %4</translation>
    </message>
    <message>
        <source>, of it loops %1</source>
        <translation>, davon Schlaufen %1</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to what the scale said</source>
        <translation>; Abschnitte um %1 % auf den Wert der Waage gebracht</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to the label</source>
        <translation>; Abschnitte um %1 % auf das Etikett gebracht</translation>
    </message>
    <message>
        <source>sinks %1 here</source>
        <translation>sinkt hier %1</translation>
    </message>
    <message>
        <source>floats</source>
        <translation>schwimmt</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a figure at both ends of a section, the second with unit</comment>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PlayerBar</name>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>How fast it plays</source>
        <translation>Wie schnell es läuft</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolBook</name>
    <message>
        <source>make room, or save elsewhere</source>
        <translation>Platz schaffen oder anderswo speichern</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolsPanel</name>
    <message>
        <source>Pools (*.pools.json);;All files (*)</source>
        <translation>Pools (*.pools.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open pools</source>
        <translation>Pools öffnen</translation>
    </message>
    <message>
        <source>Save the pools</source>
        <translation>Pools speichern</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pools</translation>
    </message>
    <message>
        <source>Fish here</source>
        <translation>Hier fischen</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Weiter zu %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Oberflächenströmung</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>The fly is wanted</source>
        <translation>Die Fliege soll laufen</translation>
    </message>
    <message>
        <source>anywhere</source>
        <translation>irgendwo</translation>
    </message>
    <message>
        <source>off the bottom</source>
        <translation>über dem Grund</translation>
    </message>
    <message>
        <source>below the surface</source>
        <translation>unter der Oberfläche</translation>
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
        <source>Angle, degrees</source>
        <translation>Winkel, Grad</translation>
    </message>
    <message>
        <source>Slack, seconds</source>
        <translation>Lose Schnur, Sekunden</translation>
    </message>
    <message>
        <source>must be more than the first</source>
        <translation>muss mehr als die erste sein</translation>
    </message>
    <message>
        <source>New pool</source>
        <translation>Neuer Pool</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProblemPanel</name>
    <message>
        <source>The open rig is as it was.</source>
        <translation>Die offene Montage ist, wie sie war.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiteres</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProfileChart</name>
    <message>
        <source>g per metre</source>
        <translation>g je Meter</translation>
    </message>
    <message>
        <source>gr per foot</source>
        <translation>gr je Fuß</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 insgesamt</translation>
    </message>
    <message>
        <source>what the loop needs of each foot</source>
        <translation>was die Schlaufe von jedem Fuß braucht</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Was jeder Fuß wiegt</translation>
    </message>
    <message>
        <source>Left and Right move the line by half a foot, with Shift by a tenth</source>
        <translation>Links und Rechts bewegen die Linie um einen halben Fuß, mit Umschalt um ein Zehntel</translation>
    </message>
    <message>
        <source>nothing on the line yet</source>
        <translation>noch nichts auf der Schnur</translation>
    </message>
    <message>
        <source>%1: past the end of the line</source>
        <translation>%1: hinter dem Ende der Schnur</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the fly</source>
        <translation>%1: %2, bis hier %3, %4 bis zur Fliege</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the end</source>
        <translation>%1: %2, bis hier %3, %4 bis zum Ende</translation>
    </message>
    <message>
        <source>%1 of line, %2 in all, heaviest at %3 with %4. The cursor is at %5.</source>
        <translation>%1 Schnur, insgesamt %2, am schwersten bei %3 mit %4. Der Zeiger steht bei %5.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ReadingsTable</name>
    <message>
        <source>Readings of A and B</source>
        <translation>Werte von A und B</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Abrollen</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>nicht mehr, als man weiß</translation>
    </message>
    <message>
        <source>B turns over more easily</source>
        <translation>B rollt leichter ab</translation>
    </message>
    <message>
        <source>A turns over more easily</source>
        <translation>A rollt leichter ab</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>kein Unterschied</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Wurfbewegung</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>gleiche Wurfbewegung</translation>
    </message>
    <message>
        <source>%1: A %2, B %3, %4</source>
        <translation>%1: A %2, B %3, %4</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>depths from real swings</source>
        <translation>Tiefen aus echten Swings</translation>
    </message>
    <message>
        <source>swinging both…</source>
        <translation>beide schwingen…</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>A says</source>
        <translation>A sagt</translation>
    </message>
    <message>
        <source>B says</source>
        <translation>B sagt</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RigDocument</name>
    <message>
        <source>the file that is there is kept as it was; make room, or save elsewhere</source>
        <translation>die Datei dort bleibt, wie sie war; Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>nothing was written; make room, or save elsewhere</source>
        <translation>nichts wurde geschrieben; Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>not saved: %1</source>
        <translation>nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>another program has changed this file since it was opened</source>
        <translation>ein anderes Programm hat diese Datei geändert, seit sie geöffnet wurde</translation>
    </message>
    <message>
        <source>save again to put yours in its place, or save elsewhere</source>
        <translation>noch einmal speichern, um die eigene an ihre Stelle zu setzen, oder anderswo speichern</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverPanel</name>
    <message>
        <source>4 times</source>
        <translation>4-fach</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>Echtzeit</translation>
    </message>
    <message>
        <source>1/4</source>
        <translation>1/4</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>Der gelegten Schnur, unterhalb von gerade quer</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Mend</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>How long the line drifts free before it comes tight</source>
        <translation>Wie lange die Schnur frei treibt, bevor sie strafft</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Schnur draußen</translation>
    </message>
    <message>
        <source>From the rod tip to the fly</source>
        <translation>Von der Rutenspitze bis zur Fliege</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading: judge the water by your own eyes, with a staff, a belt and company.</source>
        <translation>Zahlen für die Schnur, kein Maß fürs Waten: das Wasser mit eigenen Augen beurteilen, mit Watstock, Gürtel und in Begleitung.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Tiefen in allen Pools</translation>
    </message>
    <message>
        <source>range of depth</source>
        <translation>Tiefenbereich</translation>
    </message>
    <message>
        <source>Swings tried for the range of depth</source>
        <translation>Für den Tiefenbereich gerechnete Swings</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Fluss</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverView</name>
    <message>
        <source>The swing, from the side and from above</source>
        <translation>Der Swing, von der Seite und von oben</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>A swing of %1 seconds, at the deepest %2.</source>
        <translation>Ein Swing von %1 Sekunden, am tiefsten %2.</translation>
    </message>
    <message>
        <source>Four swings out of five between %1 and %2.</source>
        <translation>Vier von fünf Swings zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>%1 s, drifting after the mend</source>
        <translation>%1 s, treibt nach dem Mend</translation>
    </message>
    <message>
        <source>%1 s, swinging</source>
        <translation>%1 s, schwingt</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>wird neu berechnet</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RodPanel</name>
    <message>
        <source>Short heads</source>
        <translation>Kurze Köpfe</translation>
    </message>
    <message>
        <source>Fine tapers</source>
        <translation>Feine Verjüngungen</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Lange Keulen</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Einhandschnüre</translation>
    </message>
    <message>
        <source>Rod length</source>
        <translation>Rutenlänge</translation>
    </message>
    <message>
        <source>Line number</source>
        <translation>Schnurklasse</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>Einhand</translation>
    </message>
    <message>
        <source>two hands</source>
        <translation>zwei Hände</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Style of head</source>
        <translation>Kopfart</translation>
    </message>
    <message>
        <source>Start a rig for this rod</source>
        <translation>Montage für diese Rute beginnen</translation>
    </message>
    <message>
        <source>Head, tip and leader from the Shelf; the fly is yours to choose. Undo brings the old rig back.</source>
        <translation>Kopf, Spitze und Vorfach aus dem Regal; die Fliege wählt man selbst. Rückgängig holt die alte Montage zurück.</translation>
    </message>
    <message>
        <source>Head to start with</source>
        <translation>Kopf für den Anfang</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Change the rod</source>
        <translation>Rute ändern</translation>
    </message>
    <message>
        <source>Both ends are needed.</source>
        <translation>Beide Enden werden gebraucht.</translation>
    </message>
    <message>
        <source>The upper end is below the lower one.</source>
        <translation>Das obere Ende liegt unter dem unteren.</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone. Without a window, ours for the line number is taken; the rod maker&apos;s figure comes first.</source>
        <translation>Die Grain auf einer Rute gelten allein für den Kopf. Ohne Fenster gilt unseres für die Schnurklasse; die Angabe des Rutenherstellers geht vor.</translation>
    </message>
    <message>
        <source>Start from the rod</source>
        <translation>Von der Rute aus beginnen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SectionRow</name>
    <message>
        <source>floats</source>
        <translation>schwimmt</translation>
    </message>
    <message>
        <source>sinks at a rate</source>
        <translation>sinkt mit einer Rate</translation>
    </message>
    <message>
        <source>has a density</source>
        <translation>hat eine Dichte</translation>
    </message>
    <message>
        <source>has a diameter</source>
        <translation>hat einen Durchmesser</translation>
    </message>
    <message>
        <source>is nylon</source>
        <translation>ist Nylon</translation>
    </message>
    <message>
        <source>is fluorocarbon</source>
        <translation>ist Fluorocarbon</translation>
    </message>
    <message>
        <source>level</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Wiegt</translation>
    </message>
    <message>
        <source>What is known of section %1</source>
        <translation>Was von Abschnitt %1 bekannt ist</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Cut this section in two halves that weigh the same together</source>
        <translation>Diesen Abschnitt in zwei Hälften teilen, die zusammen gleich viel wiegen</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>g/cm³</source>
        <translation>g/cm³</translation>
    </message>
    <message>
        <source>Take this section out</source>
        <translation>Diesen Abschnitt herausnehmen</translation>
    </message>
    <message>
        <source>A part has at least one section</source>
        <translation>Ein Teil hat mindestens einen Abschnitt</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Sinkt</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShelfModel</name>
    <message>
        <source>sinks %1</source>
        <translation>sinkt %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet</source>
        <translation>%1 trocken, %2 nass</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>sinkt kopfüber</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShelfView</name>
    <message>
        <source>Search all parts</source>
        <translation>In allen Teilen suchen</translation>
    </message>
    <message>
        <source>Groups of the Shelf</source>
        <translation>Gruppen des Regals</translation>
    </message>
    <message>
        <source>Parts: drag one onto the line, or press Enter to place it</source>
        <translation>Teile: eins auf die Schnur ziehen oder mit Eingabe einsetzen</translation>
    </message>
    <message>
        <source>Other parts</source>
        <translation>Andere Teile</translation>
    </message>
    <message>
        <source>The Shelf is empty.</source>
        <translation>Das Regal ist leer.</translation>
    </message>
    <message>
        <source>Nothing on the Shelf is found by “%1”. Fewer words find more.</source>
        <translation>Im Regal findet sich nichts zu „%1“. Weniger Wörter finden mehr.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShowWindow</name>
    <message>
        <source>Grainwise: for the class</source>
        <translation>Grainwise: für die Klasse</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Side</name>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Line %1, from the rod to the fly</source>
        <translation>Schnur %1, von der Rute zur Fliege</translation>
    </message>
    <message>
        <source>Copy to %1</source>
        <translation>Nach %1 kopieren</translation>
    </message>
    <message>
        <source>Copy %1 to %2</source>
        <translation>%1 nach %2 kopieren</translation>
    </message>
    <message>
        <source>Makes %2 the same as %1; undo in %2 brings the old one back</source>
        <translation>Macht %2 gleich %1; Rückgängig in %2 holt die alte zurück</translation>
    </message>
    <message>
        <source>Open a rig as %1</source>
        <translation>Montage als %1 öffnen</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>%1 speichern</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>unbenannte Montage</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, nicht gespeichert</translation>
    </message>
    <message>
        <source>%1: %2. Click to rename.</source>
        <translation>%1: %2. Klicken zum Umbenennen.</translation>
    </message>
    <message>
        <source>Rod of %1: %2. Click to change.</source>
        <translation>Rute von %1: %2. Klicken zum Ändern.</translation>
    </message>
    <message>
        <source>Water of %1: %2. Click to change.</source>
        <translation>Wasser von %1: %2. Klicken zum Ändern.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SpoolsPage</name>
    <message>
        <source>Spools</source>
        <translation>Spulen</translation>
    </message>
    <message>
        <source>sinking</source>
        <translation>sinkend</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>schwimmend</translation>
    </message>
    <message>
        <source>nylon</source>
        <translation>Nylon</translation>
    </message>
    <message>
        <source>fluorocarbon</source>
        <translation>Fluorocarbon</translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation>Art der Schnur</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>Ein Fuß wiegt</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Sinkt</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>On the spool</source>
        <translation>Auf der Spule</translation>
    </message>
    <message>
        <source>Add this spool</source>
        <translation>Diese Spule aufnehmen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Read a list…</source>
        <translation>Liste einlesen…</translation>
    </message>
    <message>
        <source>Write the list…</source>
        <translation>Liste schreiben…</translation>
    </message>
    <message>
        <source>Read a list of spools</source>
        <translation>Liste der Spulen einlesen</translation>
    </message>
    <message>
        <source>Spools (*.spools.json)</source>
        <translation>Spulen (*.spools.json)</translation>
    </message>
    <message>
        <source>Write the list of spools</source>
        <translation>Liste der Spulen schreiben</translation>
    </message>
    <message>
        <source>bench.spools.json</source>
        <translation>werkbank.spools.json</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Schnur</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no length on a spool</source>
        <translation>&quot;%1&quot; ist keine Länge auf einer Spule</translation>
    </message>
    <message>
        <source>Give what a foot weighs, how fast it sinks and what is left</source>
        <translation>Angeben, was ein Fuß wiegt, wie schnell er sinkt und was übrig ist</translation>
    </message>
    <message>
        <source>Give what a foot weighs and what is left</source>
        <translation>Angeben, was ein Fuß wiegt und was übrig ist</translation>
    </message>
    <message>
        <source>Give the diameter and what is left</source>
        <translation>Durchmesser und Rest angeben</translation>
    </message>
    <message>
        <source>Choose a spool in the table first</source>
        <translation>Zuerst in der Tabelle eine Spule wählen</translation>
    </message>
    <message>
        <source>%1 spools read</source>
        <translation>%1 Spulen gelesen</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Geschrieben</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::StripView</name>
    <message>
        <source>What is in the hand is no part that can be read.</source>
        <translation>Was gezogen wird, ist kein lesbares Teil.</translation>
    </message>
    <message>
        <source>Choose a part on the line first.</source>
        <translation>Zuerst ein Teil auf der Schnur wählen.</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Verdoppeln: %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Move left, towards the rod</source>
        <translation>Nach links, zur Rute hin</translation>
    </message>
    <message>
        <source>Move right, towards the fly</source>
        <translation>Nach rechts, zur Fliege hin</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>1  the fly</source>
        <translation>1  die Fliege</translation>
    </message>
    <message>
        <source>1 fly</source>
        <translation>1 Fliege</translation>
    </message>
    <message>
        <source>2  a leader</source>
        <translation>2  ein Vorfach</translation>
    </message>
    <message>
        <source>2 leader</source>
        <translation>2 Vorfach</translation>
    </message>
    <message>
        <source>3  a tip that carries the fly</source>
        <translation>3  eine Spitze, die die Fliege trägt</translation>
    </message>
    <message>
        <source>3  a tip</source>
        <translation>3  eine Spitze</translation>
    </message>
    <message>
        <source>4  a head that drives the tip</source>
        <translation>4  ein Kopf, der die Spitze treibt</translation>
    </message>
    <message>
        <source>4  a head</source>
        <translation>4  ein Kopf</translation>
    </message>
    <message>
        <source>5  running line</source>
        <translation>5  Runningline</translation>
    </message>
    <message>
        <source>5 running</source>
        <translation>5 Running</translation>
    </message>
    <message>
        <source>The line, from the rod to the fly</source>
        <translation>Die Schnur, von der Rute zur Fliege</translation>
    </message>
    <message>
        <source>Start from a rod</source>
        <translation>Von einer Rute aus beginnen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SummaryBar</name>
    <message>
        <source>A and B are the same line</source>
        <translation>A und B sind dieselbe Schnur</translation>
    </message>
    <message>
        <source>No more difference than is known</source>
        <translation>Nicht mehr Unterschied, als man weiß</translation>
    </message>
    <message>
        <source>B against A: %1</source>
        <translation>B gegen A: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TeacherView</name>
    <message>
        <source>The next card</source>
        <translation>Die nächste Karte</translation>
    </message>
    <message>
        <source>Notes and answer</source>
        <translation>Notizen und Antwort</translation>
    </message>
    <message>
        <source>All cards</source>
        <translation>Alle Karten</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>Dunkel (B)</translation>
    </message>
    <message>
        <source>Hide numbers (H)</source>
        <translation>Zahlen verbergen (H)</translation>
    </message>
    <message>
        <source>Slow motion (S)</source>
        <translation>Zeitlupe (S)</translation>
    </message>
    <message>
        <source>Change the rig (E)</source>
        <translation>Montage ändern (E)</translation>
    </message>
    <message>
        <source>End (Esc)</source>
        <translation>Ende (Esc)</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Es fehlt: %1</translation>
    </message>
    <message>
        <source>Card %1 of %2</source>
        <translation>Karte %1 von %2</translation>
    </message>
    <message>
        <source>%1   %2:%3</source>
        <translation>%1   %2:%3</translation>
    </message>
    <message>
        <source>Time of day, and minutes since the show began</source>
        <translation>Uhrzeit und Minuten seit Beginn</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Tile</name>
    <message>
        <source>opens why</source>
        <translation>öffnet das Warum</translation>
    </message>
    <message>
        <source>%1: why? (%2)</source>
        <translation>%1: warum? (%2)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TipsPage</name>
    <message>
        <source>Trim before the knife</source>
        <translation>Kürzen, vor dem Messer</translation>
    </message>
    <message>
        <source>Part to trim</source>
        <translation>Teil zum Kürzen</translation>
    </message>
    <message>
        <source>off the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>off the rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>End to trim</source>
        <translation>Ende zum Kürzen</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Trim it on the line</source>
        <translation>Auf der Schnur kürzen</translation>
    </message>
    <message>
        <source>Divide a spool</source>
        <translation>Eine Spule teilen</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>into equal tips</source>
        <translation>in gleiche Spitzen</translation>
    </message>
    <message>
        <source>as many of one length</source>
        <translation>so viele einer Länge</translation>
    </message>
    <message>
        <source>How to divide</source>
        <translation>Wie geteilt wird</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Jede</translation>
    </message>
    <message>
        <source>What is this tip? Give any two</source>
        <translation>Was für eine Spitze ist das? Zwei Angaben genügen</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Sinkt</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Bei meinen Teilen aufheben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Say how much comes off; nothing is cut yet.</source>
        <translation>Angeben, wie viel wegkommt; geschnitten ist noch nichts.</translation>
    </message>
    <message>
        <source>Nothing on the line to trim.</source>
        <translation>Nichts auf der Schnur zu kürzen.</translation>
    </message>
    <message>
        <source>%1 becomes %2, %3; it ends at %4.</source>
        <translation>Aus %1 wird %2, %3; es endet bei %4.</translation>
    </message>
    <message>
        <source> The loop goes with it.</source>
        <translation> Die Schlaufe geht mit weg.</translation>
    </message>
    <message>
        <source>Trim %1</source>
        <translation>Kürzen: %1</translation>
    </message>
    <message>
        <source>No spools yet: read or write them down on the Spools page.</source>
        <translation>Noch keine Spulen: auf der Seite Spulen einlesen oder aufschreiben.</translation>
    </message>
    <message>
        <source>%1 of %2 finished, cut at %3, %4 each with loops; %5 left.</source>
        <translation>%1 von %2 fertig, geschnitten auf %3, je %4 mit Schlaufen; %5 übrig.</translation>
    </message>
    <message>
        <source>Without its loops; a pinch of the caliper or a timed sink tell most.</source>
        <translation>Ohne ihre Schlaufen; am meisten sagen die Schieblehre oder eine gemessene Sinkzeit.</translation>
    </message>
    <message>
        <source>the trade&apos;s %1</source>
        <translation>die %1 des Handels</translation>
    </message>
    <message>
        <source>sinks about %1 by its class</source>
        <translation>sinkt nach ihrer Klasse etwa %1</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>sinkt %1</translation>
    </message>
    <message>
        <source>mass and length together give its class</source>
        <translation>Masse und Länge zusammen geben die Klasse</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> Nearest on the shelf: %1.</source>
        <translation> Am nächsten im Regal: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>My tips</source>
        <translation>Meine Spitzen</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Bei meinen Teilen aufgehoben.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TopBar</name>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Every action, with its key (F10)</source>
        <translation>Jeder Befehl mit seiner Taste (F10)</translation>
    </message>
    <message>
        <source>Feet or metres, grains or grams, Fahrenheit or Celsius</source>
        <translation>Fuß oder Meter, Grain oder Gramm, Fahrenheit oder Celsius</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>unbenannte Montage</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, nicht gespeichert</translation>
    </message>
    <message>
        <source>%1. Click to rename.</source>
        <translation>%1. Klicken zum Umbenennen.</translation>
    </message>
    <message>
        <source>Rod: %1. Click to change.</source>
        <translation>Rute: %1. Klicken zum Ändern.</translation>
    </message>
    <message>
        <source>Water: %1. Click to change.</source>
        <translation>Wasser: %1. Klicken zum Ändern.</translation>
    </message>
    <message>
        <source>Units: %1</source>
        <translation>Einheiten: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TrialBar</name>
    <message>
        <source>Take it</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Puts it on the line (Enter)</source>
        <translation>Setzt sie auf die Schnur (Eingabe)</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Zurücklegen</translation>
    </message>
    <message>
        <source>The line as it was (Esc)</source>
        <translation>Die Schnur, wie sie war (Esc)</translation>
    </message>
    <message>
        <source>Trying %1</source>
        <comment>a tip that is shown, not yet taken</comment>
        <translation>Zur Probe: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TurnoverButton</name>
    <message>
        <source>opens why, and draws the drive on the chart</source>
        <translation>öffnet das Warum und zeichnet den Antrieb ins Diagramm</translation>
    </message>
    <message>
        <source>Turnover: why? (%1)</source>
        <translation>Abrollen: warum? (%1)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WalletGridModel</name>
    <message>
        <source>no depth computed</source>
        <translation>keine Tiefe berechnet</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>pool, fly: verdict and depth</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>slot and tip</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>pool, fly</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>pool, fly</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WalletWindow</name>
    <message>
        <source>Rigs (*.rig.json);;All files (*)</source>
        <translation>Montagen (*.rig.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Wallet - Grainwise</source>
        <translation>Etui - Grainwise</translation>
    </message>
    <message>
        <source>Rigs for the trip</source>
        <translation>Montagen für die Reise</translation>
    </message>
    <message>
        <source>Save the card</source>
        <translation>Packkarte speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Rigs and their flies</source>
        <translation>Montagen und ihre Fliegen</translation>
    </message>
    <message>
        <source>Rigs of the trip</source>
        <translation>Montagen der Reise</translation>
    </message>
    <message>
        <source>Add rigs…</source>
        <translation>Montagen dazunehmen…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pools</translation>
    </message>
    <message>
        <source>Pools of the trip</source>
        <translation>Pools der Reise</translation>
    </message>
    <message>
        <source>Tips at most</source>
        <translation>Höchstens Spitzen</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>one length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays</source>
        <translation>Nur Spitzen einer Länge, damit die Wurfbewegung bleibt</translation>
    </message>
    <message>
        <source>Kept and left out (Enter takes it back)</source>
        <translation>Behalten und ausgelassen (Eingabe nimmt es zurück)</translation>
    </message>
    <message>
        <source>Tips that are kept or left out</source>
        <translation>Spitzen, die behalten oder ausgelassen werden</translation>
    </message>
    <message>
        <source>Take along in any case</source>
        <translation>Auf jeden Fall mitnehmen</translation>
    </message>
    <message>
        <source>take along in any case…</source>
        <translation>auf jeden Fall mitnehmen…</translation>
    </message>
    <message>
        <source>Tips against pools and flies</source>
        <translation>Spitzen gegen Pools und Fliegen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Card as PDF…</source>
        <translation>Packkarte als PDF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>no fly yet: left out</source>
        <translation>noch keine Fliege: ausgelassen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>rig: fly</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>kept: %1</source>
        <translation>behalten: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>1 tip for the trip</source>
        <translation>1 Spitze für die Reise</translation>
    </message>
    <message>
        <source>%1 tips for the trip</source>
        <translation>%1 Spitzen für die Reise</translation>
    </message>
    <message>
        <source>; fewer will not do</source>
        <translation>; weniger genügen nicht</translation>
    </message>
    <message>
        <source>; take a spare of it</source>
        <translation>; davon eine Reserve mitnehmen</translation>
    </message>
    <message>
        <source>; take a spare of %1 and of %2</source>
        <translation>; je eine Reserve mitnehmen: %1 und %2</translation>
    </message>
    <message>
        <source>Nothing for %1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>Nichts für %1, %2: %3</translation>
    </message>
    <message>
        <source>Every pool and fly has a tip, or needs none.</source>
        <translation>Für jeden Pool und jede Fliege gibt es eine Spitze, oder es braucht keine.</translation>
    </message>
    <message>
        <source>Depths are estimates, no guide to wading. Local rules on weighted lines and flies decide.</source>
        <translation>Tiefen sind Schätzungen, kein Maß fürs Waten. Örtliche Regeln über beschwerte Schnüre und Fliegen entscheiden.</translation>
    </message>
    <message>
        <source>The card is in %1.</source>
        <translation>Die Packkarte liegt in %1.</translation>
    </message>
    <message>
        <source>The card was not written: %1</source>
        <translation>Die Packkarte wurde nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>Cut this wallet</source>
        <translation>Dieses Etui zuschneiden</translation>
    </message>
    <message>
        <source>Print the card…</source>
        <translation>Karte drucken…</translation>
    </message>
    <message>
        <source>No tip is needed on this trip.</source>
        <translation>Auf dieser Reise wird keine Spitze gebraucht.</translation>
    </message>
    <message>
        <source>Nothing is packed yet.</source>
        <translation>Noch ist nichts eingepackt.</translation>
    </message>
    <message>
        <source>How far the packing is</source>
        <translation>Wie weit das Packen ist</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Pack again</source>
        <translation>Neu packen</translation>
    </message>
    <message>
        <source>Stopped: nothing new is packed.</source>
        <translation>Angehalten: nichts Neues ist gepackt.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Etui</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WaterPanel</name>
    <message>
        <source>Name of the water</source>
        <translation>Name des Wassers</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Oberflächenströmung</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Salt, g/kg</source>
        <translation>Salz, g/kg</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Zahlen für die Schnur, kein Maß fürs Waten.</translation>
    </message>
    <message>
        <source>or: a leaf drifts</source>
        <translation>oder: ein Blatt treibt</translation>
    </message>
    <message>
        <source>in seconds</source>
        <translation>in Sekunden</translation>
    </message>
    <message>
        <source>Change the water</source>
        <translation>Wasser ändern</translation>
    </message>
    <message>
        <source>smooth: sand or silt</source>
        <translation>glatt: Sand oder Schlamm</translation>
    </message>
    <message>
        <source>usual: gravel</source>
        <translation>üblich: Kies</translation>
    </message>
    <message>
        <source>rough: cobbles</source>
        <translation>rau: grobe Steine</translation>
    </message>
    <message>
        <source>very rough: boulders</source>
        <translation>sehr rau: Blöcke</translation>
    </message>
    <message>
        <source>Angle, degrees</source>
        <translation>Winkel, Grad</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>Der gelegten Schnur, unterhalb von gerade quer</translation>
    </message>
    <message>
        <source>Mend, seconds</source>
        <translation>Mend, Sekunden</translation>
    </message>
    <message>
        <source>How long the line drifts free before it comes tight</source>
        <translation>Wie lange die Schnur frei treibt, bevor sie strafft</translation>
    </message>
    <message>
        <source>Change how it is fished</source>
        <translation>Fischweise ändern</translation>
    </message>
    <message>
        <source>Or a pool of yours</source>
        <translation>Oder ein Pool von Ihnen</translation>
    </message>
    <message>
        <source>choose a pool…</source>
        <translation>Pool wählen…</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Zu %1 gehen</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>The rougher the bed, the slower the water near it. Taken for every rig until the program ends.</source>
        <translation>Je rauer der Grund, desto langsamer das Wasser darüber. Gilt für jede Montage, bis das Programm endet.</translation>
    </message>
    <message>
        <source>That would be over %1: check the seconds.</source>
        <translation>Das wären über %1: die Sekunden prüfen.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WayOut</name>
    <message>
        <source>There is nothing in it yet.</source>
        <translation>Es ist noch nichts darin.</translation>
    </message>
    <message>
        <source>Copied as a picture: %1</source>
        <translation>Als Bild kopiert: %1</translation>
    </message>
    <message>
        <source>Copied as a table: %1</source>
        <translation>Als Tabelle kopiert: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papier (*.pdf)</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Tabelle speichern</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Bild kopieren</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>Save picture…</source>
        <translation>Bild speichern…</translation>
    </message>
    <message>
        <source>Save table…</source>
        <translation>Tabelle speichern…</translation>
    </message>
    <message>
        <source>%1: the name should end in .png, .svg or .pdf</source>
        <translation>%1: der Name soll auf .png, .svg oder .pdf enden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WeighPage</name>
    <message>
        <source>The scale says</source>
        <translation>Die Waage zeigt</translation>
    </message>
    <message>
        <source>Measured length</source>
        <translation>Gemessene Länge</translation>
    </message>
    <message>
        <source>scale shows 0.1 gr</source>
        <translation>Waage zeigt 0,1 gr</translation>
    </message>
    <message>
        <source>scale shows 1 gr</source>
        <translation>Waage zeigt 1 gr</translation>
    </message>
    <message>
        <source>scale shows 0.1 g</source>
        <translation>Waage zeigt 0,1 g</translation>
    </message>
    <message>
        <source>kitchen scale, 1 g</source>
        <translation>Küchenwaage, 1 g</translation>
    </message>
    <message>
        <source>Smallest step of the scale</source>
        <translation>Kleinster Schritt der Waage</translation>
    </message>
    <message>
        <source>Enter: weigh and go on</source>
        <translation>Eingabe: wiegen und weiter</translation>
    </message>
    <message>
        <source>Not weighed</source>
        <translation>Nicht gewogen</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>meant</source>
        <translation>gedacht</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>off</source>
        <translation>daneben</translation>
    </message>
    <message>
        <source>a foot weighs</source>
        <translation>ein Fuß wiegt</translation>
    </message>
    <message>
        <source>Nothing on the line to weigh</source>
        <translation>Nichts auf der Schnur zu wiegen</translation>
    </message>
    <message>
        <source>weighed already; a new number takes its place</source>
        <translation>schon gewogen; eine neue Zahl tritt an ihre Stelle</translation>
    </message>
    <message>
        <source>type what the scale shows, then Enter</source>
        <translation>eintippen, was die Waage zeigt, dann Eingabe</translation>
    </message>
    <message>
        <source>; %1</source>
        <translation>; %1</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>%1 wiegen</translation>
    </message>
    <message>
        <source>Take the weighing back</source>
        <translation>Wiegung zurücknehmen</translation>
    </message>
    <message>
        <source>meant (%1)</source>
        <translation>gemeint (%1)</translation>
    </message>
    <message>
        <source>scale (%1)</source>
        <translation>Waage (%1)</translation>
    </message>
    <message>
        <source>a foot weighs (%1)</source>
        <translation>ein Fuß wiegt (%1)</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation>%1: aus %2 wird %3</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3, %4</source>
        <translation>%1: aus %2 wird %3, %4</translation>
    </message>
    <message>
        <source>No reading of the rig changes.</source>
        <translation>Kein Messwert der Montage ändert sich.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WhyPanel</name>
    <message>
        <source>The figures</source>
        <translation>Die Zahlen</translation>
    </message>
    <message>
        <source>How they are put together</source>
        <translation>Wie sie zusammengesetzt sind</translation>
    </message>
    <message>
        <source>The limits, and whose they are</source>
        <translation>Die Grenzen und wessen sie sind</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
</TS>
