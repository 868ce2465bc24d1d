//! What is typed and not yet said: kept so that no form is lost to a closed window.
//!
//! Kept at the latest 300 ms after a key, and at once when the page is hidden or must let go of
//! the database. Durability `relaxed`: a power cut may cost the last words of a draft, never a line
//! of the journal.

use benchslate_core::measure::Map;
use std::cell::{Cell, RefCell};

use super::act::Act;
use super::door::{Door, Mode};
use super::failure::Failure;
use super::schema::DRAFTS;

/// From the first key that isn't kept yet to its keeping, in milliseconds.
pub(super) const WAIT_MS: i32 = 300;

/// Drafts on their way to the disk. None: to be taken away.
#[derive(Default)]
pub(super) struct Waiting {
    texts: RefCell<Map<String, Option<String>>>,
    timed: Cell<bool>,
}

impl Waiting {
    /// Takes a draft in. True: nobody waits yet, so the caller sets the time.
    pub(super) fn take(&self, key: &str, text: Option<&str>) -> bool {
        self.texts.borrow_mut().insert(key.to_owned(), text.map(str::to_owned));
        !self.timed.replace(true)
    }

    /// What is on its way under a key: none, or its text, or its taking away.
    pub(super) fn peek(&self, key: &str) -> Option<Option<String>> {
        self.texts.borrow().get(key).cloned()
    }

    /// All that waits; it is then no longer here.
    pub(super) fn let_go(&self) -> Map<String, Option<String>> {
        self.timed.set(false);
        self.texts.take()
    }

    /// Takes back what could not be kept, unless something newer has come.
    pub(super) fn take_back(&self, texts: Map<String, Option<String>>) {
        let mut here = self.texts.borrow_mut();
        for (key, text) in texts {
            here.entry(key).or_insert(text);
        }
    }
}

/// Puts drafts into a transaction at once, before any pause: the connection may be about to close.
pub(super) fn put(door: &Door, texts: &Map<String, Option<String>>) -> Result<Act, Failure> {
    let act = door.begin(&[DRAFTS], Mode::Relaxed)?;
    for (key, text) in texts {
        let key = key.as_str().into();
        match text {
            Some(text) => act.put(DRAFTS, &key, &text.as_str().into())?,
            None => act.delete(DRAFTS, &key)?,
        };
    }
    act.seal();
    Ok(act)
}

/// The draft under a key.
pub(super) async fn get(door: &Door, key: &str) -> Result<Option<String>, Failure> {
    let act = door.begin(&[DRAFTS], Mode::Read)?;
    Ok(act.get(DRAFTS, &key.into())?.answered().await?.as_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_text_under_a_key_is_what_is_kept() {
        let waiting = Waiting::default();
        assert!(waiting.take("hours", Some("2")));
        assert!(!waiting.take("hours", Some("2 h 15")));
        assert_eq!(waiting.peek("hours"), Some(Some("2 h 15".to_owned())));
        assert_eq!(waiting.let_go().len(), 1);
        assert_eq!(waiting.peek("hours"), None);
        assert!(waiting.take("hours", None), "the next key sets the time again");
    }

    #[test]
    fn what_could_not_be_kept_comes_back_unless_typed_over() {
        let waiting = Waiting::default();
        waiting.take("hours", Some("2"));
        waiting.take("note", Some("oak"));
        let lost = waiting.let_go();
        waiting.take("hours", Some("3"));
        waiting.take_back(lost);
        assert_eq!(waiting.peek("hours"), Some(Some("3".to_owned())));
        assert_eq!(waiting.peek("note"), Some(Some("oak".to_owned())));
    }
}
