import { type DoorError, doorError, err, type Result } from '../../core/units/result.ts';
import { refusal } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';

/** A file as the page gets it; its size is looked at before a byte is read. */
export interface GivenFile {
  readonly name: string;
  readonly size: number;
  readonly arrayBuffer: () => Promise<ArrayBuffer>;
}

/** What was taken from the runner, or a sentence on why nothing was. */
export type Taken<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

export const takenOf = <T>(got: Result<T, DoorError>): Taken<T> =>
  got.ok ? got : { ok: false, why: t(refusal(got.error)) };

/** The limit of the readers behind it; a race recorded ten times a second is 40 MB. */
const MOST_BYTES = 64_000_000;

/** Reads a file of the runner's; one too large is refused before it is read. Never throws. */
export const takeFile = async <T>(
  file: GivenFile,
  read: (bytes: Uint8Array, fileName: string) => Result<T, DoorError>,
): Promise<Taken<T>> => {
  if (file.size > MOST_BYTES)
    return takenOf(err(doorError('the file', 'at most 64 MB', `${Math.round(file.size / 1e6)} MB`)));
  try {
    return takenOf(read(new Uint8Array(await file.arrayBuffer()), file.name));
  } catch {
    return { ok: false, why: t('the file: it could not be read from the disk') };
  }
};
