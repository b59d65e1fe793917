import type { Catalogue } from '../../text.ts';

export const prepare: Catalogue = {
  'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.':
    'Sono informazioni generali, non consigli medici. Se hai una malattia, prendi medicine, sei incinta o hai dubbi, chiedi prima a un medico.',
  'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.':
    'Dolore al petto, svenimento, un battito strano o un fiato che non torna: fermati, chiedi aiuto, non continuare a correre.',
  'With a fever, an infection or pain that changes your stride, do not race. There will be another one.':
    'Con febbre, un’infezione o un dolore che cambia la falcata, non gareggiare. Ce ne sarà un’altra.',
  'Race day is for what you have practised: no new food, drink, gel, shoes or kit.':
    'Il giorno di gara è per ciò che hai provato: niente cibo, bevande, gel, scarpe o abiti nuovi.',
  'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.':
    'I gel possono dare fastidio allo stomaco. Prendili con acqua, piano, e solo quelli che conosci dall’allenamento.',
  'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.':
    'Con il diabete o un altro disturbo della glicemia, decidi prima con il medico cibo, gel e orari.',
  'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.':
    'Il cibo dei ristori può contenere frutta a guscio, latte, glutine o caffeina. Se per te conta, porta il tuo.',
  'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.':
    'Bevi secondo la sete. Anche troppo è pericoloso: diluisce il sale nel sangue. Aumentare di peso in gara è un segnale d’allarme.',
  'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.':
    'Non prendere antinfiammatori (come l’ibuprofene) intorno a una gara; con lo sforzo e il molto bere aggiungono rischio.',
  'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.':
    'La caffeina non è per tutti: lasciala se hai problemi di cuore, in gravidanza, con certe medicine o se non l’hai provata in allenamento.',
  'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.':
    'Con il caldo rinuncia al tempo obiettivo: parti più piano, cerca ombra e acqua, e fermati se ti gira la testa, hai nausea, confusione o freddo.',
  'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.':
    'Sulle salite tieni lo sforzo e lascia andare il passo. Una discesa veloce su gambe stanche è dove si cade.',
  'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.':
    'Aumenta l’allenamento piano, una cosa per volta, e riposa quando qualcosa fa male. Dopo una lunga pausa, chiedi a un medico prima di allenarti forte.',
  "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.":
    'Le regole della tua gara e la legge del posto decidono che cosa puoi indossare, portare e ascoltare, e dove puoi buttare le cose.',
  'Warm up and walk to the start off the road, and keep your ears open to traffic.':
    'Riscaldati e vai alla partenza fuori dalla strada, e tieni le orecchie aperte al traffico.',
  'An estimate from few facts, not a promise. How you feel on the day decides.':
    'Una stima da pochi dati, non una promessa. Decide come ti senti quel giorno.',
  '{pace} per km': '{pace} al km',
  '{pace} per mile': '{pace} al miglio',
  '{n} km': '{n} km',
  '{n} miles': { one: '{n} miglio', other: '{n} miglia' },
  'half marathon': 'mezza maratona',
  marathon: 'maratona',
  'less than 1 in 20': 'meno di 1 su 20',
  'more than 19 in 20': 'più di 19 su 20',
  'about even': 'circa la metà',
  'about {n} in 10': 'circa {n} su 10',
  '{source} (recalled, not checked)': '{source} (a memoria, non controllato)',
  'common practice, no source': 'pratica comune, nessuna fonte',
  'Next: {step}': 'Avanti: {step}',
  'Yours now, without stations and gels. Undo stands under Plan.':
    'Ora è tuo, senza ristori né gel. Annulla è sotto Piano.',
  'This is the plan of the demo race, with its stations and gels.':
    'Questo è il piano della gara di esempio, con i suoi ristori e gel.',
  'Make it my own': 'Farlo mio',
};
