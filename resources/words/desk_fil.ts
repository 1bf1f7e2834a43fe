<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fil" sourcelanguage="en">
<context>
    <name>Desk</name>
    <message>
        <source> ({low} to {high})</source>
        <translation type="unfinished"> ({low} hanggang {high})</translation>
    </message>
    <message>
        <source> d</source>
        <translation type="unfinished"> araw</translation>
    </message>
    <message>
        <source> g</source>
        <translation type="unfinished"> g</translation>
    </message>
    <message>
        <source> g a scoop</source>
        <translation type="unfinished"> g bawat takal</translation>
    </message>
    <message>
        <source> or </source>
        <translation type="unfinished"> o </translation>
    </message>
    <message>
        <source> · locked</source>
        <translation type="unfinished"> · naka-lock</translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished">%</translation>
    </message>
    <message>
        <source>% of body weight a day</source>
        <translation type="unfinished">% ng bigat ng katawan bawat araw</translation>
    </message>
    <message>
        <source>&amp;A level scoop</source>
        <translation type="unfinished">Patag na ta&amp;kal</translation>
    </message>
    <message>
        <source>&amp;About and cautions</source>
        <translation type="unfinished">&amp;Tungkol dito at mga paalala</translation>
    </message>
    <message>
        <source>&amp;At</source>
        <translation type="unfinished">Sa &amp;oras na</translation>
    </message>
    <message>
        <source>&amp;Batch or seed lot</source>
        <translation type="unfinished">&amp;Batch o lote ng binhi</translation>
    </message>
    <message>
        <source>&amp;Batches</source>
        <translation type="unfinished">Mga &amp;batch</translation>
    </message>
    <message>
        <source>&amp;Beds</source>
        <translation type="unfinished">Mga kam&amp;a</translation>
    </message>
    <message>
        <source>&amp;Begin…</source>
        <translation type="unfinished">Magsi&amp;mula…</translation>
    </message>
    <message>
        <source>&amp;Black and white</source>
        <translation type="unfinished">&amp;Itim at puti</translation>
    </message>
    <message>
        <source>&amp;Calendar for a phone…</source>
        <translation type="unfinished">&amp;Kalendaryo para sa telepono…</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation type="unfinished">&amp;Baguhin</translation>
    </message>
    <message>
        <source>&amp;Check the arithmetic…</source>
        <translation type="unfinished">Suriin ang &amp;kuwenta…</translation>
    </message>
    <message>
        <source>&amp;Copy chosen batches</source>
        <translation type="unfinished">&amp;Kopyahin ang mga napiling batch</translation>
    </message>
    <message>
        <source>&amp;Days before</source>
        <translation type="unfinished">Ilang &amp;araw bago</translation>
    </message>
    <message>
        <source>&amp;Doses</source>
        <translation type="unfinished">Mga &amp;dosis</translation>
    </message>
    <message>
        <source>&amp;Dose…</source>
        <translation type="unfinished">Dosi&amp;s…</translation>
    </message>
    <message>
        <source>&amp;Due this week</source>
        <translation type="unfinished">&amp;Gagawin ngayong linggo</translation>
    </message>
    <message>
        <source>&amp;Export as text…</source>
        <translation type="unfinished">I-&amp;export bilang text…</translation>
    </message>
    <message>
        <source>&amp;Farm</source>
        <translation type="unfinished">&amp;Farm</translation>
    </message>
    <message>
        <source>&amp;Filters</source>
        <translation type="unfinished">Mga &amp;filter</translation>
    </message>
    <message>
        <source>&amp;Fit the whole plan</source>
        <translation type="unfinished">Ipakita ang b&amp;uong plano</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished">T&amp;ulong</translation>
    </message>
    <message>
        <source>&amp;Help to this page</source>
        <translation type="unfinished">&amp;Tulong sa pahinang ito</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation type="unfinished">&amp;Kasaysayan…</translation>
    </message>
    <message>
        <source>&amp;Keep all lines</source>
        <translation type="unfinished">&amp;Itago ang lahat ng linya</translation>
    </message>
    <message>
        <source>&amp;Labels and tags…</source>
        <translation type="unfinished">Mga &amp;label at tag…</translation>
    </message>
    <message>
        <source>&amp;Larger type</source>
        <translation type="unfinished">Mas &amp;malaking titik</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished">&amp;Maliwanag</translation>
    </message>
    <message>
        <source>&amp;Lock the chosen batch</source>
        <translation type="unfinished">I-loc&amp;k ang napiling batch</translation>
    </message>
    <message>
        <source>&amp;Log it</source>
        <translation type="unfinished">Ita&amp;la</translation>
    </message>
    <message>
        <source>&amp;Loops of water</source>
        <translation type="unfinished">Mga &amp;loop ng tubig</translation>
    </message>
    <message>
        <source>&amp;Meals a day</source>
        <translation type="unfinished">Ilang kain ba&amp;wat araw</translation>
    </message>
    <message>
        <source>&amp;Meaning of what is in hand</source>
        <translation type="unfinished">&amp;Kahulugan ng ginagamit</translation>
    </message>
    <message>
        <source>&amp;Meters</source>
        <translation type="unfinished">Mga &amp;panukat</translation>
    </message>
    <message>
        <source>&amp;Meters and products</source>
        <translation type="unfinished">&amp;Mga metro at produkto</translation>
    </message>
    <message>
        <source>&amp;Move all to the right</source>
        <translation type="unfinished">&amp;Iusog lahat pakanan</translation>
    </message>
    <message>
        <source>&amp;New lines</source>
        <translation type="unfinished">&amp;Bagong mga linya</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished">&amp;Bago…</translation>
    </message>
    <message>
        <source>&amp;Next week</source>
        <translation type="unfinished">&amp;Susunod na linggo</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished">Bu&amp;ksan…</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation type="unfinished">&amp;Papel</translation>
    </message>
    <message>
        <source>&amp;Paste some weeks later…</source>
        <translation type="unfinished">I-&amp;paste pagkaraan ng ilang linggo…</translation>
    </message>
    <message>
        <source>&amp;Plan and name…</source>
        <translation type="unfinished">&amp;Plano at pangalan…</translation>
    </message>
    <message>
        <source>&amp;Previous week</source>
        <translation type="unfinished">&amp;Nakaraang linggo</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished">I-&amp;print…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished">Lu&amp;mabas</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished">&amp;Ulitin</translation>
    </message>
    <message>
        <source>&amp;Repeat the last</source>
        <translation type="unfinished">Ulitin ang &amp;huli</translation>
    </message>
    <message>
        <source>&amp;Save as a table…</source>
        <translation type="unfinished">&amp;I-save bilang talaan…</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation type="unfinished">I-&amp;save…</translation>
    </message>
    <message>
        <source>&amp;Set-up</source>
        <translation type="unfinished">&amp;Ayos</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation type="unfinished">&amp;Pilas ng papel</translation>
    </message>
    <message>
        <source>&amp;Sites</source>
        <translation type="unfinished">Mga &amp;site</translation>
    </message>
    <message>
        <source>&amp;Sow a batch…</source>
        <translation type="unfinished">Mag&amp;hasik ng batch…</translation>
    </message>
    <message>
        <source>&amp;Take up what was learned</source>
        <translation type="unfinished">&amp;Gamitin ang natutunan</translation>
    </message>
    <message>
        <source>&amp;Trace a batch or lot…</source>
        <translation type="unfinished">&amp;Tuntunin ang batch o lote…</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished">I-&amp;undo</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished">&amp;Tingnan</translation>
    </message>
    <message>
        <source>&amp;Water reading…</source>
        <translation type="unfinished">Suri ng tu&amp;big…</translation>
    </message>
    <message>
        <source>&amp;Whose work</source>
        <translation type="unfinished">Kaninong &amp;gawain</translation>
    </message>
    <message>
        <source>&amp;Width of a label</source>
        <translation type="unfinished">La&amp;pad ng label</translation>
    </message>
    <message>
        <source>&amp;Words used here</source>
        <translation type="unfinished">Mga &amp;salitang gamit dito</translation>
    </message>
    <message>
        <source>, past the plan when slow</source>
        <translation type="unfinished">, lampas sa plano kung mabagal</translation>
    </message>
    <message>
        <source>, {slow} when slow</source>
        <translation type="unfinished">, {slow} kung mabagal</translation>
    </message>
    <message>
        <source>0 for none</source>
        <translation type="unfinished">0 kung wala</translation>
    </message>
    <message>
        <source>07:30</source>
        <translation type="unfinished">07:30</translation>
    </message>
    <message>
        <source>0: once</source>
        <translation type="unfinished">0: isang beses</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation type="unfinished">1 batch</translation>
    </message>
    <message>
        <source>1 batch chosen</source>
        <translation type="unfinished">1 batch ang napili</translation>
    </message>
    <message>
        <source>1 batch has to wait.</source>
        <translation type="unfinished">1 batch ang kailangang maghintay.</translation>
    </message>
    <message>
        <source>1 batch: harvest {span} days {way}</source>
        <translation type="unfinished">1 batch: ani {span} araw {way}</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation type="unfinished">1 araw</translation>
    </message>
    <message>
        <source>1 day earlier</source>
        <translation type="unfinished">maaga ng 1 araw</translation>
    </message>
    <message>
        <source>1 day later</source>
        <translation type="unfinished">huli ng 1 araw</translation>
    </message>
    <message>
        <source>1 found</source>
        <translation type="unfinished">1 ang nakita</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation type="unfinished">1 grupo</translation>
    </message>
    <message>
        <source>1 own</source>
        <translation type="unfinished">1 sarili</translation>
    </message>
    <message>
        <source>1 page on {paper}</source>
        <translation type="unfinished">1 pahina sa {paper}</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation type="unfinished">1 suri</translation>
    </message>
    <message>
        <source>1 thing</source>
        <translation type="unfinished">1 bagay</translation>
    </message>
    <message>
        <source>1 thing differs</source>
        <translation type="unfinished">1 bagay ang iba</translation>
    </message>
    <message>
        <source>1 thing to note</source>
        <translation type="unfinished">1 bagay na dapat pansinin</translation>
    </message>
    <message>
        <source>1 thing to repair, from today on</source>
        <translation type="unfinished">1 bagay na aayusin, mula ngayon</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation type="unfinished">1 linggo</translation>
    </message>
    <message>
        <source>1, 2, 4 and 6 groups, harvested whole or in parts. The more groups, the less the feed falls at a harvest, and the plants' food with it. The fall is against the month before; “longest” is the time until the feed is back.</source>
        <translation type="unfinished">1, 2, 4 at 6 na grupo, inaani nang buo o paunti-unti. Kapag mas maraming grupo, mas maliit ang bagsak ng pakain sa pag-ani, at pati ang pagkain ng halaman. Ang bagsak ay laban sa nakaraang buwan; ang “pinakamahaba” ay ang panahon hanggang makabalik ang pakain.</translation>
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
        <translation type="unfinished">1/linggo</translation>
    </message>
    <message>
        <source>10-15 fruits a plant. Book method is the media bed.</source>
        <translation type="unfinished">10-15 bunga bawat halaman. Media bed ang paraan ng aklat.</translation>
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
        <translation type="unfinished">; may kasamang {ions}</translation>
    </message>
    <message>
        <source>; dissolves slowly</source>
        <translation type="unfinished">; mabagal matunaw</translation>
    </message>
    <message>
        <source>; doses of the plan bring {eq}</source>
        <translation type="unfinished">; {eq} ang dala ng mga dosis ng plano</translation>
    </message>
    <message>
        <source>; foreseen {value} on {day}</source>
        <translation type="unfinished">; inaasahan {value} sa {day}</translation>
    </message>
    <message>
        <source>; from {value} on {day}</source>
        <translation type="unfinished">; mula sa {value} noong {day}</translation>
    </message>
    <message>
        <source>; meter calibrated on {days}: no trend across that</source>
        <translation type="unfinished">; na-calibrate ang panukat noong {days}: walang trend na tumatawid doon</translation>
    </message>
    <message>
        <source>; the first {shown} are shown</source>
        <translation type="unfinished">; ang unang {shown} ang ipinapakita</translation>
    </message>
    <message>
        <source>; {count} of them doubtful: the meter was overdue for calibration</source>
        <translation type="unfinished">; {count} sa mga ito ang alanganin: lampas na sa takdang calibration ang panukat</translation>
    </message>
    <message>
        <source>A (letter of fish added)</source>
        <translation type="unfinished">D</translation>
    </message>
    <message>
        <source>A (letter of the band ample)</source>
        <translation type="unfinished">L</translation>
    </message>
    <message>
        <source>A band drawn over empty ground chooses all it touches, with Shift more; Ctrl+A chooses all in sight. They are moved, copied and locked together.</source>
        <translation type="unfinished">Ang bandang iginuhit sa bakanteng lugar ay pumipili ng lahat ng matamaan, sa Shift ay dagdag pa; ang Ctrl+A ay pumipili ng lahat ng nakikita. Sabay silang ililipat, kokopyahin at ila-lock.</translation>
    </message>
    <message>
        <source>A bar cannot be put here. Drop it on a raft, block or tray.</source>
        <translation type="unfinished">Hindi puwede rito ang bar. Ibagsak sa lutang, bloke o tray.</translation>
    </message>
    <message>
        <source>A batch that no plan may move.</source>
        <translation type="unfinished">Batch na walang planong makagagalaw.</translation>
    </message>
    <message>
        <source>A batch, bed, fish, crop, week, page or word</source>
        <translation type="unfinished">Batch, kama, isda, pananim, linggo, pahina o salita</translation>
    </message>
    <message>
        <source>A bed of stones that holds roots, bacteria and some solids.</source>
        <translation type="unfinished">Kama ng bato na humahawak sa ugat, bacteria at ilang latak.</translation>
    </message>
    <message>
        <source>A change of the plan that makes a flagged week better, tried on a forecast first.</source>
        <translation type="unfinished">Pagbabago sa plano na nagpapabuti sa linggong may babala, sinubok muna sa forecast.</translation>
    </message>
    <message>
        <source>A chart can be walked day by day: click it, or go to it by Tab and use the arrow keys.</source>
        <translation type="unfinished">Masusundan ang tsart araw-araw: i-click ito, o puntahan sa Tab at gamitin ang mga arrow.</translation>
    </message>
    <message>
        <source>A copy was saved as {name}.</source>
        <translation type="unfinished">May na-save na kopya: {name}.</translation>
    </message>
    <message>
        <source>A crop or variety, a fish, a feed or a supplement of your own</source>
        <translation type="unfinished">Sariling pananim o barayti, isda, pakain o suplemento</translation>
    </message>
    <message>
        <source>A distance between the nursery and the final one, so that less bed stands empty.</source>
        <translation type="unfinished">Agwat sa pagitan ng punlaan at ng huling agwat, para mas kaunting kama ang bakante.</translation>
    </message>
    <message>
        <source>A farm file or a farm as text, from this computer or from a stick.</source>
        <translation type="unfinished">File ng farm o farm bilang text, mula sa computer na ito o sa USB.</translation>
    </message>
    <message>
        <source>A farm kept already</source>
        <translation type="unfinished">Farm na naka-save na</translation>
    </message>
    <message>
        <source>A floating board with holes for plants.</source>
        <translation type="unfinished">Lumulutang na tabla na may mga butas para sa halaman.</translation>
    </message>
    <message>
        <source>A forecast is no test. Test the water before you dose.</source>
        <translation type="unfinished">Ang pagtataya ay hindi pagsusuri. Suriin ang tubig bago magdosis.</translation>
    </message>
    <message>
        <source>A hole of a raft, a spot of a gravel bed or a cell of a tray; it holds one plant at a time.</source>
        <translation type="unfinished">Butas ng lutang, puwesto sa kamang graba o selda ng tray; isang halaman lang sa bawat oras.</translation>
    </message>
    <message>
        <source>A leaf crop that flowers too early, mostly from heat; its leaves turn bitter.</source>
        <translation type="unfinished">Maagang pamumulaklak ng dahong gulay, kadalasan dahil sa init; pumapait ito.</translation>
    </message>
    <message>
        <source>A line every</source>
        <translation type="unfinished">Isang linya bawat</translation>
    </message>
    <message>
        <source>A meal [g]</source>
        <translation type="unfinished">Isang kain [g]</translation>
    </message>
    <message>
        <source>A new loop begins with leafy crops; fruiting ones wait until the feed carries them.</source>
        <translation type="unfinished">Nagsisimula ang bagong loop sa madahong pananim; naghihintay ang namumunga hanggang kaya ng pakain.</translation>
    </message>
    <message>
        <source>A planned harvest of a whole group can be compared with taking it in parts. Fish that stay should not be kept off feed for it.</source>
        <translation type="unfinished">Ang nakaplanong ani ng buong grupo ay maihahambing sa pag-ani nang paunti-unti. Ang mga isdang maiiwan ay hindi dapat ihinto ang pakain dahil dito.</translation>
    </message>
    <message>
        <source>A price that is not given leaves a sum unknown; it never counts as nothing. Prices are kept on this computer, not in the farm.</source>
        <translation type="unfinished">Ang presyong hindi ibinigay ay nag-iiwan ng kabuuang hindi alam; hindi ito kailanman bilang na wala. Nasa computer na ito ang mga presyo, hindi sa bukid.</translation>
    </message>
    <message>
        <source>A proposal is shown here beside today's plan. Nothing changes until you adopt it.</source>
        <translation type="unfinished">Ipinapakita rito ang mungkahi katabi ng plano ngayon. Walang magbabago hanggang tanggapin mo.</translation>
    </message>
    <message>
        <source>A scenario of that name goes on, another one begins</source>
        <translation type="unfinished">May scenario nang ganoon ang pangalan; nagsisimula ng iba</translation>
    </message>
    <message>
        <source>A season, successions, repairs and orders are worked out here, for the beds there are.</source>
        <translation type="unfinished">Kinukuwenta rito ang panahon, sunod-sunod na hasik, pag-aayos at bibilhin para sa mga kama.</translation>
    </message>
    <message>
        <source>A sowing is drafted for each week of a year; you can change all of it.</source>
        <translation type="unfinished">May paunang hasik para sa bawat linggo ng isang taon; mababago mo lahat.</translation>
    </message>
    <message>
        <source>A substance that brings what fish feed lacks, such as iron or potassium.</source>
        <translation type="unfinished">Sangkap na nagbibigay ng kulang sa pakain, gaya ng bakal o potassium.</translation>
    </message>
    <message>
        <source>A substance that takes up acid and so holds the pH up, such as a bicarbonate.</source>
        <translation type="unfinished">Sangkap na sumisipsip ng asido kaya hindi bumababa ang pH, gaya ng bicarbonate.</translation>
    </message>
    <message>
        <source>A switch that trips at night stops air and pump without a sound. Fit an alarm that calls when power fails, and give the fish a circuit of their own.</source>
        <translation type="unfinished">Ang switch na pumutok sa gabi ay tahimik na pumapatay sa hangin at bomba. Maglagay ng alarmang tatawag kapag nawalan ng kuryente, at bigyan ng sariling circuit ang mga isda.</translation>
    </message>
    <message>
        <source>A tripped safety switch kills fish quietly</source>
        <translation type="unfinished">Ang pumutok na safety switch ay tahimik na pumapatay ng isda</translation>
    </message>
    <message>
        <source>A weighed amount of a supplement or base, given once or again and again.</source>
        <translation type="unfinished">Tinimbang na dami ng suplemento o base, isang beses o paulit-ulit.</translation>
    </message>
    <message>
        <source>A weighed sample, harvest, deaths, days off feed, feed given</source>
        <translation type="unfinished">Tinimbang na sample, ani, namatay, araw na walang pakain, pakaing ibinigay</translation>
    </message>
    <message>
        <source>A {kind} needs a {missing} first. Add one in the menu Set-up.</source>
        <translation type="unfinished">Kailangan muna ng {missing} para sa {kind}. Magdagdag sa menung Ayos.</translation>
    </message>
    <message>
        <source>AB</source>
        <translation type="unfinished">AB</translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished">Tungkol dito</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation type="unfinished">Tungkol dito at mga paalala</translation>
    </message>
    <message>
        <source>About the chosen case</source>
        <translation type="unfinished">Tungkol sa napiling kaso</translation>
    </message>
    <message>
        <source>About the group</source>
        <translation type="unfinished">Tungkol sa grupo</translation>
    </message>
    <message>
        <source>Acid by the log</source>
        <translation type="unfinished">Asido ayon sa talaan</translation>
    </message>
    <message>
        <source>Acid made</source>
        <translation type="unfinished">Asidong nagagawa</translation>
    </message>
    <message>
        <source>Acids</source>
        <translation type="unfinished">Mga asido</translation>
    </message>
    <message>
        <source>ActLine | None</source>
        <translation type="unfinished">ActLine | None</translation>
    </message>
    <message>
        <source>Acts, newest first</source>
        <translation type="unfinished">Mga ginawa, pinakabago muna</translation>
    </message>
    <message>
        <source>Actual [d]</source>
        <translation type="unfinished">Aktuwal [d]</translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished">Idagdag</translation>
    </message>
    <message>
        <source>Add a &amp;meter…</source>
        <translation type="unfinished">Magdagdag ng &amp;panukat…</translation>
    </message>
    <message>
        <source>Add a bed</source>
        <translation type="unfinished">Magdagdag ng kama</translation>
    </message>
    <message>
        <source>Add a bed…</source>
        <translation type="unfinished">Magdagdag ng kama…</translation>
    </message>
    <message>
        <source>Add a crop</source>
        <translation type="unfinished">Magdagdag ng pananim</translation>
    </message>
    <message>
        <source>Add a dose…</source>
        <translation type="unfinished">Magdagdag ng dosis…</translation>
    </message>
    <message>
        <source>Add a loop of water…</source>
        <translation type="unfinished">Magdagdag ng sistema ng tubig…</translation>
    </message>
    <message>
        <source>Add a meter…</source>
        <translation type="unfinished">Magdagdag ng panukat…</translation>
    </message>
    <message>
        <source>Add a packet or delivery of seed</source>
        <translation type="unfinished">Magdagdag ng pakete o dating ng binhi</translation>
    </message>
    <message>
        <source>Add a reading…</source>
        <translation type="unfinished">Magdagdag ng suri…</translation>
    </message>
    <message>
        <source>Add a seed &amp;lot…</source>
        <translation type="unfinished">Magdagdag ng &amp;lote ng binhi…</translation>
    </message>
    <message>
        <source>Add a site…</source>
        <translation type="unfinished">Magdagdag ng lugar…</translation>
    </message>
    <message>
        <source>Add a tank…</source>
        <translation type="unfinished">Magdagdag ng tangke…</translation>
    </message>
    <message>
        <source>Add a target</source>
        <translation type="unfinished">Magdagdag ng target</translation>
    </message>
    <message>
        <source>Add an event…</source>
        <translation type="unfinished">Magdagdag ng pangyayari…</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation type="unfinished">Idagdag</translation>
    </message>
    <message>
        <source>Add reading of {quantity}, {on}</source>
        <translation type="unfinished">Idagdag ang sukat ng {quantity}, {on}</translation>
    </message>
    <message>
        <source>Add to the list</source>
        <translation type="unfinished">Idagdag sa listahan</translation>
    </message>
    <message>
        <source>Add to the scenario</source>
        <translation type="unfinished">Idagdag sa scenario</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation type="unfinished">Idagdag ang {name}</translation>
    </message>
    <message>
        <source>Add…</source>
        <translation type="unfinished">Magdagdag…</translation>
    </message>
    <message>
        <source>Adopt</source>
        <translation type="unfinished">Tanggapin</translation>
    </message>
    <message>
        <source>Adopt 1 sowing</source>
        <translation type="unfinished">Tanggapin ang 1 hasik</translation>
    </message>
    <message>
        <source>Adopt a plan of 1 sowing</source>
        <translation type="unfinished">Gamitin ang plano ng 1 paghahasik</translation>
    </message>
    <message>
        <source>Adopt a plan of {count} sowings</source>
        <translation type="unfinished">Gamitin ang plano ng {count} paghahasik</translation>
    </message>
    <message>
        <source>Adopt makes the proposal the plan, in one act: one undo brings the old plan back. When the farm has changed since, the proposal must be worked out again.</source>
        <translation type="unfinished">Ginagawang plano ng Gamitin ang mungkahi, sa isang hakbang: isang pag-undo ang magbabalik ng dating plano. Kapag nagbago na ang bukid mula noon, kailangang kuwentahin muli ang mungkahi.</translation>
    </message>
    <message>
        <source>Adopt the season plan from {day}</source>
        <translation type="unfinished">Tanggapin ang plano sa panahon mula {day}</translation>
    </message>
    <message>
        <source>Adopt the season plan from {on}</source>
        <translation type="unfinished">Gamitin ang plano ng panahon mula {on}</translation>
    </message>
    <message>
        <source>Adopt {count} sowings</source>
        <translation type="unfinished">Tanggapin ang {count} hasik</translation>
    </message>
    <message>
        <source>Adopt {name}</source>
        <translation type="unfinished">Tanggapin ang {name}</translation>
    </message>
    <message>
        <source>Adopting</source>
        <translation type="unfinished">Paggamit</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished">Payo</translation>
    </message>
    <message>
        <source>Aerated</source>
        <translation type="unfinished">May hangin</translation>
    </message>
    <message>
        <source>After rounding up to whole pots and trays</source>
        <translation type="unfinished">Matapos i-round pataas sa buong pot at tray</translation>
    </message>
    <message>
        <source>Against</source>
        <translation type="unfinished">Kumpara sa</translation>
    </message>
    <message>
        <source>Against the rest of the year: {months}</source>
        <translation type="unfinished">Kung ihahambing sa ibang buwan: {months}</translation>
    </message>
    <message>
        <source>Air at the beds, by month</source>
        <translation type="unfinished">Hangin sa mga kama, bawat buwan</translation>
    </message>
    <message>
        <source>Air at the nursery, by month</source>
        <translation type="unfinished">Hangin sa punlaan, bawat buwan</translation>
    </message>
    <message>
        <source>Air by month guessed from the class “{climate}”; put in your own.</source>
        <translation type="unfinished">Hangin bawat buwan na hinulaan mula sa uring “{climate}”; ilagay ang sarili mo.</translation>
    </message>
    <message>
        <source>Air from {low} to {high} °C by month at sea level: a guess, {sure}. Put in your own later.</source>
        <translation type="unfinished">Hangin mula {low} hanggang {high} °C bawat buwan sa antas ng dagat: hula, {sure}. Ilagay ang sarili mo mamaya.</translation>
    </message>
    <message>
        <source>Air temperature [°C]</source>
        <translation type="unfinished">Init ng hangin [°C]</translation>
    </message>
    <message>
        <source>Alkalinity</source>
        <translation type="unfinished">Alkalinity</translation>
    </message>
    <message>
        <source>Alkalinity [mg/L CaCO₃]</source>
        <translation type="unfinished">Alkalinity [mg/L CaCO₃]</translation>
    </message>
    <message>
        <source>Alkalinity falls by</source>
        <translation type="unfinished">Bumababa ang alkalinity nang</translation>
    </message>
    <message>
        <source>Alkalinity of the make-up water</source>
        <translation type="unfinished">Alkalinity ng dagdag na tubig</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Lahat</translation>
    </message>
    <message>
        <source>All [kg]</source>
        <translation type="unfinished">Lahat [kg]</translation>
    </message>
    <message>
        <source>All crops</source>
        <translation type="unfinished">Lahat ng pananim</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished">Lahat ng file (*)</translation>
    </message>
    <message>
        <source>All fish of the tank when the week ends, groups together</source>
        <translation type="unfinished">Lahat ng isda sa tangke sa dulo ng linggo, sama-sama ang mga grupo</translation>
    </message>
    <message>
        <source>All lanes on one ruler of weeks</source>
        <translation type="unfinished">Lahat ng lane sa iisang ruler ng mga linggo</translation>
    </message>
    <message>
        <source>All layers</source>
        <translation type="unfinished">Lahat ng patong</translation>
    </message>
    <message>
        <source>All of these entries are there already.</source>
        <translation type="unfinished">Narito na ang lahat ng talang ito.</translation>
    </message>
    <message>
        <source>All of {batch} has its places already.</source>
        <translation type="unfinished">May puwesto na ang lahat ng {batch}.</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation type="unfinished">Na-save lahat</translation>
    </message>
    <message>
        <source>All subjects</source>
        <translation type="unfinished">Lahat ng paksa</translation>
    </message>
    <message>
        <source>All the water that goes round</source>
        <translation type="unfinished">Lahat ng tubig na umiikot</translation>
    </message>
    <message>
        <source>All ways are judged over the same weeks, from {a} to {b}, once every group has been harvested. A fall is against the month before. ★ marks the best.</source>
        <translation type="unfinished">Parehong mga linggo ang batayan ng lahat ng paraan, mula {a} hanggang {b}, kapag naani na ang bawat grupo. Ang bagsak ay kumpara sa buwang nauna. ★ ang pinakamahusay.</translation>
    </message>
    <message>
        <source>Alter the chosen target</source>
        <translation type="unfinished">Baguhin ang napiling target</translation>
    </message>
    <message>
        <source>Alter the event…</source>
        <translation type="unfinished">Baguhin ang pangyayari…</translation>
    </message>
    <message>
        <source>Alter the group…</source>
        <translation type="unfinished">Baguhin ang grupo…</translation>
    </message>
    <message>
        <source>Alter what is &amp;chosen…</source>
        <translation type="unfinished">Baguhin ang &amp;napili…</translation>
    </message>
    <message>
        <source>Alter…</source>
        <translation type="unfinished">Baguhin…</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation type="unfinished">Taas mula sa dagat</translation>
    </message>
    <message>
        <source>Ammonia (TAN)</source>
        <translation type="unfinished">Ammonia (TAN)</translation>
    </message>
    <message>
        <source>Ammonia from feed</source>
        <translation type="unfinished">Ammonia mula sa pakain</translation>
    </message>
    <message>
        <source>Ammonia is high: give no base until it has fallen, for at a higher pH more of it is poison.</source>
        <translation type="unfinished">Mataas ang ammonia: huwag magbigay ng base hanggang bumaba ito, dahil mas marami ang lason nito sa mas mataas na pH.</translation>
    </message>
    <message>
        <source>Ammonia turned to nitrite and nitrate by bacteria; it makes acid.</source>
        <translation type="unfinished">Ginagawang nitrite at nitrate ng bacteria ang ammonia; nagpapaasim ito.</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished">Dami</translation>
    </message>
    <message>
        <source>An invented school kitchen in its first year. It is a copy: change what you like.</source>
        <translation type="unfinished">Kathang kusina ng paaralan sa unang taon. Kopya ito: baguhin ang gusto mo.</translation>
    </message>
    <message>
        <source>An order by a day</source>
        <translation type="unfinished">Order para sa isang araw</translation>
    </message>
    <message>
        <source>An ornamental fish: not for the table.</source>
        <translation type="unfinished">Isdang pampalamuti: hindi kinakain.</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation type="unfinished">Mga hayop</translation>
    </message>
    <message>
        <source>Another copy of this farm was worked on later ({day}): {path}. From here on the two differ; open that one to go on there.</source>
        <translation type="unfinished">May ibang kopya ng farm na ito na ginamit kinalaunan ({day}): {path}. Mula rito magkaiba na ang dalawa; buksan iyon para doon magpatuloy.</translation>
    </message>
    <message>
        <source>Another crop in its place</source>
        <translation type="unfinished">Ibang pananim sa lugar nito</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation type="unfinished">Sagot</translation>
    </message>
    <message>
        <source>Any number can be asked why. In a table or list, go to it with the arrow keys and press Ctrl+I, or press the right button on it and choose “Why”. In the text beside a page, numbers in colour answer to a click, or to Tab and Enter.</source>
        <translation type="unfinished">Maitatanong kung bakit ganoon ang anumang bilang. Sa talahanayan o listahan, puntahan ito gamit ang mga arrow at pindutin ang Ctrl+I, o pindutin dito ang kanang pindutan at piliin ang “Bakit”. Sa tekstong katabi ng pahina, sumasagot sa pag-click, o sa Tab at Enter, ang mga bilang na may kulay.</translation>
    </message>
    <message>
        <source>Any supplement, any amount, once or repeated</source>
        <translation type="unfinished">Anumang suplemento at dami, isang beses o paulit-ulit</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation type="unfinished">Agwat</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation type="unfinished">Ilapat</translation>
    </message>
    <message>
        <source>Apply: {words}</source>
        <translation type="unfinished">Ilapat: {words}</translation>
    </message>
    <message>
        <source>April–June</source>
        <translation type="unfinished">Abril–Hunyo</translation>
    </message>
    <message>
        <source>Aquaponics</source>
        <translation type="unfinished">Aquaponics</translation>
    </message>
    <message>
        <source>Aquatic type, cut again and again. Regulated as a weed in some places.</source>
        <translation type="unfinished">Uri sa tubig, paulit-ulit na pinuputol. Kinokontrol bilang damo sa ilang lugar.</translation>
    </message>
    <message>
        <source>Area</source>
        <translation type="unfinished">Paksa</translation>
    </message>
    <message>
        <source>Area by FAO</source>
        <translation type="unfinished">Sukat ayon sa FAO</translation>
    </message>
    <message>
        <source>Area by UVI</source>
        <translation type="unfinished">Sukat ayon sa UVI</translation>
    </message>
    <message>
        <source>Area by the ratio of</source>
        <translation type="unfinished">Lawak ayon sa tumbasan ng</translation>
    </message>
    <message>
        <source>Arrow keys go from bar to bar. Alt with left or right moves the batch by a day, with Shift, or by Alt with Page Up or Page Down, by a week. Alt with up or down moves it to another unit, with plus or minus it is picked a week more or less. Shift with an arrow chooses the next batch as well, Control with A all in sight. Enter opens it. Plus and minus zoom.</source>
        <translation type="unfinished">Ang mga arrow ay lumilipat sa bawat bar. Ang Alt na may kaliwa o kanan ay naglilipat ng batch nang isang araw, kapag may Shift, o Alt na may Page Up o Page Down, ay isang linggo. Ang Alt na may taas o baba ay naglilipat nito sa ibang yunit; kapag may plus o minus ay isang linggo pang pipitasin o mas maikli. Ang Shift na may arrow ay pumipili rin ng kasunod na batch, ang Control na may A ay lahat ng nakikita. Enter ang nagbubukas. Plus at minus ang zoom.</translation>
    </message>
    <message>
        <source>Arrow keys go from hole to hole, Page Up and Page Down a week back and on, Alt with left or right a day. Space takes up the plants of a hole; arrow keys choose where to, Enter puts them there, Escape leaves them. Plus and minus zoom.</source>
        <translation type="unfinished">Mga arrow key: palipat-lipat ng butas; Page Up at Page Down: isang linggo paatras at pasulong; Alt na may kaliwa o kanan: isang araw. Space: damputin ang mga halaman ng butas; pumili ng lalagyan sa arrow key, Enter para ilagay, Escape para iwan. Plus at minus: laki ng guhit.</translation>
    </message>
    <message>
        <source>Arrow keys go from hole to hole; Page Up and Page Down go a week back and on, Alt with left or right a day.</source>
        <translation type="unfinished">Ang mga arrow ay lumilipat sa bawat butas; ang Page Up at Page Down ay isang linggo paurong at pasulong, ang Alt na may kaliwa o kanan ay isang araw.</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation type="unfinished">Itanong</translation>
    </message>
    <message>
        <source>Ask whether the loop can carry these beds</source>
        <translation type="unfinished">Itanong kung kaya ng loop ang mga kamang ito</translation>
    </message>
    <message>
        <source>Ask your fisheries office before you buy fish. Never release fish or eggs.</source>
        <translation type="unfinished">Magtanong sa tanggapan ng pangisdaan bago bumili ng isda. Huwag kailanman magpakawala ng isda o itlog.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation type="unfinished">Ipinalagay</translation>
    </message>
    <message>
        <source>At most</source>
        <translation type="unfinished">Hanggang</translation>
    </message>
    <message>
        <source>At the high end of the feed-rate band</source>
        <translation type="unfinished">Sa mataas na dulo ng saklaw ng feed-rate</translation>
    </message>
    <message>
        <source>At the low end of the feed-rate band</source>
        <translation type="unfinished">Sa mababang dulo ng saklaw ng feed-rate</translation>
    </message>
    <message>
        <source>B (letter of the stage bed)</source>
        <translation type="unfinished">K</translation>
    </message>
    <message>
        <source>Back after</source>
        <translation type="unfinished">Bumabalik matapos</translation>
    </message>
    <message>
        <source>Back to the book's value</source>
        <translation type="unfinished">Bumalik sa halaga ng libro</translation>
    </message>
    <message>
        <source>Back to the book: {name}, {label}</source>
        <translation type="unfinished">Balik sa libro: {name}, {label}</translation>
    </message>
    <message>
        <source>Back to what this is part of</source>
        <translation type="unfinished">Bumalik sa kinabibilangan nito</translation>
    </message>
    <message>
        <source>Backs with the cau&amp;tion</source>
        <translation type="unfinished">Likod na may ba&amp;bala</translation>
    </message>
    <message>
        <source>Backups, the latest first</source>
        <translation type="unfinished">Mga backup, pinakabago muna</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation type="unfinished">Balanse</translation>
    </message>
    <message>
        <source>Band</source>
        <translation type="unfinished">Saklaw</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation type="unfinished">Mga saklaw</translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished">Base</translation>
    </message>
    <message>
        <source>Base it brings</source>
        <translation type="unfinished">Base na dala nito</translation>
    </message>
    <message>
        <source>Base wanted</source>
        <translation type="unfinished">Kailangang base</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished">Batch</translation>
    </message>
    <message>
        <source>Batch {code} fits on no further unit in this direction.</source>
        <translation type="unfinished">Wala nang yunit sa gawing ito na kasya ang batch {code}.</translation>
    </message>
    <message>
        <source>Batch {code} is locked. Unlock it to move it.</source>
        <translation type="unfinished">Naka-lock ang batch {code}. I-unlock para mailipat.</translation>
    </message>
    <message>
        <source>Batch {code} moved. {text}</source>
        <translation type="unfinished">Nailipat ang batch {code}. {text}</translation>
    </message>
    <message>
        <source>Batch {code}, {crop}, {plants} plants, {place}, from {start} to {end}.</source>
        <translation type="unfinished">Batch {code}, {crop}, {plants} halaman, {place}, mula {start} hanggang {end}.</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished">Batch</translation>
    </message>
    <message>
        <source>Batches of a loop that starts up</source>
        <translation type="unfinished">Mga batch ng loop na nagsisimula</translation>
    </message>
    <message>
        <source>Batches that would move</source>
        <translation type="unfinished">Mga batch na gagalaw</translation>
    </message>
    <message>
        <source>Batches to sow: {many}, from {first} to {last}.</source>
        <translation type="unfinished">Batch na ihahasik: {many}, mula {first} hanggang {last}.</translation>
    </message>
    <message>
        <source>Batches to sow: {many}, on {first}.</source>
        <translation type="unfinished">Batch na ihahasik: {many}, sa {first}.</translation>
    </message>
    <message>
        <source>Batches without places</source>
        <translation type="unfinished">Mga batch na walang puwesto</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation type="unfinished">Kama</translation>
    </message>
    <message>
        <source>Bed map</source>
        <translation type="unfinished">Mapa</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation type="unfinished">Mga kama</translation>
    </message>
    <message>
        <source>Beds are drawn to scale: this bar is {length}</source>
        <translation type="unfinished">Ayon sa sukat ang guhit ng mga kama: {length} ang guhit na ito</translation>
    </message>
    <message>
        <source>Beds planted, on average and at most</source>
        <translation type="unfinished">Kamang may tanim, karaniwan at pinakamarami</translation>
    </message>
    <message>
        <source>Beds to be added</source>
        <translation type="unfinished">Mga kamang idadagdag</translation>
    </message>
    <message>
        <source>Beds, batches and fish stand here on one line of weeks. Begin with where plants grow; fish and sowings follow.</source>
        <translation type="unfinished">Narito ang mga kama, batch at isda sa iisang guhit ng mga linggo. Magsimula sa tinutubuan ng halaman; susunod ang isda at paghahasik.</translation>
    </message>
    <message>
        <source>Before all of these</source>
        <translation type="unfinished">Bago ang lahat ng ito</translation>
    </message>
    <message>
        <source>Before → after, for the flagged weeks. “Repairs it” means that nothing of the warning is left. “Look out” names what else it does.</source>
        <translation type="unfinished">Bago → pagkatapos, para sa mga linggong may babala. Ang “Naaayos” ay nangangahulugang wala nang natira sa babala. Ang “Mag-ingat” ay nagsasabi ng iba pang ginagawa nito.</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished">Magsimula</translation>
    </message>
    <message>
        <source>Begin a new farm</source>
        <translation type="unfinished">Magsimula ng bagong farm</translation>
    </message>
    <message>
        <source>Begin a new one…</source>
        <translation type="unfinished">Magsimula ng bago…</translation>
    </message>
    <message>
        <source>Begin the sheet anew for these days</source>
        <translation type="unfinished">Simulan muli ang papel para sa mga araw na ito</translation>
    </message>
    <message>
        <source>Begin your own farm…</source>
        <translation type="unfinished">Simulan ang sariling farm…</translation>
    </message>
    <message>
        <source>Best of these: {words}</source>
        <translation type="unfinished">Pinakamahusay dito: {words}</translation>
    </message>
    <message>
        <source>Best warmth to germinate</source>
        <translation type="unfinished">Pinakamainam na init sa pagtubo</translation>
    </message>
    <message>
        <source>Best water temperature</source>
        <translation type="unfinished">Pinakamainam na init ng tubig</translation>
    </message>
    <message>
        <source>Biofilter</source>
        <translation type="unfinished">Biofilter</translation>
    </message>
    <message>
        <source>Biomass</source>
        <translation type="unfinished">Biomass</translation>
    </message>
    <message>
        <source>Bolting</source>
        <translation type="unfinished">Bolting</translation>
    </message>
    <message>
        <source>Bolts after cold nights; short window when ripe.</source>
        <translation type="unfinished">Nagbubulaklak agad matapos ang malamig na gabi; maikli ang panahong tama ang gulang.</translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished">Aklat</translation>
    </message>
    <message>
        <source>Botanical name</source>
        <translation type="unfinished">Pangalang botanikal</translation>
    </message>
    <message>
        <source>Bought on</source>
        <translation type="unfinished">Binili noong</translation>
    </message>
    <message>
        <source>Breakdown of fish solids that sets plant food free.</source>
        <translation type="unfinished">Pagkabulok ng latak ng isda na naglalabas ng pagkain ng halaman.</translation>
    </message>
    <message>
        <source>Breathes air; eats its smaller mates: grade often. Foreign species in many places.</source>
        <translation type="unfinished">Humihinga ng hangin; kinakain ang mas maliit na kasama: madalas pagbukud-bukurin. Dayuhang uri sa maraming lugar.</translation>
    </message>
    <message>
        <source>Breeds in the tank unless one sex. Handle above 18 °C only. Foreign species: needs a permit in many places.</source>
        <translation type="unfinished">Nag-aanak sa tangke kung hindi iisang kasarian. Hawakan lang kapag higit 18 °C. Dayuhang uri: kailangan ng permiso sa maraming lugar.</translation>
    </message>
    <message>
        <source>Bring &amp;in a table…</source>
        <translation type="unfinished">Magpasok ng tala&amp;an…</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation type="unfinished">Ipasok</translation>
    </message>
    <message>
        <source>Bring in a table</source>
        <translation type="unfinished">Magpasok ng talaan</translation>
    </message>
    <message>
        <source>Bring in the good rows and leave these out</source>
        <translation type="unfinished">Ipasok ang maayos na hanay at iwan ang mga ito</translation>
    </message>
    <message>
        <source>Bringing in {count}…</source>
        <translation type="unfinished">Ipinapasok ang {count}…</translation>
    </message>
    <message>
        <source>Brings chloride: protects fish from nitrite, builds up in closed loops.</source>
        <translation type="unfinished">May chloride: nakakaprotekta sa isda laban sa nitrite, naiipon sa saradong loop.</translation>
    </message>
    <message>
        <source>Brings sodium, which no crop takes up and which builds up in the water: only when nothing else is at hand.</source>
        <translation type="unfinished">May sodium, na hindi kinukuha ng pananim at naiipon sa tubig: kapag wala nang iba lang.</translation>
    </message>
    <message>
        <source>Brown edges on young leaves: calcium does not reach them, even where there is enough.</source>
        <translation type="unfinished">Kayumangging gilid ng murang dahon: hindi umaabot ang calcium kahit sapat.</translation>
    </message>
    <message>
        <source>Building, roof load, wiring, waste water, water rights, food sale, zoning, animal welfare and slaughter follow local codes: ask first. Water weighs a tonne per cubic metre: 3 m² at 25 cm is 0.75 t before rafts and crops.</source>
        <translation type="unfinished">Ang pagtatayo, bigat sa bubong, kuryente, maruming tubig, karapatan sa tubig, pagtitinda ng pagkain, zoning, kapakanan ng hayop at pagkatay ay sumusunod sa lokal na tuntunin: magtanong muna. Isang tonelada ang bigat ng bawat metro kubiko ng tubig: 3 m² sa 25 cm ay 0.75 t bago pa ang raft at pananim.</translation>
    </message>
    <message>
        <source>By mouse and by keys</source>
        <translation type="unfinished">Sa mouse at sa keyboard</translation>
    </message>
    <message>
        <source>By reason: {parts}</source>
        <translation type="unfinished">Ayon sa dahilan: {parts}</translation>
    </message>
    <message>
        <source>By the book</source>
        <translation type="unfinished">Ayon sa libro</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation type="unfinished">Nino</translation>
    </message>
    <message>
        <source>C (letter of the stage clearing)</source>
        <translation type="unfinished">H</translation>
    </message>
    <message>
        <source>C&amp;orrect the chosen…</source>
        <translation type="unfinished">I&amp;wasto ang napili…</translation>
    </message>
    <message>
        <source>C&amp;orrect {code}</source>
        <translation type="unfinished">I&amp;wasto ang {code}</translation>
    </message>
    <message>
        <source>Ca base</source>
        <translation type="unfinished">Base na Ca</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation type="unfinished">Calcium</translation>
    </message>
    <message>
        <source>Calcium [mg/L]</source>
        <translation type="unfinished">Calcium [mg/L]</translation>
    </message>
    <message>
        <source>Calcium in the fish</source>
        <translation type="unfinished">Kaltsyum sa isda</translation>
    </message>
    <message>
        <source>Calcium in the make-up water</source>
        <translation type="unfinished">Calcium sa dagdag na tubig</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation type="unfinished">Kalendaryo (*.ics)</translation>
    </message>
    <message>
        <source>Calendar for a phone</source>
        <translation type="unfinished">Kalendaryo para sa telepono</translation>
    </message>
    <message>
        <source>Calibrate every</source>
        <translation type="unfinished">I-calibrate tuwing</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation type="unfinished">Na-calibrate</translation>
    </message>
    <message>
        <source>Calibration page, to set the printer right</source>
        <translation type="unfinished">Pahina ng kalibrasyon, para itama ang printer</translation>
    </message>
    <message>
        <source>Can this loop carry another bed or layer? Nothing is guessed: what was not entered makes a verdict unknown.</source>
        <translation type="unfinished">Kaya ba ng loop ang isa pang kama o patong? Walang hula: kung may hindi nailagay, hindi alam ang hatol.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished">Kanselahin</translation>
    </message>
    <message>
        <source>Carried</source>
        <translation type="unfinished">Kayang tustusan</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation type="unfinished">Naipasa</translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished">Kaso</translation>
    </message>
    <message>
        <source>Cases worked out</source>
        <translation type="unfinished">Mga kasong nakuwenta</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Katalogo</translation>
    </message>
    <message>
        <source>Catch</source>
        <translation type="unfinished">Hulihin</translation>
    </message>
    <message>
        <source>Catch up: {sheet}, {count} entries</source>
        <translation type="unfinished">Habol: {sheet}, {count} tala</translation>
    </message>
    <message>
        <source>Caustic bases</source>
        <translation type="unfinished">Mga baseng nakakasunog</translation>
    </message>
    <message>
        <source>Chance that targets are met</source>
        <translation type="unfinished">Tsansang maabot ang mga target</translation>
    </message>
    <message>
        <source>Change {code}</source>
        <translation type="unfinished">Baguhin ang {code}</translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation type="unfinished">Baguhin ang {name}</translation>
    </message>
    <message>
        <source>Changed by others: {what}</source>
        <translation type="unfinished">Binago ng iba: {what}</translation>
    </message>
    <message>
        <source>Changed by two</source>
        <translation type="unfinished">Binago ng dalawa</translation>
    </message>
    <message>
        <source>Changes whenever anything in the farm changes; printed on every sheet.</source>
        <translation type="unfinished">Nagbabago kapag may nagbago sa farm; nakalimbag sa bawat papel.</translation>
    </message>
    <message>
        <source>Chelate</source>
        <translation type="unfinished">Chelate</translation>
    </message>
    <message>
        <source>Chemical formula</source>
        <translation type="unfinished">Pormulang kimikal</translation>
    </message>
    <message>
        <source>Choose a batch first, or several with Ctrl and a click.</source>
        <translation type="unfinished">Pumili muna ng batch, o marami gamit ang Ctrl at click.</translation>
    </message>
    <message>
        <source>Choose a case to see its inputs, figures and source.</source>
        <translation type="unfinished">Pumili ng kaso para makita ang inilagay, numero at pinagmulan nito.</translation>
    </message>
    <message>
        <source>Choose a flagged week to see what would repair it.</source>
        <translation type="unfinished">Pumili ng linggong may babala para makita ang mag-aayos dito.</translation>
    </message>
    <message>
        <source>Choose a group, then a week; Enter on a week asks why. “Add an event” takes weighed samples, harvests and deaths. Weigh a level scoop again with every new bag.</source>
        <translation type="unfinished">Pumili ng grupo, saka ng linggo; ang Enter sa linggo ay nagtatanong kung bakit. Ang “Magdagdag ng pangyayari” ay para sa natimbang na sample, ani at namatay. Timbangin muli ang isang patag na sandok sa bawat bagong sako.</translation>
    </message>
    <message>
        <source>Choose a planned harvest: it is compared all at once and in parts.</source>
        <translation type="unfinished">Pumili ng planong ani: inihahambing ito nang sabay-sabay at paunti-unti.</translation>
    </message>
    <message>
        <source>Choose a row with the mouse or the arrow keys. Ctrl+Return alters it, Ctrl+L locks it, Ctrl+B sows a new one, Ctrl+I asks why the number in hand is what it is.</source>
        <translation type="unfinished">Pumili ng hanay gamit ang mouse o mga arrow. Binabago ito ng Ctrl+Return, ikinakandado ng Ctrl+L, naghahasik ng bago ang Ctrl+B, itinatanong ng Ctrl+I kung bakit ganito ang bilang na hawak.</translation>
    </message>
    <message>
        <source>Choose a row with the mouse or the arrow keys; what is chosen is explained beside it. “Plan this dose” puts a dose that is asked for into the plan; Undo takes it out.</source>
        <translation type="unfinished">Pumili ng hanay gamit ang mouse o mga arrow; ipinaliliwanag sa tabi ang napili. Inilalagay ng “Iplano ang dosis na ito” ang hinihinging dosis sa plano; inaalis ito ng I-undo.</translation>
    </message>
    <message>
        <source>Choose a shelf, an entry and a figure, then type your value. Enter shows which batches move and keeps nothing; “Keep my value” keeps it, asking once more where batches move. “New entry…” makes a crop, fish, feed or supplement of your own.</source>
        <translation type="unfinished">Pumili ng istante, tala at bilang, saka i-type ang iyong halaga. Ipinapakita ng Enter kung aling batch ang gagalaw at walang itinatago; itinatago ito ng “Itago ang halaga ko”, nagtatanong muli kung may gagalaw. Gumagawa ang “Bagong tala…” ng sariling pananim, isda, pakain o suplemento.</translation>
    </message>
    <message>
        <source>Choose a sowing to see how its seeds are counted.</source>
        <translation type="unfinished">Pumili ng hasik para makita kung paano binibilang ang binhi.</translation>
    </message>
    <message>
        <source>Choose above which product was given.</source>
        <translation type="unfinished">Piliin sa itaas kung anong produkto ang ibinigay.</translation>
    </message>
    <message>
        <source>Choose an entry of the log first.</source>
        <translation type="unfinished">Pumili muna ng entry sa talaan.</translation>
    </message>
    <message>
        <source>Choose from a month</source>
        <translation type="unfinished">Pumili mula sa buwan</translation>
    </message>
    <message>
        <source>Choose one batch to split.</source>
        <translation type="unfinished">Pumili ng isang batch na hahatiin.</translation>
    </message>
    <message>
        <source>Choose the loop and the element above, and a week in the chart or, after “Table”, in the rows. Beside it stands why, and what would help.</source>
        <translation type="unfinished">Piliin sa itaas ang loop at elemento, at isang linggo sa tsart o, pagkatapos ng “Talahanayan”, sa mga hanay. Nasa tabi kung bakit, at kung ano ang makakatulong.</translation>
    </message>
    <message>
        <source>Choose what is to be taken up first.</source>
        <translation type="unfinished">Piliin muna kung ano ang gagamitin.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Hawanin</translation>
    </message>
    <message>
        <source>Clear: {code}</source>
        <translation type="unfinished">Linisin: {code}</translation>
    </message>
    <message>
        <source>Cleared to eat from</source>
        <translation type="unfinished">Puwede nang kainin mula</translation>
    </message>
    <message>
        <source>Clearing</source>
        <translation type="unfinished">Paghawan</translation>
    </message>
    <message>
        <source>Click a section, or go up and down with the arrow keys. Nothing changes before you adopt or apply it; Ctrl+Z takes it back.</source>
        <translation type="unfinished">I-click ang seksiyon, o umakyat at bumaba gamit ang mga arrow. Walang nagbabago hangga't hindi mo ginagamit; binabawi ito ng Ctrl+Z.</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation type="unfinished">Klima</translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished">Isara</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation type="unfinished">Isara ang mensahe</translation>
    </message>
    <message>
        <source>Close the message (Esc)</source>
        <translation type="unfinished">Isara ang mensahe (Esc)</translation>
    </message>
    <message>
        <source>Close this strip</source>
        <translation type="unfinished">Isara ang bahaging ito</translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished">Code</translation>
    </message>
    <message>
        <source>Code of this language</source>
        <translation type="unfinished">fil</translation>
    </message>
    <message>
        <source>Coefficient of variation of the feed</source>
        <translation type="unfinished">Coefficient of variation ng pakain</translation>
    </message>
    <message>
        <source>Cold clean water with much oxygen; not with warm crops.</source>
        <translation type="unfinished">Malamig at malinis na tubig na maraming oxygen; hindi kasama ng pananim na mainit.</translation>
    </message>
    <message>
        <source>Cold store</source>
        <translation type="unfinished">Malamig na imbakan</translation>
    </message>
    <message>
        <source>Colour additives vary; read the label.</source>
        <translation type="unfinished">Nag-iiba ang pangkulay; basahin ang etiketa.</translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished">Kolum</translation>
    </message>
    <message>
        <source>Comes up</source>
        <translation type="unfinished">Tumutubo</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation type="unfinished">Ihambing</translation>
    </message>
    <message>
        <source>Compare taking it all at once and in parts</source>
        <translation type="unfinished">Ihambing ang sabay-sabay at ang paunti-unti</translation>
    </message>
    <message>
        <source>Compare ways of stocking</source>
        <translation type="unfinished">Ihambing ang mga paraan ng paglalagay ng isda</translation>
    </message>
    <message>
        <source>Compared are 1, 2, 4 and 6 groups, harvested whole or in parts.</source>
        <translation type="unfinished">Inihahambing ang 1, 2, 4 at 6 na grupo, inaani nang buo o paunti-unti.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished">Paghahambing</translation>
    </message>
    <message>
        <source>Computation</source>
        <translation type="unfinished">Kuwenta</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation type="unfinished">Conductivity</translation>
    </message>
    <message>
        <source>Conductivity (EC)</source>
        <translation type="unfinished">Conductivity (EC)</translation>
    </message>
    <message>
        <source>Conductivity [mS/cm]</source>
        <translation type="unfinished">Conductivity [mS/cm]</translation>
    </message>
    <message>
        <source>Copied, {n} letters: {words}</source>
        <translation type="unfinished">Nakopya, {n} titik: {words}</translation>
    </message>
    <message>
        <source>Copied: {codes}. Paste sows them again, later.</source>
        <translation type="unfinished">Nakopya: {codes}. I-paste para ihasik muli kinalaunan.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished">Kopyahin</translation>
    </message>
    <message>
        <source>Copy as CSV</source>
        <translation type="unfinished">Kopyahin bilang CSV</translation>
    </message>
    <message>
        <source>Copy the report</source>
        <translation type="unfinished">Kopyahin ang ulat</translation>
    </message>
    <message>
        <source>Copy the week's &amp;message</source>
        <translation type="unfinished">Kopyahin ang &amp;mensahe ng linggo</translation>
    </message>
    <message>
        <source>Correct reading of {quantity}, {on}</source>
        <translation type="unfinished">Itama ang sukat ng {quantity}, {on}</translation>
    </message>
    <message>
        <source>Correct {code}: {what}</source>
        <translation type="unfinished">Itama ang {code}: {what}</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation type="unfinished">Gastos</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation type="unfinished">Nabilang</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation type="unfinished">Binibilang sa</translation>
    </message>
    <message>
        <source>Counting back from {count} wishes, and placing the sowings…</source>
        <translation type="unfinished">Binibilang pabalik mula sa {count} hiling, at binibigyan ng puwesto ang mga hasik…</translation>
    </message>
    <message>
        <source>Counting what the plan uses…</source>
        <translation type="unfinished">Binibilang ang gagamitin ng plano…</translation>
    </message>
    <message>
        <source>Cover or fence tanks: small children drown in little water. Keep floors rough and dry, lift with two, do not climb into closed tanks alone, drink and rest in heat.</source>
        <translation type="unfinished">Takpan o bakuran ang mga tangke: nalulunod ang maliliit na bata kahit sa mababaw na tubig. Panatilihing magaspang at tuyo ang sahig, magbuhat nang dalawahan, huwag pumasok nang mag-isa sa saradong tangke, uminom at magpahinga kapag mainit.</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation type="unfinished">Pananim</translation>
    </message>
    <message>
        <source>Crop whose harvest is shown</source>
        <translation type="unfinished">Pananim na ipinapakita ang ani</translation>
    </message>
    <message>
        <source>Crops</source>
        <translation type="unfinished">Mga pananim</translation>
    </message>
    <message>
        <source>Ctrl+I on a figure tells its publication, and what it was before a value of your own.</source>
        <translation type="unfinished">Sinasabi ng Ctrl+I sa isang bilang ang lathala nito, at kung ano ito bago ang sarili mong halaga.</translation>
    </message>
    <message>
        <source>Ctrl+I on an entry tells who noted it, when, and by which act it was kept.</source>
        <translation type="unfinished">Sinasabi ng Ctrl+I sa isang tala kung sino ang nagtala, kailan, at sa aling gawa ito itinago.</translation>
    </message>
    <message>
        <source>Curve of the pump</source>
        <translation type="unfinished">Curve ng bomba</translation>
    </message>
    <message>
        <source>Cut above the second pair of leaves; three cuts a planting.</source>
        <translation type="unfinished">Putulin sa ibabaw ng ikalawang pares ng dahon; tatlong putol bawat tanim.</translation>
    </message>
    <message>
        <source>Daily feed sheet</source>
        <translation type="unfinished">Araw-araw na papel ng pakain</translation>
    </message>
    <message>
        <source>Daily light (DLI)</source>
        <translation type="unfinished">Liwanag sa araw (DLI)</translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation type="unfinished">Ma&amp;dilim</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Petsa</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished">Mga petsa</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Araw</translation>
    </message>
    <message>
        <source>Day of sowing</source>
        <translation type="unfinished">Araw ng paghasik</translation>
    </message>
    <message>
        <source>Day shown</source>
        <translation type="unfinished">Araw na ipinapakita</translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished">Araw</translation>
    </message>
    <message>
        <source>Days after a medicine before fish or crops may be eaten.</source>
        <translation type="unfinished">Mga araw pagkatapos ng gamot bago kainin ang isda o pananim.</translation>
    </message>
    <message>
        <source>Days are then the same all year. Months of your own can be entered later, under Set-up.</source>
        <translation type="unfinished">Pareho ang mga araw buong taon. Mailalagay ang sariling mga buwan mamaya, sa Set-up.</translation>
    </message>
    <message>
        <source>Days at the middle spacing</source>
        <translation type="unfinished">Araw sa gitnang agwat</translation>
    </message>
    <message>
        <source>Days come from the catalogue, your own values and the season. Ctrl+I shows why a figure is as it is.</source>
        <translation type="unfinished">Ang mga araw ay galing sa katalogo, sa sarili mong halaga at sa panahon. Ipinapakita ng Ctrl+I kung bakit ganoon ang bilang.</translation>
    </message>
    <message>
        <source>Days for clearing</source>
        <translation type="unfinished">Araw ng paghawan</translation>
    </message>
    <message>
        <source>Days for clearing and cleaning</source>
        <translation type="unfinished">Araw para sa paghawan at paglinis</translation>
    </message>
    <message>
        <source>Days for taking out roots and cleaning; the place is held until they are over.</source>
        <translation type="unfinished">Araw para alisin ang ugat at maglinis; hawak ang puwesto hanggang matapos.</translation>
    </message>
    <message>
        <source>Days free</source>
        <translation type="unfinished">Araw na bakante</translation>
    </message>
    <message>
        <source>Days from one picking to the next</source>
        <translation type="unfinished">Mga araw sa pagitan ng pag-ani</translation>
    </message>
    <message>
        <source>Days in the bed until the first pick</source>
        <translation type="unfinished">Araw sa kama hanggang unang ani</translation>
    </message>
    <message>
        <source>Days in the nursery</source>
        <translation type="unfinished">Araw sa punlaan</translation>
    </message>
    <message>
        <source>Days late</source>
        <translation type="unfinished">Araw na huli</translation>
    </message>
    <message>
        <source>Days later</source>
        <translation type="unfinished">Araw na huli</translation>
    </message>
    <message>
        <source>Days of germination</source>
        <translation type="unfinished">Araw ng pagtubo</translation>
    </message>
    <message>
        <source>Days of picking</source>
        <translation type="unfinished">Araw ng pag-ani</translation>
    </message>
    <message>
        <source>Days off feed</source>
        <translation type="unfinished">Araw na walang pakain</translation>
    </message>
    <message>
        <source>Days off feed before harvest</source>
        <translation type="unfinished">Mga araw na walang pakain bago mag-ani</translation>
    </message>
    <message>
        <source>Days off feed in clean water before fish are eaten.</source>
        <translation type="unfinished">Mga araw na walang pakain sa malinis na tubig bago kainin ang isda.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation type="unfinished">Patay</translation>
    </message>
    <message>
        <source>Deadly cold</source>
        <translation type="unfinished">Nakamamatay na lamig</translation>
    </message>
    <message>
        <source>Deadly heat</source>
        <translation type="unfinished">Nakamamatay na init</translation>
    </message>
    <message>
        <source>Deaths</source>
        <translation type="unfinished">Namatay</translation>
    </message>
    <message>
        <source>Degassing tank</source>
        <translation type="unfinished">Tangkeng pang-degas</translation>
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
        <translation type="unfinished">Pangangailangan</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished">Lalim</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished">Pagkakaiba</translation>
    </message>
    <message>
        <source>Difference [d]</source>
        <translation type="unfinished">Pagkakaiba [d]</translation>
    </message>
    <message>
        <source>Dissolved oxygen</source>
        <translation type="unfinished">Oksihenong tunaw</translation>
    </message>
    <message>
        <source>Dissolved oxygen [mg/L]</source>
        <translation type="unfinished">Dissolved oxygen [mg/L]</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation type="unfinished">Tunaw na solido</translation>
    </message>
    <message>
        <source>Dissolved solids by meter [mg/L]</source>
        <translation type="unfinished">Dissolved solids sa metro [mg/L]</translation>
    </message>
    <message>
        <source>Dissolves only in acid water: stops by itself near neutral.</source>
        <translation type="unfinished">Natutunaw lang sa maasidong tubig: kusang humihinto kapag malapit sa neutral.</translation>
    </message>
    <message>
        <source>Dissolves slowly: 1.6 g per kg water.</source>
        <translation type="unfinished">Mabagal matunaw: 1.6 g bawat kg ng tubig.</translation>
    </message>
    <message>
        <source>Do not sow {batches}</source>
        <translation type="unfinished">Huwag ihasik ang {batches}</translation>
    </message>
    <message>
        <source>Do this; one undo takes it back</source>
        <translation type="unfinished">Gawin ito; isang undo ang magbabalik</translation>
    </message>
    <message>
        <source>Document</source>
        <translation type="unfinished">Dokumento</translation>
    </message>
    <message>
        <source>Does {count} acts again.</source>
        <translation type="unfinished">Uulitin ang {count} ginawa.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Tapos na</translation>
    </message>
    <message>
        <source>Done again: {title}</source>
        <translation type="unfinished">Inulit: {title}</translation>
    </message>
    <message>
        <source>Done: {title}</source>
        <translation type="unfinished">Tapos: {title}</translation>
    </message>
    <message>
        <source>Done: {title}. Undo takes it back.</source>
        <translation type="unfinished">Tapos: {title}. Maibabalik ng Undo.</translation>
    </message>
    <message>
        <source>Done: {words}. Undo takes it back.</source>
        <translation type="unfinished">Tapos: {words}. Maibabalik ng Undo.</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation type="unfinished">Magdosis</translation>
    </message>
    <message>
        <source>Doses</source>
        <translation type="unfinished">Mga dosis</translation>
    </message>
    <message>
        <source>Drag a bar to move the batch. With keys: arrows go from bar to bar, Alt with left or right moves the batch a day, with Shift, or Alt with Page Up or Page Down, a week; Alt with up or down moves it to another bed. Enter opens it.</source>
        <translation type="unfinished">Hilahin ang bar para ilipat ang batch. Sa keyboard: lumilipat ang mga arrow sa bawat bar, ang Alt na may kaliwa o kanan ay inililipat ang batch nang isang araw, kapag may Shift, o Alt na may Page Up o Page Down, isang linggo; ang Alt na may taas o baba ay sa ibang kama. Binubuksan ito ng Enter.</translation>
    </message>
    <message>
        <source>Drag the right edge of a crop that is picked again and again, or press Alt with plus or minus, to pick it longer.</source>
        <translation type="unfinished">Hilahin ang kanang gilid ng pananim na paulit-ulit na pinipitas, o pindutin ang Alt na may plus o minus, para mas matagal itong pitasin.</translation>
    </message>
    <message>
        <source>Draw larger</source>
        <translation type="unfinished">Palakihin ang guhit</translation>
    </message>
    <message>
        <source>Draw smaller</source>
        <translation type="unfinished">Paliitin ang guhit</translation>
    </message>
    <message>
        <source>Draw so that holes can be read and all fits</source>
        <translation type="unfinished">Iguhit nang mabasa ang mga butas at kasya ang lahat</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished">Bitawan</translation>
    </message>
    <message>
        <source>Dry matter of what is picked</source>
        <translation type="unfinished">Tuyong bigat ng inani</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Gagawin</translation>
    </message>
    <message>
        <source>Due in the week</source>
        <translation type="unfinished">Gagawin sa linggo</translation>
    </message>
    <message>
        <source>Due this week</source>
        <translation type="unfinished">Gagawin ngayong linggo</translation>
    </message>
    <message>
        <source>EC</source>
        <translation type="unfinished">EC</translation>
    </message>
    <message>
        <source>EC meter</source>
        <translation type="unfinished">Panukat ng EC</translation>
    </message>
    <message>
        <source>Each [g]</source>
        <translation type="unfinished">Bawat isa [g]</translation>
    </message>
    <message>
        <source>Each dose</source>
        <translation type="unfinished">Bawat dosis</translation>
    </message>
    <message>
        <source>Each fish group with its growth, its feed by week and meal, how full its tank is, and what happens to it.</source>
        <translation type="unfinished">Bawat grupo ng isda kasama ang paglaki, pakain bawat linggo at bawat kain, gaano kapuno ang tangke, at mga nangyayari rito.</translation>
    </message>
    <message>
        <source>Each proposal is tried on a forecast of the changed farm, with the same figures as every other page.</source>
        <translation type="unfinished">Sinusubok ang bawat mungkahi sa pagtataya ng binagong bukid, gamit ang parehong bilang ng ibang pahina.</translation>
    </message>
    <message>
        <source>Each repair was tried on a forecast of the changed farm before it is offered. The cheapest stands first: plantings, then feed, liquor of solids, supplements, fish.</source>
        <translation type="unfinished">Sinubok ang bawat ayos sa pagtataya ng binagong bukid bago ialok. Una ang pinakamura: pagtatanim, saka pakain, katas ng solido, suplemento, isda.</translation>
    </message>
    <message>
        <source>Each sowing is a row here, from the seed to the cleared place.</source>
        <translation type="unfinished">Bawat paghahasik ay isang hanay dito, mula binhi hanggang nalinis na puwesto.</translation>
    </message>
    <message>
        <source>Each sowing is counted back from the day of harvest through the season, so sowings lie closer together when plants grow slowly.</source>
        <translation type="unfinished">Binibilang paurong ang bawat paghahasik mula sa araw ng ani ayon sa panahon, kaya nagiging magkakalapit ang paghahasik kapag mabagal ang tubo.</translation>
    </message>
    <message>
        <source>Each week</source>
        <translation type="unfinished">Bawat linggo</translation>
    </message>
    <message>
        <source>Ed&amp;ges of the labels</source>
        <translation type="unfinished">Mga &amp;gilid ng label</translation>
    </message>
    <message>
        <source>Edge to the first label, le&amp;ft</source>
        <translation type="unfinished">Mula gilid hanggang unang label, kali&amp;wa</translation>
    </message>
    <message>
        <source>Edge to the first label, t&amp;op</source>
        <translation type="unfinished">Mula gilid hanggang unang label, &amp;itaas</translation>
    </message>
    <message>
        <source>Eight letters that change whenever anything in the plan changes; printed on every sheet.</source>
        <translation type="unfinished">Walong titik na nagbabago kapag may nagbago sa plano; nakalimbag sa bawat papel.</translation>
    </message>
    <message>
        <source>Electricity near water</source>
        <translation type="unfinished">Kuryente malapit sa tubig</translation>
    </message>
    <message>
        <source>Element</source>
        <translation type="unfinished">Elemento</translation>
    </message>
    <message>
        <source>Element whose balance is shown</source>
        <translation type="unfinished">Elementong ipinapakita ang balanse</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <translation type="unfinished">Kard sa emergency</translation>
    </message>
    <message>
        <source>Empty the list</source>
        <translation type="unfinished">Burahin ang listahan</translation>
    </message>
    <message>
        <source>Empty the list of recent farms? The farms themselves stay.</source>
        <translation type="unfinished">Burahin ang listahan ng kamakailang farm? Mananatili ang mga farm mismo.</translation>
    </message>
    <message>
        <source>Empty this list…</source>
        <translation type="unfinished">Burahin ang listahang ito…</translation>
    </message>
    <message>
        <source>English</source>
        <translation type="unfinished">English</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation type="unfinished">Mga entry</translation>
    </message>
    <message>
        <source>Entries as text (*.toml)</source>
        <translation type="unfinished">Mga tala bilang teksto (*.toml)</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation type="unfinished">Entry</translation>
    </message>
    <message>
        <source>Español</source>
        <translation type="unfinished">Español</translation>
    </message>
    <message>
        <source>Every act is saved when it is done, and can be taken back after closing, too.</source>
        <translation type="unfinished">Nase-save ang bawat ginawa, at mababawi kahit matapos isara.</translation>
    </message>
    <message>
        <source>Every act, and a way back to it</source>
        <translation type="unfinished">Bawat ginawa, at paraan para bumalik dito</translation>
    </message>
    <message>
        <source>Every batch as a bar from sowing to clearing, on one ruler of weeks, with the fish and the balance below.</source>
        <translation type="unfinished">Bawat batch bilang bar mula paghahasik hanggang paglilinis, sa iisang panukat ng linggo, nasa ibaba ang isda at balanse.</translation>
    </message>
    <message>
        <source>Every batch in a table</source>
        <translation type="unfinished">Bawat batch sa isang talaan</translation>
    </message>
    <message>
        <source>Every batch in one row: crop, place, and the days it is sown, moved, picked and cleared.</source>
        <translation type="unfinished">Bawat batch sa isang hanay: pananim, lugar, at mga araw ng paghahasik, paglipat, pag-ani at paglilinis.</translation>
    </message>
    <message>
        <source>Every batch may go to its bed on the day it is meant to.</source>
        <translation type="unfinished">Puwedeng ilipat sa kama ang bawat batch sa takdang araw.</translation>
    </message>
    <message>
        <source>Every batch whose dates the last act moved</source>
        <translation type="unfinished">Bawat batch na nalipat ang mga petsa dahil sa huling ginawa</translation>
    </message>
    <message>
        <source>Every circuit at the beds and tanks needs a residual-current device; press its test button monthly. Let each cord hang in a drip loop, keep sockets above splash height and no cable over open water. Have wiring done by a qualified electrician to the local code. Switch off before hands go into the water.</source>
        <translation type="unfinished">Bawat circuit sa mga kama at tangke ay nangangailangan ng residual-current device; pindutin ang test button nito buwan-buwan. Hayaang may patak-liko ang bawat kurdon, ilagay ang saksakan sa itaas ng talsik at walang kable sa ibabaw ng tubig. Ipagawa ang kuryente sa kuwalipikadong elektrisista ayon sa lokal na tuntunin. Patayin ang kuryente bago ilubog ang kamay sa tubig.</translation>
    </message>
    <message>
        <source>Every figure here is an aid to planning. It is no medical, legal or engineering advice and no promise of yield. Test the water and look at the fish and plants.</source>
        <translation type="unfinished">Ang bawat bilang dito ay tulong lamang sa pagpaplano. Hindi ito payong medikal, legal o pang-inhinyero at hindi pangako ng ani. Suriin ang tubig at tingnan ang isda at halaman.</translation>
    </message>
    <message>
        <source>Every figure the program works with: value, spread, source and what it holds for. Your own values stand out in colour.</source>
        <translation type="unfinished">Bawat bilang na ginagamit ng programa: halaga, lawak, pinagmulan at saan ito totoo. May kulay ang sarili mong mga halaga.</translation>
    </message>
    <message>
        <source>Every figure with its source, and your own over it</source>
        <translation type="unfinished">Bawat numero at pinagmulan nito, at ang sarili mong halaga</translation>
    </message>
    <message>
        <source>Every hole of every bed is drawn here on any day, with what stands in it and what comes next.</source>
        <translation type="unfinished">Iginuguhit dito ang bawat butas ng bawat kama sa anumang araw, kung ano ang nakatanim at ang susunod.</translation>
    </message>
    <message>
        <source>Every hole of every bed on any day</source>
        <translation type="unfinished">Bawat butas ng bawat kama sa anumang araw</translation>
    </message>
    <message>
        <source>Every hole of every bed on the day shown, and the stage of the plant in it. “Table” shows the same as rows.</source>
        <translation type="unfinished">Bawat butas ng bawat kama sa ipinapakitang araw, at ang yugto ng halaman doon. Ganoon din ang ipinapakita ng “Talahanayan” bilang mga hanay.</translation>
    </message>
    <message>
        <source>Every so many weeks</source>
        <translation type="unfinished">Tuwing ilang linggo</translation>
    </message>
    <message>
        <source>Everything in the month of its use: seed by lot with its age, plugs for what is raised in a nursery, net pots for what goes to rafts, feed by pellet size, base, iron and salts of the doses.</source>
        <translation type="unfinished">Lahat sa buwan ng paggamit: binhi ayon sa lote at edad, plug para sa pinalalaki sa punlaan, net pot para sa ilalagay sa raft, pakain ayon sa laki ng pellet, base, bakal at asin ng mga dosis.</translation>
    </message>
    <message>
        <source>Everything since the moment you choose is put aside, not lost: the farm as it is now becomes a backup first, and stays in this list.</source>
        <translation type="unfinished">Itatabi, hindi mawawala, ang lahat mula sa sandaling pipiliin mo: gagawin munang backup ang farm ngayon, at mananatili sa listahang ito.</translation>
    </message>
    <message>
        <source>Everything that is wanted has its sowing and its room.</source>
        <translation type="unfinished">May hasik at puwesto ang lahat ng hinihingi.</translation>
    </message>
    <message>
        <source>Everything the forecast warns of from today on and a change of the plan may mend: plants short of food, feed that falls, a tank too full, batches without places or too slow for the season.</source>
        <translation type="unfinished">Lahat ng babala ng pagtataya mula ngayon na maaayos ng pagbabago sa plano: kulang na pagkain ng halaman, bumabagsak na pakain, sobrang punong tangke, mga batch na walang lugar o masyadong mabagal para sa panahon.</translation>
    </message>
    <message>
        <source>Export as text</source>
        <translation type="unfinished">I-export bilang text</translation>
    </message>
    <message>
        <source>Extra area that the feed carries, by month</source>
        <translation type="unfinished">Dagdag na lawak na kaya ng pakain, bawat buwan</translation>
    </message>
    <message>
        <source>F&amp;irst label that is still there</source>
        <translation type="unfinished">Unang label na nar&amp;iyan pa</translation>
    </message>
    <message>
        <source>FAO band</source>
        <translation type="unfinished">Saklaw ng FAO</translation>
    </message>
    <message>
        <source>FAO {a} to {b}, UVI {c} to {d}</source>
        <translation type="unfinished">FAO {a} hanggang {b}, UVI {c} hanggang {d}</translation>
    </message>
    <message>
        <source>FAO, by kind of crop</source>
        <translation type="unfinished">FAO, ayon sa uri ng pananim</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation type="unfinished">Factor</translation>
    </message>
    <message>
        <source>Fall of the feed</source>
        <translation type="unfinished">Bagsak ng pakain</translation>
    </message>
    <message>
        <source>Falls of the feed at each harvest</source>
        <translation type="unfinished">Mga bagsak ng pakain sa bawat ani</translation>
    </message>
    <message>
        <source>Falls, lifting, closed spaces and heat</source>
        <translation type="unfinished">Pagkahulog, pagbubuhat, saradong lugar at init</translation>
    </message>
    <message>
        <source>Farm</source>
        <translation type="unfinished">Farm</translation>
    </message>
    <message>
        <source>Farms (*.{suffix})</source>
        <translation type="unfinished">Mga farm (*.{suffix})</translation>
    </message>
    <message>
        <source>Farms as text (*.{suffix})</source>
        <translation type="unfinished">Mga farm bilang text (*.{suffix})</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation type="unfinished">Pakain</translation>
    </message>
    <message>
        <source>Feed [g a day]</source>
        <translation type="unfinished">Pakain [g bawat araw]</translation>
    </message>
    <message>
        <source>Feed [g/d]</source>
        <translation type="unfinished">Pakain [g/d]</translation>
    </message>
    <message>
        <source>Feed [kg]</source>
        <translation type="unfinished">Pakain [kg]</translation>
    </message>
    <message>
        <source>Feed and pellet</source>
        <translation type="unfinished">Pakain at pellet</translation>
    </message>
    <message>
        <source>Feed around the harvest</source>
        <translation type="unfinished">Pakain bago at pagkatapos ng ani</translation>
    </message>
    <message>
        <source>Feed by body weight</source>
        <translation type="unfinished">Pakain ayon sa bigat</translation>
    </message>
    <message>
        <source>Feed by week</source>
        <translation type="unfinished">Pakain bawat linggo</translation>
    </message>
    <message>
        <source>Feed conversion</source>
        <translation type="unfinished">Feed conversion</translation>
    </message>
    <message>
        <source>Feed conversion (FCR)</source>
        <translation type="unfinished">Feed conversion (FCR)</translation>
    </message>
    <message>
        <source>Feed each day</source>
        <translation type="unfinished">Pakain bawat araw</translation>
    </message>
    <message>
        <source>Feed falls by</source>
        <translation type="unfinished">Bagsak ng pakain</translation>
    </message>
    <message>
        <source>Feed for a group of fish on one day.</source>
        <translation type="unfinished">Pakain ng grupo ng isda sa isang araw.</translation>
    </message>
    <message>
        <source>Feed for the planted area</source>
        <translation type="unfinished">Pakain para sa lawak na may tanim</translation>
    </message>
    <message>
        <source>Feed foreseen, as it is weighed</source>
        <translation type="unfinished">Pakaing inaasahan, ayon sa pagtimbang</translation>
    </message>
    <message>
        <source>Feed is judged by</source>
        <translation type="unfinished">Batayan ng pakain</translation>
    </message>
    <message>
        <source>Feed really given</source>
        <translation type="unfinished">Pakaing talagang ibinigay</translation>
    </message>
    <message>
        <source>Feed this week</source>
        <translation type="unfinished">Pakain ngayong linggo</translation>
    </message>
    <message>
        <source>Feed within the plan</source>
        <translation type="unfinished">Pakain sa loob ng plano</translation>
    </message>
    <message>
        <source>Feed {group} what it eats, no more</source>
        <translation type="unfinished">Pakainin ang {group} ng nakakain lang, walang higit</translation>
    </message>
    <message>
        <source>Feed, at most {grams} g a day</source>
        <translation type="unfinished">Pakain, hanggang {grams} g bawat araw</translation>
    </message>
    <message>
        <source>Feed-rate ratio</source>
        <translation type="unfinished">Feed-rate ratio</translation>
    </message>
    <message>
        <source>Feed-rate ratio [g/m²/d]</source>
        <translation type="unfinished">Feed-rate ratio [g/m²/d]</translation>
    </message>
    <message>
        <source>Feeding table</source>
        <translation type="unfinished">Talaan ng pakain</translation>
    </message>
    <message>
        <source>Feeds</source>
        <translation type="unfinished">Mga pakain</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished">Numero</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished">Mga numero</translation>
    </message>
    <message>
        <source>Figures of the catalogue used</source>
        <translation type="unfinished">Mga numero ng katalogo na ginamit</translation>
    </message>
    <message>
        <source>Filipino</source>
        <translation type="unfinished">Filipino</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished">Punuin</translation>
    </message>
    <message>
        <source>Fill every tray with seeds</source>
        <translation type="unfinished">Punuin ng binhi ang bawat tray</translation>
    </message>
    <message>
        <source>Fill in what you know. A figure left empty is as in the entry it is most like.</source>
        <translation type="unfinished">Punan ang alam mo. Ang bilang na walang laman ay gaya ng sa pinakakatulad na tala.</translation>
    </message>
    <message>
        <source>Fill the line and choose “Log it”. A wrong entry is corrected or withdrawn. What was learned counts only after you take it up. “From paper” has the boxes of a printed sheet: type, Enter, type; Ctrl+Enter begins the next line, Ctrl+S keeps all lines in one act.</source>
        <translation type="unfinished">Punan ang linya at piliin ang «Itala». Ang maling tala ay itinatama o binabawi. Ang natutuhan ay bibilangin lamang kapag tinanggap mo. Nasa «Mula sa papel» ang mga kahon ng nakalimbag na papel: mag-type, Enter, mag-type; sinisimulan ng Ctrl+Enter ang susunod na linya, itinatago ng Ctrl+S ang lahat nang minsanan.</translation>
    </message>
    <message>
        <source>Filled on</source>
        <translation type="unfinished">Pinuno noong</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation type="unfinished">Filter</translation>
    </message>
    <message>
        <source>Filter and oxygen</source>
        <translation type="unfinished">Filter at oksiheno</translation>
    </message>
    <message>
        <source>Filter surface</source>
        <translation type="unfinished">Ibabaw ng pansala</translation>
    </message>
    <message>
        <source>Find anything by its name</source>
        <translation type="unfinished">Hanapin ang anuman ayon sa pangalan</translation>
    </message>
    <message>
        <source>First fish on {day}. Leafy crops come first; fruiting ones wait.</source>
        <translation type="unfinished">Unang isda sa {day}. Mauuna ang madahong pananim; maghihintay ang namumunga.</translation>
    </message>
    <message>
        <source>First harvest now</source>
        <translation type="unfinished">Unang ani ngayon</translation>
    </message>
    <message>
        <source>First pick</source>
        <translation type="unfinished">Unang ani</translation>
    </message>
    <message>
        <source>First pick of {code}: {change}, {days}</source>
        <translation type="unfinished">Unang pitas ng {code}: {change}, {days}</translation>
    </message>
    <message>
        <source>First picking, as a share of a full one</source>
        <translation type="unfinished">Unang ani, bilang bahagi ng buong ani</translation>
    </message>
    <message>
        <source>First to last good day of picking a batch.</source>
        <translation type="unfinished">Una hanggang huling magandang araw ng pag-ani ng batch.</translation>
    </message>
    <message>
        <source>Fish</source>
        <translation type="unfinished">Isda</translation>
    </message>
    <message>
        <source>Fish &amp;event…</source>
        <translation type="unfinished">Pangyayari sa is&amp;da…</translation>
    </message>
    <message>
        <source>Fish &amp;groups</source>
        <translation type="unfinished">Mga &amp;grupo ng isda</translation>
    </message>
    <message>
        <source>Fish &amp;tanks</source>
        <translation type="unfinished">Mga tan&amp;ke ng isda</translation>
    </message>
    <message>
        <source>Fish added</source>
        <translation type="unfinished">Idinagdag na isda</translation>
    </message>
    <message>
        <source>Fish and feed</source>
        <translation type="unfinished">Isda at pakain</translation>
    </message>
    <message>
        <source>Fish and plants raised on the same water; bacteria turn fish waste into plant food.</source>
        <translation type="unfinished">Isda at halaman sa iisang tubig; ginagawang pagkain ng halaman ng bacteria ang dumi ng isda.</translation>
    </message>
    <message>
        <source>Fish as food</source>
        <translation type="unfinished">Isda bilang pagkain</translation>
    </message>
    <message>
        <source>Fish e&amp;vents</source>
        <translation type="unfinished">Mga pangyaya&amp;ri sa isda</translation>
    </message>
    <message>
        <source>Fish event</source>
        <translation type="unfinished">Pangyayari sa isda</translation>
    </message>
    <message>
        <source>Fish foreseen on the day shown</source>
        <translation type="unfinished">Mga isdang inaasahan sa araw na ipinapakita</translation>
    </message>
    <message>
        <source>Fish group</source>
        <translation type="unfinished">Grupo ng isda</translation>
    </message>
    <message>
        <source>Fish groups</source>
        <translation type="unfinished">Mga grupo ng isda</translation>
    </message>
    <message>
        <source>Fish harvested [kg]</source>
        <translation type="unfinished">Inaning isda [kg]</translation>
    </message>
    <message>
        <source>Fish in the tank</source>
        <translation type="unfinished">Isda sa tangke</translation>
    </message>
    <message>
        <source>Fish in {tank}</source>
        <translation type="unfinished">Isda sa {tank}</translation>
    </message>
    <message>
        <source>Fish in {tank}, at most {most} kg/m³, limit {limit}</source>
        <translation type="unfinished">Isda sa {tank}, hanggang {most} kg/m³, limit {limit}</translation>
    </message>
    <message>
        <source>Fish medicine</source>
        <translation type="unfinished">Gamot sa isda</translation>
    </message>
    <message>
        <source>Fish sampling sheet</source>
        <translation type="unfinished">Talaan ng pagtimbang ng isda</translation>
    </message>
    <message>
        <source>Fish stocked together in one tank.</source>
        <translation type="unfinished">Mga isdang sabay inilagay sa isang tangke.</translation>
    </message>
    <message>
        <source>Fish stocking</source>
        <translation type="unfinished">Paglalagay ng isda</translation>
    </message>
    <message>
        <source>Fish tank</source>
        <translation type="unfinished">Tangke ng isda</translation>
    </message>
    <message>
        <source>Fish tanks, filters and beds that share one body of water.</source>
        <translation type="unfinished">Mga tangke ng isda, filter at kamang may iisang tubig.</translation>
    </message>
    <message>
        <source>Fish to be stocked</source>
        <translation type="unfinished">Isdang ilalagay</translation>
    </message>
    <message>
        <source>Fish welfare</source>
        <translation type="unfinished">Kapakanan ng isda</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished">Ipagkasya</translation>
    </message>
    <message>
        <source>Flagged weeks</source>
        <translation type="unfinished">Mga linggong may babala</translation>
    </message>
    <message>
        <source>Flakes are about 85-90 % pure.</source>
        <translation type="unfinished">Mga 85-90 % puro ang flakes.</translation>
    </message>
    <message>
        <source>Flow at the new head</source>
        <translation type="unfinished">Daloy sa bagong head</translation>
    </message>
    <message>
        <source>Flowers drop above 30-35 °C. Book method is the media bed.</source>
        <translation type="unfinished">Nalalaglag ang bulaklak sa higit 30-35 °C. Media bed ang paraan ng aklat.</translation>
    </message>
    <message>
        <source>Food-safety pack</source>
        <translation type="unfinished">Pakete sa kaligtasan ng pagkain</translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished">Para sa</translation>
    </message>
    <message>
        <source>For fish from</source>
        <translation type="unfinished">Para sa isdang mula</translation>
    </message>
    <message>
        <source>For fish up to</source>
        <translation type="unfinished">Para sa isdang hanggang</translation>
    </message>
    <message>
        <source>For how many days</source>
        <translation type="unfinished">Ilang araw</translation>
    </message>
    <message>
        <source>Forecasting each way…</source>
        <translation type="unfinished">Kinukuwenta ang forecast ng bawat paraan…</translation>
    </message>
    <message>
        <source>Forecasting the farm and its scenarios…</source>
        <translation type="unfinished">Kinukuwenta ang forecast ng farm at mga scenario nito…</translation>
    </message>
    <message>
        <source>Foreseen</source>
        <translation type="unfinished">Inaasahan</translation>
    </message>
    <message>
        <source>Forget this proposal</source>
        <translation type="unfinished">Kalimutan ang mungkahing ito</translation>
    </message>
    <message>
        <source>Forget this scenario</source>
        <translation type="unfinished">Kalimutan ang scenario na ito</translation>
    </message>
    <message>
        <source>Formula only</source>
        <translation type="unfinished">Pormula lamang</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished">Nakita</translation>
    </message>
    <message>
        <source>Four verdicts</source>
        <translation type="unfinished">Apat na hatol</translation>
    </message>
    <message>
        <source>Four verdicts are given: nutrients; flow; filter and oxygen; light, power and structure.</source>
        <translation type="unfinished">Apat na hatol: sustansiya; daloy; filter at oksiheno; liwanag, kuryente at tibay.</translation>
    </message>
    <message>
        <source>Fr&amp;om the week of</source>
        <translation type="unfinished">&amp;Mula sa linggo ng</translation>
    </message>
    <message>
        <source>Free</source>
        <translation type="unfinished">Bakante</translation>
    </message>
    <message>
        <source>Free {since}. {then}</source>
        <translation type="unfinished">Bakante {since}. {then}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">Biyernes</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">Mula</translation>
    </message>
    <message>
        <source>From bought plugs or bare-root plants: the germination figures are for rooting. Day-neutral kinds set little above 30 °C.</source>
        <translation type="unfinished">Mula sa biniling plug o halamang hubad ang ugat: para sa pag-uugat ang mga bilang ng pagtubo. Kaunti ang bunga ng day-neutral sa higit 30 °C.</translation>
    </message>
    <message>
        <source>From cuttings: the germination figures are for rooting. Roots clog gravel; renew yearly.</source>
        <translation type="unfinished">Mula sa sanga: para sa pag-uugat ang mga bilang ng pagtubo. Bumabara sa graba ang ugat; palitan taon-taon.</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation type="unfinished">Mula sa papel</translation>
    </message>
    <message>
        <source>From sowing until most seedlings are up.</source>
        <translation type="unfinished">Mula paghasik hanggang sumibol ang karamihan sa punla.</translation>
    </message>
    <message>
        <source>From the feed, the crops and the water, with the figures of the catalogue and your own values. “How sure?” works out low and high of each week.</source>
        <translation type="unfinished">Mula sa pakain, pananim at tubig, gamit ang mga bilang ng katalogo at sarili mong halaga. Kinukuwenta ng “Gaano katiyak?” ang mababa at mataas ng bawat linggo.</translation>
    </message>
    <message>
        <source>From the first harvest of a batch to the last.</source>
        <translation type="unfinished">Mula unang ani ng batch hanggang huli.</translation>
    </message>
    <message>
        <source>From the nursery to the last place</source>
        <translation type="unfinished">Mula punlaan hanggang huling puwesto</translation>
    </message>
    <message>
        <source>From the seed lot to the places, the harvest and the water, on one page</source>
        <translation type="unfinished">Mula lote ng binhi hanggang puwesto, ani at tubig, sa isang pahina</translation>
    </message>
    <message>
        <source>From this month on</source>
        <translation type="unfinished">Mula buwang ito</translation>
    </message>
    <message>
        <source>Fullest tank</source>
        <translation type="unfinished">Pinakapunong tangke</translation>
    </message>
    <message>
        <source>Fullest tank [kg/m³]</source>
        <translation type="unfinished">Pinakapunong tangke [kg/m³]</translation>
    </message>
    <message>
        <source>Further from the published figure than the tolerance allows</source>
        <translation type="unfinished">Mas malayo sa nalathalang bilang kaysa sa pinapayagan</translation>
    </message>
    <message>
        <source>G (letter of the stage germination)</source>
        <translation type="unfinished">T</translation>
    </message>
    <message>
        <source>Gap between col&amp;umns</source>
        <translation type="unfinished">Pagitan ng mga &amp;hanay pahalang</translation>
    </message>
    <message>
        <source>Gap between rows, &amp;down</source>
        <translation type="unfinished">Pagitan ng mga hile&amp;ra, pababa</translation>
    </message>
    <message>
        <source>Gap to the best possible</source>
        <translation type="unfinished">Agwat sa pinakamahusay na posible</translation>
    </message>
    <message>
        <source>Germinates badly in warmth: 28 % normal seedlings at 25 °C. Bolts in long days.</source>
        <translation type="unfinished">Mahina ang pagtubo sa init: 28 % lang ang normal na punla sa 25 °C. Nagbubulaklak agad sa mahabang araw.</translation>
    </message>
    <message>
        <source>Germination</source>
        <translation type="unfinished">Pagtubo</translation>
    </message>
    <message>
        <source>Give a group another feed</source>
        <translation type="unfinished">Bigyan ang grupo ng ibang pakain</translation>
    </message>
    <message>
        <source>Give length and width, or the number of holes.</source>
        <translation type="unfinished">Ibigay ang haba at lapad, o bilang ng butas.</translation>
    </message>
    <message>
        <source>Give {what} every day from {on}</source>
        <translation type="unfinished">Magbigay ng {what} araw-araw mula {on}</translation>
    </message>
    <message>
        <source>Give {what} every week from {on}</source>
        <translation type="unfinished">Magbigay ng {what} linggo-linggo mula {on}</translation>
    </message>
    <message>
        <source>Given</source>
        <translation type="unfinished">Ibinigay</translation>
    </message>
    <message>
        <source>Given last</source>
        <translation type="unfinished">Huling ibinigay</translation>
    </message>
    <message>
        <source>Go back to a &amp;backup…</source>
        <translation type="unfinished">Bumalik sa &amp;backup…</translation>
    </message>
    <message>
        <source>Go back to a backup</source>
        <translation type="unfinished">Bumalik sa backup</translation>
    </message>
    <message>
        <source>Go back to this one</source>
        <translation type="unfinished">Bumalik dito</translation>
    </message>
    <message>
        <source>Go into it</source>
        <translation type="unfinished">Pasukin</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished">Magpatuloy</translation>
    </message>
    <message>
        <source>Go to &amp;today</source>
        <translation type="unfinished">Pumunta sa araw na i&amp;to</translation>
    </message>
    <message>
        <source>Go to the chosen act</source>
        <translation type="unfinished">Pumunta sa napili</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation type="unfinished">Pupunta sa</translation>
    </message>
    <message>
        <source>Grade often when small: larger ones eat the smaller. Shy; feeds best undisturbed.</source>
        <translation type="unfinished">Madalas pagbukud-bukurin habang maliit: kinakain ng malaki ang maliit. Mahiyain; mas kumakain kapag hindi ginagambala.</translation>
    </message>
    <message>
        <source>Grade often when small; needs high-protein feed.</source>
        <translation type="unfinished">Madalas pagbukud-bukurin habang maliit; kailangan ng pakaing mataas ang protina.</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation type="unfinished">Gramo</translation>
    </message>
    <message>
        <source>Grams at a time</source>
        <translation type="unfinished">Gramo sa bawat bigay</translation>
    </message>
    <message>
        <source>Grams of feed a day for each square metre of planted bed.</source>
        <translation type="unfinished">Gramo ng pakain bawat araw sa bawat metro kuwadradong may tanim.</translation>
    </message>
    <message>
        <source>Grams of feed given for each gram the fish gain.</source>
        <translation type="unfinished">Gramo ng pakain sa bawat gramong idinadagdag ng isda.</translation>
    </message>
    <message>
        <source>Gravel bed</source>
        <translation type="unfinished">Kamang graba</translation>
    </message>
    <message>
        <source>Gravel besides</source>
        <translation type="unfinished">Bukod dito, graba</translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished">Grupo</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation type="unfinished">Mga grupo</translation>
    </message>
    <message>
        <source>Groups of this way</source>
        <translation type="unfinished">Mga grupo ng paraang ito</translation>
    </message>
    <message>
        <source>Groups, growth, feed by week and meal, density, harvest</source>
        <translation type="unfinished">Grupo, paglaki, pakain bawat linggo at kainan, siksik, ani</translation>
    </message>
    <message>
        <source>Grow another crop in its place</source>
        <translation type="unfinished">Magtanim ng ibang pananim kapalit</translation>
    </message>
    <message>
        <source>Growing area</source>
        <translation type="unfinished">Lawak ng taniman</translation>
    </message>
    <message>
        <source>Grown in its place</source>
        <translation type="unfinished">Itatanim kapalit</translation>
    </message>
    <message>
        <source>Grown there are</source>
        <translation type="unfinished">Tumutubo roon ang</translation>
    </message>
    <message>
        <source>Grows in</source>
        <translation type="unfinished">Tumutubo sa</translation>
    </message>
    <message>
        <source>Grows in: {beds}</source>
        <translation type="unfinished">Tumutubo sa: {beds}</translation>
    </message>
    <message>
        <source>Growth coefficient</source>
        <translation type="unfinished">Growth coefficient</translation>
    </message>
    <message>
        <source>Growth coefficient (TGC)</source>
        <translation type="unfinished">Growth coefficient (TGC)</translation>
    </message>
    <message>
        <source>Growth comes from the kind of fish and the warmth of the water, and from samples you weigh. Never feed more than the fish eat.</source>
        <translation type="unfinished">Ang paglaki ay galing sa uri ng isda at init ng tubig, at sa mga sample na tinimbang mo. Huwag magpakain nang higit sa kinakain ng isda.</translation>
    </message>
    <message>
        <source>Growth, feed by week and meal, density and harvest of each group stand here.</source>
        <translation type="unfinished">Narito ang paglaki, pakain bawat linggo at kain, dami at ani ng bawat grupo.</translation>
    </message>
    <message>
        <source>H (letter of fish harvested)</source>
        <translation type="unfinished">A</translation>
    </message>
    <message>
        <source>H&amp;eight of a label</source>
        <translation type="unfinished">&amp;Taas ng label</translation>
    </message>
    <message>
        <source>Hand-over booklet</source>
        <translation type="unfinished">Buklet ng pagtuturn-over</translation>
    </message>
    <message>
        <source>Handle fish solids as manure: below the leaf, not on parts that are eaten, not on a harvest day; tools of their own; wash afterwards. Return liquor only if it was aerated and does not smell. The rules for fish waste are unsettled: ask your produce-safety adviser.</source>
        <translation type="unfinished">Ituring na dumi ng hayop ang solido ng isda: sa ilalim ng dahon, hindi sa kinakaing bahagi, hindi sa araw ng ani; sariling kagamitan; maghugas pagkatapos. Ibalik lamang ang katas kung nahanginan at walang amoy. Hindi pa tiyak ang tuntunin sa dumi ng isda: magtanong sa tagapayo sa kaligtasan ng ani.</translation>
    </message>
    <message>
        <source>Hands, tools clean</source>
        <translation type="unfinished">Malinis ang kamay at gamit</translation>
    </message>
    <message>
        <source>Hardly soluble: 0.007 g per kg water.</source>
        <translation type="unfinished">Halos hindi natutunaw: 0.007 g bawat kg ng tubig.</translation>
    </message>
    <message>
        <source>Hardy in cool water; stirs up solids.</source>
        <translation type="unfinished">Matibay sa malamig na tubig; hinahalukay ang latak.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation type="unfinished">Ani</translation>
    </message>
    <message>
        <source>Harvest foreseen</source>
        <translation type="unfinished">Inaasahang ani</translation>
    </message>
    <message>
        <source>Harvest from</source>
        <translation type="unfinished">Anihin mula</translation>
    </message>
    <message>
        <source>Harvest in the chosen way</source>
        <translation type="unfinished">Anihin sa napiling paraan</translation>
    </message>
    <message>
        <source>Harvest of crops</source>
        <translation type="unfinished">Ani ng mga pananim</translation>
    </message>
    <message>
        <source>Harvest of fish</source>
        <translation type="unfinished">Ani ng isda</translation>
    </message>
    <message>
        <source>Harvest of {crop}</source>
        <translation type="unfinished">Ani ng {crop}</translation>
    </message>
    <message>
        <source>Harvest of {crop} [kg]</source>
        <translation type="unfinished">Ani ng {crop} [kg]</translation>
    </message>
    <message>
        <source>Harvest on</source>
        <translation type="unfinished">Anihin sa</translation>
    </message>
    <message>
        <source>Harvest over now</source>
        <translation type="unfinished">Tapos ng ani ngayon</translation>
    </message>
    <message>
        <source>Harvest record</source>
        <translation type="unfinished">Tala ng ani</translation>
    </message>
    <message>
        <source>Harvest window</source>
        <translation type="unfinished">Panahon ng ani</translation>
    </message>
    <message>
        <source>Harvest {fish} of {group} first, the rest on {on}</source>
        <translation type="unfinished">Mag-ani muna ng {fish} ng {group}, ang natira sa {on}</translation>
    </message>
    <message>
        <source>Harvest {fish} of {group} on {on}</source>
        <translation type="unfinished">Mag-ani ng {fish} ng {group} sa {on}</translation>
    </message>
    <message>
        <source>Harvest {group} {weeks} earlier</source>
        <translation type="unfinished">Anihin ang {group} nang {weeks} mas maaga</translation>
    </message>
    <message>
        <source>Harvest {share}</source>
        <translation type="unfinished">Anihin {share}</translation>
    </message>
    <message>
        <source>Harvest, deaths, a weighed sample, days off feed</source>
        <translation type="unfinished">Ani, namatay, tinimbang na sample, araw na walang pakain</translation>
    </message>
    <message>
        <source>Harvested</source>
        <translation type="unfinished">Naani</translation>
    </message>
    <message>
        <source>Head lost in pipes</source>
        <translation type="unfinished">Nawalang head sa tubo</translation>
    </message>
    <message>
        <source>Heat-tender: germination fails early in warm nurseries.</source>
        <translation type="unfinished">Maselan sa init: madaling pumalya ang pagtubo sa mainit na punlaan.</translation>
    </message>
    <message>
        <source>Heated in winter, or indoors</source>
        <translation type="unfinished">May pampainit sa taglamig, o nasa loob</translation>
    </message>
    <message>
        <source>Height of the lift</source>
        <translation type="unfinished">Taas ng angat</translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished">Okupado</translation>
    </message>
    <message>
        <source>Held until</source>
        <translation type="unfinished">Hawak hanggang</translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished">Tulong</translation>
    </message>
    <message>
        <source>Help: {title}</source>
        <translation type="unfinished">Tulong: {title}</translation>
    </message>
    <message>
        <source>Highest pH</source>
        <translation type="unfinished">Pinakamataas na pH</translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished">Kasaysayan</translation>
    </message>
    <message>
        <source>Hold crops of the start-up</source>
        <translation type="unfinished">Pigilin ang mga pananim ng pagsisimula</translation>
    </message>
    <message>
        <source>Hold {batches} in the nursery {weeks} longer</source>
        <translation type="unfinished">Panatilihin ang {batches} sa punlaan nang {weeks} pa</translation>
    </message>
    <message>
        <source>Holds for</source>
        <translation type="unfinished">Para sa</translation>
    </message>
    <message>
        <source>Holds iron up to about pH 7-7.5.</source>
        <translation type="unfinished">Hinahawakan ang iron hanggang mga pH 7-7.5.</translation>
    </message>
    <message>
        <source>Holds iron up to pH 9; colours the water red.</source>
        <translation type="unfinished">Hinahawakan ang iron hanggang pH 9; pinapula ang tubig.</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation type="unfinished">Mga butas</translation>
    </message>
    <message>
        <source>Holes in the plants' food</source>
        <translation type="unfinished">Mga puwang sa pagkain ng halaman</translation>
    </message>
    <message>
        <source>Holidays</source>
        <translation type="unfinished">Mga pista opisyal</translation>
    </message>
    <message>
        <source>Hot summer, mild winter</source>
        <translation type="unfinished">Mainit na tag-araw, banayad na taglamig</translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished">Paano</translation>
    </message>
    <message>
        <source>How far</source>
        <translation type="unfinished">Gaano na</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation type="unfinished">Gaano na kalayo</translation>
    </message>
    <message>
        <source>How fast a fish grows for the warmth of its water.</source>
        <translation type="unfinished">Gaano kabilis lumaki ang isda sa init ng tubig nito.</translation>
    </message>
    <message>
        <source>How it is harvested</source>
        <translation type="unfinished">Paano inaani</translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished">Ilan</translation>
    </message>
    <message>
        <source>How many groups, when and how many fish, so that the feed stays within what the beds can use: how deep and how long it falls at each harvest. Fish are never fed above what they eat.</source>
        <translation type="unfinished">Ilang grupo, kailan at ilang isda, para manatili ang pakain sa kayang gamitin ng mga kama: gaano kababa at katagal ang bagsak sa bawat ani. Hindi pinapakain ang isda nang higit sa nakakain.</translation>
    </message>
    <message>
        <source>How many weeks</source>
        <translation type="unfinished">Ilang linggo</translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished">Gaano karami</translation>
    </message>
    <message>
        <source>How much it proves</source>
        <translation type="unfinished">Gaano ang pinatutunayan nito</translation>
    </message>
    <message>
        <source>How often an hour's flow changes the water of a tank.</source>
        <translation type="unfinished">Ilang beses pinapalitan ng daloy sa isang oras ang tubig ng tangke.</translation>
    </message>
    <message>
        <source>How s&amp;ure is the week</source>
        <translation type="unfinished">Gaano kasi&amp;gurado ang linggo</translation>
    </message>
    <message>
        <source>How sharply growth sets in</source>
        <translation type="unfinished">Gaano kabilis magsimula ang paglaki</translation>
    </message>
    <message>
        <source>How supply stands to demand in a week: short, thin, met or ample.</source>
        <translation type="unfinished">Lagay ng supply sa pangangailangan sa isang linggo: kulang, manipis, sapat o labis.</translation>
    </message>
    <message>
        <source>How sure?</source>
        <translation type="unfinished">Gaano kasigurado?</translation>
    </message>
    <message>
        <source>How the grams come about, and who says so</source>
        <translation type="unfinished">Paano nakuha ang gramo, at sino ang nagsabi</translation>
    </message>
    <message>
        <source>How to read a repair</source>
        <translation type="unfinished">Paano basahin ang ayos</translation>
    </message>
    <message>
        <source>How well the water leads current: a rough measure of all that is dissolved in it.</source>
        <translation type="unfinished">Gaano kahusay dumaan ang kuryente sa tubig: magaspang na sukat ng lahat ng natunaw.</translation>
    </message>
    <message>
        <source>IANA name such as Asia/Manila</source>
        <translation type="unfinished">pangalang IANA gaya ng Asia/Manila</translation>
    </message>
    <message>
        <source>ISO 8601: weeks begin on Monday, and W01 holds the year's first Thursday.</source>
        <translation type="unfinished">ISO 8601: nagsisimula ang linggo sa Lunes, at nasa W01 ang unang Huwebes ng taon.</translation>
    </message>
    <message>
        <source>If done today</source>
        <translation type="unfinished">Kung gagawin ngayon</translation>
    </message>
    <message>
        <source>Illness and wounds</source>
        <translation type="unfinished">Sakit at sugat</translation>
    </message>
    <message>
        <source>In a new loop leafy crops come first; fruiting ones wait until the feed carries them.</source>
        <translation type="unfinished">Sa bagong loop, una ang mga dahong gulay; maghihintay ang namumunga hanggang kayanin ng pakain.</translation>
    </message>
    <message>
        <source>In a rhythm of its own</source>
        <translation type="unfinished">Sa sariling ritmo</translation>
    </message>
    <message>
        <source>In band</source>
        <translation type="unfinished">Nasa saklaw</translation>
    </message>
    <message>
        <source>In place of {batches}, which make way.</source>
        <translation type="unfinished">Kapalit ng {batches}, na magbibigay-daan.</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation type="unfinished">Nakaimbak</translation>
    </message>
    <message>
        <source>In the bed</source>
        <translation type="unfinished">Sa kama</translation>
    </message>
    <message>
        <source>In the week from</source>
        <translation type="unfinished">Sa linggo mula</translation>
    </message>
    <message>
        <source>In use, with its range</source>
        <translation type="unfinished">Ginagamit, at saklaw</translation>
    </message>
    <message>
        <source>In which way it is wanted</source>
        <translation type="unfinished">Sa anong paraan ito hinihingi</translation>
    </message>
    <message>
        <source>Income</source>
        <translation type="unfinished">Kita</translation>
    </message>
    <message>
        <source>Independent</source>
        <translation type="unfinished">Hiwalay</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished">Inisyal</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation type="unfinished">Iron</translation>
    </message>
    <message>
        <source>Iron [mg/L]</source>
        <translation type="unfinished">Iron [mg/L]</translation>
    </message>
    <message>
        <source>Iron due</source>
        <translation type="unfinished">Takda ng iron</translation>
    </message>
    <message>
        <source>Iron held so that it stays in the water; which chelate suits depends on the pH.</source>
        <translation type="unfinished">Bakal na hinahawakan para manatili sa tubig; depende sa pH ang bagay na chelate.</translation>
    </message>
    <message>
        <source>Iron in the fish</source>
        <translation type="unfinished">Bakal sa isda</translation>
    </message>
    <message>
        <source>Iron in the make-up water</source>
        <translation type="unfinished">Iron sa dagdag na tubig</translation>
    </message>
    <message>
        <source>Is it right?</source>
        <translation type="unfinished">Tama ba ito?</translation>
    </message>
    <message>
        <source>It &amp;never happened</source>
        <translation type="unfinished">Hindi ito &amp;nangyari</translation>
    </message>
    <message>
        <source>It could not be kept; see the message in the window.</source>
        <translation type="unfinished">Hindi ito na-save; tingnan ang mensahe sa window.</translation>
    </message>
    <message>
        <source>It could not be worked out: {why}</source>
        <translation type="unfinished">Hindi makuwenta: {why}</translation>
    </message>
    <message>
        <source>It moved no dates.</source>
        <translation type="unfinished">Walang nalipat na petsa rito.</translation>
    </message>
    <message>
        <source>January–March</source>
        <translation type="unfinished">Enero–Marso</translation>
    </message>
    <message>
        <source>July–September</source>
        <translation type="unfinished">Hulyo–Setyembre</translation>
    </message>
    <message>
        <source>K base</source>
        <translation type="unfinished">Base na K</translation>
    </message>
    <message>
        <source>KH</source>
        <translation type="unfinished">KH</translation>
    </message>
    <message>
        <source>Keep birds, rats, pets and livestock away from beds, and cover the tanks.</source>
        <translation type="unfinished">Ilayo sa mga kama ang ibon, daga, alaga at hayop, at takpan ang mga tangke.</translation>
    </message>
    <message>
        <source>Keep my value</source>
        <translation type="unfinished">Itabi ang halaga ko</translation>
    </message>
    <message>
        <source>Keep system water off the parts that are eaten, and off hands, gloves and knives that touch them. Clean hands and blades; hold roots away from leaves; wash produce in drinking water; cool it soon.</source>
        <translation type="unfinished">Ilayo ang tubig ng sistema sa mga bahaging kinakain, at sa kamay, guwantes at kutsilyong humahawak dito. Linisin ang kamay at talim; ilayo ang ugat sa dahon; hugasan ang ani sa inuming tubig; palamigin agad.</translation>
    </message>
    <message>
        <source>Keep the new farm as</source>
        <translation type="unfinished">I-save ang bagong farm bilang</translation>
    </message>
    <message>
        <source>Keep them, to be sown again later</source>
        <translation type="unfinished">Itabi, para ihasik muli kinalaunan</translation>
    </message>
    <message>
        <source>Keep this as a scenario under What if</source>
        <translation type="unfinished">Itabi ito bilang scenario sa Paano kung</translation>
    </message>
    <message>
        <source>Keep to compare</source>
        <translation type="unfinished">Itabi para ihambing</translation>
    </message>
    <message>
        <source>Keep to compare puts it among the scenarios under What if. Drop forgets it.</source>
        <translation type="unfinished">Inilalagay ito ng Itabi para ihambing sa mga senaryo ng Paano kung. Kinakalimutan ito ng Itapon.</translation>
    </message>
    <message>
        <source>Keep within density and oxygen limits, handle little and wet, and kill quickly and humanely as local rules ask.</source>
        <translation type="unfinished">Manatili sa hangganan ng densidad at oksiheno, bihirang hawakan at laging basa, at katayin nang mabilis at makatao ayon sa lokal na tuntunin.</translation>
    </message>
    <message>
        <source>Keeping the best so far…</source>
        <translation type="unfinished">Itinatabi ang pinakamahusay sa ngayon…</translation>
    </message>
    <message>
        <source>Kept as the scenario {name}: see What if.</source>
        <translation type="unfinished">Itinabi bilang scenario na {name}: tingnan sa Paano kung.</translation>
    </message>
    <message>
        <source>Kept for show, not eaten</source>
        <translation type="unfinished">Pampaganda, hindi kinakain</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished">Uri</translation>
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
        <translation type="unfinished">Mga label p&amp;ahalang</translation>
    </message>
    <message>
        <source>Labels and tags</source>
        <translation type="unfinished">Mga label at tag</translation>
    </message>
    <message>
        <source>Labels and tags…</source>
        <translation type="unfinished">Mga label at tag…</translation>
    </message>
    <message>
        <source>Labels dow&amp;n</source>
        <translation type="unfinished">Mga label pa&amp;baba</translation>
    </message>
    <message>
        <source>Labels for trays, tags for rafts, on plain paper or a sheet of labels</source>
        <translation type="unfinished">Label para sa tray, tag para sa balsa, sa karaniwang papel o sa papel na label</translation>
    </message>
    <message>
        <source>Large seed, one a plug. Fixes some of its own nitrogen in soil; none is counted here.</source>
        <translation type="unfinished">Malaking binhi, isa bawat plug. Sa lupa ay nakagagawa ng sariling nitrogen; walang binibilang dito.</translation>
    </message>
    <message>
        <source>Last pick</source>
        <translation type="unfinished">Huling ani</translation>
    </message>
    <message>
        <source>Late</source>
        <translation type="unfinished">Huli</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation type="unfinished">Latitude</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation type="unfinished">Patong</translation>
    </message>
    <message>
        <source>Layer of beds</source>
        <translation type="unfinished">Patong ng mga kama</translation>
    </message>
    <message>
        <source>Layer {layer}</source>
        <translation type="unfinished">Patong {layer}</translation>
    </message>
    <message>
        <source>Leafy or fruiting</source>
        <translation type="unfinished">Dahon o bunga</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation type="unfinished">Natutunan</translation>
    </message>
    <message>
        <source>Least oxygen</source>
        <translation type="unfinished">Pinakamababang oksiheno</translation>
    </message>
    <message>
        <source>Least supply</source>
        <translation type="unfinished">Pinakakaunting supply</translation>
    </message>
    <message>
        <source>Least supply against demand; weeks without demand stand at the top</source>
        <translation type="unfinished">Pinakakaunting supply kumpara sa kailangan; nasa taas ang mga linggong walang kailangan</translation>
    </message>
    <message>
        <source>Least supply of an element</source>
        <translation type="unfinished">Pinakakaunting supply ng isang elemento</translation>
    </message>
    <message>
        <source>Leave empty what you do not know: the verdict says what it lacks.</source>
        <translation type="unfinished">Iwang walang laman ang hindi alam: sasabihin ng hatol kung ano ang kulang.</translation>
    </message>
    <message>
        <source>Leave it &amp;uncorrected</source>
        <translation type="unfinished">Huwag nang &amp;itama</translation>
    </message>
    <message>
        <source>Left and right go by a day, Page Up and Page Down by a week</source>
        <translation type="unfinished">Kaliwa at kanan: isang araw; Page Up at Page Down: isang linggo</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished">Natira</translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished">Haba</translation>
    </message>
    <message>
        <source>Length of the plan</source>
        <translation type="unfinished">Haba ng plano</translation>
    </message>
    <message>
        <source>Level scoops for one meal</source>
        <translation type="unfinished">Patag na takal sa isang kain</translation>
    </message>
    <message>
        <source>Light at the new beds</source>
        <translation type="unfinished">Liwanag sa bagong kama</translation>
    </message>
    <message>
        <source>Light from lamps</source>
        <translation type="unfinished">Liwanag ng ilaw</translation>
    </message>
    <message>
        <source>Light let through by the roof</source>
        <translation type="unfinished">Liwanag na lumulusot sa bubong</translation>
    </message>
    <message>
        <source>Light that plants can use, summed over a day, in mol for each square metre.</source>
        <translation type="unfinished">Liwanag na nagagamit ng halaman sa isang araw, mol bawat metro kuwadrado.</translation>
    </message>
    <message>
        <source>Light that the layers above let through</source>
        <translation type="unfinished">Liwanag na lumulusot sa mga patong sa itaas</translation>
    </message>
    <message>
        <source>Light wanted each day</source>
        <translation type="unfinished">Liwanag na kailangan bawat araw</translation>
    </message>
    <message>
        <source>Light, power and structure</source>
        <translation type="unfinished">Liwanag, kuryente at tibay</translation>
    </message>
    <message>
        <source>Like the &amp;system</source>
        <translation type="unfinished">Tulad ng &amp;system</translation>
    </message>
    <message>
        <source>Limiting</source>
        <translation type="unfinished">Pinakakapos</translation>
    </message>
    <message>
        <source>Limiting element</source>
        <translation type="unfinished">Pinakakapos</translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished">Linya</translation>
    </message>
    <message>
        <source>Line {line}: {words}</source>
        <translation type="unfinished">Linya {line}: {words}</translation>
    </message>
    <message>
        <source>Line {number}: give length and width, or the number of holes.</source>
        <translation type="unfinished">Linya {number}: ibigay ang haba at lapad, o bilang ng butas.</translation>
    </message>
    <message>
        <source>Line {number}: {why}</source>
        <translation type="unfinished">Linya {number}: {why}</translation>
    </message>
    <message>
        <source>Lines of the sheet</source>
        <translation type="unfinished">Mga linya ng papel</translation>
    </message>
    <message>
        <source>Liquor goes back on</source>
        <translation type="unfinished">Ibabalik ang katas sa</translation>
    </message>
    <message>
        <source>Live weight</source>
        <translation type="unfinished">Timbang na buhay</translation>
    </message>
    <message>
        <source>Load of frame and rafts</source>
        <translation type="unfinished">Bigat ng balangkas at lutang</translation>
    </message>
    <message>
        <source>Load that may be carried</source>
        <translation type="unfinished">Bigat na kayang dalhin</translation>
    </message>
    <message>
        <source>Local codes</source>
        <translation type="unfinished">Mga lokal na tuntunin</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished">I-lock</translation>
    </message>
    <message>
        <source>Lock {code}</source>
        <translation type="unfinished">I-lock ang {code}</translation>
    </message>
    <message>
        <source>Lock {many} batches</source>
        <translation type="unfinished">I-lock ang {many} batch</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished">Naka-lock</translation>
    </message>
    <message>
        <source>Locked.</source>
        <translation type="unfinished">Naka-lock.</translation>
    </message>
    <message>
        <source>Locked: no plan may move it</source>
        <translation type="unfinished">Naka-lock: walang planong makagagalaw</translation>
    </message>
    <message>
        <source>Log entry</source>
        <translation type="unfinished">Entry sa talaan</translation>
    </message>
    <message>
        <source>Log every line in one act (Ctrl+S)</source>
        <translation type="unfinished">Itala ang bawat linya nang minsanan (Ctrl+S)</translation>
    </message>
    <message>
        <source>Log: {what}</source>
        <translation type="unfinished">Tala: {what}</translation>
    </message>
    <message>
        <source>Long nursery; cold below 10 °C makes it bolt. Table shows no emergence at 25 °C.</source>
        <translation type="unfinished">Matagal sa punlaan; nagbubulaklak agad sa lamig na mas mababa sa 10 °C. Walang tubo sa 25 °C ayon sa talahanayan.</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation type="unfinished">Pinakamatagal</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation type="unfinished">Longitude</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation type="unfinished">Tumingin-tingin</translation>
    </message>
    <message>
        <source>Look out: {said}.</source>
        <translation type="unfinished">Mag-ingat: {said}.</translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation type="unfinished">Tinitingnan ang mga hanay…</translation>
    </message>
    <message>
        <source>Loop of water</source>
        <translation type="unfinished">Loop ng tubig</translation>
    </message>
    <message>
        <source>Loop whose balance is shown</source>
        <translation type="unfinished">Loop na ipinapakita ang balanse</translation>
    </message>
    <message>
        <source>Lose all fish of a group</source>
        <translation type="unfinished">Mawala ang lahat ng isda ng grupo</translation>
    </message>
    <message>
        <source>Loss from one picking to the next</source>
        <translation type="unfinished">Bawas mula sa isang ani hanggang sa susunod</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lote</translation>
    </message>
    <message>
        <source>Lower leaves picked weekly; the crown goes on growing.</source>
        <translation type="unfinished">Pinipitas ang ibabang dahon linggo-linggo; patuloy ang tubo ng ubod.</translation>
    </message>
    <message>
        <source>Lowest feed</source>
        <translation type="unfinished">Pinakamababang pakain</translation>
    </message>
    <message>
        <source>Lowest pH</source>
        <translation type="unfinished">Pinakamababang pH</translation>
    </message>
    <message>
        <source>M (letter of the band met)</source>
        <translation type="unfinished">S</translation>
    </message>
    <message>
        <source>MJ/m2/min</source>
        <translation type="unfinished">MJ/m²/min</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation type="unfinished">Magnesium</translation>
    </message>
    <message>
        <source>Magnesium [mg/L]</source>
        <translation type="unfinished">Magnesium [mg/L]</translation>
    </message>
    <message>
        <source>Magnesium in the fish</source>
        <translation type="unfinished">Magnesyo sa isda</translation>
    </message>
    <message>
        <source>Magnesium in the make-up water</source>
        <translation type="unfinished">Magnesium sa dagdag na tubig</translation>
    </message>
    <message>
        <source>Maintenance calendar</source>
        <translation type="unfinished">Kalendaryo ng pagmementena</translation>
    </message>
    <message>
        <source>Make some of its plants a batch of their own</source>
        <translation type="unfinished">Gawing sariling batch ang ilan sa halaman nito</translation>
    </message>
    <message>
        <source>Make the farm what the scenario is; one undo takes it back</source>
        <translation type="unfinished">Gawing gaya ng scenario ang farm; isang undo ang magbabalik</translation>
    </message>
    <message>
        <source>Make the farm…</source>
        <translation type="unfinished">Gawin ang farm…</translation>
    </message>
    <message>
        <source>Make this the plan; one undo takes it back</source>
        <translation type="unfinished">Gawin itong plano; isang undo ang magbabalik</translation>
    </message>
    <message>
        <source>Make-up water</source>
        <translation type="unfinished">Dagdag na tubig</translation>
    </message>
    <message>
        <source>Make-up water added [L]</source>
        <translation type="unfinished">Idinagdag na tubig [L]</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation type="unfinished">Mga materyales</translation>
    </message>
    <message>
        <source>May go from</source>
        <translation type="unfinished">Puwede mula</translation>
    </message>
    <message>
        <source>Meals a day</source>
        <translation type="unfinished">Ilang kain bawat araw</translation>
    </message>
    <message>
        <source>Mean weight</source>
        <translation type="unfinished">Karaniwang timbang</translation>
    </message>
    <message>
        <source>Mean weight foreseen on the day shown</source>
        <translation type="unfinished">Karaniwang timbang na inaasahan sa araw na ipinapakita</translation>
    </message>
    <message>
        <source>Mean weight of one fish</source>
        <translation type="unfinished">Karaniwang bigat ng isang isda</translation>
    </message>
    <message>
        <source>Mean weight of one fish today</source>
        <translation type="unfinished">Karaniwang bigat ng isang isda ngayon</translation>
    </message>
    <message>
        <source>Meant for its bed</source>
        <translation type="unfinished">Takda sa kama</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation type="unfinished">Sinusukat</translation>
    </message>
    <message>
        <source>Media plugs</source>
        <translation type="unfinished">Media plug</translation>
    </message>
    <message>
        <source>Meets</source>
        <translation type="unfinished">Naaabot</translation>
    </message>
    <message>
        <source>Mend it, or keep all lines once more to say that it is right.</source>
        <translation type="unfinished">Itama ito, o itago muli ang lahat ng linya kung tama.</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished">Panukat</translation>
    </message>
    <message>
        <source>Meter factor</source>
        <translation type="unfinished">Factor ng metro</translation>
    </message>
    <message>
        <source>Meter's factor</source>
        <translation type="unfinished">Factor ng metro</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation type="unfinished">Mga panukat</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished">Metric</translation>
    </message>
    <message>
        <source>Middle spacing</source>
        <translation type="unfinished">Gitnang agwat</translation>
    </message>
    <message>
        <source>Milder than the hydroxide, still strong.</source>
        <translation type="unfinished">Mas banayad kaysa sa hydroxide, matapang pa rin.</translation>
    </message>
    <message>
        <source>Mineralisation</source>
        <translation type="unfinished">Mineralisation</translation>
    </message>
    <message>
        <source>Mineraliser</source>
        <translation type="unfinished">Mineraliser</translation>
    </message>
    <message>
        <source>Minerals are means of many analyses at 41.65 % protein.</source>
        <translation type="unfinished">Mean ng maraming pagsusuri ang mga mineral, sa 41.65 % protina.</translation>
    </message>
    <message>
        <source>Minerals are means of present commercial feeds.</source>
        <translation type="unfinished">Mean ng kasalukuyang komersiyal na pakain ang mga mineral.</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation type="unfinished">Hindi naabot</translation>
    </message>
    <message>
        <source>Mo&amp;ve all down</source>
        <translation type="unfinished">Iusog lahat pabab&amp;a</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">Lunes</translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished">Buwan</translation>
    </message>
    <message>
        <source>More beds</source>
        <translation type="unfinished">Dagdag na kama</translation>
    </message>
    <message>
        <source>More is planted than the feed carries. This would repair it; nothing is done unasked:</source>
        <translation type="unfinished">Mas marami ang tanim kaysa kaya ng pakain. Ito ang mag-aayos; walang gagawin nang hindi mo hinihingi:</translation>
    </message>
    <message>
        <source>More than wanted</source>
        <translation type="unfinished">Higit sa kailangan</translation>
    </message>
    <message>
        <source>More, where it is known</source>
        <translation type="unfinished">Iba pa, kung alam</translation>
    </message>
    <message>
        <source>Most fish in the tank</source>
        <translation type="unfinished">Pinakamaraming isda sa tangke</translation>
    </message>
    <message>
        <source>Most insecticides, many sold as natural among them, can kill fish, and soaps damage gills. Follow the label and its days before harvest; never spray over water.</source>
        <translation type="unfinished">Karamihan ng pamatay-insekto, kasama ang maraming ibinebentang natural, ay nakamamatay ng isda, at nakasisira ng hasang ang sabon. Sundin ang etiketa at ang mga araw nito bago mag-ani; huwag mag-spray sa ibabaw ng tubig.</translation>
    </message>
    <message>
        <source>Most like</source>
        <translation type="unfinished">Pinakakatulad</translation>
    </message>
    <message>
        <source>Most un-ionised ammonia, as nitrogen</source>
        <translation type="unfinished">Pinakamataas na un-ionised ammonia, bilang nitroheno</translation>
    </message>
    <message>
        <source>Move</source>
        <translation type="unfinished">Ilipat</translation>
    </message>
    <message>
        <source>Move to bed</source>
        <translation type="unfinished">Ilipat-tanim</translation>
    </message>
    <message>
        <source>Move to the bed, {days} d late: {code}</source>
        <translation type="unfinished">Ilipat sa kama, huli ng {days} d: {code}</translation>
    </message>
    <message>
        <source>Move {code} to the bed</source>
        <translation type="unfinished">Ilipat ang {code} sa kama</translation>
    </message>
    <message>
        <source>Move {code} to {bed}</source>
        <translation type="unfinished">Ilipat ang {code} sa {bed}</translation>
    </message>
    <message>
        <source>Move {code} to {bed}, {moved}</source>
        <translation type="unfinished">Ilipat ang {code} sa {bed}, {moved}</translation>
    </message>
    <message>
        <source>Move {code} {moved}</source>
        <translation type="unfinished">Ilipat ang {code}, {moved}</translation>
    </message>
    <message>
        <source>Move {many} batches {moved}</source>
        <translation type="unfinished">Ilipat ang {many} batch {moved}</translation>
    </message>
    <message>
        <source>Move {many}: {code}</source>
        <translation type="unfinished">Ilipat ang {many}: {code}</translation>
    </message>
    <message>
        <source>Moved: {moves}</source>
        <translation type="unfinished">Nalipat: {moves}</translation>
    </message>
    <message>
        <source>Moving-bed biofilter</source>
        <translation type="unfinished">Moving-bed biofilter</translation>
    </message>
    <message>
        <source>N (letter of the stage nursery)</source>
        <translation type="unfinished">P</translation>
    </message>
    <message>
        <source>NO₂ and NO₃ were read as the ion</source>
        <translation type="unfinished">Binasa ang NO₂ at NO₃ bilang ion</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Pangalan</translation>
    </message>
    <message>
        <source>Name is empty; it must be given.</source>
        <translation type="unfinished">Walang laman ang pangalan; kailangang ibigay.</translation>
    </message>
    <message>
        <source>Name of the farm</source>
        <translation type="unfinished">Pangalan ng farm</translation>
    </message>
    <message>
        <source>Name of the scenario</source>
        <translation type="unfinished">Pangalan ng scenario</translation>
    </message>
    <message>
        <source>Net pots</source>
        <translation type="unfinished">Net pot</translation>
    </message>
    <message>
        <source>Never tested</source>
        <translation type="unfinished">Hindi pa nasuri</translation>
    </message>
    <message>
        <source>New entry of your own</source>
        <translation type="unfinished">Bagong sariling tala</translation>
    </message>
    <message>
        <source>New entry…</source>
        <translation type="unfinished">Bagong tala…</translation>
    </message>
    <message>
        <source>New farm</source>
        <translation type="unfinished">Bagong farm</translation>
    </message>
    <message>
        <source>New: {kind}</source>
        <translation type="unfinished">Bago: {kind}</translation>
    </message>
    <message>
        <source>New…</source>
        <translation type="unfinished">Bago…</translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished">Susunod</translation>
    </message>
    <message>
        <source>Next due</source>
        <translation type="unfinished">Susunod na takda</translation>
    </message>
    <message>
        <source>Next: {what}.</source>
        <translation type="unfinished">Susunod: {what}.</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation type="unfinished">Nitrate</translation>
    </message>
    <message>
        <source>Nitrate as N [mg/L]</source>
        <translation type="unfinished">Nitrate bilang N [mg/L]</translation>
    </message>
    <message>
        <source>Nitrification</source>
        <translation type="unfinished">Nitrification</translation>
    </message>
    <message>
        <source>Nitrite</source>
        <translation type="unfinished">Nitrite</translation>
    </message>
    <message>
        <source>Nitrite as N [mg/L]</source>
        <translation type="unfinished">Nitrite bilang N [mg/L]</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation type="unfinished">Nitrogen</translation>
    </message>
    <message>
        <source>Nitrogen in dry matter</source>
        <translation type="unfinished">Nitroheno sa tuyong bigat</translation>
    </message>
    <message>
        <source>Nitrogen in the fish</source>
        <translation type="unfinished">Nitrogen sa isda</translation>
    </message>
    <message>
        <source>Nitrogen in the make-up water</source>
        <translation type="unfinished">Nitrogen sa dagdag na tubig</translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished">Hindi</translation>
    </message>
    <message>
        <source>No analysis</source>
        <translation type="unfinished">Walang analysis</translation>
    </message>
    <message>
        <source>No analysis: nothing is counted. Enter the label's figures as your own entry.</source>
        <translation type="unfinished">Walang pagsusuri: walang binibilang. Ilagay ang mga bilang sa etiketa bilang sariling entry.</translation>
    </message>
    <message>
        <source>No base is at hand: the plan has no doses of one.</source>
        <translation type="unfinished">Walang base: walang dosis nito sa plano.</translation>
    </message>
    <message>
        <source>No batch and no seed lot has the code “{code}”.</source>
        <translation type="unfinished">Walang batch o lote ng binhi na may code na “{code}”.</translation>
    </message>
    <message>
        <source>No batch chosen</source>
        <translation type="unfinished">Walang napiling batch</translation>
    </message>
    <message>
        <source>No batch differs from today's plan.</source>
        <translation type="unfinished">Walang batch na iba sa plano ngayon.</translation>
    </message>
    <message>
        <source>No batch is still to be sown that this is for.</source>
        <translation type="unfinished">Wala nang ihahasik na batch na para rito.</translation>
    </message>
    <message>
        <source>No batch of this crop is sown from that day on that is not locked.</source>
        <translation type="unfinished">Walang batch ng pananim na ito mula araw na iyon na hindi naka-lock.</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation type="unfinished">Wala pang batch</translation>
    </message>
    <message>
        <source>No bed yet</source>
        <translation type="unfinished">Wala pang kama</translation>
    </message>
    <message>
        <source>No beds yet. Add one in the menu Set-up, and every hole of it is drawn here.</source>
        <translation type="unfinished">Wala pang kama. Magdagdag sa menung Ayos, at iguguhit dito ang bawat butas.</translation>
    </message>
    <message>
        <source>No beds yet. Every raft, block and tray gets a row here.</source>
        <translation type="unfinished">Wala pang kama. May hanay dito ang bawat lutang, bloke at tray.</translation>
    </message>
    <message>
        <source>No change of the plan was found that helps. Look at it in the lanes.</source>
        <translation type="unfinished">Walang nakitang pagbabago sa plano na makatutulong. Tingnan ito sa mga lane.</translation>
    </message>
    <message>
        <source>No climate is entered for {name}; book durations apply.</source>
        <translation type="unfinished">Walang klimang nailagay para sa {name}; araw ng libro ang gamit.</translation>
    </message>
    <message>
        <source>No dose yet. Add one of what you have; how much of it is asked for is told from then on.</source>
        <translation type="unfinished">Wala pang dosis. Magdagdag ng mayroon ka; mula noon ay sasabihin kung gaano karami ang kailangan.</translation>
    </message>
    <message>
        <source>No effect on pH.</source>
        <translation type="unfinished">Walang epekto sa pH.</translation>
    </message>
    <message>
        <source>No figure of the program that went in comes from this publication.</source>
        <translation type="unfinished">Walang bilang ng programang ginamit dito na galing sa lathalaing ito.</translation>
    </message>
    <message>
        <source>No figure of the program went in: only the formula is checked.</source>
        <translation type="unfinished">Walang bilang ng programang ginamit: ang pormula lamang ang sinusuri.</translation>
    </message>
    <message>
        <source>No fish are stocked in this loop yet: stock fish first.</source>
        <translation type="unfinished">Wala pang isda sa loop na ito: maglagay muna ng isda.</translation>
    </message>
    <message>
        <source>No fish of {group} within the plan</source>
        <translation type="unfinished">Walang isda ng {group} sa loob ng plano</translation>
    </message>
    <message>
        <source>No fish yet</source>
        <translation type="unfinished">Wala pang isda</translation>
    </message>
    <message>
        <source>No harvest of a whole group is planned. Plan one on the page of the fish.</source>
        <translation type="unfinished">Walang planong ani ng buong grupo. Magplano nito sa pahina ng isda.</translation>
    </message>
    <message>
        <source>No loop of water yet</source>
        <translation type="unfinished">Wala pang loop ng tubig</translation>
    </message>
    <message>
        <source>No loop of water yet. Its fish and their feed are shown here.</source>
        <translation type="unfinished">Wala pang loop ng tubig. Makikita rito ang isda at pakain nito.</translation>
    </message>
    <message>
        <source>No loop of water yet. What its fish supply and its plants want is weighed here.</source>
        <translation type="unfinished">Wala pang loop ng tubig. Dito tinitimbang ang bigay ng isda at ang kailangan ng halaman.</translation>
    </message>
    <message>
        <source>No meter yet. Add one, and you are told when it must be calibrated.</source>
        <translation type="unfinished">Wala pang panukat. Magdagdag ng isa, at sasabihan ka kung kailan ito dapat i-calibrate.</translation>
    </message>
    <message>
        <source>No number is in hand: choose one in a table or a chart and ask again.</source>
        <translation type="unfinished">Walang napiling numero: pumili ng isa sa talaan o tsart at magtanong muli.</translation>
    </message>
    <message>
        <source>No plan can be better: this is proven.</source>
        <translation type="unfinished">Wala nang planong mas mahusay: napatunayan ito.</translation>
    </message>
    <message>
        <source>No plan could be made: {why}</source>
        <translation type="unfinished">Hindi makagawa ng plano: {why}</translation>
    </message>
    <message>
        <source>No plan is worth more than</source>
        <translation type="unfinished">Walang planong mas mahalaga sa</translation>
    </message>
    <message>
        <source>No repair feeds fish above what they eat, fills a tank over its limit, or changes what lies in the past.</source>
        <translation type="unfinished">Walang ayos na nagpapakain nang higit sa kinakain ng isda, nagpupuno ng tangke nang lampas sa hangganan, o bumabago sa nakaraan.</translation>
    </message>
    <message>
        <source>No room in {bed}: {needed} places needed, {free} free.</source>
        <translation type="unfinished">Walang lugar sa {bed}: {needed} puwesto ang kailangan, {free} ang bakante.</translation>
    </message>
    <message>
        <source>No scenario yet. Try a change on the left, or keep a proposal of another section to compare. The farm stays as it is until you adopt one.</source>
        <translation type="unfinished">Wala pang scenario. Subukan ang isang pagbabago sa kaliwa, o itabi ang mungkahi ng ibang bahagi para ihambing. Hindi nagbabago ang farm hanggang tanggapin mo ang isa.</translation>
    </message>
    <message>
        <source>No seed lot yet. Add one, and its germination tests are reckoned with.</source>
        <translation type="unfinished">Wala pang lote ng binhi. Magdagdag ng isa, at isasama sa kuwenta ang mga pagsubok ng pagtubo nito.</translation>
    </message>
    <message>
        <source>No sowings could be worked out: {why}</source>
        <translation type="unfinished">Walang makuwentang hasik: {why}</translation>
    </message>
    <message>
        <source>No target asks for anything in these weeks, so there is nothing to plan.</source>
        <translation type="unfinished">Walang target sa mga linggong ito, kaya walang ipaplano.</translation>
    </message>
    <message>
        <source>No water yet</source>
        <translation type="unfinished">Wala pang tubig</translation>
    </message>
    <message>
        <source>No way keeps within the band of feed that the beds need: there is more fish than the beds use.</source>
        <translation type="unfinished">Walang paraang pasok sa saklaw ng pakain na kailangan ng mga kama: mas marami ang isda kaysa magagamit ng kama.</translation>
    </message>
    <message>
        <source>No way reaches the band of feed that the beds need: the tanks hold too few fish for them. A larger tank, fewer beds or a supplement would close the gap.</source>
        <translation type="unfinished">Walang paraang umaabot sa saklaw ng pakain na kailangan ng mga kama: kulang ang isda sa tangke. Mas malaking tangke, mas kaunting kama o suplemento ang pupuno.</translation>
    </message>
    <message>
        <source>No week from today on is flagged: what the plan asks for is supplied, and fits.</source>
        <translation type="unfinished">Walang linggong may babala mula ngayon: may supply at kasya ang hinihingi ng plano.</translation>
    </message>
    <message>
        <source>No word here is in the list of words.</source>
        <translation type="unfinished">Walang salita rito na nasa listahan.</translation>
    </message>
    <message>
        <source>No work on</source>
        <translation type="unfinished">Walang trabaho sa</translation>
    </message>
    <message>
        <source>No work on {day}</source>
        <translation type="unfinished">Walang trabaho sa {day}</translation>
    </message>
    <message>
        <source>No: this loop cannot carry {area} m² more.</source>
        <translation type="unfinished">Hindi: hindi kaya ng loop ang {area} m² pa.</translation>
    </message>
    <message>
        <source>Nobody has told what this product holds, so it counts for nothing. Enter the label's analysis as an entry of your own before relying on it.</source>
        <translation type="unfinished">Walang nagsabi kung ano ang laman ng produktong ito, kaya hindi ito binibilang. Ilagay ang analysis sa etiketa bilang sarili mong entry bago umasa rito.</translation>
    </message>
    <message>
        <source>Nobody with vomiting, diarrhoea or jaundice handles food. Cover cuts: fish spines and tank water infect wounds. Test the water as planned.</source>
        <translation type="unfinished">Walang nagsusuka, nagtatae o naninilaw ang hahawak ng pagkain. Takpan ang sugat: nakakaimpeksiyon ang tinik ng isda at tubig ng tangke. Suriin ang tubig ayon sa plano.</translation>
    </message>
    <message>
        <source>Not computed</source>
        <translation type="unfinished">Hindi nakalkula</translation>
    </message>
    <message>
        <source>Not kept, for the plan as it stands does not allow it. Move or shorten what is named, then keep the value.
{faults}</source>
        <translation type="unfinished">Hindi na-save dahil hindi puwede sa plano ngayon. Ilipat o paikliin ang binanggit, saka itabi ang halaga.
{faults}</translation>
    </message>
    <message>
        <source>Not known: the days of the book</source>
        <translation type="unfinished">Hindi alam: ang mga araw ng katalogo</translation>
    </message>
    <message>
        <source>Not saved: {why}</source>
        <translation type="unfinished">Hindi na-save: {why}</translation>
    </message>
    <message>
        <source>Not weighed for {days} days: weight and feed are a guess that grows with each. Weigh {low} to {high} fish and enter the sample.</source>
        <translation type="unfinished">{days} araw nang hindi natitimbang: hula na lang ang bigat at pakain, at lumalaki ang mali araw-araw. Magtimbang ng {low} hanggang {high} isda at ilagay ang sample.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Tala</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation type="unfinished">Itinala</translation>
    </message>
    <message>
        <source>Noted at</source>
        <translation type="unfinished">Itinala noong</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Mga tala</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished">Wala</translation>
    </message>
    <message>
        <source>Nothing brings {element} to {loop}, so it is left out of the balance.</source>
        <translation type="unfinished">Walang nagdadala ng {element} sa {loop}, kaya hindi ito kasama sa balanse.</translation>
    </message>
    <message>
        <source>Nothing differs from today's plan.</source>
        <translation type="unfinished">Walang kaibhan sa plano ngayon.</translation>
    </message>
    <message>
        <source>Nothing has been copied yet. Choose batches and copy them first.</source>
        <translation type="unfinished">Wala pang nakopya. Pumili muna ng batch at kopyahin.</translation>
    </message>
    <message>
        <source>Nothing here is called “{typed}”. Try fewer letters.</source>
        <translation type="unfinished">Walang “{typed}” dito. Subukan ang mas kaunting titik.</translation>
    </message>
    <message>
        <source>Nothing in the plan moves by it.</source>
        <translation type="unfinished">Walang gagalaw sa plano.</translation>
    </message>
    <message>
        <source>Nothing in this week asks for a repair.</source>
        <translation type="unfinished">Walang kailangang ayusin sa linggong ito.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation type="unfinished">Walang gagawin.</translation>
    </message>
    <message>
        <source>Nothing is late. What was due and is not logged stands here, once there is a log.</source>
        <translation type="unfinished">Walang nahuhuli. Lalabas dito ang dapat nang nagawa pero hindi pa naitala, kapag may talaan na.</translation>
    </message>
    <message>
        <source>Nothing is logged yet, so there is nothing to repeat.</source>
        <translation type="unfinished">Wala pang naitatala, kaya walang mauulit.</translation>
    </message>
    <message>
        <source>Nothing is logged yet. Say above what happened, to what and how much, then press “Log it”.</source>
        <translation type="unfinished">Wala pang naitala. Sabihin sa itaas kung ano ang nangyari, sa ano at gaano, saka pindutin ang “Itala”.</translation>
    </message>
    <message>
        <source>Nothing is moved to a bed in these weeks, so there is no tag to print.</source>
        <translation type="unfinished">Walang ililipat-tanim sa mga linggong ito, kaya walang tag na ipi-print.</translation>
    </message>
    <message>
        <source>Nothing is needed: nothing is sown, fed or dosed in these months.</source>
        <translation type="unfinished">Walang kailangan: walang hasik, pakain o dosis sa mga buwang ito.</translation>
    </message>
    <message>
        <source>Nothing is planned after that.</source>
        <translation type="unfinished">Walang plano pagkatapos nito.</translation>
    </message>
    <message>
        <source>Nothing is sown in these weeks, so there is no label to print.</source>
        <translation type="unfinished">Walang hasik sa mga linggong ito, kaya walang label na ipi-print.</translation>
    </message>
    <message>
        <source>Nothing is to be sown.</source>
        <translation type="unfinished">Walang ihahasik.</translation>
    </message>
    <message>
        <source>Nothing is wanted yet. Add a target: so much of a crop each week.</source>
        <translation type="unfinished">Wala pang hinihingi. Magdagdag ng target: ganito karaming pananim bawat linggo.</translation>
    </message>
    <message>
        <source>Nothing more is to be known of this proposal.</source>
        <translation type="unfinished">Wala nang dapat malaman sa mungkahing ito.</translation>
    </message>
    <message>
        <source>Nothing on the farm has a price yet.</source>
        <translation type="unfinished">Wala pang may presyo sa farm.</translation>
    </message>
    <message>
        <source>Nothing that is wanted can be sown in these weeks and be picked before they end.</source>
        <translation type="unfinished">Walang hinihingi na maihahasik sa mga linggong ito at maaani bago matapos.</translation>
    </message>
    <message>
        <source>Nothing this week</source>
        <translation type="unfinished">Wala ngayong linggo</translation>
    </message>
    <message>
        <source>Nothing to compare yet: log when batches are sown, moved and picked.</source>
        <translation type="unfinished">Wala pang maihahambing: itala kung kailan inihasik, inilipat at inani ang mga batch.</translation>
    </message>
    <message>
        <source>Nothing to log yet</source>
        <translation type="unfinished">Wala pang maitatala</translation>
    </message>
    <message>
        <source>Nothing to plan with yet</source>
        <translation type="unfinished">Wala pang mapaplano</translation>
    </message>
    <message>
        <source>Nothing to weigh yet</source>
        <translation type="unfinished">Wala pang matitimbang</translation>
    </message>
    <message>
        <source>Nothing was kept yet, and nothing typed is lost.</source>
        <translation type="unfinished">Wala pang naitago, at walang nawalang tina-type.</translation>
    </message>
    <message>
        <source>Nothing was learned yet: it comes from the logged stages of batches.</source>
        <translation type="unfinished">Wala pang natutuhan: galing ito sa mga naitalang yugto ng mga batch.</translation>
    </message>
    <message>
        <source>Nothing was taken up. {why}</source>
        <translation type="unfinished">Walang ginamit. {why}</translation>
    </message>
    <message>
        <source>Nothing was typed yet.</source>
        <translation type="unfinished">Wala pang na-type.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished">Bilang</translation>
    </message>
    <message>
        <source>Number of fish</source>
        <translation type="unfinished">Bilang ng isda</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation type="unfinished">Mga numero</translation>
    </message>
    <message>
        <source>Nursery</source>
        <translation type="unfinished">Punlaan</translation>
    </message>
    <message>
        <source>Nursery cells free</source>
        <translation type="unfinished">Bakanteng selda sa punlaan</translation>
    </message>
    <message>
        <source>Nursery trays</source>
        <translation type="unfinished">Tray ng punlaan</translation>
    </message>
    <message>
        <source>Nursery: at least {free} of {cells} cells stay free, in {week}.</source>
        <translation type="unfinished">Punlaan: kahit {free} sa {cells} selda ang bakante, sa {week}.</translation>
    </message>
    <message>
        <source>Nutrient hole</source>
        <translation type="unfinished">Butas sa sustansiya</translation>
    </message>
    <message>
        <source>Nutrients</source>
        <translation type="unfinished">Sustansiya</translation>
    </message>
    <message>
        <source>Nutrients, by the feed of every month; flow, by the points of the pump at the new head; filter and oxygen; light, power and structure. A no decides; then what is unknown.</source>
        <translation type="unfinished">Sustansiya, ayon sa pakain ng bawat buwan; agos, ayon sa mga punto ng bomba sa bagong taas; filter at oksiheno; liwanag, kuryente at istruktura. Ang hindi ang nagpapasiya; saka ang hindi alam.</translation>
    </message>
    <message>
        <source>O (letter of days off feed)</source>
        <translation type="unfinished">W</translation>
    </message>
    <message>
        <source>Occupancy</source>
        <translation type="unfinished">Okupado</translation>
    </message>
    <message>
        <source>October–December</source>
        <translation type="unfinished">Oktubre–Disyembre</translation>
    </message>
    <message>
        <source>Of a hundred seeds, how many come up; each packet has its own.</source>
        <translation type="unfinished">Sa isang daang binhi, ilan ang tumutubo; iba bawat pakete.</translation>
    </message>
    <message>
        <source>Of all that is wanted {missed} % is missed, {wasted} % is more than wanted, and balance costs {balance} %.</source>
        <translation type="unfinished">Sa lahat ng hinihingi, {missed} % ang kulang, {wasted} % ang sobra, at {balance} % ang bawas dahil sa balanse.</translation>
    </message>
    <message>
        <source>Of any element, against demand</source>
        <translation type="unfinished">Ng anumang elemento, kumpara sa kailangan</translation>
    </message>
    <message>
        <source>Of how many seeds</source>
        <translation type="unfinished">Sa ilang binhi</translation>
    </message>
    <message>
        <source>Of the feed at a harvest, against before</source>
        <translation type="unfinished">Ng pakain sa ani, kumpara sa dati</translation>
    </message>
    <message>
        <source>Of the loop</source>
        <translation type="unfinished">Ng loop</translation>
    </message>
    <message>
        <source>Old lot: test it. Until then more seeds are sown.</source>
        <translation type="unfinished">Lumang lote: subukin. Hangga't hindi, mas maraming binhi ang ihahasik.</translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished">Sa</translation>
    </message>
    <message>
        <source>On a chart, in the lanes and on the bed map, the right button offers the numbers of the place under it.</source>
        <translation type="unfinished">Sa tsart, sa mga guhit at sa mapa ng mga kama, iniaalok ng kanang pindutan ang mga bilang ng lugar na nasa ilalim nito.</translation>
    </message>
    <message>
        <source>On is empty; an order needs its day.</source>
        <translation type="unfinished">Walang laman ang Sa; kailangan ng order ang araw nito.</translation>
    </message>
    <message>
        <source>On the ground</source>
        <translation type="unfinished">Sa lupa</translation>
    </message>
    <message>
        <source>On the left the sections: repairs, a season, successions, stocking, what if, expansion and orders. The button Help of each tells more.</source>
        <translation type="unfinished">Nasa kaliwa ang mga seksiyon: mga ayos, isang panahon, sunod-sunod na tanim, dami ng isda, paano kung, pagpapalaki at mga order. Marami pang sinasabi ang button na Tulong ng bawat isa.</translation>
    </message>
    <message>
        <source>On the list</source>
        <translation type="unfinished">Nasa listahan</translation>
    </message>
    <message>
        <source>On {day}</source>
        <translation type="unfinished">Sa {day}</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug.</source>
        <translation type="unfinished">Isang kumpol bawat butas: bawat kumpol ang ani at siksik; i-multiply ang binhi sa bilang na inihahasik sa isang plug.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Bolts in heat and long days.</source>
        <translation type="unfinished">Isang kumpol bawat butas: bawat kumpol ang ani at siksik; i-multiply ang binhi sa bilang na inihahasik sa isang plug. Nagbubulaklak agad sa init at mahabang araw.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Second cut is sharper.</source>
        <translation type="unfinished">Isang kumpol bawat butas: bawat kumpol ang ani at siksik; i-multiply ang binhi sa bilang na inihahasik sa isang plug. Mas maanghang ang ikalawang putol.</translation>
    </message>
    <message>
        <source>One clump a hole: yields and densities are per clump; multiply the seed by the seeds sown in a plug. Slow seed: soak 24-48 h; old seed takes 2-5 weeks.</source>
        <translation type="unfinished">Isang kumpol bawat butas: bawat kumpol ang ani at siksik; i-multiply ang binhi sa bilang na inihahasik sa isang plug. Mabagal ang binhi: ibabad 24-48 oras; 2-5 linggo ang luma.</translation>
    </message>
    <message>
        <source>One fish of {group} weighs {start} g on {first} and {last} g on {end}</source>
        <translation type="unfinished">Ang isang isda ng {group} ay {start} g sa {first} at {last} g sa {end}</translation>
    </message>
    <message>
        <source>One harvest</source>
        <translation type="unfinished">Isang ani</translation>
    </message>
    <message>
        <source>One harvest, and starting up</source>
        <translation type="unfinished">Isang ani, at pagsisimula</translation>
    </message>
    <message>
        <source>One packet or delivery of seed, with its own share that germinates.</source>
        <translation type="unfinished">Isang pakete o dating ng binhi, may sariling bahaging tumutubo.</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation type="unfinished">Isang hakbang paatras</translation>
    </message>
    <message>
        <source>One step back to the seed lot, one step forward to places, harvest and readings. A lot leads to every batch sown of it: the page for a recall.</source>
        <translation type="unfinished">Isang hakbang pabalik sa lote ng binhi, isang hakbang pasulong sa mga puwesto, ani at sukat. Ang lote ay tumuturo sa bawat batch na inihasik mula rito: ang pahina para sa pagbawi.</translation>
    </message>
    <message>
        <source>One step forth</source>
        <translation type="unfinished">Isang hakbang pasulong</translation>
    </message>
    <message>
        <source>One thing has to be there before:</source>
        <translation type="unfinished">May isang bagay na kailangang mauna:</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished">Buksan ang ka&amp;makailan</translation>
    </message>
    <message>
        <source>Open a farm</source>
        <translation type="unfinished">Magbukas ng farm</translation>
    </message>
    <message>
        <source>Open a farm file</source>
        <translation type="unfinished">Buksan ang file ng farm</translation>
    </message>
    <message>
        <source>Open a farm…</source>
        <translation type="unfinished">Magbukas ng farm…</translation>
    </message>
    <message>
        <source>Open it…</source>
        <translation type="unfinished">Buksan ito…</translation>
    </message>
    <message>
        <source>Opening the farm…</source>
        <translation type="unfinished">Binubuksan ang farm…</translation>
    </message>
    <message>
        <source>Opening…</source>
        <translation type="unfinished">Binubuksan…</translation>
    </message>
    <message>
        <source>Or by a rule</source>
        <translation type="unfinished">O ayon sa tuntunin</translation>
    </message>
    <message>
        <source>Order list</source>
        <translation type="unfinished">Listahan ng order</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished">Mga order</translation>
    </message>
    <message>
        <source>Ornamental: not for the table. Remedies sold for pond fish bar the crops too.</source>
        <translation type="unfinished">Pampalamuti: hindi pang-ulam. Bawal din kainin ang pananim kapag ginamitan ng gamot na para sa isda sa pond.</translation>
    </message>
    <message>
        <source>Our range</source>
        <translation type="unfinished">Saklaw ng amin</translation>
    </message>
    <message>
        <source>Ours</source>
        <translation type="unfinished">Sa amin</translation>
    </message>
    <message>
        <source>Outer leaves picked weekly. Seeds are clusters: thin to one.</source>
        <translation type="unfinished">Pinipitas ang panlabas na dahon linggo-linggo. Kumpol ang binhi: magtira ng isa.</translation>
    </message>
    <message>
        <source>Outside the tolerance. {why}</source>
        <translation type="unfinished">Labas sa pinapayagang layo. {why}</translation>
    </message>
    <message>
        <source>Own entry</source>
        <translation type="unfinished">Sariling entry</translation>
    </message>
    <message>
        <source>Own entry: {name}</source>
        <translation type="unfinished">Sariling tala: {name}</translation>
    </message>
    <message>
        <source>Own source</source>
        <translation type="unfinished">Sariling pinagkunan</translation>
    </message>
    <message>
        <source>Own value: {name}, {label}</source>
        <translation type="unfinished">Sariling halaga: {name}, {label}</translation>
    </message>
    <message>
        <source>Own values</source>
        <translation type="unfinished">Sariling halaga</translation>
    </message>
    <message>
        <source>Owner's monthly report</source>
        <translation type="unfinished">Buwanang ulat para sa may-ari</translation>
    </message>
    <message>
        <source>Oxygen</source>
        <translation type="unfinished">Oksiheno</translation>
    </message>
    <message>
        <source>Oxygen after feeding</source>
        <translation type="unfinished">Oxygen matapos magpakain</translation>
    </message>
    <message>
        <source>Oxygen asked for</source>
        <translation type="unfinished">Oksihenong kailangan</translation>
    </message>
    <message>
        <source>Oxygen given</source>
        <translation type="unfinished">Oksihenong ibinibigay</translation>
    </message>
    <message>
        <source>Oxygen in the water; fish, roots and bacteria all breathe it.</source>
        <translation type="unfinished">Oxygen sa tubig; hinihinga ng isda, ugat at bakterya.</translation>
    </message>
    <message>
        <source>Oxygen it can hold</source>
        <translation type="unfinished">Oxygen na kayang hawakan</translation>
    </message>
    <message>
        <source>Oxygen meter</source>
        <translation type="unfinished">Panukat ng oxygen</translation>
    </message>
    <message>
        <source>P (letter of the stage picking)</source>
        <translation type="unfinished">A</translation>
    </message>
    <message>
        <source>P&amp;rint</source>
        <translation type="unfinished">I&amp;print</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation type="unfinished">I-p&amp;rint…</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished">PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation type="unfinished">Ibinalot noong</translation>
    </message>
    <message>
        <source>Packed or bought</source>
        <translation type="unfinished">Inimpake o binili</translation>
    </message>
    <message>
        <source>Page {at} of {count}</source>
        <translation type="unfinished">Pahina {at} ng {count}</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation type="unfinished">Mga pahina</translation>
    </message>
    <message>
        <source>Pages as they will be printed</source>
        <translation type="unfinished">Mga pahina gaya ng malilimbag</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished">Papel</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished">I-paste</translation>
    </message>
    <message>
        <source>Paste some weeks later…</source>
        <translation type="unfinished">I-paste pagkaraan ng ilang linggo…</translation>
    </message>
    <message>
        <source>Pellet [mm]</source>
        <translation type="unfinished">Pellet [mm]</translation>
    </message>
    <message>
        <source>Pelleted seed</source>
        <translation type="unfinished">Binalutang binhi (pelleted)</translation>
    </message>
    <message>
        <source>Phosphorus</source>
        <translation type="unfinished">Phosphorus</translation>
    </message>
    <message>
        <source>Phosphorus [mg/L]</source>
        <translation type="unfinished">Phosphorus [mg/L]</translation>
    </message>
    <message>
        <source>Phosphorus in the fish</source>
        <translation type="unfinished">Posporus sa isda</translation>
    </message>
    <message>
        <source>Phosphorus in the make-up water</source>
        <translation type="unfinished">Phosphorus sa dagdag na tubig</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation type="unfinished">Anihin</translation>
    </message>
    <message>
        <source>Pick a week less</source>
        <translation type="unfinished">Pitasin nang kulang ng isang linggo</translation>
    </message>
    <message>
        <source>Pick a week longer</source>
        <translation type="unfinished">Pitasin nang isang linggo pa</translation>
    </message>
    <message>
        <source>Pick {code}</source>
        <translation type="unfinished">Anihin ang {code}</translation>
    </message>
    <message>
        <source>Pick {code} {stretched}</source>
        <translation type="unfinished">Pitasin ang {code} {stretched}</translation>
    </message>
    <message>
        <source>Pick {many}: {code}</source>
        <translation type="unfinished">Anihin ang {many}: {code}</translation>
    </message>
    <message>
        <source>Pick, {days} d late: {code}</source>
        <translation type="unfinished">Anihin, huli ng {days} d: {code}</translation>
    </message>
    <message>
        <source>Picked</source>
        <translation type="unfinished">Naani</translation>
    </message>
    <message>
        <source>Picked part of the whole plant</source>
        <translation type="unfinished">Bahaging inani sa buong halaman</translation>
    </message>
    <message>
        <source>Picked until {day} ({moved})</source>
        <translation type="unfinished">Pipitasin hanggang {day} ({moved})</translation>
    </message>
    <message>
        <source>Picking</source>
        <translation type="unfinished">Pag-ani</translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished">Lugar</translation>
    </message>
    <message>
        <source>Place held</source>
        <translation type="unfinished">Hawak na puwesto</translation>
    </message>
    <message>
        <source>Place {batches} in {bed}</source>
        <translation type="unfinished">Ilagay ang {batches} sa {bed}</translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished">Mga puwesto</translation>
    </message>
    <message>
        <source>Places along a row</source>
        <translation type="unfinished">Puwesto sa isang hanay</translation>
    </message>
    <message>
        <source>Places are those given to each batch. Stages are worked out for the day shown; they are not records.</source>
        <translation type="unfinished">Ang mga lugar ay ang ibinigay sa bawat batch. Kinukuwenta ang yugto para sa ipinapakitang araw; hindi ito talaan.</translation>
    </message>
    <message>
        <source>Places free again</source>
        <translation type="unfinished">Bakante nang muli ang mga puwesto</translation>
    </message>
    <message>
        <source>Places in the beds and cells in the nursery on the fullest day, days without work, the minutes of work a week if you give them, and the season: a crop that would not be ready in time is not sown.</source>
        <translation type="unfinished">Mga butas sa kama at cell sa punlaan sa pinakapunong araw, mga araw na walang trabaho, minuto ng trabaho bawat linggo kung ibinigay mo, at ang panahon: hindi inihahasik ang pananim na hindi aabot sa oras.</translation>
    </message>
    <message>
        <source>Places of the beds</source>
        <translation type="unfinished">Mga puwesto ng mga kama</translation>
    </message>
    <message>
        <source>Places of {code} free: {change}, {days}</source>
        <translation type="unfinished">Bakante ang mga puwesto ng {code}: {change}, {days}</translation>
    </message>
    <message>
        <source>Placing the sowings…</source>
        <translation type="unfinished">Binibigyan ng puwesto ang mga hasik…</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plano</translation>
    </message>
    <message>
        <source>Plan a dose: {grams} g {name}</source>
        <translation type="unfinished">Iplano ang dosis: {grams} g {name}</translation>
    </message>
    <message>
        <source>Plan a new batch of plants</source>
        <translation type="unfinished">Magplano ng bagong batch ng halaman</translation>
    </message>
    <message>
        <source>Plan a new fish group</source>
        <translation type="unfinished">Magplano ng bagong grupo ng isda</translation>
    </message>
    <message>
        <source>Plan begins</source>
        <translation type="unfinished">Simula ng plano</translation>
    </message>
    <message>
        <source>Plan mark</source>
        <translation type="unfinished">Marka ng plano</translation>
    </message>
    <message>
        <source>Plan these crops anew from then on</source>
        <translation type="unfinished">Iplanong muli ang mga pananim na ito mula noon</translation>
    </message>
    <message>
        <source>Plan this dose</source>
        <translation type="unfinished">Iplano ang dosis na ito</translation>
    </message>
    <message>
        <source>Plan {mark}</source>
        <translation type="unfinished">Plano {mark}</translation>
    </message>
    <message>
        <source>Planned [d]</source>
        <translation type="unfinished">Plano [d]</translation>
    </message>
    <message>
        <source>Planned against actual</source>
        <translation type="unfinished">Plano laban sa aktuwal</translation>
    </message>
    <message>
        <source>Planned harvest</source>
        <translation type="unfinished">Planong ani</translation>
    </message>
    <message>
        <source>Plant meals: less phosphorus and calcium.</source>
        <translation type="unfinished">Galing sa halaman: mas kaunting phosphorus at calcium.</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation type="unfinished">May tanim</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation type="unfinished">Halaman</translation>
    </message>
    <message>
        <source>Plants at the middle spacing</source>
        <translation type="unfinished">Mga halaman sa gitnang pagitan</translation>
    </message>
    <message>
        <source>Plants in the bed</source>
        <translation type="unfinished">Halaman sa kama</translation>
    </message>
    <message>
        <source>Plants in the nursery</source>
        <translation type="unfinished">Mga halaman sa punlaan</translation>
    </message>
    <message>
        <source>Plants of the new batch</source>
        <translation type="unfinished">Halaman ng bagong batch</translation>
    </message>
    <message>
        <source>Plants over germination and survival, rounded up</source>
        <translation type="unfinished">Halaman ÷ pagtubo at pagkabuhay, pataas ang round</translation>
    </message>
    <message>
        <source>Plants sown together, from the seed to the cleared place.</source>
        <translation type="unfinished">Mga halamang sabay inihasik, mula binhi hanggang mahawan ang puwesto.</translation>
    </message>
    <message>
        <source>Plants without a place</source>
        <translation type="unfinished">Halamang walang lugar</translation>
    </message>
    <message>
        <source>Plants ÷ share that comes up ÷ share that lives, rounded up to whole pots. Choose a sowing to see its own numbers.</source>
        <translation type="unfinished">Halaman ÷ bahaging tumutubo ÷ bahaging nabubuhay, pinataas sa buong paso. Pumili ng paghahasik para makita ang sarili nitong bilang.</translation>
    </message>
    <message>
        <source>Plus and minus zoom, Ctrl+T goes to today, Ctrl+Z takes the last act back, Ctrl+M shows what it moved and why.</source>
        <translation type="unfinished">Plus at minus ang zoom, Ctrl+T ang papunta sa ngayon, binabawi ng Ctrl+Z ang huling ginawa, ipinakikita ng Ctrl+M kung ano ang nalipat nito at bakit.</translation>
    </message>
    <message>
        <source>Pods 4-6 d after the flower wilts; skin irritates, wear sleeves.</source>
        <translation type="unfinished">Bunga 4-6 araw matapos malanta ang bulaklak; nakakakati sa balat, magsuot ng manggas.</translation>
    </message>
    <message>
        <source>Poor above pH 6.5 and not liked in fish water.</source>
        <translation type="unfinished">Mahina sa higit pH 6.5 at hindi gusto sa tubig na may isda.</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation type="unfinished">Potassium</translation>
    </message>
    <message>
        <source>Potassium [mg/L]</source>
        <translation type="unfinished">Potassium [mg/L]</translation>
    </message>
    <message>
        <source>Potassium and calcium hydroxide burn skin and blind eyes. Wear goggles, gloves and long sleeves. Stir the base into plenty of cold water, never water onto base: it heats and spits. No aluminium or galvanised buckets. Give small doses away from the fish, wait, test again. Check ammonia before raising pH. Store locked and labelled, away from acids and children. On eyes or skin: rinse 15 minutes with water and get medical help. Prefer carbonate or bicarbonate where it will do.</source>
        <translation type="unfinished">Nakakasunog ng balat at nakakabulag ang potassium at calcium hydroxide. Magsuot ng goggles, guwantes at mahabang manggas. Haluin ang base sa maraming malamig na tubig, huwag kailanman tubig sa base: umiinit at tumatalsik ito. Huwag gumamit ng aluminyo o yero na balde. Magbigay ng maliit na dosis malayo sa isda, maghintay, sumuri muli. Tingnan ang ammonia bago itaas ang pH. Itago nang nakakandado at may etiketa, malayo sa asido at bata. Kapag napunta sa mata o balat: banlawan ng tubig nang 15 minuto at humingi ng tulong medikal. Mas mainam ang carbonate o bicarbonate kung sapat.</translation>
    </message>
    <message>
        <source>Potassium in the fish</source>
        <translation type="unfinished">Potasyo sa isda</translation>
    </message>
    <message>
        <source>Potassium in the make-up water</source>
        <translation type="unfinished">Potassium sa dagdag na tubig</translation>
    </message>
    <message>
        <source>Pour acid into water, never the other way, and never near bases. Acid is no routine in aquaponics: look for the cause of a high pH first.</source>
        <translation type="unfinished">Ibuhos ang asido sa tubig, huwag kailanman baligtad, at huwag malapit sa base. Hindi karaniwan ang asido sa aquaponics: hanapin muna ang sanhi ng mataas na pH.</translation>
    </message>
    <message>
        <source>Power cut</source>
        <translation type="unfinished">Brownout</translation>
    </message>
    <message>
        <source>Power of new lamps</source>
        <translation type="unfinished">Lakas ng bagong ilaw</translation>
    </message>
    <message>
        <source>Power of new pumps</source>
        <translation type="unfinished">Lakas ng bagong bomba</translation>
    </message>
    <message>
        <source>Power to spare</source>
        <translation type="unfinished">Reserbang kuryente</translation>
    </message>
    <message>
        <source>Press the same button again to accept.</source>
        <translation type="unfinished">Pindutin muli ang parehong buton para tanggapin.</translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished">Presyo</translation>
    </message>
    <message>
        <source>Price of {what}</source>
        <translation type="unfinished">Presyo ng {what}</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation type="unfinished">Mga presyo</translation>
    </message>
    <message>
        <source>Primed seed</source>
        <translation type="unfinished">Primed na binhi</translation>
    </message>
    <message>
        <source>Primed seed keeps less long: test it. More seeds are sown.</source>
        <translation type="unfinished">Mas maikli ang buhay ng primed na binhi: subukin. Mas maraming binhi ang ihahasik.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished">I-print</translation>
    </message>
    <message>
        <source>Print a map of the beds</source>
        <translation type="unfinished">Mag-print ng mapa ng mga kama</translation>
    </message>
    <message>
        <source>Print or save as PDF: calendars, task sheets, maps, logs, cards, reports</source>
        <translation type="unfinished">I-print o i-save sa PDF: kalendaryo, gawain, mapa, talaan, kard, ulat</translation>
    </message>
    <message>
        <source>Print the calendar…</source>
        <translation type="unfinished">I-print ang kalendaryo…</translation>
    </message>
    <message>
        <source>Print the shopping list</source>
        <translation type="unfinished">I-print ang listahan ng bibilhin</translation>
    </message>
    <message>
        <source>Printing…</source>
        <translation type="unfinished">Nagpi-print…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished">I-print…</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation type="unfinished">Pagkapribado</translation>
    </message>
    <message>
        <source>Produce records</source>
        <translation type="unfinished">Talaan ng ani</translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished">Produkto</translation>
    </message>
    <message>
        <source>Proposal</source>
        <translation type="unfinished">Mungkahi</translation>
    </message>
    <message>
        <source>Protein in the feed</source>
        <translation type="unfinished">Protina sa pakain</translation>
    </message>
    <message>
        <source>Proving how good a plan can be at most…</source>
        <translation type="unfinished">Pinatutunayan kung gaano kahusay ang posibleng plano…</translation>
    </message>
    <message>
        <source>Published</source>
        <translation type="unfinished">Nailathala</translation>
    </message>
    <message>
        <source>Published cases</source>
        <translation type="unfinished">Mga nailathalang kaso</translation>
    </message>
    <message>
        <source>Purge</source>
        <translation type="unfinished">Purge</translation>
    </message>
    <message>
        <source>Purge table fish some days in clean water without feed, chill them at once, and check whether selling fish needs a licence.</source>
        <translation type="unfinished">Linisin ang isdang kakainin nang ilang araw sa malinis na tubig na walang pakain, palamigin agad, at alamin kung kailangan ng lisensiya ang pagbebenta ng isda.</translation>
    </message>
    <message>
        <source>Put mine in</source>
        <translation type="unfinished">Ilagay ang akin</translation>
    </message>
    <message>
        <source>Put the farm back as it was on a day</source>
        <translation type="unfinished">Ibalik ang farm sa dati nitong ayos sa isang araw</translation>
    </message>
    <message>
        <source>Put the farm's targets on the list</source>
        <translation type="unfinished">Ilagay sa listahan ang mga target ng farm</translation>
    </message>
    <message>
        <source>Put the rows on the clipboard, for a spreadsheet</source>
        <translation type="unfinished">Ilagay ang mga hanay sa clipboard, para sa spreadsheet</translation>
    </message>
    <message>
        <source>Put this away</source>
        <translation type="unfinished">Itabi ito</translation>
    </message>
    <message>
        <source>Puts one dose into the plan; Undo takes it out</source>
        <translation type="unfinished">Naglalagay ng isang dosis sa plano; inaalis ito ng I-undo</translation>
    </message>
    <message>
        <source>Q{number} (short for quarter)</source>
        <translation type="unfinished">Q{number}</translation>
    </message>
    <message>
        <source>Raft</source>
        <translation type="unfinished">Lutang</translation>
    </message>
    <message>
        <source>Raft tags</source>
        <translation type="unfinished">Tag ng lutang</translation>
    </message>
    <message>
        <source>Raft, block or tray</source>
        <translation type="unfinished">Lutang, bloke o tray</translation>
    </message>
    <message>
        <source>Rafts</source>
        <translation type="unfinished">Mga lutang</translation>
    </message>
    <message>
        <source>Rafts, a gravel bed or nursery trays that lie together.</source>
        <translation type="unfinished">Mga lutang, kamang graba o tray ng punlaan na magkakatabi.</translation>
    </message>
    <message>
        <source>Rafts, blocks or trays</source>
        <translation type="unfinished">Lutang, bloke o tray</translation>
    </message>
    <message>
        <source>Raftweek plans small coupled aquaponic loops: what to sow, move and pick each week, so that the harvest is steady and what the crops take up stays matched to what the fish are fed.</source>
        <translation type="unfinished">Nagpaplano ang Raftweek ng maliliit na loop ng aquaponics: ano ang ihahasik, ililipat at aanihin bawat linggo, para tuloy-tuloy ang ani at tugma ang kinukuha ng pananim sa pakain ng isda.</translation>
    </message>
    <message>
        <source>Rain, by month</source>
        <translation type="unfinished">Ulan, bawat buwan</translation>
    </message>
    <message>
        <source>Ration</source>
        <translation type="unfinished">Rasyon</translation>
    </message>
    <message>
        <source>Ration set by</source>
        <translation type="unfinished">Batayan ng rasyon</translation>
    </message>
    <message>
        <source>Re&amp;move what is chosen…</source>
        <translation type="unfinished">&amp;Alisin ang napili…</translation>
    </message>
    <message>
        <source>Read the label: minerals differ from maker to maker.</source>
        <translation type="unfinished">Basahin ang etiketa: magkakaiba ang mineral sa bawat gumagawa.</translation>
    </message>
    <message>
        <source>Reading the cases…</source>
        <translation type="unfinished">Binabasa ang mga kaso…</translation>
    </message>
    <message>
        <source>Reading the season…</source>
        <translation type="unfinished">Binabasa ang panahon…</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished">Mga suri</translation>
    </message>
    <message>
        <source>Readings and doses, and what the water asks for</source>
        <translation type="unfinished">Mga basa at dosis, at hinihingi ng tubig</translation>
    </message>
    <message>
        <source>Readings are what you entered. Doses are worked out from them and from the volume of the loop. Bases are caustic: read the caution at the dose, and test again before the next.</source>
        <translation type="unfinished">Ang mga sukat ay ang inilagay mo. Kinukuwenta ang dosis mula sa mga ito at sa dami ng tubig ng loop. Nakakasunog ang mga base: basahin ang babala sa dosis, at sumuri muli bago ang susunod.</translation>
    </message>
    <message>
        <source>Readings of the water</source>
        <translation type="unfinished">Mga suri ng tubig</translation>
    </message>
    <message>
        <source>Readings or batches from a table (CSV)</source>
        <translation type="unfinished">Mga suri o batch mula sa talaan (CSV)</translation>
    </message>
    <message>
        <source>Readings, doses and what the water asks for stand here, for each loop of water.</source>
        <translation type="unfinished">Narito ang mga basa, dosis at hinihingi ng tubig ng bawat sistema.</translation>
    </message>
    <message>
        <source>Ready at {weight}</source>
        <translation type="unfinished">Handa sa {weight}</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation type="unfinished">Handa sa</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished">Dahilan</translation>
    </message>
    <message>
        <source>Recent farms</source>
        <translation type="unfinished">Mga kamakailang farm</translation>
    </message>
    <message>
        <source>Reckoning the loop with these beds…</source>
        <translation type="unfinished">Kinukuwenta ang loop kasama ang mga kamang ito…</translation>
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished">Mga talaan</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished">Ulitin</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished">Alisin</translation>
    </message>
    <message>
        <source>Remove all of it</source>
        <translation type="unfinished">Alisin lahat</translation>
    </message>
    <message>
        <source>Remove reading of {quantity}, {on}</source>
        <translation type="unfinished">Alisin ang sukat ng {quantity}, {on}</translation>
    </message>
    <message>
        <source>Remove the chosen target</source>
        <translation type="unfinished">Alisin ang napiling target</translation>
    </message>
    <message>
        <source>Remove the target for {crop}</source>
        <translation type="unfinished">Alisin ang target para sa {crop}</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished">Alisin ang {name}</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation type="unfinished">Pag-aayos</translation>
    </message>
    <message>
        <source>Repairs, a season worked out, stocking, what if, orders</source>
        <translation type="unfinished">Pag-aayos, plano sa buong panahon, paglalagay ng isda, paano kung, order</translation>
    </message>
    <message>
        <source>Repeat every</source>
        <translation type="unfinished">Ulitin tuwing</translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished">Ulat</translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished">Ibalik</translation>
    </message>
    <message>
        <source>Return the liquor of solids batch {solids} on {on}</source>
        <translation type="unfinished">Ibalik ang katas ng batch ng latak na {solids} sa {on}</translation>
    </message>
    <message>
        <source>Rows of places</source>
        <translation type="unfinished">Mga hanay ng puwesto</translation>
    </message>
    <message>
        <source>Rows that cannot be taken</source>
        <translation type="unfinished">Mga hanay na hindi matanggap</translation>
    </message>
    <message>
        <source>Ruler of weeks</source>
        <translation type="unfinished">Ruler ng mga linggo</translation>
    </message>
    <message>
        <source>S (letter of fish stocked)</source>
        <translation type="unfinished">L</translation>
    </message>
    <message>
        <source>S (letter of the band short)</source>
        <translation type="unfinished">K</translation>
    </message>
    <message>
        <source>S (letter of the stage spacing)</source>
        <translation type="unfinished">G</translation>
    </message>
    <message>
        <source>S&amp;earch everything…</source>
        <translation type="unfinished">&amp;Hanapin sa lahat…</translation>
    </message>
    <message>
        <source>S&amp;quare code of the batch</source>
        <translation type="unfinished">Parisu&amp;kat na code ng batch</translation>
    </message>
    <message>
        <source>S&amp;tock fish…</source>
        <translation type="unfinished">Mag&amp;lagay ng isda…</translation>
    </message>
    <message>
        <source>Sa&amp;ve ink</source>
        <translation type="unfinished">Magtipi&amp;d sa tinta</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished">Asin</translation>
    </message>
    <message>
        <source>Salts</source>
        <translation type="unfinished">Mga asin</translation>
    </message>
    <message>
        <source>Same agai&amp;n next week</source>
        <translation type="unfinished">Gani&amp;to ulit sa susunod na linggo</translation>
    </message>
    <message>
        <source>Same again next week</source>
        <translation type="unfinished">Ganito ulit sa susunod na linggo</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">Sabado</translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished">I-save</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation type="unfinished">Mag-save ng k&amp;opya…</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation type="unfinished">Mag-save ng kopya</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation type="unfinished">I-save bilang P&amp;DF…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished">I-save bilang PDF</translation>
    </message>
    <message>
        <source>Save as a table</source>
        <translation type="unfinished">I-save bilang talaan</translation>
    </message>
    <message>
        <source>Save the cases that are shown as a table (CSV) for a spreadsheet</source>
        <translation type="unfinished">I-save ang mga kasong ipinapakita bilang talaan (CSV) para sa spreadsheet</translation>
    </message>
    <message>
        <source>Say above what a level scoop holds, or write the grams.</source>
        <translation type="unfinished">Sabihin sa itaas ang laman ng isang patag na sandok, o isulat ang gramo.</translation>
    </message>
    <message>
        <source>Say how each figure changes, and why</source>
        <translation type="unfinished">Sabihin kung paano nagbabago ang bawat bilang, at bakit</translation>
    </message>
    <message>
        <source>Say how good this is, and what that is made of</source>
        <translation type="unfinished">Sabihin kung gaano ito kahusay, at ano ang bumubuo nito</translation>
    </message>
    <message>
        <source>Say what you want and when; sowings are counted back from there through a season in which a crop does not take the same days all year, and get their places.</source>
        <translation type="unfinished">Sabihin kung ano ang gusto mo at kailan; binibilang pabalik ang hasik, kahit iba-iba ang araw ng pananim sa loob ng taon, at binibigyan ng puwesto.</translation>
    </message>
    <message>
        <source>Say where the figures of this verdict come from</source>
        <translation type="unfinished">Sabihin kung saan galing ang mga bilang ng hatol na ito</translation>
    </message>
    <message>
        <source>Scenario</source>
        <translation type="unfinished">Scenario</translation>
    </message>
    <message>
        <source>Scenario A</source>
        <translation type="unfinished">Senaryo A</translation>
    </message>
    <message>
        <source>Scenarios</source>
        <translation type="unfinished">Mga senaryo</translation>
    </message>
    <message>
        <source>Scenarios compared</source>
        <translation type="unfinished">Mga scenario na inihahambing</translation>
    </message>
    <message>
        <source>Scoop</source>
        <translation type="unfinished">Takal</translation>
    </message>
    <message>
        <source>Scoops</source>
        <translation type="unfinished">Takal</translation>
    </message>
    <message>
        <source>Scouting sheet</source>
        <translation type="unfinished">Talaan ng peste at sakit</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation type="unfinished">Salaan</translation>
    </message>
    <message>
        <source>Search batches</source>
        <translation type="unfinished">Maghanap ng batch</translation>
    </message>
    <message>
        <source>Search batches: code, crop, bed, month…</source>
        <translation type="unfinished">Maghanap ng batch: code, pananim, kama, buwan…</translation>
    </message>
    <message>
        <source>Search cases</source>
        <translation type="unfinished">Maghanap ng kaso</translation>
    </message>
    <message>
        <source>Search cases: words, source, inputs…</source>
        <translation type="unfinished">Maghanap ng kaso: salita, pinagkunan, mga ipinasok…</translation>
    </message>
    <message>
        <source>Search everything</source>
        <translation type="unfinished">Hanapin sa lahat</translation>
    </message>
    <message>
        <source>Search for at most</source>
        <translation type="unfinished">Maghanap nang hanggang</translation>
    </message>
    <message>
        <source>Search the words</source>
        <translation type="unfinished">Hanapin sa mga salita</translation>
    </message>
    <message>
        <source>Searching exactly…</source>
        <translation type="unfinished">Naghahanap nang eksakto…</translation>
    </message>
    <message>
        <source>Searching for a better plan…</source>
        <translation type="unfinished">Naghahanap ng mas mahusay na plano…</translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished">Panahon</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation type="unfinished">Plano sa panahon</translation>
    </message>
    <message>
        <source>Second lan&amp;guage</source>
        <translation type="unfinished">Ikalawang &amp;wika</translation>
    </message>
    <message>
        <source>Second language</source>
        <translation type="unfinished">Ikalawang wika</translation>
    </message>
    <message>
        <source>Sections of the plan</source>
        <translation type="unfinished">Mga bahagi ng plano</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation type="unfinished">Binhi</translation>
    </message>
    <message>
        <source>Seed l&amp;ots</source>
        <translation type="unfinished">Mga s&amp;eed lot</translation>
    </message>
    <message>
        <source>Seed lot</source>
        <translation type="unfinished">Seed lot</translation>
    </message>
    <message>
        <source>Seed lots</source>
        <translation type="unfinished">Mga lote ng binhi</translation>
    </message>
    <message>
        <source>Seed lot…</source>
        <translation type="unfinished">Seed lot…</translation>
    </message>
    <message>
        <source>Seed of {name}, a thousand</source>
        <translation type="unfinished">Binhi ng {name}, bawat sanlibo</translation>
    </message>
    <message>
        <source>Seeding calendar</source>
        <translation type="unfinished">Kalendaryo ng paghahasik</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation type="unfinished">Binhi</translation>
    </message>
    <message>
        <source>Seeds left</source>
        <translation type="unfinished">Natitirang binhi</translation>
    </message>
    <message>
        <source>Seeds to sow</source>
        <translation type="unfinished">Binhing ihahasik</translation>
    </message>
    <message>
        <source>Select all</source>
        <translation type="unfinished">Piliin lahat</translation>
    </message>
    <message>
        <source>Setting the pages…</source>
        <translation type="unfinished">Inaayos ang mga pahina…</translation>
    </message>
    <message>
        <source>Settler</source>
        <translation type="unfinished">Settler</translation>
    </message>
    <message>
        <source>Several people have worked on this farm: each takes back only their own acts, by steps.</source>
        <translation type="unfinished">Ilang tao ang gumawa sa farm na ito: sariling gawa lang ang mababawi ng bawat isa, paisa-isa.</translation>
    </message>
    <message>
        <source>Share [%]</source>
        <translation type="unfinished">Bahagi [%]</translation>
    </message>
    <message>
        <source>Share dying each day</source>
        <translation type="unfinished">Bahaging namamatay bawat araw</translation>
    </message>
    <message>
        <source>Share of the feed's nitrogen lost as gas</source>
        <translation type="unfinished">Bahagi ng nitrogen ng pakain na nawawala bilang gas</translation>
    </message>
    <message>
        <source>Share of the liquor that goes back</source>
        <translation type="unfinished">Bahagi ng katas na ibabalik</translation>
    </message>
    <message>
        <source>Share of the places of a bed that are held on a day.</source>
        <translation type="unfinished">Bahagi ng mga puwesto ng kama na may tanim sa isang araw.</translation>
    </message>
    <message>
        <source>Share of the solids it takes out</source>
        <translation type="unfinished">Bahagi ng latak na naaalis</translation>
    </message>
    <message>
        <source>Share of weeks whose feed the beds can use</source>
        <translation type="unfinished">Bahagi ng mga linggong magagamit ng kama ang pakain</translation>
    </message>
    <message>
        <source>Share that can be sold</source>
        <translation type="unfinished">Bahaging naibebenta</translation>
    </message>
    <message>
        <source>Share that germinates</source>
        <translation type="unfinished">Bahaging tumutubo</translation>
    </message>
    <message>
        <source>Share that lives in the bed</source>
        <translation type="unfinished">Bahaging nabubuhay sa kama</translation>
    </message>
    <message>
        <source>Share that lives in the nursery</source>
        <translation type="unfinished">Bahaging nabubuhay sa punlaan</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished">Papel</translation>
    </message>
    <message>
        <source>Shelf of the catalogue</source>
        <translation type="unfinished">Bahagi ng katalogo</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation type="unfinished">Listahan ng bibilhin</translation>
    </message>
    <message>
        <source>Short supply</source>
        <translation type="unfinished">Kulang na supply</translation>
    </message>
    <message>
        <source>Show the bands of all elements</source>
        <translation type="unfinished">Ipakita ang saklaw ng lahat ng elemento</translation>
    </message>
    <message>
        <source>Show the beds as they are today</source>
        <translation type="unfinished">Ipakita ang mga kama ngayong araw</translation>
    </message>
    <message>
        <source>Show the week</source>
        <translation type="unfinished">Ipakita ang linggo</translation>
    </message>
    <message>
        <source>Shown only</source>
        <translation type="unfinished">Ipinakita lamang</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation type="unfinished">Magkatabi</translation>
    </message>
    <message>
        <source>Signs and first actions</source>
        <translation type="unfinished">Mga palatandaan at unang gagawin</translation>
    </message>
    <message>
        <source>Siphon</source>
        <translation type="unfinished">Higupin</translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished">Site</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Laki</translation>
    </message>
    <message>
        <source>Size of pellets</source>
        <translation type="unfinished">Laki ng pellet</translation>
    </message>
    <message>
        <source>Size {number}: {words}</source>
        <translation type="unfinished">Laki {number}: {words}</translation>
    </message>
    <message>
        <source>Small growers may be exempt from produce-safety rules. Even so, note date, time, place, crop and lot, and who did it, and keep the records two years or more.</source>
        <translation type="unfinished">Maaaring hindi saklaw ng tuntunin sa kaligtasan ng ani ang maliliit na magtatanim. Gayunman, itala ang petsa, oras, lugar, pananim at lote, at kung sino ang gumawa, at itago ang talaan nang dalawang taon o higit pa.</translation>
    </message>
    <message>
        <source>Small types bear for months. Book method is the media bed.</source>
        <translation type="unfinished">Ilang buwang namumunga ang maliliit na uri. Media bed ang paraan ng aklat.</translation>
    </message>
    <message>
        <source>So much every week</source>
        <translation type="unfinished">Ganito karami linggo-linggo</translation>
    </message>
    <message>
        <source>So much every week, ready by a day of the week; an order by a day, such as 80 heads by 24 December; or a rhythm of its own. Amounts are what is fit for sale.</source>
        <translation type="unfinished">Ganito karami bawat linggo, handa sa isang araw ng linggo; isang order para sa isang araw, gaya ng 80 piraso sa Disyembre 24; o sariling ritmo. Ang mga dami ay iyong maibebenta.</translation>
    </message>
    <message>
        <source>So much of a crop wanted each week, from one date to another.</source>
        <translation type="unfinished">Ganito karaming pananim ang kailangan bawat linggo, mula petsa hanggang petsa.</translation>
    </message>
    <message>
        <source>Sol&amp;ids batches</source>
        <translation type="unfinished">Mga batc&amp;h ng latak</translation>
    </message>
    <message>
        <source>Sol&amp;ids batch…</source>
        <translation type="unfinished">Batch ng la&amp;tak…</translation>
    </message>
    <message>
        <source>Solids</source>
        <translation type="unfinished">Mga solido</translation>
    </message>
    <message>
        <source>Solids and mineralised liquor</source>
        <translation type="unfinished">Solido at mineralisadong katas</translation>
    </message>
    <message>
        <source>Solids and mineraliser card</source>
        <translation type="unfinished">Kard ng solido at mineraliser</translation>
    </message>
    <message>
        <source>Solids batch</source>
        <translation type="unfinished">Batch ng latak</translation>
    </message>
    <message>
        <source>Solids batches of {loop}</source>
        <translation type="unfinished">Mga batch ng latak ng {loop}</translation>
    </message>
    <message>
        <source>Solids batch…</source>
        <translation type="unfinished">Batch ng latak…</translation>
    </message>
    <message>
        <source>Solids kept apart until their liquor goes back</source>
        <translation type="unfinished">Latak na nakahiwalay hanggang ibalik ang katas nito</translation>
    </message>
    <message>
        <source>Solids under the rafts siphoned every</source>
        <translation type="unfinished">Hinihigop ang latak sa ilalim ng lutang tuwing</translation>
    </message>
    <message>
        <source>Some fish and plants may not be kept, moved or sold without a permit: tilapia in many places, water spinach in some. Ask the fisheries or plant office before buying. Never release fish or eggs; screen outlets and waste water.</source>
        <translation type="unfinished">May mga isda at halamang hindi puwedeng alagaan, ilipat o ibenta nang walang permit: tilapia sa maraming lugar, kangkong sa ilan. Magtanong sa tanggapan ng pangisdaan o halaman bago bumili. Huwag magpakawala ng isda o itlog; lagyan ng salaan ang labasan at maruming tubig.</translation>
    </message>
    <message>
        <source>Somebody else changed the same thing meanwhile:

{what}

Theirs stands. Put yours in its place? Both can be found in the history.</source>
        <translation type="unfinished">May ibang nagbago ng parehong bagay:

{what}

Ang sa kanila ang nakatayo. Ipalit ang sa iyo? Parehong nasa kasaysayan.</translation>
    </message>
    <message>
        <source>Something went wrong in the program</source>
        <translation type="unfinished">May nagkamali sa programa</translation>
    </message>
    <message>
        <source>Something worked out that changes nothing until you adopt it, in one act.</source>
        <translation type="unfinished">Nakuwentang plano na walang binabago hanggang tanggapin mo, nang isang bagsak.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Pinagmulan</translation>
    </message>
    <message>
        <source>Sow</source>
        <translation type="unfinished">Maghasik</translation>
    </message>
    <message>
        <source>Sow a batch…</source>
        <translation type="unfinished">Maghasik ng batch…</translation>
    </message>
    <message>
        <source>Sow a crop later or earlier</source>
        <translation type="unfinished">Ihasik ang pananim nang mas huli o maaga</translation>
    </message>
    <message>
        <source>Sow again</source>
        <translation type="unfinished">Ihasik muli</translation>
    </message>
    <message>
        <source>Sow again what was copied</source>
        <translation type="unfinished">Ihasik muli ang kinopya</translation>
    </message>
    <message>
        <source>Sow from</source>
        <translation type="unfinished">Maghasik mula</translation>
    </message>
    <message>
        <source>Sow in multiples of</source>
        <translation type="unfinished">Maghasik nang tig-</translation>
    </message>
    <message>
        <source>Sow more or fewer of a crop</source>
        <translation type="unfinished">Maghasik ng mas marami o kaunti</translation>
    </message>
    <message>
        <source>Sow on</source>
        <translation type="unfinished">Ihasik sa</translation>
    </message>
    <message>
        <source>Sow so many weeks later</source>
        <translation type="unfinished">Ihasik nang ganito karaming linggo ang lumipas</translation>
    </message>
    <message>
        <source>Sow so much</source>
        <translation type="unfinished">Ganito karami ang ihasik</translation>
    </message>
    <message>
        <source>Sow the chosen batches once more</source>
        <translation type="unfinished">Ihasik muli ang mga napiling batch</translation>
    </message>
    <message>
        <source>Sow this week</source>
        <translation type="unfinished">Ihasik ngayong linggo</translation>
    </message>
    <message>
        <source>Sow what has to wait so much later</source>
        <translation type="unfinished">Ihasik nang ganoon kahuli ang kailangang maghintay</translation>
    </message>
    <message>
        <source>Sow {batches} {weeks} earlier</source>
        <translation type="unfinished">Ihasik ang {batches} nang {weeks} mas maaga</translation>
    </message>
    <message>
        <source>Sow {batches} {weeks} later</source>
        <translation type="unfinished">Ihasik ang {batches} nang {weeks} mas huli</translation>
    </message>
    <message>
        <source>Sow {codes} again</source>
        <translation type="unfinished">Ihasik muli ang {codes}</translation>
    </message>
    <message>
        <source>Sow {code}</source>
        <translation type="unfinished">Ihasik ang {code}</translation>
    </message>
    <message>
        <source>Sow {many}: {code}</source>
        <translation type="unfinished">Maghasik ng {many}: {code}</translation>
    </message>
    <message>
        <source>Sow {plants} plants fewer of {batches}</source>
        <translation type="unfinished">Bawasan ng {plants} halaman ang hasik ng {batches}</translation>
    </message>
    <message>
        <source>Sow, {days} d late: {code}</source>
        <translation type="unfinished">Ihasik, huli ng {days} d: {code}</translation>
    </message>
    <message>
        <source>Sowings</source>
        <translation type="unfinished">Mga hasik</translation>
    </message>
    <message>
        <source>Sowings one after the other, so that there is something to pick every week.</source>
        <translation type="unfinished">Sunod-sunod na paghasik, para may maani bawat linggo.</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation type="unfinished">Naihasik</translation>
    </message>
    <message>
        <source>Sown again: {codes}</source>
        <translation type="unfinished">Inihasik muli: {codes}</translation>
    </message>
    <message>
        <source>Sown in</source>
        <translation type="unfinished">Inihasik noong</translation>
    </message>
    <message>
        <source>Sown one seed a plug. Raft in warm water runs faster than field figures. Bolts above about 24 °C.</source>
        <translation type="unfinished">Isang binhi bawat plug. Mas mabilis sa raft na mainit-init ang tubig kaysa sa bilang sa bukid. Nagbubulaklak agad sa higit mga 24 °C.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished">Paglayuin</translation>
    </message>
    <message>
        <source>Space takes up the plants of a hole, arrow keys choose where to, Enter puts them there, Escape leaves them.</source>
        <translation type="unfinished">Kinukuha ng Space ang halaman ng butas, pinipili ng mga arrow kung saan, inilalagay doon ng Enter, iniiwan ng Escape.</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation type="unfinished">Espanyol</translation>
    </message>
    <message>
        <source>Species law and escapes</source>
        <translation type="unfinished">Batas sa uri at pagtakas</translation>
    </message>
    <message>
        <source>Spines wound; sensitive to nitrite, salt protects.</source>
        <translation type="unfinished">Nakakasugat ang tinik; maselan sa nitrite, nakakaprotekta ang asin.</translation>
    </message>
    <message>
        <source>Spl&amp;it the chosen batch…</source>
        <translation type="unfinished">Hat&amp;iin ang napiling batch…</translation>
    </message>
    <message>
        <source>Split</source>
        <translation type="unfinished">Hatiin</translation>
    </message>
    <message>
        <source>Split {code}</source>
        <translation type="unfinished">Hatiin ang {code}</translation>
    </message>
    <message>
        <source>Split {code} from {batch}</source>
        <translation type="unfinished">Ihiwalay ang {code} sa {batch}</translation>
    </message>
    <message>
        <source>Split…</source>
        <translation type="unfinished">Hatiin…</translation>
    </message>
    <message>
        <source>Sprays and fish</source>
        <translation type="unfinished">Spray at isda</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished">Yugto</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished">Mga yugto</translation>
    </message>
    <message>
        <source>Stages: {stages}.</source>
        <translation type="unfinished">Mga yugto: {stages}.</translation>
    </message>
    <message>
        <source>Standing there on {day}</source>
        <translation type="unfinished">Nakatanim doon sa {day}</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation type="unfinished">Nasa</translation>
    </message>
    <message>
        <source>Start-up</source>
        <translation type="unfinished">Pagsisimula</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Kalagayan</translation>
    </message>
    <message>
        <source>Static filter</source>
        <translation type="unfinished">Static filter</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished">Maglagay ng isda</translation>
    </message>
    <message>
        <source>Stock [mg/L]</source>
        <translation type="unfinished">Stock [mg/L]</translation>
    </message>
    <message>
        <source>Stock a group and its growth, feed by week and meal, density and harvest stand here. Fish need a tank: add one in the menu Set-up if there is none.</source>
        <translation type="unfinished">Maglagay ng grupo at makikita rito ang paglaki, pakain bawat linggo at kainan, siksik at ani. Kailangan ng isda ng tangke: magdagdag sa menung Ayos kung wala pa.</translation>
    </message>
    <message>
        <source>Stock fish…</source>
        <translation type="unfinished">Maglagay ng isda…</translation>
    </message>
    <message>
        <source>Stock in this way; one undo takes it back</source>
        <translation type="unfinished">Maglagay ng isda sa paraang ito; isang undo ang magbabalik</translation>
    </message>
    <message>
        <source>Stock in {groups}, {share}</source>
        <translation type="unfinished">Maglagay ng isda sa {groups}, {share}</translation>
    </message>
    <message>
        <source>Stock on</source>
        <translation type="unfinished">Ilagay sa</translation>
    </message>
    <message>
        <source>Stock {fish} fish fewer in {group}</source>
        <translation type="unfinished">Bawasan ng {fish} isda ang {group}</translation>
    </message>
    <message>
        <source>Stock {fish} more fish like {like} on {on}</source>
        <translation type="unfinished">Maglagay ng {fish} pang isda gaya ng {like} sa {on}</translation>
    </message>
    <message>
        <source>Stock {group} {weeks} earlier</source>
        <translation type="unfinished">Ilagay ang {group} nang {weeks} mas maaga</translation>
    </message>
    <message>
        <source>Stock {group} {weeks} later</source>
        <translation type="unfinished">Ilagay ang {group} nang {weeks} mas huli</translation>
    </message>
    <message>
        <source>Stock {name}</source>
        <translation type="unfinished">Maglagay ng isda: {name}</translation>
    </message>
    <message>
        <source>Stocked</source>
        <translation type="unfinished">May isda na</translation>
    </message>
    <message>
        <source>Stocked on</source>
        <translation type="unfinished">Inilagay noong</translation>
    </message>
    <message>
        <source>Stocking density</source>
        <translation type="unfinished">Dami ng isda</translation>
    </message>
    <message>
        <source>Stocking limit</source>
        <translation type="unfinished">Limit ng dami ng isda</translation>
    </message>
    <message>
        <source>Stocking limit in a small tank</source>
        <translation type="unfinished">Hangganan ng dami sa maliit na tangke</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished">Itigil</translation>
    </message>
    <message>
        <source>Stop ({percent} %)</source>
        <translation type="unfinished">Itigil ({percent} %)</translation>
    </message>
    <message>
        <source>Stop feeding. Run battery air to the fish tank before anything else. Leave filters closed. Nobody can say to the minute how long fish will last: act at once.</source>
        <translation type="unfinished">Ihinto ang pagpapakain. Paandarin ang hanging de-baterya sa tangke ng isda bago ang lahat. Iwang sarado ang mga filter. Walang makapagsasabi hanggang minuto kung gaano tatagal ang isda: kumilos agad.</translation>
    </message>
    <message>
        <source>Stop working out how sure it is</source>
        <translation type="unfinished">Itigil ang pagkuwenta kung gaano katiyak</translation>
    </message>
    <message>
        <source>Stop, keep the best</source>
        <translation type="unfinished">Itigil, itabi ang pinakamahusay</translation>
    </message>
    <message>
        <source>Stopped before a repair was found.</source>
        <translation type="unfinished">Itinigil bago may nakitang pag-aayos.</translation>
    </message>
    <message>
        <source>Stopped before there was a plan. Nothing of the farm has changed.</source>
        <translation type="unfinished">Itinigil bago nagkaroon ng plano. Walang nagbago sa farm.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation type="unfinished">Itinigil.</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the farm has changed.</source>
        <translation type="unfinished">Itinigil. Walang nagbago sa farm.</translation>
    </message>
    <message>
        <source>Stopped: nothing was kept.</source>
        <translation type="unfinished">Itinigil: walang naitabi.</translation>
    </message>
    <message>
        <source>Subjects</source>
        <translation type="unfinished">Mga paksa</translation>
    </message>
    <message>
        <source>Succession</source>
        <translation type="unfinished">Sunod-sunod na tanim</translation>
    </message>
    <message>
        <source>Successions</source>
        <translation type="unfinished">Sunod-sunod na tanim</translation>
    </message>
    <message>
        <source>Sum of warmth to germinate</source>
        <translation type="unfinished">Kabuuang init para tumubo</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">Linggo</translation>
    </message>
    <message>
        <source>Sunshine outside, by month</source>
        <translation type="unfinished">Sikat ng araw sa labas, bawat buwan</translation>
    </message>
    <message>
        <source>Supplement</source>
        <translation type="unfinished">Suplemento</translation>
    </message>
    <message>
        <source>Supplements</source>
        <translation type="unfinished">Mga suplemento</translation>
    </message>
    <message>
        <source>Supplied [g]</source>
        <translation type="unfinished">Supply [g]</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished">Supplier</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished">Suplay</translation>
    </message>
    <message>
        <source>Supply and demand by week</source>
        <translation type="unfinished">Supply at pangangailangan bawat linggo</translation>
    </message>
    <message>
        <source>Supply and demand of each element are weighed here, week by week.</source>
        <translation type="unfinished">Dito tinitimbang linggo-linggo ang supply at pangangailangan ng bawat elemento.</translation>
    </message>
    <message>
        <source>Supply and demand of each element, and what helps</source>
        <translation type="unfinished">Supply at pangangailangan ng bawat elemento, at ang makatutulong</translation>
    </message>
    <message>
        <source>Supply left idle</source>
        <translation type="unfinished">Supply na hindi nagamit</translation>
    </message>
    <message>
        <source>Surface of the media</source>
        <translation type="unfinished">Ibabaw ng media</translation>
    </message>
    <message>
        <source>Surface on which the bacteria sit that turn ammonia into nitrate.</source>
        <translation type="unfinished">Ibabaw na tinitirhan ng bakteryang ginagawang nitrate ang ammonia.</translation>
    </message>
    <message>
        <source>System water and food</source>
        <translation type="unfinished">Tubig ng sistema at pagkain</translation>
    </message>
    <message>
        <source>T (letter of the band thin)</source>
        <translation type="unfinished">M</translation>
    </message>
    <message>
        <source>TAN</source>
        <translation type="unfinished">TAN</translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished">Talaan</translation>
    </message>
    <message>
        <source>Table of batches</source>
        <translation type="unfinished">Talaan ng mga batch</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished">Mga talaan (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished">Mga talaan (*.csv)</translation>
    </message>
    <message>
        <source>Take in entries</source>
        <translation type="unfinished">Kumuha ng mga tala</translation>
    </message>
    <message>
        <source>Take in entries from a text, telling first what moves</source>
        <translation type="unfinished">Kumuha ng mga tala mula sa teksto, sinasabi muna kung ano ang gagalaw</translation>
    </message>
    <message>
        <source>Take in entries of {name}</source>
        <translation type="unfinished">Kunin ang mga tala ng {name}</translation>
    </message>
    <message>
        <source>Take in…</source>
        <translation type="unfinished">Kumuha…</translation>
    </message>
    <message>
        <source>Take note</source>
        <translation type="unfinished">Pansinin</translation>
    </message>
    <message>
        <source>Take the chosen one off the list</source>
        <translation type="unfinished">Alisin sa listahan ang napili</translation>
    </message>
    <message>
        <source>Take the targets</source>
        <translation type="unfinished">Kunin ang mga target</translation>
    </message>
    <message>
        <source>Take them in</source>
        <translation type="unfinished">Kunin ang mga ito</translation>
    </message>
    <message>
        <source>Take up {field} of {crop} from the log</source>
        <translation type="unfinished">Kunin ang {field} ng {crop} mula sa tala</translation>
    </message>
    <message>
        <source>Taken back: {title}</source>
        <translation type="unfinished">Binawi: {title}</translation>
    </message>
    <message>
        <source>Taken up by {many} of {all} batches. {why}</source>
        <translation type="unfinished">Ginamit ito ng {many} sa {all} batch. {why}</translation>
    </message>
    <message>
        <source>Takes heat a little better than butterhead.</source>
        <translation type="unfinished">Mas matibay nang kaunti sa init kaysa sa butterhead.</translation>
    </message>
    <message>
        <source>Takes {count} acts back; they can be done again until you do something new.</source>
        <translation type="unfinished">Babawiin ang {count} ginawa; mauulit pa hanggang may gawin kang bago.</translation>
    </message>
    <message>
        <source>Taking batch after batch…</source>
        <translation type="unfinished">Isa-isang kinukuha ang mga batch…</translation>
    </message>
    <message>
        <source>Tall, shades its neighbours</source>
        <translation type="unfinished">Matangkad, nililiman ang katabi</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation type="unfinished">Tangke</translation>
    </message>
    <message>
        <source>Tank [kg/m³]</source>
        <translation type="unfinished">Tangke [kg/m³]</translation>
    </message>
    <message>
        <source>Tank, fish, beds and what you want each week. A first plan is drafted from it at once.</source>
        <translation type="unfinished">Tangke, isda, kama at ang gusto mo bawat linggo. Agad gagawin ang unang plano.</translation>
    </message>
    <message>
        <source>Tank, {litres} L</source>
        <translation type="unfinished">Tangke, {litres} L</translation>
    </message>
    <message>
        <source>Task</source>
        <translation type="unfinished">Gawain</translation>
    </message>
    <message>
        <source>Tasks as a calendar file, by who does them, with reminders</source>
        <translation type="unfinished">Mga gawain bilang file ng kalendaryo, ayon sa gagawa, may paalala</translation>
    </message>
    <message>
        <source>Tell what the words mean of the part that has the keyboard; hovering tells it too</source>
        <translation type="unfinished">Sabihin ang kahulugan ng mga salita sa bahaging may keyboard; ganoon din kapag itinapat ang mouse</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished">Temperatura</translation>
    </message>
    <message>
        <source>Test the alkalinity first.</source>
        <translation type="unfinished">Suriin muna ang alkalinity.</translation>
    </message>
    <message>
        <source>Test the ammonia first.</source>
        <translation type="unfinished">Suriin muna ang ammonia.</translation>
    </message>
    <message>
        <source>Test the pH first.</source>
        <translation type="unfinished">Suriin muna ang pH.</translation>
    </message>
    <message>
        <source>Tests of {loop}</source>
        <translation type="unfinished">Mga suri ng {loop}</translation>
    </message>
    <message>
        <source>Tests overdue</source>
        <translation type="unfinished">Suring lampas sa takda</translation>
    </message>
    <message>
        <source>Text (*.{suffix})</source>
        <translation type="unfinished">Teksto (*.{suffix})</translation>
    </message>
    <message>
        <source>That cannot be done here ({code}).</source>
        <translation type="unfinished">Hindi ito magagawa rito ({code}).</translation>
    </message>
    <message>
        <source>That is the same crop; choose another one.</source>
        <translation type="unfinished">Iyon din ang pananim; pumili ng iba.</translation>
    </message>
    <message>
        <source>The answer names the formula and everything that went in, with its source; Enter goes into a part, Alt with left leads back. A number you typed says what it was entered for, its limits, and when it was last changed.</source>
        <translation type="unfinished">Sinasabi ng sagot ang pormula at lahat ng pumasok dito, kasama ang pinagmulan; pumapasok sa isang bahagi ang Enter, bumabalik ang Alt at kaliwang arrow. Ang bilang na kayo ang nag-type ay nagsasabi kung para saan ito inilagay, ang mga hangganan nito, at kung kailan huling binago.</translation>
    </message>
    <message>
        <source>The arithmetic, checked against print</source>
        <translation type="unfinished">Ang kuwenta, sinuri laban sa nailathala</translation>
    </message>
    <message>
        <source>The batch cannot go here.</source>
        <translation type="unfinished">Hindi puwede rito ang batch.</translation>
    </message>
    <message>
        <source>The batch is no longer there.</source>
        <translation type="unfinished">Wala na ang batch.</translation>
    </message>
    <message>
        <source>The days are worked out from the sowing, the catalogue and the season; nothing is typed twice.</source>
        <translation type="unfinished">Kinukuwenta ang mga araw mula sa paghahasik, katalogo at panahon; walang inuulit na isulat.</translation>
    </message>
    <message>
        <source>The element of which least is supplied for what is wanted.</source>
        <translation type="unfinished">Ang elementong pinakakapos: pinakakaunti ang supply kumpara sa kailangan.</translation>
    </message>
    <message>
        <source>The farm can be reached again.</source>
        <translation type="unfinished">Naaabot na muli ang farm.</translation>
    </message>
    <message>
        <source>The farm has changed since these repairs were tried. Choose the week again.</source>
        <translation type="unfinished">Nagbago na ang farm mula nang subukin ang mga ito. Piliing muli ang linggo.</translation>
    </message>
    <message>
        <source>The farm has changed since this was worked out. Work it out again to adopt it.</source>
        <translation type="unfinished">Nagbago na ang farm mula nang kuwentahin ito. Kuwentahing muli para matanggap.</translation>
    </message>
    <message>
        <source>The farm has changed since. Ask again.</source>
        <translation type="unfinished">Nagbago na ang farm. Itanong muli.</translation>
    </message>
    <message>
        <source>The farm has changed so that these can no longer be made of it: {names}. Drop them.</source>
        <translation type="unfinished">Nagbago na ang farm kaya hindi na ito magagawa: {names}. Bitawan ang mga ito.</translation>
    </message>
    <message>
        <source>The farm has changed so that this scenario no longer fits. Drop it.</source>
        <translation type="unfinished">Nagbago na ang farm kaya hindi na bagay ang scenario na ito. Bitawan ito.</translation>
    </message>
    <message>
        <source>The farm is as it was in {name}.</source>
        <translation type="unfinished">Ang farm ay gaya na noong {name}.</translation>
    </message>
    <message>
        <source>The farm was written to {name}.</source>
        <translation type="unfinished">Naisulat ang farm sa {name}.</translation>
    </message>
    <message>
        <source>The farm with some changes, held beside it to compare; the farm stays as it is.</source>
        <translation type="unfinished">Ang farm na may ilang pagbabago, itinabi para ihambing; hindi nagbabago ang farm.</translation>
    </message>
    <message>
        <source>The gentlest potassium base.</source>
        <translation type="unfinished">Ang pinakabanayad na base na may potassium.</translation>
    </message>
    <message>
        <source>The language changes when the program is started again.</source>
        <translation type="unfinished">Magbabago ang wika kapag binuksang muli ang programa.</translation>
    </message>
    <message>
        <source>The last act moved no dates.</source>
        <translation type="unfinished">Walang nalipat na petsa sa huling ginawa.</translation>
    </message>
    <message>
        <source>The law</source>
        <translation type="unfinished">Ang batas</translation>
    </message>
    <message>
        <source>The list is empty. Add what you want, or take the farm's targets.</source>
        <translation type="unfinished">Walang laman ang listahan. Idagdag ang gusto mo, o kunin ang mga target ng farm.</translation>
    </message>
    <message>
        <source>The loop as it is typed</source>
        <translation type="unfinished">Ang sistema habang itina-type</translation>
    </message>
    <message>
        <source>The most to give; never more than is eaten</source>
        <translation type="unfinished">Pinakamaraming ibibigay; huwag hihigit sa nakakain</translation>
    </message>
    <message>
        <source>The numbers are planning aids. Test the water, look at the fish. No yield is promised, and nothing here is medical, legal or engineering advice.</source>
        <translation type="unfinished">Pantulong lang sa plano ang mga numero. Suriin ang tubig, tingnan ang isda. Walang pangakong ani, at walang payong medikal, legal o pang-inhinyero rito.</translation>
    </message>
    <message>
        <source>The pages are not set. Change what is wished, or close.</source>
        <translation type="unfinished">Hindi naayos ang mga pahina. Baguhin ang hinihiling, o isara.</translation>
    </message>
    <message>
        <source>The phone &amp;rings</source>
        <translation type="unfinished">Tu&amp;tunog ang telepono</translation>
    </message>
    <message>
        <source>The plan ended on {day}: nothing is foreseen after it, and no feed or dose of it holds any more. Give it more weeks, or a later day to begin on, in Set-up, Plan and name.</source>
        <translation type="unfinished">Natapos ang plano noong {day}: walang tinatayang kasunod nito, at wala nang bisa ang pagpapakain o dosis nito. Dagdagan ang mga linggo, o ipagpaliban ang simula, sa Ayos, Plano at pangalan.</translation>
    </message>
    <message>
        <source>The plan is over</source>
        <translation type="unfinished">Tapos na ang plano</translation>
    </message>
    <message>
        <source>The planted area fits the feed, but something is flagged. This would repair it first:</source>
        <translation type="unfinished">Tugma ang tanim sa pakain, pero may babala. Ito ang unang mag-aayos:</translation>
    </message>
    <message>
        <source>The plants cannot go here.</source>
        <translation type="unfinished">Hindi puwede rito ang mga halaman.</translation>
    </message>
    <message>
        <source>The poisonous part of ammonia; it grows with pH and warmth.</source>
        <translation type="unfinished">Nakalalasong bahagi ng ammonia; lumalaki sa taas ng pH at init.</translation>
    </message>
    <message>
        <source>The program has no means to work it out; what is lacking is said</source>
        <translation type="unfinished">Walang paraan ang programa para kalkulahin ito; sinasabi kung ano ang kulang</translation>
    </message>
    <message>
        <source>The proposal against what is wanted</source>
        <translation type="unfinished">Ang mungkahi laban sa hinihingi</translation>
    </message>
    <message>
        <source>The proposal in tables</source>
        <translation type="unfinished">Ang mungkahi sa mga talaan</translation>
    </message>
    <message>
        <source>The publication is silent on something that counts; shown, but judges nothing</source>
        <translation type="unfinished">May mahalagang hindi sinabi ang lathalain; ipinapakita pero walang hinahatulan</translation>
    </message>
    <message>
        <source>The published figure is held from memory; shown, but judges nothing</source>
        <translation type="unfinished">Mula sa alaala ang nalathalang bilang; ipinapakita pero walang hinahatulan</translation>
    </message>
    <message>
        <source>The readings of each loop with what is foreseen, every dose that was given, is due or is asked for, and what the water asks for.</source>
        <translation type="unfinished">Ang mga basa ng bawat sistema kasama ang inaasahan, bawat dosis na naibigay, takda o hinihingi, at ang hinihingi ng tubig.</translation>
    </message>
    <message>
        <source>The rhythm is that of</source>
        <translation type="unfinished">Sumusunod sa ritmo ng</translation>
    </message>
    <message>
        <source>The rows are</source>
        <translation type="unfinished">Ang mga hanay ay</translation>
    </message>
    <message>
        <source>The rows were not looked at to the end. Change what a column is, or cancel.</source>
        <translation type="unfinished">Hindi natingnan ang lahat ng hanay. Baguhin kung ano ang isang kolum, o kanselahin.</translation>
    </message>
    <message>
        <source>The rule falls on no day between {a} and {b}.</source>
        <translation type="unfinished">Walang araw na tinatamaan ng tuntunin mula {a} hanggang {b}.</translation>
    </message>
    <message>
        <source>The same amount every week</source>
        <translation type="unfinished">Parehong dami bawat linggo</translation>
    </message>
    <message>
        <source>The same as a table</source>
        <translation type="unfinished">Pareho, bilang talaan</translation>
    </message>
    <message>
        <source>The same plants go on in the same places, with the days and the yield that the book has for the other crop. Where it does not grow in that kind of bed, the batches are counted as without places.</source>
        <translation type="unfinished">Parehong halaman sa parehong lugar, ngunit may araw at ani na nasa aklat para sa ibang pananim. Kung hindi ito tumutubo sa ganoong kama, binibilang na walang lugar ang mga batch.</translation>
    </message>
    <message>
        <source>The sample farm</source>
        <translation type="unfinished">Ang sample na farm</translation>
    </message>
    <message>
        <source>The sample farm, a new one, or one that is kept already</source>
        <translation type="unfinished">Ang sample na farm, bago, o naka-save na</translation>
    </message>
    <message>
        <source>The scale of acid and base: 7 is neutral, each step is ten times more.</source>
        <translation type="unfinished">Sukatan ng asido at base: 7 ang walang kinikilingan, sampung beses bawat hakbang.</translation>
    </message>
    <message>
        <source>The season plan is adopted. Undo brings the old one back.</source>
        <translation type="unfinished">Tinanggap ang plano sa panahon. Ibabalik ng Undo ang dati.</translation>
    </message>
    <message>
        <source>The seeding calendar, as it is printed</source>
        <translation type="unfinished">Ang kalendaryo ng paghahasik, gaya ng nakalimbag</translation>
    </message>
    <message>
        <source>The source names the publication and how sure the figure is. Your own values belong to this farm only.</source>
        <translation type="unfinished">Sinasabi ng pinagmulan ang lathalain at kung gaano katiyak ang bilang. Para sa bukid na ito lamang ang sarili mong mga halaga.</translation>
    </message>
    <message>
        <source>The sowings are in the plan. Undo takes them out again.</source>
        <translation type="unfinished">Nasa plano na ang mga hasik. Maaalis muli ng Undo.</translation>
    </message>
    <message>
        <source>The sowings for your list are shown here. Nothing changes until you adopt them.</source>
        <translation type="unfinished">Ipinapakita rito ang mga hasik para sa listahan mo. Walang magbabago hanggang tanggapin mo.</translation>
    </message>
    <message>
        <source>The step between ammonia and nitrate; it harms fish.</source>
        <translation type="unfinished">Hakbang sa pagitan ng ammonia at nitrate; nakasasama sa isda.</translation>
    </message>
    <message>
        <source>The tab says how many places are missing, on which day it is tightest, and which batches would make room. As many plants as there is room for are sown all the same.</source>
        <translation type="unfinished">Sinasabi ng tab kung ilang lugar ang kulang, aling araw ang pinakamasikip, at aling mga batch ang makapagbibigay-lugar. Inihahasik pa rin ang lahat ng kasya.</translation>
    </message>
    <message>
        <source>The tanks have no room for any of these ways.</source>
        <translation type="unfinished">Walang lugar ang mga tangke para sa mga paraang ito.</translation>
    </message>
    <message>
        <source>The water's reserve against acid; bases refill it, nitrification uses it up.</source>
        <translation type="unfinished">Reserba ng tubig laban sa asido; pinupunan ito ng base, inuubos ng nitrification.</translation>
    </message>
    <message>
        <source>The weeks of one element as a table</source>
        <translation type="unfinished">Mga linggo ng isang elemento bilang talaan</translation>
    </message>
    <message>
        <source>The whole plan</source>
        <translation type="unfinished">Buong plano</translation>
    </message>
    <message>
        <source>Then</source>
        <translation type="unfinished">Pagkatapos</translation>
    </message>
    <message>
        <source>Then search exactly</source>
        <translation type="unfinished">Saka maghanap nang eksakto</translation>
    </message>
    <message>
        <source>There are no entries of your own to write yet.</source>
        <translation type="unfinished">Wala pang sariling mga tala na isusulat.</translation>
    </message>
    <message>
        <source>There is no backup yet; one is made when the farm is opened or closed.</source>
        <translation type="unfinished">Wala pang backup; gumagawa nito tuwing binubuksan o isinasara ang farm.</translation>
    </message>
    <message>
        <source>There is no batch “{code}”.</source>
        <translation type="unfinished">Walang batch na “{code}”.</translation>
    </message>
    <message>
        <source>There is no bed to grow in, so nothing can be planned.</source>
        <translation type="unfinished">Walang kamang matataniman, kaya walang maipaplano.</translation>
    </message>
    <message>
        <source>There is no bed yet. Add one in the menu Set-up.</source>
        <translation type="unfinished">Wala pang kama. Magdagdag sa menung Ayos.</translation>
    </message>
    <message>
        <source>There is no loop of water yet. Add one in the menu Set-up.</source>
        <translation type="unfinished">Wala pang loop ng tubig. Magdagdag sa menung Ayos.</translation>
    </message>
    <message>
        <source>This day is still to come.</source>
        <translation type="unfinished">Darating pa lamang ang araw na ito.</translation>
    </message>
    <message>
        <source>This entry was replaced already; correct the one that replaced it.</source>
        <translation type="unfinished">Napalitan na ang entry na ito; iwasto ang pumalit dito.</translation>
    </message>
    <message>
        <source>This farm names what the catalogue does not have: {names}. Mend its text form, then open that.</source>
        <translation type="unfinished">May binabanggit ang farm na wala sa katalogo: {names}. Ayusin ang text nito, saka iyon ang buksan.</translation>
    </message>
    <message>
        <source>This farm was not closed properly last time, or is open elsewhere. Everything is kept up to “{title}” of {time}.</source>
        <translation type="unfinished">Hindi naisara nang maayos ang farm noong huli, o bukas ito sa iba. Naka-save ang lahat hanggang “{title}” ng {time}.</translation>
    </message>
    <message>
        <source>This farm was not closed properly last time, or is open elsewhere. Nothing is lost.</source>
        <translation type="unfinished">Hindi naisara nang maayos ang farm noong huli, o bukas ito sa iba. Walang nawala.</translation>
    </message>
    <message>
        <source>This file is older than when it was last worked on here ({day}): another program may have put an older copy in its place. Farm, Go back to a backup, has the later ones.</source>
        <translation type="unfinished">Mas luma ang file na ito kaysa noong huli itong ginamit dito ({day}): baka pinalitan ng ibang programa ng lumang kopya. Nasa Farm, Bumalik sa backup, ang mas bago.</translation>
    </message>
    <message>
        <source>This is a fault of the program, not of your farm. Every act was kept when you did it, so nothing is lost. You can go on; if it comes again, close the window and open it anew. Please send the report below to whoever looks after the program.</source>
        <translation type="unfinished">Pagkakamali ito ng programa, hindi ng farm mo. Na-save ang bawat ginawa mo noong ginawa mo, kaya walang nawala. Puwede kang magpatuloy; kung maulit, isara ang window at buksang muli. Pakipadala ang ulat sa ibaba sa nag-aalaga ng programa.</translation>
    </message>
    <message>
        <source>This is taken out or let go along with it: {names}. Undo brings all of it back.</source>
        <translation type="unfinished">Kasama itong maaalis o mabibitawan: {names}. Maibabalik lahat ng Undo.</translation>
    </message>
    <message>
        <source>This is the sample farm: look around, and change what you like.</source>
        <translation type="unfinished">Sample na farm ito: tumingin-tingin, at baguhin ang gusto mo.</translation>
    </message>
    <message>
        <source>This line has no task; log it in the line above instead.</source>
        <translation type="unfinished">Walang gawain ang linyang ito; itala sa linya sa itaas.</translation>
    </message>
    <message>
        <source>This page</source>
        <translation type="unfinished">Pahinang ito</translation>
    </message>
    <message>
        <source>This week lies outside the plan.</source>
        <translation type="unfinished">Nasa labas ng plano ang linggong ito.</translation>
    </message>
    <message>
        <source>Three letters for batch codes</source>
        <translation type="unfinished">Tatlong letra para sa kodigo ng batch</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">Huwebes</translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished">Oras</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation type="unfinished">Oras ng araw</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished">Time zone</translation>
    </message>
    <message>
        <source>Tip-burn</source>
        <translation type="unfinished">Tip-burn</translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished">Hanggang</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished">Bibilhin</translation>
    </message>
    <message>
        <source>To know</source>
        <translation type="unfinished">Dapat malaman</translation>
    </message>
    <message>
        <source>To know ({count})</source>
        <translation type="unfinished">Dapat malaman ({count})</translation>
    </message>
    <message>
        <source>To the plan</source>
        <translation type="unfinished">Sa plano</translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished">Ngayon</translation>
    </message>
    <message>
        <source>Today's plan</source>
        <translation type="unfinished">Plano ngayon</translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished">Magkasama</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation type="unfinished">Tolerance</translation>
    </message>
    <message>
        <source>Too cold to germinate below</source>
        <translation type="unfinished">Masyadong malamig para tumubo kapag mas mababa sa</translation>
    </message>
    <message>
        <source>Too cold to grow below</source>
        <translation type="unfinished">Masyadong malamig para lumaki kapag mas mababa sa</translation>
    </message>
    <message>
        <source>Too warm to germinate above</source>
        <translation type="unfinished">Masyadong mainit para tumubo kapag mas mataas sa</translation>
    </message>
    <message>
        <source>Too warm to grow above</source>
        <translation type="unfinished">Masyadong mainit para lumaki kapag mas mataas sa</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished">Mga gamit</translation>
    </message>
    <message>
        <source>Top-up</source>
        <translation type="unfinished">Dagdag-tubig</translation>
    </message>
    <message>
        <source>Total ammonia nitrogen [mg/L]</source>
        <translation type="unfinished">Kabuuang ammonia nitrogen [mg/L]</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation type="unfinished">Pagtunton</translation>
    </message>
    <message>
        <source>Trace…</source>
        <translation type="unfinished">Tuntunin…</translation>
    </message>
    <message>
        <source>Trained up strings; flowers vibrated in still air. Planted after the loop has run for some months. Roots clog gravel.</source>
        <translation type="unfinished">Pinagagapang sa tali; inaalog ang bulaklak kung walang hangin. Itinatanim kapag ilang buwan nang umaandar ang loop. Bumabara sa graba ang ugat.</translation>
    </message>
    <message>
        <source>Trained up; picked every other day or it stops.</source>
        <translation type="unfinished">Pinagagapang pataas; pitasin tuwing ikalawang araw, kung hindi ay titigil.</translation>
    </message>
    <message>
        <source>Tray and pot labels</source>
        <translation type="unfinished">Label ng tray at pot</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation type="unfinished">Mga tray</translation>
    </message>
    <message>
        <source>Treat sick fish in a separate tank and let none of that water reach plants or filter. Use only what is approved for that fish in your country, with a veterinarian, and keep the waiting time. Remedies for ornamental fish bar fish and crops from the table. Salt harms plants.</source>
        <translation type="unfinished">Gamutin ang may sakit na isda sa hiwalay na tangke at huwag paabutin ang tubig na iyon sa halaman o filter. Gamitin lamang ang aprobado para sa isdang iyon sa inyong bansa, kasama ang beterinaryo, at sundin ang panahon ng paghihintay. Kapag ginamitan ng gamot na pang-ornamental, hindi na dapat kainin ang isda at pananim. Nakasasama sa halaman ang asin.</translation>
    </message>
    <message>
        <source>Treated with a medicine</source>
        <translation type="unfinished">Ginamot</translation>
    </message>
    <message>
        <source>Trickling filter</source>
        <translation type="unfinished">Trickling filter</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation type="unfinished">Subukan ang isang pagbabago</translation>
    </message>
    <message>
        <source>Trying 12 ways, and bettering each…</source>
        <translation type="unfinished">Sinusubok ang 12 paraan, at pinahuhusay ang bawat isa…</translation>
    </message>
    <message>
        <source>Trying repairs; each one is forecast before it is offered…</source>
        <translation type="unfinished">Sinusubok ang mga pag-aayos; kinukuwenta ang forecast ng bawat isa bago ialok…</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">Martes</translation>
    </message>
    <message>
        <source>Turnover</source>
        <translation type="unfinished">Turnover</translation>
    </message>
    <message>
        <source>Two sources differ. FAO, for small systems: {a} to {b} g/m²/d for leaves, {c} to {d} for fruit, mixed by what is planted. University of the Virgin Islands, for rafts in the tropics with solids removed: {e} to {f} g/m²/d.</source>
        <translation type="unfinished">Magkaiba ang dalawang pinagmulan. FAO, para sa maliliit na sistema: {a} hanggang {b} g/m²/d sa dahon, {c} hanggang {d} sa bunga, pinaghalo ayon sa nakatanim. University of the Virgin Islands, para sa raft sa tropiko na inaalis ang solido: {e} hanggang {f} g/m²/d.</translation>
    </message>
    <message>
        <source>Type a few letters; arrows choose, Enter goes there.</source>
        <translation type="unfinished">Mag-type ng ilang titik; arrow para pumili, Enter para pumunta.</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished">Sukat ng US</translation>
    </message>
    <message>
        <source>UVI band</source>
        <translation type="unfinished">Saklaw ng UVI</translation>
    </message>
    <message>
        <source>UVI, for rafts</source>
        <translation type="unfinished">UVI, para sa mga balsa</translation>
    </message>
    <message>
        <source>Un-ionised ammonia</source>
        <translation type="unfinished">Un-ionised ammonia</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">I-undo</translation>
    </message>
    <message>
        <source>Uneven</source>
        <translation type="unfinished">Di-pantay</translation>
    </message>
    <message>
        <source>Unfinished</source>
        <translation type="unfinished">Hindi pa tapos</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished">Yunit</translation>
    </message>
    <message>
        <source>Unit of {heading}</source>
        <translation type="unfinished">Yunit ng {heading}</translation>
    </message>
    <message>
        <source>Units shown</source>
        <translation type="unfinished">Yunit na ipinapakita</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation type="unfinished">Hindi alam</translation>
    </message>
    <message>
        <source>Unknown whether this loop can carry {area} m² more.</source>
        <translation type="unfinished">Hindi alam kung kaya ng loop ang {area} m² pa.</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation type="unfinished">I-unlock</translation>
    </message>
    <message>
        <source>Unlock {code}</source>
        <translation type="unfinished">I-unlock ang {code}</translation>
    </message>
    <message>
        <source>Unlock {many} batches</source>
        <translation type="unfinished">I-unlock ang {many} batch</translation>
    </message>
    <message>
        <source>Unplaced</source>
        <translation type="unfinished">Walang puwesto</translation>
    </message>
    <message>
        <source>Until</source>
        <translation type="unfinished">Hanggang</translation>
    </message>
    <message>
        <source>Until is {until}, before it begins on {begins}.</source>
        <translation type="unfinished">Ang Hanggang ay {until}, bago ito magsimula sa {begins}.</translation>
    </message>
    <message>
        <source>Until the feed is back</source>
        <translation type="unfinished">Hanggang bumalik ang pakain</translation>
    </message>
    <message>
        <source>Up to a weight of</source>
        <translation type="unfinished">Hanggang sa bigat na</translation>
    </message>
    <message>
        <source>Up to three beside today's plan. Changes under one name go into one scenario. The farm stays as it is until you adopt one, and adopting is one act.</source>
        <translation type="unfinished">Hanggang tatlo sa tabi ng plano ngayon. Ang mga pagbabago sa iisang pangalan ay napupunta sa iisang senaryo. Mananatili ang bukid hanggang gamitin mo ang isa, at isang hakbang lamang iyon.</translation>
    </message>
    <message>
        <source>Up to three scenarios beside today's plan: balance, harvest, occupancy, feed and cost. The farm stays as it is until you adopt one.</source>
        <translation type="unfinished">Hanggang tatlong scenario katabi ng plano ngayon: balanse, ani, okupadong puwesto, pakain at gastos. Hindi nagbabago ang farm hanggang tanggapin mo ang isa.</translation>
    </message>
    <message>
        <source>Use food-grade plastics shielded from sun. No copper or galvanised metal in the water, and no limestone gravel unless you want its hardness.</source>
        <translation type="unfinished">Gumamit ng plastik na pang-pagkain na hindi naaarawan. Walang tanso o yero sa tubig, at walang batong-apog maliban kung gusto mo ang tigas nito.</translation>
    </message>
    <message>
        <source>Used from</source>
        <translation type="unfinished">Ginamit mula</translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished">Halaga</translation>
    </message>
    <message>
        <source>Variety</source>
        <translation type="unfinished">Uri ng binhi</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished">Hatol</translation>
    </message>
    <message>
        <source>Very slow. A farm lime analysed 22.7 % Ca and 11.8 % Mg.</source>
        <translation type="unfinished">Napakabagal. Ang isang sinuring apog-bukid ay may 22.7 % Ca at 11.8 % Mg.</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation type="unfinished">Naghihintay</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished">Hinihingi</translation>
    </message>
    <message>
        <source>Wanted [g]</source>
        <translation type="unfinished">Kailangan [g]</translation>
    </message>
    <message>
        <source>Wanted each week</source>
        <translation type="unfinished">Kailangan bawat linggo</translation>
    </message>
    <message>
        <source>Wanting</source>
        <translation type="unfinished">Kulang</translation>
    </message>
    <message>
        <source>Warm all year, as in the tropics</source>
        <translation type="unfinished">Mainit buong taon, gaya sa tropiko</translation>
    </message>
    <message>
        <source>Warm summer, cold winter</source>
        <translation type="unfinished">Mainit na tag-araw, malamig na taglamig</translation>
    </message>
    <message>
        <source>Was due</source>
        <translation type="unfinished">Dapat noong</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished">Tapon</translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished">Tubig</translation>
    </message>
    <message>
        <source>Water &amp;readings</source>
        <translation type="unfinished">Mga suri ng tu&amp;big</translation>
    </message>
    <message>
        <source>Water added for what evaporates, splashes or is drained.</source>
        <translation type="unfinished">Tubig na idinadagdag kapalit ng sumingaw, tumalsik o pinatulo.</translation>
    </message>
    <message>
        <source>Water in the fish tank</source>
        <translation type="unfinished">Tubig sa tangke ng isda</translation>
    </message>
    <message>
        <source>Water of {loop}</source>
        <translation type="unfinished">Tubig ng {loop}</translation>
    </message>
    <message>
        <source>Water read on {day}</source>
        <translation type="unfinished">Suri ng tubig noong {day}</translation>
    </message>
    <message>
        <source>Water reading</source>
        <translation type="unfinished">Suri ng tubig</translation>
    </message>
    <message>
        <source>Water temperature [°C]</source>
        <translation type="unfinished">Init ng tubig [°C]</translation>
    </message>
    <message>
        <source>Water volume</source>
        <translation type="unfinished">Dami ng tubig</translation>
    </message>
    <message>
        <source>Water weighs a tonne a cubic metre: 25 cm of it are 250 kg on every square metre. Roof, frame and wiring are for people licensed where you are.</source>
        <translation type="unfinished">Isang tonelada ang bigat ng bawat metro kubiko ng tubig: ang 25 cm ay 250 kg sa bawat metro kuwadrado. Ang bubong, balangkas at kuryente ay para sa may lisensiya sa inyong lugar.</translation>
    </message>
    <message>
        <source>Water, by month</source>
        <translation type="unfinished">Tubig, bawat buwan</translation>
    </message>
    <message>
        <source>Water-test log</source>
        <translation type="unfinished">Tala ng pagsusuri ng tubig</translation>
    </message>
    <message>
        <source>Ways of stocking</source>
        <translation type="unfinished">Mga paraan ng paglalagay</translation>
    </message>
    <message>
        <source>Ways to take the harvest</source>
        <translation type="unfinished">Mga paraan ng pag-ani</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">Miyerkoles</translation>
    </message>
    <message>
        <source>Wee&amp;ks</source>
        <translation type="unfinished">Mga lin&amp;ggo</translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished">Linggo</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation type="unfinished">Susunod na linggo</translation>
    </message>
    <message>
        <source>Week before</source>
        <translation type="unfinished">Nakaraang linggo</translation>
    </message>
    <message>
        <source>Week begins on</source>
        <translation type="unfinished">Simula ng linggo</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation type="unfinished">Linggo-linggo</translation>
    </message>
    <message>
        <source>Week {week}</source>
        <translation type="unfinished">Linggo {week}</translation>
    </message>
    <message>
        <source>Week's tasks</source>
        <translation type="unfinished">Mga gawain sa linggo</translation>
    </message>
    <message>
        <source>Weekly t&amp;argets</source>
        <translation type="unfinished">Mga lingguhang &amp;target</translation>
    </message>
    <message>
        <source>Weekly t&amp;arget…</source>
        <translation type="unfinished">Lingguhang &amp;target…</translation>
    </message>
    <message>
        <source>Weekly target</source>
        <translation type="unfinished">Lingguhang target</translation>
    </message>
    <message>
        <source>Weekly task sheet</source>
        <translation type="unfinished">Lingguhang papel ng gawain</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation type="unfinished">Linggo</translation>
    </message>
    <message>
        <source>Weeks are {value}; they must lie within {low} to {high}.</source>
        <translation type="unfinished">Ang linggo ay {value}; dapat mula {low} hanggang {high}.</translation>
    </message>
    <message>
        <source>Weeks between two groups</source>
        <translation type="unfinished">Linggo sa pagitan ng dalawang grupo</translation>
    </message>
    <message>
        <source>Weeks from here</source>
        <translation type="unfinished">Mga linggo mula rito</translation>
    </message>
    <message>
        <source>Weeks in which supply falls below demand, mostly after fish were harvested.</source>
        <translation type="unfinished">Mga linggong kulang ang suplay sa pangangailangan, kadalasan pagkatapos mag-ani ng isda.</translation>
    </message>
    <message>
        <source>Weeks later</source>
        <translation type="unfinished">Linggong huli</translation>
    </message>
    <message>
        <source>Weeks near what is wanted: {crop}</source>
        <translation type="unfinished">Mga linggong malapit sa kailangan: {crop}</translation>
    </message>
    <message>
        <source>Weeks of the balance</source>
        <translation type="unfinished">Mga linggo ng balanse</translation>
    </message>
    <message>
        <source>Weeks short</source>
        <translation type="unfinished">Mga linggong kulang</translation>
    </message>
    <message>
        <source>Weeks short in the whole plan</source>
        <translation type="unfinished">Mga linggong kulang sa buong plano</translation>
    </message>
    <message>
        <source>Weeks that are planned</source>
        <translation type="unfinished">Mga linggong nasa plano</translation>
    </message>
    <message>
        <source>Weigh a level scoop of your feed; weigh it again with every new bag</source>
        <translation type="unfinished">Timbangin ang isang patag na takal ng pakain; timbanging muli sa bawat bagong sako</translation>
    </message>
    <message>
        <source>Weighed sample</source>
        <translation type="unfinished">Tinimbang na sample</translation>
    </message>
    <message>
        <source>Weight at harvest</source>
        <translation type="unfinished">Bigat sa ani</translation>
    </message>
    <message>
        <source>Weight by length, exponent</source>
        <translation type="unfinished">Bigat ayon sa haba, exponent</translation>
    </message>
    <message>
        <source>Weight by length, factor</source>
        <translation type="unfinished">Bigat ayon sa haba, factor</translation>
    </message>
    <message>
        <source>Weight of a fingerling</source>
        <translation type="unfinished">Bigat ng similya</translation>
    </message>
    <message>
        <source>Weight of all living fish of a group or a tank together.</source>
        <translation type="unfinished">Timbang ng lahat ng buhay na isda ng grupo o tangke.</translation>
    </message>
    <message>
        <source>Weight of each</source>
        <translation type="unfinished">Bigat ng bawat isa</translation>
    </message>
    <message>
        <source>Weight of fish for each cubic metre of tank.</source>
        <translation type="unfinished">Timbang ng isda bawat metro kubiko ng tangke.</translation>
    </message>
    <message>
        <source>Weight of one fish</source>
        <translation type="unfinished">Bigat ng isang isda</translation>
    </message>
    <message>
        <source>Weight of one fish on average; a weighed sample mends it.</source>
        <translation type="unfinished">Karaniwang timbang ng isang isda; itinatama ng tinimbang na sample.</translation>
    </message>
    <message>
        <source>Wh&amp;y these figures…</source>
        <translation type="unfinished">Bakit &amp;ganito ang mga numero…</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Ano</translation>
    </message>
    <message>
        <source>What &amp;moved, and why</source>
        <translation type="unfinished">Ano ang na&amp;lipat, at bakit</translation>
    </message>
    <message>
        <source>What a level scoop holds</source>
        <translation type="unfinished">Laman ng patag na takal</translation>
    </message>
    <message>
        <source>What a number was worked out from, or who typed it: Ctrl+I on it, or the right button, answers.</source>
        <translation type="unfinished">Kung saan kinuwenta ang isang bilang, o kung sino ang nag-type nito: sumasagot ang Ctrl+I dito, o ang kanang pindutan.</translation>
    </message>
    <message>
        <source>What bacteria make of ammonia in the end, and the nitrogen that plants take.</source>
        <translation type="unfinished">Huling gawa ng bakterya mula sa ammonia; nitrogen na kinukuha ng halaman.</translation>
    </message>
    <message>
        <source>What can be wanted</source>
        <translation type="unfinished">Ano ang maaaring hilingin</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation type="unfinished">Ang kaibhan</translation>
    </message>
    <message>
        <source>What differs from today's plan</source>
        <translation type="unfinished">Ang kaibhan sa plano ngayon</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation type="unfinished">Ang hindi kasya</translation>
    </message>
    <message>
        <source>What does not fit ({count})</source>
        <translation type="unfinished">Ang hindi kasya ({count})</translation>
    </message>
    <message>
        <source>What fish give off, both forms of it together, counted as nitrogen; a part of it is poison.</source>
        <translation type="unfinished">Inilalabas ng isda, ang dalawang anyo nito, binibilang bilang nitrogen; lason ang bahagi nito.</translation>
    </message>
    <message>
        <source>What fish leave that does not dissolve; filters catch it, and it can be mineralised.</source>
        <translation type="unfinished">Dumi ng isda na hindi natutunaw; sinasalo ng pansala at maaaring i-mineralise.</translation>
    </message>
    <message>
        <source>What fits</source>
        <translation type="unfinished">Ang kasya</translation>
    </message>
    <message>
        <source>What goes in</source>
        <translation type="unfinished">Ang pumapasok</translation>
    </message>
    <message>
        <source>What goes in next</source>
        <translation type="unfinished">Ang susunod na itatanim</translation>
    </message>
    <message>
        <source>What goes wrong from today on, and changes that repair it. Each is worked out on a forecast of the changed farm; the cheapest stands first.</source>
        <translation type="unfinished">Ang magkakamali mula ngayon, at mga pagbabagong mag-aayos. Kinukuwenta ang bawat isa sa forecast ng binagong farm; nauuna ang pinakamura.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished">Ano ang nangyari</translation>
    </message>
    <message>
        <source>What happened is what you logged; the planned figures come from the plan. What the packet of a seed lot says is moved by the seeds you counted.</source>
        <translation type="unfinished">Ang nangyari ay ang itinala mo; galing sa plano ang mga bilang ng plano. Ang sabi sa pakete ng lote ng binhi ay itinatama ng mga binhing binilang mo.</translation>
    </message>
    <message>
        <source>What happened, planned against actual, what was learned</source>
        <translation type="unfinished">Ano ang nangyari, plano laban sa aktuwal, ano ang natutunan</translation>
    </message>
    <message>
        <source>What happened, what is late and costs heads, planned against actual with totals by reason, and what was learned. Seed lots and meters with their tests and calibrations.</source>
        <translation type="unfinished">Ang nangyari, ang huli na at nababawas sa ani, ang plano laban sa totoo na may kabuuan ayon sa dahilan, at ang natutuhan. Mga lote ng binhi at panukat kasama ang mga subok at calibration.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation type="unfinished">Ang mangyayari</translation>
    </message>
    <message>
        <source>What happens to the group</source>
        <translation type="unfinished">Ang nangyayari sa grupo</translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished">Paano kung</translation>
    </message>
    <message>
        <source>What is &amp;chosen</source>
        <translation type="unfinished">Ang na&amp;pili</translation>
    </message>
    <message>
        <source>What is chosen</source>
        <translation type="unfinished">Ang napili</translation>
    </message>
    <message>
        <source>What is counted</source>
        <translation type="unfinished">Ano ang binibilang</translation>
    </message>
    <message>
        <source>What is due in the week in at most 160 letters, for any phone</source>
        <translation type="unfinished">Ang gagawin sa linggo sa di-hihigit sa 160 titik, para sa anumang telepono</translation>
    </message>
    <message>
        <source>What is left when the month begins</source>
        <translation type="unfinished">Natitira sa simula ng buwan</translation>
    </message>
    <message>
        <source>What is listed</source>
        <translation type="unfinished">Ano ang nakalista</translation>
    </message>
    <message>
        <source>What is planted fits what the fish can carry, as far as the published bands tell.</source>
        <translation type="unfinished">Tugma ang tanim sa kaya ng isda, ayon sa mga nailathalang saklaw.</translation>
    </message>
    <message>
        <source>What is seen</source>
        <translation type="unfinished">Ano ang nakikita</translation>
    </message>
    <message>
        <source>What is sown, picked, fed and measured is logged here, and held against the plan.</source>
        <translation type="unfinished">Itinatala rito ang inihasik, inani, ipinakain at sinukat, at inihahambing sa plano.</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation type="unfinished">Ang sinusubok</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation type="unfinished">Ang hinihingi</translation>
    </message>
    <message>
        <source>What is worked out</source>
        <translation type="unfinished">Ano ang kinukuwenta</translation>
    </message>
    <message>
        <source>What it gives</source>
        <translation type="unfinished">Ibinibigay nito</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished">Kung ano ito</translation>
    </message>
    <message>
        <source>What it keeps to</source>
        <translation type="unfinished">Ano ang sinusunod nito</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation type="unfinished">Ibig sabihin</translation>
    </message>
    <message>
        <source>What it moved can no longer be told.</source>
        <translation type="unfinished">Hindi na malalaman kung ano ang nalipat nito.</translation>
    </message>
    <message>
        <source>What moved, and why</source>
        <translation type="unfinished">Ano ang nalipat, at bakit</translation>
    </message>
    <message>
        <source>What of an element is dissolved in the water at the time.</source>
        <translation type="unfinished">Natunaw na elemento sa tubig sa oras na iyon.</translation>
    </message>
    <message>
        <source>What reaches the water for plants in a week: from feed, solids, doses and make-up water.</source>
        <translation type="unfinished">Dumarating sa tubig para sa halaman sa isang linggo: pakain, solido, dosis at dagdag na tubig.</translation>
    </message>
    <message>
        <source>What stands there</source>
        <translation type="unfinished">Ang nakatanim doon</translation>
    </message>
    <message>
        <source>What the crops take up in a week if they grow as foreseen.</source>
        <translation type="unfinished">Kinukuha ng pananim sa isang linggo kung lalaki gaya ng inaasahan.</translation>
    </message>
    <message>
        <source>What the fish feed supplies is held here against what the plants want, week by week.</source>
        <translation type="unfinished">Inihahambing dito ang ibinibigay ng pakain sa hinihingi ng halaman, bawat linggo.</translation>
    </message>
    <message>
        <source>What the fish feed supplies of an element and what the crops take up, week by week, and a band: short, thin, met or ample.</source>
        <translation type="unfinished">Kung gaano karaming elemento ang ibinibigay ng pakain at kinukuha ng pananim, linggo-linggo, at isang banda: kulang, manipis, sapat o sagana.</translation>
    </message>
    <message>
        <source>What the fish feed supplies of an element, set against what the crops take up, by week.</source>
        <translation type="unfinished">Ang ibinibigay ng pakain na elemento, kumpara sa kinukuha ng pananim, bawat linggo.</translation>
    </message>
    <message>
        <source>What the holes show</source>
        <translation type="unfinished">Ang ipinapakita ng mga butas</translation>
    </message>
    <message>
        <source>What the plan uses, month by month, in the month of its use: seed by lot, plugs, pots, feed by pellet size, base, iron and salts.</source>
        <translation type="unfinished">Ang gagamitin ng plano, bawat buwan ng paggamit: binhi ayon sa lot, plug, pot, pakain ayon sa laki ng pellet, base, iron at asin.</translation>
    </message>
    <message>
        <source>What the proposal brings, fit for sale</source>
        <translation type="unfinished">Ang bigay ng mungkahi, puwedeng ibenta</translation>
    </message>
    <message>
        <source>What the water asks for</source>
        <translation type="unfinished">Ang hinihingi ng tubig</translation>
    </message>
    <message>
        <source>What these figures are</source>
        <translation type="unfinished">Ano ang mga bilang na ito</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation type="unfinished">Saan ito nakabatay</translation>
    </message>
    <message>
        <source>What this section does, and how to read it</source>
        <translation type="unfinished">Ang ginagawa ng bahaging ito, at paano basahin</translation>
    </message>
    <message>
        <source>What to give {loop} this week</source>
        <translation type="unfinished">Ang ibibigay sa {loop} ngayong linggo</translation>
    </message>
    <message>
        <source>What to sow in which week so that the targets are met, little is wasted and plants take up what the fish supply. It says how near that is to the best possible.</source>
        <translation type="unfinished">Ano ang ihahasik sa aling linggo para maabot ang target, kaunti ang sayang at makuha ng halaman ang bigay ng isda. Sinasabi kung gaano ito kalapit sa pinakamahusay.</translation>
    </message>
    <message>
        <source>What today's plan brings, fit for sale</source>
        <translation type="unfinished">Ang bigay ng plano ngayon, puwedeng ibenta</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished">Ang ginawa</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished">Ang nakita</translation>
    </message>
    <message>
        <source>What was learned</source>
        <translation type="unfinished">Ano ang natutunan</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation type="unfinished">Ang nabasa</translation>
    </message>
    <message>
        <source>What went in</source>
        <translation type="unfinished">Ang inilagay</translation>
    </message>
    <message>
        <source>What would move?</source>
        <translation type="unfinished">Ano ang gagalaw?</translation>
    </message>
    <message>
        <source>What you enter about clients and sites stays on this computer unless you send it.</source>
        <translation type="unfinished">Ang inilalagay mo tungkol sa kliyente at lugar ay nananatili sa computer na ito maliban kung ipadala mo.</translation>
    </message>
    <message>
        <source>What you enter stays on this computer, in the file you see in the status bar. What the weeks showed last is kept beside it in the folder for temporary files of your user, so that the next start is quick.</source>
        <translation type="unfinished">Nananatili sa computer na ito ang inilalagay mo, sa file na nasa status bar. Ang huling ipinakita ng mga linggo ay nakatabi sa folder ng temporary files ng user mo, para mabilis ang susunod na bukas.</translation>
    </message>
    <message>
        <source>What {heading} is</source>
        <translation type="unfinished">Ano ang {heading}</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Kailan</translation>
    </message>
    <message>
        <source>When the plan begins</source>
        <translation type="unfinished">Pagsisimula ng plano</translation>
    </message>
    <message>
        <source>When the plan ended</source>
        <translation type="unfinished">Nang matapos ang plano</translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished">Saan</translation>
    </message>
    <message>
        <source>Where in its life it grows fastest</source>
        <translation type="unfinished">Kailan sa buhay nito pinakamabilis lumaki</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation type="unfinished">Saan galing</translation>
    </message>
    <message>
        <source>Where it comes from, and how sure</source>
        <translation type="unfinished">Saan galing, at gaano kasigurado</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation type="unfinished">Kinatatayuan</translation>
    </message>
    <message>
        <source>Where seedlings stand until they are moved to a bed.</source>
        <translation type="unfinished">Kinalalagyan ng mga punla hanggang ilipat-tanim.</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation type="unfinished">Saan galing ang mga bilang</translation>
    </message>
    <message>
        <source>Where would you like to begin?</source>
        <translation type="unfinished">Saan mo gustong magsimula?</translation>
    </message>
    <message>
        <source>Which</source>
        <translation type="unfinished">Alin</translation>
    </message>
    <message>
        <source>Which crop to sow in which week for which kind of bed, so that targets are met, little is more than wanted, and plants take up what the fish supply. Locked batches and what is sown before the first day stay.</source>
        <translation type="unfinished">Aling pananim ang ihahasik sa aling linggo para sa aling uri ng kama, upang maabot ang target, kaunti ang sobra, at makuha ng halaman ang ibinibigay ng isda. Mananatili ang nakakandadong batch at ang naihasik bago ang unang araw.</translation>
    </message>
    <message>
        <source>Which figure</source>
        <translation type="unfinished">Aling numero</translation>
    </message>
    <message>
        <source>Which months are shown</source>
        <translation type="unfinished">Aling buwan ang ipapakita</translation>
    </message>
    <message>
        <source>Which verdicts are shown</source>
        <translation type="unfinished">Aling hatol ang ipapakita</translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished">Sino</translation>
    </message>
    <message>
        <source>Whole plant or baby leaf; heat makes it pungent.</source>
        <translation type="unfinished">Buong halaman o murang dahon; pinaaanghang ng init.</translation>
    </message>
    <message>
        <source>Whose feed-rate ratio rules</source>
        <translation type="unfinished">Kaninong ratio ng pakain ang masusunod</translation>
    </message>
    <message>
        <source>Why a number is what it is</source>
        <translation type="unfinished">Bakit ganito ang isang bilang</translation>
    </message>
    <message>
        <source>Why is the chosen part what it is</source>
        <translation type="unfinished">Bakit ganito ang napiling bahagi</translation>
    </message>
    <message>
        <source>Why it cannot be taken</source>
        <translation type="unfinished">Bakit hindi matanggap</translation>
    </message>
    <message>
        <source>Why the figures shown here are what they are</source>
        <translation type="unfinished">Bakit ganito ang mga numerong ipinapakita rito</translation>
    </message>
    <message>
        <source>Why the number in hand, or the figures of what is chosen, are what they are</source>
        <translation type="unfinished">Bakit ganito ang bilang na hawak, o ang mga numero ng napili</translation>
    </message>
    <message>
        <source>Why the week is as it is</source>
        <translation type="unfinished">Bakit ganito ang linggo</translation>
    </message>
    <message>
        <source>Why these figures…</source>
        <translation type="unfinished">Bakit ganito ang mga bilang…</translation>
    </message>
    <message>
        <source>Why {element} is short</source>
        <translation type="unfinished">Bakit kulang ang {element}</translation>
    </message>
    <message>
        <source>Why {value}?</source>
        <translation type="unfinished">Bakit {value}?</translation>
    </message>
    <message>
        <source>Why: {causes}</source>
        <translation type="unfinished">Bakit: {causes}</translation>
    </message>
    <message>
        <source>Why: {figure}</source>
        <translation type="unfinished">Bakit: {figure}</translation>
    </message>
    <message>
        <source>Why: {matter}</source>
        <translation type="unfinished">Bakit: {matter}</translation>
    </message>
    <message>
        <source>Why: {words}</source>
        <translation type="unfinished">Bakit: {words}</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">Bakit?</translation>
    </message>
    <message>
        <source>Why? The right button offers the numbers of this week; Ctrl+I asks about those beside it</source>
        <translation type="unfinished">Bakit? Inaalok ng kanang pindutan ang mga bilang ng linggong ito; itinatanong ng Ctrl+I ang mga katabi</translation>
    </message>
    <message>
        <source>Why? {keys} or the right button tells</source>
        <translation type="unfinished">Bakit? Sinasabi ng {keys} o ng kanang pindutan</translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished">Lapad</translation>
    </message>
    <message>
        <source>Width of a plant that has room</source>
        <translation type="unfinished">Lapad ng halamang may lugar</translation>
    </message>
    <message>
        <source>With a margin</source>
        <translation type="unfinished">May palugit</translation>
    </message>
    <message>
        <source>With it these would share places with others: {batches}. Make room for them, then take it up again.</source>
        <translation type="unfinished">Kapag ginamit ito, makikihati sa lugar ng iba ang mga ito: {batches}. Bigyan sila ng lugar, saka gamitin muli.</translation>
    </message>
    <message>
        <source>With what was read and dosed</source>
        <translation type="unfinished">Kung ano ang ginamit sa pagsukat at pagdodosis</translation>
    </message>
    <message>
        <source>Withdrawal time</source>
        <translation type="unfinished">Panahon ng pag-iwas</translation>
    </message>
    <message>
        <source>Within 0.1 % of the best possible.</source>
        <translation type="unfinished">Nasa loob ng 0.1 % ng pinakamahusay na posible.</translation>
    </message>
    <message>
        <source>Within the tolerance, and no figure of the program comes from this publication</source>
        <translation type="unfinished">Pasok sa pinapayagang layo, at walang bilang ng programa na galing sa lathalaing ito</translation>
    </message>
    <message>
        <source>Within the tolerance, but a figure of the program comes from this very publication</source>
        <translation type="unfinished">Pasok sa pinapayagang layo, pero may bilang ng programa na galing mismo sa lathalaing ito</translation>
    </message>
    <message>
        <source>Within the tolerance, but no figure of the program went in: only a formula is checked</source>
        <translation type="unfinished">Pasok sa pinapayagang layo, pero walang bilang ng programang ginamit: pormula lamang ang sinusuri</translation>
    </message>
    <message>
        <source>Within these limits</source>
        <translation type="unfinished">Sa loob ng mga limit na ito</translation>
    </message>
    <message>
        <source>Within {percent} % of the best possible.</source>
        <translation type="unfinished">Nasa loob ng {percent} % ng pinakamahusay na posible.</translation>
    </message>
    <message>
        <source>Without a lot all of the seed is to buy. Order early enough to have it when the month begins.</source>
        <translation type="unfinished">Kung walang lote, bibilhin ang lahat ng binhi. Umorder nang maaga para nasa kamay na pagsisimula ng buwan.</translation>
    </message>
    <message>
        <source>Word</source>
        <translation type="unfinished">Salita</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation type="unfinished">Mga salitang gamit dito</translation>
    </message>
    <message>
        <source>Work a season out from what is wanted</source>
        <translation type="unfinished">Kuwentahin ang panahon mula sa hinihingi</translation>
    </message>
    <message>
        <source>Work each week, at most</source>
        <translation type="unfinished">Trabaho bawat linggo, pinakamarami</translation>
    </message>
    <message>
        <source>Work out</source>
        <translation type="unfinished">Kuwentahin</translation>
    </message>
    <message>
        <source>Work out low and high of every week</source>
        <translation type="unfinished">Kuwentahin ang mababa at mataas ng bawat linggo</translation>
    </message>
    <message>
        <source>Work out low and high of what is foreseen</source>
        <translation type="unfinished">Kuwentahin ang mababa at mataas ng inaasahan</translation>
    </message>
    <message>
        <source>Work out low and high values, and the chance that each target is met</source>
        <translation type="unfinished">Kuwentahin ang mababa at mataas na halaga, at ang tsansang maabot ang bawat target</translation>
    </message>
    <message>
        <source>Work out the start-up</source>
        <translation type="unfinished">Kuwentahin ang pagsisimula</translation>
    </message>
    <message>
        <source>Work out what to sow for the list</source>
        <translation type="unfinished">Kuwentahin ang ihahasik para sa listahan</translation>
    </message>
    <message>
        <source>Work published figures out again and see how far the program is from print</source>
        <translation type="unfinished">Kuwentahing muli ang mga nailathalang numero at tingnan ang layo ng programa</translation>
    </message>
    <message>
        <source>Working out what it moved…</source>
        <translation type="unfinished">Inaalam kung ano ang nalipat…</translation>
    </message>
    <message>
        <source>Working…</source>
        <translation type="unfinished">Ginagawa…</translation>
    </message>
    <message>
        <source>Works the plan out with your value, keeps nothing</source>
        <translation type="unfinished">Kinukuwenta ang plano sa halaga mo, walang itinatabi</translation>
    </message>
    <message>
        <source>Worst fall</source>
        <translation type="unfinished">Pinakamalaking bagsak</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation type="unfinished">Halaga</translation>
    </message>
    <message>
        <source>Worth {plan} of 100; the same amount sown every week is worth {hand}, and no plan more than {bound}.</source>
        <translation type="unfinished">Halagang {plan} sa 100; ang parehong dami na inihahasik linggo-linggo ay {hand}, at walang planong hihigit sa {bound}.</translation>
    </message>
    <message>
        <source>Write all entries of your own as text</source>
        <translation type="unfinished">Isulat ang lahat ng sariling tala bilang teksto</translation>
    </message>
    <message>
        <source>Write grams and K or Ca, such as 40K or 35 Ca.</source>
        <translation type="unfinished">Isulat ang gramo at K o Ca, gaya ng 40K o 35 Ca.</translation>
    </message>
    <message>
        <source>Write heads, or kilograms with kg, such as 23 or 1.2 kg.</source>
        <translation type="unfinished">Isulat ang piraso, o kilo na may kg, gaya ng 23 o 1.2 kg.</translation>
    </message>
    <message>
        <source>Write my entries as text</source>
        <translation type="unfinished">Isulat ang mga tala ko bilang teksto</translation>
    </message>
    <message>
        <source>Write over the file you gave the phone last time: what moved is then moved in the phone, too, and what is gone is taken off. Every entry is for a whole day; feed is the most to give.</source>
        <translation type="unfinished">Isulat sa ibabaw ng file na ibinigay sa telepono noong huli: ang nalipat ay malilipat din sa telepono, at ang nawala ay tatanggalin. Bawat tala ay buong araw; ang pakain ang pinakamarami na ibibigay.</translation>
    </message>
    <message>
        <source>Write…</source>
        <translation type="unfinished">Isulat…</translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation type="unfinished">Isinusulat ang file…</translation>
    </message>
    <message>
        <source>W{number} (short for week)</source>
        <translation type="unfinished">W{number}</translation>
    </message>
    <message>
        <source>Year poster</source>
        <translation type="unfinished">Poster ng taon</translation>
    </message>
    <message>
        <source>Years, months and weeks</source>
        <translation type="unfinished">Taon, buwan at linggo</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished">Oo</translation>
    </message>
    <message>
        <source>Yes, under conditions: {area} m² more.</source>
        <translation type="unfinished">Oo, may kondisyon: {area} m² pa.</translation>
    </message>
    <message>
        <source>Yes, with</source>
        <translation type="unfinished">Oo, kung</translation>
    </message>
    <message>
        <source>Yes: this loop can carry {area} m² more.</source>
        <translation type="unfinished">Oo: kaya ng loop ang {area} m² pa.</translation>
    </message>
    <message>
        <source>Yield of one plant</source>
        <translation type="unfinished">Ani ng isang halaman</translation>
    </message>
    <message>
        <source>You stopped the search; this is the best so far.</source>
        <translation type="unfinished">Itinigil mo ang paghahanap; ito ang pinakamahusay sa ngayon.</translation>
    </message>
    <message>
        <source>Your entries were written to {name}.</source>
        <translation type="unfinished">Naisulat ang mga tala mo sa {name}.</translation>
    </message>
    <message>
        <source>Your fish can carry</source>
        <translation type="unfinished">Kaya ng isda mo</translation>
    </message>
    <message>
        <source>Your own farm</source>
        <translation type="unfinished">Sarili mong farm</translation>
    </message>
    <message>
        <source>Your own figures. Leave a field empty to go by the catalogue.</source>
        <translation type="unfinished">Sarili mong numero. Iwang walang laman para sumunod sa katalogo.</translation>
    </message>
    <message>
        <source>Your own value</source>
        <translation type="unfinished">Sarili mong halaga</translation>
    </message>
    <message>
        <source>Your plan is drafted</source>
        <translation type="unfinished">Handa na ang unang plano mo</translation>
    </message>
    <message>
        <source>Your weeks begin here</source>
        <translation type="unfinished">Dito nagsisimula ang iyong mga linggo</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished">Palaki&amp;hin</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished">Pali&amp;itin</translation>
    </message>
    <message>
        <source>_</source>
        <translation type="unfinished">_</translation>
    </message>
    <message>
        <source>a cell of a tray for each pot, in whole trays</source>
        <translation type="unfinished">isang selda ng tray para sa bawat paso, sa buong tray</translation>
    </message>
    <message>
        <source>a feeding table</source>
        <translation type="unfinished">talaan ng pakain</translation>
    </message>
    <message>
        <source>a figure of your own in the catalogue</source>
        <translation type="unfinished">sarili mong halaga sa katalogo</translation>
    </message>
    <message>
        <source>a fixed share of body weight</source>
        <translation type="unfinished">takdang bahagi ng bigat</translation>
    </message>
    <message>
        <source>a sheet of labels</source>
        <translation type="unfinished">papel na label</translation>
    </message>
    <message>
        <source>a square metre over the plants on it</source>
        <translation type="unfinished">isang metro kuwadrado na hinati sa mga halaman dito</translation>
    </message>
    <message>
        <source>a week that is wanted in part wants part of its amount</source>
        <translation type="unfinished">ang linggong bahagi lang ang kailangan ay bahagi lang ng dami ang hinihingi</translation>
    </message>
    <message>
        <source>a week, beyond what is supplied; nothing the plan has doses of fills it</source>
        <translation type="unfinished">bawat linggo, higit sa supply; walang dosis sa plano na pupuno nito</translation>
    </message>
    <message>
        <source>about {grams} g a day</source>
        <translation type="unfinished">mga {grams} g/araw</translation>
    </message>
    <message>
        <source>about {kg} kg</source>
        <translation type="unfinished">mga {kg} kg</translation>
    </message>
    <message>
        <source>acid</source>
        <translation type="unfinished">asido</translation>
    </message>
    <message>
        <source>acid by the log</source>
        <translation type="unfinished">asido ayon sa talaan</translation>
    </message>
    <message>
        <source>acid eq per kg feed</source>
        <translation type="unfinished">asido bawat kg ng pakain</translation>
    </message>
    <message>
        <source>acid made in a week</source>
        <translation type="unfinished">asidong nagagawa sa isang linggo</translation>
    </message>
    <message>
        <source>acid of the week, as the alkalinity it takes, over the water of the loop</source>
        <translation type="unfinished">asido ng linggo, bilang alkalinity na inaalis nito, hinati sa tubig ng loop</translation>
    </message>
    <message>
        <source>acid that takes as much alkalinity as was seen to go, and the base given meanwhile</source>
        <translation type="unfinished">asidong nag-aalis ng kasindami ng nakitang nawalang alkalinity, at ang base na ibinigay noon</translation>
    </message>
    <message>
        <source>act</source>
        <translation type="unfinished">act</translation>
    </message>
    <message>
        <source>actual days</source>
        <translation type="unfinished">totoong araw</translation>
    </message>
    <message>
        <source>added</source>
        <translation type="unfinished">idinagdag</translation>
    </message>
    <message>
        <source>added by warmth and light</source>
        <translation type="unfinished">dagdag ng init at liwanag</translation>
    </message>
    <message>
        <source>aerated</source>
        <translation type="unfinished">may hangin</translation>
    </message>
    <message>
        <source>after</source>
        <translation type="unfinished">pagkatapos</translation>
    </message>
    <message>
        <source>after the plan</source>
        <translation type="unfinished">pagkatapos ng plano</translation>
    </message>
    <message>
        <source>against the four weeks before; {back}</source>
        <translation type="unfinished">kumpara sa apat na linggong nauna; {back}</translation>
    </message>
    <message>
        <source>age days</source>
        <translation type="unfinished">edad</translation>
    </message>
    <message>
        <source>aim of the check</source>
        <translation type="unfinished">layon ng pagsuri</translation>
    </message>
    <message>
        <source>air at the beds</source>
        <translation type="unfinished">hangin sa mga kama</translation>
    </message>
    <message>
        <source>air at the nursery</source>
        <translation type="unfinished">hangin sa punlaan</translation>
    </message>
    <message>
        <source>air is blown through it</source>
        <translation type="unfinished">hinahanginan ito</translation>
    </message>
    <message>
        <source>air temperature</source>
        <translation type="unfinished">temperatura ng hangin</translation>
    </message>
    <message>
        <source>alkalinity</source>
        <translation type="unfinished">alkalinity</translation>
    </message>
    <message>
        <source>alkalinity (KH)</source>
        <translation type="unfinished">alkalinidad (KH)</translation>
    </message>
    <message>
        <source>alkalinity foreseen</source>
        <translation type="unfinished">inaasahang alkalinity</translation>
    </message>
    <message>
        <source>alkalinity that goes until pH is at the limit, free carbon dioxide unchanged</source>
        <translation type="unfinished">alkalinity na nawawala hanggang umabot ang pH sa limit, walang bago sa malayang carbon dioxide</translation>
    </message>
    <message>
        <source>alkalinity to spare</source>
        <translation type="unfinished">palugit na alkalinity</translation>
    </message>
    <message>
        <source>all at once</source>
        <translation type="unfinished">lahat nang sabay</translation>
    </message>
    <message>
        <source>all batches of the weeks below</source>
        <translation type="unfinished">lahat ng batch ng mga linggo sa ibaba</translation>
    </message>
    <message>
        <source>all cells, less those that are held on the fullest day</source>
        <translation type="unfinished">lahat ng selda, bawas ang hawak sa pinakapunong araw</translation>
    </message>
    <message>
        <source>all come up to the best temperature, none at the ceiling, in a line between</source>
        <translation type="unfinished">tumutubo lahat hanggang sa pinakamainam na init, wala sa pinakamataas, tuwid na guhit sa pagitan</translation>
    </message>
    <message>
        <source>all fish</source>
        <translation type="unfinished">lahat ng isda</translation>
    </message>
    <message>
        <source>all places, less those that are held</source>
        <translation type="unfinished">lahat ng lugar, bawas ang hawak na</translation>
    </message>
    <message>
        <source>all sowings, the balance and the harvest week by week, with assumptions and sources</source>
        <translation type="unfinished">lahat ng paghahasik, balanse at ani linggo-linggo, may mga palagay at pinagmulan</translation>
    </message>
    <message>
        <source>all that are left from the day before, and what changed that morning</source>
        <translation type="unfinished">lahat ng natira mula kahapon, at ang nabago nang umagang iyon</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation type="unfinished">palugit sa pagkawala</translation>
    </message>
    <message>
        <source>along with what was changed: {kinds}</source>
        <translation type="unfinished">kasama ng binago: {kinds}</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation type="unfinished">taas mula dagat</translation>
    </message>
    <message>
        <source>ammonia</source>
        <translation type="unfinished">ammonia</translation>
    </message>
    <message>
        <source>ammonia (TAN)</source>
        <translation type="unfinished">amonya (TAN)</translation>
    </message>
    <message>
        <source>ammonia nitrogen a day</source>
        <translation type="unfinished">nitrogen ng ammonia bawat araw</translation>
    </message>
    <message>
        <source>ammonia nitrogen on a day</source>
        <translation type="unfinished">nitrogen ng ammonia sa isang araw</translation>
    </message>
    <message>
        <source>ammonia nitrogen over what a square metre of biofilm takes at the water's warmth</source>
        <translation type="unfinished">nitrogen ng ammonia na hinati sa kaya ng isang metro kuwadrado ng biofilm sa init ng tubig</translation>
    </message>
    <message>
        <source>ammonia per protein</source>
        <translation type="unfinished">ammonia bawat protina</translation>
    </message>
    <message>
        <source>amount</source>
        <translation type="unfinished">dami</translation>
    </message>
    <message>
        <source>amount, times its price</source>
        <translation type="unfinished">dami na minultiplika sa presyo nito</translation>
    </message>
    <message>
        <source>ample</source>
        <translation type="unfinished">labis</translation>
    </message>
    <message>
        <source>ample above</source>
        <translation type="unfinished">labis kapag higit sa</translation>
    </message>
    <message>
        <source>an area that is always planted</source>
        <translation type="unfinished">lawak na laging may tanim</translation>
    </message>
    <message>
        <source>and {rest} more</source>
        <translation type="unfinished">at {rest} pa</translation>
    </message>
    <message>
        <source>answer for more beds</source>
        <translation type="unfinished">sagot para sa dagdag na kama</translation>
    </message>
    <message>
        <source>answer for {what}</source>
        <translation type="unfinished">sagot para sa {what}</translation>
    </message>
    <message>
        <source>any day of the week</source>
        <translation type="unfinished">anumang araw ng linggo</translation>
    </message>
    <message>
        <source>appetite share</source>
        <translation type="unfinished">gana sa pagkain</translation>
    </message>
    <message>
        <source>area</source>
        <translation type="unfinished">lawak</translation>
    </message>
    <message>
        <source>area fed</source>
        <translation type="unfinished">lawak na napapakain</translation>
    </message>
    <message>
        <source>area of a batch</source>
        <translation type="unfinished">lawak ng isang batch</translation>
    </message>
    <message>
        <source>area of a batch in the week</source>
        <translation type="unfinished">lawak ng isang batch sa linggo</translation>
    </message>
    <message>
        <source>area of a crop</source>
        <translation type="unfinished">lawak ng isang pananim</translation>
    </message>
    <message>
        <source>area of a plant</source>
        <translation type="unfinished">lawak ng isang halaman</translation>
    </message>
    <message>
        <source>area of places</source>
        <translation type="unfinished">lawak ng mga lugar</translation>
    </message>
    <message>
        <source>area of the batch, times the days of the week on which it stands there</source>
        <translation type="unfinished">lawak ng batch na minultiplika sa mga araw ng linggo na naroon ito</translation>
    </message>
    <message>
        <source>area of the places held, and of the plants that have none yet</source>
        <translation type="unfinished">lawak ng mga lugar na hawak, at ng mga halamang wala pa</translation>
    </message>
    <message>
        <source>area of {what}</source>
        <translation type="unfinished">lawak ng {what}</translation>
    </message>
    <message>
        <source>area, times what a square metre asks for, for the protein that is fed</source>
        <translation type="unfinished">lawak na minultiplika sa hinihingi ng isang metro kuwadrado, para sa protinang ipinapakain</translation>
    </message>
    <message>
        <source>as CaCO3</source>
        <translation type="unfinished">bilang CaCO3</translation>
    </message>
    <message>
        <source>as entered</source>
        <translation type="unfinished">gaya ng inilagay</translation>
    </message>
    <message>
        <source>as last weighed or stocked, and grown since; fish that were added change the mean</source>
        <translation type="unfinished">ayon sa huling timbang o paglagay, at inilaki mula noon; nababago ng idinagdag na isda ang mean</translation>
    </message>
    <message>
        <source>as manure: below the leaf, not on a harvest day, own tools</source>
        <translation type="unfinished">gaya ng dumi ng hayop: sa ilalim ng dahon, hindi sa araw ng ani, sariling gamit</translation>
    </message>
    <message>
        <source>as many plants as cover their weeks, less what later sowings make needless</source>
        <translation type="unfinished">kasindaming halaman na sapat sa mga linggo nila, bawas ang hindi na kailangan dahil sa mga susunod na hasik</translation>
    </message>
    <message>
        <source>as much base as acid is made</source>
        <translation type="unfinished">kasindami ng asidong nagagawa</translation>
    </message>
    <message>
        <source>as nitrogen, for the filter to take up</source>
        <translation type="unfinished">bilang nitrogen, para sa filter</translation>
    </message>
    <message>
        <source>as nitrogen; from {tan} mg/L ammonia, pH {ph}, {warmth} °C; at most {limit} for these fish</source>
        <translation type="unfinished">bilang nitrogen; mula sa {tan} mg/L ammonia, pH {ph}, {warmth} °C; hanggang {limit} para sa isdang ito</translation>
    </message>
    <message>
        <source>as printed</source>
        <translation type="unfinished">gaya ng nakalimbag</translation>
    </message>
    <message>
        <source>as printed, carried to the warmth of the water</source>
        <translation type="unfinished">gaya ng nakalimbag, iniayon sa init ng tubig</translation>
    </message>
    <message>
        <source>as somebody else printed it</source>
        <translation type="unfinished">gaya ng inilimbag ng iba</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation type="unfinished">gaya ng nasa katalogo</translation>
    </message>
    <message>
        <source>as the forecast of the changed farm has it</source>
        <translation type="unfinished">ayon sa pagtaya sa binagong farm</translation>
    </message>
    <message>
        <source>as the log shows it from {first} to {last}</source>
        <translation type="unfinished">ayon sa talaan mula {first} hanggang {last}</translation>
    </message>
    <message>
        <source>as the packet says</source>
        <translation type="unfinished">ayon sa pakete</translation>
    </message>
    <message>
        <source>as the table shows</source>
        <translation type="unfinished">gaya ng nasa talaan</translation>
    </message>
    <message>
        <source>as what it is like</source>
        <translation type="unfinished">gaya ng katulad nito</translation>
    </message>
    <message>
        <source>as what it is like: {value}</source>
        <translation type="unfinished">gaya ng katulad nito: {value}</translation>
    </message>
    <message>
        <source>asked</source>
        <translation type="unfinished">tinanong</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation type="unfinished">hinihingi</translation>
    </message>
    <message>
        <source>asked for, in the plan</source>
        <translation type="unfinished">hinihingi, nasa plano na</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished">ipinalagay</translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished">hindi bababa sa</translation>
    </message>
    <message>
        <source>at least {amount} {unit}; of {draws} draws</source>
        <translation type="unfinished">kahit {amount} {unit}; sa {draws} subok</translation>
    </message>
    <message>
        <source>at most {cap_g} g at once, so that pH rises by no more than {step} in a day</source>
        <translation type="unfinished">hanggang {cap_g} g lang sa isang bigay, para hindi tumaas ang pH nang higit sa {step} sa isang araw</translation>
    </message>
    <message>
        <source>at most {limit} mg/L for these fish</source>
        <translation type="unfinished">hanggang {limit} mg/L lang para sa mga isdang ito</translation>
    </message>
    <message>
        <source>at one end of {figure} alone nothing is left</source>
        <translation type="unfinished">sa isang dulo pa lang ng {figure} ay wala nang natitira</translation>
    </message>
    <message>
        <source>at the earliest, with the fastest fall; with the slowest on {latest}</source>
        <translation type="unfinished">pinakamaaga, sa pinakamabilis na bagsak; sa pinakamabagal ay sa {latest}</translation>
    </message>
    <message>
        <source>at the earliest; perhaps it is not reached at all within the plan</source>
        <translation type="unfinished">pinakamaaga; baka hindi ito maabot sa loob ng plano</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">nakabalik</translation>
    </message>
    <message>
        <source>back at</source>
        <translation type="unfinished">nakabalik sa</translation>
    </message>
    <message>
        <source>back on {day}</source>
        <translation type="unfinished">babalik sa {day}</translation>
    </message>
    <message>
        <source>band of the ratio</source>
        <translation type="unfinished">saklaw ng ratio</translation>
    </message>
    <message>
        <source>band, high</source>
        <translation type="unfinished">saklaw, mataas</translation>
    </message>
    <message>
        <source>band, low</source>
        <translation type="unfinished">saklaw, mababa</translation>
    </message>
    <message>
        <source>bands of leafy and fruiting crops mixed by area, for the protein that is fed</source>
        <translation type="unfinished">saklaw ng pananim na dahon at bunga, pinaghalo ayon sa lawak, para sa protinang ipinapakain</translation>
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
        <translation type="unfinished">gramo ng base</translation>
    </message>
    <message>
        <source>base in a dose</source>
        <translation type="unfinished">base sa isang dosis</translation>
    </message>
    <message>
        <source>base left over</source>
        <translation type="unfinished">base na natira</translation>
    </message>
    <message>
        <source>base that does not fit</source>
        <translation type="unfinished">base na hindi kasya</translation>
    </message>
    <message>
        <source>base wanted in a week</source>
        <translation type="unfinished">base na kailangan sa isang linggo</translation>
    </message>
    <message>
        <source>base wanted, less what fits into the doses of a week without moving pH too far</source>
        <translation type="unfinished">base na kailangan, bawas ang kasya sa mga dosis ng linggo nang hindi labis na ginagalaw ang pH</translation>
    </message>
    <message>
        <source>base {eq}</source>
        <translation type="unfinished">base {eq}</translation>
    </message>
    <message>
        <source>batch harvest</source>
        <translation type="unfinished">ani ng batch</translation>
    </message>
    <message>
        <source>batch that was seen</source>
        <translation type="unfinished">batch na nakita</translation>
    </message>
    <message>
        <source>batches</source>
        <translation type="unfinished">mga batch</translation>
    </message>
    <message>
        <source>batches moved</source>
        <translation type="unfinished">mga batch na nailipat</translation>
    </message>
    <message>
        <source>batches of these crops that are neither locked nor sown yet make way</source>
        <translation type="unfinished">nagbibigay-daan ang mga batch ng mga pananim na ito na hindi nakakandado at hindi pa naihahasik</translation>
    </message>
    <message>
        <source>batches that still last</source>
        <translation type="unfinished">mga batch na tuloy pa</translation>
    </message>
    <message>
        <source>batches that were seen</source>
        <translation type="unfinished">mga batch na nakita</translation>
    </message>
    <message>
        <source>batches without places</source>
        <translation type="unfinished">mga batch na walang lugar</translation>
    </message>
    <message>
        <source>bed</source>
        <translation type="unfinished">kama</translation>
    </message>
    <message>
        <source>bed days</source>
        <translation type="unfinished">mga araw sa kama</translation>
    </message>
    <message>
        <source>bed density</source>
        <translation type="unfinished">siksik sa kama</translation>
    </message>
    <message>
        <source>bed places</source>
        <translation type="unfinished">mga lugar sa kama</translation>
    </message>
    <message>
        <source>bed sd</source>
        <translation type="unfinished">deviation sa kama</translation>
    </message>
    <message>
        <source>bed survival share</source>
        <translation type="unfinished">bahaging nabubuhay sa kama</translation>
    </message>
    <message>
        <source>beds</source>
        <translation type="unfinished">mga kama</translation>
    </message>
    <message>
        <source>beds as you type them</source>
        <translation type="unfinished">mga kama habang itina-type mo</translation>
    </message>
    <message>
        <source>beds planted</source>
        <translation type="unfinished">mga kamang may tanim</translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished">bago</translation>
    </message>
    <message>
        <source>before your own value it was {value} ({source})</source>
        <translation type="unfinished">bago ang sariling halaga mo, {value} ito ({source})</translation>
    </message>
    <message>
        <source>begins with the last test before the plan, and is counted on from {day}</source>
        <translation type="unfinished">nagsisimula sa huling suri bago ang plano, at binibilang mula {day}</translation>
    </message>
    <message>
        <source>below 0 for earlier</source>
        <translation type="unfinished">mas mababa sa 0 kung mas maaga</translation>
    </message>
    <message>
        <source>best found by trying, all else as it is</source>
        <translation type="unfinished">pinakamahusay na natagpuan sa pagsubok, walang ibang binago</translation>
    </message>
    <message>
        <source>between {first} and {last}</source>
        <translation type="unfinished">mula {first} hanggang {last}</translation>
    </message>
    <message>
        <source>beyond the plan</source>
        <translation type="unfinished">lampas sa plano</translation>
    </message>
    <message>
        <source>bicarbonate, gentle</source>
        <translation type="unfinished">bicarbonate, banayad</translation>
    </message>
    <message>
        <source>biofilm surface needed</source>
        <translation type="unfinished">lawak ng biofilm na kailangan</translation>
    </message>
    <message>
        <source>biofilm surface needed on a day</source>
        <translation type="unfinished">lawak ng biofilm na kailangan sa isang araw</translation>
    </message>
    <message>
        <source>biofilm surface of gravel</source>
        <translation type="unfinished">lawak ng biofilm ng graba</translation>
    </message>
    <message>
        <source>biofilm surface there is</source>
        <translation type="unfinished">lawak ng biofilm na mayroon</translation>
    </message>
    <message>
        <source>block</source>
        <translation type="unfinished">bloke</translation>
    </message>
    <message>
        <source>body content</source>
        <translation type="unfinished">laman ng katawan</translation>
    </message>
    <message>
        <source>body n g per</source>
        <translation type="unfinished">nitrogen ng katawan</translation>
    </message>
    <message>
        <source>book</source>
        <translation type="unfinished">aklat</translation>
    </message>
    <message>
        <source>book days</source>
        <translation type="unfinished">araw ayon sa aklat</translation>
    </message>
    <message>
        <source>book days to first pick</source>
        <translation type="unfinished">araw ayon sa aklat bago ang unang ani</translation>
    </message>
    <message>
        <source>book days, no climate entered</source>
        <translation type="unfinished">araw ng libro, walang klimang nailagay</translation>
    </message>
    <message>
        <source>book weight</source>
        <translation type="unfinished">timbang ng aklat sa kuwenta</translation>
    </message>
    <message>
        <source>book yield</source>
        <translation type="unfinished">ani ayon sa aklat</translation>
    </message>
    <message>
        <source>bound</source>
        <translation type="unfinished">hangganan</translation>
    </message>
    <message>
        <source>bright</source>
        <translation type="unfinished">maliwanag</translation>
    </message>
    <message>
        <source>brings sodium: only as a last resort</source>
        <translation type="unfinished">may dalang sodium: kung wala nang iba</translation>
    </message>
    <message>
        <source>brought by others</source>
        <translation type="unfinished">dala ng iba</translation>
    </message>
    <message>
        <source>by fish added</source>
        <translation type="unfinished">dahil sa idinagdag na isda</translation>
    </message>
    <message>
        <source>by light</source>
        <translation type="unfinished">dahil sa liwanag</translation>
    </message>
    <message>
        <source>by the book</source>
        <translation type="unfinished">ayon sa aklat</translation>
    </message>
    <message>
        <source>by the careful end of the band {value} {unit}</source>
        <translation type="unfinished">ayon sa maingat na dulo ng saklaw {value} {unit}</translation>
    </message>
    <message>
        <source>by the low and high of the figures behind it: it holds what is published, yet counts as outside</source>
        <translation type="unfinished">ayon sa pinakamababa at pinakamataas ng mga bilang sa likod nito: sakop nito ang nailathala, ngunit binibilang pa ring labas</translation>
    </message>
    <message>
        <source>by the low and high of the figures behind it: what is published lies beyond</source>
        <translation type="unfinished">ayon sa pinakamababa at pinakamataas ng mga bilang sa likod nito: lampas dito ang nailathala</translation>
    </message>
    <message>
        <source>by warmth</source>
        <translation type="unfinished">dahil sa init</translation>
    </message>
    <message>
        <source>by {rule} this feed carries {low} to {high} m², by {other} {other_low} to {other_high} m²</source>
        <translation type="unfinished">ayon sa {rule} kaya ng pakaing ito ang {low} hanggang {high} m², ayon sa {other} {other_low} hanggang {other_high} m²</translation>
    </message>
    <message>
        <source>by {way}; never more than is eaten</source>
        <translation type="unfinished">ayon sa {way}; huwag hihigit sa nakakain</translation>
    </message>
    <message>
        <source>ca</source>
        <translation type="unfinished">ca</translation>
    </message>
    <message>
        <source>caco3 g per</source>
        <translation type="unfinished">CaCO₃ bawat eq</translation>
    </message>
    <message>
        <source>calcium</source>
        <translation type="unfinished">kalsyo</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation type="unfinished">na-calibrate</translation>
    </message>
    <message>
        <source>calibration late</source>
        <translation type="unfinished">huli ang calibration</translation>
    </message>
    <message>
        <source>came up</source>
        <translation type="unfinished">tumubo</translation>
    </message>
    <message>
        <source>cap</source>
        <translation type="unfinished">hangganan</translation>
    </message>
    <message>
        <source>capped</source>
        <translation type="unfinished">tinabas</translation>
    </message>
    <message>
        <source>captured share</source>
        <translation type="unfinished">bahaging nahuhuli</translation>
    </message>
    <message>
        <source>carbonate</source>
        <translation type="unfinished">carbonate</translation>
    </message>
    <message>
        <source>carried day</source>
        <translation type="unfinished">araw na kaya na</translation>
    </message>
    <message>
        <source>caught before</source>
        <translation type="unfinished">nahuli dati</translation>
    </message>
    <message>
        <source>caught in plan</source>
        <translation type="unfinished">nahuli sa plano</translation>
    </message>
    <message>
        <source>caution spreads</source>
        <translation type="unfinished">deviation para sa ingat</translation>
    </message>
    <message>
        <source>ceiling</source>
        <translation type="unfinished">pinakamataas</translation>
    </message>
    <message>
        <source>cells</source>
        <translation type="unfinished">selda</translation>
    </message>
    <message>
        <source>cells a tray</source>
        <translation type="unfinished">selda bawat tray</translation>
    </message>
    <message>
        <source>chance</source>
        <translation type="unfinished">tsansa</translation>
    </message>
    <message>
        <source>chances</source>
        <translation type="unfinished">mga tsansa</translation>
    </message>
    <message>
        <source>change at high</source>
        <translation type="unfinished">pagbabago sa mataas</translation>
    </message>
    <message>
        <source>change at low</source>
        <translation type="unfinished">pagbabago sa mababa</translation>
    </message>
    <message>
        <source>change of a reading in a week</source>
        <translation type="unfinished">pagbabago ng sukat sa isang linggo</translation>
    </message>
    <message>
        <source>change of a week's harvest</source>
        <translation type="unfinished">pagbabago ng ani ng isang linggo</translation>
    </message>
    <message>
        <source>change of {what}</source>
        <translation type="unfinished">pagbabago ng {what}</translation>
    </message>
    <message>
        <source>change per</source>
        <translation type="unfinished">pagbabago bawat grado</translation>
    </message>
    <message>
        <source>change per week</source>
        <translation type="unfinished">pagbabago bawat linggo</translation>
    </message>
    <message>
        <source>change the feed at {grams} g</source>
        <translation type="unfinished">palitan ang pakain sa {grams} g</translation>
    </message>
    <message>
        <source>changed on it: {fields}</source>
        <translation type="unfinished">binago rito: {fields}</translation>
    </message>
    <message>
        <source>changed that morning</source>
        <translation type="unfinished">nabago nang umagang iyon</translation>
    </message>
    <message>
        <source>changes</source>
        <translation type="unfinished">mga pagbabago</translation>
    </message>
    <message>
        <source>chosen together</source>
        <translation type="unfinished">napili nang sabay</translation>
    </message>
    <message>
        <source>chosen together · {locked} locked</source>
        <translation type="unfinished">napili nang sabay · {locked} nakakandado</translation>
    </message>
    <message>
        <source>clear</source>
        <translation type="unfinished">linisin</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation type="unfinished">nilinis</translation>
    </message>
    <message>
        <source>clearing</source>
        <translation type="unfinished">paghawan</translation>
    </message>
    <message>
        <source>clearing days</source>
        <translation type="unfinished">mga araw ng paglilinis</translation>
    </message>
    <message>
        <source>closure</source>
        <translation type="unfinished">pagsara ng dahon</translation>
    </message>
    <message>
        <source>cold</source>
        <translation type="unfinished">lamig</translation>
    </message>
    <message>
        <source>cold store {warmth} °C</source>
        <translation type="unfinished">malamig na imbakan {warmth} °C</translation>
    </message>
    <message>
        <source>cold water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C</source>
        <translation type="unfinished">malamig ang tubig: sa {water_c} °C, {growth_share} lang ang paglaki ng {about} kumpara sa {optimum_c} °C</translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished">hanay pahaba</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation type="unfinished">bumabalik</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished">karaniwang gawi</translation>
    </message>
    <message>
        <source>computation: {formula}</source>
        <translation type="unfinished">pagkuwenta: {formula}</translation>
    </message>
    <message>
        <source>conductivity</source>
        <translation type="unfinished">conductivity</translation>
    </message>
    <message>
        <source>conductivity (EC)</source>
        <translation type="unfinished">konduktibidad (EC)</translation>
    </message>
    <message>
        <source>conductivity times the factor of the meter</source>
        <translation type="unfinished">conductivity na minultiplika sa factor ng panukat</translation>
    </message>
    <message>
        <source>content</source>
        <translation type="unfinished">laman</translation>
    </message>
    <message>
        <source>cool</source>
        <translation type="unfinished">malamig</translation>
    </message>
    <message>
        <source>corrects {code}</source>
        <translation type="unfinished">iwinawasto ang {code}</translation>
    </message>
    <message>
        <source>cost</source>
        <translation type="unfinished">gastos</translation>
    </message>
    <message>
        <source>count</source>
        <translation type="unfinished">bilang</translation>
    </message>
    <message>
        <source>count the day before</source>
        <translation type="unfinished">bilang noong nakaraang araw</translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished">binilang</translation>
    </message>
    <message>
        <source>counted dead</source>
        <translation type="unfinished">nabilang na patay</translation>
    </message>
    <message>
        <source>counted from the day of the reading, with no base given</source>
        <translation type="unfinished">binilang mula sa araw ng suri, na walang ibinigay na base</translation>
    </message>
    <message>
        <source>counted from {on} on</source>
        <translation type="unfinished">binilang mula {on}</translation>
    </message>
    <message>
        <source>counted on from the test of {day}; {expected} mg/L were expected there</source>
        <translation type="unfinished">binilang mula sa suri noong {day}; {expected} mg/L ang inaasahan doon</translation>
    </message>
    <message>
        <source>country, or any words</source>
        <translation type="unfinished">bansa, o anumang salita</translation>
    </message>
    <message>
        <source>counts as {weight} of a batch: the farther from the others, the less</source>
        <translation type="unfinished">bilang na {weight} ng batch: mas malayo sa iba, mas maliit</translation>
    </message>
    <message>
        <source>crop of the book: sow it</source>
        <translation type="unfinished">pananim ng libro: ihasik ito</translation>
    </message>
    <message>
        <source>crops</source>
        <translation type="unfinished">mga pananim</translation>
    </message>
    <message>
        <source>culled</source>
        <translation type="unfinished">tinanggal</translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished">putol</translation>
    </message>
    <message>
        <source>daily death share</source>
        <translation type="unfinished">bahaging namamatay bawat araw</translation>
    </message>
    <message>
        <source>day at the middle spacing</source>
        <translation type="unfinished">araw sa gitnang pagitan</translation>
    </message>
    <message>
        <source>day first</source>
        <translation type="unfinished">araw muna</translation>
    </message>
    <message>
        <source>day in the bed</source>
        <translation type="unfinished">araw sa kama</translation>
    </message>
    <message>
        <source>day in the nursery</source>
        <translation type="unfinished">araw sa punlaan</translation>
    </message>
    <message>
        <source>day of a stage</source>
        <translation type="unfinished">araw ng isang yugto</translation>
    </message>
    <message>
        <source>day of clearing</source>
        <translation type="unfinished">araw ng paglilinis</translation>
    </message>
    <message>
        <source>day of germination</source>
        <translation type="unfinished">araw ng pagtubo</translation>
    </message>
    <message>
        <source>day of picking</source>
        <translation type="unfinished">araw ng pag-ani</translation>
    </message>
    <message>
        <source>day on which it was filled</source>
        <translation type="unfinished">araw na pinuno ito</translation>
    </message>
    <message>
        <source>day on which the liquor goes back</source>
        <translation type="unfinished">araw na ibinabalik ang katas</translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished">araw</translation>
    </message>
    <message>
        <source>days a calibration is late</source>
        <translation type="unfinished">araw na huli ang calibration</translation>
    </message>
    <message>
        <source>days a test is late</source>
        <translation type="unfinished">araw na huli ang pagsusuri</translation>
    </message>
    <message>
        <source>days before</source>
        <translation type="unfinished">araw bago nito</translation>
    </message>
    <message>
        <source>days before the day given</source>
        <translation type="unfinished">araw bago ang ibinigay na araw</translation>
    </message>
    <message>
        <source>days before the stage and its own, the first of them counted as well</source>
        <translation type="unfinished">mga araw bago ang yugto at ang sa kaniya, bilang pati ang una</translation>
    </message>
    <message>
        <source>days between doses, less days since the last</source>
        <translation type="unfinished">araw sa pagitan ng dosis, bawas ang araw mula noong huli</translation>
    </message>
    <message>
        <source>days by the book or the grower, in whole days, and what warmth and light add</source>
        <translation type="unfinished">mga araw ayon sa aklat o nagtatanim, buong araw, at ang dagdag ng init at liwanag</translation>
    </message>
    <message>
        <source>days by the log</source>
        <translation type="unfinished">araw ayon sa talaan</translation>
    </message>
    <message>
        <source>days free</source>
        <translation type="unfinished">araw na bakante</translation>
    </message>
    <message>
        <source>days from sowing to the first pick, and days it is ready early</source>
        <translation type="unfinished">araw mula hasik hanggang unang ani, at araw na maagang handa</translation>
    </message>
    <message>
        <source>days from the first fish to its bed</source>
        <translation type="unfinished">araw mula sa unang isda hanggang sa kama nito</translation>
    </message>
    <message>
        <source>days from the first free day to the day shown, both counted</source>
        <translation type="unfinished">araw mula unang bakanteng araw hanggang ipinapakita, parehong bilang</translation>
    </message>
    <message>
        <source>days from the first pick to the last, and the last day itself</source>
        <translation type="unfinished">araw mula unang ani hanggang huli, at ang huling araw mismo</translation>
    </message>
    <message>
        <source>days from the first to the last</source>
        <translation type="unfinished">araw mula una hanggang huli</translation>
    </message>
    <message>
        <source>days late</source>
        <translation type="unfinished">araw na huli</translation>
    </message>
    <message>
        <source>days longer than planned</source>
        <translation type="unfinished">araw na lampas sa plano</translation>
    </message>
    <message>
        <source>days moved</source>
        <translation type="unfinished">araw na inilipat</translation>
    </message>
    <message>
        <source>days of it</source>
        <translation type="unfinished">mga araw nito</translation>
    </message>
    <message>
        <source>days of rotting</source>
        <translation type="unfinished">araw ng pagkabulok</translation>
    </message>
    <message>
        <source>days of the plan</source>
        <translation type="unfinished">mga araw ng plano</translation>
    </message>
    <message>
        <source>days of the stage, less those by the book</source>
        <translation type="unfinished">mga araw ng yugto, bawas ang ayon sa aklat</translation>
    </message>
    <message>
        <source>days ready early</source>
        <translation type="unfinished">araw na maagang handa</translation>
    </message>
    <message>
        <source>days sd</source>
        <translation type="unfinished">deviation ng mga araw</translation>
    </message>
    <message>
        <source>days since fish were weighed</source>
        <translation type="unfinished">mga araw mula nang timbangin ang isda</translation>
    </message>
    <message>
        <source>days since it was last done, less days between</source>
        <translation type="unfinished">araw mula nang huling gawin, bawas ang araw sa pagitan</translation>
    </message>
    <message>
        <source>days since last</source>
        <translation type="unfinished">araw mula noong huli</translation>
    </message>
    <message>
        <source>days since last dose</source>
        <translation type="unfinished">araw mula noong huling dosis</translation>
    </message>
    <message>
        <source>days since sowing</source>
        <translation type="unfinished">araw mula sa paghahasik</translation>
    </message>
    <message>
        <source>days since sowing less those before the stage, the first counted as one</source>
        <translation type="unfinished">araw mula hasik bawas ang bago ang yugto, isa ang bilang ng una</translation>
    </message>
    <message>
        <source>days sown before it is wanted</source>
        <translation type="unfinished">araw na inihasik bago kailangan</translation>
    </message>
    <message>
        <source>days that it took, less days planned</source>
        <translation type="unfinished">araw na itinagal, bawas ang araw sa plano</translation>
    </message>
    <message>
        <source>days the grower gave, times the usual spread of such days</source>
        <translation type="unfinished">mga araw na ibinigay ng nagtatanim, minultiplika sa karaniwang kalat ng ganoong araw</translation>
    </message>
    <message>
        <source>days to clearing</source>
        <translation type="unfinished">araw bago ang paglilinis</translation>
    </message>
    <message>
        <source>days to first pick</source>
        <translation type="unfinished">araw bago ang unang ani</translation>
    </message>
    <message>
        <source>days to germination</source>
        <translation type="unfinished">araw bago ang pagtubo</translation>
    </message>
    <message>
        <source>days to the bed</source>
        <translation type="unfinished">araw bago ilipat sa kama</translation>
    </message>
    <message>
        <source>days to the day</source>
        <translation type="unfinished">araw hanggang sa araw na iyon</translation>
    </message>
    <message>
        <source>days to the first</source>
        <translation type="unfinished">araw hanggang sa una</translation>
    </message>
    <message>
        <source>days to the first pick</source>
        <translation type="unfinished">araw bago ang unang ani</translation>
    </message>
    <message>
        <source>days to the first pick, less those by the book</source>
        <translation type="unfinished">araw bago ang unang ani, bawas ang ayon sa aklat</translation>
    </message>
    <message>
        <source>days to the last at the middle spacing</source>
        <translation type="unfinished">araw hanggang huli sa gitnang pagitan</translation>
    </message>
    <message>
        <source>days to the last in the bed before picking</source>
        <translation type="unfinished">araw hanggang huli sa kama bago mag-ani</translation>
    </message>
    <message>
        <source>days to the last in the nursery</source>
        <translation type="unfinished">araw hanggang huli sa punlaan</translation>
    </message>
    <message>
        <source>days to the last of clearing</source>
        <translation type="unfinished">araw hanggang huli ng paglilinis</translation>
    </message>
    <message>
        <source>days to the last of germination</source>
        <translation type="unfinished">araw hanggang huli ng pagtubo</translation>
    </message>
    <message>
        <source>days to the last pick</source>
        <translation type="unfinished">araw hanggang huling ani</translation>
    </message>
    <message>
        <source>days to the middle spacing</source>
        <translation type="unfinished">araw bago ang gitnang pagitan</translation>
    </message>
    <message>
        <source>days to the nursery</source>
        <translation type="unfinished">araw bago sa punlaan</translation>
    </message>
    <message>
        <source>days to wait</source>
        <translation type="unfinished">araw ng paghihintay</translation>
    </message>
    <message>
        <source>days until places are free</source>
        <translation type="unfinished">araw bago may bakanteng lugar</translation>
    </message>
    <message>
        <source>days until the fall of alkalinity adds up to what is to spare</source>
        <translation type="unfinished">araw hanggang maubos ng bagsak ng alkalinity ang palugit</translation>
    </message>
    <message>
        <source>days until warmth and light have added up to the days by the book, less those days</source>
        <translation type="unfinished">araw hanggang mabuo ng init at liwanag ang mga araw ng aklat, bawas ang mga araw na iyon</translation>
    </message>
    <message>
        <source>days within farm share</source>
        <translation type="unfinished">bahagi ng pag-iiba sa loob ng isang farm</translation>
    </message>
    <message>
        <source>days without work, parted by commas, such as 24 Dec 2027, 25 Dec 2027</source>
        <translation type="unfinished">mga araw na walang trabaho, pinaghihiwalay ng kuwit, gaya ng 24 Dec 2027, 25 Dec 2027</translation>
    </message>
    <message>
        <source>days, in weeks</source>
        <translation type="unfinished">araw, sa linggo</translation>
    </message>
    <message>
        <source>days, times the growth of a day</source>
        <translation type="unfinished">araw na minultiplika sa paglaki sa isang araw</translation>
    </message>
    <message>
        <source>days, times the mean fall of a day at its quickest</source>
        <translation type="unfinished">araw na minultiplika sa karaniwang bagsak ng isang araw sa pinakamabilis nito</translation>
    </message>
    <message>
        <source>days, times what is fed a day</source>
        <translation type="unfinished">araw na minultiplika sa pakain bawat araw</translation>
    </message>
    <message>
        <source>deaths expected</source>
        <translation type="unfinished">inaasahang mamamatay</translation>
    </message>
    <message>
        <source>degC</source>
        <translation type="unfinished">°C</translation>
    </message>
    <message>
        <source>demand</source>
        <translation type="unfinished">kailangan</translation>
    </message>
    <message>
        <source>demand of a batch</source>
        <translation type="unfinished">kailangan ng isang batch</translation>
    </message>
    <message>
        <source>demand times</source>
        <translation type="unfinished">kailangan, ilang beses</translation>
    </message>
    <message>
        <source>demand, proposal</source>
        <translation type="unfinished">kailangan, mungkahi</translation>
    </message>
    <message>
        <source>demand, today</source>
        <translation type="unfinished">kailangan, ngayon</translation>
    </message>
    <message>
        <source>density</source>
        <translation type="unfinished">siksik</translation>
    </message>
    <message>
        <source>density limit</source>
        <translation type="unfinished">limit ng siksik</translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished">lalim</translation>
    </message>
    <message>
        <source>depth of water, times its weight</source>
        <translation type="unfinished">lalim ng tubig na minultiplika sa bigat nito</translation>
    </message>
    <message>
        <source>difference from print</source>
        <translation type="unfinished">agwat sa nakalimbag</translation>
    </message>
    <message>
        <source>disease</source>
        <translation type="unfinished">sakit</translation>
    </message>
    <message>
        <source>dissolved from feed</source>
        <translation type="unfinished">natunaw mula sa pakain</translation>
    </message>
    <message>
        <source>dissolved from feed of a group</source>
        <translation type="unfinished">natunaw mula sa pakain ng isang grupo</translation>
    </message>
    <message>
        <source>dissolved oxygen</source>
        <translation type="unfinished">natunaw na oksiheno</translation>
    </message>
    <message>
        <source>dissolved solids</source>
        <translation type="unfinished">natunaw na solido</translation>
    </message>
    <message>
        <source>dissolved solids (TDS)</source>
        <translation type="unfinished">natunaw na solido (TDS)</translation>
    </message>
    <message>
        <source>dissolved solids over the factor of the meter</source>
        <translation type="unfinished">natunaw na solido na hinati sa factor ng panukat</translation>
    </message>
    <message>
        <source>dissolving share</source>
        <translation type="unfinished">bahaging natutunaw</translation>
    </message>
    <message>
        <source>does not fit into the doses of one week</source>
        <translation type="unfinished">hindi kasya sa mga dosis ng isang linggo</translation>
    </message>
    <message>
        <source>done today, no week falls short</source>
        <translation type="unfinished">kung gagawin ngayon, walang linggong kukulangin</translation>
    </message>
    <message>
        <source>done today, {weeks}</source>
        <translation type="unfinished">kung gagawin ngayon, {weeks}</translation>
    </message>
    <message>
        <source>dose</source>
        <translation type="unfinished">dosis</translation>
    </message>
    <message>
        <source>dose given</source>
        <translation type="unfinished">nagbigay ng dosis</translation>
    </message>
    <message>
        <source>doses</source>
        <translation type="unfinished">dosis</translation>
    </message>
    <message>
        <source>doses a week</source>
        <translation type="unfinished">dosis bawat linggo</translation>
    </message>
    <message>
        <source>doses in week</source>
        <translation type="unfinished">dosis sa linggo</translation>
    </message>
    <message>
        <source>doubtful at this pH</source>
        <translation type="unfinished">alanganin sa pH na ito</translation>
    </message>
    <message>
        <source>doubtful: its meter was overdue for calibration</source>
        <translation type="unfinished">alanganin: lampas na sa calibration ang panukat nito</translation>
    </message>
    <message>
        <source>doubtful: the meter of the {what} reading was overdue for calibration</source>
        <translation type="unfinished">alanganin: lampas na sa takdang calibration ang panukat ng {what}</translation>
    </message>
    <message>
        <source>doubtful: {meter} was overdue</source>
        <translation type="unfinished">alanganin: lampas na ang {meter}</translation>
    </message>
    <message>
        <source>drawn from this publication; it shows care, not truth</source>
        <translation type="unfinished">kinuha sa lathalaing ito; pag-iingat ang ipinapakita, hindi katotohanan</translation>
    </message>
    <message>
        <source>draws</source>
        <translation type="unfinished">mga bunot</translation>
    </message>
    <message>
        <source>draws that met</source>
        <translation type="unfinished">mga bunot na umabot</translation>
    </message>
    <message>
        <source>draws that met it, over all draws</source>
        <translation type="unfinished">mga bunot na umabot, hinati sa lahat ng bunot</translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished">tuyo</translation>
    </message>
    <message>
        <source>dry mass</source>
        <translation type="unfinished">tuyong bigat</translation>
    </message>
    <message>
        <source>dry mass formed in the week</source>
        <translation type="unfinished">tuyong bigat na nabuo sa linggo</translation>
    </message>
    <message>
        <source>dry mass of a whole plant</source>
        <translation type="unfinished">tuyong bigat ng buong halaman</translation>
    </message>
    <message>
        <source>dry mass of a whole plant, times the share of its growth in the week</source>
        <translation type="unfinished">tuyong bigat ng buong halaman na minultiplika sa bahagi ng paglaki nito sa linggo</translation>
    </message>
    <message>
        <source>dry matter share</source>
        <translation type="unfinished">bahagi ng tuyong bagay</translation>
    </message>
    <message>
        <source>due in {days} d</source>
        <translation type="unfinished">dapat sa loob ng {days} araw</translation>
    </message>
    <message>
        <source>dull</source>
        <translation type="unfinished">makulimlim</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation type="unfinished">mas maaga</translation>
    </message>
    <message>
        <source>eases it</source>
        <translation type="unfinished">napapagaan ito</translation>
    </message>
    <message>
        <source>effective</source>
        <translation type="unfinished">init na may bisa</translation>
    </message>
    <message>
        <source>element in a dose</source>
        <translation type="unfinished">elemento sa isang dosis</translation>
    </message>
    <message>
        <source>element in solids</source>
        <translation type="unfinished">elemento sa solido</translation>
    </message>
    <message>
        <source>element in the feed</source>
        <translation type="unfinished">elemento sa pakain</translation>
    </message>
    <message>
        <source>element kept in fish</source>
        <translation type="unfinished">elementong naiiwan sa isda</translation>
    </message>
    <message>
        <source>element lost as gas</source>
        <translation type="unfinished">elementong nawawala bilang gas</translation>
    </message>
    <message>
        <source>element share</source>
        <translation type="unfinished">bahagi ng elemento</translation>
    </message>
    <message>
        <source>element still wanting in a week</source>
        <translation type="unfinished">elementong kulang pa sa isang linggo</translation>
    </message>
    <message>
        <source>element wanting</source>
        <translation type="unfinished">elementong kulang</translation>
    </message>
    <message>
        <source>empty: the limit of the species</source>
        <translation type="unfinished">kung walang laman: ang hangganan ng uri</translation>
    </message>
    <message>
        <source>empty: the weight the catalogue has</source>
        <translation type="unfinished">kung walang laman: ang bigat sa katalogo</translation>
    </message>
    <message>
        <source>empty: to the end of the plan</source>
        <translation type="unfinished">kung walang laman: hanggang dulo ng plano</translation>
    </message>
    <message>
        <source>enough</source>
        <translation type="unfinished">sapat</translation>
    </message>
    <message>
        <source>entered</source>
        <translation type="unfinished">inilagay</translation>
    </message>
    <message>
        <source>entered for {about}</source>
        <translation type="unfinished">inilagay para sa {about}</translation>
    </message>
    <message>
        <source>eq a day</source>
        <translation type="unfinished">eq bawat araw</translation>
    </message>
    <message>
        <source>eq a week</source>
        <translation type="unfinished">eq bawat linggo</translation>
    </message>
    <message>
        <source>eq/mol</source>
        <translation type="unfinished">eq/mol</translation>
    </message>
    <message>
        <source>every days</source>
        <translation type="unfinished">tuwing ilang araw</translation>
    </message>
    <message>
        <source>every hole of every bed: what stands there, comes, goes, and what is free</source>
        <translation type="unfinished">bawat butas ng bawat kama: ano ang naroon, darating, aalis, at alin ang bakante</translation>
    </message>
    <message>
        <source>every {days} d</source>
        <translation type="unfinished">tuwing {days} araw</translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished">lahat</translation>
    </message>
    <message>
        <source>exact arithmetic</source>
        <translation type="unfinished">eksaktong kuwenta</translation>
    </message>
    <message>
        <source>expected dead</source>
        <translation type="unfinished">inaasahang patay</translation>
    </message>
    <message>
        <source>expected growth × feed conversion</source>
        <translation type="unfinished">inaasahang laki × feed conversion</translation>
    </message>
    <message>
        <source>extra area of the leanest week</source>
        <translation type="unfinished">dagdag na lawak sa pinakakapos na linggo</translation>
    </message>
    <message>
        <source>factor</source>
        <translation type="unfinished">factor</translation>
    </message>
    <message>
        <source>factor not noted, {factor} taken</source>
        <translation type="unfinished">walang nakatalang factor, {factor} ang ginamit</translation>
    </message>
    <message>
        <source>factor of the meter</source>
        <translation type="unfinished">salik ng panukat</translation>
    </message>
    <message>
        <source>factor of the meter {factor}</source>
        <translation type="unfinished">factor ng metro {factor}</translation>
    </message>
    <message>
        <source>fall</source>
        <translation type="unfinished">bagsak</translation>
    </message>
    <message>
        <source>fall a day</source>
        <translation type="unfinished">bagsak bawat araw</translation>
    </message>
    <message>
        <source>fall of alkalinity</source>
        <translation type="unfinished">bagsak ng alkalinity</translation>
    </message>
    <message>
        <source>fall of alkalinity before the day</source>
        <translation type="unfinished">bagsak ng alkalinity bago ang araw</translation>
    </message>
    <message>
        <source>fall of alkalinity in a week</source>
        <translation type="unfinished">bagsak ng alkalinity sa isang linggo</translation>
    </message>
    <message>
        <source>fall of alkalinity in some days</source>
        <translation type="unfinished">bagsak ng alkalinity sa ilang araw</translation>
    </message>
    <message>
        <source>fall of the feed</source>
        <translation type="unfinished">bagsak ng pakain</translation>
    </message>
    <message>
        <source>fall of the feed at a harvest</source>
        <translation type="unfinished">bagsak ng pakain sa isang ani</translation>
    </message>
    <message>
        <source>fall of the feed in a week</source>
        <translation type="unfinished">bagsak ng pakain sa isang linggo</translation>
    </message>
    <message>
        <source>fall per week</source>
        <translation type="unfinished">bagsak bawat linggo</translation>
    </message>
    <message>
        <source>fall share</source>
        <translation type="unfinished">bahagi ng bagsak</translation>
    </message>
    <message>
        <source>fall that day</source>
        <translation type="unfinished">bagsak sa araw na iyon</translation>
    </message>
    <message>
        <source>fallen before</source>
        <translation type="unfinished">bumagsak bago nito</translation>
    </message>
    <message>
        <source>fallen by acid</source>
        <translation type="unfinished">bumagsak dahil sa asido</translation>
    </message>
    <message>
        <source>falling</source>
        <translation type="unfinished">bumababa</translation>
    </message>
    <message>
        <source>falling out share</source>
        <translation type="unfinished">bahaging namumuo</translation>
    </message>
    <message>
        <source>fcr</source>
        <translation type="unfinished">feed conversion</translation>
    </message>
    <message>
        <source>fe</source>
        <translation type="unfinished">fe</translation>
    </message>
    <message>
        <source>feed</source>
        <translation type="unfinished">pakain</translation>
    </message>
    <message>
        <source>feed a day before the harvest</source>
        <translation type="unfinished">pakain bawat araw bago ang ani</translation>
    </message>
    <message>
        <source>feed a day in the week</source>
        <translation type="unfinished">pakain bawat araw sa linggo</translation>
    </message>
    <message>
        <source>feed a day in the week from the harvest</source>
        <translation type="unfinished">pakain bawat araw sa linggo mula sa ani</translation>
    </message>
    <message>
        <source>feed a day in the weeks before</source>
        <translation type="unfinished">pakain bawat araw sa mga nakaraang linggo</translation>
    </message>
    <message>
        <source>feed a day, times days</source>
        <translation type="unfinished">pakain bawat araw na minultiplika sa mga araw</translation>
    </message>
    <message>
        <source>feed beyond what stands asks for, over what a square metre asks for</source>
        <translation type="unfinished">pakain na lampas sa hinihingi ng nakatanim, hinati sa hinihingi ng isang metro kuwadrado</translation>
    </message>
    <message>
        <source>feed by day for each tank, planned and given</source>
        <translation type="unfinished">pakain bawat araw sa bawat tangke, nakaplano at naibigay</translation>
    </message>
    <message>
        <source>feed conversion</source>
        <translation type="unfinished">feed conversion</translation>
    </message>
    <message>
        <source>feed does not come back to where it was within the plan</source>
        <translation type="unfinished">hindi na bumabalik ang pakain sa dati sa loob ng plano</translation>
    </message>
    <message>
        <source>feed falls</source>
        <translation type="unfinished">bumabagsak ang pakain</translation>
    </message>
    <message>
        <source>feed given</source>
        <translation type="unfinished">nagpakain</translation>
    </message>
    <message>
        <source>feed is back where it was on {on}, after {weeks} weeks</source>
        <translation type="unfinished">balik sa dati ang pakain sa {on}, makalipas ang {weeks} linggo</translation>
    </message>
    <message>
        <source>feed left over</source>
        <translation type="unfinished">tirang pakain</translation>
    </message>
    <message>
        <source>feed made for fish of the weight</source>
        <translation type="unfinished">pakaing para sa isdang ganito ang bigat</translation>
    </message>
    <message>
        <source>feed of a day over the meals of a day</source>
        <translation type="unfinished">pakain ng isang araw na hinati sa mga kain sa isang araw</translation>
    </message>
    <message>
        <source>feed of a group</source>
        <translation type="unfinished">pakain ng isang grupo</translation>
    </message>
    <message>
        <source>feed of a group a day</source>
        <translation type="unfinished">pakain ng isang grupo bawat araw</translation>
    </message>
    <message>
        <source>feed of a group in the month</source>
        <translation type="unfinished">pakain ng isang grupo sa buwan</translation>
    </message>
    <message>
        <source>feed of a group in the week</source>
        <translation type="unfinished">pakain ng isang grupo sa linggo</translation>
    </message>
    <message>
        <source>feed of a meal</source>
        <translation type="unfinished">pakain ng isang kain</translation>
    </message>
    <message>
        <source>feed of a meal over what a level scoop holds</source>
        <translation type="unfinished">pakain ng isang kain na hinati sa laman ng pantay na takal</translation>
    </message>
    <message>
        <source>feed of a week</source>
        <translation type="unfinished">pakain ng isang linggo</translation>
    </message>
    <message>
        <source>feed of a week, times the acid that comes of a kilogram of feed in a loop with plants</source>
        <translation type="unfinished">pakain ng isang linggo na minultiplika sa asido mula sa isang kilo ng pakain sa loop na may halaman</translation>
    </message>
    <message>
        <source>feed of some weeks</source>
        <translation type="unfinished">pakain ng ilang linggo</translation>
    </message>
    <message>
        <source>feed of the fish</source>
        <translation type="unfinished">pakain ng isda</translation>
    </message>
    <message>
        <source>feed of the loop falls by {share} %</source>
        <translation type="unfinished">bababa ng {share} % ang pakain ng loop</translation>
    </message>
    <message>
        <source>feed over feed conversion</source>
        <translation type="unfinished">pakain na hinati sa feed conversion</translation>
    </message>
    <message>
        <source>feed over feed conversion, at most what the fish can eat for their growth</source>
        <translation type="unfinished">pakain na hinati sa feed conversion, hanggang sa kayang kainin ng isda para lumaki</translation>
    </message>
    <message>
        <source>feed over planted area</source>
        <translation type="unfinished">pakain na hinati sa lawak na may tanim</translation>
    </message>
    <message>
        <source>feed over the feed-rate ratio of the band's end</source>
        <translation type="unfinished">pakain na hinati sa feed-rate ratio ng dulo ng saklaw</translation>
    </message>
    <message>
        <source>feed over the plan</source>
        <translation type="unfinished">pakain sa buong plano</translation>
    </message>
    <message>
        <source>feed really given, entered from {from} on</source>
        <translation type="unfinished">pakaing talagang ibinigay, inilagay mula {from}</translation>
    </message>
    <message>
        <source>feed that has to be added</source>
        <translation type="unfinished">pakaing dapat idagdag</translation>
    </message>
    <message>
        <source>feed that is asked for</source>
        <translation type="unfinished">pakaing hinihingi</translation>
    </message>
    <message>
        <source>feed that is asked for, less what is fed</source>
        <translation type="unfinished">pakaing hinihingi, bawas ang ipinapakain</translation>
    </message>
    <message>
        <source>feed that the area takes</source>
        <translation type="unfinished">pakaing hinihingi ng lawak</translation>
    </message>
    <message>
        <source>feed that the gain took, over the feed that is given, in percent</source>
        <translation type="unfinished">pakaing nagamit sa dagdag na bigat na hinati sa ibinibigay na pakain, sa porsiyento</translation>
    </message>
    <message>
        <source>feed to order</source>
        <translation type="unfinished">pakaing oorderin</translation>
    </message>
    <message>
        <source>feed {before} → {after} g/m²/d</source>
        <translation type="unfinished">pakain {before} → {after} g/m²/d</translation>
    </message>
    <message>
        <source>feed, times its content</source>
        <translation type="unfinished">pakain na minultiplika sa laman nito</translation>
    </message>
    <message>
        <source>feed, times its protein</source>
        <translation type="unfinished">pakain na minultiplika sa protina nito</translation>
    </message>
    <message>
        <source>feed, times its protein, times the ammonia nitrogen that comes of protein</source>
        <translation type="unfinished">pakain, minultiplika sa protina nito, minultiplika sa nitrogen ng ammonia mula sa protina</translation>
    </message>
    <message>
        <source>feed, times protein, over protein per nitrogen</source>
        <translation type="unfinished">pakain na minultiplika sa protina, hinati sa protina bawat nitrogen</translation>
    </message>
    <message>
        <source>feed, to {mass}/day</source>
        <translation type="unfinished">pakain, max {mass}/d</translation>
    </message>
    <message>
        <source>feed-rate ratio</source>
        <translation type="unfinished">feed-rate ratio</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation type="unfinished">mga pakain</translation>
    </message>
    <message>
        <source>fewest</source>
        <translation type="unfinished">pinakakaunti</translation>
    </message>
    <message>
        <source>field conditions</source>
        <translation type="unfinished">kondisyon sa bukid</translation>
    </message>
    <message>
        <source>figure of the publication</source>
        <translation type="unfinished">bilang ng publikasyon</translation>
    </message>
    <message>
        <source>fill mineraliser</source>
        <translation type="unfinished">punuin ang mineraliser</translation>
    </message>
    <message>
        <source>filled {day}, {days} d of solids, {air}</source>
        <translation type="unfinished">pinuno {day}, {days} d na latak, {air}</translation>
    </message>
    <message>
        <source>filter need</source>
        <translation type="unfinished">kailangang pansala</translation>
    </message>
    <message>
        <source>filter surface</source>
        <translation type="unfinished">ibabaw ng pansala</translation>
    </message>
    <message>
        <source>filter surface needed at most</source>
        <translation type="unfinished">pinakamalaking ibabaw ng pansala na kailangan</translation>
    </message>
    <message>
        <source>fingerlings can be had so often</source>
        <translation type="unfinished">ganito kadalas makakukuha ng fingerling</translation>
    </message>
    <message>
        <source>fingerlings must be had on that day</source>
        <translation type="unfinished">dapat may similya sa araw na iyon</translation>
    </message>
    <message>
        <source>first day of a stage</source>
        <translation type="unfinished">unang araw ng isang yugto</translation>
    </message>
    <message>
        <source>first day of the plan</source>
        <translation type="unfinished">unang araw ng plano</translation>
    </message>
    <message>
        <source>first day of use, calibrated when new</source>
        <translation type="unfinished">unang araw ng paggamit, na-calibrate nang bago</translation>
    </message>
    <message>
        <source>first day with weight ≥ harvest weight</source>
        <translation type="unfinished">unang araw na ang bigat ≥ bigat sa pag-ani</translation>
    </message>
    <message>
        <source>first day, whole weeks on, from which feed is what is asked for some weeks in a row</source>
        <translation type="unfinished">unang araw, sa buong linggo, na sapat ang pakain nang ilang linggong sunod-sunod</translation>
    </message>
    <message>
        <source>first pick</source>
        <translation type="unfinished">unang ani</translation>
    </message>
    <message>
        <source>first pick {days} d late because of {cause} (light alone {by_light} d, warmth alone {by_warmth} d)</source>
        <translation type="unfinished">huli nang {days} araw ang unang ani dahil sa {cause} (liwanag lang {by_light} araw, init lang {by_warmth} araw)</translation>
    </message>
    <message>
        <source>fish</source>
        <translation type="unfinished">isda</translation>
    </message>
    <message>
        <source>fish are lighter when harvested</source>
        <translation type="unfinished">mas magaan ang isda sa ani</translation>
    </message>
    <message>
        <source>fish cleared to eat</source>
        <translation type="unfinished">puwede nang kainin ang isda</translation>
    </message>
    <message>
        <source>fish dead</source>
        <translation type="unfinished">namatay na isda</translation>
    </message>
    <message>
        <source>fish harvested</source>
        <translation type="unfinished">isdang inani</translation>
    </message>
    <message>
        <source>fish harvested in some weeks</source>
        <translation type="unfinished">isdang inani sa ilang linggo</translation>
    </message>
    <message>
        <source>fish of a group</source>
        <translation type="unfinished">isda ng isang grupo</translation>
    </message>
    <message>
        <source>fish of the group</source>
        <translation type="unfinished">isda ng grupo</translation>
    </message>
    <message>
        <source>fish on an average day, times the share that dies in a day, times days</source>
        <translation type="unfinished">isda sa karaniwang araw, minultiplika sa bahaging namamatay sa isang araw, minultiplika sa mga araw</translation>
    </message>
    <message>
        <source>fish over the plan</source>
        <translation type="unfinished">isda sa buong plano</translation>
    </message>
    <message>
        <source>fish stocked</source>
        <translation type="unfinished">isdang inilagay</translation>
    </message>
    <message>
        <source>fish taken</source>
        <translation type="unfinished">kinuhang isda</translation>
    </message>
    <message>
        <source>fish treated</source>
        <translation type="unfinished">ginamot na isda</translation>
    </message>
    <message>
        <source>fish weighed</source>
        <translation type="unfinished">tinimbang na isda</translation>
    </message>
    <message>
        <source>fish, times their mean weight</source>
        <translation type="unfinished">isda na minultiplika sa karaniwang bigat nila</translation>
    </message>
    <message>
        <source>fish, times what each gains in the day</source>
        <translation type="unfinished">isda na minultiplika sa dagdag ng bawat isa sa araw</translation>
    </message>
    <message>
        <source>fish, to {mass}</source>
        <translation type="unfinished">isda, max {mass}</translation>
    </message>
    <message>
        <source>fit not known: no pH reading</source>
        <translation type="unfinished">hindi alam kung bagay: walang suri ng pH</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">base na kasya</translation>
    </message>
    <message>
        <source>fixed grams a day</source>
        <translation type="unfinished">takdang gramo bawat araw</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">babala</translation>
    </message>
    <message>
        <source>flag: {what}</source>
        <translation type="unfinished">babala: {what}</translation>
    </message>
    <message>
        <source>flow</source>
        <translation type="unfinished">agos</translation>
    </message>
    <message>
        <source>flow needed</source>
        <translation type="unfinished">agos na kailangan</translation>
    </message>
    <message>
        <source>flow needed with reserve</source>
        <translation type="unfinished">agos na kailangan, may reserba</translation>
    </message>
    <message>
        <source>flow of the pump</source>
        <translation type="unfinished">agos ng bomba</translation>
    </message>
    <message>
        <source>food the crops take up</source>
        <translation type="unfinished">pagkaing kinukuha ng pananim</translation>
    </message>
    <message>
        <source>for fish of {low} to {high} g</source>
        <translation type="unfinished">para sa isdang {low} hanggang {high} g</translation>
    </message>
    <message>
        <source>for the acid of the week{planned}</source>
        <translation type="unfinished">para sa asido ng linggo{planned}</translation>
    </message>
    <message>
        <source>for the rest of the plan</source>
        <translation type="unfinished">hanggang dulo ng plano</translation>
    </message>
    <message>
        <source>for {element}</source>
        <translation type="unfinished">para sa {element}</translation>
    </message>
    <message>
        <source>forecast of the changed farm</source>
        <translation type="unfinished">pagtaya sa binagong farm</translation>
    </message>
    <message>
        <source>foreseen</source>
        <translation type="unfinished">inaasahan</translation>
    </message>
    <message>
        <source>formula only</source>
        <translation type="unfinished">pormula lamang</translation>
    </message>
    <message>
        <source>frame, liner and rafts without water</source>
        <translation type="unfinished">balangkas, sapin at raft na walang tubig</translation>
    </message>
    <message>
        <source>free ammonia</source>
        <translation type="unfinished">malayang ammonia</translation>
    </message>
    <message>
        <source>fresh yield, times dry matter, over the part of the plant that is harvested</source>
        <translation type="unfinished">sariwang ani na minultiplika sa tuyong bagay, hinati sa bahagi ng halaman na inaani</translation>
    </message>
    <message>
        <source>friction</source>
        <translation type="unfinished">kaltas ng alitan</translation>
    </message>
    <message>
        <source>friction share</source>
        <translation type="unfinished">bahagi ng alitan</translation>
    </message>
    <message>
        <source>from doses</source>
        <translation type="unfinished">mula sa mga dosis</translation>
    </message>
    <message>
        <source>from low to high of the figure as standard deviations, over its value</source>
        <translation type="unfinished">mula mababa hanggang mataas ng bilang bilang standard deviation, hinati sa halaga nito</translation>
    </message>
    <message>
        <source>from low to high of the figure, taken as so many standard deviations</source>
        <translation type="unfinished">mula mababa hanggang mataas ng bilang, itinuring na ganito karaming standard deviation</translation>
    </message>
    <message>
        <source>from make-up water</source>
        <translation type="unfinished">mula sa dagdag na tubig</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished">mula sa alaala</translation>
    </message>
    <message>
        <source>from memory, not checked</source>
        <translation type="unfinished">mula sa alaala, hindi nasuri</translation>
    </message>
    <message>
        <source>from memory: shown, but judges nothing</source>
        <translation type="unfinished">mula sa alaala: ipinapakita, pero walang hinahatulan</translation>
    </message>
    <message>
        <source>from solids batches</source>
        <translation type="unfinished">mula sa mga batch ng solido</translation>
    </message>
    <message>
        <source>from solids in beds</source>
        <translation type="unfinished">mula sa solido sa mga kama</translation>
    </message>
    <message>
        <source>from {from} to {until}</source>
        <translation type="unfinished">mula {from} hanggang {until}</translation>
    </message>
    <message>
        <source>from {low} to {high} must be reckoned with</source>
        <translation type="unfinished">dapat paghandaan ang {low} hanggang {high}</translation>
    </message>
    <message>
        <source>fruiting</source>
        <translation type="unfinished">namumunga</translation>
    </message>
    <message>
        <source>fry</source>
        <translation type="unfinished">bigat ng semilya</translation>
    </message>
    <message>
        <source>fullest</source>
        <translation type="unfinished">pinakapuno</translation>
    </message>
    <message>
        <source>fullest tank</source>
        <translation type="unfinished">pinakapunong tangke</translation>
    </message>
    <message>
        <source>fullest tank {before} → {after} kg/m³</source>
        <translation type="unfinished">pinakapunong tangke {before} → {after} kg/m³</translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished">g</translation>
    </message>
    <message>
        <source>g DM/plant</source>
        <translation type="unfinished">g DM/halaman</translation>
    </message>
    <message>
        <source>g a day</source>
        <translation type="unfinished">g/araw</translation>
    </message>
    <message>
        <source>g a day on average</source>
        <translation type="unfinished">g bawat araw, karaniwan</translation>
    </message>
    <message>
        <source>g a week</source>
        <translation type="unfinished">g bawat linggo</translation>
    </message>
    <message>
        <source>g feed/g gain</source>
        <translation type="unfinished">g pakain/g dagdag</translation>
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
        <translation type="unfinished">dagdag na bigat</translation>
    </message>
    <message>
        <source>gain a day, times days</source>
        <translation type="unfinished">dagdag na bigat bawat araw na minultiplika sa mga araw</translation>
    </message>
    <message>
        <source>gain in the week</source>
        <translation type="unfinished">dagdag na bigat sa linggo</translation>
    </message>
    <message>
        <source>gain of a group</source>
        <translation type="unfinished">dagdag na bigat ng isang grupo</translation>
    </message>
    <message>
        <source>gain of a group in a week</source>
        <translation type="unfinished">dagdag na bigat ng isang grupo sa isang linggo</translation>
    </message>
    <message>
        <source>gain of fish in some weeks</source>
        <translation type="unfinished">dagdag na bigat ng isda sa ilang linggo</translation>
    </message>
    <message>
        <source>gain, times body content, less what this feed cannot give</source>
        <translation type="unfinished">dagdag na bigat na minultiplika sa laman ng katawan, bawas ang hindi kayang ibigay ng pakaing ito</translation>
    </message>
    <message>
        <source>gain, times feed conversion</source>
        <translation type="unfinished">dagdag na bigat na minultiplika sa feed conversion</translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished">kulang</translation>
    </message>
    <message>
        <source>gap of an element</source>
        <translation type="unfinished">kulang sa isang elemento</translation>
    </message>
    <message>
        <source>gap to the best possible</source>
        <translation type="unfinished">agwat sa pinakamahusay na posible</translation>
    </message>
    <message>
        <source>gaps of potassium and calcium are filled first; the gentlest bases share what is left</source>
        <translation type="unfinished">pinupunan muna ang kulang sa potassium at calcium; pinaghahatian ng pinakabanayad na base ang natitira</translation>
    </message>
    <message>
        <source>gas loss share</source>
        <translation type="unfinished">bahaging nawawala bilang gas</translation>
    </message>
    <message>
        <source>gathered</source>
        <translation type="unfinished">naipon</translation>
    </message>
    <message>
        <source>gathered in a solids batch</source>
        <translation type="unfinished">naipon sa isang batch ng solido</translation>
    </message>
    <message>
        <source>germinated</source>
        <translation type="unfinished">tumubo</translation>
    </message>
    <message>
        <source>germination</source>
        <translation type="unfinished">pagtubo</translation>
    </message>
    <message>
        <source>germination base</source>
        <translation type="unfinished">pinakamababa sa pagtubo</translation>
    </message>
    <message>
        <source>germination days</source>
        <translation type="unfinished">mga araw ng pagtubo</translation>
    </message>
    <message>
        <source>germination of a lot</source>
        <translation type="unfinished">pagtubo ng isang lote</translation>
    </message>
    <message>
        <source>germination of the lot</source>
        <translation type="unfinished">pagtubo ng lote</translation>
    </message>
    <message>
        <source>germination optimum</source>
        <translation type="unfinished">pinakamainam sa pagtubo</translation>
    </message>
    <message>
        <source>germination share</source>
        <translation type="unfinished">bahaging tumutubo</translation>
    </message>
    <message>
        <source>germination thermal time c d</source>
        <translation type="unfinished">kabuuang init sa pagtubo</translation>
    </message>
    <message>
        <source>given</source>
        <translation type="unfinished">naibigay</translation>
    </message>
    <message>
        <source>goes</source>
        <translation type="unfinished">aalis</translation>
    </message>
    <message>
        <source>goes to {place}</source>
        <translation type="unfinished">pupunta sa {place}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">mabuti</translation>
    </message>
    <message>
        <source>grams</source>
        <translation type="unfinished">gramo</translation>
    </message>
    <message>
        <source>grams at a time</source>
        <translation type="unfinished">gramo sa bawat bigay</translation>
    </message>
    <message>
        <source>grams in the water</source>
        <translation type="unfinished">gramo sa tubig</translation>
    </message>
    <message>
        <source>grams of a base for a week</source>
        <translation type="unfinished">gramo ng base para sa isang linggo</translation>
    </message>
    <message>
        <source>grams of a dose, times how often it is given</source>
        <translation type="unfinished">gramo ng dosis na minultiplika sa dami ng pagbigay</translation>
    </message>
    <message>
        <source>grams of a dose, times the share of the element, times doses that count in the week</source>
        <translation type="unfinished">gramo ng dosis, minultiplika sa bahagi ng elemento, minultiplika sa mga dosis na bilang sa linggo</translation>
    </message>
    <message>
        <source>grams of a salt for a week</source>
        <translation type="unfinished">gramo ng asin para sa isang linggo</translation>
    </message>
    <message>
        <source>grams of iron product</source>
        <translation type="unfinished">gramo ng produktong iron</translation>
    </message>
    <message>
        <source>grams of the product, times the base in a kilogram of it</source>
        <translation type="unfinished">gramo ng produkto na minultiplika sa base sa isang kilo nito</translation>
    </message>
    <message>
        <source>grams of the product, times the share of the element in it</source>
        <translation type="unfinished">gramo ng produkto na minultiplika sa bahagi ng elemento rito</translation>
    </message>
    <message>
        <source>grams over the water of the loop</source>
        <translation type="unfinished">gramo na hinati sa tubig ng loop</translation>
    </message>
    <message>
        <source>grams, in kilograms</source>
        <translation type="unfinished">gramo, sa kilogramo</translation>
    </message>
    <message>
        <source>groups</source>
        <translation type="unfinished">mga grupo</translation>
    </message>
    <message>
        <source>grown</source>
        <translation type="unfinished">inilaki</translation>
    </message>
    <message>
        <source>growth a day</source>
        <translation type="unfinished">paglaki bawat araw</translation>
    </message>
    <message>
        <source>growth by your own figure</source>
        <translation type="unfinished">paglaki ayon sa sarili mong numero</translation>
    </message>
    <message>
        <source>growth coefficient</source>
        <translation type="unfinished">growth coefficient</translation>
    </message>
    <message>
        <source>growth of a fish in some days</source>
        <translation type="unfinished">paglaki ng isang isda sa ilang araw</translation>
    </message>
    <message>
        <source>growth of a fish since it was weighed</source>
        <translation type="unfinished">paglaki ng isang isda mula nang timbangin</translation>
    </message>
    <message>
        <source>growth share</source>
        <translation type="unfinished">bahagi ng paglaki</translation>
    </message>
    <message>
        <source>half life days</source>
        <translation type="unfinished">half-life</translation>
    </message>
    <message>
        <source>half rate</source>
        <translation type="unfinished">liwanag sa kalahating bilis</translation>
    </message>
    <message>
        <source>hands and tools clean</source>
        <translation type="unfinished">malinis ang kamay at gamit</translation>
    </message>
    <message>
        <source>hands or tools NOT clean</source>
        <translation type="unfinished">HINDI malinis ang kamay o gamit</translation>
    </message>
    <message>
        <source>hardly any would come up; the least share is taken</source>
        <translation type="unfinished">halos walang tutubo; ang pinakamababang bahagi ang ginamit</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation type="unfinished">ani</translation>
    </message>
    <message>
        <source>harvest barred</source>
        <translation type="unfinished">bawal ang ani</translation>
    </message>
    <message>
        <source>harvest fish</source>
        <translation type="unfinished">anihin ang isda</translation>
    </message>
    <message>
        <source>harvest grams</source>
        <translation type="unfinished">gramong aanihin</translation>
    </message>
    <message>
        <source>harvest of a batch</source>
        <translation type="unfinished">ani ng isang batch</translation>
    </message>
    <message>
        <source>harvest of a sowing</source>
        <translation type="unfinished">ani ng isang hasik</translation>
    </message>
    <message>
        <source>harvest of a week</source>
        <translation type="unfinished">ani ng isang linggo</translation>
    </message>
    <message>
        <source>harvest of crops</source>
        <translation type="unfinished">ani ng pananim</translation>
    </message>
    <message>
        <source>harvest of crops unchanged</source>
        <translation type="unfinished">walang bago sa ani ng pananim</translation>
    </message>
    <message>
        <source>harvest of fish</source>
        <translation type="unfinished">ani ng isda</translation>
    </message>
    <message>
        <source>harvest of some weeks</source>
        <translation type="unfinished">ani ng ilang linggo</translation>
    </message>
    <message>
        <source>harvest of the plan</source>
        <translation type="unfinished">ani ng plano</translation>
    </message>
    <message>
        <source>harvest of today's plan</source>
        <translation type="unfinished">ani ng plano ngayon</translation>
    </message>
    <message>
        <source>harvest of what stands already</source>
        <translation type="unfinished">ani ng nakatayo na</translation>
    </message>
    <message>
        <source>harvest over the plan</source>
        <translation type="unfinished">ani sa buong plano</translation>
    </message>
    <message>
        <source>harvest plants</source>
        <translation type="unfinished">halamang aanihin</translation>
    </message>
    <message>
        <source>harvest share</source>
        <translation type="unfinished">bahaging inaani</translation>
    </message>
    <message>
        <source>harvest weight</source>
        <translation type="unfinished">bigat sa pag-ani</translation>
    </message>
    <message>
        <source>harvest, fish and water of the month, in plain sentences with three charts</source>
        <translation type="unfinished">ani, isda at tubig ng buwan, sa simpleng pangungusap na may tatlong tsart</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">inani</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation type="unfinished">mga ani</translation>
    </message>
    <message>
        <source>harvests of one</source>
        <translation type="unfinished">mga ani ng isa</translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished">taas ng pag-angat</translation>
    </message>
    <message>
        <source>head in m and flow in L/h off its sheet, such as 0:3000; 1:2400; 2:1500</source>
        <translation type="unfinished">taas sa m at agos sa L/h mula sa papel nito, gaya ng 0:3000; 1:2400; 2:1500</translation>
    </message>
    <message>
        <source>head lost in pipes; empty: a stated allowance</source>
        <translation type="unfinished">taas na nawawala sa tubo; kung walang laman: nakasaad na palugit</translation>
    </message>
    <message>
        <source>head with friction</source>
        <translation type="unfinished">taas ng pag-angat na may alitan</translation>
    </message>
    <message>
        <source>headroom share</source>
        <translation type="unfinished">bahaging palugit</translation>
    </message>
    <message>
        <source>heads</source>
        <translation type="unfinished">ulo</translation>
    </message>
    <message>
        <source>heads, or kg</source>
        <translation type="unfinished">piraso, o kg</translation>
    </message>
    <message>
        <source>heat</source>
        <translation type="unfinished">init</translation>
    </message>
    <message>
        <source>height the water is lifted to the new beds</source>
        <translation type="unfinished">taas na iaangat ang tubig sa mga bagong kama</translation>
    </message>
    <message>
        <source>height the water is lifted, and what pipes take</source>
        <translation type="unfinished">taas ng pag-angat ng tubig, at ang kaltas ng mga tubo</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">hawak</translation>
    </message>
    <message>
        <source>held from {from} until the day before {until}</source>
        <translation type="unfinished">hawak mula {from} hanggang isang araw bago {until}</translation>
    </message>
    <message>
        <source>held twice</source>
        <translation type="unfinished">dalawang beses hawak</translation>
    </message>
    <message>
        <source>high</source>
        <translation type="unfinished">mataas</translation>
    </message>
    <message>
        <source>high end of {what}</source>
        <translation type="unfinished">mataas na dulo ng {what}</translation>
    </message>
    <message>
        <source>high end, by the ranges of the figures</source>
        <translation type="unfinished">mataas na dulo, ayon sa saklaw ng mga bilang</translation>
    </message>
    <message>
        <source>high limit</source>
        <translation type="unfinished">mataas na limit</translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished">pinakamataas</translation>
    </message>
    <message>
        <source>hot</source>
        <translation type="unfinished">mainit</translation>
    </message>
    <message>
        <source>how far draws spread in which this alone is left to chance</source>
        <translation type="unfinished">gaano kakalat ang mga bunot na ito lang ang iniiwan sa tsansa</translation>
    </message>
    <message>
        <source>how far it lies above the limit</source>
        <translation type="unfinished">gaano kalayo sa ibabaw ng limit</translation>
    </message>
    <message>
        <source>how far our figure may be from the print; it comes from the print or from physics</source>
        <translation type="unfinished">gaano kalayo maaaring ang bilang namin sa nakalimbag; mula ito sa nakalimbag o sa pisika</translation>
    </message>
    <message>
        <source>how far ours may be from the print</source>
        <translation type="unfinished">gaano kalayo maaaring ang amin sa nakalimbag</translation>
    </message>
    <message>
        <source>how far ratios lie apart by their median distance, at least the rule's least, times the book's value</source>
        <translation type="unfinished">gaano kalayo ang mga ratio ayon sa median na layo nila, hindi bababa sa minimum ng tuntunin, minultiplika sa halaga ng aklat</translation>
    </message>
    <message>
        <source>how far the ratio lies below the bound of short</source>
        <translation type="unfinished">gaano kababa ang ratio sa hangganan ng kulang</translation>
    </message>
    <message>
        <source>how many are listed</source>
        <translation type="unfinished">ilan ang nakalista</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation type="unfinished">ilan ang mga ito</translation>
    </message>
    <message>
        <source>how many there are of what is listed</source>
        <translation type="unfinished">ilan ang mga nakalista</translation>
    </message>
    <message>
        <source>how much it weighs, times the amount, over the usual amount of a week</source>
        <translation type="unfinished">gaano kahalaga, minultiplika sa dami, hinati sa karaniwang dami ng isang linggo</translation>
    </message>
    <message>
        <source>how much the solids give is not sure</source>
        <translation type="unfinished">hindi tiyak ang bigay ng latak</translation>
    </message>
    <message>
        <source>how supply counts</source>
        <translation type="unfinished">turing sa supply</translation>
    </message>
    <message>
        <source>hydroxide, strong</source>
        <translation type="unfinished">hydroxide, matapang</translation>
    </message>
    <message>
        <source>idle</source>
        <translation type="unfinished">hindi nagagamit</translation>
    </message>
    <message>
        <source>in feed</source>
        <translation type="unfinished">sa pakain</translation>
    </message>
    <message>
        <source>in place of batches that make way</source>
        <translation type="unfinished">kapalit ng mga batch na nagbibigay-daan</translation>
    </message>
    <message>
        <source>in solids</source>
        <translation type="unfinished">sa solido</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation type="unfinished">nasa imbak</translation>
    </message>
    <message>
        <source>in these days</source>
        <translation type="unfinished">sa mga araw na ito</translation>
    </message>
    <message>
        <source>income</source>
        <translation type="unfinished">kita</translation>
    </message>
    <message>
        <source>inside share</source>
        <translation type="unfinished">bahaging nasa loob</translation>
    </message>
    <message>
        <source>interval days</source>
        <translation type="unfinished">araw sa pagitan</translation>
    </message>
    <message>
        <source>iron</source>
        <translation type="unfinished">bakal</translation>
    </message>
    <message>
        <source>iron due</source>
        <translation type="unfinished">takdang iron</translation>
    </message>
    <message>
        <source>iron grams</source>
        <translation type="unfinished">gramo ng iron</translation>
    </message>
    <message>
        <source>iron share</source>
        <translation type="unfinished">bahagi ng iron</translation>
    </message>
    <message>
        <source>iron was never given: it is due at once</source>
        <translation type="unfinished">hindi pa nabibigyan ng iron: dapat na agad</translation>
    </message>
    <message>
        <source>iron was not tested lately: none is taken to be there</source>
        <translation type="unfinished">hindi nasuri ang iron kamakailan: itinuturing na wala</translation>
    </message>
    <message>
        <source>it has no places yet</source>
        <translation type="unfinished">wala pa itong lugar</translation>
    </message>
    <message>
        <source>it is new</source>
        <translation type="unfinished">bago ito</translation>
    </message>
    <message>
        <source>it is not reached within the plan</source>
        <translation type="unfinished">hindi naaabot sa loob ng plano</translation>
    </message>
    <message>
        <source>it is taken out</source>
        <translation type="unfinished">inalis ito</translation>
    </message>
    <message>
        <source>it raises the pH</source>
        <translation type="unfinished">pinatataas nito ang pH</translation>
    </message>
    <message>
        <source>it stands in other places, with other light or room</source>
        <translation type="unfinished">nasa ibang puwesto ito, iba ang liwanag o luwang</translation>
    </message>
    <message>
        <source>judged over the weeks from {from} to {until}</source>
        <translation type="unfinished">hinusgahan sa mga linggo mula {from} hanggang {until}</translation>
    </message>
    <message>
        <source>k g per</source>
        <translation type="unfinished">potassium</translation>
    </message>
    <message>
        <source>kept above 0</source>
        <translation type="unfinished">pinanatili sa ibabaw ng 0</translation>
    </message>
    <message>
        <source>kept by the act “{act}”</source>
        <translation type="unfinished">itinabi ng kilos na “{act}”</translation>
    </message>
    <message>
        <source>kept in fish</source>
        <translation type="unfinished">naiiwan sa isda</translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished">kg</translation>
    </message>
    <message>
        <source>kg per m3</source>
        <translation type="unfinished">kg bawat m³</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation type="unfinished">kg/m³</translation>
    </message>
    <message>
        <source>kg/m³, and the limit</source>
        <translation type="unfinished">kg/m³, at ang limit</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation type="unfinished">kulang</translation>
    </message>
    <message>
        <source>laid down</source>
        <translation type="unfinished">naiwang latak</translation>
    </message>
    <message>
        <source>lamps add {mol} mol/m²/d in {bed}</source>
        <translation type="unfinished">nagdadagdag ang ilaw ng {mol} mol/m²/araw sa {bed}</translation>
    </message>
    <message>
        <source>lamps for the light that is missing</source>
        <translation type="unfinished">ilaw para sa kulang na liwanag</translation>
    </message>
    <message>
        <source>largest area of every month</source>
        <translation type="unfinished">pinakamalaking lawak ng bawat buwan</translation>
    </message>
    <message>
        <source>largest fall of the feed</source>
        <translation type="unfinished">pinakamalaking bagsak ng pakain</translation>
    </message>
    <message>
        <source>largest of the parts</source>
        <translation type="unfinished">pinakamalaki sa mga bahagi</translation>
    </message>
    <message>
        <source>last changed on {on} by {who}: {act}</source>
        <translation type="unfinished">huling binago noong {on} ni {who}: {act}</translation>
    </message>
    <message>
        <source>last changed on {on}: {act}</source>
        <translation type="unfinished">huling binago noong {on}: {act}</translation>
    </message>
    <message>
        <source>last day of a stage</source>
        <translation type="unfinished">huling araw ng isang yugto</translation>
    </message>
    <message>
        <source>last done on {day}</source>
        <translation type="unfinished">huling ginawa noong {day}</translation>
    </message>
    <message>
        <source>last given {day}</source>
        <translation type="unfinished">huling ibinigay {day}</translation>
    </message>
    <message>
        <source>later</source>
        <translation type="unfinished">mas huli</translation>
    </message>
    <message>
        <source>later days</source>
        <translation type="unfinished">araw na dagdag</translation>
    </message>
    <message>
        <source>later than by the book</source>
        <translation type="unfinished">mas huli kaysa sa aklat</translation>
    </message>
    <message>
        <source>leafy</source>
        <translation type="unfinished">madahon</translation>
    </message>
    <message>
        <source>leafy and fruiting crops in their final places</source>
        <translation type="unfinished">pananim na dahon at bunga sa huling lugar nila</translation>
    </message>
    <message>
        <source>leafy crops over all that is planted</source>
        <translation type="unfinished">pananim na dahon na hinati sa lahat ng nakatanim</translation>
    </message>
    <message>
        <source>leafy share</source>
        <translation type="unfinished">bahagi ng dahon</translation>
    </message>
    <message>
        <source>leafy share of the planted area</source>
        <translation type="unfinished">bahaging dahon ng lawak na may tanim</translation>
    </message>
    <message>
        <source>least</source>
        <translation type="unfinished">pinakamaliit</translation>
    </message>
    <message>
        <source>least cost at the prices of the linear program, taken from worth of targets</source>
        <translation type="unfinished">pinakamaliit na halaga sa presyo ng linear program, ibinawas sa halaga ng mga target</translation>
    </message>
    <message>
        <source>least n with Σ rate(day) ≥ days, less days</source>
        <translation type="unfinished">pinakamaliit na n na Σ bilis(araw) ≥ mga araw, bawas ang mga araw</translation>
    </message>
    <message>
        <source>least of the parts</source>
        <translation type="unfinished">pinakamaliit sa mga bahagi</translation>
    </message>
    <message>
        <source>least share</source>
        <translation type="unfinished">pinakamababang bahagi</translation>
    </message>
    <message>
        <source>least spread share</source>
        <translation type="unfinished">pinakamababang bahagi ng kalat</translation>
    </message>
    <message>
        <source>least supply {before} of {was} → {after} of {now}</source>
        <translation type="unfinished">pinakakaunting supply {before} ng {was} → {after} ng {now}</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation type="unfinished">iwan</translation>
    </message>
    <message>
        <source>leaving share</source>
        <translation type="unfinished">bahaging umaalis</translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished">natitira</translation>
    </message>
    <message>
        <source>left of the lot</source>
        <translation type="unfinished">natitira sa lote</translation>
    </message>
    <message>
        <source>left with water since then</source>
        <translation type="unfinished">umalis kasama ng tubig mula noon</translation>
    </message>
    <message>
        <source>less feed, so less food for the plants</source>
        <translation type="unfinished">mas kaunting pakain, kaya kulang ang pagkain ng halaman</translation>
    </message>
    <message>
        <source>less is harvested</source>
        <translation type="unfinished">mas kaunti ang ani</translation>
    </message>
    <message>
        <source>less {what}</source>
        <translation type="unfinished">mas kaunting {what}</translation>
    </message>
    <message>
        <source>lethal high</source>
        <translation type="unfinished">nakamamatay na mataas</translation>
    </message>
    <message>
        <source>lethal low</source>
        <translation type="unfinished">nakamamatay na mababa</translation>
    </message>
    <message>
        <source>lethal temperature</source>
        <translation type="unfinished">nakamamatay na temperatura</translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished">antas</translation>
    </message>
    <message>
        <source>lifted by base</source>
        <translation type="unfinished">itinaas ng base</translation>
    </message>
    <message>
        <source>light not known: it slows nothing</source>
        <translation type="unfinished">hindi alam ang liwanag: walang binabagalan</translation>
    </message>
    <message>
        <source>light target</source>
        <translation type="unfinished">target na liwanag</translation>
    </message>
    <message>
        <source>light that lamps add</source>
        <translation type="unfinished">liwanag na dagdag ng ilaw</translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished">malamang</translation>
    </message>
    <message>
        <source>likely by the book's figures; low and high by the ranges of these figures</source>
        <translation type="unfinished">malamang ayon sa mga bilang ng aklat; mababa at mataas ayon sa saklaw ng mga bilang na ito</translation>
    </message>
    <message>
        <source>likely feed by draws</source>
        <translation type="unfinished">malamang na pakain ayon sa mga bunot</translation>
    </message>
    <message>
        <source>likely germination</source>
        <translation type="unfinished">malamang na pagtubo</translation>
    </message>
    <message>
        <source>likely harvest by draws</source>
        <translation type="unfinished">malamang na ani ayon sa mga bunot</translation>
    </message>
    <message>
        <source>likely ratio by draws</source>
        <translation type="unfinished">malamang na ratio ayon sa mga bunot</translation>
    </message>
    <message>
        <source>likely, and the root of the sum of squares of what each figure can add</source>
        <translation type="unfinished">malamang, dagdag ang ugat ng kabuuan ng mga kuwadrado ng maidadagdag ng bawat bilang</translation>
    </message>
    <message>
        <source>likely, over the factors of less supply and more demand put together</source>
        <translation type="unfinished">malamang na hinati sa pinagsamang factor ng mas kaunting supply at mas malaking kailangan</translation>
    </message>
    <message>
        <source>likely, times the factors of more supply and less demand put together</source>
        <translation type="unfinished">malamang na minultiplika sa pinagsamang factor ng mas maraming supply at mas maliit na kailangan</translation>
    </message>
    <message>
        <source>likely, times the factors that figures can lower it by, their logarithms in squares</source>
        <translation type="unfinished">malamang na minultiplika sa mga factor na makapagpapababa rito, kuwadrado ang mga logaritmo</translation>
    </message>
    <message>
        <source>limit</source>
        <translation type="unfinished">limit</translation>
    </message>
    <message>
        <source>limit in gravel</source>
        <translation type="unfinished">limit sa graba</translation>
    </message>
    <message>
        <source>limit of alkalinity by balance</source>
        <translation type="unfinished">limit ng alkalinity ayon sa balanse</translation>
    </message>
    <message>
        <source>limit of pH by balance</source>
        <translation type="unfinished">limit ng pH ayon sa balanse</translation>
    </message>
    <message>
        <source>limit of pH by trend</source>
        <translation type="unfinished">limit ng pH ayon sa takbo</translation>
    </message>
    <message>
        <source>limit under rafts</source>
        <translation type="unfinished">limit sa ilalim ng raft</translation>
    </message>
    <message>
        <source>limit {limit}</source>
        <translation type="unfinished">limit {limit}</translation>
    </message>
    <message>
        <source>limit {limit} kg/m³, kept as far as the plan goes</source>
        <translation type="unfinished">limit na {limit} kg/m³, hindi lalampas hanggang dulo ng plano</translation>
    </message>
    <message>
        <source>limit {limit} kg/m³, passed from {week} on: harvest, move or do without some fish by then</source>
        <translation type="unfinished">limit na {limit} kg/m³, lalampas mula {week}: mag-ani, maglipat o magbawas ng isda bago noon</translation>
    </message>
    <message>
        <source>limiting element</source>
        <translation type="unfinished">elementong pinakakapos</translation>
    </message>
    <message>
        <source>liquor goes back: {day}</source>
        <translation type="unfinished">babalik ang katas: {day}</translation>
    </message>
    <message>
        <source>liquor of a solids batch</source>
        <translation type="unfinished">katas ng isang batch ng solido</translation>
    </message>
    <message>
        <source>liquor returned</source>
        <translation type="unfinished">ibinalik na katas</translation>
    </message>
    <message>
        <source>liquor that goes back</source>
        <translation type="unfinished">katas na ibinabalik</translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished">litro</translation>
    </message>
    <message>
        <source>litres, times how often they go round in an hour</source>
        <translation type="unfinished">litro na minultiplika sa dami ng ikot sa isang oras</translation>
    </message>
    <message>
        <source>little light</source>
        <translation type="unfinished">kulang sa liwanag</translation>
    </message>
    <message>
        <source>little light alone {light} d, warmth alone {warmth} d</source>
        <translation type="unfinished">kulang na liwanag lang {light} d, init lang {warmth} d</translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished">bigat na pasan</translation>
    </message>
    <message>
        <source>log10 mmHg</source>
        <translation type="unfinished">log10 mmHg</translation>
    </message>
    <message>
        <source>logs an inspector asks for</source>
        <translation type="unfinished">mga talaang hinihingi ng inspektor</translation>
    </message>
    <message>
        <source>longest stretch</source>
        <translation type="unfinished">pinakamahabang unat</translation>
    </message>
    <message>
        <source>longest time until feed is back</source>
        <translation type="unfinished">pinakamatagal bago makabawi ang pakain</translation>
    </message>
    <message>
        <source>loop</source>
        <translation type="unfinished">loop</translation>
    </message>
    <message>
        <source>lost as gas</source>
        <translation type="unfinished">nawala bilang gas</translation>
    </message>
    <message>
        <source>lost as gas from the batch</source>
        <translation type="unfinished">nawala bilang gas mula sa batch</translation>
    </message>
    <message>
        <source>lost share</source>
        <translation type="unfinished">bahaging nawawala</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lote</translation>
    </message>
    <message>
        <source>lot 1 day old</source>
        <translation type="unfinished">lot na 1 araw pa lang</translation>
    </message>
    <message>
        <source>lot {days} days old</source>
        <translation type="unfinished">lot na {days} araw na</translation>
    </message>
    <message>
        <source>lot {years} years old</source>
        <translation type="unfinished">lot na {years} taon na</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">lote</translation>
    </message>
    <message>
        <source>lots more with room</source>
        <translation type="unfinished">mas marami pa, may lugar</translation>
    </message>
    <message>
        <source>low</source>
        <translation type="unfinished">mababa</translation>
    </message>
    <message>
        <source>low end of {what}</source>
        <translation type="unfinished">mababang dulo ng {what}</translation>
    </message>
    <message>
        <source>low limit</source>
        <translation type="unfinished">mababang limit</translation>
    </message>
    <message>
        <source>low to high of the figure as standard deviations, as much as one farm leaves</source>
        <translation type="unfinished">mababa hanggang mataas ng bilang bilang standard deviation, ang natitira sa isang farm</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished">pinakamababa</translation>
    </message>
    <message>
        <source>lowest if lowest ≤ low limit, else highest</source>
        <translation type="unfinished">ang pinakamababa kung pinakamababa ≤ mababang limit, kung hindi ang pinakamataas</translation>
    </message>
    <message>
        <source>lowest week of feed</source>
        <translation type="unfinished">linggong pinakakaunti ang pakain</translation>
    </message>
    <message>
        <source>lying</source>
        <translation type="unfinished">nakalatag</translation>
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
        <translation type="unfinished">m² bawat halaman</translation>
    </message>
    <message>
        <source>made for fish of {a} to {b} g, eaten by fish of {c} to {d} g</source>
        <translation type="unfinished">para sa isdang {a} hanggang {b} g, kinakain ng isdang {c} hanggang {d} g</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation type="unfinished">magnesyo</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">pagmementena</translation>
    </message>
    <message>
        <source>make up leaving share</source>
        <translation type="unfinished">bahaging umaalis dahil sa dagdag na tubig</translation>
    </message>
    <message>
        <source>make up water</source>
        <translation type="unfinished">dagdag na tubig</translation>
    </message>
    <message>
        <source>make-up water a day</source>
        <translation type="unfinished">dagdag na tubig bawat araw</translation>
    </message>
    <message>
        <source>make-up water, times what a litre brings, times days</source>
        <translation type="unfinished">dagdag na tubig, minultiplika sa dala ng isang litro, minultiplika sa mga araw</translation>
    </message>
    <message>
        <source>many</source>
        <translation type="unfinished">ilan</translation>
    </message>
    <message>
        <source>many plants near harvest ({plants}): the plants want {rise_share} more than in the four weeks before</source>
        <translation type="unfinished">maraming halaman ang malapit nang anihin ({plants}): {rise_share} ang dagdag na kailangan ng halaman kumpara sa nakaraang apat na linggo</translation>
    </message>
    <message>
        <source>marketable share</source>
        <translation type="unfinished">bahaging maibebenta</translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished">bigat</translation>
    </message>
    <message>
        <source>mass of a group</source>
        <translation type="unfinished">bigat ng isang grupo</translation>
    </message>
    <message>
        <source>mass of fish over the tank's volume</source>
        <translation type="unfinished">bigat ng isda na hinati sa laman ng tangke</translation>
    </message>
    <message>
        <source>mass of the fish, times percent of body weight</source>
        <translation type="unfinished">bigat ng isda na minultiplika sa porsiyento ng bigat ng katawan</translation>
    </message>
    <message>
        <source>mass of the fish, times percent of it, times their appetite at this warmth</source>
        <translation type="unfinished">bigat ng isda, minultiplika sa porsiyento nito, minultiplika sa gana nila sa init na ito</translation>
    </message>
    <message>
        <source>may</source>
        <translation type="unfinished">maaari</translation>
    </message>
    <message>
        <source>may day</source>
        <translation type="unfinished">araw na maaari</translation>
    </message>
    <message>
        <source>meal</source>
        <translation type="unfinished">kain</translation>
    </message>
    <message>
        <source>meals</source>
        <translation type="unfinished">mga kain</translation>
    </message>
    <message>
        <source>mean</source>
        <translation type="unfinished">mean</translation>
    </message>
    <message>
        <source>mean air</source>
        <translation type="unfinished">karaniwang init ng hangin</translation>
    </message>
    <message>
        <source>mean count</source>
        <translation type="unfinished">karaniwang bilang</translation>
    </message>
    <message>
        <source>mean distance</source>
        <translation type="unfinished">karaniwang layo</translation>
    </message>
    <message>
        <source>mean feed</source>
        <translation type="unfinished">karaniwang pakain</translation>
    </message>
    <message>
        <source>mean g after uptake</source>
        <translation type="unfinished">mean matapos kumuha ang halaman</translation>
    </message>
    <message>
        <source>mean light</source>
        <translation type="unfinished">karaniwang liwanag</translation>
    </message>
    <message>
        <source>mean of the parts</source>
        <translation type="unfinished">mean ng mga bahagi</translation>
    </message>
    <message>
        <source>mean water</source>
        <translation type="unfinished">karaniwang init ng tubig</translation>
    </message>
    <message>
        <source>mean weight</source>
        <translation type="unfinished">karaniwang bigat</translation>
    </message>
    <message>
        <source>media plug</source>
        <translation type="unfinished">plug</translation>
    </message>
    <message>
        <source>median of (later - earlier) / days × 7 over all pairs of readings</source>
        <translation type="unfinished">median ng (huli - una) / araw × 7 sa lahat ng pares ng suri</translation>
    </message>
    <message>
        <source>meets</source>
        <translation type="unfinished">nakaaabot</translation>
    </message>
    <message>
        <source>meets what is wanted</source>
        <translation type="unfinished">nakaaabot sa gusto</translation>
    </message>
    <message>
        <source>memory</source>
        <translation type="unfinished">mula sa alaala</translation>
    </message>
    <message>
        <source>menu {title}</source>
        <translation type="unfinished">menu {title}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">sapat</translation>
    </message>
    <message>
        <source>meter calibrated</source>
        <translation type="unfinished">na-calibrate ang panukat</translation>
    </message>
    <message>
        <source>meter factor</source>
        <translation type="unfinished">factor ng panukat</translation>
    </message>
    <message>
        <source>mg</source>
        <translation type="unfinished">mg</translation>
    </message>
    <message>
        <source>mg per</source>
        <translation type="unfinished">mg bawat litro</translation>
    </message>
    <message>
        <source>mg/L gal/min per lb/d</source>
        <translation type="unfinished">mg/L gal/min bawat lb/d</translation>
    </message>
    <message>
        <source>mg/L per uS/cm</source>
        <translation type="unfinished">mg/L bawat µS/cm</translation>
    </message>
    <message>
        <source>mg/L per µS/cm</source>
        <translation type="unfinished">mg/L bawat µS/cm</translation>
    </message>
    <message>
        <source>middle spacing</source>
        <translation type="unfinished">gitnang pagitan</translation>
    </message>
    <message>
        <source>midpoint</source>
        <translation type="unfinished">gitna</translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished">min</translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished">hindi naabot</translation>
    </message>
    <message>
        <source>missed weight</source>
        <translation type="unfinished">timbang ng hindi naabot</translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished">kulang</translation>
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
        <translation type="unfinished">buwan muna</translation>
    </message>
    <message>
        <source>months</source>
        <translation type="unfinished">buwan</translation>
    </message>
    <message>
        <source>months of the plan</source>
        <translation type="unfinished">mga buwan ng plano</translation>
    </message>
    <message>
        <source>months that carry it</source>
        <translation type="unfinished">mga buwan na kaya ito</translation>
    </message>
    <message>
        <source>more beds</source>
        <translation type="unfinished">dagdag na kama</translation>
    </message>
    <message>
        <source>more feed is used</source>
        <translation type="unfinished">mas maraming pakain ang gamit</translation>
    </message>
    <message>
        <source>more is asked for than the feed holds; {capped_g} g are left out</source>
        <translation type="unfinished">higit ang hinihingi kaysa sa laman ng pakain; {capped_g} g ang iniwan</translation>
    </message>
    <message>
        <source>more is planted than the fish feed: {fed} g/m²/d are fed, where {low} to {high} are usual</source>
        <translation type="unfinished">higit ang nakatanim kaysa sa kaya ng isda: {fed} g/m²/araw ang pinapakain, {low} hanggang {high} ang karaniwan</translation>
    </message>
    <message>
        <source>more than wanted</source>
        <translation type="unfinished">higit sa kailangan</translation>
    </message>
    <message>
        <source>more {what}</source>
        <translation type="unfinished">mas maraming {what}</translation>
    </message>
    <message>
        <source>most any plan can be worth</source>
        <translation type="unfinished">pinakamataas na halaga ng alinmang plano</translation>
    </message>
    <message>
        <source>most area fed</source>
        <translation type="unfinished">pinakamalawak na napapakain</translation>
    </message>
    <message>
        <source>most eaten share</source>
        <translation type="unfinished">pinakamalaking bahaging kinain</translation>
    </message>
    <message>
        <source>most of the beds planted</source>
        <translation type="unfinished">karamihan ng kama na may tanim</translation>
    </message>
    <message>
        <source>most over share</source>
        <translation type="unfinished">pinakamalaking bahaging sobra</translation>
    </message>
    <message>
        <source>most weeks between</source>
        <translation type="unfinished">pinakamaraming linggo sa pagitan</translation>
    </message>
    <message>
        <source>move</source>
        <translation type="unfinished">ilipat</translation>
    </message>
    <message>
        <source>moved figure</source>
        <translation type="unfinished">ginalaw na bilang</translation>
    </message>
    <message>
        <source>moved to bed</source>
        <translation type="unfinished">inilipat sa kama</translation>
    </message>
    <message>
        <source>muted</source>
        <translation type="unfinished">muted</translation>
    </message>
    <message>
        <source>nearest town, region or country, as the grower says it</source>
        <translation type="unfinished">pinakamalapit na bayan, rehiyon o bansa, ayon sa tawag ng nagtatanim</translation>
    </message>
    <message>
        <source>net pot</source>
        <translation type="unfinished">net pot</translation>
    </message>
    <message>
        <source>net pots to order</source>
        <translation type="unfinished">net pot na oorderin</translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished">hindi kailanman</translation>
    </message>
    <message>
        <source>never calibrated: what it reads is doubtful</source>
        <translation type="unfinished">hindi pa na-calibrate: alanganin ang basa</translation>
    </message>
    <message>
        <source>never feed more than the fish eat: what is left spoils the water</source>
        <translation type="unfinished">huwag magpakain nang higit sa kinakain ng isda: sinisira ng tira ang tubig</translation>
    </message>
    <message>
        <source>never given</source>
        <translation type="unfinished">hindi pa naibigay</translation>
    </message>
    <message>
        <source>never planted yet</source>
        <translation type="unfinished">hindi pa natataniman</translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished">bago</translation>
    </message>
    <message>
        <source>next dose of iron</source>
        <translation type="unfinished">susunod na dosis ng iron</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">hindi</translation>
    </message>
    <message>
        <source>no air temperature entered: warmth slows nothing in the bed</source>
        <translation type="unfinished">walang init ng hangin: walang binabagalan ang init sa kama</translation>
    </message>
    <message>
        <source>no alkalinity is foreseen for {day}.</source>
        <translation type="unfinished">walang inaasahang alkalinity para sa {day}.</translation>
    </message>
    <message>
        <source>no alkalinity reading</source>
        <translation type="unfinished">walang suri ng alkalinity</translation>
    </message>
    <message>
        <source>no ammonia reading</source>
        <translation type="unfinished">walang suri ng ammonia</translation>
    </message>
    <message>
        <source>no amount</source>
        <translation type="unfinished">walang dami</translation>
    </message>
    <message>
        <source>no appetite</source>
        <translation type="unfinished">walang gana</translation>
    </message>
    <message>
        <source>no bed yet</source>
        <translation type="unfinished">wala pang kama</translation>
    </message>
    <message>
        <source>no climate</source>
        <translation type="unfinished">walang klima</translation>
    </message>
    <message>
        <source>no demand</source>
        <translation type="unfinished">walang kailangan</translation>
    </message>
    <message>
        <source>no draw fell on the other side: {draws} draws tell nothing finer than 1 in {draws}</source>
        <translation type="unfinished">walang bunot na tumapat sa kabila: walang mas pino sa 1 sa {draws} ang masasabi ng {draws} bunot</translation>
    </message>
    <message>
        <source>no fall seen</source>
        <translation type="unfinished">walang nakitang pagbaba</translation>
    </message>
    <message>
        <source>no feed for {days} d before</source>
        <translation type="unfinished">walang pakain {days} d bago</translation>
    </message>
    <message>
        <source>no feed of the book is made for fish of this weight</source>
        <translation type="unfinished">walang pakain sa libro para sa isdang ganito ang bigat</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">walang numero</translation>
    </message>
    <message>
        <source>no filter of {name} has a surface entered.</source>
        <translation type="unfinished">walang pansala ng {name} na may inilagay na lawak.</translation>
    </message>
    <message>
        <source>no fish are fed in {about}</source>
        <translation type="unfinished">walang pinapakaing isda sa {about}</translation>
    </message>
    <message>
        <source>no fish are harvested then</source>
        <translation type="unfinished">walang isdang inaani noon</translation>
    </message>
    <message>
        <source>no fish on that day</source>
        <translation type="unfinished">walang isda sa araw na iyon</translation>
    </message>
    <message>
        <source>no fish within the plan</source>
        <translation type="unfinished">walang isda sa loob ng plano</translation>
    </message>
    <message>
        <source>no free place</source>
        <translation type="unfinished">walang bakanteng lugar</translation>
    </message>
    <message>
        <source>no interval set</source>
        <translation type="unfinished">walang takdang pagitan</translation>
    </message>
    <message>
        <source>no later than the book</source>
        <translation type="unfinished">hindi lalampas sa libro</translation>
    </message>
    <message>
        <source>no meter</source>
        <translation type="unfinished">walang panukat</translation>
    </message>
    <message>
        <source>no pH reading near it</source>
        <translation type="unfinished">walang malapit na suri ng pH</translation>
    </message>
    <message>
        <source>no places</source>
        <translation type="unfinished">walang puwesto</translation>
    </message>
    <message>
        <source>no places yet</source>
        <translation type="unfinished">wala pang puwesto</translation>
    </message>
    <message>
        <source>no plan can be better: this is proven</source>
        <translation type="unfinished">walang planong mas mahusay: napatunayan ito</translation>
    </message>
    <message>
        <source>no reading of conductivity or dissolved solids</source>
        <translation type="unfinished">walang suri ng conductivity o natunaw na solido</translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation type="unfinished">wala pang suri</translation>
    </message>
    <message>
        <source>no reason</source>
        <translation type="unfinished">walang dahilan</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished">walang ibinigay na dahilan</translation>
    </message>
    <message>
        <source>no regular test of {what} was made yet.</source>
        <translation type="unfinished">wala pang regular na suri ng {what}.</translation>
    </message>
    <message>
        <source>no room</source>
        <translation type="unfinished">walang lugar</translation>
    </message>
    <message>
        <source>no sum</source>
        <translation type="unfinished">walang kuwenta</translation>
    </message>
    <message>
        <source>no sum: something entered is missing or does not fit</source>
        <translation type="unfinished">walang kuwenta: may kulang o hindi tugma sa inilagay</translation>
    </message>
    <message>
        <source>no sum: treated fish are not eaten until the day on which they are cleared</source>
        <translation type="unfinished">walang kuwenta: hindi kinakain ang ginamot na isda hanggang sa araw na pinayagan na</translation>
    </message>
    <message>
        <source>no temperature of the water of {name} is known.</source>
        <translation type="unfinished">walang alam na init ng tubig ng {name}.</translation>
    </message>
    <message>
        <source>no time</source>
        <translation type="unfinished">walang oras</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation type="unfinished">walang yunit</translation>
    </message>
    <message>
        <source>no water temperature near it</source>
        <translation type="unfinished">walang malapit na init ng tubig</translation>
    </message>
    <message>
        <source>no week falls short if done today</source>
        <translation type="unfinished">walang linggong kukulangin kung gagawin ngayon</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">wala</translation>
    </message>
    <message>
        <source>none left</source>
        <translation type="unfinished">wala nang natira</translation>
    </message>
    <message>
        <source>not aerated</source>
        <translation type="unfinished">walang hangin</translation>
    </message>
    <message>
        <source>not back</source>
        <translation type="unfinished">hindi babalik</translation>
    </message>
    <message>
        <source>not back within the plan</source>
        <translation type="unfinished">hindi babalik sa loob ng plano</translation>
    </message>
    <message>
        <source>not before {day}, perhaps not within the plan</source>
        <translation type="unfinished">hindi bago ang {day}, baka hindi sa loob ng plano</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation type="unfinished">hindi nakalkula</translation>
    </message>
    <message>
        <source>not covered</source>
        <translation type="unfinished">hindi saklaw</translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished">hindi ginawa</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished">hindi nailagay</translation>
    </message>
    <message>
        <source>not entered: {what}</source>
        <translation type="unfinished">hindi inilagay: {what}</translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished">hindi ibinigay</translation>
    </message>
    <message>
        <source>not known: no filter has a surface entered</source>
        <translation type="unfinished">hindi alam: walang filter na may nailagay na ibabaw</translation>
    </message>
    <message>
        <source>not known: {reason}</source>
        <translation type="unfinished">hindi alam: {reason}</translation>
    </message>
    <message>
        <source>not known: {why}</source>
        <translation type="unfinished">hindi alam: {why}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">huwag muna</translation>
    </message>
    <message>
        <source>not on a day of harvest</source>
        <translation type="unfinished">hindi sa araw ng ani</translation>
    </message>
    <message>
        <source>not on your shelf yet: it has to be bought</source>
        <translation type="unfinished">wala ka pa nito: kailangang bilhin</translation>
    </message>
    <message>
        <source>not over yet: it says only that it lasts longer than so far</source>
        <translation type="unfinished">hindi pa tapos: sinasabi lang na mas matagal ito kaysa sa ngayon</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished">wala sa plano</translation>
    </message>
    <message>
        <source>not suited</source>
        <translation type="unfinished">hindi bagay</translation>
    </message>
    <message>
        <source>not suited to this pH</source>
        <translation type="unfinished">hindi bagay sa pH na ito</translation>
    </message>
    <message>
        <source>not tested lately; careful values are taken for the largest dose</source>
        <translation type="unfinished">matagal nang hindi nasuri; maingat na halaga ang gamit sa pinakamalaking dosis</translation>
    </message>
    <message>
        <source>not tested yet</source>
        <translation type="unfinished">hindi pa nasubok</translation>
    </message>
    <message>
        <source>not tested: the least that leafy crops are grown with is taken to be there when the plan begins</source>
        <translation type="unfinished">hindi nasuri: sa simula ng plano ay itinuturing na naroon ang pinakakaunting ginagamit sa pananim na dahon</translation>
    </message>
    <message>
        <source>not to be moved by any plan</source>
        <translation type="unfinished">hindi puwedeng ilipat ng anumang plano</translation>
    </message>
    <message>
        <source>not wanted</source>
        <translation type="unfinished">hindi kailangan</translation>
    </message>
    <message>
        <source>not watched</source>
        <translation type="unfinished">hindi binabantayan</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">hindi tinimbang</translation>
    </message>
    <message>
        <source>not within the plan</source>
        <translation type="unfinished">wala sa loob ng plano</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">tala</translation>
    </message>
    <message>
        <source>noted by {who}, {when}</source>
        <translation type="unfinished">itinala ni {who}, {when}</translation>
    </message>
    <message>
        <source>noted {when}</source>
        <translation type="unfinished">itinala {when}</translation>
    </message>
    <message>
        <source>notes</source>
        <translation type="unfinished">mga tala</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished">wala</translation>
    </message>
    <message>
        <source>nothing is due then</source>
        <translation type="unfinished">walang takda noon</translation>
    </message>
    <message>
        <source>nothing is fed</source>
        <translation type="unfinished">walang pinapakain</translation>
    </message>
    <message>
        <source>nothing is known of this number</source>
        <translation type="unfinished">walang nalalaman sa bilang na ito</translation>
    </message>
    <message>
        <source>nothing is planted</source>
        <translation type="unfinished">walang nakatanim</translation>
    </message>
    <message>
        <source>nothing is wanted</source>
        <translation type="unfinished">walang kailangan</translation>
    </message>
    <message>
        <source>nothing of {element} is wanted in that week.</source>
        <translation type="unfinished">walang kailangang {element} sa linggong iyon.</translation>
    </message>
    <message>
        <source>nothing stands there on that day</source>
        <translation type="unfinished">walang nakatayo roon sa araw na iyon</translation>
    </message>
    <message>
        <source>nothing that is sown before is touched</source>
        <translation type="unfinished">walang ginagalaw sa naihasik na bago nito</translation>
    </message>
    <message>
        <source>nothing to show</source>
        <translation type="unfinished">walang maipakita</translation>
    </message>
    <message>
        <source>nothing wanted</source>
        <translation type="unfinished">walang hinihingi</translation>
    </message>
    <message>
        <source>nothing: I give every figure</source>
        <translation type="unfinished">wala: ibibigay ko ang lahat ng bilang</translation>
    </message>
    <message>
        <source>number of the parts</source>
        <translation type="unfinished">bilang ng mga bahagi</translation>
    </message>
    <message>
        <source>nursery</source>
        <translation type="unfinished">punlaan</translation>
    </message>
    <message>
        <source>nursery cells are held longer</source>
        <translation type="unfinished">mas matagal hawak ang selda ng punlaan</translation>
    </message>
    <message>
        <source>nursery cells free in the fullest week</source>
        <translation type="unfinished">bakanteng selda sa punlaan sa pinakapunong linggo</translation>
    </message>
    <message>
        <source>nursery days</source>
        <translation type="unfinished">mga araw sa punlaan</translation>
    </message>
    <message>
        <source>nursery places held</source>
        <translation type="unfinished">lugar sa punlaan na hawak</translation>
    </message>
    <message>
        <source>nursery survival share</source>
        <translation type="unfinished">bahaging nabubuhay sa punlaan</translation>
    </message>
    <message>
        <source>nutrient short</source>
        <translation type="unfinished">kulang sa sustansiya</translation>
    </message>
    <message>
        <source>of </source>
        <translation type="unfinished">sa </translation>
    </message>
    <message>
        <source>of leafy crops, planted all year</source>
        <translation type="unfinished">ng dahong gulay, nakatanim buong taon</translation>
    </message>
    <message>
        <source>of sowing, moving and picking; empty: as much as it takes</source>
        <translation type="unfinished">ng paghahasik, paglilipat at pag-ani; kung walang laman: kung gaano katagal kailangan</translation>
    </message>
    <message>
        <source>of the catalogue</source>
        <translation type="unfinished">mula sa katalogo</translation>
    </message>
    <message>
        <source>of the light under the roof, what the layers above let through</source>
        <translation type="unfinished">sa liwanag sa ilalim ng bubong, ang nakalulusot sa mga patong sa itaas</translation>
    </message>
    <message>
        <source>of the liquor, what goes back</source>
        <translation type="unfinished">sa katas, ang ibinabalik</translation>
    </message>
    <message>
        <source>of the nitrogen in the feed; as in the catalogue when not said</source>
        <translation type="unfinished">sa nitroheno ng pakain; ayon sa katalogo kapag hindi sinabi</translation>
    </message>
    <message>
        <source>of today's number</source>
        <translation type="unfinished">ng bilang ngayon</translation>
    </message>
    <message>
        <source>of treated fish: first day on which they may be eaten</source>
        <translation type="unfinished">ng ginamot na isda: unang araw na puwede nang kainin</translation>
    </message>
    <message>
        <source>of water or gravel</source>
        <translation type="unfinished">ng tubig o graba</translation>
    </message>
    <message>
        <source>of {wanted} plants, {sown} have room</source>
        <translation type="unfinished">sa {wanted} halaman, {sown} ang may lugar</translation>
    </message>
    <message>
        <source>off feed</source>
        <translation type="unfinished">walang pakain</translation>
    </message>
    <message>
        <source>off feed since {from}</source>
        <translation type="unfinished">hindi kumakain mula {from}</translation>
    </message>
    <message>
        <source>old lot: test it; until then the careful end of what is likely is taken</source>
        <translation type="unfinished">lumang lote: subukin; hangga't hindi pa, ang maingat na dulo ng malamang ang ginagamit</translation>
    </message>
    <message>
        <source>on plain paper, to be cut along the lines; for sheets of labels see Paper, Labels and tags</source>
        <translation type="unfinished">sa karaniwang papel, gugupitin sa mga guhit; para sa papel na may label, tingnan ang Papel, Mga label at tag</translation>
    </message>
    <message>
        <source>on the same side of 1 as the published ratio</source>
        <translation type="unfinished">nasa parehong panig ng 1 gaya ng nalathalang ratio</translation>
    </message>
    <message>
        <source>on {day}</source>
        <translation type="unfinished">noong {day}</translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished">isang beses</translation>
    </message>
    <message>
        <source>one for each of them</source>
        <translation type="unfinished">isa para sa bawat isa</translation>
    </message>
    <message>
        <source>one less feed now over feed before, in percent</source>
        <translation type="unfinished">isa, bawas ang pakain ngayon na hinati sa pakain dati, sa porsiyento</translation>
    </message>
    <message>
        <source>one less the lowest week over what was usual before</source>
        <translation type="unfinished">isa, bawas ang pinakamababang linggo na hinati sa dati</translation>
    </message>
    <message>
        <source>one lot fewer costs</source>
        <translation type="unfinished">halaga ng isang lote na bawas</translation>
    </message>
    <message>
        <source>one lot more costs</source>
        <translation type="unfinished">halaga ng isang lote na dagdag</translation>
    </message>
    <message>
        <source>optimum</source>
        <translation type="unfinished">pinakamainam</translation>
    </message>
    <message>
        <source>or {tds} dissolved solids; {how} (mg/L per µS/cm); read on {day}</source>
        <translation type="unfinished">o {tds} dissolved solids; {how} (mg/L bawat µS/cm); binasa noong {day}</translation>
    </message>
    <message>
        <source>order only</source>
        <translation type="unfinished">pagkakasunod lamang</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">iba pa</translation>
    </message>
    <message>
        <source>other weeks become short instead</source>
        <translation type="unfinished">ibang linggo naman ang kukulangin</translation>
    </message>
    <message>
        <source>others</source>
        <translation type="unfinished">iba pa</translation>
    </message>
    <message>
        <source>our figure</source>
        <translation type="unfinished">bilang namin</translation>
    </message>
    <message>
        <source>our figure less the published one, over the published one, in percent</source>
        <translation type="unfinished">bilang namin bawas ang nailathala, hinati sa nailathala, sa porsiyento</translation>
    </message>
    <message>
        <source>our figure, less the published one</source>
        <translation type="unfinished">bilang namin, bawas ang nailathala</translation>
    </message>
    <message>
        <source>ours</source>
        <translation type="unfinished">ang amin</translation>
    </message>
    <message>
        <source>ours {ours}, published {published}</source>
        <translation type="unfinished">sa amin {ours}, nailathala {published}</translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished">labas</translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished">tapos na</translation>
    </message>
    <message>
        <source>over the limit of the species</source>
        <translation type="unfinished">lampas sa limit ng uri</translation>
    </message>
    <message>
        <source>over what is assumed, {likely} in between; agreement anywhere counts</source>
        <translation type="unfinished">ayon sa ipinalagay, {likely} sa gitna; sapat nang tumugma saanman</translation>
    </message>
    <message>
        <source>over {percent}</source>
        <translation type="unfinished">higit sa {percent}</translation>
    </message>
    <message>
        <source>over {percent} %</source>
        <translation type="unfinished">higit sa {percent} %</translation>
    </message>
    <message>
        <source>overdue by {days} d: what it reads is doubtful</source>
        <translation type="unfinished">huli nang {days} araw: alanganin ang basa</translation>
    </message>
    <message>
        <source>overfed</source>
        <translation type="unfinished">sobra sa pakain</translation>
    </message>
    <message>
        <source>own days cv</source>
        <translation type="unfinished">pag-iiba ng sariling araw</translation>
    </message>
    <message>
        <source>own density</source>
        <translation type="unfinished">sariling siksik</translation>
    </message>
    <message>
        <source>own share sd</source>
        <translation type="unfinished">deviation ng sariling bahagi</translation>
    </message>
    <message>
        <source>own source</source>
        <translation type="unfinished">sariling pinagkunan</translation>
    </message>
    <message>
        <source>own yield cv</source>
        <translation type="unfinished">pag-iiba ng sariling ani</translation>
    </message>
    <message>
        <source>oxygen</source>
        <translation type="unfinished">oxygen</translation>
    </message>
    <message>
        <source>oxygen after feeding</source>
        <translation type="unfinished">oxygen matapos magpakain</translation>
    </message>
    <message>
        <source>oxygen an hour after feeding</source>
        <translation type="unfinished">oxygen bawat oras matapos magpakain</translation>
    </message>
    <message>
        <source>oxygen asked for at most</source>
        <translation type="unfinished">pinakamaraming oxygen na hinihingi</translation>
    </message>
    <message>
        <source>oxygen held</source>
        <translation type="unfinished">oxygen na hawak</translation>
    </message>
    <message>
        <source>oxygen in balance with air at the water's warmth and the height of the place, as the mean over the days of the week</source>
        <translation type="unfinished">oxygen na balanse sa hangin sa init ng tubig at taas ng lugar, mean ng mga araw ng linggo</translation>
    </message>
    <message>
        <source>oxygen per feed</source>
        <translation type="unfinished">oxygen bawat pakain</translation>
    </message>
    <message>
        <source>oxygen per nitrogen</source>
        <translation type="unfinished">oxygen bawat nitrogen</translation>
    </message>
    <message>
        <source>oxygen saturation at the water's temperature and the air pressure of altitude</source>
        <translation type="unfinished">oxygen saturation sa temperatura ng tubig at presyon ng hangin sa taas na ito</translation>
    </message>
    <message>
        <source>oxygen taken an hour</source>
        <translation type="unfinished">oxygen na nagagamit bawat oras</translation>
    </message>
    <message>
        <source>oxygen that water can hold</source>
        <translation type="unfinished">oxygen na kayang hawakan ng tubig</translation>
    </message>
    <message>
        <source>oxygen would be short for the most that may be asked</source>
        <translation type="unfinished">kukulangin ang oksiheno sa pinakamaraming maaaring kailangan</translation>
    </message>
    <message>
        <source>p g per</source>
        <translation type="unfinished">phosphorus</translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished">pH</translation>
    </message>
    <message>
        <source>pH and conductivity</source>
        <translation type="unfinished">pH at conductivity</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation type="unfinished">panukat ng pH</translation>
    </message>
    <message>
        <source>pH, by its trend</source>
        <translation type="unfinished">pH, ayon sa takbo</translation>
    </message>
    <message>
        <source>pH, by the acid made</source>
        <translation type="unfinished">pH, ayon sa asidong nagawa</translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished">bahagi</translation>
    </message>
    <message>
        <source>part of the climate is not known and slows nothing</source>
        <translation type="unfinished">may bahagi ng klima na hindi alam at hindi ito nagpapabagal</translation>
    </message>
    <message>
        <source>parts are standard deviations: all together are less than their sum</source>
        <translation type="unfinished">standard deviation ang mga bahagi: mas maliit ang lahat nang sama-sama kaysa sa kabuuan nila</translation>
    </message>
    <message>
        <source>peak factor</source>
        <translation type="unfinished">factor ng pinakamataas</translation>
    </message>
    <message>
        <source>pellet {size} mm</source>
        <translation type="unfinished">pellet na {size} mm</translation>
    </message>
    <message>
        <source>pelleted</source>
        <translation type="unfinished">pelleted</translation>
    </message>
    <message>
        <source>per plant</source>
        <translation type="unfinished">bawat halaman</translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished">porsiyento</translation>
    </message>
    <message>
        <source>pest</source>
        <translation type="unfinished">peste</translation>
    </message>
    <message>
        <source>pest seen</source>
        <translation type="unfinished">may nakitang peste</translation>
    </message>
    <message>
        <source>pests and disease, bed by bed</source>
        <translation type="unfinished">peste at sakit, bawat kama</translation>
    </message>
    <message>
        <source>ph</source>
        <translation type="unfinished">pH</translation>
    </message>
    <message>
        <source>ph step</source>
        <translation type="unfinished">hakbang ng pH</translation>
    </message>
    <message>
        <source>ph target</source>
        <translation type="unfinished">pH na target</translation>
    </message>
    <message>
        <source>phosphorus</source>
        <translation type="unfinished">posporo</translation>
    </message>
    <message>
        <source>physics</source>
        <translation type="unfinished">pisika</translation>
    </message>
    <message>
        <source>pick</source>
        <translation type="unfinished">pitasin</translation>
    </message>
    <message>
        <source>pick share</source>
        <translation type="unfinished">bahagi ng ani</translation>
    </message>
    <message>
        <source>picked</source>
        <translation type="unfinished">inani</translation>
    </message>
    <message>
        <source>picked on a day</source>
        <translation type="unfinished">naani sa isang araw</translation>
    </message>
    <message>
        <source>picking</source>
        <translation type="unfinished">pag-ani</translation>
    </message>
    <message>
        <source>picking days</source>
        <translation type="unfinished">mga araw ng pag-ani</translation>
    </message>
    <message>
        <source>picking factor</source>
        <translation type="unfinished">factor ng pag-ani</translation>
    </message>
    <message>
        <source>picks factor</source>
        <translation type="unfinished">factor ng mga pitas</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation type="unfinished">piraso</translation>
    </message>
    <message>
        <source>pieces of some weeks</source>
        <translation type="unfinished">piraso ng ilang linggo</translation>
    </message>
    <message>
        <source>pka intercept</source>
        <translation type="unfinished">intercept ng pKa</translation>
    </message>
    <message>
        <source>pka slope k</source>
        <translation type="unfinished">slope ng pKa</translation>
    </message>
    <message>
        <source>placed</source>
        <translation type="unfinished">nailagay</translation>
    </message>
    <message>
        <source>places</source>
        <translation type="unfinished">mga lugar</translation>
    </message>
    <message>
        <source>places free</source>
        <translation type="unfinished">bakanteng lugar</translation>
    </message>
    <message>
        <source>places free in a bed</source>
        <translation type="unfinished">bakanteng lugar sa isang kama</translation>
    </message>
    <message>
        <source>places held</source>
        <translation type="unfinished">lugar na hawak</translation>
    </message>
    <message>
        <source>places held by a batch</source>
        <translation type="unfinished">lugar na hawak ng isang batch</translation>
    </message>
    <message>
        <source>places of a batch</source>
        <translation type="unfinished">mga lugar ng isang batch</translation>
    </message>
    <message>
        <source>places of a bed</source>
        <translation type="unfinished">mga lugar ng isang kama</translation>
    </message>
    <message>
        <source>places, times the area of one in this bed</source>
        <translation type="unfinished">mga lugar na minultiplika sa lawak ng isa sa kamang ito</translation>
    </message>
    <message>
        <source>plain</source>
        <translation type="unfinished">karaniwan</translation>
    </message>
    <message>
        <source>plain paper, to be cut</source>
        <translation type="unfinished">karaniwang papel, gugupitin</translation>
    </message>
    <message>
        <source>plan weeks</source>
        <translation type="unfinished">mga linggo ng plano</translation>
    </message>
    <message>
        <source>planned day</source>
        <translation type="unfinished">araw sa plano</translation>
    </message>
    <message>
        <source>planned days</source>
        <translation type="unfinished">araw sa plano</translation>
    </message>
    <message>
        <source>planted</source>
        <translation type="unfinished">may tanim</translation>
    </message>
    <message>
        <source>planted area</source>
        <translation type="unfinished">lawak na may tanim</translation>
    </message>
    <message>
        <source>planted area this feed carries by {rule}; by {other} {area}</source>
        <translation type="unfinished">taniman na natutustusan ng pagkaing ito ayon sa {rule}; ayon sa {other}, {area}</translation>
    </message>
    <message>
        <source>planted areas, times the low end of their bands, for the protein that is fed</source>
        <translation type="unfinished">lawak na may tanim na minultiplika sa mababang dulo ng saklaw nila, para sa protinang ipinapakain</translation>
    </message>
    <message>
        <source>plants</source>
        <translation type="unfinished">halaman</translation>
    </message>
    <message>
        <source>plants are short of food</source>
        <translation type="unfinished">kulang sa pagkain ang halaman</translation>
    </message>
    <message>
        <source>plants in the bed</source>
        <translation type="unfinished">halaman sa kama</translation>
    </message>
    <message>
        <source>plants lack {grams} g</source>
        <translation type="unfinished">kulang ng {grams} g ang halaman</translation>
    </message>
    <message>
        <source>plants of a batch</source>
        <translation type="unfinished">halaman ng isang batch</translation>
    </message>
    <message>
        <source>plants of all sowings</source>
        <translation type="unfinished">halaman ng lahat ng hasik</translation>
    </message>
    <message>
        <source>plants so that no week lacks and later ones are not over, evened by least squares</source>
        <translation type="unfinished">halaman na sapat sa bawat linggo at hindi labis sa mga susunod, pinantay sa least squares</translation>
    </message>
    <message>
        <source>plants sown</source>
        <translation type="unfinished">halamang inihasik</translation>
    </message>
    <message>
        <source>plants that are moved to a raft</source>
        <translation type="unfinished">halamang inililipat sa raft</translation>
    </message>
    <message>
        <source>plants that live</source>
        <translation type="unfinished">halamang nabubuhay</translation>
    </message>
    <message>
        <source>plants that live in the bed, in whole plants</source>
        <translation type="unfinished">halamang nabubuhay sa kama, sa buong halaman</translation>
    </message>
    <message>
        <source>plants that live in the bed, in whole plants, times the share that the day has</source>
        <translation type="unfinished">halamang nabubuhay sa kama, buong halaman, minultiplika sa bahagi ng araw</translation>
    </message>
    <message>
        <source>plants that live, times the share of their picks that falls in the week</source>
        <translation type="unfinished">halamang nabubuhay na minultiplika sa bahagi ng mga pitas na tapat sa linggo</translation>
    </message>
    <message>
        <source>plants that live, times the share of their picks, times what a plant gives</source>
        <translation type="unfinished">halamang nabubuhay, minultiplika sa bahagi ng mga pitas, minultiplika sa bigay ng isang halaman</translation>
    </message>
    <message>
        <source>plants that live, times what a plant gives, times the share of it that can be sold</source>
        <translation type="unfinished">halamang nabubuhay, minultiplika sa bigay ng isang halaman, minultiplika sa bahaging maibebenta</translation>
    </message>
    <message>
        <source>plants to pick</source>
        <translation type="unfinished">halamang aanihin</translation>
    </message>
    <message>
        <source>plants wanted with an allowance for losses, over the share that comes up</source>
        <translation type="unfinished">halamang gusto na may palugit sa pagkawala, hinati sa bahaging tumutubo</translation>
    </message>
    <message>
        <source>plants wanted, over the share that comes up and lives in the nursery, rounded up</source>
        <translation type="unfinished">halamang gusto na hinati sa bahaging tumutubo at nabubuhay sa punlaan, pataas ang pagbuo</translation>
    </message>
    <message>
        <source>plants wanted, over the share that comes up and the share that lives, rounded up</source>
        <translation type="unfinished">halamang gusto na hinati sa bahaging tumutubo at bahaging nabubuhay, pataas ang pagbuo</translation>
    </message>
    <message>
        <source>plants without a place</source>
        <translation type="unfinished">halamang walang lugar</translation>
    </message>
    <message>
        <source>plants without a place {before} → {after}</source>
        <translation type="unfinished">halamang walang puwesto {before} → {after}</translation>
    </message>
    <message>
        <source>plants without place</source>
        <translation type="unfinished">halamang walang lugar</translation>
    </message>
    <message>
        <source>plants, less those that have a place in a bed</source>
        <translation type="unfinished">mga halaman, bawas ang may lugar na sa kama</translation>
    </message>
    <message>
        <source>plants, times dry mass formed in the week, times content</source>
        <translation type="unfinished">halaman, minultiplika sa tuyong bigat na nabuo sa linggo, minultiplika sa laman</translation>
    </message>
    <message>
        <source>plants, times the share of their picks in the week, times what a plant gives</source>
        <translation type="unfinished">halaman, minultiplika sa bahagi ng mga pitas sa linggo, minultiplika sa bigay ng isang halaman</translation>
    </message>
    <message>
        <source>plants/m²</source>
        <translation type="unfinished">halaman/m²</translation>
    </message>
    <message>
        <source>plugs to order</source>
        <translation type="unfinished">plug na oorderin</translation>
    </message>
    <message>
        <source>poor seed</source>
        <translation type="unfinished">mahinang binhi</translation>
    </message>
    <message>
        <source>potassium</source>
        <translation type="unfinished">potasyo</translation>
    </message>
    <message>
        <source>pots</source>
        <translation type="unfinished">paso</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation type="unfinished">brownout</translation>
    </message>
    <message>
        <source>power of lamps</source>
        <translation type="unfinished">lakas ng mga ilaw</translation>
    </message>
    <message>
        <source>power of pumps</source>
        <translation type="unfinished">lakas ng mga bomba</translation>
    </message>
    <message>
        <source>power wanted</source>
        <translation type="unfinished">lakas na kailangan</translation>
    </message>
    <message>
        <source>ppm meter</source>
        <translation type="unfinished">panukat ng ppm</translation>
    </message>
    <message>
        <source>ppm need a meter with its factor: choose one above, or add it first.</source>
        <translation type="unfinished">Kailangan ng ppm ang panukat na may factor: pumili sa itaas, o idagdag muna.</translation>
    </message>
    <message>
        <source>ppm per µS/cm, 0.3 to 1</source>
        <translation type="unfinished">ppm bawat µS/cm, 0.3 hanggang 1</translation>
    </message>
    <message>
        <source>present</source>
        <translation type="unfinished">naroon</translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished">presyo</translation>
    </message>
    <message>
        <source>primed</source>
        <translation type="unfinished">primed</translation>
    </message>
    <message>
        <source>primed seed keeps less long: test it; the careful end of what is likely is taken</source>
        <translation type="unfinished">mas maikling tumagal ang primed na binhi: subukin; ang maingat na dulo ng malamang ang ginagamit</translation>
    </message>
    <message>
        <source>printed rate</source>
        <translation type="unfinished">nakalimbag na bilis</translation>
    </message>
    <message>
        <source>printed rate at</source>
        <translation type="unfinished">init ng nakalimbag na bilis</translation>
    </message>
    <message>
        <source>prior seeds</source>
        <translation type="unfinished">binhing panimula</translation>
    </message>
    <message>
        <source>prior share</source>
        <translation type="unfinished">bahaging panimula</translation>
    </message>
    <message>
        <source>proposal</source>
        <translation type="unfinished">mungkahi</translation>
    </message>
    <message>
        <source>protein</source>
        <translation type="unfinished">protina</translation>
    </message>
    <message>
        <source>protein fed</source>
        <translation type="unfinished">protinang ipinakain</translation>
    </message>
    <message>
        <source>protein fed to a group</source>
        <translation type="unfinished">protinang ipinakain sa isang grupo</translation>
    </message>
    <message>
        <source>protein in what is fed</source>
        <translation type="unfinished">protina sa ipinapakain</translation>
    </message>
    <message>
        <source>protein of the feed in the week</source>
        <translation type="unfinished">protina ng pakain sa linggo</translation>
    </message>
    <message>
        <source>protein per nitrogen</source>
        <translation type="unfinished">protina bawat nitrogen</translation>
    </message>
    <message>
        <source>protein share</source>
        <translation type="unfinished">bahagi ng protina</translation>
    </message>
    <message>
        <source>protein that is fed, over the feed</source>
        <translation type="unfinished">protinang ipinapakain na hinati sa pakain</translation>
    </message>
    <message>
        <source>protein where nothing is fed</source>
        <translation type="unfinished">protina kung walang pakain</translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished">nailathala</translation>
    </message>
    <message>
        <source>published cases</source>
        <translation type="unfinished">mga kasong nailathala</translation>
    </message>
    <message>
        <source>published figure</source>
        <translation type="unfinished">nailathalang bilang</translation>
    </message>
    <message>
        <source>published: {line}</source>
        <translation type="unfinished">nailathala: {line}</translation>
    </message>
    <message>
        <source>purged for {days} days before the harvest on {harvest}</source>
        <translation type="unfinished">nilinis ang bituka nang {days} araw bago ang ani sa {harvest}</translation>
    </message>
    <message>
        <source>quicker than by the book</source>
        <translation type="unfinished">mas mabilis kaysa sa aklat</translation>
    </message>
    <message>
        <source>rad</source>
        <translation type="unfinished">rad</translation>
    </message>
    <message>
        <source>raft</source>
        <translation type="unfinished">lutang</translation>
    </message>
    <message>
        <source>rafts, blocks or trays</source>
        <translation type="unfinished">raft, block o tray</translation>
    </message>
    <message>
        <source>rafts, blocks or trays, times rows, times places along a row</source>
        <translation type="unfinished">raft, block o tray, minultiplika sa mga hanay, minultiplika sa mga lugar sa isang hanay</translation>
    </message>
    <message>
        <source>rain in the month</source>
        <translation type="unfinished">ulan sa buwan</translation>
    </message>
    <message>
        <source>raised</source>
        <translation type="unfinished">itinaas</translation>
    </message>
    <message>
        <source>range deviations</source>
        <translation type="unfinished">deviation ng saklaw</translation>
    </message>
    <message>
        <source>range of ratio</source>
        <translation type="unfinished">saklaw ng ratio</translation>
    </message>
    <message>
        <source>range of {what}</source>
        <translation type="unfinished">saklaw ng {what}</translation>
    </message>
    <message>
        <source>ranges</source>
        <translation type="unfinished">mga saklaw</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">bilis</translation>
    </message>
    <message>
        <source>rate share under rafts</source>
        <translation type="unfinished">bahagi ng bilis sa ilalim ng raft</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation type="unfinished">ratio</translation>
    </message>
    <message>
        <source>ratio; short below short below, thin below thin below, ample above ample above, met between</source>
        <translation type="unfinished">ratio; kulang sa ilalim ng hangganan ng kulang, manipis sa ilalim ng manipis, labis sa ibabaw ng labis, sapat sa pagitan</translation>
    </message>
    <message>
        <source>reached already</source>
        <translation type="unfinished">naabot na</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">nabasa</translation>
    </message>
    <message>
        <source>read from the crop's table of normal seedlings by temperature</source>
        <translation type="unfinished">binasa sa talahanayan ng pananim ng normal na punla ayon sa temperatura</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation type="unfinished">nabasa sa pinagmulan</translation>
    </message>
    <message>
        <source>read off the pump's curve, straight between its points</source>
        <translation type="unfinished">binasa sa kurba ng bomba, tuwid sa pagitan ng mga punto</translation>
    </message>
    <message>
        <source>read on {day}</source>
        <translation type="unfinished">binasa noong {day}</translation>
    </message>
    <message>
        <source>read straight between the points of the curve</source>
        <translation type="unfinished">binasa nang tuwid sa pagitan ng mga punto ng kurba</translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished">sukat</translation>
    </message>
    <message>
        <source>ready to harvest</source>
        <translation type="unfinished">handa nang anihin</translation>
    </message>
    <message>
        <source>ready {days} days before it is wanted</source>
        <translation type="unfinished">handa {days} araw bago kailangan</translation>
    </message>
    <message>
        <source>reckoned day by day: plants cannot take today what is only supplied tomorrow</source>
        <translation type="unfinished">kinuwenta araw-araw: hindi makukuha ng halaman ngayon ang bukas pa ibibigay</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">batayan</translation>
    </message>
    <message>
        <source>reference protein</source>
        <translation type="unfinished">protinang batayan</translation>
    </message>
    <message>
        <source>reference value</source>
        <translation type="unfinished">halagang batayan</translation>
    </message>
    <message>
        <source>repairs it</source>
        <translation type="unfinished">naaayos ito</translation>
    </message>
    <message>
        <source>replaced by {code}</source>
        <translation type="unfinished">pinalitan ng {code}</translation>
    </message>
    <message>
        <source>reserve share</source>
        <translation type="unfinished">bahaging reserba</translation>
    </message>
    <message>
        <source>return liquor</source>
        <translation type="unfinished">ibalik ang katas</translation>
    </message>
    <message>
        <source>returned share</source>
        <translation type="unfinished">bahaging ibinabalik</translation>
    </message>
    <message>
        <source>rise of an element by a dose</source>
        <translation type="unfinished">taas ng elemento dahil sa dosis</translation>
    </message>
    <message>
        <source>rise share</source>
        <translation type="unfinished">bahagi ng taas</translation>
    </message>
    <message>
        <source>rising</source>
        <translation type="unfinished">tumataas</translation>
    </message>
    <message>
        <source>robust spread</source>
        <translation type="unfinished">matatag na kalat</translation>
    </message>
    <message>
        <source>room share</source>
        <translation type="unfinished">bahagi ng puwang</translation>
    </message>
    <message>
        <source>rounding of the print</source>
        <translation type="unfinished">pag-round sa nailathala</translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished">hanay</translation>
    </message>
    <message>
        <source>safe</source>
        <translation type="unfinished">ligtas</translation>
    </message>
    <message>
        <source>salt builds up in the water</source>
        <translation type="unfinished">naiipon ang asin sa tubig</translation>
    </message>
    <message>
        <source>salt grams</source>
        <translation type="unfinished">gramo ng asin</translation>
    </message>
    <message>
        <source>salts</source>
        <translation type="unfinished">mga asin</translation>
    </message>
    <message>
        <source>sampling error of the chance</source>
        <translation type="unfinished">mali ng pagsasampol sa tsansa</translation>
    </message>
    <message>
        <source>saturation not known: no water temperature by month</source>
        <translation type="unfinished">hindi alam ang saturation: walang init ng tubig bawat buwan</translation>
    </message>
    <message>
        <source>says which light is wanted</source>
        <translation type="unfinished">nagsasabi kung anong liwanag ang kailangan</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation type="unfinished">takal</translation>
    </message>
    <message>
        <source>scoops of a meal</source>
        <translation type="unfinished">takal bawat kain</translation>
    </message>
    <message>
        <source>score 0-3</source>
        <translation type="unfinished">antas 0-3</translation>
    </message>
    <message>
        <source>score of the way</source>
        <translation type="unfinished">marka ng paraan</translation>
    </message>
    <message>
        <source>seed lot</source>
        <translation type="unfinished">lote ng binhi</translation>
    </message>
    <message>
        <source>seed tested</source>
        <translation type="unfinished">sinubok ang binhi</translation>
    </message>
    <message>
        <source>seed, pots, feed, base and iron, by the month they are used in</source>
        <translation type="unfinished">binhi, paso, pakain, base at bakal, ayon sa buwan ng paggamit</translation>
    </message>
    <message>
        <source>seedlings get older and may stretch</source>
        <translation type="unfinished">tatanda ang punla at baka humaba</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation type="unfinished">binhi</translation>
    </message>
    <message>
        <source>seeds a pot</source>
        <translation type="unfinished">binhi bawat paso</translation>
    </message>
    <message>
        <source>seeds and plants that live one by one</source>
        <translation type="unfinished">binhi at halamang isa-isang nabubuhay</translation>
    </message>
    <message>
        <source>seeds counted</source>
        <translation type="unfinished">binhing nabilang</translation>
    </message>
    <message>
        <source>seeds in a coat, one to a plug</source>
        <translation type="unfinished">binhing may balot, isa bawat plug</translation>
    </message>
    <message>
        <source>seeds laid out</source>
        <translation type="unfinished">binhing inilatag</translation>
    </message>
    <message>
        <source>seeds made ready to sprout; they keep less long</source>
        <translation type="unfinished">binhing inihanda sa pagsibol; mas maikli ang buhay</translation>
    </message>
    <message>
        <source>seeds of all sowings</source>
        <translation type="unfinished">binhi ng lahat ng hasik</translation>
    </message>
    <message>
        <source>seeds of some weeks</source>
        <translation type="unfinished">binhi ng ilang linggo</translation>
    </message>
    <message>
        <source>seeds to order</source>
        <translation type="unfinished">binhing oorderin</translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished">nakita</translation>
    </message>
    <message>
        <source>settled after days</source>
        <translation type="unfinished">araw bago pumanatag</translation>
    </message>
    <message>
        <source>share of base</source>
        <translation type="unfinished">bahagi ng base</translation>
    </message>
    <message>
        <source>share of light let through</source>
        <translation type="unfinished">bahagi ng liwanag na nakalulusot</translation>
    </message>
    <message>
        <source>share of normal seedlings at temperature, over the table's best</source>
        <translation type="unfinished">bahagi ng normal na punla sa temperatura, hinati sa pinakamataas sa talahanayan</translation>
    </message>
    <message>
        <source>share of the day</source>
        <translation type="unfinished">bahagi ng araw</translation>
    </message>
    <message>
        <source>share of weeks outside the band, and how far they lie from it on average</source>
        <translation type="unfinished">bahagi ng mga linggong labas sa saklaw, at gaano kalayo sa karaniwan</translation>
    </message>
    <message>
        <source>share that falls out in a day</source>
        <translation type="unfinished">bahaging namumuo sa isang araw</translation>
    </message>
    <message>
        <source>share that leaves in a day</source>
        <translation type="unfinished">bahaging umaalis sa isang araw</translation>
    </message>
    <message>
        <source>shared variance share</source>
        <translation type="unfinished">bahagi ng pag-iibang sabay</translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished">kulang</translation>
    </message>
    <message>
        <source>short are {elements}; the lowest is {element}</source>
        <translation type="unfinished">kulang ang {elements}; pinakamababa ang {element}</translation>
    </message>
    <message>
        <source>short below</source>
        <translation type="unfinished">kulang kapag mas mababa sa</translation>
    </message>
    <message>
        <source>short of places</source>
        <translation type="unfinished">kulang sa lugar</translation>
    </message>
    <message>
        <source>short supply</source>
        <translation type="unfinished">kulang ang supply</translation>
    </message>
    <message>
        <source>since {since}, 1 day</source>
        <translation type="unfinished">mula {since}, 1 araw</translation>
    </message>
    <message>
        <source>since {since}, {days} days</source>
        <translation type="unfinished">mula {since}, {days} araw</translation>
    </message>
    <message>
        <source>single</source>
        <translation type="unfinished">isahan</translation>
    </message>
    <message>
        <source>siphon</source>
        <translation type="unfinished">sipunin</translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished">lugar</translation>
    </message>
    <message>
        <source>size share</source>
        <translation type="unfinished">bahagi ng laki</translation>
    </message>
    <message>
        <source>size that is reached when a stage has lasted as long as it may</source>
        <translation type="unfinished">laki na naabot kapag tumagal na ang yugto hanggang sa maaari</translation>
    </message>
    <message>
        <source>slack share</source>
        <translation type="unfinished">bahaging luwag</translation>
    </message>
    <message>
        <source>slowed most by: {cause}</source>
        <translation type="unfinished">pinakanagpabagal: {cause}</translation>
    </message>
    <message>
        <source>so many of all draws lie below it</source>
        <translation type="unfinished">ganito karami sa lahat ng bunot ang mas mababa rito</translation>
    </message>
    <message>
        <source>solids</source>
        <translation type="unfinished">solido</translation>
    </message>
    <message>
        <source>solids batch</source>
        <translation type="unfinished">batch ng solido</translation>
    </message>
    <message>
        <source>solids gathered</source>
        <translation type="unfinished">solidong naipon</translation>
    </message>
    <message>
        <source>solids of so many days before go in</source>
        <translation type="unfinished">papasok ang solido ng ganito karaming araw bago nito</translation>
    </message>
    <message>
        <source>solids of the days before it was filled, those before the plan among them</source>
        <translation type="unfinished">solido ng mga araw bago ito napuno, pati ang bago ang plano</translation>
    </message>
    <message>
        <source>solids of the fish</source>
        <translation type="unfinished">solido ng isda</translation>
    </message>
    <message>
        <source>solids of the fish, less what the filters take out</source>
        <translation type="unfinished">solido ng isda, bawas ang inaalis ng mga pansala</translation>
    </message>
    <message>
        <source>solids share</source>
        <translation type="unfinished">bahaging solido</translation>
    </message>
    <message>
        <source>solids siphoned</source>
        <translation type="unfinished">sinipong latak</translation>
    </message>
    <message>
        <source>solids that pass the filters</source>
        <translation type="unfinished">solidong lumalampas sa pansala</translation>
    </message>
    <message>
        <source>sow</source>
        <translation type="unfinished">maghasik</translation>
    </message>
    <message>
        <source>sow {plants} plants</source>
        <translation type="unfinished">maghasik ng {plants} halaman</translation>
    </message>
    <message>
        <source>sowing</source>
        <translation type="unfinished">paghasik</translation>
    </message>
    <message>
        <source>sowings</source>
        <translation type="unfinished">hasik</translation>
    </message>
    <message>
        <source>sowings of the plan</source>
        <translation type="unfinished">mga hasik ng plano</translation>
    </message>
    <message>
        <source>sown</source>
        <translation type="unfinished">inihasik</translation>
    </message>
    <message>
        <source>sown {day}</source>
        <translation type="unfinished">inihasik {day}</translation>
    </message>
    <message>
        <source>space</source>
        <translation type="unfinished">paglayuin</translation>
    </message>
    <message>
        <source>spacing</source>
        <translation type="unfinished">gitnang agwat</translation>
    </message>
    <message>
        <source>spacing days</source>
        <translation type="unfinished">mga araw na pinaglayo</translation>
    </message>
    <message>
        <source>spare</source>
        <translation type="unfinished">palugit</translation>
    </message>
    <message>
        <source>spread of days to the first pick</source>
        <translation type="unfinished">kalat ng mga araw bago ang unang ani</translation>
    </message>
    <message>
        <source>spread of what was seen</source>
        <translation type="unfinished">kalat ng nakita</translation>
    </message>
    <message>
        <source>spread of yield</source>
        <translation type="unfinished">kalat ng ani</translation>
    </message>
    <message>
        <source>spread of {what}</source>
        <translation type="unfinished">kalat ng {what}</translation>
    </message>
    <message>
        <source>spread the source gives</source>
        <translation type="unfinished">saklaw na bigay ng pinagmulan</translation>
    </message>
    <message>
        <source>stage days</source>
        <translation type="unfinished">mga araw ng yugto</translation>
    </message>
    <message>
        <source>stand</source>
        <translation type="unfinished">tubo sa punlaan</translation>
    </message>
    <message>
        <source>stand share</source>
        <translation type="unfinished">bahaging lumilitaw</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation type="unfinished">standard deviation</translation>
    </message>
    <message>
        <source>standard deviation of the weeks over their mean</source>
        <translation type="unfinished">standard deviation ng mga linggo na hinati sa mean nila</translation>
    </message>
    <message>
        <source>standard deviation over draws in which nothing else varies</source>
        <translation type="unfinished">standard deviation ng mga bunot na wala nang ibang nag-iiba</translation>
    </message>
    <message>
        <source>standard error of a share that was counted in so many draws</source>
        <translation type="unfinished">standard error ng bahaging binilang sa ganito karaming bunot</translation>
    </message>
    <message>
        <source>stands alone: repeat the test before acting on it</source>
        <translation type="unfinished">nag-iisa: ulitin ang suri bago kumilos</translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished">simula</translation>
    </message>
    <message>
        <source>stated by the source</source>
        <translation type="unfinished">sinabi ng pinagmulan</translation>
    </message>
    <message>
        <source>steady</source>
        <translation type="unfinished">pantay</translation>
    </message>
    <message>
        <source>steepness</source>
        <translation type="unfinished">tarik</translation>
    </message>
    <message>
        <source>stock</source>
        <translation type="unfinished">imbak</translation>
    </message>
    <message>
        <source>stock fish</source>
        <translation type="unfinished">maglagay ng isda</translation>
    </message>
    <message>
        <source>stock in the water</source>
        <translation type="unfinished">imbak sa tubig</translation>
    </message>
    <message>
        <source>stock to {top} mg/L</source>
        <translation type="unfinished">stock hanggang {top} mg/L</translation>
    </message>
    <message>
        <source>stock {level} mg/L</source>
        <translation type="unfinished">nakaimbak {level} mg/L</translation>
    </message>
    <message>
        <source>stock {level} mg/L, assumed: no test</source>
        <translation type="unfinished">stock {level} mg/L, ipinalagay: walang suri</translation>
    </message>
    <message>
        <source>stocked</source>
        <translation type="unfinished">inilagay</translation>
    </message>
    <message>
        <source>stocked and added, less the dead that were counted, those expected, and harvests</source>
        <translation type="unfinished">inilagay at idinagdag, bawas ang nabilang na patay, ang inaasahan, at mga ani</translation>
    </message>
    <message>
        <source>stocked on {on} only</source>
        <translation type="unfinished">noong {on} pa lang inilagay</translation>
    </message>
    <message>
        <source>suited to this pH</source>
        <translation type="unfinished">bagay sa pH na ito</translation>
    </message>
    <message>
        <source>sum</source>
        <translation type="unfinished">kabuuan</translation>
    </message>
    <message>
        <source>sum of the parts</source>
        <translation type="unfinished">kabuuan ng mga bahagi</translation>
    </message>
    <message>
        <source>sunshine outside</source>
        <translation type="unfinished">sikat ng araw sa labas</translation>
    </message>
    <message>
        <source>supplements</source>
        <translation type="unfinished">mga suplemento</translation>
    </message>
    <message>
        <source>supplied</source>
        <translation type="unfinished">naibigay</translation>
    </message>
    <message>
        <source>supplied a week</source>
        <translation type="unfinished">naibigay bawat linggo</translation>
    </message>
    <message>
        <source>supplied since then</source>
        <translation type="unfinished">naibigay mula noon</translation>
    </message>
    <message>
        <source>supplied {span}</source>
        <translation type="unfinished">supply {span}</translation>
    </message>
    <message>
        <source>supply</source>
        <translation type="unfinished">supply</translation>
    </message>
    <message>
        <source>supply and stock</source>
        <translation type="unfinished">supply at imbak</translation>
    </message>
    <message>
        <source>supply and stock for the demand</source>
        <translation type="unfinished">supply at imbak para sa kailangan</translation>
    </message>
    <message>
        <source>supply and what is dissolved when the week begins, over demand</source>
        <translation type="unfinished">supply at ang natunaw sa simula ng linggo, hinati sa kailangan</translation>
    </message>
    <message>
        <source>supply idle</source>
        <translation type="unfinished">supply na hindi nagamit</translation>
    </message>
    <message>
        <source>supply over demand</source>
        <translation type="unfinished">supply na hinati sa kailangan</translation>
    </message>
    <message>
        <source>supply over demand, held against where it counts as short, thin and ample</source>
        <translation type="unfinished">supply na hinati sa kailangan, inihambing sa turing na kulang, manipis at labis</translation>
    </message>
    <message>
        <source>supply short</source>
        <translation type="unfinished">supply na kulang</translation>
    </message>
    <message>
        <source>supply times</source>
        <translation type="unfinished">supply, ilang beses</translation>
    </message>
    <message>
        <source>surface</source>
        <translation type="unfinished">lawak ng ibabaw</translation>
    </message>
    <message>
        <source>surface of gravel</source>
        <translation type="unfinished">ibabaw ng graba</translation>
    </message>
    <message>
        <source>survival in the bed</source>
        <translation type="unfinished">pagkabuhay sa kama</translation>
    </message>
    <message>
        <source>survival in the nursery</source>
        <translation type="unfinished">pagkabuhay sa punlaan</translation>
    </message>
    <message>
        <source>survival share</source>
        <translation type="unfinished">bahaging nabubuhay</translation>
    </message>
    <message>
        <source>taken</source>
        <translation type="unfinished">nakuha</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">binawi</translation>
    </message>
    <message>
        <source>taken by plants since then</source>
        <translation type="unfinished">nakuha ng halaman mula noon</translation>
    </message>
    <message>
        <source>takes away {share} of it</source>
        <translation type="unfinished">inaalis ang {share} nito</translation>
    </message>
    <message>
        <source>takes longer, and may prove that nothing is better</source>
        <translation type="unfinished">mas matagal, at maaaring patunayang walang mas mahusay</translation>
    </message>
    <message>
        <source>tank</source>
        <translation type="unfinished">tangke</translation>
    </message>
    <message>
        <source>tank too full</source>
        <translation type="unfinished">punô ang tangke</translation>
    </message>
    <message>
        <source>tanks are fuller later</source>
        <translation type="unfinished">mas puno ang tangke kinalaunan</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">target</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished">temperatura</translation>
    </message>
    <message>
        <source>test again</source>
        <translation type="unfinished">suriing muli</translation>
    </message>
    <message>
        <source>test late</source>
        <translation type="unfinished">huli ang pagsusuri</translation>
    </message>
    <message>
        <source>test the water first</source>
        <translation type="unfinished">suriin muna ang tubig</translation>
    </message>
    <message>
        <source>tested share</source>
        <translation type="unfinished">nasubok na bahagi</translation>
    </message>
    <message>
        <source>tests, additions and the bands values should keep to, for each loop</source>
        <translation type="unfinished">mga suri, dagdag at ang mga bandang dapat panatilihin, sa bawat loop</translation>
    </message>
    <message>
        <source>text</source>
        <translation type="unfinished">text</translation>
    </message>
    <message>
        <source>tgc</source>
        <translation type="unfinished">coefficient ng paglaki</translation>
    </message>
    <message>
        <source>that air pumps give the whole loop</source>
        <translation type="unfinished">na ibinibigay ng air pump sa buong loop</translation>
    </message>
    <message>
        <source>that floor and frame may carry</source>
        <translation type="unfinished">na kayang dalhin ng sahig at balangkas</translation>
    </message>
    <message>
        <source>that it was read with</source>
        <translation type="unfinished">na ginamit sa pagsukat</translation>
    </message>
    <message>
        <source>that reaches the new beds</source>
        <translation type="unfinished">na umaabot sa mga bagong kama</translation>
    </message>
    <message>
        <source>the act changed nothing in the plan besides</source>
        <translation type="unfinished">walang ibang binago ang kilos sa plano</translation>
    </message>
    <message>
        <source>the amount with a share in reserve</source>
        <translation type="unfinished">ang dami na may bahaging reserba</translation>
    </message>
    <message>
        <source>the area that is planted</source>
        <translation type="unfinished">lawak na may tanim</translation>
    </message>
    <message>
        <source>the balance agrees with what was published</source>
        <translation type="unfinished">tugma ang balanse sa nailathala</translation>
    </message>
    <message>
        <source>the balance lies above what was published</source>
        <translation type="unfinished">mas mataas ang balanse sa nailathala</translation>
    </message>
    <message>
        <source>the balance lies below what was published</source>
        <translation type="unfinished">mas mababa ang balanse sa nailathala</translation>
    </message>
    <message>
        <source>the bed's area, times depth, times the surface of gravel, as much of it as works</source>
        <translation type="unfinished">lawak ng kama, minultiplika sa lalim, minultiplika sa ibabaw ng graba, ang bahaging gumagana</translation>
    </message>
    <message>
        <source>the best temperature of the fish, where that of the water is not known</source>
        <translation type="unfinished">ang pinakamainam na temperatura ng isda, kung hindi alam ang sa tubig</translation>
    </message>
    <message>
        <source>the best temperature, times how well the fish grow at this one, at most that of the water</source>
        <translation type="unfinished">ang pinakamainam na temperatura na minultiplika sa husay ng paglaki ng isda rito, hanggang sa temperatura ng tubig</translation>
    </message>
    <message>
        <source>the best that was found by trying</source>
        <translation type="unfinished">ang pinakamahusay na natagpuan sa pagsubok</translation>
    </message>
    <message>
        <source>the book's share, times the ratio of seen to book, drawn toward 1 by the book's weight; at most all</source>
        <translation type="unfinished">bahagi ng aklat na minultiplika sa ratio ng nakita sa aklat, hinila patungong 1 ng timbang ng aklat; hanggang lahat</translation>
    </message>
    <message>
        <source>the book's value, times the ratio of seen to planned, drawn to 1 by the book's weight</source>
        <translation type="unfinished">halaga ng aklat na minultiplika sa ratio ng nakita sa plano, hinila patungong 1 ng timbang ng aklat</translation>
    </message>
    <message>
        <source>the calibrations of {name} are not watched.</source>
        <translation type="unfinished">hindi binabantayan ang calibration ng {name}.</translation>
    </message>
    <message>
        <source>the caretaker: feed, dose, test, siphon, pick</source>
        <translation type="unfinished">ang tagapag-alaga: pakain, dosis, suri, sipon, ani</translation>
    </message>
    <message>
        <source>the circuit has too little to spare</source>
        <translation type="unfinished">kulang ang reserba ng circuit</translation>
    </message>
    <message>
        <source>the climate is not known: durations are those of the book, the same all year</source>
        <translation type="unfinished">hindi alam ang klima: ang tagal ay ayon sa aklat, pareho buong taon</translation>
    </message>
    <message>
        <source>the cube root of weight grows by the coefficient times warmth</source>
        <translation type="unfinished">lumalaki ang cube root ng bigat nang coefficient na minultiplika sa init</translation>
    </message>
    <message>
        <source>the day it is meant to go, but not before a new loop has run for so long</source>
        <translation type="unfinished">ang araw na dapat ilipat, pero hindi bago umandar nang ganoon katagal ang bagong loop</translation>
    </message>
    <message>
        <source>the day it may go, less the day it is meant to go</source>
        <translation type="unfinished">ang araw na maaari itong ilipat, bawas ang araw na dapat sana</translation>
    </message>
    <message>
        <source>the depth of the gravel is assumed</source>
        <translation type="unfinished">tinantiya ang lalim ng graba</translation>
    </message>
    <message>
        <source>the depth of the water is not entered, or it is gravel, whose weight you must ask</source>
        <translation type="unfinished">hindi nailagay ang lalim ng tubig, o graba ito na dapat itanong ang bigat</translation>
    </message>
    <message>
        <source>the dose of {about} runs out: it was last given on {on}</source>
        <translation type="unfinished">nauubos na ang dosis ng {about}: huling ibinigay noong {on}</translation>
    </message>
    <message>
        <source>the entry that this one replaces</source>
        <translation type="unfinished">ang entry na pinapalitan nito</translation>
    </message>
    <message>
        <source>the factor of the meter was not noted; the usual one is taken</source>
        <translation type="unfinished">hindi naitala ang factor ng panukat; ang karaniwan ang ginamit</translation>
    </message>
    <message>
        <source>the factor that the figure lowers it by, at its low or at its high value</source>
        <translation type="unfinished">ang factor ng pagbaba nito dahil sa bilang, sa mababa o mataas nitong halaga</translation>
    </message>
    <message>
        <source>the factors that figures can change it by, put together by their logarithms in squares</source>
        <translation type="unfinished">ang mga factor na makapagbabago rito, pinagsama sa kuwadrado ng mga logaritmo</translation>
    </message>
    <message>
        <source>the farm as a whole</source>
        <translation type="unfinished">ang buong bukid</translation>
    </message>
    <message>
        <source>the farm has no nursery</source>
        <translation type="unfinished">walang punlaan ang farm</translation>
    </message>
    <message>
        <source>the feed carries it in some months only</source>
        <translation type="unfinished">kaya lang ng pakain sa ilang buwan</translation>
    </message>
    <message>
        <source>the feed falls</source>
        <translation type="unfinished">babagsak ang pakain</translation>
    </message>
    <message>
        <source>the feed falls by {before} → {after}</source>
        <translation type="unfinished">bagsak ng pakain {before} → {after}</translation>
    </message>
    <message>
        <source>the feed holds too little of it: even {high} g/m²/d would not be enough</source>
        <translation type="unfinished">kulang nito ang pakain: kahit {high} g/m²/araw ay hindi sasapat</translation>
    </message>
    <message>
        <source>the feed lies at the low end of the band then</source>
        <translation type="unfinished">nasa mababang dulo ng saklaw ang pakain noon</translation>
    </message>
    <message>
        <source>the feed that is made for fish of this weight</source>
        <translation type="unfinished">ang pakaing para sa isdang ganito ang bigat</translation>
    </message>
    <message>
        <source>the filter has too little surface</source>
        <translation type="unfinished">kulang ang ibabaw ng filter</translation>
    </message>
    <message>
        <source>the filter would be too small for the most that may be needed</source>
        <translation type="unfinished">maliit ang filter sa pinakamaraming maaaring kailangan</translation>
    </message>
    <message>
        <source>the filter's surface has no reserve</source>
        <translation type="unfinished">walang reserba ang ibabaw ng filter</translation>
    </message>
    <message>
        <source>the filter's surface is not entered</source>
        <translation type="unfinished">hindi nailagay ang ibabaw ng filter</translation>
    </message>
    <message>
        <source>the first day on which the fish are as heavy as for the harvest</source>
        <translation type="unfinished">ang unang araw na kasimbigat na ng para sa ani ang isda</translation>
    </message>
    <message>
        <source>the first day, by whole weeks, from which feed is enough for some weeks in a row</source>
        <translation type="unfinished">ang unang araw, sa buong linggo, na sapat ang pakain nang ilang linggong sunod-sunod</translation>
    </message>
    <message>
        <source>the fish are not fed enough for it in any month</source>
        <translation type="unfinished">walang buwan na sapat ang pakain ng isda para rito</translation>
    </message>
    <message>
        <source>the fish that stay are not purged: days off feed would undo it</source>
        <translation type="unfinished">hindi nililinis ang natirang isda: sisirain ito ng mga araw na walang pakain</translation>
    </message>
    <message>
        <source>the flow is enough, but without reserve</source>
        <translation type="unfinished">sapat ang daloy, pero walang reserba</translation>
    </message>
    <message>
        <source>the gap, over the share of the element in the product</source>
        <translation type="unfinished">ang kulang na hinati sa bahagi ng elemento sa produkto</translation>
    </message>
    <message>
        <source>the grower: sow, space out, move, pick, clear</source>
        <translation type="unfinished">ang nagtatanim: hasik, paglayo, lipat, ani, linis</translation>
    </message>
    <message>
        <source>the harvest comes later</source>
        <translation type="unfinished">mas huli ang ani</translation>
    </message>
    <message>
        <source>the harvest takes all that are left</source>
        <translation type="unfinished">kinukuha ng ani ang lahat ng natitira</translation>
    </message>
    <message>
        <source>the height of the lift is not entered</source>
        <translation type="unfinished">hindi nailagay ang taas ng angat</translation>
    </message>
    <message>
        <source>the high end of what is likely, by the ranges of its figures</source>
        <translation type="unfinished">ang mataas na dulo ng malamang, ayon sa saklaw ng mga bilang nito</translation>
    </message>
    <message>
        <source>the high end over the likely value</source>
        <translation type="unfinished">ang mataas na dulo na hinati sa malamang na halaga</translation>
    </message>
    <message>
        <source>the largest of its parts</source>
        <translation type="unfinished">ang pinakamalaki sa mga bahagi nito</translation>
    </message>
    <message>
        <source>the last reading, less the limit</source>
        <translation type="unfinished">ang huling suri, bawas ang limit</translation>
    </message>
    <message>
        <source>the last reading, raised by base of doses and make-up water, lowered by acid</source>
        <translation type="unfinished">ang huling suri, itinaas ng base ng mga dosis at dagdag na tubig, ibinaba ng asido</translation>
    </message>
    <message>
        <source>the least of its parts</source>
        <translation type="unfinished">ang pinakamaliit sa mga bahagi nito</translation>
    </message>
    <message>
        <source>the level, times the water of the loop</source>
        <translation type="unfinished">ang antas na minultiplika sa tubig ng loop</translation>
    </message>
    <message>
        <source>the light there, or the crop that wants it, is not entered</source>
        <translation type="unfinished">hindi nailagay ang liwanag doon o ang pananim na may kailangan nito</translation>
    </message>
    <message>
        <source>the likely share, less some standard deviations, for seed to be careful with</source>
        <translation type="unfinished">ang malamang na bahagi, bawas ang ilang standard deviation, para sa binhing dapat ingatan</translation>
    </message>
    <message>
        <source>the load is more than the structure may carry</source>
        <translation type="unfinished">mas mabigat kaysa kaya ng istruktura</translation>
    </message>
    <message>
        <source>the load the structure may carry, or that of frame and rafts, is not entered</source>
        <translation type="unfinished">hindi nailagay ang kayang bigat ng istruktura, o bigat ng balangkas at lutang</translation>
    </message>
    <message>
        <source>the log says so: {codes}</source>
        <translation type="unfinished">ayon sa tala: {codes}</translation>
    </message>
    <message>
        <source>the loop has no tank</source>
        <translation type="unfinished">walang tangke ang loop</translation>
    </message>
    <message>
        <source>the mean of its parts</source>
        <translation type="unfinished">ang mean ng mga bahagi nito</translation>
    </message>
    <message>
        <source>the mean of the day, times how much more is asked for after feeding</source>
        <translation type="unfinished">ang mean ng araw na minultiplika sa dagdag na hinihingi matapos magpakain</translation>
    </message>
    <message>
        <source>the mean of what each day needs; the rate is that of the week as a whole</source>
        <translation type="unfinished">ang mean ng kailangan ng bawat araw; ang bilis ay sa buong linggo</translation>
    </message>
    <message>
        <source>the mean of {weeks} weeks from this one on</source>
        <translation type="unfinished">ang mean ng {weeks} linggo mula rito</translation>
    </message>
    <message>
        <source>the median of the slopes between all pairs of readings of the last weeks</source>
        <translation type="unfinished">ang median ng mga tarik sa pagitan ng lahat ng pares ng suri sa huling mga linggo</translation>
    </message>
    <message>
        <source>the middle half of all slopes lies between {low} and {high}</source>
        <translation type="unfinished">nasa pagitan ng {low} at {high} ang gitnang kalahati ng lahat ng tarik</translation>
    </message>
    <message>
        <source>the most that the figure adds, at its low or at its high value</source>
        <translation type="unfinished">ang pinakamalaking idinadagdag ng bilang, sa mababa o mataas nitong halaga</translation>
    </message>
    <message>
        <source>the nitrogen that crops take up</source>
        <translation type="unfinished">nitrogen na kinukuha ng pananim</translation>
    </message>
    <message>
        <source>the owner: pick, stock and harvest fish</source>
        <translation type="unfinished">ang may-ari: ani, paglagay at ani ng isda</translation>
    </message>
    <message>
        <source>the part over the whole</source>
        <translation type="unfinished">ang bahagi na hinati sa kabuuan</translation>
    </message>
    <message>
        <source>the plan</source>
        <translation type="unfinished">ang plano</translation>
    </message>
    <message>
        <source>the plants have grown: they want {rise_share} more than in the four weeks before</source>
        <translation type="unfinished">lumaki na ang halaman: {rise_share} ang dagdag na kailangan nila kumpara sa nakaraang apat na linggo</translation>
    </message>
    <message>
        <source>the points of the pump do not reach that head</source>
        <translation type="unfinished">hindi umaabot sa head na iyon ang mga punto ng bomba</translation>
    </message>
    <message>
        <source>the power wanted or to spare is not entered</source>
        <translation type="unfinished">hindi nailagay ang kailangan o reserbang kuryente</translation>
    </message>
    <message>
        <source>the pump</source>
        <translation type="unfinished">ang bomba</translation>
    </message>
    <message>
        <source>the pump does not lift so high</source>
        <translation type="unfinished">hindi ganoon kataas ang angat ng bomba</translation>
    </message>
    <message>
        <source>the pump's curve is not entered</source>
        <translation type="unfinished">hindi nailagay ang curve ng bomba</translation>
    </message>
    <message>
        <source>the reading is too old</source>
        <translation type="unfinished">luma na ang suri</translation>
    </message>
    <message>
        <source>the reference, where nothing is fed</source>
        <translation type="unfinished">ang batayan, kung walang pakain</translation>
    </message>
    <message>
        <source>the root of the sum of squares of its parts</source>
        <translation type="unfinished">ang ugat ng kabuuan ng mga kuwadrado ng mga bahagi nito</translation>
    </message>
    <message>
        <source>the same act changed: {things}</source>
        <translation type="unfinished">binago rin ng kilos na ito: {things}</translation>
    </message>
    <message>
        <source>the search ended within {share} % of what no plan can go beyond</source>
        <translation type="unfinished">natapos ang paghahanap sa loob ng {share} % ng hindi malalampasan ng anumang plano</translation>
    </message>
    <message>
        <source>the search was stopped; this is the best so far</source>
        <translation type="unfinished">itinigil ang paghahanap; ito ang pinakamahusay sa ngayon</translation>
    </message>
    <message>
        <source>the season is too slow: the crop is given up at {size_share} of its size</source>
        <translation type="unfinished">masyadong mabagal ang panahon: isinusuko ang pananim sa {size_share} ng laki nito</translation>
    </message>
    <message>
        <source>the season, water or bed it stands in was changed</source>
        <translation type="unfinished">binago ang panahon, tubig o kama na kinatatayuan nito</translation>
    </message>
    <message>
        <source>the share of ammonia that is un-ionised at this pH and temperature</source>
        <translation type="unfinished">ang bahagi ng ammonia na un-ionised sa pH at temperaturang ito</translation>
    </message>
    <message>
        <source>the solids batch {name} was emptied before the plan began.</source>
        <translation type="unfinished">naubos na ang batch ng solido na {name} bago nagsimula ang plano.</translation>
    </message>
    <message>
        <source>the stage is cut off at {times} times its days by the book</source>
        <translation type="unfinished">pinuputol ang yugto sa {times} beses ng mga araw nito sa aklat</translation>
    </message>
    <message>
        <source>the sum of its parts</source>
        <translation type="unfinished">ang kabuuan ng mga bahagi nito</translation>
    </message>
    <message>
        <source>the table</source>
        <translation type="unfinished">ang talahanayan</translation>
    </message>
    <message>
        <source>the tolerance is that of: {reason}</source>
        <translation type="unfinished">ang palugit ay ayon sa: {reason}</translation>
    </message>
    <message>
        <source>the value read</source>
        <translation type="unfinished">ang nabasang halaga</translation>
    </message>
    <message>
        <source>the value that a share of all draws lies below</source>
        <translation type="unfinished">ang halagang mas mababa rito ang isang bahagi ng lahat ng bunot</translation>
    </message>
    <message>
        <source>the warmth of the water is not known: the rate is taken as printed</source>
        <translation type="unfinished">hindi alam ang init ng tubig: ang nakalimbag na bilis ang ginamit</translation>
    </message>
    <message>
        <source>the warmth that was read</source>
        <translation type="unfinished">ang nabasang init</translation>
    </message>
    <message>
        <source>the water has {water_c} °C; these fish feed between {base_c} and {ceiling_c} °C</source>
        <translation type="unfinished">{water_c} °C ang tubig; kumakain ang mga isdang ito sa pagitan ng {base_c} at {ceiling_c} °C</translation>
    </message>
    <message>
        <source>the water temperature is not known; {assumed_c} °C, the best, is assumed</source>
        <translation type="unfinished">hindi alam ang temperatura ng tubig; itinuring na {assumed_c} °C, ang pinakamainam</translation>
    </message>
    <message>
        <source>the week that holds this day comes first</source>
        <translation type="unfinished">nauuna ang linggong may araw na ito</translation>
    </message>
    <message>
        <source>the worst answer of the parts</source>
        <translation type="unfinished">ang pinakamasamang sagot ng mga bahagi</translation>
    </message>
    <message>
        <source>there is no feed in the weeks before to compare with</source>
        <translation type="unfinished">walang pakain sa mga nakaraang linggo na maihahambing</translation>
    </message>
    <message>
        <source>they are that heavy when the plan begins; what went before is not looked at</source>
        <translation type="unfinished">ganoon na sila kabigat sa simula ng plano; hindi tinitingnan ang nauna</translation>
    </message>
    <message>
        <source>thin</source>
        <translation type="unfinished">manipis</translation>
    </message>
    <message>
        <source>thin below</source>
        <translation type="unfinished">manipis kapag mas mababa sa</translation>
    </message>
    <message>
        <source>this counts as: {band}</source>
        <translation type="unfinished">ang turing dito: {band}</translation>
    </message>
    <message>
        <source>this field takes {low} to {high}{unit}</source>
        <translation type="unfinished">tumatanggap ang field na ito ng {low} hanggang {high}{unit}</translation>
    </message>
    <message>
        <source>this is what limits: {what}</source>
        <translation type="unfinished">ito ang pumipigil: {what}</translation>
    </message>
    <message>
        <source>this product's share of the base wanted, over the base in a kilogram of it</source>
        <translation type="unfinished">bahagi ng produktong ito sa kailangang base, hinati sa base sa isang kilo nito</translation>
    </message>
    <message>
        <source>this way</source>
        <translation type="unfinished">paraang ito</translation>
    </message>
    <message>
        <source>three letters that stand for the crop in batch codes</source>
        <translation type="unfinished">tatlong letra para sa pananim sa mga code ng batch</translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished">masikip</translation>
    </message>
    <message>
        <source>time of day, as 07:30</source>
        <translation type="unfinished">oras ng araw, gaya ng 07:30</translation>
    </message>
    <message>
        <source>times</source>
        <translation type="unfinished">beses</translation>
    </message>
    <message>
        <source>times an hour</source>
        <translation type="unfinished">beses bawat oras</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation type="unfinished">bibilhin</translation>
    </message>
    <message>
        <source>to come</source>
        <translation type="unfinished">darating</translation>
    </message>
    <message>
        <source>to {mass} a week</source>
        <translation type="unfinished">hanggang {mass} bawat linggo</translation>
    </message>
    <message>
        <source>to {top} g a week</source>
        <translation type="unfinished">hanggang {top} g bawat linggo</translation>
    </message>
    <message>
        <source>to {top} g/m²/d</source>
        <translation type="unfinished">hanggang {top} g/m²/d</translation>
    </message>
    <message>
        <source>to {value} g/m²/day</source>
        <translation type="unfinished">hanggang {value} g/m²/araw</translation>
    </message>
    <message>
        <source>to {what}</source>
        <translation type="unfinished">{what}</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">ngayon</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished">palugit</translation>
    </message>
    <message>
        <source>too few places</source>
        <translation type="unfinished">kulang ang puwesto</translation>
    </message>
    <message>
        <source>too few readings for a trend</source>
        <translation type="unfinished">kulang ang suri para sa takbo</translation>
    </message>
    <message>
        <source>too few readings of alkalinity tell what acid there was.</source>
        <translation type="unfinished">kulang ang suri ng alkalinity para masabi kung anong asido ang mayroon.</translation>
    </message>
    <message>
        <source>too few readings of {what} tell where it goes.</source>
        <translation type="unfinished">kulang ang suri ng {what} para masabi kung saan ito patungo.</translation>
    </message>
    <message>
        <source>too little flows at that head</source>
        <translation type="unfinished">kulang ang daloy sa head na iyon</translation>
    </message>
    <message>
        <source>too little light</source>
        <translation type="unfinished">kulang sa liwanag</translation>
    </message>
    <message>
        <source>too little light reaches it</source>
        <translation type="unfinished">kulang ang liwanag na umaabot</translation>
    </message>
    <message>
        <source>too little oxygen is given</source>
        <translation type="unfinished">kulang ang oksihenong ibinibigay</translation>
    </message>
    <message>
        <source>too slow</source>
        <translation type="unfinished">masyadong mabagal</translation>
    </message>
    <message>
        <source>too slow for the season</source>
        <translation type="unfinished">masyadong mabagal sa panahon</translation>
    </message>
    <message>
        <source>top up share</source>
        <translation type="unfinished">bahagi ng dagdag na tubig</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">nagdagdag ng tubig</translation>
    </message>
    <message>
        <source>tray</source>
        <translation type="unfinished">tray</translation>
    </message>
    <message>
        <source>trays</source>
        <translation type="unfinished">mga tray</translation>
    </message>
    <message>
        <source>treated fish</source>
        <translation type="unfinished">ginamot na isda</translation>
    </message>
    <message>
        <source>treated on {on}, cleared: {cleared}; the harvest of {harvest} comes too early. Ask the veterinarian how long to wait</source>
        <translation type="unfinished">ginamot noong {on}, pinayagan: {cleared}; masyadong maaga ang ani sa {harvest}. Itanong sa beterinaryo kung gaano katagal maghihintay</translation>
    </message>
    <message>
        <source>treated with a medicine on {on}; no day is entered on which the fish are cleared</source>
        <translation type="unfinished">ginamot noong {on}; walang inilagay na araw kung kailan pinayagan na ang isda</translation>
    </message>
    <message>
        <source>trend of readings</source>
        <translation type="unfinished">takbo ng mga suri</translation>
    </message>
    <message>
        <source>trend only since the calibration of {day}</source>
        <translation type="unfinished">trend mula lamang sa calibration noong {day}</translation>
    </message>
    <message>
        <source>trend window days</source>
        <translation type="unfinished">mga araw ng takbo</translation>
    </message>
    <message>
        <source>un-ionised ammonia as nitrogen</source>
        <translation type="unfinished">un-ionised ammonia bilang nitrogen</translation>
    </message>
    <message>
        <source>under the rafts; what settles stays there when not said</source>
        <translation type="unfinished">sa ilalim ng raft; nananatili roon ang tumining kapag hindi sinabi</translation>
    </message>
    <message>
        <source>under which the entry is found, and corrected</source>
        <translation type="unfinished">kung saan makikita at maiwawasto ang entry</translation>
    </message>
    <message>
        <source>unevenness of the feed</source>
        <translation type="unfinished">hindi pagkapantay ng pakain</translation>
    </message>
    <message>
        <source>unit {unit} places {first} to {last}</source>
        <translation type="unfinished">yunit {unit}, lugar {first} hanggang {last}</translation>
    </message>
    <message>
        <source>unit?</source>
        <translation type="unfinished">yunit?</translation>
    </message>
    <message>
        <source>units</source>
        <translation type="unfinished">mga yunit</translation>
    </message>
    <message>
        <source>unknown: 1 price missing</source>
        <translation type="unfinished">hindi alam: 1 presyo ang kulang</translation>
    </message>
    <message>
        <source>unknown: {count} prices missing</source>
        <translation type="unfinished">hindi alam: {count} presyo ang kulang</translation>
    </message>
    <message>
        <source>unless base is given</source>
        <translation type="unfinished">kung walang ibibigay na base</translation>
    </message>
    <message>
        <source>unplaced</source>
        <translation type="unfinished">walang lugar</translation>
    </message>
    <message>
        <source>until {on}</source>
        <translation type="unfinished">hanggang {on}</translation>
    </message>
    <message>
        <source>used before</source>
        <translation type="unfinished">nagamit na dati</translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished">karaniwan</translation>
    </message>
    <message>
        <source>uvi raft</source>
        <translation type="unfinished">UVI, raft</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">halaga</translation>
    </message>
    <message>
        <source>value learned</source>
        <translation type="unfinished">halagang natutuhan</translation>
    </message>
    <message>
        <source>value of the catalogue</source>
        <translation type="unfinished">halaga ng katalogo</translation>
    </message>
    <message>
        <source>value of your own</source>
        <translation type="unfinished">sariling halaga</translation>
    </message>
    <message>
        <source>void share</source>
        <translation type="unfinished">bahaging puwang</translation>
    </message>
    <message>
        <source>volume</source>
        <translation type="unfinished">laman</translation>
    </message>
    <message>
        <source>waits</source>
        <translation type="unfinished">naghihintay</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation type="unfinished">hinihingi</translation>
    </message>
    <message>
        <source>wanted a week</source>
        <translation type="unfinished">kailangan bawat linggo</translation>
    </message>
    <message>
        <source>wanted beyond supply</source>
        <translation type="unfinished">kailangan na lampas sa supply</translation>
    </message>
    <message>
        <source>wanted by a day</source>
        <translation type="unfinished">kailangan sa isang araw</translation>
    </message>
    <message>
        <source>wanted by plants since then</source>
        <translation type="unfinished">kailangan ng halaman mula noon</translation>
    </message>
    <message>
        <source>wanted plants</source>
        <translation type="unfinished">halamang gusto</translation>
    </message>
    <message>
        <source>wanted {span}</source>
        <translation type="unfinished">kailangan {span}</translation>
    </message>
    <message>
        <source>warm water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C</source>
        <translation type="unfinished">mainit ang tubig: sa {water_c} °C, {growth_share} lang ang paglaki ng {about} kumpara sa {optimum_c} °C</translation>
    </message>
    <message>
        <source>warmth that counts</source>
        <translation type="unfinished">init na may bisa</translation>
    </message>
    <message>
        <source>waste {many}</source>
        <translation type="unfinished">tapon {many}</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">nasayang</translation>
    </message>
    <message>
        <source>wasted weight</source>
        <translation type="unfinished">timbang ng nasayang</translation>
    </message>
    <message>
        <source>watch</source>
        <translation type="unfinished">bantayan</translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished">tubig</translation>
    </message>
    <message>
        <source>water colder or warmer than the fish can do with</source>
        <translation type="unfinished">tubig na mas malamig o mas mainit kaysa sa kaya ng isda</translation>
    </message>
    <message>
        <source>water of the loop, times the usual share a day</source>
        <translation type="unfinished">tubig ng loop na minultiplika sa karaniwang bahagi bawat araw</translation>
    </message>
    <message>
        <source>water of {warmth}</source>
        <translation type="unfinished">tubig na {warmth}</translation>
    </message>
    <message>
        <source>water temperature</source>
        <translation type="unfinished">temperatura ng tubig</translation>
    </message>
    <message>
        <source>water topped up</source>
        <translation type="unfinished">idinagdag na tubig</translation>
    </message>
    <message>
        <source>week {week} will be 1 head short</source>
        <translation type="unfinished">kukulangin ng 1 piraso ang linggo {week}</translation>
    </message>
    <message>
        <source>week {week} will be 1 plant short</source>
        <translation type="unfinished">kukulangin ng 1 halaman ang linggo {week}</translation>
    </message>
    <message>
        <source>week {week} will be {many} heads short</source>
        <translation type="unfinished">kukulangin ng {many} piraso ang linggo {week}</translation>
    </message>
    <message>
        <source>week {week} will be {many} plants short</source>
        <translation type="unfinished">kukulangin ng {many} halaman ang linggo {week}</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation type="unfinished">linggo</translation>
    </message>
    <message>
        <source>weeks before</source>
        <translation type="unfinished">linggo bago nito</translation>
    </message>
    <message>
        <source>weeks between harvests of one</source>
        <translation type="unfinished">linggo sa pagitan ng ani ng isa</translation>
    </message>
    <message>
        <source>weeks between two groups</source>
        <translation type="unfinished">linggo sa pagitan ng dalawang grupo</translation>
    </message>
    <message>
        <source>weeks from the stocking of a group to its last harvest, over the groups</source>
        <translation type="unfinished">linggo mula sa paglalagay ng isang grupo hanggang sa huling ani nito, hinati sa mga grupo</translation>
    </message>
    <message>
        <source>weeks in a row</source>
        <translation type="unfinished">sunod-sunod na linggo</translation>
    </message>
    <message>
        <source>weeks inside the band</source>
        <translation type="unfinished">linggo sa loob ng saklaw</translation>
    </message>
    <message>
        <source>weeks near what is wanted</source>
        <translation type="unfinished">mga linggong malapit sa kailangan</translation>
    </message>
    <message>
        <source>weeks short</source>
        <translation type="unfinished">mga linggong kulang</translation>
    </message>
    <message>
        <source>weeks short {before} → {after}</source>
        <translation type="unfinished">linggong kulang {before} → {after}</translation>
    </message>
    <message>
        <source>weeks to grow</source>
        <translation type="unfinished">linggo ng paglaki</translation>
    </message>
    <message>
        <source>weeks until feed is back</source>
        <translation type="unfinished">linggo bago makabawi ang pakain</translation>
    </message>
    <message>
        <source>weighed ratios</source>
        <translation type="unfinished">mga tinimbang na ratio</translation>
    </message>
    <message>
        <source>weighing fish, beside what the plan says they weigh</source>
        <translation type="unfinished">pagtimbang ng isda, katabi ng sinasabi ng plano</translation>
    </message>
    <message>
        <source>weight</source>
        <translation type="unfinished">bigat</translation>
    </message>
    <message>
        <source>weight after</source>
        <translation type="unfinished">bigat pagkatapos</translation>
    </message>
    <message>
        <source>weight after the day</source>
        <translation type="unfinished">bigat pagkatapos ng araw</translation>
    </message>
    <message>
        <source>weight at harvest, {weight}</source>
        <translation type="unfinished">bigat sa ani, {weight}</translation>
    </message>
    <message>
        <source>weight of a fish</source>
        <translation type="unfinished">bigat ng isang isda</translation>
    </message>
    <message>
        <source>weight of a fish that the feed is for</source>
        <translation type="unfinished">bigat ng isdang para sa pakain</translation>
    </message>
    <message>
        <source>weight of a square metre, times the area</source>
        <translation type="unfinished">bigat ng isang metro kuwadrado na minultiplika sa lawak</translation>
    </message>
    <message>
        <source>weight of all the water</source>
        <translation type="unfinished">bigat ng lahat ng tubig</translation>
    </message>
    <message>
        <source>weight of one fish when it is stocked</source>
        <translation type="unfinished">bigat ng isang isda nang ilagay</translation>
    </message>
    <message>
        <source>weight of the water</source>
        <translation type="unfinished">bigat ng tubig</translation>
    </message>
    <message>
        <source>weight the day before</source>
        <translation type="unfinished">bigat noong nakaraang araw</translation>
    </message>
    <message>
        <source>weight then</source>
        <translation type="unfinished">bigat noon</translation>
    </message>
    <message>
        <source>weights</source>
        <translation type="unfinished">mga timbang</translation>
    </message>
    <message>
        <source>went in</source>
        <translation type="unfinished">pumasok</translation>
    </message>
    <message>
        <source>wet</source>
        <translation type="unfinished">basa</translation>
    </message>
    <message>
        <source>what a biofilm takes</source>
        <translation type="unfinished">kaya ng biofilm</translation>
    </message>
    <message>
        <source>what a day takes when half is gone after the half-life</source>
        <translation type="unfinished">nawawala sa isang araw kapag kalahati ang nawawala pagkatapos ng half-life</translation>
    </message>
    <message>
        <source>what a dose brings</source>
        <translation type="unfinished">dala ng isang dosis</translation>
    </message>
    <message>
        <source>what a plant gives, at the size it reaches</source>
        <translation type="unfinished">bigay ng isang halaman, sa laki na naaabot nito</translation>
    </message>
    <message>
        <source>what alkalinity and base given show from {first} to {last}</source>
        <translation type="unfinished">ayon sa alkalinity at base na ibinigay mula {first} hanggang {last}</translation>
    </message>
    <message>
        <source>what all targets are worth, less what is missed, too much and out of balance</source>
        <translation type="unfinished">halaga ng lahat ng target, bawas ang hindi naabot, labis at wala sa balanse</translation>
    </message>
    <message>
        <source>what an advised dose brings</source>
        <translation type="unfinished">dala ng ipinapayong dosis</translation>
    </message>
    <message>
        <source>what crops want beyond supply, less what bases and other salts bring</source>
        <translation type="unfinished">kailangan ng pananim na lampas sa supply, bawas ang dala ng mga base at ibang asin</translation>
    </message>
    <message>
        <source>what crops want in a mean week ahead, less what is supplied</source>
        <translation type="unfinished">kailangan ng pananim sa karaniwang darating na linggo, bawas ang naibibigay</translation>
    </message>
    <message>
        <source>what decides is the worst of its parts: a no, then what is unknown</source>
        <translation type="unfinished">ang pinakamasama sa mga bahagi ang nagpapasya: isang hindi, saka ang hindi alam</translation>
    </message>
    <message>
        <source>what fish take by their feed and nitrifiers by the ammonia, over the hours of a day</source>
        <translation type="unfinished">nagagamit ng isda ayon sa pakain at ng bakterya ayon sa ammonia, hinati sa oras ng isang araw</translation>
    </message>
    <message>
        <source>what is due day by day, with box, initials and time</source>
        <translation type="unfinished">ang takdang gawin araw-araw, may kahon, inisyal at oras</translation>
    </message>
    <message>
        <source>what is due to be picked, and what was picked, for whom</source>
        <translation type="unfinished">ang takdang anihin, at ang naani, para kanino</translation>
    </message>
    <message>
        <source>what is harvested, times the share that can be sold</source>
        <translation type="unfinished">inani na minultiplika sa bahaging maibebenta</translation>
    </message>
    <message>
        <source>what is left on an average day after plants took theirs, times the share that leaves, times days</source>
        <translation type="unfinished">ang natitira sa karaniwang araw matapos kumuha ang halaman, minultiplika sa bahaging umaalis, minultiplika sa mga araw</translation>
    </message>
    <message>
        <source>what is looked after every how many weeks, for the wall</source>
        <translation type="unfinished">ang inaalagaan tuwing ilang linggo, para sa dingding</translation>
    </message>
    <message>
        <source>what is missing over what a plant gives, in whole plants</source>
        <translation type="unfinished">ang kulang na hinati sa bigay ng isang halaman, sa buong halaman</translation>
    </message>
    <message>
        <source>what is sown and picked in each week of the year, by codes, for the wall (A3)</source>
        <translation type="unfinished">ang inihahasik at inaani sa bawat linggo ng taon, ayon sa code, para sa dingding (A3)</translation>
    </message>
    <message>
        <source>what is to spare over its fastest fall in the last weeks, in whole days</source>
        <translation type="unfinished">ang palugit na hinati sa pinakamabilis na bagsak sa huling mga linggo, sa buong araw</translation>
    </message>
    <message>
        <source>what is used, less what is left in stock</source>
        <translation type="unfinished">ang nagagamit, bawas ang natitira sa imbak</translation>
    </message>
    <message>
        <source>what it is after the change, less what it was before</source>
        <translation type="unfinished">kung ano pagkatapos ng pagbabago, bawas ang dati</translation>
    </message>
    <message>
        <source>what leaves and water show, what to note, what to do first</source>
        <translation type="unfinished">ang ipinapakita ng dahon at tubig, ano ang itatala, ano ang uunahin</translation>
    </message>
    <message>
        <source>what leaves with the water that make-up replaces, and what falls out of it</source>
        <translation type="unfinished">ang umaalis kasama ng tubig na pinapalitan, at ang namumuo</translation>
    </message>
    <message>
        <source>what lives in the bed, times what can be sold, times picks and weight of a plant</source>
        <translation type="unfinished">nabubuhay sa kama, minultiplika sa maibebenta, minultiplika sa mga pitas at bigat ng halaman</translation>
    </message>
    <message>
        <source>what lives in the bed, times what can be sold, times the picks that count</source>
        <translation type="unfinished">nabubuhay sa kama, minultiplika sa maibebenta, minultiplika sa mga pitas na bilang</translation>
    </message>
    <message>
        <source>what neither solids nor fish keep, times the share lost as gas over the share that dissolved where it was found, less what is not there to lose</source>
        <translation type="unfinished">hindi naiiwan sa solido o isda, minultiplika sa bahaging nawawala bilang gas na hinati sa bahaging natunaw kung saan ito nakita, bawas ang walang mawawala</translation>
    </message>
    <message>
        <source>what no plan can go beyond, proven from the prices of what is scarce</source>
        <translation type="unfinished">ang hindi malalampasan ng anumang plano, napatunayan sa presyo ng kapos</translation>
    </message>
    <message>
        <source>what one plant gives</source>
        <translation type="unfinished">bigay ng isang halaman</translation>
    </message>
    <message>
        <source>what packet or book says, taken for so many seeds, and what came up of those counted</source>
        <translation type="unfinished">ang sabi ng pakete o aklat, itinuring na ganito karaming binhi, at ang tumubo sa mga nabilang</translation>
    </message>
    <message>
        <source>what plants lack</source>
        <translation type="unfinished">kulang sa halaman</translation>
    </message>
    <message>
        <source>what some days take, over the days</source>
        <translation type="unfinished">ang nagagamit ng ilang araw na hinati sa mga araw</translation>
    </message>
    <message>
        <source>what the air pumps give is not entered</source>
        <translation type="unfinished">hindi nailagay ang bigay ng air pump</translation>
    </message>
    <message>
        <source>what the feed holds, less solids, fish and gas</source>
        <translation type="unfinished">laman ng pakain, bawas ang solido, isda at gas</translation>
    </message>
    <message>
        <source>what the feed holds, times the share that leaves as solids</source>
        <translation type="unfinished">laman ng pakain na minultiplika sa bahaging lumalabas bilang solido</translation>
    </message>
    <message>
        <source>what the plan may fall short of the most that any can be worth, as a share</source>
        <translation type="unfinished">ang maaaring kulang ng plano sa pinakamataas na halaga ng alinman, bilang bahagi</translation>
    </message>
    <message>
        <source>what the plants want, less what is not there to be taken</source>
        <translation type="unfinished">kailangan ng halaman, bawas ang walang makukuha</translation>
    </message>
    <message>
        <source>what the plants want, less what they can take</source>
        <translation type="unfinished">kailangan ng halaman, bawas ang makukuha nila</translation>
    </message>
    <message>
        <source>what the solids laid down so far give back day by day, slower as they get old</source>
        <translation type="unfinished">ang ibinabalik araw-araw ng mga naiwang latak, bumabagal habang tumatanda</translation>
    </message>
    <message>
        <source>what the water lacks of the target, times its volume, over the iron in the product</source>
        <translation type="unfinished">kulang ng tubig sa target na minultiplika sa dami nito, hinati sa iron ng produkto</translation>
    </message>
    <message>
        <source>what to do in a power cut; numbers, places, photos</source>
        <translation type="unfinished">ang gagawin kapag brownout; mga numero, lugar, larawan</translation>
    </message>
    <message>
        <source>what to sow week by week, for the nursery wall (A3) or the bench (A4)</source>
        <translation type="unfinished">ano ang ihahasik linggo-linggo, para sa dingding ng punlaan (A3) o mesa (A4)</translation>
    </message>
    <message>
        <source>what was built, the first twelve weeks, whom to call; for the owner</source>
        <translation type="unfinished">ano ang itinayo, ang unang labindalawang linggo, sino ang tatawagan; para sa may-ari</translation>
    </message>
    <message>
        <source>what was counted, less what is used before</source>
        <translation type="unfinished">ang nabilang, bawas ang nagagamit bago nito</translation>
    </message>
    <message>
        <source>what was gathered, times what rots free by then, less gas, as much as goes back</source>
        <translation type="unfinished">ang naipon na minultiplika sa napapalaya hanggang noon, bawas ang gas, ang ibinabalik</translation>
    </message>
    <message>
        <source>what was gathered, times what rots free by then, times the share lost as gas</source>
        <translation type="unfinished">ang naipon, minultiplika sa napapalaya hanggang noon, minultiplika sa bahaging nawawala bilang gas</translation>
    </message>
    <message>
        <source>what was read</source>
        <translation type="unfinished">kung ano ang binasa</translation>
    </message>
    <message>
        <source>what was seen, over what the book says</source>
        <translation type="unfinished">ang nakita na hinati sa sabi ng aklat</translation>
    </message>
    <message>
        <source>what was taken out, how it is kept, when and where it goes back</source>
        <translation type="unfinished">ano ang inilabas, paano itinatago, kailan at saan ibinabalik</translation>
    </message>
    <message>
        <source>what was there, and what was supplied since, less what plants took and what left</source>
        <translation type="unfinished">ang naroon at ang naibigay mula noon, bawas ang kinuha ng halaman at ang nawala</translation>
    </message>
    <message>
        <source>when it falls to {limit}, no base given{start}</source>
        <translation type="unfinished">kapag bumaba sa {limit}, walang ibinigay na base{start}</translation>
    </message>
    <message>
        <source>when it was noted, in UTC, as 2026-04-06T07:30Z</source>
        <translation type="unfinished">kailan itinala, sa UTC, gaya ng 2026-04-06T07:30Z</translation>
    </message>
    <message>
        <source>who did it or saw it</source>
        <translation type="unfinished">sino ang gumawa o nakakita</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">kabuuan</translation>
    </message>
    <message>
        <source>whole dry mass</source>
        <translation type="unfinished">buong tuyong bigat</translation>
    </message>
    <message>
        <source>whole pots, times the seeds in each</source>
        <translation type="unfinished">buong paso na minultiplika sa binhi ng bawat isa</translation>
    </message>
    <message>
        <source>whose feed-rate ratio tells what area the feed carries</source>
        <translation type="unfinished">kaninong feed-rate ratio ang nagsasabi ng lawak na kaya ng pakain</translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished">lapad</translation>
    </message>
    <message>
        <source>window days</source>
        <translation type="unfinished">araw ng palugit</translation>
    </message>
    <message>
        <source>with it {share}</source>
        <translation type="unfinished">kasama ito {share}</translation>
    </message>
    <message>
        <source>with it: {verdict}</source>
        <translation type="unfinished">kasama ito: {verdict}</translation>
    </message>
    <message>
        <source>with what stands already</source>
        <translation type="unfinished">kasama ang naroon na</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">binawi</translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished">pasok</translation>
    </message>
    <message>
        <source>within share</source>
        <translation type="unfinished">bahaging nasa loob</translation>
    </message>
    <message>
        <source>work of some weeks</source>
        <translation type="unfinished">gawain ng ilang linggo</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation type="unfinished">kinuwenta</translation>
    </message>
    <message>
        <source>worked out again from what the publication gives</source>
        <translation type="unfinished">muling kinuwenta mula sa ibinibigay ng publikasyon</translation>
    </message>
    <message>
        <source>worked out from these figures of the catalogue and what is entered for the farm</source>
        <translation type="unfinished">kinuwenta mula sa mga numerong ito ng katalogo at sa inilagay para sa farm</translation>
    </message>
    <message>
        <source>worked out from what the publication gives and from figures of the catalogue</source>
        <translation type="unfinished">kinuwenta mula sa ibinibigay ng publikasyon at mga bilang ng katalogo</translation>
    </message>
    <message>
        <source>worked out from what was read in the source</source>
        <translation type="unfinished">kinuwenta mula sa nabasa sa pinagmulan</translation>
    </message>
    <message>
        <source>working share</source>
        <translation type="unfinished">bahaging gumagana</translation>
    </message>
    <message>
        <source>worth</source>
        <translation type="unfinished">halaga ng plano</translation>
    </message>
    <message>
        <source>worth of all targets</source>
        <translation type="unfinished">halaga ng lahat ng target</translation>
    </message>
    <message>
        <source>worth of targets</source>
        <translation type="unfinished">halaga ng mga target</translation>
    </message>
    <message>
        <source>worth of the plan</source>
        <translation type="unfinished">halaga ng plano</translation>
    </message>
    <message>
        <source>worth of the rhythm by hand</source>
        <translation type="unfinished">halaga ng manu-manong ritmo</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation type="unfinished">mali</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">oo</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation type="unfinished">oo o hindi</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished">kahapon</translation>
    </message>
    <message>
        <source>yield</source>
        <translation type="unfinished">ani bawat halaman</translation>
    </message>
    <message>
        <source>yield by the book, for the picks and the room that these plants have</source>
        <translation type="unfinished">ani ayon sa aklat, para sa mga pitas at puwang ng mga halamang ito</translation>
    </message>
    <message>
        <source>yield cv</source>
        <translation type="unfinished">pag-iiba ng ani</translation>
    </message>
    <message>
        <source>yield of a plant</source>
        <translation type="unfinished">ani ng isang halaman</translation>
    </message>
    <message>
        <source>your own rule as calendars write it, such as FREQ=MONTHLY;BYDAY=1TH</source>
        <translation type="unfinished">sarili mong tuntunin gaya ng sulat ng kalendaryo, hal. FREQ=MONTHLY;BYDAY=1TH</translation>
    </message>
    <message>
        <source>your own value</source>
        <translation type="unfinished">sarili mong halaga</translation>
    </message>
    <message>
        <source>your own value, for this batch</source>
        <translation type="unfinished">sarili mong halaga, para sa batch na ito</translation>
    </message>
    <message>
        <source>your own value, laid over that of the catalogue</source>
        <translation type="unfinished">sariling halaga mo, ipinatong sa nasa katalogo</translation>
    </message>
    <message>
        <source>{about} off feed for {days} d of the week</source>
        <translation type="unfinished">hindi kumain ang {about} nang {days} araw sa linggo</translation>
    </message>
    <message>
        <source>{about}: the fish are young, {weight_g} g each against {harvest_weight_g} g at harvest</source>
        <translation type="unfinished">{about}: bata pa ang isda, {weight_g} g bawat isa kumpara sa {harvest_weight_g} g sa ani</translation>
    </message>
    <message>
        <source>{added} new sowings, {changed} changed, {removed} go, {same} stay as they are.</source>
        <translation type="unfinished">{added} bagong hasik, {changed} binago, {removed} inalis, {same} hindi nagbago.</translation>
    </message>
    <message>
        <source>{alone} of them are independent, {good} of these within; {plain} check a formula only; {own} lean on a figure from the very publication that judges them. Shown only: {memory} from memory, {assumed} resting on an assumption, {lacking} that the program cannot work out.</source>
        <translation type="unfinished">{alone} sa mga ito ang hiwalay, {good} dito ang pasok; {plain} ang sumusuri lamang ng pormula; {own} ang sumasandig sa bilang mula sa lathalaing humahatol sa kanila. Ipinapakita lamang: {memory} mula sa alaala, {assumed} na nakasalalay sa palagay, {lacking} na hindi makalkula ng programa.</translation>
    </message>
    <message>
        <source>{area} m²</source>
        <translation type="unfinished">{area} m²</translation>
    </message>
    <message>
        <source>{area} m² · {places} places</source>
        <translation type="unfinished">{area} m² · {places} puwesto</translation>
    </message>
    <message>
        <source>{area} m², {places} places</source>
        <translation type="unfinished">{area} m², {places} puwesto</translation>
    </message>
    <message>
        <source>{area} of {need} needed</source>
        <translation type="unfinished">{area} sa {need} na kailangan</translation>
    </message>
    <message>
        <source>{area}: {done} of {cases}…</source>
        <translation type="unfinished">{area}: {done} sa {cases}…</translation>
    </message>
    <message>
        <source>{band} · test again</source>
        <translation type="unfinished">{band} · suriing muli</translation>
    </message>
    <message>
        <source>{band} · {share}</source>
        <translation type="unfinished">{band} · {share}</translation>
    </message>
    <message>
        <source>{batch} cannot be picked for {needed} days: 0 to {free} days can be planned.</source>
        <translation type="unfinished">Hindi mapipitas ang {batch} nang {needed} araw: 0 hanggang {free} araw ang maipaplano.</translation>
    </message>
    <message>
        <source>{batch} cannot stand in {bed}.</source>
        <translation type="unfinished">Hindi puwede ang {batch} sa {bed}.</translation>
    </message>
    <message>
        <source>{batch} cannot stand in {bed}: that is no bed for this crop, or not for this stage.</source>
        <translation type="unfinished">Hindi puwede ang {batch} sa {bed}: hindi ito kama para sa pananim na ito, o hindi para sa yugtong ito.</translation>
    </message>
    <message>
        <source>{batch} is locked. Unlock it first, then move it.</source>
        <translation type="unfinished">Naka-lock ang {batch}. I-unlock muna, saka ilipat.</translation>
    </message>
    <message>
        <source>{batch} is of a crop that is cut once: it has no window of picking to stretch.</source>
        <translation type="unfinished">Isang beses lang pinuputol ang pananim ng {batch}: wala itong panahon ng pagpitas na mapahahaba.</translation>
    </message>
    <message>
        <source>{batch}: {short} places too few in {bed} ({needed} needed, {free} free), tightest on {day}.</source>
        <translation type="unfinished">{batch}: kulang ng {short} puwesto sa {bed} ({needed} kailangan, {free} bakante), pinakamasikip sa {day}.</translation>
    </message>
    <message>
        <source>{bed} gets {share} of the light under the roof</source>
        <translation type="unfinished">{share} ng liwanag sa ilalim ng bubong ang nakukuha ng {bed}</translation>
    </message>
    <message>
        <source>{bed} has no number {unit}.</source>
        <translation type="unfinished">Walang bilang {unit} ang {bed}.</translation>
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
        <translation type="unfinished">{came} sa {seeds} ang tumubo: {tests} subok, {batches} pangkat</translation>
    </message>
    <message>
        <source>{cases} published figures worked out again: {within} within tolerance, {outside} outside.</source>
        <translation type="unfinished">{cases} nalathalang bilang ang kinalkula muli: {within} ang pasok sa pinapayagang layo, {outside} ang labas.</translation>
    </message>
    <message>
        <source>{code} ({places} places, leaves {day})</source>
        <translation type="unfinished">{code} ({places} puwesto, aalis {day})</translation>
    </message>
    <message>
        <source>{code} has 1 plant and cannot be split.</source>
        <translation type="unfinished">1 lang ang halaman ng {code}, hindi mahahati.</translation>
    </message>
    <message>
        <source>{code} has no window of picking to stretch.</source>
        <translation type="unfinished">Walang panahon ng pagpitas ang {code} na mapahahaba.</translation>
    </message>
    <message>
        <source>{code} keeps {kept} plants; the new batch has {plants}, sown {day}.</source>
        <translation type="unfinished">{kept} halaman ang naiwan sa {code}; {plants} ang nasa bagong batch, hasik {day}.</translation>
    </message>
    <message>
        <source>{code} on {day}</source>
        <translation type="unfinished">{code} sa {day}</translation>
    </message>
    <message>
        <source>{code} · {days} d late</source>
        <translation type="unfinished">{code} · huli ng {days} d</translation>
    </message>
    <message>
        <source>{code}, {crop}: {along}, held until {until}. {then}</source>
        <translation type="unfinished">{code}, {crop}: {along}, hawak hanggang {until}. {then}</translation>
    </message>
    <message>
        <source>{code}: {start} – {end}</source>
        <translation type="unfinished">{code}: {start} – {end}</translation>
    </message>
    <message>
        <source>{count} are moved up to {days} days earlier, to keep to days of work.</source>
        <translation type="unfinished">{count} ang ililipat nang hanggang {days} araw na mas maaga, para tumapat sa araw ng trabaho.</translation>
    </message>
    <message>
        <source>{count} are sown up to {days} days earlier, to keep to days of work.</source>
        <translation type="unfinished">{count} ang ihahasik nang hanggang {days} araw na mas maaga, para tumapat sa araw ng trabaho.</translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation type="unfinished">{count} batch</translation>
    </message>
    <message>
        <source>{count} batches have to wait.</source>
        <translation type="unfinished">{count} batch ang kailangang maghintay.</translation>
    </message>
    <message>
        <source>{count} batches: harvest {span} days {way}</source>
        <translation type="unfinished">{count} batch: ani {span} araw {way}</translation>
    </message>
    <message>
        <source>{count} entries were logged. One undo takes all of them back.</source>
        <translation type="unfinished">{count} tala ang naisulat. Isang pag-undo ang babawi sa lahat.</translation>
    </message>
    <message>
        <source>{count} fish</source>
        <translation type="unfinished">{count} isda</translation>
    </message>
    <message>
        <source>{count} fish of {weight} g</source>
        <translation type="unfinished">{count} isda na {weight} g</translation>
    </message>
    <message>
        <source>{count} found, the best first</source>
        <translation type="unfinished">{count} ang nakita, pinakamalapit muna</translation>
    </message>
    <message>
        <source>{count} holes in rafts</source>
        <translation type="unfinished">{count} butas sa lutang</translation>
    </message>
    <message>
        <source>{count} nursery cells</source>
        <translation type="unfinished">{count} selda sa punlaan</translation>
    </message>
    <message>
        <source>{count} own</source>
        <translation type="unfinished">{count} sarili</translation>
    </message>
    <message>
        <source>{count} pages were sent to the printer.</source>
        <translation type="unfinished">{count} pahina ang naipadala sa printer.</translation>
    </message>
    <message>
        <source>{count} pages were written to {name}.</source>
        <translation type="unfinished">{count} pahina ang naisulat sa {name}.</translation>
    </message>
    <message>
        <source>{count} places</source>
        <translation type="unfinished">{count} puwesto</translation>
    </message>
    <message>
        <source>{count} places in gravel</source>
        <translation type="unfinished">{count} puwesto sa graba</translation>
    </message>
    <message>
        <source>{count} readings</source>
        <translation type="unfinished">{count} suri</translation>
    </message>
    <message>
        <source>{count} rows are on the clipboard as CSV.</source>
        <translation type="unfinished">{count} hanay ang nasa clipboard bilang CSV.</translation>
    </message>
    <message>
        <source>{count} rows saved in {file}</source>
        <translation type="unfinished">{count} hanay ang na-save sa {file}</translation>
    </message>
    <message>
        <source>{count} scenarios are kept already. Adopt or drop one of them under What if.</source>
        <translation type="unfinished">{count} scenario na ang nakatabi. Tanggapin o bitawan ang isa sa Paano kung.</translation>
    </message>
    <message>
        <source>{count} scenarios are kept already: adopt or drop one first.</source>
        <translation type="unfinished">{count} scenario na ang nakatabi: tanggapin o bitawan muna ang isa.</translation>
    </message>
    <message>
        <source>{count} seeds</source>
        <translation type="unfinished">{count} binhi</translation>
    </message>
    <message>
        <source>{count} shown</source>
        <translation type="unfinished">{count} ang nakikita</translation>
    </message>
    <message>
        <source>{count} sowings of {plants} plants in all lack room</source>
        <translation type="unfinished">{count} hasik na may {plants} halaman lahat ang walang lugar</translation>
    </message>
    <message>
        <source>{count} sowings, {seeds} seeds for {plants} plants</source>
        <translation type="unfinished">{count} hasik, {seeds} binhi para sa {plants} halaman</translation>
    </message>
    <message>
        <source>{count} still to be given places</source>
        <translation type="unfinished">{count} ang wala pang puwesto</translation>
    </message>
    <message>
        <source>{count} things</source>
        <translation type="unfinished">{count} bagay</translation>
    </message>
    <message>
        <source>{count} things differ</source>
        <translation type="unfinished">{count} bagay ang iba</translation>
    </message>
    <message>
        <source>{count} things to note</source>
        <translation type="unfinished">{count} bagay na dapat pansinin</translation>
    </message>
    <message>
        <source>{count} things to repair, from today on</source>
        <translation type="unfinished">{count} bagay na aayusin, mula ngayon</translation>
    </message>
    <message>
        <source>{count} {event}</source>
        <translation type="unfinished">{count} {event}</translation>
    </message>
    <message>
        <source>{crop} is grown in {suited} beds; {bed} is a {kind} bed</source>
        <translation type="unfinished">sa kamang {suited} itinatanim ang {crop}; kamang {kind} ang {bed}</translation>
    </message>
    <message>
        <source>{crop} would not be ready in time in {kind} when sown in {weeks} of the weeks; it is not sown then.</source>
        <translation type="unfinished">Hindi aabot ang {crop} sa {kind} kung ihahasik sa {weeks} ng mga linggo; hindi ito ihahasik noon.</translation>
    </message>
    <message>
        <source>{crop}, {amount} {unit} a week</source>
        <translation type="unfinished">{crop}, {amount} {unit} bawat linggo</translation>
    </message>
    <message>
        <source>{crop}: not carried by the feed within the plan.</source>
        <translation type="unfinished">{crop}: hindi kaya ng pakain sa loob ng plano.</translation>
    </message>
    <message>
        <source>{crop}: of {wanted} plants for {week}, {sown} have room and are sown.</source>
        <translation type="unfinished">{crop}: sa {wanted} halaman para sa {week}, {sown} ang may lugar at ihahasik.</translation>
    </message>
    <message>
        <source>{crop}: there is no bed of a kind it grows in.</source>
        <translation type="unfinished">{crop}: walang kama ng uring tinutubuan nito.</translation>
    </message>
    <message>
        <source>{crop}: to its bed from {day}.</source>
        <translation type="unfinished">{crop}: sa kama mula {day}.</translation>
    </message>
    <message>
        <source>{crop}: what is wanted in {week} is ready {days} days before that week.</source>
        <translation type="unfinished">{crop}: ang hinihingi sa {week} ay handa {days} araw bago ang linggong iyon.</translation>
    </message>
    <message>
        <source>{crop}: {amount} by {on}</source>
        <translation type="unfinished">{crop}: {amount} bago ang {on}</translation>
    </message>
    <message>
        <source>{crop}: {amount} every week from {begins}</source>
        <translation type="unfinished">{crop}: {amount} linggo-linggo mula {begins}</translation>
    </message>
    <message>
        <source>{crop}: {amount} every {day} from {begins}</source>
        <translation type="unfinished">{crop}: {amount} tuwing {day} mula {begins}</translation>
    </message>
    <message>
        <source>{crop}: {amount} wanted in {week} cannot be sown in time any more.</source>
        <translation type="unfinished">{crop}: hindi na aabot ang hasik para sa {amount} na hinihingi sa {week}.</translation>
    </message>
    <message>
        <source>{crop}: {amount} wanted in {week} finds no sowing day that suits.</source>
        <translation type="unfinished">{crop}: walang bagay na araw ng hasik para sa {amount} na hinihingi sa {week}.</translation>
    </message>
    <message>
        <source>{crop}: {share} of {weeks} weeks lie within {even} of what is wanted.</source>
        <translation type="unfinished">{crop}: {share} ng {weeks} linggo ay nasa loob ng {even} ng hinihingi.</translation>
    </message>
    <message>
        <source>{crop}: {what} on {rule}, {begins} to {ends}</source>
        <translation type="unfinished">{crop}: {what} sa {rule}, {begins} hanggang {ends}</translation>
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
        <translation type="unfinished">{days} araw</translation>
    </message>
    <message>
        <source>{days} days ago</source>
        <translation type="unfinished">{days} araw ang nakaraan</translation>
    </message>
    <message>
        <source>{days} days earlier, to fall on a day of work</source>
        <translation type="unfinished">{days} araw na mas maaga, para tumapat sa araw ng trabaho</translation>
    </message>
    <message>
        <source>{days} so far</source>
        <translation type="unfinished">{days} hanggang ngayon</translation>
    </message>
    <message>
        <source>{density} ■ over</source>
        <translation type="unfinished">{density} ■ lampas</translation>
    </message>
    <message>
        <source>{direction}, {change} a week</source>
        <translation type="unfinished">{direction}, {change} bawat linggo</translation>
    </message>
    <message>
        <source>{draws} draws from seed {seed}: the same seed gives the same draws</source>
        <translation type="unfinished">{draws} bunot mula sa panimulang bilang {seed}: pareho ang mga bunot sa parehong bilang</translation>
    </message>
    <message>
        <source>{element} in {loop}</source>
        <translation type="unfinished">{element} sa {loop}</translation>
    </message>
    <message>
        <source>{faults} faults: nothing comes in until they are mended.</source>
        <translation type="unfinished">{faults} mali: walang papasok hanggang maayos.</translation>
    </message>
    <message>
        <source>{feed} g feed a day</source>
        <translation type="unfinished">{feed} g pakain bawat araw</translation>
    </message>
    <message>
        <source>{field}: {before} → {after}</source>
        <translation type="unfinished">{field}: {before} → {after}</translation>
    </message>
    <message>
        <source>{figure}, your value:</source>
        <translation type="unfinished">{figure}, halaga mo:</translation>
    </message>
    <message>
        <source>{first} and others</source>
        <translation type="unfinished">{first} at iba pa</translation>
    </message>
    <message>
        <source>{fish} fish</source>
        <translation type="unfinished">{fish} isda</translation>
    </message>
    <message>
        <source>{fish} fish are harvested on {on}</source>
        <translation type="unfinished">{fish} isda ang aanihin sa {on}</translation>
    </message>
    <message>
        <source>{fish} fish harvested on {on}: feed falls {fall_share} {span}</source>
        <translation type="unfinished">{fish} isdang inani noong {on}: bumababa ang pakain nang {fall_share} {span}</translation>
    </message>
    <message>
        <source>{fish} fish of {about} harvested on {on}: the feed has not got over it yet</source>
        <translation type="unfinished">{fish} isda ng {about} ang inani noong {on}: hindi pa nakakabawi ang pakain</translation>
    </message>
    <message>
        <source>{fish}, on {day}</source>
        <translation type="unfinished">{fish}, sa {day}</translation>
    </message>
    <message>
        <source>{grams} g</source>
        <translation type="unfinished">{grams} g</translation>
    </message>
    <message>
        <source>{grams} g a day</source>
        <translation type="unfinished">{grams} g/araw</translation>
    </message>
    <message>
        <source>{grams} g are of days before the plan, taken to be like its first week</source>
        <translation type="unfinished">{grams} g ay mula sa mga araw bago ang plano, itinuring na gaya ng unang linggo nito</translation>
    </message>
    <message>
        <source>{grams} g each</source>
        <translation type="unfinished">{grams} g bawat isa</translation>
    </message>
    <message>
        <source>{grams} g of {name}</source>
        <translation type="unfinished">{grams} g ng {name}</translation>
    </message>
    <message>
        <source>{grams} g {name}</source>
        <translation type="unfinished">{grams} g {name}</translation>
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
        <translation type="unfinished">{groups} grupo</translation>
    </message>
    <message>
        <source>{groups}, {share}: the feed falls by {fall} at most, for {weeks}; it varies by {uneven} and lies in the band for {inside} of the weeks.</source>
        <translation type="unfinished">{groups}, {share}: hanggang {fall} ang bagsak ng pakain, sa loob ng {weeks}; nag-iiba ng {uneven} at nasa saklaw sa {inside} ng mga linggo.</translation>
    </message>
    <message>
        <source>{groups}, {share}: the tanks have no room for it.</source>
        <translation type="unfinished">{groups}, {share}: walang lugar sa mga tangke.</translation>
    </message>
    <message>
        <source>{group}, {day}</source>
        <translation type="unfinished">{group}, {day}</translation>
    </message>
    <message>
        <source>{held} of {all} places</source>
        <translation type="unfinished">{held} sa {all} puwesto</translation>
    </message>
    <message>
        <source>{kg} kg</source>
        <translation type="unfinished">{kg} kg</translation>
    </message>
    <message>
        <source>{kg} kg less of crops over the plan</source>
        <translation type="unfinished">{kg} kg na bawas sa ani ng pananim sa buong plano</translation>
    </message>
    <message>
        <source>{kg} kg more of crops over the plan</source>
        <translation type="unfinished">{kg} kg na dagdag sa ani ng pananim sa buong plano</translation>
    </message>
    <message>
        <source>{kind} · {places} places · {area} m²</source>
        <translation type="unfinished">{kind} · {places} puwesto · {area} m²</translation>
    </message>
    <message>
        <source>{kind}; at most {cap} at once</source>
        <translation type="unfinished">{kind}; hanggang {cap} sa isang bigay</translation>
    </message>
    <message>
        <source>{known} are on the farm already and are passed over.</source>
        <translation type="unfinished">{known} ang nasa farm na at nilaktawan.</translation>
    </message>
    <message>
        <source>{label} from {low} to {high}</source>
        <translation type="unfinished">{label} mula {low} hanggang {high}</translation>
    </message>
    <message>
        <source>{label} has {value}; at most {limit}.</source>
        <translation type="unfinished">Ang {label} ay may {value}; hanggang {limit} lang.</translation>
    </message>
    <message>
        <source>{label} is empty; it must be given.</source>
        <translation type="unfinished">Walang laman ang {label}; kailangan ito.</translation>
    </message>
    <message>
        <source>{label} is {value}; it must be {limit}.</source>
        <translation type="unfinished">Ang {label} ay {value}; dapat ay {limit}.</translation>
    </message>
    <message>
        <source>{label} is {value}; it must lie within {limit}.</source>
        <translation type="unfinished">Ang {label} ay {value}; dapat nasa loob ng {limit}.</translation>
    </message>
    <message>
        <source>{label} is “{typed}”; it must be a number.</source>
        <translation type="unfinished">Ang {label} ay “{typed}”; dapat numero.</translation>
    </message>
    <message>
        <source>{label} “{value}” is taken; give another one.</source>
        <translation type="unfinished">May gumagamit na ng {label} “{value}”; magbigay ng iba.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no date; write it as {example}, or a week as W02 2027.</source>
        <translation type="unfinished">{label}: hindi petsa ang “{value}”; isulat gaya ng {example}, o linggo gaya ng W02 2027.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no number; give {limit}.</source>
        <translation type="unfinished">{label}: hindi numero ang “{value}”; magbigay ng {limit}.</translation>
    </message>
    <message>
        <source>{label}: “{value}” is no whole number; give {limit}.</source>
        <translation type="unfinished">{label}: hindi buong numero ang “{value}”; magbigay ng {limit}.</translation>
    </message>
    <message>
        <source>{last}; every {days} d, to {target}</source>
        <translation type="unfinished">{last}; tuwing {days} d, hanggang {target}</translation>
    </message>
    <message>
        <source>{least} to {most}</source>
        <translation type="unfinished">{least} hanggang {most}</translation>
    </message>
    <message>
        <source>{length} m</source>
        <translation type="unfinished">{length} m</translation>
    </message>
    <message>
        <source>{likely} ({low} to {high})</source>
        <translation type="unfinished">{likely} ({low} hanggang {high})</translation>
    </message>
    <message>
        <source>{likely} ({low}–{high})</source>
        <translation type="unfinished">{likely} ({low}–{high})</translation>
    </message>
    <message>
        <source>{likely} g each, {low} to {high} g by slow or quick growth</source>
        <translation type="unfinished">{likely} g bawat isa, {low} hanggang {high} g kung mabagal o mabilis ang laki</translation>
    </message>
    <message>
        <source>{limits}; the range the program takes</source>
        <translation type="unfinished">{limits}; saklaw na tinatanggap ng programa</translation>
    </message>
    <message>
        <source>{loop}: area by {rule}</source>
        <translation type="unfinished">{loop}: lawak ayon sa {rule}</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation type="unfinished">{low} hanggang {high}</translation>
    </message>
    <message>
        <source>{low} to {high} eq must be reckoned with; the balance of nitrogen gives {balance} eq</source>
        <translation type="unfinished">dapat paghandaan ang {low} hanggang {high} eq; {balance} eq ayon sa balanse ng nitrogen</translation>
    </message>
    <message>
        <source>{low} to {high} m²</source>
        <translation type="unfinished">{low} hanggang {high} m²</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation type="unfinished">{low} hanggang {high} {unit}</translation>
    </message>
    <message>
        <source>{many} batches</source>
        <translation type="unfinished">{many} batch</translation>
    </message>
    <message>
        <source>{many} batches chosen</source>
        <translation type="unfinished">{many} batch ang napili</translation>
    </message>
    <message>
        <source>{many} batches have other dates; furthest {code}, {days}</source>
        <translation type="unfinished">{many} batch ang may ibang petsa; pinakamalayo ang {code}, {days}</translation>
    </message>
    <message>
        <source>{many} days</source>
        <translation type="unfinished">{many} araw</translation>
    </message>
    <message>
        <source>{many} dead are entered, more than were left</source>
        <translation type="unfinished">{many} patay ang inilagay, higit sa natitira</translation>
    </message>
    <message>
        <source>{many} earlier</source>
        <translation type="unfinished">maaga ng {many}</translation>
    </message>
    <message>
        <source>{many} figures are moved together, for they go together</source>
        <translation type="unfinished">{many} bilang ang sabay na ginalaw, dahil magkakasama sila</translation>
    </message>
    <message>
        <source>{many} figures with a range were moved one at a time, as if none hung on another</source>
        <translation type="unfinished">{many} bilang na may saklaw ang ginalaw isa-isa, na parang walang nakasalalay sa iba</translation>
    </message>
    <message>
        <source>{many} fish</source>
        <translation type="unfinished">{many} isda</translation>
    </message>
    <message>
        <source>{many} g</source>
        <translation type="unfinished">{many} g</translation>
    </message>
    <message>
        <source>{many} g a day</source>
        <translation type="unfinished">{many} g/araw</translation>
    </message>
    <message>
        <source>{many} heads of a batch of {plants}?</source>
        <translation type="unfinished">{many} ulo mula sa pangkat na {plants}?</translation>
    </message>
    <message>
        <source>{many} later</source>
        <translation type="unfinished">huli ng {many}</translation>
    </message>
    <message>
        <source>{many} longer</source>
        <translation type="unfinished">{many} pa</translation>
    </message>
    <message>
        <source>{many} numbers</source>
        <translation type="unfinished">{many} bilang</translation>
    </message>
    <message>
        <source>{many} of {seeds} seeds</source>
        <translation type="unfinished">{many} sa {seeds} binhi</translation>
    </message>
    <message>
        <source>{many} places are held by two batches at once</source>
        <translation type="unfinished">{many} lugar ang sabay na hawak ng dalawang batch</translation>
    </message>
    <message>
        <source>{many} plants</source>
        <translation type="unfinished">{many} halaman</translation>
    </message>
    <message>
        <source>{many} seeds</source>
        <translation type="unfinished">{many} binhi</translation>
    </message>
    <message>
        <source>{many} shorter</source>
        <translation type="unfinished">mas maikli nang {many}</translation>
    </message>
    <message>
        <source>{many} smaller parts are summed as others</source>
        <translation type="unfinished">{many} maliliit na bahagi ang pinagsama bilang iba pa</translation>
    </message>
    <message>
        <source>{many} tasks are late. {first}</source>
        <translation type="unfinished">{many} gawain ang huli. {first}</translation>
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
        <translation type="unfinished">{named} at {rest} pa</translation>
    </message>
    <message>
        <source>{name} could not be brought in: {why}</source>
        <translation type="unfinished">Hindi maipasok ang {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be read: {why}</source>
        <translation type="unfinished">Hindi nabasa ang {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be written: {why}</source>
        <translation type="unfinished">Hindi naisulat ang {name}: {why}</translation>
    </message>
    <message>
        <source>{name} could not be written: {why} Choose another folder.</source>
        <translation type="unfinished">Hindi maisulat ang {name}: {why} Pumili ng ibang folder.</translation>
    </message>
    <message>
        <source>{name} foreseen, {day}</source>
        <translation type="unfinished">inaasahang {name}, {day}</translation>
    </message>
    <message>
        <source>{name} grows too slowly in this season to be ready in time: the plan gives it up when it is {share} % of its size.</source>
        <translation type="unfinished">Masyadong mabagal ang {name} ngayong panahon para umabot: binibitawan ito ng plano kapag {share} % na ng laki nito.</translation>
    </message>
    <message>
        <source>{name} has fewer places than plants.</source>
        <translation type="unfinished">Mas kaunti ang puwesto ng {name} kaysa halaman.</translation>
    </message>
    <message>
        <source>{name} has no places yet.</source>
        <translation type="unfinished">Wala pang puwesto ang {name}.</translation>
    </message>
    <message>
        <source>{name} is not picked on that day.</source>
        <translation type="unfinished">hindi inaani ang {name} sa araw na iyon.</translation>
    </message>
    <message>
        <source>{name} is the plan now. Undo brings the old one back.</source>
        <translation type="unfinished">{name} na ang plano. Ibabalik ng Undo ang dati.</translation>
    </message>
    <message>
        <source>{name} over the plan: {sign}{percent} %</source>
        <translation type="unfinished">{name} sa buong plano: {sign}{percent} %</translation>
    </message>
    <message>
        <source>{name} stands in a bed that does not suit it.</source>
        <translation type="unfinished">Nasa kamang hindi bagay ang {name}.</translation>
    </message>
    <message>
        <source>{name} {value} on {day} is far out of its band.</source>
        <translation type="unfinished">Malayo sa saklaw ang {name} {value} noong {day}.</translation>
    </message>
    <message>
        <source>{name} {value} on {day} stands alone. Is it right?</source>
        <translation type="unfinished">Nag-iisa ang {name} {value} noong {day}. Tama ba ito?</translation>
    </message>
    <message>
        <source>{name}, a kg</source>
        <translation type="unfinished">{name}, bawat kg</translation>
    </message>
    <message>
        <source>{name}, pellets of {size} mm</source>
        <translation type="unfinished">{name}, pellet na {size} mm</translation>
    </message>
    <message>
        <source>{name}: less is supplied than the crops take up.</source>
        <translation type="unfinished">{name}: mas kaunti ang supply kaysa kinukuha ng pananim.</translation>
    </message>
    <message>
        <source>{name}: more fish in the tank than the limit for its size.</source>
        <translation type="unfinished">{name}: mas marami ang isda sa tangke kaysa limit para sa laki nito.</translation>
    </message>
    <message>
        <source>{name}: more is fed than these fish can eat; what they leave fouls the water.</source>
        <translation type="unfinished">{name}: higit ang ipinapakain kaysa kayang kainin ng mga isdang ito; dinudumihan ng tira ang tubig.</translation>
    </message>
    <message>
        <source>{name}: no reading yet</source>
        <translation type="unfinished">{name}: wala pang suri</translation>
    </message>
    <message>
        <source>{name}: no warmth of the water is entered for its loop; growth is worked out at {assumed} °C, the best for this fish.</source>
        <translation type="unfinished">{name}: walang init ng tubig na nailagay para sa loop; kinuwenta ang paglaki sa {assumed} °C, pinakabagay sa isdang ito.</translation>
    </message>
    <message>
        <source>{name}: pellet {size} mm</source>
        <translation type="unfinished">{name}: pellet na {size} mm</translation>
    </message>
    <message>
        <source>{name}: take a closer look.</source>
        <translation type="unfinished">{name}: tingnang mabuti.</translation>
    </message>
    <message>
        <source>{name}: the feed falls, and the plants' food with it.</source>
        <translation type="unfinished">{name}: babagsak ang pakain, kasama ang pagkain ng halaman.</translation>
    </message>
    <message>
        <source>{name}: the water comes close to what the fish cannot live in.</source>
        <translation type="unfinished">{name}: malapit na ang tubig sa hindi kayang mabuhay ng isda.</translation>
    </message>
    <message>
        <source>{name}: the water is too cold or too warm for these fish to feed and grow; what is given all the same fouls it.</source>
        <translation type="unfinished">{name}: masyadong malamig o mainit ang tubig para kumain at lumaki ang isda; dudumi lang ang tubig kung magpapakain pa rin.</translation>
    </message>
    <message>
        <source>{name}: this harvest is barred: the fish were treated with a medicine and are not cleared by then.</source>
        <translation type="unfinished">{name}: bawal ang aning ito: ginamot ang isda at hindi pa puwedeng kainin sa araw na iyon.</translation>
    </message>
    <message>
        <source>{name}: treated with a medicine and not cleared yet: no fish of it may be harvested for eating. Log the day on which they are cleared.</source>
        <translation type="unfinished">{name}: ginamot at hindi pa puwedeng kainin: walang isda nito ang maaaring anihin para kainin. Itala ang araw na puwede na.</translation>
    </message>
    <message>
        <source>{name}: {count} readings from {low} to {high}, the last {value} on {day}</source>
        <translation type="unfinished">{name}: {count} suri mula {low} hanggang {high}, ang huli {value} noong {day}</translation>
    </message>
    <message>
        <source>{name}: {events} entries, {new} new, {changed} changed, {gone} cancelled.</source>
        <translation type="unfinished">{name}: {events} tala, {new} bago, {changed} binago, {gone} kinansela.</translation>
    </message>
    <message>
        <source>{name}…</source>
        <translation type="unfinished">{name}…</translation>
    </message>
    <message>
        <source>{need} of filter surface are needed</source>
        <translation type="unfinished">{need} ibabaw ng filter ang kailangan</translation>
    </message>
    <message>
        <source>{new} new, {replaced} replaced.</source>
        <translation type="unfinished">{new} bago, {replaced} pinalitan.</translation>
    </message>
    <message>
        <source>{now} now,
{then} in {weeks} weeks</source>
        <translation type="unfinished">{now} ngayon,
{then} sa {weeks} linggo</translation>
    </message>
    <message>
        <source>{now} ▲ better {other}</source>
        <translation type="unfinished">{now} ▲ mas mabuti {other}</translation>
    </message>
    <message>
        <source>{now} ▲ none suits</source>
        <translation type="unfinished">{now} ▲ walang bagay</translation>
    </message>
    <message>
        <source>{number} days earlier</source>
        <translation type="unfinished">maaga ng {number} araw</translation>
    </message>
    <message>
        <source>{number} days later</source>
        <translation type="unfinished">huli ng {number} araw</translation>
    </message>
    <message>
        <source>{n} chosen batches</source>
        <translation type="unfinished">{n} piniling batch</translation>
    </message>
    <message>
        <source>{n} pages on {paper}</source>
        <translation type="unfinished">{n} pahina sa {paper}</translation>
    </message>
    <message>
        <source>{peak} of {limit}</source>
        <translation type="unfinished">{peak} sa {limit}</translation>
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
        <translation type="unfinished">mga lugar sa {phase}, hawak hanggang isang araw bago {until}</translation>
    </message>
    <message>
        <source>{plants} plants</source>
        <translation type="unfinished">{plants} halaman</translation>
    </message>
    <message>
        <source>{plants} plants × {allowance} ÷ {germination} that come up = {needed} seeds</source>
        <translation type="unfinished">{plants} halaman × {allowance} ÷ {germination} sumisibol = {needed} binhi</translation>
    </message>
    <message>
        <source>{plants} plants × {living} live × {grams} g × {sold} can be sold</source>
        <translation type="unfinished">{plants} halaman × {living} buhay × {grams} g × {sold} naibebenta</translation>
    </message>
    <message>
        <source>{plants} plants ÷ {germination} that come up ÷ {survival} that live = {needed} seeds</source>
        <translation type="unfinished">{plants} halaman ÷ {germination} sumisibol ÷ {survival} nabubuhay = {needed} binhi</translation>
    </message>
    <message>
        <source>{plants} plants, {day}</source>
        <translation type="unfinished">{plants} halaman, {day}</translation>
    </message>
    <message>
        <source>{plants} ÷ ({germination} germinate × {stand} of them at this warmth × {survival} live), rounded up</source>
        <translation type="unfinished">{plants} ÷ ({germination} tumutubo × {stand} sa init na ito × {survival} nabubuhay), pataas ang round</translation>
    </message>
    <message>
        <source>{plants} ÷ ({germination} germinate × {survival} live), rounded up</source>
        <translation type="unfinished">{plants} ÷ ({germination} tumutubo × {survival} nabubuhay), pataas ang round</translation>
    </message>
    <message>
        <source>{quantity}, {days} d</source>
        <translation type="unfinished">{quantity}, {days} d</translation>
    </message>
    <message>
        <source>{quick} at the earliest</source>
        <translation type="unfinished">{quick} pinakamaaga</translation>
    </message>
    <message>
        <source>{reason}: {stages} stages, {days} d</source>
        <translation type="unfinished">{reason}: {stages} yugto, {days} araw</translation>
    </message>
    <message>
        <source>{rest} more batches moved less far.</source>
        <translation type="unfinished">{rest} pang batch ang nalipat nang mas malapit.</translation>
    </message>
    <message>
        <source>{rows} rows read, {count} would come in.</source>
        <translation type="unfinished">{rows} hanay ang nabasa, {count} ang papasok.</translation>
    </message>
    <message>
        <source>{row} of {bed}</source>
        <translation type="unfinished">{row} ng {bed}</translation>
    </message>
    <message>
        <source>{scenario}: hold back {codes}, for weeks become short there.</source>
        <translation type="unfinished">{scenario}: pigilin ang {codes}, dahil may mga linggong kukulangin doon.</translation>
    </message>
    <message>
        <source>{seeds} seeds of {crop}</source>
        <translation type="unfinished">{seeds} binhi ng {crop}</translation>
    </message>
    <message>
        <source>{share} at a time</source>
        <translation type="unfinished">tig-{share}</translation>
    </message>
    <message>
        <source>{share} come up</source>
        <translation type="unfinished">{share} ang sumisibol</translation>
    </message>
    <message>
        <source>{share} of {element}, {week}</source>
        <translation type="unfinished">{share} ng {element}, {week}</translation>
    </message>
    <message>
        <source>{shown} of {count} batches</source>
        <translation type="unfinished">{shown} sa {count} batch</translation>
    </message>
    <message>
        <source>{sign} Yes, but: {said}</source>
        <translation type="unfinished">{sign} Oo, pero: {said}</translation>
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
        <translation type="unfinished">{sow}, {crop}, {code}: {seeds} binhi para sa {plants} halaman, unang ani {pick}, {where}</translation>
    </message>
    <message>
        <source>{spoken}; Enter goes into it</source>
        <translation type="unfinished">{spoken}; Enter para pasukin</translation>
    </message>
    <message>
        <source>{stage}, day {day} of {days}</source>
        <translation type="unfinished">{stage}, araw {day} sa {days}</translation>
    </message>
    <message>
        <source>{subject}, {outside} outside</source>
        <translation type="unfinished">{subject}, {outside} ang labas</translation>
    </message>
    <message>
        <source>{supply} g supplied, {demand} g wanted</source>
        <translation type="unfinished">{supply} g supply, {demand} g kailangan</translation>
    </message>
    <message>
        <source>{tank}, {fish}; filter; biofilter; {beds}</source>
        <translation type="unfinished">{tank}, {fish}; pansala; biofilter; {beds}</translation>
    </message>
    <message>
        <source>{tests} tests and {batches} batches of the lot were counted, {n} seeds in all</source>
        <translation type="unfinished">{tests} pagsubok at {batches} batch ng lote ang binilang, {n} binhi sa kabuuan</translation>
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
        <translation type="unfinished">{title} – na-save</translation>
    </message>
    <message>
        <source>{title}: nothing to show</source>
        <translation type="unfinished">{title}: walang maipakita</translation>
    </message>
    <message>
        <source>{trouble} Looking for it again every moment.</source>
        <translation type="unfinished">{trouble} Hinahanap itong muli bawat sandali.</translation>
    </message>
    <message>
        <source>{units} × {rows} rows of {columns}</source>
        <translation type="unfinished">{units} × {rows} hanay na may {columns}</translation>
    </message>
    <message>
        <source>{unit} a week</source>
        <translation type="unfinished">{unit} bawat linggo</translation>
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
        <translation type="unfinished">{value} · pinakakapos</translation>
    </message>
    <message>
        <source>{weeks} weeks</source>
        <translation type="unfinished">{weeks} linggo</translation>
    </message>
    <message>
        <source>{week}. {element}: {supply} g supplied, {demand} g wanted, {share} %, {band}; stock {stock} mg/L.</source>
        <translation type="unfinished">{week}. {element}: {supply} g ang supply, {demand} g ang kailangan, {share} %, {band}; stock {stock} mg/L.</translation>
    </message>
    <message>
        <source>{week}: 1 head short</source>
        <translation type="unfinished">{week}: kulang ng 1 piraso</translation>
    </message>
    <message>
        <source>{week}: 1 plant short</source>
        <translation type="unfinished">{week}: kulang ng 1 halaman</translation>
    </message>
    <message>
        <source>{week}: {many} heads short</source>
        <translation type="unfinished">{week}: kulang ng {many} piraso</translation>
    </message>
    <message>
        <source>{week}: {many} plants short</source>
        <translation type="unfinished">{week}: kulang ng {many} halaman</translation>
    </message>
    <message>
        <source>{what} a week</source>
        <translation type="unfinished">{what} bawat linggo</translation>
    </message>
    <message>
        <source>{what} days</source>
        <translation type="unfinished">mga araw ng {what}</translation>
    </message>
    <message>
        <source>{what} end of the band</source>
        <translation type="unfinished">{what} na dulo ng saklaw</translation>
    </message>
    <message>
        <source>{what} later than by the book</source>
        <translation type="unfinished">{what}: mas huli kaysa sa aklat</translation>
    </message>
    <message>
        <source>{what}, where it goes</source>
        <translation type="unfinished">{what}, kung saan pupunta</translation>
    </message>
    <message>
        <source>{what}: “{given}” is no price; give a number from 0 to 1000000.</source>
        <translation type="unfinished">{what}: hindi presyo ang “{given}”; magbigay ng numero mula 0 hanggang 1000000.</translation>
    </message>
    <message>
        <source>{what}s of a batch</source>
        <translation type="unfinished">{what}, ng isang batch</translation>
    </message>
    <message>
        <source>{what}s of some weeks</source>
        <translation type="unfinished">{what}, sa ilang linggo</translation>
    </message>
    <message>
        <source>{where}, place {first}</source>
        <translation type="unfinished">{where}, puwesto {first}</translation>
    </message>
    <message>
        <source>{where}, places {first}–{last}</source>
        <translation type="unfinished">{where}, puwesto {first}–{last}</translation>
    </message>
    <message>
        <source>{why} The sample farm is shown instead.</source>
        <translation type="unfinished">{why} Ang sample na farm ang ipinapakita.</translation>
    </message>
    <message>
        <source>{words}</source>
        <translation type="unfinished">{words}</translation>
    </message>
    <message>
        <source>{words} Room would come from {freed}.</source>
        <translation type="unfinished">{words} Magkakalugar mula sa {freed}.</translation>
    </message>
    <message>
        <source>{words} What decides: {matter}.</source>
        <translation type="unfinished">{words} Ang nagpapasya: {matter}.</translation>
    </message>
    <message>
        <source>{words} to {ends}</source>
        <translation type="unfinished">{words} hanggang {ends}</translation>
    </message>
    <message>
        <source>{words}, and {moved} runs of places.</source>
        <translation type="unfinished">{words}, at {moved} grupo ng puwesto.</translation>
    </message>
    <message>
        <source>{words}, locked</source>
        <translation type="unfinished">{words}, naka-lock</translation>
    </message>
    <message>
        <source>{words}, {days} d off</source>
        <translation type="unfinished">{words}, {days} d ang layo</translation>
    </message>
    <message>
        <source>{words}; in {pots} pots: {seeds} seeds, trays of {cells}: {trays}, cells left empty: {spare}</source>
        <translation type="unfinished">{words}; sa {pots} pot: {seeds} binhi, tray na may {cells}: {trays}, seldang walang laman: {spare}</translation>
    </message>
    <message>
        <source>{zone}: {latitude}°, {longitude}° at {city}; mend the latitude if you live far from there</source>
        <translation type="unfinished">{zone}: {latitude}°, {longitude}° sa {city}; itama ang latitude kung malayo ka roon</translation>
    </message>
    <message>
        <source>± spread</source>
        <translation type="unfinished">± lawak</translation>
    </message>
    <message>
        <source>Σ days: what lies × limit × rate, each day's by its age</source>
        <translation type="unfinished">Σ mga araw: nakalatag × limit × bilis, bawat araw ayon sa edad nito</translation>
    </message>
    <message>
        <source>– (letter of the band no demand)</source>
        <translation type="unfinished">–</translation>
    </message>
    <message>
        <source>“Uneven” is the coefficient of variation of the feed: its spread as a share of its mean. “In band” is the share of weeks in which the beds can use what is fed.</source>
        <translation type="unfinished">Ang “Di-pantay” ay ang coefficient of variation ng pakain: ang lawak nito bilang bahagi ng karaniwan. Ang “Nasa banda” ay ang bahagi ng mga linggong magagamit ng mga kama ang ipinapakain.</translation>
    </message>
    <message>
        <source>“Within 0.8 % of the best possible” is proven: a bound is worked out that no plan can pass, and the gap to it is told. The search may be stopped at any time; the best so far is kept.</source>
        <translation type="unfinished">Napatunayan ang “Sa loob ng 0.8 % ng pinakamahusay”: kinukuwenta ang hangganang hindi malalampasan ng anumang plano, at sinasabi ang agwat dito. Maaaring itigil ang paghahanap kahit kailan; itinatabi ang pinakamahusay na nakuha.</translation>
    </message>
    <message>
        <source>“{value}” is neither yes nor no; write y or n.</source>
        <translation type="unfinished">Ang “{value}” ay hindi oo o hindi; isulat ang y o n.</translation>
    </message>
    <message>
        <source>“{value}” is no number.</source>
        <translation type="unfinished">Ang “{value}” ay hindi bilang.</translation>
    </message>
    <message>
        <source>“{value}” is no time of day; write it as 07:30 or 730.</source>
        <translation type="unfinished">Ang “{value}” ay hindi oras; isulat bilang 07:30 o 730.</translation>
    </message>
    <message>
        <source>“{word}” is no point; write head and flow as 1.5:2400.</source>
        <translation type="unfinished">Hindi punto ang “{word}”; isulat ang head at daloy gaya ng 1.5:2400.</translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation type="unfinished">‹ Bumalik</translation>
    </message>
    <message>
        <source>▶ you are here</source>
        <translation type="unfinished">▶ narito ka</translation>
    </message>
    <message>
        <source>★ {groups}</source>
        <translation type="unfinished">★ {groups}</translation>
    </message>
    <message>
        <source>⚠ All seven days are ticked; leave at least one for work.</source>
        <translation type="unfinished">⚠ May tsek ang lahat ng pitong araw; mag-iwan ng kahit isang araw ng trabaho.</translation>
    </message>
    <message>
        <source>⚠ It could not be worked out: {why}</source>
        <translation type="unfinished">⚠ Hindi makuwenta: {why}</translation>
    </message>
    <message>
        <source>⚠ {name}: {why} Choose another name.</source>
        <translation type="unfinished">⚠ {name}: {why} Pumili ng ibang pangalan.</translation>
    </message>
    <message>
        <source>⚠ {parts}: see below.</source>
        <translation type="unfinished">⚠ {parts}: tingnan sa ibaba.</translation>
    </message>
    <message>
        <source>⚠ {why} Choose another folder.</source>
        <translation type="unfinished">⚠ {why} Pumili ng ibang folder.</translation>
    </message>
    <message>
        <source>⚠ {why} See that the printer is on and has paper, or save as PDF.</source>
        <translation type="unfinished">⚠ {why} Tiyaking bukas at may papel ang printer, o i-save bilang PDF.</translation>
    </message>
    <message>
        <source>⚠ {why}.</source>
        <translation type="unfinished">⚠ {why}.</translation>
    </message>
</context>
</TS>
