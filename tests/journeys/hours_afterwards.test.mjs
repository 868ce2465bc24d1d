// Hours afterwards: "2 h 15 milling yesterday", in the words of whoever types it.
import { BUILD, logHours, openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

journey("two and a quarter hours of milling yesterday", async ({ thumb }) => {
  await startBuild(thumb);
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  await thumb.kept("mill 2 h 15, Me");
  await thumb.kept(/Thu,? Nov 19, Gym-floor trays/);
  await thumb.sees(/^Mill, Me 2 h 15/);
});

journey("the same length in every way it is written", async ({ thumb, go }) => {
  await startBuild(thumb);
  for (const length of ["2:15", "2.25", "2,25 h", "135 min"]) {
    await logHours(thumb, length, "cut");
    await thumb.kept("cut 2 h 15, Me");
    await thumb.undo();
    await go("bench");
  }
});

journey("from and to on another day, for the shop", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.tap(/^hours/);
  await thumb.tap("other day", "Which day");
  await thumb.type("Day", "2026-11-10");
  await thumb.tap("from and to", "How the time is said");
  await thumb.type("From", "13:00");
  await thumb.type("To", "15.30");
  await thumb.choose("Stage", "clean up");
  await thumb.choose("Worked for", "The shop");
  await thumb.tap("Keep hours");
  await thumb.kept("clean up 2 h 30, Me");
  await thumb.kept(/Tue,? Nov 10, The shop/);
});

journey("hours that overlap are kept, counted once, and said so", async ({ thumb }) => {
  await startBuild(thumb);
  const from = async (begun, ended, stage) => {
    await thumb.tap(/^hours/);
    await thumb.tap("yesterday", "Which day");
    await thumb.tap("from and to", "How the time is said");
    await thumb.type("From", begun);
    await thumb.type("To", ended);
    await thumb.choose("Stage", stage);
    await thumb.tap("Keep hours");
  };
  await from("13:00", "15:00", "sand");
  await thumb.kept("sand 2 h 00, Me");
  await from("14:30", "15:30", "shoot");
  await thumb.kept("shoot 1 h 00, Me");
  await thumb.kept("overlaps other hours, counted once");
  // Rules, 6: sand 13 to 15, shoot 14:30 to 15:30 is 1.5 h and 1 h.
  await openBuild(thumb);
  await thumb.sees("2 h 30");
  await thumb.key(/sand.*1 h 30/).waitFor();
});

journey("an end before the start is refused by its field and kept as typed", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.tap(/^hours/);
  await thumb.tap("yesterday", "Which day");
  await thumb.tap("from and to", "How the time is said");
  await thumb.type("From", "13:00");
  await thumb.type("To", "11:00");
  await thumb.tap("Keep hours");
  await thumb.refused("To", "not after 13:00", "11:00");
});
