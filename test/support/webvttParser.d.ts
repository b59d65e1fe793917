/** The part of webvtt-parser 2.2.0 (W3C, CC0) that the tests use; it brings no types. */
declare module 'webvtt-parser' {
  export interface ParsedCue {
    readonly id: string;
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
    readonly tree: { readonly children: readonly { readonly type: string; readonly value?: string }[] };
  }
  export class WebVTTParser {
    constructor(entities: Readonly<Record<string, string>>);
    parse(
      input: string,
      mode: 'metadata' | 'subtitles',
    ): { readonly cues: readonly ParsedCue[]; readonly errors: readonly { readonly message: string }[] };
  }
}
