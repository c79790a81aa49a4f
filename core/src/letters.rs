//! Letters in lower case, for finding words: the alphabets of the shop, without all of Unicode's tables,
//! which came to several kilobytes on the phone.

/// A text in lower case: basic Latin, and the accented letters of Western Europe.
pub(crate) fn lower(text: &str) -> String {
    text.chars().map(lower_letter).collect()
}

fn lower_letter(letter: char) -> char {
    match letter {
        // Latin-1 keeps its lower case 32 places further on; × is no letter.
        'À'..='Þ' if letter != '×' => char::from_u32(u32::from(letter) + 32).unwrap_or(letter),
        _ => letter.to_ascii_lowercase(),
    }
}

/// Whether a character is part of a word: a digit, or any letter at all.
pub(crate) fn is_of_word(letter: char) -> bool {
    letter.is_ascii_alphanumeric() || is_foreign(letter)
}

/// Whether it is a letter, where digits and signs stand beside letters.
pub(crate) fn is_letter(letter: char) -> bool {
    letter.is_ascii_alphabetic() || is_foreign(letter)
}

/// Beyond basic Latin: a letter, unless it is one of the signs a figure is written with.
fn is_foreign(letter: char) -> bool {
    !letter.is_ascii() && !letter.is_whitespace() && !SIGNS.contains(letter)
}

/// Signs that stand in and around figures, and punctuation.
const SIGNS: &str = "½¼¾⅛⅜⅝⅞⅓⅔±−–—·×÷°′″…“”‘’„‚«»≤≥¹²³";

/// A text with its first letter in upper case.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        std::iter::once(first.to_ascii_uppercase()).chain(letters).collect()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn western_letters_are_lowered_and_signs_left_alone() {
        assert_eq!(lower("E-Shaft ÄÖÜ É × µ 2½"), "e-shaft äöü é × µ 2½", "lower case");
        assert_eq!(capital("feeler leaf"), "Feeler leaf", "capital");
        assert_eq!(capital(""), "", "nothing");
    }

    #[test]
    fn words_end_at_signs() {
        assert!(is_of_word('7') && is_of_word('ß') && is_of_word('µ'), "these are of a word");
        assert!(
            !is_of_word('…') && !is_of_word(' ') && !is_of_word('\u{a0}') && !is_of_word('½'),
            "these are not"
        );
        assert!(is_letter('µ') && !is_letter('7'), "a digit is no letter");
    }
}
