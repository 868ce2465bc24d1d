//! Fresh ids: UUID version 7 (RFC 9562), which sort by the time they were made.

use std::cell::RefCell;

use uuid::{ContextV7, Timestamp, Uuid};

use crate::platform::clock;

thread_local! {
    // Counts up inside one millisecond, so that ids of one act keep their order.
    static CONTEXT: RefCell<ContextV7> = const { RefCell::new(ContextV7::new()) };
}

/// A fresh id, as 16 bytes.
pub fn fresh_id() -> [u8; 16] {
    fresh().into_bytes()
}

/// A fresh id, as text.
pub fn fresh_id_text() -> String {
    fresh().hyphenated().to_string()
}

fn fresh() -> Uuid {
    let ms = u64::try_from(clock::now()).unwrap_or_default();
    let nanos = u32::try_from(ms % 1000 * 1_000_000).unwrap_or_default();
    CONTEXT.with_borrow(|context| Uuid::new_v7(Timestamp::from_unix(context, ms / 1000, nanos)))
}
