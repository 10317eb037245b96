# Places on the cloth and on the table.
[condition][layout.SeriesSpan]a series spans the cloth=SeriesSpan()
[condition][layout.SeriesSpan]- with gaps of less than {length}=gap.base() < {length}
[condition][layout.NeighbourGap]a frame lies beside its neighbour=NeighbourGap()
[condition][layout.NeighbourGap]- covering {length} of it or more=covered.base() >= {length}
[condition][layout.BorderRepeats]a border repeats=BorderRepeats()
[condition][layout.BorderRepeats]- with a rest of more than {length}=rest.base() > {length}
[condition][layout.RoundTwice]a border runs over its own beginning=RoundTwice()
[condition][layout.FillFit]a fill finds its places=FillFit()
[condition][layout.FillFit]- fewer than {number} of them=fitted < {number}
[condition][layout.FillFit]- with more than {number} dropped=dropped > {number}
[condition][layout.FillRound]a fill goes round a tube=FillRound()
[condition][layout.TubeClosing]a series closes round a tube=TubeClosing()
[condition][layout.SeamCrossing]a print crosses a seam=SeamCrossing()
[condition][layout.SeamCrossing]- that is not padded=padded == false
[condition][layout.SeamAllowanceReach]a print reaches into a seam's allowance=SeamAllowanceReach()
[condition][layout.EdgeReach]a print reaches past an edge=EdgeReach()
[condition][layout.EdgeReach]- by more than {length}=beyond.base() > {length}
[condition][layout.LaidOver]a placement goes over what it does not meet=LaidOver(lands == false)
[condition][layout.Overlap]two arrangements overlap=Overlap()
[condition][layout.Overlap]- by more than {area}=area.base() > {area}
[condition][layout.Crowding]a design is larger than its pitch=Crowding()
[condition][layout.FillerNear]a filler stands in the way=FillerNear(count > 0)
[condition][layout.Anchoring]an anchor isn't there=Anchoring(unanchored > 0)
[condition][layout.AnchorCircle]anchors go round in a circle=AnchorCircle()
[condition][layout.BeyondCounting]there are placements beyond counting=BeyondCounting()
[condition][layout.Shrinkage]the cloth will shrink=Shrinkage()
[condition][layout.Shrinkage]- by more than {share} in length=shrinkLength.base() > {share}
[condition][layout.FinishedSize]the cloth has to finish at a size=FinishedSize()
[condition][layout.FinishedSize]- by more than {length} short of it=lacks.base() > {length}
[condition][layout.Lays]an arrangement takes its lays=Lays()
[condition][layout.Lays]- more than {number} of them=lays > {number}
[condition][layout.ClothOnTable]the cloth hangs over the table=ClothOnTable()
[condition][layout.FrameOnTable]a frame lies on the table=FrameOnTable()
[condition][layout.ClothLay]frames reach over the table as the cloth lies=ClothLay(over.base() > 0)
[condition][layout.StationRow]stations stand in a row=StationRow()
[condition][layout.StationFit]a frame lies in a station=StationFit()
[condition][layout.BladeOverEdge]a blade runs over the cloth's edge=BladeOverEdge()
[condition][layout.FrameChoices]an arrangement could be printed with another frame=FrameChoices()
[condition][layout.MirroredPrint]a mirrored print needs a stencil of its own=MirroredPrint(drawnToo == true)
[condition][layout.MirroredPanels]two panels mirror each other=MirroredPanels()
[condition][layout.MirroredPanels]- coming closer to each other than {length}=apart.base() < {length}
[condition][layout.MirroredPanels]- missing each other by more than {length}=misfit.base() > {length}
[condition][layout.BoardsAtPitch]a series lies on boards=BoardsAtPitch()
[condition][layout.BoardsAtPitch]- at a pitch shorter than {length}=pitch.base() < {length}
[condition][layout.FrameAtSeam]a frame lies on the ridge of a seam=FrameAtSeam(onRidge.base() > 0, padded == false)
