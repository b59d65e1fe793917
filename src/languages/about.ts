/** What a language says of itself; small, for it is loaded with the page, whichever language is chosen. */
export interface About {
  /** BCP 47 tag; the name of its folder. */
  readonly tag: string;
  /** Its own name, as its speakers write it. */
  readonly name: string;
  /** Whether there is a voice pack for it. Without one the runner is told, and hears tones and English. */
  readonly hasPack: boolean;
}
