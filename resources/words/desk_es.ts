<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Desk</name>
    <message>
        <source> ({low} to {high})</source>
        <translation type="unfinished"> ({low} a {high})</translation>
    </message>
    <message>
        <source> d</source>
        <translation type="unfinished"> d</translation>
    </message>
    <message>
        <source> g</source>
        <translation type="unfinished"> g</translation>
    </message>
    <message>
        <source> g a scoop</source>
        <translation type="unfinished"> g por medida</translation>
    </message>
    <message>
        <source> or </source>
        <translation type="unfinished"> o </translation>
    </message>
    <message>
        <source> · locked</source>
        <translation type="unfinished"> · fijo</translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished">%</translation>
    </message>
    <message>
        <source>% of body weight a day</source>
        <translation type="unfinished">% del peso corporal por día</translation>
    </message>
    <message>
        <source>&amp;A level scoop</source>
        <translation type="unfinished">&amp;Medida rasa</translation>
    </message>
    <message>
        <source>&amp;About and cautions</source>
        <translation type="unfinished">&amp;Acerca de y cuidados</translation>
    </message>
    <message>
        <source>&amp;At</source>
        <translation type="unfinished">&amp;A las</translation>
    </message>
    <message>
        <source>&amp;Batch or seed lot</source>
        <translation type="unfinished">&amp;Lote o lote de semilla</translation>
    </message>
    <message>
        <source>&amp;Batches</source>
        <translation type="unfinished">&amp;Lotes</translation>
    </message>
    <message>
        <source>&amp;Beds</source>
        <translation type="unfinished">Ca&amp;mas</translation>
    </message>
    <message>
        <source>&amp;Begin…</source>
        <translation type="unfinished">&amp;Empezar…</translation>
    </message>
    <message>
        <source>&amp;Black and white</source>
        <translation type="unfinished">&amp;Blanco y negro</translation>
    </message>
    <message>
        <source>&amp;Calendar for a phone…</source>
        <translation type="unfinished">&amp;Calendario para un teléfono…</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation type="unfinished">&amp;Cambiar</translation>
    </message>
    <message>
        <source>&amp;Check the arithmetic…</source>
        <translation type="unfinished">&amp;Comprobar los cálculos…</translation>
    </message>
    <message>
        <source>&amp;Copy chosen batches</source>
        <translation type="unfinished">Copiar lotes ele&amp;gidos</translation>
    </message>
    <message>
        <source>&amp;Days before</source>
        <translation type="unfinished">&amp;Días antes</translation>
    </message>
    <message>
        <source>&amp;Doses</source>
        <translation type="unfinished">&amp;Dosis</translation>
    </message>
    <message>
        <source>&amp;Dose…</source>
        <translation type="unfinished">D&amp;osis…</translation>
    </message>
    <message>
        <source>&amp;Due this week</source>
        <translation type="unfinished">Para esta se&amp;mana</translation>
    </message>
    <message>
        <source>&amp;Export as text…</source>
        <translation type="unfinished">Expor&amp;tar como texto…</translation>
    </message>
    <message>
        <source>&amp;Farm</source>
        <translation type="unfinished">&amp;Granja</translation>
    </message>
    <message>
        <source>&amp;Filters</source>
        <translation type="unfinished">&amp;Filtros</translation>
    </message>
    <message>
        <source>&amp;Fit the whole plan</source>
        <translation type="unfinished">&amp;Ver todo el plan</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished">A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Help to this page</source>
        <translation type="unfinished">A&amp;yuda de esta página</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation type="unfinished">&amp;Historial…</translation>
    </message>
    <message>
        <source>&amp;Keep all lines</source>
        <translation type="unfinished">&amp;Guardar todas las líneas</translation>
    </message>
    <message>
        <source>&amp;Labels and tags…</source>
        <translation type="unfinished">&amp;Etiquetas y tarjetas…</translation>
    </message>
    <message>
        <source>&amp;Larger type</source>
        <translation type="unfinished">&amp;Letra más grande</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished">&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Lock the chosen batch</source>
        <translation type="unfinished">&amp;Fijar el lote elegido</translation>
    </message>
    <message>
        <source>&amp;Log it</source>
        <translation type="unfinished">&amp;Anotar</translation>
    </message>
    <message>
        <source>&amp;Loops of water</source>
        <translation type="unfinished">&amp;Circuitos de agua</translation>
    </message>
    <message>
        <source>&amp;Meals a day</source>
        <translation type="unfinished">Comidas/&amp;día</translation>
    </message>
    <message>
        <source>&amp;Meaning of what is in hand</source>
        <translation type="unfinished">&amp;Qué significa lo que se usa</translation>
    </message>
    <message>
        <source>&amp;Meters</source>
        <translation type="unfinished">&amp;Medidores</translation>
    </message>
    <message>
        <source>&amp;Meters and products</source>
        <translation type="unfinished">&amp;Medidores y productos</translation>
    </message>
    <message>
        <source>&amp;Move all to the right</source>
        <translation type="unfinished">&amp;Mover todo a la derecha</translation>
    </message>
    <message>
        <source>&amp;New lines</source>
        <translation type="unfinished">Líneas &amp;nuevas</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished">&amp;Nueva…</translation>
    </message>
    <message>
        <source>&amp;Next week</source>
        <translation type="unfinished">Semana &amp;siguiente</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished">&amp;Abrir…</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation type="unfinished">&amp;Papel</translation>
    </message>
    <message>
        <source>&amp;Paste some weeks later…</source>
        <translation type="unfinished">Pe&amp;gar semanas después…</translation>
    </message>
    <message>
        <source>&amp;Plan and name…</source>
        <translation type="unfinished">&amp;Plan y nombre…</translation>
    </message>
    <message>
        <source>&amp;Previous week</source>
        <translation type="unfinished">Semana a&amp;nterior</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished">&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished">&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished">&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Repeat the last</source>
        <translation type="unfinished">&amp;Repetir lo último</translation>
    </message>
    <message>
        <source>&amp;Save as a table…</source>
        <translation type="unfinished">&amp;Guardar como tabla…</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation type="unfinished">&amp;Guardar…</translation>
    </message>
    <message>
        <source>&amp;Set-up</source>
        <translation type="unfinished">&amp;Instalaciones</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation type="unfinished">&amp;Hoja</translation>
    </message>
    <message>
        <source>&amp;Sites</source>
        <translation type="unfinished">&amp;Sitios</translation>
    </message>
    <message>
        <source>&amp;Sow a batch…</source>
        <translation type="unfinished">&amp;Sembrar un lote…</translation>
    </message>
    <message>
        <source>&amp;Take up what was learned</source>
        <translation type="unfinished">&amp;Tomar lo aprendido</translation>
    </message>
    <message>
        <source>&amp;Trace a batch or lot…</source>
        <translation type="unfinished">&amp;Seguir un lote…</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished">&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished">&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Water reading…</source>
        <translation type="unfinished">Lectura de &amp;agua…</translation>
    </message>
    <message>
        <source>&amp;Whose work</source>
        <translation type="unfinished">&amp;Trabajo de quién</translation>
    </message>
    <message>
        <source>&amp;Width of a label</source>
        <translation type="unfinished">A&amp;ncho de una etiqueta</translation>
    </message>
    <message>
        <source>&amp;Words used here</source>
        <translation type="unfinished">&amp;Palabras usadas aquí</translation>
    </message>
    <message>
        <source>, past the plan when slow</source>
        <translation type="unfinished">, después del plan si crecen lento</translation>
    </message>
    <message>
        <source>, {slow} when slow</source>
        <translation type="unfinished">, {slow} si crecen lento</translation>
    </message>
    <message>
        <source>0 for none</source>
        <translation type="unfinished">0 para ninguno</translation>
    </message>
    <message>
        <source>07:30</source>
        <translation type="unfinished">07:30</translation>
    </message>
    <message>
        <source>0: once</source>
        <translation type="unfinished">0: una vez</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation type="unfinished">1 lote</translation>
    </message>
    <message>
        <source>1 batch chosen</source>
        <translation type="unfinished">1 lote elegido</translation>
    </message>
    <message>
        <source>1 batch has to wait.</source>
        <translation type="unfinished">1 lote tiene que esperar.</translation>
    </message>
    <message>
        <source>1 batch: harvest {span} days {way}</source>
        <translation type="unfinished">1 lote: cosecha {span} días {way}</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation type="unfinished">1 día</translation>
    </message>
    <message>
        <source>1 day earlier</source>
        <translation type="unfinished">1 día antes</translation>
    </message>
    <message>
        <source>1 day later</source>
        <translation type="unfinished">1 día después</translation>
    </message>
    <message>
        <source>1 found</source>
        <translation type="unfinished">1 encontrado</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation type="unfinished">1 grupo</translation>
    </message>
    <message>
        <source>1 own</source>
        <translation type="unfinished">1 propia</translation>
    </message>
    <message>
        <source>1 page on {paper}</source>
        <translation type="unfinished">1 página en {paper}</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished">1 lectura</translation>
    </message>
    <message>
        <source>1 thing</source>
        <translation type="unfinished">1 cosa</translation>
    </message>
    <message>
        <source>1 thing differs</source>
        <translation type="unfinished">1 cosa difiere</translation>
    </message>
    <message>
        <source>1 thing to note</source>
        <translation type="unfinished">1 cosa que notar</translation>
    </message>
    <message>
        <source>1 thing to repair, from today on</source>
        <translation type="unfinished">1 cosa por arreglar, de hoy en adelante</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation type="unfinished">1 semana</translation>
    </message>
    <message>
        <source>1, 2, 4 and 6 groups, harvested whole or in parts. The more groups, the less the feed falls at a harvest, and the plants' food with it. The fall is against the month before; “longest” is the time until the feed is back.</source>
        <translation type="unfinished">1, 2, 4 y 6 grupos, cosechados enteros o por partes. Cuantos más grupos, menos cae el alimento en una cosecha, y con él la comida de las plantas. La caída se mide contra el mes anterior; “más larga” es el tiempo hasta que el alimento se recupera.</translation>
    </message>
    <message>
        <source>1/degC</source>
        <translation type="unfinished">1/°C</translation>
    </message>
    <message>
        <source>1/degC^0.5</source>
        <translation type="unfinished">1/°C^0.5</translation>
    </message>
    <message>
        <source>1/degF</source>
        <translation type="unfinished">1/°F</translation>
    </message>
    <message>
        <source>1/week</source>
        <translation type="unfinished">1/semana</translation>
    </message>
    <message>
        <source>10-15 fruits a plant. Book method is the media bed.</source>
        <translation type="unfinished">10 a 15 frutos por planta. El método del libro es la cama de medio.</translation>
    </message>
    <message>
        <source>7,2</source>
        <translation type="unfinished">7,2</translation>
    </message>
    <message>
        <source>7.2</source>
        <translation type="unfinished">7.2</translation>
    </message>
    <message>
        <source>; brings along {ions}</source>
        <translation type="unfinished">; trae también {ions}</translation>
    </message>
    <message>
        <source>; dissolves slowly</source>
        <translation type="unfinished">; se disuelve lento</translation>
    </message>
    <message>
        <source>; doses of the plan bring {eq}</source>
        <translation type="unfinished">; las dosis del plan traen {eq}</translation>
    </message>
    <message>
        <source>; foreseen {value} on {day}</source>
        <translation type="unfinished">; previsto {value} el {day}</translation>
    </message>
    <message>
        <source>; from {value} on {day}</source>
        <translation type="unfinished">; de {value} el {day}</translation>
    </message>
    <message>
        <source>; meter calibrated on {days}: no trend across that</source>
        <translation type="unfinished">; medidor calibrado el {days}: sin tendencia a través de eso</translation>
    </message>
    <message>
        <source>; the first {shown} are shown</source>
        <translation type="unfinished">; se muestran las primeras {shown}</translation>
    </message>
    <message>
        <source>; {count} of them doubtful: the meter was overdue for calibration</source>
        <translation type="unfinished">; {count} de ellas dudosas: al medidor ya le tocaba calibrarse</translation>
    </message>
    <message>
        <source>A (letter of fish added)</source>
        <translation type="unfinished">A</translation>
    </message>
    <message>
        <source>A (letter of the band ample)</source>
        <translation type="unfinished">S</translation>
    </message>
    <message>
        <source>A band drawn over empty ground chooses all it touches, with Shift more; Ctrl+A chooses all in sight. They are moved, copied and locked together.</source>
        <translation type="unfinished">Una banda trazada sobre terreno vacío elige todo lo que toca, con Mayús, más; Ctrl+A elige todo lo que se ve. Se mueven, copian y bloquean juntos.</translation>
    </message>
    <message>
        <source>A bar cannot be put here. Drop it on a raft, block or tray.</source>
        <translation type="unfinished">Aquí no se puede poner una barra. Suéltela en una balsa, bloque o bandeja.</translation>
    </message>
    <message>
        <source>A batch that no plan may move.</source>
        <translation type="unfinished">Un lote que ningún plan puede mover.</translation>
    </message>
    <message>
        <source>A batch, bed, fish, crop, week, page or word</source>
        <translation type="unfinished">Un lote, cama, peces, cultivo, semana, página o palabra</translation>
    </message>
    <message>
        <source>A bed of stones that holds roots, bacteria and some solids.</source>
        <translation type="unfinished">Una cama de piedras que sostiene raíces, bacterias y algunos sólidos.</translation>
    </message>
    <message>
        <source>A change of the plan that makes a flagged week better, tried on a forecast first.</source>
        <translation type="unfinished">Un cambio del plan que mejora una semana marcada, probado antes en un pronóstico.</translation>
    </message>
    <message>
        <source>A chart can be walked day by day: click it, or go to it by Tab and use the arrow keys.</source>
        <translation type="unfinished">Un gráfico se recorre día a día: haga clic en él, o vaya a él con Tab y use las flechas.</translation>
    </message>
    <message>
        <source>A copy was saved as {name}.</source>
        <translation type="unfinished">Se guardó una copia como {name}.</translation>
    </message>
    <message>
        <source>A crop or variety, a fish, a feed or a supplement of your own</source>
        <translation type="unfinished">Un cultivo o variedad, un pez, un alimento o un suplemento propios</translation>
    </message>
    <message>
        <source>A distance between the nursery and the final one, so that less bed stands empty.</source>
        <translation type="unfinished">Una distancia entre la del vivero y la final, para que haya menos cama vacía.</translation>
    </message>
    <message>
        <source>A farm file or a farm as text, from this computer or from a stick.</source>
        <translation type="unfinished">Un archivo de granja o una granja como texto, de esta computadora o de una memoria.</translation>
    </message>
    <message>
        <source>A farm kept already</source>
        <translation type="unfinished">Una granja ya guardada</translation>
    </message>
    <message>
        <source>A floating board with holes for plants.</source>
        <translation type="unfinished">Una tabla que flota, con hoyos para plantas.</translation>
    </message>
    <message>
        <source>A forecast is no test. Test the water before you dose.</source>
        <translation type="unfinished">Un pronóstico no es un análisis. Analice el agua antes de dosificar.</translation>
    </message>
    <message>
        <source>A hole of a raft, a spot of a gravel bed or a cell of a tray; it holds one plant at a time.</source>
        <translation type="unfinished">Un hoyo de una balsa, un punto de una cama de grava o una celda de una bandeja; lleva una planta a la vez.</translation>
    </message>
    <message>
        <source>A leaf crop that flowers too early, mostly from heat; its leaves turn bitter.</source>
        <translation type="unfinished">Un cultivo de hoja que florece antes de tiempo, casi siempre por calor; amarga.</translation>
    </message>
    <message>
        <source>A line every</source>
        <translation type="unfinished">Una línea cada</translation>
    </message>
    <message>
        <source>A meal [g]</source>
        <translation type="unfinished">Por comida [g]</translation>
    </message>
    <message>
        <source>A new loop begins with leafy crops; fruiting ones wait until the feed carries them.</source>
        <translation type="unfinished">Un circuito nuevo empieza con cultivos de hoja; los de fruto esperan hasta que el alimento los sostenga.</translation>
    </message>
    <message>
        <source>A planned harvest of a whole group can be compared with taking it in parts. Fish that stay should not be kept off feed for it.</source>
        <translation type="unfinished">Una cosecha prevista de un grupo entero puede compararse con sacarlo por partes. A los peces que se quedan no se les debe quitar el alimento por ello.</translation>
    </message>
    <message>
        <source>A price that is not given leaves a sum unknown; it never counts as nothing. Prices are kept on this computer, not in the farm.</source>
        <translation type="unfinished">Un precio que falta deja una suma sin conocer; nunca cuenta como nada. Los precios se guardan en este ordenador, no en la granja.</translation>
    </message>
    <message>
        <source>A proposal is shown here beside today's plan. Nothing changes until you adopt it.</source>
        <translation type="unfinished">Aquí se muestra una propuesta junto al plan de hoy. Nada cambia hasta que la adopte.</translation>
    </message>
    <message>
        <source>A scenario of that name goes on, another one begins</source>
        <translation type="unfinished">Un escenario con ese nombre sigue; otro nombre empieza uno nuevo</translation>
    </message>
    <message>
        <source>A season, successions, repairs and orders are worked out here, for the beds there are.</source>
        <translation type="unfinished">Aquí se calculan temporada, sucesiones, arreglos y pedidos para las camas que hay.</translation>
    </message>
    <message>
        <source>A sowing is drafted for each week of a year; you can change all of it.</source>
        <translation type="unfinished">Se propone una siembra para cada semana de un año; puede cambiarlo todo.</translation>
    </message>
    <message>
        <source>A substance that brings what fish feed lacks, such as iron or potassium.</source>
        <translation type="unfinished">Sustancia que aporta lo que falta al alimento, como hierro o potasio.</translation>
    </message>
    <message>
        <source>A substance that takes up acid and so holds the pH up, such as a bicarbonate.</source>
        <translation type="unfinished">Una sustancia que absorbe ácido y así sostiene el pH, como un bicarbonato.</translation>
    </message>
    <message>
        <source>A switch that trips at night stops air and pump without a sound. Fit an alarm that calls when power fails, and give the fish a circuit of their own.</source>
        <translation type="unfinished">Un interruptor que salta de noche detiene el aire y la bomba sin ruido. Ponga una alarma que llame cuando falle la corriente y dé a los peces un circuito propio.</translation>
    </message>
    <message>
        <source>A tripped safety switch kills fish quietly</source>
        <translation type="unfinished">Un interruptor de seguridad que salta mata peces en silencio</translation>
    </message>
    <message>
        <source>A weighed amount of a supplement or base, given once or again and again.</source>
        <translation type="unfinished">Cantidad pesada de un suplemento o una base, una vez o repetida.</translation>
    </message>
    <message>
        <source>A weighed sample, harvest, deaths, days off feed, feed given</source>
        <translation type="unfinished">Una muestra pesada, cosecha, muertes, días sin alimento, alimento dado</translation>
    </message>
    <message>
        <source>A {kind} needs a {missing} first. Add one in the menu Set-up.</source>
        <translation type="unfinished">Para agregar “{kind}” hace falta primero “{missing}”. Agréguelo en el menú Instalaciones.</translation>
    </message>
    <message>
        <source>AB</source>
        <translation type="unfinished">AB</translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished">Sobre</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation type="unfinished">Acerca de y cuidados</translation>
    </message>
    <message>
        <source>About the chosen case</source>
        <translation type="unfinished">Sobre el caso elegido</translation>
    </message>
    <message>
        <source>About the group</source>
        <translation type="unfinished">Sobre el grupo</translation>
    </message>
    <message>
        <source>Acid by the log</source>
        <translation type="unfinished">Ácido según el registro</translation>
    </message>
    <message>
        <source>Acid made</source>
        <translation type="unfinished">Ácido producido</translation>
    </message>
    <message>
        <source>Acids</source>
        <translation type="unfinished">Ácidos</translation>
    </message>
    <message>
        <source>ActLine | None</source>
        <translation type="unfinished">ActLine | None</translation>
    </message>
    <message>
        <source>Acts, newest first</source>
        <translation type="unfinished">Acciones, las nuevas primero</translation>
    </message>
    <message>
        <source>Actual [d]</source>
        <translation type="unfinished">Real [d]</translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished">Agregar</translation>
    </message>
    <message>
        <source>Add a &amp;meter…</source>
        <translation type="unfinished">Añadir un &amp;medidor…</translation>
    </message>
    <message>
        <source>Add a bed</source>
        <translation type="unfinished">Agregar una cama</translation>
    </message>
    <message>
        <source>Add a bed…</source>
        <translation type="unfinished">Añadir una cama…</translation>
    </message>
    <message>
        <source>Add a crop</source>
        <translation type="unfinished">Agregar un cultivo</translation>
    </message>
    <message>
        <source>Add a dose…</source>
        <translation type="unfinished">Dosis…</translation>
    </message>
    <message>
        <source>Add a loop of water…</source>
        <translation type="unfinished">Añadir un circuito de agua…</translation>
    </message>
    <message>
        <source>Add a meter…</source>
        <translation type="unfinished">Añadir un medidor…</translation>
    </message>
    <message>
        <source>Add a packet or delivery of seed</source>
        <translation type="unfinished">Agregar un sobre o entrega de semilla</translation>
    </message>
    <message>
        <source>Add a reading…</source>
        <translation type="unfinished">Lectura…</translation>
    </message>
    <message>
        <source>Add a seed &amp;lot…</source>
        <translation type="unfinished">Añadir un &amp;lote de semilla…</translation>
    </message>
    <message>
        <source>Add a site…</source>
        <translation type="unfinished">Añadir un sitio…</translation>
    </message>
    <message>
        <source>Add a tank…</source>
        <translation type="unfinished">Añadir un estanque…</translation>
    </message>
    <message>
        <source>Add a target</source>
        <translation type="unfinished">Agregar una meta</translation>
    </message>
    <message>
        <source>Add an event…</source>
        <translation type="unfinished">Evento…</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation type="unfinished">Añadirla</translation>
    </message>
    <message>
        <source>Add reading of {quantity}, {on}</source>
        <translation type="unfinished">Añadir lectura de {quantity}, {on}</translation>
    </message>
    <message>
        <source>Add to the list</source>
        <translation type="unfinished">Agregar a la lista</translation>
    </message>
    <message>
        <source>Add to the scenario</source>
        <translation type="unfinished">Agregar al escenario</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation type="unfinished">Agregar {name}</translation>
    </message>
    <message>
        <source>Add…</source>
        <translation type="unfinished">Agregar…</translation>
    </message>
    <message>
        <source>Adopt</source>
        <translation type="unfinished">Adoptar</translation>
    </message>
    <message>
        <source>Adopt 1 sowing</source>
        <translation type="unfinished">Adoptar 1 siembra</translation>
    </message>
    <message>
        <source>Adopt a plan of 1 sowing</source>
        <translation type="unfinished">Adoptar un plan de 1 siembra</translation>
    </message>
    <message>
        <source>Adopt a plan of {count} sowings</source>
        <translation type="unfinished">Adoptar un plan de {count} siembras</translation>
    </message>
    <message>
        <source>Adopt makes the proposal the plan, in one act: one undo brings the old plan back. When the farm has changed since, the proposal must be worked out again.</source>
        <translation type="unfinished">Adoptar convierte la propuesta en el plan, en un solo acto: un deshacer trae de vuelta el plan anterior. Si la granja ha cambiado desde entonces, la propuesta debe calcularse de nuevo.</translation>
    </message>
    <message>
        <source>Adopt the season plan from {day}</source>
        <translation type="unfinished">Adoptar el plan de temporada desde el {day}</translation>
    </message>
    <message>
        <source>Adopt the season plan from {on}</source>
        <translation type="unfinished">Adoptar el plan de temporada desde {on}</translation>
    </message>
    <message>
        <source>Adopt {count} sowings</source>
        <translation type="unfinished">Adoptar {count} siembras</translation>
    </message>
    <message>
        <source>Adopt {name}</source>
        <translation type="unfinished">Adoptar {name}</translation>
    </message>
    <message>
        <source>Adopting</source>
        <translation type="unfinished">Adoptar</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished">Consejo</translation>
    </message>
    <message>
        <source>Aerated</source>
        <translation type="unfinished">Con aire</translation>
    </message>
    <message>
        <source>After rounding up to whole pots and trays</source>
        <translation type="unfinished">Redondeado a macetas y bandejas enteras</translation>
    </message>
    <message>
        <source>Against</source>
        <translation type="unfinished">Frente a</translation>
    </message>
    <message>
        <source>Against the rest of the year: {months}</source>
        <translation type="unfinished">Frente al resto del año: {months}</translation>
    </message>
    <message>
        <source>Air at the beds, by month</source>
        <translation type="unfinished">Aire en las camas, por mes</translation>
    </message>
    <message>
        <source>Air at the nursery, by month</source>
        <translation type="unfinished">Aire en el vivero, por mes</translation>
    </message>
    <message>
        <source>Air by month guessed from the class “{climate}”; put in your own.</source>
        <translation type="unfinished">Aire por mes estimado de la clase “{climate}”; ponga los suyos.</translation>
    </message>
    <message>
        <source>Air from {low} to {high} °C by month at sea level: a guess, {sure}. Put in your own later.</source>
        <translation type="unfinished">Aire de {low} a {high} °C por mes al nivel del mar: una estimación, {sure}. Ponga luego los suyos.</translation>
    </message>
    <message>
        <source>Air temperature [°C]</source>
        <translation type="unfinished">Temperatura del aire [°C]</translation>
    </message>
    <message>
        <source>Alkalinity</source>
        <translation type="unfinished">Alcalinidad</translation>
    </message>
    <message>
        <source>Alkalinity [mg/L CaCO₃]</source>
        <translation type="unfinished">Alcalinidad [mg/L CaCO₃]</translation>
    </message>
    <message>
        <source>Alkalinity falls by</source>
        <translation type="unfinished">La alcalinidad baja</translation>
    </message>
    <message>
        <source>Alkalinity of the make-up water</source>
        <translation type="unfinished">Alcalinidad del agua de reposición</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todos</translation>
    </message>
    <message>
        <source>All [kg]</source>
        <translation type="unfinished">Total [kg]</translation>
    </message>
    <message>
        <source>All crops</source>
        <translation type="unfinished">Todos los cultivos</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished">Todos los archivos (*)</translation>
    </message>
    <message>
        <source>All fish of the tank when the week ends, groups together</source>
        <translation type="unfinished">Todos los peces del tanque al final de la semana, grupos juntos</translation>
    </message>
    <message>
        <source>All lanes on one ruler of weeks</source>
        <translation type="unfinished">Todos los carriles sobre una sola regla de semanas</translation>
    </message>
    <message>
        <source>All layers</source>
        <translation type="unfinished">Todos los niveles</translation>
    </message>
    <message>
        <source>All of these entries are there already.</source>
        <translation type="unfinished">Todas estas entradas ya están.</translation>
    </message>
    <message>
        <source>All of {batch} has its places already.</source>
        <translation type="unfinished">Todo {batch} ya tiene sus lugares.</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation type="unfinished">Todo guardado</translation>
    </message>
    <message>
        <source>All subjects</source>
        <translation type="unfinished">Todos los temas</translation>
    </message>
    <message>
        <source>All the water that goes round</source>
        <translation type="unfinished">Toda el agua que circula</translation>
    </message>
    <message>
        <source>All ways are judged over the same weeks, from {a} to {b}, once every group has been harvested. A fall is against the month before. ★ marks the best.</source>
        <translation type="unfinished">Todas las formas se juzgan en las mismas semanas, de {a} a {b}, cuando ya se cosechó cada grupo. La baja es contra el mes anterior. ★ marca la mejor.</translation>
    </message>
    <message>
        <source>Alter the chosen target</source>
        <translation type="unfinished">Cambiar la meta elegida</translation>
    </message>
    <message>
        <source>Alter the event…</source>
        <translation type="unfinished">Cambiar evento…</translation>
    </message>
    <message>
        <source>Alter the group…</source>
        <translation type="unfinished">Cambiar el grupo…</translation>
    </message>
    <message>
        <source>Alter what is &amp;chosen…</source>
        <translation type="unfinished">Ca&amp;mbiar lo elegido…</translation>
    </message>
    <message>
        <source>Alter…</source>
        <translation type="unfinished">Cambiar…</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation type="unfinished">Altitud</translation>
    </message>
    <message>
        <source>Ammonia (TAN)</source>
        <translation type="unfinished">Amoniaco (TAN)</translation>
    </message>
    <message>
        <source>Ammonia from feed</source>
        <translation type="unfinished">Amoníaco del alimento</translation>
    </message>
    <message>
        <source>Ammonia is high: give no base until it has fallen, for at a higher pH more of it is poison.</source>
        <translation type="unfinished">El amoníaco está alto: no dé base hasta que baje, pues con pH más alto una parte mayor es veneno.</translation>
    </message>
    <message>
        <source>Ammonia turned to nitrite and nitrate by bacteria; it makes acid.</source>
        <translation type="unfinished">Amoníaco que las bacterias vuelven nitrito y nitrato; produce ácido.</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished">Cantidad</translation>
    </message>
    <message>
        <source>An invented school kitchen in its first year. It is a copy: change what you like.</source>
        <translation type="unfinished">Una cocina escolar inventada en su primer año. Es una copia: cambie lo que quiera.</translation>
    </message>
    <message>
        <source>An order by a day</source>
        <translation type="unfinished">Un pedido para un día</translation>
    </message>
    <message>
        <source>An ornamental fish: not for the table.</source>
        <translation type="unfinished">Pez de ornato: no es para comer.</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation type="unfinished">Animales</translation>
    </message>
    <message>
        <source>Another copy of this farm was worked on later ({day}): {path}. From here on the two differ; open that one to go on there.</source>
        <translation type="unfinished">Después se trabajó en otra copia de esta granja ({day}): {path}. Desde aquí las dos difieren; abra aquella para seguir ahí.</translation>
    </message>
    <message>
        <source>Another crop in its place</source>
        <translation type="unfinished">Otro cultivo en su lugar</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation type="unfinished">Respuesta</translation>
    </message>
    <message>
        <source>Any number can be asked why. In a table or list, go to it with the arrow keys and press Ctrl+I, or press the right button on it and choose “Why”. In the text beside a page, numbers in colour answer to a click, or to Tab and Enter.</source>
        <translation type="unfinished">De cualquier número se puede preguntar el porqué. En una tabla o lista, vaya a él con las flechas y pulse Ctrl+I, o pulse sobre él el botón derecho y elija «Por qué». En el texto junto a una página, los números en color responden a un clic, o a Tab e Intro.</translation>
    </message>
    <message>
        <source>Any supplement, any amount, once or repeated</source>
        <translation type="unfinished">Cualquier suplemento y cantidad, una vez o repetida</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation type="unfinished">Separación</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation type="unfinished">Aplicar</translation>
    </message>
    <message>
        <source>Apply: {words}</source>
        <translation type="unfinished">Aplicar: {words}</translation>
    </message>
    <message>
        <source>April–June</source>
        <translation type="unfinished">Abril–junio</translation>
    </message>
    <message>
        <source>Aquaponics</source>
        <translation type="unfinished">Acuaponía</translation>
    </message>
    <message>
        <source>Aquatic type, cut again and again. Regulated as a weed in some places.</source>
        <translation type="unfinished">Tipo acuático, se corta una y otra vez. En algunos lugares está regulada como maleza.</translation>
    </message>
    <message>
        <source>Area</source>
        <translation type="unfinished">Área</translation>
    </message>
    <message>
        <source>Area by FAO</source>
        <translation type="unfinished">Área según la FAO</translation>
    </message>
    <message>
        <source>Area by UVI</source>
        <translation type="unfinished">Área según UVI</translation>
    </message>
    <message>
        <source>Area by the ratio of</source>
        <translation type="unfinished">Superficie según la proporción de</translation>
    </message>
    <message>
        <source>Arrow keys go from bar to bar. Alt with left or right moves the batch by a day, with Shift, or by Alt with Page Up or Page Down, by a week. Alt with up or down moves it to another unit, with plus or minus it is picked a week more or less. Shift with an arrow chooses the next batch as well, Control with A all in sight. Enter opens it. Plus and minus zoom.</source>
        <translation type="unfinished">Las flechas van de barra en barra. Alt con izquierda o derecha mueve el lote un día; con Mayús, o Alt con RePág o AvPág, una semana. Alt con arriba o abajo lo mueve a otra unidad; con más o menos se cosecha una semana más o menos. Mayús con una flecha elige también el lote siguiente, Control con A todos los que se ven. Intro lo abre. Más y menos acercan y alejan.</translation>
    </message>
    <message>
        <source>Arrow keys go from hole to hole, Page Up and Page Down a week back and on, Alt with left or right a day. Space takes up the plants of a hole; arrow keys choose where to, Enter puts them there, Escape leaves them. Plus and minus zoom.</source>
        <translation type="unfinished">Las flechas van de hoyo en hoyo; Re Pág y Av Pág, una semana atrás o adelante; Alt con izquierda o derecha, un día. Espacio toma las plantas de un hoyo; las flechas eligen adónde, Intro las pone ahí, Escape las deja. Más y menos acercan y alejan.</translation>
    </message>
    <message>
        <source>Arrow keys go from hole to hole; Page Up and Page Down go a week back and on, Alt with left or right a day.</source>
        <translation type="unfinished">Las flechas van de hueco en hueco; Re Pág y Av Pág van una semana atrás y adelante, Alt con izquierda o derecha un día.</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation type="unfinished">Preguntar</translation>
    </message>
    <message>
        <source>Ask whether the loop can carry these beds</source>
        <translation type="unfinished">Preguntar si el circuito puede con estas camas</translation>
    </message>
    <message>
        <source>Ask your fisheries office before you buy fish. Never release fish or eggs.</source>
        <translation type="unfinished">Pregunte a su oficina de pesca antes de comprar peces. Nunca suelte peces ni huevos.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation type="unfinished">Supuesto</translation>
    </message>
    <message>
        <source>At most</source>
        <translation type="unfinished">Máximo</translation>
    </message>
    <message>
        <source>At the high end of the feed-rate band</source>
        <translation type="unfinished">En lo alto de la franja de alimento por área</translation>
    </message>
    <message>
        <source>At the low end of the feed-rate band</source>
        <translation type="unfinished">En lo bajo de la franja de alimento por área</translation>
    </message>
    <message>
        <source>B (letter of the stage bed)</source>
        <translation type="unfinished">C</translation>
    </message>
    <message>
        <source>Back after</source>
        <translation type="unfinished">Vuelve tras</translation>
    </message>
    <message>
        <source>Back to the book's value</source>
        <translation type="unfinished">Volver al valor del catálogo</translation>
    </message>
    <message>
        <source>Back to the book: {name}, {label}</source>
        <translation type="unfinished">De vuelta al catálogo: {name}, {label}</translation>
    </message>
    <message>
        <source>Back to what this is part of</source>
        <translation type="unfinished">Volver a lo que contiene esto</translation>
    </message>
    <message>
        <source>Backs with the cau&amp;tion</source>
        <translation type="unfinished">Dorsos con la adver&amp;tencia</translation>
    </message>
    <message>
        <source>Backups, the latest first</source>
        <translation type="unfinished">Respaldos, los últimos primero</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation type="unfinished">Balance</translation>
    </message>
    <message>
        <source>Band</source>
        <translation type="unfinished">Franja</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation type="unfinished">Franjas</translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished">Base</translation>
    </message>
    <message>
        <source>Base it brings</source>
        <translation type="unfinished">Base que aporta</translation>
    </message>
    <message>
        <source>Base wanted</source>
        <translation type="unfinished">Base pedida</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished">Lote</translation>
    </message>
    <message>
        <source>Batch {code} fits on no further unit in this direction.</source>
        <translation type="unfinished">El lote {code} no cabe en ninguna otra unidad hacia ese lado.</translation>
    </message>
    <message>
        <source>Batch {code} is locked. Unlock it to move it.</source>
        <translation type="unfinished">El lote {code} está fijo. Suéltelo para moverlo.</translation>
    </message>
    <message>
        <source>Batch {code} moved. {text}</source>
        <translation type="unfinished">Lote {code} movido. {text}</translation>
    </message>
    <message>
        <source>Batch {code}, {crop}, {plants} plants, {place}, from {start} to {end}.</source>
        <translation type="unfinished">Lote {code}, {crop}, {plants} plantas, {place}, de {start} a {end}.</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished">Lotes</translation>
    </message>
    <message>
        <source>Batches of a loop that starts up</source>
        <translation type="unfinished">Lotes de un circuito que arranca</translation>
    </message>
    <message>
        <source>Batches that would move</source>
        <translation type="unfinished">Lotes que se moverían</translation>
    </message>
    <message>
        <source>Batches to sow: {many}, from {first} to {last}.</source>
        <translation type="unfinished">Lotes por sembrar: {many}, de {first} a {last}.</translation>
    </message>
    <message>
        <source>Batches to sow: {many}, on {first}.</source>
        <translation type="unfinished">Lotes por sembrar: {many}, el {first}.</translation>
    </message>
    <message>
        <source>Batches without places</source>
        <translation type="unfinished">Lotes sin lugar</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation type="unfinished">Cama</translation>
    </message>
    <message>
        <source>Bed map</source>
        <translation type="unfinished">Plano de camas</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation type="unfinished">Camas</translation>
    </message>
    <message>
        <source>Beds are drawn to scale: this bar is {length}</source>
        <translation type="unfinished">Las camas están dibujadas a escala: esta barra mide {length}</translation>
    </message>
    <message>
        <source>Beds planted, on average and at most</source>
        <translation type="unfinished">Camas plantadas, en promedio y máximo</translation>
    </message>
    <message>
        <source>Beds to be added</source>
        <translation type="unfinished">Camas por agregar</translation>
    </message>
    <message>
        <source>Beds, batches and fish stand here on one line of weeks. Begin with where plants grow; fish and sowings follow.</source>
        <translation type="unfinished">Camas, lotes y peces están aquí en una sola línea de semanas. Empiece por donde crecen las plantas; luego peces y siembras.</translation>
    </message>
    <message>
        <source>Before all of these</source>
        <translation type="unfinished">Antes de todo esto</translation>
    </message>
    <message>
        <source>Before → after, for the flagged weeks. “Repairs it” means that nothing of the warning is left. “Look out” names what else it does.</source>
        <translation type="unfinished">Antes → después, para las semanas señaladas. “Lo repara” significa que no queda nada del aviso. “Atención” dice qué más hace.</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished">Empezar</translation>
    </message>
    <message>
        <source>Begin a new farm</source>
        <translation type="unfinished">Empezar una granja nueva</translation>
    </message>
    <message>
        <source>Begin a new one…</source>
        <translation type="unfinished">Empezar una nueva…</translation>
    </message>
    <message>
        <source>Begin the sheet anew for these days</source>
        <translation type="unfinished">Empezar de nuevo la hoja para estos días</translation>
    </message>
    <message>
        <source>Begin your own farm…</source>
        <translation type="unfinished">Empezar su granja…</translation>
    </message>
    <message>
        <source>Best of these: {words}</source>
        <translation type="unfinished">La mejor de estas: {words}</translation>
    </message>
    <message>
        <source>Best warmth to germinate</source>
        <translation type="unfinished">Mejor calor para germinar</translation>
    </message>
    <message>
        <source>Best water temperature</source>
        <translation type="unfinished">Mejor temperatura del agua</translation>
    </message>
    <message>
        <source>Biofilter</source>
        <translation type="unfinished">Biofiltro</translation>
    </message>
    <message>
        <source>Biomass</source>
        <translation type="unfinished">Biomasa</translation>
    </message>
    <message>
        <source>Bolting</source>
        <translation type="unfinished">Espigado</translation>
    </message>
    <message>
        <source>Bolts after cold nights; short window when ripe.</source>
        <translation type="unfinished">Espiga tras noches frías; poco tiempo en su punto.</translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished">Catálogo</translation>
    </message>
    <message>
        <source>Botanical name</source>
        <translation type="unfinished">Nombre botánico</translation>
    </message>
    <message>
        <source>Bought on</source>
        <translation type="unfinished">Comprado el</translation>
    </message>
    <message>
        <source>Breakdown of fish solids that sets plant food free.</source>
        <translation type="unfinished">Descomposición de los sólidos de los peces que libera alimento para las plantas.</translation>
    </message>
    <message>
        <source>Breathes air; eats its smaller mates: grade often. Foreign species in many places.</source>
        <translation type="unfinished">Respira aire; se come a los más pequeños: clasifique a menudo. Especie foránea en muchos lugares.</translation>
    </message>
    <message>
        <source>Breeds in the tank unless one sex. Handle above 18 °C only. Foreign species: needs a permit in many places.</source>
        <translation type="unfinished">Se reproduce en el tanque salvo que sea de un solo sexo. Manipule solo sobre 18 °C. Especie foránea: en muchos lugares necesita permiso.</translation>
    </message>
    <message>
        <source>Bring &amp;in a table…</source>
        <translation type="unfinished">Traer &amp;una tabla…</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation type="unfinished">Traer</translation>
    </message>
    <message>
        <source>Bring in a table</source>
        <translation type="unfinished">Traer una tabla</translation>
    </message>
    <message>
        <source>Bring in the good rows and leave these out</source>
        <translation type="unfinished">Traer las filas buenas y dejar estas fuera</translation>
    </message>
    <message>
        <source>Bringing in {count}…</source>
        <translation type="unfinished">Incorporando {count}…</translation>
    </message>
    <message>
        <source>Brings chloride: protects fish from nitrite, builds up in closed loops.</source>
        <translation type="unfinished">Trae cloruro: protege a los peces del nitrito, se acumula en circuitos cerrados.</translation>
    </message>
    <message>
        <source>Brings sodium, which no crop takes up and which builds up in the water: only when nothing else is at hand.</source>
        <translation type="unfinished">Trae sodio, que ningún cultivo toma y que se acumula en el agua: solo cuando no hay otra cosa.</translation>
    </message>
    <message>
        <source>Brown edges on young leaves: calcium does not reach them, even where there is enough.</source>
        <translation type="unfinished">Bordes pardos en hojas jóvenes: no les llega calcio, aunque haya bastante.</translation>
    </message>
    <message>
        <source>Building, roof load, wiring, waste water, water rights, food sale, zoning, animal welfare and slaughter follow local codes: ask first. Water weighs a tonne per cubic metre: 3 m² at 25 cm is 0.75 t before rafts and crops.</source>
        <translation type="unfinished">Obra, carga del techo, cableado, aguas residuales, derechos de agua, venta de alimentos, zonificación, bienestar animal y sacrificio siguen los códigos locales: pregunte primero. El agua pesa una tonelada por metro cúbico: 3 m² a 25 cm son 0,75 t antes de balsas y cultivos.</translation>
    </message>
    <message>
        <source>By mouse and by keys</source>
        <translation type="unfinished">Con ratón y con teclas</translation>
    </message>
    <message>
        <source>By reason: {parts}</source>
        <translation type="unfinished">Por motivo: {parts}</translation>
    </message>
    <message>
        <source>By the book</source>
        <translation type="unfinished">Según el catálogo</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation type="unfinished">Quién</translation>
    </message>
    <message>
        <source>C (letter of the stage clearing)</source>
        <translation type="unfinished">D</translation>
    </message>
    <message>
        <source>C&amp;orrect the chosen…</source>
        <translation type="unfinished">Corr&amp;egir lo elegido…</translation>
    </message>
    <message>
        <source>C&amp;orrect {code}</source>
        <translation type="unfinished">Corr&amp;egir {code}</translation>
    </message>
    <message>
        <source>Ca base</source>
        <translation type="unfinished">Base de Ca</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation type="unfinished">Calcio</translation>
    </message>
    <message>
        <source>Calcium [mg/L]</source>
        <translation type="unfinished">Calcio [mg/L]</translation>
    </message>
    <message>
        <source>Calcium in the fish</source>
        <translation type="unfinished">Calcio en el pez</translation>
    </message>
    <message>
        <source>Calcium in the make-up water</source>
        <translation type="unfinished">Calcio en el agua de reposición</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation type="unfinished">Calendario (*.ics)</translation>
    </message>
    <message>
        <source>Calendar for a phone</source>
        <translation type="unfinished">Calendario para un teléfono</translation>
    </message>
    <message>
        <source>Calibrate every</source>
        <translation type="unfinished">Calibrar cada</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation type="unfinished">Calibrado</translation>
    </message>
    <message>
        <source>Calibration page, to set the printer right</source>
        <translation type="unfinished">Página de calibración, para ajustar la impresora</translation>
    </message>
    <message>
        <source>Can this loop carry another bed or layer? Nothing is guessed: what was not entered makes a verdict unknown.</source>
        <translation type="unfinished">¿Puede este circuito con otra cama o nivel? Nada se adivina: lo que no se anotó deja la respuesta en “no se sabe”.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished">Cancelar</translation>
    </message>
    <message>
        <source>Carried</source>
        <translation type="unfinished">Sostenida</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation type="unfinished">Se arrastra</translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished">Caso</translation>
    </message>
    <message>
        <source>Cases worked out</source>
        <translation type="unfinished">Casos calculados</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Catálogo</translation>
    </message>
    <message>
        <source>Catch</source>
        <translation type="unfinished">Pescar</translation>
    </message>
    <message>
        <source>Catch up: {sheet}, {count} entries</source>
        <translation type="unfinished">Ponerse al día: {sheet}, {count} anotaciones</translation>
    </message>
    <message>
        <source>Caustic bases</source>
        <translation type="unfinished">Bases cáusticas</translation>
    </message>
    <message>
        <source>Chance that targets are met</source>
        <translation type="unfinished">Probabilidad de cumplir metas</translation>
    </message>
    <message>
        <source>Change {code}</source>
        <translation type="unfinished">Cambiar {code}</translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation type="unfinished">Cambiar {name}</translation>
    </message>
    <message>
        <source>Changed by others: {what}</source>
        <translation type="unfinished">Cambiado por otros: {what}</translation>
    </message>
    <message>
        <source>Changed by two</source>
        <translation type="unfinished">Cambiado por dos</translation>
    </message>
    <message>
        <source>Changes whenever anything in the farm changes; printed on every sheet.</source>
        <translation type="unfinished">Cambia cuando cambia algo de la granja; se imprime en cada hoja.</translation>
    </message>
    <message>
        <source>Chelate</source>
        <translation type="unfinished">Quelato</translation>
    </message>
    <message>
        <source>Chemical formula</source>
        <translation type="unfinished">Fórmula química</translation>
    </message>
    <message>
        <source>Choose a batch first, or several with Ctrl and a click.</source>
        <translation type="unfinished">Elija primero un lote, o varios con Ctrl y un clic.</translation>
    </message>
    <message>
        <source>Choose a case to see its inputs, figures and source.</source>
        <translation type="unfinished">Elija un caso para ver sus datos, cifras y fuente.</translation>
    </message>
    <message>
        <source>Choose a flagged week to see what would repair it.</source>
        <translation type="unfinished">Elija una semana marcada para ver qué la arreglaría.</translation>
    </message>
    <message>
        <source>Choose a group, then a week; Enter on a week asks why. “Add an event” takes weighed samples, harvests and deaths. Weigh a level scoop again with every new bag.</source>
        <translation type="unfinished">Elija un grupo y luego una semana; Intro en una semana pregunta por qué. “Añadir un suceso” recoge muestras pesadas, cosechas y muertes. Vuelva a pesar una cuchara rasa con cada saco nuevo.</translation>
    </message>
    <message>
        <source>Choose a planned harvest: it is compared all at once and in parts.</source>
        <translation type="unfinished">Elija una cosecha planeada: se compara de una vez y por partes.</translation>
    </message>
    <message>
        <source>Choose a row with the mouse or the arrow keys. Ctrl+Return alters it, Ctrl+L locks it, Ctrl+B sows a new one, Ctrl+I asks why the number in hand is what it is.</source>
        <translation type="unfinished">Elija una fila con el ratón o las flechas. Ctrl+Intro la modifica, Ctrl+L la bloquea, Ctrl+B siembra una nueva, Ctrl+I pregunta por qué el número elegido es así.</translation>
    </message>
    <message>
        <source>Choose a row with the mouse or the arrow keys; what is chosen is explained beside it. “Plan this dose” puts a dose that is asked for into the plan; Undo takes it out.</source>
        <translation type="unfinished">Elija una fila con el ratón o las flechas; lo elegido se explica al lado. «Planificar esta dosis» pone en el plan una dosis pedida; Deshacer la quita.</translation>
    </message>
    <message>
        <source>Choose a shelf, an entry and a figure, then type your value. Enter shows which batches move and keeps nothing; “Keep my value” keeps it, asking once more where batches move. “New entry…” makes a crop, fish, feed or supplement of your own.</source>
        <translation type="unfinished">Elija un estante, una entrada y una cifra, y escriba su valor. Intro muestra qué lotes se mueven y no guarda nada; «Guardar mi valor» lo guarda, preguntando otra vez si se mueven lotes. «Nueva entrada…» crea un cultivo, pez, alimento o suplemento propio.</translation>
    </message>
    <message>
        <source>Choose a sowing to see how its seeds are counted.</source>
        <translation type="unfinished">Elija una siembra para ver cómo se cuentan sus semillas.</translation>
    </message>
    <message>
        <source>Choose above which product was given.</source>
        <translation type="unfinished">Elija arriba qué producto se dio.</translation>
    </message>
    <message>
        <source>Choose an entry of the log first.</source>
        <translation type="unfinished">Elija primero un apunte del registro.</translation>
    </message>
    <message>
        <source>Choose from a month</source>
        <translation type="unfinished">Elegir de un mes</translation>
    </message>
    <message>
        <source>Choose one batch to split.</source>
        <translation type="unfinished">Elija un lote para dividir.</translation>
    </message>
    <message>
        <source>Choose the loop and the element above, and a week in the chart or, after “Table”, in the rows. Beside it stands why, and what would help.</source>
        <translation type="unfinished">Elija arriba el circuito y el elemento, y una semana en el gráfico o, tras “Tabla”, en las filas. Al lado está por qué, y qué ayudaría.</translation>
    </message>
    <message>
        <source>Choose what is to be taken up first.</source>
        <translation type="unfinished">Elija primero qué tomar.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Despejar</translation>
    </message>
    <message>
        <source>Clear: {code}</source>
        <translation type="unfinished">Despejar: {code}</translation>
    </message>
    <message>
        <source>Cleared to eat from</source>
        <translation type="unfinished">Apto para comer desde</translation>
    </message>
    <message>
        <source>Clearing</source>
        <translation type="unfinished">Despeje</translation>
    </message>
    <message>
        <source>Click a section, or go up and down with the arrow keys. Nothing changes before you adopt or apply it; Ctrl+Z takes it back.</source>
        <translation type="unfinished">Haga clic en una sección, o suba y baje con las flechas. Nada cambia antes de que lo adopte o aplique; Ctrl+Z lo deshace.</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation type="unfinished">Clima</translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished">Cerrar</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation type="unfinished">Cerrar el mensaje</translation>
    </message>
    <message>
        <source>Close the message (Esc)</source>
        <translation type="unfinished">Cerrar el mensaje (Esc)</translation>
    </message>
    <message>
        <source>Close this strip</source>
        <translation type="unfinished">Cerrar esta franja</translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished">Código</translation>
    </message>
    <message>
        <source>Code of this language</source>
        <translation type="unfinished">es</translation>
    </message>
    <message>
        <source>Coefficient of variation of the feed</source>
        <translation type="unfinished">Coeficiente de variación del alimento</translation>
    </message>
    <message>
        <source>Cold clean water with much oxygen; not with warm crops.</source>
        <translation type="unfinished">Agua fría y limpia con mucho oxígeno; no con cultivos de calor.</translation>
    </message>
    <message>
        <source>Cold store</source>
        <translation type="unfinished">Cámara fría</translation>
    </message>
    <message>
        <source>Colour additives vary; read the label.</source>
        <translation type="unfinished">Los aditivos de color varían; lea la etiqueta.</translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished">Columna</translation>
    </message>
    <message>
        <source>Comes up</source>
        <translation type="unfinished">Germina</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation type="unfinished">Comparar</translation>
    </message>
    <message>
        <source>Compare taking it all at once and in parts</source>
        <translation type="unfinished">Comparar cosechar todo de una vez y por partes</translation>
    </message>
    <message>
        <source>Compare ways of stocking</source>
        <translation type="unfinished">Comparar formas de poner peces</translation>
    </message>
    <message>
        <source>Compared are 1, 2, 4 and 6 groups, harvested whole or in parts.</source>
        <translation type="unfinished">Se comparan 1, 2, 4 y 6 grupos, cosechados enteros o por partes.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished">Comparación</translation>
    </message>
    <message>
        <source>Computation</source>
        <translation type="unfinished">Cálculo</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation type="unfinished">Conductividad</translation>
    </message>
    <message>
        <source>Conductivity (EC)</source>
        <translation type="unfinished">Conductividad (EC)</translation>
    </message>
    <message>
        <source>Conductivity [mS/cm]</source>
        <translation type="unfinished">Conductividad [mS/cm]</translation>
    </message>
    <message>
        <source>Copied, {n} letters: {words}</source>
        <translation type="unfinished">Copiado, {n} letras: {words}</translation>
    </message>
    <message>
        <source>Copied: {codes}. Paste sows them again, later.</source>
        <translation type="unfinished">Copiado: {codes}. Pegar los siembra otra vez, después.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished">Copiar</translation>
    </message>
    <message>
        <source>Copy as CSV</source>
        <translation type="unfinished">Copiar como CSV</translation>
    </message>
    <message>
        <source>Copy the report</source>
        <translation type="unfinished">Copiar el informe</translation>
    </message>
    <message>
        <source>Copy the week's &amp;message</source>
        <translation type="unfinished">Copiar el &amp;mensaje de la semana</translation>
    </message>
    <message>
        <source>Correct reading of {quantity}, {on}</source>
        <translation type="unfinished">Corregir lectura de {quantity}, {on}</translation>
    </message>
    <message>
        <source>Correct {code}: {what}</source>
        <translation type="unfinished">Corregir {code}: {what}</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation type="unfinished">Costo</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation type="unfinished">Contado</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation type="unfinished">Se cuenta en</translation>
    </message>
    <message>
        <source>Counting back from {count} wishes, and placing the sowings…</source>
        <translation type="unfinished">Contando hacia atrás desde {count} pedidos y dando lugar a las siembras…</translation>
    </message>
    <message>
        <source>Counting what the plan uses…</source>
        <translation type="unfinished">Contando lo que usa el plan…</translation>
    </message>
    <message>
        <source>Cover or fence tanks: small children drown in little water. Keep floors rough and dry, lift with two, do not climb into closed tanks alone, drink and rest in heat.</source>
        <translation type="unfinished">Tape o cerque los tanques: los niños pequeños se ahogan en poca agua. Mantenga los suelos rugosos y secos, levante entre dos, no entre solo en tanques cerrados, beba y descanse con el calor.</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation type="unfinished">Cultivo</translation>
    </message>
    <message>
        <source>Crop whose harvest is shown</source>
        <translation type="unfinished">Cultivo cuya cosecha se muestra</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation type="unfinished">Cultivos</translation>
    </message>
    <message>
        <source>Ctrl+I on a figure tells its publication, and what it was before a value of your own.</source>
        <translation type="unfinished">Ctrl+I en una cifra dice su publicación y cuánto valía antes de su valor propio.</translation>
    </message>
    <message>
        <source>Ctrl+I on an entry tells who noted it, when, and by which act it was kept.</source>
        <translation type="unfinished">Ctrl+I en una anotación dice quién la hizo, cuándo y con qué acto se guardó.</translation>
    </message>
    <message>
        <source>Curve of the pump</source>
        <translation type="unfinished">Curva de la bomba</translation>
    </message>
    <message>
        <source>Cut above the second pair of leaves; three cuts a planting.</source>
        <translation type="unfinished">Se corta sobre el segundo par de hojas; tres cortes por plantación.</translation>
    </message>
    <message>
        <source>Daily feed sheet</source>
        <translation type="unfinished">Hoja diaria de alimento</translation>
    </message>
    <message>
        <source>Daily light (DLI)</source>
        <translation type="unfinished">Luz diaria (DLI)</translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation type="unfinished">&amp;Oscuro</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Fecha</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished">Fechas</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Día</translation>
    </message>
    <message>
        <source>Day of sowing</source>
        <translation type="unfinished">Día de siembra</translation>
    </message>
    <message>
        <source>Day shown</source>
        <translation type="unfinished">Día mostrado</translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished">Días</translation>
    </message>
    <message>
        <source>Days after a medicine before fish or crops may be eaten.</source>
        <translation type="unfinished">Días tras un medicamento antes de comer peces o cultivos.</translation>
    </message>
    <message>
        <source>Days are then the same all year. Months of your own can be entered later, under Set-up.</source>
        <translation type="unfinished">Los días son entonces iguales todo el año. Sus propios meses se pueden dar después, en Instalación.</translation>
    </message>
    <message>
        <source>Days at the middle spacing</source>
        <translation type="unfinished">Días a distancia media</translation>
    </message>
    <message>
        <source>Days come from the catalogue, your own values and the season. Ctrl+I shows why a figure is as it is.</source>
        <translation type="unfinished">Los días salen del catálogo, de sus propios valores y de la estación. Ctrl+I muestra por qué una cifra es como es.</translation>
    </message>
    <message>
        <source>Days for clearing</source>
        <translation type="unfinished">Días de despeje</translation>
    </message>
    <message>
        <source>Days for clearing and cleaning</source>
        <translation type="unfinished">Días para despejar y limpiar</translation>
    </message>
    <message>
        <source>Days for taking out roots and cleaning; the place is held until they are over.</source>
        <translation type="unfinished">Días para sacar raíces y limpiar; el lugar sigue ocupado hasta que pasan.</translation>
    </message>
    <message>
        <source>Days free</source>
        <translation type="unfinished">Días libres</translation>
    </message>
    <message>
        <source>Days from one picking to the next</source>
        <translation type="unfinished">Días de una recogida a la siguiente</translation>
    </message>
    <message>
        <source>Days in the bed until the first pick</source>
        <translation type="unfinished">Días en la cama hasta la primera cosecha</translation>
    </message>
    <message>
        <source>Days in the nursery</source>
        <translation type="unfinished">Días en el vivero</translation>
    </message>
    <message>
        <source>Days late</source>
        <translation type="unfinished">Días de retraso</translation>
    </message>
    <message>
        <source>Days later</source>
        <translation type="unfinished">Días después</translation>
    </message>
    <message>
        <source>Days of germination</source>
        <translation type="unfinished">Días de germinación</translation>
    </message>
    <message>
        <source>Days of picking</source>
        <translation type="unfinished">Días de cosecha</translation>
    </message>
    <message>
        <source>Days off feed</source>
        <translation type="unfinished">Días sin alimento</translation>
    </message>
    <message>
        <source>Days off feed before harvest</source>
        <translation type="unfinished">Días sin alimento antes de la cosecha</translation>
    </message>
    <message>
        <source>Days off feed in clean water before fish are eaten.</source>
        <translation type="unfinished">Días sin alimento en agua limpia antes de comer los peces.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation type="unfinished">Muertos</translation>
    </message>
    <message>
        <source>Deadly cold</source>
        <translation type="unfinished">Frío mortal</translation>
    </message>
    <message>
        <source>Deadly heat</source>
        <translation type="unfinished">Calor mortal</translation>
    </message>
    <message>
        <source>Deaths</source>
        <translation type="unfinished">Muertes</translation>
    </message>
    <message>
        <source>Degassing tank</source>
        <translation type="unfinished">Tanque de desgasificación</translation>
    </message>
    <message>
        <source>DejaVu Sans</source>
        <translation type="unfinished">DejaVu Sans</translation>
    </message>
    <message>
        <source>DejaVuSans.ttf</source>
        <translation type="unfinished">DejaVuSans.ttf</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation type="unfinished">Demanda</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished">Profundidad</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished">Diferencia</translation>
    </message>
    <message>
        <source>Difference [d]</source>
        <translation type="unfinished">Diferencia [d]</translation>
    </message>
    <message>
        <source>Dissolved oxygen</source>
        <translation type="unfinished">Oxígeno disuelto</translation>
    </message>
    <message>
        <source>Dissolved oxygen [mg/L]</source>
        <translation type="unfinished">Oxígeno disuelto [mg/L]</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation type="unfinished">Sólidos disueltos</translation>
    </message>
    <message>
        <source>Dissolved solids by meter [mg/L]</source>
        <translation type="unfinished">Sólidos disueltos por medidor [mg/L]</translation>
    </message>
    <message>
        <source>Dissolves only in acid water: stops by itself near neutral.</source>
        <translation type="unfinished">Solo se disuelve en agua ácida: se detiene sola cerca del neutro.</translation>
    </message>
    <message>
        <source>Dissolves slowly: 1.6 g per kg water.</source>
        <translation type="unfinished">Se disuelve despacio: 1,6 g por kg de agua.</translation>
    </message>
    <message>
        <source>Do not sow {batches}</source>
        <translation type="unfinished">No sembrar {batches}</translation>
    </message>
    <message>
        <source>Do this; one undo takes it back</source>
        <translation type="unfinished">Hacer esto; un deshacer lo quita</translation>
    </message>
    <message>
        <source>Document</source>
        <translation type="unfinished">Documento</translation>
    </message>
    <message>
        <source>Does {count} acts again.</source>
        <translation type="unfinished">Rehace {count} acciones.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Hecho</translation>
    </message>
    <message>
        <source>Done again: {title}</source>
        <translation type="unfinished">Rehecho: {title}</translation>
    </message>
    <message>
        <source>Done: {title}</source>
        <translation type="unfinished">Hecho: {title}</translation>
    </message>
    <message>
        <source>Done: {title}. Undo takes it back.</source>
        <translation type="unfinished">Hecho: {title}. Deshacer lo quita.</translation>
    </message>
    <message>
        <source>Done: {words}. Undo takes it back.</source>
        <translation type="unfinished">Hecho: {words}. Deshacer lo quita.</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation type="unfinished">Dosis</translation>
    </message>
    <message>
        <source>Doses</source>
        <translation type="unfinished">Dosis</translation>
    </message>
    <message>
        <source>Drag a bar to move the batch. With keys: arrows go from bar to bar, Alt with left or right moves the batch a day, with Shift, or Alt with Page Up or Page Down, a week; Alt with up or down moves it to another bed. Enter opens it.</source>
        <translation type="unfinished">Arrastre una barra para mover el lote. Con teclas: las flechas van de barra en barra, Alt con izquierda o derecha mueve el lote un día, con Mayús, o Alt con RePág o AvPág, una semana; Alt con arriba o abajo lo lleva a otra cama. Intro lo abre.</translation>
    </message>
    <message>
        <source>Drag the right edge of a crop that is picked again and again, or press Alt with plus or minus, to pick it longer.</source>
        <translation type="unfinished">Arrastre el borde derecho de un cultivo que se cosecha una y otra vez, o pulse Alt con más o menos, para cosecharlo más tiempo.</translation>
    </message>
    <message>
        <source>Draw larger</source>
        <translation type="unfinished">Dibujar más grande</translation>
    </message>
    <message>
        <source>Draw smaller</source>
        <translation type="unfinished">Dibujar más chico</translation>
    </message>
    <message>
        <source>Draw so that holes can be read and all fits</source>
        <translation type="unfinished">Dibujar para que se lean los hoyos y quepa todo</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished">Descartar</translation>
    </message>
    <message>
        <source>Dry matter of what is picked</source>
        <translation type="unfinished">Materia seca de lo recogido</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Previsto</translation>
    </message>
    <message>
        <source>Due in the week</source>
        <translation type="unfinished">Para la semana</translation>
    </message>
    <message>
        <source>Due this week</source>
        <translation type="unfinished">Para esta semana</translation>
    </message>
    <message>
        <source>EC</source>
        <translation type="unfinished">EC</translation>
    </message>
    <message>
        <source>EC meter</source>
        <translation type="unfinished">Medidor de CE</translation>
    </message>
    <message>
        <source>Each [g]</source>
        <translation type="unfinished">Cada uno [g]</translation>
    </message>
    <message>
        <source>Each dose</source>
        <translation type="unfinished">Cada dosis</translation>
    </message>
    <message>
        <source>Each fish group with its growth, its feed by week and meal, how full its tank is, and what happens to it.</source>
        <translation type="unfinished">Cada grupo de peces con su crecimiento, su alimento por semana y comida, cuán lleno está su tanque y qué le ocurre.</translation>
    </message>
    <message>
        <source>Each proposal is tried on a forecast of the changed farm, with the same figures as every other page.</source>
        <translation type="unfinished">Cada propuesta se prueba en un pronóstico de la granja cambiada, con las mismas cifras que las demás páginas.</translation>
    </message>
    <message>
        <source>Each repair was tried on a forecast of the changed farm before it is offered. The cheapest stands first: plantings, then feed, liquor of solids, supplements, fish.</source>
        <translation type="unfinished">Cada arreglo se probó en un pronóstico de la granja cambiada antes de ofrecerlo. El más barato va primero: siembras, luego alimento, líquido de sólidos, suplementos, peces.</translation>
    </message>
    <message>
        <source>Each sowing is a row here, from the seed to the cleared place.</source>
        <translation type="unfinished">Cada siembra es aquí una fila, de la semilla a la plaza despejada.</translation>
    </message>
    <message>
        <source>Each sowing is counted back from the day of harvest through the season, so sowings lie closer together when plants grow slowly.</source>
        <translation type="unfinished">Cada siembra se cuenta hacia atrás desde el día de cosecha a través de la estación, así que las siembras se acercan cuando las plantas crecen despacio.</translation>
    </message>
    <message>
        <source>Each week</source>
        <translation type="unfinished">Cada semana</translation>
    </message>
    <message>
        <source>Ed&amp;ges of the labels</source>
        <translation type="unfinished">Bor&amp;des de las etiquetas</translation>
    </message>
    <message>
        <source>Edge to the first label, le&amp;ft</source>
        <translation type="unfinished">Del borde a la primera etiqueta, i&amp;zquierda</translation>
    </message>
    <message>
        <source>Edge to the first label, t&amp;op</source>
        <translation type="unfinished">Del borde a la primera etiqueta, arri&amp;ba</translation>
    </message>
    <message>
        <source>Eight letters that change whenever anything in the plan changes; printed on every sheet.</source>
        <translation type="unfinished">Ocho letras que cambian cuando cambia algo del plan; se imprimen en cada hoja.</translation>
    </message>
    <message>
        <source>Electricity near water</source>
        <translation type="unfinished">Electricidad cerca del agua</translation>
    </message>
    <message>
        <source>Element</source>
        <translation type="unfinished">Elemento</translation>
    </message>
    <message>
        <source>Element whose balance is shown</source>
        <translation type="unfinished">Elemento cuyo balance se muestra</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <translation type="unfinished">Tarjeta de emergencia</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation type="unfinished">Vaciar la lista</translation>
    </message>
    <message>
        <source>Empty the list of recent farms? The farms themselves stay.</source>
        <translation type="unfinished">¿Vaciar la lista de granjas recientes? Las granjas quedan.</translation>
    </message>
    <message>
        <source>Empty this list…</source>
        <translation type="unfinished">Vaciar esta lista…</translation>
    </message>
    <message>
        <source>English</source>
        <translation type="unfinished">English</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation type="unfinished">Entradas</translation>
    </message>
    <message>
        <source>Entries as text (*.toml)</source>
        <translation type="unfinished">Entradas como texto (*.toml)</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation type="unfinished">Entrada</translation>
    </message>
    <message>
        <source>Español</source>
        <translation type="unfinished">Español</translation>
    </message>
    <message>
        <source>Every act is saved when it is done, and can be taken back after closing, too.</source>
        <translation type="unfinished">Cada acción se guarda al hacerla, y se puede deshacer también después de cerrar.</translation>
    </message>
    <message>
        <source>Every act, and a way back to it</source>
        <translation type="unfinished">Cada acción, y cómo volver a ella</translation>
    </message>
    <message>
        <source>Every batch as a bar from sowing to clearing, on one ruler of weeks, with the fish and the balance below.</source>
        <translation type="unfinished">Cada lote como una barra de la siembra a la limpieza, en una regla de semanas, con los peces y el balance debajo.</translation>
    </message>
    <message>
        <source>Every batch in a table</source>
        <translation type="unfinished">Todos los lotes en una tabla</translation>
    </message>
    <message>
        <source>Every batch in one row: crop, place, and the days it is sown, moved, picked and cleared.</source>
        <translation type="unfinished">Cada lote en una fila: cultivo, lugar y los días en que se siembra, traslada, recoge y limpia.</translation>
    </message>
    <message>
        <source>Every batch may go to its bed on the day it is meant to.</source>
        <translation type="unfinished">Cada lote puede ir a su cama el día previsto.</translation>
    </message>
    <message>
        <source>Every batch whose dates the last act moved</source>
        <translation type="unfinished">Cada lote cuyas fechas movió la última acción</translation>
    </message>
    <message>
        <source>Every circuit at the beds and tanks needs a residual-current device; press its test button monthly. Let each cord hang in a drip loop, keep sockets above splash height and no cable over open water. Have wiring done by a qualified electrician to the local code. Switch off before hands go into the water.</source>
        <translation type="unfinished">Todo circuito junto a camas y tanques necesita un interruptor diferencial; pulse su botón de prueba cada mes. Deje que cada cable cuelgue en un bucle de goteo, ponga los enchufes por encima de las salpicaduras y ningún cable sobre agua abierta. Encargue el cableado a un electricista cualificado según el código local. Desconecte antes de meter las manos en el agua.</translation>
    </message>
    <message>
        <source>Every figure here is an aid to planning. It is no medical, legal or engineering advice and no promise of yield. Test the water and look at the fish and plants.</source>
        <translation type="unfinished">Toda cifra aquí es una ayuda para planificar. No es consejo médico, legal ni de ingeniería, ni promesa de rendimiento. Analice el agua y mire los peces y las plantas.</translation>
    </message>
    <message>
        <source>Every figure the program works with: value, spread, source and what it holds for. Your own values stand out in colour.</source>
        <translation type="unfinished">Toda cifra con que trabaja el programa: valor, margen, fuente y para qué vale. Sus propios valores destacan en color.</translation>
    </message>
    <message>
        <source>Every figure with its source, and your own over it</source>
        <translation type="unfinished">Cada cifra con su fuente, y la suya encima</translation>
    </message>
    <message>
        <source>Every hole of every bed is drawn here on any day, with what stands in it and what comes next.</source>
        <translation type="unfinished">Aquí se dibuja cada hoyo de cada cama en cualquier día, con lo que hay y lo que sigue.</translation>
    </message>
    <message>
        <source>Every hole of every bed on any day</source>
        <translation type="unfinished">Cada hoyo de cada cama en cualquier día</translation>
    </message>
    <message>
        <source>Every hole of every bed on the day shown, and the stage of the plant in it. “Table” shows the same as rows.</source>
        <translation type="unfinished">Cada hueco de cada cama en el día mostrado, y la etapa de la planta que hay en él. “Tabla” muestra lo mismo en filas.</translation>
    </message>
    <message>
        <source>Every so many weeks</source>
        <translation type="unfinished">Cada cuántas semanas</translation>
    </message>
    <message>
        <source>Everything in the month of its use: seed by lot with its age, plugs for what is raised in a nursery, net pots for what goes to rafts, feed by pellet size, base, iron and salts of the doses.</source>
        <translation type="unfinished">Todo en el mes de su uso: semilla por lote con su edad, tacos para lo que se cría en semillero, macetas de red para lo que va a balsas, alimento por tamaño de gránulo, base, hierro y sales de las dosis.</translation>
    </message>
    <message>
        <source>Everything since the moment you choose is put aside, not lost: the farm as it is now becomes a backup first, and stays in this list.</source>
        <translation type="unfinished">Todo lo hecho desde el momento que elija se aparta, no se pierde: la granja de ahora se vuelve primero un respaldo y queda en esta lista.</translation>
    </message>
    <message>
        <source>Everything that is wanted has its sowing and its room.</source>
        <translation type="unfinished">Todo lo que se quiere tiene su siembra y su lugar.</translation>
    </message>
    <message>
        <source>Everything the forecast warns of from today on and a change of the plan may mend: plants short of food, feed that falls, a tank too full, batches without places or too slow for the season.</source>
        <translation type="unfinished">Todo lo que el pronóstico avisa desde hoy y un cambio del plan puede arreglar: plantas faltas de comida, alimento que cae, un tanque demasiado lleno, lotes sin lugar o demasiado lentos para la estación.</translation>
    </message>
    <message>
        <source>Export as text</source>
        <translation type="unfinished">Exportar como texto</translation>
    </message>
    <message>
        <source>Extra area that the feed carries, by month</source>
        <translation type="unfinished">Área extra que el alimento sostiene, por mes</translation>
    </message>
    <message>
        <source>F&amp;irst label that is still there</source>
        <translation type="unfinished">Pr&amp;imera etiqueta que queda</translation>
    </message>
    <message>
        <source>FAO band</source>
        <translation type="unfinished">Franja FAO</translation>
    </message>
    <message>
        <source>FAO {a} to {b}, UVI {c} to {d}</source>
        <translation type="unfinished">FAO {a} a {b}, UVI {c} a {d}</translation>
    </message>
    <message>
        <source>FAO, by kind of crop</source>
        <translation type="unfinished">FAO, por tipo de cultivo</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation type="unfinished">Factor</translation>
    </message>
    <message>
        <source>Fall of the feed</source>
        <translation type="unfinished">Baja del alimento</translation>
    </message>
    <message>
        <source>Falls of the feed at each harvest</source>
        <translation type="unfinished">Bajas del alimento en cada cosecha</translation>
    </message>
    <message>
        <source>Falls, lifting, closed spaces and heat</source>
        <translation type="unfinished">Caídas, cargas, espacios cerrados y calor</translation>
    </message>
    <message>
        <source>Farm</source>
        <translation type="unfinished">Granja</translation>
    </message>
    <message>
        <source>Farms (*.{suffix})</source>
        <translation type="unfinished">Granjas (*.{suffix})</translation>
    </message>
    <message>
        <source>Farms as text (*.{suffix})</source>
        <translation type="unfinished">Granjas como texto (*.{suffix})</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation type="unfinished">Alimento</translation>
    </message>
    <message>
        <source>Feed [g a day]</source>
        <translation type="unfinished">Alimento [g al día]</translation>
    </message>
    <message>
        <source>Feed [g/d]</source>
        <translation type="unfinished">Alimento [g/d]</translation>
    </message>
    <message>
        <source>Feed [kg]</source>
        <translation type="unfinished">Alimento [kg]</translation>
    </message>
    <message>
        <source>Feed and pellet</source>
        <translation type="unfinished">Alimento y pellet</translation>
    </message>
    <message>
        <source>Feed around the harvest</source>
        <translation type="unfinished">Alimento alrededor de la cosecha</translation>
    </message>
    <message>
        <source>Feed by body weight</source>
        <translation type="unfinished">Alimento por peso del pez</translation>
    </message>
    <message>
        <source>Feed by week</source>
        <translation type="unfinished">Alimento por semana</translation>
    </message>
    <message>
        <source>Feed conversion</source>
        <translation type="unfinished">Conversión alimenticia</translation>
    </message>
    <message>
        <source>Feed conversion (FCR)</source>
        <translation type="unfinished">Conversión alimenticia (FCR)</translation>
    </message>
    <message>
        <source>Feed each day</source>
        <translation type="unfinished">Alimento cada día</translation>
    </message>
    <message>
        <source>Feed falls by</source>
        <translation type="unfinished">El alimento baja</translation>
    </message>
    <message>
        <source>Feed for a group of fish on one day.</source>
        <translation type="unfinished">Alimento de un grupo de peces en un día.</translation>
    </message>
    <message>
        <source>Feed for the planted area</source>
        <translation type="unfinished">Alimento para el área plantada</translation>
    </message>
    <message>
        <source>Feed foreseen, as it is weighed</source>
        <translation type="unfinished">Alimento previsto, tal como se pesa</translation>
    </message>
    <message>
        <source>Feed is judged by</source>
        <translation type="unfinished">El alimento se juzga por</translation>
    </message>
    <message>
        <source>Feed really given</source>
        <translation type="unfinished">Alimento dado de verdad</translation>
    </message>
    <message>
        <source>Feed this week</source>
        <translation type="unfinished">Alimento esta semana</translation>
    </message>
    <message>
        <source>Feed within the plan</source>
        <translation type="unfinished">Alimento dentro del plan</translation>
    </message>
    <message>
        <source>Feed {group} what it eats, no more</source>
        <translation type="unfinished">Dar a {group} lo que come, no más</translation>
    </message>
    <message>
        <source>Feed, at most {grams} g a day</source>
        <translation type="unfinished">Alimento, máximo {grams} g al día</translation>
    </message>
    <message>
        <source>Feed-rate ratio</source>
        <translation type="unfinished">Alim. por área</translation>
    </message>
    <message>
        <source>Feed-rate ratio [g/m²/d]</source>
        <translation type="unfinished">Alimento por área [g/m²/d]</translation>
    </message>
    <message>
        <source>Feeding table</source>
        <translation type="unfinished">Tabla de alimentación</translation>
    </message>
    <message>
        <source>Feeds</source>
        <translation type="unfinished">Alimentos</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished">Cifra</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished">Cifras</translation>
    </message>
    <message>
        <source>Figures of the catalogue used</source>
        <translation type="unfinished">Cifras del catálogo usadas</translation>
    </message>
    <message>
        <source>Filipino</source>
        <translation type="unfinished">Filipino</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished">Llenar</translation>
    </message>
    <message>
        <source>Fill every tray with seeds</source>
        <translation type="unfinished">Llenar cada bandeja de semillas</translation>
    </message>
    <message>
        <source>Fill in what you know. A figure left empty is as in the entry it is most like.</source>
        <translation type="unfinished">Rellene lo que sepa. Una cifra vacía es la de la entrada más parecida.</translation>
    </message>
    <message>
        <source>Fill the line and choose “Log it”. A wrong entry is corrected or withdrawn. What was learned counts only after you take it up. “From paper” has the boxes of a printed sheet: type, Enter, type; Ctrl+Enter begins the next line, Ctrl+S keeps all lines in one act.</source>
        <translation type="unfinished">Rellene la línea y elija «Anotar». Una anotación errónea se corrige o se retira. Lo aprendido solo cuenta cuando usted lo acepta. «Del papel» tiene las casillas de una hoja impresa: escriba, Intro, escriba; Ctrl+Intro empieza la línea siguiente, Ctrl+S guarda todas las líneas de una vez.</translation>
    </message>
    <message>
        <source>Filled on</source>
        <translation type="unfinished">Llenado el</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation type="unfinished">Filtro</translation>
    </message>
    <message>
        <source>Filter and oxygen</source>
        <translation type="unfinished">Filtro y oxígeno</translation>
    </message>
    <message>
        <source>Filter surface</source>
        <translation type="unfinished">Superficie del filtro</translation>
    </message>
    <message>
        <source>Find anything by its name</source>
        <translation type="unfinished">Encontrar cualquier cosa por su nombre</translation>
    </message>
    <message>
        <source>First fish on {day}. Leafy crops come first; fruiting ones wait.</source>
        <translation type="unfinished">Primeros peces el {day}. Primero van los cultivos de hoja; los de fruto esperan.</translation>
    </message>
    <message>
        <source>First harvest now</source>
        <translation type="unfinished">Primera cosecha ahora</translation>
    </message>
    <message>
        <source>First pick</source>
        <translation type="unfinished">Primera cosecha</translation>
    </message>
    <message>
        <source>First pick of {code}: {change}, {days}</source>
        <translation type="unfinished">Primera cosecha de {code}: {change}, {days}</translation>
    </message>
    <message>
        <source>First picking, as a share of a full one</source>
        <translation type="unfinished">Primera recogida, como parte de una completa</translation>
    </message>
    <message>
        <source>First to last good day of picking a batch.</source>
        <translation type="unfinished">Del primer al último día bueno para cosechar un lote.</translation>
    </message>
    <message>
        <source>Fish</source>
        <translation type="unfinished">Peces</translation>
    </message>
    <message>
        <source>Fish &amp;event…</source>
        <translation type="unfinished">&amp;Evento de peces…</translation>
    </message>
    <message>
        <source>Fish &amp;groups</source>
        <translation type="unfinished">&amp;Grupos de peces</translation>
    </message>
    <message>
        <source>Fish &amp;tanks</source>
        <translation type="unfinished">&amp;Tanques de peces</translation>
    </message>
    <message>
        <source>Fish added</source>
        <translation type="unfinished">Peces agregados</translation>
    </message>
    <message>
        <source>Fish and feed</source>
        <translation type="unfinished">Peces y alimento</translation>
    </message>
    <message>
        <source>Fish and plants raised on the same water; bacteria turn fish waste into plant food.</source>
        <translation type="unfinished">Peces y plantas criados con la misma agua; las bacterias vuelven los desechos de los peces alimento de las plantas.</translation>
    </message>
    <message>
        <source>Fish as food</source>
        <translation type="unfinished">Pescado como alimento</translation>
    </message>
    <message>
        <source>Fish e&amp;vents</source>
        <translation type="unfinished">&amp;Eventos de peces</translation>
    </message>
    <message>
        <source>Fish event</source>
        <translation type="unfinished">Evento de peces</translation>
    </message>
    <message>
        <source>Fish foreseen on the day shown</source>
        <translation type="unfinished">Peces previstos para el día mostrado</translation>
    </message>
    <message>
        <source>Fish group</source>
        <translation type="unfinished">Grupo de peces</translation>
    </message>
    <message>
        <source>Fish groups</source>
        <translation type="unfinished">Grupos de peces</translation>
    </message>
    <message>
        <source>Fish harvested [kg]</source>
        <translation type="unfinished">Peces cosechados [kg]</translation>
    </message>
    <message>
        <source>Fish in the tank</source>
        <translation type="unfinished">Peces en el tanque</translation>
    </message>
    <message>
        <source>Fish in {tank}</source>
        <translation type="unfinished">Peces en {tank}</translation>
    </message>
    <message>
        <source>Fish in {tank}, at most {most} kg/m³, limit {limit}</source>
        <translation type="unfinished">Peces en {tank}, máximo {most} kg/m³, límite {limit}</translation>
    </message>
    <message>
        <source>Fish medicine</source>
        <translation type="unfinished">Medicinas para peces</translation>
    </message>
    <message>
        <source>Fish sampling sheet</source>
        <translation type="unfinished">Hoja de muestreo de peces</translation>
    </message>
    <message>
        <source>Fish stocked together in one tank.</source>
        <translation type="unfinished">Peces puestos juntos en un tanque.</translation>
    </message>
    <message>
        <source>Fish stocking</source>
        <translation type="unfinished">Peces</translation>
    </message>
    <message>
        <source>Fish tank</source>
        <translation type="unfinished">Tanque de peces</translation>
    </message>
    <message>
        <source>Fish tanks, filters and beds that share one body of water.</source>
        <translation type="unfinished">Tanques de peces, filtros y camas que comparten la misma agua.</translation>
    </message>
    <message>
        <source>Fish to be stocked</source>
        <translation type="unfinished">Peces por poner</translation>
    </message>
    <message>
        <source>Fish welfare</source>
        <translation type="unfinished">Bienestar de los peces</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished">Ver todo</translation>
    </message>
    <message>
        <source>Flagged weeks</source>
        <translation type="unfinished">Semanas marcadas</translation>
    </message>
    <message>
        <source>Flakes are about 85-90 % pure.</source>
        <translation type="unfinished">Las escamas tienen una pureza de 85-90 %.</translation>
    </message>
    <message>
        <source>Flow at the new head</source>
        <translation type="unfinished">Caudal a la altura nueva</translation>
    </message>
    <message>
        <source>Flowers drop above 30-35 °C. Book method is the media bed.</source>
        <translation type="unfinished">Las flores caen sobre 30-35 °C. El método del libro es la cama de medio.</translation>
    </message>
    <message>
        <source>Food-safety pack</source>
        <translation type="unfinished">Carpeta de inocuidad</translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished">Para</translation>
    </message>
    <message>
        <source>For fish from</source>
        <translation type="unfinished">Para peces desde</translation>
    </message>
    <message>
        <source>For fish up to</source>
        <translation type="unfinished">Para peces hasta</translation>
    </message>
    <message>
        <source>For how many days</source>
        <translation type="unfinished">Por cuántos días</translation>
    </message>
    <message>
        <source>Forecasting each way…</source>
        <translation type="unfinished">Pronosticando cada forma…</translation>
    </message>
    <message>
        <source>Forecasting the farm and its scenarios…</source>
        <translation type="unfinished">Pronosticando la granja y sus escenarios…</translation>
    </message>
    <message>
        <source>Foreseen</source>
        <translation type="unfinished">Previsto</translation>
    </message>
    <message>
        <source>Forget this proposal</source>
        <translation type="unfinished">Olvidar esta propuesta</translation>
    </message>
    <message>
        <source>Forget this scenario</source>
        <translation type="unfinished">Olvidar este escenario</translation>
    </message>
    <message>
        <source>Formula only</source>
        <translation type="unfinished">Solo la fórmula</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished">Encontrado</translation>
    </message>
    <message>
        <source>Four verdicts</source>
        <translation type="unfinished">Cuatro juicios</translation>
    </message>
    <message>
        <source>Four verdicts are given: nutrients; flow; filter and oxygen; light, power and structure.</source>
        <translation type="unfinished">Se dan cuatro respuestas: nutrientes; caudal; filtro y oxígeno; luz, potencia y estructura.</translation>
    </message>
    <message>
        <source>Fr&amp;om the week of</source>
        <translation type="unfinished">De&amp;sde la semana del</translation>
    </message>
    <message>
        <source>Free</source>
        <translation type="unfinished">Libre</translation>
    </message>
    <message>
        <source>Free {since}. {then}</source>
        <translation type="unfinished">Libre {since}. {then}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">Viernes</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">Desde</translation>
    </message>
    <message>
        <source>From bought plugs or bare-root plants: the germination figures are for rooting. Day-neutral kinds set little above 30 °C.</source>
        <translation type="unfinished">De tacos comprados o plantas a raíz desnuda: las cifras de germinación son para enraizar. Los tipos de día neutro cuajan poco sobre 30 °C.</translation>
    </message>
    <message>
        <source>From cuttings: the germination figures are for rooting. Roots clog gravel; renew yearly.</source>
        <translation type="unfinished">De esquejes: las cifras de germinación son para enraizar. Las raíces tapan la grava; renueve cada año.</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation type="unfinished">Del papel</translation>
    </message>
    <message>
        <source>From sowing until most seedlings are up.</source>
        <translation type="unfinished">Desde la siembra hasta que salió la mayoría de las plántulas.</translation>
    </message>
    <message>
        <source>From the feed, the crops and the water, with the figures of the catalogue and your own values. “How sure?” works out low and high of each week.</source>
        <translation type="unfinished">Del alimento, los cultivos y el agua, con las cifras del catálogo y sus propios valores. “¿Cuán seguro?” calcula lo bajo y lo alto de cada semana.</translation>
    </message>
    <message>
        <source>From the first harvest of a batch to the last.</source>
        <translation type="unfinished">Desde la primera cosecha de un lote hasta la última.</translation>
    </message>
    <message>
        <source>From the nursery to the last place</source>
        <translation type="unfinished">Del vivero al último lugar</translation>
    </message>
    <message>
        <source>From the seed lot to the places, the harvest and the water, on one page</source>
        <translation type="unfinished">Del lote de semilla a los lugares, la cosecha y el agua, en una página</translation>
    </message>
    <message>
        <source>From this month on</source>
        <translation type="unfinished">Desde este mes</translation>
    </message>
    <message>
        <source>Fullest tank</source>
        <translation type="unfinished">Tanque más lleno</translation>
    </message>
    <message>
        <source>Fullest tank [kg/m³]</source>
        <translation type="unfinished">Tanque más lleno [kg/m³]</translation>
    </message>
    <message>
        <source>Further from the published figure than the tolerance allows</source>
        <translation type="unfinished">Más lejos de la cifra publicada de lo que permite la tolerancia</translation>
    </message>
    <message>
        <source>G (letter of the stage germination)</source>
        <translation type="unfinished">G</translation>
    </message>
    <message>
        <source>Gap between col&amp;umns</source>
        <translation type="unfinished">Espacio entre col&amp;umnas</translation>
    </message>
    <message>
        <source>Gap between rows, &amp;down</source>
        <translation type="unfinished">Espacio entre &amp;filas, hacia abajo</translation>
    </message>
    <message>
        <source>Gap to the best possible</source>
        <translation type="unfinished">Distancia a lo mejor posible</translation>
    </message>
    <message>
        <source>Germinates badly in warmth: 28 % normal seedlings at 25 °C. Bolts in long days.</source>
        <translation type="unfinished">Germina mal con calor: 28 % de plántulas normales a 25 °C. Espiga en días largos.</translation>
    </message>
    <message>
        <source>Germination</source>
        <translation type="unfinished">Germinación</translation>
    </message>
    <message>
        <source>Give a group another feed</source>
        <translation type="unfinished">Dar a un grupo otro alimento</translation>
    </message>
    <message>
        <source>Give length and width, or the number of holes.</source>
        <translation type="unfinished">Dé largo y ancho, o el número de hoyos.</translation>
    </message>
    <message>
        <source>Give {what} every day from {on}</source>
        <translation type="unfinished">Dar {what} cada día desde el {on}</translation>
    </message>
    <message>
        <source>Give {what} every week from {on}</source>
        <translation type="unfinished">Dar {what} cada semana desde el {on}</translation>
    </message>
    <message>
        <source>Given</source>
        <translation type="unfinished">Dado</translation>
    </message>
    <message>
        <source>Given last</source>
        <translation type="unfinished">Última vez</translation>
    </message>
    <message>
        <source>Go back to a &amp;backup…</source>
        <translation type="unfinished">&amp;Volver a un respaldo…</translation>
    </message>
    <message>
        <source>Go back to a backup</source>
        <translation type="unfinished">Volver a un respaldo</translation>
    </message>
    <message>
        <source>Go back to this one</source>
        <translation type="unfinished">Volver a este</translation>
    </message>
    <message>
        <source>Go into it</source>
        <translation type="unfinished">Entrar</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished">Seguir</translation>
    </message>
    <message>
        <source>Go to &amp;today</source>
        <translation type="unfinished">Ir a &amp;hoy</translation>
    </message>
    <message>
        <source>Go to the chosen act</source>
        <translation type="unfinished">Ir a la acción elegida</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation type="unfinished">Destino</translation>
    </message>
    <message>
        <source>Grade often when small: larger ones eat the smaller. Shy; feeds best undisturbed.</source>
        <translation type="unfinished">Clasifique a menudo de pequeño: los grandes se comen a los chicos. Tímido; come mejor sin molestias.</translation>
    </message>
    <message>
        <source>Grade often when small; needs high-protein feed.</source>
        <translation type="unfinished">Clasifique a menudo de pequeño; necesita alimento alto en proteína.</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation type="unfinished">Gramos</translation>
    </message>
    <message>
        <source>Grams at a time</source>
        <translation type="unfinished">Gramos cada vez</translation>
    </message>
    <message>
        <source>Grams of feed a day for each square metre of planted bed.</source>
        <translation type="unfinished">Gramos de alimento al día por cada metro cuadrado de cama plantada.</translation>
    </message>
    <message>
        <source>Grams of feed given for each gram the fish gain.</source>
        <translation type="unfinished">Gramos de alimento dados por cada gramo que ganan los peces.</translation>
    </message>
    <message>
        <source>Gravel bed</source>
        <translation type="unfinished">Cama de grava</translation>
    </message>
    <message>
        <source>Gravel besides</source>
        <translation type="unfinished">Además, grava</translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished">Grupo</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation type="unfinished">Grupos</translation>
    </message>
    <message>
        <source>Groups of this way</source>
        <translation type="unfinished">Grupos de esta forma</translation>
    </message>
    <message>
        <source>Groups, growth, feed by week and meal, density, harvest</source>
        <translation type="unfinished">Grupos, crecimiento, alimento por semana y comida, densidad, cosecha</translation>
    </message>
    <message>
        <source>Grow another crop in its place</source>
        <translation type="unfinished">Cultivar otra cosa en su lugar</translation>
    </message>
    <message>
        <source>Growing area</source>
        <translation type="unfinished">Área de cultivo</translation>
    </message>
    <message>
        <source>Grown in its place</source>
        <translation type="unfinished">Se cultiva en su lugar</translation>
    </message>
    <message>
        <source>Grown there are</source>
        <translation type="unfinished">Se cultivan ahí</translation>
    </message>
    <message>
        <source>Grows in</source>
        <translation type="unfinished">Crece en</translation>
    </message>
    <message>
        <source>Grows in: {beds}</source>
        <translation type="unfinished">Crece en: {beds}</translation>
    </message>
    <message>
        <source>Growth coefficient</source>
        <translation type="unfinished">Coeficiente de crecimiento</translation>
    </message>
    <message>
        <source>Growth coefficient (TGC)</source>
        <translation type="unfinished">Coeficiente de crecimiento (TGC)</translation>
    </message>
    <message>
        <source>Growth comes from the kind of fish and the warmth of the water, and from samples you weigh. Never feed more than the fish eat.</source>
        <translation type="unfinished">El crecimiento sale de la clase de pez y el calor del agua, y de las muestras que pesa. Nunca dé más alimento del que comen los peces.</translation>
    </message>
    <message>
        <source>Growth, feed by week and meal, density and harvest of each group stand here.</source>
        <translation type="unfinished">Aquí están el crecimiento, el alimento por semana y comida, la densidad y la cosecha de cada grupo.</translation>
    </message>
    <message>
        <source>H (letter of fish harvested)</source>
        <translation type="unfinished">C</translation>
    </message>
    <message>
        <source>H&amp;eight of a label</source>
        <translation type="unfinished">A&amp;lto de una etiqueta</translation>
    </message>
    <message>
        <source>Hand-over booklet</source>
        <translation type="unfinished">Cuaderno de entrega</translation>
    </message>
    <message>
        <source>Handle fish solids as manure: below the leaf, not on parts that are eaten, not on a harvest day; tools of their own; wash afterwards. Return liquor only if it was aerated and does not smell. The rules for fish waste are unsettled: ask your produce-safety adviser.</source>
        <translation type="unfinished">Maneje los sólidos de los peces como estiércol: bajo la hoja, no sobre partes que se comen, no en día de cosecha; herramientas propias; lavarse después. Devuelva el líquido solo si se aireó y no huele. Las normas sobre residuos de peces no están asentadas: pregunte a su asesor de inocuidad.</translation>
    </message>
    <message>
        <source>Hands, tools clean</source>
        <translation type="unfinished">Manos y herramientas limpias</translation>
    </message>
    <message>
        <source>Hardly soluble: 0.007 g per kg water.</source>
        <translation type="unfinished">Casi insoluble: 0,007 g por kg de agua.</translation>
    </message>
    <message>
        <source>Hardy in cool water; stirs up solids.</source>
        <translation type="unfinished">Resistente en agua fresca; remueve los sólidos.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation type="unfinished">Cosecha</translation>
    </message>
    <message>
        <source>Harvest foreseen</source>
        <translation type="unfinished">Cosecha prevista</translation>
    </message>
    <message>
        <source>Harvest from</source>
        <translation type="unfinished">Cosechar desde</translation>
    </message>
    <message>
        <source>Harvest in the chosen way</source>
        <translation type="unfinished">Cosechar de la forma elegida</translation>
    </message>
    <message>
        <source>Harvest of crops</source>
        <translation type="unfinished">Cosecha de cultivos</translation>
    </message>
    <message>
        <source>Harvest of fish</source>
        <translation type="unfinished">Cosecha de peces</translation>
    </message>
    <message>
        <source>Harvest of {crop}</source>
        <translation type="unfinished">Cosecha de {crop}</translation>
    </message>
    <message>
        <source>Harvest of {crop} [kg]</source>
        <translation type="unfinished">Cosecha de {crop} [kg]</translation>
    </message>
    <message>
        <source>Harvest on</source>
        <translation type="unfinished">Cosechar el</translation>
    </message>
    <message>
        <source>Harvest over now</source>
        <translation type="unfinished">Fin de cosecha ahora</translation>
    </message>
    <message>
        <source>Harvest record</source>
        <translation type="unfinished">Registro de cosecha</translation>
    </message>
    <message>
        <source>Harvest window</source>
        <translation type="unfinished">Ventana de cosecha</translation>
    </message>
    <message>
        <source>Harvest {fish} of {group} first, the rest on {on}</source>
        <translation type="unfinished">Cosechar primero {fish} de {group}, el resto el {on}</translation>
    </message>
    <message>
        <source>Harvest {fish} of {group} on {on}</source>
        <translation type="unfinished">Cosechar {fish} de {group} el {on}</translation>
    </message>
    <message>
        <source>Harvest {group} {weeks} earlier</source>
        <translation type="unfinished">Cosechar {group} {weeks} antes</translation>
    </message>
    <message>
        <source>Harvest {share}</source>
        <translation type="unfinished">Cosechar {share}</translation>
    </message>
    <message>
        <source>Harvest, deaths, a weighed sample, days off feed</source>
        <translation type="unfinished">Cosecha, muertes, una muestra pesada, días sin alimento</translation>
    </message>
    <message>
        <source>Harvested</source>
        <translation type="unfinished">Cosechado</translation>
    </message>
    <message>
        <source>Head lost in pipes</source>
        <translation type="unfinished">Altura perdida en tubos</translation>
    </message>
    <message>
        <source>Heat-tender: germination fails early in warm nurseries.</source>
        <translation type="unfinished">Sensible al calor: la germinación falla pronto en viveros cálidos.</translation>
    </message>
    <message>
        <source>Heated in winter, or indoors</source>
        <translation type="unfinished">Con calefacción en invierno, o en interior</translation>
    </message>
    <message>
        <source>Height of the lift</source>
        <translation type="unfinished">Altura de bombeo</translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished">Ocupado</translation>
    </message>
    <message>
        <source>Held until</source>
        <translation type="unfinished">Ocupado hasta</translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished">Ayuda</translation>
    </message>
    <message>
        <source>Help: {title}</source>
        <translation type="unfinished">Ayuda: {title}</translation>
    </message>
    <message>
        <source>Highest pH</source>
        <translation type="unfinished">pH máximo</translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished">Historial</translation>
    </message>
    <message>
        <source>Hold crops of the start-up</source>
        <translation type="unfinished">Retener cultivos del arranque</translation>
    </message>
    <message>
        <source>Hold {batches} in the nursery {weeks} longer</source>
        <translation type="unfinished">Dejar {batches} en el vivero {weeks} más</translation>
    </message>
    <message>
        <source>Holds for</source>
        <translation type="unfinished">Vale para</translation>
    </message>
    <message>
        <source>Holds iron up to about pH 7-7.5.</source>
        <translation type="unfinished">Mantiene el hierro hasta un pH de 7-7,5.</translation>
    </message>
    <message>
        <source>Holds iron up to pH 9; colours the water red.</source>
        <translation type="unfinished">Mantiene el hierro hasta pH 9; tiñe el agua de rojo.</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation type="unfinished">Hoyos</translation>
    </message>
    <message>
        <source>Holes in the plants' food</source>
        <translation type="unfinished">Huecos en la comida de las plantas</translation>
    </message>
    <message>
        <source>Holidays</source>
        <translation type="unfinished">Días libres</translation>
    </message>
    <message>
        <source>Hot summer, mild winter</source>
        <translation type="unfinished">Verano caluroso, invierno suave</translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished">Cómo</translation>
    </message>
    <message>
        <source>How far</source>
        <translation type="unfinished">Avance</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation type="unfinished">Avance</translation>
    </message>
    <message>
        <source>How fast a fish grows for the warmth of its water.</source>
        <translation type="unfinished">Qué tan rápido crece un pez según la temperatura de su agua.</translation>
    </message>
    <message>
        <source>How it is harvested</source>
        <translation type="unfinished">Cómo se cosecha</translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished">Cuántos</translation>
    </message>
    <message>
        <source>How many groups, when and how many fish, so that the feed stays within what the beds can use: how deep and how long it falls at each harvest. Fish are never fed above what they eat.</source>
        <translation type="unfinished">Cuántos grupos, cuándo y cuántos peces, para que el alimento quede en lo que las camas usan: cuánto y por cuánto tiempo baja en cada cosecha. Nunca se da más de lo que los peces comen.</translation>
    </message>
    <message>
        <source>How many weeks</source>
        <translation type="unfinished">Cuántas semanas</translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished">Cuánto</translation>
    </message>
    <message>
        <source>How much it proves</source>
        <translation type="unfinished">Cuánto prueba</translation>
    </message>
    <message>
        <source>How often an hour's flow changes the water of a tank.</source>
        <translation type="unfinished">Cuántas veces por hora el caudal cambia el agua de un estanque.</translation>
    </message>
    <message>
        <source>How s&amp;ure is the week</source>
        <translation type="unfinished">Qué tan se&amp;gura es la semana</translation>
    </message>
    <message>
        <source>How sharply growth sets in</source>
        <translation type="unfinished">Con qué brusquedad arranca el crecimiento</translation>
    </message>
    <message>
        <source>How supply stands to demand in a week: short, thin, met or ample.</source>
        <translation type="unfinished">Cómo está el aporte frente a la demanda en una semana: falta, justo, bien o sobra.</translation>
    </message>
    <message>
        <source>How sure?</source>
        <translation type="unfinished">¿Qué tan seguro?</translation>
    </message>
    <message>
        <source>How the grams come about, and who says so</source>
        <translation type="unfinished">Cómo salen los gramos y quién lo dice</translation>
    </message>
    <message>
        <source>How to read a repair</source>
        <translation type="unfinished">Cómo leer un arreglo</translation>
    </message>
    <message>
        <source>How well the water leads current: a rough measure of all that is dissolved in it.</source>
        <translation type="unfinished">Qué bien conduce el agua la corriente: medida gruesa de todo lo disuelto.</translation>
    </message>
    <message>
        <source>IANA name such as Asia/Manila</source>
        <translation type="unfinished">nombre IANA como Asia/Manila</translation>
    </message>
    <message>
        <source>ISO 8601: weeks begin on Monday, and W01 holds the year's first Thursday.</source>
        <translation type="unfinished">ISO 8601: las semanas empiezan el lunes, y W01 lleva el primer jueves del año.</translation>
    </message>
    <message>
        <source>If done today</source>
        <translation type="unfinished">Si se hace hoy</translation>
    </message>
    <message>
        <source>Illness and wounds</source>
        <translation type="unfinished">Enfermedad y heridas</translation>
    </message>
    <message>
        <source>In a new loop leafy crops come first; fruiting ones wait until the feed carries them.</source>
        <translation type="unfinished">En un circuito nuevo primero van los cultivos de hoja; los de fruto esperan hasta que el alimento los sostenga.</translation>
    </message>
    <message>
        <source>In a rhythm of its own</source>
        <translation type="unfinished">Con su propio ritmo</translation>
    </message>
    <message>
        <source>In band</source>
        <translation type="unfinished">En franja</translation>
    </message>
    <message>
        <source>In place of {batches}, which make way.</source>
        <translation type="unfinished">En lugar de {batches}, que ceden su lugar.</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation type="unfinished">Hay</translation>
    </message>
    <message>
        <source>In the bed</source>
        <translation type="unfinished">En la cama</translation>
    </message>
    <message>
        <source>In the week from</source>
        <translation type="unfinished">En la semana del</translation>
    </message>
    <message>
        <source>In use, with its range</source>
        <translation type="unfinished">En uso, con su rango</translation>
    </message>
    <message>
        <source>In which way it is wanted</source>
        <translation type="unfinished">De qué manera se quiere</translation>
    </message>
    <message>
        <source>Income</source>
        <translation type="unfinished">Ingreso</translation>
    </message>
    <message>
        <source>Independent</source>
        <translation type="unfinished">Independiente</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished">Iniciales</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation type="unfinished">Hierro</translation>
    </message>
    <message>
        <source>Iron [mg/L]</source>
        <translation type="unfinished">Hierro [mg/L]</translation>
    </message>
    <message>
        <source>Iron due</source>
        <translation type="unfinished">Toca hierro</translation>
    </message>
    <message>
        <source>Iron held so that it stays in the water; which chelate suits depends on the pH.</source>
        <translation type="unfinished">Hierro sujeto para que quede en el agua; cuál conviene depende del pH.</translation>
    </message>
    <message>
        <source>Iron in the fish</source>
        <translation type="unfinished">Hierro en el pez</translation>
    </message>
    <message>
        <source>Iron in the make-up water</source>
        <translation type="unfinished">Hierro en el agua de reposición</translation>
    </message>
    <message>
        <source>Is it right?</source>
        <translation type="unfinished">¿Es correcto?</translation>
    </message>
    <message>
        <source>It &amp;never happened</source>
        <translation type="unfinished">&amp;Nunca pasó</translation>
    </message>
    <message>
        <source>It could not be kept; see the message in the window.</source>
        <translation type="unfinished">No se pudo guardar; vea el mensaje en la ventana.</translation>
    </message>
    <message>
        <source>It could not be worked out: {why}</source>
        <translation type="unfinished">No se pudo calcular: {why}</translation>
    </message>
    <message>
        <source>It moved no dates.</source>
        <translation type="unfinished">No movió ninguna fecha.</translation>
    </message>
    <message>
        <source>January–March</source>
        <translation type="unfinished">Enero–marzo</translation>
    </message>
    <message>
        <source>July–September</source>
        <translation type="unfinished">Julio–septiembre</translation>
    </message>
    <message>
        <source>K base</source>
        <translation type="unfinished">Base de K</translation>
    </message>
    <message>
        <source>KH</source>
        <translation type="unfinished">KH</translation>
    </message>
    <message>
        <source>Keep birds, rats, pets and livestock away from beds, and cover the tanks.</source>
        <translation type="unfinished">Mantenga aves, ratas, mascotas y ganado lejos de las camas y cubra los tanques.</translation>
    </message>
    <message>
        <source>Keep my value</source>
        <translation type="unfinished">Guardar mi valor</translation>
    </message>
    <message>
        <source>Keep system water off the parts that are eaten, and off hands, gloves and knives that touch them. Clean hands and blades; hold roots away from leaves; wash produce in drinking water; cool it soon.</source>
        <translation type="unfinished">Mantenga el agua del sistema lejos de las partes que se comen, y de las manos, guantes y cuchillos que las tocan. Limpie manos y hojas; sujete las raíces lejos de las hojas; lave los productos en agua potable; enfríelos pronto.</translation>
    </message>
    <message>
        <source>Keep the new farm as</source>
        <translation type="unfinished">Guardar la granja nueva como</translation>
    </message>
    <message>
        <source>Keep them, to be sown again later</source>
        <translation type="unfinished">Guardarlos para sembrarlos otra vez después</translation>
    </message>
    <message>
        <source>Keep this as a scenario under What if</source>
        <translation type="unfinished">Guardar esto como escenario en Qué pasa si</translation>
    </message>
    <message>
        <source>Keep to compare</source>
        <translation type="unfinished">Guardar y comparar</translation>
    </message>
    <message>
        <source>Keep to compare puts it among the scenarios under What if. Drop forgets it.</source>
        <translation type="unfinished">Guardar para comparar la pone entre los escenarios de Qué pasaría si. Descartar la olvida.</translation>
    </message>
    <message>
        <source>Keep within density and oxygen limits, handle little and wet, and kill quickly and humanely as local rules ask.</source>
        <translation type="unfinished">Manténgase en los límites de densidad y oxígeno, manipule poco y en mojado, y sacrifique rápido y sin crueldad como pidan las normas locales.</translation>
    </message>
    <message>
        <source>Keeping the best so far…</source>
        <translation type="unfinished">Guardando lo mejor hasta ahora…</translation>
    </message>
    <message>
        <source>Kept as the scenario {name}: see What if.</source>
        <translation type="unfinished">Guardado como escenario {name}: vea Qué pasa si.</translation>
    </message>
    <message>
        <source>Kept for show, not eaten</source>
        <translation type="unfinished">Ornamental, no se come</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished">Tipo</translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished">L</translation>
    </message>
    <message>
        <source>L/h</source>
        <translation type="unfinished">L/h</translation>
    </message>
    <message>
        <source>Labels &amp;across</source>
        <translation type="unfinished">Etiquetas &amp;a lo ancho</translation>
    </message>
    <message>
        <source>Labels and tags</source>
        <translation type="unfinished">Etiquetas y tarjetas</translation>
    </message>
    <message>
        <source>Labels and tags…</source>
        <translation type="unfinished">Etiquetas y tarjetas…</translation>
    </message>
    <message>
        <source>Labels dow&amp;n</source>
        <translation type="unfinished">Etiquetas hacia a&amp;bajo</translation>
    </message>
    <message>
        <source>Labels for trays, tags for rafts, on plain paper or a sheet of labels</source>
        <translation type="unfinished">Etiquetas para bandejas, tarjetas para balsas, en papel común o en hoja de etiquetas</translation>
    </message>
    <message>
        <source>Large seed, one a plug. Fixes some of its own nitrogen in soil; none is counted here.</source>
        <translation type="unfinished">Semilla grande, una por taco. En suelo fija parte de su nitrógeno; aquí no se cuenta nada.</translation>
    </message>
    <message>
        <source>Last pick</source>
        <translation type="unfinished">Última cosecha</translation>
    </message>
    <message>
        <source>Late</source>
        <translation type="unfinished">Tarde</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation type="unfinished">Latitud</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation type="unfinished">Nivel</translation>
    </message>
    <message>
        <source>Layer of beds</source>
        <translation type="unfinished">Nivel de camas</translation>
    </message>
    <message>
        <source>Layer {layer}</source>
        <translation type="unfinished">Nivel {layer}</translation>
    </message>
    <message>
        <source>Leafy or fruiting</source>
        <translation type="unfinished">De hoja o de fruto</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation type="unfinished">Aprendido</translation>
    </message>
    <message>
        <source>Least oxygen</source>
        <translation type="unfinished">Oxígeno mínimo</translation>
    </message>
    <message>
        <source>Least supply</source>
        <translation type="unfinished">Aporte menor</translation>
    </message>
    <message>
        <source>Least supply against demand; weeks without demand stand at the top</source>
        <translation type="unfinished">Aporte menor frente a la demanda; las semanas sin demanda quedan arriba</translation>
    </message>
    <message>
        <source>Least supply of an element</source>
        <translation type="unfinished">Aporte menor de un elemento</translation>
    </message>
    <message>
        <source>Leave empty what you do not know: the verdict says what it lacks.</source>
        <translation type="unfinished">Deje vacío lo que no sepa: la respuesta dice qué le falta.</translation>
    </message>
    <message>
        <source>Leave it &amp;uncorrected</source>
        <translation type="unfinished">Dejarlo &amp;sin corregir</translation>
    </message>
    <message>
        <source>Left and right go by a day, Page Up and Page Down by a week</source>
        <translation type="unfinished">Izquierda y derecha avanzan un día; Re Pág y Av Pág, una semana</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished">Sobra</translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished">Largo</translation>
    </message>
    <message>
        <source>Length of the plan</source>
        <translation type="unfinished">Duración del plan</translation>
    </message>
    <message>
        <source>Level scoops for one meal</source>
        <translation type="unfinished">Medidas rasas por comida</translation>
    </message>
    <message>
        <source>Light at the new beds</source>
        <translation type="unfinished">Luz en las camas nuevas</translation>
    </message>
    <message>
        <source>Light from lamps</source>
        <translation type="unfinished">Luz de lámparas</translation>
    </message>
    <message>
        <source>Light let through by the roof</source>
        <translation type="unfinished">Luz que deja pasar el techo</translation>
    </message>
    <message>
        <source>Light that plants can use, summed over a day, in mol for each square metre.</source>
        <translation type="unfinished">Luz útil para las plantas sumada en un día, en mol por metro cuadrado.</translation>
    </message>
    <message>
        <source>Light that the layers above let through</source>
        <translation type="unfinished">Luz que dejan pasar los niveles de arriba</translation>
    </message>
    <message>
        <source>Light wanted each day</source>
        <translation type="unfinished">Luz que pide cada día</translation>
    </message>
    <message>
        <source>Light, power and structure</source>
        <translation type="unfinished">Luz, potencia y estructura</translation>
    </message>
    <message>
        <source>Like the &amp;system</source>
        <translation type="unfinished">Como el s&amp;istema</translation>
    </message>
    <message>
        <source>Limiting</source>
        <translation type="unfinished">Limitante</translation>
    </message>
    <message>
        <source>Limiting element</source>
        <translation type="unfinished">Limitante</translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished">Línea</translation>
    </message>
    <message>
        <source>Line {line}: {words}</source>
        <translation type="unfinished">Línea {line}: {words}</translation>
    </message>
    <message>
        <source>Line {number}: give length and width, or the number of holes.</source>
        <translation type="unfinished">Línea {number}: dé largo y ancho, o el número de hoyos.</translation>
    </message>
    <message>
        <source>Line {number}: {why}</source>
        <translation type="unfinished">Línea {number}: {why}</translation>
    </message>
    <message>
        <source>Lines of the sheet</source>
        <translation type="unfinished">Líneas de la hoja</translation>
    </message>
    <message>
        <source>Liquor goes back on</source>
        <translation type="unfinished">El líquido regresa el</translation>
    </message>
    <message>
        <source>Live weight</source>
        <translation type="unfinished">Peso vivo</translation>
    </message>
    <message>
        <source>Load of frame and rafts</source>
        <translation type="unfinished">Carga del bastidor y las balsas</translation>
    </message>
    <message>
        <source>Load that may be carried</source>
        <translation type="unfinished">Carga que se puede soportar</translation>
    </message>
    <message>
        <source>Local codes</source>
        <translation type="unfinished">Códigos locales</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished">Fijar</translation>
    </message>
    <message>
        <source>Lock {code}</source>
        <translation type="unfinished">Bloquear {code}</translation>
    </message>
    <message>
        <source>Lock {many} batches</source>
        <translation type="unfinished">Bloquear {many} lotes</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished">Fijo</translation>
    </message>
    <message>
        <source>Locked.</source>
        <translation type="unfinished">Fijo.</translation>
    </message>
    <message>
        <source>Locked: no plan may move it</source>
        <translation type="unfinished">Fijo: ningún plan lo mueve</translation>
    </message>
    <message>
        <source>Log entry</source>
        <translation type="unfinished">Apunte del registro</translation>
    </message>
    <message>
        <source>Log every line in one act (Ctrl+S)</source>
        <translation type="unfinished">Anotar todas las líneas de una vez (Ctrl+S)</translation>
    </message>
    <message>
        <source>Log: {what}</source>
        <translation type="unfinished">Registro: {what}</translation>
    </message>
    <message>
        <source>Long nursery; cold below 10 °C makes it bolt. Table shows no emergence at 25 °C.</source>
        <translation type="unfinished">Vivero largo; el frío bajo 10 °C lo hace espigar. La tabla no muestra nacencia a 25 °C.</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation type="unfinished">Más larga</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation type="unfinished">Longitud</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation type="unfinished">Mirar</translation>
    </message>
    <message>
        <source>Look out: {said}.</source>
        <translation type="unfinished">Ojo: {said}.</translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation type="unfinished">Mirando las filas…</translation>
    </message>
    <message>
        <source>Loop of water</source>
        <translation type="unfinished">Circuito de agua</translation>
    </message>
    <message>
        <source>Loop whose balance is shown</source>
        <translation type="unfinished">Circuito cuyo balance se muestra</translation>
    </message>
    <message>
        <source>Lose all fish of a group</source>
        <translation type="unfinished">Perder todos los peces de un grupo</translation>
    </message>
    <message>
        <source>Loss from one picking to the next</source>
        <translation type="unfinished">Pérdida de una recogida a la siguiente</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lote</translation>
    </message>
    <message>
        <source>Lower leaves picked weekly; the crown goes on growing.</source>
        <translation type="unfinished">Hojas de abajo, cada semana; el cogollo sigue creciendo.</translation>
    </message>
    <message>
        <source>Lowest feed</source>
        <translation type="unfinished">Menos alimento</translation>
    </message>
    <message>
        <source>Lowest pH</source>
        <translation type="unfinished">pH mínimo</translation>
    </message>
    <message>
        <source>M (letter of the band met)</source>
        <translation type="unfinished">B</translation>
    </message>
    <message>
        <source>MJ/m2/min</source>
        <translation type="unfinished">MJ/m²/min</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation type="unfinished">Magnesio</translation>
    </message>
    <message>
        <source>Magnesium [mg/L]</source>
        <translation type="unfinished">Magnesio [mg/L]</translation>
    </message>
    <message>
        <source>Magnesium in the fish</source>
        <translation type="unfinished">Magnesio en el pez</translation>
    </message>
    <message>
        <source>Magnesium in the make-up water</source>
        <translation type="unfinished">Magnesio en el agua de reposición</translation>
    </message>
    <message>
        <source>Maintenance calendar</source>
        <translation type="unfinished">Calendario de mantenimiento</translation>
    </message>
    <message>
        <source>Make some of its plants a batch of their own</source>
        <translation type="unfinished">Hacer de algunas de sus plantas un lote aparte</translation>
    </message>
    <message>
        <source>Make the farm what the scenario is; one undo takes it back</source>
        <translation type="unfinished">Hacer la granja como el escenario; un deshacer lo quita</translation>
    </message>
    <message>
        <source>Make the farm…</source>
        <translation type="unfinished">Crear la granja…</translation>
    </message>
    <message>
        <source>Make this the plan; one undo takes it back</source>
        <translation type="unfinished">Hacer de esto el plan; un deshacer lo quita</translation>
    </message>
    <message>
        <source>Make-up water</source>
        <translation type="unfinished">Agua de reposición</translation>
    </message>
    <message>
        <source>Make-up water added [L]</source>
        <translation type="unfinished">Agua de reposición agregada [L]</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation type="unfinished">Materiales</translation>
    </message>
    <message>
        <source>May go from</source>
        <translation type="unfinished">Puede ir desde</translation>
    </message>
    <message>
        <source>Meals a day</source>
        <translation type="unfinished">Comidas al día</translation>
    </message>
    <message>
        <source>Mean weight</source>
        <translation type="unfinished">Peso medio</translation>
    </message>
    <message>
        <source>Mean weight foreseen on the day shown</source>
        <translation type="unfinished">Peso medio previsto para el día mostrado</translation>
    </message>
    <message>
        <source>Mean weight of one fish</source>
        <translation type="unfinished">Peso medio de un pez</translation>
    </message>
    <message>
        <source>Mean weight of one fish today</source>
        <translation type="unfinished">Peso medio de un pez hoy</translation>
    </message>
    <message>
        <source>Meant for its bed</source>
        <translation type="unfinished">Previsto para su cama</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation type="unfinished">Mide</translation>
    </message>
    <message>
        <source>Media plugs</source>
        <translation type="unfinished">Tacos de sustrato</translation>
    </message>
    <message>
        <source>Meets</source>
        <translation type="unfinished">Cumple</translation>
    </message>
    <message>
        <source>Mend it, or keep all lines once more to say that it is right.</source>
        <translation type="unfinished">Corríjalo, o guarde otra vez todas las líneas para decir que es correcto.</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished">Medidor</translation>
    </message>
    <message>
        <source>Meter factor</source>
        <translation type="unfinished">Factor del medidor</translation>
    </message>
    <message>
        <source>Meter's factor</source>
        <translation type="unfinished">Factor del medidor</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation type="unfinished">Medidores</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished">Métrico</translation>
    </message>
    <message>
        <source>Middle spacing</source>
        <translation type="unfinished">Distancia media</translation>
    </message>
    <message>
        <source>Milder than the hydroxide, still strong.</source>
        <translation type="unfinished">Más suave que el hidróxido, pero aún fuerte.</translation>
    </message>
    <message>
        <source>Mineralisation</source>
        <translation type="unfinished">Mineralización</translation>
    </message>
    <message>
        <source>Mineraliser</source>
        <translation type="unfinished">Mineralizador</translation>
    </message>
    <message>
        <source>Minerals are means of many analyses at 41.65 % protein.</source>
        <translation type="unfinished">Los minerales son medias de muchos análisis con 41,65 % de proteína.</translation>
    </message>
    <message>
        <source>Minerals are means of present commercial feeds.</source>
        <translation type="unfinished">Los minerales son medias de alimentos comerciales actuales.</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation type="unfinished">No cumplido</translation>
    </message>
    <message>
        <source>Mo&amp;ve all down</source>
        <translation type="unfinished">Mo&amp;ver todo hacia abajo</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">Lunes</translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished">Mes</translation>
    </message>
    <message>
        <source>More beds</source>
        <translation type="unfinished">Más camas</translation>
    </message>
    <message>
        <source>More is planted than the feed carries. This would repair it; nothing is done unasked:</source>
        <translation type="unfinished">Hay más plantado de lo que el alimento sostiene. Esto lo arreglaría; nada se hace sin pedirlo:</translation>
    </message>
    <message>
        <source>More than wanted</source>
        <translation type="unfinished">Más de lo pedido</translation>
    </message>
    <message>
        <source>More, where it is known</source>
        <translation type="unfinished">Más, donde se sepa</translation>
    </message>
    <message>
        <source>Most fish in the tank</source>
        <translation type="unfinished">Máximo de peces en el tanque</translation>
    </message>
    <message>
        <source>Most insecticides, many sold as natural among them, can kill fish, and soaps damage gills. Follow the label and its days before harvest; never spray over water.</source>
        <translation type="unfinished">La mayoría de los insecticidas, muchos vendidos como naturales entre ellos, pueden matar peces, y los jabones dañan las branquias. Siga la etiqueta y sus días antes de la cosecha; nunca fumigue sobre el agua.</translation>
    </message>
    <message>
        <source>Most like</source>
        <translation type="unfinished">Lo más parecido</translation>
    </message>
    <message>
        <source>Most un-ionised ammonia, as nitrogen</source>
        <translation type="unfinished">Máximo amoníaco no ionizado, como nitrógeno</translation>
    </message>
    <message>
        <source>Move</source>
        <translation type="unfinished">Mover</translation>
    </message>
    <message>
        <source>Move to bed</source>
        <translation type="unfinished">Trasplante</translation>
    </message>
    <message>
        <source>Move to the bed, {days} d late: {code}</source>
        <translation type="unfinished">Trasladar a la cama, {days} d tarde: {code}</translation>
    </message>
    <message>
        <source>Move {code} to the bed</source>
        <translation type="unfinished">Pasar {code} al lecho</translation>
    </message>
    <message>
        <source>Move {code} to {bed}</source>
        <translation type="unfinished">Mover {code} a {bed}</translation>
    </message>
    <message>
        <source>Move {code} to {bed}, {moved}</source>
        <translation type="unfinished">Mover {code} a {bed}, {moved}</translation>
    </message>
    <message>
        <source>Move {code} {moved}</source>
        <translation type="unfinished">Mover {code} {moved}</translation>
    </message>
    <message>
        <source>Move {many} batches {moved}</source>
        <translation type="unfinished">Mover {many} lotes {moved}</translation>
    </message>
    <message>
        <source>Move {many}: {code}</source>
        <translation type="unfinished">Trasplantar {many}: {code}</translation>
    </message>
    <message>
        <source>Moved: {moves}</source>
        <translation type="unfinished">Movido: {moves}</translation>
    </message>
    <message>
        <source>Moving-bed biofilter</source>
        <translation type="unfinished">Biofiltro de lecho móvil</translation>
    </message>
    <message>
        <source>N (letter of the stage nursery)</source>
        <translation type="unfinished">V</translation>
    </message>
    <message>
        <source>NO₂ and NO₃ were read as the ion</source>
        <translation type="unfinished">NO₂ y NO₃ se leyeron como ion</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nombre</translation>
    </message>
    <message>
        <source>Name is empty; it must be given.</source>
        <translation type="unfinished">El nombre está vacío; hay que darlo.</translation>
    </message>
    <message>
        <source>Name of the farm</source>
        <translation type="unfinished">Nombre de la granja</translation>
    </message>
    <message>
        <source>Name of the scenario</source>
        <translation type="unfinished">Nombre del escenario</translation>
    </message>
    <message>
        <source>Net pots</source>
        <translation type="unfinished">Canastillas</translation>
    </message>
    <message>
        <source>Never tested</source>
        <translation type="unfinished">Nunca analizado</translation>
    </message>
    <message>
        <source>New entry of your own</source>
        <translation type="unfinished">Nueva entrada propia</translation>
    </message>
    <message>
        <source>New entry…</source>
        <translation type="unfinished">Nueva entrada…</translation>
    </message>
    <message>
        <source>New farm</source>
        <translation type="unfinished">Granja nueva</translation>
    </message>
    <message>
        <source>New: {kind}</source>
        <translation type="unfinished">Nuevo: {kind}</translation>
    </message>
    <message>
        <source>New…</source>
        <translation type="unfinished">Nuevo…</translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished">Sigue</translation>
    </message>
    <message>
        <source>Next due</source>
        <translation type="unfinished">Próxima vez</translation>
    </message>
    <message>
        <source>Next: {what}.</source>
        <translation type="unfinished">Sigue: {what}.</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation type="unfinished">Nitrato</translation>
    </message>
    <message>
        <source>Nitrate as N [mg/L]</source>
        <translation type="unfinished">Nitrato como N [mg/L]</translation>
    </message>
    <message>
        <source>Nitrification</source>
        <translation type="unfinished">Nitrificación</translation>
    </message>
    <message>
        <source>Nitrite</source>
        <translation type="unfinished">Nitrito</translation>
    </message>
    <message>
        <source>Nitrite as N [mg/L]</source>
        <translation type="unfinished">Nitrito como N [mg/L]</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation type="unfinished">Nitrógeno</translation>
    </message>
    <message>
        <source>Nitrogen in dry matter</source>
        <translation type="unfinished">Nitrógeno en la materia seca</translation>
    </message>
    <message>
        <source>Nitrogen in the fish</source>
        <translation type="unfinished">Nitrógeno en el pez</translation>
    </message>
    <message>
        <source>Nitrogen in the make-up water</source>
        <translation type="unfinished">Nitrógeno en el agua de reposición</translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished">No</translation>
    </message>
    <message>
        <source>No analysis</source>
        <translation type="unfinished">Sin análisis</translation>
    </message>
    <message>
        <source>No analysis: nothing is counted. Enter the label's figures as your own entry.</source>
        <translation type="unfinished">Sin análisis: no se cuenta nada. Ponga las cifras de la etiqueta como entrada propia.</translation>
    </message>
    <message>
        <source>No base is at hand: the plan has no doses of one.</source>
        <translation type="unfinished">No hay base a la mano: el plan no tiene dosis de ninguna.</translation>
    </message>
    <message>
        <source>No batch and no seed lot has the code “{code}”.</source>
        <translation type="unfinished">Ningún lote ni lote de semilla tiene el código «{code}».</translation>
    </message>
    <message>
        <source>No batch chosen</source>
        <translation type="unfinished">Ningún lote elegido</translation>
    </message>
    <message>
        <source>No batch differs from today's plan.</source>
        <translation type="unfinished">Ningún lote difiere del plan de hoy.</translation>
    </message>
    <message>
        <source>No batch is still to be sown that this is for.</source>
        <translation type="unfinished">No queda por sembrar ningún lote al que esto sirva.</translation>
    </message>
    <message>
        <source>No batch of this crop is sown from that day on that is not locked.</source>
        <translation type="unfinished">Desde ese día no se siembra ningún lote de este cultivo que no esté fijo.</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation type="unfinished">Aún no hay lotes</translation>
    </message>
    <message>
        <source>No bed yet</source>
        <translation type="unfinished">Aún no hay camas</translation>
    </message>
    <message>
        <source>No beds yet. Add one in the menu Set-up, and every hole of it is drawn here.</source>
        <translation type="unfinished">Aún no hay camas. Agregue una en el menú Instalaciones y aquí se dibuja cada hoyo.</translation>
    </message>
    <message>
        <source>No beds yet. Every raft, block and tray gets a row here.</source>
        <translation type="unfinished">Aún no hay camas. Cada balsa, bloque y bandeja tiene aquí su hilera.</translation>
    </message>
    <message>
        <source>No change of the plan was found that helps. Look at it in the lanes.</source>
        <translation type="unfinished">No se halló un cambio del plan que ayude. Véalo en los carriles.</translation>
    </message>
    <message>
        <source>No climate is entered for {name}; book durations apply.</source>
        <translation type="unfinished">No hay clima anotado para {name}; valen los días del catálogo.</translation>
    </message>
    <message>
        <source>No dose yet. Add one of what you have; how much of it is asked for is told from then on.</source>
        <translation type="unfinished">Aún no hay dosis. Añada una de lo que tenga; desde entonces se dice cuánto hace falta.</translation>
    </message>
    <message>
        <source>No effect on pH.</source>
        <translation type="unfinished">Sin efecto en el pH.</translation>
    </message>
    <message>
        <source>No figure of the program that went in comes from this publication.</source>
        <translation type="unfinished">Ninguna cifra del programa que entró procede de esta publicación.</translation>
    </message>
    <message>
        <source>No figure of the program went in: only the formula is checked.</source>
        <translation type="unfinished">No entró ninguna cifra del programa: solo se comprueba la fórmula.</translation>
    </message>
    <message>
        <source>No fish are stocked in this loop yet: stock fish first.</source>
        <translation type="unfinished">Aún no hay peces en este circuito: ponga peces primero.</translation>
    </message>
    <message>
        <source>No fish of {group} within the plan</source>
        <translation type="unfinished">Sin peces de {group} dentro del plan</translation>
    </message>
    <message>
        <source>No fish yet</source>
        <translation type="unfinished">Aún no hay peces</translation>
    </message>
    <message>
        <source>No harvest of a whole group is planned. Plan one on the page of the fish.</source>
        <translation type="unfinished">No hay planeada la cosecha de un grupo entero. Planee una en la página de peces.</translation>
    </message>
    <message>
        <source>No loop of water yet</source>
        <translation type="unfinished">Aún no hay circuito de agua</translation>
    </message>
    <message>
        <source>No loop of water yet. Its fish and their feed are shown here.</source>
        <translation type="unfinished">Aún no hay circuito de agua. Aquí se muestran sus peces y su alimento.</translation>
    </message>
    <message>
        <source>No loop of water yet. What its fish supply and its plants want is weighed here.</source>
        <translation type="unfinished">Aún no hay circuito de agua. Aquí se pesa lo que aportan sus peces y lo que piden sus plantas.</translation>
    </message>
    <message>
        <source>No meter yet. Add one, and you are told when it must be calibrated.</source>
        <translation type="unfinished">Aún no hay medidor. Añada uno y se le avisará cuándo hay que calibrarlo.</translation>
    </message>
    <message>
        <source>No number is in hand: choose one in a table or a chart and ask again.</source>
        <translation type="unfinished">No hay ninguna cifra elegida: elija una en una tabla o un gráfico y pregunte otra vez.</translation>
    </message>
    <message>
        <source>No plan can be better: this is proven.</source>
        <translation type="unfinished">Ningún plan puede ser mejor: está probado.</translation>
    </message>
    <message>
        <source>No plan could be made: {why}</source>
        <translation type="unfinished">No se pudo hacer un plan: {why}</translation>
    </message>
    <message>
        <source>No plan is worth more than</source>
        <translation type="unfinished">Ningún plan vale más de</translation>
    </message>
    <message>
        <source>No repair feeds fish above what they eat, fills a tank over its limit, or changes what lies in the past.</source>
        <translation type="unfinished">Ningún arreglo da a los peces más de lo que comen, llena un tanque sobre su límite ni cambia el pasado.</translation>
    </message>
    <message>
        <source>No room in {bed}: {needed} places needed, {free} free.</source>
        <translation type="unfinished">No cabe en {bed}: se necesitan {needed} lugares, hay {free} libres.</translation>
    </message>
    <message>
        <source>No scenario yet. Try a change on the left, or keep a proposal of another section to compare. The farm stays as it is until you adopt one.</source>
        <translation type="unfinished">Aún no hay escenario. Pruebe un cambio a la izquierda, o guarde una propuesta de otra sección para comparar. La granja queda como está hasta que adopte uno.</translation>
    </message>
    <message>
        <source>No seed lot yet. Add one, and its germination tests are reckoned with.</source>
        <translation type="unfinished">Aún no hay lote de semilla. Añada uno y se contará con sus pruebas de germinación.</translation>
    </message>
    <message>
        <source>No sowings could be worked out: {why}</source>
        <translation type="unfinished">No se pudieron calcular siembras: {why}</translation>
    </message>
    <message>
        <source>No target asks for anything in these weeks, so there is nothing to plan.</source>
        <translation type="unfinished">Ninguna meta pide algo en estas semanas; no hay nada que planear.</translation>
    </message>
    <message>
        <source>No water yet</source>
        <translation type="unfinished">Aún no hay agua</translation>
    </message>
    <message>
        <source>No way keeps within the band of feed that the beds need: there is more fish than the beds use.</source>
        <translation type="unfinished">Ninguna forma queda en la franja de alimento que piden las camas: hay más peces de los que usan las camas.</translation>
    </message>
    <message>
        <source>No way reaches the band of feed that the beds need: the tanks hold too few fish for them. A larger tank, fewer beds or a supplement would close the gap.</source>
        <translation type="unfinished">Ninguna forma llega a la franja de alimento que piden las camas: en los tanques caben muy pocos peces. Un tanque más grande, menos camas o un suplemento cerraría la diferencia.</translation>
    </message>
    <message>
        <source>No week from today on is flagged: what the plan asks for is supplied, and fits.</source>
        <translation type="unfinished">Ninguna semana de hoy en adelante está marcada: lo que el plan pide se aporta, y cabe.</translation>
    </message>
    <message>
        <source>No word here is in the list of words.</source>
        <translation type="unfinished">Ninguna palabra de aquí está en la lista.</translation>
    </message>
    <message>
        <source>No work on</source>
        <translation type="unfinished">Sin trabajo el</translation>
    </message>
    <message>
        <source>No work on {day}</source>
        <translation type="unfinished">Sin trabajo el {day}</translation>
    </message>
    <message>
        <source>No: this loop cannot carry {area} m² more.</source>
        <translation type="unfinished">No: este circuito no puede con {area} m² más.</translation>
    </message>
    <message>
        <source>Nobody has told what this product holds, so it counts for nothing. Enter the label's analysis as an entry of your own before relying on it.</source>
        <translation type="unfinished">Nadie ha dicho qué contiene este producto, así que no cuenta para nada. Introduzca el análisis de la etiqueta como entrada propia antes de fiarse de él.</translation>
    </message>
    <message>
        <source>Nobody with vomiting, diarrhoea or jaundice handles food. Cover cuts: fish spines and tank water infect wounds. Test the water as planned.</source>
        <translation type="unfinished">Nadie con vómitos, diarrea o ictericia maneja alimentos. Cubra los cortes: las espinas y el agua del tanque infectan las heridas. Analice el agua según lo previsto.</translation>
    </message>
    <message>
        <source>Not computed</source>
        <translation type="unfinished">No calculado</translation>
    </message>
    <message>
        <source>Not kept, for the plan as it stands does not allow it. Move or shorten what is named, then keep the value.
{faults}</source>
        <translation type="unfinished">No se guardó: el plan, como está, no lo permite. Mueva o acorte lo que se nombra y luego guarde el valor.
{faults}</translation>
    </message>
    <message>
        <source>Not known: the days of the book</source>
        <translation type="unfinished">No se sabe: los días del catálogo</translation>
    </message>
    <message>
        <source>Not saved: {why}</source>
        <translation type="unfinished">No se ha guardado: {why}</translation>
    </message>
    <message>
        <source>Not weighed for {days} days: weight and feed are a guess that grows with each. Weigh {low} to {high} fish and enter the sample.</source>
        <translation type="unfinished">Sin pesar desde hace {days} días: peso y alimento son una estimación, cada día menos segura. Pese {low} a {high} peces y anote la muestra.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Nota</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation type="unfinished">Anotado</translation>
    </message>
    <message>
        <source>Noted at</source>
        <translation type="unfinished">Anotado a las</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notas</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished">Nada</translation>
    </message>
    <message>
        <source>Nothing brings {element} to {loop}, so it is left out of the balance.</source>
        <translation type="unfinished">Nada aporta {element} a {loop}; queda fuera del balance.</translation>
    </message>
    <message>
        <source>Nothing differs from today's plan.</source>
        <translation type="unfinished">Nada difiere del plan de hoy.</translation>
    </message>
    <message>
        <source>Nothing has been copied yet. Choose batches and copy them first.</source>
        <translation type="unfinished">Aún no se copió nada. Elija lotes y cópielos primero.</translation>
    </message>
    <message>
        <source>Nothing here is called “{typed}”. Try fewer letters.</source>
        <translation type="unfinished">Nada aquí se llama “{typed}”. Pruebe con menos letras.</translation>
    </message>
    <message>
        <source>Nothing in the plan moves by it.</source>
        <translation type="unfinished">Nada del plan se mueve por esto.</translation>
    </message>
    <message>
        <source>Nothing in this week asks for a repair.</source>
        <translation type="unfinished">Nada en esta semana pide arreglo.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation type="unfinished">No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Nothing is late. What was due and is not logged stands here, once there is a log.</source>
        <translation type="unfinished">Nada está atrasado. Aquí aparece lo que tocaba y no está anotado, en cuanto haya un registro.</translation>
    </message>
    <message>
        <source>Nothing is logged yet, so there is nothing to repeat.</source>
        <translation type="unfinished">Todavía no hay nada anotado, así que no hay nada que repetir.</translation>
    </message>
    <message>
        <source>Nothing is logged yet. Say above what happened, to what and how much, then press “Log it”.</source>
        <translation type="unfinished">Aún no hay nada anotado. Diga arriba qué pasó, a qué y cuánto, y pulse «Anotar».</translation>
    </message>
    <message>
        <source>Nothing is moved to a bed in these weeks, so there is no tag to print.</source>
        <translation type="unfinished">En estas semanas no se trasplanta nada a una cama; no hay tarjeta que imprimir.</translation>
    </message>
    <message>
        <source>Nothing is needed: nothing is sown, fed or dosed in these months.</source>
        <translation type="unfinished">No hace falta nada: en estos meses no se siembra, alimenta ni dosifica nada.</translation>
    </message>
    <message>
        <source>Nothing is planned after that.</source>
        <translation type="unfinished">Después no hay nada planeado.</translation>
    </message>
    <message>
        <source>Nothing is sown in these weeks, so there is no label to print.</source>
        <translation type="unfinished">En estas semanas no se siembra nada; no hay etiqueta que imprimir.</translation>
    </message>
    <message>
        <source>Nothing is to be sown.</source>
        <translation type="unfinished">No hay nada que sembrar.</translation>
    </message>
    <message>
        <source>Nothing is wanted yet. Add a target: so much of a crop each week.</source>
        <translation type="unfinished">Aún no hay metas. Agregue una: tanto de un cultivo cada semana.</translation>
    </message>
    <message>
        <source>Nothing more is to be known of this proposal.</source>
        <translation type="unfinished">No hay más que saber de esta propuesta.</translation>
    </message>
    <message>
        <source>Nothing on the farm has a price yet.</source>
        <translation type="unfinished">Nada de la granja tiene precio todavía.</translation>
    </message>
    <message>
        <source>Nothing that is wanted can be sown in these weeks and be picked before they end.</source>
        <translation type="unfinished">Nada de lo que se quiere se puede sembrar en estas semanas y cosechar antes de que terminen.</translation>
    </message>
    <message>
        <source>Nothing this week</source>
        <translation type="unfinished">Nada esta semana</translation>
    </message>
    <message>
        <source>Nothing to compare yet: log when batches are sown, moved and picked.</source>
        <translation type="unfinished">Aún no hay nada que comparar: anote cuándo se siembran, se trasladan y se cosechan los lotes.</translation>
    </message>
    <message>
        <source>Nothing to log yet</source>
        <translation type="unfinished">Nada que anotar aún</translation>
    </message>
    <message>
        <source>Nothing to plan with yet</source>
        <translation type="unfinished">Nada con qué planificar aún</translation>
    </message>
    <message>
        <source>Nothing to weigh yet</source>
        <translation type="unfinished">Nada que sopesar aún</translation>
    </message>
    <message>
        <source>Nothing was kept yet, and nothing typed is lost.</source>
        <translation type="unfinished">Todavía no se guardó nada, y nada de lo escrito se pierde.</translation>
    </message>
    <message>
        <source>Nothing was learned yet: it comes from the logged stages of batches.</source>
        <translation type="unfinished">Aún no se aprendió nada: sale de las etapas anotadas de los lotes.</translation>
    </message>
    <message>
        <source>Nothing was taken up. {why}</source>
        <translation type="unfinished">No se adoptó nada. {why}</translation>
    </message>
    <message>
        <source>Nothing was typed yet.</source>
        <translation type="unfinished">Todavía no se escribió nada.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished">Número</translation>
    </message>
    <message>
        <source>Number of fish</source>
        <translation type="unfinished">Número de peces</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation type="unfinished">Números</translation>
    </message>
    <message>
        <source>Nursery</source>
        <translation type="unfinished">Vivero</translation>
    </message>
    <message>
        <source>Nursery cells free</source>
        <translation type="unfinished">Celdas del vivero libres</translation>
    </message>
    <message>
        <source>Nursery trays</source>
        <translation type="unfinished">Bandejas de vivero</translation>
    </message>
    <message>
        <source>Nursery: at least {free} of {cells} cells stay free, in {week}.</source>
        <translation type="unfinished">Vivero: quedan libres al menos {free} de {cells} celdas, en {week}.</translation>
    </message>
    <message>
        <source>Nutrient hole</source>
        <translation type="unfinished">Hueco de nutrientes</translation>
    </message>
    <message>
        <source>Nutrients</source>
        <translation type="unfinished">Nutrientes</translation>
    </message>
    <message>
        <source>Nutrients, by the feed of every month; flow, by the points of the pump at the new head; filter and oxygen; light, power and structure. A no decides; then what is unknown.</source>
        <translation type="unfinished">Nutrientes, por el alimento de cada mes; caudal, por los puntos de la bomba a la nueva altura; filtro y oxígeno; luz, energía y estructura. Un no decide; luego lo desconocido.</translation>
    </message>
    <message>
        <source>O (letter of days off feed)</source>
        <translation type="unfinished">S</translation>
    </message>
    <message>
        <source>Occupancy</source>
        <translation type="unfinished">Ocupación</translation>
    </message>
    <message>
        <source>October–December</source>
        <translation type="unfinished">Octubre–diciembre</translation>
    </message>
    <message>
        <source>Of a hundred seeds, how many come up; each packet has its own.</source>
        <translation type="unfinished">De cien semillas, cuántas nacen; cada sobre tiene la suya.</translation>
    </message>
    <message>
        <source>Of all that is wanted {missed} % is missed, {wasted} % is more than wanted, and balance costs {balance} %.</source>
        <translation type="unfinished">De todo lo que se quiere falta {missed} %, sobra {wasted} %, y el balance cuesta {balance} %.</translation>
    </message>
    <message>
        <source>Of any element, against demand</source>
        <translation type="unfinished">De cualquier elemento, contra la demanda</translation>
    </message>
    <message>
        <source>Of how many seeds</source>
        <translation type="unfinished">De cuántas semillas</translation>
    </message>
    <message>
        <source>Of the feed at a harvest, against before</source>
        <translation type="unfinished">Del alimento en una cosecha, contra antes</translation>
    </message>
    <message>
        <source>Of the loop</source>
        <translation type="unfinished">Del circuito</translation>
    </message>
    <message>
        <source>Old lot: test it. Until then more seeds are sown.</source>
        <translation type="unfinished">Lote viejo: pruébelo. Hasta entonces se siembran más semillas.</translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished">Fecha</translation>
    </message>
    <message>
        <source>On a chart, in the lanes and on the bed map, the right button offers the numbers of the place under it.</source>
        <translation type="unfinished">En un gráfico, en las franjas y en el plano de camas, el botón derecho ofrece los números del lugar que está debajo.</translation>
    </message>
    <message>
        <source>On is empty; an order needs its day.</source>
        <translation type="unfinished">Falta la fecha; un pedido necesita su día.</translation>
    </message>
    <message>
        <source>On the ground</source>
        <translation type="unfinished">En el suelo</translation>
    </message>
    <message>
        <source>On the left the sections: repairs, a season, successions, stocking, what if, expansion and orders. The button Help of each tells more.</source>
        <translation type="unfinished">A la izquierda las secciones: arreglos, una temporada, sucesiones, población de peces, qué pasaría si, ampliación y pedidos. El botón Ayuda de cada una dice más.</translation>
    </message>
    <message>
        <source>On the list</source>
        <translation type="unfinished">En la lista</translation>
    </message>
    <message>
        <source>On {day}</source>
        <translation type="unfinished">El {day}</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug.</source>
        <translation type="unfinished">Una mata por hueco: rendimientos y densidades son por mata; multiplique la semilla por las que siembra en cada taco.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Bolts in heat and long days.</source>
        <translation type="unfinished">Una mata por hueco: rendimientos y densidades son por mata; multiplique la semilla por las que siembra en cada taco. Espiga con calor y días largos.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Second cut is sharper.</source>
        <translation type="unfinished">Una mata por hueco: rendimientos y densidades son por mata; multiplique la semilla por las que siembra en cada taco. El segundo corte pica más.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Slow seed: soak 24-48 h; old seed takes 2-5 weeks.</source>
        <translation type="unfinished">Una mata por hueco: rendimientos y densidades son por mata; multiplique la semilla por las que siembra en cada taco. Semilla lenta: remoje 24-48 h; la vieja tarda 2-5 semanas.</translation>
    </message>
    <message>
        <source>One fish of {group} weighs {start} g on {first} and {last} g on {end}</source>
        <translation type="unfinished">Un pez de {group} pesa {start} g el {first} y {last} g el {end}</translation>
    </message>
    <message>
        <source>One harvest</source>
        <translation type="unfinished">Una cosecha</translation>
    </message>
    <message>
        <source>One harvest, and starting up</source>
        <translation type="unfinished">Una cosecha, y el arranque</translation>
    </message>
    <message>
        <source>One packet or delivery of seed, with its own share that germinates.</source>
        <translation type="unfinished">Un sobre o entrega de semilla, con su propia parte que germina.</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation type="unfinished">Un paso atrás</translation>
    </message>
    <message>
        <source>One step back to the seed lot, one step forward to places, harvest and readings. A lot leads to every batch sown of it: the page for a recall.</source>
        <translation type="unfinished">Un paso atrás al lote de semilla, un paso adelante a los lugares, la cosecha y las lecturas. Un lote de semilla lleva a cada lote sembrado con él: la página para una retirada.</translation>
    </message>
    <message>
        <source>One step forth</source>
        <translation type="unfinished">Un paso adelante</translation>
    </message>
    <message>
        <source>One thing has to be there before:</source>
        <translation type="unfinished">Antes tiene que haber una cosa:</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished">Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Open a farm</source>
        <translation type="unfinished">Abrir una granja</translation>
    </message>
    <message>
        <source>Open a farm file</source>
        <translation type="unfinished">Abrir un archivo de granja</translation>
    </message>
    <message>
        <source>Open a farm…</source>
        <translation type="unfinished">Abrir una granja…</translation>
    </message>
    <message>
        <source>Open it…</source>
        <translation type="unfinished">Abrirla…</translation>
    </message>
    <message>
        <source>Opening the farm…</source>
        <translation type="unfinished">Abriendo la granja…</translation>
    </message>
    <message>
        <source>Opening…</source>
        <translation type="unfinished">Abriendo…</translation>
    </message>
    <message>
        <source>Or by a rule</source>
        <translation type="unfinished">O por una regla</translation>
    </message>
    <message>
        <source>Order list</source>
        <translation type="unfinished">Lista de pedidos</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished">Pedidos</translation>
    </message>
    <message>
        <source>Ornamental: not for the table. Remedies sold for pond fish bar the crops too.</source>
        <translation type="unfinished">Ornamental: no para la mesa. Los remedios que se venden para peces de estanque excluyen también los cultivos.</translation>
    </message>
    <message>
        <source>Our range</source>
        <translation type="unfinished">Nuestro intervalo</translation>
    </message>
    <message>
        <source>Ours</source>
        <translation type="unfinished">Nuestro</translation>
    </message>
    <message>
        <source>Outer leaves picked weekly. Seeds are clusters: thin to one.</source>
        <translation type="unfinished">Hojas de afuera, cada semana. Las semillas vienen en racimo: deje una planta.</translation>
    </message>
    <message>
        <source>Outside the tolerance. {why}</source>
        <translation type="unfinished">Fuera de la tolerancia. {why}</translation>
    </message>
    <message>
        <source>Own entry</source>
        <translation type="unfinished">Entrada propia</translation>
    </message>
    <message>
        <source>Own entry: {name}</source>
        <translation type="unfinished">Entrada propia: {name}</translation>
    </message>
    <message>
        <source>Own source</source>
        <translation type="unfinished">Fuente propia</translation>
    </message>
    <message>
        <source>Own value: {name}, {label}</source>
        <translation type="unfinished">Valor propio: {name}, {label}</translation>
    </message>
    <message>
        <source>Own values</source>
        <translation type="unfinished">Valores propios</translation>
    </message>
    <message>
        <source>Owner's monthly report</source>
        <translation type="unfinished">Informe mensual para el dueño</translation>
    </message>
    <message>
        <source>Oxygen</source>
        <translation type="unfinished">Oxígeno</translation>
    </message>
    <message>
        <source>Oxygen after feeding</source>
        <translation type="unfinished">Oxígeno tras alimentar</translation>
    </message>
    <message>
        <source>Oxygen asked for</source>
        <translation type="unfinished">Oxígeno pedido</translation>
    </message>
    <message>
        <source>Oxygen given</source>
        <translation type="unfinished">Oxígeno dado</translation>
    </message>
    <message>
        <source>Oxygen in the water; fish, roots and bacteria all breathe it.</source>
        <translation type="unfinished">Oxígeno en el agua; lo respiran peces, raíces y bacterias.</translation>
    </message>
    <message>
        <source>Oxygen it can hold</source>
        <translation type="unfinished">Oxígeno que le cabe</translation>
    </message>
    <message>
        <source>Oxygen meter</source>
        <translation type="unfinished">Medidor de oxígeno</translation>
    </message>
    <message>
        <source>P (letter of the stage picking)</source>
        <translation type="unfinished">R</translation>
    </message>
    <message>
        <source>P&amp;rint</source>
        <translation type="unfinished">I&amp;mprimir</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation type="unfinished">I&amp;mprimir…</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished">PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation type="unfinished">Envasado el</translation>
    </message>
    <message>
        <source>Packed or bought</source>
        <translation type="unfinished">Envasado o comprado</translation>
    </message>
    <message>
        <source>Page {at} of {count}</source>
        <translation type="unfinished">Página {at} de {count}</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation type="unfinished">Páginas</translation>
    </message>
    <message>
        <source>Pages as they will be printed</source>
        <translation type="unfinished">Páginas como se imprimirán</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished">Papel</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished">Pegar</translation>
    </message>
    <message>
        <source>Paste some weeks later…</source>
        <translation type="unfinished">Pegar semanas después…</translation>
    </message>
    <message>
        <source>Pellet [mm]</source>
        <translation type="unfinished">Pellet [mm]</translation>
    </message>
    <message>
        <source>Pelleted seed</source>
        <translation type="unfinished">Semilla peletizada</translation>
    </message>
    <message>
        <source>Phosphorus</source>
        <translation type="unfinished">Fósforo</translation>
    </message>
    <message>
        <source>Phosphorus [mg/L]</source>
        <translation type="unfinished">Fósforo [mg/L]</translation>
    </message>
    <message>
        <source>Phosphorus in the fish</source>
        <translation type="unfinished">Fósforo en el pez</translation>
    </message>
    <message>
        <source>Phosphorus in the make-up water</source>
        <translation type="unfinished">Fósforo en el agua de reposición</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation type="unfinished">Cosechar</translation>
    </message>
    <message>
        <source>Pick a week less</source>
        <translation type="unfinished">Cosechar una semana menos</translation>
    </message>
    <message>
        <source>Pick a week longer</source>
        <translation type="unfinished">Cosechar una semana más</translation>
    </message>
    <message>
        <source>Pick {code}</source>
        <translation type="unfinished">Cosechar {code}</translation>
    </message>
    <message>
        <source>Pick {code} {stretched}</source>
        <translation type="unfinished">Cosechar {code} {stretched}</translation>
    </message>
    <message>
        <source>Pick {many}: {code}</source>
        <translation type="unfinished">Cosechar {many}: {code}</translation>
    </message>
    <message>
        <source>Pick, {days} d late: {code}</source>
        <translation type="unfinished">Recoger, {days} d tarde: {code}</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation type="unfinished">Recogido</translation>
    </message>
    <message>
        <source>Picked part of the whole plant</source>
        <translation type="unfinished">Parte recogida de la planta entera</translation>
    </message>
    <message>
        <source>Picked until {day} ({moved})</source>
        <translation type="unfinished">Se cosecha hasta el {day} ({moved})</translation>
    </message>
    <message>
        <source>Picking</source>
        <translation type="unfinished">En cosecha</translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished">Lugar</translation>
    </message>
    <message>
        <source>Place held</source>
        <translation type="unfinished">Lugar ocupado</translation>
    </message>
    <message>
        <source>Place {batches} in {bed}</source>
        <translation type="unfinished">Poner {batches} en {bed}</translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished">Lugares</translation>
    </message>
    <message>
        <source>Places along a row</source>
        <translation type="unfinished">Lugares por hilera</translation>
    </message>
    <message>
        <source>Places are those given to each batch. Stages are worked out for the day shown; they are not records.</source>
        <translation type="unfinished">Los lugares son los dados a cada lote. Las etapas se calculan para el día mostrado; no son registros.</translation>
    </message>
    <message>
        <source>Places free again</source>
        <translation type="unfinished">Sitios libres de nuevo</translation>
    </message>
    <message>
        <source>Places in the beds and cells in the nursery on the fullest day, days without work, the minutes of work a week if you give them, and the season: a crop that would not be ready in time is not sown.</source>
        <translation type="unfinished">Huecos en las camas y celdas en el semillero en el día más lleno, días sin trabajo, los minutos de trabajo a la semana si los da, y la estación: no se siembra un cultivo que no estaría listo a tiempo.</translation>
    </message>
    <message>
        <source>Places of the beds</source>
        <translation type="unfinished">Lugares de las camas</translation>
    </message>
    <message>
        <source>Places of {code} free: {change}, {days}</source>
        <translation type="unfinished">Sitios de {code} libres: {change}, {days}</translation>
    </message>
    <message>
        <source>Placing the sowings…</source>
        <translation type="unfinished">Dando lugar a las siembras…</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Plan a dose: {grams} g {name}</source>
        <translation type="unfinished">Planificar una dosis: {grams} g de {name}</translation>
    </message>
    <message>
        <source>Plan a new batch of plants</source>
        <translation type="unfinished">Planear un lote nuevo de plantas</translation>
    </message>
    <message>
        <source>Plan a new fish group</source>
        <translation type="unfinished">Planear un grupo nuevo de peces</translation>
    </message>
    <message>
        <source>Plan begins</source>
        <translation type="unfinished">El plan empieza</translation>
    </message>
    <message>
        <source>Plan mark</source>
        <translation type="unfinished">Marca del plan</translation>
    </message>
    <message>
        <source>Plan these crops anew from then on</source>
        <translation type="unfinished">Planear de nuevo estos cultivos desde entonces</translation>
    </message>
    <message>
        <source>Plan this dose</source>
        <translation type="unfinished">Planificar esta dosis</translation>
    </message>
    <message>
        <source>Plan {mark}</source>
        <translation type="unfinished">Plan {mark}</translation>
    </message>
    <message>
        <source>Planned [d]</source>
        <translation type="unfinished">Planeado [d]</translation>
    </message>
    <message>
        <source>Planned against actual</source>
        <translation type="unfinished">Planeado contra real</translation>
    </message>
    <message>
        <source>Planned harvest</source>
        <translation type="unfinished">Cosecha planeada</translation>
    </message>
    <message>
        <source>Plant meals: less phosphorus and calcium.</source>
        <translation type="unfinished">Harinas vegetales: menos fósforo y calcio.</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation type="unfinished">Plantado</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation type="unfinished">Plantas</translation>
    </message>
    <message>
        <source>Plants at the middle spacing</source>
        <translation type="unfinished">Plantas en la distancia intermedia</translation>
    </message>
    <message>
        <source>Plants in the bed</source>
        <translation type="unfinished">Plantas en la cama</translation>
    </message>
    <message>
        <source>Plants in the nursery</source>
        <translation type="unfinished">Plantas en el semillero</translation>
    </message>
    <message>
        <source>Plants of the new batch</source>
        <translation type="unfinished">Plantas del lote nuevo</translation>
    </message>
    <message>
        <source>Plants over germination and survival, rounded up</source>
        <translation type="unfinished">Plantas entre germinación y supervivencia, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>Plants sown together, from the seed to the cleared place.</source>
        <translation type="unfinished">Plantas sembradas juntas, desde la semilla hasta el lugar despejado.</translation>
    </message>
    <message>
        <source>Plants without a place</source>
        <translation type="unfinished">Plantas sin lugar</translation>
    </message>
    <message>
        <source>Plants ÷ share that comes up ÷ share that lives, rounded up to whole pots. Choose a sowing to see its own numbers.</source>
        <translation type="unfinished">Plantas ÷ parte que brota ÷ parte que vive, redondeado a macetas enteras. Elija una siembra para ver sus propias cifras.</translation>
    </message>
    <message>
        <source>Plus and minus zoom, Ctrl+T goes to today, Ctrl+Z takes the last act back, Ctrl+M shows what it moved and why.</source>
        <translation type="unfinished">Más y menos acercan y alejan, Ctrl+T va a hoy, Ctrl+Z deshace la última acción, Ctrl+M muestra qué movió y por qué.</translation>
    </message>
    <message>
        <source>Pods 4-6 d after the flower wilts; skin irritates, wear sleeves.</source>
        <translation type="unfinished">Vainas 4-6 d después de marchitarse la flor; la piel se irrita, use mangas.</translation>
    </message>
    <message>
        <source>Poor above pH 6.5 and not liked in fish water.</source>
        <translation type="unfinished">Débil sobre pH 6,5 y poco conveniente en agua con peces.</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation type="unfinished">Potasio</translation>
    </message>
    <message>
        <source>Potassium [mg/L]</source>
        <translation type="unfinished">Potasio [mg/L]</translation>
    </message>
    <message>
        <source>Potassium and calcium hydroxide burn skin and blind eyes. Wear goggles, gloves and long sleeves. Stir the base into plenty of cold water, never water onto base: it heats and spits. No aluminium or galvanised buckets. Give small doses away from the fish, wait, test again. Check ammonia before raising pH. Store locked and labelled, away from acids and children. On eyes or skin: rinse 15 minutes with water and get medical help. Prefer carbonate or bicarbonate where it will do.</source>
        <translation type="unfinished">Los hidróxidos de potasio y calcio queman la piel y ciegan los ojos. Lleve gafas, guantes y mangas largas. Eche la base removiendo en mucha agua fría, nunca agua sobre la base: se calienta y salpica. Nada de cubos de aluminio o galvanizados. Dé dosis pequeñas lejos de los peces, espere, analice de nuevo. Compruebe el amoníaco antes de subir el pH. Guarde bajo llave y etiquetado, lejos de ácidos y niños. En ojos o piel: enjuague 15 minutos con agua y busque ayuda médica. Prefiera carbonato o bicarbonato donde baste.</translation>
    </message>
    <message>
        <source>Potassium in the fish</source>
        <translation type="unfinished">Potasio en el pez</translation>
    </message>
    <message>
        <source>Potassium in the make-up water</source>
        <translation type="unfinished">Potasio en el agua de reposición</translation>
    </message>
    <message>
        <source>Pour acid into water, never the other way, and never near bases. Acid is no routine in aquaponics: look for the cause of a high pH first.</source>
        <translation type="unfinished">Vierta el ácido en el agua, nunca al revés, y nunca cerca de bases. El ácido no es rutina en acuaponía: busque primero la causa de un pH alto.</translation>
    </message>
    <message>
        <source>Power cut</source>
        <translation type="unfinished">Corte de luz</translation>
    </message>
    <message>
        <source>Power of new lamps</source>
        <translation type="unfinished">Potencia de lámparas nuevas</translation>
    </message>
    <message>
        <source>Power of new pumps</source>
        <translation type="unfinished">Potencia de bombas nuevas</translation>
    </message>
    <message>
        <source>Power to spare</source>
        <translation type="unfinished">Potencia disponible</translation>
    </message>
    <message>
        <source>Press the same button again to accept.</source>
        <translation type="unfinished">Pulse el mismo botón otra vez para aceptar.</translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished">Precio</translation>
    </message>
    <message>
        <source>Price of {what}</source>
        <translation type="unfinished">Precio de {what}</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation type="unfinished">Precios</translation>
    </message>
    <message>
        <source>Primed seed</source>
        <translation type="unfinished">Semilla imprimada</translation>
    </message>
    <message>
        <source>Primed seed keeps less long: test it. More seeds are sown.</source>
        <translation type="unfinished">La semilla imprimada dura menos: pruébela. Se siembran más semillas.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished">Imprimir</translation>
    </message>
    <message>
        <source>Print a map of the beds</source>
        <translation type="unfinished">Imprimir un plano de las camas</translation>
    </message>
    <message>
        <source>Print or save as PDF: calendars, task sheets, maps, logs, cards, reports</source>
        <translation type="unfinished">Imprimir o guardar en PDF: calendarios, hojas de tareas, planos, registros, tarjetas, informes</translation>
    </message>
    <message>
        <source>Print the calendar…</source>
        <translation type="unfinished">Imprimir el calendario…</translation>
    </message>
    <message>
        <source>Print the shopping list</source>
        <translation type="unfinished">Imprimir la lista de compras</translation>
    </message>
    <message>
        <source>Printing…</source>
        <translation type="unfinished">Imprimiendo…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished">Imprimir…</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation type="unfinished">Privacidad</translation>
    </message>
    <message>
        <source>Produce records</source>
        <translation type="unfinished">Registros de productos</translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished">Producto</translation>
    </message>
    <message>
        <source>Proposal</source>
        <translation type="unfinished">Propuesta</translation>
    </message>
    <message>
        <source>Protein in the feed</source>
        <translation type="unfinished">Proteína en el alimento</translation>
    </message>
    <message>
        <source>Proving how good a plan can be at most…</source>
        <translation type="unfinished">Probando qué tan bueno puede ser un plan…</translation>
    </message>
    <message>
        <source>Published</source>
        <translation type="unfinished">Publicado</translation>
    </message>
    <message>
        <source>Published cases</source>
        <translation type="unfinished">Casos publicados</translation>
    </message>
    <message>
        <source>Purge</source>
        <translation type="unfinished">Purga</translation>
    </message>
    <message>
        <source>Purge table fish some days in clean water without feed, chill them at once, and check whether selling fish needs a licence.</source>
        <translation type="unfinished">Purgue el pescado de mesa unos días en agua limpia sin alimento, enfríelo enseguida y compruebe si vender pescado exige licencia.</translation>
    </message>
    <message>
        <source>Put mine in</source>
        <translation type="unfinished">Poner lo mío</translation>
    </message>
    <message>
        <source>Put the farm back as it was on a day</source>
        <translation type="unfinished">Dejar la granja como estaba un día</translation>
    </message>
    <message>
        <source>Put the farm's targets on the list</source>
        <translation type="unfinished">Poner las metas de la granja en la lista</translation>
    </message>
    <message>
        <source>Put the rows on the clipboard, for a spreadsheet</source>
        <translation type="unfinished">Poner las filas en el portapapeles, para una hoja de cálculo</translation>
    </message>
    <message>
        <source>Put this away</source>
        <translation type="unfinished">Quitar esto</translation>
    </message>
    <message>
        <source>Puts one dose into the plan; Undo takes it out</source>
        <translation type="unfinished">Pone una dosis en el plan; Deshacer la quita</translation>
    </message>
    <message>
        <source>Q{number} (short for quarter)</source>
        <translation type="unfinished">T{number}</translation>
    </message>
    <message>
        <source>Raft</source>
        <translation type="unfinished">Balsa</translation>
    </message>
    <message>
        <source>Raft tags</source>
        <translation type="unfinished">Tarjetas de balsas</translation>
    </message>
    <message>
        <source>Raft, block or tray</source>
        <translation type="unfinished">Balsa, bloque o bandeja</translation>
    </message>
    <message>
        <source>Rafts</source>
        <translation type="unfinished">Cama flotante</translation>
    </message>
    <message>
        <source>Rafts, a gravel bed or nursery trays that lie together.</source>
        <translation type="unfinished">Balsas, una cama de grava o bandejas de vivero que están juntas.</translation>
    </message>
    <message>
        <source>Rafts, blocks or trays</source>
        <translation type="unfinished">Balsas, bloques o bandejas</translation>
    </message>
    <message>
        <source>Raftweek plans small coupled aquaponic loops: what to sow, move and pick each week, so that the harvest is steady and what the crops take up stays matched to what the fish are fed.</source>
        <translation type="unfinished">Raftweek planea pequeños circuitos acuapónicos: qué sembrar, trasplantar y cosechar cada semana, para que la cosecha sea pareja y lo que toman los cultivos vaya con lo que se da a los peces.</translation>
    </message>
    <message>
        <source>Rain, by month</source>
        <translation type="unfinished">Lluvia, por mes</translation>
    </message>
    <message>
        <source>Ration</source>
        <translation type="unfinished">Ración</translation>
    </message>
    <message>
        <source>Ration set by</source>
        <translation type="unfinished">Ración según</translation>
    </message>
    <message>
        <source>Re&amp;move what is chosen…</source>
        <translation type="unfinished">&amp;Quitar lo elegido…</translation>
    </message>
    <message>
        <source>Read the label: minerals differ from maker to maker.</source>
        <translation type="unfinished">Lea la etiqueta: los minerales cambian según el fabricante.</translation>
    </message>
    <message>
        <source>Reading the cases…</source>
        <translation type="unfinished">Leyendo los casos…</translation>
    </message>
    <message>
        <source>Reading the season…</source>
        <translation type="unfinished">Leyendo la temporada…</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished">Lecturas</translation>
    </message>
    <message>
        <source>Readings and doses, and what the water asks for</source>
        <translation type="unfinished">Lecturas y dosis, y lo que pide el agua</translation>
    </message>
    <message>
        <source>Readings are what you entered. Doses are worked out from them and from the volume of the loop. Bases are caustic: read the caution at the dose, and test again before the next.</source>
        <translation type="unfinished">Las lecturas son las que introdujo. Las dosis se calculan de ellas y del volumen del circuito. Las bases son cáusticas: lea la precaución en la dosis y analice de nuevo antes de la siguiente.</translation>
    </message>
    <message>
        <source>Readings of the water</source>
        <translation type="unfinished">Lecturas del agua</translation>
    </message>
    <message>
        <source>Readings or batches from a table (CSV)</source>
        <translation type="unfinished">Lecturas o lotes desde una tabla (CSV)</translation>
    </message>
    <message>
        <source>Readings, doses and what the water asks for stand here, for each loop of water.</source>
        <translation type="unfinished">Aquí están las lecturas, las dosis y lo que pide el agua de cada circuito.</translation>
    </message>
    <message>
        <source>Ready at {weight}</source>
        <translation type="unfinished">Listos con {weight}</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation type="unfinished">Listo para el</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished">Motivo</translation>
    </message>
    <message>
        <source>Recent farms</source>
        <translation type="unfinished">Granjas recientes</translation>
    </message>
    <message>
        <source>Reckoning the loop with these beds…</source>
        <translation type="unfinished">Calculando el circuito con estas camas…</translation>
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished">Registros</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished">Rehacer</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished">Quitar</translation>
    </message>
    <message>
        <source>Remove all of it</source>
        <translation type="unfinished">Quitar todo</translation>
    </message>
    <message>
        <source>Remove reading of {quantity}, {on}</source>
        <translation type="unfinished">Quitar lectura de {quantity}, {on}</translation>
    </message>
    <message>
        <source>Remove the chosen target</source>
        <translation type="unfinished">Quitar la meta elegida</translation>
    </message>
    <message>
        <source>Remove the target for {crop}</source>
        <translation type="unfinished">Quitar la meta de {crop}</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished">Quitar {name}</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation type="unfinished">Arreglo</translation>
    </message>
    <message>
        <source>Repairs, a season worked out, stocking, what if, orders</source>
        <translation type="unfinished">Arreglos, una temporada calculada, peces, qué pasa si, pedidos</translation>
    </message>
    <message>
        <source>Repeat every</source>
        <translation type="unfinished">Repetir cada</translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished">Informe</translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished">Regresar</translation>
    </message>
    <message>
        <source>Return the liquor of solids batch {solids} on {on}</source>
        <translation type="unfinished">Regresar el líquido del lote de sólidos {solids} el {on}</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation type="unfinished">Hileras de lugares</translation>
    </message>
    <message>
        <source>Rows that cannot be taken</source>
        <translation type="unfinished">Filas que no se pueden tomar</translation>
    </message>
    <message>
        <source>Ruler of weeks</source>
        <translation type="unfinished">Regla de semanas</translation>
    </message>
    <message>
        <source>S (letter of fish stocked)</source>
        <translation type="unfinished">P</translation>
    </message>
    <message>
        <source>S (letter of the band short)</source>
        <translation type="unfinished">F</translation>
    </message>
    <message>
        <source>S (letter of the stage spacing)</source>
        <translation type="unfinished">E</translation>
    </message>
    <message>
        <source>S&amp;earch everything…</source>
        <translation type="unfinished">&amp;Buscar en todo…</translation>
    </message>
    <message>
        <source>S&amp;quare code of the batch</source>
        <translation type="unfinished">Código c&amp;uadrado del lote</translation>
    </message>
    <message>
        <source>S&amp;tock fish…</source>
        <translation type="unfinished">Poner pe&amp;ces…</translation>
    </message>
    <message>
        <source>Sa&amp;ve ink</source>
        <translation type="unfinished">A&amp;horrar tinta</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished">Sal</translation>
    </message>
    <message>
        <source>Salts</source>
        <translation type="unfinished">Sales</translation>
    </message>
    <message>
        <source>Same agai&amp;n next week</source>
        <translation type="unfinished">Otra &amp;vez la próxima semana</translation>
    </message>
    <message>
        <source>Same again next week</source>
        <translation type="unfinished">Otra vez la próxima semana</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">Sábado</translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished">Guardar</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation type="unfinished">Guardar una &amp;copia…</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation type="unfinished">Guardar una copia</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation type="unfinished">Guardar P&amp;DF…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished">Guardar como PDF</translation>
    </message>
    <message>
        <source>Save as a table</source>
        <translation type="unfinished">Guardar como tabla</translation>
    </message>
    <message>
        <source>Save the cases that are shown as a table (CSV) for a spreadsheet</source>
        <translation type="unfinished">Guardar los casos que se muestran como tabla (CSV) para una hoja de cálculo</translation>
    </message>
    <message>
        <source>Say above what a level scoop holds, or write the grams.</source>
        <translation type="unfinished">Diga arriba cuánto cabe en una cuchara rasa, o escriba los gramos.</translation>
    </message>
    <message>
        <source>Say how each figure changes, and why</source>
        <translation type="unfinished">Decir cómo cambia cada cifra, y por qué</translation>
    </message>
    <message>
        <source>Say how good this is, and what that is made of</source>
        <translation type="unfinished">Decir qué tan bueno es esto, y de qué se compone</translation>
    </message>
    <message>
        <source>Say what you want and when; sowings are counted back from there through a season in which a crop does not take the same days all year, and get their places.</source>
        <translation type="unfinished">Diga qué quiere y cuándo; desde ahí se cuentan las siembras hacia atrás, en una temporada en que un cultivo no tarda siempre lo mismo, y reciben su lugar.</translation>
    </message>
    <message>
        <source>Say where the figures of this verdict come from</source>
        <translation type="unfinished">Decir de dónde vienen las cifras de este veredicto</translation>
    </message>
    <message>
        <source>Scenario</source>
        <translation type="unfinished">Escenario</translation>
    </message>
    <message>
        <source>Scenario A</source>
        <translation type="unfinished">Escenario A</translation>
    </message>
    <message>
        <source>Scenarios</source>
        <translation type="unfinished">Escenarios</translation>
    </message>
    <message>
        <source>Scenarios compared</source>
        <translation type="unfinished">Escenarios comparados</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation type="unfinished">Medida</translation>
    </message>
    <message>
        <source>Scoops</source>
        <translation type="unfinished">Medidas</translation>
    </message>
    <message>
        <source>Scouting sheet</source>
        <translation type="unfinished">Hoja de plagas y enfermedades</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation type="unfinished">Tamiz</translation>
    </message>
    <message>
        <source>Search batches</source>
        <translation type="unfinished">Buscar lotes</translation>
    </message>
    <message>
        <source>Search batches: code, crop, bed, month…</source>
        <translation type="unfinished">Buscar lotes: código, cultivo, cama, mes…</translation>
    </message>
    <message>
        <source>Search cases</source>
        <translation type="unfinished">Buscar casos</translation>
    </message>
    <message>
        <source>Search cases: words, source, inputs…</source>
        <translation type="unfinished">Buscar casos: palabras, fuente, datos de entrada…</translation>
    </message>
    <message>
        <source>Search everything</source>
        <translation type="unfinished">Buscar en todo</translation>
    </message>
    <message>
        <source>Search for at most</source>
        <translation type="unfinished">Buscar como máximo</translation>
    </message>
    <message>
        <source>Search the words</source>
        <translation type="unfinished">Buscar palabras</translation>
    </message>
    <message>
        <source>Searching exactly…</source>
        <translation type="unfinished">Buscando con exactitud…</translation>
    </message>
    <message>
        <source>Searching for a better plan…</source>
        <translation type="unfinished">Buscando un plan mejor…</translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished">Temporada</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation type="unfinished">Plan de temporada</translation>
    </message>
    <message>
        <source>Second lan&amp;guage</source>
        <translation type="unfinished">Segundo &amp;idioma</translation>
    </message>
    <message>
        <source>Second language</source>
        <translation type="unfinished">Segundo idioma</translation>
    </message>
    <message>
        <source>Sections of the plan</source>
        <translation type="unfinished">Secciones del plan</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation type="unfinished">Semilla</translation>
    </message>
    <message>
        <source>Seed l&amp;ots</source>
        <translation type="unfinished">L&amp;otes de semilla</translation>
    </message>
    <message>
        <source>Seed lot</source>
        <translation type="unfinished">Lote de semilla</translation>
    </message>
    <message>
        <source>Seed lots</source>
        <translation type="unfinished">Lotes de semilla</translation>
    </message>
    <message>
        <source>Seed lot…</source>
        <translation type="unfinished">Lote de semilla…</translation>
    </message>
    <message>
        <source>Seed of {name}, a thousand</source>
        <translation type="unfinished">Semilla de {name}, el millar</translation>
    </message>
    <message>
        <source>Seeding calendar</source>
        <translation type="unfinished">Calendario de siembra</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation type="unfinished">Semillas</translation>
    </message>
    <message>
        <source>Seeds left</source>
        <translation type="unfinished">Semillas que quedan</translation>
    </message>
    <message>
        <source>Seeds to sow</source>
        <translation type="unfinished">Semillas a sembrar</translation>
    </message>
    <message>
        <source>Select all</source>
        <translation type="unfinished">Elegir todo</translation>
    </message>
    <message>
        <source>Setting the pages…</source>
        <translation type="unfinished">Componiendo las páginas…</translation>
    </message>
    <message>
        <source>Settler</source>
        <translation type="unfinished">Sedimentador</translation>
    </message>
    <message>
        <source>Several people have worked on this farm: each takes back only their own acts, by steps.</source>
        <translation type="unfinished">Varias personas trabajaron en esta granja: cada una deshace solo sus propias acciones, paso a paso.</translation>
    </message>
    <message>
        <source>Share [%]</source>
        <translation type="unfinished">Parte [%]</translation>
    </message>
    <message>
        <source>Share dying each day</source>
        <translation type="unfinished">Parte que muere cada día</translation>
    </message>
    <message>
        <source>Share of the feed's nitrogen lost as gas</source>
        <translation type="unfinished">Parte del nitrógeno del alimento perdida como gas</translation>
    </message>
    <message>
        <source>Share of the liquor that goes back</source>
        <translation type="unfinished">Parte del líquido que regresa</translation>
    </message>
    <message>
        <source>Share of the places of a bed that are held on a day.</source>
        <translation type="unfinished">Parte de las plazas de una cama ocupadas un día.</translation>
    </message>
    <message>
        <source>Share of the solids it takes out</source>
        <translation type="unfinished">Parte de los sólidos que saca</translation>
    </message>
    <message>
        <source>Share of weeks whose feed the beds can use</source>
        <translation type="unfinished">Parte de las semanas cuyo alimento usan las camas</translation>
    </message>
    <message>
        <source>Share that can be sold</source>
        <translation type="unfinished">Parte que se puede vender</translation>
    </message>
    <message>
        <source>Share that germinates</source>
        <translation type="unfinished">Parte que germina</translation>
    </message>
    <message>
        <source>Share that lives in the bed</source>
        <translation type="unfinished">Parte que vive en la cama</translation>
    </message>
    <message>
        <source>Share that lives in the nursery</source>
        <translation type="unfinished">Parte que vive en el vivero</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished">Hoja</translation>
    </message>
    <message>
        <source>Shelf of the catalogue</source>
        <translation type="unfinished">Sección del catálogo</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation type="unfinished">Lista de compras</translation>
    </message>
    <message>
        <source>Short supply</source>
        <translation type="unfinished">Aporte escaso</translation>
    </message>
    <message>
        <source>Show the bands of all elements</source>
        <translation type="unfinished">Mostrar las franjas de todos los elementos</translation>
    </message>
    <message>
        <source>Show the beds as they are today</source>
        <translation type="unfinished">Mostrar las camas como están hoy</translation>
    </message>
    <message>
        <source>Show the week</source>
        <translation type="unfinished">Semana</translation>
    </message>
    <message>
        <source>Shown only</source>
        <translation type="unfinished">Solo mostrados</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation type="unfinished">Lado a lado</translation>
    </message>
    <message>
        <source>Signs and first actions</source>
        <translation type="unfinished">Señales y primeras medidas</translation>
    </message>
    <message>
        <source>Siphon</source>
        <translation type="unfinished">Sifonear</translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished">Sitio</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Tamaño</translation>
    </message>
    <message>
        <source>Size of pellets</source>
        <translation type="unfinished">Tamaño del pellet</translation>
    </message>
    <message>
        <source>Size {number}: {words}</source>
        <translation type="unfinished">Tamaño {number}: {words}</translation>
    </message>
    <message>
        <source>Small growers may be exempt from produce-safety rules. Even so, note date, time, place, crop and lot, and who did it, and keep the records two years or more.</source>
        <translation type="unfinished">Los pequeños productores pueden estar exentos de normas de inocuidad. Aun así, anote fecha, hora, lugar, cultivo y lote, y quién lo hizo, y guarde los registros dos años o más.</translation>
    </message>
    <message>
        <source>Small types bear for months. Book method is the media bed.</source>
        <translation type="unfinished">Los tipos pequeños dan durante meses. El método del libro es la cama de medio.</translation>
    </message>
    <message>
        <source>So much every week</source>
        <translation type="unfinished">Tanto cada semana</translation>
    </message>
    <message>
        <source>So much every week, ready by a day of the week; an order by a day, such as 80 heads by 24 December; or a rhythm of its own. Amounts are what is fit for sale.</source>
        <translation type="unfinished">Tanto cada semana, listo un día de la semana; un pedido para un día, como 80 piezas para el 24 de diciembre; o un ritmo propio. Las cantidades son lo que se puede vender.</translation>
    </message>
    <message>
        <source>So much of a crop wanted each week, from one date to another.</source>
        <translation type="unfinished">Tanto de un cultivo cada semana, de una fecha a otra.</translation>
    </message>
    <message>
        <source>Sol&amp;ids batches</source>
        <translation type="unfinished">Lotes de sól&amp;idos</translation>
    </message>
    <message>
        <source>Sol&amp;ids batch…</source>
        <translation type="unfinished">Lote de só&amp;lidos…</translation>
    </message>
    <message>
        <source>Solids</source>
        <translation type="unfinished">Sólidos</translation>
    </message>
    <message>
        <source>Solids and mineralised liquor</source>
        <translation type="unfinished">Sólidos y líquido mineralizado</translation>
    </message>
    <message>
        <source>Solids and mineraliser card</source>
        <translation type="unfinished">Tarjeta de sólidos y mineralizador</translation>
    </message>
    <message>
        <source>Solids batch</source>
        <translation type="unfinished">Lote de sólidos</translation>
    </message>
    <message>
        <source>Solids batches of {loop}</source>
        <translation type="unfinished">Lotes de sólidos de {loop}</translation>
    </message>
    <message>
        <source>Solids batch…</source>
        <translation type="unfinished">Sólidos…</translation>
    </message>
    <message>
        <source>Solids kept apart until their liquor goes back</source>
        <translation type="unfinished">Sólidos apartados hasta que su líquido regresa</translation>
    </message>
    <message>
        <source>Solids under the rafts siphoned every</source>
        <translation type="unfinished">Sólidos bajo las balsas sifoneados cada</translation>
    </message>
    <message>
        <source>Some fish and plants may not be kept, moved or sold without a permit: tilapia in many places, water spinach in some. Ask the fisheries or plant office before buying. Never release fish or eggs; screen outlets and waste water.</source>
        <translation type="unfinished">Algunos peces y plantas no pueden tenerse, trasladarse o venderse sin permiso: la tilapia en muchos lugares, la espinaca de agua en algunos. Pregunte a la oficina de pesca o de plantas antes de comprar. Nunca suelte peces ni huevos; ponga rejillas en las salidas y el agua residual.</translation>
    </message>
    <message>
        <source>Somebody else changed the same thing meanwhile:

{what}

Theirs stands. Put yours in its place? Both can be found in the history.</source>
        <translation type="unfinished">Otra persona cambió lo mismo mientras tanto:

{what}

Queda lo suyo. ¿Poner lo de usted en su lugar? Ambos están en el historial.</translation>
    </message>
    <message>
        <source>Something went wrong in the program</source>
        <translation type="unfinished">Algo falló en el programa</translation>
    </message>
    <message>
        <source>Something worked out that changes nothing until you adopt it, in one act.</source>
        <translation type="unfinished">Algo calculado que no cambia nada hasta que usted lo adopta, en una sola acción.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Fuente</translation>
    </message>
    <message>
        <source>Sow</source>
        <translation type="unfinished">Sembrar</translation>
    </message>
    <message>
        <source>Sow a batch…</source>
        <translation type="unfinished">Sembrar un lote…</translation>
    </message>
    <message>
        <source>Sow a crop later or earlier</source>
        <translation type="unfinished">Sembrar un cultivo antes o después</translation>
    </message>
    <message>
        <source>Sow again</source>
        <translation type="unfinished">Sembrar otra vez</translation>
    </message>
    <message>
        <source>Sow again what was copied</source>
        <translation type="unfinished">Sembrar otra vez lo copiado</translation>
    </message>
    <message>
        <source>Sow from</source>
        <translation type="unfinished">Sembrar desde</translation>
    </message>
    <message>
        <source>Sow in multiples of</source>
        <translation type="unfinished">Sembrar en múltiplos de</translation>
    </message>
    <message>
        <source>Sow more or fewer of a crop</source>
        <translation type="unfinished">Sembrar más o menos de un cultivo</translation>
    </message>
    <message>
        <source>Sow on</source>
        <translation type="unfinished">Sembrar el</translation>
    </message>
    <message>
        <source>Sow so many weeks later</source>
        <translation type="unfinished">Sembrar tantas semanas después</translation>
    </message>
    <message>
        <source>Sow so much</source>
        <translation type="unfinished">Sembrar esta cantidad</translation>
    </message>
    <message>
        <source>Sow the chosen batches once more</source>
        <translation type="unfinished">Sembrar los lotes elegidos una vez más</translation>
    </message>
    <message>
        <source>Sow this week</source>
        <translation type="unfinished">Sembrar esta semana</translation>
    </message>
    <message>
        <source>Sow what has to wait so much later</source>
        <translation type="unfinished">Sembrar más tarde lo que tiene que esperar</translation>
    </message>
    <message>
        <source>Sow {batches} {weeks} earlier</source>
        <translation type="unfinished">Sembrar {batches} {weeks} antes</translation>
    </message>
    <message>
        <source>Sow {batches} {weeks} later</source>
        <translation type="unfinished">Sembrar {batches} {weeks} después</translation>
    </message>
    <message>
        <source>Sow {codes} again</source>
        <translation type="unfinished">Sembrar {codes} otra vez</translation>
    </message>
    <message>
        <source>Sow {code}</source>
        <translation type="unfinished">Sembrar {code}</translation>
    </message>
    <message>
        <source>Sow {many}: {code}</source>
        <translation type="unfinished">Sembrar {many}: {code}</translation>
    </message>
    <message>
        <source>Sow {plants} plants fewer of {batches}</source>
        <translation type="unfinished">Sembrar {plants} plantas menos de {batches}</translation>
    </message>
    <message>
        <source>Sow, {days} d late: {code}</source>
        <translation type="unfinished">Sembrar, {days} d tarde: {code}</translation>
    </message>
    <message>
        <source>Sowings</source>
        <translation type="unfinished">Siembras</translation>
    </message>
    <message>
        <source>Sowings one after the other, so that there is something to pick every week.</source>
        <translation type="unfinished">Siembras una tras otra, para que haya qué cosechar cada semana.</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation type="unfinished">Sembrado</translation>
    </message>
    <message>
        <source>Sown again: {codes}</source>
        <translation type="unfinished">Sembrado otra vez: {codes}</translation>
    </message>
    <message>
        <source>Sown in</source>
        <translation type="unfinished">Sembrado en</translation>
    </message>
    <message>
        <source>Sown one seed a plug. Raft in warm water runs faster than field figures. Bolts above about 24 °C.</source>
        <translation type="unfinished">Una semilla por taco. En balsa con agua templada va más rápido que las cifras de campo. Espiga sobre unos 24 °C.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished">Espaciar</translation>
    </message>
    <message>
        <source>Space takes up the plants of a hole, arrow keys choose where to, Enter puts them there, Escape leaves them.</source>
        <translation type="unfinished">Espacio recoge las plantas de un hueco, las flechas eligen adónde, Intro las pone allí, Escape las deja.</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation type="unfinished">Español</translation>
    </message>
    <message>
        <source>Species law and escapes</source>
        <translation type="unfinished">Ley de especies y fugas</translation>
    </message>
    <message>
        <source>Spines wound; sensitive to nitrite, salt protects.</source>
        <translation type="unfinished">Las espinas hieren; sensible al nitrito, la sal protege.</translation>
    </message>
    <message>
        <source>Spl&amp;it the chosen batch…</source>
        <translation type="unfinished">Di&amp;vidir el lote elegido…</translation>
    </message>
    <message>
        <source>Split</source>
        <translation type="unfinished">Dividir</translation>
    </message>
    <message>
        <source>Split {code}</source>
        <translation type="unfinished">Dividir {code}</translation>
    </message>
    <message>
        <source>Split {code} from {batch}</source>
        <translation type="unfinished">Dividir {code} de {batch}</translation>
    </message>
    <message>
        <source>Split…</source>
        <translation type="unfinished">Dividir…</translation>
    </message>
    <message>
        <source>Sprays and fish</source>
        <translation type="unfinished">Fumigar y los peces</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished">Etapa</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished">Etapas</translation>
    </message>
    <message>
        <source>Stages: {stages}.</source>
        <translation type="unfinished">Etapas: {stages}.</translation>
    </message>
    <message>
        <source>Standing there on {day}</source>
        <translation type="unfinished">Hay ahí el {day}</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation type="unfinished">Está en</translation>
    </message>
    <message>
        <source>Start-up</source>
        <translation type="unfinished">Arranque</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Estado</translation>
    </message>
    <message>
        <source>Static filter</source>
        <translation type="unfinished">Filtro estático</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished">+ Peces</translation>
    </message>
    <message>
        <source>Stock [mg/L]</source>
        <translation type="unfinished">Reserva [mg/L]</translation>
    </message>
    <message>
        <source>Stock a group and its growth, feed by week and meal, density and harvest stand here. Fish need a tank: add one in the menu Set-up if there is none.</source>
        <translation type="unfinished">Ponga un grupo y aquí verá su crecimiento, alimento por semana y comida, densidad y cosecha. Los peces necesitan un tanque: si no hay, agréguelo en el menú Instalaciones.</translation>
    </message>
    <message>
        <source>Stock fish…</source>
        <translation type="unfinished">Poner peces…</translation>
    </message>
    <message>
        <source>Stock in this way; one undo takes it back</source>
        <translation type="unfinished">Poner peces así; un deshacer lo quita</translation>
    </message>
    <message>
        <source>Stock in {groups}, {share}</source>
        <translation type="unfinished">Poner en {groups}, {share}</translation>
    </message>
    <message>
        <source>Stock on</source>
        <translation type="unfinished">Poner el</translation>
    </message>
    <message>
        <source>Stock {fish} fish fewer in {group}</source>
        <translation type="unfinished">Poner {fish} peces menos en {group}</translation>
    </message>
    <message>
        <source>Stock {fish} more fish like {like} on {on}</source>
        <translation type="unfinished">Poner {fish} peces más como {like} el {on}</translation>
    </message>
    <message>
        <source>Stock {group} {weeks} earlier</source>
        <translation type="unfinished">Poner {group} {weeks} antes</translation>
    </message>
    <message>
        <source>Stock {group} {weeks} later</source>
        <translation type="unfinished">Poner {group} {weeks} después</translation>
    </message>
    <message>
        <source>Stock {name}</source>
        <translation type="unfinished">Poner {name}</translation>
    </message>
    <message>
        <source>Stocked</source>
        <translation type="unfinished">Puestos</translation>
    </message>
    <message>
        <source>Stocked on</source>
        <translation type="unfinished">Puestos el</translation>
    </message>
    <message>
        <source>Stocking density</source>
        <translation type="unfinished">Densidad de peces</translation>
    </message>
    <message>
        <source>Stocking limit</source>
        <translation type="unfinished">Límite de densidad</translation>
    </message>
    <message>
        <source>Stocking limit in a small tank</source>
        <translation type="unfinished">Límite de población en un tanque pequeño</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished">Detener</translation>
    </message>
    <message>
        <source>Stop ({percent} %)</source>
        <translation type="unfinished">Parar ({percent} %)</translation>
    </message>
    <message>
        <source>Stop feeding. Run battery air to the fish tank before anything else. Leave filters closed. Nobody can say to the minute how long fish will last: act at once.</source>
        <translation type="unfinished">Deje de alimentar. Dé aire con batería al tanque de peces antes que nada. Deje los filtros cerrados. Nadie puede decir al minuto cuánto durarán los peces: actúe de inmediato.</translation>
    </message>
    <message>
        <source>Stop working out how sure it is</source>
        <translation type="unfinished">Dejar de calcular cuán seguro es</translation>
    </message>
    <message>
        <source>Stop, keep the best</source>
        <translation type="unfinished">Detener, guardar lo mejor</translation>
    </message>
    <message>
        <source>Stopped before a repair was found.</source>
        <translation type="unfinished">Detenido antes de hallar un arreglo.</translation>
    </message>
    <message>
        <source>Stopped before there was a plan. Nothing of the farm has changed.</source>
        <translation type="unfinished">Detenido antes de tener un plan. Nada de la granja cambió.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation type="unfinished">Detenido.</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the farm has changed.</source>
        <translation type="unfinished">Detenido. Nada de la granja cambió.</translation>
    </message>
    <message>
        <source>Stopped: nothing was kept.</source>
        <translation type="unfinished">Detenido: no se guardó nada.</translation>
    </message>
    <message>
        <source>Subjects</source>
        <translation type="unfinished">Temas</translation>
    </message>
    <message>
        <source>Succession</source>
        <translation type="unfinished">Siembra escalonada</translation>
    </message>
    <message>
        <source>Successions</source>
        <translation type="unfinished">Siembra escalonada</translation>
    </message>
    <message>
        <source>Sum of warmth to germinate</source>
        <translation type="unfinished">Suma de calor para germinar</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">Domingo</translation>
    </message>
    <message>
        <source>Sunshine outside, by month</source>
        <translation type="unfinished">Sol afuera, por mes</translation>
    </message>
    <message>
        <source>Supplement</source>
        <translation type="unfinished">Suplemento</translation>
    </message>
    <message>
        <source>Supplements</source>
        <translation type="unfinished">Suplementos</translation>
    </message>
    <message>
        <source>Supplied [g]</source>
        <translation type="unfinished">Aportado [g]</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished">Proveedor</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished">Oferta</translation>
    </message>
    <message>
        <source>Supply and demand by week</source>
        <translation type="unfinished">Aporte y demanda por semana</translation>
    </message>
    <message>
        <source>Supply and demand of each element are weighed here, week by week.</source>
        <translation type="unfinished">Aquí se pesan el aporte y la demanda de cada elemento, semana por semana.</translation>
    </message>
    <message>
        <source>Supply and demand of each element, and what helps</source>
        <translation type="unfinished">Aporte y demanda de cada elemento, y qué ayuda</translation>
    </message>
    <message>
        <source>Supply left idle</source>
        <translation type="unfinished">Aporte sin usar</translation>
    </message>
    <message>
        <source>Surface of the media</source>
        <translation type="unfinished">Superficie del medio filtrante</translation>
    </message>
    <message>
        <source>Surface on which the bacteria sit that turn ammonia into nitrate.</source>
        <translation type="unfinished">Superficie donde viven las bacterias que convierten el amoniaco en nitrato.</translation>
    </message>
    <message>
        <source>System water and food</source>
        <translation type="unfinished">Agua del sistema y alimentos</translation>
    </message>
    <message>
        <source>T (letter of the band thin)</source>
        <translation type="unfinished">J</translation>
    </message>
    <message>
        <source>TAN</source>
        <translation type="unfinished">TAN</translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished">Tabla</translation>
    </message>
    <message>
        <source>Table of batches</source>
        <translation type="unfinished">Tabla de lotes</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished">Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished">Tablas (*.csv)</translation>
    </message>
    <message>
        <source>Take in entries</source>
        <translation type="unfinished">Incorporar entradas</translation>
    </message>
    <message>
        <source>Take in entries from a text, telling first what moves</source>
        <translation type="unfinished">Incorporar entradas de un texto, diciendo antes qué se mueve</translation>
    </message>
    <message>
        <source>Take in entries of {name}</source>
        <translation type="unfinished">Incorporar entradas de {name}</translation>
    </message>
    <message>
        <source>Take in…</source>
        <translation type="unfinished">Incorporar…</translation>
    </message>
    <message>
        <source>Take note</source>
        <translation type="unfinished">Atención</translation>
    </message>
    <message>
        <source>Take the chosen one off the list</source>
        <translation type="unfinished">Quitar de la lista lo elegido</translation>
    </message>
    <message>
        <source>Take the targets</source>
        <translation type="unfinished">Tomar las metas</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation type="unfinished">Incorporarlas</translation>
    </message>
    <message>
        <source>Take up {field} of {crop} from the log</source>
        <translation type="unfinished">Tomar {field} de {crop} del registro</translation>
    </message>
    <message>
        <source>Taken back: {title}</source>
        <translation type="unfinished">Deshecho: {title}</translation>
    </message>
    <message>
        <source>Taken up by {many} of {all} batches. {why}</source>
        <translation type="unfinished">Lo adoptaron {many} de {all} lotes. {why}</translation>
    </message>
    <message>
        <source>Takes heat a little better than butterhead.</source>
        <translation type="unfinished">Aguanta el calor algo mejor que la mantecosa.</translation>
    </message>
    <message>
        <source>Takes {count} acts back; they can be done again until you do something new.</source>
        <translation type="unfinished">Deshace {count} acciones; se pueden rehacer hasta que haga algo nuevo.</translation>
    </message>
    <message>
        <source>Taking batch after batch…</source>
        <translation type="unfinished">Tomando lote por lote…</translation>
    </message>
    <message>
        <source>Tall, shades its neighbours</source>
        <translation type="unfinished">Alto, da sombra a sus vecinos</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation type="unfinished">Tanque</translation>
    </message>
    <message>
        <source>Tank [kg/m³]</source>
        <translation type="unfinished">Tanque [kg/m³]</translation>
    </message>
    <message>
        <source>Tank, fish, beds and what you want each week. A first plan is drafted from it at once.</source>
        <translation type="unfinished">Tanque, peces, camas y lo que quiere cada semana. Con eso se hace enseguida un primer plan.</translation>
    </message>
    <message>
        <source>Tank, {litres} L</source>
        <translation type="unfinished">Estanque, {litres} L</translation>
    </message>
    <message>
        <source>Task</source>
        <translation type="unfinished">Tarea</translation>
    </message>
    <message>
        <source>Tasks as a calendar file, by who does them, with reminders</source>
        <translation type="unfinished">Tareas como archivo de calendario, según quién las hace, con avisos</translation>
    </message>
    <message>
        <source>Tell what the words mean of the part that has the keyboard; hovering tells it too</source>
        <translation type="unfinished">Decir qué significan las palabras de la parte que tiene el teclado; al pasar el ratón también se dice</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished">Temperatura</translation>
    </message>
    <message>
        <source>Test the alkalinity first.</source>
        <translation type="unfinished">Analice primero la alcalinidad.</translation>
    </message>
    <message>
        <source>Test the ammonia first.</source>
        <translation type="unfinished">Analice primero el amoníaco.</translation>
    </message>
    <message>
        <source>Test the pH first.</source>
        <translation type="unfinished">Analice primero el pH.</translation>
    </message>
    <message>
        <source>Tests of {loop}</source>
        <translation type="unfinished">Análisis de {loop}</translation>
    </message>
    <message>
        <source>Tests overdue</source>
        <translation type="unfinished">Análisis atrasados</translation>
    </message>
    <message>
        <source>Text (*.{suffix})</source>
        <translation type="unfinished">Texto (*.{suffix})</translation>
    </message>
    <message>
        <source>That cannot be done here ({code}).</source>
        <translation type="unfinished">Eso no se puede hacer aquí ({code}).</translation>
    </message>
    <message>
        <source>That is the same crop; choose another one.</source>
        <translation type="unfinished">Es el mismo cultivo; elija otro.</translation>
    </message>
    <message>
        <source>The answer names the formula and everything that went in, with its source; Enter goes into a part, Alt with left leads back. A number you typed says what it was entered for, its limits, and when it was last changed.</source>
        <translation type="unfinished">La respuesta nombra la fórmula y todo lo que entró en ella, con su fuente; Intro entra en una parte, Alt con la flecha izquierda vuelve atrás. Un número que usted escribió dice para qué se introdujo, sus límites y cuándo se cambió por última vez.</translation>
    </message>
    <message>
        <source>The arithmetic, checked against print</source>
        <translation type="unfinished">Los cálculos, comparados con lo publicado</translation>
    </message>
    <message>
        <source>The batch cannot go here.</source>
        <translation type="unfinished">El lote no puede ir aquí.</translation>
    </message>
    <message>
        <source>The batch is no longer there.</source>
        <translation type="unfinished">El lote ya no está.</translation>
    </message>
    <message>
        <source>The days are worked out from the sowing, the catalogue and the season; nothing is typed twice.</source>
        <translation type="unfinished">Los días se calculan de la siembra, el catálogo y la estación; nada se escribe dos veces.</translation>
    </message>
    <message>
        <source>The element of which least is supplied for what is wanted.</source>
        <translation type="unfinished">El elemento que menos se aporta frente a lo que se pide.</translation>
    </message>
    <message>
        <source>The farm can be reached again.</source>
        <translation type="unfinished">Ya se llega de nuevo a la granja.</translation>
    </message>
    <message>
        <source>The farm has changed since these repairs were tried. Choose the week again.</source>
        <translation type="unfinished">La granja cambió desde que se probaron estos arreglos. Elija la semana de nuevo.</translation>
    </message>
    <message>
        <source>The farm has changed since this was worked out. Work it out again to adopt it.</source>
        <translation type="unfinished">La granja cambió desde que se calculó esto. Calcule de nuevo para adoptarlo.</translation>
    </message>
    <message>
        <source>The farm has changed since. Ask again.</source>
        <translation type="unfinished">La granja cambió desde entonces. Pregunte de nuevo.</translation>
    </message>
    <message>
        <source>The farm has changed so that these can no longer be made of it: {names}. Drop them.</source>
        <translation type="unfinished">La granja cambió y estos ya no se le pueden aplicar: {names}. Descártelos.</translation>
    </message>
    <message>
        <source>The farm has changed so that this scenario no longer fits. Drop it.</source>
        <translation type="unfinished">La granja cambió y este escenario ya no encaja. Descártelo.</translation>
    </message>
    <message>
        <source>The farm is as it was in {name}.</source>
        <translation type="unfinished">La granja está como en {name}.</translation>
    </message>
    <message>
        <source>The farm was written to {name}.</source>
        <translation type="unfinished">La granja se escribió en {name}.</translation>
    </message>
    <message>
        <source>The farm with some changes, held beside it to compare; the farm stays as it is.</source>
        <translation type="unfinished">La granja con algunos cambios, puesta al lado para comparar; la granja queda como está.</translation>
    </message>
    <message>
        <source>The gentlest potassium base.</source>
        <translation type="unfinished">La base de potasio más suave.</translation>
    </message>
    <message>
        <source>The language changes when the program is started again.</source>
        <translation type="unfinished">El idioma cambia al iniciar de nuevo el programa.</translation>
    </message>
    <message>
        <source>The last act moved no dates.</source>
        <translation type="unfinished">La última acción no movió ninguna fecha.</translation>
    </message>
    <message>
        <source>The law</source>
        <translation type="unfinished">La ley</translation>
    </message>
    <message>
        <source>The list is empty. Add what you want, or take the farm's targets.</source>
        <translation type="unfinished">La lista está vacía. Agregue lo que quiere, o tome las metas de la granja.</translation>
    </message>
    <message>
        <source>The loop as it is typed</source>
        <translation type="unfinished">El circuito tal como se escribe</translation>
    </message>
    <message>
        <source>The most to give; never more than is eaten</source>
        <translation type="unfinished">Lo máximo que se da; nunca más de lo que comen</translation>
    </message>
    <message>
        <source>The numbers are planning aids. Test the water, look at the fish. No yield is promised, and nothing here is medical, legal or engineering advice.</source>
        <translation type="unfinished">Los números son una ayuda para planear. Analice el agua, mire los peces. No se promete ningún rendimiento, y nada aquí es consejo médico, legal ni de ingeniería.</translation>
    </message>
    <message>
        <source>The pages are not set. Change what is wished, or close.</source>
        <translation type="unfinished">Las páginas no están compuestas. Cambia lo que pides, o cierra.</translation>
    </message>
    <message>
        <source>The phone &amp;rings</source>
        <translation type="unfinished">El teléfono &amp;suena</translation>
    </message>
    <message>
        <source>The plan ended on {day}: nothing is foreseen after it, and no feed or dose of it holds any more. Give it more weeks, or a later day to begin on, in Set-up, Plan and name.</source>
        <translation type="unfinished">El plan terminó el {day}: nada se prevé después, y ya no vale ningún alimento ni dosis suya. Dele más semanas, o un día de comienzo posterior, en Instalaciones, Plan y nombre.</translation>
    </message>
    <message>
        <source>The plan is over</source>
        <translation type="unfinished">El plan ha terminado</translation>
    </message>
    <message>
        <source>The planted area fits the feed, but something is flagged. This would repair it first:</source>
        <translation type="unfinished">El área plantada va con el alimento, pero algo está marcado. Esto lo arreglaría primero:</translation>
    </message>
    <message>
        <source>The plants cannot go here.</source>
        <translation type="unfinished">Las plantas no pueden ir aquí.</translation>
    </message>
    <message>
        <source>The poisonous part of ammonia; it grows with pH and warmth.</source>
        <translation type="unfinished">La parte venenosa del amoniaco; crece con el pH y el calor.</translation>
    </message>
    <message>
        <source>The program has no means to work it out; what is lacking is said</source>
        <translation type="unfinished">El programa no tiene cómo calcularlo; se dice qué falta</translation>
    </message>
    <message>
        <source>The proposal against what is wanted</source>
        <translation type="unfinished">La propuesta frente a lo que se quiere</translation>
    </message>
    <message>
        <source>The proposal in tables</source>
        <translation type="unfinished">La propuesta en tablas</translation>
    </message>
    <message>
        <source>The publication is silent on something that counts; shown, but judges nothing</source>
        <translation type="unfinished">La publicación calla algo que cuenta; se muestra, pero no decide nada</translation>
    </message>
    <message>
        <source>The published figure is held from memory; shown, but judges nothing</source>
        <translation type="unfinished">La cifra publicada se tiene de memoria; se muestra, pero no decide nada</translation>
    </message>
    <message>
        <source>The readings of each loop with what is foreseen, every dose that was given, is due or is asked for, and what the water asks for.</source>
        <translation type="unfinished">Las lecturas de cada circuito con lo previsto, cada dosis dada, pendiente o pedida, y lo que pide el agua.</translation>
    </message>
    <message>
        <source>The rhythm is that of</source>
        <translation type="unfinished">El ritmo es el de</translation>
    </message>
    <message>
        <source>The rows are</source>
        <translation type="unfinished">Las filas son</translation>
    </message>
    <message>
        <source>The rows were not looked at to the end. Change what a column is, or cancel.</source>
        <translation type="unfinished">Las filas no se miraron hasta el final. Cambia qué es una columna, o cancela.</translation>
    </message>
    <message>
        <source>The rule falls on no day between {a} and {b}.</source>
        <translation type="unfinished">La regla no cae en ningún día entre {a} y {b}.</translation>
    </message>
    <message>
        <source>The same amount every week</source>
        <translation type="unfinished">La misma cantidad cada semana</translation>
    </message>
    <message>
        <source>The same as a table</source>
        <translation type="unfinished">Lo mismo en tabla</translation>
    </message>
    <message>
        <source>The same plants go on in the same places, with the days and the yield that the book has for the other crop. Where it does not grow in that kind of bed, the batches are counted as without places.</source>
        <translation type="unfinished">Las mismas plantas siguen en los mismos lugares, con los días y el rendimiento que el libro tiene para el otro cultivo. Donde no crece en esa clase de cama, los lotes cuentan como sin lugar.</translation>
    </message>
    <message>
        <source>The sample farm</source>
        <translation type="unfinished">La granja de muestra</translation>
    </message>
    <message>
        <source>The sample farm, a new one, or one that is kept already</source>
        <translation type="unfinished">La granja de muestra, una nueva o una ya guardada</translation>
    </message>
    <message>
        <source>The scale of acid and base: 7 is neutral, each step is ten times more.</source>
        <translation type="unfinished">La escala de ácido y base: 7 es neutro, cada paso es diez veces más.</translation>
    </message>
    <message>
        <source>The season plan is adopted. Undo brings the old one back.</source>
        <translation type="unfinished">El plan de temporada está adoptado. Deshacer trae el anterior.</translation>
    </message>
    <message>
        <source>The seeding calendar, as it is printed</source>
        <translation type="unfinished">El calendario de siembra, como se imprime</translation>
    </message>
    <message>
        <source>The source names the publication and how sure the figure is. Your own values belong to this farm only.</source>
        <translation type="unfinished">La fuente nombra la publicación y cuán segura es la cifra. Sus propios valores pertenecen solo a esta granja.</translation>
    </message>
    <message>
        <source>The sowings are in the plan. Undo takes them out again.</source>
        <translation type="unfinished">Las siembras están en el plan. Deshacer las quita.</translation>
    </message>
    <message>
        <source>The sowings for your list are shown here. Nothing changes until you adopt them.</source>
        <translation type="unfinished">Aquí se muestran las siembras para su lista. Nada cambia hasta que las adopte.</translation>
    </message>
    <message>
        <source>The step between ammonia and nitrate; it harms fish.</source>
        <translation type="unfinished">El paso entre amoniaco y nitrato; daña a los peces.</translation>
    </message>
    <message>
        <source>The tab says how many places are missing, on which day it is tightest, and which batches would make room. As many plants as there is room for are sown all the same.</source>
        <translation type="unfinished">La pestaña dice cuántos lugares faltan, qué día está más apretado y qué lotes harían sitio. Aun así se siembran tantas plantas como quepan.</translation>
    </message>
    <message>
        <source>The tanks have no room for any of these ways.</source>
        <translation type="unfinished">En los tanques no cabe ninguna de estas formas.</translation>
    </message>
    <message>
        <source>The water's reserve against acid; bases refill it, nitrification uses it up.</source>
        <translation type="unfinished">La reserva del agua contra el ácido; las bases la reponen, la nitrificación la gasta.</translation>
    </message>
    <message>
        <source>The weeks of one element as a table</source>
        <translation type="unfinished">Las semanas de un elemento como tabla</translation>
    </message>
    <message>
        <source>The whole plan</source>
        <translation type="unfinished">Todo el plan</translation>
    </message>
    <message>
        <source>Then</source>
        <translation type="unfinished">Entonces</translation>
    </message>
    <message>
        <source>Then search exactly</source>
        <translation type="unfinished">Luego buscar con exactitud</translation>
    </message>
    <message>
        <source>There are no entries of your own to write yet.</source>
        <translation type="unfinished">Aún no hay entradas propias que escribir.</translation>
    </message>
    <message>
        <source>There is no backup yet; one is made when the farm is opened or closed.</source>
        <translation type="unfinished">Aún no hay respaldo; se hace uno al abrir o cerrar la granja.</translation>
    </message>
    <message>
        <source>There is no batch “{code}”.</source>
        <translation type="unfinished">No hay ningún lote “{code}”.</translation>
    </message>
    <message>
        <source>There is no bed to grow in, so nothing can be planned.</source>
        <translation type="unfinished">No hay cama para cultivar; no se puede planear nada.</translation>
    </message>
    <message>
        <source>There is no bed yet. Add one in the menu Set-up.</source>
        <translation type="unfinished">Aún no hay cama. Agregue una en el menú Instalaciones.</translation>
    </message>
    <message>
        <source>There is no loop of water yet. Add one in the menu Set-up.</source>
        <translation type="unfinished">Aún no hay circuito de agua. Agregue uno en el menú Instalaciones.</translation>
    </message>
    <message>
        <source>This day is still to come.</source>
        <translation type="unfinished">Este día aún no ha llegado.</translation>
    </message>
    <message>
        <source>This entry was replaced already; correct the one that replaced it.</source>
        <translation type="unfinished">Este apunte ya fue reemplazado; corrija el que lo reemplazó.</translation>
    </message>
    <message>
        <source>This farm names what the catalogue does not have: {names}. Mend its text form, then open that.</source>
        <translation type="unfinished">Esta granja nombra lo que el catálogo no tiene: {names}. Corrija su forma de texto y ábrala.</translation>
    </message>
    <message>
        <source>This farm was not closed properly last time, or is open elsewhere. Everything is kept up to “{title}” of {time}.</source>
        <translation type="unfinished">Esta granja no se cerró bien la última vez, o está abierta en otra parte. Todo está guardado hasta “{title}” de las {time}.</translation>
    </message>
    <message>
        <source>This farm was not closed properly last time, or is open elsewhere. Nothing is lost.</source>
        <translation type="unfinished">Esta granja no se cerró bien la última vez, o está abierta en otra parte. No se perdió nada.</translation>
    </message>
    <message>
        <source>This file is older than when it was last worked on here ({day}): another program may have put an older copy in its place. Farm, Go back to a backup, has the later ones.</source>
        <translation type="unfinished">Este archivo es más viejo que el último trabajo hecho aquí ({day}): otro programa pudo poner una copia vieja en su lugar. En Granja, Volver a un respaldo, están los más nuevos.</translation>
    </message>
    <message>
        <source>This is a fault of the program, not of your farm. Every act was kept when you did it, so nothing is lost. You can go on; if it comes again, close the window and open it anew. Please send the report below to whoever looks after the program.</source>
        <translation type="unfinished">Es una falla del programa, no de su granja. Cada acción se guardó al hacerla; no se perdió nada. Puede seguir; si vuelve a pasar, cierre la ventana y ábrala de nuevo. Envíe el informe de abajo a quien cuida el programa.</translation>
    </message>
    <message>
        <source>This is taken out or let go along with it: {names}. Undo brings all of it back.</source>
        <translation type="unfinished">Esto se quita o se suelta junto con ello: {names}. Deshacer lo trae todo de vuelta.</translation>
    </message>
    <message>
        <source>This is the sample farm: look around, and change what you like.</source>
        <translation type="unfinished">Esta es la granja de muestra: mire y cambie lo que quiera.</translation>
    </message>
    <message>
        <source>This line has no task; log it in the line above instead.</source>
        <translation type="unfinished">Esta línea no tiene tarea; anótela en la línea de arriba.</translation>
    </message>
    <message>
        <source>This page</source>
        <translation type="unfinished">Esta página</translation>
    </message>
    <message>
        <source>This week lies outside the plan.</source>
        <translation type="unfinished">Esta semana queda fuera del plan.</translation>
    </message>
    <message>
        <source>Three letters for batch codes</source>
        <translation type="unfinished">Tres letras para códigos de lote</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">Jueves</translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished">Hora</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation type="unfinished">Hora del día</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished">Zona horaria</translation>
    </message>
    <message>
        <source>Tip-burn</source>
        <translation type="unfinished">Quemado de puntas</translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished">Hasta</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished">Comprar</translation>
    </message>
    <message>
        <source>To know</source>
        <translation type="unfinished">A saber</translation>
    </message>
    <message>
        <source>To know ({count})</source>
        <translation type="unfinished">A saber ({count})</translation>
    </message>
    <message>
        <source>To the plan</source>
        <translation type="unfinished">Al plan</translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished">Hoy</translation>
    </message>
    <message>
        <source>Today's plan</source>
        <translation type="unfinished">Plan de hoy</translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished">Juntos</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation type="unfinished">Tolerancia</translation>
    </message>
    <message>
        <source>Too cold to germinate below</source>
        <translation type="unfinished">Demasiado frío para germinar por debajo de</translation>
    </message>
    <message>
        <source>Too cold to grow below</source>
        <translation type="unfinished">Demasiado frío para crecer por debajo de</translation>
    </message>
    <message>
        <source>Too warm to germinate above</source>
        <translation type="unfinished">Demasiado calor para germinar por encima de</translation>
    </message>
    <message>
        <source>Too warm to grow above</source>
        <translation type="unfinished">Demasiado calor para crecer por encima de</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished">Herramientas</translation>
    </message>
    <message>
        <source>Top-up</source>
        <translation type="unfinished">Relleno</translation>
    </message>
    <message>
        <source>Total ammonia nitrogen [mg/L]</source>
        <translation type="unfinished">Nitrógeno amoniacal total [mg/L]</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation type="unfinished">Seguimiento</translation>
    </message>
    <message>
        <source>Trace…</source>
        <translation type="unfinished">Seguimiento…</translation>
    </message>
    <message>
        <source>Trained up strings; flowers vibrated in still air. Planted after the loop has run for some months. Roots clog gravel.</source>
        <translation type="unfinished">Se guía por cuerdas; las flores se sacuden si no hay aire. Se planta cuando el circuito lleva unos meses. Las raíces tapan la grava.</translation>
    </message>
    <message>
        <source>Trained up; picked every other day or it stops.</source>
        <translation type="unfinished">Se guía hacia arriba; se cosecha un día sí y otro no, o deja de dar.</translation>
    </message>
    <message>
        <source>Tray and pot labels</source>
        <translation type="unfinished">Etiquetas de bandejas y macetas</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation type="unfinished">Bandejas</translation>
    </message>
    <message>
        <source>Treat sick fish in a separate tank and let none of that water reach plants or filter. Use only what is approved for that fish in your country, with a veterinarian, and keep the waiting time. Remedies for ornamental fish bar fish and crops from the table. Salt harms plants.</source>
        <translation type="unfinished">Trate los peces enfermos en un tanque aparte y no deje que nada de esa agua llegue a plantas o filtro. Use solo lo aprobado para ese pez en su país, con un veterinario, y respete el tiempo de espera. Los remedios para peces ornamentales excluyen peces y cultivos de la mesa. La sal daña las plantas.</translation>
    </message>
    <message>
        <source>Treated with a medicine</source>
        <translation type="unfinished">Tratado con una medicina</translation>
    </message>
    <message>
        <source>Trickling filter</source>
        <translation type="unfinished">Filtro de goteo</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation type="unfinished">Probar un cambio</translation>
    </message>
    <message>
        <source>Trying 12 ways, and bettering each…</source>
        <translation type="unfinished">Probando 12 formas y mejorando cada una…</translation>
    </message>
    <message>
        <source>Trying repairs; each one is forecast before it is offered…</source>
        <translation type="unfinished">Probando arreglos; cada uno se pronostica antes de ofrecerlo…</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">Martes</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation type="unfinished">Recambio</translation>
    </message>
    <message>
        <source>Two sources differ. FAO, for small systems: {a} to {b} g/m²/d for leaves, {c} to {d} for fruit, mixed by what is planted. University of the Virgin Islands, for rafts in the tropics with solids removed: {e} to {f} g/m²/d.</source>
        <translation type="unfinished">Dos fuentes difieren. FAO, para sistemas pequeños: {a} a {b} g/m²/d para hojas, {c} a {d} para frutos, mezclado según lo plantado. Universidad de las Islas Vírgenes, para balsas en el trópico con sólidos retirados: {e} a {f} g/m²/d.</translation>
    </message>
    <message>
        <source>Type a few letters; arrows choose, Enter goes there.</source>
        <translation type="unfinished">Escriba unas letras; las flechas eligen, Intro va ahí.</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished">Usual de EE. UU.</translation>
    </message>
    <message>
        <source>UVI band</source>
        <translation type="unfinished">Franja UVI</translation>
    </message>
    <message>
        <source>UVI, for rafts</source>
        <translation type="unfinished">UVI, para balsas</translation>
    </message>
    <message>
        <source>Un-ionised ammonia</source>
        <translation type="unfinished">Amoníaco no ionizado</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Deshacer</translation>
    </message>
    <message>
        <source>Uneven</source>
        <translation type="unfinished">Desigual</translation>
    </message>
    <message>
        <source>Unfinished</source>
        <translation type="unfinished">Sin terminar</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished">Unidad</translation>
    </message>
    <message>
        <source>Unit of {heading}</source>
        <translation type="unfinished">Unidad de {heading}</translation>
    </message>
    <message>
        <source>Units shown</source>
        <translation type="unfinished">Unidades mostradas</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation type="unfinished">No se sabe</translation>
    </message>
    <message>
        <source>Unknown whether this loop can carry {area} m² more.</source>
        <translation type="unfinished">No se sabe si este circuito puede con {area} m² más.</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation type="unfinished">Soltar</translation>
    </message>
    <message>
        <source>Unlock {code}</source>
        <translation type="unfinished">Desbloquear {code}</translation>
    </message>
    <message>
        <source>Unlock {many} batches</source>
        <translation type="unfinished">Desbloquear {many} lotes</translation>
    </message>
    <message>
        <source>Unplaced</source>
        <translation type="unfinished">Sin lugar</translation>
    </message>
    <message>
        <source>Until</source>
        <translation type="unfinished">Hasta</translation>
    </message>
    <message>
        <source>Until is {until}, before it begins on {begins}.</source>
        <translation type="unfinished">Hasta es {until}, antes de que empiece el {begins}.</translation>
    </message>
    <message>
        <source>Until the feed is back</source>
        <translation type="unfinished">Hasta que vuelve el alimento</translation>
    </message>
    <message>
        <source>Up to a weight of</source>
        <translation type="unfinished">Hasta un peso de</translation>
    </message>
    <message>
        <source>Up to three beside today's plan. Changes under one name go into one scenario. The farm stays as it is until you adopt one, and adopting is one act.</source>
        <translation type="unfinished">Hasta tres junto al plan de hoy. Los cambios bajo un nombre van a un escenario. La granja queda como está hasta que adopte uno, y adoptar es un solo acto.</translation>
    </message>
    <message>
        <source>Up to three scenarios beside today's plan: balance, harvest, occupancy, feed and cost. The farm stays as it is until you adopt one.</source>
        <translation type="unfinished">Hasta tres escenarios junto al plan de hoy: balance, cosecha, ocupación, alimento y costo. La granja queda como está hasta que adopte uno.</translation>
    </message>
    <message>
        <source>Use food-grade plastics shielded from sun. No copper or galvanised metal in the water, and no limestone gravel unless you want its hardness.</source>
        <translation type="unfinished">Use plásticos aptos para alimentos y protegidos del sol. Nada de cobre ni metal galvanizado en el agua, ni grava caliza salvo que quiera su dureza.</translation>
    </message>
    <message>
        <source>Used from</source>
        <translation type="unfinished">En uso desde</translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished">Valor</translation>
    </message>
    <message>
        <source>Variety</source>
        <translation type="unfinished">Variedad</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished">Resultado</translation>
    </message>
    <message>
        <source>Very slow. A farm lime analysed 22.7 % Ca and 11.8 % Mg.</source>
        <translation type="unfinished">Muy lenta. Una cal agrícola analizada tenía 22,7 % Ca y 11,8 % Mg.</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation type="unfinished">Espera</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished">Se quiere</translation>
    </message>
    <message>
        <source>Wanted [g]</source>
        <translation type="unfinished">Pedido [g]</translation>
    </message>
    <message>
        <source>Wanted each week</source>
        <translation type="unfinished">Se quiere cada semana</translation>
    </message>
    <message>
        <source>Wanting</source>
        <translation type="unfinished">Falta</translation>
    </message>
    <message>
        <source>Warm all year, as in the tropics</source>
        <translation type="unfinished">Cálido todo el año, como en el trópico</translation>
    </message>
    <message>
        <source>Warm summer, cold winter</source>
        <translation type="unfinished">Verano templado, invierno frío</translation>
    </message>
    <message>
        <source>Was due</source>
        <translation type="unfinished">Tocaba</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished">Desecho</translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished">Agua</translation>
    </message>
    <message>
        <source>Water &amp;readings</source>
        <translation type="unfinished">&amp;Lecturas de agua</translation>
    </message>
    <message>
        <source>Water added for what evaporates, splashes or is drained.</source>
        <translation type="unfinished">Agua que se agrega por lo que se evapora, salpica o se drena.</translation>
    </message>
    <message>
        <source>Water in the fish tank</source>
        <translation type="unfinished">Agua en el tanque de peces</translation>
    </message>
    <message>
        <source>Water of {loop}</source>
        <translation type="unfinished">Agua de {loop}</translation>
    </message>
    <message>
        <source>Water read on {day}</source>
        <translation type="unfinished">Agua leída el {day}</translation>
    </message>
    <message>
        <source>Water reading</source>
        <translation type="unfinished">Lectura de agua</translation>
    </message>
    <message>
        <source>Water temperature [°C]</source>
        <translation type="unfinished">Temperatura del agua [°C]</translation>
    </message>
    <message>
        <source>Water volume</source>
        <translation type="unfinished">Volumen de agua</translation>
    </message>
    <message>
        <source>Water weighs a tonne a cubic metre: 25 cm of it are 250 kg on every square metre. Roof, frame and wiring are for people licensed where you are.</source>
        <translation type="unfinished">El agua pesa una tonelada por metro cúbico: 25 cm son 250 kg en cada metro cuadrado. Techo, armazón y cableado son para gente con licencia donde usted está.</translation>
    </message>
    <message>
        <source>Water, by month</source>
        <translation type="unfinished">Agua, por mes</translation>
    </message>
    <message>
        <source>Water-test log</source>
        <translation type="unfinished">Registro de pruebas de agua</translation>
    </message>
    <message>
        <source>Ways of stocking</source>
        <translation type="unfinished">Formas de poner peces</translation>
    </message>
    <message>
        <source>Ways to take the harvest</source>
        <translation type="unfinished">Formas de cosechar</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">Miércoles</translation>
    </message>
    <message>
        <source>Wee&amp;ks</source>
        <translation type="unfinished">Se&amp;manas</translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished">Semana</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation type="unfinished">Semana después</translation>
    </message>
    <message>
        <source>Week before</source>
        <translation type="unfinished">Semana antes</translation>
    </message>
    <message>
        <source>Week begins on</source>
        <translation type="unfinished">La semana empieza el</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation type="unfinished">Semana por semana</translation>
    </message>
    <message>
        <source>Week {week}</source>
        <translation type="unfinished">Semana {week}</translation>
    </message>
    <message>
        <source>Week's tasks</source>
        <translation type="unfinished">Tareas de la semana</translation>
    </message>
    <message>
        <source>Weekly t&amp;argets</source>
        <translation type="unfinished">Met&amp;as semanales</translation>
    </message>
    <message>
        <source>Weekly t&amp;arget…</source>
        <translation type="unfinished">&amp;Meta semanal…</translation>
    </message>
    <message>
        <source>Weekly target</source>
        <translation type="unfinished">Meta semanal</translation>
    </message>
    <message>
        <source>Weekly task sheet</source>
        <translation type="unfinished">Hoja semanal de tareas</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation type="unfinished">Semanas</translation>
    </message>
    <message>
        <source>Weeks are {value}; they must lie within {low} to {high}.</source>
        <translation type="unfinished">Las semanas son {value}; deben estar entre {low} y {high}.</translation>
    </message>
    <message>
        <source>Weeks between two groups</source>
        <translation type="unfinished">Semanas entre dos grupos</translation>
    </message>
    <message>
        <source>Weeks from here</source>
        <translation type="unfinished">Semanas desde aquí</translation>
    </message>
    <message>
        <source>Weeks in which supply falls below demand, mostly after fish were harvested.</source>
        <translation type="unfinished">Semanas en que la oferta cae bajo la demanda, casi siempre tras cosechar peces.</translation>
    </message>
    <message>
        <source>Weeks later</source>
        <translation type="unfinished">Semanas después</translation>
    </message>
    <message>
        <source>Weeks near what is wanted: {crop}</source>
        <translation type="unfinished">Semanas cerca de lo pedido: {crop}</translation>
    </message>
    <message>
        <source>Weeks of the balance</source>
        <translation type="unfinished">Semanas del balance</translation>
    </message>
    <message>
        <source>Weeks short</source>
        <translation type="unfinished">Semanas con falta</translation>
    </message>
    <message>
        <source>Weeks short in the whole plan</source>
        <translation type="unfinished">Semanas con falta en todo el plan</translation>
    </message>
    <message>
        <source>Weeks that are planned</source>
        <translation type="unfinished">Semanas que se planean</translation>
    </message>
    <message>
        <source>Weigh a level scoop of your feed; weigh it again with every new bag</source>
        <translation type="unfinished">Pese una medida rasa de su alimento; pésela de nuevo con cada saco</translation>
    </message>
    <message>
        <source>Weighed sample</source>
        <translation type="unfinished">Muestra pesada</translation>
    </message>
    <message>
        <source>Weight at harvest</source>
        <translation type="unfinished">Peso a la cosecha</translation>
    </message>
    <message>
        <source>Weight by length, exponent</source>
        <translation type="unfinished">Peso por largo, exponente</translation>
    </message>
    <message>
        <source>Weight by length, factor</source>
        <translation type="unfinished">Peso por largo, factor</translation>
    </message>
    <message>
        <source>Weight of a fingerling</source>
        <translation type="unfinished">Peso de un alevín</translation>
    </message>
    <message>
        <source>Weight of all living fish of a group or a tank together.</source>
        <translation type="unfinished">Peso de todos los peces vivos de un grupo o estanque.</translation>
    </message>
    <message>
        <source>Weight of each</source>
        <translation type="unfinished">Peso de cada uno</translation>
    </message>
    <message>
        <source>Weight of fish for each cubic metre of tank.</source>
        <translation type="unfinished">Peso de peces por metro cúbico de estanque.</translation>
    </message>
    <message>
        <source>Weight of one fish</source>
        <translation type="unfinished">Peso de un pez</translation>
    </message>
    <message>
        <source>Weight of one fish on average; a weighed sample mends it.</source>
        <translation type="unfinished">Peso medio de un pez; una muestra pesada lo corrige.</translation>
    </message>
    <message>
        <source>Wh&amp;y these figures…</source>
        <translation type="unfinished">Por &amp;qué estas cifras…</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Qué</translation>
    </message>
    <message>
        <source>What &amp;moved, and why</source>
        <translation type="unfinished">Qué se &amp;movió y por qué</translation>
    </message>
    <message>
        <source>What a level scoop holds</source>
        <translation type="unfinished">Cuánto lleva una medida rasa</translation>
    </message>
    <message>
        <source>What a number was worked out from, or who typed it: Ctrl+I on it, or the right button, answers.</source>
        <translation type="unfinished">De qué se calculó un número, o quién lo escribió: responde Ctrl+I sobre él, o el botón derecho.</translation>
    </message>
    <message>
        <source>What bacteria make of ammonia in the end, and the nitrogen that plants take.</source>
        <translation type="unfinished">Lo que las bacterias hacen al final del amoniaco; el nitrógeno que toman las plantas.</translation>
    </message>
    <message>
        <source>What can be wanted</source>
        <translation type="unfinished">Qué se puede pedir</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation type="unfinished">Qué difiere</translation>
    </message>
    <message>
        <source>What differs from today's plan</source>
        <translation type="unfinished">Qué difiere del plan de hoy</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation type="unfinished">Lo que no cabe</translation>
    </message>
    <message>
        <source>What does not fit ({count})</source>
        <translation type="unfinished">Qué no cabe ({count})</translation>
    </message>
    <message>
        <source>What fish give off, both forms of it together, counted as nitrogen; a part of it is poison.</source>
        <translation type="unfinished">Lo que excretan los peces, sus dos formas juntas, contado como nitrógeno; una parte es veneno.</translation>
    </message>
    <message>
        <source>What fish leave that does not dissolve; filters catch it, and it can be mineralised.</source>
        <translation type="unfinished">Lo que dejan los peces sin disolverse; lo retienen los filtros y se puede mineralizar.</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation type="unfinished">Qué cabe</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation type="unfinished">Qué entra</translation>
    </message>
    <message>
        <source>What goes in next</source>
        <translation type="unfinished">Qué entra después</translation>
    </message>
    <message>
        <source>What goes wrong from today on, and changes that repair it. Each is worked out on a forecast of the changed farm; the cheapest stands first.</source>
        <translation type="unfinished">Qué sale mal de hoy en adelante, y cambios que lo arreglan. Cada uno se calcula en un pronóstico de la granja cambiada; el más barato va primero.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished">Qué pasó</translation>
    </message>
    <message>
        <source>What happened is what you logged; the planned figures come from the plan. What the packet of a seed lot says is moved by the seeds you counted.</source>
        <translation type="unfinished">Lo que pasó es lo que usted anotó; las cifras previstas vienen del plan. Lo que dice el sobre de un lote de semilla se corrige con las semillas que usted contó.</translation>
    </message>
    <message>
        <source>What happened, planned against actual, what was learned</source>
        <translation type="unfinished">Qué pasó, lo planeado contra lo real, qué se aprendió</translation>
    </message>
    <message>
        <source>What happened, what is late and costs heads, planned against actual with totals by reason, and what was learned. Seed lots and meters with their tests and calibrations.</source>
        <translation type="unfinished">Lo que pasó, lo que está atrasado y cuesta cabezas, lo previsto frente a lo real con totales por motivo, y lo que se aprendió. Lotes de semilla y medidores con sus pruebas y calibraciones.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation type="unfinished">Qué pasa</translation>
    </message>
    <message>
        <source>What happens to the group</source>
        <translation type="unfinished">Qué pasa con el grupo</translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished">Qué pasa si</translation>
    </message>
    <message>
        <source>What is &amp;chosen</source>
        <translation type="unfinished">Lo &amp;elegido</translation>
    </message>
    <message>
        <source>What is chosen</source>
        <translation type="unfinished">Lo elegido</translation>
    </message>
    <message>
        <source>What is counted</source>
        <translation type="unfinished">Qué se cuenta</translation>
    </message>
    <message>
        <source>What is due in the week in at most 160 letters, for any phone</source>
        <translation type="unfinished">Lo que toca en la semana en 160 letras como mucho, para cualquier teléfono</translation>
    </message>
    <message>
        <source>What is left when the month begins</source>
        <translation type="unfinished">Lo que queda cuando empieza el mes</translation>
    </message>
    <message>
        <source>What is listed</source>
        <translation type="unfinished">Qué se enumera</translation>
    </message>
    <message>
        <source>What is planted fits what the fish can carry, as far as the published bands tell.</source>
        <translation type="unfinished">Lo plantado va con lo que los peces sostienen, hasta donde dicen las franjas publicadas.</translation>
    </message>
    <message>
        <source>What is seen</source>
        <translation type="unfinished">Qué se ve</translation>
    </message>
    <message>
        <source>What is sown, picked, fed and measured is logged here, and held against the plan.</source>
        <translation type="unfinished">Aquí se anota lo sembrado, cosechado, dado y medido, y se compara con el plan.</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation type="unfinished">Qué se prueba</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation type="unfinished">Qué se quiere</translation>
    </message>
    <message>
        <source>What is worked out</source>
        <translation type="unfinished">Qué se calcula</translation>
    </message>
    <message>
        <source>What it gives</source>
        <translation type="unfinished">Lo que aporta</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished">Qué es</translation>
    </message>
    <message>
        <source>What it keeps to</source>
        <translation type="unfinished">A qué se atiene</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation type="unfinished">Qué significa</translation>
    </message>
    <message>
        <source>What it moved can no longer be told.</source>
        <translation type="unfinished">Ya no se puede saber qué movió.</translation>
    </message>
    <message>
        <source>What moved, and why</source>
        <translation type="unfinished">Qué se movió y por qué</translation>
    </message>
    <message>
        <source>What of an element is dissolved in the water at the time.</source>
        <translation type="unfinished">Lo que hay disuelto de un elemento en ese momento.</translation>
    </message>
    <message>
        <source>What reaches the water for plants in a week: from feed, solids, doses and make-up water.</source>
        <translation type="unfinished">Lo que llega al agua para las plantas en una semana: alimento, sólidos, dosis y agua de relleno.</translation>
    </message>
    <message>
        <source>What stands there</source>
        <translation type="unfinished">Qué hay ahí</translation>
    </message>
    <message>
        <source>What the crops take up in a week if they grow as foreseen.</source>
        <translation type="unfinished">Lo que los cultivos absorben en una semana si crecen según lo previsto.</translation>
    </message>
    <message>
        <source>What the fish feed supplies is held here against what the plants want, week by week.</source>
        <translation type="unfinished">Aquí se compara lo que aporta el alimento con lo que piden las plantas, semana a semana.</translation>
    </message>
    <message>
        <source>What the fish feed supplies of an element and what the crops take up, week by week, and a band: short, thin, met or ample.</source>
        <translation type="unfinished">Lo que el alimento de los peces aporta de un elemento y lo que los cultivos toman, semana a semana, y una banda: corto, justo, cubierto o amplio.</translation>
    </message>
    <message>
        <source>What the fish feed supplies of an element, set against what the crops take up, by week.</source>
        <translation type="unfinished">Lo que el alimento de los peces aporta de un elemento, frente a lo que toman los cultivos, por semana.</translation>
    </message>
    <message>
        <source>What the holes show</source>
        <translation type="unfinished">Qué muestran los hoyos</translation>
    </message>
    <message>
        <source>What the plan uses, month by month, in the month of its use: seed by lot, plugs, pots, feed by pellet size, base, iron and salts.</source>
        <translation type="unfinished">Lo que usa el plan, mes por mes, en el mes en que se usa: semilla por lote, tacos, canastillas, alimento por tamaño de pellet, base, hierro y sales.</translation>
    </message>
    <message>
        <source>What the proposal brings, fit for sale</source>
        <translation type="unfinished">Lo que trae la propuesta, para vender</translation>
    </message>
    <message>
        <source>What the water asks for</source>
        <translation type="unfinished">Qué pide el agua</translation>
    </message>
    <message>
        <source>What these figures are</source>
        <translation type="unfinished">Qué son estas cifras</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation type="unfinished">En qué se basa esto</translation>
    </message>
    <message>
        <source>What this section does, and how to read it</source>
        <translation type="unfinished">Qué hace esta sección, y cómo se lee</translation>
    </message>
    <message>
        <source>What to give {loop} this week</source>
        <translation type="unfinished">Qué dar a {loop} esta semana</translation>
    </message>
    <message>
        <source>What to sow in which week so that the targets are met, little is wasted and plants take up what the fish supply. It says how near that is to the best possible.</source>
        <translation type="unfinished">Qué sembrar en qué semana para cumplir las metas, desperdiciar poco y que las plantas tomen lo que aportan los peces. Dice qué tan cerca queda de lo mejor posible.</translation>
    </message>
    <message>
        <source>What today's plan brings, fit for sale</source>
        <translation type="unfinished">Lo que trae el plan de hoy, para vender</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished">Qué se hizo</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished">Lo encontrado</translation>
    </message>
    <message>
        <source>What was learned</source>
        <translation type="unfinished">Qué se aprendió</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation type="unfinished">Qué se leyó</translation>
    </message>
    <message>
        <source>What went in</source>
        <translation type="unfinished">Datos de entrada</translation>
    </message>
    <message>
        <source>What would move?</source>
        <translation type="unfinished">¿Qué cambiaría?</translation>
    </message>
    <message>
        <source>What you enter about clients and sites stays on this computer unless you send it.</source>
        <translation type="unfinished">Lo que introduce sobre clientes y lugares se queda en este ordenador salvo que usted lo envíe.</translation>
    </message>
    <message>
        <source>What you enter stays on this computer, in the file you see in the status bar. What the weeks showed last is kept beside it in the folder for temporary files of your user, so that the next start is quick.</source>
        <translation type="unfinished">Lo que usted anota queda en esta computadora, en el archivo que ve en la barra de estado. Lo último que mostraron las semanas se guarda al lado, en la carpeta de archivos temporales de su usuario, para que el próximo inicio sea rápido.</translation>
    </message>
    <message>
        <source>What {heading} is</source>
        <translation type="unfinished">Qué es {heading}</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Cuándo</translation>
    </message>
    <message>
        <source>When the plan begins</source>
        <translation type="unfinished">Cuando empiece el plan</translation>
    </message>
    <message>
        <source>When the plan ended</source>
        <translation type="unfinished">Cuando terminó el plan</translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished">Dónde</translation>
    </message>
    <message>
        <source>Where in its life it grows fastest</source>
        <translation type="unfinished">En qué punto de su vida crece más rápido</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation type="unfinished">De dónde viene</translation>
    </message>
    <message>
        <source>Where it comes from, and how sure</source>
        <translation type="unfinished">De dónde viene, y qué tan segura</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation type="unfinished">Dónde se está</translation>
    </message>
    <message>
        <source>Where seedlings stand until they are moved to a bed.</source>
        <translation type="unfinished">Donde están las plántulas hasta que se trasplantan a una cama.</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation type="unfinished">De dónde salen las cifras</translation>
    </message>
    <message>
        <source>Where would you like to begin?</source>
        <translation type="unfinished">¿Por dónde quiere empezar?</translation>
    </message>
    <message>
        <source>Which</source>
        <translation type="unfinished">Cuál</translation>
    </message>
    <message>
        <source>Which crop to sow in which week for which kind of bed, so that targets are met, little is more than wanted, and plants take up what the fish supply. Locked batches and what is sown before the first day stay.</source>
        <translation type="unfinished">Qué cultivo sembrar en qué semana para qué clase de cama, para cumplir los objetivos, que sobre poco y las plantas tomen lo que los peces aportan. Los lotes bloqueados y lo sembrado antes del primer día se quedan.</translation>
    </message>
    <message>
        <source>Which figure</source>
        <translation type="unfinished">Qué cifra</translation>
    </message>
    <message>
        <source>Which months are shown</source>
        <translation type="unfinished">Qué meses se muestran</translation>
    </message>
    <message>
        <source>Which verdicts are shown</source>
        <translation type="unfinished">Qué resultados se muestran</translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished">Quién</translation>
    </message>
    <message>
        <source>Whole plant or baby leaf; heat makes it pungent.</source>
        <translation type="unfinished">Planta entera u hoja tierna; el calor la vuelve picante.</translation>
    </message>
    <message>
        <source>Whose feed-rate ratio rules</source>
        <translation type="unfinished">Qué proporción de alimento rige</translation>
    </message>
    <message>
        <source>Why a number is what it is</source>
        <translation type="unfinished">Por qué un número es así</translation>
    </message>
    <message>
        <source>Why is the chosen part what it is</source>
        <translation type="unfinished">Por qué la parte elegida es así</translation>
    </message>
    <message>
        <source>Why it cannot be taken</source>
        <translation type="unfinished">Por qué no se puede tomar</translation>
    </message>
    <message>
        <source>Why the figures shown here are what they are</source>
        <translation type="unfinished">Por qué las cifras de aquí son así</translation>
    </message>
    <message>
        <source>Why the number in hand, or the figures of what is chosen, are what they are</source>
        <translation type="unfinished">Por qué el número elegido, o las cifras de lo elegido, son así</translation>
    </message>
    <message>
        <source>Why the week is as it is</source>
        <translation type="unfinished">Por qué la semana es así</translation>
    </message>
    <message>
        <source>Why these figures…</source>
        <translation type="unfinished">Por qué estas cifras…</translation>
    </message>
    <message>
        <source>Why {element} is short</source>
        <translation type="unfinished">Por qué falta {element}</translation>
    </message>
    <message>
        <source>Why {value}?</source>
        <translation type="unfinished">¿Por qué {value}?</translation>
    </message>
    <message>
        <source>Why: {causes}</source>
        <translation type="unfinished">Por qué: {causes}</translation>
    </message>
    <message>
        <source>Why: {figure}</source>
        <translation type="unfinished">Por qué: {figure}</translation>
    </message>
    <message>
        <source>Why: {matter}</source>
        <translation type="unfinished">Por qué: {matter}</translation>
    </message>
    <message>
        <source>Why: {words}</source>
        <translation type="unfinished">Por qué: {words}</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">¿Por qué?</translation>
    </message>
    <message>
        <source>Why? The right button offers the numbers of this week; Ctrl+I asks about those beside it</source>
        <translation type="unfinished">¿Por qué? El botón derecho ofrece los números de esta semana; Ctrl+I pregunta por los de al lado</translation>
    </message>
    <message>
        <source>Why? {keys} or the right button tells</source>
        <translation type="unfinished">¿Por qué? Lo dice {keys} o el botón derecho</translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished">Ancho</translation>
    </message>
    <message>
        <source>Width of a plant that has room</source>
        <translation type="unfinished">Ancho de una planta con espacio</translation>
    </message>
    <message>
        <source>With a margin</source>
        <translation type="unfinished">Con margen</translation>
    </message>
    <message>
        <source>With it these would share places with others: {batches}. Make room for them, then take it up again.</source>
        <translation type="unfinished">Con ello estos compartirían sitios con otros: {batches}. Hágales sitio y adóptelo otra vez.</translation>
    </message>
    <message>
        <source>With what was read and dosed</source>
        <translation type="unfinished">Con qué se midió y se dosificó</translation>
    </message>
    <message>
        <source>Withdrawal time</source>
        <translation type="unfinished">Tiempo de retiro</translation>
    </message>
    <message>
        <source>Within 0.1 % of the best possible.</source>
        <translation type="unfinished">A menos de 0.1 % de lo mejor posible.</translation>
    </message>
    <message>
        <source>Within the tolerance, and no figure of the program comes from this publication</source>
        <translation type="unfinished">Dentro de la tolerancia, y ninguna cifra del programa procede de esta publicación</translation>
    </message>
    <message>
        <source>Within the tolerance, but a figure of the program comes from this very publication</source>
        <translation type="unfinished">Dentro de la tolerancia, pero una cifra del programa procede de esta misma publicación</translation>
    </message>
    <message>
        <source>Within the tolerance, but no figure of the program went in: only a formula is checked</source>
        <translation type="unfinished">Dentro de la tolerancia, pero no entró ninguna cifra del programa: solo se comprueba una fórmula</translation>
    </message>
    <message>
        <source>Within these limits</source>
        <translation type="unfinished">Dentro de estos límites</translation>
    </message>
    <message>
        <source>Within {percent} % of the best possible.</source>
        <translation type="unfinished">A {percent} % de lo mejor posible.</translation>
    </message>
    <message>
        <source>Without a lot all of the seed is to buy. Order early enough to have it when the month begins.</source>
        <translation type="unfinished">Sin un lote hay que comprar toda la semilla. Pida con tiempo para tenerla cuando empiece el mes.</translation>
    </message>
    <message>
        <source>Word</source>
        <translation type="unfinished">Palabra</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation type="unfinished">Palabras usadas aquí</translation>
    </message>
    <message>
        <source>Work a season out from what is wanted</source>
        <translation type="unfinished">Calcular una temporada según lo que se quiere</translation>
    </message>
    <message>
        <source>Work each week, at most</source>
        <translation type="unfinished">Trabajo por semana, máximo</translation>
    </message>
    <message>
        <source>Work out</source>
        <translation type="unfinished">Calcular</translation>
    </message>
    <message>
        <source>Work out low and high of every week</source>
        <translation type="unfinished">Calcular lo bajo y lo alto de cada semana</translation>
    </message>
    <message>
        <source>Work out low and high of what is foreseen</source>
        <translation type="unfinished">Calcula el mínimo y el máximo de lo previsto</translation>
    </message>
    <message>
        <source>Work out low and high values, and the chance that each target is met</source>
        <translation type="unfinished">Calcular valores bajos y altos, y la probabilidad de cumplir cada meta</translation>
    </message>
    <message>
        <source>Work out the start-up</source>
        <translation type="unfinished">Calcular el arranque</translation>
    </message>
    <message>
        <source>Work out what to sow for the list</source>
        <translation type="unfinished">Calcular qué sembrar para la lista</translation>
    </message>
    <message>
        <source>Work published figures out again and see how far the program is from print</source>
        <translation type="unfinished">Calcular de nuevo cifras publicadas y ver cuánto se aparta el programa</translation>
    </message>
    <message>
        <source>Working out what it moved…</source>
        <translation type="unfinished">Calculando qué movió…</translation>
    </message>
    <message>
        <source>Working…</source>
        <translation type="unfinished">Calculando…</translation>
    </message>
    <message>
        <source>Works the plan out with your value, keeps nothing</source>
        <translation type="unfinished">Calcula el plan con su valor, no guarda nada</translation>
    </message>
    <message>
        <source>Worst fall</source>
        <translation type="unfinished">Peor baja</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation type="unfinished">Valor</translation>
    </message>
    <message>
        <source>Worth {plan} of 100; the same amount sown every week is worth {hand}, and no plan more than {bound}.</source>
        <translation type="unfinished">Vale {plan} de 100; sembrar lo mismo cada semana vale {hand}, y ningún plan más de {bound}.</translation>
    </message>
    <message>
        <source>Write all entries of your own as text</source>
        <translation type="unfinished">Escribir todas las entradas propias como texto</translation>
    </message>
    <message>
        <source>Write grams and K or Ca, such as 40K or 35 Ca.</source>
        <translation type="unfinished">Escriba gramos y K o Ca, como 40K o 35 Ca.</translation>
    </message>
    <message>
        <source>Write heads, or kilograms with kg, such as 23 or 1.2 kg.</source>
        <translation type="unfinished">Escriba piezas, o kilogramos con kg, como 23 o 1.2 kg.</translation>
    </message>
    <message>
        <source>Write my entries as text</source>
        <translation type="unfinished">Escribir mis entradas como texto</translation>
    </message>
    <message>
        <source>Write over the file you gave the phone last time: what moved is then moved in the phone, too, and what is gone is taken off. Every entry is for a whole day; feed is the most to give.</source>
        <translation type="unfinished">Escriba sobre el archivo que dio al teléfono la última vez: lo que se movió se mueve también en el teléfono y lo que ya no está se quita. Cada entrada es de un día entero; el alimento es lo máximo que se da.</translation>
    </message>
    <message>
        <source>Write…</source>
        <translation type="unfinished">Escribir…</translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation type="unfinished">Escribiendo el archivo…</translation>
    </message>
    <message>
        <source>W{number} (short for week)</source>
        <translation type="unfinished">W{number}</translation>
    </message>
    <message>
        <source>Year poster</source>
        <translation type="unfinished">Cartel del año</translation>
    </message>
    <message>
        <source>Years, months and weeks</source>
        <translation type="unfinished">Años, meses y semanas</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished">Sí</translation>
    </message>
    <message>
        <source>Yes, under conditions: {area} m² more.</source>
        <translation type="unfinished">Sí, con condiciones: {area} m² más.</translation>
    </message>
    <message>
        <source>Yes, with</source>
        <translation type="unfinished">Sí, con</translation>
    </message>
    <message>
        <source>Yes: this loop can carry {area} m² more.</source>
        <translation type="unfinished">Sí: este circuito puede con {area} m² más.</translation>
    </message>
    <message>
        <source>Yield of one plant</source>
        <translation type="unfinished">Rendimiento de una planta</translation>
    </message>
    <message>
        <source>You stopped the search; this is the best so far.</source>
        <translation type="unfinished">Usted detuvo la búsqueda; esto es lo mejor hasta ahora.</translation>
    </message>
    <message>
        <source>Your entries were written to {name}.</source>
        <translation type="unfinished">Sus entradas se escribieron en {name}.</translation>
    </message>
    <message>
        <source>Your fish can carry</source>
        <translation type="unfinished">Sus peces sostienen</translation>
    </message>
    <message>
        <source>Your own farm</source>
        <translation type="unfinished">Su propia granja</translation>
    </message>
    <message>
        <source>Your own figures. Leave a field empty to go by the catalogue.</source>
        <translation type="unfinished">Sus propias cifras. Deje vacío lo que siga el catálogo.</translation>
    </message>
    <message>
        <source>Your own value</source>
        <translation type="unfinished">Su propio valor</translation>
    </message>
    <message>
        <source>Your plan is drafted</source>
        <translation type="unfinished">Su plan está listo como borrador</translation>
    </message>
    <message>
        <source>Your weeks begin here</source>
        <translation type="unfinished">Sus semanas empiezan aquí</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished">&amp;Acercar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished">Ale&amp;jar</translation>
    </message>
    <message>
        <source>_</source>
        <translation type="unfinished">_</translation>
    </message>
    <message>
        <source>a cell of a tray for each pot, in whole trays</source>
        <translation type="unfinished">una celda de bandeja por cada maceta, en bandejas enteras</translation>
    </message>
    <message>
        <source>a feeding table</source>
        <translation type="unfinished">una tabla de alimentación</translation>
    </message>
    <message>
        <source>a figure of your own in the catalogue</source>
        <translation type="unfinished">un valor suyo en el catálogo</translation>
    </message>
    <message>
        <source>a fixed share of body weight</source>
        <translation type="unfinished">una parte fija del peso del pez</translation>
    </message>
    <message>
        <source>a sheet of labels</source>
        <translation type="unfinished">una hoja de etiquetas</translation>
    </message>
    <message>
        <source>a square metre over the plants on it</source>
        <translation type="unfinished">un metro cuadrado entre las plantas que hay en él</translation>
    </message>
    <message>
        <source>a week that is wanted in part wants part of its amount</source>
        <translation type="unfinished">una semana que se quiere en parte pide parte de su cantidad</translation>
    </message>
    <message>
        <source>a week, beyond what is supplied; nothing the plan has doses of fills it</source>
        <translation type="unfinished">por semana, más allá de lo aportado; nada que el plan dosifique lo cubre</translation>
    </message>
    <message>
        <source>about {grams} g a day</source>
        <translation type="unfinished">unos {grams} g al día</translation>
    </message>
    <message>
        <source>about {kg} kg</source>
        <translation type="unfinished">unos {kg} kg</translation>
    </message>
    <message>
        <source>acid</source>
        <translation type="unfinished">ácido</translation>
    </message>
    <message>
        <source>acid by the log</source>
        <translation type="unfinished">ácido según el registro</translation>
    </message>
    <message>
        <source>acid eq per kg feed</source>
        <translation type="unfinished">ácido por kg de alimento</translation>
    </message>
    <message>
        <source>acid made in a week</source>
        <translation type="unfinished">ácido producido en una semana</translation>
    </message>
    <message>
        <source>acid of the week, as the alkalinity it takes, over the water of the loop</source>
        <translation type="unfinished">ácido de la semana, como la alcalinidad que quita, entre el agua del circuito</translation>
    </message>
    <message>
        <source>acid that takes as much alkalinity as was seen to go, and the base given meanwhile</source>
        <translation type="unfinished">ácido que quita tanta alcalinidad como se vio bajar, y la base dada entre tanto</translation>
    </message>
    <message>
        <source>act</source>
        <translation type="unfinished">actuar</translation>
    </message>
    <message>
        <source>actual days</source>
        <translation type="unfinished">días reales</translation>
    </message>
    <message>
        <source>added</source>
        <translation type="unfinished">agregados</translation>
    </message>
    <message>
        <source>added by warmth and light</source>
        <translation type="unfinished">añadidos por calor y luz</translation>
    </message>
    <message>
        <source>aerated</source>
        <translation type="unfinished">con aire</translation>
    </message>
    <message>
        <source>after</source>
        <translation type="unfinished">después</translation>
    </message>
    <message>
        <source>after the plan</source>
        <translation type="unfinished">después del plan</translation>
    </message>
    <message>
        <source>against the four weeks before; {back}</source>
        <translation type="unfinished">contra las cuatro semanas antes; {back}</translation>
    </message>
    <message>
        <source>age days</source>
        <translation type="unfinished">edad</translation>
    </message>
    <message>
        <source>aim of the check</source>
        <translation type="unfinished">meta de la comprobación</translation>
    </message>
    <message>
        <source>air at the beds</source>
        <translation type="unfinished">aire en las camas</translation>
    </message>
    <message>
        <source>air at the nursery</source>
        <translation type="unfinished">aire en el semillero</translation>
    </message>
    <message>
        <source>air is blown through it</source>
        <translation type="unfinished">se le sopla aire</translation>
    </message>
    <message>
        <source>air temperature</source>
        <translation type="unfinished">temperatura del aire</translation>
    </message>
    <message>
        <source>alkalinity</source>
        <translation type="unfinished">alcalinidad</translation>
    </message>
    <message>
        <source>alkalinity (KH)</source>
        <translation type="unfinished">alcalinidad (KH)</translation>
    </message>
    <message>
        <source>alkalinity foreseen</source>
        <translation type="unfinished">alcalinidad prevista</translation>
    </message>
    <message>
        <source>alkalinity that goes until pH is at the limit, free carbon dioxide unchanged</source>
        <translation type="unfinished">alcalinidad que se va hasta que el pH llega al límite, sin cambio del dióxido de carbono libre</translation>
    </message>
    <message>
        <source>alkalinity to spare</source>
        <translation type="unfinished">alcalinidad de margen</translation>
    </message>
    <message>
        <source>all at once</source>
        <translation type="unfinished">todo de una vez</translation>
    </message>
    <message>
        <source>all batches of the weeks below</source>
        <translation type="unfinished">todos los lotes de las semanas de abajo</translation>
    </message>
    <message>
        <source>all cells, less those that are held on the fullest day</source>
        <translation type="unfinished">todas las celdas menos las ocupadas en el día más lleno</translation>
    </message>
    <message>
        <source>all come up to the best temperature, none at the ceiling, in a line between</source>
        <translation type="unfinished">todas nacen hasta la temperatura óptima, ninguna en la máxima, y en línea recta entre ambas</translation>
    </message>
    <message>
        <source>all fish</source>
        <translation type="unfinished">todos los peces</translation>
    </message>
    <message>
        <source>all places, less those that are held</source>
        <translation type="unfinished">todos los lugares menos los ocupados</translation>
    </message>
    <message>
        <source>all sowings, the balance and the harvest week by week, with assumptions and sources</source>
        <translation type="unfinished">todas las siembras, el balance y la cosecha semana a semana, con supuestos y fuentes</translation>
    </message>
    <message>
        <source>all that are left from the day before, and what changed that morning</source>
        <translation type="unfinished">todos los que quedan del día anterior, y lo que cambió esa mañana</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation type="unfinished">reserva por pérdidas</translation>
    </message>
    <message>
        <source>along with what was changed: {kinds}</source>
        <translation type="unfinished">junto con lo que se cambió: {kinds}</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation type="unfinished">altitud</translation>
    </message>
    <message>
        <source>ammonia</source>
        <translation type="unfinished">amoniaco</translation>
    </message>
    <message>
        <source>ammonia (TAN)</source>
        <translation type="unfinished">amoníaco (TAN)</translation>
    </message>
    <message>
        <source>ammonia nitrogen a day</source>
        <translation type="unfinished">nitrógeno amoniacal por día</translation>
    </message>
    <message>
        <source>ammonia nitrogen on a day</source>
        <translation type="unfinished">nitrógeno amoniacal en un día</translation>
    </message>
    <message>
        <source>ammonia nitrogen over what a square metre of biofilm takes at the water's warmth</source>
        <translation type="unfinished">nitrógeno amoniacal entre lo que procesa un metro cuadrado de biopelícula a la temperatura del agua</translation>
    </message>
    <message>
        <source>ammonia per protein</source>
        <translation type="unfinished">amoniaco por proteína</translation>
    </message>
    <message>
        <source>amount</source>
        <translation type="unfinished">cantidad</translation>
    </message>
    <message>
        <source>amount, times its price</source>
        <translation type="unfinished">cantidad por su precio</translation>
    </message>
    <message>
        <source>ample</source>
        <translation type="unfinished">sobra</translation>
    </message>
    <message>
        <source>ample above</source>
        <translation type="unfinished">sobra por encima de</translation>
    </message>
    <message>
        <source>an area that is always planted</source>
        <translation type="unfinished">un área siempre plantada</translation>
    </message>
    <message>
        <source>and {rest} more</source>
        <translation type="unfinished">y {rest} más</translation>
    </message>
    <message>
        <source>answer for more beds</source>
        <translation type="unfinished">respuesta para más camas</translation>
    </message>
    <message>
        <source>answer for {what}</source>
        <translation type="unfinished">respuesta para {what}</translation>
    </message>
    <message>
        <source>any day of the week</source>
        <translation type="unfinished">cualquier día de la semana</translation>
    </message>
    <message>
        <source>appetite share</source>
        <translation type="unfinished">apetito</translation>
    </message>
    <message>
        <source>area</source>
        <translation type="unfinished">área</translation>
    </message>
    <message>
        <source>area fed</source>
        <translation type="unfinished">área que alimentan</translation>
    </message>
    <message>
        <source>area of a batch</source>
        <translation type="unfinished">área de un lote</translation>
    </message>
    <message>
        <source>area of a batch in the week</source>
        <translation type="unfinished">área de un lote en la semana</translation>
    </message>
    <message>
        <source>area of a crop</source>
        <translation type="unfinished">área de un cultivo</translation>
    </message>
    <message>
        <source>area of a plant</source>
        <translation type="unfinished">área de una planta</translation>
    </message>
    <message>
        <source>area of places</source>
        <translation type="unfinished">área de los lugares</translation>
    </message>
    <message>
        <source>area of the batch, times the days of the week on which it stands there</source>
        <translation type="unfinished">área del lote por los días de la semana que está allí</translation>
    </message>
    <message>
        <source>area of the places held, and of the plants that have none yet</source>
        <translation type="unfinished">área de los lugares ocupados y de las plantas que aún no tienen</translation>
    </message>
    <message>
        <source>area of {what}</source>
        <translation type="unfinished">área de {what}</translation>
    </message>
    <message>
        <source>area, times what a square metre asks for, for the protein that is fed</source>
        <translation type="unfinished">área por lo que pide un metro cuadrado, para la proteína que se da</translation>
    </message>
    <message>
        <source>as CaCO3</source>
        <translation type="unfinished">como CaCO3</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation type="unfinished">como se anotó</translation>
    </message>
    <message>
        <source>as last weighed or stocked, and grown since; fish that were added change the mean</source>
        <translation type="unfinished">como se pesó o sembró la última vez, y lo crecido desde entonces; los peces añadidos cambian la media</translation>
    </message>
    <message>
        <source>as manure: below the leaf, not on a harvest day, own tools</source>
        <translation type="unfinished">como estiércol: por debajo de la hoja, no en día de cosecha, con útiles propios</translation>
    </message>
    <message>
        <source>as many plants as cover their weeks, less what later sowings make needless</source>
        <translation type="unfinished">tantas plantas como cubren sus semanas, menos las que siembras posteriores hacen innecesarias</translation>
    </message>
    <message>
        <source>as much base as acid is made</source>
        <translation type="unfinished">tanta base como ácido se produce</translation>
    </message>
    <message>
        <source>as nitrogen, for the filter to take up</source>
        <translation type="unfinished">como nitrógeno, para que lo tome el filtro</translation>
    </message>
    <message>
        <source>as nitrogen; from {tan} mg/L ammonia, pH {ph}, {warmth} °C; at most {limit} for these fish</source>
        <translation type="unfinished">como nitrógeno; de {tan} mg/L de amoníaco, pH {ph}, {warmth} °C; máximo {limit} para estos peces</translation>
    </message>
    <message>
        <source>as printed</source>
        <translation type="unfinished">como está impreso</translation>
    </message>
    <message>
        <source>as printed, carried to the warmth of the water</source>
        <translation type="unfinished">como está impreso, llevado a la temperatura del agua</translation>
    </message>
    <message>
        <source>as somebody else printed it</source>
        <translation type="unfinished">como lo imprimió otra persona</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation type="unfinished">como está en el catálogo</translation>
    </message>
    <message>
        <source>as the forecast of the changed farm has it</source>
        <translation type="unfinished">como lo dice el pronóstico de la granja cambiada</translation>
    </message>
    <message>
        <source>as the log shows it from {first} to {last}</source>
        <translation type="unfinished">como lo muestra el registro del {first} al {last}</translation>
    </message>
    <message>
        <source>as the packet says</source>
        <translation type="unfinished">como dice el sobre</translation>
    </message>
    <message>
        <source>as the table shows</source>
        <translation type="unfinished">como muestra la tabla</translation>
    </message>
    <message>
        <source>as what it is like</source>
        <translation type="unfinished">como lo más parecido</translation>
    </message>
    <message>
        <source>as what it is like: {value}</source>
        <translation type="unfinished">como lo más parecido: {value}</translation>
    </message>
    <message>
        <source>asked</source>
        <translation type="unfinished">preguntado</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation type="unfinished">se pide</translation>
    </message>
    <message>
        <source>asked for, in the plan</source>
        <translation type="unfinished">se pide, ya en el plan</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished">supuesto</translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished">al menos</translation>
    </message>
    <message>
        <source>at least {amount} {unit}; of {draws} draws</source>
        <translation type="unfinished">al menos {amount} {unit}; de {draws} sorteos</translation>
    </message>
    <message>
        <source>at most {cap_g} g at once, so that pH rises by no more than {step} in a day</source>
        <translation type="unfinished">como máximo {cap_g} g de una vez, para que el pH no suba más de {step} en un día</translation>
    </message>
    <message>
        <source>at most {limit} mg/L for these fish</source>
        <translation type="unfinished">como máximo {limit} mg/L para estos peces</translation>
    </message>
    <message>
        <source>at one end of {figure} alone nothing is left</source>
        <translation type="unfinished">en un extremo de {figure} por sí solo no queda nada</translation>
    </message>
    <message>
        <source>at the earliest, with the fastest fall; with the slowest on {latest}</source>
        <translation type="unfinished">lo más pronto, con la baja más rápida; con la más lenta el {latest}</translation>
    </message>
    <message>
        <source>at the earliest; perhaps it is not reached at all within the plan</source>
        <translation type="unfinished">lo más pronto; quizá no se alcance dentro del plan</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">recuperado</translation>
    </message>
    <message>
        <source>back at</source>
        <translation type="unfinished">de vuelta en</translation>
    </message>
    <message>
        <source>back on {day}</source>
        <translation type="unfinished">de vuelta el {day}</translation>
    </message>
    <message>
        <source>band of the ratio</source>
        <translation type="unfinished">franja de la razón</translation>
    </message>
    <message>
        <source>band, high</source>
        <translation type="unfinished">franja, alto</translation>
    </message>
    <message>
        <source>band, low</source>
        <translation type="unfinished">franja, bajo</translation>
    </message>
    <message>
        <source>bands of leafy and fruiting crops mixed by area, for the protein that is fed</source>
        <translation type="unfinished">franjas de cultivos de hoja y de fruto mezcladas por área, para la proteína que se da</translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished">base</translation>
    </message>
    <message>
        <source>base eq</source>
        <translation type="unfinished">base</translation>
    </message>
    <message>
        <source>base grams</source>
        <translation type="unfinished">gramos de base</translation>
    </message>
    <message>
        <source>base in a dose</source>
        <translation type="unfinished">base en una dosis</translation>
    </message>
    <message>
        <source>base left over</source>
        <translation type="unfinished">base que sobra</translation>
    </message>
    <message>
        <source>base that does not fit</source>
        <translation type="unfinished">base que no cabe</translation>
    </message>
    <message>
        <source>base wanted in a week</source>
        <translation type="unfinished">base necesaria en una semana</translation>
    </message>
    <message>
        <source>base wanted, less what fits into the doses of a week without moving pH too far</source>
        <translation type="unfinished">base necesaria, menos la que cabe en las dosis de una semana sin mover demasiado el pH</translation>
    </message>
    <message>
        <source>base {eq}</source>
        <translation type="unfinished">base {eq}</translation>
    </message>
    <message>
        <source>batch harvest</source>
        <translation type="unfinished">cosecha del lote</translation>
    </message>
    <message>
        <source>batch that was seen</source>
        <translation type="unfinished">lote que se vio</translation>
    </message>
    <message>
        <source>batches</source>
        <translation type="unfinished">lotes</translation>
    </message>
    <message>
        <source>batches moved</source>
        <translation type="unfinished">lotes movidos</translation>
    </message>
    <message>
        <source>batches of these crops that are neither locked nor sown yet make way</source>
        <translation type="unfinished">ceden los lotes de estos cultivos que no están bloqueados ni sembrados</translation>
    </message>
    <message>
        <source>batches that still last</source>
        <translation type="unfinished">lotes que aún duran</translation>
    </message>
    <message>
        <source>batches that were seen</source>
        <translation type="unfinished">lotes que se vieron</translation>
    </message>
    <message>
        <source>batches without places</source>
        <translation type="unfinished">lotes sin lugares</translation>
    </message>
    <message>
        <source>bed</source>
        <translation type="unfinished">cama</translation>
    </message>
    <message>
        <source>bed days</source>
        <translation type="unfinished">días en la cama</translation>
    </message>
    <message>
        <source>bed density</source>
        <translation type="unfinished">densidad en la cama</translation>
    </message>
    <message>
        <source>bed places</source>
        <translation type="unfinished">lugares en la cama</translation>
    </message>
    <message>
        <source>bed sd</source>
        <translation type="unfinished">desviación en la cama</translation>
    </message>
    <message>
        <source>bed survival share</source>
        <translation type="unfinished">parte que vive en la cama</translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished">camas</translation>
    </message>
    <message>
        <source>beds as you type them</source>
        <translation type="unfinished">camas según las escriba</translation>
    </message>
    <message>
        <source>beds planted</source>
        <translation type="unfinished">camas plantadas</translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished">antes</translation>
    </message>
    <message>
        <source>before your own value it was {value} ({source})</source>
        <translation type="unfinished">antes de su propio valor era {value} ({source})</translation>
    </message>
    <message>
        <source>begins with the last test before the plan, and is counted on from {day}</source>
        <translation type="unfinished">empieza con la última prueba antes del plan y se cuenta desde el {day}</translation>
    </message>
    <message>
        <source>below 0 for earlier</source>
        <translation type="unfinished">menos de 0 para antes</translation>
    </message>
    <message>
        <source>best found by trying, all else as it is</source>
        <translation type="unfinished">lo mejor hallado probando, lo demás como está</translation>
    </message>
    <message>
        <source>between {first} and {last}</source>
        <translation type="unfinished">entre {first} y {last}</translation>
    </message>
    <message>
        <source>beyond the plan</source>
        <translation type="unfinished">fuera del plan</translation>
    </message>
    <message>
        <source>bicarbonate, gentle</source>
        <translation type="unfinished">bicarbonato, suave</translation>
    </message>
    <message>
        <source>biofilm surface needed</source>
        <translation type="unfinished">superficie de biopelícula necesaria</translation>
    </message>
    <message>
        <source>biofilm surface needed on a day</source>
        <translation type="unfinished">superficie de biopelícula necesaria en un día</translation>
    </message>
    <message>
        <source>biofilm surface of gravel</source>
        <translation type="unfinished">superficie de biopelícula de la grava</translation>
    </message>
    <message>
        <source>biofilm surface there is</source>
        <translation type="unfinished">superficie de biopelícula que hay</translation>
    </message>
    <message>
        <source>block</source>
        <translation type="unfinished">bloque</translation>
    </message>
    <message>
        <source>body content</source>
        <translation type="unfinished">contenido del cuerpo</translation>
    </message>
    <message>
        <source>body n g per</source>
        <translation type="unfinished">nitrógeno del cuerpo</translation>
    </message>
    <message>
        <source>book</source>
        <translation type="unfinished">libro</translation>
    </message>
    <message>
        <source>book days</source>
        <translation type="unfinished">días según el libro</translation>
    </message>
    <message>
        <source>book days to first pick</source>
        <translation type="unfinished">días según el libro hasta la primera cosecha</translation>
    </message>
    <message>
        <source>book days, no climate entered</source>
        <translation type="unfinished">días del catálogo, sin clima anotado</translation>
    </message>
    <message>
        <source>book weight</source>
        <translation type="unfinished">peso del libro en la cuenta</translation>
    </message>
    <message>
        <source>book yield</source>
        <translation type="unfinished">rendimiento según el libro</translation>
    </message>
    <message>
        <source>bound</source>
        <translation type="unfinished">cota</translation>
    </message>
    <message>
        <source>bright</source>
        <translation type="unfinished">luminoso</translation>
    </message>
    <message>
        <source>brings sodium: only as a last resort</source>
        <translation type="unfinished">trae sodio: solo como último recurso</translation>
    </message>
    <message>
        <source>brought by others</source>
        <translation type="unfinished">aportado por otros</translation>
    </message>
    <message>
        <source>by fish added</source>
        <translation type="unfinished">por peces añadidos</translation>
    </message>
    <message>
        <source>by light</source>
        <translation type="unfinished">por la luz</translation>
    </message>
    <message>
        <source>by the book</source>
        <translation type="unfinished">según el libro</translation>
    </message>
    <message>
        <source>by the careful end of the band {value} {unit}</source>
        <translation type="unfinished">por el extremo prudente de la franja {value} {unit}</translation>
    </message>
    <message>
        <source>by the low and high of the figures behind it: it holds what is published, yet counts as outside</source>
        <translation type="unfinished">según el mínimo y el máximo de las cifras que lo sostienen: contiene lo publicado, pero cuenta como fuera</translation>
    </message>
    <message>
        <source>by the low and high of the figures behind it: what is published lies beyond</source>
        <translation type="unfinished">según el mínimo y el máximo de las cifras que lo sostienen: lo publicado queda más allá</translation>
    </message>
    <message>
        <source>by warmth</source>
        <translation type="unfinished">por el calor</translation>
    </message>
    <message>
        <source>by {rule} this feed carries {low} to {high} m², by {other} {other_low} to {other_high} m²</source>
        <translation type="unfinished">según {rule} este alimento sostiene {low} a {high} m², según {other} {other_low} a {other_high} m²</translation>
    </message>
    <message>
        <source>by {way}; never more than is eaten</source>
        <translation type="unfinished">según {way}; nunca más de lo que comen</translation>
    </message>
    <message>
        <source>ca</source>
        <translation type="unfinished">ca</translation>
    </message>
    <message>
        <source>caco3 g per</source>
        <translation type="unfinished">CaCO₃ por eq</translation>
    </message>
    <message>
        <source>calcium</source>
        <translation type="unfinished">calcio</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation type="unfinished">calibrado</translation>
    </message>
    <message>
        <source>calibration late</source>
        <translation type="unfinished">calibración atrasada</translation>
    </message>
    <message>
        <source>came up</source>
        <translation type="unfinished">nacidas</translation>
    </message>
    <message>
        <source>cap</source>
        <translation type="unfinished">tope</translation>
    </message>
    <message>
        <source>capped</source>
        <translation type="unfinished">recortado</translation>
    </message>
    <message>
        <source>captured share</source>
        <translation type="unfinished">parte retenida</translation>
    </message>
    <message>
        <source>carbonate</source>
        <translation type="unfinished">carbonato</translation>
    </message>
    <message>
        <source>carried day</source>
        <translation type="unfinished">día en que alcanza</translation>
    </message>
    <message>
        <source>caught before</source>
        <translation type="unfinished">retenido antes</translation>
    </message>
    <message>
        <source>caught in plan</source>
        <translation type="unfinished">retenido en el plan</translation>
    </message>
    <message>
        <source>caution spreads</source>
        <translation type="unfinished">desviaciones de cautela</translation>
    </message>
    <message>
        <source>ceiling</source>
        <translation type="unfinished">máximo</translation>
    </message>
    <message>
        <source>cells</source>
        <translation type="unfinished">celdas</translation>
    </message>
    <message>
        <source>cells a tray</source>
        <translation type="unfinished">celdas por bandeja</translation>
    </message>
    <message>
        <source>chance</source>
        <translation type="unfinished">probabilidad</translation>
    </message>
    <message>
        <source>chances</source>
        <translation type="unfinished">probabilidades</translation>
    </message>
    <message>
        <source>change at high</source>
        <translation type="unfinished">cambio en el valor alto</translation>
    </message>
    <message>
        <source>change at low</source>
        <translation type="unfinished">cambio en el valor bajo</translation>
    </message>
    <message>
        <source>change of a reading in a week</source>
        <translation type="unfinished">cambio de una lectura en una semana</translation>
    </message>
    <message>
        <source>change of a week's harvest</source>
        <translation type="unfinished">cambio de la cosecha de una semana</translation>
    </message>
    <message>
        <source>change of {what}</source>
        <translation type="unfinished">cambio de {what}</translation>
    </message>
    <message>
        <source>change per</source>
        <translation type="unfinished">cambio por grado</translation>
    </message>
    <message>
        <source>change per week</source>
        <translation type="unfinished">cambio por semana</translation>
    </message>
    <message>
        <source>change the feed at {grams} g</source>
        <translation type="unfinished">cambie el alimento a los {grams} g</translation>
    </message>
    <message>
        <source>changed on it: {fields}</source>
        <translation type="unfinished">cambiado en él: {fields}</translation>
    </message>
    <message>
        <source>changed that morning</source>
        <translation type="unfinished">cambiados esa mañana</translation>
    </message>
    <message>
        <source>changes</source>
        <translation type="unfinished">cambia</translation>
    </message>
    <message>
        <source>chosen together</source>
        <translation type="unfinished">elegidos juntos</translation>
    </message>
    <message>
        <source>chosen together · {locked} locked</source>
        <translation type="unfinished">elegidos juntos · {locked} bloqueados</translation>
    </message>
    <message>
        <source>clear</source>
        <translation type="unfinished">limpiar</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation type="unfinished">vaciado</translation>
    </message>
    <message>
        <source>clearing</source>
        <translation type="unfinished">despeje</translation>
    </message>
    <message>
        <source>clearing days</source>
        <translation type="unfinished">días de limpieza</translation>
    </message>
    <message>
        <source>closure</source>
        <translation type="unfinished">cierre del follaje</translation>
    </message>
    <message>
        <source>cold</source>
        <translation type="unfinished">frío</translation>
    </message>
    <message>
        <source>cold store {warmth} °C</source>
        <translation type="unfinished">cámara fría {warmth} °C</translation>
    </message>
    <message>
        <source>cold water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C</source>
        <translation type="unfinished">agua fría: a {water_c} °C {about} crecen al {growth_share} de lo que crecerían a {optimum_c} °C</translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished">columnas</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation type="unfinished">se recupera</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished">práctica común</translation>
    </message>
    <message>
        <source>computation: {formula}</source>
        <translation type="unfinished">cálculo: {formula}</translation>
    </message>
    <message>
        <source>conductivity</source>
        <translation type="unfinished">conductividad</translation>
    </message>
    <message>
        <source>conductivity (EC)</source>
        <translation type="unfinished">conductividad (CE)</translation>
    </message>
    <message>
        <source>conductivity times the factor of the meter</source>
        <translation type="unfinished">conductividad por el factor del medidor</translation>
    </message>
    <message>
        <source>content</source>
        <translation type="unfinished">contenido</translation>
    </message>
    <message>
        <source>cool</source>
        <translation type="unfinished">fresco</translation>
    </message>
    <message>
        <source>corrects {code}</source>
        <translation type="unfinished">corrige {code}</translation>
    </message>
    <message>
        <source>cost</source>
        <translation type="unfinished">costo</translation>
    </message>
    <message>
        <source>count</source>
        <translation type="unfinished">número</translation>
    </message>
    <message>
        <source>count the day before</source>
        <translation type="unfinished">número el día anterior</translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished">contado</translation>
    </message>
    <message>
        <source>counted dead</source>
        <translation type="unfinished">muertos contados</translation>
    </message>
    <message>
        <source>counted from the day of the reading, with no base given</source>
        <translation type="unfinished">contado desde el día de la lectura, sin dar base</translation>
    </message>
    <message>
        <source>counted from {on} on</source>
        <translation type="unfinished">contado desde el {on}</translation>
    </message>
    <message>
        <source>counted on from the test of {day}; {expected} mg/L were expected there</source>
        <translation type="unfinished">contado desde la prueba del {day}; allí se esperaban {expected} mg/L</translation>
    </message>
    <message>
        <source>country, or any words</source>
        <translation type="unfinished">país, o cualquier palabra</translation>
    </message>
    <message>
        <source>counts as {weight} of a batch: the farther from the others, the less</source>
        <translation type="unfinished">cuenta como {weight} de un lote: cuanto más lejos de los demás, menos</translation>
    </message>
    <message>
        <source>crop of the book: sow it</source>
        <translation type="unfinished">cultivo del catálogo: sembrarlo</translation>
    </message>
    <message>
        <source>crops</source>
        <translation type="unfinished">cultivos</translation>
    </message>
    <message>
        <source>culled</source>
        <translation type="unfinished">descartado</translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished">corte</translation>
    </message>
    <message>
        <source>daily death share</source>
        <translation type="unfinished">muertes por día</translation>
    </message>
    <message>
        <source>day at the middle spacing</source>
        <translation type="unfinished">día en el espaciado intermedio</translation>
    </message>
    <message>
        <source>day first</source>
        <translation type="unfinished">primero el día</translation>
    </message>
    <message>
        <source>day in the bed</source>
        <translation type="unfinished">día en la cama</translation>
    </message>
    <message>
        <source>day in the nursery</source>
        <translation type="unfinished">día en el vivero</translation>
    </message>
    <message>
        <source>day of a stage</source>
        <translation type="unfinished">día de una etapa</translation>
    </message>
    <message>
        <source>day of clearing</source>
        <translation type="unfinished">día de limpieza</translation>
    </message>
    <message>
        <source>day of germination</source>
        <translation type="unfinished">día de germinación</translation>
    </message>
    <message>
        <source>day of picking</source>
        <translation type="unfinished">día de cosecha</translation>
    </message>
    <message>
        <source>day on which it was filled</source>
        <translation type="unfinished">día en que se llenó</translation>
    </message>
    <message>
        <source>day on which the liquor goes back</source>
        <translation type="unfinished">día en que vuelve el líquido</translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished">días</translation>
    </message>
    <message>
        <source>days a calibration is late</source>
        <translation type="unfinished">días de atraso de una calibración</translation>
    </message>
    <message>
        <source>days a test is late</source>
        <translation type="unfinished">días de atraso de una prueba</translation>
    </message>
    <message>
        <source>days before</source>
        <translation type="unfinished">días antes</translation>
    </message>
    <message>
        <source>days before the day given</source>
        <translation type="unfinished">días antes del día dado</translation>
    </message>
    <message>
        <source>days before the stage and its own, the first of them counted as well</source>
        <translation type="unfinished">días antes de la etapa y los suyos, contando también el primero</translation>
    </message>
    <message>
        <source>days between doses, less days since the last</source>
        <translation type="unfinished">días entre dosis, menos días desde la última</translation>
    </message>
    <message>
        <source>days by the book or the grower, in whole days, and what warmth and light add</source>
        <translation type="unfinished">días según el libro o quien cultiva, en días enteros, y lo que añaden calor y luz</translation>
    </message>
    <message>
        <source>days by the log</source>
        <translation type="unfinished">días según el registro</translation>
    </message>
    <message>
        <source>days free</source>
        <translation type="unfinished">días libres</translation>
    </message>
    <message>
        <source>days from sowing to the first pick, and days it is ready early</source>
        <translation type="unfinished">días de la siembra a la primera cosecha, y días que está lista antes</translation>
    </message>
    <message>
        <source>days from the first fish to its bed</source>
        <translation type="unfinished">días desde los primeros peces hasta su cama</translation>
    </message>
    <message>
        <source>days from the first free day to the day shown, both counted</source>
        <translation type="unfinished">días desde el primer día libre hasta el mostrado, ambos contados</translation>
    </message>
    <message>
        <source>days from the first pick to the last, and the last day itself</source>
        <translation type="unfinished">días de la primera a la última cosecha, y el último día</translation>
    </message>
    <message>
        <source>days from the first to the last</source>
        <translation type="unfinished">días del primero al último</translation>
    </message>
    <message>
        <source>days late</source>
        <translation type="unfinished">días de atraso</translation>
    </message>
    <message>
        <source>days longer than planned</source>
        <translation type="unfinished">días más de lo previsto</translation>
    </message>
    <message>
        <source>days moved</source>
        <translation type="unfinished">días movidos</translation>
    </message>
    <message>
        <source>days of it</source>
        <translation type="unfinished">días de eso</translation>
    </message>
    <message>
        <source>days of rotting</source>
        <translation type="unfinished">días de descomposición</translation>
    </message>
    <message>
        <source>days of the plan</source>
        <translation type="unfinished">días del plan</translation>
    </message>
    <message>
        <source>days of the stage, less those by the book</source>
        <translation type="unfinished">días de la etapa menos los del libro</translation>
    </message>
    <message>
        <source>days ready early</source>
        <translation type="unfinished">días lista antes</translation>
    </message>
    <message>
        <source>days sd</source>
        <translation type="unfinished">desviación de los días</translation>
    </message>
    <message>
        <source>days since fish were weighed</source>
        <translation type="unfinished">días desde que se pesaron los peces</translation>
    </message>
    <message>
        <source>days since it was last done, less days between</source>
        <translation type="unfinished">días desde la última vez, menos los días entre veces</translation>
    </message>
    <message>
        <source>days since last</source>
        <translation type="unfinished">días desde la última vez</translation>
    </message>
    <message>
        <source>days since last dose</source>
        <translation type="unfinished">días desde la última dosis</translation>
    </message>
    <message>
        <source>days since sowing</source>
        <translation type="unfinished">días desde la siembra</translation>
    </message>
    <message>
        <source>days since sowing less those before the stage, the first counted as one</source>
        <translation type="unfinished">días desde la siembra menos los de antes de la etapa, el primero contado como uno</translation>
    </message>
    <message>
        <source>days sown before it is wanted</source>
        <translation type="unfinished">días sembrado antes de que se quiera</translation>
    </message>
    <message>
        <source>days that it took, less days planned</source>
        <translation type="unfinished">días que tardó menos días previstos</translation>
    </message>
    <message>
        <source>days the grower gave, times the usual spread of such days</source>
        <translation type="unfinished">días que dio quien cultiva, por la dispersión habitual de tales días</translation>
    </message>
    <message>
        <source>days to clearing</source>
        <translation type="unfinished">días hasta la limpieza</translation>
    </message>
    <message>
        <source>days to first pick</source>
        <translation type="unfinished">días hasta la primera cosecha</translation>
    </message>
    <message>
        <source>days to germination</source>
        <translation type="unfinished">días hasta la germinación</translation>
    </message>
    <message>
        <source>days to the bed</source>
        <translation type="unfinished">días hasta la cama</translation>
    </message>
    <message>
        <source>days to the day</source>
        <translation type="unfinished">días hasta ese día</translation>
    </message>
    <message>
        <source>days to the first</source>
        <translation type="unfinished">días hasta el primero</translation>
    </message>
    <message>
        <source>days to the first pick</source>
        <translation type="unfinished">días hasta la primera cosecha</translation>
    </message>
    <message>
        <source>days to the first pick, less those by the book</source>
        <translation type="unfinished">días hasta la primera cosecha menos los del libro</translation>
    </message>
    <message>
        <source>days to the last at the middle spacing</source>
        <translation type="unfinished">días hasta el último en el espaciado intermedio</translation>
    </message>
    <message>
        <source>days to the last in the bed before picking</source>
        <translation type="unfinished">días hasta el último en la cama antes de cosechar</translation>
    </message>
    <message>
        <source>days to the last in the nursery</source>
        <translation type="unfinished">días hasta el último en el vivero</translation>
    </message>
    <message>
        <source>days to the last of clearing</source>
        <translation type="unfinished">días hasta el último de limpieza</translation>
    </message>
    <message>
        <source>days to the last of germination</source>
        <translation type="unfinished">días hasta el último de germinación</translation>
    </message>
    <message>
        <source>days to the last pick</source>
        <translation type="unfinished">días hasta la última cosecha</translation>
    </message>
    <message>
        <source>days to the middle spacing</source>
        <translation type="unfinished">días hasta el espaciado intermedio</translation>
    </message>
    <message>
        <source>days to the nursery</source>
        <translation type="unfinished">días hasta el vivero</translation>
    </message>
    <message>
        <source>days to wait</source>
        <translation type="unfinished">días de espera</translation>
    </message>
    <message>
        <source>days until places are free</source>
        <translation type="unfinished">días hasta que haya lugares libres</translation>
    </message>
    <message>
        <source>days until the fall of alkalinity adds up to what is to spare</source>
        <translation type="unfinished">días hasta que la baja de alcalinidad suma el margen</translation>
    </message>
    <message>
        <source>days until warmth and light have added up to the days by the book, less those days</source>
        <translation type="unfinished">días hasta que calor y luz suman los días del libro, menos esos días</translation>
    </message>
    <message>
        <source>days within farm share</source>
        <translation type="unfinished">parte de la variación dentro de una granja</translation>
    </message>
    <message>
        <source>days without work, parted by commas, such as 24 Dec 2027, 25 Dec 2027</source>
        <translation type="unfinished">días sin trabajo, separados por comas, como 24 Dec 2027, 25 Dec 2027</translation>
    </message>
    <message>
        <source>days, in weeks</source>
        <translation type="unfinished">días, en semanas</translation>
    </message>
    <message>
        <source>days, times the growth of a day</source>
        <translation type="unfinished">días por el crecimiento de un día</translation>
    </message>
    <message>
        <source>days, times the mean fall of a day at its quickest</source>
        <translation type="unfinished">días por la baja media de un día, en su momento más rápido</translation>
    </message>
    <message>
        <source>days, times what is fed a day</source>
        <translation type="unfinished">días por lo que se da en un día</translation>
    </message>
    <message>
        <source>deaths expected</source>
        <translation type="unfinished">muertes esperadas</translation>
    </message>
    <message>
        <source>degC</source>
        <translation type="unfinished">°C</translation>
    </message>
    <message>
        <source>demand</source>
        <translation type="unfinished">demanda</translation>
    </message>
    <message>
        <source>demand of a batch</source>
        <translation type="unfinished">demanda de un lote</translation>
    </message>
    <message>
        <source>demand times</source>
        <translation type="unfinished">demanda, veces</translation>
    </message>
    <message>
        <source>demand, proposal</source>
        <translation type="unfinished">demanda, propuesta</translation>
    </message>
    <message>
        <source>demand, today</source>
        <translation type="unfinished">demanda, hoy</translation>
    </message>
    <message>
        <source>density</source>
        <translation type="unfinished">densidad</translation>
    </message>
    <message>
        <source>density limit</source>
        <translation type="unfinished">límite de densidad</translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished">profundidad</translation>
    </message>
    <message>
        <source>depth of water, times its weight</source>
        <translation type="unfinished">profundidad del agua por su peso</translation>
    </message>
    <message>
        <source>difference from print</source>
        <translation type="unfinished">diferencia con lo impreso</translation>
    </message>
    <message>
        <source>disease</source>
        <translation type="unfinished">enfermedad</translation>
    </message>
    <message>
        <source>dissolved from feed</source>
        <translation type="unfinished">disuelto del alimento</translation>
    </message>
    <message>
        <source>dissolved from feed of a group</source>
        <translation type="unfinished">disuelto del alimento de un grupo</translation>
    </message>
    <message>
        <source>dissolved oxygen</source>
        <translation type="unfinished">oxígeno disuelto</translation>
    </message>
    <message>
        <source>dissolved solids</source>
        <translation type="unfinished">sólidos disueltos</translation>
    </message>
    <message>
        <source>dissolved solids (TDS)</source>
        <translation type="unfinished">sólidos disueltos (TDS)</translation>
    </message>
    <message>
        <source>dissolved solids over the factor of the meter</source>
        <translation type="unfinished">sólidos disueltos entre el factor del medidor</translation>
    </message>
    <message>
        <source>dissolving share</source>
        <translation type="unfinished">parte que se disuelve</translation>
    </message>
    <message>
        <source>does not fit into the doses of one week</source>
        <translation type="unfinished">no cabe en las dosis de una semana</translation>
    </message>
    <message>
        <source>done today, no week falls short</source>
        <translation type="unfinished">hecho hoy, ninguna semana queda corta</translation>
    </message>
    <message>
        <source>done today, {weeks}</source>
        <translation type="unfinished">hecho hoy, {weeks}</translation>
    </message>
    <message>
        <source>dose</source>
        <translation type="unfinished">dosis</translation>
    </message>
    <message>
        <source>dose given</source>
        <translation type="unfinished">dosis dada</translation>
    </message>
    <message>
        <source>doses</source>
        <translation type="unfinished">dosis</translation>
    </message>
    <message>
        <source>doses a week</source>
        <translation type="unfinished">dosis por semana</translation>
    </message>
    <message>
        <source>doses in week</source>
        <translation type="unfinished">dosis en la semana</translation>
    </message>
    <message>
        <source>doubtful at this pH</source>
        <translation type="unfinished">dudoso con este pH</translation>
    </message>
    <message>
        <source>doubtful: its meter was overdue for calibration</source>
        <translation type="unfinished">dudosa: a su medidor ya le tocaba calibrarse</translation>
    </message>
    <message>
        <source>doubtful: the meter of the {what} reading was overdue for calibration</source>
        <translation type="unfinished">dudoso: el medidor de la lectura de {what} tenía la calibración vencida</translation>
    </message>
    <message>
        <source>doubtful: {meter} was overdue</source>
        <translation type="unfinished">dudosa: a {meter} ya le tocaba</translation>
    </message>
    <message>
        <source>drawn from this publication; it shows care, not truth</source>
        <translation type="unfinished">tomado de esta publicación; muestra cuidado, no verdad</translation>
    </message>
    <message>
        <source>draws</source>
        <translation type="unfinished">sorteos</translation>
    </message>
    <message>
        <source>draws that met</source>
        <translation type="unfinished">sorteos que cumplieron</translation>
    </message>
    <message>
        <source>draws that met it, over all draws</source>
        <translation type="unfinished">sorteos que lo cumplieron, entre todos los sorteos</translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished">seco</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation type="unfinished">masa seca</translation>
    </message>
    <message>
        <source>dry mass formed in the week</source>
        <translation type="unfinished">masa seca formada en la semana</translation>
    </message>
    <message>
        <source>dry mass of a whole plant</source>
        <translation type="unfinished">masa seca de una planta entera</translation>
    </message>
    <message>
        <source>dry mass of a whole plant, times the share of its growth in the week</source>
        <translation type="unfinished">masa seca de una planta entera por la parte de su crecimiento en la semana</translation>
    </message>
    <message>
        <source>dry matter share</source>
        <translation type="unfinished">parte de materia seca</translation>
    </message>
    <message>
        <source>due in {days} d</source>
        <translation type="unfinished">toca en {days} d</translation>
    </message>
    <message>
        <source>dull</source>
        <translation type="unfinished">poca luz</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation type="unfinished">antes</translation>
    </message>
    <message>
        <source>eases it</source>
        <translation type="unfinished">lo alivia</translation>
    </message>
    <message>
        <source>effective</source>
        <translation type="unfinished">calor que cuenta</translation>
    </message>
    <message>
        <source>element in a dose</source>
        <translation type="unfinished">elemento en una dosis</translation>
    </message>
    <message>
        <source>element in solids</source>
        <translation type="unfinished">elemento en los sólidos</translation>
    </message>
    <message>
        <source>element in the feed</source>
        <translation type="unfinished">elemento en el alimento</translation>
    </message>
    <message>
        <source>element kept in fish</source>
        <translation type="unfinished">elemento que queda en los peces</translation>
    </message>
    <message>
        <source>element lost as gas</source>
        <translation type="unfinished">elemento perdido como gas</translation>
    </message>
    <message>
        <source>element share</source>
        <translation type="unfinished">parte del elemento</translation>
    </message>
    <message>
        <source>element still wanting in a week</source>
        <translation type="unfinished">elemento que aún falta en una semana</translation>
    </message>
    <message>
        <source>element wanting</source>
        <translation type="unfinished">elemento que falta</translation>
    </message>
    <message>
        <source>empty: the limit of the species</source>
        <translation type="unfinished">vacío: el límite de la especie</translation>
    </message>
    <message>
        <source>empty: the weight the catalogue has</source>
        <translation type="unfinished">vacío: el peso del catálogo</translation>
    </message>
    <message>
        <source>empty: to the end of the plan</source>
        <translation type="unfinished">vacío: hasta el final del plan</translation>
    </message>
    <message>
        <source>enough</source>
        <translation type="unfinished">suficiente</translation>
    </message>
    <message>
        <source>entered</source>
        <translation type="unfinished">anotado</translation>
    </message>
    <message>
        <source>entered for {about}</source>
        <translation type="unfinished">anotado para {about}</translation>
    </message>
    <message>
        <source>eq a day</source>
        <translation type="unfinished">eq al día</translation>
    </message>
    <message>
        <source>eq a week</source>
        <translation type="unfinished">eq por semana</translation>
    </message>
    <message>
        <source>eq/mol</source>
        <translation type="unfinished">eq/mol</translation>
    </message>
    <message>
        <source>every days</source>
        <translation type="unfinished">cada cuántos días</translation>
    </message>
    <message>
        <source>every hole of every bed: what stands there, comes, goes, and what is free</source>
        <translation type="unfinished">cada hueco de cada cama: qué hay, qué llega, qué sale y qué está libre</translation>
    </message>
    <message>
        <source>every {days} d</source>
        <translation type="unfinished">cada {days} d</translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished">todo</translation>
    </message>
    <message>
        <source>exact arithmetic</source>
        <translation type="unfinished">aritmética exacta</translation>
    </message>
    <message>
        <source>expected dead</source>
        <translation type="unfinished">muertos esperados</translation>
    </message>
    <message>
        <source>expected growth × feed conversion</source>
        <translation type="unfinished">crecimiento esperado × conversión alimenticia</translation>
    </message>
    <message>
        <source>extra area of the leanest week</source>
        <translation type="unfinished">área extra de la semana más escasa</translation>
    </message>
    <message>
        <source>factor</source>
        <translation type="unfinished">factor</translation>
    </message>
    <message>
        <source>factor not noted, {factor} taken</source>
        <translation type="unfinished">factor sin anotar, se toma {factor}</translation>
    </message>
    <message>
        <source>factor of the meter</source>
        <translation type="unfinished">factor del medidor</translation>
    </message>
    <message>
        <source>factor of the meter {factor}</source>
        <translation type="unfinished">factor del medidor {factor}</translation>
    </message>
    <message>
        <source>fall</source>
        <translation type="unfinished">baja</translation>
    </message>
    <message>
        <source>fall a day</source>
        <translation type="unfinished">baja por día</translation>
    </message>
    <message>
        <source>fall of alkalinity</source>
        <translation type="unfinished">baja de la alcalinidad</translation>
    </message>
    <message>
        <source>fall of alkalinity before the day</source>
        <translation type="unfinished">baja de la alcalinidad antes del día</translation>
    </message>
    <message>
        <source>fall of alkalinity in a week</source>
        <translation type="unfinished">baja de la alcalinidad en una semana</translation>
    </message>
    <message>
        <source>fall of alkalinity in some days</source>
        <translation type="unfinished">baja de la alcalinidad en unos días</translation>
    </message>
    <message>
        <source>fall of the feed</source>
        <translation type="unfinished">baja del alimento</translation>
    </message>
    <message>
        <source>fall of the feed at a harvest</source>
        <translation type="unfinished">baja del alimento en una cosecha</translation>
    </message>
    <message>
        <source>fall of the feed in a week</source>
        <translation type="unfinished">baja del alimento en una semana</translation>
    </message>
    <message>
        <source>fall per week</source>
        <translation type="unfinished">baja por semana</translation>
    </message>
    <message>
        <source>fall share</source>
        <translation type="unfinished">parte de la baja</translation>
    </message>
    <message>
        <source>fall that day</source>
        <translation type="unfinished">baja de ese día</translation>
    </message>
    <message>
        <source>fallen before</source>
        <translation type="unfinished">bajado antes</translation>
    </message>
    <message>
        <source>fallen by acid</source>
        <translation type="unfinished">bajado por el ácido</translation>
    </message>
    <message>
        <source>falling</source>
        <translation type="unfinished">baja</translation>
    </message>
    <message>
        <source>falling out share</source>
        <translation type="unfinished">parte que precipita</translation>
    </message>
    <message>
        <source>fcr</source>
        <translation type="unfinished">conversión alimenticia</translation>
    </message>
    <message>
        <source>fe</source>
        <translation type="unfinished">fe</translation>
    </message>
    <message>
        <source>feed</source>
        <translation type="unfinished">alimento</translation>
    </message>
    <message>
        <source>feed a day before the harvest</source>
        <translation type="unfinished">alimento por día antes de la cosecha</translation>
    </message>
    <message>
        <source>feed a day in the week</source>
        <translation type="unfinished">alimento por día en la semana</translation>
    </message>
    <message>
        <source>feed a day in the week from the harvest</source>
        <translation type="unfinished">alimento por día en la semana desde la cosecha</translation>
    </message>
    <message>
        <source>feed a day in the weeks before</source>
        <translation type="unfinished">alimento por día en las semanas anteriores</translation>
    </message>
    <message>
        <source>feed a day, times days</source>
        <translation type="unfinished">alimento por día por los días</translation>
    </message>
    <message>
        <source>feed beyond what stands asks for, over what a square metre asks for</source>
        <translation type="unfinished">alimento más allá de lo que pide lo plantado, entre lo que pide un metro cuadrado</translation>
    </message>
    <message>
        <source>feed by day for each tank, planned and given</source>
        <translation type="unfinished">alimento por día para cada tanque, previsto y dado</translation>
    </message>
    <message>
        <source>feed conversion</source>
        <translation type="unfinished">conversión alimenticia</translation>
    </message>
    <message>
        <source>feed does not come back to where it was within the plan</source>
        <translation type="unfinished">el alimento no vuelve a donde estaba dentro del plan</translation>
    </message>
    <message>
        <source>feed falls</source>
        <translation type="unfinished">baja el alimento</translation>
    </message>
    <message>
        <source>feed given</source>
        <translation type="unfinished">alimento dado</translation>
    </message>
    <message>
        <source>feed is back where it was on {on}, after {weeks} weeks</source>
        <translation type="unfinished">el alimento vuelve a donde estaba el {on}, tras {weeks} semanas</translation>
    </message>
    <message>
        <source>feed left over</source>
        <translation type="unfinished">alimento sobrante</translation>
    </message>
    <message>
        <source>feed made for fish of the weight</source>
        <translation type="unfinished">alimento hecho para peces de ese peso</translation>
    </message>
    <message>
        <source>feed of a day over the meals of a day</source>
        <translation type="unfinished">alimento de un día entre las comidas de un día</translation>
    </message>
    <message>
        <source>feed of a group</source>
        <translation type="unfinished">alimento de un grupo</translation>
    </message>
    <message>
        <source>feed of a group a day</source>
        <translation type="unfinished">alimento de un grupo por día</translation>
    </message>
    <message>
        <source>feed of a group in the month</source>
        <translation type="unfinished">alimento de un grupo en el mes</translation>
    </message>
    <message>
        <source>feed of a group in the week</source>
        <translation type="unfinished">alimento de un grupo en la semana</translation>
    </message>
    <message>
        <source>feed of a meal</source>
        <translation type="unfinished">alimento de una comida</translation>
    </message>
    <message>
        <source>feed of a meal over what a level scoop holds</source>
        <translation type="unfinished">alimento de una comida entre lo que cabe en una medida rasa</translation>
    </message>
    <message>
        <source>feed of a week</source>
        <translation type="unfinished">alimento de una semana</translation>
    </message>
    <message>
        <source>feed of a week, times the acid that comes of a kilogram of feed in a loop with plants</source>
        <translation type="unfinished">alimento de una semana por el ácido que sale de un kilo de alimento en un circuito con plantas</translation>
    </message>
    <message>
        <source>feed of some weeks</source>
        <translation type="unfinished">alimento de unas semanas</translation>
    </message>
    <message>
        <source>feed of the fish</source>
        <translation type="unfinished">alimento de los peces</translation>
    </message>
    <message>
        <source>feed of the loop falls by {share} %</source>
        <translation type="unfinished">el alimento del circuito baja {share} %</translation>
    </message>
    <message>
        <source>feed over feed conversion</source>
        <translation type="unfinished">alimento entre conversión alimenticia</translation>
    </message>
    <message>
        <source>feed over feed conversion, at most what the fish can eat for their growth</source>
        <translation type="unfinished">alimento entre conversión alimenticia, como máximo lo que los peces pueden comer para crecer</translation>
    </message>
    <message>
        <source>feed over planted area</source>
        <translation type="unfinished">alimento entre el área plantada</translation>
    </message>
    <message>
        <source>feed over the feed-rate ratio of the band's end</source>
        <translation type="unfinished">alimento entre la razón de alimento del extremo de la franja</translation>
    </message>
    <message>
        <source>feed over the plan</source>
        <translation type="unfinished">alimento en todo el plan</translation>
    </message>
    <message>
        <source>feed really given, entered from {from} on</source>
        <translation type="unfinished">alimento dado de verdad, anotado desde el {from}</translation>
    </message>
    <message>
        <source>feed that has to be added</source>
        <translation type="unfinished">alimento que hay que añadir</translation>
    </message>
    <message>
        <source>feed that is asked for</source>
        <translation type="unfinished">alimento que se pide</translation>
    </message>
    <message>
        <source>feed that is asked for, less what is fed</source>
        <translation type="unfinished">alimento que se pide menos el que se da</translation>
    </message>
    <message>
        <source>feed that the area takes</source>
        <translation type="unfinished">alimento que pide el área</translation>
    </message>
    <message>
        <source>feed that the gain took, over the feed that is given, in percent</source>
        <translation type="unfinished">alimento que tomó el aumento, entre el alimento que se da, en por ciento</translation>
    </message>
    <message>
        <source>feed to order</source>
        <translation type="unfinished">alimento por pedir</translation>
    </message>
    <message>
        <source>feed {before} → {after} g/m²/d</source>
        <translation type="unfinished">alimento {before} → {after} g/m²/d</translation>
    </message>
    <message>
        <source>feed, times its content</source>
        <translation type="unfinished">alimento por su contenido</translation>
    </message>
    <message>
        <source>feed, times its protein</source>
        <translation type="unfinished">alimento por su proteína</translation>
    </message>
    <message>
        <source>feed, times its protein, times the ammonia nitrogen that comes of protein</source>
        <translation type="unfinished">alimento por su proteína por el nitrógeno amoniacal que sale de la proteína</translation>
    </message>
    <message>
        <source>feed, times protein, over protein per nitrogen</source>
        <translation type="unfinished">alimento por proteína, entre la proteína por nitrógeno</translation>
    </message>
    <message>
        <source>feed, to {mass}/day</source>
        <translation type="unfinished">alim. ≤ {mass}/día</translation>
    </message>
    <message>
        <source>feed-rate ratio</source>
        <translation type="unfinished">razón de alimento por área</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation type="unfinished">alimentos</translation>
    </message>
    <message>
        <source>fewest</source>
        <translation type="unfinished">lo mínimo</translation>
    </message>
    <message>
        <source>field conditions</source>
        <translation type="unfinished">condiciones de campo</translation>
    </message>
    <message>
        <source>figure of the publication</source>
        <translation type="unfinished">cifra de la publicación</translation>
    </message>
    <message>
        <source>fill mineraliser</source>
        <translation type="unfinished">llenar mineralizador</translation>
    </message>
    <message>
        <source>filled {day}, {days} d of solids, {air}</source>
        <translation type="unfinished">llenado el {day}, {days} d de sólidos, {air}</translation>
    </message>
    <message>
        <source>filter need</source>
        <translation type="unfinished">filtro necesario</translation>
    </message>
    <message>
        <source>filter surface</source>
        <translation type="unfinished">superficie del filtro</translation>
    </message>
    <message>
        <source>filter surface needed at most</source>
        <translation type="unfinished">superficie de filtro necesaria como máximo</translation>
    </message>
    <message>
        <source>fingerlings can be had so often</source>
        <translation type="unfinished">los alevines se consiguen con esta frecuencia</translation>
    </message>
    <message>
        <source>fingerlings must be had on that day</source>
        <translation type="unfinished">hay que tener alevines ese día</translation>
    </message>
    <message>
        <source>first day of a stage</source>
        <translation type="unfinished">primer día de una etapa</translation>
    </message>
    <message>
        <source>first day of the plan</source>
        <translation type="unfinished">primer día del plan</translation>
    </message>
    <message>
        <source>first day of use, calibrated when new</source>
        <translation type="unfinished">primer día de uso, calibrado de nuevo</translation>
    </message>
    <message>
        <source>first day with weight ≥ harvest weight</source>
        <translation type="unfinished">primer día con peso ≥ peso de cosecha</translation>
    </message>
    <message>
        <source>first day, whole weeks on, from which feed is what is asked for some weeks in a row</source>
        <translation type="unfinished">primer día, por semanas enteras, desde el que el alimento es el pedido varias semanas seguidas</translation>
    </message>
    <message>
        <source>first pick</source>
        <translation type="unfinished">primera cosecha</translation>
    </message>
    <message>
        <source>first pick {days} d late because of {cause} (light alone {by_light} d, warmth alone {by_warmth} d)</source>
        <translation type="unfinished">primera cosecha {days} d tarde por {cause} (solo luz {by_light} d, solo calor {by_warmth} d)</translation>
    </message>
    <message>
        <source>fish</source>
        <translation type="unfinished">peces</translation>
    </message>
    <message>
        <source>fish are lighter when harvested</source>
        <translation type="unfinished">los peces pesan menos al cosecharlos</translation>
    </message>
    <message>
        <source>fish cleared to eat</source>
        <translation type="unfinished">peces liberados para comer</translation>
    </message>
    <message>
        <source>fish dead</source>
        <translation type="unfinished">peces muertos</translation>
    </message>
    <message>
        <source>fish harvested</source>
        <translation type="unfinished">peces cosechados</translation>
    </message>
    <message>
        <source>fish harvested in some weeks</source>
        <translation type="unfinished">peces cosechados en unas semanas</translation>
    </message>
    <message>
        <source>fish of a group</source>
        <translation type="unfinished">peces de un grupo</translation>
    </message>
    <message>
        <source>fish of the group</source>
        <translation type="unfinished">peces del grupo</translation>
    </message>
    <message>
        <source>fish on an average day, times the share that dies in a day, times days</source>
        <translation type="unfinished">peces de un día medio por la parte que muere en un día por los días</translation>
    </message>
    <message>
        <source>fish over the plan</source>
        <translation type="unfinished">peces en todo el plan</translation>
    </message>
    <message>
        <source>fish stocked</source>
        <translation type="unfinished">peces sembrados</translation>
    </message>
    <message>
        <source>fish taken</source>
        <translation type="unfinished">peces sacados</translation>
    </message>
    <message>
        <source>fish treated</source>
        <translation type="unfinished">peces tratados</translation>
    </message>
    <message>
        <source>fish weighed</source>
        <translation type="unfinished">peces pesados</translation>
    </message>
    <message>
        <source>fish, times their mean weight</source>
        <translation type="unfinished">peces por su peso medio</translation>
    </message>
    <message>
        <source>fish, times what each gains in the day</source>
        <translation type="unfinished">peces por lo que gana cada uno en el día</translation>
    </message>
    <message>
        <source>fish, to {mass}</source>
        <translation type="unfinished">peces ≤ {mass}</translation>
    </message>
    <message>
        <source>fit not known: no pH reading</source>
        <translation type="unfinished">no se sabe si es apto: sin lectura de pH</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">base que cabe</translation>
    </message>
    <message>
        <source>fixed grams a day</source>
        <translation type="unfinished">gramos fijos al día</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">aviso</translation>
    </message>
    <message>
        <source>flag: {what}</source>
        <translation type="unfinished">aviso: {what}</translation>
    </message>
    <message>
        <source>flow</source>
        <translation type="unfinished">caudal</translation>
    </message>
    <message>
        <source>flow needed</source>
        <translation type="unfinished">caudal necesario</translation>
    </message>
    <message>
        <source>flow needed with reserve</source>
        <translation type="unfinished">caudal necesario con reserva</translation>
    </message>
    <message>
        <source>flow of the pump</source>
        <translation type="unfinished">caudal de la bomba</translation>
    </message>
    <message>
        <source>food the crops take up</source>
        <translation type="unfinished">nutrientes que toman los cultivos</translation>
    </message>
    <message>
        <source>for fish of {low} to {high} g</source>
        <translation type="unfinished">para peces de {low} a {high} g</translation>
    </message>
    <message>
        <source>for the acid of the week{planned}</source>
        <translation type="unfinished">por el ácido de la semana{planned}</translation>
    </message>
    <message>
        <source>for the rest of the plan</source>
        <translation type="unfinished">por el resto del plan</translation>
    </message>
    <message>
        <source>for {element}</source>
        <translation type="unfinished">para {element}</translation>
    </message>
    <message>
        <source>forecast of the changed farm</source>
        <translation type="unfinished">pronóstico de la granja cambiada</translation>
    </message>
    <message>
        <source>foreseen</source>
        <translation type="unfinished">previsto</translation>
    </message>
    <message>
        <source>formula only</source>
        <translation type="unfinished">solo la fórmula</translation>
    </message>
    <message>
        <source>frame, liner and rafts without water</source>
        <translation type="unfinished">armazón, lona y balsas sin agua</translation>
    </message>
    <message>
        <source>free ammonia</source>
        <translation type="unfinished">amoniaco libre</translation>
    </message>
    <message>
        <source>fresh yield, times dry matter, over the part of the plant that is harvested</source>
        <translation type="unfinished">rendimiento fresco por materia seca, entre la parte de la planta que se cosecha</translation>
    </message>
    <message>
        <source>friction</source>
        <translation type="unfinished">pérdida por fricción</translation>
    </message>
    <message>
        <source>friction share</source>
        <translation type="unfinished">parte de fricción</translation>
    </message>
    <message>
        <source>from doses</source>
        <translation type="unfinished">de las dosis</translation>
    </message>
    <message>
        <source>from low to high of the figure as standard deviations, over its value</source>
        <translation type="unfinished">del valor bajo al alto de la cifra como desviaciones estándar, entre su valor</translation>
    </message>
    <message>
        <source>from low to high of the figure, taken as so many standard deviations</source>
        <translation type="unfinished">del valor bajo al alto de la cifra, tomado como tantas desviaciones estándar</translation>
    </message>
    <message>
        <source>from make-up water</source>
        <translation type="unfinished">del agua de reposición</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished">de memoria</translation>
    </message>
    <message>
        <source>from memory, not checked</source>
        <translation type="unfinished">de memoria, sin comprobar</translation>
    </message>
    <message>
        <source>from memory: shown, but judges nothing</source>
        <translation type="unfinished">de memoria: se muestra, pero no decide nada</translation>
    </message>
    <message>
        <source>from solids batches</source>
        <translation type="unfinished">de los lotes de sólidos</translation>
    </message>
    <message>
        <source>from solids in beds</source>
        <translation type="unfinished">de los sólidos en las camas</translation>
    </message>
    <message>
        <source>from {from} to {until}</source>
        <translation type="unfinished">del {from} al {until}</translation>
    </message>
    <message>
        <source>from {low} to {high} must be reckoned with</source>
        <translation type="unfinished">hay que contar con {low} a {high}</translation>
    </message>
    <message>
        <source>fruiting</source>
        <translation type="unfinished">de fruto</translation>
    </message>
    <message>
        <source>fry</source>
        <translation type="unfinished">peso de alevín</translation>
    </message>
    <message>
        <source>fullest</source>
        <translation type="unfinished">más lleno</translation>
    </message>
    <message>
        <source>fullest tank</source>
        <translation type="unfinished">tanque más lleno</translation>
    </message>
    <message>
        <source>fullest tank {before} → {after} kg/m³</source>
        <translation type="unfinished">tanque más lleno {before} → {after} kg/m³</translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished">g</translation>
    </message>
    <message>
        <source>g DM/plant</source>
        <translation type="unfinished">g MS/planta</translation>
    </message>
    <message>
        <source>g a day</source>
        <translation type="unfinished">g al día</translation>
    </message>
    <message>
        <source>g a day on average</source>
        <translation type="unfinished">g al día en promedio</translation>
    </message>
    <message>
        <source>g a week</source>
        <translation type="unfinished">g por semana</translation>
    </message>
    <message>
        <source>g feed/g gain</source>
        <translation type="unfinished">g alimento/g aumento</translation>
    </message>
    <message>
        <source>g, K or Ca</source>
        <translation type="unfinished">g, K o Ca</translation>
    </message>
    <message>
        <source>g/mol</source>
        <translation type="unfinished">g/mol</translation>
    </message>
    <message>
        <source>gain</source>
        <translation type="unfinished">aumento de peso</translation>
    </message>
    <message>
        <source>gain a day, times days</source>
        <translation type="unfinished">aumento por día por los días</translation>
    </message>
    <message>
        <source>gain in the week</source>
        <translation type="unfinished">aumento en la semana</translation>
    </message>
    <message>
        <source>gain of a group</source>
        <translation type="unfinished">aumento de un grupo</translation>
    </message>
    <message>
        <source>gain of a group in a week</source>
        <translation type="unfinished">aumento de un grupo en una semana</translation>
    </message>
    <message>
        <source>gain of fish in some weeks</source>
        <translation type="unfinished">aumento de los peces en unas semanas</translation>
    </message>
    <message>
        <source>gain, times body content, less what this feed cannot give</source>
        <translation type="unfinished">aumento por contenido del cuerpo, menos lo que este alimento no puede dar</translation>
    </message>
    <message>
        <source>gain, times feed conversion</source>
        <translation type="unfinished">aumento por conversión alimenticia</translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished">faltante</translation>
    </message>
    <message>
        <source>gap of an element</source>
        <translation type="unfinished">faltante de un elemento</translation>
    </message>
    <message>
        <source>gap to the best possible</source>
        <translation type="unfinished">distancia a lo mejor posible</translation>
    </message>
    <message>
        <source>gaps of potassium and calcium are filled first; the gentlest bases share what is left</source>
        <translation type="unfinished">primero se llenan los faltantes de potasio y calcio; las bases más suaves se reparten el resto</translation>
    </message>
    <message>
        <source>gas loss share</source>
        <translation type="unfinished">parte perdida como gas</translation>
    </message>
    <message>
        <source>gathered</source>
        <translation type="unfinished">recogido</translation>
    </message>
    <message>
        <source>gathered in a solids batch</source>
        <translation type="unfinished">recogido en un lote de sólidos</translation>
    </message>
    <message>
        <source>germinated</source>
        <translation type="unfinished">germinado</translation>
    </message>
    <message>
        <source>germination</source>
        <translation type="unfinished">germinación</translation>
    </message>
    <message>
        <source>germination base</source>
        <translation type="unfinished">mínimo para germinar</translation>
    </message>
    <message>
        <source>germination days</source>
        <translation type="unfinished">días de germinación</translation>
    </message>
    <message>
        <source>germination of a lot</source>
        <translation type="unfinished">germinación de un lote</translation>
    </message>
    <message>
        <source>germination of the lot</source>
        <translation type="unfinished">germinación del lote</translation>
    </message>
    <message>
        <source>germination optimum</source>
        <translation type="unfinished">óptimo para germinar</translation>
    </message>
    <message>
        <source>germination share</source>
        <translation type="unfinished">parte que germina</translation>
    </message>
    <message>
        <source>germination thermal time c d</source>
        <translation type="unfinished">suma de calor para germinar</translation>
    </message>
    <message>
        <source>given</source>
        <translation type="unfinished">dada</translation>
    </message>
    <message>
        <source>goes</source>
        <translation type="unfinished">se quita</translation>
    </message>
    <message>
        <source>goes to {place}</source>
        <translation type="unfinished">va a {place}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">good</translation>
    </message>
    <message>
        <source>grams</source>
        <translation type="unfinished">gramos</translation>
    </message>
    <message>
        <source>grams at a time</source>
        <translation type="unfinished">gramos cada vez</translation>
    </message>
    <message>
        <source>grams in the water</source>
        <translation type="unfinished">gramos en el agua</translation>
    </message>
    <message>
        <source>grams of a base for a week</source>
        <translation type="unfinished">gramos de una base para una semana</translation>
    </message>
    <message>
        <source>grams of a dose, times how often it is given</source>
        <translation type="unfinished">gramos de una dosis por las veces que se da</translation>
    </message>
    <message>
        <source>grams of a dose, times the share of the element, times doses that count in the week</source>
        <translation type="unfinished">gramos de una dosis por la parte del elemento por las dosis que cuentan en la semana</translation>
    </message>
    <message>
        <source>grams of a salt for a week</source>
        <translation type="unfinished">gramos de una sal para una semana</translation>
    </message>
    <message>
        <source>grams of iron product</source>
        <translation type="unfinished">gramos de producto de hierro</translation>
    </message>
    <message>
        <source>grams of the product, times the base in a kilogram of it</source>
        <translation type="unfinished">gramos del producto por la base que hay en un kilo</translation>
    </message>
    <message>
        <source>grams of the product, times the share of the element in it</source>
        <translation type="unfinished">gramos del producto por la parte del elemento</translation>
    </message>
    <message>
        <source>grams over the water of the loop</source>
        <translation type="unfinished">gramos entre el agua del circuito</translation>
    </message>
    <message>
        <source>grams, in kilograms</source>
        <translation type="unfinished">gramos, en kilogramos</translation>
    </message>
    <message>
        <source>groups</source>
        <translation type="unfinished">grupos</translation>
    </message>
    <message>
        <source>grown</source>
        <translation type="unfinished">crecido</translation>
    </message>
    <message>
        <source>growth a day</source>
        <translation type="unfinished">crecimiento por día</translation>
    </message>
    <message>
        <source>growth by your own figure</source>
        <translation type="unfinished">crecimiento según su propia cifra</translation>
    </message>
    <message>
        <source>growth coefficient</source>
        <translation type="unfinished">coeficiente de crecimiento</translation>
    </message>
    <message>
        <source>growth of a fish in some days</source>
        <translation type="unfinished">crecimiento de un pez en unos días</translation>
    </message>
    <message>
        <source>growth of a fish since it was weighed</source>
        <translation type="unfinished">crecimiento de un pez desde que se pesó</translation>
    </message>
    <message>
        <source>growth share</source>
        <translation type="unfinished">parte del crecimiento</translation>
    </message>
    <message>
        <source>half life days</source>
        <translation type="unfinished">vida media</translation>
    </message>
    <message>
        <source>half rate</source>
        <translation type="unfinished">luz de media velocidad</translation>
    </message>
    <message>
        <source>hands and tools clean</source>
        <translation type="unfinished">manos y herramientas limpias</translation>
    </message>
    <message>
        <source>hands or tools NOT clean</source>
        <translation type="unfinished">manos o herramientas NO limpias</translation>
    </message>
    <message>
        <source>hardly any would come up; the least share is taken</source>
        <translation type="unfinished">casi ninguna nacería; se toma la parte mínima</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation type="unfinished">cosecha</translation>
    </message>
    <message>
        <source>harvest barred</source>
        <translation type="unfinished">cosecha no permitida</translation>
    </message>
    <message>
        <source>harvest fish</source>
        <translation type="unfinished">cosechar peces</translation>
    </message>
    <message>
        <source>harvest grams</source>
        <translation type="unfinished">gramos cosechados</translation>
    </message>
    <message>
        <source>harvest of a batch</source>
        <translation type="unfinished">cosecha de un lote</translation>
    </message>
    <message>
        <source>harvest of a sowing</source>
        <translation type="unfinished">cosecha de una siembra</translation>
    </message>
    <message>
        <source>harvest of a week</source>
        <translation type="unfinished">cosecha de una semana</translation>
    </message>
    <message>
        <source>harvest of crops</source>
        <translation type="unfinished">cosecha de cultivos</translation>
    </message>
    <message>
        <source>harvest of crops unchanged</source>
        <translation type="unfinished">cosecha de cultivos sin cambio</translation>
    </message>
    <message>
        <source>harvest of fish</source>
        <translation type="unfinished">cosecha de peces</translation>
    </message>
    <message>
        <source>harvest of some weeks</source>
        <translation type="unfinished">cosecha de unas semanas</translation>
    </message>
    <message>
        <source>harvest of the plan</source>
        <translation type="unfinished">cosecha del plan</translation>
    </message>
    <message>
        <source>harvest of today's plan</source>
        <translation type="unfinished">cosecha del plan de hoy</translation>
    </message>
    <message>
        <source>harvest of what stands already</source>
        <translation type="unfinished">cosecha de lo que ya está en pie</translation>
    </message>
    <message>
        <source>harvest over the plan</source>
        <translation type="unfinished">cosecha en todo el plan</translation>
    </message>
    <message>
        <source>harvest plants</source>
        <translation type="unfinished">plantas por cosechar</translation>
    </message>
    <message>
        <source>harvest share</source>
        <translation type="unfinished">parte que se cosecha</translation>
    </message>
    <message>
        <source>harvest weight</source>
        <translation type="unfinished">peso de cosecha</translation>
    </message>
    <message>
        <source>harvest, fish and water of the month, in plain sentences with three charts</source>
        <translation type="unfinished">cosecha, peces y agua del mes, en frases llanas con tres gráficos</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">cosechados</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation type="unfinished">cosechas</translation>
    </message>
    <message>
        <source>harvests of one</source>
        <translation type="unfinished">cosechas de uno</translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished">altura de bombeo</translation>
    </message>
    <message>
        <source>head in m and flow in L/h off its sheet, such as 0:3000; 1:2400; 2:1500</source>
        <translation type="unfinished">altura en m y caudal en L/h de su ficha, como 0:3000; 1:2400; 2:1500</translation>
    </message>
    <message>
        <source>head lost in pipes; empty: a stated allowance</source>
        <translation type="unfinished">altura perdida en tuberías; vacío: una reserva declarada</translation>
    </message>
    <message>
        <source>head with friction</source>
        <translation type="unfinished">altura con fricción</translation>
    </message>
    <message>
        <source>headroom share</source>
        <translation type="unfinished">parte de holgura</translation>
    </message>
    <message>
        <source>heads</source>
        <translation type="unfinished">piezas</translation>
    </message>
    <message>
        <source>heads, or kg</source>
        <translation type="unfinished">piezas, o kg</translation>
    </message>
    <message>
        <source>heat</source>
        <translation type="unfinished">calor</translation>
    </message>
    <message>
        <source>height the water is lifted to the new beds</source>
        <translation type="unfinished">altura a la que se sube el agua a las camas nuevas</translation>
    </message>
    <message>
        <source>height the water is lifted, and what pipes take</source>
        <translation type="unfinished">altura a la que sube el agua, y lo que quitan los tubos</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">retenido</translation>
    </message>
    <message>
        <source>held from {from} until the day before {until}</source>
        <translation type="unfinished">ocupado desde el {from} hasta el día anterior al {until}</translation>
    </message>
    <message>
        <source>held twice</source>
        <translation type="unfinished">ocupado dos veces</translation>
    </message>
    <message>
        <source>high</source>
        <translation type="unfinished">alto</translation>
    </message>
    <message>
        <source>high end of {what}</source>
        <translation type="unfinished">extremo alto de {what}</translation>
    </message>
    <message>
        <source>high end, by the ranges of the figures</source>
        <translation type="unfinished">extremo alto, por los rangos de las cifras</translation>
    </message>
    <message>
        <source>high limit</source>
        <translation type="unfinished">límite alto</translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished">el más alto</translation>
    </message>
    <message>
        <source>hot</source>
        <translation type="unfinished">caluroso</translation>
    </message>
    <message>
        <source>how far draws spread in which this alone is left to chance</source>
        <translation type="unfinished">cuánto se dispersan los sorteos en que solo esto queda al azar</translation>
    </message>
    <message>
        <source>how far it lies above the limit</source>
        <translation type="unfinished">cuánto pasa del límite</translation>
    </message>
    <message>
        <source>how far our figure may be from the print; it comes from the print or from physics</source>
        <translation type="unfinished">cuánto puede alejarse nuestra cifra de lo impreso; viene de lo impreso o de la física</translation>
    </message>
    <message>
        <source>how far ours may be from the print</source>
        <translation type="unfinished">cuánto puede alejarse la nuestra de lo impreso</translation>
    </message>
    <message>
        <source>how far ratios lie apart by their median distance, at least the rule's least, times the book's value</source>
        <translation type="unfinished">cuánto se apartan las razones por su distancia mediana, al menos el mínimo de la regla, por el valor del libro</translation>
    </message>
    <message>
        <source>how far the ratio lies below the bound of short</source>
        <translation type="unfinished">cuánto queda la razón bajo el borde de falta</translation>
    </message>
    <message>
        <source>how many are listed</source>
        <translation type="unfinished">cuántos hay en la lista</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation type="unfinished">cuántos hay</translation>
    </message>
    <message>
        <source>how many there are of what is listed</source>
        <translation type="unfinished">cuántos hay de lo que está en la lista</translation>
    </message>
    <message>
        <source>how much it weighs, times the amount, over the usual amount of a week</source>
        <translation type="unfinished">cuánto pesa, por la cantidad, entre la cantidad habitual de una semana</translation>
    </message>
    <message>
        <source>how much the solids give is not sure</source>
        <translation type="unfinished">no es seguro cuánto dan los sólidos</translation>
    </message>
    <message>
        <source>how supply counts</source>
        <translation type="unfinished">cómo cuenta el aporte</translation>
    </message>
    <message>
        <source>hydroxide, strong</source>
        <translation type="unfinished">hidróxido, fuerte</translation>
    </message>
    <message>
        <source>idle</source>
        <translation type="unfinished">sin usar</translation>
    </message>
    <message>
        <source>in feed</source>
        <translation type="unfinished">en el alimento</translation>
    </message>
    <message>
        <source>in place of batches that make way</source>
        <translation type="unfinished">en lugar de lotes que ceden su sitio</translation>
    </message>
    <message>
        <source>in solids</source>
        <translation type="unfinished">en los sólidos</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation type="unfinished">en existencia</translation>
    </message>
    <message>
        <source>in these days</source>
        <translation type="unfinished">en estos días</translation>
    </message>
    <message>
        <source>income</source>
        <translation type="unfinished">ingresos</translation>
    </message>
    <message>
        <source>inside share</source>
        <translation type="unfinished">parte dentro de la franja</translation>
    </message>
    <message>
        <source>interval days</source>
        <translation type="unfinished">días entre dosis</translation>
    </message>
    <message>
        <source>iron</source>
        <translation type="unfinished">hierro</translation>
    </message>
    <message>
        <source>iron due</source>
        <translation type="unfinished">hierro pendiente</translation>
    </message>
    <message>
        <source>iron grams</source>
        <translation type="unfinished">gramos de hierro</translation>
    </message>
    <message>
        <source>iron share</source>
        <translation type="unfinished">parte de hierro</translation>
    </message>
    <message>
        <source>iron was never given: it is due at once</source>
        <translation type="unfinished">nunca se dio hierro: toca de inmediato</translation>
    </message>
    <message>
        <source>iron was not tested lately: none is taken to be there</source>
        <translation type="unfinished">el hierro no se midió hace poco: se supone que no hay</translation>
    </message>
    <message>
        <source>it has no places yet</source>
        <translation type="unfinished">aún no tiene lugares</translation>
    </message>
    <message>
        <source>it is new</source>
        <translation type="unfinished">es nuevo</translation>
    </message>
    <message>
        <source>it is not reached within the plan</source>
        <translation type="unfinished">no se alcanza dentro del plan</translation>
    </message>
    <message>
        <source>it is taken out</source>
        <translation type="unfinished">se quitó</translation>
    </message>
    <message>
        <source>it raises the pH</source>
        <translation type="unfinished">sube el pH</translation>
    </message>
    <message>
        <source>it stands in other places, with other light or room</source>
        <translation type="unfinished">está en otros sitios, con otra luz u otro espacio</translation>
    </message>
    <message>
        <source>judged over the weeks from {from} to {until}</source>
        <translation type="unfinished">juzgado en las semanas del {from} al {until}</translation>
    </message>
    <message>
        <source>k g per</source>
        <translation type="unfinished">potasio</translation>
    </message>
    <message>
        <source>kept above 0</source>
        <translation type="unfinished">mantenido sobre 0</translation>
    </message>
    <message>
        <source>kept by the act “{act}”</source>
        <translation type="unfinished">guardado por la acción “{act}”</translation>
    </message>
    <message>
        <source>kept in fish</source>
        <translation type="unfinished">queda en los peces</translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished">kg</translation>
    </message>
    <message>
        <source>kg per m3</source>
        <translation type="unfinished">kg por m³</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation type="unfinished">kg/m³</translation>
    </message>
    <message>
        <source>kg/m³, and the limit</source>
        <translation type="unfinished">kg/m³, y el límite</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation type="unfinished">lo que falta</translation>
    </message>
    <message>
        <source>laid down</source>
        <translation type="unfinished">depositado</translation>
    </message>
    <message>
        <source>lamps add {mol} mol/m²/d in {bed}</source>
        <translation type="unfinished">las lámparas añaden {mol} mol/m²/d en {bed}</translation>
    </message>
    <message>
        <source>lamps for the light that is missing</source>
        <translation type="unfinished">lámparas para la luz que falta</translation>
    </message>
    <message>
        <source>largest area of every month</source>
        <translation type="unfinished">mayor área de cada mes</translation>
    </message>
    <message>
        <source>largest fall of the feed</source>
        <translation type="unfinished">mayor baja del alimento</translation>
    </message>
    <message>
        <source>largest of the parts</source>
        <translation type="unfinished">la mayor de las partes</translation>
    </message>
    <message>
        <source>last changed on {on} by {who}: {act}</source>
        <translation type="unfinished">cambiado por última vez el {on} por {who}: {act}</translation>
    </message>
    <message>
        <source>last changed on {on}: {act}</source>
        <translation type="unfinished">cambiado por última vez el {on}: {act}</translation>
    </message>
    <message>
        <source>last day of a stage</source>
        <translation type="unfinished">último día de una etapa</translation>
    </message>
    <message>
        <source>last done on {day}</source>
        <translation type="unfinished">hecho por última vez el {day}</translation>
    </message>
    <message>
        <source>last given {day}</source>
        <translation type="unfinished">dado por última vez el {day}</translation>
    </message>
    <message>
        <source>later</source>
        <translation type="unfinished">después</translation>
    </message>
    <message>
        <source>later days</source>
        <translation type="unfinished">días de más</translation>
    </message>
    <message>
        <source>later than by the book</source>
        <translation type="unfinished">más tarde que en el libro</translation>
    </message>
    <message>
        <source>leafy</source>
        <translation type="unfinished">de hoja</translation>
    </message>
    <message>
        <source>leafy and fruiting crops in their final places</source>
        <translation type="unfinished">cultivos de hoja y de fruto en su lugar final</translation>
    </message>
    <message>
        <source>leafy crops over all that is planted</source>
        <translation type="unfinished">cultivos de hoja entre todo lo plantado</translation>
    </message>
    <message>
        <source>leafy share</source>
        <translation type="unfinished">parte de hoja</translation>
    </message>
    <message>
        <source>leafy share of the planted area</source>
        <translation type="unfinished">parte de hoja del área plantada</translation>
    </message>
    <message>
        <source>least</source>
        <translation type="unfinished">mínimo</translation>
    </message>
    <message>
        <source>least cost at the prices of the linear program, taken from worth of targets</source>
        <translation type="unfinished">costo mínimo a los precios del programa lineal, restado del valor de los objetivos</translation>
    </message>
    <message>
        <source>least n with Σ rate(day) ≥ days, less days</source>
        <translation type="unfinished">menor n con Σ velocidad(día) ≥ días, menos días</translation>
    </message>
    <message>
        <source>least of the parts</source>
        <translation type="unfinished">la menor de las partes</translation>
    </message>
    <message>
        <source>least share</source>
        <translation type="unfinished">parte mínima</translation>
    </message>
    <message>
        <source>least spread share</source>
        <translation type="unfinished">parte mínima de dispersión</translation>
    </message>
    <message>
        <source>least supply {before} of {was} → {after} of {now}</source>
        <translation type="unfinished">aporte menor {before} de {was} → {after} de {now}</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation type="unfinished">dejar fuera</translation>
    </message>
    <message>
        <source>leaving share</source>
        <translation type="unfinished">parte que sale</translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished">lo que queda</translation>
    </message>
    <message>
        <source>left of the lot</source>
        <translation type="unfinished">lo que queda del lote</translation>
    </message>
    <message>
        <source>left with water since then</source>
        <translation type="unfinished">salido con el agua desde entonces</translation>
    </message>
    <message>
        <source>less feed, so less food for the plants</source>
        <translation type="unfinished">menos alimento, así que menos comida para las plantas</translation>
    </message>
    <message>
        <source>less is harvested</source>
        <translation type="unfinished">se cosecha menos</translation>
    </message>
    <message>
        <source>less {what}</source>
        <translation type="unfinished">menos {what}</translation>
    </message>
    <message>
        <source>lethal high</source>
        <translation type="unfinished">máximo mortal</translation>
    </message>
    <message>
        <source>lethal low</source>
        <translation type="unfinished">mínimo mortal</translation>
    </message>
    <message>
        <source>lethal temperature</source>
        <translation type="unfinished">temperatura mortal</translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished">nivel</translation>
    </message>
    <message>
        <source>lifted by base</source>
        <translation type="unfinished">subido por la base</translation>
    </message>
    <message>
        <source>light not known: it slows nothing</source>
        <translation type="unfinished">luz desconocida: no retrasa nada</translation>
    </message>
    <message>
        <source>light target</source>
        <translation type="unfinished">luz deseada</translation>
    </message>
    <message>
        <source>light that lamps add</source>
        <translation type="unfinished">luz que añaden las lámparas</translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished">probable</translation>
    </message>
    <message>
        <source>likely by the book's figures; low and high by the ranges of these figures</source>
        <translation type="unfinished">lo probable, por las cifras del libro; bajo y alto, por los rangos de esas cifras</translation>
    </message>
    <message>
        <source>likely feed by draws</source>
        <translation type="unfinished">alimento probable según los sorteos</translation>
    </message>
    <message>
        <source>likely germination</source>
        <translation type="unfinished">germinación probable</translation>
    </message>
    <message>
        <source>likely harvest by draws</source>
        <translation type="unfinished">cosecha probable según los sorteos</translation>
    </message>
    <message>
        <source>likely ratio by draws</source>
        <translation type="unfinished">razón probable según los sorteos</translation>
    </message>
    <message>
        <source>likely, and the root of the sum of squares of what each figure can add</source>
        <translation type="unfinished">lo probable, más la raíz de la suma de los cuadrados de lo que cada cifra puede añadir</translation>
    </message>
    <message>
        <source>likely, over the factors of less supply and more demand put together</source>
        <translation type="unfinished">lo probable entre los factores de menos aporte y más demanda juntos</translation>
    </message>
    <message>
        <source>likely, times the factors of more supply and less demand put together</source>
        <translation type="unfinished">lo probable por los factores de más aporte y menos demanda juntos</translation>
    </message>
    <message>
        <source>likely, times the factors that figures can lower it by, their logarithms in squares</source>
        <translation type="unfinished">lo probable por los factores con que las cifras pueden bajarlo, sus logaritmos en cuadrados</translation>
    </message>
    <message>
        <source>limit</source>
        <translation type="unfinished">límite</translation>
    </message>
    <message>
        <source>limit in gravel</source>
        <translation type="unfinished">límite en grava</translation>
    </message>
    <message>
        <source>limit of alkalinity by balance</source>
        <translation type="unfinished">límite de alcalinidad por balance</translation>
    </message>
    <message>
        <source>limit of pH by balance</source>
        <translation type="unfinished">límite de pH por balance</translation>
    </message>
    <message>
        <source>limit of pH by trend</source>
        <translation type="unfinished">límite de pH por tendencia</translation>
    </message>
    <message>
        <source>limit under rafts</source>
        <translation type="unfinished">límite bajo las balsas</translation>
    </message>
    <message>
        <source>limit {limit}</source>
        <translation type="unfinished">límite {limit}</translation>
    </message>
    <message>
        <source>limit {limit} kg/m³, kept as far as the plan goes</source>
        <translation type="unfinished">límite {limit} kg/m³, respetado en todo el plan</translation>
    </message>
    <message>
        <source>limit {limit} kg/m³, passed from {week} on: harvest, move or do without some fish by then</source>
        <translation type="unfinished">límite {limit} kg/m³, rebasado desde {week}: coseche, mueva o quite algunos peces antes</translation>
    </message>
    <message>
        <source>limiting element</source>
        <translation type="unfinished">elemento limitante</translation>
    </message>
    <message>
        <source>liquor goes back: {day}</source>
        <translation type="unfinished">el líquido regresa: {day}</translation>
    </message>
    <message>
        <source>liquor of a solids batch</source>
        <translation type="unfinished">licor de un lote de sólidos</translation>
    </message>
    <message>
        <source>liquor returned</source>
        <translation type="unfinished">licor devuelto</translation>
    </message>
    <message>
        <source>liquor that goes back</source>
        <translation type="unfinished">licor que vuelve</translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished">litros</translation>
    </message>
    <message>
        <source>litres, times how often they go round in an hour</source>
        <translation type="unfinished">litros por las veces que dan la vuelta en una hora</translation>
    </message>
    <message>
        <source>little light</source>
        <translation type="unfinished">poca luz</translation>
    </message>
    <message>
        <source>little light alone {light} d, warmth alone {warmth} d</source>
        <translation type="unfinished">solo poca luz {light} d, solo temperatura {warmth} d</translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished">carga</translation>
    </message>
    <message>
        <source>log10 mmHg</source>
        <translation type="unfinished">log10 mmHg</translation>
    </message>
    <message>
        <source>logs an inspector asks for</source>
        <translation type="unfinished">registros que pide un inspector</translation>
    </message>
    <message>
        <source>longest stretch</source>
        <translation type="unfinished">alargamiento máximo</translation>
    </message>
    <message>
        <source>longest time until feed is back</source>
        <translation type="unfinished">mayor tiempo hasta que el alimento se recupera</translation>
    </message>
    <message>
        <source>loop</source>
        <translation type="unfinished">circuito</translation>
    </message>
    <message>
        <source>lost as gas</source>
        <translation type="unfinished">perdido como gas</translation>
    </message>
    <message>
        <source>lost as gas from the batch</source>
        <translation type="unfinished">perdido como gas del lote</translation>
    </message>
    <message>
        <source>lost share</source>
        <translation type="unfinished">parte perdida</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lote</translation>
    </message>
    <message>
        <source>lot 1 day old</source>
        <translation type="unfinished">lote de 1 día</translation>
    </message>
    <message>
        <source>lot {days} days old</source>
        <translation type="unfinished">lote de {days} días</translation>
    </message>
    <message>
        <source>lot {years} years old</source>
        <translation type="unfinished">lote de {years} años</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">lotes</translation>
    </message>
    <message>
        <source>lots more with room</source>
        <translation type="unfinished">mucho más, con lugar</translation>
    </message>
    <message>
        <source>low</source>
        <translation type="unfinished">bajo</translation>
    </message>
    <message>
        <source>low end of {what}</source>
        <translation type="unfinished">extremo bajo de {what}</translation>
    </message>
    <message>
        <source>low limit</source>
        <translation type="unfinished">límite bajo</translation>
    </message>
    <message>
        <source>low to high of the figure as standard deviations, as much as one farm leaves</source>
        <translation type="unfinished">del valor bajo al alto de la cifra como desviaciones estándar, lo que queda en una sola granja</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished">el más bajo</translation>
    </message>
    <message>
        <source>lowest if lowest ≤ low limit, else highest</source>
        <translation type="unfinished">el más bajo si el más bajo ≤ límite bajo, si no el más alto</translation>
    </message>
    <message>
        <source>lowest week of feed</source>
        <translation type="unfinished">semana con menos alimento</translation>
    </message>
    <message>
        <source>lying</source>
        <translation type="unfinished">lo que yace</translation>
    </message>
    <message>
        <source>m/s/degC</source>
        <translation type="unfinished">m/s/°C</translation>
    </message>
    <message>
        <source>m/s/degC2</source>
        <translation type="unfinished">m/s/°C²</translation>
    </message>
    <message>
        <source>m2 a plant</source>
        <translation type="unfinished">m² por planta</translation>
    </message>
    <message>
        <source>made for fish of {a} to {b} g, eaten by fish of {c} to {d} g</source>
        <translation type="unfinished">para peces de {a} a {b} g, lo comen peces de {c} a {d} g</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation type="unfinished">magnesio</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">mantenimiento</translation>
    </message>
    <message>
        <source>make up leaving share</source>
        <translation type="unfinished">parte que sale por reposición</translation>
    </message>
    <message>
        <source>make up water</source>
        <translation type="unfinished">agua de reposición</translation>
    </message>
    <message>
        <source>make-up water a day</source>
        <translation type="unfinished">agua de reposición por día</translation>
    </message>
    <message>
        <source>make-up water, times what a litre brings, times days</source>
        <translation type="unfinished">agua de reposición por lo que trae un litro por los días</translation>
    </message>
    <message>
        <source>many</source>
        <translation type="unfinished">cuántos</translation>
    </message>
    <message>
        <source>many plants near harvest ({plants}): the plants want {rise_share} more than in the four weeks before</source>
        <translation type="unfinished">muchas plantas cerca de la cosecha ({plants}): las plantas piden {rise_share} más que en las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>marketable share</source>
        <translation type="unfinished">parte vendible</translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished">masa</translation>
    </message>
    <message>
        <source>mass of a group</source>
        <translation type="unfinished">masa de un grupo</translation>
    </message>
    <message>
        <source>mass of fish over the tank's volume</source>
        <translation type="unfinished">masa de peces entre el volumen del tanque</translation>
    </message>
    <message>
        <source>mass of the fish, times percent of body weight</source>
        <translation type="unfinished">masa de los peces por el porcentaje del peso corporal</translation>
    </message>
    <message>
        <source>mass of the fish, times percent of it, times their appetite at this warmth</source>
        <translation type="unfinished">masa de los peces por el porcentaje por su apetito a esta temperatura</translation>
    </message>
    <message>
        <source>may</source>
        <translation type="unfinished">se puede</translation>
    </message>
    <message>
        <source>may day</source>
        <translation type="unfinished">día en que se puede</translation>
    </message>
    <message>
        <source>meal</source>
        <translation type="unfinished">comida</translation>
    </message>
    <message>
        <source>meals</source>
        <translation type="unfinished">comidas</translation>
    </message>
    <message>
        <source>mean</source>
        <translation type="unfinished">media</translation>
    </message>
    <message>
        <source>mean air</source>
        <translation type="unfinished">temperatura media del aire</translation>
    </message>
    <message>
        <source>mean count</source>
        <translation type="unfinished">número medio</translation>
    </message>
    <message>
        <source>mean distance</source>
        <translation type="unfinished">distancia media</translation>
    </message>
    <message>
        <source>mean feed</source>
        <translation type="unfinished">alimento medio</translation>
    </message>
    <message>
        <source>mean g after uptake</source>
        <translation type="unfinished">media tras la toma de las plantas</translation>
    </message>
    <message>
        <source>mean light</source>
        <translation type="unfinished">luz media</translation>
    </message>
    <message>
        <source>mean of the parts</source>
        <translation type="unfinished">media de las partes</translation>
    </message>
    <message>
        <source>mean water</source>
        <translation type="unfinished">temperatura media del agua</translation>
    </message>
    <message>
        <source>mean weight</source>
        <translation type="unfinished">peso medio</translation>
    </message>
    <message>
        <source>media plug</source>
        <translation type="unfinished">taco de medio</translation>
    </message>
    <message>
        <source>median of (later - earlier) / days × 7 over all pairs of readings</source>
        <translation type="unfinished">mediana de (posterior - anterior) / días × 7 de todos los pares de lecturas</translation>
    </message>
    <message>
        <source>meets</source>
        <translation type="unfinished">cumple</translation>
    </message>
    <message>
        <source>meets what is wanted</source>
        <translation type="unfinished">cumple lo que se quiere</translation>
    </message>
    <message>
        <source>memory</source>
        <translation type="unfinished">de memoria</translation>
    </message>
    <message>
        <source>menu {title}</source>
        <translation type="unfinished">menú {title}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">bien</translation>
    </message>
    <message>
        <source>meter calibrated</source>
        <translation type="unfinished">medidor calibrado</translation>
    </message>
    <message>
        <source>meter factor</source>
        <translation type="unfinished">factor del medidor</translation>
    </message>
    <message>
        <source>mg</source>
        <translation type="unfinished">mg</translation>
    </message>
    <message>
        <source>mg per</source>
        <translation type="unfinished">mg por litro</translation>
    </message>
    <message>
        <source>mg/L gal/min per lb/d</source>
        <translation type="unfinished">mg/L gal/min por lb/d</translation>
    </message>
    <message>
        <source>mg/L per uS/cm</source>
        <translation type="unfinished">mg/L por µS/cm</translation>
    </message>
    <message>
        <source>mg/L per µS/cm</source>
        <translation type="unfinished">mg/L por µS/cm</translation>
    </message>
    <message>
        <source>middle spacing</source>
        <translation type="unfinished">espaciado intermedio</translation>
    </message>
    <message>
        <source>midpoint</source>
        <translation type="unfinished">punto medio</translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished">min</translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished">lo no cumplido</translation>
    </message>
    <message>
        <source>missed weight</source>
        <translation type="unfinished">peso de lo no cumplido</translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished">lo que falta</translation>
    </message>
    <message>
        <source>mm/MJ/degC^1.5</source>
        <translation type="unfinished">mm/MJ/°C^1.5</translation>
    </message>
    <message>
        <source>mol/MJ</source>
        <translation type="unfinished">mol/MJ</translation>
    </message>
    <message>
        <source>mol/m2/d</source>
        <translation type="unfinished">mol/m²/d</translation>
    </message>
    <message>
        <source>mol/m²/d</source>
        <translation type="unfinished">mol/m²/d</translation>
    </message>
    <message>
        <source>month first</source>
        <translation type="unfinished">primero el mes</translation>
    </message>
    <message>
        <source>months</source>
        <translation type="unfinished">meses</translation>
    </message>
    <message>
        <source>months of the plan</source>
        <translation type="unfinished">meses del plan</translation>
    </message>
    <message>
        <source>months that carry it</source>
        <translation type="unfinished">meses que lo sostienen</translation>
    </message>
    <message>
        <source>more beds</source>
        <translation type="unfinished">más camas</translation>
    </message>
    <message>
        <source>more feed is used</source>
        <translation type="unfinished">se usa más alimento</translation>
    </message>
    <message>
        <source>more is asked for than the feed holds; {capped_g} g are left out</source>
        <translation type="unfinished">se pide más de lo que tiene el alimento; {capped_g} g quedan fuera</translation>
    </message>
    <message>
        <source>more is planted than the fish feed: {fed} g/m²/d are fed, where {low} to {high} are usual</source>
        <translation type="unfinished">hay más plantado de lo que alimentan los peces: se dan {fed} g/m²/d donde lo habitual es {low} a {high}</translation>
    </message>
    <message>
        <source>more than wanted</source>
        <translation type="unfinished">más de lo pedido</translation>
    </message>
    <message>
        <source>more {what}</source>
        <translation type="unfinished">más {what}</translation>
    </message>
    <message>
        <source>most any plan can be worth</source>
        <translation type="unfinished">lo máximo que puede valer un plan</translation>
    </message>
    <message>
        <source>most area fed</source>
        <translation type="unfinished">área máxima que alimentan</translation>
    </message>
    <message>
        <source>most eaten share</source>
        <translation type="unfinished">mayor parte comida</translation>
    </message>
    <message>
        <source>most of the beds planted</source>
        <translation type="unfinished">la mayor parte de las camas plantadas</translation>
    </message>
    <message>
        <source>most over share</source>
        <translation type="unfinished">mayor parte de más</translation>
    </message>
    <message>
        <source>most weeks between</source>
        <translation type="unfinished">máximo de semanas entre una y otra</translation>
    </message>
    <message>
        <source>move</source>
        <translation type="unfinished">mover</translation>
    </message>
    <message>
        <source>moved figure</source>
        <translation type="unfinished">cifra movida</translation>
    </message>
    <message>
        <source>moved to bed</source>
        <translation type="unfinished">pasado a la cama</translation>
    </message>
    <message>
        <source>muted</source>
        <translation type="unfinished">muted</translation>
    </message>
    <message>
        <source>nearest town, region or country, as the grower says it</source>
        <translation type="unfinished">ciudad, región o país más cercano, como lo dice el productor</translation>
    </message>
    <message>
        <source>net pot</source>
        <translation type="unfinished">maceta de red</translation>
    </message>
    <message>
        <source>net pots to order</source>
        <translation type="unfinished">macetas de red por pedir</translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished">nunca</translation>
    </message>
    <message>
        <source>never calibrated: what it reads is doubtful</source>
        <translation type="unfinished">nunca calibrado: lo que lee es dudoso</translation>
    </message>
    <message>
        <source>never feed more than the fish eat: what is left spoils the water</source>
        <translation type="unfinished">nunca dé más alimento del que comen los peces: lo que queda arruina el agua</translation>
    </message>
    <message>
        <source>never given</source>
        <translation type="unfinished">nunca dado</translation>
    </message>
    <message>
        <source>never planted yet</source>
        <translation type="unfinished">nunca plantado</translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished">nuevo</translation>
    </message>
    <message>
        <source>next dose of iron</source>
        <translation type="unfinished">próxima dosis de hierro</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">no</translation>
    </message>
    <message>
        <source>no air temperature entered: warmth slows nothing in the bed</source>
        <translation type="unfinished">sin temperatura del aire anotada: nada se retrasa por ella en la cama</translation>
    </message>
    <message>
        <source>no alkalinity is foreseen for {day}.</source>
        <translation type="unfinished">no se prevé alcalinidad para el {day}.</translation>
    </message>
    <message>
        <source>no alkalinity reading</source>
        <translation type="unfinished">sin lectura de alcalinidad</translation>
    </message>
    <message>
        <source>no ammonia reading</source>
        <translation type="unfinished">sin lectura de amoníaco</translation>
    </message>
    <message>
        <source>no amount</source>
        <translation type="unfinished">sin cantidad</translation>
    </message>
    <message>
        <source>no appetite</source>
        <translation type="unfinished">sin apetito</translation>
    </message>
    <message>
        <source>no bed yet</source>
        <translation type="unfinished">aún sin camas</translation>
    </message>
    <message>
        <source>no climate</source>
        <translation type="unfinished">sin clima</translation>
    </message>
    <message>
        <source>no demand</source>
        <translation type="unfinished">sin demanda</translation>
    </message>
    <message>
        <source>no draw fell on the other side: {draws} draws tell nothing finer than 1 in {draws}</source>
        <translation type="unfinished">ningún sorteo cayó al otro lado: {draws} sorteos no dicen nada más fino que 1 en {draws}</translation>
    </message>
    <message>
        <source>no fall seen</source>
        <translation type="unfinished">no se ve baja</translation>
    </message>
    <message>
        <source>no feed for {days} d before</source>
        <translation type="unfinished">sin alimento {days} d antes</translation>
    </message>
    <message>
        <source>no feed of the book is made for fish of this weight</source>
        <translation type="unfinished">ningún alimento del catálogo es para peces de este peso</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">sin cifra</translation>
    </message>
    <message>
        <source>no filter of {name} has a surface entered.</source>
        <translation type="unfinished">ningún filtro de {name} tiene superficie anotada.</translation>
    </message>
    <message>
        <source>no fish are fed in {about}</source>
        <translation type="unfinished">no se alimentan peces en {about}</translation>
    </message>
    <message>
        <source>no fish are harvested then</source>
        <translation type="unfinished">entonces no se cosechan peces</translation>
    </message>
    <message>
        <source>no fish on that day</source>
        <translation type="unfinished">no hay peces ese día</translation>
    </message>
    <message>
        <source>no fish within the plan</source>
        <translation type="unfinished">sin peces dentro del plan</translation>
    </message>
    <message>
        <source>no free place</source>
        <translation type="unfinished">sin lugar libre</translation>
    </message>
    <message>
        <source>no interval set</source>
        <translation type="unfinished">sin intervalo</translation>
    </message>
    <message>
        <source>no later than the book</source>
        <translation type="unfinished">no más tarde que el catálogo</translation>
    </message>
    <message>
        <source>no meter</source>
        <translation type="unfinished">sin medidor</translation>
    </message>
    <message>
        <source>no pH reading near it</source>
        <translation type="unfinished">sin lectura de pH cercana</translation>
    </message>
    <message>
        <source>no places</source>
        <translation type="unfinished">sin lugares</translation>
    </message>
    <message>
        <source>no places yet</source>
        <translation type="unfinished">aún sin lugares</translation>
    </message>
    <message>
        <source>no plan can be better: this is proven</source>
        <translation type="unfinished">ningún plan puede ser mejor: está probado</translation>
    </message>
    <message>
        <source>no reading of conductivity or dissolved solids</source>
        <translation type="unfinished">no hay lectura de conductividad ni de sólidos disueltos</translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation type="unfinished">aún sin lectura</translation>
    </message>
    <message>
        <source>no reason</source>
        <translation type="unfinished">sin motivo</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished">sin motivo</translation>
    </message>
    <message>
        <source>no regular test of {what} was made yet.</source>
        <translation type="unfinished">aún no se ha hecho una prueba regular de {what}.</translation>
    </message>
    <message>
        <source>no room</source>
        <translation type="unfinished">sin lugar</translation>
    </message>
    <message>
        <source>no sum</source>
        <translation type="unfinished">sin cuenta</translation>
    </message>
    <message>
        <source>no sum: something entered is missing or does not fit</source>
        <translation type="unfinished">sin cuenta: algo de lo anotado falta o no encaja</translation>
    </message>
    <message>
        <source>no sum: treated fish are not eaten until the day on which they are cleared</source>
        <translation type="unfinished">sin cuenta: los peces tratados no se comen hasta el día en que quedan liberados</translation>
    </message>
    <message>
        <source>no temperature of the water of {name} is known.</source>
        <translation type="unfinished">no se conoce ninguna temperatura del agua de {name}.</translation>
    </message>
    <message>
        <source>no time</source>
        <translation type="unfinished">sin tiempo</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation type="unfinished">sin unidad</translation>
    </message>
    <message>
        <source>no water temperature near it</source>
        <translation type="unfinished">sin temperatura del agua cercana</translation>
    </message>
    <message>
        <source>no week falls short if done today</source>
        <translation type="unfinished">ninguna semana queda corta si se hace hoy</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">ninguno</translation>
    </message>
    <message>
        <source>none left</source>
        <translation type="unfinished">no queda ninguno</translation>
    </message>
    <message>
        <source>not aerated</source>
        <translation type="unfinished">sin aire</translation>
    </message>
    <message>
        <source>not back</source>
        <translation type="unfinished">no vuelve</translation>
    </message>
    <message>
        <source>not back within the plan</source>
        <translation type="unfinished">no vuelve dentro del plan</translation>
    </message>
    <message>
        <source>not before {day}, perhaps not within the plan</source>
        <translation type="unfinished">no antes del {day}, quizá no dentro del plan</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation type="unfinished">no calculado</translation>
    </message>
    <message>
        <source>not covered</source>
        <translation type="unfinished">sin cubrir</translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished">no hecho</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished">sin anotar</translation>
    </message>
    <message>
        <source>not entered: {what}</source>
        <translation type="unfinished">sin anotar: {what}</translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished">sin dato</translation>
    </message>
    <message>
        <source>not known: no filter has a surface entered</source>
        <translation type="unfinished">no se sabe: ningún filtro tiene superficie anotada</translation>
    </message>
    <message>
        <source>not known: {reason}</source>
        <translation type="unfinished">no se sabe: {reason}</translation>
    </message>
    <message>
        <source>not known: {why}</source>
        <translation type="unfinished">no se sabe: {why}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">ahora no</translation>
    </message>
    <message>
        <source>not on a day of harvest</source>
        <translation type="unfinished">no en día de cosecha</translation>
    </message>
    <message>
        <source>not on your shelf yet: it has to be bought</source>
        <translation type="unfinished">aún no lo tiene: hay que comprarlo</translation>
    </message>
    <message>
        <source>not over yet: it says only that it lasts longer than so far</source>
        <translation type="unfinished">aún no termina: solo dice que dura más que hasta ahora</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished">sin planear</translation>
    </message>
    <message>
        <source>not suited</source>
        <translation type="unfinished">no apto</translation>
    </message>
    <message>
        <source>not suited to this pH</source>
        <translation type="unfinished">no apto para este pH</translation>
    </message>
    <message>
        <source>not tested lately; careful values are taken for the largest dose</source>
        <translation type="unfinished">sin análisis reciente; para la dosis máxima se toman valores prudentes</translation>
    </message>
    <message>
        <source>not tested yet</source>
        <translation type="unfinished">aún sin probar</translation>
    </message>
    <message>
        <source>not tested: the least that leafy crops are grown with is taken to be there when the plan begins</source>
        <translation type="unfinished">sin prueba: al empezar el plan se supone que hay lo mínimo con que se cultivan hojas</translation>
    </message>
    <message>
        <source>not to be moved by any plan</source>
        <translation type="unfinished">ningún plan puede moverlo</translation>
    </message>
    <message>
        <source>not wanted</source>
        <translation type="unfinished">no pedido</translation>
    </message>
    <message>
        <source>not watched</source>
        <translation type="unfinished">sin vigilar</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">sin pesar</translation>
    </message>
    <message>
        <source>not within the plan</source>
        <translation type="unfinished">no dentro del plan</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">nota</translation>
    </message>
    <message>
        <source>noted by {who}, {when}</source>
        <translation type="unfinished">anotado por {who}, {when}</translation>
    </message>
    <message>
        <source>noted {when}</source>
        <translation type="unfinished">anotado {when}</translation>
    </message>
    <message>
        <source>notes</source>
        <translation type="unfinished">notas</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished">nada</translation>
    </message>
    <message>
        <source>nothing is due then</source>
        <translation type="unfinished">entonces no toca nada</translation>
    </message>
    <message>
        <source>nothing is fed</source>
        <translation type="unfinished">no se alimenta</translation>
    </message>
    <message>
        <source>nothing is known of this number</source>
        <translation type="unfinished">de este número no se sabe nada</translation>
    </message>
    <message>
        <source>nothing is planted</source>
        <translation type="unfinished">no hay nada plantado</translation>
    </message>
    <message>
        <source>nothing is wanted</source>
        <translation type="unfinished">no se pide nada</translation>
    </message>
    <message>
        <source>nothing of {element} is wanted in that week.</source>
        <translation type="unfinished">en esa semana no se pide nada de {element}.</translation>
    </message>
    <message>
        <source>nothing stands there on that day</source>
        <translation type="unfinished">ese día no hay nada allí</translation>
    </message>
    <message>
        <source>nothing that is sown before is touched</source>
        <translation type="unfinished">nada de lo sembrado antes se toca</translation>
    </message>
    <message>
        <source>nothing to show</source>
        <translation type="unfinished">nada que mostrar</translation>
    </message>
    <message>
        <source>nothing wanted</source>
        <translation type="unfinished">nada pedido</translation>
    </message>
    <message>
        <source>nothing: I give every figure</source>
        <translation type="unfinished">nada: doy todas las cifras</translation>
    </message>
    <message>
        <source>number of the parts</source>
        <translation type="unfinished">número de partes</translation>
    </message>
    <message>
        <source>nursery</source>
        <translation type="unfinished">vivero</translation>
    </message>
    <message>
        <source>nursery cells are held longer</source>
        <translation type="unfinished">las celdas del vivero se ocupan más tiempo</translation>
    </message>
    <message>
        <source>nursery cells free in the fullest week</source>
        <translation type="unfinished">celdas del vivero libres en la semana más llena</translation>
    </message>
    <message>
        <source>nursery days</source>
        <translation type="unfinished">días en el vivero</translation>
    </message>
    <message>
        <source>nursery places held</source>
        <translation type="unfinished">lugares del vivero ocupados</translation>
    </message>
    <message>
        <source>nursery survival share</source>
        <translation type="unfinished">parte que vive en el vivero</translation>
    </message>
    <message>
        <source>nutrient short</source>
        <translation type="unfinished">falta un nutriente</translation>
    </message>
    <message>
        <source>of </source>
        <translation type="unfinished">de </translation>
    </message>
    <message>
        <source>of leafy crops, planted all year</source>
        <translation type="unfinished">de cultivos de hoja, plantados todo el año</translation>
    </message>
    <message>
        <source>of sowing, moving and picking; empty: as much as it takes</source>
        <translation type="unfinished">de sembrar, trasladar y recoger; vacío: lo que haga falta</translation>
    </message>
    <message>
        <source>of the catalogue</source>
        <translation type="unfinished">del catálogo</translation>
    </message>
    <message>
        <source>of the light under the roof, what the layers above let through</source>
        <translation type="unfinished">de la luz bajo el techo, lo que dejan pasar las capas de arriba</translation>
    </message>
    <message>
        <source>of the liquor, what goes back</source>
        <translation type="unfinished">del líquido, lo que vuelve</translation>
    </message>
    <message>
        <source>of the nitrogen in the feed; as in the catalogue when not said</source>
        <translation type="unfinished">del nitrógeno del alimento; como en el catálogo si no se dice</translation>
    </message>
    <message>
        <source>of today's number</source>
        <translation type="unfinished">del número de hoy</translation>
    </message>
    <message>
        <source>of treated fish: first day on which they may be eaten</source>
        <translation type="unfinished">de peces tratados: primer día en que pueden comerse</translation>
    </message>
    <message>
        <source>of water or gravel</source>
        <translation type="unfinished">de agua o grava</translation>
    </message>
    <message>
        <source>of {wanted} plants, {sown} have room</source>
        <translation type="unfinished">de {wanted} plantas, {sown} tienen lugar</translation>
    </message>
    <message>
        <source>off feed</source>
        <translation type="unfinished">sin alimento</translation>
    </message>
    <message>
        <source>off feed since {from}</source>
        <translation type="unfinished">sin comer desde el {from}</translation>
    </message>
    <message>
        <source>old lot: test it; until then the careful end of what is likely is taken</source>
        <translation type="unfinished">lote viejo: pruébelo; hasta entonces se toma el extremo prudente de lo probable</translation>
    </message>
    <message>
        <source>on plain paper, to be cut along the lines; for sheets of labels see Paper, Labels and tags</source>
        <translation type="unfinished">en papel simple, para cortar por las líneas; para hojas de etiquetas véase Papel, Etiquetas y tarjetas</translation>
    </message>
    <message>
        <source>on the same side of 1 as the published ratio</source>
        <translation type="unfinished">al mismo lado de 1 que la razón publicada</translation>
    </message>
    <message>
        <source>on {day}</source>
        <translation type="unfinished">el {day}</translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished">una vez</translation>
    </message>
    <message>
        <source>one for each of them</source>
        <translation type="unfinished">uno por cada uno</translation>
    </message>
    <message>
        <source>one less feed now over feed before, in percent</source>
        <translation type="unfinished">uno menos el alimento de ahora entre el de antes, en por ciento</translation>
    </message>
    <message>
        <source>one less the lowest week over what was usual before</source>
        <translation type="unfinished">uno menos la semana más baja entre lo habitual de antes</translation>
    </message>
    <message>
        <source>one lot fewer costs</source>
        <translation type="unfinished">un lote menos cuesta</translation>
    </message>
    <message>
        <source>one lot more costs</source>
        <translation type="unfinished">un lote más cuesta</translation>
    </message>
    <message>
        <source>optimum</source>
        <translation type="unfinished">óptimo</translation>
    </message>
    <message>
        <source>or {tds} dissolved solids; {how} (mg/L per µS/cm); read on {day}</source>
        <translation type="unfinished">o {tds} de sólidos disueltos; {how} (mg/L por µS/cm); leído el {day}</translation>
    </message>
    <message>
        <source>order only</source>
        <translation type="unfinished">solo el orden</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">otro</translation>
    </message>
    <message>
        <source>other weeks become short instead</source>
        <translation type="unfinished">a cambio faltan otras semanas</translation>
    </message>
    <message>
        <source>others</source>
        <translation type="unfinished">otros</translation>
    </message>
    <message>
        <source>our figure</source>
        <translation type="unfinished">nuestra cifra</translation>
    </message>
    <message>
        <source>our figure less the published one, over the published one, in percent</source>
        <translation type="unfinished">nuestra cifra menos la publicada, entre la publicada, en por ciento</translation>
    </message>
    <message>
        <source>our figure, less the published one</source>
        <translation type="unfinished">nuestra cifra menos la publicada</translation>
    </message>
    <message>
        <source>ours</source>
        <translation type="unfinished">la nuestra</translation>
    </message>
    <message>
        <source>ours {ours}, published {published}</source>
        <translation type="unfinished">nuestro {ours}, publicado {published}</translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished">fuera</translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished">terminada</translation>
    </message>
    <message>
        <source>over the limit of the species</source>
        <translation type="unfinished">sobre el límite de la especie</translation>
    </message>
    <message>
        <source>over what is assumed, {likely} in between; agreement anywhere counts</source>
        <translation type="unfinished">según lo supuesto, {likely} en medio; basta con que concuerde en algún punto</translation>
    </message>
    <message>
        <source>over {percent}</source>
        <translation type="unfinished">más de {percent}</translation>
    </message>
    <message>
        <source>over {percent} %</source>
        <translation type="unfinished">más de {percent} %</translation>
    </message>
    <message>
        <source>overdue by {days} d: what it reads is doubtful</source>
        <translation type="unfinished">atrasado {days} d: lo que lee es dudoso</translation>
    </message>
    <message>
        <source>overfed</source>
        <translation type="unfinished">alimento de más</translation>
    </message>
    <message>
        <source>own days cv</source>
        <translation type="unfinished">variación de días propios</translation>
    </message>
    <message>
        <source>own density</source>
        <translation type="unfinished">densidad propia</translation>
    </message>
    <message>
        <source>own share sd</source>
        <translation type="unfinished">desviación de parte propia</translation>
    </message>
    <message>
        <source>own source</source>
        <translation type="unfinished">fuente propia</translation>
    </message>
    <message>
        <source>own yield cv</source>
        <translation type="unfinished">variación de rendimiento propio</translation>
    </message>
    <message>
        <source>oxygen</source>
        <translation type="unfinished">oxígeno</translation>
    </message>
    <message>
        <source>oxygen after feeding</source>
        <translation type="unfinished">oxígeno tras alimentar</translation>
    </message>
    <message>
        <source>oxygen an hour after feeding</source>
        <translation type="unfinished">oxígeno por hora tras alimentar</translation>
    </message>
    <message>
        <source>oxygen asked for at most</source>
        <translation type="unfinished">oxígeno pedido como máximo</translation>
    </message>
    <message>
        <source>oxygen held</source>
        <translation type="unfinished">oxígeno que cabe</translation>
    </message>
    <message>
        <source>oxygen in balance with air at the water's warmth and the height of the place, as the mean over the days of the week</source>
        <translation type="unfinished">oxígeno en equilibrio con el aire a la temperatura del agua y la altitud del lugar, como media de los días de la semana</translation>
    </message>
    <message>
        <source>oxygen per feed</source>
        <translation type="unfinished">oxígeno por alimento</translation>
    </message>
    <message>
        <source>oxygen per nitrogen</source>
        <translation type="unfinished">oxígeno por nitrógeno</translation>
    </message>
    <message>
        <source>oxygen saturation at the water's temperature and the air pressure of altitude</source>
        <translation type="unfinished">saturación de oxígeno a la temperatura del agua y la presión del aire de la altitud</translation>
    </message>
    <message>
        <source>oxygen taken an hour</source>
        <translation type="unfinished">oxígeno consumido por hora</translation>
    </message>
    <message>
        <source>oxygen that water can hold</source>
        <translation type="unfinished">oxígeno que cabe en el agua</translation>
    </message>
    <message>
        <source>oxygen would be short for the most that may be asked</source>
        <translation type="unfinished">faltaría oxígeno para lo máximo que se puede pedir</translation>
    </message>
    <message>
        <source>p g per</source>
        <translation type="unfinished">fósforo</translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished">pH</translation>
    </message>
    <message>
        <source>pH and conductivity</source>
        <translation type="unfinished">pH y conductividad</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation type="unfinished">medidor de pH</translation>
    </message>
    <message>
        <source>pH, by its trend</source>
        <translation type="unfinished">pH, por su tendencia</translation>
    </message>
    <message>
        <source>pH, by the acid made</source>
        <translation type="unfinished">pH, por el ácido producido</translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished">parte</translation>
    </message>
    <message>
        <source>part of the climate is not known and slows nothing</source>
        <translation type="unfinished">parte del clima no se conoce y no retrasa nada</translation>
    </message>
    <message>
        <source>parts are standard deviations: all together are less than their sum</source>
        <translation type="unfinished">las partes son desviaciones estándar: todas juntas son menos que su suma</translation>
    </message>
    <message>
        <source>peak factor</source>
        <translation type="unfinished">factor de punta</translation>
    </message>
    <message>
        <source>pellet {size} mm</source>
        <translation type="unfinished">pellet de {size} mm</translation>
    </message>
    <message>
        <source>pelleted</source>
        <translation type="unfinished">peletizada</translation>
    </message>
    <message>
        <source>per plant</source>
        <translation type="unfinished">por planta</translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished">por ciento</translation>
    </message>
    <message>
        <source>pest</source>
        <translation type="unfinished">plaga</translation>
    </message>
    <message>
        <source>pest seen</source>
        <translation type="unfinished">plaga vista</translation>
    </message>
    <message>
        <source>pests and disease, bed by bed</source>
        <translation type="unfinished">plagas y enfermedades, cama por cama</translation>
    </message>
    <message>
        <source>ph</source>
        <translation type="unfinished">pH</translation>
    </message>
    <message>
        <source>ph step</source>
        <translation type="unfinished">paso de pH</translation>
    </message>
    <message>
        <source>ph target</source>
        <translation type="unfinished">pH buscado</translation>
    </message>
    <message>
        <source>phosphorus</source>
        <translation type="unfinished">fósforo</translation>
    </message>
    <message>
        <source>physics</source>
        <translation type="unfinished">física</translation>
    </message>
    <message>
        <source>pick</source>
        <translation type="unfinished">cosechar</translation>
    </message>
    <message>
        <source>pick share</source>
        <translation type="unfinished">parte de la cosecha</translation>
    </message>
    <message>
        <source>picked</source>
        <translation type="unfinished">cosechado</translation>
    </message>
    <message>
        <source>picked on a day</source>
        <translation type="unfinished">cosechado en un día</translation>
    </message>
    <message>
        <source>picking</source>
        <translation type="unfinished">recolección</translation>
    </message>
    <message>
        <source>picking days</source>
        <translation type="unfinished">días de cosecha</translation>
    </message>
    <message>
        <source>picking factor</source>
        <translation type="unfinished">factor de cosecha</translation>
    </message>
    <message>
        <source>picks factor</source>
        <translation type="unfinished">factor de cortes</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation type="unfinished">piezas</translation>
    </message>
    <message>
        <source>pieces of some weeks</source>
        <translation type="unfinished">piezas de unas semanas</translation>
    </message>
    <message>
        <source>pka intercept</source>
        <translation type="unfinished">ordenada del pKa</translation>
    </message>
    <message>
        <source>pka slope k</source>
        <translation type="unfinished">pendiente del pKa</translation>
    </message>
    <message>
        <source>placed</source>
        <translation type="unfinished">colocadas</translation>
    </message>
    <message>
        <source>places</source>
        <translation type="unfinished">lugares</translation>
    </message>
    <message>
        <source>places free</source>
        <translation type="unfinished">lugares libres</translation>
    </message>
    <message>
        <source>places free in a bed</source>
        <translation type="unfinished">lugares libres en una cama</translation>
    </message>
    <message>
        <source>places held</source>
        <translation type="unfinished">lugares ocupados</translation>
    </message>
    <message>
        <source>places held by a batch</source>
        <translation type="unfinished">lugares ocupados por un lote</translation>
    </message>
    <message>
        <source>places of a batch</source>
        <translation type="unfinished">lugares de un lote</translation>
    </message>
    <message>
        <source>places of a bed</source>
        <translation type="unfinished">lugares de una cama</translation>
    </message>
    <message>
        <source>places, times the area of one in this bed</source>
        <translation type="unfinished">lugares por el área de uno en esta cama</translation>
    </message>
    <message>
        <source>plain</source>
        <translation type="unfinished">simple</translation>
    </message>
    <message>
        <source>plain paper, to be cut</source>
        <translation type="unfinished">papel común, para cortar</translation>
    </message>
    <message>
        <source>plan weeks</source>
        <translation type="unfinished">semanas del plan</translation>
    </message>
    <message>
        <source>planned day</source>
        <translation type="unfinished">día previsto</translation>
    </message>
    <message>
        <source>planned days</source>
        <translation type="unfinished">días previstos</translation>
    </message>
    <message>
        <source>planted</source>
        <translation type="unfinished">plantado</translation>
    </message>
    <message>
        <source>planted area</source>
        <translation type="unfinished">área plantada</translation>
    </message>
    <message>
        <source>planted area this feed carries by {rule}; by {other} {area}</source>
        <translation type="unfinished">área plantada que este alimento sostiene según {rule}; según {other}, {area}</translation>
    </message>
    <message>
        <source>planted areas, times the low end of their bands, for the protein that is fed</source>
        <translation type="unfinished">áreas plantadas por el extremo bajo de sus franjas, para la proteína que se da</translation>
    </message>
    <message>
        <source>plants</source>
        <translation type="unfinished">plantas</translation>
    </message>
    <message>
        <source>plants are short of food</source>
        <translation type="unfinished">falta comida a las plantas</translation>
    </message>
    <message>
        <source>plants in the bed</source>
        <translation type="unfinished">plantas en la cama</translation>
    </message>
    <message>
        <source>plants lack {grams} g</source>
        <translation type="unfinished">a las plantas les faltan {grams} g</translation>
    </message>
    <message>
        <source>plants of a batch</source>
        <translation type="unfinished">plantas de un lote</translation>
    </message>
    <message>
        <source>plants of all sowings</source>
        <translation type="unfinished">plantas de todas las siembras</translation>
    </message>
    <message>
        <source>plants so that no week lacks and later ones are not over, evened by least squares</source>
        <translation type="unfinished">plantas para que a ninguna semana le falte ni sobre después, igualadas por mínimos cuadrados</translation>
    </message>
    <message>
        <source>plants sown</source>
        <translation type="unfinished">plantas sembradas</translation>
    </message>
    <message>
        <source>plants that are moved to a raft</source>
        <translation type="unfinished">plantas que se pasan a una balsa</translation>
    </message>
    <message>
        <source>plants that live</source>
        <translation type="unfinished">plantas que viven</translation>
    </message>
    <message>
        <source>plants that live in the bed, in whole plants</source>
        <translation type="unfinished">plantas que viven en la cama, en plantas enteras</translation>
    </message>
    <message>
        <source>plants that live in the bed, in whole plants, times the share that the day has</source>
        <translation type="unfinished">plantas que viven en la cama, en plantas enteras, por la parte del día</translation>
    </message>
    <message>
        <source>plants that live, times the share of their picks that falls in the week</source>
        <translation type="unfinished">plantas que viven por la parte de sus cortes que cae en la semana</translation>
    </message>
    <message>
        <source>plants that live, times the share of their picks, times what a plant gives</source>
        <translation type="unfinished">plantas que viven por la parte de sus cortes por lo que da una planta</translation>
    </message>
    <message>
        <source>plants that live, times what a plant gives, times the share of it that can be sold</source>
        <translation type="unfinished">plantas que viven por lo que da una planta por la parte que se puede vender</translation>
    </message>
    <message>
        <source>plants to pick</source>
        <translation type="unfinished">plantas por cosechar</translation>
    </message>
    <message>
        <source>plants wanted with an allowance for losses, over the share that comes up</source>
        <translation type="unfinished">plantas deseadas con una reserva por pérdidas, entre la parte que nace</translation>
    </message>
    <message>
        <source>plants wanted, over the share that comes up and lives in the nursery, rounded up</source>
        <translation type="unfinished">plantas deseadas entre la parte que nace y vive en el vivero, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>plants wanted, over the share that comes up and the share that lives, rounded up</source>
        <translation type="unfinished">plantas deseadas entre la parte que nace y la que vive, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>plants without a place</source>
        <translation type="unfinished">plantas sin lugar</translation>
    </message>
    <message>
        <source>plants without a place {before} → {after}</source>
        <translation type="unfinished">plantas sin lugar {before} → {after}</translation>
    </message>
    <message>
        <source>plants without place</source>
        <translation type="unfinished">plantas sin lugar</translation>
    </message>
    <message>
        <source>plants, less those that have a place in a bed</source>
        <translation type="unfinished">plantas menos las que tienen lugar en una cama</translation>
    </message>
    <message>
        <source>plants, times dry mass formed in the week, times content</source>
        <translation type="unfinished">plantas por la masa seca formada en la semana por el contenido</translation>
    </message>
    <message>
        <source>plants, times the share of their picks in the week, times what a plant gives</source>
        <translation type="unfinished">plantas por la parte de sus cortes en la semana por lo que da una planta</translation>
    </message>
    <message>
        <source>plants/m²</source>
        <translation type="unfinished">plantas/m²</translation>
    </message>
    <message>
        <source>plugs to order</source>
        <translation type="unfinished">tacos por pedir</translation>
    </message>
    <message>
        <source>poor seed</source>
        <translation type="unfinished">mala semilla</translation>
    </message>
    <message>
        <source>potassium</source>
        <translation type="unfinished">potasio</translation>
    </message>
    <message>
        <source>pots</source>
        <translation type="unfinished">macetas</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation type="unfinished">corte de luz</translation>
    </message>
    <message>
        <source>power of lamps</source>
        <translation type="unfinished">potencia de lámparas</translation>
    </message>
    <message>
        <source>power of pumps</source>
        <translation type="unfinished">potencia de bombas</translation>
    </message>
    <message>
        <source>power wanted</source>
        <translation type="unfinished">potencia necesaria</translation>
    </message>
    <message>
        <source>ppm meter</source>
        <translation type="unfinished">medidor de ppm</translation>
    </message>
    <message>
        <source>ppm need a meter with its factor: choose one above, or add it first.</source>
        <translation type="unfinished">las ppm necesitan un medidor con su factor: elija uno arriba o añádalo antes.</translation>
    </message>
    <message>
        <source>ppm per µS/cm, 0.3 to 1</source>
        <translation type="unfinished">ppm por µS/cm, 0.3 a 1</translation>
    </message>
    <message>
        <source>present</source>
        <translation type="unfinished">presente</translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished">precio</translation>
    </message>
    <message>
        <source>primed</source>
        <translation type="unfinished">preacondicionada</translation>
    </message>
    <message>
        <source>primed seed keeps less long: test it; the careful end of what is likely is taken</source>
        <translation type="unfinished">la semilla preacondicionada dura menos: pruébela; se toma el extremo prudente de lo probable</translation>
    </message>
    <message>
        <source>printed rate</source>
        <translation type="unfinished">velocidad publicada</translation>
    </message>
    <message>
        <source>printed rate at</source>
        <translation type="unfinished">temperatura de la velocidad publicada</translation>
    </message>
    <message>
        <source>prior seeds</source>
        <translation type="unfinished">semillas de partida</translation>
    </message>
    <message>
        <source>prior share</source>
        <translation type="unfinished">parte de partida</translation>
    </message>
    <message>
        <source>proposal</source>
        <translation type="unfinished">propuesta</translation>
    </message>
    <message>
        <source>protein</source>
        <translation type="unfinished">proteína</translation>
    </message>
    <message>
        <source>protein fed</source>
        <translation type="unfinished">proteína dada</translation>
    </message>
    <message>
        <source>protein fed to a group</source>
        <translation type="unfinished">proteína dada a un grupo</translation>
    </message>
    <message>
        <source>protein in what is fed</source>
        <translation type="unfinished">proteína en lo que se da</translation>
    </message>
    <message>
        <source>protein of the feed in the week</source>
        <translation type="unfinished">proteína del alimento en la semana</translation>
    </message>
    <message>
        <source>protein per nitrogen</source>
        <translation type="unfinished">proteína por nitrógeno</translation>
    </message>
    <message>
        <source>protein share</source>
        <translation type="unfinished">parte de proteína</translation>
    </message>
    <message>
        <source>protein that is fed, over the feed</source>
        <translation type="unfinished">proteína que se da entre el alimento</translation>
    </message>
    <message>
        <source>protein where nothing is fed</source>
        <translation type="unfinished">proteína donde no se da alimento</translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished">publicada</translation>
    </message>
    <message>
        <source>published cases</source>
        <translation type="unfinished">casos publicados</translation>
    </message>
    <message>
        <source>published figure</source>
        <translation type="unfinished">cifra publicada</translation>
    </message>
    <message>
        <source>published: {line}</source>
        <translation type="unfinished">publicado: {line}</translation>
    </message>
    <message>
        <source>purged for {days} days before the harvest on {harvest}</source>
        <translation type="unfinished">purgados {days} días antes de la cosecha del {harvest}</translation>
    </message>
    <message>
        <source>quicker than by the book</source>
        <translation type="unfinished">más rápido que en el libro</translation>
    </message>
    <message>
        <source>rad</source>
        <translation type="unfinished">rad</translation>
    </message>
    <message>
        <source>raft</source>
        <translation type="unfinished">balsa</translation>
    </message>
    <message>
        <source>rafts, blocks or trays</source>
        <translation type="unfinished">balsas, bloques o bandejas</translation>
    </message>
    <message>
        <source>rafts, blocks or trays, times rows, times places along a row</source>
        <translation type="unfinished">balsas, bloques o bandejas por filas por lugares de una fila</translation>
    </message>
    <message>
        <source>rain in the month</source>
        <translation type="unfinished">lluvia del mes</translation>
    </message>
    <message>
        <source>raised</source>
        <translation type="unfinished">aumento</translation>
    </message>
    <message>
        <source>range deviations</source>
        <translation type="unfinished">desviaciones del rango</translation>
    </message>
    <message>
        <source>range of ratio</source>
        <translation type="unfinished">rango de la razón</translation>
    </message>
    <message>
        <source>range of {what}</source>
        <translation type="unfinished">rango de {what}</translation>
    </message>
    <message>
        <source>ranges</source>
        <translation type="unfinished">rangos</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">velocidad</translation>
    </message>
    <message>
        <source>rate share under rafts</source>
        <translation type="unfinished">parte de la velocidad bajo balsas</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation type="unfinished">razón</translation>
    </message>
    <message>
        <source>ratio; short below short below, thin below thin below, ample above ample above, met between</source>
        <translation type="unfinished">razón; falta bajo el borde de falta, justo bajo el de justo, sobra sobre el de sobra, bien entre ambos</translation>
    </message>
    <message>
        <source>reached already</source>
        <translation type="unfinished">ya se llegó</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">leído</translation>
    </message>
    <message>
        <source>read from the crop's table of normal seedlings by temperature</source>
        <translation type="unfinished">leído de la tabla del cultivo de plántulas normales por temperatura</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation type="unfinished">leído en la fuente</translation>
    </message>
    <message>
        <source>read off the pump's curve, straight between its points</source>
        <translation type="unfinished">leído de la curva de la bomba, recto entre sus puntos</translation>
    </message>
    <message>
        <source>read on {day}</source>
        <translation type="unfinished">leído el {day}</translation>
    </message>
    <message>
        <source>read straight between the points of the curve</source>
        <translation type="unfinished">leído en línea recta entre los puntos de la curva</translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished">lectura</translation>
    </message>
    <message>
        <source>ready to harvest</source>
        <translation type="unfinished">listo para cosechar</translation>
    </message>
    <message>
        <source>ready {days} days before it is wanted</source>
        <translation type="unfinished">listo {days} días antes de lo que se quiere</translation>
    </message>
    <message>
        <source>reckoned day by day: plants cannot take today what is only supplied tomorrow</source>
        <translation type="unfinished">calculado día a día: las plantas no pueden tomar hoy lo que se aporta mañana</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">referencia</translation>
    </message>
    <message>
        <source>reference protein</source>
        <translation type="unfinished">proteína de referencia</translation>
    </message>
    <message>
        <source>reference value</source>
        <translation type="unfinished">valor de referencia</translation>
    </message>
    <message>
        <source>repairs it</source>
        <translation type="unfinished">lo arregla</translation>
    </message>
    <message>
        <source>replaced by {code}</source>
        <translation type="unfinished">reemplazado por {code}</translation>
    </message>
    <message>
        <source>reserve share</source>
        <translation type="unfinished">parte de reserva</translation>
    </message>
    <message>
        <source>return liquor</source>
        <translation type="unfinished">devolver licor</translation>
    </message>
    <message>
        <source>returned share</source>
        <translation type="unfinished">parte devuelta</translation>
    </message>
    <message>
        <source>rise of an element by a dose</source>
        <translation type="unfinished">subida de un elemento por una dosis</translation>
    </message>
    <message>
        <source>rise share</source>
        <translation type="unfinished">parte de la subida</translation>
    </message>
    <message>
        <source>rising</source>
        <translation type="unfinished">sube</translation>
    </message>
    <message>
        <source>robust spread</source>
        <translation type="unfinished">dispersión robusta</translation>
    </message>
    <message>
        <source>room share</source>
        <translation type="unfinished">parte del espacio</translation>
    </message>
    <message>
        <source>rounding of the print</source>
        <translation type="unfinished">redondeo de lo impreso</translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished">filas</translation>
    </message>
    <message>
        <source>safe</source>
        <translation type="unfinished">seguro</translation>
    </message>
    <message>
        <source>salt builds up in the water</source>
        <translation type="unfinished">se acumula sal en el agua</translation>
    </message>
    <message>
        <source>salt grams</source>
        <translation type="unfinished">gramos de sal</translation>
    </message>
    <message>
        <source>salts</source>
        <translation type="unfinished">sales</translation>
    </message>
    <message>
        <source>sampling error of the chance</source>
        <translation type="unfinished">error de muestreo de la probabilidad</translation>
    </message>
    <message>
        <source>saturation not known: no water temperature by month</source>
        <translation type="unfinished">saturación desconocida: falta la temperatura del agua por mes</translation>
    </message>
    <message>
        <source>says which light is wanted</source>
        <translation type="unfinished">dice qué luz se quiere</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation type="unfinished">medida</translation>
    </message>
    <message>
        <source>scoops of a meal</source>
        <translation type="unfinished">medidas por comida</translation>
    </message>
    <message>
        <source>score 0-3</source>
        <translation type="unfinished">nivel 0-3</translation>
    </message>
    <message>
        <source>score of the way</source>
        <translation type="unfinished">puntaje del modo</translation>
    </message>
    <message>
        <source>seed lot</source>
        <translation type="unfinished">lote de semilla</translation>
    </message>
    <message>
        <source>seed tested</source>
        <translation type="unfinished">semilla probada</translation>
    </message>
    <message>
        <source>seed, pots, feed, base and iron, by the month they are used in</source>
        <translation type="unfinished">semilla, macetas, alimento, base y hierro, por el mes en que se usan</translation>
    </message>
    <message>
        <source>seedlings get older and may stretch</source>
        <translation type="unfinished">las plántulas envejecen y pueden espigarse</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation type="unfinished">semillas</translation>
    </message>
    <message>
        <source>seeds a pot</source>
        <translation type="unfinished">semillas por maceta</translation>
    </message>
    <message>
        <source>seeds and plants that live one by one</source>
        <translation type="unfinished">semillas y plantas que viven una por una</translation>
    </message>
    <message>
        <source>seeds counted</source>
        <translation type="unfinished">semillas contadas</translation>
    </message>
    <message>
        <source>seeds in a coat, one to a plug</source>
        <translation type="unfinished">semillas recubiertas, una por taco</translation>
    </message>
    <message>
        <source>seeds laid out</source>
        <translation type="unfinished">semillas puestas a germinar</translation>
    </message>
    <message>
        <source>seeds made ready to sprout; they keep less long</source>
        <translation type="unfinished">semillas preparadas para brotar; duran menos</translation>
    </message>
    <message>
        <source>seeds of all sowings</source>
        <translation type="unfinished">semillas de todas las siembras</translation>
    </message>
    <message>
        <source>seeds of some weeks</source>
        <translation type="unfinished">semillas de unas semanas</translation>
    </message>
    <message>
        <source>seeds to order</source>
        <translation type="unfinished">semillas por pedir</translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished">visto</translation>
    </message>
    <message>
        <source>settled after days</source>
        <translation type="unfinished">días hasta asentarse</translation>
    </message>
    <message>
        <source>share of base</source>
        <translation type="unfinished">parte de la base</translation>
    </message>
    <message>
        <source>share of light let through</source>
        <translation type="unfinished">parte de la luz que deja pasar</translation>
    </message>
    <message>
        <source>share of normal seedlings at temperature, over the table's best</source>
        <translation type="unfinished">parte de plántulas normales a la temperatura, entre lo mejor de la tabla</translation>
    </message>
    <message>
        <source>share of the day</source>
        <translation type="unfinished">parte del día</translation>
    </message>
    <message>
        <source>share of weeks outside the band, and how far they lie from it on average</source>
        <translation type="unfinished">parte de semanas fuera de la franja, y cuánto se alejan de ella en promedio</translation>
    </message>
    <message>
        <source>share that falls out in a day</source>
        <translation type="unfinished">parte que precipita en un día</translation>
    </message>
    <message>
        <source>share that leaves in a day</source>
        <translation type="unfinished">parte que sale en un día</translation>
    </message>
    <message>
        <source>shared variance share</source>
        <translation type="unfinished">parte de la variación común</translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished">falta</translation>
    </message>
    <message>
        <source>short are {elements}; the lowest is {element}</source>
        <translation type="unfinished">faltan {elements}; el más bajo es {element}</translation>
    </message>
    <message>
        <source>short below</source>
        <translation type="unfinished">falta por debajo de</translation>
    </message>
    <message>
        <source>short of places</source>
        <translation type="unfinished">faltan lugares</translation>
    </message>
    <message>
        <source>short supply</source>
        <translation type="unfinished">aporte escaso</translation>
    </message>
    <message>
        <source>since {since}, 1 day</source>
        <translation type="unfinished">desde el {since}, 1 día</translation>
    </message>
    <message>
        <source>since {since}, {days} days</source>
        <translation type="unfinished">desde el {since}, {days} días</translation>
    </message>
    <message>
        <source>single</source>
        <translation type="unfinished">único</translation>
    </message>
    <message>
        <source>siphon</source>
        <translation type="unfinished">sifonar</translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished">sitio</translation>
    </message>
    <message>
        <source>size share</source>
        <translation type="unfinished">parte del tamaño</translation>
    </message>
    <message>
        <source>size that is reached when a stage has lasted as long as it may</source>
        <translation type="unfinished">tamaño alcanzado cuando una etapa ha durado lo más que puede</translation>
    </message>
    <message>
        <source>slack share</source>
        <translation type="unfinished">parte de holgura</translation>
    </message>
    <message>
        <source>slowed most by: {cause}</source>
        <translation type="unfinished">lo que más lo retrasa: {cause}</translation>
    </message>
    <message>
        <source>so many of all draws lie below it</source>
        <translation type="unfinished">tantos de todos los sorteos quedan por debajo</translation>
    </message>
    <message>
        <source>solids</source>
        <translation type="unfinished">sólidos</translation>
    </message>
    <message>
        <source>solids batch</source>
        <translation type="unfinished">lote de sólidos</translation>
    </message>
    <message>
        <source>solids gathered</source>
        <translation type="unfinished">sólidos recogidos</translation>
    </message>
    <message>
        <source>solids of so many days before go in</source>
        <translation type="unfinished">entran los sólidos de tantos días antes</translation>
    </message>
    <message>
        <source>solids of the days before it was filled, those before the plan among them</source>
        <translation type="unfinished">sólidos de los días antes de llenarlo, también los de antes del plan</translation>
    </message>
    <message>
        <source>solids of the fish</source>
        <translation type="unfinished">sólidos de los peces</translation>
    </message>
    <message>
        <source>solids of the fish, less what the filters take out</source>
        <translation type="unfinished">sólidos de los peces menos lo que retiran los filtros</translation>
    </message>
    <message>
        <source>solids share</source>
        <translation type="unfinished">parte en sólidos</translation>
    </message>
    <message>
        <source>solids siphoned</source>
        <translation type="unfinished">sólidos sifonados</translation>
    </message>
    <message>
        <source>solids that pass the filters</source>
        <translation type="unfinished">sólidos que pasan los filtros</translation>
    </message>
    <message>
        <source>sow</source>
        <translation type="unfinished">sembrar</translation>
    </message>
    <message>
        <source>sow {plants} plants</source>
        <translation type="unfinished">sembrar {plants} plantas</translation>
    </message>
    <message>
        <source>sowing</source>
        <translation type="unfinished">siembra</translation>
    </message>
    <message>
        <source>sowings</source>
        <translation type="unfinished">siembras</translation>
    </message>
    <message>
        <source>sowings of the plan</source>
        <translation type="unfinished">siembras del plan</translation>
    </message>
    <message>
        <source>sown</source>
        <translation type="unfinished">sembrado</translation>
    </message>
    <message>
        <source>sown {day}</source>
        <translation type="unfinished">sembrado el {day}</translation>
    </message>
    <message>
        <source>space</source>
        <translation type="unfinished">espaciar</translation>
    </message>
    <message>
        <source>spacing</source>
        <translation type="unfinished">espaciado</translation>
    </message>
    <message>
        <source>spacing days</source>
        <translation type="unfinished">días de espaciado</translation>
    </message>
    <message>
        <source>spare</source>
        <translation type="unfinished">de margen</translation>
    </message>
    <message>
        <source>spread of days to the first pick</source>
        <translation type="unfinished">dispersión de los días hasta la primera cosecha</translation>
    </message>
    <message>
        <source>spread of what was seen</source>
        <translation type="unfinished">dispersión de lo visto</translation>
    </message>
    <message>
        <source>spread of yield</source>
        <translation type="unfinished">dispersión del rendimiento</translation>
    </message>
    <message>
        <source>spread of {what}</source>
        <translation type="unfinished">dispersión de {what}</translation>
    </message>
    <message>
        <source>spread the source gives</source>
        <translation type="unfinished">variación que da la fuente</translation>
    </message>
    <message>
        <source>stage days</source>
        <translation type="unfinished">días de la etapa</translation>
    </message>
    <message>
        <source>stand</source>
        <translation type="unfinished">nacencia</translation>
    </message>
    <message>
        <source>stand share</source>
        <translation type="unfinished">parte que nace</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation type="unfinished">desviación estándar</translation>
    </message>
    <message>
        <source>standard deviation of the weeks over their mean</source>
        <translation type="unfinished">desviación estándar de las semanas entre su media</translation>
    </message>
    <message>
        <source>standard deviation over draws in which nothing else varies</source>
        <translation type="unfinished">desviación estándar de los sorteos en que nada más varía</translation>
    </message>
    <message>
        <source>standard error of a share that was counted in so many draws</source>
        <translation type="unfinished">error estándar de una parte contada en tantos sorteos</translation>
    </message>
    <message>
        <source>stands alone: repeat the test before acting on it</source>
        <translation type="unfinished">está solo: repita el análisis antes de actuar</translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished">inicio</translation>
    </message>
    <message>
        <source>stated by the source</source>
        <translation type="unfinished">dado por la fuente</translation>
    </message>
    <message>
        <source>steady</source>
        <translation type="unfinished">estable</translation>
    </message>
    <message>
        <source>steepness</source>
        <translation type="unfinished">pendiente</translation>
    </message>
    <message>
        <source>stock</source>
        <translation type="unfinished">reserva</translation>
    </message>
    <message>
        <source>stock fish</source>
        <translation type="unfinished">sembrar peces</translation>
    </message>
    <message>
        <source>stock in the water</source>
        <translation type="unfinished">reserva en el agua</translation>
    </message>
    <message>
        <source>stock to {top} mg/L</source>
        <translation type="unfinished">res. ≤ {top} mg/L</translation>
    </message>
    <message>
        <source>stock {level} mg/L</source>
        <translation type="unfinished">reserva {level} mg/L</translation>
    </message>
    <message>
        <source>stock {level} mg/L, assumed: no test</source>
        <translation type="unfinished">reserva {level} mg/L, supuesta: sin análisis</translation>
    </message>
    <message>
        <source>stocked</source>
        <translation type="unfinished">puestos</translation>
    </message>
    <message>
        <source>stocked and added, less the dead that were counted, those expected, and harvests</source>
        <translation type="unfinished">sembrados y añadidos, menos los muertos contados, los esperados y las cosechas</translation>
    </message>
    <message>
        <source>stocked on {on} only</source>
        <translation type="unfinished">sembrados apenas el {on}</translation>
    </message>
    <message>
        <source>suited to this pH</source>
        <translation type="unfinished">apto para este pH</translation>
    </message>
    <message>
        <source>sum</source>
        <translation type="unfinished">suma</translation>
    </message>
    <message>
        <source>sum of the parts</source>
        <translation type="unfinished">suma de las partes</translation>
    </message>
    <message>
        <source>sunshine outside</source>
        <translation type="unfinished">sol exterior</translation>
    </message>
    <message>
        <source>supplements</source>
        <translation type="unfinished">suplementos</translation>
    </message>
    <message>
        <source>supplied</source>
        <translation type="unfinished">aportado</translation>
    </message>
    <message>
        <source>supplied a week</source>
        <translation type="unfinished">aportado por semana</translation>
    </message>
    <message>
        <source>supplied since then</source>
        <translation type="unfinished">aportado desde entonces</translation>
    </message>
    <message>
        <source>supplied {span}</source>
        <translation type="unfinished">aportado {span}</translation>
    </message>
    <message>
        <source>supply</source>
        <translation type="unfinished">aporte</translation>
    </message>
    <message>
        <source>supply and stock</source>
        <translation type="unfinished">aporte y reserva</translation>
    </message>
    <message>
        <source>supply and stock for the demand</source>
        <translation type="unfinished">aporte y reserva para la demanda</translation>
    </message>
    <message>
        <source>supply and what is dissolved when the week begins, over demand</source>
        <translation type="unfinished">aporte y lo disuelto al empezar la semana, entre la demanda</translation>
    </message>
    <message>
        <source>supply idle</source>
        <translation type="unfinished">aporte sin usar</translation>
    </message>
    <message>
        <source>supply over demand</source>
        <translation type="unfinished">aporte entre demanda</translation>
    </message>
    <message>
        <source>supply over demand, held against where it counts as short, thin and ample</source>
        <translation type="unfinished">aporte entre demanda, comparado con donde cuenta como falta, justo y sobra</translation>
    </message>
    <message>
        <source>supply short</source>
        <translation type="unfinished">aporte que falta</translation>
    </message>
    <message>
        <source>supply times</source>
        <translation type="unfinished">aporte, veces</translation>
    </message>
    <message>
        <source>surface</source>
        <translation type="unfinished">superficie</translation>
    </message>
    <message>
        <source>surface of gravel</source>
        <translation type="unfinished">superficie de la grava</translation>
    </message>
    <message>
        <source>survival in the bed</source>
        <translation type="unfinished">supervivencia en la cama</translation>
    </message>
    <message>
        <source>survival in the nursery</source>
        <translation type="unfinished">supervivencia en el vivero</translation>
    </message>
    <message>
        <source>survival share</source>
        <translation type="unfinished">parte que vive</translation>
    </message>
    <message>
        <source>taken</source>
        <translation type="unfinished">tomado</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">deshecho</translation>
    </message>
    <message>
        <source>taken by plants since then</source>
        <translation type="unfinished">tomado por las plantas desde entonces</translation>
    </message>
    <message>
        <source>takes away {share} of it</source>
        <translation type="unfinished">quita {share} de ello</translation>
    </message>
    <message>
        <source>takes longer, and may prove that nothing is better</source>
        <translation type="unfinished">tarda más, y puede probar que nada es mejor</translation>
    </message>
    <message>
        <source>tank</source>
        <translation type="unfinished">tanque</translation>
    </message>
    <message>
        <source>tank too full</source>
        <translation type="unfinished">tanque muy lleno</translation>
    </message>
    <message>
        <source>tanks are fuller later</source>
        <translation type="unfinished">los tanques se llenan más tarde</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">objetivo</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished">temperatura</translation>
    </message>
    <message>
        <source>test again</source>
        <translation type="unfinished">analice de nuevo</translation>
    </message>
    <message>
        <source>test late</source>
        <translation type="unfinished">prueba atrasada</translation>
    </message>
    <message>
        <source>test the water first</source>
        <translation type="unfinished">analice primero el agua</translation>
    </message>
    <message>
        <source>tested share</source>
        <translation type="unfinished">parte probada</translation>
    </message>
    <message>
        <source>tests, additions and the bands values should keep to, for each loop</source>
        <translation type="unfinished">análisis, adiciones y las bandas que deben mantenerse, para cada circuito</translation>
    </message>
    <message>
        <source>text</source>
        <translation type="unfinished">text</translation>
    </message>
    <message>
        <source>tgc</source>
        <translation type="unfinished">coeficiente de crecimiento</translation>
    </message>
    <message>
        <source>that air pumps give the whole loop</source>
        <translation type="unfinished">que las bombas de aire dan a todo el circuito</translation>
    </message>
    <message>
        <source>that floor and frame may carry</source>
        <translation type="unfinished">que suelo y armazón pueden llevar</translation>
    </message>
    <message>
        <source>that it was read with</source>
        <translation type="unfinished">con que se leyó</translation>
    </message>
    <message>
        <source>that reaches the new beds</source>
        <translation type="unfinished">que llega a las camas nuevas</translation>
    </message>
    <message>
        <source>the act changed nothing in the plan besides</source>
        <translation type="unfinished">la acción no cambió nada más en el plan</translation>
    </message>
    <message>
        <source>the amount with a share in reserve</source>
        <translation type="unfinished">la cantidad con una parte de reserva</translation>
    </message>
    <message>
        <source>the area that is planted</source>
        <translation type="unfinished">el área que está plantada</translation>
    </message>
    <message>
        <source>the balance agrees with what was published</source>
        <translation type="unfinished">el balance coincide con lo publicado</translation>
    </message>
    <message>
        <source>the balance lies above what was published</source>
        <translation type="unfinished">el balance queda por encima de lo publicado</translation>
    </message>
    <message>
        <source>the balance lies below what was published</source>
        <translation type="unfinished">el balance queda por debajo de lo publicado</translation>
    </message>
    <message>
        <source>the bed's area, times depth, times the surface of gravel, as much of it as works</source>
        <translation type="unfinished">área de la cama por profundidad por la superficie de la grava, la parte que trabaja</translation>
    </message>
    <message>
        <source>the best temperature of the fish, where that of the water is not known</source>
        <translation type="unfinished">la temperatura óptima de los peces, donde no se conoce la del agua</translation>
    </message>
    <message>
        <source>the best temperature, times how well the fish grow at this one, at most that of the water</source>
        <translation type="unfinished">la temperatura óptima por lo bien que crecen los peces a esta, como mucho la del agua</translation>
    </message>
    <message>
        <source>the best that was found by trying</source>
        <translation type="unfinished">lo mejor que se halló probando</translation>
    </message>
    <message>
        <source>the book's share, times the ratio of seen to book, drawn toward 1 by the book's weight; at most all</source>
        <translation type="unfinished">la parte del libro por la razón de lo visto al libro, acercada a 1 por el peso del libro; como máximo todo</translation>
    </message>
    <message>
        <source>the book's value, times the ratio of seen to planned, drawn to 1 by the book's weight</source>
        <translation type="unfinished">el valor del libro por la razón de lo visto a lo previsto, acercada a 1 por el peso del libro</translation>
    </message>
    <message>
        <source>the calibrations of {name} are not watched.</source>
        <translation type="unfinished">las calibraciones de {name} no se vigilan.</translation>
    </message>
    <message>
        <source>the caretaker: feed, dose, test, siphon, pick</source>
        <translation type="unfinished">cuidado: comida, dosis, prueba, sifón, cosecha</translation>
    </message>
    <message>
        <source>the circuit has too little to spare</source>
        <translation type="unfinished">al circuito eléctrico le queda muy poca potencia</translation>
    </message>
    <message>
        <source>the climate is not known: durations are those of the book, the same all year</source>
        <translation type="unfinished">no se conoce el clima: las duraciones son las del libro, iguales todo el año</translation>
    </message>
    <message>
        <source>the cube root of weight grows by the coefficient times warmth</source>
        <translation type="unfinished">la raíz cúbica del peso crece en el coeficiente por el calor</translation>
    </message>
    <message>
        <source>the day it is meant to go, but not before a new loop has run for so long</source>
        <translation type="unfinished">el día en que debe ir, pero no antes de que un circuito nuevo lleve ese tiempo</translation>
    </message>
    <message>
        <source>the day it may go, less the day it is meant to go</source>
        <translation type="unfinished">el día en que puede ir, menos el día en que debería ir</translation>
    </message>
    <message>
        <source>the depth of the gravel is assumed</source>
        <translation type="unfinished">la profundidad de la grava se supone</translation>
    </message>
    <message>
        <source>the depth of the water is not entered, or it is gravel, whose weight you must ask</source>
        <translation type="unfinished">falta anotar la profundidad del agua, o es grava, cuyo peso hay que preguntar</translation>
    </message>
    <message>
        <source>the dose of {about} runs out: it was last given on {on}</source>
        <translation type="unfinished">la dosis de {about} se acaba: se dio por última vez el {on}</translation>
    </message>
    <message>
        <source>the entry that this one replaces</source>
        <translation type="unfinished">la entrada que esta reemplaza</translation>
    </message>
    <message>
        <source>the factor of the meter was not noted; the usual one is taken</source>
        <translation type="unfinished">no se anotó el factor del medidor; se toma el habitual</translation>
    </message>
    <message>
        <source>the factor that the figure lowers it by, at its low or at its high value</source>
        <translation type="unfinished">el factor con que la cifra lo baja, en su valor bajo o alto</translation>
    </message>
    <message>
        <source>the factors that figures can change it by, put together by their logarithms in squares</source>
        <translation type="unfinished">los factores con que las cifras pueden cambiarlo, reunidos por sus logaritmos en cuadrados</translation>
    </message>
    <message>
        <source>the farm as a whole</source>
        <translation type="unfinished">toda la granja</translation>
    </message>
    <message>
        <source>the farm has no nursery</source>
        <translation type="unfinished">la granja no tiene vivero</translation>
    </message>
    <message>
        <source>the feed carries it in some months only</source>
        <translation type="unfinished">el alimento lo sostiene solo en algunos meses</translation>
    </message>
    <message>
        <source>the feed falls</source>
        <translation type="unfinished">baja el alimento</translation>
    </message>
    <message>
        <source>the feed falls by {before} → {after}</source>
        <translation type="unfinished">el alimento baja {before} → {after}</translation>
    </message>
    <message>
        <source>the feed holds too little of it: even {high} g/m²/d would not be enough</source>
        <translation type="unfinished">el alimento tiene muy poco: ni {high} g/m²/d bastarían</translation>
    </message>
    <message>
        <source>the feed lies at the low end of the band then</source>
        <translation type="unfinished">el alimento queda entonces en lo bajo de la franja</translation>
    </message>
    <message>
        <source>the feed that is made for fish of this weight</source>
        <translation type="unfinished">el alimento hecho para peces de este peso</translation>
    </message>
    <message>
        <source>the filter has too little surface</source>
        <translation type="unfinished">el filtro tiene muy poca superficie</translation>
    </message>
    <message>
        <source>the filter would be too small for the most that may be needed</source>
        <translation type="unfinished">el filtro sería chico para lo máximo que puede hacer falta</translation>
    </message>
    <message>
        <source>the filter's surface has no reserve</source>
        <translation type="unfinished">la superficie del filtro no tiene reserva</translation>
    </message>
    <message>
        <source>the filter's surface is not entered</source>
        <translation type="unfinished">falta anotar la superficie del filtro</translation>
    </message>
    <message>
        <source>the first day on which the fish are as heavy as for the harvest</source>
        <translation type="unfinished">el primer día en que los peces pesan lo de la cosecha</translation>
    </message>
    <message>
        <source>the first day, by whole weeks, from which feed is enough for some weeks in a row</source>
        <translation type="unfinished">el primer día, por semanas enteras, desde el que el alimento basta varias semanas seguidas</translation>
    </message>
    <message>
        <source>the fish are not fed enough for it in any month</source>
        <translation type="unfinished">en ningún mes se alimenta bastante a los peces para ello</translation>
    </message>
    <message>
        <source>the fish that stay are not purged: days off feed would undo it</source>
        <translation type="unfinished">los peces que quedan no se purgan: días sin alimento lo anularían</translation>
    </message>
    <message>
        <source>the flow is enough, but without reserve</source>
        <translation type="unfinished">el caudal alcanza, pero sin reserva</translation>
    </message>
    <message>
        <source>the gap, over the share of the element in the product</source>
        <translation type="unfinished">el faltante entre la parte del elemento en el producto</translation>
    </message>
    <message>
        <source>the grower: sow, space out, move, pick, clear</source>
        <translation type="unfinished">cultivo: siembra, paso, cosecha, vaciado</translation>
    </message>
    <message>
        <source>the harvest comes later</source>
        <translation type="unfinished">la cosecha llega más tarde</translation>
    </message>
    <message>
        <source>the harvest takes all that are left</source>
        <translation type="unfinished">la cosecha toma todos los que quedan</translation>
    </message>
    <message>
        <source>the height of the lift is not entered</source>
        <translation type="unfinished">falta anotar la altura de bombeo</translation>
    </message>
    <message>
        <source>the high end of what is likely, by the ranges of its figures</source>
        <translation type="unfinished">el extremo alto de lo probable, por los rangos de sus cifras</translation>
    </message>
    <message>
        <source>the high end over the likely value</source>
        <translation type="unfinished">el extremo alto entre el valor probable</translation>
    </message>
    <message>
        <source>the largest of its parts</source>
        <translation type="unfinished">la mayor de sus partes</translation>
    </message>
    <message>
        <source>the last reading, less the limit</source>
        <translation type="unfinished">la última lectura menos el límite</translation>
    </message>
    <message>
        <source>the last reading, raised by base of doses and make-up water, lowered by acid</source>
        <translation type="unfinished">la última lectura, subida por la base de dosis y agua de reposición, bajada por el ácido</translation>
    </message>
    <message>
        <source>the least of its parts</source>
        <translation type="unfinished">la menor de sus partes</translation>
    </message>
    <message>
        <source>the level, times the water of the loop</source>
        <translation type="unfinished">el nivel por el agua del circuito</translation>
    </message>
    <message>
        <source>the light there, or the crop that wants it, is not entered</source>
        <translation type="unfinished">falta anotar la luz de ahí, o el cultivo que la pide</translation>
    </message>
    <message>
        <source>the likely share, less some standard deviations, for seed to be careful with</source>
        <translation type="unfinished">la parte probable menos unas desviaciones estándar, para semilla con la que hay que tener cautela</translation>
    </message>
    <message>
        <source>the load is more than the structure may carry</source>
        <translation type="unfinished">la carga es más de lo que la estructura puede soportar</translation>
    </message>
    <message>
        <source>the load the structure may carry, or that of frame and rafts, is not entered</source>
        <translation type="unfinished">falta anotar la carga que soporta la estructura, o la del bastidor y las balsas</translation>
    </message>
    <message>
        <source>the log says so: {codes}</source>
        <translation type="unfinished">así lo dice el registro: {codes}</translation>
    </message>
    <message>
        <source>the loop has no tank</source>
        <translation type="unfinished">el circuito no tiene tanque</translation>
    </message>
    <message>
        <source>the mean of its parts</source>
        <translation type="unfinished">la media de sus partes</translation>
    </message>
    <message>
        <source>the mean of the day, times how much more is asked for after feeding</source>
        <translation type="unfinished">la media del día por cuánto más se pide tras alimentar</translation>
    </message>
    <message>
        <source>the mean of what each day needs; the rate is that of the week as a whole</source>
        <translation type="unfinished">la media de lo que necesita cada día; la velocidad es la de toda la semana</translation>
    </message>
    <message>
        <source>the mean of {weeks} weeks from this one on</source>
        <translation type="unfinished">la media de {weeks} semanas desde esta</translation>
    </message>
    <message>
        <source>the median of the slopes between all pairs of readings of the last weeks</source>
        <translation type="unfinished">la mediana de las pendientes entre todos los pares de lecturas de las últimas semanas</translation>
    </message>
    <message>
        <source>the middle half of all slopes lies between {low} and {high}</source>
        <translation type="unfinished">la mitad central de las pendientes está entre {low} y {high}</translation>
    </message>
    <message>
        <source>the most that the figure adds, at its low or at its high value</source>
        <translation type="unfinished">lo más que añade la cifra, en su valor bajo o alto</translation>
    </message>
    <message>
        <source>the nitrogen that crops take up</source>
        <translation type="unfinished">el nitrógeno que toman los cultivos</translation>
    </message>
    <message>
        <source>the owner: pick, stock and harvest fish</source>
        <translation type="unfinished">dueño: cosecha, siembra y cosecha de peces</translation>
    </message>
    <message>
        <source>the part over the whole</source>
        <translation type="unfinished">la parte entre el todo</translation>
    </message>
    <message>
        <source>the plan</source>
        <translation type="unfinished">el plan</translation>
    </message>
    <message>
        <source>the plants have grown: they want {rise_share} more than in the four weeks before</source>
        <translation type="unfinished">las plantas han crecido: piden {rise_share} más que en las cuatro semanas anteriores</translation>
    </message>
    <message>
        <source>the points of the pump do not reach that head</source>
        <translation type="unfinished">los puntos de la bomba no llegan a esa altura</translation>
    </message>
    <message>
        <source>the power wanted or to spare is not entered</source>
        <translation type="unfinished">falta anotar la potencia pedida o la disponible</translation>
    </message>
    <message>
        <source>the pump</source>
        <translation type="unfinished">la bomba</translation>
    </message>
    <message>
        <source>the pump does not lift so high</source>
        <translation type="unfinished">la bomba no sube tan alto</translation>
    </message>
    <message>
        <source>the pump's curve is not entered</source>
        <translation type="unfinished">falta anotar la curva de la bomba</translation>
    </message>
    <message>
        <source>the reading is too old</source>
        <translation type="unfinished">la lectura es muy vieja</translation>
    </message>
    <message>
        <source>the reference, where nothing is fed</source>
        <translation type="unfinished">la referencia, donde no se da alimento</translation>
    </message>
    <message>
        <source>the root of the sum of squares of its parts</source>
        <translation type="unfinished">la raíz de la suma de los cuadrados de sus partes</translation>
    </message>
    <message>
        <source>the same act changed: {things}</source>
        <translation type="unfinished">la misma acción cambió: {things}</translation>
    </message>
    <message>
        <source>the search ended within {share} % of what no plan can go beyond</source>
        <translation type="unfinished">la búsqueda terminó a menos de {share} % de lo que ningún plan puede pasar</translation>
    </message>
    <message>
        <source>the search was stopped; this is the best so far</source>
        <translation type="unfinished">la búsqueda se detuvo; esto es lo mejor hasta ahora</translation>
    </message>
    <message>
        <source>the season is too slow: the crop is given up at {size_share} of its size</source>
        <translation type="unfinished">la temporada es muy lenta: el cultivo se deja a {size_share} de su tamaño</translation>
    </message>
    <message>
        <source>the season, water or bed it stands in was changed</source>
        <translation type="unfinished">se cambió la estación, el agua o el bancal donde está</translation>
    </message>
    <message>
        <source>the share of ammonia that is un-ionised at this pH and temperature</source>
        <translation type="unfinished">la parte del amoniaco no ionizada a este pH y temperatura</translation>
    </message>
    <message>
        <source>the solids batch {name} was emptied before the plan began.</source>
        <translation type="unfinished">el lote de sólidos {name} se vació antes de empezar el plan.</translation>
    </message>
    <message>
        <source>the stage is cut off at {times} times its days by the book</source>
        <translation type="unfinished">la etapa se corta a {times} veces sus días del libro</translation>
    </message>
    <message>
        <source>the sum of its parts</source>
        <translation type="unfinished">la suma de sus partes</translation>
    </message>
    <message>
        <source>the table</source>
        <translation type="unfinished">la tabla</translation>
    </message>
    <message>
        <source>the tolerance is that of: {reason}</source>
        <translation type="unfinished">la tolerancia es la de: {reason}</translation>
    </message>
    <message>
        <source>the value read</source>
        <translation type="unfinished">el valor leído</translation>
    </message>
    <message>
        <source>the value that a share of all draws lies below</source>
        <translation type="unfinished">el valor bajo el que queda una parte de todos los sorteos</translation>
    </message>
    <message>
        <source>the warmth of the water is not known: the rate is taken as printed</source>
        <translation type="unfinished">no se conoce la temperatura del agua: la velocidad se toma como está impresa</translation>
    </message>
    <message>
        <source>the warmth that was read</source>
        <translation type="unfinished">la temperatura que se midió</translation>
    </message>
    <message>
        <source>the water has {water_c} °C; these fish feed between {base_c} and {ceiling_c} °C</source>
        <translation type="unfinished">el agua está a {water_c} °C; estos peces comen entre {base_c} y {ceiling_c} °C</translation>
    </message>
    <message>
        <source>the water temperature is not known; {assumed_c} °C, the best, is assumed</source>
        <translation type="unfinished">no se conoce la temperatura del agua; se supone {assumed_c} °C, la óptima</translation>
    </message>
    <message>
        <source>the week that holds this day comes first</source>
        <translation type="unfinished">primero va la semana de este día</translation>
    </message>
    <message>
        <source>the worst answer of the parts</source>
        <translation type="unfinished">la peor respuesta de las partes</translation>
    </message>
    <message>
        <source>there is no feed in the weeks before to compare with</source>
        <translation type="unfinished">no hay alimento en las semanas anteriores para comparar</translation>
    </message>
    <message>
        <source>they are that heavy when the plan begins; what went before is not looked at</source>
        <translation type="unfinished">ya pesan eso al empezar el plan; lo anterior no se mira</translation>
    </message>
    <message>
        <source>thin</source>
        <translation type="unfinished">justo</translation>
    </message>
    <message>
        <source>thin below</source>
        <translation type="unfinished">justo por debajo de</translation>
    </message>
    <message>
        <source>this counts as: {band}</source>
        <translation type="unfinished">esto cuenta como: {band}</translation>
    </message>
    <message>
        <source>this field takes {low} to {high}{unit}</source>
        <translation type="unfinished">este campo acepta de {low} a {high}{unit}</translation>
    </message>
    <message>
        <source>this is what limits: {what}</source>
        <translation type="unfinished">esto es lo que limita: {what}</translation>
    </message>
    <message>
        <source>this product's share of the base wanted, over the base in a kilogram of it</source>
        <translation type="unfinished">la parte de la base necesaria que da este producto, entre la base de un kilo</translation>
    </message>
    <message>
        <source>this way</source>
        <translation type="unfinished">esta forma</translation>
    </message>
    <message>
        <source>three letters that stand for the crop in batch codes</source>
        <translation type="unfinished">tres letras por el cultivo en los códigos de lote</translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished">justo</translation>
    </message>
    <message>
        <source>time of day, as 07:30</source>
        <translation type="unfinished">hora del día, como 07:30</translation>
    </message>
    <message>
        <source>times</source>
        <translation type="unfinished">veces</translation>
    </message>
    <message>
        <source>times an hour</source>
        <translation type="unfinished">veces por hora</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation type="unfinished">por comprar</translation>
    </message>
    <message>
        <source>to come</source>
        <translation type="unfinished">por venir</translation>
    </message>
    <message>
        <source>to {mass} a week</source>
        <translation type="unfinished">hasta {mass} por semana</translation>
    </message>
    <message>
        <source>to {top} g a week</source>
        <translation type="unfinished">≤ {top} g/semana</translation>
    </message>
    <message>
        <source>to {top} g/m²/d</source>
        <translation type="unfinished">≤ {top} g/m²/d</translation>
    </message>
    <message>
        <source>to {value} g/m²/day</source>
        <translation type="unfinished">hasta {value} g/m²/día</translation>
    </message>
    <message>
        <source>to {what}</source>
        <translation type="unfinished">{what}</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">hoy</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished">tolerancia</translation>
    </message>
    <message>
        <source>too few places</source>
        <translation type="unfinished">faltan lugares</translation>
    </message>
    <message>
        <source>too few readings for a trend</source>
        <translation type="unfinished">muy pocas lecturas para una tendencia</translation>
    </message>
    <message>
        <source>too few readings of alkalinity tell what acid there was.</source>
        <translation type="unfinished">muy pocas lecturas de alcalinidad para decir qué ácido hubo.</translation>
    </message>
    <message>
        <source>too few readings of {what} tell where it goes.</source>
        <translation type="unfinished">muy pocas lecturas de {what} para decir a dónde va.</translation>
    </message>
    <message>
        <source>too little flows at that head</source>
        <translation type="unfinished">a esa altura fluye muy poco</translation>
    </message>
    <message>
        <source>too little light</source>
        <translation type="unfinished">poca luz</translation>
    </message>
    <message>
        <source>too little light reaches it</source>
        <translation type="unfinished">le llega muy poca luz</translation>
    </message>
    <message>
        <source>too little oxygen is given</source>
        <translation type="unfinished">se da muy poco oxígeno</translation>
    </message>
    <message>
        <source>too slow</source>
        <translation type="unfinished">muy lento</translation>
    </message>
    <message>
        <source>too slow for the season</source>
        <translation type="unfinished">muy lento para la temporada</translation>
    </message>
    <message>
        <source>top up share</source>
        <translation type="unfinished">parte de reposición</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">repuesto</translation>
    </message>
    <message>
        <source>tray</source>
        <translation type="unfinished">bandeja</translation>
    </message>
    <message>
        <source>trays</source>
        <translation type="unfinished">bandejas</translation>
    </message>
    <message>
        <source>treated fish</source>
        <translation type="unfinished">peces tratados</translation>
    </message>
    <message>
        <source>treated on {on}, cleared: {cleared}; the harvest of {harvest} comes too early. Ask the veterinarian how long to wait</source>
        <translation type="unfinished">tratados el {on}, liberados: {cleared}; la cosecha del {harvest} es demasiado pronto. Pregunte al veterinario cuánto esperar</translation>
    </message>
    <message>
        <source>treated with a medicine on {on}; no day is entered on which the fish are cleared</source>
        <translation type="unfinished">tratados con un medicamento el {on}; no se anotó el día en que los peces quedan liberados</translation>
    </message>
    <message>
        <source>trend of readings</source>
        <translation type="unfinished">tendencia de las lecturas</translation>
    </message>
    <message>
        <source>trend only since the calibration of {day}</source>
        <translation type="unfinished">tendencia solo desde la calibración del {day}</translation>
    </message>
    <message>
        <source>trend window days</source>
        <translation type="unfinished">días de la tendencia</translation>
    </message>
    <message>
        <source>un-ionised ammonia as nitrogen</source>
        <translation type="unfinished">amoniaco no ionizado como nitrógeno</translation>
    </message>
    <message>
        <source>under the rafts; what settles stays there when not said</source>
        <translation type="unfinished">bajo las balsas; lo que se asienta queda ahí si no se dice</translation>
    </message>
    <message>
        <source>under which the entry is found, and corrected</source>
        <translation type="unfinished">con la que se halla y corrige la entrada</translation>
    </message>
    <message>
        <source>unevenness of the feed</source>
        <translation type="unfinished">desigualdad del alimento</translation>
    </message>
    <message>
        <source>unit {unit} places {first} to {last}</source>
        <translation type="unfinished">unidad {unit}, lugares {first} a {last}</translation>
    </message>
    <message>
        <source>unit?</source>
        <translation type="unfinished">¿unidad?</translation>
    </message>
    <message>
        <source>units</source>
        <translation type="unfinished">unidades</translation>
    </message>
    <message>
        <source>unknown: 1 price missing</source>
        <translation type="unfinished">no se sabe: falta 1 precio</translation>
    </message>
    <message>
        <source>unknown: {count} prices missing</source>
        <translation type="unfinished">no se sabe: faltan {count} precios</translation>
    </message>
    <message>
        <source>unless base is given</source>
        <translation type="unfinished">si no se da base</translation>
    </message>
    <message>
        <source>unplaced</source>
        <translation type="unfinished">sin lugar</translation>
    </message>
    <message>
        <source>until {on}</source>
        <translation type="unfinished">hasta el {on}</translation>
    </message>
    <message>
        <source>used before</source>
        <translation type="unfinished">usado antes</translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished">habitual</translation>
    </message>
    <message>
        <source>uvi raft</source>
        <translation type="unfinished">UVI, balsas</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">valor</translation>
    </message>
    <message>
        <source>value learned</source>
        <translation type="unfinished">valor aprendido</translation>
    </message>
    <message>
        <source>value of the catalogue</source>
        <translation type="unfinished">valor del catálogo</translation>
    </message>
    <message>
        <source>value of your own</source>
        <translation type="unfinished">valor propio</translation>
    </message>
    <message>
        <source>void share</source>
        <translation type="unfinished">parte hueca</translation>
    </message>
    <message>
        <source>volume</source>
        <translation type="unfinished">volumen</translation>
    </message>
    <message>
        <source>waits</source>
        <translation type="unfinished">espera</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation type="unfinished">se quiere</translation>
    </message>
    <message>
        <source>wanted a week</source>
        <translation type="unfinished">pedido por semana</translation>
    </message>
    <message>
        <source>wanted beyond supply</source>
        <translation type="unfinished">pedido más allá del aporte</translation>
    </message>
    <message>
        <source>wanted by a day</source>
        <translation type="unfinished">pedido para un día</translation>
    </message>
    <message>
        <source>wanted by plants since then</source>
        <translation type="unfinished">pedido por las plantas desde entonces</translation>
    </message>
    <message>
        <source>wanted plants</source>
        <translation type="unfinished">plantas deseadas</translation>
    </message>
    <message>
        <source>wanted {span}</source>
        <translation type="unfinished">pedido {span}</translation>
    </message>
    <message>
        <source>warm water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C</source>
        <translation type="unfinished">agua caliente: a {water_c} °C {about} crecen al {growth_share} de lo que crecerían a {optimum_c} °C</translation>
    </message>
    <message>
        <source>warmth that counts</source>
        <translation type="unfinished">calor que cuenta</translation>
    </message>
    <message>
        <source>waste {many}</source>
        <translation type="unfinished">desecho {many}</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">sobrante</translation>
    </message>
    <message>
        <source>wasted weight</source>
        <translation type="unfinished">peso de lo sobrante</translation>
    </message>
    <message>
        <source>watch</source>
        <translation type="unfinished">vigilar</translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished">agua</translation>
    </message>
    <message>
        <source>water colder or warmer than the fish can do with</source>
        <translation type="unfinished">agua más fría o más caliente de lo que aguantan los peces</translation>
    </message>
    <message>
        <source>water of the loop, times the usual share a day</source>
        <translation type="unfinished">agua del circuito por la parte habitual por día</translation>
    </message>
    <message>
        <source>water of {warmth}</source>
        <translation type="unfinished">agua a {warmth}</translation>
    </message>
    <message>
        <source>water temperature</source>
        <translation type="unfinished">temperatura del agua</translation>
    </message>
    <message>
        <source>water topped up</source>
        <translation type="unfinished">agua añadida</translation>
    </message>
    <message>
        <source>week {week} will be 1 head short</source>
        <translation type="unfinished">a la semana {week} le faltará 1 pieza</translation>
    </message>
    <message>
        <source>week {week} will be 1 plant short</source>
        <translation type="unfinished">a la semana {week} le faltará 1 planta</translation>
    </message>
    <message>
        <source>week {week} will be {many} heads short</source>
        <translation type="unfinished">a la semana {week} le faltarán {many} piezas</translation>
    </message>
    <message>
        <source>week {week} will be {many} plants short</source>
        <translation type="unfinished">a la semana {week} le faltarán {many} plantas</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation type="unfinished">semanas</translation>
    </message>
    <message>
        <source>weeks before</source>
        <translation type="unfinished">semanas antes</translation>
    </message>
    <message>
        <source>weeks between harvests of one</source>
        <translation type="unfinished">semanas entre cosechas de uno</translation>
    </message>
    <message>
        <source>weeks between two groups</source>
        <translation type="unfinished">semanas entre dos grupos</translation>
    </message>
    <message>
        <source>weeks from the stocking of a group to its last harvest, over the groups</source>
        <translation type="unfinished">semanas desde que se siembra un grupo hasta su última cosecha, entre los grupos</translation>
    </message>
    <message>
        <source>weeks in a row</source>
        <translation type="unfinished">semanas seguidas</translation>
    </message>
    <message>
        <source>weeks inside the band</source>
        <translation type="unfinished">semanas dentro de la franja</translation>
    </message>
    <message>
        <source>weeks near what is wanted</source>
        <translation type="unfinished">semanas cerca de lo pedido</translation>
    </message>
    <message>
        <source>weeks short</source>
        <translation type="unfinished">semanas con falta</translation>
    </message>
    <message>
        <source>weeks short {before} → {after}</source>
        <translation type="unfinished">semanas con falta {before} → {after}</translation>
    </message>
    <message>
        <source>weeks to grow</source>
        <translation type="unfinished">semanas de crecimiento</translation>
    </message>
    <message>
        <source>weeks until feed is back</source>
        <translation type="unfinished">semanas hasta que el alimento se recupera</translation>
    </message>
    <message>
        <source>weighed ratios</source>
        <translation type="unfinished">razones ponderadas</translation>
    </message>
    <message>
        <source>weighing fish, beside what the plan says they weigh</source>
        <translation type="unfinished">pesar peces, junto a lo que el plan dice que pesan</translation>
    </message>
    <message>
        <source>weight</source>
        <translation type="unfinished">peso</translation>
    </message>
    <message>
        <source>weight after</source>
        <translation type="unfinished">peso después</translation>
    </message>
    <message>
        <source>weight after the day</source>
        <translation type="unfinished">peso después del día</translation>
    </message>
    <message>
        <source>weight at harvest, {weight}</source>
        <translation type="unfinished">peso a la cosecha, {weight}</translation>
    </message>
    <message>
        <source>weight of a fish</source>
        <translation type="unfinished">peso de un pez</translation>
    </message>
    <message>
        <source>weight of a fish that the feed is for</source>
        <translation type="unfinished">peso de un pez para el que es el alimento</translation>
    </message>
    <message>
        <source>weight of a square metre, times the area</source>
        <translation type="unfinished">peso de un metro cuadrado por el área</translation>
    </message>
    <message>
        <source>weight of all the water</source>
        <translation type="unfinished">peso de toda el agua</translation>
    </message>
    <message>
        <source>weight of one fish when it is stocked</source>
        <translation type="unfinished">peso de un pez al ponerlo</translation>
    </message>
    <message>
        <source>weight of the water</source>
        <translation type="unfinished">peso del agua</translation>
    </message>
    <message>
        <source>weight the day before</source>
        <translation type="unfinished">peso el día anterior</translation>
    </message>
    <message>
        <source>weight then</source>
        <translation type="unfinished">peso entonces</translation>
    </message>
    <message>
        <source>weights</source>
        <translation type="unfinished">pesos</translation>
    </message>
    <message>
        <source>went in</source>
        <translation type="unfinished">entraron</translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished">mojado</translation>
    </message>
    <message>
        <source>what a biofilm takes</source>
        <translation type="unfinished">lo que procesa una biopelícula</translation>
    </message>
    <message>
        <source>what a day takes when half is gone after the half-life</source>
        <translation type="unfinished">lo que se va en un día cuando la mitad se va tras la vida media</translation>
    </message>
    <message>
        <source>what a dose brings</source>
        <translation type="unfinished">lo que aporta una dosis</translation>
    </message>
    <message>
        <source>what a plant gives, at the size it reaches</source>
        <translation type="unfinished">lo que da una planta, al tamaño que alcanza</translation>
    </message>
    <message>
        <source>what alkalinity and base given show from {first} to {last}</source>
        <translation type="unfinished">lo que muestran la alcalinidad y la base dada de {first} a {last}</translation>
    </message>
    <message>
        <source>what all targets are worth, less what is missed, too much and out of balance</source>
        <translation type="unfinished">lo que valen todos los objetivos, menos lo que falta, sobra y queda fuera de balance</translation>
    </message>
    <message>
        <source>what an advised dose brings</source>
        <translation type="unfinished">lo que aporta una dosis aconsejada</translation>
    </message>
    <message>
        <source>what crops want beyond supply, less what bases and other salts bring</source>
        <translation type="unfinished">lo que piden los cultivos más allá del aporte, menos lo que traen bases y otras sales</translation>
    </message>
    <message>
        <source>what crops want in a mean week ahead, less what is supplied</source>
        <translation type="unfinished">lo que piden los cultivos en una semana media por venir, menos lo que se aporta</translation>
    </message>
    <message>
        <source>what decides is the worst of its parts: a no, then what is unknown</source>
        <translation type="unfinished">decide la peor de sus partes: un no, luego lo desconocido</translation>
    </message>
    <message>
        <source>what fish take by their feed and nitrifiers by the ammonia, over the hours of a day</source>
        <translation type="unfinished">lo que toman los peces por su alimento y las bacterias por el amoniaco, entre las horas de un día</translation>
    </message>
    <message>
        <source>what is due day by day, with box, initials and time</source>
        <translation type="unfinished">lo que toca día a día, con casilla, iniciales y hora</translation>
    </message>
    <message>
        <source>what is due to be picked, and what was picked, for whom</source>
        <translation type="unfinished">lo que toca recoger, y lo que se recogió, para quién</translation>
    </message>
    <message>
        <source>what is harvested, times the share that can be sold</source>
        <translation type="unfinished">lo cosechado por la parte que se puede vender</translation>
    </message>
    <message>
        <source>what is left on an average day after plants took theirs, times the share that leaves, times days</source>
        <translation type="unfinished">lo que queda en un día medio después de que toman las plantas, por la parte que sale, por los días</translation>
    </message>
    <message>
        <source>what is looked after every how many weeks, for the wall</source>
        <translation type="unfinished">qué se cuida cada cuántas semanas, para la pared</translation>
    </message>
    <message>
        <source>what is missing over what a plant gives, in whole plants</source>
        <translation type="unfinished">lo que falta entre lo que da una planta, en plantas enteras</translation>
    </message>
    <message>
        <source>what is sown and picked in each week of the year, by codes, for the wall (A3)</source>
        <translation type="unfinished">lo que se siembra y recoge en cada semana del año, por códigos, para la pared (A3)</translation>
    </message>
    <message>
        <source>what is to spare over its fastest fall in the last weeks, in whole days</source>
        <translation type="unfinished">el margen entre su baja más rápida de las últimas semanas, en días enteros</translation>
    </message>
    <message>
        <source>what is used, less what is left in stock</source>
        <translation type="unfinished">lo que se usa menos lo que queda en existencia</translation>
    </message>
    <message>
        <source>what it is after the change, less what it was before</source>
        <translation type="unfinished">lo que es después del cambio menos lo que era antes</translation>
    </message>
    <message>
        <source>what leaves and water show, what to note, what to do first</source>
        <translation type="unfinished">qué muestran hojas y agua, qué anotar, qué hacer primero</translation>
    </message>
    <message>
        <source>what leaves with the water that make-up replaces, and what falls out of it</source>
        <translation type="unfinished">lo que sale con el agua que la reposición reemplaza, y lo que precipita</translation>
    </message>
    <message>
        <source>what lives in the bed, times what can be sold, times picks and weight of a plant</source>
        <translation type="unfinished">lo que vive en la cama por lo vendible por los cortes y el peso de una planta</translation>
    </message>
    <message>
        <source>what lives in the bed, times what can be sold, times the picks that count</source>
        <translation type="unfinished">lo que vive en la cama por lo vendible por los cortes que cuentan</translation>
    </message>
    <message>
        <source>what neither solids nor fish keep, times the share lost as gas over the share that dissolved where it was found, less what is not there to lose</source>
        <translation type="unfinished">lo que no guardan ni sólidos ni peces, por la parte perdida como gas entre la parte disuelta donde se halló, menos lo que no hay que perder</translation>
    </message>
    <message>
        <source>what no plan can go beyond, proven from the prices of what is scarce</source>
        <translation type="unfinished">lo que ningún plan puede pasar, probado por los precios de lo escaso</translation>
    </message>
    <message>
        <source>what one plant gives</source>
        <translation type="unfinished">lo que da una planta</translation>
    </message>
    <message>
        <source>what packet or book says, taken for so many seeds, and what came up of those counted</source>
        <translation type="unfinished">lo que dice el sobre o el libro, tomado como tantas semillas, y lo que nació de las contadas</translation>
    </message>
    <message>
        <source>what plants lack</source>
        <translation type="unfinished">lo que falta a las plantas</translation>
    </message>
    <message>
        <source>what some days take, over the days</source>
        <translation type="unfinished">lo que toman unos días, entre los días</translation>
    </message>
    <message>
        <source>what the air pumps give is not entered</source>
        <translation type="unfinished">falta anotar lo que dan las bombas de aire</translation>
    </message>
    <message>
        <source>what the feed holds, less solids, fish and gas</source>
        <translation type="unfinished">lo que tiene el alimento, menos sólidos, peces y gas</translation>
    </message>
    <message>
        <source>what the feed holds, times the share that leaves as solids</source>
        <translation type="unfinished">lo que tiene el alimento por la parte que sale como sólidos</translation>
    </message>
    <message>
        <source>what the plan may fall short of the most that any can be worth, as a share</source>
        <translation type="unfinished">lo que puede faltarle al plan frente a lo máximo que alguno puede valer, como parte</translation>
    </message>
    <message>
        <source>what the plants want, less what is not there to be taken</source>
        <translation type="unfinished">lo que piden las plantas menos lo que no hay para tomar</translation>
    </message>
    <message>
        <source>what the plants want, less what they can take</source>
        <translation type="unfinished">lo que piden las plantas menos lo que pueden tomar</translation>
    </message>
    <message>
        <source>what the solids laid down so far give back day by day, slower as they get old</source>
        <translation type="unfinished">lo que devuelven día a día los sólidos depositados hasta ahora, más lento al envejecer</translation>
    </message>
    <message>
        <source>what the water lacks of the target, times its volume, over the iron in the product</source>
        <translation type="unfinished">lo que le falta al agua para el objetivo por su volumen, entre el hierro del producto</translation>
    </message>
    <message>
        <source>what to do in a power cut; numbers, places, photos</source>
        <translation type="unfinished">qué hacer en un corte de luz; números, lugares, fotos</translation>
    </message>
    <message>
        <source>what to sow week by week, for the nursery wall (A3) or the bench (A4)</source>
        <translation type="unfinished">qué sembrar semana a semana, para la pared del semillero (A3) o el banco (A4)</translation>
    </message>
    <message>
        <source>what was built, the first twelve weeks, whom to call; for the owner</source>
        <translation type="unfinished">qué se construyó, las primeras doce semanas, a quién llamar; para el dueño</translation>
    </message>
    <message>
        <source>what was counted, less what is used before</source>
        <translation type="unfinished">lo contado menos lo que se usa antes</translation>
    </message>
    <message>
        <source>what was gathered, times what rots free by then, less gas, as much as goes back</source>
        <translation type="unfinished">lo recogido por lo que se libera hasta entonces, menos gas, lo que se devuelve</translation>
    </message>
    <message>
        <source>what was gathered, times what rots free by then, times the share lost as gas</source>
        <translation type="unfinished">lo recogido por lo que se libera hasta entonces por la parte perdida como gas</translation>
    </message>
    <message>
        <source>what was read</source>
        <translation type="unfinished">lo que se leyó</translation>
    </message>
    <message>
        <source>what was seen, over what the book says</source>
        <translation type="unfinished">lo visto entre lo que dice el libro</translation>
    </message>
    <message>
        <source>what was taken out, how it is kept, when and where it goes back</source>
        <translation type="unfinished">qué se sacó, cómo se guarda, cuándo y adónde vuelve</translation>
    </message>
    <message>
        <source>what was there, and what was supplied since, less what plants took and what left</source>
        <translation type="unfinished">lo que había y lo aportado desde entonces, menos lo que tomaron las plantas y lo que salió</translation>
    </message>
    <message>
        <source>when it falls to {limit}, no base given{start}</source>
        <translation type="unfinished">cuándo baja a {limit}, sin dar base{start}</translation>
    </message>
    <message>
        <source>when it was noted, in UTC, as 2026-04-06T07:30Z</source>
        <translation type="unfinished">cuándo se anotó, en UTC, como 2026-04-06T07:30Z</translation>
    </message>
    <message>
        <source>who did it or saw it</source>
        <translation type="unfinished">quién lo hizo o lo vio</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">todo</translation>
    </message>
    <message>
        <source>whole dry mass</source>
        <translation type="unfinished">masa seca entera</translation>
    </message>
    <message>
        <source>whole pots, times the seeds in each</source>
        <translation type="unfinished">macetas enteras por las semillas de cada una</translation>
    </message>
    <message>
        <source>whose feed-rate ratio tells what area the feed carries</source>
        <translation type="unfinished">cuya razón de alimento dice qué área alcanza el alimento</translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished">ancho</translation>
    </message>
    <message>
        <source>window days</source>
        <translation type="unfinished">días de ventana</translation>
    </message>
    <message>
        <source>with it {share}</source>
        <translation type="unfinished">con ello {share}</translation>
    </message>
    <message>
        <source>with it: {verdict}</source>
        <translation type="unfinished">con eso: {verdict}</translation>
    </message>
    <message>
        <source>with what stands already</source>
        <translation type="unfinished">con lo que ya hay</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">retirado</translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished">dentro</translation>
    </message>
    <message>
        <source>within share</source>
        <translation type="unfinished">parte dentro</translation>
    </message>
    <message>
        <source>work of some weeks</source>
        <translation type="unfinished">trabajo de unas semanas</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation type="unfinished">calculado</translation>
    </message>
    <message>
        <source>worked out again from what the publication gives</source>
        <translation type="unfinished">calculado de nuevo con lo que da la publicación</translation>
    </message>
    <message>
        <source>worked out from these figures of the catalogue and what is entered for the farm</source>
        <translation type="unfinished">calculado con estas cifras del catálogo y lo anotado para la granja</translation>
    </message>
    <message>
        <source>worked out from what the publication gives and from figures of the catalogue</source>
        <translation type="unfinished">calculado con lo que da la publicación y cifras del catálogo</translation>
    </message>
    <message>
        <source>worked out from what was read in the source</source>
        <translation type="unfinished">calculado con lo leído en la fuente</translation>
    </message>
    <message>
        <source>working share</source>
        <translation type="unfinished">parte activa</translation>
    </message>
    <message>
        <source>worth</source>
        <translation type="unfinished">valor del plan</translation>
    </message>
    <message>
        <source>worth of all targets</source>
        <translation type="unfinished">valor de todos los objetivos</translation>
    </message>
    <message>
        <source>worth of targets</source>
        <translation type="unfinished">valor de los objetivos</translation>
    </message>
    <message>
        <source>worth of the plan</source>
        <translation type="unfinished">valor del plan</translation>
    </message>
    <message>
        <source>worth of the rhythm by hand</source>
        <translation type="unfinished">valor del ritmo a mano</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation type="unfinished">wrong</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">sí</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation type="unfinished">sí o no</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished">ayer</translation>
    </message>
    <message>
        <source>yield</source>
        <translation type="unfinished">rendimiento</translation>
    </message>
    <message>
        <source>yield by the book, for the picks and the room that these plants have</source>
        <translation type="unfinished">rendimiento según el libro, para los cortes y el espacio que tienen estas plantas</translation>
    </message>
    <message>
        <source>yield cv</source>
        <translation type="unfinished">variación del rendimiento</translation>
    </message>
    <message>
        <source>yield of a plant</source>
        <translation type="unfinished">rendimiento de una planta</translation>
    </message>
    <message>
        <source>your own rule as calendars write it, such as FREQ=MONTHLY;BYDAY=1TH</source>
        <translation type="unfinished">su propia regla como la escriben los calendarios, p. ej. FREQ=MONTHLY;BYDAY=1TH</translation>
    </message>
    <message>
        <source>your own value</source>
        <translation type="unfinished">su propio valor</translation>
    </message>
    <message>
        <source>your own value, for this batch</source>
        <translation type="unfinished">su propio valor, para este lote</translation>
    </message>
    <message>
        <source>your own value, laid over that of the catalogue</source>
        <translation type="unfinished">su propio valor, puesto sobre el del catálogo</translation>
    </message>
    <message>
        <source>{about} off feed for {days} d of the week</source>
        <translation type="unfinished">{about} sin comer {days} d de la semana</translation>
    </message>
    <message>
        <source>{about}: the fish are young, {weight_g} g each against {harvest_weight_g} g at harvest</source>
        <translation type="unfinished">{about}: los peces son jóvenes, {weight_g} g cada uno frente a {harvest_weight_g} g en la cosecha</translation>
    </message>
    <message>
        <source>{added} new sowings, {changed} changed, {removed} go, {same} stay as they are.</source>
        <translation type="unfinished">{added} siembras nuevas, {changed} cambiadas, {removed} se quitan, {same} quedan igual.</translation>
    </message>
    <message>
        <source>{alone} of them are independent, {good} of these within; {plain} check a formula only; {own} lean on a figure from the very publication that judges them. Shown only: {memory} from memory, {assumed} resting on an assumption, {lacking} that the program cannot work out.</source>
        <translation type="unfinished">{alone} son independientes, {good} de ellas dentro; {plain} comprueban solo una fórmula; {own} se apoyan en una cifra de la misma publicación que las juzga. Solo se muestran: {memory} de memoria, {assumed} que descansan en un supuesto, {lacking} que el programa no puede calcular.</translation>
    </message>
    <message>
        <source>{area} m²</source>
        <translation type="unfinished">{area} m²</translation>
    </message>
    <message>
        <source>{area} m² · {places} places</source>
        <translation type="unfinished">{area} m² · {places} plazas</translation>
    </message>
    <message>
        <source>{area} m², {places} places</source>
        <translation type="unfinished">{area} m², {places} lugares</translation>
    </message>
    <message>
        <source>{area} of {need} needed</source>
        <translation type="unfinished">{area} de {need} necesarios</translation>
    </message>
    <message>
        <source>{area}: {done} of {cases}…</source>
        <translation type="unfinished">{area}: {done} de {cases}…</translation>
    </message>
    <message>
        <source>{band} · test again</source>
        <translation type="unfinished">{band} · analice de nuevo</translation>
    </message>
    <message>
        <source>{band} · {share}</source>
        <translation type="unfinished">{band} · {share}</translation>
    </message>
    <message>
        <source>{batch} cannot be picked for {needed} days: 0 to {free} days can be planned.</source>
        <translation type="unfinished">{batch} no puede cosecharse durante {needed} días: se pueden planear de 0 a {free} días.</translation>
    </message>
    <message>
        <source>{batch} cannot stand in {bed}.</source>
        <translation type="unfinished">{batch} no puede estar en {bed}.</translation>
    </message>
    <message>
        <source>{batch} cannot stand in {bed}: that is no bed for this crop, or not for this stage.</source>
        <translation type="unfinished">{batch} no puede estar en {bed}: esa cama no es para este cultivo, o no para esta etapa.</translation>
    </message>
    <message>
        <source>{batch} is locked. Unlock it first, then move it.</source>
        <translation type="unfinished">{batch} está fijo. Suéltelo primero y luego muévalo.</translation>
    </message>
    <message>
        <source>{batch} is of a crop that is cut once: it has no window of picking to stretch.</source>
        <translation type="unfinished">{batch} es de un cultivo que se corta una sola vez: no tiene periodo de cosecha que alargar.</translation>
    </message>
    <message>
        <source>{batch}: {short} places too few in {bed} ({needed} needed, {free} free), tightest on {day}.</source>
        <translation type="unfinished">{batch}: faltan {short} lugares en {bed} (se necesitan {needed}, libres {free}), lo más justo el {day}.</translation>
    </message>
    <message>
        <source>{bed} gets {share} of the light under the roof</source>
        <translation type="unfinished">{bed} recibe {share} de la luz bajo el techo</translation>
    </message>
    <message>
        <source>{bed} has no number {unit}.</source>
        <translation type="unfinished">{bed} no tiene el número {unit}.</translation>
    </message>
    <message>
        <source>{bed} {unit}: {first}</source>
        <translation type="unfinished">{bed} {unit}: {first}</translation>
    </message>
    <message>
        <source>{bed} {unit}: {first}–{last}</source>
        <translation type="unfinished">{bed} {unit}: {first}–{last}</translation>
    </message>
    <message>
        <source>{before} → {after}</source>
        <translation type="unfinished">{before} → {after}</translation>
    </message>
    <message>
        <source>{came} of {seeds} came up: {tests} tests, {batches} batches</source>
        <translation type="unfinished">germinaron {came} de {seeds}: {tests} pruebas, {batches} tandas</translation>
    </message>
    <message>
        <source>{cases} published figures worked out again: {within} within tolerance, {outside} outside.</source>
        <translation type="unfinished">{cases} cifras publicadas calculadas de nuevo: {within} dentro de la tolerancia, {outside} fuera.</translation>
    </message>
    <message>
        <source>{code} ({places} places, leaves {day})</source>
        <translation type="unfinished">{code} ({places} lugares, sale el {day})</translation>
    </message>
    <message>
        <source>{code} has 1 plant and cannot be split.</source>
        <translation type="unfinished">{code} tiene 1 planta y no se puede dividir.</translation>
    </message>
    <message>
        <source>{code} has no window of picking to stretch.</source>
        <translation type="unfinished">{code} no tiene un periodo de cosecha que alargar.</translation>
    </message>
    <message>
        <source>{code} keeps {kept} plants; the new batch has {plants}, sown {day}.</source>
        <translation type="unfinished">{code} se queda con {kept} plantas; el lote nuevo tiene {plants}, sembrado el {day}.</translation>
    </message>
    <message>
        <source>{code} on {day}</source>
        <translation type="unfinished">{code} el {day}</translation>
    </message>
    <message>
        <source>{code} · {days} d late</source>
        <translation type="unfinished">{code} · {days} d tarde</translation>
    </message>
    <message>
        <source>{code}, {crop}: {along}, held until {until}. {then}</source>
        <translation type="unfinished">{code}, {crop}: {along}, ocupado hasta {until}. {then}</translation>
    </message>
    <message>
        <source>{code}: {start} – {end}</source>
        <translation type="unfinished">{code}: {start} – {end}</translation>
    </message>
    <message>
        <source>{count} are moved up to {days} days earlier, to keep to days of work.</source>
        <translation type="unfinished">{count} se trasplantan hasta {days} días antes, para caer en días de trabajo.</translation>
    </message>
    <message>
        <source>{count} are sown up to {days} days earlier, to keep to days of work.</source>
        <translation type="unfinished">{count} se siembran hasta {days} días antes, para caer en días de trabajo.</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation type="unfinished">{count} lotes</translation>
    </message>
    <message>
        <source>{count} batches have to wait.</source>
        <translation type="unfinished">{count} lotes tienen que esperar.</translation>
    </message>
    <message>
        <source>{count} batches: harvest {span} days {way}</source>
        <translation type="unfinished">{count} lotes: cosecha {span} días {way}</translation>
    </message>
    <message>
        <source>{count} entries were logged. One undo takes all of them back.</source>
        <translation type="unfinished">Se anotaron {count} entradas. Un solo deshacer las quita todas.</translation>
    </message>
    <message>
        <source>{count} fish</source>
        <translation type="unfinished">{count} peces</translation>
    </message>
    <message>
        <source>{count} fish of {weight} g</source>
        <translation type="unfinished">{count} peces de {weight} g</translation>
    </message>
    <message>
        <source>{count} found, the best first</source>
        <translation type="unfinished">{count} encontrados, los mejores primero</translation>
    </message>
    <message>
        <source>{count} holes in rafts</source>
        <translation type="unfinished">{count} hoyos en balsas</translation>
    </message>
    <message>
        <source>{count} nursery cells</source>
        <translation type="unfinished">{count} celdas de vivero</translation>
    </message>
    <message>
        <source>{count} own</source>
        <translation type="unfinished">{count} propias</translation>
    </message>
    <message>
        <source>{count} pages were sent to the printer.</source>
        <translation type="unfinished">{count} páginas se enviaron a la impresora.</translation>
    </message>
    <message>
        <source>{count} pages were written to {name}.</source>
        <translation type="unfinished">{count} páginas se escribieron en {name}.</translation>
    </message>
    <message>
        <source>{count} places</source>
        <translation type="unfinished">{count} lugares</translation>
    </message>
    <message>
        <source>{count} places in gravel</source>
        <translation type="unfinished">{count} lugares en grava</translation>
    </message>
    <message>
        <source>{count} readings</source>
        <translation type="unfinished">{count} lecturas</translation>
    </message>
    <message>
        <source>{count} rows are on the clipboard as CSV.</source>
        <translation type="unfinished">{count} filas están en el portapapeles como CSV.</translation>
    </message>
    <message>
        <source>{count} rows saved in {file}</source>
        <translation type="unfinished">{count} filas guardadas en {file}</translation>
    </message>
    <message>
        <source>{count} scenarios are kept already. Adopt or drop one of them under What if.</source>
        <translation type="unfinished">Ya hay {count} escenarios guardados. Adopte o descarte uno en Qué pasa si.</translation>
    </message>
    <message>
        <source>{count} scenarios are kept already: adopt or drop one first.</source>
        <translation type="unfinished">Ya hay {count} escenarios guardados: adopte o descarte uno primero.</translation>
    </message>
    <message>
        <source>{count} seeds</source>
        <translation type="unfinished">{count} semillas</translation>
    </message>
    <message>
        <source>{count} shown</source>
        <translation type="unfinished">{count} a la vista</translation>
    </message>
    <message>
        <source>{count} sowings of {plants} plants in all lack room</source>
        <translation type="unfinished">{count} siembras de {plants} plantas en total no tienen lugar</translation>
    </message>
    <message>
        <source>{count} sowings, {seeds} seeds for {plants} plants</source>
        <translation type="unfinished">{count} siembras, {seeds} semillas para {plants} plantas</translation>
    </message>
    <message>
        <source>{count} still to be given places</source>
        <translation type="unfinished">{count} aún sin lugar</translation>
    </message>
    <message>
        <source>{count} things</source>
        <translation type="unfinished">{count} cosas</translation>
    </message>
    <message>
        <source>{count} things differ</source>
        <translation type="unfinished">{count} cosas difieren</translation>
    </message>
    <message>
        <source>{count} things to note</source>
        <translation type="unfinished">{count} cosas que notar</translation>
    </message>
    <message>
        <source>{count} things to repair, from today on</source>
        <translation type="unfinished">{count} cosas por arreglar, de hoy en adelante</translation>
    </message>
    <message>
        <source>{count} {event}</source>
        <translation type="unfinished">{count} {event}</translation>
    </message>
    <message>
        <source>{crop} is grown in {suited} beds; {bed} is a {kind} bed</source>
        <translation type="unfinished">{crop} se cultiva en camas de {suited}; {bed} es una cama de {kind}</translation>
    </message>
    <message>
        <source>{crop} would not be ready in time in {kind} when sown in {weeks} of the weeks; it is not sown then.</source>
        <translation type="unfinished">{crop} no estaría listo a tiempo en {kind} si se siembra en {weeks} de las semanas; entonces no se siembra.</translation>
    </message>
    <message>
        <source>{crop}, {amount} {unit} a week</source>
        <translation type="unfinished">{crop}, {amount} {unit} por semana</translation>
    </message>
    <message>
        <source>{crop}: not carried by the feed within the plan.</source>
        <translation type="unfinished">{crop}: el alimento no lo sostiene dentro del plan.</translation>
    </message>
    <message>
        <source>{crop}: of {wanted} plants for {week}, {sown} have room and are sown.</source>
        <translation type="unfinished">{crop}: de {wanted} plantas para {week}, {sown} tienen lugar y se siembran.</translation>
    </message>
    <message>
        <source>{crop}: there is no bed of a kind it grows in.</source>
        <translation type="unfinished">{crop}: no hay cama de un tipo en que crezca.</translation>
    </message>
    <message>
        <source>{crop}: to its bed from {day}.</source>
        <translation type="unfinished">{crop}: a su cama desde el {day}.</translation>
    </message>
    <message>
        <source>{crop}: what is wanted in {week} is ready {days} days before that week.</source>
        <translation type="unfinished">{crop}: lo que se quiere en {week} está listo {days} días antes de esa semana.</translation>
    </message>
    <message>
        <source>{crop}: {amount} by {on}</source>
        <translation type="unfinished">{crop}: {amount} para el {on}</translation>
    </message>
    <message>
        <source>{crop}: {amount} every week from {begins}</source>
        <translation type="unfinished">{crop}: {amount} cada semana desde el {begins}</translation>
    </message>
    <message>
        <source>{crop}: {amount} every {day} from {begins}</source>
        <translation type="unfinished">{crop}: {amount} cada {day} desde el {begins}</translation>
    </message>
    <message>
        <source>{crop}: {amount} wanted in {week} cannot be sown in time any more.</source>
        <translation type="unfinished">{crop}: {amount} para {week} ya no se puede sembrar a tiempo.</translation>
    </message>
    <message>
        <source>{crop}: {amount} wanted in {week} finds no sowing day that suits.</source>
        <translation type="unfinished">{crop}: {amount} para {week} no halla un día de siembra que sirva.</translation>
    </message>
    <message>
        <source>{crop}: {share} of {weeks} weeks lie within {even} of what is wanted.</source>
        <translation type="unfinished">{crop}: {share} de {weeks} semanas queda a {even} o menos de lo que se quiere.</translation>
    </message>
    <message>
        <source>{crop}: {what} on {rule}, {begins} to {ends}</source>
        <translation type="unfinished">{crop}: {what} según {rule}, {begins} a {ends}</translation>
    </message>
    <message>
        <source>{crop}: {words}.</source>
        <translation type="unfinished">{crop}: {words}.</translation>
    </message>
    <message>
        <source>{days} d</source>
        <translation type="unfinished">{days} d</translation>
    </message>
    <message>
        <source>{days} days</source>
        <translation type="unfinished">{days} días</translation>
    </message>
    <message>
        <source>{days} days ago</source>
        <translation type="unfinished">hace {days} días</translation>
    </message>
    <message>
        <source>{days} days earlier, to fall on a day of work</source>
        <translation type="unfinished">{days} días antes, para caer en un día de trabajo</translation>
    </message>
    <message>
        <source>{days} so far</source>
        <translation type="unfinished">{days} hasta ahora</translation>
    </message>
    <message>
        <source>{density} ■ over</source>
        <translation type="unfinished">{density} ■ de más</translation>
    </message>
    <message>
        <source>{direction}, {change} a week</source>
        <translation type="unfinished">{direction}, {change} por semana</translation>
    </message>
    <message>
        <source>{draws} draws from seed {seed}: the same seed gives the same draws</source>
        <translation type="unfinished">{draws} sorteos con el número inicial {seed}: el mismo número da los mismos sorteos</translation>
    </message>
    <message>
        <source>{element} in {loop}</source>
        <translation type="unfinished">{element} en {loop}</translation>
    </message>
    <message>
        <source>{faults} faults: nothing comes in until they are mended.</source>
        <translation type="unfinished">{faults} fallas: no entra nada hasta corregirlas.</translation>
    </message>
    <message>
        <source>{feed} g feed a day</source>
        <translation type="unfinished">{feed} g de alimento al día</translation>
    </message>
    <message>
        <source>{field}: {before} → {after}</source>
        <translation type="unfinished">{field}: {before} → {after}</translation>
    </message>
    <message>
        <source>{figure}, your value:</source>
        <translation type="unfinished">{figure}, su valor:</translation>
    </message>
    <message>
        <source>{first} and others</source>
        <translation type="unfinished">{first} y otros</translation>
    </message>
    <message>
        <source>{fish} fish</source>
        <translation type="unfinished">{fish} peces</translation>
    </message>
    <message>
        <source>{fish} fish are harvested on {on}</source>
        <translation type="unfinished">se cosechan {fish} peces el {on}</translation>
    </message>
    <message>
        <source>{fish} fish harvested on {on}: feed falls {fall_share} {span}</source>
        <translation type="unfinished">{fish} peces cosechados el {on}: el alimento baja {fall_share} {span}</translation>
    </message>
    <message>
        <source>{fish} fish of {about} harvested on {on}: the feed has not got over it yet</source>
        <translation type="unfinished">{fish} peces de {about} cosechados el {on}: el alimento aún no se recupera</translation>
    </message>
    <message>
        <source>{fish}, on {day}</source>
        <translation type="unfinished">{fish}, el {day}</translation>
    </message>
    <message>
        <source>{grams} g</source>
        <translation type="unfinished">{grams} g</translation>
    </message>
    <message>
        <source>{grams} g a day</source>
        <translation type="unfinished">{grams} g al día</translation>
    </message>
    <message>
        <source>{grams} g are of days before the plan, taken to be like its first week</source>
        <translation type="unfinished">{grams} g son de días antes del plan, tomados como su primera semana</translation>
    </message>
    <message>
        <source>{grams} g each</source>
        <translation type="unfinished">{grams} g cada uno</translation>
    </message>
    <message>
        <source>{grams} g of {name}</source>
        <translation type="unfinished">{grams} g de {name}</translation>
    </message>
    <message>
        <source>{grams} g {name}</source>
        <translation type="unfinished">{grams} g de {name}</translation>
    </message>
    <message>
        <source>{grams} g/d</source>
        <translation type="unfinished">{grams} g/d</translation>
    </message>
    <message>
        <source>{grams} g/m²/d</source>
        <translation type="unfinished">{grams} g/m²/d</translation>
    </message>
    <message>
        <source>{groups} groups</source>
        <translation type="unfinished">{groups} grupos</translation>
    </message>
    <message>
        <source>{groups}, {share}: the feed falls by {fall} at most, for {weeks}; it varies by {uneven} and lies in the band for {inside} of the weeks.</source>
        <translation type="unfinished">{groups}, {share}: el alimento baja {fall} como máximo, por {weeks}; varía {uneven} y está en la franja {inside} de las semanas.</translation>
    </message>
    <message>
        <source>{groups}, {share}: the tanks have no room for it.</source>
        <translation type="unfinished">{groups}, {share}: no cabe en los tanques.</translation>
    </message>
    <message>
        <source>{group}, {day}</source>
        <translation type="unfinished">{group}, {day}</translation>
    </message>
    <message>
        <source>{held} of {all} places</source>
        <translation type="unfinished">{held} de {all} lugares</translation>
    </message>
    <message>
        <source>{kg} kg</source>
        <translation type="unfinished">{kg} kg</translation>
    </message>
    <message>
        <source>{kg} kg less of crops over the plan</source>
        <translation type="unfinished">{kg} kg menos de cultivos en todo el plan</translation>
    </message>
    <message>
        <source>{kg} kg more of crops over the plan</source>
        <translation type="unfinished">{kg} kg más de cultivos en todo el plan</translation>
    </message>
    <message>
        <source>{kind} · {places} places · {area} m²</source>
        <translation type="unfinished">{kind} · {places} lugares · {area} m²</translation>
    </message>
    <message>
        <source>{kind}; at most {cap} at once</source>
        <translation type="unfinished">{kind}; máximo {cap} de una vez</translation>
    </message>
    <message>
        <source>{known} are on the farm already and are passed over.</source>
        <translation type="unfinished">{known} ya están en la granja y se saltan.</translation>
    </message>
    <message>
        <source>{label} from {low} to {high}</source>
        <translation type="unfinished">{label} de {low} a {high}</translation>
    </message>
    <message>
        <source>{label} has {value}; at most {limit}.</source>
        <translation type="unfinished">{label} tiene {value}; máximo {limit}.</translation>
    </message>
    <message>
        <source>{label} is empty; it must be given.</source>
        <translation type="unfinished">{label} está vacío; hay que darlo.</translation>
    </message>
    <message>
        <source>{label} is {value}; it must be {limit}.</source>
        <translation type="unfinished">{label} es {value}; debe ser {limit}.</translation>
    </message>
    <message>
        <source>{label} is {value}; it must lie within {limit}.</source>
        <translation type="unfinished">{label} es {value}; debe estar dentro de {limit}.</translation>
    </message>
    <message>
        <source>{label} is “{typed}”; it must be a number.</source>
        <translation type="unfinished">{label} es “{typed}”; debe ser un número.</translation>
    </message>
    <message>
        <source>{label} “{value}” is taken; give another one.</source>
        <translation type="unfinished">{label} “{value}” ya se usa; dé otro.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no date; write it as {example}, or a week as W02 2027.</source>
        <translation type="unfinished">{label}: “{value}” no es una fecha; escríbala como {example}, o una semana como W02 2027.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no number; give {limit}.</source>
        <translation type="unfinished">{label}: “{value}” no es un número; dé {limit}.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no whole number; give {limit}.</source>
        <translation type="unfinished">{label}: “{value}” no es un número entero; dé {limit}.</translation>
    </message>
    <message>
        <source>{last}; every {days} d, to {target}</source>
        <translation type="unfinished">{last}; cada {days} d, hasta {target}</translation>
    </message>
    <message>
        <source>{least} to {most}</source>
        <translation type="unfinished">{least} a {most}</translation>
    </message>
    <message>
        <source>{length} m</source>
        <translation type="unfinished">{length} m</translation>
    </message>
    <message>
        <source>{likely} ({low} to {high})</source>
        <translation type="unfinished">{likely} ({low} a {high})</translation>
    </message>
    <message>
        <source>{likely} ({low}–{high})</source>
        <translation type="unfinished">{likely} ({low}–{high})</translation>
    </message>
    <message>
        <source>{likely} g each, {low} to {high} g by slow or quick growth</source>
        <translation type="unfinished">{likely} g cada uno, {low} a {high} g según crezcan lento o rápido</translation>
    </message>
    <message>
        <source>{limits}; the range the program takes</source>
        <translation type="unfinished">{limits}; lo que acepta el programa</translation>
    </message>
    <message>
        <source>{loop}: area by {rule}</source>
        <translation type="unfinished">{loop}: superficie según {rule}</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation type="unfinished">{low} a {high}</translation>
    </message>
    <message>
        <source>{low} to {high} eq must be reckoned with; the balance of nitrogen gives {balance} eq</source>
        <translation type="unfinished">hay que contar con {low} a {high} eq; el balance de nitrógeno da {balance} eq</translation>
    </message>
    <message>
        <source>{low} to {high} m²</source>
        <translation type="unfinished">{low} a {high} m²</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation type="unfinished">{low} a {high} {unit}</translation>
    </message>
    <message>
        <source>{many} batches</source>
        <translation type="unfinished">{many} lotes</translation>
    </message>
    <message>
        <source>{many} batches chosen</source>
        <translation type="unfinished">{many} lotes elegidos</translation>
    </message>
    <message>
        <source>{many} batches have other dates; furthest {code}, {days}</source>
        <translation type="unfinished">{many} lotes tienen otras fechas; el que más, {code}, {days}</translation>
    </message>
    <message>
        <source>{many} days</source>
        <translation type="unfinished">{many} días</translation>
    </message>
    <message>
        <source>{many} dead are entered, more than were left</source>
        <translation type="unfinished">se anotaron {many} muertos, más de los que quedaban</translation>
    </message>
    <message>
        <source>{many} earlier</source>
        <translation type="unfinished">{many} antes</translation>
    </message>
    <message>
        <source>{many} figures are moved together, for they go together</source>
        <translation type="unfinished">{many} cifras se mueven juntas, porque van juntas</translation>
    </message>
    <message>
        <source>{many} figures with a range were moved one at a time, as if none hung on another</source>
        <translation type="unfinished">{many} cifras con rango se movieron una por una, como si ninguna dependiera de otra</translation>
    </message>
    <message>
        <source>{many} fish</source>
        <translation type="unfinished">{many} peces</translation>
    </message>
    <message>
        <source>{many} g</source>
        <translation type="unfinished">{many} g</translation>
    </message>
    <message>
        <source>{many} g a day</source>
        <translation type="unfinished">{many} g al día</translation>
    </message>
    <message>
        <source>{many} heads of a batch of {plants}?</source>
        <translation type="unfinished">¿{many} cabezas de una tanda de {plants}?</translation>
    </message>
    <message>
        <source>{many} later</source>
        <translation type="unfinished">{many} después</translation>
    </message>
    <message>
        <source>{many} longer</source>
        <translation type="unfinished">{many} más</translation>
    </message>
    <message>
        <source>{many} numbers</source>
        <translation type="unfinished">{many} números</translation>
    </message>
    <message>
        <source>{many} of {seeds} seeds</source>
        <translation type="unfinished">{many} de {seeds} semillas</translation>
    </message>
    <message>
        <source>{many} places are held by two batches at once</source>
        <translation type="unfinished">{many} lugares están ocupados por dos lotes a la vez</translation>
    </message>
    <message>
        <source>{many} plants</source>
        <translation type="unfinished">{many} plantas</translation>
    </message>
    <message>
        <source>{many} seeds</source>
        <translation type="unfinished">{many} semillas</translation>
    </message>
    <message>
        <source>{many} shorter</source>
        <translation type="unfinished">{many} menos</translation>
    </message>
    <message>
        <source>{many} smaller parts are summed as others</source>
        <translation type="unfinished">{many} partes menores se suman como otras</translation>
    </message>
    <message>
        <source>{many} tasks are late. {first}</source>
        <translation type="unfinished">Hay {many} tareas atrasadas. {first}</translation>
    </message>
    <message>
        <source>{mass} kg/m³</source>
        <translation type="unfinished">{mass} kg/m³</translation>
    </message>
    <message>
        <source>{moment}  ({ago}, {size})</source>
        <translation type="unfinished">{moment}  ({ago}, {size})</translation>
    </message>
    <message>
        <source>{named} and {rest} more</source>
        <translation type="unfinished">{named} y {rest} más</translation>
    </message>
    <message>
        <source>{name} could not be brought in: {why}</source>
        <translation type="unfinished">No se pudo traer {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be read: {why}</source>
        <translation type="unfinished">No se pudo leer {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be written: {why}</source>
        <translation type="unfinished">No se pudo escribir {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be written: {why} Choose another folder.</source>
        <translation type="unfinished">No se pudo escribir {name}: {why} Elija otra carpeta.</translation>
    </message>
    <message>
        <source>{name} foreseen, {day}</source>
        <translation type="unfinished">{name} previsto, {day}</translation>
    </message>
    <message>
        <source>{name} grows too slowly in this season to be ready in time: the plan gives it up when it is {share} % of its size.</source>
        <translation type="unfinished">{name} crece muy lento en esta temporada para estar listo a tiempo: el plan lo deja con {share} % de su tamaño.</translation>
    </message>
    <message>
        <source>{name} has fewer places than plants.</source>
        <translation type="unfinished">{name} tiene menos lugares que plantas.</translation>
    </message>
    <message>
        <source>{name} has no places yet.</source>
        <translation type="unfinished">{name} aún no tiene lugares.</translation>
    </message>
    <message>
        <source>{name} is not picked on that day.</source>
        <translation type="unfinished">{name} no se cosecha ese día.</translation>
    </message>
    <message>
        <source>{name} is the plan now. Undo brings the old one back.</source>
        <translation type="unfinished">{name} es ahora el plan. Deshacer trae el anterior.</translation>
    </message>
    <message>
        <source>{name} over the plan: {sign}{percent} %</source>
        <translation type="unfinished">{name} en todo el plan: {sign}{percent} %</translation>
    </message>
    <message>
        <source>{name} stands in a bed that does not suit it.</source>
        <translation type="unfinished">{name} está en una cama que no le sirve.</translation>
    </message>
    <message>
        <source>{name} {value} on {day} is far out of its band.</source>
        <translation type="unfinished">{name} {value} el {day} está muy fuera de su banda.</translation>
    </message>
    <message>
        <source>{name} {value} on {day} stands alone. Is it right?</source>
        <translation type="unfinished">{name} {value} el {day} se aparta de los demás. ¿Es correcto?</translation>
    </message>
    <message>
        <source>{name}, a kg</source>
        <translation type="unfinished">{name}, el kg</translation>
    </message>
    <message>
        <source>{name}, pellets of {size} mm</source>
        <translation type="unfinished">{name}, pellets de {size} mm</translation>
    </message>
    <message>
        <source>{name}: less is supplied than the crops take up.</source>
        <translation type="unfinished">{name}: se aporta menos de lo que toman los cultivos.</translation>
    </message>
    <message>
        <source>{name}: more fish in the tank than the limit for its size.</source>
        <translation type="unfinished">{name}: más peces en el tanque que el límite para su tamaño.</translation>
    </message>
    <message>
        <source>{name}: more is fed than these fish can eat; what they leave fouls the water.</source>
        <translation type="unfinished">{name}: se da más de lo que estos peces pueden comer; lo que dejan ensucia el agua.</translation>
    </message>
    <message>
        <source>{name}: no reading yet</source>
        <translation type="unfinished">{name}: aún sin lectura</translation>
    </message>
    <message>
        <source>{name}: no warmth of the water is entered for its loop; growth is worked out at {assumed} °C, the best for this fish.</source>
        <translation type="unfinished">{name}: no hay temperatura del agua anotada para su circuito; el crecimiento se calcula a {assumed} °C, lo mejor para este pez.</translation>
    </message>
    <message>
        <source>{name}: pellet {size} mm</source>
        <translation type="unfinished">{name}: pellet de {size} mm</translation>
    </message>
    <message>
        <source>{name}: take a closer look.</source>
        <translation type="unfinished">{name}: mírelo más de cerca.</translation>
    </message>
    <message>
        <source>{name}: the feed falls, and the plants' food with it.</source>
        <translation type="unfinished">{name}: baja el alimento, y con él la comida de las plantas.</translation>
    </message>
    <message>
        <source>{name}: the water comes close to what the fish cannot live in.</source>
        <translation type="unfinished">{name}: el agua se acerca a lo que los peces no soportan.</translation>
    </message>
    <message>
        <source>{name}: the water is too cold or too warm for these fish to feed and grow; what is given all the same fouls it.</source>
        <translation type="unfinished">{name}: el agua está muy fría o muy caliente para que estos peces coman y crezcan; lo que se dé de todos modos la ensucia.</translation>
    </message>
    <message>
        <source>{name}: this harvest is barred: the fish were treated with a medicine and are not cleared by then.</source>
        <translation type="unfinished">{name}: esta cosecha está vedada: los peces se trataron con una medicina y no estarán aptos para entonces.</translation>
    </message>
    <message>
        <source>{name}: treated with a medicine and not cleared yet: no fish of it may be harvested for eating. Log the day on which they are cleared.</source>
        <translation type="unfinished">{name}: tratados con una medicina y aún no aptos: no se puede cosechar ninguno para comer. Anote el día en que queden aptos.</translation>
    </message>
    <message>
        <source>{name}: {count} readings from {low} to {high}, the last {value} on {day}</source>
        <translation type="unfinished">{name}: {count} lecturas de {low} a {high}, la última {value} el {day}</translation>
    </message>
    <message>
        <source>{name}: {events} entries, {new} new, {changed} changed, {gone} cancelled.</source>
        <translation type="unfinished">{name}: {events} entradas, {new} nuevas, {changed} cambiadas, {gone} canceladas.</translation>
    </message>
    <message>
        <source>{name}…</source>
        <translation type="unfinished">{name}…</translation>
    </message>
    <message>
        <source>{need} of filter surface are needed</source>
        <translation type="unfinished">se necesitan {need} de superficie de filtro</translation>
    </message>
    <message>
        <source>{new} new, {replaced} replaced.</source>
        <translation type="unfinished">{new} nuevas, {replaced} sustituidas.</translation>
    </message>
    <message>
        <source>{now} now,
{then} in {weeks} weeks</source>
        <translation type="unfinished">{now} ahora,
{then} en {weeks} semanas</translation>
    </message>
    <message>
        <source>{now} ▲ better {other}</source>
        <translation type="unfinished">{now} ▲ mejor {other}</translation>
    </message>
    <message>
        <source>{now} ▲ none suits</source>
        <translation type="unfinished">{now} ▲ ninguno sirve</translation>
    </message>
    <message>
        <source>{number} days earlier</source>
        <translation type="unfinished">{number} días antes</translation>
    </message>
    <message>
        <source>{number} days later</source>
        <translation type="unfinished">{number} días después</translation>
    </message>
    <message>
        <source>{n} chosen batches</source>
        <translation type="unfinished">{n} lotes elegidos</translation>
    </message>
    <message>
        <source>{n} pages on {paper}</source>
        <translation type="unfinished">{n} páginas en {paper}</translation>
    </message>
    <message>
        <source>{peak} of {limit}</source>
        <translation type="unfinished">{peak} de {limit}</translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation type="unfinished">{percent} %</translation>
    </message>
    <message>
        <source>{percent} % ± {spread}</source>
        <translation type="unfinished">{percent} % ± {spread}</translation>
    </message>
    <message>
        <source>{phase} places, held until the day before {until}</source>
        <translation type="unfinished">lugares de {phase}, ocupados hasta el día anterior al {until}</translation>
    </message>
    <message>
        <source>{plants} plants</source>
        <translation type="unfinished">{plants} plantas</translation>
    </message>
    <message>
        <source>{plants} plants × {allowance} ÷ {germination} that come up = {needed} seeds</source>
        <translation type="unfinished">{plants} plantas × {allowance} ÷ {germination} que nacen = {needed} semillas</translation>
    </message>
    <message>
        <source>{plants} plants × {living} live × {grams} g × {sold} can be sold</source>
        <translation type="unfinished">{plants} plantas × {living} vivas × {grams} g × {sold} se puede vender</translation>
    </message>
    <message>
        <source>{plants} plants ÷ {germination} that come up ÷ {survival} that live = {needed} seeds</source>
        <translation type="unfinished">{plants} plantas ÷ {germination} que nacen ÷ {survival} que viven = {needed} semillas</translation>
    </message>
    <message>
        <source>{plants} plants, {day}</source>
        <translation type="unfinished">{plants} plantas, {day}</translation>
    </message>
    <message>
        <source>{plants} ÷ ({germination} germinate × {stand} of them at this warmth × {survival} live), rounded up</source>
        <translation type="unfinished">{plants} ÷ ({germination} germinan × {stand} de ellas a esta temperatura × {survival} viven), redondeado hacia arriba</translation>
    </message>
    <message>
        <source>{plants} ÷ ({germination} germinate × {survival} live), rounded up</source>
        <translation type="unfinished">{plants} ÷ ({germination} germinan × {survival} viven), redondeado hacia arriba</translation>
    </message>
    <message>
        <source>{quantity}, {days} d</source>
        <translation type="unfinished">{quantity}, {days} d</translation>
    </message>
    <message>
        <source>{quick} at the earliest</source>
        <translation type="unfinished">{quick} lo más pronto</translation>
    </message>
    <message>
        <source>{reason}: {stages} stages, {days} d</source>
        <translation type="unfinished">{reason}: {stages} etapas, {days} d</translation>
    </message>
    <message>
        <source>{rest} more batches moved less far.</source>
        <translation type="unfinished">{rest} lotes más se movieron menos.</translation>
    </message>
    <message>
        <source>{rows} rows read, {count} would come in.</source>
        <translation type="unfinished">{rows} filas leídas, entrarían {count}.</translation>
    </message>
    <message>
        <source>{row} of {bed}</source>
        <translation type="unfinished">{row} de {bed}</translation>
    </message>
    <message>
        <source>{scenario}: hold back {codes}, for weeks become short there.</source>
        <translation type="unfinished">{scenario}: retenga {codes}, pues ahí hay semanas con falta.</translation>
    </message>
    <message>
        <source>{seeds} seeds of {crop}</source>
        <translation type="unfinished">{seeds} semillas de {crop}</translation>
    </message>
    <message>
        <source>{share} at a time</source>
        <translation type="unfinished">{share} a la vez</translation>
    </message>
    <message>
        <source>{share} come up</source>
        <translation type="unfinished">nacen {share}</translation>
    </message>
    <message>
        <source>{share} of {element}, {week}</source>
        <translation type="unfinished">{share} de {element}, {week}</translation>
    </message>
    <message>
        <source>{shown} of {count} batches</source>
        <translation type="unfinished">{shown} de {count} lotes</translation>
    </message>
    <message>
        <source>{sign} Yes, but: {said}</source>
        <translation type="unfinished">{sign} Sí, pero: {said}</translation>
    </message>
    <message>
        <source>{sign} {answer}</source>
        <translation type="unfinished">{sign} {answer}</translation>
    </message>
    <message>
        <source>{sign} {answer}: {said}</source>
        <translation type="unfinished">{sign} {answer}: {said}</translation>
    </message>
    <message>
        <source>{sow}, {crop}, {code}: {seeds} seeds for {plants} plants, first pick {pick}, {where}</source>
        <translation type="unfinished">{sow}, {crop}, {code}: {seeds} semillas para {plants} plantas, primera cosecha {pick}, {where}</translation>
    </message>
    <message>
        <source>{spoken}; Enter goes into it</source>
        <translation type="unfinished">{spoken}; Intro entra</translation>
    </message>
    <message>
        <source>{stage}, day {day} of {days}</source>
        <translation type="unfinished">{stage}, día {day} de {days}</translation>
    </message>
    <message>
        <source>{subject}, {outside} outside</source>
        <translation type="unfinished">{subject}, {outside} fuera</translation>
    </message>
    <message>
        <source>{supply} g supplied, {demand} g wanted</source>
        <translation type="unfinished">{supply} g aportados, {demand} g pedidos</translation>
    </message>
    <message>
        <source>{tank}, {fish}; filter; biofilter; {beds}</source>
        <translation type="unfinished">{tank}, {fish}; filtro; biofiltro; {beds}</translation>
    </message>
    <message>
        <source>{tests} tests and {batches} batches of the lot were counted, {n} seeds in all</source>
        <translation type="unfinished">se contaron {tests} pruebas y {batches} lotes de cultivo de esta semilla, {n} semillas en total</translation>
    </message>
    <message>
        <source>{title} ({count})</source>
        <translation type="unfinished">{title} ({count})</translation>
    </message>
    <message>
        <source>{title} [{unit}]: {said}</source>
        <translation type="unfinished">{title} [{unit}]: {said}</translation>
    </message>
    <message>
        <source>{title} – saved</source>
        <translation type="unfinished">{title} – guardado</translation>
    </message>
    <message>
        <source>{title}: nothing to show</source>
        <translation type="unfinished">{title}: nada que mostrar</translation>
    </message>
    <message>
        <source>{trouble} Looking for it again every moment.</source>
        <translation type="unfinished">{trouble} Se sigue buscando a cada momento.</translation>
    </message>
    <message>
        <source>{units} × {rows} rows of {columns}</source>
        <translation type="unfinished">{units} × {rows} hileras de {columns}</translation>
    </message>
    <message>
        <source>{unit} a week</source>
        <translation type="unfinished">{unit} por semana</translation>
    </message>
    <message>
        <source>{value} g</source>
        <translation type="unfinished">{value} g</translation>
    </message>
    <message>
        <source>{value} kg</source>
        <translation type="unfinished">{value} kg</translation>
    </message>
    <message>
        <source>{value} · limiting</source>
        <translation type="unfinished">{value} · limitante</translation>
    </message>
    <message>
        <source>{weeks} weeks</source>
        <translation type="unfinished">{weeks} semanas</translation>
    </message>
    <message>
        <source>{week}. {element}: {supply} g supplied, {demand} g wanted, {share} %, {band}; stock {stock} mg/L.</source>
        <translation type="unfinished">{week}. {element}: {supply} g aportados, {demand} g pedidos, {share} %, {band}; reserva {stock} mg/L.</translation>
    </message>
    <message>
        <source>{week}: 1 head short</source>
        <translation type="unfinished">{week}: falta 1 pieza</translation>
    </message>
    <message>
        <source>{week}: 1 plant short</source>
        <translation type="unfinished">{week}: falta 1 planta</translation>
    </message>
    <message>
        <source>{week}: {many} heads short</source>
        <translation type="unfinished">{week}: faltan {many} piezas</translation>
    </message>
    <message>
        <source>{week}: {many} plants short</source>
        <translation type="unfinished">{week}: faltan {many} plantas</translation>
    </message>
    <message>
        <source>{what} a week</source>
        <translation type="unfinished">{what} por semana</translation>
    </message>
    <message>
        <source>{what} days</source>
        <translation type="unfinished">días de {what}</translation>
    </message>
    <message>
        <source>{what} end of the band</source>
        <translation type="unfinished">extremo {what} de la franja</translation>
    </message>
    <message>
        <source>{what} later than by the book</source>
        <translation type="unfinished">{what}: más tarde que en el libro</translation>
    </message>
    <message>
        <source>{what}, where it goes</source>
        <translation type="unfinished">{what}, a dónde va</translation>
    </message>
    <message>
        <source>{what}: “{given}” is no price; give a number from 0 to 1000000.</source>
        <translation type="unfinished">{what}: “{given}” no es un precio; dé un número de 0 a 1000000.</translation>
    </message>
    <message>
        <source>{what}s of a batch</source>
        <translation type="unfinished">{what}, de un lote</translation>
    </message>
    <message>
        <source>{what}s of some weeks</source>
        <translation type="unfinished">{what}, en unas semanas</translation>
    </message>
    <message>
        <source>{where}, place {first}</source>
        <translation type="unfinished">{where}, lugar {first}</translation>
    </message>
    <message>
        <source>{where}, places {first}–{last}</source>
        <translation type="unfinished">{where}, lugares {first}–{last}</translation>
    </message>
    <message>
        <source>{why} The sample farm is shown instead.</source>
        <translation type="unfinished">{why} Se muestra la granja de muestra.</translation>
    </message>
    <message>
        <source>{words}</source>
        <translation type="unfinished">{words}</translation>
    </message>
    <message>
        <source>{words} Room would come from {freed}.</source>
        <translation type="unfinished">{words} Habría lugar si sale {freed}.</translation>
    </message>
    <message>
        <source>{words} What decides: {matter}.</source>
        <translation type="unfinished">{words} Lo que decide: {matter}.</translation>
    </message>
    <message>
        <source>{words} to {ends}</source>
        <translation type="unfinished">{words} al {ends}</translation>
    </message>
    <message>
        <source>{words}, and {moved} runs of places.</source>
        <translation type="unfinished">{words}, y {moved} tramos de lugares.</translation>
    </message>
    <message>
        <source>{words}, locked</source>
        <translation type="unfinished">{words}, fijo</translation>
    </message>
    <message>
        <source>{words}, {days} d off</source>
        <translation type="unfinished">{words}, {days} d sin alimento</translation>
    </message>
    <message>
        <source>{words}; in {pots} pots: {seeds} seeds, trays of {cells}: {trays}, cells left empty: {spare}</source>
        <translation type="unfinished">{words}; en {pots} macetas: {seeds} semillas, bandejas de {cells}: {trays}, celdas vacías: {spare}</translation>
    </message>
    <message>
        <source>{zone}: {latitude}°, {longitude}° at {city}; mend the latitude if you live far from there</source>
        <translation type="unfinished">{zone}: {latitude}°, {longitude}° en {city}; corrija la latitud si vive lejos de allí</translation>
    </message>
    <message>
        <source>± spread</source>
        <translation type="unfinished">± variación</translation>
    </message>
    <message>
        <source>Σ days: what lies × limit × rate, each day's by its age</source>
        <translation type="unfinished">Σ días: lo que yace × límite × velocidad, cada día según su edad</translation>
    </message>
    <message>
        <source>– (letter of the band no demand)</source>
        <translation type="unfinished">–</translation>
    </message>
    <message>
        <source>“Uneven” is the coefficient of variation of the feed: its spread as a share of its mean. “In band” is the share of weeks in which the beds can use what is fed.</source>
        <translation type="unfinished">“Desigual” es el coeficiente de variación del alimento: su dispersión como parte de su media. “En banda” es la parte de semanas en que las camas pueden usar lo que se da.</translation>
    </message>
    <message>
        <source>“Within 0.8 % of the best possible” is proven: a bound is worked out that no plan can pass, and the gap to it is told. The search may be stopped at any time; the best so far is kept.</source>
        <translation type="unfinished">“A menos del 0,8 % de lo mejor posible” está probado: se calcula una cota que ningún plan puede pasar y se dice la distancia a ella. La búsqueda puede pararse cuando se quiera; se guarda lo mejor hasta entonces.</translation>
    </message>
    <message>
        <source>“{value}” is neither yes nor no; write y or n.</source>
        <translation type="unfinished">“{value}” no es ni sí ni no; escriba y o n.</translation>
    </message>
    <message>
        <source>“{value}” is no number.</source>
        <translation type="unfinished">“{value}” no es un número.</translation>
    </message>
    <message>
        <source>“{value}” is no time of day; write it as 07:30 or 730.</source>
        <translation type="unfinished">“{value}” no es una hora; escríbala como 07:30 o 730.</translation>
    </message>
    <message>
        <source>“{word}” is no point; write head and flow as 1.5:2400.</source>
        <translation type="unfinished">“{word}” no es un punto; escriba altura y caudal como 1.5:2400.</translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation type="unfinished">‹ Atrás</translation>
    </message>
    <message>
        <source>▶ you are here</source>
        <translation type="unfinished">▶ usted está aquí</translation>
    </message>
    <message>
        <source>★ {groups}</source>
        <translation type="unfinished">★ {groups}</translation>
    </message>
    <message>
        <source>⚠ All seven days are ticked; leave at least one for work.</source>
        <translation type="unfinished">⚠ Los siete días están marcados; deje al menos uno para trabajar.</translation>
    </message>
    <message>
        <source>⚠ It could not be worked out: {why}</source>
        <translation type="unfinished">⚠ No se pudo calcular: {why}</translation>
    </message>
    <message>
        <source>⚠ {name}: {why} Choose another name.</source>
        <translation type="unfinished">⚠ {name}: {why} Elija otro nombre.</translation>
    </message>
    <message>
        <source>⚠ {parts}: see below.</source>
        <translation type="unfinished">⚠ {parts}: vea abajo.</translation>
    </message>
    <message>
        <source>⚠ {why} Choose another folder.</source>
        <translation type="unfinished">⚠ {why} Elija otra carpeta.</translation>
    </message>
    <message>
        <source>⚠ {why} See that the printer is on and has paper, or save as PDF.</source>
        <translation type="unfinished">⚠ {why} Vea que la impresora esté encendida y tenga papel, o guarde como PDF.</translation>
    </message>
    <message>
        <source>⚠ {why}.</source>
        <translation type="unfinished">⚠ {why}.</translation>
    </message>
</context>
</TS>
