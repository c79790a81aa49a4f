//! String literals among the tokens of an item, and which of them are texts.

use crate::language::said;
use litrs::StringLit;
use proc_macro::{Delimiter, Group, Ident, Literal, Punct, Spacing, Span, TokenStream, TokenTree};
use std::collections::HashSet;

/// Whose words are for the programmer.
const PANICS: [&str; 6] = ["expect", "panic", "unreachable", "assert", "assert_eq", "assert_ne"];

/// Which literals of an item are texts.
pub(crate) enum Texts {
    All,
    BehindFields(HashSet<String>),
}

impl Texts {
    /// By the fields named, all without any.
    pub(crate) fn named(fields: TokenStream) -> Self {
        let names: HashSet<String> = fields
            .into_iter()
            .filter(|token| matches!(token, TokenTree::Ident(_)))
            .map(|token| token.to_string())
            .collect();
        if names.is_empty() { Self::All } else { Self::BehindFields(names) }
    }
}

/// One text, and behind it what fills its placeholders.
pub(crate) fn text(input: TokenStream) -> TokenStream {
    let mut tokens = input.into_iter();
    let literal = match tokens.next() {
        // What another macro took as a literal comes in a group without brackets.
        Some(TokenTree::Group(group)) => group.stream().into_iter().next(),
        other => other,
    };
    let Some(TokenTree::Literal(literal)) = literal else {
        return error(Span::call_site(), "tr! begins with its text");
    };
    let Some(english) = value(&literal) else {
        return error(literal.span(), "tr! begins with a string");
    };
    let translated = match said(&literal.span().file(), &english) {
        Some(text) => literal_of(&text, literal.span()),
        None => return missing(&literal, &english),
    };
    let rest: Vec<TokenTree> = tokens.collect();
    if rest.is_empty() && !english.contains('{') {
        return TokenTree::Literal(translated).into();
    }
    let mut arguments = vec![TokenTree::Literal(translated)];
    arguments.extend(rest);
    let span = Span::mixed_site();
    [
        TokenTree::Ident(Ident::new("format", span)),
        TokenTree::Punct(Punct::new('!', Spacing::Alone)),
        TokenTree::Group(Group::new(Delimiter::Parenthesis, arguments.into_iter().collect())),
    ]
    .into_iter()
    .collect()
}

/// An item with its texts in the language that is compiled.
pub(crate) fn translate(item: TokenStream, texts: &Texts) -> TokenStream {
    let mut done: Vec<TokenTree> = Vec::new();
    for token in item {
        match token {
            TokenTree::Group(group) if stays(&done, &group) => done.push(group.into()),
            TokenTree::Group(group) => {
                let inside = translate(group.stream(), texts);
                let mut made = Group::new(group.delimiter(), inside);
                made.set_span(group.span());
                done.push(made.into());
            }
            TokenTree::Literal(literal) if is_meant(&done, texts) => match value(&literal) {
                Some(english) if has_letters(&english) => {
                    match said(&literal.span().file(), &english) {
                        Some(text) => done.push(literal_of(&text, literal.span()).into()),
                        None if matches!(texts, Texts::All) && may_be_a_name(&english) => {
                            done.push(literal.into());
                        }
                        None => done.extend(missing(&literal, &english)),
                    }
                }
                _ => done.push(literal.into()),
            },
            other => done.push(other),
        }
    }
    done.into_iter().collect()
}

/// An attribute, or the words of a panic.
fn stays(before: &[TokenTree], group: &Group) -> bool {
    match group.delimiter() {
        Delimiter::Bracket => match before {
            [.., TokenTree::Punct(hash), TokenTree::Punct(mark)] if mark.as_char() == '!' => {
                hash.as_char() == '#'
            }
            [.., TokenTree::Punct(hash)] => hash.as_char() == '#',
            _ => false,
        },
        Delimiter::Parenthesis => {
            let called = match before {
                [.., called, TokenTree::Punct(mark)] if mark.as_char() == '!' => Some(called),
                _ => before.last(),
            };
            matches!(called, Some(TokenTree::Ident(name)) if PANICS.contains(&name.to_string().as_str()))
        }
        Delimiter::Brace | Delimiter::None => false,
    }
}

fn is_meant(before: &[TokenTree], texts: &Texts) -> bool {
    match texts {
        Texts::All => true,
        Texts::BehindFields(names) => matches!(
            before,
            [.., TokenTree::Ident(name), TokenTree::Punct(colon)]
                if colon.as_char() == ':' && names.contains(&name.to_string())
        ),
    }
}

fn value(literal: &Literal) -> Option<String> {
    StringLit::try_from(literal).ok().map(|string| string.value().to_owned())
}

fn has_letters(text: &str) -> bool {
    // What is between braces is a placeholder.
    let outside =
        text.split('{').enumerate().map(|(at, piece)| match (at, piece.split_once('}')) {
            (0, _) | (_, None) => piece,
            (_, Some((_, behind))) => behind,
        });
    outside.flat_map(str::chars).any(char::is_alphabetic)
}

fn may_be_a_name(text: &str) -> bool {
    !text.contains(' ') && !text.starts_with(char::is_uppercase)
}

fn literal_of(text: &str, span: Span) -> Literal {
    let mut literal = Literal::string(text);
    // The place of the English: a placeholder finds its variable from there.
    literal.set_span(span);
    literal
}

fn missing(literal: &Literal, english: &str) -> TokenStream {
    error(literal.span(), &format!("german.po has no text for: {english}"))
}

fn error(span: Span, words: &str) -> TokenStream {
    let tokens: TokenStream = [
        TokenTree::Ident(Ident::new("compile_error", span)),
        TokenTree::Punct(Punct::new('!', Spacing::Alone)),
        TokenTree::Group(Group::new(
            Delimiter::Brace,
            TokenTree::Literal(Literal::string(words)).into(),
        )),
    ]
    .into_iter()
    .collect();
    tokens
        .into_iter()
        .map(|mut token| {
            token.set_span(span);
            token
        })
        .collect()
}
