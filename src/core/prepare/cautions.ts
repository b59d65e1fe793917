import { type Message, message } from '../units/message.ts';

/**
 * Every caution of the preparation, in one place, so that a reader can judge them together.
 * General information, not advice for one person; the screens show the text of the keys that a result carries.
 * Sources: Hew-Butler et al. 2015 (drinking); Kim et al. 2012 (cardiac arrest); position stands on carbohydrate
 * (Burke et al. 2011) and caffeine (ISSN 2010, 2021). Where none is named: common practice, no source.
 */
export const CAUTIONS = {
  general: message(
    'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.',
  ),
  chest: message(
    'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.',
  ),
  ill: message(
    'With a fever, an infection or pain that changes your stride, do not race. There will be another one.',
  ),
  practised: message('Race day is for what you have practised: no new food, drink, gel, shoes or kit.'),
  stomach: message(
    'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.',
  ),
  diabetes: message(
    'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.',
  ),
  allergy: message(
    'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.',
  ),
  thirst: message(
    'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.',
  ),
  painkillers: message(
    'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.',
  ),
  caffeine: message(
    'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.',
  ),
  heat: message(
    'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.',
  ),
  hills: message(
    'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.',
  ),
  training: message(
    'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.',
  ),
  rules: message(
    "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.",
  ),
  traffic: message('Warm up and walk to the start off the road, and keep your ears open to traffic.'),
  estimate: message('An estimate from few facts, not a promise. How you feel on the day decides.'),
} as const;

export type CautionKey = keyof typeof CAUTIONS;

/** The texts of some cautions, each once, in the order given. */
export const cautionTexts = (keys: readonly CautionKey[]): readonly Message[] =>
  [...new Set(keys)].map((key) => CAUTIONS[key]);
