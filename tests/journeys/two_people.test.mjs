// Me, partner, both: together with one stretch each, or each with a clock.
import assert from "node:assert/strict";
import { addPerson, startBuild, startStage } from "./lib/acts.mjs";
import { lines, stretches } from "./lib/disk.mjs";
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

/** Two builds: Wren sands the tray, and Tobin, who comes later, edits the bench. The keys are Tobin's. */
async function eachAtABuild({ page, thumb }) {
  await startBuild(thumb, "Tray");
  await thumb.place("Builds");
  await startBuild(thumb, "Bench");
  await addPerson(thumb, "Tobin");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:30:00");
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  await thumb.tap("Tobin", "Who");
  await thumb.kept("by Tobin");
  await startStage(thumb, "edit");
  await thumb.page.locator(".who-for").tap();
  await thumb.sheet("Tobin works for");
  await thumb.tap("Tray");
  await thumb.kept("for Tray");
  await page.clock.fastForward("00:30:00");
}

/** Who runs at what, for which build: by name. */
async function atWork(page) {
  const all = (await lines(page)).map((line) => JSON.parse(line));
  const name = new Map(all.filter((it) => it.body).map((it) => [it.entry, it.body.title ?? it.body.name]));
  const running = (await stretches(page)).filter((it) => !it.to);
  return running.map((it) => `${name.get(it.person)}: ${name.get(it.bearer.build ?? it.bearer)}`).sort();
}

journey("with a clock each on two builds, every key acts on the one that is named", async ({ page, thumb }) => {
  await eachAtABuild({ page, thumb });
  assert.deepEqual(await atWork(page), ["Me: Bench", "Tobin: Tray"]);
  const acting = () => page.locator(".duo.acting");
  await thumb.sheet("Tray");
  // A name alone changes nothing that is kept.
  const before = (await lines(page)).length;
  await thumb.tap("Me", "Who");
  await thumb.sheet("Bench");
  await thumb.key("Stop Me").waitFor();
  assert.match(await acting().innerText(), /sand/);
  assert.equal((await lines(page)).length, before);
  // All stages, and what it is for, say whose they are, and are theirs.
  await thumb.tap(/^all \d+$/);
  await thumb.sheet("Me goes to");
  await thumb.tap("finish");
  await thumb.kept("finish");
  assert.deepEqual(await atWork(page), ["Me: Bench", "Tobin: Tray"]);
  assert.match(await acting().innerText(), /finish\n+Me/);
  await thumb.key("Pause Me").waitFor();
  // The camera too, and it is seen to roll when the keys are of the other.
  await thumb.tap(/^camera/);
  await thumb.kept("rolling");
  await thumb.sees("Me, for the piece, rolling");
  await thumb.tap("Tobin", "Who");
  await thumb.key(/^camera/).waitFor();
  await thumb.sees("Me, for the piece, rolling");
  assert.equal((await stretches(page)).filter((it) => it.rolling?.length).length, 1);
  await thumb.tap(/^all \d+$/);
  await thumb.sheet("Tobin goes to");
  await thumb.tap("mill");
  await thumb.kept("mill");
  assert.deepEqual(await atWork(page), ["Me: Bench", "Tobin: Tray"]);
  // Together they change over as well, and each stays at their own build.
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  await startStage(thumb, "sand");
  assert.deepEqual(await atWork(page), ["Me: Bench", "Tobin: Tray"]);
  await thumb.tap("Me", "Who");
  await thumb.kept("by Me");
  await thumb.tap("Stop Me");
  await thumb.kept("Me");
  assert.deepEqual(await atWork(page), ["Tobin: Tray"]);
});

journey("who comes later is counted from then: the start of each is a key", async ({ page, thumb }) => {
  await two(thumb);
  await page.clock.fastForward("02:00:00");
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin");
  const starts = thumb.key(/^Begun .*, change it$/);
  assert.equal(await starts.count(), 2);
  for (const box of [await starts.first().boundingBox(), await starts.last().boundingBox()]) {
    assert.ok(box.height >= 56, `the key is ${box.height} px high`);
  }
  await starts.last().tap();
  await thumb.sees("Tobin");
  await thumb.type("Begun", "9:50");
  await thumb.tap(/^Keep/);
  await thumb.kept("sand");
  await thumb.sees(/^since 0?9:50/);
  const from = (await stretches(page)).map((it) => Date.parse(it.from));
  assert.equal(new Set(from).size, 2);
  // They go together still.
  await thumb.tap("Stop");
  await thumb.kept("Me and Tobin");
  assert.equal((await stretches(page)).filter((it) => !it.to).length, 0);
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
