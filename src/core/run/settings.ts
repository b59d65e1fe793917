import type { NoticeName } from '../cues/notice.ts';
import type { Talk } from '../cues/talk.ts';
import type { Input } from '../estimate/input.ts';

/** What the runner has chosen and may change on the way. */
export interface Settings {
  readonly talk: Talk;
  /** A quiet stretch on demand: until then only answers and the finish are said. Null: none. */
  readonly quietUntilMs: number | null;
}

export const USUAL_SETTINGS: Settings = { talk: 'normal', quietUntilMs: null };

/** A change of settings, logged like everything else that comes in. What is left out stays as it is. */
export interface SettingInput {
  readonly type: 'setting';
  readonly atMs: number;
  readonly talk?: Talk;
  readonly quietUntilMs?: number | null;
}

/** Something about the device that the runner is to hear. */
export interface NoticeInput {
  readonly type: 'notice';
  readonly atMs: number;
  readonly what: NoticeName;
}

/** Everything a run is folded from. */
export type RunInput = Input | SettingInput | NoticeInput;

export const withSetting = (settings: Settings, { talk, quietUntilMs }: SettingInput): Settings => ({
  talk: talk ?? settings.talk,
  quietUntilMs: quietUntilMs === undefined ? settings.quietUntilMs : quietUntilMs,
});
