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
    await thumb.kept(/camera\s*rolling/);
  });
  await later("00:04:00");
  await thing("and is cut", 1, async () => {
    await thumb.tap(/tap to cut/);
    await thumb.kept(/camera\s*cut/);
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
    await thumb.kept(/goes on/);
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
    await thumb.tap(/^(Other|Use stock)/);
    await thumb.tap("sanding disc");
    await thumb.tap(/^hard oil, 750 ml.*1\/2 tin/);
    await thumb.tap(/^1\/4 tin/);
    await thumb.tap(/^Use 1\/4 tin/);
    await thumb.kept("used");
  });
  await later("01:10:00");
  await thing("stop, and it dries a day", 2, async () => {
    await thumb.tap("Stop");
    await thumb.tap(/^24 h/);
    await thumb.kept(/dries until/);
  });
  await thing("what dries stands there while Tobin cuts the film", 3, async () => {
    await thumb.tap("Tobin", "Who");
    await thumb.tap(/^all \d+$/);
    await thumb.tap("edit");
    await thumb.kept("edit");
    await thumb.key(/^finish dries until/).waitFor();
  });
  await later("00:50:00");
  await thing("at the till for discs: the total and a photo", 4, async () => {
    await thumb.place("Stock");
    await thumb.tap(/^Receipt/);
    await thumb.type("Total paid, tax in it", "42.36");
    await takePhoto(page, thumb, await phonePhoto(page));
    await page.getByRole("img").first().waitFor();
    await thumb.tap("Keep");
    await thumb.kept("42.36");
  });
  await thing("an hour of yesterday evening that nobody wrote down", 6, async () => {
    await thumb.place("Builds");
    await thumb.tap(/^Hours/);
    await thumb.tap("yesterday", "Which day");
    await thumb.type("How long", "1 h");
    await thumb.choose("Stage", "thumbnail");
    await thumb.choose("Who", "Wren");
    await thumb.tap("Keep hours");
    await thumb.kept("thumbnail");
  });
  await thing("twenty of the maple sorted", 3, async () => {
    await thumb.place("Stock");
    await thumb.tap("Sort");
    await thumb.type("good", "14");
    await thumb.type("culled", "6");
    await thumb.tap("Keep the sort");
    await thumb.kept("14 good, 6 culled");
  });
  await thing("two trays of the first run went to the market", 6, async () => {
    await thumb.place("Builds");
    await thumb.tap(/trays, first run/);
    await thumb.tap("Cost");
    await thumb.tap("What came in, items, closing");
    await thumb.tap(/^Left/);
    await thumb.type("Pieces", "2");
    await thumb.tap("Keep");
    await thumb.kept("handed over 2 sold");
  });
  await thing("and their money, with the tax in it", 2, async () => {
    await thumb.tap(/^Money in/);
    await thumb.type("Received", "248.60");
    await thumb.type("Tax in it", "13 %");
    await thumb.tap("Keep");
    await thumb.kept("income sale");
  });
  await thing("a mistake in the hours of yesterday is put right", 6, async () => {
    await thumb.place("Builds");
    await thumb.tap(/trays, second run/);
    await thumb.tap(/^thumbnail.*1 h 00|thumbnail/);
    await thumb.tap("Correct");
    await thumb.type("How long", "1 h 15");
    await thumb.tap("Keep it so");
    await thumb.kept("corrected");
  });
  await thing("what it costs by now", 3, async () => {
    await thumb.place("Builds");
    await thumb.tap(/trays, second run/);
    await thumb.tap("Cost");
    await thumb.part("What it comes to").getByText("True cost").waitFor();
  });
  await thing("and where the hours went", 1, async () => {
    await thumb.tap("Time");
    await thumb.sees(/person-hours/);
  });
  await later("01:30:00");
  await thing("home: the film's clock is stopped", 2, async () => {
    await thumb.place("Bench");
    await thumb.tap("Stop");
    await thumb.kept(/edit/);
  });
  await page.reload();
  // The coat still dries, also for a phone that was put away and taken out again.
  await thumb.sees(/^Finish, until/);
});
