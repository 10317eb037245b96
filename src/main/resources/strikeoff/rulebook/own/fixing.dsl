# Fixing, finishing and cloth.
[condition][described.BathTaken]there is a bath=BathTaken()
[condition][described.BathTaken]there is a soak=BathTaken(kind == "soak")
[condition][described.BathTaken]there is a steaming=BathTaken(kind == "steam")
[condition][described.BathTaken]there is a rinse=BathTaken(kind == "rinse")
[condition][described.BathTaken]there is a wash=BathTaken(kind == "wash")
[condition][described.BathTaken]there is a heat-setting=BathTaken(kind == "heat-set")
[condition][described.BathTaken]the cloth is washed hotter than {temperature}=BathTaken(kind == "wash", temperature.base() > {temperature})
[condition][described.BathTaken]- of the kind {bath}=kind == {bath}
[condition][described.BathTaken]- hotter than {temperature}=temperature.base() > {temperature}
[condition][described.BathTaken]- cooler than {temperature}=temperature.base() < {temperature}
[condition][described.BathTaken]- longer than {time}=lasts.base() > {time}
[condition][described.BathTaken]- shorter than {time}=lasts.base() < {time}
[condition][bath.Soak]the cloth is soaked in soda=Soak()
[condition][bath.Soak]- of less than {concentration}=sodaGramsPerLitre.best() < {concentration}
[condition][bath.Soak]- of more than {concentration}=sodaGramsPerLitre.best() > {concentration}
[condition][bath.Brushing]silicate is brushed on=Brushing()
[condition][bath.SecondAlkali]a print finds alkali twice=SecondAlkali()
[condition][bath.SodaInPaste]a paste with soda lies on silk or wool=SodaInPaste()
[condition][bath.SodaInPaste]- of more than {concentration}=sodaGramsPerLitre.best() > {concentration}
[condition][bath.FixTemperature]dye is fixed at a temperature=FixTemperature()
[condition][bath.FixTime]dye is fixed for a time=FixTime()
[condition][bath.Steaming]the cloth is steamed=Steaming()
[condition][bath.AlkaliForDye]dye is fixed without alkali=AlkaliForDye(inBath == false, inCloth == false, without > 0)
[condition][bath.DyePrinted]dye is never fixed=DyePrinted(fixes == 0)
[condition][bath.WashOff]the dye is washed off=WashOff()
[condition][bath.HeatSetting]paint is set by heat=HeatSetting()
[condition][bath.HeatSetting]- at less than {temperature}=temperature.base() < {temperature}
[condition][bath.HeatTime]paint is set for a time=HeatTime()
[condition][bath.PaintPrinted]paint is never set=PaintPrinted(heats == 0, baths == 0)
[condition][cloth.ClothMass]the cloth weighs something=ClothMass()
[condition][cloth.ClothMass]- less than {number} g/m²=mass.gramsPerSquareMetre < {number}
[condition][cloth.ClothMass]- more than {number} g/m²=mass.gramsPerSquareMetre > {number}
[condition][cloth.UnwashedCloth]dye is printed on unscoured cloth=UnwashedCloth(dyed == true, scoured == false)
[condition][cloth.UnwashedCloth]paint is printed on loom-state cloth=UnwashedCloth(dyed == false, loomState == true)
[condition][cloth.FibreTake]a fibre takes up dye=FibreTake()
[condition][cloth.FibreTake]- less than {share} of it=takes.base() < {share}
[condition][bath.IronTime]paint is ironed for a time=IronTime()
[condition][bath.Curing]paint is set within {time} of printing=Curing(stood.base() < {time})
[condition][bath.HotWater]the cloth lies in water=HotWater()
[condition][bath.HotWater]- of more than {temperature}=temperature.base() > {temperature}
[condition][bath.PaintInHotWater]set paint lies in water=PaintInHotWater()
[condition][bath.PaintInHotWater]- of more than {temperature}=temperature.base() > {temperature}
[condition][bath.TimeInSoda]silk or wool lies in soda=TimeInSoda()
[condition][bath.TimeInSoda]- for longer than {time}=lasts.base() > {time}
[condition][bath.UreaNeed]a paste without urea is fixed=UreaNeed()
[condition][bath.DriedBeforeBatch]a print dries before its batch=DriedBeforeBatch()
[condition][bath.AlkaliDose]a paste brings its own alkali=AlkaliDose()
[condition][bath.UnweighedAlkali]a paste brings alkali that nobody weighed=UnweighedAlkali(soaked == false)
[condition][bath.DyeAtWater]dye is washed out before it is fixed=DyeAtWater(fixes == 0, fixStep > 0)
[condition][bath.AlkalinePrint]a bath takes the alkali out of a print=AlkalinePrint(alkaline == false)
