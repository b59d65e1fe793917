import { type Message, message } from '../core/units/message.ts';
import type { ScreenName } from './route.ts';

/** What each screen is called, in the bar, among the steps and in the browser's own title. */
export const SCREEN_NAMES: Readonly<Record<ScreenName, Message>> = {
  plan: message('Plan||noun'),
  practice: message('Practice||noun'),
  rehearse: message('Rehearse||verb'),
  run: message('Run||verb'),
  runs: message('Past runs'),
  goal: message('Goal'),
  course: message('Course'),
  fuel: message('Fuel'),
  day: message('Race day'),
  paper: message('Paper'),
  aloud: message('Sound file'),
  whatIf: message('What if'),
  ready: message('Ready to race?'),
  learn: message('The tones'),
  share: message('Hand a plan over'),
};
