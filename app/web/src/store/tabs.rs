//! Between the windows of one maker: what one writes the others show.

use std::rc::Rc;

use wasm_bindgen::prelude::*;
use web_sys::{BroadcastChannel, MessageEvent};

/// What windows say to each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// Rows up to this `seq` are there.
    UpTo(u64),
    /// Keep what is typed now: a new version is about to be taken.
    FlushDrafts,
    /// A new version has been taken in one window.
    Updated,
}

impl Word {
    fn text(self) -> String {
        match self {
            Self::UpTo(seq) => format!("up to {seq}"),
            Self::FlushDrafts => "flush drafts".to_owned(),
            Self::Updated => "updated".to_owned(),
        }
    }

    /// Nothing for what a window of another version may say.
    fn read(text: &str) -> Option<Self> {
        match text {
            "flush drafts" => Some(Self::FlushDrafts),
            "updated" => Some(Self::Updated),
            _ => text.strip_prefix("up to ")?.parse().ok().map(Self::UpTo),
        }
    }
}

/// The channel. Without one (older browsers) each window is alone, and reads on when it is shown.
pub(super) struct Tabs {
    channel: Option<BroadcastChannel>,
    _heard: Closure<dyn FnMut(MessageEvent)>,
}

impl Tabs {
    /// Joins the channel of that name; what other windows say goes to `hear`.
    pub(super) fn join(name: &str, hear: Rc<dyn Fn(Word)>) -> Self {
        let heard = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Some(word) = event.data().as_string().as_deref().and_then(Word::read) {
                hear(word);
            }
        });
        let channel = BroadcastChannel::new(name).ok();
        if let Some(channel) = &channel {
            channel.set_onmessage(Some(heard.as_ref().unchecked_ref()));
        }
        Self { channel, _heard: heard }
    }

    /// Says it to the other windows; never to this one.
    pub(super) fn say(&self, word: Word) {
        if let Some(channel) = &self.channel {
            // Refused only by a closed channel: nobody listens then.
            let _ = channel.post_message(&word.text().into());
        }
    }
}

impl Drop for Tabs {
    fn drop(&mut self) {
        if let Some(channel) = &self.channel {
            channel.set_onmessage(None);
            channel.close();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_word_is_heard_as_it_was_said() {
        for word in [Word::UpTo(0), Word::UpTo(90_071), Word::FlushDrafts, Word::Updated] {
            assert_eq!(Word::read(&word.text()), Some(word));
        }
    }

    #[test]
    fn words_of_another_version_are_not_heard() {
        for text in ["", "up to", "up to -1", "up to 1.5", "Updated", "drop everything"] {
            assert_eq!(Word::read(text), None, "{text}");
        }
    }
}
