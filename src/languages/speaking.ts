/** How the workshop has a language's clips spoken by eSpeak NG. Never on the page. */
export interface Speaking {
  /** Name of the engine's voice. */
  readonly voice: string;
  /** For people: engine and voice, in the pack's manifest. */
  readonly name: string;
  /** Words a minute. */
  readonly rate: number;
  /** 0 to 99. */
  readonly pitch: number;
  /** Stands before and after a clip that is recorded as the middle of a sentence. */
  readonly before: string;
  readonly after: string;
  /** The same for a clip that is bound to its noun. */
  readonly bound?: { readonly before: string; readonly after: string };
  /** A number, for clips that always stand before one, or after one. */
  readonly number: string;
  /** Clips that the engine says better from figures: 'vierzehn' from 14. */
  readonly figures?: ReadonlyMap<string, string>;
  /** Where the engine would say the words otherwise than people do: what it is given in their place. */
  readonly spelt: readonly (readonly [written: RegExp, spelt: string])[];
}
