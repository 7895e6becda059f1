const SPAN_SECONDS = 8;

/** Pictures a second of a page with nothing in it but one square that moves: what this machine can do at this moment. */
async function picturesOfEmpty(context, rate) {
  const page = await context.newPage();
  await page.setContent('<div style="position:absolute;width:99px;height:99px;background:gold;will-change:transform">');
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  const perSecond = await page.evaluate(async (spanMs) => {
    const square = document.querySelector('div');
    const startMs = performance.now();
    let count = 0;
    while (performance.now() - startMs < spanMs) {
      await new Promise((go) => requestAnimationFrame(go));
      count += 1;
      square.style.transform = `translateX(${count}px)`;
    }
    return (1000 * count) / (performance.now() - startMs);
  }, 1500);
  await page.close();
  return perSecond;
}

/**
 * A drill's cost in each of its states.
 * @param browser the running one
 * @param context its journal filled
 * @param address where the built app is served
 * @param rate how many times the CPU is slowed
 * @returns shares of a core in per cent: of the page's main thread in a draw (and pictures a second there, and as a share of those of an empty page
 *   just before), a hold, a rest and a pause, and of the whole renderer in a rest and a pause
 */
export async function measureDrill(browser, context, address, rate) {
  const emptyPerSecond = await picturesOfEmpty(context, rate);
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  const whole = await browser.newBrowserCDPSession();
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.goto(`${address}#/line`);
  await page.locator('.begin').click();
  await page.locator('lark-drill').waitFor();
  const until = async (kind) => {
    for (;;) {
      const step = await page.evaluate(
        () =>
          document
            .querySelector('lark-app')
            .shadowRoot.querySelector('lark-line')
            .shadowRoot.querySelector('lark-drill').view?.step?.kind,
      );
      if (step === kind) return;
      await page.waitForTimeout(30);
    }
  };
  const mainSeconds = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration').value;
  };
  const wholeSeconds = async () => {
    const { processInfo } = await whole.send('SystemInfo.getProcessInfo');
    return processInfo.filter(({ type }) => type === 'renderer').reduce((sum, { cpuTime }) => sum + cpuTime, 0);
  };
  const share = async (seconds = SPAN_SECONDS) => {
    const [main, all, startMs] = [await mainSeconds(), await wholeSeconds(), performance.now()];
    await page.waitForTimeout(seconds * 1000);
    const passed = (performance.now() - startMs) / 1000;
    return {
      main: (100 * ((await mainSeconds()) - main)) / passed,
      all: (100 * ((await wholeSeconds()) - all)) / passed,
    };
  };
  await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  await until('draw');
  // Pictures that show another string.
  const pictures = page.evaluate(async (spanMs) => {
    const glance = document
      .querySelector('lark-app')
      .shadowRoot.querySelector('lark-line')
      .shadowRoot.querySelector('lark-drill')
      .shadowRoot.querySelector('lark-glance');
    const seen = new Set();
    const startMs = performance.now();
    while (performance.now() - startMs < spanMs) {
      await new Promise((go) => requestAnimationFrame(go));
      seen.add(glance.shadowRoot.querySelector('.string').getAttribute('d'));
    }
    return (1000 * seen.size) / (performance.now() - startMs);
  }, 1500);
  const draw = await share(1.5);
  const perSecond = await pictures;
  await until('hold');
  await page.waitForTimeout(1500);
  const hold = await share();
  await until('rest');
  await page.waitForTimeout(1500);
  const rest = await share();
  await page.keyboard.press('KeyP');
  // The audio clock is stopped after ten seconds.
  await page.waitForTimeout(12_000);
  const pause = await share();
  await page.close();
  return [draw.main, perSecond, perSecond / emptyPerSecond, hold.main, rest.main, pause.main, rest.all, pause.all];
}
