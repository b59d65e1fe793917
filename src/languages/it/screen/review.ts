import type { Catalogue } from '../../text.ts';

export const review: Catalogue = {
  'From||call': 'Da',
  'To||call': 'A',
  'Rate between calls': 'Velocità tra gli avvisi',
  'It believed {ahead} s.': 'Credeva {ahead} s.',
  'It believed {ahead} s, give or take {off} s.': 'Credeva {ahead} s, più o meno {off} s.',
  'Nothing was called.': 'Non si è detto niente.',
  Calls: 'Avvisi',
  'why did it say that?': 'perché l’ha detto?',
  'Why: {why}.': 'Perché: {why}.',
  'Hear this call': 'Ascolta questo avviso',
  'seconds ahead (+) or behind (−)': 'secondi avanti (+) o indietro (−)',
  'a call sounded': 'è suonato un avviso',
  'Splits against plan, as a table': 'Parziali e piano, come tabella',
  split: 'parziale',
  planned: 'previsto',
  'ahead or behind, s': 'avanti o indietro, s',
  'run||as it was run': 'corso',
  'Pace, per {unit} (quicker is higher)': 'Passo, per {unit} (più veloce è più in alto)',
  'beats a minute': 'battiti al minuto',
  'Heart rate': 'Battito',
  metres: 'metri',
  Height: 'Quota',
  'Projected finish at each checkpoint': 'Arrivo previsto a ogni punto di controllo',
  projected: 'previsto',
  'give or take': 'più o meno',
  'it was||finish time in the end': 'fu',
  'as planned||pace of the opening': 'come previsto',
  'too quick||pace of the opening': 'troppo veloce',
  'slow||pace of the opening': 'lenta',
  'Opening to {distance} {unit}': 'Apertura fino a {distance} {unit}',
  '{run} run, {planned} planned per {unit}: {verdict}':
    '{run} corso, {planned} previsto per {unit}: {verdict}',
  'Second half against the first': 'Seconda metà rispetto alla prima',
  '{percent} % slower, hills and changes of target taken out':
    '{percent} % più lenta, tolte salite e cambi di passo previsti',
  '{percent} % quicker, hills and changes of target taken out':
    '{percent} % più veloce, tolte salite e cambi di passo previsti',
  Stations: 'Ristori',
  Signal: 'Segnale',
  'good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out':
    'buono per il {percent} % della corsa; il vuoto più lungo {gap} s; {fixes} posizioni, {unused} scartate',
  'free||no target': 'libero',
  'asked||pace': 'chiesto',
  minutes: 'minuti',
  'Pace and heart rate at each minute, as a table': 'Passo e battito a ogni minuto, come tabella',
  '{n} words about pace': { one: 'un avviso sul passo', other: '{n} avvisi sul passo' },
  'Not done to the end; {words}.': 'Non finito; {words}.',
  'Done in {time}; {words}.': 'Fatto in {time}; {words}.',
  'leg||of a session': 'tratto',
  'heart||rate': 'battito',
  'waiting||for a position': 'in attesa',
  'good||reception': 'buona',
  'poor||reception': 'cattiva',
  'lost||reception': 'persa',
  'Reception along the way': 'Ricezione lungo la strada',
  'Reception along the way, as a table': 'Ricezione lungo la strada, come tabella',
  'from {unit}': 'da {unit}',
  'to {unit}': 'a {unit}',
  reception: 'ricezione',
  'GPX track': 'Traccia GPX',
  'CSV table': 'Tabella CSV',
  'GeoJSON map': 'Mappa GeoJSON',
  'Run with its log': 'Corsa con il suo registro',
  'All runs': 'Tutte le corse',
  'Imported run': 'Corsa importata',
  'In short': 'In breve',
  'Save this run': 'Salva questa corsa',
  'Files stay on this device until you send them somewhere.':
    'I file restano su questo dispositivo finché non li mandi da qualche parte.',
  'Pace from board to board, as a table': 'Passo da cartello a cartello, come tabella',
  'planned||pace': 'previsto',
  'Heart rate from board to board, as a table': 'Battito da cartello a cartello, come tabella',
  'Height at each board, as a table': 'Quota a ogni cartello, come tabella',
  'This browser keeps no runs here.': 'Questo browser non tiene corse qui.',
  '{n} runs added.': { one: 'Una corsa aggiunta.', other: '{n} corse aggiunte.' },
  '{runs} {left}': '{runs} {left}',
  '{n} points or lines were left out.': {
    one: 'Un punto o una riga sono rimasti fuori.',
    other: '{n} punti o righe sono rimasti fuori.',
  },
  '{n} runs restored.': { one: 'Una corsa ripristinata.', other: '{n} corse ripristinate.' },
  '{runs} The file was cut short. Open the page anew to see your settings.':
    '{runs} Il file era tagliato. Riapri la pagina per vedere le tue impostazioni.',
  '{runs} Open the page anew to see your settings.':
    '{runs} Riapri la pagina per vedere le tue impostazioni.',
  'This run cannot be read by this version.': 'Questa versione non può leggere questa corsa.',
  'The run is deleted.': 'La corsa è eliminata.',
  '{distance} {unit}': '{distance} {unit}',
  'The run ended at {place}; the goal of {time} was not reached.':
    'La corsa è finita a {place}; l’obiettivo di {time} non è stato raggiunto.',
  'Finished in {time}: on plan to the second or two.':
    'Arrivo in {time}: in linea col piano, a meno di uno o due secondi.',
  'Finished in {time}, {off} ahead of the plan.': 'Arrivo in {time}, {off} avanti al piano.',
  'Finished in {time}, {off} behind the plan.': 'Arrivo in {time}, {off} indietro sul piano.',
  'The run took {time}. It came without a plan, so it is held against an even one.':
    'La corsa è durata {time}. È arrivata senza piano, perciò si confronta con una regolare.',
  'The opening is not in the log.': 'L’apertura non è nel registro.',
  'The first {distance} went as planned: a good opening.':
    'I primi {distance} sono andati come previsto: una buona apertura.',
  'The first {distance} went {off} s/km quicker than planned: too quick an opening.':
    'I primi {distance} sono andati {off} s/km più veloci del previsto: un’apertura troppo veloce.',
  'The first {distance} went {off} s/km slower than planned.':
    'I primi {distance} sono andati {off} s/km più lenti del previsto.',
  'There is too little of the run to say where time was won and lost.':
    'C’è troppo poca corsa per dire dove si è guadagnato e perso tempo.',
  'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).':
    'Il più si è perso da {from} a {to} ({lost}), il più si è guadagnato da {wonFrom} a {wonTo} ({won}).',
  'Most was lost from {from} to {to} ({lost}).': 'Il più si è perso da {from} a {to} ({lost}).',
  'Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.':
    'Il più si è guadagnato da {wonFrom} a {wonTo} ({won}); nessuna parte ha perso tempo.',
  'No part won or lost time.': 'Nessuna parte ha guadagnato o perso tempo.',
  'The halves cannot be compared.': 'Le metà non si possono confrontare.',
  'The two halves were even.': 'Le due metà sono state uguali.',
  'The second half was {percent} % slower than the first, hills and changes of target taken out.':
    'La seconda metà è stata del {percent} % più lenta della prima, tolte salite e cambi di passo previsti.',
  'The second half was {percent} % quicker than the first, hills and changes of target taken out.':
    'La seconda metà è stata del {percent} % più veloce della prima, tolte salite e cambi di passo previsti.',
  '{n} stations cost {time}.': {
    one: 'Un ristoro è costato {time}.',
    other: '{n} ristori sono costati {time}.',
  },
  '{halves} {cost}': '{halves} {cost}',
  'Next time: find out first why it ended; with pain or illness, ask a doctor.':
    'La prossima volta: scopri prima perché è finita; con dolore o malattia chiedi a un medico.',
  'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.':
    'La prossima volta: trattieni l’apertura; ciò che ha guadagnato si è pagato nella seconda metà. Provala tre volte.',
  'Next time: a goal a little slower, or longer threshold and long runs before it.':
    'La prossima volta: un obiettivo un po’ più lento, o più soglia e lunghi prima.',
  'Next time: practise drinking on the move; the stations cost more than the pace did.':
    'La prossima volta: prova a bere correndo; i ristori sono costati più del passo.',
  'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.':
    'La prossima volta: contieni l’apertura. Stavolta non si è visto che costasse; è la prima cosa che costa.',
  'Next time: a goal a little quicker is realistic, on a day and a course like this one.':
    'La prossima volta: un obiettivo un po’ più veloce è realistico, in un giorno e su un percorso come questi.',
  'Next time: hold the plan against this result before setting the goal.':
    'La prossima volta: confronta il piano con questo risultato prima di fissare l’obiettivo.',
  'Next time: the same again.': 'La prossima volta: lo stesso di nuovo.',
  'Ahead or behind, over the distance': 'Vantaggio o ritardo, lungo la distanza',
  '19 times in 20 within': '19 volte su 20 qui dentro',
  'It came without a plan, so it is held against its own even pace; the calls are what would have been said.':
    'È arrivata senza piano, perciò si confronta con il suo stesso passo costante; gli avvisi sono ciò che si sarebbe detto.',
};
