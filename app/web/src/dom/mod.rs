//! What is drawn: one type, one builder.
//!
//! `view!` (from `app/markup`) writes calls of `Element`; whatever it draws is a `AnyView`. What signals and memos
//! hold is boxed (`cell`, `signal`, `memo`); the graph beneath, owners, contexts and components are Leptos's own. The
//! reason is the weight of the program: a type for each element and each closure weighed more than all that they do.
//!
//! Never: a screen, a word, a store. Kept by: review.

mod bridge;
mod cell;
mod each;
mod element;
mod live;
mod memo;
mod signal;
mod value;
mod view;

pub use each::each;
pub use element::{Element, typed};
pub use view::{AnyView, Children, Draw, children, component, nothing, several};

/// For every file that draws: Leptos's prelude with these in place of its own views.
pub mod prelude {
    pub use super::{
        AnyView, Children, Draw,
        cell::RwSignal,
        each,
        memo::Memo,
        signal::{MaybeProp, Signal},
        typed,
    };
    pub use benchslate_markup::{component, view};
    pub use leptos::prelude::*;
}
