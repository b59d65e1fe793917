import type { Catalogue } from '../../text.ts';

export const ready: Catalogue = {
  Position: 'Posizione',
  Screen: 'Schermo',
  Sound: 'Suono',
  'Earphone delay': 'Ritardo degli auricolari',
  Buttons: 'Pulsanti',
  Vibration: 'Vibrazione',
  Steps: 'Passi',
  Battery: 'Batteria',
  Log: 'Registro',
  Offline: 'Senza rete',
  'Refused.': 'Rifiutata.',
  'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.':
    'Permettila per questa pagina nel browser e nelle impostazioni di sistema. Senza, i punti si dicono con l’orologio del piano.',
  'This browser has none.': 'Questo browser non ne ha.',
  'Use another browser.': 'Usa un altro browser.',
  'Nothing yet.': 'Ancora niente.',
  'Go into the open. The first may take half a minute.':
    'Vai all’aperto. La prima può richiedere mezzo minuto.',
  'It comes, and does not say how exact.': 'Arriva, e non dice quanto è precisa.',
  'To {distance} m.||exact': 'A {distance} m.',
  'Only to {distance} m.||exact': 'Solo a {distance} m.',
  'Stay in the open a minute. If it stays so, allow the exact position in the settings.':
    'Resta all’aperto un minuto. Se resta così, permetti la posizione esatta nelle impostazioni.',
  'This iOS lets an installed page go dark.': 'Questo iOS lascia spegnere una pagina installata.',
  'Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.':
    'Aggiorna a 18.4, o corri in una scheda del browser, o metti il blocco automatico su Mai per la gara.',
  'Stays on.': 'Resta acceso.',
  'Kept on by a silent video.': 'Tenuto acceso da un video muto.',
  'It may pause your music.': 'Può mettere in pausa la tua musica.',
  'May go dark.': 'Può spegnersi.',
  'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.':
    'Togli il risparmio energetico. Altrimenti metti lo spegnimento dello schermo al massimo: spento vuol dire senza posizione.',
  'The voice is not here.': 'La voce non è qui.',
  'Open the page again with a network.': 'Riapri la pagina con la rete.',
  'The voice is being loaded.': 'Si carica la voce.',
  'Heard.': 'Sentito.',
  'Not heard.': 'Non sentito.',
  'Turn the volume up, switch silent mode off, connect the earphones, and play again.':
    'Alza il volume, togli il silenzioso, collega gli auricolari e riprova.',
  'Put your earphones in and play the sample.': 'Metti gli auricolari e ascolta l’esempio.',
  'Not measured. It may be left out.': 'Non misurato. Si può lasciare così.',
  'About {ms} ms, your finger included.': 'Circa {ms} ms, dito compreso.',
  'Not used. The screen does all that they do.': 'Non usati. Lo schermo fa tutto quello che fanno loro.',
  'They come through.': 'Arrivano.',
  'Press the headset’s button once.': 'Premi una volta il pulsante degli auricolari.',
  'If nothing comes, the screen does all that it does.':
    'Se non arriva niente, lo schermo fa tutto quello che fanno loro.',
  'Charge before the start, turn the brightness down, and switch low-power mode off.':
    'Carica prima della partenza, abbassa la luminosità e togli il risparmio energetico.',
  'This browser does not say.': 'Questo browser non lo dice.',
  'Little room.': 'Poco spazio.',
  'Free some storage on the phone.': 'Libera un po’ di memoria sul telefono.',
  'Kept on this device until you remove it.': 'Conservato su questo dispositivo finché non lo togli.',
  'Kept on this device, but the browser may remove it.':
    'Conservato su questo dispositivo, ma il browser può toglierlo.',
  'Install Soundline, or save the log after the run.':
    'Installa Soundline, o salva il registro dopo la corsa.',
  'Counted where the position fails.': 'Contati dove la posizione manca.',
  'Refused. Tunnels are bridged by your pace alone.':
    'Rifiutato. Le gallerie si superano solo con il tuo passo.',
  'This device does not count them.': 'Questo dispositivo non li conta.',
  'You will be asked.': 'Ti verrà chiesto.',
  'Beside the sound.': 'Insieme al suono.',
  'Not on this device: the sound alone.': 'Non su questo dispositivo: solo il suono.',
  'Works without a network.': 'Funziona senza rete.',
  'Being stored.': 'Si conserva.',
  'Needs a network to open.': 'Ha bisogno della rete per aprirsi.',
  'Do not close the page before the race.': 'Non chiudere la pagina prima della gara.',
  'position||in a list': 'posizione',
  'screen||in a list': 'schermo',
  'sound||in a list': 'suono',
  'Not ready: {names}.': 'Non pronto: {names}.',
  'Still open: {names}.': 'Ancora da vedere: {names}.',
  'Ready.': 'Pronto.',
  fine: 'bene',
  'could be better': 'si può migliorare',
  missing: 'manca',
  'open||not known yet': 'da vedere',
  'Install Soundline': 'Installa Soundline',
  'Install first: Share, then Add to Home Screen, and set up your plan there.':
    'Prima installa: Condividi, poi Aggiungi a Home, e prepara lì il tuo piano.',
  'A tab and the installed app do not share what they store.':
    'Una scheda e l’app installata non condividono ciò che conservano.',
  'Installed it opens without a network, and the browser keeps its logs.':
    'Installata si apre senza rete, e il browser ne tiene i registri.',
  'Ready to race?': 'Pronto per la gara?',
  'Tries each thing that a race needs, on this device, as it will be used. It takes a minute.':
    'Prova ogni cosa che serve a una gara, su questo dispositivo, così come verrà usata. Richiede un minuto.',
  'You will be asked for your position. It stays on this device. Stand outside, with your earphones in.':
    'Ti verrà chiesta la posizione. Resta su questo dispositivo. Mettiti fuori, con gli auricolari nelle orecchie.',
  'Begin the check': 'Comincia la verifica',
  Ready: 'Pronto',
  'Not ready yet': 'Non ancora pronto',
  Checks: 'Verifiche',
  'No page can see whether low-power mode is on, or how bright the screen is: switch the one off and turn the other down. Do not press the power button during the run.':
    'Nessuna pagina può vedere se il risparmio energetico è acceso o quanto è luminoso lo schermo: togli l’uno e abbassa l’altra. Non premere il tasto di accensione durante la corsa.',
  'To the start': 'Alla partenza',
  'To the start all the same': 'Alla partenza lo stesso',
  'Play the sample': 'Ascolta l’esempio',
  'Did you hear it?': 'L’hai sentito?',
  Yes: 'Sì',
  No: 'No',
  'Tap with each beat': 'Tocca a ogni colpo',
  'Measure||press': 'Misura',
};
