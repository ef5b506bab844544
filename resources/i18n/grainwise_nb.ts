<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="nb_NO" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>nylon %1</translation>
    </message>
    <message>
        <source>fluorocarbon %1</source>
        <translation>fluorkarbon %1</translation>
    </message>
    <message>
        <source>floating %1</source>
        <translation>flytende %1</translation>
    </message>
    <message>
        <source>sinking %1</source>
        <translation>synkende %1</translation>
    </message>
    <message>
        <source>sinking %1, %2</source>
        <translation>synkende %1, %2</translation>
    </message>
    <message>
        <source>%1, piece %2</source>
        <translation>%1, stykke %2</translation>
    </message>
    <message>
        <source>%1, sinking piece</source>
        <translation>%1, synkende stykke</translation>
    </message>
    <message>
        <source>%1, floating piece</source>
        <translation>%1, flytende stykke</translation>
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
        <translation>%1: ingen slik spole, %2 trengs. Ikke kappet: %3.</translation>
    </message>
    <message>
        <source>%1: %2 short. Not cut: %3.</source>
        <translation>%1: %2 mangler. Ikke kappet: %3.</translation>
    </message>
    <message>
        <source>%1: enough in all, but no spool is long enough. Not cut: %2.</source>
        <translation>%1: nok til sammen, men ingen spole er lang nok. Ikke kappet: %2.</translation>
    </message>
    <message>
        <source>far too light: were these grams?</source>
        <translation>altfor lett: var dette gram?</translation>
    </message>
    <message>
        <source>far too heavy: were these grains?</source>
        <translation>altfor tungt: var dette grain?</translation>
    </message>
    <message>
        <source>%1 light, %2</source>
        <translation>%1 for lett, %2</translation>
    </message>
    <message>
        <source>%1 heavy, %2</source>
        <translation>%1 for tung, %2</translation>
    </message>
    <message>
        <source>as it should be, within %1</source>
        <translation>som det skal være, innenfor %1</translation>
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
        <translation>Svakest: knuten ved flua, omtrent %1</translation>
    </message>
    <message>
        <source>Weakest: the knot from %1 to %2, about %3</source>
        <translation>Svakest: knuten fra %1 til %2, omtrent %3</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>linje %1: %2</translation>
    </message>
    <message>
        <source>as it should be with its loops</source>
        <translation>som det skal være, med løkkene</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 av %2</translation>
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
        <translation>noe grunt: %1</translation>
    </message>
    <message>
        <source>too shallow: %1</source>
        <translation>for grunt: %1</translation>
    </message>
    <message>
        <source>rather deep: %1</source>
        <translation>noe dypt: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>for dypt: %1</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>ligger på bunnen</translation>
    </message>
    <message>
        <source>stays on top</source>
        <translation>blir i overflaten</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>samme kastbevegelse</translation>
    </message>
    <message>
        <source>longer sweep</source>
        <translation>lengre sveip</translation>
    </message>
    <message>
        <source>shorter sweep</source>
        <translation>kortere sveip</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>et annet kast</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, saktere løft</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, raskere løft</translation>
    </message>
    <message>
        <source>carries the fly</source>
        <translation>bærer flua</translation>
    </message>
    <message>
        <source>only just carries the fly</source>
        <translation>bærer så vidt flua</translation>
    </message>
    <message>
        <source>does not carry the fly</source>
        <translation>bærer ikke flua</translation>
    </message>
    <message>
        <source>will land in a heap</source>
        <translation>faller i en haug</translation>
    </message>
    <message>
        <source>probably will not turn over</source>
        <translation>ruller trolig ikke ut</translation>
    </message>
    <message>
        <source>turns over with little speed to spare</source>
        <translation>ruller ut med lite å gå på</translation>
    </message>
    <message>
        <source>turns over with speed to spare</source>
        <translation>ruller ut med god margin</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a figure: what it means</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 of the head</source>
        <translation>%1 av klumpen</translation>
    </message>
    <message>
        <source>tip %1 × fly</source>
        <translation>tupp %1 × flue</translation>
    </message>
    <message>
        <source>hinges or collapses at the joint</source>
        <translation>knekker eller kollapser i skjøten</translation>
    </message>
    <message>
        <source>wrong share of the head</source>
        <translation>feil andel av klumpen</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>for lite i vannet</translation>
    </message>
    <message>
        <source>wrong length on this rod</source>
        <translation>feil lengde for stanga</translation>
    </message>
    <message>
        <source>the fly is too heavy for it</source>
        <translation>flua er for tung for den</translation>
    </message>
    <message>
        <source>will not turn over</source>
        <translation>ruller ikke ut</translation>
    </message>
    <message>
        <source>another stroke</source>
        <translation>annen kastbevegelse</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>for grunt</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>for dypt</translation>
    </message>
    <message>
        <source>not in the wanted water</source>
        <translation>ikke i ønsket vann</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>ingen tupp</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>på bunnen</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 dypt</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>i overflaten</translation>
    </message>
    <message>
        <source>No head to put a tip on: start from a rod, or drop a head on the line.</source>
        <translation>Ingen klump å sette en tupp på: start fra en stang, eller slipp en klump på lina.</translation>
    </message>
    <message>
        <source>No fly, and everything behind it is there to carry it: drop a fly on the line first.</source>
        <translation>Ingen flue, og alt bak den er der for å bære den: slipp en flue på lina først.</translation>
    </message>
    <message>
        <source>The fly has no mass yet: weigh it, or build it from hook, eyes and wire.</source>
        <translation>Flua har ingen masse ennå: vei den, eller bygg den av krok, øyne og tråd.</translation>
    </message>
    <message>
        <source>The shelf has no tip and no coated leader: add some to it.</source>
        <translation>Hylla har verken tupper eller belagte fortommer: legg til noen.</translation>
    </message>
    <message>
        <source>No pool yet, so depth is not judged: choose the pool to be fished.</source>
        <translation>Ingen høl ennå, så dybden vurderes ikke: velg hølen som skal fiskes.</translation>
    </message>
    <message>
        <source>This pool does not say where the fly is wanted, so depth is not judged: say so under Pools.</source>
        <translation>Hølen sier ikke hvor flua skal gå, så dybden vurderes ikke: si det under Høler.</translation>
    </message>
    <message>
        <source>Nothing on the shelf will do; what comes nearest stands first. Look under Fixes, or try another fly or head.</source>
        <translation>Ingenting på hylla er godt nok; det nærmeste står først. Se under Tiltak, eller prøv en annen flue eller klump.</translation>
    </message>
    <message>
        <source>about %1 down, where it is wanted</source>
        <translation>omtrent %1 dypt, der den skal gå</translation>
    </message>
    <message>
        <source>about %1 down, nearer to it</source>
        <translation>omtrent %1 dypt, nærmere</translation>
    </message>
    <message>
        <source>cast at %1°</source>
        <translation>kast i %1°</translation>
    </message>
    <message>
        <source>%1 s of slack</source>
        <translation>%1 s slakk line</translation>
    </message>
    <message>
        <source>%1 of line out</source>
        <translation>%1 line ute</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a change on the water: what it does</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing was tried</source>
        <translation>ingenting ble prøvd</translation>
    </message>
    <message>
        <source>%1 would do, but for the limits set</source>
        <translation>%1 ville holdt, om det ikke var for grensene</translation>
    </message>
    <message>
        <source>nearest is %1: %2</source>
        <translation>nærmest er %1: %2</translation>
    </message>
    <message>
        <source>the joint</source>
        <translation>skjøten</translation>
    </message>
    <message>
        <source>the head on this rod</source>
        <translation>klumpen på denne stanga</translation>
    </message>
    <message>
        <source>the length on this rod</source>
        <translation>lengden på denne stanga</translation>
    </message>
    <message>
        <source>the tip&apos;s share of the head</source>
        <translation>tuppens andel av klumpen</translation>
    </message>
    <message>
        <source>the line in the water</source>
        <translation>lina i vannet</translation>
    </message>
    <message>
        <source>the fly against the tip</source>
        <translation>flua mot tuppen</translation>
    </message>
    <message>
        <source>the fly against the leader</source>
        <translation>flua mot fortommen</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>hvordan lina bærer flua</translation>
    </message>
    <message>
        <source>the turnover</source>
        <translation>utrullingen</translation>
    </message>
    <message>
        <source>the depth</source>
        <translation>dybden</translation>
    </message>
    <message>
        <source>trim %1 off the front of %2</source>
        <translation>kutt %1 foran på %2</translation>
    </message>
    <message>
        <source>trim %1 off the rear of %2</source>
        <translation>kutt %1 bak på %2</translation>
    </message>
    <message>
        <source>cut %1 off the fly end of %2</source>
        <translation>kutt %1 av flueenden på %2</translation>
    </message>
    <message>
        <source>cut %1 off the rod end of %2</source>
        <translation>kutt %1 av stangenden på %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is changed: for which part</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>put on a tip: %1</source>
        <translation>sett på en tupp: %1</translation>
    </message>
    <message>
        <source>take off %1</source>
        <translation>ta av %1</translation>
    </message>
    <message>
        <source>cast at %1° instead of %2°</source>
        <translation>kast i %1° i stedet for %2°</translation>
    </message>
    <message>
        <source>%1 s of slack instead of %2</source>
        <translation>%1 s slakk line i stedet for %2</translation>
    </message>
    <message>
        <source>%1 of line out instead of %2</source>
        <translation>%1 line ute i stedet for %2</translation>
    </message>
    <message>
        <source>tie %1 shorter by %2</source>
        <translation>knyt %1 kortere med %2</translation>
    </message>
    <message>
        <source>tie %1 longer by %2</source>
        <translation>knyt %1 lengre med %2</translation>
    </message>
    <message>
        <source>put %1 behind the head</source>
        <translation>sett %1 bak klumpen</translation>
    </message>
    <message>
        <source>change the tip</source>
        <translation>bytt tupp</translation>
    </message>
    <message>
        <source>take the tip off</source>
        <translation>ta av tuppen</translation>
    </message>
    <message>
        <source>change the leader</source>
        <translation>bytt fortom</translation>
    </message>
    <message>
        <source>change the tippet</source>
        <translation>bytt fortomsspiss</translation>
    </message>
    <message>
        <source>change the fly</source>
        <translation>bytt flue</translation>
    </message>
    <message>
        <source>change the head</source>
        <translation>bytt klump</translation>
    </message>
    <message>
        <source>change the swing</source>
        <translation>endre svingen</translation>
    </message>
    <message>
        <source>cut the tip</source>
        <translation>kutt tuppen</translation>
    </message>
    <message>
        <source>tie the leader anew</source>
        <translation>knyt fortommen på nytt</translation>
    </message>
    <message>
        <source>change the extension</source>
        <translation>bytt forlengelse</translation>
    </message>
    <message>
        <source>trim the head</source>
        <translation>kutt klumpen</translation>
    </message>
    <message>
        <source>eases %1</source>
        <translation>letter på %1</translation>
    </message>
    <message>
        <source>repairs %1</source>
        <translation>retter %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what a change repairs; what it does to the stroke</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>No pool is chosen: tick the pools of the trip.</source>
        <translation>Ingen høl er valgt: kryss av for hølene på turen.</translation>
    </message>
    <message>
        <source>Nothing on the shelf serves any pool and fly of this trip: try other flies or another head.</source>
        <translation>Ingenting på hylla passer til noen høl og flue på denne turen: prøv andre fluer eller en annen klump.</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>skjøt</translation>
    </message>
    <message>
        <source>tip share</source>
        <translation>tuppandel</translation>
    </message>
    <message>
        <source>line in the water</source>
        <translation>line i vannet</translation>
    </message>
    <message>
        <source>length on the rod</source>
        <translation>lengde på stangen</translation>
    </message>
    <message>
        <source>fly against tip</source>
        <translation>flue mot tupp</translation>
    </message>
    <message>
        <source>carrying the fly</source>
        <translation>å bære flua</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>utrulling</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>dybde</translation>
    </message>
    <message>
        <source>stroke</source>
        <translation>kastbevegelse</translation>
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
        <translation>%1 lengre</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 kortere</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 tyngre</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 lettere</translation>
    </message>
    <message>
        <source>%1 of it sink instead of %2</source>
        <translation>%1 av den synker i stedet for %2</translation>
    </message>
    <message>
        <source>sinks at %1 instead of %2</source>
        <translation>synker %1 i stedet for %2</translation>
    </message>
    <message>
        <source>%1 at the rod end instead of %2</source>
        <translation>%1 i stangenden i stedet for %2</translation>
    </message>
    <message>
        <source>%1 at the fly end instead of %2</source>
        <translation>%1 i flueenden i stedet for %2</translation>
    </message>
    <message>
        <source>%1 at the butt instead of %2</source>
        <translation>%1 i tykkenden i stedet for %2</translation>
    </message>
    <message>
        <source>%1 at the front instead of %2</source>
        <translation>%1 foran i stedet for %2</translation>
    </message>
    <message>
        <source>another taper</source>
        <translation>en annen taper</translation>
    </message>
    <message>
        <source>bulkier</source>
        <translation>mer omfangsrik</translation>
    </message>
    <message>
        <source>sparser</source>
        <translation>slankere</translation>
    </message>
    <message>
        <source>more compact</source>
        <translation>mer kompakt</translation>
    </message>
    <message>
        <source>less compact</source>
        <translation>mindre kompakt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ingen</translation>
    </message>
    <message>
        <source>length %1, now %2</source>
        <translation>lengde %1, nå %2</translation>
    </message>
    <message>
        <source>line number %1, now %2</source>
        <translation>lineklasse %1, nå %2</translation>
    </message>
    <message>
        <source>head from %1, now %2</source>
        <translation>klump fra %1, nå %2</translation>
    </message>
    <message>
        <source>head up to %1, now %2</source>
        <translation>klump opp til %1, nå %2</translation>
    </message>
    <message>
        <source>surface %1, now %2</source>
        <translation>overflate %1, nå %2</translation>
    </message>
    <message>
        <source>%1 deep, now %2</source>
        <translation>%1 dypt, nå %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, nå %2</translation>
    </message>
    <message>
        <source>salt %1 g/kg, now %2</source>
        <translation>salt %1 g/kg, nå %2</translation>
    </message>
    <message>
        <source>line speed %1, now %2</source>
        <translation>linehastighet %1, nå %2</translation>
    </message>
    <message>
        <source>loop %1, now %2</source>
        <translation>bukt %1, nå %2</translation>
    </message>
    <message>
        <source>launched at %1°, now %2°</source>
        <translation>sendt ut i %1°, nå %2°</translation>
    </message>
    <message>
        <source>rod tip at %1, now %2</source>
        <translation>stangtupp på %1, nå %2</translation>
    </message>
    <message>
        <source>overhang %1, now %2</source>
        <translation>overheng %1, nå %2</translation>
    </message>
    <message>
        <source>line out %1, now %2</source>
        <translation>line ute %1, nå %2</translation>
    </message>
    <message>
        <source>angle %1°, now %2°</source>
        <translation>vinkel %1°, nå %2°</translation>
    </message>
    <message>
        <source>slack %1 s, now %2 s</source>
        <translation>slakk %1 s, nå %2 s</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no joint</source>
        <translation>ingen skjøt</translation>
    </message>
    <message>
        <source>Now lands in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Faller nå i en haug: mer linehastighet, en kortere fortom eller en mindre flue</translation>
    </message>
    <message>
        <source>Now probably does not turn over: more line speed or a smaller fly</source>
        <translation>Ruller nå trolig ikke ut: mer linehastighet eller en mindre flue</translation>
    </message>
    <message>
        <source>Now turns over with little speed to spare: a clean stroke</source>
        <translation>Ruller nå ut med lite å gå på: et rent kast</translation>
    </message>
    <message>
        <source>Now turns over with speed to spare</source>
        <translation>Ruller nå ut med god margin</translation>
    </message>
    <message>
        <source>Nothing to turn over</source>
        <translation>Ingenting å rulle ut</translation>
    </message>
    <message>
        <source>Now there is a line to turn over</source>
        <translation>Nå er det line som ruller ut</translation>
    </message>
    <message>
        <source>Turns over more easily</source>
        <translation>Ruller lettere ut</translation>
    </message>
    <message>
        <source>Turns over less easily</source>
        <translation>Ruller tyngre ut</translation>
    </message>
    <message>
        <source>The line now does not carry the fly</source>
        <translation>Lina bærer nå ikke flua</translation>
    </message>
    <message>
        <source>The line now only just carries the fly</source>
        <translation>Lina bærer nå så vidt flua</translation>
    </message>
    <message>
        <source>The line now carries the fly</source>
        <translation>Lina bærer nå flua</translation>
    </message>
    <message>
        <source>Carries the fly better</source>
        <translation>Bærer flua bedre</translation>
    </message>
    <message>
        <source>Carries the fly less well</source>
        <translation>Bærer flua dårligere</translation>
    </message>
    <message>
        <source>Now kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Slår nå over: en tyngre flue, en lengre fortom eller en lettere tupp</translation>
    </message>
    <message>
        <source>Now dies before the fly is round</source>
        <translation>Dør nå ut før flua er rundt</translation>
    </message>
    <message>
        <source>The fly comes round faster</source>
        <translation>Flua kommer raskere rundt</translation>
    </message>
    <message>
        <source>The fly comes round softer</source>
        <translation>Flua kommer mykere rundt</translation>
    </message>
    <message>
        <source>the joints</source>
        <translation>skjøtene</translation>
    </message>
    <message>
        <source>the head on the rod</source>
        <translation>klumpen på stanga</translation>
    </message>
    <message>
        <source>the length of the line</source>
        <translation>lengden på lina</translation>
    </message>
    <message>
        <source>the share of the tip</source>
        <translation>tuppens andel</translation>
    </message>
    <message>
        <source>the anchor</source>
        <translation>ankeret</translation>
    </message>
    <message>
        <source>what the fly asks of the line</source>
        <translation>det flua krever av lina</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>hvordan lina bærer flua</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>utrulling</translation>
    </message>
    <message>
        <source>how fast the fly comes round</source>
        <translation>hvor fort flua kommer rundt</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>dybde</translation>
    </message>
    <message>
        <source>the time of the swing</source>
        <translation>tiden for svingen</translation>
    </message>
    <message>
        <source>the stroke</source>
        <translation>kastbevegelsen</translation>
    </message>
    <message>
        <source>%1, another</source>
        <translation>%1, en annen</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Only A has %1</source>
        <translation>Bare A har %1</translation>
    </message>
    <message>
        <source>Only B has %1</source>
        <translation>Bare B har %1</translation>
    </message>
    <message>
        <source>Another rod</source>
        <translation>En annen stang</translation>
    </message>
    <message>
        <source>Another water</source>
        <translation>Et annet vann</translation>
    </message>
    <message>
        <source>Another cast</source>
        <translation>Et annet kast</translation>
    </message>
    <message>
        <source>Another swing</source>
        <translation>En annen sving</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 til %2 %3</translation>
    </message>
    <message>
        <source>both on the bottom</source>
        <translation>begge på bunnen</translation>
    </message>
    <message>
        <source>B lies on the bottom</source>
        <translation>B ligger på bunnen</translation>
    </message>
    <message>
        <source>A lies on the bottom</source>
        <translation>A ligger på bunnen</translation>
    </message>
    <message>
        <source>no difference for certain</source>
        <translation>ingen sikker forskjell</translation>
    </message>
    <message>
        <source>B %1 deeper (%2)</source>
        <translation>B %1 dypere (%2)</translation>
    </message>
    <message>
        <source>B %1 shallower (%2)</source>
        <translation>B %1 grunnere (%2)</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>samme kastbevegelse</translation>
    </message>
    <message>
        <source>a longer sweep</source>
        <translation>et lengre sveip</translation>
    </message>
    <message>
        <source>a shorter sweep</source>
        <translation>et kortere sveip</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>et annet kast</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, saktere løft</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, raskere løft</translation>
    </message>
    <message>
        <source>Lies on the bottom as before</source>
        <translation>Ligger på bunnen som før</translation>
    </message>
    <message>
        <source>Now lies on the bottom</source>
        <translation>Ligger nå på bunnen</translation>
    </message>
    <message>
        <source>Now swims clear of the bottom</source>
        <translation>Går nå klar av bunnen</translation>
    </message>
    <message>
        <source>Swims %1 deeper (%2)</source>
        <translation>Går %1 dypere (%2)</translation>
    </message>
    <message>
        <source>Swims %1 shallower (%2)</source>
        <translation>Går %1 grunnere (%2)</translation>
    </message>
    <message>
        <source>wrong head for this rod</source>
        <translation>feil klump for denne stanga</translation>
    </message>
    <message>
        <source>fits the rod</source>
        <translation>passer stanga</translation>
    </message>
    <message>
        <source>a touch light</source>
        <translation>litt lett</translation>
    </message>
    <message>
        <source>a touch heavy</source>
        <translation>litt tung</translation>
    </message>
    <message>
        <source>Line of %1 rods</source>
        <translation>Line på %1 stanglengder</translation>
    </message>
    <message>
        <source>Tip %1 of the head</source>
        <translation>Tupp %1 av klumpen</translation>
    </message>
    <message>
        <source>Anchor of %1 rods</source>
        <translation>Anker på %1 stanglengder</translation>
    </message>
    <message>
        <source>Tip %1 × the fly</source>
        <translation>Tupp %1 × flua</translation>
    </message>
    <message>
        <source>Leader %1 × the fly</source>
        <translation>Fortom %1 × flua</translation>
    </message>
    <message>
        <source>Now it has a depth</source>
        <translation>Nå har den en dybde</translation>
    </message>
    <message>
        <source>Now it has no depth</source>
        <translation>Nå har den ingen dybde</translation>
    </message>
    <message>
        <source>Takes %1 s longer to come round</source>
        <translation>Bruker %1 s mer på å komme rundt</translation>
    </message>
    <message>
        <source>Comes round %1 s sooner</source>
        <translation>Kommer rundt %1 s tidligere</translation>
    </message>
    <message>
        <source>Now it comes round</source>
        <translation>Nå kommer den rundt</translation>
    </message>
    <message>
        <source>Now it never comes round</source>
        <translation>Nå kommer den aldri rundt</translation>
    </message>
    <message>
        <source>No more than is known: %1</source>
        <translation>Ikke mer enn det man vet: %1</translation>
    </message>
    <message>
        <source>Choose it on the lines</source>
        <translation>Vis på linene</translation>
    </message>
    <message>
        <source>no cast to show</source>
        <translation>ikke noe kast å vise</translation>
    </message>
    <message>
        <source>the fly is round after %1 s</source>
        <translation>flua er rundt etter %1 s</translation>
    </message>
    <message>
        <source>does not turn over</source>
        <translation>ruller ikke ut</translation>
    </message>
    <message>
        <source>no swing to show</source>
        <translation>ingen sving å vise</translation>
    </message>
    <message>
        <source>straight below after %1 s</source>
        <translation>rett nedenfor etter %1 s</translation>
    </message>
    <message>
        <source>never comes straight below</source>
        <translation>kommer aldri rett nedenfor</translation>
    </message>
    <message>
        <source>A is better here</source>
        <translation>A er bedre her</translation>
    </message>
    <message>
        <source>B is better here</source>
        <translation>B er bedre her</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>ingen forskjell</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>ikke mer enn det man vet</translation>
    </message>
    <message>
        <source>both fit</source>
        <translation>begge passer</translation>
    </message>
    <message>
        <source>no better in either</source>
        <translation>ingen er bedre</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>på bunnen</translation>
    </message>
    <message>
        <source>Joint %1</source>
        <translation>Skjøt %1</translation>
    </message>
    <message>
        <source>Head %1</source>
        <translation>Klump %1</translation>
    </message>
    <message>
        <source>the usual height</source>
        <comment>of a river</comment>
        <translation>den vanlige høyden</translation>
    </message>
    <message>
        <source>air at %1, now %2</source>
        <translation>luft ved %1, nå %2</translation>
    </message>
    <message>
        <source>another bed</source>
        <translation>annen bunn</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>card %1: %2</source>
        <translation>kort %1: %2</translation>
    </message>
    <message>
        <source>This deck has no cards yet.</source>
        <translation>Denne kortstokken har ingen kort ennå.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>side %1 av %2</translation>
    </message>
    <message>
        <source>Depths are estimates and no guide to wading.</source>
        <translation>Dybdene er anslag og ingen rettesnor for vading.</translation>
    </message>
    <message>
        <source>%1, card %2 of %3</source>
        <translation>%1, kort %2 av %3</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Svar</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notater</translation>
    </message>
    <message>
        <source>no fly yet</source>
        <translation>ingen flue ennå</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>bunn</translation>
    </message>
    <message>
        <source>no swing</source>
        <translation>ingen sving</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>i overflaten</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Klump på stang</translation>
    </message>
    <message>
        <source>%1 in %2–%3</source>
        <translation>%1 i %2–%3</translation>
    </message>
    <message>
        <source>Working length</source>
        <translation>Arbeidslengde</translation>
    </message>
    <message>
        <source>%1 rods</source>
        <translation>%1 stanglengder</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Tuppandel</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 av %3</translation>
    </message>
    <message>
        <source>no rule for this style of head</source>
        <translation>ingen regel for denne klumptypen</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>I vannet</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Flue mot tupp</translation>
    </message>
    <message>
        <source>%1 ×: %2 on %3</source>
        <translation>%1 ×: %2 på %3</translation>
    </message>
    <message>
        <source>Fly against leader</source>
        <translation>Flue mot fortom</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Oppsett</translation>
    </message>
    <message>
        <source>What each foot weighs: %1, over %2 from the back of the head</source>
        <translation>Hva hver fot veier: %1, over %2 fra bakenden av klumpen</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>meter</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>fot</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Hva det sier</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Utrulling</translation>
    </message>
    <message>
        <source>Circle: fits. Triangle: watch it. Square: wrong. Limits are common practice or ours.</source>
        <translation>Sirkel: passer. Trekant: pass på. Firkant: feil. Grensene er vanlig praksis eller våre egne.</translation>
    </message>
    <message>
        <source>How deep on the swing, %1, an estimate: four swings in five</source>
        <translation>Hvor dypt i svingen, %1, et anslag: fire av fem svinger</translation>
    </message>
    <message>
        <source>State a pool&apos;s speed and depth to have its depths here.</source>
        <translation>Oppgi strøm og dybde for en høl, så står dybdene for den her.</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Høl</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>Dyp</translation>
    </message>
    <message>
        <source>Slower water</source>
        <translation>Saktere vann</translation>
    </message>
    <message>
        <source>As stated</source>
        <translation>Som oppgitt</translation>
    </message>
    <message>
        <source>Faster water</source>
        <translation>Raskere vann</translation>
    </message>
    <message>
        <source>This water</source>
        <translation>Dette vannet</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Wallet: what I pack</source>
        <translation>Mappe: det jeg pakker</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Tupp</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Vekt</translation>
    </message>
    <message>
        <source>For which pool</source>
        <translation>For hvilken høl</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Pakket</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sikkerhet</translation>
    </message>
    <message>
        <source>estimate, side %1 of 2</source>
        <translation>anslag, side %1 av 2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Dato</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Lærer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Navn</translation>
    </message>
    <message>
        <source>Try in this order</source>
        <translation>Prøv i denne rekkefølgen</translation>
    </message>
    <message>
        <source>1. Angle and slack: cast squarer, mend a second longer. It costs nothing.</source>
        <translation>1. Vinkel og slakk: kast mer rett over, mend et sekund lenger. Det koster ingenting.</translation>
    </message>
    <message>
        <source>2. The fly: the same weight on a slimmer fly sinks further, then a heavier one.</source>
        <translation>2. Flua: samme vekt på en slankere flue synker lenger, deretter en tyngre.</translation>
    </message>
    <message>
        <source>3. The tip: keep its length, let more or less of it sink; then its weight.</source>
        <translation>3. Tuppen: behold lengden, la mer eller mindre av den synke; deretter vekten.</translation>
    </message>
    <message>
        <source>What I changed, and what happened</source>
        <translation>Hva jeg endret, og hva som skjedde</translation>
    </message>
    <message>
        <source>%1: the name should end in .pdf, .png or .svg</source>
        <translation>%1: navnet bør slutte på .pdf, .png eller .svg</translation>
    </message>
    <message>
        <source>Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Stenger leder strøm: hold avstand til kraftlinjer, og stans i tordenvær.</translation>
    </message>
    <message>
        <source>Cut sheet: %1</source>
        <translation>Kappeliste: %1</translation>
    </message>
    <message>
        <source>%1. Marks run from one end of each spool; each spool to its own scale.</source>
        <translation>%1. Merkene måles fra den ene enden av hver spole; hver spole i sin egen målestokk.</translation>
    </message>
    <message>
        <source>Blades cut and heat burns: cut away from yourself, weld with the window open, wear glasses when you test a knot or loop.</source>
        <translation>Kniver kutter og varme brenner: skjær bort fra deg, sveis med åpent vindu, bruk briller når du prøver en knute eller løkke.</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <translation>%1, side %2 av %3</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>the rig %1</source>
        <translation>oppsettet %1</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>et oppsett</translation>
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
        <translation>stanglengder line: %1</translation>
    </message>
    <message>
        <source>of the head: %1</source>
        <translation>av klumpen: %1</translation>
    </message>
    <message>
        <source>in %1–%2: %3</source>
        <translation>i %1–%2: %3</translation>
    </message>
    <message>
        <source>the wet fly</source>
        <translation>den våte flua</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>bunn</translation>
    </message>
    <message>
        <source>it lies on the bed</source>
        <translation>den ligger på bunnen</translation>
    </message>
    <message>
        <source>nothing pulls it under</source>
        <translation>ingenting drar den under</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1 down, an estimate</source>
        <translation>av %1 dypt, et anslag</translation>
    </message>
    <message>
        <source>%1 on the way across; an estimate, of %2</source>
        <translation>%1 på vei over; et anslag, av %2</translation>
    </message>
    <message>
        <source>%1: the heaviest foot</source>
        <translation>%1: den tyngste foten</translation>
    </message>
    <message>
        <source>this card names no rig</source>
        <translation>dette kortet nevner ikke noe oppsett</translation>
    </message>
    <message>
        <source>Missing here:</source>
        <translation>Mangler her:</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>lands</source>
        <translation>lander</translation>
    </message>
    <message>
        <source>There is no cast to show of this rig.</source>
        <translation>Det finnes ikke noe kast å vise for dette oppsettet.</translation>
    </message>
    <message>
        <source>No water stated: give its depth and speed.</source>
        <translation>Ikke noe vann oppgitt: oppgi dybde og strøm.</translation>
    </message>
    <message>
        <source>No fly of known weight yet.</source>
        <translation>Ingen flue med kjent vekt ennå.</translation>
    </message>
    <message>
        <source>Still water: there is no swing.</source>
        <translation>Stille vann: det blir ingen sving.</translation>
    </message>
    <message>
        <source>Everything floats: it fishes on top.</source>
        <translation>Alt flyter: den fisker i overflaten.</translation>
    </message>
    <message>
        <source>The fly floats: it fishes on top.</source>
        <translation>Flua flyter: den fisker i overflaten.</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>No rig.</source>
        <translation>Ikke noe oppsett.</translation>
    </message>
    <message>
        <source>not yet under</source>
        <translation>ennå ikke under</translation>
    </message>
    <message>
        <source>%1 of line under water, an estimate</source>
        <translation>%1 line under vann, et anslag</translation>
    </message>
    <message>
        <source>%1 when the line comes tight; an estimate, of %2</source>
        <translation>%1 når linen strammes; et anslag, av %2</translation>
    </message>
    <message>
        <source>%1 at its deepest; an estimate, of %2</source>
        <translation>%1 på det dypeste; et anslag, av %2</translation>
    </message>
    <message>
        <source>this card names no fly</source>
        <translation>dette kortet nevner ingen flue</translation>
    </message>
    <message>
        <source>this card names no pool</source>
        <translation>dette kortet nevner ingen høl</translation>
    </message>
    <message>
        <source>this card names no tip</source>
        <translation>dette kortet nevner ingen tupp</translation>
    </message>
    <message>
        <source>wanted, %1</source>
        <translation>ønsket, %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Navn</translation>
    </message>
    <message>
        <source>From the back of the head</source>
        <translation>Fra bakre ende av klumpen</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Til</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Veier</translation>
    </message>
    <message>
        <source>A foot at its rod end</source>
        <translation>En fot i stangenden</translation>
    </message>
    <message>
        <source>A foot at its fly end</source>
        <translation>En fot i flueenden</translation>
    </message>
    <message>
        <source>Joint at</source>
        <translation>Skjøt ved</translation>
    </message>
    <message>
        <source>Rod side</source>
        <translation>Stangsiden</translation>
    </message>
    <message>
        <source>Fly side</source>
        <translation>Fluesiden</translation>
    </message>
    <message>
        <source>Mean of three feet before</source>
        <translation>Snitt av tre fot foran</translation>
    </message>
    <message>
        <source>Mean of three feet behind</source>
        <translation>Snitt av tre fot bak</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Forhold</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Hva den gjør</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dom</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>En fot veier</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>Så langt</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Avlesning</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Tall</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Av</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Hva det sier</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Utrulling</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Kastbevegelse</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tid</translation>
    </message>
    <message>
        <source>Fly ahead of the caster</source>
        <translation>Flua foran kasteren</translation>
    </message>
    <message>
        <source>Fly above the water</source>
        <translation>Flua over vannet</translation>
    </message>
    <message>
        <source>Still moving</source>
        <translation>Fortsatt i bevegelse</translation>
    </message>
    <message>
        <source>Lost to the air</source>
        <translation>Tapt til lufta</translation>
    </message>
    <message>
        <source>Lost to the fly</source>
        <translation>Tapt til flua</translation>
    </message>
    <message>
        <source>Fly downstream of the rod tip</source>
        <translation>Flua nedstrøms for stangtuppen</translation>
    </message>
    <message>
        <source>Fly across</source>
        <translation>Flua på tvers</translation>
    </message>
    <message>
        <source>Fly below the surface</source>
        <translation>Flua under overflaten</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Høl</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Vann</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Svak strøm</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Vanlig strøm</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Sterk strøm</translation>
    </message>
    <message>
        <source>%1: fly from</source>
        <translation>%1: flua fra</translation>
    </message>
    <message>
        <source>%1: to</source>
        <translation>%1: til</translation>
    </message>
    <message>
        <source>%1: what it does</source>
        <translation>%1: hva den gjør</translation>
    </message>
    <message>
        <source>Current on top</source>
        <translation>Strøm i overflaten</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Tupp</translation>
    </message>
    <message>
        <source>Fly from</source>
        <translation>Flua fra</translation>
    </message>
    <message>
        <source>Fly to</source>
        <translation>Flua til</translation>
    </message>
    <message>
        <source>How well it carries the fly (1: just)</source>
        <translation>Hvor godt den bærer flua (1: så vidt)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Endring</translation>
    </message>
    <message>
        <source>What it repairs</source>
        <translation>Hva den retter</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Spole</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Kapp</translation>
    </message>
    <message>
        <source>From its end</source>
        <translation>Fra enden</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Line</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Igjen</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bunn</translation>
    </message>
    <message>
        <source>on top</source>
        <comment>as large as a number: a short word</comment>
        <translation>oppe</translation>
    </message>
    <message>
        <source>for %1–%2: %3</source>
        <comment>a head&apos;s grains outside the rod&apos;s window</comment>
        <translation>for %1–%2: %3</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>a joint hinges over this ratio, fly side to rod side</source>
        <translation>en skjøt knekker over dette forholdet, flueside til stangside</translation>
    </message>
    <message>
        <source>over this it hinges unless the stroke is slow and open</source>
        <translation>over dette knekker den om ikke kastbevegelsen er langsom og åpen</translation>
    </message>
    <message>
        <source>over this it steps up and has to be forced</source>
        <translation>over dette går den opp og må tvinges</translation>
    </message>
    <message>
        <source>under this it is a drop, no longer level</source>
        <translation>under dette er den et fall, ikke lenger jevn</translation>
    </message>
    <message>
        <source>under this the front collapses</source>
        <translation>under dette faller fronten sammen</translation>
    </message>
    <message>
        <source>line on each side whose mean is taken</source>
        <translation>line på hver side som det tas middel av</translation>
    </message>
    <message>
        <source>bare nylon up to this length has no rule</source>
        <translation>bar nylon opp til denne lengden har ingen regel</translation>
    </message>
    <message>
        <source>longer nylon is stout enough from this ratio on</source>
        <translation>lengre nylon er kraftig nok fra dette forholdet</translation>
    </message>
    <message>
        <source>longer nylon piles under this ratio</source>
        <translation>lengre nylon legger seg i haug under dette forholdet</translation>
    </message>
    <message>
        <source>a head fits within this of the rod&apos;s window</source>
        <translation>en klump passer så langt utenfor stangas vindu</translation>
    </message>
    <message>
        <source>beyond this it is the wrong head</source>
        <translation>utover dette er det feil klump</translation>
    </message>
    <message>
        <source>short head with its tip: too short under</source>
        <translation>kort klump med tupp: for kort under</translation>
    </message>
    <message>
        <source>short head with its tip: usual from</source>
        <translation>kort klump med tupp: vanlig fra</translation>
    </message>
    <message>
        <source>short head with its tip: usual to</source>
        <translation>kort klump med tupp: vanlig til</translation>
    </message>
    <message>
        <source>short head with its tip: too long over</source>
        <translation>kort klump med tupp: for lang over</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too short under</source>
        <translation>kort klump på enhåndsstang: for kort under</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual from</source>
        <translation>kort klump på enhåndsstang: vanlig fra</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual to</source>
        <translation>kort klump på enhåndsstang: vanlig til</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too long over</source>
        <translation>kort klump på enhåndsstang: for lang over</translation>
    </message>
    <message>
        <source>fine taper: too short under</source>
        <translation>langtaperet klump: for kort under</translation>
    </message>
    <message>
        <source>fine taper: usual from</source>
        <translation>langtaperet klump: vanlig fra</translation>
    </message>
    <message>
        <source>fine taper: usual to</source>
        <translation>langtaperet klump: vanlig til</translation>
    </message>
    <message>
        <source>fine taper: too long over</source>
        <translation>langtaperet klump: for lang over</translation>
    </message>
    <message>
        <source>long belly with its tip: too short under</source>
        <translation>long belly med tupp: for kort under</translation>
    </message>
    <message>
        <source>long belly with its tip: usual from</source>
        <translation>long belly med tupp: vanlig fra</translation>
    </message>
    <message>
        <source>long belly with its tip: usual to</source>
        <translation>long belly med tupp: vanlig til</translation>
    </message>
    <message>
        <source>long belly with its tip: too long over</source>
        <translation>long belly med tupp: for lang over</translation>
    </message>
    <message>
        <source>no grip under this share of the head</source>
        <translation>ikke noe grep under denne delen av klumpen</translation>
    </message>
    <message>
        <source>light under this</source>
        <translation>lett under dette</translation>
    </message>
    <message>
        <source>right up to this</source>
        <translation>riktig opp til dette</translation>
    </message>
    <message>
        <source>too much tip over this</source>
        <translation>for mye tupp over dette</translation>
    </message>
    <message>
        <source>right up to this on a fine taper or long belly</source>
        <translation>riktig opp til dette på langtaperet klump eller long belly</translation>
    </message>
    <message>
        <source>too little in the water under this, head to fly</source>
        <translation>for lite i vannet under dette, fra klump til flue</translation>
    </message>
    <message>
        <source>enough in the water from this on</source>
        <translation>nok i vannet fra dette</translation>
    </message>
    <message>
        <source>much in the water over this</source>
        <translation>mye i vannet over dette</translation>
    </message>
    <message>
        <source>the tip carries a fly when it weighs this many times as much</source>
        <translation>tuppen bærer en flue når den veier så mange ganger så mye</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the tip</source>
        <translation>under dette er flua for tung for tuppen</translation>
    </message>
    <message>
        <source>line that is weighed against the fly</source>
        <translation>line som veies mot flua</translation>
    </message>
    <message>
        <source>nylon longer than this is weighed against the fly too</source>
        <translation>nylon lengre enn dette veies også mot flua</translation>
    </message>
    <message>
        <source>such nylon carries the fly from this many times its weight on</source>
        <translation>slik nylon bærer flua fra så mange ganger vekta dens</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the leader</source>
        <translation>under dette er flua for tung for fortommen</translation>
    </message>
    <message>
        <source>lands in a heap under this, line speed against the least that turns over</source>
        <translation>faller i en haug under dette, linefart mot den minste som ruller ut</translation>
    </message>
    <message>
        <source>probably does not turn over under this</source>
        <translation>ruller trolig ikke ut under dette</translation>
    </message>
    <message>
        <source>speed to spare from this on</source>
        <translation>fart å avse fra dette</translation>
    </message>
    <message>
        <source>the front does not carry under this, pull against need</source>
        <translation>fronten bærer ikke under dette, drag mot behov</translation>
    </message>
    <message>
        <source>the front carries from this on</source>
        <translation>fronten bærer fra dette</translation>
    </message>
    <message>
        <source>front of the line in which that is asked</source>
        <translation>fronten av lina der dette spørres om</translation>
    </message>
    <message>
        <source>the fly dies under this share of the line speed</source>
        <translation>flua dør under denne delen av linefarten</translation>
    </message>
    <message>
        <source>it arrives firmly from this on</source>
        <translation>den kommer fast fram fra dette</translation>
    </message>
    <message>
        <source>it arrives lively from this on</source>
        <translation>den kommer livlig fram fra dette</translation>
    </message>
    <message>
        <source>it kicks over this</source>
        <translation>den slår over utover dette</translation>
    </message>
    <message>
        <source>behind a joint that steps up by more than this, lively is a kick</source>
        <translation>bak en skjøt som går opp mer enn dette, er livlig et slag over</translation>
    </message>
    <message>
        <source>the fly is too bulky when the nylon keeps less of its speed</source>
        <translation>flua er for omfangsrik når nylonen beholder mindre av farten</translation>
    </message>
    <message>
        <source>the same stroke within this change of working length</source>
        <translation>samme kastbevegelse innenfor denne endringen i arbeidslengde</translation>
    </message>
    <message>
        <source>a different cast from this change of length on</source>
        <translation>et annet kast fra denne endringen i lengde</translation>
    </message>
    <message>
        <source>the same stroke within this change of weight</source>
        <translation>samme kastbevegelse innenfor denne endringen i vekt</translation>
    </message>
    <message>
        <source>a different cast from this change of weight on</source>
        <translation>et annet kast fra denne endringen i vekt</translation>
    </message>
    <message>
        <source>a slower lift from this much more sinking line</source>
        <translation>langsommere løft fra så mye mer synkende line</translation>
    </message>
    <message>
        <source>a weighed part is as meant within this</source>
        <translation>en veid del er som ment innenfor dette</translation>
    </message>
    <message>
        <source>a drop down to this ratio has the full grade</source>
        <translation>et fall ned til dette forholdet har full karakter</translation>
    </message>
    <message>
        <source>grade where a joint starts to step up</source>
        <translation>karakter der en skjøt begynner å gå opp</translation>
    </message>
    <message>
        <source>tip share of a short head with the full grade</source>
        <translation>tuppandel på en kort klump med full karakter</translation>
    </message>
    <message>
        <source>grade where the tip share turns light or heavy</source>
        <translation>karakter der tuppandelen blir lett eller tung</translation>
    </message>
    <message>
        <source>line from head to fly with the full grade</source>
        <translation>line fra klump til flue med full karakter</translation>
    </message>
    <message>
        <source>grade where that line turns short</source>
        <translation>karakter der den lina blir kort</translation>
    </message>
    <message>
        <source>wanted this near the bottom, lying on it is right</source>
        <translation>ønsket så nær bunnen er det riktig å ligge på den</translation>
    </message>
    <message>
        <source>grade where the stroke becomes a different cast</source>
        <translation>karakter der kastbevegelsen blir et annet kast</translation>
    </message>
    <message>
        <source>grade of the most different cast</source>
        <translation>karakter for det mest ulike kastet</translation>
    </message>
    <message>
        <source>weight of: the worst joint</source>
        <translation>vekt av: den verste skjøten</translation>
    </message>
    <message>
        <source>weight of: tip share</source>
        <translation>vekt av: tuppandel</translation>
    </message>
    <message>
        <source>weight of: line from head to fly</source>
        <translation>vekt av: line fra klump til flue</translation>
    </message>
    <message>
        <source>weight of: working length</source>
        <translation>vekt av: arbeidslengde</translation>
    </message>
    <message>
        <source>weight of: fly against tip</source>
        <translation>vekt av: flue mot tupp</translation>
    </message>
    <message>
        <source>weight of: pull of the front</source>
        <translation>vekt av: draget i fronten</translation>
    </message>
    <message>
        <source>weight of: line speed to spare</source>
        <translation>vekt av: linefart å avse</translation>
    </message>
    <message>
        <source>weight of: depth</source>
        <translation>vekt av: dybde</translation>
    </message>
    <message>
        <source>weight of: change of the stroke</source>
        <translation>vekt av: endring i kastbevegelsen</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Skjøter</translation>
    </message>
    <message>
        <source>Head on rod and working length</source>
        <translation>Klump på stang og arbeidslengde</translation>
    </message>
    <message>
        <source>Tip share and line in the water</source>
        <translation>Tuppandel og line i vannet</translation>
    </message>
    <message>
        <source>Fly against tip and leader</source>
        <translation>Flue mot tupp og fortom</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Utrulling</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Kastbevegelse</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Veiing</translation>
    </message>
    <message>
        <source>Grades from 0 to 1, between the limits</source>
        <translation>Karakterer fra 0 til 1, mellom grensene</translation>
    </message>
    <message>
        <source>How much each counts in the ranking; at 0 it only refuses</source>
        <translation>Hvor mye hver teller i rangeringen; ved 0 avviser den bare</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>vår</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>vanlig praksis</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>stenger</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a figure, its unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Must be over %1: %2</source>
        <translation>Må være over %1: %2</translation>
    </message>
    <message>
        <source>Must be under %1: %2</source>
        <translation>Må være under %1: %2</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1 to %2.</source>
        <translation>Utenfor det mulige; gi %1 til %2.</translation>
    </message>
</context>
<context>
    <name>SampleWords</name>
    <message>
        <source>Plain winter</source>
        <translation>Vanlig vinter</translation>
    </message>
    <message>
        <source>The all-round winter rig: ten feet of 11 behind a weighted leech. Start here.</source>
        <translation>Vinteroppsettet til det meste: ti fot på 11 bak en tynget leech. Begynn her.</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Renne</translation>
    </message>
    <message>
        <source>For fast, deep water: the heaviest head of the bag drives ten feet of 17 and a double tungsten fly.</source>
        <translation>For raskt, dypt vann: den tyngste klumpen i veska driver ti fot på 17 og en flue med dobbel tungsten.</translation>
    </message>
    <message>
        <source>Thin tail</source>
        <translation>Grunt brekk</translation>
    </message>
    <message>
        <source>The winter head and stroke, but only a quarter of the tip sinks: for thin tail-outs.</source>
        <translation>Vinterklumpen og samme kastbevegelse, men bare en fjerdedel av tuppen synker: for grunne brekk.</translation>
    </message>
    <message>
        <source>Small river</source>
        <translation>Lita elv</translation>
    </message>
    <message>
        <source>A light rod on a small river: a big but light fly, and more than half of the tip sinking.</source>
        <translation>En lett stang i ei lita elv: en stor, men lett flue, og mer enn halve tuppen synker.</translation>
    </message>
    <message>
        <source>Dry line</source>
        <translation>Flytende line</translation>
    </message>
    <message>
        <source>Long fine taper and a long tapered leader for a low hairwing just under the surface.</source>
        <translation>Lang, fin taper og en lang, taperet fortom for en lav hårvinge rett under overflaten.</translation>
    </message>
    <message>
        <source>Under the film</source>
        <translation>Under overflatehinna</translation>
    </message>
    <message>
        <source>A light coated leader carries a small double a foot and a half down.</source>
        <translation>En lett belagt fortom tar en liten dobbeltkrok halvannen fot ned.</translation>
    </message>
    <message>
        <source>Old winter</source>
        <translation>Vinter på gammelt vis</translation>
    </message>
    <message>
        <source>Long belly with a tapered tip in place of its floating front; the stroke is long and slow.</source>
        <translation>Long belly med taperet tupp i stedet for den flytende fronten; kastbevegelsen er lang og langsom.</translation>
    </message>
    <message>
        <source>Trout two-hander</source>
        <translation>Tohånds for ørret</translation>
    </message>
    <message>
        <source>A light two-hander for trout: slow tapered tip, one piece of nylon, a beaded streamer.</source>
        <translation>En lett tohåndsstang for ørret: saktesynkende taperet tupp, én bit nylon, en streamer med kule.</translation>
    </message>
    <message>
        <source>Wide water</source>
        <translation>Bredt vann</translation>
    </message>
    <message>
        <source>Long tip, half of it sinking, for wide slow pools. The working length is at its upper end.</source>
        <translation>Lang tupp, halvparten synkende, for brede, rolige høler. Arbeidslengden er ved den øvre grensen.</translation>
    </message>
    <message>
        <source>Single five</source>
        <translation>Enhånds femmer</translation>
    </message>
    <message>
        <source>A single-hand line for comparison: the first 30 ft stand inside the limits for a #5.</source>
        <translation>En enhåndsline til sammenligning: de første 30 ft ligger innenfor grensene for #5.</translation>
    </message>
    <message>
        <source>Anvil</source>
        <translation>Ambolt</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip weighs nearly half of the head. It stays in the water.</source>
        <translation>Feil med vilje: tuppen veier nesten halvparten av klumpen. Den blir i vannet.</translation>
    </message>
    <message>
        <source>Fat fly</source>
        <translation>Feit flue</translation>
    </message>
    <message>
        <source>Wrong on purpose: the fly is too heavy for this tip, though the head could lift a heavier tip.</source>
        <translation>Feil med vilje: flua er for tung for denne tuppen, enda klumpen kunne løftet en tyngre tupp.</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Knekk</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip is twice as heavy a foot as the end of the head. The line folds there.</source>
        <translation>Feil med vilje: tuppen er dobbelt så tung per fot som enden av klumpen. Der bretter lina seg.</translation>
    </message>
    <message>
        <source>No grip</source>
        <translation>Ikke noe grep</translation>
    </message>
    <message>
        <source>Wrong on purpose: no tip between head and leader, so nothing holds in the water.</source>
        <translation>Feil med vilje: ingen tupp mellom klump og fortom, så ingenting tar tak i vannet.</translation>
    </message>
    <message>
        <source>the all-round pool</source>
        <translation>hølen til det meste</translation>
    </message>
    <message>
        <source>hard on purpose: no sound rig here has its middle figure in it</source>
        <translation>vanskelig med vilje: ingen av de gode oppsettene her har midten av spennet sitt i den</translation>
    </message>
    <message>
        <source>thin tail-out</source>
        <translation>grunt brekk</translation>
    </message>
    <message>
        <source>fast shelf</source>
        <translation>rask fjellhylle</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>sommer</translation>
    </message>
    <message>
        <source>slow and deep</source>
        <translation>rolig og dyp</translation>
    </message>
</context>
<context>
    <name>SettingsFile</name>
    <message>
        <source>a number from %1 to %2</source>
        <translation>et tall fra %1 til %2</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true eller false</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>ett av %1</translation>
    </message>
    <message>
        <source>nothing, or one of %1</source>
        <translation>ingenting, eller ett av %1</translation>
    </message>
    <message>
        <source>nothing, or %1</source>
        <translation>ingenting, eller %1</translation>
    </message>
    <message>
        <source>%1 is %2; it must be under %3, which is %4.</source>
        <translation>%1 er %2; det må være under %3, som er %4.</translation>
    </message>
    <message>
        <source>and more: %1 in all</source>
        <translation>og flere: %1 i alt</translation>
    </message>
    <message>
        <source>The file cannot be read.</source>
        <translation>Fila kan ikke leses.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise: it is too large to be one.</source>
        <translation>Dette er ingen innstillingsfil fra Grainwise: den er for stor til å være det.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise. Choose one that was exported here.</source>
        <translation>Dette er ingen innstillingsfil fra Grainwise. Velg en som er eksportert her.</translation>
    </message>
    <message>
        <source>The file ends in the middle of a line: it was cut off. Export it anew.</source>
        <translation>Fila slutter midt i en linje: den er kuttet av. Eksporter den på nytt.</translation>
    </message>
    <message>
        <source>The file is broken: line %1 is neither a [group] nor a key with its value.</source>
        <translation>Fila er ødelagt: linje %1 er verken en [gruppe] eller en nøkkel med verdi.</translation>
    </message>
    <message>
        <source>Settings of version “%1” are not known here; version %2 is.</source>
        <translation>Innstillinger av versjon «%1» er ikke kjent her; versjon %2 er det.</translation>
    </message>
    <message>
        <source>%1 is missing; it wants %2.</source>
        <translation>%1 mangler; den vil ha %2.</translation>
    </message>
    <message>
        <source>%1 is “%2”; it wants %3.</source>
        <translation>%1 er «%2»; den vil ha %3.</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>Running lines</source>
        <translation>Skyteliner</translation>
    </message>
    <message>
        <source>Extensions</source>
        <translation>Forlengelser</translation>
    </message>
    <message>
        <source>Short heads</source>
        <translation>Korte klumper</translation>
    </message>
    <message>
        <source>Fine-taper heads</source>
        <translation>Langtaperede klumper</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Long belly</translation>
    </message>
    <message>
        <source>Intermediate and multi-density heads</source>
        <translation>Intermediate- og flerdensitetsklumper</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Enhåndsliner</translation>
    </message>
    <message>
        <source>Level tips</source>
        <translation>Jevne tupper</translation>
    </message>
    <message>
        <source>Float/sink tips</source>
        <translation>Flyte-/synketupper</translation>
    </message>
    <message>
        <source>Tapered tips</source>
        <translation>Taperede tupper</translation>
    </message>
    <message>
        <source>Intermediate tips</source>
        <translation>Intermediate-tupper</translation>
    </message>
    <message>
        <source>Floating fronts</source>
        <translation>Flytende fronter</translation>
    </message>
    <message>
        <source>Coated leaders</source>
        <translation>Belagte fortommer</translation>
    </message>
    <message>
        <source>Leaders</source>
        <translation>Fortommer</translation>
    </message>
    <message>
        <source>Tippets</source>
        <translation>Fortomsspisser</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Fluer</translation>
    </message>
    <message>
        <source>mono running line %1 in</source>
        <translation>mono skyteline %1 in</translation>
    </message>
    <message>
        <source>coated running line %1 in</source>
        <translation>belagt skyteline %1 in</translation>
    </message>
    <message>
        <source>extension %1 ft, %2 gr/ft</source>
        <translation>forlengelse %1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>short head %1</source>
        <translation>kort klump %1</translation>
    </message>
    <message>
        <source>fine-taper head %1</source>
        <translation>langtaperet klump %1</translation>
    </message>
    <message>
        <source>long belly %1</source>
        <translation>long belly %1</translation>
    </message>
    <message>
        <source>short head %1, intermediate</source>
        <translation>kort klump %1, intermediate</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate</source>
        <translation>kort klump %1, flyt/intermediate</translation>
    </message>
    <message>
        <source>short head %1, intermediate/sink</source>
        <translation>kort klump %1, intermediate/synk</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate/sink</source>
        <translation>kort klump %1, flyt/intermediate/synk</translation>
    </message>
    <message>
        <source>single-hand line #%1</source>
        <translation>enhåndsline #%1</translation>
    </message>
    <message>
        <source>%1 ft, %2 gr/ft</source>
        <translation>%1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, none sinking, %2 gr/ft</source>
        <translation>%1 ft, flytende, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2/%3 sinking, %4 gr/ft</source>
        <translation>%1 ft, %2/%3 synkende, %4 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, all sinking, %2 gr/ft</source>
        <translation>%1 ft, helt synkende, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2 ft sinking, %3 gr/ft</source>
        <translation>%1 ft, %2 ft synkende, %3 gr/ft</translation>
    </message>
    <message>
        <source>#%1, %2 in/s</source>
        <translation>#%1, %2 in/s</translation>
    </message>
    <message>
        <source>%1 ft, intermediate, %2 gr/ft</source>
        <translation>%1 ft, intermediate, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft floating front, %2 to %3 gr/ft</source>
        <translation>%1 ft flytende front, %2 til %3 gr/ft</translation>
    </message>
    <message>
        <source>coated leader %1 ft, light, %2 in/s</source>
        <translation>belagt fortom %1 ft, lett, %2 in/s</translation>
    </message>
    <message>
        <source>coated leader %1 ft, heavy, %2 in/s</source>
        <translation>belagt fortom %1 ft, tung, %2 in/s</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 in nylon</source>
        <translation>fortom %1 ft, %2 in nylon</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 to %3 in nylon</source>
        <translation>fortom %1 ft, %2 til %3 in nylon</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in nylon</source>
        <translation>fortomsspiss %1 ft, %2 in nylon</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in fluorocarbon</source>
        <translation>fortomsspiss %1 ft, %2 in fluorkarbon</translation>
    </message>
    <message>
        <source>Dry fly #%1</source>
        <translation>Tørrflue #%1</translation>
    </message>
    <message>
        <source>Bushy dry fly #%1</source>
        <translation>Bustete tørrflue #%1</translation>
    </message>
    <message>
        <source>Deer-hair skater #%1</source>
        <translation>Hjortehårs-skater #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1</source>
        <translation>Softhackle #%1</translation>
    </message>
    <message>
        <source>Low hairwing #%1</source>
        <translation>Lav hårvinge #%1</translation>
    </message>
    <message>
        <source>Small double #%1</source>
        <translation>Liten dobbel #%1</translation>
    </message>
    <message>
        <source>Wet fly #%1</source>
        <translation>Våtflue #%1</translation>
    </message>
    <message>
        <source>Beaded streamer #%1</source>
        <translation>Streamer med kule #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1, big and light</source>
        <translation>Softhackle #%1, stor og lett</translation>
    </message>
    <message>
        <source>Shrimp #%1, long feelers</source>
        <translation>Reke #%1, lange følehorn</translation>
    </message>
    <message>
        <source>Plastic tube, long wing</source>
        <translation>Plasttube, lang vinge</translation>
    </message>
    <message>
        <source>Winter wet fly %1/%2</source>
        <translation>Vintervåtflue %1/%2</translation>
    </message>
    <message>
        <source>Leech, bead-chain eyes</source>
        <translation>Leech, kjedeøyne</translation>
    </message>
    <message>
        <source>Brass tube, sparse wing</source>
        <translation>Messingtube, slank vinge</translation>
    </message>
    <message>
        <source>Leech, lead eyes %1/%2 oz</source>
        <translation>Leech, blyøyne %1/%2 oz</translation>
    </message>
    <message>
        <source>Big weighted streamer %1/%2</source>
        <translation>Stor tynget streamer %1/%2</translation>
    </message>
    <message>
        <source>Compact cone-head #%1</source>
        <translation>Kompakt konehode #%1</translation>
    </message>
    <message>
        <source>Fat tube fly %1/%2</source>
        <translation>Tykk tubeflue %1/%2</translation>
    </message>
    <message>
        <source>Double tungsten</source>
        <translation>Dobbel tungsten</translation>
    </message>
</context>
<context>
    <name>StripWords</name>
    <message>
        <source>The running line stands first, behind the head.</source>
        <translation>Skytelina står først, bak klumpen.</translation>
    </message>
    <message>
        <source>A head stands between the running line and the tip.</source>
        <translation>En klump står mellom skytelina og tuppen.</translation>
    </message>
    <message>
        <source>A tip stands between the head and the leader.</source>
        <translation>En tupp står mellom klumpen og fortommen.</translation>
    </message>
    <message>
        <source>A leader stands between the tip and the tippet.</source>
        <translation>En fortom står mellom tuppen og fortomsspissen.</translation>
    </message>
    <message>
        <source>A tippet stands between the leader and the fly.</source>
        <translation>En fortomsspiss står mellom fortommen og flua.</translation>
    </message>
    <message>
        <source>The fly stands at the end of the line.</source>
        <translation>Flua står i enden av lina.</translation>
    </message>
    <message>
        <source>A line carries one fly: drop a new one on it to change it.</source>
        <translation>Ei line bærer én flue: slipp en ny på den for å bytte.</translation>
    </message>
    <message>
        <source>A line has one running line: drop a new one on it to change it.</source>
        <translation>Ei line har én skyteline: slipp en ny på den for å bytte.</translation>
    </message>
    <message>
        <source>%1 parts are the most that a line can have: take one off first.</source>
        <translation>Ei line kan ikke ha mer enn %1 deler: ta av en først.</translation>
    </message>
    <message>
        <source>%1 head pieces are the most that a line can have: take one off first.</source>
        <translation>Ei line kan ikke ha mer enn %1 klumpstykker: ta av et først.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Legg til %1</translation>
    </message>
    <message>
        <source>Change to %1</source>
        <translation>Bytt til %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Flytt %1</translation>
    </message>
</context>
<context>
    <name>WalletCard</name>
    <message>
        <source>Wallet: 1 tip</source>
        <translation>Mappe: 1 tupp</translation>
    </message>
    <message>
        <source>Wallet: %1 tips</source>
        <translation>Mappe: %1 tupper</translation>
    </message>
    <message>
        <source>%1. Depths are estimates.</source>
        <translation>%1. Dybdene er anslag.</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <comment>slot, tip</comment>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1   (and a spare)</source>
        <comment>slot and tip</comment>
        <translation>%1   (og en i reserve)</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>lomme %1</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>ingen tupp</translation>
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
        <translation>%1 (pass på)</translation>
    </message>
    <message>
        <source>Nothing serves</source>
        <translation>Ingenting duger</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Local rules on weighted lines and flies, lead, barbs and hooks decide, not this card. No guide to wading. Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Lokale regler om tyngede liner og fluer, bly, mothaker og kroker bestemmer, ikke dette kortet. Ingen rettesnor for vading. Stenger leder strøm: hold avstand til kraftlinjer, og stans i tordenvær.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Mappe</translation>
    </message>
    <message>
        <source>Cut out along the outer line and fold along the middle: %1.</source>
        <translation>Klipp ut langs den ytre linjen og brett langs midten: %1.</translation>
    </message>
    <message>
        <source>Cut out along the line: %1.</source>
        <translation>Klipp ut langs linjen: %1.</translation>
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
        <translation>dette er en mappe eller enhet, ikke en fil</translation>
    </message>
    <message>
        <source>the disk took only %1 of %2 bytes</source>
        <translation>disken tok bare %1 av %2 byte</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>the drag along the line</source>
        <translation>luftmotstanden langs lina</translation>
    </message>
    <message>
        <source>the drag of the fly</source>
        <translation>luftmotstanden til flua</translation>
    </message>
    <message>
        <source>the line speed</source>
        <translation>linehastigheten</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a figure, from, to</comment>
        <translation>%1 (%2 til %3)</translation>
    </message>
    <message>
        <source>%1; the verdict hangs on %2</source>
        <comment>figure with range, an input</comment>
        <translation>%1; dommen henger på: %2</translation>
    </message>
    <message>
        <source>Cast: %1 line speed%2, a loop of %3, %4° up, rod tip %5 above the water.</source>
        <translation>Kast: linehastighet %1%2, en bukt på %3, %4° opp, stangtupp %5 over vannet.</translation>
    </message>
    <message>
        <source> (a learner&apos;s, 20 % less)</source>
        <translation> (en nybegynners, 20 % mindre)</translation>
    </message>
    <message>
        <source>Reserve %1: line speed against the least that turns over%2.</source>
        <translation>Reserve %1: linehastighet mot den minste som ruller ut%2.</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>Drive %1, least at %2 in %3.</source>
        <translation>Driv %1, minst ved %2 i %3.</translation>
    </message>
    <message>
        <source>The last %1 coast on the speed they have.</source>
        <translation>De siste %1 går videre på farten de har.</translation>
    </message>
    <message>
        <source>The fly stops on the way: no pace.</source>
        <translation>Flua stopper på veien: ikke noe tempo.</translation>
    </message>
    <message>
        <source>Pace %1: the fly arrives at %2 after %3 s, %4 above the water.</source>
        <translation>Tempo %1: flua kommer fram med %2 etter %3 s, %4 over vannet.</translation>
    </message>
    <message>
        <source>The bare nylon keeps %1 of its speed%2.</source>
        <translation>Den bare nylonen beholder %1 av farten%2.</translation>
    </message>
    <message>
        <source>: the fly is too bulky for this leader</source>
        <translation>: flua er for omfangsrik for denne fortommen</translation>
    </message>
    <message>
        <source>Pace: under %1 dies, to %2 soft, to %3 firm, to %4 lively, beyond kicks (after a step up of over %5 from %3 on).</source>
        <translation>Tempo: under %1 dør det ut, til %2 mykt, til %3 fast, til %4 livlig, over det slår den over (etter en oppgang på over %5 fra %3).</translation>
    </message>
    <message>
        <source>A loop rolls down the line. Each foot that passes through it pulls with half its mass per foot times the square of the speed at which the legs part.</source>
        <translation>En bukt ruller langs lina. Hver fot som går gjennom den, drar med halve massen sin per fot ganger kvadratet av farten de to sidene skilles med.</translation>
    </message>
    <message>
        <source>Against that: the drag along the line still flying, the drag of the fly, and weight.</source>
        <translation>Imot virker luftmotstanden på lina som fortsatt flyr, luftmotstanden til flua, og vekten.</translation>
    </message>
    <message>
        <source>Drive = the least of pull / need over the front %1 of line that is not bare nylon.</source>
        <translation>Driv = det minste av drag / behov over de fremste %1 av lina som ikke er bar nylon.</translation>
    </message>
    <message>
        <source>In brackets: drag along the line %1–%2, drag of the fly × or ÷ %3, line speed ± %4, each alone.</source>
        <translation>I parentes: luftmotstand langs lina %1–%2, luftmotstand for flua × eller ÷ %3, linehastighet ± %4, hver for seg.</translation>
    </message>
    <message>
        <source>Reserve: under %1 lands in a heap, under %2 probably will not, under %3 marginal.</source>
        <translation>Reserve: under %1 faller den i en haug, under %2 ruller den trolig ikke ut, under %3 på grensen.</translation>
    </message>
    <message>
        <source>Drive: %1 and over carries, under %2 does not.</source>
        <translation>Driv: fra %1 bærer den, under %2 ikke.</translation>
    </message>
    <message>
        <source>Wind, the stroke and the caster are left out. The limits are ours.</source>
        <translation>Vind, kastbevegelse og kaster er utelatt. Grensene er våre egne.</translation>
    </message>
    <message>
        <source>Once it has swung round it hangs at %1: %2.</source>
        <translation>Når den har svingt rundt, henger den på %1: %2.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. From real runs.</source>
        <translation>Fire av fem svinger ligger i spennet; midten er %1. Fra virkelige kjøringer.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. A live estimate.</source>
        <translation>Fire av fem svinger ligger i spennet; midten er %1. Et løpende anslag.</translation>
    </message>
    <message>
        <source>The last %1 of line are under water.</source>
        <translation>De siste %1 av lina er under vann.</translation>
    </message>
    <message>
        <source>The floating line ends %1 down.</source>
        <translation>Flytelina slutter %1 dypt.</translation>
    </message>
    <message>
        <source>No floating line takes up the pull: the rod holds the line, and raising the tip raises the fly.</source>
        <translation>Ingen flyteline tar opp draget: stanga holder lina, og løfter du stangtuppen, løfter du flua.</translation>
    </message>
    <message>
        <source>Every piece of line is pushed by the current at its depth and pulled down by its weight in water; the shape is where all of them balance.</source>
        <translation>Hvert stykke line skyves av strømmen i sin dybde og dras ned av sin vekt i vann; formen er den der alt er i balanse.</translation>
    </message>
    <message>
        <source>A tip hangs far shallower than its sink rate for a fixed time would have it: the water planes it up.</source>
        <translation>En tupp henger langt grunnere enn synkehastigheten over en gitt tid skulle tilsi: vannet løfter den.</translation>
    </message>
    <message>
        <source>The range covers the current ± %1, sink rates ± %2, drag ± %3, the fly&apos;s drag × or ÷ %4, the mend ± %5 s and the angle ± %6°.</source>
        <translation>Spennet dekker strømmen ± %1, synkehastigheter ± %2, motstand ± %3, motstanden til flua × eller ÷ %4, mendingen ± %5 s og vinkelen ± %6°.</translation>
    </message>
    <message>
        <source>An even current and bed: seams, boulders and back eddies are left out.</source>
        <translation>En jevn strøm og bunn: strømkanter, steiner og bakevjer er utelatt.</translation>
    </message>
    <message>
        <source>No verdict: how deep is right is for the day and you. The estimates are ours.</source>
        <translation>Ingen dom: hvilken dybde som er riktig, er opp til dagen og deg. Anslagene er våre egne.</translation>
    </message>
    <message>
        <source>The rule is common practice, no source; the limits are ours.</source>
        <translation>Regelen er vanlig praksis, uten kilde; grensene er våre egne.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of grains, the second with unit</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Not yet: %1.</source>
        <translation>Ikke ennå: %1.</translation>
    </message>
    <message>
        <source>%1, %2 into %3: %4. Ratio %5; right at the joint %6 to %7.</source>
        <translation>%1, %2 til %3: %4. Forhold %5; akkurat i skjøten %6 til %7.</translation>
    </message>
    <message>
        <source>A small pulse sends back %1 of itself at the joint in the tile. A whole loop loses nothing by that: no verdict follows.</source>
        <translation>En liten puls sender %1 av seg selv tilbake i skjøten på flisen. En hel bukt taper ingenting på det: ingen dom følger.</translation>
    </message>
    <message>
        <source>Ratio = mean weight per foot of the %1 on the fly&apos;s side / that of the %1 on the rod&apos;s side. Where the line is shorter, what there is; loops are not counted.</source>
        <translation>Forhold = middelvekt per fot av %1 på flueside / av %1 på stangside. Der lina er kortere, det som finnes; løkker teller ikke.</translation>
    </message>
    <message>
        <source>A loop bends about five feet of line at once, so the last inch of a taper decides nothing.</source>
        <translation>En bukt bøyer omtrent fem fot line på en gang, så den siste tommen av en taper avgjør ingenting.</translation>
    </message>
    <message>
        <source>Over %1 it hinges. %2–%1: unless slow and open. %3–%2: steps up, has to be forced.</source>
        <translation>Over %1 knekker det. %2–%1: om kastet ikke er sakte og åpent. %3–%2: går opp, må tvinges.</translation>
    </message>
    <message>
        <source>%1–%2 runs level. %3–%1 is a smooth drop. Under %3 the front collapses.</source>
        <translation>%1–%2 går jevnt. %3–%1 er et mykt fall. Under %3 kollapser fronten.</translation>
    </message>
    <message>
        <source>Into more than %1 of bare nylon: %2 and over is stout enough, under %3 will pile.</source>
        <translation>Til mer enn %1 bar nylon: fra %2 er kraftig nok, under %3 faller den i en haug.</translation>
    </message>
    <message>
        <source>Tips and coated leaders, loops included: %1. Head: %2.</source>
        <translation>Tupper og belagte fortommer, med løkker: %1. Klump: %2.</translation>
    </message>
    <message>
        <source>Tip share: %1.</source>
        <translation>Tuppandel: %1.</translation>
    </message>
    <message>
        <source>Anchor, all that is between head and fly: %1 on a rod of %2, %3 rods.</source>
        <translation>Anker, alt mellom klump og flue: %1 på en stang på %2, %3 stanglengder.</translation>
    </message>
    <message>
        <source>To lift: %1 of sinking line.</source>
        <translation>Å løfte: %1 synkende line.</translation>
    </message>
    <message>
        <source>To lift: nothing sinks.</source>
        <translation>Å løfte: ingenting synker.</translation>
    </message>
    <message>
        <source>The trade&apos;s table names a ten-foot tip of %1 for a short head of these grains (common practice, no source). It is this rule with cliffs: a teaching line, not the verdict.</source>
        <translation>Bransjens tabell nevner en ti fots tupp på %1 for en kort klump med så mange grain (vanlig praksis, uten kilde). Det er denne regelen i trinn: en huskeregel, ikke dommen.</translation>
    </message>
    <message>
        <source>Tip share = grains of tips and coated leaders / grains of the head.</source>
        <translation>Tuppandel = grain i tupper og belagte fortommer / grain i klumpen.</translation>
    </message>
    <message>
        <source>Anchor = everything between head and fly / length of the rod: what the water can hold.</source>
        <translation>Anker = alt mellom klump og flue / lengden på stanga: det vannet kan holde.</translation>
    </message>
    <message>
        <source>Tip share, short heads: under %1 no grip, to %2 light, to %3 right, to %4 heavy, beyond too much tip.</source>
        <translation>Tuppandel, korte klumper: under %1 ikke noe grep, til %2 lett, til %3 riktig, til %4 tung, over det for mye tupp.</translation>
    </message>
    <message>
        <source>Fine tapers and long bellies: up to %1, no lower limit.</source>
        <translation>Langtaperede klumper og long belly: opp til %1, ingen nedre grense.</translation>
    </message>
    <message>
        <source>Anchor: under %1 rods too little in the water, %2–%3 good.</source>
        <translation>Anker: under %1 stanglengder for lite i vannet, %2–%3 bra.</translation>
    </message>
    <message>
        <source>The last %1 of line weigh %2, the wet fly %3: %4 times the fly.</source>
        <translation>De siste %1 av lina veier %2, den våte flua %3: %4 ganger flua.</translation>
    </message>
    <message>
        <source>The fly is as heavy as %1 of that line.</source>
        <translation>Flua er like tung som %1 av den lina.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2.</source>
        <translation>Bar nylon: %1, %2.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2, %3 times the fly.</source>
        <translation>Bar nylon: %1, %2, %3 ganger flua.</translation>
    </message>
    <message>
        <source>Fly = grains of the last %1 of line that is not bare nylon, loops not counted / grains of the wet fly.</source>
        <translation>Flue = grain i de siste %1 av lina som ikke er bar nylon, løkker ikke medregnet / grain i den våte flua.</translation>
    </message>
    <message>
        <source>A big fly that is light is not heavy; how bulky it is does not count here.</source>
        <translation>En stor, lett flue er ikke tung; hvor omfangsrik den er, teller ikke her.</translation>
    </message>
    <message>
        <source>%1 and over: the tip carries it. %2–%1: heavy, slow and open stroke. Under %2: too heavy for this tip.</source>
        <translation>Fra %1: tuppen bærer den. %2–%1: tung, sakte og åpent kast. Under %2: for tung for denne tuppen.</translation>
    </message>
    <message>
        <source>With more than %1 of nylon, its grains against the fly too: %2 and over is fine, under %3 too heavy for this leader.</source>
        <translation>Med mer enn %1 nylon også grain i den mot flua: fra %2 er det bra, under %3 for tung for denne fortommen.</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), one hand #%1: %2 over the first 30 ft, aim %3.</source>
        <translation>Til sammenligning bransjeforbundets tabell (AFFTA), enhånds #%1: %2 over de første 30 ft, mål %3.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>grains, at which length of line</comment>
        <translation>%1 ved %2</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), two hands #%1: %2. No tolerance is published and no verdict follows.</source>
        <translation>Til sammenligning bransjeforbundets tabell (AFFTA), tohånds #%1: %2. Ingen toleranse er utgitt, og ingen dom følger.</translation>
    </message>
    <message>
        <source>Window %1: ours, from the line number alone, since the rod states none.</source>
        <translation>Vindu %1: vårt, av lineklassen alene, siden stanga ikke oppgir noe.</translation>
    </message>
    <message>
        <source>Window %1: the rod&apos;s own.</source>
        <translation>Vindu %1: stangas eget.</translation>
    </message>
    <message>
        <source>Head, all its pieces: %1. With the tip: %2, of which the window does not speak.</source>
        <translation>Klump, alle stykkene: %1. Med tuppen: %2, som vinduet ikke gjelder for.</translation>
    </message>
    <message>
        <source>Working length: %1, %2 rods.</source>
        <translation>Arbeidslengde: %1, %2 stanglengder.</translation>
    </message>
    <message>
        <source>The 30 ft of head nearest the fly: %1.</source>
        <translation>De 30 ft av klumpen nærmest flua: %1.</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, by the style of head.</source>
        <translation>Grain på en stang gjelder klumpen alene, etter klumptype.</translation>
    </message>
    <message>
        <source>Working length = back of the head to the end of the tip, for a fine taper the head alone / length of the rod.</source>
        <translation>Arbeidslengde = bakenden av klumpen til enden av tuppen, for en lang taper klumpen alene / lengden på stanga.</translation>
    </message>
    <message>
        <source>Within %1 of the window it fits; to %2 a touch light or heavy; beyond, the wrong head for this rod.</source>
        <translation>Innenfor %1 fra vinduet passer den; til %2 litt lett eller tung; utenfor det feil klump for denne stanga.</translation>
    </message>
    <message>
        <source>Working length for this head: usual %1–%2 rods, limits %3–%4.</source>
        <translation>Arbeidslengde for denne klumpen: vanlig %1–%2 stanglengder, grenser %3–%4.</translation>
    </message>
    <message>
        <source>The rod maker&apos;s own figure comes first.</source>
        <translation>Stangprodusentens egne tall går foran.</translation>
    </message>
    <message>
        <source>%1 as timed</source>
        <translation>%1 som målt</translation>
    </message>
    <message>
        <source>%1, or %2 as timed,</source>
        <translation>%1, eller %2 som målt,</translation>
    </message>
    <message>
        <source>Round in %1 s, the mend included.</source>
        <translation>Rundt på %1 s, mendingen medregnet.</translation>
    </message>
    <message>
        <source>On the bottom for %1 of the way across.</source>
        <translation>På bunnen i %1 av svingen.</translation>
    </message>
    <message>
        <source>In the air at %1 above the sea.</source>
        <translation>I lufta %1 over havet.</translation>
    </message>
    <message>
        <source>Bed: %1.</source>
        <translation>Bunn: %1.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a density, another</comment>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>Density of the head: %1, our usual figure where none is stated.</source>
        <translation>Tettheten til klumpen: %1, vårt vanlige tall der ingen er oppgitt.</translation>
    </message>
    <message>
        <source>Density of the head: %1.</source>
        <translation>Tettheten til klumpen: %1.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over such a bed.</source>
        <translation>Halvveis ned går strømmen med %1 av farten i overflaten, som over en slik bunn.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over a usual bed: none is stated.</source>
        <translation>Halvveis ned går strømmen med %1 av farten i overflaten, som over en vanlig bunn: ingen er oppgitt.</translation>
    </message>
    <message>
        <source>It covers as well a current half way down of %1 to %2 of the surface&apos;s.</source>
        <translation>Det dekker også en strøm halvveis ned på %1 til %2 av den i overflaten.</translation>
    </message>
    <message>
        <source>It covers as well a head of %1 to %2, and a current half way down of %3 to %4 of the surface&apos;s.</source>
        <translation>Det dekker også en klump på %1 til %2 og en strøm halvveis ned på %3 til %4 av den i overflaten.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot at both ends of a tip, the second with unit</comment>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>flytende</translation>
    </message>
    <message>
        <source>1/4 sinking</source>
        <translation>1/4 synkende</translation>
    </message>
    <message>
        <source>1/2 sinking</source>
        <translation>1/2 synkende</translation>
    </message>
    <message>
        <source>3/4 sinking</source>
        <translation>3/4 synkende</translation>
    </message>
    <message>
        <source>%1 sinking</source>
        <comment>per cent of a tip</comment>
        <translation>%1 synkende</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>style of a head, its grains: short head 525</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>mono %1</source>
        <comment>a nylon running line, its diameter</comment>
        <translation>mono %1</translation>
    </message>
    <message>
        <source>running line %1</source>
        <comment>its diameter</comment>
        <translation>skyteline %1</translation>
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
        <translation>korte klumper %1–%2</translation>
    </message>
    <message>
        <source>fine tapers %1–%2</source>
        <translation>lange tapere %1–%2</translation>
    </message>
    <message>
        <source>long bellies %1–%2</source>
        <translation>long belly %1–%2</translation>
    </message>
    <message>
        <source>lines %1–%2</source>
        <translation>liner %1–%2</translation>
    </message>
    <message>
        <source>heads %1–%2</source>
        <translation>klumper %1–%2</translation>
    </message>
    <message>
        <source>running line</source>
        <translation>skyteline</translation>
    </message>
    <message>
        <source>head</source>
        <translation>klump</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>tupp</translation>
    </message>
    <message>
        <source>leader</source>
        <translation>fortom</translation>
    </message>
    <message>
        <source>tippet</source>
        <translation>fortomsspiss</translation>
    </message>
    <message>
        <source>fly</source>
        <translation>flue</translation>
    </message>
    <message>
        <source>short head</source>
        <translation>kort klump</translation>
    </message>
    <message>
        <source>fine-taper head</source>
        <translation>langtaperet klump</translation>
    </message>
    <message>
        <source>long belly</source>
        <translation>long belly</translation>
    </message>
    <message>
        <source>one-hand line</source>
        <translation>enhåndsline</translation>
    </message>
    <message>
        <source>extension</source>
        <translation>forlengelse</translation>
    </message>
    <message>
        <source>level tip</source>
        <translation>jevn tupp</translation>
    </message>
    <message>
        <source>float/sink tip</source>
        <translation>flyte-/synketupp</translation>
    </message>
    <message>
        <source>tapered tip</source>
        <translation>taperet tupp</translation>
    </message>
    <message>
        <source>plain leader</source>
        <translation>enkel fortom</translation>
    </message>
    <message>
        <source>coated leader</source>
        <translation>belagt fortom</translation>
    </message>
    <message>
        <source>fly, mass not known</source>
        <translation>flue, ukjent masse</translation>
    </message>
    <message>
        <source>fly, %1 grams</source>
        <translation>flue, %1 gram</translation>
    </message>
    <message>
        <source>fly, %1 grains</source>
        <translation>flue, %1 grain</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>kind of part, its length, its mass per length, for the ear</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 metres</source>
        <translation>%1 meter</translation>
    </message>
    <message>
        <source>%1 feet</source>
        <translation>%1 fot</translation>
    </message>
    <message>
        <source>%1 grams a metre</source>
        <translation>%1 gram per meter</translation>
    </message>
    <message>
        <source>%1 grains a foot</source>
        <translation>%1 grain per fot</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>stang</translation>
    </message>
    <message>
        <source>#%1</source>
        <comment>line number</comment>
        <translation>#%1</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>enhånds</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 dypt</translation>
    </message>
    <message>
        <source>water</source>
        <translation>vann</translation>
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
        <translation>%1 på %2</translation>
    </message>
    <message>
        <source>no joint yet: add a tip or leader</source>
        <translation>ingen skjøt ennå: legg til tupp eller fortom</translation>
    </message>
    <message>
        <source>no rule for a one-hand line</source>
        <translation>ingen regel for ei enhåndsline</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>grains of the tip, of the head with unit</comment>
        <translation>%1 av %2</translation>
    </message>
    <message>
        <source>no rule for this head</source>
        <translation>ingen regel for denne klumpen</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>grains of line, of the fly with unit</comment>
        <translation>%1 på %2</translation>
    </message>
    <message>
        <source>no line to carry it yet</source>
        <translation>ingen line til å bære den ennå</translation>
    </message>
    <message>
        <source>in %1–%2</source>
        <comment>a head&apos;s grains in the rod&apos;s window</comment>
        <translation>i %1–%2</translation>
    </message>
    <message>
        <source>for %1–%2</source>
        <comment>a head&apos;s grains outside the window</comment>
        <translation>for %1–%2</translation>
    </message>
    <message>
        <source>no line in the water yet</source>
        <translation>ingen line i vannet ennå</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of depth</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>the depth of the water with unit</comment>
        <translation>av %1</translation>
    </message>
    <message>
        <source>the coated leader</source>
        <translation>den belagte fortommen</translation>
    </message>
    <message>
        <source>the head</source>
        <translation>klumpen</translation>
    </message>
    <message>
        <source>the tip</source>
        <translation>tuppen</translation>
    </message>
    <message>
        <source>the leader</source>
        <translation>fortommen</translation>
    </message>
    <message>
        <source>the tippet</source>
        <translation>fortomsspissen</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>lina</translation>
    </message>
    <message>
        <source>%1 does not carry the fly: more mass per foot there, or a smaller fly</source>
        <translation>%1 bærer ikke flua: mer masse per fot der, eller en mindre flue</translation>
    </message>
    <message>
        <source>%1 only just carries the fly: a smaller fly, or more mass per foot there</source>
        <translation>%1 bærer så vidt flua: en mindre flue, eller mer masse per fot der</translation>
    </message>
    <message>
        <source>The fly is too heavy for this tip: a denser tip or a lighter fly</source>
        <translation>Flua er for tung for denne tuppen: en tettere tupp eller en lettere flue</translation>
    </message>
    <message>
        <source>The fly is heavy for this tip: a slow, open stroke</source>
        <translation>Flua er tung for denne tuppen: et sakte, åpent kast</translation>
    </message>
    <message>
        <source>Will land in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Faller i en haug: mer linehastighet, en kortere fortom eller en mindre flue</translation>
    </message>
    <message>
        <source>Probably will not turn over: more line speed, a shorter leader or a smaller fly</source>
        <translation>Ruller trolig ikke ut: mer linehastighet, en kortere fortom eller en mindre flue</translation>
    </message>
    <message>
        <source>Turns over with little speed to spare: a clean stroke, or a shorter leader</source>
        <translation>Ruller ut med lite å gå på: et rent kast, eller en kortere fortom</translation>
    </message>
    <message>
        <source>Turns over with speed to spare</source>
        <translation>Ruller ut med god margin</translation>
    </message>
    <message>
        <source>Turnover is read once there is a head</source>
        <translation>Utrullingen leses når det er en klump</translation>
    </message>
    <message>
        <source>Turnover is read once there is a fly</source>
        <translation>Utrullingen leses når det er en flue</translation>
    </message>
    <message>
        <source>Turnover is read once the fly has a mass</source>
        <translation>Utrullingen leses når flua har en masse</translation>
    </message>
    <message>
        <source>Too little line in front of the loop to read a turnover</source>
        <translation>For lite line foran bukta til å lese en utrulling</translation>
    </message>
    <message>
        <source>Over 300 ft from the rod tip: no turnover is read</source>
        <translation>Over 300 ft fra stangtuppen: ingen utrulling leses</translation>
    </message>
    <message>
        <source>The line is too slow for a loop: give the cast more line speed</source>
        <translation>Lina er for sein for en bukt: gi kastet mer linehastighet</translation>
    </message>
    <message>
        <source>Turns over and kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Ruller ut og slår over: en tyngre flue, en lengre fortom eller en lettere tupp</translation>
    </message>
    <message>
        <source>%1 carries the fly, and it turns over with speed to spare</source>
        <translation>%1 bærer flua, og den ruller ut med god margin</translation>
    </message>
    <message>
        <source>swings clear of the bottom</source>
        <translation>svinger klar av bunnen</translation>
    </message>
    <message>
        <source>near the bottom</source>
        <translation>nær bunnen</translation>
    </message>
    <message>
        <source>touches the bottom</source>
        <translation>streifer bunnen</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>ligger på bunnen</translation>
    </message>
    <message>
        <source>still water: no swing</source>
        <translation>stille vann: ingen sving</translation>
    </message>
    <message>
        <source>all floats: it fishes on top</source>
        <translation>alt flyter: den fisker i overflaten</translation>
    </message>
    <message>
        <source>the fly floats: it fishes on top</source>
        <translation>flua flyter: den fisker i overflaten</translation>
    </message>
    <message>
        <source>Touches the bottom for %1 of the swing.</source>
        <translation>Streifer bunnen i %1 av svingen.</translation>
    </message>
    <message>
        <source>Swings at %1, %2 deep after the mend.</source>
        <translation>Svinger på %1, %2 dypt etter mendingen.</translation>
    </message>
    <message>
        <source>Comes to rest on the bottom before it is round.</source>
        <translation>Blir liggende på bunnen før den er rundt.</translation>
    </message>
    <message>
        <source>Still not round at the end of the run.</source>
        <translation>Fortsatt ikke rundt ved slutten av kjøringen.</translation>
    </message>
    <message>
        <source>The run broke off: this line cannot be followed to the end.</source>
        <translation>Kjøringen brøt av: denne lina kan ikke følges til slutten.</translation>
    </message>
    <message>
        <source>Hangs at %1.</source>
        <translation>Henger på %1.</translation>
    </message>
    <message>
        <source>Round in %1 s.</source>
        <translation>Rundt på %1 s.</translation>
    </message>
    <message>
        <source>hinges here: the %1 is heavier than the line behind it</source>
        <translation>knekker her: delen foran (%1) er tyngre enn lina bak</translation>
    </message>
    <message>
        <source>hinges here unless the stroke is slow and open</source>
        <translation>knekker her om kastet ikke er sakte og åpent</translation>
    </message>
    <message>
        <source>big drop here: the front collapses</source>
        <translation>stort fall her: fronten kollapser</translation>
    </message>
    <message>
        <source>into a short leader, no rule</source>
        <translation>til en kort fortom, ingen regel</translation>
    </message>
    <message>
        <source>the butt of the leader is stout enough</source>
        <translation>tykkenden på fortommen er kraftig nok</translation>
    </message>
    <message>
        <source>the butt of the leader is thin: a stouter one turns over better</source>
        <translation>tykkenden på fortommen er tynn: en kraftigere ruller bedre ut</translation>
    </message>
    <message>
        <source>fits, just under the window</source>
        <translation>passer, like under vinduet</translation>
    </message>
    <message>
        <source>fits, just over the window</source>
        <translation>passer, like over vinduet</translation>
    </message>
    <message>
        <source>fits, at the light end</source>
        <translation>passer, i den lette enden</translation>
    </message>
    <message>
        <source>fits, at the heavy end</source>
        <translation>passer, i den tunge enden</translation>
    </message>
    <message>
        <source>fits this rod</source>
        <translation>passer denne stanga</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Knekk</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Klump på stang</translation>
    </message>
    <message>
        <source>Length on rod</source>
        <translation>Lengde på stang</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Tuppandel</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anker</translation>
    </message>
    <message>
        <source>Fly</source>
        <translation>Flue</translation>
    </message>
    <message>
        <source>Fly on leader</source>
        <translation>Flue på fortom</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Utrulling</translation>
    </message>
    <message>
        <source>Depth, estimate</source>
        <translation>Dybde, anslag</translation>
    </message>
    <message>
        <source>hinges here</source>
        <translation>knekker her</translation>
    </message>
    <message>
        <source>hinges unless slow and open</source>
        <translation>knekker, om ikke sakte og åpent</translation>
    </message>
    <message>
        <source>steps up: has to be forced</source>
        <translation>går opp: må tvinges</translation>
    </message>
    <message>
        <source>runs level</source>
        <translation>går jevnt</translation>
    </message>
    <message>
        <source>smooth drop</source>
        <translation>mykt fall</translation>
    </message>
    <message>
        <source>big drop: front collapses</source>
        <translation>stort fall: fronten kollapser</translation>
    </message>
    <message>
        <source>into the leader</source>
        <translation>til fortommen</translation>
    </message>
    <message>
        <source>stout enough butt</source>
        <translation>kraftig nok tykkende</translation>
    </message>
    <message>
        <source>thin butt</source>
        <translation>tynn tykkende</translation>
    </message>
    <message>
        <source>butt too thin: will pile</source>
        <translation>for tynn tykkende: haug</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot either side of a joint</comment>
        <translation>%1 til %2</translation>
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
        <translation>går opp fra %1 med %2: %3</translation>
    </message>
    <message>
        <source>steps down from the %1 by %2: %3</source>
        <comment>kind of part, ratio, verdict</comment>
        <translation>går ned fra %1 med %2: %3</translation>
    </message>
    <message>
        <source>a touch light for this rod</source>
        <translation>litt lett for denne stanga</translation>
    </message>
    <message>
        <source>a touch heavy for this rod</source>
        <translation>litt tung for denne stanga</translation>
    </message>
    <message>
        <source>too light a head for this rod</source>
        <translation>for lett klump for denne stanga</translation>
    </message>
    <message>
        <source>too heavy a head for this rod</source>
        <translation>for tung klump for denne stanga</translation>
    </message>
    <message>
        <source>usual for this rod</source>
        <translation>vanlig for denne stanga</translation>
    </message>
    <message>
        <source>on the short side</source>
        <translation>i korteste laget</translation>
    </message>
    <message>
        <source>on the long side</source>
        <translation>i lengste laget</translation>
    </message>
    <message>
        <source>too short for this rod</source>
        <translation>for kort for denne stanga</translation>
    </message>
    <message>
        <source>too long for this rod</source>
        <translation>for lang for denne stanga</translation>
    </message>
    <message>
        <source>no grip: a heavier tip</source>
        <translation>ikke noe grep: en tyngre tupp</translation>
    </message>
    <message>
        <source>light: small flies</source>
        <translation>lett: små fluer</translation>
    </message>
    <message>
        <source>right for this head</source>
        <translation>riktig for denne klumpen</translation>
    </message>
    <message>
        <source>heavy: roll it up first</source>
        <translation>tung: rull den opp først</translation>
    </message>
    <message>
        <source>too much tip for this head</source>
        <translation>for mye tupp for klumpen</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>for lite i vannet</translation>
    </message>
    <message>
        <source>a short anchor</source>
        <translation>et kort anker</translation>
    </message>
    <message>
        <source>enough in the water</source>
        <translation>nok i vannet</translation>
    </message>
    <message>
        <source>a long anchor</source>
        <translation>et langt anker</translation>
    </message>
    <message>
        <source>the tip carries it</source>
        <translation>tuppen bærer den</translation>
    </message>
    <message>
        <source>heavy: slow, open stroke</source>
        <translation>tung: sakte, åpent kast</translation>
    </message>
    <message>
        <source>too heavy for this tip</source>
        <translation>for tung for denne tuppen</translation>
    </message>
    <message>
        <source>the leader carries it</source>
        <translation>fortommen bærer den</translation>
    </message>
    <message>
        <source>heavy for this leader</source>
        <translation>tung for denne fortommen</translation>
    </message>
    <message>
        <source>too heavy for this leader</source>
        <translation>for tung for denne fortommen</translation>
    </message>
    <message>
        <source>drop a head on the line</source>
        <translation>slipp en klump på lina</translation>
    </message>
    <message>
        <source>drop a fly on the line</source>
        <translation>slipp en flue på lina</translation>
    </message>
    <message>
        <source>no rod yet: choose one</source>
        <translation>ingen stang ennå: velg en</translation>
    </message>
    <message>
        <source>no rod length yet: type it</source>
        <translation>ingen stanglengde ennå: skriv den</translation>
    </message>
    <message>
        <source>say what style of head it is</source>
        <translation>si hvilken klumptype det er</translation>
    </message>
    <message>
        <source>no water yet: choose a pool</source>
        <translation>ikke noe vann ennå: velg en høl</translation>
    </message>
    <message>
        <source>give the rod a grain window</source>
        <translation>gi stanga et grainvindu</translation>
    </message>
    <message>
        <source>weigh the fly and type it</source>
        <translation>vei flua og skriv det inn</translation>
    </message>
    <message>
        <source>drop a tip on the line</source>
        <translation>slipp en tupp på lina</translation>
    </message>
    <message>
        <source>too little line to cast a loop</source>
        <translation>for lite line til å kaste en bukt</translation>
    </message>
    <message>
        <source>over 300 ft of line: nobody casts that</source>
        <translation>over 300 ft line: det kaster ingen</translation>
    </message>
    <message>
        <source>too slow for a loop: give more line speed</source>
        <translation>for sein for en bukt: gi mer linehastighet</translation>
    </message>
    <message>
        <source>Same stroke as the rig you opened</source>
        <translation>Samme kastbevegelse som med oppsettet du åpnet</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, slower lift</source>
        <translation>Samme takt som med oppsettet du åpnet, saktere løft</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, quicker lift</source>
        <translation>Samme takt som med oppsettet du åpnet, raskere løft</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened</source>
        <translation>Et lengre sveip enn med oppsettet du åpnet</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, slower lift</source>
        <translation>Et lengre sveip enn med oppsettet du åpnet, saktere løft</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, quicker lift</source>
        <translation>Et lengre sveip enn med oppsettet du åpnet, raskere løft</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened</source>
        <translation>Et kortere sveip enn med oppsettet du åpnet</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, slower lift</source>
        <translation>Et kortere sveip enn med oppsettet du åpnet, saktere løft</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, quicker lift</source>
        <translation>Et kortere sveip enn med oppsettet du åpnet, raskere løft</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened</source>
        <translation>Et annet kast enn med oppsettet du åpnet</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, slower lift</source>
        <translation>Et annet kast enn med oppsettet du åpnet, saktere løft</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, quicker lift</source>
        <translation>Et annet kast enn med oppsettet du åpnet, raskere løft</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passer</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>pass på</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>feil</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>one fact, the next</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Measured: %1, give or take %2</source>
        <translation>Målt: %1, pluss/minus %2</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Målt: %1</translation>
    </message>
    <message>
        <source>stated %1</source>
        <translation>oppgitt %1</translation>
    </message>
    <message>
        <source>Timed: %1, give or take %2</source>
        <translation>Tatt tid på: %1, pluss/minus %2</translation>
    </message>
    <message>
        <source>Timed: %1</source>
        <translation>Tatt tid på: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>oppgitt %1</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 målt</translation>
    </message>
    <message>
        <source>touches the bottom for %1</source>
        <translation>tar bunnen i %1</translation>
    </message>
    <message>
        <source>may touch the bottom</source>
        <translation>kan ta bunnen</translation>
    </message>
    <message>
        <source>Turns over, but the fly arrives without life: more line speed or a smaller fly</source>
        <translation>Ruller ut, men flua kommer fram uten fart: mer linehastighet eller en mindre flue</translation>
    </message>
    <message>
        <source>The fly is too bulky for this nylon: thicker or shorter nylon, or a smaller fly</source>
        <translation>Flua er for omfangsrik for denne nylonen: tykkere eller kortere nylon, eller en mindre flue</translation>
    </message>
    <message>
        <source>the line carries it</source>
        <translation>lina bærer den</translation>
    </message>
    <message>
        <source>too heavy for this line</source>
        <translation>for tung for denne lina</translation>
    </message>
    <message>
        <source>%1 timed</source>
        <comment>a sink rate</comment>
        <translation>%1 tatt tid på</translation>
    </message>
    <message>
        <source>smooth: sand or silt</source>
        <translation>glatt: sand eller slam</translation>
    </message>
    <message>
        <source>usual: gravel</source>
        <translation>vanlig: grus</translation>
    </message>
    <message>
        <source>rough: cobbles</source>
        <translation>ru: stor stein</translation>
    </message>
    <message>
        <source>very rough: boulders</source>
        <translation>svært ru: blokker</translation>
    </message>
</context>
<context>
    <name>grainwise::Problem</name>
    <message>
        <source>section %1: %2</source>
        <translation>seksjon %1: %2</translation>
    </message>
    <message>
        <source>a spool cannot be divided into %1 tips</source>
        <translation>en spole kan ikke deles i %1 tupper</translation>
    </message>
    <message>
        <source>ask for one or more</source>
        <translation>be om én eller flere</translation>
    </message>
    <message>
        <source>the loops of %1 tips use up the %2 ft that are left</source>
        <translation>løkkene på %1 tupper bruker opp de %2 ft som er igjen</translation>
    </message>
    <message>
        <source>ask for fewer tips</source>
        <translation>be om færre tupper</translation>
    </message>
    <message>
        <source>a tip of %1 ft cannot be cut</source>
        <translation>en tupp på %1 ft kan ikke kappes</translation>
    </message>
    <message>
        <source>the spool is %1 ft short of one such tip with its loops</source>
        <translation>spolen mangler %1 ft på én slik tupp med løkker</translation>
    </message>
    <message>
        <source>ask for a shorter one</source>
        <translation>be om en kortere</translation>
    </message>
    <message>
        <source>a measure of this fly is negative or over 6 in</source>
        <translation>et mål på denne flua er negativt eller over 6 in</translation>
    </message>
    <message>
        <source>measure it again</source>
        <translation>mål på nytt</translation>
    </message>
    <message>
        <source>a bead&apos;s hole is as wide as the bead</source>
        <translation>hullet i en kule er like vidt som kula</translation>
    </message>
    <message>
        <source>give the hole&apos;s own diameter</source>
        <translation>oppgi diameteren på selve hullet</translation>
    </message>
    <message>
        <source>a number of beads below 0</source>
        <translation>et antall kuler under 0</translation>
    </message>
    <message>
        <source>give 0 or more</source>
        <translation>oppgi 0 eller mer</translation>
    </message>
    <message>
        <source>a number of turns below 0</source>
        <translation>et antall viklinger under 0</translation>
    </message>
    <message>
        <source>the dressing&apos;s mass or the water it holds is no such thing</source>
        <translation>massen til bindematerialet eller vannet det holder på, er ikke gyldig</translation>
    </message>
    <message>
        <source>give 0 gr or more, and 0 to 50 times its dry mass of water</source>
        <translation>oppgi 0 gr eller mer, og vann fra 0 til 50 ganger den tørre massen</translation>
    </message>
    <message>
        <source>a weight below 0</source>
        <translation>en vekt under 0</translation>
    </message>
    <message>
        <source>give 0 gr or more</source>
        <translation>oppgi 0 gr eller mer</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no hook size</source>
        <translation>&quot;%1&quot; er ingen krokstørrelse</translation>
    </message>
    <message>
        <source>write it like 6 or 2/0, or give its wire</source>
        <translation>skriv den som 6 eller 2/0, eller oppgi kroktråden</translation>
    </message>
    <message>
        <source>there is nothing on this fly yet</source>
        <translation>det er ingenting på denne flua ennå</translation>
    </message>
    <message>
        <source>add a hook or a dressing</source>
        <translation>legg til en krok eller bindemateriale</translation>
    </message>
    <message>
        <source>one measure does not name a tip</source>
        <translation>ett mål alene bestemmer ingen tupp</translation>
    </message>
    <message>
        <source>give two of mass, length, diameter and timed sink</source>
        <translation>oppgi to av masse, lengde, diameter og målt synketid</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so fast</source>
        <translation>ingen line med denne massen per fot synker så fort</translation>
    </message>
    <message>
        <source>time it again, over a longer fall</source>
        <translation>ta tiden på nytt, over et lengre fall</translation>
    </message>
    <message>
        <source>no spool steps down to %1 in one knot</source>
        <translation>ingen spole går ned til %1 med én knute</translation>
    </message>
    <message>
        <source>take one over %1 up to %2, or a leader of one piece</source>
        <translation>ta en over %1 og opp til %2, eller en fortom i ett stykke</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>no spool has a diameter for the butt</source>
        <translation>ingen spole har en diameter for tykkenden</translation>
    </message>
    <message>
        <source>add one of %1</source>
        <translation>legg til en, %1</translation>
    </message>
    <message>
        <source>from the tippet up the spools lead no farther than %1; the butt wants %2</source>
        <translation>fra fortomsspissen og opp når spolene bare til %1; tykkenden krever %2</translation>
    </message>
    <message>
        <source>add a diameter over %1 up to %2</source>
        <translation>legg til en diameter over %1 og opp til %2</translation>
    </message>
    <message>
        <source>there is no nylon or fluorocarbon to tie a leader from</source>
        <translation>det er ingen nylon eller fluorkarbon å knyte en fortom av</translation>
    </message>
    <message>
        <source>add spools with their diameters</source>
        <translation>legg til spoler med diameter</translation>
    </message>
    <message>
        <source>no spool is a tippet of %1</source>
        <translation>ingen spole gir en fortomsspiss på %1</translation>
    </message>
    <message>
        <source>choose a tippet that is there, or add the spool</source>
        <translation>velg en fortomsspiss som finnes, eller legg til spolen</translation>
    </message>
    <message>
        <source>the butt follows from the line&apos;s tip, which is not known</source>
        <translation>tykkenden følger av linetuppen, som ikke er kjent</translation>
    </message>
    <message>
        <source>give its diameter, or what a foot of it weighs</source>
        <translation>oppgi diameteren på den, eller hva en fot av den veier</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no %2</source>
        <translation>&quot;%1&quot; duger ikke som %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date</source>
        <translation>&quot;%1&quot; er ingen dato</translation>
    </message>
    <message>
        <source>write year-month-day, as in 2026-03-02</source>
        <translation>skriv år-måned-dag, som 2026-03-02</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds no mass, length, gr/ft or sink rate</source>
        <translation>&quot;%1&quot; har verken masse, lengde, gr/ft eller synkehastighet</translation>
    </message>
    <message>
        <source>check which column is which, or take the line out</source>
        <translation>sjekk hvilken kolonne som er hvilken, eller ta ut linjen</translation>
    </message>
    <message>
        <source>this line</source>
        <translation>denne linjen</translation>
    </message>
    <message>
        <source>%1 lacks a length, or a mass or gr/ft</source>
        <translation>%1 mangler lengde, eller både masse og gr/ft</translation>
    </message>
    <message>
        <source>a tip needs its length and one of the two</source>
        <translation>en tupp trenger lengden og én av de to</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 sinks over more than its length</source>
        <translation>%1 synker over mer enn lengden sin</translation>
    </message>
    <message>
        <source>give the sinking feet within its length</source>
        <translation>oppgi de synkende fotene innenfor lengden</translation>
    </message>
    <message>
        <source>%1 ft cannot come off %2 ft</source>
        <translation>%1 ft kan ikke tas av %2 ft</translation>
    </message>
    <message>
        <source>give less than its length</source>
        <translation>oppgi mindre enn lengden</translation>
    </message>
    <message>
        <source>%1 is no mass</source>
        <translation>%1 er ingen masse</translation>
    </message>
    <message>
        <source>write it like 113.5 gr or 7.4 g</source>
        <translation>skriv den som 113,5 gr eller 7,4 g</translation>
    </message>
    <message>
        <source>%1 does not say gr or g</source>
        <translation>%1 sier ikke om det er gr eller g</translation>
    </message>
    <message>
        <source>write gr for grains or g for grams</source>
        <translation>skriv gr for grain eller g for gram</translation>
    </message>
    <message>
        <source>%1 is no unit of mass</source>
        <translation>%1 er ingen enhet for masse</translation>
    </message>
    <message>
        <source>%1 is no length</source>
        <translation>%1 er ingen lengde</translation>
    </message>
    <message>
        <source>write it like 10.5 ft, 10 ft 6 in or 3.2 m</source>
        <translation>skriv den som 10,5 ft, 10 ft 6 in eller 3,2 m</translation>
    </message>
    <message>
        <source>%1 does not say its unit</source>
        <translation>%1 sier ikke hvilken enhet</translation>
    </message>
    <message>
        <source>%1 is no unit of length</source>
        <translation>%1 er ingen enhet for lengde</translation>
    </message>
    <message>
        <source>write ft, in, m or cm</source>
        <translation>skriv ft, in, m eller cm</translation>
    </message>
    <message>
        <source>write feet before inches, as in 10 ft 6 in</source>
        <translation>skriv fot før tommer, som 10 ft 6 in</translation>
    </message>
    <message>
        <source>a mass of %1 gr is none</source>
        <translation>%1 gr er ingen masse</translation>
    </message>
    <message>
        <source>weigh it again</source>
        <translation>vei på nytt</translation>
    </message>
    <message>
        <source>%1 gr is not more than its loops, %2 gr</source>
        <translation>%1 gr er ikke mer enn løkkene, %2 gr</translation>
    </message>
    <message>
        <source>weigh it with its loops, or correct them</source>
        <translation>vei den med løkkene, eller rett dem</translation>
    </message>
    <message>
        <source>the water&apos;s depth and speed are not known</source>
        <translation>dybden og strømmen i vannet er ikke kjent</translation>
    </message>
    <message>
        <source>give them first</source>
        <translation>oppgi dem først</translation>
    </message>
    <message>
        <source>there is no fly of known mass</source>
        <translation>det er ingen flue med kjent masse</translation>
    </message>
    <message>
        <source>add the fly that was fished</source>
        <translation>legg til flua som ble fisket</translation>
    </message>
    <message>
        <source>a fly %1 ft down in %2 ft of water says nothing about the current</source>
        <translation>en flue %1 ft dypt i %2 ft vann sier ingenting om strømmen</translation>
    </message>
    <message>
        <source>measure where the fly hangs free, above the bottom</source>
        <translation>mål der flua henger fritt, over bunnen</translation>
    </message>
    <message>
        <source>how sure the depth is, is not a depth itself</source>
        <translation>usikkerheten i dybden er ingen mulig dybde</translation>
    </message>
    <message>
        <source>give 0 ft or a little more</source>
        <translation>oppgi 0 ft eller litt mer</translation>
    </message>
    <message>
        <source>no current from 0.2 to 15 ft/s puts this rig&apos;s fly there</source>
        <translation>ingen strøm fra 0,2 til 15 ft/s bringer flua på dette oppsettet dit</translation>
    </message>
    <message>
        <source>check the depth, the rig and the depth of the water</source>
        <translation>sjekk dybden, oppsettet og vanndybden</translation>
    </message>
    <message>
        <source>a fall of %1 in is no fall in a tub</source>
        <translation>%1 in er ikke noe fall i et kar</translation>
    </message>
    <message>
        <source>give over 0 to 300 in</source>
        <translation>oppgi over 0 til 300 in</translation>
    </message>
    <message>
        <source>no time is given</source>
        <translation>ingen tid er oppgitt</translation>
    </message>
    <message>
        <source>time at least one fall</source>
        <translation>ta tiden på minst ett fall</translation>
    </message>
    <message>
        <source>a time of %1 s is none</source>
        <translation>%1 s er ingen tid</translation>
    </message>
    <message>
        <source>time it again</source>
        <translation>ta tiden på nytt</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so</source>
        <translation>ingen line med denne massen per fot synker slik</translation>
    </message>
    <message>
        <source>measure the fall and time it again</source>
        <translation>mål fallet og ta tiden på nytt</translation>
    </message>
    <message>
        <source>this piece does not go by a sink rate</source>
        <translation>dette stykket går ikke etter en synkehastighet</translation>
    </message>
    <message>
        <source>choose a piece that sinks by its rate</source>
        <translation>velg et stykke som synker med en oppgitt fart</translation>
    </message>
    <message>
        <source>the shelf has no head of this style</source>
        <translation>hylla har ingen klump av denne typen</translation>
    </message>
    <message>
        <source>add one to it</source>
        <translation>legg til en der</translation>
    </message>
    <message>
        <source>the rig named here is not sound: %1</source>
        <translation>oppsettet som er nevnt her, er ikke i orden: %1</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on</source>
        <translation>navngi en oppsettfil fra mappen til kortstokken</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 mangler</translation>
    </message>
    <message>
        <source>the format &quot;%1&quot; is not known</source>
        <translation>formatet &quot;%1&quot; er ikke kjent</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 er %2</translation>
    </message>
    <message>
        <source>give one of %1</source>
        <translation>oppgi én av disse: %1</translation>
    </message>
    <message>
        <source>this name does not stay in the deck&apos;s own folder</source>
        <translation>dette navnet fører ut av mappen til kortstokken</translation>
    </message>
    <message>
        <source>this name is a link out of the deck&apos;s own folder</source>
        <translation>dette navnet er en lenke ut av kortstokkens egen mappe</translation>
    </message>
    <message>
        <source>put the rig file itself into that folder</source>
        <translation>legg selve riggfilen i den mappen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>det finnes ingen slik fil</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>sjekk navnet</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>dette er en mappe</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>nevn en fil i den</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>filen kan ikke leses</translation>
    </message>
    <message>
        <source>check who may read it and that it is a plain file</source>
        <translation>sjekk hvem som har lov å lese den, og at den er en vanlig fil</translation>
    </message>
    <message>
        <source>more is wrong than these %1 problems</source>
        <translation>mer er galt enn disse %1 feilene</translation>
    </message>
    <message>
        <source>mend them first</source>
        <translation>rett dem først</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice in this object</source>
        <translation>nøkkelen &quot;%1&quot; står to ganger i dette objektet</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>behold én av de to</translation>
    </message>
    <message>
        <source>objects and lists are nested deeper than %1 levels</source>
        <translation>objekter og lister er nøstet dypere enn %1 nivåer</translation>
    </message>
    <message>
        <source>keep it to %1</source>
        <translation>hold det på høyst %1</translation>
    </message>
    <message>
        <source>in text, write a line break as \n and a tab as \t</source>
        <translation>i tekst skrives linjeskift som \n og tabulator som \t</translation>
    </message>
    <message>
        <source>end the text with a double quote on the same line</source>
        <translation>avslutt teksten med et dobbelt anførselstegn på samme linje</translation>
    </message>
    <message>
        <source>in text, write a backslash as two</source>
        <translation>i tekst skrives en omvendt skråstrek som to</translation>
    </message>
    <message>
        <source>write the character itself instead of \u codes</source>
        <translation>skriv selve tegnet i stedet for \u-koder</translation>
    </message>
    <message>
        <source>give a name in double quotes here; no comma stands before }</source>
        <translation>oppgi et navn i doble anførselstegn her; det står ikke komma foran }</translation>
    </message>
    <message>
        <source>put a colon between the name and its value</source>
        <translation>sett kolon mellom navnet og verdien</translation>
    </message>
    <message>
        <source>put a comma before it, or close the object with } first</source>
        <translation>sett komma foran, eller lukk objektet med } først</translation>
    </message>
    <message>
        <source>put a comma before it, or close the list with ] first</source>
        <translation>sett komma foran, eller lukk listen med ] først</translation>
    </message>
    <message>
        <source>nothing may follow the closing brace</source>
        <translation>ingenting kan stå etter den avsluttende klammen</translation>
    </message>
    <message>
        <source>write numbers as 13, 0.024 or -3.5</source>
        <translation>skriv tall som 13, 0.024 eller -3.5</translation>
    </message>
    <message>
        <source>give a number, text in double quotes, true, false, a list or an object</source>
        <translation>oppgi et tall, tekst i doble anførselstegn, true, false, en liste eller et objekt</translation>
    </message>
    <message>
        <source>the number %1 is too large</source>
        <translation>tallet %1 er for stort</translation>
    </message>
    <message>
        <source>give a finite number</source>
        <translation>oppgi et endelig tall</translation>
    </message>
    <message>
        <source>something follows the closing brace</source>
        <translation>noe står etter den avsluttende klammen</translation>
    </message>
    <message>
        <source>end the file there; one object a file</source>
        <translation>avslutt filen der; ett objekt per fil</translation>
    </message>
    <message>
        <source>the text ends too early</source>
        <translation>teksten slutter for tidlig</translation>
    </message>
    <message>
        <source>the file seems cut off; close every quote, list and object, or take a whole copy</source>
        <translation>filen ser avkuttet ut; lukk hvert anførselstegn, hver liste og hvert objekt, eller ta en hel kopi</translation>
    </message>
    <message>
        <source>%1 is no number that JSON knows</source>
        <translation>%1 er ikke noe tall JSON kjenner</translation>
    </message>
    <message>
        <source>a line break or tab</source>
        <translation>et linjeskift eller en tabulator</translation>
    </message>
    <message>
        <source>this is not JSON: %1 cannot stand here</source>
        <translation>dette er ikke JSON: %1 kan ikke stå her</translation>
    </message>
    <message>
        <source>the file is larger than %1 bytes</source>
        <translation>filen er større enn %1 byte</translation>
    </message>
    <message>
        <source>a file of ours has at most %1 (4 MiB)</source>
        <translation>en fil av våre har høyst %1 (4 MiB)</translation>
    </message>
    <message>
        <source>there is a NUL byte</source>
        <translation>det står en NUL-byte der</translation>
    </message>
    <message>
        <source>take it out; the file must be plain text</source>
        <translation>ta den ut; filen må være ren tekst</translation>
    </message>
    <message>
        <source>the file is not UTF-8 text</source>
        <translation>filen er ikke UTF-8-tekst</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>lagre som UTF-8</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>filen er tom</translation>
    </message>
    <message>
        <source>give one JSON object, { ... }</source>
        <translation>oppgi ett JSON-objekt, { ... }</translation>
    </message>
    <message>
        <source>the file holds %1</source>
        <translation>filen inneholder %1</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true eller false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>et tall</translation>
    </message>
    <message>
        <source>text</source>
        <translation>tekst</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>en liste</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>et objekt</translation>
    </message>
    <message>
        <source>the number %1 cannot be held</source>
        <translation>tallet %1 kan ikke lagres</translation>
    </message>
    <message>
        <source>%1 has %2 entries</source>
        <translation>%1 har %2 oppføringer</translation>
    </message>
    <message>
        <source>give two numbers, %1</source>
        <translation>oppgi to tall, %1</translation>
    </message>
    <message>
        <source>give text in double quotes</source>
        <translation>oppgi tekst i doble anførselstegn</translation>
    </message>
    <message>
        <source>give a rig, { ... }, or the relative name of a rig file</source>
        <translation>oppgi et oppsett, { ... }, eller det relative navnet på en oppsettfil</translation>
    </message>
    <message>
        <source>%1 starts with %2</source>
        <translation>%1 begynner med %2</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>oppgi %1</translation>
    </message>
    <message>
        <source>this is &quot;%1&quot;, not %2</source>
        <translation>dette er &quot;%1&quot;, ikke %2</translation>
    </message>
    <message>
        <source>%1 has the format %2</source>
        <translation>%1 har formatet %2</translation>
    </message>
    <message>
        <source>version %1 is not known here</source>
        <translation>versjon %1 er ikke kjent her</translation>
    </message>
    <message>
        <source>this program reads version %1; a newer one may be needed</source>
        <translation>dette programmet leser versjon %1; kanskje trengs et nyere</translation>
    </message>
    <message>
        <source>give a whole number, %1</source>
        <translation>oppgi et helt tall, %1</translation>
    </message>
    <message>
        <source>%1, or two as [rod end, fly end]</source>
        <translation>%1, eller to som [stangende, flueende]</translation>
    </message>
    <message>
        <source>give two numbers, [low, high]</source>
        <translation>oppgi to tall, [minste, største]</translation>
    </message>
    <message>
        <source>give true or false</source>
        <translation>oppgi true eller false</translation>
    </message>
    <message>
        <source>give an object, { ... }</source>
        <translation>oppgi et objekt, { ... }</translation>
    </message>
    <message>
        <source>give a list of objects, [ ... ]</source>
        <translation>oppgi en liste med objekter, [ ... ]</translation>
    </message>
    <message>
        <source>this entry is %1</source>
        <translation>denne oppføringen er %1</translation>
    </message>
    <message>
        <source>%1, or leave it out</source>
        <translation>%1, eller utelat den</translation>
    </message>
    <message>
        <source>give a number, %1</source>
        <translation>oppgi et tall, %1</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>utelat den</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; is not known</source>
        <translation>%1 &quot;%2&quot; er ikke kjent</translation>
    </message>
    <message>
        <source>gr_per_ft says %1, but diameter_in with %2 makes %3</source>
        <translation>gr_per_ft sier %1, men diameter_in med %2 gir %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the three out</source>
        <translation>de må stemme overens innenfor 2 %; utelat én av de tre</translation>
    </message>
    <message>
        <source>density_g_cm3 says %1, but material %2 is %3</source>
        <translation>density_g_cm3 sier %1, men material %2 har %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the two out</source>
        <translation>de må stemme overens innenfor 2 %; utelat én av de to</translation>
    </message>
    <message>
        <source>sink_in_per_s says %1, but %2 sink at %3</source>
        <translation>sink_in_per_s sier %1, men etter %2 synker det med %3</translation>
    </message>
    <message>
        <source>they must agree within 1 in/s; leave one of the three out</source>
        <translation>de må stemme overens innenfor 1 in/s; utelat én av de tre</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 med %2</translation>
    </message>
    <message>
        <source>floats is true, but sink_in_per_s says that it sinks</source>
        <translation>floats er true, men sink_in_per_s sier at den synker</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>utelat én av de to</translation>
    </message>
    <message>
        <source>floats is %1, but the rest makes %2</source>
        <translation>floats er %1, men resten gir %2</translation>
    </message>
    <message>
        <source>water is 1 g/cm3; leave floats out or correct the rest</source>
        <translation>vann er 1 g/cm3; utelat floats eller rett resten</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, heavier than any line; check what was typed</source>
        <translation>%1 følger av massen og synkehastigheten, tyngre enn noen line; sjekk det som er skrevet</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, lighter than any line; check what was typed</source>
        <translation>%1 følger av massen og synkehastigheten, lettere enn noen line; sjekk det som er skrevet</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, heavier than any line; check what was typed</source>
        <translation>%1 følger av massen og diameteren, tyngre enn noen line; sjekk det som er skrevet</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, lighter than any line; check what was typed</source>
        <translation>%1 følger av massen og diameteren, lettere enn noen line; sjekk det som er skrevet</translation>
    </message>
    <message>
        <source>a running line</source>
        <translation>en skyteline</translation>
    </message>
    <message>
        <source>a head</source>
        <translation>en klump</translation>
    </message>
    <message>
        <source>a tip</source>
        <translation>en tupp</translation>
    </message>
    <message>
        <source>a leader</source>
        <translation>en fortom</translation>
    </message>
    <message>
        <source>a tippet</source>
        <translation>en fortomsspiss</translation>
    </message>
    <message>
        <source>a fly</source>
        <translation>en flue</translation>
    </message>
    <message>
        <source>%1 is not UTF-8 text</source>
        <translation>%1 er ikke UTF-8-tekst</translation>
    </message>
    <message>
        <source>%1 has %2 characters</source>
        <translation>%1 har %2 tegn</translation>
    </message>
    <message>
        <source>give one of these pairs: gr_per_ft with diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true; or diameter_in with density_g_cm3 or material</source>
        <translation>oppgi ett av disse parene: gr_per_ft med diameter_in, density_g_cm3, sink_in_per_s eller &quot;floats&quot;: true; eller diameter_in med density_g_cm3 eller material</translation>
    </message>
    <message>
        <source>%1 alone does not fix this section</source>
        <translation>%1 alene bestemmer ikke denne seksjonen</translation>
    </message>
    <message>
        <source>add diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true</source>
        <translation>legg til diameter_in, density_g_cm3, sink_in_per_s eller &quot;floats&quot;: true</translation>
    </message>
    <message>
        <source>add density_g_cm3, material or gr_per_ft</source>
        <translation>legg til density_g_cm3, material eller gr_per_ft</translation>
    </message>
    <message>
        <source>this section has neither gr_per_ft nor diameter_in</source>
        <translation>denne seksjonen har verken gr_per_ft eller diameter_in</translation>
    </message>
    <message>
        <source>of this section only the length is known</source>
        <translation>av denne seksjonen er bare lengden kjent</translation>
    </message>
    <message>
        <source>write an ISO 8601 date, year-month-day, as in 2026-03-02</source>
        <translation>skriv en ISO 8601-dato, år-måned-dag, som 2026-03-02</translation>
    </message>
    <message>
        <source>%1 has no style &quot;%2&quot;</source>
        <translation>%1 kan ikke ha style &quot;%2&quot;</translation>
    </message>
    <message>
        <source>leave style out</source>
        <translation>utelat style</translation>
    </message>
    <message>
        <source>leave style out, or give one of these: %1</source>
        <translation>utelat style, eller oppgi én av disse: %1</translation>
    </message>
    <message>
        <source>give the fly&apos;s dry mass in grains, 0 when it is not known</source>
        <translation>oppgi den tørre massen til flua i grain, 0 når den ikke er kjent</translation>
    </message>
    <message>
        <source>wet_gr %1 is less than dry_gr %2</source>
        <translation>wet_gr %1 er mindre enn dry_gr %2</translation>
    </message>
    <message>
        <source>a wet fly weighs at least what the dry one does; give both in grains</source>
        <translation>en våt flue veier minst det den tørre gjør; oppgi begge i grain</translation>
    </message>
    <message>
        <source>%1 has no %2</source>
        <translation>%1 har ikke %2</translation>
    </message>
    <message>
        <source>give dry_gr and wet_gr</source>
        <translation>oppgi dry_gr og wet_gr</translation>
    </message>
    <message>
        <source>take them out; a fly is a point</source>
        <translation>ta dem ut; en flue er et punkt</translation>
    </message>
    <message>
        <source>take them out</source>
        <translation>ta dem ut</translation>
    </message>
    <message>
        <source>give 1 to %1 sections</source>
        <translation>oppgi 1 til %1 seksjoner</translation>
    </message>
    <message>
        <source>%1 needs sections</source>
        <translation>%1 trenger seksjoner</translation>
    </message>
    <message>
        <source>%1 sections are too many</source>
        <translation>%1 seksjoner er for mange</translation>
    </message>
    <message>
        <source>take it out, or make the part a fly</source>
        <translation>ta det ut, eller gjør delen til en flue</translation>
    </message>
    <message>
        <source>the part weighs %1 gr with its loops, but the loops alone %2 gr</source>
        <translation>delen veier %1 gr med løkkene, men løkkene alene %2 gr</translation>
    </message>
    <message>
        <source>the weighed mass must be more than that of the loops</source>
        <translation>den veide massen må være mer enn massen til løkkene</translation>
    </message>
    <message>
        <source>%1 runs from %2 down to %3</source>
        <translation>%1 går fra %2 ned til %3</translation>
    </message>
    <message>
        <source>give the smaller number first</source>
        <translation>oppgi det minste tallet først</translation>
    </message>
    <message>
        <source>the grain window</source>
        <translation>grainvinduet</translation>
    </message>
    <message>
        <source>a rig has one fly, this is another</source>
        <translation>et oppsett har én flue, dette er en til</translation>
    </message>
    <message>
        <source>a rig has one running line, this is another</source>
        <translation>et oppsett har én skyteline, dette er en til</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>ta den ut</translation>
    </message>
    <message>
        <source>%1 stands after %2</source>
        <translation>%1 står etter %2</translation>
    </message>
    <message>
        <source>put the parts in order from rod to fly: %1</source>
        <translation>sett delene i rekkefølge fra stang til flue: %1</translation>
    </message>
    <message>
        <source>this is head piece number %1</source>
        <translation>dette er klumpstykke nummer %1</translation>
    </message>
    <message>
        <source>a head has up to %1 pieces</source>
        <translation>en klump har opptil %1 stykker</translation>
    </message>
    <message>
        <source>give 1 to %1 parts</source>
        <translation>oppgi 1 til %1 deler</translation>
    </message>
    <message>
        <source>a rig needs parts</source>
        <translation>et oppsett trenger deler</translation>
    </message>
    <message>
        <source>%1 parts are too many</source>
        <translation>%1 deler er for mange</translation>
    </message>
    <message>
        <source>%1 is empty</source>
        <translation>%1 er tom</translation>
    </message>
    <message>
        <source>give each part of a shelf an id of its own, as text</source>
        <translation>gi hver del på en hylle sin egen id, som tekst</translation>
    </message>
    <message>
        <source>id &quot;%1&quot; is taken by part %2 already</source>
        <translation>id &quot;%1&quot; er alt brukt av del %2</translation>
    </message>
    <message>
        <source>give the heading it stands under, as text</source>
        <translation>oppgi overskriften den står under, som tekst</translation>
    </message>
    <message>
        <source>clearance_ft and wanted_depth_ft both say where the fly is wanted</source>
        <translation>både clearance_ft og wanted_depth_ft sier hvor flua skal gå</translation>
    </message>
    <message>
        <source>this spool has neither gr_per_ft nor diameter_in</source>
        <translation>denne spolen har verken gr_per_ft eller diameter_in</translation>
    </message>
    <message>
        <source>give one of the two</source>
        <translation>oppgi én av de to</translation>
    </message>
    <message>
        <source>diameter_in alone does not say what the line weighs</source>
        <translation>diameter_in alene sier ikke hva lina veier</translation>
    </message>
    <message>
        <source>add material or gr_per_ft</source>
        <translation>legg til material eller gr_per_ft</translation>
    </message>
    <message>
        <source>this spool does not say what its line does in water</source>
        <translation>denne spolen sier ikke hva lina gjør i vann</translation>
    </message>
    <message>
        <source>add material, floats or sink_in_per_s</source>
        <translation>legg til material, floats eller sink_in_per_s</translation>
    </message>
    <message>
        <source>the name of the rig file is empty</source>
        <translation>navnet på oppsettfilen er tomt</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on, with / between folders, or put the rig here</source>
        <translation>navngi en oppsettfil fra mappen til kortstokken, med / mellom mapper, eller sett oppsettet her</translation>
    </message>
    <message>
        <source>%1 are too many for a card</source>
        <translation>%1 er for mange for et kort</translation>
    </message>
    <message>
        <source>give up to %1</source>
        <translation>oppgi opptil %1</translation>
    </message>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>over %1 til %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 til %2 %3</translation>
    </message>
    <message>
        <source>%1 %2 is outside its limits</source>
        <translation>%1 %2 er utenfor grensene</translation>
    </message>
    <message>
        <source>not saved: %1</source>
        <translation>ikke lagret: %1</translation>
    </message>
    <message>
        <source>the file that is there is kept as it was; make room, or save elsewhere</source>
        <translation>filen som er der, er beholdt som den var; gjør plass, eller lagre et annet sted</translation>
    </message>
    <message>
        <source>nothing was written; make room, or save elsewhere</source>
        <translation>ingenting ble skrevet; gjør plass, eller lagre et annet sted</translation>
    </message>
    <message>
        <source>another program has changed this file since it was opened</source>
        <translation>et annet program har endret denne filen siden den ble åpnet</translation>
    </message>
    <message>
        <source>save again to put yours in its place, or save elsewhere</source>
        <translation>lagre igjen for å sette din i stedet, eller lagre et annet sted</translation>
    </message>
    <message>
        <source>nothing on the line sinks by a rate</source>
        <translation>ingenting på lina synker med en oppgitt fart</translation>
    </message>
    <message>
        <source>length</source>
        <translation>lengde</translation>
    </message>
    <message>
        <source>grains per foot</source>
        <translation>grain per fot</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diameter</translation>
    </message>
    <message>
        <source>sink rate</source>
        <translation>synkehastighet</translation>
    </message>
    <message>
        <source>uncertainty of the sink rate</source>
        <translation>usikkerhet i synkehastigheten</translation>
    </message>
    <message>
        <source>density</source>
        <translation>tetthet</translation>
    </message>
    <message>
        <source>label mass</source>
        <translation>merket masse</translation>
    </message>
    <message>
        <source>weighed mass</source>
        <translation>veid masse</translation>
    </message>
    <message>
        <source>loop mass</source>
        <translation>løkkemasse</translation>
    </message>
    <message>
        <source>fly mass</source>
        <translation>fluemasse</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>motstandsflate</translation>
    </message>
    <message>
        <source>rod length</source>
        <translation>stanglengde</translation>
    </message>
    <message>
        <source>line number</source>
        <translation>lineklasse</translation>
    </message>
    <message>
        <source>number of hands</source>
        <translation>antall hender</translation>
    </message>
    <message>
        <source>grain window</source>
        <translation>grainvindu</translation>
    </message>
    <message>
        <source>surface speed</source>
        <translation>strøm i overflaten</translation>
    </message>
    <message>
        <source>uncertainty of the speed</source>
        <translation>usikkerhet i strømmen</translation>
    </message>
    <message>
        <source>depth of the fly</source>
        <translation>dybden på flua</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>dybde</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatur</translation>
    </message>
    <message>
        <source>salinity</source>
        <translation>saltinnhold</translation>
    </message>
    <message>
        <source>line speed</source>
        <translation>linehastighet</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>bukt</translation>
    </message>
    <message>
        <source>launch angle</source>
        <translation>utgangsvinkel</translation>
    </message>
    <message>
        <source>rod tip height</source>
        <translation>stangtuppens høyde</translation>
    </message>
    <message>
        <source>overhang</source>
        <translation>overheng</translation>
    </message>
    <message>
        <source>line out</source>
        <translation>line ute</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>vinkel</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>mending</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>avstand fra bunnen</translation>
    </message>
    <message>
        <source>wanted depth</source>
        <translation>ønsket dybde</translation>
    </message>
    <message>
        <source>feet left</source>
        <translation>gjenværende lengde</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>et oppsett</translation>
    </message>
    <message>
        <source>a shelf</source>
        <translation>en hylle</translation>
    </message>
    <message>
        <source>a list of pools</source>
        <translation>en liste over høler</translation>
    </message>
    <message>
        <source>a list of spools</source>
        <translation>en liste over spoler</translation>
    </message>
    <message>
        <source>a deck</source>
        <translation>en kortstokk</translation>
    </message>
    <message>
        <source>deg</source>
        <translation>grader</translation>
    </message>
    <message>
        <source>times</source>
        <translation>ganger</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>linje %1</translation>
    </message>
    <message>
        <source>altitude of the air</source>
        <translation>luftas høyde over havet</translation>
    </message>
    <message>
        <source>the grains that this rod is made for are not known</source>
        <translation>hvor mange grain denne stangen er laget for, er ikke kjent</translation>
    </message>
    <message>
        <source>give its line number, or the grains that its maker names</source>
        <translation>oppgi lineklassen, eller de grain som produsenten oppgir</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Actions</name>
    <message>
        <source>Menu</source>
        <translation>Meny</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Enheter</translation>
    </message>
    <message>
        <source>Open recent</source>
        <translation>Åpne nylige</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fil</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Rediger</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Vis</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Sammenlign</translation>
    </message>
    <message>
        <source>C&amp;linic</source>
        <translation>&amp;Kurs</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hjelp</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hjelp</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Om Grainwise</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Avslutt</translation>
    </message>
    <message>
        <source>New, empty line</source>
        <translation>Ny, tom line</translation>
    </message>
    <message>
        <source>Start from a rod…</source>
        <translation>Start fra en stang…</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Åpne…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Lagre</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Lagre som…</translation>
    </message>
    <message>
        <source>Handout on paper…</source>
        <translation>Utdelingsark på papir…</translation>
    </message>
    <message>
        <source>Handout as PDF or picture…</source>
        <translation>Utdelingsark som PDF eller bilde…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Gjør om</translation>
    </message>
    <message>
        <source>Edit the part</source>
        <translation>Rediger delen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Move towards the rod</source>
        <translation>Flytt mot stanga</translation>
    </message>
    <message>
        <source>Alt+Left</source>
        <translation>Alt+Venstre</translation>
    </message>
    <message>
        <source>Move towards the fly</source>
        <translation>Flytt mot flua</translation>
    </message>
    <message>
        <source>Alt+Right</source>
        <translation>Alt+Høyre</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Dupliser</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Delete</translation>
    </message>
    <message>
        <source>Name and notes…</source>
        <translation>Navn og notater…</translation>
    </message>
    <message>
        <source>Rod…</source>
        <translation>Stang…</translation>
    </message>
    <message>
        <source>Water…</source>
        <translation>Vann…</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Hylle</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Vei inn</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Tiltak</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Tupper</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Høler</translation>
    </message>
    <message>
        <source>Pack a wallet…</source>
        <translation>Pakk en mappe…</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Kast</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Elv</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Dybder i alle høler</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lys</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Mørk</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sollys</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Projektor</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation>Større skrift</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation>Mindre skrift</translation>
    </message>
    <message>
        <source>Reduce motion</source>
        <translation>Mindre bevegelse</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Språk</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Som systemet</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Bytt om A og B</translation>
    </message>
    <message>
        <source>Copy this rig to the other</source>
        <translation>Kopier dette oppsettet til det andre</translation>
    </message>
    <message>
        <source>Fly to fly, or rear to rear</source>
        <translation>Flue mot flue, eller bakende mot bakende</translation>
    </message>
    <message>
        <source>One water, or each its own</source>
        <translation>Ett vann, eller hvert sitt</translation>
    </message>
    <message>
        <source>Card from this picture</source>
        <translation>Kort av dette bildet</translation>
    </message>
    <message>
        <source>Show the deck</source>
        <translation>Vis kortstokken</translation>
    </message>
    <message>
        <source>Show from the chosen card</source>
        <translation>Vis fra det valgte kortet</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Fot og tommer</translation>
    </message>
    <message>
        <source>Metres and millimetres</source>
        <translation>Meter og millimeter</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Grain</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gram</translation>
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
        <translation>Fire kort per side på papir…</translation>
    </message>
    <message>
        <source>Pictures and tables</source>
        <translation>Bilder og tabeller</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Kopier bilde</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Kopier tabell</translation>
    </message>
    <message>
        <source>What is this? (where the keyboard is)</source>
        <translation>Hva er dette? (der tastaturet er)</translation>
    </message>
    <message>
        <source>What is this? (point at it)</source>
        <translation>Hva er dette? (pek på det)</translation>
    </message>
    <message>
        <source>Sample decks and rigs</source>
        <translation>Eksempler: kortstokker og oppsett</translation>
    </message>
    <message>
        <source>Settings…</source>
        <translation>Innstillinger…</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Autosave</name>
    <message>
        <source>the folder %1 could not be made</source>
        <translation>mappen %1 kunne ikke opprettes</translation>
    </message>
    <message>
        <source>nothing can be written in %1</source>
        <translation>ingenting kan skrives i %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BedChoice</name>
    <message>
        <source>The rougher the bed, the slower the water near it.</source>
        <translation>Jo ruere bunn, jo langsommere vann nær den.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BenchFace</name>
    <message>
        <source>Shelf</source>
        <translation>Hylle</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Kast</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Elv</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Dybder i alle høler</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Hvorfor</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Stang</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Vann</translation>
    </message>
    <message>
        <source>Name and notes</source>
        <translation>Navn og notater</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Problemer</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Tupper</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Tiltak</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Høler</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Hvorfor: %1</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Vei inn</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Lina</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Skjøter</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Hva hver fot veier</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Avlesninger</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BenchPage</name>
    <message>
        <source>A welded loop takes</source>
        <translation>En sveiset løkke tar</translation>
    </message>
    <message>
        <source>A sleeved loop takes</source>
        <translation>En løkke i hylse tar</translation>
    </message>
    <message>
        <source>A tied loop takes</source>
        <translation>En knyttet løkke tar</translation>
    </message>
    <message>
        <source>A splice takes, each side</source>
        <translation>En spleis tar, hver side</translation>
    </message>
    <message>
        <source>A knot takes, each side</source>
        <translation>En knute tar, hver side</translation>
    </message>
    <message>
        <source>The knot at the fly takes</source>
        <translation>Knuten ved flua tar</translation>
    </message>
    <message>
        <source>The line that loops, splices and knots take over the finished length, for cut sheets, divided spools and leaders.</source>
        <translation>Lina som løkker, spleiser og knuter tar ut over ferdig lengde, for kappelister, delte spoler og fortommer.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Sett denne siden tilbake til vanlig</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Løkker på tupper</translation>
    </message>
    <message>
        <source>no loops</source>
        <translation>ingen løkker</translation>
    </message>
    <message>
        <source>welded loops</source>
        <translation>sveiste løkker</translation>
    </message>
    <message>
        <source>sleeved loops</source>
        <translation>løkker i hylse</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>knyttede løkker</translation>
    </message>
    <message>
        <source>usual: %1, common practice</source>
        <translation>vanlig: %1, vanlig praksis</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Block</name>
    <message>
        <source>Opens the part for editing</source>
        <translation>Åpner delen for redigering</translation>
    </message>
    <message>
        <source>Moves the part towards the fly</source>
        <translation>Flytter delen mot flua</translation>
    </message>
    <message>
        <source>Moves the part towards the rod</source>
        <translation>Flytter delen mot stanga</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardForm</name>
    <message>
        <source>none</source>
        <translation>ingen</translation>
    </message>
    <message>
        <source>%1 (in the deck)</source>
        <translation>%1 (i kortstokken)</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>oppsett uten navn</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Lina</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Hva hver fot veier</translation>
    </message>
    <message>
        <source>The cast</source>
        <translation>Kastet</translation>
    </message>
    <message>
        <source>The river</source>
        <translation>Elva</translation>
    </message>
    <message>
        <source>Two rigs compared</source>
        <translation>To oppsett sammenlignet</translation>
    </message>
    <message>
        <source>Words alone</source>
        <translation>Bare ord</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Tittel</translation>
    </message>
    <message>
        <source>The one line</source>
        <translation>Den ene linja</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Spørsmål</translation>
    </message>
    <message>
        <source>Answer, on the next press</source>
        <translation>Svar, ved neste trykk</translation>
    </message>
    <message>
        <source>Notes, for your screen only</source>
        <translation>Notater, bare for din egen skjerm</translation>
    </message>
    <message>
        <source>What the card shows</source>
        <translation>Hva kortet viser</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Oppsett</translation>
    </message>
    <message>
        <source>Rig B</source>
        <translation>Oppsett B</translation>
    </message>
    <message>
        <source>Change title</source>
        <translation>Endre tittel</translation>
    </message>
    <message>
        <source>Change line</source>
        <translation>Endre linje</translation>
    </message>
    <message>
        <source>Change question</source>
        <translation>Endre spørsmål</translation>
    </message>
    <message>
        <source>Change answer</source>
        <translation>Endre svar</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Endre notater</translation>
    </message>
    <message>
        <source>Change picture</source>
        <translation>Endre bilde</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Benk</translation>
    </message>
    <message>
        <source>File…</source>
        <translation>Fil…</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ingen</translation>
    </message>
    <message>
        <source>Take the bench&apos;s rig</source>
        <translation>Ta oppsettet på benken</translation>
    </message>
    <message>
        <source>Name a rig file</source>
        <translation>Nevn en oppsettfil</translation>
    </message>
    <message>
        <source>Take the rig out</source>
        <translation>Ta oppsettet ut</translation>
    </message>
    <message>
        <source>Flies side by side</source>
        <translation>Fluer side om side</translation>
    </message>
    <message>
        <source>One rig in several pools</source>
        <translation>Ett oppsett i flere høler</translation>
    </message>
    <message>
        <source>Several tips on one rig</source>
        <translation>Flere tupper på ett oppsett</translation>
    </message>
    <message>
        <source>Figures: where the rigs differ</source>
        <translation>Tall: der oppsettene er ulike</translation>
    </message>
    <message>
        <source>No figures</source>
        <translation>Ingen tall</translation>
    </message>
    <message>
        <source>The wet fly&apos;s weight</source>
        <translation>Vekten av den våte fluen</translation>
    </message>
    <message>
        <source>The heaviest foot</source>
        <translation>Den tyngste foten</translation>
    </message>
    <message>
        <source>The worst joint</source>
        <translation>Den verste skjøten</translation>
    </message>
    <message>
        <source>Tip share of the head</source>
        <translation>Tuppandel av klumpen</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Flue mot tupp</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Klump på stang</translation>
    </message>
    <message>
        <source>Rods of line</source>
        <translation>Line i stanglengder</translation>
    </message>
    <message>
        <source>Range of the depth</source>
        <translation>Spennet i dybden</translation>
    </message>
    <message>
        <source>Depth when the line comes tight</source>
        <translation>Dybde når linen strammes</translation>
    </message>
    <message>
        <source>Greatest depth of the swing</source>
        <translation>Største dybde i svinget</translation>
    </message>
    <message>
        <source>Depth on the way across</source>
        <translation>Dybde på vei over</translation>
    </message>
    <message>
        <source>Line under water</source>
        <translation>Line under vann</translation>
    </message>
    <message>
        <source>Figures with the answer</source>
        <translation>Tall med svaret</translation>
    </message>
    <message>
        <source>Flies or tips</source>
        <translation>Fluer eller tupper</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Høler</translation>
    </message>
    <message>
        <source>Change figures</source>
        <translation>Endre tall</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, where it comes from</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Add the fly or the tip that is on the bench</source>
        <translation>Legg til fluen eller tuppen som er på benken</translation>
    </message>
    <message>
        <source>Take the pools of the bench</source>
        <translation>Ta hølene fra benken</translation>
    </message>
    <message>
        <source>Add the bench&apos;s part</source>
        <translation>Legg til delen fra benken</translation>
    </message>
    <message>
        <source>Take the parts out</source>
        <translation>Ta ut delene</translation>
    </message>
    <message>
        <source>Take the bench&apos;s pools</source>
        <translation>Ta hølene fra benken</translation>
    </message>
    <message>
        <source>Take the pools out</source>
        <translation>Ta ut hølene</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, its name</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Take the rig that is on the bench</source>
        <translation>Ta oppsettet som ligger på benken</translation>
    </message>
    <message>
        <source>Take a rig file from the deck&apos;s folder</source>
        <translation>Ta en oppsettsfil fra kortstokkens mappe</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardView</name>
    <message>
        <source>The card as the class sees it</source>
        <translation>Kortet slik klassen ser det</translation>
    </message>
    <message>
        <source>On the card</source>
        <translation>På kortet</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Hva det er</translation>
    </message>
    <message>
        <source>Weighs (%1)</source>
        <translation>Veier (%1)</translation>
    </message>
    <message>
        <source>How deep the fly is</source>
        <translation>Hvor dypt flua er</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Tittel</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Line</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Spørsmål</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Svar</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Høl</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pool, how deep</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Kort</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastFeed</name>
    <message>
        <source>The figures of this rig are too far out to follow its loop</source>
        <translation>Tallene for dette oppsettet er for ville til å følge bukta</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastPanel</name>
    <message>
        <source>real time</source>
        <translation>virkelig tid</translation>
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
        <translation>Der du kaster på ordentlig: øynene dekket, kroker og kraftlinjer langt fra folk og stang.</translation>
    </message>
    <message>
        <source>A learner: 20 % less speed</source>
        <translation>En nybegynner: 20 % mindre fart</translation>
    </message>
    <message>
        <source>Line speed</source>
        <translation>Linehastighet</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Bukt</translation>
    </message>
    <message>
        <source>Upwards</source>
        <translation>Oppover</translation>
    </message>
    <message>
        <source>Rod tip</source>
        <translation>Stangtupp</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Utgangsvinkel</translation>
    </message>
    <message>
        <source>The fly never comes round: the loop dies on the way.</source>
        <translation>Flua kommer aldri rundt: bukta dør ut på veien.</translation>
    </message>
    <message>
        <source>The line is on the water before it is out: more line speed, or aim higher.</source>
        <translation>Snøret ligger på vannet før det er rettet ut: mer linehastighet, eller sikt høyere.</translation>
    </message>
    <message>
        <source>Turns over after %1 s, %2 above the water.</source>
        <translation>Ruller ut etter %1 s, %2 over vannet.</translation>
    </message>
    <message>
        <source>Usual cast and air</source>
        <translation>Vanlig kast og luft</translation>
    </message>
    <message>
        <source>Usual cast</source>
        <translation>Vanlig kast</translation>
    </message>
    <message>
        <source>Speed, loop, angle and rod tip as usual for this head, the air of %1</source>
        <translation>Hastighet, bukt, vinkel og stangtupp som vanlig for denne klumpen, lufta på %1</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Kast</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Høyde</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastView</name>
    <message>
        <source>The cast, seen from the side</source>
        <translation>Kastet, sett fra siden</translation>
    </message>
    <message>
        <source>still moving</source>
        <translation>fortsatt i bevegelse</translation>
    </message>
    <message>
        <source>lost to the air</source>
        <translation>tapt til lufta</translation>
    </message>
    <message>
        <source>lost to the fly</source>
        <translation>tapt til flua</translation>
    </message>
    <message>
        <source>An unrolling loop of %1 seconds.</source>
        <translation>En bukt som ruller ut på %1 sekunder.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>regnes på nytt</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChoiceList</name>
    <message>
        <source>%1 (on)</source>
        <comment>a tip that is fitted</comment>
        <translation>%1 (på)</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>tip, verdict: sentence</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Grades: %1</source>
        <translation>Karakterer: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChooserPanel</name>
    <message>
        <source>Looking through the shelf: %1</source>
        <translation>Leter gjennom hylla: %1</translation>
    </message>
    <message>
        <source>Pool to choose for</source>
        <translation>Høl å velge for</translation>
    </message>
    <message>
        <source>Kind of tip</source>
        <translation>Type tupp</translation>
    </message>
    <message>
        <source>tips and coated leaders</source>
        <translation>tupper og belagte fortommer</translation>
    </message>
    <message>
        <source>tips only</source>
        <translation>bare tupper</translation>
    </message>
    <message>
        <source>coated leaders only</source>
        <translation>bare belagte fortommer</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>samme kastbevegelse</translation>
    </message>
    <message>
        <source>hide refused</source>
        <translation>skjul forkastede</translation>
    </message>
    <message>
        <source>in the wallet</source>
        <translation>i mappen</translation>
    </message>
    <message>
        <source>Tips, the best first</source>
        <translation>Tupper, de beste først</translation>
    </message>
    <message>
        <source>the rig&apos;s own water, nothing wanted</source>
        <translation>oppsettets eget vann, ingenting ønsket</translation>
    </message>
    <message>
        <source>Leave the pool</source>
        <translation>Forlat hølen</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Gå til %1</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Ønsket %1.</translation>
    </message>
    <message>
        <source>Before another tip:</source>
        <translation>Før en annen tupp:</translation>
    </message>
    <message>
        <source>Put on %1</source>
        <translation>Sett på %1</translation>
    </message>
    <message>
        <source>Take the tip off</source>
        <translation>Ta av tuppen</translation>
    </message>
    <message>
        <source>Fly to choose for</source>
        <translation>Flue å velge for</translation>
    </message>
    <message>
        <source>Only tips that keep the stroke of the rig as it stands</source>
        <translation>Bare tupper som lar kastbevegelsen være som den er</translation>
    </message>
    <message>
        <source>No wallet is packed yet</source>
        <translation>Ingen mappe er pakket ennå</translation>
    </message>
    <message>
        <source>no fly yet: pick one</source>
        <translation>ingen flue ennå: velg en</translation>
    </message>
    <message>
        <source>build a fly…</source>
        <translation>bygg en flue…</translation>
    </message>
    <message>
        <source>Tie on %1</source>
        <translation>Knyt på %1</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Tupper</translation>
    </message>
    <message>
        <source>Map of the tips</source>
        <translation>Kart over tuppene</translation>
    </message>
    <message>
        <source>Limits: common practice; turnover, depth and grades ours.</source>
        <translation>Grenser: vanlig praksis; utrulling, dybde og karakterer er våre.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ClinicFace</name>
    <message>
        <source>Decks (*.deck.json);;All files (*)</source>
        <translation>Kortstokker (*.deck.json);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ulagrede endringer</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>Lagre endringene i &quot;%1&quot; først?</translation>
    </message>
    <message>
        <source>Open a deck</source>
        <translation>Åpne en kortstokk</translation>
    </message>
    <message>
        <source>Save the deck</source>
        <translation>Lagre kortstokken</translation>
    </message>
    <message>
        <source>A rig in the deck&apos;s folder</source>
        <translation>Et oppsett i mappen til kortstokken</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json)</source>
        <translation>Oppsett (*.rig.json)</translation>
    </message>
    <message>
        <source>Title of the deck</source>
        <translation>Tittel på kortstokken</translation>
    </message>
    <message>
        <source>Cards of the deck</source>
        <translation>Kortene i kortstokken</translation>
    </message>
    <message>
        <source>With its answer</source>
        <translation>Med svaret</translation>
    </message>
    <message>
        <source>Screen for the class</source>
        <translation>Skjerm for klassen</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Ny</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Åpne…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Lagre</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Skriv ut</translation>
    </message>
    <message>
        <source>Card from the bench</source>
        <translation>Kort fra benken</translation>
    </message>
    <message>
        <source>Blank card</source>
        <translation>Blankt kort</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Opp</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ned</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Slett</translation>
    </message>
    <message>
        <source>Show (F5)</source>
        <translation>Vis (F5)</translation>
    </message>
    <message>
        <source>From this card (Shift+F5)</source>
        <translation>Fra dette kortet (Shift+F5)</translation>
    </message>
    <message>
        <source>Duplicate card</source>
        <translation>Dupliser kort</translation>
    </message>
    <message>
        <source>Delete card</source>
        <translation>Slett kort</translation>
    </message>
    <message>
        <source>Move card</source>
        <translation>Flytt kort</translation>
    </message>
    <message>
        <source>Add card</source>
        <translation>Legg til kort</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>no title yet</source>
        <translation>ingen tittel ennå</translation>
    </message>
    <message>
        <source>Card %1: %2</source>
        <translation>Kort %1: %2</translation>
    </message>
    <message>
        <source>Save the deck first: rig files are named from its folder on.</source>
        <translation>Lagre kortstokken først: oppsettfiler navngis fra mappen dens.</translation>
    </message>
    <message>
        <source>%1 lies outside the deck&apos;s folder: copy it there, or take it from the bench into the deck.</source>
        <translation>%1 ligger utenfor mappen til kortstokken: kopier det dit, eller ta det fra benken inn i kortstokken.</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 ble ikke åpnet</translation>
    </message>
    <message>
        <source>%1, %2 × %3</source>
        <translation>%1, %2 × %3</translation>
    </message>
    <message>
        <source>A deck is being shown</source>
        <translation>En kortstokk vises</translation>
    </message>
    <message>
        <source>A card a page, with its answer and the notes…</source>
        <translation>Ett kort per side, med svaret og notatene…</translation>
    </message>
    <message>
        <source>Four cards a page, with lines to write on…</source>
        <translation>Fire kort per side, med linjer å skrive på…</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Dupliser</translation>
    </message>
    <message>
        <source>No card yet. Make one of the rig on the bench, or begin with a blank one.

Lessons to look at: Menu, Help, Sample decks and rigs.</source>
        <translation>Ingen kort ennå. Lag et av oppsettet på benken, eller begynn med et tomt.

Ferdige kortstokker: Meny, Hjelp, Eksempler.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>Kortstokken har ingen kort ennå.</translation>
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
        <translation>Hva hver fot av A og av B veier</translation>
    </message>
    <message>
        <source>Left and Right move the cursor by half a foot, with Shift by a tenth</source>
        <translation>Venstre og Høyre flytter markøren en halv fot, med Shift en tidel</translation>
    </message>
    <message>
        <source>%1 %2 to the fly</source>
        <translation>%1 %2 til flua</translation>
    </message>
    <message>
        <source>both alike</source>
        <translation>begge like</translation>
    </message>
    <message>
        <source>B %1 heavier</source>
        <translation>B %1 tyngre</translation>
    </message>
    <message>
        <source>B %1 lighter</source>
        <translation>B %1 lettere</translation>
    </message>
    <message>
        <source>%1: A %2, B %3 %4, %5</source>
        <translation>%1: A %2, B %3 %4, %5</translation>
    </message>
    <message>
        <source>%1: no line of either here</source>
        <translation>%1: ingen av dem har snøre her</translation>
    </message>
    <message>
        <source>%1: B %2 %3, A has no line here</source>
        <translation>%1: B %2 %3, A har ikke snøre her</translation>
    </message>
    <message>
        <source>%1: A %2 %3, B has no line here</source>
        <translation>%1: A %2 %3, B har ikke snøre her</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareFace</name>
    <message>
        <source>Copy %1 to %2</source>
        <translation>Kopier %1 til %2</translation>
    </message>
    <message>
        <source>Take the water of %1</source>
        <translation>Ta vannet til %1</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Forskjeller</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Kast</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Elv</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Problemer</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Bytt om A og B</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A (X)</source>
        <translation>A blir B og B blir A (X)</translation>
    </message>
    <message>
        <source>Fly to fly</source>
        <translation>Flue mot flue</translation>
    </message>
    <message>
        <source>Lay the flies under each other instead of the rears of the heads</source>
        <translation>Legg fluene under hverandre i stedet for bakendene av klumpene</translation>
    </message>
    <message>
        <source>One water</source>
        <translation>Ett vann</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other</source>
        <translation>Begge fisker samme vann: en endring for den ene gjelder også den andre</translation>
    </message>
    <message>
        <source>Shelf, for %1</source>
        <translation>Hylle, for %1</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>Del av %1</translation>
    </message>
    <message>
        <source>Rod of %1</source>
        <translation>Stang for %1</translation>
    </message>
    <message>
        <source>Water of %1</source>
        <translation>Vann for %1</translation>
    </message>
    <message>
        <source>Name and notes of %1</source>
        <translation>Navn og notater for %1</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Prøv %1</translation>
    </message>
    <message>
        <source>What if %1 had this? Enter keeps it, Escape does not.</source>
        <translation>Hva om %1 hadde dette? Enter beholder det, Esc ikke.</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Oppsett</translation>
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
        <translation>Tid (s)</translation>
    </message>
    <message>
        <source>Fly away from the rod (%1)</source>
        <translation>Flua fra stanga (%1)</translation>
    </message>
    <message>
        <source>Fly above the water (%1)</source>
        <translation>Flua over vannet (%1)</translation>
    </message>
    <message>
        <source>The line of A</source>
        <translation>Lina til A</translation>
    </message>
    <message>
        <source>The line of B</source>
        <translation>Lina til B</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Skjøter</translation>
    </message>
    <message>
        <source>What each foot weighs, of A and of B</source>
        <translation>Hva hver fot veier, for A og for B</translation>
    </message>
    <message>
        <source>Readings of A and B</source>
        <translation>Avlesninger av A og B</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareHost</name>
    <message>
        <source>Compare</source>
        <translation>Sammenlign</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 ble ikke åpnet</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 ble ikke lagret</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ControlHelp</name>
    <message>
        <source>Opens the menu: every action of the program, each with its key.</source>
        <translation>Åpner menyen: alle handlinger i programmet, hver med sin tast.</translation>
    </message>
    <message>
        <source>The name of the rig. Press it to change the name and the notes.</source>
        <translation>Navnet på oppsettet. Trykk for å endre navn og notater.</translation>
    </message>
    <message>
        <source>The rod that the head is judged for: its length, line number and windows. Press it to change them.</source>
        <translation>Stanga som klumpen vurderes for: lengde, linenummer og vinduer. Trykk for å endre dem.</translation>
    </message>
    <message>
        <source>The water that the rig fishes; the depth follows from it. Press it to change depth, current or temperature.</source>
        <translation>Vannet oppsettet fisker i; dybden følger av det. Trykk for å endre dybde, strøm eller temperatur.</translation>
    </message>
    <message>
        <source>Chooses the units that are shown: feet or metres, grains or grams, Fahrenheit or Celsius. Files keep their own.</source>
        <translation>Velger enhetene som vises: fot eller meter, grain eller gram, fahrenheit eller celsius. Filer beholder sine egne.</translation>
    </message>
    <message>
        <source>Takes the last step back. Nothing is asked for before a change, since each can be undone.</source>
        <translation>Tar det siste steget tilbake. Ingen spørsmål før en endring, for alle kan angres.</translation>
    </message>
    <message>
        <source>Does again what was taken back last.</source>
        <translation>Gjør om igjen det som sist ble tatt tilbake.</translation>
    </message>
    <message>
        <source>Makes all type smaller, down to the size it began with.</source>
        <translation>Gjør all skrift mindre, ned til størrelsen den startet med.</translation>
    </message>
    <message>
        <source>Makes all type larger, up to twice the size; diagrams follow.</source>
        <translation>Gjør all skrift større, opptil det dobbelte; diagrammene følger med.</translation>
    </message>
    <message>
        <source>The Bench: one rig, what each foot of it weighs, and its readings.</source>
        <translation>Benken: ett oppsett, hva hver fot veier, og avlesningene.</translation>
    </message>
    <message>
        <source>Compare: two rigs on one ruler, and what each difference does.</source>
        <translation>Sammenlign: to oppsett på én linjal, og hva hver forskjell gjør.</translation>
    </message>
    <message>
        <source>Clinic: a deck of cards to teach with, shown over a whole screen.</source>
        <translation>Kurs: en kortstokk å undervise med, vist over hele skjermen.</translation>
    </message>
    <message>
        <source>The line laid out true to scale, rod left, fly right. A block&apos;s height is what a foot of it weighs. Drag parts here, or choose one on the Shelf and press Enter.</source>
        <translation>Lina i målestokk, stang til venstre, flue til høyre. Høyden på en blokk er hva en fot av den veier. Dra deler hit, eller velg en på hylla og trykk Enter.</translation>
    </message>
    <message>
        <source>A part of the line. Enter edits it, Alt+Left and Alt+Right move it, Delete removes it, Ctrl+D doubles it; the menu key lists all of that.</source>
        <translation>En del av lina. Enter redigerer den, Alt+Venstre og Alt+Høyre flytter den, Delete fjerner den, Ctrl+D dupliserer den; menytasten viser alt dette.</translation>
    </message>
    <message>
        <source>A joint: what the three feet before it and the three feet behind it weigh, and what that does. Press it to read why.</source>
        <translation>En skjøt: hva de tre fotene foran og de tre bak veier, og hva det gjør. Trykk for å lese hvorfor.</translation>
    </message>
    <message>
        <source>The last six feet, larger, so that leader, tippet and fly can be taken hold of.</source>
        <translation>De siste seks fotene, større, så fortom, fortomsspiss og flue kan gripes.</translation>
    </message>
    <message>
        <source>Proposes a head for the rod, from its windows, as a place to begin.</source>
        <translation>Foreslår en klump til stanga, ut fra vinduene, som et sted å begynne.</translation>
    </message>
    <message>
        <source>What each foot weighs, exactly under that foot of the line. Left and Right move the cursor by half a foot, with Shift by a tenth.</source>
        <translation>Hva hver fot veier, rett under den foten av lina. Venstre og Høyre flytter markøren en halv fot, med Shift en tidel.</translation>
    </message>
    <message>
        <source>A reading: its figure, the two figures it came from, and its verdict. Press it to read why, with the formula and the limits.</source>
        <translation>En avlesning: tallet, de to tallene det kommer av, og dommen. Trykk for å lese hvorfor, med formel og grenser.</translation>
    </message>
    <message>
        <source>Whether the tip carries the fly and the loop has speed to spare. Press it to read why; the chart then draws what the loop needs.</source>
        <translation>Om tuppen bærer flua og bukta har fart å gi. Trykk for å lese hvorfor; diagrammet tegner da hva bukta trenger.</translation>
    </message>
    <message>
        <source>The Shelf: parts to put on the line.</source>
        <translation>Hylla: deler til lina.</translation>
    </message>
    <message>
        <source>Everything about the part that is chosen on the line, to be changed here.</source>
        <translation>Alt om delen som er valgt på lina, å endre her.</translation>
    </message>
    <message>
        <source>The unrolling loop of this rig, played, with the sliders of the cast.</source>
        <translation>Bukta til dette oppsettet som ruller ut, avspilt, med kastets glidebrytere.</translation>
    </message>
    <message>
        <source>The swing of this rig through its water, played, with angle, mend and line out.</source>
        <translation>Svingen til dette oppsettet gjennom vannet, avspilt, med vinkel, mending og line ute.</translation>
    </message>
    <message>
        <source>Every tip for this fly, head and pool, the best first, and why the others are refused.</source>
        <translation>Hver tupp for denne flua, klumpen og hølen, den beste først, og hvorfor de andre avvises.</translation>
    </message>
    <message>
        <source>What is wrong with this rig, and the single changes that mend it.</source>
        <translation>Hva som er galt med dette oppsettet, og enkeltendringene som retter det.</translation>
    </message>
    <message>
        <source>Tasks at the bench: cutting, spools, weighing, leaders, flies, tips, measuring, own parts.</source>
        <translation>Oppgaver på benken: kapping, spoler, veiing, fortommer, fluer, tupper, måling, egne deler.</translation>
    </message>
    <message>
        <source>The pools of your river: their water and where the fly is wanted there.</source>
        <translation>Hølene i elva di: vannet, og hvor flua skal være der.</translation>
    </message>
    <message>
        <source>A page of the drawer. Press it to open it; another page takes its place.</source>
        <translation>En side i skuffen. Trykk for å åpne den; en annen tar plassen.</translation>
    </message>
    <message>
        <source>Type any words of a part: 10 ft 11 gr/ft. Down goes on to the parts, Enter there places one.</source>
        <translation>Skriv hva som helst om en del: 10 ft 11 gr/ft. Ned går til delene, Enter der legger en på.</translation>
    </message>
    <message>
        <source>The groups of the Shelf. A search looks through all of them.</source>
        <translation>Gruppene på hylla. Et søk går gjennom alle.</translation>
    </message>
    <message>
        <source>Parts to put on the line: drag one up, or choose it and press Enter. It goes where its kind belongs.</source>
        <translation>Deler til lina: dra en opp, eller velg den og trykk Enter. Den går dit slaget hører hjemme.</translation>
    </message>
    <message>
        <source>Plays it, or stops it where it is.</source>
        <translation>Spiller av, eller stopper der den er.</translation>
    </message>
    <message>
        <source>The moment that is shown. Left and Right move it.</source>
        <translation>Øyeblikket som vises. Venstre og Høyre flytter det.</translation>
    </message>
    <message>
        <source>How fast it is played against real time.</source>
        <translation>Hvor fort den spilles mot virkelig tid.</translation>
    </message>
    <message>
        <source>The loop true to scale, rod left, and under it where the energy is. A model, not a filmed cast.</source>
        <translation>Bukta i målestokk, stang til venstre, og under den hvor energien er. En modell, ikke et filmet kast.</translation>
    </message>
    <message>
        <source>The swing from the side, true to scale, and from above: the track is darker and wider the deeper the fly is.</source>
        <translation>Svingen fra siden, i målestokk, og ovenfra: sporet er mørkere og bredere jo dypere flua er.</translation>
    </message>
    <message>
        <source>Sets the sliders to the slower, wider loop of somebody who learns.</source>
        <translation>Setter glidebryterne til den langsommere, videre bukta til en som lærer.</translation>
    </message>
    <message>
        <source>How fast the line leaves the rod tip.</source>
        <translation>Hvor fort lina forlater stangtuppen.</translation>
    </message>
    <message>
        <source>The height of the loop from leg to leg. A narrow one loses less to the air.</source>
        <translation>Høyden på bukta fra bein til bein. En smal taper mindre til lufta.</translation>
    </message>
    <message>
        <source>How steeply the cast is aimed: up is above level.</source>
        <translation>Hvor bratt kastet siktes: opp er over vannrett.</translation>
    </message>
    <message>
        <source>How high the rod tip is above the water when the loop leaves it.</source>
        <translation>Hvor høyt stangtuppen er over vannet når bukta forlater den.</translation>
    </message>
    <message>
        <source>How high the river lies: thin air takes less from the loop.</source>
        <translation>Hvor høyt elva ligger: tynn luft tar mindre av bukta.</translation>
    </message>
    <message>
        <source>How long slack lets the line sink before it comes tight.</source>
        <translation>Hvor lenge slakk lar lina synke før den strammes.</translation>
    </message>
    <message>
        <source>How much line is out from the rod tip to the fly.</source>
        <translation>Hvor mye line som er ute fra stangtuppen til flua.</translation>
    </message>
    <message>
        <source>A table of how deep this rig fishes in every pool, at low, usual and high current.</source>
        <translation>En tabell over hvor dypt oppsettet fisker i hver høl, ved svak, vanlig og sterk strøm.</translation>
    </message>
    <message>
        <source>The pool that the tips are judged for: where the fly is wanted decides.</source>
        <translation>Hølen som tuppene vurderes for: hvor flua skal være, avgjør.</translation>
    </message>
    <message>
        <source>Lists all, only tips, or only coated leaders.</source>
        <translation>Viser alle, bare tupper eller bare belagte fortommer.</translation>
    </message>
    <message>
        <source>Leaves only tips with which the casting stroke stays the same: within a foot and 8 % of mass.</source>
        <translation>Viser bare tupper der kastbevegelsen blir den samme: innenfor en fot og 8 % av massen.</translation>
    </message>
    <message>
        <source>Leaves out the tips that are refused.</source>
        <translation>Utelater tuppene som avvises.</translation>
    </message>
    <message>
        <source>Leaves only what is in the packed wallet.</source>
        <translation>Viser bare det som er i den pakkede mappa.</translation>
    </message>
    <message>
        <source>Tips, the best first, with the reason. To choose one shows it on the line; Enter puts it on.</source>
        <translation>Tupper, den beste først, med grunnen. Å velge en viser den på lina; Enter setter den på.</translation>
    </message>
    <message>
        <source>Each tip as a dot: deeper is lower, to the right it carries the fly better. The band is the wanted water. A click chooses a tip.</source>
        <translation>Hver tupp som en prikk: dypere er lavere, til høyre bærer den flua bedre. Båndet er det ønskede vannet. Et klikk velger en.</translation>
    </message>
    <message>
        <source>A tip of the same family: press it to put it on the line.</source>
        <translation>En tupp i samme familie: trykk for å sette den på lina.</translation>
    </message>
    <message>
        <source>Changes that can be made on the water, from the wallet. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Endringer som kan gjøres ved vannet, fra mappa. Å velge en viser den; Enter gjør den, som ett steg.</translation>
    </message>
    <message>
        <source>Changes for the bench: cutting, splicing, another head. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Endringer for benken: kapping, spleising, en annen klump. Å velge en viser den; Enter gjør den, som ett steg.</translation>
    </message>
    <message>
        <source>Your pools. The one that is chosen is changed on the right.</source>
        <translation>Hølene dine. Den som er valgt, endres til høyre.</translation>
    </message>
    <message>
        <source>Gives the rig the water of the chosen pool.</source>
        <translation>Gir oppsettet vannet i den valgte hølen.</translation>
    </message>
    <message>
        <source>A new pool, with the water of the rig to begin with.</source>
        <translation>En ny høl, med oppsettets vann til å begynne med.</translation>
    </message>
    <message>
        <source>Removes what is chosen in the list.</source>
        <translation>Fjerner det som er valgt i lista.</translation>
    </message>
    <message>
        <source>Reads a file of pools in place of these; Undo brings these back.</source>
        <translation>Leser en fil med høler i stedet for disse; Angre henter disse tilbake.</translation>
    </message>
    <message>
        <source>Writes these pools to a file of their own.</source>
        <translation>Skriver disse hølene til en egen fil.</translation>
    </message>
    <message>
        <source>What the pool is called in lists and on paper.</source>
        <translation>Hva hølen heter i lister og på papir.</translation>
    </message>
    <message>
        <source>Where the fly is wanted in this pool: anywhere, so far off the bottom, or so far below the surface.</source>
        <translation>Hvor flua skal være i denne hølen: hvor som helst, så langt over bunnen eller så langt under overflaten.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the pool.</source>
        <translation>Alt som er verdt å huske om hølen.</translation>
    </message>
    <message>
        <source>The tasks of the bench. To choose one opens its page.</source>
        <translation>Oppgavene på benken. Å velge en åpner siden.</translation>
    </message>
    <message>
        <source>Adds the tips and leaders of another rig, or parts of a shelf, to what is cut.</source>
        <translation>Legger tupper og fortommer fra et annet oppsett, eller deler fra en hylle, til det som kappes.</translation>
    </message>
    <message>
        <source>Cuts only the open rig again.</source>
        <translation>Kapper bare det åpne oppsettet igjen.</translation>
    </message>
    <message>
        <source>How much line your loops, splices and knots take; the cuts are longer by that.</source>
        <translation>Hvor mye line løkkene, spleisene og knutene dine tar; kappene blir så mye lengre.</translation>
    </message>
    <message>
        <source>Shows it as it will be on paper, and prints it from there.</source>
        <translation>Viser det slik det blir på papir, og skriver ut derfra.</translation>
    </message>
    <message>
        <source>Writes it as a PDF file.</source>
        <translation>Skriver det som en PDF-fil.</translation>
    </message>
    <message>
        <source>Takes what was cut off what is left on the spools.</source>
        <translation>Trekker det som ble kappet fra det som er igjen på spolene.</translation>
    </message>
    <message>
        <source>Each spool with its cuts and marks, measured from its free end, then the labels with their rings.</source>
        <translation>Hver spole med kapp og merker, målt fra den frie enden, så etikettene med ringene.</translation>
    </message>
    <message>
        <source>Puts loops of that kind on the tips of the line, as a proposal that can be undone.</source>
        <translation>Setter slike løkker på tuppene på lina, som et forslag som kan angres.</translation>
    </message>
    <message>
        <source>The kind of loops that your tips get.</source>
        <translation>Slaget løkker tuppene dine får.</translation>
    </message>
    <message>
        <source>How much line is used up there.</source>
        <translation>Hvor mye line som går med der.</translation>
    </message>
    <message>
        <source>The level line that is left on your spools. Name and feet are changed in the table.</source>
        <translation>Den jevne lina som er igjen på spolene dine. Navn og fot endres i tabellen.</translation>
    </message>
    <message>
        <source>Describes a new spool, before it is added.</source>
        <translation>Beskriver en ny spole, før den legges til.</translation>
    </message>
    <message>
        <source>Adds the spool that is described above.</source>
        <translation>Legger til spolen som er beskrevet over.</translation>
    </message>
    <message>
        <source>Reads them from a file.</source>
        <translation>Leser dem fra en fil.</translation>
    </message>
    <message>
        <source>Writes them to a file that can be passed on.</source>
        <translation>Skriver dem til en fil som kan gis videre.</translation>
    </message>
    <message>
        <source>What the scale says of this part. Enter goes on to the next.</source>
        <translation>Hva vekta sier om denne delen. Enter går videre til neste.</translation>
    </message>
    <message>
        <source>How finely the scale shows: the range of what a foot weighs follows from it.</source>
        <translation>Hvor fint vekta viser: spennet for hva en fot veier følger av det.</translation>
    </message>
    <message>
        <source>Keeps the number and goes on to the next part.</source>
        <translation>Beholder tallet og går videre til neste del.</translation>
    </message>
    <message>
        <source>Forgets what the scale said of this part.</source>
        <translation>Glemmer hva vekta sa om denne delen.</translation>
    </message>
    <message>
        <source>What each part was meant to weigh, what the scale said, and how far off that is.</source>
        <translation>Hva hver del skulle veie, hva vekta sa, og hvor langt unna det er.</translation>
    </message>
    <message>
        <source>Puts it on the line in the place of the one of its kind, as one step of undo.</source>
        <translation>Legger den på lina i stedet for den av samme slag, som ett steg.</translation>
    </message>
    <message>
        <source>Keeps it among your own parts; they stand on the Shelf.</source>
        <translation>Beholder den blant dine egne deler; de står på hylla.</translation>
    </message>
    <message>
        <source>What the fly is tied from: its dry and wet mass and its drag are worked out from it.</source>
        <translation>Hva flua er bundet av: tørr og våt masse og motstand regnes ut fra det.</translation>
    </message>
    <message>
        <source>What is trimmed, at which end, and by how much; below stands what that does.</source>
        <translation>Hva som trimmes, i hvilken ende og hvor mye; under står hva det gjør.</translation>
    </message>
    <message>
        <source>Trims that part on the line, as one step of undo.</source>
        <translation>Trimmer den delen på lina, som ett steg.</translation>
    </message>
    <message>
        <source>How a spool is divided into tips; below stands where to cut.</source>
        <translation>Hvordan en spole deles i tupper; under står hvor du kapper.</translation>
    </message>
    <message>
        <source>What you measured of a tip without a label; below stands what it is likely to be.</source>
        <translation>Hva du målte på en tupp uten etikett; under står hva den trolig er.</translation>
    </message>
    <message>
        <source>A piece let sink in a tub: how far it fell, in which water, and the times of each fall.</source>
        <translation>Et stykke som synker i et kar: hvor langt det falt, i hvilket vann, og tidene for hvert fall.</translation>
    </message>
    <message>
        <source>Gives the piece the rate that was timed; what was rated is kept.</source>
        <translation>Gir stykket raten som ble tatt tida på; den oppgitte beholdes.</translation>
    </message>
    <message>
        <source>Puts back what was stated before the measurement.</source>
        <translation>Setter tilbake det som var oppgitt før målingen.</translation>
    </message>
    <message>
        <source>Where and how deep the fly was really found; the current that explains it stands below.</source>
        <translation>Hvor og hvor dypt flua virkelig var; strømmen som forklarer det, står under.</translation>
    </message>
    <message>
        <source>Gives the pool the current that explains what was found.</source>
        <translation>Gir hølen strømmen som forklarer det som ble funnet.</translation>
    </message>
    <message>
        <source>Leaves only your parts with these words.</source>
        <translation>Viser bare delene dine med disse ordene.</translation>
    </message>
    <message>
        <source>Parts that you keep; they also stand on the Shelf.</source>
        <translation>Deler du beholder; de står også på hylla.</translation>
    </message>
    <message>
        <source>The part of the line that Keep it keeps.</source>
        <translation>Delen av lina som beholdes.</translation>
    </message>
    <message>
        <source>Another name for the chosen part.</source>
        <translation>Et annet navn på den valgte delen.</translation>
    </message>
    <message>
        <source>A second one like the chosen part, to be changed.</source>
        <translation>En til lik den valgte delen, til å endres.</translation>
    </message>
    <message>
        <source>A scale log or a list of tips: a line each, with tabs, commas or semicolons between. Below, say what each column is.</source>
        <translation>En veielogg eller en liste over tupper: en linje hver, med tabulator, komma eller semikolon mellom. Under sier du hva hver kolonne er.</translation>
    </message>
    <message>
        <source>What the rig is called in the window, on paper and in lists.</source>
        <translation>Hva oppsettet heter i vinduet, på papir og i lister.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the rig; it stands on the handout.</source>
        <translation>Alt som er verdt å huske om oppsettet; det står på utdelingsarket.</translation>
    </message>
    <message>
        <source>A leaf on the water gives the current: how far it went in how many seconds.</source>
        <translation>Et blad på vannet gir strømmen: hvor langt det gikk på hvor mange sekunder.</translation>
    </message>
    <message>
        <source>What the water is called.</source>
        <translation>Hva vannet heter.</translation>
    </message>
    <message>
        <source>What the part is called; without a name the window says what it is.</source>
        <translation>Hva delen heter; uten navn sier vinduet hva den er.</translation>
    </message>
    <message>
        <source>The day on which it was weighed.</source>
        <translation>Dagen den ble veid.</translation>
    </message>
    <message>
        <source>Adds a section at the fly&apos;s end of the part.</source>
        <translation>Legger til en seksjon i flueenden av delen.</translation>
    </message>
    <message>
        <source>A section of the part, from its rod end to its fly end: what is typed stays, the rest follows from it.</source>
        <translation>En seksjon av delen, fra stangenden til flueenden: det som er skrevet, står; resten følger.</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A; rigs, undo and files stay what they are.</source>
        <translation>A blir B og B blir A; oppsett, angring og filer forblir det de er.</translation>
    </message>
    <message>
        <source>Lays the flies under each other instead of the rears of the heads.</source>
        <translation>Legger fluene under hverandre i stedet for bakenden av klumpene.</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other.</source>
        <translation>Begge fisker i samme vann: en endring for den ene er en endring for den andre.</translation>
    </message>
    <message>
        <source>Makes the other rig the same as this one, as one step of the other&apos;s undo.</source>
        <translation>Gjør det andre oppsettet likt dette, som ett steg i det andres angring.</translation>
    </message>
    <message>
        <source>Opens a rig file here.</source>
        <translation>Åpner et oppsett her.</translation>
    </message>
    <message>
        <source>Saves this rig to its file.</source>
        <translation>Lagrer dette oppsettet i filen sin.</translation>
    </message>
    <message>
        <source>The readings of both rigs beside each other, with what the difference is worth.</source>
        <translation>Avlesningene av begge oppsett side om side, og hva forskjellen er verdt.</translation>
    </message>
    <message>
        <source>One difference between the rigs, and what it does by itself. Press it to choose its parts on both lines.</source>
        <translation>En forskjell mellom oppsettene, og hva den gjør alene. Trykk for å velge delene på begge linene.</translation>
    </message>
    <message>
        <source>What the deck is called, in the window and on paper.</source>
        <translation>Hva kortstokken heter, i vinduet og på papir.</translation>
    </message>
    <message>
        <source>The cards in their order. Alt+Up and Alt+Down move the chosen one.</source>
        <translation>Kortene i rekkefølge. Alt+Opp og Alt+Ned flytter det valgte.</translation>
    </message>
    <message>
        <source>The card as the class will see it.</source>
        <translation>Kortet slik klassen vil se det.</translation>
    </message>
    <message>
        <source>Shows the card with its answer, or without.</source>
        <translation>Viser kortet med svaret, eller uten.</translation>
    </message>
    <message>
        <source>An empty deck.</source>
        <translation>En tom kortstokk.</translation>
    </message>
    <message>
        <source>Opens a deck file.</source>
        <translation>Åpner en kortstokk.</translation>
    </message>
    <message>
        <source>Saves the deck to its file.</source>
        <translation>Lagrer kortstokken i filen sin.</translation>
    </message>
    <message>
        <source>A card of the rig and the picture that the bench shows.</source>
        <translation>Et kort med oppsettet og bildet som benken viser.</translation>
    </message>
    <message>
        <source>A card with nothing on it yet.</source>
        <translation>Et kort uten noe på ennå.</translation>
    </message>
    <message>
        <source>Moves the chosen card in the deck.</source>
        <translation>Flytter det valgte kortet i stokken.</translation>
    </message>
    <message>
        <source>A second card like the chosen one.</source>
        <translation>Et kort til likt det valgte.</translation>
    </message>
    <message>
        <source>Deletes the chosen card; undo brings it back.</source>
        <translation>Sletter det valgte kortet; angring henter det tilbake.</translation>
    </message>
    <message>
        <source>The screen that the class sees. Your own keeps notes, next card and clock.</source>
        <translation>Skjermen klassen ser. Din egen beholder notater, neste kort og klokke.</translation>
    </message>
    <message>
        <source>Shows the deck over a whole screen; Escape ends it.</source>
        <translation>Viser kortstokken over hele skjermen; Esc avslutter.</translation>
    </message>
    <message>
        <source>The title at the top of the card.</source>
        <translation>Tittelen øverst på kortet.</translation>
    </message>
    <message>
        <source>The one line under the title.</source>
        <translation>Den ene linjen under tittelen.</translation>
    </message>
    <message>
        <source>What the class is asked before the answer is shown.</source>
        <translation>Hva klassen spørres om før svaret vises.</translation>
    </message>
    <message>
        <source>The answer; it comes with the next press.</source>
        <translation>Svaret; det kommer med neste trykk.</translation>
    </message>
    <message>
        <source>Notes that only you see while you show.</source>
        <translation>Notater som bare du ser mens du viser.</translation>
    </message>
    <message>
        <source>The picture of the card: the line, the profile, the cast, the river, two rigs, flies, pools, tips, or words alone.</source>
        <translation>Bildet på kortet: lina, profilen, kastet, elva, to oppsett, fluer, høler, tupper eller bare ord.</translation>
    </message>
    <message>
        <source>The reading that stands large with the answer.</source>
        <translation>Avlesningen som står stort ved svaret.</translation>
    </message>
    <message>
        <source>What lies on the card, and where it is taken from.</source>
        <translation>Hva som ligger på kortet, og hvor det hentes fra.</translation>
    </message>
    <message>
        <source>The rigs of the trip with their flies; the open rig is the first.</source>
        <translation>Oppsettene på turen med fluene; det åpne er det første.</translation>
    </message>
    <message>
        <source>The pools of the trip. Those that are ticked have to be served.</source>
        <translation>Hølene på turen. De avkryssede må betjenes.</translation>
    </message>
    <message>
        <source>The most tips to carry; what then has nothing is said.</source>
        <translation>Det meste av tupper å ta med; det som da mangler, sies.</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays.</source>
        <translation>Bare tupper av én lengde, så kastbevegelsen blir den samme.</translation>
    </message>
    <message>
        <source>Tips that are kept or left out whatever is packed; Enter in the list takes that back.</source>
        <translation>Tupper som beholdes eller utelates uansett; Enter i lista tar det tilbake.</translation>
    </message>
    <message>
        <source>A tip a row, a pool and fly a column: the glyph is its verdict there, ringed where it is the one taken.</source>
        <translation>En tupp per rad, høl og flue per kolonne: tegnet er dommen der, med ring der den tas.</translation>
    </message>
    <message>
        <source>Makes the cut sheet of these tips at the bench.</source>
        <translation>Lager kappelista for disse tuppene på benken.</translation>
    </message>
    <message>
        <source>Closes this window; the wallet stays packed.</source>
        <translation>Lukker dette vinduet; mappa forblir pakket.</translation>
    </message>
    <message>
        <source>Leaves the pages that hold these words.</source>
        <translation>Viser sidene som inneholder disse ordene.</translation>
    </message>
    <message>
        <source>The pages of the help.</source>
        <translation>Sidene i hjelpen.</translation>
    </message>
    <message>
        <source>An answer to the line beside it.</source>
        <translation>Et svar på linjen ved siden av.</translation>
    </message>
    <message>
        <source>The rod: length, line number, and the window of head weights for each style. The head is judged by these.</source>
        <translation>Stanga: lengde, linenummer og vinduet for klumpvekter for hvert slag. Klumpen vurderes etter dette.</translation>
    </message>
    <message>
        <source>The water: how fast it runs on top, how deep it is, how cold and how salty. The depth of the fly follows from it.</source>
        <translation>Vannet: hvor fort det går i overflaten, hvor dypt, kaldt og salt det er. Dybden på flua følger av det.</translation>
    </message>
    <message>
        <source>The name of the rig and notes about it; both are saved with it.</source>
        <translation>Navnet på oppsettet og notater om det; begge lagres med det.</translation>
    </message>
    <message>
        <source>Why a reading says what it says: the figures it came from, the formula, the limits, and whose they are.</source>
        <translation>Hvorfor en avlesning sier det den sier: tallene, formelen, grensene og hvem sine de er.</translation>
    </message>
    <message>
        <source>How deep this rig fishes in every pool, half a foot a second slower and faster than the pool states.</source>
        <translation>Hvor dypt oppsettet fisker i hver høl, en halv fot i sekundet saktere og raskere enn oppgitt.</translation>
    </message>
    <message>
        <source>In one line, how B does against A.</source>
        <translation>På én linje, hvordan B står mot A.</translation>
    </message>
    <message>
        <source>What stands on the chosen card: its words, its picture, its rigs.</source>
        <translation>Det som står på det valgte kortet: ordene, bildet, oppsettene.</translation>
    </message>
    <message>
        <source>The Clinic: cards in order, one shown at a time.</source>
        <translation>Kurset: kort i rekkefølge, ett vist om gangen.</translation>
    </message>
    <message>
        <source>The trip goes in: rigs and pools. The fewest tips that serve them come out.</source>
        <translation>Turen går inn: oppsett og høler. De færreste tuppene som rekker, kommer ut.</translation>
    </message>
    <message>
        <source>A task at the bench; what it says follows at once from what is typed.</source>
        <translation>En oppgave på benken; det den sier, følger straks av det som skrives.</translation>
    </message>
    <message>
        <source>The help of the program; it is searched by the line at the top.</source>
        <translation>Hjelpen i programmet; linjen øverst søker i den.</translation>
    </message>
    <message>
        <source>What is wrong in the file, each with its place and what would be right.</source>
        <translation>Hva som er galt i filen, hver med sted og hva som ville vært rett.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Det er ingenting å angre.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>Det er ingenting å gjøre om.</translation>
    </message>
    <message>
        <source>Only in Compare, where two rigs are (Ctrl+2).</source>
        <translation>Bare i Sammenlign, der det er to oppsett (Ctrl+2).</translation>
    </message>
    <message>
        <source>Only in the Clinic, where the deck is (Ctrl+3).</source>
        <translation>Bare i Kurs, der kortstokken er (Ctrl+3).</translation>
    </message>
    <message>
        <source>There is nothing to play: what is missing is said in the picture.</source>
        <translation>Det er ingenting å spille av: det som mangler, står i bildet.</translation>
    </message>
    <message>
        <source>There is nothing to play yet: the runs of both rigs are not there.</source>
        <translation>Det er ingenting å spille av ennå: kjøringene for begge oppsett mangler.</translation>
    </message>
    <message>
        <source>No leader can be proposed from these.</source>
        <translation>Ingen fortom kan foreslås ut fra dette.</translation>
    </message>
    <message>
        <source>The fly is not complete yet: what lacks is said below.</source>
        <translation>Flua er ikke komplett ennå: det som mangler, står under.</translation>
    </message>
    <message>
        <source>There is no spool to remove.</source>
        <translation>Det er ingen spole å fjerne.</translation>
    </message>
    <message>
        <source>Choose one of your parts in the list first.</source>
        <translation>Velg en av delene dine i lista først.</translation>
    </message>
    <message>
        <source>The line has no part to keep.</source>
        <translation>Lina har ingen del å beholde.</translation>
    </message>
    <message>
        <source>You have kept no part yet.</source>
        <translation>Du har ikke beholdt noen del ennå.</translation>
    </message>
    <message>
        <source>No line of the list could be read as a part yet.</source>
        <translation>Ingen linje i lista kunne leses som en del ennå.</translation>
    </message>
    <message>
        <source>Say first how much is taken off.</source>
        <translation>Si først hvor mye som tas av.</translation>
    </message>
    <message>
        <source>Give at least its mass and its length.</source>
        <translation>Oppgi minst masse og lengde.</translation>
    </message>
    <message>
        <source>Without loops none is used up.</source>
        <translation>Uten løkker går det ikke med noe.</translation>
    </message>
    <message>
        <source>There is nothing of that to weigh on this part.</source>
        <translation>Det er ingenting av det å veie på denne delen.</translation>
    </message>
    <message>
        <source>Only this rig is cut already.</source>
        <translation>Bare dette oppsettet kappes allerede.</translation>
    </message>
    <message>
        <source>There is nothing to cut: no spool, or no tip of level line.</source>
        <translation>Det er ingenting å kappe: ingen spole, eller ingen tupp av jevn line.</translation>
    </message>
    <message>
        <source>Time at least one fall first.</source>
        <translation>Ta tida på minst ett fall først.</translation>
    </message>
    <message>
        <source>This piece was not timed.</source>
        <translation>Dette stykket ble det ikke tatt tida på.</translation>
    </message>
    <message>
        <source>Say first how deep the fly was found.</source>
        <translation>Si først hvor dypt flua ble funnet.</translation>
    </message>
    <message>
        <source>The current of this water was not measured.</source>
        <translation>Strømmen i dette vannet ble ikke målt.</translation>
    </message>
    <message>
        <source>Choose a pool in the list first, or add one.</source>
        <translation>Velg en høl i lista først, eller legg til en.</translation>
    </message>
    <message>
        <source>No wallet was packed yet (Ctrl+Shift+P).</source>
        <translation>Ingen mappe er pakket ennå (Ctrl+Shift+P).</translation>
    </message>
    <message>
        <source>There is no card: make one of the bench&apos;s picture, or a blank one.</source>
        <translation>Det er ikke noe kort: lag ett av benkens bilde, eller et tomt.</translation>
    </message>
    <message>
        <source>This card has no rig to change.</source>
        <translation>Dette kortet har ikke noe oppsett å endre.</translation>
    </message>
    <message>
        <source>Weigh the part first.</source>
        <translation>Vei delen først.</translation>
    </message>
    <message>
        <source>A part keeps at least one section.</source>
        <translation>En del beholder minst én seksjon.</translation>
    </message>
    <message>
        <source>No file was opened yet.</source>
        <translation>Ingen fil er åpnet ennå.</translation>
    </message>
    <message>
        <source>The cast and the air are the usual ones already.</source>
        <translation>Kastet og luften er de vanlige allerede.</translation>
    </message>
    <message>
        <source>Gives this part the loops that your bench makes, so that they are weighed with it. The label on the cut sheet counts them already.</source>
        <translation>Gir delen løkkene som lages på benken din, så de veies med. Etiketten på kappelisten regner dem allerede med.</translation>
    </message>
    <message>
        <source>From these the leader is proposed, and drawn below to scale.</source>
        <translation>Av disse foreslås fortommen, og den tegnes under i målestokk.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>Kortstokken har ingen kort ennå.</translation>
    </message>
    <message>
        <source>Where the cast lands: degrees below straight across. The steeper downstream, the sooner the line pulls the fly up.</source>
        <translation>Hvor kastet lander: grader nedstrøms fra rett over. Jo spissere nedstrøms, jo før drar lina flua opp.</translation>
    </message>
    <message>
        <source>No card stands above.</source>
        <translation>Det står ikke noe kort over.</translation>
    </message>
    <message>
        <source>No card stands below.</source>
        <translation>Det står ikke noe kort under.</translation>
    </message>
    <message>
        <source>The first card stands.</source>
        <translation>Det første kortet vises.</translation>
    </message>
    <message>
        <source>The last card stands, with its answer.</source>
        <translation>Det siste kortet vises, med svaret.</translation>
    </message>
    <message>
        <source>Choose a rig of the list first; the open one stays.</source>
        <translation>Velg et oppsett i lista først; det åpne blir stående.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first, one that is not kept yet.</source>
        <translation>Velg en tupp i tabellen først, en som ikke er beholdt ennå.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first.</source>
        <translation>Velg en tupp i tabellen først.</translation>
    </message>
    <message>
        <source>No tip is packed.</source>
        <translation>Ingen tupp er pakket.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CutDrawing</name>
    <message>
        <source>%1, %2 on the spool</source>
        <translation>%1, %2 på spolen</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 igjen</translation>
    </message>
    <message>
        <source>Short: %1</source>
        <translation>Mangler: %1</translation>
    </message>
    <message>
        <source>%1: %2 spools opened; by the lengths alone none opens fewer than %3</source>
        <translation>%1: %2 spoler åpnet; etter lengdene alene klarer ingen seg med færre enn %3</translation>
    </message>
    <message>
        <source>%1: tapered, bought whole</source>
        <translation>%1: taperet, kjøpes hel</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Kappeliste</translation>
    </message>
    <message>
        <source>Labels. Rings: a long one counts 5 grains a foot, a short one 1; behind the gap, quarters that sink.</source>
        <translation>Merkelapper. Ringer: en lang teller 5 grain per fot, en kort 1; bak gapet, kvartene som synker.</translation>
    </message>
    <message>
        <source>all of it floats</source>
        <translation>alt flyter</translation>
    </message>
    <message>
        <source>all of it sinks</source>
        <translation>alt synker</translation>
    </message>
    <message>
        <source>%1 of it sink</source>
        <translation>%1 av den synker</translation>
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
        <translation>Legg til oppsett eller hylle…</translation>
    </message>
    <message>
        <source>Only this rig</source>
        <translation>Bare dette oppsettet</translation>
    </message>
    <message>
        <source>Sheet and labels as PDF…</source>
        <translation>Liste og merkelapper som PDF…</translation>
    </message>
    <message>
        <source>Cut away from yourself; weld with the window open, hot coatings give off fumes; glasses on when you test a loop or knot.</source>
        <translation>Skjær bort fra deg; sveis med åpent vindu, varmt belegg avgir damp; briller på når du prøver en løkke eller knute.</translation>
    </message>
    <message>
        <source>Add a rig or shelf</source>
        <translation>Legg til oppsett eller hylle</translation>
    </message>
    <message>
        <source>Rigs and shelves (*.rig.json *.shelf.json)</source>
        <translation>Oppsett og hyller (*.rig.json *.shelf.json)</translation>
    </message>
    <message>
        <source>Cut sheet as PDF</source>
        <translation>Kappeliste som PDF</translation>
    </message>
    <message>
        <source>cut-sheet.pdf</source>
        <translation>kappeliste.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Lagt til: %1</translation>
    </message>
    <message>
        <source>No spools yet: read a list of spools, or write them down, on the Spools page.</source>
        <translation>Ingen spoler ennå: les inn en liste, eller skriv dem opp, på siden Spoler.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Skrevet: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Ikke skrevet: %1</translation>
    </message>
    <message>
        <source>Put loops on the tips</source>
        <translation>Sett løkker på tuppene</translation>
    </message>
    <message>
        <source>Loops and knots</source>
        <translation>Løkker og knuter</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Skriv ut…</translation>
    </message>
    <message>
        <source>Take the cuts off the spools</source>
        <translation>Trekk kappene fra spolene</translation>
    </message>
    <message>
        <source>%1, without the open rig.</source>
        <translation>%1, uten det åpne oppsettet.</translation>
    </message>
    <message>
        <source>Nothing to cut: no tip, leader or tippet of level line is here.</source>
        <translation>Ingenting å kappe: her er ingen tupp, fortom eller fortomsspiss av jevntykk line.</translation>
    </message>
    <message>
        <source>Taken off the spools; Undo on the Spools page puts it back.</source>
        <translation>Trukket fra spolene; Angre på siden Spoler legger det tilbake.</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Kappeliste</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DeckDocument</name>
    <message>
        <source>not saved: %1</source>
        <translation>ikke lagret: %1</translation>
    </message>
    <message>
        <source>the file that was there is kept; make room, or save elsewhere</source>
        <translation>filen som var der, er beholdt; gjør plass, eller lagre et annet sted</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DepthMap</name>
    <message>
        <source>Map of the tips: depth against how well they carry the fly</source>
        <translation>Kart over tuppene: dybde mot hvor godt de bærer flua</translation>
    </message>
    <message>
        <source>top</source>
        <translation>topp</translation>
    </message>
    <message>
        <source>carries the fly better →</source>
        <translation>bærer flua bedre →</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>one tip in words, all of them in words</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nothing to show yet.</source>
        <translation>Ikke noe å vise ennå.</translation>
    </message>
    <message>
        <source>%1 fit, %2 to be watched, %3 refused.</source>
        <comment>numbers of tips</comment>
        <translation>%1 passer, %2 må passes på, %3 forkastet.</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Ønsket %1.</translation>
    </message>
    <message>
        <source>Best: %1, %2.</source>
        <comment>a tip, why</comment>
        <translation>Best: %1, %2.</translation>
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
        <translation>Dybder for dette oppsettet i alle høler</translation>
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
        <translation>Høl</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Vann</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Svak strøm</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Vanlig strøm</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Sterk strøm</translation>
    </message>
    <message>
        <source>No pools yet: add one under Pools.</source>
        <translation>Ingen høler ennå: legg til en under Høler.</translation>
    </message>
    <message>
        <source>Live estimates. Low and high: %1 slower and faster than the pool states.</source>
        <translation>Løpende anslag. Svak og sterk: %1 saktere og raskere enn hølen oppgir.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Dybder i alle høler</translation>
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
        <translation>Hva B skiller seg fra A i</translation>
    </message>
    <message>
        <source>Changes no reading by itself</source>
        <translation>Endrer ingen avlesning alene</translation>
    </message>
    <message>
        <source>By itself no more than is known</source>
        <translation>Alene ikke mer enn det man vet</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Forskjell</translation>
    </message>
    <message>
        <source>Facts</source>
        <translation>Fakta</translation>
    </message>
    <message>
        <source>What it does by itself</source>
        <translation>Hva den gjør alene</translation>
    </message>
    <message>
        <source>A and B are the same line. Change one of them, drag a part across, try a part from the Shelf, or open another rig: samples are in Menu, Help.</source>
        <translation>A og B er samme line. Endre en av dem, dra en del over, prøv en del fra hylla, eller åpne et annet oppsett: eksempler står i Meny, Hjelp.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditDesk</name>
    <message>
        <source>Shelf</source>
        <translation>Hylle</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Del</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditPanel</name>
    <message>
        <source>Changed for the class only: it is put back when you leave.</source>
        <translation>Endret bare for klassen: det settes tilbake når du går ut.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Sett tilbake</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>A or B</comment>
        <translation>Endre %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FamilyRow</name>
    <message>
        <source>more</source>
        <translation>flere</translation>
    </message>
    <message>
        <source>More tips of this length</source>
        <translation>Flere tupper med denne lengden</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>i overflaten</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>bunn</translation>
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
        <translation>på nå</translation>
    </message>
    <message>
        <source>slower lift</source>
        <translation>saktere løft</translation>
    </message>
    <message>
        <source>quicker lift</source>
        <translation>raskere løft</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tip: sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Same length:</source>
        <translation>Samme lengde:</translation>
    </message>
    <message>
        <source>Same length, sinking:</source>
        <translation>Samme lengde, synkende:</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ingen</translation>
    </message>
    <message>
        <source>or:</source>
        <translation>eller:</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FilePage</name>
    <message>
        <source>Export the settings</source>
        <translation>Eksporter innstillingene</translation>
    </message>
    <message>
        <source>Settings (*.conf);;All files (*)</source>
        <translation>Innstillinger (*.conf);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Import settings</source>
        <translation>Importer innstillinger</translation>
    </message>
    <message>
        <source>Copies of unsaved work</source>
        <translation>Kopier av ulagret arbeid</translation>
    </message>
    <message>
        <source>A copy at most so long after a change</source>
        <translation>En kopi senest så lenge etter en endring</translation>
    </message>
    <message>
        <source>All settings as a file</source>
        <translation>Alle innstillinger som fil</translation>
    </message>
    <message>
        <source>For another machine or another person: units, looks, limits, weights, new rigs and bench habits. Rigs, pools, own parts and what was open last are not in it.</source>
        <translation>For en annen maskin eller en annen person: enheter, utseende, grenser, vekter, nye oppsett og benkens vaner. Oppsett, høler, egne deler og det som sist var åpent, er ikke med.</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Eksporter…</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importer…</translation>
    </message>
    <message>
        <source>Put all settings back to usual</source>
        <translation>Sett alle innstillinger tilbake til vanlig</translation>
    </message>
    <message>
        <source>All settings are as usual.</source>
        <translation>Alle innstillinger er som vanlig.</translation>
    </message>
    <message>
        <source>Take that back</source>
        <translation>Ta det tilbake</translation>
    </message>
    <message>
        <source>The settings are as they were before.</source>
        <translation>Innstillingene er som før.</translation>
    </message>
    <message>
        <source>They are kept in this file:</source>
        <translation>De ligger i denne fila:</translation>
    </message>
    <message>
        <source>Where the settings are kept</source>
        <translation>Hvor innstillingene ligger</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Skrevet: %1</translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 ble ikke skrevet: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; all settings stay as they are.
%2</source>
        <translation>%1 ble ikke tatt inn; alle innstillinger er som de var.
%2</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Tatt inn: %1</translation>
    </message>
    <message>
        <source>usual: %1 s, ours</source>
        <translation>vanlig: %1 s, vår</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FixesPanel</name>
    <message>
        <source>From the wallet, now</source>
        <translation>Fra mappen, nå</translation>
    </message>
    <message>
        <source>At the bench, later</source>
        <translation>Ved benken, senere</translation>
    </message>
    <message>
        <source>Wrong: %1. One change, and what it repairs:</source>
        <translation>Feil: %1. Én endring, og hva den retter:</translation>
    </message>
    <message>
        <source>Nothing is wrong. To be watched: %1.</source>
        <translation>Ingenting er feil. Pass på: %1.</translation>
    </message>
    <message>
        <source>Nothing is wrong, and nothing is to be watched.</source>
        <translation>Ingenting er feil, og ingenting å passe på.</translation>
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
        <translation>ingenting å gjøre</translation>
    </message>
    <message>
        <source>no single change mends it</source>
        <translation>ingen enkelt endring retter det</translation>
    </message>
    <message>
        <source>To be watched: %1.</source>
        <translation>Pass på: %1.</translation>
    </message>
    <message>
        <source>nothing to try yet</source>
        <translation>ingenting å prøve ennå</translation>
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
        <translation>tungstenkule</translation>
    </message>
    <message>
        <source>solid tungsten</source>
        <translation>massiv tungsten</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>bly</translation>
    </message>
    <message>
        <source>brass</source>
        <translation>messing</translation>
    </message>
    <message>
        <source>tin</source>
        <translation>tinn</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>stål</translation>
    </message>
    <message>
        <source>New fly</source>
        <translation>Ny flue</translation>
    </message>
    <message>
        <source>Name of the fly</source>
        <translation>Navn på flua</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Krokstørrelse</translation>
    </message>
    <message>
        <source>Metal of the beads</source>
        <translation>Metall i kulene</translation>
    </message>
    <message>
        <source>Metal of the eyes</source>
        <translation>Metall i øynene</translation>
    </message>
    <message>
        <source>Metal of the wire</source>
        <translation>Metall i tråden</translation>
    </message>
    <message>
        <source>sparse</source>
        <translation>slank</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>middels</translation>
    </message>
    <message>
        <source>bulky</source>
        <translation>omfangsrik</translation>
    </message>
    <message>
        <source>How bulky it is wet</source>
        <translation>Hvor omfangsrik den er våt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Navn</translation>
    </message>
    <message>
        <source>Beads</source>
        <translation>Kuler</translation>
    </message>
    <message>
        <source>Bead, mm</source>
        <translation>Kule, mm</translation>
    </message>
    <message>
        <source>Its hole, mm</source>
        <translation>Hullet, mm</translation>
    </message>
    <message>
        <source>of</source>
        <translation>av</translation>
    </message>
    <message>
        <source>Eyes, gr</source>
        <translation>Øyne, gr</translation>
    </message>
    <message>
        <source>Turns of wire</source>
        <translation>Trådviklinger</translation>
    </message>
    <message>
        <source>Wire, mm</source>
        <translation>Tråd, mm</translation>
    </message>
    <message>
        <source>Dressing, gr</source>
        <translation>Bindemateriale, gr</translation>
    </message>
    <message>
        <source>Water, times dressing</source>
        <translation>Vann, ganger materiale</translation>
    </message>
    <message>
        <source>Wet it is</source>
        <translation>Våt er den</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Sett den på lina</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Behold den blant mine deler</translation>
    </message>
    <message>
        <source>No fly</source>
        <translation>Ingen flue</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet; %3</source>
        <translation>%1 tørr, %2 våt; %3</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>synker med hodet først</translation>
    </message>
    <message>
        <source>sinks level</source>
        <translation>synker vannrett</translation>
    </message>
    <message>
        <source>Mind the point. An estimate: the scale knows better.</source>
        <translation>Pass på krokspissen. Et anslag: vekta vet bedre.</translation>
    </message>
    <message>
        <source>Lead: gloves, away from food and children; where it is forbidden, tungsten or tin instead. </source>
        <translation>Bly: hansker, unna mat og barn; der det er forbudt, bruk tungsten eller tinn. </translation>
    </message>
    <message>
        <source>Tie on a new fly</source>
        <translation>Knyt på en ny flue</translation>
    </message>
    <message>
        <source>My flies</source>
        <translation>Mine fluer</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <comment>a mass, its range</comment>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Beholdt blant mine deler.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::HelpWindow</name>
    <message>
        <source>Help - Grainwise</source>
        <translation>Hjelp - Grainwise</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>Søk i hjelpen</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Sider i hjelpen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hjelp</translation>
    </message>
    <message>
        <source>No page speaks of that.</source>
        <translation>Ingen side nevner det.</translation>
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
        <translation>%1 %2; tykkelse × %3</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LeaderPage</name>
    <message>
        <source>two-hand line</source>
        <translation>tohåndsline</translation>
    </message>
    <message>
        <source>single-hand line</source>
        <translation>enhåndsline</translation>
    </message>
    <message>
        <source>sink tip</source>
        <translation>synketupp</translation>
    </message>
    <message>
        <source>What the leader is tied to</source>
        <translation>Hva fortommen knytes til</translation>
    </message>
    <message>
        <source>Tippet</source>
        <translation>Fortomsspiss</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>ett stykke</translation>
    </message>
    <message>
        <source>two pieces</source>
        <translation>to stykker</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stykker</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Lengde</translation>
    </message>
    <message>
        <source>Line&apos;s tip, diameter</source>
        <translation>Linetuppens diameter</translation>
    </message>
    <message>
        <source>Tippet&apos;s packet, lb</source>
        <translation>Spissens styrke, lb</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Sett den på lina</translation>
    </message>
    <message>
        <source>%1, %2X</source>
        <translation>%1, %2X</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>nylon %1</translation>
    </message>
    <message>
        <source>fluoro %1</source>
        <translation>fluor %1</translation>
    </message>
    <message>
        <source>No leader</source>
        <translation>Ingen fortom</translation>
    </message>
    <message>
        <source>No nylon or fluorocarbon on the spools: read or write down your spools on the Spools page.</source>
        <translation>Verken nylon eller fluorkarbon på spolene: les inn eller skriv opp spolene på siden Spoler.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 pieces, %2, %3. %4.</source>
        <translation>%1 stykker, %2, %3. %4.</translation>
    </message>
    <message>
        <source>Long behind a sink tip: the fly rides up.</source>
        <translation>Lang bak en synketupp: flua løfter seg.</translation>
    </message>
    <message>
        <source>Short: the fly follows the tip closely.</source>
        <translation>Kort: flua følger tuppen tett.</translation>
    </message>
    <message>
        <source>A spool holds less than this takes.</source>
        <translation>En spole har mindre enn dette krever.</translation>
    </message>
    <message>
        <source>Usual for the trade, not a rule. Glasses on when you test a knot.</source>
        <translation>Vanlig i bransjen, ingen regel. Briller på når du prøver en knute.</translation>
    </message>
    <message>
        <source>%1X to %2X</source>
        <translation>%1X til %2X</translation>
    </message>
    <message>
        <source>%1 to %2 lb</source>
        <translation>%1 til %2 lb</translation>
    </message>
    <message>
        <source>For a hook of size %1 usually %2 of tippet. %3</source>
        <translation>Til en krok i størrelse %1 vanligvis %2 fortomsspiss. %3</translation>
    </message>
    <message>
        <source>Tie a new leader</source>
        <translation>Knyt en ny fortom</translation>
    </message>
    <message>
        <source>cut %1, %2</source>
        <translation>kapp %1, %2</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a range with its unit</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Behold den blant mine deler</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>a leader, its butt, its tippet</comment>
        <translation>%1, %2 til %3</translation>
    </message>
    <message>
        <source>My leaders</source>
        <translation>Mine fortommer</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Beholdt blant mine deler.</translation>
    </message>
    <message>
        <source>To the spools</source>
        <translation>Til spolene</translation>
    </message>
    <message>
        <source>Tied to</source>
        <translation>Knyttes til</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Lens</name>
    <message>
        <source>The last six feet, magnified</source>
        <translation>De siste seks fotene, forstørret</translation>
    </message>
    <message>
        <source>The last six feet, magnified: press or drag a part here as on the line</source>
        <translation>De siste seks fotene, forstørret: trykk eller dra en del her som på lina</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ListPage</name>
    <message>
        <source>nothing</source>
        <translation>ingenting</translation>
    </message>
    <message>
        <source>name</source>
        <translation>navn</translation>
    </message>
    <message>
        <source>mass, gr</source>
        <translation>masse, gr</translation>
    </message>
    <message>
        <source>mass, g</source>
        <translation>masse, g</translation>
    </message>
    <message>
        <source>mass with its unit</source>
        <translation>masse med enhet</translation>
    </message>
    <message>
        <source>length, ft</source>
        <translation>lengde, ft</translation>
    </message>
    <message>
        <source>length, m</source>
        <translation>lengde, m</translation>
    </message>
    <message>
        <source>length with its unit</source>
        <translation>lengde med enhet</translation>
    </message>
    <message>
        <source>gr/ft</source>
        <translation>gr/ft</translation>
    </message>
    <message>
        <source>sinks, in/s</source>
        <translation>synker, in/s</translation>
    </message>
    <message>
        <source>sinking ft</source>
        <translation>synkende ft</translation>
    </message>
    <message>
        <source>date</source>
        <translation>dato</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Listen</translation>
    </message>
    <message>
        <source>Paste a list of tips or what the scale said, a line each:
name, mass gr, length ft
winter tip, 113.5, 10</source>
        <translation>Lim inn en liste over tupper, eller det vekta viste, én per linje:
navn, masse gr, lengde ft
vintertupp, 113.5, 10</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>Fra en fil…</translation>
    </message>
    <message>
        <source>Keep them among my parts</source>
        <translation>Behold dem blant mine deler</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Les en liste</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Lister (*.csv *.txt *.tsv);;Alle filer (*)</translation>
    </message>
    <message>
        <source>This file is over 4 MB; a list is shorter.</source>
        <translation>Filen er over 4 MB; en liste er kortere.</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Kolonne %1</translation>
    </message>
    <message>
        <source>%1 tips read.</source>
        <translation>%1 tupper lest.</translation>
    </message>
    <message>
        <source>%1 without a sink rate take the usual one of their class.</source>
        <translation>%1 uten synkehastighet får den vanlige for klassen.</translation>
    </message>
    <message>
        <source>My tips</source>
        <translation>Mine tupper</translation>
    </message>
    <message>
        <source>%1 kept among my parts.</source>
        <translation>%1 beholdt blant mine deler.</translation>
    </message>
    <message>
        <source>The lines as they will be read</source>
        <translation>Linjene slik de blir lest</translation>
    </message>
    <message>
        <source>parted by commas</source>
        <translation>delt med komma</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>delt med semikolon</translation>
    </message>
    <message>
        <source>parted by tabs</source>
        <translation>delt med tabulator</translation>
    </message>
    <message>
        <source>What parts the columns</source>
        <translation>Hva som deler kolonnene</translation>
    </message>
    <message>
        <source>the first line names them</source>
        <translation>første linje gir dem navn</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Lines left out: %1.</source>
        <translation>Linjer utelatt: %1.</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>blir til</translation>
    </message>
    <message>
        <source>names</source>
        <translation>navn</translation>
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
        <translation>Enheter</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Lengder</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Fot og tommer</translation>
    </message>
    <message>
        <source>Metres and millimetres</source>
        <translation>Meter og millimeter</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Vekter</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Grain</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gram</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturer</translation>
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
        <translation>Utseende</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farger</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Som systemet</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lys</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Mørk</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sollys</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Projektor</translation>
    </message>
    <message>
        <source>Size of type and diagrams</source>
        <translation>Størrelse på skrift og diagrammer</translation>
    </message>
    <message>
        <source>Reduce motion: nothing slides or plays by itself</source>
        <translation>Mindre bevegelse: ingenting glir eller spiller av seg selv</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Språk</translation>
    </message>
    <message>
        <source>Language of words and numbers, from the next start</source>
        <translation>Språk for ord og tall, fra neste start</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LoopHabits</name>
    <message>
        <source>no loops</source>
        <translation>ingen løkker</translation>
    </message>
    <message>
        <source>welded loops</source>
        <translation>sveisede løkker</translation>
    </message>
    <message>
        <source>sleeved loops</source>
        <translation>løkker med hylse</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>knyttede løkker</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Løkker på tupper</translation>
    </message>
    <message>
        <source>A loop takes</source>
        <translation>En løkke tar</translation>
    </message>
    <message>
        <source>A splice, each side</source>
        <translation>En spleis, hver side</translation>
    </message>
    <message>
        <source>A knot, each side</source>
        <translation>En knute, hver side</translation>
    </message>
    <message>
        <source>The knot at the fly</source>
        <translation>Knuten ved fluen</translation>
    </message>
    <message>
        <source>Put the loops on the line</source>
        <translation>Sett løkkene på lina</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MainWindow</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Ulagrede endringer</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>Lagre endringene i &quot;%1&quot; først?</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Lagre oppsettet</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Gjør om</translation>
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
        <translation>Benk</translation>
    </message>
    <message>
        <source>Open a rig</source>
        <translation>Åpne et oppsett</translation>
    </message>
    <message>
        <source>Handout into a file</source>
        <translation>Utdelingsark til en fil</translation>
    </message>
    <message>
        <source>Paper or picture (*.pdf *.png *.svg)</source>
        <translation>Papir eller bilde (*.pdf *.png *.svg)</translation>
    </message>
    <message>
        <source>No copy of unsaved work could be kept: %1</source>
        <translation>Ingen kopi av ulagret arbeid kunne tas vare på: %1</translation>
    </message>
    <message>
        <source>Own parts or spools that could not be read; the file stays as it is</source>
        <translation>Egne deler eller spoler som ikke kunne leses; filen blir som den er</translation>
    </message>
    <message>
        <source>Grainwise speaks the chosen language from its next start.</source>
        <translation>Grainwise snakker det valgte språket fra neste start.</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>ikke lagret ennå</translation>
    </message>
    <message>
        <source>%1[*] (%2) - Grainwise</source>
        <translation>%1[*] (%2) - Grainwise</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>oppsett uten navn</translation>
    </message>
    <message>
        <source>Undo in %1</source>
        <translation>Angre i %1</translation>
    </message>
    <message>
        <source>Redo in %1</source>
        <translation>Gjør om i %1</translation>
    </message>
    <message>
        <source>Clear the list</source>
        <translation>Tøm listen</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 ble ikke åpnet</translation>
    </message>
    <message>
        <source>%1 is there already; choose it by its full name, or another one.</source>
        <translation>%1 finnes der allerede; velg den med fullt navn, eller et annet navn.</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 ble ikke lagret</translation>
    </message>
    <message>
        <source>Unsaved work on &quot;%1&quot; of %2 was kept.</source>
        <translation>Ulagret arbeid på &quot;%1&quot; fra %2 ble tatt vare på.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Åpne det</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Kast det</translation>
    </message>
    <message>
        <source>%1 is no longer there; saving puts it back.</source>
        <translation>%1 er ikke der lenger; lagring legger den tilbake.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Lagre</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>%1 ble endret av et annet program.</translation>
    </message>
    <message>
        <source>Open what it holds now</source>
        <translation>Åpne det den inneholder nå</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Skrevet: %1</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Om Grainwise</translation>
    </message>
    <message>
        <source>Grainwise %1: a workbench for building and balancing two-handed fly rigs.

Limits and verdicts are common practice or ours, never a rod maker&apos;s. Rod makers&apos; limits and a qualified instructor&apos;s advice come first.

Free software under the GNU GPL, version 3 or later. Uses Qt %2, Qt Charts, nlohmann/json and tl::expected.</source>
        <translation>Grainwise %1: en arbeidsbenk for å bygge og balansere fluesnøreoppsett til tohåndsstang.

Grenser og dommer er vanlig praksis eller våre egne, aldri en stangprodusents. Stangprodusentenes grenser og råd fra en kvalifisert instruktør går foran.

Fri programvare under GNU GPL, versjon 3 eller senere. Bruker Qt %2, Qt Charts, nlohmann/json og tl::expected.</translation>
    </message>
    <message>
        <source>Two rigs are compared at a time, one deck is shown: the other files were not opened.</source>
        <translation>To oppsett sammenlignes om gangen, én kortstokk vises: de andre filene ble ikke åpnet.</translation>
    </message>
    <message>
        <source>The packed wallet</source>
        <translation>Den pakkede mappen</translation>
    </message>
    <message>
        <source>Rigs, decks, shelves, pools, spools (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;All files (*)</source>
        <translation>Oppsett, kortstokker, hyller, høler, spoler (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json);;All files (*)</source>
        <translation>Oppsett (*.rig.json);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Drop one file that is on this machine, or two rigs to compare them.</source>
        <translation>Slipp én fil som er på denne maskinen, eller to oppsett for å sammenligne dem.</translation>
    </message>
    <message>
        <source>The pools of %1 are there now; Undo brings yours back.</source>
        <translation>Hølene fra %1 er her nå; Angre henter dine tilbake.</translation>
    </message>
    <message>
        <source>The spools of %1 are there now; Undo brings yours back.</source>
        <translation>Spolene fra %1 er her nå; Angre henter dine tilbake.</translation>
    </message>
    <message>
        <source>Of %1 added to your parts: %2; there already: %3. Undo takes them off.</source>
        <translation>Fra %1 lagt til delene dine: %2; fantes fra før: %3. Angre tar dem bort.</translation>
    </message>
    <message>
        <source>unnamed deck</source>
        <translation>kortstokk uten navn</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MakePanel</name>
    <message>
        <source>Tasks at the bench</source>
        <translation>Oppgaver ved benken</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Kappeliste</translation>
    </message>
    <message>
        <source>Spools</source>
        <translation>Spoler</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Veiing</translation>
    </message>
    <message>
        <source>Tie a leader</source>
        <translation>Knyt en fortom</translation>
    </message>
    <message>
        <source>Dress a fly</source>
        <translation>Bind en flue</translation>
    </message>
    <message>
        <source>Trim, divide, name</source>
        <translation>Kutt, del, bestem</translation>
    </message>
    <message>
        <source>Tub and river</source>
        <translation>Kar og elv</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Mine deler</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Les en liste</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MeasurePage</name>
    <message>
        <source>In a tub: let a level piece sink and time it</source>
        <translation>I et kar: la et jevnt stykke synke og ta tiden</translation>
    </message>
    <message>
        <source>Piece that sinks</source>
        <translation>Stykke som synker</translation>
    </message>
    <message>
        <source>It falls</source>
        <translation>Det faller</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Vann</translation>
    </message>
    <message>
        <source>Seconds, one or more: 3.2 3.3</source>
        <translation>Sekunder, én eller flere: 3,2 3,3</translation>
    </message>
    <message>
        <source>Times in seconds</source>
        <translation>Tider i sekunder</translation>
    </message>
    <message>
        <source>Take this rate</source>
        <translation>Bruk denne farten</translation>
    </message>
    <message>
        <source>Back to the rated one</source>
        <translation>Tilbake til den oppgitte</translation>
    </message>
    <message>
        <source>Back to the rated sink</source>
        <translation>Tilbake til oppgitt synkehastighet</translation>
    </message>
    <message>
        <source>In the river: how deep was the fly?</source>
        <translation>I elva: hvor dypt gikk flua?</translation>
    </message>
    <message>
        <source>hanging below the rod</source>
        <translation>hengende under stanga</translation>
    </message>
    <message>
        <source>on the swing</source>
        <translation>i svingen</translation>
    </message>
    <message>
        <source>Where it was measured</source>
        <translation>Hvor det ble målt</translation>
    </message>
    <message>
        <source>Depth of the fly</source>
        <translation>Dybden på flua</translation>
    </message>
    <message>
        <source>Take this current</source>
        <translation>Bruk denne strømmen</translation>
    </message>
    <message>
        <source>Back to the stated one</source>
        <translation>Tilbake til den oppgitte</translation>
    </message>
    <message>
        <source>Measure where you stand safely; a snagged tip comes back fast.</source>
        <translation>Mål der du står trygt; en tupp som løsner fra bunnen, kommer fort tilbake.</translation>
    </message>
    <message>
        <source>Back to the stated current</source>
        <translation>Tilbake til oppgitt strøm</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing on the line sinks by a rate.</source>
        <translation>Ingenting på lina synker med en oppgitt fart.</translation>
    </message>
    <message>
        <source>Rated %1. Several falls make it surer.</source>
        <translation>Oppgitt %1. Flere fall gjør det sikrere.</translation>
    </message>
    <message>
        <source>%1 at %4, give or take %2 (4 times in 5); rated %3.</source>
        <translation>%1 ved %4, pluss minus %2 (4 av 5 ganger); oppgitt %3.</translation>
    </message>
    <message>
        <source> A deeper tub would say more.</source>
        <translation> Et dypere kar ville si mer.</translation>
    </message>
    <message>
        <source>Take a timed sink rate</source>
        <translation>Bruk målt synkehastighet</translation>
    </message>
    <message>
        <source>Fits a current of %1 at the surface, give or take %2; stated %3.</source>
        <translation>Stemmer med en strøm på %1 i overflaten, pluss minus %2; oppgitt %3.</translation>
    </message>
    <message>
        <source>Take a measured current</source>
        <translation>Bruk målt strøm</translation>
    </message>
    <message>
        <source>The current that explains the depth is kept with the water and its pool, and narrows the range.</source>
        <translation>Strømmen som forklarer dybden, blir tatt vare på med vannet og hølen, og gjør spennet smalere.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NamePanel</name>
    <message>
        <source>Name of the rig</source>
        <translation>Navn på oppsettet</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notater</translation>
    </message>
    <message>
        <source>Rename the rig</source>
        <translation>Gi oppsettet nytt navn</translation>
    </message>
    <message>
        <source>Change the notes</source>
        <translation>Endre notatene</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NewRigPage</name>
    <message>
        <source>Line speed</source>
        <translation>Linefart</translation>
    </message>
    <message>
        <source>Height of the loop</source>
        <translation>Høyde på bukta</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Utkastvinkel</translation>
    </message>
    <message>
        <source>Rod tip above the water</source>
        <translation>Stangtupp over vannet</translation>
    </message>
    <message>
        <source>Running line outside the rod tip</source>
        <translation>Skyteline utenfor stangtuppen</translation>
    </message>
    <message>
        <source>Speed of the surface</source>
        <translation>Fart på overflaten</translation>
    </message>
    <message>
        <source>Depth of the water</source>
        <translation>Vanndybde</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>Vanntemperatur</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Salt</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Line ute</translation>
    </message>
    <message>
        <source>Angle of the cast, down from straight across</source>
        <translation>Kastvinkel, ned fra rett over</translation>
    </message>
    <message>
        <source>Mend, seconds of slack</source>
        <translation>Mending, sekunder slakk</translation>
    </message>
    <message>
        <source>What a new rig has from the start. What is left open is as usual for its head; rigs that are there already keep their own.</source>
        <translation>Det et nytt oppsett har fra start. Det som står åpent, er som vanlig for klumpen; oppsett som finnes, beholder sitt.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Sett denne siden tilbake til vanlig</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Kast</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Vann</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Sving</translation>
    </message>
    <message>
        <source>usual: by the head, common practice</source>
        <translation>vanlig: etter klumpen, vanlig praksis</translation>
    </message>
    <message>
        <source>usual: left open</source>
        <translation>vanlig: åpen</translation>
    </message>
    <message>
        <source>Altitude of the river</source>
        <translation>Elvas høyde over havet</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NoticeBar</name>
    <message>
        <source>Later</source>
        <translation>Senere</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Lukk</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NumberField</name>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>over %1 til %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 til %2 %3</translation>
    </message>
    <message>
        <source>This is no number here; give %1.</source>
        <translation>Dette er ikke noe tall her; oppgi %1.</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1.</source>
        <translation>Utenfor det mulige; oppgi %1.</translation>
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
        <translation>%1: et tall, %2. Punktum eller komma er desimaltegn; en annen enhet kan skrives bak.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OutMenu</name>
    <message>
        <source>No picture or table is on screen</source>
        <translation>Ingen bilder eller tabeller vises</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnPartsPage</name>
    <message>
        <source>Search my parts</source>
        <translation>Søk i mine deler</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Mine deler</translation>
    </message>
    <message>
        <source>Part of the line</source>
        <translation>Del av lina</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behold den</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Sett den på lina</translation>
    </message>
    <message>
        <source>Copy it</source>
        <translation>Kopier den</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Read a shelf…</source>
        <translation>Les en hylle…</translation>
    </message>
    <message>
        <source>Write them to a file…</source>
        <translation>Skriv dem til en fil…</translation>
    </message>
    <message>
        <source>From the line</source>
        <translation>Fra lina</translation>
    </message>
    <message>
        <source>Read a shelf</source>
        <translation>Les en hylle</translation>
    </message>
    <message>
        <source>Shelves (*.shelf.json)</source>
        <translation>Hyller (*.shelf.json)</translation>
    </message>
    <message>
        <source>Write my parts</source>
        <translation>Skriv mine deler</translation>
    </message>
    <message>
        <source>my-parts.shelf.json</source>
        <translation>mine-deler.shelf.json</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>None yet. Keep a part of the line, and it stands on the Shelf from now on.</source>
        <translation>Ingen ennå. Behold en del av lina, så står den på hylla fra nå av.</translation>
    </message>
    <message>
        <source>Kept in place of the old one.</source>
        <translation>Beholdt i stedet for den gamle.</translation>
    </message>
    <message>
        <source>Kept. It stands on the Shelf.</source>
        <translation>Beholdt. Den står på hylla.</translation>
    </message>
    <message>
        <source>Removed %1; Undo brings it back.</source>
        <translation>Fjernet %1; Angre henter den tilbake.</translation>
    </message>
    <message>
        <source>There is no room for another one on the line.</source>
        <translation>Det er ikke plass til en til på lina.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Legg til %1</translation>
    </message>
    <message>
        <source>%1 added, %2 there already</source>
        <translation>%1 lagt til, %2 var der allerede</translation>
    </message>
    <message>
        <source>Written.</source>
        <translation>Skrevet.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Ikke skrevet: %1</translation>
    </message>
    <message>
        <source>The one on the line keeps the figures that it has.</source>
        <translation>Delen på lina beholder tallene sine.</translation>
    </message>
    <message>
        <source>Put this one in</source>
        <translation>Sett inn denne</translation>
    </message>
    <message>
        <source>Put the new %1 in</source>
        <translation>Sett inn ny %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnStore</name>
    <message>
        <source>%1 could not be written; it stays as it was. %2</source>
        <translation>%1 kunne ikke skrives; den er som før. %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PairPanel</name>
    <message>
        <source>Play</source>
        <translation>Spill av</translation>
    </message>
    <message>
        <source>Lets both go together, at a quarter of real time</source>
        <translation>Slipper begge samtidig, i en fjerdedel av virkelig tid</translation>
    </message>
    <message>
        <source>Both swing together, four times as fast as on the water</source>
        <translation>Begge svinger sammen, fire ganger så fort som på vannet</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tid</translation>
    </message>
    <message>
        <source>A model of the loop, without stroke, wind or stretch. Keep everyone out of the space behind you.</source>
        <translation>En modell av bukta, uten kastbevegelse, vind eller strekk. Hold alle unna rommet bak deg.</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Tall for lina, ingen rettesnor for vading.</translation>
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
        <translation>Kastene til A og B</translation>
    </message>
    <message>
        <source>The swings of A and B</source>
        <translation>Svingene til A og B</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>regner…</translation>
    </message>
    <message>
        <source>A: %1. B: %2</source>
        <translation>A: %1. B: %2</translation>
    </message>
    <message>
        <source>%1 (of before the change: working…)</source>
        <translation>%1 (fra før endringen: regner…)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartDrawing</name>
    <message>
        <source>Drag it up onto the line, or press Enter</source>
        <translation>Dra den opp på lina, eller trykk Enter</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartEditor</name>
    <message>
        <source>Edit %1</source>
        <translation>Rediger %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Navn</translation>
    </message>
    <message>
        <source>Name of the part</source>
        <translation>Navn på delen</translation>
    </message>
    <message>
        <source>no style</source>
        <translation>ingen klumptype</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Klumptype</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Merket</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Veid</translation>
    </message>
    <message>
        <source>Loop, rod end</source>
        <translation>Løkke, stangende</translation>
    </message>
    <message>
        <source>Loop, fly end</source>
        <translation>Løkke, flueende</translation>
    </message>
    <message>
        <source>Weighed on</source>
        <translation>Veid den</translation>
    </message>
    <message>
        <source>Weighed on, year-month-day</source>
        <translation>Veid den, år-måned-dag</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>år-måned-dag</translation>
    </message>
    <message>
        <source>Give the weighed mass first</source>
        <translation>Oppgi først den veide massen</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Tørr</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Våt</translation>
    </message>
    <message>
        <source>Bulk, cm²</source>
        <translation>Flate, cm²</translation>
    </message>
    <message>
        <source>Density, g/cm³</source>
        <translation>Tetthet, g/cm³</translation>
    </message>
    <message>
        <source>Hook</source>
        <translation>Krok</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Krokstørrelse</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>synker med hodet først</translation>
    </message>
    <message>
        <source>Add a section</source>
        <translation>Legg til seksjon</translation>
    </message>
    <message>
        <source>Choose a part on the line: click it, or use the arrow keys there.</source>
        <translation>Velg en del på lina: klikk på den, eller bruk piltastene der.</translation>
    </message>
    <message>
        <source>Casts at %1 wet. Bulk and density count in the air and in the water; left empty they are taken as 1.5.</source>
        <translation>Kastes med %1 våt. Flate og tetthet teller i luft og vann; tomme felt regnes som 1,5.</translation>
    </message>
    <message>
        <source>, of it loops %1</source>
        <translation>, av det løkker %1</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to what the scale said</source>
        <translation>; seksjoner skalert med %1 % til det vekta sa</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to the label</source>
        <translation>; seksjoner skalert med %1 % til merkingen</translation>
    </message>
    <message>
        <source>sinks %1 here</source>
        <translation>synker %1 her</translation>
    </message>
    <message>
        <source>floats</source>
        <translation>flyter</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a figure at both ends of a section, the second with unit</comment>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>%1 to %2: weighs %3</source>
        <comment>where a part begins and ends, its mass</comment>
        <translation>%1 til %2: veier %3</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PlayerBar</name>
    <message>
        <source>Time</source>
        <translation>Tid</translation>
    </message>
    <message>
        <source>How fast it plays</source>
        <translation>Hvor fort det går</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Spill av</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolBook</name>
    <message>
        <source>make room, or save elsewhere</source>
        <translation>gjør plass, eller lagre et annet sted</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolsPanel</name>
    <message>
        <source>Pools (*.pools.json);;All files (*)</source>
        <translation>Høler (*.pools.json);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Open pools</source>
        <translation>Åpne høler</translation>
    </message>
    <message>
        <source>Save the pools</source>
        <translation>Lagre hølene</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Høler</translation>
    </message>
    <message>
        <source>Fish here</source>
        <translation>Fisk her</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Gå til %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Legg til</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Åpne…</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Lagre som…</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Navn</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Strøm i overflaten</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Dybde</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>The fly is wanted</source>
        <translation>Flua skal gå</translation>
    </message>
    <message>
        <source>anywhere</source>
        <translation>hvor som helst</translation>
    </message>
    <message>
        <source>off the bottom</source>
        <translation>over bunnen</translation>
    </message>
    <message>
        <source>below the surface</source>
        <translation>under overflaten</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Fra</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Til</translation>
    </message>
    <message>
        <source>Angle, degrees</source>
        <translation>Vinkel, grader</translation>
    </message>
    <message>
        <source>Slack, seconds</source>
        <translation>Slakk, sekunder</translation>
    </message>
    <message>
        <source>must be more than the first</source>
        <translation>må være mer enn det første</translation>
    </message>
    <message>
        <source>New pool</source>
        <translation>Ny høl</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bunn</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProblemPanel</name>
    <message>
        <source>The open rig is as it was.</source>
        <translation>Oppsettet som er åpent, er som det var.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>og %n til</numerusform>
            <numerusform>og %n til</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProfileChart</name>
    <message>
        <source>g per metre</source>
        <translation>g per meter</translation>
    </message>
    <message>
        <source>gr per foot</source>
        <translation>gr per fot</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 i alt</translation>
    </message>
    <message>
        <source>what the loop needs of each foot</source>
        <translation>det bukta trenger av hver fot</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Hva hver fot veier</translation>
    </message>
    <message>
        <source>Left and Right move the line by half a foot, with Shift by a tenth</source>
        <translation>Venstre og Høyre flytter linjen en halv fot, med Shift en tidel</translation>
    </message>
    <message>
        <source>nothing on the line yet</source>
        <translation>ingenting på lina ennå</translation>
    </message>
    <message>
        <source>%1: past the end of the line</source>
        <translation>%1: forbi enden av lina</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the fly</source>
        <translation>%1: %2, %3 så langt, %4 fra flua</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the end</source>
        <translation>%1: %2, %3 så langt, %4 fra enden</translation>
    </message>
    <message>
        <source>%1 of line, %2 in all, heaviest at %3 with %4. The cursor is at %5.</source>
        <translation>%1 line, %2 i alt, tyngst ved %3 med %4. Markøren står ved %5.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ReadingsTable</name>
    <message>
        <source>Readings of A and B</source>
        <translation>Avlesninger for A og B</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Dybde</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Utrulling</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>ikke mer enn det man vet</translation>
    </message>
    <message>
        <source>B turns over more easily</source>
        <translation>B ruller lettere ut</translation>
    </message>
    <message>
        <source>A turns over more easily</source>
        <translation>A ruller lettere ut</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>ingen forskjell</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Sving</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Kastbevegelse</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>samme kastbevegelse</translation>
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
        <translation>dybder fra virkelige svinger</translation>
    </message>
    <message>
        <source>swinging both…</source>
        <translation>svinger begge…</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Avlesning</translation>
    </message>
    <message>
        <source>A says</source>
        <translation>A sier</translation>
    </message>
    <message>
        <source>B says</source>
        <translation>B sier</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Forskjell</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverPanel</name>
    <message>
        <source>4 times</source>
        <translation>4 ganger</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>virkelig tid</translation>
    </message>
    <message>
        <source>1/4</source>
        <translation>1/4</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Vinkel</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>For den landede lina, nedenfor rett over</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Mending</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>How long the line drifts free before it comes tight</source>
        <translation>Hvor lenge lina driver fritt før den strammes</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Line ute</translation>
    </message>
    <message>
        <source>From the rod tip to the fly</source>
        <translation>Fra stangtuppen til flua</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading: judge the water by your own eyes, with a staff, a belt and company.</source>
        <translation>Tall for lina, ingen rettesnor for vading: døm vannet med egne øyne, med vadestav, belte og følge.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Dybder i alle høler</translation>
    </message>
    <message>
        <source>range of depth</source>
        <translation>dybdeområde</translation>
    </message>
    <message>
        <source>Swings tried for the range of depth</source>
        <translation>Sving som er regnet for dybdeområdet</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Elv</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverView</name>
    <message>
        <source>The swing, from the side and from above</source>
        <translation>Svingen, fra siden og ovenfra</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>ønsket</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Ovenfra</translation>
    </message>
    <message>
        <source>A swing of %1 seconds, at the deepest %2.</source>
        <translation>En sving på %1 sekunder, på det dypeste %2.</translation>
    </message>
    <message>
        <source>Four swings out of five between %1 and %2.</source>
        <translation>Fire av fem svinger mellom %1 og %2.</translation>
    </message>
    <message>
        <source>%1 s, drifting after the mend</source>
        <translation>%1 s, driver etter mendingen</translation>
    </message>
    <message>
        <source>%1 s, swinging</source>
        <translation>%1 s, svinger</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>regnes på nytt</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RodPanel</name>
    <message>
        <source>Short heads</source>
        <translation>Korte klumper</translation>
    </message>
    <message>
        <source>Fine tapers</source>
        <translation>Lange tapere</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Long belly</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Enhåndsliner</translation>
    </message>
    <message>
        <source>Rod length</source>
        <translation>Stanglengde</translation>
    </message>
    <message>
        <source>Line number</source>
        <translation>Lineklasse</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>enhånds</translation>
    </message>
    <message>
        <source>two hands</source>
        <translation>to hender</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hender</translation>
    </message>
    <message>
        <source>Style of head</source>
        <translation>Klumptype</translation>
    </message>
    <message>
        <source>Start a rig for this rod</source>
        <translation>Start et oppsett for denne stanga</translation>
    </message>
    <message>
        <source>Head, tip and leader from the Shelf; the fly is yours to choose. Undo brings the old rig back.</source>
        <translation>Klump, tupp og fortom fra hylla; flua velger du selv. Angre henter det gamle oppsettet tilbake.</translation>
    </message>
    <message>
        <source>Head to start with</source>
        <translation>Klump å starte med</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 fra</translation>
    </message>
    <message>
        <source>to</source>
        <translation>til</translation>
    </message>
    <message>
        <source>Change the rod</source>
        <translation>Endre stanga</translation>
    </message>
    <message>
        <source>Both ends are needed.</source>
        <translation>Begge ender trengs.</translation>
    </message>
    <message>
        <source>The upper end is below the lower one.</source>
        <translation>Den øvre enden ligger under den nedre.</translation>
    </message>
    <message>
        <source>Start from the rod</source>
        <translation>Start fra stanga</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, and the rod maker&apos;s figure comes first. Where none is given, our usual range for the line number is taken.</source>
        <translation>Grain på en stang gjelder klumpen alene, og stangprodusentens tall går foran. Der ingen er oppgitt, brukes vårt vanlige område for lineklassen.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RulesPage</name>
    <message>
        <source>Put this page back to usual</source>
        <translation>Sett denne siden tilbake til vanlig</translation>
    </message>
    <message>
        <source>usual: %1, %2</source>
        <comment>the usual value, whose it is</comment>
        <translation>vanlig: %1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SamplesMenu</name>
    <message>
        <source>Decks for a class</source>
        <translation>Kortstokker for et kurs</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Oppsett</translation>
    </message>
    <message>
        <source>Wrong on purpose, to mend</source>
        <translation>Feil med vilje, til å rette</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SectionRow</name>
    <message>
        <source>floats</source>
        <translation>flyter</translation>
    </message>
    <message>
        <source>sinks at a rate</source>
        <translation>synker med en fart</translation>
    </message>
    <message>
        <source>has a density</source>
        <translation>har en tetthet</translation>
    </message>
    <message>
        <source>has a diameter</source>
        <translation>har en diameter</translation>
    </message>
    <message>
        <source>is nylon</source>
        <translation>er nylon</translation>
    </message>
    <message>
        <source>is fluorocarbon</source>
        <translation>er fluorkarbon</translation>
    </message>
    <message>
        <source>level</source>
        <translation>jevn</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Lengde</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diameter</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Veier</translation>
    </message>
    <message>
        <source>What is known of section %1</source>
        <translation>Hva man vet om seksjon %1</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Del</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Cut this section in two halves that weigh the same together</source>
        <translation>Del denne seksjonen i to halvdeler som til sammen veier det samme</translation>
    </message>
    <message>
        <source>to</source>
        <translation>til</translation>
    </message>
    <message>
        <source>g/cm³</source>
        <translation>g/cm³</translation>
    </message>
    <message>
        <source>Take this section out</source>
        <translation>Ta ut denne seksjonen</translation>
    </message>
    <message>
        <source>A part has at least one section</source>
        <translation>En del har minst én seksjon</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Synker</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SettingsWindow</name>
    <message>
        <source>Settings - Grainwise</source>
        <translation>Innstillinger - Grainwise</translation>
    </message>
    <message>
        <source>Pages of the settings</source>
        <translation>Sider i innstillingene</translation>
    </message>
    <message>
        <source>Units, looks, language</source>
        <translation>Enheter, utseende, språk</translation>
    </message>
    <message>
        <source>Limits of the verdicts</source>
        <translation>Grenser for dommene</translation>
    </message>
    <message>
        <source>Where a reading turns from one word to the next. No limit is a rod maker&apos;s; a rod&apos;s own window comes first. The commands go by the usual limits.</source>
        <translation>Der en avlesning går fra ett ord til det neste. Ingen grense er en stangmakers; stangas eget vindu går først. Kommandoene følger de vanlige grensene.</translation>
    </message>
    <message>
        <source>Choosing tips</source>
        <translation>Velge tupper</translation>
    </message>
    <message>
        <source>What is refused, the verdicts decide. This orders the rest, in the Tip chooser and the wallet.</source>
        <translation>Hva som avvises, avgjør dommene. Dette ordner resten, i tuppvelgeren og mappa.</translation>
    </message>
    <message>
        <source>New rigs</source>
        <translation>Nye oppsett</translation>
    </message>
    <message>
        <source>Habits of the bench</source>
        <translation>Benkens vaner</translation>
    </message>
    <message>
        <source>Copies and file</source>
        <translation>Kopier og fil</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShelfModel</name>
    <message>
        <source>sinks %1</source>
        <translation>synker %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 til %2</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet</source>
        <translation>%1 tørr, %2 våt</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>synker med hodet først</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>opptil %1</translation>
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
        <translation>Søk i alle deler</translation>
    </message>
    <message>
        <source>Groups of the Shelf</source>
        <translation>Grupper på hylla</translation>
    </message>
    <message>
        <source>Parts: drag one onto the line, or press Enter to place it</source>
        <translation>Deler: dra en til lina, eller trykk Enter for å sette den på</translation>
    </message>
    <message>
        <source>Other parts</source>
        <translation>Andre deler</translation>
    </message>
    <message>
        <source>The Shelf is empty.</source>
        <translation>Hylla er tom.</translation>
    </message>
    <message>
        <source>Nothing on the Shelf is found by “%1”. Fewer words find more.</source>
        <translation>Ingenting på hylla passer til «%1». Færre ord finner mer.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShowWindow</name>
    <message>
        <source>Grainwise: for the class</source>
        <translation>Grainwise: for klassen</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Side</name>
    <message>
        <source>Open…</source>
        <translation>Åpne…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Lagre</translation>
    </message>
    <message>
        <source>Line %1, from the rod to the fly</source>
        <translation>Line %1, fra stanga til flua</translation>
    </message>
    <message>
        <source>Copy to %1</source>
        <translation>Kopier til %1</translation>
    </message>
    <message>
        <source>Copy %1 to %2</source>
        <translation>Kopier %1 til %2</translation>
    </message>
    <message>
        <source>Makes %2 the same as %1; undo in %2 brings the old one back</source>
        <translation>Gjør %2 lik %1; angre i %2 henter det gamle tilbake</translation>
    </message>
    <message>
        <source>Open a rig as %1</source>
        <translation>Åpne et oppsett som %1</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>Lagre %1</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>oppsett uten navn</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, ikke lagret</translation>
    </message>
    <message>
        <source>%1: %2. Click to rename.</source>
        <translation>%1: %2. Klikk for å gi nytt navn.</translation>
    </message>
    <message>
        <source>Rod of %1: %2. Click to change.</source>
        <translation>Stang for %1: %2. Klikk for å endre.</translation>
    </message>
    <message>
        <source>Water of %1: %2. Click to change.</source>
        <translation>Vann for %1: %2. Klikk for å endre.</translation>
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
        <translation>Spoler</translation>
    </message>
    <message>
        <source>sinking</source>
        <translation>synkende</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>flytende</translation>
    </message>
    <message>
        <source>nylon</source>
        <translation>nylon</translation>
    </message>
    <message>
        <source>fluorocarbon</source>
        <translation>fluorkarbon</translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation>Type line</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>En fot veier</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Synker</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diameter</translation>
    </message>
    <message>
        <source>On the spool</source>
        <translation>På spolen</translation>
    </message>
    <message>
        <source>Add this spool</source>
        <translation>Legg til denne spolen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Angre</translation>
    </message>
    <message>
        <source>Read a list…</source>
        <translation>Les en liste…</translation>
    </message>
    <message>
        <source>Write the list…</source>
        <translation>Skriv listen…</translation>
    </message>
    <message>
        <source>Read a list of spools</source>
        <translation>Les en liste over spoler</translation>
    </message>
    <message>
        <source>Spools (*.spools.json)</source>
        <translation>Spoler (*.spools.json)</translation>
    </message>
    <message>
        <source>Write the list of spools</source>
        <translation>Skriv listen over spoler</translation>
    </message>
    <message>
        <source>bench.spools.json</source>
        <translation>benk.spools.json</translation>
    </message>
    <message>
        <source>name</source>
        <translation>navn</translation>
    </message>
    <message>
        <source>line</source>
        <translation>line</translation>
    </message>
    <message>
        <source>left</source>
        <translation>igjen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no length on a spool</source>
        <translation>&quot;%1&quot; er ingen lengde på en spole</translation>
    </message>
    <message>
        <source>Give what a foot weighs, how fast it sinks and what is left</source>
        <translation>Oppgi hva en fot veier, hvor fort den synker, og hva som er igjen</translation>
    </message>
    <message>
        <source>Give what a foot weighs and what is left</source>
        <translation>Oppgi hva en fot veier, og hva som er igjen</translation>
    </message>
    <message>
        <source>Give the diameter and what is left</source>
        <translation>Oppgi diameteren og hva som er igjen</translation>
    </message>
    <message>
        <source>Choose a spool in the table first</source>
        <translation>Velg en spole i tabellen først</translation>
    </message>
    <message>
        <source>%1 spools read</source>
        <translation>%1 spoler lest</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Skrevet</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Ikke skrevet: %1</translation>
    </message>
    <message>
        <source>No spools yet. Say what lies on the bench: its kind, what a foot of it weighs or how thick it is, and how much is left. Or read a list of spools.</source>
        <translation>Ingen spoler ennå. Oppgi hva som ligger på benken: slaget, hva en fot av det veier eller hvor tykt det er, og hvor mye som er igjen. Eller les inn en spoleliste.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::StripView</name>
    <message>
        <source>What is in the hand is no part that can be read.</source>
        <translation>Det som dras, er ingen del som kan leses.</translation>
    </message>
    <message>
        <source>Choose a part on the line first.</source>
        <translation>Velg en del på lina først.</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Dupliser %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Fjern %1</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Rediger</translation>
    </message>
    <message>
        <source>Move left, towards the rod</source>
        <translation>Flytt til venstre, mot stanga</translation>
    </message>
    <message>
        <source>Move right, towards the fly</source>
        <translation>Flytt til høyre, mot flua</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Dupliser</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>1  the fly</source>
        <translation>1  flua</translation>
    </message>
    <message>
        <source>1 fly</source>
        <translation>1 flue</translation>
    </message>
    <message>
        <source>2  a leader</source>
        <translation>2  en fortom</translation>
    </message>
    <message>
        <source>2 leader</source>
        <translation>2 fortom</translation>
    </message>
    <message>
        <source>3  a tip that carries the fly</source>
        <translation>3  en tupp som bærer flua</translation>
    </message>
    <message>
        <source>3  a tip</source>
        <translation>3  en tupp</translation>
    </message>
    <message>
        <source>4  a head that drives the tip</source>
        <translation>4  en klump som driver tuppen</translation>
    </message>
    <message>
        <source>4  a head</source>
        <translation>4  en klump</translation>
    </message>
    <message>
        <source>5  running line</source>
        <translation>5  skyteline</translation>
    </message>
    <message>
        <source>5 running</source>
        <translation>5 skyteline</translation>
    </message>
    <message>
        <source>The line, from the rod to the fly</source>
        <translation>Lina, fra stanga til flua</translation>
    </message>
    <message>
        <source>Start from a rod</source>
        <translation>Start fra en stang</translation>
    </message>
    <message>
        <source>Copy to the other line</source>
        <translation>Kopier til den andre lina</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SummaryBar</name>
    <message>
        <source>A and B are the same line</source>
        <translation>A og B er samme line</translation>
    </message>
    <message>
        <source>No more difference than is known</source>
        <translation>Ikke større forskjell enn det man vet</translation>
    </message>
    <message>
        <source>B against A: %1</source>
        <translation>B mot A: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TeacherView</name>
    <message>
        <source>The next card</source>
        <translation>Det neste kortet</translation>
    </message>
    <message>
        <source>Notes and answer</source>
        <translation>Notater og svar</translation>
    </message>
    <message>
        <source>All cards</source>
        <translation>Alle kort</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Tilbake</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Videre</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>Svart (B)</translation>
    </message>
    <message>
        <source>Hide numbers (H)</source>
        <translation>Skjul tall (H)</translation>
    </message>
    <message>
        <source>Slow motion (S)</source>
        <translation>Sakte film (S)</translation>
    </message>
    <message>
        <source>Change the rig (E)</source>
        <translation>Endre oppsettet (E)</translation>
    </message>
    <message>
        <source>End (Esc)</source>
        <translation>Slutt (Esc)</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Svar: %1</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Mangler: %1</translation>
    </message>
    <message>
        <source>Card %1 of %2</source>
        <translation>Kort %1 av %2</translation>
    </message>
    <message>
        <source>%1   %2:%3</source>
        <translation>%1   %2:%3</translation>
    </message>
    <message>
        <source>Time of day, and minutes since the show began</source>
        <translation>Klokka, og minutter siden start</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Tile</name>
    <message>
        <source>opens why</source>
        <translation>åpner hvorfor</translation>
    </message>
    <message>
        <source>%1: why? (%2)</source>
        <translation>%1: hvorfor? (%2)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TipsPage</name>
    <message>
        <source>Trim before the knife</source>
        <translation>Kutt, før kniven</translation>
    </message>
    <message>
        <source>Part to trim</source>
        <translation>Del å kutte</translation>
    </message>
    <message>
        <source>off the front</source>
        <translation>foran</translation>
    </message>
    <message>
        <source>off the rear</source>
        <translation>bak</translation>
    </message>
    <message>
        <source>End to trim</source>
        <translation>Ende å kutte</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Ta av</translation>
    </message>
    <message>
        <source>Trim it on the line</source>
        <translation>Kutt den på lina</translation>
    </message>
    <message>
        <source>Divide a spool</source>
        <translation>Del en spole</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Spole</translation>
    </message>
    <message>
        <source>into equal tips</source>
        <translation>i like tupper</translation>
    </message>
    <message>
        <source>as many of one length</source>
        <translation>så mange av én lengde</translation>
    </message>
    <message>
        <source>How to divide</source>
        <translation>Hvordan dele</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Tupper</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Hver</translation>
    </message>
    <message>
        <source>What is this tip? Give any two</source>
        <translation>Hva er denne tuppen? Oppgi to ting</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Lengde</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diameter</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Synker</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Behold den blant mine deler</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Say how much comes off; nothing is cut yet.</source>
        <translation>Si hvor mye som skal av; ingenting er kuttet ennå.</translation>
    </message>
    <message>
        <source>Nothing on the line to trim.</source>
        <translation>Ingenting på lina å kutte.</translation>
    </message>
    <message>
        <source>%1 becomes %2, %3; it ends at %4.</source>
        <translation>%1 blir %2, %3; den slutter på %4.</translation>
    </message>
    <message>
        <source> The loop goes with it.</source>
        <translation> Løkken går med.</translation>
    </message>
    <message>
        <source>Trim %1</source>
        <translation>Kutt %1</translation>
    </message>
    <message>
        <source>No spools yet: read or write them down on the Spools page.</source>
        <translation>Ingen spoler ennå: les inn eller skriv dem opp på siden Spoler.</translation>
    </message>
    <message>
        <source>%1 of %2 finished, cut at %3, %4 each with loops; %5 left.</source>
        <translation>%1 av %2 ferdige, kappet på %3, %4 hver med løkker; %5 igjen.</translation>
    </message>
    <message>
        <source>Without its loops; a pinch of the caliper or a timed sink tell most.</source>
        <translation>Uten løkkene; skyvelære eller målt synketid sier mest.</translation>
    </message>
    <message>
        <source>the trade&apos;s %1</source>
        <translation>bransjens %1</translation>
    </message>
    <message>
        <source>sinks about %1 by its class</source>
        <translation>synker omtrent %1 etter klassen</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>synker %1</translation>
    </message>
    <message>
        <source>mass and length together give its class</source>
        <translation>masse og lengde sammen gir klassen</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> Nearest on the shelf: %1.</source>
        <translation> Nærmest på hylla: %1.</translation>
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
        <translation>Mine tupper</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Beholdt blant mine deler.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TopBar</name>
    <message>
        <source>Menu</source>
        <translation>Meny</translation>
    </message>
    <message>
        <source>Every action, with its key (F10)</source>
        <translation>Hver handling med tasten sin (F10)</translation>
    </message>
    <message>
        <source>Feet or metres, grains or grams, Fahrenheit or Celsius</source>
        <translation>Fot eller meter, grain eller gram, Fahrenheit eller Celsius</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>oppsett uten navn</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, ikke lagret</translation>
    </message>
    <message>
        <source>%1. Click to rename.</source>
        <translation>%1. Klikk for å gi nytt navn.</translation>
    </message>
    <message>
        <source>Rod: %1. Click to change.</source>
        <translation>Stang: %1. Klikk for å endre.</translation>
    </message>
    <message>
        <source>Water: %1. Click to change.</source>
        <translation>Vann: %1. Klikk for å endre.</translation>
    </message>
    <message>
        <source>Units: %1</source>
        <translation>Enheter: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TrialBar</name>
    <message>
        <source>Take it</source>
        <translation>Ta den</translation>
    </message>
    <message>
        <source>Puts it on the line (Enter)</source>
        <translation>Setter den på lina (Enter)</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Legg tilbake</translation>
    </message>
    <message>
        <source>The line as it was (Esc)</source>
        <translation>Lina som den var (Esc)</translation>
    </message>
    <message>
        <source>Trying %1</source>
        <comment>a tip that is shown, not yet taken</comment>
        <translation>Prøver %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TurnoverButton</name>
    <message>
        <source>opens why, and draws the drive on the chart</source>
        <translation>åpner hvorfor, og tegner driv i diagrammet</translation>
    </message>
    <message>
        <source>Turnover: why? (%1)</source>
        <translation>Utrulling: hvorfor? (%1)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ValueRow</name>
    <message>
        <source>Reset</source>
        <translation>Nullstill</translation>
    </message>
    <message>
        <source>Reset: %1</source>
        <translation>Nullstill: %1</translation>
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
        <translation>ingen dybde beregnet</translation>
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
        <translation>Oppsett (*.rig.json);;Alle filer (*)</translation>
    </message>
    <message>
        <source>Wallet - Grainwise</source>
        <translation>Mappe - Grainwise</translation>
    </message>
    <message>
        <source>Rigs for the trip</source>
        <translation>Oppsett for turen</translation>
    </message>
    <message>
        <source>Save the card</source>
        <translation>Lagre pakkekortet</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Rigs and their flies</source>
        <translation>Oppsett og fluene deres</translation>
    </message>
    <message>
        <source>Rigs of the trip</source>
        <translation>Oppsett for turen</translation>
    </message>
    <message>
        <source>Add rigs…</source>
        <translation>Legg til oppsett…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Fjern</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Høler</translation>
    </message>
    <message>
        <source>Pools of the trip</source>
        <translation>Høler på turen</translation>
    </message>
    <message>
        <source>Tips at most</source>
        <translation>Høyst antall tupper</translation>
    </message>
    <message>
        <source>any</source>
        <translation>uansett</translation>
    </message>
    <message>
        <source>one length</source>
        <translation>én lengde</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays</source>
        <translation>Bare tupper av én lengde, så kastbevegelsen er den samme</translation>
    </message>
    <message>
        <source>Kept and left out (Enter takes it back)</source>
        <translation>Beholdt og utelatt (Enter tar det tilbake)</translation>
    </message>
    <message>
        <source>Tips that are kept or left out</source>
        <translation>Tupper som er beholdt eller utelatt</translation>
    </message>
    <message>
        <source>Take along in any case</source>
        <translation>Ta med uansett</translation>
    </message>
    <message>
        <source>take along in any case…</source>
        <translation>ta med uansett…</translation>
    </message>
    <message>
        <source>Tips against pools and flies</source>
        <translation>Tupper mot høler og fluer</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behold</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Utelat</translation>
    </message>
    <message>
        <source>Card as PDF…</source>
        <translation>Kort som PDF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Lukk</translation>
    </message>
    <message>
        <source>no fly yet: left out</source>
        <translation>ingen flue ennå: utelatt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>rig: fly</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>kept: %1</source>
        <translation>beholdt: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>utelatt: %1</translation>
    </message>
    <message>
        <source>1 tip for the trip</source>
        <translation>1 tupp for turen</translation>
    </message>
    <message>
        <source>%1 tips for the trip</source>
        <translation>%1 tupper for turen</translation>
    </message>
    <message>
        <source>; fewer will not do</source>
        <translation>; færre holder ikke</translation>
    </message>
    <message>
        <source>; take a spare of it</source>
        <translation>; ta en i reserve</translation>
    </message>
    <message>
        <source>; take a spare of %1 and of %2</source>
        <translation>; ta en i reserve av %1 og av %2</translation>
    </message>
    <message>
        <source>Nothing for %1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>Ingenting for %1, %2: %3</translation>
    </message>
    <message>
        <source>Every pool and fly has a tip, or needs none.</source>
        <translation>Hver høl og flue har en tupp, eller trenger ingen.</translation>
    </message>
    <message>
        <source>Depths are estimates, no guide to wading. Local rules on weighted lines and flies decide.</source>
        <translation>Dybdene er anslag, ingen rettesnor for vading. Lokale regler om tyngede liner og fluer bestemmer.</translation>
    </message>
    <message>
        <source>The card is in %1.</source>
        <translation>Kortet ligger i %1.</translation>
    </message>
    <message>
        <source>The card was not written: %1</source>
        <translation>Kortet ble ikke skrevet: %1</translation>
    </message>
    <message>
        <source>Cut this wallet</source>
        <translation>Kapp denne mappen</translation>
    </message>
    <message>
        <source>Print the card…</source>
        <translation>Skriv ut kortet…</translation>
    </message>
    <message>
        <source>No tip is needed on this trip.</source>
        <translation>Ingen tupp trengs på denne turen.</translation>
    </message>
    <message>
        <source>Nothing is packed yet.</source>
        <translation>Ingenting er pakket ennå.</translation>
    </message>
    <message>
        <source>How far the packing is</source>
        <translation>Hvor langt pakkingen er kommet</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Pack again</source>
        <translation>Pakk på nytt</translation>
    </message>
    <message>
        <source>Stopped: nothing new is packed.</source>
        <translation>Stoppet: ikke noe nytt er pakket.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Mappe</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WaterPanel</name>
    <message>
        <source>Name of the water</source>
        <translation>Navn på vannet</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Strøm i overflaten</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Dybde</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Salt, g/kg</source>
        <translation>Salt, g/kg</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Tall for lina, ingen rettesnor for vading.</translation>
    </message>
    <message>
        <source>or: a leaf drifts</source>
        <translation>eller: et blad driver</translation>
    </message>
    <message>
        <source>in seconds</source>
        <translation>på sekunder</translation>
    </message>
    <message>
        <source>Change the water</source>
        <translation>Endre vannet</translation>
    </message>
    <message>
        <source>Angle, degrees</source>
        <translation>Vinkel, grader</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>For den landede lina, nedenfor rett over</translation>
    </message>
    <message>
        <source>Mend, seconds</source>
        <translation>Mending, sekunder</translation>
    </message>
    <message>
        <source>How long the line drifts free before it comes tight</source>
        <translation>Hvor lenge lina driver fritt før den strammes</translation>
    </message>
    <message>
        <source>Change how it is fished</source>
        <translation>Endre hvordan det fiskes</translation>
    </message>
    <message>
        <source>Or a pool of yours</source>
        <translation>Eller en av dine høler</translation>
    </message>
    <message>
        <source>choose a pool…</source>
        <translation>velg en høl…</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Gå til %1</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bunn</translation>
    </message>
    <message>
        <source>That would be over %1: check the seconds.</source>
        <translation>Det ville vært over %1: sjekk sekundene.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WayOut</name>
    <message>
        <source>There is nothing in it yet.</source>
        <translation>Det er ikke noe i den ennå.</translation>
    </message>
    <message>
        <source>Copied as a picture: %1</source>
        <translation>Kopiert som bilde: %1</translation>
    </message>
    <message>
        <source>Copied as a table: %1</source>
        <translation>Kopiert som tabell: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Skrevet: %1</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Lagre bildet</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bilde (*.png)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Tegning (*.svg)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papir (*.pdf)</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Lagre tabellen</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabell (*.csv)</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Kopier bilde</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Kopier tabell</translation>
    </message>
    <message>
        <source>Save picture…</source>
        <translation>Lagre bilde…</translation>
    </message>
    <message>
        <source>Save table…</source>
        <translation>Lagre tabell…</translation>
    </message>
    <message>
        <source>%1: the name should end in .png, .svg or .pdf</source>
        <translation>%1: navnet bør ende på .png, .svg eller .pdf</translation>
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
        <translation>Vekta viser</translation>
    </message>
    <message>
        <source>Measured length</source>
        <translation>Målt lengde</translation>
    </message>
    <message>
        <source>scale shows 0.1 gr</source>
        <translation>vekta viser 0,1 gr</translation>
    </message>
    <message>
        <source>scale shows 1 gr</source>
        <translation>vekta viser 1 gr</translation>
    </message>
    <message>
        <source>scale shows 0.1 g</source>
        <translation>vekta viser 0,1 g</translation>
    </message>
    <message>
        <source>kitchen scale, 1 g</source>
        <translation>kjøkkenvekt, 1 g</translation>
    </message>
    <message>
        <source>Smallest step of the scale</source>
        <translation>Minste trinn på vekta</translation>
    </message>
    <message>
        <source>Enter: weigh and go on</source>
        <translation>Enter: vei og gå videre</translation>
    </message>
    <message>
        <source>Not weighed</source>
        <translation>Ikke veid</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Veiing</translation>
    </message>
    <message>
        <source>part</source>
        <translation>del</translation>
    </message>
    <message>
        <source>meant</source>
        <translation>ment</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>vekt</translation>
    </message>
    <message>
        <source>off</source>
        <translation>avvik</translation>
    </message>
    <message>
        <source>a foot weighs</source>
        <translation>en fot veier</translation>
    </message>
    <message>
        <source>Nothing on the line to weigh</source>
        <translation>Ingenting på lina å veie</translation>
    </message>
    <message>
        <source>weighed already; a new number takes its place</source>
        <translation>veid allerede; et nytt tall tar plassen</translation>
    </message>
    <message>
        <source>; %1</source>
        <translation>; %1</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>Vei %1</translation>
    </message>
    <message>
        <source>Take the weighing back</source>
        <translation>Ta tilbake veiingen</translation>
    </message>
    <message>
        <source>meant (%1)</source>
        <translation>ment (%1)</translation>
    </message>
    <message>
        <source>scale (%1)</source>
        <translation>vekt (%1)</translation>
    </message>
    <message>
        <source>a foot weighs (%1)</source>
        <translation>en fot veier (%1)</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation>%1: %2 blir %3</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3, %4</source>
        <translation>%1: %2 blir %3, %4</translation>
    </message>
    <message>
        <source>No reading of the rig changes.</source>
        <translation>Ingen avlesning av oppsettet endrer seg.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Count its loops</source>
        <translation>Tell med løkkene</translation>
    </message>
    <message>
        <source>meant %1; its loops, %2, are not counted yet</source>
        <translation>ment %1; løkkene, %2, er ikke regnet med ennå</translation>
    </message>
    <message>
        <source>meant %1, of it loops %2 and splice %3</source>
        <translation>ment %1, herav løkker %2 og spleis %3</translation>
    </message>
    <message>
        <source>meant %1: type what the scale shows, then Enter</source>
        <translation>ment %1: skriv det vekta viser, og trykk Enter</translation>
    </message>
    <message>
        <source>Put loops on %1</source>
        <translation>Sett løkker på %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WhyPanel</name>
    <message>
        <source>The figures</source>
        <translation>Tallene</translation>
    </message>
    <message>
        <source>How they are put together</source>
        <translation>Hvordan de er satt sammen</translation>
    </message>
    <message>
        <source>The limits, and whose they are</source>
        <translation>Grensene, og hvem sine</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Hvorfor</translation>
    </message>
</context>
</TS>
