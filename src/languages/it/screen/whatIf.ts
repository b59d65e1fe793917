import type { Catalogue } from '../../text.ts';

export const whatIf: Catalogue = {
  'Four in five finishes; the stroke is the middle one':
    'Quattro arrivi su cinque; il tratto è quello di mezzo',
  'Finishes from {quick} to {slow}, middle {middle}': 'Arrivi da {quick} a {slow}, in mezzo {middle}',
  'The finishes as a table': 'Gli arrivi come tabella',
  'what||of the finishes': 'che cosa',
  'one in ten is quicker than': 'uno su dieci è più veloce di',
  'one in ten is slower than': 'uno su dieci è più lento di',
  'Your plan run a thousand times by runners with your results. Not what will happen: what could.':
    'Il tuo piano corso mille volte da corridori con i tuoi risultati. Non che cosa succederà: che cosa potrebbe.',
  'What it rests on': 'Su che cosa si basa',
  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.':
    'Preso dai tuoi risultati: circa {time} su questo percorso a sforzo costante, più o meno {percent} %.',
  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.':
    'Senza un tuo risultato si prende l’obiettivo stesso come ciò che sai fare, quindi la probabilità è per natura vicina alla metà. Metti un risultato in Obiettivo.',
  'From the gun to your line': 'Dallo sparo alla tua linea',
  'What it does not know': 'Che cosa non sa',
  'What came out': 'Che cosa è venuto fuori',
  'A thousand runs are under way …': 'Mille corse in corso …',
  'Goal {goal}, no opening.': 'Obiettivo {goal}, senza apertura.',
  'Goal {goal}, no opening, push from {from}.': 'Obiettivo {goal}, senza apertura, spinta da {from}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}.':
    'Obiettivo {goal}, apertura {quicker} s al km più veloce per {distance}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.':
    'Obiettivo {goal}, apertura {quicker} s al km più veloce per {distance}, spinta da {from}.',
  'Another opening': 'Un’altra apertura',
  'Goal made': 'Obiettivo raggiunto',
  'Middle finish': 'Arrivo di mezzo',
  'Against even, s': 'Contro costante, s',
  '± is one standard error from the thousand runs, not the doubt of the model, which is larger.':
    '± è un errore standard delle mille corse, non il dubbio del modello, che è maggiore.',
  'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.':
    'Corrono come i più: il passo oscilla del {wander} % su un chilometro, un ristoro con acqua costa {station} s.',
  'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.':
    {
      one: 'Mosso da una tua corsa: il passo oscilla del {wander} % su un chilometro, un ristoro con acqua costa {station} s, e gambe che danno tutto rallentano del {fade} % dalla prima metà alla seconda, dove i più rallentano del {usual} %.',
      other:
        'Mosso da {n} tue corse: il passo oscilla del {wander} % su un chilometro, un ristoro con acqua costa {station} s, e gambe che danno tutto rallentano del {fade} % dalla prima metà alla seconda, dove i più rallentano del {usual} %.',
    },
  'The simulation could not be run on this browser.': 'La simulazione non è potuta andare su questo browser.',
  'Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best':
    'Abbiss e Laursen 2008: da due minuti in su un passo costante tende a servire meglio',
  'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all':
    'Nikolaidis et al. 2019, 7258 mezzi maratoneti: ogni tratto più lento del precedente, circa il 4 % in tutto',
  'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even':
    'Hanley 2015, mondiali di mezza maratona: i più partono veloci e rallentano dopo 5 km; i migliori sono più regolari',
  'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability':
    'Smyth 2018, 1,7 milioni di maratone: a partenze veloci vanno insieme arrivi più lenti. Osservato, non provato: chi parte veloce è diverso anche per capacità',
  "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions":
    'Che la stanchezza si somma lungo la curva di Riegel, quanto tardi un corridore se ne accorge, l’oscillazione e i secondi ai ristori sono ipotesi nostre',
  'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.':
    'Un modello, non una previsione. Prende il tuo risultato per dato, e tutti in esso corrono secondo il piano finché le gambe dicono no.',
  'It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.':
    'Non conosce caldo, vento, folla, crampi o stomaco, né chi si ritira.',
  'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.':
    'Nessuno studio ha provato un’apertura veloce nella mezza maratona. Prendi per nulle differenze di pochi secondi.',
  'Every run of this plan made the goal. Four in five finish between {quick} and {slow}.':
    'Ogni corsa di questo piano ha raggiunto l’obiettivo. Quattro su cinque arrivano tra {quick} e {slow}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.':
    'Probabilità dell’obiettivo: {odds}. Quattro su cinque arrivano tra {quick} e {slow}. Dove si manca, si perde per lo più verso {place}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.':
    'Probabilità dell’obiettivo: {odds}. Quattro su cinque arrivano tra {quick} e {slow}. Dove si manca, si perde per lo più tra {from} e {to}.',
  '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.':
    '{quicker} s al km più veloce per {distance}: non guadagna né costa niente di rilievo.',
  '{quicker} s per km quicker for {distance}: wins about {n} s on average.':
    '{quicker} s al km più veloce per {distance}: guadagna in media circa {n} s.',
  '{quicker} s per km quicker for {distance}: costs about {n} s on average.':
    '{quicker} s al km più veloce per {distance}: costa in media circa {n} s.',
  'Quicker by, s per km': 'Più veloce di, s per km',
};
