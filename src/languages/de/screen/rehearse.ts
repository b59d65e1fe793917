import type { Catalogue } from '../../text.ts';

export const rehearse: Catalogue = {
  'Demo race': 'Demo-Rennen',
  'My plan': 'Mein Plan',
  'Rate||of a replay': 'Tempo',
  'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.':
    'Soundline ist eine Stimme in deinem Ohr, während du ein Rennen läufst. Sie sagt dir, wie viele Sekunden du vor oder hinter deinem Plan liegst, in dem Moment, in dem es zählt. Hör ein ganzes Rennen, bevor du es läufst.',
  Rehearsal: 'Generalprobe',
  'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.':
    'Zwischen den Ansagen läuft das Rennen so schnell, wie du wählst; während die Stimme spricht, läuft es in Echtzeit.',
  'The race': 'Das Rennen',
  '{distance} {unit} in {time}, on a measured course': '{distance} {unit} in {time}, auf vermessener Strecke',
  'Ahead by four.': 'Vorsprung vier.',
  'Four seconds in hand: above the water line.': 'Vier Sekunden im Plus: über der Wasserlinie.',
  'Behind by four.': 'Rückstand vier.',
  'Four seconds owed: below it.': 'Vier Sekunden im Minus: darunter.',
  Pause: 'Pause',
  'Go on': 'Weiter',
  'End||press': 'Beenden',
  'Hear the demo race': 'Demo-Rennen hören',
  'Hear my race': 'Mein Rennen hören',
  'Where the runner is': 'Wo der Läufer ist',
  time: 'Zeit',
  'pace /{unit}': 'Tempo /{unit}',
  finish: 'Ziel',
  'What was said': 'Was gesagt wurde',
  'Your own race': 'Dein eigenes Rennen',
  '{plan}: distance and goal; the course, food and the morning if you like.':
    '{plan}: Distanz und Zielzeit; Strecke, Verpflegung und Morgen, wenn du magst.',
  'Make a plan': 'Mach einen Plan',
  'Hear it here, at home: choose “My plan” and press.': 'Hör ihn hier, zu Hause: Wähl „Mein Plan“ und drück.',
  'On the day {check}, then {run}: the phone in a pocket, the earphones in.':
    'Am Renntag {check}, dann {run}: das Handy in die Tasche, die Kopfhörer ins Ohr.',
  'check the phone': 'prüf das Handy',
  'switch on': 'schalt ein',
};
