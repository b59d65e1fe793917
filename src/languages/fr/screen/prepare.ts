import type { Catalogue } from '../../text.ts';

export const prepare: Catalogue = {
  'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.':
    'Information générale, pas un avis médical. Si tu as une maladie, prends des médicaments, es enceinte ou as un doute, demande d’abord l’avis d’un médecin.',
  'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.':
    'Douleur dans la poitrine, impression de s’évanouir, battements anormaux ou souffle qui ne revient pas : arrête-toi, demande de l’aide, ne continue pas à courir.',
  'With a fever, an infection or pain that changes your stride, do not race. There will be another one.':
    'Avec de la fièvre, une infection ou une douleur qui change ta foulée, ne cours pas la course. Il y en aura une autre.',
  'Race day is for what you have practised: no new food, drink, gel, shoes or kit.':
    'Le jour de la course est fait pour ce que tu as répété. Rien de nouveau : ni aliment, ni boisson, ni gel, ni chaussures, ni tenue.',
  'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.':
    'Les gels peuvent déranger l’estomac. Prends-les avec de l’eau, lentement, et seulement ceux que tu connais de l’entraînement.',
  'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.':
    'Avec un diabète ou un autre trouble de la glycémie, règle à l’avance alimentation, gels et horaires avec ton médecin.',
  'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.':
    'Les aliments des ravitaillements peuvent contenir des fruits à coque, du lait, du gluten ou de la caféine. Si cela compte pour toi, emporte les tiens.',
  'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.':
    'Bois selon ta soif. Trop boire est dangereux aussi : cela dilue le sel dans le sang. Prendre du poids pendant une course est un signe d’alerte.',
  'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.':
    'Ne prends pas d’anti-inflammatoires contre la douleur (comme l’ibuprofène) autour d’une course ; avec un effort dur et beaucoup de boisson, ils ajoutent un risque.',
  'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.':
    'La caféine n’est pas pour tous : évite-la en cas de problème cardiaque, de grossesse, avec certains médicaments, ou si tu ne l’as pas testée à l’entraînement.',
  'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.':
    'Par forte chaleur, renonce au temps visé : pars moins vite, prends de l’ombre et de l’eau, et arrête-toi si tu as le vertige, la nausée, froid ou l’esprit confus.',
  'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.':
    'Dans les côtes, garde l’effort et laisse filer l’allure. C’est dans une descente rapide sur des jambes fatiguées qu’on tombe.',
  'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.':
    'Augmente l’entraînement lentement, une chose à la fois, et repose-toi quand quelque chose fait mal. Après une longue pause, demande l’avis d’un médecin avant un entraînement dur.',
  "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.":
    'Le règlement de ta course et la loi locale décident de ce que tu peux porter, emporter et écouter, et où tu peux jeter quelque chose.',
  'Warm up and walk to the start off the road, and keep your ears open to traffic.':
    'Échauffe-toi et rejoins le départ hors de la route, et garde l’oreille attentive à la circulation.',
  'An estimate from few facts, not a promise. How you feel on the day decides.':
    'Une estimation à partir de peu d’éléments, pas une promesse. Tes sensations du jour décident.',
  '{pace} per km': '{pace} par km',
  '{pace} per mile': '{pace} par mile',
  '{n} km': '{n} km',
  '{n} miles': { one: '{n} mile', other: '{n} miles' },
  'half marathon': 'semi-marathon',
  marathon: 'marathon',
  'less than 1 in 20': 'moins de 1 sur 20',
  'more than 19 in 20': 'plus de 19 sur 20',
  'about even': 'environ une sur deux',
  'about {n} in 10': 'environ {n} sur 10',
  '{source} (recalled, not checked)': '{source} (de mémoire, non vérifié)',
  'common practice, no source': 'pratique courante, sans source',
  'Next: {step}': 'Suite : {step}',
  'Yours now, without stations and gels. Undo stands under Plan.':
    'À toi maintenant, sans ravitaillements ni gels. Annuler se trouve sous Plan.',
  'This is the plan of the demo race, with its stations and gels.':
    'Ceci est le plan de la course de démonstration, avec ses ravitaillements et ses gels.',
  'Make it my own': 'En faire le mien',
};
