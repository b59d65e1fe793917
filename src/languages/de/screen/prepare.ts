import type { Catalogue } from '../../text.ts';

export const prepare: Catalogue = {
  'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.':
    'Dies ist allgemeine Information, kein ärztlicher Rat. Bist du krank, nimmst du Medikamente, bist du schwanger oder unsicher, frag zuerst eine Ärztin oder einen Arzt.',
  'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.':
    'Schmerzen in der Brust, das Gefühl, ohnmächtig zu werden, ein auffälliger Herzschlag oder Atem, der nicht wiederkommt: anhalten, Hilfe holen, nicht weiterlaufen.',
  'With a fever, an infection or pain that changes your stride, do not race. There will be another one.':
    'Mit Fieber, einem Infekt oder Schmerzen, die deinen Schritt verändern, lauf kein Rennen. Es kommt ein anderes.',
  'Race day is for what you have practised: no new food, drink, gel, shoes or kit.':
    'Der Renntag ist für das, was du geübt hast: kein neues Essen, kein neues Getränk oder Gel, keine neuen Schuhe oder Sachen.',
  'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.':
    'Gels können auf den Magen schlagen. Nimm sie mit Wasser, langsam, und nur die Sorte, die du aus dem Training kennst.',
  'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.':
    'Mit Diabetes oder einer anderen Störung des Blutzuckers: Besprich Essen, Gels und Zeitpunkte vorher mit deiner Ärztin oder deinem Arzt.',
  'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.':
    'Essen an den Verpflegungsstellen kann Nüsse, Milch, Gluten oder Koffein enthalten. Wenn das für dich wichtig ist, nimm Eigenes mit.',
  'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.':
    'Trink nach Durst. Auch zu viel ist gefährlich: Es verdünnt das Salz im Blut. Während des Rennens an Gewicht zuzunehmen ist ein Warnzeichen.',
  'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.':
    'Nimm rund um ein Rennen keine entzündungshemmenden Schmerzmittel (etwa Ibuprofen); bei harter Belastung und vielem Trinken erhöhen sie das Risiko.',
  'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.':
    'Koffein ist nicht für alle: Lass es weg bei Herzproblemen, in der Schwangerschaft, mit manchen Medikamenten oder wenn du es nicht im Training erprobt hast.',
  'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.':
    'Bei Hitze gib die Zielzeit auf: Lauf langsamer an, nutze Schatten und Wasser, und halt an, wenn dir schwindlig, übel oder kalt wird oder du verwirrt bist.',
  'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.':
    'An Hügeln behalte die Anstrengung und lass das Tempo los. Stürze passieren, wenn es auf müden Beinen schnell bergab geht.',
  'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.':
    'Steigere das Training langsam, immer nur eines, und ruh dich aus, wenn etwas wehtut. Nach einer langen Pause frag vor hartem Training eine Ärztin oder einen Arzt.',
  "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.":
    'Die Regeln deines Rennens und das örtliche Recht entscheiden, was du tragen, mitnehmen und hören darfst und wo du etwas wegwerfen darfst.',
  'Warm up and walk to the start off the road, and keep your ears open to traffic.':
    'Wärm dich abseits der Straße auf, geh abseits der Straße zum Start, und halte die Ohren offen für den Verkehr.',
  'An estimate from few facts, not a promise. How you feel on the day decides.':
    'Eine Schätzung aus wenigen Fakten, kein Versprechen. Wie du dich am Tag fühlst, entscheidet.',
  '{pace} per km': '{pace} pro km',
  '{pace} per mile': '{pace} pro Meile',
  '{n} km': '{n} km',
  '{n} miles': { one: '{n} Meile', other: '{n} Meilen' },
  'half marathon': 'Halbmarathon',
  marathon: 'Marathon',
  'less than 1 in 20': 'weniger als 1 von 20',
  'more than 19 in 20': 'mehr als 19 von 20',
  'about even': 'etwa die Hälfte',
  'about {n} in 10': 'etwa {n} von 10',
  '{source} (recalled, not checked)': '{source} (aus dem Gedächtnis, nicht nachgeprüft)',
  'common practice, no source': 'gängige Praxis, ohne Quelle',
  'Next: {step}': 'Weiter: {step}',
  'Yours now, without stations and gels. Undo stands under Plan.':
    'Jetzt deiner, ohne Verpflegungsstellen und Gels. Rückgängig geht unter Plan.',
  'This is the plan of the demo race, with its stations and gels.':
    'Das ist der Plan des Demo-Rennens, mit dessen Verpflegungsstellen und Gels.',
  'Make it my own': 'Zu meinem Plan machen',
};
