//! The builder's settings: what may be lost, and is set again in a moment.

use pitleaf_core::kept::{Json, Kept, Refused};
use pitleaf_core::limits::LengthsIn;
use pitleaf_core::{kept_fields, kept_words};

/// Under which key they are kept.
pub const KEY: &str = "pitleaf.settings";

/// How the page looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Light {
    /// As the phone is set.
    #[default]
    Phone,
    /// Marking blue.
    Dark,
    /// Paper, for the sun.
    Sun,
}

kept_words!(Light {
    Phone = "Phone",
    Dark = "Dark",
    Sun = "Sun",
});

/// How large what is touched is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hands {
    /// For a bare thumb.
    #[default]
    Dry,
    /// For wet, greasy or gloved hands.
    Wet,
}

kept_words!(Hands { Dry = "Dry", Wet = "Wet" });

/// Everything set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Settings {
    /// The look.
    pub light: Light,
    /// Keys for the left thumb.
    pub left_handed: bool,
    /// A short buzz on every key.
    pub buzz: bool,
    /// How large what is touched is.
    pub hands: Hands,
    /// Whether verdicts and steps are read out.
    pub aloud: bool,
    /// The stop of the first two minutes.
    pub tour: Option<u8>,
    /// The build in hand.
    pub build: Option<String>,
    /// Rows on the bench.
    pub favourites: Vec<String>,
    /// What lengths are typed and shown in.
    pub lengths: LengthsIn,
    /// When the book was last saved as a file, and how many entries it had.
    pub carried: Option<(u64, usize)>,
    /// Whether the browser was asked to keep the storage.
    pub asked_to_keep: bool,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            light: Light::Phone,
            left_handed: false,
            buzz: false,
            hands: Hands::Dry,
            aloud: false,
            tour: None,
            build: None,
            favourites: [
                "side-seal-gap-na",
                "side-seal-gap-fi",
                "end-play",
                "apex-seal-height",
                "side-housing-warp",
            ]
            .map(str::to_owned)
            .to_vec(),
            lengths: LengthsIn::AsWritten,
            carried: None,
            asked_to_keep: false,
        }
    }
}

impl Kept for Settings {
    fn json(&self) -> Json<'_> {
        let Self {
            light,
            left_handed,
            buzz,
            hands,
            aloud,
            tour,
            build,
            favourites,
            lengths,
            carried,
            asked_to_keep,
        } = self;
        kept_fields!(@write light, left_handed, buzz, hands, aloud, tour, build, favourites, lengths, carried, asked_to_keep)
    }

    fn of_json(json: &Json<'_>) -> Result<Self, Refused> {
        let fields = json.fields()?;
        let favourites = match fields.at("favourites") {
            Json::Missing => Self::default().favourites,
            favourites => Kept::of_json(favourites)?,
        };
        Ok(Self {
            light: Kept::or_usual(fields.at("light"))?,
            left_handed: Kept::or_usual(fields.at("left_handed"))?,
            buzz: Kept::or_usual(fields.at("buzz"))?,
            hands: Kept::or_usual(fields.at("hands"))?,
            aloud: Kept::or_usual(fields.at("aloud"))?,
            tour: Kept::or_usual(fields.at("tour"))?,
            build: Kept::or_usual(fields.at("build"))?,
            favourites,
            lengths: Kept::or_usual(fields.at("lengths"))?,
            carried: Kept::or_usual(fields.at("carried"))?,
            asked_to_keep: Kept::or_usual(fields.at("asked_to_keep"))?,
        })
    }
}

impl Settings {
    /// Puts a row on the bench, or takes it off.
    pub fn toggle_favourite(&mut self, row: &str) {
        if self.favourites.iter().any(|old| old == row) {
            self.favourites.retain(|old| old != row);
        } else {
            self.favourites.push(row.to_owned());
        }
    }
}
