"""Small pieces of HTML. Every text that comes in is escaped here, so callers pass plain text only."""

from __future__ import annotations

from html import escape
from typing import Iterable, Sequence, Tuple

Section = Tuple[str, str, str]  # anchor, title, HTML

STYLE = """
:root { color-scheme: light; }
body { font: 1rem/1.5 "Segoe UI", "Noto Sans", "DejaVu Sans", Arial, sans-serif; color: #252525; background: #fff;
  max-width: 58rem; margin: 0 auto; padding: 1rem 1.25rem 3rem; }
h1 { font-size: 1.7rem; line-height: 1.25; margin: .5rem 0; }
h2 { font-size: 1.25rem; margin: 2.2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 2px solid #8c510a; }
h3 { font-size: 1.05rem; margin: 1.6rem 0 .5rem; }
nav ol { columns: 2; padding-left: 1.4rem; margin: .3rem 0; }
a { color: #01524b; }
table { border-collapse: collapse; margin: .8rem 0 1.2rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: .3rem 0; }
th, td { border: 1px solid #bdbdbd; padding: .25rem .6rem; text-align: left; vertical-align: top; }
thead th { background: #f0ebe3; }
tbody th { font-weight: 600; }
td.number, th.number { text-align: right; }
td.text { font-family: "DejaVu Sans Mono", Consolas, monospace; font-size: .85rem; white-space: pre-wrap;
  overflow-wrap: anywhere; }
figure { margin: 1rem 0 1.5rem; }
figure img { display: block; max-width: 100%; height: auto; }
figcaption { font-size: .9em; color: #404040; margin-top: .3rem; }
.wide { overflow-x: auto; }
.caution { border-left: .35rem solid #b35806; background: #fdf3e7; padding: .6rem 1rem; margin: 1rem 0; }
.caution p { margin: .3rem 0; }
@media print {
  @page { margin: 16mm 15mm; }
  body { max-width: none; padding: 0; font-size: 10pt; }
  nav { display: none; }
  h2, h3, caption { break-after: avoid; }
  figure, tr, table.short, .caution { break-inside: avoid; }
  thead { display: table-header-group; }
  figure img { max-height: 14.5cm; width: auto; }
  a { color: inherit; text-decoration: none; }
  .caution, thead th { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
"""


_SHORT = 12  # rows; shorter tables are not parted when printed


def page(title: str, language: str, lead: str, main: str) -> str:
    """A whole document that needs no other file; ``lead`` and ``main`` are HTML."""
    return (
        f'<!DOCTYPE html>\n<html lang="{escape(language)}">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n"
        f"<header>\n<h1>{escape(title)}</h1>\n{lead}</header>\n<main>\n{main}</main>\n</body>\n</html>\n"
    )


def paragraph(text: str) -> str:
    return f"<p>{escape(text)}</p>\n"


def bullets(texts: Iterable[str]) -> str:
    return "<ul>\n" + "".join(f"<li>{escape(text)}</li>\n" for text in texts) + "</ul>\n"


def section(anchor: str, title: str, body: str) -> str:
    name = escape(anchor)
    heading = f'<h2 id="{name}-title">{escape(title)}</h2>'
    return f'<section id="{name}" aria-labelledby="{name}-title">\n{heading}\n{body}</section>\n'


def part(title: str, body: str) -> str:
    """A part of a section, with a heading of its own."""
    return f"<h3>{escape(title)}</h3>\n{body}"


def contents(title: str, entries: Iterable[Tuple[str, str]]) -> str:
    """Links to the sections ``entries``: (anchor, title)."""
    links = "".join(f'<li><a href="#{escape(anchor)}">{escape(text)}</a></li>\n' for anchor, text in entries)
    return f'<nav aria-label="{escape(title)}">\n<ol>\n{links}</ol>\n</nav>\n'


def caution(texts: Iterable[str]) -> str:
    """A box that stands out."""
    return '<div class="caution" role="note">\n' + "".join(paragraph(text) for text in texts) + "</div>\n"


def figure(uri: str, alt: str, caption: str) -> str:
    image = f'<img src="{escape(uri)}" alt="{escape(alt)}">'
    return f"<figure>\n{image}\n<figcaption>{escape(caption)}</figcaption>\n</figure>\n"


def facts(caption: str, rows: Iterable[Tuple[str, str]]) -> str:
    """A table of names and values."""
    lines = "".join(f'<tr><th scope="row">{escape(name)}</th><td>{escape(value)}</td></tr>\n' for name, value in rows)
    return f'<table class="short">\n<caption>{escape(caption)}</caption>\n<tbody>\n{lines}</tbody>\n</table>\n'


def table(caption: str, head: Sequence[str], rows: Iterable[Sequence[str]], columns: str) -> str:
    """A table with a heading row.

    ``columns`` has a letter a column for what it holds: h(eading), n(umber), w(ords), t(ext as it was read).
    """
    css = {"n": ' class="number"', "t": ' class="text"'}
    names = "".join(
        f'<th scope="col"{css["n"] if kind == "n" else ""}>{escape(name)}</th>' for name, kind in zip(head, columns)
    )
    rows = list(rows)
    lines = "".join(
        "<tr>" + "".join(_cell(value, kind, css) for value, kind in zip(row, columns)) + "</tr>\n" for row in rows
    )
    short = ' class="short"' if len(rows) <= _SHORT else ""
    head_rows = f"<caption>{escape(caption)}</caption>\n<thead>\n<tr>{names}</tr>\n</thead>"
    return f'<div class="wide">\n<table{short}>\n{head_rows}\n<tbody>\n{lines}</tbody>\n</table>\n</div>\n'


def _cell(value: str, kind: str, css: dict) -> str:
    if kind == "h":
        return f'<th scope="row">{escape(value)}</th>'
    return f"<td{css.get(kind, '')}>{escape(value)}</td>"
