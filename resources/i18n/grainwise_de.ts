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
    <message>
        <source>as it should be with its loops</source>
        <translation>wie es sein soll, mit den Schlaufen</translation>
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
    <message>
        <source>the usual height</source>
        <comment>of a river</comment>
        <translation>der üblichen Höhe</translation>
    </message>
    <message>
        <source>air at %1, now %2</source>
        <translation>Luft auf %1, jetzt %2</translation>
    </message>
    <message>
        <source>another bed</source>
        <translation>anderer Grund</translation>
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
    <message>
        <source>Bed</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>on top</source>
        <comment>as large as a number: a short word</comment>
        <translation>oben</translation>
    </message>
    <message>
        <source>for %1–%2: %3</source>
        <comment>a head&apos;s grains outside the rod&apos;s window</comment>
        <translation>für %1–%2: %3</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>a joint hinges over this ratio, fly side to rod side</source>
        <translation>ein Übergang knickt über diesem Verhältnis, Fliegenseite zu Rutenseite</translation>
    </message>
    <message>
        <source>over this it hinges unless the stroke is slow and open</source>
        <translation>darüber knickt er, wenn die Wurfbewegung nicht langsam und offen ist</translation>
    </message>
    <message>
        <source>over this it steps up and has to be forced</source>
        <translation>darüber ist er eine Stufe aufwärts und muss gezwungen werden</translation>
    </message>
    <message>
        <source>under this it is a drop, no longer level</source>
        <translation>darunter ist er ein Abfall, nicht mehr eben</translation>
    </message>
    <message>
        <source>under this the front collapses</source>
        <translation>darunter fällt die Front zusammen</translation>
    </message>
    <message>
        <source>line on each side whose mean is taken</source>
        <translation>Schnur auf jeder Seite, deren Mittel gilt</translation>
    </message>
    <message>
        <source>bare nylon up to this length has no rule</source>
        <translation>für bloßes Nylon bis zu dieser Länge gilt keine Regel</translation>
    </message>
    <message>
        <source>longer nylon is stout enough from this ratio on</source>
        <translation>längeres Nylon ist ab diesem Verhältnis kräftig genug</translation>
    </message>
    <message>
        <source>longer nylon piles under this ratio</source>
        <translation>längeres Nylon häuft sich unter diesem Verhältnis</translation>
    </message>
    <message>
        <source>a head fits within this of the rod&apos;s window</source>
        <translation>ein Kopf passt bis so weit neben dem Fenster der Rute</translation>
    </message>
    <message>
        <source>beyond this it is the wrong head</source>
        <translation>darüber hinaus ist es der falsche Kopf</translation>
    </message>
    <message>
        <source>short head with its tip: too short under</source>
        <translation>kurzer Kopf mit seiner Spitze: zu kurz unter</translation>
    </message>
    <message>
        <source>short head with its tip: usual from</source>
        <translation>kurzer Kopf mit seiner Spitze: üblich ab</translation>
    </message>
    <message>
        <source>short head with its tip: usual to</source>
        <translation>kurzer Kopf mit seiner Spitze: üblich bis</translation>
    </message>
    <message>
        <source>short head with its tip: too long over</source>
        <translation>kurzer Kopf mit seiner Spitze: zu lang über</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too short under</source>
        <translation>kurzer Kopf auf einer Einhandrute: zu kurz unter</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual from</source>
        <translation>kurzer Kopf auf einer Einhandrute: üblich ab</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual to</source>
        <translation>kurzer Kopf auf einer Einhandrute: üblich bis</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too long over</source>
        <translation>kurzer Kopf auf einer Einhandrute: zu lang über</translation>
    </message>
    <message>
        <source>fine taper: too short under</source>
        <translation>fein verjüngter Kopf: zu kurz unter</translation>
    </message>
    <message>
        <source>fine taper: usual from</source>
        <translation>fein verjüngter Kopf: üblich ab</translation>
    </message>
    <message>
        <source>fine taper: usual to</source>
        <translation>fein verjüngter Kopf: üblich bis</translation>
    </message>
    <message>
        <source>fine taper: too long over</source>
        <translation>fein verjüngter Kopf: zu lang über</translation>
    </message>
    <message>
        <source>long belly with its tip: too short under</source>
        <translation>lange Keule mit ihrer Spitze: zu kurz unter</translation>
    </message>
    <message>
        <source>long belly with its tip: usual from</source>
        <translation>lange Keule mit ihrer Spitze: üblich ab</translation>
    </message>
    <message>
        <source>long belly with its tip: usual to</source>
        <translation>lange Keule mit ihrer Spitze: üblich bis</translation>
    </message>
    <message>
        <source>long belly with its tip: too long over</source>
        <translation>lange Keule mit ihrer Spitze: zu lang über</translation>
    </message>
    <message>
        <source>no grip under this share of the head</source>
        <translation>kein Halt unter diesem Anteil des Kopfes</translation>
    </message>
    <message>
        <source>light under this</source>
        <translation>leicht unter diesem Anteil</translation>
    </message>
    <message>
        <source>right up to this</source>
        <translation>richtig bis zu diesem Anteil</translation>
    </message>
    <message>
        <source>too much tip over this</source>
        <translation>zu viel Spitze über diesem Anteil</translation>
    </message>
    <message>
        <source>right up to this on a fine taper or long belly</source>
        <translation>richtig bis hierher auf fein verjüngtem Kopf oder langer Keule</translation>
    </message>
    <message>
        <source>too little in the water under this, head to fly</source>
        <translation>darunter zu wenig im Wasser, vom Kopf bis zur Fliege</translation>
    </message>
    <message>
        <source>enough in the water from this on</source>
        <translation>ab hier genug im Wasser</translation>
    </message>
    <message>
        <source>much in the water over this</source>
        <translation>darüber viel im Wasser</translation>
    </message>
    <message>
        <source>the tip carries a fly when it weighs this many times as much</source>
        <translation>die Spitze trägt eine Fliege, wenn sie so viele Male so viel wiegt</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the tip</source>
        <translation>darunter ist die Fliege zu schwer für die Spitze</translation>
    </message>
    <message>
        <source>line that is weighed against the fly</source>
        <translation>Schnur, die gegen die Fliege gewogen wird</translation>
    </message>
    <message>
        <source>nylon longer than this is weighed against the fly too</source>
        <translation>längeres Nylon wird auch gegen die Fliege gewogen</translation>
    </message>
    <message>
        <source>such nylon carries the fly from this many times its weight on</source>
        <translation>solches Nylon trägt die Fliege ab so vielen Malen ihres Gewichts</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the leader</source>
        <translation>darunter ist die Fliege zu schwer für das Vorfach</translation>
    </message>
    <message>
        <source>lands in a heap under this, line speed against the least that turns over</source>
        <translation>fällt darunter in einem Haufen, Schnurgeschwindigkeit zur kleinsten, die abrollt</translation>
    </message>
    <message>
        <source>probably does not turn over under this</source>
        <translation>rollt darunter wohl nicht ab</translation>
    </message>
    <message>
        <source>speed to spare from this on</source>
        <translation>ab hier Geschwindigkeit übrig</translation>
    </message>
    <message>
        <source>the front does not carry under this, pull against need</source>
        <translation>die Front trägt darunter nicht, Zug gegen Bedarf</translation>
    </message>
    <message>
        <source>the front carries from this on</source>
        <translation>die Front trägt ab hier</translation>
    </message>
    <message>
        <source>front of the line in which that is asked</source>
        <translation>vorderes Stück der Schnur, in dem das gefragt wird</translation>
    </message>
    <message>
        <source>the fly dies under this share of the line speed</source>
        <translation>die Fliege stirbt unter diesem Anteil der Schnurgeschwindigkeit ab</translation>
    </message>
    <message>
        <source>it arrives firmly from this on</source>
        <translation>sie kommt ab hier fest an</translation>
    </message>
    <message>
        <source>it arrives lively from this on</source>
        <translation>sie kommt ab hier lebhaft an</translation>
    </message>
    <message>
        <source>it kicks over this</source>
        <translation>sie schlägt darüber nach</translation>
    </message>
    <message>
        <source>behind a joint that steps up by more than this, lively is a kick</source>
        <translation>nach einem Übergang mit größerer Stufe aufwärts ist lebhaft ein Nachschlagen</translation>
    </message>
    <message>
        <source>the fly is too bulky when the nylon keeps less of its speed</source>
        <translation>die Fliege ist zu voluminös, wenn das Nylon weniger ihrer Geschwindigkeit erhält</translation>
    </message>
    <message>
        <source>the same stroke within this change of working length</source>
        <translation>gleiche Wurfbewegung bis zu dieser Änderung der Arbeitslänge</translation>
    </message>
    <message>
        <source>a different cast from this change of length on</source>
        <translation>ein anderer Wurf ab dieser Änderung der Länge</translation>
    </message>
    <message>
        <source>the same stroke within this change of weight</source>
        <translation>gleiche Wurfbewegung bis zu dieser Änderung des Gewichts</translation>
    </message>
    <message>
        <source>a different cast from this change of weight on</source>
        <translation>ein anderer Wurf ab dieser Änderung des Gewichts</translation>
    </message>
    <message>
        <source>a slower lift from this much more sinking line</source>
        <translation>ein langsameres Anheben ab so viel mehr sinkender Schnur</translation>
    </message>
    <message>
        <source>a weighed part is as meant within this</source>
        <translation>ein gewogenes Teil ist bis hierher wie gedacht</translation>
    </message>
    <message>
        <source>a drop down to this ratio has the full grade</source>
        <translation>ein Abfall bis zu diesem Verhältnis hat die volle Note</translation>
    </message>
    <message>
        <source>grade where a joint starts to step up</source>
        <translation>Note, wo ein Übergang eine Stufe aufwärts wird</translation>
    </message>
    <message>
        <source>tip share of a short head with the full grade</source>
        <translation>Spitzenanteil eines kurzen Kopfes mit der vollen Note</translation>
    </message>
    <message>
        <source>grade where the tip share turns light or heavy</source>
        <translation>Note, wo der Spitzenanteil leicht oder schwer wird</translation>
    </message>
    <message>
        <source>line from head to fly with the full grade</source>
        <translation>Schnur vom Kopf bis zur Fliege mit der vollen Note</translation>
    </message>
    <message>
        <source>grade where that line turns short</source>
        <translation>Note, wo diese Schnur kurz wird</translation>
    </message>
    <message>
        <source>wanted this near the bottom, lying on it is right</source>
        <translation>so nah am Grund gewünscht, ist Aufliegen richtig</translation>
    </message>
    <message>
        <source>grade where the stroke becomes a different cast</source>
        <translation>Note, wo die Wurfbewegung ein anderer Wurf wird</translation>
    </message>
    <message>
        <source>grade of the most different cast</source>
        <translation>Note des verschiedensten Wurfs</translation>
    </message>
    <message>
        <source>weight of: the worst joint</source>
        <translation>Gewicht von: schlechtester Übergang</translation>
    </message>
    <message>
        <source>weight of: tip share</source>
        <translation>Gewicht von: Spitzenanteil</translation>
    </message>
    <message>
        <source>weight of: line from head to fly</source>
        <translation>Gewicht von: Schnur vom Kopf bis zur Fliege</translation>
    </message>
    <message>
        <source>weight of: working length</source>
        <translation>Gewicht von: Arbeitslänge</translation>
    </message>
    <message>
        <source>weight of: fly against tip</source>
        <translation>Gewicht von: Fliege zur Spitze</translation>
    </message>
    <message>
        <source>weight of: pull of the front</source>
        <translation>Gewicht von: Zug der Front</translation>
    </message>
    <message>
        <source>weight of: line speed to spare</source>
        <translation>Gewicht von: übrige Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>weight of: depth</source>
        <translation>Gewicht von: Tiefe</translation>
    </message>
    <message>
        <source>weight of: change of the stroke</source>
        <translation>Gewicht von: Änderung der Wurfbewegung</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Übergänge</translation>
    </message>
    <message>
        <source>Head on rod and working length</source>
        <translation>Kopf zur Rute und Arbeitslänge</translation>
    </message>
    <message>
        <source>Tip share and line in the water</source>
        <translation>Spitzenanteil und Schnur im Wasser</translation>
    </message>
    <message>
        <source>Fly against tip and leader</source>
        <translation>Fliege zu Spitze und Vorfach</translation>
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
        <source>Weigh-in</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Grades from 0 to 1, between the limits</source>
        <translation>Noten von 0 bis 1, zwischen den Grenzen</translation>
    </message>
    <message>
        <source>How much each counts in the ranking; at 0 it only refuses</source>
        <translation>Wie viel jedes in der Reihung zählt; bei 0 lehnt es nur ab</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>von uns</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>Ruten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a figure, its unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Must be over %1: %2</source>
        <translation>Muss über %1 liegen: %2</translation>
    </message>
    <message>
        <source>Must be under %1: %2</source>
        <translation>Muss unter %1 liegen: %2</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1 to %2.</source>
        <translation>Außerhalb des Möglichen; %1 bis %2 angeben.</translation>
    </message>
</context>
<context>
    <name>SampleWords</name>
    <message>
        <source>Plain winter</source>
        <translation>Schlichter Winter</translation>
    </message>
    <message>
        <source>The all-round winter rig: ten feet of 11 behind a weighted leech. Start here.</source>
        <translation>Die Wintermontage für alles: zehn Fuß zu 11 hinter einem beschwerten Leech. Hier anfangen.</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Rinne</translation>
    </message>
    <message>
        <source>For fast, deep water: the heaviest head of the bag drives ten feet of 17 and a double tungsten fly.</source>
        <translation>Für schnelles, tiefes Wasser: der schwerste Kopf der Tasche treibt zehn Fuß zu 17 und eine Fliege mit doppeltem Tungsten.</translation>
    </message>
    <message>
        <source>Thin tail</source>
        <translation>Flacher Auslauf</translation>
    </message>
    <message>
        <source>The winter head and stroke, but only a quarter of the tip sinks: for thin tail-outs.</source>
        <translation>Kopf und Wurfbewegung vom Winter, aber nur ein Viertel der Spitze sinkt: für flache Ausläufe.</translation>
    </message>
    <message>
        <source>Small river</source>
        <translation>Kleiner Fluss</translation>
    </message>
    <message>
        <source>A light rod on a small river: a big but light fly, and more than half of the tip sinking.</source>
        <translation>Eine leichte Rute an einem kleinen Fluss: eine große, aber leichte Fliege, und mehr als die Hälfte der Spitze sinkt.</translation>
    </message>
    <message>
        <source>Dry line</source>
        <translation>Schwimmende Schnur</translation>
    </message>
    <message>
        <source>Long fine taper and a long tapered leader for a low hairwing just under the surface.</source>
        <translation>Lange, feine Verjüngung und ein langes, verjüngtes Vorfach für eine flache Haarflügelfliege knapp unter der Oberfläche.</translation>
    </message>
    <message>
        <source>Under the film</source>
        <translation>Unter dem Wasserfilm</translation>
    </message>
    <message>
        <source>A light coated leader carries a small double a foot and a half down.</source>
        <translation>Ein leichtes beschichtetes Vorfach trägt eine kleine Doppelhakenfliege anderthalb Fuß hinab.</translation>
    </message>
    <message>
        <source>Old winter</source>
        <translation>Winter nach alter Art</translation>
    </message>
    <message>
        <source>Long belly with a tapered tip in place of its floating front; the stroke is long and slow.</source>
        <translation>Lange Keule mit verjüngter Spitze anstelle der schwimmenden Front; die Wurfbewegung ist lang und langsam.</translation>
    </message>
    <message>
        <source>Trout two-hander</source>
        <translation>Zweihänder für Forellen</translation>
    </message>
    <message>
        <source>A light two-hander for trout: slow tapered tip, one piece of nylon, a beaded streamer.</source>
        <translation>Ein leichter Zweihänder für Forellen: langsam sinkende, verjüngte Spitze, ein Stück Nylon, ein Perlstreamer.</translation>
    </message>
    <message>
        <source>Wide water</source>
        <translation>Breites Wasser</translation>
    </message>
    <message>
        <source>Long tip, half of it sinking, for wide slow pools. The working length is at its upper end.</source>
        <translation>Lange Spitze, zur Hälfte sinkend, für breite, langsame Pools. Die Arbeitslänge ist an der oberen Grenze.</translation>
    </message>
    <message>
        <source>Single five</source>
        <translation>Einhand-Fünfer</translation>
    </message>
    <message>
        <source>A single-hand line for comparison: the first 30 ft stand inside the limits for a #5.</source>
        <translation>Eine Einhandschnur zum Vergleich: die ersten 30 ft liegen innerhalb der Grenzen für #5.</translation>
    </message>
    <message>
        <source>Anvil</source>
        <translation>Amboss</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip weighs nearly half of the head. It stays in the water.</source>
        <translation>Absichtlich falsch: die Spitze wiegt fast halb so viel wie der Kopf. Sie bleibt im Wasser.</translation>
    </message>
    <message>
        <source>Fat fly</source>
        <translation>Dicke Fliege</translation>
    </message>
    <message>
        <source>Wrong on purpose: the fly is too heavy for this tip, though the head could lift a heavier tip.</source>
        <translation>Absichtlich falsch: die Fliege ist zu schwer für diese Spitze, obwohl der Kopf eine schwerere Spitze heben könnte.</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Knick</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip is twice as heavy a foot as the end of the head. The line folds there.</source>
        <translation>Absichtlich falsch: die Spitze ist je Fuß doppelt so schwer wie das Ende des Kopfes. Dort klappt die Schnur zusammen.</translation>
    </message>
    <message>
        <source>No grip</source>
        <translation>Kein Halt</translation>
    </message>
    <message>
        <source>Wrong on purpose: no tip between head and leader, so nothing holds in the water.</source>
        <translation>Absichtlich falsch: keine Spitze zwischen Kopf und Vorfach, also hält nichts im Wasser.</translation>
    </message>
    <message>
        <source>the all-round pool</source>
        <translation>der Pool für alles</translation>
    </message>
    <message>
        <source>hard on purpose: no sound rig here has its middle figure in it</source>
        <translation>absichtlich schwierig: keine gute Montage hier liegt mit ihrem mittleren Wert darin</translation>
    </message>
    <message>
        <source>thin tail-out</source>
        <translation>flacher Auslauf</translation>
    </message>
    <message>
        <source>fast shelf</source>
        <translation>schnelle Felsbank</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>Sommer</translation>
    </message>
    <message>
        <source>slow and deep</source>
        <translation>langsam und tief</translation>
    </message>
</context>
<context>
    <name>SettingsFile</name>
    <message>
        <source>a number from %1 to %2</source>
        <translation>eine Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>nothing, or one of %1</source>
        <translation>nichts oder eines von %1</translation>
    </message>
    <message>
        <source>nothing, or %1</source>
        <translation>nichts oder %1</translation>
    </message>
    <message>
        <source>%1 is %2; it must be under %3, which is %4.</source>
        <translation>%1 ist %2; es muss unter %3 liegen, und das ist %4.</translation>
    </message>
    <message>
        <source>and more: %1 in all</source>
        <translation>und weitere: insgesamt %1</translation>
    </message>
    <message>
        <source>The file cannot be read.</source>
        <translation>Die Datei lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise: it is too large to be one.</source>
        <translation>Das ist keine Einstellungsdatei von Grainwise: dafür ist sie zu groß.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise. Choose one that was exported here.</source>
        <translation>Das ist keine Einstellungsdatei von Grainwise. Wählen Sie eine, die hier ausgegeben wurde.</translation>
    </message>
    <message>
        <source>The file ends in the middle of a line: it was cut off. Export it anew.</source>
        <translation>Die Datei endet mitten in einer Zeile: sie wurde abgeschnitten. Geben Sie sie neu aus.</translation>
    </message>
    <message>
        <source>The file is broken: line %1 is neither a [group] nor a key with its value.</source>
        <translation>Die Datei ist beschädigt: Zeile %1 ist weder eine [Gruppe] noch ein Schlüssel mit seinem Wert.</translation>
    </message>
    <message>
        <source>Settings of version “%1” are not known here; version %2 is.</source>
        <translation>Einstellungen der Version „%1“ sind hier nicht bekannt; bekannt ist Version %2.</translation>
    </message>
    <message>
        <source>%1 is missing; it wants %2.</source>
        <translation>%1 fehlt; nötig ist %2.</translation>
    </message>
    <message>
        <source>%1 is “%2”; it wants %3.</source>
        <translation>%1 ist „%2“; nötig ist %3.</translation>
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
    <message>
        <source>In the air at %1 above the sea.</source>
        <translation>In der Luft auf %1 über dem Meer.</translation>
    </message>
    <message>
        <source>Bed: %1.</source>
        <translation>Grund: %1.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a density, another</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Density of the head: %1, our usual figure where none is stated.</source>
        <translation>Dichte des Kopfes: %1, unser üblicher Wert, wo keiner angegeben ist.</translation>
    </message>
    <message>
        <source>Density of the head: %1.</source>
        <translation>Dichte des Kopfes: %1.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over such a bed.</source>
        <translation>Auf halber Tiefe läuft die Strömung mit %1 ihrer Geschwindigkeit an der Oberfläche, wie über einem solchen Grund.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over a usual bed: none is stated.</source>
        <translation>Auf halber Tiefe läuft die Strömung mit %1 ihrer Geschwindigkeit an der Oberfläche, wie über üblichem Grund: Es ist keiner angegeben.</translation>
    </message>
    <message>
        <source>It covers as well a current half way down of %1 to %2 of the surface&apos;s.</source>
        <translation>Sie umfasst auch eine Strömung auf halber Tiefe von %1 bis %2 der an der Oberfläche.</translation>
    </message>
    <message>
        <source>It covers as well a head of %1 to %2, and a current half way down of %3 to %4 of the surface&apos;s.</source>
        <translation>Sie umfasst auch einen Kopf von %1 bis %2 und eine Strömung auf halber Tiefe von %3 bis %4 der an der Oberfläche.</translation>
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
    <message>
        <source>%1 timed</source>
        <comment>a sink rate</comment>
        <translation>%1 gestoppt</translation>
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
</context>
<context>
    <name>grainwise::Problem</name>
    <message>
        <source>section %1: %2</source>
        <translation>Abschnitt %1: %2</translation>
    </message>
    <message>
        <source>a spool cannot be divided into %1 tips</source>
        <translation>eine Spule lässt sich nicht in %1 Spitzen teilen</translation>
    </message>
    <message>
        <source>ask for one or more</source>
        <translation>eine oder mehr verlangen</translation>
    </message>
    <message>
        <source>the loops of %1 tips use up the %2 ft that are left</source>
        <translation>die Schlaufen von %1 Spitzen verbrauchen die restlichen %2 ft</translation>
    </message>
    <message>
        <source>ask for fewer tips</source>
        <translation>weniger Spitzen verlangen</translation>
    </message>
    <message>
        <source>a tip of %1 ft cannot be cut</source>
        <translation>eine Spitze von %1 ft lässt sich nicht schneiden</translation>
    </message>
    <message>
        <source>the spool is %1 ft short of one such tip with its loops</source>
        <translation>der Spule fehlen %1 ft für eine solche Spitze mit ihren Schlaufen</translation>
    </message>
    <message>
        <source>ask for a shorter one</source>
        <translation>eine kürzere verlangen</translation>
    </message>
    <message>
        <source>a measure of this fly is negative or over 6 in</source>
        <translation>ein Maß dieser Fliege ist negativ oder über 6 in</translation>
    </message>
    <message>
        <source>measure it again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>a bead&apos;s hole is as wide as the bead</source>
        <translation>das Loch einer Perle ist so weit wie die Perle</translation>
    </message>
    <message>
        <source>give the hole&apos;s own diameter</source>
        <translation>den Durchmesser des Lochs selbst angeben</translation>
    </message>
    <message>
        <source>a number of beads below 0</source>
        <translation>eine Anzahl Perlen unter 0</translation>
    </message>
    <message>
        <source>give 0 or more</source>
        <translation>0 oder mehr angeben</translation>
    </message>
    <message>
        <source>a number of turns below 0</source>
        <translation>eine Anzahl Windungen unter 0</translation>
    </message>
    <message>
        <source>the dressing&apos;s mass or the water it holds is no such thing</source>
        <translation>die Masse des Bindematerials oder das Wasser darin ist keine gültige Angabe</translation>
    </message>
    <message>
        <source>give 0 gr or more, and 0 to 50 times its dry mass of water</source>
        <translation>0 gr oder mehr angeben, und an Wasser das 0- bis 50-Fache der trockenen Masse</translation>
    </message>
    <message>
        <source>a weight below 0</source>
        <translation>ein Gewicht unter 0</translation>
    </message>
    <message>
        <source>give 0 gr or more</source>
        <translation>0 gr oder mehr angeben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no hook size</source>
        <translation>&quot;%1&quot; ist keine Hakengröße</translation>
    </message>
    <message>
        <source>write it like 6 or 2/0, or give its wire</source>
        <translation>wie 6 oder 2/0 schreiben oder den Hakendraht angeben</translation>
    </message>
    <message>
        <source>there is nothing on this fly yet</source>
        <translation>an dieser Fliege ist noch nichts</translation>
    </message>
    <message>
        <source>add a hook or a dressing</source>
        <translation>einen Haken oder Bindematerial hinzufügen</translation>
    </message>
    <message>
        <source>one measure does not name a tip</source>
        <translation>ein Maß allein bestimmt keine Spitze</translation>
    </message>
    <message>
        <source>give two of mass, length, diameter and timed sink</source>
        <translation>zwei angeben von Masse, Länge, Durchmesser und gemessener Sinkzeit</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so fast</source>
        <translation>keine Schnur mit dieser Masse je Fuß sinkt so schnell</translation>
    </message>
    <message>
        <source>time it again, over a longer fall</source>
        <translation>noch einmal die Zeit nehmen, über eine längere Strecke</translation>
    </message>
    <message>
        <source>no spool steps down to %1 in one knot</source>
        <translation>keine Spule führt mit einem Knoten auf %1 hinunter</translation>
    </message>
    <message>
        <source>take one over %1 up to %2, or a leader of one piece</source>
        <translation>eine über %1 bis %2 nehmen oder ein Vorfach aus einem Stück</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>no spool has a diameter for the butt</source>
        <translation>keine Spule hat einen Durchmesser für das dicke Ende</translation>
    </message>
    <message>
        <source>add one of %1</source>
        <translation>eine aufnehmen, %1</translation>
    </message>
    <message>
        <source>from the tippet up the spools lead no farther than %1; the butt wants %2</source>
        <translation>von der Vorfachspitze aufwärts führen die Spulen nur bis %1; das dicke Ende verlangt %2</translation>
    </message>
    <message>
        <source>add a diameter over %1 up to %2</source>
        <translation>einen Durchmesser über %1 bis %2 aufnehmen</translation>
    </message>
    <message>
        <source>there is no nylon or fluorocarbon to tie a leader from</source>
        <translation>es gibt kein Nylon oder Fluorocarbon, um ein Vorfach zu knüpfen</translation>
    </message>
    <message>
        <source>add spools with their diameters</source>
        <translation>Spulen mit ihren Durchmessern aufnehmen</translation>
    </message>
    <message>
        <source>no spool is a tippet of %1</source>
        <translation>keine Spule gibt eine Vorfachspitze von %1</translation>
    </message>
    <message>
        <source>choose a tippet that is there, or add the spool</source>
        <translation>eine vorhandene Vorfachspitze wählen oder die Spule aufnehmen</translation>
    </message>
    <message>
        <source>the butt follows from the line&apos;s tip, which is not known</source>
        <translation>das dicke Ende richtet sich nach dem Schnurende, das nicht bekannt ist</translation>
    </message>
    <message>
        <source>give its diameter, or what a foot of it weighs</source>
        <translation>seinen Durchmesser angeben oder was ein Fuß davon wiegt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no %2</source>
        <translation>&quot;%1&quot; taugt nicht als %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date</source>
        <translation>&quot;%1&quot; ist kein Datum</translation>
    </message>
    <message>
        <source>write year-month-day, as in 2026-03-02</source>
        <translation>Jahr-Monat-Tag schreiben, wie 2026-03-02</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds no mass, length, gr/ft or sink rate</source>
        <translation>&quot;%1&quot; enthält keine Masse, keine Länge, kein gr/ft und keine Sinkrate</translation>
    </message>
    <message>
        <source>check which column is which, or take the line out</source>
        <translation>prüfen, welche Spalte welche ist, oder die Zeile herausnehmen</translation>
    </message>
    <message>
        <source>this line</source>
        <translation>diese Zeile</translation>
    </message>
    <message>
        <source>%1 lacks a length, or a mass or gr/ft</source>
        <translation>%1 hat keine Länge, oder weder Masse noch gr/ft</translation>
    </message>
    <message>
        <source>a tip needs its length and one of the two</source>
        <translation>eine Spitze braucht ihre Länge und eins von beiden</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 sinks over more than its length</source>
        <translation>%1 sinkt auf mehr als der ganzen Länge</translation>
    </message>
    <message>
        <source>give the sinking feet within its length</source>
        <translation>die sinkenden Fuß innerhalb der Länge angeben</translation>
    </message>
    <message>
        <source>%1 ft cannot come off %2 ft</source>
        <translation>%1 ft lassen sich nicht von %2 ft abschneiden</translation>
    </message>
    <message>
        <source>give less than its length</source>
        <translation>weniger als die Länge angeben</translation>
    </message>
    <message>
        <source>%1 is no mass</source>
        <translation>%1 ist keine Masse</translation>
    </message>
    <message>
        <source>write it like 113.5 gr or 7.4 g</source>
        <translation>wie 113,5 gr oder 7,4 g schreiben</translation>
    </message>
    <message>
        <source>%1 does not say gr or g</source>
        <translation>%1 sagt nicht, ob gr oder g</translation>
    </message>
    <message>
        <source>write gr for grains or g for grams</source>
        <translation>gr für Grain oder g für Gramm schreiben</translation>
    </message>
    <message>
        <source>%1 is no unit of mass</source>
        <translation>%1 ist keine Einheit der Masse</translation>
    </message>
    <message>
        <source>%1 is no length</source>
        <translation>%1 ist keine Länge</translation>
    </message>
    <message>
        <source>write it like 10.5 ft, 10 ft 6 in or 3.2 m</source>
        <translation>wie 10,5 ft, 10 ft 6 in oder 3,2 m schreiben</translation>
    </message>
    <message>
        <source>%1 does not say its unit</source>
        <translation>%1 nennt keine Einheit</translation>
    </message>
    <message>
        <source>%1 is no unit of length</source>
        <translation>%1 ist keine Einheit der Länge</translation>
    </message>
    <message>
        <source>write ft, in, m or cm</source>
        <translation>ft, in, m oder cm schreiben</translation>
    </message>
    <message>
        <source>write feet before inches, as in 10 ft 6 in</source>
        <translation>Fuß vor Zoll schreiben, wie 10 ft 6 in</translation>
    </message>
    <message>
        <source>a mass of %1 gr is none</source>
        <translation>%1 gr sind keine Masse</translation>
    </message>
    <message>
        <source>weigh it again</source>
        <translation>noch einmal wiegen</translation>
    </message>
    <message>
        <source>%1 gr is not more than its loops, %2 gr</source>
        <translation>%1 gr sind nicht mehr als die Schlaufen mit %2 gr</translation>
    </message>
    <message>
        <source>weigh it with its loops, or correct them</source>
        <translation>mit den Schlaufen wiegen oder diese berichtigen</translation>
    </message>
    <message>
        <source>the water&apos;s depth and speed are not known</source>
        <translation>Tiefe und Strömung des Wassers sind nicht bekannt</translation>
    </message>
    <message>
        <source>give them first</source>
        <translation>diese zuerst angeben</translation>
    </message>
    <message>
        <source>there is no fly of known mass</source>
        <translation>es gibt keine Fliege mit bekannter Masse</translation>
    </message>
    <message>
        <source>add the fly that was fished</source>
        <translation>die Fliege hinzufügen, die gefischt wurde</translation>
    </message>
    <message>
        <source>a fly %1 ft down in %2 ft of water says nothing about the current</source>
        <translation>eine Fliege %1 ft tief in %2 ft Wasser sagt nichts über die Strömung</translation>
    </message>
    <message>
        <source>measure where the fly hangs free, above the bottom</source>
        <translation>messen, wo die Fliege frei hängt, über dem Grund</translation>
    </message>
    <message>
        <source>how sure the depth is, is not a depth itself</source>
        <translation>die Unsicherheit der Tiefe ist keine mögliche Tiefe</translation>
    </message>
    <message>
        <source>give 0 ft or a little more</source>
        <translation>0 ft oder etwas mehr angeben</translation>
    </message>
    <message>
        <source>no current from 0.2 to 15 ft/s puts this rig&apos;s fly there</source>
        <translation>keine Strömung von 0,2 bis 15 ft/s bringt die Fliege dieser Montage dorthin</translation>
    </message>
    <message>
        <source>check the depth, the rig and the depth of the water</source>
        <translation>die Tiefe, die Montage und die Wassertiefe prüfen</translation>
    </message>
    <message>
        <source>a fall of %1 in is no fall in a tub</source>
        <translation>%1 in sind keine Fallstrecke in einer Wanne</translation>
    </message>
    <message>
        <source>give over 0 to 300 in</source>
        <translation>über 0 bis 300 in angeben</translation>
    </message>
    <message>
        <source>no time is given</source>
        <translation>keine Zeit angegeben</translation>
    </message>
    <message>
        <source>time at least one fall</source>
        <translation>mindestens eine Fallzeit nehmen</translation>
    </message>
    <message>
        <source>a time of %1 s is none</source>
        <translation>%1 s sind keine Fallzeit</translation>
    </message>
    <message>
        <source>time it again</source>
        <translation>noch einmal die Zeit nehmen</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so</source>
        <translation>keine Schnur mit dieser Masse je Fuß sinkt so</translation>
    </message>
    <message>
        <source>measure the fall and time it again</source>
        <translation>die Fallstrecke messen und noch einmal die Zeit nehmen</translation>
    </message>
    <message>
        <source>this piece does not go by a sink rate</source>
        <translation>dieses Stück sinkt nicht mit einer Sinkrate</translation>
    </message>
    <message>
        <source>choose a piece that sinks by its rate</source>
        <translation>ein Stück wählen, das mit einer Rate sinkt</translation>
    </message>
    <message>
        <source>the shelf has no head of this style</source>
        <translation>das Regal hat keinen Kopf dieser Art</translation>
    </message>
    <message>
        <source>add one to it</source>
        <translation>einen dazulegen</translation>
    </message>
    <message>
        <source>the rig named here is not sound: %1</source>
        <translation>die hier genannte Montage ist nicht in Ordnung: %1</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on</source>
        <translation>eine Montagedatei vom Ordner des Kartensatzes aus benennen</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>the format &quot;%1&quot; is not known</source>
        <translation>das Format &quot;%1&quot; ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>give one of %1</source>
        <translation>eins davon angeben: %1</translation>
    </message>
    <message>
        <source>this name does not stay in the deck&apos;s own folder</source>
        <translation>dieser Name führt aus dem Ordner des Kartensatzes hinaus</translation>
    </message>
    <message>
        <source>this name is a link out of the deck&apos;s own folder</source>
        <translation>dieser Name ist eine Verknüpfung aus dem Ordner des Kartensatzes hinaus</translation>
    </message>
    <message>
        <source>put the rig file itself into that folder</source>
        <translation>die Rig-Datei selbst in diesen Ordner legen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>den Namen prüfen</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>eine Datei darin nennen</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>check who may read it and that it is a plain file</source>
        <translation>prüfen, wer sie lesen darf und ob sie eine gewöhnliche Datei ist</translation>
    </message>
    <message>
        <source>more is wrong than these %1 problems</source>
        <translation>es gibt mehr Fehler als diese %1</translation>
    </message>
    <message>
        <source>mend them first</source>
        <translation>diese zuerst beheben</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice in this object</source>
        <translation>der Schlüssel &quot;%1&quot; steht zweimal in diesem Objekt</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>eins von beiden behalten</translation>
    </message>
    <message>
        <source>objects and lists are nested deeper than %1 levels</source>
        <translation>Objekte und Listen sind tiefer als %1 Ebenen verschachtelt</translation>
    </message>
    <message>
        <source>keep it to %1</source>
        <translation>bei höchstens %1 bleiben</translation>
    </message>
    <message>
        <source>in text, write a line break as \n and a tab as \t</source>
        <translation>in Text einen Zeilenumbruch als \n und einen Tabulator als \t schreiben</translation>
    </message>
    <message>
        <source>end the text with a double quote on the same line</source>
        <translation>den Text in derselben Zeile mit einem doppelten Anführungszeichen beenden</translation>
    </message>
    <message>
        <source>in text, write a backslash as two</source>
        <translation>in Text einen Backslash doppelt schreiben</translation>
    </message>
    <message>
        <source>write the character itself instead of \u codes</source>
        <translation>das Zeichen selbst statt \u-Codes schreiben</translation>
    </message>
    <message>
        <source>give a name in double quotes here; no comma stands before }</source>
        <translation>hier einen Namen in doppelten Anführungszeichen angeben; vor } steht kein Komma</translation>
    </message>
    <message>
        <source>put a colon between the name and its value</source>
        <translation>einen Doppelpunkt zwischen den Namen und seinen Wert setzen</translation>
    </message>
    <message>
        <source>put a comma before it, or close the object with } first</source>
        <translation>ein Komma davor setzen oder zuerst das Objekt mit } schließen</translation>
    </message>
    <message>
        <source>put a comma before it, or close the list with ] first</source>
        <translation>ein Komma davor setzen oder zuerst die Liste mit ] schließen</translation>
    </message>
    <message>
        <source>nothing may follow the closing brace</source>
        <translation>nach der schließenden Klammer darf nichts folgen</translation>
    </message>
    <message>
        <source>write numbers as 13, 0.024 or -3.5</source>
        <translation>Zahlen wie 13, 0.024 oder -3.5 schreiben</translation>
    </message>
    <message>
        <source>give a number, text in double quotes, true, false, a list or an object</source>
        <translation>eine Zahl, Text in doppelten Anführungszeichen, true, false, eine Liste oder ein Objekt angeben</translation>
    </message>
    <message>
        <source>the number %1 is too large</source>
        <translation>die Zahl %1 ist zu groß</translation>
    </message>
    <message>
        <source>give a finite number</source>
        <translation>eine endliche Zahl angeben</translation>
    </message>
    <message>
        <source>something follows the closing brace</source>
        <translation>auf die schließende Klammer folgt noch etwas</translation>
    </message>
    <message>
        <source>end the file there; one object a file</source>
        <translation>die Datei dort enden lassen; ein Objekt je Datei</translation>
    </message>
    <message>
        <source>the text ends too early</source>
        <translation>der Text endet zu früh</translation>
    </message>
    <message>
        <source>the file seems cut off; close every quote, list and object, or take a whole copy</source>
        <translation>die Datei scheint abgeschnitten; jedes Anführungszeichen, jede Liste und jedes Objekt schließen oder eine vollständige Kopie nehmen</translation>
    </message>
    <message>
        <source>%1 is no number that JSON knows</source>
        <translation>%1 ist keine Zahl, die JSON kennt</translation>
    </message>
    <message>
        <source>a line break or tab</source>
        <translation>ein Zeilenumbruch oder Tabulator</translation>
    </message>
    <message>
        <source>this is not JSON: %1 cannot stand here</source>
        <translation>das ist kein JSON: %1 kann hier nicht stehen</translation>
    </message>
    <message>
        <source>the file is larger than %1 bytes</source>
        <translation>die Datei ist größer als %1 Byte</translation>
    </message>
    <message>
        <source>a file of ours has at most %1 (4 MiB)</source>
        <translation>eine Datei von uns hat höchstens %1 (4 MiB)</translation>
    </message>
    <message>
        <source>there is a NUL byte</source>
        <translation>es steht ein NUL-Byte darin</translation>
    </message>
    <message>
        <source>take it out; the file must be plain text</source>
        <translation>dieses entfernen; die Datei muss reiner Text sein</translation>
    </message>
    <message>
        <source>the file is not UTF-8 text</source>
        <translation>die Datei ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>als UTF-8 speichern</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>give one JSON object, { ... }</source>
        <translation>ein JSON-Objekt angeben, { ... }</translation>
    </message>
    <message>
        <source>the file holds %1</source>
        <translation>die Datei enthält %1</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
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
        <source>the number %1 cannot be held</source>
        <translation>die Zahl %1 lässt sich nicht darstellen</translation>
    </message>
    <message>
        <source>%1 has %2 entries</source>
        <translation>%1 hat %2 Einträge</translation>
    </message>
    <message>
        <source>give two numbers, %1</source>
        <translation>zwei Zahlen angeben, %1</translation>
    </message>
    <message>
        <source>give text in double quotes</source>
        <translation>Text in doppelten Anführungszeichen angeben</translation>
    </message>
    <message>
        <source>give a rig, { ... }, or the relative name of a rig file</source>
        <translation>eine Montage angeben, { ... }, oder den relativen Namen einer Montagedatei</translation>
    </message>
    <message>
        <source>%1 starts with %2</source>
        <translation>%1 beginnt mit %2</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>%1 angeben</translation>
    </message>
    <message>
        <source>this is &quot;%1&quot;, not %2</source>
        <translation>das ist &quot;%1&quot;, erwartet wird %2</translation>
    </message>
    <message>
        <source>%1 has the format %2</source>
        <translation>%1 hat das Format %2</translation>
    </message>
    <message>
        <source>version %1 is not known here</source>
        <translation>Version %1 ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>this program reads version %1; a newer one may be needed</source>
        <translation>dieses Programm liest Version %1; vielleicht wird ein neueres gebraucht</translation>
    </message>
    <message>
        <source>give a whole number, %1</source>
        <translation>eine ganze Zahl angeben, %1</translation>
    </message>
    <message>
        <source>%1, or two as [rod end, fly end]</source>
        <translation>%1, oder zwei als [Rutenende, Fliegenende]</translation>
    </message>
    <message>
        <source>give two numbers, [low, high]</source>
        <translation>zwei Zahlen angeben, [kleinste, größte]</translation>
    </message>
    <message>
        <source>give true or false</source>
        <translation>true oder false angeben</translation>
    </message>
    <message>
        <source>give an object, { ... }</source>
        <translation>ein Objekt angeben, { ... }</translation>
    </message>
    <message>
        <source>give a list of objects, [ ... ]</source>
        <translation>eine Liste von Objekten angeben, [ ... ]</translation>
    </message>
    <message>
        <source>this entry is %1</source>
        <translation>dieser Eintrag ist %1</translation>
    </message>
    <message>
        <source>%1, or leave it out</source>
        <translation>%1, oder weglassen</translation>
    </message>
    <message>
        <source>give a number, %1</source>
        <translation>eine Zahl angeben, %1</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; is not known</source>
        <translation>%1 &quot;%2&quot; ist nicht bekannt</translation>
    </message>
    <message>
        <source>gr_per_ft says %1, but diameter_in with %2 makes %3</source>
        <translation>gr_per_ft sagt %1, aber diameter_in mit %2 ergibt %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the three out</source>
        <translation>sie müssen bis auf 2 % übereinstimmen; eins der drei weglassen</translation>
    </message>
    <message>
        <source>density_g_cm3 says %1, but material %2 is %3</source>
        <translation>density_g_cm3 sagt %1, aber material %2 hat %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the two out</source>
        <translation>sie müssen bis auf 2 % übereinstimmen; eins der zwei weglassen</translation>
    </message>
    <message>
        <source>sink_in_per_s says %1, but %2 sink at %3</source>
        <translation>sink_in_per_s sagt %1, aber nach %2 sinkt es mit %3</translation>
    </message>
    <message>
        <source>they must agree within 1 in/s; leave one of the three out</source>
        <translation>sie müssen bis auf 1 in/s übereinstimmen; eins der drei weglassen</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>floats is true, but sink_in_per_s says that it sinks</source>
        <translation>floats ist true, aber sink_in_per_s sagt, dass es sinkt</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>eins von beiden weglassen</translation>
    </message>
    <message>
        <source>floats is %1, but the rest makes %2</source>
        <translation>floats ist %1, aber das Übrige ergibt %2</translation>
    </message>
    <message>
        <source>water is 1 g/cm3; leave floats out or correct the rest</source>
        <translation>Wasser hat 1 g/cm3; floats weglassen oder das Übrige berichtigen</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, heavier than any line; check what was typed</source>
        <translation>aus Masse und Sinkrate folgt %1, schwerer als jede Schnur; die Eingabe prüfen</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, lighter than any line; check what was typed</source>
        <translation>aus Masse und Sinkrate folgt %1, leichter als jede Schnur; die Eingabe prüfen</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, heavier than any line; check what was typed</source>
        <translation>aus Masse und Durchmesser folgt %1, schwerer als jede Schnur; die Eingabe prüfen</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, lighter than any line; check what was typed</source>
        <translation>aus Masse und Durchmesser folgt %1, leichter als jede Schnur; die Eingabe prüfen</translation>
    </message>
    <message>
        <source>a running line</source>
        <translation>eine Runningline</translation>
    </message>
    <message>
        <source>a head</source>
        <translation>ein Kopf</translation>
    </message>
    <message>
        <source>a tip</source>
        <translation>eine Spitze</translation>
    </message>
    <message>
        <source>a leader</source>
        <translation>ein Vorfach</translation>
    </message>
    <message>
        <source>a tippet</source>
        <translation>eine Vorfachspitze</translation>
    </message>
    <message>
        <source>a fly</source>
        <translation>eine Fliege</translation>
    </message>
    <message>
        <source>%1 is not UTF-8 text</source>
        <translation>%1 ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>%1 has %2 characters</source>
        <translation>%1 hat %2 Zeichen</translation>
    </message>
    <message>
        <source>give one of these pairs: gr_per_ft with diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true; or diameter_in with density_g_cm3 or material</source>
        <translation>eines dieser Paare angeben: gr_per_ft mit diameter_in, density_g_cm3, sink_in_per_s oder &quot;floats&quot;: true; oder diameter_in mit density_g_cm3 oder material</translation>
    </message>
    <message>
        <source>%1 alone does not fix this section</source>
        <translation>%1 allein legt diesen Abschnitt nicht fest</translation>
    </message>
    <message>
        <source>add diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true</source>
        <translation>diameter_in, density_g_cm3, sink_in_per_s oder &quot;floats&quot;: true ergänzen</translation>
    </message>
    <message>
        <source>add density_g_cm3, material or gr_per_ft</source>
        <translation>density_g_cm3, material oder gr_per_ft ergänzen</translation>
    </message>
    <message>
        <source>this section has neither gr_per_ft nor diameter_in</source>
        <translation>dieser Abschnitt hat weder gr_per_ft noch diameter_in</translation>
    </message>
    <message>
        <source>of this section only the length is known</source>
        <translation>von diesem Abschnitt ist nur die Länge bekannt</translation>
    </message>
    <message>
        <source>write an ISO 8601 date, year-month-day, as in 2026-03-02</source>
        <translation>ein Datum nach ISO 8601 schreiben, Jahr-Monat-Tag, wie 2026-03-02</translation>
    </message>
    <message>
        <source>%1 has no style &quot;%2&quot;</source>
        <translation>%1 kann nicht style &quot;%2&quot; haben</translation>
    </message>
    <message>
        <source>leave style out</source>
        <translation>style weglassen</translation>
    </message>
    <message>
        <source>leave style out, or give one of these: %1</source>
        <translation>style weglassen oder eins davon angeben: %1</translation>
    </message>
    <message>
        <source>give the fly&apos;s dry mass in grains, 0 when it is not known</source>
        <translation>die trockene Masse der Fliege in Grain angeben, 0, wenn sie nicht bekannt ist</translation>
    </message>
    <message>
        <source>wet_gr %1 is less than dry_gr %2</source>
        <translation>wet_gr %1 ist weniger als dry_gr %2</translation>
    </message>
    <message>
        <source>a wet fly weighs at least what the dry one does; give both in grains</source>
        <translation>eine nasse Fliege wiegt mindestens so viel wie die trockene; beides in Grain angeben</translation>
    </message>
    <message>
        <source>%1 has no %2</source>
        <translation>%1 hat kein %2</translation>
    </message>
    <message>
        <source>give dry_gr and wet_gr</source>
        <translation>dry_gr und wet_gr angeben</translation>
    </message>
    <message>
        <source>take them out; a fly is a point</source>
        <translation>diese entfernen; eine Fliege ist ein Punkt</translation>
    </message>
    <message>
        <source>take them out</source>
        <translation>diese entfernen</translation>
    </message>
    <message>
        <source>give 1 to %1 sections</source>
        <translation>1 bis %1 Abschnitte angeben</translation>
    </message>
    <message>
        <source>%1 needs sections</source>
        <translation>%1 braucht Abschnitte</translation>
    </message>
    <message>
        <source>%1 sections are too many</source>
        <translation>%1 Abschnitte sind zu viele</translation>
    </message>
    <message>
        <source>take it out, or make the part a fly</source>
        <translation>dies entfernen oder das Teil zur Fliege machen</translation>
    </message>
    <message>
        <source>the part weighs %1 gr with its loops, but the loops alone %2 gr</source>
        <translation>das Teil wiegt mit seinen Schlaufen %1 gr, die Schlaufen allein aber %2 gr</translation>
    </message>
    <message>
        <source>the weighed mass must be more than that of the loops</source>
        <translation>die gewogene Masse muss mehr sein als die der Schlaufen</translation>
    </message>
    <message>
        <source>%1 runs from %2 down to %3</source>
        <translation>%1 geht von %2 hinunter auf %3</translation>
    </message>
    <message>
        <source>give the smaller number first</source>
        <translation>die kleinere Zahl zuerst angeben</translation>
    </message>
    <message>
        <source>the grain window</source>
        <translation>das Fenster</translation>
    </message>
    <message>
        <source>a rig has one fly, this is another</source>
        <translation>eine Montage hat eine Fliege, dies ist noch eine</translation>
    </message>
    <message>
        <source>a rig has one running line, this is another</source>
        <translation>eine Montage hat eine Runningline, dies ist noch eine</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>diese entfernen</translation>
    </message>
    <message>
        <source>%1 stands after %2</source>
        <translation>hier steht erst %2, dann %1</translation>
    </message>
    <message>
        <source>put the parts in order from rod to fly: %1</source>
        <translation>die Teile von der Rute zur Fliege ordnen: %1</translation>
    </message>
    <message>
        <source>this is head piece number %1</source>
        <translation>das ist Kopfstück Nummer %1</translation>
    </message>
    <message>
        <source>a head has up to %1 pieces</source>
        <translation>ein Kopf hat höchstens %1 Stücke</translation>
    </message>
    <message>
        <source>give 1 to %1 parts</source>
        <translation>1 bis %1 Teile angeben</translation>
    </message>
    <message>
        <source>a rig needs parts</source>
        <translation>eine Montage braucht Teile</translation>
    </message>
    <message>
        <source>%1 parts are too many</source>
        <translation>%1 Teile sind zu viele</translation>
    </message>
    <message>
        <source>%1 is empty</source>
        <translation>%1 ist leer</translation>
    </message>
    <message>
        <source>give each part of a shelf an id of its own, as text</source>
        <translation>jedem Teil eines Regals eine eigene id als Text geben</translation>
    </message>
    <message>
        <source>id &quot;%1&quot; is taken by part %2 already</source>
        <translation>id &quot;%1&quot; ist schon an Teil %2 vergeben</translation>
    </message>
    <message>
        <source>give the heading it stands under, as text</source>
        <translation>die Überschrift angeben, unter der es steht, als Text</translation>
    </message>
    <message>
        <source>clearance_ft and wanted_depth_ft both say where the fly is wanted</source>
        <translation>clearance_ft und wanted_depth_ft sagen beide, wo die Fliege laufen soll</translation>
    </message>
    <message>
        <source>this spool has neither gr_per_ft nor diameter_in</source>
        <translation>diese Spule hat weder gr_per_ft noch diameter_in</translation>
    </message>
    <message>
        <source>give one of the two</source>
        <translation>eins von beiden angeben</translation>
    </message>
    <message>
        <source>diameter_in alone does not say what the line weighs</source>
        <translation>diameter_in allein sagt nicht, was die Schnur wiegt</translation>
    </message>
    <message>
        <source>add material or gr_per_ft</source>
        <translation>material oder gr_per_ft ergänzen</translation>
    </message>
    <message>
        <source>this spool does not say what its line does in water</source>
        <translation>diese Spule sagt nicht, was ihre Schnur im Wasser tut</translation>
    </message>
    <message>
        <source>add material, floats or sink_in_per_s</source>
        <translation>material, floats oder sink_in_per_s ergänzen</translation>
    </message>
    <message>
        <source>the name of the rig file is empty</source>
        <translation>der Name der Montagedatei ist leer</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on, with / between folders, or put the rig here</source>
        <translation>eine Montagedatei vom Ordner des Kartensatzes aus benennen, mit / zwischen Ordnern, oder die Montage hierher setzen</translation>
    </message>
    <message>
        <source>%1 are too many for a card</source>
        <translation>%1 sind zu viele für eine Karte</translation>
    </message>
    <message>
        <source>give up to %1</source>
        <translation>bis zu %1 angeben</translation>
    </message>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>über %1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 %2 is outside its limits</source>
        <translation>%1 %2 liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>not saved: %1</source>
        <translation>nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>the file that is there is kept as it was; make room, or save elsewhere</source>
        <translation>die Datei, die dort ist, bleibt, wie sie war; Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>nothing was written; make room, or save elsewhere</source>
        <translation>nichts wurde geschrieben; Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>another program has changed this file since it was opened</source>
        <translation>ein anderes Programm hat diese Datei seit dem Öffnen geändert</translation>
    </message>
    <message>
        <source>save again to put yours in its place, or save elsewhere</source>
        <translation>noch einmal speichern, um die eigene an ihre Stelle zu setzen, oder anderswo speichern</translation>
    </message>
    <message>
        <source>nothing on the line sinks by a rate</source>
        <translation>nichts auf der Schnur sinkt mit einer Rate</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>grains per foot</source>
        <translation>Grain je Fuß</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>sink rate</source>
        <translation>Sinkrate</translation>
    </message>
    <message>
        <source>uncertainty of the sink rate</source>
        <translation>Unsicherheit der Sinkrate</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>label mass</source>
        <translation>Masse laut Etikett</translation>
    </message>
    <message>
        <source>weighed mass</source>
        <translation>gewogene Masse</translation>
    </message>
    <message>
        <source>loop mass</source>
        <translation>Schlaufenmasse</translation>
    </message>
    <message>
        <source>fly mass</source>
        <translation>Masse der Fliege</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>Widerstandsfläche</translation>
    </message>
    <message>
        <source>rod length</source>
        <translation>Rutenlänge</translation>
    </message>
    <message>
        <source>line number</source>
        <translation>Schnurklasse</translation>
    </message>
    <message>
        <source>number of hands</source>
        <translation>Anzahl der Hände</translation>
    </message>
    <message>
        <source>grain window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>surface speed</source>
        <translation>Oberflächenströmung</translation>
    </message>
    <message>
        <source>uncertainty of the speed</source>
        <translation>Unsicherheit der Strömung</translation>
    </message>
    <message>
        <source>depth of the fly</source>
        <translation>Tiefe der Fliege</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>salinity</source>
        <translation>Salzgehalt</translation>
    </message>
    <message>
        <source>line speed</source>
        <translation>Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Schlaufe</translation>
    </message>
    <message>
        <source>launch angle</source>
        <translation>Abwurfwinkel</translation>
    </message>
    <message>
        <source>rod tip height</source>
        <translation>Höhe der Rutenspitze</translation>
    </message>
    <message>
        <source>overhang</source>
        <translation>Überhang</translation>
    </message>
    <message>
        <source>line out</source>
        <translation>Schnur draußen</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>Mend</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Abstand vom Grund</translation>
    </message>
    <message>
        <source>wanted depth</source>
        <translation>gewünschte Tiefe</translation>
    </message>
    <message>
        <source>feet left</source>
        <translation>restliche Länge</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>eine Montage</translation>
    </message>
    <message>
        <source>a shelf</source>
        <translation>ein Regal</translation>
    </message>
    <message>
        <source>a list of pools</source>
        <translation>eine Liste von Pools</translation>
    </message>
    <message>
        <source>a list of spools</source>
        <translation>eine Liste von Spulen</translation>
    </message>
    <message>
        <source>a deck</source>
        <translation>ein Kartensatz</translation>
    </message>
    <message>
        <source>deg</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>times</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>altitude of the air</source>
        <translation>Höhe der Luft über dem Meer</translation>
    </message>
    <message>
        <source>the grains that this rod is made for are not known</source>
        <translation>für wie viele Grain diese Rute gebaut ist, ist nicht bekannt</translation>
    </message>
    <message>
        <source>give its line number, or the grains that its maker names</source>
        <translation>geben Sie ihre Schnurklasse an, oder die Grain, die der Hersteller nennt</translation>
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
    <message>
        <source>What is this? (where the keyboard is)</source>
        <translation>Was ist das? (wo die Tastatur ist)</translation>
    </message>
    <message>
        <source>What is this? (point at it)</source>
        <translation>Was ist das? (darauf zeigen)</translation>
    </message>
    <message>
        <source>Sample decks and rigs</source>
        <translation>Beispiele: Kartensätze und Montagen</translation>
    </message>
    <message>
        <source>Settings…</source>
        <translation>Einstellungen…</translation>
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
    <name>grainwise::ui::BedChoice</name>
    <message>
        <source>The rougher the bed, the slower the water near it.</source>
        <translation>Je rauer der Grund, desto langsamer das Wasser darüber.</translation>
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
    <name>grainwise::ui::BenchPage</name>
    <message>
        <source>A welded loop takes</source>
        <translation>Eine geschweißte Schlaufe braucht</translation>
    </message>
    <message>
        <source>A sleeved loop takes</source>
        <translation>Eine Schlaufe in Hülse braucht</translation>
    </message>
    <message>
        <source>A tied loop takes</source>
        <translation>Eine geknotete Schlaufe braucht</translation>
    </message>
    <message>
        <source>A splice takes, each side</source>
        <translation>Ein Spleiß braucht, je Seite</translation>
    </message>
    <message>
        <source>A knot takes, each side</source>
        <translation>Ein Knoten braucht, je Seite</translation>
    </message>
    <message>
        <source>The knot at the fly takes</source>
        <translation>Der Knoten an der Fliege braucht</translation>
    </message>
    <message>
        <source>The line that loops, splices and knots take over the finished length, for cut sheets, divided spools and leaders.</source>
        <translation>Die Schnur, die Schlaufen, Spleiße und Knoten über die fertige Länge hinaus brauchen, für Zuschnitte, geteilte Spulen und Vorfächer.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Diese Seite auf das Übliche zurücksetzen</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Schlaufen der Spitzen</translation>
    </message>
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
        <translation>Schlaufen in Hülse</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>geknotete Schlaufen</translation>
    </message>
    <message>
        <source>usual: %1, common practice</source>
        <translation>üblich: %1, gängige Praxis</translation>
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
    <message>
        <source>Take the rig that is on the bench</source>
        <translation>Die Montage von der Werkbank nehmen</translation>
    </message>
    <message>
        <source>Take a rig file from the deck&apos;s folder</source>
        <translation>Eine Montagedatei aus dem Ordner des Kartensatzes nehmen</translation>
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
    <message>
        <source>Altitude</source>
        <translation>Höhenlage</translation>
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
    <message>
        <source>Limits: common practice; turnover, depth and grades ours.</source>
        <translation>Grenzen: allgemeiner Brauch; Abrollen, Tiefe und Noten von uns.</translation>
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
    <message>
        <source>No card yet. Make one of the rig on the bench, or begin with a blank one.

Lessons to look at: Menu, Help, Sample decks and rigs.</source>
        <translation>Noch keine Karte. Machen Sie eine von der Montage auf der Werkbank, oder beginnen Sie mit einer leeren.

Fertige Kartensätze: Menü, Hilfe, Beispiele.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>Der Kartensatz hat noch keine Karte.</translation>
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
    <name>grainwise::ui::ControlHelp</name>
    <message>
        <source>Opens the menu: every action of the program, each with its key.</source>
        <translation>Öffnet das Menü: jede Aktion des Programms, jede mit ihrer Taste.</translation>
    </message>
    <message>
        <source>The name of the rig. Press it to change the name and the notes.</source>
        <translation>Der Name der Montage. Drücken, um Name und Notizen zu ändern.</translation>
    </message>
    <message>
        <source>The rod that the head is judged for: its length, line number and windows. Press it to change them.</source>
        <translation>Die Rute, für die der Kopf beurteilt wird: Länge, Schnurklasse und Fenster. Drücken, um sie zu ändern.</translation>
    </message>
    <message>
        <source>The water that the rig fishes; the depth follows from it. Press it to change depth, current or temperature.</source>
        <translation>Das Wasser, in dem die Montage fischt; die Tiefe folgt daraus. Drücken, um Tiefe, Strömung oder Temperatur zu ändern.</translation>
    </message>
    <message>
        <source>Chooses the units that are shown: feet or metres, grains or grams, Fahrenheit or Celsius. Files keep their own.</source>
        <translation>Wählt die gezeigten Einheiten: Fuß oder Meter, Grain oder Gramm, Fahrenheit oder Celsius. Dateien behalten ihre eigenen.</translation>
    </message>
    <message>
        <source>Takes the last step back. Nothing is asked for before a change, since each can be undone.</source>
        <translation>Nimmt den letzten Schritt zurück. Vor einer Änderung wird nichts gefragt, denn jede lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Does again what was taken back last.</source>
        <translation>Tut noch einmal, was zuletzt zurückgenommen wurde.</translation>
    </message>
    <message>
        <source>Makes all type smaller, down to the size it began with.</source>
        <translation>Macht alle Schrift kleiner, bis zur Anfangsgröße.</translation>
    </message>
    <message>
        <source>Makes all type larger, up to twice the size; diagrams follow.</source>
        <translation>Macht alle Schrift größer, bis zum Doppelten; die Diagramme folgen.</translation>
    </message>
    <message>
        <source>The Bench: one rig, what each foot of it weighs, and its readings.</source>
        <translation>Die Werkbank: eine Montage, was jeder Fuß von ihr wiegt, und ihre Anzeigen.</translation>
    </message>
    <message>
        <source>Compare: two rigs on one ruler, and what each difference does.</source>
        <translation>Vergleich: zwei Montagen an einem Maßstab, und was jeder Unterschied tut.</translation>
    </message>
    <message>
        <source>Clinic: a deck of cards to teach with, shown over a whole screen.</source>
        <translation>Kurs: ein Kartensatz zum Lehren, gezeigt auf einem ganzen Bildschirm.</translation>
    </message>
    <message>
        <source>The line laid out true to scale, rod left, fly right. A block&apos;s height is what a foot of it weighs. Drag parts here, or choose one on the Shelf and press Enter.</source>
        <translation>Die Schnur maßstäblich, Rute links, Fliege rechts. Die Höhe eines Blocks ist, was ein Fuß davon wiegt. Teile hierher ziehen, oder eines im Regal wählen und Eingabe drücken.</translation>
    </message>
    <message>
        <source>A part of the line. Enter edits it, Alt+Left and Alt+Right move it, Delete removes it, Ctrl+D doubles it; the menu key lists all of that.</source>
        <translation>Ein Teil der Schnur. Eingabe bearbeitet es, Alt+Links und Alt+Rechts verschieben es, Entf entfernt es, Strg+D verdoppelt es; die Menütaste zeigt all das.</translation>
    </message>
    <message>
        <source>A joint: what the three feet before it and the three feet behind it weigh, and what that does. Press it to read why.</source>
        <translation>Ein Übergang: was die drei Fuß davor und die drei Fuß dahinter wiegen, und was das tut. Drücken, um zu lesen, warum.</translation>
    </message>
    <message>
        <source>The last six feet, larger, so that leader, tippet and fly can be taken hold of.</source>
        <translation>Die letzten sechs Fuß, vergrößert, damit sich Vorfach, Vorfachspitze und Fliege greifen lassen.</translation>
    </message>
    <message>
        <source>Proposes a head for the rod, from its windows, as a place to begin.</source>
        <translation>Schlägt einen Kopf für die Rute vor, nach ihren Fenstern, als Anfang.</translation>
    </message>
    <message>
        <source>What each foot weighs, exactly under that foot of the line. Left and Right move the cursor by half a foot, with Shift by a tenth.</source>
        <translation>Was jeder Fuß wiegt, genau unter diesem Fuß der Schnur. Links und Rechts bewegen den Zeiger um einen halben Fuß, mit Umschalt um ein Zehntel.</translation>
    </message>
    <message>
        <source>A reading: its figure, the two figures it came from, and its verdict. Press it to read why, with the formula and the limits.</source>
        <translation>Eine Anzeige: ihr Wert, die zwei Werte, aus denen er kommt, und ihr Urteil. Drücken, um zu lesen, warum, mit Formel und Grenzen.</translation>
    </message>
    <message>
        <source>Whether the tip carries the fly and the loop has speed to spare. Press it to read why; the chart then draws what the loop needs.</source>
        <translation>Ob die Spitze die Fliege trägt und die Schlaufe Tempo übrig hat. Drücken, um zu lesen, warum; das Diagramm zeichnet dann, was die Schlaufe braucht.</translation>
    </message>
    <message>
        <source>The Shelf: parts to put on the line.</source>
        <translation>Das Regal: Teile für die Schnur.</translation>
    </message>
    <message>
        <source>Everything about the part that is chosen on the line, to be changed here.</source>
        <translation>Alles über das Teil, das auf der Schnur gewählt ist; hier zu ändern.</translation>
    </message>
    <message>
        <source>The unrolling loop of this rig, played, with the sliders of the cast.</source>
        <translation>Die abrollende Schlaufe dieser Montage, abgespielt, mit den Reglern des Wurfs.</translation>
    </message>
    <message>
        <source>The swing of this rig through its water, played, with angle, mend and line out.</source>
        <translation>Der Swing dieser Montage durch ihr Wasser, abgespielt, mit Winkel, Mend und ausgegebener Schnur.</translation>
    </message>
    <message>
        <source>Every tip for this fly, head and pool, the best first, and why the others are refused.</source>
        <translation>Jede Spitze für diese Fliege, diesen Kopf und Pool, die beste zuerst, und warum die anderen ausscheiden.</translation>
    </message>
    <message>
        <source>What is wrong with this rig, and the single changes that mend it.</source>
        <translation>Was an dieser Montage falsch ist, und die einzelnen Änderungen, die es beheben.</translation>
    </message>
    <message>
        <source>Tasks at the bench: cutting, spools, weighing, leaders, flies, tips, measuring, own parts.</source>
        <translation>Arbeiten an der Werkbank: Zuschneiden, Spulen, Wiegen, Vorfächer, Fliegen, Spitzen, Messen, eigene Teile.</translation>
    </message>
    <message>
        <source>The pools of your river: their water and where the fly is wanted there.</source>
        <translation>Die Pools Ihres Flusses: ihr Wasser, und wo die Fliege dort sein soll.</translation>
    </message>
    <message>
        <source>A page of the drawer. Press it to open it; another page takes its place.</source>
        <translation>Eine Seite der Schublade. Drücken öffnet sie; eine andere nimmt ihren Platz ein.</translation>
    </message>
    <message>
        <source>Type any words of a part: 10 ft 11 gr/ft. Down goes on to the parts, Enter there places one.</source>
        <translation>Beliebige Wörter eines Teils tippen: 10 ft 11 gr/ft. Ab führt zu den Teilen, Eingabe legt dort eines an.</translation>
    </message>
    <message>
        <source>The groups of the Shelf. A search looks through all of them.</source>
        <translation>Die Gruppen des Regals. Eine Suche geht durch alle.</translation>
    </message>
    <message>
        <source>Parts to put on the line: drag one up, or choose it and press Enter. It goes where its kind belongs.</source>
        <translation>Teile für die Schnur: eines hinaufziehen, oder wählen und Eingabe drücken. Es kommt dahin, wo seine Art hingehört.</translation>
    </message>
    <message>
        <source>Plays it, or stops it where it is.</source>
        <translation>Spielt es ab oder hält es an.</translation>
    </message>
    <message>
        <source>The moment that is shown. Left and Right move it.</source>
        <translation>Der gezeigte Augenblick. Links und Rechts verschieben ihn.</translation>
    </message>
    <message>
        <source>How fast it is played against real time.</source>
        <translation>Wie schnell es gegenüber der wirklichen Zeit abläuft.</translation>
    </message>
    <message>
        <source>The loop true to scale, rod left, and under it where the energy is. A model, not a filmed cast.</source>
        <translation>Die Schlaufe maßstäblich, Rute links, darunter, wo die Energie ist. Ein Modell, kein gefilmter Wurf.</translation>
    </message>
    <message>
        <source>The swing from the side, true to scale, and from above: the track is darker and wider the deeper the fly is.</source>
        <translation>Der Swing von der Seite, maßstäblich, und von oben: die Spur ist dunkler und breiter, je tiefer die Fliege ist.</translation>
    </message>
    <message>
        <source>Sets the sliders to the slower, wider loop of somebody who learns.</source>
        <translation>Stellt die Regler auf die langsamere, weitere Schlaufe eines Lernenden.</translation>
    </message>
    <message>
        <source>How fast the line leaves the rod tip.</source>
        <translation>Wie schnell die Schnur die Rutenspitze verlässt.</translation>
    </message>
    <message>
        <source>The height of the loop from leg to leg. A narrow one loses less to the air.</source>
        <translation>Die Höhe der Schlaufe von Schenkel zu Schenkel. Eine enge verliert weniger an die Luft.</translation>
    </message>
    <message>
        <source>How steeply the cast is aimed: up is above level.</source>
        <translation>Wie steil geworfen wird: nach oben ist über der Waagerechten.</translation>
    </message>
    <message>
        <source>How high the rod tip is above the water when the loop leaves it.</source>
        <translation>Wie hoch die Rutenspitze über dem Wasser ist, wenn die Schlaufe sie verlässt.</translation>
    </message>
    <message>
        <source>How high the river lies: thin air takes less from the loop.</source>
        <translation>Wie hoch der Fluss liegt: dünne Luft nimmt der Schlaufe weniger.</translation>
    </message>
    <message>
        <source>How long slack lets the line sink before it comes tight.</source>
        <translation>Wie lange lose Schnur sinken darf, bevor sie straff wird.</translation>
    </message>
    <message>
        <source>How much line is out from the rod tip to the fly.</source>
        <translation>Wie viel Schnur von der Rutenspitze bis zur Fliege draußen ist.</translation>
    </message>
    <message>
        <source>A table of how deep this rig fishes in every pool, at low, usual and high current.</source>
        <translation>Eine Tabelle, wie tief diese Montage in jedem Pool fischt, bei schwacher, üblicher und starker Strömung.</translation>
    </message>
    <message>
        <source>The pool that the tips are judged for: where the fly is wanted decides.</source>
        <translation>Der Pool, für den die Spitzen beurteilt werden: wo die Fliege sein soll, entscheidet.</translation>
    </message>
    <message>
        <source>Lists all, only tips, or only coated leaders.</source>
        <translation>Zeigt alle, nur Spitzen oder nur beschichtete Vorfächer.</translation>
    </message>
    <message>
        <source>Leaves only tips with which the casting stroke stays the same: within a foot and 8 % of mass.</source>
        <translation>Lässt nur Spitzen, mit denen die Wurfbewegung gleich bleibt: auf einen Fuß und 8 % der Masse.</translation>
    </message>
    <message>
        <source>Leaves out the tips that are refused.</source>
        <translation>Lässt die Spitzen weg, die ausscheiden.</translation>
    </message>
    <message>
        <source>Leaves only what is in the packed wallet.</source>
        <translation>Lässt nur, was im gepackten Etui ist.</translation>
    </message>
    <message>
        <source>Tips, the best first, with the reason. To choose one shows it on the line; Enter puts it on.</source>
        <translation>Spitzen, die beste zuerst, mit dem Grund. Wählen zeigt eine auf der Schnur; Eingabe setzt sie ein.</translation>
    </message>
    <message>
        <source>Each tip as a dot: deeper is lower, to the right it carries the fly better. The band is the wanted water. A click chooses a tip.</source>
        <translation>Jede Spitze als Punkt: tiefer ist weiter unten, rechts trägt sie die Fliege besser. Das Band ist das gewünschte Wasser. Ein Klick wählt eine.</translation>
    </message>
    <message>
        <source>A tip of the same family: press it to put it on the line.</source>
        <translation>Eine Spitze derselben Familie: drücken, um sie einzusetzen.</translation>
    </message>
    <message>
        <source>Changes that can be made on the water, from the wallet. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Änderungen, die am Wasser möglich sind, aus dem Etui. Wählen zeigt eine; Eingabe macht sie, als ein Schritt.</translation>
    </message>
    <message>
        <source>Changes for the bench: cutting, splicing, another head. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Änderungen für die Werkbank: Kürzen, Spleißen, ein anderer Kopf. Wählen zeigt eine; Eingabe macht sie, als ein Schritt.</translation>
    </message>
    <message>
        <source>Your pools. The one that is chosen is changed on the right.</source>
        <translation>Ihre Pools. Der gewählte wird rechts geändert.</translation>
    </message>
    <message>
        <source>Gives the rig the water of the chosen pool.</source>
        <translation>Gibt der Montage das Wasser des gewählten Pools.</translation>
    </message>
    <message>
        <source>A new pool, with the water of the rig to begin with.</source>
        <translation>Ein neuer Pool, anfangs mit dem Wasser der Montage.</translation>
    </message>
    <message>
        <source>Removes what is chosen in the list.</source>
        <translation>Entfernt, was in der Liste gewählt ist.</translation>
    </message>
    <message>
        <source>Reads a file of pools in place of these; Undo brings these back.</source>
        <translation>Liest eine Datei mit Pools anstelle von diesen; Rückgängig bringt diese zurück.</translation>
    </message>
    <message>
        <source>Writes these pools to a file of their own.</source>
        <translation>Schreibt diese Pools in eine eigene Datei.</translation>
    </message>
    <message>
        <source>What the pool is called in lists and on paper.</source>
        <translation>Wie der Pool in Listen und auf Papier heißt.</translation>
    </message>
    <message>
        <source>Where the fly is wanted in this pool: anywhere, so far off the bottom, or so far below the surface.</source>
        <translation>Wo die Fliege in diesem Pool sein soll: irgendwo, so weit über Grund oder so weit unter der Oberfläche.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the pool.</source>
        <translation>Alles, was man sich zum Pool merken möchte.</translation>
    </message>
    <message>
        <source>The tasks of the bench. To choose one opens its page.</source>
        <translation>Die Arbeiten der Werkbank. Wählen öffnet ihre Seite.</translation>
    </message>
    <message>
        <source>Adds the tips and leaders of another rig, or parts of a shelf, to what is cut.</source>
        <translation>Fügt Spitzen und Vorfächer einer weiteren Montage oder Teile eines Regals zum Zuschnitt hinzu.</translation>
    </message>
    <message>
        <source>Cuts only the open rig again.</source>
        <translation>Schneidet wieder nur die offene Montage zu.</translation>
    </message>
    <message>
        <source>How much line your loops, splices and knots take; the cuts are longer by that.</source>
        <translation>Wie viel Schnur Ihre Schlaufen, Spleiße und Knoten brauchen; um so viel sind die Schnitte länger.</translation>
    </message>
    <message>
        <source>Shows it as it will be on paper, and prints it from there.</source>
        <translation>Zeigt es, wie es auf Papier sein wird, und druckt von dort.</translation>
    </message>
    <message>
        <source>Writes it as a PDF file.</source>
        <translation>Schreibt es als PDF-Datei.</translation>
    </message>
    <message>
        <source>Takes what was cut off what is left on the spools.</source>
        <translation>Zieht ab, was von den Spulen geschnitten wurde.</translation>
    </message>
    <message>
        <source>Each spool with its cuts and marks, measured from its free end, then the labels with their rings.</source>
        <translation>Jede Spule mit ihren Schnitten und Marken, vom freien Ende gemessen, dann die Etiketten mit ihren Ringen.</translation>
    </message>
    <message>
        <source>Puts loops of that kind on the tips of the line, as a proposal that can be undone.</source>
        <translation>Setzt solche Schlaufen an die Spitzen der Schnur, als Vorschlag, der sich rückgängig machen lässt.</translation>
    </message>
    <message>
        <source>The kind of loops that your tips get.</source>
        <translation>Die Art der Schlaufen, die Ihre Spitzen bekommen.</translation>
    </message>
    <message>
        <source>How much line is used up there.</source>
        <translation>Wie viel Schnur dort verbraucht wird.</translation>
    </message>
    <message>
        <source>The level line that is left on your spools. Name and feet are changed in the table.</source>
        <translation>Die gleichmäßige Schnur, die auf Ihren Spulen übrig ist. Name und Fuß werden in der Tabelle geändert.</translation>
    </message>
    <message>
        <source>Describes a new spool, before it is added.</source>
        <translation>Beschreibt eine neue Spule, bevor sie hinzukommt.</translation>
    </message>
    <message>
        <source>Adds the spool that is described above.</source>
        <translation>Fügt die oben beschriebene Spule hinzu.</translation>
    </message>
    <message>
        <source>Reads them from a file.</source>
        <translation>Liest sie aus einer Datei.</translation>
    </message>
    <message>
        <source>Writes them to a file that can be passed on.</source>
        <translation>Schreibt sie in eine Datei, die man weitergeben kann.</translation>
    </message>
    <message>
        <source>What the scale says of this part. Enter goes on to the next.</source>
        <translation>Was die Waage zu diesem Teil sagt. Eingabe geht zum nächsten.</translation>
    </message>
    <message>
        <source>How finely the scale shows: the range of what a foot weighs follows from it.</source>
        <translation>Wie fein die Waage anzeigt: daraus folgt der Bereich dessen, was ein Fuß wiegt.</translation>
    </message>
    <message>
        <source>Keeps the number and goes on to the next part.</source>
        <translation>Behält die Zahl und geht zum nächsten Teil.</translation>
    </message>
    <message>
        <source>Forgets what the scale said of this part.</source>
        <translation>Vergisst, was die Waage zu diesem Teil sagte.</translation>
    </message>
    <message>
        <source>What each part was meant to weigh, what the scale said, and how far off that is.</source>
        <translation>Was jedes Teil wiegen sollte, was die Waage sagte, und wie weit das abweicht.</translation>
    </message>
    <message>
        <source>Puts it on the line in the place of the one of its kind, as one step of undo.</source>
        <translation>Setzt es anstelle des Teils seiner Art auf die Schnur, als ein Schritt.</translation>
    </message>
    <message>
        <source>Keeps it among your own parts; they stand on the Shelf.</source>
        <translation>Behält es unter Ihren eigenen Teilen; sie stehen im Regal.</translation>
    </message>
    <message>
        <source>What the fly is tied from: its dry and wet mass and its drag are worked out from it.</source>
        <translation>Woraus die Fliege gebunden ist: trockene und nasse Masse und Widerstand werden daraus berechnet.</translation>
    </message>
    <message>
        <source>What is trimmed, at which end, and by how much; below stands what that does.</source>
        <translation>Was gekürzt wird, an welchem Ende und um wie viel; darunter steht, was das tut.</translation>
    </message>
    <message>
        <source>Trims that part on the line, as one step of undo.</source>
        <translation>Kürzt dieses Teil auf der Schnur, als ein Schritt.</translation>
    </message>
    <message>
        <source>How a spool is divided into tips; below stands where to cut.</source>
        <translation>Wie eine Spule in Spitzen geteilt wird; darunter steht, wo zu schneiden ist.</translation>
    </message>
    <message>
        <source>What you measured of a tip without a label; below stands what it is likely to be.</source>
        <translation>Was Sie an einer Spitze ohne Etikett gemessen haben; darunter steht, was sie wohl ist.</translation>
    </message>
    <message>
        <source>A piece let sink in a tub: how far it fell, in which water, and the times of each fall.</source>
        <translation>Ein Stück, das in einer Wanne sinkt: wie tief es fiel, in welchem Wasser, und die Zeiten jedes Falls.</translation>
    </message>
    <message>
        <source>Gives the piece the rate that was timed; what was rated is kept.</source>
        <translation>Gibt dem Stück die gemessene Sinkrate; die angegebene bleibt erhalten.</translation>
    </message>
    <message>
        <source>Puts back what was stated before the measurement.</source>
        <translation>Setzt wieder ein, was vor der Messung angegeben war.</translation>
    </message>
    <message>
        <source>Where and how deep the fly was really found; the current that explains it stands below.</source>
        <translation>Wo und wie tief die Fliege wirklich war; die Strömung, die das erklärt, steht darunter.</translation>
    </message>
    <message>
        <source>Gives the pool the current that explains what was found.</source>
        <translation>Gibt dem Pool die Strömung, die das Gefundene erklärt.</translation>
    </message>
    <message>
        <source>Leaves only your parts with these words.</source>
        <translation>Lässt nur Ihre Teile mit diesen Wörtern.</translation>
    </message>
    <message>
        <source>Parts that you keep; they also stand on the Shelf.</source>
        <translation>Teile, die Sie behalten; sie stehen auch im Regal.</translation>
    </message>
    <message>
        <source>The part of the line that Keep it keeps.</source>
        <translation>Das Teil der Schnur, das mit Behalten behalten wird.</translation>
    </message>
    <message>
        <source>Another name for the chosen part.</source>
        <translation>Ein anderer Name für das gewählte Teil.</translation>
    </message>
    <message>
        <source>A second one like the chosen part, to be changed.</source>
        <translation>Ein zweites wie das gewählte Teil, zum Ändern.</translation>
    </message>
    <message>
        <source>A scale log or a list of tips: a line each, with tabs, commas or semicolons between. Below, say what each column is.</source>
        <translation>Ein Wiegeprotokoll oder eine Liste von Spitzen: eine Zeile je Stück, mit Tabulator, Komma oder Semikolon. Darunter sagen Sie, was jede Spalte ist.</translation>
    </message>
    <message>
        <source>What the rig is called in the window, on paper and in lists.</source>
        <translation>Wie die Montage im Fenster, auf Papier und in Listen heißt.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the rig; it stands on the handout.</source>
        <translation>Alles, was man sich zur Montage merken möchte; es steht auf dem Handout.</translation>
    </message>
    <message>
        <source>A leaf on the water gives the current: how far it went in how many seconds.</source>
        <translation>Ein Blatt auf dem Wasser gibt die Strömung: wie weit es in wie vielen Sekunden kam.</translation>
    </message>
    <message>
        <source>What the water is called.</source>
        <translation>Wie das Wasser heißt.</translation>
    </message>
    <message>
        <source>What the part is called; without a name the window says what it is.</source>
        <translation>Wie das Teil heißt; ohne Namen sagt das Fenster, was es ist.</translation>
    </message>
    <message>
        <source>The day on which it was weighed.</source>
        <translation>Der Tag, an dem es gewogen wurde.</translation>
    </message>
    <message>
        <source>Adds a section at the fly&apos;s end of the part.</source>
        <translation>Fügt am Fliegenende des Teils einen Abschnitt hinzu.</translation>
    </message>
    <message>
        <source>A section of the part, from its rod end to its fly end: what is typed stays, the rest follows from it.</source>
        <translation>Ein Abschnitt des Teils, vom Rutenende zum Fliegenende: Getipptes bleibt, der Rest folgt daraus.</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A; rigs, undo and files stay what they are.</source>
        <translation>A wird B und B wird A; Montagen, Rückgängig und Dateien bleiben, was sie sind.</translation>
    </message>
    <message>
        <source>Lays the flies under each other instead of the rears of the heads.</source>
        <translation>Legt die Fliegen untereinander statt der hinteren Enden der Köpfe.</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other.</source>
        <translation>Beide fischen im selben Wasser: eine Änderung für die eine gilt für die andere.</translation>
    </message>
    <message>
        <source>Makes the other rig the same as this one, as one step of the other&apos;s undo.</source>
        <translation>Macht die andere Montage zu einer wie diese, als ein Schritt der anderen.</translation>
    </message>
    <message>
        <source>Opens a rig file here.</source>
        <translation>Öffnet hier eine Montage.</translation>
    </message>
    <message>
        <source>Saves this rig to its file.</source>
        <translation>Speichert diese Montage in ihre Datei.</translation>
    </message>
    <message>
        <source>The readings of both rigs beside each other, with what the difference is worth.</source>
        <translation>Die Anzeigen beider Montagen nebeneinander, und was der Unterschied wert ist.</translation>
    </message>
    <message>
        <source>One difference between the rigs, and what it does by itself. Press it to choose its parts on both lines.</source>
        <translation>Ein Unterschied zwischen den Montagen, und was er für sich tut. Drücken wählt seine Teile auf beiden Schnüren.</translation>
    </message>
    <message>
        <source>What the deck is called, in the window and on paper.</source>
        <translation>Wie der Kartensatz heißt, im Fenster und auf Papier.</translation>
    </message>
    <message>
        <source>The cards in their order. Alt+Up and Alt+Down move the chosen one.</source>
        <translation>Die Karten in ihrer Reihenfolge. Alt+Auf und Alt+Ab verschieben die gewählte.</translation>
    </message>
    <message>
        <source>The card as the class will see it.</source>
        <translation>Die Karte, wie die Klasse sie sehen wird.</translation>
    </message>
    <message>
        <source>Shows the card with its answer, or without.</source>
        <translation>Zeigt die Karte mit ihrer Antwort oder ohne.</translation>
    </message>
    <message>
        <source>An empty deck.</source>
        <translation>Ein leerer Kartensatz.</translation>
    </message>
    <message>
        <source>Opens a deck file.</source>
        <translation>Öffnet einen Kartensatz.</translation>
    </message>
    <message>
        <source>Saves the deck to its file.</source>
        <translation>Speichert den Kartensatz in seine Datei.</translation>
    </message>
    <message>
        <source>A card of the rig and the picture that the bench shows.</source>
        <translation>Eine Karte mit der Montage und dem Bild, die die Werkbank zeigt.</translation>
    </message>
    <message>
        <source>A card with nothing on it yet.</source>
        <translation>Eine Karte, auf der noch nichts ist.</translation>
    </message>
    <message>
        <source>Moves the chosen card in the deck.</source>
        <translation>Verschiebt die gewählte Karte im Satz.</translation>
    </message>
    <message>
        <source>A second card like the chosen one.</source>
        <translation>Eine zweite Karte wie die gewählte.</translation>
    </message>
    <message>
        <source>Deletes the chosen card; undo brings it back.</source>
        <translation>Löscht die gewählte Karte; Rückgängig bringt sie zurück.</translation>
    </message>
    <message>
        <source>The screen that the class sees. Your own keeps notes, next card and clock.</source>
        <translation>Der Bildschirm, den die Klasse sieht. Ihr eigener behält Notizen, nächste Karte und Uhr.</translation>
    </message>
    <message>
        <source>Shows the deck over a whole screen; Escape ends it.</source>
        <translation>Zeigt den Kartensatz auf einem ganzen Bildschirm; Esc beendet.</translation>
    </message>
    <message>
        <source>The title at the top of the card.</source>
        <translation>Der Titel oben auf der Karte.</translation>
    </message>
    <message>
        <source>The one line under the title.</source>
        <translation>Die eine Zeile unter dem Titel.</translation>
    </message>
    <message>
        <source>What the class is asked before the answer is shown.</source>
        <translation>Was die Klasse gefragt wird, bevor die Antwort erscheint.</translation>
    </message>
    <message>
        <source>The answer; it comes with the next press.</source>
        <translation>Die Antwort; sie kommt mit dem nächsten Druck.</translation>
    </message>
    <message>
        <source>Notes that only you see while you show.</source>
        <translation>Notizen, die beim Zeigen nur Sie sehen.</translation>
    </message>
    <message>
        <source>The picture of the card: the line, the profile, the cast, the river, two rigs, flies, pools, tips, or words alone.</source>
        <translation>Das Bild der Karte: Schnur, Profil, Wurf, Fluss, zwei Montagen, Fliegen, Pools, Spitzen oder nur Worte.</translation>
    </message>
    <message>
        <source>The reading that stands large with the answer.</source>
        <translation>Die Anzeige, die groß bei der Antwort steht.</translation>
    </message>
    <message>
        <source>What lies on the card, and where it is taken from.</source>
        <translation>Was auf der Karte liegt, und woher es genommen wird.</translation>
    </message>
    <message>
        <source>The rigs of the trip with their flies; the open rig is the first.</source>
        <translation>Die Montagen der Reise mit ihren Fliegen; die offene ist die erste.</translation>
    </message>
    <message>
        <source>The pools of the trip. Those that are ticked have to be served.</source>
        <translation>Die Pools der Reise. Die angekreuzten müssen bedient werden.</translation>
    </message>
    <message>
        <source>The most tips to carry; what then has nothing is said.</source>
        <translation>Die meisten Spitzen, die mitkommen; was dann nichts hat, wird gesagt.</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays.</source>
        <translation>Nur Spitzen einer Länge, damit die Wurfbewegung bleibt.</translation>
    </message>
    <message>
        <source>Tips that are kept or left out whatever is packed; Enter in the list takes that back.</source>
        <translation>Spitzen, die in jedem Fall mitkommen oder fehlen; Eingabe in der Liste nimmt das zurück.</translation>
    </message>
    <message>
        <source>A tip a row, a pool and fly a column: the glyph is its verdict there, ringed where it is the one taken.</source>
        <translation>Eine Spitze je Zeile, Pool und Fliege je Spalte: das Zeichen ist ihr Urteil dort, umrandet, wo sie genommen wird.</translation>
    </message>
    <message>
        <source>Makes the cut sheet of these tips at the bench.</source>
        <translation>Macht an der Werkbank den Zuschnitt dieser Spitzen.</translation>
    </message>
    <message>
        <source>Closes this window; the wallet stays packed.</source>
        <translation>Schließt dieses Fenster; das Etui bleibt gepackt.</translation>
    </message>
    <message>
        <source>Leaves the pages that hold these words.</source>
        <translation>Lässt die Seiten, die diese Wörter enthalten.</translation>
    </message>
    <message>
        <source>The pages of the help.</source>
        <translation>Die Seiten der Hilfe.</translation>
    </message>
    <message>
        <source>An answer to the line beside it.</source>
        <translation>Eine Antwort auf die Zeile daneben.</translation>
    </message>
    <message>
        <source>The rod: length, line number, and the window of head weights for each style. The head is judged by these.</source>
        <translation>Die Rute: Länge, Schnurklasse und das Fenster der Kopfgewichte für jede Art. Der Kopf wird danach beurteilt.</translation>
    </message>
    <message>
        <source>The water: how fast it runs on top, how deep it is, how cold and how salty. The depth of the fly follows from it.</source>
        <translation>Das Wasser: wie schnell es oben fließt, wie tief, kalt und salzig es ist. Die Tiefe der Fliege folgt daraus.</translation>
    </message>
    <message>
        <source>The name of the rig and notes about it; both are saved with it.</source>
        <translation>Der Name der Montage und Notizen dazu; beides wird mit ihr gespeichert.</translation>
    </message>
    <message>
        <source>Why a reading says what it says: the figures it came from, the formula, the limits, and whose they are.</source>
        <translation>Warum eine Anzeige sagt, was sie sagt: die Werte, die Formel, die Grenzen und wessen sie sind.</translation>
    </message>
    <message>
        <source>How deep this rig fishes in every pool, half a foot a second slower and faster than the pool states.</source>
        <translation>Wie tief diese Montage in jedem Pool fischt, einen halben Fuß je Sekunde langsamer und schneller als angegeben.</translation>
    </message>
    <message>
        <source>In one line, how B does against A.</source>
        <translation>In einer Zeile, wie B gegen A abschneidet.</translation>
    </message>
    <message>
        <source>What stands on the chosen card: its words, its picture, its rigs.</source>
        <translation>Was auf der gewählten Karte steht: ihre Worte, ihr Bild, ihre Montagen.</translation>
    </message>
    <message>
        <source>The Clinic: cards in order, one shown at a time.</source>
        <translation>Der Kurs: Karten der Reihe nach, eine nach der anderen gezeigt.</translation>
    </message>
    <message>
        <source>The trip goes in: rigs and pools. The fewest tips that serve them come out.</source>
        <translation>Hinein kommt die Reise: Montagen und Pools. Heraus kommen die wenigsten Spitzen, die genügen.</translation>
    </message>
    <message>
        <source>A task at the bench; what it says follows at once from what is typed.</source>
        <translation>Eine Arbeit an der Werkbank; was sie sagt, folgt sofort aus dem Getippten.</translation>
    </message>
    <message>
        <source>The help of the program; it is searched by the line at the top.</source>
        <translation>Die Hilfe des Programms; die Zeile oben durchsucht sie.</translation>
    </message>
    <message>
        <source>What is wrong in the file, each with its place and what would be right.</source>
        <translation>Was in der Datei falsch ist, jeweils mit der Stelle und was richtig wäre.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>Es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>Only in Compare, where two rigs are (Ctrl+2).</source>
        <translation>Nur im Vergleich, wo zwei Montagen sind (Strg+2).</translation>
    </message>
    <message>
        <source>Only in the Clinic, where the deck is (Ctrl+3).</source>
        <translation>Nur im Kurs, wo der Kartensatz ist (Strg+3).</translation>
    </message>
    <message>
        <source>There is nothing to play: what is missing is said in the picture.</source>
        <translation>Es gibt nichts abzuspielen: was fehlt, steht im Bild.</translation>
    </message>
    <message>
        <source>There is nothing to play yet: the runs of both rigs are not there.</source>
        <translation>Es gibt noch nichts abzuspielen: die Läufe beider Montagen fehlen.</translation>
    </message>
    <message>
        <source>No leader can be proposed from these.</source>
        <translation>Daraus lässt sich kein Vorfach vorschlagen.</translation>
    </message>
    <message>
        <source>The fly is not complete yet: what lacks is said below.</source>
        <translation>Die Fliege ist noch nicht vollständig: was fehlt, steht darunter.</translation>
    </message>
    <message>
        <source>There is no spool to remove.</source>
        <translation>Es gibt keine Spule zu entfernen.</translation>
    </message>
    <message>
        <source>Choose one of your parts in the list first.</source>
        <translation>Wählen Sie zuerst eines Ihrer Teile in der Liste.</translation>
    </message>
    <message>
        <source>The line has no part to keep.</source>
        <translation>Die Schnur hat kein Teil zu behalten.</translation>
    </message>
    <message>
        <source>You have kept no part yet.</source>
        <translation>Sie haben noch kein Teil behalten.</translation>
    </message>
    <message>
        <source>No line of the list could be read as a part yet.</source>
        <translation>Noch keine Zeile der Liste ließ sich als Teil lesen.</translation>
    </message>
    <message>
        <source>Say first how much is taken off.</source>
        <translation>Sagen Sie zuerst, wie viel abkommt.</translation>
    </message>
    <message>
        <source>Give at least its mass and its length.</source>
        <translation>Geben Sie mindestens Masse und Länge an.</translation>
    </message>
    <message>
        <source>Without loops none is used up.</source>
        <translation>Ohne Schlaufen wird nichts verbraucht.</translation>
    </message>
    <message>
        <source>There is nothing of that to weigh on this part.</source>
        <translation>Davon gibt es an diesem Teil nichts zu wiegen.</translation>
    </message>
    <message>
        <source>Only this rig is cut already.</source>
        <translation>Es wird schon nur diese Montage zugeschnitten.</translation>
    </message>
    <message>
        <source>There is nothing to cut: no spool, or no tip of level line.</source>
        <translation>Es gibt nichts zu schneiden: keine Spule, oder keine Spitze aus gleichmäßiger Schnur.</translation>
    </message>
    <message>
        <source>Time at least one fall first.</source>
        <translation>Stoppen Sie zuerst mindestens einen Fall.</translation>
    </message>
    <message>
        <source>This piece was not timed.</source>
        <translation>Dieses Stück wurde nicht gestoppt.</translation>
    </message>
    <message>
        <source>Say first how deep the fly was found.</source>
        <translation>Sagen Sie zuerst, wie tief die Fliege war.</translation>
    </message>
    <message>
        <source>The current of this water was not measured.</source>
        <translation>Die Strömung dieses Wassers wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>Choose a pool in the list first, or add one.</source>
        <translation>Wählen Sie zuerst einen Pool in der Liste, oder fügen Sie einen hinzu.</translation>
    </message>
    <message>
        <source>No wallet was packed yet (Ctrl+Shift+P).</source>
        <translation>Es wurde noch kein Etui gepackt (Strg+Umschalt+P).</translation>
    </message>
    <message>
        <source>There is no card: make one of the bench&apos;s picture, or a blank one.</source>
        <translation>Es gibt keine Karte: machen Sie eine aus dem Bild der Werkbank, oder eine leere.</translation>
    </message>
    <message>
        <source>This card has no rig to change.</source>
        <translation>Diese Karte hat keine Montage zum Ändern.</translation>
    </message>
    <message>
        <source>Weigh the part first.</source>
        <translation>Wiegen Sie das Teil zuerst.</translation>
    </message>
    <message>
        <source>A part keeps at least one section.</source>
        <translation>Ein Teil behält mindestens einen Abschnitt.</translation>
    </message>
    <message>
        <source>No file was opened yet.</source>
        <translation>Es wurde noch keine Datei geöffnet.</translation>
    </message>
    <message>
        <source>The cast and the air are the usual ones already.</source>
        <translation>Wurf und Luft sind schon die üblichen.</translation>
    </message>
    <message>
        <source>Gives this part the loops that your bench makes, so that they are weighed with it. The label on the cut sheet counts them already.</source>
        <translation>Gibt diesem Teil die Schlaufen, die an Ihrer Werkbank gemacht werden, damit sie mitgewogen werden. Das Etikett auf dem Zuschnitt zählt sie schon.</translation>
    </message>
    <message>
        <source>From these the leader is proposed, and drawn below to scale.</source>
        <translation>Daraus wird das Vorfach vorgeschlagen und darunter maßstäblich gezeichnet.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>Der Kartensatz hat noch keine Karte.</translation>
    </message>
    <message>
        <source>Where the cast lands: degrees below straight across. The steeper downstream, the sooner the line pulls the fly up.</source>
        <translation>Wo der Wurf landet: Grad stromab von genau quer. Je steiler stromab, desto eher zieht die Schnur die Fliege hoch.</translation>
    </message>
    <message>
        <source>No card stands above.</source>
        <translation>Darüber steht keine Karte.</translation>
    </message>
    <message>
        <source>No card stands below.</source>
        <translation>Darunter steht keine Karte.</translation>
    </message>
    <message>
        <source>The first card stands.</source>
        <translation>Es steht die erste Karte da.</translation>
    </message>
    <message>
        <source>The last card stands, with its answer.</source>
        <translation>Es steht die letzte Karte da, mit ihrer Antwort.</translation>
    </message>
    <message>
        <source>Choose a rig of the list first; the open one stays.</source>
        <translation>Wählen Sie zuerst eine Montage in der Liste; die offene bleibt.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first, one that is not kept yet.</source>
        <translation>Wählen Sie zuerst eine Spitze in der Tabelle, eine, die noch nicht behalten wird.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first.</source>
        <translation>Wählen Sie zuerst eine Spitze in der Tabelle.</translation>
    </message>
    <message>
        <source>No tip is packed.</source>
        <translation>Es ist keine Spitze gepackt.</translation>
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
    <message>
        <source>%1, %2</source>
        <comment>a pool&apos;s depth, its current</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DifferenceList</name>
    <message>
        <source>In what B differs from A</source>
        <translation>Worin sich B von A unterscheidet</translation>
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
    <message>
        <source>A and B are the same line. Change one of them, drag a part across, try a part from the Shelf, or open another rig: samples are in Menu, Help.</source>
        <translation>A und B sind dieselbe Schnur. Eine davon ändern, ein Teil hinüberziehen, ein Teil aus dem Regal versuchen oder eine andere Montage öffnen: Beispiele stehen in Menü, Hilfe.</translation>
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
    <name>grainwise::ui::FilePage</name>
    <message>
        <source>Export the settings</source>
        <translation>Einstellungen ausgeben</translation>
    </message>
    <message>
        <source>Settings (*.conf);;All files (*)</source>
        <translation>Einstellungen (*.conf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import settings</source>
        <translation>Einstellungen einlesen</translation>
    </message>
    <message>
        <source>Copies of unsaved work</source>
        <translation>Kopien ungesicherter Arbeit</translation>
    </message>
    <message>
        <source>A copy at most so long after a change</source>
        <translation>Eine Kopie höchstens so lange nach einer Änderung</translation>
    </message>
    <message>
        <source>All settings as a file</source>
        <translation>Alle Einstellungen als Datei</translation>
    </message>
    <message>
        <source>For another machine or another person: units, looks, limits, weights, new rigs and bench habits. Rigs, pools, own parts and what was open last are not in it.</source>
        <translation>Für einen anderen Rechner oder jemand anderen: Einheiten, Aussehen, Grenzen, Gewichte, neue Montagen und Gewohnheiten der Werkbank. Montagen, Pools, eigene Teile und das zuletzt Geöffnete sind nicht dabei.</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Ausgeben…</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>Put all settings back to usual</source>
        <translation>Alle Einstellungen auf das Übliche zurücksetzen</translation>
    </message>
    <message>
        <source>All settings are as usual.</source>
        <translation>Alle Einstellungen sind wie üblich.</translation>
    </message>
    <message>
        <source>Take that back</source>
        <translation>Das zurücknehmen</translation>
    </message>
    <message>
        <source>The settings are as they were before.</source>
        <translation>Die Einstellungen sind wie zuvor.</translation>
    </message>
    <message>
        <source>They are kept in this file:</source>
        <translation>Sie liegen in dieser Datei:</translation>
    </message>
    <message>
        <source>Where the settings are kept</source>
        <translation>Wo die Einstellungen liegen</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 wurde nicht geschrieben: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; all settings stay as they are.
%2</source>
        <translation>%1 wurde nicht übernommen; alle Einstellungen bleiben, wie sie sind.
%2</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Übernommen: %1</translation>
    </message>
    <message>
        <source>usual: %1 s, ours</source>
        <translation>üblich: %1 s, von uns</translation>
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
    <message>
        <source>Kept among my parts.</source>
        <translation>Bei meinen Teilen aufgehoben.</translation>
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
    <name>grainwise::ui::LeaderDrawing</name>
    <message>
        <source>%1 %2; thickness × %3</source>
        <comment>a measure, its unit, how many times the thickness is magnified</comment>
        <translation>%1 %2; Dicke × %3</translation>
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
    <message>
        <source>Keep it among my parts</source>
        <translation>Bei meinen Teilen aufheben</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>a leader, its butt, its tippet</comment>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>My leaders</source>
        <translation>Meine Vorfächer</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Bei meinen Teilen aufgehoben.</translation>
    </message>
    <message>
        <source>To the spools</source>
        <translation>Zu den Spulen</translation>
    </message>
    <message>
        <source>Tied to</source>
        <translation>Geknüpft an</translation>
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
    <name>grainwise::ui::LookPage</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Längen</translation>
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
        <source>Weights</source>
        <translation>Gewichte</translation>
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
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
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
        <source>Looks</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
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
        <translation>Sonnenlicht</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Beamer</translation>
    </message>
    <message>
        <source>Size of type and diagrams</source>
        <translation>Größe von Schrift und Bildern</translation>
    </message>
    <message>
        <source>Reduce motion: nothing slides or plays by itself</source>
        <translation>Weniger Bewegung: nichts gleitet oder läuft von selbst</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of words and numbers, from the next start</source>
        <translation>Sprache von Wörtern und Zahlen, ab dem nächsten Start</translation>
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
        <source>A–</source>
        <translation>A–</translation>
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
    <message>
        <source>Rigs, decks, shelves, pools, spools (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;All files (*)</source>
        <translation>Montagen, Kartensätze, Regale, Pools, Spulen (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json);;All files (*)</source>
        <translation>Montagen (*.rig.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Drop one file that is on this machine, or two rigs to compare them.</source>
        <translation>Legen Sie eine Datei ab, die auf diesem Rechner ist, oder zwei Montagen, um sie zu vergleichen.</translation>
    </message>
    <message>
        <source>The pools of %1 are there now; Undo brings yours back.</source>
        <translation>Die Pools aus %1 sind jetzt da; Rückgängig bringt Ihre zurück.</translation>
    </message>
    <message>
        <source>The spools of %1 are there now; Undo brings yours back.</source>
        <translation>Die Spulen aus %1 sind jetzt da; Rückgängig bringt Ihre zurück.</translation>
    </message>
    <message>
        <source>Of %1 added to your parts: %2; there already: %3. Undo takes them off.</source>
        <translation>Aus %1 zu Ihren Teilen hinzugefügt: %2; schon da: %3. Rückgängig nimmt sie heraus.</translation>
    </message>
    <message>
        <source>unnamed deck</source>
        <translation>Kartensatz ohne Namen</translation>
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
    <name>grainwise::ui::NewRigPage</name>
    <message>
        <source>Line speed</source>
        <translation>Schnurgeschwindigkeit</translation>
    </message>
    <message>
        <source>Height of the loop</source>
        <translation>Höhe der Schlaufe</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Abwurfwinkel</translation>
    </message>
    <message>
        <source>Rod tip above the water</source>
        <translation>Rutenspitze über dem Wasser</translation>
    </message>
    <message>
        <source>Running line outside the rod tip</source>
        <translation>Runningline vor der Rutenspitze</translation>
    </message>
    <message>
        <source>Speed of the surface</source>
        <translation>Geschwindigkeit der Oberfläche</translation>
    </message>
    <message>
        <source>Depth of the water</source>
        <translation>Tiefe des Wassers</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>Temperatur des Wassers</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Schnur draußen</translation>
    </message>
    <message>
        <source>Angle of the cast, down from straight across</source>
        <translation>Winkel des Wurfs, von quer nach stromab</translation>
    </message>
    <message>
        <source>Mend, seconds of slack</source>
        <translation>Mend, Sekunden lose Schnur</translation>
    </message>
    <message>
        <source>What a new rig has from the start. What is left open is as usual for its head; rigs that are there already keep their own.</source>
        <translation>Was eine neue Montage von Anfang an hat. Was offen bleibt, ist wie für ihren Kopf üblich; vorhandene Montagen behalten das Ihre.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Diese Seite auf das Übliche zurücksetzen</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Wurf</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message>
        <source>usual: by the head, common practice</source>
        <translation>üblich: nach dem Kopf, gängige Praxis</translation>
    </message>
    <message>
        <source>usual: left open</source>
        <translation>üblich: offen</translation>
    </message>
    <message>
        <source>Altitude of the river</source>
        <translation>Höhe des Flusses über dem Meer</translation>
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
    <message>
        <source>%1: a number, %2. A point or a comma is the decimal sign; another unit may be written behind it.</source>
        <comment>name of the field, its range</comment>
        <translation>%1: eine Zahl, %2. Punkt oder Komma ist das Dezimalzeichen; eine andere Einheit darf dahinter stehen.</translation>
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
    <message>
        <source>%1 to %2: weighs %3</source>
        <comment>where a part begins and ends, its mass</comment>
        <translation>%1 bis %2: wiegt %3</translation>
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
    <message>
        <source>Bed</source>
        <translation>Grund</translation>
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
        <source>Start from the rod</source>
        <translation>Von der Rute aus beginnen</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, and the rod maker&apos;s figure comes first. Where none is given, our usual range for the line number is taken.</source>
        <translation>Die Grain auf einer Rute gelten allein für den Kopf, und die Angabe des Rutenherstellers geht vor. Wo keine steht, gilt unser üblicher Bereich für die Schnurklasse.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RulesPage</name>
    <message>
        <source>Put this page back to usual</source>
        <translation>Diese Seite auf das Übliche zurücksetzen</translation>
    </message>
    <message>
        <source>usual: %1, %2</source>
        <comment>the usual value, whose it is</comment>
        <translation>üblich: %1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SamplesMenu</name>
    <message>
        <source>Decks for a class</source>
        <translation>Kartensätze für einen Kurs</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Montagen</translation>
    </message>
    <message>
        <source>Wrong on purpose, to mend</source>
        <translation>Absichtlich falsch, zum Ausbessern</translation>
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
    <name>grainwise::ui::SettingsWindow</name>
    <message>
        <source>Settings - Grainwise</source>
        <translation>Einstellungen - Grainwise</translation>
    </message>
    <message>
        <source>Pages of the settings</source>
        <translation>Seiten der Einstellungen</translation>
    </message>
    <message>
        <source>Units, looks, language</source>
        <translation>Einheiten, Aussehen, Sprache</translation>
    </message>
    <message>
        <source>Limits of the verdicts</source>
        <translation>Grenzen der Urteile</translation>
    </message>
    <message>
        <source>Where a reading turns from one word to the next. No limit is a rod maker&apos;s; a rod&apos;s own window comes first. The commands go by the usual limits.</source>
        <translation>Wo eine Anzeige von einem Wort zum nächsten wechselt. Keine Grenze stammt von einem Rutenbauer; das eigene Fenster der Rute geht vor. Die Befehle richten sich nach den üblichen Grenzen.</translation>
    </message>
    <message>
        <source>Choosing tips</source>
        <translation>Spitzen wählen</translation>
    </message>
    <message>
        <source>What is refused, the verdicts decide. This orders the rest, in the Tip chooser and the wallet.</source>
        <translation>Was abgelehnt wird, entscheiden die Urteile. Das hier ordnet den Rest, in der Spitzenwahl und im Etui.</translation>
    </message>
    <message>
        <source>New rigs</source>
        <translation>Neue Montagen</translation>
    </message>
    <message>
        <source>Habits of the bench</source>
        <translation>Gewohnheiten der Werkbank</translation>
    </message>
    <message>
        <source>Copies and file</source>
        <translation>Kopien und Datei</translation>
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
    <message>
        <source>No spools yet. Say what lies on the bench: its kind, what a foot of it weighs or how thick it is, and how much is left. Or read a list of spools.</source>
        <translation>Noch keine Spulen. Angeben, was auf der Werkbank liegt: die Art, was ein Fuß davon wiegt oder wie dick es ist, und wie viel noch da ist. Oder eine Spulenliste einlesen.</translation>
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
    <message>
        <source>Copy to the other line</source>
        <translation>Zur anderen Schnur kopieren</translation>
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
    <name>grainwise::ui::ValueRow</name>
    <message>
        <source>Reset</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Reset: %1</source>
        <translation>Zurücksetzen: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a name, its unit</comment>
        <translation>%1, %2</translation>
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
    <message>
        <source>Count its loops</source>
        <translation>Schlaufen mitzählen</translation>
    </message>
    <message>
        <source>meant %1; its loops, %2, are not counted yet</source>
        <translation>Soll %1; die Schlaufen, %2, sind noch nicht gezählt</translation>
    </message>
    <message>
        <source>meant %1, of it loops %2 and splice %3</source>
        <translation>Soll %1, davon Schlaufen %2 und Spleiß %3</translation>
    </message>
    <message>
        <source>meant %1: type what the scale shows, then Enter</source>
        <translation>Soll %1: eintippen, was die Waage zeigt, dann Eingabe</translation>
    </message>
    <message>
        <source>Put loops on %1</source>
        <translation>Schlaufen an %1</translation>
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
