//! `view!`, with the grammar of Leptos and without its types.
//!
//! Leptos gives each element a type of its own, made of the types of all that is in it, and the compiler then writes
//! every way to build, change and remove it once for each. Here an element is a few calls of one builder
//! (`app/web/src/dom`), and everything drawn is one type, `dom::AnyView`. The markup is read by the parser that Leptos
//! itself reads it with; components stay Leptos's.
//!
//! What is understood: elements, `name=value`, `on:event`, `class:name`, `style:property`, `prop:value`, `node_ref`,
//! components with their props and children, text, `{blocks}`.

mod component;
mod element;
mod nodes;

use proc_macro::TokenStream;
use syn::{ItemFn, parse_macro_input};

/// Markup as one `dom::AnyView`.
#[proc_macro]
pub fn view(input: TokenStream) -> TokenStream {
    match rstml::parse2(input.into()) {
        Ok(nodes) => nodes::view(&nodes, false).into(),
        Err(why) => why.to_compile_error().into(),
    }
}

/// A component of Leptos whose body draws a `dom::AnyView`, or what can be drawn as one.
#[proc_macro_attribute]
pub fn component(_: TokenStream, function: TokenStream) -> TokenStream {
    component::component(parse_macro_input!(function as ItemFn)).into()
}
