import { within } from './group.ts';

/** Commands of W3C WebDriver that the tests need, by the names that Marionette has for them. */
type Command =
  | 'Navigate'
  | 'Refresh'
  | 'ExecuteAsyncScript'
  | 'FindElement'
  | 'ElementClick'
  | 'ElementClear'
  | 'ElementSendKeys'
  | 'PerformActions'
  | 'SetWindowRect'
  | 'TakeScreenshot'
  | 'DeleteSession';

/** A way to a driver: HTTP, or Firefox's own socket. Rejects with what the browser says. */
export interface Wire {
  readonly send: (command: Command, given: Readonly<Record<string, unknown>>) => Promise<unknown>;
  readonly end: () => Promise<void>;
}

/** A script of a page may take a minute; a page that hangs answers nothing at all. */
const ANSWER_WITHIN_MS = 70_000;
/** A browser that takes longer to say goodbye is ended without it. */
const GOODBYE_WITHIN_MS = 5000;

/** The key under which every driver hands out elements (W3C WebDriver, section 12). */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

/** A page in a browser that is not Chromium. */
export interface OtherPage {
  readonly goto: (url: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  /** Runs a function of the page, with plain data in and out. */
  readonly ask: <Given extends readonly unknown[], Answer>(
    what: (...given: Given) => Answer | Promise<Answer>,
    ...given: Given
  ) => Promise<Answer>;
  /** Waits until an element is there that has this text (XPath `contains`), or this selector, and gives its text. */
  readonly see: (text: string, withinMs?: number) => Promise<void>;
  readonly seeAt: (selector: string, withinMs?: number) => Promise<string>;
  /** A touch on a button or link by its text. */
  readonly press: (name: string) => Promise<void>;
  readonly pressAt: (selector: string) => Promise<void>;
  /** A touch that rests. */
  readonly holdAt: (selector: string, ms: number) => Promise<void>;
  readonly fill: (selector: string, text: string) => Promise<void>;
  readonly resize: (width: number, height: number) => Promise<void>;
  /** PNG, base64. */
  readonly picture: () => Promise<string>;
  readonly close: () => Promise<void>;
}

const LOOK_EVERY_MS = 100;
const WITHIN_MS = 20_000;

const sleep = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

const literal = (text: string): string =>
  text.includes("'") ? `concat('${text.split("'").join(`',"'",'`)}')` : `'${text}'`;

export const otherPage = ({ send, end }: Wire): OtherPage => {
  const wire: Pick<Wire, 'send'> = {
    send: (command, given) => within(ANSWER_WITHIN_MS, command, send(command, given)),
  };
  const find = async (using: 'css selector' | 'xpath', value: string): Promise<string> => {
    const found = (await wire.send('FindElement', { using, value })) as Record<string, string>;
    const id = found[ELEMENT];
    if (id === undefined) throw new Error(`no ${value}`);
    return id;
  };
  const ask: OtherPage['ask'] = async (what, ...given) => {
    const got = (await wire.send('ExecuteAsyncScript', {
      script: `const done = arguments[arguments.length - 1];
        Promise.resolve((${what.toString()})(...Array.from(arguments).slice(0, -1)))
          .then((answer) => done({ answer }), (error) => done({ error: String(error) }));`,
      args: given,
    })) as { answer?: unknown; error?: string };
    if (got.error !== undefined) throw new Error(got.error);
    return got.answer as never;
  };
  const until = async (withinMs: number, what: string, look: () => Promise<boolean>): Promise<void> => {
    const endMs = Date.now() + withinMs;
    while (!(await look().catch(() => false))) {
      if (Date.now() > endMs) {
        // biome-ignore lint/performance/useDomNodeTextContent: what is seen counts, not what is hidden
        const shown = await ask(() => document.body.innerText).catch(String);
        throw new Error(`not seen: ${what}, but:\n${shown}`);
      }
      await sleep(LOOK_EVERY_MS);
    }
  };
  const pressId = (id: string): Promise<unknown> => wire.send('ElementClick', { id });
  return {
    goto: async (url) => void (await wire.send('Navigate', { url })),
    reload: async () => void (await wire.send('Refresh', {})),
    ask,
    see: (text, withinMs = WITHIN_MS) =>
      // biome-ignore lint/performance/useDomNodeTextContent: what is seen counts, not what is hidden
      until(withinMs, text, () => ask((t) => document.body.innerText.includes(t), text)),
    seeAt: async (selector, withinMs = WITHIN_MS) => {
      await until(withinMs, selector, () => ask((s) => document.querySelector(s) !== null, selector));
      return ask((s) => document.querySelector(s)?.textContent ?? '', selector);
    },
    press: async (name) => {
      const path = `//*[self::button or self::a or self::label][contains(normalize-space(.), ${literal(name)})]`;
      let id = '';
      await until(WITHIN_MS, name, async () => {
        id = await find('xpath', path);
        return true;
      });
      await pressId(id);
    },
    pressAt: async (selector) => void (await pressId(await find('css selector', selector))),
    holdAt: async (selector, ms) => {
      const id = await find('css selector', selector);
      await wire.send('PerformActions', {
        actions: [
          {
            type: 'pointer',
            id: 'finger',
            parameters: { pointerType: 'mouse' },
            actions: [
              { type: 'pointerMove', duration: 0, origin: { [ELEMENT]: id }, x: 0, y: 0 },
              { type: 'pointerDown', button: 0 },
              { type: 'pause', duration: ms },
              { type: 'pointerUp', button: 0 },
            ],
          },
        ],
      });
    },
    fill: async (selector, text) => {
      const id = await find('css selector', selector);
      await wire.send('ElementClear', { id });
      await wire.send('ElementSendKeys', { id, text });
    },
    resize: async (width, height) => void (await wire.send('SetWindowRect', { width, height })),
    picture: async () => (await wire.send('TakeScreenshot', {})) as string,
    close: async () => {
      await within(GOODBYE_WITHIN_MS, 'goodbye', send('DeleteSession', {})).catch(() => {});
      await end();
    },
  };
};
