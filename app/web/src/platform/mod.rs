//! What the browser knows and the trade asks: the time, the zone, the reader's language, idle
//! moments, files. Small functions over web-sys; no state of the shop.

pub mod announce;
pub mod awake;
pub mod card;
pub mod clock;
pub mod download;
pub mod fetch;
pub mod idle;
pub mod intl;
pub mod picture;
pub mod sharing;
