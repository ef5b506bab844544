<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>Bench</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>nailon %1</translation>
    </message>
    <message>
        <source>fluorocarbon %1</source>
        <translation>fluorocarbono %1</translation>
    </message>
    <message>
        <source>floating %1</source>
        <translation>flotante %1</translation>
    </message>
    <message>
        <source>sinking %1</source>
        <translation>hundible %1</translation>
    </message>
    <message>
        <source>sinking %1, %2</source>
        <translation>hundible %1, %2</translation>
    </message>
    <message>
        <source>%1, piece %2</source>
        <translation>%1, pieza %2</translation>
    </message>
    <message>
        <source>%1, sinking piece</source>
        <translation>%1, pieza hundible</translation>
    </message>
    <message>
        <source>%1, floating piece</source>
        <translation>%1, pieza flotante</translation>
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
        <translation>%1: no hay tal bobina, hacen falta %2. Sin cortar: %3.</translation>
    </message>
    <message>
        <source>%1: %2 short. Not cut: %3.</source>
        <translation>%1: faltan %2. Sin cortar: %3.</translation>
    </message>
    <message>
        <source>%1: enough in all, but no spool is long enough. Not cut: %2.</source>
        <translation>%1: en total alcanza, pero ninguna bobina es bastante larga. Sin cortar: %2.</translation>
    </message>
    <message>
        <source>far too light: were these grams?</source>
        <translation>demasiado ligero: ¿eran gramos?</translation>
    </message>
    <message>
        <source>far too heavy: were these grains?</source>
        <translation>demasiado pesado: ¿eran grains?</translation>
    </message>
    <message>
        <source>%1 light, %2</source>
        <translation>le faltan %1, %2</translation>
    </message>
    <message>
        <source>%1 heavy, %2</source>
        <translation>le sobran %1, %2</translation>
    </message>
    <message>
        <source>as it should be, within %1</source>
        <translation>como debe ser, con margen de %1</translation>
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
        <translation>Lo más débil: el nudo de la mosca, unas %1</translation>
    </message>
    <message>
        <source>Weakest: the knot from %1 to %2, about %3</source>
        <translation>Lo más débil: el nudo de %1 a %2, unas %3</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>línea %1: %2</translation>
    </message>
    <message>
        <source>as it should be with its loops</source>
        <translation>como debe ser, con sus lazos</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
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
        <translation>algo somero: %1</translation>
    </message>
    <message>
        <source>too shallow: %1</source>
        <translation>demasiado somero: %1</translation>
    </message>
    <message>
        <source>rather deep: %1</source>
        <translation>algo hondo: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>demasiado hondo: %1</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>queda en el fondo</translation>
    </message>
    <message>
        <source>stays on top</source>
        <translation>se queda arriba</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>mismo gesto</translation>
    </message>
    <message>
        <source>longer sweep</source>
        <translation>barrido más largo</translation>
    </message>
    <message>
        <source>shorter sweep</source>
        <translation>barrido más corto</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>otro lance</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, levantada más lenta</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, levantada más rápida</translation>
    </message>
    <message>
        <source>carries the fly</source>
        <translation>lleva la mosca</translation>
    </message>
    <message>
        <source>only just carries the fly</source>
        <translation>lleva la mosca por poco</translation>
    </message>
    <message>
        <source>does not carry the fly</source>
        <translation>no lleva la mosca</translation>
    </message>
    <message>
        <source>will land in a heap</source>
        <translation>caerá amontonada</translation>
    </message>
    <message>
        <source>probably will not turn over</source>
        <translation>probablemente no se despliegue</translation>
    </message>
    <message>
        <source>turns over with little speed to spare</source>
        <translation>se despliega con poca reserva</translation>
    </message>
    <message>
        <source>turns over with speed to spare</source>
        <translation>se despliega con reserva</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a figure: what it means</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 of the head</source>
        <translation>%1 de la cabeza</translation>
    </message>
    <message>
        <source>tip %1 × fly</source>
        <translation>punta %1 × mosca</translation>
    </message>
    <message>
        <source>hinges or collapses at the joint</source>
        <translation>hace bisagra o se desploma en la unión</translation>
    </message>
    <message>
        <source>wrong share of the head</source>
        <translation>proporción equivocada de la cabeza</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>demasiado poco en el agua</translation>
    </message>
    <message>
        <source>wrong length on this rod</source>
        <translation>longitud equivocada para esta caña</translation>
    </message>
    <message>
        <source>the fly is too heavy for it</source>
        <translation>la mosca le pesa demasiado</translation>
    </message>
    <message>
        <source>will not turn over</source>
        <translation>no se desplegará</translation>
    </message>
    <message>
        <source>another stroke</source>
        <translation>otro gesto</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>demasiado somero</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>demasiado hondo</translation>
    </message>
    <message>
        <source>not in the wanted water</source>
        <translation>fuera del agua deseada</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>sin punta</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>en el fondo</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>a %1 de hondo</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>en la superficie</translation>
    </message>
    <message>
        <source>No head to put a tip on: start from a rod, or drop a head on the line.</source>
        <translation>No hay cabeza para una punta: empiece desde una caña o suelte una cabeza en la línea.</translation>
    </message>
    <message>
        <source>No fly, and everything behind it is there to carry it: drop a fly on the line first.</source>
        <translation>No hay mosca, y todo lo que va detrás está para llevarla: suelte primero una mosca en la línea.</translation>
    </message>
    <message>
        <source>The fly has no mass yet: weigh it, or build it from hook, eyes and wire.</source>
        <translation>La mosca aún no tiene masa: pésela, o constrúyala con anzuelo, ojos e hilo de lastre.</translation>
    </message>
    <message>
        <source>The shelf has no tip and no coated leader: add some to it.</source>
        <translation>En el estante no hay puntas ni bajos recubiertos: añada algunos.</translation>
    </message>
    <message>
        <source>No pool yet, so depth is not judged: choose the pool to be fished.</source>
        <translation>Aún no hay pozo, así que no se juzga la profundidad: elija el pozo que se va a pescar.</translation>
    </message>
    <message>
        <source>This pool does not say where the fly is wanted, so depth is not judged: say so under Pools.</source>
        <translation>Este pozo no dice dónde se quiere la mosca, así que no se juzga la profundidad: indíquelo en Pozos.</translation>
    </message>
    <message>
        <source>Nothing on the shelf will do; what comes nearest stands first. Look under Fixes, or try another fly or head.</source>
        <translation>Nada del estante sirve; lo más cercano va primero. Mire en Arreglos, o pruebe otra mosca u otra cabeza.</translation>
    </message>
    <message>
        <source>about %1 down, where it is wanted</source>
        <translation>unos %1 de hondo, donde se quiere</translation>
    </message>
    <message>
        <source>about %1 down, nearer to it</source>
        <translation>unos %1 de hondo, más cerca</translation>
    </message>
    <message>
        <source>cast at %1°</source>
        <translation>lance a %1°</translation>
    </message>
    <message>
        <source>%1 s of slack</source>
        <translation>%1 s de línea floja</translation>
    </message>
    <message>
        <source>%1 of line out</source>
        <translation>%1 de línea fuera</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a change on the water: what it does</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing was tried</source>
        <translation>no se probó nada</translation>
    </message>
    <message>
        <source>%1 would do, but for the limits set</source>
        <translation>%1 serviría, si no fuera por los límites puestos</translation>
    </message>
    <message>
        <source>nearest is %1: %2</source>
        <translation>lo más cercano es %1: %2</translation>
    </message>
    <message>
        <source>the joint</source>
        <translation>la unión</translation>
    </message>
    <message>
        <source>the head on this rod</source>
        <translation>la cabeza en esta caña</translation>
    </message>
    <message>
        <source>the length on this rod</source>
        <translation>la longitud en esta caña</translation>
    </message>
    <message>
        <source>the tip&apos;s share of the head</source>
        <translation>la parte de la punta en la cabeza</translation>
    </message>
    <message>
        <source>the line in the water</source>
        <translation>la línea en el agua</translation>
    </message>
    <message>
        <source>the fly against the tip</source>
        <translation>la mosca frente a la punta</translation>
    </message>
    <message>
        <source>the fly against the leader</source>
        <translation>la mosca frente al bajo</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>cómo lleva la línea la mosca</translation>
    </message>
    <message>
        <source>the turnover</source>
        <translation>el despliegue</translation>
    </message>
    <message>
        <source>the depth</source>
        <translation>la profundidad</translation>
    </message>
    <message>
        <source>trim %1 off the front of %2</source>
        <translation>recortar %1 por delante de %2</translation>
    </message>
    <message>
        <source>trim %1 off the rear of %2</source>
        <translation>recortar %1 por detrás de %2</translation>
    </message>
    <message>
        <source>cut %1 off the fly end of %2</source>
        <translation>cortar %1 del extremo de mosca de %2</translation>
    </message>
    <message>
        <source>cut %1 off the rod end of %2</source>
        <translation>cortar %1 del extremo de caña de %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is changed: for which part</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>put on a tip: %1</source>
        <translation>poner una punta: %1</translation>
    </message>
    <message>
        <source>take off %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>cast at %1° instead of %2°</source>
        <translation>lanzar a %1° en vez de %2°</translation>
    </message>
    <message>
        <source>%1 s of slack instead of %2</source>
        <translation>%1 s de línea floja en vez de %2</translation>
    </message>
    <message>
        <source>%1 of line out instead of %2</source>
        <translation>%1 de línea fuera en vez de %2</translation>
    </message>
    <message>
        <source>tie %1 shorter by %2</source>
        <translation>anudar %1 más corto en %2</translation>
    </message>
    <message>
        <source>tie %1 longer by %2</source>
        <translation>anudar %1 más largo en %2</translation>
    </message>
    <message>
        <source>put %1 behind the head</source>
        <translation>poner %1 detrás de la cabeza</translation>
    </message>
    <message>
        <source>change the tip</source>
        <translation>cambiar la punta</translation>
    </message>
    <message>
        <source>take the tip off</source>
        <translation>quitar la punta</translation>
    </message>
    <message>
        <source>change the leader</source>
        <translation>cambiar el bajo</translation>
    </message>
    <message>
        <source>change the tippet</source>
        <translation>cambiar el terminal</translation>
    </message>
    <message>
        <source>change the fly</source>
        <translation>cambiar la mosca</translation>
    </message>
    <message>
        <source>change the head</source>
        <translation>cambiar la cabeza</translation>
    </message>
    <message>
        <source>change the swing</source>
        <translation>cambiar el swing</translation>
    </message>
    <message>
        <source>cut the tip</source>
        <translation>cortar la punta</translation>
    </message>
    <message>
        <source>tie the leader anew</source>
        <translation>anudar de nuevo el bajo</translation>
    </message>
    <message>
        <source>change the extension</source>
        <translation>cambiar la extensión</translation>
    </message>
    <message>
        <source>trim the head</source>
        <translation>recortar la cabeza</translation>
    </message>
    <message>
        <source>eases %1</source>
        <translation>alivia %1</translation>
    </message>
    <message>
        <source>repairs %1</source>
        <translation>arregla %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what a change repairs; what it does to the stroke</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>No pool is chosen: tick the pools of the trip.</source>
        <translation>No hay ningún pozo elegido: marque los pozos del viaje.</translation>
    </message>
    <message>
        <source>Nothing on the shelf serves any pool and fly of this trip: try other flies or another head.</source>
        <translation>Nada del estante sirve para ningún pozo y mosca de este viaje: pruebe otras moscas u otra cabeza.</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>unión</translation>
    </message>
    <message>
        <source>tip share</source>
        <translation>parte de punta</translation>
    </message>
    <message>
        <source>line in the water</source>
        <translation>línea en el agua</translation>
    </message>
    <message>
        <source>length on the rod</source>
        <translation>longitud en la caña</translation>
    </message>
    <message>
        <source>fly against tip</source>
        <translation>mosca contra punta</translation>
    </message>
    <message>
        <source>carrying the fly</source>
        <translation>llevar la mosca</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>despliegue</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>stroke</source>
        <translation>gesto</translation>
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
        <translation>%1 más largo</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 más corto</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 más pesado</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 más ligero</translation>
    </message>
    <message>
        <source>%1 of it sink instead of %2</source>
        <translation>se hunden %1 en vez de %2</translation>
    </message>
    <message>
        <source>sinks at %1 instead of %2</source>
        <translation>se hunde a %1 en vez de %2</translation>
    </message>
    <message>
        <source>%1 at the rod end instead of %2</source>
        <translation>%1 en el extremo de caña en vez de %2</translation>
    </message>
    <message>
        <source>%1 at the fly end instead of %2</source>
        <translation>%1 en el extremo de mosca en vez de %2</translation>
    </message>
    <message>
        <source>%1 at the butt instead of %2</source>
        <translation>%1 en el extremo grueso en vez de %2</translation>
    </message>
    <message>
        <source>%1 at the front instead of %2</source>
        <translation>%1 delante en vez de %2</translation>
    </message>
    <message>
        <source>another taper</source>
        <translation>otro perfil</translation>
    </message>
    <message>
        <source>bulkier</source>
        <translation>más voluminoso</translation>
    </message>
    <message>
        <source>sparser</source>
        <translation>más ralo</translation>
    </message>
    <message>
        <source>more compact</source>
        <translation>más compacto</translation>
    </message>
    <message>
        <source>less compact</source>
        <translation>menos compacto</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>length %1, now %2</source>
        <translation>longitud %1, ahora %2</translation>
    </message>
    <message>
        <source>line number %1, now %2</source>
        <translation>número de línea %1, ahora %2</translation>
    </message>
    <message>
        <source>head from %1, now %2</source>
        <translation>cabeza desde %1, ahora %2</translation>
    </message>
    <message>
        <source>head up to %1, now %2</source>
        <translation>cabeza hasta %1, ahora %2</translation>
    </message>
    <message>
        <source>surface %1, now %2</source>
        <translation>superficie %1, ahora %2</translation>
    </message>
    <message>
        <source>%1 deep, now %2</source>
        <translation>%1 de hondo, ahora %2</translation>
    </message>
    <message>
        <source>%1, now %2</source>
        <translation>%1, ahora %2</translation>
    </message>
    <message>
        <source>salt %1 g/kg, now %2</source>
        <translation>sal %1 g/kg, ahora %2</translation>
    </message>
    <message>
        <source>line speed %1, now %2</source>
        <translation>velocidad de línea %1, ahora %2</translation>
    </message>
    <message>
        <source>loop %1, now %2</source>
        <translation>bucle %1, ahora %2</translation>
    </message>
    <message>
        <source>launched at %1°, now %2°</source>
        <translation>salida a %1°, ahora %2°</translation>
    </message>
    <message>
        <source>rod tip at %1, now %2</source>
        <translation>puntera a %1, ahora %2</translation>
    </message>
    <message>
        <source>overhang %1, now %2</source>
        <translation>vuelo %1, ahora %2</translation>
    </message>
    <message>
        <source>line out %1, now %2</source>
        <translation>línea fuera %1, ahora %2</translation>
    </message>
    <message>
        <source>angle %1°, now %2°</source>
        <translation>ángulo %1°, ahora %2°</translation>
    </message>
    <message>
        <source>slack %1 s, now %2 s</source>
        <translation>línea floja %1 s, ahora %2 s</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no joint</source>
        <translation>sin unión</translation>
    </message>
    <message>
        <source>Now lands in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Ahora cae amontonada: más velocidad de línea, un bajo más corto o una mosca menor</translation>
    </message>
    <message>
        <source>Now probably does not turn over: more line speed or a smaller fly</source>
        <translation>Ahora probablemente no se despliegue: más velocidad de línea o una mosca menor</translation>
    </message>
    <message>
        <source>Now turns over with little speed to spare: a clean stroke</source>
        <translation>Ahora se despliega con poca reserva: un gesto limpio</translation>
    </message>
    <message>
        <source>Now turns over with speed to spare</source>
        <translation>Ahora se despliega con reserva</translation>
    </message>
    <message>
        <source>Nothing to turn over</source>
        <translation>Nada que desplegar</translation>
    </message>
    <message>
        <source>Now there is a line to turn over</source>
        <translation>Ahora hay línea que desplegar</translation>
    </message>
    <message>
        <source>Turns over more easily</source>
        <translation>Se despliega con más facilidad</translation>
    </message>
    <message>
        <source>Turns over less easily</source>
        <translation>Se despliega con menos facilidad</translation>
    </message>
    <message>
        <source>The line now does not carry the fly</source>
        <translation>La línea ahora no lleva la mosca</translation>
    </message>
    <message>
        <source>The line now only just carries the fly</source>
        <translation>La línea ahora lleva la mosca por poco</translation>
    </message>
    <message>
        <source>The line now carries the fly</source>
        <translation>La línea ahora lleva la mosca</translation>
    </message>
    <message>
        <source>Carries the fly better</source>
        <translation>Lleva mejor la mosca</translation>
    </message>
    <message>
        <source>Carries the fly less well</source>
        <translation>Lleva peor la mosca</translation>
    </message>
    <message>
        <source>Now kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Ahora da latigazo: una mosca más pesada, un bajo más largo o una punta más ligera</translation>
    </message>
    <message>
        <source>Now dies before the fly is round</source>
        <translation>Ahora muere antes de que llegue la mosca</translation>
    </message>
    <message>
        <source>The fly comes round faster</source>
        <translation>La mosca llega más rápida</translation>
    </message>
    <message>
        <source>The fly comes round softer</source>
        <translation>La mosca llega más suave</translation>
    </message>
    <message>
        <source>the joints</source>
        <translation>las uniones</translation>
    </message>
    <message>
        <source>the head on the rod</source>
        <translation>la cabeza en la caña</translation>
    </message>
    <message>
        <source>the length of the line</source>
        <translation>la longitud de la línea</translation>
    </message>
    <message>
        <source>the share of the tip</source>
        <translation>la parte de la punta</translation>
    </message>
    <message>
        <source>the anchor</source>
        <translation>el anclaje</translation>
    </message>
    <message>
        <source>what the fly asks of the line</source>
        <translation>lo que la mosca pide a la línea</translation>
    </message>
    <message>
        <source>how the line carries the fly</source>
        <translation>cómo lleva la línea la mosca</translation>
    </message>
    <message>
        <source>turnover</source>
        <translation>despliegue</translation>
    </message>
    <message>
        <source>how fast the fly comes round</source>
        <translation>cómo de rápida llega la mosca</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>the time of the swing</source>
        <translation>el tiempo del swing</translation>
    </message>
    <message>
        <source>the stroke</source>
        <translation>el gesto</translation>
    </message>
    <message>
        <source>%1, another</source>
        <translation>%1, otro</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Only A has %1</source>
        <translation>Solo A tiene %1</translation>
    </message>
    <message>
        <source>Only B has %1</source>
        <translation>Solo B tiene %1</translation>
    </message>
    <message>
        <source>Another rod</source>
        <translation>Otra caña</translation>
    </message>
    <message>
        <source>Another water</source>
        <translation>Otra agua</translation>
    </message>
    <message>
        <source>Another cast</source>
        <translation>Otro lance</translation>
    </message>
    <message>
        <source>Another swing</source>
        <translation>Otro swing</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 a %2 %3</translation>
    </message>
    <message>
        <source>both on the bottom</source>
        <translation>ambos en el fondo</translation>
    </message>
    <message>
        <source>B lies on the bottom</source>
        <translation>B queda en el fondo</translation>
    </message>
    <message>
        <source>A lies on the bottom</source>
        <translation>A queda en el fondo</translation>
    </message>
    <message>
        <source>no difference for certain</source>
        <translation>sin diferencia segura</translation>
    </message>
    <message>
        <source>B %1 deeper (%2)</source>
        <translation>B %1 más hondo (%2)</translation>
    </message>
    <message>
        <source>B %1 shallower (%2)</source>
        <translation>B %1 más somero (%2)</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>mismo gesto</translation>
    </message>
    <message>
        <source>a longer sweep</source>
        <translation>un barrido más largo</translation>
    </message>
    <message>
        <source>a shorter sweep</source>
        <translation>un barrido más corto</translation>
    </message>
    <message>
        <source>a different cast</source>
        <translation>otro lance</translation>
    </message>
    <message>
        <source>%1, slower lift</source>
        <translation>%1, levantada más lenta</translation>
    </message>
    <message>
        <source>%1, quicker lift</source>
        <translation>%1, levantada más rápida</translation>
    </message>
    <message>
        <source>Lies on the bottom as before</source>
        <translation>Queda en el fondo como antes</translation>
    </message>
    <message>
        <source>Now lies on the bottom</source>
        <translation>Ahora queda en el fondo</translation>
    </message>
    <message>
        <source>Now swims clear of the bottom</source>
        <translation>Ahora nada libre del fondo</translation>
    </message>
    <message>
        <source>Swims %1 deeper (%2)</source>
        <translation>Nada %1 más hondo (%2)</translation>
    </message>
    <message>
        <source>Swims %1 shallower (%2)</source>
        <translation>Nada %1 más somero (%2)</translation>
    </message>
    <message>
        <source>wrong head for this rod</source>
        <translation>cabeza equivocada para esta caña</translation>
    </message>
    <message>
        <source>fits the rod</source>
        <translation>va bien con la caña</translation>
    </message>
    <message>
        <source>a touch light</source>
        <translation>algo ligera</translation>
    </message>
    <message>
        <source>a touch heavy</source>
        <translation>algo pesada</translation>
    </message>
    <message>
        <source>Line of %1 rods</source>
        <translation>Línea de %1 cañas</translation>
    </message>
    <message>
        <source>Tip %1 of the head</source>
        <translation>Punta %1 de la cabeza</translation>
    </message>
    <message>
        <source>Anchor of %1 rods</source>
        <translation>Anclaje de %1 cañas</translation>
    </message>
    <message>
        <source>Tip %1 × the fly</source>
        <translation>Punta %1 × la mosca</translation>
    </message>
    <message>
        <source>Leader %1 × the fly</source>
        <translation>Bajo %1 × la mosca</translation>
    </message>
    <message>
        <source>Now it has a depth</source>
        <translation>Ahora tiene una profundidad</translation>
    </message>
    <message>
        <source>Now it has no depth</source>
        <translation>Ahora no tiene profundidad</translation>
    </message>
    <message>
        <source>Takes %1 s longer to come round</source>
        <translation>Tarda %1 s más en cruzar</translation>
    </message>
    <message>
        <source>Comes round %1 s sooner</source>
        <translation>Cruza %1 s antes</translation>
    </message>
    <message>
        <source>Now it comes round</source>
        <translation>Ahora llega a cruzar</translation>
    </message>
    <message>
        <source>Now it never comes round</source>
        <translation>Ahora nunca llega a cruzar</translation>
    </message>
    <message>
        <source>No more than is known: %1</source>
        <translation>No más de lo que se sabe: %1</translation>
    </message>
    <message>
        <source>Choose it on the lines</source>
        <translation>Señalarlo en las líneas</translation>
    </message>
    <message>
        <source>no cast to show</source>
        <translation>no hay lance que mostrar</translation>
    </message>
    <message>
        <source>the fly is round after %1 s</source>
        <translation>la mosca llega a los %1 s</translation>
    </message>
    <message>
        <source>does not turn over</source>
        <translation>no se despliega</translation>
    </message>
    <message>
        <source>no swing to show</source>
        <translation>no hay swing que mostrar</translation>
    </message>
    <message>
        <source>straight below after %1 s</source>
        <translation>recta aguas abajo a los %1 s</translation>
    </message>
    <message>
        <source>never comes straight below</source>
        <translation>nunca llega recta aguas abajo</translation>
    </message>
    <message>
        <source>A is better here</source>
        <translation>A es mejor aquí</translation>
    </message>
    <message>
        <source>B is better here</source>
        <translation>B es mejor aquí</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>sin diferencia</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>no más de lo que se sabe</translation>
    </message>
    <message>
        <source>both fit</source>
        <translation>ambos van bien</translation>
    </message>
    <message>
        <source>no better in either</source>
        <translation>ninguno es mejor</translation>
    </message>
    <message>
        <source>on the bottom</source>
        <translation>en el fondo</translation>
    </message>
    <message>
        <source>Joint %1</source>
        <translation>Unión %1</translation>
    </message>
    <message>
        <source>Head %1</source>
        <translation>Cabeza %1</translation>
    </message>
    <message>
        <source>the usual height</source>
        <comment>of a river</comment>
        <translation>la altura habitual</translation>
    </message>
    <message>
        <source>air at %1, now %2</source>
        <translation>aire a %1, ahora %2</translation>
    </message>
    <message>
        <source>another bed</source>
        <translation>otro fondo</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>card %1: %2</source>
        <translation>ficha %1: %2</translation>
    </message>
    <message>
        <source>This deck has no cards yet.</source>
        <translation>Esta serie aún no tiene fichas.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>Depths are estimates and no guide to wading.</source>
        <translation>Las profundidades son estimaciones y no sirven de guía para vadear.</translation>
    </message>
    <message>
        <source>%1, card %2 of %3</source>
        <translation>%1, ficha %2 de %3</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>no fly yet</source>
        <translation>aún sin mosca</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>fondo</translation>
    </message>
    <message>
        <source>no swing</source>
        <translation>sin swing</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>en la superficie</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Cabeza en caña</translation>
    </message>
    <message>
        <source>%1 in %2–%3</source>
        <translation>%1 en %2–%3</translation>
    </message>
    <message>
        <source>Working length</source>
        <translation>Longitud de trabajo</translation>
    </message>
    <message>
        <source>%1 rods</source>
        <translation>%1 cañas</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Parte de punta</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 de %3</translation>
    </message>
    <message>
        <source>no rule for this style of head</source>
        <translation>sin regla para este estilo de cabeza</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>En el agua</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Mosca frente a punta</translation>
    </message>
    <message>
        <source>%1 ×: %2 on %3</source>
        <translation>%1 ×: %2 sobre %3</translation>
    </message>
    <message>
        <source>Fly against leader</source>
        <translation>Mosca frente a bajo</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>What each foot weighs: %1, over %2 from the back of the head</source>
        <translation>Lo que pesa cada pie: %1, en %2 desde la parte trasera de la cabeza</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>metros</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Despliegue</translation>
    </message>
    <message>
        <source>Circle: fits. Triangle: watch it. Square: wrong. Limits are common practice or ours.</source>
        <translation>Círculo: va bien. Triángulo: atención. Cuadrado: mal. Los límites son práctica común o nuestros.</translation>
    </message>
    <message>
        <source>How deep on the swing, %1, an estimate: four swings in five</source>
        <translation>Qué hondo en el swing, %1, una estimación: cuatro swings de cada cinco</translation>
    </message>
    <message>
        <source>State a pool&apos;s speed and depth to have its depths here.</source>
        <translation>Indique la corriente y el fondo de un pozo para tener aquí sus profundidades.</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pozo</translation>
    </message>
    <message>
        <source>Deep</source>
        <translation>Hondo</translation>
    </message>
    <message>
        <source>Slower water</source>
        <translation>Agua más lenta</translation>
    </message>
    <message>
        <source>As stated</source>
        <translation>Como se indica</translation>
    </message>
    <message>
        <source>Faster water</source>
        <translation>Agua más rápida</translation>
    </message>
    <message>
        <source>This water</source>
        <translation>Esta agua</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Wallet: what I pack</source>
        <translation>Cartera: lo que llevo</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Punta</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>For which pool</source>
        <translation>Para qué pozo</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Guardada</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Seguridad</translation>
    </message>
    <message>
        <source>estimate, side %1 of 2</source>
        <translation>estimación, lado %1 de 2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Profesor</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Try in this order</source>
        <translation>Pruebe en este orden</translation>
    </message>
    <message>
        <source>1. Angle and slack: cast squarer, mend a second longer. It costs nothing.</source>
        <translation>1. Ángulo y línea floja: lance más de través, un mend un segundo más largo. No cuesta nada.</translation>
    </message>
    <message>
        <source>2. The fly: the same weight on a slimmer fly sinks further, then a heavier one.</source>
        <translation>2. La mosca: el mismo peso en una mosca más fina baja más; después, una más pesada.</translation>
    </message>
    <message>
        <source>3. The tip: keep its length, let more or less of it sink; then its weight.</source>
        <translation>3. La punta: conserve su longitud, deje que se hunda más o menos de ella; después, su peso.</translation>
    </message>
    <message>
        <source>What I changed, and what happened</source>
        <translation>Qué cambié y qué pasó</translation>
    </message>
    <message>
        <source>%1: the name should end in .pdf, .png or .svg</source>
        <translation>%1: el nombre debe acabar en .pdf, .png o .svg</translation>
    </message>
    <message>
        <source>Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Las cañas conducen: lejos de las líneas eléctricas, y parar si hay tormenta.</translation>
    </message>
    <message>
        <source>Cut sheet: %1</source>
        <translation>Hoja de corte: %1</translation>
    </message>
    <message>
        <source>%1. Marks run from one end of each spool; each spool to its own scale.</source>
        <translation>%1. Las marcas cuentan desde un extremo de cada bobina; cada bobina a su propia escala.</translation>
    </message>
    <message>
        <source>Blades cut and heat burns: cut away from yourself, weld with the window open, wear glasses when you test a knot or loop.</source>
        <translation>Las hojas cortan y el calor quema: corte hacia fuera, suelde con la ventana abierta, póngase gafas al probar un nudo o un lazo.</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <translation>%1, página %2 de %3</translation>
    </message>
</context>
<context>
    <name>PictureWords</name>
    <message>
        <source>the rig %1</source>
        <translation>el montaje %1</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>un montaje</translation>
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
        <translation>cañas de línea: %1</translation>
    </message>
    <message>
        <source>of the head: %1</source>
        <translation>de la cabeza: %1</translation>
    </message>
    <message>
        <source>in %1–%2: %3</source>
        <translation>en %1–%2: %3</translation>
    </message>
    <message>
        <source>the wet fly</source>
        <translation>la mosca mojada</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>fondo</translation>
    </message>
    <message>
        <source>it lies on the bed</source>
        <translation>queda en el fondo</translation>
    </message>
    <message>
        <source>nothing pulls it under</source>
        <translation>nada la lleva abajo</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1 down, an estimate</source>
        <translation>de %1 de hondo, una estimación</translation>
    </message>
    <message>
        <source>%1 on the way across; an estimate, of %2</source>
        <translation>%1 mientras cruza; una estimación, de %2</translation>
    </message>
    <message>
        <source>%1: the heaviest foot</source>
        <translation>%1: el pie más pesado</translation>
    </message>
    <message>
        <source>this card names no rig</source>
        <translation>esta ficha no nombra ningún montaje</translation>
    </message>
    <message>
        <source>Missing here:</source>
        <translation>Falta aquí:</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>lands</source>
        <translation>cae</translation>
    </message>
    <message>
        <source>There is no cast to show of this rig.</source>
        <translation>No hay lance de este montaje que mostrar.</translation>
    </message>
    <message>
        <source>No water stated: give its depth and speed.</source>
        <translation>Sin agua indicada: dé su fondo y su corriente.</translation>
    </message>
    <message>
        <source>No fly of known weight yet.</source>
        <translation>Aún no hay mosca de peso conocido.</translation>
    </message>
    <message>
        <source>Still water: there is no swing.</source>
        <translation>Agua quieta: no hay swing.</translation>
    </message>
    <message>
        <source>Everything floats: it fishes on top.</source>
        <translation>Todo flota: pesca en la superficie.</translation>
    </message>
    <message>
        <source>The fly floats: it fishes on top.</source>
        <translation>La mosca flota: pesca en la superficie.</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>No rig.</source>
        <translation>Sin montaje.</translation>
    </message>
    <message>
        <source>not yet under</source>
        <translation>aún no hundida</translation>
    </message>
    <message>
        <source>%1 of line under water, an estimate</source>
        <translation>%1 de línea bajo el agua, una estimación</translation>
    </message>
    <message>
        <source>%1 when the line comes tight; an estimate, of %2</source>
        <translation>%1 cuando la línea se tensa; una estimación, de %2</translation>
    </message>
    <message>
        <source>%1 at its deepest; an estimate, of %2</source>
        <translation>%1 en lo más hondo; una estimación, de %2</translation>
    </message>
    <message>
        <source>this card names no fly</source>
        <translation>esta ficha no nombra ninguna mosca</translation>
    </message>
    <message>
        <source>this card names no pool</source>
        <translation>esta ficha no nombra ningún pozo</translation>
    </message>
    <message>
        <source>this card names no tip</source>
        <translation>esta ficha no nombra ninguna punta</translation>
    </message>
    <message>
        <source>wanted, %1</source>
        <translation>se busca, %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>From the back of the head</source>
        <translation>Desde la parte trasera de la cabeza</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Pesa</translation>
    </message>
    <message>
        <source>A foot at its rod end</source>
        <translation>Un pie en el extremo de la caña</translation>
    </message>
    <message>
        <source>A foot at its fly end</source>
        <translation>Un pie en el extremo de la mosca</translation>
    </message>
    <message>
        <source>Joint at</source>
        <translation>Unión en</translation>
    </message>
    <message>
        <source>Rod side</source>
        <translation>Lado de la caña</translation>
    </message>
    <message>
        <source>Fly side</source>
        <translation>Lado de la mosca</translation>
    </message>
    <message>
        <source>Mean of three feet before</source>
        <translation>Media de los tres pies anteriores</translation>
    </message>
    <message>
        <source>Mean of three feet behind</source>
        <translation>Media de los tres pies siguientes</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Relación</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>Un pie pesa</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>Hasta aquí</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Qué dice</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Despliegue</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Gesto</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Fly ahead of the caster</source>
        <translation>Mosca delante del lanzador</translation>
    </message>
    <message>
        <source>Fly above the water</source>
        <translation>Mosca sobre el agua</translation>
    </message>
    <message>
        <source>Still moving</source>
        <translation>Aún en movimiento</translation>
    </message>
    <message>
        <source>Lost to the air</source>
        <translation>Perdida en el aire</translation>
    </message>
    <message>
        <source>Lost to the fly</source>
        <translation>Perdida en la mosca</translation>
    </message>
    <message>
        <source>Fly downstream of the rod tip</source>
        <translation>Mosca aguas abajo de la puntera</translation>
    </message>
    <message>
        <source>Fly across</source>
        <translation>Mosca a través</translation>
    </message>
    <message>
        <source>Fly below the surface</source>
        <translation>Mosca bajo la superficie</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pozo</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Corriente baja</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Corriente habitual</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Corriente alta</translation>
    </message>
    <message>
        <source>%1: fly from</source>
        <translation>%1: mosca desde</translation>
    </message>
    <message>
        <source>%1: to</source>
        <translation>%1: hasta</translation>
    </message>
    <message>
        <source>%1: what it does</source>
        <translation>%1: qué hace</translation>
    </message>
    <message>
        <source>Current on top</source>
        <translation>Corriente en superficie</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Punta</translation>
    </message>
    <message>
        <source>Fly from</source>
        <translation>Mosca desde</translation>
    </message>
    <message>
        <source>Fly to</source>
        <translation>Mosca hasta</translation>
    </message>
    <message>
        <source>How well it carries the fly (1: just)</source>
        <translation>Qué bien lleva la mosca (1: justo)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>What it repairs</source>
        <translation>Qué repara</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>From its end</source>
        <translation>Desde su extremo</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>on top</source>
        <comment>as large as a number: a short word</comment>
        <translation>arriba</translation>
    </message>
    <message>
        <source>for %1–%2: %3</source>
        <comment>a head&apos;s grains outside the rod&apos;s window</comment>
        <translation>para %1–%2: %3</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>a joint hinges over this ratio, fly side to rod side</source>
        <translation>una unión hace bisagra por encima de esta razón, lado de la mosca a lado de la caña</translation>
    </message>
    <message>
        <source>over this it hinges unless the stroke is slow and open</source>
        <translation>por encima hace bisagra si el gesto no es lento y abierto</translation>
    </message>
    <message>
        <source>over this it steps up and has to be forced</source>
        <translation>por encima sube y hay que forzarla</translation>
    </message>
    <message>
        <source>under this it is a drop, no longer level</source>
        <translation>por debajo es una caída, ya no es pareja</translation>
    </message>
    <message>
        <source>under this the front collapses</source>
        <translation>por debajo el frente se desploma</translation>
    </message>
    <message>
        <source>line on each side whose mean is taken</source>
        <translation>línea a cada lado de la que se toma la media</translation>
    </message>
    <message>
        <source>bare nylon up to this length has no rule</source>
        <translation>nailon desnudo hasta este largo no tiene regla</translation>
    </message>
    <message>
        <source>longer nylon is stout enough from this ratio on</source>
        <translation>nailon más largo es bastante fuerte desde esta razón</translation>
    </message>
    <message>
        <source>longer nylon piles under this ratio</source>
        <translation>nailon más largo se amontona por debajo de esta razón</translation>
    </message>
    <message>
        <source>a head fits within this of the rod&apos;s window</source>
        <translation>una cabeza va bien hasta esto fuera de la ventana de la caña</translation>
    </message>
    <message>
        <source>beyond this it is the wrong head</source>
        <translation>más allá es la cabeza equivocada</translation>
    </message>
    <message>
        <source>short head with its tip: too short under</source>
        <translation>cabeza corta con su punta: demasiado corta por debajo de</translation>
    </message>
    <message>
        <source>short head with its tip: usual from</source>
        <translation>cabeza corta con su punta: usual desde</translation>
    </message>
    <message>
        <source>short head with its tip: usual to</source>
        <translation>cabeza corta con su punta: usual hasta</translation>
    </message>
    <message>
        <source>short head with its tip: too long over</source>
        <translation>cabeza corta con su punta: demasiado larga por encima de</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too short under</source>
        <translation>cabeza corta en caña de una mano: demasiado corta por debajo de</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual from</source>
        <translation>cabeza corta en caña de una mano: usual desde</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: usual to</source>
        <translation>cabeza corta en caña de una mano: usual hasta</translation>
    </message>
    <message>
        <source>short head on a single-hand rod: too long over</source>
        <translation>cabeza corta en caña de una mano: demasiado larga por encima de</translation>
    </message>
    <message>
        <source>fine taper: too short under</source>
        <translation>perfil fino: demasiado corta por debajo de</translation>
    </message>
    <message>
        <source>fine taper: usual from</source>
        <translation>perfil fino: usual desde</translation>
    </message>
    <message>
        <source>fine taper: usual to</source>
        <translation>perfil fino: usual hasta</translation>
    </message>
    <message>
        <source>fine taper: too long over</source>
        <translation>perfil fino: demasiado larga por encima de</translation>
    </message>
    <message>
        <source>long belly with its tip: too short under</source>
        <translation>vientre largo con su punta: demasiado corto por debajo de</translation>
    </message>
    <message>
        <source>long belly with its tip: usual from</source>
        <translation>vientre largo con su punta: usual desde</translation>
    </message>
    <message>
        <source>long belly with its tip: usual to</source>
        <translation>vientre largo con su punta: usual hasta</translation>
    </message>
    <message>
        <source>long belly with its tip: too long over</source>
        <translation>vientre largo con su punta: demasiado largo por encima de</translation>
    </message>
    <message>
        <source>no grip under this share of the head</source>
        <translation>sin agarre por debajo de esta parte de la cabeza</translation>
    </message>
    <message>
        <source>light under this</source>
        <translation>ligera por debajo</translation>
    </message>
    <message>
        <source>right up to this</source>
        <translation>justa hasta esto</translation>
    </message>
    <message>
        <source>too much tip over this</source>
        <translation>demasiada punta por encima</translation>
    </message>
    <message>
        <source>right up to this on a fine taper or long belly</source>
        <translation>justa hasta esto en perfil fino o vientre largo</translation>
    </message>
    <message>
        <source>too little in the water under this, head to fly</source>
        <translation>demasiado poco en el agua por debajo, de la cabeza a la mosca</translation>
    </message>
    <message>
        <source>enough in the water from this on</source>
        <translation>bastante en el agua desde esto</translation>
    </message>
    <message>
        <source>much in the water over this</source>
        <translation>mucho en el agua por encima</translation>
    </message>
    <message>
        <source>the tip carries a fly when it weighs this many times as much</source>
        <translation>la punta lleva una mosca si pesa estas veces más</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the tip</source>
        <translation>por debajo la mosca es demasiado pesada para la punta</translation>
    </message>
    <message>
        <source>line that is weighed against the fly</source>
        <translation>línea que se pesa contra la mosca</translation>
    </message>
    <message>
        <source>nylon longer than this is weighed against the fly too</source>
        <translation>nailon más largo se pesa también contra la mosca</translation>
    </message>
    <message>
        <source>such nylon carries the fly from this many times its weight on</source>
        <translation>ese nailon lleva la mosca desde estas veces su peso</translation>
    </message>
    <message>
        <source>under this the fly is too heavy for the leader</source>
        <translation>por debajo la mosca es demasiado pesada para el bajo</translation>
    </message>
    <message>
        <source>lands in a heap under this, line speed against the least that turns over</source>
        <translation>cae amontonada por debajo, velocidad de línea frente a la mínima que despliega</translation>
    </message>
    <message>
        <source>probably does not turn over under this</source>
        <translation>por debajo probablemente no se despliega</translation>
    </message>
    <message>
        <source>speed to spare from this on</source>
        <translation>velocidad de sobra desde esto</translation>
    </message>
    <message>
        <source>the front does not carry under this, pull against need</source>
        <translation>el frente no lleva por debajo, tirón frente a necesidad</translation>
    </message>
    <message>
        <source>the front carries from this on</source>
        <translation>el frente lleva desde esto</translation>
    </message>
    <message>
        <source>front of the line in which that is asked</source>
        <translation>frente de la línea en que se pregunta</translation>
    </message>
    <message>
        <source>the fly dies under this share of the line speed</source>
        <translation>la mosca muere por debajo de esta parte de la velocidad de línea</translation>
    </message>
    <message>
        <source>it arrives firmly from this on</source>
        <translation>llega firme desde esto</translation>
    </message>
    <message>
        <source>it arrives lively from this on</source>
        <translation>llega viva desde esto</translation>
    </message>
    <message>
        <source>it kicks over this</source>
        <translation>da latigazo por encima</translation>
    </message>
    <message>
        <source>behind a joint that steps up by more than this, lively is a kick</source>
        <translation>tras una unión que sube más que esto, viva es un latigazo</translation>
    </message>
    <message>
        <source>the fly is too bulky when the nylon keeps less of its speed</source>
        <translation>la mosca es demasiado voluminosa si el nailon guarda menos de su velocidad</translation>
    </message>
    <message>
        <source>the same stroke within this change of working length</source>
        <translation>el mismo gesto dentro de este cambio del largo de trabajo</translation>
    </message>
    <message>
        <source>a different cast from this change of length on</source>
        <translation>otro lance desde este cambio de largo</translation>
    </message>
    <message>
        <source>the same stroke within this change of weight</source>
        <translation>el mismo gesto dentro de este cambio de peso</translation>
    </message>
    <message>
        <source>a different cast from this change of weight on</source>
        <translation>otro lance desde este cambio de peso</translation>
    </message>
    <message>
        <source>a slower lift from this much more sinking line</source>
        <translation>una levantada más lenta desde tanta más línea hundible</translation>
    </message>
    <message>
        <source>a weighed part is as meant within this</source>
        <translation>una parte pesada es como se quería dentro de esto</translation>
    </message>
    <message>
        <source>a drop down to this ratio has the full grade</source>
        <translation>una caída hasta esta razón tiene la nota entera</translation>
    </message>
    <message>
        <source>grade where a joint starts to step up</source>
        <translation>nota donde una unión empieza a subir</translation>
    </message>
    <message>
        <source>tip share of a short head with the full grade</source>
        <translation>parte de punta de una cabeza corta con la nota entera</translation>
    </message>
    <message>
        <source>grade where the tip share turns light or heavy</source>
        <translation>nota donde la parte de punta pasa a ligera o pesada</translation>
    </message>
    <message>
        <source>line from head to fly with the full grade</source>
        <translation>línea de la cabeza a la mosca con la nota entera</translation>
    </message>
    <message>
        <source>grade where that line turns short</source>
        <translation>nota donde esa línea pasa a corta</translation>
    </message>
    <message>
        <source>wanted this near the bottom, lying on it is right</source>
        <translation>si se quiere tan cerca del fondo, posarse es lo justo</translation>
    </message>
    <message>
        <source>grade where the stroke becomes a different cast</source>
        <translation>nota donde el gesto pasa a ser otro lance</translation>
    </message>
    <message>
        <source>grade of the most different cast</source>
        <translation>nota del lance más distinto</translation>
    </message>
    <message>
        <source>weight of: the worst joint</source>
        <translation>peso de: la peor unión</translation>
    </message>
    <message>
        <source>weight of: tip share</source>
        <translation>peso de: parte de punta</translation>
    </message>
    <message>
        <source>weight of: line from head to fly</source>
        <translation>peso de: línea de la cabeza a la mosca</translation>
    </message>
    <message>
        <source>weight of: working length</source>
        <translation>peso de: largo de trabajo</translation>
    </message>
    <message>
        <source>weight of: fly against tip</source>
        <translation>peso de: mosca contra punta</translation>
    </message>
    <message>
        <source>weight of: pull of the front</source>
        <translation>peso de: tirón del frente</translation>
    </message>
    <message>
        <source>weight of: line speed to spare</source>
        <translation>peso de: velocidad de línea de sobra</translation>
    </message>
    <message>
        <source>weight of: depth</source>
        <translation>peso de: profundidad</translation>
    </message>
    <message>
        <source>weight of: change of the stroke</source>
        <translation>peso de: cambio del gesto</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Uniones</translation>
    </message>
    <message>
        <source>Head on rod and working length</source>
        <translation>Cabeza en caña y largo de trabajo</translation>
    </message>
    <message>
        <source>Tip share and line in the water</source>
        <translation>Parte de punta y línea en el agua</translation>
    </message>
    <message>
        <source>Fly against tip and leader</source>
        <translation>Mosca contra punta y bajo</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Despliegue</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Gesto</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesaje</translation>
    </message>
    <message>
        <source>Grades from 0 to 1, between the limits</source>
        <translation>Notas de 0 a 1, entre los límites</translation>
    </message>
    <message>
        <source>How much each counts in the ranking; at 0 it only refuses</source>
        <translation>Cuánto cuenta cada uno en el orden; con 0 solo rechaza</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>nuestro</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>cañas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a figure, its unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Must be over %1: %2</source>
        <translation>Debe pasar de %1: %2</translation>
    </message>
    <message>
        <source>Must be under %1: %2</source>
        <translation>Debe quedar por debajo de %1: %2</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1 to %2.</source>
        <translation>Fuera de lo posible; dé de %1 a %2.</translation>
    </message>
</context>
<context>
    <name>SampleWords</name>
    <message>
        <source>Plain winter</source>
        <translation>Invierno sencillo</translation>
    </message>
    <message>
        <source>The all-round winter rig: ten feet of 11 behind a weighted leech. Start here.</source>
        <translation>El montaje de invierno para todo: diez pies de 11 tras una sanguijuela lastrada. Empiece por aquí.</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Canal</translation>
    </message>
    <message>
        <source>For fast, deep water: the heaviest head of the bag drives ten feet of 17 and a double tungsten fly.</source>
        <translation>Para agua rápida y honda: la cabeza más pesada de la bolsa mueve diez pies de 17 y una mosca de doble tungsteno.</translation>
    </message>
    <message>
        <source>Thin tail</source>
        <translation>Cola somera</translation>
    </message>
    <message>
        <source>The winter head and stroke, but only a quarter of the tip sinks: for thin tail-outs.</source>
        <translation>La cabeza y el gesto de invierno, pero solo se hunde un cuarto de la punta: para colas someras.</translation>
    </message>
    <message>
        <source>Small river</source>
        <translation>Río pequeño</translation>
    </message>
    <message>
        <source>A light rod on a small river: a big but light fly, and more than half of the tip sinking.</source>
        <translation>Una caña ligera en un río pequeño: una mosca grande pero ligera, y más de media punta hundible.</translation>
    </message>
    <message>
        <source>Dry line</source>
        <translation>Línea flotante</translation>
    </message>
    <message>
        <source>Long fine taper and a long tapered leader for a low hairwing just under the surface.</source>
        <translation>Perfil fino y largo y un bajo cónico largo para una mosca baja de ala de pelo justo bajo la superficie.</translation>
    </message>
    <message>
        <source>Under the film</source>
        <translation>Bajo la película</translation>
    </message>
    <message>
        <source>A light coated leader carries a small double a foot and a half down.</source>
        <translation>Un bajo recubierto ligero lleva una mosca pequeña de anzuelo doble a pie y medio de hondo.</translation>
    </message>
    <message>
        <source>Old winter</source>
        <translation>Invierno a la antigua</translation>
    </message>
    <message>
        <source>Long belly with a tapered tip in place of its floating front; the stroke is long and slow.</source>
        <translation>Vientre largo con una punta cónica en lugar de su frente flotante; el gesto es largo y lento.</translation>
    </message>
    <message>
        <source>Trout two-hander</source>
        <translation>Dos manos para trucha</translation>
    </message>
    <message>
        <source>A light two-hander for trout: slow tapered tip, one piece of nylon, a beaded streamer.</source>
        <translation>Una caña ligera de dos manos para trucha: punta cónica lenta, un tramo de nailon, un streamer con bola.</translation>
    </message>
    <message>
        <source>Wide water</source>
        <translation>Agua ancha</translation>
    </message>
    <message>
        <source>Long tip, half of it sinking, for wide slow pools. The working length is at its upper end.</source>
        <translation>Punta larga, la mitad hundible, para pozos anchos y lentos. La longitud de trabajo está en su límite superior.</translation>
    </message>
    <message>
        <source>Single five</source>
        <translation>Cinco de una mano</translation>
    </message>
    <message>
        <source>A single-hand line for comparison: the first 30 ft stand inside the limits for a #5.</source>
        <translation>Una línea de una mano para comparar: los primeros 30 ft están dentro de los límites de una #5.</translation>
    </message>
    <message>
        <source>Anvil</source>
        <translation>Yunque</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip weighs nearly half of the head. It stays in the water.</source>
        <translation>Mal a propósito: la punta pesa casi la mitad que la cabeza. Se queda en el agua.</translation>
    </message>
    <message>
        <source>Fat fly</source>
        <translation>Mosca gorda</translation>
    </message>
    <message>
        <source>Wrong on purpose: the fly is too heavy for this tip, though the head could lift a heavier tip.</source>
        <translation>Mal a propósito: la mosca pesa demasiado para esta punta, aunque la cabeza podría levantar otra más pesada.</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Bisagra</translation>
    </message>
    <message>
        <source>Wrong on purpose: the tip is twice as heavy a foot as the end of the head. The line folds there.</source>
        <translation>Mal a propósito: la punta pesa por pie el doble que el final de la cabeza. Ahí se dobla la línea.</translation>
    </message>
    <message>
        <source>No grip</source>
        <translation>Sin agarre</translation>
    </message>
    <message>
        <source>Wrong on purpose: no tip between head and leader, so nothing holds in the water.</source>
        <translation>Mal a propósito: sin punta entre cabeza y bajo, así que nada agarra en el agua.</translation>
    </message>
    <message>
        <source>the all-round pool</source>
        <translation>el pozo para todo</translation>
    </message>
    <message>
        <source>hard on purpose: no sound rig here has its middle figure in it</source>
        <translation>difícil a propósito: ningún montaje bueno de aquí tiene en él su cifra central</translation>
    </message>
    <message>
        <source>thin tail-out</source>
        <translation>cola somera</translation>
    </message>
    <message>
        <source>fast shelf</source>
        <translation>repisa rápida</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>verano</translation>
    </message>
    <message>
        <source>slow and deep</source>
        <translation>lento y hondo</translation>
    </message>
</context>
<context>
    <name>SettingsFile</name>
    <message>
        <source>a number from %1 to %2</source>
        <translation>un número de %1 a %2</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de %1</translation>
    </message>
    <message>
        <source>nothing, or one of %1</source>
        <translation>nada, o uno de %1</translation>
    </message>
    <message>
        <source>nothing, or %1</source>
        <translation>nada, o %1</translation>
    </message>
    <message>
        <source>%1 is %2; it must be under %3, which is %4.</source>
        <translation>%1 es %2; debe quedar por debajo de %3, que es %4.</translation>
    </message>
    <message>
        <source>and more: %1 in all</source>
        <translation>y más: %1 en total</translation>
    </message>
    <message>
        <source>The file cannot be read.</source>
        <translation>El archivo no se puede leer.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise: it is too large to be one.</source>
        <translation>No es un archivo de ajustes de Grainwise: es demasiado grande para serlo.</translation>
    </message>
    <message>
        <source>This is no settings file of Grainwise. Choose one that was exported here.</source>
        <translation>No es un archivo de ajustes de Grainwise. Elija uno exportado aquí.</translation>
    </message>
    <message>
        <source>The file ends in the middle of a line: it was cut off. Export it anew.</source>
        <translation>El archivo acaba en mitad de una línea: está cortado. Expórtelo de nuevo.</translation>
    </message>
    <message>
        <source>The file is broken: line %1 is neither a [group] nor a key with its value.</source>
        <translation>El archivo está dañado: la línea %1 no es ni un [grupo] ni una clave con su valor.</translation>
    </message>
    <message>
        <source>Settings of version “%1” are not known here; version %2 is.</source>
        <translation>Aquí no se conocen ajustes de la versión «%1»; sí la versión %2.</translation>
    </message>
    <message>
        <source>%1 is missing; it wants %2.</source>
        <translation>Falta %1; pide %2.</translation>
    </message>
    <message>
        <source>%1 is “%2”; it wants %3.</source>
        <translation>%1 es «%2»; pide %3.</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>Running lines</source>
        <translation>Líneas de disparo</translation>
    </message>
    <message>
        <source>Extensions</source>
        <translation>Extensiones</translation>
    </message>
    <message>
        <source>Short heads</source>
        <translation>Cabezas cortas</translation>
    </message>
    <message>
        <source>Fine-taper heads</source>
        <translation>Cabezas de perfil fino</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Vientres largos</translation>
    </message>
    <message>
        <source>Intermediate and multi-density heads</source>
        <translation>Cabezas intermedias y multidensidad</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Líneas de una mano</translation>
    </message>
    <message>
        <source>Level tips</source>
        <translation>Puntas niveladas</translation>
    </message>
    <message>
        <source>Float/sink tips</source>
        <translation>Puntas flotantes/hundibles</translation>
    </message>
    <message>
        <source>Tapered tips</source>
        <translation>Puntas cónicas</translation>
    </message>
    <message>
        <source>Intermediate tips</source>
        <translation>Puntas intermedias</translation>
    </message>
    <message>
        <source>Floating fronts</source>
        <translation>Delanteras flotantes</translation>
    </message>
    <message>
        <source>Coated leaders</source>
        <translation>Bajos recubiertos</translation>
    </message>
    <message>
        <source>Leaders</source>
        <translation>Bajos</translation>
    </message>
    <message>
        <source>Tippets</source>
        <translation>Terminales</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Moscas</translation>
    </message>
    <message>
        <source>mono running line %1 in</source>
        <translation>línea de disparo mono %1 in</translation>
    </message>
    <message>
        <source>coated running line %1 in</source>
        <translation>línea de disparo recubierta %1 in</translation>
    </message>
    <message>
        <source>extension %1 ft, %2 gr/ft</source>
        <translation>extensión %1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>short head %1</source>
        <translation>cabeza corta %1</translation>
    </message>
    <message>
        <source>fine-taper head %1</source>
        <translation>cabeza de perfil fino %1</translation>
    </message>
    <message>
        <source>long belly %1</source>
        <translation>vientre largo %1</translation>
    </message>
    <message>
        <source>short head %1, intermediate</source>
        <translation>cabeza corta %1, intermedia</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate</source>
        <translation>cabeza corta %1, flotante/intermedia</translation>
    </message>
    <message>
        <source>short head %1, intermediate/sink</source>
        <translation>cabeza corta %1, intermedia/hundible</translation>
    </message>
    <message>
        <source>short head %1, float/intermediate/sink</source>
        <translation>cabeza corta %1, flotante/intermedia/hundible</translation>
    </message>
    <message>
        <source>single-hand line #%1</source>
        <translation>línea de una mano #%1</translation>
    </message>
    <message>
        <source>%1 ft, %2 gr/ft</source>
        <translation>%1 ft, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, none sinking, %2 gr/ft</source>
        <translation>%1 ft, flotante, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2/%3 sinking, %4 gr/ft</source>
        <translation>%1 ft, %2/%3 hundible, %4 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, all sinking, %2 gr/ft</source>
        <translation>%1 ft, toda hundible, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft, %2 ft sinking, %3 gr/ft</source>
        <translation>%1 ft, %2 ft hundibles, %3 gr/ft</translation>
    </message>
    <message>
        <source>#%1, %2 in/s</source>
        <translation>#%1, %2 in/s</translation>
    </message>
    <message>
        <source>%1 ft, intermediate, %2 gr/ft</source>
        <translation>%1 ft, intermedia, %2 gr/ft</translation>
    </message>
    <message>
        <source>%1 ft floating front, %2 to %3 gr/ft</source>
        <translation>delantera flotante %1 ft, %2 a %3 gr/ft</translation>
    </message>
    <message>
        <source>coated leader %1 ft, light, %2 in/s</source>
        <translation>bajo recubierto %1 ft, ligero, %2 in/s</translation>
    </message>
    <message>
        <source>coated leader %1 ft, heavy, %2 in/s</source>
        <translation>bajo recubierto %1 ft, pesado, %2 in/s</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 in nylon</source>
        <translation>bajo %1 ft, nailon %2 in</translation>
    </message>
    <message>
        <source>leader %1 ft, %2 to %3 in nylon</source>
        <translation>bajo %1 ft, nailon %2 a %3 in</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in nylon</source>
        <translation>terminal %1 ft, nailon %2 in</translation>
    </message>
    <message>
        <source>tippet %1 ft, %2 in fluorocarbon</source>
        <translation>terminal %1 ft, fluorocarbono %2 in</translation>
    </message>
    <message>
        <source>Dry fly #%1</source>
        <translation>Mosca seca #%1</translation>
    </message>
    <message>
        <source>Bushy dry fly #%1</source>
        <translation>Mosca seca tupida #%1</translation>
    </message>
    <message>
        <source>Deer-hair skater #%1</source>
        <translation>Skater de pelo de ciervo #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1</source>
        <translation>Soft-hackle #%1</translation>
    </message>
    <message>
        <source>Low hairwing #%1</source>
        <translation>Ala de pelo baja #%1</translation>
    </message>
    <message>
        <source>Small double #%1</source>
        <translation>Doble pequeña #%1</translation>
    </message>
    <message>
        <source>Wet fly #%1</source>
        <translation>Mosca ahogada #%1</translation>
    </message>
    <message>
        <source>Beaded streamer #%1</source>
        <translation>Streamer con bola #%1</translation>
    </message>
    <message>
        <source>Soft-hackle #%1, big and light</source>
        <translation>Soft-hackle #%1, grande y ligera</translation>
    </message>
    <message>
        <source>Shrimp #%1, long feelers</source>
        <translation>Camarón #%1, antenas largas</translation>
    </message>
    <message>
        <source>Plastic tube, long wing</source>
        <translation>Tubo de plástico, ala larga</translation>
    </message>
    <message>
        <source>Winter wet fly %1/%2</source>
        <translation>Ahogada de invierno %1/%2</translation>
    </message>
    <message>
        <source>Leech, bead-chain eyes</source>
        <translation>Sanguijuela, ojos de cadena</translation>
    </message>
    <message>
        <source>Brass tube, sparse wing</source>
        <translation>Tubo de latón, ala rala</translation>
    </message>
    <message>
        <source>Leech, lead eyes %1/%2 oz</source>
        <translation>Sanguijuela, ojos de plomo %1/%2 oz</translation>
    </message>
    <message>
        <source>Big weighted streamer %1/%2</source>
        <translation>Streamer grande lastrado %1/%2</translation>
    </message>
    <message>
        <source>Compact cone-head #%1</source>
        <translation>Cabeza cónica compacta #%1</translation>
    </message>
    <message>
        <source>Fat tube fly %1/%2</source>
        <translation>Mosca de tubo gruesa %1/%2</translation>
    </message>
    <message>
        <source>Double tungsten</source>
        <translation>Doble tungsteno</translation>
    </message>
</context>
<context>
    <name>StripWords</name>
    <message>
        <source>The running line stands first, behind the head.</source>
        <translation>La línea de disparo va primero, detrás de la cabeza.</translation>
    </message>
    <message>
        <source>A head stands between the running line and the tip.</source>
        <translation>Una cabeza va entre la línea de disparo y la punta.</translation>
    </message>
    <message>
        <source>A tip stands between the head and the leader.</source>
        <translation>Una punta va entre la cabeza y el bajo.</translation>
    </message>
    <message>
        <source>A leader stands between the tip and the tippet.</source>
        <translation>Un bajo va entre la punta y el terminal.</translation>
    </message>
    <message>
        <source>A tippet stands between the leader and the fly.</source>
        <translation>Un terminal va entre el bajo y la mosca.</translation>
    </message>
    <message>
        <source>The fly stands at the end of the line.</source>
        <translation>La mosca va al final de la línea.</translation>
    </message>
    <message>
        <source>A line carries one fly: drop a new one on it to change it.</source>
        <translation>Una línea lleva una mosca: suelte otra sobre ella para cambiarla.</translation>
    </message>
    <message>
        <source>A line has one running line: drop a new one on it to change it.</source>
        <translation>Una línea tiene una línea de disparo: suelte otra sobre ella para cambiarla.</translation>
    </message>
    <message>
        <source>%1 parts are the most that a line can have: take one off first.</source>
        <translation>Una línea no puede tener más de %1 partes: quite una primero.</translation>
    </message>
    <message>
        <source>%1 head pieces are the most that a line can have: take one off first.</source>
        <translation>Una línea no puede tener más de %1 piezas de cabeza: quite una primero.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>Change to %1</source>
        <translation>Cambiar a: %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover: %1</translation>
    </message>
</context>
<context>
    <name>WalletCard</name>
    <message>
        <source>Wallet: 1 tip</source>
        <translation>Cartera: 1 punta</translation>
    </message>
    <message>
        <source>Wallet: %1 tips</source>
        <translation>Cartera: %1 puntas</translation>
    </message>
    <message>
        <source>%1. Depths are estimates.</source>
        <translation>%1. Las profundidades son estimaciones.</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <comment>slot, tip</comment>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1   (and a spare)</source>
        <comment>slot and tip</comment>
        <translation>%1   (y una de repuesto)</translation>
    </message>
    <message>
        <source>slot %1</source>
        <translation>hueco %1</translation>
    </message>
    <message>
        <source>no tip</source>
        <translation>sin punta</translation>
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
        <translation>%1 (atención)</translation>
    </message>
    <message>
        <source>Nothing serves</source>
        <translation>Nada sirve</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Local rules on weighted lines and flies, lead, barbs and hooks decide, not this card. No guide to wading. Rods conduct: keep clear of power lines, and stop in lightning.</source>
        <translation>Deciden las normas locales sobre líneas y moscas lastradas, plomo, arponcillos y anzuelos, no esta ficha. No es guía para vadear. Las cañas conducen: lejos de los tendidos eléctricos, y pare si hay tormenta.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Cartera</translation>
    </message>
    <message>
        <source>Cut out along the outer line and fold along the middle: %1.</source>
        <translation>Recorte por la línea exterior y doble por el medio: %1.</translation>
    </message>
    <message>
        <source>Cut out along the line: %1.</source>
        <translation>Recorte por la línea: %1.</translation>
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
        <translation>esto es una carpeta o un dispositivo, no un archivo</translation>
    </message>
    <message>
        <source>the disk took only %1 of %2 bytes</source>
        <translation>el disco solo admitió %1 de %2 bytes</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>the drag along the line</source>
        <translation>el arrastre de la línea</translation>
    </message>
    <message>
        <source>the drag of the fly</source>
        <translation>el arrastre de la mosca</translation>
    </message>
    <message>
        <source>the line speed</source>
        <translation>la velocidad de línea</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a figure, from, to</comment>
        <translation>%1 (%2 a %3)</translation>
    </message>
    <message>
        <source>%1; the verdict hangs on %2</source>
        <comment>figure with range, an input</comment>
        <translation>%1; el veredicto depende de: %2</translation>
    </message>
    <message>
        <source>Cast: %1 line speed%2, a loop of %3, %4° up, rod tip %5 above the water.</source>
        <translation>Lance: velocidad de línea %1%2, un bucle de %3, %4° hacia arriba, puntera a %5 sobre el agua.</translation>
    </message>
    <message>
        <source> (a learner&apos;s, 20 % less)</source>
        <translation> (la de quien aprende, 20 % menos)</translation>
    </message>
    <message>
        <source>Reserve %1: line speed against the least that turns over%2.</source>
        <translation>Reserva %1: velocidad de línea frente a la mínima que despliega%2.</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>Drive %1, least at %2 in %3.</source>
        <translation>Impulso %1, mínimo en %2, en %3.</translation>
    </message>
    <message>
        <source>The last %1 coast on the speed they have.</source>
        <translation>Los últimos %1 siguen con la velocidad que traen.</translation>
    </message>
    <message>
        <source>The fly stops on the way: no pace.</source>
        <translation>La mosca se para por el camino: no hay ritmo.</translation>
    </message>
    <message>
        <source>Pace %1: the fly arrives at %2 after %3 s, %4 above the water.</source>
        <translation>Ritmo %1: la mosca llega a %2 a los %3 s, a %4 sobre el agua.</translation>
    </message>
    <message>
        <source>The bare nylon keeps %1 of its speed%2.</source>
        <translation>El nailon desnudo conserva %1 de su velocidad%2.</translation>
    </message>
    <message>
        <source>: the fly is too bulky for this leader</source>
        <translation>: la mosca es demasiado voluminosa para este bajo</translation>
    </message>
    <message>
        <source>Pace: under %1 dies, to %2 soft, to %3 firm, to %4 lively, beyond kicks (after a step up of over %5 from %3 on).</source>
        <translation>Ritmo: bajo %1 muere, hasta %2 suave, hasta %3 firme, hasta %4 vivo, más allá da latigazo (tras una subida de más de %5, desde %3).</translation>
    </message>
    <message>
        <source>A loop rolls down the line. Each foot that passes through it pulls with half its mass per foot times the square of the speed at which the legs part.</source>
        <translation>Un bucle rueda por la línea. Cada pie que pasa por él tira con la mitad de su masa por pie por el cuadrado de la velocidad con que se separan las ramas.</translation>
    </message>
    <message>
        <source>Against that: the drag along the line still flying, the drag of the fly, and weight.</source>
        <translation>En contra: el arrastre de la línea que aún vuela, el de la mosca y el peso.</translation>
    </message>
    <message>
        <source>Drive = the least of pull / need over the front %1 of line that is not bare nylon.</source>
        <translation>Impulso = el mínimo de tiro / necesidad en los %1 delanteros de línea que no son nailon desnudo.</translation>
    </message>
    <message>
        <source>In brackets: drag along the line %1–%2, drag of the fly × or ÷ %3, line speed ± %4, each alone.</source>
        <translation>Entre paréntesis: arrastre de la línea %1–%2, arrastre de la mosca × o ÷ %3, velocidad de línea ± %4, cada uno por separado.</translation>
    </message>
    <message>
        <source>Reserve: under %1 lands in a heap, under %2 probably will not, under %3 marginal.</source>
        <translation>Reserva: bajo %1 cae amontonada, bajo %2 probablemente no, bajo %3 justo.</translation>
    </message>
    <message>
        <source>Drive: %1 and over carries, under %2 does not.</source>
        <translation>Impulso: desde %1 la lleva, bajo %2 no.</translation>
    </message>
    <message>
        <source>Wind, the stroke and the caster are left out. The limits are ours.</source>
        <translation>Quedan fuera el viento, el gesto y el lanzador. Los límites son nuestros.</translation>
    </message>
    <message>
        <source>Once it has swung round it hangs at %1: %2.</source>
        <translation>Una vez cruzada queda colgada a %1: %2.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. From real runs.</source>
        <translation>Cuatro swings de cada cinco caen en el margen; su centro es %1. De cálculos completos.</translation>
    </message>
    <message>
        <source>Four swings out of five lie in the range; its middle is %1. A live estimate.</source>
        <translation>Cuatro swings de cada cinco caen en el margen; su centro es %1. Una estimación al momento.</translation>
    </message>
    <message>
        <source>The last %1 of line are under water.</source>
        <translation>Los últimos %1 de línea están bajo el agua.</translation>
    </message>
    <message>
        <source>The floating line ends %1 down.</source>
        <translation>La línea flotante acaba a %1 de hondo.</translation>
    </message>
    <message>
        <source>No floating line takes up the pull: the rod holds the line, and raising the tip raises the fly.</source>
        <translation>Ninguna línea flotante recoge el tiro: la caña sostiene la línea, y levantar la puntera levanta la mosca.</translation>
    </message>
    <message>
        <source>Every piece of line is pushed by the current at its depth and pulled down by its weight in water; the shape is where all of them balance.</source>
        <translation>Cada trozo de línea es empujado por la corriente de su profundidad y bajado por su peso en el agua; la forma es aquella en que todo se equilibra.</translation>
    </message>
    <message>
        <source>A tip hangs far shallower than its sink rate for a fixed time would have it: the water planes it up.</source>
        <translation>Una punta cuelga mucho menos honda de lo que daría su velocidad de hundimiento en un tiempo fijo: el agua la planea hacia arriba.</translation>
    </message>
    <message>
        <source>The range covers the current ± %1, sink rates ± %2, drag ± %3, the fly&apos;s drag × or ÷ %4, the mend ± %5 s and the angle ± %6°.</source>
        <translation>El margen cubre la corriente ± %1, las velocidades de hundimiento ± %2, el arrastre ± %3, el de la mosca × o ÷ %4, el mend ± %5 s y el ángulo ± %6°.</translation>
    </message>
    <message>
        <source>An even current and bed: seams, boulders and back eddies are left out.</source>
        <translation>Corriente y lecho parejos: quedan fuera vetas, piedras y contracorrientes.</translation>
    </message>
    <message>
        <source>No verdict: how deep is right is for the day and you. The estimates are ours.</source>
        <translation>Sin veredicto: qué profundidad conviene lo deciden el día y usted. Las estimaciones son nuestras.</translation>
    </message>
    <message>
        <source>The rule is common practice, no source; the limits are ours.</source>
        <translation>La regla es práctica común, sin fuente; los límites son nuestros.</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of grains, the second with unit</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Not yet: %1.</source>
        <translation>Aún no: %1.</translation>
    </message>
    <message>
        <source>%1, %2 into %3: %4. Ratio %5; right at the joint %6 to %7.</source>
        <translation>%1, %2 en %3: %4. Razón %5; justo en la unión, %6 a %7.</translation>
    </message>
    <message>
        <source>A small pulse sends back %1 of itself at the joint in the tile. A whole loop loses nothing by that: no verdict follows.</source>
        <translation>Un pulso pequeño devuelve %1 de sí mismo en la unión del recuadro. Un bucle entero no pierde nada por eso: de ahí no sale veredicto.</translation>
    </message>
    <message>
        <source>Ratio = mean weight per foot of the %1 on the fly&apos;s side / that of the %1 on the rod&apos;s side. Where the line is shorter, what there is; loops are not counted.</source>
        <translation>Razón = peso medio por pie de los %1 del lado de la mosca / el de los %1 del lado de la caña. Donde la línea es más corta, lo que haya; los lazos no cuentan.</translation>
    </message>
    <message>
        <source>A loop bends about five feet of line at once, so the last inch of a taper decides nothing.</source>
        <translation>Un bucle dobla unos cinco pies de línea a la vez, así que la última pulgada de un perfil no decide nada.</translation>
    </message>
    <message>
        <source>Over %1 it hinges. %2–%1: unless slow and open. %3–%2: steps up, has to be forced.</source>
        <translation>Sobre %1 hace bisagra. %2–%1: salvo lento y abierto. %3–%2: sube, hay que forzarla.</translation>
    </message>
    <message>
        <source>%1–%2 runs level. %3–%1 is a smooth drop. Under %3 the front collapses.</source>
        <translation>%1–%2 sigue nivelada. %3–%1 es una caída suave. Bajo %3 se desploma la parte delantera.</translation>
    </message>
    <message>
        <source>Into more than %1 of bare nylon: %2 and over is stout enough, under %3 will pile.</source>
        <translation>A más de %1 de nailon desnudo: desde %2 es bastante robusto, bajo %3 se amontona.</translation>
    </message>
    <message>
        <source>Tips and coated leaders, loops included: %1. Head: %2.</source>
        <translation>Puntas y bajos recubiertos, lazos incluidos: %1. Cabeza: %2.</translation>
    </message>
    <message>
        <source>Tip share: %1.</source>
        <translation>Parte de punta: %1.</translation>
    </message>
    <message>
        <source>Anchor, all that is between head and fly: %1 on a rod of %2, %3 rods.</source>
        <translation>Anclaje, todo lo que hay entre cabeza y mosca: %1 con una caña de %2, %3 cañas.</translation>
    </message>
    <message>
        <source>To lift: %1 of sinking line.</source>
        <translation>Por levantar: %1 de línea hundible.</translation>
    </message>
    <message>
        <source>To lift: nothing sinks.</source>
        <translation>Por levantar: nada se hunde.</translation>
    </message>
    <message>
        <source>The trade&apos;s table names a ten-foot tip of %1 for a short head of these grains (common practice, no source). It is this rule with cliffs: a teaching line, not the verdict.</source>
        <translation>La tabla del oficio nombra una punta de diez pies de %1 para una cabeza corta de estos grains (práctica común, sin fuente). Es esta regla con escalones: una línea para enseñar, no el veredicto.</translation>
    </message>
    <message>
        <source>Tip share = grains of tips and coated leaders / grains of the head.</source>
        <translation>Parte de punta = grains de puntas y bajos recubiertos / grains de la cabeza.</translation>
    </message>
    <message>
        <source>Anchor = everything between head and fly / length of the rod: what the water can hold.</source>
        <translation>Anclaje = todo lo que hay entre cabeza y mosca / longitud de la caña: lo que el agua puede sujetar.</translation>
    </message>
    <message>
        <source>Tip share, short heads: under %1 no grip, to %2 light, to %3 right, to %4 heavy, beyond too much tip.</source>
        <translation>Parte de punta, cabezas cortas: bajo %1 sin agarre, hasta %2 ligera, hasta %3 bien, hasta %4 pesada, más allá demasiada punta.</translation>
    </message>
    <message>
        <source>Fine tapers and long bellies: up to %1, no lower limit.</source>
        <translation>Perfiles finos y vientres largos: hasta %1, sin límite inferior.</translation>
    </message>
    <message>
        <source>Anchor: under %1 rods too little in the water, %2–%3 good.</source>
        <translation>Anclaje: bajo %1 cañas, demasiado poco en el agua; %2–%3 bien.</translation>
    </message>
    <message>
        <source>The last %1 of line weigh %2, the wet fly %3: %4 times the fly.</source>
        <translation>Los últimos %1 de línea pesan %2, la mosca mojada %3: %4 veces la mosca.</translation>
    </message>
    <message>
        <source>The fly is as heavy as %1 of that line.</source>
        <translation>La mosca pesa tanto como %1 de esa línea.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2.</source>
        <translation>Nailon desnudo: %1, %2.</translation>
    </message>
    <message>
        <source>Bare nylon: %1, %2, %3 times the fly.</source>
        <translation>Nailon desnudo: %1, %2, %3 veces la mosca.</translation>
    </message>
    <message>
        <source>Fly = grains of the last %1 of line that is not bare nylon, loops not counted / grains of the wet fly.</source>
        <translation>Mosca = grains de los últimos %1 de línea que no son nailon desnudo, sin contar lazos / grains de la mosca mojada.</translation>
    </message>
    <message>
        <source>A big fly that is light is not heavy; how bulky it is does not count here.</source>
        <translation>Una mosca grande y ligera no es pesada; su volumen no cuenta aquí.</translation>
    </message>
    <message>
        <source>%1 and over: the tip carries it. %2–%1: heavy, slow and open stroke. Under %2: too heavy for this tip.</source>
        <translation>Desde %1: la punta la lleva. %2–%1: pesada, gesto lento y abierto. Bajo %2: demasiado pesada para esta punta.</translation>
    </message>
    <message>
        <source>With more than %1 of nylon, its grains against the fly too: %2 and over is fine, under %3 too heavy for this leader.</source>
        <translation>Con más de %1 de nailon, también sus grains frente a la mosca: desde %2 va bien, bajo %3 demasiado pesada para este bajo.</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), one hand #%1: %2 over the first 30 ft, aim %3.</source>
        <translation>Como referencia, la tabla de la asociación del sector (AFFTA), una mano #%1: %2 en los primeros 30 ft, objetivo %3.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>grains, at which length of line</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>For reference, the trade association&apos;s table (AFFTA), two hands #%1: %2. No tolerance is published and no verdict follows.</source>
        <translation>Como referencia, la tabla de la asociación del sector (AFFTA), dos manos #%1: %2. No se publica tolerancia y de ahí no sale veredicto.</translation>
    </message>
    <message>
        <source>Window %1: ours, from the line number alone, since the rod states none.</source>
        <translation>Ventana %1: nuestra, solo por el número de línea, pues la caña no indica ninguna.</translation>
    </message>
    <message>
        <source>Window %1: the rod&apos;s own.</source>
        <translation>Ventana %1: la de la propia caña.</translation>
    </message>
    <message>
        <source>Head, all its pieces: %1. With the tip: %2, of which the window does not speak.</source>
        <translation>Cabeza, todas sus piezas: %1. Con la punta: %2, de lo que la ventana no habla.</translation>
    </message>
    <message>
        <source>Working length: %1, %2 rods.</source>
        <translation>Longitud de trabajo: %1, %2 cañas.</translation>
    </message>
    <message>
        <source>The 30 ft of head nearest the fly: %1.</source>
        <translation>Los 30 ft de cabeza más cercanos a la mosca: %1.</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, by the style of head.</source>
        <translation>Los grains de una caña son solo para la cabeza, según su estilo.</translation>
    </message>
    <message>
        <source>Working length = back of the head to the end of the tip, for a fine taper the head alone / length of the rod.</source>
        <translation>Longitud de trabajo = de la parte trasera de la cabeza al final de la punta, en un perfil fino solo la cabeza / longitud de la caña.</translation>
    </message>
    <message>
        <source>Within %1 of the window it fits; to %2 a touch light or heavy; beyond, the wrong head for this rod.</source>
        <translation>A menos de %1 de la ventana va bien; hasta %2, algo ligera o pesada; más allá, cabeza equivocada para esta caña.</translation>
    </message>
    <message>
        <source>Working length for this head: usual %1–%2 rods, limits %3–%4.</source>
        <translation>Longitud de trabajo para esta cabeza: usual %1–%2 cañas, límites %3–%4.</translation>
    </message>
    <message>
        <source>The rod maker&apos;s own figure comes first.</source>
        <translation>La cifra del fabricante de la caña va por delante.</translation>
    </message>
    <message>
        <source>%1 as timed</source>
        <translation>%1 según cronómetro</translation>
    </message>
    <message>
        <source>%1, or %2 as timed,</source>
        <translation>%1, o %2 según cronómetro,</translation>
    </message>
    <message>
        <source>Round in %1 s, the mend included.</source>
        <translation>Da la vuelta en %1 s, con el mend incluido.</translation>
    </message>
    <message>
        <source>On the bottom for %1 of the way across.</source>
        <translation>En el fondo durante %1 del recorrido.</translation>
    </message>
    <message>
        <source>In the air at %1 above the sea.</source>
        <translation>En el aire a %1 sobre el mar.</translation>
    </message>
    <message>
        <source>Bed: %1.</source>
        <translation>Fondo: %1.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a density, another</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Density of the head: %1, our usual figure where none is stated.</source>
        <translation>Densidad de la cabeza: %1, nuestra cifra habitual donde no se indica ninguna.</translation>
    </message>
    <message>
        <source>Density of the head: %1.</source>
        <translation>Densidad de la cabeza: %1.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over such a bed.</source>
        <translation>A media profundidad la corriente va al %1 de su velocidad en la superficie, como sobre un fondo así.</translation>
    </message>
    <message>
        <source>Half way down the current runs at %1 of its speed at the surface, as over a usual bed: none is stated.</source>
        <translation>A media profundidad la corriente va al %1 de su velocidad en la superficie, como sobre un fondo corriente: no se indica ninguno.</translation>
    </message>
    <message>
        <source>It covers as well a current half way down of %1 to %2 of the surface&apos;s.</source>
        <translation>Cubre también una corriente a media profundidad del %1 al %2 de la de la superficie.</translation>
    </message>
    <message>
        <source>It covers as well a head of %1 to %2, and a current half way down of %3 to %4 of the surface&apos;s.</source>
        <translation>Cubre también una cabeza de %1 a %2 y una corriente a media profundidad del %3 al %4 de la de la superficie.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot at both ends of a tip, the second with unit</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>flotante</translation>
    </message>
    <message>
        <source>1/4 sinking</source>
        <translation>1/4 hundible</translation>
    </message>
    <message>
        <source>1/2 sinking</source>
        <translation>1/2 hundible</translation>
    </message>
    <message>
        <source>3/4 sinking</source>
        <translation>3/4 hundible</translation>
    </message>
    <message>
        <source>%1 sinking</source>
        <comment>per cent of a tip</comment>
        <translation>%1 hundible</translation>
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
        <translation>disparo %1</translation>
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
        <translation>cabezas cortas %1–%2</translation>
    </message>
    <message>
        <source>fine tapers %1–%2</source>
        <translation>perfiles finos %1–%2</translation>
    </message>
    <message>
        <source>long bellies %1–%2</source>
        <translation>vientres largos %1–%2</translation>
    </message>
    <message>
        <source>lines %1–%2</source>
        <translation>líneas %1–%2</translation>
    </message>
    <message>
        <source>heads %1–%2</source>
        <translation>cabezas %1–%2</translation>
    </message>
    <message>
        <source>running line</source>
        <translation>línea de disparo</translation>
    </message>
    <message>
        <source>head</source>
        <translation>cabeza</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>punta</translation>
    </message>
    <message>
        <source>leader</source>
        <translation>bajo</translation>
    </message>
    <message>
        <source>tippet</source>
        <translation>terminal</translation>
    </message>
    <message>
        <source>fly</source>
        <translation>mosca</translation>
    </message>
    <message>
        <source>short head</source>
        <translation>cabeza corta</translation>
    </message>
    <message>
        <source>fine-taper head</source>
        <translation>cabeza de perfil fino</translation>
    </message>
    <message>
        <source>long belly</source>
        <translation>vientre largo</translation>
    </message>
    <message>
        <source>one-hand line</source>
        <translation>línea de una mano</translation>
    </message>
    <message>
        <source>extension</source>
        <translation>extensión</translation>
    </message>
    <message>
        <source>level tip</source>
        <translation>punta nivelada</translation>
    </message>
    <message>
        <source>float/sink tip</source>
        <translation>punta flotante/hundible</translation>
    </message>
    <message>
        <source>tapered tip</source>
        <translation>punta cónica</translation>
    </message>
    <message>
        <source>plain leader</source>
        <translation>bajo simple</translation>
    </message>
    <message>
        <source>coated leader</source>
        <translation>bajo recubierto</translation>
    </message>
    <message>
        <source>fly, mass not known</source>
        <translation>mosca, masa desconocida</translation>
    </message>
    <message>
        <source>fly, %1 grams</source>
        <translation>mosca, %1 gramos</translation>
    </message>
    <message>
        <source>fly, %1 grains</source>
        <translation>mosca, %1 grains</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>kind of part, its length, its mass per length, for the ear</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 metres</source>
        <translation>%1 metros</translation>
    </message>
    <message>
        <source>%1 feet</source>
        <translation>%1 pies</translation>
    </message>
    <message>
        <source>%1 grams a metre</source>
        <translation>%1 gramos por metro</translation>
    </message>
    <message>
        <source>%1 grains a foot</source>
        <translation>%1 grains por pie</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>caña</translation>
    </message>
    <message>
        <source>#%1</source>
        <comment>line number</comment>
        <translation>#%1</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>una mano</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 de hondo</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
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
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>no joint yet: add a tip or leader</source>
        <translation>aún sin unión: añada punta o bajo</translation>
    </message>
    <message>
        <source>no rule for a one-hand line</source>
        <translation>sin regla para una línea de una mano</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>grains of the tip, of the head with unit</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>no rule for this head</source>
        <translation>sin regla para esta cabeza</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>grains of line, of the fly with unit</comment>
        <translation>%1 sobre %2</translation>
    </message>
    <message>
        <source>no line to carry it yet</source>
        <translation>aún sin línea que la lleve</translation>
    </message>
    <message>
        <source>in %1–%2</source>
        <comment>a head&apos;s grains in the rod&apos;s window</comment>
        <translation>en %1–%2</translation>
    </message>
    <message>
        <source>for %1–%2</source>
        <comment>a head&apos;s grains outside the window</comment>
        <translation>para %1–%2</translation>
    </message>
    <message>
        <source>no line in the water yet</source>
        <translation>aún sin línea en el agua</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>a range of depth</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>the depth of the water with unit</comment>
        <translation>de %1</translation>
    </message>
    <message>
        <source>the coated leader</source>
        <translation>el bajo recubierto</translation>
    </message>
    <message>
        <source>the head</source>
        <translation>la cabeza</translation>
    </message>
    <message>
        <source>the tip</source>
        <translation>la punta</translation>
    </message>
    <message>
        <source>the leader</source>
        <translation>el bajo</translation>
    </message>
    <message>
        <source>the tippet</source>
        <translation>el terminal</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>la línea</translation>
    </message>
    <message>
        <source>%1 does not carry the fly: more mass per foot there, or a smaller fly</source>
        <translation>%1 no lleva la mosca: más masa por pie ahí, o una mosca menor</translation>
    </message>
    <message>
        <source>%1 only just carries the fly: a smaller fly, or more mass per foot there</source>
        <translation>%1 lleva la mosca por poco: una mosca menor, o más masa por pie ahí</translation>
    </message>
    <message>
        <source>The fly is too heavy for this tip: a denser tip or a lighter fly</source>
        <translation>La mosca pesa demasiado para esta punta: una punta más densa o una mosca más ligera</translation>
    </message>
    <message>
        <source>The fly is heavy for this tip: a slow, open stroke</source>
        <translation>La mosca es pesada para esta punta: un gesto lento y abierto</translation>
    </message>
    <message>
        <source>Will land in a heap: more line speed, a shorter leader or a smaller fly</source>
        <translation>Caerá amontonada: más velocidad de línea, un bajo más corto o una mosca menor</translation>
    </message>
    <message>
        <source>Probably will not turn over: more line speed, a shorter leader or a smaller fly</source>
        <translation>Probablemente no se despliegue: más velocidad de línea, un bajo más corto o una mosca menor</translation>
    </message>
    <message>
        <source>Turns over with little speed to spare: a clean stroke, or a shorter leader</source>
        <translation>Se despliega con poca reserva: un gesto limpio, o un bajo más corto</translation>
    </message>
    <message>
        <source>Turns over with speed to spare</source>
        <translation>Se despliega con reserva</translation>
    </message>
    <message>
        <source>Turnover is read once there is a head</source>
        <translation>El despliegue se lee cuando hay una cabeza</translation>
    </message>
    <message>
        <source>Turnover is read once there is a fly</source>
        <translation>El despliegue se lee cuando hay una mosca</translation>
    </message>
    <message>
        <source>Turnover is read once the fly has a mass</source>
        <translation>El despliegue se lee cuando la mosca tiene masa</translation>
    </message>
    <message>
        <source>Too little line in front of the loop to read a turnover</source>
        <translation>Demasiado poca línea delante del bucle para leer un despliegue</translation>
    </message>
    <message>
        <source>Over 300 ft from the rod tip: no turnover is read</source>
        <translation>Más de 300 ft desde la puntera: no se lee despliegue</translation>
    </message>
    <message>
        <source>The line is too slow for a loop: give the cast more line speed</source>
        <translation>La línea va demasiado lenta para un bucle: dé más velocidad de línea al lance</translation>
    </message>
    <message>
        <source>Turns over and kicks: a heavier fly, a longer leader or a lighter tip</source>
        <translation>Se despliega y da latigazo: una mosca más pesada, un bajo más largo o una punta más ligera</translation>
    </message>
    <message>
        <source>%1 carries the fly, and it turns over with speed to spare</source>
        <translation>%1 lleva la mosca, y se despliega con reserva</translation>
    </message>
    <message>
        <source>swings clear of the bottom</source>
        <translation>cruza libre del fondo</translation>
    </message>
    <message>
        <source>near the bottom</source>
        <translation>cerca del fondo</translation>
    </message>
    <message>
        <source>touches the bottom</source>
        <translation>roza el fondo</translation>
    </message>
    <message>
        <source>lies on the bottom</source>
        <translation>queda en el fondo</translation>
    </message>
    <message>
        <source>still water: no swing</source>
        <translation>agua quieta: no hay swing</translation>
    </message>
    <message>
        <source>all floats: it fishes on top</source>
        <translation>todo flota: pesca en la superficie</translation>
    </message>
    <message>
        <source>the fly floats: it fishes on top</source>
        <translation>la mosca flota: pesca en la superficie</translation>
    </message>
    <message>
        <source>Touches the bottom for %1 of the swing.</source>
        <translation>Roza el fondo en %1 del swing.</translation>
    </message>
    <message>
        <source>Swings at %1, %2 deep after the mend.</source>
        <translation>Cruza a %1, %2 de hondo tras el mend.</translation>
    </message>
    <message>
        <source>Comes to rest on the bottom before it is round.</source>
        <translation>Se posa en el fondo antes de cruzar.</translation>
    </message>
    <message>
        <source>Still not round at the end of the run.</source>
        <translation>Al final del cálculo aún no ha cruzado.</translation>
    </message>
    <message>
        <source>The run broke off: this line cannot be followed to the end.</source>
        <translation>El cálculo se interrumpió: esta línea no se puede seguir hasta el final.</translation>
    </message>
    <message>
        <source>Hangs at %1.</source>
        <translation>Cuelga a %1.</translation>
    </message>
    <message>
        <source>Round in %1 s.</source>
        <translation>Cruza en %1 s.</translation>
    </message>
    <message>
        <source>hinges here: the %1 is heavier than the line behind it</source>
        <translation>aquí hace bisagra: lo de delante (%1) pesa más que la línea de detrás</translation>
    </message>
    <message>
        <source>hinges here unless the stroke is slow and open</source>
        <translation>aquí hace bisagra salvo con gesto lento y abierto</translation>
    </message>
    <message>
        <source>big drop here: the front collapses</source>
        <translation>gran caída aquí: se desploma la parte delantera</translation>
    </message>
    <message>
        <source>into a short leader, no rule</source>
        <translation>a un bajo corto, sin regla</translation>
    </message>
    <message>
        <source>the butt of the leader is stout enough</source>
        <translation>el extremo grueso del bajo es bastante robusto</translation>
    </message>
    <message>
        <source>the butt of the leader is thin: a stouter one turns over better</source>
        <translation>el extremo grueso del bajo es fino: uno más robusto se despliega mejor</translation>
    </message>
    <message>
        <source>fits, just under the window</source>
        <translation>va bien, justo bajo la ventana</translation>
    </message>
    <message>
        <source>fits, just over the window</source>
        <translation>va bien, justo sobre la ventana</translation>
    </message>
    <message>
        <source>fits, at the light end</source>
        <translation>va bien, en el extremo ligero</translation>
    </message>
    <message>
        <source>fits, at the heavy end</source>
        <translation>va bien, en el extremo pesado</translation>
    </message>
    <message>
        <source>fits this rod</source>
        <translation>va bien con esta caña</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>Bisagra</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Cabeza en caña</translation>
    </message>
    <message>
        <source>Length on rod</source>
        <translation>Longitud en caña</translation>
    </message>
    <message>
        <source>Tip share</source>
        <translation>Parte de punta</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anclaje</translation>
    </message>
    <message>
        <source>Fly</source>
        <translation>Mosca</translation>
    </message>
    <message>
        <source>Fly on leader</source>
        <translation>Mosca en el bajo</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Despliegue</translation>
    </message>
    <message>
        <source>Depth, estimate</source>
        <translation>Profundidad, estimada</translation>
    </message>
    <message>
        <source>hinges here</source>
        <translation>aquí hace bisagra</translation>
    </message>
    <message>
        <source>hinges unless slow and open</source>
        <translation>bisagra salvo lento y abierto</translation>
    </message>
    <message>
        <source>steps up: has to be forced</source>
        <translation>sube: hay que forzarla</translation>
    </message>
    <message>
        <source>runs level</source>
        <translation>sigue nivelada</translation>
    </message>
    <message>
        <source>smooth drop</source>
        <translation>caída suave</translation>
    </message>
    <message>
        <source>big drop: front collapses</source>
        <translation>gran caída: se desploma</translation>
    </message>
    <message>
        <source>into the leader</source>
        <translation>al bajo</translation>
    </message>
    <message>
        <source>stout enough butt</source>
        <translation>extremo grueso robusto</translation>
    </message>
    <message>
        <source>thin butt</source>
        <translation>extremo grueso fino</translation>
    </message>
    <message>
        <source>butt too thin: will pile</source>
        <translation>muy fino: se amontona</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>grains per foot either side of a joint</comment>
        <translation>%1 a %2</translation>
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
        <translation>sube desde %1 en %2: %3</translation>
    </message>
    <message>
        <source>steps down from the %1 by %2: %3</source>
        <comment>kind of part, ratio, verdict</comment>
        <translation>baja desde %1 en %2: %3</translation>
    </message>
    <message>
        <source>a touch light for this rod</source>
        <translation>algo ligera para esta caña</translation>
    </message>
    <message>
        <source>a touch heavy for this rod</source>
        <translation>algo pesada para esta caña</translation>
    </message>
    <message>
        <source>too light a head for this rod</source>
        <translation>cabeza muy ligera para esta caña</translation>
    </message>
    <message>
        <source>too heavy a head for this rod</source>
        <translation>cabeza muy pesada para esta caña</translation>
    </message>
    <message>
        <source>usual for this rod</source>
        <translation>usual para esta caña</translation>
    </message>
    <message>
        <source>on the short side</source>
        <translation>más bien corta</translation>
    </message>
    <message>
        <source>on the long side</source>
        <translation>más bien larga</translation>
    </message>
    <message>
        <source>too short for this rod</source>
        <translation>demasiado corta para esta caña</translation>
    </message>
    <message>
        <source>too long for this rod</source>
        <translation>demasiado larga para esta caña</translation>
    </message>
    <message>
        <source>no grip: a heavier tip</source>
        <translation>sin agarre: punta más pesada</translation>
    </message>
    <message>
        <source>light: small flies</source>
        <translation>ligera: moscas pequeñas</translation>
    </message>
    <message>
        <source>right for this head</source>
        <translation>bien para esta cabeza</translation>
    </message>
    <message>
        <source>heavy: roll it up first</source>
        <translation>pesada: primero ruédela arriba</translation>
    </message>
    <message>
        <source>too much tip for this head</source>
        <translation>demasiada punta para la cabeza</translation>
    </message>
    <message>
        <source>too little in the water</source>
        <translation>demasiado poco en el agua</translation>
    </message>
    <message>
        <source>a short anchor</source>
        <translation>un anclaje corto</translation>
    </message>
    <message>
        <source>enough in the water</source>
        <translation>bastante en el agua</translation>
    </message>
    <message>
        <source>a long anchor</source>
        <translation>un anclaje largo</translation>
    </message>
    <message>
        <source>the tip carries it</source>
        <translation>la punta la lleva</translation>
    </message>
    <message>
        <source>heavy: slow, open stroke</source>
        <translation>pesada: gesto lento y abierto</translation>
    </message>
    <message>
        <source>too heavy for this tip</source>
        <translation>pesa demasiado para esta punta</translation>
    </message>
    <message>
        <source>the leader carries it</source>
        <translation>el bajo la lleva</translation>
    </message>
    <message>
        <source>heavy for this leader</source>
        <translation>pesada para este bajo</translation>
    </message>
    <message>
        <source>too heavy for this leader</source>
        <translation>demasiado pesada para el bajo</translation>
    </message>
    <message>
        <source>drop a head on the line</source>
        <translation>suelte una cabeza en la línea</translation>
    </message>
    <message>
        <source>drop a fly on the line</source>
        <translation>suelte una mosca en la línea</translation>
    </message>
    <message>
        <source>no rod yet: choose one</source>
        <translation>aún sin caña: elija una</translation>
    </message>
    <message>
        <source>no rod length yet: type it</source>
        <translation>aún sin longitud: escríbala</translation>
    </message>
    <message>
        <source>say what style of head it is</source>
        <translation>diga el estilo de la cabeza</translation>
    </message>
    <message>
        <source>no water yet: choose a pool</source>
        <translation>aún sin agua: elija un pozo</translation>
    </message>
    <message>
        <source>give the rod a grain window</source>
        <translation>dé a la caña una ventana</translation>
    </message>
    <message>
        <source>weigh the fly and type it</source>
        <translation>pese la mosca y escríbalo</translation>
    </message>
    <message>
        <source>drop a tip on the line</source>
        <translation>suelte una punta en la línea</translation>
    </message>
    <message>
        <source>too little line to cast a loop</source>
        <translation>poca línea para lanzar un bucle</translation>
    </message>
    <message>
        <source>over 300 ft of line: nobody casts that</source>
        <translation>más de 300 ft: eso no lo lanza nadie</translation>
    </message>
    <message>
        <source>too slow for a loop: give more line speed</source>
        <translation>muy lenta para un bucle: más velocidad</translation>
    </message>
    <message>
        <source>Same stroke as the rig you opened</source>
        <translation>El mismo gesto que con el montaje abierto</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, slower lift</source>
        <translation>El mismo compás que con el montaje abierto, levantada más lenta</translation>
    </message>
    <message>
        <source>Same timing as the rig you opened, quicker lift</source>
        <translation>El mismo compás que con el montaje abierto, levantada más rápida</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened</source>
        <translation>Un barrido más largo que con el montaje abierto</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, slower lift</source>
        <translation>Un barrido más largo que con el montaje abierto, levantada más lenta</translation>
    </message>
    <message>
        <source>A longer sweep than the rig you opened, quicker lift</source>
        <translation>Un barrido más largo que con el montaje abierto, levantada más rápida</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened</source>
        <translation>Un barrido más corto que con el montaje abierto</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, slower lift</source>
        <translation>Un barrido más corto que con el montaje abierto, levantada más lenta</translation>
    </message>
    <message>
        <source>A shorter sweep than the rig you opened, quicker lift</source>
        <translation>Un barrido más corto que con el montaje abierto, levantada más rápida</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened</source>
        <translation>Otro lance que con el montaje abierto</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, slower lift</source>
        <translation>Otro lance que con el montaje abierto, levantada más lenta</translation>
    </message>
    <message>
        <source>A different cast from the rig you opened, quicker lift</source>
        <translation>Otro lance que con el montaje abierto, levantada más rápida</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>va bien</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>atención</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>one fact, the next</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Measured: %1, give or take %2</source>
        <translation>Medido: %1, con un margen de %2</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Medido: %1</translation>
    </message>
    <message>
        <source>stated %1</source>
        <translation>indicado %1</translation>
    </message>
    <message>
        <source>Timed: %1, give or take %2</source>
        <translation>Cronometrado: %1, con un margen de %2</translation>
    </message>
    <message>
        <source>Timed: %1</source>
        <translation>Cronometrado: %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>nominal %1</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 medido</translation>
    </message>
    <message>
        <source>touches the bottom for %1</source>
        <translation>toca fondo en %1</translation>
    </message>
    <message>
        <source>may touch the bottom</source>
        <translation>puede tocar fondo</translation>
    </message>
    <message>
        <source>Turns over, but the fly arrives without life: more line speed or a smaller fly</source>
        <translation>Se despliega, pero la mosca llega sin fuerza: más velocidad de línea o una mosca menor</translation>
    </message>
    <message>
        <source>The fly is too bulky for this nylon: thicker or shorter nylon, or a smaller fly</source>
        <translation>La mosca es demasiado voluminosa para este nailon: nailon más grueso o más corto, o una mosca menor</translation>
    </message>
    <message>
        <source>the line carries it</source>
        <translation>la línea la lleva</translation>
    </message>
    <message>
        <source>too heavy for this line</source>
        <translation>pesa demasiado para esta línea</translation>
    </message>
    <message>
        <source>%1 timed</source>
        <comment>a sink rate</comment>
        <translation>%1 cronometrado</translation>
    </message>
    <message>
        <source>smooth: sand or silt</source>
        <translation>liso: arena o limo</translation>
    </message>
    <message>
        <source>usual: gravel</source>
        <translation>usual: grava</translation>
    </message>
    <message>
        <source>rough: cobbles</source>
        <translation>áspero: cantos</translation>
    </message>
    <message>
        <source>very rough: boulders</source>
        <translation>muy áspero: bolos</translation>
    </message>
</context>
<context>
    <name>grainwise::Problem</name>
    <message>
        <source>section %1: %2</source>
        <translation>tramo %1: %2</translation>
    </message>
    <message>
        <source>a spool cannot be divided into %1 tips</source>
        <translation>una bobina no se puede dividir en %1 puntas</translation>
    </message>
    <message>
        <source>ask for one or more</source>
        <translation>pida una o más</translation>
    </message>
    <message>
        <source>the loops of %1 tips use up the %2 ft that are left</source>
        <translation>los lazos de %1 puntas consumen los %2 ft que quedan</translation>
    </message>
    <message>
        <source>ask for fewer tips</source>
        <translation>pida menos puntas</translation>
    </message>
    <message>
        <source>a tip of %1 ft cannot be cut</source>
        <translation>no se puede cortar una punta de %1 ft</translation>
    </message>
    <message>
        <source>the spool is %1 ft short of one such tip with its loops</source>
        <translation>a la bobina le faltan %1 ft para una punta así con sus lazos</translation>
    </message>
    <message>
        <source>ask for a shorter one</source>
        <translation>pida una más corta</translation>
    </message>
    <message>
        <source>a measure of this fly is negative or over 6 in</source>
        <translation>una medida de esta mosca es negativa o pasa de 6 in</translation>
    </message>
    <message>
        <source>measure it again</source>
        <translation>mida de nuevo</translation>
    </message>
    <message>
        <source>a bead&apos;s hole is as wide as the bead</source>
        <translation>el agujero de una bola es tan ancho como la bola</translation>
    </message>
    <message>
        <source>give the hole&apos;s own diameter</source>
        <translation>dé el diámetro del propio agujero</translation>
    </message>
    <message>
        <source>a number of beads below 0</source>
        <translation>un número de bolas menor que 0</translation>
    </message>
    <message>
        <source>give 0 or more</source>
        <translation>dé 0 o más</translation>
    </message>
    <message>
        <source>a number of turns below 0</source>
        <translation>un número de vueltas menor que 0</translation>
    </message>
    <message>
        <source>the dressing&apos;s mass or the water it holds is no such thing</source>
        <translation>la masa del vestido o el agua que retiene no es válida</translation>
    </message>
    <message>
        <source>give 0 gr or more, and 0 to 50 times its dry mass of water</source>
        <translation>dé 0 gr o más, y de agua entre 0 y 50 veces su masa en seco</translation>
    </message>
    <message>
        <source>a weight below 0</source>
        <translation>un peso menor que 0</translation>
    </message>
    <message>
        <source>give 0 gr or more</source>
        <translation>dé 0 gr o más</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no hook size</source>
        <translation>&quot;%1&quot; no es un número de anzuelo</translation>
    </message>
    <message>
        <source>write it like 6 or 2/0, or give its wire</source>
        <translation>escríbalo como 6 o 2/0, o dé su alambre</translation>
    </message>
    <message>
        <source>there is nothing on this fly yet</source>
        <translation>esta mosca aún no lleva nada</translation>
    </message>
    <message>
        <source>add a hook or a dressing</source>
        <translation>añada un anzuelo o un vestido</translation>
    </message>
    <message>
        <source>one measure does not name a tip</source>
        <translation>una sola medida no identifica una punta</translation>
    </message>
    <message>
        <source>give two of mass, length, diameter and timed sink</source>
        <translation>dé dos de estas: masa, longitud, diámetro y hundimiento cronometrado</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so fast</source>
        <translation>ninguna línea con esta masa por pie se hunde tan rápido</translation>
    </message>
    <message>
        <source>time it again, over a longer fall</source>
        <translation>cronometre de nuevo, con una caída más larga</translation>
    </message>
    <message>
        <source>no spool steps down to %1 in one knot</source>
        <translation>ninguna bobina baja a %1 en un solo nudo</translation>
    </message>
    <message>
        <source>take one over %1 up to %2, or a leader of one piece</source>
        <translation>tome una de más de %1 y hasta %2, o un bajo de una pieza</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>no spool has a diameter for the butt</source>
        <translation>ninguna bobina tiene un diámetro para el extremo grueso</translation>
    </message>
    <message>
        <source>add one of %1</source>
        <translation>añada una, %1</translation>
    </message>
    <message>
        <source>from the tippet up the spools lead no farther than %1; the butt wants %2</source>
        <translation>desde el terminal hacia arriba las bobinas solo llegan a %1; el extremo grueso pide %2</translation>
    </message>
    <message>
        <source>add a diameter over %1 up to %2</source>
        <translation>añada un diámetro de más de %1 y hasta %2</translation>
    </message>
    <message>
        <source>there is no nylon or fluorocarbon to tie a leader from</source>
        <translation>no hay nailon ni fluorocarbono para anudar un bajo</translation>
    </message>
    <message>
        <source>add spools with their diameters</source>
        <translation>añada bobinas con sus diámetros</translation>
    </message>
    <message>
        <source>no spool is a tippet of %1</source>
        <translation>ninguna bobina da un terminal de %1</translation>
    </message>
    <message>
        <source>choose a tippet that is there, or add the spool</source>
        <translation>elija un terminal que haya, o añada la bobina</translation>
    </message>
    <message>
        <source>the butt follows from the line&apos;s tip, which is not known</source>
        <translation>el extremo grueso depende de la punta de la línea, que no se conoce</translation>
    </message>
    <message>
        <source>give its diameter, or what a foot of it weighs</source>
        <translation>dé su diámetro, o lo que pesa un pie de ella</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no %2</source>
        <translation>&quot;%1&quot; no vale como %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no date</source>
        <translation>&quot;%1&quot; no es una fecha</translation>
    </message>
    <message>
        <source>write year-month-day, as in 2026-03-02</source>
        <translation>escriba año-mes-día, como 2026-03-02</translation>
    </message>
    <message>
        <source>&quot;%1&quot; holds no mass, length, gr/ft or sink rate</source>
        <translation>&quot;%1&quot; no contiene masa, longitud, gr/ft ni velocidad de hundimiento</translation>
    </message>
    <message>
        <source>check which column is which, or take the line out</source>
        <translation>revise qué columna es cuál, o quite la línea</translation>
    </message>
    <message>
        <source>this line</source>
        <translation>esta línea</translation>
    </message>
    <message>
        <source>%1 lacks a length, or a mass or gr/ft</source>
        <translation>%1 no tiene longitud, o no tiene ni masa ni gr/ft</translation>
    </message>
    <message>
        <source>a tip needs its length and one of the two</source>
        <translation>una punta necesita su longitud y uno de los dos datos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 sinks over more than its length</source>
        <translation>%1 se hunde en más de su longitud</translation>
    </message>
    <message>
        <source>give the sinking feet within its length</source>
        <translation>dé los pies que se hunden dentro de su longitud</translation>
    </message>
    <message>
        <source>%1 ft cannot come off %2 ft</source>
        <translation>no se pueden quitar %1 ft de %2 ft</translation>
    </message>
    <message>
        <source>give less than its length</source>
        <translation>dé menos que su longitud</translation>
    </message>
    <message>
        <source>%1 is no mass</source>
        <translation>%1 no es una masa</translation>
    </message>
    <message>
        <source>write it like 113.5 gr or 7.4 g</source>
        <translation>escríbala como 113,5 gr o 7,4 g</translation>
    </message>
    <message>
        <source>%1 does not say gr or g</source>
        <translation>%1 no dice si son gr o g</translation>
    </message>
    <message>
        <source>write gr for grains or g for grams</source>
        <translation>escriba gr para grains o g para gramos</translation>
    </message>
    <message>
        <source>%1 is no unit of mass</source>
        <translation>%1 no es una unidad de masa</translation>
    </message>
    <message>
        <source>%1 is no length</source>
        <translation>%1 no es una longitud</translation>
    </message>
    <message>
        <source>write it like 10.5 ft, 10 ft 6 in or 3.2 m</source>
        <translation>escríbala como 10,5 ft, 10 ft 6 in o 3,2 m</translation>
    </message>
    <message>
        <source>%1 does not say its unit</source>
        <translation>%1 no dice su unidad</translation>
    </message>
    <message>
        <source>%1 is no unit of length</source>
        <translation>%1 no es una unidad de longitud</translation>
    </message>
    <message>
        <source>write ft, in, m or cm</source>
        <translation>escriba ft, in, m o cm</translation>
    </message>
    <message>
        <source>write feet before inches, as in 10 ft 6 in</source>
        <translation>escriba los pies antes que las pulgadas, como 10 ft 6 in</translation>
    </message>
    <message>
        <source>a mass of %1 gr is none</source>
        <translation>%1 gr no es una masa</translation>
    </message>
    <message>
        <source>weigh it again</source>
        <translation>pese de nuevo</translation>
    </message>
    <message>
        <source>%1 gr is not more than its loops, %2 gr</source>
        <translation>%1 gr no es más que sus lazos, %2 gr</translation>
    </message>
    <message>
        <source>weigh it with its loops, or correct them</source>
        <translation>pésela con sus lazos, o corríjalos</translation>
    </message>
    <message>
        <source>the water&apos;s depth and speed are not known</source>
        <translation>no se conocen la profundidad ni la corriente del agua</translation>
    </message>
    <message>
        <source>give them first</source>
        <translation>délas primero</translation>
    </message>
    <message>
        <source>there is no fly of known mass</source>
        <translation>no hay ninguna mosca de masa conocida</translation>
    </message>
    <message>
        <source>add the fly that was fished</source>
        <translation>añada la mosca que se pescó</translation>
    </message>
    <message>
        <source>a fly %1 ft down in %2 ft of water says nothing about the current</source>
        <translation>una mosca a %1 ft de hondo en %2 ft de agua no dice nada de la corriente</translation>
    </message>
    <message>
        <source>measure where the fly hangs free, above the bottom</source>
        <translation>mida donde la mosca cuelgue libre, sobre el fondo</translation>
    </message>
    <message>
        <source>how sure the depth is, is not a depth itself</source>
        <translation>la incertidumbre de la profundidad no es una profundidad posible</translation>
    </message>
    <message>
        <source>give 0 ft or a little more</source>
        <translation>dé 0 ft o un poco más</translation>
    </message>
    <message>
        <source>no current from 0.2 to 15 ft/s puts this rig&apos;s fly there</source>
        <translation>ninguna corriente de 0,2 a 15 ft/s lleva ahí la mosca de este montaje</translation>
    </message>
    <message>
        <source>check the depth, the rig and the depth of the water</source>
        <translation>revise la profundidad, el montaje y la profundidad del agua</translation>
    </message>
    <message>
        <source>a fall of %1 in is no fall in a tub</source>
        <translation>%1 in no es una caída en un cubo</translation>
    </message>
    <message>
        <source>give over 0 to 300 in</source>
        <translation>dé más de 0 y hasta 300 in</translation>
    </message>
    <message>
        <source>no time is given</source>
        <translation>no se ha dado ningún tiempo</translation>
    </message>
    <message>
        <source>time at least one fall</source>
        <translation>cronometre al menos una caída</translation>
    </message>
    <message>
        <source>a time of %1 s is none</source>
        <translation>%1 s no es un tiempo</translation>
    </message>
    <message>
        <source>time it again</source>
        <translation>cronometre de nuevo</translation>
    </message>
    <message>
        <source>no line of this mass per foot sinks so</source>
        <translation>ninguna línea con esta masa por pie se hunde así</translation>
    </message>
    <message>
        <source>measure the fall and time it again</source>
        <translation>mida la caída y cronometre de nuevo</translation>
    </message>
    <message>
        <source>this piece does not go by a sink rate</source>
        <translation>esta pieza no se rige por una velocidad de hundimiento</translation>
    </message>
    <message>
        <source>choose a piece that sinks by its rate</source>
        <translation>elija una pieza que se hunda a una velocidad dada</translation>
    </message>
    <message>
        <source>the shelf has no head of this style</source>
        <translation>el estante no tiene ninguna cabeza de este estilo</translation>
    </message>
    <message>
        <source>add one to it</source>
        <translation>añada una</translation>
    </message>
    <message>
        <source>the rig named here is not sound: %1</source>
        <translation>el montaje nombrado aquí no está bien: %1</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on</source>
        <translation>nombre un archivo de montaje desde la carpeta de la serie</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>falta %1</translation>
    </message>
    <message>
        <source>the format &quot;%1&quot; is not known</source>
        <translation>no se conoce el formato &quot;%1&quot;</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 es %2</translation>
    </message>
    <message>
        <source>give one of %1</source>
        <translation>dé uno de estos: %1</translation>
    </message>
    <message>
        <source>this name does not stay in the deck&apos;s own folder</source>
        <translation>este nombre sale de la carpeta de la serie</translation>
    </message>
    <message>
        <source>this name is a link out of the deck&apos;s own folder</source>
        <translation>este nombre es un enlace que sale de la carpeta de la serie</translation>
    </message>
    <message>
        <source>put the rig file itself into that folder</source>
        <translation>ponga el propio archivo del montaje en esa carpeta</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>revise el nombre</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>esto es una carpeta</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>nombre un archivo de ella</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>el archivo no se puede leer</translation>
    </message>
    <message>
        <source>check who may read it and that it is a plain file</source>
        <translation>revise quién puede leerlo y que sea un archivo corriente</translation>
    </message>
    <message>
        <source>more is wrong than these %1 problems</source>
        <translation>hay más errores que estos %1</translation>
    </message>
    <message>
        <source>mend them first</source>
        <translation>corríjalos primero</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice in this object</source>
        <translation>la clave &quot;%1&quot; aparece dos veces en este objeto</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>conserve una de las dos</translation>
    </message>
    <message>
        <source>objects and lists are nested deeper than %1 levels</source>
        <translation>hay objetos y listas anidados a más de %1 niveles</translation>
    </message>
    <message>
        <source>keep it to %1</source>
        <translation>no pase de %1</translation>
    </message>
    <message>
        <source>in text, write a line break as \n and a tab as \t</source>
        <translation>en el texto, escriba un salto de línea como \n y un tabulador como \t</translation>
    </message>
    <message>
        <source>end the text with a double quote on the same line</source>
        <translation>cierre el texto con comillas dobles en la misma línea</translation>
    </message>
    <message>
        <source>in text, write a backslash as two</source>
        <translation>en el texto, escriba doble la barra invertida</translation>
    </message>
    <message>
        <source>write the character itself instead of \u codes</source>
        <translation>escriba el carácter mismo en vez de códigos \u</translation>
    </message>
    <message>
        <source>give a name in double quotes here; no comma stands before }</source>
        <translation>dé aquí un nombre entre comillas dobles; no va coma antes de }</translation>
    </message>
    <message>
        <source>put a colon between the name and its value</source>
        <translation>ponga dos puntos entre el nombre y su valor</translation>
    </message>
    <message>
        <source>put a comma before it, or close the object with } first</source>
        <translation>ponga una coma antes, o cierre primero el objeto con }</translation>
    </message>
    <message>
        <source>put a comma before it, or close the list with ] first</source>
        <translation>ponga una coma antes, o cierre primero la lista con ]</translation>
    </message>
    <message>
        <source>nothing may follow the closing brace</source>
        <translation>nada puede seguir a la llave de cierre</translation>
    </message>
    <message>
        <source>write numbers as 13, 0.024 or -3.5</source>
        <translation>escriba los números como 13, 0.024 o -3.5</translation>
    </message>
    <message>
        <source>give a number, text in double quotes, true, false, a list or an object</source>
        <translation>dé un número, texto entre comillas dobles, true, false, una lista o un objeto</translation>
    </message>
    <message>
        <source>the number %1 is too large</source>
        <translation>el número %1 es demasiado grande</translation>
    </message>
    <message>
        <source>give a finite number</source>
        <translation>dé un número finito</translation>
    </message>
    <message>
        <source>something follows the closing brace</source>
        <translation>hay algo tras la llave de cierre</translation>
    </message>
    <message>
        <source>end the file there; one object a file</source>
        <translation>termine ahí el archivo; un objeto por archivo</translation>
    </message>
    <message>
        <source>the text ends too early</source>
        <translation>el texto acaba demasiado pronto</translation>
    </message>
    <message>
        <source>the file seems cut off; close every quote, list and object, or take a whole copy</source>
        <translation>el archivo parece cortado; cierre todas las comillas, listas y objetos, o tome una copia completa</translation>
    </message>
    <message>
        <source>%1 is no number that JSON knows</source>
        <translation>%1 no es un número que JSON conozca</translation>
    </message>
    <message>
        <source>a line break or tab</source>
        <translation>un salto de línea o un tabulador</translation>
    </message>
    <message>
        <source>this is not JSON: %1 cannot stand here</source>
        <translation>esto no es JSON: %1 no puede ir aquí</translation>
    </message>
    <message>
        <source>the file is larger than %1 bytes</source>
        <translation>el archivo pasa de %1 bytes</translation>
    </message>
    <message>
        <source>a file of ours has at most %1 (4 MiB)</source>
        <translation>un archivo nuestro tiene como mucho %1 (4 MiB)</translation>
    </message>
    <message>
        <source>there is a NUL byte</source>
        <translation>hay un byte NUL</translation>
    </message>
    <message>
        <source>take it out; the file must be plain text</source>
        <translation>quítelo; el archivo debe ser texto sin formato</translation>
    </message>
    <message>
        <source>the file is not UTF-8 text</source>
        <translation>el archivo no es texto UTF-8</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>guárdelo como UTF-8</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>give one JSON object, { ... }</source>
        <translation>dé un objeto JSON, { ... }</translation>
    </message>
    <message>
        <source>the file holds %1</source>
        <translation>el archivo contiene %1</translation>
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
        <source>the number %1 cannot be held</source>
        <translation>el número %1 no se puede representar</translation>
    </message>
    <message>
        <source>%1 has %2 entries</source>
        <translation>%1 tiene %2 entradas</translation>
    </message>
    <message>
        <source>give two numbers, %1</source>
        <translation>dé dos números, %1</translation>
    </message>
    <message>
        <source>give text in double quotes</source>
        <translation>dé texto entre comillas dobles</translation>
    </message>
    <message>
        <source>give a rig, { ... }, or the relative name of a rig file</source>
        <translation>dé un montaje, { ... }, o el nombre relativo de un archivo de montaje</translation>
    </message>
    <message>
        <source>%1 starts with %2</source>
        <translation>%1 empieza con %2</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>indique %1</translation>
    </message>
    <message>
        <source>this is &quot;%1&quot;, not %2</source>
        <translation>esto es &quot;%1&quot;, no %2</translation>
    </message>
    <message>
        <source>%1 has the format %2</source>
        <translation>%1 tiene el formato %2</translation>
    </message>
    <message>
        <source>version %1 is not known here</source>
        <translation>aquí no se conoce la versión %1</translation>
    </message>
    <message>
        <source>this program reads version %1; a newer one may be needed</source>
        <translation>este programa lee la versión %1; puede hacer falta uno más nuevo</translation>
    </message>
    <message>
        <source>give a whole number, %1</source>
        <translation>dé un número entero, %1</translation>
    </message>
    <message>
        <source>%1, or two as [rod end, fly end]</source>
        <translation>%1, o dos como [extremo de caña, extremo de mosca]</translation>
    </message>
    <message>
        <source>give two numbers, [low, high]</source>
        <translation>dé dos números, [menor, mayor]</translation>
    </message>
    <message>
        <source>give true or false</source>
        <translation>dé true o false</translation>
    </message>
    <message>
        <source>give an object, { ... }</source>
        <translation>dé un objeto, { ... }</translation>
    </message>
    <message>
        <source>give a list of objects, [ ... ]</source>
        <translation>dé una lista de objetos, [ ... ]</translation>
    </message>
    <message>
        <source>this entry is %1</source>
        <translation>esta entrada es %1</translation>
    </message>
    <message>
        <source>%1, or leave it out</source>
        <translation>%1, u omítalo</translation>
    </message>
    <message>
        <source>give a number, %1</source>
        <translation>dé un número, %1</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>omítalo</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; is not known</source>
        <translation>%1 &quot;%2&quot; no se conoce</translation>
    </message>
    <message>
        <source>gr_per_ft says %1, but diameter_in with %2 makes %3</source>
        <translation>gr_per_ft dice %1, pero diameter_in con %2 da %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the three out</source>
        <translation>deben coincidir dentro del 2 %; omita uno de los tres</translation>
    </message>
    <message>
        <source>density_g_cm3 says %1, but material %2 is %3</source>
        <translation>density_g_cm3 dice %1, pero material %2 tiene %3</translation>
    </message>
    <message>
        <source>they must agree within 2 %; leave one of the two out</source>
        <translation>deben coincidir dentro del 2 %; omita uno de los dos</translation>
    </message>
    <message>
        <source>sink_in_per_s says %1, but %2 sink at %3</source>
        <translation>sink_in_per_s dice %1, pero según %2 se hunde a %3</translation>
    </message>
    <message>
        <source>they must agree within 1 in/s; leave one of the three out</source>
        <translation>deben coincidir dentro de 1 in/s; omita uno de los tres</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>floats is true, but sink_in_per_s says that it sinks</source>
        <translation>floats es true, pero sink_in_per_s dice que se hunde</translation>
    </message>
    <message>
        <source>leave one of the two out</source>
        <translation>omita uno de los dos</translation>
    </message>
    <message>
        <source>floats is %1, but the rest makes %2</source>
        <translation>floats es %1, pero el resto da %2</translation>
    </message>
    <message>
        <source>water is 1 g/cm3; leave floats out or correct the rest</source>
        <translation>el agua es 1 g/cm3; omita floats o corrija el resto</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, heavier than any line; check what was typed</source>
        <translation>de su masa y su velocidad de hundimiento sale %1, más pesado que cualquier línea; revise lo escrito</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its sink rate, lighter than any line; check what was typed</source>
        <translation>de su masa y su velocidad de hundimiento sale %1, más ligero que cualquier línea; revise lo escrito</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, heavier than any line; check what was typed</source>
        <translation>de su masa y su diámetro sale %1, más pesado que cualquier línea; revise lo escrito</translation>
    </message>
    <message>
        <source>%1 follows from its mass and its diameter, lighter than any line; check what was typed</source>
        <translation>de su masa y su diámetro sale %1, más ligero que cualquier línea; revise lo escrito</translation>
    </message>
    <message>
        <source>a running line</source>
        <translation>una línea de disparo</translation>
    </message>
    <message>
        <source>a head</source>
        <translation>una cabeza</translation>
    </message>
    <message>
        <source>a tip</source>
        <translation>una punta</translation>
    </message>
    <message>
        <source>a leader</source>
        <translation>un bajo</translation>
    </message>
    <message>
        <source>a tippet</source>
        <translation>un terminal</translation>
    </message>
    <message>
        <source>a fly</source>
        <translation>una mosca</translation>
    </message>
    <message>
        <source>%1 is not UTF-8 text</source>
        <translation>%1 no es texto UTF-8</translation>
    </message>
    <message>
        <source>%1 has %2 characters</source>
        <translation>%1 tiene %2 caracteres</translation>
    </message>
    <message>
        <source>give one of these pairs: gr_per_ft with diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true; or diameter_in with density_g_cm3 or material</source>
        <translation>indique uno de estos pares: gr_per_ft con diameter_in, density_g_cm3, sink_in_per_s o &quot;floats&quot;: true; o diameter_in con density_g_cm3 o material</translation>
    </message>
    <message>
        <source>%1 alone does not fix this section</source>
        <translation>%1 por sí solo no determina este tramo</translation>
    </message>
    <message>
        <source>add diameter_in, density_g_cm3, sink_in_per_s or &quot;floats&quot;: true</source>
        <translation>añada diameter_in, density_g_cm3, sink_in_per_s o &quot;floats&quot;: true</translation>
    </message>
    <message>
        <source>add density_g_cm3, material or gr_per_ft</source>
        <translation>añada density_g_cm3, material o gr_per_ft</translation>
    </message>
    <message>
        <source>this section has neither gr_per_ft nor diameter_in</source>
        <translation>este tramo no tiene ni gr_per_ft ni diameter_in</translation>
    </message>
    <message>
        <source>of this section only the length is known</source>
        <translation>de este tramo solo se conoce la longitud</translation>
    </message>
    <message>
        <source>write an ISO 8601 date, year-month-day, as in 2026-03-02</source>
        <translation>escriba una fecha ISO 8601, año-mes-día, como 2026-03-02</translation>
    </message>
    <message>
        <source>%1 has no style &quot;%2&quot;</source>
        <translation>%1 no puede tener style &quot;%2&quot;</translation>
    </message>
    <message>
        <source>leave style out</source>
        <translation>omita style</translation>
    </message>
    <message>
        <source>leave style out, or give one of these: %1</source>
        <translation>omita style, o dé uno de estos: %1</translation>
    </message>
    <message>
        <source>give the fly&apos;s dry mass in grains, 0 when it is not known</source>
        <translation>dé la masa de la mosca en seco en grains, 0 si no se conoce</translation>
    </message>
    <message>
        <source>wet_gr %1 is less than dry_gr %2</source>
        <translation>wet_gr %1 es menos que dry_gr %2</translation>
    </message>
    <message>
        <source>a wet fly weighs at least what the dry one does; give both in grains</source>
        <translation>una mosca mojada pesa al menos lo que la seca; dé ambas en grains</translation>
    </message>
    <message>
        <source>%1 has no %2</source>
        <translation>%1 no tiene %2</translation>
    </message>
    <message>
        <source>give dry_gr and wet_gr</source>
        <translation>dé dry_gr y wet_gr</translation>
    </message>
    <message>
        <source>take them out; a fly is a point</source>
        <translation>quítelos; una mosca es un punto</translation>
    </message>
    <message>
        <source>take them out</source>
        <translation>quítelos</translation>
    </message>
    <message>
        <source>give 1 to %1 sections</source>
        <translation>dé de 1 a %1 tramos</translation>
    </message>
    <message>
        <source>%1 needs sections</source>
        <translation>%1 necesita tramos</translation>
    </message>
    <message>
        <source>%1 sections are too many</source>
        <translation>%1 tramos son demasiados</translation>
    </message>
    <message>
        <source>take it out, or make the part a fly</source>
        <translation>quítelo, o haga de la parte una mosca</translation>
    </message>
    <message>
        <source>the part weighs %1 gr with its loops, but the loops alone %2 gr</source>
        <translation>la parte pesa %1 gr con sus lazos, pero los lazos solos %2 gr</translation>
    </message>
    <message>
        <source>the weighed mass must be more than that of the loops</source>
        <translation>la masa pesada debe ser mayor que la de los lazos</translation>
    </message>
    <message>
        <source>%1 runs from %2 down to %3</source>
        <translation>%1 baja de %2 a %3</translation>
    </message>
    <message>
        <source>give the smaller number first</source>
        <translation>dé primero el número menor</translation>
    </message>
    <message>
        <source>the grain window</source>
        <translation>la ventana</translation>
    </message>
    <message>
        <source>a rig has one fly, this is another</source>
        <translation>un montaje lleva una mosca, esta es otra</translation>
    </message>
    <message>
        <source>a rig has one running line, this is another</source>
        <translation>un montaje lleva una línea de disparo, esta es otra</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>quítela</translation>
    </message>
    <message>
        <source>%1 stands after %2</source>
        <translation>%1 va después de %2</translation>
    </message>
    <message>
        <source>put the parts in order from rod to fly: %1</source>
        <translation>ponga las partes en orden de la caña a la mosca: %1</translation>
    </message>
    <message>
        <source>this is head piece number %1</source>
        <translation>esta es la pieza de cabeza número %1</translation>
    </message>
    <message>
        <source>a head has up to %1 pieces</source>
        <translation>una cabeza tiene hasta %1 piezas</translation>
    </message>
    <message>
        <source>give 1 to %1 parts</source>
        <translation>dé de 1 a %1 partes</translation>
    </message>
    <message>
        <source>a rig needs parts</source>
        <translation>un montaje necesita partes</translation>
    </message>
    <message>
        <source>%1 parts are too many</source>
        <translation>%1 partes son demasiadas</translation>
    </message>
    <message>
        <source>%1 is empty</source>
        <translation>%1 está vacío</translation>
    </message>
    <message>
        <source>give each part of a shelf an id of its own, as text</source>
        <translation>dé a cada parte de un estante una id propia, como texto</translation>
    </message>
    <message>
        <source>id &quot;%1&quot; is taken by part %2 already</source>
        <translation>la id &quot;%1&quot; ya la usa la parte %2</translation>
    </message>
    <message>
        <source>give the heading it stands under, as text</source>
        <translation>dé el título bajo el que está, como texto</translation>
    </message>
    <message>
        <source>clearance_ft and wanted_depth_ft both say where the fly is wanted</source>
        <translation>clearance_ft y wanted_depth_ft dicen ambos dónde se quiere la mosca</translation>
    </message>
    <message>
        <source>this spool has neither gr_per_ft nor diameter_in</source>
        <translation>esta bobina no tiene ni gr_per_ft ni diameter_in</translation>
    </message>
    <message>
        <source>give one of the two</source>
        <translation>dé uno de los dos</translation>
    </message>
    <message>
        <source>diameter_in alone does not say what the line weighs</source>
        <translation>diameter_in solo no dice lo que pesa la línea</translation>
    </message>
    <message>
        <source>add material or gr_per_ft</source>
        <translation>añada material o gr_per_ft</translation>
    </message>
    <message>
        <source>this spool does not say what its line does in water</source>
        <translation>esta bobina no dice qué hace su línea en el agua</translation>
    </message>
    <message>
        <source>add material, floats or sink_in_per_s</source>
        <translation>añada material, floats o sink_in_per_s</translation>
    </message>
    <message>
        <source>the name of the rig file is empty</source>
        <translation>el nombre del archivo de montaje está vacío</translation>
    </message>
    <message>
        <source>name a rig file from the deck&apos;s own folder on, with / between folders, or put the rig here</source>
        <translation>nombre un archivo de montaje desde la carpeta de la serie, con / entre carpetas, o ponga aquí el montaje</translation>
    </message>
    <message>
        <source>%1 are too many for a card</source>
        <translation>%1 es demasiado para una ficha</translation>
    </message>
    <message>
        <source>give up to %1</source>
        <translation>dé hasta %1</translation>
    </message>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>más de %1 a %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 a %2 %3</translation>
    </message>
    <message>
        <source>%1 %2 is outside its limits</source>
        <translation>%1 %2 está fuera de sus límites</translation>
    </message>
    <message>
        <source>not saved: %1</source>
        <translation>no guardado: %1</translation>
    </message>
    <message>
        <source>the file that is there is kept as it was; make room, or save elsewhere</source>
        <translation>el archivo que hay se conserva como estaba; haga sitio, o guarde en otro lugar</translation>
    </message>
    <message>
        <source>nothing was written; make room, or save elsewhere</source>
        <translation>no se escribió nada; haga sitio, o guarde en otro lugar</translation>
    </message>
    <message>
        <source>another program has changed this file since it was opened</source>
        <translation>otro programa ha cambiado este archivo desde que se abrió</translation>
    </message>
    <message>
        <source>save again to put yours in its place, or save elsewhere</source>
        <translation>guarde otra vez para poner el suyo en su lugar, o guarde en otro lugar</translation>
    </message>
    <message>
        <source>nothing on the line sinks by a rate</source>
        <translation>nada de la línea se hunde a una velocidad dada</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>grains per foot</source>
        <translation>grains por pie</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diámetro</translation>
    </message>
    <message>
        <source>sink rate</source>
        <translation>velocidad de hundimiento</translation>
    </message>
    <message>
        <source>uncertainty of the sink rate</source>
        <translation>incertidumbre de la velocidad de hundimiento</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>label mass</source>
        <translation>masa según etiqueta</translation>
    </message>
    <message>
        <source>weighed mass</source>
        <translation>masa pesada</translation>
    </message>
    <message>
        <source>loop mass</source>
        <translation>masa del lazo</translation>
    </message>
    <message>
        <source>fly mass</source>
        <translation>masa de la mosca</translation>
    </message>
    <message>
        <source>drag area</source>
        <translation>área de arrastre</translation>
    </message>
    <message>
        <source>rod length</source>
        <translation>longitud de la caña</translation>
    </message>
    <message>
        <source>line number</source>
        <translation>número de línea</translation>
    </message>
    <message>
        <source>number of hands</source>
        <translation>número de manos</translation>
    </message>
    <message>
        <source>grain window</source>
        <translation>ventana</translation>
    </message>
    <message>
        <source>surface speed</source>
        <translation>corriente en superficie</translation>
    </message>
    <message>
        <source>uncertainty of the speed</source>
        <translation>incertidumbre de la corriente</translation>
    </message>
    <message>
        <source>depth of the fly</source>
        <translation>profundidad de la mosca</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>salinity</source>
        <translation>salinidad</translation>
    </message>
    <message>
        <source>line speed</source>
        <translation>velocidad de línea</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>bucle</translation>
    </message>
    <message>
        <source>launch angle</source>
        <translation>ángulo de salida</translation>
    </message>
    <message>
        <source>rod tip height</source>
        <translation>altura de la puntera</translation>
    </message>
    <message>
        <source>overhang</source>
        <translation>vuelo</translation>
    </message>
    <message>
        <source>line out</source>
        <translation>línea fuera</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>mend</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>distancia al fondo</translation>
    </message>
    <message>
        <source>wanted depth</source>
        <translation>profundidad deseada</translation>
    </message>
    <message>
        <source>feet left</source>
        <translation>longitud restante</translation>
    </message>
    <message>
        <source>a rig</source>
        <translation>un montaje</translation>
    </message>
    <message>
        <source>a shelf</source>
        <translation>un estante</translation>
    </message>
    <message>
        <source>a list of pools</source>
        <translation>una lista de pozos</translation>
    </message>
    <message>
        <source>a list of spools</source>
        <translation>una lista de bobinas</translation>
    </message>
    <message>
        <source>a deck</source>
        <translation>una serie</translation>
    </message>
    <message>
        <source>deg</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>times</source>
        <translation>veces</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>altitude of the air</source>
        <translation>altitud del aire</translation>
    </message>
    <message>
        <source>the grains that this rod is made for are not known</source>
        <translation>no se sabe para cuántos grains está hecha esta caña</translation>
    </message>
    <message>
        <source>give its line number, or the grains that its maker names</source>
        <translation>dé su número de línea, o los grains que indica el fabricante</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Actions</name>
    <message>
        <source>Menu</source>
        <translation>Menú</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Open recent</source>
        <translation>Abrir reciente</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparar</translation>
    </message>
    <message>
        <source>C&amp;linic</source>
        <translation>C&amp;lase</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Acerca de Grainwise</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>New, empty line</source>
        <translation>Nuevo, línea vacía</translation>
    </message>
    <message>
        <source>Start from a rod…</source>
        <translation>Empezar desde una caña…</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Abrir…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Guardar como…</translation>
    </message>
    <message>
        <source>Handout on paper…</source>
        <translation>Hoja en papel…</translation>
    </message>
    <message>
        <source>Handout as PDF or picture…</source>
        <translation>Hoja como PDF o imagen…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Edit the part</source>
        <translation>Editar la parte</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Move towards the rod</source>
        <translation>Mover hacia la caña</translation>
    </message>
    <message>
        <source>Alt+Left</source>
        <translation>Alt+Izquierda</translation>
    </message>
    <message>
        <source>Move towards the fly</source>
        <translation>Mover hacia la mosca</translation>
    </message>
    <message>
        <source>Alt+Right</source>
        <translation>Alt+Derecha</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Name and notes…</source>
        <translation>Nombre y notas…</translation>
    </message>
    <message>
        <source>Rod…</source>
        <translation>Caña…</translation>
    </message>
    <message>
        <source>Water…</source>
        <translation>Agua…</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Hacer</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Arreglos</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pozos</translation>
    </message>
    <message>
        <source>Pack a wallet…</source>
        <translation>Preparar una cartera…</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Lance</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Río</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Profundidad en todos los pozos</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Proyector</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation>Letra mayor</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation>Letra menor</translation>
    </message>
    <message>
        <source>Reduce motion</source>
        <translation>Menos movimiento</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Intercambiar A y B</translation>
    </message>
    <message>
        <source>Copy this rig to the other</source>
        <translation>Copiar este montaje al otro</translation>
    </message>
    <message>
        <source>Fly to fly, or rear to rear</source>
        <translation>Mosca con mosca, o trasera con trasera</translation>
    </message>
    <message>
        <source>One water, or each its own</source>
        <translation>Una sola agua, o cada uno la suya</translation>
    </message>
    <message>
        <source>Card from this picture</source>
        <translation>Ficha de esta imagen</translation>
    </message>
    <message>
        <source>Show the deck</source>
        <translation>Mostrar la serie</translation>
    </message>
    <message>
        <source>Show from the chosen card</source>
        <translation>Mostrar desde la ficha elegida</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Pies y pulgadas</translation>
    </message>
    <message>
        <source>Metres and millimetres</source>
        <translation>Metros y milímetros</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Grains</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramos</translation>
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
        <translation>Cuatro fichas por página en papel…</translation>
    </message>
    <message>
        <source>Pictures and tables</source>
        <translation>Imágenes y tablas</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Copiar imagen</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Copiar tabla</translation>
    </message>
    <message>
        <source>What is this? (where the keyboard is)</source>
        <translation>¿Qué es esto? (donde está el teclado)</translation>
    </message>
    <message>
        <source>What is this? (point at it)</source>
        <translation>¿Qué es esto? (señálelo)</translation>
    </message>
    <message>
        <source>Sample decks and rigs</source>
        <translation>Ejemplos: series y montajes</translation>
    </message>
    <message>
        <source>Settings…</source>
        <translation>Ajustes…</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Autosave</name>
    <message>
        <source>the folder %1 could not be made</source>
        <translation>no se pudo crear la carpeta %1</translation>
    </message>
    <message>
        <source>nothing can be written in %1</source>
        <translation>no se puede escribir nada en %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BedChoice</name>
    <message>
        <source>The rougher the bed, the slower the water near it.</source>
        <translation>Cuanto más áspero el fondo, más lenta el agua junto a él.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BenchFace</name>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Lance</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Río</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Profundidad en todos los pozos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Caña</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Name and notes</source>
        <translation>Nombre y notas</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Problemas</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Fixes</source>
        <translation>Arreglos</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pozos</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Hacer</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>La línea</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Uniones</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Lo que pesa cada pie</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::BenchPage</name>
    <message>
        <source>A welded loop takes</source>
        <translation>Un lazo soldado toma</translation>
    </message>
    <message>
        <source>A sleeved loop takes</source>
        <translation>Un lazo con funda toma</translation>
    </message>
    <message>
        <source>A tied loop takes</source>
        <translation>Un lazo anudado toma</translation>
    </message>
    <message>
        <source>A splice takes, each side</source>
        <translation>Un empalme toma, por lado</translation>
    </message>
    <message>
        <source>A knot takes, each side</source>
        <translation>Un nudo toma, por lado</translation>
    </message>
    <message>
        <source>The knot at the fly takes</source>
        <translation>El nudo de la mosca toma</translation>
    </message>
    <message>
        <source>The line that loops, splices and knots take over the finished length, for cut sheets, divided spools and leaders.</source>
        <translation>La línea que lazos, empalmes y nudos toman además del largo acabado, para hojas de corte, bobinas divididas y bajos.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Reponer esta página a lo usual</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Lazos de las puntas</translation>
    </message>
    <message>
        <source>no loops</source>
        <translation>sin lazos</translation>
    </message>
    <message>
        <source>welded loops</source>
        <translation>lazos soldados</translation>
    </message>
    <message>
        <source>sleeved loops</source>
        <translation>lazos con funda</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>lazos anudados</translation>
    </message>
    <message>
        <source>usual: %1, common practice</source>
        <translation>usual: %1, práctica común</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Block</name>
    <message>
        <source>Opens the part for editing</source>
        <translation>Abre la parte para editarla</translation>
    </message>
    <message>
        <source>Moves the part towards the fly</source>
        <translation>Mueve la parte hacia la mosca</translation>
    </message>
    <message>
        <source>Moves the part towards the rod</source>
        <translation>Mueve la parte hacia la caña</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardForm</name>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 (in the deck)</source>
        <translation>%1 (en la serie)</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>montaje sin nombre</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>La línea</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Lo que pesa cada pie</translation>
    </message>
    <message>
        <source>The cast</source>
        <translation>El lance</translation>
    </message>
    <message>
        <source>The river</source>
        <translation>El río</translation>
    </message>
    <message>
        <source>Two rigs compared</source>
        <translation>Dos montajes comparados</translation>
    </message>
    <message>
        <source>Words alone</source>
        <translation>Solo palabras</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>The one line</source>
        <translation>La única línea</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Answer, on the next press</source>
        <translation>Respuesta, a la siguiente pulsación</translation>
    </message>
    <message>
        <source>Notes, for your screen only</source>
        <translation>Notas, solo para su pantalla</translation>
    </message>
    <message>
        <source>What the card shows</source>
        <translation>Lo que muestra la ficha</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Rig B</source>
        <translation>Montaje B</translation>
    </message>
    <message>
        <source>Change title</source>
        <translation>Cambiar título</translation>
    </message>
    <message>
        <source>Change line</source>
        <translation>Cambiar línea</translation>
    </message>
    <message>
        <source>Change question</source>
        <translation>Cambiar pregunta</translation>
    </message>
    <message>
        <source>Change answer</source>
        <translation>Cambiar respuesta</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Cambiar notas</translation>
    </message>
    <message>
        <source>Change picture</source>
        <translation>Cambiar imagen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>File…</source>
        <translation>Archivo…</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Take the bench&apos;s rig</source>
        <translation>Tomar el montaje del banco</translation>
    </message>
    <message>
        <source>Name a rig file</source>
        <translation>Nombrar un archivo de montaje</translation>
    </message>
    <message>
        <source>Take the rig out</source>
        <translation>Quitar el montaje</translation>
    </message>
    <message>
        <source>Flies side by side</source>
        <translation>Moscas una junto a otra</translation>
    </message>
    <message>
        <source>One rig in several pools</source>
        <translation>Un montaje en varios pozos</translation>
    </message>
    <message>
        <source>Several tips on one rig</source>
        <translation>Varias puntas en un montaje</translation>
    </message>
    <message>
        <source>Figures: where the rigs differ</source>
        <translation>Cifras: en qué difieren los montajes</translation>
    </message>
    <message>
        <source>No figures</source>
        <translation>Sin cifras</translation>
    </message>
    <message>
        <source>The wet fly&apos;s weight</source>
        <translation>Peso de la mosca mojada</translation>
    </message>
    <message>
        <source>The heaviest foot</source>
        <translation>El pie más pesado</translation>
    </message>
    <message>
        <source>The worst joint</source>
        <translation>La peor unión</translation>
    </message>
    <message>
        <source>Tip share of the head</source>
        <translation>Parte de punta de la cabeza</translation>
    </message>
    <message>
        <source>Fly against tip</source>
        <translation>Mosca frente a punta</translation>
    </message>
    <message>
        <source>Head on rod</source>
        <translation>Cabeza en caña</translation>
    </message>
    <message>
        <source>Rods of line</source>
        <translation>Línea en largos de caña</translation>
    </message>
    <message>
        <source>Range of the depth</source>
        <translation>Margen de profundidad</translation>
    </message>
    <message>
        <source>Depth when the line comes tight</source>
        <translation>Profundidad cuando la línea se tensa</translation>
    </message>
    <message>
        <source>Greatest depth of the swing</source>
        <translation>Mayor profundidad del swing</translation>
    </message>
    <message>
        <source>Depth on the way across</source>
        <translation>Profundidad al cruzar</translation>
    </message>
    <message>
        <source>Line under water</source>
        <translation>Línea bajo el agua</translation>
    </message>
    <message>
        <source>Figures with the answer</source>
        <translation>Cifras con la respuesta</translation>
    </message>
    <message>
        <source>Flies or tips</source>
        <translation>Moscas o puntas</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pozos</translation>
    </message>
    <message>
        <source>Change figures</source>
        <translation>Cambiar las cifras</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, where it comes from</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Add the fly or the tip that is on the bench</source>
        <translation>Añadir la mosca o la punta que está en el banco</translation>
    </message>
    <message>
        <source>Take the pools of the bench</source>
        <translation>Tomar los pozos del banco</translation>
    </message>
    <message>
        <source>Add the bench&apos;s part</source>
        <translation>Añadir la parte del banco</translation>
    </message>
    <message>
        <source>Take the parts out</source>
        <translation>Quitar las partes</translation>
    </message>
    <message>
        <source>Take the bench&apos;s pools</source>
        <translation>Tomar los pozos del banco</translation>
    </message>
    <message>
        <source>Take the pools out</source>
        <translation>Quitar los pozos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of the card, its name</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Take the rig that is on the bench</source>
        <translation>Tomar el montaje que está en el banco</translation>
    </message>
    <message>
        <source>Take a rig file from the deck&apos;s folder</source>
        <translation>Tomar un archivo de montaje de la carpeta de la serie</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CardView</name>
    <message>
        <source>The card as the class sees it</source>
        <translation>La ficha como la ve la clase</translation>
    </message>
    <message>
        <source>On the card</source>
        <translation>En la ficha</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Weighs (%1)</source>
        <translation>Pesa (%1)</translation>
    </message>
    <message>
        <source>How deep the fly is</source>
        <translation>A qué profundidad va la mosca</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Pozo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pool, how deep</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Ficha</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastFeed</name>
    <message>
        <source>The figures of this rig are too far out to follow its loop</source>
        <translation>Las cifras de este montaje son demasiado extremas para seguir su bucle</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastPanel</name>
    <message>
        <source>real time</source>
        <translation>tiempo real</translation>
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
        <translation>Donde lance de verdad: ojos protegidos, anzuelos y tendidos eléctricos lejos de la gente y de la caña.</translation>
    </message>
    <message>
        <source>A learner: 20 % less speed</source>
        <translation>Quien aprende: 20 % menos velocidad</translation>
    </message>
    <message>
        <source>Line speed</source>
        <translation>Velocidad de línea</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Bucle</translation>
    </message>
    <message>
        <source>Upwards</source>
        <translation>Hacia arriba</translation>
    </message>
    <message>
        <source>Rod tip</source>
        <translation>Puntera</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Ángulo de salida</translation>
    </message>
    <message>
        <source>The fly never comes round: the loop dies on the way.</source>
        <translation>La mosca nunca llega: el bucle muere por el camino.</translation>
    </message>
    <message>
        <source>The line is on the water before it is out: more line speed, or aim higher.</source>
        <translation>La línea cae al agua antes de estirarse: más velocidad de línea, o apunte más alto.</translation>
    </message>
    <message>
        <source>Turns over after %1 s, %2 above the water.</source>
        <translation>Se despliega a los %1 s, a %2 sobre el agua.</translation>
    </message>
    <message>
        <source>Usual cast and air</source>
        <translation>Lance y aire usuales</translation>
    </message>
    <message>
        <source>Usual cast</source>
        <translation>Lance usual</translation>
    </message>
    <message>
        <source>Speed, loop, angle and rod tip as usual for this head, the air of %1</source>
        <translation>Velocidad, bucle, ángulo y puntera como es usual para esta cabeza, el aire de %1</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Lance</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CastView</name>
    <message>
        <source>The cast, seen from the side</source>
        <translation>El lance, visto de lado</translation>
    </message>
    <message>
        <source>still moving</source>
        <translation>aún en movimiento</translation>
    </message>
    <message>
        <source>lost to the air</source>
        <translation>cedido al aire</translation>
    </message>
    <message>
        <source>lost to the fly</source>
        <translation>cedido a la mosca</translation>
    </message>
    <message>
        <source>An unrolling loop of %1 seconds.</source>
        <translation>Un bucle que se despliega en %1 segundos.</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>se está calculando de nuevo</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChoiceList</name>
    <message>
        <source>%1 (on)</source>
        <comment>a tip that is fitted</comment>
        <translation>%1 (puesta)</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>tip, verdict: sentence</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Grades: %1</source>
        <translation>Notas: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ChooserPanel</name>
    <message>
        <source>Looking through the shelf: %1</source>
        <translation>Mirando en el estante: %1</translation>
    </message>
    <message>
        <source>Pool to choose for</source>
        <translation>Pozo para el que se elige</translation>
    </message>
    <message>
        <source>Kind of tip</source>
        <translation>Clase de punta</translation>
    </message>
    <message>
        <source>tips and coated leaders</source>
        <translation>puntas y bajos recubiertos</translation>
    </message>
    <message>
        <source>tips only</source>
        <translation>solo puntas</translation>
    </message>
    <message>
        <source>coated leaders only</source>
        <translation>solo bajos recubiertos</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>mismo gesto</translation>
    </message>
    <message>
        <source>hide refused</source>
        <translation>ocultar descartadas</translation>
    </message>
    <message>
        <source>in the wallet</source>
        <translation>en la cartera</translation>
    </message>
    <message>
        <source>Tips, the best first</source>
        <translation>Puntas, la mejor primero</translation>
    </message>
    <message>
        <source>the rig&apos;s own water, nothing wanted</source>
        <translation>el agua del propio montaje, nada deseado</translation>
    </message>
    <message>
        <source>Leave the pool</source>
        <translation>Dejar el pozo</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Se quiere %1.</translation>
    </message>
    <message>
        <source>Before another tip:</source>
        <translation>Antes que otra punta:</translation>
    </message>
    <message>
        <source>Put on %1</source>
        <translation>Poner %1</translation>
    </message>
    <message>
        <source>Take the tip off</source>
        <translation>Quitar la punta</translation>
    </message>
    <message>
        <source>Fly to choose for</source>
        <translation>Mosca para la que se elige</translation>
    </message>
    <message>
        <source>Only tips that keep the stroke of the rig as it stands</source>
        <translation>Solo puntas que dejan el gesto del montaje como está</translation>
    </message>
    <message>
        <source>No wallet is packed yet</source>
        <translation>Aún no hay cartera preparada</translation>
    </message>
    <message>
        <source>no fly yet: pick one</source>
        <translation>aún sin mosca: elija una</translation>
    </message>
    <message>
        <source>build a fly…</source>
        <translation>montar una mosca…</translation>
    </message>
    <message>
        <source>Tie on %1</source>
        <translation>Atar %1</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Map of the tips</source>
        <translation>Mapa de las puntas</translation>
    </message>
    <message>
        <source>Limits: common practice; turnover, depth and grades ours.</source>
        <translation>Límites: práctica común; despliegue, profundidad y notas, nuestros.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ClinicFace</name>
    <message>
        <source>Decks (*.deck.json);;All files (*)</source>
        <translation>Series (*.deck.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>¿Guardar primero los cambios de &quot;%1&quot;?</translation>
    </message>
    <message>
        <source>Open a deck</source>
        <translation>Abrir una serie</translation>
    </message>
    <message>
        <source>Save the deck</source>
        <translation>Guardar la serie</translation>
    </message>
    <message>
        <source>A rig in the deck&apos;s folder</source>
        <translation>Un montaje en la carpeta de la serie</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json)</source>
        <translation>Montajes (*.rig.json)</translation>
    </message>
    <message>
        <source>Title of the deck</source>
        <translation>Título de la serie</translation>
    </message>
    <message>
        <source>Cards of the deck</source>
        <translation>Fichas de la serie</translation>
    </message>
    <message>
        <source>With its answer</source>
        <translation>Con su respuesta</translation>
    </message>
    <message>
        <source>Screen for the class</source>
        <translation>Pantalla para la clase</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Abrir…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Card from the bench</source>
        <translation>Ficha del banco</translation>
    </message>
    <message>
        <source>Blank card</source>
        <translation>Ficha en blanco</translation>
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
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Show (F5)</source>
        <translation>Mostrar (F5)</translation>
    </message>
    <message>
        <source>From this card (Shift+F5)</source>
        <translation>Desde esta ficha (Mayús+F5)</translation>
    </message>
    <message>
        <source>Duplicate card</source>
        <translation>Duplicar ficha</translation>
    </message>
    <message>
        <source>Delete card</source>
        <translation>Borrar ficha</translation>
    </message>
    <message>
        <source>Move card</source>
        <translation>Mover ficha</translation>
    </message>
    <message>
        <source>Add card</source>
        <translation>Añadir ficha</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>no title yet</source>
        <translation>aún sin título</translation>
    </message>
    <message>
        <source>Card %1: %2</source>
        <translation>Ficha %1: %2</translation>
    </message>
    <message>
        <source>Save the deck first: rig files are named from its folder on.</source>
        <translation>Guarde antes la serie: los archivos de montaje se nombran desde su carpeta.</translation>
    </message>
    <message>
        <source>%1 lies outside the deck&apos;s folder: copy it there, or take it from the bench into the deck.</source>
        <translation>%1 está fuera de la carpeta de la serie: cópielo allí, o llévelo del banco a la serie.</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 no se abrió</translation>
    </message>
    <message>
        <source>%1, %2 × %3</source>
        <translation>%1, %2 × %3</translation>
    </message>
    <message>
        <source>A deck is being shown</source>
        <translation>Se está mostrando una serie</translation>
    </message>
    <message>
        <source>A card a page, with its answer and the notes…</source>
        <translation>Una ficha por página, con su respuesta y las notas…</translation>
    </message>
    <message>
        <source>Four cards a page, with lines to write on…</source>
        <translation>Cuatro fichas por página, con líneas para escribir…</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>No card yet. Make one of the rig on the bench, or begin with a blank one.

Lessons to look at: Menu, Help, Sample decks and rigs.</source>
        <translation>Aún no hay fichas. Haga una del montaje del banco, o empiece con una vacía.

Series hechas: Menú, Ayuda, Ejemplos.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>La serie aún no tiene fichas.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ClinicHost</name>
    <message>
        <source>Clinic</source>
        <translation>Clase</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareChart</name>
    <message>
        <source>What each foot weighs, of A and of B</source>
        <translation>Lo que pesa cada pie de A y de B</translation>
    </message>
    <message>
        <source>Left and Right move the cursor by half a foot, with Shift by a tenth</source>
        <translation>Izquierda y Derecha mueven el cursor medio pie, con Mayús una décima</translation>
    </message>
    <message>
        <source>%1 %2 to the fly</source>
        <translation>%1 %2 hasta la mosca</translation>
    </message>
    <message>
        <source>both alike</source>
        <translation>ambos iguales</translation>
    </message>
    <message>
        <source>B %1 heavier</source>
        <translation>B %1 más pesado</translation>
    </message>
    <message>
        <source>B %1 lighter</source>
        <translation>B %1 más ligero</translation>
    </message>
    <message>
        <source>%1: A %2, B %3 %4, %5</source>
        <translation>%1: A %2, B %3 %4, %5</translation>
    </message>
    <message>
        <source>%1: no line of either here</source>
        <translation>%1: aquí no hay línea de ninguno</translation>
    </message>
    <message>
        <source>%1: B %2 %3, A has no line here</source>
        <translation>%1: B %2 %3, A no tiene línea aquí</translation>
    </message>
    <message>
        <source>%1: A %2 %3, B has no line here</source>
        <translation>%1: A %2 %3, B no tiene línea aquí</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareFace</name>
    <message>
        <source>Copy %1 to %2</source>
        <translation>Copiar %1 a %2</translation>
    </message>
    <message>
        <source>Take the water of %1</source>
        <translation>Tomar el agua de %1</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Lance</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Río</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Problemas</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Intercambiar A y B</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A (X)</source>
        <translation>A pasa a ser B y B pasa a ser A (X)</translation>
    </message>
    <message>
        <source>Fly to fly</source>
        <translation>Mosca con mosca</translation>
    </message>
    <message>
        <source>Lay the flies under each other instead of the rears of the heads</source>
        <translation>Pone las moscas una bajo otra en vez de las traseras de las cabezas</translation>
    </message>
    <message>
        <source>One water</source>
        <translation>Una sola agua</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other</source>
        <translation>Ambos pescan la misma agua: un cambio para uno vale para el otro</translation>
    </message>
    <message>
        <source>Shelf, for %1</source>
        <translation>Estante, para %1</translation>
    </message>
    <message>
        <source>Part of %1</source>
        <translation>Parte de %1</translation>
    </message>
    <message>
        <source>Rod of %1</source>
        <translation>Caña de %1</translation>
    </message>
    <message>
        <source>Water of %1</source>
        <translation>Agua de %1</translation>
    </message>
    <message>
        <source>Name and notes of %1</source>
        <translation>Nombre y notas de %1</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Probar: %1</translation>
    </message>
    <message>
        <source>What if %1 had this? Enter keeps it, Escape does not.</source>
        <translation>¿Y si %1 tuviera esto? Intro lo deja puesto, Esc no.</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Montaje</translation>
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
        <translation>Tiempo (s)</translation>
    </message>
    <message>
        <source>Fly away from the rod (%1)</source>
        <translation>Mosca lejos de la caña (%1)</translation>
    </message>
    <message>
        <source>Fly above the water (%1)</source>
        <translation>Mosca sobre el agua (%1)</translation>
    </message>
    <message>
        <source>The line of A</source>
        <translation>La línea de A</translation>
    </message>
    <message>
        <source>The line of B</source>
        <translation>La línea de B</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Uniones</translation>
    </message>
    <message>
        <source>What each foot weighs, of A and of B</source>
        <translation>Lo que pesa cada pie, de A y de B</translation>
    </message>
    <message>
        <source>Readings of A and B</source>
        <translation>Lecturas de A y B</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CompareHost</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 no se abrió</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 no se guardó</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ControlHelp</name>
    <message>
        <source>Opens the menu: every action of the program, each with its key.</source>
        <translation>Abre el menú: todas las acciones del programa, cada una con su tecla.</translation>
    </message>
    <message>
        <source>The name of the rig. Press it to change the name and the notes.</source>
        <translation>El nombre del montaje. Púlselo para cambiar el nombre y las notas.</translation>
    </message>
    <message>
        <source>The rod that the head is judged for: its length, line number and windows. Press it to change them.</source>
        <translation>La caña para la que se juzga la cabeza: longitud, número y ventanas. Púlselo para cambiarlas.</translation>
    </message>
    <message>
        <source>The water that the rig fishes; the depth follows from it. Press it to change depth, current or temperature.</source>
        <translation>El agua en que pesca el montaje; de ella resulta la profundidad. Púlselo para cambiar hondura, corriente o temperatura.</translation>
    </message>
    <message>
        <source>Chooses the units that are shown: feet or metres, grains or grams, Fahrenheit or Celsius. Files keep their own.</source>
        <translation>Elige las unidades que se muestran: pies o metros, grains o gramos, Fahrenheit o Celsius. Los archivos conservan las suyas.</translation>
    </message>
    <message>
        <source>Takes the last step back. Nothing is asked for before a change, since each can be undone.</source>
        <translation>Deshace el último paso. No se pregunta antes de un cambio, porque todos se pueden deshacer.</translation>
    </message>
    <message>
        <source>Does again what was taken back last.</source>
        <translation>Vuelve a hacer lo último que se deshizo.</translation>
    </message>
    <message>
        <source>Makes all type smaller, down to the size it began with.</source>
        <translation>Hace más pequeña toda la letra, hasta el tamaño inicial.</translation>
    </message>
    <message>
        <source>Makes all type larger, up to twice the size; diagrams follow.</source>
        <translation>Hace más grande toda la letra, hasta el doble; los diagramas la siguen.</translation>
    </message>
    <message>
        <source>The Bench: one rig, what each foot of it weighs, and its readings.</source>
        <translation>El Banco: un montaje, lo que pesa cada pie y sus lecturas.</translation>
    </message>
    <message>
        <source>Compare: two rigs on one ruler, and what each difference does.</source>
        <translation>Comparar: dos montajes sobre una regla, y qué hace cada diferencia.</translation>
    </message>
    <message>
        <source>Clinic: a deck of cards to teach with, shown over a whole screen.</source>
        <translation>Clase: una serie de fichas para enseñar, a pantalla completa.</translation>
    </message>
    <message>
        <source>The line laid out true to scale, rod left, fly right. A block&apos;s height is what a foot of it weighs. Drag parts here, or choose one on the Shelf and press Enter.</source>
        <translation>La línea a escala, caña a la izquierda, mosca a la derecha. La altura de un bloque es lo que pesa un pie. Arrastre partes aquí, o elija una en el Estante y pulse Intro.</translation>
    </message>
    <message>
        <source>A part of the line. Enter edits it, Alt+Left and Alt+Right move it, Delete removes it, Ctrl+D doubles it; the menu key lists all of that.</source>
        <translation>Una parte de la línea. Intro la edita, Alt+Izquierda y Alt+Derecha la mueven, Supr la quita, Ctrl+D la duplica; la tecla de menú lo muestra todo.</translation>
    </message>
    <message>
        <source>A joint: what the three feet before it and the three feet behind it weigh, and what that does. Press it to read why.</source>
        <translation>Una unión: lo que pesan los tres pies anteriores y los tres siguientes, y qué hace. Púlsela para leer por qué.</translation>
    </message>
    <message>
        <source>The last six feet, larger, so that leader, tippet and fly can be taken hold of.</source>
        <translation>Los últimos seis pies, ampliados, para poder asir bajo, terminal y mosca.</translation>
    </message>
    <message>
        <source>Proposes a head for the rod, from its windows, as a place to begin.</source>
        <translation>Propone una cabeza para la caña, según sus ventanas, para empezar.</translation>
    </message>
    <message>
        <source>What each foot weighs, exactly under that foot of the line. Left and Right move the cursor by half a foot, with Shift by a tenth.</source>
        <translation>Lo que pesa cada pie, justo debajo de ese pie de la línea. Izquierda y Derecha mueven el cursor medio pie, con Mayús una décima.</translation>
    </message>
    <message>
        <source>A reading: its figure, the two figures it came from, and its verdict. Press it to read why, with the formula and the limits.</source>
        <translation>Una lectura: su cifra, las dos de que procede y su veredicto. Púlsela para leer por qué, con la fórmula y los límites.</translation>
    </message>
    <message>
        <source>Whether the tip carries the fly and the loop has speed to spare. Press it to read why; the chart then draws what the loop needs.</source>
        <translation>Si la punta lleva la mosca y al bucle le sobra velocidad. Púlselo para leer por qué; el gráfico dibuja entonces lo que el bucle necesita.</translation>
    </message>
    <message>
        <source>The Shelf: parts to put on the line.</source>
        <translation>El Estante: partes para la línea.</translation>
    </message>
    <message>
        <source>Everything about the part that is chosen on the line, to be changed here.</source>
        <translation>Todo sobre la parte elegida en la línea, para cambiarlo aquí.</translation>
    </message>
    <message>
        <source>The unrolling loop of this rig, played, with the sliders of the cast.</source>
        <translation>El bucle de este montaje al desplegarse, en marcha, con los mandos del lance.</translation>
    </message>
    <message>
        <source>The swing of this rig through its water, played, with angle, mend and line out.</source>
        <translation>El cruce de este montaje por su agua, en marcha, con ángulo, mend y línea fuera.</translation>
    </message>
    <message>
        <source>Every tip for this fly, head and pool, the best first, and why the others are refused.</source>
        <translation>Cada punta para esta mosca, cabeza y pozo, la mejor primero, y por qué se rechazan las demás.</translation>
    </message>
    <message>
        <source>What is wrong with this rig, and the single changes that mend it.</source>
        <translation>Qué va mal en este montaje, y los cambios únicos que lo arreglan.</translation>
    </message>
    <message>
        <source>Tasks at the bench: cutting, spools, weighing, leaders, flies, tips, measuring, own parts.</source>
        <translation>Tareas del banco: cortar, bobinas, pesar, bajos, moscas, puntas, medir, partes propias.</translation>
    </message>
    <message>
        <source>The pools of your river: their water and where the fly is wanted there.</source>
        <translation>Los pozos de su río: su agua y dónde se quiere la mosca.</translation>
    </message>
    <message>
        <source>A page of the drawer. Press it to open it; another page takes its place.</source>
        <translation>Una página del cajón. Púlsela para abrirla; otra ocupará su lugar.</translation>
    </message>
    <message>
        <source>Type any words of a part: 10 ft 11 gr/ft. Down goes on to the parts, Enter there places one.</source>
        <translation>Escriba cualquier palabra de una parte: 10 ft 11 gr/ft. Abajo pasa a las partes, Intro coloca una.</translation>
    </message>
    <message>
        <source>The groups of the Shelf. A search looks through all of them.</source>
        <translation>Los grupos del Estante. Una búsqueda los recorre todos.</translation>
    </message>
    <message>
        <source>Parts to put on the line: drag one up, or choose it and press Enter. It goes where its kind belongs.</source>
        <translation>Partes para la línea: arrastre una, o elíjala y pulse Intro. Va donde corresponde a su clase.</translation>
    </message>
    <message>
        <source>Plays it, or stops it where it is.</source>
        <translation>Lo pone en marcha o lo detiene.</translation>
    </message>
    <message>
        <source>The moment that is shown. Left and Right move it.</source>
        <translation>El momento que se muestra. Izquierda y Derecha lo mueven.</translation>
    </message>
    <message>
        <source>How fast it is played against real time.</source>
        <translation>Lo rápido que va respecto al tiempo real.</translation>
    </message>
    <message>
        <source>The loop true to scale, rod left, and under it where the energy is. A model, not a filmed cast.</source>
        <translation>El bucle a escala, caña a la izquierda, y debajo dónde está la energía. Un modelo, no un lance filmado.</translation>
    </message>
    <message>
        <source>The swing from the side, true to scale, and from above: the track is darker and wider the deeper the fly is.</source>
        <translation>El cruce de lado, a escala, y desde arriba: el rastro es más oscuro y ancho cuanto más honda va la mosca.</translation>
    </message>
    <message>
        <source>Sets the sliders to the slower, wider loop of somebody who learns.</source>
        <translation>Pone los mandos en el bucle más lento y ancho de quien aprende.</translation>
    </message>
    <message>
        <source>How fast the line leaves the rod tip.</source>
        <translation>La velocidad con que la línea deja la puntera.</translation>
    </message>
    <message>
        <source>The height of the loop from leg to leg. A narrow one loses less to the air.</source>
        <translation>La altura del bucle de un lado a otro. Uno estrecho pierde menos en el aire.</translation>
    </message>
    <message>
        <source>How steeply the cast is aimed: up is above level.</source>
        <translation>Con qué inclinación se lanza: hacia arriba es sobre la horizontal.</translation>
    </message>
    <message>
        <source>How high the rod tip is above the water when the loop leaves it.</source>
        <translation>A qué altura del agua está la puntera cuando sale el bucle.</translation>
    </message>
    <message>
        <source>How high the river lies: thin air takes less from the loop.</source>
        <translation>A qué altitud está el río: el aire fino le quita menos al bucle.</translation>
    </message>
    <message>
        <source>How long slack lets the line sink before it comes tight.</source>
        <translation>Cuánto tiempo la línea floja la deja hundirse antes de tensarse.</translation>
    </message>
    <message>
        <source>How much line is out from the rod tip to the fly.</source>
        <translation>Cuánta línea hay fuera desde la puntera hasta la mosca.</translation>
    </message>
    <message>
        <source>A table of how deep this rig fishes in every pool, at low, usual and high current.</source>
        <translation>Una tabla de lo hondo que pesca este montaje en cada pozo, con corriente baja, habitual y alta.</translation>
    </message>
    <message>
        <source>The pool that the tips are judged for: where the fly is wanted decides.</source>
        <translation>El pozo para el que se juzgan las puntas: decide dónde se quiere la mosca.</translation>
    </message>
    <message>
        <source>Lists all, only tips, or only coated leaders.</source>
        <translation>Muestra todas, solo puntas o solo bajos recubiertos.</translation>
    </message>
    <message>
        <source>Leaves only tips with which the casting stroke stays the same: within a foot and 8 % of mass.</source>
        <translation>Deja solo puntas con las que el gesto es el mismo: a un pie y un 8 % de la masa.</translation>
    </message>
    <message>
        <source>Leaves out the tips that are refused.</source>
        <translation>Quita las puntas rechazadas.</translation>
    </message>
    <message>
        <source>Leaves only what is in the packed wallet.</source>
        <translation>Deja solo lo que está en la cartera preparada.</translation>
    </message>
    <message>
        <source>Tips, the best first, with the reason. To choose one shows it on the line; Enter puts it on.</source>
        <translation>Puntas, la mejor primero, con el motivo. Elegir una la muestra en la línea; Intro la pone.</translation>
    </message>
    <message>
        <source>Each tip as a dot: deeper is lower, to the right it carries the fly better. The band is the wanted water. A click chooses a tip.</source>
        <translation>Cada punta, un punto: más honda, más abajo; a la derecha lleva mejor la mosca. La banda es el agua deseada. Un clic elige una.</translation>
    </message>
    <message>
        <source>A tip of the same family: press it to put it on the line.</source>
        <translation>Una punta de la misma familia: púlsela para ponerla en la línea.</translation>
    </message>
    <message>
        <source>Changes that can be made on the water, from the wallet. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Cambios que se pueden hacer en el agua, con la cartera. Elegir uno lo muestra; Intro lo hace, en un solo paso.</translation>
    </message>
    <message>
        <source>Changes for the bench: cutting, splicing, another head. To choose one shows it; Enter makes it, as one step of undo.</source>
        <translation>Cambios para el banco: cortar, empalmar, otra cabeza. Elegir uno lo muestra; Intro lo hace, en un solo paso.</translation>
    </message>
    <message>
        <source>Your pools. The one that is chosen is changed on the right.</source>
        <translation>Sus pozos. El elegido se cambia a la derecha.</translation>
    </message>
    <message>
        <source>Gives the rig the water of the chosen pool.</source>
        <translation>Da al montaje el agua del pozo elegido.</translation>
    </message>
    <message>
        <source>A new pool, with the water of the rig to begin with.</source>
        <translation>Un pozo nuevo, al principio con el agua del montaje.</translation>
    </message>
    <message>
        <source>Removes what is chosen in the list.</source>
        <translation>Quita lo que está elegido en la lista.</translation>
    </message>
    <message>
        <source>Reads a file of pools in place of these; Undo brings these back.</source>
        <translation>Lee un archivo de pozos en lugar de estos; Deshacer los recupera.</translation>
    </message>
    <message>
        <source>Writes these pools to a file of their own.</source>
        <translation>Escribe estos pozos en un archivo propio.</translation>
    </message>
    <message>
        <source>What the pool is called in lists and on paper.</source>
        <translation>Cómo se llama el pozo en listas y en papel.</translation>
    </message>
    <message>
        <source>Where the fly is wanted in this pool: anywhere, so far off the bottom, or so far below the surface.</source>
        <translation>Dónde se quiere la mosca en este pozo: en cualquier sitio, a tanto del fondo o a tanto de la superficie.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the pool.</source>
        <translation>Lo que convenga recordar del pozo.</translation>
    </message>
    <message>
        <source>The tasks of the bench. To choose one opens its page.</source>
        <translation>Las tareas del banco. Elegir una abre su página.</translation>
    </message>
    <message>
        <source>Adds the tips and leaders of another rig, or parts of a shelf, to what is cut.</source>
        <translation>Añade a lo que se corta las puntas y bajos de otro montaje, o partes de un estante.</translation>
    </message>
    <message>
        <source>Cuts only the open rig again.</source>
        <translation>Vuelve a cortar solo el montaje abierto.</translation>
    </message>
    <message>
        <source>How much line your loops, splices and knots take; the cuts are longer by that.</source>
        <translation>Cuánta línea llevan sus lazos, empalmes y nudos; los cortes son más largos en eso.</translation>
    </message>
    <message>
        <source>Shows it as it will be on paper, and prints it from there.</source>
        <translation>Lo muestra como quedará en papel, y desde ahí se imprime.</translation>
    </message>
    <message>
        <source>Writes it as a PDF file.</source>
        <translation>Lo escribe como archivo PDF.</translation>
    </message>
    <message>
        <source>Takes what was cut off what is left on the spools.</source>
        <translation>Resta de las bobinas lo que se ha cortado.</translation>
    </message>
    <message>
        <source>Each spool with its cuts and marks, measured from its free end, then the labels with their rings.</source>
        <translation>Cada bobina con sus cortes y marcas, desde su extremo libre, y luego las etiquetas con sus anillos.</translation>
    </message>
    <message>
        <source>Puts loops of that kind on the tips of the line, as a proposal that can be undone.</source>
        <translation>Pone lazos de esa clase en las puntas de la línea, como propuesta que se puede deshacer.</translation>
    </message>
    <message>
        <source>The kind of loops that your tips get.</source>
        <translation>La clase de lazos que llevan sus puntas.</translation>
    </message>
    <message>
        <source>How much line is used up there.</source>
        <translation>Cuánta línea se gasta ahí.</translation>
    </message>
    <message>
        <source>The level line that is left on your spools. Name and feet are changed in the table.</source>
        <translation>La línea uniforme que queda en sus bobinas. El nombre y los pies se cambian en la tabla.</translation>
    </message>
    <message>
        <source>Describes a new spool, before it is added.</source>
        <translation>Describe una bobina nueva, antes de añadirla.</translation>
    </message>
    <message>
        <source>Adds the spool that is described above.</source>
        <translation>Añade la bobina descrita arriba.</translation>
    </message>
    <message>
        <source>Reads them from a file.</source>
        <translation>Los lee de un archivo.</translation>
    </message>
    <message>
        <source>Writes them to a file that can be passed on.</source>
        <translation>Los escribe en un archivo que se puede pasar a otros.</translation>
    </message>
    <message>
        <source>What the scale says of this part. Enter goes on to the next.</source>
        <translation>Lo que dice la báscula de esta parte. Intro pasa a la siguiente.</translation>
    </message>
    <message>
        <source>How finely the scale shows: the range of what a foot weighs follows from it.</source>
        <translation>Con qué finura marca la báscula: de ello sale el margen de lo que pesa un pie.</translation>
    </message>
    <message>
        <source>Keeps the number and goes on to the next part.</source>
        <translation>Guarda el número y pasa a la parte siguiente.</translation>
    </message>
    <message>
        <source>Forgets what the scale said of this part.</source>
        <translation>Olvida lo que dijo la báscula de esta parte.</translation>
    </message>
    <message>
        <source>What each part was meant to weigh, what the scale said, and how far off that is.</source>
        <translation>Lo que debía pesar cada parte, lo que dijo la báscula y cuánto difiere.</translation>
    </message>
    <message>
        <source>Puts it on the line in the place of the one of its kind, as one step of undo.</source>
        <translation>Lo pone en la línea en lugar del de su clase, en un solo paso.</translation>
    </message>
    <message>
        <source>Keeps it among your own parts; they stand on the Shelf.</source>
        <translation>Lo guarda entre sus partes; están en el Estante.</translation>
    </message>
    <message>
        <source>What the fly is tied from: its dry and wet mass and its drag are worked out from it.</source>
        <translation>De qué está hecha la mosca: de ello se calculan su masa seca y mojada y su resistencia.</translation>
    </message>
    <message>
        <source>What is trimmed, at which end, and by how much; below stands what that does.</source>
        <translation>Qué se recorta, por qué extremo y cuánto; debajo se dice qué hace.</translation>
    </message>
    <message>
        <source>Trims that part on the line, as one step of undo.</source>
        <translation>Recorta esa parte en la línea, en un solo paso.</translation>
    </message>
    <message>
        <source>How a spool is divided into tips; below stands where to cut.</source>
        <translation>Cómo se divide una bobina en puntas; debajo se dice dónde cortar.</translation>
    </message>
    <message>
        <source>What you measured of a tip without a label; below stands what it is likely to be.</source>
        <translation>Lo que midió de una punta sin etiqueta; debajo, lo que probablemente es.</translation>
    </message>
    <message>
        <source>A piece let sink in a tub: how far it fell, in which water, and the times of each fall.</source>
        <translation>Un trozo que se hunde en una cuba: cuánto cayó, en qué agua y los tiempos de cada caída.</translation>
    </message>
    <message>
        <source>Gives the piece the rate that was timed; what was rated is kept.</source>
        <translation>Da al trozo la velocidad medida; la indicada se conserva.</translation>
    </message>
    <message>
        <source>Puts back what was stated before the measurement.</source>
        <translation>Vuelve a poner lo que se indicaba antes de medir.</translation>
    </message>
    <message>
        <source>Where and how deep the fly was really found; the current that explains it stands below.</source>
        <translation>Dónde y a qué hondura estaba de verdad la mosca; debajo, la corriente que lo explica.</translation>
    </message>
    <message>
        <source>Gives the pool the current that explains what was found.</source>
        <translation>Da al pozo la corriente que explica lo hallado.</translation>
    </message>
    <message>
        <source>Leaves only your parts with these words.</source>
        <translation>Deja solo sus partes con esas palabras.</translation>
    </message>
    <message>
        <source>Parts that you keep; they also stand on the Shelf.</source>
        <translation>Partes que usted guarda; también están en el Estante.</translation>
    </message>
    <message>
        <source>The part of the line that Keep it keeps.</source>
        <translation>La parte de la línea que se guarda.</translation>
    </message>
    <message>
        <source>Another name for the chosen part.</source>
        <translation>Otro nombre para la parte elegida.</translation>
    </message>
    <message>
        <source>A second one like the chosen part, to be changed.</source>
        <translation>Otra igual a la parte elegida, para cambiarla.</translation>
    </message>
    <message>
        <source>A scale log or a list of tips: a line each, with tabs, commas or semicolons between. Below, say what each column is.</source>
        <translation>Un registro de báscula o una lista de puntas: una por renglón, con tabuladores, comas o puntos y coma. Debajo, diga qué es cada columna.</translation>
    </message>
    <message>
        <source>What the rig is called in the window, on paper and in lists.</source>
        <translation>Cómo se llama el montaje en la ventana, en papel y en listas.</translation>
    </message>
    <message>
        <source>Anything worth remembering about the rig; it stands on the handout.</source>
        <translation>Lo que convenga recordar del montaje; figura en la hoja.</translation>
    </message>
    <message>
        <source>A leaf on the water gives the current: how far it went in how many seconds.</source>
        <translation>Una hoja en el agua da la corriente: cuánto avanzó en cuántos segundos.</translation>
    </message>
    <message>
        <source>What the water is called.</source>
        <translation>Cómo se llama el agua.</translation>
    </message>
    <message>
        <source>What the part is called; without a name the window says what it is.</source>
        <translation>Cómo se llama la parte; sin nombre, la ventana dice qué es.</translation>
    </message>
    <message>
        <source>The day on which it was weighed.</source>
        <translation>El día en que se pesó.</translation>
    </message>
    <message>
        <source>Adds a section at the fly&apos;s end of the part.</source>
        <translation>Añade un tramo en el extremo de la mosca.</translation>
    </message>
    <message>
        <source>A section of the part, from its rod end to its fly end: what is typed stays, the rest follows from it.</source>
        <translation>Un tramo de la parte, del extremo de la caña al de la mosca: lo escrito queda, el resto se deduce.</translation>
    </message>
    <message>
        <source>A becomes B and B becomes A; rigs, undo and files stay what they are.</source>
        <translation>A pasa a ser B y B pasa a ser A; montajes, deshacer y archivos siguen igual.</translation>
    </message>
    <message>
        <source>Lays the flies under each other instead of the rears of the heads.</source>
        <translation>Alinea las moscas en vez de las traseras de las cabezas.</translation>
    </message>
    <message>
        <source>Both fish the same water: a change for one is a change for the other.</source>
        <translation>Ambos pescan la misma agua: un cambio para uno lo es para el otro.</translation>
    </message>
    <message>
        <source>Makes the other rig the same as this one, as one step of the other&apos;s undo.</source>
        <translation>Hace el otro montaje igual que este, en un solo paso del otro.</translation>
    </message>
    <message>
        <source>Opens a rig file here.</source>
        <translation>Abre aquí un montaje.</translation>
    </message>
    <message>
        <source>Saves this rig to its file.</source>
        <translation>Guarda este montaje en su archivo.</translation>
    </message>
    <message>
        <source>The readings of both rigs beside each other, with what the difference is worth.</source>
        <translation>Las lecturas de ambos montajes lado a lado, y lo que vale la diferencia.</translation>
    </message>
    <message>
        <source>One difference between the rigs, and what it does by itself. Press it to choose its parts on both lines.</source>
        <translation>Una diferencia entre los montajes, y lo que hace por sí sola. Púlsela para elegir sus partes en ambas líneas.</translation>
    </message>
    <message>
        <source>What the deck is called, in the window and on paper.</source>
        <translation>Cómo se llama la serie, en la ventana y en papel.</translation>
    </message>
    <message>
        <source>The cards in their order. Alt+Up and Alt+Down move the chosen one.</source>
        <translation>Las fichas en su orden. Alt+Arriba y Alt+Abajo mueven la elegida.</translation>
    </message>
    <message>
        <source>The card as the class will see it.</source>
        <translation>La ficha como la verá la clase.</translation>
    </message>
    <message>
        <source>Shows the card with its answer, or without.</source>
        <translation>Muestra la ficha con su respuesta, o sin ella.</translation>
    </message>
    <message>
        <source>An empty deck.</source>
        <translation>Una serie vacía.</translation>
    </message>
    <message>
        <source>Opens a deck file.</source>
        <translation>Abre una serie.</translation>
    </message>
    <message>
        <source>Saves the deck to its file.</source>
        <translation>Guarda la serie en su archivo.</translation>
    </message>
    <message>
        <source>A card of the rig and the picture that the bench shows.</source>
        <translation>Una ficha con el montaje y la imagen del banco.</translation>
    </message>
    <message>
        <source>A card with nothing on it yet.</source>
        <translation>Una ficha todavía vacía.</translation>
    </message>
    <message>
        <source>Moves the chosen card in the deck.</source>
        <translation>Mueve la ficha elegida en la serie.</translation>
    </message>
    <message>
        <source>A second card like the chosen one.</source>
        <translation>Otra ficha igual a la elegida.</translation>
    </message>
    <message>
        <source>Deletes the chosen card; undo brings it back.</source>
        <translation>Borra la ficha elegida; deshacer la recupera.</translation>
    </message>
    <message>
        <source>The screen that the class sees. Your own keeps notes, next card and clock.</source>
        <translation>La pantalla que ve la clase. La suya conserva notas, ficha siguiente y reloj.</translation>
    </message>
    <message>
        <source>Shows the deck over a whole screen; Escape ends it.</source>
        <translation>Muestra la serie a pantalla completa; Esc la termina.</translation>
    </message>
    <message>
        <source>The title at the top of the card.</source>
        <translation>El título en lo alto de la ficha.</translation>
    </message>
    <message>
        <source>The one line under the title.</source>
        <translation>El único renglón bajo el título.</translation>
    </message>
    <message>
        <source>What the class is asked before the answer is shown.</source>
        <translation>Lo que se pregunta a la clase antes de mostrar la respuesta.</translation>
    </message>
    <message>
        <source>The answer; it comes with the next press.</source>
        <translation>La respuesta; sale con la siguiente pulsación.</translation>
    </message>
    <message>
        <source>Notes that only you see while you show.</source>
        <translation>Notas que solo usted ve al mostrar.</translation>
    </message>
    <message>
        <source>The picture of the card: the line, the profile, the cast, the river, two rigs, flies, pools, tips, or words alone.</source>
        <translation>La imagen de la ficha: línea, perfil, lance, río, dos montajes, moscas, pozos, puntas o solo palabras.</translation>
    </message>
    <message>
        <source>The reading that stands large with the answer.</source>
        <translation>La lectura que figura en grande con la respuesta.</translation>
    </message>
    <message>
        <source>What lies on the card, and where it is taken from.</source>
        <translation>Lo que hay en la ficha, y de dónde se toma.</translation>
    </message>
    <message>
        <source>The rigs of the trip with their flies; the open rig is the first.</source>
        <translation>Los montajes del viaje con sus moscas; el abierto es el primero.</translation>
    </message>
    <message>
        <source>The pools of the trip. Those that are ticked have to be served.</source>
        <translation>Los pozos del viaje. Los marcados deben cubrirse.</translation>
    </message>
    <message>
        <source>The most tips to carry; what then has nothing is said.</source>
        <translation>El máximo de puntas que se llevan; se dice lo que queda sin ninguna.</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays.</source>
        <translation>Solo puntas de una longitud, para que el gesto no cambie.</translation>
    </message>
    <message>
        <source>Tips that are kept or left out whatever is packed; Enter in the list takes that back.</source>
        <translation>Puntas que se llevan o se dejan en cualquier caso; Intro en la lista lo revoca.</translation>
    </message>
    <message>
        <source>A tip a row, a pool and fly a column: the glyph is its verdict there, ringed where it is the one taken.</source>
        <translation>Una punta por fila, pozo y mosca por columna: el signo es su veredicto, con cerco donde se toma.</translation>
    </message>
    <message>
        <source>Makes the cut sheet of these tips at the bench.</source>
        <translation>Hace en el banco la hoja de corte de estas puntas.</translation>
    </message>
    <message>
        <source>Closes this window; the wallet stays packed.</source>
        <translation>Cierra esta ventana; la cartera sigue preparada.</translation>
    </message>
    <message>
        <source>Leaves the pages that hold these words.</source>
        <translation>Deja las páginas que contienen esas palabras.</translation>
    </message>
    <message>
        <source>The pages of the help.</source>
        <translation>Las páginas de la ayuda.</translation>
    </message>
    <message>
        <source>An answer to the line beside it.</source>
        <translation>Una respuesta a la línea de al lado.</translation>
    </message>
    <message>
        <source>The rod: length, line number, and the window of head weights for each style. The head is judged by these.</source>
        <translation>La caña: longitud, número y la ventana de pesos de cabeza para cada clase. La cabeza se juzga por ellos.</translation>
    </message>
    <message>
        <source>The water: how fast it runs on top, how deep it is, how cold and how salty. The depth of the fly follows from it.</source>
        <translation>El agua: la velocidad arriba, la hondura, el frío y la sal. De ella resulta la profundidad de la mosca.</translation>
    </message>
    <message>
        <source>The name of the rig and notes about it; both are saved with it.</source>
        <translation>El nombre del montaje y notas sobre él; ambos se guardan con él.</translation>
    </message>
    <message>
        <source>Why a reading says what it says: the figures it came from, the formula, the limits, and whose they are.</source>
        <translation>Por qué una lectura dice lo que dice: las cifras, la fórmula, los límites y de quién son.</translation>
    </message>
    <message>
        <source>How deep this rig fishes in every pool, half a foot a second slower and faster than the pool states.</source>
        <translation>Lo hondo que pesca este montaje en cada pozo, medio pie por segundo más lento y más rápido de lo indicado.</translation>
    </message>
    <message>
        <source>In one line, how B does against A.</source>
        <translation>En un renglón, cómo queda B frente a A.</translation>
    </message>
    <message>
        <source>What stands on the chosen card: its words, its picture, its rigs.</source>
        <translation>Lo que hay en la ficha elegida: sus palabras, su imagen, sus montajes.</translation>
    </message>
    <message>
        <source>The Clinic: cards in order, one shown at a time.</source>
        <translation>La Clase: fichas en orden, mostradas de una en una.</translation>
    </message>
    <message>
        <source>The trip goes in: rigs and pools. The fewest tips that serve them come out.</source>
        <translation>Entra el viaje: montajes y pozos. Salen las menos puntas que bastan.</translation>
    </message>
    <message>
        <source>A task at the bench; what it says follows at once from what is typed.</source>
        <translation>Una tarea del banco; lo que dice se deduce al momento de lo que se escribe.</translation>
    </message>
    <message>
        <source>The help of the program; it is searched by the line at the top.</source>
        <translation>La ayuda del programa; se busca con el renglón de arriba.</translation>
    </message>
    <message>
        <source>What is wrong in the file, each with its place and what would be right.</source>
        <translation>Lo que está mal en el archivo, con su lugar y lo que sería correcto.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>No hay nada que rehacer.</translation>
    </message>
    <message>
        <source>Only in Compare, where two rigs are (Ctrl+2).</source>
        <translation>Solo en Comparar, donde hay dos montajes (Ctrl+2).</translation>
    </message>
    <message>
        <source>Only in the Clinic, where the deck is (Ctrl+3).</source>
        <translation>Solo en Clase, donde está la serie (Ctrl+3).</translation>
    </message>
    <message>
        <source>There is nothing to play: what is missing is said in the picture.</source>
        <translation>No hay nada que poner en marcha: en la imagen se dice qué falta.</translation>
    </message>
    <message>
        <source>There is nothing to play yet: the runs of both rigs are not there.</source>
        <translation>Aún no hay nada que poner en marcha: faltan los cálculos de ambos montajes.</translation>
    </message>
    <message>
        <source>No leader can be proposed from these.</source>
        <translation>Con esto no se puede proponer ningún bajo.</translation>
    </message>
    <message>
        <source>The fly is not complete yet: what lacks is said below.</source>
        <translation>La mosca aún no está completa: debajo se dice qué falta.</translation>
    </message>
    <message>
        <source>There is no spool to remove.</source>
        <translation>No hay ninguna bobina que quitar.</translation>
    </message>
    <message>
        <source>Choose one of your parts in the list first.</source>
        <translation>Elija antes una de sus partes en la lista.</translation>
    </message>
    <message>
        <source>The line has no part to keep.</source>
        <translation>La línea no tiene ninguna parte que guardar.</translation>
    </message>
    <message>
        <source>You have kept no part yet.</source>
        <translation>Todavía no ha guardado ninguna parte.</translation>
    </message>
    <message>
        <source>No line of the list could be read as a part yet.</source>
        <translation>Ningún renglón de la lista se ha podido leer aún como parte.</translation>
    </message>
    <message>
        <source>Say first how much is taken off.</source>
        <translation>Diga antes cuánto se quita.</translation>
    </message>
    <message>
        <source>Give at least its mass and its length.</source>
        <translation>Dé al menos la masa y la longitud.</translation>
    </message>
    <message>
        <source>Without loops none is used up.</source>
        <translation>Sin lazos no se gasta nada.</translation>
    </message>
    <message>
        <source>There is nothing of that to weigh on this part.</source>
        <translation>No hay nada de eso que pesar en esta parte.</translation>
    </message>
    <message>
        <source>Only this rig is cut already.</source>
        <translation>Ya se corta solo este montaje.</translation>
    </message>
    <message>
        <source>There is nothing to cut: no spool, or no tip of level line.</source>
        <translation>No hay nada que cortar: ninguna bobina, o ninguna punta de línea uniforme.</translation>
    </message>
    <message>
        <source>Time at least one fall first.</source>
        <translation>Mida antes al menos una caída.</translation>
    </message>
    <message>
        <source>This piece was not timed.</source>
        <translation>Este trozo no se ha medido.</translation>
    </message>
    <message>
        <source>Say first how deep the fly was found.</source>
        <translation>Diga antes a qué hondura estaba la mosca.</translation>
    </message>
    <message>
        <source>The current of this water was not measured.</source>
        <translation>La corriente de esta agua no se ha medido.</translation>
    </message>
    <message>
        <source>Choose a pool in the list first, or add one.</source>
        <translation>Elija antes un pozo en la lista, o añada uno.</translation>
    </message>
    <message>
        <source>No wallet was packed yet (Ctrl+Shift+P).</source>
        <translation>Aún no se ha preparado ninguna cartera (Ctrl+Mayús+P).</translation>
    </message>
    <message>
        <source>There is no card: make one of the bench&apos;s picture, or a blank one.</source>
        <translation>No hay ninguna ficha: haga una de la imagen del banco, o una vacía.</translation>
    </message>
    <message>
        <source>This card has no rig to change.</source>
        <translation>Esta ficha no tiene montaje que cambiar.</translation>
    </message>
    <message>
        <source>Weigh the part first.</source>
        <translation>Pese antes la parte.</translation>
    </message>
    <message>
        <source>A part keeps at least one section.</source>
        <translation>Una parte conserva al menos un tramo.</translation>
    </message>
    <message>
        <source>No file was opened yet.</source>
        <translation>Aún no se ha abierto ningún archivo.</translation>
    </message>
    <message>
        <source>The cast and the air are the usual ones already.</source>
        <translation>El lance y el aire ya son los habituales.</translation>
    </message>
    <message>
        <source>Gives this part the loops that your bench makes, so that they are weighed with it. The label on the cut sheet counts them already.</source>
        <translation>Da a esta parte los lazos que se hacen en su banco, para que se pesen con ella. La etiqueta de la hoja de corte ya los cuenta.</translation>
    </message>
    <message>
        <source>From these the leader is proposed, and drawn below to scale.</source>
        <translation>Con esto se propone el bajo, y se dibuja debajo a escala.</translation>
    </message>
    <message>
        <source>The deck has no card yet.</source>
        <translation>La serie aún no tiene fichas.</translation>
    </message>
    <message>
        <source>Where the cast lands: degrees below straight across. The steeper downstream, the sooner the line pulls the fly up.</source>
        <translation>Dónde cae el lance: grados aguas abajo desde justo de través. Cuanto más aguas abajo, antes sube la línea la mosca.</translation>
    </message>
    <message>
        <source>No card stands above.</source>
        <translation>No hay ninguna ficha encima.</translation>
    </message>
    <message>
        <source>No card stands below.</source>
        <translation>No hay ninguna ficha debajo.</translation>
    </message>
    <message>
        <source>The first card stands.</source>
        <translation>Está la primera ficha.</translation>
    </message>
    <message>
        <source>The last card stands, with its answer.</source>
        <translation>Está la última ficha, con su respuesta.</translation>
    </message>
    <message>
        <source>Choose a rig of the list first; the open one stays.</source>
        <translation>Elija antes un montaje de la lista; el abierto se queda.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first, one that is not kept yet.</source>
        <translation>Elija antes una punta de la tabla, una que aún no esté conservada.</translation>
    </message>
    <message>
        <source>Choose a tip in the table first.</source>
        <translation>Elija antes una punta de la tabla.</translation>
    </message>
    <message>
        <source>No tip is packed.</source>
        <translation>No hay ninguna punta preparada.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::CutDrawing</name>
    <message>
        <source>%1, %2 on the spool</source>
        <translation>%1, %2 en la bobina</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>quedan %1</translation>
    </message>
    <message>
        <source>Short: %1</source>
        <translation>Faltan: %1</translation>
    </message>
    <message>
        <source>%1: %2 spools opened; by the lengths alone none opens fewer than %3</source>
        <translation>%1: %2 bobinas abiertas; por las longitudes solas nada abre menos de %3</translation>
    </message>
    <message>
        <source>%1: tapered, bought whole</source>
        <translation>%1: cónica, se compra entera</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Hoja de corte</translation>
    </message>
    <message>
        <source>Labels. Rings: a long one counts 5 grains a foot, a short one 1; behind the gap, quarters that sink.</source>
        <translation>Etiquetas. Anillos: uno largo cuenta 5 grains por pie, uno corto 1; tras el hueco, los cuartos que se hunden.</translation>
    </message>
    <message>
        <source>all of it floats</source>
        <translation>flota toda</translation>
    </message>
    <message>
        <source>all of it sinks</source>
        <translation>se hunde toda</translation>
    </message>
    <message>
        <source>%1 of it sink</source>
        <translation>%1 se hunden</translation>
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
        <translation>Añadir montaje o estante…</translation>
    </message>
    <message>
        <source>Only this rig</source>
        <translation>Solo este montaje</translation>
    </message>
    <message>
        <source>Sheet and labels as PDF…</source>
        <translation>Hoja y etiquetas en PDF…</translation>
    </message>
    <message>
        <source>Cut away from yourself; weld with the window open, hot coatings give off fumes; glasses on when you test a loop or knot.</source>
        <translation>Corte hacia fuera; suelde con la ventana abierta, el recubrimiento caliente echa vapores; gafas puestas al probar un lazo o un nudo.</translation>
    </message>
    <message>
        <source>Add a rig or shelf</source>
        <translation>Añadir montaje o estante</translation>
    </message>
    <message>
        <source>Rigs and shelves (*.rig.json *.shelf.json)</source>
        <translation>Montajes y estantes (*.rig.json *.shelf.json)</translation>
    </message>
    <message>
        <source>Cut sheet as PDF</source>
        <translation>Hoja de corte en PDF</translation>
    </message>
    <message>
        <source>cut-sheet.pdf</source>
        <translation>hoja-de-corte.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Añadido: %1</translation>
    </message>
    <message>
        <source>No spools yet: read a list of spools, or write them down, on the Spools page.</source>
        <translation>Aún no hay bobinas: lea una lista, o anótelas, en la página Bobinas.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
    <message>
        <source>Put loops on the tips</source>
        <translation>Poner lazos en las puntas</translation>
    </message>
    <message>
        <source>Loops and knots</source>
        <translation>Lazos y nudos</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Take the cuts off the spools</source>
        <translation>Descontar los cortes de las bobinas</translation>
    </message>
    <message>
        <source>%1, without the open rig.</source>
        <translation>%1, sin el montaje abierto.</translation>
    </message>
    <message>
        <source>Nothing to cut: no tip, leader or tippet of level line is here.</source>
        <translation>Nada que cortar: aquí no hay punta, bajo ni terminal de línea paralela.</translation>
    </message>
    <message>
        <source>Taken off the spools; Undo on the Spools page puts it back.</source>
        <translation>Descontado de las bobinas; Deshacer en la página Bobinas lo devuelve.</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Hoja de corte</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DeckDocument</name>
    <message>
        <source>not saved: %1</source>
        <translation>no guardado: %1</translation>
    </message>
    <message>
        <source>the file that was there is kept; make room, or save elsewhere</source>
        <translation>se conserva el archivo que había; haga sitio, o guarde en otro lugar</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::DepthMap</name>
    <message>
        <source>Map of the tips: depth against how well they carry the fly</source>
        <translation>Mapa de las puntas: profundidad frente a lo bien que llevan la mosca</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>carries the fly better →</source>
        <translation>lleva mejor la mosca →</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>one tip in words, all of them in words</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nothing to show yet.</source>
        <translation>Aún no hay nada que mostrar.</translation>
    </message>
    <message>
        <source>%1 fit, %2 to be watched, %3 refused.</source>
        <comment>numbers of tips</comment>
        <translation>%1 van bien, %2 con atención, %3 descartadas.</translation>
    </message>
    <message>
        <source>Wanted %1.</source>
        <translation>Se quiere %1.</translation>
    </message>
    <message>
        <source>Best: %1, %2.</source>
        <comment>a tip, why</comment>
        <translation>Mejor: %1, %2.</translation>
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
        <translation>Profundidades de este montaje en todos los pozos</translation>
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
        <translation>Pozo</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Low current</source>
        <translation>Corriente baja</translation>
    </message>
    <message>
        <source>Usual current</source>
        <translation>Corriente usual</translation>
    </message>
    <message>
        <source>High current</source>
        <translation>Corriente alta</translation>
    </message>
    <message>
        <source>No pools yet: add one under Pools.</source>
        <translation>Aún no hay pozos: añada uno en Pozos.</translation>
    </message>
    <message>
        <source>Live estimates. Low and high: %1 slower and faster than the pool states.</source>
        <translation>Estimaciones al momento. Baja y alta: %1 más lenta y más rápida de lo que indica el pozo.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Profundidades en todos los pozos</translation>
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
        <translation>En qué difiere B de A</translation>
    </message>
    <message>
        <source>Changes no reading by itself</source>
        <translation>Por sí solo no cambia ninguna lectura</translation>
    </message>
    <message>
        <source>By itself no more than is known</source>
        <translation>Por sí solo, no más de lo que se sabe</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>Facts</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>What it does by itself</source>
        <translation>Qué hace por sí sola</translation>
    </message>
    <message>
        <source>A and B are the same line. Change one of them, drag a part across, try a part from the Shelf, or open another rig: samples are in Menu, Help.</source>
        <translation>A y B son la misma línea. Cambie una, arrastre una parte a la otra, pruebe una parte del Estante o abra otro montaje: hay ejemplos en Menú, Ayuda.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditDesk</name>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::EditPanel</name>
    <message>
        <source>Changed for the class only: it is put back when you leave.</source>
        <translation>Cambiado solo para la clase: se restituye al salir.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Restituir</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>A or B</comment>
        <translation>Cambiar %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FamilyRow</name>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>More tips of this length</source>
        <translation>Más puntas de esta longitud</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>en la superficie</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>fondo</translation>
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
        <translation>puesta ahora</translation>
    </message>
    <message>
        <source>slower lift</source>
        <translation>levantada más lenta</translation>
    </message>
    <message>
        <source>quicker lift</source>
        <translation>levantada más rápida</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tip: sentence</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Same length:</source>
        <translation>Misma longitud:</translation>
    </message>
    <message>
        <source>Same length, sinking:</source>
        <translation>Misma longitud, hundible:</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>or:</source>
        <translation>o:</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FilePage</name>
    <message>
        <source>Export the settings</source>
        <translation>Exportar los ajustes</translation>
    </message>
    <message>
        <source>Settings (*.conf);;All files (*)</source>
        <translation>Ajustes (*.conf);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Import settings</source>
        <translation>Importar ajustes</translation>
    </message>
    <message>
        <source>Copies of unsaved work</source>
        <translation>Copias del trabajo sin guardar</translation>
    </message>
    <message>
        <source>A copy at most so long after a change</source>
        <translation>Una copia a lo más tanto tiempo tras un cambio</translation>
    </message>
    <message>
        <source>All settings as a file</source>
        <translation>Todos los ajustes como archivo</translation>
    </message>
    <message>
        <source>For another machine or another person: units, looks, limits, weights, new rigs and bench habits. Rigs, pools, own parts and what was open last are not in it.</source>
        <translation>Para otra máquina u otra persona: unidades, aspecto, límites, pesos, montajes nuevos y hábitos del banco. Montajes, pozos, partes propias y lo último abierto no van en él.</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportar…</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importar…</translation>
    </message>
    <message>
        <source>Put all settings back to usual</source>
        <translation>Reponer todos los ajustes a lo usual</translation>
    </message>
    <message>
        <source>All settings are as usual.</source>
        <translation>Todos los ajustes son los usuales.</translation>
    </message>
    <message>
        <source>Take that back</source>
        <translation>Deshacer eso</translation>
    </message>
    <message>
        <source>The settings are as they were before.</source>
        <translation>Los ajustes son como antes.</translation>
    </message>
    <message>
        <source>They are kept in this file:</source>
        <translation>Se guardan en este archivo:</translation>
    </message>
    <message>
        <source>Where the settings are kept</source>
        <translation>Dónde se guardan los ajustes</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 no se escribió: %2</translation>
    </message>
    <message>
        <source>%1 was not taken; all settings stay as they are.
%2</source>
        <translation>%1 no se tomó; todos los ajustes quedan como están.
%2</translation>
    </message>
    <message>
        <source>Taken: %1</source>
        <translation>Tomado: %1</translation>
    </message>
    <message>
        <source>usual: %1 s, ours</source>
        <translation>usual: %1 s, nuestro</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::FixesPanel</name>
    <message>
        <source>From the wallet, now</source>
        <translation>De la cartera, ahora</translation>
    </message>
    <message>
        <source>At the bench, later</source>
        <translation>En el banco, después</translation>
    </message>
    <message>
        <source>Wrong: %1. One change, and what it repairs:</source>
        <translation>Mal: %1. Un solo cambio, y lo que arregla:</translation>
    </message>
    <message>
        <source>Nothing is wrong. To be watched: %1.</source>
        <translation>Nada está mal. Atención a: %1.</translation>
    </message>
    <message>
        <source>Nothing is wrong, and nothing is to be watched.</source>
        <translation>Nada está mal, y nada pide atención.</translation>
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
        <translation>nada que hacer</translation>
    </message>
    <message>
        <source>no single change mends it</source>
        <translation>ningún cambio solo lo arregla</translation>
    </message>
    <message>
        <source>To be watched: %1.</source>
        <translation>Atención: %1.</translation>
    </message>
    <message>
        <source>nothing to try yet</source>
        <translation>nada que probar todavía</translation>
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
        <translation>bola de tungsteno</translation>
    </message>
    <message>
        <source>solid tungsten</source>
        <translation>tungsteno macizo</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomo</translation>
    </message>
    <message>
        <source>brass</source>
        <translation>latón</translation>
    </message>
    <message>
        <source>tin</source>
        <translation>estaño</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acero</translation>
    </message>
    <message>
        <source>New fly</source>
        <translation>Mosca nueva</translation>
    </message>
    <message>
        <source>Name of the fly</source>
        <translation>Nombre de la mosca</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Número de anzuelo</translation>
    </message>
    <message>
        <source>Metal of the beads</source>
        <translation>Metal de las bolas</translation>
    </message>
    <message>
        <source>Metal of the eyes</source>
        <translation>Metal de los ojos</translation>
    </message>
    <message>
        <source>Metal of the wire</source>
        <translation>Metal del hilo</translation>
    </message>
    <message>
        <source>sparse</source>
        <translation>rala</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>media</translation>
    </message>
    <message>
        <source>bulky</source>
        <translation>voluminosa</translation>
    </message>
    <message>
        <source>How bulky it is wet</source>
        <translation>Qué volumen tiene mojada</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Beads</source>
        <translation>Bolas</translation>
    </message>
    <message>
        <source>Bead, mm</source>
        <translation>Bola, mm</translation>
    </message>
    <message>
        <source>Its hole, mm</source>
        <translation>Su agujero, mm</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>Eyes, gr</source>
        <translation>Ojos, gr</translation>
    </message>
    <message>
        <source>Turns of wire</source>
        <translation>Vueltas de hilo</translation>
    </message>
    <message>
        <source>Wire, mm</source>
        <translation>Hilo, mm</translation>
    </message>
    <message>
        <source>Dressing, gr</source>
        <translation>Vestido, gr</translation>
    </message>
    <message>
        <source>Water, times dressing</source>
        <translation>Agua, veces el vestido</translation>
    </message>
    <message>
        <source>Wet it is</source>
        <translation>Mojada es</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Ponerla en la línea</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Guardarla entre mis partes</translation>
    </message>
    <message>
        <source>No fly</source>
        <translation>Sin mosca</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet; %3</source>
        <translation>%1 seca, %2 mojada; %3</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>se hunde de cabeza</translation>
    </message>
    <message>
        <source>sinks level</source>
        <translation>se hunde nivelada</translation>
    </message>
    <message>
        <source>Mind the point. An estimate: the scale knows better.</source>
        <translation>Cuidado con la punta del anzuelo. Una estimación: la báscula sabe más.</translation>
    </message>
    <message>
        <source>Lead: gloves, away from food and children; where it is forbidden, tungsten or tin instead. </source>
        <translation>Plomo: guantes, lejos de comida y niños; donde esté prohibido, tungsteno o estaño. </translation>
    </message>
    <message>
        <source>Tie on a new fly</source>
        <translation>Atar una mosca nueva</translation>
    </message>
    <message>
        <source>My flies</source>
        <translation>Mis moscas</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <comment>a mass, its range</comment>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Guardado entre mis partes.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::HelpWindow</name>
    <message>
        <source>Help - Grainwise</source>
        <translation>Ayuda - Grainwise</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>Buscar en la ayuda</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Páginas de la ayuda</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>No page speaks of that.</source>
        <translation>Ninguna página habla de eso.</translation>
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
        <translation>%1 %2; grosor × %3</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LeaderPage</name>
    <message>
        <source>two-hand line</source>
        <translation>línea de dos manos</translation>
    </message>
    <message>
        <source>single-hand line</source>
        <translation>línea de una mano</translation>
    </message>
    <message>
        <source>sink tip</source>
        <translation>punta hundible</translation>
    </message>
    <message>
        <source>What the leader is tied to</source>
        <translation>A qué se ata el bajo</translation>
    </message>
    <message>
        <source>Tippet</source>
        <translation>Terminal</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>una pieza</translation>
    </message>
    <message>
        <source>two pieces</source>
        <translation>dos piezas</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Line&apos;s tip, diameter</source>
        <translation>Punta de la línea, diámetro</translation>
    </message>
    <message>
        <source>Tippet&apos;s packet, lb</source>
        <translation>Resistencia del terminal, lb</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Ponerla en la línea</translation>
    </message>
    <message>
        <source>%1, %2X</source>
        <translation>%1, %2X</translation>
    </message>
    <message>
        <source>nylon %1</source>
        <translation>nailon %1</translation>
    </message>
    <message>
        <source>fluoro %1</source>
        <translation>fluoro %1</translation>
    </message>
    <message>
        <source>No leader</source>
        <translation>Sin bajo</translation>
    </message>
    <message>
        <source>No nylon or fluorocarbon on the spools: read or write down your spools on the Spools page.</source>
        <translation>No hay nailon ni fluorocarbono en las bobinas: léalas o anótelas en la página Bobinas.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 pieces, %2, %3. %4.</source>
        <translation>%1 piezas, %2, %3. %4.</translation>
    </message>
    <message>
        <source>Long behind a sink tip: the fly rides up.</source>
        <translation>Largo tras una punta hundible: la mosca sube.</translation>
    </message>
    <message>
        <source>Short: the fly follows the tip closely.</source>
        <translation>Corto: la mosca sigue de cerca a la punta.</translation>
    </message>
    <message>
        <source>A spool holds less than this takes.</source>
        <translation>Una bobina tiene menos de lo que esto pide.</translation>
    </message>
    <message>
        <source>Usual for the trade, not a rule. Glasses on when you test a knot.</source>
        <translation>Usual en el oficio, no una regla. Gafas puestas al probar un nudo.</translation>
    </message>
    <message>
        <source>%1X to %2X</source>
        <translation>%1X a %2X</translation>
    </message>
    <message>
        <source>%1 to %2 lb</source>
        <translation>%1 a %2 lb</translation>
    </message>
    <message>
        <source>For a hook of size %1 usually %2 of tippet. %3</source>
        <translation>Para un anzuelo del %1, lo usual es un terminal de %2. %3</translation>
    </message>
    <message>
        <source>Tie a new leader</source>
        <translation>Anudar un bajo nuevo</translation>
    </message>
    <message>
        <source>cut %1, %2</source>
        <translation>corte %1, %2</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a range with its unit</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Guardarlo entre mis partes</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>a leader, its butt, its tippet</comment>
        <translation>%1, de %2 a %3</translation>
    </message>
    <message>
        <source>My leaders</source>
        <translation>Mis bajos</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Guardado entre mis partes.</translation>
    </message>
    <message>
        <source>To the spools</source>
        <translation>A las bobinas</translation>
    </message>
    <message>
        <source>Tied to</source>
        <translation>Atado a</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Lens</name>
    <message>
        <source>The last six feet, magnified</source>
        <translation>Los últimos seis pies, ampliados</translation>
    </message>
    <message>
        <source>The last six feet, magnified: press or drag a part here as on the line</source>
        <translation>Los últimos seis pies, ampliados: pulse o arrastre aquí una parte como en la línea</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ListPage</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>mass, gr</source>
        <translation>masa, gr</translation>
    </message>
    <message>
        <source>mass, g</source>
        <translation>masa, g</translation>
    </message>
    <message>
        <source>mass with its unit</source>
        <translation>masa con su unidad</translation>
    </message>
    <message>
        <source>length, ft</source>
        <translation>longitud, ft</translation>
    </message>
    <message>
        <source>length, m</source>
        <translation>longitud, m</translation>
    </message>
    <message>
        <source>length with its unit</source>
        <translation>longitud con su unidad</translation>
    </message>
    <message>
        <source>gr/ft</source>
        <translation>gr/ft</translation>
    </message>
    <message>
        <source>sinks, in/s</source>
        <translation>se hunde, in/s</translation>
    </message>
    <message>
        <source>sinking ft</source>
        <translation>ft hundibles</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>La lista</translation>
    </message>
    <message>
        <source>Paste a list of tips or what the scale said, a line each:
name, mass gr, length ft
winter tip, 113.5, 10</source>
        <translation>Pegue una lista de puntas o lo que dijo la báscula, una por línea:
nombre, masa gr, longitud ft
punta de invierno, 113.5, 10</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>De un archivo…</translation>
    </message>
    <message>
        <source>Keep them among my parts</source>
        <translation>Guardarlas entre mis partes</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Leer una lista</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Listas (*.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>This file is over 4 MB; a list is shorter.</source>
        <translation>Este archivo pasa de 4 MB; una lista es más corta.</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Columna %1</translation>
    </message>
    <message>
        <source>%1 tips read.</source>
        <translation>%1 puntas leídas.</translation>
    </message>
    <message>
        <source>%1 without a sink rate take the usual one of their class.</source>
        <translation>%1 sin velocidad de hundimiento toman la usual de su clase.</translation>
    </message>
    <message>
        <source>My tips</source>
        <translation>Mis puntas</translation>
    </message>
    <message>
        <source>%1 kept among my parts.</source>
        <translation>%1 guardadas entre mis partes.</translation>
    </message>
    <message>
        <source>The lines as they will be read</source>
        <translation>Las filas tal como se leerán</translation>
    </message>
    <message>
        <source>parted by commas</source>
        <translation>separadas por comas</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>separadas por punto y coma</translation>
    </message>
    <message>
        <source>parted by tabs</source>
        <translation>separadas por tabuladores</translation>
    </message>
    <message>
        <source>What parts the columns</source>
        <translation>Qué separa las columnas</translation>
    </message>
    <message>
        <source>the first line names them</source>
        <translation>la primera fila las nombra</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Lines left out: %1.</source>
        <translation>Filas omitidas: %1.</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>será</translation>
    </message>
    <message>
        <source>names</source>
        <translation>nombres</translation>
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
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Largos</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Pies y pulgadas</translation>
    </message>
    <message>
        <source>Metres and millimetres</source>
        <translation>Metros y milímetros</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Grains</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramos</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturas</translation>
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
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Projector</source>
        <translation>Proyector</translation>
    </message>
    <message>
        <source>Size of type and diagrams</source>
        <translation>Tamaño de letra y diagramas</translation>
    </message>
    <message>
        <source>Reduce motion: nothing slides or plays by itself</source>
        <translation>Menos movimiento: nada se desliza ni corre por sí solo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of words and numbers, from the next start</source>
        <translation>Idioma de palabras y números, desde el próximo inicio</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::LoopHabits</name>
    <message>
        <source>no loops</source>
        <translation>sin lazos</translation>
    </message>
    <message>
        <source>welded loops</source>
        <translation>lazos soldados</translation>
    </message>
    <message>
        <source>sleeved loops</source>
        <translation>lazos con funda</translation>
    </message>
    <message>
        <source>tied loops</source>
        <translation>lazos anudados</translation>
    </message>
    <message>
        <source>Loops of tips</source>
        <translation>Lazos de las puntas</translation>
    </message>
    <message>
        <source>A loop takes</source>
        <translation>Un lazo ocupa</translation>
    </message>
    <message>
        <source>A splice, each side</source>
        <translation>Un empalme, cada lado</translation>
    </message>
    <message>
        <source>A knot, each side</source>
        <translation>Un nudo, cada lado</translation>
    </message>
    <message>
        <source>The knot at the fly</source>
        <translation>El nudo de la mosca</translation>
    </message>
    <message>
        <source>Put the loops on the line</source>
        <translation>Poner los lazos en la línea</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MainWindow</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>Save the changes to &quot;%1&quot; first?</source>
        <translation>¿Guardar primero los cambios de &quot;%1&quot;?</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Guardar el montaje</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
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
        <translation>Banco</translation>
    </message>
    <message>
        <source>Open a rig</source>
        <translation>Abrir un montaje</translation>
    </message>
    <message>
        <source>Handout into a file</source>
        <translation>Hoja a un archivo</translation>
    </message>
    <message>
        <source>Paper or picture (*.pdf *.png *.svg)</source>
        <translation>Papel o imagen (*.pdf *.png *.svg)</translation>
    </message>
    <message>
        <source>No copy of unsaved work could be kept: %1</source>
        <translation>No se pudo guardar copia del trabajo sin guardar: %1</translation>
    </message>
    <message>
        <source>Own parts or spools that could not be read; the file stays as it is</source>
        <translation>Partes o bobinas propias que no se pudieron leer; el archivo queda como está</translation>
    </message>
    <message>
        <source>Grainwise speaks the chosen language from its next start.</source>
        <translation>Grainwise habla el idioma elegido desde el próximo inicio.</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>%1[*] (%2) - Grainwise</source>
        <translation>%1[*] (%2) - Grainwise</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>montaje sin nombre</translation>
    </message>
    <message>
        <source>Undo in %1</source>
        <translation>Deshacer en %1</translation>
    </message>
    <message>
        <source>Redo in %1</source>
        <translation>Rehacer en %1</translation>
    </message>
    <message>
        <source>Clear the list</source>
        <translation>Vaciar la lista</translation>
    </message>
    <message>
        <source>%1 was not opened</source>
        <translation>%1 no se abrió</translation>
    </message>
    <message>
        <source>%1 is there already; choose it by its full name, or another one.</source>
        <translation>%1 ya está ahí; elíjalo por su nombre completo, o elija otro.</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation>%1 no se guardó</translation>
    </message>
    <message>
        <source>Unsaved work on &quot;%1&quot; of %2 was kept.</source>
        <translation>Se conservó trabajo sin guardar de &quot;%1&quot; del %2.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Tirarlo</translation>
    </message>
    <message>
        <source>%1 is no longer there; saving puts it back.</source>
        <translation>%1 ya no está ahí; al guardar vuelve a su sitio.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>Otro programa cambió %1.</translation>
    </message>
    <message>
        <source>Open what it holds now</source>
        <translation>Abrir lo que contiene ahora</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>About Grainwise</source>
        <translation>Acerca de Grainwise</translation>
    </message>
    <message>
        <source>Grainwise %1: a workbench for building and balancing two-handed fly rigs.

Limits and verdicts are common practice or ours, never a rod maker&apos;s. Rod makers&apos; limits and a qualified instructor&apos;s advice come first.

Free software under the GNU GPL, version 3 or later. Uses Qt %2, Qt Charts, nlohmann/json and tl::expected.</source>
        <translation>Grainwise %1: un banco de trabajo para construir y equilibrar montajes de mosca a dos manos.

Los límites y veredictos son práctica común o nuestros, nunca de un fabricante de cañas. Los límites de los fabricantes y el consejo de un instructor titulado van por delante.

Software libre bajo la GNU GPL, versión 3 o posterior. Usa Qt %2, Qt Charts, nlohmann/json y tl::expected.</translation>
    </message>
    <message>
        <source>Two rigs are compared at a time, one deck is shown: the other files were not opened.</source>
        <translation>Se comparan dos montajes a la vez y se muestra una serie: los demás archivos no se abrieron.</translation>
    </message>
    <message>
        <source>The packed wallet</source>
        <translation>La cartera preparada</translation>
    </message>
    <message>
        <source>Rigs, decks, shelves, pools, spools (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;All files (*)</source>
        <translation>Montajes, series, estantes, pozos, bobinas (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Rigs (*.rig.json);;All files (*)</source>
        <translation>Montajes (*.rig.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Drop one file that is on this machine, or two rigs to compare them.</source>
        <translation>Suelte un archivo que esté en este equipo, o dos montajes para compararlos.</translation>
    </message>
    <message>
        <source>The pools of %1 are there now; Undo brings yours back.</source>
        <translation>Ya están los pozos de %1; Deshacer recupera los suyos.</translation>
    </message>
    <message>
        <source>The spools of %1 are there now; Undo brings yours back.</source>
        <translation>Ya están las bobinas de %1; Deshacer recupera las suyas.</translation>
    </message>
    <message>
        <source>Of %1 added to your parts: %2; there already: %3. Undo takes them off.</source>
        <translation>De %1 añadidas a sus partes: %2; ya estaban: %3. Deshacer las quita.</translation>
    </message>
    <message>
        <source>unnamed deck</source>
        <translation>serie sin nombre</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MakePanel</name>
    <message>
        <source>Tasks at the bench</source>
        <translation>Tareas del banco</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Hoja de corte</translation>
    </message>
    <message>
        <source>Spools</source>
        <translation>Bobinas</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>Tie a leader</source>
        <translation>Anudar un bajo</translation>
    </message>
    <message>
        <source>Dress a fly</source>
        <translation>Montar una mosca</translation>
    </message>
    <message>
        <source>Trim, divide, name</source>
        <translation>Recortar, dividir, nombrar</translation>
    </message>
    <message>
        <source>Tub and river</source>
        <translation>Cubo y río</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Mis partes</translation>
    </message>
    <message>
        <source>Read a list</source>
        <translation>Leer una lista</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::MeasurePage</name>
    <message>
        <source>In a tub: let a level piece sink and time it</source>
        <translation>En un cubo: deje hundirse una pieza nivelada y cronometre</translation>
    </message>
    <message>
        <source>Piece that sinks</source>
        <translation>Pieza que se hunde</translation>
    </message>
    <message>
        <source>It falls</source>
        <translation>Cae</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Seconds, one or more: 3.2 3.3</source>
        <translation>Segundos, uno o más: 3,2 3,3</translation>
    </message>
    <message>
        <source>Times in seconds</source>
        <translation>Tiempos en segundos</translation>
    </message>
    <message>
        <source>Take this rate</source>
        <translation>Tomar esta velocidad</translation>
    </message>
    <message>
        <source>Back to the rated one</source>
        <translation>Volver a la indicada</translation>
    </message>
    <message>
        <source>Back to the rated sink</source>
        <translation>Volver al hundimiento indicado</translation>
    </message>
    <message>
        <source>In the river: how deep was the fly?</source>
        <translation>En el río: ¿qué honda iba la mosca?</translation>
    </message>
    <message>
        <source>hanging below the rod</source>
        <translation>colgada bajo la caña</translation>
    </message>
    <message>
        <source>on the swing</source>
        <translation>en el swing</translation>
    </message>
    <message>
        <source>Where it was measured</source>
        <translation>Dónde se midió</translation>
    </message>
    <message>
        <source>Depth of the fly</source>
        <translation>Profundidad de la mosca</translation>
    </message>
    <message>
        <source>Take this current</source>
        <translation>Tomar esta corriente</translation>
    </message>
    <message>
        <source>Back to the stated one</source>
        <translation>Volver a la indicada</translation>
    </message>
    <message>
        <source>Measure where you stand safely; a snagged tip comes back fast.</source>
        <translation>Mida donde pise seguro; una punta que se desengancha vuelve rápida.</translation>
    </message>
    <message>
        <source>Back to the stated current</source>
        <translation>Volver a la corriente indicada</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nothing on the line sinks by a rate.</source>
        <translation>Nada de la línea se hunde a una velocidad dada.</translation>
    </message>
    <message>
        <source>Rated %1. Several falls make it surer.</source>
        <translation>Indicada %1. Varias caídas la hacen más segura.</translation>
    </message>
    <message>
        <source>%1 at %4, give or take %2 (4 times in 5); rated %3.</source>
        <translation>%1 a %4, más o menos %2 (4 veces de 5); indicada %3.</translation>
    </message>
    <message>
        <source> A deeper tub would say more.</source>
        <translation> Un cubo más hondo diría más.</translation>
    </message>
    <message>
        <source>Take a timed sink rate</source>
        <translation>Tomar una velocidad medida</translation>
    </message>
    <message>
        <source>Fits a current of %1 at the surface, give or take %2; stated %3.</source>
        <translation>Encaja con una corriente de %1 en superficie, más o menos %2; indicada %3.</translation>
    </message>
    <message>
        <source>Take a measured current</source>
        <translation>Tomar una corriente medida</translation>
    </message>
    <message>
        <source>The current that explains the depth is kept with the water and its pool, and narrows the range.</source>
        <translation>La corriente que explica la profundidad se guarda con el agua y su pozo, y estrecha el margen.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NamePanel</name>
    <message>
        <source>Name of the rig</source>
        <translation>Nombre del montaje</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Rename the rig</source>
        <translation>Cambiar el nombre del montaje</translation>
    </message>
    <message>
        <source>Change the notes</source>
        <translation>Cambiar las notas</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NewRigPage</name>
    <message>
        <source>Line speed</source>
        <translation>Velocidad de línea</translation>
    </message>
    <message>
        <source>Height of the loop</source>
        <translation>Altura del bucle</translation>
    </message>
    <message>
        <source>Launch angle</source>
        <translation>Ángulo de salida</translation>
    </message>
    <message>
        <source>Rod tip above the water</source>
        <translation>Puntera sobre el agua</translation>
    </message>
    <message>
        <source>Running line outside the rod tip</source>
        <translation>Línea de disparo fuera de la puntera</translation>
    </message>
    <message>
        <source>Speed of the surface</source>
        <translation>Velocidad de la superficie</translation>
    </message>
    <message>
        <source>Depth of the water</source>
        <translation>Profundidad del agua</translation>
    </message>
    <message>
        <source>Temperature of the water</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Línea fuera</translation>
    </message>
    <message>
        <source>Angle of the cast, down from straight across</source>
        <translation>Ángulo del lance, río abajo desde recto al frente</translation>
    </message>
    <message>
        <source>Mend, seconds of slack</source>
        <translation>Mend, segundos de línea floja</translation>
    </message>
    <message>
        <source>What a new rig has from the start. What is left open is as usual for its head; rigs that are there already keep their own.</source>
        <translation>Lo que un montaje nuevo tiene desde el principio. Lo que queda abierto es lo usual para su cabeza; los montajes que ya hay conservan lo suyo.</translation>
    </message>
    <message>
        <source>Put this page back to usual</source>
        <translation>Reponer esta página a lo usual</translation>
    </message>
    <message>
        <source>Cast</source>
        <translation>Lance</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message>
        <source>usual: by the head, common practice</source>
        <translation>usual: según la cabeza, práctica común</translation>
    </message>
    <message>
        <source>usual: left open</source>
        <translation>usual: abierto</translation>
    </message>
    <message>
        <source>Altitude of the river</source>
        <translation>Altitud del río</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NoticeBar</name>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::NumberField</name>
    <message>
        <source>over %1 to %2 %3</source>
        <translation>más de %1 a %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 a %2 %3</translation>
    </message>
    <message>
        <source>This is no number here; give %1.</source>
        <translation>Esto no es aquí un número; dé %1.</translation>
    </message>
    <message>
        <source>Outside what is possible; give %1.</source>
        <translation>Fuera de lo posible; dé %1.</translation>
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
        <translation>%1: un número, %2. El punto o la coma es el signo decimal; detrás puede escribirse otra unidad.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OutMenu</name>
    <message>
        <source>No picture or table is on screen</source>
        <translation>No hay imagen ni tabla en pantalla</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnPartsPage</name>
    <message>
        <source>Search my parts</source>
        <translation>Buscar en mis partes</translation>
    </message>
    <message>
        <source>My parts</source>
        <translation>Mis partes</translation>
    </message>
    <message>
        <source>Part of the line</source>
        <translation>Parte de la línea</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardarla</translation>
    </message>
    <message>
        <source>Put it on the line</source>
        <translation>Ponerla en la línea</translation>
    </message>
    <message>
        <source>Copy it</source>
        <translation>Copiarla</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Read a shelf…</source>
        <translation>Leer un estante…</translation>
    </message>
    <message>
        <source>Write them to a file…</source>
        <translation>Escribirlas en un archivo…</translation>
    </message>
    <message>
        <source>From the line</source>
        <translation>De la línea</translation>
    </message>
    <message>
        <source>Read a shelf</source>
        <translation>Leer un estante</translation>
    </message>
    <message>
        <source>Shelves (*.shelf.json)</source>
        <translation>Estantes (*.shelf.json)</translation>
    </message>
    <message>
        <source>Write my parts</source>
        <translation>Escribir mis partes</translation>
    </message>
    <message>
        <source>my-parts.shelf.json</source>
        <translation>mis-partes.shelf.json</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>None yet. Keep a part of the line, and it stands on the Shelf from now on.</source>
        <translation>Ninguna aún. Guarde una parte de la línea y desde entonces estará en el Estante.</translation>
    </message>
    <message>
        <source>Kept in place of the old one.</source>
        <translation>Guardada en lugar de la antigua.</translation>
    </message>
    <message>
        <source>Kept. It stands on the Shelf.</source>
        <translation>Guardada. Está en el Estante.</translation>
    </message>
    <message>
        <source>Removed %1; Undo brings it back.</source>
        <translation>Se quitó %1; Deshacer lo devuelve.</translation>
    </message>
    <message>
        <source>There is no room for another one on the line.</source>
        <translation>No hay sitio para otra en la línea.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>%1 added, %2 there already</source>
        <translation>%1 añadidas, %2 ya estaban</translation>
    </message>
    <message>
        <source>Written.</source>
        <translation>Escrito.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
    <message>
        <source>The one on the line keeps the figures that it has.</source>
        <translation>La parte de la línea conserva sus cifras.</translation>
    </message>
    <message>
        <source>Put this one in</source>
        <translation>Poner esta</translation>
    </message>
    <message>
        <source>Put the new %1 in</source>
        <translation>Poner la nueva parte: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::OwnStore</name>
    <message>
        <source>%1 could not be written; it stays as it was. %2</source>
        <translation>No se pudo escribir %1; queda como estaba. %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PairPanel</name>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Lets both go together, at a quarter of real time</source>
        <translation>Suelta ambos a la vez, a un cuarto del tiempo real</translation>
    </message>
    <message>
        <source>Both swing together, four times as fast as on the water</source>
        <translation>Ambos cruzan a la vez, cuatro veces más rápido que en el agua</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>A model of the loop, without stroke, wind or stretch. Keep everyone out of the space behind you.</source>
        <translation>Un modelo del bucle, sin gesto, viento ni elasticidad. Que nadie esté en el espacio detrás de usted.</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Cifras para la línea, no guía para vadear.</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
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
        <translation>Los lances de A y B</translation>
    </message>
    <message>
        <source>The swings of A and B</source>
        <translation>Los swings de A y B</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>calculando…</translation>
    </message>
    <message>
        <source>A: %1. B: %2</source>
        <translation>A: %1. B: %2</translation>
    </message>
    <message>
        <source>%1 (of before the change: working…)</source>
        <translation>%1 (de antes del cambio: calculando…)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartDrawing</name>
    <message>
        <source>Drag it up onto the line, or press Enter</source>
        <translation>Arrástrela a la línea, o pulse Intro</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PartEditor</name>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name of the part</source>
        <translation>Nombre de la parte</translation>
    </message>
    <message>
        <source>no style</source>
        <translation>sin estilo</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Estilo</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>Loop, rod end</source>
        <translation>Lazo, extremo de caña</translation>
    </message>
    <message>
        <source>Loop, fly end</source>
        <translation>Lazo, extremo de mosca</translation>
    </message>
    <message>
        <source>Weighed on</source>
        <translation>Pesada el</translation>
    </message>
    <message>
        <source>Weighed on, year-month-day</source>
        <translation>Pesada el, año-mes-día</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>año-mes-día</translation>
    </message>
    <message>
        <source>Give the weighed mass first</source>
        <translation>Dé primero la masa pesada</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mojada</translation>
    </message>
    <message>
        <source>Bulk, cm²</source>
        <translation>Bulto, cm²</translation>
    </message>
    <message>
        <source>Density, g/cm³</source>
        <translation>Densidad, g/cm³</translation>
    </message>
    <message>
        <source>Hook</source>
        <translation>Anzuelo</translation>
    </message>
    <message>
        <source>Hook size</source>
        <translation>Número de anzuelo</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>se hunde de cabeza</translation>
    </message>
    <message>
        <source>Add a section</source>
        <translation>Añadir un tramo</translation>
    </message>
    <message>
        <source>Choose a part on the line: click it, or use the arrow keys there.</source>
        <translation>Elija una parte de la línea: púlsela, o use allí las flechas.</translation>
    </message>
    <message>
        <source>Casts at %1 wet. Bulk and density count in the air and in the water; left empty they are taken as 1.5.</source>
        <translation>Se lanza con %1 mojada. Bulto y densidad cuentan en el aire y en el agua; vacíos se toman como 1,5.</translation>
    </message>
    <message>
        <source>, of it loops %1</source>
        <translation>, de ello lazos %1</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to what the scale said</source>
        <translation>; tramos ajustados un %1 % a lo que dijo la báscula</translation>
    </message>
    <message>
        <source>; sections scaled by %1 % to the label</source>
        <translation>; tramos ajustados un %1 % a la etiqueta</translation>
    </message>
    <message>
        <source>sinks %1 here</source>
        <translation>se hunde %1 aquí</translation>
    </message>
    <message>
        <source>floats</source>
        <translation>flota</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a figure at both ends of a section, the second with unit</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 to %2: weighs %3</source>
        <comment>where a part begins and ends, its mass</comment>
        <translation>%1 a %2: pesa %3</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PlayerBar</name>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>How fast it plays</source>
        <translation>A qué velocidad se reproduce</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolBook</name>
    <message>
        <source>make room, or save elsewhere</source>
        <translation>haga sitio, o guarde en otro lugar</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::PoolsPanel</name>
    <message>
        <source>Pools (*.pools.json);;All files (*)</source>
        <translation>Pozos (*.pools.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Open pools</source>
        <translation>Abrir pozos</translation>
    </message>
    <message>
        <source>Save the pools</source>
        <translation>Guardar los pozos</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pozos</translation>
    </message>
    <message>
        <source>Fish here</source>
        <translation>Pescar aquí</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Abrir…</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Guardar como…</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Corriente en superficie</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>The fly is wanted</source>
        <translation>La mosca se quiere</translation>
    </message>
    <message>
        <source>anywhere</source>
        <translation>donde sea</translation>
    </message>
    <message>
        <source>off the bottom</source>
        <translation>sobre el fondo</translation>
    </message>
    <message>
        <source>below the surface</source>
        <translation>bajo la superficie</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Angle, degrees</source>
        <translation>Ángulo, grados</translation>
    </message>
    <message>
        <source>Slack, seconds</source>
        <translation>Línea floja, segundos</translation>
    </message>
    <message>
        <source>must be more than the first</source>
        <translation>debe ser más que lo primero</translation>
    </message>
    <message>
        <source>New pool</source>
        <translation>Pozo nuevo</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Fondo</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProblemPanel</name>
    <message>
        <source>The open rig is as it was.</source>
        <translation>El montaje abierto está como estaba.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ProfileChart</name>
    <message>
        <source>g per metre</source>
        <translation>g por metro</translation>
    </message>
    <message>
        <source>gr per foot</source>
        <translation>gr por pie</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 en total</translation>
    </message>
    <message>
        <source>what the loop needs of each foot</source>
        <translation>lo que el bucle pide de cada pie</translation>
    </message>
    <message>
        <source>What each foot weighs</source>
        <translation>Lo que pesa cada pie</translation>
    </message>
    <message>
        <source>Left and Right move the line by half a foot, with Shift by a tenth</source>
        <translation>Izquierda y Derecha mueven la línea medio pie, con Mayús una décima</translation>
    </message>
    <message>
        <source>nothing on the line yet</source>
        <translation>aún nada en la línea</translation>
    </message>
    <message>
        <source>%1: past the end of the line</source>
        <translation>%1: pasado el final de la línea</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the fly</source>
        <translation>%1: %2, %3 hasta aquí, a %4 de la mosca</translation>
    </message>
    <message>
        <source>%1: %2, %3 so far, %4 from the end</source>
        <translation>%1: %2, %3 hasta aquí, a %4 del final</translation>
    </message>
    <message>
        <source>%1 of line, %2 in all, heaviest at %3 with %4. The cursor is at %5.</source>
        <translation>%1 de línea, %2 en total, lo más pesado en %3 con %4. El cursor está en %5.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ReadingsTable</name>
    <message>
        <source>Readings of A and B</source>
        <translation>Lecturas de A y B</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation>Despliegue</translation>
    </message>
    <message>
        <source>no more than is known</source>
        <translation>no más de lo que se sabe</translation>
    </message>
    <message>
        <source>B turns over more easily</source>
        <translation>B se despliega con más facilidad</translation>
    </message>
    <message>
        <source>A turns over more easily</source>
        <translation>A se despliega con más facilidad</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>sin diferencia</translation>
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
        <translation>Gesto</translation>
    </message>
    <message>
        <source>same stroke</source>
        <translation>mismo gesto</translation>
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
        <translation>profundidades de swings completos</translation>
    </message>
    <message>
        <source>swinging both…</source>
        <translation>calculando ambos…</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>A says</source>
        <translation>A dice</translation>
    </message>
    <message>
        <source>B says</source>
        <translation>B dice</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverPanel</name>
    <message>
        <source>4 times</source>
        <translation>4 veces</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>tiempo real</translation>
    </message>
    <message>
        <source>1/4</source>
        <translation>1/4</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>De la línea posada, por debajo de la perpendicular</translation>
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
        <translation>Cuánto deriva libre la línea antes de tensarse</translation>
    </message>
    <message>
        <source>Line out</source>
        <translation>Línea fuera</translation>
    </message>
    <message>
        <source>From the rod tip to the fly</source>
        <translation>De la puntera a la mosca</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading: judge the water by your own eyes, with a staff, a belt and company.</source>
        <translation>Cifras para la línea, no guía para vadear: juzgue el agua con sus ojos, con bastón, cinturón y compañía.</translation>
    </message>
    <message>
        <source>Depths in all pools</source>
        <translation>Profundidad en todos los pozos</translation>
    </message>
    <message>
        <source>range of depth</source>
        <translation>margen de profundidad</translation>
    </message>
    <message>
        <source>Swings tried for the range of depth</source>
        <translation>Swings probados para el margen de profundidad</translation>
    </message>
    <message>
        <source>River</source>
        <translation>Río</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RiverView</name>
    <message>
        <source>The swing, from the side and from above</source>
        <translation>El swing, de lado y desde arriba</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>deseado</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Desde arriba</translation>
    </message>
    <message>
        <source>A swing of %1 seconds, at the deepest %2.</source>
        <translation>Un swing de %1 segundos, lo más hondo %2.</translation>
    </message>
    <message>
        <source>Four swings out of five between %1 and %2.</source>
        <translation>Cuatro swings de cada cinco entre %1 y %2.</translation>
    </message>
    <message>
        <source>%1 s, drifting after the mend</source>
        <translation>%1 s, deriva tras el mend</translation>
    </message>
    <message>
        <source>%1 s, swinging</source>
        <translation>%1 s, cruza</translation>
    </message>
    <message>
        <source>being computed anew</source>
        <translation>se está calculando de nuevo</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RodPanel</name>
    <message>
        <source>Short heads</source>
        <translation>Cabezas cortas</translation>
    </message>
    <message>
        <source>Fine tapers</source>
        <translation>Perfiles finos</translation>
    </message>
    <message>
        <source>Long bellies</source>
        <translation>Vientres largos</translation>
    </message>
    <message>
        <source>Single-hand lines</source>
        <translation>Líneas de una mano</translation>
    </message>
    <message>
        <source>Rod length</source>
        <translation>Longitud de la caña</translation>
    </message>
    <message>
        <source>Line number</source>
        <translation>Número de línea</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>una mano</translation>
    </message>
    <message>
        <source>two hands</source>
        <translation>dos manos</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Style of head</source>
        <translation>Estilo de cabeza</translation>
    </message>
    <message>
        <source>Start a rig for this rod</source>
        <translation>Empezar un montaje para esta caña</translation>
    </message>
    <message>
        <source>Head, tip and leader from the Shelf; the fly is yours to choose. Undo brings the old rig back.</source>
        <translation>Cabeza, punta y bajo del Estante; la mosca la elige usted. Deshacer trae de vuelta el montaje anterior.</translation>
    </message>
    <message>
        <source>Head to start with</source>
        <translation>Cabeza para empezar</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Change the rod</source>
        <translation>Cambiar la caña</translation>
    </message>
    <message>
        <source>Both ends are needed.</source>
        <translation>Hacen falta ambos extremos.</translation>
    </message>
    <message>
        <source>The upper end is below the lower one.</source>
        <translation>El extremo superior está por debajo del inferior.</translation>
    </message>
    <message>
        <source>Start from the rod</source>
        <translation>Empezar desde la caña</translation>
    </message>
    <message>
        <source>The grains on a rod are for the head alone, and the rod maker&apos;s figure comes first. Where none is given, our usual range for the line number is taken.</source>
        <translation>Los grains de una caña son solo para la cabeza, y la cifra del fabricante va por delante. Donde no hay ninguna, se toma nuestro margen usual para el número de línea.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::RulesPage</name>
    <message>
        <source>Put this page back to usual</source>
        <translation>Reponer esta página a lo usual</translation>
    </message>
    <message>
        <source>usual: %1, %2</source>
        <comment>the usual value, whose it is</comment>
        <translation>usual: %1, %2</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SamplesMenu</name>
    <message>
        <source>Decks for a class</source>
        <translation>Series para una clase</translation>
    </message>
    <message>
        <source>Rigs</source>
        <translation>Montajes</translation>
    </message>
    <message>
        <source>Wrong on purpose, to mend</source>
        <translation>Mal a propósito, para arreglar</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SectionRow</name>
    <message>
        <source>floats</source>
        <translation>flota</translation>
    </message>
    <message>
        <source>sinks at a rate</source>
        <translation>se hunde a una velocidad</translation>
    </message>
    <message>
        <source>has a density</source>
        <translation>tiene una densidad</translation>
    </message>
    <message>
        <source>has a diameter</source>
        <translation>tiene un diámetro</translation>
    </message>
    <message>
        <source>is nylon</source>
        <translation>es nailon</translation>
    </message>
    <message>
        <source>is fluorocarbon</source>
        <translation>es fluorocarbono</translation>
    </message>
    <message>
        <source>level</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Pesa</translation>
    </message>
    <message>
        <source>What is known of section %1</source>
        <translation>Lo que se sabe del tramo %1</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Partir</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Cut this section in two halves that weigh the same together</source>
        <translation>Parte este tramo en dos mitades que juntas pesan lo mismo</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>g/cm³</source>
        <translation>g/cm³</translation>
    </message>
    <message>
        <source>Take this section out</source>
        <translation>Quitar este tramo</translation>
    </message>
    <message>
        <source>A part has at least one section</source>
        <translation>Una parte tiene al menos un tramo</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Se hunde</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SettingsWindow</name>
    <message>
        <source>Settings - Grainwise</source>
        <translation>Ajustes - Grainwise</translation>
    </message>
    <message>
        <source>Pages of the settings</source>
        <translation>Páginas de los ajustes</translation>
    </message>
    <message>
        <source>Units, looks, language</source>
        <translation>Unidades, aspecto, idioma</translation>
    </message>
    <message>
        <source>Limits of the verdicts</source>
        <translation>Límites de los veredictos</translation>
    </message>
    <message>
        <source>Where a reading turns from one word to the next. No limit is a rod maker&apos;s; a rod&apos;s own window comes first. The commands go by the usual limits.</source>
        <translation>Dónde una lectura pasa de una palabra a la siguiente. Ningún límite es de un fabricante de cañas; la ventana propia de la caña va primero. Las órdenes usan los límites usuales.</translation>
    </message>
    <message>
        <source>Choosing tips</source>
        <translation>Elegir puntas</translation>
    </message>
    <message>
        <source>What is refused, the verdicts decide. This orders the rest, in the Tip chooser and the wallet.</source>
        <translation>Lo que se rechaza lo deciden los veredictos. Esto ordena el resto, en el selector de puntas y la cartera.</translation>
    </message>
    <message>
        <source>New rigs</source>
        <translation>Montajes nuevos</translation>
    </message>
    <message>
        <source>Habits of the bench</source>
        <translation>Hábitos del banco</translation>
    </message>
    <message>
        <source>Copies and file</source>
        <translation>Copias y archivo</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShelfModel</name>
    <message>
        <source>sinks %1</source>
        <translation>se hunde %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 dry, %2 wet</source>
        <translation>%1 seca, %2 mojada</translation>
    </message>
    <message>
        <source>sinks head first</source>
        <translation>se hunde de cabeza</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
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
        <translation>Buscar en todas las partes</translation>
    </message>
    <message>
        <source>Groups of the Shelf</source>
        <translation>Grupos del Estante</translation>
    </message>
    <message>
        <source>Parts: drag one onto the line, or press Enter to place it</source>
        <translation>Partes: arrastre una a la línea, o pulse Intro para colocarla</translation>
    </message>
    <message>
        <source>Other parts</source>
        <translation>Otras partes</translation>
    </message>
    <message>
        <source>The Shelf is empty.</source>
        <translation>El Estante está vacío.</translation>
    </message>
    <message>
        <source>Nothing on the Shelf is found by “%1”. Fewer words find more.</source>
        <translation>En el Estante no se encuentra nada con “%1”. Menos palabras encuentran más.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ShowWindow</name>
    <message>
        <source>Grainwise: for the class</source>
        <translation>Grainwise: para la clase</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Side</name>
    <message>
        <source>Open…</source>
        <translation>Abrir…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Line %1, from the rod to the fly</source>
        <translation>Línea %1, de la caña a la mosca</translation>
    </message>
    <message>
        <source>Copy to %1</source>
        <translation>Copiar a %1</translation>
    </message>
    <message>
        <source>Copy %1 to %2</source>
        <translation>Copiar %1 a %2</translation>
    </message>
    <message>
        <source>Makes %2 the same as %1; undo in %2 brings the old one back</source>
        <translation>Hace %2 igual que %1; deshacer en %2 trae de vuelta el anterior</translation>
    </message>
    <message>
        <source>Open a rig as %1</source>
        <translation>Abrir un montaje como %1</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>Guardar %1</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>montaje sin nombre</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, sin guardar</translation>
    </message>
    <message>
        <source>%1: %2. Click to rename.</source>
        <translation>%1: %2. Pulse para cambiar el nombre.</translation>
    </message>
    <message>
        <source>Rod of %1: %2. Click to change.</source>
        <translation>Caña de %1: %2. Pulse para cambiarla.</translation>
    </message>
    <message>
        <source>Water of %1: %2. Click to change.</source>
        <translation>Agua de %1: %2. Pulse para cambiarla.</translation>
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
        <translation>Bobinas</translation>
    </message>
    <message>
        <source>sinking</source>
        <translation>hundible</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>flotante</translation>
    </message>
    <message>
        <source>nylon</source>
        <translation>nailon</translation>
    </message>
    <message>
        <source>fluorocarbon</source>
        <translation>fluorocarbono</translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation>Clase de línea</translation>
    </message>
    <message>
        <source>A foot weighs</source>
        <translation>Un pie pesa</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Se hunde</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>On the spool</source>
        <translation>En la bobina</translation>
    </message>
    <message>
        <source>Add this spool</source>
        <translation>Añadir esta bobina</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Read a list…</source>
        <translation>Leer una lista…</translation>
    </message>
    <message>
        <source>Write the list…</source>
        <translation>Escribir la lista…</translation>
    </message>
    <message>
        <source>Read a list of spools</source>
        <translation>Leer una lista de bobinas</translation>
    </message>
    <message>
        <source>Spools (*.spools.json)</source>
        <translation>Bobinas (*.spools.json)</translation>
    </message>
    <message>
        <source>Write the list of spools</source>
        <translation>Escribir la lista de bobinas</translation>
    </message>
    <message>
        <source>bench.spools.json</source>
        <translation>banco.spools.json</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>left</source>
        <translation>queda</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no length on a spool</source>
        <translation>&quot;%1&quot; no es una longitud en una bobina</translation>
    </message>
    <message>
        <source>Give what a foot weighs, how fast it sinks and what is left</source>
        <translation>Dé lo que pesa un pie, a qué velocidad se hunde y cuánto queda</translation>
    </message>
    <message>
        <source>Give what a foot weighs and what is left</source>
        <translation>Dé lo que pesa un pie y cuánto queda</translation>
    </message>
    <message>
        <source>Give the diameter and what is left</source>
        <translation>Dé el diámetro y cuánto queda</translation>
    </message>
    <message>
        <source>Choose a spool in the table first</source>
        <translation>Elija antes una bobina en la tabla</translation>
    </message>
    <message>
        <source>%1 spools read</source>
        <translation>%1 bobinas leídas</translation>
    </message>
    <message>
        <source>Written</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
    <message>
        <source>No spools yet. Say what lies on the bench: its kind, what a foot of it weighs or how thick it is, and how much is left. Or read a list of spools.</source>
        <translation>Aún no hay bobinas. Diga qué hay en el banco: su clase, lo que pesa un pie o lo grueso que es, y cuánto queda. O lea una lista de bobinas.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::StripView</name>
    <message>
        <source>What is in the hand is no part that can be read.</source>
        <translation>Lo que se arrastra no es una parte legible.</translation>
    </message>
    <message>
        <source>Choose a part on the line first.</source>
        <translation>Elija antes una parte en la línea.</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Duplicar: %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
    <message>
        <source>Move left, towards the rod</source>
        <translation>Mover a la izquierda, hacia la caña</translation>
    </message>
    <message>
        <source>Move right, towards the fly</source>
        <translation>Mover a la derecha, hacia la mosca</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>1  the fly</source>
        <translation>1  la mosca</translation>
    </message>
    <message>
        <source>1 fly</source>
        <translation>1 mosca</translation>
    </message>
    <message>
        <source>2  a leader</source>
        <translation>2  un bajo</translation>
    </message>
    <message>
        <source>2 leader</source>
        <translation>2 bajo</translation>
    </message>
    <message>
        <source>3  a tip that carries the fly</source>
        <translation>3  una punta que lleve la mosca</translation>
    </message>
    <message>
        <source>3  a tip</source>
        <translation>3  una punta</translation>
    </message>
    <message>
        <source>4  a head that drives the tip</source>
        <translation>4  una cabeza que mueva la punta</translation>
    </message>
    <message>
        <source>4  a head</source>
        <translation>4  una cabeza</translation>
    </message>
    <message>
        <source>5  running line</source>
        <translation>5  línea de disparo</translation>
    </message>
    <message>
        <source>5 running</source>
        <translation>5 disparo</translation>
    </message>
    <message>
        <source>The line, from the rod to the fly</source>
        <translation>La línea, de la caña a la mosca</translation>
    </message>
    <message>
        <source>Start from a rod</source>
        <translation>Empezar desde una caña</translation>
    </message>
    <message>
        <source>Copy to the other line</source>
        <translation>Copiar a la otra línea</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::SummaryBar</name>
    <message>
        <source>A and B are the same line</source>
        <translation>A y B son la misma línea</translation>
    </message>
    <message>
        <source>No more difference than is known</source>
        <translation>No más diferencia de la que se sabe</translation>
    </message>
    <message>
        <source>B against A: %1</source>
        <translation>B frente a A: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TeacherView</name>
    <message>
        <source>The next card</source>
        <translation>La ficha siguiente</translation>
    </message>
    <message>
        <source>Notes and answer</source>
        <translation>Notas y respuesta</translation>
    </message>
    <message>
        <source>All cards</source>
        <translation>Todas las fichas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>Negro (B)</translation>
    </message>
    <message>
        <source>Hide numbers (H)</source>
        <translation>Ocultar números (H)</translation>
    </message>
    <message>
        <source>Slow motion (S)</source>
        <translation>Cámara lenta (S)</translation>
    </message>
    <message>
        <source>Change the rig (E)</source>
        <translation>Cambiar el montaje (E)</translation>
    </message>
    <message>
        <source>End (Esc)</source>
        <translation>Fin (Esc)</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Respuesta: %1</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Falta: %1</translation>
    </message>
    <message>
        <source>Card %1 of %2</source>
        <translation>Ficha %1 de %2</translation>
    </message>
    <message>
        <source>%1   %2:%3</source>
        <translation>%1   %2:%3</translation>
    </message>
    <message>
        <source>Time of day, and minutes since the show began</source>
        <translation>Hora del día, y minutos desde el comienzo</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::Tile</name>
    <message>
        <source>opens why</source>
        <translation>abre el porqué</translation>
    </message>
    <message>
        <source>%1: why? (%2)</source>
        <translation>%1: ¿por qué? (%2)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TipsPage</name>
    <message>
        <source>Trim before the knife</source>
        <translation>Recortar, antes del cuchillo</translation>
    </message>
    <message>
        <source>Part to trim</source>
        <translation>Parte por recortar</translation>
    </message>
    <message>
        <source>off the front</source>
        <translation>por delante</translation>
    </message>
    <message>
        <source>off the rear</source>
        <translation>por detrás</translation>
    </message>
    <message>
        <source>End to trim</source>
        <translation>Extremo por recortar</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Trim it on the line</source>
        <translation>Recortarla en la línea</translation>
    </message>
    <message>
        <source>Divide a spool</source>
        <translation>Dividir una bobina</translation>
    </message>
    <message>
        <source>Spool</source>
        <translation>Bobina</translation>
    </message>
    <message>
        <source>into equal tips</source>
        <translation>en puntas iguales</translation>
    </message>
    <message>
        <source>as many of one length</source>
        <translation>cuantas quepan de una longitud</translation>
    </message>
    <message>
        <source>How to divide</source>
        <translation>Cómo dividir</translation>
    </message>
    <message>
        <source>Tips</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Cada una</translation>
    </message>
    <message>
        <source>What is this tip? Give any two</source>
        <translation>¿Qué punta es esta? Dé dos datos</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Sinks</source>
        <translation>Se hunde</translation>
    </message>
    <message>
        <source>Keep it among my parts</source>
        <translation>Guardarla entre mis partes</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Say how much comes off; nothing is cut yet.</source>
        <translation>Diga cuánto se quita; aún no se ha cortado nada.</translation>
    </message>
    <message>
        <source>Nothing on the line to trim.</source>
        <translation>Nada en la línea por recortar.</translation>
    </message>
    <message>
        <source>%1 becomes %2, %3; it ends at %4.</source>
        <translation>%1 pasa a %2, %3; acaba en %4.</translation>
    </message>
    <message>
        <source> The loop goes with it.</source>
        <translation> El lazo se va con ello.</translation>
    </message>
    <message>
        <source>Trim %1</source>
        <translation>Recortar: %1</translation>
    </message>
    <message>
        <source>No spools yet: read or write them down on the Spools page.</source>
        <translation>Aún no hay bobinas: léalas o anótelas en la página Bobinas.</translation>
    </message>
    <message>
        <source>%1 of %2 finished, cut at %3, %4 each with loops; %5 left.</source>
        <translation>%1 de %2 acabadas, cortadas a %3, %4 cada una con lazos; quedan %5.</translation>
    </message>
    <message>
        <source>Without its loops; a pinch of the caliper or a timed sink tell most.</source>
        <translation>Sin sus lazos; el calibre o un hundimiento cronometrado dicen más.</translation>
    </message>
    <message>
        <source>the trade&apos;s %1</source>
        <translation>la %1 del oficio</translation>
    </message>
    <message>
        <source>sinks about %1 by its class</source>
        <translation>se hunde unos %1 por su clase</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>se hunde %1</translation>
    </message>
    <message>
        <source>mass and length together give its class</source>
        <translation>masa y longitud juntas dan la clase</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> Nearest on the shelf: %1.</source>
        <translation> Lo más cercano del estante: %1.</translation>
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
        <translation>Mis puntas</translation>
    </message>
    <message>
        <source>Kept among my parts.</source>
        <translation>Guardada entre mis partes.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TopBar</name>
    <message>
        <source>Menu</source>
        <translation>Menú</translation>
    </message>
    <message>
        <source>Every action, with its key (F10)</source>
        <translation>Cada acción, con su tecla (F10)</translation>
    </message>
    <message>
        <source>Feet or metres, grains or grams, Fahrenheit or Celsius</source>
        <translation>Pies o metros, grains o gramos, Fahrenheit o Celsius</translation>
    </message>
    <message>
        <source>unnamed rig</source>
        <translation>montaje sin nombre</translation>
    </message>
    <message>
        <source>%1, not saved</source>
        <translation>%1, sin guardar</translation>
    </message>
    <message>
        <source>%1. Click to rename.</source>
        <translation>%1. Pulse para cambiar el nombre.</translation>
    </message>
    <message>
        <source>Rod: %1. Click to change.</source>
        <translation>Caña: %1. Pulse para cambiarla.</translation>
    </message>
    <message>
        <source>Water: %1. Click to change.</source>
        <translation>Agua: %1. Pulse para cambiarla.</translation>
    </message>
    <message>
        <source>Units: %1</source>
        <translation>Unidades: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TrialBar</name>
    <message>
        <source>Take it</source>
        <translation>Tomarla</translation>
    </message>
    <message>
        <source>Puts it on the line (Enter)</source>
        <translation>La pone en la línea (Intro)</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Devolverla</translation>
    </message>
    <message>
        <source>The line as it was (Esc)</source>
        <translation>La línea como estaba (Esc)</translation>
    </message>
    <message>
        <source>Trying %1</source>
        <comment>a tip that is shown, not yet taken</comment>
        <translation>A prueba: %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::TurnoverButton</name>
    <message>
        <source>opens why, and draws the drive on the chart</source>
        <translation>abre el porqué, y dibuja el impulso en el gráfico</translation>
    </message>
    <message>
        <source>Turnover: why? (%1)</source>
        <translation>Despliegue: ¿por qué? (%1)</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::ValueRow</name>
    <message>
        <source>Reset</source>
        <translation>Reponer</translation>
    </message>
    <message>
        <source>Reset: %1</source>
        <translation>Reponer: %1</translation>
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
        <translation>sin profundidad calculada</translation>
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
        <translation>Montajes (*.rig.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Wallet - Grainwise</source>
        <translation>Cartera - Grainwise</translation>
    </message>
    <message>
        <source>Rigs for the trip</source>
        <translation>Montajes para el viaje</translation>
    </message>
    <message>
        <source>Save the card</source>
        <translation>Guardar la ficha</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Rigs and their flies</source>
        <translation>Montajes y sus moscas</translation>
    </message>
    <message>
        <source>Rigs of the trip</source>
        <translation>Montajes del viaje</translation>
    </message>
    <message>
        <source>Add rigs…</source>
        <translation>Añadir montajes…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Pools</source>
        <translation>Pozos</translation>
    </message>
    <message>
        <source>Pools of the trip</source>
        <translation>Pozos del viaje</translation>
    </message>
    <message>
        <source>Tips at most</source>
        <translation>Puntas como mucho</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>one length</source>
        <translation>una longitud</translation>
    </message>
    <message>
        <source>Tips of one length only, so that the stroke stays</source>
        <translation>Solo puntas de una longitud, para que el gesto sea el mismo</translation>
    </message>
    <message>
        <source>Kept and left out (Enter takes it back)</source>
        <translation>Conservadas y excluidas (Intro lo deshace)</translation>
    </message>
    <message>
        <source>Tips that are kept or left out</source>
        <translation>Puntas que se conservan o se excluyen</translation>
    </message>
    <message>
        <source>Take along in any case</source>
        <translation>Llevar en todo caso</translation>
    </message>
    <message>
        <source>take along in any case…</source>
        <translation>llevar en todo caso…</translation>
    </message>
    <message>
        <source>Tips against pools and flies</source>
        <translation>Puntas frente a pozos y moscas</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Excluir</translation>
    </message>
    <message>
        <source>Card as PDF…</source>
        <translation>Ficha en PDF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>no fly yet: left out</source>
        <translation>aún sin mosca: excluido</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>rig: fly</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>kept: %1</source>
        <translation>conservada: %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>excluida: %1</translation>
    </message>
    <message>
        <source>1 tip for the trip</source>
        <translation>1 punta para el viaje</translation>
    </message>
    <message>
        <source>%1 tips for the trip</source>
        <translation>%1 puntas para el viaje</translation>
    </message>
    <message>
        <source>; fewer will not do</source>
        <translation>; con menos no basta</translation>
    </message>
    <message>
        <source>; take a spare of it</source>
        <translation>; lleve una de repuesto</translation>
    </message>
    <message>
        <source>; take a spare of %1 and of %2</source>
        <translation>; lleve repuesto de %1 y de %2</translation>
    </message>
    <message>
        <source>Nothing for %1, %2: %3</source>
        <comment>pool, fly: why</comment>
        <translation>Nada para %1, %2: %3</translation>
    </message>
    <message>
        <source>Every pool and fly has a tip, or needs none.</source>
        <translation>Cada pozo y cada mosca tiene su punta, o no la necesita.</translation>
    </message>
    <message>
        <source>Depths are estimates, no guide to wading. Local rules on weighted lines and flies decide.</source>
        <translation>Las profundidades son estimaciones, no guía para vadear. Deciden las normas locales sobre líneas y moscas lastradas.</translation>
    </message>
    <message>
        <source>The card is in %1.</source>
        <translation>La ficha está en %1.</translation>
    </message>
    <message>
        <source>The card was not written: %1</source>
        <translation>La ficha no se escribió: %1</translation>
    </message>
    <message>
        <source>Cut this wallet</source>
        <translation>Cortar esta cartera</translation>
    </message>
    <message>
        <source>Print the card…</source>
        <translation>Imprimir la ficha…</translation>
    </message>
    <message>
        <source>No tip is needed on this trip.</source>
        <translation>En este viaje no hace falta ninguna punta.</translation>
    </message>
    <message>
        <source>Nothing is packed yet.</source>
        <translation>Todavía no hay nada en la cartera.</translation>
    </message>
    <message>
        <source>How far the packing is</source>
        <translation>Cuánto lleva la preparación</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Pack again</source>
        <translation>Preparar de nuevo</translation>
    </message>
    <message>
        <source>Stopped: nothing new is packed.</source>
        <translation>Parado: no se ha preparado nada nuevo.</translation>
    </message>
    <message>
        <source>Wallet</source>
        <translation>Cartera</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WaterPanel</name>
    <message>
        <source>Name of the water</source>
        <translation>Nombre del agua</translation>
    </message>
    <message>
        <source>Surface speed</source>
        <translation>Corriente en superficie</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Salt, g/kg</source>
        <translation>Sal, g/kg</translation>
    </message>
    <message>
        <source>Figures for the line, no guide to wading.</source>
        <translation>Cifras para la línea, no guía para vadear.</translation>
    </message>
    <message>
        <source>or: a leaf drifts</source>
        <translation>o: una hoja deriva</translation>
    </message>
    <message>
        <source>in seconds</source>
        <translation>en segundos</translation>
    </message>
    <message>
        <source>Change the water</source>
        <translation>Cambiar el agua</translation>
    </message>
    <message>
        <source>Angle, degrees</source>
        <translation>Ángulo, grados</translation>
    </message>
    <message>
        <source>Of the landed line below straight across</source>
        <translation>De la línea posada, por debajo de la perpendicular</translation>
    </message>
    <message>
        <source>Mend, seconds</source>
        <translation>Mend, segundos</translation>
    </message>
    <message>
        <source>How long the line drifts free before it comes tight</source>
        <translation>Cuánto deriva libre la línea antes de tensarse</translation>
    </message>
    <message>
        <source>Change how it is fished</source>
        <translation>Cambiar cómo se pesca</translation>
    </message>
    <message>
        <source>Or a pool of yours</source>
        <translation>O un pozo suyo</translation>
    </message>
    <message>
        <source>choose a pool…</source>
        <translation>elija un pozo…</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>That would be over %1: check the seconds.</source>
        <translation>Eso pasaría de %1: revise los segundos.</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WayOut</name>
    <message>
        <source>There is nothing in it yet.</source>
        <translation>Todavía no contiene nada.</translation>
    </message>
    <message>
        <source>Copied as a picture: %1</source>
        <translation>Copiado como imagen: %1</translation>
    </message>
    <message>
        <source>Copied as a table: %1</source>
        <translation>Copiado como tabla: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Guardar la imagen</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Imagen (*.png)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Dibujo (*.svg)</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papel (*.pdf)</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Guardar la tabla</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>Copy picture</source>
        <translation>Copiar imagen</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Copiar tabla</translation>
    </message>
    <message>
        <source>Save picture…</source>
        <translation>Guardar imagen…</translation>
    </message>
    <message>
        <source>Save table…</source>
        <translation>Guardar tabla…</translation>
    </message>
    <message>
        <source>%1: the name should end in .png, .svg or .pdf</source>
        <translation>%1: el nombre debe terminar en .png, .svg o .pdf</translation>
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
        <translation>La báscula dice</translation>
    </message>
    <message>
        <source>Measured length</source>
        <translation>Longitud medida</translation>
    </message>
    <message>
        <source>scale shows 0.1 gr</source>
        <translation>la báscula marca 0,1 gr</translation>
    </message>
    <message>
        <source>scale shows 1 gr</source>
        <translation>la báscula marca 1 gr</translation>
    </message>
    <message>
        <source>scale shows 0.1 g</source>
        <translation>la báscula marca 0,1 g</translation>
    </message>
    <message>
        <source>kitchen scale, 1 g</source>
        <translation>báscula de cocina, 1 g</translation>
    </message>
    <message>
        <source>Smallest step of the scale</source>
        <translation>Paso mínimo de la báscula</translation>
    </message>
    <message>
        <source>Enter: weigh and go on</source>
        <translation>Intro: pesar y seguir</translation>
    </message>
    <message>
        <source>Not weighed</source>
        <translation>Sin pesar</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>Pesada</translation>
    </message>
    <message>
        <source>part</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>meant</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>off</source>
        <translation>desvío</translation>
    </message>
    <message>
        <source>a foot weighs</source>
        <translation>un pie pesa</translation>
    </message>
    <message>
        <source>Nothing on the line to weigh</source>
        <translation>Nada en la línea que pesar</translation>
    </message>
    <message>
        <source>weighed already; a new number takes its place</source>
        <translation>ya pesada; un número nuevo ocupa su lugar</translation>
    </message>
    <message>
        <source>; %1</source>
        <translation>; %1</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>Pesar %1</translation>
    </message>
    <message>
        <source>Take the weighing back</source>
        <translation>Retirar la pesada</translation>
    </message>
    <message>
        <source>meant (%1)</source>
        <translation>previsto (%1)</translation>
    </message>
    <message>
        <source>scale (%1)</source>
        <translation>báscula (%1)</translation>
    </message>
    <message>
        <source>a foot weighs (%1)</source>
        <translation>un pie pesa (%1)</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation>%1: %2 pasa a %3</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3, %4</source>
        <translation>%1: %2 pasa a %3, %4</translation>
    </message>
    <message>
        <source>No reading of the rig changes.</source>
        <translation>No cambia ninguna lectura del montaje.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Count its loops</source>
        <translation>Contar sus lazos</translation>
    </message>
    <message>
        <source>meant %1; its loops, %2, are not counted yet</source>
        <translation>previsto %1; sus lazos, %2, aún no se cuentan</translation>
    </message>
    <message>
        <source>meant %1, of it loops %2 and splice %3</source>
        <translation>previsto %1, de ello lazos %2 y empalme %3</translation>
    </message>
    <message>
        <source>meant %1: type what the scale shows, then Enter</source>
        <translation>previsto %1: escriba lo que marca la báscula y pulse Intro</translation>
    </message>
    <message>
        <source>Put loops on %1</source>
        <translation>Poner lazos a %1</translation>
    </message>
</context>
<context>
    <name>grainwise::ui::WhyPanel</name>
    <message>
        <source>The figures</source>
        <translation>Las cifras</translation>
    </message>
    <message>
        <source>How they are put together</source>
        <translation>Cómo se componen</translation>
    </message>
    <message>
        <source>The limits, and whose they are</source>
        <translation>Los límites, y de quién son</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
</TS>
