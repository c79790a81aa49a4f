//! What a type says of itself: its fields, its words, its variants.

/// Says which fields a type has, in the order written, and the key where it is not the field's name.
/// Behind it: `or_usual` where older entries lack it, `left_out` where it is also not written while it
/// says nothing.
#[macro_export]
macro_rules! kept_fields {
    ($type:ty { $($field:ident $(= $key:literal)? $(: $how:ident)?),+ $(,)? }) => {
        impl $crate::Kept for $type {
            fn json(&self) -> $crate::Json<'_> {
                let Self { $($field),+ } = self;
                $crate::kept_fields!(@write $($field $(= $key)? $(: $how)?),+)
            }

            fn of_json(json: &$crate::Json<'_>) -> Result<Self, $crate::Refused> {
                let fields = json.fields()?;
                Ok(Self { $($field: $crate::kept_fields!(@read fields $field $(= $key)? $(: $how)?)),+ })
            }
        }
    };
    (@write $($field:ident $(= $key:literal)? $(: $how:ident)?),+) => {{
        let mut fields = $crate::Fields::default();
        $($crate::kept_fields!(@put fields $field $(= $key)? $(: $how)?);)+
        $crate::Json::Fields(fields)
    }};
    (@put $fields:ident $field:ident $(= $key:literal)? : left_out) => {
        if !$crate::Kept::is_left_out($field) {
            $crate::kept_fields!(@put $fields $field $(= $key)?);
        }
    };
    (@put $fields:ident $field:ident $(= $key:literal)? $(: or_usual)?) => {
        $fields.put($crate::kept_fields!(@key $field $(= $key)?), $crate::Kept::json($field))
    };
    (@read $fields:ident $field:ident $(= $key:literal)?) => {
        $crate::Kept::of_json($fields.at($crate::kept_fields!(@key $field $(= $key)?)))?
    };
    (@read $fields:ident $field:ident $(= $key:literal)? : $how:ident) => {
        $crate::Kept::or_usual($fields.at($crate::kept_fields!(@key $field $(= $key)?)))?
    };
    (@key $field:ident) => { stringify!($field) };
    (@key $field:ident = $key:literal) => { $key };
}

/// Says by which word each variant of an enumeration is kept.
#[macro_export]
macro_rules! kept_words {
    ($type:ty { $($variant:ident = $word:literal),+ $(,)? }) => {
        impl $crate::Kept for $type {
            fn json(&self) -> $crate::Json<'_> {
                $crate::Json::Text(match self { $(Self::$variant => $word),+ }.into())
            }

            fn of_json(json: &$crate::Json<'_>) -> Result<Self, $crate::Refused> {
                Ok([$(Self::$variant),+][json.one_of(&[$($word),+])?])
            }
        }
    };
}

/// Says by which name each variant of an enumeration is kept, and with which fields (as in
/// [`kept_fields!`](crate::kept_fields)) or which one thing inside.
#[macro_export]
macro_rules! kept_variants {
    ($type:ty { $($name:literal = $variant:ident
        $({ $($field:ident $(= $key:literal)? $(: $how:ident)?),+ })? $(($inside:ident))?),+ $(,)? }) => {
        impl $crate::Kept for $type {
            fn json(&self) -> $crate::Json<'_> {
                match self {
                    $(Self::$variant $({ $($field),+ })? $(($inside))? => $crate::kept_variants!(
                        @write $name $({ $($field $(= $key)? $(: $how)?),+ })? $(($inside))?
                    ),)+
                }
            }

            fn of_json(json: &$crate::Json<'_>) -> Result<Self, $crate::Refused> {
                let (name, inside) = json.named()?;
                Ok(match name {
                    $($name => $crate::kept_variants!(
                        @read inside $variant $({ $($field $(= $key)? $(: $how)?),+ })? $(($inside))?
                    ),)+
                    _ => return Err($crate::unknown(name)),
                })
            }
        }
    };
    (@write $name:literal) => { $crate::Json::Text($name.into()) };
    (@write $name:literal ($inside:ident)) => {
        $crate::Json::variant($name, $crate::Kept::json($inside))
    };
    (@write $name:literal { $($fields:tt)+ }) => {
        $crate::Json::variant($name, $crate::kept_fields!(@write $($fields)+))
    };
    (@read $json:ident $variant:ident) => { Self::$variant };
    (@read $json:ident $variant:ident ($inside:ident)) => {
        Self::$variant($crate::Kept::of_json($json)?)
    };
    (@read $json:ident $variant:ident { $($field:ident $(= $key:literal)? $(: $how:ident)?),+ }) => {{
        let fields = $json.fields()?;
        Self::$variant { $($field: $crate::kept_fields!(@read fields $field $(= $key)? $(: $how)?)),+ }
    }};
}
