import { describe, expect, inject, test } from 'vitest';
import { open, voiceLoaded } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

/** A name that no machine has (RFC 6761), so that even a request that got through would reach nobody. */
const STRANGER = 'https://stranger.invalid';

describe('nothing leaves the machine', () => {
  test('on every screen and through a start, all requests stay with the page', async () => {
    const opened = await open('');
    const { page } = opened;
    await voiceLoaded(page);
    await page.getByRole('button', { name: 'Hear the demo race' }).click();
    await page.getByRole('link', { name: 'Plan', exact: true }).click();
    await page.getByLabel('Goal time', { exact: true }).fill('1:50:00');
    await page.getByRole('link', { name: 'Run', exact: true }).click();
    const runner = await roadRunner(page);
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(5, 4);
    const origins = new Set(opened.requests.map((address) => new URL(address).origin));
    expect([...origins]).toEqual([inject('origin')]);
    // The page, its scripts and styles, its icons, its manifest, its worker, the voice: and that is all there is.
    const known = /^\/($|assets\/|icon|voice\/en\.mp3$|sw\.js$|manifest\.webmanifest$)/;
    const paths = opened.requests.map((address) => new URL(address).pathname);
    expect(paths.filter((path) => !known.test(path))).toEqual([]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('the policy stands in the page and allows the page itself alone', async () => {
    const opened = await open('');
    const policy = await opened.page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .getAttribute('content');
    const rules = Object.fromEntries(
      (policy ?? '').split(';').map((rule) => {
        const [name = '', ...sources] = rule.trim().split(' ');
        return [name, sources.join(' ')];
      }),
    );
    expect(rules['default-src']).toBe("'none'");
    expect(rules['script-src']).toBe("'self'");
    expect(rules['style-src']).toBe("'self'");
    expect(rules['connect-src']).toBe("'self'");
    expect(rules['media-src']).toBe('data:');
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    const header = await (await opened.page.request.get(`${inject('origin')}/`)).headers();
    expect(header['content-security-policy']).toBe("frame-ancestors 'none'");
    await opened.close();
  });

  const attempts: readonly (readonly [what: string, directive: string, script: string])[] = [
    ['a request to a stranger', 'connect-src', `fetch('${STRANGER}/x').catch(() => {})`],
    ['a beacon', 'connect-src', `navigator.sendBeacon('${STRANGER}/x', 'here')`],
    ['a picture', 'img-src', `new Image().src = '${STRANGER}/x.png'`],
    [
      'a script',
      'script-src-elem',
      `document.head.append(Object.assign(document.createElement('script'), { src: '${STRANGER}/x.js' }))`,
    ],
    [
      'a script in the page',
      'script-src-elem',
      `document.head.append(Object.assign(document.createElement('script'), { textContent: 'window.bad = 1' }))`,
    ],
    [
      'a form',
      'form-action',
      `document.body.append(Object.assign(document.createElement('form'), { action: '${STRANGER}/x' })); document.querySelector('form[action]').submit()`,
    ],
    [
      'a frame',
      'frame-src',
      `document.body.append(Object.assign(document.createElement('iframe'), { src: '${STRANGER}' }))`,
    ],
  ];

  test.each(attempts)('the policy stops %s', async (_what, directive, script) => {
    const opened = await open('');
    const { page } = opened;
    await page.evaluate(() => {
      const stopped: string[] = [];
      Object.assign(window, { stopped });
      document.addEventListener('securitypolicyviolation', (event) => stopped.push(event.effectiveDirective));
    });
    await page.evaluate(script).catch(() => {});
    const stopped = (): Promise<string[]> =>
      page.evaluate(() => (window as unknown as { stopped: string[] }).stopped);
    await expect.poll(stopped).toContain(directive);
    await opened.close();
  });
});
