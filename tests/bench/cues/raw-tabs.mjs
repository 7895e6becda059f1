import { chromium } from 'playwright-core';
import { chromiumFlags, findChromium } from '../../../scripts/find-chromium.mjs';

/** Flags of the usual driver that keep a hidden page as fast as a seen one; without them it is slowed as at home. */
const UNSLOWED = [
  '--disable-background-timer-throttling',
  '--disable-backgrounding-occluded-windows',
  '--disable-renderer-backgrounding',
];

/**
 * Starts a Chromium whose tabs can truly be hidden.
 *
 * @param flags more of its flags, such as a film for its camera
 */
export function launchWithTabs(flags = []) {
  const args = [...chromiumFlags, ...flags];
  return chromium.launch({ executablePath: findChromium(), args, ignoreDefaultArgs: UNSLOWED });
}

/**
 * A tab spoken to through the browser's own protocol: the usual driver tells every page that it is seen and has the focus.
 *
 * @param browser from `launchWithTabs`
 * @param url what to open
 * @returns the tab: `evaluate` takes an expression and gives its value, `hide` brings another tab to the front, `show` brings it back
 */
export async function openTab(browser, url) {
  const session = await browser.newBrowserCDPSession();
  const { targetId } = await session.send('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await session.send('Target.attachToTarget', { targetId, flatten: false });
  const asked = new Map();
  let tellLoaded = () => undefined;
  let id = 0;
  session.on('Target.receivedMessageFromTarget', ({ sessionId: from, message }) => {
    if (from !== sessionId) return;
    const { id: answered, method, result, error } = JSON.parse(message);
    if (method === 'Page.loadEventFired') tellLoaded();
    const waiting = asked.get(answered);
    asked.delete(answered);
    if (error) waiting?.reject(new Error(error.message));
    else waiting?.resolve(result);
  });
  const send = (method, params = {}) =>
    new Promise((resolve, reject) => {
      id += 1;
      asked.set(id, { resolve, reject });
      session
        .send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method, params }) })
        .catch(reject);
    });
  const isLoaded = new Promise((resolve) => {
    tellLoaded = resolve;
  });
  await send('Page.enable');
  await send('Page.navigate', { url });
  await isLoaded;
  let other;
  return {
    send,
    async evaluate(expression) {
      const options = { expression, awaitPromise: true, returnByValue: true, userGesture: true };
      const { result, exceptionDetails } = await send('Runtime.evaluate', options);
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
      return result.value;
    },
    async hide() {
      other ??= (await session.send('Target.createTarget', { url: 'about:blank' })).targetId;
      await session.send('Target.activateTarget', { targetId: other });
    },
    show: () => session.send('Target.activateTarget', { targetId }),
    async close() {
      await session.send('Target.closeTarget', { targetId });
      if (other) await session.send('Target.closeTarget', { targetId: other });
      await session.detach();
    },
  };
}
