"""Six thin white cups on white paper: two stacks and a row, one with milk; dark thin edges, much white above."""
import forms
import materials as m
import more_indoors as more
import places

CAPTION = "Six thin white cups on white paper: two stacks and a row, one filled with milk to a flat white ellipse. Fine dark lines draw their sides; the glaze is slightly blue; all the rest is white."
CAMERA = dict(zoom=1.85, move=(0, 0, 0.28), aim_move=(0.045, 0, 0.0))
WORLD = dict(seen=1)
FINISH = dict(samples=16, contrast=0.14, bloom=0.03, vignette=0.0, shoulder=0.5, push=0.4, saturation=1.15, mark="left")


def build(document):
    """The paper, the black cards, the cups."""
    paper = m.Build("paper", "#f2f2f0", 0.95, specular=0.05).material
    places.backdrop(paper, 2.8, 1.6, 2.4, -1.2, 0.5)
    forms.box((0, -0.2, 0.75), (1.9, 1.7, 0.02), paper, bevel=0.004)
    places.backdrop(paper, 2.2, 0.95, 2.1, -0.9, 0.35)
    b = m.Build("glaze", "#e2e9ee", 0.16, specular=0.55)
    b.set("Clearcoat", 0.6)
    glaze = b.material
    milk = m.Build("milk", "#f7f5ee", 0.25, specular=0.4).material
    z = 0.762
    for i in range(2):
        more.cup((-0.135, 0.03, z + 0.032 * i), 0.050, 0.066, glaze)
    for i in range(1):
        more.cup((-0.015, 0.10, z), 0.050, 0.066, glaze)
    more.cup((-0.015, 0.10, z + 0.032), 0.050, 0.066, glaze)
    more.cup((0.105, -0.02, z), 0.050, 0.062, glaze, milk)
    more.cup((0.225, 0.035, z), 0.046, 0.058, glaze)
    black = m.cloth("#0a0a0a", 200, 0.1)
    forms.box((-0.36, 0.08, 0.92), (0.01, 0.6, 0.34), black, 10, 0)
    forms.box((0.45, 0.08, 0.92), (0.01, 0.6, 0.34), black, -10, 0)
