// Renders the icons in public/icons from their drawings. Run after a change of a drawing:
//   node app/xtask/icons.mjs
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

const root = new URL("../../", import.meta.url);
const { chromium } = createRequire(new URL("tests/package.json", root))("playwright-core");
const browser = await chromium.launch({ executablePath: process.env.BENCHSLATE_CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox", "--disable-gpu"] });
for (const [drawing, size, name] of [["mark", 192, "icon-192"], ["mark", 512, "icon-512"], ["maskable", 512, "maskable-512"]]) {
  const svg = readFileSync(new URL(`public/icons/${drawing}.svg`, root), "utf8");
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  await page.screenshot({ path: new URL(`public/icons/${name}.png`, root).pathname });
}
await browser.close();
