// A day in the sample shop, Friday 20 November, from ten in the morning with the clock running: what a maker does between
// eight and six, in the order of the day, by thumb alone. Each step says how many taps it may take.
import assert from "node:assert/strict";
import { journey } from "./lib/journey.mjs";
import { phonePhoto, takePhoto } from "./lib/pictures.mjs";

const HERE = { at: "2026-11-20T10:00:00-05:00", phone: { timezoneId: "America/Toronto", locale: "en-CA" } };

journey("twenty things of one day, with a clock running", HERE, async ({ page, thumb }) => {
  const later = (time) => page.clock.fastForward(time);
  /** A thing of the day, and the taps it took, digits and words typed apart. */
  const thing = async (what, most, act) => {
    const before = thumb.taps;
    await act();
    assert.ok(thumb.taps - before <= most, `${what}: ${thumb.taps - before} taps, ${most} at most`);
  };
  await thumb.tap(/^Look around a sample shop/);
  await thumb.clock(/1:55/);

  await thing("four discs go, as at every sanding", 1, async () => {
    await thumb.tap(/sanding disc|disc/);
    await thumb.kept("used");
  });
  await thing("the camera rolls for the change of grit", 1, async () => {
    await thumb.tap(/^camera/);
    await thumb.kept(/camera|rolling/);
  });
  await later("00:04:00");
  await thing("and is cut", 1, async () => {
    await thumb.tap(/tap to cut/);
    await thumb.kept(/camera|cut/);
  });
  await thing("a photo of the court line", 1, async () => {
    await takePhoto(page, thumb, await phonePhoto(page));
    await thumb.kept("photo");
  });
  await thing("a line about two trays with a wind", 2, async () => {
    await thumb.tap(/^Note/);
    await thumb.type("What is it about?", "two trays have a wind in them, kept aside");
    await thumb.tap("Keep note");
    await thumb.kept("note");
  });
  await thing("coffee", 2, async () => {
    await thumb.place("Bench");
    await thumb.tap("Pause");
    await thumb.kept("paused");
  });
  await later("00:15:00");
  await thing("back at it", 1, async () => {
    await thumb.tap("Go on");
    await thumb.kept(/goes on|went on/);
  });
  await later("01:20:00");
  await thing("now the first coat", 1, async () => {
    await thumb.tap("finish", "Bench keys");
    await thumb.kept("finish");
    await thumb.clock(/finish/);
  });
  await thing("half a tin for it, as at the last run", 1, async () => {
    await thumb.tap(/tin hard oil/);
    await thumb.kept("used");
  });
  await thing("it was only a quarter: taken back, and the tin's level tapped", 6, async () => {
    await thumb.undo();
    await thumb.tap(/^Other/);
    await thumb.tap("sanding disc");
    await thumb.tap(/^hard oil, 750 ml.*1\/2 tin/);
    await thumb.tap(/^1\/4 tin/);
    await thumb.tap(/^Use 1\/4 tin/);
    await thumb.kept("used");
  });
  await later("01:10:00");
  await thing("stop, and it dries a day", 2, async () => {
    await thumb.place("Bench");
    await thumb.tap("Stop");
    await thumb.tap(/^24 h/);
    await thumb.kept(/dries until/);
  });
});
