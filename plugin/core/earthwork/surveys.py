"""What is said of two surveys that are compared: their height offset, and noise as unchanged ground tells it."""

from __future__ import annotations

from typing import List, Optional

from ..confidence import NORMAL_95
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .comparison import Comparison
from .places import SAME
from .small_depths import Settling
from .unchanged import LARGEST_OFFSET
from .volume import Volume

NOISE_OFF = Text(
    "earthwork.noise_off",
    QT_TRANSLATE_NOOP(
        "core",
        "Noise alone makes about {excess:.1f} m³ of cut and as much fill between the triangles; this is taken off, so "
        "that ground that did not change comes to 0 on average. So a volume can be below 0: then none was found.",
    ),
)
OFFSET_FOUND = Text(
    "earthwork.offset_found",
    QT_TRANSLATE_NOOP(
        "core",
        "{design_name} lies {offset:+.4f} m above {existing_name} where nothing changed (± {half:.4f} m, 95 %), judged "
        "from {area:.0f} m² that agree. This is taken off. If that ground did rise or sink, give the offset.",
    ),
)
OFFSET_GIVEN = Text(
    "earthwork.offset_given",
    QT_TRANSLATE_NOOP(
        "core", "{design_name} is taken to lie {offset:+.4f} m above {existing_name}, as given; this is taken off."
    ),
)
NO_UNCHANGED_GROUND = Text(
    "earthwork.no_unchanged_ground",
    QT_TRANSLATE_NOOP(
        "core",
        "Too little ground agrees within {most:g} m to tell the height offset between {existing_name} and "
        "{design_name}: none is taken off, and the intervals rest on its standard deviation of {sigma:g} m. Give the "
        "offset if you know it.",
    ),
)
ALIKE = Text(
    "earthwork.alike",
    QT_TRANSLATE_NOOP(
        "core",
        "{existing_name} and {design_name} have the same heights everywhere, which two surveys never have: one was "
        "given twice, or was made from the other. Give another file if that is not what you meant.",
    ),
    weight=2,
)
NOISE_DIFFERS = Text(
    "earthwork.noise_differs",
    QT_TRANSLATE_NOOP(
        "core",
        "Where nothing changed the surveys differ {scale:.1f} times as much as the noise stated for them makes likely; "
        "intervals and the share of noise rest on what they do differ by.",
    ),
)

_USUAL_SCALE = (0.7, 1.5)  # of noise that differs from what is stated, from which it is worth a word


def said_of_surveys(
    compared: Comparison, settling: Optional[Settling], offset: Optional[float], offset_sigma: float
) -> List[Message]:
    """``compared``: both, as measured; ``settling``: what unchanged ground says; ``offset`` (m): the one given, with
    ``offset_sigma``.
    """
    said_names = {"existing_name": compared.names[0], "design_name": compared.names[1]}
    if settling is None and _alike(compared.volume()):
        return [message(ALIKE, **said_names)]
    if offset is not None:
        said = [message(OFFSET_GIVEN, offset=offset, **said_names)]
    elif settling is None:
        return [message(NO_UNCHANGED_GROUND, most=LARGEST_OFFSET, sigma=offset_sigma, **said_names)]
    else:
        unchanged, half = settling.unchanged, NORMAL_95 * settling.offset_sigma
        said = [message(OFFSET_FOUND, offset=unchanged.offset, half=half, area=unchanged.area, **said_names)]
    if settling is not None and not _USUAL_SCALE[0] <= settling.size <= _USUAL_SCALE[1]:
        said.append(message(NOISE_DIFFERS, scale=settling.size))
    return said


def _alike(found: Volume) -> bool:
    return found.cut + found.fill <= SAME * found.common_area
