import type { Page } from 'playwright-core';

/** Presses a button that asks for a file, and gives it one. */
export const giveFile = async (page: Page, button: string, name: string, text: string): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: button }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
};
