import type { ReadyModel } from '../../session/readyModel.ts';

/** `must`: without it there is no race by ear. `better`: it works, worse. `wait`: not known yet. */
export type Grade = 'good' | 'better' | 'must' | 'wait';

export interface Reading {
  readonly name: string;
  readonly grade: Grade;
  readonly text: string;
  /** What to do about it. */
  readonly help?: string;
}

/** Beyond this the receiver is still settling, or walls are near. */
const FINE_M = 15;
/** Two hours with the screen on take a phone's battery down by about a third to a half (common practice, no source). */
const LOW_BATTERY = 0.6;
/** The log of a day is 2 MB. */
const LEAST_MB = 20;
/** Beyond this a call about a place comes a stride or two late. */
const LATE_MS = 350;

const wait = (name: string, text: string, help?: string): Reading => ({
  name,
  grade: 'wait',
  text,
  ...(help === undefined ? {} : { help }),
});

const position = ({ reception, bestM }: ReadyModel): Reading => {
  const name = 'Position';
  const best = bestM.value;
  switch (reception.value) {
    case 'denied':
      return {
        name,
        grade: 'must',
        text: 'Refused.',
        help: 'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.',
      };
    case 'absent':
      return { name, grade: 'must', text: 'This browser has none.', help: 'Use another browser.' };
    case 'waiting':
      return wait(name, 'Nothing yet.', 'Go into the open. The first may take half a minute.');
    default:
      if (best === null) return { name, grade: 'better', text: 'It comes, and does not say how exact.' };
      return best <= FINE_M
        ? { name, grade: 'good', text: `To ${Math.max(1, Math.round(best))} m.` }
        : {
            name,
            grade: 'better',
            text: `Only to ${Math.round(best)} m.`,
            help: 'Stay in the open a minute. If it stays so, allow the exact position in the settings.',
          };
  }
};

const screen = ({ lock }: ReadyModel, lockIsWeak: boolean): Reading => {
  const name = 'Screen';
  if (lock.value === 'held' && lockIsWeak)
    return {
      name,
      grade: 'better',
      text: 'This iOS lets an installed page go dark.',
      help: 'Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.',
    };
  if (lock.value === 'held') return { name, grade: 'good', text: 'Stays on.' };
  if (lock.value === 'video')
    return { name, grade: 'better', text: 'Kept on by a silent video.', help: 'It may pause your music.' };
  return {
    name,
    grade: 'must',
    text: 'May go dark.',
    help: 'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.',
  };
};

const sound = ({ sound: state, heard }: ReadyModel): Reading => {
  const name = 'Sound';
  if (state.value === 'failed')
    return {
      name,
      grade: 'must',
      text: 'The voice is not here.',
      help: 'Open the page again with a network.',
    };
  if (state.value === 'loading') return wait(name, 'The voice is being loaded.');
  if (heard.value === 'yes') return { name, grade: 'good', text: 'Heard.' };
  if (heard.value === 'no')
    return {
      name,
      grade: 'must',
      text: 'Not heard.',
      help: 'Turn the volume up, switch silent mode off, connect the earphones, and play again.',
    };
  return wait(name, 'Put your earphones in and play the sample.');
};

const delay = ({ taps }: ReadyModel): Reading => {
  const name = 'Earphone delay';
  const late = taps.lateMs.value;
  if (late === null) return wait(name, 'Not measured. It may be left out.');
  return late <= LATE_MS
    ? { name, grade: 'good', text: `About ${Math.max(0, late)} ms, your finger included.` }
    : {
        name,
        grade: 'better',
        text: `About ${late} ms, your finger included.`,
        help: 'Calls come so much late. Earphones with a wire have next to none.',
      };
};

const buttons = ({ pressed }: ReadyModel): Reading => {
  const name = 'Buttons';
  if (pressed.value === null)
    return { name, grade: 'good', text: 'Not used. The screen does all that they do.' };
  return pressed.value > 0
    ? { name, grade: 'good', text: 'They come through.' }
    : wait(name, 'Press the headset’s button once.', 'If nothing comes, the screen does all that it does.');
};

const battery = ({ battery: found }: ReadyModel): Reading => {
  const name = 'Battery';
  const help = 'Charge before the start, turn the brightness down, and switch low-power mode off.';
  if (found.value === null) return wait(name, 'This browser does not say.', help);
  const text = `${Math.round(100 * found.value.level)} %.`;
  return found.value.level >= LOW_BATTERY || found.value.charging
    ? { name, grade: 'good', text }
    : { name, grade: 'better', text, help };
};

const storage = ({ kept, freeMB }: ReadyModel): Reading => {
  const name = 'Log';
  if (freeMB.value !== null && freeMB.value < LEAST_MB)
    return { name, grade: 'better', text: 'Little room.', help: 'Free some storage on the phone.' };
  return kept.value === true
    ? { name, grade: 'good', text: 'Kept on this device until you remove it.' }
    : {
        name,
        grade: 'better',
        text: 'Kept on this device, but the browser may remove it.',
        help: 'Install Soundline, or save the log after the run.',
      };
};

const motion = ({ motion: leave }: ReadyModel): Reading => {
  const name = 'Steps';
  switch (leave.value) {
    case 'given':
      return { name, grade: 'good', text: 'Counted where the position fails.' };
    case 'refused':
      return { name, grade: 'better', text: 'Refused. Tunnels are bridged by your pace alone.' };
    case 'absent':
      return { name, grade: 'better', text: 'This device does not count them.' };
    case 'ask':
      return wait(name, 'You will be asked.');
  }
};

const vibration = ({ vibrates }: ReadyModel): Reading =>
  vibrates
    ? { name: 'Vibration', grade: 'good', text: 'Beside the sound.' }
    : { name: 'Vibration', grade: 'better', text: 'Not on this device: the sound alone.' };

/**
 * @param offline what src/offline says
 * @param lockIsWeak a held screen lock is known not to hold on this system
 */
export const readingsOf = (
  model: ReadyModel,
  offline: 'absent' | 'fetching' | 'ready' | 'failed',
  lockIsWeak: boolean,
): readonly Reading[] => [
  position(model),
  screen(model, lockIsWeak),
  sound(model),
  delay(model),
  buttons(model),
  vibration(model),
  motion(model),
  battery(model),
  storage(model),
  offline === 'ready'
    ? { name: 'Offline', grade: 'good', text: 'Works without a network.' }
    : offline === 'fetching'
      ? wait('Offline', 'Being stored.')
      : {
          name: 'Offline',
          grade: 'better',
          text: 'Needs a network to open.',
          help: 'Do not close the page before the race.',
        },
];

/** What has to be known before anybody can be called ready. */
const NEEDED = ['Position', 'Screen', 'Sound'];

export const verdictOf = (
  readings: readonly Reading[],
): { readonly ready: boolean; readonly text: string } => {
  const names = (list: readonly Reading[]): string => list.map((r) => r.name.toLowerCase()).join(', ');
  const missing = readings.filter((r) => r.grade === 'must');
  if (missing.length > 0) return { ready: false, text: `Not ready: ${names(missing)}.` };
  const open = readings.filter((r) => r.grade === 'wait' && NEEDED.includes(r.name));
  return open.length > 0
    ? { ready: false, text: `Still open: ${names(open)}.` }
    : { ready: true, text: 'Ready.' };
};
