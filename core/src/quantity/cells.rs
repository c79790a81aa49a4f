//! A row of figures, typed or pasted, parted into its texts.

/// The texts of a row: parted by blanks, tabs or semicolons, so that a comma can be the decimal one; a row
/// without any of those is parted by its commas.
pub(crate) fn cells(line: &str) -> Vec<&str> {
    let mut cells = parted(line);
    // "10.5, 20.3": the comma parts, the point is the decimal one.
    for cell in &mut cells {
        *cell = cell.trim_end_matches(',');
    }
    cells
}

/// The same with the commas at their ends, as they are while someone types.
pub(crate) fn parted(line: &str) -> Vec<&str> {
    let blanks = |c: char| c.is_whitespace() || c == ';';
    let cells: Vec<&str> = line.split(blanks).filter(|cell| !cell.is_empty()).collect();
    if let [only] = cells[..] { only.split(',').collect() } else { cells }
}
