import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { chromiumPath } from './support/chromium.ts';

/**
 * A heart rate belt by Chromium's BluetoothEmulation: chosen, connected, heard, lost and found again. Chromium's emulation
 * knows no notifications, so a packet comes by a read of the same characteristic, which raises the same event.
 */
const BELT = '09:09:09:09:09:09';
const uuid = (short: string): string => `0000${short}-0000-1000-8000-00805f9b34fb`;

let browser: Browser;
let page: Page;
let emulation: CDPSession;

/** The domain is newer than the library's types. */
const send = async (method: string, params: object = {}): Promise<Record<string, string>> =>
  (await (emulation.send as (m: string, p: object) => Promise<unknown>)(method, params)) as Record<
    string,
    string
  >;
const on = (event: string, act: (e: Record<string, string>) => Promise<unknown>): void => {
  (emulation.on as (e: string, f: (p: Record<string, string>) => void) => void)(event, (e) => void act(e));
};

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--enable-features=WebBluetooth',
      '--enable-experimental-web-platform-features',
    ],
  });
  page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  emulation = await browser.newBrowserCDPSession();
  const chooser = await page.context().newCDPSession(page);
  await page.addInitScript(() => {
    const { prototype } = (window as unknown as { BluetoothRemoteGATTCharacteristic: { prototype: Channel } })
      .BluetoothRemoteGATTCharacteristic;
    interface Channel {
      startNotifications: () => Promise<Channel>;
    }
    const { startNotifications } = prototype;
    prototype.startNotifications = function (this: Channel) {
      Object.assign(window, { channel: this });
      return startNotifications.call(this);
    };
  });
  await page.goto(`${inject('origin')}/#/practice`);
  await send('BluetoothEmulation.enable', { state: 'powered-on', leSupported: true });
  await send('BluetoothEmulation.simulatePreconnectedPeripheral', {
    address: BELT,
    name: 'belt',
    manufacturerData: [],
    knownServiceUuids: [uuid('180d')],
  });
  await chooser.send('DeviceAccess.enable');
  let chosen = false;
  chooser.on('DeviceAccess.deviceRequestPrompted', ({ id, devices }) => {
    const [device] = devices;
    if (chosen || device === undefined) return;
    chosen = true;
    void chooser.send('DeviceAccess.selectPrompt', { id, deviceId: device.id });
  });
  on('BluetoothEmulation.gattOperationReceived', async ({ address, type }) => {
    if (type === 'discovery') {
      const { serviceId } = await send('BluetoothEmulation.addService', {
        address,
        serviceUuid: uuid('180d'),
      });
      const { characteristicId } = await send('BluetoothEmulation.addCharacteristic', {
        serviceId,
        characteristicUuid: uuid('2a37'),
        properties: { notify: true, read: true },
      });
      await send('BluetoothEmulation.addDescriptor', { characteristicId, descriptorUuid: uuid('2902') });
    }
    await send('BluetoothEmulation.simulateGATTOperationResponse', { address, type, code: 0 });
  });
  on('BluetoothEmulation.characteristicOperationReceived', async ({ characteristicId, type }) => {
    // 150 a minute, contact, two intervals: the packet of test/outside/bluetooth.test.ts.
    const data = Buffer.from([0x16, 0x96, 0x99, 0x01, 0x9a, 0x01]).toString('base64');
    await send('BluetoothEmulation.simulateCharacteristicOperationResponse', {
      characteristicId,
      type,
      code: 0,
      ...(type === 'read' ? { data } : {}),
    });
  });
}, 60_000);

afterAll(async () => {
  await browser?.close();
});

const belt = () => page.getByRole('button', { name: /Heart rate belt/ });

test('a belt is chosen and connected, and comes again after it was lost', { timeout: 60_000 }, async () => {
  await belt().click();
  await expect.poll(() => belt().textContent(), { timeout: 15_000 }).toContain('connected');
  await send('BluetoothEmulation.simulateGATTDisconnection', { address: BELT });
  await expect.poll(() => belt().textContent(), { timeout: 15_000 }).toContain('looking');
  await expect.poll(() => belt().textContent(), { timeout: 20_000 }).toContain('connected');
});

test('its beats are seen in the session', { timeout: 60_000 }, async () => {
  await page.getByLabel('Where').selectOption('indoors');
  await page.getByRole('button', { name: 'Switch on' }).click();
  await page.getByRole('button', { name: 'Start' }).click();
  await page.evaluate(async () => {
    await (window as unknown as { channel: { readValue: () => Promise<unknown> } }).channel.readValue();
  });
  await page.getByText('150 beats').waitFor({ timeout: 5000 });
});
