//! Nodes one beside the other.

use crate::element;
use proc_macro2::TokenStream;
use quote::quote;
use rstml::Infallible;
use rstml::node::{Node, NodeBlock};
use syn::{Block, Stmt};

/// All of them as one view; `drawn` where they stand inside a drawing.
pub fn view(nodes: &[Node<Infallible>], drawn: bool) -> TokenStream {
    let mut views: Vec<TokenStream> = nodes.iter().map(|node| one(node, drawn)).collect();
    match views.len() {
        1 => views.remove(0),
        _ => quote! { crate::dom::several([#(#views),*]) },
    }
}

fn one(node: &Node<Infallible>, drawn: bool) -> TokenStream {
    match node {
        Node::Element(it) => element::view(it, drawn),
        Node::Text(it) => {
            let text = &it.value;
            quote! { crate::dom::Draw::draw(#text) }
        }
        Node::RawText(it) => {
            let text = it.to_string_best();
            quote! { crate::dom::Draw::draw(#text) }
        }
        Node::Block(NodeBlock::ValidBlock(block)) => {
            let value = value(block);
            quote! { crate::dom::Draw::draw(#value) }
        }
        Node::Fragment(it) => view(&it.children, drawn),
        Node::Comment(_) | Node::Doctype(_) | Node::Custom(_) | Node::Block(_) => {
            quote! { compile_error!("elements, components, text and blocks only") }
        }
    }
}

/// `{name}` as `name`: braces around one expression say nothing.
fn value(block: &Block) -> TokenStream {
    match block.stmts.as_slice() {
        [Stmt::Expr(value, None)] => quote! { #value },
        _ => quote! { #block },
    }
}
