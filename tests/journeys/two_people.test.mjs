// Me, partner, both: together with one stretch each, or each with a clock.
import assert from "node:assert/strict";
import { addPerson, startBuild, startStage } from "./lib/acts.mjs";
import { stretches } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

/** A build, and Tobin beside me; sand runs. */
async function two(thumb) {
  await startBuild(thumb);
  await addPerson(thumb, "Tobin");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
}

journey("both: one tap, one stretch each, the same start", async ({ page, thumb }) => {
  await two(thumb);
  await page.clock.fastForward("00:30:00");
  const before = thumb.taps;
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  assert.equal(thumb.taps - before, 1);
  await thumb.clock("Me, for the piece");
  await thumb.clock("Tobin, for the piece");
  await page.clock.fastForward("01:00:00");
  await thumb.tap("Stop");
  await thumb.kept("Me and Tobin");
  const all = await stretches(page);
  assert.equal(all.length, 2);
  assert.equal(new Set(all.map((it) => it.person)).size, 2);
  assert.equal(all[0].to, all[1].to);
});

journey("together they pause, change over and stop", async ({ page, thumb }) => {
  await two(thumb);
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  await thumb.tap("Pause");
  await thumb.kept("paused");
  assert.equal(await thumb.part("Clock running").getByText(/^paused/).count(), 2);
  await thumb.tap("Go on");
  await thumb.kept("goes on");
  await page.clock.fastForward("01:00:00");
  await startStage(thumb, "finish");
  const all = await stretches(page);
  assert.equal(all.length, 4);
  assert.equal(all.filter((it) => !it.to).length, 2);
});

journey("a tap on one name parts them: each with a clock, and the keys say whose they are", async ({ page, thumb }) => {
  await two(thumb);
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  await thumb.tap("Tobin", "Who");
  await thumb.kept("by Tobin");
  await page.clock.fastForward("00:20:00");
  await thumb.key("Pause Tobin").waitFor();
  await thumb.sees("Tobin goes to");
  await thumb.tap("Stop Tobin");
  await thumb.kept("0 h 20, Tobin");
  await thumb.clock("Me, for the piece");
  assert.equal((await stretches(page)).filter((it) => !it.to).length, 1);
});

journey("with two clocks the Bench cell says so on every other sheet", async ({ thumb, go }) => {
  await two(thumb);
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  await go("stock");
  await thumb.part("Places").getByRole("link", { name: /^Bench, 2 running/ }).waitFor();
});

journey("the work goes from one to the other in one tap", async ({ page, thumb }) => {
  await two(thumb);
  await page.clock.fastForward("00:45:00");
  await thumb.clock("0:45");
  await thumb.tap("Tobin", "Who");
  await thumb.kept("by Tobin");
  await thumb.clock("Tobin, for the piece");
  const all = await stretches(page);
  assert.equal(all.filter((it) => !it.to).length, 1);
});

journey("whoever is chosen goes, by whichever key the work is begun", async ({ thumb }) => {
  await startBuild(thumb);
  await addPerson(thumb, "Lou", { rate: "22.50", paid: true });
  await thumb.place("Bench");
  // One of the two stages beside the likeliest, whichever they are by now.
  const beside = () => thumb.part("Bench keys").getByRole("button").filter({ hasText: /\S/, hasNotText: "Photo" }).last().tap();
  for (const [who, begin] of [
    ["Lou", beside],
    ["Me", beside],
    ["Lou", () => thumb.tap(/^all \d+$/).then(() => thumb.tap("sand"))],
    ["Me", () => thumb.tap(/^Start /)],
  ]) {
    await thumb.tap(who, "Who");
    await begin();
    await thumb.kept(`begun, ${who}`);
    await thumb.tap("Stop");
    // After a glue-up or a coat it is asked first how long that dries.
    const [start, dries] = [thumb.key(/^Start /), thumb.key(/^Doesn’t dry/)];
    await start.or(dries).first().waitFor();
    if (await dries.count()) await dries.tap();
    await start.waitFor();
  }
});
