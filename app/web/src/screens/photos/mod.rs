//! Photos: taken in one tap from wherever a key for it stands, and shown where the line of one stands.

mod shown;
mod taking;

pub use shown::{Pictured, full, of_entry, pictured, thumb};
pub use taking::{About, At, NoPhoto, PhotoKey, Taking, why_none};
