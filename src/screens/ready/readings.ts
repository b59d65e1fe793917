import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { ReadyModel } from '../../session/ready/readyModel.ts';

/** `must`: without it there is no race by ear. `better`: it works, worse. `wait`: not known yet. */
export type Grade = 'good' | 'better' | 'must' | 'wait';

const NAMES = {
  position: message('Position'),
  screen: message('Screen'),
  sound: message('Sound'),
  delay: message('Earphone delay'),
  buttons: message('Buttons'),
  vibration: message('Vibration'),
  motion: message('Steps'),
  battery: message('Battery'),
  storage: message('Log'),
  offline: message('Offline'),
} as const;
type What = keyof typeof NAMES;

interface Found {
  readonly what: What;
  readonly grade: Grade;
  readonly text: string;
  /** What to do about it. */
  readonly help?: string;
}

export interface Reading extends Found {
  readonly name: string;
}

/** Beyond this the receiver is still settling, or walls are near. */
const FINE_M = 15;
/** Two hours with the screen on take a phone's battery down by about a third to a half (common practice, no source). */
const LOW_BATTERY = 0.6;
/** The log of a day is 2 MB. */
const LEAST_MB = 20;
/** Beyond this a call that is due at once, an ease or an answer, comes a stride or two late. */
const LATE_MS = 350;

const wait = (what: What, text: string, help?: string): Found => ({
  what,
  grade: 'wait',
  text,
  ...(help === undefined ? {} : { help }),
});

const position = ({ reception, bestM }: ReadyModel): Found => {
  const what = 'position';
  const best = bestM.value;
  switch (reception.value) {
    case 'denied':
      return {
        what,
        grade: 'must',
        text: t('Refused.'),
        help: t(
          'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.',
        ),
      };
    case 'absent':
      return { what, grade: 'must', text: t('This browser has none.'), help: t('Use another browser.') };
    case 'waiting':
      return wait(what, t('Nothing yet.'), t('Go into the open. The first may take half a minute.'));
    default:
      if (best === null) return { what, grade: 'better', text: t('It comes, and does not say how exact.') };
      return best <= FINE_M
        ? {
            what,
            grade: 'good',
            text: t('To {distance} m.||exact', { distance: Math.max(1, Math.round(best)) }),
          }
        : {
            what,
            grade: 'better',
            text: t('Only to {distance} m.||exact', { distance: Math.round(best) }),
            help: t('Stay in the open a minute. If it stays so, allow the exact position in the settings.'),
          };
  }
};

const screen = ({ lock }: ReadyModel, lockIsWeak: boolean): Found => {
  const what = 'screen';
  if (lock.value === 'held' && lockIsWeak)
    return {
      what,
      grade: 'better',
      text: t('This iOS lets an installed page go dark.'),
      help: t('Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.'),
    };
  if (lock.value === 'held') return { what, grade: 'good', text: t('Stays on.') };
  if (lock.value === 'video')
    return {
      what,
      grade: 'better',
      text: t('Kept on by a silent video.'),
      help: t('It may pause your music.'),
    };
  return {
    what,
    grade: 'must',
    text: t('May go dark.'),
    help: t(
      'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.',
    ),
  };
};

const sound = ({ sound: state, heard }: ReadyModel): Found => {
  const what = 'sound';
  if (state.value === 'failed')
    return {
      what,
      grade: 'must',
      text: t('The voice is not here.'),
      help: t('Open the page again with a network.'),
    };
  if (state.value === 'loading') return wait(what, t('The voice is being loaded.'));
  if (heard.value === 'yes') return { what, grade: 'good', text: t('Heard.') };
  if (heard.value === 'no')
    return {
      what,
      grade: 'must',
      text: t('Not heard.'),
      help: t('Turn the volume up, switch silent mode off, connect the earphones, and play again.'),
    };
  return wait(what, t('Put your earphones in and play the sample.'));
};

const delay = ({ taps }: ReadyModel): Found => {
  const what = 'delay';
  const late = taps.lateMs.value;
  const earlier = taps.earlierMs.value;
  if (late === null)
    return earlier === 0
      ? wait(what, t('Not measured. It may be left out.'))
      : { what, grade: 'good', text: t('Calls begin {ms} ms earlier, as measured before.', { ms: earlier }) };
  return {
    what,
    grade: late <= LATE_MS ? 'good' : 'better',
    text: t('About {ms} ms, your finger included.', { ms: Math.max(0, late) }),
    help:
      earlier === 0
        ? t('Too little to matter.')
        : t('Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.', {
            ms: earlier,
          }),
  };
};

const buttons = ({ pressed }: ReadyModel): Found => {
  const what = 'buttons';
  if (pressed.value === null)
    return { what, grade: 'good', text: t('Not used. The screen does all that they do.') };
  return pressed.value > 0
    ? { what, grade: 'good', text: t('They come through.') }
    : wait(
        what,
        t('Press the headset’s button once.'),
        t('If nothing comes, the screen does all that it does.'),
      );
};

const battery = ({ battery: found }: ReadyModel): Found => {
  const what = 'battery';
  const help = t('Charge before the start, turn the brightness down, and switch low-power mode off.');
  if (found.value === null) return wait(what, t('This browser does not say.'), help);
  const text = `${Math.round(100 * found.value.level)} %.`;
  return found.value.level >= LOW_BATTERY || found.value.charging
    ? { what, grade: 'good', text }
    : { what, grade: 'better', text, help };
};

const storage = ({ kept, freeMB }: ReadyModel): Found => {
  const what = 'storage';
  if (freeMB.value !== null && freeMB.value < LEAST_MB)
    return { what, grade: 'better', text: t('Little room.'), help: t('Free some storage on the phone.') };
  return kept.value === true
    ? { what, grade: 'good', text: t('Kept on this device until you remove it.') }
    : {
        what,
        grade: 'better',
        text: t('Kept on this device, but the browser may remove it.'),
        help: t('Install Soundline, or save the log after the run.'),
      };
};

const motion = ({ motion: leave }: ReadyModel): Found => {
  const what = 'motion';
  switch (leave.value) {
    case 'given':
      return { what, grade: 'good', text: t('Counted where the position fails.') };
    case 'refused':
      return { what, grade: 'better', text: t('Refused. Tunnels are bridged by your pace alone.') };
    case 'absent':
      return { what, grade: 'better', text: t('This device does not count them.') };
    case 'ask':
      return wait(what, t('You will be asked.'));
  }
};

const vibration = ({ vibrates }: ReadyModel): Found =>
  vibrates
    ? { what: 'vibration', grade: 'good', text: t('Beside the sound.') }
    : { what: 'vibration', grade: 'better', text: t('Not on this device: the sound alone.') };

/**
 * @param offline what src/offline says
 * @param lockIsWeak a held screen lock is known not to hold on this system
 */
export const readingsOf = (
  model: ReadyModel,
  offline: 'absent' | 'fetching' | 'stored' | 'ready' | 'failed',
  lockIsWeak: boolean,
): readonly Reading[] =>
  foundBy(model, offline, lockIsWeak).map((found) => ({ ...found, name: t(NAMES[found.what]) }));

const foundBy = (
  model: ReadyModel,
  offline: 'absent' | 'fetching' | 'stored' | 'ready' | 'failed',
  lockIsWeak: boolean,
): readonly Found[] => [
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
    ? { what: 'offline', grade: 'good', text: t('Works without a network.') }
    : offline === 'fetching' || offline === 'stored'
      ? wait('offline', t('Being stored.'))
      : {
          what: 'offline',
          grade: 'better',
          text: t('Needs a network to open.'),
          help: t('Do not close the page before the race.'),
        },
];

/** What has to be known before anybody can be called ready. */
const NEEDED: Partial<Record<What, Message>> = {
  position: message('position||in a list'),
  screen: message('screen||in a list'),
  sound: message('sound||in a list'),
};

export const verdictOf = (
  readings: readonly Reading[],
): { readonly ready: boolean; readonly text: string } => {
  const names = (list: readonly Reading[]): string => list.map((r) => t(NEEDED[r.what] ?? r.name)).join(', ');
  const missing = readings.filter((r) => r.grade === 'must');
  if (missing.length > 0) return { ready: false, text: t('Not ready: {names}.', { names: names(missing) }) };
  const open = readings.filter((r) => r.grade === 'wait' && r.what in NEEDED);
  return open.length > 0
    ? { ready: false, text: t('Still open: {names}.', { names: names(open) }) }
    : { ready: true, text: t('Ready.') };
};
