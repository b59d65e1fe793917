import type { Catalogue } from '../../text.ts';

export const run: Catalogue = {
  'Loud voice': 'Voce forte',
  'For a crowd: harsher, and as loud as it can be.': 'Per la folla: più aspra, e forte quanto può.',
  'A run was cut off': 'Una corsa si è interrotta',
  'Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.':
    'Il suo ultimo segno è di {time} fa. Il registro è al sicuro su questo dispositivo e l’orologio è andato avanti.',
  'Go on with it': 'Continuala',
  'It is over': 'È finita',
  'In a pocket or on an arm': 'In tasca o al braccio',
  'A guard swallows touches and rain. One finger that rests opens it.':
    'Una protezione inghiotte tocchi e pioggia. La apre un dito che resta fermo.',
  "Use the headset's buttons": 'Usa i pulsanti degli auricolari',
  'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.':
    'Una pressione segna un cartello, due chiedono, tre zittiscono; con un pacer nel piano, tre dicono che sei alla pari. La tua musica si ferma per questo.',
  'Guarded: hold to open': 'Protetta: tieni premuto per aprire',
  'No position yet': 'Ancora nessuna posizione',
  'Stand in the open. The first may take half a minute.':
    'Mettiti all’aperto. La prima può richiedere mezzo minuto.',
  'Position comes': 'La posizione arriva',
  'Position to {distance} m, as the receiver says': 'Posizione entro {distance} m, secondo il ricevitore',
  'Position only to {distance} m': 'Posizione solo entro {distance} m',
  'It settles within a minute in the open.': 'All’aperto si assesta entro un minuto.',
  'Last position {s} s ago': 'Ultima posizione {s} s fa',
  'No position for {s} s': 'Nessuna posizione da {s} s',
  'Your clock and plan go on.': 'Il tuo orologio e il tuo piano continuano.',
  'Position refused': 'Posizione rifiutata',
  'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.':
    'Permettila per questa pagina nelle impostazioni del browser e riaccendi. Senza, va solo l’orologio.',
  'This browser has no position': 'Questo browser non ha posizione',
  'Only the clock runs.': 'Va solo l’orologio.',
  'Screen stays on': 'Lo schermo resta acceso',
  'Screen kept on by a silent video': 'Schermo tenuto acceso da un video muto',
  'Screen may go dark': 'Lo schermo può spegnersi',
  'Set its time-out in the phone to the longest. Dark means no position.':
    'Imposta al massimo il tempo di spegnimento dello schermo. Spento vuol dire senza posizione.',
  'Sound on': 'Suono attivo',
  'Voice is being loaded': 'Si carica la voce',
  'Sound asleep': 'Audio sospeso',
  'Touch the screen once.': 'Tocca lo schermo una volta.',
  'No sound': 'Nessun suono',
  'The voice could not be loaded. Open the page again.':
    'La voce non si è potuta caricare. Riapri la pagina.',
  Instruments: 'Strumenti',
  'Level with the pacer': 'Alla pari con il pacer',
  'Quiet for 10 min': 'Silenzio per 10 min',
  'Speak again ({min} min)': 'Parla di nuovo ({min} min)',
  '{name}: {distance} {unit} in {time}.': '{name}: {distance} {unit} in {time}.',
  'Change the plan': 'Cambia il piano',
  'Check this phone': 'Verifica questo telefono',
  'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.':
    'Il browser chiederà se questa pagina può sapere dove sei. Soundline ne ha bisogno per dire a che punto del percorso sei. Resta su questo dispositivo.',
  'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.':
    'Un browser non dà posizione a una pagina bloccata o fuori vista. Perciò lo schermo resta acceso, nero, per tutta la corsa: abbassa la luminosità e non premere il tasto di accensione.',
  'Put your earphones in now. You will hear each call over your own music.':
    'Metti ora gli auricolari. Sentirai ogni avviso sopra la tua musica.',
  Safety: 'Sicurezza',
  'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.':
    'Traffico, addetti e il tuo corpo vengono prima. Alcune gare e strade non permettono auricolari: decidono le loro regole e la legge. Dolore al petto o senso di svenimento: fermati e chiedi aiuto.',
  'This run is in another window of this device. Go on there, or close that window and switch on here.':
    'Questa corsa è in un’altra finestra di questo dispositivo. Continua lì, o chiudi quella finestra e accendi qui.',
  'Practise the day at home': 'Prova la giornata a casa',
  'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.':
    'Nella prova a casa un podista simulato corre il tuo piano in tempo reale proprio su queste schermate; nient’altro è simulato.',
  'A simulated runner waits for your start.': 'Un podista simulato aspetta il tuo via.',
  Gun: 'Sparo',
  'Gun heard': 'Sparo sentito',
  'press when it fires': 'premi quando spara',
  'press on the line': 'premi sulla linea',
  'Or leave your hands alone and run: the start is found when you begin to run.':
    'O lascia stare le mani e corri: la partenza si trova quando cominci a correre.',
  'Try the sound': 'Prova il suono',
  'No position: by the clock': 'Nessuna posizione: si va a tempo',
  'Position ±{distance} m': 'Posizione ±{distance} m',
  'Poor position ±{distance} m': 'Posizione scarsa ±{distance} m',
  'No position': 'Nessuna posizione',
  'screen may go dark': 'lo schermo può spegnersi',
  'no sound: touch': 'nessun suono: tocca',
  'not recorded': 'non registrato',
  Running: 'In corsa',
  'Press at a board. Hold to ask where you stand.':
    'Premi a un cartello. Tieni premuto per chiedere come stai andando.',
  '{figure} s ahead': '{figure} s avanti',
  '{figure} s behind': '{figure} s indietro',
  Finished: 'Arrivato',
  Stopped: 'Fermato',
  'by the gun': 'dallo sparo',
  'against plan': 'rispetto al piano',
  'Save the log': 'Salva il registro',
  'This was a practice at home: its log goes when you are done.':
    'Era una prova a casa: il registro se ne va quando hai finito.',
  'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.':
    'Il registro contiene ogni posizione e ogni pressione di questa corsa. Resta su questo dispositivo, in Corse fatte, finché non lo togli; salvalo per averlo anche altrove.',
  'What was called': 'Che cosa si è detto',
  '{n} of them could not be sounded.': {
    one: 'Uno di essi non ha potuto suonare.',
    other: '{n} di essi non hanno potuto suonare.',
  },
  'Hold again: end the run': 'Tieni premuto ancora: fine della corsa',
  Little: 'Poco',
  'As usual': 'Come al solito',
  Everything: 'Tutto',
  'Your checkpoints, your own food, and what asks you to act.':
    'I tuoi punti di controllo, il tuo cibo e ciò che ti chiede di agire.',
  'Also boards, stations and the signal, where there is time for them.':
    'Anche cartelli, ristori e il segnale, dove c’è tempo.',
  'Also every board in a short race, and when you have time in hand near the end.':
    'Anche ogni cartello in una gara breve, e quando hai margine verso la fine.',
  'How much is said': 'Quanto si dice',
  'No reading': 'Nessuna lettura',
  'On plan': 'In linea',
  '{thing} in {distance} {unit}': '{thing} a {distance} {unit}',
  'push||near the finish': 'spinta',
  'On the way a press anywhere marks a board, and a hold asks where you stand.':
    'In corsa, una pressione ovunque segna un cartello; tenendo premuto chiedi come stai andando.',
  'Look at this run': 'Guarda questa corsa',
};
