// The clock: one tap starts, one changes over with no gap and no overlap, one stops; and it runs on when nobody looks.
import assert from "node:assert/strict";
import { BUILD, startBuild, startStage } from "./lib/acts.mjs";
import { stretches } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

journey("one tap starts the likely stage, one stops it", async ({ page, thumb }) => {
  await startBuild(thumb);
  const before = thumb.taps;
  await thumb.tap(/^Start /);
  await thumb.kept("begun, Me");
  assert.equal(thumb.taps - before, 1);
  await thumb.clock("0:00");
  await page.clock.fastForward("01:55:00");
  await thumb.clock("1:55");
  await thumb.tap("Stop");
  await thumb.kept("1 h 55, Me");
  assert.equal(thumb.taps - before, 2);
});

journey("a tap on another stage ends one and begins the other in the same second", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:55:00");
  await thumb.clock("1:55");
  const over = page.getByRole("region", { name: "Bench keys" }).getByRole("button").last();
  const stage = await over.innerText();
  await over.tap();
  await thumb.kept(`1 h 55, now ${stage}`);
  await thumb.clock("0:00");
  await thumb.clock(stage);
  const [first, second] = await stretches(page);
  assert.equal(first.to, second.from, "what ends and what begins share their moment");
});

journey("any other stage is two taps away", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:40:00");
  const before = thumb.taps;
  await thumb.tap(/^all \d+$/);
  await thumb.sees("one tap, same minute");
  await thumb.tap("voice-over");
  await thumb.kept("0 h 40, now voice-over");
  assert.equal(thumb.taps - before, 2);
  await thumb.clock("for the film");
});

journey("a forgotten start is put back by 15 or 30 minutes, and again", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await thumb.tap("30 minutes earlier");
  await thumb.kept("begun 7:35 a.m.");
  await thumb.clock("0:30");
  await thumb.tap("15 minutes earlier");
  await thumb.kept("begun 7:20 a.m.");
  await thumb.clock("0:45");
  await thumb.key("Begun 7:20 a.m., change it").waitFor();
});

journey("a forgotten stop: after Stop the pieces stand at the end", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("02:00:00");
  await thumb.clock("2:00");
  await thumb.tap("Stop");
  await thumb.kept("2 h 00, Me");
  await thumb.tap("30 minutes earlier", "Just stopped");
  await thumb.kept("ended 9:35 a.m., 1 h 30");
  await thumb.tap("15 minutes earlier", "Just stopped");
  await thumb.kept("ended 9:20 a.m., 1 h 15");
});

journey("any other minute is typed", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:00:00");
  await thumb.clock("1:00");
  await thumb.tap(/^Begun 8:05 a\.m\./);
  await thumb.type("Begun", "7:52");
  await thumb.tap("Keep these times");
  await thumb.kept("7:52");
  await thumb.clock("1:13");
});

journey("pause stands still and go on counts no minute twice", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  await page.clock.fastForward("01:00:00");
  await thumb.clock("1:00");
  await thumb.tap("Pause");
  await thumb.kept("paused");
  await page.clock.fastForward("00:30:00");
  await thumb.clock("paused 9:05 a.m.");
  await thumb.clock("1:00");
  await thumb.tap("Go on");
  await thumb.kept("goes on");
  await page.clock.fastForward("00:15:00");
  await thumb.clock("1:15");
  await thumb.tap("Stop");
  await thumb.kept("1 h 15, Me");
});

journey("two quick taps on the camera do once what its key read, and the mark says what is kept", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await thumb.key(/^camera/).evaluate((key) => (key.click(), key.click()));
  await thumb.kept("camera rolling");
  const [{ rolling }] = await stretches(page);
  assert.deepEqual(rolling.map((it) => it.to ?? "rolls"), ["rolls"]);
  await thumb.key(/^rolling/).waitFor();
});

journey("the camera rolls and is cut on one key", async ({ thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  await thumb.tap(/^camera/);
  await thumb.kept("camera rolling");
  await thumb.clock("rolling");
  await thumb.tap(/^rolling/);
  await thumb.kept("camera cut");
  await thumb.clock("camera off");
});

journey("the side comes from the stage and can be changed", async ({ thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  await thumb.clock("Me, for the piece");
  await thumb.tap(/^Begun /);
  await thumb.tap("film");
  await thumb.tap("Keep these times");
  await thumb.clock("Me, for the film");
});

journey("a clock is an entry: the tab is closed and it runs on", async ({ page, thumb, open }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  await page.clock.fastForward("00:20:00");
  await page.close();
  const again = await open();
  await again.thumb.clock("0:20");
  await again.page.clock.fastForward("01:00:00");
  await again.thumb.clock("1:20");
  await again.thumb.tap("Stop");
  await again.thumb.kept("1 h 20, Me");
});

journey("the head names what it is for, and a change of it is a change-over", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "clean up");
  await page.clock.fastForward("00:10:00");
  await thumb.clock("0:10");
  await thumb.tap(BUILD);
  await thumb.sheet("Work for");
  await thumb.tap("The shop");
  await thumb.kept("for The shop");
  await thumb.clock("0:00");
  await thumb.sheet(/shop/i);
  const [first, second] = await stretches(page);
  assert.equal(first.to, second.from);
});

journey("while a clock runs the Bench cell shows it on every sheet", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:55:00");
  for (const place of ["builds", "stock", "plan", "shop", "hours", "note", "expense", "new-lot", "choices"]) {
    await go(place);
    await thumb.part("Places").getByRole("link", { name: "Bench, sand, 1 h 55" }).waitFor();
  }
  await thumb.part("Places").getByRole("link", { name: /^Bench/ }).tap();
  await thumb.clock("1:55");
});

journey("undo has no timer: it is there a day later, and takes the act back", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:30:00");
  await thumb.clock("0:30");
  await thumb.tap("Stop");
  await thumb.kept("0 h 30, Me");
  await page.clock.fastForward("26:00:00");
  await go("bench");
  await thumb.undo();
  await thumb.clock("sand");
  await thumb.tap("Put back");
  await thumb.kept("0 h 30, Me");
  assert.equal(await thumb.part("Clock running").count(), 0);
});
