"""An empty swimming hall by night: clock wall blue-grey, lane lines in grazing light, one warm attendant's box far right."""
import more_indoors as more

CAPTION = "An empty swimming hall by night, seen from the shallow end: dark lane lines on bare tiles in grazing light, a blue-grey far wall with a round clock, some cubicle doors picked out, faint roof rods, and one attendant's box glowing orange."
CAMERA = dict(zoom=1.12, aim_move=(0, 0, 0.1))
WORLD = dict(seen=0.06, stops=-6)  # forty seconds of street lamps through dirty glass, mostly kept out
FINISH = dict(samples=16, contrast=0.2, bloom=0.14, saturation=1.35, push=0.1, vignette=0.2)


def build(document):
    """The hall."""
    more.baths_hall()
