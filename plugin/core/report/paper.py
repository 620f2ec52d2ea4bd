"""Pages of paper drawn to scale: everything is placed in millimetres of the page, so a drawing measures true in print.

PDF with fonts embedded as outlines of their own (Type 42), and without dates or names: the same input gives the same
bytes.
"""

from __future__ import annotations

from typing import Any, Dict, Iterable, Optional, Sequence

import matplotlib
import numpy as np
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.backends.backend_pdf import PdfPages
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP
from ..papers import MM_PER_INCH, Paper
from .drawing import INK, STYLE
from .labels import Words

MARGIN = 12.0  # mm; printers leave about 5 free
TITLE_HEIGHT = 14.0  # mm
#: What decides how a page looks and which bytes it has, whatever the user has set for matplotlib.
_PDF = {
    **STYLE,
    "pdf.fonttype": 42,
    "pdf.compression": 6,
    "pdf.use14corefonts": False,
    "pdf.inheritcolor": False,
    "text.usetex": False,
    "text.color": INK,
    "lines.antialiased": True,
    "path.simplify": True,
    "path.simplify_threshold": 1.0 / 9.0,
    "path.sketch": None,
    "path.effects": [],
    "savefig.bbox": None,
    "savefig.dpi": "figure",
    "savefig.facecolor": "white",
    "savefig.transparent": False,
    "figure.facecolor": "white",
}

PAGE_OF = QT_TRANSLATE_NOOP("core", "Sheet {page} of {pages}")


class Page:
    """One page; coordinates are millimetres from its lower left corner."""

    def __init__(self, paper: Paper, portrait: bool = False) -> None:
        long, short = paper.sides
        self.width, self.height = (short, long) if portrait else (long, short)
        self.figure = Figure(figsize=(self.width / MM_PER_INCH, self.height / MM_PER_INCH))
        FigureCanvasAgg(self.figure)
        self.axes: Any = self.figure.add_axes([0, 0, 1, 1])
        self.axes.set_xlim(0, self.width)
        self.axes.set_ylim(0, self.height)
        self.axes.axis("off")

    def line(self, x: Any, y: Any, color: str = INK, width: float = 0.5, style: Any = "-", order: float = 2) -> None:
        self.axes.plot(
            np.asarray(x, float), np.asarray(y, float), color=color, linewidth=width, linestyle=style, zorder=order,
            solid_capstyle="butt", dash_capstyle="butt",
        )  # fmt: skip

    def text(
        self, x: float, y: float, text: str, size: float = 7.0, across: str = "left", up: str = "center",
        turn: float = 0.0, bold: bool = False, color: str = INK, box: bool = False,
    ) -> None:  # fmt: skip
        back = {"facecolor": "white", "edgecolor": "none", "pad": 0.8} if box else None
        plain = text.replace("$", r"\$")  # no formulas
        self.axes.text(
            x, y, plain, fontsize=size, ha=across, va=up, rotation=turn, rotation_mode="default", color=color,
            fontweight="bold" if bold else "normal", bbox=back, zorder=4,
        )  # fmt: skip

    def frame(self, x: float, y: float, width: float, height: float, line: float = 0.6) -> None:
        self.axes.add_patch(Rectangle((x, y), width, height, fill=False, edgecolor=INK, linewidth=line, zorder=3))

    def title_block(self, words: Words, title: str, notes: Sequence[str], page: int, pages: int) -> None:
        """Title, notes and number of the page in a frame along the lower margin."""
        width = self.width - 2 * MARGIN
        self.frame(MARGIN, MARGIN, width, TITLE_HEIGHT, 0.8)
        self.text(MARGIN + 3, MARGIN + TITLE_HEIGHT * 0.68, title, 9.5, bold=True)
        self.text(MARGIN + 3, MARGIN + TITLE_HEIGHT * 0.26, "   ".join(notes), 7.0)
        said = words(PAGE_OF, page=page, pages=pages)
        self.text(MARGIN + width - 3, MARGIN + TITLE_HEIGHT * 0.68, said, 7.5, across="right")


def write_pages(pages: Iterable[Page], path: PathLike) -> int:
    """Write pages to a PDF and return how many; raises SurveyError when the file cannot be written.

    Pages are written as they come, so that a long sheet needs no more memory than a short one. They are to be made
    within :func:`page_style`.
    """
    count = 0
    # nothing that differs from run to run
    said: Dict[str, Optional[str]] = {"Creator": None, "Producer": None, "CreationDate": None}
    with page_style(), replace_file(path) as temporary, PdfPages(str(temporary), metadata=said) as pdf:
        for page in pages:
            pdf.savefig(page.figure)
            count += 1
    return count


def page_style() -> Any:
    """A context in which pages are drawn and written the same whatever the user's matplotlib settings."""
    return matplotlib.rc_context(_PDF)


def shown_scale(scale: float) -> str:
    return f"1 : {scale:g}"
