//! Every limit, once. Forms, import and refusals read these; nothing else repeats them.
//!
//! A limit is set where no shop comes near it and every sum of a journal within it stays far
//! from the edge of the inner arithmetic (128 bits of millionths: 1.7 × 10³² units).

/// Greatest size of one amount of money or one quantity, in whole units of whatever it counts.
pub const MOST_UNITS: i64 = 1_000_000_000_000;
/// Most digits after the point in an amount that a person types, or that is kept exactly.
pub const MOST_DECIMALS: usize = 6;
/// Most digits in a stored decimal, before and after the point together.
pub const MOST_DIGITS: usize = 28;
/// Longest text that a field for a number, a length, a time or a day looks at, in characters.
pub const MOST_TYPED: usize = 60;
/// Greatest number under the line of a fraction.
pub const MOST_UNDER_LINE: i64 = 10_000;
/// Longest film, in seconds: a hundred hours.
pub const MOST_FILM_SECONDS: u32 = 360_000;
/// Most hours in one amount of work, a drying time or the life of a tool.
pub const MOST_HOURS: i64 = 1_000_000;
/// Longest stretch of work that is typed as hours, in seconds: a day.
pub const MOST_STRETCH: i64 = 86_400;
/// Longest time that somebody is free for the shop in one go, in hours.
pub const MOST_FREE_HOURS: i64 = 16;
/// Greatest share that is typed in hundredths.
pub const MOST_PERCENT: i64 = 1_000;
/// Most things in one whole number: items of a batch, a tool's blades.
pub const MOST_THINGS: u32 = 1_000_000;
/// Most takes of one shot.
pub const MOST_TAKES: u32 = 99;
/// Longest take of a shot as it is planned, in seconds: an hour.
pub const MOST_TAKE_SECONDS: u32 = 3_600;
/// Longest time to set up a shot, in minutes: a day.
pub const MOST_SET_UP_MINUTES: u32 = 1_440;
/// Most real seconds at the camera for one of footage.
pub const MOST_REAL_SECONDS: u32 = 100;
/// Longest name of a shot, in letters.
pub const MOST_SHOT: usize = 120;
/// Longest name of a clip, in letters.
pub const MOST_CLIP: usize = 60;
/// First year of a calendar day.
pub const FIRST_YEAR: i32 = 1900;
/// Last year of a calendar day.
pub const LAST_YEAR: i32 = 2200;
/// Greatest distance of local time from UTC, in seconds: no zone goes further.
pub const MOST_OFFSET: i32 = 18 * 3600;
/// Longest file that is brought in, in bytes.
pub const MOST_FILE_BYTES: usize = 128_000_000;
/// Most lines in a file that is brought in: 100 a day for ten years.
pub const MOST_FILE_LINES: usize = 400_000;
/// Longest picture file that is taken, in bytes: a phone's largest photo several times over.
pub const MOST_PHOTO_FILE_BYTES: usize = 64_000_000;
/// Most pixels of a picture that is taken: four bytes each while it is made smaller.
pub const MOST_PHOTO_PIXELS: u64 = 120_000_000;
/// Long side of a photo as it is kept, in pixels.
pub const PHOTO_SIDE: u32 = 1600;
/// Long side of the small one that lists show, in pixels: twice the 112 that it is drawn.
pub const THUMB_SIDE: u32 = 224;
/// Longest caption of a photo, in letters.
pub const MOST_CAPTION: usize = 200;
/// Longest line of a journal, in bytes.
pub const MOST_LINE_BYTES: usize = 1_000_000;
/// How deep the objects and arrays of a line that is brought in lie in each other; the deepest of ours has five.
pub const MOST_LEVELS: usize = 20;
/// Longest backup, in bytes. A ZIP counts in 32 bits; beyond them not every program can read it.
pub const MOST_BACKUP_BYTES: u64 = 4_000_000_000;
/// Of these, kept free for what stands behind the photos of a backup: the list of its parts, twice.
pub const BACKUP_END_BYTES: u64 = 32_000_000;
/// Most photos in a backup: 16 a day for ten years. A ZIP counts its parts in 16 bits.
pub const MOST_BACKUP_PHOTOS: usize = 60_000;
/// Longest `manifest.json` of a backup, in bytes: that of [`MOST_BACKUP_PHOTOS`], and room.
pub const MOST_MANIFEST_BYTES: usize = 16_000_000;
/// How many times longer than its packed bytes a part of a backup may be. A journal packs to a tenth.
pub const MOST_PACKED: u64 = 200;
/// Most pieces in one plan of cuts: more than a van of parts, and a plan in a blink.
pub const MOST_PIECES: u32 = 2_000;

/// Most lengths of board in one plan of cuts.
pub const MOST_LENGTHS: usize = 8;
