//! Processes that a test started, and that end with it, also when it panics.

use rustix::process::{Pid, Signal, kill_process};
use std::fs;
use std::io::{BufRead as _, BufReader};
use std::process::{Child, Command, Stdio};
use std::thread;

/// A process started here.
#[derive(Debug)]
pub(crate) struct Process(Child);

impl Process {
    /// Starts a program and gives the first thing that `find` makes of a line it prints.
    ///
    /// # Panics
    /// The program can't be started, or ends before it has printed such a line.
    pub(crate) fn start<T>(command: &mut Command, find: impl Fn(&str) -> Option<T>) -> (Self, T) {
        let name = command.get_program().to_string_lossy().into_owned();
        let mut child = command
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| panic!("{name} can't be started: {error}"));
        let lines = BufReader::new(child.stdout.take().expect("its output is piped"));
        let process = Self(child);
        let mut lines = lines.lines().map_while(Result::ok);
        let mut said = Vec::new();
        let found = lines
            .by_ref()
            .find_map(|line| {
                let found = find(&line);
                said.push(line);
                found
            })
            .unwrap_or_else(|| panic!("{name} ended before it was ready, and said: {said:?}"));
        // What it prints later must go somewhere, or it would stop.
        thread::spawn(move || lines.for_each(drop));
        (process, found)
    }

    /// Starts a program that says nothing.
    ///
    /// # Panics
    /// The program can't be started.
    pub(crate) fn start_silent(command: &mut Command) -> Self {
        let name = command.get_program().to_string_lossy().into_owned();
        let command = command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
        Self(command.spawn().unwrap_or_else(|error| panic!("{name} can't be started: {error}")))
    }

    /// It and everything it has started.
    pub(crate) fn tree(&self) -> Tree {
        Tree::below(self.0.id())
    }

    /// Ends it at once.
    pub(crate) fn kill(&mut self) {
        // Both fail only when it has ended already.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

impl Drop for Process {
    fn drop(&mut self) {
        self.kill();
    }
}

/// The ids of a process's descendants.
#[derive(Clone, Debug)]
pub struct Tree(Vec<Pid>);

impl Tree {
    /// Everything below a process, itself not included.
    fn below(root: u32) -> Self {
        let parents = parents();
        let mut found = vec![root];
        let mut next = 0;
        while let Some(parent) = found.get(next).copied() {
            found.extend(parents.iter().filter(|(_, of)| *of == parent).map(|(id, _)| *id));
            next += 1;
        }
        Self(found.into_iter().skip(1).filter_map(pid).collect())
    }

    /// Ends all of them with SIGKILL: none gets to put anything in order.
    pub fn kill(&self) {
        for pid in &self.0 {
            // One that has ended already is as it should be.
            let _ = kill_process(*pid, Signal::KILL);
        }
    }

    /// The memory of the largest of them: in a browser with one tab, that of the page.
    #[must_use]
    pub fn largest_kilobytes(&self) -> u32 {
        let resident = |pid: &Pid| {
            let status =
                fs::read_to_string(format!("/proc/{}/status", pid.as_raw_nonzero())).ok()?;
            let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:"))?.trim();
            line.trim_end_matches(" kB").parse().ok()
        };
        self.0.iter().filter_map(resident).max().unwrap_or_default()
    }

    /// Whether none of them runs any more.
    #[must_use]
    pub fn is_gone(&self) -> bool {
        self.0.iter().all(|pid| {
            let state = fs::read_to_string(format!("/proc/{}/stat", pid.as_raw_nonzero()));
            // One that has ended and was not waited for holds nothing open.
            state.map_or(true, |state| {
                state.rsplit(')').next().is_some_and(|rest| rest.starts_with(" Z"))
            })
        })
    }
}

fn pid(id: u32) -> Option<Pid> {
    i32::try_from(id).ok().and_then(Pid::from_raw)
}

/// Every process and its parent.
fn parents() -> Vec<(u32, u32)> {
    let Ok(entries) = fs::read_dir("/proc") else { return Vec::new() };
    entries
        .flatten()
        .filter_map(|entry| {
            let id = entry.file_name().to_str()?.parse().ok()?;
            let stat = fs::read_to_string(entry.path().join("stat")).ok()?;
            // The name, in brackets, may hold anything; state and parent stand behind it.
            let parent = stat.rsplit(')').next()?.split_whitespace().nth(1)?.parse().ok()?;
            Some((id, parent))
        })
        .collect()
}
