#!/usr/bin/python3
"""A WebKitGTK window for its driver: of a phone's size, keeping what pages store in a folder.

The driver's own small browser keeps nothing and is never as narrow as a phone.
Arguments: the folder, width and height in CSS pixels.
"""

import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402  (only after the versions are said)

folder, width, height = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
data = WebKit2.WebsiteDataManager(base_data_directory=folder, base_cache_directory=folder)
context = WebKit2.WebContext(website_data_manager=data)
context.set_automation_allowed(True)


def open_view(_session):
    window = Gtk.Window(default_width=width, default_height=height)
    view = WebKit2.WebView(web_context=context, is_controlled_by_automation=True)
    window.add(view)
    window.show_all()
    return view


context.connect(
    "automation-started",
    lambda _context, session: session.connect("create-web-view", open_view),
)
Gtk.main()
