//! The command line.

use anyhow::{Context, Result, bail};
use std::path::PathBuf;

/// What a person can ask of the tool.
#[derive(Debug, PartialEq)]
pub(crate) enum Command {
    /// Compile and write the finished folder.
    Build,
    /// Serve a finished folder on loopback; port 0 takes any free one.
    Serve { port: u16, dir: Option<PathBuf> },
    /// Count each language's bytes and compare them with its budget of brotli bytes; the last holds for all
    /// further ones.
    Sizes { dir: Option<PathBuf>, budgets: Vec<usize> },
}

/// Bytes after brotli that the whole app may take, fonts included.
const BUDGET: usize = 650_000;

const USAGE: &str =
    "usage: pitleaf-build build | serve [--port N] [--dir DIR] | sizes [--dir DIR] [BUDGET…]";

/// Reads the arguments after the program's name.
///
/// # Errors
/// A word that is not known, or a value that is missing or not a number.
pub(crate) fn parse(arguments: impl IntoIterator<Item = String>) -> Result<Command> {
    let mut words = arguments.into_iter();
    let command = words.next().context(USAGE)?;
    let (mut port, mut dir, mut budgets) = (0, None, Vec::new());
    while let Some(word) = words.next() {
        match (command.as_str(), word.as_str()) {
            ("serve", "--port") => port = number(words.next(), "--port")?,
            ("serve" | "sizes", "--dir") => {
                dir = Some(words.next().context("--dir needs a folder after it")?.into());
            }
            ("sizes", _) => budgets.push(number(Some(word), "the budget")?),
            _ => bail!("{command} does not take {word:?}; {USAGE}"),
        }
    }
    if budgets.is_empty() {
        budgets.push(BUDGET);
    }
    match command.as_str() {
        "build" => Ok(Command::Build),
        "serve" => Ok(Command::Serve { port, dir }),
        "sizes" => Ok(Command::Sizes { dir, budgets }),
        _ => bail!("there is no command {command:?}; {USAGE}"),
    }
}

fn number<N: std::str::FromStr>(word: Option<String>, name: &str) -> Result<N> {
    let word = word.with_context(|| format!("{name} needs a number after it"))?;
    word.parse()
        .ok()
        .with_context(|| format!("{name} must be a whole number in range, not {word:?}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parsed(line: &str) -> Result<Command, String> {
        parse(line.split_whitespace().map(String::from)).map_err(|error| error.to_string())
    }

    #[test]
    fn commands_take_their_options() {
        assert_eq!(parsed("build"), Ok(Command::Build), "build");
        assert_eq!(parsed("serve"), Ok(Command::Serve { port: 0, dir: None }), "serve");
        assert_eq!(
            parsed("serve --dir old --port 8321"),
            Ok(Command::Serve { port: 8321, dir: Some("old".into()) }),
            "serve with options"
        );
        assert_eq!(
            parsed("sizes"),
            Ok(Command::Sizes { dir: None, budgets: vec![650_000] }),
            "sizes"
        );
        assert_eq!(
            parsed("sizes --dir old 10 20"),
            Ok(Command::Sizes { dir: Some("old".into()), budgets: vec![10, 20] }),
            "sizes with options"
        );
    }

    #[test]
    fn each_fault_has_its_sentence() {
        for (line, sentence) in [
            ("", USAGE.to_owned()),
            ("paint", format!("there is no command \"paint\"; {USAGE}")),
            ("build --port 1", format!("build does not take \"--port\"; {USAGE}")),
            ("serve --port", "--port needs a number after it".to_owned()),
            (
                "serve --port 70000",
                "--port must be a whole number in range, not \"70000\"".to_owned(),
            ),
            ("serve --dir", "--dir needs a folder after it".to_owned()),
            ("sizes much", "the budget must be a whole number in range, not \"much\"".to_owned()),
        ] {
            assert_eq!(parsed(line), Err(sentence), "for {line:?}");
        }
    }
}
