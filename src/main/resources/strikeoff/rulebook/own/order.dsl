# What comes before what on the cloth.
[condition][sequence.DarkBeforeLight]a dark colour is printed before a light one=DarkBeforeLight()
[condition][sequence.KeyBeforeOthers]a key colour isn't printed last=KeyBeforeOthers()
[condition][sequence.TrapWidth]colours overlap in a trap=TrapWidth()
[condition][sequence.TrapWidth]- of less than {length}=trap.base() < {length}
[condition][sequence.DyeOverPaint]dye is printed over paint=DyeOverPaint()
[condition][sequence.PaintOverDye]paint is printed over dye=PaintOverDye()
[condition][sequence.PaintInBath]a bath comes before paint is set=PaintInBath(heats == 0)
[condition][sequence.PrintAfterBath]cloth is printed after a bath=PrintAfterBath()
[condition][sequence.PrintAfterFix]cloth is printed after it is fixed=PrintAfterFix()
[condition][sequence.SeamSewn]a seam is sewn=SeamSewn()
[condition][sequence.OpenSeam]a seam is never sewn=OpenSeam(printedAcross == true, sewings == 0)
[condition][sequence.PrintAcrossSeam]a print crosses a seam before it is sewn=PrintAcrossSeam(stepsBefore > 0)
[condition][sequence.BaseOrder]an anchored print comes before its anchor=BaseOrder(anchored == true, early > 0)
[condition][sequence.BaseOrder]a print that goes over another comes before it=BaseOrder(anchored == false, early > 0)
[condition][sequence.PrintsOfArrangement]something is not printed=PrintsOfArrangement(missing > 0)
[condition][sequence.PrintsOfStep]something is printed twice=PrintsOfStep(again > 0)
[condition][sequence.ColourAmongOthers]a colour is lost among other prints=ColourAmongOthers()
[condition][sequence.ColourAmongOthers]- to more than {share}=share.base() > {share}
[condition][sequence.PaintOnDarker]a translucent paint comes out dull on other prints=PaintOnDarker()
[condition][sequence.Adjoining]a trap is not stated=Adjoining(untrapped > 0)
[condition][sequence.KeyLikeFill]an outline looks like its fill=KeyLikeFill()
[condition][sequence.AcrossFirstWash]a motif is printed before and after the cloth shrinks=AcrossFirstWash()
[condition][sequence.AcrossFirstWash]- by more than {length} at its far edge=farEdge.base() > {length}
